//! English: what the steps say: help, what to do next, findings.

use super::en;
use crate::show::length;
use coldseat_core::ask::{About, Code, Fault, Finding, Length, Signal, StepId, UnitSystem};

/// How to take the readings of a step.
#[must_use]
pub const fn help(step: StepId) -> &'static str {
    match step {
        StepId::Enquiry => {
            "Note the engine, what is wrong with it, sleeves fitted and deck cuts made before. Ask for the pistons and the gasket data with the block. The price counts the hours, a sleeve for each hole and the nitrogen. Nitrogen is what the sleeves boil off, what fills the bath, and what is lost by standing."
        }
        StepId::Intake => {
            "Note who brought what, and in what condition. Number the main caps. Mark the cylinder 1 end on the block: holes counted from the wrong end swap sleeves."
        }
        StepId::Rest => {
            "Strip, wash and dry. Then let block and sleeves rest side by side. Start the timer when the block comes out of the wash. Write down how warm it is. A second reading later shows, from the block's own cooling, how long it still takes. A warm block hides a whole fit."
        }
        StepId::Pressure => {
            "Low pressure, plates secured, stand aside. Write down where it leaks. A sleeve fixes the wall of a bore and nothing else."
        }
        StepId::Datum => {
            "Measure the deck's height above the main line at both ends. Then measure the low spots in rows across the deck, from the front. Take one row before each bore and one behind the last. Left and right are as you stand at the front and look along it. The highest point is 0. If the deck leans, true it before you measure anything from it."
        }
        StepId::OldBore => {
            "Measure across and along the engine at three heights. The bar is centered on the unworn zone, mostly near the bottom."
        }
        StepId::Wall => {
            "Measure at four clock positions on three levels, 12 toward the front of the engine. Wall left is wall now, less half of what the bar opens on diameter. What the bar is off toward that wall comes off too."
        }
        StepId::Choose => {
            "Check before you order. Wall, web, room below and stock for the last hone must all hold. So must the ledge under the flange, and what a fire-ring groove leaves of the flange. Where the flanges overlap the pitch they get flats."
        }
        StepId::Sleeve => {
            "Measure the diameter across and along the engine, near the top, in the middle and near the bottom. Near the top means right under a flange. Lower down a sleeve springs round. At the top it must be round by itself. Measure flange thickness, or the length of a plain sleeve, at 12, 3, 6 and 9. 12 is toward the front of the engine. Number the sleeve to its hole."
        }
        StepId::Caps => {
            "Put the main caps on and torque them to the sheet before the bar goes in. Bored with the caps off or loose, the holes move when you torque them."
        }
        StepId::Centre => {
            "Sweep an indicator from the bar around the unworn zone. A larger reading means that wall is nearer. Half the difference of opposite readings is how far the bar is off. An offset on purpose is fine: note why."
        }
        StepId::Bore => {
            "Measure the diameter after the last pass. The bar leaves a thou or so on diameter for the hone. Micrometer over spindle and cutter: add bore and spindle, then halve it."
        }
        StepId::CounterboreD => {
            "Measure the diameter of the counterbore. It must never grip the flange."
        }
        StepId::Counterbore => {
            "Measure from the deck to the ledge at four clock positions, zero on the deck beside this hole. Where the deck at this hole is left empty, the survey around it counts. Target depth: least flange thickness less the stand-proud. Too shallow can be fixed, too deep cannot. Where the ledge may be cupped, read it at two radii. This depth is at the outer corner, the other near the bore's edge (More of this hole's ledge). A ledge that falls toward the bore breaks the flange."
        }
        StepId::StepDepth => {
            "Measure from the deck to the step that the sleeve stands on. Read four clock positions, zero on the deck beside this hole. Target depth: least sleeve length less the stand-proud. A step is cut deeper, never higher: too shallow can be fixed, too deep cannot."
        }
        StepId::Chamfer => {
            "The chamfer on the ledge's edge must clear the fillet under the flange. If not, the flange rides on it and drops later."
        }
        StepId::Fit => {
            "Let block and sleeve rest side by side until cool. Measure the bore across and along at three levels. Set the bore gauge from the micrometer that measured the sleeve. Both temperatures count: a warm block hides a whole fit. A fitted sleeve moves its neighbors. Measure all bores before the first sleeve goes in."
        }
        StepId::Clean => {
            "Wash bore and counterbore. Blue the ledge. Look at the corner with a light: no chip, no burr."
        }
        StepId::DryRun => {
            "Walk the way with the sleeve: lifting gear, path, helper, oxygen meter, doors. Enter the room's volume and the liters in the dewar."
        }
        StepId::Chill => {
            "Start the timer when the sleeve goes into the bath. Take it out when the bubbling stops, not before. The time shown is a guide with its band. If you measure its OD cold, enter it. It then counts for this sleeve in place of the table for its iron."
        }
        StepId::Drop => {
            "Take it out when the bubbling stops. \"From bath to bore within\" is the longest carry that still leaves the clearance asked for. \"Be home within\" is your time once it enters the bore. Drop it in one straight motion. Hold it down while it warms. Then say how it went in: the shop learns from it."
        }
        StepId::Hold => {
            "Hold the sleeve down while it warms. The time shown is until the sleeve and the iron around it are at one temperature. The thermometer decides. A sleeve that grips cold grows lengthwise and lifts its top. Do not measure before it is at shop temperature."
        }
        StepId::WarmHeight => {
            "Measure only when the sleeve is at shop temperature. Read four clock positions, zero on the deck, never on a neighbor's sleeve."
        }
        StepId::Pull => {
            "Each pull, read gauge pressure, then height under load and after release, always at the same spot. At least three pulls, the last two at the highest pressure. If the sleeve comes out and goes in again, say so below. What was read is kept in the record. The readings are then free for the next try."
        }
        StepId::Seat => {
            "Measure height at four clock positions after the last pull, zero on the deck. It is compared, clock by clock, with what the sleeve has above its ledge less the ledge's depth. A sleeve held by its fit is compared with the height it was to stand at."
        }
        StepId::Deck => {
            "Survey the deck in rows across it, from the front. Take one row before each bore and one behind the last. Left and right are as you stand at the front and look along it. The highest point is 0. Where the deck beside a hole was not measured at its counterbore, the four points around it count. What was entered at step 5 is here already: it is the same survey. The cut must clean up the lowest point and every sleeve."
        }
        StepId::Heights => {
            "Measure each sleeve's height at four clock positions after the last pull, zero on the deck beside it. Type the heights at the seat check. If the engine's sheet states a torque, hold the sleeves down at it and say so first. Then read. Within one hole, between neighbors and over all, they keep the sheet's limits. The deck is not cut."
        }
        StepId::Protrusion => {
            "Measure each piston at top dead center, front and rear over the pin, zero on the finished deck. It decides the gasket."
        }
        StepId::Groove => {
            "Measure the depth from the finished top at four clock positions. Target: ring height less its stand-proud."
        }
        StepId::Finish => {
            "Torque plate on. With the hone's stroke, turns and cycles under Engine, the cross-hatch is calculated. It shows the included angle between the scratches, and of one scratch to the horizontal. Measure across and along at three heights. Stop at the finished bore. The fit closes the sleeve inside, more in some places than others. The drawing shows where the hone must take more."
        }
        StepId::RingGap => {
            "Set each ring square in its finished bore. Too small: file it. Each thou on the bore is three on the gap."
        }
        StepId::WashAgain => {
            "Wash until a white towel stays white. Brush the galleries. Then pressure test again."
        }
        StepId::Report => {
            "Read the record, sign it, tape it to the block. It shows the gasket to buy, the new deck height and what was not done."
        }
    }
}

