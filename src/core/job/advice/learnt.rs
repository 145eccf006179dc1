//! What finished jobs teach about the shop: how its feeds come out, where its
//! fits land, how sleeves went in against the clearance predicted for them, how
//! far pulls settle a flange, what a stroke of the hone takes off. Each with number, mean, spread and tolerance
//! interval ([`crate::metrology::scatter`]); offered for the next job, never
//! put into it.
//!
//! Only cylinders that are home are learnt from: what was measured on one that
//! is not may be wrong.

use crate::job::advice::own_cuts::own_cuts;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Millis;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::drop_case::case_of;
use crate::job::verdict::answer::Answer;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::CylinderReport;
use crate::job::verdict::signal::State;
use crate::metrology::scatter::{Scatter, scatter};
use crate::numerics::normal;
use crate::quantity::format::{decimals, fixed};
use crate::quantity::{Length, Seconds};
use crate::thermal::cold_drop::entry_clearance;

/// Below so many values an interval says little, and it is said.
pub const FEW: usize = 10;

/// What is learnt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lesson {
    /// Depth of the counterbore less the depth wanted: positive too deep.
    Feed,
    /// Interference less the middle of its band: positive too tight.
    Fit,
    /// Clearance predicted at the bore, of sleeves that went in freely.
    DropFree,
    /// As that, of sleeves that dragged.
    DropDragged,
    /// As that, of sleeves that stuck.
    DropStuck,
    /// Height lost from the first pull to the last.
    Settling,
    /// What ten strokes of the hone take off a bore, on diameter.
    Hone,
}

impl Lesson {
    /// All.
    pub const ALL: [Self; 7] = [
        Self::Feed,
        Self::Fit,
        Self::DropFree,
        Self::DropDragged,
        Self::DropStuck,
        Self::Settling,
        Self::Hone,
    ];
    /// Of drops, in the order of the outcome's words.
    const DROPS: [Self; 3] = [Self::DropFree, Self::DropDragged, Self::DropStuck];
}

/// What one job teaches.
#[must_use]
pub fn lessons(job: &Job, reports: &[CylinderReport]) -> Vec<(Lesson, Length)> {
    let home: Vec<&CylinderReport> = reports
        .iter()
        .filter(|report| report.state == State::Seated)
        .collect();
    let is_home = |cylinder| home.iter().any(|report| report.cylinder == cylinder);
    let mut all: Vec<(Lesson, Length)> = own_cuts(reports)
        .cuts
        .into_iter()
        .filter(|(cylinder, _)| is_home(*cylinder))
        .map(|(_, error)| (Lesson::Feed, error))
        .collect();
    // What cannot be used teaches nothing; its step says what to mend.
    let engine = |field| job.engine_si(field).ok().flatten();
    let band = engine(Field::FitLow).zip(engine(Field::FitHigh));
    for report in home {
        let owner = Owner::Cylinder(report.cylinder);
        let list = |field| job.readings(owner, field).ok();
        if let (Some(Answer::Fit(fit, _)), Some((low, high))) =
            (report.step(StepId::Fit).map(|s| &s.answer), band)
        {
            let off_m = fit.interference_mean.as_m() - 0.5 * (low + high);
            all.push((Lesson::Fit, Length::from_m(off_m)));
        }
        if let Some([(_, first), .., (_, last)]) = list(Field::PullReleased).as_deref() {
            all.push((Lesson::Settling, Length::from_m(first - last)));
        }
        let r = Readings::of_cylinder(job, report.cylinder);
        let one = |field| r.own(field).ok().flatten();
        if let (Some(bored_m), Some(strokes)) = (one(Field::BoredD), one(Field::HoneStrokes))
            && let Ok(honed_m) = r.mean(Field::BoreD)
        {
            let each_ten = (honed_m - bored_m) * 10.0 / strokes;
            all.push((Lesson::Hone, Length::from_m(each_ten)));
        }
        let outcome = one(Field::DropOutcome);
        let lesson = outcome.and_then(|index| Lesson::DROPS.get(index as usize));
        // Without a carry time the prediction would be of another drop.
        if let (Some(lesson), Some(carry_s)) = (lesson, one(Field::Carry))
            && let Ok(case) = case_of(job, report.cylinder, Seconds::from_s(carry_s))
            && let Ok(clearance) = entry_clearance(&case.drop)
        {
            all.push((*lesson, Length::from_m(clearance.as_m())));
        }
    }
    all
}

