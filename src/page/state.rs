//! What the page knows: what is open ([`Session`]), what lies on the device
//! ([`Library`]), what this tab looks at ([`Ui`]), how the stores fare
//! ([`StorageState`]) and what gauges sent ([`Gauge`]). Here stands what touches more
//! than one of them: the address, what the stores tell, the hand.

use crate::browser;
use crate::caret;
use crate::gauge::Gauge;
use crate::library::{self, Library};
use crate::screens::{DROP_LAST, Route, View};
use crate::session::Session;
pub use crate::session::Target;
use crate::storage::local::Local;
use crate::storage::{Event, StorageState, with};
use crate::texts as t;
use crate::tongue::Tongue;
use crate::ui::Ui;
use coldseat_core::ask::document::MARK;
use coldseat_core::ask::{Entries, Job, Place, Scope};
use coldseat_core::storage::slots::DROPS;
use leptos::prelude::*;

/// Everything.
#[derive(Clone, Copy)]
pub struct State {
    /// What is open.
    pub session: Session,
    /// What lies on the device.
    pub library: Library,
    /// What this tab looks at.
    pub ui: Ui,
    /// How the stores fare.
    pub storage: StorageState,
    /// What gauges sent, and the order of the hand.
    pub gauge: Gauge,
    /// What the page speaks.
    pub tongue: Tongue,
}

/// The address of the shortcut to the job changed last.
const LAST_JOB: &str = "#/last";

impl State {
    /// Reads the store and sets everything up.
    #[must_use]
    pub fn start() -> Self {
        let storage = StorageState::new();
        let session = Session::start(storage);
        let state = Self {
            session,
            library: Library::start(),
            ui: Ui::new(session.shop),
            storage,
            gauge: Gauge::new(),
            tongue: Tongue::new(),
        };
        storage.listen(move |event| state.hears(event));
        state.show_shop();
        state.arrive();
        storage.run();
        storage.keep_trying();
        state
    }

    /// From the context.
    #[must_use]
    pub fn here() -> Self {
        expect_context()
    }

    /// Follows the address.
    pub fn arrive(self) {
        self.session.flush();
        if browser::hash() == LAST_JOB {
            // The list has the newest first; without a job it is the list.
            let newest = self
                .library
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
            self.library.scan();
            self.to_last_drop();
        }
        let address = browser::hash();
        let route = Route::parse(&address);
        if address.starts_with(MARK) {
            self.look_at_link(&address);
            // Gone from the address: a reload or a bookmark brings nothing back.
            browser::replace_hash(&Route::Shared.address());
        }
        let drop = match &route {
            Route::Drop(Some(id)) => id,
            _ => "",
        };
        self.session.open_drop(drop);
        if let Route::Job { id, .. } = &route {
            let is_open = self
                .session
                .open
                .with_untracked(|o| o.as_ref().is_some_and(|o| o.id == *id));
            if !is_open {
                let may = self.session.open_job(id);
                self.session
                    .looking
                    .set(may && self.session.open.with_untracked(Option::is_none));
            }
        }
        if !self.hand_goes_to(&route) {
            self.close_pad();
            // The field of another screen may be the same one to the browser: it would
            // keep the focus, and the hand would never come to it.
            caret::leave_reading();
        }
        self.ui.menu.set(false);
        let shows = route.shows_list() || (matches!(route, Route::Drop(_)) && !is_drop_last);
        if shows {
            self.library.scan();
        }
        self.ui.route.set(route);
    }

    /// Whichever cold drop was used last stands in the address from here on.
    fn to_last_drop(self) {
        let used = with(|session| session.drop_used());
        let newest = self.library.drops.with_untracked(|drops| {
            let here = drops.iter().find(|drop| drop.row.binned.is_none());
            here.map(|drop| (drop.id.clone(), drop.row.changed))
        });
        if let Some((id, changed)) = newest
            && used.is_none_or(|used| used < changed)
        {
            browser::replace_hash(&Route::Drop(Some(id)).address());
        }
    }

