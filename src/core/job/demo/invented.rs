//! Two invented engines with a filled-in job each, to look round in: an
//! in-line five in inches and a V-eight in millimetres. In each one cylinder
//! has stopped moving under the ram although its flange is not on its ledge.
//!
//! All names and readings are invented. The readings are laid out as a shop
//! would take them: sleeve and bore within a tenth or two, pulls that settle.

use crate::job::demo::bench;
use crate::job::demo::kind::{Demo, put};
use crate::job::model::engine::{Engine, Layout, presets};
use crate::job::model::entries::{Entries, Entry};
use crate::job::model::field::Field;
use crate::job::model::field_kind::{Scope, UnitSystem};
use crate::job::model::job::Job;
use crate::job::model::place::{Millis, Owner, Place};
use crate::materials::MaterialId;
use crate::quantity::format::fixed;

impl Demo {
    const fn figures(self) -> &'static Figures {
        match self {
            Self::InchFive => &INCH_FIVE,
            Self::MetricEight => &METRIC_EIGHT,
        }
    }

    /// Its engine and the numbers of its profile.
    #[must_use]
    pub fn profile(self, at: Millis) -> (Engine, Entries) {
        let f = self.figures();
        let engine = Engine {
            name: f.name.to_owned(),
            cylinders: f.cylinders,
            layout: f.layout,
            units: f.units,
            sleeve_material: f.sleeve_material,
            block_material: f.block_material,
        };
        let mut entries = presets(Scope::Engine, f.units, at);
        for (field, text) in f.profile.iter().chain(bench::profile(self)) {
            entries.put(
                Place::of_engine(*field),
                Entry::new(*text, field.unit(f.units), at),
            );
        }
        (engine, entries)
    }

    /// Its filled-in job.
    #[must_use]
    pub fn job(self, at: Millis) -> Job {
        let f = self.figures();
        let (engine, entries) = self.profile(at);
        let mut job = Job::new(engine, entries);
        job.name = f.job.to_owned();
        job.customer = f.customer.to_owned();
        for cylinder in 1..=f.cylinders {
            fill_cylinder(&mut job, f, cylinder, cylinder == self.not_home(), at);
        }
        bench::fill(&mut job, self, at);
        for bank in 0..job.engine.banks() {
            for (index, below) in f.low_spots.iter().enumerate() {
                put(
                    &mut job,
                    Place::of_bank(bank, Field::LowSpot, index as u8),
                    f.text(*below),
                    at,
                );
            }
        }
        job
    }
}

