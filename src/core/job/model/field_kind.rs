//! What a field can be like: what it measures, whom it belongs to, how its
//! places lie, what is plausible. Fields themselves are in [`super::field`].

use crate::job::model::from_deck::FromDeck;
use crate::quantity::parse::Unit;

/// Inch or metric, for everything a person reads and types.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UnitSystem {
    /// Inches, degrees Fahrenheit, psi.
    Inch,
    /// Millimetres, degrees Celsius, bar.
    Metric,
}

impl UnitSystem {
    /// Its name in documents.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Inch => "inch",
            Self::Metric => "mm",
        }
    }

    /// From its name in documents.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        match id {
            "inch" => Some(Self::Inch),
            "mm" => Some(Self::Metric),
            _ => None,
        }
    }
}

/// What a field measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// A length of any kind.
    Length,
    /// The height of a surface's roughness: micrometres in every shop.
    Roughness,
    /// A temperature.
    Temperature,
    /// A gauge pressure.
    Pressure,
    /// A force.
    Force,
    /// A span of time.
    Time,
    /// The volume of a room.
    Volume,
    /// The torque of a bolt.
    Torque,
    /// A plain number.
    Plain,
    /// One of a few words, see `Field::choices`; its value is its index.
    Choice,
    /// Words of the person's own; see `Field::read`.
    Words,
}

impl Measure {
    /// The unit in which it is shown and, unless typed otherwise, read.
    #[must_use]
    pub const fn unit(self, system: UnitSystem) -> Unit {
        match (self, system) {
            (Self::Length, UnitSystem::Inch) => Unit::Inch,
            (Self::Length, UnitSystem::Metric) => Unit::Millimetre,
            (Self::Roughness, _) => Unit::Micrometre,
            (Self::Temperature, UnitSystem::Inch) => Unit::Fahrenheit,
            (Self::Temperature, UnitSystem::Metric) => Unit::Celsius,
            (Self::Pressure, UnitSystem::Inch) => Unit::Psi,
            (Self::Pressure, UnitSystem::Metric) => Unit::Bar,
            (Self::Force, UnitSystem::Inch) => Unit::PoundForce,
            (Self::Force, UnitSystem::Metric) => Unit::Kilonewton,
            (Self::Time, _) => Unit::Second,
            (Self::Volume, UnitSystem::Inch) => Unit::CubicFoot,
            (Self::Volume, UnitSystem::Metric) => Unit::CubicMetre,
            (Self::Torque, UnitSystem::Inch) => Unit::PoundFoot,
            (Self::Torque, UnitSystem::Metric) => Unit::NewtonMetre,
            (Self::Plain | Self::Choice | Self::Words, _) => Unit::Plain,
        }
    }
}

/// What a field belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scope {
    /// The engine profile: geometry, limits, gauges.
    Engine,
    /// The block of this job as a whole.
    Block,
    /// One deck: the block, or one bank of a V.
    Bank,
    /// One cylinder.
    Cylinder,
    /// The cold drop without a job.
    Drop,
}

/// How many places a field has and how they lie.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Places {
    /// One.
    One,
    /// Four clock points, 12, 3, 6 and 9.
    Clocks,
    /// Three levels (under the flange, middle, bottom), two axes each.
    Levels,
    /// Three levels (under the flange, middle, bottom), four clock points each.
    Rounds,
    /// Front and rear.
    Ends,
    /// A list, used from the front: pulls, low spots.
    List(u8),
    /// What is measured from the deck: [`super::from_deck::FromDeck`].
    FromDeck,
    /// The gauges: [`super::field_read::GAUGES_CHECKED`].
    Gauges,
}

/// Gauges with a date of their own.
pub(super) const GAUGES: u8 = 7;

impl Places {
    /// How many.
    #[must_use]
    pub const fn count(self) -> u8 {
        match self {
            Self::One => 1,
            Self::Clocks => 4,
            Self::Levels => 6,
            Self::Rounds => 12,
            Self::Ends => 2,
            Self::List(n) => n,
            Self::FromDeck => FromDeck::ALL.len() as u8,
            Self::Gauges => GAUGES,
        }
    }
}

/// How a number is judged beyond its allowed range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Plausible {
    /// Usual from `lo` to `hi`; further than `far` from its neighbours asks.
    /// Ratios are tried: ten times, inch for mm, radius for diameter.
    Size {
        /// Least usual value, SI.
        lo: f64,
        /// Greatest usual value, SI.
        hi: f64,
        /// Difference from the neighbours that asks, SI.
        far: f64,
    },
    /// About zero, either sign; only the distance from the neighbours asks.
    Offset {
        /// Difference from the neighbours, or from zero, that asks, SI.
        far: f64,
    },
    /// A temperature of shop, block or sleeve, K: usual from `lo` to `hi`; beyond
    /// it the other unit is tried.
    Shop {
        /// Least usual.
        lo: f64,
        /// Greatest usual.
        hi: f64,
    },
    /// Anything in range will do.
    Free,
}

/// What a new engine starts with, as typed text; empty: nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Preset {
    /// In an inch shop.
    pub inch: &'static str,
    /// In a metric shop.
    pub metric: &'static str,
}
