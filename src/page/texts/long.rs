//! Sentences. What to do next, why a number is asked about, cautions,
//! help, what drawings say to those who cannot see them.

use super::mend::{missing_of, where_words};
use super::part::housing;
use super::steps::{says, says_by};
use super::{labels, names};
use crate::show::length;
use crate::words::made as w;
use coldseat_core::ask::document::{Repair, Unreadable};
use coldseat_core::ask::{
    Caution, DropVerdict, Field, Next, Part, Place, Scope, Spot, State, StepId, UnitSystem,
};

/// What to do next.
#[must_use]
pub fn next(next: &Next, units: UnitSystem) -> String {
    let by = |l: &coldseat_core::ask::Length| length(l.as_m(), units);
    match next {
        Next::Measure(missing) if missing.field.spec().scope == Scope::Engine => {
            w::NextMeasureNeedsANumber {
                field: &names::field(missing.field),
                engine_and_limits: &w::ENGINE_AND_LIMITS.get(),
            }
            .say()
        }
        Next::Measure(missing) => w::NextMeasure {
            missing: &missing_of(missing),
        }
        .say(),
        Next::Mend(spot) => w::NextMend {
            spot: &where_words(*spot),
        }
        .say(),
        Next::Answer(place) => w::NextAnswer {
            place: &where_words(Spot::Reading(*place)),
        }
        .say(),
        Next::First(step) => w::NextFirst {
            step: &names::step_title(*step),
        }
        .say(),
        Next::ProvedWrong(step) => w::NextProvedWrong {
            step: &names::step_title(*step),
        }
        .say(),
        Next::Assumed(Field::DeckCut) => w::NEXT_ASSUMED_DECK_CUT.get().into(),
        Next::Assumed(Field::DeckHere) => w::NEXT_ASSUMED_DECK_HERE.get().into(),
        Next::Assumed(Field::SleeveOd) => w::NEXT_ASSUMED_SLEEVE_OD.get().into(),
        Next::Assumed(Field::Indicator) => w::NEXT_ASSUMED_INDICATOR.get().into(),
        Next::Assumed(Field::FlangeOdHere) => w::NEXT_ASSUMED_FLANGE_OD_HERE.get().into(),
        Next::Assumed(field) => w::NextAssumed {
            field: &names::in_sentence(names::field(*field)),
        }
        .say(),
        Next::ReleasedByHand => w::NEXT_RELEASED_BY_HAND.get().into(),
        Next::SleeveIn => w::LEFT_OUT_WHY.get().into(),
        Next::DeepCut => w::NEXT_DEEP_CUT.get().into(),
        Next::LittleFlange => w::CUT_TOO_DEEP.get().into(),
        Next::MayStayLow => w::NEXT_MAY_STAY_LOW.get().into(),
        Next::BlockCutMost(_)
        | Next::DeckSizePast(..)
        | Next::DeckSizeRecut(..)
        | Next::DeckSizeWill(..)
        | Next::DeckSizeWants(..)
        | Next::DeckRough => super::after::next_after_cut(next, units),
        Next::ProudOut(_)
        | Next::ProudGood
        | Next::PlanOpen(_)
        | Next::ReadAgain(_)
        | Next::OffPlan(..)
        | Next::InLimits(_)
        | Next::ApartFrom(..)
        | Next::ReadFree => super::proud::next_proud(next, units),
        Next::StopsAt(cylinder) => w::NextStopsAt {
            cylinder: &cylinder,
        }
        .say(),
        Next::NotAllDone => w::NEXT_NOT_ALL_DONE.get().into(),
        Next::NoGroove => w::NEXT_NO_GROOVE.get().into(),
        Next::MarkIt => w::MARK_IT.get().into(),
        Next::Marked => w::MARKED.get().into(),
        Next::PassedOver => w::PASSED_OVER.get().into(),
        Next::Advice(step, signal) => says(*step, *signal).into(),
        Next::AdviceBy(step, signal, by) => says_by(*step, *signal, *by, units),
        Next::Refused => w::NEXT_REFUSED.get().into(),
        Next::SleeveRound => w::NEXT_SLEEVE_ROUND.get().into(),
        Next::SleeveLook => w::NEXT_SLEEVE_LOOK.get().into(),
        Next::SleeveStop => w::NEXT_SLEEVE_STOP.get().into(),
        Next::CutDeeper(to_go) => w::NextCutDeeper {
            to_go: &by(to_go),
            what: &match units {
                UnitSystem::Inch => w::NEXT_CUT_DEEPER_INCH.get(),
                UnitSystem::Metric => w::NEXT_CUT_DEEPER_METRIC.get(),
            },
        }
        .say(),
        Next::LedgeShape(..) | Next::InkBroken => super::ledge::next_ledge(next, units),
        Next::LedgeUneven => w::NEXT_LEDGE_UNEVEN.get().into(),
        Next::AtDepth => w::NEXT_AT_DEPTH.get().into(),
        Next::TooDeep(over) => w::NextTooDeep { over: &by(over) }.say(),
        Next::StepLies(over) => w::NextStepLies { over: &by(over) }.say(),
        Next::FitGood => w::NEXT_FIT_GOOD.get().into(),
        Next::FitUndecided => w::NEXT_FIT_UNDECIDED.get().into(),
        Next::HoneMore(stock) => w::NextHoneMore { stock: &by(stock) }.say(),
        Next::FitLoose(short) => w::NextFitLoose { short: &by(short) }.say(),
        Next::BoreForm => w::NEXT_BORE_FORM.get().into(),
        Next::DropReady => w::NEXT_DROP_READY.get().into(),
        Next::PulledHome => w::NEXT_PULLED_HOME.get().into(),
        Next::PullHome => w::NEXT_PULL_HOME.get().into(),
        Next::AboveCeiling => w::NEXT_ABOVE_CEILING.get().into(),
        Next::HomeWarm => w::NEXT_HOME_WARM.get().into(),
        Next::PullAgain => w::NEXT_PULL_AGAIN.get().into(),
        Next::CheckSeat => w::NEXT_CHECK_SEAT.get().into(),
        Next::StoppedHigh(gap) => w::NextStoppedHigh { gap: &by(gap) }.say(),
        Next::StoppedUnsure => w::NEXT_STOPPED_UNSURE.get().into(),
        Next::Seated => w::NEXT_SEATED.get().into(),
        Next::SetTooLow(low) => w::NextSetTooLow { low: &by(low) }.say(),
        Next::SetLowAt(low) => w::NextSetLowAt { low: &by(low) }.say(),
        Next::SetHigh(high) => w::NextSetHigh { high: &by(high) }.say(),
        Next::SetUndecided => w::NEXT_SET_UNDECIDED.get().into(),
        Next::NotSeated(gap) => w::NextNotSeated { gap: &by(gap) }.say(),
        Next::Tilted(tilt) => w::NextTilted { tilt: &by(tilt) }.say(),
        Next::SeatUndecided => w::NEXT_SEAT_UNDECIDED.get().into(),
        Next::BelowLedge => w::NEXT_BELOW_LEDGE.get().into(),
    }
}

