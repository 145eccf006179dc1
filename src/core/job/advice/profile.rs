//! The bore of a fitted sleeve down its length, and the stock the hone must
//! take there: from the sleeve as delivered, the fit as measured and the block
//! as typed with the engine: wall, water jacket, width of the row, load of head
//! or torque plate. The single number of Lame's rings stands beside it.
//!
//! Assumed: a ring of block round the bore, a joint that slides freely, the
//! block ending with the sleeve; see [`crate::mechanics::bore_profile`]. Where
//! a jacket is typed, `BlockWall` is the parent wall, and deck and bottom plate
//! reach out to 1.4 times the bore's radius, as in the project's reference
//! cases. Bores in a row (no jacket) close in oval by
//! [`crate::mechanics::block_ring`].

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::mechanics::block_ring::{Fitted, Surround, block_ring, installation, oval_close_in};
use crate::mechanics::bore_profile::{BoreProfile, BoreProfileInput, bore_profile, bored_profile};
use crate::mechanics::rings::press_fit;
use crate::numerics::order::in_order;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, DiametralInterference, Force, Length, Pressure};

/// Even levels at which the profile is read, every so many of them told in
/// numbers.
const LEVELS: usize = 25;
const TOLD: usize = 4;
/// Further levels, where the shape turns: in the flange, and below the ledge by
/// so many decay lengths of a ring's end.
const BELOW_LEDGE: [f64; 7] = [0.0, 0.25, 0.5, 0.75, 1.0, 1.5, 2.0];
/// Outside of deck and bottom plate of a jacketed block over the bore.
pub(super) const PLATES: f64 = 1.4;
/// Steps of a dial from end to end.
const STEPS: f64 = 60.0;
/// Friction of a sleeve pushed home: cast iron on iron, oiled and degreased
/// (DIN 7190-1 section 5.3 by a secondary source, project reference A14).
pub const FRICTION: [f64; 2] = [0.10, 0.16];

/// What the profile hangs on; equal needs, equal profile.
#[derive(Clone, Debug, PartialEq)]
pub struct ProfileNeeds {
    pub(super) input: BoreProfileInput,
    pub(super) finished_m: Option<f64>,
    pub(super) hone_m: Option<f64>,
    pub(super) clamp: Option<Force>,
    pub(super) pull: Option<Force>,
    /// Fillet under this flange, as measured.
    pub(super) fillet: Option<Length>,
    /// Pitch and half-width of the row.
    pub(super) row: Option<[Length; 2]>,
}

/// Three dimensions to try, beside those of the job.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trial {
    /// Fit.
    pub fit: DiametralInterference,
    /// Wall of the sleeve; its outside stays.
    pub wall: Length,
    /// Thickness of the flange.
    pub flange: Length,
}

/// What of a trial is moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dial {
    /// The fit.
    Fit,
    /// The sleeve's wall.
    Wall,
    /// The flange's thickness.
    Flange,
}

impl Dial {
    /// All.
    pub const ALL: [Self; 3] = [Self::Fit, Self::Wall, Self::Flange];

    /// From where to where it can be moved, and by which step, about the job's
    /// own value: the fit from none to three times, wall and flange from half to
    /// twice.
    #[must_use]
    pub fn reach(self, own: Trial) -> [Length; 3] {
        let (least, most) = match self {
            Self::Fit => (0.0, 3.0),
            Self::Wall | Self::Flange => (0.5, 2.0),
        };
        [least, most, (most - least) / STEPS]
            .map(|part| Length::from_m(part * own.value(self).as_m().abs()))
    }
}

impl Trial {
    /// The value of a dial.
    #[must_use]
    pub const fn value(&self, dial: Dial) -> Length {
        match dial {
            Dial::Fit => Length::from_m(self.fit.as_m()),
            Dial::Wall => self.wall,
            Dial::Flange => self.flange,
        }
    }

    /// The trial with one dial moved.
    #[must_use]
    pub const fn moved(mut self, dial: Dial, to: Length) -> Self {
        match dial {
            Dial::Fit => self.fit = DiametralInterference::from_m(to.as_m()),
            Dial::Wall => self.wall = to,
            Dial::Flange => self.flange = to,
        }
        self
    }
}

/// One level of a profile.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ProfileLevel {
    /// Below the top of the sleeve.
    pub z: Length,
    /// One of the even levels that are told in numbers, top, middle and foot
    /// among them.
    pub is_told: bool,
    /// Change of the inside diameter; negative closes.
    pub change: Length,
    /// The same with head or torque plate on, where its load is typed.
    pub clamped: Option<Length>,
    /// The change along and across the row; `None` in a jacket or without pitch
    /// and half-width.
    pub oval: Option<[Length; 2]>,
    /// Pressure on the bore; 0 above the ledge.
    pub pressure: Pressure,
    /// Within one wall of ledge or foot, where the pressure is not to be
    /// trusted, or above the ledge.
    pub near_end: bool,
    /// Stock from the fitted inside to the finished bore, on diameter, with
    /// head or torque plate on where its load is typed.
    pub stock: Option<Length>,
    /// The same once the bar has bored the sleeve straight and left the hone
    /// its stock; `None` too where there is nothing to bore.
    pub stock_bored: Option<Length>,
}

