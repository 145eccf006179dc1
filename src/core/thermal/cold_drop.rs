//! The cold drop: from the bath through the air into the bore, until the
//! sleeve grips.
//!
//! One radial dimension at mid length. Bath: sleeve uniform. Carry: both faces
//! to air. In the bore: conduction through the air in the gap, which closes as
//! both parts change; inner face to air; the block a ring insulated outside,
//! or (`grip_slow`) its bore held at temperature. Grip: the mean
//! clearance is zero; from then on a joint of 15 kW/m2K.
//!
//! Assumed: no help from the deck, no axial flow, free rings. A sleeve that
//! leans or carries frost is solved in sectors (`lean_model`): its
//! colder side bends it, and first contact comes at half the concentric grip.
//! The answer is far more sensitive than its data: 1 um of bore moves the grip
//! time by 1.7 %, the contraction's band by 10 to 13 %. Never show a grip time
//! without its band ([`super::drop_band`]).
//!
//! Solved by finite volumes and a third-order stiff stepper in a stretched
//! time ([`super::drop_model`]); [`Solution`] says how well.

pub use super::drop_input::ColdDrop;
use super::drop_lean::{Touch, Until, lean_drop, touch};
use super::drop_model::{CAPACITY, DropModel, Phase};
pub use super::drop_run::Resolution;
use super::drop_run::{End, Run};
use super::drop_series::{Span, equal, series};
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{DiametralClearance, Length, Seconds, Temperature};

/// The moment of gripping.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grip {
    /// From entry to zero mean clearance.
    pub after: Seconds,
    /// Mean temperature of the sleeve then.
    pub sleeve_mean: Temperature,
    /// Mean temperature of the block then.
    pub block_mean: Temperature,
    /// How far the sleeve still grows lengthwise, and the block, where it was
    /// warmed, shrinks back: what may lift the flange.
    pub climb: Length,
}

/// One point of the curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DropPoint {
    /// Since entry.
    pub t: Seconds,
    /// Mean clearance; zero after the grip.
    pub clearance: DiametralClearance,
    /// Mean temperature of the sleeve.
    pub sleeve_mean: Temperature,
    /// Temperature of the bore's face.
    pub block_bore: Temperature,
}

/// How well the equations were solved.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Solution {
    /// Time steps taken.
    pub steps: usize,
    /// Time steps tried and rejected.
    pub rejected: usize,
    /// Heat gained by the parts less heat from the air, over the heat gained
    /// by the sleeve.
    pub heat_residual: f64,
    /// Clearance left where the grip was found.
    pub grip_residual: DiametralClearance,
}

/// What comes of a cold drop.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdDropAnswer {
    /// Clearance straight out of the bath.
    pub clearance_bath: DiametralClearance,
    /// Clearance as the sleeve enters the bore.
    pub clearance_entry: DiametralClearance,
    /// The grip; `None` where the sleeve never grips within an hour.
    pub grip: Option<Grip>,
    /// From entry to the first contact anywhere, lean, bow and frost counted;
    /// `None` where there is none within an hour.
    pub touch: Option<Seconds>,
    /// Largest bow until then.
    pub bow: Length,
    /// What the first contact leaves once the sleeve is home; negative: it
    /// touches on the way.
    pub left_home: Option<Seconds>,
    /// Growth from the bath's temperature to the room's less the block's own:
    /// the most that the flange could climb.
    pub climb_ceiling: Length,
    /// Grip with the bore held at the block's temperature; `None` where that
    /// takes more than an hour.
    pub grip_slow: Option<Seconds>,
    /// From entry until sleeve and block are within 1 K of each other.
    pub equal: Option<Seconds>,
    /// The curve, from entry on.
    pub series: Vec<DropPoint>,
    /// What wants a look.
    pub findings: Vec<Finding>,
    /// How well it was solved.
    pub solution: Solution,
}

/// Longest time looked at after entry.
pub const LONGEST: Seconds = Seconds::from_s(3600.0);
/// Shown after an entry that fails.
const JAMMED_S: f64 = 60.0;
/// The resolution of [`cold_drop`]: grip time within 0.1 % of its limit on
/// the sleeves of job.md.
pub const USUAL: Resolution = Resolution {
    sleeve_cells: 4,
    block_cells: 10,
    sectors: 8,
    tolerance_k: 0.25,
};
/// The resolution of [`cold_drop`] with lean or frost: grip and first contact
/// within 4 % of a solution in two dimensions (`tests/crosscheck`).
pub const LEANING: Resolution = Resolution {
    sleeve_cells: 3,
    block_cells: 6,
    sectors: 8,
    tolerance_k: 0.25,
};

