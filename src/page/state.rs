//! What the page knows, as signals, and the one place that calls the core and
//! the store. Screens read derived signals and call the methods here.

use crate::browser;
use crate::caret;
use crate::clock;
use crate::desk::Desk;
use crate::drops::DropNumbers;
use crate::gauge::Gauge;
use crate::keeper::{self, Keeping, with};
use crate::library::{self, Kept, Listed, OpenDrop, OpenJob};
use crate::memo::Memo;
use crate::parts::keys::{Counting, Typing};
use crate::route::{DROP_LAST, Route, View};
use crate::storage::local::Local;
use coldseat_core::ask::document::{ColdDropPaper, LinkFault, MARK, Shared, Shop};
use coldseat_core::ask::{
    Checked, CylinderReport, DeckMemory, DeckSeats, DropSheet, Entries, Entry, Place, Scope, Sheet,
    Stand, UnitSystem, Unlock, Whole, assess_job, check, preset_text, presets, reading_before,
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

/// How the store fares.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Store {
    /// It takes what it is given.
    Works,
    /// There is none.
    Blocked,
    /// It takes nothing more.
    Full,
}

/// Everything.
#[derive(Clone, Copy)]
pub struct State {
    /// Where the page is.
    pub route: RwSignal<Route>,
    /// Jobs of this device, newest first.
    pub jobs: RwSignal<Vec<Listed>>,
    /// What could not be read.
    pub kept: RwSignal<Vec<Kept>>,
    /// The open job.
    pub open: RwSignal<Option<OpenJob>>,
    /// The shop's settings.
    pub shop: RwSignal<Shop>,
    /// Cold drops under a name, changed last first.
    pub drops: RwSignal<Vec<Listed>>,
    /// The cold drop at hand: the kept one that is open, else the one in use.
    pub drop_open: RwSignal<OpenDrop>,
    /// Its numbers.
    pub drop_sheet: DropNumbers,
    /// How the store fares.
    pub store: RwSignal<Store>,
    /// How far what was typed last has come.
    pub keeping: RwSignal<Keeping>,
    /// The browser could not keep the page on the device.
    pub not_offline: RwSignal<bool>,
    /// What was to be taken out for good is still there: the second store refused.
    pub not_destroyed: RwSignal<bool>,
    /// The second store is being looked into.
    pub looking: RwSignal<bool>,
    /// Jobs whose newer copy came out of the second store.
    pub brought_back: RwSignal<Vec<String>>,
    /// A new version waits.
    pub update_ready: RwSignal<bool>,
    /// The reading under the hand.
    pub active: RwSignal<Option<(Target, Place)>>,
    /// Its text when the hand came to it.
    pub was: RwSignal<Option<String>>,
    /// Whether the own number pad is used.
    pub pad_on: RwSignal<bool>,
    /// How the pad takes digits.
    pub counting: RwSignal<Counting>,
    /// What pad and keyboard have typed so far into the reading under the hand.
    pub typing: RwSignal<Typing>,
    /// What stands behind the menu button is open.
    pub menu: RwSignal<bool>,
    /// The person went on with "next": the first reading takes the focus.
    pub going_on: RwSignal<bool>,
    /// Reports of the open job's cylinders.
    pub reports: Memo<Arc<Vec<CylinderReport>>>,
    /// The same, as they stood before the reading that is being typed: what is
    /// said by word and colour waits until it is whole.
    pub settled: Memo<Arc<Vec<CylinderReport>>>,
    /// The sleeves of the open job's decks, judged together.
    pub decks: Memo<Arc<Vec<DeckSeats>>>,
    /// A reading is being typed: no key for a second, the field left or "next"
    /// end it.
    pub half_typed: RwSignal<bool>,
    /// Keys typed so far: which of them the second is counted from.
    keys_typed: StoredValue<u64>,
    /// Reports of the open job's block and decks.
    pub whole: Memo<Arc<Whole>>,
    /// Beep and vibrate when a time is up.
    pub feedback: RwSignal<bool>,
    /// What came with a link, until it is taken or left.
    pub shared: RwSignal<Option<Result<Shared, LinkFault>>>,
    /// Links looked at so far.
    pub links: RwSignal<u64>,
    /// The clock, for timers: it ticks while one runs.
    pub now: RwSignal<u64>,
    /// What gauges sent, and the order of the hand.
    pub gauge: Gauge,
    /// The open job's history, its last written state, what waits.
    pub desk: Desk,
}

/// So long after the last key a reading counts as whole.
const HALF_TYPED: Duration = Duration::from_millis(1000);

/// The address of the shortcut to the job changed last.
const LAST_JOB: &str = "#/last";

impl State {
    /// How the sleeves of the open job stand and end: which steps and fields it has.
    #[must_use]
    pub fn stand(self) -> Stand {
        self.open
            .with(|o| o.as_ref().map_or(Stand::USUAL, |o| o.job.listed_stand()))
    }

