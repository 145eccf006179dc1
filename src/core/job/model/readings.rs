//! The readings of a cylinder, a deck or the block, as the steps ask for them:
//! each gathering says what it lacks, and what cannot be used stops it. Here is
//! the one mean, and the one way to say what is missing.

use crate::job::model::engine::Engine;
use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::part::{SleeveEnds, SleeveKind};
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Missing, Reading, Spot, Unusable};
use crate::metrology::form::Level;
use crate::quantity::{Diameter, Length};

/// The readings of one owner of a job.
#[derive(Clone, Copy)]
pub struct Readings<'a> {
    /// The job.
    pub job: &'a Job,
    /// Whose readings.
    pub owner: Owner,
}

/// The mean of numbers; `None` of none.
#[must_use]
pub fn mean(values: &[f64]) -> Option<f64> {
    (!values.is_empty()).then(|| values.iter().sum::<f64>() / values.len() as f64)
}

/// The mean of lengths; `None` of none.
#[must_use]
pub fn mean_of(lengths: &[Length]) -> Option<Length> {
    let all: Vec<f64> = lengths.iter().map(|l| l.as_m()).collect();
    mean(&all).map(Length::from_m)
}

/// The largest; `None` of none.
#[must_use]
pub fn largest(values: &[f64]) -> Option<f64> {
    values.iter().copied().reduce(f64::max)
}

/// The smallest; `None` of none.
#[must_use]
pub fn smallest(values: &[f64]) -> Option<f64> {
    values.iter().copied().reduce(f64::min)
}

/// The same numbers as lengths.
#[must_use]
pub fn lengths(values: &[f64]) -> Vec<Length> {
    values.iter().map(|si| Length::from_m(*si)).collect()
}

/// The same numbers as diameters.
#[must_use]
pub fn diameters(values: &[f64]) -> Vec<Diameter> {
    values.iter().map(|si| Diameter::from_m(*si)).collect()
}

impl<'a> Readings<'a> {
    /// Of a job's owner.
    #[must_use]
    pub const fn new(job: &'a Job, owner: Owner) -> Self {
        Self { job, owner }
    }

    /// Of a cylinder.
    #[must_use]
    pub const fn of_cylinder(job: &'a Job, cylinder: u8) -> Self {
        Self::new(job, Owner::Cylinder(cylinder))
    }

    /// The bank that the owner belongs to.
    #[must_use]
    pub const fn bank(&self) -> u8 {
        match self.owner {
            Owner::Cylinder(cylinder) => self.job.engine.bank_of(cylinder),
            Owner::Bank(bank) => bank,
            Owner::Block => 0,
        }
    }

