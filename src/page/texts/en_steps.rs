//! English: what the steps say: help, what to do next, findings.

use super::en;
use crate::show::length;
use coldseat_core::ask::{About, Code, Fault, Finding, Length, Signal, StepId, UnitSystem};

/// How to take the readings of a step.
#[must_use]
pub const fn help(step: StepId) -> &'static str {
    match step {
        StepId::Enquiry => {
            "Engine, what it suffers from, sleeves fitted and deck cuts made before. Ask for the pistons and the gasket data with the block. The price counts the hours, a sleeve a hole and the nitrogen: what the sleeves boil off, what fills the bath, and what is lost by standing."
        }
        StepId::Intake => {
            "Note who brought what and in which state. Number the main caps, mark the end of cylinder 1 on the block: holes counted from the wrong end swap sleeves."
        }
        StepId::Rest => {
            "Strip, wash, dry, then let block and sleeves rest side by side. Start the timer when it comes out of the wash and write down how warm it is; a second reading later tells from the block's own cooling how long it still takes. A warm block hides a whole fit."
        }
        StepId::Pressure => {
            "Low pressure, plates secured, stand aside. Write down where it leaks. A sleeve cures the wall of a bore and nothing else."
        }
        StepId::Datum => {
            "Height of the deck above the main line at both ends, and the low spots, a row across the deck before each bore and one behind the last, from the front; left and right as you stand at the front and look along it; the highest point is 0. If it leans, true it before anything is measured from it."
        }
        StepId::OldBore => {
            "Across and along the engine at three heights. The bar is centerd on the unworn zone, mostly near the bottom."
        }
        StepId::Wall => {
            "Four clock points at three levels, 12 toward the front of the engine. The wall left takes off half of what the bar opens, and what the bar is off toward that wall."
        }
        StepId::Choose => {
            "Before ordering: wall, web, room below, stock for the last hone, the ledge under the flange and what a fire-ring groove leaves of it must all hold. Where the flanges overlap the pitch they get flats."
        }
        StepId::Sleeve => {
            "Diameter across and along the engine, near the top (right under a flange), in the middle and near the bottom. Lower down a sleeve springs round; at the top it must be round by itself. Flange thickness, or the length of a plain sleeve, at 12, 3, 6 and 9, 12 toward the front of the engine. Number the sleeve to its hole."
        }
        StepId::Caps => {
            "Main caps on and torqued to the sheet before the bar goes in: boring a slack block bends the main line."
        }
        StepId::Centre => {
            "Sweep an indicator from the bar round the unworn zone; a larger reading means that wall is nearer. Half the difference of opposite readings is how far the bar is off. An offset on purpose is fine: note why."
        }
        StepId::Bore => {
            "Diameter after the last pass. The bar leaves a thou or so on diameter for the hone. Cutter setting: half of bore plus spindle."
        }
        StepId::CounterboreD => "Diameter of the counterbore. It must never grip the flange.",
        StepId::Counterbore => {
            "Depth from the deck to the ledge at four clocks, zero on the deck beside this hole. Where the deck at this hole is left empty, the survey round it counts. Depth wanted: least flange thickness less the stand-proud. Too shallow can be mended, too deep cannot. Where the ledge may be cupped, read it at two radii: this depth at the outer corner, the other near the bore's edge (More of this hole's ledge); a ledge that falls toward the bore breaks the flange."
        }
        StepId::StepDepth => {
            "Depth from the deck to the step that the sleeve stands on, at four clocks, zero on the deck beside this hole. Depth wanted: least sleeve length less the stand-proud. A step is cut deeper, never higher: too shallow can be mended, too deep cannot."
        }
        StepId::Chamfer => {
            "The chamfer on the ledge's edge must clear the fillet under the flange, or the flange rides on it and drops later."
        }
        StepId::Fit => {
            "Diameter across and along at three heights, cool, next to the sleeve. Set the bore gauge from the micrometer that measured the sleeve. Both temperatures count: a warm block hides a whole fit. A fitted sleeve moves its neighbours: measure all bores before the first sleeve goes in."
        }
        StepId::Clean => {
            "Wash bore and counterbore, blue the ledge, look at the corner with a light: no chip, no burr."
        }
        StepId::DryRun => {
            "Walk the way with the sleeve: lifting gear, path, helper, oxygen meter, doors. Volume of the room, liters in the dewar."
        }
        StepId::Chill => {
            "Start the timer when the sleeve goes into the bath. Out when the bubbling stops, not before; the time shown is a guide with its band. If you measure its OD cold, enter it: it counts for this sleeve in place of the table of its iron."
        }
        StepId::Drop => {
            "Carry time from leaving the bath to entering the bore; the time on the button is the longest carry that still leaves the clearance asked for; the large number is what is left once it is in the bore. Say how it went in: the shop learns from it. Out when the bubbling stops; one straight motion; hold it down while it warms."
        }
        StepId::Hold => {
            "Hold the sleeve down while it warms. The time shown is until sleeve and the iron round it are even; the thermometer decides. A sleeve that grips cold grows lengthwise and lifts its top. Do not measure before it has the temperature of the shop."
        }
        StepId::WarmHeight => {
            "Only when the sleeve has come to the temperature of the shop. Four clocks, zero on the deck, never on a neighbour's sleeve."
        }
        StepId::Pull => {
            "Gauge pressure, then height under load and after release, at one and the same spot, each pull. At least three pulls, the last two at the highest pressure. If the sleeve comes out and goes in again, say so below: what was read is kept in the record and the readings are free for the next try."
        }
        StepId::Seat => {
            "Height at four clocks after the last pull, zero on the deck. Compared with what the sleeve has above its ledge less how deep that lies, clock by clock; a sleeve that its fit holds, with the height it was to stand at."
        }
        StepId::Deck => {
            "Survey the deck in rows across it, from the front: a row before each bore and one behind the last, left and right as you stand at the front and look along it; the highest point is 0. Where the deck beside a hole was not measured at its counterbore, the four points round it count. What was entered at step 5 stands here already: it is the same survey. The cut must clean up the lowest point and every sleeve."
        }
        StepId::Heights => {
            "Height of each sleeve at four clocks after the last pull, zero on the deck beside it, typed at the seat check. If the engine's sheet states a torque, hold the sleeves down at it and say so first, then read. Within one hole, between neighbors and over all they keep the limits of the sheet. The deck is not cut."
        }
        StepId::Protrusion => {
            "Each piston at top dead center, front and rear over the pin, zero on the finished deck. Decides the gasket."
        }
        StepId::Groove => {
            "Depth from the finished top at four clocks. Wanted: ring height less its stand-proud."
        }
        StepId::Finish => {
            "Torque plate on. With stroke, turns and cycles of the hone under Engine the cross-hatch is worked out: included angle between the scratches, and of one scratch to the horizontal. Across and along at three heights; stop at the finished bore. The fit closes the sleeve inside, more in some places than others: the drawing shows where the hone must take more."
        }
        StepId::RingGap => {
            "Each ring square in its finished bore. Too small: file. Each thou on the bore is three on the gap."
        }
        StepId::WashAgain => {
            "Wash until a white towel stays white, galleries with a brush. Then the pressure test again."
        }
        StepId::Report => {
            "Read the record, sign it, tape it to the block. Gasket to buy and new deck height are on it, and what was not done."
        }
    }
}

