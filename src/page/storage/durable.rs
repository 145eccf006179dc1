//! The second store: IndexedDB with strict durability, which answers only when
//! the data lies on the medium. Local storage is quick and at hand while the
//! program starts, but browsers write it out seconds later; a phone that dies
//! in between loses them. IndexedDB also has room for what local storage has
//! not.
//!
//! Two tables under the same names: `heads` (sequence number and row, all that
//! a list needs) and `slots` (the whole slot). A write is one transaction over
//! both, so a document is there wholly or not at all.

use coldseat_core::ask::document::{from_units, peek_slot, to_units};
use coldseat_core::storage::Answer;
use coldseat_core::storage::Ask;
use coldseat_core::storage::Head;
use coldseat_core::storage::Named;
use coldseat_core::storage::StoreFault;
use coldseat_core::storage::Write;
use coldseat_core::storage::mark;
use js_sys::{Array, Function, Promise, Reflect};
use std::cell::RefCell;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{IdbDatabase, IdbObjectStore, IdbOpenDbRequest, IdbRequest, IdbTransaction};

const NAME: &str = "coldseat";
const HEADS: &str = "heads";
const SLOTS: &str = "slots";

thread_local! {
    static OPEN: RefCell<Option<IdbDatabase>> = const { RefCell::new(None) };
}

/// Carries out what the durable store is asked for.
pub async fn perform(ask: Ask) -> Answer {
    match ask {
        Ask::Heads => Answer::Heads(heads().await),
        Ask::Get(name) => Answer::Got(get(&name).await),
        Ask::Put(writes) => Answer::Put(put(&writes).await),
        Ask::Remove(names) => Answer::Removed(remove(&names).await),
    }
}

/// Writes slots; done when they lie on the medium. A name under which there is
/// another slot than the one that is known is left alone, for another tab wrote
/// it: it is returned with what is there.
///
/// # Errors
/// [`StoreFault`] where the browser has no such store or no room; nothing is
/// written then.
async fn put(writes: &[Write]) -> Result<Vec<Named>, StoreFault> {
    let change = change().await?;
    let mut others = Vec::new();
    for Write {
        name,
        content,
        known,
    } in writes
    {
        let key = JsValue::from_str(name);
        let there = table_of(&change, SLOTS)?.get(&key).map_err(full)?;
        if let Some(there) = answer(&there).await?.as_string()
            && there != *content
            && Some(mark(&there)) != *known
        {
            others.push((name.clone(), there));
            continue;
        }
        let head = peek_slot(content).map_or_else(String::new, |peek| {
            let row = to_units(&peek.row);
            format!("{} {} {row}", peek.sequence, mark(content))
        });
        for (table, text) in [(HEADS, &head), (SLOTS, content)] {
            let value = JsValue::from_str(text);
            table_of(&change, table)?
                .put_with_key(&value, &key)
                .map_err(full)?;
        }
    }
    done(&change).await?;
    Ok(others)
}

/// Takes documents out, all or none.
///
/// # Errors
/// As [`put`].
async fn remove(names: &[String]) -> Result<(), StoreFault> {
    let change = change().await?;
    for name in names {
        for table in [HEADS, SLOTS] {
            table_of(&change, table)?
                .delete(&JsValue::from_str(name))
                .map_err(full)?;
        }
    }
    done(&change).await
}

/// The slot under a name.
///
/// # Errors
/// [`StoreFault::Blocked`] where the browser has no such store.
pub async fn get(name: &str) -> Result<Option<String>, StoreFault> {
    let reading = open().await?.transaction_with_str(SLOTS).map_err(blocked)?;
    let request = table_of(&reading, SLOTS)?
        .get(&JsValue::from_str(name))
        .map_err(blocked)?;
    Ok(answer(&request).await?.as_string())
}

