//! Properties that must hold whatever the numbers are: scaling, monotony,
//! limits, conservation, symmetry, and that nothing makes the evaluator panic.

#[path = "contract/requests.rs"]
#[allow(dead_code)] // the names of the outputs are the contract's test
mod requests;

use coldseat_core::evaluator::{answer, names};
use coldseat_core::materials::{Material, MaterialId};
use coldseat_core::mechanics::rings::{Elastic, PressFit, press_fit};
use coldseat_core::planning::pairing::pairing;
use coldseat_core::quantity::parse::{Unit, parse};
use coldseat_core::quantity::{
    Diameter, DiametralInterference, Length, Pressure, Seconds, Temperature, format,
};
use coldseat_core::thermal::cold_drop::{
    ColdDrop, LEANING, Resolution, USUAL, cold_drop, cold_drop_resolved,
};
use proptest::prelude::*;
use serde_json::Value;

fn drop_of(outer_mm: f64, wall_mm: f64, fit_um: f64, block_mm: f64, carry_s: f64) -> ColdDrop {
    let bore_mm = outer_mm - fit_um / 1e3;
    ColdDrop {
        sleeve_material: Material::catalogue(MaterialId::DuctileIronPearlitic),
        sleeve_inner: Diameter::from_mm(outer_mm - 2.0 * wall_mm),
        sleeve_outer: Diameter::from_mm(outer_mm),
        sleeve_length: Length::from_mm(200.0),
        block_material: Material::catalogue(MaterialId::GrayIron),
        block_bore: Diameter::from_mm(bore_mm),
        block_outer: Diameter::from_mm(bore_mm + 2.0 * block_mm),
        bath: Temperature::from_k(77.355),
        room: Temperature::from_c(20.0),
        block: Temperature::from_c(20.0),
        carry: Seconds::from_s(carry_s),
        air: None,
        lean: 0.0,
        frost: Length::default(),
        insertion: Seconds::default(),
    }
}

fn fit_of(outer_mm: f64, wall_mm: f64, ring: f64, fit_um: f64) -> PressFit {
    let iron = Elastic {
        youngs: Pressure::from_pa(110e9),
        poisson: 0.26,
    };
    PressFit {
        sleeve_inner: Diameter::from_mm(outer_mm - 2.0 * wall_mm),
        joint: Diameter::from_mm(outer_mm),
        block_outer: Diameter::from_mm(outer_mm * ring),
        sleeve: iron,
        block: iron,
        interference: DiametralInterference::from_um(fit_um),
        rz_sleeve: Length::from_um(0.0),
        rz_bore: Length::from_um(0.0),
        smoothing: 0.8,
        length: Length::from_mm(150.0),
        friction: 0.12,
    }
}

