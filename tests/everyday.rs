//! Seven questions as shops ask them of parts that are shrunk in, each with its
//! answer worked out beside it by hand.
//!
//! By hand: what the part shrinks is its contraction (named at each question) times
//! its diameter; what it warms on the way is 2 h dT t / (density cp wall) of both
//! faces at the temperature it has (h = 14.4 W/m2/K at 77 K and 9.5 at 195 K: free
//! convection and radiation, reference thermal.md C1; cp from its tables), times
//! the slope of e(T) there. Good to a few per cent of the clearance; how the seconds
//! compare with an independent solution is the cross-check's business.

use coldseat_core::ask::{DropAnswer, DropDoubt, DropView, Signal, drop_of_sheet};
use coldseat_core::job::Field;
use coldseat_core::job::drop::DropVerdict;
use coldseat_core::materials::MaterialId;
use coldseat_core::thermal::drop_odds::drop_odds;
use coldseat_tests::typed_drop;

fn ask(materials: [MaterialId; 2], typed: &[(Field, &str)]) -> DropView {
    match drop_of_sheet(&typed_drop(materials, typed)) {
        DropAnswer::Ready(view) => *view,
        DropAnswer::Lacks(lacks) => panic!("{lacks:?}"),
    }
}

/// The clearance at the bore in inches, against what was worked out by hand.
#[track_caller]
fn clears(view: &DropView, by_hand: f64, within: f64) {
    let entry = view.band.nominal.clearance_entry.as_m() / 0.0254;
    assert!(
        (entry - by_hand).abs() <= within,
        "{entry:.5} in at the bore, by hand {by_hand:.5} +- {within:.5}"
    );
}

const IRONS: [MaterialId; 2] = [MaterialId::DuctileIronFerritic, MaterialId::GrayIron];
const SLEEVE: &[(Field, &str)] = &[
    (Field::DropPart, "plain_sleeve"),
    (Field::DropOd, "4.2500"),
    (Field::DropWall, "0.1250"),
    (Field::DropLength, "9.0000"),
    (Field::DropFit, "0.0012"),
    (Field::DropBlockWall, "0.3500"),
    (Field::DropCarry, "8"),
    (Field::DropRoom, "68"),
];

fn sleeve(more: &[(Field, &str)]) -> DropView {
    ask(IRONS, &[SLEEVE, more].concat())
}

#[test]
fn how_much_room_has_a_ductile_sleeve_in_nitrogen() {
    // 4.25 x 0.181 % (EN 1561 annexes from memory, charts read) = 0.00769; less the
    // fit 0.0012; 8 s warm it by 2 x 14.4 x 216 x 8 / (7100 x 165 x 0.00318) = 13 K at
    // 3.2e-6/K (ferrous shape at 84 K), 0.00018.
    clears(&sleeve(&[]), 0.00769 - 0.0012 - 0.00018, 0.0001);
}

#[test]
fn and_in_dry_ice() {
    // The shape of ferrous expansion is 0.551 of the whole at 194.7 K: 4.25 x 0.00181
    // x 0.551 = 0.00424; 1.7 K on the way at 8.5e-6/K, 0.00006.
    let view = sleeve(&[(Field::DropCold, "dry_ice_alcohol")]);
    clears(&view, 0.00424 - 0.0012 - 0.00006, 0.0001);
    assert_eq!(view.verdict, DropVerdict::Tight, "less than 0.004");
    // And less time than a hand needs: that much room closes before 3 s.
    let odds = drop_odds(&view.case.drop, view.case.unknowns()).expect("drawn");
    assert!(odds.home_within.as_s() < 3.0, "{odds:?}");
}

#[test]
fn and_in_dry_ice_with_the_block_at_80_c() {
    // Gray iron from 20 to 80 C: 0.00178 x 0.371 (the same shape) = 0.000660, 4.25 of it
    // 0.00281; out of the oven 10 s it loses 0.5 K, 0.00002.
    let view = sleeve(&[
        (Field::DropCold, "dry_ice_alcohol"),
        (Field::DropHeat, "oven"),
        (Field::DropHeatAt, "176"),
        (Field::DropHeatOut, "10"),
    ]);
    clears(&view, 0.00298 + 0.00281 - 0.00002, 0.0001);
    assert!(view.doubts.contains(&DropDoubt::NoHeatLimit));
}

#[test]
fn does_the_freezer_do_anything_for_a_sleeve() {
    // 0 F: 0.221 of the shape, 4.25 x 0.00181 x 0.221 = 0.00170, half a thousandth
    // more than the fit: it goes in, no hand is so quick.
    let view = sleeve(&[(Field::DropCold, "freezer"), (Field::DropColdAt, "0")]);
    clears(&view, 0.00170 - 0.0012, 0.0001);
    assert!(view.signal > Signal::Go);
    let odds = drop_odds(&view.case.drop, view.case.unknowns()).expect("drawn");
    assert_eq!(view.by_time(&odds).0, Signal::Stop, "{odds:?}");
}

