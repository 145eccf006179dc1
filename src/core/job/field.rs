//! Every number a person can type, as data: what it measures, where it
//! belongs, how many places it has, its allowed range (from
//! [`crate::quantity::bounds`]), what is usual, and the default a new engine
//! starts with. The words for it are the page's; a new field is one entry
//! here and its texts.
//!
//! Defaults marked "common practice, no source" or "from memory" are starting
//! points: the engine and sleeve makers' sheets override them.

use crate::quantity::bounds::{self, Bound};
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
    /// A temperature.
    Temperature,
    /// A gauge pressure.
    Pressure,
    /// A span of time.
    Time,
    /// A plain number.
    Plain,
}

impl Measure {
    /// The unit in which it is shown and, unless typed otherwise, read.
    #[must_use]
    pub const fn unit(self, system: UnitSystem) -> Unit {
        match (self, system) {
            (Self::Length, UnitSystem::Inch) => Unit::Inch,
            (Self::Length, UnitSystem::Metric) => Unit::Millimetre,
            (Self::Temperature, UnitSystem::Inch) => Unit::Fahrenheit,
            (Self::Temperature, UnitSystem::Metric) => Unit::Celsius,
            (Self::Pressure, UnitSystem::Inch) => Unit::Psi,
            (Self::Pressure, UnitSystem::Metric) => Unit::Bar,
            (Self::Time, _) => Unit::Second,
            (Self::Plain, _) => Unit::Plain,
        }
    }
}

/// What a field belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scope {
    /// The engine profile: geometry, limits, gauges.
    Engine,
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
    /// A list, used from the front: pulls, low spots.
    List(u8),
}

