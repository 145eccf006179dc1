//! What the steps with many inputs hang on, beside their own readings.

use crate::job::model::field::Field::{self, *};

/// What a gap under the flange is worked out from, and what more the warm
/// height, the pulls and the seat check hang on.
macro_rules! seating {
    ($($more:ident),*) => {
        &[
            FlangeThickness, CounterboreDepth, Shim, ShimHere, GaugeHeight, GaugeThickness, GaugeDepth,
            GapLimit, TiltLimit, Confidence, CommonHeight, CommonThickness, CommonDepth,
            PriorHome, SleeveKind, SleeveEnds, ProudLow, ProudHigh, PlainLength, StepDepth, GaugeLength, GaugeStep, TargetProud,
            $($more),*
        ]
    };
}
pub(super) const WARM: &[Field] = seating!(
    SleeveLength,
    RoomTemperature,
    ChillShrink,
    ColdOd,
    NominalOd
);
pub(super) const PULLING: &[Field] = seating!(
    RamBore,
    RamHole,
    RamRated,
    RodD,
    RodPitch,
    RodYield,
    LedgeMost,
    FlangeMost,
    StepBore,
    SleeveId,
    NominalOd,
    FlangeOd,
    NominalFlange,
    ChamferHere
);
pub(super) const SEATED: &[Field] = seating!(PullGauge, PullLoaded, PullReleased, SpreadHole);
/// What the cut of a deck is worked out from.
pub(super) const DECKED: &[Field] = &[
    SeatHeight,
    FlangeThickness,
    DeckHere,
    PlannedCut,
    CleanUp,
    GaugeHeight,
    DeckSd,
    Risk,
    RingHeight,
    RingProud,
    GrooveLand,
    FromDeckBefore,
    FromDeckLeast,
    FromDeckMost,
    BlockCutSoFar,
    BlockCutMost,
    DeckFinishKind,
    DeckFinishMost,
    SleeveEnds,
];
/// What heights that are left proud hang on.
pub(super) const LEFT_PROUD: &[Field] = &[
    SleeveKind,
    SleeveEnds,
    ProudLow,
    ProudHigh,
    SeatHeight,
    SpreadHole,
    SpreadNeighbour,
    SpreadAll,
    HeldTorque,
    GaugeHeight,
    GaugeThickness,
    GaugeDepth,
    GaugeLength,
    GaugeStep,
    Shim,
    ShimHere,
    PlanSleeve,
    PlanTurn,
    PlanShim,
    PlanCut,
    PlanHeight,
    PlanDone,
];
/// What an order is checked by.
pub(super) const CHOICE: &[Field] = &[
    SleeveKind,
    SleeveEnds,
    StepBore,
    ClearLow,
    ClearHigh,
    WallCalm,
    WallLook,
    WebCalm,
    WebLook,
    BottomLeast,
    LedgeLeast,
    FinishLeast,
    GrooveLand,
    TargetProud,
    BlockWall,
    RingHeight,
    RingProud,
    PlannedCut,
    FitLow,
    FitHigh,
    WallReading,
    OldBore,
];
/// What the last hone works to.
pub(super) const FINISHING: &[Field] = &[
    FinalBore,
    BoreForm,
    SleeveId,
    SleeveOd,
    BoreD,
    BlockWall,
    PistonD,
    PistonLeast,
    HoneStroke,
    HoneTurns,
    HoneCycles,
    NominalOd,
    SleeveLength,
    FinishLeast,
    FitLow,
    FitHigh,
    GaugeSleeve,
    GaugeBore,
    SleeveTemperature,
    BlockTemperature,
];
/// What a sleeve measured cold is compared with: a step that hangs on that hangs on
/// these, where it is typed.
pub const BEHIND_COLD: &[Field] = &[SleeveOd, SleeveTemperature, GaugeSleeve];
