//! What is asked of the server of a folder, and what its answers mean.

use super::listing::{Entry, listing};

/// What the server is asked; paths begin in the shop's folder.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Call {
    /// What lies in a folder: `PROPFIND`, depth 1.
    List(String),
    /// The text of a file: `GET`.
    Get(String),
    /// A text into a file: `PUT`.
    Put(String, String),
    /// Take a file out: `DELETE`.
    Delete(String),
    /// Make a folder: `MKCOL`.
    MakeFolder(String),
}

/// Why the folder does not do as it is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// Nobody answers, or not in time, or the line was cut.
    Away,
    /// It asks for name and password.
    Locked,
    /// It does not let anything be written.
    ReadOnly,
    /// There is no room.
    Full,
    /// It fails, or what was written does not come back.
    Broken,
    /// It is no such folder: it cannot say what lies in it.
    NoFolder,
}

/// What the server answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reply {
    /// What lies in the folder.
    Listed(Vec<Entry>),
    /// The text of the file.
    Text(String),
    /// Done.
    Done,
    /// There is no such file or folder.
    Missing,
    /// Not done.
    Failed(Fault),
}

impl Reply {
    /// What an answer of HTTP means: its status, and the text that came with it.
    #[must_use]
    pub fn of(call: &Call, status: u16, text: String) -> Self {
        let is_reading = matches!(call, Call::List(_) | Call::Get(_));
        match (call, status) {
            (Call::List(_), 207) => match listing(&text) {
                Some(entries) => Self::Listed(entries),
                None => Self::Failed(Fault::Broken),
            },
            (Call::List(_), 200 | 400 | 405 | 415 | 501) => Self::Failed(Fault::NoFolder),
            (Call::Get(_), 200) => Self::Text(text),
            (Call::Put(..), 200 | 201 | 204) | (Call::Delete(_), 200 | 202 | 204 | 404 | 410) => {
                Self::Done
            }
            // Some say 405 for one that is there, some 301.
            (Call::MakeFolder(_), 200 | 201 | 301 | 405) => Self::Done,
            (_, 404 | 409 | 410) => Self::Missing,
            (_, 401) => Self::Failed(Fault::Locked),
            (_, 403 | 405 | 423) if !is_reading => Self::Failed(Fault::ReadOnly),
            (_, 403) => Self::Failed(Fault::Locked),
            (_, 413 | 507) => Self::Failed(Fault::Full),
            _ => Self::Failed(Fault::Broken),
        }
    }
}