/// What a step says at a signal, where it says one thing only.
#[must_use]
pub const fn says(step: StepId, signal: Signal) -> &'static str {
    match (step, signal) {
        (StepId::Enquiry, Signal::Go) => "The price at these rates. Take the job, or say no now.",
        (StepId::Rest, Signal::Go) => "At one temperature: measure.",
        (StepId::Rest, Signal::Wait) => {
            "Too far apart: let both rest side by side, then measure again."
        }
        (StepId::Pressure, Signal::Go) => "Holds, within the loss allowed.",
        (StepId::Pressure, Signal::Stop) => {
            "Loses pressure: find the leak. A sleeve fixes the wall of a bore and nothing else."
        }
        (StepId::WashAgain, Signal::Go) => "Holds, within the loss allowed.",
        (StepId::WashAgain, Signal::Stop) => {
            "Loses pressure: find the leak before it leaves the shop."
        }
        (StepId::Datum, Signal::Go) => "The deck is level enough, end to end.",
        (StepId::Datum, Signal::Look) => {
            "The deck leans: true it first, or measure both ends again."
        }
        (StepId::OldBore, Signal::Go) => {
            "Center the bar on the unworn part of the bore, mostly the bottom."
        }
        (StepId::Wall, Signal::Go) => {
            "Enough wall, within the limits you entered or left as usual."
        }
        (StepId::Wall, Signal::Look) => {
            "Thin: move the center away from it, or take a smaller sleeve."
        }
        (StepId::Wall, Signal::Stop) => {
            "Too thin to bore: move the center, or take a smaller sleeve."
        }
        (StepId::Choose, Signal::Go) => {
            "This sleeve goes into this block, within the limits you entered or left as usual."
        }
        (StepId::Choose, Signal::Look) => {
            "Thin, or flanges overlapping: look at the lines below before ordering."
        }
        (StepId::Choose, Signal::Stop) => {
            "Do not order: what is on stop below is too small for this block."
        }
        (StepId::Choose, Signal::Wait) => {
            "Not all is checked yet: enter what is still needed below, then order."
        }
        (StepId::Pull, Signal::Stop) => {
            "A pull loads more than allowed: see the bars. Release. Look for cracks at the ledge and in the sleeve. If they are sound, say so in the note. Take that pull out of the list, and pull within the limit."
        }
        (StepId::Deck, Signal::Wait) => "Locked: not every sleeve on it is shown to be home.",
        (StepId::Heights, Signal::Wait) => {
            "Not every sleeve on this deck is shown to be home: see their seat checks."
        }
        (StepId::Deck, Signal::Go) => super::en_long::CUT_GOOD,
        (StepId::Deck, Signal::None) => "Open: cut it, then tap \"The deck is cut\".",
        (StepId::Deck, Signal::Stop) => super::en_long::CUT_TOO_SMALL,
        (StepId::Centre, Signal::Go) => "On center.",
        (StepId::Centre, Signal::Look) => "Off center: move it, or note why the offset is meant.",
        (StepId::Bore, Signal::Go) => "The hone has its stock.",
        (StepId::Bore, Signal::Look) => {
            "Little or nothing is left for the hone: measure again before honing."
        }
        (StepId::CounterboreD, Signal::Go) => "The flange drops in freely.",
        (StepId::CounterboreD, Signal::Look) => {
            "Wide: the flange is not guided. Watch where the sleeve stands."
        }
        (StepId::Chamfer, Signal::Go) => "The chamfer clears the fillet.",
        (StepId::Chamfer, Signal::Wait) => {
            "Too little room over the fillet, which may ride on the ledge: chamfer more."
        }
        (StepId::DryRun, Signal::Go) => {
            "Oxygen in mixed air stays above 19.5 % by the numbers entered. Near the dewar and at the floor it is far worse."
        }
        (StepId::DryRun, Signal::Look) => {
            "If it boils all at once, oxygen falls below 19.5 %: less nitrogen, open doors, oxygen alarm on."
        }
        (StepId::DryRun, Signal::Stop) => {
            "Oxygen falls below 19.5 %: do not bring this much nitrogen into this room."
        }
        (StepId::Chill, Signal::Go) => "Longer than the slow end of the band: quiet by now.",
        (StepId::Chill, Signal::Look) => {
            "Inside the band: take it out only if the bubbling has stopped."
        }
        (StepId::Chill, Signal::Wait) => "Too short: back into the bath until the bubbling stops.",
        (StepId::Drop, Signal::Go) => "It went in free. Hold it down while it warms.",
        (StepId::Drop, Signal::Look) => {
            "It dragged: look for a burr, a cocked start or a bore that is tight there. Note what you find. Hold it down while it warms."
        }
        (StepId::Drop, Signal::Stop) => {
            "Stuck: no hammer, the iron is brittle while it is cold. Let it come to shop temperature, then decide how it comes out."
        }
        (StepId::Hold, Signal::Go) => "At shop temperature: let go, and measure the height.",
        (StepId::Hold, Signal::Wait) => {
            "Not at shop temperature yet: hold it down, do not measure yet."
        }
        (StepId::Protrusion, Signal::None) => {
            "With gasket and sheet entered under Engine, the room to the head is calculated."
        }
        (StepId::Protrusion, Signal::Go) => "Enough room to the head, by the sheet entered.",
        (StepId::Protrusion, Signal::Stop) => {
            "Too little room to the head: fit a thicker gasket, or stop."
        }
        (StepId::Groove, Signal::Go) => "At depth.",
        (StepId::Finish, Signal::Go) => "At size, round and straight.",
        (StepId::Finish, Signal::Look) => "At size, but out of round or tapered: hone it straight.",
        (StepId::RingGap, Signal::Go) => "Gaps within the sheet's limits.",
        (StepId::RingGap, Signal::Wait) => "A ring would butt: file it.",
        (StepId::RingGap, Signal::Look) => {
            "A gap is wide: try another ring, or the bore is too large."
        }
        _ => en::MARK_IT,
    }
}

