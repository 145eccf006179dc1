//! What a cold drop is asked with, and the equations made from it.

use super::air::AirSide;
use super::drop_model::{Block, CAPACITY, DropModel, Phase};
use super::drop_run::Resolution;
use super::soak::SOLID;
use super::wall::Wall;
use crate::materials::Material;
use crate::numerics::roots::{self, NoRoot};
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Conductance, Diameter, DiametralClearance, Length, Seconds, Temperature};

/// A drop to be computed. Diameters and lengths at 293.15 K.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdDrop {
    /// What the sleeve is made of.
    pub sleeve_material: Material,
    /// Inside diameter of the sleeve; 0: solid.
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
    /// Lean: 0 concentric to 1 touching along its whole length.
    pub lean: f64,
    /// Frost on the sleeve's outside as it enters.
    pub frost: Length,
    /// From the lower end's entry to home.
    pub insertion: Seconds,
}

impl ColdDrop {
    pub(super) fn check(&self) -> Result<(), Fault> {
        if !self.is_solid() {
            bounds::DIAMETER.check("sleeve.inner_d_m", self.sleeve_inner.as_m())?;
        }
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
        bounds::ECCENTRICITY.check("offset", self.lean)?;
        bounds::FROST.check("frost_m", self.frost.as_m())?;
        bounds::INSERTION.check("insert_s", self.insertion.as_s())?;
        self.sleeve_inner
            .check_inside("sleeve.inner_d_m", self.sleeve_outer)?;
        self.block_bore
            .check_inside("block.bore_d_m", self.block_outer)
    }

