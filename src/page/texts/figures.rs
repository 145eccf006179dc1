//! Names of the one number of a step and of the further ones.

use crate::words::made as w;
use coldseat_core::ask::{Detail, Figure, UnitSystem};

/// The word before the one number; `si` with the sign it goes by (`OneNumber::sense`).
#[must_use]
pub fn figure(figure: Figure, si: f64) -> &'static str {
    match figure {
        Figure::Price => w::FIGURE_PRICE.get(),
        Figure::Apart => w::FIGURE_APART.get(),
        Figure::PressureLost => w::FIGURE_PRESSURE_LOST.get(),
        Figure::DatumLean => w::FIGURE_DATUM_LEAN.get(),
        Figure::Wear => w::FIGURE_WEAR.get(),
        Figure::WallLeft if si < 0.0 => w::FIGURE_WALL_LEFT_BREAKS_THROUGH_BY.get(),
        Figure::DeckCut => w::CUT.get(),
        Figure::WallLeft => w::FIGURE_WALL_LEFT_THINNEST_WALL_LEFT.get(),
        Figure::WebLeft if si < 0.0 => w::FIGURE_WEB_LEFT_FLANGES_OVERLAP_BY.get(),
        Figure::WebLeft => w::FIGURE_WEB_LEFT_WEB_LEFT_BETWEEN.get(),
        Figure::Offset => w::FIGURE_OFFSET.get(),
        Figure::HoneStock if si < 0.0 => w::FIGURE_HONE_STOCK_PAST_THE_TARGET.get(),
        Figure::HoneStock => w::FIGURE_HONE_STOCK_LEFT_FOR_THE.get(),
        Figure::FlangeRoom if si < 0.0 => w::FIGURE_FLANGE_ROOM_FLANGE_LARGER_THAN.get(),
        Figure::FlangeRoom => w::FIGURE_FLANGE_ROOM_AROUND_THE.get(),
        Figure::FilletRoom if si < 0.0 => w::FIGURE_FILLET_ROOM_FILLET_OVER_CHAMFER.get(),
        Figure::FilletRoom => w::FIGURE_FILLET_ROOM_CHAMFER_OVER_FILLET.get(),
        Figure::OxygenLeft => w::FIGURE_OXYGEN_LEFT.get(),
        Figure::Quiet => w::FIGURE_QUIET.get(),
        Figure::WarmApart => w::FIGURE_WARM_APART.get(),
        Figure::HeadRoom => w::FIGURE_HEAD_ROOM.get(),
        Figure::PistonProud if si < 0.0 => w::FIGURE_PISTON_PROUD_PISTON_LOW_BY.get(),
        Figure::PistonProud => w::FIGURE_PISTON_PROUD_PISTON_PROUD_AT.get(),
        Figure::GrooveOff if si < 0.0 => w::FIGURE_GROOVE_OFF_GROOVE_STILL_TO.get(),
        Figure::GrooveOff => w::FIGURE_GROOVE_OFF_GROOVE_DEEPER_THAN.get(),
        Figure::FinishStock if si < 0.0 => w::FIGURE_FINISH_STOCK_PAST_THE_SIZE.get(),
        Figure::FinishStock => w::FIGURE_FINISH_STOCK_LEFT_DIAMETER.get(),
        Figure::LeastGap => w::FIGURE_LEAST_GAP.get(),
        Figure::OutOfRound => w::FIGURE_OUT_OF_ROUND.get(),
        Figure::StillToCut if si < 0.0 => w::FIGURE_STILL_TO_CUT_PAST_THE_DEPTH.get(),
        Figure::StillToCut => w::FIGURE_STILL_TO_CUT_STILL_TO_CUT.get(),
        Figure::Fit if si < 0.0 => w::FIGURE_FIT_LOOSE_BY.get(),
        Figure::Fit => w::FIGURE_FIT.get(),
        Figure::AbovePredicted if si < 0.0 => w::FIGURE_ABOVE_PREDICTED_BELOW_ITS_LEDGE.get(),
        Figure::AbovePredicted => w::FIGURE_ABOVE_PREDICTED_ABOVE_ITS_SEAT.get(),
        Figure::AboveTarget if si < 0.0 => w::FIGURE_ABOVE_TARGET_TOO_LOW_BY.get(),
        Figure::AboveTarget => w::FIGURE_ABOVE_TARGET_ABOVE_ITS_MARK.get(),
        Figure::GapAfterPull | Figure::Gap if si < 0.0 => w::FIGURE_GAP_AFTER_PULL_GAP.get(),
        Figure::GapAfterPull => w::FIGURE_GAP_AFTER_PULL.get(),
        Figure::Gap => w::FIGURE_GAP.get(),
        Figure::ProudSpread => w::FIGURE_PROUD_SPREAD.get(),
    }
}

