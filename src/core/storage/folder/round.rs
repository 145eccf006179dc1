//! One look at the folder, call by call: what lies there, indexes that changed,
//! copies that are not here, then what is to be sent, and last the own index.

use super::index::{Index, NoIndex};
use super::names::{file, index_file, long, of_index};
use super::{Call, Event, Fault, Folder, Reply};
use crate::document::slot::peek_slot;
use crate::job::Millis;

/// Calls under way at a time.
const AT_ONCE: usize = 6;
/// A file that did not read so often is asked for in the own index.
pub(super) const TORN: u8 = 2;

/// How far a look has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Phase {
    Rest,
    List,
    Indexes,
    OwnFiles,
    Copies,
    Send,
    Write,
    Clean,
    End,
}

/// A call, and what it is for.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Errand {
    List,
    MakeShop,
    /// The index of a device, its tag.
    Index(String, String),
    OwnFiles,
    MakeOwn,
    /// A copy: of which device, its file.
    Copy(String, String),
    /// A copy to be sent: its document's name in the folder, version, slot.
    Send(String, u64, String),
    /// The same, read back.
    Back(String, u64, String),
    Write(Box<Index>, String),
    WriteBack(Box<Index>, String),
    Delete(String),
}

impl Folder {
    fn call(&self, errand: &Errand) -> Call {
        let own = |file: &str| format!("{}/{file}", self.own.key);
        match errand {
            Errand::List => Call::List(String::new()),
            Errand::MakeShop => Call::MakeFolder(String::new()),
            Errand::Index(key, _) => Call::Get(index_file(key)),
            Errand::OwnFiles => Call::List(own("")),
            Errand::MakeOwn => Call::MakeFolder(own("")),
            Errand::Copy(key, file) => Call::Get(format!("{key}/{file}")),
            Errand::Send(short, version, slot) => {
                Call::Put(own(&file(short, *version)), slot.clone())
            }
            Errand::Back(short, version, _) => Call::Get(own(&file(short, *version))),
            Errand::Write(_, text) => Call::Put(index_file(&self.own.key), text.clone()),
            Errand::WriteBack(..) => Call::Get(index_file(&self.own.key)),
            Errand::Delete(file) => Call::Delete(own(file)),
        }
    }

    /// What the server is to be asked next, and the ticket its reply is brought
    /// with. Nothing: calls are under way, a document is wanted, or all is done.
    pub fn next(&mut self, now: Millis) -> Option<(u32, Call)> {
        loop {
            if self.flights.len() >= AT_ONCE {
                return None;
            }
            if let Some(errand) = self.queue.pop_front() {
                let call = self.call(&errand);
                self.tickets = self.tickets.wrapping_add(1);
                self.flights.insert(self.tickets, errand);
                return Some((self.tickets, call));
            }
            if !self.flights.is_empty() || !self.goes_on(now) {
                return None;
            }
        }
    }

    /// The next phase begins; `false` where there is none, or it must wait.
    fn goes_on(&mut self, now: Millis) -> bool {
        self.phase = match self.phase {
            Phase::Rest => {
                if !core::mem::take(&mut self.is_to_look) {
                    return false;
                }
                self.is_more = false;
                self.refused = None;
                self.queue.push_back(Errand::List);
                Phase::List
            }
            Phase::List => Phase::Indexes,
            Phase::Indexes => {
                if self.own_files.is_none() {
                    self.queue.push_back(Errand::OwnFiles);
                }
                Phase::OwnFiles
            }
            Phase::OwnFiles => {
                if self.waits_for_documents() {
                    return false;
                }
                if self.is_stirred {
                    self.plan_copies();
                    Phase::Copies
                } else {
                    Phase::Write
                }
            }
            Phase::Copies => Phase::Send,
            Phase::Send => {
                if self.waits_for_documents() {
                    return false;
                }
                let goes = self.refused.is_none() && self.plan_sending();
                if self.waits_for_documents() {
                    return false;
                }
                let writes = self.refused.is_none() && !self.has_own_folder;
                if writes && (goes || self.next_index(now).is_some()) {
                    self.queue.clear();
                    self.queue.push_back(Errand::MakeOwn);
                    self.has_own_folder = true;
                    Phase::Send
                } else {
                    Phase::Write
                }
            }
            Phase::Write => {
                let is_refused = self.refused.is_some() && self.fresh.is_empty();
                let index = if self.is_stirred {
                    self.next_index(now)
                } else {
                    None
                };
                if let Some(index) = index.filter(|_| !is_refused) {
                    let text = index.text();
                    self.queue.push_back(Errand::Write(Box::new(index), text));
                }
                Phase::Clean
            }
            Phase::Clean => {
                self.plan_cleaning(now);
                Phase::End
            }
            Phase::End => {
                self.ends(now);
                return self.is_to_look;
            }
        };
        true
    }

