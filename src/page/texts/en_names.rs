//! English: names of steps, numbers and their places.

use super::en_after::deck_size;
use super::en_part::{COLD_BY, HEAT_BY, PART};
use coldseat_core::ask::{
    Field, FromDeck, GAUGES_CHECKED, HeldDown, Inked, OrderItem, Places, SleeveEnds, SleeveKind,
    StepId,
};

#[must_use]
pub const fn step_title(id: StepId) -> &'static str {
    match id {
        StepId::Enquiry => "First call and price",
        StepId::Intake => "Receive the block",
        StepId::Rest => "Strip, wash, rest",
        StepId::Pressure => "Crack and pressure test",
        StepId::Datum => "Deck height and low spots",
        StepId::OldBore => "Old bores",
        StepId::Wall => "Wall by ultrasonic gauge",
        StepId::Choose => "Choose the sleeve",
        StepId::Sleeve => "Receive the sleeve",
        StepId::Caps => "Main caps on and torqued",
        StepId::Centre => "Center the bar",
        StepId::Bore => "Bore",
        StepId::CounterboreD => "Counterbore diameter",
        StepId::Counterbore => "Counterbore depth",
        StepId::StepDepth => "Step depth",
        StepId::Chamfer => "Ledge chamfer",
        StepId::Fit => "Hone and fit",
        StepId::Clean => "Clean and blue",
        StepId::DryRun => "Dry run and room air",
        StepId::Chill => "Chill",
        StepId::Drop => "Drop",
        StepId::Hold => "Hold down while warming",
        StepId::WarmHeight => "Warm height",
        StepId::Pull => "Pull",
        StepId::Seat => "Seat check",
        StepId::Deck => "Deck",
        StepId::Heights => super::en_proud::HEIGHTS,
        StepId::Protrusion => "Piston protrusion",
        StepId::Groove => "Fire-ring groove",
        StepId::Finish => "Finish bore",
        StepId::RingGap => "Ring gaps",
        StepId::WashAgain => "Wash, test again",
        StepId::Report => "Report and hand over",
    }
}

/// Why a check of an order has nothing to check.
#[must_use]
pub const fn order_not_here(item: OrderItem, kind: SleeveKind) -> &'static str {
    match (item, kind) {
        (OrderItem::Bottom, _) => "no lower step entered: bored through",
        (OrderItem::Ledge, _) => "held by its fit: it stands on nothing",
        (
            OrderItem::GrooveOutside | OrderItem::GrooveFloor,
            SleeveKind::OnStep | SleeveKind::ByFit,
        ) => "a plain sleeve has no flange",
        _ => "no fire ring entered",
    }
}

#[must_use]
pub fn order_missing(missing: Field) -> String {
    format!("still needed: {}", field(missing))
}

#[must_use]
pub fn least(value: &str) -> String {
    format!("at least {value}")
}

/// What an order is checked for.
#[must_use]
pub const fn order_item(item: OrderItem, kind: SleeveKind) -> &'static str {
    match item {
        OrderItem::Bottom if matches!(kind, SleeveKind::OnStep) => "to cut at the step",
        OrderItem::Wall => "wall left",
        OrderItem::Web => "web between the holes",
        OrderItem::Bottom => "room to the lower step",
        OrderItem::Ledge => "ledge width",
        OrderItem::FinishStock => "stock for the torque-plate hone",
        OrderItem::GrooveInside => "metal inside the groove",
        OrderItem::GrooveOutside => "flange outside the groove",
        OrderItem::GrooveFloor => "flange under the groove",
    }
}

