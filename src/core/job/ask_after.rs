//! Asks for the steps round and after the drop: the room's oxygen, the chill,
//! warming, pistons, groove, finish, ring gaps.

use super::ask::{Hindrance, Outcome, TINY_M, View, length_figure};
use super::ask_before::{figure, more, plain, says};
use super::field::Measure;
use super::handover::gasket;
use super::profile::elastic;
use super::report::{Answer, Detail, Figure, Next, Signal};
use super::step::StepId;
use super::{Field, Owner, Place};
use crate::mechanics::rings::PressFit;
use crate::metrology::form::form;
use crate::planning::engine::{EngineEffect, EngineInput, engine_effect};
use crate::planning::finish::{CrossHatch, Finish, FinishInput, Hatch, cross_hatch, finish};
use crate::planning::groove::groove;
use crate::quantity::report::Finding;
use crate::quantity::{Diameter, Length, Seconds, Temperature, Volume};
use crate::thermal::oxygen::{LIMIT, OxygenInput, oxygen};

/// Air changes an hour of a closed shop in which none is typed: none.
const CLOSED_ROOM: f64 = 0.0;
/// Time over which the nitrogen boils where none is typed, s.
const USUAL_RELEASE_S: f64 = 1800.0;

/// Index of "dragged" among the outcomes of a drop.
const DRAGGED: u8 = 1;
/// Index of "stuck".
const STUCK: u8 = 2;

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

    /// How the sleeve went in, once that is said; its numbers are the page's to
    /// ask for ([`super::drop`]), as they take the longest.
    pub(super) fn dropped(&self) -> Outcome {
        let step = StepId::Drop;
        let signal = match self.own(Field::DropOutcome).map(|index| index as u8) {
            Some(DRAGGED) => Signal::Look,
            Some(STUCK) => Signal::Stop,
            Some(_) => Signal::Go,
            None => return Outcome::plain(Signal::Go, Next::DropReady),
        };
        Outcome::plain(signal, Next::Says(step, signal))
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

    /// The largest protrusion, with gasket and sheet the room to the head, with
    /// the engine's stroke and ratio what the deck cut made of the ratio.
    pub(super) fn protrusion(&self) -> Result<Outcome, Hindrance> {
        let readings = self.some(Field::PistonProud)?;
        let most_m = readings.iter().map(|(_, v)| *v).fold(f64::MIN, f64::max);
        let step = StepId::Protrusion;
        // The gasket that is entered, else the grade that the job's pistons ask
        // for, else the thickest there is.
        let grade = gasket(self.job).and_then(|g| g.grade).map(|grade| {
            grade.map_or_else(
                || {
                    let grades = self.job.entries.values(Owner::Block, Field::GasketGrades);
                    grades.iter().map(|(_, si)| *si).fold(0.0, f64::max)
                },
                Length::as_m,
            )
        });
        let chosen = self.job.engine_si(Field::Gasket).or(grade);
        let (signal, number) = match (chosen, self.job.engine_si(Field::HeadLeast)) {
            (Some(gasket_m), Some(least_m)) => {
                let room_m = gasket_m - most_m;
                let signal = if room_m < least_m - TINY_M {
                    Signal::Stop
                } else {
                    Signal::Go
                };
                (signal, length_figure(Figure::HeadRoom, room_m, None))
            }
            _ => (
                Signal::None,
                length_figure(Figure::PistonProud, most_m, None),
            ),
        };
        let mut further = vec![more(Detail::Largest, most_m)];
        further.extend(chosen.map(|gasket_m| more(Detail::GasketTaken, gasket_m)));
        if let Some(effect) = self.effect()? {
            further.push(plain(Detail::Compression, effect.compression_ratio));
        }
        Ok(Outcome {
            answer: Answer::More(further),
            ..says(step, signal, number)
        })
    }

    /// The bank that this cylinder stands in.
    fn bank(&self) -> u8 {
        match self.owner {
            Owner::Cylinder(cylinder) => self.job.engine.bank_of(cylinder),
            Owner::Bank(bank) => bank,
            Owner::Block => 0,
        }
    }

    /// What the deck lost: the cut decided on, else the cut planned.
    fn deck_cut(&self) -> Result<f64, Hindrance> {
        let place = Place::of_bank(self.bank(), Field::DeckCut, 0);
        match self.job.entries.si(place) {
            Some(cut) => Ok(cut),
            None => self.engine(Field::PlannedCut),
        }
    }

    /// What the cut does to the engine; `None` without its stroke and ratio.
    fn effect(&self) -> Result<Option<EngineEffect>, Hindrance> {
        let (Ok(bore_m), Ok(stroke_m), Ok(ratio)) = (
            self.engine(Field::FinalBore),
            self.engine(Field::Stroke),
            self.engine(Field::Compression),
        ) else {
            return Ok(None);
        };
        Ok(Some(engine_effect(&EngineInput {
            bore: Diameter::from_m(bore_m),
            stroke: Length::from_m(stroke_m),
            compression_ratio: ratio,
            removal: Length::from_m(self.deck_cut()?),
            gasket_change: Length::from_m(0.0),
            protrusion: Length::from_m(0.0),
        })?))
    }

    pub(super) fn groove(&self) -> Result<Outcome, Hindrance> {
        let readings = self.some(Field::GrooveDepth)?;
        let thickness = self.some(Field::FlangeThickness)?;
        let thinnest_m = thickness.iter().map(|(_, v)| *v).fold(f64::MAX, f64::min);
        let cut_m = self.deck_cut()?;
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

    /// The fitted sleeve as it is to be finished; `None` while the fit or a
    /// number of the engine is missing.
    fn to_finish(&self) -> Result<Option<Finish>, Hindrance> {
        let (Ok(fit), Ok(inner_m), Ok(finished_m)) = (
            self.ask_fit(),
            self.engine(Field::SleeveId),
            self.engine(Field::FinalBore),
        ) else {
            return Ok(None);
        };
        let (Ok(joint_m), Ok(wall_m), Ok(length_m), Ok(hone_m)) = (
            self.engine(Field::NominalOd),
            self.engine(Field::BlockWall),
            self.engine(Field::SleeveLength),
            self.engine(Field::FinishLeast),
        ) else {
            return Ok(None);
        };
        Ok(Some(finish(&FinishInput {
            fit: PressFit {
                sleeve_inner: Diameter::from_m(inner_m),
                joint: Diameter::from_m(joint_m),
                block_outer: Diameter::from_m(joint_m + 2.0 * wall_m),
                sleeve: elastic(self.job.engine.sleeve_material),
                block: elastic(self.job.engine.block_material),
                interference: fit.interference_mean,
                rz_sleeve: Length::from_m(0.0),
                rz_bore: Length::from_m(0.0),
                smoothing: 0.0,
                length: Length::from_m(length_m),
                friction: 0.0,
            },
            finished: Diameter::from_m(finished_m),
            hone: Length::from_m(hone_m),
            piston: self.engine(Field::PistonD).ok().map(Diameter::from_m),
        })?))
    }

    /// The cross-hatch that stroke, turns and cycles of the hone make.
    fn hatch(&self, bore_m: f64) -> Result<Option<CrossHatch>, Hindrance> {
        let (Ok(stroke_m), Ok(turns), Ok(cycles)) = (
            self.engine(Field::HoneStroke),
            self.engine(Field::HoneTurns),
            self.engine(Field::HoneCycles),
        ) else {
            return Ok(None);
        };
        Ok(Some(cross_hatch(
            Diameter::from_m(bore_m),
            Length::from_m(stroke_m),
            turns / 60.0,
            Hatch::Cycles(cycles / 60.0),
        )?))
    }

    /// What the fit leaves to take; once it is measured, stock and form of the
    /// bore, and the piston's room in it.
    pub(super) fn finish(&self) -> Result<Outcome, Hindrance> {
        let step = StepId::Finish;
        let final_m = self.engine(Field::FinalBore)?;
        let mut further = Vec::new();
        let mut findings = Vec::new();
        let planned = self.to_finish()?;
        if let Some(planned) = &planned {
            further.push(more(Detail::CloseIn, planned.close_in.as_m()));
            further.push(more(Detail::BoreTo, planned.bore_to.as_m()));
            further.push(plain(Detail::GripLeft, 100.0 * planned.grip_left));
            findings.clone_from(&planned.findings);
        }
        if let Some(hatch) = self.hatch(final_m)? {
            let degrees = |rad: f64| rad.to_degrees();
            further.push(plain(Detail::HatchIncluded, degrees(hatch.included_rad)));
            let one = degrees(hatch.to_horizontal_rad);
            further.push(plain(Detail::HatchHorizontal, one));
        }
        let levels = match (self.levels(Field::FinishD), &planned) {
            (Ok(levels), _) => levels,
            (Err(Hindrance::Missing(field)), Some(planned)) => {
                // Not measured yet: what is to come off.
                let stock = length_figure(Figure::FinishStock, planned.stock.as_m(), None);
                let measure = Next::Measure(field, field.spec().places.count());
                return Ok(Outcome {
                    number: Some(stock),
                    findings,
                    answer: Answer::More(further),
                    ..Outcome::plain(Signal::None, measure)
                });
            }
            (Err(other), _) => return Err(other),
        };
        let answer = form(&levels)?;
        let stock_m = final_m - answer.mean.as_m();
        let limit_m = self.engine(Field::BoreForm)?;
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
        further.push(more(Detail::Round, answer.out_of_round.as_m()));
        further.push(more(Detail::Taper, answer.taper.as_m()));
        if let Ok(piston_m) = self.engine(Field::PistonD) {
            let room_m = answer.mean.as_m() - piston_m;
            further.push(more(Detail::PistonRoom, room_m));
            let least = self.engine(Field::PistonLeast).ok();
            if signal == Signal::Go && least.is_some_and(|least_m| room_m < least_m - TINY_M) {
                findings.push(Finding::stop(
                    "piston_tight",
                    "the piston has less room in its bore than the sheet asks for: measure \
                     both again, then hone or stop",
                ));
            }
        }
        Ok(Outcome {
            signal,
            next,
            number: Some(length_figure(Figure::FinishStock, stock_m, None)),
            findings,
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
