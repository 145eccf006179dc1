//! What the steps say: help, what to do next, findings.

use crate::show::length;
use crate::words::made as w;
use coldseat_core::ask::{About, Code, Fault, Finding, Length, Signal, StepId, UnitSystem};

/// How to take the readings of a step.
#[must_use]
pub fn help(step: StepId) -> &'static str {
    match step {
        StepId::Enquiry => w::HELP_ENQUIRY.get(),
        StepId::Intake => w::HELP_INTAKE.get(),
        StepId::Rest => w::HELP_REST.get(),
        StepId::Pressure => w::HELP_PRESSURE.get(),
        StepId::Datum => w::HELP_DATUM.get(),
        StepId::OldBore => w::HELP_OLD_BORE.get(),
        StepId::Wall => w::HELP_WALL.get(),
        StepId::Choose => w::HELP_CHOOSE.get(),
        StepId::Sleeve => w::HELP_SLEEVE.get(),
        StepId::Caps => w::HELP_CAPS.get(),
        StepId::Centre => w::HELP_CENTRE.get(),
        StepId::Bore => w::HELP_BORE.get(),
        StepId::CounterboreD => w::HELP_COUNTERBORE_D.get(),
        StepId::Counterbore => w::HELP_COUNTERBORE.get(),
        StepId::StepDepth => w::HELP_STEP_DEPTH.get(),
        StepId::Chamfer => w::HELP_CHAMFER.get(),
        StepId::Fit => w::HELP_FIT.get(),
        StepId::Clean => w::HELP_CLEAN.get(),
        StepId::DryRun => w::HELP_DRY_RUN.get(),
        StepId::Chill => w::HELP_CHILL.get(),
        StepId::Drop => w::HELP_DROP.get(),
        StepId::Hold => w::HELP_HOLD.get(),
        StepId::WarmHeight => w::HELP_WARM_HEIGHT.get(),
        StepId::Pull => w::HELP_PULL.get(),
        StepId::Seat => w::HELP_SEAT.get(),
        StepId::Deck => w::HELP_DECK.get(),
        StepId::Heights => w::HELP_HEIGHTS.get(),
        StepId::Protrusion => w::HELP_PROTRUSION.get(),
        StepId::Groove => w::HELP_GROOVE.get(),
        StepId::Finish => w::HELP_FINISH.get(),
        StepId::RingGap => w::HELP_RING_GAP.get(),
        StepId::WashAgain => w::HELP_WASH_AGAIN.get(),
        StepId::Report => w::HELP_REPORT.get(),
    }
}

