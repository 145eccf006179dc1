//! Jobs as files: handed to the share sheet where there is one, else saved.
//!
//! Files of jobs are named `.txt`: phones share and open text, and what is in
//! them is text.

use crate::browser;
use crate::library;
use crate::state::State;
use crate::storage::durable;
use crate::texts as t;
use crate::words::Word;
use coldseat_core::ask::document::{Words, csv, read_slot, write_jobs};
use coldseat_core::storage::Answer;
use coldseat_core::storage::Ask;
use js_sys::{Array, Function, Object, Reflect};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// Hands a text over as a file; says whether it was shared or written.
async fn hand_over(name: String, text: String, kind: &'static str) -> bool {
    let Some(shared) = share(&name, &text, kind) else {
        return browser::save_file(&name, &text, kind);
    };
    match JsFuture::from(shared).await {
        Ok(_) => true,
        Err(error) => {
            // Whoever closed the sheet wants no file either.
            let why = Reflect::get(&error, &"name".into()).ok();
            why.and_then(|why| why.as_string()).as_deref() != Some("AbortError")
                && browser::save_file(&name, &text, kind)
        }
    }
}

/// Hands a text over where nobody asks whether it was.
fn hand_over_soon(name: String, text: String, kind: &'static str) {
    spawn_local(async move {
        hand_over(name, text, kind).await;
    });
}

/// Opens the share sheet; `None` where there is none for such a file.
fn share(name: &str, text: &str, kind: &str) -> Option<js_sys::Promise> {
    let navigator = window().navigator();
    let parts = Array::of1(&text.into());
    let options = web_sys::FilePropertyBag::new();
    options.set_type(kind);
    let file = web_sys::File::new_with_str_sequence_and_options(&parts, name, &options).ok()?;
    let data = Object::new();
    Reflect::set(&data, &"files".into(), &Array::of1(&file)).ok()?;
    // Asked for by name: many browsers have neither.
    let function = |name: &str| -> Option<Function> {
        Reflect::get(&navigator, &name.into()).ok()?.dyn_into().ok()
    };
    let can = function("canShare")?.call1(&navigator, &data).ok()?;
    if can != JsValue::TRUE {
        return None;
    }
    function("share")?
        .call1(&navigator, &data)
        .ok()?
        .dyn_into()
        .ok()
}

/// A name for a file out of a job's name.
fn file_name(job: &str, ending: &str) -> String {
    let words: String = job
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { '-' })
        .take(40)
        .collect();
    let words = words.trim_matches('-');
    if words.is_empty() {
        format!("coldseat-job.{ending}")
    } else {
        format!("coldseat-{words}.{ending}")
    }
}

/// The open job as a file.
pub fn save_job(state: State) {
    let name = state
        .session
        .open
        .with_untracked(|open| open.as_ref().map(|o| o.job.name.clone()));
    if let (Some(text), Some(name)) = (state.session.open_text(), name) {
        hand_over_soon(file_name(&name, "txt"), text, "text/plain");
    }
}

/// The open job's readings as a table.
pub fn save_table(state: State) {
    let table = state.session.open.with_untracked(|open| {
        let job = &open.as_ref()?.job;
        let words = Words {
            heads: t::CSV_HEADS.map(Word::get),
            no_unit: t::CSV_NO_UNIT.get(),
            owner: &|place| t::owner(place.owner),
            reading: &|place| t::place_title(place),
            time: &browser::date,
        };
        Some((file_name(&job.name, "csv"), csv(job, words)))
    });
    if let Some((name, table)) = table {
        // With a mark of byte order spreadsheets read it as UTF-8.
        hand_over_soon(name, format!("\u{feff}{table}"), "text/csv");
    }
}

/// All that is kept on this device, jobs and those in the bin, engine sheets,
/// the settings and the cold drop, as one file; remembers when, once it is
/// shared or written.
pub fn save_all(state: State) {
    state.session.flush();
    spawn_local(async move {
        let mut texts = Vec::new();
        for name in library::all_names() {
            if let Some(text) = library::text_at_hand(&name) {
                texts.push(text);
            } else if let Answer::Got(Ok(Some(content))) = durable::perform(Ask::Get(name)).await
                && let Some(slot) = read_slot(&content)
            {
                texts.push(slot.text);
            }
        }
        let at = browser::now();
        let file = write_jobs(texts.iter().map(String::as_str), at);
        let day = browser::date(at);
        let name = format!("coldseat-jobs-{}.txt", day.get(..10).unwrap_or("all"));
        if hand_over(name, file, "text/plain").await {
            state.session.edit_shop(|shop| {
                shop.backup_at = Some(at);
            });
        }
    });
}
