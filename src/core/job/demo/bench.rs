//! The demos' readings before the hone and round the drop: old bores, walls,
//! bar, counterbore, chill, tests. Invented, as everything in the demos.

use crate::job::demo::kind::{Demo, put};
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::{Millis, Owner, Place};
use crate::job::model::step::{Mark, StepId};

type Texts = &'static [(Field, &'static [&'static str])];

/// Numbers of the engine that the demos' first steps need.
pub(super) const fn profile(demo: Demo) -> &'static [(Field, &'static str)] {
    match demo {
        Demo::InchFive => &[
            (Field::FitLow, "0.0010"),
            (Field::FitHigh, "0.0015"),
            (Field::TargetProud, "0.0100"),
            (Field::PlannedCut, "0.0050"),
            (Field::CleanUp, "0.0020"),
            (Field::Pitch, "5.2000"),
            (Field::FlangeOd, "4.6400"),
            (Field::FinalBore, "4.2000"),
            (Field::StepBelow, "8.8800"),
            (Field::Spindle, "3.0000"),
            (Field::Passes, "3"),
            (Field::LastCut, "0.0100"),
            (Field::RzSleeve, "6"),
            (Field::RzBore, "4"),
            (Field::RunSleeve, "230"),
            (Field::RunBlock, "200"),
            (Field::GasPressure, "2000"),
            (Field::Gasket, "0.0450"),
            (Field::HeadLeast, "0.0300"),
            (Field::RingGapLow, "0.0160"),
            (Field::RingGapHigh, "0.0240"),
            (Field::RamBore, "4.0000"),
            (Field::RamHole, "2.1250"),
            (Field::RamRated, "10000"),
            (Field::RodD, "1.0000"),
            (Field::RodPitch, "0.1250"),
            (Field::RodYield, "130000"),
            (Field::LedgeMost, "45000"),
            (Field::FlangeMost, "20000"),
            (Field::RingHeight, "0.0600"),
            (Field::RingProud, "0.0060"),
            (Field::GrooveInner, "4.3600"),
            (Field::GrooveOuter, "4.4800"),
            (Field::Stroke, "5.5000"),
            (Field::Compression, "16.2"),
            (Field::PistonD, "4.1950"),
            (Field::PistonLeast, "0.0045"),
            (Field::HoneStroke, "6.0000"),
            (Field::HoneTurns, "150"),
            (Field::HoneCycles, "48"),
        ],
        Demo::MetricEight => &[
            (Field::FitLow, "0.025"),
            (Field::FitHigh, "0.038"),
            (Field::TargetProud, "0.250"),
            (Field::PlannedCut, "0.130"),
            (Field::CleanUp, "0.050"),
            (Field::Pitch, "160.000"),
            (Field::FlangeOd, "137.000"),
            (Field::FinalBore, "125.600"),
            (Field::StepBelow, "223.900"),
            (Field::Spindle, "80.000"),
            (Field::Gasket, "1.200"),
            (Field::HeadLeast, "0.800"),
            (Field::RingGapLow, "0.400"),
            (Field::RingGapHigh, "0.600"),
            (Field::RamBore, "100.000"),
            (Field::RamHole, "54.000"),
            (Field::RamRated, "700"),
            (Field::RodD, "27.000"),
            (Field::RodPitch, "2.000"),
            (Field::RodYield, "9000"),
            (Field::LedgeMost, "3000"),
            (Field::FlangeMost, "1400"),
            (Field::RingHeight, "1.500"),
            (Field::RingProud, "0.150"),
            (Field::GrooveInner, "129.800"),
            (Field::GrooveOuter, "133.200"),
            (Field::Stroke, "140.000"),
            (Field::Compression, "17.0"),
            (Field::PistonD, "125.470"),
            (Field::PistonLeast, "0.110"),
            (Field::HoneStroke, "150.000"),
            (Field::HoneTurns, "140"),
            (Field::HoneCycles, "45"),
        ],
    }
}

