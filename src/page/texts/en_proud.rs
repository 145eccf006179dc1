//! English: sleeves that are left proud and not decked.

use crate::show::length;
use coldseat_core::ask::{
    Breach, Fault, HeightLimit, HeldDown, KeptHole, Length, Next, PlannedHole, ProudLimit,
    SleeveEnds, Task, UnitSystem,
};

/// The step in the place of the deck.
pub const HEIGHTS: &str = "Heights, left proud";
/// What is not done in such a job.
pub const NOT_DECKED: &str = "The sleeves of this job are left proud: its deck is not cut. What is measured from the deck stays as it is.";
/// On the engine's sheet, in the place of what a cut changes.
pub const FROM_DECK_STAYS: &str =
    "Left proud: the deck is not cut. Nothing measured from it changes.";
/// On the record.
pub const LEFT_PROUD_NOT_DECKED: &str = "left proud, not cut.";
/// The limits.
pub const PROUD_GROUP: &str = "Left proud: height limits";
/// Where they come from. The order of magnitude is that of published engine manuals.
pub const PROUD_WHAT: &str = "The engine's own sheet decides: enter what it says. Use the numbers below only to tell a slip from a limit. In published engine manuals sleeves stand about 0.001 to 0.006 in (0.03 to 0.15 mm) proud. Apart within one hole and from neighbor to neighbor: about 0.002 in (0.05 mm). Over all holes: about 0.004 in (0.10 mm).";
/// A sleeve without all of its heights.
pub const NOT_ALL_MEASURED: &str = "not measured at all four clock positions";
/// A sleeve that keeps its own limits, where not everything else is known.
pub const OWN_LIMITS_KEPT: &str = "within its own limits";
/// Spread of one sleeve's heights.
pub const APART_HERE: &str = "Apart within the hole";
/// Mean of one sleeve's heights.
pub const MEAN_HEIGHT: &str = "Mean";
/// A hole of the drawing without its heights.
pub const NOT_READ_SHORT: &str = "\u{2013}";

/// How the sleeves of a job end.
#[must_use]
pub const fn sleeve_ends(ends: SleeveEnds) -> &'static str {
    match ends {
        SleeveEnds::Decked => "decked flush with the block",
        SleeveEnds::Proud => "left proud, within limits",
    }
}

/// Whether sleeves were held down while they were read.
#[must_use]
pub const fn held_down(held: HeldDown) -> &'static str {
    match held {
        HeldDown::Held => "held down at the stated torque",
        HeldDown::Free => "free",
    }
}

/// A limit that a sleeve breaks, seen from that sleeve.
#[must_use]
pub fn breach_of(breach: &Breach, cylinder: u8, units: UnitSystem) -> String {
    let by = length(breach.by.as_m(), units);
    let other = match breach.other {
        Some(other) if other == cylinder => breach.cylinder,
        Some(other) => other,
        None => cylinder,
    };
    match breach.limit {
        ProudLimit::Low => format!("not proud enough by {by}"),
        ProudLimit::High => format!("too proud by {by}"),
        ProudLimit::Hole => format!("its heights are too far apart by {by}"),
        ProudLimit::Neighbour => format!("too far from its neighbor, hole {other}, by {by}"),
        ProudLimit::All => format!("too far from hole {other} by {by}"),
    }
}

/// What to do next, of heights that are left proud.
#[must_use]
pub fn next_proud(next: &Next, units: UnitSystem) -> String {
    match next {
        Next::ProudOut(breach) => {
            let what = breach_of(breach, breach.cylinder, units);
            let hole = breach.cylinder;
            match breach.limit {
                ProudLimit::Low => format!("Hole {hole}: {what}. Measure again. Then lay a shim on its ledge, or fit a sleeve with a thicker flange."),
                ProudLimit::High => format!("Hole {hole}: {what}. Measure again and look for a chip at its ledge. Then cut its ledge, or use a thinner shim."),
                ProudLimit::Hole => format!("Hole {hole}: {what}. Measure again and look for a chip at its ledge. Then turn the sleeve, or true the ledge."),
                ProudLimit::Neighbour | ProudLimit::All => format!("Hole {hole}: {what}. Measure both again. Then shim the one that stands less proud, or cut the ledge of the prouder one."),
            }
        }
        Next::ReadAgain(missing) => format!("Work was done here after the reading. Read again: {}.", super::missing_of(missing)),
        Next::PlanOpen(hole) => format!("Hole {hole}: first do what the plan of the heights says for this hole. Check off each line when it is done. Then measure again."),
        Next::OffPlan(hole, off) => {
            let by = length(off.as_m().abs(), units);
            let way = if off.as_m() > 0.0 { "prouder" } else { "less proud" };
            format!("Hole {hole}: one clock position is {by} {way} than planned. That is more than the gauges explain. Measure again. Look for a chip, the wrong shim or the wrong sleeve.")
        }
        Next::InLimits(off) => {
            let by = length(off.as_m().abs(), units);
            let way = if off.as_m() > 0.0 { "shallower" } else { "deeper" };
            format!("Within the limits, {by} {way} than the middle. Chamfer and clean.")
        }
        Next::ApartFrom(hole, by) => {
            let by = length(by.as_m(), units);
            format!("Within its own limits. But at these depths it will stand {by} too far from hole {hole}. Get the plan of the heights at this deck before you cut or set.")
        }
        Next::ProudGood => "Every height is within the limits you entered. Leave the deck as it is.".to_owned(),
        Next::ReadFree => "These heights were read free, but the sheet states a torque. Hold the sleeves down at that torque. Say so here, then read the heights again.".to_owned(),
        _ => String::new(),
    }
}

