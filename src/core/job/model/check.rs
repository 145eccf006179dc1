//! Is this number usable, and does it look right?
//!
//! Three answers beside "good". *Refused*: it is no number, or outside its
//! allowed range, or contradicts another number; no calculation uses it.
//! *Questioned*: usable, but ten times off, inch for millimetre, a radius for
//! a diameter, or far from its neighbours; asked once, until the person says
//! it is meant. *Empty*: nothing there. The text stays as typed in all cases.

use crate::job::model::engine::preset_si;
use crate::job::model::entries::Entries;
use crate::job::model::field::Field;
use crate::job::model::field_kind::{Plausible, Scope, UnitSystem};
use crate::job::model::job::Job;
use crate::job::model::part::{Cold, Part};
use crate::job::model::part_usual;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Reading, Spot, Unusable};
use crate::job::model::readings::mean;
use crate::numerics::order::in_order;
use crate::quantity::bounds;
use crate::quantity::parse::Unit;

/// The numbers a place is judged against.
#[derive(Clone, Copy, Debug)]
pub struct Sheet<'a> {
    /// All numbers.
    pub entries: &'a Entries,
    /// Units of the sheet.
    pub units: UnitSystem,
    /// Cylinders of the engine; 0 where there is none.
    pub cylinders: u8,
    /// The job whose numbers they are; `None` where there is none.
    pub job: Option<&'a Job>,
}

impl<'a> Sheet<'a> {
    /// The numbers of a job.
    #[must_use]
    pub const fn of(job: &'a Job) -> Self {
        Self {
            entries: &job.entries,
            units: job.engine.units,
            cylinders: job.engine.cylinders,
            job: Some(job),
        }
    }

    fn reading(&self, place: Place) -> Reading {
        match self.job {
            Some(job) => job.reading(place),
            None => self.entries.reading(place),
        }
    }
}

/// What a place holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Checked {
    /// Nothing.
    Empty,
    /// The word that says that this block has no such thing.
    NotHere,
    /// A good number, SI.
    Good(f64),
    /// A usable number that looks wrong.
    Questioned(f64, Question),
    /// Nothing that can be used.
    Refused(Unusable),
}

/// Why a number looks wrong.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Question {
    /// Ten times too large or too small: meant is perhaps the value given, SI.
    TenTimes(f64),
    /// Typed in the other unit: it would then be the value given, SI.
    OtherUnit(f64),
    /// Half or twice: a radius for a diameter, or the reverse.
    RadiusOrDiameter(f64),
    /// Far from its neighbours, which read about the value given, SI.
    FarFrom(f64),
    /// Unusual: usual is from, to, SI.
    Unusual(f64, f64),
    /// The bore is larger than the sleeve (its diameter given, SI): it would
    /// fall through.
    SleeveBelowBore(f64),
}

/// Judges the entry at a place.
#[must_use]
pub fn check(sheet: &Sheet<'_>, place: Place) -> Checked {
    let si = match sheet.reading(place) {
        Reading::Absent => return Checked::Empty,
        Reading::NotHere => return Checked::NotHere,
        Reading::Unusable(unusable) => return Checked::Refused(unusable),
        Reading::Usable(si) => si,
    };
    match question_at(sheet, place, si) {
        Some(question) => Checked::Questioned(si, question),
        None => Checked::Good(si),
    }
}

/// What is asked about a usable value; nothing once the person says it is
/// meant.
fn question_at(sheet: &Sheet<'_>, place: Place, si: f64) -> Option<Question> {
    let entry = sheet.entries.get(place).filter(|entry| !entry.kept)?;
    // The unit behind the number matters to a slip only.
    let unit = || match place.field.read(&entry.text, entry.unit) {
        Ok(typed) => typed.unit,
        Err(_) => entry.unit,
    };
    question(sheet, place, si, unit)
}

/// Everything of a job that is asked about, and everything that cannot be used.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Doubts {
    /// Asked about and not answered, in order of their places.
    pub questioned: Vec<Place>,
    /// Not to be used.
    pub unusable: Vec<Unusable>,
}

impl Doubts {
    /// Of a whole job.
    #[must_use]
    pub fn of(job: &Job) -> Self {
        let sheet = Sheet::of(job);
        let mut doubts = Self::default();
        for (place, _) in job.entries.iter() {
            match check(&sheet, *place) {
                Checked::Empty | Checked::NotHere | Checked::Good(_) => {}
                Checked::Questioned(..) => doubts.questioned.push(*place),
                Checked::Refused(unusable) => doubts.unusable.push(unusable),
            }
        }
        doubts
    }

    /// Those at places of a field.
    #[must_use]
    pub fn at(&self, owner: Owner, field: Field) -> Self {
        let here = |place: &Place| place.owner == owner && place.field == field;
        Self {
            questioned: self.questioned.iter().copied().filter(here).collect(),
            unusable: self
                .unusable
                .iter()
                .filter(|one| matches!(&one.spot, Spot::Reading(place) if here(place)))
                .cloned()
                .collect(),
        }
    }

