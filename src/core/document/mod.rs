//! Documents: how a job is written down, for storage, file and link alike.
//!
//! An envelope (kind, version, app, created, changed, checksum) round a body.
//! Every number keeps its typed text and unit, digit for digit, and the time
//! it was typed. What this version does not know is kept and written back.
//! There is one way in, [`fn@restore`]; it never panics and never drops a thing
//! without saying so. A shipped version's format is frozen: see
//! `tests/golden`.

pub mod backup;
pub mod csv;
pub mod edit;
pub mod file;
mod flat;
#[cfg(test)]
mod golden;
pub mod grave;
mod ledger;
pub mod link;
pub mod merge;
pub mod pack;
pub mod paper;
pub mod pen;
mod read;
pub mod restore;
pub mod row;
pub mod slot;
pub mod units;
mod write;

use crate::job::drop::DropSheet;
use crate::job::hand::HandOrder;
use crate::job::ledger::Ledger;
use crate::job::{Entries, Job, Millis, UnitSystem};
use crate::materials::MaterialId;
use crate::quantity::wire::Wire;
pub use restore::{Repair, Restored, Unreadable, restore};
use serde_json::{Map, Value};
pub use write::write;

/// The latest version written here. What has no writer yet is written as
/// version 1 was; only cold drops that are kept under a name are of version 3.
pub const VERSION: u64 = 3;
/// Longer texts are not looked into: 4 MiB; a job of 16 cylinders with every
/// place filled is a tenth of a MiB.
pub const LONGEST: usize = 4 << 20;

/// When the page speaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Speech {
    /// When it is asked.
    OnDemand,
    /// At every reading.
    Always,
}

impl Speech {
    /// Both.
    pub const ALL: [Self; 2] = [Self::OnDemand, Self::Always];

    /// Its name in documents: for ever.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::OnDemand => "on_demand",
            Self::Always => "always",
        }
    }

    /// From its name in documents.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|speech| speech.id() == id)
    }
}

/// What the shop has set once for all its jobs.
#[derive(Clone, Debug, PartialEq)]
pub struct Shop {
    /// Units of new jobs and of the cold drop.
    pub units: UnitSystem,
    /// Gauge uncertainties of new engines.
    pub entries: Entries,
    /// Whether the own number pad is used; on where nothing is set.
    pub pad: Option<bool>,
    /// Beep and vibrate when a time is up; on where nothing is set.
    pub feedback: Option<bool>,
    /// What the hand does when a gauge's reading is taken; where nothing is set it
    /// stops at the answer of the step.
    pub hand: Option<HandOrder>,
    /// Whether the page speaks; where nothing is set it does not.
    pub speech: Option<Speech>,
    /// The key that skips a place, beside Page Down, as a browser names it.
    pub skip_key: Option<String>,
    /// The key that goes back a place, beside Page Up.
    pub back_key: Option<String>,
    /// What is set of a gauge on a wire.
    pub wire: Option<Wire>,
    /// When all jobs were last written into a file.
    pub backup_at: Option<Millis>,
    /// What is remembered for joining copies of the settings.
    pub ledger: Ledger,
    /// What a later version wrote and this one does not know.
    pub unknown: Map<String, Value>,
}

impl Shop {
    /// Settings of a shop that has set nothing.
    #[must_use]
    pub fn fresh(units: UnitSystem) -> Self {
        Self {
            units,
            entries: Entries::default(),
            pad: None,
            feedback: None,
            hand: None,
            speech: None,
            skip_key: None,
            back_key: None,
            wire: None,
            backup_at: None,
            ledger: Ledger::default(),
            unknown: Map::new(),
        }
    }
}

/// A cold drop without a job, as it is kept: the one in use has neither a name nor
/// a key, others have both.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdDropPaper {
    /// Under which name the person keeps it.
    pub name: String,
    /// What was typed.
    pub sheet: DropSheet,
    /// What is remembered for joining copies of it.
    pub ledger: Ledger,
    /// What a later version wrote and this one does not know.
    pub unknown: Map<String, Value>,
}

