//! Where a number comes from: what went into it, how far each input is
//! trusted, and how far the number moves when that input moves by as much.
//!
//! One input at a time is moved, all its places together, and the step is
//! asked again. That finds which input matters most as far as the answer is
//! smooth; it does not add the inputs up.

use crate::job::model::engine::preset_si;
use crate::job::model::engine::presets;
use crate::job::model::entries::Entries;
use crate::job::model::entries::Entry;
use crate::job::model::field::{FIELDS, Field};
use crate::job::model::field_kind::Measure;
use crate::job::model::field_kind::Scope;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::place::Place;
use crate::job::model::readings::{Readings, largest, mean, smallest};
use crate::job::model::step::Calculation;
use crate::job::model::step::StepId;
use crate::job::steps::assess::worked;
use crate::job::steps::deck;
use crate::job::steps::drop_case::case_of;
use crate::job::steps::drop_sheet::DropSheet;
use crate::job::steps::shrink::{ShrinkBy, cold_size, shrink_of};
use crate::materials::MaterialId;
use crate::numerics::order::in_order;
use crate::quantity::format::fixed;
use crate::quantity::{Seconds, parse::Unit};
use crate::thermal::cold_drop::cold_drop;

/// How far an input is trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trust {
    /// Its gauge's standard uncertainty, typed with the engine.
    Gauge,
    /// What the calculation itself reckons with: frost and warming of a cold part.
    Reckoned,
    /// A step to try with, as nobody has said how sure it is.
    Trial,
}

/// What of several readings a number is worked out from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Decides {
    /// Their mean, or all of them.
    Mean,
    /// The least.
    Least,
    /// The largest.
    Largest,
}

impl Decides {
    /// Of the readings of a field in a calculation.
    const fn of(calculation: Calculation, field: Field) -> Self {
        match (calculation, field) {
            (
                Calculation::Counterbore | Calculation::StepDepth,
                Field::FlangeThickness | Field::PlainLength,
            ) => Self::Least,
            (
                Calculation::Counterbore | Calculation::StepDepth,
                Field::CounterboreDepth | Field::StepDepth,
            ) => Self::Largest,
            _ => Self::Mean,
        }
    }

    fn among(self, values: &[(u8, f64)]) -> Option<f64> {
        let all: Vec<f64> = values.iter().map(|(_, si)| *si).collect();
        match self {
            Self::Mean => mean(&all),
            Self::Least => smallest(&all),
            Self::Largest => largest(&all),
        }
    }
}

/// An input of a number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Input {
    /// Which number.
    pub field: Field,
    /// Its value, of several places the one that decides, SI.
    pub si: f64,
    /// How many places it stands for.
    pub places: u8,
    /// Which of them decides.
    pub decides: Decides,
    /// How far it is moved, SI.
    pub by: f64,
    /// What that step is.
    pub trust: Trust,
    /// How far the number then moves, SI of the number; `None`: it is not
    /// there any more.
    pub effect: Option<f64>,
    /// Whether one reading alone was moved: a difference of readings does not
    /// see all of them shift together.
    pub alone: bool,
    /// Whether it is a limit that stands as a new engine has it: nobody's own.
    pub usual: bool,
}

/// Where a number comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Origin {
    /// What is worked out.
    pub calculation: Calculation,
    /// What the number measures.
    pub measure: Measure,
    /// Its inputs, the one that matters most first.
    pub inputs: Vec<Input>,
    /// Materials that enter.
    pub materials: Vec<MaterialId>,
    /// What a sleeve's shrink is taken from, where one enters.
    pub shrink: Option<ShrinkBy>,
}

/// Carry where none is kept yet.
const USUAL_CARRY: Seconds = Seconds::from_s(8.0);

/// The gauge of a field, by the field of its uncertainty.
const fn gauge(field: Field) -> Option<Field> {
    match field {
        Field::SleeveOd => Some(Field::GaugeSleeve),
        Field::BoreD
        | Field::OldBore
        | Field::BoredD
        | Field::FinishD
        | Field::CounterboreD
        | Field::FlangeOdHere => Some(Field::GaugeBore),
        Field::WarmHeight
        | Field::PullLoaded
        | Field::PullReleased
        | Field::SeatHeight
        | Field::PistonProud => Some(Field::GaugeHeight),
        Field::FlangeThickness => Some(Field::GaugeThickness),
        Field::PlainLength => Some(Field::GaugeLength),
        Field::StepDepth => Some(Field::GaugeStep),
        Field::CounterboreDepth | Field::GrooveDepth => Some(Field::GaugeDepth),
        _ => None,
    }
}

