//! What a profile refuses: dimensions out of range, contradicting each other,
//! or too thin to be meshed. The fault names the inner dimension.

use super::mesh::Fineness;
use super::{BoreProfileInput, Jacket};
use crate::quantity::bounds;
use crate::quantity::report::Fault;

impl BoreProfileInput {
    /// That it can be solved on each of the meshes.
    pub(super) fn check(&self, meshes: &[Fineness]) -> Result<(), Fault> {
        self.check_dimensions()?;
        let top = self.length.as_m() + self.flange.map_or(0.0, |f| f.thickness.as_m());
        self.check_running(top)?;
        for (i, depth) in self.depths.iter().enumerate() {
            let z = depth.as_m();
            // Room for the rounding of a sum of two lengths.
            if !(0.0..=top * (1.0 + 1e-12)).contains(&z) {
                return Err(Fault::new(
                    format!("z_m[{i}]"),
                    format!("{z} m is outside the sleeve: 0 to {top} m below its top"),
                ));
            }
        }
        self.check_size(meshes)
    }

    /// The dimensions and loads, each by itself and beside the others.
    pub(super) fn check_dimensions(&self) -> Result<(), Fault> {
        bounds::DIAMETER.check("sleeve.inner_d_m", self.sleeve_inner.as_m())?;
        bounds::DIAMETER.check("sleeve.outer_d_m", self.sleeve_outer.as_m())?;
        bounds::LENGTH.check("sleeve.length_m", self.length.as_m())?;
        bounds::YOUNGS.check("sleeve.youngs_pa", self.sleeve.youngs.as_pa())?;
        bounds::POISSON.check("sleeve.poisson", self.sleeve.poisson)?;
        bounds::DIAMETER.check("block.outer_d_m", self.block_outer.as_m())?;
        bounds::YOUNGS.check("block.youngs_pa", self.block.youngs.as_pa())?;
        bounds::POISSON.check("block.poisson", self.block.poisson)?;
        bounds::BELOW.check("block.below_m", self.below.as_m())?;
        bounds::INTERFERENCE.check("interference_m", self.interference.as_m())?;
        bounds::GAUGE.check("gas_pa", self.gas.as_pa())?;
        let clamp = bounds::CLAMP.check("clamp_n", self.clamp.as_n())?;
        self.sleeve_inner
            .check_inside("sleeve.inner_d_m", self.sleeve_outer)?;
        self.sleeve_outer
            .check_inside("sleeve.outer_d_m", self.block_outer)?;
        let mut top = self.length.as_m();
        if let Some(flange) = self.flange {
            bounds::DIAMETER.check("sleeve.flange_outer_d_m", flange.outer.as_m())?;
            top += bounds::THICKNESS.check("sleeve.flange_thickness_m", flange.thickness.as_m())?;
            self.sleeve_outer
                .check_inside("sleeve.outer_d_m", flange.outer)?;
            flange
                .outer
                .check_inside("sleeve.flange_outer_d_m", self.block_outer)?;
        } else if clamp > 0.0 {
            return Err(Fault::new(
                "clamp_n",
                format!("{clamp} N on a sleeve without a flange: give the flange, or no clamp"),
            ));
        }
        if let Some(jacket) = self.jacket {
            self.check_jacket(&jacket, top + self.below.as_m())?;
        }
        self.check_slender()
    }

    fn check_running(&self, top: f64) -> Result<(), Fault> {
        if let Some(depth) = self.gas_depth {
            let depth = depth.as_m();
            if !(0.0..=top).contains(&depth) {
                return Err(Fault::new(
                    "gas_depth_m",
                    format!("{depth} m is outside the sleeve: 0 to {top} m below its top"),
                ));
            }
        }
        if let Some(heat) = &self.heat {
            for (field, t) in [
                ("temperatures.sleeve_inner_k", heat.sleeve[0]),
                ("temperatures.sleeve_outer_k", heat.sleeve[1]),
                ("temperatures.block_inner_k", heat.block[0]),
                ("temperatures.block_outer_k", heat.block[1]),
            ] {
                bounds::TEMPERATURE.check(field, t.as_k())?;
            }
        }
        Ok(())
    }

    fn check_jacket(&self, jacket: &Jacket, height: f64) -> Result<(), Fault> {
        let wall = bounds::JACKET.check("block.jacket.wall_m", jacket.wall.as_m())?;
        let deck = bounds::JACKET.check("block.jacket.deck_m", jacket.deck.as_m())?;
        let bottom = bounds::JACKET.check("block.jacket.bottom_m", jacket.bottom.as_m())?;
        let outside = self.sleeve_outer.radius().as_m() + wall;
        if outside >= self.block_outer.radius().as_m() {
            return Err(Fault::new(
                "block.jacket.wall_m",
                format!(
                    "a parent wall of {wall} m reaches the outside of the block: make it thinner"
                ),
            ));
        }
        if deck + bottom >= height {
            return Err(Fault::new(
                "block.jacket.deck_m",
                format!(
                    "deck plate and bottom plate, {deck} + {bottom} m, fill the block's height of \
                     {height} m: leave room for the jacket"
                ),
            ));
        }
        match self.flange {
            Some(f) if f.thickness.as_m() >= deck && f.outer.radius().as_m() > outside => {
                Err(Fault::new(
                    "block.jacket.deck_m",
                    format!(
                        "a deck plate of {deck} m is no thicker than the flange, whose ledge would \
                         stand over the jacket: check deck plate and parent wall"
                    ),
                ))
            }
            _ => Ok(()),
        }
    }

    /// Walls and steps too thin to be meshed.
    fn check_slender(&self) -> Result<(), Fault> {
        const THINNEST_M: f64 = 1e-5;
        let (a, b) = (
            self.sleeve_inner.radius().as_m(),
            self.sleeve_outer.radius().as_m(),
        );
        let c = self.block_outer.radius().as_m();
        let thin = |field: &str, value: f64| {
            Err(Fault::new(
                field,
                format!("{value} m of metal is too thin to be meshed: at least {THINNEST_M} m"),
            ))
        };
        if b - a < THINNEST_M {
            return thin("sleeve.inner_d_m", b - a);
        }
        if c - b < THINNEST_M {
            return thin("sleeve.outer_d_m", c - b);
        }
        if self.length.as_m() < THINNEST_M {
            return thin("sleeve.length_m", self.length.as_m());
        }
        if let Some(f) = self.flange {
            let r = f.outer.radius().as_m();
            if r - b < THINNEST_M {
                return thin("sleeve.flange_outer_d_m", r - b);
            }
            if c - r < THINNEST_M {
                return thin("sleeve.flange_outer_d_m", c - r);
            }
            if f.thickness.as_m() < THINNEST_M {
                return thin("sleeve.flange_thickness_m", f.thickness.as_m());
            }
        }
        Ok(())
    }
}
