//! Beep, vibration and a screen that stays on. Every call copes with a browser
//! that has none of it.

use js_sys::{Function, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};

/// Length of a beep, s.
const BEEP_S: f64 = 0.6;
/// Its pitch, Hz: above the machines, below what gloves and age take away.
const BEEP_HZ: f32 = 1400.0;

/// One beep.
fn beep() -> Result<(), JsValue> {
    let context = web_sys::AudioContext::new()?;
    let tone = context.create_oscillator()?;
    tone.frequency().set_value(BEEP_HZ);
    tone.connect_with_audio_node(&context.destination())?;
    tone.start()?;
    tone.stop_with_when(context.current_time() + BEEP_S)
}

/// Says with sound and a shake that a time is up.
pub fn time_is_up() {
    // No sound without a device for it: the words on the screen stand anyway.
    let _ = beep();
    let navigator = window().navigator();
    if Reflect::has(&navigator, &JsValue::from_str("vibrate")).unwrap_or(false) {
        navigator.vibrate_with_duration(500);
    }
}

/// Asks that the screen stay on; holds until the page is hidden.
pub fn stay_awake() {
    let navigator: JsValue = window().navigator().into();
    let lock = Reflect::get(&navigator, &JsValue::from_str("wakeLock")).unwrap_or_default();
    let Some(request) = Reflect::get(&lock, &JsValue::from_str("request"))
        .ok()
        .and_then(|f| f.dyn_into::<Function>().ok())
    else {
        return;
    };
    let asked = request
        .call1(&lock, &JsValue::from_str("screen"))
        .ok()
        .and_then(|p| p.dyn_into::<Promise>().ok());
    if let Some(promise) = asked {
        wasm_bindgen_futures::spawn_local(async move {
            // Refused while hidden or on a low battery: asked again later.
            let _ = wasm_bindgen_futures::JsFuture::from(promise).await;
        });
    }
}
