//! The table of a job's readings, read by a library that shares no code with
//! it: every reading is there once, its number is the one typed, its unit stands
//! in the head, and no cell is a formula.

use coldseat_core::document::csv::{Words, csv};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::{Entry, Field, Job, Place};
use coldseat_core::quantity::parse::Unit;

fn table(job: &Job) -> (Vec<String>, Vec<Vec<String>>) {
    let words = Words {
        heads: [
            "job",
            "whose",
            "reading",
            "length",
            "temperature",
            "pressure",
            "force",
            "time",
            "number",
            "roughness",
            "volume",
            "torque",
            "typed",
            "unit",
            "when",
            "kept",
        ],
        no_unit: "no unit",
        owner: &|place| format!("{:?}", place.owner),
        reading: &|place| format!("{}, {}", place.field.spec().id, place.index),
        time: &|at| at.to_string(),
    };
    let text = csv(job, words);
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let heads = reader.headers().expect("a head");
    let heads = heads.iter().map(str::to_owned).collect();
    let lines = reader
        .records()
        .map(|line| line.expect("a line").iter().map(str::to_owned).collect())
        .collect();
    (heads, lines)
}

#[test]
fn every_reading_is_there_with_its_unit_in_the_head() {
    for demo in Demo::ALL {
        let job = demo.job(1_700_000_000_000);
        let (heads, lines) = table(&job);
        let inch = demo == Demo::InchFive;
        let wanted = if inch {
            [
                "length (in)",
                "temperature (\u{b0}F)",
                "pressure (psi)",
                "force (lbf)",
                "time (s)",
                "number (no unit)",
                "roughness (\u{b5}m)",
                "volume (ft\u{b3})",
                "torque (lbf\u{b7}ft)",
            ]
        } else {
            [
                "length (mm)",
                "temperature (\u{b0}C)",
                "pressure (bar)",
                "force (kN)",
                "time (s)",
                "number (no unit)",
                "roughness (\u{b5}m)",
                "volume (m\u{b3})",
                "torque (N\u{b7}m)",
            ]
        };
        assert_eq!(heads[3..12], wanted);
        assert_eq!(lines.len(), job.entries.len());
        for line in &lines {
            let numbers: Vec<f64> = line[3..12]
                .iter()
                .filter_map(|cell| cell.parse().ok())
                .collect();
            // All of the demos' readings are typed in the column's unit; a word
            // is a word.
            match line[12].replace(',', ".").parse::<f64>() {
                Ok(typed) => assert_eq!(numbers, [typed], "{line:?}"),
                Err(_) => assert!(numbers.len() <= 1, "{line:?}"),
            }
        }
    }
}

#[test]
fn numbers_in_another_unit_are_converted_and_no_cell_is_a_formula() {
    let mut job = Demo::InchFive.job(0);
    job.name = "=HYPERLINK(\"x\")".to_owned();
    let place = |index| Place::of_cylinder(1, Field::SeatHeight, index);
    for (index, text) in ["2.54 mm", "-0.0020", "=1+1", "@x,\"y\""]
        .iter()
        .enumerate()
    {
        let entry = Entry::new(*text, Unit::Inch, 7);
        job.entries.put(place(index as u8), entry);
    }
    let (_, lines) = table(&job);
    let of = |typed: &str| {
        lines
            .iter()
            .find(|line| line[12] == typed && line[2].starts_with("seat_height"))
            .unwrap_or_else(|| panic!("{typed} is not there"))
    };
    assert_eq!(of("2.54 mm")[3], "0.1");
    assert_eq!(of("-0.0020")[3], "-0.002");
    assert_eq!(of("'=1+1")[3], "");
    assert_eq!(of("'@x,\"y\"")[3], "");
    for line in &lines {
        assert_eq!(line[0], "'=HYPERLINK(\"x\")");
        for cell in line {
            let formula = cell.starts_with(['=', '+', '@', '\t', '\r']);
            let minus = cell.starts_with('-') && cell.parse::<f64>().is_err();
            assert!(!formula && !minus, "{cell}");
        }
    }
}
