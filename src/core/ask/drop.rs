//! The cold drop, in a job and without one: its band, and what may be said of it.

use crate::document::ColdDropPaper;
use crate::document::merge::{Spot as DisputedSpot, conflicts};
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lacks, Spot, Unusable, Why};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::drop_case::{DropCase, DropVerdict, case_of, verdict};
use crate::job::steps::drop_sheet::DropSheet;
use crate::job::verdict::{CylinderReport, Signal};
use crate::quantity::{Length, Seconds, Temperature, TemperatureDelta};
use crate::thermal::drop_band::{DropBand, cold_drop_band};
use crate::thermal::drop_odds::{DropOdds, HomeVerdict};

/// Carry of a job that has none yet: told as assumed.
const USUAL_CARRY: Seconds = Seconds::from_s(8.0);

/// A drop that is worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct DropView {
    /// Nominal, early and late.
    pub band: DropBand,
    /// What its clearance allows.
    pub verdict: DropVerdict,
    /// What the hand may do.
    pub signal: Signal,
    /// Why it is no `go`, where the clearance alone would be.
    pub doubts: Vec<DropDoubt>,
    /// What it was asked with.
    pub case: DropCase,
    /// Clearance asked for at the bore.
    pub least: Length,
}

impl DropView {
    /// What the hand may do once its time is drawn: the worse of clearance and
    /// time, and no `go` over a doubt. The second of both is told where it rules:
    /// where there is room, or less time than there is room.
    #[must_use]
    pub fn by_time(&self, odds: &DropOdds) -> (Signal, Option<HomeVerdict>) {
        if self.case.example {
            return (self.signal, None);
        }
        let time = odds.verdict(self.case.needed);
        let by_time = match time {
            HomeVerdict::Go => Signal::Go,
            HomeVerdict::Look => Signal::Look,
            HomeVerdict::Stop => Signal::Stop,
        };
        let holds = !self.doubts.contains(&DropDoubt::NeverGrips);
        let rules = holds && (self.verdict == DropVerdict::Free || by_time > self.signal);
        (self.signal.max(by_time), rules.then_some(time))
    }
}

/// Degrees by which a block may be warmed without much ado, K: from memory.
pub const WARMER: [TemperatureDelta; 3] = [
    TemperatureDelta::from_k(20.0),
    TemperatureDelta::from_k(40.0),
    TemperatureDelta::from_k(60.0),
];

impl DropView {
    /// The same drop into a block that is warmer by so much as the sleeve enters; its
    /// band and its verdict are those of the block as it is.
    #[must_use]
    pub fn warmer(&self, by: TemperatureDelta) -> Self {
        let mut other = self.clone();
        let warm_k = other.case.drop.block.as_k() + by.as_k();
        other.case.drop.block = Temperature::from_k(warm_k);
        other
    }
}

/// What keeps a drop from `go`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DropDoubt {
    /// It never grips: there is no press fit.
    NeverGrips,
    /// It stands on usual values that nobody typed.
    Assumed(Field),
    /// A number of it is asked about and not answered.
    Questioned(Place),
    /// The sleeve as measured cold wants to be measured again.
    ColdSize,
    /// A step comes first.
    First(StepId),
    /// The housing is warmed, and nobody entered how far it may be.
    NoHeatLimit,
    /// The housing is warmed beyond what its maker's sheet allows.
    TooHot(Temperature),
}

/// A drop, or what it lacks.
#[derive(Clone, Debug, PartialEq)]
pub enum DropAnswer {
    /// Worked out.
    Ready(Box<DropView>),
    /// Missing, unusable or refused.
    Lacks(Lacks),
}

/// The cold drop without a job.
#[must_use]
pub fn drop_of_sheet(sheet: &DropSheet) -> DropAnswer {
    let case = match sheet.case() {
        Ok(case) => case,
        Err(lacks) => return DropAnswer::Lacks(lacks),
    };
    match case.least {
        Some(least) => answer(&case, least, Vec::new()),
        None => DropAnswer::Lacks(Lacks::default()),
    }
}

