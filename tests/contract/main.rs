//! The evaluator's contract: every calculation answers and refuses in the form
//! agreed; pairing agrees with a search through all pairings; the verdicts of
//! fit and seat fall as their rules say.

mod heights;
mod requests;
mod ties;

use coldseat_core::evaluator::{LONGEST_LINE, answer, names};
use requests::{OUTPUTS, good};
use serde_json::{Value, json};

fn ask(calc: &str, inputs: &Value) -> Value {
    let line = json!({"id": 1, "calc": calc, "inputs": inputs}).to_string();
    serde_json::from_str(&answer(&line).expect("an answer")).expect("JSON")
}

#[track_caller]
fn outputs(calc: &str, inputs: &Value) -> Value {
    let reply = ask(calc, inputs);
    assert!(reply["error"].is_null(), "{calc}: {}", reply["error"]);
    reply["outputs"].clone()
}

#[track_caller]
fn refused(calc: &str, inputs: &Value, field: &str) {
    let reply = ask(calc, inputs);
    assert_eq!(reply["error"]["field"], field, "{calc}: {reply}");
    assert!(
        reply["error"]["message"]
            .as_str()
            .is_some_and(|m| m.len() > 8),
        "{reply}"
    );
}

#[test]
fn every_calculation_answers_with_its_outputs() {
    for name in names() {
        let out = outputs(name, &good(name));
        if let Some((_, wanted)) = OUTPUTS.iter().find(|(n, _)| *n == name) {
            for key in wanted.split(' ') {
                assert!(out.get(key).is_some(), "{name} lacks {key}");
            }
            assert_eq!(
                out.as_object().map(|o| o.len()),
                Some(wanted.split(' ').count()),
                "{name}"
            );
        }
    }
    for (name, _) in OUTPUTS {
        assert!(names().any(|n| n == *name), "{name} is missing");
    }
}

/// Every field left out, of the wrong type, misspelt: a fault that names it.
#[test]
fn every_field_is_demanded_and_checked() {
    const OPTIONAL: &[&str] = &[
        "ram_inner_d_m",
        "fit",
        "flange",
        "samples",
        "seed",
        "slope",
        "block_k",
        "air_w_m2k",
        "gas_pa",
        "gas_depth_m",
        "temperatures",
        "offset",
        "frost_m",
        "insert_s",
        "near_k",
        "prior_home",
        "gap_scale_m",
        "prior_alike",
    ];
    for name in names() {
        let whole = good(name);
        let object = whole.as_object().expect("an object");
        for key in object.keys() {
            let mut without = object.clone();
            without.remove(key);
            let reply = ask(name, &Value::Object(without));
            if !OPTIONAL.contains(&key.as_str()) {
                let field = reply["error"]["field"].as_str().unwrap_or("");
                assert!(
                    field.starts_with(key.as_str())
                        || (name == "cross_hatch" && field == "cycles_per_s")
                        || (name == "block_ring" && field == "pitch_m"),
                    "{name} without {key}: {reply}"
                );
            }
            for wrong in [json!("NaN"), json!({"a": 1}), json!(true)] {
                let mut other = object.clone();
                other.insert(key.clone(), wrong.clone());
                let reply = ask(name, &Value::Object(other));
                let field = reply["error"]["field"].as_str().unwrap_or("");
                if name == "bands" && key == "inputs" && wrong.is_object() {
                    // An object, but without the fields that are to be sampled.
                    assert_eq!(field, "uncertain[0].field");
                    continue;
                }
                assert!(
                    field.starts_with(key.as_str()),
                    "{name} with {key} = {wrong}: {reply}"
                );
            }
        }
        let mut more = object.clone();
        more.insert("not_a_field".to_owned(), json!(1));
        refused(name, &Value::Object(more), "not_a_field");
    }
}