    /// The head of the engine: units, layout, materials.
    ///
    /// # Errors
    /// Where it is in dispute.
    pub fn head(&self) -> Result<&'a Engine, Lack> {
        self.job.dispute(Spot::Engine)?;
        Ok(&self.job.engine)
    }

    /// How the job's sleeves stand; flanged where nobody says otherwise.
    ///
    /// # Errors
    /// Where what is typed cannot be used.
    pub fn sleeve_kind(&self) -> Result<SleeveKind, Lack> {
        Ok(self.job.sleeve_kind()?)
    }

    /// How the job's sleeves end; decked where nobody says otherwise.
    ///
    /// # Errors
    /// Where what is typed cannot be used.
    pub fn sleeve_ends(&self) -> Result<SleeveEnds, Lack> {
        Ok(self.job.sleeve_ends()?)
    }

    /// A number of the engine, typed or preset.
    ///
    /// # Errors
    /// Missing or unusable.
    pub fn engine(&self, field: Field) -> Result<f64, Lack> {
        let found = self.job.engine_si(field)?;
        found.ok_or(Lack::Missing(Missing {
            owner: Owner::Block,
            field,
            places: 1,
        }))
    }

    /// A number of the engine that a block may do without.
    ///
    /// # Errors
    /// Unusable.
    pub fn engine_if(&self, field: Field) -> Result<Option<f64>, Lack> {
        Ok(self.job.engine_si(field)?)
    }

    /// A number of the engine that a block may not have: typed as "none" it has
    /// none; blank, nobody has said.
    ///
    /// # Errors
    /// Missing or unusable.
    pub fn engine_or_none(&self, field: Field) -> Result<Option<f64>, Lack> {
        if self.job.reading(Place::of_engine(field)) == Reading::NotHere {
            return Ok(None);
        }
        self.engine(field).map(Some)
    }

    /// A length of the engine.
    ///
    /// # Errors
    /// Missing or unusable.
    pub fn length(&self, field: Field) -> Result<Length, Lack> {
        self.engine(field).map(Length::from_m)
    }

    /// The readings that are there, by index.
    ///
    /// # Errors
    /// One that cannot be used.
    pub fn list(&self, field: Field) -> Result<Vec<(u8, f64)>, Unusable> {
        self.job.readings(self.owner, field)
    }

    /// So many places of a field are empty.
    #[must_use]
    pub const fn missing(&self, field: Field, places: u8) -> Lack {
        Lack::Missing(Missing {
            owner: self.owner,
            field,
            places,
        })
    }

    /// The readings that are there, one at least.
    ///
    /// # Errors
    /// None there, or one that cannot be used.
    pub fn some(&self, field: Field) -> Result<Vec<f64>, Lack> {
        let values = self.list(field)?;
        if values.is_empty() {
            return Err(self.missing(field, field.spec().places.count()));
        }
        Ok(values.into_iter().map(|(_, si)| si).collect())
    }

    /// All readings of a field, where every place has one.
    ///
    /// # Errors
    /// Places that are empty, or one that cannot be used.
    pub fn complete(&self, field: Field) -> Result<Vec<f64>, Lack> {
        let values = self.list(field)?;
        let empty = field
            .spec()
            .places
            .count()
            .saturating_sub(values.len() as u8);
        if empty > 0 {
            return Err(self.missing(field, empty));
        }
        Ok(values.into_iter().map(|(_, si)| si).collect())
    }

    /// The mean of a field whose places all have a reading.
    ///
    /// # Errors
    /// As [`Self::complete`].
    pub fn mean(&self, field: Field) -> Result<f64, Lack> {
        let values = self.complete(field)?;
        mean(&values).ok_or_else(|| self.missing(field, 1))
    }

    /// The one reading of a field.
    ///
    /// # Errors
    /// Missing or unusable.
    pub fn single(&self, field: Field) -> Result<f64, Lack> {
        self.own(field)?.ok_or_else(|| self.missing(field, 1))
    }

    /// The one reading of a field that need not be there.
    ///
    /// # Errors
    /// One that cannot be used.
    pub fn own(&self, field: Field) -> Result<Option<f64>, Lack> {
        let place = Place {
            owner: self.owner,
            field,
            index: 0,
        };
        Ok(self.job.reading(place).number()?)
    }

    /// Readings at three levels, two axes each, as levels of the form; the
    /// levels stand at the ends and the middle of the sleeve. A level without a
    /// reading is not among them.
    ///
    /// # Errors
    /// No reading, one that cannot be used, or no length of the sleeve.
    pub fn levels(&self, field: Field) -> Result<Vec<Level>, Lack> {
        let values = self.list(field)?;
        if values.is_empty() {
            return Err(self.missing(field, field.spec().places.count()));
        }
        let length_m = self.engine(Field::SleeveLength)?;
        Ok((0..3_u8)
            .map(|level| Level {
                z: Length::from_m(length_m * f64::from(level) / 2.0),
                readings: values
                    .iter()
                    .filter(|(index, _)| index / 2 == level)
                    .map(|(_, si)| Diameter::from_m(*si))
                    .collect(),
            })
            .filter(|level| !level.readings.is_empty())
            .collect())
    }
}
