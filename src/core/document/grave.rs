//! What is remembered of a document that was taken out for good, so that an older
//! copy of it that another device still has does not bring it back.
//!
//! Nothing of what was typed: up to which moment each writer was seen, and marks of
//! the values that have no writer, and who put it into the bin. A copy that adds
//! nothing to that is one that was thrown away here; one that somebody has changed
//! since, or has seen in the bin and taken out of it, is news.

use super::ledger::rival;
use super::paper::{BIN, Values, values};
use super::{Body, Document};
use crate::job::Millis;
use crate::job::ledger::{Marks, Rival, Writer};
use litemap::LiteMap;

/// Longest text that is looked into, in bytes.
const LONGEST: usize = 64 << 10;

/// What is remembered of a document that is gone.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Grave {
    /// The last moment seen of each writer.
    seen: LiteMap<Writer, Millis>,
    /// Marks of values without a writer, their place counted in.
    marks: Marks,
    /// Who put it into the bin, and when.
    binned: Vec<(Writer, Millis)>,
}

fn parts(document: &Document) -> Values {
    match &document.body {
        Body::Job(job) => values(&**job, document.binned),
        Body::Shop(shop) => values(&**shop, document.binned),
        Body::Drop(drop) => values(&**drop, document.binned),
    }
}

fn placed(path: &str, mark: u32) -> u32 {
    crc32fast::hash(format!("{path}\n{mark:08x}").as_bytes())
}

/// All values of a document with their paths; `is_bin`: those that say when it was
/// put into the bin, else all others.
fn all(own: &Values, is_bin: bool) -> Vec<(&str, Rival)> {
    let shown = own
        .flat
        .iter()
        .map(|(path, value)| (path.as_str(), rival(&own.ledger, path, value)));
    let beside = own
        .ledger
        .rivals
        .iter()
        .flat_map(|(path, all)| all.iter().map(|one| (path.as_str(), one.clone())));
    let of_it = |(path, _): &(&str, Rival)| (*path == BIN) == is_bin;
    shown.chain(beside).filter(of_it).collect()
}

impl Grave {
    /// Of a document that is about to be taken out.
    #[must_use]
    pub fn of(document: &Document) -> Self {
        let own = parts(document);
        let seen = own.ledger.seen.iter().map(|(who, span)| (*who, span.last));
        let replaced = own.ledger.replaced.iter().flat_map(|(path, marks)| {
            let marks = marks.as_slice().iter();
            marks.map(move |mark| placed(path, *mark))
        });
        let binned = all(&own, true).into_iter();
        let binned = binned.filter_map(|(_, value)| Some((value.by?, value.time())));
        let unsigned = all(&own, false)
            .into_iter()
            .filter(|(_, value)| value.by.is_none())
            .map(|(path, value)| placed(path, value.mark()));
        Self {
            seen: seen.collect(),
            marks: replaced.chain(unsigned).collect(),
            binned: binned.collect(),
        }
    }

    /// With what another one remembers.
    #[must_use]
    pub fn with(mut self, other: &Self) -> Self {
        for (writer, last) in &other.seen {
            let known = self.seen.get(writer).copied().unwrap_or(0);
            self.seen.insert(*writer, known.max(*last));
        }
        let both = self.marks.as_slice().iter().chain(other.marks.as_slice());
        self.marks = both.copied().collect();
        for one in &other.binned {
            if !self.binned.contains(one) {
                self.binned.push(*one);
            }
        }
        self
    }

    /// Whether a copy holds nothing that was not thrown away here.
    #[must_use]
    pub fn covers(&self, document: &Document) -> bool {
        let own = parts(document);
        let is_seen = |writer: &Writer, at: Millis| {
            let last = self.seen.get(writer);
            last.is_some_and(|last| at <= *last)
        };
        let mut binned = self.binned.iter();
        let is_rescued = document.binned.is_none()
            && !self.binned.is_empty()
            && binned.all(|(writer, at)| own.ledger.has_seen(*writer, *at));
        let mut spans = own.ledger.seen.iter();
        !is_rescued
            && spans.all(|(writer, span)| is_seen(writer, span.last))
            && all(&own, false)
                .into_iter()
                .all(|(path, value)| match value.by {
                    Some(writer) => is_seen(&writer, value.time()),
                    None => self.marks.contains(placed(path, value.mark())),
                })
    }

