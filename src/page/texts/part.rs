//! The cold drop without a job: parts, colds, heats and what stands
//! beside the answer.

use crate::words::made as w;
use coldseat_core::ask::{Cold, Heat, MaterialId, Part};

/// What goes in.
#[must_use]
pub fn part(part: Part) -> &'static str {
    match part {
        Part::FlangedSleeve => w::PART_FLANGED_SLEEVE.get(),
        Part::PlainSleeve => w::PART_PLAIN_SLEEVE.get(),
        Part::Bushing => w::PART_BUSHING.get(),
        Part::SeatRing => w::PART_SEAT_RING.get(),
        Part::BearingRing => w::PART_BEARING_RING.get(),
        Part::Pin => w::PART_PIN.get(),
    }
}

/// What makes it cold.
#[must_use]
pub fn cold(cold: Cold) -> &'static str {
    match cold {
        Cold::Nitrogen => w::COLD_NITROGEN.get(),
        Cold::DryIceAlcohol => w::COLD_DRY_ICE_ALCOHOL.get(),
        Cold::DryIcePacked => w::COLD_DRY_ICE_PACKED.get(),
        Cold::Freezer => w::COLD_FREEZER.get(),
        Cold::Outdoors => w::COLD_OUTDOORS.get(),
        Cold::AsItIs => w::COLD_AS_IT_IS.get(),
    }
}

/// What warms the housing.
#[must_use]
pub fn heat(heat: Heat) -> &'static str {
    match heat {
        Heat::AsItIs => w::HEAT_AS_IT_IS.get(),
        Heat::Oven => w::HEAT_OVEN.get(),
        Heat::HotPlate => w::HEAT_HOT_PLATE.get(),
        Heat::Water => w::HEAT_WATER.get(),
    }
}

/// One of the ways side by side.
#[must_use]
pub fn way(by: Cold, warmed: Heat) -> String {
    match (by, warmed) {
        (_, Heat::AsItIs) => cold(by).to_owned(),
        (Cold::AsItIs, _) => w::WayAsItIs {
            warmed: &heat(warmed),
        }
        .say(),
        _ => w::WayOther {
            by: &cold(by),
            warmed: &heat(warmed).to_lowercase(),
        }
        .say(),
    }
}

/// What the housing is called with this part.
#[must_use]
pub fn housing(part: Part) -> &'static str {
    if part.is_sleeve() {
        w::HOUSING_BLOCK.get()
    } else {
        w::HOUSING_2.get()
    }
}

/// What the drawing of a part shows.
#[must_use]
pub fn part_label(name: &str, cold: &str, warm: &str, clearance: &str) -> String {
    w::PartLabel {
        name: &name,
        cold: &cold,
        warm: &warm,
        clearance: &clearance,
    }
    .say()
}

/// Below that drawing.
#[must_use]
pub fn part_caption() -> String {
    w::PART_CAPTION.get().to_owned()
}

/// A time and its ends.
#[must_use]
pub fn time_span(usual: &str, quick: &str, slow: &str) -> String {
    w::TimeSpan {
        usual: &usual,
        quick: &quick,
        slow: &slow,
    }
    .say()
}

/// Nitrogen that a part takes.
#[must_use]
pub fn litres(amount: &str) -> String {
    w::Litres { amount: &amount }.say()
}

/// Dry ice that a part takes.
#[must_use]
pub fn dry_ice(amount: &str) -> String {
    w::DryIce { amount: &amount }.say()
}

/// Not even at the end of the range.
#[must_use]
pub fn never_enough(clearance: &str) -> String {
    w::NeverEnough {
        clearance: &clearance,
    }
    .say()
}

/// Which fit still goes.
#[must_use]
pub fn up_to(fit: &str) -> String {
    w::UpTo { fit: &fit }.say()
}

/// No fit goes.
#[must_use]
pub fn only_loose(clearance: &str) -> String {
    w::OnlyLoose {
        clearance: &clearance,
    }
    .say()
}