/// One lesson over all jobs.
#[derive(Clone, Debug, PartialEq)]
pub struct Series {
    /// Which.
    pub lesson: Lesson,
    /// Its values, as the jobs came.
    pub values: Vec<Length>,
    /// Their statistics, from two values on.
    pub scatter: Option<Scatter>,
}

impl Series {
    /// Whether there are too few to build on.
    #[must_use]
    pub fn is_few(&self) -> bool {
        self.values.len() < FEW
    }
}

/// The lessons of all jobs, each that has a value.
#[must_use]
pub fn learnt(all: &[(Lesson, Length)]) -> Vec<Series> {
    Lesson::ALL
        .into_iter()
        .filter_map(|lesson| {
            let values: Vec<Length> = all
                .iter()
                .filter(|(of, _)| *of == lesson)
                .map(|(_, value)| *value)
                .collect();
            (!values.is_empty()).then(|| Series {
                lesson,
                scatter: scatter(&values).ok(),
                values,
            })
        })
        .collect()
}

/// What the shop's own feeds offer for its next job.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Offer {
    /// Spread of the feeds.
    pub feed_sd: Length,
    /// The least stand-proud that keeps the chance of a flange left low after
    /// decking at the risk accepted.
    pub least: Length,
    /// What to aim at: the shop's own target, or the least where that is more.
    pub target: Length,
    /// From so many counterbores.
    pub n: usize,
}

/// The stand-proud for the next job, never less than the shop's own target, with the limits and gauges of `limits`:
/// clean-up less planned cut, plus what the feeds are too deep on the mean, plus
/// z (1 - risk) times the root of feed and gauges squared. `None` without two
/// feeds or without those limits.
///
/// It is the rule of [`crate::planning::counterbore`] with the feeds' own mean
/// and spread.
#[must_use]
pub fn offer(series: &[Series], limits: &Job) -> Option<Offer> {
    let feeds = series.iter().find(|s| s.lesson == Lesson::Feed)?;
    let own = feeds.scatter?;
    let limit = |field| limits.engine_si(field).ok().flatten();
    let gauges_m = limit(Field::GaugeDepth)?.hypot(limit(Field::GaugeThickness)?);
    let sd_m = own.sd.as_m().hypot(gauges_m);
    let needed_m = limit(Field::CleanUp)? - limit(Field::PlannedCut)?;
    let z = normal::quantile(1.0 - limit(Field::Risk)?);
    let least_m = (needed_m + own.mean.as_m() + z * sd_m).max(0.0);
    let target_m = limit(Field::TargetProud)?.max(least_m);
    Some(Offer {
        feed_sd: own.sd,
        least: Length::from_m(least_m),
        target: Length::from_m(target_m),
        n: feeds.values.len(),
    })
}

/// Sleeves that had stopped: home, and not home.
#[must_use]
pub fn homes(reports: &[CylinderReport]) -> (usize, usize) {
    let at = |next: fn(&Next) -> bool| {
        let seats = reports.iter().filter_map(|r| r.step(StepId::Seat));
        seats.filter(|s| next(&s.next)).count()
    };
    (
        at(|next| *next == Next::Seated),
        at(|next| matches!(next, Next::NotSeated(_) | Next::Tilted(_))),
    )
}

/// What the shop's own sleeves offer for its next deck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HomeOffer {
    /// Share of sleeves that are home when they have stopped.
    pub share: f64,
    /// From so many.
    pub n: usize,
}

/// The share of sleeves at home, from those of the shop's jobs: a beta law with
/// 19 at home and 1 not to begin with, its mean. `None` without a sleeve.
#[must_use]
pub fn home_offer((home, not): (usize, usize)) -> Option<HomeOffer> {
    let n = home + not;
    (n > 0).then(|| HomeOffer {
        share: (19 + home) as f64 / (20 + n) as f64,
        n,
    })
}

