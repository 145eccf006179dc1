//! What the numbers of a cylinder say: step by step a signal, one number, and
//! what to do next; over all of them the state shown in the strip.
//!
//! Nothing is stored: the same entries give the same report. Verdicts come from
//! the steps; this module decides what comes first when readings are missing,
//! unusable, refused or asked about, and takes back what a later step shows to
//! be wrong. `go` is left only where everything a step hangs on is there, is
//! usable and is not asked about.

use crate::job::model::check::Doubts;
use crate::job::model::field::Field;
use crate::job::model::field_kind::{Places, Scope};
use crate::job::model::hangs_on::BEHIND_COLD;
use crate::job::model::job::Job;
use crate::job::model::lookup::steps_of;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Missing, Spot, Unusable};
use crate::job::model::readings::Readings;
use crate::job::model::stand::Stand;
use crate::job::model::step::{Calculation, Mark, StepId, StepSpec, Subject};
use crate::job::steps::after_cut::any_open;
use crate::job::steps::deck::{Lock, deck, lock};
use crate::job::steps::look_back::{compare_returns, current, look_back, state};
use crate::job::steps::proud::{heights, judge_heights};
use crate::job::steps::since_plan::hold_to_plan;
use crate::job::steps::survey::spots;
use crate::job::steps::together::{DeckMemory, DeckSeats, judge_together};
use crate::job::steps::work_to::work_to;
use crate::job::steps::{
    bore, counterbore, drop, enquiry, finish, fit, ledge, measure, order, seat,
};
use crate::job::verdict::answer::Answer;
use crate::job::verdict::next::Next;
use crate::job::verdict::report::{CylinderReport, StepReport, Verdict, Worked};
use crate::job::verdict::signal::{Signal, State};
use crate::quantity::report::Level;

/// Reports of the block and of its decks, by whose they are.
pub type Whole = Vec<(Owner, Vec<StepReport>)>;

/// All cylinders, 1 first, those left out too.
#[must_use]
pub fn assess(job: &Job) -> Vec<CylinderReport> {
    cylinders(job, &Doubts::of(job), &mut DeckMemory::default()).0
}

fn cylinders(
    job: &Job,
    doubts: &Doubts,
    memory: &mut DeckMemory,
) -> (Vec<CylinderReport>, Vec<DeckSeats>) {
    let mut reports: Vec<CylinderReport> = (1..=job.engine.cylinders)
        .map(|cylinder| cylinder_report(job, doubts, cylinder))
        .collect();
    let decks = judge_together(job, &mut reports, memory);
    judge_heights(job, &mut reports);
    hold_to_plan(job, &mut reports);
    for report in &mut reports {
        look_back(&mut report.steps);
        report.state = state(job, report.cylinder, &report.steps);
        report.current = current(&report.steps);
    }
    compare_returns(job, &mut reports);
    (reports, decks)
}

/// Everything a job says.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Assessed {
    /// Its cylinders, 1 first, those left out too.
    pub cylinders: Vec<CylinderReport>,
    /// The block and its decks.
    pub whole: Whole,
    /// The sleeves of each deck, judged together, where one is measured.
    pub decks: Vec<DeckSeats>,
}

/// Everything a job says, its doubts looked for once, its decks judged anew only
/// where the memory does not know them.
#[must_use]
pub fn assess_job(job: &Job, memory: &mut DeckMemory) -> Assessed {
    let doubts = Doubts::of(job);
    let (cylinders, decks) = cylinders(job, &doubts, memory);
    let whole = whole_of(job, &doubts, &cylinders);
    Assessed {
        cylinders,
        whole,
        decks,
    }
}

/// The block and its decks, from the reports of the cylinders.
#[must_use]
pub fn assess_whole(job: &Job, reports: &[CylinderReport]) -> Whole {
    whole_of(job, &Doubts::of(job), reports)
}