    /// Whether there is none.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.questioned.is_empty() && self.unusable.is_empty()
    }
}

fn question(sheet: &Sheet<'_>, place: Place, si: f64, unit: impl Fn() -> Unit) -> Option<Question> {
    let mean_of = |field| mean_of(sheet.entries, place.owner, field);
    if place.field == Field::BoreD
        && let Some(sleeve) = mean_of(Field::SleeveOd)
        && si > sleeve
        // further off it is a slip of another kind, found below
        && si < sleeve + 0.001
    {
        return Some(Question::SleeveBelowBore(sleeve));
    }
    let reference = reference(sheet, place);
    match plausible(sheet, place.field) {
        Plausible::Free => None,
        Plausible::Shop { lo, hi } => {
            if lo <= si && si <= hi {
                return None;
            }
            let unit = unit();
            let other = match unit {
                Unit::Fahrenheit => Unit::Celsius.to_si(unit.from_si(si)),
                _ => Unit::Fahrenheit.to_si(unit.from_si(si)),
            };
            let meant = (lo <= other && other <= hi).then_some(Question::OtherUnit(other));
            meant.or(Some(Question::Unusual(lo, hi)))
        }
        Plausible::Offset { far } => {
            let about = reference.unwrap_or(0.0);
            // Steps and pulls move a height on purpose; a slip is much larger.
            if (si - about).abs() <= far {
                return None;
            }
            slip(si, unit(), about, |v| (v - about).abs() <= far).or(Some(Question::FarFrom(about)))
        }
        Plausible::Size { lo, hi, far } => match reference {
            // Neighbours that agree may all be wrong: the first of them is asked
            // about, where no nominal size is that is asked about itself.
            Some(about) if (si - about).abs() <= far => {
                let usual = lo <= si && si <= hi;
                if usual || nominal(place.field).is_some() || !is_first(sheet, place) {
                    return None;
                }
                slip(si, unit(), 0.5 * (lo + hi), |v| lo <= v && v <= hi)
                    .or(Some(Question::Unusual(lo, hi)))
            }
            Some(about) => {
                let near = |v: f64| (v - about).abs() <= (0.02 * about.abs()).max(far);
                slip(si, unit(), about, near)
                    .or_else(|| {
                        // A wall or a depth has no radius.
                        let sizes = [2.0 * si, si / 2.0];
                        let round = place.field.spec().bound == bounds::DIAMETER;
                        sizes
                            .into_iter()
                            .find(|v| round && near(*v))
                            .map(Question::RadiusOrDiameter)
                    })
                    .or(Some(Question::FarFrom(about)))
            }
            None => {
                if let Some(half) = half_of_its_sleeve(sheet, place, si) {
                    return Some(half);
                }
                if lo <= si && si <= hi {
                    return None;
                }
                slip(si, unit(), 0.5 * (lo + hi), |v| lo <= v && v <= hi)
                    .or_else(|| {
                        let round = place.field.spec().bound == bounds::DIAMETER;
                        let whole = 2.0 * si;
                        (round && lo <= whole && whole <= hi)
                            .then_some(Question::RadiusOrDiameter(whole))
                    })
                    .or(Some(Question::Unusual(lo, hi)))
            }
        },
    }
}

/// A diameter of the engine that is half of what goes with its sleeve's outside: a
/// radius.
fn half_of_its_sleeve(sheet: &Sheet<'_>, place: Place, si: f64) -> Option<Question> {
    let of_sleeve = matches!(
        place.field,
        Field::SleeveId
            | Field::FinalBore
            | Field::FlangeOd
            | Field::BoredD
            | Field::CounterboreD
            | Field::GrooveInner
            | Field::GrooveOuter
    );
    let outside = match sheet.reading(Place::of_engine(Field::NominalOd)) {
        Reading::Usable(si) if of_sleeve => si,
        _ => return None,
    };
    let near = |v: f64| (v / outside - 1.0).abs() < 0.2;
    (near(2.0 * si) && !near(si)).then_some(Question::RadiusOrDiameter(2.0 * si))
}

/// What is plausible of a field: in the cold drop without a job by the part.
fn plausible(sheet: &Sheet<'_>, field: Field) -> Plausible {
    let own = field.spec().plausible;
    if field.spec().scope != Scope::Drop {
        return own;
    }
    if field == Field::DropColdAt {
        let cold = sheet.entries.reading(Place::of_engine(Field::DropCold));
        return match cold {
            Reading::Usable(index) => match Cold::ALL.get(index as usize) {
                Some(cold) => part_usual::plausible_cold(*cold),
                None => own,
            },
            Reading::Absent | Reading::NotHere | Reading::Unusable(_) => own,
        };
    }
    match sheet.entries.reading(Place::of_engine(Field::DropPart)) {
        Reading::Usable(index) => match Part::ALL.get(index as usize) {
            Some(part) => part_usual::plausible(*part, field),
            None => own,
        },
        Reading::Absent | Reading::NotHere | Reading::Unusable(_) => own,
    }
}

