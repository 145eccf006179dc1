//! The bore profile under gas and warm, against closed forms: Lame's thick
//! cylinder, free expansion, two rings of different metal (project reference
//! mechanics.md A: delta + b (e_s - e_b)), and the thick cylinder with heat
//! flowing through its wall (Timoshenko and Goodier, Theory of Elasticity,
//! thermal stress of a long hollow cylinder; from memory, the mean-temperature
//! form derived here).

use coldseat_core::materials::{ConstantProperties, Material};
use coldseat_core::mechanics::bore_profile::{BoreProfileInput, Flange, Heat, Joint, bore_profile};
use coldseat_core::mechanics::rings::Elastic;
use coldseat_core::quantity::{
    Diameter, DiametralInterference, Force, Length, Pressure, Temperature,
};
use coldseat_tests::near;

/// Inches: sleeve inside, joint, block outside, length (case C1).
const A: f64 = 2.0;
const B: f64 = 2.125;
const C: f64 = 3.0;
const LONG: f64 = 6.0;
const SLEEVE: (f64, f64) = (24.4e6, 0.275);
const BLOCK: (f64, f64) = (16e6, 0.26);

fn elastic((e, nu): (f64, f64)) -> Elastic {
    Elastic {
        youngs: Pressure::from_psi(e),
        poisson: nu,
    }
}

/// Case C1 without a flange, no interference, cold, no gas.
fn plain(depths: &[f64]) -> BoreProfileInput {
    BoreProfileInput {
        sleeve_inner: Diameter::from_inch(2.0 * A),
        sleeve_outer: Diameter::from_inch(2.0 * B),
        length: Length::from_inch(LONG),
        flange: None,
        sleeve: elastic(SLEEVE),
        block_outer: Diameter::from_inch(2.0 * C),
        block: elastic(BLOCK),
        below: Length::from_m(0.0),
        jacket: None,
        interference: DiametralInterference::from_m(0.0),
        joint: Joint::Frictionless,
        clamp: Force::from_n(0.0),
        gas: Pressure::from_pa(0.0),
        gas_depth: None,
        heat: None,
        depths: depths.iter().map(|z| Length::from_inch(*z)).collect(),
    }
}

fn expands(per_k: f64) -> Material {
    Material::constant(ConstantProperties {
        expansion_per_k: Some(per_k),
        ..ConstantProperties::default()
    })
}

/// Steady temperatures over 293.15 K: sleeve inside and outside, block bore
/// and outside; expansion of sleeve and block.
fn heat(sleeve: [f64; 2], block: [f64; 2], per_k: [f64; 2]) -> Option<Heat> {
    let t = |over: f64| Temperature::from_k(293.15 + over);
    Some(Heat {
        sleeve_material: expands(per_k[0]),
        block_material: expands(per_k[1]),
        sleeve: sleeve.map(t),
        block: block.map(t),
    })
}

/// Radial compliance of the two rings, in/psi: Lame, plane stress.
fn compliance() -> f64 {
    let (a2, b2, c2) = (A * A, B * B, C * C);
    B * (((b2 + a2) / (b2 - a2) - SLEEVE.1) / SLEEVE.0
        + ((c2 + b2) / (c2 - b2) + BLOCK.1) / BLOCK.0)
}

/// Close-in of the sleeve's inside on diameter under a joint pressure, in.
fn close_in(p: f64) -> f64 {
    4.0 * A * B * B * p / (SLEEVE.0 * (B * B - A * A))
}

const DEPTHS: [f64; 5] = [0.3, 1.5, 3.0, 4.5, 5.7];

#[track_caller]
fn everywhere(input: &BoreProfileInput, change_inch: f64, pressure_psi: f64, share: f64) {
    let profile = bore_profile(input).expect("in range");
    for (change, p) in profile.inner_change.iter().zip(&profile.pressure) {
        let scale = change_inch.abs().max(1e-6);
        near(
            "inside",
            change.as_inch(),
            change_inch,
            share * scale,
            "closed form",
        );
        let scale = pressure_psi.abs().max(1.0);
        near(
            "pressure",
            p.as_psi(),
            pressure_psi,
            share * scale,
            "closed form",
        );
    }
    assert!(
        profile.residual < 1e-8,
        "unbalanced by {}",
        profile.residual
    );
}

