//! What stands in a field is one of three things: nothing, a number, or
//! something that is no usable number. The third is neither of the first two,
//! and nothing turns it into one: not into an absent reading that is left out of
//! a mean, not into a preset, not into zero, not into a check that is not made.

use crate::job::model::field::Field;
use crate::job::model::place::{Owner, Place};
use crate::job::model::step::StepId;
use crate::quantity::bounds::Bound;
use crate::quantity::parse::ParseError;
use crate::quantity::report::Fault;

/// What stands at a place.
#[derive(Clone, Debug, PartialEq)]
pub enum Reading {
    /// Nothing.
    Absent,
    /// A number, SI.
    Usable(f64),
    /// The word that says that this block has no such thing.
    NotHere,
    /// Something that cannot be used.
    Unusable(Unusable),
}

impl Reading {
    /// The number, if there is anything.
    ///
    /// # Errors
    /// What cannot be used.
    pub fn number(self) -> Result<Option<f64>, Unusable> {
        match self {
            Self::Absent | Self::NotHere => Ok(None),
            Self::Usable(si) => Ok(Some(si)),
            Self::Unusable(unusable) => Err(unusable),
        }
    }
}

/// Something typed or set that cannot be used, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Unusable {
    /// Where.
    pub spot: Spot,
    /// Why.
    pub why: Why,
}

/// Where something of a job stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spot {
    /// A reading.
    Reading(Place),
    /// The head of the engine: cylinders, layout, units, materials.
    Engine,
    /// The holes that get no sleeve.
    LeftOut,
    /// The release of a deck by hand.
    Unlock(u8),
    /// What is kept of a step: mark, note, timer.
    Step(Owner, StepId),
}

/// Why something cannot be used.
#[derive(Clone, Debug, PartialEq)]
pub enum Why {
    /// It does not read.
    NotRead(ParseError),
    /// It is outside its range.
    OutOfRange(&'static Bound),
    /// The inside diameter is not below the outside diameter, given in SI.
    InnerNotBelowOuter(f64),
    /// Twice the wall is not below the outside diameter, given in SI.
    WallTooThick(f64),
    /// The lower limit is not below the upper, given in SI.
    LowNotBelowHigh(f64),
    /// A torque is stated, and no height that is to be read at it.
    TorqueAlone,
    /// A pass of 0, or one larger than the most that may be cut, given in SI.
    PassNotInCut(f64),
    /// Two devices set it differently without knowing of each other, and nobody
    /// has chosen yet.
    Disputed,
}

/// A number that is not there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Missing {
    /// Whose.
    pub owner: Owner,
    /// Which.
    pub field: Field,
    /// So many of its places.
    pub places: u8,
}

/// Why something cannot be worked out.
#[derive(Clone, Debug, PartialEq)]
pub enum Lack {
    /// A number is not there.
    Missing(Missing),
    /// What is there cannot be used.
    Unusable(Unusable),
    /// The numbers do not go together.
    Refused(Fault),
}

impl From<Fault> for Lack {
    fn from(fault: Fault) -> Self {
        Self::Refused(fault)
    }
}

impl From<Unusable> for Lack {
    fn from(unusable: Unusable) -> Self {
        Self::Unusable(unusable)
    }
}

impl From<Missing> for Lack {
    fn from(missing: Missing) -> Self {
        Self::Missing(missing)
    }
}

/// How one of several checks stands; each is worked out by itself.
#[derive(Clone, Debug, PartialEq)]
pub enum Standing<T> {
    /// Worked out.
    Known(T),
    /// A number is missing.
    Missing(Missing),
    /// A number cannot be used.
    Unusable(Unusable),
    /// The numbers do not go together.
    Refused(Fault),
    /// There is no such thing here: no lower step, no fire ring.
    NotHere,
}

impl<T> Standing<T> {
    /// From what may lack something.
    pub fn of(worked: Result<T, Lack>) -> Self {
        match worked {
            Ok(known) => Self::Known(known),
            Err(Lack::Missing(missing)) => Self::Missing(missing),
            Err(Lack::Unusable(unusable)) => Self::Unusable(unusable),
            Err(Lack::Refused(fault)) => Self::Refused(fault),
        }
    }

    /// Why it is not known; nothing where it is, or where there is no such thing.
    pub fn lack(&self) -> Option<Lack> {
        match self {
            Self::Known(_) | Self::NotHere => None,
            Self::Missing(missing) => Some(Lack::Missing(*missing)),
            Self::Unusable(unusable) => Some(Lack::Unusable(unusable.clone())),
            Self::Refused(fault) => Some(Lack::Refused(fault.clone())),
        }
    }

    /// What is known, if it is.
    pub const fn known(&self) -> Option<&T> {
        match self {
            Self::Known(known) => Some(known),
            _ => None,
        }
    }
}

/// Everything that keeps something from being worked out, gathered so that it
/// is asked for at once.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Lacks {
    /// Numbers that are not there.
    pub missing: Vec<Missing>,
    /// What cannot be used.
    pub unusable: Vec<Unusable>,
    /// What does not go together.
    pub refused: Option<Fault>,
}

impl Lacks {
    /// The value, or `None` with what it lacks noted.
    pub fn take<T>(&mut self, worked: Result<T, Lack>) -> Option<T> {
        match worked {
            Ok(value) => return Some(value),
            Err(Lack::Missing(missing)) => {
                if !self.missing.contains(&missing) {
                    self.missing.push(missing);
                }
            }
            Err(Lack::Unusable(unusable)) => {
                if !self.unusable.contains(&unusable) {
                    self.unusable.push(unusable);
                }
            }
            Err(Lack::Refused(fault)) => self.refused = Some(fault),
        }
        None
    }

    /// Notes what something else lacks as well.
    pub fn extend(&mut self, other: &Self) {
        let missing = other.missing.iter().copied().map(Lack::Missing);
        let unusable = other.unusable.iter().cloned().map(Lack::Unusable);
        let refused = other.refused.iter().cloned().map(Lack::Refused);
        for lack in missing.chain(unusable).chain(refused) {
            self.take::<()>(Err(lack));
        }
    }

    /// What cannot be used or does not go together, the first of it.
    #[must_use]
    pub fn spoiled(&self) -> Option<Lack> {
        let refused = || self.refused.clone().map(Lack::Refused);
        self.unusable
            .first()
            .cloned()
            .map(Lack::Unusable)
            .or_else(refused)
    }

    /// Whether nothing is lacking.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.missing.is_empty() && self.unusable.is_empty() && self.refused.is_none()
    }

    /// Whether a field is missing.
    #[must_use]
    pub fn misses(&self, field: Field) -> bool {
        self.missing.iter().any(|m| m.field == field)
    }
}

impl From<Lack> for Lacks {
    fn from(lack: Lack) -> Self {
        let mut lacks = Self::default();
        lacks.take::<()>(Err(lack));
        lacks
    }
}

impl From<Fault> for Lacks {
    fn from(fault: Fault) -> Self {
        Self::from(Lack::Refused(fault))
    }
}
