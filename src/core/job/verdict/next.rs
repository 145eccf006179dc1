//! What to do next.

use crate::job::model::field::Field;
use crate::job::model::from_deck::FromDeck;
use crate::job::model::place::Place;
use crate::job::model::reading::{Missing, Spot};
use crate::job::model::step::StepId;
use crate::job::verdict::ledge::LedgeFault;
use crate::job::verdict::proud::Breach;
use crate::job::verdict::signal::Signal;
use crate::quantity::Length;

/// What to do next; lengths say by how much.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Next {
    /// Measure, or enter with the engine: it is missing.
    Measure(Missing),
    /// What is typed or set there cannot be used: mend it.
    Mend(Spot),
    /// A reading there is asked about and not yet answered.
    Answer(Place),
    /// The calculation refused; its fault says why.
    Refused,
    /// Nothing is measured here: mark it.
    MarkIt,
    /// Marked done by hand.
    Marked,
    /// These were read before what was done there since: read them again.
    ReadAgain(Missing),
    /// This engine has no fire ring, so no groove.
    NoGroove,
    /// Skipped, or not for this job.
    PassedOver,
    /// What a step advises at a signal, where it advises one thing only.
    Advice(StepId, Signal),
    /// As that, by how much.
    AdviceBy(StepId, Signal, Length),
    /// Another step comes first.
    First(StepId),
    /// A later step shows that this one's verdict does not hold.
    ProvedWrong(StepId),
    /// Worked out with a usual value: take the time, or enter it.
    Assumed(Field),
    /// The deck was released by hand over flanges not shown to be home.
    ReleasedByHand,
    /// The ledge falls or rises toward the bore, by so much at its worst.
    LedgeShape(LedgeFault, Length),
    /// The ink of the flange's face is broken.
    InkBroken,
    /// The counterbore is not as deep on one clock as on another.
    LedgeUneven,
    /// A hole that is left out holds readings of a sleeve.
    SleeveIn,
    /// The cut is far deeper than planned.
    DeepCut,
    /// The cut leaves too little of a flange.
    LittleFlange,
    /// A flange may be left low with more than the chance accepted.
    MayStayLow,
    /// The block has not so much left to be cut: it is overdrawn by this much.
    BlockCutMost(Length),
    /// A size measured from the deck is past its range, where no cutting brings it
    /// back, by this much.
    DeckSizePast(FromDeck, Length),
    /// The cut puts a size measured from the deck outside its range by this much:
    /// bring it back, and say so.
    DeckSizeRecut(FromDeck, Length),
    /// The cut that is planned will put a size out of its range, by so much.
    DeckSizeWill(FromDeck, Length),
    /// Of a size measured from the deck this number is not entered.
    DeckSizeWants(FromDeck, Field),
    /// The deck is rougher than the gasket allows.
    DeckRough,
    /// A sleeve that is left proud breaks a limit of its height.
    ProudOut(Breach),
    /// A plan of heights is worked to, and this hole is not done.
    PlanOpen(u8),
    /// At its worst clock this hole's height is another than its plan's, by so much and
    /// more than the gauges explain; positive: higher.
    OffPlan(u8, Length),
    /// All heights of a deck keep their limits.
    ProudGood,
    /// Heights were read without the torque that the sheet states.
    ReadFree,
    /// A cylinder stops the job.
    StopsAt(u8),
    /// Steps are open: see what is not done.
    NotAllDone,
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
    /// Within the limits of its height, and not cut to the middle of them: by so much
    /// too shallow, below 0 too deep.
    InLimits(Length),
    /// By its depth the sleeve will stand too far from this hole's, by so much.
    ApartFrom(u8, Length),
    /// Too deep by this much.
    TooDeep(Length),
    /// The step of the block as it came lies deeper than it is to be, by this much.
    StepLies(Length),
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
    /// It was above its seat before the pull, and the seat check shows it home.
    PulledHome,
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
    /// A sleeve that its fit alone holds stands this much too low.
    SetTooLow(Length),
    /// The same of its lowest clock.
    SetLowAt(Length),
    /// It stands this much higher than it was to.
    SetHigh(Length),
    /// The gauge cannot tell whether it stands where it was to.
    SetUndecided,
    /// Not home.
    NotSeated(Length),
    /// Home on the mean, but tilted by this much round the clock.
    Tilted(Length),
    /// The gauges cannot tell.
    SeatUndecided,
    /// The flange reads below its ledge: a reading is wrong.
    BelowLedge,
}
