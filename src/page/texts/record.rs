//! The record's two papers.

use super::{labels, names};
use crate::words::made as w;
use coldseat_core::ask::{Field, SleeveEnds, SleeveKind};

/// What the words at each hole of the plan mean.
#[must_use]
pub fn deck_plan_what(kind: SleeveKind, ends: SleeveEnds, finished: bool) -> String {
    let off = match kind {
        SleeveKind::Flanged => w::DECK_PLAN_WHAT_OFF_FLANGED.get(),
        SleeveKind::OnStep => w::DECK_PLAN_WHAT_OFF_ON_STEP.get(),
        SleeveKind::ByFit => w::DECK_PLAN_WHAT_OFF_BY_FIT.get(),
    };
    let cut = match ends {
        SleeveEnds::Decked => w::DECK_PLAN_WHAT_CUT_DECKED.get(),
        SleeveEnds::Proud => "",
    };
    let bore = if finished {
        w::DECK_PLAN_WHAT_BORE.get()
    } else {
        ""
    };
    w::DeckPlanWhat {
        cut: &cut,
        off: &off,
        bore: &bore,
    }
    .say()
}

/// How far a sleeve stands off, in a word.
#[must_use]
pub fn left_gap(kind: SleeveKind) -> &'static str {
    match kind {
        SleeveKind::Flanged | SleeveKind::OnStep => w::LEFT_GAP_FLANGED_ON_STEP.get(),
        SleeveKind::ByFit => w::LEFT_GAP_BY_FIT.get(),
    }
}

/// Columns of the table of holes as they were left.
#[must_use]
pub fn as_left_columns(kind: SleeveKind, ends: SleeveEnds) -> [&'static str; 12] {
    [
        w::CYLINDER.get(),
        w::STATE.get(),
        w::SLEEVE_OD.get(),
        w::BORE.get(),
        w::FIT.get(),
        match kind {
            SleeveKind::Flanged => w::FLANGE.get(),
            SleeveKind::OnStep | SleeveKind::ByFit => w::SLEEVE_LENGTH.get(),
        },
        w::DEPTH.get(),
        match ends {
            SleeveEnds::Decked => w::HEIGHT.get(),
            SleeveEnds::Proud => w::HEIGHT_LEFT.get(),
        },
        match kind {
            SleeveKind::Flanged | SleeveKind::OnStep => w::GAP.get(),
            SleeveKind::ByFit => w::OFF_MARK.get(),
        },
        w::TILT.get(),
        w::HOME_CHANCE.get(),
        w::PULLS.get(),
    ]
}

/// Over the plan of a deck.
#[must_use]
pub fn deck_plan_caption(bank: u8, banks: u8, unit: &str, is_left: bool) -> String {
    // What is still to be cut is not left so.
    let how = if is_left {
        w::DECK_PLAN_CAPTION_HOW_AS_LEFT.get()
    } else {
        w::DECK_PLAN_CAPTION_HOW_AS_MEASURED_SO.get()
    };
    if banks > 1 {
        w::DeckPlanCaptionDeck {
            bank: &labels::bank(bank),
            how: &how,
            unit: &unit,
        }
        .say()
    } else {
        w::DeckPlanCaptionTheDeck {
            how: &how,
            unit: &unit,
        }
        .say()
    }
}

/// Shims under the sleeves, each with its hole.
#[must_use]
pub fn shims_laid(laid: &[(u8, String)]) -> String {
    let each: Vec<String> = laid
        .iter()
        .map(|(cylinder, size)| {
            w::ShimsLaidEach {
                cylinder: &cylinder,
                size: &size,
            }
            .say()
        })
        .collect();
    w::ShimsLaid {
        each: &each.join("; "),
    }
    .say()
}

/// The limits of sleeves that are left proud.
#[must_use]
pub fn proud_limits([low, high, hole, neighbors, all]: &[String; 5], unit: &str) -> String {
    w::ProudLimits {
        low: &low,
        high: &high,
        hole: &hole,
        neighbors: &neighbors,
        all: &all,
        unit: &unit,
    }
    .say()
}

