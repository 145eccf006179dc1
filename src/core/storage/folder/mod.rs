//! The shop's own folder: every device writes its files there and reads those of
//! the others. No server of ours, no lock, no comparing before writing.
//!
//! Each device has a folder of its own with copies of its documents, each under a
//! new name for a new text ([`names`]), and an [`index`] of them beside it. Copies
//! go first, are read back, then the index: who finds half of something waits. What
//! another device names and this one has not is fetched and joined like a file's
//! ([`crate::storage::session`]); what comes of it is written again only where no
//! one names it. Only own files are ever written or taken out.
//!
//! [`Folder`] is told what happens and says what to ask the server next; it waits
//! for nothing and knows no clock. Whoever runs it carries the calls out, in any
//! order, and brings the replies.

pub mod index;
pub mod listing;
pub mod names;
mod plan;
mod reply;
mod round;

pub use plan::DAY;
pub use reply::{Call, Fault, Reply};

use crate::document::slot::read_slot;
use crate::job::ledger::Ledger;
use crate::job::{Millis, Place};
use crate::storage::mark;
use index::Index;
use litemap::LiteMap;
use names::{short, version_of};
use round::{Errand, Phase};
use std::collections::VecDeque;

/// What a device is in the folder.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Own {
    /// Its key: of this joining, no other's.
    pub key: String,
    /// What the person calls it.
    pub name: String,
    /// Its number in writers of values.
    pub writer: u32,
}

/// What is known of another device.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Peer {
    /// Its index as it was read last.
    pub index: Option<Index>,
    /// A later version of the page writes there: its index cannot be read.
    pub is_newer: bool,
    /// Tag of the index that was read.
    tag: String,
    /// It was there when the folder was listed last.
    is_listed: bool,
}

/// What came of a reply, for whoever runs the folder.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Event {
    /// A copy of a document of this name, as a slot: to be joined with what is here.
    Came(String, String),
    /// The own index lies in the folder under this number, to be remembered.
    Wrote(u64),
    /// The folder has less of this device than it was given: it was emptied, or an
    /// older backup took its place. What is missing is sent again.
    Older,
}

/// How this device and the folder stand.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Standing {
    /// When it was looked into last, wholly.
    pub reached: Option<Millis>,
    /// Why it is not reached, and since when.
    pub away: Option<(Fault, Millis)>,
    /// Why it does not take what is to be sent.
    pub refused: Option<Fault>,
    /// Documents that are to be sent.
    pub waiting: usize,
    /// Copies of others that do not read yet.
    pub half: usize,
    /// A later version of the page writes into it.
    pub is_newer: bool,
}

/// A document of this device.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Local {
    /// Mark of the slot.
    mark: u32,
    /// Version of its text.
    version: u64,
}

/// The folder, as one device sees it.
#[derive(Clone, Debug)]
pub struct Folder {
    own: Own,
    /// Documents of this device.
    locals: LiteMap<String, Local>,
    /// Those that changed, or may have.
    changed: LiteMap<String, ()>,
    has_scanned: bool,
    /// Slots that are to be sent.
    outbox: LiteMap<String, String>,
    /// The own index, as it is known to lie in the folder.
    published: Index,
    /// What was written there last.
    written: String,
    own_tag: String,
    /// It was read since the start.
    is_known: bool,
    /// It is not the one that was written here.
    is_foreign: bool,
    /// Whether the own folder is there, and the files in it.
    own_files: Option<LiteMap<String, ()>>,
    has_own_folder: bool,
    peers: LiteMap<String, Peer>,
    /// Versions that were joined, by their files.
    taken: LiteMap<String, ()>,
    /// Files that did not read, and how often.
    torn: LiteMap<String, u8>,
    /// Copies that lie in the folder and stand in no index yet.
    fresh: LiteMap<String, u64>,
    /// What others asked for was written again for these.
    mended: LiteMap<String, u64>,
    deleted: Vec<String>,
    /// Documents whose text is wanted although it was read.
    asking: LiteMap<String, ()>,
    /// Something changed since all was looked at.
    is_stirred: bool,
    struck: LiteMap<String, u64>,
    phase: Phase,
    is_to_look: bool,
    is_more: bool,
    queue: VecDeque<Errand>,
    flights: LiteMap<u32, Errand>,
    tickets: u32,
    refused: Option<Fault>,
    standing: Standing,
    waiting: Vec<String>,
    /// The server's clock, where it tells it.
    server: Option<Millis>,
}

impl Folder {
    /// A device that joined; `number` is that of the last index it is known to have
    /// written, 0 for none.
    #[must_use]
    pub fn new(own: Own, number: u64) -> Self {
        Self {
            published: Index {
                key: own.key.clone(),
                number,
                ..Index::default()
            },
            own,
            locals: LiteMap::new_vec(),
            changed: LiteMap::new_vec(),
            has_scanned: false,
            outbox: LiteMap::new_vec(),
            written: String::new(),
            own_tag: String::new(),
            is_known: false,
            is_foreign: false,
            own_files: None,
            has_own_folder: false,
            peers: LiteMap::new_vec(),
            taken: LiteMap::new_vec(),
            torn: LiteMap::new_vec(),
            fresh: LiteMap::new_vec(),
            mended: LiteMap::new_vec(),
            deleted: Vec::new(),
            asking: LiteMap::new_vec(),
            is_stirred: true,
            struck: LiteMap::new_vec(),
            phase: Phase::Rest,
            is_to_look: false,
            is_more: false,
            queue: VecDeque::new(),
            flights: LiteMap::new_vec(),
            tickets: 0,
            refused: None,
            standing: Standing::default(),
            waiting: Vec::new(),
            server: None,
        }
    }

