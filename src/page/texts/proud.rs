//! Sleeves that are left proud and not decked.

use crate::show::length;
use crate::words::made as w;
use coldseat_core::ask::{
    Breach, Fault, HeightLimit, HeldDown, KeptHole, Length, Next, PlannedHole, ProudLimit,
    SleeveEnds, Task, UnitSystem,
};

/// A hole of the drawing without its heights.
pub const NOT_READ_SHORT: &str = "\u{2013}";

/// How the sleeves of a job end.
#[must_use]
pub fn sleeve_ends(ends: SleeveEnds) -> &'static str {
    match ends {
        SleeveEnds::Decked => w::SLEEVE_ENDS_DECKED.get(),
        SleeveEnds::Proud => w::SLEEVE_ENDS_PROUD.get(),
    }
}

/// Whether sleeves were held down while they were read.
#[must_use]
pub fn held_down(held: HeldDown) -> &'static str {
    match held {
        HeldDown::Held => w::HELD_DOWN_HELD.get(),
        HeldDown::Free => w::HELD_DOWN_FREE.get(),
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
        ProudLimit::Low => w::BreachOfLow { by: &by }.say(),
        ProudLimit::High => w::BreachOfHigh { by: &by }.say(),
        ProudLimit::Hole => w::BreachOfHole { by: &by }.say(),
        ProudLimit::Neighbour => w::BreachOfNeighbour {
            other: &other,
            by: &by,
        }
        .say(),
        ProudLimit::All => w::BreachOfAll {
            other: &other,
            by: &by,
        }
        .say(),
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
                ProudLimit::Low => w::NextProudOutLow {
                    hole: &hole,
                    what: &what,
                }
                .say(),
                ProudLimit::High => w::NextProudOutHigh {
                    hole: &hole,
                    what: &what,
                }
                .say(),
                ProudLimit::Hole => w::NextProudOutHole {
                    hole: &hole,
                    what: &what,
                }
                .say(),
                ProudLimit::Neighbour | ProudLimit::All => w::NextProudOutNeighbourAll {
                    hole: &hole,
                    what: &what,
                }
                .say(),
            }
        }
        Next::ReadAgain(missing) => w::NextProudReadAgain {
            missing: &super::missing_of(missing),
        }
        .say(),
        Next::PlanOpen(hole) => w::NextProudPlanOpen { hole: &hole }.say(),
        Next::OffPlan(hole, off) => {
            let by = length(off.as_m().abs(), units);
            let way = if off.as_m() > 0.0 {
                w::NEXT_PROUD_OFF_PLAN_WAY_PROUDER.get()
            } else {
                w::NEXT_PROUD_OFF_PLAN_WAY_LESS_PROUD.get()
            };
            w::NextProudOffPlan {
                hole: &hole,
                by: &by,
                way: &way,
            }
            .say()
        }
        Next::InLimits(off) => {
            let by = length(off.as_m().abs(), units);
            let way = if off.as_m() > 0.0 {
                w::NEXT_PROUD_IN_LIMITS_WAY_SHALLOWER.get()
            } else {
                w::NEXT_PROUD_IN_LIMITS_WAY_DEEPER.get()
            };
            w::NextProudInLimits { by: &by, way: &way }.say()
        }
        Next::ApartFrom(hole, by) => {
            let by = length(by.as_m(), units);
            w::NextProudApartFrom {
                by: &by,
                hole: &hole,
            }
            .say()
        }
        Next::ProudGood => w::NEXT_PROUD_GOOD.get().to_owned(),
        Next::ReadFree => w::NEXT_PROUD_READ_FREE.get().to_owned(),
        _ => String::new(),
    }
}

/// A hole for those who cannot see the drawing.
#[must_use]
pub fn height_spoken(cylinder: u8, low: &str, high: &str) -> String {
    w::HeightSpoken {
        cylinder: &cylinder,
        low: &low,
        high: &high,
    }
    .say()
}

/// What the drawing shows.
#[must_use]
pub fn heights_label(holes: &str) -> String {
    w::HeightsLabel { holes: &holes }.say()
}

