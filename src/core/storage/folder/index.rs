//! The index of a device: which versions of which documents lie in its folder.
//!
//! A line `coldseat.folder VERSION LENGTH CRC32` and JSON of that length; behind
//! it spaces, so many that two indexes written one after the other are never
//! equally long: servers tell a change by length and second. What does not fit its
//! length and sum is half written: the reader waits.

use super::names::{long, number, of_file};
use crate::job::Millis;
use crate::storage::is_id;
use litemap::LiteMap;
use serde_json::{Map, Value};

/// What the first line begins with.
const MARK: &str = "coldseat.folder";
/// The version written here.
pub const VERSION: u64 = 1;
/// Longer ones are not looked into: 4 MiB, some 50,000 documents.
pub const LONGEST: usize = 4 << 20;
/// Letters of a device's name that are kept.
pub const NAME_MOST: usize = 40;
/// Lengths of indexes differ by their numbers, up to so many.
const PAD: usize = 64;

/// An index.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Index {
    /// The key of the device.
    pub key: String,
    /// What the person calls it.
    pub name: String,
    /// The device's number in writers of values.
    pub writer: u32,
    /// It grows with every index that the device writes.
    pub number: u64,
    /// When it was written.
    pub at: Millis,
    /// Versions of documents, by what they are called in the folder.
    pub files: LiteMap<String, u64>,
    /// Documents that this device has thrown away and left for the others, and
    /// since when.
    pub left: LiteMap<String, (u64, Millis)>,
    /// Files that are named no more, and since when.
    pub old: LiteMap<String, Millis>,
    /// Files of others that could not be read: whoever has them writes them anew.
    pub wants: Vec<String>,
    /// Devices that are lost, and the number of their last index.
    pub struck: LiteMap<String, u64>,
}

/// What a text is that is no index.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoIndex {
    /// Not whole, or none of ours.
    Half,
    /// Written by a later version of the page.
    Newer,
}

impl Index {
    /// All versions it names, with those that were left for the others.
    pub fn named(&self) -> impl Iterator<Item = (&String, u64)> {
        let left = self
            .left
            .iter()
            .map(|(short, (version, _))| (short, *version));
        self.files.iter().map(|(short, v)| (short, *v)).chain(left)
    }

    /// Whether it names a version.
    #[must_use]
    pub fn names(&self, short: &str, version: u64) -> bool {
        self.files.get(short) == Some(&version)
            || self.left.get(short).is_some_and(|(v, _)| *v == version)
    }

    /// Whether both say the same, whenever they were written.
    #[must_use]
    pub fn says_as(&self, other: &Self) -> bool {
        let plain = |index: &Self| Self {
            number: 0,
            at: 0,
            ..index.clone()
        };
        plain(self) == plain(other)
    }

    /// As text.
    #[must_use]
    pub fn text(&self) -> String {
        let times = |all: &LiteMap<String, u64>| -> Map<String, Value> {
            let all = all.iter().map(|(key, at)| (key.clone(), (*at).into()));
            all.collect()
        };
        let version = |v: u64| Value::from(format!("{v:016x}"));
        let files: Map<String, Value> = self
            .files
            .iter()
            .map(|(short, v)| (short.clone(), version(*v)))
            .collect();
        let left: Map<String, Value> = self
            .left
            .iter()
            .map(|(short, (v, at))| {
                let both = Value::Array(vec![version(*v), (*at).into()]);
                (short.clone(), both)
            })
            .collect();
        let mut whole = Map::new();
        whole.insert("key".to_owned(), self.key.clone().into());
        whole.insert("name".to_owned(), self.name.clone().into());
        whole.insert("writer".to_owned(), self.writer.into());
        whole.insert("number".to_owned(), self.number.into());
        whole.insert("at".to_owned(), self.at.into());
        whole.insert("files".to_owned(), files.into());
        for (key, part) in [
            ("left", left),
            ("old", times(&self.old)),
            ("struck", times(&self.struck)),
        ] {
            if !part.is_empty() {
                whole.insert(key.to_owned(), part.into());
            }
        }
        if !self.wants.is_empty() {
            whole.insert("wants".to_owned(), self.wants.clone().into());
        }
        let json = Value::Object(whole).to_string();
        let sum = crc32fast::hash(json.as_bytes());
        let mut text = format!("{MARK} {VERSION} {} {sum:08x}\n{json}", json.len());
        let wanted = usize::try_from(self.number % PAD as u64).unwrap_or(0);
        while text.len() % PAD != wanted {
            text.push(' ');
        }
        text
    }

    /// Out of a text of the folder, whoever wrote it.
    ///
    /// # Errors
    /// [`NoIndex`] where it is none, not whole, or a later version's.
    pub fn read(text: &str) -> Result<Self, NoIndex> {
        if text.len() > LONGEST {
            return Err(NoIndex::Half);
        }
        let (head, rest) = text.split_once('\n').ok_or(NoIndex::Half)?;
        let mut words = head.split(' ');
        if words.next() != Some(MARK) {
            return Err(NoIndex::Half);
        }
        let mut word = || words.next().ok_or(NoIndex::Half);
        let version: u64 = word()?.parse().map_err(|_| NoIndex::Half)?;
        let length: usize = word()?.parse().map_err(|_| NoIndex::Half)?;
        let sum = u32::from_str_radix(word()?, 16).map_err(|_| NoIndex::Half)?;
        let json = rest.get(..length).ok_or(NoIndex::Half)?;
        if crc32fast::hash(json.as_bytes()) != sum {
            return Err(NoIndex::Half);
        }
        if version > VERSION {
            return Err(NoIndex::Newer);
        }
        if version != VERSION {
            return Err(NoIndex::Half);
        }
        let value: Value = serde_json::from_str(json).map_err(|_| NoIndex::Half)?;
        Self::of(&value).ok_or(NoIndex::Half)
    }

