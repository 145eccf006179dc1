//! Jobs, and what else is kept, in a file: one as its document, many as lines.
//!
//! A file of many jobs begins with a line
//! `{"kind":"coldseat.jobs","version":1,…}`; every line after it is a slot
//! ([`super::slot`]). A file that was cut off or damaged gives up the lines that
//! are whole. What the page saves when it cannot start ("rescued": everything
//! in local storage as it was found) is read as well.
//!
//! Reading is total and bounded: any text is answered.

use super::Body;
use super::restore::{Restored, Unreadable, restore};
use super::slot::{Slot, read_slot, write_slot};
use litemap::LiteMap;
use serde_json::{Map, Value};

/// Kind of a file of many jobs.
const JOBS: &str = "coldseat.jobs";
/// Version of such a file; what its lines hold says its own.
const VERSION: u64 = 1;
/// Longer files are not looked into: 32 MiB, about nine thousand jobs of eight
/// cylinders.
pub const FILE_MOST: usize = 32 << 20;
/// Bytes that the lines of a file may unpack to in all: 128 MiB, about six thousand
/// jobs of eight cylinders. A line alone is bounded by what packs, not their sum.
const UNPACKED_MOST: usize = 128 << 20;
/// Lines that are looked at.
const LINES_MOST: usize = 20_000;

/// A job found in a file, or what stands in its place.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// Its key, where it has one: copies of one job know each other by it.
    pub id: Option<String>,
    /// What came of it.
    pub restored: Restored,
}

/// What a file is that could not be used as a whole.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileFault {
    /// Too long.
    TooLong,
    /// Not one of ours, or nothing whole in it.
    Unreadable(Unreadable),
    /// A file of many jobs of a later version.
    Newer(u64),
}

/// A file of many jobs, out of their documents.
#[must_use]
pub fn write_jobs<'a>(texts: impl Iterator<Item = &'a str>, at: u64) -> String {
    let mut head = Map::new();
    head.insert("kind".to_owned(), JOBS.into());
    head.insert("version".to_owned(), VERSION.into());
    head.insert("app".to_owned(), env!("CARGO_PKG_VERSION").into());
    head.insert("made".to_owned(), at.into());
    let mut file = Value::Object(head).to_string();
    for text in texts {
        file.push('\n');
        // A document too long to be packed keeps its line's end inside the slot;
        // its JSON has none, so it can stand on one line as it is.
        let slot = write_slot(&Slot {
            sequence: 1,
            row: Vec::new(),
            text: text.to_owned(),
        });
        file.push_str(if slot.contains('\n') { text } else { &slot });
    }
    file
}

/// The jobs in a file.
///
/// # Errors
/// [`FileFault`] where there is none to be had.
pub fn read_file(text: &str) -> Result<Vec<Found>, FileFault> {
    if text.len() > FILE_MOST {
        return Err(FileFault::TooLong);
    }
    let text = text.trim_start_matches('\u{feff}').trim();
    let (first, rest) = text.split_once('\n').unwrap_or((text, ""));
    let head: Option<Value> = serde_json::from_str(first).ok();
    if let Some(head) = &head
        && head.get("kind").and_then(Value::as_str) == Some(JOBS)
    {
        return match head.get("version").and_then(Value::as_u64) {
            Some(version) if version > VERSION => Err(FileFault::Newer(version)),
            _ => {
                let mut left = UNPACKED_MOST;
                let lines = rest.lines().take(LINES_MOST);
                some(lines.map(|line| found_in_line(line, &mut left)).collect())
            }
        };
    }
    // An object over several lines, as the rescued data are.
    let whole: Option<Value> = match head {
        Some(value) if rest.is_empty() => Some(value),
        _ => serde_json::from_str(text).ok(),
    };
    if let Some(kept) = whole.as_ref().and_then(|v| v.get("kept")?.as_object()) {
        return some(rescued(kept));
    }
    match found(text) {
        Found {
            restored: Restored::Unreadable(why),
            ..
        } => Err(FileFault::Unreadable(why)),
        found => Ok(vec![found]),
    }
}