/// The commonest slips, tried on the value; of those that would explain it,
/// the one that lands nearest to `about`.
fn slip(si: f64, unit: Unit, about: f64, fits: impl Fn(f64) -> bool) -> Option<Question> {
    let other = match unit {
        Unit::Inch => si / 25.4,
        Unit::Millimetre => si * 25.4,
        Unit::CubicFoot => Unit::CubicMetre.to_si(unit.from_si(si)),
        Unit::CubicMetre => Unit::CubicFoot.to_si(unit.from_si(si)),
        _ => f64::NAN,
    };
    let tried = [
        (other, Question::OtherUnit(other)),
        (si * 10.0, Question::TenTimes(si * 10.0)),
        (si / 10.0, Question::TenTimes(si / 10.0)),
    ];
    let fitting = tried
        .into_iter()
        .filter(|(value, _)| value.is_finite() && fits(*value));
    // About nothing a point that slipped is the commoner of the two.
    if about.abs() < 1e-12 {
        return fitting
            .map(|(_, question)| question)
            .max_by_key(|question| matches!(question, Question::TenTimes(_)));
    }
    fitting
        .min_by(|(a, _), (b, _)| (a - about).abs().total_cmp(&(b - about).abs()))
        .map(|(_, question)| question)
}

/// The size of the engine that a reading is of, if there is one.
pub(super) const fn nominal(field: Field) -> Option<Field> {
    match field {
        Field::SleeveOd | Field::ColdOd | Field::BoreD => Some(Field::NominalOd),
        Field::FlangeThickness | Field::CounterboreDepth | Field::LedgeInner => {
            Some(Field::NominalFlange)
        }
        Field::FlangeOdHere => Some(Field::FlangeOd),
        Field::PlainLength | Field::StepDepth => Some(Field::SleeveLength),
        _ => None,
    }
}

/// Whether no other reading of this field stands before this one.
fn is_first(sheet: &Sheet<'_>, place: Place) -> bool {
    let own = sheet.entries.comparable(place.owner, place.field);
    own.iter().all(|(index, _)| *index >= place.index)
}

/// What a number should be near to: its neighbours in the same field, the
/// last pull, the other cylinders, the nominal value; in this order.
fn reference(sheet: &Sheet<'_>, place: Place) -> Option<f64> {
    let entries = sheet.entries;
    let own: Vec<(u8, f64)> = entries
        .comparable(place.owner, place.field)
        .into_iter()
        .filter(|(index, _)| *index != place.index)
        .collect();
    match place.field {
        // A staircase: compare with the pull before, else with the warm height.
        Field::PullLoaded | Field::PullReleased => {
            return own
                .iter()
                .rev()
                .find(|(index, _)| *index < place.index)
                .map(|(_, si)| *si)
                .or_else(|| mean_of(entries, place.owner, Field::WarmHeight));
        }
        Field::LowSpot | Field::DeckHere => return None,
        _ => {}
    }
    if let Some(middle) = median(&own) {
        return Some(middle);
    }
    match place.field {
        Field::SeatHeight => {
            return entries
                .comparable(place.owner, Field::PullReleased)
                .last()
                .map(|(_, si)| *si);
        }
        Field::BoreD | Field::ColdOd => {
            if let Some(sleeve) = mean_of(entries, place.owner, Field::SleeveOd) {
                return Some(sleeve);
            }
        }
        Field::WarmHeight => return None,
        _ => {}
    }
    if let Owner::Cylinder(me) = place.owner {
        let others: Vec<(u8, f64)> = (1..=sheet.cylinders)
            .filter(|c| *c != me)
            .flat_map(|c| entries.comparable(Owner::Cylinder(c), place.field))
            .collect();
        if let Some(middle) = median(&others) {
            return Some(middle);
        }
    }
    // The cut decided on is about the cut planned.
    if place.field == Field::DeckCut {
        return preset_or(sheet, Field::PlannedCut);
    }
    match entries.reading(Place::of_engine(nominal(place.field)?)) {
        Reading::Usable(si) => Some(si),
        Reading::Absent | Reading::NotHere | Reading::Unusable(_) => None,
    }
}

/// What a number of the engine is or, blank, usually is: to compare with.
fn preset_or(sheet: &Sheet<'_>, field: Field) -> Option<f64> {
    match sheet.reading(Place::of_engine(field)) {
        Reading::Usable(si) => Some(si),
        Reading::Absent => preset_si(field, sheet.units),
        Reading::NotHere | Reading::Unusable(_) => None,
    }
}

fn mean_of(entries: &Entries, owner: Owner, field: Field) -> Option<f64> {
    let values = entries.comparable(owner, field);
    mean(&values.into_iter().map(|(_, si)| si).collect::<Vec<f64>>())
}

fn median(values: &[(u8, f64)]) -> Option<f64> {
    let sorted = in_order(values.iter().map(|(_, v)| *v).collect(), f64::total_cmp);
    sorted.get(sorted.len() / 2).copied()
}
