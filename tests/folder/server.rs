//! A server of the folder, with the failings of real ones.

use coldseat_core::storage::folder::listing::Entry;
use coldseat_core::storage::folder::{Call, Fault, Reply};
use std::collections::BTreeMap;

/// What lies in the folder.
#[derive(Clone, Default, PartialEq)]
pub struct Tree {
    /// Texts by their paths, with how often each was written.
    pub files: BTreeMap<String, (String, u64)>,
    /// Folders, `""` for the shop's own.
    pub folders: Vec<String>,
}

/// What goes wrong with one call.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mishap {
    None,
    /// The line is cut before the server heard of it.
    CutBefore,
    /// It was done, and the line is cut before it says so.
    CutAfter,
    /// A status of 500.
    Fails,
    /// Half of it is written, or comes; as if nothing were wrong.
    Half,
    /// A list as it was some writes ago.
    Stale,
    /// It was done much later: the call is heard as cut, and done at the next.
    Delayed,
}

/// The server.
#[derive(Default)]
pub struct Server {
    pub tree: Tree,
    before: Tree,
    backup: Tree,
    writes: u64,
    pub is_full: bool,
    pub is_read_only: bool,
    pub is_away: bool,
    delayed: Vec<Call>,
}

impl Server {
    pub fn back_up(&mut self) {
        self.backup = self.tree.clone();
    }

    pub fn restore(&mut self) {
        self.tree = self.backup.clone();
    }

    pub fn empty(&mut self) {
        self.tree = Tree::default();
    }

    /// Nothing is wrong any more.
    pub fn heal(&mut self) {
        self.is_full = false;
        self.is_read_only = false;
        self.is_away = false;
        self.late();
    }

    fn late(&mut self) {
        for call in std::mem::take(&mut self.delayed) {
            self.does(&call, false);
        }
    }

    pub fn answer(&mut self, call: &Call, mishap: Mishap) -> Reply {
        if self.is_away || mishap == Mishap::CutBefore {
            return Reply::Failed(Fault::Away);
        }
        if mishap == Mishap::Fails {
            return Reply::of(call, 500, String::new());
        }
        if mishap == Mishap::Delayed {
            self.delayed.push(call.clone());
            return Reply::Failed(Fault::Away);
        }
        let is_list = matches!(call, Call::List(_));
        let reply = if is_list && mishap == Mishap::Stale {
            let now = std::mem::replace(&mut self.tree, self.before.clone());
            let reply = self.does(call, false);
            self.tree = now;
            reply
        } else {
            self.does(call, mishap == Mishap::Half)
        };
        if !is_list {
            self.late();
        }
        if mishap == Mishap::CutAfter {
            return Reply::Failed(Fault::Away);
        }
        reply
    }

    fn does(&mut self, call: &Call, is_half: bool) -> Reply {
        let half = |text: &str| -> String {
            let count = text.chars().count();
            text.chars().take(count / 2).collect()
        };
        let parent = |path: &str| {
            let at = path.trim_end_matches('/').rfind('/');
            at.map_or(String::new(), |at| path[..=at].to_owned())
        };
        let is_writing = !matches!(call, Call::List(_) | Call::Get(_));
        if is_writing && self.is_read_only {
            return Reply::of(call, 403, String::new());
        }
        if is_writing {
            self.writes += 1;
            if self.writes.is_multiple_of(7) {
                self.before = self.tree.clone();
            }
        }
        match call {
            Call::List(path) => {
                if !self.tree.folders.contains(path) {
                    return Reply::of(call, 404, String::new());
                }
                let files = self.tree.files.iter();
                let files = files
                    .map(|(name, (text, times))| (name.clone(), format!("{} {times}", text.len())));
                let folders = self.tree.folders.iter();
                let all = files.chain(folders.map(|name| (name.clone(), String::new())));
                let inside = all.filter_map(|(name, tag)| {
                    let rest = name.strip_prefix(path.as_str())?;
                    let is_in = !rest.is_empty() && !rest.trim_end_matches('/').contains('/');
                    is_in.then(|| Entry {
                        name: rest.to_owned(),
                        tag,
                    })
                });
                Reply::Listed(inside.collect())
            }
            Call::Get(path) => match self.tree.files.get(path) {
                Some((text, _)) if is_half => Reply::Text(half(text)),
                Some((text, _)) => Reply::Text(text.clone()),
                None => Reply::of(call, 404, String::new()),
            },
            Call::Put(path, text) => {
                if self.is_full {
                    return Reply::of(call, 507, String::new());
                }
                if !self.tree.folders.contains(&parent(path)) {
                    return Reply::of(call, 409, String::new());
                }
                let text = if is_half { half(text) } else { text.clone() };
                self.tree.files.insert(path.clone(), (text, self.writes));
                Reply::Done
            }
            Call::Delete(path) => {
                self.tree.files.remove(path);
                Reply::Done
            }
            Call::MakeFolder(path) => {
                if !path.is_empty() && !self.tree.folders.contains(&parent(path)) {
                    return Reply::of(call, 409, String::new());
                }
                if !self.tree.folders.contains(path) {
                    self.tree.folders.push(path.clone());
                }
                Reply::Done
            }
        }
    }
}
