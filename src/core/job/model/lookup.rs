//! Steps by name and by subject.

use crate::job::model::shop_order::STEPS;
use crate::job::model::stand::Stand;
use crate::job::model::step::{StepId, StepSpec, Subject};

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

/// The steps of a subject, in order, with such sleeves.
pub fn steps_of(stand: Stand, subject: Subject) -> impl Iterator<Item = &'static StepSpec> {
    steps_with(stand).filter(move |s| s.subject == subject)
}

/// All steps, in order, with such sleeves.
pub fn steps_with(stand: Stand) -> impl Iterator<Item = &'static StepSpec> {
    STEPS.iter().filter(move |s| stand.has_step(s.id))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::model::field::Field;
    use crate::job::model::field_kind::Scope;
    use crate::job::model::part::{SleeveEnds, SleeveKind};

    #[test]
    fn steps_are_in_shop_order_and_their_fields_belong_to_their_subject() {
        // One step of each number, whatever the sleeves; without what they have not.
        let numbers = |kind| {
            let of = |ends| -> Vec<u8> {
                let stand = Stand { kind, ends };
                steps_with(stand).map(|s| s.number).collect()
            };
            // The step of the heights takes the place of the deck's.
            assert_eq!(of(SleeveEnds::Decked), of(SleeveEnds::Proud));
            of(SleeveEnds::Decked)
        };
        let all: Vec<u8> = (1..=31).collect();
        let without = |gone: &[u8]| -> Vec<u8> {
            all.iter().copied().filter(|n| !gone.contains(n)).collect()
        };
        assert_eq!(numbers(SleeveKind::Flanged), all);
        assert_eq!(numbers(SleeveKind::OnStep), without(&[13, 15]));
        assert_eq!(numbers(SleeveKind::ByFit), without(&[13, 14, 15]));
        for step in STEPS {
            assert_eq!(StepId::from_name(step.name), Some(step.id));
            let scope = match step.subject {
                Subject::Block => Scope::Block,
                Subject::Cylinder => Scope::Cylinder,
                Subject::Bank => Scope::Bank,
            };
            // The block also asks for numbers of the engine.
            let fits = |f: &Field| {
                f.spec().scope == scope
                    || (step.subject == Subject::Block && f.spec().scope == Scope::Engine)
            };
            assert!(step.fields.iter().all(fits), "{}", step.name);
            assert!(step.needed.iter().all(|f| step.fields.contains(f)));
            assert!(step.timed.is_none_or(|f| step.fields.contains(&f)));
        }
    }
}