/// The record in one sentence.
#[must_use]
pub fn record_sentence(home: &[String], open: &[String]) -> String {
    let cylinders = |names: &[String]| {
        w::RecordCylinders {
            count: names.len(),
            names: &names.join(", "),
        }
        .say()
    };
    match (home, open) {
        ([], []) => w::RECORD_SENTENCE_OTHER_NO_SLEEVE_WAS.get().to_owned(),
        (home, []) => w::RecordSentenceOtherNewSleevesIn {
            home: &cylinders(home),
        }
        .say(),
        ([], open) => w::RecordSentenceOtherNoSleeveIs {
            open: &cylinders(open),
        }
        .say(),
        (home, open) => w::RecordSentenceOtherMeasuredAndHome {
            home: &cylinders(home),
            open: &cylinders(open),
        }
        .say(),
    }
}

/// Sleeves of which nobody measured how tight they sit.
#[must_use]
pub fn fit_not_measured(names: &[String]) -> String {
    w::FitNotMeasured {
        count: names.len(),
        names: &names.join(", "),
    }
    .say()
}

/// Values that two devices set differently.
#[must_use]
pub fn disputes_open(count: usize) -> String {
    w::DisputesOpen { many: count }.say()
}

/// A gauge on the record: what it measures, how sure, when it was checked.
#[must_use]
pub fn record_gauge(gauge: Field, sure: &str, checked: Option<&str>) -> String {
    // Its bracket says that it is a gauge, in whatever language.
    let name = names::field(gauge);
    let name = names::in_sentence(name.split(" (").next().unwrap_or(name));
    match checked {
        Some(checked) => w::RecordGaugeSome {
            name: &name,
            sure: &sure,
            checked: &checked,
        }
        .say(),
        None => w::RecordGaugeNone {
            name: &name,
            sure: &sure,
        }
        .say(),
    }
}

/// The gauges behind the record and how far a gap is known.
#[must_use]
pub fn record_gauges(known: &str, gap: Option<&str>, unit: &str) -> String {
    let gap = gap.map_or_else(String::new, |gap| w::RecordGaugesGap { gap: &gap }.say());
    w::RecordGauges {
        unit: &unit,
        known: &known,
        gap: &gap,
    }
    .say()
}

/// How the deck came out, on the customer's page.
#[must_use]
pub fn deck_finish_line(measured: &str, kind: &str, most: &str, rough: bool) -> String {
    let good = if rough {
        w::DECK_FINISH_LINE_GOOD_ROUGHER_THAN.get()
    } else {
        w::DECK_FINISH_LINE_GOOD_WITHIN.get()
    };
    w::DeckFinishLine {
        measured: &measured,
        kind: &kind,
        good: &good,
        most: &most,
    }
    .say()
}

/// The cut of a deck and what it leaves, in one line of the record.
#[must_use]
pub fn deck_cut_plain(cut: &str) -> String {
    format!("{} {cut}", w::CUT.get())
}

/// The cut of a deck that nobody has made, for the record.
#[must_use]
pub fn deck_not_cut(cut: &str, decided: bool) -> String {
    let how = if decided {
        w::DECK_NOT_CUT_HOW_DECIDED_ON.get()
    } else {
        w::DECK_NOT_CUT_HOW_PLANNED.get()
    };
    w::DeckNotCut {
        cut: &cut,
        how: &how,
    }
    .say()
}

/// A deck that is marked as cut, without a word of how deep.
#[must_use]
pub fn deck_cut_unread(planned: &str) -> String {
    w::DeckCutUnread { planned: &planned }.say()
}

/// A deck that is marked as cut although a sleeve is not shown to be home.
#[must_use]
pub fn deck_cut_locked(typed: &str) -> String {
    w::DeckCutLocked { typed: &typed }.say()
}

/// The same, and what it leaves of each flange.
#[must_use]
pub fn deck_cut(cut: &str, left: &str) -> String {
    w::DeckCut {
        cut_too: &w::CUT.get(),
        cut: &cut,
        left: &left,
    }
    .say()
}

/// A time of a drop among others, shorter than the name of its field.
#[must_use]
pub fn time_kept(field: Field) -> String {
    match field {
        Field::ChillTime => w::TIME_KEPT_CHILL_TIME.get().to_owned(),
        Field::Carry => w::TIME_KEPT_CARRY.get().to_owned(),
        Field::HomeTimed => w::TIME_KEPT_HOME_TIMED.get().to_owned(),
        Field::HoldTime => w::TIME_KEPT_HOLD_TIME.get().to_owned(),
        other => names::in_sentence(names::field(other)),
    }
}
