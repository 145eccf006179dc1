//! The browser outside the view: clock, chance, address, focus, files, print.
//! Every call copes with a browser that refuses.

use leptos::prelude::*;
use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;
use wasm_bindgen::{JsCast, JsValue};

/// A paint that has not come by then is not waited for.
const LATEST: Duration = Duration::from_millis(100);
/// How long a painted frame is left to whoever waits for it.
const BREATH: Duration = Duration::from_millis(20);

/// Milliseconds since 1970.
#[must_use]
pub fn now() -> u64 {
    js_sys::Date::now() as u64
}

/// A date in the person's time zone, `2026-11-25 14:05`.
#[must_use]
pub fn date(at: u64) -> String {
    let date = js_sys::Date::new(&JsValue::from_f64(at as f64));
    format!(
        "{:04}-{:02}-{:02} {:02}:{:02}",
        date.get_full_year(),
        date.get_month() + 1,
        date.get_date(),
        date.get_hours(),
        date.get_minutes()
    )
}

/// A key that no other job has: 12 hexadecimal digits by chance.
#[must_use]
pub fn fresh_id() -> String {
    let mut bytes = [0_u8; 6];
    let filled = window()
        .crypto()
        .is_ok_and(|c| c.get_random_values_with_u8_array(&mut bytes).is_ok());
    if !filled {
        for byte in &mut bytes {
            *byte = (js_sys::Math::random() * 256.0) as u8;
        }
    }
    bytes.iter().map(|b| format!("{b:02x}")).collect()
}

fn local() -> Option<web_sys::Storage> {
    window().local_storage().ok().flatten()
}

/// A small text of this device that is no document.
#[must_use]
pub fn local_text(key: &str) -> Option<String> {
    local()?.get_item(key).ok()?
}

/// Keeps a small text of this device, where the browser allows it.
pub fn set_local_text(key: &str, text: &str) {
    if let Some(local) = local() {
        let _ = local.set_item(key, text);
    }
}

/// Takes a small text of this device out.
pub fn remove_local_text(key: &str) {
    if let Some(local) = local() {
        let _ = local.remove_item(key);
    }
}

/// A text that belongs to the page: in the page as one file under an id, else a
/// file beside it.
pub async fn beside(id: &str, address: &str) -> Option<String> {
    use wasm_bindgen_futures::JsFuture;
    if let Some(inside) = document().get_element_by_id(id) {
        return inside.text_content();
    }
    let answer = JsFuture::from(window().fetch_with_str(address))
        .await
        .ok()?;
    let answer: web_sys::Response = answer.dyn_into().ok()?;
    if !answer.ok() {
        return None;
    }
    JsFuture::from(answer.text().ok()?).await.ok()?.as_string()
}

/// Milliseconds of a clock that nobody can set, from wherever it begins.
#[must_use]
pub fn steady_ms() -> f64 {
    window()
        .performance()
        .map_or_else(|| now() as f64, |performance| performance.now())
}

/// The number of this device, drawn once. A browser that keeps nothing has
/// another one at the next start.
#[must_use]
pub fn device() -> u32 {
    const KEY: &str = "coldseat/device";
    let known = local_text(KEY).and_then(|text| text.parse().ok());
    known.unwrap_or_else(|| {
        let device = chance();
        set_local_text(KEY, &device.to_string());
        device
    })
}

/// 32 bits by chance.
#[must_use]
pub fn chance() -> u32 {
    let mut bytes = [0_u8; 4];
    let filled = window()
        .crypto()
        .is_ok_and(|c| c.get_random_values_with_u8_array(&mut bytes).is_ok());
    if filled {
        u32::from_le_bytes(bytes)
    } else {
        (js_sys::Math::random() * f64::from(u32::MAX)) as u32
    }
}

/// The part of the address behind the `#`.
#[must_use]
pub fn hash() -> String {
    window().location().hash().unwrap_or_default()
}

/// Goes to an address of this page.
pub fn go(address: &str) {
    // A browser that refuses leaves the page where it is.
    let _ = window().location().set_hash(address);
}

/// Runs something once the next frame is painted and what came in meanwhile,
/// the next key first of all, has had its turn; at the latest after a tenth of a
/// second, as a page in the background paints none.
pub fn after_paint(then: impl FnOnce() + 'static) {
    let waiting = Rc::new(Cell::new(Some(then)));
    let late = Rc::clone(&waiting);
    let run = move || {
        if let Some(then) = waiting.take() {
            then();
        }
    };
    request_animation_frame(move || set_timeout(run, BREATH));
    set_timeout(
        move || {
            if let Some(then) = late.take() {
                then();
            }
        },
        LATEST,
    );
}

/// Puts the focus on an element and brings it into view.
pub fn focus(id: &str) {
    if let Some(element) = document()
        .get_element_by_id(id)
        .and_then(|e| e.dyn_into::<web_sys::HtmlElement>().ok())
    {
        let _ = element.focus();
    }
}