/// The standard uncertainty of a field, where there is one.
fn trusted(job: &Job, owner: Owner, field: Field) -> Option<(f64, Trust)> {
    if field == Field::ColdOd {
        let cold = cold_size(&Readings::new(job, owner)).ok()??;
        return Some((cold.u_cold.as_m(), Trust::Reckoned));
    }
    let u = job.engine_si(gauge(field)?).ok()??;
    (u > 0.0).then_some((u, Trust::Gauge))
}

/// A tenth of a thou (of a wall by ultrasonic gauge two thou), 1 K, 1 s, one
/// per cent: large enough to be seen, small enough to stay on the slope.
fn trial(field: Field, si: f64) -> f64 {
    match field.spec().measure {
        Measure::Length if field == Field::WallReading => 50.8e-6,
        Measure::Length => 2.54e-6,
        Measure::Roughness => 1e-6,
        Measure::Temperature | Measure::Time => 1.0,
        Measure::Pressure
        | Measure::Force
        | Measure::Volume
        | Measure::Torque
        | Measure::Plain
        | Measure::Choice
        | Measure::Words => 0.01 * si.abs(),
    }
}

/// Whose a field is when `owner` asks.
fn holder(job: &Job, owner: Owner, field: Field) -> Owner {
    match (field.spec().scope, owner) {
        (Scope::Engine | Scope::Block | Scope::Drop, _) => Owner::Block,
        (Scope::Bank, Owner::Cylinder(cylinder)) => Owner::Bank(job.engine.bank_of(cylinder)),
        _ => owner,
    }
}

/// Entries with all places of a field moved, or one of them.
fn moved(entries: &Entries, owner: Owner, field: Field, step: Step) -> Entries {
    let Step { unit, by, only } = step;
    let mut changed = entries.clone();
    for (index, si) in entries.comparable(owner, field) {
        if only.is_some_and(|only| only != index) {
            continue;
        }
        let place = Place {
            owner,
            field,
            index,
        };
        changed.put(place, Entry::new(fixed(unit.from_si(si + by), 9), unit, 0));
    }
    changed
}

/// By how much a field is moved.
#[derive(Clone, Copy)]
struct Step {
    unit: Unit,
    by: f64,
    /// One place alone.
    only: Option<u8>,
}

fn sorted(inputs: Vec<Input>) -> Vec<Input> {
    let size = |input: &Input| input.effect.map_or(f64::INFINITY, f64::abs);
    in_order(inputs, |a, b| size(b).total_cmp(&size(a)))
}

/// The number of a step, SI.
fn number(job: &Job, owner: Owner, step: StepId) -> Option<f64> {
    match (step.spec().calculation, owner) {
        (Calculation::ColdDrop, Owner::Cylinder(cylinder)) => {
            let case = case_of(job, cylinder, USUAL_CARRY).ok()?;
            Some(cold_drop(&case.drop).ok()?.grip?.after.as_s())
        }
        (Calculation::Deck, Owner::Bank(bank)) => {
            Some(deck::plan(job, bank).ok()?.plan.removal.as_m())
        }
        _ => worked(job, owner, step).ok()?.number.map(|n| n.si),
    }
}

/// What the number of a step measures.
fn measure(job: &Job, owner: Owner, step: StepId) -> Measure {
    match step.spec().calculation {
        Calculation::ColdDrop => Measure::Time,
        Calculation::Deck => Measure::Length,
        _ => match worked(job, owner, step) {
            Ok(verdict) => verdict.number.map_or(Measure::Length, |n| n.measure), // none: not shown
            Err(_) => Measure::Length, // then there is no number either
        },
    }
}

/// The job with the engine's blanks filled as the calculations fill them.
fn as_used(job: &Job) -> Job {
    let mut job = job.clone();
    for (place, entry) in presets(Scope::Engine, job.engine.units, 0).iter() {
        if job.entries.get(*place).is_none() {
            job.entries.put(*place, entry.clone());
        }
    }
    job
}

