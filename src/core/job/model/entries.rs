//! What was typed, by place, and what it reads as.

use crate::job::model::field::Field;
use crate::job::model::place::{Millis, Owner, Place};
use crate::job::model::reading::{Reading, Spot, Unusable, Why};
use crate::quantity::format::{names_unit, number};
use crate::quantity::parse::{ParseError, Unit, parse};
use crate::quantity::ties;
use litemap::LiteMap;

/// A number as it was typed; the text may be anything, so that nothing typed
/// disappears.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The text.
    pub text: String,
    /// The unit assumed where the text names none.
    pub unit: Unit,
    /// When.
    pub at: Millis,
    /// Whether a questioned value was kept by the person.
    pub kept: bool,
    /// What a later version wrote behind it.
    pub rest: Vec<serde_json::Value>,
}

impl Entry {
    /// A fresh entry.
    #[must_use]
    pub fn new(text: impl Into<String>, unit: Unit, at: Millis) -> Self {
        Self {
            text: text.into(),
            unit,
            at,
            kept: false,
            rest: Vec::new(),
        }
    }

    /// The text as a field in `unit` shows it: as typed; a bare number of another
    /// unit, where the sheet's units have changed since, in this one. What was
    /// typed stays, and comes back digit for digit with its own unit.
    ///
    /// # Example
    /// ```
    /// use coldseat_core::job::Entry;
    /// use coldseat_core::quantity::parse::Unit;
    /// let typed = Entry::new("5.1250", Unit::Inch, 1);
    /// assert_eq!(typed.shown_in(Unit::Millimetre), "130.175");
    /// assert_eq!(typed.shown_in(Unit::Inch), "5.1250");
    /// ```
    #[must_use]
    pub fn shown_in(&self, unit: Unit) -> String {
        if self.unit == unit || names_unit(&self.text) {
            return self.text.clone();
        }
        match parse(&self.text, self.unit) {
            Ok(typed) if typed.unit == self.unit => number(typed.si, unit),
            _ => self.text.clone(),
        }
    }
}

/// What a text reads as by itself: a number in its range, or none.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Read {
    Number(f64),
    NotHere,
    OutOfRange,
    Not,
}

/// Entries by place. An entry with empty text is not kept.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Entries {
    /// Beside each what it reads as: a job is assessed whole at every key, its
    /// texts are read once.
    typed: LiteMap<Place, (Entry, Read)>,
}

impl Entries {
    /// The entry at a place.
    #[must_use]
    pub fn get(&self, place: Place) -> Option<&Entry> {
        self.typed.get(&place).map(|(entry, _)| entry)
    }

    /// Puts an entry; one with blank text clears the place. Returns what was
    /// there.
    pub fn put(&mut self, place: Place, entry: Entry) -> Option<Entry> {
        let before = if entry.text.trim().is_empty() {
            self.typed.remove(&place)
        } else {
            let read = match place.field.read(&entry.text, entry.unit) {
                _ if place.field.says_none(&entry.text) => Read::NotHere,
                Ok(number) if place.field.spec().bound.contains(number.si) => {
                    Read::Number(number.si)
                }
                Ok(_) => Read::OutOfRange,
                Err(_) => Read::Not,
            };
            self.typed.insert(place, (entry, read))
        };
        before.map(|(entry, _)| entry)
    }

    /// Marks a questioned value as meant.
    pub fn keep(&mut self, place: Place) {
        if let Some((entry, _)) = self.typed.get_mut(&place) {
            entry.kept = true;
        }
    }

    /// All, in order.
    pub fn iter(&self) -> impl Iterator<Item = (&Place, &Entry)> {
        self.typed.iter().map(|(place, (entry, _))| (place, entry))
    }

    /// How many.
    #[must_use]
    pub fn len(&self) -> usize {
        self.typed.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.typed.is_empty()
    }

    /// Whether anything is typed for an owner.
    #[must_use]
    pub fn any_of(&self, owner: Owner) -> bool {
        self.typed.keys().any(|p| p.owner == owner)
    }

