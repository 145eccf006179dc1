//! A job, and what stands in its fields.

use crate::job::model::engine::{self, Engine};
use crate::job::model::entries::Entries;
use crate::job::model::field::Field;
use crate::job::model::ledger::Ledger;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::place::{Millis, Owner, Place};
use crate::job::model::reading::{Reading, Spot, Unusable, Why};
use crate::job::model::shop_order::STEPS;
use crate::job::model::stand::Stand;
use crate::job::model::step::{Mark, StepId, StepRecord, Subject};
use crate::quantity::parse::Unit;
use litemap::LiteMap;
use serde_json::Value;

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
    pub unknown: serde_json::Map<String, Value>,
}

impl Job {
    /// Leaves a hole out that gets a sleeve, or takes it in again.
    pub fn take_in_or_leave_out(&mut self, cylinder: u8) {
        let at = self.left_out.partition_point(|c| *c < cylinder);
        if self.left_out.get(at) == Some(&cylinder) {
            self.left_out.remove(at);
        } else {
            self.left_out.insert(at, cylinder);
        }
    }

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

    /// The cylinders of a bank that get a sleeve.
    pub fn cylinders_of(&self, bank: u8) -> impl Iterator<Item = u8> + '_ {
        self.cylinders()
            .filter(move |c| self.engine.bank_of(*c) == bank)
    }

    /// What stands at a place: nothing, a number, or something that cannot be
    /// used, a value in dispute between two devices among it.
    #[must_use]
    pub fn reading(&self, place: Place) -> Reading {
        match self.dispute(Spot::Reading(place)) {
            Err(disputed) => Reading::Unusable(disputed),
            Ok(()) => self.entries.reading(place),
        }
    }

    /// The readings of a field that are there, by the index of their place.
    ///
    /// # Errors
    /// The first that cannot be used.
    pub fn readings(&self, owner: Owner, field: Field) -> Result<Vec<(u8, f64)>, Unusable> {
        if !self.ledger.rivals.is_empty() {
            for place in Place::all(owner, field) {
                self.dispute(Spot::Reading(place))?;
            }
        }
        self.entries
            .readings(owner, field)
            .filter_map(|(place, reading)| {
                let number = reading.number().transpose()?;
                Some(number.map(|si| (place.index, si)))
            })
            .collect()
    }

    /// A limit, geometry or gauge of the engine; the preset stands only where
    /// nothing is typed.
    ///
    /// # Errors
    /// What is typed and cannot be used.
    pub fn engine_si(&self, field: Field) -> Result<Option<f64>, Unusable> {
        let typed = self.reading(Place::of_engine(field)).number()?;
        Ok(typed.or_else(|| engine::preset_si(field, self.engine.units)))
    }

    /// Nothing where it is agreed on.
    ///
    /// # Errors
    /// Where two devices set it differently and nobody has chosen.
    pub fn dispute(&self, spot: Spot) -> Result<(), Unusable> {
        if self.ledger.rivals.is_empty() || !self.is_disputed(spot) {
            return Ok(());
        }
        Err(Unusable {
            spot,
            why: Why::Disputed,
        })
    }

    /// Everything in dispute that a verdict could hang on.
    #[must_use]
    pub fn disputes(&self) -> Vec<Spot> {
        if self.ledger.rivals.is_empty() {
            return Vec::new();
        }
        let banks = (0..self.engine.banks()).map(Spot::Unlock);
        let places = self.ledger.disputed(&self.entries);
        let places = places.iter().map(|one| Spot::Reading(one.place));
        let owners = || {
            let banks = (0..self.engine.banks()).map(Owner::Bank);
            let cylinders = (1..=self.engine.cylinders).map(Owner::Cylinder);
            core::iter::once(Owner::Block).chain(banks).chain(cylinders)
        };
        let steps = STEPS
            .iter()
            .flat_map(|step| owners().map(move |owner| Spot::Step(owner, step.id)));
        [Spot::Engine, Spot::LeftOut]
            .into_iter()
            .chain(banks)
            .chain(places)
            .chain(steps)
            .filter(|spot| self.is_disputed(*spot))
            .collect()
    }

    fn is_disputed(&self, spot: Spot) -> bool {
        let differs = |path: &str, same: &dyn Fn(&Value) -> bool| {
            let beside = self.ledger.rivals.get(path);
            beside
                .into_iter()
                .flatten()
                .any(|rival| !same(&rival.value))
        };
        match spot {
            Spot::Reading(place) => self.ledger.is_disputed(place, &self.entries),
            Spot::Engine => {
                let engine = &self.engine;
                let text = |key: &str, own: &str| {
                    differs(&format!("engine/{key}"), &|v| v.as_str() == Some(own))
                };
                differs("engine/cylinders", &|v| {
                    v.as_u64() == Some(engine.cylinders.into())
                }) || text("layout", engine.layout.id())
                    || text("units", engine.units.id())
                    || text("sleeve_material", engine.sleeve_material.id())
                    || text("block_material", engine.block_material.id())
            }
            Spot::LeftOut => differs("left_out", &|value| {
                let own = |list: &Vec<Value>| {
                    list.iter()
                        .map(Value::as_u64)
                        .eq(self.left_out.iter().map(|c| Some(u64::from(*c))))
                };
                value.as_array().is_some_and(own)
            }),
            Spot::Unlock(bank) => differs(&format!("unlocks/{}", bank + 1), &|value| {
                let reason = value.get("reason").and_then(Value::as_str);
                reason == self.unlocks.get(&bank).map(|u| u.reason.as_str())
            }),
            Spot::Step(owner, step) => {
                let path = format!("steps/{}/{}", owner.name(), step.spec().name);
                differs(&path, &|value| {
                    let word = value.get("mark").and_then(Value::as_str);
                    let record = self.steps.get(&(owner, step));
                    word == record.and_then(|r| r.mark.as_ref()).map(Mark::id)
                })
            }
        }
    }

    /// How its sleeves stand. Flanged where nothing is typed: before there was a
    /// choice every sleeve was.
    ///
    /// # Errors
    /// Where what is typed cannot be used.
    pub fn sleeve_kind(&self) -> Result<SleeveKind, Unusable> {
        let typed = self.reading(Place::of_engine(Field::SleeveKind)).number()?;
        Ok(match typed.map(|index| index as usize) {
            Some(index) if index == SleeveKind::OnStep as usize => SleeveKind::OnStep,
            Some(index) if index == SleeveKind::ByFit as usize => SleeveKind::ByFit,
            // The first word, or none.
            Some(_) | None => SleeveKind::Flanged,
        })
    }

    /// The kind of sleeve whose steps are listed: what cannot be used lists those of
    /// a flanged one, each of which is held by it.
    #[must_use]
    pub fn listed_kind(&self) -> SleeveKind {
        match self.sleeve_kind() {
            Ok(kind) => kind,
            Err(_) => SleeveKind::Flanged, // held, step by step
        }
    }

    /// How its sleeves end. Decked where nothing is typed: before there was a choice
    /// every sleeve was.
    ///
    /// # Errors
    /// Where what is typed cannot be used.
    pub fn sleeve_ends(&self) -> Result<SleeveEnds, Unusable> {
        let typed = self.reading(Place::of_engine(Field::SleeveEnds)).number()?;
        Ok(match typed.map(|index| index as usize) {
            Some(index) if index == SleeveEnds::Proud as usize => SleeveEnds::Proud,
            // The first word, or none.
            Some(_) | None => SleeveEnds::Decked,
        })
    }

    /// How its sleeves stand and end.
    ///
    /// # Errors
    /// Where what is typed cannot be used.
    pub fn stand(&self) -> Result<Stand, Unusable> {
        Ok(Stand {
            kind: self.sleeve_kind()?,
            ends: self.sleeve_ends()?,
        })
    }

    /// What its steps are listed by: what cannot be used counts as usual, and each
    /// step is held by it.
    #[must_use]
    pub fn listed_stand(&self) -> Stand {
        Stand {
            kind: self.listed_kind(),
            ends: match self.sleeve_ends() {
                Ok(ends) => ends,
                Err(_) => SleeveEnds::Decked, // held, step by step
            },
        }
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