/// Where the number of a step comes from; `None` where there is no number yet.
#[must_use]
pub fn origin(job: &Job, owner: Owner, step: StepId) -> Option<Origin> {
    let job = &as_used(job);
    let spec = step.spec();
    let now = number(job, owner, step)?;
    let mut inputs = Vec::new();
    // A word is no input that can be moved a little.
    let stand = job.listed_stand();
    let moves = |f: &&Field| {
        !matches!(f.spec().measure, Measure::Choice | Measure::Words) && stand.asks(step, **f)
    };
    for field in spec.fields.iter().chain(spec.uses).filter(moves) {
        // A deck is cut from the readings of all its cylinders.
        let holders: Vec<Owner> = match (field.spec().scope, owner) {
            (Scope::Cylinder, Owner::Bank(bank)) => deck::of_bank(job, bank)
                .into_iter()
                .map(Owner::Cylinder)
                .collect(),
            _ => vec![holder(job, owner, *field)],
        };
        let mut values: Vec<(u8, f64)> = Vec::new();
        for of in &holders {
            values.extend(job.entries.comparable(*of, *field));
        }
        let decides = Decides::of(spec.calculation, *field);
        let Some(si) = decides.among(&values) else {
            continue;
        };
        let unit = job.unit(*field);
        let (by, trust) = match trusted(job, owner, *field) {
            Some(known) => known,
            None => (trial(*field, si), Trust::Trial),
        };
        let effect_of = |only: Option<u8>| {
            let mut changed = job.clone();
            for of in &holders {
                changed.entries = moved(&changed.entries, *of, *field, Step { unit, by, only });
            }
            number(&changed, owner, step).map(|then| then - now)
        };
        let mut effect = effect_of(None);
        let mut alone = false;
        if effect.is_some_and(|e| e.abs() < 1e-12) && holders.len() == 1 && values.len() > 1 {
            let largest = values
                .iter()
                .filter_map(|(index, _)| effect_of(Some(*index)))
                .max_by(|a, b| a.abs().total_cmp(&b.abs()));
            alone = largest.is_some_and(|e| e.abs() > 1e-12);
            effect = largest.filter(|_| alone).or(effect);
        }
        inputs.push(Input {
            field: *field,
            si,
            places: values.len().min(usize::from(u8::MAX)) as u8,
            decides,
            by,
            trust,
            effect,
            alone,
            usual: preset_si(*field, job.engine.units).is_some_and(|usual| usual == si),
        });
    }
    let shrinks = matches!(
        spec.calculation,
        Calculation::ColdDrop | Calculation::Height
    );
    Some(Origin {
        calculation: spec.calculation,
        measure: measure(job, owner, step),
        inputs: sorted(inputs),
        materials: materials(
            spec.calculation,
            job.engine.sleeve_material,
            job.engine.block_material,
        ),
        shrink: shrinks
            .then(|| shrink_of(&Readings::new(job, owner)).ok().map(|s| s.by))
            .flatten(),
    })
}

/// Where the grip time of a cold drop without a job comes from.
#[must_use]
pub fn origin_of_drop(sheet: &DropSheet) -> Option<Origin> {
    let grip = |sheet: &DropSheet| -> Option<f64> {
        let case = sheet.case().ok()?;
        Some(cold_drop(&case.drop).ok()?.grip?.after.as_s())
    };
    let now = grip(sheet)?;
    let inputs = FIELDS
        .iter()
        .filter(|f| sheet.moves_time(f.field))
        .filter_map(|spec| {
            let field = spec.field;
            let si = sheet.si(field)?;
            let by = trial(field, si);
            let unit = field.unit(sheet.units);
            let mut changed = sheet.clone();
            changed.entries = moved(
                &sheet.entries,
                Owner::Block,
                field,
                Step {
                    unit,
                    by,
                    only: None,
                },
            );
            Some(Input {
                field,
                si,
                places: 1,
                decides: Decides::Mean,
                by,
                trust: Trust::Trial,
                effect: grip(&changed).map(|then| then - now),
                alone: false,
                usual: sheet.usual_si(field).is_some_and(|usual| usual == si),
            })
        })
        .collect();
    Some(Origin {
        calculation: Calculation::ColdDrop,
        measure: Measure::Time,
        inputs: sorted(inputs),
        materials: materials(
            Calculation::ColdDrop,
            sheet.sleeve_material,
            sheet.block_material,
        ),
        shrink: None,
    })
}