/// What is drawn anew next gives the focus back to the part of the same id.
pub fn keep_focus() {
    let id = document().active_element().map(|e| e.id());
    if let Some(id) = id.filter(|id| !id.is_empty()) {
        after_paint(move || focus(&id));
    }
}

/// Shows a step from its number on, and puts the focus on its heading.
pub fn focus_step() {
    to_top();
    focus("step-heading");
}

/// Shows a screen from its top on, and puts the focus on its heading.
pub fn focus_heading() {
    request_animation_frame(|| {
        to_top();
        focus("screen-heading");
    });
}

/// Scrolls to the top, where number and verdict stand.
pub fn to_top() {
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// Puts the focus on the first reading of the screen that is empty, or on the
/// first one.
pub fn focus_first_reading() {
    let Ok(places) = document().query_selector_all("[data-place]") else {
        return;
    };
    let inputs: Vec<web_sys::HtmlInputElement> = (0..places.length())
        .filter_map(|index| places.item(index)?.dyn_into().ok())
        .collect();
    if let Some(input) = inputs
        .iter()
        .find(|input| input.value().is_empty())
        .or(inputs.first())
    {
        let _ = input.focus();
    }
}

/// Scrolls a reading to where strip, number and pad leave it in sight.
pub fn show_above_pad(id: &str) {
    let id = id.to_owned();
    // After the pad has taken its room.
    request_animation_frame(move || {
        if let Some(element) = document().get_element_by_id(&id) {
            let options = web_sys::ScrollIntoViewOptions::new();
            options.set_block(web_sys::ScrollLogicalPosition::Nearest);
            element.scroll_into_view_with_scroll_into_view_options(&options);
        }
    });
}

/// The input after the one with this id, in the order of the page; else the
/// button that goes on.
pub fn focus_after(id: &str) -> bool {
    let Ok(places) = document().query_selector_all(IN_SIGHT_OR_ONWARD) else {
        return false;
    };
    let mut found = false;
    for index in 0..places.length() {
        let Some(element) = places
            .item(index)
            .and_then(|n| n.dyn_into::<web_sys::HtmlElement>().ok())
        else {
            continue;
        };
        if found {
            let _ = element.focus();
            let input = element.dyn_ref::<web_sys::HtmlInputElement>();
            if let Some(input) = input {
                input.select();
            }
            return input.is_some();
        }
        found = element.id() == id;
    }
    false
}

/// Types texts into the place with this id and those after it, as if by hand.
pub fn fill_from(id: &str, texts: &[&str]) {
    let mut place = id.to_owned();
    for text in texts {
        let Some(input) = document()
            .get_element_by_id(&place)
            .and_then(|e| e.dyn_into::<web_sys::HtmlInputElement>().ok())
        else {
            return;
        };
        input.set_value(text);
        let options = web_sys::EventInit::new();
        options.set_bubbles(true);
        if let Ok(event) = web_sys::Event::new_with_event_init_dict("input", &options) {
            let _ = input.dispatch_event(&event);
        }
        // Looked up anew each time: a list grows while it is filled.
        let Some(next) = place_after(&place) else {
            return;
        };
        place = next;
    }
}

/// Places of readings; what stands folded is not gone to.
const IN_SIGHT: &str = "[data-place]:not(details:not([open]) *)";
/// These, and the button that goes on.
const IN_SIGHT_OR_ONWARD: &str = ":is([data-place], [data-onward]):not(details:not([open]) *)";

/// The id of the place after one.
fn place_after(id: &str) -> Option<String> {
    let places = document().query_selector_all(IN_SIGHT).ok()?;
    let ids: Vec<String> = (0..places.length())
        .filter_map(|index| places.item(index)?.dyn_into::<web_sys::Element>().ok())
        .map(|element| element.id())
        .collect();
    let at = ids.iter().position(|other| other == id)?;
    ids.get(at + 1).cloned()
}

/// Saves a text as a file; says whether the browser took it.
pub fn save_file(name: &str, text: &str, kind_of: &str) -> bool {
    let parts = js_sys::Array::of1(&JsValue::from_str(text));
    let kind = web_sys::BlobPropertyBag::new();
    kind.set_type(kind_of);
    let Ok(blob) = web_sys::Blob::new_with_str_sequence_and_options(&parts, &kind) else {
        return false;
    };
    let Ok(url) = web_sys::Url::create_object_url_with_blob(&blob) else {
        return false;
    };
    let link = document()
        .create_element("a")
        .ok()
        .and_then(|e| e.dyn_into::<web_sys::HtmlAnchorElement>().ok());
    if let Some(link) = &link {
        link.set_href(&url);
        link.set_download(name);
        link.click();
    }
    let _ = web_sys::Url::revoke_object_url(&url);
    link.is_some()
}

/// Opens the print dialogue.
pub fn print() {
    let _ = window().print();
}

/// Lets the browser do what waits, before long work goes on.
pub async fn breathe() {
    wait(0).await;
}

/// Lets the next frame be painted, as [`after_paint`] has it.
pub async fn painted() {
    let promise = js_sys::Promise::new(&mut |done, _| {
        after_paint(move || drop(done.call0(&JsValue::UNDEFINED)));
    });
    // It cannot fail.
    let _ = wasm_bindgen_futures::JsFuture::from(promise).await;
}

/// Lets so many milliseconds pass.
pub async fn wait(ms: i32) {
    let promise = js_sys::Promise::new(&mut |done, _| {
        let _ = window().set_timeout_with_callback_and_timeout_and_arguments_0(&done, ms);
    });
    // It cannot fail.
    let _ = wasm_bindgen_futures::JsFuture::from(promise).await;
}

fn session() -> Option<web_sys::Storage> {
    window().session_storage().ok().flatten()
}

/// A text that outlives a reload of this tab.
#[must_use]
pub fn session_text(key: &str) -> Option<String> {
    session()?.get_item(key).ok()?
}

/// Keeps a text over a reload of this tab, where the browser allows it.
pub fn set_session_text(key: &str, text: &str) {
    if let Some(session) = session() {
        let _ = session.set_item(key, text);
    }
}

/// Asks the browser once not to clear what the page stores. Some ask the
/// person; a second time would be a nuisance.
pub fn ask_to_persist() {
    thread_local! {
        static ASKED: Cell<bool> = const { Cell::new(false) };
    }
    if ASKED.replace(true) {
        return;
    }
    let navigator = window().navigator();
    let there = js_sys::Reflect::has(&navigator, &JsValue::from_str("storage")).unwrap_or(false);
    if !there {
        return;
    }
    let storage = navigator.storage();
    wasm_bindgen_futures::spawn_local(async move {
        use wasm_bindgen_futures::JsFuture;
        let Ok(asked) = storage.persisted() else {
            return;
        };
        let persisted = JsFuture::from(asked).await;
        if persisted.is_ok_and(|value| value.as_bool() == Some(false))
            && let Ok(answer) = storage.persist()
        {
            // A browser that says no keeps the data as any page's.
            let _ = JsFuture::from(answer).await;
        }
    });
}

/// The address of this page without what stands behind the `#`.
#[must_use]
pub fn page_address() -> String {
    let location = window().location();
    let whole = location.href().unwrap_or_default();
    whole.split('#').next().unwrap_or_default().to_owned()
}

/// Whether the page is one file with everything in it (`cargo xtask
/// single-file`), which has no offline worker beside it.
#[must_use]
pub fn is_one_file() -> bool {
    document()
        .query_selector("meta[name=coldseat-form]")
        .is_ok_and(|mark| mark.is_some())
}

/// Whether another device could open the address of this page.
#[must_use]
pub fn has_address() -> bool {
    let protocol = window().location().protocol().unwrap_or_default();
    protocol.starts_with("http")
}

/// Changes the part of the address behind the `#` without a step in the
/// history.
pub fn replace_hash(hash: &str) {
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(hash));
    }
}

