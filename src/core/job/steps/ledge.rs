//! The ledge seen from its outer corner to the bore's edge, and what the ink says: both
//! stand beside the depth, and the worse of them speaks.

use crate::job::model::field::Field;
use crate::job::model::field_usual::SHIMS_MOST;
use crate::job::model::job::Job;
use crate::job::model::part::Inked;
use crate::job::model::place::Place;
use crate::job::model::reading::Lack;
use crate::job::model::readings::{Readings, lengths, smallest};
use crate::job::steps::counterbore::depth;
use crate::job::steps::stand_proud::target_proud;
use crate::job::verdict::ledge::LedgeFault;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::planning::counterbore::uneven_ledge;
use crate::planning::ledge::{LedgeFalls, Trued, ledge_falls, trued};
use crate::quantity::{Length, ties};

/// How the ledge lies toward the bore; `None` where nobody read it there.
///
/// # Errors
/// A clock of either depth that is missing once one is read, something that cannot be
/// used.
pub fn falls(r: &Readings) -> Result<Option<LedgeFalls>, Lack> {
    if r.list(Field::LedgeInner)?.is_empty() {
        return Ok(None);
    }
    let edge = lengths(&r.complete(Field::LedgeInner)?);
    let corner = lengths(&r.complete(Field::CounterboreDepth)?);
    Ok(ledge_falls(&corner, &edge))
}

/// What is wrong with how it lies, and by how much; nothing within the limit.
fn fault(falls: &LedgeFalls, limit_m: f64) -> Option<(LedgeFault, Length)> {
    let is_fall = |fall: &Length| !ties::at_most(fall.as_m(), limit_m);
    if is_fall(&falls.most) {
        let all = falls.fall.iter().all(|fall| fall.as_m() > 0.0);
        let how = if all {
            LedgeFault::Cupped
        } else {
            LedgeFault::Sloped
        };
        return Some((how, falls.most));
    }
    let rise_m = -falls.least.as_m();
    (!ties::at_most(rise_m, limit_m)).then(|| (LedgeFault::Rises, Length::from_m(rise_m)))
}

/// What the ink said; nothing where nobody says so.
///
/// # Errors
/// What cannot be used.
pub fn inked(r: &Readings) -> Result<Option<Inked>, Lack> {
    let said = r.own(Field::InkCheck)?;
    Ok(said.and_then(|index| Inked::ALL.get(index as usize).copied()))
}

/// What the ledge itself says, over its depth.
fn says(r: &Readings) -> Result<Option<(Signal, Next)>, Lack> {
    let ink = inked(r)?;
    if let Some(falls) = falls(r)?
        && let Some((how, by)) = fault(&falls, r.engine(Field::LedgeFall)?)
    {
        let signal = match how {
            LedgeFault::Cupped | LedgeFault::Sloped => Signal::Stop,
            LedgeFault::Rises => Signal::Look,
        };
        return Ok(Some((signal, Next::LedgeShape(how, by))));
    }
    Ok((ink == Some(Inked::Broken)).then_some((Signal::Look, Next::InkBroken)))
}

/// The counterbore: its depth, how its ledge lies, what the ink says; the worst of it.
///
/// # Errors
/// What it lacks.
pub fn counterbore(r: &Readings) -> Worked {
    let own = match says(r) {
        Ok(own) => own,
        // Half read: what the depth says worse than that stays.
        Err(Lack::Missing(missing)) => {
            let verdict = depth(r)?;
            if verdict.signal == Signal::Stop {
                return Ok(Verdict {
                    lacks: [verdict.lacks, vec![missing]].concat(),
                    ..verdict
                });
            }
            return Err(Lack::Missing(missing));
        }
        Err(other) => return Err(other),
    };
    let Some((signal, next)) = own else {
        return depth(r);
    };
    match depth(r) {
        Ok(verdict) if verdict.signal >= signal => Ok(verdict),
        Ok(verdict) => Ok(Verdict {
            signal,
            next,
            ..verdict
        }),
        // A flange that would break needs no depth.
        Err(Lack::Missing(missing)) if signal == Signal::Stop => Ok(Verdict {
            lacks: vec![missing],
            ..Verdict::plain(signal, next)
        }),
        Err(lack) => Err(lack),
    }
}

/// A ledge to be repaired: trued by the least cut, then shimmed.
#[derive(Clone, Debug, PartialEq)]
pub struct LedgeRepair {
    /// What truing it takes.
    pub trued: Trued,
    /// Of the shims at hand the one nearest to what is wanted.
    pub at_hand: Option<Length>,
}

