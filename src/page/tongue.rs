//! What the page speaks, as signals: the language that is shown and the mark before
//! decimals. Both are choices of this device; the words themselves are in `words`.

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
            missing: RwSignal::new(false),
        }
    }

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
        if self.shown.get_untracked() != words::home() {
            self.speak_here(words::home());
        }
    }

    fn speak_by(self, language: Language, show: fn(Language)) {
        spawn_local(async move {
            let is_here = words::load(language).await;
            self.missing.set(!is_here);
            if is_here {
                show(language);
                self.shown.set(language);
            }
        });
    }

    /// Writes numbers so from now on.
    pub fn write(self, decimal: Decimal) {
        words::choose_decimal(decimal);
        self.decimal.set(decimal);
    }
}
