//! The passes of the bar for a cylinder: from the old bore to what the hone is
//! left, and how the cutter is set for each; the strokes of the hone after it.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Lacks};
use crate::job::model::readings::{Readings, smallest};
use crate::planning::bore::{BorePlan, BorePlanInput, bore_plan};
use crate::quantity::{Diameter, Length};

/// Plans the passes: from the smallest reading of the old bore, where the first
/// cut is the heaviest, to the sleeve less the middle of its fit and the hone's
/// stock.
///
/// # Errors
/// What is missing, cannot be used or does not go together.
pub fn passes(job: &Job, cylinder: u8) -> Result<BorePlan, Lacks> {
    let r = Readings::of_cylinder(job, cylinder);
    let mut lacks = Lacks::default();
    let old = r
        .complete(Field::OldBore)
        .and_then(|old| smallest(&old).ok_or_else(|| r.missing(Field::OldBore, 1)));
    let sleeve = match r.list(Field::SleeveOd) {
        Ok(list) if list.is_empty() => r.engine(Field::NominalOd),
        Ok(_) => r.mean(Field::SleeveOd),
        Err(unusable) => Err(Lack::Unusable(unusable)),
    };
    let all = [
        lacks.take(old),
        lacks.take(sleeve),
        lacks.take(r.engine(Field::FitLow)),
        lacks.take(r.engine(Field::FitHigh)),
        lacks.take(r.engine(Field::HoneLeave)),
        lacks.take(r.engine(Field::LastCut)),
        lacks.take(r.engine(Field::Passes)),
        lacks.take(r.engine(Field::Spindle)),
    ];
    let [
        Some(now_m),
        Some(sleeve_m),
        Some(fit_low_m),
        Some(fit_high_m),
        Some(hone_m),
        Some(last_m),
        Some(count),
        Some(spindle_m),
    ] = all
    else {
        return Err(lacks);
    };
    Ok(bore_plan(&BorePlanInput {
        now: Diameter::from_m(now_m),
        finished: Diameter::from_m(sleeve_m - 0.5 * (fit_low_m + fit_high_m)),
        hone: Length::from_m(hone_m),
        last_cut: Length::from_m(last_m),
        passes: count.round() as usize,
        spindle: Diameter::from_m(spindle_m),
    })?)
}

/// Strokes of the hone, up and down, for a stock on diameter, by the shop's own
/// rate; `None` without the rate or with nothing to hone.
///
/// # Errors
/// A rate that cannot be used.
pub fn strokes(job: &Job, stock: Length) -> Result<Option<f64>, Lack> {
    let rate = Readings::new(job, Owner::Block).engine_if(Field::HoneRate)?;
    Ok(rate
        .filter(|rate_m| *rate_m > 0.0 && stock.as_m() > 0.0)
        .map(|rate_m| (10.0 * stock.as_m() / rate_m).ceil()))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::Place;

    /// By hand: half a thou for ten strokes, 1.2 thou to go: 24 strokes.
    #[test]
    fn strokes_by_the_shops_own_rate() {
        let mut job = Demo::InchFive.job(1);
        let stock = Length::from_thou(1.2);
        assert_eq!(strokes(&job, stock), Ok(None));
        let entry = Entry::new("0.0005", job.unit(Field::HoneRate), 1);
        job.entries.put(Place::of_engine(Field::HoneRate), entry);
        assert!(
            strokes(&job, stock)
                .unwrap()
                .is_some_and(|n| (n - 24.0).abs() < 1.01)
        );
        assert_eq!(strokes(&job, Length::from_thou(-1.0)), Ok(None));
    }

    /// By hand: old bore 4.2500 in, sleeve 4.4413 in, fit 0.00125, hone 0.0012:
    /// bored to 4.43885 in, 0.18885 in all; the last takes 0.010, two before it
    /// 0.089425 each; cutter over a spindle of 3 in for the first
    /// (4.339425 + 3) / 2 = 3.6697125 in.
    #[test]
    fn three_passes_by_hand() {
        let mut job = Demo::InchFive.job(1);
        let mut put = |place: Place, text: &str| {
            let entry = Entry::new(text, job.unit(place.field), 1);
            job.entries.put(place, entry);
        };
        for index in 0..6 {
            put(Place::of_cylinder(2, Field::OldBore, index), "4.2500");
            put(Place::of_cylinder(2, Field::SleeveOd, index), "4.4413");
        }
        put(Place::of_engine(Field::HoneLeave), "0.0012");
        put(Place::of_engine(Field::Spindle), "3");
        put(Place::of_engine(Field::LastCut), "");
        put(Place::of_engine(Field::Passes), "");
        let lacks = passes(&job, 2).unwrap_err();
        assert!(lacks.misses(Field::LastCut) && lacks.misses(Field::Passes));
        assert_eq!(lacks.missing.len(), 2);
        let mut put = |place: Place, text: &str| {
            let entry = Entry::new(text, job.unit(place.field), 1);
            job.entries.put(place, entry);
        };
        put(Place::of_engine(Field::LastCut), "0.010");
        put(Place::of_engine(Field::Passes), "3");
        let plan = passes(&job, 2).unwrap();
        assert!((plan.bored.as_inch() - 4.438_85).abs() < 1e-9);
        assert!((plan.passes[0].cut_on_diameter.as_inch() - 0.089_425).abs() < 1e-9);
        assert!((plan.passes[0].cutter.as_inch() - 3.669_712_5).abs() < 1e-9);
        assert!((plan.passes[2].cut_on_diameter.as_inch() - 0.010).abs() < 1e-9);
    }
}
