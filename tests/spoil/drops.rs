//! The law of the cold drop without a job: whatever part, cold and heat, an entry
//! that it uses and that cannot be used, or that is in dispute, is named and nothing is
//! worked out; a number that is not there makes no go, and nothing better that does not
//! ask for it; what it does not ask for moves nothing.

use coldseat_core::ask::document::ColdDropPaper;
use coldseat_core::ask::{DropAnswer, DropDoubt, Signal, Spot, drop_of_paper, drop_of_sheet};
use coldseat_core::job::drop::DropSheet;
use coldseat_core::job::ledger::Rival;
use coldseat_core::job::part::{COLDS, HEATS, PARTS};
use coldseat_core::job::{Entry, Field, Place};
use coldseat_core::materials::MaterialId;
use coldseat_tests::typed_drop;

/// What stands in each field, usual of a sleeve or near it.
const NUMBERS: [(Field, &str); 12] = [
    (Field::DropOd, "4.2500"),
    (Field::DropWall, "0.1250"),
    (Field::DropLength, "9.0000"),
    (Field::DropFit, "0.0012"),
    (Field::DropBlockWall, "0.3500"),
    (Field::DropCarry, "8"),
    (Field::DropRoom, "68"),
    (Field::DropHome, "1"),
    (Field::DropLeast, "0.0005"),
    (Field::DropColdAt, "-20"),
    (Field::DropHeatAt, "200"),
    (Field::DropHeatOut, "5"),
];
/// Heat limits above and below what the housing is warmed to.
const LIMITS: [&str; 2] = ["250", "180"];
/// Wishes: without them something usual stands, and a go may.
const WISHES: [Field; 3] = [Field::DropHome, Field::DropLeast, Field::DropPart];

fn put(sheet: &mut DropSheet, field: Field, text: &str) {
    let entry = Entry::new(text, field.unit(sheet.units), 2);
    sheet.entries.put(Place::of_engine(field), entry);
}

fn signal(answer: &DropAnswer) -> Option<Signal> {
    match answer {
        DropAnswer::Ready(view) => Some(view.signal),
        DropAnswer::Lacks(_) => None,
    }
}

fn names(answer: &DropAnswer, field: Field) -> bool {
    let spot = Spot::Reading(Place::of_engine(field));
    match answer {
        DropAnswer::Ready(_) => false,
        DropAnswer::Lacks(lacks) => lacks.unusable.iter().any(|one| one.spot == spot),
    }
}

/// What an answer lets the hand do; less is worse.
fn rank(answer: &DropAnswer) -> u8 {
    match signal(answer) {
        Some(Signal::Stop) => 0,
        Some(Signal::Look) => 1,
        None | Some(Signal::None | Signal::Wait | Signal::Marked) => 2,
        Some(Signal::Go) => 3,
    }
}

/// Whether an answer asks for a number that is not there, or says that it assumed it.
fn asks_for(answer: &DropAnswer, field: Field) -> bool {
    match answer {
        DropAnswer::Ready(view) => view.doubts.iter().any(|doubt| match doubt {
            DropDoubt::Assumed(assumed) => *assumed == field,
            DropDoubt::NoHeatLimit => field == Field::DropHeatMost,
            _ => false,
        }),
        DropAnswer::Lacks(lacks) => lacks.misses(field),
    }
}

/// The sheet with two values at one place, typed on two devices.
fn disputed(sheet: &DropSheet, field: Field) -> DropAnswer {
    let mut paper = ColdDropPaper::of(String::new(), sheet.clone());
    let unit = serde_json::to_value(field.unit(sheet.units)).unwrap();
    let other = Rival {
        value: serde_json::json!(["7", unit, 3]),
        at: 0,
        by: None,
    };
    let path = Place::of_engine(field).path();
    paper.ledger.rivals.insert(path, vec![other]);
    drop_of_paper(&paper)
}

/// Whether this drop uses a field.
fn uses(sheet: &DropSheet, field: Field) -> bool {
    let choice = !field.choices().is_empty();
    let asked = [
        sheet.part_fields(),
        sheet.cold_fields(),
        sheet.housing_fields(),
    ];
    choice || asked.concat().contains(&field)
}

fn every_sheet() -> Vec<DropSheet> {
    let mut sheets = Vec::new();
    for part in PARTS {
        for cold in COLDS {
            for heat in HEATS {
                for limit in LIMITS {
                    let words = [
                        (Field::DropPart, *part),
                        (Field::DropCold, *cold),
                        (Field::DropHeat, *heat),
                        (Field::DropHeatMost, limit),
                    ];
                    let typed = [&words[..], &NUMBERS].concat();
                    sheets.push(typed_drop([MaterialId::GrayIron; 2], &typed));
                }
            }
        }
    }
    sheets
}

#[test]
fn a_cold_drop_of_any_part_and_cold_names_what_it_cannot_use_and_goes_on_nothing_missing() {
    let (mut tried, mut goes) = (0, 0);
    for sheet in every_sheet() {
        let whole = signal(&drop_of_sheet(&sheet));
        goes += usize::from(whole == Some(Signal::Go));
        let fields: Vec<Field> = sheet.entries.iter().map(|(p, _)| p.field).collect();
        for field in fields {
            let told = || format!("{} in {:?}", field.spec().id, sheet.entries);
            let used = uses(&sheet, field);
            for text in ["4O", "9e99", "none of it"] {
                let mut spoilt = sheet.clone();
                put(&mut spoilt, field, text);
                let answer = drop_of_sheet(&spoilt);
                if used {
                    assert!(names(&answer, field), "{text}: {}", told());
                } else {
                    assert_eq!(signal(&answer), whole, "{text}: {}", told());
                }
                tried += 1;
            }
            assert!(names(&disputed(&sheet, field), field), "{}", told());
            let mut emptied = sheet.clone();
            put(&mut emptied, field, "");
            let answer = drop_of_sheet(&emptied);
            if !used {
                assert_eq!(signal(&answer), whole, "{}", told());
            } else if field.choices().is_empty() && !WISHES.contains(&field) {
                // Dry ice has a temperature of its own.
                let own = field == Field::DropColdAt
                    && matches!(sheet.cold(), Ok(cold) if !cold.is_read());
                assert!(own || signal(&answer) != Some(Signal::Go), "{}", told());
                // Nor does it become better but where it asks for that number.
                let better = rank(&answer) > rank(&drop_of_sheet(&sheet));
                assert!(own || !better || asks_for(&answer, field), "{}", told());
            }
            tried += 1;
        }
    }
    assert!(tried > 5_000 && goes > 10, "{tried} tried, {goes} goes");
}