/// How a bore closes.
#[must_use]
pub fn closes(by: &str, before: &str, after: &str) -> String {
    w::Closes {
        by: &by,
        before: &before,
        after: &after,
    }
    .say()
}

/// A housing warmed beyond its limit.
#[must_use]
pub fn too_hot(most: &str) -> String {
    w::TooHot { most: &most }.say()
}

pub const FINISHED_COLUMNS: [crate::words::Word; 9] = [
    w::FINISHED_COLUMNS_CYLINDER,
    w::FINISHED_COLUMNS_THINNEST_WALL,
    w::FINISHED_COLUMNS_COUNTERBORE_DIA,
    w::FINISHED_COLUMNS_GROOVE_DEPTH,
    w::FINISHED_COLUMNS_FINISHED_BORE,
    w::FINISHED_COLUMNS_OUT_OF_ROUND,
    w::FINISHED_COLUMNS_TAPER,
    w::FINISHED_COLUMNS_RING_GAPS,
    w::FINISHED_COLUMNS_PISTON_PROUD,
];

/// A pressure test as it was read.
#[must_use]
pub fn pressure_test(which: &str, from: &str, to: &str, time: Option<&str>) -> String {
    match time {
        Some(time) => w::PressureTestSome {
            which: &which,
            from: &from,
            to: &to,
            time: &time,
        }
        .say(),
        None => w::PressureTestNone {
            which: &which,
            from: &from,
            to: &to,
        }
        .say(),
    }
}

/// The cylinders that got no sleeve.
#[must_use]
pub fn no_sleeve_in(cylinders: &str) -> String {
    w::NoSleeveIn {
        cylinders: &cylinders,
    }
    .say()
}

/// What a part or a block is made of.
#[must_use]
pub fn material_name(id: MaterialId) -> &'static str {
    match id {
        MaterialId::GrayIron => w::MATERIAL_GRAY_IRON.get(),
        MaterialId::DuctileIronFerritic => w::MATERIAL_DUCTILE_IRON_FERRITIC.get(),
        MaterialId::DuctileIronPearlitic => w::MATERIAL_DUCTILE_IRON_PEARLITIC.get(),
        MaterialId::CompactedIron => w::MATERIAL_COMPACTED_IRON.get(),
        MaterialId::CarbonSteel => w::MATERIAL_CARBON_STEEL.get(),
        MaterialId::Stainless304 => w::MATERIAL_STAINLESS_304.get(),
        MaterialId::AluminiumA356 => w::MATERIAL_ALUMINIUM_A356.get(),
        MaterialId::Aluminium6061 => w::MATERIAL_ALUMINIUM_6061.get(),
        MaterialId::BronzeC93200 => w::MATERIAL_BRONZE_C93200.get(),
        MaterialId::BronzeC95400 => w::MATERIAL_BRONZE_C95400.get(),
        MaterialId::BronzeC51000 => w::MATERIAL_BRONZE_C51000.get(),
        MaterialId::BrassC36000 => w::MATERIAL_BRASS_C36000.get(),
        MaterialId::BearingSteel52100 => w::MATERIAL_BEARING_STEEL_52100.get(),
        MaterialId::ToolSteelH13 => w::MATERIAL_TOOL_STEEL_H13.get(),
        MaterialId::CobaltR30006 => w::MATERIAL_COBALT_R30006.get(),
        MaterialId::NickelN07718 => w::MATERIAL_NICKEL_N07718.get(),
        MaterialId::SinteredFc0208 => w::MATERIAL_SINTERED_FC_0208.get(),
        MaterialId::Aluminum319 => w::MATERIAL_ALUMINUM_319.get(),
        MaterialId::AluminumA380 => w::MATERIAL_ALUMINUM_A380.get(),
        MaterialId::MagnesiumAz91 => w::MATERIAL_MAGNESIUM_AZ_91.get(),
    }
}
