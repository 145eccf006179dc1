//! What the numbers of a cylinder say, as types: signals, the one number of a
//! step, what to do next, the state shown in the strip. Words are the page's.

use super::field::Measure;
use super::order::OrderCheck;
use super::step::StepId;
use super::{Field, Place};
use crate::metrology::fit::Fit;
use crate::metrology::form::Form;
use crate::metrology::seat::Seat;
use crate::planning::counterbore::Counterbore;
use crate::quantity::Length;
use crate::quantity::report::{Fault, Finding};
use crate::thermal::chill::Chill;
use crate::thermal::oxygen::Oxygen;

/// What the hand may do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Signal {
    /// Nothing to say yet.
    None,
    /// Go on.
    Go,
    /// More to do here first.
    Wait,
    /// Look before going on.
    Look,
    /// Stop.
    Stop,
}

/// What the one number of a step is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// The deck cut.
    DeckCut,
    /// Price of the job.
    Price,
    /// Block and sleeves apart, in the job's degrees.
    Apart,
    /// Share of the pressure lost, per cent.
    PressureLost,
    /// Deck heights apart.
    DatumLean,
    /// Old bore out of round or tapered.
    Wear,
    /// Thinnest wall after boring.
    WallLeft,
    /// Web between the counterbores.
    WebLeft,
    /// Bar off the old centre.
    Offset,
    /// Left for the hone, on diameter.
    HoneStock,
    /// Room round the flange, on diameter.
    FlangeRoom,
    /// Chamfer over fillet.
    FilletRoom,
    /// Least share of oxygen in the room, per cent.
    OxygenLeft,
    /// Time to quiet, s.
    Quiet,
    /// Sleeve and shop apart, in the job's degrees.
    WarmApart,
    /// Room between piston and head.
    HeadRoom,
    /// Largest protrusion of the piston.
    PistonProud,
    /// Groove deeper than wanted.
    GrooveOff,
    /// Stock left for the torque-plate hone, on diameter.
    FinishStock,
    /// Least ring gap.
    LeastGap,
    /// Out-of-round under the flange.
    OutOfRound,
    /// Depth still to cut.
    StillToCut,
    /// Interference.
    Fit,
    /// Height above the predicted height.
    AbovePredicted,
    /// Gap under the flange after the last pull.
    GapAfterPull,
    /// Gap under the flange.
    Gap,
}

/// The one number of a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OneNumber {
    /// What it is.
    pub figure: Figure,
    /// Its value, SI.
    pub si: f64,
    /// What it measures.
    pub measure: Measure,
    /// Its standard uncertainty, SI, where it has one.
    pub u_si: Option<f64>,
}

/// What to do next; lengths say by how much.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Next {
    /// Measure: `missing` places of the field are empty.
    Measure(Field, u8),
    /// A typed value cannot be used: mend it.
    Mend(Place),
    /// A number of the engine is missing or cannot be used.
    MendEngine(Field),
    /// The calculation refused; its fault says why.
    Refused,
    /// Nothing is measured here: mark it.
    MarkIt,
    /// Marked done by hand.
    Marked,
    /// Skipped, or not for this job.
    PassedOver,
    /// What a step says at a signal, where it says one thing only.
    Says(StepId, Signal),
    /// As that, by how much.
    SaysBy(StepId, Signal, Length),
    /// The sleeve is round: go on.
    SleeveRound,
    /// The sleeve wants a look.
    SleeveLook,
    /// The sleeve is too far out of round: do not fit it.
    SleeveStop,
    /// Cut this much deeper.
    CutDeeper(Length),
    /// At depth.
    AtDepth,
    /// Too deep by this much.
    TooDeep(Length),
    /// The fit is in its band.
    FitGood,
    /// The gauges cannot tell whether it is.
    FitUndecided,
    /// Too tight: hone this much more off the bore.
    HoneMore(Length),
    /// Too loose by this much.
    FitLoose(Length),
    /// In the band, but the bore is out of round or tapered.
    BoreForm,
    /// The drop has its numbers: see its answer.
    DropReady,
    /// As high as a climb explains: pull.
    PullHome,
    /// Higher than any climb explains.
    AboveCeiling,
    /// Home already: check the seat.
    HomeWarm,
    /// Pull again.
    PullAgain,
    /// Stopped moving, home as far as the pulls can tell: check at four clocks.
    CheckSeat,
    /// Stopped moving, too high: not home.
    StoppedHigh(Length),
    /// Stopped; the gauges cannot tell whether it is home.
    StoppedUnsure,
    /// Home.
    Seated,
    /// Not home.
    NotSeated(Length),
    /// Home on the mean, but tilted by this much round the clock.
    Tilted(Length),
    /// The gauges cannot tell.
    SeatUndecided,
    /// The flange reads below its ledge: a reading is wrong.
    BelowLedge,
}

