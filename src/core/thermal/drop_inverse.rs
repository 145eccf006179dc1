//! The cold drop asked the other way: which fit still drops in, and how cold the
//! part or how hot its housing must be for a clearance. Solved at the narrow end
//! of the band ([`super::drop_band`]), so that what is found holds there too.

use super::cold_drop::{ColdDrop, entry_clearance};
use super::drop_band::ends;
use crate::numerics::roots::{self, Failed};
use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{DiametralClearance, DiametralInterference, Length, Temperature};

/// What a temperature can do for a clearance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reach {
    /// From this temperature on there is the clearance asked for.
    From(Temperature),
    /// It is there as the shop is.
    AsItIs,
    /// Not even at the end of the range: the clearance there.
    Never(DiametralClearance),
}

/// Clearance at the bore at the narrow end of the band.
///
/// # Errors
/// As [`super::cold_drop::cold_drop`].
pub fn narrow_entry(drop: &ColdDrop, u_fit: Length) -> Result<DiametralClearance, Fault> {
    let [early, _] = ends(drop, u_fit);
    entry_clearance(&early)
}

/// The greatest fit that still leaves `least` at the bore, at the narrow end of
/// the band; negative where even a sliding part would not. What the part warms on
/// its way does not hang on the bore, so it is the spare clearance brought to
/// 293.15 K.
///
/// # Errors
/// As [`super::cold_drop::cold_drop`].
///
/// # Example
/// With that fit the clearance is the one asked for.
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Diameter, Length, Seconds, Temperature};
/// use coldseat_core::thermal::cold_drop::ColdDrop;
/// use coldseat_core::thermal::drop_inverse::{fit_most, narrow_entry};
/// let iron = Material::catalogue(MaterialId::GrayIron);
/// let mut drop = ColdDrop {
///     sleeve_material: iron.clone(),
///     sleeve_inner: Diameter::from_inch(4.0),
///     sleeve_outer: Diameter::from_inch(4.25),
///     sleeve_length: Length::from_inch(9.0),
///     block_material: iron,
///     block_bore: Diameter::from_inch(4.2488),
///     block_outer: Diameter::from_inch(4.95),
///     bath: Temperature::from_k(77.355),
///     room: Temperature::from_c(20.0),
///     block: Temperature::from_c(20.0),
///     carry: Seconds::from_s(8.0),
///     air: None,
///     lean: 0.0,
///     frost: Length::from_um(0.0),
///     insertion: Seconds::from_s(0.0),
/// };
/// let (u, least) = (Length::from_um(2.0), Length::from_thou(4.0));
/// let most = fit_most(&drop, u, least)?;
/// drop.block_bore = Diameter::from_m(drop.sleeve_outer.as_m() - most.as_m());
/// let left = narrow_entry(&drop, u)?;
/// assert!((left.as_m() - least.as_m()).abs() < 2e-8);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn fit_most(
    drop: &ColdDrop,
    u_fit: Length,
    least: Length,
) -> Result<DiametralInterference, Fault> {
    let now = drop.sleeve_outer.as_m() - drop.block_bore.as_m();
    let spare = narrow_entry(drop, u_fit)?.as_m() - least.as_m();
    let warm = 1.0 + drop.block_material.strain(drop.block);
    Ok(DiametralInterference::from_m(now + spare / warm))
}

/// How cold the part must be for `least` at the bore, all else as it is.
///
/// # Errors
/// As [`super::cold_drop::cold_drop`]; a search that fails is a fault at `bath_k`.
pub fn cold_for(drop: &ColdDrop, u_fit: Length, least: Length) -> Result<Reach, Fault> {
    reach(drop.room.as_k(), bounds::TEMPERATURE.lo, "bath_k", |t_k| {
        let mut other = drop.clone();
        other.bath = Temperature::from_k(t_k);
        Ok(narrow_entry(&other, u_fit)?.as_m() - least.as_m())
    })
    .map(|reach| beside(reach, least))
}

/// How hot the housing must be as the part enters, for `least` at the bore, all
/// else as it is.
///
/// # Errors
/// As [`super::cold_drop::cold_drop`]; a search that fails is a fault at `block_k`.
pub fn heat_for(drop: &ColdDrop, u_fit: Length, least: Length) -> Result<Reach, Fault> {
    reach(drop.room.as_k(), bounds::TEMPERATURE.hi, "block_k", |t_k| {
        let mut other = drop.clone();
        other.block = Temperature::from_k(t_k);
        Ok(narrow_entry(&other, u_fit)?.as_m() - least.as_m())
    })
    .map(|reach| beside(reach, least))
}

/// The spare clearance at the end of a range is told as the clearance there.
fn beside(reach: Reach, least: Length) -> Reach {
    match reach {
        Reach::Never(spare) => {
            Reach::Never(DiametralClearance::from_m(spare.as_m() + least.as_m()))
        }
        other => other,
    }
}

/// Where `spare` comes to nothing on the way from the room to the end of the range.
fn reach(
    room_k: f64,
    end_k: f64,
    field: &str,
    mut spare: impl FnMut(f64) -> Result<f64, Fault>,
) -> Result<Reach, Fault> {
    if spare(room_k)? >= 0.0 {
        return Ok(Reach::AsItIs);
    }
    let at_end = spare(end_k)?;
    if at_end < 0.0 {
        return Ok(Reach::Never(DiametralClearance::from_m(at_end)));
    }
    let root = roots::attempted(spare, room_k.min(end_k), room_k.max(end_k), 0.05);
    match root {
        Ok(root) => Ok(Reach::From(Temperature::from_k(root.x))),
        Err(Failed::NoRoot(none)) => Err(none.at(field)),
        Err(Failed::Function(fault)) => Err(fault),
    }
}
