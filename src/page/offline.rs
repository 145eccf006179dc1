//! The service worker that keeps the page on the device. A new version is
//! offered, never taken by itself: see [`crate::parts::notice`].

use crate::browser;
use crate::state::State;
use js_sys::{Function, Reflect};
use leptos::prelude::*;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{RegistrationOptions, ServiceWorkerRegistration, ServiceWorkerUpdateViaCache};

/// The browser's service workers; none over plain http from another machine.
fn container() -> Option<web_sys::ServiceWorkerContainer> {
    let navigator = window().navigator();
    let there = Reflect::has(&navigator, &JsValue::from_str("serviceWorker")).unwrap_or(false);
    there.then(|| navigator.service_worker())
}

/// Registers the worker and watches for a new version.
pub fn register(state: State) {
    // One file is its own offline copy.
    let Some(container) = container().filter(|_| !browser::is_one_file()) else {
        return;
    };
    let options = RegistrationOptions::new();
    options.set_update_via_cache(ServiceWorkerUpdateViaCache::None);
    let promise = container.register_with_options("./sw.js", &options);
    wasm_bindgen_futures::spawn_local(async move {
        let value = wasm_bindgen_futures::JsFuture::from(promise).await;
        // A browser that blocks workers may answer with nothing.
        let registration = value
            .ok()
            .and_then(|value| value.dyn_into::<ServiceWorkerRegistration>().ok());
        match registration {
            Some(registration) => watch(state, registration),
            // The page works all the same; where one is at work already, and only
            // could not be looked for anew, it is kept.
            None => {
                let is_kept = container.controller().is_some();
                state.ui.not_offline.set(!is_kept);
            }
        }
    });
}

fn watch(state: State, registration: ServiceWorkerRegistration) {
    let look = {
        let registration = registration.clone();
        move || {
            // A first installation is no update: nothing controls the page yet.
            let controlled = container().is_some_and(|c| c.controller().is_some());
            state
                .ui
                .update_ready
                .set(controlled && registration.waiting().is_some());
        }
    };
    look();
    let found = {
        let registration = registration.clone();
        Closure::<dyn FnMut()>::new(move || {
            let Some(worker) = registration.installing() else {
                return;
            };
            let changed = Closure::<dyn FnMut()>::new(look.clone());
            let function: &Function = changed.as_ref().unchecked_ref();
            let _ = worker.add_event_listener_with_callback("statechange", function);
            changed.forget();
        })
    };
    registration.set_onupdatefound(Some(found.as_ref().unchecked_ref()));
    found.forget();
}

/// Lets the waiting version take over, then loads it.
pub fn take_update() {
    let Some(container) = container() else {
        return;
    };
    let reload = Closure::<dyn FnMut()>::new(|| {
        let _ = window().location().reload();
    });
    container.set_oncontrollerchange(Some(reload.as_ref().unchecked_ref()));
    reload.forget();
    let promise = container.get_registration();
    wasm_bindgen_futures::spawn_local(async move {
        let Ok(value) = wasm_bindgen_futures::JsFuture::from(promise).await else {
            return;
        };
        let Ok(registration) = value.dyn_into::<ServiceWorkerRegistration>() else {
            return;
        };
        if let Some(worker) = registration.waiting() {
            let message = js_sys::Object::new();
            let _ = Reflect::set(
                &message,
                &JsValue::from_str("type"),
                &JsValue::from_str("SKIP_WAITING"),
            );
            let _ = worker.post_message(&message);
        }
    });
}
