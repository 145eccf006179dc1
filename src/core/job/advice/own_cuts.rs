//! The counterbores of this job against the depth each was cut for: what the
//! hand on the feed does, before the next one is cut.

use crate::job::model::step::StepId;
use crate::job::verdict::answer::Answer;
use crate::job::verdict::report::CylinderReport;
use crate::job::verdict::signal::Signal;
use crate::metrology::scatter::{Scatter, scatter};
use crate::quantity::Length;

/// Counterbores cut in this job.
#[derive(Clone, Debug, PartialEq)]
pub struct OwnCuts {
    /// Cylinder, and its deepest reading less the depth wanted: positive too
    /// deep.
    pub cuts: Vec<(u8, Length)>,
    /// Their scatter, from two on.
    pub scatter: Option<Scatter>,
}

/// The counterbores that are at depth or past it; those still being cut are
/// left out.
#[must_use]
pub fn own_cuts(reports: &[CylinderReport]) -> OwnCuts {
    let cuts: Vec<(u8, Length)> = reports
        .iter()
        .filter_map(|report| {
            let step = report.step(StepId::Counterbore)?;
            let finished = step.complete && step.unusable.is_empty() && step.signal != Signal::Wait;
            match &step.answer {
                Answer::Counterbore(c) if finished => {
                    Some((report.cylinder, Length::from_m(-c.to_go.as_m())))
                }
                _ => None,
            }
        })
        .collect();
    let errors: Vec<Length> = cuts.iter().map(|(_, error)| *error).collect();
    OwnCuts {
        scatter: scatter(&errors).ok(),
        cuts,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::steps::assess::assess;
    use crate::job::{Entry, Field, Place};

    #[test]
    fn cuts_still_under_way_are_left_out() {
        let mut job = Demo::InchFive.job(0);
        let before = own_cuts(&assess(&job)).cuts;
        assert!(before.iter().any(|(c, _)| *c == 1));
        for clock in 0..4 {
            let place = Place::of_cylinder(1, Field::CounterboreDepth, clock);
            let unit = job.unit(Field::CounterboreDepth);
            job.entries.put(place, Entry::new("0.2000", unit, 0));
        }
        let after = own_cuts(&assess(&job)).cuts;
        assert_eq!(after.len(), before.len() - 1);
        assert!(after.iter().all(|(c, _)| *c != 1));
    }

    #[test]
    fn scatter_is_of_depth_less_depth_wanted() {
        // Depth wanted: least thickness 0.2600 less 0.0100; cut 0.2502 and
        // 0.2496: mean - 0.0001, sd 0.0006 / sqrt 2, by hand.
        let mut job = Demo::InchFive.job(0);
        job.left_out = vec![3, 4, 5];
        for cylinder in 1..=5 {
            for (field, text) in [
                (Field::FlangeThickness, "0.2600"),
                (
                    Field::CounterboreDepth,
                    match cylinder {
                        1 => "0.2502",
                        2 => "0.2496",
                        _ => "",
                    },
                ),
            ] {
                for clock in 0..4 {
                    let place = Place::of_cylinder(cylinder, field, clock);
                    let unit = job.unit(field);
                    job.entries.put(place, Entry::new(text, unit, 0));
                }
            }
            let here = Place::of_cylinder(cylinder, Field::DeckHere, 0);
            job.entries
                .put(here, Entry::new("", job.unit(Field::DeckHere), 0));
        }
        let cuts = own_cuts(&assess(&job));
        assert_eq!(cuts.cuts.len(), 2);
        let close = |a: f64, b: f64| (a - b).abs() < 1e-9;
        assert!(cuts.scatter.is_some_and(|s| {
            close(s.mean.as_inch(), -0.0001) && close(s.sd.as_inch(), 0.0006 / 2.0_f64.sqrt())
        }));
    }
}
