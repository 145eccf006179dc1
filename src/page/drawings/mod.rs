//! Drawings, scribed: true numbers on exaggerated shapes. A drawing is a list
//! of marks; there is one renderer. Each says in words what it shows.

pub mod bars;
pub mod clearance;
pub mod deck_cuts;
pub mod deck_map;
pub mod deck_seats;
pub mod fit_band;
pub mod heights;
pub mod lessons;
pub mod own_cuts;
pub mod part;
pub mod plan;
pub mod profile;
pub mod round;
pub mod section;
pub mod staircase;
pub mod wall_clock;

use coldseat_markup::view;
use leptos::prelude::*;

/// A mark of a drawing, in the units of its view box.
pub enum Mark {
    /// A line, by its path.
    Path {
        /// Class: how it is drawn.
        class: &'static str,
        /// Path data.
        d: String,
    },
    /// A text.
    Text {
        /// Class: where it is anchored and how it weighs.
        class: &'static str,
        /// Left, middle or right end, by class.
        x: f64,
        /// Baseline.
        y: f64,
        /// The words.
        words: String,
    },
}

/// A drawing.
pub struct Picture {
    /// What it shows, for those who cannot see it.
    pub label: String,
    /// Width of the view box.
    pub width: f64,
    /// Height of the view box.
    pub height: f64,
    /// Marks, from the back.
    pub marks: Vec<Mark>,
    /// Line below: scale, exaggeration.
    pub caption: String,
}

impl Picture {
    /// Adds a straight line.
    pub fn line(&mut self, class: &'static str, from: (f64, f64), to: (f64, f64)) {
        self.path(
            class,
            format!("M{:.1} {:.1}L{:.1} {:.1}", from.0, from.1, to.0, to.1),
        );
    }

    /// Adds a path.
    pub fn path(&mut self, class: &'static str, d: String) {
        self.marks.push(Mark::Path { class, d });
    }

    /// Adds a circle.
    pub fn circle(&mut self, class: &'static str, (x, y): (f64, f64), r: f64) {
        self.path(
            class,
            format!(
                "M{:.1} {y:.1}a{r:.1} {r:.1} 0 1 0 {:.1} 0a{r:.1} {r:.1} 0 1 0 {:.1} 0",
                x - r,
                2.0 * r,
                -2.0 * r
            ),
        );
    }

    /// Adds a closed polygon.
    pub fn area(&mut self, class: &'static str, points: &[(f64, f64)]) {
        let mut d = polyline(points);
        d.push('z');
        self.path(class, d);
    }

    /// Adds a text.
    pub fn text(&mut self, class: &'static str, at: (f64, f64), words: impl Into<String>) {
        self.marks.push(Mark::Text {
            class,
            x: at.0,
            y: at.1,
            words: words.into(),
        });
    }

    /// The drawing as a view.
    pub fn view(self) -> AnyView {
        let marks: Vec<AnyView> = self
            .marks
            .into_iter()
            .map(|mark| match mark {
                Mark::Path { class, d } => view! { <path class=class d=d></path> }.into_any(),
                Mark::Text { class, x, y, words } => view! {
                    <text class=class x=format!("{x:.1}") y=format!("{y:.1}")>
                        {words}
                    </text>
                }
                .into_any(),
            })
            .collect();
        view! {
            <figure class="drawing">
                <svg
                    role="img"
                    aria-label=self.label
                    viewBox=format!("0 0 {} {}", self.width, self.height)
                >
                    {marks}
                </svg>
                <figcaption>{self.caption}</figcaption>
            </figure>
        }
        .into_any()
    }
}

/// Path data through points.
#[must_use]
pub fn polyline(points: &[(f64, f64)]) -> String {
    points
        .iter()
        .enumerate()
        .map(|(index, (x, y))| {
            let letter = if index == 0 { 'M' } else { 'L' };
            format!("{letter}{x:.1} {y:.1}")
        })
        .collect()
}

/// The pattern that hatches cut metal, once per page.
#[component]
pub fn Hatching() -> impl IntoView {
    view! {
        <svg class="hatching" aria-hidden="true" width="0" height="0">
            <defs>
                <pattern
                    id="hatch"
                    width="7"
                    height="7"
                    patternUnits="userSpaceOnUse"
                    patternTransform="rotate(45)"
                >
                    <path class="hatch-line" d="M0 0v7"></path>
                </pattern>
                <pattern
                    id="hatch-back"
                    width="7"
                    height="7"
                    patternUnits="userSpaceOnUse"
                    patternTransform="rotate(-45)"
                >
                    <path class="hatch-line" d="M0 0v7"></path>
                </pattern>
            </defs>
        </svg>
    }
    .into_any()
}
