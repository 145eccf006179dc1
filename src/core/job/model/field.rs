//! Every number a person can type, and the few words, as data: what it measures, where it
//! belongs, how many places it has, its allowed range (from
//! [`crate::quantity::bounds`]), what is usual, and the default a new engine
//! starts with. The words for it are the page's; a new field is one entry
//! here and its texts.
//!
//! Defaults marked "common practice, no source" or "from memory" are starting
//! points: the engine and sleeve makers' sheets override them.

pub use crate::job::model::field_kind::{Measure, Places, Plausible, Preset, Scope, UnitSystem};
pub use crate::job::model::field_usual::{PULLS_MOST, SPOTS_MOST};

use crate::job::model::field_usual::*;
use crate::job::model::part::{COLDS, HEATS, HELD_DOWN, INKED, PARTS, SLEEVE_ENDS, SLEEVE_KINDS};
use crate::quantity::bounds::{self, Bound};

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
    FitLow "fit_low" Engine Length ONE, bounds::INTERFERENCE, offset(0.2), NONE;
    /// Greatest fit wanted. Common practice, no source.
    FitHigh "fit_high" Engine Length ONE, bounds::INTERFERENCE, offset(0.3), NONE;
    /// Out-of-round under the flange that wants a look. From memory.
    RoundLook "round_look" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// Out-of-round under the flange that stops. From memory.
    RoundStop "round_stop" Engine Length ONE, bounds::SMALL, FREE, preset("0.0015", "0.038");
    /// Out-of-round and taper of the honed bore. From memory.
    BoreForm "bore_form" Engine Length ONE, bounds::SMALL, FREE, preset("0.0005", "0.013");
    /// Least clearance at the bore for the drop. From memory.
    EntryLeast "entry_least" Engine Length ONE, bounds::SMALL, FREE, preset("0.0040", "0.100");
    /// Stand-proud aimed at. Common practice, no source.
    TargetProud "target_proud" Engine Length ONE, bounds::HEIGHT, offset(0.8), NONE;
    /// Deck cut planned. Common practice, no source.
    PlannedCut "planned_cut" Engine Length ONE, bounds::REMOVAL, offset(1.0), NONE;
    /// Cut that leaves a clean surface.
    CleanUp "clean_up" Engine Length ONE, bounds::SMALL, offset(0.3), NONE;
    /// Chance of a low flange that is accepted.
    Risk "risk" Engine Plain ONE, bounds::RISK, FREE, preset("0.01", "0.01");
    /// Gap under the flange still called home. From memory.
    GapLimit "gap_limit" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// Tilt of the flange still called home. From memory.
    TiltLimit "tilt_limit" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// How sure "seated" has to be, of each sleeve and of a deck.
    Confidence "confidence" Engine Plain ONE, bounds::CONFIDENCE, FREE, preset("0.95", "0.95");
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
    RoomTemperature "room_temperature" Engine Temperature ONE, bounds::ROOM_TEMPERATURE, SHOP, preset("68", "20");
    /// Surveyed points of the deck, left and right of each row across it, front
    /// to rear: how far below its highest point.
    LowSpot "low_spot" Bank Length Places::List(SPOTS_MOST), bounds::REMOVAL, offset(0.3), NONE;
    /// Deck cut decided on.
    DeckCut "deck_cut" Bank Length ONE, bounds::REMOVAL, offset(0.25), NONE;
    /// Outside diameter of the sleeve.
    SleeveOd "sleeve_od" Cylinder Length LEVELS, bounds::DIAMETER, size(60.0, 250.0, 0.15), NONE;
    /// Temperature of the sleeve when it was measured.
    SleeveTemperature "sleeve_temperature" Cylinder Temperature ONE, bounds::TEMPERATURE, SHOP, NONE;
    /// Thickness of the flange.
    FlangeThickness "flange_thickness" Cylinder Length CLOCKS, bounds::THICKNESS, size(2.0, 20.0, 0.15), NONE;
    /// Depth of the counterbore as cut.
    CounterboreDepth "counterbore_depth" Cylinder Length CLOCKS, bounds::DEPTH, size(0.5, 20.0, 0.5), NONE;
    /// How far the deck at this hole lies below its highest point.
    DeckHere "deck_here" Cylinder Length ONE, bounds::REMOVAL, offset(0.3), NONE;
    /// Honed diameter of the block's bore.
    BoreD "bore_d" Cylinder Length LEVELS, bounds::DIAMETER, size(60.0, 250.0, 0.15), NONE;
    /// Temperature of the block when it was measured.
    BlockTemperature "block_temperature" Cylinder Temperature ONE, bounds::TEMPERATURE, SHOP, NONE;
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
    /// Distance of neighbouring bores.
    Pitch "pitch" Engine Length ONE, bounds::LENGTH, size(70.0, 350.0, 1e6), NONE;
    /// Outside diameter of the flange.
    FlangeOd "flange_od" Engine Length ONE, bounds::DIAMETER, size(62.0, 270.0, 1e6), NONE;
    /// Finished bore.
    FinalBore "final_bore" Engine Length ONE, bounds::DIAMETER, size(50.0, 245.0, 1e6), NONE;
    /// From the deck to the next lower step of the bore.
    StepBelow "step_below" Engine Length ONE, bounds::LENGTH, size(80.0, 620.0, 1e6), NONE;
    /// Diameter of the spindle that the cutter is set from.
    Spindle "spindle" Engine Length ONE, bounds::DIAMETER, FREE, NONE;
    /// Compressed thickness of the head gasket.
    Gasket "gasket" Engine Length ONE, bounds::THICKNESS, FREE, NONE;
    /// Least room between piston and head: the engine maker's sheet.
    HeadLeast "head_least" Engine Length ONE, bounds::SMALL, FREE, NONE;
    /// Height of the fire ring: the sheet.
    RingHeight "ring_height" Engine Length ONE, bounds::REMOVAL, FREE, NONE;
    /// How far the fire ring stands proud: the sheet.
    RingProud "ring_proud" Engine Length ONE, bounds::HEIGHT, offset(1.0), NONE;
    /// Least ring gap: the sheet.
    RingGapLow "ring_gap_low" Engine Length ONE, bounds::RING_GAP, FREE, NONE;
    /// Greatest ring gap: the sheet.
    RingGapHigh "ring_gap_high" Engine Length ONE, bounds::RING_GAP, FREE, NONE;
    /// Block and sleeves apart at most, in the job's degrees. From memory.
    ApartMost "apart_most" Engine Plain ONE, APART, FREE, preset("5", "3");
    /// Pressure lost in the test at most, as a share. From memory.
    TestLoss "test_loss" Engine Plain ONE, bounds::RISK, FREE, preset("0.05", "0.05");
    /// Deck heights at both ends apart at most. From memory.
    DatumTilt "datum_tilt" Engine Length ONE, bounds::SMALL, FREE, preset("0.0020", "0.050");
    /// Wall left that is calm. From memory.
    WallCalm "wall_calm" Engine Length ONE, bounds::THICKNESS, FREE, preset("0.1250", "3.200");
    /// Wall left that stops. From memory.
    WallLook "wall_look" Engine Length ONE, bounds::THICKNESS, FREE, preset("0.0800", "2.000");
    /// Web left that is calm. From memory.
    WebCalm "web_calm" Engine Length ONE, bounds::THICKNESS, FREE, preset("0.1500", "3.800");
    /// Web left that stops. From memory.
    WebLook "web_look" Engine Length ONE, bounds::THICKNESS, FREE, preset("0.0800", "2.000");
    /// Clearance to a lower step at least. From memory.
    BottomLeast "bottom_least" Engine Length ONE, bounds::SMALL, FREE, preset("0.0200", "0.500");
    /// Stock for the torque-plate hone at least. From memory.
    FinishLeast "finish_least" Engine Length ONE, bounds::SMALL, FREE, preset("0.0040", "0.100");
    /// Least counterbore clearance, on diameter. From memory.
    ClearLow "clear_low" Engine Length ONE, bounds::SMALL, FREE, preset("0.0020", "0.050");
    /// Greatest counterbore clearance, on diameter. From memory.
    ClearHigh "clear_high" Engine Length ONE, bounds::SMALL, FREE, preset("0.0060", "0.150");
    /// Bar off the old centre: look above. From memory.
    OffsetLook "offset_look" Engine Length ONE, bounds::SMALL, FREE, preset("0.0020", "0.050");
    /// Left for the hone, on diameter. Common practice, no source.
    HoneLeave "hone_leave" Engine Length ONE, bounds::SMALL, FREE, preset("0.0012", "0.030");
    /// Chamfer over fillet at least. From memory.
    FilletSpare "fillet_spare" Engine Length ONE, bounds::SMALL, FREE, preset("0.0050", "0.130");
    /// Groove depth off the wanted one at most. From memory.
    GrooveNear "groove_near" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// Bore of the ram.
    RamBore "ram_bore" Engine Length ONE, bounds::DIAMETER, FREE, NONE;
    /// Hole or rod through the ram's piston.
    RamHole "ram_hole" Engine Length ONE, bounds::DIAMETER, FREE, NONE;
    /// Rated pressure of the ram.
    RamRated "ram_rated" Engine Pressure ONE, bounds::PRESSURE, FREE, NONE;
    /// Major diameter of the pulling rod's thread.
    RodD "rod_d" Engine Length ONE, bounds::DIAMETER, FREE, NONE;
    /// Pitch of its thread.
    RodPitch "rod_pitch" Engine Length ONE, bounds::LENGTH, FREE, NONE;
    /// Yield strength of the rod.
    RodYield "rod_yield" Engine Pressure ONE, bounds::HARDNESS, FREE, NONE;
    /// Pressure the ledge may bear.
    LedgeMost "ledge_most" Engine Pressure ONE, bounds::HARDNESS, FREE, NONE;
    /// Shear stress the flange may bear at its root.
    FlangeMost "flange_most" Engine Pressure ONE, bounds::HARDNESS, FREE, NONE;
    /// Stroke of the engine.
    Stroke "stroke" Engine Length ONE, bounds::LENGTH, size(50.0, 400.0, 1e6), NONE;
    /// Compression ratio before the cut: the sheet.
    Compression "compression" Engine Plain ONE, bounds::COMPRESSION_RATIO, FREE, NONE;
    /// Piston where the sheet measures it.
    PistonD "piston_d" Engine Length ONE, bounds::DIAMETER, size(50.0, 245.0, 1e6), NONE;
    /// Least room of the piston in its bore, on diameter: the sheet.
    PistonLeast "piston_least" Engine Length ONE, bounds::SMALL, FREE, NONE;
    /// Stroke of the hone.
    HoneStroke "hone_stroke" Engine Length ONE, bounds::LENGTH, FREE, NONE;
    /// Turns of the hone, a minute.
    HoneTurns "hone_turns" Engine Plain ONE, PER_MINUTE, FREE, NONE;
    /// Full cycles of the hone, two strokes each, a minute.
    HoneCycles "hone_cycles" Engine Plain ONE, PER_MINUTE, FREE, NONE;
    /// Temperature of the block as it came out of the wash.
    BlockOut "block_out" Block Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// From the deck down to the water jacket: the deck plate.
    JacketFrom "jacket_from" Engine Length ONE, bounds::JACKET, size(4.0, 40.0, 1e6), NONE;
    /// From the deck down to the end of the water jacket.
    JacketTo "jacket_to" Engine Length ONE, bounds::JACKET, size(40.0, 600.0, 1e6), NONE;
    /// From the row's centre line to the side of the solid block.
    HalfWidth "half_width" Engine Length ONE, bounds::LENGTH, size(35.0, 250.0, 1e6), NONE;
    /// Load of head or torque plate on one flange.
    HeadClamp "head_clamp" Engine Force ONE, bounds::CLAMP, FREE, NONE;
    /// How the sleeve went in.
    DropOutcome "drop_outcome" Cylinder Choice ONE, OUTCOMES, FREE, NONE;
    /// Hours once for the job.
    HoursJob "hours_job" Block Plain ONE, MONEY, FREE, NONE;
    /// Hours for each hole.
    HoursHole "hours_hole" Block Plain ONE, MONEY, FREE, NONE;
    /// Price of an hour.
    HourPrice "hour_price" Block Plain ONE, MONEY, FREE, NONE;
    /// Price of a sleeve.
    SleevePrice "sleeve_price" Block Plain ONE, MONEY, FREE, NONE;
    /// Price of a litre of nitrogen.
    LitrePrice "litre_price" Block Plain ONE, MONEY, FREE, NONE;
    /// Everything else.
    OtherPrice "other_price" Block Plain ONE, MONEY, FREE, NONE;
    /// How long the block rested before it was measured.
    RestTime "rest_time" Block Time ONE, bounds::RELEASE, FREE, NONE;
    /// Temperature of the block.
    BlockNow "block_now" Block Temperature ONE, bounds::TEMPERATURE, SHOP, NONE;
    /// Temperature of the sleeves.
    SleevesNow "sleeves_now" Block Temperature ONE, bounds::TEMPERATURE, SHOP, NONE;
    /// Test pressure.
    TestStart "test_start" Block Pressure ONE, bounds::PRESSURE, FREE, NONE;
    /// Test pressure at the end.
    TestEnd "test_end" Block Pressure ONE, bounds::GAUGE, FREE, NONE;
    /// How long it was held.
    TestTime "test_time" Block Time ONE, bounds::RELEASE, FREE, NONE;
    /// Pressure of the second test.
    RetestStart "retest_start" Block Pressure ONE, bounds::PRESSURE, FREE, NONE;
    /// Its pressure at the end.
    RetestEnd "retest_end" Block Pressure ONE, bounds::GAUGE, FREE, NONE;
    /// Volume of the room, cubic metres.
    RoomVolume "room_volume" Block Volume ONE, bounds::ROOM, ROOMS, NONE;
    /// Nitrogen in it, litres.
    RoomLitres "room_litres" Block Plain ONE, bounds::LITRES, FREE, NONE;
    /// Air changes an hour.
    AirChanges "air_changes" Block Plain ONE, bounds::AIR_CHANGES, FREE, NONE;
    /// Over which the nitrogen boils off.
    Release "release" Block Time ONE, bounds::RELEASE, FREE, NONE;
    /// Deck height above the main line, at both ends.
    DeckHeight "deck_height" Bank Length Places::Ends, bounds::LENGTH, size(150.0, 900.0, 1.0), NONE;
    /// The old bore.
    OldBore "old_bore" Cylinder Length LEVELS, bounds::DIAMETER, size(50.0, 250.0, 1.0), NONE;
    /// Wall by ultrasonic gauge.
    WallReading "wall_reading" Cylinder Length Places::Rounds, bounds::MEASURED_WALL, size(2.0, 40.0, 4.0), NONE;
    /// Outside diameter of this flange.
    FlangeOdHere "flange_od_here" Cylinder Length ONE, bounds::DIAMETER, size(62.0, 270.0, 0.3), NONE;
    /// Fillet under this flange.
    Fillet "fillet" Cylinder Length ONE, bounds::SMALL, size(0.1, 3.0, 1e6), NONE;
    /// Indicator swept in the bore from the bar.
    Indicator "indicator" Cylinder Length Places::Clocks, bounds::HEIGHT, offset(2.0), NONE;
    /// Bore as the bar left it.
    BoredD "bored_d" Cylinder Length ONE, bounds::DIAMETER, size(60.0, 250.0, 0.5), NONE;
    /// Diameter of the counterbore.
    CounterboreD "counterbore_d" Cylinder Length ONE, bounds::DIAMETER, size(62.0, 270.0, 0.5), NONE;
    /// Chamfer of the ledge.
    ChamferHere "chamfer" Cylinder Length ONE, bounds::SMALL, size(0.2, 4.0, 1e6), NONE;
    /// Time in the bath.
    ChillTime "chill_time" Cylinder Time ONE, bounds::RELEASE, FREE, NONE;
    /// Time held down.
    HoldTime "hold_time" Cylinder Time ONE, bounds::RELEASE, FREE, NONE;
    /// Temperature of the fitted sleeve: cold for a while, whatever is typed.
    SleeveWarm "sleeve_warm" Cylinder Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// How far the piston stands proud of the deck.
    PistonProud "piston_proud" Cylinder Length Places::Ends, bounds::HEIGHT, offset(0.6), NONE;
    /// Depth of the fire-ring groove.
    GrooveDepth "groove_depth" Cylinder Length Places::Clocks, bounds::DEPTH, size(0.2, 10.0, 0.3), NONE;
    /// Finished bore.
    FinishD "finish_d" Cylinder Length LEVELS, bounds::DIAMETER, size(50.0, 250.0, 0.4), NONE;
    /// Ring gaps in this bore.
    RingGapNow "ring_gap_now" Cylinder Length Places::List(4), bounds::RING_GAP, FREE, NONE;
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
    DropRoom "drop_room" Drop Temperature ONE, bounds::ROOM_TEMPERATURE, SHOP, preset("68", "20");
    /// Least width of the ledge under the flange. From memory.
    LedgeLeast "ledge_least" Engine Length ONE, bounds::SMALL, FREE, preset("0.0600", "1.500");
    /// Inside diameter of the fire-ring groove.
    GrooveInner "groove_inner" Engine Length ONE, bounds::DIAMETER, size(60.0, 250.0, 1e6), NONE;
    /// Outside diameter of the fire-ring groove.
    GrooveOuter "groove_outer" Engine Length ONE, bounds::DIAMETER, size(60.0, 260.0, 1e6), NONE;
    /// Least flange left beside and under the groove. From memory.
    GrooveLand "groove_land" Engine Length ONE, bounds::SMALL, FREE, preset("0.0400", "1.000");
    /// Compressed thickness of each gasket grade there is to buy.
    GasketGrades "gasket_grades" Engine Length Places::List(4), bounds::THICKNESS, FREE, NONE;
    /// Strokes of the hone, up and down, that this bore took.
    HoneStrokes "hone_strokes" Cylinder Plain ONE, STROKES, FREE, NONE;
    /// How far a deck cut comes out off the one that was set: its standard
    /// deviation, common to all flanges of the deck. From memory.
    DeckSd "deck_sd" Engine Length ONE, bounds::SMALL, FREE, preset("0.0003", "0.008");
    /// Rz of the sleeve's outside.
    RzSleeve "rz_sleeve" Engine Roughness ONE, bounds::ROUGHNESS, FREE, NONE;
    /// Rz of the honed block bore.
    RzBore "rz_bore" Engine Roughness ONE, bounds::ROUGHNESS, FREE, NONE;
    /// Share of both Rz that a press fit loses: 0.8 in DIN 7190:2001, 0.4 in the
    /// edition of 2017 as reported second-hand.
    Smoothing "smoothing" Engine Plain ONE, bounds::SMOOTHING, FREE, preset("0.8", "0.8");
    /// Mean temperature of the sleeve's wall in the running engine.
    RunSleeve "run_sleeve" Engine Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// Mean temperature of the block round it in the running engine.
    RunBlock "run_block" Engine Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// Highest gas pressure: the sheet.
    GasPressure "gas_pressure" Engine Pressure ONE, bounds::GAUGE, FREE, NONE;
    /// Passes of the bar.
    Passes "passes" Engine Plain ONE, PASSES, FREE, NONE;
    /// Cut of the bar's last pass, on diameter.
    LastCut "last_cut" Engine Length ONE, bounds::SMALL, FREE, NONE;
    /// What a sleeve shrinks from shop to bath, measured on diameter: overrides
    /// the table of its iron.
    ChillShrink "chill_shrink" Engine Length ONE, bounds::SMALL, FREE, NONE;
    /// What ten strokes of the hone take off a bore, on diameter: the shop's own
    /// rate.
    HoneRate "hone_rate" Engine Length ONE, bounds::SMALL, FREE, NONE;
    /// Nitrogen that fills the bath, litres.
    BathFill "bath_fill" Block Plain ONE, bounds::LITRES, FREE, NONE;
    /// What dewar and bath lose by standing, litres an hour.
    StandingLoss "standing_loss" Block Plain ONE, bounds::LITRES, FREE, NONE;
    /// Hours that the nitrogen stands.
    StandingHours "standing_hours" Block Plain ONE, STANDING, FREE, NONE;
    /// Share of the height gauge's variance that all holes of a deck have in
    /// common. From memory.
    CommonHeight "common_height" Engine Plain ONE, SHARED, FREE, preset("0.5", "0.5");
    /// The same of the flange thickness. From memory.
    CommonThickness "common_thickness" Engine Plain ONE, SHARED, FREE, preset("0.5", "0.5");
    /// The same of the counterbore depth. From memory.
    CommonDepth "common_depth" Engine Plain ONE, SHARED, FREE, preset("0.5", "0.5");
    /// Share of the shop's sleeves that are home when they have stopped. From
    /// memory, until the shop's own jobs tell.
    PriorHome "prior_home" Engine Plain ONE, bounds::PRIOR_HOME, FREE, preset("0.95", "0.95");
    /// Seconds the shop needs from the sleeve's entering to its being home. From
    /// memory, the shop's to change.
    HomeNeeded "home_needed" Engine Time ONE, bounds::HOME_NEEDED, FREE, preset("5", "5");
    /// The same of the cold drop without a job.
    DropHome "drop_home" Drop Time ONE, bounds::HOME_NEEDED, FREE, preset("5", "5");
    /// Cold drop: what goes in.
    DropPart "drop_part" Drop Choice ONE, index_of(PARTS), FREE, NONE;
    /// Cold drop: what makes it cold.
    DropCold "drop_cold" Drop Choice ONE, index_of(COLDS), FREE, NONE;
    /// Cold drop: temperature of the cold, where it is not nitrogen's own.
    DropColdAt "drop_cold_at" Drop Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// Cold drop: what warms the housing.
    DropHeat "drop_heat" Drop Choice ONE, index_of(HEATS), FREE, NONE;
    /// Cold drop: temperature of the warmed housing as it leaves the heat.
    DropHeatAt "drop_heat_at" Drop Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// Cold drop: the most the housing may be warmed to: the maker's sheet.
    DropHeatMost "drop_heat_most" Drop Temperature ONE, bounds::TEMPERATURE, FREE, NONE;
    /// Cold drop: seconds from the heat until the part enters. From memory.
    DropHeatOut "drop_heat_out" Drop Time ONE, bounds::CARRY, FREE, preset("20", "20");
    /// Cold drop: clearance wanted at the bore. From memory.
    DropLeast "drop_least" Drop Length ONE, bounds::SMALL, FREE, preset("0.0040", "0.100");
    /// Cold drop: price of a litre of nitrogen.
    DropLitrePrice "drop_litre_price" Drop Plain ONE, MONEY, FREE, NONE;
    /// Cold drop: price of a kilogram of dry ice.
    DropIcePrice "drop_ice_price" Drop Plain ONE, MONEY, FREE, NONE;
    /// Outside diameter of the sleeve as measured cold, fresh out of the bath: takes
    /// the place of the table's contraction for this sleeve.
    ColdOd "cold_od" Cylinder Length ONE, bounds::DIAMETER, size(60.0, 250.0, 1.5), NONE;
    /// How the sleeves stand: by a flange, on a step, by their fit.
    SleeveKind "sleeve_kind" Engine Choice ONE, index_of(SLEEVE_KINDS), FREE, NONE;
    /// Whole length of a plain sleeve.
    PlainLength "plain_length" Cylinder Length CLOCKS, bounds::LENGTH, size(80.0, 600.0, 0.3), NONE;
    /// From the deck down to the step that a plain sleeve stands on.
    StepDepth "step_depth" Cylinder Length CLOCKS, bounds::LENGTH, size(80.0, 620.0, 0.5), NONE;
    /// Diameter of the bore below that step.
    StepBore "step_bore" Engine Length ONE, bounds::DIAMETER, size(50.0, 250.0, 1e6), NONE;
    /// Standard uncertainty of a plain sleeve's length. From memory.
    GaugeLength "gauge_length" Engine Length ONE, bounds::SMALL, FREE, preset("0.0004", "0.010");
    /// Standard uncertainty of a step's depth. From memory.
    GaugeStep "gauge_step" Engine Length ONE, bounds::SMALL, FREE, preset("0.0005", "0.013");
    /// What is measured from the deck and a cut changes, item by item: its size
    /// before the cut; below the deck or, of what stands out of it, above.
    FromDeckBefore "from_deck_before" Engine Length Places::FromDeck, bounds::FROM_DECK, FREE, NONE;
    /// Its least size: the sheet.
    FromDeckLeast "from_deck_least" Engine Length Places::FromDeck, bounds::FROM_DECK, FREE, NONE;
    /// Its greatest size: the sheet.
    FromDeckMost "from_deck_most" Engine Length Places::FromDeck, bounds::FROM_DECK, FREE, NONE;
    /// What earlier cuts took off the block's deck, all together.
    BlockCutSoFar "block_cut_so_far" Engine Length ONE, bounds::REMOVAL, FREE, NONE;
    /// The most that may ever be cut off it: the sheet.
    BlockCutMost "block_cut_most" Engine Length ONE, bounds::REMOVAL, FREE, NONE;
    /// By which roughness the gasket's maker names the deck's finish.
    DeckFinishKind "deck_finish_kind" Engine Choice ONE, index_of(ROUGHNESS_NAMES), FREE, NONE;
    /// The roughest deck that the gasket's maker allows.
    DeckFinishMost "deck_finish_most" Engine Roughness ONE, bounds::ROUGHNESS, FREE, NONE;
    /// Roughness of the deck as cut, by the same name.
    DeckFinish "deck_finish" Bank Roughness ONE, bounds::ROUGHNESS, FREE, NONE;
    /// What is measured from the deck, as measured again once the deck was cut.
    FromDeckAfter "from_deck_after" Bank Length Places::FromDeck, bounds::FROM_DECK, FREE, NONE;
    /// That it was brought back to its range, or in words why it was not.
    RecutSaid "recut_said" Bank Words Places::FromDeck, WORDS, FREE, NONE;
    /// The shop, for the record.
    ShopName "shop_name" Block Words ONE, WORDS, FREE, NONE;
    /// Who did the work, for the record.
    Machinist "machinist" Block Words ONE, WORDS, FREE, NONE;
    /// Serial number of the block.
    BlockSerial "block_serial" Block Words ONE, WORDS, FREE, NONE;
    /// Hours that the engine has run.
    EngineHours "engine_hours" Block Plain ONE, MONEY, FREE, NONE;
    /// When each gauge was last checked against a standard, as the shop writes it.
    GaugeChecked "gauge_checked" Engine Words Places::Gauges, WORDS, FREE, NONE;
    /// How the sleeves end: decked flush, left proud.
    SleeveEnds "sleeve_ends" Engine Choice ONE, index_of(SLEEVE_ENDS), FREE, NONE;
    /// Lowest height of a sleeve that is left proud: the sheet.
    ProudLow "proud_low" Engine Length ONE, bounds::HEIGHT, offset(0.8), NONE;
    /// Its highest.
    ProudHigh "proud_high" Engine Length ONE, bounds::HEIGHT, offset(0.8), NONE;
    /// Heights of one sleeve round the clock apart at most.
    SpreadHole "spread_hole" Engine Length ONE, bounds::SMALL, offset(0.5), NONE;
    /// Means of two neighbours apart at most.
    SpreadNeighbour "spread_neighbour" Engine Length ONE, bounds::SMALL, offset(0.5), NONE;
    /// Means of all sleeves of a deck apart at most.
    SpreadAll "spread_all" Engine Length ONE, bounds::SMALL, offset(0.5), NONE;
    /// Torque at which they are held down while read, where the sheet states one.
    HeldTorque "held_torque" Engine Torque ONE, bounds::TORQUE, FREE, NONE;
    /// Whether they were.
    HeldDown "held_down" Bank Choice ONE, index_of(HELD_DOWN), FREE, NONE;
    /// The most that may be cut off a ledge to bring heights within their limits: the sheet.
    LedgeCutMost "ledge_cut_most" Engine Length ONE, bounds::SMALL, offset(0.5), NONE;
    /// The cut of one pass there.
    LedgeCutStep "ledge_cut_step" Engine Length ONE, bounds::SMALL, offset(0.3), NONE;
    /// Sizes of the shims at hand.
    ShimSizes "shim_sizes" Engine Length SHIMS, bounds::SHIM, offset(1.5), NONE;
    /// How many are left of each.
    ShimsLeft "shims_left" Engine Plain SHIMS, COUNTED, FREE, NONE;
    /// Shim under this sleeve; blank: the engine's.
    ShimHere "shim_here" Cylinder Length ONE, bounds::REMOVAL, offset(1.5), NONE;
    /// Plan of heights that is worked to: which sleeve this hole gets, by its number before.
    PlanSleeve "plan_sleeve" Cylinder Plain ONE, NUMBERED, FREE, NONE;
    /// By how many quarters it is turned.
    PlanTurn "plan_turn" Cylinder Plain ONE, QUARTERS, FREE, NONE;
    /// Which shim it gets; 0: none.
    PlanShim "plan_shim" Cylinder Length ONE, bounds::REMOVAL, FREE, NONE;
    /// What is cut off its ledge.
    PlanCut "plan_cut" Cylinder Length ONE, bounds::REMOVAL, FREE, NONE;
    /// Heights that come of it.
    PlanHeight "plan_height" Cylinder Length CLOCKS, bounds::HEIGHT, FREE, NONE;
    /// What of it is done: cut, shim, sleeve.
    PlanDone "plan_done" Cylinder Words Places::List(3), WORDS, FREE, NONE;
    /// Depth of the counterbore near the bore's edge; the other one is at its outer corner.
    LedgeInner "ledge_inner" Cylinder Length CLOCKS, bounds::DEPTH, size(0.5, 20.0, 0.5), NONE;
    /// What a flange's face left on the inked ledge.
    InkCheck "ink_check" Cylinder Choice ONE, index_of(INKED), FREE, NONE;
    /// How much a ledge may fall or rise toward the bore.
    LedgeFall "ledge_fall" Engine Length ONE, bounds::SMALL, FREE, preset("0.0010", "0.025");
    /// Time from entering the bore to home, timed.
    HomeTimed "home_timed" Cylinder Time ONE, bounds::HOME_NEEDED, FREE, NONE;
}