/// A hole for those who cannot see the drawing.
#[must_use]
pub fn height_spoken(cylinder: u8, low: &str, high: &str) -> String {
    format!("hole {cylinder}: {low} to {high}")
}

/// What the drawing shows.
#[must_use]
pub fn heights_label(holes: &str) -> String {
    format!("How proud each sleeve stands. {holes}")
}

/// Under the drawing.
#[must_use]
pub fn heights_caption(low: &str, high: &str) -> String {
    format!(
        "How proud each sleeve stands. One bar per clock position: 12, 3, 6, 9. Below: mean and hole. Dashed: the limits, {low} and {high}. Line at 0: the deck."
    )
}

/// The plan.
pub const PLAN_OF_HEIGHTS: &str = "Plan of the heights";
/// While it is calculated.
pub const PLAN_WORKING: &str = "Calculating the plan\u{2026}";
/// No plan is calculated; the reason in the calculation's own words.
#[must_use]
pub fn plan_refused(fault: &Fault) -> String {
    format!("No plan can be calculated: {}.", fault.message)
}
/// More holes than can be planned.
pub const TOO_MANY_HOLES: &str = "A plan covers eight holes of a deck at most. This deck has more. Its heights are still checked against their limits above.";
/// Held by the fit.
pub const NOTHING_TO_PLAN: &str = "These sleeves are held by their fit. There is no ledge to cut or shim, so there is nothing to plan.";
/// What is missing.
pub const PLAN_WANTS: &str = "The plan still needs:";
/// Nothing to do.
pub const PLAN_NOTHING: &str = "By these readings every height is within the limits you entered. Cut nothing, shim nothing, move nothing.";
/// A plan that is kept and asks for nothing.
pub const PLAN_NO_TASK: &str = "Nothing is left to do in this plan.";
/// Sleeves that change places.
pub const PLAN_TOGETHER: &str =
    "Sleeves that change places are checked off together, once each carries its new number.";
/// Clears a tick.
pub const PLAN_TICK_BACK: &str = "Uncheck";
/// The last shim of a size lies in another hole.
pub const PLAN_NONE_LEFT: &str =
    "None of this size is left. Take one out of another hole first, or enter how many are left.";
/// Takes a plan.
pub const PLAN_TAKE: &str = "Work to this plan";
/// What that does.
pub const PLAN_TAKE_WHAT: &str = "Keeps these lines in the job for you to check off. Nothing else changes yet. Checking off a line enters the shim. For a sleeve that moves or turns, it takes the readings along to its hole, turned as planned. Uncheck to take that back.";
/// Gives it up.
pub const PLAN_GIVE_UP: &str = "Give up this plan; what was checked off stays";
/// Sleeves that move.
pub const PLAN_MOVES: &str = "A sleeve that moves has another fit in its new hole. Measure that bore against it before it goes in.";
/// A sleeve is in.
pub const PLAN_SLEEVE_IN: &str =
    "A height was read on a sleeve here, so it is in. This plan means taking it out.";
/// A tick.
pub const DONE: &str = "Done";
/// Left in the drawing.
pub const HEIGHTS_NOW: &str = "as it is";
/// Left in the drawing of a plan that is worked to.
pub const HEIGHTS_PLANNED: &str = "as planned";
/// Mean height planned.
pub const PLANNED: &str = "Planned, mean";
/// Mean height measured.
pub const MEASURED_AGAIN_MEAN: &str = "Measured, mean";
/// Difference of both.
pub const OFF_PLAN: &str = "Off the plan, worst clock position";
/// Shims of a shop.
pub const SHIMS_AT_HAND: &str = "Shims at hand";
/// What the list is.
pub const SHIMS_WHAT: &str = "Enter each size and how many are left. The shop's list is in Settings. A job has its own copy, so a change to the shop's list does not change its plan.";
/// Takes the shop's list.
pub const SHIMS_FROM_SHOP: &str = "Copy the list from Settings";
/// Readings that few jobs need.
pub const DROP_MORE: &str = "More of this drop";
/// What few jobs need of a ledge.
pub const LEDGE_MORE: &str = "More of this hole's ledge";

/// A difference with its sign.
#[must_use]
pub fn signed_off(number: &str, off_m: f64) -> String {
    if off_m > 0.0 {
        format!("+{number}")
    } else {
        number.to_owned()
    }
}

