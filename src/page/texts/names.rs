//! Names of steps, numbers and their places.

use super::after::deck_size;
use crate::words::made as w;
use coldseat_core::ask::{
    Field, FromDeck, GAUGES_CHECKED, HeldDown, Inked, OrderItem, Places, SleeveEnds, SleeveKind,
    StepId,
};

#[must_use]
pub fn step_title(id: StepId) -> &'static str {
    match id {
        StepId::Enquiry => w::STEP_TITLE_ENQUIRY.get(),
        StepId::Intake => w::STEP_TITLE_INTAKE.get(),
        StepId::Rest => w::STEP_TITLE_REST.get(),
        StepId::Pressure => w::STEP_TITLE_PRESSURE.get(),
        StepId::Datum => w::STEP_TITLE_DATUM.get(),
        StepId::OldBore => w::STEP_TITLE_OLD_BORE.get(),
        StepId::Wall => w::STEP_TITLE_WALL.get(),
        StepId::Choose => w::STEP_TITLE_CHOOSE.get(),
        StepId::Sleeve => w::STEP_TITLE_SLEEVE.get(),
        StepId::Caps => w::STEP_TITLE_CAPS.get(),
        StepId::Centre => w::STEP_TITLE_CENTRE.get(),
        StepId::Bore => w::STEP_TITLE_BORE.get(),
        StepId::CounterboreD => w::STEP_TITLE_COUNTERBORE_D.get(),
        StepId::Counterbore => w::STEP_TITLE_COUNTERBORE.get(),
        StepId::StepDepth => w::STEP_TITLE_STEP_DEPTH.get(),
        StepId::Chamfer => w::STEP_TITLE_CHAMFER.get(),
        StepId::Fit => w::STEP_TITLE_FIT.get(),
        StepId::Clean => w::STEP_TITLE_CLEAN.get(),
        StepId::DryRun => w::STEP_TITLE_DRY_RUN.get(),
        StepId::Chill => w::STEP_TITLE_CHILL.get(),
        StepId::Drop => w::STEP_TITLE_DROP.get(),
        StepId::Hold => w::STEP_TITLE_HOLD.get(),
        StepId::WarmHeight => w::STEP_TITLE_WARM_HEIGHT.get(),
        StepId::Pull => w::STEP_TITLE_PULL.get(),
        StepId::Seat => w::STEP_TITLE_SEAT.get(),
        StepId::Deck => w::STEP_TITLE_DECK.get(),
        StepId::Heights => w::HEIGHTS.get(),
        StepId::Protrusion => w::STEP_TITLE_PROTRUSION.get(),
        StepId::Groove => w::STEP_TITLE_GROOVE.get(),
        StepId::Finish => w::STEP_TITLE_FINISH.get(),
        StepId::RingGap => w::STEP_TITLE_RING_GAP.get(),
        StepId::WashAgain => w::STEP_TITLE_WASH_AGAIN.get(),
        StepId::Report => w::STEP_TITLE_REPORT.get(),
    }
}

/// Why a check of an order has nothing to check.
#[must_use]
pub fn order_not_here(item: OrderItem, kind: SleeveKind) -> &'static str {
    match (item, kind) {
        (OrderItem::Bottom, _) => w::ORDER_NOT_HERE_BOTTOM.get(),
        (OrderItem::Ledge, _) => w::ORDER_NOT_HERE_LEDGE.get(),
        (
            OrderItem::GrooveOutside | OrderItem::GrooveFloor,
            SleeveKind::OnStep | SleeveKind::ByFit,
        ) => w::ORDER_NOT_HERE_GROOVE_OUTSIDE_GROOVE_FLOOR.get(),
        _ => w::ORDER_NOT_HERE_OTHER.get(),
    }
}

#[must_use]
pub fn order_missing(missing: Field) -> String {
    w::OrderMissing {
        missing: &field(missing),
    }
    .say()
}

#[must_use]
pub fn least(value: &str) -> String {
    w::Least { value: &value }.say()
}

