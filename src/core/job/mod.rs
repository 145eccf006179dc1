//! A job: one block, its engine profile, its cylinders and every number typed
//! for them.
//!
//! Every number is an *entry*: the text as typed, its unit, when it was typed.
//! An entry lives at a [`Place`] (whose it is, which [`Field`], which of the
//! field's places). What the numbers mean is worked out from the entries each
//! time ([`assess`]), never stored: a stored verdict can go stale.
//!
//! The steps of the job are data ([`step`]), and so are the fields
//! ([`field`]). There is no clock here: times are milliseconds since 1970,
//! passed in.

pub mod again;
pub mod all_low;
mod ask;
mod ask_after;
mod ask_before;
pub mod assess;
#[cfg(test)]
mod bench_tests;
pub mod check;
pub mod deck;
pub mod demo;
mod demo_bench;
pub mod drop;
pub mod engine;
pub mod field;
mod field_kind;
#[cfg(test)]
mod field_tests;
pub mod flange_stress;
pub mod grip;
pub mod handover;
pub mod learnt;
pub mod ledger;
pub mod loads;
pub mod order;
pub mod origin;
pub mod own_cuts;
pub mod pairs;
pub mod passes;
pub mod profile;
#[cfg(test)]
mod profile_tests;
pub mod report;
mod shop_order;
pub mod step;
pub mod timing;

use crate::quantity::parse::Unit;
use engine::Engine;
pub use field::{Field, UnitSystem};
use ledger::Ledger;
use litemap::LiteMap;
use step::{Mark, StepId, StepRecord, Subject};

/// Whose an entry is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Owner {
    /// The engine, the job as a whole.
    Block,
    /// A deck: bank 0, or 0 and 1 of a V.
    Bank(u8),
    /// A cylinder, counted from 1.
    Cylinder(u8),
}

/// Where an entry lives.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Place {
    /// Whose it is.
    pub owner: Owner,
    /// Which number.
    pub field: Field,
    /// Which of the field's places, from 0.
    pub index: u8,
}

impl Place {
    /// A place of a cylinder.
    #[must_use]
    pub const fn of_cylinder(cylinder: u8, field: Field, index: u8) -> Self {
        Self {
            owner: Owner::Cylinder(cylinder),
            field,
            index,
        }
    }

    /// The only place of a field of the engine.
    #[must_use]
    pub const fn of_engine(field: Field) -> Self {
        Self {
            owner: Owner::Block,
            field,
            index: 0,
        }
    }

    /// A place of a deck.
    #[must_use]
    pub const fn of_bank(bank: u8, field: Field, index: u8) -> Self {
        Self {
            owner: Owner::Bank(bank),
            field,
            index,
        }
    }
}

/// Milliseconds since 1970-01-01, UTC.
pub type Millis = u64;

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
}

/// Entries by place. An entry with empty text is not kept.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Entries {
    /// Beside each what it reads as, in SI, where that is a number in its range:
    /// a job is assessed whole at every key, its texts are read once.
    typed: LiteMap<Place, (Entry, Option<f64>)>,
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
            let read = place.field.read(&entry.text, entry.unit).ok();
            let usable = read
                .map(|number| number.si)
                .filter(|si| place.field.spec().bound.contains(*si));
            self.typed.insert(place, (entry, usable))
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

    /// The SI value at a place, where it reads and lies in its range.
    #[must_use]
    pub fn si(&self, place: Place) -> Option<f64> {
        self.typed.get(&place).and_then(|(_, usable)| *usable)
    }

    /// The usable values of a field, with their places' indices.
    #[must_use]
    pub fn values(&self, owner: Owner, field: Field) -> Vec<(u8, f64)> {
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
            .take_while(|(p, _)| (p.owner, p.field) == (owner, field) && p.index < count)
            .filter_map(|(place, (_, usable))| Some((place.index, (*usable)?)))
            .collect()
    }

    /// All values of a field where every place has one.
    #[must_use]
    pub fn complete(&self, owner: Owner, field: Field) -> Option<Vec<f64>> {
        let values = self.values(owner, field);
        (values.len() == usize::from(field.spec().places.count()))
            .then(|| values.into_iter().map(|(_, si)| si).collect())
    }

    /// Whether anything is typed for an owner.
    #[must_use]
    pub fn any_of(&self, owner: Owner) -> bool {
        self.typed.keys().any(|p| p.owner == owner)
    }
}

