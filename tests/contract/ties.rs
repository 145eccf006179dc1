//! Ties and what stops: a length on its limit, typed as decimals, is within it;
//! two nanometres beyond it is not. The expected side follows from the whole
//! numbers of hundred-thousandths of an inch that the lengths are made from.

use crate::{good, outputs};
use coldseat_core::evaluator::answer;
use serde_json::{Value, json};

/// So many hundred-thousandths of an inch, as a person's decimals become metres.
fn tenth(n: i64) -> f64 {
    (n as f64 / 1e5) * 0.0254
}

fn codes(calc: &str, inputs: &Value) -> Vec<String> {
    let line = json!({"id": 1, "calc": calc, "inputs": inputs}).to_string();
    let reply: Value = serde_json::from_str(&answer(&line).expect("an answer")).expect("JSON");
    assert!(reply["error"].is_null(), "{calc}: {reply}");
    reply["findings"]
        .as_array()
        .expect("findings")
        .iter()
        .filter_map(|f| f["code"].as_str().map(str::to_owned))
        .collect()
}

/// Two nanometres to one side of a tie, none, and to the other.
const BESIDE: [f64; 3] = [-2e-9, 0.0, 2e-9];

#[track_caller]
fn falls(calc: &str, code: &str, make: impl Fn(&mut fastrand::Rng, f64) -> Value, want: [bool; 3]) {
    let mut random = fastrand::Rng::with_seed(14);
    for _ in 0..300 {
        let seed = random.u64(..);
        for (beside, wanted) in BESIDE.into_iter().zip(want) {
            let inputs = make(&mut fastrand::Rng::with_seed(seed), beside);
            let found = codes(calc, &inputs).iter().any(|c| c == code);
            assert_eq!(found, wanted, "{calc} {code} {beside}: {inputs}");
        }
    }
}

#[test]
fn a_counterbore_on_size_is_not_too_deep() {
    let make = |r: &mut fastrand::Rng, beside: f64| {
        let (thickness, proud) = (r.i64(25_000..40_000), r.i64(100..1_500));
        let mut inputs = good("counterbore");
        inputs["thickness_m"] = json!([tenth(thickness)]);
        inputs["target_proud_m"] = json!(tenth(proud));
        inputs["depth_now_m"] = json!([tenth(thickness - proud) + beside]);
        inputs
    };
    falls("counterbore", "too_deep", make, [false, false, true]);
}

#[test]
fn a_planned_cut_of_the_least_is_enough() {
    let make = |r: &mut fastrand::Rng, beside: f64| {
        let (low, deck, clean) = (r.i64(0..500), r.i64(0..300), r.i64(0..300));
        let height = r.i64(-600..900);
        let least = clean + low.max(deck - height);
        json!({
            "low_m": [0, -tenth(low)], "clean_up_m": tenth(clean),
            "holes": [{"deck_m": -tenth(deck), "height_m": tenth(height), "thickness_m": 0.01}],
            "planned_m": (tenth(least) + beside).max(0.0),
        })
    };
    let mut random = fastrand::Rng::with_seed(3);
    for _ in 0..300 {
        let inputs = make(&mut random, 0.0);
        assert!(
            !codes("deck", &inputs).contains(&"too_little".to_owned()),
            "{inputs}"
        );
    }
    let short = json!({
        "low_m": [-1e-4], "holes": [], "clean_up_m": 5e-5, "planned_m": 1.5e-4 - 2e-9
    });
    assert!(codes("deck", &short).contains(&"too_little".to_owned()));
}

#[test]
fn a_flange_cut_away_to_nothing_stops() {
    let make = |r: &mut fastrand::Rng, beside: f64| {
        let (deck, height) = (r.i64(0..300), r.i64(0..900));
        let planned = r.i64(500..1_900);
        let thickness = height - deck + planned;
        json!({
            "low_m": [0], "clean_up_m": 0,
            "holes": [{
                "deck_m": -tenth(deck), "height_m": tenth(height),
                "thickness_m": tenth(thickness) + beside,
            }],
            "planned_m": tenth(planned),
        })
    };
    falls("deck", "no_flange", make, [true, true, false]);
}

#[test]
fn the_deck_beside_a_hole_is_never_above_its_highest_point() {
    let mut inputs = good("deck");
    inputs["holes"][0]["deck_m"] = json!(1e-5);
    crate::refused("deck", &inputs, "holes[0].deck_m");
    let mut inputs = good("counterbore");
    inputs["deck_m"] = json!(1e-5);
    crate::refused("counterbore", &inputs, "deck_m");
}