/// What a step says at a signal, where it says one thing only.
#[must_use]
pub const fn says(step: StepId, signal: Signal) -> &'static str {
    match (step, signal) {
        (StepId::Enquiry, Signal::Go) => "Price with these rates. Take it, or say no now.",
        (StepId::Rest, Signal::Go) => "At one temperature: measure.",
        (StepId::Rest, Signal::Wait) => {
            "Too far apart: let both rest side by side, then measure again."
        }
        (StepId::Pressure, Signal::Go) => "Holds, within the loss allowed.",
        (StepId::Pressure, Signal::Stop) => {
            "Loses pressure: find the leak. A sleeve cures the wall of a bore and nothing else."
        }
        (StepId::WashAgain, Signal::Go) => "Holds, within the loss allowed.",
        (StepId::WashAgain, Signal::Stop) => {
            "Loses pressure: find the leak before it leaves the shop."
        }
        (StepId::Datum, Signal::Go) => "The deck stands level enough, end to end.",
        (StepId::Datum, Signal::Look) => {
            "The deck leans: true it first, or measure both ends again."
        }
        (StepId::OldBore, Signal::Go) => {
            "Center the bar on the unworn part of the bore, as a rule the bottom."
        }
        (StepId::Wall, Signal::Go) => {
            "Wall enough, within the limits you entered or left as usual."
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
            "Do not order: what has a stop below is too small for this block."
        }
        (StepId::Choose, Signal::Wait) => {
            "Not all is checked yet: enter what is still wanted below, then order."
        }
        (StepId::Pull, Signal::Stop) => {
            "A pull loads more than it may: see the bars. Release. Look for cracks at the ledge and in the sleeve; if they are sound, say so in the note, take that pull out of the list, and pull within the limit."
        }
        (StepId::Deck, Signal::Wait) => "Locked: not every sleeve of it is shown to be home.",
        (StepId::Deck, Signal::Go) => super::en_long::CUT_GOOD,
        (StepId::Deck, Signal::None) => "Open: cut it, then say so: \"The deck is cut\".",
        (StepId::Deck, Signal::Stop) => super::en_long::CUT_TOO_SMALL,
        (StepId::Centre, Signal::Go) => "On center.",
        (StepId::Centre, Signal::Look) => "Off center: move it, or note why the offset is meant.",
        (StepId::Bore, Signal::Go) => "The hone has its stock.",
        (StepId::Bore, Signal::Look) => {
            "Little or nothing is left for the hone: measure again before honing."
        }
        (StepId::CounterboreD, Signal::Go) => "The flange drops in freely.",
        (StepId::CounterboreD, Signal::Look) => {
            "Wide: the flange is not guided. Mind where the sleeve stands."
        }
        (StepId::Chamfer, Signal::Go) => "The chamfer clears the fillet.",
        (StepId::Chamfer, Signal::Wait) => {
            "Too little room over the fillet, which may ride on the ledge: chamfer more."
        }
        (StepId::DryRun, Signal::Go) => {
            "Mixed air stays above 19.5 % by the numbers entered; near the dewar and at the floor it is far worse."
        }
        (StepId::DryRun, Signal::Look) => {
            "Boiled all at once it falls below 19.5 %: less nitrogen, open doors, oxygen alarm on."
        }
        (StepId::DryRun, Signal::Stop) => {
            "Falls below 19.5 %: do not bring this much nitrogen into this room."
        }
        (StepId::Chill, Signal::Go) => "Longer than the slow end of the band: quiet by now.",
        (StepId::Chill, Signal::Look) => "Inside the band: only out if the bubbling has stopped.",
        (StepId::Chill, Signal::Wait) => "Too short: back into the bath until the bubbling stops.",
        (StepId::Drop, Signal::Go) => "It went in free. Hold it down while it warms.",
        (StepId::Drop, Signal::Look) => {
            "It dragged: look for a burr, a cocked start or a bore that is tight there, and note what you find. Hold it down while it warms."
        }
        (StepId::Drop, Signal::Stop) => {
            "Stuck: no hammer, the iron is brittle while it is cold. Let it come to the temperature of the shop, then decide how it comes out."
        }
        (StepId::Hold, Signal::Go) => {
            "At the temperature of the shop: let go, and measure the height."
        }
        (StepId::Hold, Signal::Wait) => {
            "Not at the temperature of the shop yet: hold it down, do not measure yet."
        }
        (StepId::Protrusion, Signal::None) => {
            "With gasket and sheet entered under Engine, the room to the head is worked out."
        }
        (StepId::Protrusion, Signal::Go) => "Room enough to the head, by the sheet entered.",
        (StepId::Protrusion, Signal::Stop) => {
            "Too little room to the head: a thicker gasket, or stop."
        }
        (StepId::Groove, Signal::Go) => "At depth.",
        (StepId::Finish, Signal::Go) => "At size, round and straight.",
        (StepId::Finish, Signal::Look) => "At size, but out of round or tapered: hone it straight.",
        (StepId::RingGap, Signal::Go) => "Gaps inside the sheet.",
        (StepId::RingGap, Signal::Wait) => "A ring would butt: file it.",
        (StepId::RingGap, Signal::Look) => "A gap is wide: another ring, or the bore is too large.",
        _ => en::MARK_IT,
    }
}

