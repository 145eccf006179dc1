//! What a deck cut does to what is measured from the deck, worked out by hand.

use super::after_cut::*;
use crate::job::demo::{Demo, put};
use crate::job::model::check::{Checked, Sheet, check};
use crate::job::model::field::Field;
use crate::job::model::from_deck::FromDeck;
use crate::job::model::job::Job;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Standing, Why};
use crate::job::model::step::{Mark, StepId};
use crate::job::steps::assess::{assess, assess_owner};
use crate::job::verdict::{Next, Signal};
use crate::planning::after_deck::AfterState;
use crate::quantity::Length;

fn place(owner: Owner, field: Field, item: FromDeck) -> Place {
    let index = FromDeck::ALL.iter().position(|i| *i == item).unwrap() as u8;
    Place {
        owner,
        field,
        index,
    }
}

fn size(job: &mut Job, item: FromDeck, texts: [&str; 3]) {
    let fields = [
        Field::FromDeckBefore,
        Field::FromDeckLeast,
        Field::FromDeckMost,
    ];
    for (field, text) in fields.into_iter().zip(texts) {
        put(job, place(Owner::Block, field, item), text, 2);
    }
}

const DECK: Owner = Owner::Bank(0);

/// The demo with the sleeve that stands high gone: its deck is open, and cut by
/// 0.0050 in. The water bores were 0.2980 deep, the dowels stood 0.4980.
fn decked() -> Job {
    let mut job = Demo::InchFive.job(1);
    let out = Demo::InchFive.not_home();
    job.left_out = vec![out];
    let of_it: Vec<Place> = job
        .entries
        .iter()
        .map(|(place, _)| *place)
        .filter(|place| place.owner == Owner::Cylinder(out))
        .collect();
    for place in of_it {
        put(&mut job, place, "", 2);
    }
    size(
        &mut job,
        FromDeck::WaterBore,
        ["0.2980", "0.2940", "0.2990"],
    );
    size(&mut job, FromDeck::Dowel, ["0.4980", "0.4900", "0.5000"]);
    size(&mut job, FromDeck::BoltHole, ["3.0000", "2.9900", ""]);
    size(&mut job, FromDeck::Piston, ["-0.0020", "-0.0050", "0.0040"]);
    for (field, text) in [
        (Field::BlockCutSoFar, "0.0100"),
        (Field::BlockCutMost, "0.0200"),
        (Field::DeckFinishKind, "Ra"),
        (Field::DeckFinishMost, "1.5"),
    ] {
        put(&mut job, Place::of_engine(field), text, 2);
    }
    put(&mut job, Place::of_bank(0, Field::DeckCut, 0), "0.0050", 2);
    job.set_mark(DECK, StepId::Deck, Some(Mark::Done), 3);
    job
}

fn said(job: &Job) -> (Signal, Next) {
    let steps = assess_owner(job, DECK);
    let deck = steps.iter().find(|s| s.id == StepId::Deck).unwrap();
    (deck.signal, deck.next)
}

fn thou(length: Length) -> f64 {
    (length.as_thou() * 1e4).round() / 1e4
}

