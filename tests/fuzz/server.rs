//! A server of a shop's folder that answers what it likes.
//!
//! The bytes are its answers, one after the other, [`CUT`] between them; where they
//! end, or an answer is empty, it answers honestly. Whatever it says, only own files
//! are written or taken out, and what is read comes through the restore gate.

use std::collections::BTreeMap;

use coldseat_core::document::slot::peek_slot;
use coldseat_core::storage::folder::index::Index;
use coldseat_core::storage::folder::listing::{Entry, listing};
use coldseat_core::storage::folder::{Call, Event, Fault, Folder, Own, Reply};

use super::document;

/// Between two answers: no letter has this byte.
const CUT: u8 = 0xff;
/// Calls that are answered, at most.
const CALLS: u64 = 60;
/// The key of the device that asks.
const KEY: &str = "me1";
/// What an answer's first byte says of it: a status, or 0 where none comes.
const STATUS: [u16; 12] = [200, 207, 0, 201, 204, 301, 401, 403, 404, 405, 500, 507];

/// A text as a list and as an index; and the bytes as the answers of a server.
pub fn folder(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    let _ = listing(&text);
    if let Ok(index) = Index::read(&text) {
        assert_eq!(Index::read(&index.text()).as_ref(), Ok(&index));
    }
    looked_into(bytes);
}

/// A device looks into the folder of such a server.
fn looked_into(bytes: &[u8]) {
    let mut answers = bytes.split(|byte| *byte == CUT);
    let own = Own {
        key: KEY.to_owned(),
        name: "Bench".to_owned(),
        writer: 1,
    };
    let mut folder = Folder::new(own, 0);
    let mut here: BTreeMap<String, String> = BTreeMap::new();
    let mut there: BTreeMap<String, String> = BTreeMap::new();
    folder.scan(std::iter::empty());
    folder.look();
    for now in 0..CALLS {
        while let Some(name) = folder.wants().cloned() {
            folder.local(&name, here.get(&name).map(String::as_str));
        }
        let Some((ticket, call)) = folder.next(now) else {
            folder.look();
            continue;
        };
        is_own(&call);
        let reply = match answers.next().and_then(<[u8]>::split_first) {
            Some((first, rest)) => said(&call, *first, rest),
            None => honest(&call, &mut there),
        };
        for event in folder.answered(ticket, reply, None, now) {
            if let Event::Came(name, slot) = event {
                let peek = peek_slot(&slot);
                assert!(peek.is_some(), "{name} came and is no slot: {slot}");
                document(slot.as_bytes());
                here.insert(name.clone(), slot);
                folder.touch(&name);
            }
        }
    }
}

/// Nothing but own files is ever written or taken out, and no path leads out.
fn is_own(call: &Call) {
    let path = match call {
        Call::List(path) | Call::Get(path) | Call::MakeFolder(path) => path,
        Call::Put(path, _) | Call::Delete(path) => {
            let own = path.strip_prefix(KEY);
            let is_own = own.is_some_and(|rest| rest == ".index" || rest.starts_with('/'));
            assert!(is_own, "{call:?}");
            path
        }
    };
    let is_plain = |c: char| c.is_ascii_alphanumeric() || "-._/".contains(c);
    assert!(
        path.chars().all(is_plain) && !path.contains(".."),
        "{call:?}"
    );
}

/// An answer as the bytes have it.
fn said(call: &Call, first: u8, rest: &[u8]) -> Reply {
    match STATUS[usize::from(first) % STATUS.len()] {
        0 => Reply::Failed(Fault::Away),
        status => Reply::of(call, status, String::from_utf8_lossy(rest).into_owned()),
    }
}

/// An answer of a server that does what it is asked.
fn honest(call: &Call, there: &mut BTreeMap<String, String>) -> Reply {
    match call {
        Call::List(path) => {
            let inside = there.iter().filter_map(|(name, text)| {
                let rest = name.strip_prefix(path.as_str())?;
                (!rest.contains('/')).then(|| Entry {
                    name: rest.to_owned(),
                    tag: text.len().to_string(),
                })
            });
            Reply::Listed(inside.collect())
        }
        Call::Get(path) => match there.get(path) {
            Some(text) => Reply::Text(text.clone()),
            None => Reply::Missing,
        },
        Call::Put(path, text) => {
            there.insert(path.clone(), text.clone());
            Reply::Done
        }
        Call::Delete(path) => {
            there.remove(path);
            Reply::Done
        }
        Call::MakeFolder(_) => Reply::Done,
    }
}