impl HomeOffer {
    /// Whether it stands on too few sleeves to build on.
    #[must_use]
    pub const fn is_few(&self) -> bool {
        self.n < FEW
    }

    /// As the shop's own number for new jobs.
    #[must_use]
    pub fn entry(&self, limits: &Job, at: Millis) -> (Place, Entry) {
        let unit = limits.unit(Field::PriorHome);
        let place = Place::of_engine(Field::PriorHome);
        (place, Entry::new(fixed(self.share, 3), unit, at))
    }
}

/// What the shop's own holes offer for its hone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HoneOffer {
    /// What ten strokes take off, on diameter: the mean.
    pub rate: Length,
    /// From so many holes.
    pub n: usize,
}

/// The hone's rate for the next job; `None` without two holes, or where nothing
/// was taken off.
#[must_use]
pub fn hone_offer(series: &[Series]) -> Option<HoneOffer> {
    let holes = series.iter().find(|s| s.lesson == Lesson::Hone)?;
    let rate = holes.scatter?.mean;
    (rate.as_m() > 0.0).then_some(HoneOffer {
        rate,
        n: holes.values.len(),
    })
}

impl HoneOffer {
    /// As the shop's own number for new jobs, with a digit more than a gauge is
    /// read to: it is divided by.
    #[must_use]
    pub fn entry(&self, limits: &Job, at: Millis) -> (Place, Entry) {
        let unit = limits.unit(Field::HoneRate);
        let text = fixed(unit.from_si(self.rate.as_m()), decimals(unit) + 1);
        let place = Place::of_engine(Field::HoneRate);
        (place, Entry::new(text, unit, at))
    }
}

impl Offer {
    /// Whether it stands on too few counterbores to build on.
    #[must_use]
    pub const fn is_few(&self) -> bool {
        self.n < FEW
    }

