//! Heights of proud sleeves against trying everything; what a deck cut makes of
//! a size; a soak of what is near already.

use crate::{good, outputs, refused};
use serde_json::{Value, json};

/// Micrometres.
fn um(x: i64) -> f64 {
    x as f64 * 1e-6
}

/// Sleeve, turn, shim (none last), cut.
type Done = (usize, usize, usize, i64);
/// Excess, counts, spread of the sums, the plan: the contract's order.
type Key = (i64, [usize; 4], i64, Vec<Done>);

struct Case {
    depth: Vec<[i64; 4]>,
    thickness: Vec<[i64; 4]>,
    shims: Vec<i64>,
    step: i64,
    proud: [i64; 2],
    spreads: [i64; 3],
}

const CUT_MOST: i64 = 60;

impl Case {
    fn drawn(r: &mut fastrand::Rng) -> Self {
        let holes = r.usize(1..=3);
        let rows = |r: &mut fastrand::Rng, count: usize, middle: i64| {
            (0..count)
                .map(|_| {
                    let mean = middle + r.i64(-40..=40);
                    core::array::from_fn(|_| mean + r.i64(-8..=8))
                })
                .collect()
        };
        let spare = r.usize(0..=1);
        Self {
            depth: rows(r, holes, 7_800),
            thickness: rows(r, holes + spare, 7_890),
            shims: (0..r.usize(0..=2)).map(|_| 25 * r.i64(1..=4)).collect(),
            step: [0, 25, 30][r.usize(0..3)],
            proud: [25 + r.i64(0..=20), 120 + r.i64(0..=20)],
            spreads: [r.i64(5..=40), r.i64(10..=60), r.i64(20..=90)],
        }
    }

    fn request(&self) -> Value {
        let rows = |rows: &[[i64; 4]], name: &str| -> Vec<Value> {
            rows.iter().map(|r| json!({name: r.map(um)})).collect()
        };
        json!({
            "holes": rows(&self.depth, "depth_m"), "sleeves": rows(&self.thickness, "thickness_m"),
            "shims_m": self.shims.iter().map(|s| um(*s)).collect::<Vec<_>>(),
            "cut_step_m": um(self.step), "cut_most_m": um(CUT_MOST), "proud_m": self.proud.map(um),
            "spread_hole_m": um(self.spreads[0]), "spread_neighbour_m": um(self.spreads[1]),
            "spread_all_m": um(self.spreads[2]),
        })
    }

    /// Every plan there is; the best of them.
    fn best(&self) -> Key {
        let mut best = None;
        self.try_all(&mut Vec::new(), &mut best);
        best.expect("a plan")
    }

    fn try_all(&self, plan: &mut Vec<Done>, best: &mut Option<Key>) {
        if plan.len() == self.depth.len() {
            let key = self.key(plan);
            if best.as_ref().is_none_or(|b| key < *b) {
                *best = Some(key);
            }
            return;
        }
        let last = if self.step > 0 {
            CUT_MOST / self.step
        } else {
            0
        };
        for sleeve in 0..self.thickness.len() {
            if plan.iter().any(|p| p.0 == sleeve) {
                continue;
            }
            for turn in 0..4 {
                for shim in (0..self.shims.len()).chain([usize::MAX]) {
                    for cut in 0..=last {
                        plan.push((sleeve, turn, shim, cut * self.step));
                        self.try_all(plan, best);
                        plan.pop();
                    }
                }
            }
        }
    }

    /// Excesses are those of sums over the clocks: four times, at least 0.
    fn key(&self, plan: &[Done]) -> Key {
        let mut sums = Vec::new();
        let mut excess = 0;
        for (hole, (sleeve, turn, shim, cut)) in plan.iter().enumerate() {
            let lift = self.shims.get(*shim).copied().unwrap_or(0) - cut;
            let heights: [i64; 4] = core::array::from_fn(|j| {
                self.thickness[*sleeve][(j + 4 - turn) % 4] + lift - self.depth[hole][j]
            });
            let low = heights.iter().min().expect("four");
            let high = heights.iter().max().expect("four");
            excess = excess
                .max(4 * (self.proud[0] - low))
                .max(4 * (high - self.proud[1]))
                .max(4 * (high - low - self.spreads[0]));
            sums.push(heights.iter().sum::<i64>());
        }
        for w in sums.windows(2) {
            excess = excess.max((w[0] - w[1]).abs() - 4 * self.spreads[1]);
        }
        let spread = sums.iter().max().expect("one") - sums.iter().min().expect("one");
        excess = excess.max(spread - 4 * self.spreads[2]);
        let count = |f: &dyn Fn(usize, &Done) -> bool| {
            plan.iter().enumerate().filter(|(i, p)| f(*i, p)).count()
        };
        let counts = [
            count(&|_, p| p.3 > 0),
            count(&|_, p| p.2 != usize::MAX),
            count(&|i, p| p.0 != i),
            count(&|_, p| p.1 != 0),
        ];
        (excess, counts, spread, plan.to_vec())
    }
}

fn told(out: &Value, holes: usize) -> Vec<Done> {
    (0..holes)
        .map(|h| {
            let p = &out["plan"][h];
            (
                p["sleeve"].as_u64().expect("a sleeve") as usize,
                p["turn"].as_u64().expect("a turn") as usize,
                p["shim"].as_u64().map_or(usize::MAX, |s| s as usize),
                (p["cut_m"].as_f64().expect("a cut") * 1e6).round() as i64,
            )
        })
        .collect()
}

