//! What a pull puts on ram, rod, ledge and flange, against what each may bear:
//! 80 % of the ram's rated pressure, half the rod's yield (both from memory, no
//! source), ledge pressure and flange shear as typed with the engine. Each is
//! worked out by itself: what one lacks takes no other along.

use crate::job::model::field::Field;
use crate::job::model::field_kind::UnitSystem;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveKind;
use crate::job::model::reading::{Lack, Missing, Standing, Unusable};
use crate::job::model::readings::{Readings, largest};
use crate::job::model::step::{Mark, StepId};
use crate::job::verdict::load::{Bearer, Load, LoadCheck};
use crate::mechanics::pull::{Ram, Thread, flange_shear, ledge_area, ram_force, rod_stress};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Force, Pressure};

/// Share of the ram's rated pressure that is used.
const OF_RATING: f64 = 0.8;
/// Share of the rod's yield that is used.
const OF_YIELD: f64 = 0.5;
/// Gauge pressure at which the highest is worked out: loads go with it.
const TRIED_PA: f64 = 1e6;

/// Force of the ram at a gauge pressure.
fn force_at(r: &Readings, gauge_pa: f64) -> Result<Force, Lack> {
    // A ram without a hole has none: the larger force, the lower limit.
    let hole_m = r.engine_if(Field::RamHole)?.unwrap_or(0.0);
    let ram = Ram::Annulus {
        outer: Diameter::from_m(r.engine(Field::RamBore)?),
        inner: Diameter::from_m(hole_m),
    };
    Ok(ram_force(Pressure::from_pa(gauge_pa), ram)?)
}

/// Force of the strongest pull of a cylinder; `None` before the first.
///
/// # Errors
/// What it lacks.
pub fn pull_force(job: &Job, cylinder: u8) -> Result<Option<Force>, Lack> {
    let r = Readings::of_cylinder(job, cylinder);
    strongest(&r)?
        .map(|gauge_pa| force_at(&r, gauge_pa))
        .transpose()
}

fn strongest(r: &Readings) -> Result<Option<f64>, Lack> {
    let all: Vec<f64> = r
        .list(Field::PullGauge)?
        .into_iter()
        .map(|(_, si)| si)
        .collect();
    Ok(largest(&all))
}

/// The loads of the strongest pull of a cylinder, each by itself; none before
/// the first pull.
///
/// # Errors
/// A gauge reading that cannot be used.
pub fn load_checks(r: &Readings) -> Result<Vec<LoadCheck>, Lack> {
    Ok(match strongest(r)? {
        Some(gauge_pa) => checks_at(r, gauge_pa),
        None => Vec::new(),
    })
}

/// The loads of the strongest pull of a cylinder.
///
/// # Errors
/// As [`load_checks`].
pub fn loads(job: &Job, cylinder: u8) -> Result<Vec<LoadCheck>, Lack> {
    load_checks(&Readings::of_cylinder(job, cylinder))
}

/// The highest gauge pressure at which nothing bears more than it may, and what
/// would give first. It is told only where all four are checked: a limit that
/// is missing could be the lowest.
#[must_use]
pub fn gauge_most(job: &Job, cylinder: u8) -> Standing<(Pressure, Bearer)> {
    let r = Readings::of_cylinder(job, cylinder);
    let mut lowest: Option<(f64, Bearer)> = None;
    let mut missing: Option<Missing> = None;
    let mut unusable: Option<Unusable> = None;
    let mut refused: Option<Fault> = None;
    for check in checks_at(&r, TRIED_PA) {
        match check.standing {
            Standing::Known(load) => {
                let most_pa = TRIED_PA * load.most.as_pa() / load.now.as_pa();
                if lowest.is_none_or(|(pa, _)| most_pa < pa) {
                    lowest = Some((most_pa, check.bearer));
                }
            }
            Standing::Missing(one) => missing = missing.or(Some(one)),
            Standing::Unusable(one) => unusable = unusable.or(Some(one)),
            Standing::Refused(fault) => refused = refused.or(Some(fault)),
            Standing::NotHere => {}
        }
    }
    match (unusable, refused, missing, lowest) {
        (Some(unusable), ..) => Standing::Unusable(unusable),
        (_, Some(fault), ..) => Standing::Refused(fault),
        (_, _, Some(missing), _) => Standing::Missing(missing),
        (.., Some((pa, bearer))) => Standing::Known((Pressure::from_pa(pa), bearer)),
        (.., None) => Standing::NotHere,
    }
}

/// Whether anything is loaded beyond what it may bear.
#[must_use]
pub fn is_overloaded(checks: &[LoadCheck]) -> bool {
    checks
        .iter()
        .filter_map(|check| check.standing.known())
        .any(|load| load.now.as_pa() > load.most.as_pa() * (1.0 + 1e-9))
}

fn checks_at(r: &Readings, gauge_pa: f64) -> Vec<LoadCheck> {
    Bearer::ALL
        .into_iter()
        .map(|bearer| LoadCheck {
            bearer,
            standing: match load(r, bearer, gauge_pa) {
                Ok(None) => Standing::NotHere,
                Ok(Some(load)) => Standing::Known(load),
                Err(lack) => Standing::of(Err(lack)),
            },
        })
        .collect()
}

