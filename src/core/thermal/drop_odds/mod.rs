//! The band of a cold drop by Monte Carlo: *be home within N seconds of
//! entering*, with the middle and the late end of the grip and the cause that
//! matters most. A grip time alone promises twice what a leaning, frosted
//! sleeve leaves.
//!
//! Drawn: the fit by its gauges, the contraction within the material's own band
//! (skewed for gray and pearlitic ductile iron), the micrometer's where it was measured,
//! the lean evenly from none to all, frost evenly up to 15 um, the carry by 30 %
//! either way unless it was timed, the block evenly between a ring insulated
//! outside and a bore held at its temperature (the two are no bounds when the
//! block is warm, but what is true lies between them), the way home by 30 % either
//! way of what it takes. That last is left out of N, which it has to be compared
//! with: it is taken off each drop's own first contact, and what is left at home in
//! all but one drop of forty says whether a slow one is still home in time.
//!
//! Three of eight draws are even points, seeded, joined to a response surface; most
//! others are put where the surface has the short times and joined to one of
//! their own, so that N stands on two hundred drops near it and not on ten.
//! They are worked out on coarser cells and fewer sectors than [`super::cold_drop`]
//! has; the last are drops next to N once more, as finely as there, and what
//! they differ by is put right in it: within 1 % of all of them worked out so finely,
//! over seeded drops of a job's sizes (`tests/odds.rs`), middle and late end too.

mod spread;

use super::cold_drop::{ColdDrop, LEANING, LONGEST, carried};
use super::drop_lean::{Until, lean_drop, touch};
use super::drop_run::Resolution;
use crate::numerics::normal::{self, TWO_SIDED};
use crate::numerics::sampling::even_points;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Seconds};
use spread::{SHORT, Spread, Way};

/// The resolution of a draw.
pub const DRAWING: Resolution = Resolution {
    sleeve_cells: 2,
    block_cells: 4,
    sectors: 5,
    tolerance_k: 1.0,
};
/// Draws of a band.
pub const DRAWS: usize = 400;
/// Fewest even draws: more than the surface has terms.
const FEWEST_EVEN: usize = 40;
/// One draw of so many is a drop next to N once more, as finely as `cold_drop`.
const ONE_AGAIN_OF: usize = 16;
/// Most frost on a sleeve that was not wiped at the bore (order of magnitude:
/// 0.2 to 1 g/m2 in 10 s of carry, 50 to 150 kg/m3).
pub const FROST_MOST: Length = Length::from_um(15.0);
/// Share by which a carry that was not timed may be off.
const CARRY_SHARE: f64 = 0.3;
/// Share by which the way home may take longer or shorter than it does in the middle:
/// as a carry that was not timed; an estimate.
const INSERTION_SHARE: f64 = 0.3;
/// A fit that grips so soon is none to be dropped, s.
const TOO_SOON_S: f64 = 3.0;
/// Spare beyond the time needed from which a drop may go, s.
const SPARE_S: f64 = 1.0;

/// What is not known of a drop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unknowns {
    /// Standard uncertainty of the fit.
    pub u_fit: Length,
    /// Whether the carry was timed.
    pub carry_timed: bool,
    /// Most frost; 0 on a sleeve wiped at the bore.
    pub frost_most: Length,
    /// From the lower end's entry to home, in the middle; 0: at once, every time.
    pub insertion: Seconds,
}

/// What a drop's time hangs on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cause {
    /// Sleeve and bore as measured.
    Fit,
    /// How far the material shrinks.
    Contraction,
    /// How the sleeve leans.
    Lean,
    /// Frost on it.
    Frost,
    /// How long it was carried.
    Carry,
    /// How the block takes part.
    Block,
    /// How long it takes from entering to home.
    Insertion,
}

/// Causes of which a drop's first contact hangs; the way home is taken off it.
const OF_CONTACT: usize = 6;

impl Cause {
    /// All, in the order they are drawn.
    pub const ALL: [Self; OF_CONTACT + 1] = [
        Self::Fit,
        Self::Contraction,
        Self::Lean,
        Self::Frost,
        Self::Carry,
        Self::Block,
        Self::Insertion,
    ];
}

