//! What is to be fetched, sent, named and cleaned up.

use super::index::Index;
use super::names::{file, long, of_file, short};
use super::round::{Errand, TORN};
use super::{Folder, Peer};
use crate::job::Millis;
use crate::numerics::order::in_order;
use litemap::LiteMap;

/// Copies that are fetched or sent in one look; the others in the next.
const MOST: usize = 120;
/// Files taken out in one look.
const CLEANED: usize = 20;
/// So long a file is kept that the own index names no more: a day.
pub const DAY: Millis = 24 * 60 * 60 * 1000;
/// So long a document that was thrown away is left for the others.
const LEFT: Millis = 30 * DAY;

impl Folder {
    /// Which indexes are to be read: those that changed since.
    pub(super) fn plan_indexes(&mut self, found: Vec<(String, String)>) {
        let before: Vec<String> = self.listed().cloned().collect();
        for key in &before {
            if let Some(peer) = self.peers.get_mut(key) {
                peer.is_listed = false;
            }
        }
        let mut is_own_listed = false;
        for (key, tag) in found {
            if key == self.own.key {
                is_own_listed = true;
                if !self.is_known || tag.is_empty() || tag != self.own_tag {
                    self.queue.push_back(Errand::Index(key, tag));
                }
                continue;
            }
            if !self.peers.contains_key(&key) {
                self.peers.insert(key.clone(), Peer::default());
            }
            let Some(peer) = self.peers.get_mut(&key) else {
                continue;
            };
            peer.is_listed = true;
            let is_read = peer.index.is_some() || peer.is_newer;
            if !is_read || tag.is_empty() || tag != peer.tag {
                self.queue.push_back(Errand::Index(key, tag));
            }
        }
        if !is_own_listed && (!self.is_known || !self.written.is_empty()) {
            // Emptied? A list may be an old one: it is asked for by its name.
            let key = self.own.key.clone();
            self.queue.push_back(Errand::Index(key, String::new()));
        }
        let is_same = self.listed().eq(before.iter());
        self.is_stirred |= !is_same || !self.queue.is_empty();
    }

    fn listed(&self) -> impl Iterator<Item = &String> {
        let listed = self.peers.iter().filter(|(_, peer)| peer.is_listed);
        listed.map(|(key, _)| key)
    }

    /// What lies in the own folder; what does not is named no more.
    pub(super) fn has_files(&mut self, files: Vec<String>) {
        let files: LiteMap<String, ()> = files.into_iter().map(|file| (file, ())).collect();
        let lies = |short: &String, v: u64| files.contains_key(&file(short, v));
        self.published.files.retain(|short, v| lies(short, *v));
        self.published.left.retain(|short, (v, _)| lies(short, *v));
        self.fresh.retain(|short, v| lies(short, *v));
        self.own_files = Some(files);
        self.is_stirred = true;
    }

    /// Which copies are to be fetched: versions that are named and not here.
    pub(super) fn plan_copies(&mut self) {
        let mut wanted: LiteMap<String, Vec<String>> = LiteMap::new_vec();
        let mut named: LiteMap<String, ()> = LiteMap::new_vec();
        let own = (&self.own.key, &self.published);
        for (key, index) in self.readable().chain([own]) {
            let is_own = *key == self.own.key;
            for (short, version) in index.named() {
                let Some(name) = long(short) else { continue };
                let file = file(short, version);
                let local = self.locals.get(&name);
                // What this device sent is part of what it has.
                let is_here = local
                    .is_some_and(|local| local.version == version || (is_own && !self.is_foreign));
                if !is_here && !self.taken.contains_key(&file) {
                    let of = wanted.get(&file).cloned().unwrap_or_default();
                    wanted.insert(file.clone(), [of, vec![key.clone()]].concat());
                }
                named.insert(file, ());
            }
        }
        self.taken.retain(|file, ()| named.contains_key(file));
        self.torn.retain(|file, _| named.contains_key(file));
        // What did not read comes last, from whoever else has it.
        let often = |file: &String| self.torn.get(file).copied().unwrap_or(0);
        let all: Vec<(u8, String, Vec<String>)> = wanted
            .into_iter()
            .map(|(file, keys)| (often(&file), file, keys))
            .collect();
        self.is_more |= all.iter().filter(|(often, ..)| *often == 0).count() > MOST;
        let all = in_order(all, |a, b| a.0.cmp(&b.0).then(a.1.cmp(&b.1)));
        for (often, file, keys) in all.into_iter().take(MOST) {
            let at = usize::from(often) % keys.len().max(1);
            if let Some(key) = keys.get(at) {
                self.queue.push_back(Errand::Copy(key.clone(), file));
            }
        }
    }