#[must_use]
pub fn cylinders(count: usize) -> String {
    w::CountOfCylinders { count }.say()
}

#[must_use]
pub fn engine_of_sheet(engine: &str) -> String {
    w::EngineOfSheet { engine: &engine }.say()
}

#[must_use]
pub fn engine_of_job(engine: &str, job: &str) -> String {
    format!("{engine} ({} {job})", w::THIS_ENGINE_FROM.get())
}

/// How much of a folded group is there.
#[must_use]
pub fn entered(there: usize, all: usize) -> String {
    w::Entered {
        there: &there,
        all: &all,
    }
    .say()
}

/// How a try that failed stands in the record.
#[must_use]
pub fn came_out(date: &str, found: &str, read: &str, verdict: Option<&str>) -> String {
    let read = if read.is_empty() {
        w::CAME_OUT_READ.get()
    } else {
        read
    };
    let verdict = verdict.map_or_else(String::new, |words| {
        w::CameOutVerdict { words: &words }.say()
    });
    w::CameOutCameOutFound {
        date: &date,
        found: &found,
        read: &read,
        verdict: &verdict,
    }
    .say()
}

/// What was repaired in a document.
#[must_use]
pub fn repair(repair: &Repair) -> String {
    match repair {
        Repair::Checksum => w::REPAIR_CHECKSUM.get().into(),
        Repair::Missing(part) => w::RepairMissing { part: &part }.say(),
        Repair::SetAside(part) => w::RepairSetAside { part: &part }.say(),
    }
}

