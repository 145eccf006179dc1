//! The deck: locked until every flange of the bank is home, then how much to
//! cut and what each flange loses; one verdict of it, for step, screen and
//! record.
//!
//! An unseated flange that is decked flush drops later by a thou or two and
//! takes the head gasket with it: hence the lock. It can be released by hand;
//! the reason is kept in the record, and the deck is a look at best.

use crate::job::model::field::Field;
use crate::job::model::job::{Job, Unlock};
use crate::job::model::part::SleeveKind;
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Missing, Spot, Unusable};
use crate::job::model::readings::{Readings, largest, smallest};
use crate::job::model::step::StepId;
use crate::job::steps::after_cut::after_cut;
use crate::job::steps::all_low::{AllLow, measured};
use crate::job::steps::survey::{deck_beside, spots};
use crate::job::steps::tools::{TINY_M, length_figure};
use crate::job::verdict::figure::Figure;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{CylinderReport, Verdict, Worked};
use crate::job::verdict::signal::Signal;
use crate::planning::deck::{DeckHole, DeckInput, DeckPlan, deck as deck_of};
use crate::quantity::Length;
use crate::quantity::code::Code;
use crate::quantity::report::{Finding, Level};

/// Whether a bank may be decked.
#[derive(Clone, Debug, PartialEq)]
pub enum Lock {
    /// Every flange is home.
    Open,
    /// Every flange of the others is home; these are left out, and readings say
    /// that a sleeve went in.
    OpenBeside(Vec<u8>),
    /// These are not.
    Locked(Vec<u8>),
    /// Each of them by itself is, all of them together only with this chance.
    Together(f64),
    /// Released by hand although these are not home.
    ByHand(Vec<u8>, Unlock),
    /// Two devices do not agree on what decides it.
    Disputed(Unusable),
    /// No cylinder of the bank gets a sleeve.
    NoSleeves,
}

impl Lock {
    /// Whether the cut may be made.
    #[must_use]
    pub const fn is_open(&self) -> bool {
        matches!(self, Self::Open | Self::OpenBeside(_) | Self::ByHand(..))
    }
}

/// The cylinders of a bank that get a sleeve.
#[must_use]
pub fn of_bank(job: &Job, bank: u8) -> Vec<u8> {
    job.cylinders_of(bank).collect()
}

/// Holes of a bank that are left out although something was read of a sleeve in
/// them: it may be there still.
fn went_in(job: &Job, bank: u8) -> Vec<u8> {
    const OF_IT: [Field; 3] = [Field::WarmHeight, Field::PullReleased, Field::SeatHeight];
    let read = |cylinder: u8| {
        job.entries.iter().any(|(place, entry)| {
            place.owner == Owner::Cylinder(cylinder)
                && OF_IT.contains(&place.field)
                && !entry.text.trim().is_empty()
        })
    };
    job.left_out
        .iter()
        .copied()
        .filter(|c| job.engine.bank_of(*c) == bank && read(*c))
        .collect()
}

/// The lock of a bank.
#[must_use]
pub fn lock(job: &Job, reports: &[CylinderReport], bank: u8) -> Lock {
    let is_home = |cylinder| {
        reports
            .iter()
            .any(|r| r.cylinder == cylinder && r.is_seated())
    };
    let all_home = all_home(job, reports, bank);
    for spot in [Spot::Engine, Spot::LeftOut] {
        if let Err(disputed) = job.dispute(spot) {
            return Lock::Disputed(disputed);
        }
    }
    let cylinders = of_bank(job, bank);
    if cylinders.is_empty() {
        return Lock::NoSleeves;
    }
    let waiting: Vec<u8> = cylinders.into_iter().filter(|c| !is_home(*c)).collect();
    let wanted = Readings::new(job, Owner::Block).engine(Field::Confidence);
    if waiting.is_empty() {
        return match (all_home, wanted) {
            (Some(all), Ok(wanted)) if all >= wanted => match went_in(job, bank) {
                beside if beside.is_empty() => Lock::Open,
                beside => Lock::OpenBeside(beside),
            },
            (Some(all), Ok(_)) if !job.unlocks.contains_key(&bank) => Lock::Together(all),
            (_, Err(Lack::Unusable(unusable))) => Lock::Disputed(unusable),
            _ => match job.unlocks.get(&bank) {
                Some(unlock) => Lock::ByHand(Vec::new(), unlock.clone()),
                None => Lock::Locked(Vec::new()),
            },
        };
    }
    if let Err(disputed) = job.dispute(Spot::Unlock(bank)) {
        return Lock::Disputed(disputed);
    }
    match job.unlocks.get(&bank) {
        Some(unlock) => Lock::ByHand(waiting, unlock.clone()),
        None => Lock::Locked(waiting),
    }
}

