//! Asks the calculations with what a cylinder has, and turns their answers
//! into the next thing to do.

use super::deck::deck_beside;
use super::field::Measure;
use super::loads::is_overloaded;
use super::report::{Answer, Figure, Heights, Next, OneNumber, Signal};
use super::step::StepId;
use super::{Field, Job, Owner, Place};
use crate::materials::Material;
use crate::metrology::fit::{Fit, FitBand, FitInput, FitVerdict, fit};
use crate::metrology::form::{Level, form};
use crate::metrology::seat::{Pull, Seat, SeatInput, SeatVerdict, seat};
use crate::planning::counterbore::{CounterboreInput, counterbore};
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Diameter, DiametralInterference, Length, Pressure, Temperature};

/// What came out of a step's calculation.
pub(super) struct Outcome {
    pub(super) signal: Signal,
    pub(super) number: Option<OneNumber>,
    pub(super) next: Next,
    pub(super) findings: Vec<Finding>,
    pub(super) answer: Answer,
}

impl Outcome {
    pub(super) fn plain(signal: Signal, next: Next) -> Self {
        Self {
            signal,
            number: None,
            next,
            findings: Vec::new(),
            answer: Answer::None,
        }
    }
}

/// Why there is no outcome.
pub(super) enum Hindrance {
    Engine(Field),
    Missing(Field),
    Fault(Fault),
}

impl From<Fault> for Hindrance {
    fn from(fault: Fault) -> Self {
        Self::Fault(fault)
    }
}

/// A cylinder of a job, its block or one of its decks, asked.
pub(super) struct View<'a> {
    pub(super) job: &'a Job,
    pub(super) owner: Owner,
}

/// Heights round the clock that differ by more are read wrong or the sleeve is
/// cocked: 0.010 in (from memory, no source).
const COCKED_M: f64 = 254e-6;