/// A cut, under a hole of the drawing.
#[must_use]
pub fn cut_short(by: &str) -> String {
    format!("cut {by}")
}

/// A shim, under a hole of the drawing.
#[must_use]
pub fn shim_short(size: &str) -> String {
    format!("shim {size}")
}

/// Another sleeve, under a hole of the drawing.
#[must_use]
pub fn sleeve_short(sleeve: u8) -> String {
    format!("sleeve {sleeve}")
}

/// A turn, under a hole of the drawing.
#[must_use]
pub fn turn_short(quarters: u8) -> String {
    format!("turn {}\u{b0}", 90 * u32::from(quarters))
}

/// How a sleeve is turned: its 12 o'clock to which clock.
fn turned(quarters: u8) -> String {
    match quarters {
        0 => String::new(),
        quarters => format!(
            ", turned {}\u{b0} clockwise: its 12 o'clock to {} o'clock",
            90 * u32::from(quarters),
            3 * u32::from(quarters)
        ),
    }
}

/// What is done at a hole, as a sentence; nothing where it is not to be done.
fn line(
    (task, hole): (Task, u8),
    (sleeve, quarters): (u8, u8),
    ([before, shim], cut): ([Length; 2], Length),
    show: &dyn Fn(Length) -> String,
) -> Option<String> {
    match task {
        Task::Cut if cut.as_m() > 0.0 => Some(format!(
            "Hole {hole}: cut {} off its ledge, pass by pass. Then measure its depth again.",
            show(cut)
        )),
        Task::Shim if shim.as_m() <= 0.0 => {
            Some(format!("Hole {hole}: take out the {} shim.", show(before)))
        }
        Task::Shim if before.as_m() > 0.0 => Some(format!(
            "Hole {hole}: take out the {} shim, lay a {} shim instead.",
            show(before),
            show(shim)
        )),
        Task::Shim => Some(format!(
            "Hole {hole}: lay a {} shim on its ledge.",
            show(shim)
        )),
        Task::Sleeve if sleeve != hole => Some(format!(
            "Hole {hole}: fit the sleeve that was number {sleeve}{}. Mark that sleeve {hole}.",
            turned(quarters)
        )),
        Task::Sleeve if quarters > 0 => Some(format!(
            "Hole {hole}: fit its own sleeve{}.",
            turned(quarters)
        )),
        Task::Cut | Task::Sleeve => None,
    }
}

/// A line of a plan that is offered.
#[must_use]
pub fn planned_line(
    task: Task,
    hole: &PlannedHole,
    show: &dyn Fn(Length) -> String,
) -> Option<String> {
    if !hole.wants(task) {
        return None;
    }
    line(
        (task, hole.cylinder),
        (hole.sleeve, hole.turn),
        ([hole.shim_now, hole.shim_after()], hole.cut),
        show,
    )
}

/// A line of a plan that is worked to.
#[must_use]
pub fn kept_line(task: Task, hole: &KeptHole, show: &dyn Fn(Length) -> String) -> String {
    let all = (
        (task, hole.cylinder),
        (hole.sleeve, hole.turn),
        ([hole.shim_before, hole.shim], hole.cut),
    );
    line(all.0, all.1, all.2, show).unwrap_or_default()
}

/// What a plan takes.
#[must_use]
pub fn plan_counts(cuts: usize, shims: usize, moved: usize, turned: usize) -> String {
    format!(
        "Every height is then within the limits you entered. Holes cut: {cuts}; shims laid or taken out: {shims}; sleeves moved: {moved}; turned: {turned}. No plan needs fewer cuts. With as few cuts, none needs fewer shims under the sleeves. With as few of both, none needs fewer moves."
    )
}

/// No plan keeps the limits.
#[must_use]
pub fn no_plan(limit: HeightLimit, by: &str) -> String {
    let which = match limit {
        HeightLimit::Proud => "how proud each height may stand",
        HeightLimit::Hole => "how far apart the heights of one hole may be",
        HeightLimit::Neighbour => "how far apart two neighbors may be",
        HeightLimit::All => "how far apart all holes may be",
    };
    format!(
        "No plan keeps every limit with what is at hand. In the way: {which}, by at least {by}. Get other shims or sleeves, or ask whether the ledges may be cut more. Below: what comes nearest."
    )
}

/// A hole of the drawing, for those who cannot see it.
#[must_use]
pub fn hole_before_after(hole: u8, before: &str, after: &str, done: &str) -> String {
    let done = if done.is_empty() {
        "nothing done"
    } else {
        done
    };
    format!("hole {hole}: {before}, then {after}, {done}")
}

/// The drawing of a plan.
#[must_use]
pub fn heights_plan_label(holes: &str) -> String {
    format!("Heights of each hole, before and after. {holes}")
}

/// Under it.
#[must_use]
pub fn heights_plan_caption(before: &str, low: &str, high: &str) -> String {
    format!(
        "Each hole: {before} on the left, after on the right. One bar per clock position: 12, 3, 6, 9. Dashed: the limits, {low} and {high}. Line at 0: the deck."
    )
}