/// What a step says at a signal, where it says one thing only.
#[must_use]
pub fn says(step: StepId, signal: Signal) -> &'static str {
    match (step, signal) {
        (StepId::Enquiry, Signal::Go) => w::SAYS_ENQUIRY_GO.get(),
        (StepId::Rest, Signal::Go) => w::SAYS_REST_GO.get(),
        (StepId::Rest, Signal::Wait) => w::SAYS_REST_WAIT.get(),
        (StepId::Pressure, Signal::Go) => w::SAYS_PRESSURE_GO.get(),
        (StepId::Pressure, Signal::Stop) => w::SAYS_PRESSURE_STOP.get(),
        (StepId::WashAgain, Signal::Go) => w::SAYS_WASH_AGAIN_GO.get(),
        (StepId::WashAgain, Signal::Stop) => w::SAYS_WASH_AGAIN_STOP.get(),
        (StepId::Datum, Signal::Go) => w::SAYS_DATUM_GO.get(),
        (StepId::Datum, Signal::Look) => w::SAYS_DATUM_LOOK.get(),
        (StepId::OldBore, Signal::Go) => w::SAYS_OLD_BORE_GO.get(),
        (StepId::Wall, Signal::Go) => w::SAYS_WALL_GO.get(),
        (StepId::Wall, Signal::Look) => w::SAYS_WALL_LOOK.get(),
        (StepId::Wall, Signal::Stop) => w::SAYS_WALL_STOP.get(),
        (StepId::Choose, Signal::Go) => w::SAYS_CHOOSE_GO.get(),
        (StepId::Choose, Signal::Look) => w::SAYS_CHOOSE_LOOK.get(),
        (StepId::Choose, Signal::Stop) => w::SAYS_CHOOSE_STOP.get(),
        (StepId::Choose, Signal::Wait) => w::SAYS_CHOOSE_WAIT.get(),
        (StepId::Pull, Signal::Stop) => w::SAYS_PULL_STOP.get(),
        (StepId::Deck, Signal::Wait) => w::SAYS_DECK_WAIT.get(),
        (StepId::Heights, Signal::Wait) => w::SAYS_HEIGHTS_WAIT.get(),
        (StepId::Deck, Signal::Go) => w::CUT_GOOD.get(),
        (StepId::Deck, Signal::None) => w::SAYS_DECK_NONE.get(),
        (StepId::Deck, Signal::Stop) => w::CUT_TOO_SMALL.get(),
        (StepId::Centre, Signal::Go) => w::SAYS_CENTRE_GO.get(),
        (StepId::Centre, Signal::Look) => w::SAYS_CENTRE_LOOK.get(),
        (StepId::Bore, Signal::Go) => w::SAYS_BORE_GO.get(),
        (StepId::Bore, Signal::Look) => w::SAYS_BORE_LOOK.get(),
        (StepId::CounterboreD, Signal::Go) => w::SAYS_COUNTERBORE_D_GO.get(),
        (StepId::CounterboreD, Signal::Look) => w::SAYS_COUNTERBORE_D_LOOK.get(),
        (StepId::Chamfer, Signal::Go) => w::SAYS_CHAMFER_GO.get(),
        (StepId::Chamfer, Signal::Wait) => w::SAYS_CHAMFER_WAIT.get(),
        (StepId::DryRun, Signal::Go) => w::SAYS_DRY_RUN_GO.get(),
        (StepId::DryRun, Signal::Look) => w::SAYS_DRY_RUN_LOOK.get(),
        (StepId::DryRun, Signal::Stop) => w::SAYS_DRY_RUN_STOP.get(),
        (StepId::Chill, Signal::Go) => w::SAYS_CHILL_GO.get(),
        (StepId::Chill, Signal::Look) => w::SAYS_CHILL_LOOK.get(),
        (StepId::Chill, Signal::Wait) => w::SAYS_CHILL_WAIT.get(),
        (StepId::Drop, Signal::Go) => w::SAYS_DROP_GO.get(),
        (StepId::Drop, Signal::Look) => w::SAYS_DROP_LOOK.get(),
        (StepId::Drop, Signal::Stop) => w::SAYS_DROP_STOP.get(),
        (StepId::Hold, Signal::Go) => w::SAYS_HOLD_GO.get(),
        (StepId::Hold, Signal::Wait) => w::SAYS_HOLD_WAIT.get(),
        (StepId::Protrusion, Signal::None) => w::SAYS_PROTRUSION_NONE.get(),
        (StepId::Protrusion, Signal::Go) => w::SAYS_PROTRUSION_GO.get(),
        (StepId::Protrusion, Signal::Stop) => w::SAYS_PROTRUSION_STOP.get(),
        (StepId::Groove, Signal::Go) => w::SAYS_GROOVE_GO.get(),
        (StepId::Finish, Signal::Go) => w::SAYS_FINISH_GO.get(),
        (StepId::Finish, Signal::Look) => w::SAYS_FINISH_LOOK.get(),
        (StepId::RingGap, Signal::Go) => w::SAYS_RING_GAP_GO.get(),
        (StepId::RingGap, Signal::Wait) => w::SAYS_RING_GAP_WAIT.get(),
        (StepId::RingGap, Signal::Look) => w::SAYS_RING_GAP_LOOK.get(),
        _ => w::MARK_IT.get(),
    }
}

/// The same, by how much.
#[must_use]
pub fn says_by(step: StepId, signal: Signal, by: Length, units: UnitSystem) -> String {
    let by = length(by.as_m(), units);
    match (step, signal) {
        (StepId::Bore, Signal::Wait) => w::SaysByBoreWait { by: &by }.say(),
        (StepId::Bore, Signal::Stop) => w::SaysByBoreStop { by: &by }.say(),
        (StepId::CounterboreD, Signal::Wait) => w::SaysByCounterboreDWait { by: &by }.say(),
        (StepId::Groove, Signal::Stop) => w::SaysByGrooveStop { by: &by }.say(),
        (StepId::Groove, Signal::Wait) => w::SaysByGrooveWait { by: &by }.say(),
        (StepId::Finish, Signal::Wait) => w::SaysByFinishWait { by: &by }.say(),
        (StepId::Finish, Signal::Stop) => w::SaysByFinishStop { by: &by }.say(),
        _ => says(step, signal).to_owned(),
    }
}

