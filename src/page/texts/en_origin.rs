//! English: where a number comes from, in words, in symbols, and by whom.

use crate::show;
use coldseat_core::ask::{
    Calculation, Decides, Input, MaterialId, Measure, OrderItem, ShrinkBy, SleeveKind, Trust,
    UnitSystem, format,
};

pub const WHERE_FROM: &str = "Where from";
pub const IN_WORDS: &str = "In words";
pub const IN_SYMBOLS: &str = "In symbols";
pub const SOURCE: &str = "Source";
pub const WENT_IN: &str = "What went in, what matters most first";
pub const ALSO_IN: &str = "Also used, without moving the number:";
pub const MATERIALS: &str = "Materials";
pub const NO_NUMBER_YET: &str = "No number to show yet: readings are missing.";
pub const NONE_WHILE_LOCKED: &str = "No number to show while the deck is locked.";

/// A calculation: words, symbols, source.
#[must_use]
pub const fn formula(calculation: Calculation) -> [&'static str; 3] {
    match calculation {
        Calculation::None => ["", "", ""],
        Calculation::Estimate => [
            "Hours times the price of an hour, a sleeve for each hole, the nitrogen, and everything else. Nitrogen: what the sleeves boil off, the bath fill, what is lost by standing, and a quarter more.",
            "price = (h_job + n h_hole) p_hour + n p_sleeve + 1.25 (n V_N2 + V_fill + loss h_stand) p_liter + other",
            "The shop's own rates; nitrogen by the chill of this sleeve.",
        ],
        Calculation::Heights => [
            "Highest less lowest of the mean heights of all holes. Beside it: every height between its limits. The heights of one hole, and the means of two neighbors, no farther apart than their limits.",
            "max H_mean - min H_mean",
            "Direct readings. Limits: the engine's sheet, as you entered them. None is usual.",
        ],
        Calculation::Apart => [
            "Temperature of the block less that of the sleeves.",
            "|t_block - t_sleeve|",
            "Direct reading. Limit: from memory, no source; yours to change.",
        ],
        Calculation::PressureDrop => [
            "What the pressure lost, as a share of what it was.",
            "(p_start - p_end) / p_start",
            "Direct reading. Limit: from memory, no source; yours to change.",
        ],
        Calculation::DatumTilt => [
            "Deck height at the front less that at the rear.",
            "|H_front - H_rear|",
            "Direct reading. Limit: from memory, no source; yours to change.",
        ],
        Calculation::Wear => [
            "Largest less smallest diameter of the old bore. Out of round: largest less smallest at one level. Taper: mean under the deck less mean at the bottom.",
            "max D - min D",
            "Readings; the terms are those of form as in ISO 1101.",
        ],
        Calculation::WallLeft => [
            "Wall by gauge, less half of what the bar opens on diameter, less the bar's offset toward that wall. The thinnest point counts.",
            "w_left = w - (D_new - D_old) / 2 - e",
            "Geometry. Limits: from memory, no source; yours to change.",
        ],
        Calculation::Choose => [
            "Pitch less counterbore diameter. Room below: deck to lower step, less counterbore depth, less length. Finish stock: finished bore less the inside as the fit closes it. Ledge and lands: half the difference of their diameters. Under the groove: flange less stand-proud, cut and groove.",
            "web = pitch - D_cb;  below = step - (T - P) - L;  stock = D_fin - (ID - fit);  ledge = (D_f - OD)/2;  lands = (D_gi - D_fin)/2, (D_f - D_go)/2;  floor = T - P - cut - depth",
            "Geometry. Limits: from memory, no source; yours to change.",
        ],
        Calculation::Offset => [
            "Half the difference of opposite indicator readings, both axes together.",
            "e = sqrt(((r12 - r6)/2)^2 + ((r3 - r9)/2)^2)",
            "Geometry.",
        ],
        Calculation::HoneStock => [
            "Target bore less the bore as the bar left it. Target bore: the sleeve less the middle of the fit. Cutter: half of bore and spindle together.",
            "stock = Ds - fit - Db;  cutter = (D + spindle) / 2",
            "Geometry. Stock for the hone: common practice, no source.",
        ],
        Calculation::CounterboreClearance => [
            "Counterbore diameter less flange OD.",
            "D_cb - D_flange",
            "Geometry. Limits: from memory, no source; yours to change.",
        ],
        Calculation::Chamfer => [
            "Chamfer of the ledge less fillet under the flange.",
            "chamfer - fillet",
            "Geometry. Limit: from memory, no source; yours to change.",
        ],
        Calculation::Oxygen => [
            "Nitrogen boils to about 690 times its volume of gas and takes the air's place. It mixes through the room, and the ventilation lets it out.",
            "c = 0.2095 (1 - (R/Q)(1 - exp(-Q t/V))), without ventilation 0.2095 exp(-Vg/V); at once 0.2095 (V - Vg)/V",
            "Mass balance of a mixed room. Density of nitrogen: CoolProp 8.0.0. Limit 19.5 %: OSHA interpretation letter of 2 April 2007.",
        ],
        Calculation::Chill => [
            "The wall of the sleeve loses heat by film boiling, then by nucleate boiling. That goes on until it is within 2 K of the bath.",
            "t = integral of m cp(T) / (A q(T - T_bath)) dT",
            "Boiling curve of liquid nitrogen and its band: published pool-boiling data, fitted; latent heat and densities: CoolProp 8.0.0. The band is wide because surfaces differ.",
        ],
        Calculation::Warmed => [
            "Temperature of the fitted sleeve less the shop's.",
            "|t_sleeve - t_room|",
            "Direct reading. Limit: from memory, no source; yours to change.",
        ],
        Calculation::Protrusion => [
            "Compressed gasket less the largest protrusion. Compression ratio: swept volume and what is left of the clearance volume once the deck is lower.",
            "room = gasket - max protrusion;  ratio = (Vs + Vc) / Vc, Vc = Vs / (ratio_0 - 1) - A cut",
            "Geometry; the least room is the engine maker's.",
        ],
        Calculation::Groove => [
            "Groove depth less its target: ring height less its stand-proud. Flange left: thickness less deck cut less groove.",
            "depth_target = h_ring - P_ring",
            "Geometry; ring and stand-proud are the engine maker's.",
        ],
        Calculation::Finish => [
            "Finished bore less the mean of the readings. Before there are any, less the inside as the fit closes it. Included angle of the cross-hatch: from stroke, cycles and turns, at the mean stroking speed.",
            "stock = D_final - mean D;  angle = 2 atan(2 stroke cycles / (pi D turns))",
            "Geometry. Profile in the drawing: axisymmetric linear elasticity by finite elements, for a joint that slides freely. Checked against an independent program. The line beside it: Lame's rings. Along and across the row: a rule fitted to finite elements, within 4 % of the close-in.",
        ],
        Calculation::RingGap => [
            "The least gap of the rings in this bore. A thou on the bore opens a gap by 3.14 thou.",
            "gap + pi dD",
            "Geometry. Limits are the sheet's.",
        ],
        Calculation::SleeveForm => [
            "Largest less smallest diameter right under the flange. Mean and taper: over all levels.",
            "max D - min D at the first level",
            "Readings; the terms are those of form as in ISO 1101. Limits: from memory, no source; yours to change.",
        ],
        Calculation::Counterbore => [
            "Target depth less the depth now. Target depth: the least flange thickness less the stand-proud. Chance of a low flange: the feed's scatter and the depth gauge together, normal law. For all flanges: each by itself, the error of the deck cut common to them.",
            "C = T - P;  to go = C - depth;  p_low = Phi((clean_up - cut + low - P) / sqrt(feed^2 + gauge^2)), low: the deck below its highest point",
            "Geometry and normal law. Stand-proud: common practice, no source.",
        ],
        Calculation::StepDepth => [
            "Target depth less the depth now. Target depth: the least length of the sleeve less the stand-proud. Chance of a low sleeve: the feed's scatter and the depth gauge together, normal law.",
            "D = L - P;  to go = D - depth;  p_low = Phi((clean_up - cut + low - P) / sqrt(feed^2 + gauge^2)), low: the deck below its highest point",
            "Geometry and normal law. Stand-proud: common practice, no source.",
        ],
        Calculation::Fit => [
            "Sleeve less bore, each brought to 20 C with its own iron. The chance is by both gauges together, normal law.",
            "fit = Ds / (1 + e(ts)) - Db / (1 + e(tb));  u = sqrt(us^2 + ub^2)",
            "Reference temperature: ISO 1:2016. Expansion: see the material below. Uncertainty: JCGM 100 and 106. Band: common practice, no source.",
        ],
        Calculation::ColdDrop => [
            "Heat flows into the cold sleeve from air while it is carried, then across the shrinking gap in the bore. It grips where the clearance is gone. Be home within: the 2.5 % point of first contact over four hundred drops. They lean from none to all and carry frost up to 15 um. They shrink within the band of the material (measured: of the readings). They are carried 30 % shorter or longer unless timed. The colder side bows the sleeve. The time you need is set against that point. It is also taken 30 % shorter or longer (an estimate), to see whether a slow drop is home too. The picture is of a sleeve that goes in straight and bare.",
            "h = k_air / (gap + 0.18 um); grip: Db(T) - Ds(T) = 0; climb = L ((e(room) - e(at grip)) - (e_b(room) - e_b(block)))",
            "Own solution, checked against independent ones. Air: US Standard Atmosphere 1976; free convection: Churchill and Chu 1975; contraction: see the material below.",
        ],
        Calculation::Height => [
            "Height as measured less the predicted one, clock by clock. Predicted: flange thickness (of a plain sleeve its length) and shim, less depth. For a sleeve held by its fit: the height it was to stand at. The ceiling: what a sleeve that grips at bath temperature grows.",
            "H - (T + shim - C);  ceiling = L (e(room) - e(bath))",
            "Geometry; contraction: see the material below.",
        ],
        Calculation::Pulls => [
            "Height after the last pull less the predicted one. It has stopped when two losses of height are within the gauge's noise and the spring-back is steady.",
            "gap = H - (T + shim - C);  u = sqrt(uH^2 + uT^2 + uC^2);  p = Phi((limit - gap) / u)",
            "Geometry and normal law (JCGM 106). Limits: from memory, no source; yours to change.",
        ],
        Calculation::Seat => [
            "Height at the clock positions less the predicted one. Tilt: the largest gap less the smallest. The three gauges together say how sure.",
            "gap = H - (T + shim - C);  u = sqrt(uH^2 + uT^2 + uC^2);  p = Phi((limit - gap) / u)",
            "Geometry and normal law (JCGM 106). Limits: from memory, no source; yours to change.",
        ],
        Calculation::Deck => [
            "The deepest low spot, or what the lowest flange needs, and the clean-up. Or the planned cut. Each flange loses the cut and what it stood proud of its deck.",
            "r >= low + clean_up;  flange cut = deck + least height + r;  flange left = least T - flange cut",
            "Geometry. Usual cut: common practice, no source. Chance of a low flange: normal law, height gauge twice, the error of the cut common to all flanges.",
        ],
    }
}

