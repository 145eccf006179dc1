//! What a pull puts on ram, rod, ledge and flange, against what each may bear:
//! 80 % of the ram's rated pressure, half the rod's yield (both from memory, no
//! source), ledge pressure and flange shear as typed with the engine.

use super::{Field, Job, Owner, Place, UnitSystem};
use crate::mechanics::pull::{PullInput, Ram, Thread, pull, ram_force};
use crate::quantity::{Diameter, Force, Length, Pressure};

/// Share of the ram's rated pressure that is used.
const OF_RATING: f64 = 0.8;
/// Share of the rod's yield that is used.
const OF_YIELD: f64 = 0.5;
/// Young's modulus of a steel rod, Pa.
const STEEL_PA: f64 = 205e9;

/// What bears a load.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bearer {
    /// The ram, by its gauge.
    Ram,
    /// The pulling rod, in tension.
    Rod,
    /// The ledge, pressed.
    Ledge,
    /// The flange, in shear round its root.
    Flange,
}

/// A load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Load {
    /// On what.
    pub bearer: Bearer,
    /// Now.
    pub now: Pressure,
    /// At most.
    pub most: Pressure,
}

/// Force of the strongest pull of a cylinder, where the ram is typed.
#[must_use]
pub fn pull_force(job: &Job, cylinder: u8) -> Option<Force> {
    let gauge_pa = strongest(job, cylinder)?;
    let ram = Ram::Annulus {
        outer: Diameter::from_m(job.engine_si(Field::RamBore)?),
        inner: Diameter::from_m(job.engine_si(Field::RamHole).unwrap_or(0.0)),
    };
    ram_force(Pressure::from_pa(gauge_pa), ram).ok()
}

fn strongest(job: &Job, cylinder: u8) -> Option<f64> {
    job.entries
        .values(Owner::Cylinder(cylinder), Field::PullGauge)
        .into_iter()
        .map(|(_, v)| v)
        .reduce(f64::max)
}

/// The loads of the strongest pull of a cylinder, as far as ram, rod and
/// limits were typed with the engine.
#[must_use]
pub fn loads(job: &Job, cylinder: u8) -> Vec<Load> {
    strongest(job, cylinder).map_or_else(Vec::new, |gauge_pa| loads_at(job, cylinder, gauge_pa))
}

/// The highest gauge pressure at which nothing bears more than it may, and what
/// would give first; `None` without ram or limits. Loads go with the pressure.
#[must_use]
pub fn gauge_most(job: &Job, cylinder: u8) -> Option<(Pressure, Bearer)> {
    const TRIED_PA: f64 = 1e6;
    loads_at(job, cylinder, TRIED_PA)
        .into_iter()
        .filter(|load| load.now.as_pa() > 0.0)
        .map(|load| (TRIED_PA * load.most.as_pa() / load.now.as_pa(), load.bearer))
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(gauge_pa, bearer)| (Pressure::from_pa(gauge_pa), bearer))
}

/// Whether the strongest pull of a cylinder loaded anything beyond what it may
/// bear.
#[must_use]
pub fn is_overloaded(job: &Job, cylinder: u8) -> bool {
    let over = |load: &Load| load.now.as_pa() > load.most.as_pa() * (1.0 + 1e-9);
    loads(job, cylinder).iter().any(over)
}

fn loads_at(job: &Job, cylinder: u8, gauge_pa: f64) -> Vec<Load> {
    let chamfer = Place::of_cylinder(cylinder, Field::ChamferHere, 0);
    let chamfer_m = job.entries.si(chamfer).unwrap_or(0.0);
    let engine = |field| job.engine_si(field);
    let mut list = Vec::new();
    if let Some(rated) = engine(Field::RamRated) {
        list.push(Load {
            bearer: Bearer::Ram,
            now: Pressure::from_pa(gauge_pa),
            most: Pressure::from_pa(OF_RATING * rated),
        });
    }
    let answer = (|| {
        let d = |field| engine(field).map(Diameter::from_m);
        pull(&PullInput {
            gauge: Pressure::from_pa(gauge_pa),
            ram: Ram::Annulus {
                outer: d(Field::RamBore)?,
                inner: Diameter::from_m(engine(Field::RamHole).unwrap_or(0.0)),
            },
            rod_major: d(Field::RodD)?,
            rod_pitch: Length::from_m(engine(Field::RodPitch)?),
            rod_thread: match job.engine.units {
                UnitSystem::Inch => Thread::Inch,
                UnitSystem::Metric => Thread::Metric,
            },
            rod_length: Length::from_m(engine(Field::SleeveLength)?),
            rod_youngs: Pressure::from_pa(STEEL_PA),
            ledge_outer: d(Field::FlangeOd)?,
            // The chamfer takes off the ledge what it clears for the fillet.
            ledge_inner: Diameter::from_m(engine(Field::NominalOd)? + 2.0 * chamfer_m),
            flange_thickness: Length::from_m(engine(Field::NominalFlange)?),
            flange_root: d(Field::NominalOd)?,
        })
        .ok()
    })();
    if let Some(answer) = answer {
        if let Some(yield_pa) = engine(Field::RodYield) {
            list.push(Load {
                bearer: Bearer::Rod,
                now: answer.rod_stress,
                most: Pressure::from_pa(OF_YIELD * yield_pa),
            });
        }
        if let Some(most_pa) = engine(Field::LedgeMost) {
            list.push(Load {
                bearer: Bearer::Ledge,
                now: answer.ledge_pressure,
                most: Pressure::from_pa(most_pa),
            });
        }
        if let Some(most_pa) = engine(Field::FlangeMost) {
            list.push(Load {
                bearer: Bearer::Flange,
                now: answer.flange_shear,
                most: Pressure::from_pa(most_pa),
            });
        }
    }
    list
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use core::f64::consts::PI;

    #[test]
    fn ram_rod_ledge_and_flange_of_the_demo_worked_by_hand() {
        let list = loads(&Demo::InchFive.job(0), 1);
        let now = |bearer| {
            list.iter()
                .find(|l| l.bearer == bearer)
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
        let (most, first) = gauge_most(&job, 1).unwrap();
        assert_eq!(first, Bearer::Rod);
        close(most.as_psi(), 4000.0 * 65_000.0 / (force / 0.6057));
        assert!(!is_overloaded(&job, 1));
        let place = Place::of_cylinder(1, Field::PullGauge, 1);
        let entry = crate::job::Entry::new("5000", job.unit(Field::PullGauge), 1);
        job.entries.put(place, entry);
        assert!(is_overloaded(&job, 1));
        assert_eq!(
            loads(
                &Job::new(Demo::InchFive.profile(0).0, Demo::InchFive.profile(0).1),
                1
            ),
            []
        );
    }
}