/// The band.
#[derive(Clone, Debug, PartialEq)]
pub struct DropOdds {
    /// Be home within this time of entering: the 2.5 % point of first contact.
    pub home_within: Seconds,
    /// Half of the drops touch before; `None`: later than an hour.
    pub touch_middle: Option<Seconds>,
    /// Half of them grip before; `None`: later than an hour.
    pub grip_middle: Option<Seconds>,
    /// All but 2.5 % grip before; `None`: later than an hour.
    pub grip_late: Option<Seconds>,
    /// Share of the drops that do not enter at all.
    pub jams: f64,
    /// Left at home before first contact in all but 2.5 % of the drops; negative: not
    /// home by then.
    pub left_home: Seconds,
    /// What moves the time most where it is short; `None` where nothing does.
    pub matters_most: Option<Cause>,
    /// What each cause costs of `left_home`: how much more were left with that
    /// cause in its middle.
    pub matters: [Seconds; OF_CONTACT + 1],
}

/// What the time allows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HomeVerdict {
    /// A second or more to spare.
    Go,
    /// Little to spare, or a fit that grips too soon or never.
    Look,
    /// Not home in time.
    Stop,
}

impl DropOdds {
    /// What moves the time most, and how much more were left with that cause in its
    /// middle.
    #[must_use]
    pub fn moves_most(&self) -> Option<(Cause, Seconds)> {
        let most = self.matters_most?;
        let at = Cause::ALL.iter().position(|cause| *cause == most)?;
        Some((most, self.matters[at]))
    }

    /// Compares N with the time that the shop needs from entering to home: a
    /// second to spare is a go, less a look, none a stop. A fit that grips
    /// within 3 s, or half the time never, is no go whatever is needed; nor is one
    /// that a slow way home does not leave free in one drop of forty.
    #[must_use]
    pub fn verdict(&self, needed: Seconds) -> HomeVerdict {
        let spare = self.home_within.as_s() - needed.as_s();
        let grips = self.grip_middle.is_some_and(|t| t.as_s() > TOO_SOON_S);
        if spare < 0.0 {
            HomeVerdict::Stop
        } else if spare < SPARE_S || !grips || self.left_home.as_s() < 0.0 {
            HomeVerdict::Look
        } else {
            HomeVerdict::Go
        }
    }
}

/// A band in the making: a few draws at a time, so that no key waits for it.
#[derive(Clone, Debug)]
pub struct OddsRun {
    drop: ColdDrop,
    unknowns: Unknowns,
    resolution: Resolution,
    /// The first half evenly, the second where the surface has the short times, the
    /// last of all next to N.
    points: Vec<Vec<f64>>,
    /// Those of the second half that the last ones are once more.
    again: Vec<usize>,
    draws: usize,
    /// First contact and grip of each draw so far, s; infinite: not in an hour.
    drawn: Vec<[f64; 2]>,
    /// The first half joined to surfaces.
    spread: Option<Spread>,
    /// Times with the bore held over those in a ring: first contact, grip.
    held_share: [f64; 2],
}

impl OddsRun {
    /// Of `draws` draws.
    #[must_use]
    pub fn new(drop: ColdDrop, unknowns: Unknowns, draws: usize, seed: u64) -> Self {
        Self::resolved(drop, unknowns, draws, seed, DRAWING)
    }

    /// The same with a resolution of one's own: for tests of convergence.
    #[must_use]
    pub fn resolved(
        drop: ColdDrop,
        unknowns: Unknowns,
        draws: usize,
        seed: u64,
        resolution: Resolution,
    ) -> Self {
        Self {
            drop,
            unknowns,
            resolution,
            points: even_points(OF_CONTACT, evenly(draws), seed),
            again: Vec::new(),
            draws,
            drawn: Vec::with_capacity(draws),
            spread: None,
            held_share: [1.0; 2],
        }
    }

    /// Draws up to `more` times; whether all are drawn.
    ///
    /// # Errors
    /// As [`super::cold_drop::cold_drop`].
    pub fn advance(&mut self, more: usize) -> Result<bool, Fault> {
        if self.drawn.is_empty() {
            self.held_share = self.weigh_the_block()?;
        }
        for _ in 0..more {
            if self.drawn.len() >= self.draws {
                break;
            }
            if self.drawn.len() == self.points.len() {
                self.go_on()?;
            }
            let Some(point) = self.points.get(self.drawn.len()) else {
                break;
            };
            // All but the first half are after short times only.
            let until = if self.spread.is_some() {
                Until::Touch
            } else {
                Until::Grip
            };
            let resolution = if self.again.is_empty() {
                self.resolution
            } else {
                LEANING
            };
            let drawn = self.draw(point, until, &resolution)?;
            self.drawn.push(drawn);
        }
        Ok(self.drawn.len() >= self.draws)
    }

    /// Draws of the first half, and of the last, which are some of them once more.
    fn parts(&self) -> [usize; 2] {
        [evenly(self.draws), self.draws / ONE_AGAIN_OF]
    }

