//! The demos with plain sleeves in the place of their flanged ones.

use coldseat_core::job::demo::{Demo, put};
use coldseat_core::job::model::part::SleeveKind;
use coldseat_core::job::model::stand::Stand;
use coldseat_core::job::{Field, Job, Owner, Place};

/// A demo whose sleeves are plain: each as long as the nominal length and what was
/// its flange, its step as much deeper than the counterbore was. What was typed of
/// flanges stays, as it does where somebody chooses another kind in mid-job.
///
/// # Panics
/// Where a demo has no length or no inside diameter.
#[must_use]
pub fn plain(demo: Demo, kind: SleeveKind) -> Job {
    let mut job = demo.job(1);
    put(&mut job, Place::of_engine(Field::SleeveKind), kind.id(), 1);
    let length = job.engine_si(Field::SleeveLength).unwrap().unwrap();
    let inside = job.engine_si(Field::SleeveId).unwrap().unwrap();
    let text = |field: Field, si: f64| {
        let unit = demo.job(1).unit(field);
        format!("{:.4}", unit.from_si(si))
    };
    let below = text(Field::StepBore, inside);
    put(&mut job, Place::of_engine(Field::StepBore), below, 1);
    for cylinder in 1..=job.engine.cylinders {
        for (from, to) in [
            (Field::FlangeThickness, Field::PlainLength),
            (Field::CounterboreDepth, Field::StepDepth),
        ] {
            for (index, si) in job.entries.comparable(Owner::Cylinder(cylinder), from) {
                let place = Place::of_cylinder(cylinder, to, index);
                let text = text(to, length + si);
                put(&mut job, place, text, 1);
            }
        }
    }
    job
}

/// The same without a word of flanges.
#[must_use]
pub fn plain_alone(demo: Demo, kind: SleeveKind) -> Job {
    let mut job = plain(demo, kind);
    let flanged: Vec<Place> = job.entries.iter().map(|(place, _)| *place).collect();
    for place in flanged {
        if !(Stand {
            kind,
            ..Stand::USUAL
        })
        .has_field(place.field)
        {
            put(&mut job, place, "", 2);
        }
    }
    job
}