impl ColdDropPaper {
    /// The cold drop as it opens: nothing typed, usual values stand and are told.
    #[must_use]
    pub fn fresh(units: UnitSystem) -> Self {
        Self::of(
            String::new(),
            DropSheet {
                entries: Entries::default(),
                units,
                sleeve_material: MaterialId::GrayIron,
                block_material: MaterialId::GrayIron,
            },
        )
    }

    /// Numbers under a name.
    #[must_use]
    pub fn of(name: String, sheet: DropSheet) -> Self {
        Self {
            name,
            sheet,
            ledger: Ledger::default(),
            unknown: Map::new(),
        }
    }
}

/// What a document holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Body {
    /// A job.
    Job(Box<Job>),
    /// The shop's settings.
    Shop(Box<Shop>),
    /// A cold drop without a job.
    Drop(Box<ColdDropPaper>),
}

impl Body {
    /// Its kind, in the envelope.
    #[must_use]
    pub const fn kind(&self) -> &'static str {
        match self {
            Self::Job(_) => "coldseat.job",
            Self::Shop(_) => "coldseat.shop",
            Self::Drop(_) => "coldseat.drop",
        }
    }
}

/// A document.
#[derive(Clone, Debug, PartialEq)]
pub struct Document {
    /// Version of the program that wrote it.
    pub app: String,
    /// When it was begun.
    pub created: Millis,
    /// When it was last changed.
    pub changed: Millis,
    /// Its key: copies of one job know each other by it.
    pub id: Option<String>,
    /// When it was put into the bin, if it was.
    pub binned: Option<Millis>,
    /// What it holds.
    pub body: Body,
    /// What a later version wrote into the envelope.
    pub unknown: Map<String, Value>,
}

