//! The open documents of this tab (a job, the settings, a cold drop) as signals, and
//! what is worked out from them. How they are changed stands in `edit`, the cold drops
//! without a job in `drops`; no screen is known here.

mod drops;
mod edit;

pub use drops::{DropNumbers, NAME_MOST, fresh_drop};

use crate::browser;
use crate::library::{OpenDrop, OpenJob};
use crate::memo::Memo;
use crate::storage::{StorageState, with};
use coldseat_core::ask::document::Shop;
use coldseat_core::ask::{
    Checked, CylinderReport, DeckMemory, DeckSeats, Entries, Entry, Place, Scope, Sheet, Stand,
    UnitSystem, Unlock, Whole, assess_job, check, preset_text, presets, reading_before,
    temperature_before,
};
use leptos::prelude::*;
use std::sync::Arc;
use std::time::Duration;

/// Whose numbers a reading belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Target {
    /// The open job.
    Job,
    /// The cold drop without a job.
    Drop,
    /// The shop's settings.
    Shop,
}

/// What is open, what can be taken back of it, and what follows from it.
#[derive(Clone, Copy)]
pub struct Session {
    /// The open job.
    pub open: RwSignal<Option<OpenJob>>,
    /// The shop's settings.
    pub shop: RwSignal<Shop>,
    /// The cold drop at hand: the kept one that is open, else the one in use.
    pub drop_open: RwSignal<OpenDrop>,
    /// Its numbers.
    pub drop_sheet: DropNumbers,
    /// What the address names is being looked for in the second store.
    pub looking: RwSignal<bool>,
    /// Reports of the open job's cylinders.
    pub reports: Memo<Arc<Vec<CylinderReport>>>,
    /// The same, as they stood before the reading that is being typed: what is
    /// said by word and colour waits until it is whole.
    pub settled: Memo<Arc<Vec<CylinderReport>>>,
    /// The sleeves of the open job's decks, judged together.
    pub decks: Memo<Arc<Vec<DeckSeats>>>,
    /// Reports of the open job's block and decks.
    pub whole: Memo<Arc<Whole>>,
    /// A reading is being typed: no key for a second, the field left or "next"
    /// end it.
    pub half_typed: RwSignal<bool>,
    /// Whether there is a step to take back.
    pub can_undo: RwSignal<bool>,
    /// Whether there is a step to do again.
    pub can_redo: RwSignal<bool>,
    /// Keys typed so far: which of them the second is counted from.
    keys_typed: StoredValue<u64>,
    /// Whether a change waits for its paint.
    waits: StoredValue<bool>,
    /// The place that was typed into last, while the hand is there.
    visit: StoredValue<Option<(Target, Place)>>,
    /// Where all of it is kept.
    storage: StorageState,
}

/// So long after the last key a reading counts as whole.
const HALF_TYPED: Duration = Duration::from_millis(1000);

impl Session {
    /// Nothing but what is always open: the settings and the cold drop in use.
    #[must_use]
    pub fn start(storage: StorageState) -> Self {
        let open = RwSignal::new(None::<OpenJob>);
        // Decks are judged anew only where a seat reading changed.
        let memory = StoredValue::new(DeckMemory::default());
        let assessed = Memo::new(move |_| {
            let all = open.with(|o| {
                let job = &o.as_ref()?.job;
                memory.try_update_value(|memory| assess_job(job, memory))
            });
            let all = all.unwrap_or_default();
            (
                Arc::new(all.cylinders),
                Arc::new(all.whole),
                Arc::new(all.decks),
            )
        });
        let reports = Memo::new(move |_| assessed.get().0);
        let whole = Memo::new(move |_| assessed.get().1);
        let decks = Memo::new(move |_| assessed.get().2);
        let half_typed = RwSignal::new(false);
        let settled = Memo::new(move |before: Option<&Arc<Vec<CylinderReport>>>| {
            let now = reports.get();
            match before {
                Some(before) if half_typed.get() => before.clone(),
                _ => now,
            }
        });
        let drop_open = RwSignal::new(with(|session| session.cold_drop().clone()));
        Self {
            open,
            shop: RwSignal::new(with(|session| session.shop().job.clone())),
            drop_open,
            drop_sheet: DropNumbers(drop_open),
            looking: RwSignal::new(true),
            reports,
            settled,
            decks,
            whole,
            half_typed,
            can_undo: RwSignal::new(false),
            can_redo: RwSignal::new(false),
            keys_typed: StoredValue::new(0),
            waits: StoredValue::new(false),
            visit: StoredValue::new(None),
            storage,
        }
    }

    /// How the sleeves of the open job stand and end: which steps and fields it has.
    #[must_use]
    pub fn stand(self) -> Stand {
        self.open
            .with(|o| o.as_ref().map_or(Stand::USUAL, |o| o.job.listed_stand()))
    }