/// A value that stands for several places.
#[must_use]
pub fn mean_of(value: &str, places: u8, decides: Decides) -> String {
    match (places, decides) {
        (0 | 1, _) => value.to_owned(),
        (_, Decides::Mean) => format!("{value}, mean of {places}"),
        (_, Decides::Least) => format!("{value}, the least of {places}"),
        (_, Decides::Largest) => format!("{value}, the largest of {places}"),
    }
}

/// A limit that stands as a new engine has it.
#[must_use]
pub fn as_usual(value: &str) -> String {
    format!("{value} (the usual value, not changed here)")
}

pub const ORDER_FROM: &str = "Where from: these checks";
pub const ORDER_SOURCE: &str = "Geometry. Limits: from memory, no source; yours to change.";

/// How a check before ordering is calculated.
#[must_use]
pub const fn order_formula(item: OrderItem, kind: SleeveKind) -> &'static str {
    match (item, kind) {
        (OrderItem::Web, SleeveKind::OnStep | SleeveKind::ByFit) => "pitch - sleeve OD",
        (OrderItem::Bottom, SleeveKind::OnStep) => "length - stand-proud - deck to lower step",
        (OrderItem::Bottom, SleeveKind::ByFit) => "deck to lower step - (length - stand-proud)",
        (OrderItem::Ledge, SleeveKind::OnStep) => {
            "(sleeve OD - the larger of sleeve ID and bore below the step) / 2"
        }
        (OrderItem::Wall, _) => {
            "thinnest wall measured, less what boring takes; before that the wall entered"
        }
        (OrderItem::Web, _) => "pitch - (flange OD + middle of its clearance)",
        (OrderItem::Bottom, _) => "deck to lower step - (flange - stand-proud) - length",
        (OrderItem::Ledge, _) => "(flange OD - sleeve OD) / 2",
        (OrderItem::FinishStock, _) => "finished bore - (sleeve ID - middle of the fit)",
        (OrderItem::GrooveInside, _) => "(groove inside - finished bore) / 2",
        (OrderItem::GrooveOutside, _) => "(flange OD - groove outside) / 2",
        (OrderItem::GrooveFloor, _) => {
            "flange - stand-proud - planned cut - (ring height - its stand-proud)"
        }
    }
}