/// The chance that all measured flanges of a bank are home, judged together.
#[must_use]
pub fn all_home(job: &Job, reports: &[CylinderReport], bank: u8) -> Option<f64> {
    let mut of_deck = reports
        .iter()
        .filter(|r| job.cylinders_of(bank).any(|c| c == r.cylinder));
    of_deck.find_map(|r| r.all_home)
}

/// A planned cut, hole by hole.
#[derive(Clone, Debug, PartialEq)]
pub struct BankPlan {
    /// Cylinders in the order of the plan's flanges.
    pub cylinders: Vec<u8>,
    /// What is missing of holes that the plan does not cover.
    pub without: Vec<Missing>,
    /// Points of the survey that are there, of so many.
    pub surveyed: (u8, u8),
    /// Cylinders beside which the deck is taken from the survey round them.
    pub deck_from_survey: Vec<u8>,
    /// Whether the cut is the one decided on, and not the one planned.
    pub cut_decided: bool,
    /// The plan, by each flange's lowest clock.
    pub plan: DeckPlan,
    /// What each flange loses where it stands highest: more by its tilt.
    pub cut_most: Vec<Length>,
    /// What is left of it there; nothing of a sleeve without a flange.
    pub left_least: Option<Vec<Length>>,
    /// Chance that a flange is left low all the same, by what heights and cut
    /// are known to.
    pub any_low: Option<AllLow>,
    /// What is said of it.
    pub signal: Signal,
    /// What comes first.
    pub next: Next,
}

impl BankPlan {
    /// What is said of the plan under a lock: released by hand, or beside a hole
    /// that may hold a sleeve, it is a look at best.
    #[must_use]
    pub fn under(&self, lock: &Lock) -> (Signal, Next) {
        match (lock, self.signal) {
            (Lock::ByHand(..), Signal::Go) => (Signal::Look, Next::ReleasedByHand),
            (Lock::OpenBeside(_), Signal::Go) => (Signal::Look, Next::SleeveIn),
            (_, signal) => (signal, self.next),
        }
    }

    /// Whether the whole deck and every flange of the bank are surveyed, lose at
    /// least the clean-up cut, and no flange more than it may.
    #[must_use]
    pub fn cleans_up(&self) -> bool {
        self.covers_all() && self.plan.findings.iter().all(|f| f.level != Level::Stop)
    }

    /// Whether every point and every flange of the bank is in it.
    #[must_use]
    pub const fn covers_all(&self) -> bool {
        self.without.is_empty() && self.surveyed.0 >= self.surveyed.1
    }
}

/// What stands for the flange of a plain sleeve: more than any cut takes.
const NO_FLANGE_M: f64 = 0.2;

/// A hole as the plan takes it.
struct HoleRead {
    hole: DeckHole,
    tilt_m: f64,
    from_survey: bool,
}

fn hole(r: &Readings, cylinder: u8) -> Result<HoleRead, Lack> {
    let heights = r.complete(Field::SeatHeight)?;
    let kind = r.sleeve_kind()?;
    let thickness_m = match kind {
        SleeveKind::Flanged => smallest(&r.complete(Field::FlangeThickness)?),
        // It has no flange that a cut could use up.
        SleeveKind::OnStep | SleeveKind::ByFit => Some(NO_FLANGE_M),
    };
    let none = || r.missing(Field::SeatHeight, 1);
    let height_m = smallest(&heights).ok_or_else(none)?;
    let highest_m = largest(&heights).ok_or_else(none)?;
    let here = r.own(Field::DeckHere)?;
    let deck_m =
        deck_beside(r.job, r.bank(), cylinder)?.ok_or_else(|| r.missing(Field::DeckHere, 1))?;
    Ok(HoleRead {
        hole: DeckHole {
            deck: Length::from_m(deck_m),
            height: Length::from_m(height_m),
            thickness: Length::from_m(thickness_m.ok_or_else(none)?),
        },
        tilt_m: highest_m - height_m,
        from_survey: here.is_none(),
    })
}