/// A profile.
#[derive(Clone, Debug, PartialEq)]
pub struct Profile {
    /// From the top down.
    pub levels: Vec<ProfileLevel>,
    /// Lame's single number for the change of the inside.
    pub lame: Length,
    /// How far down the ledge lies: the flange's thickness.
    pub ledge: Length,
    /// Force that pushes the sleeve home against its fit, at the least and the
    /// greatest usual friction.
    pub push_home: [Force; 2],
    /// How far head or torque plate presses the flange's top down.
    pub head_sinks: Option<Length>,
    /// How far the strongest pull presses it down.
    pub pull_sinks: Option<Length>,
}

impl Profile {
    /// The level at mid length.
    #[must_use]
    pub fn middle(&self) -> Option<&ProfileLevel> {
        let half_m = 0.5 * self.levels.last()?.z.as_m();
        self.levels.iter().find(|l| l.z.as_m() >= half_m)
    }
}

/// Depths of the levels, from the top down.
pub(super) fn depths(input: &BoreProfileInput) -> Vec<Length> {
    let ledge_m = input.flange.map_or(0.0, |f| f.thickness.as_m());
    let top_m = ledge_m + input.length.as_m();
    let outer_m = input.sleeve_outer.radius().as_m();
    let decay_m = (outer_m * (outer_m - input.sleeve_inner.radius().as_m()))
        .max(0.0)
        .sqrt();
    let mut all: Vec<f64> = (0..LEVELS).map(|i| even(top_m, i)).collect();
    all.push(0.5 * ledge_m);
    all.extend(BELOW_LEDGE.map(|part| ledge_m + part * decay_m));
    all.retain(|z| *z <= top_m);
    let mut all = in_order(all, f64::total_cmp);
    all.dedup();
    all.into_iter().map(Length::from_m).collect()
}

/// An even level.
fn even(top_m: f64, index: usize) -> f64 {
    top_m * index as f64 / (LEVELS - 1) as f64
}

impl ProfileNeeds {
    /// Whether the sleeve has a flange.
    #[must_use]
    pub const fn has_flange(&self) -> bool {
        self.input.flange.is_some()
    }

    /// The three dimensions as they are.
    #[must_use]
    pub fn trial(&self) -> Trial {
        let input = &self.input;
        Trial {
            fit: input.interference,
            wall: Length::from_m(0.5 * (input.sleeve_outer.as_m() - input.sleeve_inner.as_m())),
            flange: input.flange.map_or(Length::from_m(0.0), |f| f.thickness),
        }
    }

    /// The same with three dimensions changed, for the picture: without the
    /// pull.
    #[must_use]
    pub fn with(&self, trial: Trial) -> Self {
        let mut changed = self.clone();
        changed.pull = None;
        let input = &mut changed.input;
        input.interference = trial.fit;
        input.sleeve_inner = Diameter::from_m(input.sleeve_outer.as_m() - 2.0 * trial.wall.as_m());
        if let Some(flange) = &mut input.flange {
            if let Some(jacket) = &mut input.jacket {
                // The jacket's end stays where it is below the deck.
                let longer = trial.flange.as_m() - flange.thickness.as_m();
                jacket.bottom = Length::from_m(jacket.bottom.as_m() + longer);
            }
            flange.thickness = trial.flange;
        }
        input.depths = depths(input);
        changed
    }
}

/// The field at which a fault of the profile is shown.
#[must_use]
pub fn field_of(fault: &Fault) -> Field {
    match fault.field.as_str() {
        "sleeve.inner_d_m" | "bored_d_m" => Field::SleeveId,
        "sleeve.length_m" => Field::SleeveLength,
        "sleeve.flange_outer_d_m" => Field::FlangeOd,
        "sleeve.flange_thickness_m" => Field::NominalFlange,
        "block.outer_d_m" | "block.jacket.wall_m" => Field::BlockWall,
        "block.jacket.deck_m" => Field::JacketFrom,
        "block.jacket.bottom_m" => Field::JacketTo,
        "clamp_n" => Field::HeadClamp,
        "pitch_m" => Field::Pitch,
        "half_width_m" => Field::HalfWidth,
        "interference_m" | "joint" => Field::BoreD,
        _ => Field::NominalOd,
    }
}

