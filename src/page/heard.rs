//! What is heard: tones for a reading that was taken, asked about or refused. A
//! browser without sound is silent: the words on the screen stand anyway.

use crate::state::State;
use leptos::prelude::*;
use std::cell::RefCell;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::AudioContext;

/// What a tone says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tone {
    /// The reading stands.
    Taken,
    /// It stands and is asked about, or waits for a word.
    Asked,
    /// It stands nowhere.
    Refused,
}

impl Tone {
    /// Pitch in Hz, beginning and length in s of its notes: one high, two that rise,
    /// two low ones. Told apart by rhythm and by pitch, above the machines and below
    /// what gloves and age take away.
    const fn notes(self) -> &'static [(f32, f64, f64)] {
        match self {
            Self::Taken => &[(1400.0, 0.0, 0.09)],
            Self::Asked => &[(900.0, 0.0, 0.14), (1400.0, 0.18, 0.22)],
            Self::Refused => &[(330.0, 0.0, 0.2), (330.0, 0.28, 0.3)],
        }
    }
}

thread_local! {
    /// One for all: browsers allow a page a few.
    static CONTEXT: RefCell<Option<AudioContext>> = const { RefCell::new(None) };
}

/// Plays a tone, where the person wants any.
pub fn tone(state: State, tone: Tone) {
    if state.ui.feedback.get_untracked() {
        // No sound without a device for it.
        let _ = play(tone);
    }
}

fn play(tone: Tone) -> Result<(), JsValue> {
    let context = CONTEXT.with(|kept| -> Result<AudioContext, JsValue> {
        let mut kept = kept.borrow_mut();
        match kept.as_ref() {
            Some(context) => Ok(context.clone()),
            None => Ok(kept.insert(AudioContext::new()?).clone()),
        }
    })?;
    // One that was begun before any key or touch sleeps until it is asked.
    let _ = context.resume();
    let now_s = context.current_time();
    for (pitch_hz, from_s, long_s) in tone.notes() {
        let note = context.create_oscillator()?;
        note.frequency().set_value(*pitch_hz);
        note.connect_with_audio_node(&context.destination())?;
        note.start_with_when(now_s + from_s)?;
        note.stop_with_when(now_s + from_s + long_s)?;
    }
    Ok(())
}

/// What speaks, where the browser has it.
fn synthesis() -> Option<web_sys::SpeechSynthesis> {
    let speech = js_sys::Reflect::get(&window(), &"speechSynthesis".into()).ok()?;
    speech.is_object().then(|| speech.unchecked_into())
}

/// Says something, where the person wants it said.
pub fn say(state: State, words: &str) {
    let Some(speech) = synthesis() else {
        state.gauge.no_voice.set(true);
        return;
    };
    let Some(voice) = voice(&speech) else {
        state.gauge.no_voice.set(true);
        return;
    };
    // What was being said is over: the newest reading counts.
    speech.cancel();
    if let Ok(said) = web_sys::SpeechSynthesisUtterance::new_with_text(words) {
        said.set_voice(Some(&voice));
        said.set_lang(&voice.lang());
        speech.speak(&said);
    }
}

/// Asks for the voices: some browsers have them only a moment after.
pub fn wake_voices() {
    if let Some(speech) = synthesis() {
        let _ = speech.get_voices();
    }
}

/// A voice for the page's language: one of the device before one of the network.
fn voice(speech: &web_sys::SpeechSynthesis) -> Option<web_sys::SpeechSynthesisVoice> {
    let language = document()
        .document_element()
        .and_then(|root| root.get_attribute("lang"));
    let language = language.unwrap_or_default();
    let own = language
        .split('-')
        .next()
        .unwrap_or_default()
        .to_lowercase();
    let mut fitting: Vec<web_sys::SpeechSynthesisVoice> = speech
        .get_voices()
        .iter()
        .map(JsCast::unchecked_into::<web_sys::SpeechSynthesisVoice>)
        .filter(|voice| voice.lang().to_lowercase().starts_with(&own))
        .collect();
    fitting.sort_by_key(|voice| !voice.local_service());
    fitting.into_iter().next()
}