    /// The stores have told something: it is shown wherever it is seen.
    fn hears(self, event: Event) {
        let (told, is_own) = match event {
            Event::Late => return self.session.looking.set(false),
            Event::Told(told, is_own) => (told, is_own),
        };
        if told.job {
            self.session.show_job();
            self.session.show_history();
        }
        if told.shop {
            self.show_shop();
        }
        if told.cold_drop {
            self.session.show_drop();
        }
        let route = self.ui.route.get_untracked();
        if told.listed {
            if told.others {
                library::forget_row(None);
            } else {
                self.session.forget_open_rows();
            }
            // The drop that is typed into is not in its list.
            let drops = matches!(route, Route::Drop(_)) && (told.others || !is_own);
            if route.shows_list() || drops {
                self.library.scan();
            }
        }
        let looking = self.session.looking;
        if told.fetched.is_some() && told.fetched == route.document() {
            looking.set(false);
        }
        if with(|session| session.keeper().has_looked()) && looking.get_untracked() {
            let is_open = match &route {
                Route::Job { .. } => self.session.open.with_untracked(Option::is_some),
                Route::Drop(Some(id)) => {
                    let open = self.session.drop_open;
                    open.with_untracked(|open| open.id == *id)
                }
                _ => true,
            };
            looking.set(!is_open && with(|session| !session.keeper().is_quiet()));
        }
    }

    /// Shows the settings as they are kept.
    fn show_shop(self) {
        let shop = with(|session| session.shop().job.clone());
        self.gauge.hand.set(shop.hand);
        self.gauge.set_speech(shop.speech);
        self.session.shop.set(shop);
    }

    /// Types a text into a place; it is stored as it stands, and is not whole while
    /// the hand is there and types.
    pub fn type_text(self, target: Target, place: Place, text: &str) {
        if self.ui.active.get_untracked() == Some((target, place)) {
            self.session.key_typed();
        }
        self.session.type_text(target, place, text);
    }

    /// The hand comes to a place.
    pub fn activate(self, target: Target, place: Place) {
        if self.ui.active.get_untracked() == Some((target, place)) {
            return;
        }
        self.session.leaves_place();
        self.session.reading_done();
        let text = untrack(|| self.session.text(target, place));
        self.ui.was.set((!text.is_empty()).then_some(text));
        self.ui.active.set(Some((target, place)));
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
        self.session.reading_done();
        if self.ui.active.get_untracked().is_some() {
            self.ui.active.set(None);
        }
    }

    /// Begins a job and goes to it.
    pub fn begin(self, mut job: Job, note_of_numbers: Option<Entries>) {
        if let Some(entries) = note_of_numbers {
            for (place, entry) in entries.iter() {
                job.entries.put(*place, entry.clone());
            }
        }
        // Nothing measured yet: it begins with the engine's numbers and its holes.
        let is_new = job
            .entries
            .iter()
            .all(|(place, _)| place.field.spec().scope == Scope::Engine);
        let view = match (job.sheet, is_new) {
            (true, _) | (false, true) => View::Engine,
            (false, false) => View::Cylinder(None, None),
        };
        let id = self.session.begin(job);
        browser::go(&Route::Job { id, view }.address());
    }

    /// Keeps the cold drop at hand under a name and goes to it.
    pub fn keep_drop(self, name: &str) {
        let id = self.session.keep_drop(name);
        browser::go(&Route::Drop(Some(id)).address());
    }

    /// A copy of the kept cold drop that is open, which is opened.
    pub fn copy_drop(self) {
        let open = self.session.drop_open;
        let name = open.with_untracked(|open| open.job.name.clone());
        self.keep_drop(&t::copy_of(&name));
    }

    /// Takes a document out of the bin, by its name and key.
    pub fn out_of_bin(self, name: String, id: String) {
        self.session.flush();
        wasm_bindgen_futures::spawn_local(async move {
            let is_drop = name.starts_with(DROPS);
            let found = if is_drop {
                let found = self.session.stored_drop(&id).await;
                found.map(|open| open.document(&name))
            } else {
                self.session
                    .stored(&id)
                    .await
                    .map(|open| open.document(&name))
            };
            let Some(found) = found else {
                return;
            };
            if with(|session| session.keeper().copies(&Local, &name).is_empty()) {
                // Only the second store has it.
                with(|session| session.take(&id, &found, &Local, browser::now()));
            }
            if is_drop {
                with(|session| session.open_drop(&Local, &id));
                self.session.bin(Target::Drop, false);
                let told = with(|session| session.close_drop(&Local, browser::now()));
                self.storage.tell(told);
            } else {
                with(|session| session.open_job(&Local, &id, ""));
                self.session.show_job();
                self.session.bin(Target::Job, false);
            }
            library::forget_row(None);
            self.library.scan();
        });
    }
}