fn whole_of(job: &Job, doubts: &Doubts, reports: &[CylinderReport]) -> Whole {
    let banks: Whole = (0..job.engine.banks())
        .map(Owner::Bank)
        .map(|owner| (owner, owner_steps(job, doubts, owner, reports)))
        .collect();
    let mut block = owner_steps(job, doubts, Owner::Block, reports);
    let open = not_all_done(&block, &banks, reports) || any_open(job);
    let of_holes = reports.iter().filter(|r| r.state != State::LeftOut);
    let steps = of_holes
        .flat_map(|report| &report.steps)
        .chain(banks.iter().flat_map(|(_, steps)| steps))
        .chain(&block);
    let mut mend: Vec<Unusable> = Vec::new();
    for unusable in steps.flat_map(|step| &step.unusable) {
        if !mend.contains(unusable) {
            mend.push(unusable.clone());
        }
    }
    let stop = reports.iter().find(|r| r.state == State::Stop);
    let stop = stop.map(|report| report.cylinder);
    if let Some(report) = block.iter_mut().find(|s| s.id == StepId::Report) {
        hand_over(report, open, mend, stop);
    }
    let mut whole = vec![(Owner::Block, block)];
    whole.extend(banks);
    whole
}

/// The steps of the block, of one of its decks or of a cylinder.
#[must_use]
pub fn assess_owner(job: &Job, owner: Owner) -> Vec<StepReport> {
    match owner {
        Owner::Cylinder(cylinder) => assess_cylinder(job, cylinder).steps,
        Owner::Block | Owner::Bank(_) => {
            let own = assess_job(job, &mut DeckMemory::default())
                .whole
                .into_iter()
                .find(|(of, _)| *of == owner);
            own.map(|(_, steps)| steps).into_iter().flatten().collect()
        }
    }
}

/// One cylinder, judged with its deck.
#[must_use]
pub fn assess_cylinder(job: &Job, cylinder: u8) -> CylinderReport {
    let mut all = assess(job).into_iter();
    match all.find(|report| report.cylinder == cylinder) {
        Some(report) => report,
        // A cylinder that the engine has not got, for whoever asks.
        None => cylinder_report(job, &Doubts::of(job), cylinder),
    }
}

/// What a step's calculation says by itself, its marks and doubts apart.
///
/// # Errors
/// What it lacks.
pub fn worked(job: &Job, owner: Owner, step: StepId) -> Worked {
    let spec = step.spec();
    // The deck alone hangs on its cylinders' seats.
    let reports = match spec.calculation {
        Calculation::Deck | Calculation::Heights => assess(job),
        _ => Vec::new(),
    };
    calculate(job, owner, spec, &reports)
}

fn calculate(job: &Job, owner: Owner, spec: &StepSpec, reports: &[CylinderReport]) -> Worked {
    let r = &Readings::new(job, owner);
    match spec.calculation {
        Calculation::None => Ok(Verdict::plain(Signal::None, Next::MarkIt)),
        Calculation::Estimate => enquiry::enquiry(r),
        Calculation::Apart => enquiry::rest(r),
        Calculation::PressureDrop => enquiry::pressure_drop(r, spec.id),
        Calculation::DatumTilt => enquiry::datum(r),
        Calculation::Wear => measure::old_bore(r),
        Calculation::WallLeft => measure::walls(r),
        Calculation::Choose => order::choose(r),
        Calculation::Offset => bore::centre(r),
        Calculation::HoneStock => bore::hone_stock(r),
        Calculation::CounterboreClearance => counterbore::flange_room(r),
        Calculation::Chamfer => counterbore::fillet_room(r),
        Calculation::Oxygen => drop::oxygen(r),
        Calculation::Chill => drop::chill(r),
        Calculation::Warmed => drop::warmed(r),
        Calculation::Protrusion => finish::protrusion(r),
        Calculation::Groove => finish::groove(r),
        Calculation::Finish => finish::finish(r),
        Calculation::RingGap => finish::ring_gaps(r),
        Calculation::SleeveForm => measure::sleeve_form(r),
        Calculation::Counterbore => ledge::counterbore(r),
        Calculation::StepDepth => counterbore::depth(r),
        Calculation::Fit => fit::fit(r),
        Calculation::ColdDrop => drop::dropped(r),
        Calculation::Height => seat::warm_height(r),
        Calculation::Pulls => seat::pulls(r),
        Calculation::Seat => seat::seat(r),
        Calculation::Deck => match owner {
            Owner::Bank(bank) => deck(r, &lock(job, reports, bank)),
            Owner::Block | Owner::Cylinder(_) => deck(r, &Lock::NoSleeves),
        },
        Calculation::Heights => match owner {
            Owner::Bank(bank) => heights(r, &lock(job, reports, bank)),
            Owner::Block | Owner::Cylinder(_) => heights(r, &Lock::NoSleeves),
        },
    }
}

