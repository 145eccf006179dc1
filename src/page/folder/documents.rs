//! The documents of this device, as the shop's folder wants them: read for it, and
//! remembered when they are taken out for good.

use super::{FOLDER, with_folder};
use crate::browser;
use crate::state::State;
use crate::storage::durable;
use crate::storage::local::Local;
use crate::storage::with;
use coldseat_core::storage::Answer;
use coldseat_core::storage::Ask;
use wasm_bindgen_futures::spawn_local;

/// Documents that are read before the browser has its turn.
const SLICE: usize = 3;

/// Tells the folder the documents that it wants to know, some at a time.
pub(super) async fn feed() {
    let mut read = 0;
    while let Some(name) = with_folder(|folder| folder.wants().cloned()).flatten() {
        let content = content_of(&name).await;
        with_folder(|folder| folder.local(&name, content.as_deref()));
        read += 1;
        if read % SLICE == 0 {
            browser::breathe().await;
        }
    }
}

/// The slot of a document, wherever it lies.
async fn content_of(name: &str) -> Option<String> {
    let copies = with(|session| session.keeper().copies(&Local, name));
    if let Some(content) = copies.into_iter().next() {
        return Some(content);
    }
    if !with(|session| session.keeper().heads().any(|head| head.name == name)) {
        return None;
    }
    match durable::perform(Ask::Get(name.to_owned())).await {
        Answer::Got(Ok(content)) => content,
        _ => None,
    }
}

/// Takes documents out of both stores for good; older copies in the folder shall not
/// bring them back.
pub fn destroy(state: State, names: Vec<String>) {
    spawn_local(async move {
        if FOLDER.with_borrow(Option::is_some) {
            bury(&names).await;
        }
        state.storage.destroy(names);
    });
}

async fn bury(names: &[String]) {
    for name in names {
        if let Some(content) = content_of(name).await {
            // A store that refuses brings it back into the bin at worst.
            let _ = with(|session| session.bury(&Local, name, &content));
        }
    }
}