/// A finding in the person's words and units. The calculation's own message is in
/// metres, in English and for scripts: the page never shows one.
#[must_use]
pub fn finding(finding: &Finding, units: UnitSystem) -> String {
    let apart = match units {
        UnitSystem::Inch => w::FINDING_APART_INCH.get(),
        UnitSystem::Metric => w::FINDING_APART_METRIC.get(),
    };
    let uneven = match units {
        UnitSystem::Inch => w::FINDING_UNEVEN_INCH.get(),
        UnitSystem::Metric => w::FINDING_UNEVEN_METRIC.get(),
    };
    match finding.code {
        Code::PistonTight => w::FINDING_PISTON_TIGHT.get().to_owned(),
        Code::NoPistonClearance => w::FINDING_NO_PISTON_CLEARANCE.get().to_owned(),
        Code::Cocked => w::FINDING_COCKED.get().to_owned(),
        Code::ColdNotSmaller => w::FINDING_COLD_NOT_SMALLER.get().to_owned(),
        Code::ColdShrinksLittle => w::FINDING_COLD_SHRINKS_LITTLE.get().to_owned(),
        Code::ColdShrinksMuch => w::FINDING_COLD_SHRINKS_MUCH.get().to_owned(),
        Code::LittleFlangeLeft => w::FINDING_LITTLE_FLANGE_LEFT.get().to_owned(),
        Code::DeepCut => w::FINDING_DEEP_CUT.get().to_owned(),
        Code::FlangeMayStayLow => w::FINDING_FLANGE_MAY_STAY_LOW.get().to_owned(),
        Code::LedgeNotFlat => w::FindingLedgeNotFlat { uneven: &uneven }.say(),
        Code::TemperaturesApart => w::FindingTemperaturesApart { apart: &apart }.say(),
        Code::BelowLedge => w::FINDING_BELOW_LEDGE.get().to_owned(),
        Code::DoesNotEnter => w::FINDING_DOES_NOT_ENTER.get().to_owned(),
        Code::FlatsNeeded => w::FINDING_FLATS_NEEDED.get().to_owned(),
        Code::GaugesEatTheBand => w::FINDING_GAUGES_EAT_THE_BAND.get().to_owned(),
        Code::SharpCorner => w::FINDING_SHARP_CORNER.get().into(),
        Code::MeshSpeaks => w::FINDING_MESH_SPEAKS.get().into(),
        Code::HeightMoved => w::FINDING_HEIGHT_MOVED.get().to_owned(),
        Code::NeverGrips => w::FINDING_NEVER_GRIPS.get().to_owned(),
        Code::NoFloor => w::FINDING_NO_FLOOR.get().to_owned(),
        Code::NoWall => w::FINDING_NO_WALL.get().to_owned(),
        Code::OddReturn => w::FINDING_ODD_RETURN.get().to_owned(),
        Code::OxygenLow => w::FINDING_OXYGEN_LOW.get().to_owned(),
        Code::TooDeep => w::FINDING_TOO_DEEP.get().to_owned(),
        Code::TooLittle => w::FINDING_TOO_LITTLE.get().to_owned(),
        Code::UnequalPulls => w::FINDING_UNEQUAL_PULLS.get().to_owned(),
        Code::WorseAtTheFloor => w::FINDING_WORSE_AT_THE_FLOOR.get().to_owned(),
        Code::Loose => w::FINDING_LOOSE.get().to_owned(),
        Code::NoStock => w::FINDING_NO_STOCK.get().to_owned(),
        Code::AllAlike => w::FINDING_ALL_ALIKE.get().to_owned(),
        Code::BoreTooBig => w::FINDING_BORE_TOO_BIG.get().to_owned(),
        Code::Butts => w::FINDING_BUTTS.get().to_owned(),
        Code::DeckNotSurveyed => w::FINDING_DECK_NOT_SURVEYED.get().to_owned(),
        Code::JointSpread => w::FINDING_JOINT_SPREAD.get().to_owned(),
        Code::LittleMargin => w::FINDING_LITTLE_MARGIN.get().to_owned(),
        Code::LoadNotChecked => w::FINDING_LOAD_NOT_CHECKED.get().to_owned(),
        Code::LooseInService => w::FINDING_LOOSE_IN_SERVICE.get().to_owned(),
        Code::NeighboursMove => w::FINDING_NEIGHBOURS_MOVE.get().to_owned(),
        Code::NoFlange => w::FINDING_NO_FLANGE.get().to_owned(),
        Code::NoPlan => w::FINDING_NO_PLAN.get().to_owned(),
        Code::OneReading => w::FINDING_ONE_READING.get().to_owned(),
        Code::OutsideSizes => w::FINDING_OUTSIDE_SIZES.get().to_owned(),
        Code::OutsideTheRule => w::FINDING_OUTSIDE_THE_RULE.get().to_owned(),
        Code::ReturnsNotCompared => w::FINDING_RETURNS_NOT_COMPARED.get().to_owned(),
        Code::SamplesRefused => w::FINDING_SAMPLES_REFUSED.get().to_owned(),
        Code::SlopeFromRoughness => w::FINDING_SLOPE_FROM_ROUGHNESS.get().to_owned(),
        Code::StandsOut => w::FINDING_STANDS_OUT.get().to_owned(),
        Code::SweptOval => w::FINDING_SWEPT_OVAL.get().to_owned(),
        Code::TighterBelowTheDeck => w::FINDING_TIGHTER_BELOW_THE_DECK.get().to_owned(),
    }
}

