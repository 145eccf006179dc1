//! The band of a cold drop: what the material's contraction and the gauges
//! leave open. A grip time is never shown without it.

use super::cold_drop::{ColdDrop, ColdDropAnswer, cold_drop, entry_clearance};
use crate::numerics::roots::{self, Failed};
use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, DiametralInterference, Length, Seconds};

/// A drop with the two ends of its 95 % band.
#[derive(Clone, Debug, PartialEq)]
pub struct DropBand {
    /// As entered.
    pub nominal: ColdDropAnswer,
    /// Least clearance, earliest grip.
    pub early: ColdDropAnswer,
    /// Most clearance, latest grip.
    pub late: ColdDropAnswer,
}

/// The drop, and the drop with the sleeve's chill shrink smaller and larger by
/// what 95 % of the cases stay within: the contraction's own band and twice
/// `u_fit`, the standard uncertainty of the fit, taken as independent.
///
/// Both act through the clearance alone, so both are put into the sleeve's
/// contraction. The conductance of the gap (air 2.5 %, a sleeve off centre)
/// is not in the band: an off-centre sleeve grips earlier.
///
/// # Errors
/// As [`cold_drop`].
///
/// # Example
/// Contraction 0.190 % instead of 0.178 moves the grip from 28 to 31 s, 0.166 to
/// 25 s (independent ODE solution, bore held).
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Diameter, Length, Seconds, Temperature};
/// use coldseat_core::thermal::cold_drop::ColdDrop;
/// use coldseat_core::thermal::drop_band::cold_drop_band;
/// let iron = Material::catalogue(MaterialId::GrayIron);
/// let band = cold_drop_band(
///     &ColdDrop {
///         sleeve_material: iron.clone(),
///         sleeve_inner: Diameter::from_inch(3.88),
///         sleeve_outer: Diameter::from_inch(4.20),
///         sleeve_length: Length::from_mm(220.0),
///         block_material: iron,
///         block_bore: Diameter::from_inch(4.19875),
///         block_outer: Diameter::from_inch(6.5),
///         bath: Temperature::from_k(77.355),
///         room: Temperature::from_c(20.0),
///         block: Temperature::from_c(20.0),
///         carry: Seconds::from_s(0.0),
///         air: None,
///         lean: 0.0,
///         frost: Length::from_um(0.0),
///         insertion: Seconds::from_s(0.0),
///     },
///     Length::from_um(0.0),
/// )?;
/// let at = |a: &coldseat_core::thermal::cold_drop::ColdDropAnswer| a.grip_slow.unwrap().as_s();
/// // Below, the band of gray iron reaches farther down than that: 0.155 %.
/// assert!(at(&band.early) / at(&band.nominal) < 25.0 / 28.3);
/// assert!((at(&band.late) / at(&band.nominal) - 31.0 / 28.3).abs() < 0.04);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn cold_drop_band(drop: &ColdDrop, u_fit: Length) -> Result<DropBand, Fault> {
    let [early, late] = ends(drop, u_fit);
    Ok(DropBand {
        nominal: cold_drop(drop)?,
        early: cold_drop(&early)?,
        late: cold_drop(&late)?,
    })
}

/// The drops at the ends of the band: the early one with the smaller shrink. A
/// part that is hardly chilled has little shrink to put the gauges into: there
/// all of it is put into the bore.
pub(super) fn ends(drop: &ColdDrop, u_fit: Length) -> [ColdDrop; 2] {
    if drop.bath.as_k() > LITTLE_CHILLED_K {
        return ends_by_bore(drop, u_fit);
    }
    let shrink = drop.sleeve_material.strain(drop.bath).abs() * drop.sleeve_outer.as_m();
    let gauges = DiametralInterference::from_m(2.0 * u_fit.as_m()).as_m();
    let share = |band: f64| {
        if shrink > 0.0 {
            band.hypot(gauges / shrink)
        } else {
            0.0
        }
    };
    let [less, more] = drop.sleeve_material.expansion_band();
    [(1.0 - share(less)).max(0.0), 1.0 + share(more)].map(|factor| {
        let mut other = drop.clone();
        other.sleeve_material = drop.sleeve_material.with_expansion_scale(factor);
        other
    })
}

