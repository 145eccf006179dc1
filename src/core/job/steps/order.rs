//! Go or no-go before sleeves are ordered: does this sleeve go into this block?
//!
//! Wall, web, room below, ledge, stock for the last hone, and what a fire-ring
//! groove leaves of the flange: each against its own limit. Geometry
//! throughout; the limits are from memory, no source, and the shop's to change.

use crate::job::model::engine::preset_si;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Standing};
use crate::job::model::readings::{Readings, smallest};
use crate::job::model::step::StepId;
use crate::job::steps::measure::{thinnest, walls_before_boring};
use crate::job::steps::stand_proud::target_proud;
use crate::job::steps::tools::{grade, length_figure, more};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::figure::{Detail, Figure};
use crate::job::verdict::order::{Measured, OrderCheck, OrderItem};
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::planning::web::{Web, WebInput, web};
use crate::quantity::{Diameter, Length};

/// What a check comes to; `None` where this block has no such thing.
type Item = Result<Option<Measured>, Lack>;

/// Stops below its least, else goes.
const fn measured(value_m: f64, least_m: f64, signal: Signal) -> Measured {
    Measured {
        value: Length::from_m(value_m),
        least: Length::from_m(least_m),
        signal,
    }
}

fn at_least(value_m: f64, least_m: f64) -> Item {
    let signal = grade(value_m, least_m, least_m);
    Ok(Some(measured(value_m, least_m, signal)))
}

/// The web between two counterbores of the middle of their clearance, or between
/// the bores of plain sleeves.
fn web_between(r: &Readings) -> Result<Web, Lack> {
    let d_m = match r.sleeve_kind()? {
        SleeveKind::Flanged => {
            let room_m = 0.5 * (r.engine(Field::ClearLow)? + r.engine(Field::ClearHigh)?);
            r.engine(Field::FlangeOd)? + room_m
        }
        // No counterbore: the bores themselves.
        SleeveKind::OnStep | SleeveKind::ByFit => r.engine(Field::NominalOd)?,
    };
    let zero = Length::from_m(0.0);
    Ok(web(&WebInput {
        pitch: r.length(Field::Pitch)?,
        d: Diameter::from_m(d_m),
        offset_a: zero,
        offset_b: zero,
    })?)
}

/// The thinnest wall of all holes measured, else the one entered. A hole whose
/// wall is measured counts: one that cannot be worked out is not left out.
fn wall(r: &Readings) -> Item {
    let mut all = Vec::new();
    for cylinder in r.job.cylinders() {
        let hole = Readings::of_cylinder(r.job, cylinder);
        if hole.list(Field::WallReading)?.is_empty() {
            continue;
        }
        hole.complete(Field::WallReading)?;
        all.extend(thinnest(&walls_before_boring(&hole)?));
    }
    let wall_m = match smallest(&all) {
        Some(wall_m) => wall_m,
        None => r.engine(Field::BlockWall)?,
    };
    let (calm_m, least_m) = (r.engine(Field::WallCalm)?, r.engine(Field::WallLook)?);
    Ok(Some(measured(
        wall_m,
        calm_m,
        grade(wall_m, calm_m, least_m),
    )))
}

fn between(r: &Readings) -> Item {
    let web = web_between(r)?;
    let (calm_m, least_m) = (r.engine(Field::WebCalm)?, r.engine(Field::WebLook)?);
    let signal = if web.flat.as_m() > 0.0 {
        // Overlapping flanges get flats: said by the finding.
        Signal::Look
    } else {
        grade(web.left.as_m(), calm_m, least_m)
    };
    Ok(Some(measured(web.left.as_m(), calm_m, signal)))
}