#[test]
fn lines_that_are_no_requests() {
    let error = |line: &str| -> Value {
        serde_json::from_str(&answer(line).expect("an answer")).expect("JSON")
    };
    for line in [
        "[1]",
        "7",
        "nonsense",
        "{\"id\":",
        "null",
        "{\"a\":1,\"a\":2}",
    ] {
        let reply = error(line);
        assert_eq!(reply["error"]["field"], "line", "{line}");
        assert!(reply["id"].is_null());
    }
    assert_eq!(error(r#"{"id": 3}"#)["error"]["field"], "calc");
    assert_eq!(
        error(r#"{"id": 3, "calc": "no such"}"#)["error"]["field"],
        "calc"
    );
    assert_eq!(error(r#"{"id": 3, "calc": 5}"#)["error"]["field"], "calc");
    assert_eq!(
        error(r#"{"id": 3, "calc": "wall"}"#)["error"]["field"],
        "inputs"
    );
    assert_eq!(
        error(r#"{"id": 3, "calc": "wall", "inputs": []}"#)["error"]["field"],
        "inputs"
    );
    assert_eq!(
        error(r#"{"id": 3, "calc": "wall", "inputs": {}, "x": 1}"#)["error"]["field"],
        "x"
    );
    assert!(answer("   ").is_none());
    let id = error(r#"{"id": {"a": [1, "b"]}, "calc": "wall"}"#)["id"].clone();
    assert_eq!(id, json!({"a": [1, "b"]}));
    let long = format!(r#"{{"id": "{}"}}"#, "x".repeat(LONGEST_LINE));
    assert_eq!(error(&long)["error"]["field"], "line");
    assert_eq!(error(&"[".repeat(100_000))["error"]["field"], "line");
}

#[test]
fn contradictions_name_the_inner_one() {
    let with = |calc: &str, path: &str, value: Value| {
        let mut inputs = good(calc);
        *inputs.pointer_mut(path).expect("a field") = value;
        inputs
    };
    refused(
        "chill",
        &with("chill", "/inner_d_m", json!(0.108)),
        "inner_d_m",
    );
    refused(
        "cold_drop",
        &with("cold_drop", "/sleeve/inner_d_m", json!(0.2)),
        "sleeve.inner_d_m",
    );
    refused(
        "cold_drop",
        &with("cold_drop", "/block/bore_d_m", json!(0.2)),
        "block.bore_d_m",
    );
    refused(
        "press_fit",
        &with("press_fit", "/sleeve/outer_d_m", json!(0.2)),
        "sleeve.outer_d_m",
    );
    refused(
        "pull",
        &with("pull", "/ledge_inner_d_m", json!(0.2)),
        "ledge_inner_d_m",
    );
    refused(
        "seat",
        &with("seat", "/depth_m", json!([0.0078])),
        "depth_m",
    );
    refused(
        "seat",
        &with("seat", "/pulls/1/relaxed_m", json!(0.3)),
        "pulls[1].relaxed_m",
    );
    refused(
        "fit",
        &with("fit", "/band_m", json!([3e-5, 3e-5])),
        "band_m",
    );
    refused(
        "fit",
        &with("fit", "/sleeve_d_m", json!([0.1, 0.1, 0.1, -1])),
        "sleeve_d_m[3]",
    );
    refused(
        "joint",
        &with("joint", "/hardness_pa", json!(1.5e6)),
        "pressure_pa",
    );
    refused(
        "joint",
        &with("joint", "/hardness_pa", json!(1e5)),
        "hardness_pa",
    );
    refused(
        "groove",
        &with("groove", "/stand_proud_m", json!(0.003)),
        "stand_proud_m",
    );
    refused(
        "engine_effect",
        &with("engine_effect", "/removal_m", json!(0.02)),
        "removal_m",
    );
    refused("chill", &with("chill", "/start_k", json!(77.0)), "start_k");
    refused(
        "bore_profile",
        &with("bore_profile", "/z_m", json!([0.156])),
        "z_m[0]",
    );
    refused(
        "bore_profile",
        &with("bore_profile", "/sleeve/flange_outer_d_m", json!(null)),
        "sleeve.flange_outer_d_m",
    );
    refused(
        "bore_profile",
        &with("bore_profile", "/gas_depth_m", json!(0.156)),
        "gas_depth_m",
    );
    refused(
        "bore_profile",
        &with("bore_profile", "/temperatures/block_outer_k", json!(501)),
        "temperatures.block_outer_k",
    );
    let mut clamped = with("bore_profile", "/clamp_n", json!(1000));
    clamped["sleeve"]["flange_outer_d_m"] = json!(null);
    clamped["sleeve"]["flange_thickness_m"] = json!(null);
    clamped["z_m"] = json!([0]);
    refused("bore_profile", &clamped, "clamp_n");
    let mut both = good("contraction");
    both["properties"] = json!({"expansion_per_k": 1e-5});
    refused("contraction", &both, "properties");
    let mut neither = good("contraction");
    neither.as_object_mut().expect("object").remove("material");
    refused("contraction", &neither, "material");
    let mut two = good("cross_hatch");
    two["included_rad"] = json!(0.5);
    refused("cross_hatch", &two, "included_rad");
    let mut ram = good("pull");
    ram["ram_area_m2"] = json!(0.004);
    refused("pull", &ram, "ram_area_m2");
    let many = json!({"errors_m": vec![0.0; 100_001]});
    refused("scatter", &many, "errors_m");
    refused(
        "pairing",
        &json!({"sleeve_d_m": vec![0.1; 65], "bore_d_m": [0.1], "target_m": 0}),
        "sleeve_d_m",
    );
}

/// Pairing against every permutation (a search by brute force), with spares on
/// either side, ties and bores that are too big.
#[test]
fn pairing_agrees_with_trying_everything() {
    let tenth = |i: i64| i as f64 * 2.54e-6 + 0.1;
    let cases: &[(&[i64], &[i64], i64)] = &[
        (&[12, 16, 9], &[0, 3, 1], 10),
        (&[12, 12, 12], &[1, 1, 2], 10),
        (&[14, 10, 12, 18], &[2, 0, 5], 9),
        (&[14, 10], &[2, 0, 5, 1, 3], 8),
        (&[5, 9, 30, 2], &[0, 0, 12, 4], 6),
        (&[20, 21, 22, 23, 24], &[5, 9, 1, 3, 7], 12),
    ];
    for (sleeves, bores, target) in cases {
        let reply = outputs(
            "pairing",
            &json!({
                "sleeve_d_m": sleeves.iter().map(|i| tenth(*i)).collect::<Vec<_>>(),
                "bore_d_m": bores.iter().map(|i| tenth(*i)).collect::<Vec<_>>(),
                "target_m": *target as f64 * 2.54e-6,
            }),
        );
        let got: Vec<Option<usize>> = reply["bore_for_sleeve"]
            .as_array()
            .expect("a list")
            .iter()
            .map(|v| v.as_u64().map(|i| i as usize))
            .collect();
        assert_eq!(
            got,
            best_pairing(sleeves, bores, *target),
            "{sleeves:?} {bores:?}"
        );
    }
}

type Key = (usize, i64, i64, Vec<usize>);

fn best_pairing(sleeves: &[i64], bores: &[i64], target: i64) -> Vec<Option<usize>> {
    let pairs = sleeves.len().min(bores.len());
    let mut best: Option<(Key, Vec<Option<usize>>)> = None;
    let mut now = vec![None; sleeves.len()];
    try_all(sleeves, bores, target, pairs, 0, &mut now, &mut best);
    best.expect("a pairing").1
}

fn try_all(
    sleeves: &[i64],
    bores: &[i64],
    target: i64,
    pairs: usize,
    at: usize,
    now: &mut Vec<Option<usize>>,
    best: &mut Option<(Key, Vec<Option<usize>>)>,
) {
    if at == sleeves.len() {
        if now.iter().flatten().count() != pairs {
            return;
        }
        let stock: Vec<i64> = now
            .iter()
            .zip(sleeves)
            .filter_map(|(j, s)| j.map(|j| s - target - bores[j]))
            .collect();
        let key = (
            stock.iter().filter(|s| **s < 0).count(),
            stock.iter().copied().max().unwrap_or(0),
            stock.iter().sum(),
            now.iter().map(|j| j.unwrap_or(usize::MAX)).collect(),
        );
        if best.as_ref().is_none_or(|(k, _)| key < *k) {
            *best = Some((key, now.clone()));
        }
        return;
    }
    for choice in (0..bores.len()).map(Some).chain([None]) {
        if choice.is_none() || !now[..at].contains(&choice) {
            now[at] = choice;
            try_all(sleeves, bores, target, pairs, at + 1, now, best);
            now[at] = None;
        }
    }
}

#[test]
fn a_sleeve_that_does_not_enter() {
    let mut inputs = good("cold_drop");
    inputs["block"]["bore_d_m"] = json!(0.1064);
    let line = json!({"id": 1, "calc": "cold_drop", "inputs": inputs}).to_string();
    let reply: Value = serde_json::from_str(&answer(&line).expect("answer")).expect("JSON");
    assert_eq!(reply["findings"][0]["code"], "does_not_enter");
    let out = &reply["outputs"];
    assert_eq!(out["grip_s"], json!(0.0));
    assert_eq!(out["grip_slow_s"], json!(0.0));
    let series = out["series"].as_array().expect("series");
    assert!((20..=200).contains(&series.len()));
    assert!(series[0]["clearance_m"].as_f64().is_some_and(|c| c < 0.0));
    assert_eq!(series[0]["clearance_m"], out["clearance_entry_m"]);
    assert!(series[1..].iter().all(|p| p["clearance_m"] == json!(0.0)));
    assert!((series[series.len() - 1]["t_s"].as_f64().expect("t") - 60.0).abs() < 1e-6);
}

#[test]
fn a_cold_drop_beyond_the_sizes_it_is_checked_for_says_so() {
    let mut inputs = good("cold_drop");
    inputs["sleeve"]["material"] = json!("stainless_304");
    inputs["sleeve"]["inner_d_m"] = json!(0.1067 - 2.0 * 0.0196);
    let line = json!({"id": 1, "calc": "cold_drop", "inputs": inputs}).to_string();
    let reply: Value = serde_json::from_str(&answer(&line).expect("answer")).expect("JSON");
    let found = reply["findings"].as_array().expect("findings");
    assert!(found.iter().any(|f| f["code"] == "outside_sizes"));
    let line = json!({"id": 1, "calc": "cold_drop", "inputs": good("cold_drop")}).to_string();
    let reply: Value = serde_json::from_str(&answer(&line).expect("answer")).expect("JSON");
    assert_eq!(reply["findings"], json!([]));
}

#[test]
fn a_sleeve_that_never_grips() {
    let mut inputs = good("cold_drop");
    inputs["block"]["bore_d_m"] = json!(0.1069);
    let line = json!({"id": 1, "calc": "cold_drop", "inputs": inputs}).to_string();
    let reply: Value = serde_json::from_str(&answer(&line).expect("answer")).expect("JSON");
    assert_eq!(reply["findings"][0]["code"], "never_grips");
    let out = &reply["outputs"];
    for name in [
        "grip_s",
        "grip_sleeve_mean_k",
        "grip_block_mean_k",
        "climb_m",
        "grip_slow_s",
    ] {
        assert!(out[name].is_null(), "{name}");
    }
    let series = out["series"].as_array().expect("series");
    assert!((20..=200).contains(&series.len()));
    let times: Vec<f64> = series.iter().filter_map(|p| p["t_s"].as_f64()).collect();
    assert!(times.windows(2).all(|w| w[0] < w[1]));
    assert!((times[times.len() - 1] - 3600.0).abs() < 1.0);
}

#[test]
fn bands_are_the_same_for_a_seed_and_say_what_matters() {
    let first = outputs("bands", &good("bands"));
    assert_eq!(first, outputs("bands", &good("bands")));
    let pressure = &first["bands"]["pressure_pa"];
    let at = |name: &str| pressure[name].as_f64().expect("a number");
    assert!(at("p5") < at("p50") && at("p50") < at("p95"));
    assert_eq!(
        pressure["matters_most"],
        json!(0),
        "the interference rules a press fit"
    );
    // Pressure is proportional to the interference: 2 um of 30 um, normal.
    let half = 0.5 * (at("p95") - at("p5")) / at("nominal");
    assert!((half - 1.645 * 2.0 / 30.0).abs() < 0.006, "{half}");
}
