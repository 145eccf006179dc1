//! The lines of a go or no-go before sleeves are ordered.

use crate::job::model::field::Field;
use crate::job::model::part::SleeveKind as Kind;
use crate::job::model::reading::Standing;
use crate::job::verdict::signal::Signal;
use crate::quantity::Length;

/// What is checked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OrderItem {
    /// Wall left: the thinnest measured, before that the one of the engine.
    Wall,
    /// Web between two counterbores; negative where they overlap.
    Web,
    /// Room between the sleeve's end and the lower step.
    Bottom,
    /// Width of the ledge under the flange.
    Ledge,
    /// Stock for the torque-plate hone, on diameter.
    FinishStock,
    /// Land between finished bore and groove.
    GrooveInside,
    /// Land between groove and flange edge.
    GrooveOutside,
    /// Flange under the groove, after the planned cut.
    GrooveFloor,
}

impl OrderItem {
    /// All, in the order a person goes through them.
    pub const ALL: [Self; 8] = [
        Self::Wall,
        Self::Web,
        Self::Bottom,
        Self::Ledge,
        Self::FinishStock,
        Self::GrooveInside,
        Self::GrooveOutside,
        Self::GrooveFloor,
    ];

    /// What it is worked out from, its limits last.
    #[must_use]
    pub const fn uses(self, kind: Kind) -> &'static [Field] {
        use Field::*;
        match (self, kind) {
            (Self::Wall, _) => &[BlockWall, WallCalm, WallLook],
            (Self::Web, Kind::Flanged) => &[Pitch, FlangeOd, ClearLow, ClearHigh, WebCalm, WebLook],
            (Self::Bottom, Kind::Flanged) => &[
                StepBelow,
                NominalFlange,
                TargetProud,
                SleeveLength,
                BottomLeast,
            ],
            (Self::Ledge, Kind::Flanged) => &[FlangeOd, NominalOd, LedgeLeast],
            (Self::Web, _) => &[Pitch, NominalOd, WebCalm, WebLook],
            (Self::Bottom, Kind::OnStep) => &[StepBelow, SleeveLength, TargetProud],
            (Self::Bottom, Kind::ByFit) => &[StepBelow, SleeveLength, TargetProud, BottomLeast],
            (Self::Ledge, Kind::OnStep) => &[NominalOd, SleeveId, StepBore, LedgeLeast],
            (Self::Ledge, Kind::ByFit) => &[],
            (Self::FinishStock, _) => &[FinalBore, SleeveId, FitLow, FitHigh, FinishLeast],
            (Self::GrooveInside, _) => &[GrooveInner, FinalBore, GrooveLand],
            (Self::GrooveOutside, _) => &[FlangeOd, GrooveOuter, GrooveLand],
            (Self::GrooveFloor, _) => &[
                NominalFlange,
                TargetProud,
                PlannedCut,
                RingHeight,
                RingProud,
                GrooveLand,
            ],
        }
    }
}

/// A value against the least wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// The value.
    pub value: Length,
    /// The least wanted.
    pub least: Length,
    /// What it means.
    pub signal: Signal,
}

/// One line of the check.
#[derive(Clone, Debug, PartialEq)]
pub struct OrderCheck {
    /// How the sleeves stand.
    pub kind: Kind,
    /// What.
    pub item: OrderItem,
    /// How it stands.
    pub standing: Standing<Measured>,
    /// What it is worked out from, where it is known: value in SI, and whether
    /// it stands as a new engine has it.
    pub inputs: Vec<(Field, f64, bool)>,
}

impl OrderCheck {
    /// What it lets the hand do: wait where something is missing.
    #[must_use]
    pub fn signal(&self) -> Signal {
        match &self.standing {
            Standing::Known(measured) => measured.signal,
            Standing::Missing(_) => Signal::Wait,
            Standing::Unusable(_) | Standing::Refused(_) => Signal::Look,
            Standing::NotHere => Signal::None,
        }
    }
}