fn bottom(r: &Readings) -> Item {
    let Some(step_m) = r.engine_or_none(Field::StepBelow)? else {
        return Ok(None);
    };
    let (length_m, proud_m) = (r.engine(Field::SleeveLength)?, target_proud(r)?);
    match r.sleeve_kind()? {
        SleeveKind::Flanged => {
            let depth_m = r.engine(Field::NominalFlange)? - proud_m;
            let room_m = step_m - depth_m - length_m;
            at_least(room_m, r.engine(Field::BottomLeast)?)
        }
        // A step is cut deeper, never higher.
        SleeveKind::OnStep => at_least(length_m - proud_m - step_m, 0.0),
        SleeveKind::ByFit => at_least(step_m - (length_m - proud_m), r.engine(Field::BottomLeast)?),
    }
}

fn ledge(r: &Readings) -> Item {
    let [outer_m, inner_m] = match r.sleeve_kind()? {
        SleeveKind::Flanged => [r.engine(Field::FlangeOd)?, r.engine(Field::NominalOd)?],
        SleeveKind::OnStep => [
            r.engine(Field::NominalOd)?,
            r.engine(Field::SleeveId)?.max(r.engine(Field::StepBore)?),
        ],
        SleeveKind::ByFit => return Ok(None),
    };
    let land_m = 0.5 * (outer_m - inner_m);
    at_least(land_m, r.engine(Field::LedgeLeast)?)
}

fn finish_stock(r: &Readings) -> Item {
    // The fit closes the inside by nearly its own amount.
    let close_m = 0.5 * (r.engine(Field::FitLow)? + r.engine(Field::FitHigh)?);
    let inside_m = r.engine(Field::SleeveId)? - close_m;
    let stock_m = r.engine(Field::FinalBore)? - inside_m;
    at_least(stock_m, r.engine(Field::FinishLeast)?)
}

/// A land of the groove; none of it without a fire ring.
fn groove(r: &Readings, item: OrderItem) -> Item {
    let has_flange = r.sleeve_kind()? == SleeveKind::Flanged;
    if !has_flange && item != OrderItem::GrooveInside {
        return Ok(None);
    }
    let Some(ring_m) = r.engine_or_none(Field::RingHeight)? else {
        return Ok(None);
    };
    let land_m = match item {
        OrderItem::GrooveInside => {
            0.5 * (r.engine(Field::GrooveInner)? - r.engine(Field::FinalBore)?)
        }
        OrderItem::GrooveOutside => {
            0.5 * (r.engine(Field::FlangeOd)? - r.engine(Field::GrooveOuter)?)
        }
        _ => {
            let depth_m = ring_m - r.engine(Field::RingProud)?;
            let lost_m = match r.sleeve_ends()? {
                SleeveEnds::Decked => {
                    r.engine(Field::TargetProud)? + r.engine(Field::PlannedCut)?
                }
                SleeveEnds::Proud => 0.0,
            };
            r.engine(Field::NominalFlange)? - lost_m - depth_m
        }
    };
    at_least(land_m, r.engine(Field::GrooveLand)?)
}

fn check(r: &Readings, item: OrderItem) -> OrderCheck {
    let worked = match item {
        OrderItem::Wall => wall(r),
        OrderItem::Web => between(r),
        OrderItem::Bottom => bottom(r),
        OrderItem::Ledge => ledge(r),
        OrderItem::FinishStock => finish_stock(r),
        OrderItem::GrooveInside | OrderItem::GrooveOutside | OrderItem::GrooveFloor => {
            groove(r, item)
        }
    };
    let standing = match worked {
        Ok(Some(measured)) => Standing::Known(measured),
        Ok(None) => Standing::NotHere,
        Err(lack) => Standing::of(Err(lack)),
    };
    let input = |field: &Field| match r.job.engine_si(*field) {
        Ok(Some(si)) => {
            let usual = preset_si(*field, r.job.engine.units) == Some(si);
            Some((*field, si, usual))
        }
        // What is missing or cannot be used is said by the standing.
        Ok(None) | Err(_) => None,
    };
    OrderCheck {
        kind: r.job.listed_kind(),
        item,
        standing,
        inputs: item
            .uses(r.job.listed_kind())
            .iter()
            .filter(|field| r.job.listed_stand().has_field(**field))
            .filter_map(input)
            .collect(),
    }
}