impl View<'_> {
    pub(super) fn engine(&self, field: Field) -> Result<f64, Hindrance> {
        self.job.engine_si(field).ok_or(Hindrance::Engine(field))
    }

    pub(super) fn length(&self, field: Field) -> Result<Length, Hindrance> {
        self.engine(field).map(Length::from_m)
    }

    pub(super) fn values(&self, field: Field) -> Vec<(u8, f64)> {
        self.job.entries.values(self.owner, field)
    }

    pub(super) fn some(&self, field: Field) -> Result<Vec<(u8, f64)>, Hindrance> {
        let values = self.values(field);
        if values.is_empty() {
            Err(Hindrance::Missing(field))
        } else {
            Ok(values)
        }
    }

    pub(super) fn single(&self, field: Field) -> Result<f64, Hindrance> {
        self.some(field).map(|v| v[0].1)
    }

    /// Readings at three levels, two axes each, as levels of the form; the
    /// levels stand at the ends and the middle of the sleeve.
    pub(super) fn levels(&self, field: Field) -> Result<Vec<Level>, Hindrance> {
        let values = self.some(field)?;
        let length_m = self.engine(Field::SleeveLength)?;
        Ok((0..3_u8)
            .map(|level| Level {
                z: Length::from_m(length_m * f64::from(level) / 2.0),
                readings: values
                    .iter()
                    .filter(|(index, _)| index / 2 == level)
                    .map(|(_, si)| Diameter::from_m(*si))
                    .collect(),
            })
            .filter(|level| !level.readings.is_empty())
            .collect())
    }

    pub(super) fn sleeve_form(&self) -> Result<Outcome, Hindrance> {
        let levels = self.levels(Field::SleeveOd)?;
        let answer = form(&levels)?;
        // Lower down a sleeve springs round: only the level under the flange
        // is judged.
        let top = levels
            .first()
            .filter(|level| level.z.as_m() == 0.0)
            .and(answer.per_level.first())
            .map_or(0.0, |level| level.out_of_round.as_m());
        let (look, stop) = (
            self.engine(Field::RoundLook)?,
            self.engine(Field::RoundStop)?,
        );
        let (signal, next) = if top > stop + TINY_M {
            (Signal::Stop, Next::SleeveStop)
        } else if top > look + TINY_M {
            (Signal::Look, Next::SleeveLook)
        } else {
            (Signal::Go, Next::SleeveRound)
        };
        Ok(Outcome {
            signal,
            // One reading is no roundness.
            number: (self.values(Field::SleeveOd).len() > 1)
                .then(|| length_figure(Figure::OutOfRound, top, None)),
            next,
            findings: Vec::new(),
            answer: Answer::SleeveForm(answer),
        })
    }

    /// The deck beside this hole, 0 or below: as measured, else by the survey.
    fn deck_m(&self) -> f64 {
        match self.owner {
            Owner::Cylinder(cylinder) => {
                deck_beside(self.job, self.job.engine.bank_of(cylinder), cylinder)
            }
            _ => 0.0,
        }
    }

    pub(super) fn counterbore(&self) -> Result<Outcome, Hindrance> {
        let depth_now = lengths(&self.some(Field::CounterboreDepth)?);
        let thickness = lengths(&self.some(Field::FlangeThickness)?);
        let feed_sd = self.length(Field::FeedSd)?;
        let gauge_sd = self.length(Field::GaugeDepth)?;
        let answer = counterbore(&CounterboreInput {
            thickness: &thickness,
            target_proud: self.length(Field::TargetProud)?,
            depth_now: &depth_now,
            deck: Length::from_m(self.deck_m()),
            feed_sd,
            gauge_sd,
            removal: self.length(Field::PlannedCut)?,
            clean_up: self.length(Field::CleanUp)?,
            risk: self.engine(Field::Risk)?,
        })?;
        let to_go_m = answer.to_go.as_m();
        // Nearer than the gauge can tell is at depth.
        let near_m = 2.0 * gauge_sd.as_m();
        let (signal, next) = if to_go_m > near_m {
            (Signal::Wait, Next::CutDeeper(answer.to_go))
        } else if to_go_m < -near_m {
            (Signal::Stop, Next::TooDeep(Length::from_m(-to_go_m)))
        } else {
            (Signal::Go, Next::AtDepth)
        };
        let mut findings = answer.findings.clone();
        if signal == Signal::Go {
            // Within the gauge's own noise "too deep" would cry wolf.
            findings.retain(|f| f.code != "too_deep");
        }
        Ok(Outcome {
            signal,
            number: Some(length_figure(
                Figure::StillToCut,
                to_go_m,
                Some(gauge_sd.as_m()),
            )),
            next,
            findings,
            answer: Answer::Counterbore(answer),
        })
    }

    /// The interference, as measured.
    pub(super) fn ask_fit(&self) -> Result<Fit, Hindrance> {
        let bore = diameters(&self.some(Field::BoreD)?);
        let sleeve = diameters(&self.some(Field::SleeveOd)?);
        let sleeve_temperature = Temperature::from_k(self.single(Field::SleeveTemperature)?);
        let bore_temperature = Temperature::from_k(self.single(Field::BlockTemperature)?);
        let sleeve_material = Material::catalogue(self.job.engine.sleeve_material);
        let bore_material = Material::catalogue(self.job.engine.block_material);
        let (lo_m, hi_m) = (self.engine(Field::FitLow)?, self.engine(Field::FitHigh)?);
        Ok(fit(&FitInput {
            sleeve_d: &sleeve,
            bore_d: &bore,
            sleeve_temperature,
            bore_temperature,
            sleeve_material: &sleeve_material,
            bore_material: &bore_material,
            u_sleeve: self.length(Field::GaugeSleeve)?,
            u_bore: self.length(Field::GaugeBore)?,
            band: FitBand {
                lo: DiametralInterference::from_m(lo_m),
                hi: DiametralInterference::from_m(hi_m),
            },
        })?)
    }

    pub(super) fn fit(&self) -> Result<Outcome, Hindrance> {
        let answer = self.ask_fit()?;
        let (lo_m, hi_m) = (self.engine(Field::FitLow)?, self.engine(Field::FitHigh)?);
        let bore_form = form(&self.levels(Field::BoreD)?)?;
        let form_limit_m = self.engine(Field::BoreForm)?;
        let mean_m = answer.interference_mean.as_m();
        let (signal, next) = match answer.verdict {
            FitVerdict::Outside if mean_m > hi_m => (
                Signal::Wait,
                Next::HoneMore(Length::from_m(mean_m - 0.5 * (lo_m + hi_m))),
            ),
            FitVerdict::Outside => (Signal::Stop, Next::FitLoose(Length::from_m(lo_m - mean_m))),
            FitVerdict::Undecided => (Signal::Look, Next::FitUndecided),
            FitVerdict::Inside
                if bore_form.out_of_round.as_m() > form_limit_m + TINY_M
                    || bore_form.taper.as_m().abs() > form_limit_m + TINY_M =>
            {
                (Signal::Look, Next::BoreForm)
            }
            FitVerdict::Inside => (Signal::Go, Next::FitGood),
        };
        Ok(Outcome {
            signal,
            number: Some(length_figure(
                Figure::Fit,
                mean_m,
                Some(answer.u_interference.as_m()),
            )),
            next,
            findings: answer.findings.clone(),
            answer: Answer::Fit(answer, bore_form),
        })
    }

    /// Thickness, depth and height at the clocks where all three are known.
    fn clocks(&self, height: Field) -> Result<[Vec<Length>; 3], Hindrance> {
        let at = |values: &[(u8, f64)], clock: u8| {
            values
                .iter()
                .find(|(index, _)| *index == clock)
                .map(|(_, si)| Length::from_m(*si))
        };
        let thickness = self.some(Field::FlangeThickness)?;
        let depth = self.some(Field::CounterboreDepth)?;
        let heights = self.some(height)?;
        let mut lists = [Vec::new(), Vec::new(), Vec::new()];
        for clock in 0..4 {
            if let (Some(t), Some(c), Some(h)) = (
                at(&thickness, clock),
                at(&depth, clock),
                at(&heights, clock),
            ) {
                lists[0].push(t);
                lists[1].push(c);
                lists[2].push(h);
            }
        }
        if lists[0].is_empty() {
            return Err(Hindrance::Missing(height));
        }
        Ok(lists)
    }

    fn u_gap_m(&self) -> Result<f64, Hindrance> {
        let u = self
            .engine(Field::GaugeHeight)?
            .hypot(self.engine(Field::GaugeThickness)?);
        Ok(u.hypot(self.engine(Field::GaugeDepth)?))
    }

    pub(super) fn heights(&self) -> Result<Outcome, Hindrance> {
        let [thickness, depth, height] = self.clocks(Field::WarmHeight)?;
        let shim_m = self.engine(Field::Shim)?;
        let predicted: Vec<Length> = thickness
            .iter()
            .zip(&depth)
            .map(|(t, c)| Length::from_m(t.as_m() + shim_m - c.as_m()))
            .collect();
        let above_m = height
            .iter()
            .zip(&predicted)
            .map(|(h, p)| h.as_m() - p.as_m())
            .sum::<f64>()
            / height.len() as f64;
        let ceiling = super::drop::climb_ceiling(self.job);
        let u_gap_m = self.u_gap_m()?;
        let gap_limit_m = self.engine(Field::GapLimit)?;
        let (signal, next) = if above_m < -2.0 * u_gap_m {
            (Signal::Look, Next::BelowLedge)
        } else if above_m <= gap_limit_m {
            (Signal::Go, Next::HomeWarm)
        } else if ceiling.is_some_and(|c| above_m > c.as_m() + 2.0 * u_gap_m) {
            (Signal::Look, Next::AboveCeiling)
        } else {
            (Signal::Go, Next::PullHome)
        };
        let gaps = || {
            height
                .iter()
                .zip(&predicted)
                .map(|(h, p)| h.as_m() - p.as_m())
        };
        let apart_m = gaps().fold(f64::MIN, f64::max) - gaps().fold(f64::MAX, f64::min);
        let findings = if apart_m > COCKED_M {
            vec![Finding::look(
                "cocked",
                "one clock stands far from the others: a reading is wrong by a turn of the \
                 micrometer, or the sleeve is cocked. Measure again before pulling",
            )]
        } else {
            Vec::new()
        };
        Ok(Outcome {
            signal,
            number: Some(length_figure(
                Figure::AbovePredicted,
                above_m,
                Some(u_gap_m),
            )),
            next,
            findings,
            answer: Answer::Heights(Heights {
                predicted,
                height,
                above: Length::from_m(above_m),
                ceiling,
            }),
        })
    }

    /// The pulls that have a gauge pressure and a released reading, in order.
    fn pull_list(&self) -> Vec<Pull> {
        let at = |field, index| {
            self.job.entries.si(Place {
                owner: self.owner,
                field,
                index,
            })
        };
        (0..super::field::PULLS_MOST)
            .filter_map(|index| {
                Some(Pull {
                    gauge: Pressure::from_pa(at(Field::PullGauge, index)?),
                    loaded: at(Field::PullLoaded, index).map(Length::from_m),
                    relaxed: Length::from_m(at(Field::PullReleased, index)?),
                })
            })
            .collect()
    }

    fn ask_seat(&self, [thickness, depth, height]: &[Vec<Length>; 3]) -> Result<Seat, Hindrance> {
        let pulls = self.pull_list();
        Ok(seat(&SeatInput {
            thickness,
            depth,
            height,
            shim: self.length(Field::Shim)?,
            pulls: &pulls,
            u_height: self.length(Field::GaugeHeight)?,
            u_thickness: self.length(Field::GaugeThickness)?,
            u_depth: self.length(Field::GaugeDepth)?,
            gap_limit: self.length(Field::GapLimit)?,
            tilt_limit: self.length(Field::TiltLimit)?,
            confidence: self.engine(Field::Confidence)?,
        })?)
    }

    /// The seat as the pulls alone show it: one height, the last released one,
    /// against the mean predicted height. The tilt needs the four clocks.
    /// A pull beyond what ram, rod, ledge or flange may bear stops, whatever its
    /// heights say.
    pub(super) fn pulls(&self) -> Result<Outcome, Hindrance> {
        let over = match self.owner {
            Owner::Cylinder(cylinder) => is_overloaded(self.job, cylinder),
            _ => false,
        };
        let judged = self.judged_pulls();
        if !over {
            return judged;
        }
        let next = Next::Says(StepId::Pull, Signal::Stop);
        Ok(Outcome {
            signal: Signal::Stop,
            next,
            ..judged.unwrap_or_else(|_| Outcome::plain(Signal::Stop, next))
        })
    }

    fn judged_pulls(&self) -> Result<Outcome, Hindrance> {
        let pulls = self.pull_list();
        let last = pulls
            .last()
            .ok_or(Hindrance::Missing(Field::PullReleased))?
            .relaxed;
        let mean = |field| -> Result<Length, Hindrance> {
            let values = self.some(field)?;
            Ok(Length::from_m(
                values.iter().map(|(_, si)| si).sum::<f64>() / values.len() as f64,
            ))
        };
        let answer = self.ask_seat(&[
            vec![mean(Field::FlangeThickness)?],
            vec![mean(Field::CounterboreDepth)?],
            vec![last],
        ])?;
        let below = answer.findings.iter().any(|f| f.code == "below_ledge");
        let (signal, next) = match answer.verdict {
            _ if below => (Signal::Look, Next::BelowLedge),
            SeatVerdict::PullAgain => (Signal::Wait, Next::PullAgain),
            SeatVerdict::Seated => (Signal::Go, Next::CheckSeat),
            SeatVerdict::NotSeated => (Signal::Stop, Next::StoppedHigh(answer.gap_mean)),
            SeatVerdict::Undecided => (Signal::Look, Next::StoppedUnsure),
        };
        Ok(Outcome {
            signal,
            number: Some(length_figure(
                Figure::GapAfterPull,
                answer.gap_mean.as_m(),
                Some(answer.u_gap.as_m()),
            )),
            next,
            findings: answer.findings.clone(),
            answer: Answer::Pulls(answer),
        })
    }

    pub(super) fn seat(&self) -> Result<Outcome, Hindrance> {
        let answer = self.ask_seat(&self.clocks(Field::SeatHeight)?)?;
        let below = answer.findings.iter().any(|f| f.code == "below_ledge");
        let (signal, next) = match answer.verdict {
            _ if below => (Signal::Look, Next::BelowLedge),
            SeatVerdict::PullAgain => (Signal::Wait, Next::PullAgain),
            SeatVerdict::Seated => (Signal::Go, Next::Seated),
            // Within its limit on the mean: it is the tilt that fails.
            SeatVerdict::NotSeated if answer.p_seated > 0.05 => {
                (Signal::Stop, Next::Tilted(answer.tilt))
            }
            SeatVerdict::NotSeated => (Signal::Stop, Next::NotSeated(answer.gap_mean)),
            SeatVerdict::Undecided => (Signal::Look, Next::SeatUndecided),
        };
        Ok(Outcome {
            signal,
            number: Some(length_figure(
                Figure::Gap,
                answer.gap_mean.as_m(),
                Some(answer.u_gap.as_m()),
            )),
            next,
            findings: answer.findings.clone(),
            answer: Answer::Seat(answer),
        })
    }
}

/// A comparison with a limit typed in decimals allows this.
pub(super) const TINY_M: f64 = 1e-9;

pub(super) fn length_figure(figure: Figure, si: f64, u_si: Option<f64>) -> OneNumber {
    OneNumber {
        figure,
        si,
        measure: Measure::Length,
        u_si,
    }
}

pub(super) fn lengths(values: &[(u8, f64)]) -> Vec<Length> {
    values.iter().map(|(_, si)| Length::from_m(*si)).collect()
}

pub(super) fn diameters(values: &[(u8, f64)]) -> Vec<Diameter> {
    values.iter().map(|(_, si)| Diameter::from_m(*si)).collect()
}
