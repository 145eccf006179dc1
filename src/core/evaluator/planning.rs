//! counterbore, deck, engine_effect, groove, cross_hatch, ring_gap, wall, web,
//! pairing.

use serde_json::json;

use super::fields::Fields;
use super::output::Output;
use crate::planning;
use crate::planning::counterbore::CounterboreInput;
use crate::planning::deck::{DeckHole, DeckInput};
use crate::planning::engine::EngineInput;
use crate::planning::finish::Hatch;
use crate::planning::web::{WallInput, WebInput};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, DiametralInterference, Length};

fn length(f: &Fields, name: &str) -> Result<Length, Fault> {
    f.number(name).map(Length::from_m)
}

fn diameter(f: &Fields, name: &str) -> Result<Diameter, Fault> {
    f.number(name).map(Diameter::from_m)
}

fn lengths(f: &Fields, name: &str) -> Result<Vec<Length>, Fault> {
    Ok(f.numbers(name)?.into_iter().map(Length::from_m).collect())
}

pub fn counterbore(f: &Fields) -> Result<Output, Fault> {
    let thickness = lengths(f, "thickness_m")?;
    let depth_now = lengths(f, "depth_now_m")?;
    let input = CounterboreInput {
        thickness: &thickness,
        target_proud: length(f, "target_proud_m")?,
        depth_now: &depth_now,
        deck: Length::from_m(f.number_or("deck_m", 0.0)?),
        feed_sd: length(f, "feed_sd_m")?,
        gauge_sd: length(f, "gauge_sd_m")?,
        removal: length(f, "removal_m")?,
        clean_up: length(f, "clean_up_m")?,
        risk: f.number("risk")?,
    };
    f.finish()?;
    let c = planning::counterbore::counterbore(&input)?;
    let mut out = Output::default();
    out.number("depth_m", c.depth.as_m())
        .number("to_go_m", c.to_go.as_m())
        .number("p_low", c.p_low)
        .number("target_for_risk_m", c.target_for_risk.as_m())
        .findings(&c.findings);
    Ok(out)
}

pub fn deck(f: &Fields) -> Result<Output, Fault> {
    let low = lengths(f, "low_m")?;
    let mut holes = Vec::new();
    for hole in f.objects("holes")? {
        holes.push(DeckHole {
            deck: length(&hole, "deck_m")?,
            height: length(&hole, "height_m")?,
            thickness: length(&hole, "thickness_m")?,
        });
        hole.finish()?;
    }
    let input = DeckInput {
        low: &low,
        holes: &holes,
        clean_up: length(f, "clean_up_m")?,
        planned: f.nullable("planned_m")?.map(Length::from_m),
    };
    f.finish()?;
    let d = planning::deck::deck(&input)?;
    let mut out = Output::default();
    out.number("removal_least_m", d.removal_least.as_m())
        .number("removal_m", d.removal.as_m())
        .numbers("flange_cut_m", d.flange_cut.iter().map(|l| l.as_m()))
        .numbers("flange_left_m", d.flange_left.iter().map(|l| l.as_m()))
        .findings(&d.findings);
    Ok(out)
}

pub fn engine_effect(f: &Fields) -> Result<Output, Fault> {
    let input = EngineInput {
        bore: diameter(f, "bore_d_m")?,
        stroke: length(f, "stroke_m")?,
        compression_ratio: f.number("compression_ratio")?,
        removal: length(f, "removal_m")?,
        gasket_change: length(f, "gasket_change_m")?,
        protrusion: length(f, "protrusion_m")?,
    };
    f.finish()?;
    let e = planning::engine::engine_effect(&input)?;
    let mut out = Output::default();
    out.number("compression_ratio_after", e.compression_ratio)
        .number("protrusion_after_m", e.protrusion.as_m())
        .number("swept_m3", e.swept.as_m3())
        .number("clearance_m3_after", e.clearance.as_m3());
    Ok(out)
}