#[test]
fn gas_in_two_rings_is_lames_thick_cylinder() {
    let gas = 2000.0;
    let mut input = plain(&DEPTHS);
    input.gas = Pressure::from_psi(gas);
    // The free sleeve's outside grows by 2 a2 b p / (E (b2 - a2)).
    let (a2, b2) = (A * A, B * B);
    let joint = 2.0 * a2 * B * gas / (SLEEVE.0 * (b2 - a2)) / compliance();
    near("A18a", joint, 1461.4, 0.2, "project reference A18a");
    // Inside of a thick cylinder under its own pressure: a p/E ((b2+a2)/(b2-a2) + nu).
    let own = 2.0 * A * gas / SLEEVE.0 * ((b2 + a2) / (b2 - a2) + SLEEVE.1);
    everywhere(&input, own - close_in(joint), joint, 2e-4);
    // With the fit beside it: superposition, 337.988 psi and 0.000970478 in (A10).
    input.interference = DiametralInterference::from_inch(0.00125);
    everywhere(
        &input,
        own - close_in(joint) - 0.000_970_478,
        joint + 337.988,
        2e-4,
    );
}

#[test]
fn warm_all_through_is_free_growth_without_stress() {
    let warm = [80.0, 80.0];
    let grown = 2.0 * A * 11e-6 * 80.0;
    for joint in [Joint::Frictionless, Joint::Stuck] {
        let mut input = plain(&DEPTHS);
        input.joint = joint;
        input.heat = heat(warm, warm, [11e-6, 11e-6]);
        let profile = bore_profile(&input).expect("in range");
        for (change, p) in profile.inner_change.iter().zip(&profile.pressure) {
            near("inside", change.as_inch(), grown, 1e-9 * grown, "d e(T)");
            near("pressure", p.as_psi(), 0.0, 1e-4, "free growth");
        }
        // Nor does it alter what a fit with flange, clamp and friction does.
        input.flange = Some(Flange {
            outer: Diameter::from_inch(4.45),
            thickness: Length::from_inch(0.2),
        });
        input.interference = DiametralInterference::from_inch(0.00125);
        input.clamp = Force::from_lbf(2000.0);
        let warm = bore_profile(&input).expect("in range");
        input.heat = None;
        let cold = bore_profile(&input).expect("in range");
        for (w, c) in warm.inner_change.iter().zip(&cold.inner_change) {
            near("inside", w.as_inch() - c.as_inch(), grown, 1e-9, "d e(T)");
        }
        for (w, c) in warm.pressure.iter().zip(&cold.pressure) {
            near("pressure", w.as_psi(), c.as_psi(), 1e-3, "no stress");
        }
        let (w, c) = (warm.ledge_force.as_lbf(), cold.ledge_force.as_lbf());
        near("ledge", w, c, 1e-3, "no stress");
        let height = |p: Option<Length>| p.expect("a flange").as_inch();
        let (w, c) = (height(warm.height_change), height(cold.height_change));
        near("height", w, c, 1e-9, "sleeve and block grow alike");
    }
}

#[test]
fn two_metals_warm_are_lames_rings_with_the_grown_fit() {
    let mut input = plain(&DEPTHS);
    input.interference = DiametralInterference::from_inch(0.001);
    // Sleeve 100 K up at 11e-6, block 60 K up at 11.5e-6.
    input.heat = heat([100.0; 2], [60.0; 2], [11e-6, 11.5e-6]);
    let grown = B * (11e-6 * 100.0 - 11.5e-6 * 60.0);
    let p = (0.0005 + grown) / compliance();
    let free = 2.0 * A * 11e-6 * 100.0;
    everywhere(&input, free - close_in(p), p, 5e-4);
    // An aluminium block that runs as warm lets go: the sleeve is free.
    input.heat = heat([100.0; 2], [100.0; 2], [11e-6, 21.5e-6]);
    everywhere(&input, free, 0.0, 1e-6);
}

