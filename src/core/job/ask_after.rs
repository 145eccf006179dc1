//! Asks for the steps round and after the drop: the room's oxygen, the chill,
//! warming, pistons, groove, finish, ring gaps.

use super::ask::{Hindrance, Outcome, TINY_M, View, length_figure};
use super::ask_before::{figure, more, says};
use super::field::Measure;
use super::report::{Answer, Detail, Figure, Next, Signal};
use super::step::StepId;
use super::{Field, Owner, Place};
use crate::metrology::form::form;
use crate::planning::groove::groove;
use crate::quantity::{Length, Seconds, Temperature, Volume};
use crate::thermal::oxygen::{LIMIT, OxygenInput, oxygen};

/// Air changes an hour of a closed shop in which none is typed: none.
const CLOSED_ROOM: f64 = 0.0;
/// Time over which the nitrogen boils where none is typed, s.
const USUAL_RELEASE_S: f64 = 1800.0;

impl View<'_> {
    pub(super) fn oxygen(&self) -> Result<Outcome, Hindrance> {
        let answer = oxygen(&OxygenInput {
            room: Volume::from_m3(self.single(Field::RoomVolume)?),
            nitrogen_l: self.single(Field::RoomLitres)?,
            temperature: Temperature::from_k(self.engine(Field::RoomTemperature)?),
            air_changes_per_h: self.own(Field::AirChanges).unwrap_or(CLOSED_ROOM),
            release: Seconds::from_s(self.own(Field::Release).unwrap_or(USUAL_RELEASE_S)),
        })?;
        let signal = if answer.least < LIMIT {
            Signal::Stop
        } else if answer.sudden < LIMIT {
            Signal::Look
        } else {
            Signal::Go
        };
        let number = figure(Figure::OxygenLeft, 100.0 * answer.least, Measure::Plain);
        Ok(Outcome {
            findings: answer.findings.clone(),
            answer: Answer::Oxygen(answer),
            ..says(StepId::DryRun, signal, number)
        })
    }

    /// Whether it was in the bath long enough, by the slow end of the band.
    pub(super) fn chill(&self) -> Result<Outcome, Hindrance> {
        let answer = self.ask_chill()?;
        let number = figure(Figure::Quiet, answer.quiet.as_s(), Measure::Time);
        let signal = match self.own(Field::ChillTime) {
            None => Signal::None,
            Some(s) if s < answer.quiet_low.as_s() => Signal::Wait,
            Some(s) if s < answer.quiet_high.as_s() => Signal::Look,
            Some(_) => Signal::Go,
        };
        Ok(Outcome {
            answer: Answer::Chill(answer),
            ..says(StepId::Chill, signal, number)
        })
    }

    pub(super) fn warmed(&self) -> Result<Outcome, Hindrance> {
        let apart = self.degrees(
            (self.single(Field::SleeveWarm)? - self.engine(Field::RoomTemperature)?).abs(),
        );
        let signal = if apart <= self.engine(Field::ApartMost)? + 1e-6 {
            Signal::Go
        } else {
            Signal::Wait
        };
        let number = figure(Figure::WarmApart, apart, Measure::Plain);
        Ok(says(StepId::Hold, signal, number))
    }

    /// The largest protrusion, and with gasket and sheet the room to the head.
    pub(super) fn protrusion(&self) -> Result<Outcome, Hindrance> {
        let readings = self.some(Field::PistonProud)?;
        let most_m = readings.iter().map(|(_, v)| *v).fold(f64::MIN, f64::max);
        let gasket = self.engine(Field::Gasket).ok();
        let least = self.engine(Field::HeadLeast).ok();
        let (Some(gasket_m), Some(least_m)) = (gasket, least) else {
            let number = length_figure(Figure::PistonProud, most_m, None);
            return Ok(says(StepId::Protrusion, Signal::None, number));
        };
        let room_m = gasket_m - most_m;
        let signal = if room_m < least_m - TINY_M {
            Signal::Stop
        } else {
            Signal::Go
        };
        Ok(Outcome {
            answer: Answer::More(vec![more(Detail::Largest, most_m)]),
            ..says(
                StepId::Protrusion,
                signal,
                length_figure(Figure::HeadRoom, room_m, None),
            )
        })
    }

    pub(super) fn groove(&self) -> Result<Outcome, Hindrance> {
        let readings = self.some(Field::GrooveDepth)?;
        let thickness = self.some(Field::FlangeThickness)?;
        let thinnest_m = thickness.iter().map(|(_, v)| *v).fold(f64::MAX, f64::min);
        let bank = match self.owner {
            Owner::Cylinder(cylinder) => self.job.engine.bank_of(cylinder),
            Owner::Bank(bank) => bank,
            Owner::Block => 0,
        };
        let cut_m = match self.job.entries.si(Place::of_bank(bank, Field::DeckCut, 0)) {
            Some(cut) => cut,
            None => self.engine(Field::PlannedCut)?,
        };
        let wanted = groove(
            self.length(Field::RingHeight)?,
            self.length(Field::RingProud)?,
            Length::from_m(thinnest_m - cut_m),
        )?;
        let (wanted_m, near_m) = (wanted.depth.as_m(), self.engine(Field::GrooveNear)?);
        // The reading farthest off decides, too deep before too shallow.
        let deepest_m = readings.iter().map(|(_, v)| *v).fold(f64::MIN, f64::max) - wanted_m;
        let least_m = readings.iter().map(|(_, v)| *v).fold(f64::MAX, f64::min) - wanted_m;
        let step = StepId::Groove;
        let (signal, next, off_m) = if deepest_m > near_m + TINY_M {
            let by = Length::from_m(deepest_m);
            (
                Signal::Stop,
                Next::SaysBy(step, Signal::Stop, by),
                deepest_m,
            )
        } else if least_m < -near_m - TINY_M {
            let by = Length::from_m(-least_m);
            (Signal::Wait, Next::SaysBy(step, Signal::Wait, by), least_m)
        } else {
            (Signal::Go, Next::Says(step, Signal::Go), deepest_m)
        };
        Ok(Outcome {
            signal,
            next,
            number: Some(length_figure(Figure::GrooveOff, off_m, None)),
            findings: wanted.findings,
            answer: Answer::More(vec![
                more(Detail::GrooveWanted, wanted_m),
                more(Detail::FloorLeft, wanted.floor.as_m()),
            ]),
        })
    }

    /// Stock left at the finish, then the form of the finished bore.
    pub(super) fn finish(&self) -> Result<Outcome, Hindrance> {
        let answer = form(&self.levels(Field::FinishD)?)?;
        let stock_m = self.engine(Field::FinalBore)? - answer.mean.as_m();
        let limit_m = self.engine(Field::BoreForm)?;
        let step = StepId::Finish;
        let crooked = answer.out_of_round.as_m() > limit_m + TINY_M
            || answer.taper.as_m().abs() > limit_m + TINY_M;
        let (signal, next) = if stock_m > limit_m + TINY_M {
            let by = Length::from_m(stock_m);
            (Signal::Wait, Next::SaysBy(step, Signal::Wait, by))
        } else if stock_m < -limit_m - TINY_M {
            let by = Length::from_m(-stock_m);
            (Signal::Stop, Next::SaysBy(step, Signal::Stop, by))
        } else if crooked {
            (Signal::Look, Next::Says(step, Signal::Look))
        } else {
            (Signal::Go, Next::Says(step, Signal::Go))
        };
        let further = vec![
            more(Detail::Round, answer.out_of_round.as_m()),
            more(Detail::Taper, answer.taper.as_m()),
        ];
        Ok(Outcome {
            signal,
            next,
            number: Some(length_figure(Figure::FinishStock, stock_m, None)),
            findings: Vec::new(),
            answer: Answer::Form(answer, further),
        })
    }

    pub(super) fn ring_gaps(&self) -> Result<Outcome, Hindrance> {
        let gaps = self.some(Field::RingGapNow)?;
        let least_m = gaps.iter().map(|(_, v)| *v).fold(f64::MAX, f64::min);
        let most_m = gaps.iter().map(|(_, v)| *v).fold(f64::MIN, f64::max);
        let low_m = self.engine(Field::RingGapLow)?;
        let high_m = self.engine(Field::RingGapHigh)?;
        let step = StepId::RingGap;
        let signal = if least_m < low_m - TINY_M {
            Signal::Wait
        } else if most_m > high_m + TINY_M {
            Signal::Look
        } else {
            Signal::Go
        };
        Ok(Outcome {
            answer: Answer::More(vec![more(Detail::Largest, most_m)]),
            ..says(step, signal, length_figure(Figure::LeastGap, least_m, None))
        })
    }
}