/// The checks of a job's engine, in the order a person goes through them.
#[must_use]
pub fn order_checks(job: &Job) -> Vec<OrderCheck> {
    let r = Readings::new(job, Owner::Block);
    OrderItem::ALL.map(|item| check(&r, item)).to_vec()
}

/// Whether the sleeves may be ordered: the worst of all, and wait before go
/// while a number is missing.
#[must_use]
pub fn order_signal(checks: &[OrderCheck]) -> Signal {
    checks
        .iter()
        .map(OrderCheck::signal)
        .max()
        .unwrap_or(Signal::None) // of no check
}

/// Whether a sleeve fits this block.
///
/// # Errors
/// What it lacks to begin with.
pub fn choose(r: &Readings) -> Worked {
    r.head()?;
    let (od_m, id_m) = (r.engine(Field::NominalOd)?, r.engine(Field::SleeveId)?);
    let web = web_between(r)?;
    let checks = order_checks(r.job);
    let mut further = vec![more(Detail::SleeveWall, 0.5 * (od_m - id_m))];
    if web.flat.as_m() > 0.0 {
        further.push(more(Detail::FlatDepth, web.flat.as_m()));
    }
    let signal = order_signal(&checks);
    Ok(Verdict {
        findings: web.findings,
        answer: Answer::Order(checks, further),
        ..Verdict::advice(
            StepId::Choose,
            signal,
            length_figure(Figure::WebLeft, web.left.as_m(), None),
        )
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::field::FIELDS;
    use crate::job::model::field_kind::Scope;
    use crate::job::model::place::Place;

    /// Every number of the engine, moved: a check that answers to it names it
    /// among its inputs, and one that is named is answered to.
    #[test]
    fn a_check_names_all_it_is_worked_out_from_and_nothing_else() {
        let demo = Demo::InchFive.job(1);
        let mut sheet = Job::engine_sheet(demo.engine.clone(), &demo.entries);
        let mut put = |field: Field, text: &str| {
            let entry = Entry::new(text, sheet.unit(field), 1);
            sheet.entries.put(Place::of_engine(field), entry);
        };
        for (field, text) in [
            (Field::GrooveInner, "4.4000"),
            (Field::GrooveOuter, "4.5000"),
            (Field::StepBelow, "10.5000"),
        ] {
            put(field, text);
        }
        let before = order_checks(&sheet);
        assert!(
            before
                .iter()
                .all(|c| matches!(c.standing, Standing::Known(..))),
            "{before:?}"
        );
        let mut seen = 0;
        for spec in FIELDS.iter().filter(|f| f.scope == Scope::Engine) {
            let Ok(Some(si)) = sheet.engine_si(spec.field) else {
                continue;
            };
            let mut moved = sheet.clone();
            // Enough to turn a signal too.
            for factor in [0.2, 0.97, 1.03, 5.0] {
                let unit = moved.unit(spec.field);
                let text = format!("{:.9}", unit.from_si(si * factor));
                moved
                    .entries
                    .put(Place::of_engine(spec.field), Entry::new(text, unit, 2));
                for (check, after) in before.iter().zip(order_checks(&moved)) {
                    let named = check.item.uses(SleeveKind::Flanged).contains(&spec.field);
                    let answers = check.standing != after.standing;
                    // Two numbers that contradict each other name themselves.
                    let clash = matches!(after.standing, Standing::Unusable(_));
                    assert!(
                        named || clash || !answers,
                        "{:?} hides {}",
                        check.item,
                        spec.id
                    );
                    seen += usize::from(named && answers);
                }
            }
        }
        let named: usize = before
            .iter()
            .map(|c| c.item.uses(SleeveKind::Flanged).len())
            .sum();
        assert!(seen >= named, "{seen} answers to {named} names");
    }
}