    /// The places to go on with where those so far are drawn.
    fn go_on(&mut self) -> Result<(), Fault> {
        let [half, again] = self.parts();
        let Some(spread) = &self.spread else {
            let spread =
                Spread::of(&self.points, &self.drawn).map_err(|none| none.at("carry_s"))?;
            let rest = self.draws - self.drawn.len() - again;
            self.points.extend(spread.short_ones(rest));
            self.spread = Some(spread);
            return Ok(());
        };
        let second = &self.drawn[half..];
        self.again = spread.next_to_short(second, again);
        let once_more = self.again.iter().map(|i| self.points[half + i].clone());
        self.points.extend(once_more.collect::<Vec<_>>());
        Ok(())
    }

    fn draw(
        &self,
        point: &[f64],
        until: Until,
        resolution: &Resolution,
    ) -> Result<[f64; 2], Fault> {
        let [fit, contraction, lean, frost, carry, block] =
            core::array::from_fn(|k| point.get(k).copied().unwrap_or(0.5));
        let normal = |p: f64| normal::quantile(p.clamp(1e-9, 1.0 - 1e-9));
        let mut drop = self.drop.clone();
        drop.block_bore =
            Diameter::from_m(drop.block_bore.as_m() + self.unknowns.u_fit.as_m() * normal(fit));
        let z = normal(contraction);
        let [less, more] = drop.sleeve_material.expansion_band();
        let side = if z < 0.0 { less } else { more };
        let share = side * z / TWO_SIDED;
        drop.sleeve_material = drop
            .sleeve_material
            .with_expansion_scale((1.0 + share).max(0.0));
        drop.lean = lean;
        drop.frost = Length::from_m(frost * self.unknowns.frost_most.as_m());
        if !self.unknowns.carry_timed {
            let off = 1.0 + CARRY_SHARE * (2.0 * carry - 1.0);
            drop.carry = Seconds::from_s(off * drop.carry.as_s());
        }
        let found = self.fall(&drop, false, until, resolution)?;
        Ok(core::array::from_fn(|i| {
            found[i] * (1.0 - block + block * self.held_share[i])
        }))
    }

    /// First contact and grip of one drop, s, in a ring of block or with its bore
    /// held; 0 where it does not enter, infinite where it takes over an hour.
    fn fall(
        &self,
        drop: &ColdDrop,
        held: bool,
        until: Until,
        resolution: &Resolution,
    ) -> Result<[f64; 2], Fault> {
        let (run, _, entry) = carried(drop, resolution)?;
        if entry <= 0.0 {
            return Ok([0.0; 2]);
        }
        let block = if held {
            drop.held()
        } else {
            run.model.block.clone()
        };
        let fell = lean_drop(drop, &run, block, entry, resolution, until)?;
        let last = fell.moments.last().map_or(0.0, |m| m.t[0]);
        let end = if fell.gripped { last } else { f64::INFINITY };
        if until == Until::Touch {
            return Ok([end, f64::INFINITY]);
        }
        let first = touch(&fell.moments, drop.frost.as_m(), fell.gripped)
            .map_err(|none| none.at("frost_m"))?;
        Ok([first.after.unwrap_or(f64::INFINITY), end])
    }

    /// What the block makes of the times: held over ring, of a drop in the middle
    /// of its causes. It matters little, so one drop stands for all.
    fn weigh_the_block(&self) -> Result<[f64; 2], Fault> {
        let mut drop = self.drop.clone();
        drop.lean = 0.5;
        drop.frost = Length::from_m(0.5 * self.unknowns.frost_most.as_m());
        let [ring, held] =
            [false, true].map(|held| self.fall(&drop, held, Until::Grip, &self.resolution));
        let (ring, held) = (ring?, held?);
        Ok(core::array::from_fn(|i| {
            let share = held[i] / ring[i];
            if share.is_finite() { share } else { 1.0 }
        }))
    }