/// By hand. Water bore: 0.2980 - 0.0050 = 0.2930, 0.0010 short of 0.2940. Dowels:
/// 0.4980 + 0.0050 = 0.5030, 0.0030 over 0.5000. Bolt holes: 2.9950, pistons 0.0030:
/// both hold. Off the block: 0.0200 - 0.0100 - 0.0050 leaves 0.0050. The least that is
/// borne is the dowels' 0.0020.
#[test]
fn by_hand() {
    let job = decked();
    let after = after_cut(&job, 0).unwrap();
    let of = |item: FromDeck| {
        let (_, known) = after.known().find(|(i, _)| *i == item).unwrap();
        let worked = known.worked;
        (
            thou(worked.now),
            worked.state,
            thou(worked.by),
            thou(known.bears),
        )
    };
    assert_eq!(
        of(FromDeck::WaterBore),
        (293.0, AfterState::Recut, 1.0, 4.0)
    );
    assert_eq!(of(FromDeck::Dowel), (503.0, AfterState::Recut, 3.0, 2.0));
    assert_eq!(
        of(FromDeck::BoltHole),
        (2995.0, AfterState::Holds, 0.0, 10.0)
    );
    assert_eq!(of(FromDeck::Piston), (3.0, AfterState::Holds, 0.0, 6.0));
    let absent = after
        .sizes
        .iter()
        .filter(|(_, s)| *s == Standing::NotHere)
        .count();
    assert_eq!(absent, 4, "the others are not on this engine");
    assert_eq!(thou(after.budget.known().unwrap().left), 5.0);
    let (bears, by) = after.bears().unwrap();
    assert_eq!((thou(bears), by), (2.0, BearsLeast::Size(FromDeck::Dowel)));
    // The cut planned, 0.0050 in too, before one is decided on.
    let mut planned = job;
    put(&mut planned, Place::of_bank(0, Field::DeckCut, 0), "", 2);
    planned.set_mark(Owner::Bank(0), StepId::Deck, None, 3);
    let before = after_cut(&planned, 0).unwrap();
    assert!(!before.made && !any_open(&planned));
    // Nothing is cut: it is to be looked at, not green.
    let (signal, next) = before.over((Signal::Go, Next::Marked));
    assert!(
        matches!(next, Next::DeckSizeWill(FromDeck::WaterBore, by) if thou(by) == 1.0),
        "{next:?}"
    );
    assert_eq!(signal, Signal::Look);
    assert_eq!(before.sizes, after.sizes);
    // Who says that the deck is done says that the planned cut was made: what it puts
    // outside its range is open all the same.
    planned.set_mark(Owner::Bank(0), StepId::Deck, Some(Mark::Done), 4);
    let made = after_cut(&planned, 0).unwrap();
    assert!(made.made && any_open(&planned));
    assert_eq!(made.sizes, after.sizes);
}

#[test]
fn a_recut_is_open_until_it_is_measured_ticked_or_reasoned_and_a_tick_is_not_green() {
    let mut job = decked();
    let (water, dowel) = (FromDeck::WaterBore, FromDeck::Dowel);
    let recut = |job: &Job| match said(job) {
        (Signal::Look, Next::DeckSizeRecut(item, by)) => (item, thou(by)),
        other => panic!("{other:?}"),
    };
    assert_eq!(recut(&job), (water, 1.0));
    assert!(any_open(&job));
    put(&mut job, place(DECK, Field::RecutSaid, water), "done", 4);
    assert_eq!(recut(&job), (dowel, 3.0));
    let why = "new dowels come with the head";
    put(&mut job, place(DECK, Field::RecutSaid, dowel), why, 4);
    assert!(!any_open(&job));
    assert_eq!(said(&job), (Signal::Marked, Next::Marked));
    // Measured: the water bores at 0.2950, the dowels at 0.4950, Ra 1.2.
    put(
        &mut job,
        place(DECK, Field::FromDeckAfter, water),
        "0.2950",
        5,
    );
    put(
        &mut job,
        place(DECK, Field::FromDeckAfter, dowel),
        "0.4950",
        5,
    );
    assert_eq!(said(&job).0, Signal::Marked, "the finish is not measured");
    put(&mut job, Place::of_bank(0, Field::DeckFinish, 0), "1.2", 5);
    assert_eq!(said(&job), (Signal::Go, Next::Marked));
    // A reading gainsays the tick: 0.2935 is 0.0005 short, 0.3000 is 0.0010 too deep.
    put(
        &mut job,
        place(DECK, Field::FromDeckAfter, water),
        "0.2935",
        6,
    );
    assert_eq!(recut(&job), (water, 0.5));
    assert!(any_open(&job));
    put(
        &mut job,
        place(DECK, Field::FromDeckAfter, water),
        "0.3000",
        6,
    );
    assert!(
        matches!(said(&job), (Signal::Stop, Next::DeckSizePast(item, by))
        if item == water && thou(by) == 1.0)
    );
    put(
        &mut job,
        place(DECK, Field::FromDeckAfter, water),
        "0.2950",
        6,
    );
    // 1.5 is within 1.5, 1.6 is rough.
    put(&mut job, Place::of_bank(0, Field::DeckFinish, 0), "1.5", 6);
    assert_eq!(said(&job).0, Signal::Go);
    put(&mut job, Place::of_bank(0, Field::DeckFinish, 0), "1.6", 6);
    assert_eq!(said(&job), (Signal::Look, Next::DeckRough));
}

