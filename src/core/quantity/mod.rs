//! Quantities of the trade as types: a diameter is not a radius, a
//! temperature is not a temperature difference, an interference is not a
//! clearance. Each holds one `f64` in the coherent SI unit; [`parse`] and
//! [`mod@format`] are the only places where units convert from and to text.
//!
//! Constructors do not check: a quantity may be any real number. Ranges are
//! declared once in [`bounds`] and checked where a value comes in.
//!
//! Source of the factors: the international yard and pound agreement
//! (1 in = 25.4 mm, 1 lb = 0.45359237 kg) and standard gravity 9.80665 m/s2,
//! all exact (NIST SP 811, appendix B).

pub mod about;
pub mod bounds;
pub mod burst;
pub mod code;
pub mod format;
pub mod parse;
#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod parse_tests;
pub mod report;
pub mod ties;
pub mod wire;
#[cfg(test)]
mod wire_tests;

/// Metres in one inch (exact).
pub const INCH_M: f64 = 0.0254;
/// Newtons in one pound-force (exact).
pub const LBF_N: f64 = 4.448_221_615_260_5;
/// Pascals in one pound-force per square inch.
pub const PSI_PA: f64 = LBF_N / (INCH_M * INCH_M);
/// Kelvin at 0 degrees Celsius (exact).
pub const ZERO_CELSIUS_K: f64 = 273.15;
/// The reference temperature of every length (ISO 1:2016): 20 C.
pub const REFERENCE_K: f64 = 293.15;

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $from:ident, $as:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("From a number of ", $unit, ".")]
            #[must_use]
            pub const fn $from(value: f64) -> Self {
                Self(value)
            }
            #[doc = concat!("As a number of ", $unit, ".")]
            #[must_use]
            pub const fn $as(self) -> f64 {
                self.0
            }
        }
    };
}

macro_rules! lengthlike {
    ($name:ident) => {
        impl $name {
            /// From millimetres.
            #[must_use]
            pub const fn from_mm(mm: f64) -> Self {
                Self(mm * 1e-3)
            }
            /// As millimetres.
            #[must_use]
            pub const fn as_mm(self) -> f64 {
                self.0 * 1e3
            }
            /// From inches.
            #[must_use]
            pub const fn from_inch(inch: f64) -> Self {
                Self(inch * INCH_M)
            }
            /// As inches.
            #[must_use]
            pub const fn as_inch(self) -> f64 {
                self.0 / INCH_M
            }
            /// From thousandths of an inch (thou).
            #[must_use]
            pub const fn from_thou(thou: f64) -> Self {
                Self(thou * INCH_M / 1000.0)
            }
            /// As thousandths of an inch (thou).
            #[must_use]
            pub const fn as_thou(self) -> f64 {
                self.0 / INCH_M * 1000.0
            }
            /// From micrometres.
            #[must_use]
            pub const fn from_um(um: f64) -> Self {
                Self(um * 1e-6)
            }
            /// As micrometres.
            #[must_use]
            pub const fn as_um(self) -> f64 {
                self.0 * 1e6
            }
        }
    };
}

quantity!(
    /// A length, height, depth or thickness; positive up (proud) where it is
    /// a height above the deck, positive down where it is a depth.
    Length, from_m, as_m, "metres"
);
lengthlike!(Length);
quantity!(
    /// A diameter: across, never half across.
    Diameter, from_m, as_m, "metres"
);
lengthlike!(Diameter);
quantity!(
    /// A radius: half a diameter.
    Radius, from_m, as_m, "metres"
);
lengthlike!(Radius);
quantity!(
    /// Sleeve diameter less bore diameter: positive is a press fit.
    DiametralInterference, from_m, as_m, "metres on diameter"
);
lengthlike!(DiametralInterference);
quantity!(
    /// Bore diameter less sleeve diameter: positive is free.
    DiametralClearance, from_m, as_m, "metres on diameter"
);
lengthlike!(DiametralClearance);
quantity!(
    /// A temperature: a point on the absolute scale.
    Temperature, from_k, as_k, "kelvin"
);
quantity!(
    /// A difference of two temperatures.
    TemperatureDelta, from_k, as_k, "kelvin"
);
quantity!(
    /// A pressure or a stress; tension positive where it is a stress.
    Pressure, from_pa, as_pa, "pascals"
);
quantity!(
    /// A force.
    Force, from_n, as_n, "newtons"
);
quantity!(
    /// A span of time.
    Seconds, from_s, as_s, "seconds"
);
quantity!(
    /// An area.
    Area, from_m2, as_m2, "square metres"
);
quantity!(
    /// A volume of a room, a cylinder, a gas.
    Volume, from_m3, as_m3, "cubic metres"
);
quantity!(
    /// A heat-transfer or joint conductance.
    Conductance, from_w_m2k, as_w_m2k, "watts per square metre and kelvin"
);

