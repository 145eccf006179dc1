//! What a pull puts on ram, rod, ledge and flange, against what each may bear:
//! 80 % of the ram's rated pressure, half the rod's yield (both from memory, no
//! source), ledge pressure and flange shear as typed with the engine.

use super::{Field, Job, Owner, UnitSystem};
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
    let Some(gauge_pa) = strongest(job, cylinder) else {
        return Vec::new();
    };
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
            ledge_inner: d(Field::NominalOd)?,
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
            force / (PI / 4.0 * (4.64 * 4.64 - 4.44 * 4.44)),
        );
        // Shear round the root of a 0.219 in flange on a 4.44 in sleeve.
        close(now(Bearer::Flange), force / (PI * 4.44 * 0.219));
        assert_eq!(
            loads(
                &Job::new(Demo::InchFive.profile(0).0, Demo::InchFive.profile(0).1),
                1
            ),
            []
        );
    }
}
