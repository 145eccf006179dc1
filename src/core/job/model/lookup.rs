//! Steps by name and by subject.

use crate::job::model::shop_order::STEPS;
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

/// The steps of a subject, in order.
pub fn steps_of(subject: Subject) -> impl Iterator<Item = &'static StepSpec> {
    STEPS.iter().filter(move |s| s.subject == subject)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::model::field::Field;
    use crate::job::model::field_kind::Scope;

    #[test]
    fn steps_are_in_shop_order_and_their_fields_belong_to_their_subject() {
        assert!((1..=31).eq(STEPS.iter().map(|s| s.number)));
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
