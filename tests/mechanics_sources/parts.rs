//! Materials, rows of bores and pull-down hardware.

use coldseat_core::materials::{Material, MaterialId};
use coldseat_core::mechanics::block_ring::{
    BlockRing, Fitted, FlangeEnd, Surround, block_ring, close_in_at_deck, oval_close_in,
};
use coldseat_core::mechanics::pull::{PullInput, Ram, Thread, pull, tensile_area};
use coldseat_core::mechanics::rings::PressFit;
use coldseat_core::quantity::{Diameter, Length, Pressure, Temperature};
use coldseat_tests::{Ledger, near};

use super::{bore_growth, c1, elastic, inch, pressed};

pub fn materials(ledger: &mut Ledger) {
    let of = |id: MaterialId| id.entry();
    let ferritic = of(MaterialId::DuctileIronFerritic);
    let pearlitic = of(MaterialId::DuctileIronPearlitic);
    ledger.answer("C02d", |row| row.check(ferritic.youngs.value / 1e9, 0.01));
    ledger.answer("C02e", |row| row.check(pearlitic.youngs.value / 1e9, 0.01));
    ledger.answer("C02c", |row| row.check(ferritic.poisson.value, 0.006));
    let ksi = |pa: f64| pa / 6.894_757e6;
    ledger.answer("C01-65-45-12-UTS", |row| {
        row.check(ksi(ferritic.tensile.value), 0.1)
    });
    ledger.answer("C01-80-55-06-UTS", |row| {
        row.check(ksi(pearlitic.tensile.value), 0.1)
    });
    // The US table's modulus lies within the band about the European one.
    for (id, entry) in [("C01-65-45-12-E", ferritic), ("C01-80-55-06-E", pearlitic)] {
        ledger.answer(id, |row| {
            let mpsi = entry.youngs.value / 6.894_757e9;
            row.check(mpsi, entry.youngs.band / 6.894_757e9);
        });
    }
    let gray = of(MaterialId::GrayIron);
    ledger.answer("C05-30", |row| row.check(ksi(gray.tensile.value), 0.1));
    ledger.answer("C06b", |row| row.check(gray.poisson.value, 1e-9));
    ledger.answer("C06c", |row| {
        let [lo, hi] = row.values()[..] else {
            panic!("two ends")
        };
        assert!(
            (lo..=hi).contains(&(gray.youngs.value / 1e9)),
            "{}",
            row.source()
        );
    });
    let compacted = of(MaterialId::CompactedIron);
    ledger.answer("C07a", |row| {
        near(
            &row.id,
            compacted.tensile.value / 1e6,
            row.values()[0],
            0.1,
            &row.source(),
        );
    });
    ledger.answer("C07c", |row| {
        let [lo, hi] = row.values()[..] else {
            panic!("two ends")
        };
        assert!(
            (lo..=hi).contains(&(compacted.youngs.value / 1e9)),
            "{}",
            row.source()
        );
    });
    let cast = of(MaterialId::AluminiumA356);
    ledger.answer("C08a", |row| row.check(cast.youngs.value / 1e9, 0.01));
    ledger.answer("C08f", |row| row.check(cast.poisson.value, 1e-9));
    ledger.answer("C08b", |row| {
        let m = Material::catalogue(MaterialId::AluminiumA356);
        let mean = m.strain(Temperature::from_c(100.0)) / 80.0 * 1e6;
        // The catalogue scales 6061 by its cold contraction; 3 % here.
        row.check_share(mean, 0.035);
    });
    ledger.omit(
        "grades, hardness, yield, elongation and moduli that the catalogue does not carry, and a \
         trap that it must not",
        &[
            "C01-65-45-12-Y",
            "C01-65-45-12-el",
            "C01-65-45-12-HB",
            "C01-80-55-06-Y",
            "C01-80-55-06-el",
            "C01-80-55-06-HB",
            "C01-100-70-03",
            "C02a",
            "C02b",
            "C02f",
            "C03",
            "C04",
            "C05-35",
            "C05-40",
            "C06a",
            "C06d",
            "C07b",
            "C07d",
            "C08c",
            "C08d",
            "C08e",
        ],
    );
}

/// The numbers in an id such as `D05-free-s1.275-W1.6`.
fn part(id: &str, letter: char) -> f64 {
    id.split('-')
        .find_map(|p| p.strip_prefix(letter).and_then(|n| n.parse().ok()))
        .unwrap_or_else(|| panic!("{id}: no {letter}"))
}

fn ring_of(s: f64, w: f64, fitted: Fitted) -> BlockRing {
    let surround = Surround::Row {
        pitch: Length::from_mm(100.0 * s),
        half_width: Length::from_mm(50.0 * w),
        fitted,
    };
    block_ring(Diameter::from_mm(100.0), surround).expect("in range")
}