/// Warmer than that a part has so little shrink that the gauges rule its band: a
/// freezer, and all that is warmer.
const LITTLE_CHILLED_K: f64 = 230.0;

fn ends_by_bore(drop: &ColdDrop, u_fit: Length) -> [ColdDrop; 2] {
    let shrink = drop.sleeve_material.strain(drop.bath).abs() * drop.sleeve_outer.as_m();
    let [less, more] = drop.sleeve_material.expansion_band();
    [(less, -1.0), (more, 1.0)].map(|(band, sign)| {
        let off_m = (band * shrink).hypot(2.0 * u_fit.as_m());
        let mut other = drop.clone();
        other.block_bore = Diameter::from_m(drop.block_bore.as_m() + sign * off_m);
        other
    })
}

/// The longest carry that still leaves `least` clearance at the bore, at the
/// early and the late end of the band, to a tenth of a second; zero where even
/// the bath does not leave so much, at most an hour.
///
/// # Errors
/// As [`cold_drop`].
///
/// # Example
/// The carry found leaves the clearance asked for.
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Diameter, Length, Seconds, Temperature};
/// use coldseat_core::thermal::cold_drop::{ColdDrop, cold_drop};
/// use coldseat_core::thermal::drop_band::carry_most;
/// let iron = Material::catalogue(MaterialId::GrayIron);
/// let mut drop = ColdDrop {
///     sleeve_material: iron.clone(),
///     sleeve_inner: Diameter::from_inch(3.88),
///     sleeve_outer: Diameter::from_inch(4.20),
///     sleeve_length: Length::from_mm(220.0),
///     block_material: iron,
///     block_bore: Diameter::from_inch(4.19875),
///     block_outer: Diameter::from_inch(6.5),
///     bath: Temperature::from_k(77.355),
///     room: Temperature::from_c(20.0),
///     block: Temperature::from_c(20.0),
///     carry: Seconds::from_s(0.0),
///     air: None,
///     lean: 0.0,
///     frost: Length::from_um(0.0),
///     insertion: Seconds::from_s(0.0),
/// };
/// let least = Length::from_thou(4.0);
/// let [early, late] = carry_most(&drop, Length::from_um(0.0), least)?;
/// assert!(early < late);
/// drop.sleeve_material = drop.sleeve_material.with_expansion_scale(
///     1.0 - drop.sleeve_material.expansion_band()[0],
/// );
/// drop.carry = early;
/// assert!((cold_drop(&drop)?.clearance_entry.as_m() - least.as_m()).abs() < 1e-7);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn carry_most(drop: &ColdDrop, u_fit: Length, least: Length) -> Result<[Seconds; 2], Fault> {
    let mut found = [Seconds::from_s(0.0); 2];
    for (end, mut other) in found.iter_mut().zip(ends(drop, u_fit)) {
        let mut spare = |carry_s: f64| -> Result<f64, Fault> {
            other.carry = Seconds::from_s(carry_s);
            Ok(entry_clearance(&other)?.as_m() - least.as_m())
        };
        if spare(0.0)? <= 0.0 {
            continue;
        }
        let longest_s = bounds::CARRY.hi;
        // The first minute or ten decide; a far bracket costs evaluations only.
        let mut high_s = 60.0;
        while high_s < longest_s && spare(high_s)? > 0.0 {
            high_s = (4.0 * high_s).min(longest_s);
        }
        if spare(high_s)? > 0.0 {
            *end = Seconds::from_s(longest_s);
            continue;
        }
        let root = roots::attempted(spare, 0.0, high_s, 0.1).map_err(|failed| match failed {
            Failed::NoRoot(none) => none.at("carry_s"),
            Failed::Function(fault) => fault,
        })?;
        *end = Seconds::from_s(root.x);
    }
    Ok(found)
}
