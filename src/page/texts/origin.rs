//! Where a number comes from, in words, in symbols, and by whom.

use crate::show;
use crate::words::made as w;
use coldseat_core::ask::{
    Calculation, Decides, Flag, Input, MaterialId, Measure, OrderItem, ShrinkBy, SleeveKind, Trust,
    UnitSystem, format,
};

/// A calculation: words, symbols, source.
#[must_use]
pub fn formula(calculation: Calculation) -> [&'static str; 3] {
    match calculation {
        Calculation::None => ["", "", ""],
        Calculation::Estimate => [
            w::FORMULA_ESTIMATE_HOURS_TIMES_THE.get(),
            w::FORMULA_ESTIMATE_PRICE_H_JOB.get(),
            w::FORMULA_ESTIMATE_THE_SHOP_S.get(),
        ],
        Calculation::Heights => [
            w::FORMULA_HEIGHTS_HIGHEST_LESS_LOWEST.get(),
            w::FORMULA_HEIGHTS_MAX_H_MEAN.get(),
            w::FORMULA_HEIGHTS_DIRECT_READINGS_LIMITS.get(),
        ],
        Calculation::Apart => [
            w::FORMULA_APART_TEMPERATURE_OF_THE.get(),
            w::FORMULA_APART_T_BLOCK_T.get(),
            w::FORMULA_APART_DIRECT_READING_LIMIT.get(),
        ],
        Calculation::PressureDrop => [
            w::FORMULA_PRESSURE_DROP_WHAT_THE_PRESSURE.get(),
            w::FORMULA_PRESSURE_DROP_P_START_P.get(),
            w::FORMULA_PRESSURE_DROP_DIRECT_READING_LIMIT.get(),
        ],
        Calculation::DatumTilt => [
            w::FORMULA_DATUM_TILT_DECK_HEIGHT_AT.get(),
            w::FORMULA_DATUM_TILT_H_FRONT_H.get(),
            w::FORMULA_DATUM_TILT_DIRECT_READING_LIMIT.get(),
        ],
        Calculation::Wear => [
            w::FORMULA_WEAR_LARGEST_LESS_SMALLEST.get(),
            w::FORMULA_WEAR_MAX_D_MIN.get(),
            w::FORMULA_WEAR_READINGS_THE_TERMS.get(),
        ],
        Calculation::WallLeft => [
            w::FORMULA_WALL_LEFT_WALL_BY_GAUGE.get(),
            w::FORMULA_WALL_LEFT_W_LEFT_W.get(),
            w::FORMULA_WALL_LEFT_GEOMETRY_LIMITS_FROM.get(),
        ],
        Calculation::Choose => [
            w::FORMULA_CHOOSE_PITCH_LESS_COUNTERBORE.get(),
            w::FORMULA_CHOOSE_WEB_PITCH_D.get(),
            w::FORMULA_CHOOSE_GEOMETRY_LIMITS_FROM.get(),
        ],
        Calculation::Offset => [
            w::FORMULA_OFFSET_HALF_THE_DIFFERENCE.get(),
            w::FORMULA_OFFSET_E_SQRT_R12.get(),
            w::FORMULA_OFFSET_GEOMETRY.get(),
        ],
        Calculation::HoneStock => [
            w::FORMULA_HONE_STOCK_TARGET_BORE_LESS.get(),
            w::FORMULA_HONE_STOCK_DS_FIT.get(),
            w::FORMULA_HONE_STOCK_GEOMETRY_STOCK_FOR.get(),
        ],
        Calculation::CounterboreClearance => [
            w::FORMULA_COUNTERBORE_CLEARANCE_COUNTERBORE_DIAMETER_LESS.get(),
            w::FORMULA_COUNTERBORE_CLEARANCE_D_CB_D.get(),
            w::FORMULA_COUNTERBORE_CLEARANCE_GEOMETRY_LIMITS_FROM.get(),
        ],
        Calculation::Chamfer => [
            w::FORMULA_CHAMFER_OF_THE.get(),
            w::FORMULA_CHAMFER_FILLET.get(),
            w::FORMULA_CHAMFER_GEOMETRY_LIMIT_FROM.get(),
        ],
        Calculation::Oxygen => [
            w::FORMULA_OXYGEN_NITROGEN_BOILS_TO.get(),
            w::FORMULA_OXYGEN_C_0_2095.get(),
            w::FORMULA_OXYGEN_MASS_BALANCE_OF.get(),
        ],
        Calculation::Chill => [
            w::FORMULA_CHILL_THE_WALL_OF.get(),
            w::FORMULA_CHILL_T_INTEGRAL_OF.get(),
            w::FORMULA_CHILL_BOILING_CURVE_OF.get(),
        ],
        Calculation::Warmed => [
            w::FORMULA_WARMED_TEMPERATURE_OF_THE.get(),
            w::FORMULA_WARMED_T_SLEEVE_T.get(),
            w::FORMULA_WARMED_DIRECT_READING_LIMIT.get(),
        ],
        Calculation::Protrusion => [
            w::FORMULA_PROTRUSION_COMPRESSED_GASKET_LESS.get(),
            w::FORMULA_PROTRUSION_ROOM_GASKET_MAX.get(),
            w::FORMULA_PROTRUSION_GEOMETRY_THE_LEAST.get(),
        ],
        Calculation::Groove => [
            w::FORMULA_GROOVE_DEPTH_LESS.get(),
            w::FORMULA_GROOVE_DEPTH_TARGET_H.get(),
            w::FORMULA_GROOVE_GEOMETRY_RING_AND.get(),
        ],
        Calculation::Finish => [
            w::FORMULA_FINISH_FINISHED_BORE_LESS.get(),
            w::FORMULA_FINISH_STOCK_D_FINAL.get(),
            w::FORMULA_FINISH_GEOMETRY_PROFILE_IN.get(),
        ],
        Calculation::RingGap => [
            w::FORMULA_RING_GAP_THE_LEAST_GAP.get(),
            w::FORMULA_RING_GAP_PI_DD.get(),
            w::FORMULA_RING_GAP_GEOMETRY_LIMITS_ARE.get(),
        ],
        Calculation::SleeveForm => [
            w::FORMULA_SLEEVE_FORM_LARGEST_LESS_SMALLEST.get(),
            w::FORMULA_SLEEVE_FORM_MAX_D_MIN.get(),
            w::FORMULA_SLEEVE_FORM_READINGS_THE_TERMS.get(),
        ],
        Calculation::Counterbore => [
            w::FORMULA_COUNTERBORE_TARGET_DEPTH_LESS.get(),
            w::FORMULA_COUNTERBORE_C_T_P.get(),
            w::FORMULA_COUNTERBORE_GEOMETRY_AND_NORMAL.get(),
        ],
        Calculation::StepDepth => [
            w::FORMULA_STEP_DEPTH_TARGET_DEPTH_LESS.get(),
            w::FORMULA_STEP_DEPTH_D_L_P.get(),
            w::FORMULA_STEP_DEPTH_GEOMETRY_AND_NORMAL.get(),
        ],
        Calculation::Fit => [
            w::FORMULA_FIT_SLEEVE_LESS_BORE.get(),
            w::FORMULA_FIT_DS_1.get(),
            w::FORMULA_FIT_REFERENCE_TEMPERATURE_ISO.get(),
        ],
        Calculation::ColdDrop => [
            w::FORMULA_COLD_DROP_HEAT_FLOWS_INTO.get(),
            w::FORMULA_COLD_DROP_H_K_AIR.get(),
            w::FORMULA_COLD_DROP_OWN_SOLUTION_CHECKED.get(),
        ],
        Calculation::Height => [
            w::FORMULA_HEIGHT_AS_MEASURED.get(),
            w::FORMULA_HEIGHT_H_T_SHIM.get(),
            w::FORMULA_HEIGHT_GEOMETRY_CONTRACTION_SEE.get(),
        ],
        Calculation::Pulls => [
            w::FORMULA_PULLS_HEIGHT_AFTER_THE.get(),
            w::FORMULA_PULLS_GAP_H_T.get(),
            w::FORMULA_PULLS_GEOMETRY_AND_NORMAL.get(),
        ],
        Calculation::Seat => [
            w::FORMULA_SEAT_HEIGHT_AT_THE.get(),
            w::FORMULA_SEAT_GAP_H_T.get(),
            w::FORMULA_SEAT_GEOMETRY_AND_NORMAL.get(),
        ],
        Calculation::Deck => [
            w::FORMULA_DECK_THE_DEEPEST_LOW.get(),
            w::FORMULA_DECK_R_LOW_CLEAN.get(),
            w::FORMULA_DECK_GEOMETRY_USUAL_CUT.get(),
        ],
    }
}

