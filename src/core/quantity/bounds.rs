//! One table of allowed ranges. The form, the restore gate, the evaluator and
//! the property tests all read it: a range is changed here and nowhere else.

/// An allowed range of a number in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bound {
    /// Least value.
    pub lo: f64,
    /// Greatest value.
    pub hi: f64,
    /// Whether the least value itself is allowed.
    pub lo_end: End,
    /// Whether the greatest value itself is allowed.
    pub hi_end: End,
    /// Unit of `lo` and `hi`, for messages.
    pub unit: &'static str,
}

/// Whether the end of a range belongs to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// It does.
    In,
    /// It does not.
    Out,
}

impl Bound {
    /// Whether `value` is a number within the range.
    #[must_use]
    pub fn contains(&self, value: f64) -> bool {
        let above = match self.lo_end {
            End::In => self.lo <= value,
            End::Out => self.lo < value,
        };
        let below = match self.hi_end {
            End::In => value <= self.hi,
            End::Out => value < self.hi,
        };
        value.is_finite() && above && below
    }

    /// The range in words: `0 < .. <= 2 m`.
    #[must_use]
    pub fn words(&self) -> String {
        let lo = match self.lo_end {
            End::In => "<=",
            End::Out => "<",
        };
        let hi = match self.hi_end {
            End::In => "<=",
            End::Out => "<",
        };
        let gap = if self.unit.is_empty() { "" } else { " " };
        format!("{} {lo} .. {hi} {}{gap}{}", self.lo, self.hi, self.unit)
    }
}

const fn closed(lo: f64, hi: f64, unit: &'static str) -> Bound {
    Bound {
        lo,
        hi,
        lo_end: End::In,
        hi_end: End::In,
        unit,
    }
}

const fn above(lo: f64, hi: f64, unit: &'static str) -> Bound {
    Bound {
        lo,
        hi,
        lo_end: End::Out,
        hi_end: End::In,
        unit,
    }
}

const fn open(lo: f64, hi: f64, unit: &'static str) -> Bound {
    Bound {
        lo,
        hi,
        lo_end: End::Out,
        hi_end: End::Out,
        unit,
    }
}

