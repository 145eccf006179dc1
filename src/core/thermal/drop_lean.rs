//! Free in the bore with lean or frost: [`super::lean_model`] run until the
//! mean clearance is gone, and the first contact on the way there.

use super::cold_drop::{ColdDrop, LONGEST, solved};
use super::drop_model::{Block, CAPACITY, DropModel};
use super::drop_run::{End, Moment, Resolution, Run, between};
use super::lean_model::{LEAN_CAPACITY, LeanModel, Seating};
use crate::numerics::roots::{self, NoRoot};
use crate::quantity::report::Fault;

/// A sleeve that was free in the bore.
pub struct Free {
    /// What was recorded.
    pub moments: Vec<Moment>,
    /// Whether it gripped.
    pub gripped: bool,
    /// Temperatures at the end by radius, mean round the ring: sleeve, block.
    pub profile: Vec<f64>,
    /// Mean e(T) of the sleeve at the end, the mean over the sectors.
    pub clearance: f64,
    /// Steps taken and rejected.
    pub steps: [usize; 2],
    /// Heat gained by the parts, J/m/rad.
    pub gained: f64,
    /// Heat from the air, J/m/rad.
    pub from_air: f64,
}

/// How far a drop is followed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Until {
    /// Until the mean clearance is gone.
    Grip,
    /// Until the first contact.
    Touch,
}

/// From entry on, in sectors; `carried` is the sleeve at the bore.
///
/// # Errors
/// A solution that does not converge, at `block`.
pub fn lean_drop(
    drop: &ColdDrop,
    carried: &Run<DropModel, CAPACITY>,
    block: Block,
    entry_m: f64,
    resolution: &Resolution,
    until: Until,
) -> Result<Free, Fault> {
    let block_cells = match &block {
        Block::Ring(wall) => wall.cells(),
        Block::Held { .. } => 0,
    };
    // What the solver has room for, whatever is asked.
    let room = (LEAN_CAPACITY - 2) / (carried.model.sleeve.cells() + block_cells);
    let seating = Seating {
        lean: drop.lean,
        frost_m: drop.frost.as_m(),
        length_m: drop.sleeve_length.as_m(),
        sectors: if drop.lean > 0.0 {
            resolution.sectors.clamp(1, room)
        } else {
            1
        },
    };
    let model = LeanModel::new(
        carried.model.sleeve.clone(),
        block,
        carried.model.bore_d_m,
        carried.model.air.clone(),
        &seating,
        entry_m,
    );
    let start = model.start(&carried.y, drop.block.as_k());
    let mut run = Run::new(model, start, carried.tolerance_k());
    let before = run.model.heat(&run.y);
    let taken_m = match until {
        Until::Grip => 0.0,
        Until::Touch => 1.0,
    };
    let frost_m = drop.frost.as_m();
    let end = run.until(LONGEST.as_s(), 0.05, |m| {
        m.clearance[0] - taken_m * (2.0 * frost_m + m.bow[0].max(0.0))
    });
    solved(end, "block")?;
    Ok(Free {
        gripped: end == End::Met,
        profile: run.model.profile(&run.y),
        clearance: run.moments.last().map_or(0.0, |m| m.clearance[0]),
        gained: run.model.heat(&run.y) - before,
        from_air: run.model.air_heat(&run.y),
        steps: run.steps,
        moments: run.moments,
    })
}

/// The first contact.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Touch {
    /// Seconds after entry; `None`: no contact within the hour.
    pub after: Option<f64>,
    /// Largest bow until then, m.
    pub bow: f64,
}

/// When the bow fills the clearance that the frost leaves, at the grip at the
/// latest.
///
/// # Errors
/// [`NoRoot`] where the crossing that was seen is not found.
pub fn touch(moments: &[Moment], frost_m: f64, gripped: bool) -> Result<Touch, NoRoot> {
    let room = |m: &Moment| m.clearance[0] - 2.0 * frost_m - m.bow[0];
    let mut bow: f64 = 0.0;
    for (i, m) in moments.iter().enumerate() {
        if room(m) <= 0.0 {
            // Straight and bare it touches where it grips: the solver has landed there.
            let before = i
                .checked_sub(1)
                .and_then(|b| moments.get(b))
                .filter(|_| frost_m > 0.0 || m.bow[0] > 0.0);
            let Some(before) = before else {
                return Ok(Touch {
                    after: Some(m.t[0]),
                    bow: m.bow[0],
                });
            };
            let root = roots::bracketed(|s| room(&between(before, m, s)), before.s, m.s, 1e-9)?;
            let at = between(before, m, root.x);
            return Ok(Touch {
                after: Some(at.t[0]),
                bow: bow.max(at.bow[0]),
            });
        }
        bow = bow.max(m.bow[0]);
    }
    Ok(Touch {
        after: moments.last().filter(|_| gripped).map(|m| m.t[0]),
        bow,
    })
}