/// A value that stands for several places.
#[must_use]
pub fn mean_of(value: &str, places: u8, decides: Decides) -> String {
    match (places, decides) {
        (0 | 1, _) => value.to_owned(),
        (_, Decides::Mean) => w::MeanOfMean {
            value: &value,
            places: &places,
        }
        .say(),
        (_, Decides::Least) => w::MeanOfLeast {
            value: &value,
            places: &places,
        }
        .say(),
        (_, Decides::Largest) => w::MeanOfLargest {
            value: &value,
            places: &places,
        }
        .say(),
    }
}

/// A limit that stands as a new engine has it.
#[must_use]
pub fn as_usual(value: &str) -> String {
    w::AsUsual { value: &value }.say()
}

/// How a check before ordering is calculated.
#[must_use]
pub fn order_formula(item: OrderItem, kind: SleeveKind) -> &'static str {
    match (item, kind) {
        (OrderItem::Web, SleeveKind::OnStep | SleeveKind::ByFit) => {
            w::ORDER_FORMULA_WEB_ON_STEP.get()
        }
        (OrderItem::Bottom, SleeveKind::OnStep) => w::ORDER_FORMULA_BOTTOM_ON_STEP.get(),
        (OrderItem::Bottom, SleeveKind::ByFit) => w::ORDER_FORMULA_BOTTOM_BY_FIT.get(),
        (OrderItem::Ledge, SleeveKind::OnStep) => w::ORDER_FORMULA_LEDGE_ON_STEP.get(),
        (OrderItem::Wall, _) => w::ORDER_FORMULA_WALL.get(),
        (OrderItem::Web, _) => w::ORDER_FORMULA_WEB.get(),
        (OrderItem::Bottom, _) => w::ORDER_FORMULA_BOTTOM.get(),
        (OrderItem::Ledge, _) => w::ORDER_FORMULA_LEDGE.get(),
        (OrderItem::FinishStock, _) => w::ORDER_FORMULA_FINISH_STOCK.get(),
        (OrderItem::GrooveInside, _) => w::ORDER_FORMULA_GROOVE_INSIDE.get(),
        (OrderItem::GrooveOutside, _) => w::ORDER_FORMULA_GROOVE_OUTSIDE.get(),
        (OrderItem::GrooveFloor, _) => w::ORDER_FORMULA_GROOVE_FLOOR.get(),
    }
}

