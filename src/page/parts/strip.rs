//! The strip of all cylinders, always in sight: bores seen from above, state
//! by shape and word.

use crate::live::{live, maybe, words};
use crate::memo::Memo;
use crate::screens::{Route, View};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{State as Condition, StepId};
use coldseat_markup::view;
use leptos::prelude::*;

/// A bore from above: an empty ring, a chord filling up, a punched centre, a
/// notch, a bar.
pub fn bore(condition: Condition) -> AnyView {
    // The ring's inside is a circle of radius 15 about (20, 20).
    let inner = match condition {
        Condition::NotBegun => None,
        Condition::LeftOut => Some(("bore-line", "M12 20h16".to_owned())),
        Condition::InWork(done, all) => Some(("bore-fill", filled(done, all))),
        Condition::Seated => Some((
            "bore-solid",
            "M20 14a6 6 0 1 1 0 12a6 6 0 1 1 0-12z".to_owned(),
        )),
        // Said to be home by hand: the same mark, open.
        Condition::Marked => Some((
            "bore-line",
            "M20 14a6 6 0 1 1 0 12a6 6 0 1 1 0-12z".to_owned(),
        )),
        Condition::Look => Some(("bore-solid", "M13 2L20 14L27 2z".to_owned())),
        Condition::Stop => Some(("bore-bar", "M4 20h32".to_owned())),
    };
    view! {
        <svg class="bore" viewBox="0 0 40 40" aria-hidden="true">
            <circle class="bore-ring" cx="20" cy="20" r="16.5"></circle>
            {inner.map(|(class, d)| view! { <path class=class d=d></path> })}
        </svg>
    }
    .into_any()
}

/// A circle of radius 15 filled from below to `done` of `all`.
fn filled(done: u8, all: u8) -> String {
    let part = (f64::from(done) + 0.5) / (f64::from(all.max(1)) + 0.5);
    // The chord by its angle at the centre, from the lowest point up.
    let angle = core::f64::consts::PI * part.clamp(0.15, 0.97);
    let (half, level) = (15.0 * angle.sin(), 20.0 + 15.0 * angle.cos());
    let large = u8::from(part > 0.5);
    format!(
        "M{:.1} {level:.1}A15 15 0 {large} 0 {:.1} {level:.1}z",
        20.0 - half,
        20.0 + half
    )
}

/// The strip. Cylinder `None` is the deck or the record.
#[component]
pub fn Strip(
    /// Key of the job.
    id: String,
    /// The cylinder shown.
    shown: Signal<Option<u8>>,
    /// The step shown, kept when another cylinder is chosen.
    step: Signal<Option<StepId>>,
) -> impl IntoView {
    let state = State::here();
    let banks = state.session.open.with_untracked(|open| {
        open.as_ref().map_or(vec![Vec::new()], |open| {
            let engine = &open.job.engine;
            (0..engine.banks())
                .map(|bank| {
                    (1..=engine.cylinders)
                        .filter(|c| engine.bank_of(*c) == bank)
                        .collect::<Vec<u8>>()
                })
                .collect()
        })
    });
    let is_v = banks.len() > 1;
    let rows: Vec<AnyView> = banks
        .into_iter()
        .enumerate()
        .map(|(bank, cylinders)| {
            let rings: Vec<AnyView> = cylinders
                .into_iter()
                .map(|cylinder| ring(state, id.clone(), cylinder, shown, step))
                .collect();
            let title = is_v.then(|| {
                view! {
                    <span class="strip-bank">{format!("{} {}", t::BANK, t::bank(bank as u8))}</span>
                }
            });
            view! { <div class="strip-row">{title} <ul>{rings}</ul></div> }.into_any()
        })
        .collect();
    view! { <nav class="strip" aria-label=t::STRIP.get()>{rows}</nav> }.into_any()
}

fn ring(
    state: State,
    id: String,
    cylinder: u8,
    shown: Signal<Option<u8>>,
    step: Signal<Option<StepId>>,
) -> AnyView {
    let condition = Memo::new(move |_| {
        state.session.settled.with(|reports| {
            reports
                .iter()
                .find(|r| r.cylinder == cylinder)
                .map_or(Condition::NotBegun, |r| r.state)
        })
    });
    let address = move || {
        Route::Job {
            id: id.clone(),
            view: View::Cylinder(Some(cylinder), step.get()),
        }
        .address()
    };
    let current = move || (shown.get() == Some(cylinder)).then_some("true");
    let class = move || match condition.get() {
        Condition::Stop => "ring ring-stop",
        Condition::Look => "ring ring-look",
        Condition::Seated => "ring ring-go",
        _ => "ring",
    };
    view! {
        <li>
            <a
                class=words(class)
                href=words(address)
                aria-current=maybe(current)
            >
                <span class="spoken">{t::CYLINDER}" "</span>
                <span class="ring-number">{cylinder}</span>
                <span class="spoken">" "</span>
                {live(move || bore(condition.get()))}
                <span class="ring-word">{live(move || t::state(condition.get()))}</span>
            </a>
        </li>
    }
    .into_any()
}