const fn of_block(demo: Demo) -> Texts {
    match demo {
        Demo::InchFive => &[
            (Field::HoursJob, &["6"]),
            (Field::HoursHole, &["1.5"]),
            (Field::HourPrice, &["95"]),
            (Field::SleevePrice, &["120"]),
            (Field::LitrePrice, &["2"]),
            (Field::BlockOut, &["140"]),
            (Field::RestTime, &["50400"]),
            (Field::BlockNow, &["69"]),
            (Field::SleevesNow, &["68"]),
            (Field::TestStart, &["40"]),
            (Field::TestEnd, &["40"]),
            (Field::TestTime, &["900"]),
            (Field::RoomVolume, &["8500"]),
            (Field::RoomLitres, &["20"]),
            (Field::AirChanges, &["2"]),
            (Field::Release, &["3600"]),
        ],
        Demo::MetricEight => &[
            (Field::HoursJob, &["7"]),
            (Field::HoursHole, &["1.5"]),
            (Field::HourPrice, &["80"]),
            (Field::SleevePrice, &["110"]),
            (Field::LitrePrice, &["1.5"]),
            (Field::BlockOut, &["60"]),
            (Field::RestTime, &["50400"]),
            (Field::BlockNow, &["20.5"]),
            (Field::SleevesNow, &["20"]),
            (Field::TestStart, &["2.8"]),
            (Field::TestEnd, &["2.8"]),
            (Field::TestTime, &["900"]),
            (Field::RoomVolume, &["400"]),
            (Field::RoomLitres, &["30"]),
            (Field::AirChanges, &["2"]),
            (Field::Release, &["3600"]),
        ],
    }
}

const fn of_bank(demo: Demo) -> &'static [&'static str] {
    match demo {
        Demo::InchFive => &["14.5000", "14.5006"],
        Demo::MetricEight => &["368.300", "368.315"],
    }
}

const fn of_cylinder(demo: Demo) -> Texts {
    match demo {
        Demo::InchFive => &[
            (
                Field::OldBore,
                &["4.2556", "4.2548", "4.2530", "4.2526", "4.2506", "4.2504"],
            ),
            (
                Field::WallReading,
                &[
                    "0.4180", "0.4020", "0.4210", "0.3990", "0.4260", "0.4110", "0.4300", "0.4080",
                    "0.4410", "0.4290", "0.4440", "0.4250",
                ],
            ),
            (
                Field::Indicator,
                &["0.0010", "0.0004", "-0.0008", "-0.0002"],
            ),
            (Field::BoredD, &["4.4388"]),
            (Field::HoneStrokes, &["26"]),
            (Field::FlangeOdHere, &["4.6402"]),
            (Field::CounterboreD, &["4.6440"]),
            (Field::Fillet, &["0.0300"]),
            (Field::ChamferHere, &["0.0380"]),
            (Field::ChillTime, &["180"]),
            (Field::HoldTime, &["1500"]),
            (Field::SleeveWarm, &["69"]),
        ],
        Demo::MetricEight => &[
            (
                Field::OldBore,
                &[
                    "127.110", "127.090", "127.050", "127.040", "127.010", "127.005",
                ],
            ),
            (
                Field::WallReading,
                &[
                    "10.900", "10.450", "11.050", "10.380", "11.150", "10.700", "11.300", "10.600",
                    "11.600", "11.200", "11.700", "11.150",
                ],
            ),
            (Field::Indicator, &["0.025", "0.010", "-0.020", "-0.005"]),
            (Field::BoredD, &["131.975"]),
            (Field::HoneStrokes, &["48"]),
            (Field::FlangeOdHere, &["137.005"]),
            (Field::CounterboreD, &["137.100"]),
            (Field::Fillet, &["0.800"]),
            (Field::ChamferHere, &["1.000"]),
            (Field::ChillTime, &["180"]),
            (Field::HoldTime, &["1500"]),
            (Field::SleeveWarm, &["20.5"]),
        ],
    }
}

/// Fills the steps that [`super::invented`] does not.
pub(super) fn fill(job: &mut Job, demo: Demo, at: Millis) {
    let cylinders = job.engine.cylinders;
    let mut all = |owner: Owner, texts: Texts| {
        for (field, list) in texts {
            for (index, text) in list.iter().enumerate() {
                let place = Place {
                    owner,
                    field: *field,
                    index: index as u8,
                };
                put(job, place, *text, at);
            }
        }
    };
    all(Owner::Block, of_block(demo));
    for cylinder in 1..=cylinders {
        all(Owner::Cylinder(cylinder), of_cylinder(demo));
    }
    for bank in 0..job.engine.banks() {
        for (index, text) in of_bank(demo).iter().enumerate() {
            let place = Place::of_bank(bank, Field::DeckHeight, index as u8);
            put(job, place, *text, at);
        }
    }
    for step in [StepId::Intake, StepId::Caps] {
        job.set_mark(Owner::Block, step, Some(Mark::Done), at);
    }
    for cylinder in 1..=job.engine.cylinders {
        job.set_mark(
            Owner::Cylinder(cylinder),
            StepId::Clean,
            Some(Mark::Done),
            at,
        );
    }
}
