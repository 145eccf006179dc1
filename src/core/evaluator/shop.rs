//! bore_plan, block_ring, service, finish, estimate: beyond the contract, in
//! the same form.

use super::fields::Fields;
use super::forces::read_fit;
use super::output::Output;
use crate::mechanics::block_ring::{self, Fitted, FlangeEnd, Surround};
use crate::mechanics::rings::press_fit;
use crate::mechanics::service::{self, ServiceInput};
use crate::planning::bore::{BorePlanInput, bore_plan as plan_bore};
use crate::planning::estimate::{EstimateInput, estimate as estimate_job};
use crate::planning::finish::{FinishInput, finish as finish_bore};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Pressure, Seconds, Temperature};

fn length(f: &Fields, name: &str) -> Result<Length, Fault> {
    f.number(name).map(Length::from_m)
}

fn diameter(f: &Fields, name: &str) -> Result<Diameter, Fault> {
    f.number(name).map(Diameter::from_m)
}

/// A whole number of at most 1e6.
fn count(f: &Fields, name: &str) -> Result<usize, Fault> {
    let value = f.number(name)?;
    if value.fract() == 0.0 && (0.0..=1e6).contains(&value) {
        return Ok(value as usize);
    }
    Err(Fault::new(
        name,
        format!("{value} is no whole number from 0 to 1000000: count again"),
    ))
}

pub fn bore_plan(f: &Fields) -> Result<Output, Fault> {
    let input = BorePlanInput {
        now: diameter(f, "now_d_m")?,
        finished: diameter(f, "finished_d_m")?,
        hone: length(f, "hone_m")?,
        last_cut: length(f, "last_cut_m")?,
        passes: count(f, "passes")?,
        spindle: diameter(f, "spindle_d_m")?,
    };
    f.finish()?;
    let plan = plan_bore(&input)?;
    let mut out = Output::default();
    out.number("bored_d_m", plan.bored.as_m()).rows(
        "passes",
        ["d_m", "cut_on_diameter_m", "cut_on_radius_m", "cutter_m"],
        plan.passes.iter().map(|p| {
            [
                p.d.as_m(),
                p.cut_on_diameter.as_m(),
                p.cut_on_radius.as_m(),
                p.cutter.as_m(),
            ]
        }),
    );
    Ok(out)
}

pub fn block_ring(f: &Fields) -> Result<Output, Fault> {
    let bore = diameter(f, "bore_d_m")?;
    let surround = if f.has("wall_m") {
        if let Some(name) = ["pitch_m", "half_width_m", "fitted"]
            .into_iter()
            .find(|n| f.has(n))
        {
            return Err(Fault::new(
                name,
                "given beside wall_m: give the row, or the parent wall of a jacketed block",
            ));
        }
        Surround::Jacket {
            wall: length(f, "wall_m")?,
        }
    } else {
        Surround::Row {
            pitch: length(f, "pitch_m")?,
            half_width: length(f, "half_width_m")?,
            fitted: f.word("fitted", &[("all", Fitted::All), ("one", Fitted::One)])?,
        }
    };
    let fit = if f.has("fit") {
        let fit = f.object("fit")?;
        let read = read_fit(&fit)?;
        fit.finish()?;
        Some(read)
    } else {
        None
    };
    let flange = if f.has("flange") {
        let flange = f.object("flange")?;
        let end = FlangeEnd {
            thickness: length(&flange, "flange_thickness_m")?,
            width: length(&flange, "flange_width_m")?,
            wall: length(&flange, "wall_m")?,
        };
        flange.finish()?;
        Some(block_ring::close_in_at_deck(bore, &end).map_err(|e| e.within("flange"))?)
    } else {
        None
    };
    f.finish()?;
    let ring = block_ring::block_ring(bore, surround)?;
    let mut out = Output::default();
    out.number("outer_d_m", ring.outer.as_m())
        .number("neighbour_growth", ring.neighbour_growth)
        .number("neighbour_oval", ring.neighbour_oval)
        .nullable("close_in_at_deck", flange);
    let oval = match fit {
        None => None,
        Some(mut fit) => {
            // The ring found here takes the place of the one in the fit.
            fit.block_outer = ring.outer;
            let p = press_fit(&fit).map_err(|e| e.within("fit"))?;
            let close = -p.sleeve_inner_change.as_m();
            // Growth of the bore: its hoop strain times its diameter.
            let hoop = p.block_hoop_inner.as_pa() + fit.block.poisson * p.pressure.as_pa();
            let growth = fit.joint.as_m() * hoop / fit.block.youngs.as_pa();
            let share = if close > 0.0 { growth / close } else { 0.0 };
            let [along, across] = block_ring::oval_close_in(ring.oval_growth, share);
            Some([along * close, across * close, growth])
        }
    };
    out.nullable("close_in_along_m", oval.map(|o| o[0]))
        .nullable("close_in_across_m", oval.map(|o| o[1]))
        .nullable("bore_growth_m", oval.map(|o| o[2]))
        .findings(&ring.findings);
    Ok(out)
}