impl Document {
    /// A fresh document of this program.
    #[must_use]
    pub fn new(body: Body, at: Millis) -> Self {
        Self {
            app: env!("CARGO_PKG_VERSION").to_owned(),
            created: at,
            changed: at,
            id: None,
            binned: None,
            body,
            unknown: Map::new(),
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::step::{Mark, StepId};
    use crate::job::{Entry, Field, Owner, Place};
    use crate::quantity::parse::Unit;
    use crate::quantity::wire::WireUnit;

    fn demo_text() -> String {
        let job = Demo::InchFive.job(1_700_000_000_000);
        write(&Document::new(Body::Job(Box::new(job)), 1_700_000_000_000))
    }

    fn job_of(restored: Restored) -> Job {
        match restored {
            Restored::Valid(document) | Restored::Repaired(document, _) => match document.body {
                Body::Job(job) => *job,
                Body::Shop(_) | Body::Drop(_) => panic!("no job"),
            },
            other => panic!("{other:?}"),
        }
    }

    /// Found by fuzzing: read to the nearest double but one, a foreign number was
    /// written as another, and the checksum seemed broken at every reading.
    #[test]
    fn a_number_of_a_later_version_comes_back_as_it_was() {
        let mut rng = fastrand::Rng::with_seed(6);
        for _ in 0..300 {
            let far = (rng.f64() - 0.5) * 10_f64.powi(rng.i32(-200..200));
            let mut job = Demo::InchFive.job(1);
            job.unknown.insert("later".to_owned(), far.into());
            let document = Document::new(Body::Job(Box::new(job)), 1);
            assert_eq!(restore(&write(&document)), Restored::Valid(document));
        }
    }

    #[test]
    fn what_the_shop_set_for_its_gauge_comes_back_and_what_is_none_of_it_is_set_aside() {
        let mut shop = Shop::fresh(UnitSystem::Inch);
        shop.hand = Some(HandOrder::ByPlace);
        shop.speech = Some(Speech::OnDemand);
        shop.skip_key = Some("F9".to_owned());
        shop.back_key = Some("+".to_owned());
        let mut wire = Wire::default();
        wire.teach("01A 0.1", 1);
        shop.wire = Some(Wire {
            unit: WireUnit::Millimetre,
            ..wire
        });
        let document = Document::new(Body::Shop(Box::new(shop)), 1);
        let text = write(&document);
        assert_eq!(restore(&text), Restored::Valid(document));
        let other = text.replace("by_place", "by_moon");
        let Restored::Repaired(document, _) = restore(&other) else {
            panic!("taken as it is")
        };
        let Body::Shop(shop) = &document.body else {
            panic!("no shop")
        };
        assert_eq!((shop.hand, shop.speech), (None, Some(Speech::OnDemand)));
        assert!(write(&document).contains("by_moon"));
    }

    #[test]
    fn a_job_comes_back_digit_for_digit() {
        for demo in Demo::ALL {
            let mut job = demo.job(1_700_000_000_000);
            job.note = "oil in #2\n\"look\"".to_owned();
            job.left_out = vec![2];
            let skipped = Mark::Skipped("no gauge here".to_owned());
            job.set_mark(Owner::Cylinder(4), StepId::Wall, Some(skipped), 5);
            job.set_mark(Owner::Block, StepId::Caps, Some(Mark::Done), 6);
            job.set_mark(
                Owner::Cylinder(1),
                StepId::RingGap,
                Some(Mark::NotForThisJob),
                7,
            );
            job.keep_of_step(Owner::Cylinder(4), StepId::Chill, |record| {
                record.note = "bath low".to_owned();
                record.started = Some(1_700_000_000_200);
                record.unknown.insert("by".to_owned(), "helper".into());
            });
            let place = Place::of_cylinder(4, Field::SleeveOd, 1);
            job.entries
                .put(place, Entry::new("4,44130", Unit::Inch, 1_700_000_000_123));
            job.entries.keep(place);
            let nonsense = Place::of_cylinder(4, Field::SleeveOd, 2);
            job.entries
                .put(nonsense, Entry::new("4.4x", Unit::Inch, 1_700_000_000_124));
            let document = Document::new(Body::Job(Box::new(job)), 1_700_000_000_000);
            let text = write(&document);
            assert_eq!(restore(&text), Restored::Valid(document));
        }
    }

    #[test]
    fn what_is_unknown_survives_wherever_it_stands() {
        let mut value: Value = serde_json::from_str(&demo_text()).unwrap();
        value["planet"] = "earth".into();
        value["body"]["colour"] = "blue".into();
        value["body"]["engine"]["bolts"] = 26.into();
        value["body"]["entries"]["3"]["torque"] = serde_json::json!([["12", "Nm", 5]]);
        value["body"]["entries"]["pump"] = serde_json::json!({"hours": [["3", "", 5]]});
        value["body"]["entries"]["3"]["carry"][0]
            .as_array_mut()
            .unwrap()
            .extend([Value::Null, "gauge 4".into()]);
        let restored = restore(&value.to_string());
        // Editing by hand does not fit the checksum; it says so and goes on.
        let Restored::Repaired(document, repairs) = restored else {
            panic!("{restored:?}")
        };
        assert_eq!(repairs, [Repair::Checksum]);
        let mut again: Value = serde_json::from_str(&write(&document)).unwrap();
        again["checksum"] = value["checksum"].clone();
        assert_eq!(again, value);
    }

    #[test]
    fn a_mark_that_is_none_is_set_aside_and_an_unknown_step_stays() {
        let mut value: Value = serde_json::from_str(&demo_text()).unwrap();
        value["body"]["steps"]["4"]["wall"] = serde_json::json!({"mark": "perhaps", "at": 1});
        value["body"]["steps"]["4"]["polish"] = serde_json::json!({"mark": "done", "at": 1});
        let Restored::Repaired(document, repairs) = restore(&value.to_string()) else {
            panic!("neither valid nor lost")
        };
        assert!(repairs.contains(&Repair::SetAside("steps.4.wall".into())));
        let written: Value = serde_json::from_str(&write(&document)).unwrap();
        assert_eq!(written["body"]["steps"]["4"]["polish"]["mark"], "done");
        assert_eq!(
            written["body"]["set_aside"]["steps.4.wall"]["mark"],
            "perhaps"
        );
    }

    #[test]
    fn a_newer_version_is_read_only() {
        let text = demo_text().replace("\"version\":1", "\"version\":4");
        assert!(matches!(
            restore(&text),
            Restored::Newer {
                version: 4,
                readable: Some(_)
            }
        ));
    }

    #[test]
    fn what_cannot_be_read_says_why() {
        let why = |text: &str| match restore(text) {
            Restored::Unreadable(why) => why,
            other => panic!("{other:?}"),
        };
        assert_eq!(why(""), Unreadable::Empty);
        assert_eq!(why("[1, 2]"), Unreadable::NotADocument);
        assert_eq!(why("{\"kind\":\"other\"}"), Unreadable::NotADocument);
        let text = demo_text();
        assert_eq!(why(&text[..text.len() / 2]), Unreadable::Torn);
        assert_eq!(why(&"[".repeat(100_000)), Unreadable::Torn);
        assert_eq!(why(&" ".repeat(LONGEST + 1)), Unreadable::TooLong);
    }

    #[test]
    fn what_is_wrong_is_set_aside_and_named() {
        let mut value: Value = serde_json::from_str(&demo_text()).unwrap();
        value["body"]["engine"]["cylinders"] = 99.into();
        value["body"]["entries"]["3"]["bore_d"] = "gone".into();
        value["body"]["entries"]["3"]["carry"][0][0] = 12.into();
        let restored = restore(&value.to_string());
        let Restored::Repaired(document, repairs) = restored else {
            panic!("{restored:?}")
        };
        assert!(repairs.contains(&Repair::SetAside("engine.cylinders".into())));
        assert!(repairs.contains(&Repair::SetAside("entries.3.bore_d".into())));
        assert!(repairs.contains(&Repair::SetAside("entries.3.carry.0".into())));
        let written = write(&document);
        assert!(written.contains("\"entries.3.bore_d\":\"gone\""));
        // Second time round nothing more is to be repaired.
        assert_eq!(restore(&written), Restored::Valid(document));
    }

    /// Every prefix and a flip of every byte: an answer, no panic.
    #[test]
    fn torn_and_flipped_documents_are_answered() {
        let text = demo_text();
        for end in (0..text.len()).step_by(7) {
            if let Some(prefix) = text.get(..end) {
                assert!(matches!(restore(prefix), Restored::Unreadable(_)));
            }
        }
        let bytes = text.as_bytes();
        let mut unnoticed = 0;
        for at in (0..bytes.len()).step_by(3) {
            let mut flipped = bytes.to_vec();
            flipped[at] ^= 1;
            if let Ok(flipped) = core::str::from_utf8(&flipped)
                && let Restored::Valid(document) = restore(flipped)
            {
                // Only envelope fields outside the checksum may differ.
                assert_eq!(Some(&document.body), body(&text).as_ref());
                unnoticed += 1;
            }
        }
        assert!(unnoticed < 60, "{unnoticed}");
    }

    fn body(text: &str) -> Option<Body> {
        match restore(text) {
            Restored::Valid(document) => Some(document.body),
            _ => None,
        }
    }

    #[test]
    fn a_bad_owner_never_becomes_a_cylinder() {
        let mut value: Value = serde_json::from_str(&demo_text()).unwrap();
        value["body"]["entries"]["0"] = value["body"]["entries"]["1"].clone();
        value["body"]["entries"]["17"] = value["body"]["entries"]["1"].clone();
        let job = job_of(restore(&value.to_string()));
        assert!(!job.entries.any_of(Owner::Cylinder(0)));
        assert!(!job.entries.any_of(Owner::Cylinder(17)));
    }
}