/// The same, by how much.
#[must_use]
pub fn says_by(step: StepId, signal: Signal, by: Length, units: UnitSystem) -> String {
    let by = length(by.as_m(), units);
    match (step, signal) {
        (StepId::Bore, Signal::Wait) => {
            format!("Take {by} more on diameter with the bar. The rest is for the hone.")
        }
        (StepId::Bore, Signal::Stop) => format!(
            "Bored {by} past the loosest bore for this sleeve: its press fit is lost. Measure again. If the reading holds, this hole needs a larger sleeve."
        ),
        (StepId::CounterboreD, Signal::Wait) => {
            format!("Too small: take {by} more on diameter, or it grips the flange.")
        }
        (StepId::Groove, Signal::Stop) => {
            format!("Too deep by {by}: the ring would not seal. Stop.")
        }
        (StepId::Groove, Signal::Wait) => format!("Cut {by} deeper."),
        (StepId::Finish, Signal::Wait) => format!("Hone {by} more on diameter."),
        (StepId::Finish, Signal::Stop) => format!(
            "Past the finished size by {by} at one place at least: honing cannot bring it back. Stop."
        ),
        _ => says(step, signal).to_owned(),
    }
}

/// A finding in the person's words and units; what is not in this table says
/// no number and stands as the calculation words it.
#[must_use]
pub fn finding(finding: &Finding, units: UnitSystem) -> String {
    let apart = match units {
        UnitSystem::Inch => "5 \u{b0}F",
        UnitSystem::Metric => "3 \u{b0}C",
    };
    let uneven = match units {
        UnitSystem::Inch => "0.001 in",
        UnitSystem::Metric => "0.025 mm",
    };
    match finding.code {
        Code::PistonTight => {
            "the piston has less room in its bore than the sheet asks for. Measure both again, then hone or stop".to_owned()
        }
        Code::NoPistonClearance => {
            "the finished bore is no larger than the piston: a radius among the diameters, or the wrong piston?".to_owned()
        }
        Code::Cocked => {
            "one clock position is far from the others. A reading is off by a turn of the micrometer, or the sleeve is cocked. Measure again before pulling".to_owned()
        }
        Code::ColdNotSmaller => {
            "the sleeve measured cold is no smaller than it was warm: a reading is wrong. Wipe it and measure again, or clear the reading to go by the table for its iron".to_owned()
        }
        Code::ColdShrinksLittle => {
            "the sleeve measured cold shrank far less than its iron should. Causes: frost, too short a bath, a wrong material or a wrong reading. Chill it fully, wipe it, measure it again".to_owned()
        }
        Code::ColdShrinksMuch => {
            "the sleeve measured cold shrank far more than its iron can. Causes: a wrong reading, warm or cold, or a wrong material. Measure it again before you trust the clearance".to_owned()
        }
        Code::LittleFlangeLeft => {
            "the cut leaves less flange than the limit asks for, its groove counted. Do not cut this deep".to_owned()
        }
        Code::DeepCut => {
            "more than twice the planned cut: the pistons stand prouder by as much. Check gasket and room to the head first".to_owned()
        }
        Code::FlangeMayStayLow => {
            "the chance of leaving a sleeve low is greater than the one accepted. Cut deeper, or measure heights and deck again".to_owned()
        }
        Code::LedgeNotFlat => format!(
            "the depth varies by more than {uneven} around the hole. Clean the ledge, measure again, and true it before a sleeve sits on it"
        ),
        Code::TemperaturesApart => format!(
            "sleeve and block were measured more than {apart} apart. Let both rest side by side and measure again"
        ),
        Code::BelowLedge => {
            "it reads lower than its ledge: height, depth or sleeve is read wrong. Measure again".to_owned()
        }
        Code::DoesNotEnter => {
            "the chilled sleeve is no smaller than the bore: do not drop it. Chill it fully, carry it faster, warm the block, or hone the bore to its fit".to_owned()
        }
        Code::FlatsNeeded => {
            "the flanges overlap the pitch: each needs a flat of the depth shown, and the counterbores run into each other".to_owned()
        }
        Code::GaugesEatTheBand => {
            "with these gauges no reading can prove the fit inside its band. Use better gauges, or set the bore gauge from the micrometer that measured the sleeve".to_owned()
        }
        Code::SharpCorner => {
            "Both corners are sharp here, and a sharp corner's stress has no peak. This is the stress at the fillet's radius from it. It compares one sleeve, fit or flange with another.".into()
        }
        Code::MeshSpeaks => {
            "Two meshes differ by more than a tenth at a corner: trust the order of the numbers, not their digits.".into()
        }
        Code::HeightMoved => {
            "the height at the clock positions is not the height after the last pull. Measure again, zero on the deck".to_owned()
        }
        Code::NeverGrips => {
            "the sleeve does not grip within an hour. Check the fit and the temperatures entered".to_owned()
        }
        Code::NoFloor => {
            "the groove would cut through the flange: do not cut. Use another ring or a thicker flange".to_owned()
        }
        Code::NoWall => {
            "the bar would break through this wall: do not bore. Move the center or take a smaller sleeve".to_owned()
        }
        Code::OddReturn => {
            "springs back unlike the job's other holes, or reads higher under load than released. Read it again, and look for a chip or a burr on the ledge".to_owned()
        }
        Code::OxygenLow => {
            "boiled all at once, this much nitrogen takes the room below 19.5 % oxygen. Use less of it, a larger room or the open air".to_owned()
        }
        Code::TooDeep => {
            "deeper than planned: do not cut. Use a shim, a thicker flange or a longer sleeve. Or take a lower stand-proud with a deeper deck cut".to_owned()
        }
        Code::TooLittle => {
            "the planned cut leaves a low spot or a sleeve uncut. Plan at least the least cut, or find out why it is low".to_owned()
        }
        Code::UnequalPulls => {
            "the last two pulls were weaker than 95 % of the strongest: they cannot show that it has stopped. Pull twice more at one pressure".to_owned()
        }
        Code::WorseAtTheFloor => {
            "near the dewar, in pits and at floor level there is far less oxygen: oxygen alarm, doors open, two people".to_owned()
        }
        Code::Loose => {
            "nothing is left of the press fit once the peaks are smoothed: it would be loose. Hone less, or use a larger sleeve".to_owned()
        }
        Code::NoStock => {
            "the fitted sleeve leaves less than the hone needs. Use a sleeve with a smaller inside".to_owned()
        }
        // What says no number stands as the calculation words it.
        Code::AllAlike
        | Code::BoreTooBig
        | Code::Butts
        | Code::DeckNotSurveyed
        | Code::JointSpread
        | Code::LittleMargin
        | Code::LoadNotChecked
        | Code::LooseInService
        | Code::NeighboursMove
        | Code::NoFlange
        | Code::NoPlan
        | Code::OneReading
        | Code::OutsideSizes
        | Code::OutsideTheRule
        | Code::ReturnsNotCompared
        | Code::SamplesRefused
        | Code::SlopeFromRoughness
        | Code::StandsOut
        | Code::SweptOval
        | Code::TighterBelowTheDeck => finding.message.clone(),
    }
}

