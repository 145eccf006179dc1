//! What this tab looks at and how: where it is, the reading under the hand, the pad,
//! and what of the settings is a matter of this device. Nothing of it is stored here.

use crate::clock;
use crate::memo::Memo;
use crate::parts::keys::{Counting, Typing};
use crate::screens::Route;
use crate::session::Target;
use crate::words::{self, Decimal, Language};
use coldseat_core::ask::Place;
use coldseat_core::ask::document::{LinkFault, Shared, Shop};
use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

/// What is on the screen and under the hand.
#[derive(Clone, Copy)]
pub struct Ui {
    /// Where the page is.
    pub route: RwSignal<Route>,
    /// The reading under the hand.
    pub active: RwSignal<Option<(Target, Place)>>,
    /// Its text when the hand came to it.
    pub was: RwSignal<Option<String>>,
    /// Whether the own number pad is used: a setting.
    pub pad_on: Memo<bool>,
    /// Beep and vibrate when a time is up: a setting.
    pub feedback: Memo<bool>,
    /// The language that is shown: a choice of this device.
    pub language: RwSignal<Language>,
    /// What stands before decimals: a choice of this device.
    pub decimal: RwSignal<Decimal>,
    /// A language was chosen and its words could not be loaded.
    pub no_language: RwSignal<bool>,
    /// How the pad takes digits.
    pub counting: RwSignal<Counting>,
    /// What pad and keyboard have typed so far into the reading under the hand.
    pub typing: RwSignal<Typing>,
    /// What stands behind the menu button is open.
    pub menu: RwSignal<bool>,
    /// The person went on with "next": the first reading takes the focus.
    pub going_on: RwSignal<bool>,
    /// What came with a link, until it is taken or left.
    pub shared: RwSignal<Option<Result<Shared, LinkFault>>>,
    /// Links looked at so far.
    pub links: RwSignal<u64>,
    /// The clock, for timers: it ticks while one runs.
    pub now: RwSignal<u64>,
    /// The browser could not keep the page on the device.
    pub not_offline: RwSignal<bool>,
    /// A new version waits.
    pub update_ready: RwSignal<bool>,
}

impl Ui {
    /// Shows another language from now on, once its words are here; what was typed
    /// stays.
    pub fn speak(self, language: Language) {
        self.speak_by(language, words::choose);
    }

    /// Shows another language until the screen is left: a record for its reader.
    pub fn speak_here(self, language: Language) {
        self.speak_by(language, words::show_for_now);
    }

    /// Shows this device's own language again.
    pub fn speak_at_home(self) {
        if self.language.get_untracked() != words::home() {
            self.speak_here(words::home());
        }
    }

    fn speak_by(self, language: Language, show: fn(Language)) {
        spawn_local(async move {
            let is_here = words::load(language).await;
            self.no_language.set(!is_here);
            if is_here {
                show(language);
                self.language.set(language);
            }
        });
    }

    /// Writes numbers so from now on.
    pub fn write(self, decimal: Decimal) {
        words::choose_decimal(decimal);
        self.decimal.set(decimal);
    }

    /// The first screen, nothing under the hand; follows the settings.
    #[must_use]
    pub fn new(shop: RwSignal<Shop>) -> Self {
        Self {
            route: RwSignal::new(Route::Jobs),
            active: RwSignal::new(None),
            was: RwSignal::new(None),
            pad_on: Memo::new(move |_| shop.with(|shop| shop.pad != Some(false))),
            feedback: Memo::new(move |_| shop.with(|shop| shop.feedback != Some(false))),
            language: RwSignal::new(words::shown()),
            decimal: RwSignal::new(words::decimal()),
            no_language: RwSignal::new(false),
            counting: RwSignal::new(Counting::FromRight),
            typing: RwSignal::new(Typing::default()),
            menu: RwSignal::new(false),
            going_on: RwSignal::new(false),
            shared: RwSignal::new(None),
            links: RwSignal::new(0),
            now: RwSignal::new(clock::time()),
            not_offline: RwSignal::new(false),
            update_ready: RwSignal::new(false),
        }
    }
}