/// The cut of a bank: from the surveyed low spots and from each flange's height
/// after the last pull (its lowest clock: that is where it would stay uncut).
///
/// # Errors
/// Nothing surveyed, something that cannot be used.
pub fn plan(job: &Job, bank: u8) -> Result<BankPlan, Lack> {
    let r = Readings::new(job, Owner::Bank(bank));
    r.head()?;
    job.dispute(Spot::LeftOut)?;
    let wanted = spots(job, bank);
    let spots_read = r.list(Field::LowSpot)?;
    let low: Vec<Length> = spots_read
        .iter()
        .map(|(_, below)| Length::from_m(-below))
        .collect();
    let there = spots_read.iter().filter(|(index, _)| *index < wanted);
    let surveyed = (there.count() as u8, wanted);
    if low.is_empty() {
        return Err(r.missing(Field::LowSpot, wanted));
    }
    let mut cylinders = Vec::new();
    let mut without = Vec::new();
    let mut holes = Vec::new();
    let mut tilts_m = Vec::new();
    let mut deck_from_survey = Vec::new();
    for cylinder in of_bank(job, bank) {
        match hole(&Readings::of_cylinder(job, cylinder), cylinder) {
            Ok(read) => {
                cylinders.push(cylinder);
                holes.push(read.hole);
                tilts_m.push(read.tilt_m);
                if read.from_survey {
                    deck_from_survey.push(cylinder);
                }
            }
            Err(Lack::Missing(missing)) => without.push(missing),
            Err(other) => return Err(other),
        }
    }
    let decided = r.own(Field::DeckCut)?;
    let usual_m = r.engine(Field::PlannedCut)?;
    let clean_up = r.length(Field::CleanUp)?;
    let mut plan = deck_of(&DeckInput {
        low: &low,
        holes: &holes,
        clean_up,
        planned: Some(Length::from_m(decided.unwrap_or(usual_m))), // absent: as planned
    })?;
    let tilted = |list: &[Length], sign: f64| -> Vec<Length> {
        list.iter()
            .zip(&tilts_m)
            .map(|(of, tilt_m)| Length::from_m(of.as_m() + sign * tilt_m))
            .collect()
    };
    let (cut_most, left_least) = (
        tilted(&plan.flange_cut, 1.0),
        tilted(&plan.flange_left, -1.0),
    );
    // What the groove takes off a flange it cannot lose twice.
    let groove_m = match r.engine_or_none(Field::RingHeight)? {
        Some(ring_m) => (ring_m - r.engine(Field::RingProud)?).max(0.0),
        None => 0.0,
    };
    let least_m = r.engine(Field::GrooveLand)? + groove_m;
    let has_flange = r.sleeve_kind()? == SleeveKind::Flanged;
    let little = has_flange && left_least.iter().any(|left| left.as_m() < least_m - TINY_M);
    if little {
        plan.findings.push(Finding::stop(
            Code::LittleFlangeLeft,
            "the cut leaves less of a flange than the limit asks for, its groove counted: do not \
             cut this deep",
        ));
    }
    let deep = plan.removal.as_m() > 2.0 * usual_m + TINY_M;
    if deep {
        plan.findings.push(Finding::look(
            Code::DeepCut,
            "more than twice the cut planned: the pistons stand prouder by as much; work out \
             gasket and room to the head first",
        ));
    }
    let any_low = measured(job, &plan.flange_cut)?;
    let may_stay_low = match any_low {
        Some(all) => all.chance > r.engine(Field::Risk)?,
        None => false,
    };
    if may_stay_low {
        plan.findings.push(Finding::look(
            Code::FlangeMayStayLow,
            "the chance that a flange is left low is greater than the one accepted: cut deeper, \
             or measure heights and deck again",
        ));
    }
    let stops = plan.findings.iter().any(|f| f.level == Level::Stop);
    let uncovered = without.first().copied().or_else(|| {
        (surveyed.0 < wanted).then_some(Missing {
            owner: Owner::Bank(bank),
            field: Field::LowSpot,
            places: wanted - surveyed.0,
        })
    });
    let (signal, next) = if little {
        (Signal::Stop, Next::LittleFlange)
    } else if stops {
        (Signal::Stop, Next::Advice(StepId::Deck, Signal::Stop))
    } else if let Some(missing) = uncovered {
        (Signal::Wait, Next::Measure(missing))
    } else if deep {
        (Signal::Look, Next::DeepCut)
    } else if may_stay_low {
        (Signal::Look, Next::MayStayLow)
    } else if !deck_from_survey.is_empty() {
        (Signal::Look, Next::Assumed(Field::DeckHere))
    } else {
        (Signal::Go, Next::Advice(StepId::Deck, Signal::Go))
    };
    Ok(BankPlan {
        cylinders,
        without,
        surveyed,
        deck_from_survey,
        cut_decided: decided.is_some(),
        plan,
        cut_most,
        left_least: has_flange.then_some(left_least),
        any_low,
        signal,
        next,
    })
}

