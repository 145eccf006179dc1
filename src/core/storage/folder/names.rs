//! What documents are called in the shop's folder.
//!
//! A copy lies under the document's name and its version: `job-ab12.0123456789abcdef.txt`.
//! A version is a digest of the text, so that the same text has the same name on
//! every device and another one never goes over it.

use crate::storage::is_id;
use crate::storage::slots::{DROPS, JOBS, SHOP};

/// Ending of copies: servers send it as text.
const ENDING: &str = ".txt";
/// Ending of the index of a device.
const INDEX: &str = ".index";
/// What the settings are called.
const SETTINGS: &str = "settings";

/// The version of a document's text: FNV-1a, 64 bits. Not proof against somebody
/// who wants two texts of one digest; who can write into the folder has no need to.
#[must_use]
pub fn version_of(text: &str) -> u64 {
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    for byte in text.bytes() {
        hash = (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
    }
    hash
}

/// What a document is called in the folder; `None` for what stays on the device:
/// the cold drop in use.
#[must_use]
pub fn short(name: &str) -> Option<String> {
    if name == SHOP {
        return Some(SETTINGS.to_owned());
    }
    let (kind, id) = match (name.strip_prefix(JOBS), name.strip_prefix(DROPS)) {
        (Some(id), _) => ("job", id),
        (None, Some(id)) => ("drop", id),
        (None, None) => return None,
    };
    is_id(id).then(|| format!("{kind}-{id}"))
}

/// The document of a name of the folder.
#[must_use]
pub fn long(short: &str) -> Option<String> {
    if short == SETTINGS {
        return Some(SHOP.to_owned());
    }
    let (kind, id) = short.split_once('-')?;
    let prefix = match kind {
        "job" => JOBS,
        "drop" => DROPS,
        _ => return None,
    };
    is_id(id).then(|| format!("{prefix}{id}"))
}

/// The file of a version of a document.
#[must_use]
pub fn file(short: &str, version: u64) -> String {
    format!("{short}.{version:016x}{ENDING}")
}

/// Document and version of a file; `None` for what is none of ours.
#[must_use]
pub fn of_file(file: &str) -> Option<(&str, u64)> {
    let (short, version) = file.strip_suffix(ENDING)?.split_once('.')?;
    long(short)?;
    Some((short, number(version)?))
}

/// A version as it is written.
pub(super) fn number(text: &str) -> Option<u64> {
    let is_plain = text.len() == 16 && text.bytes().all(|b| b"0123456789abcdef".contains(&b));
    u64::from_str_radix(text, 16).ok().filter(|_| is_plain)
}

/// The file of a device's index.
#[must_use]
pub fn index_file(key: &str) -> String {
    format!("{key}{INDEX}")
}

/// The device of an index.
#[must_use]
pub fn of_index(file: &str) -> Option<&str> {
    file.strip_suffix(INDEX).filter(|key| is_id(key))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;

    #[test]
    fn names_come_back_and_foreign_ones_are_none() {
        for name in ["coldseat/shop", "coldseat/job/ab12", "coldseat/drops/9"] {
            let short = short(name).unwrap();
            assert_eq!(long(&short).unwrap(), name);
            let file = file(&short, 0xabc);
            assert_eq!(of_file(&file), Some((short.as_str(), 0xabc)));
        }
        assert_eq!(short("coldseat/drop"), None);
        for file in [
            "job-../x.0000000000000001.txt",
            "job-a1.1.txt",
            "note.txt",
            "job-a1.000000000000000G.txt",
            "job-a1.0000000000000001.html",
        ] {
            assert_eq!(of_file(file), None, "{file}");
        }
        assert_eq!(of_index("a1.index"), Some("a1"));
        assert_eq!(of_index("../a.index"), None);
    }

    /// Out of the reference of FNV (RFC 9923): the digests of nothing and of "a".
    #[test]
    fn the_digest_is_fnv() {
        assert_eq!(version_of(""), 0xcbf2_9ce4_8422_2325);
        assert_eq!(version_of("a"), 0xaf63_dc4c_8601_ec8c);
    }
}