    /// Reads the store and sets everything up.
    #[must_use]
    pub fn start() -> Self {
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
        let state = Self {
            route: RwSignal::new(Route::Jobs),
            jobs: RwSignal::new(Vec::new()),
            kept: RwSignal::new(Vec::new()),
            open,
            shop: RwSignal::new(with(|session| session.shop().job.clone())),
            drops: RwSignal::new(Vec::new()),
            drop_open,
            drop_sheet: DropNumbers(drop_open),
            store: RwSignal::new(Store::Works),
            keeping: RwSignal::new(Keeping::Idle),
            not_offline: RwSignal::new(false),
            not_destroyed: RwSignal::new(false),
            looking: RwSignal::new(true),
            brought_back: RwSignal::new(Vec::new()),
            update_ready: RwSignal::new(false),
            active: RwSignal::new(None),
            was: RwSignal::new(None),
            pad_on: RwSignal::new(true),
            counting: RwSignal::new(Counting::FromRight),
            typing: RwSignal::new(Typing::default()),
            menu: RwSignal::new(false),
            going_on: RwSignal::new(false),
            reports,
            settled,
            decks,
            half_typed,
            keys_typed: StoredValue::new(0),
            whole,
            feedback: RwSignal::new(true),
            shared: RwSignal::new(None),
            links: RwSignal::new(0),
            now: RwSignal::new(clock::time()),
            gauge: Gauge::new(),
            desk: Desk::new(),
        };
        if !Local::is_there() {
            state.store.set(Store::Blocked);
        }
        state.show_shop();
        state.scan();
        state.arrive();
        keeper::run(state);
        keeper::keep_trying(state);
        state
    }

    /// From the context.
    #[must_use]
    pub fn here() -> Self {
        expect_context()
    }

    /// Follows the address.
    pub fn arrive(self) {
        self.flush();
        if browser::hash() == LAST_JOB {
            // The list has the newest first; without a job it is the list.
            let newest = self
                .jobs
                .with_untracked(|jobs| jobs.first().map(|j| j.id.clone()));
            let route = newest.map_or(Route::Jobs, |id| Route::Job {
                id,
                view: View::Cylinder(None, None),
            });
            browser::replace_hash(&route.address());
        }
        let is_drop_last = browser::hash() == DROP_LAST;
        if is_drop_last {
            self.scan();
            self.to_last_drop();
        }
        let address = browser::hash();
        let route = Route::parse(&address);
        if address.starts_with(MARK) {
            self.look_at_link(&address);
            // Gone from the address: a reload or a bookmark brings nothing back.
            browser::replace_hash(&Route::Shared.address());
        }
        self.drop_of_route(&route);
        if let Route::Job { id, .. } = &route {
            let is_open = self
                .open
                .with_untracked(|o| o.as_ref().is_some_and(|o| o.id == *id));
            if !is_open {
                let may = self.open_job(id);
                self.looking
                    .set(may && self.open.with_untracked(Option::is_none));
            }
        }
        if !self.hand_goes_to(&route) {
            self.close_pad();
            // The field of another screen may be the same one to the browser: it would
            // keep the focus, and the hand would never come to it.
            caret::leave_reading();
        }
        self.menu.set(false);
        let shows = match route {
            Route::Jobs | Route::Files | Route::New | Route::Engines | Route::Learnt => true,
            Route::Drop(_) => !is_drop_last,
            _ => false,
        };
        if shows {
            self.scan();
        }
        self.route.set(route);
    }

    /// Looks at every key of the store.
    pub fn scan(self) {
        let found = library::scan();
        self.jobs.set(library::sorted(found.jobs));
        self.drops.set(library::sorted(found.drops));
        self.kept.set(found.kept);
    }

    /// Shows the settings as they are kept.
    pub(crate) fn show_shop(self) {
        let shop = with(|session| session.shop().job.clone());
        self.pad_on.set(shop.pad != Some(false));
        self.feedback.set(shop.feedback != Some(false));
        self.gauge.hand.set(shop.hand);
        self.gauge.set_speech(shop.speech);
        self.shop.set(shop);
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
        if self.active.get_untracked() == Some((target, place)) {
            self.key_typed();
        }
        let unit = place.field.unit(untrack(|| self.units(target)));
        let entry = Entry::new(text, unit, browser::now());
        self.type_entry(target, place, entry);
    }

    /// A key came: what is typed is not whole before the hand rests or goes on.
    fn key_typed(self) {
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

    /// The hand comes to a place.
    pub fn activate(self, target: Target, place: Place) {
        if self.active.get_untracked() == Some((target, place)) {
            return;
        }
        self.leaves_place();
        self.reading_done();
        let text = untrack(|| self.text(target, place));
        self.was.set((!text.is_empty()).then_some(text));
        self.active.set(Some((target, place)));
    }

    /// The hand goes on from a reading: to the next one; after the last to what
    /// leads on, the pad out of the way and the verdict in sight.
    pub fn on_from(self, id: &str) {
        if !browser::focus_after(id) {
            self.close_pad();
            browser::to_top();
        }
    }

    /// The hand leaves.
    pub fn close_pad(self) {
        self.reading_done();
        if self.active.get_untracked().is_some() {
            self.active.set(None);
        }
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

/// The cold drop as it opens: nothing typed, usual values stand and are told.
#[must_use]
pub fn fresh_drop(units: UnitSystem) -> DropSheet {
    ColdDropPaper::fresh(units).sheet
}