    /// Units of a target.
    #[must_use]
    pub fn units(self, target: Target) -> UnitSystem {
        match target {
            Target::Job => self
                .open
                .with(|o| o.as_ref().map_or(UnitSystem::Inch, |o| o.job.engine.units)),
            Target::Drop => self.drop_sheet.with(|d| d.units),
            Target::Shop => self.shop.with(|s| s.units),
        }
    }

    /// Whether a target may not be changed.
    #[must_use]
    pub fn is_read_only(self, target: Target) -> bool {
        match target {
            Target::Job => self.open.with(|o| o.as_ref().is_some_and(|o| o.read_only)),
            Target::Drop => self.drop_open.with(|o| o.read_only),
            Target::Shop => false,
        }
    }

    fn with_sheet<T>(self, target: Target, look: impl FnOnce(&Sheet<'_>) -> T) -> Option<T> {
        match target {
            Target::Job => self
                .open
                .with(|open| open.as_ref().map(|open| look(&Sheet::of(&open.job)))),
            Target::Drop => self.drop_sheet.with(|d| Some(look(&d.sheet()))),
            Target::Shop => self.shop.with(|shop| {
                Some(look(&Sheet {
                    entries: &shop.entries,
                    units: shop.units,
                    cylinders: 0,
                    job: None,
                }))
            }),
        }
    }

    /// The text at a place.
    #[must_use]
    pub fn text(self, target: Target, place: Place) -> String {
        self.with_sheet(target, |sheet| {
            sheet
                .entries
                .get(place)
                .map(|e| e.shown_in(place.field.unit(sheet.units)))
                .unwrap_or_default()
        })
        .unwrap_or_default()
    }

    /// What usually stands at a place; empty where there is nothing usual.
    #[must_use]
    pub fn usual_text(self, target: Target, place: Place) -> String {
        match target {
            Target::Drop => self
                .drop_sheet
                .with_untracked(|sheet| sheet.usual_text(place.field)),
            Target::Job | Target::Shop => {
                preset_text(place.field, untrack(|| self.units(target))).to_owned()
            }
        }
    }

    /// The reading whose last digits may be typed over at a place.
    #[must_use]
    pub fn reading_before(self, target: Target, place: Place) -> Option<String> {
        self.with_sheet(target, |sheet| reading_before(sheet, place))?
    }

    /// The temperature read last of the same body in the open job, and when.
    #[must_use]
    pub fn temperature_before(self, target: Target, place: Place) -> Option<(String, u64)> {
        if target != Target::Job {
            return None;
        }
        self.open
            .with(|open| temperature_before(&open.as_ref()?.job, place))
    }

    /// What the core makes of a place.
    #[must_use]
    pub fn checked(self, target: Target, place: Place) -> Checked {
        self.with_sheet(target, |sheet| check(sheet, place))
            .unwrap_or(Checked::Empty)
    }

    fn change_entries(self, target: Target, change: impl FnOnce(&mut Entries)) {
        match target {
            Target::Job => self.edit(|job| change(&mut job.entries)),
            Target::Drop => self.edit_drop(|drop| change(&mut drop.entries)),
            Target::Shop => self.edit_shop(|shop| change(&mut shop.entries)),
        }
    }

    /// Types a text into a place; it is stored as it stands.
    pub fn type_text(self, target: Target, place: Place, text: &str) {
        let unit = place.field.unit(untrack(|| self.units(target)));
        let entry = Entry::new(text, unit, browser::now());
        self.type_entry(target, place, entry);
    }

    /// A key came: what is typed is not whole before the hand rests or goes on.
    pub fn key_typed(self) {
        let key = self.keys_typed.get_value() + 1;
        self.keys_typed.set_value(key);
        self.half_typed.set(true);
        let rested = move || {
            if self.keys_typed.try_get_value() == Some(key) {
                self.reading_done();
            }
        };
        set_timeout(rested, HALF_TYPED);
    }

    /// The reading under the hand is whole.
    pub fn reading_done(self) {
        if self.half_typed.get_untracked() {
            self.half_typed.set(false);
        }
    }

    /// Says that a questioned value is meant.
    pub fn keep(self, target: Target, place: Place) {
        self.change_entries(target, |entries| entries.keep(place));
    }

    /// Numbers of a new engine: presets, with the shop's gauges.
    #[must_use]
    pub fn new_numbers(self, units: UnitSystem) -> Entries {
        let mut entries = presets(Scope::Engine, units, browser::now());
        self.shop.with_untracked(|shop| {
            for (place, entry) in shop.entries.iter() {
                entries.put(*place, entry.clone());
            }
        });
        entries
    }

    /// Releases the deck of a bank by hand.
    pub fn release_deck(self, bank: u8, reason: &str) {
        let unlock = Unlock {
            reason: reason.trim().chars().take(300).collect(),
            at: browser::now(),
        };
        self.edit(|job| {
            job.unlocks.insert(bank, unlock);
        });
    }
}