fn owner_steps(
    job: &Job,
    doubts: &Doubts,
    owner: Owner,
    reports: &[CylinderReport],
) -> Vec<StepReport> {
    let subject = match owner {
        Owner::Block => Subject::Block,
        Owner::Bank(_) => Subject::Bank,
        Owner::Cylinder(_) => Subject::Cylinder,
    };
    steps_of(job.listed_stand(), subject)
        .map(|spec| step_report(job, doubts, owner, spec, reports))
        .collect()
}

/// Whether a field, asked for by `owner`, stands at `place`: a deck hangs on the
/// readings of its cylinders, a cylinder on those of its deck and its engine.
fn hangs_on(job: &Job, owner: Owner, field: Field, place: Place) -> bool {
    if place.field != field {
        return false;
    }
    match (field.spec().scope, owner, place.owner) {
        (Scope::Engine | Scope::Block | Scope::Drop, _, Owner::Block) => true,
        (Scope::Bank, Owner::Cylinder(cylinder), Owner::Bank(bank)) => {
            job.engine.bank_of(cylinder) == bank
        }
        (Scope::Cylinder, Owner::Bank(bank), Owner::Cylinder(cylinder)) => {
            job.engine.bank_of(cylinder) == bank && !job.left_out.contains(&cylinder)
        }
        (Scope::Cylinder, Owner::Block, Owner::Cylinder(cylinder)) => {
            !job.left_out.contains(&cylinder)
        }
        _ => place.owner == owner,
    }
}

/// Whether a step asks for a field with the job's sleeves; of sleeves that nobody
/// knows it asks for all.
fn asks(stand: &Result<Stand, Unusable>, step: StepId, field: Field) -> bool {
    match stand {
        Ok(stand) => stand.asks(step, field),
        Err(_) => true,
    }
}

/// What a step hangs on that cannot be used, and what is asked about.
fn doubts_of(job: &Job, doubts: &Doubts, owner: Owner, spec: &StepSpec) -> Doubts {
    if doubts.is_empty() {
        return Doubts::default();
    }
    // A sleeve measured cold is compared with its warm reading.
    let behind: &[Field] = match owner {
        Owner::Cylinder(cylinder) if is_cold(job, cylinder, spec) => BEHIND_COLD,
        _ => &[],
    };
    let stand = job.stand();
    let asks = |field: &Field| asks(&stand, spec.id, *field);
    let fields = spec.fields.iter().chain(spec.uses).chain(behind);
    let asked: Vec<Field> = fields.copied().filter(asks).collect();
    let here = |place: Place| {
        asked
            .iter()
            .any(|field| hangs_on(job, owner, *field, place))
    };
    Doubts {
        questioned: doubts
            .questioned
            .iter()
            .copied()
            .filter(|p| here(*p))
            .collect(),
        unusable: doubts
            .unusable
            .iter()
            .filter(|one| matches!(one.spot, Spot::Reading(place) if here(place)))
            .cloned()
            .collect(),
    }
}