#[test]
fn heights_agree_with_trying_everything() {
    let mut random = fastrand::Rng::with_seed(8);
    let (mut possible, mut not) = (0, 0);
    for i in 0..70 {
        let case = Case::drawn(&mut random);
        let (excess, counts, spread, plan) = case.best();
        let out = outputs("heights_plan", &case.request());
        assert_eq!(out["possible"], json!(excess == 0), "{i}");
        let got = told(&out, plan.len());
        if excess > 0 {
            // No plan is less off than the one that is shown.
            not += 1;
            assert_eq!(case.key(&got).0, excess, "{i} {}", case.request());
            continue;
        }
        possible += 1;
        assert_eq!(got, plan, "{i} {}", case.request());
        let told = ["cuts", "shims", "moved", "turned"].map(|n| out[n].as_u64().expect("a count"));
        assert_eq!(told.map(|n| n as usize), counts, "{i}");
        let off = out["spread_m"].as_f64().expect("a length") - um(spread) / 4.0;
        assert!(off.abs() < 1e-12, "{i}");
    }
    assert!(possible > 10 && not > 10, "{possible} {not}");
}

/// A deck as a shop may have it: up to eight holes, four spare sleeves, eight shims.
fn deck(r: &mut fastrand::Rng) -> Case {
    let holes = r.usize(6..=8);
    let wide = r.i64(30..=140);
    let rows = |r: &mut fastrand::Rng, count: usize, middle: i64| {
        (0..count)
            .map(|_| {
                let mean = middle + r.i64(-wide..=wide);
                core::array::from_fn(|_| mean + r.i64(-9..=9))
            })
            .collect()
    };
    let low = r.i64(20..=44);
    Case {
        depth: rows(r, holes, 7_800),
        thickness: {
            let spare = r.usize(0..=4);
            rows(r, holes + spare, 7_890)
        },
        shims: (0..r.usize(0..=8)).map(|_| 5 * r.i64(2..=50)).collect(),
        step: [0, 10, 25][r.usize(0..3)],
        proud: [low, low + r.i64(50..=120)],
        spreads: [r.i64(18..=44), r.i64(5..=60), r.i64(10..=100)],
    }
}

/// None is refused, and no plan that is said to be possible exceeds a limit.
#[test]
fn no_deck_of_a_shop_is_too_much() {
    let mut random = fastrand::Rng::with_seed(29);
    let mut possible = 0;
    for i in 0..400 {
        let case = deck(&mut random);
        let out = outputs("heights_plan", &case.request());
        let plan = told(&out, case.depth.len());
        let (excess, counts, spread, _) = case.key(&plan);
        assert_eq!(
            out["possible"],
            json!(excess == 0),
            "{i} {}",
            case.request()
        );
        possible += usize::from(excess == 0);
        let told = ["cuts", "shims", "moved", "turned"].map(|n| out[n].as_u64().expect("a count"));
        assert_eq!(told.map(|n| n as usize), counts, "{i}");
        let off = out["spread_m"].as_f64().expect("a length") - um(spread) / 4.0;
        assert!(off.abs() < 1e-12, "{i}");
    }
    assert!((200..400).contains(&possible), "{possible}");
}

#[test]
fn heights_refuse_what_cannot_be_planned() {
    let with = |path: &str, value: Value| {
        let mut inputs = good("heights_plan");
        *inputs.pointer_mut(path).expect("a field") = value;
        inputs
    };
    for (path, value, field) in [
        ("/holes/1/depth_m", json!([0.0078]), "holes[1].depth_m"),
        ("/sleeves", json!([]), "sleeves"),
        ("/proud_m", json!([2e-4, 1e-4]), "proud_m"),
        ("/cut_step_m", json!(1e-9), "cut_step_m"),
        ("/shims_m", json!(vec![1e-4; 17]), "shims_m"),
    ] {
        refused("heights_plan", &with(path, value), field);
    }
}

#[test]
fn sizes_from_the_deck_after_its_cut() {
    let item = |depth: Option<f64>, height: Option<f64>, low: f64, high: f64| json!({"name": "x", "depth_m": depth, "height_m": height, "low_m": low, "high_m": high});
    let out = outputs(
        "after_deck",
        &json!({"cut_m": 0.0003, "items": [
            item(Some(0.008), None, 0.0077, 0.0079),
            item(Some(0.008), None, 0.0078, 0.0079),
            item(Some(0.0083), None, 0.0077, 0.0079),
            item(None, Some(0.001), 0.001, 0.0013),
            item(None, Some(0.001), 0.001, 0.0012),
            item(None, Some(0.001), 0.0015, 0.0016),
        ]}),
    );
    let states: Vec<&str> = (0..6)
        .filter_map(|i| out["items"][i]["state"].as_str())
        .collect();
    assert_eq!(
        states,
        ["holds", "recut", "too_deep", "holds", "recut", "too_deep"]
    );
    let by = |i: usize| out["items"][i]["by_m"].as_f64().expect("a length");
    for (i, want) in [0.0, 1e-4, 1e-4, 0.0, 1e-4, 2e-4].into_iter().enumerate() {
        assert!((by(i) - want).abs() < 1e-12, "{i} {}", by(i));
    }
    let both = json!({"cut_m": 0, "items": [item(Some(0.1), Some(0.1), 0.0, 0.1)]});
    refused("after_deck", &both, "items[0].height_m");
}

#[test]
fn a_part_that_is_near_soaks_no_time() {
    let mut inputs = good("soak");
    inputs["start_k"] = json!(196.0);
    assert_eq!(outputs("soak", &inputs)["soak_s"], json!(0.0));
    inputs["h_w_m2k"] = json!([150, 100, 500]);
    refused("soak", &inputs, "h_w_m2k");
    let mut bored = good("soak");
    bored["inner_d_m"] = json!(0.05);
    refused("soak", &bored, "inner_d_m");
}
