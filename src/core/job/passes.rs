//! The passes of the bar for a cylinder: from the old bore to what the hone is
//! left, and how the cutter is set for each; the strokes of the hone after it.

use super::{Field, Job, Owner};
use crate::planning::bore::{BorePlan, BorePlanInput, bore_plan};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length};

/// Why there is no plan.
#[derive(Clone, Debug, PartialEq)]
pub enum NoPasses {
    /// These are not entered.
    Missing(Vec<Field>),
    /// They do not go together.
    Refused(Fault),
}

/// Plans the passes: from the smallest reading of the old bore, where the first
/// cut is the heaviest, to the sleeve less the middle of its fit and the hone's
/// stock.
///
/// # Errors
/// The fields still missing, or a fault of the plan.
pub fn passes(job: &Job, cylinder: u8) -> Result<BorePlan, NoPasses> {
    let owner = Owner::Cylinder(cylinder);
    let mut missing = Vec::new();
    let now_m = job
        .entries
        .values(owner, Field::OldBore)
        .into_iter()
        .map(|(_, si)| si)
        .min_by(f64::total_cmp);
    if now_m.is_none() {
        missing.push(Field::OldBore);
    }
    let sleeve = job.entries.values(owner, Field::SleeveOd);
    let sleeve_m = if sleeve.is_empty() {
        job.engine_si(Field::NominalOd)
    } else {
        Some(sleeve.iter().map(|(_, si)| si).sum::<f64>() / sleeve.len() as f64)
    };
    let mut of_engine = |field| {
        let si = job.engine_si(field);
        if si.is_none() {
            missing.push(field);
        }
        si.unwrap_or(f64::NAN)
    };
    let fit_m = 0.5 * (of_engine(Field::FitLow) + of_engine(Field::FitHigh));
    let hone_m = of_engine(Field::HoneLeave);
    let last_m = of_engine(Field::LastCut);
    let count = of_engine(Field::Passes);
    let spindle_m = of_engine(Field::Spindle);
    if sleeve_m.is_none() {
        missing.push(Field::NominalOd);
    }
    let (Some(now_m), Some(sleeve_m), true) = (now_m, sleeve_m, missing.is_empty()) else {
        return Err(NoPasses::Missing(missing));
    };
    bore_plan(&BorePlanInput {
        now: Diameter::from_m(now_m),
        finished: Diameter::from_m(sleeve_m - fit_m),
        hone: Length::from_m(hone_m),
        last_cut: Length::from_m(last_m),
        passes: count.round() as usize,
        spindle: Diameter::from_m(spindle_m),
    })
    .map_err(NoPasses::Refused)
}

/// Strokes of the hone, up and down, for a stock on diameter, by the shop's own
/// rate; `None` without the rate or with nothing to hone.
#[must_use]
pub fn strokes(job: &Job, stock: Length) -> Option<f64> {
    let rate_m = job.engine_si(Field::HoneRate).filter(|m| *m > 0.0)?;
    (stock.as_m() > 0.0).then(|| (10.0 * stock.as_m() / rate_m).ceil())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::{Entry, Place};

    /// By hand: half a thou for ten strokes, 1.2 thou to go: 24 strokes.
    #[test]
    fn strokes_by_the_shops_own_rate() {
        let mut job = Demo::InchFive.job(1);
        let stock = Length::from_thou(1.2);
        assert_eq!(strokes(&job, stock), None);
        let entry = Entry::new("0.0005", job.unit(Field::HoneRate), 1);
        job.entries.put(Place::of_engine(Field::HoneRate), entry);
        assert!(strokes(&job, stock).is_some_and(|n| (n - 24.0).abs() < 1.01));
        assert_eq!(strokes(&job, Length::from_thou(-1.0)), None);
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
        assert_eq!(
            passes(&job, 2),
            Err(NoPasses::Missing(vec![Field::LastCut, Field::Passes]))
        );
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
