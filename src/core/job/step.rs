//! The steps of the job as data: in shop order, what is measured, what is
//! worked out, which drawing shows it, which caution goes with it. A new step
//! is one entry here and its texts; page and report have one renderer.

use super::field::Field;

/// A step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum StepId {
    /// Receive the sleeve: outside diameter and flange.
    Sleeve,
    /// Cut the counterbore to depth.
    Counterbore,
    /// Hone the bore and measure the fit.
    Fit,
    /// Chill and drop.
    Drop,
    /// Measure the height, warm.
    WarmHeight,
    /// Pull the sleeve home.
    Pull,
    /// Check that it is home.
    Seat,
    /// Cut the deck.
    Deck,
}

/// What a step is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Subject {
    /// Each cylinder for itself.
    Cylinder,
    /// A deck: all cylinders of a bank together.
    Bank,
}

/// What a step works out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Calculation {
    /// Roundness of the sleeve.
    SleeveForm,
    /// Depth still to cut.
    Counterbore,
    /// Interference against its band.
    Fit,
    /// The cold drop.
    ColdDrop,
    /// Height against the predicted one.
    Height,
    /// Settling, pull by pull.
    Pulls,
    /// Whether the flange is on its ledge.
    Seat,
    /// The deck cut.
    Deck,
}

/// Which drawing shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drawing {
    /// None.
    None,
    /// The fit inside its band.
    FitBand,
    /// Clearance against time.
    ClearanceTime,
    /// The flange on its ledge.
    FlangeSection,
    /// The pull staircase.
    Staircase,
    /// What each flange loses.
    DeckCuts,
}

/// Which caution goes with it (job.md, section 6).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Caution {
    /// Cutting.
    Cutting,
    /// Liquid nitrogen.
    Nitrogen,
    /// Iron that is cold.
    ColdIron,
    /// Ram and rod.
    Ram,
}

/// A step, as data.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StepSpec {
    /// Which.
    pub id: StepId,
    /// Its name in documents and addresses.
    pub name: &'static str,
    /// Its number in shop order, of 31.
    pub number: u8,
    /// What it is about.
    pub subject: Subject,
    /// What is measured, in order.
    pub fields: &'static [Field],
    /// Of these, the ones without which the step has no answer.
    pub needed: &'static [Field],
    /// What is worked out.
    pub calculation: Calculation,
    /// The drawing.
    pub drawing: Drawing,
    /// The cautions.
    pub cautions: &'static [Caution],
}

/// The steps, in shop order.
pub const STEPS: &[StepSpec] = &[
    StepSpec {
        id: StepId::Sleeve,
        name: "sleeve",
        number: 9,
        subject: Subject::Cylinder,
        fields: &[Field::SleeveOd, Field::FlangeThickness],
        needed: &[Field::SleeveOd, Field::FlangeThickness],
        calculation: Calculation::SleeveForm,
        drawing: Drawing::None,
        cautions: &[],
    },
    StepSpec {
        id: StepId::Counterbore,
        name: "counterbore",
        number: 14,
        subject: Subject::Cylinder,
        fields: &[Field::CounterboreDepth, Field::DeckHere],
        needed: &[Field::CounterboreDepth],
        calculation: Calculation::Counterbore,
        drawing: Drawing::FlangeSection,
        cautions: &[Caution::Cutting],
    },
    StepSpec {
        id: StepId::Fit,
        name: "fit",
        number: 16,
        subject: Subject::Cylinder,
        fields: &[
            Field::BoreD,
            Field::SleeveTemperature,
            Field::BlockTemperature,
        ],
        needed: &[
            Field::BoreD,
            Field::SleeveTemperature,
            Field::BlockTemperature,
        ],
        calculation: Calculation::Fit,
        drawing: Drawing::FitBand,
        cautions: &[Caution::Cutting],
    },
    StepSpec {
        id: StepId::Drop,
        name: "drop",
        number: 20,
        subject: Subject::Cylinder,
        fields: &[Field::Carry],
        needed: &[Field::Carry],
        calculation: Calculation::ColdDrop,
        drawing: Drawing::ClearanceTime,
        cautions: &[Caution::Nitrogen, Caution::ColdIron],
    },
    StepSpec {
        id: StepId::WarmHeight,
        name: "height",
        number: 22,
        subject: Subject::Cylinder,
        fields: &[Field::WarmHeight],
        needed: &[Field::WarmHeight],
        calculation: Calculation::Height,
        drawing: Drawing::FlangeSection,
        cautions: &[],
    },
    StepSpec {
        id: StepId::Pull,
        name: "pull",
        number: 23,
        subject: Subject::Cylinder,
        fields: &[Field::PullGauge, Field::PullLoaded, Field::PullReleased],
        needed: &[Field::PullGauge, Field::PullReleased],
        calculation: Calculation::Pulls,
        drawing: Drawing::Staircase,
        cautions: &[Caution::Ram],
    },
    StepSpec {
        id: StepId::Seat,
        name: "seat",
        number: 24,
        subject: Subject::Cylinder,
        fields: &[Field::SeatHeight],
        needed: &[Field::SeatHeight],
        calculation: Calculation::Seat,
        drawing: Drawing::FlangeSection,
        cautions: &[],
    },
    StepSpec {
        id: StepId::Deck,
        name: "deck",
        number: 25,
        subject: Subject::Bank,
        fields: &[Field::LowSpot, Field::DeckCut],
        needed: &[Field::LowSpot],
        calculation: Calculation::Deck,
        drawing: Drawing::DeckCuts,
        cautions: &[Caution::Cutting],
    },
];

impl StepId {
    /// Its entry in the table.
    #[must_use]
    pub fn spec(self) -> &'static StepSpec {
        STEPS.iter().find(|s| s.id == self).unwrap_or(&STEPS[0])
    }

    /// From its name.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        STEPS.iter().find(|s| s.name == name).map(|s| s.id)
    }
}

/// The steps of a subject, in order.
pub fn steps_of(subject: Subject) -> impl Iterator<Item = &'static StepSpec> {
    STEPS.iter().filter(move |s| s.subject == subject)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::field::Scope;

    #[test]
    fn steps_are_in_shop_order_and_their_fields_belong_to_their_subject() {
        assert!(STEPS.windows(2).all(|w| w[0].number < w[1].number));
        for step in STEPS {
            assert_eq!(StepId::from_name(step.name), Some(step.id));
            let scope = match step.subject {
                Subject::Cylinder => Scope::Cylinder,
                Subject::Bank => Scope::Bank,
            };
            assert!(step.fields.iter().all(|f| f.spec().scope == scope));
            assert!(step.needed.iter().all(|f| step.fields.contains(f)));
        }
    }
}