/// The same, by how much.
#[must_use]
pub fn says_by(step: StepId, signal: Signal, by: Length, units: UnitSystem) -> String {
    let by = length(by.as_m(), units);
    match (step, signal) {
        (StepId::Bore, Signal::Wait) => {
            format!("Take {by} more on diameter with the bar; the rest is for the hone.")
        }
        (StepId::Bore, Signal::Stop) => format!(
            "Bored {by} past the loosest bore for this sleeve: its press fit is lost. Measure again; if it holds, this hole wants a larger sleeve."
        ),
        (StepId::CounterboreD, Signal::Wait) => {
            format!("Opens too little: take {by} more on diameter, or it grips the flange.")
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
            "the piston has less room in its bore than the sheet asks for: measure both again, then hone or stop".to_owned()
        }
        Code::NoPistonClearance => {
            "the finished bore is no larger than the piston: a radius among the diameters, or the wrong piston?".to_owned()
        }
        Code::Cocked => {
            "one clock stands far from the others: a reading is wrong by a turn of the micrometer, or the sleeve is cocked. Measure again before pulling".to_owned()
        }
        Code::ColdNotSmaller => {
            "the sleeve measured cold is no smaller than it was warm: a reading is wrong. Wipe it, measure it again, or clear it to go by the table of its iron".to_owned()
        }
        Code::ColdShrinksLittle => {
            "the sleeve measured cold shrank far less than its iron should: frost, a bath too short, a wrong material or a wrong reading. Chill it fully, wipe it, measure it again".to_owned()
        }
        Code::ColdShrinksMuch => {
            "the sleeve measured cold shrank far more than its iron can: a wrong reading, warm or cold, or a wrong material. Measure it again before you trust the clearance".to_owned()
        }
        Code::LittleFlangeLeft => {
            "the cut leaves less of a flange than the limit asks for, its groove counted: do not cut this deep".to_owned()
        }
        Code::DeepCut => {
            "more than twice the cut planned: the pistons stand prouder by as much; work out gasket and room to the head first".to_owned()
        }
        Code::FlangeMayStayLow => {
            "the chance that a sleeve is left low is greater than the one accepted: cut deeper, or measure heights and deck again".to_owned()
        }
        Code::LedgeNotFlat => format!(
            "the depth varies by more than {uneven} round the clock: clean the ledge, measure again, and true it before a sleeve sits on it"
        ),
        Code::TemperaturesApart => format!(
            "sleeve and block were measured more than {apart} apart: let both rest side by side and measure again"
        ),
        Code::BelowLedge => {
            "it reads lower than its ledge: height, depth or sleeve is read wrong; measure again".to_owned()
        }
        Code::DoesNotEnter => {
            "the chilled sleeve is no smaller than the bore: do not drop it; chill it fully, carry it faster, warm the block, or hone the bore to its fit".to_owned()
        }
        Code::FlatsNeeded => {
            "the flanges overlap the pitch: each needs a flat of the depth shown, and the counterbores run into each other".to_owned()
        }
        Code::GaugesEatTheBand => {
            "with these gauges no reading can prove the fit inside its band: better gauges, or set the bore gauge from the micrometer that measured the sleeve".to_owned()
        }
        Code::SharpCorner => {
            "Both corners are sharp here and a sharp corner's stress has no peak: this is the stress at the fillet's radius from it. It compares one sleeve, fit or flange with another.".into()
        }
        Code::MeshSpeaks => {
            "Two meshes differ by more than a tenth at a corner: trust the order of the numbers, not their digits.".into()
        }
        Code::HeightMoved => {
            "the height at the clocks is not the height after the last pull: measure again, zero on the deck".to_owned()
        }
        Code::NeverGrips => {
            "the sleeve does not grip within an hour: check the fit and the temperatures entered".to_owned()
        }
        Code::NoFloor => {
            "the groove would cut through the flange: do not cut; another ring or a thicker flange".to_owned()
        }
        Code::NoWall => {
            "the bar would break through this wall: do not bore; move the center or take a smaller sleeve".to_owned()
        }
        Code::OddReturn => {
            "springs back otherwise than the job's other holes, or reads higher under load than released: read it again, and look for a chip or a burr on the ledge".to_owned()
        }
        Code::OxygenLow => {
            "boiled all at once, this much nitrogen takes the room below 19.5 % oxygen: less of it, a larger room or the open air".to_owned()
        }
        Code::TooDeep => {
            "deeper than planned: do not cut; a shim, a thicker flange or a longer sleeve, or a lower stand-proud with a deeper deck cut".to_owned()
        }
        Code::TooLittle => {
            "the planned cut leaves a low spot or a sleeve uncut: plan at least the least cut, or find out why it lies low".to_owned()
        }
        Code::UnequalPulls => {
            "the last two pulls were weaker than 95 % of the strongest: they cannot show that it has stopped; pull twice more at one pressure".to_owned()
        }
        Code::WorseAtTheFloor => {
            "near the dewar, in pits and at floor level there is far less oxygen: oxygen alarm, doors open, two people".to_owned()
        }
        Code::Loose => {
            "nothing is left of the press fit once the peaks are smoothed: it would be loose; hone less, or a larger sleeve".to_owned()
        }
        Code::NoStock => {
            "the fitted sleeve leaves less than the hone needs: a sleeve with a smaller inside".to_owned()
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
        About::Cold => "the temperature of the cold: it must be below the shop's",
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
            "a number of this step or of the engine is missing or outside what can be worked out"
        }
    };
    format!("Cannot be worked out as it stands. Look at {which}.")
}

/// What a step's expected time is.
#[must_use]
pub fn timer_expected(step: StepId, low: &str, high: &str) -> String {
    let span = super::span(low, high);
    match step {
        StepId::Drop => format!(
            "from bath to bore at most {span}: later the clearance at the bore is less than asked for"
        ),
        StepId::Hold => format!("sleeve and the iron round it are even after {span}"),
        StepId::Rest => format!("near enough by the block's own cooling after {span}"),
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
