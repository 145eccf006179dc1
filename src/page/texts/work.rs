//! Phases of the shop, the number to work to.

use super::names::{field, step_title};
use crate::parts::keys::Counting;
use crate::words::made as w;
use coldseat_core::ask::{Field, Missing, Phase, StepId, Work};

/// Under an empty field for which no usual value stands.
#[must_use]
pub fn by_sheet(most: &str) -> String {
    w::BySheet { most: &most }.say()
}

/// A hole that gets a sleeve or does not.
#[must_use]
pub fn hole_name(cylinder: u8) -> String {
    w::HoleName {
        cylinder: &cylinder,
    }
    .say()
}

/// The temperature that was read last, and when, to be taken over.
#[must_use]
pub fn as_read_at(text: &str, unit: &str, when: &str) -> String {
    w::AsReadAt {
        text: &text,
        unit: &unit,
        when: &when,
    }
    .say()
}

/// How the pad takes digits.
#[must_use]
pub fn pad_count(counting: Counting) -> &'static str {
    match counting {
        Counting::FromRight => w::PAD_COUNT_FROM_RIGHT.get(),
        Counting::Last => w::PAD_COUNT_LAST.get(),
        Counting::AsTyped => w::PAD_COUNT_AS_TYPED.get(),
    }
}

/// What a job in the list needs next.
#[must_use]
pub fn next_in_job(cylinder: u8, step: StepId) -> String {
    w::NextInJob {
        step: &step_title(step),
        cylinder: &cylinder,
    }
    .say()
}

/// Steps of a phase that are done.
#[must_use]
pub fn steps_done(done: usize, of: usize) -> String {
    w::StepsDone {
        done: &done,
        of: &of,
    }
    .say()
}

/// A phase of the shop.
#[must_use]
pub fn phase(phase: Phase) -> &'static str {
    match phase {
        Phase::TakeIn => w::PHASE_TAKE_IN.get(),
        Phase::Measure => w::PHASE_MEASURE.get(),
        Phase::Bore => w::PHASE_BORE.get(),
        Phase::Counterbore => w::PHASE_COUNTERBORE.get(),
        Phase::Drop => w::PHASE_DROP.get(),
        Phase::Seat => w::PHASE_SEAT.get(),
        Phase::Deck => w::PHASE_DECK.get(),
        Phase::Finish => w::PHASE_FINISH.get(),
    }
}

/// The word before it.
#[must_use]
pub fn work(work: Work) -> &'static str {
    match work {
        Work::Bore => w::WORK_BORE.get(),
        Work::Widen => w::WORK_WIDEN.get(),
        Work::Depth => w::WORK_DEPTH.get(),
        Work::StepDepth => w::WORK_STEP_DEPTH.get(),
        Work::Chamfer => w::WORK_CHAMFER.get(),
        Work::Hone => w::WORK_HONE.get(),
        Work::Groove => w::WORK_GROOVE.get(),
        Work::Finish => w::WORK_FINISH.get(),
        Work::Gap => w::WORK_GAP.get(),
        Work::HomeWarm | Work::Home => w::WORK_HOME_WARM_HOME.get(),
    }
}

/// Its limits. Near them the gauges may not be able to tell: no word of good.
#[must_use]
pub fn limits_between(low: &str, high: &str) -> String {
    w::LimitsBetween {
        low: &low,
        high: &high,
    }
    .say()
}

/// What stands in for a reading that is not there yet.
#[must_use]
pub fn work_taken(taken: Field) -> &'static str {
    match taken {
        Field::SleeveOd => w::WORK_TAKEN_SLEEVE_OD.get(),
        Field::FlangeOdHere => w::WORK_TAKEN_FLANGE_OD_HERE.get(),
        Field::DeckCut => w::WORK_TAKEN_DECK_CUT.get(),
        _ => w::WORK_TAKEN_OTHER.get(),
    }
}

/// The number to work to has to wait.
#[must_use]
pub fn work_waits(missing: &Missing) -> String {
    w::WorkWaits {
        field: &field(missing.field),
    }
    .say()
}