/// What an input was moved by, and what that step is.
#[must_use]
pub fn step_by(input: &Input, units: UnitSystem) -> String {
    let by = moved(input.by, input.field.spec().measure, units);
    let by = match input.trust {
        Trust::Gauge => w::StepByGauge { by: &by }.say(),
        Trust::Reckoned => w::StepByReckoned { by: &by }.say(),
        Trust::Trial => by,
    };
    if input.alone {
        w::StepBy { by: &by }.say()
    } else {
        by
    }
}

/// What an input does to the answer.
#[must_use]
pub fn moves(by: &str, effect: Option<&str>) -> String {
    match effect {
        Some(effect) => w::MovesSome {
            by: &by,
            effect: &effect,
        }
        .say(),
        None => w::MovesNone { by: &by }.say(),
    }
}

/// A difference in the person's unit, with one digit more than a reading.
#[must_use]
pub fn moved(si: f64, measure: Measure, units: UnitSystem) -> String {
    let unit = measure.unit(units);
    match measure {
        Measure::Temperature => show::difference(si, unit),
        Measure::Plain | Measure::Choice | Measure::Words => show::fixed(si, 3),
        Measure::Time => w::MovedTime {
            si: &show::fixed(si, 1),
        }
        .say(),
        Measure::Pressure | Measure::Force | Measure::Volume | Measure::Torque => {
            show::number(si, unit)
        }
        Measure::Length | Measure::Roughness => format!(
            "{} {}",
            show::fixed(unit.from_si(si), format::decimals(unit) + 1),
            unit.symbol()
        ),
    }
}

/// What a sleeve's shrink is taken from, where not from the table below.
#[must_use]
pub fn shrink_by(by: ShrinkBy) -> Option<&'static str> {
    match by {
        ShrinkBy::Table => None,
        ShrinkBy::Shop => Some(w::SHRINK_BY_SHOP.get()),
        ShrinkBy::Sleeve => Some(w::SHRINK_BY_SLEEVE.get()),
    }
}

/// A material: how far its contraction is known, and by whom.
#[must_use]
pub fn material(id: MaterialId) -> String {
    let entry = id.entry();
    let c = &entry.chill_contraction;
    let percent = |band: f64| show::fixed(100.0 * (band / c.value).abs(), 0);
    let band = if c.band.total_cmp(&c.band_low).is_eq() {
        format!("\u{b1}{}", percent(c.band))
    } else {
        format!("+{} \u{2212}{}", percent(c.band), percent(c.band_low))
    };
    w::Material {
        name: &super::material_name(id),
        flag: &known(c.flag),
        source: &c.source,
        band: &band,
    }
    .say()
}

/// How a number of a material is known.
fn known(flag: Flag) -> &'static str {
    match flag {
        Flag::Read => w::FLAG_READ.get(),
        Flag::Memory => w::FLAG_MEMORY.get(),
        Flag::Computed => w::FLAG_COMPUTED.get(),
        Flag::Estimate => w::FLAG_ESTIMATE.get(),
    }
}
