//! What a job asks for, by how its sleeves stand and end: which steps of the shop it
//! has, which fields mean something, which of them a step asks for.

use crate::job::model::field::Field;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::step::{StepId, StepSpec};

/// How the sleeves of a job stand and end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stand {
    /// How they stand.
    pub kind: SleeveKind,
    /// How they end at the deck.
    pub ends: SleeveEnds,
}

impl Stand {
    /// What a job counts as in which nobody says anything: as all were before there
    /// was a choice.
    pub const USUAL: Self = Self {
        kind: SleeveKind::Flanged,
        ends: SleeveEnds::Decked,
    };

    /// Whether a job of such sleeves has a step of the shop.
    #[must_use]
    pub const fn has_step(self, step: StepId) -> bool {
        self.kind.has_step(step) && self.ends.has_step(step)
    }

    /// Whether a field means something for such sleeves.
    #[must_use]
    pub const fn has_field(self, field: Field) -> bool {
        self.kind.has_field(field) && self.ends.has_field(field)
    }

    /// Whether a step asks for a field, or hangs on it, with such sleeves.
    #[must_use]
    pub const fn asks(self, step: StepId, field: Field) -> bool {
        self.kind.asks(step, field) && self.ends.has_step(step) && self.ends.asks(step, field)
    }

    /// The fields of a step that such sleeves are asked for.
    pub fn fields_of(self, step: &'static StepSpec) -> impl Iterator<Item = Field> {
        let asked = move |field: &Field| self.asks(step.id, *field);
        step.fields.iter().copied().filter(asked)
    }
}

impl SleeveEnds {
    /// The deck is cut, or the heights are brought within their limits; never both.
    const fn has_step(self, step: StepId) -> bool {
        match step {
            StepId::Deck => matches!(self, Self::Decked),
            StepId::Heights => matches!(self, Self::Proud),
            _ => true,
        }
    }

    const fn has_field(self, field: Field) -> bool {
        match field {
            Field::PlannedCut
            | Field::CleanUp
            | Field::Risk
            | Field::TargetProud
            | Field::FeedSd
            | Field::DeckSd
            | Field::DeckCut
            | Field::FromDeckBefore
            | Field::FromDeckLeast
            | Field::FromDeckMost
            | Field::FromDeckAfter
            | Field::RecutSaid
            | Field::BlockCutSoFar
            | Field::BlockCutMost
            | Field::DeckFinishKind
            | Field::DeckFinishMost
            | Field::DeckFinish => matches!(self, Self::Decked),
            Field::ProudLow
            | Field::ProudHigh
            | Field::SpreadHole
            | Field::SpreadNeighbour
            | Field::SpreadAll
            | Field::HeldTorque
            | Field::HeldDown
            | Field::LedgeCutMost
            | Field::LedgeCutStep
            | Field::PlanSleeve
            | Field::PlanTurn
            | Field::PlanShim
            | Field::PlanCut
            | Field::PlanHeight
            | Field::PlanDone => matches!(self, Self::Proud),
            _ => true,
        }
    }

    const fn asks(self, step: StepId, field: Field) -> bool {
        match (step, field) {
            // Depth and height are read from the deck beside the hole, and it stays.
            (StepId::Counterbore | StepId::StepDepth | StepId::WarmHeight, Field::DeckHere) => {
                matches!(self, Self::Decked)
            }
            _ => self.has_field(field),
        }
    }
}

impl SleeveKind {
    const fn has_step(self, step: StepId) -> bool {
        match step {
            StepId::CounterboreD | StepId::Counterbore | StepId::Chamfer => {
                matches!(self, Self::Flanged)
            }
            StepId::StepDepth => matches!(self, Self::OnStep),
            _ => true,
        }
    }

    const fn has_field(self, field: Field) -> bool {
        match field {
            Field::NominalFlange
            | Field::FlangeOd
            | Field::FlangeThickness
            | Field::FlangeOdHere
            | Field::Fillet
            | Field::CounterboreD
            | Field::CounterboreDepth
            | Field::LedgeInner
            | Field::InkCheck
            | Field::LedgeFall
            | Field::ChamferHere
            | Field::ClearLow
            | Field::ClearHigh
            | Field::FilletSpare
            | Field::FlangeMost
            | Field::GaugeThickness => matches!(self, Self::Flanged),
            Field::PlainLength
            | Field::StepDepth
            | Field::StepBore
            | Field::GaugeLength
            | Field::GaugeStep => matches!(self, Self::OnStep),
            Field::LedgeMost
            | Field::LedgeLeast
            | Field::Shim
            | Field::ShimHere
            | Field::ShimSizes
            | Field::ShimsLeft => !matches!(self, Self::ByFit),
            _ => true,
        }
    }

    const fn asks(self, step: StepId, field: Field) -> bool {
        match (step, field) {
            // Where nothing is cut to a depth the deck is read with the height, and
            // home is the height aimed at.
            (StepId::WarmHeight, Field::DeckHere)
            | (StepId::WarmHeight | StepId::Pull | StepId::Seat, Field::TargetProud) => {
                matches!(self, Self::ByFit)
            }
            (StepId::WarmHeight | StepId::Pull, Field::ProudLow | Field::ProudHigh) => {
                matches!(self, Self::ByFit)
            }
            // The foot of a plain sleeve bears on its step as far as its inside.
            (StepId::Pull, Field::SleeveId) => matches!(self, Self::OnStep),
            _ => self.has_step(step) && self.has_field(field),
        }
    }
}