pub fn groove(f: &Fields) -> Result<Output, Fault> {
    let ring = length(f, "ring_height_m")?;
    let proud = length(f, "stand_proud_m")?;
    let left = length(f, "flange_left_m")?;
    f.finish()?;
    let g = planning::groove::groove(ring, proud, left)?;
    let mut out = Output::default();
    out.number("depth_m", g.depth.as_m())
        .number("floor_m", g.floor.as_m())
        .findings(&g.findings);
    Ok(out)
}

pub fn cross_hatch(f: &Fields) -> Result<Output, Fault> {
    let bore = diameter(f, "bore_d_m")?;
    let stroke = length(f, "stroke_m")?;
    let rev = f.number("rev_per_s")?;
    let hatch = match (f.optional("cycles_per_s")?, f.optional("included_rad")?) {
        (Some(_), Some(_)) => {
            return Err(Fault::new(
                "included_rad",
                "given beside cycles_per_s: give one of the two",
            ));
        }
        (Some(cycles), None) => Hatch::Cycles(cycles),
        (None, Some(angle)) => Hatch::Included(angle),
        (None, None) => {
            return Err(Fault::new(
                "cycles_per_s",
                "missing: give it, or the angle in included_rad",
            ));
        }
    };
    f.finish()?;
    let c = planning::finish::cross_hatch(bore, stroke, rev, hatch)?;
    let mut out = Output::default();
    out.number("cycles_per_s", c.cycles_per_s)
        .number("included_rad", c.included_rad)
        .number("to_horizontal_rad", c.to_horizontal_rad);
    Ok(out)
}

pub fn ring_gap(f: &Fields) -> Result<Output, Fault> {
    let gap = length(f, "gap_m")?;
    let change = length(f, "bore_change_m")?;
    f.finish()?;
    let (after, findings) = planning::finish::ring_gap(gap, change)?;
    let mut out = Output::default();
    out.number("gap_after_m", after.as_m()).findings(&findings);
    Ok(out)
}

pub fn wall(f: &Fields) -> Result<Output, Fault> {
    let input = WallInput {
        measured: length(f, "measured_m")?,
        old: diameter(f, "old_d_m")?,
        new: diameter(f, "new_d_m")?,
        offset: length(f, "offset_m")?,
    };
    f.finish()?;
    let (left, findings) = planning::web::wall(&input)?;
    let mut out = Output::default();
    out.number("left_m", left.as_m()).findings(&findings);
    Ok(out)
}

pub fn web(f: &Fields) -> Result<Output, Fault> {
    let input = WebInput {
        pitch: length(f, "pitch_m")?,
        d: diameter(f, "d_m")?,
        offset_a: length(f, "offset_a_m")?,
        offset_b: length(f, "offset_b_m")?,
    };
    f.finish()?;
    let w = planning::web::web(&input)?;
    let mut out = Output::default();
    out.number("left_m", w.left.as_m())
        .number("flat_m", w.flat.as_m())
        .findings(&w.findings);
    Ok(out)
}

pub fn pairing(f: &Fields) -> Result<Output, Fault> {
    let sleeves: Vec<Diameter> = f
        .numbers("sleeve_d_m")?
        .into_iter()
        .map(Diameter::from_m)
        .collect();
    let bores: Vec<Diameter> = f
        .numbers("bore_d_m")?
        .into_iter()
        .map(Diameter::from_m)
        .collect();
    let target = DiametralInterference::from_m(f.number("target_m")?);
    f.finish()?;
    let p = planning::pairing::pairing(&sleeves, &bores, target)?;
    let mut out = Output::default();
    out.put("bore_for_sleeve", json!(p.bore_for_sleeve))
        .nullables("stock_m", p.stock.iter().map(|s| s.map(Length::as_m)))
        .number("worst_stock_m", p.worst_stock.as_m())
        .number("total_stock_m", p.total_stock.as_m())
        .findings(&p.findings);
    Ok(out)
}