/// What a further number of a step is.
#[must_use]
pub fn detail(detail: Detail) -> &'static str {
    match detail {
        Detail::Hours => w::DETAIL_HOURS.get(),
        Detail::Sleeves => w::DETAIL_SLEEVES.get(),
        Detail::SleevesNitrogen => w::DETAIL_SLEEVES_NITROGEN.get(),
        Detail::BathFill => w::DETAIL_BATH_FILL.get(),
        Detail::StoodAway => w::DETAIL_STOOD_AWAY.get(),
        Detail::Strokes => w::DETAIL_STROKES.get(),
        Detail::Nitrogen => w::DETAIL_NITROGEN.get(),
        Detail::Thinnest => w::DETAIL_THINNEST.get(),
        Detail::SleeveWall => w::DETAIL_SLEEVE_WALL.get(),
        Detail::FlatDepth => w::DETAIL_FLAT_DEPTH.get(),
        Detail::CutterSetting => w::DETAIL_CUTTER_SETTING.get(),
        Detail::BoreWanted => w::DETAIL_BORE_WANTED.get(),
        Detail::OffsetUp => w::DETAIL_OFFSET_UP.get(),
        Detail::OffsetRight => w::DETAIL_OFFSET_RIGHT.get(),
        Detail::Sudden => w::DETAIL_SUDDEN.get(),
        Detail::LitresAtLimit => w::DETAIL_LITRES_AT_LIMIT.get(),
        Detail::QuietLow => w::DETAIL_QUIET_LOW.get(),
        Detail::QuietHigh => w::DETAIL_QUIET_HIGH.get(),
        Detail::BathLitres => w::DETAIL_BATH_LITRES.get(),
        Detail::Largest => w::DETAIL_LARGEST.get(),
        Detail::Smallest => w::DETAIL_SMALLEST.get(),
        Detail::Round => w::DETAIL_ROUND.get(),
        Detail::Taper => w::DETAIL_TAPER.get(),
        Detail::GrooveWanted => w::DETAIL_GROOVE_WANTED.get(),
        Detail::FloorLeft => w::DETAIL_FLOOR_LEFT.get(),
        Detail::GasketTaken => w::DETAIL_GASKET_TAKEN.get(),
        Detail::Compression => w::DETAIL_COMPRESSION.get(),
        Detail::CloseIn => w::DETAIL_CLOSE_IN.get(),
        Detail::BoreTo => w::DETAIL_BORE_TO.get(),
        Detail::GripLeft => w::DETAIL_GRIP_LEFT.get(),
        Detail::PistonRoom => w::DETAIL_PISTON_ROOM.get(),
        Detail::HatchIncluded => w::DETAIL_HATCH_INCLUDED.get(),
        Detail::HatchHorizontal => w::DETAIL_HATCH_HORIZONTAL.get(),
    }
}

/// The unit of a one number that is no length.
#[must_use]
pub fn figure_unit(figure: Figure, units: UnitSystem) -> Option<&'static str> {
    match figure {
        Figure::Apart | Figure::WarmApart => Some(match units {
            UnitSystem::Inch => w::FIGURE_UNIT_APART_WARM_APART_INCH.get(),
            UnitSystem::Metric => w::FIGURE_UNIT_APART_WARM_APART_METRIC.get(),
        }),
        Figure::PressureLost | Figure::OxygenLeft => Some("%"),
        _ => None,
    }
}