impl Diameter {
    /// That this diameter lies inside `outer`.
    ///
    /// # Errors
    /// A fault at `field`, the inner of the two.
    pub fn check_inside(self, field: &str, outer: Self) -> Result<(), report::Fault> {
        if self.0 < outer.0 {
            return Ok(());
        }
        Err(report::Fault::new(
            field,
            format!(
                "{} m is not below the outside, {} m: check for a swapped pair, and for a \
                 radius among diameters",
                self.0, outer.0
            ),
        ))
    }

    /// Half of it.
    #[must_use]
    pub const fn radius(self) -> Radius {
        Radius(self.0 / 2.0)
    }
}

impl Radius {
    /// Twice it.
    #[must_use]
    pub const fn diameter(self) -> Diameter {
        Diameter(self.0 * 2.0)
    }
}

impl DiametralInterference {
    /// The same fit as a clearance: the sign turns.
    #[must_use]
    pub const fn as_clearance(self) -> DiametralClearance {
        DiametralClearance(-self.0)
    }
}

impl Temperature {
    /// 20 C, the reference temperature of ISO 1.
    pub const REFERENCE: Self = Self(REFERENCE_K);

    /// From degrees Celsius.
    #[must_use]
    pub const fn from_c(celsius: f64) -> Self {
        Self(celsius + ZERO_CELSIUS_K)
    }
    /// As degrees Celsius.
    #[must_use]
    pub const fn as_c(self) -> f64 {
        self.0 - ZERO_CELSIUS_K
    }
    /// From degrees Fahrenheit.
    #[must_use]
    pub const fn from_f(fahrenheit: f64) -> Self {
        Self((fahrenheit + 459.67) / 1.8)
    }
    /// As degrees Fahrenheit.
    #[must_use]
    pub const fn as_f(self) -> f64 {
        self.0 * 1.8 - 459.67
    }
}

impl core::ops::Sub for Temperature {
    type Output = TemperatureDelta;
    fn sub(self, other: Self) -> TemperatureDelta {
        TemperatureDelta(self.0 - other.0)
    }
}

impl core::ops::Add<TemperatureDelta> for Temperature {
    type Output = Self;
    fn add(self, delta: TemperatureDelta) -> Self {
        Self(self.0 + delta.0)
    }
}

impl Pressure {
    /// From pounds-force per square inch.
    #[must_use]
    pub const fn from_psi(psi: f64) -> Self {
        Self(psi * PSI_PA)
    }
    /// As pounds-force per square inch.
    #[must_use]
    pub const fn as_psi(self) -> f64 {
        self.0 / PSI_PA
    }
}

impl Force {
    /// From pounds-force.
    #[must_use]
    pub const fn from_lbf(lbf: f64) -> Self {
        Self(lbf * LBF_N)
    }
    /// As pounds-force.
    #[must_use]
    pub const fn as_lbf(self) -> f64 {
        self.0 / LBF_N
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // NIST SP 811 (2008), appendix B.8: 1 psi = 6.894757 kPa, 1 lbf = 4.448222 N;
    // 68 F = 20 C = 293.15 K.
    #[test]
    fn factors_agree_with_nist_sp_811() {
        assert!((Pressure::from_psi(1.0).as_pa() - 6894.757).abs() < 5e-4);
        assert!((Force::from_lbf(1.0).as_n() - 4.448_222).abs() < 5e-7);
        assert!((Temperature::from_f(68.0).as_k() - REFERENCE_K).abs() < 1e-12);
        assert!((Length::from_thou(1.0).as_um() - 25.4).abs() < 1e-12);
    }

    #[test]
    fn diameter_and_radius_are_a_factor_two_apart() {
        assert_eq!(Diameter::from_mm(108.0).radius(), Radius::from_mm(54.0));
        assert_eq!(Radius::from_mm(54.0).diameter(), Diameter::from_mm(108.0));
    }
}
