//! All sleeves of a deck judged together: one sleeve alone can hardly be proved
//! home with a depth gauge, but most of its error is common to the deck
//! ([`crate::metrology::seat_deck`]).
//!
//! Judged are the sleeves whose four clocks are measured so far; of a deck where
//! one cannot be used none is judged, for it could be the one that tells of the
//! others. One whose readings put it farther below its ledge than any gauge errs
//! was misread, and tells nothing of the others. A sleeve whose hole is left out is
//! judged alone.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveKind;
use crate::job::model::place::Owner;
use crate::job::model::reading::{Lack, Unusable};
use crate::job::model::readings::Readings;
use crate::job::model::step::StepId;
use crate::job::steps::home;
use crate::job::verdict::answer::Answer;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{CylinderReport, StepReport};
use crate::job::verdict::signal::Signal;
use crate::metrology::seat::{Seat, SeatVerdict};
use crate::metrology::seat_deck::{
    GAP_SCALE, PRIOR_ALIKE, PointsTo, SeatDeck, SeatDeckInput, seat_deck,
};
use crate::quantity::Length;
use crate::quantity::report::Level;

/// The sleeves of a deck, judged together.
#[derive(Clone, Debug, PartialEq)]
pub struct DeckSeats {
    /// Which deck.
    pub bank: u8,
    /// Its sleeves that are measured, in order.
    pub cylinders: Vec<u8>,
    /// Gap of each, as measured.
    pub gap: Vec<Length>,
    /// What is said of them.
    pub judged: SeatDeck,
}

impl DeckSeats {
    /// The chance of a sleeve.
    #[must_use]
    pub fn chance(&self, cylinder: u8) -> Option<f64> {
        let at = self.cylinders.iter().position(|c| *c == cylinder)?;
        self.judged.seated.get(at).copied()
    }

    /// Each sleeve: its number, its gap less the error that all share, its chance.
    pub fn sleeves(&self) -> impl Iterator<Item = (u8, Length, f64)> {
        let bias_m = self.judged.bias.as_m();
        self.cylinders
            .iter()
            .zip(&self.gap)
            .zip(&self.judged.seated)
            .map(move |((cylinder, gap), p)| (*cylinder, Length::from_m(gap.as_m() - bias_m), *p))
    }

    /// Cylinders that stand out, where the numbers point to some.
    #[must_use]
    pub fn stand_out(&self) -> Vec<u8> {
        match &self.judged.points_to {
            PointsTo::StandsOut(which) => which
                .iter()
                .filter_map(|at| self.cylinders.get(*at).copied())
                .collect(),
            PointsTo::Home | PointsTo::AllAlike | PointsTo::Undecided => Vec::new(),
        }
    }
}

/// What a deck's sleeves were judged by.
#[derive(Clone, Debug, PartialEq)]
struct Asked {
    gap: Vec<Length>,
    u_own: Length,
    u_common: Length,
    gap_limit: Length,
    prior_home: f64,
}

/// What was judged before: the same readings are not judged twice. Two
/// milliseconds for eight sleeves are too many for every key.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DeckMemory(Vec<(Asked, SeatDeck)>);

/// Decks that are remembered: those of a V and of holes left out, before and
/// after a key.
const REMEMBERED: usize = 8;

impl DeckMemory {
    fn judge(&mut self, asked: Asked) -> Result<SeatDeck, Lack> {
        if let Some((_, known)) = self.0.iter().find(|(of, _)| *of == asked) {
            return Ok(known.clone());
        }
        let judged = seat_deck(&SeatDeckInput {
            gap: &asked.gap,
            u_own: asked.u_own,
            u_common: asked.u_common,
            gap_limit: asked.gap_limit,
            prior_home: asked.prior_home,
            gap_scale: GAP_SCALE,
            prior_alike: PRIOR_ALIKE,
        })?;
        if self.0.len() >= REMEMBERED {
            self.0.remove(0);
        }
        self.0.push((asked, judged.clone()));
        Ok(judged)
    }
}