    /// Whether documents of this device are to be read before it goes on.
    fn waits_for_documents(&self) -> bool {
        !self.has_scanned || !self.changed.is_empty()
    }

    /// A look is over.
    fn ends(&mut self, now: Millis) {
        self.phase = Phase::Rest;
        self.is_to_look |= self.is_more && self.refused.is_none();
        self.standing.reached = Some(now);
        self.standing.away = None;
        self.standing.refused = self.refused;
        if self.is_stirred {
            self.tell();
        }
        let all = self.standing.waiting == 0 && self.torn.is_empty();
        self.is_stirred = self.is_more || self.refused.is_some() || !all;
    }

    /// Counts what the standing tells.
    pub(super) fn tell(&mut self) {
        let waiting = self.locals.keys().filter(|name| self.is_waiting(name));
        self.waiting = waiting.cloned().collect();
        self.standing.waiting = self.waiting.len();
        self.standing.half = self.torn.len();
        self.standing.is_newer = self.peers.values().any(|peer| peer.is_newer);
    }

    /// The folder is not reached: what is under way is given up.
    pub(super) fn fails(&mut self, fault: Fault, now: Millis) {
        self.queue.clear();
        self.flights.clear();
        self.phase = Phase::Rest;
        self.is_stirred = true;
        let since = self.standing.away.map_or(now, |(_, since)| since);
        self.standing.away = Some((fault, since));
        self.tell();
    }

    /// What the server replied; `at` is the time it told. Replies to what was given
    /// up are nothing.
    pub fn answered(
        &mut self,
        ticket: u32,
        reply: Reply,
        at: Option<Millis>,
        now: Millis,
    ) -> Vec<Event> {
        let Some(errand) = self.flights.remove(&ticket) else {
            return Vec::new();
        };
        self.server = at.or(self.server);
        match (errand, reply) {
            (Errand::List, Reply::Listed(entries)) => {
                let found = entries.into_iter().filter_map(|entry| {
                    let key = of_index(&entry.name)?.to_owned();
                    Some((key, entry.tag))
                });
                self.plan_indexes(found.collect());
            }
            (Errand::List, Reply::Missing) => self.queue.push_back(Errand::MakeShop),
            (Errand::MakeShop, Reply::Done) => {
                self.plan_indexes(Vec::new());
            }
            (Errand::Index(key, tag), reply) if key == self.own.key => {
                return self.own_index(reply, tag, now);
            }
            (Errand::Index(key, tag), Reply::Text(text)) => self.peer_index(key, tag, &text),
            // Gone since it was listed, or not there yet: the next look tells.
            (Errand::Index(..), Reply::Missing) => {}
            (Errand::OwnFiles, Reply::Listed(entries)) => {
                self.has_own_folder = true;
                self.has_files(entries.into_iter().map(|entry| entry.name).collect());
            }
            (Errand::OwnFiles, Reply::Missing) => self.has_files(Vec::new()),
            (Errand::MakeOwn, Reply::Done) => {}
            (Errand::Copy(_, file), reply) => return self.copy(file, reply, now),
            (Errand::Send(short, version, slot), Reply::Done) => {
                self.queue.push_back(Errand::Back(short, version, slot));
            }
            (Errand::Back(short, version, slot), Reply::Text(text)) if text == slot => {
                if let Some(files) = &mut self.own_files {
                    files.insert(file(&short, version), ());
                }
                if let Some(name) = long(&short) {
                    self.outbox.remove(&name);
                }
                self.fresh.insert(short, version);
            }
            (Errand::Write(index, text), Reply::Done) => {
                self.queue.push_back(Errand::WriteBack(index, text));
            }
            (Errand::WriteBack(index, text), Reply::Text(back)) if back == text => {
                let number = index.number;
                self.published = *index;
                self.written = text;
                self.is_known = true;
                self.is_foreign = false;
                self.fresh.clear();
                self.deleted.clear();
                return vec![Event::Wrote(number)];
            }
            (Errand::Delete(file), Reply::Done) => {
                if let Some(files) = &mut self.own_files {
                    files.remove(&file);
                }
                self.deleted.push(file);
                self.is_stirred = true;
            }
            // Not to be taken out: some other day.
            (Errand::Delete(_), _) => {}
            (
                Errand::Send(..)
                | Errand::Back(..)
                | Errand::Write(..)
                | Errand::WriteBack(..)
                | Errand::MakeOwn,
                reply,
            ) => self.refuses(reply, now),
            (Errand::MakeShop, Reply::Failed(Fault::ReadOnly) | Reply::Missing) => {
                self.fails(Fault::NoFolder, now);
            }
            (_, Reply::Failed(fault)) => self.fails(fault, now),
            _ => self.fails(Fault::Broken, now),
        }
        Vec::new()
    }