/// Whether a step hangs on a diameter measured cold that is there.
fn is_cold(job: &Job, cylinder: u8, spec: &StepSpec) -> bool {
    let mut fields = spec.fields.iter().chain(spec.uses);
    let place = Place::of_cylinder(cylinder, Field::ColdOd, 0);
    fields.any(|field| *field == Field::ColdOd) && job.entries.get(place).is_some()
}

fn step_report(
    job: &Job,
    doubts: &Doubts,
    owner: Owner,
    spec: &StepSpec,
    reports: &[CylinderReport],
) -> StepReport {
    let stand = job.stand();
    // What a new engine starts with is nobody's reading.
    let begun = spec.fields.iter().any(|field| {
        asks(&stand, spec.id, *field)
            && field.spec().scope != Scope::Engine
            && Place::all(owner, *field).any(|place| job.entries.get(place).is_some())
    });
    let missing = spec
        .needed
        .iter()
        .filter(|field| asks(&stand, spec.id, **field))
        .find_map(|field| missing_of(job, owner, spec.id, *field));
    let own = doubts_of(job, doubts, owner, spec);
    let mut report = StepReport {
        id: spec.id,
        begun,
        complete: missing.is_none() && !spec.fields.is_empty(),
        signal: Signal::None,
        number: None,
        work_to: work_to(&Readings::new(job, owner), spec),
        next: Next::Refused,
        findings: Vec::new(),
        fault: None,
        answer: Answer::None,
        questioned: own.questioned,
        unusable: own.unusable,
        lacks: Vec::new(),
        passed_over: false,
    };
    let waits = if begun { Signal::Wait } else { Signal::None };
    match calculate(job, owner, spec, reports) {
        Ok(verdict) => {
            report.passed_over = verdict.next == Next::NoGroove && verdict.signal == Signal::None;
            take(&mut report, verdict);
        }
        Err(Lack::Missing(lack)) => {
            report.next = Next::Measure(lack);
            report.signal = waits;
            report.lacks = vec![lack];
            report.complete = false;
        }
        Err(Lack::Unusable(unusable)) => note(&mut report, unusable),
        Err(Lack::Refused(fault)) => {
            report.signal = Signal::Look;
            report.fault = Some(fault);
            report.complete = false;
        }
    }
    if let Err(disputed) = job.dispute(Spot::Step(owner, spec.id)) {
        note(&mut report, disputed);
    }
    // An answer from half the readings is shown, but it is not a verdict: what
    // is missing comes first, except that a stop stays a stop.
    let worked = report.signal;
    if let Some(lack) = missing {
        if !report.lacks.contains(&lack) {
            report.lacks.push(lack);
        }
        if report.signal != Signal::Stop {
            report.next = Next::Measure(lack);
            report.signal = waits;
        }
    }
    // No mark goes over what wants a look.
    if worked != Signal::Look {
        apply_mark(job, owner, &mut report);
    }
    if let Some(first) = report.unusable.first() {
        // What stops is told first, what is to be mended beside it.
        if worked != Signal::Stop {
            report.next = Next::Mend(first.spot);
        }
        report.signal = report.signal.max(Signal::Look);
        report.complete = false;
    } else if let Some(place) = report.questioned.first() {
        if report.signal == Signal::Go {
            report.next = Next::Answer(*place);
        }
        report.signal = report.signal.max(Signal::Look);
    }
    report
}

fn take(report: &mut StepReport, verdict: Verdict) {
    report.signal = verdict.signal;
    report.number = verdict.number;
    report.next = verdict.next;
    report.findings = verdict.findings;
    report.answer = verdict.answer;
    report.lacks = verdict.lacks;
    let floor = match report.findings.iter().map(|f| f.level).max() {
        Some(Level::Stop) => Signal::Stop,
        Some(Level::Look) => Signal::Look,
        Some(Level::Note) | None => Signal::None,
    };
    report.signal = report.signal.max(floor);
}

