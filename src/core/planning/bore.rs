//! Boring: passes, what each takes, how the cutter is set.
//!
//! Radius and diameter are both given, always spelled out. Practice leaves
//! 0.001 to 0.0015 in for the hone (common practice, no source).

use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::ties;
use crate::quantity::{Diameter, Length, Radius};

/// Most passes.
pub const MOST_PASSES: usize = 100;

/// A bore to be opened.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BorePlanInput {
    /// Diameter now.
    pub now: Diameter,
    /// Diameter wanted after the hone.
    pub finished: Diameter,
    /// Left for the hone, on diameter.
    pub hone: Length,
    /// Cut of the last pass, on diameter.
    pub last_cut: Length,
    /// Number of passes, the last one included.
    pub passes: usize,
    /// Diameter of the spindle that the cutter is set from.
    pub spindle: Diameter,
}

/// One pass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pass {
    /// Diameter after it.
    pub d: Diameter,
    /// What it takes, on diameter.
    pub cut_on_diameter: Length,
    /// What it takes, on radius: what the cutter is moved out by.
    pub cut_on_radius: Radius,
    /// Micrometer over spindle and cutter: (diameter + spindle) / 2.
    pub cutter: Length,
}

/// A plan of passes.
#[derive(Clone, Debug, PartialEq)]
pub struct BorePlan {
    /// Diameter after the last pass.
    pub bored: Diameter,
    /// The passes, in order.
    pub passes: Vec<Pass>,
}

/// Plans the passes: equal ones, then the last.
///
/// # Errors
/// Values outside their ranges; a finished bore too close to the bore now for
/// the hone and the last cut; no pass or more than 100.
///
/// # Example
/// Worked by hand: 4.125 to 4.250 in, 0.0012 for the hone, three passes, the
/// last of 0.010, a spindle of 3.000 in.
/// ```
/// use coldseat_core::planning::bore::{BorePlanInput, bore_plan};
/// use coldseat_core::quantity::{Diameter, Length};
/// let plan = bore_plan(&BorePlanInput {
///     now: Diameter::from_inch(4.125),
///     finished: Diameter::from_inch(4.250),
///     hone: Length::from_inch(0.0012),
///     last_cut: Length::from_inch(0.010),
///     passes: 3,
///     spindle: Diameter::from_inch(3.000),
/// })?;
/// assert!((plan.bored.as_inch() - 4.2488).abs() < 1e-9);
/// assert!((plan.passes[0].cut_on_diameter.as_inch() - 0.0569).abs() < 1e-9);
/// assert!((plan.passes[0].cut_on_radius.as_inch() - 0.02845).abs() < 1e-9);
/// assert!((plan.passes[2].cutter.as_inch() - 3.6244).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn bore_plan(input: &BorePlanInput) -> Result<BorePlan, Fault> {
    let now = bounds::DIAMETER.check("now_d_m", input.now.as_m())?;
    let finished = bounds::DIAMETER.check("finished_d_m", input.finished.as_m())?;
    let hone = bounds::SMALL.check("hone_m", input.hone.as_m())?;
    let last = bounds::SMALL.check("last_cut_m", input.last_cut.as_m())?;
    let spindle = bounds::DIAMETER.check("spindle_d_m", input.spindle.as_m())?;
    if !(1..=MOST_PASSES).contains(&input.passes) {
        return Err(Fault::new(
            "passes",
            format!("{} passes: 1 to {MOST_PASSES} can be planned", input.passes),
        ));
    }
    let bored = finished - hone;
    let rest = bored - now - last;
    if !ties::at_least(rest, 0.0)
        || ties::at_most(bored, now)
        || (input.passes > 1 && ties::nothing_left(rest))
    {
        return Err(Fault::new(
            "finished_d_m",
            format!(
                "{finished} m leaves too little between the bore now, {now} m, the last cut and \
                 the hone: take a larger sleeve, a smaller last cut or fewer passes"
            ),
        ));
    }
    let early = input.passes - 1;
    let mut d = now;
    let passes = (0..input.passes)
        .map(|i| {
            // One pass takes it all; of several the last is the last cut.
            let cut = match (early, i) {
                (0, _) => bored - now,
                (_, i) if i == early => last,
                _ => rest / early as f64,
            };
            d += cut;
            Pass {
                d: Diameter::from_m(d),
                cut_on_diameter: Length::from_m(cut),
                cut_on_radius: Radius::from_m(0.5 * cut),
                cutter: Length::from_m(0.5 * (d + spindle)),
            }
        })
        .collect();
    Ok(BorePlan {
        bored: Diameter::from_m(bored),
        passes,
    })
}
