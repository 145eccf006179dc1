//! The row of a job, or of a cold drop that is kept, in a list: what is shown and searched before it is
//! opened. It is stored beside the job, made from it and never read instead of
//! it: a row that another version of the program made is made anew.

use super::merge::conflicts;
use super::pack::{put_number, take_number};
use super::{Body, ColdDropPaper, Document};
use crate::job::assess::assess;
use crate::job::look_back::to_open;
use crate::job::step::{STEPS, StepId};
use crate::job::verdict::{CylinderReport, State, StepReport};
use crate::job::{Field, Millis, Place};
use crate::quantity::format::typed;

/// Key of the envelope that says when a job was put into the bin.
pub const BINNED: &str = "binned";

/// Longest text of a row, in bytes.
const TEXT_MOST: u64 = 1200;
/// Marks a step that stands in the place of another.
const IN_PLACE_OF: u8 = 0x80;
/// Most cylinders of a row.
const STATES_MOST: u64 = 32;

/// A row.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Row {
    /// Version of the program that made it.
    pub app: String,
    /// Name of the job.
    pub name: String,
    /// Whose block; of a cold drop the fit as it was typed.
    pub customer: String,
    /// Name of the engine; of a cold drop the sleeve's diameter as it was typed.
    pub engine: String,
    /// When the job was last changed.
    pub changed: Millis,
    /// When it was put into the bin, if it was.
    pub binned: Option<Millis>,
    /// Whether it is an engine sheet.
    pub sheet: bool,
    /// Values typed differently on two devices, none of which was chosen.
    pub disputed: u64,
    /// State of each cylinder.
    pub cylinders: Vec<State>,
    /// Cylinder and step to work on; none where nothing is begun, or all is done.
    pub next: Option<(u8, StepId)>,
}

impl Row {
    /// The row of a document; `None` for what stands in no list.
    #[must_use]
    pub fn of(document: &Document) -> Option<Self> {
        let job = match &document.body {
            Body::Job(job) => job,
            Body::Drop(drop) if document.id.is_some() => {
                return Some(Self::of_drop(drop, document));
            }
            Body::Shop(_) | Body::Drop(_) => return None,
        };
        let reports = assess(job);
        Some(Self {
            app: env!("CARGO_PKG_VERSION").to_owned(),
            name: job.name.clone(),
            customer: job.customer.clone(),
            engine: job.engine.name.clone(),
            changed: document.changed,
            binned: document.binned,
            sheet: job.sheet,
            disputed: job.ledger.disputed(&job.entries).len() as u64,
            next: next_of(&reports),
            cylinders: reports.into_iter().map(|r| r.state).collect(),
        })
    }

    fn of_drop(drop: &ColdDropPaper, document: &Document) -> Self {
        let typed = |field| {
            let entry = drop.sheet.entries.get(Place::of_engine(field));
            entry.map_or(String::new(), |e| typed(&e.text, e.unit))
        };
        Self {
            app: env!("CARGO_PKG_VERSION").to_owned(),
            name: drop.name.clone(),
            customer: typed(Field::DropFit),
            engine: typed(Field::DropOd),
            changed: document.changed,
            binned: document.binned,
            sheet: false,
            disputed: conflicts(drop).len() as u64,
            cylinders: Vec::new(),
            next: None,
        }
    }

    /// What of it can be shown where the job itself is not at hand: a row that
    /// another version made tells what is there, but its green is not taken over.
    #[must_use]
    pub fn without_its_green(mut self) -> Self {
        if !self.is_current() {
            for state in &mut self.cylinders {
                if *state == State::Seated {
                    *state = State::Look;
                }
            }
        }
        self
    }

    /// Whether this version of the program made it.
    #[must_use]
    pub fn is_current(&self) -> bool {
        self.app == env!("CARGO_PKG_VERSION")
    }

    /// As bytes.
    #[must_use]
    pub fn bytes(&self) -> Vec<u8> {
        let mut bytes = Vec::new();
        for text in [&self.app, &self.name, &self.customer, &self.engine] {
            put_number(&mut bytes, text.len() as u64);
            bytes.extend(text.as_bytes());
        }
        put_number(&mut bytes, self.changed);
        put_number(&mut bytes, self.binned.unwrap_or(0));
        bytes.push(u8::from(self.sheet));
        put_number(&mut bytes, self.cylinders.len() as u64);
        for state in &self.cylinders {
            match *state {
                State::LeftOut => bytes.push(0),
                State::NotBegun => bytes.push(1),
                State::Seated => bytes.push(2),
                State::Look => bytes.push(3),
                State::Stop => bytes.push(4),
                State::InWork(done, all) => bytes.extend([5, done, all]),
                State::Marked => bytes.push(6),
            }
        }
        put_number(&mut bytes, self.disputed);
        match self.next {
            Some((cylinder, step)) => bytes.extend([cylinder, step_byte(step)]),
            None => bytes.push(0),
        }
        bytes
    }