    /// As the shop's own numbers for new jobs: spread and stand-proud, each with
    /// the decimals its gauge is read to.
    #[must_use]
    pub fn entries(&self, limits: &Job, at: Millis) -> [(Place, Entry); 2] {
        let entry = |field: Field, length: Length| {
            let unit = limits.unit(field);
            // Never rounded down: a little more proud costs a little more cut.
            let step = 0.1_f64.powi(decimals(unit) as i32);
            let value = (unit.from_si(length.as_m()) / step - 1e-9).ceil() * step;
            let text = fixed(value, decimals(unit));
            (Place::of_engine(field), Entry::new(text, unit, at))
        };
        [
            entry(Field::FeedSd, self.feed_sd),
            entry(Field::TargetProud, self.target),
        ]
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::steps::assess::assess;

    fn inch(length: Length) -> f64 {
        length.as_m() / 0.0254
    }

    /// The inch demo, worked by hand: four of five sleeves are home, all four
    /// went in freely, their pulls settle from 0.0126 or 0.0130 to 0.0100 or
    /// 0.0104 in: 0.0026 each.
    #[test]
    fn only_cylinders_that_are_home_teach() {
        let job = Demo::InchFive.job(0);
        let all = lessons(&job, &assess(&job));
        let of = |lesson| -> Vec<f64> {
            let own = all.iter().filter(|(l, _)| *l == lesson);
            own.map(|(_, value)| inch(*value)).collect()
        };
        assert_eq!(of(Lesson::Settling).len(), 4);
        for settled in of(Lesson::Settling) {
            assert!((settled - 0.0026).abs() < 1e-9, "{settled}");
        }
        // The dragged one is not home.
        assert_eq!(of(Lesson::DropDragged).len(), 0);
        assert_eq!(of(Lesson::DropFree).len(), 4);
        for clearance in of(Lesson::DropFree) {
            assert!((0.004..0.009).contains(&clearance), "{clearance}");
        }
        assert_eq!(of(Lesson::Fit).len(), 4);
        for off in of(Lesson::Fit) {
            // In the band of 0.0005 in round its middle.
            assert!(off.abs() <= 0.00025 + 1e-9, "{off}");
        }
    }

    /// By hand: of the demo's five, four are home: (19 + 4) / (20 + 5) = 0.92.
    #[test]
    fn the_share_at_home_is_learnt_from_sleeves_that_stopped() {
        let job = Demo::InchFive.job(0);
        let counted = homes(&assess(&job));
        assert_eq!(counted, (4, 1));
        let found = home_offer(counted).unwrap();
        assert!((found.share - 0.92).abs() < 1e-12 && found.is_few());
        assert_eq!(found.entry(&job, 2).1.text, "0.920");
        assert_eq!(home_offer((0, 0)), None);
    }

    /// By hand: 42 strokes from 4.4380 to 4.4401 in on the mean are half a thou
    /// for ten.
    #[test]
    fn the_hone_is_learnt_from_stock_and_strokes() {
        let mut job = Demo::InchFive.job(0);
        let bores = ["4.4402", "4.4400", "4.4401", "4.4401", "4.4401", "4.4401"];
        let readings = [
            (Field::BoredD, ["4.4380"].as_slice()),
            (Field::HoneStrokes, ["42"].as_slice()),
            (Field::BoreD, bores.as_slice()),
        ];
        for (field, texts) in readings {
            for (index, text) in texts.iter().enumerate() {
                let place = Place::of_cylinder(2, field, index as u8);
                job.entries
                    .put(place, Entry::new(*text, job.unit(field), 1));
            }
        }
        let all = lessons(&job, &assess(&job));
        let hone: Vec<f64> = all
            .iter()
            .filter(|(lesson, _)| *lesson == Lesson::Hone)
            .map(|(_, value)| inch(*value))
            .collect();
        assert_eq!(hone.len(), 4);
        // The demo's others took 26 and 48 strokes; offered is the mean.
        let found = hone_offer(&learnt(&all)).unwrap();
        let mean = hone.iter().sum::<f64>() / 4.0;
        assert!((inch(found.rate) - mean).abs() < 1e-12 && found.n == 4);
        let (place, entry) = found.entry(&job, 2);
        assert_eq!(place.field, Field::HoneRate);
        assert_eq!(entry.text, format!("{mean:.5}"));
        assert!(hone.iter().any(|v| (v - 0.0005).abs() < 1e-9), "{hone:?}");
    }

    /// By hand: feeds 0, 1, 2 thou too deep: mean 1, sd 1; gauges 0.5 and
    /// 0.3 thou; clean-up 2, planned cut 5, risk 1 % (z 2.3263, normal table):
    /// 2 - 5 + 1 + 2.3263 root(1 + 0.25 + 0.09) = 0.693 thou, less than the 10
    /// thou that the shop aims at.
    #[test]
    fn an_offer_by_hand() {
        let job = Demo::InchFive.job(0);
        let thou = Length::from_thou;
        let feeds: Vec<(Lesson, Length)> =
            [0.0, 1.0, 2.0].map(|e| (Lesson::Feed, thou(e))).to_vec();
        let series = learnt(&feeds);
        assert!(series[0].is_few());
        let offer = offer(&series, &job).unwrap();
        assert_eq!(offer.n, 3);
        assert!((offer.feed_sd.as_thou() - 1.0).abs() < 1e-9);
        assert!((offer.least.as_thou() - 0.6929).abs() < 1e-3);
        let [(place, feed), (_, proud)] = offer.entries(&job, 5);
        assert_eq!(place.field, Field::FeedSd);
        assert_eq!(
            (feed.text.as_str(), proud.text.as_str()),
            ("0.0010", "0.0100")
        );
        // A wild hand raises it: feeds 0, 10, 20 thou: 2 - 5 + 10 + 2.3263
        // root(100 + 0.34) = 30.30 thou.
        let wild: Vec<(Lesson, Length)> =
            [0.0, 10.0, 20.0].map(|e| (Lesson::Feed, thou(e))).to_vec();
        let raised = super::offer(&learnt(&wild), &job).unwrap();
        assert!((raised.target.as_thou() - 30.303).abs() < 2e-3);
        assert!(learnt(&feeds[..1])[0].scatter.is_none());
    }
}
