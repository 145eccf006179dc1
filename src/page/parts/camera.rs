//! Reading a code with the camera, where the browser has a detector of codes.
//! What it reads goes the way of any link: looked at, bounded, previewed. The
//! camera is asked for at the person's word, and off again as soon as a code
//! was read, the screen is left, or the page is out of sight.

use crate::browser;
use crate::live::live;
use crate::screens::Route;
use crate::state::State;
use crate::texts as t;
use coldseat_markup::view;
use js_sys::{Array, Function, Object, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

const VIDEO: &str = "scan-video";
/// Milliseconds between two looks.
const GLANCE_MS: i32 = 200;
/// Looks until the camera goes off by itself: two minutes.
const GLANCES: u32 = 600;

#[derive(Clone, Copy, PartialEq, Eq)]
enum Scan {
    Off,
    Asking,
    Looking,
    Refused,
    NoCode,
}

/// A button that reads a code; where there is no detector, which way else.
pub fn camera(state: State) -> AnyView {
    if detector().is_none() {
        return view! { <p class="quiet">{t::SCAN_OUTSIDE}</p> }.into_any();
    }
    let scan = RwSignal::new(Scan::Off);
    let shown = move || {
        match scan.get() {
        Scan::Asking => view! { <p role="status">{t::SCAN_ASKING}</p> }.into_any(),
        Scan::Looking => view! {
            <p role="status">{t::SCAN_LOOKING}</p>
            <video id=VIDEO class="scan" autoplay playsinline prop:muted=true aria-label=t::SCAN_VIDEO.get()></video>
            <button type="button" on:click=move |_| scan.set(Scan::Off)>
                {t::SCAN_STOP}
            </button>
        }
        .into_any(),
        still => {
            let words = match still {
                Scan::Refused => t::SCAN_REFUSED.get(),
                Scan::NoCode => t::SCAN_NO_CODE.get(),
                _ => "",
            };
            view! {
                <button type="button" on:click=move |_| begin(state, scan)>
                    {t::SCAN}
                </button>
                <p role="status">{words}</p>
            }
            .into_any()
        }
    }
    };
    view! { <div class="files">{live(shown)}</div> }.into_any()
}

fn get(of: &JsValue, name: &str) -> Option<JsValue> {
    Reflect::get(of, &name.into())
        .ok()
        .filter(|value| !value.is_undefined() && !value.is_null())
}

fn call(of: &JsValue, name: &str, with: &Array) -> Option<JsValue> {
    let function: Function = get(of, name)?.dyn_into().ok()?;
    function.apply(of, with).ok()
}

async fn awaited(promise: Option<JsValue>) -> Option<JsValue> {
    JsFuture::from(promise?.dyn_into::<Promise>().ok()?)
        .await
        .ok()
}

/// A detector of QR codes, with a camera to look through.
fn detector() -> Option<JsValue> {
    get(&window().navigator(), "mediaDevices")?;
    let kind: Function = get(&window(), "BarcodeDetector")?.dyn_into().ok()?;
    let wishes = Object::new();
    let formats = Array::of1(&"qr_code".into());
    Reflect::set(&wishes, &"formats".into(), &formats).ok()?;
    Reflect::construct(&kind, &Array::of1(&wishes)).ok()
}

/// The camera at the back, if the person lets us.
async fn stream() -> Option<JsValue> {
    let (wishes, video) = (Object::new(), Object::new());
    Reflect::set(&video, &"facingMode".into(), &"environment".into()).ok()?;
    Reflect::set(&wishes, &"video".into(), &video).ok()?;
    let devices = get(&window().navigator(), "mediaDevices")?;
    awaited(call(&devices, "getUserMedia", &Array::of1(&wishes))).await
}

fn stop(stream: &JsValue) {
    let tracks = call(stream, "getTracks", &Array::new()).and_then(|t| t.dyn_into::<Array>().ok());
    for track in tracks.unwrap_or_default().iter() {
        call(&track, "stop", &Array::new());
    }
}

fn begin(state: State, scan: RwSignal<Scan>) {
    scan.set(Scan::Asking);
    spawn_local(async move {
        let Some(stream) = stream().await else {
            scan.try_set(Scan::Refused);
            return;
        };
        let found = look(&stream, scan).await;
        stop(&stream);
        if let Some(text) = found {
            state.look_at_link(&text);
            browser::go(&Route::Shared.address());
        }
    });
}

/// Looks until there is a code; `None` where the person or the time ended it.
async fn look(stream: &JsValue, scan: RwSignal<Scan>) -> Option<String> {
    // Whoever left while the browser asked wants no camera; a screen that was
    // left has no signal any more.
    let is = |what| scan.try_get_untracked() == Some(what);
    if !is(Scan::Asking) {
        return None;
    }
    scan.set(Scan::Looking);
    let detector = detector()?;
    for _ in 0..GLANCES {
        browser::wait(GLANCE_MS).await;
        if document().hidden() {
            scan.try_set(Scan::Off);
        }
        if !is(Scan::Looking) {
            return None;
        }
        let Some(video) = document().get_element_by_id(VIDEO) else {
            continue;
        };
        if get(&video, "srcObject").is_none() {
            let _ = Reflect::set(&video, &"srcObject".into(), stream);
        }
        // A frame that is not there yet is an error of the detector's.
        let codes = awaited(call(&detector, "detect", &Array::of1(&video))).await;
        let codes = codes.and_then(|codes| codes.dyn_into::<Array>().ok());
        let text = codes.and_then(|codes| get(&codes.get(0), "rawValue")?.as_string());
        if text.is_some() && is(Scan::Looking) {
            return text;
        }
    }
    scan.try_set(Scan::NoCode);
    None
}
