//! Where a sleeve is home, by how it stands: a flange on its ledge, a foot on its
//! step, or a top at the height aimed at.
//!
//! A flange and the foot of a plain sleeve are one sum: what the sleeve has above
//! its seat, less how deep the seat lies. Of a plain sleeve both are long and only
//! their difference counts, so both are taken from one plane a little above the
//! seat: then they are the flange and the counterbore of a short sleeve, and
//! everything that judges those judges these. A sleeve held by its fit alone has no
//! seat: it is home where it was to stand, and can be too low as well as too high.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveKind;
use crate::job::model::reading::{Lack, Standing};
use crate::job::model::readings::{Readings, smallest};
use crate::job::steps::stand_proud::target_proud;
use crate::quantity::Length;

/// What a plain sleeve keeps above the plane that its length and its step are taken
/// from: as thick as a flange may be.
const ABOVE_PLANE_M: f64 = 0.02;
/// The same of a sleeve that is held by its fit: no height aimed at lies below it.
const BELOW_TARGET_M: f64 = 0.06;

/// What the height of a sleeve that is home comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Home {
    /// How it stands.
    pub kind: SleeveKind,
    /// What it has above its seat, at each clock.
    pub above: Vec<f64>,
    /// How deep the seat lies, at each clock.
    pub depth: Vec<f64>,
    /// Shim on the seat.
    pub shim: Length,
}

impl Home {
    /// Height above the deck of a sleeve that is home, at each clock.
    #[must_use]
    pub fn heights(&self) -> Vec<f64> {
        let of = |(above, depth): (&f64, &f64)| above + self.shim.as_m() - depth;
        self.above.iter().zip(&self.depth).map(of).collect()
    }
}

/// The fields of length and depth that decide, where the sleeve has a seat.
#[must_use]
pub const fn measured_by(kind: SleeveKind) -> Option<[Field; 2]> {
    match kind {
        SleeveKind::Flanged => Some([Field::FlangeThickness, Field::CounterboreDepth]),
        SleeveKind::OnStep => Some([Field::PlainLength, Field::StepDepth]),
        SleeveKind::ByFit => None,
    }
}

/// The gauges of the two.
const fn gauges(kind: SleeveKind) -> Option<[Field; 2]> {
    match kind {
        SleeveKind::Flanged => Some([Field::GaugeThickness, Field::GaugeDepth]),
        SleeveKind::OnStep => Some([Field::GaugeLength, Field::GaugeStep]),
        SleeveKind::ByFit => None,
    }
}

/// Standard uncertainties of length and depth; none of a height aimed at.
///
/// # Errors
/// What it lacks.
pub fn uncertainties(r: &Readings) -> Result<[f64; 2], Lack> {
    match gauges(r.sleeve_kind()?) {
        Some([above, depth]) => Ok([r.engine(above)?, r.engine(depth)?]),
        None => Ok([0.0; 2]),
    }
}

/// The shim on the seat: this hole's own, else the engine's.
///
/// # Errors
/// Something that cannot be used.
pub fn shim(r: &Readings) -> Result<Length, Lack> {
    match r.own(Field::ShimHere)? {
        Some(own_m) => Ok(Length::from_m(own_m)),
        None => r.length(Field::Shim),
    }
}

/// The shim that lies under a sleeve, for the record.
#[must_use]
pub fn shim_laid(job: &Job, cylinder: u8) -> Standing<Length> {
    if !job.listed_stand().has_field(Field::ShimHere) {
        return Standing::NotHere;
    }
    Standing::of(shim(&Readings::of_cylinder(job, cylinder)))
}

/// How the sleeve is home.
///
/// # Errors
/// A clock that is missing, something that cannot be used.
pub fn home(r: &Readings) -> Result<Home, Lack> {
    let kind = r.sleeve_kind()?;
    let (above, depth, shim) = match measured_by(kind) {
        Some([long, deep]) => (r.complete(long)?, r.complete(deep)?, shim(r)?),
        None => {
            let above_m = target_proud(r)? + BELOW_TARGET_M;
            (
                vec![above_m; 4],
                vec![BELOW_TARGET_M; 4],
                Length::from_m(0.0),
            )
        }
    };
    let plane_m = plane(kind, &above);
    let from_plane = |list: &[f64]| list.iter().map(|m| m - plane_m).collect();
    Ok(Home {
        kind,
        above: from_plane(&above),
        depth: from_plane(&depth),
        shim,
    })
}

/// The gauge of the depth of the seat, where there is one.
#[must_use]
pub const fn depth_gauge(kind: SleeveKind) -> Option<Field> {
    match gauges(kind) {
        Some([_, depth]) => Some(depth),
        None => None,
    }
}

/// The plane that length and depth are taken from, below the top of the sleeve;
/// of a flange they are taken as they are.
#[must_use]
pub fn plane(kind: SleeveKind, above: &[f64]) -> f64 {
    match (kind, smallest(above)) {
        (SleeveKind::OnStep, Some(least_m)) => least_m - ABOVE_PLANE_M,
        _ => 0.0,
    }
}