/// Under the drawing.
#[must_use]
pub fn heights_caption(low: &str, high: &str) -> String {
    w::HeightsCaption {
        low: &low,
        high: &high,
    }
    .say()
}

/// No plan is calculated; the reason in the calculation's own words.
#[must_use]
pub fn plan_refused(fault: &Fault) -> String {
    w::PlanRefused {
        why: &super::fault(fault),
    }
    .say()
}

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
    w::CutShort { by: &by }.say()
}

/// A shim, under a hole of the drawing.
#[must_use]
pub fn shim_short(size: &str) -> String {
    w::ShimShort { size: &size }.say()
}

/// Another sleeve, under a hole of the drawing.
#[must_use]
pub fn sleeve_short(sleeve: u8) -> String {
    w::SleeveShort { sleeve: &sleeve }.say()
}

/// A turn, under a hole of the drawing.
#[must_use]
pub fn turn_short(quarters: u8) -> String {
    w::TurnShort {
        quarters: &(90 * u32::from(quarters)),
    }
    .say()
}

/// How a sleeve is turned: its 12 o'clock to which clock.
fn turned(quarters: u8) -> String {
    match quarters {
        0 => String::new(),
        quarters => w::TurnedOther {
            quarters: &(90 * u32::from(quarters)),
            quarters_too: &(3 * u32::from(quarters)),
        }
        .say(),
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
        Task::Cut if cut.as_m() > 0.0 => Some(
            w::LineCut {
                cut: &show(cut),
                hole: &hole,
            }
            .say(),
        ),
        Task::Shim if shim.as_m() <= 0.0 => Some(
            w::LineShimHoleTakeOut {
                before: &show(before),
                hole: &hole,
            }
            .say(),
        ),
        Task::Shim if before.as_m() > 0.0 => Some(
            w::LineShimHoleTakeOut2 {
                before: &show(before),
                shim: &show(shim),
                hole: &hole,
            }
            .say(),
        ),
        Task::Shim => Some(
            w::LineShimHoleLayA {
                shim: &show(shim),
                hole: &hole,
            }
            .say(),
        ),
        Task::Sleeve if sleeve != hole => Some(
            w::LineSleeveHoleFitThe {
                quarters: &turned(quarters),
                hole: &hole,
                sleeve: &sleeve,
            }
            .say(),
        ),
        Task::Sleeve if quarters > 0 => Some(
            w::LineSleeveHoleFitIts {
                quarters: &turned(quarters),
                hole: &hole,
            }
            .say(),
        ),
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
    w::PlanCounts {
        cuts: &cuts,
        shims: &shims,
        moved: &moved,
        turned: &turned,
    }
    .say()
}

/// No plan keeps the limits.
#[must_use]
pub fn no_plan(limit: HeightLimit, by: &str) -> String {
    let which = match limit {
        HeightLimit::Proud => w::NO_PLAN_WHICH_PROUD.get(),
        HeightLimit::Hole => w::NO_PLAN_WHICH_HOLE.get(),
        HeightLimit::Neighbour => w::NO_PLAN_WHICH_NEIGHBOUR.get(),
        HeightLimit::All => w::NO_PLAN_WHICH_ALL.get(),
    };
    w::NoPlan {
        which: &which,
        by: &by,
    }
    .say()
}

/// A hole of the drawing, for those who cannot see it.
#[must_use]
pub fn hole_before_after(hole: u8, before: &str, after: &str, done: &str) -> String {
    let done = if done.is_empty() {
        w::HOLE_BEFORE_AFTER_DONE.get()
    } else {
        done
    };
    w::HoleBeforeAfter {
        hole: &hole,
        before: &before,
        after: &after,
        done: &done,
    }
    .say()
}

/// The drawing of a plan.
#[must_use]
pub fn heights_plan_label(holes: &str) -> String {
    w::HeightsPlanLabel { holes: &holes }.say()
}

/// Under it.
#[must_use]
pub fn heights_plan_caption(before: &str, low: &str, high: &str) -> String {
    w::HeightsPlanCaption {
        before: &before,
        low: &low,
        high: &high,
    }
    .say()
}