/// Marks all of a line, for copying by hand.
pub fn select_all(id: &str) {
    if let Some(input) = document()
        .get_element_by_id(id)
        .and_then(|e| e.dyn_into::<web_sys::HtmlInputElement>().ok())
    {
        input.select();
    }
}

/// Copies a text; says whether it was.
pub fn copy(text: &str, then: impl Fn(bool) + 'static) {
    let clipboard = js_sys::Reflect::get(&window().navigator(), &"clipboard".into());
    let write = |clipboard: &JsValue| -> Option<js_sys::Promise> {
        let call: js_sys::Function = js_sys::Reflect::get(clipboard, &"writeText".into())
            .ok()?
            .dyn_into()
            .ok()?;
        call.call1(clipboard, &text.into()).ok()?.dyn_into().ok()
    };
    let Some(promise) = clipboard.ok().as_ref().and_then(write) else {
        then(false);
        return;
    };
    wasm_bindgen_futures::spawn_local(async move {
        then(wasm_bindgen_futures::JsFuture::from(promise).await.is_ok());
    });
}

/// Whether there is a share sheet.
#[must_use]
pub fn can_share() -> bool {
    js_sys::Reflect::has(&window().navigator(), &"share".into()).unwrap_or(false)
}

/// Opens the share sheet with a link; whoever closes it wants nothing.
pub fn share_link(address: &str) {
    let navigator = window().navigator();
    let data = js_sys::Object::new();
    let _ = js_sys::Reflect::set(&data, &"url".into(), &address.into());
    let call = js_sys::Reflect::get(&navigator, &"share".into())
        .ok()
        .and_then(|call| call.dyn_into::<js_sys::Function>().ok());
    if let Some(promise) = call
        .and_then(|call| call.call1(&navigator, &data).ok())
        .and_then(|shared| shared.dyn_into::<js_sys::Promise>().ok())
    {
        wasm_bindgen_futures::spawn_local(async move {
            let _ = wasm_bindgen_futures::JsFuture::from(promise).await;
        });
    }
}
