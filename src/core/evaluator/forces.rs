//! press_fit, pull.

use super::fields::Fields;
use super::output::Output;
use crate::mechanics;
use crate::mechanics::pull::{PullInput, Ram, Thread};
use crate::mechanics::rings::{Elastic, PressFit};
use crate::quantity::report::Fault;
use crate::quantity::{Area, Diameter, DiametralInterference, Length, Pressure};

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