/// The materials that enter a calculation, each once.
fn materials(calculation: Calculation, sleeve: MaterialId, block: MaterialId) -> Vec<MaterialId> {
    match calculation {
        Calculation::Chill | Calculation::Height | Calculation::Estimate => vec![sleeve],
        Calculation::Fit | Calculation::ColdDrop if sleeve != block => vec![sleeve, block],
        Calculation::Fit | Calculation::ColdDrop => vec![sleeve],
        _ => Vec::new(),
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::model::lookup::steps_with;
    use crate::job::model::stand::Stand;
    use crate::job::step::Subject;

    fn input(origin: &Origin, field: Field) -> Input {
        *origin.inputs.iter().find(|i| i.field == field).unwrap()
    }

    #[test]
    fn a_gap_moves_with_each_of_its_readings_by_as_much() {
        for demo in Demo::ALL {
            let job = demo.job(0);
            let origin = origin(&job, Owner::Cylinder(1), StepId::Seat).unwrap();
            for (field, sign) in [
                (Field::SeatHeight, 1.0),
                (Field::FlangeThickness, -1.0),
                (Field::CounterboreDepth, 1.0),
            ] {
                let input = input(&origin, field);
                assert_eq!(input.trust, Trust::Gauge);
                let ratio = input.effect.unwrap() / input.by;
                assert!((ratio - sign).abs() < 1e-6, "{field:?} {ratio}");
            }
            // The depth gauge is the least sure: it matters most.
            assert_eq!(origin.inputs[0].field, Field::CounterboreDepth, "{demo:?}");
        }
    }

    #[test]
    fn a_limit_that_nobody_changed_is_told_from_one_that_was_entered() {
        let mut job = Demo::InchFive.job(0);
        let place = Place::of_engine(Field::GapLimit);
        let usual = |job: &Job| {
            let origin = origin(job, Owner::Cylinder(1), StepId::Seat).unwrap();
            input(&origin, Field::GapLimit).usual
        };
        job.entries.put(place, Entry::new("", Unit::Inch, 1));
        assert!(usual(&job), "blank is as usual");
        job.entries.put(place, Entry::new(".001", Unit::Inch, 1));
        assert!(usual(&job), "the usual value, whoever typed it");
        job.entries.put(place, Entry::new("0.0012", Unit::Inch, 1));
        assert!(!usual(&job));
    }

    #[test]
    fn every_step_with_a_number_says_where_from() {
        let job = Demo::InchFive.job(0);
        let mut count = 0;
        for spec in steps_with(Stand::USUAL) {
            let owner = match spec.subject {
                Subject::Block => Owner::Block,
                Subject::Bank => Owner::Bank(0),
                Subject::Cylinder => Owner::Cylinder(2),
            };
            if number(&job, owner, spec.id).is_some() {
                let origin = origin(&job, owner, spec.id).unwrap();
                assert!(!origin.inputs.is_empty(), "{}", spec.name);
                let moves = |i: &Input| i.effect.is_some_and(|e| e != 0.0);
                assert!(origin.inputs.iter().any(moves), "{} {origin:?}", spec.name);
                count += 1;
            }
        }
        assert!(count >= 18, "{count}");
    }

    #[test]
    fn a_drop_without_a_job_hangs_on_its_fit() {
        let sheet = DropSheet {
            entries: presets(Scope::Drop, crate::job::UnitSystem::Inch, 0),
            units: crate::job::UnitSystem::Inch,
            sleeve_material: MaterialId::GrayIron,
            block_material: MaterialId::GrayIron,
        };
        let origin = origin_of_drop(&sheet).unwrap();
        assert_eq!(origin.inputs.len(), 7);
        // A tighter fit grips sooner.
        assert!(input(&origin, Field::DropFit).effect.unwrap() < 0.0);
        assert_eq!(origin.materials, [MaterialId::GrayIron]);
    }
}
