//! press_fit, pull, bore_profile.

use super::fields::Fields;
use super::output::Output;
use crate::mechanics;
use crate::mechanics::bore_profile::{BoreProfileInput, Flange, Heat, Jacket, Joint};
use crate::mechanics::pull::{PullInput, Ram, Thread};
use crate::mechanics::rings::{Elastic, PressFit};
use crate::quantity::report::Fault;
use crate::quantity::{
    Area, Diameter, DiametralInterference, Force, Length, Pressure, Temperature,
};

pub(super) fn elastic(f: &Fields) -> Result<Elastic, Fault> {
    Ok(Elastic {
        youngs: Pressure::from_pa(f.number("youngs_pa")?),
        poisson: f.number("poisson")?,
    })
}

/// The members of a press fit.
pub(super) fn read_fit(f: &Fields) -> Result<PressFit, Fault> {
    let sleeve = f.object("sleeve")?;
    let block = f.object("block")?;
    let fit = PressFit {
        sleeve_inner: Diameter::from_m(sleeve.number("inner_d_m")?),
        joint: Diameter::from_m(sleeve.number("outer_d_m")?),
        block_outer: Diameter::from_m(block.number("outer_d_m")?),
        sleeve: elastic(&sleeve)?,
        block: elastic(&block)?,
        interference: DiametralInterference::from_m(f.number("interference_m")?),
        rz_sleeve: Length::from_m(f.number_or("rz_sleeve_m", 0.0)?),
        rz_bore: Length::from_m(f.number_or("rz_bore_m", 0.0)?),
        smoothing: f.number_or("smoothing", 0.8)?,
        length: Length::from_m(f.number("length_m")?),
        friction: f.number("friction")?,
    };
    sleeve.finish()?;
    block.finish()?;
    Ok(fit)
}

pub fn press_fit(f: &Fields) -> Result<Output, Fault> {
    let input = read_fit(f)?;
    f.finish()?;
    let p = mechanics::rings::press_fit(&input)?;
    let mut out = Output::default();
    out.number("effective_interference_m", p.effective_interference.as_m())
        .number("pressure_pa", p.pressure.as_pa())
        .number("sleeve_hoop_inner_pa", p.sleeve_hoop_inner.as_pa())
        .number("sleeve_hoop_outer_pa", p.sleeve_hoop_outer.as_pa())
        .number("block_hoop_inner_pa", p.block_hoop_inner.as_pa())
        .number("block_hoop_outer_pa", p.block_hoop_outer.as_pa())
        .number("sleeve_inner_d_change_m", p.sleeve_inner_change.as_m())
        .number("block_outer_d_change_m", p.block_outer_change.as_m())
        .number("slip_force_n", p.slip_force.as_n())
        .findings(&p.findings);
    Ok(out)
}

pub fn pull(f: &Fields) -> Result<Output, Fault> {
    let area = f.optional("ram_area_m2")?;
    let outer = f.optional("ram_outer_d_m")?;
    let inner = f.optional("ram_inner_d_m")?;
    let ram = match (area, outer, inner) {
        (Some(_), Some(_), _) | (Some(_), _, Some(_)) => {
            return Err(Fault::new(
                "ram_area_m2",
                "given beside the ram's diameters: give the area, or the diameters",
            ));
        }
        (Some(area), None, None) => Ram::Area(Area::from_m2(area)),
        (None, Some(outer), inner) => Ram::Annulus {
            outer: Diameter::from_m(outer),
            inner: Diameter::from_m(inner.unwrap_or(0.0)),
        },
        (None, None, _) => {
            return Err(Fault::new(
                "ram_outer_d_m",
                "missing: give the ram's diameters, or its area in ram_area_m2",
            ));
        }
    };
    let rod = f.object("rod")?;
    let input = PullInput {
        gauge: Pressure::from_pa(f.number("gauge_pa")?),
        ram,
        rod_major: Diameter::from_m(rod.number("major_d_m")?),
        rod_pitch: Length::from_m(rod.number("pitch_m")?),
        rod_thread: rod.word(
            "series",
            &[("inch", Thread::Inch), ("metric", Thread::Metric)],
        )?,
        rod_length: Length::from_m(rod.number("length_m")?),
        rod_youngs: Pressure::from_pa(rod.number("youngs_pa")?),
        ledge_outer: Diameter::from_m(f.number("ledge_outer_d_m")?),
        ledge_inner: Diameter::from_m(f.number("ledge_inner_d_m")?),
        flange_thickness: Length::from_m(f.number("flange_thickness_m")?),
        flange_root: Diameter::from_m(f.number("flange_root_d_m")?),
    };
    rod.finish()?;
    f.finish()?;
    let p = mechanics::pull::pull(&input)?;
    let mut out = Output::default();
    out.number("force_n", p.force.as_n())
        .number("rod_area_m2", p.rod_area.as_m2())
        .number("rod_stress_pa", p.rod_stress.as_pa())
        .number("rod_stretch_m", p.rod_stretch.as_m())
        .number("ledge_area_m2", p.ledge_area.as_m2())
        .number("ledge_pressure_pa", p.ledge_pressure.as_pa())
        .number("flange_shear_pa", p.flange_shear.as_pa());
    Ok(out)
}

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

pub fn bore_profile(f: &Fields) -> Result<Output, Fault> {
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
    f.finish()?;
    let p = mechanics::bore_profile::bore_profile(&input)?;
    let mut out = Output::default();
    out.numbers("inner_d_change_m", p.inner_change.iter().map(|l| l.as_m()))
        .numbers("pressure_pa", p.pressure.iter().map(|p| p.as_pa()))
        .number("ledge_force_n", p.ledge_force.as_n())
        .nullable("height_change_m", p.height_change.map(Length::as_m));
    Ok(out)
}