/// Why a calculation refused, by the number it names; its own message is in
/// metres and for the log.
#[must_use]
pub fn fault(fault: &Fault) -> String {
    let which = match fault.about() {
        About::Deck => w::FAULT_WHICH_DECK.get(),
        About::CleanUp => w::FAULT_WHICH_CLEAN_UP.get(),
        About::Cut => w::FAULT_WHICH_CUT.get(),
        About::Pulls => w::FAULT_WHICH_PULLS.get(),
        About::Depth => w::FAULT_WHICH_DEPTH.get(),
        About::Thickness => w::FAULT_WHICH_THICKNESS.get(),
        About::Heights => w::FAULT_WHICH_HEIGHTS.get(),
        About::Plan => w::FAULT_WHICH_PLAN.get(),
        About::Wall => w::FAULT_WHICH_WALL.get(),
        About::Temperatures => w::FAULT_WHICH_TEMPERATURES.get(),
        About::Cold => w::FAULT_WHICH_COLD.get(),
        About::Heat => w::FAULT_WHICH_HEAT.get(),
        About::Times => w::FAULT_WHICH_TIMES.get(),
        About::Diameters => w::FAULT_WHICH_DIAMETERS.get(),
        About::Lengths => w::FAULT_WHICH_LENGTHS.get(),
        About::Gauges => w::FAULT_WHICH_GAUGES.get(),
        About::Limits => w::FAULT_WHICH_LIMITS.get(),
        About::Loads => w::FAULT_WHICH_LOADS.get(),
        About::Tools => w::FAULT_WHICH_TOOLS.get(),
        About::Materials => w::FAULT_WHICH_MATERIALS.get(),
        About::Costs => w::FAULT_WHICH_COSTS.get(),
        About::Other => w::FAULT_WHICH_OTHER.get(),
    };
    w::Fault { which: &which }.say()
}

/// What a step's expected time is.
#[must_use]
pub fn timer_expected(step: StepId, low: &str, high: &str) -> String {
    let span = super::span(low, high);
    match step {
        StepId::Drop => w::TimerExpectedDrop { span: &span }.say(),
        StepId::Hold => w::TimerExpectedHold { span: &span }.say(),
        StepId::Rest => w::TimerExpectedRest { span: &span }.say(),
        _ => w::TimerExpectedOther { span: &span }.say(),
    }
}

#[must_use]
pub fn timer_left(low: &str, high: &str) -> String {
    w::TimerLeft {
        low: &low,
        high: &high,
    }
    .say()
}

#[must_use]
pub fn timer_at_most(low: &str) -> String {
    w::TimerAtMost { low: &low }.say()
}