/// What an order is checked for.
#[must_use]
pub fn order_item(item: OrderItem, kind: SleeveKind) -> &'static str {
    match item {
        OrderItem::Bottom if matches!(kind, SleeveKind::OnStep) => {
            w::ORDER_ITEM_BOTTOM_TO_CUT_AT.get()
        }
        OrderItem::Wall => w::ORDER_ITEM_WALL.get(),
        OrderItem::Web => w::ORDER_ITEM_WEB.get(),
        OrderItem::Bottom => w::ORDER_ITEM_BOTTOM_ROOM_TO_THE.get(),
        OrderItem::Ledge => w::ORDER_ITEM_LEDGE.get(),
        OrderItem::FinishStock => w::ORDER_ITEM_FINISH_STOCK.get(),
        OrderItem::GrooveInside => w::ORDER_ITEM_GROOVE_INSIDE.get(),
        OrderItem::GrooveOutside => w::ORDER_ITEM_GROOVE_OUTSIDE.get(),
        OrderItem::GrooveFloor => w::ORDER_ITEM_GROOVE_FLOOR.get(),
    }
}

#[must_use]
pub fn field(field: Field) -> &'static str {
    match field {
        Field::Pitch => w::FIELD_PITCH.get(),
        Field::FlangeOd => w::FIELD_FLANGE_OD.get(),
        Field::FinalBore => w::FIELD_FINAL_BORE.get(),
        Field::StepBelow => w::FIELD_STEP_BELOW.get(),
        Field::Spindle => w::FIELD_SPINDLE.get(),
        Field::Gasket => w::FIELD_GASKET.get(),
        Field::HeadLeast => w::FIELD_HEAD_LEAST.get(),
        Field::RingHeight => w::FIELD_RING_HEIGHT.get(),
        Field::RingProud => w::FIELD_RING_PROUD.get(),
        Field::RingGapLow => w::FIELD_RING_GAP_LOW.get(),
        Field::RingGapHigh => w::FIELD_RING_GAP_HIGH.get(),
        Field::ApartMost => w::FIELD_APART_MOST.get(),
        Field::TestLoss => w::FIELD_TEST_LOSS.get(),
        Field::DatumTilt => w::FIELD_DATUM_TILT.get(),
        Field::WallCalm => w::FIELD_WALL_CALM.get(),
        Field::WallLook => w::FIELD_WALL_LOOK.get(),
        Field::WebCalm => w::FIELD_WEB_CALM.get(),
        Field::WebLook => w::FIELD_WEB_LOOK.get(),
        Field::BottomLeast => w::FIELD_BOTTOM_LEAST.get(),
        Field::FinishLeast => w::FIELD_FINISH_LEAST.get(),
        Field::ClearLow => w::FIELD_CLEAR_LOW.get(),
        Field::ClearHigh => w::FIELD_CLEAR_HIGH.get(),
        Field::OffsetLook => w::FIELD_OFFSET_LOOK.get(),
        Field::HoneLeave => w::FIELD_HONE_LEAVE.get(),
        Field::FilletSpare => w::FIELD_FILLET_SPARE.get(),
        Field::LedgeLeast => w::FIELD_LEDGE_LEAST.get(),
        Field::GrooveInner => w::FIELD_GROOVE_INNER.get(),
        Field::GrooveOuter => w::FIELD_GROOVE_OUTER.get(),
        Field::GrooveLand => w::FIELD_GROOVE_LAND.get(),
        Field::GasketGrades => w::FIELD_GASKET_GRADES.get(),
        Field::HoneStrokes => w::FIELD_HONE_STROKES.get(),
        Field::GrooveNear => w::FIELD_GROOVE_NEAR.get(),
        Field::RamBore => w::FIELD_RAM_BORE.get(),
        Field::RamHole => w::FIELD_RAM_HOLE.get(),
        Field::RamRated => w::FIELD_RAM_RATED.get(),
        Field::RodD => w::FIELD_ROD_D.get(),
        Field::RodPitch => w::FIELD_ROD_PITCH.get(),
        Field::RodYield => w::FIELD_ROD_YIELD.get(),
        Field::LedgeMost => w::FIELD_LEDGE_MOST.get(),
        Field::FlangeMost => w::FIELD_FLANGE_MOST.get(),
        Field::Stroke => w::FIELD_STROKE.get(),
        Field::Compression => w::FIELD_COMPRESSION.get(),
        Field::PistonD => w::FIELD_PISTON_D.get(),
        Field::PistonLeast => w::FIELD_PISTON_LEAST.get(),
        Field::HoneStroke => w::FIELD_HONE_STROKE.get(),
        Field::HoneTurns => w::FIELD_HONE_TURNS.get(),
        Field::HoneCycles => w::FIELD_HONE_CYCLES.get(),
        Field::BlockOut => w::FIELD_BLOCK_OUT.get(),
        Field::DropOutcome => w::FIELD_DROP_OUTCOME.get(),
        Field::HoursJob => w::FIELD_HOURS_JOB.get(),
        Field::HoursHole => w::FIELD_HOURS_HOLE.get(),
        Field::HourPrice => w::FIELD_HOUR_PRICE.get(),
        Field::SleevePrice => w::FIELD_SLEEVE_PRICE.get(),
        Field::LitrePrice => w::FIELD_LITRE_PRICE.get(),
        Field::OtherPrice => w::FIELD_OTHER_PRICE.get(),
        Field::BathFill => w::FIELD_BATH_FILL.get(),
        Field::StandingLoss => w::FIELD_STANDING_LOSS.get(),
        Field::StandingHours => w::FIELD_STANDING_HOURS.get(),
        Field::RzSleeve => w::FIELD_RZ_SLEEVE.get(),
        Field::RzBore => w::FIELD_RZ_BORE.get(),
        Field::Smoothing => w::FIELD_SMOOTHING.get(),
        Field::RunSleeve => w::FIELD_RUN_SLEEVE.get(),
        Field::RunBlock => w::FIELD_RUN_BLOCK.get(),
        Field::GasPressure => w::FIELD_GAS_PRESSURE.get(),
        Field::Passes => w::FIELD_PASSES.get(),
        Field::CommonHeight => w::FIELD_COMMON_HEIGHT.get(),
        Field::CommonThickness => w::FIELD_COMMON_THICKNESS.get(),
        Field::CommonDepth => w::FIELD_COMMON_DEPTH.get(),
        Field::PriorHome => w::FIELD_PRIOR_HOME.get(),
        Field::HoneRate => w::FIELD_HONE_RATE.get(),
        Field::LastCut => w::FIELD_LAST_CUT.get(),
        Field::ChillShrink => w::FIELD_CHILL_SHRINK.get(),
        Field::RestTime => w::FIELD_REST_TIME.get(),
        Field::BlockNow => w::FIELD_BLOCK_NOW.get(),
        Field::SleevesNow => w::FIELD_SLEEVES_NOW.get(),
        Field::TestStart => w::FIELD_TEST_START.get(),
        Field::TestEnd => w::FIELD_TEST_END.get(),
        Field::TestTime => w::FIELD_TEST_TIME.get(),
        Field::RetestStart => w::FIELD_RETEST_START.get(),
        Field::RetestEnd => w::FIELD_RETEST_END.get(),
        Field::RoomVolume => w::FIELD_ROOM_VOLUME.get(),
        Field::RoomLitres => w::FIELD_ROOM_LITRES.get(),
        Field::AirChanges => w::FIELD_AIR_CHANGES.get(),
        Field::Release => w::FIELD_RELEASE.get(),
        Field::DeckHeight => w::FIELD_DECK_HEIGHT.get(),
        Field::OldBore => w::FIELD_OLD_BORE.get(),
        Field::WallReading => w::FIELD_WALL_READING.get(),
        Field::FlangeOdHere => w::FIELD_FLANGE_OD_HERE.get(),
        Field::Fillet => w::FIELD_FILLET.get(),
        Field::Indicator => w::FIELD_INDICATOR.get(),
        Field::BoredD => w::FIELD_BORED_D.get(),
        Field::CounterboreD => w::FIELD_COUNTERBORE_D.get(),
        Field::ChamferHere => w::FIELD_CHAMFER_HERE.get(),
        Field::ChillTime => w::FIELD_CHILL_TIME.get(),
        Field::ColdOd => w::FIELD_COLD_OD.get(),
        Field::HoldTime => w::FIELD_HOLD_TIME.get(),
        Field::SleeveWarm => w::FIELD_SLEEVE_WARM.get(),
        Field::PistonProud => w::FIELD_PISTON_PROUD.get(),
        Field::GrooveDepth => w::FIELD_GROOVE_DEPTH.get(),
        Field::FinishD => w::FIELD_FINISH_D.get(),
        Field::RingGapNow => w::FIELD_RING_GAP_NOW.get(),
        Field::NominalOd => w::FIELD_NOMINAL_OD.get(),
        Field::SleeveId => w::FIELD_SLEEVE_ID.get(),
        Field::SleeveLength => w::FIELD_SLEEVE_LENGTH.get(),
        Field::NominalFlange => w::FIELD_NOMINAL_FLANGE.get(),
        Field::BlockWall => w::FIELD_BLOCK_WALL.get(),
        Field::JacketFrom => w::FIELD_JACKET_FROM.get(),
        Field::JacketTo => w::FIELD_JACKET_TO.get(),
        Field::HalfWidth => w::FIELD_HALF_WIDTH.get(),
        Field::HeadClamp => w::FIELD_HEAD_CLAMP.get(),
        Field::Shim => w::FIELD_SHIM.get(),
        Field::FitLow => w::FIELD_FIT_LOW.get(),
        Field::FitHigh => w::FIELD_FIT_HIGH.get(),
        Field::RoundLook => w::FIELD_ROUND_LOOK.get(),
        Field::RoundStop => w::FIELD_ROUND_STOP.get(),
        Field::BoreForm => w::FIELD_BORE_FORM.get(),
        Field::EntryLeast => w::FIELD_ENTRY_LEAST.get(),
        Field::TargetProud => w::FIELD_TARGET_PROUD.get(),
        Field::PlannedCut => w::FIELD_PLANNED_CUT.get(),
        Field::CleanUp => w::FIELD_CLEAN_UP.get(),
        Field::Risk => w::FIELD_RISK.get(),
        Field::GapLimit => w::FIELD_GAP_LIMIT.get(),
        Field::TiltLimit => w::FIELD_TILT_LIMIT.get(),
        Field::Confidence => w::FIELD_CONFIDENCE.get(),
        Field::GaugeSleeve => w::FIELD_GAUGE_SLEEVE.get(),
        Field::GaugeBore => w::FIELD_GAUGE_BORE.get(),
        Field::GaugeHeight => w::FIELD_GAUGE_HEIGHT.get(),
        Field::GaugeThickness => w::FIELD_GAUGE_THICKNESS.get(),
        Field::GaugeDepth => w::FIELD_GAUGE_DEPTH.get(),
        Field::FeedSd => w::FIELD_FEED_SD.get(),
        Field::DeckSd => w::FIELD_DECK_SD.get(),
        Field::RoomTemperature => w::FIELD_ROOM_TEMPERATURE.get(),
        Field::DropRoom => w::FIELD_DROP_ROOM.get(),
        Field::LowSpot => w::FIELD_LOW_SPOT.get(),
        Field::DeckCut => w::FIELD_DECK_CUT.get(),
        Field::SleeveOd => w::FIELD_SLEEVE_OD.get(),
        Field::SleeveTemperature => w::FIELD_SLEEVE_TEMPERATURE.get(),
        Field::FlangeThickness => w::FIELD_FLANGE_THICKNESS.get(),
        Field::CounterboreDepth => w::FIELD_COUNTERBORE_DEPTH.get(),
        Field::DeckHere => w::FIELD_DECK_HERE.get(),
        Field::BoreD => w::FIELD_BORE_D.get(),
        Field::BlockTemperature => w::FIELD_BLOCK_TEMPERATURE.get(),
        Field::Carry => w::FIELD_CARRY.get(),
        Field::HomeTimed => w::FIELD_HOME_TIMED.get(),
        Field::DropCarry => w::FIELD_DROP_CARRY.get(),
        Field::HomeNeeded | Field::DropHome => w::FIELD_HOME_NEEDED_DROP_HOME.get(),
        Field::WarmHeight => w::FIELD_WARM_HEIGHT.get(),
        Field::PullGauge => w::FIELD_PULL_GAUGE.get(),
        Field::PullLoaded => w::FIELD_PULL_LOADED.get(),
        Field::PullReleased => w::FIELD_PULL_RELEASED.get(),
        Field::SeatHeight => w::FIELD_SEAT_HEIGHT.get(),
        Field::DropOd => w::FIELD_DROP_OD.get(),
        Field::DropWall => w::FIELD_DROP_WALL.get(),
        Field::DropLength => w::FIELD_DROP_LENGTH.get(),
        Field::DropFit => w::FIELD_DROP_FIT.get(),
        Field::DropBlockWall => w::FIELD_DROP_BLOCK_WALL.get(),
        Field::DropPart => w::PART.get(),
        Field::DropCold => w::COLD_BY.get(),
        Field::DropColdAt => w::FIELD_DROP_COLD_AT.get(),
        Field::DropHeat => w::HEAT_BY.get(),
        Field::DropHeatAt => w::FIELD_DROP_HEAT_AT.get(),
        Field::DropHeatMost => w::FIELD_DROP_HEAT_MOST.get(),
        Field::DropHeatOut => w::FIELD_DROP_HEAT_OUT.get(),
        Field::DropLeast => w::FIELD_DROP_LEAST.get(),
        Field::DropLitrePrice => w::FIELD_DROP_LITRE_PRICE.get(),
        Field::SleeveKind => w::FIELD_SLEEVE_KIND.get(),
        Field::PlainLength => w::FIELD_PLAIN_LENGTH.get(),
        Field::StepDepth => w::FIELD_STEP_DEPTH.get(),
        Field::StepBore => w::FIELD_STEP_BORE.get(),
        Field::GaugeLength => w::FIELD_GAUGE_LENGTH.get(),
        Field::GaugeStep => w::FIELD_GAUGE_STEP.get(),
        Field::DropIcePrice => w::FIELD_DROP_ICE_PRICE.get(),
        Field::FromDeckBefore => w::FIELD_FROM_DECK_BEFORE.get(),
        Field::FromDeckLeast => w::FIELD_FROM_DECK_LEAST.get(),
        Field::FromDeckMost => w::FIELD_FROM_DECK_MOST.get(),
        Field::BlockCutSoFar => w::FIELD_BLOCK_CUT_SO_FAR.get(),
        Field::BlockCutMost => w::FIELD_BLOCK_CUT_MOST.get(),
        Field::DeckFinishKind => w::FIELD_DECK_FINISH_KIND.get(),
        Field::DeckFinishMost => w::FIELD_DECK_FINISH_MOST.get(),
        Field::DeckFinish => w::FIELD_DECK_FINISH.get(),
        Field::FromDeckAfter => w::FIELD_FROM_DECK_AFTER.get(),
        Field::RecutSaid => w::FIELD_RECUT_SAID.get(),
        Field::ShopName => w::FIELD_SHOP_NAME.get(),
        Field::Machinist => w::FIELD_MACHINIST.get(),
        Field::BlockSerial => w::FIELD_BLOCK_SERIAL.get(),
        Field::EngineHours => w::FIELD_ENGINE_HOURS.get(),
        Field::GaugeChecked => w::FIELD_GAUGE_CHECKED.get(),
        Field::SleeveEnds => w::FIELD_SLEEVE_ENDS.get(),
        Field::ProudLow => w::FIELD_PROUD_LOW.get(),
        Field::ProudHigh => w::FIELD_PROUD_HIGH.get(),
        Field::SpreadHole => w::FIELD_SPREAD_HOLE.get(),
        Field::SpreadNeighbour => w::FIELD_SPREAD_NEIGHBOUR.get(),
        Field::SpreadAll => w::FIELD_SPREAD_ALL.get(),
        Field::HeldTorque => w::FIELD_HELD_TORQUE.get(),
        Field::LedgeCutMost => w::FIELD_LEDGE_CUT_MOST.get(),
        Field::LedgeCutStep => w::FIELD_LEDGE_CUT_STEP.get(),
        Field::ShimSizes => w::FIELD_SHIM_SIZES.get(),
        Field::ShimsLeft => w::FIELD_SHIMS_LEFT.get(),
        Field::ShimHere => w::FIELD_SHIM_HERE.get(),
        Field::PlanSleeve => w::FIELD_PLAN_SLEEVE.get(),
        Field::PlanTurn => w::FIELD_PLAN_TURN.get(),
        Field::PlanShim => w::FIELD_PLAN_SHIM.get(),
        Field::PlanCut => w::FIELD_PLAN_CUT.get(),
        Field::PlanHeight => w::FIELD_PLAN_HEIGHT.get(),
        Field::PlanDone => w::FIELD_PLAN_DONE.get(),
        Field::LedgeInner => w::FIELD_LEDGE_INNER.get(),
        Field::InkCheck => w::FIELD_INK_CHECK.get(),
        Field::LedgeFall => w::FIELD_LEDGE_FALL.get(),
        Field::HeldDown => w::FIELD_HELD_DOWN.get(),
    }
}