pub fn service(f: &Fields) -> Result<Output, Fault> {
    let fit = f.object("fit")?;
    let input = ServiceInput {
        fit: read_fit(&fit)?,
        sleeve_material: f.material("sleeve_", &["expansion_per_k"])?,
        block_material: f.material("block_", &["expansion_per_k"])?,
        sleeve: Temperature::from_k(f.number("sleeve_k")?),
        block: Temperature::from_k(f.number("block_k")?),
        gas: Pressure::from_pa(f.number("gas_pa")?),
        sleeve_strength: Pressure::from_pa(f.number("sleeve_strength_pa")?),
        block_strength: Pressure::from_pa(f.number("block_strength_pa")?),
    };
    fit.finish()?;
    f.finish()?;
    let s = service::service(&input)?;
    let mut out = Output::default();
    out.number("interference_m", s.interference.as_m())
        .number("fit_pressure_pa", s.fit_pressure.as_pa())
        .number("pressure_pa", s.pressure.as_pa())
        .number("sleeve_hoop_inner_pa", s.sleeve_hoop_inner.as_pa())
        .number("block_hoop_inner_pa", s.block_hoop_inner.as_pa())
        .nullable("sleeve_margin", s.sleeve_margin)
        .nullable("block_margin", s.block_margin)
        .nullable("lets_go_k", s.lets_go.map(Temperature::as_k))
        .findings(&s.findings);
    Ok(out)
}

pub fn finish(f: &Fields) -> Result<Output, Fault> {
    let fit = f.object("fit")?;
    let input = FinishInput {
        fit: read_fit(&fit)?,
        finished: diameter(f, "finished_d_m")?,
        hone: length(f, "hone_m")?,
        piston: Some(diameter(f, "piston_d_m")?),
    };
    fit.finish()?;
    f.finish()?;
    let r = finish_bore(&input)?;
    let mut out = Output::default();
    out.number("close_in_m", r.close_in.as_m())
        .number("fitted_d_m", r.fitted.as_m())
        .number("bore_to_d_m", r.bore_to.as_m())
        .number("stock_m", r.stock.as_m())
        .number(
            "piston_clearance_m",
            r.piston_clearance.unwrap_or_default().as_m(),
        )
        .number("grip_left", r.grip_left)
        .findings(&r.findings);
    Ok(out)
}

pub fn estimate(f: &Fields) -> Result<Output, Fault> {
    let seconds = |name: &str| f.number(name).map(Seconds::from_s);
    let input = EstimateInput {
        holes: count(f, "holes")?,
        per_job: seconds("per_job_s")?,
        per_hole: seconds("per_hole_s")?,
        hour_price: f.number("hour_price")?,
        spare_sleeves: count(f, "spare_sleeves")?,
        sleeve_price: f.number("sleeve_price")?,
        nitrogen_per_sleeve_l: f.number("nitrogen_per_sleeve_l")?,
        bath_fill_l: f.number("bath_fill_l")?,
        loss_l_per_h: f.number("loss_l_per_h")?,
        standing: seconds("standing_s")?,
        nitrogen_spare: f.number("nitrogen_spare")?,
        litre_price: f.number("litre_price")?,
        other_price: f.number("other_price")?,
    };
    f.finish()?;
    let e = estimate_job(&input)?;
    let mut out = Output::default();
    out.number("work_s", e.work.as_s())
        .number("nitrogen_l", e.nitrogen_l)
        .number("sleeves", e.sleeves as f64)
        .number("price", e.price);
    Ok(out)
}
