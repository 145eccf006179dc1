//! What a shop's timed drops teach: how long it needs from the moment a sleeve enters its
//! bore to its being home.
//!
//! Offered for the next job from [`FEW`] timed sleeves on, never put into it: below that
//! the upper end of what 95 % of them take (95 % sure, two-sided normal tolerance limit)
//! is so far out that it would stop every drop, and says little about the hand.
//! What dragged or stuck counts as well: a late sleeve is what the number is for.

use crate::job::advice::learnt::FEW;
use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::{Millis, Place};
use crate::job::model::readings::Readings;
use crate::job::verdict::report::CylinderReport;
use crate::job::verdict::signal::State;
use crate::metrology::scatter::{CONFIDENCE, CONTENT, mean_and_sd, tolerance_factor};
use crate::quantity::Seconds;
use crate::quantity::bounds::HOME_NEEDED;
use crate::quantity::format::fixed;

/// Times from entering to home of a job's sleeves that are home, as they were timed.
/// One that cannot be used teaches nothing; its step says what to mend.
#[must_use]
pub fn home_times(job: &Job, reports: &[CylinderReport]) -> Vec<Seconds> {
    reports
        .iter()
        .filter(|report| report.state == State::Seated)
        .filter_map(|report| {
            let r = Readings::of_cylinder(job, report.cylinder);
            r.own(Field::HomeTimed).ok().flatten()
        })
        .map(Seconds::from_s)
        .collect()
}

/// What timed drops say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HomeTime {
    /// How many were timed.
    pub n: usize,
    /// Their mean.
    pub mean: Seconds,
    /// The longest.
    pub longest: Seconds,
    /// What the shop needs, for new jobs, rounded up to a tenth of a second and not less
    /// than the longest; `None` below [`FEW`] sleeves, or beyond what may be entered.
    pub needed: Option<Seconds>,
}

/// What timed drops say; `None` without one.
#[must_use]
pub fn home_time(times: &[Seconds]) -> Option<HomeTime> {
    let values: Vec<f64> = times.iter().map(|time| time.as_s()).collect();
    let longest_s = values.iter().copied().reduce(f64::max)?;
    let (mean_s, sd_s) = mean_and_sd(&values);
    let enough = values.len() >= FEW;
    let factor = tolerance_factor(values.len(), CONTENT, CONFIDENCE).ok();
    let needed = factor.filter(|_| enough).map(|factor| {
        let late_s = longest_s.max(mean_s + factor * sd_s);
        ((late_s * 10.0 - 1e-9).ceil() / 10.0).max(HOME_NEEDED.lo)
    });
    Some(HomeTime {
        n: values.len(),
        mean: Seconds::from_s(mean_s),
        longest: Seconds::from_s(longest_s),
        needed: needed
            .filter(|s| HOME_NEEDED.contains(*s))
            .map(Seconds::from_s),
    })
}

impl HomeTime {
    /// As the shop's own number for new jobs.
    #[must_use]
    pub fn entry(&self, limits: &Job, at: Millis) -> Option<(Place, Entry)> {
        let unit = limits.unit(Field::HomeNeeded);
        let place = Place::of_engine(Field::HomeNeeded);
        let text = fixed(self.needed?.as_s(), 1);
        Some((place, Entry::new(text, unit, at)))
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::steps::assess::assess;

    fn seconds(times: &[f64]) -> Vec<Seconds> {
        times.iter().copied().map(Seconds::from_s).collect()
    }

    /// By hand: ten times, five of 3 s and five of 5 s: mean 4, sum of squares 10 over
    /// nine, sd 1.05409. Factor for n = 10, 95 % of them, 95 % sure: 3.379 (published
    /// table of two-sided normal tolerance factors, from memory; Howe's approximation
    /// z sqrt(9 (1 + 1/10) / chi2) with z 1.95996 and chi2(5 %, 9) 3.32511 gives 3.382).
    /// 4 + 3.379 x 1.05409 = 7.5618: up to a tenth, 7.6.
    #[test]
    fn ten_timed_sleeves_say_what_the_shop_needs() {
        let mut times = [3.0; 10];
        times[5..].fill(5.0);
        let found = home_time(&seconds(&times)).unwrap();
        assert!((found.mean.as_s() - 4.0).abs() < 1e-12);
        assert!((found.longest.as_s() - 5.0).abs() < 1e-12 && found.n == 10);
        assert!((found.needed.unwrap().as_s() - 7.6).abs() < 1e-9);
        let job = Demo::InchFive.job(0);
        let (place, entry) = found.entry(&job, 3).unwrap();
        assert_eq!(
            (place.field, entry.text.as_str()),
            (Field::HomeNeeded, "7.6")
        );
        // All alike: what they took, no less.
        let same = home_time(&seconds(&[4.0; 12])).unwrap();
        assert!((same.needed.unwrap().as_s() - 4.0).abs() < 1e-9);
    }

    /// Nine say what they took and offer nothing; none say nothing; what lies beyond the
    /// range of the number is not offered.
    #[test]
    fn few_or_wild_times_offer_nothing() {
        let nine = home_time(&seconds(&[4.0; 9])).unwrap();
        assert!(nine.needed.is_none() && nine.n == 9);
        assert_eq!(nine.entry(&Demo::InchFive.job(0), 1), None);
        assert_eq!(home_time(&[]), None);
        let mut wild = [1.0; 10];
        wild[0] = 3000.0;
        assert_eq!(home_time(&seconds(&wild)).unwrap().needed, None);
    }

    /// Only sleeves that are home, only times that read.
    #[test]
    fn a_sleeve_that_is_not_home_and_a_time_that_does_not_read_teach_nothing() {
        let mut job = Demo::InchFive.job(0);
        let not_home = Demo::InchFive.not_home();
        let mut put = |cylinder, text: &str| {
            let place = Place::of_cylinder(cylinder, Field::HomeTimed, 0);
            let unit = job.unit(Field::HomeTimed);
            job.entries.put(place, Entry::new(text, unit, 1));
        };
        let home: Vec<u8> = (1..=5).filter(|c| *c != not_home).collect();
        put(not_home, "9");
        put(home[0], "4");
        put(home[1], "3.5");
        put(home[2], "4..");
        let times = home_times(&job, &assess(&job));
        let times: Vec<f64> = times.iter().map(|time| time.as_s()).collect();
        assert_eq!(times, [4.0, 3.5]);
    }
}
