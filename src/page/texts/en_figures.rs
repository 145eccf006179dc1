//! English: names of the one number of a step and of the further ones.

use coldseat_core::ask::{Detail, Figure, UnitSystem};

/// The word before the one number; `si` with the sign it goes by (`OneNumber::sense`).
#[must_use]
pub const fn figure(figure: Figure, si: f64) -> &'static str {
    match figure {
        Figure::Price => "price",
        Figure::Apart => "block and sleeves apart",
        Figure::PressureLost => "pressure lost",
        Figure::DatumLean => "deck leans, end to end",
        Figure::Wear => "old bore varies by",
        Figure::WallLeft if si < 0.0 => "breaks through by",
        Figure::DeckCut => super::en::CUT,
        Figure::WallLeft => "thinnest wall left",
        Figure::WebLeft if si < 0.0 => "flanges overlap by",
        Figure::WebLeft => "web left between the holes",
        Figure::Offset => "bar off the old center",
        Figure::HoneStock if si < 0.0 => "past the target bore by",
        Figure::HoneStock => "left for the hone (diameter)",
        Figure::FlangeRoom if si < 0.0 => "flange larger than its counterbore by",
        Figure::FlangeRoom => "room around the flange (diameter)",
        Figure::FilletRoom if si < 0.0 => "fillet over chamfer",
        Figure::FilletRoom => "chamfer over fillet",
        Figure::OxygenLeft => "least oxygen in the room",
        Figure::Quiet => "quiet after about",
        Figure::WarmApart => "sleeve and shop apart",
        Figure::HeadRoom => "room between piston and head",
        Figure::PistonProud if si < 0.0 => "piston low by",
        Figure::PistonProud => "piston proud at most",
        Figure::GrooveOff if si < 0.0 => "groove still to cut",
        Figure::GrooveOff => "groove deeper than target by",
        Figure::FinishStock if si < 0.0 => "past the size by",
        Figure::FinishStock => "stock left (diameter)",
        Figure::LeastGap => "least ring gap",
        Figure::OutOfRound => "out of round near the top",
        Figure::StillToCut if si < 0.0 => "past the depth by",
        Figure::StillToCut => "still to cut",
        Figure::Fit if si < 0.0 => "loose by",
        Figure::Fit => "fit",
        Figure::AbovePredicted if si < 0.0 => "below its ledge by",
        Figure::AbovePredicted => "above its seat",
        Figure::AboveTarget if si < 0.0 => "too low by",
        Figure::AboveTarget => "above its mark",
        Figure::GapAfterPull | Figure::Gap if si < 0.0 => "below its ledge by",
        Figure::GapAfterPull => "gap after the last pull",
        Figure::Gap => "gap at its ledge",
        Figure::ProudSpread => "means of all holes apart",
    }
}

/// What a further number of a step is.
#[must_use]
pub const fn detail(detail: Detail) -> &'static str {
    match detail {
        Detail::Hours => "hours of work",
        Detail::Sleeves => "sleeves to buy",
        Detail::SleevesNitrogen => "nitrogen the sleeves boil off (liters)",
        Detail::BathFill => "nitrogen to fill the bath (liters)",
        Detail::StoodAway => "nitrogen lost by standing (liters)",
        Detail::Strokes => "hone strokes for it, by your rate",
        Detail::Nitrogen => "nitrogen to buy (liters, a quarter to spare)",
        Detail::Thinnest => "thinnest at",
        Detail::SleeveWall => "sleeve wall",
        Detail::FlatDepth => "flat on each flange",
        Detail::CutterSetting => "micrometer over spindle and cutter",
        Detail::BoreWanted => "bore to (diameter)",
        Detail::OffsetUp => "toward 12 o'clock",
        Detail::OffsetRight => "toward 3 o'clock",
        Detail::Sudden => "all at once (%)",
        Detail::LitresAtLimit => "liters that take it to 19.5 % at once",
        Detail::QuietLow => "at the earliest",
        Detail::QuietHigh => "at the latest",
        Detail::BathLitres => "boils off (liters)",
        Detail::Largest => "largest",
        Detail::Smallest => "smallest",
        Detail::Round => "out of round, worst level",
        Detail::Taper => "taper",
        Detail::GrooveWanted => "target depth",
        Detail::FloorLeft => "flange left under the groove",
        Detail::GasketTaken => "with the gasket of",
        Detail::Compression => "compression ratio after the cut",
        Detail::CloseIn => "the fit closes the inside by (diameter)",
        Detail::BoreTo => "bore the fitted sleeve to (diameter)",
        Detail::GripLeft => "grip left after boring (%)",
        Detail::PistonRoom => "room around the piston (diameter)",
        Detail::HatchIncluded => "cross-hatch, included angle (degrees)",
        Detail::HatchHorizontal => "each scratch to the horizontal (degrees)",
    }
}

/// The unit of a one number that is no length.
#[must_use]
pub const fn figure_unit(figure: Figure, units: UnitSystem) -> Option<&'static str> {
    match figure {
        Figure::Apart | Figure::WarmApart => Some(match units {
            UnitSystem::Inch => "\u{b0}F",
            UnitSystem::Metric => "\u{b0}C",
        }),
        Figure::PressureLost | Figure::OxygenLeft => Some("%"),
        _ => None,
    }
}
