//! Where letters go: the focus, what is marked in it, and letters put there by us.
//! Every call copes with an element that is not there.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;

/// The input with this id.
fn input(id: &str) -> Option<HtmlInputElement> {
    document().get_element_by_id(id)?.dyn_into().ok()
}

/// Puts the focus on an input and marks what stands in it; says whether it is there.
pub fn focus_and_select(id: &str) -> bool {
    let Some(input) = input(id) else {
        return false;
    };
    let _ = input.focus();
    input.select();
    true
}

/// What a browser calls a change by keys: put in, taken out.
const BY_KEYS: [&str; 3] = [
    "insertText",
    "insertCompositionText",
    "deleteContentBackward",
];

/// Whether an input changed by a key; not by paste, by a menu or by us.
#[must_use]
pub fn is_keyed(event: &web_sys::Event) -> bool {
    let kind = js_sys::Reflect::get(event, &"inputType".into());
    kind.ok()
        .and_then(|kind| kind.as_string())
        .is_some_and(|kind| BY_KEYS.contains(&kind.as_str()))
}

/// Nothing has the focus any more.
pub fn blur() {
    let has = document()
        .active_element()
        .and_then(|element| element.dyn_into::<web_sys::HtmlElement>().ok());
    if let Some(has) = has {
        let _ = has.blur();
    }
}

/// A reading that has the focus has it no more.
pub fn leave_reading() {
    let is_reading = document()
        .active_element()
        .is_some_and(|element| element.has_attribute("data-place"));
    if is_reading {
        blur();
    }
}

/// Types letters into the input that has the focus, over what is marked there.
pub fn insert(letters: &str) {
    let Some(input) = document()
        .active_element()
        .and_then(|element| element.dyn_into::<HtmlInputElement>().ok())
    else {
        return;
    };
    if input.read_only() {
        return;
    }
    // Places are counted in halves of UTF-16, as the browser does.
    let text: Vec<u16> = input.value().encode_utf16().collect();
    let at = |place: Option<u32>| place.map_or(text.len(), |at| (at as usize).min(text.len()));
    let from = at(input.selection_start().ok().flatten());
    let to = at(input.selection_end().ok().flatten()).max(from);
    let typed: Vec<u16> = letters.encode_utf16().collect();
    let caret = (from + typed.len()) as u32;
    let (head, tail) = (text.get(..from), text.get(to..));
    let whole = [head.unwrap_or_default(), &typed, tail.unwrap_or_default()].concat();
    input.set_value(&String::from_utf16_lossy(&whole));
    let _ = input.set_selection_range(caret, caret);
    let options = web_sys::InputEventInit::new();
    options.set_bubbles(true);
    options.set_input_type(BY_KEYS[0]);
    if let Ok(event) = web_sys::InputEvent::new_with_event_init_dict("input", &options) {
        let _ = input.dispatch_event(&event);
    }
}