/// What would repair the ledge of a hole; `None` where nothing is wrong with it.
///
/// # Errors
/// What it lacks.
pub fn ledge_repair(job: &Job, cylinder: u8) -> Result<Option<LedgeRepair>, Lack> {
    let r = &Readings::of_cylinder(job, cylinder);
    let corner = r.list(Field::CounterboreDepth)?;
    let edge = r.list(Field::LedgeInner)?;
    let depths: Vec<f64> = corner.iter().chain(&edge).map(|(_, m)| *m).collect();
    let depths = lengths(&depths);
    if says(r)?.is_none() && uneven_ledge(&depths).is_none() {
        return Ok(None);
    }
    let above = r.complete(Field::FlangeThickness)?;
    let least_m = smallest(&above).ok_or_else(|| r.missing(Field::FlangeThickness, 4))?;
    let wanted = Length::from_m(least_m - target_proud(r)?);
    let Some(trued) = trued(&depths, wanted) else {
        return Ok(None);
    };
    let mut at_hand: Option<Length> = None;
    let off = |size: Length| (size.as_m() - trued.shim.as_m()).abs();
    for index in 0..SHIMS_MOST {
        let at = |field| {
            let place = Place {
                index,
                ..Place::of_engine(field)
            };
            job.reading(place).number()
        };
        if let (Some(size_m), Some(left)) = (at(Field::ShimSizes)?, at(Field::ShimsLeft)?) {
            let size = Length::from_m(size_m);
            if left >= 1.0 && at_hand.is_none_or(|best| off(size) < off(best)) {
                at_hand = Some(size);
            }
        }
    }
    Ok(Some(LedgeRepair { trued, at_hand }))
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::step::StepId;
    use crate::job::steps::assess::assess_cylinder;
    use crate::job::verdict::report::StepReport;

    fn put(job: &mut Job, field: Field, texts: [&str; 4]) {
        for (index, text) in (0_u8..).zip(texts) {
            let entry = Entry::new(text, job.unit(field), 2);
            job.entries.put(Place::of_cylinder(1, field, index), entry);
        }
    }

    /// The first hole of the first demo: flange 0.2190, 0.0100 proud, so cut to 0.2090.
    fn job() -> Job {
        let mut job = Demo::InchFive.job(1);
        put(&mut job, Field::FlangeThickness, ["0.2190"; 4]);
        put(&mut job, Field::CounterboreDepth, ["0.2090"; 4]);
        job
    }

    fn step(job: &Job) -> StepReport {
        let report = assess_cylinder(job, 1);
        report.step(StepId::Counterbore).cloned().unwrap()
    }

    /// By hand, against the usual 0.0010 in: 0.2100 near the bore falls by 0.0010 and is on
    /// the limit; 0.2101 all round is cupped by 0.0011; 0.2102 on one side alone, level
    /// elsewhere, slopes by 0.0012; 0.2079 all round rises by 0.0011.
    #[test]
    fn a_ledge_that_falls_toward_the_bore_stops_by_hand() {
        let mut job = job();
        let good = step(&job);
        assert_eq!((good.signal, good.next), (Signal::Go, Next::AtDepth));
        let mut with = |texts| {
            put(&mut job, Field::LedgeInner, texts);
            let step = step(&job);
            (step.signal, step.next)
        };
        assert_eq!(with(["0.2100"; 4]).0, Signal::Go);
        let told = |next: Next| match next {
            Next::LedgeShape(how, by) => (how, (by.as_thou() * 10.0).round() as i64),
            other => panic!("{other:?}"),
        };
        let (signal, next) = with(["0.2101"; 4]);
        assert_eq!(
            (signal, told(next)),
            (Signal::Stop, (LedgeFault::Cupped, 11))
        );
        let (signal, next) = with(["0.2090", "0.2102", "0.2090", "0.2090"]);
        assert_eq!(
            (signal, told(next)),
            (Signal::Stop, (LedgeFault::Sloped, 12))
        );
        let (signal, next) = with(["0.2079"; 4]);
        assert_eq!(
            (signal, told(next)),
            (Signal::Look, (LedgeFault::Rises, 11))
        );
        // Half read it waits for the rest, and what cannot be used is named.
        assert_eq!(with(["0.2090", "", "", ""]).0, Signal::Wait);
        assert_eq!(
            with(["0.2o90", "0.2090", "0.2090", "0.2090"]).0,
            Signal::Look
        );
    }

    #[test]
    fn a_broken_ring_of_ink_is_no_go() {
        let mut job = job();
        let mut with = |word| {
            put(&mut job, Field::InkCheck, [word, "", "", ""]);
            step(&job).signal
        };
        assert_eq!(with("broken"), Signal::Look);
        assert_eq!((with("full"), with("not_done")), (Signal::Go, Signal::Go));
    }

    /// By hand: corner 0.2090, near the bore 0.2104: true it to 0.2104, by 0.0014 at its
    /// highest; wanted is 0.2190 - 0.0100 = 0.2090, so a shim of 0.0014; at hand are 0.0010
    /// and 0.0020, 0.0004 and 0.0006 off, and none is left of 0.0014.
    #[test]
    fn the_repair_is_the_least_cut_and_the_shim_that_makes_up_for_it() {
        let mut job = job();
        assert_eq!(ledge_repair(&job, 1), Ok(None));
        put(&mut job, Field::LedgeInner, ["0.2104"; 4]);
        for (index, (size, left)) in
            (0_u8..).zip([("0.0010", "2"), ("0.0014", "0"), ("0.0020", "5")])
        {
            for (field, text) in [(Field::ShimSizes, size), (Field::ShimsLeft, left)] {
                let place = Place {
                    index,
                    ..Place::of_engine(field)
                };
                let entry = Entry::new(text, job.unit(field), 2);
                job.entries.put(place, entry);
            }
        }
        let repair = ledge_repair(&job, 1).unwrap().unwrap();
        let thou = |l: Length| (l.as_thou() * 10.0).round() as i64;
        let Trued { depth, cut, shim } = repair.trued;
        assert_eq!([depth, cut, shim].map(thou), [2104, 14, 14]);
        assert_eq!(repair.at_hand.map(thou), Some(10));
    }
}
