//! Lines of gauges.

use super::wire::*;
use proptest::prelude::*;

/// Lines as ports of gauges send them; the forms are common practice, no source.
#[test]
fn the_taught_number_and_its_unit() {
    let says = |wire: &Wire, line: &str, text: &str| {
        assert_eq!(wire.reading(line), Ok(text.to_owned()), "{line}");
    };
    let no = |wire: &Wire, line: &str, why| {
        assert_eq!(wire.reading(line), Err(why), "{line}");
    };
    let taught = |line: &str, number| {
        let mut wire = Wire::default();
        wire.teach(line, number);
        wire
    };
    let plain = Wire::default();
    for (line, text) in [
        ("+  12,70", "+12,70"),
        (".0043", ".0043"),
        ("-\t0000.0043", "-0.0043"),
        // In an inch job too: the line says which.
        ("12.70mm", "12.70 mm"),
        ("0.4375\"", "0.4375 in"),
    ] {
        says(&plain, line, text);
    }
    // A sign that belongs to no number, a word more, a letter that was garbled.
    for line in [
        "0.0021-",
        "+-0.0021",
        "-:0.5",
        "\u{e2}\u{88}\u{92}0.0021",
        "Err 2",
        "ERR07",
        "OL 0.0000",
        ">0.0021",
        "0.0021 LOW BAT",
        "1.5e-3",
        "-\u{0}0.0021",
        "1 2",
    ] {
        no(&plain, line, NoReading::Untaught);
    }
    no(&plain, "ERR", NoReading::NoNumber);
    no(&plain, &"1".repeat(LINE_MOST + 1), NoReading::TooLong);
    let inches = Wire {
        unit: WireUnit::Inch,
        ..Wire::default()
    };
    says(&inches, "0.4375", "0.4375 in");
    no(&inches, "12.70 mm", NoReading::TwoUnits);
    says(
        &taught("N 3; 0.0021 in", 1),
        "N 4; -00.0021 mm",
        "-0.0021 mm",
    );
    says(&taught("12:41 0.2091", 2), "12:42 0.2090", "0.2090");
    says(&taught("3,1.2091", 1), "4,1.2088", "1.2088");
    let channel = taught("01A+00012.700", 1);
    no(&channel, "01A+00012.700 LOW", NoReading::Otherwise);
    no(&channel, "01A 12.700 mm", NoReading::Otherwise);
    no(
        &taught("0.1 in 2.54 mm", 0),
        "0.1 in 2.54 mm",
        NoReading::TwoUnits,
    );
    no(&taught("0.1", 4), "0.1", NoReading::NoNumber);
}

#[test]
fn lines_end_as_they_may_and_none_is_joined_to_another() {
    let mut lines = Lines::default();
    assert_eq!(lines.take(b"0.00"), Vec::<String>::new());
    assert_eq!(lines.take(b"21\r\n0.0022\n\n\r0.00"), ["0.0021", "0.0022"]);
    assert_eq!(lines.rest().as_deref(), Some("0.00"));
    assert_eq!(lines.rest(), None);
    // Never an end: said once, then passed over to the next.
    let long = lines.take(&[b'7'; 500]);
    assert_eq!(long.len(), 1);
    assert_eq!(Wire::default().reading(&long[0]), Err(NoReading::TooLong));
    assert_eq!(lines.take(b"7\n0.0023\n"), ["0.0023"]);
}

proptest! {
    #[test]
    fn what_is_set_comes_back(
        speed in 0_usize..8, frame in 0_usize..3, unit in 0_usize..3,
        line in ".{0,40}", number in proptest::option::of(0_u8..),
    ) {
        let mut wire = Wire {
            speed: SPEEDS[speed],
            frame: Frame::ALL[frame],
            unit: WireUnit::ALL[unit],
            ..Wire::default()
        };
        if let Some(number) = number {
            wire.teach(&line, number);
        }
        prop_assert_eq!(Wire::from_words(&wire.words()), Some(wire));
    }

    #[test]
    fn any_bytes_make_lines_that_say_something_or_say_why(
        bytes in proptest::collection::vec(any::<u8>(), 0..600), number in 0_u8..4,
    ) {
        let mut lines = Lines::default();
        for line in lines.take(&bytes) {
            let mut wire = Wire::default();
            let plain = wire.reading(&line);
            // What is read untaught is all of the line.
            if let Ok(text) = plain {
                let digits = |text: &str| -> String {
                    let digits = text.chars().filter(|c| c.is_ascii_digit() || *c == '-');
                    digits.collect::<String>().replace('0', "")
                };
                prop_assert_eq!(digits(&text), digits(&line));
            }
            wire.teach(&line, number);
            let _ = wire.reading(&line);
        }
    }
}