#[must_use]
pub const fn field(field: Field) -> &'static str {
    match field {
        Field::Pitch => "Bore pitch",
        Field::FlangeOd => "Flange OD, nominal (diameter)",
        Field::FinalBore => "Finished bore (diameter)",
        Field::StepBelow => "Deck to the next lower step",
        Field::Spindle => "Bar spindle (diameter)",
        Field::Gasket => "Head gasket, compressed",
        Field::HeadLeast => "Room between piston and head, min (sheet)",
        Field::RingHeight => "Fire ring height (sheet)",
        Field::RingProud => "Fire ring stand-proud (sheet)",
        Field::RingGapLow => "Ring gap, min (sheet)",
        Field::RingGapHigh => "Ring gap, max (sheet)",
        Field::ApartMost => "Block and sleeves apart, max (degrees)",
        Field::TestLoss => "Pressure lost in the test, max (share)",
        Field::DatumTilt => "Deck leans end to end, max",
        Field::WallCalm => "Wall left: look below",
        Field::WallLook => "Wall left: stop below",
        Field::WebCalm => "Web left: look below",
        Field::WebLook => "Web left: stop below",
        Field::BottomLeast => "Room to a lower step, min",
        Field::FinishLeast => "Stock for the torque-plate hone, min",
        Field::ClearLow => "Room around the flange, min (diameter)",
        Field::ClearHigh => "Room around the flange, max (diameter)",
        Field::OffsetLook => "Bar off the old center: look above",
        Field::HoneLeave => "Left for the hone (diameter)",
        Field::FilletSpare => "Chamfer over fillet, min",
        Field::LedgeLeast => "Ledge width, min",
        Field::GrooveInner => "Fire-ring groove, inside (diameter)",
        Field::GrooveOuter => "Fire-ring groove, outside (diameter)",
        Field::GrooveLand => "Flange beside and under the groove, min",
        Field::GasketGrades => "Gasket grades to buy, compressed",
        Field::HoneStrokes => "Hone strokes, all since the bar",
        Field::GrooveNear => "Groove off its depth, max",
        Field::RamBore => "Ram bore (diameter)",
        Field::RamHole => "Hole or rod in the ram (diameter)",
        Field::RamRated => "Ram, rated pressure",
        Field::RodD => "Pulling rod thread (diameter)",
        Field::RodPitch => "Pulling rod thread, pitch",
        Field::RodYield => "Pulling rod, yield strength",
        Field::LedgeMost => "Ledge pressure, max",
        Field::FlangeMost => "Flange shear at its root, max",
        Field::Stroke => "Engine stroke",
        Field::Compression => "Compression ratio before the cut (sheet)",
        Field::PistonD => "Piston, as the sheet measures it (diameter)",
        Field::PistonLeast => "Room around the piston, min (sheet, diameter)",
        Field::HoneStroke => "Hone: stroke",
        Field::HoneTurns => "Hone: turns per minute",
        Field::HoneCycles => "Hone: full cycles per minute, up and down",
        Field::BlockOut => "Block temperature out of the wash",
        Field::DropOutcome => "How it went in",
        Field::HoursJob => "Hours for the job, once",
        Field::HoursHole => "Hours for each hole",
        Field::HourPrice => "Price per hour",
        Field::SleevePrice => "Price per sleeve",
        Field::LitrePrice => "Price per liter of nitrogen",
        Field::OtherPrice => "Everything else",
        Field::BathFill => "Nitrogen to fill the bath (liters)",
        Field::StandingLoss => "Nitrogen lost by standing (liters per hour)",
        Field::StandingHours => "Hours it stands",
        Field::RzSleeve => "Sleeve outside, Rz",
        Field::RzBore => "Block bore honed, Rz",
        Field::Smoothing => "Share of both Rz lost to smoothing",
        Field::RunSleeve => "Sleeve temperature, running",
        Field::RunBlock => "Block temperature, running",
        Field::GasPressure => "Gas pressure, highest (sheet)",
        Field::Passes => "Bar passes",
        Field::CommonHeight => "Height gauge: share of its variance common to a deck",
        Field::CommonThickness => "Thickness: share of its variance common to a deck",
        Field::CommonDepth => "Depth gauge: share of its variance common to a deck",
        Field::PriorHome => "Share of sleeves that are home when they have stopped",
        Field::HoneRate => "Hone: ten strokes take off (diameter)",
        Field::LastCut => "Last pass of the bar (on diameter)",
        Field::ChillShrink => "Shrink in the bath as measured (diameter)",
        Field::RestTime => "Time it rested",
        Field::BlockNow => "Block temperature now",
        Field::SleevesNow => "Sleeve temperature now",
        Field::TestStart => "Test pressure",
        Field::TestEnd => "Pressure at the end",
        Field::TestTime => "Time held",
        Field::RetestStart => "Second test: pressure",
        Field::RetestEnd => "Second test: pressure at the end",
        Field::RoomVolume => "Room volume",
        Field::RoomLitres => "Nitrogen in the room (liters)",
        Field::AirChanges => "Air changes per hour",
        Field::Release => "Boils off over",
        Field::DeckHeight => "Deck height above the main line",
        Field::OldBore => "Old bore (diameter)",
        Field::WallReading => "Wall now",
        Field::FlangeOdHere => "Flange OD (diameter)",
        Field::Fillet => "Fillet under the flange",
        Field::Indicator => "Indicator around the bore",
        Field::BoredD => "Bore off the bar (diameter)",
        Field::CounterboreD => "Counterbore (diameter)",
        Field::ChamferHere => "Ledge chamfer",
        Field::ChillTime => "Time in the bath",
        Field::ColdOd => "Sleeve OD measured cold, if you have it (diameter)",
        Field::HoldTime => "Time held down",
        Field::SleeveWarm => "Sleeve temperature, fitted",
        Field::PistonProud => "Piston above the deck",
        Field::GrooveDepth => "Groove depth",
        Field::FinishD => "Finished bore, measured (diameter)",
        Field::RingGapNow => "Ring gap",
        Field::NominalOd => "Sleeve OD, nominal (diameter)",
        Field::SleeveId => "Sleeve ID, as delivered (diameter)",
        Field::SleeveLength => "Length (a flange not counted)",
        Field::NominalFlange => "Flange thickness, nominal",
        Field::BlockWall => "Block wall left around the bored hole (with a jacket: parent wall)",
        Field::JacketFrom => "Water jacket begins below the deck, if there is one",
        Field::JacketTo => "Water jacket ends below the deck",
        Field::HalfWidth => "Bore center line to the side of the block",
        Field::HeadClamp => "Head or torque-plate load on one sleeve",
        Field::Shim => "Shim under the sleeve",
        Field::FitLow => "Fit, min (on diameter)",
        Field::FitHigh => "Fit, max (on diameter)",
        Field::RoundLook => "Sleeve out of round: look above",
        Field::RoundStop => "Sleeve out of round: stop above",
        Field::BoreForm => "Bore out of round and taper, max",
        Field::EntryLeast => "Clearance at the bore, min",
        Field::TargetProud => "Target stand-proud",
        Field::PlannedCut => "Planned deck cut",
        Field::CleanUp => "Clean-up cut",
        Field::Risk => "Accepted chance of a low sleeve",
        Field::GapLimit => "Gap at the ledge, max",
        Field::TiltLimit => "Tilt of a seated sleeve, max",
        Field::Confidence => "How sure \"seated\" must be",
        Field::GaugeSleeve => "Sleeve OD",
        Field::GaugeBore => "Bore diameter",
        Field::GaugeHeight => "Height above the deck",
        Field::GaugeThickness => "Flange thickness (gauge)",
        Field::GaugeDepth => "Counterbore depth (gauge)",
        Field::FeedSd => "Hand feed of the ledge cutter",
        Field::DeckSd => "Deck cut, off the cut that was set",
        Field::RoomTemperature => "Shop and block temperature",
        Field::DropRoom => "Shop temperature",
        Field::LowSpot => "Deck below its highest point",
        Field::DeckCut => "Cut decided on",
        Field::SleeveOd => "Sleeve OD (diameter)",
        Field::SleeveTemperature => "Sleeve temperature",
        Field::FlangeThickness => "Flange thickness",
        Field::CounterboreDepth => "Counterbore depth",
        Field::DeckHere => "Deck at this hole, below its highest point",
        Field::BoreD => "Block bore (diameter)",
        Field::BlockTemperature => "Block temperature",
        Field::Carry => "Carry time, bath to bore",
        Field::HomeTimed => "Time from entering to home",
        Field::DropCarry => "Carry time, cold to bore",
        Field::HomeNeeded | Field::DropHome => "Time you need, entering to home",
        Field::WarmHeight => "Height above the deck, warm",
        Field::PullGauge => "Gauge pressure",
        Field::PullLoaded => "Height loaded",
        Field::PullReleased => "Height released",
        Field::SeatHeight => "Height above the deck, after the last pull",
        Field::DropOd => "Part OD (diameter)",
        Field::DropWall => "Part wall",
        Field::DropLength => "Part length",
        Field::DropFit => "Fit (on diameter)",
        Field::DropBlockWall => "Housing wall around the bore",
        Field::DropPart => PART,
        Field::DropCold => COLD_BY,
        Field::DropColdAt => "Cooling temperature",
        Field::DropHeat => HEAT_BY,
        Field::DropHeatAt => "Housing warmed to",
        Field::DropHeatMost => "Heat limit of the housing (maker's sheet)",
        Field::DropHeatOut => "Out of the heat until it goes in",
        Field::DropLeast => "Target clearance at the bore",
        Field::DropLitrePrice => "Nitrogen, price per liter",
        Field::SleeveKind => "How the sleeves stand",
        Field::PlainLength => "Sleeve length, end to end",
        Field::StepDepth => "Step depth",
        Field::StepBore => "Bore below the step (diameter)",
        Field::GaugeLength => "Sleeve length (gauge)",
        Field::GaugeStep => "Step depth (gauge)",
        Field::DropIcePrice => "Dry ice, price per kilogram",
        Field::FromDeckBefore => "Before the cut",
        Field::FromDeckLeast => "Min (sheet)",
        Field::FromDeckMost => "Max (sheet)",
        Field::BlockCutSoFar => "Cut off the block so far",
        Field::BlockCutMost => "Cut off the block, max allowed (sheet)",
        Field::DeckFinishKind => "Deck finish named by (gasket maker's sheet)",
        Field::DeckFinishMost => "Deck finish, roughest allowed (gasket maker's sheet)",
        Field::DeckFinish => "Deck finish, measured after the cut",
        Field::FromDeckAfter => "Measured again",
        Field::RecutSaid => "Why it is left so",
        Field::ShopName => "Shop",
        Field::Machinist => "Machinist",
        Field::BlockSerial => "Block serial number",
        Field::EngineHours => "Engine hours run",
        Field::GaugeChecked => "Gauge last checked",
        Field::SleeveEnds => "How the sleeves end",
        Field::ProudLow => "Stands proud, min (sheet)",
        Field::ProudHigh => "Stands proud, max (sheet)",
        Field::SpreadHole => "Heights apart within one hole, max (sheet)",
        Field::SpreadNeighbour => "Means of two neighbors apart, max (sheet)",
        Field::SpreadAll => "Means of all holes apart, max (sheet)",
        Field::HeldTorque => "Held down while read, at a torque of (sheet, if it says so)",
        Field::LedgeCutMost => "Ledge: cut at most, to bring heights right (sheet; 0: none)",
        Field::LedgeCutStep => "Ledge: cut per pass (sheet)",
        Field::ShimSizes => "Size",
        Field::ShimsLeft => "How many left",
        Field::ShimHere => "Shim under this sleeve, if not the engine's",
        Field::PlanSleeve => "Plan: sleeve",
        Field::PlanTurn => "Plan: quarter turns",
        Field::PlanShim => "Plan: shim",
        Field::PlanCut => "Plan: cut",
        Field::PlanHeight => "Plan: height",
        Field::PlanDone => "Plan: done",
        Field::LedgeInner => "Depth near the bore's edge",
        Field::InkCheck => "Bluing of the flange on the ledge",
        Field::LedgeFall => "Ledge falls or rises toward the bore, max",
        Field::HeldDown => "While the heights were read, the sleeves were",
    }
}