/// Why a calculation refused, by the number it names; its own message is in
/// metres and for the log.
#[must_use]
pub fn fault(fault: &Fault) -> String {
    let which = match fault.about() {
        About::Deck => "the low spots of the deck: survey them, the highest point is 0",
        About::CleanUp => "the clean-up cut",
        About::Cut => "the deck cut",
        About::Pulls => "the pulls",
        About::Depth => "the counterbore depth",
        About::Thickness => "the flange thickness and the shim",
        About::Heights => "the heights",
        About::Plan => "the plan of the heights: the plan no longer fits: make a new one",
        About::Wall => "the inside of the sleeve or its wall: it must be smaller than the outside",
        About::Temperatures => "the temperatures",
        About::Cold => "the cooling temperature: it must be below the shop's",
        About::Heat => {
            "the temperature of the housing: above the shop's, and in water 212 \u{b0}F (100 \u{b0}C) at most"
        }
        About::Times => "the times, the carry first",
        About::Diameters => "the diameters: sleeve, bore and block do not go together",
        About::Lengths => "lengths of sleeve and block",
        About::Gauges => "what the gauges are good for",
        About::Limits => "the limits and how sure you want to be",
        About::Loads => "gas, clamp and ram",
        About::Tools => "hone and boring bar",
        About::Materials => "the materials, the surfaces and the room",
        About::Costs => "nitrogen and prices",
        About::Other => {
            "the numbers of this step and of the engine: one is missing or outside what can be calculated"
        }
    };
    format!("Cannot be calculated as it stands. Look at {which}.")
}

/// What a step's expected time is.
#[must_use]
pub fn timer_expected(step: StepId, low: &str, high: &str) -> String {
    let span = super::span(low, high);
    match step {
        StepId::Drop => format!(
            "from bath to bore at most {span}: after that, the clearance at the bore is less than asked for"
        ),
        StepId::Hold => {
            format!("sleeve and the iron around it are at one temperature after {span}")
        }
        StepId::Rest => format!("by the block's own cooling, near enough after {span}"),
        _ => format!("expected {span}"),
    }
}

#[must_use]
pub fn timer_left(low: &str, high: &str) -> String {
    format!("{low} to {high} to go")
}

#[must_use]
pub fn timer_at_most(low: &str) -> String {
    format!("{low} left")
}
