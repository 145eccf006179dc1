//! Asks for the steps before the hone: what is measured of the old block, the
//! choice of the sleeve, the bar and the counterbore's diameter.

use super::ask::{Hindrance, Outcome, TINY_M, View, length_figure};
use super::field::Measure;
use super::order::order_signal;
use super::passes::strokes;
use super::report::{Answer, Detail, Figure, More, Next, OneNumber, Signal};
use super::step::StepId;
use super::{Field, Owner, Place, UnitSystem};
use crate::materials::Material;
use crate::metrology::form::form;
use crate::planning::estimate::{EstimateInput, estimate};
use crate::planning::web::{WallInput, wall};
use crate::quantity::{Diameter, Length, Seconds, Temperature};
use crate::thermal::chill::{Chill, ChillInput, chill};

/// What was asked holds, or asks for a look, or stops.
pub(super) fn grade(value: f64, calm: f64, stop: f64) -> Signal {
    if value < stop - TINY_M {
        Signal::Stop
    } else if value < calm - TINY_M {
        Signal::Look
    } else {
        Signal::Go
    }
}

/// A further length.
pub(super) const fn more(detail: Detail, si: f64) -> More {
    More {
        detail,
        si,
        measure: Measure::Length,
    }
}

/// A further plain number.
pub(super) const fn plain(detail: Detail, si: f64) -> More {
    More {
        detail,
        si,
        measure: Measure::Plain,
    }
}

/// A number that is no length.
pub(super) const fn figure(figure: Figure, si: f64, measure: Measure) -> OneNumber {
    OneNumber {
        figure,
        si,
        measure,
        u_si: None,
    }
}

/// Says one thing at each signal.
pub(super) fn says(step: StepId, signal: Signal, number: OneNumber) -> Outcome {
    Outcome {
        number: Some(number),
        ..Outcome::plain(signal, Next::Says(step, signal))
    }
}

fn mean(values: &[(u8, f64)]) -> Option<f64> {
    (!values.is_empty()).then(|| values.iter().map(|(_, v)| v).sum::<f64>() / values.len() as f64)
}