    /// The equations, in the air.
    pub(super) fn model(&self, resolution: &Resolution) -> Result<DropModel, Fault> {
        // What the solver has room for, whatever is asked.
        let wall_m = self.sleeve_outer.radius().as_m() - self.sleeve_inner.radius().as_m();
        let conducts = self.sleeve_material.conductivity_w_mk(self.room);
        let mut cells = sleeve_cells(wall_m, conducts, resolution.sleeve_cells);
        if self.is_solid() {
            cells = cells.max((SOLID_CELLS * resolution.sleeve_cells as f64) as usize);
        }
        let sleeve_cells = cells.clamp(1, CAPACITY / 2 - 2);
        let sleeve = Wall::new(
            &self.sleeve_material,
            self.heat_inner(),
            self.sleeve_outer,
            sleeve_cells,
            if self.is_solid() { TOWARD_OUTSIDE } else { 1.0 },
        );
        let thick = self.block_outer.radius().as_m() - self.block_bore.radius().as_m();
        // Finer at the bore of a pin, and not coarser farther out.
        let usual = if self.is_solid() {
            resolution.block_cells * 3 / 2
        } else {
            resolution.block_cells
        };
        let cells = block_cells(thick, usual).clamp(2, CAPACITY - 2 - sleeve_cells);
        let block = Wall::new(
            &self.block_material,
            self.block_bore,
            self.block_outer,
            cells,
            growth(thick, cells, self.first_m()).map_err(|none| none.at("block.outer_d_m"))?,
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
        Ok(DropModel {
            sleeve,
            block: Block::Ring(block),
            bore_d_m: self.block_bore.as_m(),
            air,
            phase: Phase::Carry,
            scale_m: 1.0,
        })
    }

    /// Whether the part has no bore.
    fn is_solid(&self) -> bool {
        self.sleeve_inner.as_m() <= 0.0 && self.sleeve_inner.as_m() >= 0.0
    }

    /// The first cell of ten round the bore: a millimetre; round a pin, whose first
    /// second counts, a tenth of its radius.
    fn first_m(&self) -> f64 {
        if self.is_solid() {
            (0.1 * self.sleeve_outer.radius().as_m()).min(0.001)
        } else {
            0.001
        }
    }

    /// The inside for the heat flow: of a solid part a pinhole, whose face is
    /// nothing beside its outside.
    fn heat_inner(&self) -> Diameter {
        if self.is_solid() {
            Diameter::from_m(SOLID * self.sleeve_outer.as_m())
        } else {
            self.sleeve_inner
        }
    }

    /// Whether the ring is the same all round.
    pub(super) fn is_even(&self) -> bool {
        self.lean <= 0.0 && self.frost.as_m() <= 0.0
    }

    /// The bore held at the block's temperature.
    pub(super) fn held(&self) -> Block {
        Block::Held {
            bore_k: self.block.as_k(),
            strain: self.block_material.strain(self.block),
        }
    }

    /// How far the flange may climb from a mean e(T) of the sleeve on: what it
    /// still grows, and what the block shrinks back from its own temperature.
    pub(super) fn climb_from(&self, strain: f64) -> Length {
        let sleeve = self.sleeve_material.strain(self.room) - strain;
        let block = self.block_material.strain(self.room) - self.block_material.strain(self.block);
        Length::from_m(self.sleeve_length.as_m() * (sleeve - block))
    }

    /// What lies outside the sizes that the answer is checked for.
    pub(super) fn outside_sizes(&self) -> Option<Finding> {
        let within = |value: f64, range: [f64; 2]| value >= range[0] && value <= range[1];
        let wall = self.sleeve_outer.radius().as_m() - self.sleeve_inner.radius().as_m();
        let ring = self.block_outer.radius().as_m() - self.block_bore.radius().as_m();
        let mut out = Vec::new();
        let outer_m = self.sleeve_outer.as_m();
        if self.is_solid() {
            if !within(outer_m, SIZES.solid_m) {
                out.push("the pin's outside (5 to 66 mm)");
            }
        } else {
            if !within(outer_m, SIZES.outer_m) {
                out.push("the part's outside (30 to 150 mm)");
            }
            if !within(wall, SIZES.wall_m) {
                out.push("its wall (1.5 to 8 mm)");
            }
        }
        if !within(ring, SIZES.ring_m) {
            out.push("the wall round the bore (4 to 60 mm)");
        }
        (!out.is_empty()).then(|| {
            Finding::look(
                Code::OutsideSizes,
                format!(
                    "outside what these seconds are checked for: {}. Take them for a rough guide \
                     only, and try a spare part first",
                    out.join(", ")
                ),
            )
        })
    }

    /// Clearance between the parts at uniform temperatures.
    pub(super) fn clearance_at(&self, sleeve: Temperature) -> DiametralClearance {
        let bore = self.block_bore.as_m() * (1.0 + self.block_material.strain(self.block));
        let outer = self.sleeve_outer.as_m() * (1.0 + self.sleeve_material.strain(sleeve));
        DiametralClearance::from_m(bore - outer)
    }
}

/// Each cell of a solid part over the one inside it: what goes on in its first
/// second goes on near its outside.
const TOWARD_OUTSIDE: f64 = 0.85;
/// Cells of a solid part over those of a wall.
const SOLID_CELLS: f64 = 4.0;

/// More cells in a wall beyond those of the trade, as many as it is thicker or
/// conducts worse than ductile iron: a seat of cobalt alloy gripped 1.4 % late
/// on four.
fn sleeve_cells(wall_m: f64, conducts: f64, usual: usize) -> usize {
    let thicker = (wall_m / SIZES.wall_m[1]).clamp(1.0, 4.0);
    let slower = (30.0 / conducts).clamp(1.0, 2.0);
    (usual as f64 * (thicker * slower).min(4.0)).round() as usize
}

/// Sizes that the answer is checked for (`tests/crosscheck`): rings of 30 to 150 mm,
/// walls of 1.5 to 8 mm, pins of 5 to 66 mm, rings of block of 4 to 60 mm (job.md's
/// sleeves are 90 to 140 and 2.3 to 6.4).
struct Sizes {
    outer_m: [f64; 2],
    solid_m: [f64; 2],
    wall_m: [f64; 2],
    ring_m: [f64; 2],
}

const SIZES: Sizes = Sizes {
    outer_m: [0.03, 0.15],
    solid_m: [0.005, 0.066],
    wall_m: [0.0015, 0.008],
    ring_m: [0.004, 0.06],
};

/// More cells in a thicker block: half as many again each time it doubles
/// beyond 20 mm, at most twice as many.
fn block_cells(thick_m: f64, usual: usize) -> usize {
    let more = (thick_m / 0.020).max(1.0).log2() * 0.25;
    (usual as f64 * (1.0 + more.min(1.0))) as usize
}

/// Growth of the cells outward so that the first is `first_m` of the usual ten
/// cells, finer with more.
fn growth(thick_m: f64, cells: usize, first_m: f64) -> Result<f64, NoRoot> {
    let first = 10.0 * first_m / cells.max(1) as f64;
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