pub fn rows_of_bores(ledger: &mut Ledger) {
    for (prefix, fitted, share) in [
        ("D05-free-", Fitted::All, 0.027),
        ("D05-fixed-", Fitted::One, 0.052),
    ] {
        ledger.answer(prefix, |row| {
            let ring = ring_of(part(&row.id, 's'), part(&row.id, 'W'), fitted);
            // The rule's own published error.
            row.check_share(ring.outer.as_mm() / 100.0, share);
        });
    }
    ledger.answer("D07-", |row| {
        let [along, across, _, close] = row.values()[..] else {
            panic!("four values")
        };
        let (s, w, t) = (row.input("s"), row.input("W"), row.input("t"));
        let block = if row.input_text("block") == "Al" {
            10.4e6
        } else {
            16e6
        };
        let fit = PressFit {
            sleeve_inner: Diameter::from_mm(100.0 * (1.0 - t)),
            joint: Diameter::from_mm(100.0),
            block_outer: Diameter::from_mm(100.0 * row.input("ceff")),
            sleeve: elastic(Pressure::from_psi(24e6), 0.275),
            block: elastic(Pressure::from_psi(block), 0.26),
            ..c1()
        };
        let p = pressed(&fit);
        let closing = -p.sleeve_inner_change.as_m();
        near(
            &row.id,
            closing / fit.interference.as_m(),
            close,
            0.02,
            "mean close-in",
        );
        let growth = 2.0 * 0.0254 * bore_growth(&fit) / closing;
        let got = oval_close_in(ring_of(s, w, Fitted::All).oval_growth, growth);
        // The rule's own stated error, 4 % of the mean close-in.
        near(&row.id, got[0], along, 0.04, "along the row");
        near(&row.id, got[1], across, 0.04, "across the row");
    });
    ledger.answer("D08-", |row| {
        let matrix = row.fields["value"].as_array().expect("a matrix");
        let at = |i: usize, j: usize| matrix[i][j].as_f64().expect("a number");
        let ring = ring_of(row.input("s"), row.input("W"), Fitted::One);
        for i in 0..3 {
            near(
                &row.id,
                ring.neighbour_growth,
                at(i, i + 1) / at(i, i),
                0.02,
                "neighbour",
            );
        }
    });
    ledger.answer("D02", |_| {
        // The fitted rule against the finite elements of D01: at most 0.06 off.
        let cases = [
            ("C1", [2.125, 0.125, 0.200, 0.100], 0.672),
            ("C2", [2.750, 0.1875, 0.300, 0.150], 0.615),
            ("C3", [2.000, 0.094, 0.150, 0.0625], 0.762),
        ];
        for (name, [r, wall, thickness, width], deck) in cases {
            let end = FlangeEnd {
                thickness: Length::from_inch(thickness),
                width: Length::from_inch(width),
                wall: Length::from_inch(wall),
            };
            let share = close_in_at_deck(inch(2.0 * r), &end).expect("in range");
            near(name, share, deck, 0.06, "mechanics.md D2");
        }
    });
    ledger.omit("coefficients and errors of the fits themselves", &["D06"]);
}

pub fn pulls(ledger: &mut Ledger) {
    ledger.answer("E01", |row| {
        let pitch = Length::from_inch(1.0 / row.input("n"));
        let area = tensile_area(inch(row.input("D")), pitch, Thread::Inch).as_m2();
        row.check(area / 0.0254_f64.powi(2), 0.0005);
    });
    ledger.answer("E02", |row| {
        let pitch = Length::from_mm(row.input("P"));
        let area = tensile_area(Diameter::from_mm(row.input("d")), pitch, Thread::Metric).as_m2();
        row.check(area * 1e6, 0.02);
    });
    let force = |gauge_psi: f64, outer: f64, inner: f64| {
        pull(&PullInput {
            gauge: Pressure::from_psi(gauge_psi),
            ram: Ram::Annulus {
                outer: inch(outer),
                inner: inch(inner),
            },
            rod_major: inch(1.0),
            rod_pitch: Length::from_inch(0.125),
            rod_thread: Thread::Inch,
            rod_length: Length::from_inch(24.0),
            rod_youngs: Pressure::from_psi(29e6),
            ledge_outer: inch(4.45),
            ledge_inner: inch(4.27),
            flange_thickness: Length::from_inch(0.2),
            flange_root: inch(4.25),
        })
        .expect("in range")
        .force
        .as_lbf()
    };
    ledger.answer("E09b", |row| row.check(force(1600.0, 3.0, 0.0), 0.01));
    ledger.answer("E09c", |row| row.check_share(force(100.0, 2.5, 1.0), 1e-4));
    ledger.omit(
        "root areas, proof loads, strip areas and an intensifier: no part of the pull",
        &["E03", "E04", "E06", "E07", "E09a"],
    );
}