/// The cold drop without a job, as it is kept: nothing is worked out of a place
/// with two values until one is chosen.
#[must_use]
pub fn drop_of_paper(paper: &ColdDropPaper) -> DropAnswer {
    let disputed = conflicts(paper).into_iter();
    let spots = disputed.filter_map(|one| match one.spot {
        DisputedSpot::Reading(place) => Some(Spot::Reading(place)),
        DisputedSpot::Other(_) if one.path == "name" => None,
        DisputedSpot::Step(..) | DisputedSpot::Other(_) => Some(Spot::Engine),
    });
    let unusable = |spot| Unusable {
        spot,
        why: Why::Disputed,
    };
    let lacks = Lacks {
        unusable: spots.map(unusable).collect(),
        ..Lacks::default()
    };
    if lacks.is_empty() {
        drop_of_sheet(&paper.sheet)
    } else {
        DropAnswer::Lacks(lacks)
    }
}

/// The cold drop of a cylinder, by its report: clean and cold come first.
#[must_use]
pub fn drop_of_cylinder(job: &Job, report: &CylinderReport) -> DropAnswer {
    let mut lacks = Lacks::default();
    let least = lacks.take(Readings::new(job, Owner::Block).length(Field::EntryLeast));
    let (case, least) = match (case_of(job, report.cylinder, USUAL_CARRY), least) {
        (Ok(case), Some(least)) => (case, least),
        (Err(lacks), _) => return DropAnswer::Lacks(lacks),
        (Ok(_), None) => return DropAnswer::Lacks(lacks),
    };
    let questioned = report
        .step(StepId::Drop)
        .into_iter()
        .flat_map(|step| step.questioned.iter().copied())
        .map(DropDoubt::Questioned);
    let first = [StepId::Clean, StepId::Chill]
        .into_iter()
        .filter(|id| !report.step(*id).is_some_and(|step| step.is_settled()))
        .map(DropDoubt::First);
    answer(&case, least, questioned.chain(first).collect())
}

fn answer(case: &DropCase, least: Length, mut doubts: Vec<DropDoubt>) -> DropAnswer {
    let band = match cold_drop_band(&case.drop, case.u_fit) {
        Ok(band) => band,
        Err(fault) => return DropAnswer::Lacks(Lacks::from(fault)),
    };
    let verdict = verdict(&band, least);
    if band.nominal.grip.is_none() {
        doubts.push(DropDoubt::NeverGrips);
    }
    let warmed = case.warmed.as_ref();
    doubts.extend(warmed.and_then(|warmed| match warmed.most {
        None => Some(DropDoubt::NoHeatLimit),
        Some(most) if warmed.to > most => Some(DropDoubt::TooHot(most)),
        Some(_) => None,
    }));
    let too_hot = doubts
        .iter()
        .any(|doubt| matches!(doubt, DropDoubt::TooHot(_)));
    if case.cold_is_odd {
        doubts.push(DropDoubt::ColdSize);
    }
    doubts.extend(case.questioned.iter().copied().map(DropDoubt::Questioned));
    doubts.extend(case.assumed.iter().copied().map(DropDoubt::Assumed));
    let by_clearance = match verdict {
        DropVerdict::Free => Signal::Go,
        DropVerdict::Tight => Signal::Look,
        DropVerdict::MayNotEnter | DropVerdict::DoesNotEnter => Signal::Stop,
    };
    let signal = match by_clearance {
        _ if case.example => Signal::Wait,
        // Nothing holds such a part; or its housing is spoilt.
        _ if band.nominal.grip.is_none() || too_hot => Signal::Stop,
        Signal::Go if !doubts.is_empty() => Signal::Look,
        signal => signal,
    };
    DropAnswer::Ready(Box::new(DropView {
        band,
        verdict,
        signal,
        doubts,
        case: case.clone(),
        least,
    }))
}