/// What stands over a list of a field's places.
#[must_use]
pub const fn list_title(place: Field) -> &'static str {
    match place {
        Field::LowSpot => "Deck below its highest point: rows across it, front to rear",
        other => field(other),
    }
}

const LEVELS: [&str; 3] = ["top", "middle", "bottom"];
const CLOCKS: [u8; 4] = [12, 3, 6, 9];

/// Level and clock point of a place round the clock at three levels.
#[must_use]
pub fn round_place(index: u8) -> (&'static str, String) {
    let clock = CLOCKS[usize::from(index) % 4];
    (
        LEVELS[usize::from(index / 4) % 3],
        format!("{clock} o'clock"),
    )
}

/// The label of one of a field's places; empty where it has but one.
#[must_use]
pub fn place(field: Field, index: u8) -> String {
    match field.spec().places {
        Places::One => String::new(),
        Places::Ends => ["front", "rear"][usize::from(index) % 2].to_owned(),
        Places::Rounds => {
            let (level, clock) = round_place(index);
            format!("{level}, {clock}")
        }
        Places::Clocks => format!("{} o'clock", CLOCKS[usize::from(index) % 4]),
        Places::Levels => {
            let axis = if index.is_multiple_of(2) {
                "across"
            } else {
                "along"
            };
            format!("{}, {axis}", LEVELS[usize::from(index / 2) % 3])
        }
        Places::FromDeck => FromDeck::ALL
            .get(usize::from(index))
            .map_or_else(String::new, |item| deck_size(*item).to_owned()),
        Places::Gauges => GAUGES_CHECKED
            .get(usize::from(index))
            .map_or_else(String::new, |gauge| {
                super::en_names::field(*gauge).to_owned()
            }),
        Places::List(_) if field == Field::LowSpot => {
            let side = if index.is_multiple_of(2) {
                "left"
            } else {
                "right"
            };
            format!("row {}, {side}", index / 2 + 1)
        }
        Places::List(_) if matches!(field, Field::ShimSizes | Field::ShimsLeft) => {
            format!("shim {}", index + 1)
        }
        Places::List(_) if field == Field::PlanDone => {
            ["cut", "shim", "sleeve"][usize::from(index) % 3].to_owned()
        }
        Places::List(_) if field == Field::GasketGrades => format!("grade {}", index + 1),
        Places::List(_) if field == Field::RingGapNow => format!("ring {}", index + 1),
        Places::List(_) => format!("{} {}", super::en::PULL.to_lowercase(), index + 1),
    }
}

