//! The fit inside its band, blurred by the gauges: the dark bar is what they
//! leave open, the ticks are the tightest and the loosest pair of readings.

use super::Picture;
use crate::show::{bare, length};
use crate::texts as t;
use coldseat_core::ask::{Fit, UnitSystem};
use leptos::prelude::AnyView;

/// The drawing.
pub fn fit_band(fit: &Fit, lo_m: f64, hi_m: f64, units: UnitSystem) -> AnyView {
    let (mean, u) = (fit.interference_mean.as_m(), fit.u_interference.as_m());
    let (least, most) = (fit.interference_min.as_m(), fit.interference_max.as_m());
    let margin = (hi_m - lo_m).abs().max(1e-6);
    let from = (lo_m - margin).min(mean - 2.0 * u).min(least);
    let to = (hi_m + margin).max(mean + 2.0 * u).max(most);
    let x = |m: f64| 14.0 + 332.0 * (m - from) / (to - from);

    let mut picture = Picture {
        label: t::fit_label(
            &length(mean, units),
            &length(lo_m, units),
            &length(hi_m, units),
        ),
        width: 360.0,
        height: 130.0,
        marks: Vec::new(),
        caption: t::FIT_CAPTION.get().to_owned(),
    };
    picture.area(
        "band",
        &[
            (x(lo_m), 40.0),
            (x(hi_m), 40.0),
            (x(hi_m), 92.0),
            (x(lo_m), 92.0),
        ],
    );
    picture.line("scribe", (8.0, 92.0), (352.0, 92.0));
    for (m, class) in [(lo_m, "tiny-end"), (hi_m, "tiny")] {
        picture.line("scribe", (x(m), 36.0), (x(m), 98.0));
        let at = if class == "tiny" {
            x(m) - 6.0
        } else {
            x(m) + 6.0
        };
        picture.text(class, (at, 113.0), bare(m, units));
    }
    picture.area(
        "blur",
        &[
            (x(mean - 2.0 * u), 60.0),
            (x(mean + 2.0 * u), 60.0),
            (x(mean + 2.0 * u), 74.0),
            (x(mean - 2.0 * u), 74.0),
        ],
    );
    for m in [least, most] {
        picture.line("scribe-thin", (x(m), 78.0), (x(m), 92.0));
    }
    picture.line("scribe-strong", (x(mean), 50.0), (x(mean), 84.0));
    picture.text(
        "strong-middle",
        (x(mean).clamp(40.0, 320.0), 28.0),
        bare(mean, units),
    );
    picture.view()
}
