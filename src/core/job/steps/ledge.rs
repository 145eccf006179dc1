//! The ledge seen from its outer corner to the bore's edge, and what the ink says: both
//! stand beside the depth, and the worse of them speaks.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::Inked;
use crate::job::model::place::Place;
use crate::job::model::reading::{Lack, Lacks, Reading, Standing};
use crate::job::model::readings::{Readings, lengths, smallest};
use crate::job::steps::counterbore::depth;
use crate::job::steps::shims::{ListedShim, listed_shims};
use crate::job::steps::stand_proud::target_proud;
use crate::job::verdict::ledge::LedgeFault;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::planning::counterbore::uneven_ledge;
use crate::planning::ledge::{LedgeFalls, Trued, ledge_falls, trued};
use crate::quantity::{Length, ties};

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

/// How the ledge lies toward the bore at the clocks where both depths are read; `None`
/// where nobody read it there. What is missing or cannot be used is noted.
fn read_falls(r: &Readings, lacks: &mut Lacks) -> Option<LedgeFalls> {
    let is_there = |place| r.job.reading(place) != Reading::Absent;
    if !Place::all(r.owner, Field::LedgeInner).any(is_there) {
        return None;
    }
    let mut both = [Field::CounterboreDepth, Field::LedgeInner].map(|field| {
        lacks.take(r.complete(field));
        Place::all(r.owner, field).map(|place| r.job.reading(place).number().ok().flatten())
    });
    let [corner, edge] = &mut both;
    let pairs: Vec<(f64, f64)> = corner.zip(edge).filter_map(|(c, e)| c.zip(e)).collect();
    let (corner, edge): (Vec<f64>, Vec<f64>) = pairs.into_iter().unzip();
    ledge_falls(&lengths(&corner), &lengths(&edge))
}

/// What the ledge itself says, over its depth, and what it lacks beside that.
fn says(r: &Readings) -> (Option<(Signal, Next)>, Lacks) {
    let mut lacks = Lacks::default();
    let ink = lacks.take(inked(r)).flatten();
    let falls = read_falls(r, &mut lacks);
    let limit_m = falls
        .as_ref()
        .and_then(|_| lacks.take(r.engine(Field::LedgeFall)));
    let shape = falls
        .zip(limit_m)
        .and_then(|(falls, limit_m)| fault(&falls, limit_m))
        .map(|(how, by)| {
            let signal = match how {
                LedgeFault::Cupped | LedgeFault::Sloped => Signal::Stop,
                LedgeFault::Rises => Signal::Look,
            };
            (signal, Next::LedgeShape(how, by))
        });
    let broken = (ink == Some(Inked::Broken)).then_some((Signal::Look, Next::InkBroken));
    (shape.or(broken), lacks)
}

/// The counterbore: its depth, how its ledge lies, what the ink says; the worst of it.
/// What stops is told whatever else is missing or cannot be used.
///
/// # Errors
/// What it lacks.
pub fn counterbore(r: &Readings) -> Worked {
    let (own, lacks) = says(r);
    let is_stop = |signal: Signal| signal == Signal::Stop;
    match (own, depth(r)) {
        (_, Ok(verdict)) if is_stop(verdict.signal) => Ok(Verdict {
            lacks: [verdict.lacks, lacks.missing].concat(),
            ..verdict
        }),
        (Some((signal, next)), Ok(verdict)) if is_stop(signal) => Ok(Verdict {
            signal,
            next,
            lacks: [verdict.lacks, lacks.missing].concat(),
            ..verdict
        }),
        // A flange that would break needs no depth.
        (Some((signal, next)), Err(lack)) if is_stop(signal) => {
            let mut all = lacks;
            all.take::<()>(Err(lack));
            Ok(Verdict {
                lacks: all.missing,
                ..Verdict::plain(signal, next)
            })
        }
        (own, depth) => {
            if let Some(lack) = lacks.spoiled() {
                return Err(lack);
            }
            let verdict = depth?;
            if let Some(missing) = lacks.missing.first() {
                return Err(Lack::Missing(*missing));
            }
            Ok(match own {
                Some((signal, next)) if signal > verdict.signal => Verdict {
                    signal,
                    next,
                    ..verdict
                },
                _ => verdict,
            })
        }
    }
}