    /// Versions that others could not read and this device has.
    fn asked_for(&self) -> Vec<(String, u64, String, u64)> {
        let mut all = Vec::new();
        for (key, index) in self.readable() {
            for want in &index.wants {
                let Some((short, version)) = of_file(want) else {
                    continue;
                };
                let local = long(short).and_then(|name| self.locals.get(&name));
                let is_mine = local.is_some_and(|local| local.version == version);
                let id = format!("{key} {want}");
                if is_mine && self.mended.get(&id) != Some(&index.number) {
                    all.push((short.to_owned(), version, id, index.number));
                }
            }
        }
        all
    }

    /// Which copies are to be sent: those that nobody names, and those that were
    /// asked for. Says whether there is any.
    pub(super) fn plan_sending(&mut self) -> bool {
        let asked = self.asked_for();
        let mut to_send: Vec<(String, String, u64)> = Vec::new();
        for (name, local) in &self.locals {
            let Some(short) = short(name) else { continue };
            let is_asked = asked
                .iter()
                .any(|(s, v, ..)| *s == short && *v == local.version);
            let is_fresh = self.fresh.get(&short) == Some(&local.version);
            if is_asked || !(is_fresh || self.lies_there(&short, local.version)) {
                to_send.push((name.clone(), short, local.version));
            }
        }
        self.is_more |= to_send.len() > MOST;
        to_send.truncate(MOST);
        let lacks: Vec<String> = to_send
            .iter()
            .filter(|(name, ..)| !self.outbox.contains_key(name))
            .map(|(name, ..)| name.clone())
            .collect();
        if !lacks.is_empty() {
            for name in lacks {
                // So that its text is kept when it is read.
                self.asking.insert(name.clone(), ());
                self.touch(&name);
            }
            return true;
        }
        for (name, short, version) in &to_send {
            if let Some(slot) = self.outbox.get(name) {
                let errand = Errand::Send(short.clone(), *version, slot.clone());
                self.queue.push_back(errand);
            }
        }
        if self.has_own_folder {
            for (_, _, id, number) in asked {
                self.mended.insert(id, number);
            }
        }
        !to_send.is_empty()
    }

    /// The own index as it is to be; `None` where it says nothing new.
    pub(super) fn next_index(&self, now: Millis) -> Option<Index> {
        let at = self.time(now);
        let before = &self.published;
        let mut index = Index {
            key: self.own.key.clone(),
            name: self.own.name.clone(),
            writer: self.own.writer,
            number: before.number.saturating_add(1),
            at,
            struck: self.struck.clone(),
            ..Index::default()
        };
        for (short, version) in &before.files {
            match long(short).map(|name| self.locals.get(&name)) {
                Some(Some(local)) if local.version == *version => {
                    index.files.insert(short.clone(), *version);
                }
                Some(None) => drop(index.left.insert(short.clone(), (*version, at))),
                _ => {}
            }
        }
        for (short, (version, since)) in &before.left {
            match long(short).map(|name| self.locals.get(&name)) {
                Some(Some(local)) if local.version == *version => {
                    index.files.insert(short.clone(), *version);
                }
                Some(None) if at.saturating_sub(*since) < LEFT => {
                    index.left.insert(short.clone(), (*version, *since));
                }
                _ => {}
            }
        }
        for (short, version) in &self.fresh {
            let local = long(short).and_then(|name| self.locals.get(&name));
            if local.is_some_and(|local| local.version == *version) {
                index.files.insert(short.clone(), *version);
            }
        }
        let once_named = before.named().map(|(short, v)| file(short, v));
        let lying = self.own_files.iter().flat_map(LiteMap::keys).cloned();
        for file in once_named.chain(lying) {
            let Some((short, version)) = of_file(&file) else {
                continue;
            };
            if !index.names(short, version) && !self.deleted.contains(&file) {
                let since = before.old.get(&file).copied().unwrap_or(at);
                index.old.insert(file, since.min(at));
            }
        }
        let torn = self.torn.iter().filter(|(_, often)| **often >= TORN);
        index.wants = torn.map(|(file, _)| file.clone()).take(MOST).collect();
        (!index.says_as(before)).then_some(index)
    }

    /// Which own files are to be taken out: those that the index in the folder has not
    /// named for a day.
    pub(super) fn plan_cleaning(&mut self, now: Millis) {
        let at = self.time(now);
        let due = self.published.old.iter().filter(|(file, since)| {
            let is_named = of_file(file).is_none_or(|(short, v)| self.published.names(short, v));
            !is_named && at.saturating_sub(**since) >= DAY && !self.deleted.contains(file)
        });
        let due: Vec<String> = due.map(|(file, _)| file.clone()).take(CLEANED).collect();
        self.queue.extend(due.into_iter().map(Errand::Delete));
    }
}
