//! heights_plan, after_deck.

use serde_json::json;

use super::fields::Fields;
use super::output::Output;
use crate::metrology::check_count;
use crate::planning::after_deck::{DeckItem, FromDeck};
use crate::planning::heights::{CLOCKS, HeightsInput};
use crate::quantity::Length;
use crate::quantity::report::Fault;

fn four(f: &Fields, name: &str, path: &str) -> Result<[Length; CLOCKS], Fault> {
    let values = f.numbers(name)?;
    check_count(path, values.len(), CLOCKS)?;
    Ok(core::array::from_fn(|i| Length::from_m(values[i])))
}

pub fn heights_plan(f: &Fields) -> Result<Output, Fault> {
    let rows = |list: &str, field: &str| -> Result<Vec<[Length; CLOCKS]>, Fault> {
        let mut rows = Vec::new();
        for (i, row) in f.objects(list)?.iter().enumerate() {
            rows.push(four(row, field, &format!("{list}[{i}].{field}"))?);
            row.finish()?;
        }
        Ok(rows)
    };
    let (holes, sleeves) = (rows("holes", "depth_m")?, rows("sleeves", "thickness_m")?);
    let shims: Vec<Length> = f
        .numbers("shims_m")?
        .into_iter()
        .map(Length::from_m)
        .collect();
    let proud = f.numbers("proud_m")?;
    let [lo, hi] = proud[..] else {
        return Err(Fault::new(
            "proud_m",
            format!("{} limits where 2 are wanted: lower and upper", proud.len()),
        ));
    };
    let length = |name: &str| f.number(name).map(Length::from_m);
    let input = HeightsInput {
        holes: &holes,
        sleeves: &sleeves,
        shims: &shims,
        cut_step: length("cut_step_m")?,
        cut_most: length("cut_most_m")?,
        proud: [lo, hi].map(Length::from_m),
        spread_hole: length("spread_hole_m")?,
        spread_neighbour: length("spread_neighbour_m")?,
        spread_all: length("spread_all_m")?,
    };
    f.finish()?;
    let p = crate::planning::heights::heights_plan(&input)?;
    let plan: Vec<_> = p
        .plan
        .iter()
        .map(|o| json!({"sleeve": o.sleeve, "turn": o.turn, "shim": o.shim, "cut_m": o.cut.as_m()}))
        .collect();
    let heights: Vec<_> = p.height.iter().map(|h| h.map(Length::as_m)).collect();
    let mut out = Output::default();
    out.put("possible", json!(p.possible))
        .put("plan", json!(plan))
        .put("height_m", json!(heights))
        .put("cuts", json!(p.cuts))
        .put("shims", json!(p.shims))
        .put("moved", json!(p.moved))
        .put("turned", json!(p.turned))
        .number("spread_m", p.spread.as_m())
        .findings(&p.findings);
    Ok(out)
}

pub fn after_deck(f: &Fields) -> Result<Output, Fault> {
    let cut = Length::from_m(f.number("cut_m")?);
    let mut items = Vec::new();
    for (i, item) in f.objects("items")?.iter().enumerate() {
        let (depth, height) = (item.nullable("depth_m")?, item.nullable("height_m")?);
        let before = match (depth, height) {
            (Some(d), None) => FromDeck::Depth(Length::from_m(d)),
            (None, Some(h)) => FromDeck::Height(Length::from_m(h)),
            (Some(_), Some(_)) => {
                return Err(Fault::new(
                    format!("items[{i}].height_m"),
                    "given beside depth_m: give one of the two, null for the other",
                ));
            }
            (None, None) => {
                return Err(Fault::new(
                    format!("items[{i}].depth_m"),
                    "null beside a height of null: give one of the two",
                ));
            }
        };
        items.push(DeckItem {
            name: item.text("name")?,
            before,
            low: Length::from_m(item.number("low_m")?),
            high: Length::from_m(item.number("high_m")?),
        });
        item.finish()?;
    }
    f.finish()?;
    let after = crate::planning::after_deck::after_deck(cut, &items)?;
    let told: Vec<_> = items
        .iter()
        .zip(&after)
        .map(|(item, a)| {
            json!({
                "name": item.name, "now_m": a.now.as_m(), "state": a.state.id(),
                "by_m": a.by.as_m(),
            })
        })
        .collect();
    let mut out = Output::default();
    out.put("items", json!(told));
    Ok(out)
}
