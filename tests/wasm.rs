//! The core's numbers, computed in a browser: the same published values as on
//! the host, within the same tolerances, and the host's answers to the
//! contract's requests to a stated closeness. Native and wasm agree to 1e-9,
//! not to the bit: their mathematics libraries round differently.

#![cfg(target_arch = "wasm32")]

#[path = "contract/requests.rs"]
mod requests;
mod same;

use coldseat_core::evaluator::{answer, names};
use coldseat_core::materials::{Material, MaterialId};
use coldseat_core::metrology::scatter::tolerance_factor;
use coldseat_core::quantity::Temperature;
use requests::{OUTPUTS, good};
use serde_json::{Value, json};
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// What the host computed, written by `cargo xtask test --only wasm`.
const NATIVE: &str = include_str!(env!("COLDSEAT_NATIVE_ANSWERS"));

/// How near two numbers are to be: relative, and for those about zero absolute.
const NEAR: f64 = 1e-9;

fn compare(path: &str, host: &Value, here: &Value, far: &mut Vec<String>) {
    match (host, here) {
        (Value::Array(a), Value::Array(b)) if a.len() == b.len() => {
            for (at, (a, b)) in a.iter().zip(b).enumerate() {
                compare(&format!("{path}/{at}"), a, b, far);
            }
        }
        (Value::Object(a), Value::Object(b)) if a.len() == b.len() => {
            for (key, a) in a {
                compare(&format!("{path}/{key}"), a, &b[key], far);
            }
        }
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (a.as_f64().expect("a double"), b.as_f64().expect("a double"));
            if (a - b).abs() > NEAR * a.abs().max(b.abs()).max(1e-3) {
                far.push(format!("{path}: {a} on the host, {b} here"));
            }
        }
        (a, b) if a == b => {}
        (a, b) => far.push(format!("{path}: {a} on the host, {b} here")),
    }
}

#[wasm_bindgen_test]
fn the_host_and_the_browser_compute_the_same_numbers() {
    let host: Value = serde_json::from_str(NATIVE).expect("JSON");
    let mut far = Vec::new();
    compare("", &host, &same::everything(), &mut far);
    assert!(
        far.is_empty(),
        "{} differ: {:#?}",
        far.len(),
        &far[..far.len().min(12)]
    );
}

fn ask(calc: &str, inputs: &Value) -> Value {
    let line = json!({"id": 1, "calc": calc, "inputs": inputs}).to_string();
    serde_json::from_str(&answer(&line).expect("an answer")).expect("JSON")
}

#[wasm_bindgen_test]
fn every_calculation_answers() {
    for name in names() {
        let reply = ask(name, &good(name));
        assert!(reply["error"].is_null(), "{name}: {}", reply["error"]);
        if let Some((_, wanted)) = OUTPUTS.iter().find(|(n, _)| *n == name) {
            for key in wanted.split(' ') {
                assert!(reply["outputs"].get(key).is_some(), "{name} lacks {key}");
            }
        }
    }
}

/// thermal.json `castiron.dH.77-293`: 75.54 kJ/kg within 2.3.
#[wasm_bindgen_test]
fn heat_of_cast_iron() {
    let iron = Material::catalogue(MaterialId::GrayIron);
    let heat = iron.heat_j_kg(Temperature::from_k(293.15), Temperature::from_k(77.355));
    assert!((heat / 1e3 - 75.54).abs() < 2.3, "{heat}");
}

/// thermal.json `lock.0.16.block10`: 21.8 s within 2.5.
#[wasm_bindgen_test]
fn a_cold_drop_grips_when_it_should() {
    let inch = 0.0254;
    let bore = 4.19875 * inch;
    let reply = ask(
        "cold_drop",
        &json!({
            "sleeve": {"material": "gray_iron", "inner_d_m": 3.88 * inch, "outer_d_m": 4.2 * inch, "length_m": 0.22},
            "block": {"material": "gray_iron", "bore_d_m": bore, "outer_d_m": bore + 0.020},
            "bath_k": 77.355, "room_k": 293.15, "carry_s": 0
        }),
    );
    let grip = reply["outputs"]["grip_s"].as_f64().expect("it grips");
    assert!((grip - 21.8).abs() < 2.5, "{grip}");
}

/// Meeker, Hahn and Escobar, table J.5b: n = 6, 95/95: 4.422.
#[wasm_bindgen_test]
fn the_exact_tolerance_factor() {
    assert!((tolerance_factor(6, 0.95, 0.95).expect("a factor") - 4.422).abs() < 1e-3);
}

/// mechanics.json A10-C1: 337.988 psi, and mid-barrel by finite elements.
#[wasm_bindgen_test]
fn rings_and_finite_elements_agree() {
    let fit = ask("press_fit", &good("press_fit"));
    let mut profile = good("bore_profile");
    profile["sleeve"]["flange_outer_d_m"] = Value::Null;
    profile["sleeve"]["flange_thickness_m"] = Value::Null;
    profile["block"]["below_m"] = json!(0);
    profile["z_m"] = json!([0.075]);
    let cold = profile.as_object_mut().expect("an object");
    for running in ["gas_pa", "gas_depth_m", "temperatures"] {
        cold.remove(running);
    }
    let profile = ask("bore_profile", &profile);
    let ring = fit["outputs"]["sleeve_inner_d_change_m"]
        .as_f64()
        .expect("a number");
    let mesh = profile["outputs"]["inner_d_change_m"][0]
        .as_f64()
        .expect("a number");
    assert!((mesh / ring - 1.0).abs() < 1e-3, "{mesh} {ring}");
}