/// The uncertainty of a gap, in the part of each hole and the part of the deck.
fn uncertainties(r: &Readings) -> Result<[Length; 2], Lack> {
    let mut own = 0.0;
    let mut common = 0.0;
    let [u_above, u_depth] = home::uncertainties(r)?;
    for (u_m, share) in [
        (r.engine(Field::GaugeHeight)?, Field::CommonHeight),
        (u_above, Field::CommonThickness),
        (u_depth, Field::CommonDepth),
    ] {
        let variance = u_m.powi(2);
        let share = r.engine(share)?;
        own += variance * (1.0 - share);
        common += variance * share;
    }
    Ok([own, common].map(|variance: f64| Length::from_m(variance.sqrt())))
}

fn seat_of(report: &CylinderReport) -> Option<&Seat> {
    match &report.step(StepId::Seat)?.answer {
        Answer::Seat(seat) => Some(seat),
        _ => None,
    }
}

/// Standard uncertainties below its ledge from which a sleeve was misread.
const MISREAD: f64 = 4.0;

/// Judges these sleeves by their reports; `None` where none is measured.
fn judge(
    job: &Job,
    bank: u8,
    reports: &[CylinderReport],
    sleeves: &[u8],
    memory: &mut DeckMemory,
) -> Result<Option<DeckSeats>, Lack> {
    let r = Readings::new(job, Owner::Bank(bank));
    let [u_own, u_common] = uncertainties(&r)?;
    let least_m = -MISREAD * u_own.as_m().hypot(u_common.as_m());
    let measured: Vec<(u8, Length)> = reports
        .iter()
        .filter(|report| sleeves.contains(&report.cylinder))
        .filter_map(|report| Some((report.cylinder, seat_of(report)?.gap_mean)))
        .filter(|(_, gap)| gap.as_m() >= least_m)
        .collect();
    if measured.is_empty() {
        return Ok(None);
    }
    let (cylinders, gap): (Vec<u8>, Vec<Length>) = measured.into_iter().unzip();
    let judged = memory.judge(Asked {
        gap: gap.clone(),
        u_own,
        u_common,
        gap_limit: r.length(Field::GapLimit)?,
        prior_home: r.engine(Field::PriorHome)?,
    })?;
    Ok(Some(DeckSeats {
        bank,
        cylinders,
        gap,
        judged,
    }))
}

/// Judges every deck of a job and says it at the seat of each of its sleeves.
pub fn judge_together(
    job: &Job,
    reports: &mut [CylinderReport],
    memory: &mut DeckMemory,
) -> Vec<DeckSeats> {
    let mut decks = Vec::new();
    if job.sleeve_kind() == Ok(SleeveKind::ByFit) {
        each_by_itself(job, reports);
        return decks;
    }
    for bank in 0..job.engine.banks() {
        let of_deck =
            |report: &CylinderReport| job.cylinders_of(bank).any(|c| c == report.cylinder);
        let unusable: Option<Unusable> = reports
            .iter()
            .filter(|report| of_deck(report))
            .filter_map(|report| report.step(StepId::Seat)?.unusable.first().cloned())
            .next();
        let judged = match unusable {
            Some(unusable) => Err(Lack::Unusable(unusable)),
            None => {
                let sleeves: Vec<u8> = job.cylinders_of(bank).collect();
                judge(job, bank, reports, &sleeves, memory)
            }
        };
        let limits = limits(job, bank);
        for report in reports.iter_mut().filter(|report| of_deck(report)) {
            let cylinder = report.cylinder;
            let together = judged.as_ref().ok().and_then(Option::as_ref);
            report.all_home = together.map(|deck| deck.judged.all);
            let Some(step) = report.steps.iter_mut().find(|s| s.id == StepId::Seat) else {
                continue;
            };
            match (&judged, &limits) {
                (Ok(Some(deck)), Ok(limits)) => say(step, deck, cylinder, *limits),
                (Ok(None), Ok(_)) => {}
                (Err(lack), _) | (_, Err(lack)) => hold(step, lack),
            }
        }
        if let Ok(Some(deck)) = judged {
            decks.push(deck);
        }
    }
    alone(job, reports, memory);
    decks
}