/// The profile.
///
/// # Errors
/// What [`bore_profile`], [`press_fit`] and [`block_ring`] refuse.
pub fn profile(needs: &ProfileNeeds) -> Result<Profile, Fault> {
    let input = &needs.input;
    let (shape, bored) = fitted_and_bored(needs)?;
    let lame = press_fit(&needs.rings())?;
    let loaded = |load: Force| {
        bore_profile(&BoreProfileInput {
            clamp: load,
            ..input.clone()
        })
    };
    let clamped = needs.clamp.map(loaded).transpose()?;
    let sinks =
        |height: Option<Length>| Some(Length::from_m(shape.height_change?.as_m() - height?.as_m()));
    let oval = needs
        .row
        .map(|[pitch, half_width]| {
            let ring = block_ring(
                input.sleeve_outer,
                Surround::Row {
                    pitch,
                    half_width,
                    fitted: Fitted::All,
                },
            )?;
            // What the fit does not take from the sleeve's outside, the bore grows.
            let hoop = lame.block_hoop_inner.as_pa() + input.block.poisson * lame.pressure.as_pa();
            let growth = input.sleeve_outer.as_m() * hoop / input.block.youngs.as_pa();
            let close = -lame.sleeve_inner_change.as_m();
            let share = if close > 0.0 { growth / close } else { 0.0 };
            Ok(oval_close_in(ring.oval_growth, share))
        })
        .transpose()?;
    let wall_m = needs.trial().wall.as_m();
    let ledge_m = input.flange.map_or(0.0, |f| f.thickness.as_m());
    let foot_m = ledge_m + input.length.as_m();
    let levels = (0..input.depths.len())
        .map(|i| {
            let change = shape.inner_change[i];
            let clamped = clamped.as_ref().map(|c| c.inner_change[i]);
            let plate_m = clamped.map_or(0.0, |c| c.as_m() - change.as_m());
            let stock = needs.finished_m.map(|finished_m| {
                let fitted_m = input.sleeve_inner.as_m() + change.as_m() + plate_m;
                Length::from_m(finished_m - fitted_m)
            });
            let stock_bored = needs
                .hone_m
                .zip(bored.as_ref())
                .map(|(hone_m, moved)| Length::from_m(hone_m - moved[i].as_m() - plate_m));
            let z_m = input.depths[i].as_m();
            ProfileLevel {
                z: input.depths[i],
                is_told: (0..LEVELS).step_by(TOLD).any(|e| even(foot_m, e) == z_m),
                change,
                clamped,
                oval: oval.map(|parts| parts.map(|part| Length::from_m(part * change.as_m()))),
                near_end: z_m < ledge_m + wall_m || z_m > foot_m - wall_m,
                pressure: shape.pressure[i],
                stock,
                stock_bored,
            }
        })
        .collect();
    Ok(Profile {
        levels,
        lame: lame.sleeve_inner_change,
        ledge: Length::from_m(ledge_m),
        push_home: FRICTION.map(|mu| Force::from_n(mu * shape.joint_force.as_n())),
        head_sinks: sinks(clamped.as_ref().and_then(|c| c.height_change)),
        pull_sinks: sinks(
            needs
                .pull
                .map(loaded)
                .transpose()?
                .and_then(|p| p.height_change),
        ),
    })
}

/// The profile, and how the inside moves after the bar has bored it straight,
/// without the plate; `None` where the bar has next to nothing to cut.
fn fitted_and_bored(needs: &ProfileNeeds) -> Result<(BoreProfile, Option<Vec<Length>>), Fault> {
    let input = &needs.input;
    let least_m = input.sleeve_inner.as_m() + input.interference.as_m().abs();
    match (needs.finished_m, needs.hone_m) {
        (Some(finished_m), Some(hone_m)) if finished_m - hone_m > least_m => {
            let (shape, moved) = bored_profile(input, Diameter::from_m(finished_m - hone_m))?;
            Ok((shape, Some(moved)))
        }
        _ => Ok((bore_profile(input)?, None)),
    }
}

/// The order in which the sleeves of a cylinder's deck go in with the least
/// distortion, as numbers of cylinders, and how many fitted neighbours the
/// worst of them finds. A sleeve counts as fitted once its drop or its warm
/// height is noted; holes that are left out get none.
#[must_use]
pub fn order_of_sleeves(job: &Job, cylinder: u8) -> (Vec<u8>, usize) {
    let bank = job.engine.bank_of(cylinder);
    let holes: Vec<u8> = (1..=job.engine.cylinders)
        .filter(|c| job.engine.bank_of(*c) == bank)
        .collect();
    let fitted: Vec<bool> = holes
        .iter()
        .map(|c| {
            [Field::DropOutcome, Field::WarmHeight, Field::SeatHeight]
                .into_iter()
                .flat_map(|f| Place::all(Owner::Cylinder(*c), f))
                .any(|place| job.entries.get(place).is_some())
        })
        .collect();
    // A hole that gets no sleeve makes none of its neighbours oval.
    let gets_one: Vec<(u8, bool)> = holes.into_iter().zip(fitted).collect();
    let (mut order, mut most) = (Vec::new(), 0);
    for run in gets_one.split(|(cylinder, _)| job.left_out.contains(cylinder)) {
        let there: Vec<bool> = run.iter().map(|(_, is_in)| *is_in).collect();
        let planned = installation(&there);
        most = most.max(planned.neighbours);
        order.extend(
            planned
                .order
                .iter()
                .filter_map(|i| run.get(*i))
                .map(|(c, _)| *c),
        );
    }
    (order, most)
}
