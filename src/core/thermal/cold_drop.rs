//! The cold drop: from the bath through the air into the bore, until the
//! sleeve grips.
//!
//! One radial dimension at mid length. Bath: sleeve uniform. Carry: both faces
//! to air. In the bore: conduction through the air in the gap, which closes as
//! both parts change; inner face to air; the block a ring insulated outside
//! (fast bound) or its bore held at temperature (slow bound). Grip: the mean
//! clearance is zero; from then on a joint of 15 kW/m2K.
//!
//! Assumed: the sleeve concentric or off centre by a stated share, no help
//! from the deck, no axial flow, free rings. The answer is far more sensitive
//! than its data: 1 um of bore moves the grip time by 1.7 %, the contraction's
//! band by 10 to 13 %. Never show a grip time without its band
//! ([`super::drop_band`]).
//!
//! Solved by finite volumes and a third-order stiff stepper in a stretched
//! time ([`super::drop_model`]); [`Solution`] says how well.

use super::air::AirSide;
use super::drop_model::{Block, DropModel, Phase, Wall};
pub use super::drop_run::Resolution;
use super::drop_run::{End, Run};
use super::drop_series::{Span, equal, series};
use crate::materials::Material;
use crate::numerics::roots::{self, NoRoot};
use crate::numerics::stepper::CAPACITY;
use crate::quantity::bounds;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Conductance, Diameter, DiametralClearance, Length, Seconds, Temperature};

/// A drop to be computed. Diameters and lengths at 293.15 K.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdDrop {
    /// What the sleeve is made of.
    pub sleeve_material: Material,
    /// Inside diameter of the sleeve.
    pub sleeve_inner: Diameter,
    /// Outside diameter of the sleeve.
    pub sleeve_outer: Diameter,
    /// Length of the sleeve under the flange.
    pub sleeve_length: Length,
    /// What the block is made of.
    pub block_material: Material,
    /// Diameter of the bore.
    pub block_bore: Diameter,
    /// Outside of the ring of block that takes part.
    pub block_outer: Diameter,
    /// Temperature of the bath: 77.355 K for liquid nitrogen.
    pub bath: Temperature,
    /// Temperature of the room.
    pub room: Temperature,
    /// Temperature of the block.
    pub block: Temperature,
    /// Time from the bath to the bore.
    pub carry: Seconds,
    /// Whole heat-transfer coefficient of the air; `None`: still air computed.
    pub air: Option<Conductance>,
    /// 0 concentric to 1 touching.
    pub eccentricity: f64,
}

/// The moment of gripping.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grip {
    /// From entry to zero mean clearance.
    pub after: Seconds,
    /// Mean temperature of the sleeve then.
    pub sleeve_mean: Temperature,
    /// Mean temperature of the block then.
    pub block_mean: Temperature,
    /// How far the sleeve still grows lengthwise: what may lift the flange.
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
    /// Growth from the bath's temperature to the room's: the most that the
    /// flange could climb.
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
    tolerance_k: 0.25,
};

impl ColdDrop {
    fn check(&self) -> Result<(), Fault> {
        bounds::DIAMETER.check("sleeve.inner_d_m", self.sleeve_inner.as_m())?;
        bounds::DIAMETER.check("sleeve.outer_d_m", self.sleeve_outer.as_m())?;
        bounds::LENGTH.check("sleeve.length_m", self.sleeve_length.as_m())?;
        bounds::DIAMETER.check("block.bore_d_m", self.block_bore.as_m())?;
        bounds::DIAMETER.check("block.outer_d_m", self.block_outer.as_m())?;
        bounds::TEMPERATURE.check("bath_k", self.bath.as_k())?;
        bounds::TEMPERATURE.check("room_k", self.room.as_k())?;
        bounds::TEMPERATURE.check("block_k", self.block.as_k())?;
        bounds::CARRY.check("carry_s", self.carry.as_s())?;
        if let Some(air) = self.air {
            bounds::AIR.check("air_w_m2k", air.as_w_m2k())?;
        }
        bounds::ECCENTRICITY.check("offset", self.eccentricity)?;
        self.sleeve_inner
            .check_inside("sleeve.inner_d_m", self.sleeve_outer)?;
        self.block_bore
            .check_inside("block.bore_d_m", self.block_outer)
    }