impl Places {
    /// How many.
    #[must_use]
    pub const fn count(self) -> u8 {
        match self {
            Self::One => 1,
            Self::Clocks => 4,
            Self::Levels => 6,
            Self::List(n) => n,
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

/// No preset.
const NONE: Preset = preset("", "");

const fn preset(inch: &'static str, metric: &'static str) -> Preset {
    Preset { inch, metric }
}

/// A field.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FieldSpec {
    /// Which.
    pub field: Field,
    /// Its name in documents: for ever.
    pub id: &'static str,
    /// What it belongs to.
    pub scope: Scope,
    /// What it measures.
    pub measure: Measure,
    /// Its places.
    pub places: Places,
    /// Its allowed range.
    pub bound: Bound,
    /// What is plausible.
    pub plausible: Plausible,
    /// What a new engine starts with.
    pub preset: Preset,
}

macro_rules! fields {
    ($($(#[$doc:meta])* $name:ident $id:literal $scope:ident $measure:ident $places:expr,
        $bound:expr, $plausible:expr, $preset:expr;)*) => {
        /// A number that can be typed.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Field { $($(#[$doc])* $name,)* }

        /// All fields, in the order of the enum.
        pub const FIELDS: &[FieldSpec] = &[$(FieldSpec {
            field: Field::$name,
            id: $id,
            scope: Scope::$scope,
            measure: Measure::$measure,
            places: $places,
            bound: $bound,
            plausible: $plausible,
            preset: $preset,
        },)*];
    };
}

/// A size in millimetres: usual from, usual to, far from its neighbours.
const fn size(lo_mm: f64, hi_mm: f64, far_mm: f64) -> Plausible {
    Plausible::Size {
        lo: lo_mm / 1e3,
        hi: hi_mm / 1e3,
        far: far_mm / 1e3,
    }
}

/// An offset: millimetres from its neighbours that ask.
const fn offset(far_mm: f64) -> Plausible {
    Plausible::Offset { far: far_mm / 1e3 }
}

const FREE: Plausible = Plausible::Free;
const ONE: Places = Places::One;
const CLOCKS: Places = Places::Clocks;
const LEVELS: Places = Places::Levels;
/// Pulls at most on one sleeve.
pub const PULLS_MOST: u8 = 12;
/// Surveyed points of one deck at most.
pub const SPOTS_MOST: u8 = 12;
const PULLS: Places = Places::List(PULLS_MOST);

// "Usual" spans common practice widened generously: it only asks, never refuses.
fields! {
    /// Nominal outside diameter of the sleeve.
    NominalOd "nominal_od" Engine Length ONE, bounds::DIAMETER, size(60.0, 250.0, 1e6), NONE;
    /// Inside diameter of the sleeve as delivered.
    SleeveId "sleeve_id" Engine Length ONE, bounds::DIAMETER, size(50.0, 245.0, 1e6), NONE;
    /// Length of the sleeve under the flange.
    SleeveLength "sleeve_length" Engine Length ONE, bounds::LENGTH, size(80.0, 600.0, 1e6), NONE;
    /// Nominal flange thickness.
    NominalFlange "nominal_flange" Engine Length ONE, bounds::THICKNESS, size(2.0, 20.0, 1e6), NONE;
    /// Wall of block iron round the bore.
    BlockWall "block_wall" Engine Length ONE, bounds::MEASURED_WALL, size(2.0, 60.0, 1e6), NONE;
    /// Shim under the flange.
    Shim "shim" Engine Length ONE, bounds::REMOVAL, FREE, preset("0", "0");
    /// Least fit wanted. Common practice, no source.
    FitLow "fit_low" Engine Length ONE, bounds::INTERFERENCE, offset(0.2), preset("0.0010", "0.025");
    /// Greatest fit wanted. Common practice, no source.
    FitHigh "fit_high" Engine Length ONE, bounds::INTERFERENCE, offset(0.3), preset("0.0015", "0.038");
    /// Out-of-round under the flange that wants a look. From memory.
    RoundLook "round_look" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// Out-of-round under the flange that stops. From memory.
    RoundStop "round_stop" Engine Length ONE, bounds::SMALL, FREE, preset("0.0015", "0.038");
    /// Out-of-round and taper of the honed bore. From memory.
    BoreForm "bore_form" Engine Length ONE, bounds::SMALL, FREE, preset("0.0005", "0.013");
    /// Least clearance at the bore for the drop. From memory.
    EntryLeast "entry_least" Engine Length ONE, bounds::SMALL, FREE, preset("0.0040", "0.100");
    /// Stand-proud aimed at. Common practice, no source.
    TargetProud "target_proud" Engine Length ONE, bounds::HEIGHT, offset(0.8), preset("0.0100", "0.250");
    /// Deck cut planned. Common practice, no source.
    PlannedCut "planned_cut" Engine Length ONE, bounds::REMOVAL, offset(1.0), preset("0.0050", "0.130");
    /// Cut that leaves a clean surface.
    CleanUp "clean_up" Engine Length ONE, bounds::SMALL, FREE, preset("0.0020", "0.050");
    /// Chance of a low flange that is accepted.
    Risk "risk" Engine Plain ONE, bounds::RISK, FREE, preset("0.01", "0.01");
    /// Gap under the flange still called home. From memory.
    GapLimit "gap_limit" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// Tilt of the flange still called home. From memory.
    TiltLimit "tilt_limit" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// How sure "seated" has to be.
    Confidence "confidence" Engine Plain ONE, bounds::CONFIDENCE, FREE, preset("0.80", "0.80");
    /// Standard uncertainty of the sleeve's OD.
    GaugeSleeve "gauge_sleeve" Engine Length ONE, bounds::SMALL, FREE, preset("0.00005", "0.0015");
    /// Standard uncertainty of the bore's diameter.
    GaugeBore "gauge_bore" Engine Length ONE, bounds::SMALL, FREE, preset("0.00005", "0.0015");
    /// Standard uncertainty of a height above the deck.
    GaugeHeight "gauge_height" Engine Length ONE, bounds::SMALL, FREE, preset("0.0004", "0.010");
    /// Standard uncertainty of a flange thickness.
    GaugeThickness "gauge_thickness" Engine Length ONE, bounds::SMALL, FREE, preset("0.0003", "0.008");
    /// Standard uncertainty of a counterbore depth.
    GaugeDepth "gauge_depth" Engine Length ONE, bounds::SMALL, FREE, preset("0.0005", "0.013");
    /// Scatter of the hand feed of the counterbore cutter.
    FeedSd "feed_sd" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// Temperature of the shop.
    RoomTemperature "room_temperature" Engine Temperature ONE, bounds::ROOM_TEMPERATURE, FREE, preset("68", "20");
    /// Surveyed points of the deck: how far below its highest point.
    LowSpot "low_spot" Bank Length Places::List(SPOTS_MOST), bounds::REMOVAL, offset(0.3), NONE;
    /// Deck cut decided on.
    DeckCut "deck_cut" Bank Length ONE, bounds::REMOVAL, offset(1.0), NONE;
    /// Outside diameter of the sleeve.
    SleeveOd "sleeve_od" Cylinder Length LEVELS, bounds::DIAMETER, size(60.0, 250.0, 0.15), NONE;
    /// Temperature of the sleeve when it was measured.
    SleeveTemperature "sleeve_temperature" Cylinder Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// Thickness of the flange.
    FlangeThickness "flange_thickness" Cylinder Length CLOCKS, bounds::THICKNESS, size(2.0, 20.0, 0.15), NONE;
    /// Depth of the counterbore as cut.
    CounterboreDepth "counterbore_depth" Cylinder Length CLOCKS, bounds::DEPTH, size(0.5, 20.0, 0.5), NONE;
    /// How far the deck at this hole lies below its highest point.
    DeckHere "deck_here" Cylinder Length ONE, bounds::REMOVAL, offset(0.3), NONE;
    /// Honed diameter of the block's bore.
    BoreD "bore_d" Cylinder Length LEVELS, bounds::DIAMETER, size(60.0, 250.0, 0.15), NONE;
    /// Temperature of the block when it was measured.
    BlockTemperature "block_temperature" Cylinder Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// Seconds from the bath to the bore.
    Carry "carry" Cylinder Time ONE, bounds::CARRY, FREE, NONE;
    /// Height of the flange above the deck, warm, before the pulls.
    WarmHeight "warm_height" Cylinder Length CLOCKS, bounds::HEIGHT, offset(1.5), NONE;
    /// Gauge pressure of a pull.
    PullGauge "pull_gauge" Cylinder Pressure PULLS, bounds::GAUGE, FREE, NONE;
    /// Height under load.
    PullLoaded "pull_loaded" Cylinder Length PULLS, bounds::HEIGHT, offset(0.5), NONE;
    /// Height after release.
    PullReleased "pull_released" Cylinder Length PULLS, bounds::HEIGHT, offset(0.5), NONE;
    /// Height of the flange above the deck after the last pull.
    SeatHeight "seat_height" Cylinder Length CLOCKS, bounds::HEIGHT, offset(0.25), NONE;
    /// Cold drop: outside diameter of the sleeve.
    DropOd "drop_od" Drop Length ONE, bounds::DIAMETER, size(60.0, 250.0, 1e6), preset("4.2500", "108.000");
    /// Cold drop: wall of the sleeve.
    DropWall "drop_wall" Drop Length ONE, bounds::MEASURED_WALL, size(1.5, 12.0, 1e6), preset("0.1250", "3.200");
    /// Cold drop: length of the sleeve.
    DropLength "drop_length" Drop Length ONE, bounds::LENGTH, size(80.0, 600.0, 1e6), preset("9.0000", "230.000");
    /// Cold drop: interference.
    DropFit "drop_fit" Drop Length ONE, bounds::INTERFERENCE, offset(0.25), preset("0.0012", "0.030");
    /// Cold drop: wall of the block round the bore.
    DropBlockWall "drop_block_wall" Drop Length ONE, bounds::MEASURED_WALL, size(2.0, 60.0, 1e6), preset("0.3500", "9.000");
    /// Cold drop: seconds from the bath to the bore.
    DropCarry "drop_carry" Drop Time ONE, bounds::CARRY, FREE, preset("8", "8");
    /// Cold drop: temperature of shop and block.
    DropRoom "drop_room" Drop Temperature ONE, bounds::ROOM_TEMPERATURE, FREE, preset("68", "20");
}

impl Field {
    /// Its entry in the table.
    #[must_use]
    pub fn spec(self) -> &'static FieldSpec {
        // The table is written by the same macro as the enum: the index is in
        // range; `first` only spares a panic branch.
        FIELDS.get(self as usize).unwrap_or(&FIELDS[0])
    }

    /// From its name in documents.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        FIELDS.iter().find(|f| f.id == id).map(|f| f.field)
    }

    /// The unit it is read in.
    #[must_use]
    pub fn unit(self, system: UnitSystem) -> Unit {
        self.spec().measure.unit(system)
    }

    /// Whether a minus is written "low" and a plus "proud".
    #[must_use]
    pub const fn stands_proud(self) -> bool {
        matches!(
            self,
            Self::WarmHeight
                | Self::PullLoaded
                | Self::PullReleased
                | Self::SeatHeight
                | Self::TargetProud
        )
    }

    /// Whether it is a length that may be below zero.
    #[must_use]
    pub fn is_signed(self) -> bool {
        let spec = self.spec();
        spec.measure == Measure::Length && spec.bound.lo < 0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::parse::parse;

    #[test]
    fn the_table_is_in_the_order_of_the_enum_and_its_ids_are_unique() {
        for (index, spec) in FIELDS.iter().enumerate() {
            assert_eq!(spec.field as usize, index, "{}", spec.id);
            assert_eq!(Field::from_id(spec.id), Some(spec.field), "{}", spec.id);
        }
    }

    #[test]
    fn every_preset_reads_and_lies_in_its_range() {
        for spec in FIELDS {
            for (text, system) in [
                (spec.preset.inch, UnitSystem::Inch),
                (spec.preset.metric, UnitSystem::Metric),
            ] {
                if text.is_empty() {
                    continue;
                }
                let typed = parse(text, spec.field.unit(system)).map(|t| t.si);
                assert!(
                    typed.is_ok_and(|si| spec.bound.contains(si)),
                    "{} {text}",
                    spec.id
                );
            }
        }
    }
}