    /// What this device is called.
    #[must_use]
    pub const fn own(&self) -> &Own {
        &self.own
    }

    /// Calls this device otherwise.
    pub fn rename(&mut self, name: &str) {
        self.own.name = index::tidy(name);
        self.is_stirred = true;
    }

    /// All documents of this device by their names: each is to be read once.
    pub fn scan(&mut self, names: impl IntoIterator<Item = String>) {
        let known: Vec<String> = self.locals.keys().cloned().collect();
        for name in names.into_iter().chain(known) {
            self.touch(&name);
        }
        self.has_scanned = true;
    }

    /// A document changed, or may have.
    pub fn touch(&mut self, name: &str) {
        if short(name).is_some() {
            self.changed.insert(name.to_owned(), ());
        }
    }

    /// A document that is to be read and told with [`Folder::local`].
    #[must_use]
    pub fn wants(&self) -> Option<&String> {
        self.changed.keys().next()
    }

    /// The slot of a document of this device; `None` where it is not here.
    pub fn local(&mut self, name: &str, content: Option<&str>) {
        self.changed.remove(name);
        let is_asked = self.asking.remove(name).is_some();
        let Some(short) = short(name) else { return };
        let known = self.locals.get(name).copied();
        let read = content.and_then(|content| {
            let mark = mark(content);
            let version = match known.filter(|local| local.mark == mark) {
                Some(local) => local.version,
                None => version_of(&read_slot(content)?.text),
            };
            Some((content, Local { mark, version }))
        });
        let version = read.map(|(_, local)| local.version);
        self.is_stirred |= version != known.map(|local| local.version);
        let Some((content, local)) = read else {
            self.outbox.remove(name);
            if self.locals.remove(name).is_some() {
                // Where it is not gone for good it is fetched once more.
                let prefix = format!("{short}.");
                self.taken.retain(|file, ()| !file.starts_with(&prefix));
            }
            return;
        };
        self.locals.insert(name.to_owned(), local);
        if is_asked || !self.lies_there(&short, local.version) {
            self.outbox.insert(name.to_owned(), content.to_owned());
        } else {
            self.outbox.remove(name);
        }
    }

    /// Whether some index names a version: the own one, or one of a device that is
    /// not lost.
    fn lies_there(&self, short: &str, version: u64) -> bool {
        self.published.files.get(short) == Some(&version)
            || self.readable().any(|(key, index)| {
                index.files.get(short) == Some(&version) && !self.is_struck(key)
            })
    }

    /// Indexes of other devices that are in the folder.
    fn readable(&self) -> impl Iterator<Item = (&String, &Index)> {
        let listed = self.peers.iter().filter(|(_, peer)| peer.is_listed);
        listed.filter_map(|(key, peer)| Some((key, peer.index.as_ref()?)))
    }

    /// The other devices, by their keys.
    pub fn peers(&self) -> impl Iterator<Item = (&String, &Peer)> {
        self.peers.iter()
    }

    /// What the devices are called, by their numbers in writers of values.
    pub fn names(&self) -> impl Iterator<Item = (u32, &str)> {
        let others = self.peers.values().filter_map(|peer| peer.index.as_ref());
        let own = core::iter::once((self.own.writer, self.own.name.as_str()));
        others
            .map(|index| (index.writer, index.name.as_str()))
            .chain(own)
    }

    /// Strikes a device that is lost: its copies are read as ever, but nobody counts
    /// on them. Where it writes again it is none.
    pub fn strike(&mut self, key: &str) {
        let last = self.peers.get(key).and_then(|peer| peer.index.as_ref());
        if let Some(last) = last.map(|index| index.number) {
            self.struck.insert(key.to_owned(), last);
            self.is_stirred = true;
            self.look();
        }
    }

    /// Whether a device was struck, by whomever, and has not written since.
    #[must_use]
    pub fn is_struck(&self, key: &str) -> bool {
        let Some(number) = self
            .peers
            .get(key)
            .and_then(|peer| Some(peer.index.as_ref()?.number))
        else {
            return false;
        };
        let others = self.peers.values().filter_map(|peer| peer.index.as_ref());
        let all = others.map(|index| &index.struck).chain([&self.struck]);
        let mut of_it = all.filter_map(|struck| struck.get(key));
        of_it.any(|last| *last >= number)
    }

    /// How this device and the folder stand.
    #[must_use]
    pub const fn standing(&self) -> &Standing {
        &self.standing
    }

    /// Whether a document waits to be sent.
    #[must_use]
    pub fn is_waiting(&self, name: &str) -> bool {
        let local = self.locals.get(name).zip(short(name));
        self.changed.contains_key(name)
            || local.is_some_and(|(local, short)| !self.lies_there(&short, local.version))
    }

    /// The documents that wait to be sent, as they were when the folder was looked at
    /// last.
    pub fn waiting(&self) -> impl Iterator<Item = &String> {
        self.waiting.iter()
    }

    /// The folder is to be looked into.
    pub const fn look(&mut self) {
        self.is_to_look = true;
    }

    /// Whether nothing is under way and nothing is to be looked at.
    #[must_use]
    pub fn is_quiet(&self) -> bool {
        self.phase == Phase::Rest && !self.is_to_look && self.changed.is_empty()
    }

    /// The server's time where it tells it, else this device's.
    fn time(&self, now: Millis) -> Millis {
        self.server.unwrap_or(now)
    }
}

/// The number of the device on which the reading shown at a place was entered,; `None`
/// where nothing tells.
#[must_use]
pub fn entered_on(ledger: &Ledger, place: Place) -> Option<u32> {
    Some(ledger.by.get(&place.path())?.device())
}