/// Sleeves of job.md: OD 90 to 140 mm, wall 2.3 to 6.4 mm.
fn usual_drop() -> impl Strategy<Value = (f64, f64, f64, f64, f64)> {
    (90.0..140.0, 2.3..6.4, 15.0..60.0, 6.0..40.0, 0.0..30.0)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None,
        rng_seed: proptest::test_runner::RngSeed::Fixed(20250), ..ProptestConfig::default() })]

    #[test]
    fn heat_is_conserved_and_time_runs_on((od, wall, fit, block, carry) in usual_drop()) {
        let a = cold_drop(&drop_of(od, wall, fit, block, carry)).expect("in range");
        prop_assert!(a.solution.heat_residual.abs() < 2e-3, "{}", a.solution.heat_residual);
        prop_assert!((20..=200).contains(&a.series.len()));
        prop_assert_eq!(a.series[0].t.as_s(), 0.0);
        prop_assert!(a.series.windows(2).all(|w| w[0].t < w[1].t));
        let last = a.series[a.series.len() - 1].t.as_s();
        let grip = a.grip.map_or(3600.0, |g| g.after.as_s());
        prop_assert!(last >= (2.0 * grip).min(3600.0) - 1e-6);
    }

    #[test]
    fn longer_carry_means_less_clearance_and_an_earlier_grip((od, wall, fit, block, carry) in usual_drop()) {
        let early = cold_drop(&drop_of(od, wall, fit, block, carry)).expect("in range");
        let late = cold_drop(&drop_of(od, wall, fit, block, carry + 10.0)).expect("in range");
        prop_assert!(late.clearance_entry < early.clearance_entry);
        prop_assert_eq!(late.clearance_bath, early.clearance_bath);
        if let (Some(a), Some(b)) = (early.grip, late.grip) {
            prop_assert!(b.after < a.after);
        }
    }

    #[test]
    fn more_fit_means_an_earlier_grip_and_more_climb((od, wall, fit, block, carry) in usual_drop()) {
        let loose = cold_drop(&drop_of(od, wall, fit, block, carry)).expect("in range");
        let tight = cold_drop(&drop_of(od, wall, fit + 10.0, block, carry)).expect("in range");
        if let (Some(a), Some(b)) = (loose.grip, tight.grip) {
            prop_assert!(b.after < a.after);
            prop_assert!(b.climb > a.climb);
            prop_assert!(b.climb <= tight.climb_ceiling);
        }
    }

    #[test]
    fn the_usual_resolution_is_within_half_a_percent((od, wall, fit, block, carry) in usual_drop()) {
        let drop = drop_of(od, wall, fit, block, carry);
        let fine = Resolution { sleeve_cells: 16, block_cells: 40, sectors: 1, tolerance_k: 0.005 };
        let a = cold_drop(&drop).expect("in range").grip;
        let b = cold_drop_resolved(&drop, &fine).expect("in range").grip;
        if let (Some(a), Some(b)) = (a, b) {
            let share = a.after.as_s() / b.after.as_s() - 1.0;
            // A grip within seconds stands on the first moments of the flow.
            prop_assert!((a.after.as_s() - b.after.as_s()).abs() < 0.02 || share.abs() < 5e-3, "{share}");
        }
    }

    #[test]
    fn a_lean_takes_time_and_a_contact_comes_before_the_grip((od, wall, fit, block, carry) in usual_drop(), lean in 0.05..1.0) {
        let straight = drop_of(od, wall, fit, block, carry);
        let leaning = ColdDrop { lean, insertion: Seconds::from_s(2.0), ..straight.clone() };
        let (a, b) = (cold_drop(&straight).expect("in range"), cold_drop(&leaning).expect("in range"));
        prop_assert_eq!(a.touch, a.grip.map(|g| g.after));
        if let (Some(straight), Some(leaning), Some(touch)) = (a.grip, b.grip, b.touch) {
            // A hair for the coarser cells of the leaning one.
            prop_assert!(leaning.after.as_s() <= 1.01 * straight.after.as_s());
            prop_assert!(touch <= leaning.after);
            prop_assert_eq!(b.left_home.map(|s| s.as_s()), Some(touch.as_s() - 2.0));
        }
    }

    #[test]
    fn sectors_and_cells_of_a_leaning_sleeve_are_enough((od, wall, fit, block, carry) in usual_drop(), lean in 0.1..1.0) {
        let drop = ColdDrop { lean, ..drop_of(od, wall, fit, block, carry) };
        let round = Resolution { sectors: 12, block_cells: 5, ..LEANING };
        let fine = Resolution { sectors: 6, sleeve_cells: 5, block_cells: 12, tolerance_k: 0.05 };
        let a = cold_drop(&drop).expect("in range");
        for other in [round, fine] {
            let b = cold_drop_resolved(&drop, &other).expect("in range");
            if let (Some(a), Some(b)) = (a.grip, b.grip) {
                let share = a.after.as_s() / b.after.as_s() - 1.0;
                prop_assert!(share.abs() < 0.02 || (a.after.as_s() - b.after.as_s()).abs() < 0.05, "{share}");
            }
            if let (Some(a), Some(b)) = (a.touch, b.touch) {
                let share = a.as_s() / b.as_s() - 1.0;
                prop_assert!(share.abs() < 0.05 || (a.as_s() - b.as_s()).abs() < 0.1, "{share}");
            }
        }
    }

    #[test]
    fn more_interference_means_more_pressure(od in 90.0..140.0, wall in 2.0..7.0, ring in 1.2..2.0, fit in 5.0..80.0) {
        let p = |um| press_fit(&fit_of(od, wall, ring, um)).expect("in range").pressure;
        prop_assert!(p(fit + 1.0) > p(fit));
        // Linear: twice the fit, twice the pressure.
        prop_assert!((p(2.0 * fit).as_pa() / p(fit).as_pa() - 2.0).abs() < 1e-9);
    }

    #[test]
    fn scaling_every_length_scales_every_movement(od in 90.0..140.0, wall in 2.0..7.0, ring in 1.2..2.0, fit in 5.0..80.0) {
        let one = press_fit(&fit_of(od, wall, ring, fit)).expect("in range");
        let two = press_fit(&fit_of(2.0 * od, 2.0 * wall, ring, 2.0 * fit)).expect("in range");
        prop_assert!((two.pressure.as_pa() / one.pressure.as_pa() - 1.0).abs() < 1e-9);
        prop_assert!((two.sleeve_inner_change.as_m() / one.sleeve_inner_change.as_m() - 2.0).abs() < 1e-9);
    }

    #[test]
    fn a_thin_sleeve_of_the_blocks_own_iron_closes_by_the_whole_fit(od in 90.0..140.0, ring in 1.5..3.0) {
        // Thin-ring limit: all of the interference goes into the sleeve.
        let a = press_fit(&fit_of(od, 0.01, ring, 20.0)).expect("in range");
        prop_assert!((-a.sleeve_inner_change.as_um() / 20.0 - 1.0).abs() < 2e-3);
    }

    #[test]
    fn no_interference_is_loose(od in 90.0..140.0, wall in 2.0..7.0, ring in 1.2..2.0) {
        let a = press_fit(&fit_of(od, wall, ring, 0.0)).expect("in range");
        prop_assert_eq!(a.pressure.as_pa(), 0.0);
        prop_assert_eq!(a.findings[0].code.id(), "loose");
    }

    #[test]
    fn inches_and_millimetres_give_the_same_drop((od, wall, fit, block, carry) in usual_drop()) {
        let mm = drop_of(od, wall, fit, block, carry);
        let typed = |d: Diameter| {
            let text = format!("{:.6}", d.as_inch());
            Diameter::from_m(parse(&text, Unit::Inch).expect("a number").si)
        };
        let inch = ColdDrop {
            sleeve_inner: typed(mm.sleeve_inner),
            sleeve_outer: typed(mm.sleeve_outer),
            block_bore: typed(mm.block_bore),
            block_outer: typed(mm.block_outer),
            ..mm.clone()
        };
        let a = cold_drop(&mm).expect("in range");
        let b = cold_drop(&inch).expect("in range");
        // Six decimals of an inch: 0.0254 um on each of two diameters.
        prop_assert!((a.clearance_entry.as_um() - b.clearance_entry.as_um()).abs() < 0.06);
    }

    #[test]
    fn pairing_does_not_care_who_comes_first(seed in prop::collection::vec(0_u32..60, 6)) {
        let sleeves: Vec<Diameter> = seed[..3].iter().map(|i| Diameter::from_um(108_000.0 + f64::from(*i))).collect();
        let bores: Vec<Diameter> = seed[3..].iter().map(|i| Diameter::from_um(107_900.0 + f64::from(*i))).collect();
        let target = DiametralInterference::from_um(30.0);
        let turned: Vec<Diameter> = sleeves.iter().rev().copied().collect();
        let a = pairing(&sleeves, &bores, target).expect("in range");
        let b = pairing(&turned, &bores, target).expect("in range");
        prop_assert!((a.worst_stock.as_m() - b.worst_stock.as_m()).abs() < 1e-12);
        prop_assert!((a.total_stock.as_m() - b.total_stock.as_m()).abs() < 1e-12);
        prop_assert_eq!(a.findings, b.findings);
    }

    #[test]
    fn what_is_shown_reads_back(si in -0.05..0.05_f64) {
        for unit in [Unit::Inch, Unit::Millimetre, Unit::Thou, Unit::Micrometre] {
            let shown = format::with_unit(si, unit);
            let back = parse(&shown, unit).expect("what is shown can be typed").si;
            let step = unit.scale() * 10_f64.powi(-(format::decimals(unit) as i32));
            prop_assert!((back - si).abs() <= 0.501 * step, "{shown}");
        }
    }

    #[test]
    fn parsing_never_panics(text in "\\PC{0,60}") {
        for unit in [Unit::Inch, Unit::Celsius, Unit::Psi, Unit::Second] {
            if let Ok(typed) = parse(&text, unit) {
                prop_assert!(typed.si.is_finite());
            }
        }
    }

    #[test]
    fn the_evaluator_never_panics_on_text(text in "\\PC{0,200}") {
        let _ = answer(&text);
    }

    #[test]
    fn the_evaluator_never_panics_on_json(inputs in any_json(), which in 0_usize..26) {
        let name = names().nth(which % names().count()).expect("a name");
        let line = serde_json::json!({"id": 1, "calc": name, "inputs": inputs}).to_string();
        let reply: Value = serde_json::from_str(&answer(&line).expect("an answer")).expect("JSON");
        prop_assert!(reply.get("error").is_some() || reply.get("outputs").is_some());
    }
}