/// What stands over a list of a field's places.
#[must_use]
pub fn list_title(place: Field) -> &'static str {
    match place {
        Field::LowSpot => w::LIST_TITLE_LOW_SPOT.get(),
        other => field(other),
    }
}

const LEVELS: [crate::words::Word; 3] = [w::LEVELS_TOP, w::LEVELS_MIDDLE, w::LEVELS_BOTTOM];
const CLOCKS: [u8; 4] = [12, 3, 6, 9];

/// Level and clock point of a place round the clock at three levels.
#[must_use]
pub fn round_place(index: u8) -> (&'static str, String) {
    let clock = CLOCKS[usize::from(index) % 4];
    (
        LEVELS[usize::from(index / 4) % 3].get(),
        w::RoundPlace { clock: &clock }.say(),
    )
}

/// The label of one of a field's places; empty where it has but one.
#[must_use]
pub fn place(field: Field, index: u8) -> String {
    match field.spec().places {
        Places::One => String::new(),
        Places::Ends => {
            [w::PLACE_ENDS_FRONT.get(), w::PLACE_ENDS_REAR.get()][usize::from(index) % 2].to_owned()
        }
        Places::Rounds => {
            let (level, clock) = round_place(index);
            format!("{level}, {clock}")
        }
        Places::Clocks => w::PlaceClocks {
            clocks: &CLOCKS[usize::from(index) % 4],
        }
        .say(),
        Places::Levels => {
            let axis = if index.is_multiple_of(2) {
                w::PLACE_LEVELS_AXIS_ACROSS.get()
            } else {
                w::PLACE_LEVELS_AXIS_ALONG.get()
            };
            format!("{}, {axis}", LEVELS[usize::from(index / 2) % 3])
        }
        Places::FromDeck => FromDeck::ALL
            .get(usize::from(index))
            .map_or_else(String::new, |item| deck_size(*item).to_owned()),
        Places::Gauges => GAUGES_CHECKED
            .get(usize::from(index))
            .map_or_else(String::new, |gauge| super::names::field(*gauge).to_owned()),
        Places::List(_) if field == Field::LowSpot => {
            let side = if index.is_multiple_of(2) {
                w::PLACE_LIST_SIDE_LEFT.get()
            } else {
                w::PLACE_LIST_SIDE_RIGHT.get()
            };
            w::PlaceListRow {
                index: &(index / 2 + 1),
                side: &side,
            }
            .say()
        }
        Places::List(_) if matches!(field, Field::ShimSizes | Field::ShimsLeft) => {
            w::PlaceListShim {
                index: &(index + 1),
            }
            .say()
        }
        Places::List(_) if field == Field::PlanDone => [
            w::PLACE_LIST_CUT.get(),
            w::PLACE_LIST_SHIM_2.get(),
            w::PLACE_LIST_SLEEVE.get(),
        ][usize::from(index) % 3]
            .to_owned(),
        Places::List(_) if field == Field::GasketGrades => w::PlaceListGrade {
            index: &(index + 1),
        }
        .say(),
        Places::List(_) if field == Field::RingGapNow => w::PlaceListRing {
            index: &(index + 1),
        }
        .say(),
        Places::List(_) => format!("{} {}", w::PULL.get().to_lowercase(), index + 1),
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
            return ends.map_or("", |ends| super::proud::sleeve_ends(*ends));
        }
        Field::InkCheck => {
            let inked = Inked::ALL.get(index);
            return inked.map_or("", |inked| super::ledge::inked(*inked));
        }
        Field::HeldDown => {
            let held = HeldDown::ALL.get(index);
            return held.map_or("", |held| super::proud::held_down(*held));
        }
        Field::DropOutcome => {
            let outcomes = [
                w::DROP_OUTCOME_FREE,
                w::DROP_OUTCOME_DRAGGED,
                w::DROP_OUTCOME_STUCK,
            ];
            return outcomes.get(index).map_or("", |word| word.get());
        }
        _ => {}
    }
    // Parts and colds are named by `part`; Ra and Rz are so everywhere.
    field.choices().get(index).copied().unwrap_or_default()
}

