//! Sleeves drawn by chance: those of a job, and all that the bounds allow.

use coldseat_core::materials::{ConstantProperties, Material};
use coldseat_core::mechanics::bore_profile::{
    BoreProfileInput, BoreStressInput, Flange, Heat, Jacket, Joint,
};
use coldseat_core::mechanics::rings::Elastic;
use coldseat_core::quantity::{
    Diameter, DiametralInterference, Force, Length, Pressure, Temperature,
};
use fastrand::Rng;

fn between(r: &mut Rng, low: f64, high: f64) -> f64 {
    low + (high - low) * r.f64()
}

/// Evenly by its logarithm: as many small ones as large ones.
fn over_decades(r: &mut Rng, low: f64, high: f64) -> f64 {
    (between(r, low.ln(), high.ln())).exp()
}

fn mm(value: f64) -> f64 {
    1e-3 * value
}

fn expanding(r: &mut Rng) -> Material {
    Material::constant(ConstantProperties {
        expansion_per_k: Some(between(r, 1e-5, 2.3e-5)),
        ..ConstantProperties::default()
    })
}

/// Temperatures of running.
fn heat(r: &mut Rng) -> Heat {
    let bore = between(r, 340.0, 400.0);
    let warm = |over: f64| Temperature::from_k(bore + over);
    Heat {
        sleeve_material: expanding(r),
        block_material: expanding(r),
        sleeve: [warm(between(r, 10.0, 40.0)), warm(between(r, 0.0, 10.0))],
        block: [warm(0.0), warm(-between(r, 0.0, 30.0))],
    }
}

fn elastic(r: &mut Rng, low_gpa: f64, high_gpa: f64) -> Elastic {
    Elastic {
        youngs: Pressure::from_pa(1e9 * between(r, low_gpa, high_gpa)),
        poisson: between(r, 0.24, 0.33),
    }
}

/// A flanged sleeve of a job: bore 80 to 170 mm, wall 2.3 to 6.4 mm, in a block
/// that is solid or jacketed, sliding or stuck, clamped or not, cold or running.
#[must_use]
pub fn of_a_job(r: &mut Rng) -> BoreStressInput {
    let wall = mm(between(r, 2.3, 6.4));
    let inner = mm(between(r, 80.0, 170.0));
    let outer = inner + 2.0 * wall;
    let length = mm(between(r, 120.0, 320.0));
    let thickness = mm(between(r, 3.0, 12.0));
    let width = mm(between(r, 2.0, 6.0));
    let jacket = r.bool().then(|| Jacket {
        wall: Length::from_m(mm(between(r, 5.0, 10.0))),
        deck: Length::from_m(thickness + mm(between(r, 3.0, 12.0))),
        bottom: Length::from_m(mm(between(r, 8.0, 20.0))),
    });
    let below = if r.bool() { 0.0 } else { between(r, 0.0, 40.0) };
    let gas = if r.bool() {
        0.0
    } else {
        between(r, 1e6, 1.8e7)
    };
    let deep = between(r, thickness, length);
    BoreStressInput {
        profile: BoreProfileInput {
            sleeve_inner: Diameter::from_m(inner),
            sleeve_outer: Diameter::from_m(outer),
            length: Length::from_m(length),
            flange: Some(Flange {
                outer: Diameter::from_m(outer + 2.0 * width),
                thickness: Length::from_m(thickness),
            }),
            sleeve: elastic(r, 100.0, 180.0),
            block_outer: Diameter::from_m(outer * between(r, 1.3, 1.7)),
            block: elastic(r, 70.0, 150.0),
            below: Length::from_m(mm(below)),
            jacket,
            interference: DiametralInterference::from_m(mm(between(r, 0.0, 0.1))),
            joint: if r.bool() {
                Joint::Stuck
            } else {
                Joint::Frictionless
            },
            clamp: Force::from_n(if r.bool() { 0.0 } else { between(r, 5e3, 1e5) }),
            gas: Pressure::from_pa(gas),
            gas_depth: r.bool().then(|| Length::from_m(deep)),
            heat: r.bool().then(|| heat(r)),
            depths: (0..12)
                .map(|i| Length::from_m((length + thickness) * f64::from(i) / 11.0))
                .collect(),
        },
        friction: 0.12,
        at: Length::from_m(between(r, 0.2, 0.35) * wall.min(width).min(thickness).min(mm(3.0))),
    }
}

/// Anything that the bounds of a single dimension allow and that does not
/// contradict itself: pinholes, washers, foils, blocks of two metres.
#[must_use]
pub fn odd(r: &mut Rng) -> BoreStressInput {
    let block = over_decades(r, 0.01, 2.0);
    // Each ring a share of what is left, from next to nothing to nearly all.
    let share = |r: &mut Rng| {
        let s = over_decades(r, 1e-3, 1.0);
        if r.bool() { s } else { 1.0 - s }
    };
    let outer = block * share(r).clamp(1e-3, 0.999);
    let inner = outer * share(r).clamp(1e-3, 0.999);
    let length = over_decades(r, 1e-3, 5.0);
    let flanged = r.u8(..5) > 0;
    let thickness = over_decades(r, 1e-4, 0.2);
    let widest = block - outer;
    let flange = flanged.then(|| Flange {
        outer: Diameter::from_m(outer + widest * share(r).clamp(1e-3, 0.999)),
        thickness: Length::from_m(thickness),
    });
    let top = length + if flanged { thickness } else { 0.0 };
    let below = if r.bool() {
        0.0
    } else {
        over_decades(r, 1e-5, 1.0)
    };
    let height = top + below;
    let jacket = (r.u8(..3) == 0).then(|| Jacket {
        wall: Length::from_m(0.5 * widest * share(r).clamp(1e-3, 0.999)),
        deck: Length::from_m((0.5 * height * share(r)).min(1.0)),
        bottom: Length::from_m((0.5 * height * share(r)).min(1.0)),
    });
    let clamp = if flanged && r.bool() {
        over_decades(r, 1.0, 1e6)
    } else {
        0.0
    };
    let gas = if r.bool() {
        0.0
    } else {
        over_decades(r, 1e3, 1e9)
    };
    let deep = top * r.f64();
    BoreStressInput {
        profile: BoreProfileInput {
            sleeve_inner: Diameter::from_m(inner),
            sleeve_outer: Diameter::from_m(outer),
            length: Length::from_m(length),
            flange,
            sleeve: Elastic {
                youngs: Pressure::from_pa(over_decades(r, 1e9, 1e12)),
                poisson: between(r, 0.0, 0.499),
            },
            block_outer: Diameter::from_m(block),
            block: Elastic {
                youngs: Pressure::from_pa(over_decades(r, 1e9, 1e12)),
                poisson: between(r, 0.0, 0.499),
            },
            below: Length::from_m(below),
            jacket,
            interference: DiametralInterference::from_m(between(r, -0.005, 0.005)),
            joint: if r.bool() {
                Joint::Stuck
            } else {
                Joint::Frictionless
            },
            clamp: Force::from_n(clamp),
            gas: Pressure::from_pa(gas),
            gas_depth: r.bool().then(|| Length::from_m(deep)),
            heat: r.bool().then(|| heat(r)),
            depths: vec![Length::from_m(0.0), Length::from_m(0.5 * top)],
        },
        friction: 0.12,
        at: Length::from_m(1e-6),
    }
}