/// Computes a cold drop.
///
/// # Errors
/// A dimension, temperature or time outside its range, or an inside that is
/// not inside: a [`Fault`] that names it. A solution that does not converge is
/// a fault too, at `carry_s` or `block`.
///
/// # Example
/// A 4.200 in cast-iron sleeve with a 0.160 in wall and 0.00125 in of fit in
/// a 10 mm iron wall: an independent ODE solution grips after 21.8 s +- 2.5 s.
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Diameter, Length, Seconds, Temperature};
/// use coldseat_core::thermal::cold_drop::{ColdDrop, cold_drop};
/// let drop = ColdDrop {
///     sleeve_material: Material::catalogue(MaterialId::GrayIron),
///     sleeve_inner: Diameter::from_inch(3.880),
///     sleeve_outer: Diameter::from_inch(4.200),
///     sleeve_length: Length::from_mm(220.0),
///     block_material: Material::catalogue(MaterialId::GrayIron),
///     block_bore: Diameter::from_inch(4.19875),
///     block_outer: Diameter::from_mm(4.19875 * 25.4 + 20.0),
///     bath: Temperature::from_k(77.355),
///     room: Temperature::from_c(20.0),
///     block: Temperature::from_c(20.0),
///     carry: Seconds::from_s(0.0),
///     air: None,
///     lean: 0.0,
///     frost: Length::from_um(0.0),
///     insertion: Seconds::from_s(0.0),
/// };
/// let answer = cold_drop(&drop)?;
/// let grip = answer.grip.expect("it grips");
/// assert!((grip.after.as_s() - 21.8).abs() < 2.5);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn cold_drop(drop: &ColdDrop) -> Result<ColdDropAnswer, Fault> {
    cold_drop_resolved(drop, if drop.is_even() { &USUAL } else { &LEANING })
}

/// The same with a resolution of one's own: for tests of convergence.
///
/// # Errors
/// As [`cold_drop`].
pub fn cold_drop_resolved(
    drop: &ColdDrop,
    resolution: &Resolution,
) -> Result<ColdDropAnswer, Fault> {
    let (mut run, mut books, entry) = carried(drop, resolution)?;
    let block_k = drop.block.as_k();
    let slow = grip_slow(drop, &run, entry, resolution)?;
    let mut findings = Vec::new();
    let free = entry > 0.0;
    run.model.scale_m = 0.5 * entry.max(0.0) + super::air::GAP_JUMP_M;
    let mut grip_residual = 0.0;
    let mut gripped_at = Some(0);
    let mut touched = Touch {
        after: Some(0.0),
        bow: 0.0,
    };
    if free && drop.is_even() {
        run.enter(Phase::Gap, 0.0, block_k);
        let started = run.heat_of_parts();
        let end = run.until(LONGEST.as_s(), 0.05, |m| m.clearance[0]);
        solved(end, "block")?;
        books.close(&run, started);
        gripped_at = (end == End::Met).then_some(run.moments.len());
        grip_residual = run.model.clearance(&run.y);
    } else if free {
        let block = run.model.block.clone();
        let fell = lean_drop(drop, &run, block, entry, resolution, Until::Grip)?;
        run.enter(Phase::Gap, 0.0, block_k);
        run.y[..fell.profile.len()].copy_from_slice(&fell.profile);
        run.steps = [run.steps[0] + fell.steps[0], run.steps[1] + fell.steps[1]];
        run.moments = fell.moments;
        books.add(&run, fell.gained, fell.from_air);
        gripped_at = fell.gripped.then_some(run.moments.len());
        grip_residual = fell.clearance;
    } else {
        run.enter(Phase::Joint, 0.0, block_k);
    }
    if free {
        touched = touch(&run.moments, drop.frost.as_m(), gripped_at.is_some())
            .map_err(|none| none.at("frost_m"))?;
    }
    let mut grip = None;
    let mut shown_s = LONGEST.as_s();
    if gripped_at.is_some() {
        let after = if free {
            run.moments.last().map_or(0.0, |m| m.t[0])
        } else {
            0.0
        };
        let (sleeve, block) = run.model.means(&run.y);
        // Of an uneven ring the mean profile is all that is left: its clearance
        // is zero like that of the ring, to the curvature of e(T).
        let strain = run.model.sleeve_strain(&run.y);
        grip = Some(Grip {
            after: Seconds::from_s(after),
            sleeve_mean: Temperature::from_k(sleeve),
            block_mean: Temperature::from_k(block),
            climb: drop.climb_from(strain),
        });
        shown_s = if free {
            (2.0 * after).min(LONGEST.as_s())
        } else {
            JAMMED_S
        };
        run.enter(Phase::Joint, after, block_k);
        let started = run.heat_of_parts();
        let end = run.until(LONGEST.as_s(), 0.02, |m| {
            ((m.sleeve[0] - m.block[0]).abs() - 1.0).max(shown_s - m.t[0])
        });
        solved(end, "block")?;
        books.close(&run, started);
    }
    if !free {
        findings.push(Finding::stop(
            Code::DoesNotEnter,
            "the chilled sleeve is no smaller than the bore: do not drop it. Chill it fully, \
             carry it faster, warm the block, or hone the bore to its fit",
        ));
    } else if grip.is_none() {
        findings.push(Finding::look(
            Code::NeverGrips,
            "the sleeve does not grip within an hour of entry: check the fit and the \
             temperatures that were entered",
        ));
    }
    findings.extend(drop.outside_sizes());
    let before_grip = gripped_at.unwrap_or(run.moments.len());
    let span = Span {
        free_moments: if free { before_grip } else { 0 },
        shown_s,
        entry,
    };
    Ok(ColdDropAnswer {
        clearance_bath: drop.clearance_at(drop.bath),
        clearance_entry: DiametralClearance::from_m(entry),
        climb_ceiling: drop.climb_from(drop.sleeve_material.strain(drop.bath)),
        touch: touched.after.map(Seconds::from_s),
        bow: Length::from_m(touched.bow),
        left_home: touched
            .after
            .map(|t| Seconds::from_s(t - drop.insertion.as_s())),
        grip_slow: slow,
        equal: equal(&run.moments)
            .map_err(|none| none.at("block"))?
            .map(Seconds::from_s),
        series: series(&run.moments, &span, grip.is_some()),
        grip,
        findings,
        solution: Solution {
            steps: run.steps[0],
            rejected: run.steps[1],
            heat_residual: books.residual(),
            grip_residual: DiametralClearance::from_m(grip_residual),
        },
    })
}