    fn model(&self, resolution: &Resolution) -> Result<DropModel, Fault> {
        // What the solver has room for, whatever is asked.
        let sleeve_cells = resolution.sleeve_cells.clamp(1, CAPACITY / 2 - 2);
        let sleeve = Wall::new(
            &self.sleeve_material,
            self.sleeve_inner,
            self.sleeve_outer,
            sleeve_cells,
            1.0,
        );
        let thick = self.block_outer.radius().as_m() - self.block_bore.radius().as_m();
        let cells =
            block_cells(thick, resolution.block_cells).clamp(2, CAPACITY - 2 - sleeve_cells);
        let block = Wall::new(
            &self.block_material,
            self.block_bore,
            self.block_outer,
            cells,
            growth(thick, cells).map_err(|none| none.at("block.outer_d_m"))?,
        );
        let air = match self.air {
            Some(h) => AirSide::Fixed {
                coefficient: h.as_w_m2k(),
                room: self.room.as_k(),
            },
            None => {
                let (mut cold, mut hot) = (self.room, self.room);
                for t in [self.bath, self.block] {
                    cold = if t < cold { t } else { cold };
                    hot = if t > hot { t } else { hot };
                }
                AirSide::still(self.room, self.sleeve_length, cold, hot)
            }
        };
        let o = self.eccentricity.min(0.98);
        Ok(DropModel {
            sleeve,
            block: Block::Ring(block),
            bore_d_m: self.block_bore.as_m(),
            air,
            off_centre: 1.0 / (1.0 - o * o).sqrt(),
            phase: Phase::Carry,
            scale_m: 1.0,
        })
    }

    /// Clearance between the parts at uniform temperatures.
    fn clearance_at(&self, sleeve: Temperature) -> DiametralClearance {
        let bore = self.block_bore.as_m() * (1.0 + self.block_material.strain(self.block));
        let outer = self.sleeve_outer.as_m() * (1.0 + self.sleeve_material.strain(sleeve));
        DiametralClearance::from_m(bore - outer)
    }
}

/// More cells in a thicker block: half as many again each time it doubles
/// beyond 20 mm, at most twice as many.
fn block_cells(thick_m: f64, usual: usize) -> usize {
    let more = (thick_m / 0.020).max(1.0).log2() * 0.25;
    (usual as f64 * (1.0 + more.min(1.0))) as usize
}

