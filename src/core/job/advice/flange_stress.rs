//! Stress at the flange of a fitted sleeve, from what the job has.

use crate::job::advice::profile::FRICTION;
use crate::job::advice::profile::ProfileNeeds;
use crate::mechanics::bore_profile::{BoreProfileInput, BoreStress, BoreStressInput, bore_stress};
use crate::quantity::Force;
use crate::quantity::report::Fault;

/// Stress of the fitted sleeve at flange, counterbore and ledge, with head or
/// torque plate on where its load is typed, read at the fillet's radius from the
/// corners.
///
/// # Errors
/// Without a fillet, a [`Fault`] that asks for it; else as
/// [`crate::mechanics::bore_profile::bore_stress`].
pub fn flange_stress(needs: &ProfileNeeds) -> Result<BoreStress, Fault> {
    let at = needs.fillet.filter(|f| f.as_m() > 0.0).ok_or_else(|| {
        Fault::new(
            "at_m",
            "the fillet under the flange is not measured: enter it at the ledge's chamfer",
        )
    })?;
    bore_stress(&BoreStressInput {
        profile: BoreProfileInput {
            clamp: needs.clamp.unwrap_or(Force::from_n(0.0)),
            depths: Vec::new(),
            ..needs.input.clone()
        },
        friction: FRICTION[0],
        at,
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::advice::profile_needs::needs;
    use crate::job::demo::Demo;
    use crate::job::steps::assess::assess;
    use crate::job::{Entry, Field, Place};

    #[test]
    fn a_head_presses_the_ledge_and_a_fillet_is_asked_for() {
        let stress = |clamp: &str, fillet: &str| {
            let mut job = Demo::InchFive.job(0);
            for (place, text) in [
                (Place::of_engine(Field::HeadClamp), clamp),
                (Place::of_cylinder(1, Field::Fillet, 0), fillet),
            ] {
                let entry = Entry::new(text, job.unit(place.field), 0);
                job.entries.put(place, entry);
            }
            let report = assess(&job).into_iter().find(|r| r.cylinder == 1).unwrap();
            flange_stress(&needs(&job, &report).unwrap())
        };
        // By hand: 9000 lbf over the ring from 4.44 to 4.6402 in is 6304 psi
        // more; a small part of a clamp goes round the ledge through the joint.
        let more = stress("9000", "0.0300").unwrap().ledge_pressure.as_psi()
            - stress("", "0.0300").unwrap().ledge_pressure.as_psi();
        assert!((more / 6304.0 - 1.0).abs() < 0.1, "{more}");
        assert_eq!(stress("", "").unwrap_err().field, "at_m");
    }
}