/// A ledge to be repaired: trued by the least cut, then shimmed.
#[derive(Clone, Debug, PartialEq)]
pub struct LedgeRepair {
    /// What truing it takes.
    pub trued: Trued,
    /// Of the shims at hand the one nearest to what is wanted.
    pub at_hand: Standing<Length>,
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
    let (own, lacks) = says(r);
    let missing = lacks.missing.first().copied().map(Lack::Missing);
    if let Some(lack) = lacks.spoiled().or(missing) {
        return Err(lack);
    }
    if own.is_none() && uneven_ledge(&depths).is_none() {
        return Ok(None);
    }
    let above = r.complete(Field::FlangeThickness)?;
    let least_m = smallest(&above).ok_or_else(|| r.missing(Field::FlangeThickness, 4))?;
    let wanted = Length::from_m(least_m - target_proud(r)?);
    let Some(trued) = trued(&depths, wanted) else {
        return Ok(None);
    };
    let off = |size: &Length| (size.as_m() - trued.shim.as_m()).abs();
    let nearest = |all: Vec<ListedShim>| {
        let left = all.into_iter().filter(|shim| shim.left >= 1.0);
        left.map(|shim| shim.size)
            .min_by(|a, b| off(a).total_cmp(&off(b)))
    };
    let at_hand = match listed_shims(job).map(nearest) {
        Ok(None) => Standing::NotHere,
        Ok(Some(size)) => Standing::Known(size),
        Err(lack) => Standing::of(Err(lack)),
    };
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

    /// By hand: corner 0.2090 and near the bore 0.2110 is cupped by 0.0020 where 0.0010 may
    /// be; corner 0.2190 is 0.0100 deeper than 0.2090 and too deep. Neither is lost when a
    /// clock is taken out or does not read, nor when the ink does not.
    #[test]
    fn a_stop_stays_a_stop_beside_what_is_missing_or_unreadable() {
        let cupped = |job: &Job| {
            let step = step(job);
            assert_eq!(step.signal, Signal::Stop, "{step:?}");
            assert!(
                matches!(step.next, Next::LedgeShape(_, by) if (by.as_thou() - 2.0).abs() < 1e-6)
            );
            step
        };
        let mut job = job();
        put(&mut job, Field::LedgeInner, ["0.2110"; 4]);
        cupped(&job);
        put(&mut job, Field::InkCheck, ["x", "", "", ""]);
        assert_eq!(cupped(&job).unusable.len(), 1);
        put(&mut job, Field::InkCheck, ["", "", "", ""]);
        put(
            &mut job,
            Field::LedgeInner,
            ["0.2110", "0.2110", "0.2110", ""],
        );
        let lacks = cupped(&job).lacks;
        assert!(lacks.iter().any(|m| m.field == Field::LedgeInner));
        put(
            &mut job,
            Field::LedgeInner,
            ["0.2110", "x", "0.2110", "0.2110"],
        );
        cupped(&job);
        put(&mut job, Field::CounterboreDepth, ["0.2190"; 4]);
        for (field, texts) in [
            (Field::LedgeInner, ["x", "", "", ""]),
            (Field::LedgeInner, ["0.2190", "", "", ""]),
            (Field::InkCheck, ["x", "", "", ""]),
        ] {
            put(&mut job, Field::LedgeInner, [""; 4]);
            put(&mut job, field, texts);
            let step = step(&job);
            assert_eq!(step.signal, Signal::Stop, "{field:?} {step:?}");
            let deep = matches!(step.next, Next::TooDeep(by) if (by.as_thou() - 10.0).abs() < 1e-6);
            assert!(deep, "{field:?} {:?}", step.next);
        }
    }

    /// By hand: trued to 0.2110 with a shim of 0.0020 under a flange of 0.2190 that is to
    /// stand 0.0100 proud: wanted is 0.2190 + 0.0020 - 0.0100 = 0.2110. Without the shim the
    /// ledge is 0.0020 too deep, and with the engine's shim it is at depth as well.
    #[test]
    fn a_repaired_ledge_with_its_shim_is_at_depth() {
        let mut job = job();
        for field in [Field::CounterboreDepth, Field::LedgeInner] {
            put(&mut job, field, ["0.2110"; 4]);
        }
        let bare = step(&job);
        assert!(matches!(bare.next, Next::TooDeep(by) if (by.as_thou() - 2.0).abs() < 1e-6));
        let good = |job: &Job| {
            let step = step(job);
            assert_eq!((step.signal, step.next), (Signal::Go, Next::AtDepth));
            let to_m = step.work_to.known().unwrap().si;
            assert!((to_m / 0.0254 - 0.2110).abs() < 1e-9);
        };
        let mut of_hole = job.clone();
        put(&mut of_hole, Field::ShimHere, ["0.0020", "", "", ""]);
        good(&of_hole);
        let entry = Entry::new("0.0020", job.unit(Field::Shim), 2);
        job.entries.put(Place::of_engine(Field::Shim), entry);
        good(&job);
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
        assert_eq!(repair.at_hand.known().copied().map(thou), Some(10));
        // A size without its count is asked for, and the cut is told all the same.
        let count = Place {
            index: 2,
            ..Place::of_engine(Field::ShimsLeft)
        };
        job.entries
            .put(count, Entry::new("", job.unit(Field::ShimsLeft), 3));
        let repair = ledge_repair(&job, 1).unwrap().unwrap();
        assert_eq!(thou(repair.trued.depth), 2104);
        assert!(matches!(repair.at_hand, Standing::Missing(m) if m.field == Field::ShimsLeft));
    }
}