fn note(report: &mut StepReport, unusable: Unusable) {
    if !report.unusable.contains(&unusable) {
        report.unusable.push(unusable);
    }
}

/// A mark set by hand settles a step about which no reading says otherwise; it
/// is a mark, and no measurement.
fn apply_mark(job: &Job, owner: Owner, report: &mut StepReport) {
    // A deck that is open is surveyed, and cut only when a hand says so.
    let to_mark = report.id == StepId::Deck
        && report.signal == Signal::None
        && report.next == Next::Advice(StepId::Deck, Signal::None);
    let quiet =
        matches!(report.signal, Signal::None | Signal::Wait) && (!report.complete || to_mark);
    match job.mark(owner, report.id) {
        Some(Mark::Done) if quiet => {
            let cut = match owner {
                Owner::Bank(bank) => job.entries.get(Place::of_bank(bank, Field::DeckCut, 0)),
                Owner::Block | Owner::Cylinder(_) => None,
            };
            // The cut that was planned is measured, the cut that was made said.
            // Nor is a recut that is ticked.
            let measured = cut.is_some() && report.lacks.is_empty();
            report.signal = match to_mark && measured {
                true => Signal::Go,
                false => Signal::Marked,
            };
            report.next = Next::Marked;
            report.complete = true;
        }
        Some(Mark::Skipped(_) | Mark::NotForThisJob) => {
            report.passed_over = true;
            if quiet {
                report.signal = Signal::None;
                report.next = Next::PassedOver;
            }
        }
        _ => {}
    }
}

/// How many places of a needed field are still to be filled. Of a list one is
/// enough, of the survey of a deck every spot.
fn missing_of(job: &Job, owner: Owner, step: StepId, field: Field) -> Option<Missing> {
    let there = Place::all(owner, field)
        .filter(|place| job.entries.get(*place).is_some())
        .count() as u8;
    let wanted = match (field.spec().places, owner) {
        (Places::List(_), Owner::Bank(bank)) if step == StepId::Deck => spots(job, bank),
        (Places::List(_), _) => 1,
        (places, _) => places.count(),
    };
    (there < wanted).then(|| Missing {
        owner,
        field,
        places: wanted - there,
    })
}

fn cylinder_report(job: &Job, doubts: &Doubts, cylinder: u8) -> CylinderReport {
    let owner = Owner::Cylinder(cylinder);
    let steps = owner_steps(job, doubts, owner, &[]);
    CylinderReport {
        cylinder,
        state: state(job, cylinder, &steps),
        current: current(&steps),
        steps,
        all_home: None,
    }
}

/// Whether any step but the report itself is open.
fn not_all_done(block: &[StepReport], banks: &Whole, reports: &[CylinderReport]) -> bool {
    let open = |steps: &[StepReport]| {
        steps
            .iter()
            .any(|s| s.id != StepId::Report && !s.is_settled())
    };
    let of_hole = |report: &CylinderReport| report.state != State::LeftOut && open(&report.steps);
    open(block) || banks.iter().any(|(_, steps)| open(steps)) || reports.iter().any(of_hole)
}

/// The report is a mark, and no mark goes over a cylinder on stop or over
/// something that cannot be used.
fn hand_over(report: &mut StepReport, open: bool, mend: Vec<Unusable>, stop: Option<u8>) {
    if let Some(cylinder) = stop {
        report.signal = Signal::Stop;
        report.next = Next::StopsAt(cylinder);
    } else if let Some(first) = mend.first() {
        report.signal = Signal::Look;
        report.next = Next::Mend(first.spot);
        report.unusable = mend;
        report.complete = false;
    } else if open && report.signal == Signal::Marked {
        report.signal = Signal::Look;
        report.next = Next::NotAllDone;
    }
}