/// A leaf of a good request made something else, of every calculation there is.
#[test]
fn every_calculation_answers_whatever_its_request_is_made_of() {
    fn leaves(value: &Value, path: &str, found: &mut Vec<String>) {
        match value {
            Value::Array(list) => {
                for (at, one) in list.iter().enumerate() {
                    leaves(one, &format!("{path}/{at}"), found);
                }
            }
            Value::Object(object) => {
                for (key, one) in object {
                    leaves(one, &format!("{path}/{key}"), found);
                }
            }
            _ => found.push(path.to_owned()),
        }
    }
    let mut rng = fastrand::Rng::with_seed(7);
    let wild = |rng: &mut fastrand::Rng| match rng.u8(0..12) {
        0 => Value::Null,
        1 => serde_json::json!("NaN"),
        2 => serde_json::json!([]),
        3 => serde_json::json!({"x": 1}),
        4 => serde_json::json!(true),
        5 => serde_json::json!(0),
        6 => serde_json::json!(-1e308),
        7 => serde_json::json!(1e308),
        8 => serde_json::json!(1e-300),
        9 => serde_json::json!(rng.f64()),
        10 => serde_json::json!(1e-4 * rng.f64()),
        _ => serde_json::json!(500.0 * rng.f64()),
    };
    for name in names() {
        let good = requests::good(name);
        let mut places = Vec::new();
        leaves(&good, "", &mut places);
        for _ in 0..60 {
            let mut inputs = good.clone();
            for _ in 0..rng.usize(1..4) {
                let place = &places[rng.usize(0..places.len())];
                if let Some(leaf) = inputs.pointer_mut(place) {
                    *leaf = wild(&mut rng);
                }
            }
            let line = serde_json::json!({"id": 1, "calc": name, "inputs": inputs}).to_string();
            let reply = answer(&line).expect("an answer");
            let reply: Value = serde_json::from_str(&reply).expect("JSON: no NaN, no infinity");
            let error = reply["error"]["field"].as_str();
            assert!(error.is_some() || reply["outputs"].is_object(), "{line}");
        }
    }
}