/// Why stored data cannot be read.
#[must_use]
pub fn unreadable(why: Unreadable) -> &'static str {
    match why {
        Unreadable::Empty => w::UNREADABLE_EMPTY.get(),
        Unreadable::TooLong => w::UNREADABLE_TOO_LONG.get(),
        Unreadable::Torn => w::UNREADABLE_TORN.get(),
        Unreadable::NotADocument => w::UNREADABLE_NOT_ADOCUMENT.get(),
    }
}

/// Heading of a caution.
#[must_use]
pub fn caution_title(caution: Caution) -> &'static str {
    match caution {
        Caution::Lifting => w::CAUTION_TITLE_LIFTING.get(),
        Caution::PressureTest => w::CAUTION_TITLE_PRESSURE_TEST.get(),
        Caution::Cutting => w::CAUTION_TITLE_CUTTING.get(),
        Caution::Nitrogen => w::CAUTION_TITLE_NITROGEN.get(),
        Caution::ColdIron => w::CAUTION_TITLE_COLD_IRON.get(),
        Caution::ColdReading => w::CAUTION_TITLE_COLD_READING.get(),
        Caution::Ram => w::CAUTION_TITLE_RAM.get(),
        Caution::DryIce => w::CAUTION_TITLE_DRY_ICE.get(),
        Caution::Hot => w::CAUTION_TITLE_HOT.get(),
    }
}

/// A caution.
#[must_use]
pub fn caution(caution: Caution) -> &'static str {
    match caution {
        Caution::Lifting => w::CAUTION_LIFTING.get(),
        Caution::PressureTest => w::CAUTION_PRESSURE_TEST.get(),
        Caution::Cutting => w::CAUTION_CUTTING.get(),
        Caution::Nitrogen => w::CAUTION_NITROGEN.get(),
        Caution::ColdIron => w::CAUTION_COLD_IRON.get(),
        Caution::DryIce => w::CAUTION_DRY_ICE.get(),
        Caution::Hot => w::CAUTION_HOT.get(),
        Caution::ColdReading => w::CAUTION_COLD_READING.get(),
        Caution::Ram => w::CAUTION_RAM.get(),
    }
}

/// A drop that a job cannot work out yet: what is missing.
#[must_use]
pub fn drop_missing(fields: &[Field]) -> String {
    let mut names: Vec<&str> = fields.iter().map(|f| names::field(*f)).collect();
    names.dedup();
    w::DropMissing {
        names: &names.join("; "),
    }
    .say()
}

/// Title of a reading for the pad and for screen readers.
#[must_use]
pub fn place_title(place: Place) -> String {
    let which = names::place(place.field, place.index);
    if which.is_empty() {
        names::field(place.field).to_owned()
    } else {
        format!("{}: {which}", names::field(place.field))
    }
}

/// The same over the pad, where a long name is cut off at its end: which one
/// first.
#[must_use]
pub fn pad_title(place: Place) -> String {
    let which = names::place(place.field, place.index);
    if which.is_empty() {
        names::field(place.field).to_owned()
    } else {
        format!("{which}: {}", names::field(place.field))
    }
}

#[must_use]
pub fn section_label(predicted: &str, measured: &str, gap: &str) -> String {
    w::SectionLabel {
        predicted: &predicted,
        measured: &measured,
        gap: &gap,
    }
    .say()
}

#[must_use]
pub fn section_label_waiting(predicted: &str) -> String {
    w::SectionLabelWaiting {
        predicted: &predicted,
    }
    .say()
}

#[must_use]
pub fn section_caption(times: Option<u32>) -> String {
    match times {
        Some(times) => w::SectionCaptionSome { times: &times }.say(),
        None => w::SECTION_CAPTION_NONE.get().to_owned(),
    }
}

#[must_use]
pub fn staircase_label(pulls: usize, last: &str, predicted: &str, above: &str) -> String {
    w::StaircaseLabel {
        pulls: &pulls,
        last: &last,
        predicted: &predicted,
        above: &above,
    }
    .say()
}

#[must_use]
pub fn clearance_label(
    entry: &str,
    nominal: Option<String>,
    early: Option<String>,
    late: Option<String>,
) -> String {
    match (nominal, early, late) {
        (Some(nominal), Some(early), Some(late)) => w::ClearanceLabelOtherClearanceAgainstTime {
            entry: &entry,
            nominal: &nominal,
            early: &early,
            late: &late,
        }
        .say(),
        (Some(nominal), ..) => w::ClearanceLabelSome {
            entry: &entry,
            nominal: &nominal,
        }
        .say(),
        _ => w::ClearanceLabelOtherClearanceAgainstTime2 { entry: &entry }.say(),
    }
}