#[test]
fn does_a_bronze_bushing_of_two_thousandths_drop_in() {
    let bushing = |cold: &'static str| {
        ask(
            [MaterialId::BronzeC93200, MaterialId::CarbonSteel],
            &[
                (Field::DropPart, "bushing"),
                (Field::DropCold, cold),
                (Field::DropOd, "1.5000"),
                (Field::DropWall, "0.1250"),
                (Field::DropLength, "2.0000"),
                (Field::DropFit, "0.0020"),
                (Field::DropBlockWall, "0.7500"),
                (Field::DropCarry, "8"),
                (Field::DropRoom, "68"),
            ],
        )
    };
    // C93200 in nitrogen: 0.314 % (copper's curve by NIST, scaled by 18.0e-6 over
    // copper's 17.8e-6) of 1.5 = 0.00471; 8 s of a 2 in bushing at 18 W/m2/K warm it
    // by 2 x 18 x 216 x 8 / (8910 x 200 x 0.00318) = 11 K at 8.5e-6/K, 0.00014.
    clears(&bushing("nitrogen"), 0.00471 - 0.0020 - 0.00014, 0.0001);
    // In the freezer 18e-6 x 38 K x 1.5 = 0.00103: half of the fit is left.
    let cold = bushing("freezer");
    assert_eq!(cold.verdict, DropVerdict::DoesNotEnter);
    clears(&cold, 0.00100 - 0.0020, 0.0001);
}

#[test]
fn does_a_seat_of_four_thousandths_drop_into_a_head_of_150_c() {
    let seat = |cold: &'static str| {
        ask(
            [MaterialId::CobaltR30006, MaterialId::AluminiumA356],
            &[
                (Field::DropPart, "seat_ring"),
                (Field::DropCold, cold),
                (Field::DropHeat, "oven"),
                (Field::DropHeatAt, "302"),
                (Field::DropHeatOut, "0"),
                (Field::DropOd, "1.7500"),
                (Field::DropWall, "0.1500"),
                (Field::DropLength, "0.3000"),
                (Field::DropFit, "0.0040"),
                (Field::DropBlockWall, "0.4000"),
                (Field::DropCarry, "4"),
                (Field::DropRoom, "68"),
            ],
        )
    };
    // A356 from 20 to 150 C: 0.9416 x (22.64e-6 + 0.975e-8 x 130) x 130 = 0.00293,
    // of 1.75 in 0.00512: a thousandth of room, the head alone.
    clears(&seat("none"), 0.00512 - 0.0040, 0.00005);
    // In dry ice the seat gives about 11e-6 x 98 K x 1.75 = 0.0019 more (mean
    // coefficient of cobalt alloys below room temperature: 11e-6, 10 % either way).
    clears(&seat("dry_ice_alcohol"), 0.00112 + 0.0019, 0.00025);
}

#[test]
fn does_a_quarter_inch_pin_drop_in() {
    // Carbon steel in nitrogen 0.1885 % (1075 steel, read) of 0.25 = 0.00047; a fit
    // of 0.0003 leaves 0.00017. 3 s warm it by 4 h dT t / (density cp d): at 20
    // W/m2/K 6 K at 3.2e-6/K, 0.000005.
    let view = ask(
        [MaterialId::CarbonSteel, MaterialId::CarbonSteel],
        &[
            (Field::DropPart, "pin"),
            (Field::DropOd, "0.2500"),
            (Field::DropLength, "1.0000"),
            (Field::DropFit, "0.0003"),
            (Field::DropBlockWall, "0.5000"),
            (Field::DropCarry, "3"),
            (Field::DropRoom, "68"),
        ],
    );
    clears(&view, 0.00017 - 0.000005, 0.00001);
}

#[test]
fn what_a_sleeve_climbs_is_at_least_its_length_times_fit_over_diameter() {
    // physics.md, climb: 9 in of 0.0012 in 4.25 give 0.0025 in, whatever the bath. That
    // is for one iron in both; here the block's contraction is 0.178 and the sleeve's
    // 0.181 %, 1.7 % apart, and the bore is at 293.15 K smaller by the fit: 3 % in all.
    for cold in ["nitrogen", "dry_ice_alcohol"] {
        let view = sleeve(&[(Field::DropCold, cold)]);
        let grip = view.band.nominal.grip.expect("it grips");
        let climb = grip.climb.as_m() / 0.0254;
        let least = 9.0 * 0.0012 / 4.25;
        assert!(climb >= 0.97 * least, "{cold}: {climb:.5} in, {least:.5}");
    }
}