/// The step: locked, released by hand, or what the plan says. A plan that is
/// good waits for the cut, which a hand marks.
///
/// # Errors
/// What it lacks, once the lock is off.
pub fn deck(r: &Readings, lock: &Lock) -> Worked {
    match lock {
        Lock::NoSleeves => return Ok(Verdict::plain(Signal::None, Next::MarkIt)),
        Lock::Disputed(disputed) => return Err(Lack::Unusable(disputed.clone())),
        Lock::Locked(_) | Lock::Together(_) => {
            let next = Next::Advice(StepId::Deck, Signal::Wait);
            return Ok(Verdict::plain(Signal::Wait, next));
        }
        Lock::Open | Lock::OpenBeside(_) | Lock::ByHand(..) => {}
    }
    let plan = plan(r.job, r.bank())?;
    let after = after_cut(r.job, r.bank())?;
    let (signal, next) = match after.over(plan.under(lock)) {
        // Good: cut it, then say so.
        (Signal::Go, _) => (Signal::None, Next::Advice(StepId::Deck, Signal::None)),
        worse => worse,
    };
    Ok(Verdict {
        number: Some(length_figure(
            Figure::DeckCut,
            plan.plan.removal.as_m(),
            None,
        )),
        findings: plan.plan.findings,
        // Not decided yet: as planned.
        lacks: (!plan.cut_decided)
            .then_some(Missing {
                owner: r.owner,
                field: Field::DeckCut,
                places: 1,
            })
            .into_iter()
            .chain(after.lacks())
            .collect(),
        ..Verdict::plain(signal, next)
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::entries::Entry;
    use crate::job::model::place::Place;
    use crate::job::steps::assess::assess;

    #[test]
    fn a_flange_is_thinnest_where_it_stood_highest() {
        let mut job = Demo::InchFive.job(1);
        let readings = [
            (Field::SeatHeight, ["0.0100", "0.0112", "0.0103", "0.0101"]),
            (Field::FlangeThickness, ["0.2190"; 4]),
        ];
        for (field, texts) in readings {
            for (index, text) in texts.into_iter().enumerate() {
                let place = Place::of_cylinder(1, field, index as u8);
                let entry = Entry::new(text, job.unit(field), 2);
                job.entries.put(place, entry);
            }
        }
        // The deck beside hole 1 as the demo has it, the cut as planned: by
        // hand, thickness less (deck + height + cut).
        let beside = Place::of_cylinder(1, Field::DeckHere, 0);
        let deck = -job.reading(beside).number().unwrap().unwrap();
        let cut = job.engine_si(Field::PlannedCut).unwrap().unwrap();
        let by_hand = |height: f64| 0.2190 * 0.0254 - (deck + height * 0.0254 + cut);
        let plan = plan(&job, 0).unwrap();
        assert!((plan.plan.flange_left[0].as_m() - by_hand(0.0100)).abs() < 1e-9);
        let left = plan.left_least.unwrap();
        assert!((left[0].as_m() - by_hand(0.0112)).abs() < 1e-9);
        let lost = |height: f64| deck + height * 0.0254 + cut;
        assert!((plan.cut_most[0].as_m() - lost(0.0112)).abs() < 1e-9);
    }

    /// By hand: the demo's flanges are 0.219 in thick and 0.010 proud; cut by
    /// 0.180 they keep 0.029, less than the 0.040 in that a groove's land asks
    /// for, cut by 0.012 they keep enough, but it is more than twice 0.005.
    #[test]
    fn a_cut_has_a_most_too_and_one_that_cannot_be_read_is_no_other() {
        let mut job = Demo::InchFive.job(1);
        let none = Entry::new("none", job.unit(Field::RingHeight), 2);
        job.entries.put(Place::of_engine(Field::RingHeight), none);
        let mut with = |text: &str| {
            let place = Place::of_bank(0, Field::DeckCut, 0);
            let entry = Entry::new(text, job.unit(Field::DeckCut), 2);
            job.entries.put(place, entry);
            plan(&job, 0)
        };
        let codes = |plan: &BankPlan| -> Vec<&str> {
            plan.plan.findings.iter().map(|f| f.code.id()).collect()
        };
        let deep = with("0.1800").unwrap();
        assert!(!deep.cleans_up() && codes(&deep).contains(&"little_flange_left"));
        let twice = with("0.0120").unwrap();
        assert!(
            twice.cleans_up() && codes(&twice) == ["deep_cut"],
            "{twice:?}"
        );
        assert!(codes(&with("0.0050").unwrap()).is_empty());
        assert!(matches!(with("43"), Err(Lack::Unusable(_))));
    }

    /// Four of five are home, the fifth has stopped high: with it none of the
    /// chance is left; without it the deck opens. The numbers are those of the
    /// draws of the model in the project's physics: 0.998 and more each.
    #[test]
    fn a_deck_opens_on_the_chance_that_all_are_home() {
        let mut job = Demo::InchFive.job(1);
        let reports = assess(&job);
        assert!(all_home(&job, &reports, 0).unwrap() < 0.01);
        assert_eq!(lock(&job, &reports, 0), Lock::Locked(vec![3]));
        job.left_out = vec![3];
        let reports = assess(&job);
        assert!(all_home(&job, &reports, 0).unwrap() > 0.99);
        assert_eq!(lock(&job, &reports, 0), Lock::OpenBeside(vec![3]));
        // Each home by itself, all together not sure enough.
        let sure = Entry::new("0.9999", job.unit(Field::Confidence), 2);
        job.entries.put(Place::of_engine(Field::Confidence), sure);
        assert!(!lock(&job, &assess(&job), 0).is_open());
        // Two rows a bore and one behind, left and right.
        assert_eq!(spots(&job, 0), 12);
    }

    /// By hand: round hole 2 of the demo lie the spots of rows 2 and 3, 0.0010,
    /// 0.0008, 0.0003 and 0.0006 in low: 0.000675 in on the mean.
    #[test]
    fn the_deck_beside_a_hole_comes_from_the_survey_where_it_is_not_measured() {
        let mut job = Demo::InchFive.job(1);
        let beside = |job: &Job| deck_beside(job, 0, 2).unwrap().unwrap() / 0.0254;
        let place = Place::of_cylinder(2, Field::DeckHere, 0);
        let typed = job.reading(place).number().unwrap().unwrap() / 0.0254;
        assert!((beside(&job) + typed).abs() < 1e-12);
        let unit = job.unit(Field::DeckHere);
        job.entries.put(place, Entry::new("", unit, 2));
        assert!((beside(&job) + 0.000_675).abs() < 1e-9, "{}", beside(&job));
    }
}