    /// As text: a line of writers, a line of marks, a line of who put it into the bin.
    #[must_use]
    pub fn text(&self) -> String {
        let moments = |all: &mut dyn Iterator<Item = (&Writer, &Millis)>| {
            let all = all.map(|(writer, at)| format!("{}:{at}", writer.name()));
            all.collect::<Vec<String>>().join(" ")
        };
        let seen = moments(&mut self.seen.iter());
        let binned = moments(&mut self.binned.iter().map(|(writer, at)| (writer, at)));
        let marks = self.marks.as_slice().iter();
        let marks: Vec<String> = marks.map(|mark| format!("{mark:08x}")).collect();
        format!("1\n{seen}\n{}\n{binned}\n", marks.join(" "))
    }

    /// Out of its text; `None` where it is none, or not whole.
    #[must_use]
    pub fn from_text(text: &str) -> Option<Self> {
        if text.len() > LONGEST {
            return None;
        }
        let mut lines = text.strip_suffix('\n')?.split('\n');
        let (version, seen) = (lines.next()?, lines.next()?);
        let (marks, binned) = (lines.next()?, lines.next()?);
        if version != "1" || lines.next().is_some() {
            return None;
        }
        let moment = |word: &str| {
            let (writer, at) = word.split_once(':')?;
            Some((Writer::from_name(writer)?, at.parse().ok()?))
        };
        let seen: Option<LiteMap<Writer, Millis>> = seen
            .split(' ')
            .filter(|w| !w.is_empty())
            .map(moment)
            .collect();
        let binned: Option<Vec<(Writer, Millis)>> = binned
            .split(' ')
            .filter(|w| !w.is_empty())
            .map(moment)
            .collect();
        let marks: Option<Marks> = marks
            .split_whitespace()
            .map(|word| u32::from_str_radix(word, 16).ok())
            .collect();
        Some(Self {
            seen: seen?,
            marks: marks?,
            binned: binned?,
        })
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::document::edit::{History, Stay};
    use crate::document::merge::put_in_bin;
    use crate::document::pen::Pen;
    use crate::job::demo::Demo;
    use crate::job::{Entry, Field, Job, Place};
    use crate::quantity::parse::Unit;

    fn typed(document: &Document, pen: &mut Pen, text: &str, at: Millis) -> Document {
        let mut after = document.clone();
        let Body::Job(job) = &mut after.body else {
            panic!("no job")
        };
        let mut history = History::of(&**job);
        let place = Place::of_cylinder(1, Field::BoreD, 0);
        job.entries.put(place, Entry::new(text, Unit::Inch, at));
        let job: &mut Job = job;
        history.note(job, pen, at, Stay::New);
        after
    }

    fn put(document: &Document, pen: &mut Pen, into: bool, at: Millis) -> Document {
        let mut after = document.clone();
        let Body::Job(job) = &mut after.body else {
            panic!("no job")
        };
        put_in_bin(&mut **job, &mut after.binned, into, pen, at);
        after
    }

    #[test]
    fn what_was_thrown_away_is_covered_and_what_was_changed_since_is_not() {
        let begun = Document::new(Body::Job(Box::new(Demo::InchFive.job(1))), 1);
        let mut pen = Pen::new(Writer::of(1, 1));
        let mut other = Pen::new(Writer::of(2, 1));
        let later = typed(&begun, &mut pen, "4.1", 10);
        let last = typed(&later, &mut pen, "4.2", 20);
        let grave = Grave::of(&last);
        for old in [&begun, &later, &last] {
            assert!(grave.covers(old));
        }
        let news = typed(&later, &mut other, "4.3", 15);
        assert!(!grave.covers(&news));
        assert!(!Grave::of(&begun).covers(&later));
        let binned = put(&last, &mut pen, true, 30);
        let in_bin = Grave::of(&binned);
        assert!(in_bin.covers(&last) && in_bin.covers(&binned));
        assert!(!in_bin.covers(&put(&binned, &mut other, false, 40)));
        let both = Grave::of(&news).with(&in_bin);
        assert!(both.covers(&news) && both.covers(&last));
        assert_eq!(Grave::from_text(&both.text()), Some(both.clone()));
        for cut in 0..both.text().len() {
            let half = Grave::from_text(&both.text()[..cut]);
            assert!(half != Some(both.clone()));
        }
    }
}