    /// The band; `None` before all is drawn.
    ///
    /// # Errors
    /// A fault at `carry_s` where the draws cannot be joined to a surface.
    pub fn odds(&self) -> Result<Option<DropOdds>, Fault> {
        let Some(spread) = self.spread.as_ref() else {
            return Ok(None);
        };
        if self.drawn.len() < self.draws {
            return Ok(None);
        }
        let [half, again] = self.parts();
        let (first, rest) = self.drawn.split_at(half);
        let (second, finely) = rest.split_at(rest.len() - again);
        let within = |t: f64| (t < LONGEST.as_s()).then(|| Seconds::from_s(t));
        let way = self.unknowns.insertion.as_s();
        let way = Way {
            middle_s: way,
            more_s: INSERTION_SHARE * way,
        };
        let by_surface = spread.left(&way, None);
        let jams = first.iter().filter(|d| d[0] <= 0.0).count() as f64 / half.max(1) as f64;
        let home = spread
            .short_point(&self.points[half..half + second.len()], second)
            .min(if jams >= SHORT { 0.0 } else { f64::INFINITY });
        let sum = |times: &mut dyn Iterator<Item = f64>| times.sum::<f64>();
        let put_right = sum(&mut finely.iter().map(|d| d[0]))
            / sum(&mut self.again.iter().map(|i| second[*i][0]));
        let home = if put_right.is_finite() {
            home * put_right
        } else {
            home
        };
        let slow = by_surface - spread.held(0, SHORT);
        let left = home
            + if slow.is_finite() {
                slow
            } else {
                -way.middle_s - way.more_s
            };
        let matters = core::array::from_fn(|k| {
            let moves = match Cause::ALL[k] {
                Cause::Carry => !self.unknowns.carry_timed,
                Cause::Frost => self.unknowns.frost_most.as_m() > 0.0,
                _ => true,
            };
            if moves && by_surface.is_finite() {
                spread.left(&way, Some(k)) - by_surface
            } else {
                0.0
            }
        });
        let most = (0..matters.len()).max_by(|a, b| matters[*a].total_cmp(&matters[*b]));
        Ok(Some(DropOdds {
            home_within: Seconds::from_s(home.min(LONGEST.as_s())),
            touch_middle: within(spread.held(0, 0.5)),
            grip_middle: within(spread.held(1, 0.5)),
            grip_late: within(spread.held(1, 1.0 - SHORT)),
            jams,
            left_home: Seconds::from_s(left.min(LONGEST.as_s())),
            matters_most: most.filter(|k| matters[*k] > 0.0).map(|k| Cause::ALL[k]),
            matters: matters.map(Seconds::from_s),
        }))
    }
}

/// Draws of a band that are even points: three of eight.
fn evenly(draws: usize) -> usize {
    (3 * draws).div_ceil(8).max(FEWEST_EVEN).min(draws)
}

/// The band of a drop, all draws at once.
///
/// # Errors
/// As [`super::cold_drop::cold_drop`].
///
/// # Example
/// The drop whose concentric grip is 25.8 s: with lean and frost the shop has
/// less than half of that (an independent solution in two dimensions touches at
/// 11.4 s leaning all along).
/// ```
/// use coldseat_core::materials::{Material, MaterialId};
/// use coldseat_core::quantity::{Diameter, Length, Seconds, Temperature};
/// use coldseat_core::thermal::cold_drop::ColdDrop;
/// use coldseat_core::thermal::drop_odds::{FROST_MOST, HomeVerdict, Unknowns, drop_odds};
/// let iron = Material::catalogue(MaterialId::GrayIron);
/// let drop = ColdDrop {
///     sleeve_material: iron.clone(),
///     sleeve_inner: Diameter::from_inch(3.88),
///     sleeve_outer: Diameter::from_inch(4.20),
///     sleeve_length: Length::from_mm(220.0),
///     block_material: iron,
///     block_bore: Diameter::from_inch(4.19875),
///     block_outer: Diameter::from_mm(4.19875 * 25.4 + 40.0),
///     bath: Temperature::from_k(77.355),
///     room: Temperature::from_c(20.0),
///     block: Temperature::from_c(20.0),
///     carry: Seconds::from_s(11.8),
///     air: None,
///     lean: 0.0,
///     frost: Length::from_um(0.0),
///     insertion: Seconds::from_s(0.0),
/// };
/// let odds = drop_odds(
///     &drop,
///     Unknowns {
///         u_fit: Length::from_um(2.0),
///         carry_timed: true,
///         frost_most: FROST_MOST,
///         insertion: Seconds::from_s(2.0),
///     },
/// )?;
/// assert!(odds.home_within.as_s() < 11.4);
/// assert_eq!(odds.verdict(Seconds::from_s(2.0)), HomeVerdict::Go);
/// assert_eq!(odds.verdict(Seconds::from_s(12.0)), HomeVerdict::Stop);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn drop_odds(drop: &ColdDrop, unknowns: Unknowns) -> Result<DropOdds, Fault> {
    let mut run = OddsRun::new(drop.clone(), unknowns, DRAWS, 1);
    run.advance(DRAWS)?;
    run.odds()?
        .ok_or_else(|| Fault::new("carry_s", "the band is not drawn to its end: draw it again"))
}