/// Heads of all documents.
///
/// # Errors
/// [`StoreFault::Blocked`] where the browser has no such store.
async fn heads() -> Result<Vec<Head>, StoreFault> {
    let reading = open().await?.transaction_with_str(HEADS).map_err(blocked)?;
    let table = table_of(&reading, HEADS)?;
    let names = table.get_all_keys().map_err(blocked)?;
    let texts = table.get_all().map_err(blocked)?;
    let names = Array::from(&answer(&names).await?);
    let texts = Array::from(&answer(&texts).await?);
    Ok(names
        .iter()
        .zip(texts.iter())
        .filter_map(|(name, text)| {
            let text = text.as_string()?;
            let (sequence, rest) = text.split_once(' ')?;
            let (mark, row) = rest.split_once(' ')?;
            Some(Head {
                name: name.as_string()?,
                sequence: sequence.parse().ok()?,
                mark: mark.parse().ok()?,
                row: from_units(row)?,
            })
        })
        .collect())
}

fn blocked<T>(_: T) -> StoreFault {
    StoreFault::Blocked
}

fn full<T>(_: T) -> StoreFault {
    StoreFault::Full
}

fn table_of(transaction: &IdbTransaction, name: &str) -> Result<IdbObjectStore, StoreFault> {
    transaction.object_store(name).map_err(blocked)
}

/// A transaction over both tables that is done when it lies on the medium.
async fn change() -> Result<IdbTransaction, StoreFault> {
    let database = open().await?;
    let tables = Array::of2(&HEADS.into(), &SLOTS.into());
    let options = js_sys::Object::new();
    Reflect::set(&options, &"durability".into(), &"strict".into()).map_err(blocked)?;
    // web-sys has the options of a transaction behind a compiler flag only.
    let begin: Function = Reflect::get(&database, &"transaction".into())
        .and_then(JsCast::dyn_into)
        .map_err(blocked)?;
    begin
        .call3(&database, &tables, &"readwrite".into(), &options)
        .and_then(JsCast::dyn_into)
        .map_err(blocked)
}

async fn done(transaction: &IdbTransaction) -> Result<(), StoreFault> {
    let promise = Promise::new(&mut |yes, no| {
        transaction.set_oncomplete(Some(&yes));
        transaction.set_onabort(Some(&no));
        transaction.set_onerror(Some(&no));
    });
    JsFuture::from(promise).await.map(drop).map_err(full)
}

async fn answer(request: &IdbRequest) -> Result<JsValue, StoreFault> {
    let promise = Promise::new(&mut |yes, no| {
        request.set_onsuccess(Some(&yes));
        request.set_onerror(Some(&no));
    });
    JsFuture::from(promise).await.map_err(blocked)?;
    request.result().map_err(blocked)
}

async fn open() -> Result<IdbDatabase, StoreFault> {
    if let Some(database) = OPEN.with_borrow(Clone::clone) {
        return Ok(database);
    }
    let factory = web_sys::window()
        .and_then(|window| window.indexed_db().ok().flatten())
        .ok_or(StoreFault::Blocked)?;
    let request: IdbOpenDbRequest = factory.open_with_u32(NAME, 1).map_err(blocked)?;
    let upgrade = {
        let request = request.clone();
        Closure::once_into_js(move || {
            let Ok(database) = request.result().and_then(JsCast::dyn_into::<IdbDatabase>) else {
                return;
            };
            for table in [HEADS, SLOTS] {
                // What the browser refuses here fails the opening.
                let _ = database.create_object_store(table);
            }
        })
    };
    request.set_onupgradeneeded(upgrade.dyn_ref());
    // Another page keeps an older or later form of it open: no answer would come
    // before that page is closed.
    let blocked_by = {
        let request = request.clone();
        Closure::once_into_js(move || {
            if let Some(fail) = request.onerror() {
                let _ = fail.call0(&JsValue::NULL);
            }
        })
    };
    request.set_onblocked(blocked_by.dyn_ref());
    let database: IdbDatabase = answer(&request).await?.dyn_into().map_err(blocked)?;
    // Closed by the browser, or in the way of a later version: opened anew
    // when it is needed.
    let forget = Closure::<dyn FnMut()>::new(|| {
        if let Some(database) = OPEN.with_borrow_mut(Option::take) {
            database.close();
        }
    })
    .into_js_value();
    database.set_onclose(forget.dyn_ref());
    database.set_onversionchange(forget.dyn_ref());
    OPEN.set(Some(database.clone()));
    Ok(database)
}
