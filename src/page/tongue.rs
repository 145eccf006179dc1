//! What the page speaks, as signals: the language that is shown and the mark before
//! decimals. Both are choices of this device; the words themselves are in `words`.

use crate::browser;
use crate::words::{self, Decimal, Language};
use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

/// What is spoken.
#[derive(Clone, Copy)]
pub struct Tongue {
    /// The language that is shown.
    pub shown: RwSignal<Language>,
    /// What stands before decimals.
    pub decimal: RwSignal<Decimal>,
    /// This device's own language, as chosen: its words may still be on their way.
    own: RwSignal<Language>,
    /// The language that was asked for last: words that come late do not change it back.
    wanted: RwSignal<Language>,
    /// A language was chosen and its words could not be loaded.
    pub missing: RwSignal<bool>,
}

impl Tongue {
    /// What was shown at the start.
    #[must_use]
    pub fn new() -> Self {
        Self {
            shown: RwSignal::new(words::shown()),
            decimal: RwSignal::new(words::decimal()),
            own: RwSignal::new(words::shown()),
            wanted: RwSignal::new(words::shown()),
            missing: RwSignal::new(false),
        }
    }

    /// Shows another language from now on.
    pub fn speak(self, language: Language) {
        self.own.set(language);
        self.speak_here(language);
    }

    /// Another screen was opened: it is drawn in this device's own language, if its words
    /// are here.
    pub fn speak_at_home(self) {
        let own = self.own.get_untracked();
        self.wanted.set(own);
        if self.shown.get_untracked() != own && words::is_here(own) {
            self.show(own);
        }
    }

    /// Shows another language until the screen is left (a record for its reader), once
    /// its words are here: on the screen on which it was asked for, for what is half
    /// typed on another one is not drawn anew under the hand.
    pub fn speak_here(self, language: Language) {
        self.wanted.set(language);
        let screen = browser::hash();
        spawn_local(async move {
            let is_here = words::load(language).await;
            if self.wanted.get_untracked() != language {
                return;
            }
            self.missing.set(!is_here);
            if !is_here {
                self.own.set(words::home());
                self.wanted.set(words::shown());
            } else if language == self.own.get_untracked() {
                words::choose(language);
            }
            if browser::hash() == screen {
                // Where it is not here, the choice says again what is shown.
                self.show(if is_here { language } else { words::shown() });
            }
        });
    }

    /// Draws the page in a language that is here; the focus stays where it was.
    fn show(self, language: Language) {
        words::show(language);
        browser::keep_focus();
        self.shown.set(language);
    }

    /// Writes numbers so from now on.
    pub fn write(self, decimal: Decimal) {
        words::choose_decimal(decimal);
        browser::keep_focus();
        self.decimal.set(decimal);
    }
}
