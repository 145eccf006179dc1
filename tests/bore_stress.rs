//! Stress of a fitted sleeve against closed forms: Lame's rings (rows A10 of
//! `sources/mechanics.json`), heat through a thick wall (Timoshenko and
//! Goodier, Theory of Elasticity; from memory), the force of the whole joint by
//! two finite-element programs (rows D01), Williams' sharp corner (1952; from
//! memory). The corners themselves are compared with scikit-fem in the
//! cross-check.

use coldseat_core::materials::{ConstantProperties, Material};
use coldseat_core::mechanics::bore_profile::{
    BoreProfileInput, BoreStress, BoreStressInput, Flange, Heat, Joint, bore_stress,
};
use coldseat_core::mechanics::rings::Elastic;
use coldseat_core::quantity::{
    Diameter, DiametralInterference, Force, Length, Pressure, Temperature,
};
use coldseat_tests::{Ledger, near};
use core::cell::Cell;
use core::f64::consts::PI;

const FRICTION: f64 = 0.12;

/// Cases C1 to C3 of the project's mechanics reference; inches, psi.
const CASES: [(&str, [f64; 7], (f64, f64)); 3] = [
    (
        "C1",
        [2.0, 2.125, 3.0, 0.00125, 6.0, 0.200, 0.100],
        (16e6, 0.26),
    ),
    (
        "C2",
        [2.5625, 2.75, 3.7, 0.0015, 9.0, 0.300, 0.150],
        (21e6, 0.26),
    ),
    (
        "C3",
        [1.906, 2.0, 2.9, 0.0010, 5.5, 0.150, 0.0625],
        (10.4e6, 0.33),
    ),
];

fn input(case: usize, at_inch: f64) -> BoreStressInput {
    let (_, [a, b, c, fit, long, thick, width], block) = CASES[case];
    let elastic = |(e, nu)| Elastic {
        youngs: Pressure::from_psi(e),
        poisson: nu,
    };
    BoreStressInput {
        profile: BoreProfileInput {
            sleeve_inner: Diameter::from_inch(2.0 * a),
            sleeve_outer: Diameter::from_inch(2.0 * b),
            length: Length::from_inch(long),
            flange: Some(Flange {
                outer: Diameter::from_inch(2.0 * (b + width)),
                thickness: Length::from_inch(thick),
            }),
            sleeve: elastic((24.4e6, 0.275)),
            block_outer: Diameter::from_inch(2.0 * c),
            block: elastic(block),
            below: Length::from_m(0.0),
            jacket: None,
            interference: DiametralInterference::from_inch(fit),
            joint: Joint::Frictionless,
            clamp: Force::from_n(0.0),
            gas: Pressure::from_pa(0.0),
            gas_depth: None,
            heat: None,
            depths: vec![Length::from_inch(thick + 0.5 * long)],
        },
        friction: FRICTION,
        at: Length::from_inch(at_inch),
    }
}

fn solved(input: &BoreStressInput) -> BoreStress {
    bore_stress(input).expect("in range")
}

#[test]
fn the_middle_is_pressed_as_lame_says_and_the_fit_holds_as_the_joint_presses() {
    let mut rows = Ledger::read(include_str!("sources/mechanics.json")).only(&["A10", "D01"]);
    for (i, (name, [_, b, _, _, long, _, _], _)) in CASES.iter().enumerate() {
        let stress = solved(&input(i, 0.02));
        let lame_pressure = Cell::new(0.0);
        rows.answer(&format!("A10-{name}-sig_t_sleeve_id"), |row| {
            row.check_share(stress.hoop_inner[0].as_psi(), 0.005);
        });
        rows.answer(&format!("A10-{name}-p"), |row| {
            lame_pressure.set(row.value())
        });
        let lame = FRICTION * lame_pressure.get() * 2.0 * PI * b * long;
        rows.answer(
            &format!("D01-{name}-flange, clr OD, flush bottom-p_mean"),
            |row| row.check_share(stress.seat_force.as_lbf() / lame, 0.011),
        );
    }
}

#[test]
fn heat_through_a_thick_wall_presses_its_inside() {
    // E alpha (mean T - T inside) / (1 - nu), far from the ends.
    let mut input = input(0, 0.02);
    let (a, b) = (1.7_f64, 2.125_f64);
    input.profile.sleeve_inner = Diameter::from_inch(2.0 * a);
    input.profile.length = Length::from_inch(24.0);
    input.profile.depths = vec![Length::from_inch(12.2)];
    input.profile.interference = DiametralInterference::from_inch(-0.1);
    let expands = Material::constant(ConstantProperties {
        expansion_per_k: Some(12e-6),
        ..ConstantProperties::default()
    });
    input.profile.heat = Some(Heat {
        sleeve_material: expands.clone(),
        block_material: expands,
        sleeve: [90.0, 30.0].map(|over| Temperature::from_k(293.15 + over)),
        block: [Temperature::from_k(293.15); 2],
    });
    let log = (b / a).ln();
    let share = (b * b * log - 0.5 * (b * b - a * a)) / ((b * b - a * a) * log);
    let want = 24.4e6 * 12e-6 * (-60.0 * share) / (1.0 - 0.275);
    let got = solved(&input).hoop_inner[0].as_psi();
    near(
        "hoop",
        got,
        want,
        0.01 * want.abs(),
        "thermal stress of a long cylinder",
    );
}

#[test]
fn the_ledge_bears_the_clamp_over_its_ring() {
    let mut input = input(0, 0.02);
    input.profile.clamp = Force::from_lbf(10_000.0);
    let ring = PI * (2.225 * 2.225 - 2.125 * 2.125);
    let got = solved(&input).ledge_pressure.as_psi();
    near("ledge", got, 10_000.0 / ring, 0.1, "force over area");
}

/// Round an inner corner of 270 degrees of metal with free sides stress goes as
/// the distance to the power of -0.4555: half as near, 1.371 times as much. A
/// clamp bends the flange on its fillet; the flange's pressure on one side makes
/// it no more than nearly so.
#[test]
fn stress_grows_toward_a_sharp_corner_as_williams_found() {
    let at = |inch: f64| {
        let mut input = input(0, inch);
        input.profile.clamp = Force::from_lbf(10_000.0);
        solved(&input).fillet[1].as_psi()
    };
    let growth = at(0.015) / at(0.030);
    near("growth", growth, 1.371, 0.06, "Williams");
}

#[test]
fn two_meshes_agree_away_from_the_corner() {
    for case in 0..CASES.len() {
        let mut input = input(case, 0.03);
        input.profile.clamp = Force::from_lbf(10_000.0);
        let [usual, half] = solved(&input).fillet.map(Pressure::as_psi);
        near(
            "fillet",
            usual,
            half,
            0.1 * half,
            "the mesh of half the size",
        );
    }
}

#[test]
fn what_it_refuses() {
    let field = |input: &BoreStressInput| bore_stress(input).expect_err("refused").field;
    assert_eq!(field(&input(0, 0.051)), "at_m");
    assert_eq!(field(&input(0, 0.0)), "at_m");
    let mut bare = input(0, 0.02);
    bare.profile.flange = None;
    bare.profile.depths.clear();
    assert_eq!(field(&bare), "sleeve.flange_outer_d_m");
    let mut rough = input(0, 0.02);
    rough.friction = 2.1;
    assert_eq!(field(&rough), "friction");
}