/// The sleeve at the bore: how it stands, the heat it took, its clearance.
pub(super) fn carried(
    drop: &ColdDrop,
    resolution: &Resolution,
) -> Result<(Run<DropModel, CAPACITY>, HeatBooks, f64), Fault> {
    drop.check()?;
    let mut run = Run::from_uniform(
        drop.model(resolution)?,
        drop.bath.as_k(),
        resolution.tolerance_k,
    );
    let mut books = HeatBooks::default();
    let started = run.heat_of_parts();
    if drop.carry.as_s() > 0.0 {
        let end = run.until(drop.carry.as_s(), 1.0, |_| 1.0);
        solved(end, "carry_s")?;
        books.close(&run, started);
    }
    run.moments.clear();
    let sleeve_strain = run.model.sleeve_strain(&run.y);
    let entry = drop.block_bore.as_m() * (1.0 + drop.block_material.strain(drop.block))
        - drop.sleeve_outer.as_m() * (1.0 + sleeve_strain);
    Ok((run, books, entry))
}

/// Clearance as the sleeve enters the bore, without the drop itself: the same
/// number as [`ColdDropAnswer::clearance_entry`], at a part of its work.
///
/// # Errors
/// As [`cold_drop`], but for what happens in the bore.
pub fn entry_clearance(drop: &ColdDrop) -> Result<DiametralClearance, Fault> {
    let (_, _, entry) = carried(drop, &USUAL)?;
    Ok(DiametralClearance::from_m(entry))
}

pub(super) fn solved(end: End, field: &str) -> Result<(), Fault> {
    if end == End::Stuck {
        return Err(Fault::new(
            field,
            "the heat flow could not be solved with these inputs: check dimensions and \
             conductivities for values far from any metal",
        ));
    }
    Ok(())
}

/// The grip with the bore held at the block's temperature.
fn grip_slow(
    drop: &ColdDrop,
    run: &Run<DropModel, CAPACITY>,
    entry: f64,
    resolution: &Resolution,
) -> Result<Option<Seconds>, Fault> {
    if entry <= 0.0 {
        return Ok(Some(Seconds::from_s(0.0)));
    }
    let (gripped, moments) = if drop.is_even() {
        let mut model = run.model.clone();
        model.block = drop.held();
        model.scale_m = 0.5 * entry + super::air::GAP_JUMP_M;
        let mut slow = Run::new(model, run.y, run.tolerance_k());
        slow.enter(Phase::Gap, 0.0, drop.block.as_k());
        let end = slow.until(LONGEST.as_s(), 0.05, |m| m.clearance[0]);
        solved(end, "block")?;
        (end == End::Met, slow.moments)
    } else {
        let fell = lean_drop(drop, run, drop.held(), entry, resolution, Until::Grip)?;
        (fell.gripped, fell.moments)
    };
    let last = moments.last().map_or(0.0, |m| m.t[0]);
    Ok(gripped.then_some(Seconds::from_s(last)))
}

/// Heat gained by the parts and heat taken from the air, phase by phase.
#[derive(Default)]
pub(super) struct HeatBooks {
    gained: f64,
    from_air: f64,
    turnover: f64,
}

impl HeatBooks {
    fn close(&mut self, run: &Run<DropModel, CAPACITY>, started: f64) {
        let gained = run.heat_of_parts() - started;
        self.add(run, gained, run.model.air_heat(&run.y));
    }

    fn add(&mut self, run: &Run<DropModel, CAPACITY>, gained: f64, from_air: f64) {
        self.gained += gained;
        self.from_air += from_air;
        self.turnover = self.turnover.max(run.model.sleeve.heat(&run.y).abs());
    }

    fn residual(&self) -> f64 {
        (self.gained - self.from_air) / self.turnover.max(1e-300)
    }
}