/// A load; `None` where the sleeve has no such bearer: a plain one has no flange,
/// and one that its fit holds no ledge.
fn load(r: &Readings, bearer: Bearer, gauge_pa: f64) -> Result<Option<Load>, Lack> {
    let kind = r.sleeve_kind()?;
    let is_there = match bearer {
        Bearer::Ram | Bearer::Rod => true,
        Bearer::Ledge => kind != SleeveKind::ByFit,
        Bearer::Flange => kind == SleeveKind::Flanged,
    };
    if !is_there {
        return Ok(None);
    }
    let d = |field| r.engine(field).map(Diameter::from_m);
    let force = || force_at(r, gauge_pa);
    let most = |field, share: f64| r.engine(field).map(|pa| Pressure::from_pa(share * pa));
    Ok(Some(match bearer {
        Bearer::Ram => Load {
            now: Pressure::from_pa(gauge_pa),
            most: most(Field::RamRated, OF_RATING)?,
        },
        Bearer::Rod => Load {
            now: rod_stress(
                force()?,
                d(Field::RodD)?,
                r.length(Field::RodPitch)?,
                match r.head()?.units {
                    UnitSystem::Inch => Thread::Inch,
                    UnitSystem::Metric => Thread::Metric,
                },
            )?,
            most: most(Field::RodYield, OF_YIELD)?,
        },
        Bearer::Ledge => {
            let (outer_m, inner_m) = match kind {
                // The chamfer takes off the ledge what it clears for the fillet.
                SleeveKind::Flanged | SleeveKind::ByFit => (
                    r.engine(Field::FlangeOd)?,
                    r.engine(Field::NominalOd)? + 2.0 * chamfer(r)?,
                ),
                // The foot on its step: the narrower of the two rings.
                SleeveKind::OnStep => (
                    r.engine(Field::NominalOd)?,
                    r.engine(Field::SleeveId)?.max(r.engine(Field::StepBore)?),
                ),
            };
            let area = ledge_area(Diameter::from_m(outer_m), Diameter::from_m(inner_m))?;
            Load {
                now: Pressure::from_pa(force()?.as_n() / area.as_m2()),
                most: most(Field::LedgeMost, 1.0)?,
            }
        }
        Bearer::Flange => Load {
            now: flange_shear(
                force()?,
                d(Field::NominalOd)?,
                r.length(Field::NominalFlange)?,
            )?,
            most: most(Field::FlangeMost, 1.0)?,
        },
    }))
}

/// The ledge's chamfer: as measured, or none where the job has none.
fn chamfer(r: &Readings) -> Result<f64, Lack> {
    match r.own(Field::ChamferHere)? {
        Some(chamfer_m) => Ok(chamfer_m),
        None if r.job.mark(r.owner, StepId::Chamfer) == Some(&Mark::NotForThisJob) => Ok(0.0),
        None => Err(r.missing(Field::ChamferHere, 1)),
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::Place;
    use core::f64::consts::PI;

    #[test]
    fn ram_rod_ledge_and_flange_of_the_demo_worked_by_hand() {
        let list = loads(&Demo::InchFive.job(0), 1).unwrap();
        let now = |bearer| {
            list.iter()
                .find(|l| l.bearer == bearer)
                .and_then(|l| l.standing.known())
                .map_or(f64::NAN, |l| l.now.as_psi())
        };
        // 4000 psi on a 4 in ram with a 2.125 in hole; a 1-8 rod of 0.6057 in2.
        let force = 4000.0 * PI / 4.0 * (4.0 * 4.0 - 2.125 * 2.125);
        let close = |a: f64, b: f64| assert!((a / b - 1.0).abs() < 1e-3, "{a} {b}");
        close(now(Bearer::Ram), 4000.0);
        close(now(Bearer::Rod), force / 0.6057);
        close(
            now(Bearer::Ledge),
            // The ledge begins behind a chamfer of 0.038 in.
            force / (PI / 4.0 * (4.64 * 4.64 - 4.516 * 4.516)),
        );
        // Shear round the root of a 0.219 in flange on a 4.44 in sleeve.
        close(now(Bearer::Flange), force / (PI * 4.44 * 0.219));
        // Loads go with the pressure; the rod, half of whose yield is 65 000 psi,
        // is the first to give.
        let mut job = Demo::InchFive.job(0);
        let (most, first) = *gauge_most(&job, 1).known().unwrap();
        assert_eq!(first, Bearer::Rod);
        close(most.as_psi(), 4000.0 * 65_000.0 / (force / 0.6057));
        assert!(!is_overloaded(&loads(&job, 1).unwrap()));
        let place = Place::of_cylinder(1, Field::PullGauge, 1);
        let entry = Entry::new("5000", job.unit(Field::PullGauge), 1);
        job.entries.put(place, entry);
        assert!(is_overloaded(&loads(&job, 1).unwrap()));
        let (engine, entries) = Demo::InchFive.profile(0);
        assert_eq!(loads(&Job::new(engine, entries), 1), Ok(vec![]));
    }
}