/// Sleeves that their fit alone holds: no gap can close under one later, and what is
/// asked of each is asked of each alone. The least sure one speaks for its deck.
fn each_by_itself(job: &Job, reports: &mut [CylinderReport]) {
    for bank in 0..job.engine.banks() {
        let of_deck =
            |report: &CylinderReport| job.cylinders_of(bank).any(|c| c == report.cylinder);
        let chances = reports.iter().filter(|report| of_deck(report));
        let least = chances
            .filter_map(|report| Some(seat_of(report)?.p_seated))
            .reduce(f64::min);
        for report in reports.iter_mut().filter(|report| of_deck(report)) {
            report.all_home = least;
        }
    }
}

/// Sleeves in holes that are left out: each says what it alone can tell.
fn alone(job: &Job, reports: &mut [CylinderReport], memory: &mut DeckMemory) {
    for cylinder in job.left_out.iter().copied() {
        let bank = job.engine.bank_of(cylinder);
        let judged = judge(job, bank, reports, &[cylinder], memory);
        let limits = limits(job, bank);
        let seat = reports
            .iter_mut()
            .filter(|report| report.cylinder == cylinder)
            .flat_map(|report| report.steps.iter_mut())
            .find(|step| step.id == StepId::Seat);
        let Some(step) = seat else {
            continue; // more cylinders are left out than the engine has
        };
        match (judged, limits) {
            (Ok(Some(deck)), Ok(limits)) => say(step, &deck, cylinder, limits),
            (Ok(None), Ok(_)) => {}
            (Err(lack), _) | (_, Err(lack)) => hold(step, &lack),
        }
    }
}

/// How large gap and tilt may be.
fn limits(job: &Job, bank: u8) -> Result<(Length, Length), Lack> {
    let r = Readings::new(job, Owner::Bank(bank));
    Ok((r.length(Field::GapLimit)?, r.length(Field::TiltLimit)?))
}

/// A seat that is judged with its deck.
fn say(
    step: &mut StepReport,
    deck: &DeckSeats,
    cylinder: u8,
    (gap_limit, tilt_limit): (Length, Length),
) {
    let (Answer::Seat(seat), Some(p)) = (&mut step.answer, deck.chance(cylinder)) else {
        return;
    };
    let verdict = seat.verdict_together(p, deck.judged.bias, gap_limit, tilt_limit);
    seat.p_seated = p;
    seat.verdict = verdict;
    // Marks, doubts and what is missing have had their say already.
    if step.next != Next::SeatUndecided {
        return;
    }
    let (signal, next) = match verdict {
        SeatVerdict::Seated => (Signal::Go, Next::Seated),
        SeatVerdict::NotSeated if p > 0.05 => (Signal::Stop, Next::Tilted(seat.tilt)),
        SeatVerdict::NotSeated => (Signal::Stop, Next::NotSeated(seat.gap_mean)),
        SeatVerdict::PullAgain | SeatVerdict::Undecided => return,
    };
    let doubted = !step.questioned.is_empty();
    step.signal = match signal {
        Signal::Go if doubted || !step.findings.iter().all(|f| f.level == Level::Note) => {
            Signal::Look
        }
        signal => signal,
    };
    step.next = match step.questioned.first() {
        Some(place) if signal == Signal::Go => Next::Answer(*place),
        _ => next,
    };
}

/// A seat whose deck cannot be judged.
fn hold(step: &mut StepReport, lack: &Lack) {
    if step.next != Next::SeatUndecided {
        return;
    }
    step.next = match lack {
        Lack::Missing(missing) => Next::Measure(*missing),
        Lack::Unusable(unusable) => Next::Mend(unusable.spot),
        Lack::Refused(_) => Next::Refused,
    };
    if let Lack::Refused(fault) = lack {
        step.fault = Some(fault.clone());
    }
}
