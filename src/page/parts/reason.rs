//! A line of words that an act needs before it is done, kept in the record: why
//! a step is skipped, why a deck is released, what was found under a sleeve.

use crate::live::words;
use crate::state::{State, Target};
use coldseat_core::ask::{Field, Unit};
use coldseat_markup::view;
use leptos::prelude::*;

/// Words asked for, and whether their lack was complained of.
#[derive(Clone, Copy)]
pub struct Reason {
    text: RwSignal<String>,
    complained: RwSignal<bool>,
}

impl Reason {
    /// With the words that stand already.
    #[must_use]
    pub fn new(text: String) -> Self {
        Self {
            text: RwSignal::new(text),
            complained: RwSignal::new(false),
        }
    }

    /// The words; where there are none it says so below the line.
    #[must_use]
    pub fn given(self) -> Option<String> {
        let text = self.text.get_untracked().trim().to_owned();
        self.complained.set(text.is_empty());
        (!text.is_empty()).then_some(text)
    }

    /// The words, where the core takes them for a field.
    #[must_use]
    pub fn given_for(self, field: Field) -> Option<String> {
        let text = self.given()?;
        let is_taken = field.read(&text, Unit::Plain).is_ok();
        self.complained.set(!is_taken);
        is_taken.then_some(text)
    }

    /// The line, with its label and what it says when it is empty.
    pub fn line(
        self,
        state: State,
        id: String,
        label: &'static str,
        needed: &'static str,
    ) -> AnyView {
        let fault = format!("{id}-fault");
        view! {
            <div class="choice">
                <label for=id.clone()>{label}</label>
                <input
                    id=id
                    type="text"
                    maxlength="300"
                    autocomplete="off"
                    aria-describedby=fault.clone()
                    readonly=move || state.session.is_read_only(Target::Job)
                    prop:value=words(move || self.text.get())
                    on:input=move |event| {
                        self.text.set(event_target_value(&event));
                        self.complained.set(false);
                    }
                />
                <p id=fault class="fault" aria-live="polite">
                    {move || self.complained.get().then_some(needed)}
                </p>
            </div>
        }
        .into_any()
    }
}