    /// What stands at a place: nothing, a number, or something that cannot be
    /// used: it does not read, lies outside its range, or contradicts another
    /// number. (Of a dispute between two devices the job knows:
    /// [`crate::job::Job::reading`].)
    #[must_use]
    pub fn reading(&self, place: Place) -> Reading {
        match self.typed.get(&place) {
            None => Reading::Absent,
            Some((entry, read)) => self.judged(place, entry, *read),
        }
    }

    fn judged(&self, place: Place, entry: &Entry, read: Read) -> Reading {
        let why = match read {
            Read::Number(si) => match self.contradiction(place, si) {
                None => return Reading::Usable(si),
                Some(why) => why,
            },
            Read::NotHere => return Reading::NotHere,
            Read::OutOfRange => Why::OutOfRange(&place.field.spec().bound),
            Read::Not => match place.field.read(&entry.text, entry.unit) {
                Err(error) => Why::NotRead(error),
                Ok(_) => Why::NotRead(ParseError::Empty),
            },
        };
        Reading::Unusable(Unusable {
            spot: Spot::Reading(place),
            why,
        })
    }

    /// What stands at the places of a field that are not empty, in order.
    pub fn readings(&self, owner: Owner, field: Field) -> impl Iterator<Item = (Place, Reading)> {
        let first = Place {
            owner,
            field,
            index: 0,
        };
        let count = field.spec().places.count();
        // Places are ordered by owner, field and index.
        let (Ok(from) | Err(from)) = self.typed.find_index(&first);
        (from..)
            .map_while(|at| self.typed.get_indexed(at))
            .take_while(move |(p, _)| (p.owner, p.field) == (owner, field) && p.index < count)
            .map(|(place, (entry, read))| (*place, self.judged(*place, entry, *read)))
    }

    /// Whether what stands at a place reads and lies in its range, or says that
    /// there is none.
    #[must_use]
    pub fn is_usable(&self, place: Place) -> bool {
        let read = self.typed.get(&place).map(|(_, read)| *read);
        matches!(read, Some(Read::Number(_) | Read::NotHere))
    }

    /// The numbers of a field that can be compared with, for plausibility and
    /// for pictures: what cannot be used has no place there. Never for a verdict.
    #[must_use]
    pub fn comparable(&self, owner: Owner, field: Field) -> Vec<(u8, f64)> {
        self.readings(owner, field)
            .filter_map(|(place, reading)| match reading {
                Reading::Usable(si) => Some((place.index, si)),
                Reading::Absent | Reading::NotHere | Reading::Unusable(_) => None,
            })
            .collect()
    }

    /// A clash with another number: the inner, the lower one is named.
    fn contradiction(&self, place: Place, si: f64) -> Option<Why> {
        let other = |field| match self.typed.get(&Place { field, ..place }) {
            Some((_, Read::Number(other))) => Some(*other),
            _ => None,
        };
        match place.field {
            Field::SleeveId => other(Field::NominalOd)
                .filter(|od| si >= *od)
                .map(Why::InnerNotBelowOuter),
            Field::DropWall => other(Field::DropOd)
                .filter(|od| 2.0 * si >= *od)
                .map(Why::WallTooThick),
            Field::FitLow => other(Field::FitHigh)
                .filter(|high| si >= *high)
                .map(Why::LowNotBelowHigh),
            Field::FromDeckLeast => other(Field::FromDeckMost)
                .filter(|most| si > *most)
                .map(Why::LowNotBelowHigh),
            Field::ProudLow => other(Field::ProudHigh)
                .filter(|high| si > *high)
                .map(Why::LowNotBelowHigh),
            // Held down for what, if no height is asked for.
            Field::HeldTorque => (other(Field::ProudLow).is_none()
                && other(Field::ProudHigh).is_none())
            .then_some(Why::TorqueAlone),
            // No cutting has no pass.
            Field::LedgeCutStep => other(Field::LedgeCutMost)
                .filter(|most| *most > 0.0 && !(si > 0.0 && ties::at_most(si, *most)))
                .map(Why::PassNotInCut),
            Field::RoundLook => other(Field::RoundStop)
                .filter(|stop| si > *stop)
                .map(Why::LowNotBelowHigh),
            _ => None,
        }
    }
}