    /// The folder did not take what it was sent: what is in it is read all the same.
    fn refuses(&mut self, reply: Reply, now: Millis) {
        let fault = match reply {
            Reply::Failed(Fault::Away) => return self.fails(Fault::Away, now),
            Reply::Failed(fault) => fault,
            // Its folder is gone, or it has kept something else.
            _ => Fault::Broken,
        };
        self.refused = Some(fault);
        self.own_files = None;
        self.has_own_folder = false;
        self.queue
            .retain(|errand| !matches!(errand, Errand::Send(..) | Errand::Write(..)));
    }

    /// The index of another device.
    fn peer_index(&mut self, key: String, tag: String, text: &str) {
        let Some(peer) = self.peers.get_mut(&key) else {
            return;
        };
        match Index::read(text) {
            // What says it is another's is nobody's.
            Ok(index) if index.key == key => {
                peer.index = Some(index);
                peer.is_newer = false;
                peer.tag = tag;
            }
            Ok(_) | Err(NoIndex::Half) => {}
            Err(NoIndex::Newer) => {
                peer.is_newer = true;
                peer.tag = tag;
            }
        }
    }

    /// The own index, as it lies there.
    fn own_index(&mut self, reply: Reply, tag: String, now: Millis) -> Vec<Event> {
        let found = match reply {
            Reply::Text(text) if self.is_known && text == self.written => {
                self.own_tag = tag;
                return Vec::new();
            }
            Reply::Text(text) => match Index::read(&text) {
                Ok(index) if index.key == self.own.key => {
                    self.written = text;
                    Some(index)
                }
                Ok(_) | Err(NoIndex::Half) => None,
                Err(NoIndex::Newer) => {
                    // This device ran a later page: what that wrote is not written over.
                    self.fails(Fault::NoFolder, now);
                    self.standing.is_newer = true;
                    return Vec::new();
                }
            },
            Reply::Missing => None,
            Reply::Failed(fault) => {
                self.fails(fault, now);
                return Vec::new();
            }
            Reply::Listed(_) | Reply::Done => None,
        };
        let number = self.published.number;
        let is_older = found.as_ref().map_or(0, |index| index.number) < number;
        self.is_foreign = found.is_some();
        self.is_known = true;
        self.is_stirred = true;
        self.own_tag = if found.is_some() { tag } else { String::new() };
        let mut found = found.unwrap_or_else(|| {
            self.written.clear();
            self.fresh.clear();
            Index {
                key: self.own.key.clone(),
                ..Index::default()
            }
        });
        found.number = found.number.max(number);
        for (key, last) in &found.struck {
            self.struck.insert(key.clone(), *last);
        }
        self.published = found;
        self.own_files = None;
        if is_older {
            return vec![Event::Older];
        }
        Vec::new()
    }

    /// A copy of a document of another device.
    fn copy(&mut self, file: String, reply: Reply, now: Millis) -> Vec<Event> {
        match reply {
            Reply::Text(text) if peek_slot(&text).is_some() => {
                let name = super::names::of_file(&file).and_then(|(short, _)| long(short));
                self.torn.remove(&file);
                self.taken.insert(file, ());
                let Some(name) = name else { return Vec::new() };
                // What comes of it is to be known before it goes on.
                self.touch(&name);
                vec![Event::Came(name, text)]
            }
            Reply::Failed(Fault::Away | Fault::Broken | Fault::Full) => {
                self.fails(
                    match reply {
                        Reply::Failed(fault) => fault,
                        _ => Fault::Broken,
                    },
                    now,
                );
                Vec::new()
            }
            // Half written, or gone: it waits.
            _ => {
                let often = self.torn.get(&file).copied().unwrap_or(0);
                self.torn.insert(file, often.saturating_add(1));
                Vec::new()
            }
        }
    }
}