/// Growth of the cells outward so that the first is about 1 mm in the usual
/// number of cells, finer with more.
fn growth(thick_m: f64, cells: usize) -> Result<f64, NoRoot> {
    let first = 0.01 / cells.max(1) as f64;
    let wanted = thick_m / first;
    if wanted <= cells as f64 {
        return Ok(1.0);
    }
    // Sum of a geometric series; its first term is 1.
    let sum = |g: f64| {
        let last = g.powi(i32::try_from(cells).unwrap_or(i32::MAX));
        let all = if g - 1.0 < 1e-9 {
            cells as f64
        } else {
            (last - 1.0) / (g - 1.0)
        };
        all - wanted
    };
    roots::bracketed(sum, 1.0, 1.0 + wanted, 1e-6).map(|root| root.x)
}

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
///     eccentricity: 0.0,
/// };
/// let answer = cold_drop(&drop)?;
/// let grip = answer.grip.expect("it grips");
/// assert!((grip.after.as_s() - 21.8).abs() < 2.5);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn cold_drop(drop: &ColdDrop) -> Result<ColdDropAnswer, Fault> {
    cold_drop_resolved(drop, &USUAL)
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
    let slow = grip_slow(drop, &run, entry)?;
    let mut findings = Vec::new();
    let free = entry > 0.0;
    run.model.scale_m = 0.5 * entry.max(0.0) + super::air::GAP_JUMP_M;
    run.enter(if free { Phase::Gap } else { Phase::Joint }, 0.0, block_k);
    let mut grip_residual = 0.0;
    let mut gripped_at = Some(0);
    if free {
        let started = run.heat_of_parts();
        let end = run.until(LONGEST.as_s(), 0.05, |m| m.clearance[0]);
        solved(end, "block")?;
        books.close(&run, started);
        gripped_at = (end == End::Met).then_some(run.moments.len());
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
        let strain = run.model.sleeve_strain(&run.y);
        let grown = drop.sleeve_material.strain(drop.room) - strain;
        if free {
            grip_residual = run.model.clearance(&run.y);
        }
        grip = Some(Grip {
            after: Seconds::from_s(after),
            sleeve_mean: Temperature::from_k(sleeve),
            block_mean: Temperature::from_k(block),
            climb: Length::from_m(drop.sleeve_length.as_m() * grown),
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
            "does_not_enter",
            "the chilled sleeve is no smaller than the bore: do not drop it. Chill it fully, \
             carry it faster, warm the block, or hone the bore to its fit",
        ));
    } else if grip.is_none() {
        findings.push(Finding::look(
            "never_grips",
            "the sleeve does not grip within an hour of entry: check the fit and the \
             temperatures that were entered",
        ));
    }
    let before_grip = gripped_at.unwrap_or(run.moments.len());
    let span = Span {
        free_moments: if free { before_grip } else { 0 },
        shown_s,
        entry,
    };
    Ok(ColdDropAnswer {
        clearance_bath: drop.clearance_at(drop.bath),
        clearance_entry: DiametralClearance::from_m(entry),
        climb_ceiling: Length::from_m(
            drop.sleeve_length.as_m()
                * (drop.sleeve_material.strain(drop.room) - drop.sleeve_material.strain(drop.bath)),
        ),
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
fn carried(drop: &ColdDrop, resolution: &Resolution) -> Result<(Run, HeatBooks, f64), Fault> {
    drop.check()?;
    let mut run = Run::new(
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

fn solved(end: End, field: &str) -> Result<(), Fault> {
    if end == End::Stuck {
        return Err(Fault::new(
            field,
            "the heat flow could not be solved with these inputs: check dimensions and \
             conductivities for values far from any metal",
        ));
    }
    Ok(())
}

/// The slow bound: the bore held at the block's temperature.
fn grip_slow(drop: &ColdDrop, run: &Run, entry: f64) -> Result<Option<Seconds>, Fault> {
    if entry <= 0.0 {
        return Ok(Some(Seconds::from_s(0.0)));
    }
    let mut model = run.model.clone();
    model.block = Block::Held {
        bore_k: drop.block.as_k(),
        strain: drop.block_material.strain(drop.block),
    };
    model.scale_m = 0.5 * entry + super::air::GAP_JUMP_M;
    let mut slow = Run::new(model, 0.0, run.tolerance_k());
    slow.y = run.y;
    slow.enter(Phase::Gap, 0.0, drop.block.as_k());
    let end = slow.until(LONGEST.as_s(), 0.05, |m| m.clearance[0]);
    solved(end, "block")?;
    let last = slow.moments.last().map_or(0.0, |m| m.t[0]);
    Ok((end == End::Met).then_some(Seconds::from_s(last)))
}

/// Heat gained by the parts and heat taken from the air, phase by phase.
#[derive(Default)]
struct HeatBooks {
    gained: f64,
    from_air: f64,
    turnover: f64,
}

impl HeatBooks {
    fn close(&mut self, run: &Run, started: f64) {
        let now = run.heat_of_parts();
        self.gained += now - started;
        self.from_air += run.model.air_heat(&run.y);
        self.turnover = self.turnover.max(run.model.sleeve.heat(&run.y).abs());
    }

    fn residual(&self) -> f64 {
        (self.gained - self.from_air) / self.turnover.max(1e-300)
    }
}