fn any_json() -> impl Strategy<Value = Value> {
    let names = prop::sample::select(vec![
        "sleeve",
        "block",
        "material",
        "inner_d_m",
        "outer_d_m",
        "length_m",
        "bath_k",
        "room_k",
        "carry_s",
        "levels",
        "d_m",
        "z_m",
        "pulls",
        "thickness_m",
        "depth_m",
        "height_m",
        "errors_m",
        "properties",
        "fit",
        "x",
    ]);
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        (-1.0..1.0_f64).prop_map(Value::from),
        (70.0..500.0_f64).prop_map(Value::from),
        Just(Value::from("gray_iron")),
        "\\PC{0,12}".prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 48, 8, move |inner| {
        let names = names.clone();
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            prop::collection::vec((names, inner), 0..8).prop_map(|pairs| Value::Object(
                pairs.into_iter().map(|(k, v)| (k.to_owned(), v)).collect()
            )),
        ]
    })
}

/// The cold drop converges at second order in its cells or better.
#[test]
fn the_cold_drop_converges_with_its_cells() {
    let drop = drop_of(107.0, 4.0, 32.0, 12.0, 8.0);
    let grip = |sleeve_cells: usize, block_cells: usize| {
        let r = Resolution {
            sleeve_cells,
            block_cells,
            sectors: 1,
            tolerance_k: 1e-4,
        };
        cold_drop_resolved(&drop, &r)
            .expect("in range")
            .grip
            .expect("grips")
            .after
            .as_s()
    };
    let exact = grip(24, 36);
    let (coarse, fine) = (grip(3, 36), grip(6, 36));
    let order = ((coarse - exact) / (fine - exact)).abs().log2();
    assert!(order > 1.7, "order {order} in the sleeve's cells");
    let (coarse, fine) = (grip(24, 6), grip(24, 12));
    let order = ((coarse - exact) / (fine - exact)).abs().log2();
    assert!(order > 1.4, "order {order} in the block's cells");
}

/// And with the tolerance of its steps.
#[test]
fn the_cold_drop_converges_with_its_tolerance() {
    let drop = drop_of(107.0, 4.0, 32.0, 12.0, 8.0);
    let grip = |tolerance_k: f64| {
        let r = Resolution {
            tolerance_k,
            ..USUAL
        };
        cold_drop_resolved(&drop, &r)
            .expect("in range")
            .grip
            .expect("grips")
            .after
            .as_s()
    };
    let exact = grip(1e-5);
    let (coarse, fine) = (
        (grip(0.5) / exact - 1.0).abs(),
        (grip(0.005) / exact - 1.0).abs(),
    );
    assert!(coarse < 5e-3, "{coarse}");
    assert!(fine < 0.2 * coarse, "{fine} after {coarse}");
}