impl View<'_> {
    /// The value of an optional number of this owner.
    pub(super) fn own(&self, field: Field) -> Option<f64> {
        self.values(field).first().map(|(_, si)| *si)
    }

    /// A difference of temperatures in the job's degrees.
    pub(super) fn degrees(&self, difference_k: f64) -> f64 {
        match self.job.engine.units {
            UnitSystem::Inch => 1.8 * difference_k,
            UnitSystem::Metric => difference_k,
        }
    }

    /// The chill of a sleeve of this engine, from the shop's temperature.
    pub(super) fn ask_chill(&self) -> Result<Chill, Hindrance> {
        Ok(chill(&ChillInput {
            material: Material::catalogue(self.job.engine.sleeve_material),
            inner: Diameter::from_m(self.engine(Field::SleeveId)?),
            outer: Diameter::from_m(self.engine(Field::NominalOd)?),
            length: self.length(Field::SleeveLength)?,
            start: Temperature::from_k(self.engine(Field::RoomTemperature)?),
        })?)
    }

    /// Time, nitrogen and price. The sleeves' own nitrogen has half of the
    /// vapour's cold used; bath fill and what stands away come apart.
    pub(super) fn estimate(&self) -> Result<Outcome, Hindrance> {
        let hours = |field| {
            self.single(field)
                .map(|hours| Seconds::from_s(hours * 3600.0))
        };
        let per_sleeve_l = match self.ask_chill() {
            Ok(chill) => chill.nitrogen_practical_l,
            Err(Hindrance::Engine(_)) => 0.0,
            Err(other) => return Err(other),
        };
        let bath_fill_l = self.own(Field::BathFill).unwrap_or(0.0);
        let loss_l_per_h = self.own(Field::StandingLoss).unwrap_or(0.0);
        let standing = Seconds::from_s(3600.0 * self.own(Field::StandingHours).unwrap_or(0.0));
        let answer = estimate(&EstimateInput {
            holes: self.job.cylinders().count(),
            per_job: hours(Field::HoursJob)?,
            per_hole: hours(Field::HoursHole)?,
            hour_price: self.single(Field::HourPrice)?,
            spare_sleeves: 0,
            sleeve_price: self.own(Field::SleevePrice).unwrap_or(0.0),
            nitrogen_per_sleeve_l: per_sleeve_l,
            bath_fill_l,
            loss_l_per_h,
            standing,
            nitrogen_spare: 0.25,
            litre_price: self.own(Field::LitrePrice).unwrap_or(0.0),
            other_price: self.own(Field::OtherPrice).unwrap_or(0.0),
        })?;
        let number = figure(Figure::Price, answer.price, Measure::Plain);
        Ok(Outcome {
            answer: Answer::More(vec![
                plain(Detail::Hours, answer.work.as_s() / 3600.0),
                plain(Detail::Sleeves, answer.sleeves as f64),
                plain(
                    Detail::SleevesNitrogen,
                    per_sleeve_l * answer.sleeves as f64,
                ),
                plain(Detail::BathFill, bath_fill_l),
                plain(Detail::StoodAway, loss_l_per_h * standing.as_s() / 3600.0),
                plain(Detail::Nitrogen, answer.nitrogen_l),
            ]),
            ..says(StepId::Enquiry, Signal::Go, number)
        })
    }

    pub(super) fn apart(&self) -> Result<Outcome, Hindrance> {
        let apart =
            self.degrees((self.single(Field::BlockNow)? - self.single(Field::SleevesNow)?).abs());
        let signal = if apart <= self.engine(Field::ApartMost)? + 1e-6 {
            Signal::Go
        } else {
            Signal::Wait
        };
        let number = figure(Figure::Apart, apart, Measure::Plain);
        Ok(says(StepId::Rest, signal, number))
    }

    pub(super) fn pressure_drop(&self, step: StepId) -> Result<Outcome, Hindrance> {
        let [start, end] = match step {
            StepId::WashAgain => [Field::RetestStart, Field::RetestEnd],
            _ => [Field::TestStart, Field::TestEnd],
        };
        let start_pa = self.single(start)?;
        let lost = (start_pa - self.single(end)?) / start_pa;
        let signal = if lost <= self.engine(Field::TestLoss)? {
            Signal::Go
        } else {
            Signal::Stop
        };
        let number = figure(Figure::PressureLost, 100.0 * lost, Measure::Plain);
        Ok(says(step, signal, number))
    }

    pub(super) fn datum(&self) -> Result<Outcome, Hindrance> {
        let ends = self.some(Field::DeckHeight)?;
        let [(_, front), (_, rear)] = ends[..] else {
            return Err(Hindrance::Missing(Field::DeckHeight));
        };
        let lean_m = (front - rear).abs();
        let signal = if lean_m <= self.engine(Field::DatumTilt)? + TINY_M {
            Signal::Go
        } else {
            Signal::Look
        };
        let number = length_figure(Figure::DatumLean, lean_m, None);
        Ok(says(StepId::Datum, signal, number))
    }

    /// The old bore: the bar is centred on what is not worn, near the bottom.
    pub(super) fn wear(&self) -> Result<Outcome, Hindrance> {
        let answer = form(&self.levels(Field::OldBore)?)?;
        let all = self.some(Field::OldBore)?;
        let most = all.iter().map(|(_, v)| *v).fold(f64::MIN, f64::max);
        let least = all.iter().map(|(_, v)| *v).fold(f64::MAX, f64::min);
        let further = vec![
            more(Detail::Largest, most),
            more(Detail::Smallest, least),
            more(Detail::Round, answer.out_of_round.as_m()),
            more(Detail::Taper, answer.taper.as_m()),
        ];
        let number = length_figure(Figure::Wear, most - least, None);
        Ok(Outcome {
            answer: Answer::Form(answer, further),
            ..says(StepId::OldBore, Signal::Go, number)
        })
    }

    /// How far the bar is off, toward 12 and toward 3 o'clock: half the
    /// indicator's difference; a larger reading is a nearer wall.
    fn offset(&self) -> Option<(f64, f64)> {
        let [twelve, three, six, nine] =
            self.job.entries.complete(self.owner, Field::Indicator)?[..]
        else {
            return None;
        };
        Some((0.5 * (twelve - six), 0.5 * (three - nine)))
    }

    pub(super) fn centre(&self) -> Result<Outcome, Hindrance> {
        self.some(Field::Indicator)?;
        let (up_m, right_m) = self.offset().ok_or(Hindrance::Missing(Field::Indicator))?;
        let off_m = up_m.hypot(right_m);
        let signal = if off_m <= self.engine(Field::OffsetLook)? + TINY_M {
            Signal::Go
        } else {
            Signal::Look
        };
        let number = length_figure(Figure::Offset, off_m, None);
        Ok(Outcome {
            answer: Answer::More(vec![
                more(Detail::OffsetUp, up_m),
                more(Detail::OffsetRight, right_m),
            ]),
            ..says(StepId::Centre, signal, number)
        })
    }

    /// Bore wanted after the hone: the sleeve as measured, else the nominal
    /// one, less the middle of the fit.
    fn bore_wanted(&self) -> Result<f64, Hindrance> {
        let od_m = match mean(&self.values(Field::SleeveOd)) {
            Some(od) => od,
            None => self.engine(Field::NominalOd)?,
        };
        Ok(od_m - 0.5 * (self.engine(Field::FitLow)? + self.engine(Field::FitHigh)?))
    }

    /// The wall left at every point measured.
    pub(super) fn walls(&self) -> Result<Outcome, Hindrance> {
        let readings = self.some(Field::WallReading)?;
        let new_m = self.bore_wanted()?;
        let old = self.values(Field::OldBore);
        let old_m = mean(&old).ok_or(Hindrance::Missing(Field::OldBore))?;
        let (up_m, right_m) = self.offset().unwrap_or((0.0, 0.0));
        let mut findings = Vec::new();
        let mut left = Vec::new();
        for (index, measured_m) in readings {
            let toward_m = [up_m, right_m, -up_m, -right_m][usize::from(index) % 4];
            let (wall_left, found) = wall(&WallInput {
                measured: Length::from_m(measured_m),
                old: Diameter::from_m(old_m),
                new: Diameter::from_m(new_m),
                offset: Length::from_m(toward_m),
            })?;
            for finding in found {
                if !findings.contains(&finding) {
                    findings.push(finding);
                }
            }
            left.push((index, wall_left));
        }
        let least_m = left.iter().map(|(_, w)| w.as_m()).fold(f64::MAX, f64::min);
        let signal = grade(
            least_m,
            self.engine(Field::WallCalm)?,
            self.engine(Field::WallLook)?,
        );
        Ok(Outcome {
            findings,
            answer: Answer::Walls(left),
            ..says(
                StepId::Wall,
                signal,
                length_figure(Figure::WallLeft, least_m, None),
            )
        })
    }

    /// Whether a sleeve fits this block (see [`super::order`]).
    pub(super) fn choose(&self) -> Result<Outcome, Hindrance> {
        let (od_m, id_m) = (
            self.engine(Field::NominalOd)?,
            self.engine(Field::SleeveId)?,
        );
        let web = self.order_web()?;
        let checks = self.order_checks();
        let mut further = vec![more(Detail::SleeveWall, 0.5 * (od_m - id_m))];
        if web.flat.as_m() > 0.0 {
            further.push(more(Detail::FlatDepth, web.flat.as_m()));
        }
        let signal = order_signal(&checks);
        Ok(Outcome {
            findings: web.findings,
            answer: Answer::Order(checks, further),
            ..says(
                StepId::Choose,
                signal,
                length_figure(Figure::WebLeft, web.left.as_m(), None),
            )
        })
    }

    pub(super) fn hone_stock(&self) -> Result<Outcome, Hindrance> {
        let bored_m = self.single(Field::BoredD)?;
        let wanted_m = self.bore_wanted()?;
        let leave_m = self.engine(Field::HoneLeave)?;
        let stock_m = wanted_m - bored_m;
        let to_bore_m = wanted_m - leave_m;
        let (signal, next) = if stock_m < 0.5 * leave_m - TINY_M {
            (Signal::Look, Next::Says(StepId::Bore, Signal::Look))
        } else if stock_m > 2.0 * leave_m + TINY_M {
            let by = Length::from_m(to_bore_m - bored_m);
            (Signal::Wait, Next::SaysBy(StepId::Bore, Signal::Wait, by))
        } else {
            (Signal::Go, Next::Says(StepId::Bore, Signal::Go))
        };
        let mut further = vec![more(Detail::BoreWanted, to_bore_m)];
        if let Some(spindle_m) = self.job.entries.si(Place {
            owner: Owner::Block,
            field: Field::Spindle,
            index: 0,
        }) {
            further.push(more(Detail::CutterSetting, 0.5 * (to_bore_m + spindle_m)));
        }
        let needed = strokes(self.job, Length::from_m(stock_m));
        further.extend(needed.map(|n| plain(Detail::Strokes, n)));
        Ok(Outcome {
            signal,
            next,
            number: Some(length_figure(Figure::HoneStock, stock_m, None)),
            findings: Vec::new(),
            answer: Answer::More(further),
        })
    }

    pub(super) fn flange_room(&self) -> Result<Outcome, Hindrance> {
        let flange_m = match self.own(Field::FlangeOdHere) {
            Some(flange) => flange,
            None => self.engine(Field::FlangeOd)?,
        };
        let room_m = self.single(Field::CounterboreD)? - flange_m;
        let (least_m, most_m) = (
            self.engine(Field::ClearLow)?,
            self.engine(Field::ClearHigh)?,
        );
        let step = StepId::CounterboreD;
        let (signal, next) = if room_m < least_m - TINY_M {
            let by = Length::from_m(0.5 * (least_m + most_m) - room_m);
            (Signal::Wait, Next::SaysBy(step, Signal::Wait, by))
        } else if room_m > most_m + TINY_M {
            (Signal::Look, Next::Says(step, Signal::Look))
        } else {
            (Signal::Go, Next::Says(step, Signal::Go))
        };
        Ok(Outcome {
            number: Some(length_figure(Figure::FlangeRoom, room_m, None)),
            ..Outcome::plain(signal, next)
        })
    }

    pub(super) fn fillet_room(&self) -> Result<Outcome, Hindrance> {
        let fillet_m = self.single(Field::Fillet)?;
        let room_m = self.single(Field::ChamferHere)? - fillet_m;
        let signal = if room_m < self.engine(Field::FilletSpare)? - TINY_M {
            Signal::Wait
        } else {
            Signal::Go
        };
        let number = length_figure(Figure::FilletRoom, room_m, None);
        Ok(says(StepId::Chamfer, signal, number))
    }
}