#[test]
fn heat_through_a_thick_wall_moves_the_inside_by_the_mean_temperature() {
    // A free thick cylinder, 90 K up inside, 30 K outside: its inside grows by
    // its own diameter times the strain at the mean temperature over the area.
    let (a, b) = (1.0_f64, 2.125_f64);
    let mut input = plain(&[0.0, 12.0]);
    // Thick and long: the end's bending has died out at the middle.
    input.length = Length::from_inch(24.0);
    input.sleeve_inner = Diameter::from_inch(2.0 * a);
    input.interference = DiametralInterference::from_inch(-0.1);
    input.heat = heat([90.0, 30.0], [0.0, 0.0], [12e-6, 12e-6]);
    let log = (b / a).ln();
    let share = (b * b * log - 0.5 * (b * b - a * a)) / ((b * b - a * a) * log);
    let mean = 90.0 - 60.0 * share;
    let profile = bore_profile(&input).expect("in range");
    let want = 2.0 * a * 12e-6 * mean;
    let middle = profile.inner_change[1].as_inch();
    near("inside", middle, want, 1e-3 * want, "mean over the area");
    // Its ends flare, for want of the moment that holds the middle straight.
    let end = profile.inner_change[0].as_inch();
    assert!(
        (end / want - 1.0).abs() > 0.01,
        "an end is no middle: {end} {want}"
    );
}

#[test]
fn gas_that_reaches_in_part_pushes_with_its_part() {
    // The sleeve alone: far above the gas' edge the thick cylinder, far below
    // it nothing.
    let mut input = plain(&[0.8, 5.5]);
    input.interference = DiametralInterference::from_inch(-0.1);
    input.gas = Pressure::from_psi(1000.0);
    input.gas_depth = Some(Length::from_inch(3.1));
    let profile = bore_profile(&input).expect("in range");
    let (a2, b2) = (A * A, B * B);
    let own = 2.0 * A * 1000.0 / SLEEVE.0 * ((b2 + a2) / (b2 - a2) + SLEEVE.1);
    near(
        "above",
        profile.inner_change[0].as_inch(),
        own,
        0.01 * own,
        "Lame",
    );
    near(
        "below",
        profile.inner_change[1].as_inch(),
        0.0,
        0.01 * own,
        "unloaded",
    );
    // Gas down to an edge sweeps over the whole length what gas over the whole
    // length sweeps down to that edge (Betti's reciprocity).
    let swept = |depth: Option<f64>, from: f64, to: f64| {
        let mut input = input.clone();
        input.gas_depth = depth.map(Length::from_inch);
        input.depths = (0..=200)
            .map(|i| Length::from_inch(from + (to - from) * f64::from(i) / 200.0))
            .collect();
        let changes = bore_profile(&input).expect("in range").inner_change;
        let ends = 0.5 * (changes[0].as_inch() + changes[200].as_inch());
        (changes.iter().map(|c| c.as_inch()).sum::<f64>() - ends) * (to - from) / 200.0
    };
    let part = swept(Some(3.1), 0.0, LONG);
    let whole = swept(None, 0.0, 3.1);
    near(
        "swept volume",
        part,
        whole,
        2e-4 * whole,
        "Betti's reciprocity",
    );
}

/// A stuck node that pulls while it is held and overlaps while it is free: the
/// search ran in a circle on this ordinary sleeve. Now it slides there.
#[test]
fn a_stuck_joint_that_lets_go_at_its_foot_is_found() {
    let mut input = plain(&[]);
    input.sleeve_inner = Diameter::from_m(0.109_769);
    input.sleeve_outer = Diameter::from_m(0.115_449);
    input.length = Length::from_m(0.123_737);
    input.flange = Some(Flange {
        outer: Diameter::from_m(0.120_836),
        thickness: Length::from_m(0.006_557),
    });
    input.sleeve = Elastic {
        youngs: Pressure::from_pa(172.759e9),
        poisson: 0.272,
    };
    input.block_outer = Diameter::from_m(0.159_291);
    input.block = Elastic {
        youngs: Pressure::from_pa(111.236e9),
        poisson: 0.2928,
    };
    input.interference = DiametralInterference::from_m(41.84e-6);
    input.joint = Joint::Stuck;
    let profile = bore_profile(&input).expect("a steady contact");
    assert!(
        profile.residual < 1e-8,
        "unbalanced by {}",
        profile.residual
    );
}