/// What a further number of a step is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Detail {
    /// Hours of work.
    Hours,
    /// Sleeves to buy.
    Sleeves,
    /// Nitrogen that the sleeves boil off, litres.
    SleevesNitrogen,
    /// Nitrogen that fills the bath, litres.
    BathFill,
    /// Nitrogen that is lost by standing, litres.
    StoodAway,
    /// Nitrogen to buy, litres.
    Nitrogen,
    /// Clock point and level of the thinnest wall, as an index.
    Thinnest,
    /// Wall of the sleeve.
    SleeveWall,
    /// Depth of the flats where flanges overlap.
    FlatDepth,
    /// Micrometer over spindle and cutter for the bore wanted.
    CutterSetting,
    /// Bore wanted off the bar (diameter).
    BoreWanted,
    /// Strokes of the hone for the stock that is left.
    Strokes,
    /// Off toward 12 o'clock.
    OffsetUp,
    /// Off toward 3 o'clock.
    OffsetRight,
    /// Oxygen if all boiled at once.
    Sudden,
    /// Litres that bring a sudden release to the limit.
    LitresAtLimit,
    /// Quiet at the earliest.
    QuietLow,
    /// Quiet at the latest.
    QuietHigh,
    /// Nitrogen boiled off by one sleeve, litres.
    BathLitres,
    /// Largest reading.
    Largest,
    /// Smallest reading.
    Smallest,
    /// Out of round, worst level.
    Round,
    /// Taper.
    Taper,
    /// Groove depth wanted.
    GrooveWanted,
    /// Flange left under the groove.
    FloorLeft,
    /// Gasket that the room is reckoned with, compressed.
    GasketTaken,
    /// Compression ratio after the deck cut.
    Compression,
    /// How much the fit closes the inside.
    CloseIn,
    /// Diameter to bore the fitted sleeve to.
    BoreTo,
    /// Share of the contact pressure left once bored, per cent.
    GripLeft,
    /// Finished bore less piston.
    PistonRoom,
    /// Included angle of the cross-hatch, degrees.
    HatchIncluded,
    /// Each scratch to the horizontal, degrees.
    HatchHorizontal,
}

/// A further number of a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct More {
    /// What it is.
    pub detail: Detail,
    /// Its value, SI; litres and hours as they are.
    pub si: f64,
    /// What it measures.
    pub measure: Measure,
}

/// The answer of a step's calculation, for the drawing and the table.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// None.
    None,
    /// Further numbers.
    More(Vec<More>),
    /// Go or no-go of an order, with further numbers.
    Order(Vec<OrderCheck>, Vec<More>),
    /// A form with further numbers.
    Form(Form, Vec<More>),
    /// Walls left, by place of their reading.
    Walls(Vec<(u8, Length)>),
    /// The chill.
    Chill(Chill),
    /// Oxygen in the room.
    Oxygen(Oxygen),
    /// Roundness of the sleeve.
    SleeveForm(Form),
    /// Depth.
    Counterbore(Counterbore),
    /// Fit, and the form of the bore.
    Fit(Fit, Form),
    /// Heights against predicted ones.
    Heights(Heights),
    /// Pulls, the seat seen from them alone.
    Pulls(Seat),
    /// The seat.
    Seat(Seat),
}

/// Heights against predicted ones, clock by clock.
#[derive(Clone, Debug, PartialEq)]
pub struct Heights {
    /// Thickness + shim - depth.
    pub predicted: Vec<Length>,
    /// As measured.
    pub height: Vec<Length>,
    /// Mean of height - predicted.
    pub above: Length,
    /// The most that climbing explains.
    pub ceiling: Option<Length>,
}

/// What a step says.
#[derive(Clone, Debug, PartialEq)]
pub struct StepReport {
    /// The step.
    pub id: StepId,
    /// Whether anything was typed.
    pub begun: bool,
    /// Whether everything needed was.
    pub complete: bool,
    /// What the hand may do.
    pub signal: Signal,
    /// The one number.
    pub number: Option<OneNumber>,
    /// What to do next.
    pub next: Next,
    /// What the calculation found beside it.
    pub findings: Vec<Finding>,
    /// Why it refused.
    pub fault: Option<Fault>,
    /// Its answer.
    pub answer: Answer,
    /// Values still questioned.
    pub questioned: Vec<Place>,
    /// Whether it was skipped or is not for this job.
    pub passed_over: bool,
}

impl StepReport {
    /// Whether the hand may go on to the next step.
    #[must_use]
    pub fn is_settled(&self) -> bool {
        let measured = self.complete && matches!(self.signal, Signal::Go | Signal::Look);
        measured || (self.passed_over && self.signal < Signal::Stop)
    }
}

/// The state of a cylinder, as the strip shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Gets no sleeve in this job.
    LeftOut,
    /// Nothing typed.
    NotBegun,
    /// In work: steps done, of so many.
    InWork(u8, u8),
    /// Home.
    Seated,
    /// Wants a look.
    Look,
    /// Stop.
    Stop,
}

/// What a cylinder says.
#[derive(Clone, Debug, PartialEq)]
pub struct CylinderReport {
    /// Which.
    pub cylinder: u8,
    /// Its steps.
    pub steps: Vec<StepReport>,
    /// Its state.
    pub state: State,
    /// The step to work on.
    pub current: StepId,
}

impl CylinderReport {
    /// The report of a step.
    #[must_use]
    pub fn step(&self, id: StepId) -> Option<&StepReport> {
        self.steps.iter().find(|s| s.id == id)
    }

    /// Whether its flange is home.
    #[must_use]
    pub fn is_seated(&self) -> bool {
        self.step(StepId::Seat)
            .is_some_and(|s| s.next == Next::Seated)
    }
}