#[test]
fn a_fit_on_its_limit_is_inside() {
    let mut random = fastrand::Rng::with_seed(9);
    for _ in 0..300 {
        let (bore, fit) = (random.i64(300_000..600_000), random.i64(50..200));
        for (end, band) in [(0, [fit, fit + 40]), (1, [fit - 40, fit])] {
            for (beside, want) in [(0.0, "inside"), (2e-9, "outside")] {
                let off = if end == 0 { -beside } else { beside };
                let out = outputs(
                    "fit",
                    &json!({
                        "sleeve_d_m": [tenth(bore + fit) + off], "bore_d_m": [tenth(bore)],
                        "sleeve_k": 293.15, "bore_k": 293.15, "sleeve_material": "gray_iron",
                        "bore_material": "gray_iron", "u_sleeve_m": 0, "u_bore_m": 0,
                        "band_m": band.map(tenth),
                    }),
                );
                assert_eq!(out["verdict"], want, "{bore} {fit} {end} {beside}");
            }
        }
    }
}

#[test]
fn a_floor_or_a_wall_of_exactly_nothing_stops() {
    let groove = |r: &mut fastrand::Rng, beside: f64| {
        let (ring, proud) = (r.i64(2_000..15_000), r.i64(0..1_500));
        json!({
            "ring_height_m": tenth(ring), "stand_proud_m": tenth(proud),
            "flange_left_m": tenth(ring - proud) + beside,
        })
    };
    falls("groove", "no_floor", groove, [true, true, false]);
    let wall = |r: &mut fastrand::Rng, beside: f64| {
        let (old, more, offset) = (r.i64(300_000..500_000), r.i64(5_000..30_000), r.i64(0..900));
        json!({
            "measured_m": tenth(more + offset) + beside, "old_d_m": tenth(old),
            "new_d_m": tenth(old + 2 * more), "offset_m": tenth(offset),
        })
    };
    falls("wall", "no_wall", wall, [true, true, false]);
    let web = |r: &mut fastrand::Rng, beside: f64| {
        let (d, a, b) = (r.i64(300_000..600_000), r.i64(-900..900), r.i64(-900..900));
        json!({
            "pitch_m": tenth(d + a + b) + beside, "d_m": tenth(d),
            "offset_a_m": tenth(a), "offset_b_m": tenth(b),
        })
    };
    falls("web", "flats_needed", web, [true, false, false]);
}

#[test]
fn a_ring_that_butts_stops() {
    let gap = 4e-4;
    for (left, want) in [(0.0, true), (-1e-5, true), (2e-9, false), (1e-4, false)] {
        let change = (left - gap) / core::f64::consts::PI;
        let inputs = json!({"gap_m": gap, "bore_change_m": change});
        assert_eq!(
            codes("ring_gap", &inputs).contains(&"butts".to_owned()),
            want,
            "{left}"
        );
    }
}

fn seat(change: impl Fn(&mut Value)) -> (Value, Vec<String>) {
    let mut inputs = good("seat");
    change(&mut inputs);
    (outputs("seat", &inputs), codes("seat", &inputs))
}

#[test]
fn a_pull_needs_pressure() {
    let (out, _) = seat(|_| ());
    assert_eq!(
        (&out["verdict"], &out["stopped"]),
        (&json!("seated"), &json!(true))
    );
    // Three pulls at nothing are none; one at nothing is not one of three.
    for without in [vec![0, 1, 2], vec![0], vec![1], vec![2]] {
        let (out, _) = seat(|x| {
            for i in &without {
                x["pulls"][*i]["gauge_pa"] = json!(0);
            }
        });
        assert_eq!(out["verdict"], "pull_again", "{without:?}");
        assert_eq!(out["settle_m"].as_array().map(Vec::len), Some(2));
    }
    // Between three that count, one without pressure takes nothing away.
    let (out, _) = seat(|x| {
        let mut more = x["pulls"][0].clone();
        more["gauge_pa"] = json!(0);
        x["pulls"].as_array_mut().expect("pulls").insert(1, more);
    });
    assert_eq!(out["verdict"], "seated");
}

#[test]
fn a_height_that_moved_and_a_return_that_cannot_be_stand_in_the_way() {
    let (out, codes) = seat(|x| x["pulls"][2]["relaxed_m"] = json!(0.0002 + 14e-6));
    assert_eq!(
        (&out["stopped"], &out["verdict"]),
        (&json!(true), &json!("seated"))
    );
    assert!(codes.is_empty(), "{codes:?}");
    // 14.14 um is what two readings may differ by at u = 5 um.
    let moved = seat(|x| {
        for i in 0..3 {
            x["pulls"][i]["relaxed_m"] = json!(0.0002 + 15e-6);
        }
    });
    assert_eq!(moved.0["verdict"], "undecided");
    assert_eq!(moved.1, ["height_moved"]);
    let odd = seat(|x| x["pulls"][0]["loaded_m"] = json!(0.0002 + 21e-6));
    assert_eq!(odd.0["verdict"], "undecided");
    assert_eq!(odd.1, ["odd_return"]);
    let tie = seat(|x| x["pulls"][0]["loaded_m"] = json!(0.0002 + 20e-6));
    assert_eq!(tie.0["verdict"], "seated");
}