/// What is measured from the deck, below or above it.
pub const FROM_DECK: Bound = closed(-0.2, 0.2, "m");
/// Temperatures, within the range of the material tables.
pub const TEMPERATURE: Bound = closed(70.0, 500.0, "K");
/// Temperatures from which a part may be chilled: liquid nitrogen up.
pub const CHILL_START: Bound = closed(77.355, 500.0, "K");
/// Diameters.
pub const DIAMETER: Bound = above(0.0, 2.0, "m");
/// Lengths, pitch and stroke.
pub const LENGTH: Bound = above(0.0, 5.0, "m");
/// Flange thickness.
pub const THICKNESS: Bound = above(0.0, 0.2, "m");
/// Counterbore depth.
pub const DEPTH: Bound = closed(0.0, 0.2, "m");
/// Heights, local deck heights, offsets, changes, targets, stand-proud,
/// protrusion, errors.
pub const HEIGHT: Bound = closed(-0.05, 0.05, "m");
/// Depth of a level of readings below the top.
pub const LEVEL: Bound = closed(-5.0, 5.0, "m");
/// Surveyed low spots of a deck: the highest point is 0.
pub const LOW_SPOT: Bound = closed(-0.05, 0.0, "m");
/// Uncertainties, standard deviations, Rz, clean-up, limits.
pub const SMALL: Bound = closed(0.0, 0.01, "m");
/// Interference and its band.
pub const INTERFERENCE: Bound = closed(-0.005, 0.005, "m");
/// Young's modulus.
pub const YOUNGS: Bound = closed(1e9, 1e12, "Pa");
/// Poisson's ratio.
pub const POISSON: Bound = closed(0.0, 0.499, "");
/// Density.
pub const DENSITY: Bound = closed(100.0, 30_000.0, "kg/m3");
/// Specific heat capacity.
pub const SPECIFIC_HEAT: Bound = closed(10.0, 10_000.0, "J/kg/K");
/// Thermal conductivity of a solid.
pub const CONDUCTIVITY: Bound = closed(0.01, 1000.0, "W/m/K");
/// Coefficient of linear expansion.
pub const EXPANSION: Bound = closed(-1e-5, 1e-4, "1/K");
/// Coefficient of friction.
pub const FRICTION: Bound = closed(0.0, 2.0, "");
/// Smoothing factor of DIN 7190.
pub const SMOOTHING: Bound = closed(0.0, 2.0, "");
/// Contact pressure.
pub const PRESSURE: Bound = above(0.0, 1e9, "Pa");
/// Reading of a hydraulic gauge.
pub const GAUGE: Bound = closed(0.0, 1e9, "Pa");
/// Hardness as a pressure.
pub const HARDNESS: Bound = closed(1e6, 2e10, "Pa");
/// Combined rms roughness.
pub const ROUGHNESS: Bound = above(0.0, 1e-4, "m");
/// Combined mean absolute asperity slope.
pub const SLOPE: Bound = above(0.0, 1.0, "");
/// Conductivity of the gas in a joint.
pub const GAS_CONDUCTIVITY: Bound = above(0.0, 1.0, "W/m/K");
/// Temperature-jump distance.
pub const JUMP: Bound = closed(0.0, 1e-4, "m");
/// Time from bath to bore.
pub const CARRY: Bound = closed(0.0, 3600.0, "s");
/// Time a shop needs from a sleeve's entering to its being home.
pub const HOME_NEEDED: Bound = closed(0.5, 120.0, "s");
/// Heat-transfer coefficient to air.
pub const AIR: Bound = closed(0.0, 1e4, "W/m2/K");
/// Heat-transfer coefficient of something a part soaks in.
pub const SOAK: Bound = above(0.0, 1e4, "W/m2/K");
/// Lean of the sleeve in the bore: 0 concentric, 1 touching all along.
pub const ECCENTRICITY: Bound = closed(0.0, 1.0, "");
/// Frost on a sleeve as it enters.
pub const FROST: Bound = closed(0.0, 1e-4, "m");
/// Time from the lower end's entry to home.
pub const INSERTION: Bound = closed(0.0, 60.0, "s");
/// A chance to be chosen.
pub const RISK: Bound = open(0.0, 1.0, "");
/// Confidence of a seat verdict.
pub const CONFIDENCE: Bound = open(0.5, 1.0, "");
/// Mean gap of a sleeve among those of its deck.
pub const DECK_GAP: Bound = closed(-0.01, 0.01, "m");
/// Gauge error of a gap: that of each hole, and that of the whole deck.
pub const DECK_GAUGE: Bound = above(0.0, 0.001, "m");
/// Chance that a sleeve is home, before measuring.
pub const PRIOR_HOME: Bound = Bound {
    lo: 0.5,
    hi: 1.0,
    lo_end: End::In,
    hi_end: End::Out,
    unit: "",
};
/// Mean height of what holds a sleeve up.
pub const GAP_SCALE: Bound = closed(1e-6, 0.01, "m");
/// Chance of one cause under all flanges, before measuring.
pub const PRIOR_ALIKE: Bound = closed(0.0, 0.5, "");
/// Volume of a room.
pub const ROOM: Bound = above(0.0, 1e6, "m3");
/// Temperature of a room with people in it.
pub const ROOM_TEMPERATURE: Bound = closed(250.0, 330.0, "K");
/// Liquid nitrogen.
pub const LITRES: Bound = closed(0.0, 1e5, "l");
/// Air changes of a room.
pub const AIR_CHANGES: Bound = closed(0.0, 1000.0, "1/h");
/// How near two temperatures are to come.
pub const WITHIN: Bound = above(0.0, 100.0, "K");
/// Time over which nitrogen is released.
pub const RELEASE: Bound = above(0.0, 1e6, "s");
/// Compression ratio.
pub const COMPRESSION_RATIO: Bound = above(1.0, 100.0, "");
/// Revolutions or cycles.
pub const RATE: Bound = above(0.0, 1000.0, "1/s");
/// Included angle of a cross-hatch.
pub const INCLUDED_ANGLE: Bound = open(0.0, core::f64::consts::PI, "rad");
/// Removal, planned cut, ring height, shim.
pub const REMOVAL: Bound = closed(0.0, 0.05, "m");
/// Wall measured by ultrasonic gauge.
pub const MEASURED_WALL: Bound = above(0.0, 1.0, "m");
/// Effective area of a ram.
pub const RAM_AREA: Bound = above(0.0, 1.0, "m2");
/// Clamp load on a flange.
pub const CLAMP: Bound = closed(0.0, 1e6, "N");
/// Block going on below the sleeve.
pub const BELOW: Bound = closed(0.0, 1.0, "m");
/// Walls and plates of a water jacket.
pub const JACKET: Bound = above(0.0, 1.0, "m");
/// Torque of a bolt that holds a sleeve down.
pub const TORQUE: Bound = above(0.0, 5000.0, "N m");
/// A shim at hand: it has a thickness.
pub const SHIM: Bound = above(0.0, 0.05, "m");
/// Ring gap.
pub const RING_GAP: Bound = closed(0.0, 0.01, "m");

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ends_belong_or_do_not() {
        assert!(!DIAMETER.contains(0.0));
        assert!(DIAMETER.contains(2.0));
        assert!(TEMPERATURE.contains(70.0));
        assert!(!RISK.contains(1.0));
        assert!(!TEMPERATURE.contains(f64::NAN));
    }

    #[test]
    fn words_name_both_ends_and_the_unit() {
        assert_eq!(DIAMETER.words(), "0 < .. <= 2 m");
        assert_eq!(POISSON.words(), "0 <= .. <= 0.499");
    }
}
