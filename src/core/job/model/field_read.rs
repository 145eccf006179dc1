//! A field asked: its entry in the table, its unit, its words, how it reads.

use crate::job::model::field::{FIELDS, Field, FieldSpec};
use crate::job::model::field_kind::{GAUGES, Measure, UnitSystem};
use crate::job::model::field_usual::{DROP_OUTCOMES, ROUGHNESS_NAMES};
use crate::job::model::part::{COLDS, HEATS, HELD_DOWN, INKED, PARTS, SLEEVE_ENDS, SLEEVE_KINDS};
use crate::quantity::parse::{ParseError, Typed, Unit, parse};

/// Gauges with a date of their own, by what is known of them. In documents for ever:
/// further ones at the end.
pub const GAUGES_CHECKED: [Field; GAUGES as usize] = [
    Field::GaugeSleeve,
    Field::GaugeBore,
    Field::GaugeHeight,
    Field::GaugeThickness,
    Field::GaugeDepth,
    Field::GaugeLength,
    Field::GaugeStep,
];

/// The word for "this block has none". In documents for ever.
pub const NONE_HERE: &str = "none";

/// The word that says that something was done. In documents for ever.
pub const DONE: &str = "done";

/// Letters of words at most: what a document takes of an entry.
const WORDS_MOST: usize = 200;
/// Bytes of words at most that go into a link.
const LINKED_MOST: usize = 60;

/// Words that are only told: a name, a number of a block, a date.
fn told(text: &str, most: usize) -> Result<Typed, ParseError> {
    let text = text.trim();
    let is_line = !text.is_empty() && !text.chars().any(char::is_control);
    (is_line && text.len() <= most)
        .then(|| Typed {
            text: text.to_owned(),
            si: 1.0,
            unit: Unit::Plain,
        })
        .ok_or_else(|| ParseError::NotANumber {
            text: text.to_owned(),
        })
}

/// Words a person gives: "done", or a reason, which takes a word of three letters
/// at least: a slip of the thumb is none.
fn words(text: &str) -> Result<Typed, ParseError> {
    let text = text.trim();
    let of = |si| Typed {
        text: text.to_owned(),
        si,
        unit: Unit::Plain,
    };
    let fits = text.chars().count() <= WORDS_MOST;
    let is_word = |word: &str| word.chars().filter(|c| c.is_alphabetic()).count() >= 3;
    if text.eq_ignore_ascii_case(DONE) {
        Ok(of(0.0))
    } else if fits && text.split_whitespace().any(is_word) {
        Ok(of(1.0))
    } else {
        Err(ParseError::NotANumber {
            text: text.to_owned(),
        })
    }
}

/// A tick: the word that says so, and what it is of. Anything else is no tick, and is
/// not taken for none.
fn tick(text: &str) -> Result<Typed, ParseError> {
    let is_tick = text.split_whitespace().next() == Some(DONE);
    told(text, WORDS_MOST).and_then(|typed| {
        is_tick
            .then_some(typed)
            .ok_or_else(|| ParseError::NotANumber {
                text: text.to_owned(),
            })
    })
}

impl Field {
    /// Its entry in the table.
    #[must_use]
    pub fn spec(self) -> &'static FieldSpec {
        // The table is written by the same macro as the enum: the index is in
        // range; `first` only spares a panic branch.
        FIELDS.get(self as usize).unwrap_or(&FIELDS[0])
    }

    /// From its name in documents.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        FIELDS.iter().find(|f| f.id == id).map(|f| f.field)
    }

    /// The unit it is read in.
    #[must_use]
    pub fn unit(self, system: UnitSystem) -> Unit {
        self.spec().measure.unit(system)
    }

    /// The words one of which is meant; empty unless it is a
    /// [`Measure::Choice`]. In documents for ever.
    #[must_use]
    pub const fn choices(self) -> &'static [&'static str] {
        match self {
            Self::DropOutcome => DROP_OUTCOMES,
            Self::DropPart => PARTS,
            Self::DropCold => COLDS,
            Self::DropHeat => HEATS,
            Self::SleeveKind => SLEEVE_KINDS,
            Self::SleeveEnds => SLEEVE_ENDS,
            Self::HeldDown => HELD_DOWN,
            Self::InkCheck => INKED,
            Self::DeckFinishKind => ROUGHNESS_NAMES,
            _ => &[],
        }
    }

    /// Reads what is typed for it: a number, one of its words as its index, or words
    /// of the person's own.
    ///
    /// # Errors
    /// Text that is neither.
    pub fn read(self, text: &str, unit: Unit) -> Result<Typed, ParseError> {
        if self.spec().measure == Measure::Words {
            return match self {
                Self::RecutSaid => words(text),
                Self::PlanDone => tick(text),
                Self::GaugeChecked => told(text, LINKED_MOST),
                _ => told(text, WORDS_MOST),
            };
        }
        let choices = self.choices();
        if choices.is_empty() {
            let typed = parse(text, unit)?;
            // Half a shim is none, and half a sleeve.
            if self.is_whole() && typed.si.fract() != 0.0 {
                return Err(ParseError::NotANumber { text: typed.text });
            }
            return Ok(typed);
        }
        let text = text.trim();
        let of = choices.iter().position(|c| c.eq_ignore_ascii_case(text));
        of.map(|index| Typed {
            text: text.to_owned(),
            si: index as f64,
            unit: Unit::Plain,
        })
        .ok_or_else(|| ParseError::NotANumber {
            text: text.to_owned(),
        })
    }

    /// Whether only a whole number means anything there.
    #[must_use]
    pub const fn is_whole(self) -> bool {
        matches!(self, Self::ShimsLeft | Self::PlanSleeve | Self::PlanTurn)
    }

    /// Whether it stands beside the readings of its step: asked for by few jobs, and
    /// passed over by a hand that goes from one reading to the next.
    #[must_use]
    pub const fn is_beside(self) -> bool {
        matches!(
            self,
            Self::ShimHere | Self::LedgeInner | Self::InkCheck | Self::HomeTimed
        )
    }

    /// Whether a block may do without it, so that "none" is an answer: a lower
    /// step, a fire ring.
    #[must_use]
    pub const fn may_be_none(self) -> bool {
        matches!(self, Self::StepBelow | Self::RingHeight)
    }

    /// Whether a text says that this block has none.
    #[must_use]
    pub fn says_none(self, text: &str) -> bool {
        self.may_be_none() && text.trim().eq_ignore_ascii_case(NONE_HERE)
    }

    /// Whether a minus is written "low" and a plus "proud".
    #[must_use]
    pub const fn stands_proud(self) -> bool {
        matches!(
            self,
            Self::WarmHeight
                | Self::PullLoaded
                | Self::PullReleased
                | Self::SeatHeight
                | Self::TargetProud
                | Self::PistonProud
                | Self::RingProud
                | Self::ProudLow
                | Self::ProudHigh
                | Self::PlanHeight
        )
    }

    /// Whether it is a length that may be below zero.
    #[must_use]
    pub fn is_signed(self) -> bool {
        let spec = self.spec();
        spec.measure == Measure::Length && spec.bound.lo < 0.0
    }
}