fn some(found: Vec<Found>) -> Result<Vec<Found>, FileFault> {
    if found.is_empty() {
        return Err(FileFault::Unreadable(Unreadable::Empty));
    }
    Ok(found)
}

/// The job of a line; `left` is what may still be unpacked.
fn found_in_line(line: &str, left: &mut usize) -> Found {
    let too_much = Found {
        id: None,
        restored: Restored::Unreadable(Unreadable::TooLong),
    };
    if *left == 0 {
        return too_much;
    }
    match read_slot(line) {
        Some(slot) => {
            let fits = slot.text.len() <= *left;
            *left = left.saturating_sub(slot.text.len());
            if fits { found(&slot.text) } else { too_much }
        }
        None if line.starts_with('{') => found(line),
        None => Found {
            id: None,
            restored: Restored::Unreadable(Unreadable::Torn),
        },
    }
}

fn found(text: &str) -> Found {
    let restored = restore(text);
    let id = match &restored {
        Restored::Valid(document) | Restored::Repaired(document, _) => document.id.clone(),
        _ => None,
    };
    Found { id, restored }
}

/// The newest slot of each job in a local storage as it was found.
fn rescued(kept: &Map<String, Value>) -> Vec<Found> {
    let mut newest: LiteMap<&str, (u64, String)> = LiteMap::new();
    for (key, content) in kept {
        // The name is the key without its slot: of a job `coldseat/job/<id>`.
        let Some((id, _)) = key
            .strip_prefix("coldseat/")
            .and_then(|key| key.rsplit_once('/'))
        else {
            continue;
        };
        let id = id.strip_prefix("job/").unwrap_or(id);
        if let Some(slot) = content.as_str().and_then(read_slot)
            && newest.get(id).is_none_or(|(best, _)| slot.sequence > *best)
        {
            newest.insert(id, (slot.sequence, slot.text));
        }
    }
    newest
        .into_iter()
        .map(|(id, (_, text))| {
            let found = found(&text);
            let is_job = matches!(
                &found.restored,
                Restored::Valid(document) | Restored::Repaired(document, _)
                    if matches!(document.body, Body::Job(_))
            );
            if is_job {
                Found {
                    id: Some(id.to_owned()),
                    ..found
                }
            } else {
                found
            }
        })
        .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::document::{Document, write};
    use crate::job::demo::Demo;

    fn texts() -> Vec<String> {
        Demo::ALL
            .into_iter()
            .map(|demo| {
                let job = demo.job(1_700_000_000_000);
                let mut document = Document::new(Body::Job(Box::new(job)), 1_700_000_000_000);
                document.id = Some(format!("{demo:?}"));
                write(&document)
            })
            .collect()
    }

    fn jobs(found: &[Found]) -> usize {
        found
            .iter()
            .filter(|f| matches!(f.restored, Restored::Valid(_)))
            .count()
    }

    /// Two kilobytes a line that unpack to two megabytes each.
    #[test]
    fn a_file_that_would_fill_the_memory_is_cut_off_and_says_so() {
        let bulk = format!("{{\"bulk\":\"{}\"}}", "a".repeat((2 << 20) - 100));
        let file = write_jobs(core::iter::repeat_n(bulk.as_str(), 1), 1);
        let (head, line) = file.split_once('\n').unwrap();
        let file = format!("{head}\n{}", format!("{line}\n").repeat(70));
        assert!(file.len() < 2 << 20, "{}", file.len());
        let found = read_file(&file).unwrap();
        let too_long = Restored::Unreadable(Unreadable::TooLong);
        let refused = found.iter().filter(|f| f.restored == too_long).count();
        assert_eq!(found.len(), 70);
        // 64 times 2 MiB less a hundred bytes fit into 128 MiB, and no more.
        assert_eq!(refused, 6);
    }

    #[test]
    fn one_job_and_many_come_back() {
        let texts = texts();
        let one = read_file(&texts[0]).unwrap();
        assert_eq!((one.len(), one[0].id.as_deref()), (1, Some("InchFive")));
        let file = write_jobs(texts.iter().map(String::as_str), 5);
        let many = read_file(&file).unwrap();
        assert_eq!((many.len(), jobs(&many)), (2, 2));
        // With a mark of byte order and the line ends of another system.
        let other = format!("\u{feff}{}\r\n", file.replace('\n', "\r\n"));
        assert_eq!(read_file(&other).unwrap(), many);
    }

    #[test]
    fn a_file_cut_off_gives_up_the_jobs_that_are_whole() {
        let file = write_jobs(texts().iter().map(String::as_str), 5);
        let letters: Vec<char> = file.chars().collect();
        let mut counts = [0; 3];
        for end in 1..=letters.len() {
            let cut: String = letters[..end].iter().collect();
            if let Ok(found) = read_file(&cut) {
                counts[jobs(&found)] += 1;
            }
        }
        // Whole at the last letter only; with one job for as long as the second
        // takes to be written.
        assert_eq!(counts[2], 1);
        assert!(counts[1] > 400, "{counts:?}");
    }

    #[test]
    fn a_flipped_letter_costs_one_job_at_most() {
        let file = write_jobs(texts().iter().map(String::as_str), 5);
        let letters: Vec<char> = file.chars().collect();
        let head = file.lines().next().unwrap().chars().count();
        for at in (head + 1..letters.len()).step_by(5) {
            let mut flipped = letters.clone();
            if flipped[at] != '\n' {
                flipped[at] = char::from_u32(u32::from(flipped[at]) ^ 1).unwrap();
                let found = read_file(&flipped.iter().collect::<String>()).unwrap();
                assert_eq!((found.len(), jobs(&found)), (2, 1), "letter {at}");
            }
        }
    }

    #[test]
    fn settings_come_with_the_jobs() {
        let shop = include_str!("../../../tests/golden/shop-v1.json").trim_end();
        let texts = texts();
        let all = texts.iter().map(String::as_str).chain([shop]);
        let found = read_file(&write_jobs(all, 5)).unwrap();
        assert_eq!((found.len(), jobs(&found)), (3, 3));
        assert_eq!(found[2].id, None);
    }

    #[test]
    fn rescued_data_are_read() {
        let text = &texts()[1];
        let slot = |sequence| {
            write_slot(&Slot {
                sequence,
                row: Vec::new(),
                text: if sequence == 9 {
                    text.clone()
                } else {
                    "{}".to_owned()
                },
            })
        };
        let file = serde_json::json!({
            "coldseat": "local storage as it was found",
            "kept": {"coldseat/job/a1/a": slot(9), "coldseat/job/a1/b": slot(8), "other": "x"},
        });
        let found = read_file(&serde_json::to_string_pretty(&file).unwrap()).unwrap();
        assert_eq!((found.len(), jobs(&found)), (1, 1));
        assert_eq!(found[0].id.as_deref(), Some("a1"));
    }

    #[test]
    fn what_is_none_is_refused_and_says_why() {
        let why = |text: &str| read_file(text).unwrap_err();
        let unreadable = |u| FileFault::Unreadable(u);
        assert_eq!(why(""), unreadable(Unreadable::Empty));
        assert_eq!(why("a,b\n1,2"), unreadable(Unreadable::Torn));
        assert_eq!(why("[1,2]"), unreadable(Unreadable::NotADocument));
        assert_eq!(why(&"[".repeat(200_000)), unreadable(Unreadable::Torn));
        assert_eq!(
            why(&"{\"a\":".repeat(200_000)),
            unreadable(Unreadable::Torn)
        );
        assert_eq!(why(&"x".repeat(100 << 20)), FileFault::TooLong);
        assert_eq!(
            why("{\"kind\":\"coldseat.jobs\",\"version\":1}"),
            unreadable(Unreadable::Empty)
        );
        assert_eq!(
            why("{\"kind\":\"coldseat.jobs\",\"version\":7}\n2x"),
            FileFault::Newer(7)
        );
        let newer = texts()[0].replace("\"version\":1", "\"version\":9");
        let found = read_file(&newer).unwrap();
        assert!(matches!(
            found[0].restored,
            Restored::Newer { version: 9, .. }
        ));
    }
}