/// A word that a choice offers.
#[must_use]
pub fn choice(field: Field, index: u8) -> &'static str {
    let index = usize::from(index);
    match field {
        Field::SleeveKind => {
            let kind = SleeveKind::ALL.get(index);
            return kind.map_or("", |kind| sleeve_kind(*kind));
        }
        Field::SleeveEnds => {
            let ends = SleeveEnds::ALL.get(index);
            return ends.map_or("", |ends| super::en_proud::sleeve_ends(*ends));
        }
        Field::InkCheck => {
            let inked = Inked::ALL.get(index);
            return inked.map_or("", |inked| super::en_ledge::inked(*inked));
        }
        Field::HeldDown => {
            let held = HeldDown::ALL.get(index);
            return held.map_or("", |held| super::en_proud::held_down(*held));
        }
        _ => {}
    }
    field.choices().get(index).copied().unwrap_or_default()
}

/// How the sleeves of a job stand.
#[must_use]
pub const fn sleeve_kind(kind: SleeveKind) -> &'static str {
    match kind {
        SleeveKind::Flanged => "flanged, on a counterbore's ledge",
        SleeveKind::OnStep => "plain, on a step of the bore",
        SleeveKind::ByFit => "plain, held by its fit alone",
    }
}

/// What heights that are there are judged by, beside the choice.
#[must_use]
pub fn judged_as(kind: SleeveKind) -> String {
    let by = match kind {
        SleeveKind::Flanged => "flange and counterbore depth",
        SleeveKind::OnStep => "sleeve length and step depth",
        SleeveKind::ByFit => "the target stand-proud, and by no ledge",
    };
    format!("Heights are read already. They are judged by {by}.")
}

#[must_use]
pub fn more_than(value: &str) -> String {
    format!("more than {value}")
}

#[must_use]
pub fn less_than(value: &str) -> String {
    format!("less than {value}")
}

/// How many cylinders have a step behind them.
#[must_use]
pub fn cylinders_done(done: usize, all: usize) -> String {
    format!("{done} of {all} cylinders")
}

pub const MINUTES: &str = "min:s";
