//! bore_profile, bore_stress.
//!
//! Beside the contract's inputs both take, and may do without, `gas_pa` (on
//! the inside), `gas_depth_m` (how far down it reaches, default all the way)
//! and `temperatures`: `sleeve_material|sleeve_properties`,
//! `block_material|block_properties` and, steady, `sleeve_inner_k`,
//! `sleeve_outer_k`, `block_inner_k`, `block_outer_k`. bore_stress takes
//! `friction` and `at_m` besides.

use super::fields::Fields;
use super::forces::elastic;
use super::output::Output;
use crate::mechanics::bore_profile::{
    self, BoreProfileInput, BoreStressInput, Flange, Heat, Jacket, Joint,
};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, DiametralInterference, Force, Length, Pressure, Temperature};

/// Running temperatures, where they are given.
fn heat(f: &Fields) -> Result<Option<Heat>, Fault> {
    if !f.has("temperatures") {
        return Ok(None);
    }
    let t = f.object("temperatures")?;
    let at = |name: &str| t.number(name).map(Temperature::from_k);
    let heat = Heat {
        sleeve_material: t.material("sleeve_", &["expansion_per_k"])?,
        block_material: t.material("block_", &["expansion_per_k"])?,
        sleeve: [at("sleeve_inner_k")?, at("sleeve_outer_k")?],
        block: [at("block_inner_k")?, at("block_outer_k")?],
    };
    t.finish()?;
    Ok(Some(heat))
}

/// Sleeve, block and loads.
fn read(f: &Fields) -> Result<BoreProfileInput, Fault> {
    let sleeve = f.object("sleeve")?;
    let block = f.object("block")?;
    let flange_outer = sleeve.nullable("flange_outer_d_m")?;
    let flange_thickness = sleeve.nullable("flange_thickness_m")?;
    let flange = match (flange_outer, flange_thickness) {
        (Some(outer), Some(thickness)) => Some(Flange {
            outer: Diameter::from_m(outer),
            thickness: Length::from_m(thickness),
        }),
        (None, None) => None,
        (Some(_), None) => {
            return Err(Fault::new(
                "sleeve.flange_thickness_m",
                "null beside a flange diameter: give both, or null for both",
            ));
        }
        (None, Some(_)) => {
            return Err(Fault::new(
                "sleeve.flange_outer_d_m",
                "null beside a flange thickness: give both, or null for both",
            ));
        }
    };
    let jacket = match block.object_or_null("jacket")? {
        None => None,
        Some(jacket) => {
            let read = Jacket {
                wall: Length::from_m(jacket.number("wall_m")?),
                deck: Length::from_m(jacket.number("deck_m")?),
                bottom: Length::from_m(jacket.number("bottom_m")?),
            };
            jacket.finish()?;
            Some(read)
        }
    };
    let input = BoreProfileInput {
        sleeve_inner: Diameter::from_m(sleeve.number("inner_d_m")?),
        sleeve_outer: Diameter::from_m(sleeve.number("outer_d_m")?),
        length: Length::from_m(sleeve.number("length_m")?),
        flange,
        sleeve: elastic(&sleeve)?,
        block_outer: Diameter::from_m(block.number("outer_d_m")?),
        block: elastic(&block)?,
        below: Length::from_m(block.number("below_m")?),
        jacket,
        interference: DiametralInterference::from_m(f.number("interference_m")?),
        joint: f.word(
            "joint",
            &[
                ("frictionless", Joint::Frictionless),
                ("stuck", Joint::Stuck),
            ],
        )?,
        clamp: Force::from_n(f.number("clamp_n")?),
        gas: Pressure::from_pa(f.number_or("gas_pa", 0.0)?),
        gas_depth: f.optional("gas_depth_m")?.map(Length::from_m),
        heat: heat(f)?,
        depths: f.numbers("z_m")?.into_iter().map(Length::from_m).collect(),
    };
    sleeve.finish()?;
    block.finish()?;
    Ok(input)
}

pub fn bore_profile(f: &Fields) -> Result<Output, Fault> {
    let input = read(f)?;
    f.finish()?;
    let p = bore_profile::bore_profile(&input)?;
    let mut out = Output::default();
    out.numbers("inner_d_change_m", p.inner_change.iter().map(|l| l.as_m()))
        .numbers("pressure_pa", p.pressure.iter().map(|p| p.as_pa()))
        .number("ledge_force_n", p.ledge_force.as_n())
        .nullable("height_change_m", p.height_change.map(Length::as_m));
    Ok(out)
}

pub fn bore_stress(f: &Fields) -> Result<Output, Fault> {
    let input = BoreStressInput {
        profile: read(f)?,
        friction: f.number("friction")?,
        at: Length::from_m(f.number("at_m")?),
    };
    f.finish()?;
    let s = bore_profile::bore_stress(&input)?;
    let mut out = Output::default();
    out.numbers(
        "sleeve_hoop_inner_pa",
        s.hoop_inner.iter().map(|p| p.as_pa()),
    )
    .number("fillet_pa", s.fillet[0].as_pa())
    .number("fillet_finer_pa", s.fillet[1].as_pa())
    .number("counterbore_pa", s.counterbore[0].as_pa())
    .number("counterbore_finer_pa", s.counterbore[1].as_pa())
    .number("ledge_pressure_pa", s.ledge_pressure.as_pa())
    .number("seat_force_n", s.seat_force.as_n())
    .number("height_change_m", s.height_change.as_m())
    .findings(&s.findings);
    Ok(out)
}