#[test]
fn the_block_gives_no_more_than_its_sheet_allows() {
    let mut job = decked();
    // 0.0100 and 0.0050 are 0.0010 more than 0.0140.
    put(&mut job, Place::of_engine(Field::BlockCutMost), "0.0140", 4);
    assert!(matches!(said(&job), (Signal::Stop, Next::BlockCutMost(by)) if thou(by) == 1.0));
    put(&mut job, Place::of_engine(Field::BlockCutMost), "", 4);
    let after = after_cut(&job, 0).unwrap();
    assert!(matches!(after.budget, Standing::Missing(m) if m.field == Field::BlockCutMost));
}

#[test]
fn what_is_entered_in_part_asks_for_the_rest_and_a_range_upside_down_is_named_at_its_field() {
    let mut job = decked();
    let least = place(Owner::Block, Field::FromDeckLeast, FromDeck::Dowel);
    put(&mut job, least, "", 4);
    let deck = assess_owner(&job, DECK);
    let deck = deck.iter().find(|s| s.id == StepId::Deck).unwrap();
    assert!(deck.lacks.iter().any(|m| m.field == Field::FromDeckLeast));
    // Of a size nobody knows that it holds.
    put(
        &mut job,
        place(DECK, Field::RecutSaid, FromDeck::WaterBore),
        "done",
        4,
    );
    assert_eq!(
        said(&job),
        (
            Signal::Wait,
            Next::DeckSizeWants(FromDeck::Dowel, Field::FromDeckLeast)
        )
    );
    assert!(any_open(&job));
    put(&mut job, least, "0.5010", 4);
    assert!(
        matches!(check(&Sheet::of(&job), least), Checked::Refused(unusable)
        if matches!(unusable.why, Why::LowNotBelowHigh(_)))
    );
    assert_eq!(said(&job).0, Signal::Look);
    // Words are needed where words are asked for.
    let why = place(DECK, Field::RecutSaid, FromDeck::Dowel);
    put(&mut job, why, "0.5", 4);
    assert!(matches!(check(&Sheet::of(&job), why), Checked::Refused(_)));
    // Nobody cuts by a cut that cannot be read.
    put(&mut job, Place::of_bank(0, Field::DeckCut, 0), "0.0o5", 4);
    assert!(matches!(after_cut(&job, 0), Err(Lack::Unusable(_))));
}

/// A job of which nothing is measured from the deck says what it said before.
#[test]
fn nothing_entered_changes_nothing() {
    let mut job = decked();
    for item in FromDeck::ALL {
        size(&mut job, item, ["", "", ""]);
    }
    for field in [
        Field::BlockCutSoFar,
        Field::BlockCutMost,
        Field::DeckFinishKind,
        Field::DeckFinishMost,
    ] {
        put(&mut job, Place::of_engine(field), "", 4);
    }
    assert_eq!(said(&job), (Signal::Go, Next::Marked));
    let after = after_cut(&job, 0).unwrap();
    assert!(after.bears().is_none() && after.is_settled() && after.lacks().is_empty());
    assert!(assess(&job).iter().any(|report| report.is_seated()));
}