    fn of(value: &Value) -> Option<Self> {
        let part = |key: &str| value.get(key).and_then(Value::as_object);
        let number_at = |key: &str| value.get(key).and_then(Value::as_u64);
        let key = value.get("key")?.as_str().filter(|key| is_id(key))?;
        let name = value.get("name")?.as_str()?;
        let version = |value: &Value| number(value.as_str()?);
        // What is none of ours in it is passed over: it can be asked for no more.
        let mut index = Self {
            key: key.to_owned(),
            name: tidy(name),
            writer: u32::try_from(number_at("writer")?).ok()?,
            number: number_at("number")?,
            at: number_at("at")?,
            ..Self::default()
        };
        for (short, v) in part("files")? {
            if let Some(v) = version(v).filter(|_| long(short).is_some()) {
                index.files.insert(short.clone(), v);
            }
        }
        for (short, both) in part("left").into_iter().flatten() {
            let at = both.get(1).and_then(Value::as_u64);
            let v = both.get(0).and_then(version);
            if let Some(both) = v.zip(at).filter(|_| long(short).is_some()) {
                index.left.insert(short.clone(), both);
            }
        }
        for (file, at) in part("old").into_iter().flatten() {
            if let Some(at) = at.as_u64().filter(|_| of_file(file).is_some()) {
                index.old.insert(file.clone(), at);
            }
        }
        for (key, last) in part("struck").into_iter().flatten() {
            if let Some(last) = last.as_u64().filter(|_| is_id(key)) {
                index.struck.insert(key.clone(), last);
            }
        }
        let wants = value.get("wants").and_then(Value::as_array);
        for want in wants.into_iter().flatten().filter_map(Value::as_str) {
            if of_file(want).is_some() {
                index.wants.push(want.to_owned());
            }
        }
        Some(index)
    }
}

/// A device's name as it is kept and shown: one line, not too long.
#[must_use]
pub fn tidy(name: &str) -> String {
    let plain: String = name
        .chars()
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    let words: Vec<&str> = plain.split_whitespace().collect();
    let short: String = words.join(" ").chars().take(NAME_MOST).collect();
    short.trim_end().to_owned()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;

    fn index() -> Index {
        let mut index = Index {
            key: "ab12".to_owned(),
            name: "Surfacer tablet \u{e4}".to_owned(),
            writer: 7,
            number: 41,
            at: 1_700_000_000_000,
            wants: vec!["job-a1.0000000000000009.txt".to_owned()],
            ..Index::default()
        };
        index.files.insert("job-a1".to_owned(), 0xfeed);
        index.files.insert("settings".to_owned(), 1);
        index.left.insert("drop-b2".to_owned(), (5, 6));
        index
            .old
            .insert("job-a1.0000000000000003.txt".to_owned(), 4);
        index.struck.insert("cd34".to_owned(), 12);
        index
    }

    #[test]
    fn an_index_comes_back_and_half_of_one_waits() {
        let text = index().text();
        assert_eq!(Index::read(&text), Ok(index()));
        let whole = text.trim_end().len();
        for end in (0..whole).filter(|end| text.is_char_boundary(*end)) {
            assert_eq!(Index::read(&text[..end]), Err(NoIndex::Half), "{end}");
        }
        for at in (0..whole).filter(|at| text.as_bytes()[*at].is_ascii()) {
            let mut flipped = text.clone().into_bytes();
            flipped[at] ^= 1;
            if let Ok(flipped) = String::from_utf8(flipped) {
                assert_ne!(Index::read(&flipped), Ok(index()), "{at}");
            }
        }
    }

    #[test]
    fn two_indexes_one_after_the_other_are_never_equally_long() {
        let mut rng = fastrand::Rng::with_seed(20);
        let mut before = 0;
        for number in 1..400 {
            let mut index = index();
            index.number = number;
            index.name = "x".repeat(rng.usize(0..40));
            let length = index.text().len();
            assert_ne!(length, before);
            before = length;
        }
    }

    #[test]
    fn a_later_version_is_told_and_what_is_none_of_ours_is_passed_over() {
        let text = index().text();
        let later = text.replacen("folder 1 ", "folder 2 ", 1);
        assert_eq!(Index::read(&later), Err(NoIndex::Newer));
        let json = r#"{"key":"a","name":" x\ny ","writer":1,"number":2,"at":3,
            "files":{"job-../../x":"000000000000000a","job-b":"zz","job-c":"000000000000000a"},
            "wants":["../x",7],"old":{"index.html":1},"struck":{"../a":1}}"#;
        let sum = crc32fast::hash(json.as_bytes());
        let text = format!("{MARK} 1 {} {sum:08x}\n{json}", json.len());
        let read = Index::read(&text).unwrap();
        assert_eq!(read.name, "x y");
        let shorts: Vec<&String> = read.files.keys().collect();
        assert_eq!(shorts, ["job-c"]);
        assert!(read.wants.is_empty() && read.old.is_empty() && read.struck.is_empty());
        for text in [
            "",
            "\n",
            "coldseat.folder",
            "coldseat.folder 1 9999999999 0\n{}",
        ] {
            assert_eq!(Index::read(text), Err(NoIndex::Half));
        }
    }
}