/// How the sleeves of a job stand.
#[must_use]
pub fn sleeve_kind(kind: SleeveKind) -> &'static str {
    match kind {
        SleeveKind::Flanged => w::SLEEVE_KIND_FLANGED.get(),
        SleeveKind::OnStep => w::SLEEVE_KIND_ON_STEP.get(),
        SleeveKind::ByFit => w::SLEEVE_KIND_BY_FIT.get(),
    }
}

/// What heights that are there are judged by, beside the choice.
#[must_use]
pub fn judged_as(kind: SleeveKind) -> String {
    let by = match kind {
        SleeveKind::Flanged => w::JUDGED_AS_BY_FLANGED.get(),
        SleeveKind::OnStep => w::JUDGED_AS_BY_ON_STEP.get(),
        SleeveKind::ByFit => w::JUDGED_AS_BY_FIT.get(),
    };
    w::JudgedAs { by: &by }.say()
}

#[must_use]
pub fn more_than(value: &str) -> String {
    w::MoreThan { value: &value }.say()
}

#[must_use]
pub fn less_than(value: &str) -> String {
    w::LessThan { value: &value }.say()
}

/// How many cylinders have a step behind them.
#[must_use]
pub fn cylinders_done(done: usize, all: usize) -> String {
    w::CylindersDone {
        done: &done,
        all: &all,
    }
    .say()
}

/// A name in the middle of a sentence: small letters, but for what the shop writes in
/// capitals (OD, Rz).
#[must_use]
pub fn in_sentence(name: &str) -> String {
    let words = name.split(' ').map(|word| {
        let capitals = word.chars().filter(|c| c.is_uppercase()).count();
        if capitals > 1 || matches!(word.as_bytes(), [b'R', b'a' | b'z']) {
            word.to_owned()
        } else {
            word.to_lowercase()
        }
    });
    words.collect::<Vec<_>>().join(" ")
}