/// The figures of a demo. Lengths are whole counts of its smallest digit:
/// tenths of a thou, or micrometres.
struct Figures {
    name: &'static str,
    job: &'static str,
    customer: &'static str,
    cylinders: u8,
    layout: Layout,
    units: UnitSystem,
    sleeve_material: MaterialId,
    block_material: MaterialId,
    profile: &'static [(Field, &'static str)],
    decimals: usize,
    /// Sleeve OD of cylinder 1; the others differ by a digit or two.
    od: i32,
    /// Interference.
    fit: i32,
    /// Flange thickness.
    flange: i32,
    /// Stand-proud cut for.
    proud: i32,
    /// Height above predicted after warming.
    climbed: i32,
    /// Height above predicted after each pull, of a sleeve that comes home.
    home: [i32; 4],
    /// And of the one that does not.
    high: [i32; 4],
    /// Elastic return.
    springs: i32,
    /// Spread of readings.
    spread: i32,
    gauges: [&'static str; 4],
    temperatures: [&'static str; 2],
    low_spots: &'static [i32],
}

impl Figures {
    fn text(&self, digits: i32) -> String {
        let scale = 10_i32.pow(self.decimals as u32);
        fixed(f64::from(digits) / f64::from(scale), self.decimals)
    }
}

const INCH_FIVE: Figures = Figures {
    name: "Oxbow five, in-line (demo)",
    job: "Demo 1: Oxbow five",
    customer: "Heron Lane Drainage (invented)",
    cylinders: 5,
    layout: Layout::InLine,
    units: UnitSystem::Inch,
    sleeve_material: MaterialId::GrayIron,
    block_material: MaterialId::GrayIron,
    profile: &[
        (Field::NominalOd, "4.4400"),
        (Field::SleeveId, "4.1900"),
        (Field::SleeveLength, "8.6250"),
        (Field::NominalFlange, "0.2190"),
        (Field::BlockWall, "0.3200"),
        (Field::HalfWidth, "3.6000"),
        (Field::HeadClamp, "9000"),
    ],
    decimals: 4,
    od: 44_412,
    fit: 12,
    flange: 2_190,
    proud: 100,
    climbed: 62,
    home: [28, 7, 3, 2],
    high: [68, 47, 43, 42],
    springs: 8,
    spread: 1,
    gauges: ["3000", "4000", "4000", "4000"],
    temperatures: ["68", "69"],
    low_spots: &[0, 5, 10, 8, 3, 6, 4, 9, 2, 7, 5, 3],
};

const METRIC_EIGHT: Figures = Figures {
    name: "Fenmoor V-eight (demo)",
    job: "Demo 2: Fenmoor V-eight",
    customer: "Kiln Road Haulage (invented)",
    cylinders: 8,
    layout: Layout::VHalves,
    units: UnitSystem::Metric,
    sleeve_material: MaterialId::DuctileIronPearlitic,
    block_material: MaterialId::GrayIron,
    profile: &[
        (Field::NominalOd, "132.000"),
        (Field::SleeveId, "125.400"),
        (Field::SleeveLength, "214.000"),
        (Field::NominalFlange, "8.900"),
        (Field::BlockWall, "8.500"),
        (Field::JacketFrom, "18.000"),
        (Field::JacketTo, "205.000"),
        (Field::HeadClamp, "45"),
    ],
    decimals: 3,
    od: 132_036,
    fit: 31,
    flange: 8_900,
    proud: 250,
    climbed: 160,
    home: [70, 16, 8, 5],
    high: [170, 116, 108, 104],
    springs: 20,
    spread: 2,
    gauges: ["210", "280", "280", "280"],
    temperatures: ["20", "20.5"],
    low_spots: &[0, 12, 25, 18, 8, 15, 10, 20, 5, 14],
};

fn fill_cylinder(job: &mut Job, f: &Figures, cylinder: u8, stays_high: bool, at: Millis) {
    let owner = Owner::Cylinder(cylinder);
    let mut set = |field, index, text: String| {
        put(
            job,
            Place {
                owner,
                field,
                index,
            },
            text,
            at,
        );
    };
    // Sleeves of one batch differ by a digit or two.
    let od = f.od + f.spread * (i32::from(cylinder) % 3);
    for (index, off) in [0, 1, 1, 0, 0, -1].into_iter().enumerate() {
        set(Field::SleeveOd, index as u8, f.text(od + f.spread * off));
        set(
            Field::BoreD,
            index as u8,
            f.text(od - f.fit + f.spread * (1 - off).min(1) / 2),
        );
    }
    set(Field::SleeveTemperature, 0, f.temperatures[0].to_owned());
    set(Field::BlockTemperature, 0, f.temperatures[1].to_owned());
    set(Field::Carry, 0, (7 + cylinder % 4).to_string());
    let outcome = if stays_high { "dragged" } else { "free" };
    set(Field::DropOutcome, 0, outcome.to_owned());
    set(
        Field::DeckHere,
        0,
        f.text(f.low_spots[usize::from(cylinder) % f.low_spots.len()]),
    );
    // A hand feed does not stop at the same digit twice.
    let proud = f.proud + 2 * f.spread * [0, 1, -1][usize::from(cylinder) % 3];
    let drops = if stays_high { &f.high } else { &f.home };
    for (clock, off) in [0, 1, 0, 1].into_iter().enumerate() {
        let clock = clock as u8;
        let thickness = f.flange + f.spread * off;
        let depth = f.flange - proud;
        set(Field::FlangeThickness, clock, f.text(thickness));
        set(Field::CounterboreDepth, clock, f.text(depth));
        let tilt = f.spread * [0, 1, 0, -1][usize::from(clock)];
        set(Field::WarmHeight, clock, f.text(proud + f.climbed + tilt));
        set(Field::SeatHeight, clock, f.text(proud + drops[3] + tilt));
    }
    for (pull, (drop, gauge)) in drops.iter().zip(f.gauges).enumerate() {
        let pull = pull as u8;
        set(Field::PullGauge, pull, gauge.to_owned());
        set(Field::PullLoaded, pull, f.text(proud + drop - f.springs));
        set(Field::PullReleased, pull, f.text(proud + drop));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::model::check::{Checked, Sheet, check};
    use crate::job::model::step::StepId;
    use crate::job::steps::assess::assess;
    use crate::job::steps::deck::{Lock, lock, plan};
    use crate::job::verdict::{Next, Signal, State};

    #[test]
    fn one_cylinder_stopped_moving_but_is_not_home_and_the_others_are() {
        for demo in Demo::ALL {
            let job = demo.job(0);
            for report in assess(&job) {
                let seat = report.step(StepId::Seat).map(|s| s.next);
                let pull = report.step(StepId::Pull).map(|s| s.next);
                if report.cylinder == demo.not_home() {
                    assert!(
                        matches!(seat, Some(Next::NotSeated(_))),
                        "{demo:?} {seat:?}"
                    );
                    assert!(
                        matches!(pull, Some(Next::StoppedHigh(_))),
                        "{demo:?} {pull:?}"
                    );
                    assert_eq!(report.state, State::Stop);
                    assert!(!report.is_seated());
                } else {
                    assert_eq!(seat, Some(Next::Seated), "{demo:?} {}", report.cylinder);
                    assert_eq!(pull, Some(Next::CheckSeat), "{demo:?} {}", report.cylinder);
                    assert_eq!(report.state, State::Seated);
                    for step in report.steps.iter().filter(|s| s.begun) {
                        assert_eq!(step.signal, Signal::Go, "{demo:?} {:?}", step.id);
                        assert!(step.is_settled(), "{demo:?} {:?}", step.id);
                        assert!(step.complete, "{demo:?} {:?}", step.id);
                    }
                }
            }
        }
    }

    #[test]
    fn no_demo_reading_is_refused_or_questioned() {
        for demo in Demo::ALL {
            let job = demo.job(0);
            let sheet = Sheet::of(&job);
            for (place, entry) in job.entries.iter() {
                let checked = check(&sheet, *place);
                assert!(
                    matches!(checked, Checked::Good(_)),
                    "{demo:?} {place:?} {entry:?} {checked:?}"
                );
            }
        }
    }

    #[test]
    fn the_deck_of_the_failing_bank_is_locked_and_the_other_open() {
        let job = Demo::MetricEight.job(0);
        let reports = assess(&job);
        assert_eq!(lock(&job, &reports, 0), Lock::Open);
        assert_eq!(lock(&job, &reports, 1), Lock::Locked(vec![6]));
        assert!(plan(&job, 1).is_ok());
        let five = Demo::InchFive.job(0);
        assert_eq!(lock(&five, &assess(&five), 0), Lock::Locked(vec![3]));
    }
}