#[must_use]
pub fn fit_label(mean: &str, lo: &str, hi: &str) -> String {
    w::FitLabel {
        mean: &mean,
        lo: &lo,
        hi: &hi,
    }
    .say()
}

#[must_use]
pub fn deck_label(cut: &str, flanges: &str) -> String {
    w::DeckLabel {
        cut: &cut,
        flanges: &flanges,
    }
    .say()
}

#[must_use]
pub fn deck_caption(clean_up: &str) -> String {
    w::DeckCaption {
        clean_up: &clean_up,
    }
    .say()
}

/// What the clearance at the bore allows.
#[must_use]
pub fn drop_words(verdict: DropVerdict, part: Part) -> String {
    let housing = housing(part);
    match verdict {
        DropVerdict::Free => w::DROP_WORDS_FREE.get().to_owned(),
        DropVerdict::Tight => w::DropWordsTight { housing: &housing }.say(),
        DropVerdict::MayNotEnter => w::DropWordsMayNotEnter { housing: &housing }.say(),
        DropVerdict::DoesNotEnter => w::DropWordsDoesNotEnter { housing: &housing }.say(),
    }
}

/// The chance over all flanges, and of how many.
#[must_use]
pub fn chance_any_low(flanges: usize) -> String {
    w::ChanceAnyLow { flanges }.say()
}

/// A chance in per cent.
#[must_use]
pub fn percent(chance: f64) -> String {
    let shown = chance * 100.0;
    if shown > 99.9 {
        w::PERCENT_OVER_99_9.get().into()
    } else if shown > 0.0 && shown < 0.1 {
        w::PERCENT_UNDER_0_1.get().into()
    } else {
        format!("{} %", crate::show::fixed(shown, 1))
    }
}

/// From, to.
#[must_use]
pub fn span(low: &str, high: &str) -> String {
    format!("{low} \u{2026} {high}")
}

/// A band.
#[must_use]
pub fn between(low: &str, high: &str) -> String {
    format!("{}: {low} \u{2026} {high}", w::BAND_95.get())
}

/// Readings that are still asked about.
#[must_use]
pub fn questioned(places: &str) -> String {
    w::Questioned { places: &places }.say()
}

/// Holes that are left out and were read with a sleeve in them.
#[must_use]
pub fn open_beside(holes: &str) -> String {
    w::OpenBeside {
        holes: &holes,
        left_out_why: &w::LEFT_OUT_WHY.get(),
    }
    .say()
}

/// The states of a job's cylinders, counted.
#[must_use]
pub fn tally(cylinders: &[State], disputed: u64) -> String {
    let count = |wanted: fn(&State) -> bool| cylinders.iter().filter(|s| wanted(s)).count();
    let total = cylinders.len() - count(|s| *s == State::LeftOut);
    let mut text = w::TallyText {
        count: &count(|s| *s == State::Seated),
        total: &total,
    }
    .say();
    let stops = count(|s| *s == State::Stop);
    if stops > 0 {
        text = w::TallyStop {
            text: &text,
            stops: &stops,
        }
        .say();
    }
    let looks = count(|s| *s == State::Look);
    if looks > 0 {
        text = w::TallyLook {
            text: &text,
            looks: &looks,
        }
        .say();
    }
    if disputed > 0 {
        text = w::TallyToChooseTwo {
            text: &text,
            disputed: &disputed,
        }
        .say();
    }
    text
}

/// The state of a cylinder in the record: plainer than the strip's word.
#[must_use]
pub fn record_state(report: &coldseat_core::ask::CylinderReport) -> &'static str {
    match report.step(StepId::Seat).map(|s| &s.next) {
        Some(Next::NotSeated(_) | Next::Tilted(_)) => w::RECORD_STATE_NOT_SEATED_TILTED.get(),
        _ => labels::state(report.state),
    }
}

/// The limits behind the record.
#[must_use]
pub fn record_limits(fit_low: &str, fit_high: &str, gap: &str, tilt: &str, unit: &str) -> String {
    w::RecordLimits {
        unit: &unit,
        fit_low: &fit_low,
        fit_high: &fit_high,
        gap: &gap,
        tilt: &tilt,
    }
    .say()
}