#[cfg(test)]
#[allow(clippy::panic)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::ask::record::{ColdUse, measured_cold};
    use crate::document::edit::{History, Stay};
    use crate::document::merge::{choose, merge_papers};
    use crate::document::pen::Pen;
    use crate::job::advice::origin::{Input, origin};
    use crate::job::demo::Demo;
    use crate::job::ledger::Writer;
    use crate::job::model::engine::presets;
    use crate::job::model::entries::{Entries, Entry};
    use crate::job::model::field_kind::{Scope, UnitSystem};
    use crate::job::steps::assess::assess_cylinder;
    use crate::job::steps::shrink::ShrinkBy;
    use crate::materials::MaterialId;

    fn view(answer: DropAnswer) -> DropView {
        match answer {
            DropAnswer::Ready(view) => *view,
            DropAnswer::Lacks(lacks) => panic!("{lacks:?}"),
        }
    }

    fn sheet(changes: &[(Field, &str)]) -> DropSheet {
        let units = UnitSystem::Inch;
        let mut entries = presets(Scope::Drop, units, 1);
        for (field, text) in changes {
            let entry = Entry::new(*text, field.unit(units), 2);
            entries.put(Place::of_engine(*field), entry);
        }
        DropSheet {
            entries,
            units,
            sleeve_material: MaterialId::GrayIron,
            block_material: MaterialId::GrayIron,
        }
    }

    #[test]
    fn a_drop_nobody_typed_into_is_no_go() {
        let typed = sheet(&[]);
        assert_eq!(view(drop_of_sheet(&typed)).signal, Signal::Go);
        let blank = DropSheet {
            entries: Entries::default(),
            ..typed
        };
        let view = view(drop_of_sheet(&blank));
        assert_eq!((view.signal, view.doubts.len()), (Signal::Wait, 7));
    }

    #[test]
    fn a_drop_of_54_in_or_without_a_fit_is_no_go() {
        let wide = view(drop_of_sheet(&sheet(&[(Field::DropOd, "54")])));
        assert_ne!(wide.signal, Signal::Go);
        let loose = view(drop_of_sheet(&sheet(&[(Field::DropFit, "-0.0010")])));
        assert_eq!(loose.signal, Signal::Stop);
        assert!(loose.doubts.contains(&DropDoubt::NeverGrips));
    }

    #[test]
    fn two_values_of_two_devices_are_worked_out_when_one_is_chosen() {
        let of = |device: u32, text: &str, name: &str| {
            let mut paper = ColdDropPaper::of("one".to_owned(), sheet(&[]));
            let mut history = History::of(&paper);
            let entry = Entry::new(text, Field::DropFit.unit(UnitSystem::Inch), 5);
            let fit = Place::of_engine(Field::DropFit);
            paper.sheet.entries.put(fit, entry);
            name.clone_into(&mut paper.name);
            history.note(
                &mut paper,
                &mut Pen::new(Writer::of(device, 1)),
                5,
                Stay::New,
            );
            paper
        };
        let here = of(1, "0.0010", "here");
        let named = merge_papers(&here, &of(2, "0.0010", "there"));
        assert_eq!(conflicts(&named).len(), 1, "the name");
        assert!(matches!(drop_of_paper(&named), DropAnswer::Ready(_)));
        let mut both = merge_papers(&here, &of(2, "0.0012", "here"));
        let DropAnswer::Lacks(lacks) = drop_of_paper(&both) else {
            panic!("worked out of two values")
        };
        let fit = Spot::Reading(Place::of_engine(Field::DropFit));
        assert_eq!(lacks.unusable.len(), 1);
        assert_eq!(
            (lacks.unusable[0].spot, &lacks.unusable[0].why),
            (fit, &Why::Disputed)
        );
        let path = conflicts(&both)[0].path.clone();
        choose(&mut both, &path, 1, &mut Pen::new(Writer::of(1, 2)), 6);
        assert!(matches!(drop_of_paper(&both), DropAnswer::Ready(_)));
    }

    #[test]
    fn a_housing_goes_no_hotter_than_its_sheet_says() {
        let oven = [
            (Field::DropHeat, "oven"),
            (Field::DropHeatAt, "300"),
            (Field::DropHeatOut, "10"),
        ];
        let with_most = |most: &str| {
            let changes = [&oven[..], &[(Field::DropHeatMost, most)]].concat();
            view(drop_of_sheet(&sheet(&changes)))
        };
        assert_eq!(with_most("320").signal, Signal::Go);
        let open = with_most("");
        assert_eq!(open.signal, Signal::Look);
        assert!(open.doubts.contains(&DropDoubt::NoHeatLimit));
        assert_eq!(with_most("280").signal, Signal::Stop);
    }

    #[test]
    fn a_carry_that_cannot_be_read_is_no_usual_one() {
        let answer = drop_of_sheet(&sheet(&[(Field::DropCarry, "4O")]));
        assert!(matches!(answer, DropAnswer::Lacks(lacks) if lacks.unusable.len() == 1));
    }

    /// 0.0050 in of 4.44 are 63 % of what gray iron shrinks (0.178 %).
    #[test]
    fn a_sleeve_measured_cold_that_is_not_what_its_iron_does_is_no_go() {
        let mut job = Demo::InchFive.job(1);
        // What the record and the where-from sheet say of it.
        let said = |job: &Job| {
            let origin = origin(job, Owner::Cylinder(1), StepId::Drop);
            let shrink = origin.and_then(|sheet| {
                let moves =
                    |i: &Input| i.field == Field::ColdOd && i.effect.is_some_and(|e| e < 0.0);
                assert!(
                    sheet.inputs.iter().any(moves),
                    "larger cold, it grips sooner"
                );
                sheet.shrink
            });
            (measured_cold(job, 1).map(|(_, taken)| taken), shrink)
        };
        let measured = |job: &mut Job, cold: &str| {
            let warm = [(Field::SleeveOd, "4.4400"), (Field::BoreD, "4.4388")];
            for (field, text) in warm {
                for index in 0..6 {
                    let warm = Entry::new(text, job.unit(field), 2);
                    let place = Place::of_cylinder(1, field, index);
                    job.entries.put(place, warm);
                }
            }
            let place = Place::of_cylinder(1, Field::ColdOd, 0);
            let cold = Entry::new(cold, job.unit(Field::ColdOd), 2);
            job.entries.put(place, cold);
            view(drop_of_cylinder(job, &assess_cylinder(job, 1)))
        };
        let good = measured(&mut job, "4.4322");
        assert_eq!((good.signal, good.doubts.len()), (Signal::Go, 0));
        assert_eq!(good.case.shrink, ShrinkBy::Sleeve);
        assert_eq!(said(&job), (Some(ColdUse::Used), Some(ShrinkBy::Sleeve)));
        let odd = measured(&mut job, "4.4350");
        assert_ne!(odd.signal, Signal::Go);
        assert!(
            odd.doubts.contains(&DropDoubt::ColdSize),
            "{:?}",
            odd.doubts
        );
        assert_eq!(said(&job), (Some(ColdUse::Odd), Some(ShrinkBy::Sleeve)));
    }

    #[test]
    fn a_sleeve_not_clean_and_not_cold_is_no_go() {
        let mut job = Demo::InchFive.job(1);
        let of = |job: &Job| view(drop_of_cylinder(job, &assess_cylinder(job, 1)));
        assert_eq!(of(&job).signal, Signal::Go);
        job.set_mark(Owner::Cylinder(1), StepId::Clean, None, 2);
        for field in [Field::ChillTime, Field::Carry] {
            let blank = Entry::new("", job.unit(field), 2);
            job.entries.put(Place::of_cylinder(1, field, 0), blank);
        }
        let drop = of(&job);
        assert_eq!(drop.signal, Signal::Look);
        for doubt in [
            DropDoubt::First(StepId::Clean),
            DropDoubt::First(StepId::Chill),
            DropDoubt::Assumed(Field::Carry),
        ] {
            assert!(drop.doubts.contains(&doubt), "{:?}", drop.doubts);
        }
    }
}
