//! What a job asks for, by how its sleeves stand: which steps of the shop it has,
//! which fields mean something, which of them a step asks for.

use crate::job::model::field::Field;
use crate::job::model::part::SleeveKind;
use crate::job::model::step::{StepId, StepSpec};

impl SleeveKind {
    /// Whether a job of such sleeves has a step of the shop.
    #[must_use]
    pub const fn has_step(self, step: StepId) -> bool {
        match step {
            StepId::CounterboreD | StepId::Counterbore | StepId::Chamfer => {
                matches!(self, Self::Flanged)
            }
            StepId::StepDepth => matches!(self, Self::OnStep),
            _ => true,
        }
    }

    /// Whether a field means something for such a sleeve.
    #[must_use]
    pub const fn has_field(self, field: Field) -> bool {
        match field {
            Field::NominalFlange
            | Field::FlangeOd
            | Field::FlangeThickness
            | Field::FlangeOdHere
            | Field::Fillet
            | Field::CounterboreD
            | Field::CounterboreDepth
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
            Field::LedgeMost | Field::LedgeLeast | Field::Shim => !matches!(self, Self::ByFit),
            _ => true,
        }
    }

    /// Whether a step asks for a field, or hangs on it, with such sleeves.
    #[must_use]
    pub const fn asks(self, step: StepId, field: Field) -> bool {
        match (step, field) {
            // Where nothing is cut to a depth the deck is read with the height, and
            // home is the height aimed at.
            (StepId::WarmHeight, Field::DeckHere)
            | (StepId::WarmHeight | StepId::Pull | StepId::Seat, Field::TargetProud) => {
                matches!(self, Self::ByFit)
            }
            // The foot of a plain sleeve bears on its step as far as its inside.
            (StepId::Pull, Field::SleeveId) => matches!(self, Self::OnStep),
            _ => self.has_step(step) && self.has_field(field),
        }
    }

    /// The fields of a step that such sleeves are asked for.
    pub fn fields_of(self, step: &'static StepSpec) -> impl Iterator<Item = Field> {
        let asked = move |field: &Field| self.asks(step.id, *field);
        step.fields.iter().copied().filter(asked)
    }
}