/// What an input was moved by, and what that step is.
#[must_use]
pub fn step_by(input: &Input, units: UnitSystem) -> String {
    let by = moved(input.by, input.field.spec().measure, units);
    let by = match input.trust {
        Trust::Gauge => format!("{by} (its gauge, k = 1)"),
        Trust::Reckoned => format!("{by} (gauge, frost and its warming, k = 1, estimated)"),
        Trust::Trial => by,
    };
    if input.alone {
        format!("{by}, one reading alone")
    } else {
        by
    }
}

/// What an input does to the answer.
#[must_use]
pub fn moves(by: &str, effect: Option<&str>) -> String {
    match effect {
        Some(effect) => format!("off by {by}, it moves the answer by {effect}"),
        None => format!("off by {by}, there is no longer an answer"),
    }
}

/// A difference in the person's unit, with one digit more than a reading.
#[must_use]
pub fn moved(si: f64, measure: Measure, units: UnitSystem) -> String {
    let unit = measure.unit(units);
    match measure {
        Measure::Temperature => format::difference(si, unit),
        Measure::Plain | Measure::Choice | Measure::Words => format::fixed(si, 3),
        Measure::Time => format!("{} s", format::fixed(si, 1)),
        Measure::Pressure | Measure::Force | Measure::Volume | Measure::Torque => {
            show::number(si, unit)
        }
        Measure::Length | Measure::Roughness => format!(
            "{} {}",
            format::fixed(unit.from_si(si), format::decimals(unit) + 1),
            unit.symbol()
        ),
    }
}

/// What a sleeve's shrink is taken from, where not from the table below.
#[must_use]
pub const fn shrink_by(by: ShrinkBy) -> Option<&'static str> {
    match by {
        ShrinkBy::Table => None,
        ShrinkBy::Shop => Some(
            "Shrink: as measured in this shop, entered with the engine, in place of the contraction below. Its band is that of the two readings.",
        ),
        ShrinkBy::Sleeve => Some(
            "Shrink: of this sleeve, OD warm less OD measured cold, in place of the contraction below. Its band is that of the two readings (gauge, frost, warming while it is read: estimated).",
        ),
    }
}

/// A material: how far its contraction is known, and by whom.
#[must_use]
pub fn material(id: MaterialId) -> String {
    let entry = id.entry();
    let c = &entry.chill_contraction;
    let percent = |band: f64| format::fixed(100.0 * (band / c.value).abs(), 0);
    let band = if c.band.total_cmp(&c.band_low).is_eq() {
        format!("\u{b1}{}", percent(c.band))
    } else {
        format!("+{} \u{2212}{}", percent(c.band), percent(c.band_low))
    };
    format!(
        "{}: contraction {band} % (95 %), {}. {}",
        entry.name,
        c.flag.word(),
        c.source
    )
}