/// Decking released by hand: the reason stays in the record.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unlock {
    /// Why.
    pub reason: String,
    /// When.
    pub at: Millis,
}

/// A job.
#[derive(Clone, Debug, PartialEq)]
pub struct Job {
    /// A name or number of the shop's.
    pub name: String,
    /// Whose block.
    pub customer: String,
    /// Free words.
    pub note: String,
    /// The engine, a copy of its own.
    pub engine: Engine,
    /// Every number typed, those of the engine too.
    pub entries: Entries,
    /// An engine sheet: a profile kept apart from any block, to begin jobs
    /// with. Nothing is measured on it.
    pub sheet: bool,
    /// Cylinders that get no sleeve in this job.
    pub left_out: Vec<u8>,
    /// Decking released by hand, bank by bank.
    pub unlocks: LiteMap<u8, Unlock>,
    /// Marks, notes and timers of the steps.
    pub steps: LiteMap<(Owner, StepId), StepRecord>,
    /// What is remembered for joining copies of this job.
    pub ledger: Ledger,
    /// What a later version wrote and this one does not know.
    pub unknown: serde_json::Map<String, serde_json::Value>,
}

impl Job {
    /// A job on an engine, with nothing measured.
    #[must_use]
    pub fn new(engine: Engine, entries: Entries) -> Self {
        Self {
            name: String::new(),
            customer: String::new(),
            note: String::new(),
            engine,
            entries,
            sheet: false,
            left_out: Vec::new(),
            unlocks: LiteMap::new(),
            steps: LiteMap::new(),
            ledger: Ledger::default(),
            unknown: serde_json::Map::new(),
        }
    }

    /// An engine sheet of a profile.
    #[must_use]
    pub fn engine_sheet(engine: Engine, entries: &Entries) -> Self {
        let name = engine.name.clone();
        Self {
            name,
            sheet: true,
            ..Self::new(engine, engine::profile_of(entries))
        }
    }

    /// Its cylinders that get a sleeve.
    pub fn cylinders(&self) -> impl Iterator<Item = u8> + '_ {
        (1..=self.engine.cylinders).filter(|c| !self.left_out.contains(c))
    }

    /// A limit, geometry or gauge of the engine; where nothing usable is
    /// typed, the preset.
    #[must_use]
    pub fn engine_si(&self, field: Field) -> Option<f64> {
        self.entries
            .si(Place::of_engine(field))
            .or_else(|| engine::preset_si(field, self.engine.units))
    }

    /// The mark of a step: its own, or the one set for the whole job.
    #[must_use]
    pub fn mark(&self, owner: Owner, step: StepId) -> Option<&Mark> {
        let of = |owner| self.steps.get(&(owner, step)).and_then(|r| r.mark.as_ref());
        of(owner).or_else(|| of(Owner::Block).filter(|m| **m == Mark::NotForThisJob))
    }

    /// Changes what is kept of a step; an empty record is not kept.
    pub fn keep_of_step(
        &mut self,
        owner: Owner,
        step: StepId,
        change: impl FnOnce(&mut StepRecord),
    ) {
        let mut record = self.steps.remove(&(owner, step)).unwrap_or_default();
        change(&mut record);
        if !record.is_empty() {
            self.steps.insert((owner, step), record);
        }
    }

    /// Sets or takes away the mark of a step. "Not for this job" holds for all
    /// cylinders; anything else for its owner alone.
    pub fn set_mark(&mut self, owner: Owner, step: StepId, mark: Option<Mark>, at: Millis) {
        let whole = mark == Some(Mark::NotForThisJob);
        if !whole && step.spec().subject != Subject::Block {
            self.keep_of_step(Owner::Block, step, |r| r.mark = None);
        }
        let owner = if whole { Owner::Block } else { owner };
        self.keep_of_step(owner, step, |r| {
            r.mark = mark;
            r.at = at;
        });
    }

    /// The unit a field is read in.
    #[must_use]
    pub fn unit(&self, field: Field) -> Unit {
        field.unit(self.engine.units)
    }
}