    /// Out of bytes; `None` where they are no row.
    #[must_use]
    pub fn from_bytes(mut bytes: &[u8]) -> Option<Self> {
        let rest = &mut bytes;
        let mut texts: [String; 4] = Default::default();
        for text in &mut texts {
            let length = take_number(rest).filter(|length| *length <= TEXT_MOST)?;
            let (own, after) = rest.split_at_checked(usize::try_from(length).ok()?)?;
            *text = core::str::from_utf8(own).ok()?.to_owned();
            *rest = after;
        }
        let changed = take_number(rest)?;
        let binned = Some(take_number(rest)?).filter(|at| *at > 0);
        let sheet = match take_byte(rest)? {
            0 => false,
            1 => true,
            _ => return None,
        };
        let count = take_number(rest).filter(|count| *count <= STATES_MOST)?;
        let mut cylinders = Vec::new();
        for _ in 0..count {
            let state = match take_byte(rest)? {
                0 => State::LeftOut,
                1 => State::NotBegun,
                2 => State::Seated,
                3 => State::Look,
                4 => State::Stop,
                5 => State::InWork(take_byte(rest)?, take_byte(rest)?),
                6 => State::Marked,
                _ => return None,
            };
            cylinders.push(state);
        }
        let [app, name, customer, engine] = texts;
        // Rows of the first version end here.
        let is_first = app != env!("CARGO_PKG_VERSION") && rest.is_empty();
        let (disputed, next) = if is_first {
            (0, None)
        } else {
            (take_number(rest)?, take_next(rest)?)
        };
        rest.is_empty().then_some(Self {
            app,
            name,
            customer,
            engine,
            changed,
            binned,
            sheet,
            disputed,
            cylinders,
            next,
        })
    }
}

/// Where the hand goes on: what wants a look first, then what is in work.
fn next_of(reports: &[CylinderReport]) -> Option<(u8, StepId)> {
    let begun = |r: &&CylinderReport| !matches!(r.state, State::LeftOut | State::NotBegun);
    reports.iter().find(begun)?;
    let cylinder = to_open(reports)?;
    let report = reports.iter().find(|r| r.cylinder == cylinder)?;
    let open = |r: &CylinderReport| !r.steps.iter().all(StepReport::is_settled);
    open(report).then_some((cylinder, report.current))
}

/// A step as one byte: its number in the shop's order, and a mark on the one that
/// stands in the place of another.
fn step_byte(step: StepId) -> u8 {
    match step {
        StepId::StepDepth => IN_PLACE_OF | step.spec().number,
        _ => step.spec().number,
    }
}

/// Cylinder and step to work on; the outer `None` where it is neither them nor
/// none.
fn take_next(rest: &mut &[u8]) -> Option<Option<(u8, StepId)>> {
    let cylinder = take_byte(rest)?;
    if cylinder == 0 {
        return Some(None);
    }
    let number = take_byte(rest)?;
    let step = STEPS.iter().find(|spec| step_byte(spec.id) == number)?;
    Some(Some((cylinder, step.id)))
}

fn take_byte(rest: &mut &[u8]) -> Option<u8> {
    let (byte, after) = rest.split_first()?;
    *rest = after;
    Some(*byte)
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::document::{Restored, restore, write};
    use crate::job::demo::Demo;
    use crate::job::{Job, Owner};

    #[test]
    fn a_row_comes_back_and_damage_is_no_row() {
        let job = Demo::MetricEight.job(1_700_000_000_000);
        let mut document = Document::new(Body::Job(Box::new(job)), 1_700_000_000_000);
        document.binned = Some(5);
        let row = Row::of(&document).unwrap();
        assert_eq!(row.cylinders.len(), 8);
        assert_eq!(row.binned, Some(5));
        assert!(row.is_current());
        // Cylinder 6 is the one that is not home.
        assert_eq!(row.next, Some((6, StepId::Pull)));
        let bytes = row.bytes();
        assert!(bytes.len() < 110, "{} bytes", bytes.len());
        assert_eq!(Row::from_bytes(&bytes), Some(row));
        for end in 0..bytes.len() {
            assert_eq!(Row::from_bytes(&bytes[..end]), None);
        }
    }

    #[test]
    fn a_row_of_another_version_is_listed_and_not_green() {
        let mut row = Row {
            app: "0.0.9".to_owned(),
            cylinders: vec![State::Seated, State::Stop],
            ..Row::default()
        };
        let read = Row::from_bytes(&row.bytes()).unwrap();
        assert_eq!(
            read.without_its_green().cylinders,
            [State::Look, State::Stop]
        );
        env!("CARGO_PKG_VERSION").clone_into(&mut row.app);
        row.disputed = 3;
        let read = Row::from_bytes(&row.bytes()).unwrap();
        assert_eq!(read.without_its_green(), row);
    }

    #[test]
    fn an_engine_sheet_stays_one() {
        let job = Demo::InchFive.job(1_700_000_000_000);
        let sheet = Job::engine_sheet(job.engine.clone(), &job.entries);
        assert!(
            sheet
                .entries
                .iter()
                .all(|(place, _)| place.owner == Owner::Block)
        );
        let document = Document::new(Body::Job(Box::new(sheet.clone())), 5);
        let row = Row::of(&document).unwrap();
        assert!(row.sheet);
        assert_eq!(Row::from_bytes(&row.bytes()), Some(row));
        let Restored::Valid(read) = restore(&write(&document)) else {
            panic!("not valid");
        };
        assert_eq!(read.body, Body::Job(Box::new(sheet)));
    }
}
