//! Where a number lives: whose it is, which field, which of the field's places.

use crate::job::model::field::Field;

/// Milliseconds since 1970-01-01, UTC.
pub type Millis = u64;

/// Whose an entry is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Owner {
    /// The engine, the job as a whole.
    Block,
    /// A deck: bank 0, or 0 and 1 of a V.
    Bank(u8),
    /// A cylinder, counted from 1.
    Cylinder(u8),
}

/// Where an entry lives.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Place {
    /// Whose it is.
    pub owner: Owner,
    /// Which number.
    pub field: Field,
    /// Which of the field's places, from 0.
    pub index: u8,
}

/// Cylinders at most.
pub const CYLINDERS_MOST: u8 = 16;

impl Owner {
    /// Its name in documents: for ever.
    #[must_use]
    pub fn name(self) -> String {
        match self {
            Self::Block => "engine".to_owned(),
            Self::Bank(bank) => format!("bank{}", bank + 1),
            Self::Cylinder(cylinder) => cylinder.to_string(),
        }
    }

    /// From its name in documents.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        match name {
            "engine" => Some(Self::Block),
            "bank1" => Some(Self::Bank(0)),
            "bank2" => Some(Self::Bank(1)),
            _ => (1..=CYLINDERS_MOST)
                // "03" or "+3" would come back as another name
                .find(|n| n.to_string() == name)
                .map(Self::Cylinder),
        }
    }
}

impl Place {
    /// A place of a cylinder.
    #[must_use]
    pub const fn of_cylinder(cylinder: u8, field: Field, index: u8) -> Self {
        Self {
            owner: Owner::Cylinder(cylinder),
            field,
            index,
        }
    }

    /// The only place of a field of the engine.
    #[must_use]
    pub const fn of_engine(field: Field) -> Self {
        Self {
            owner: Owner::Block,
            field,
            index: 0,
        }
    }

    /// A place of a deck.
    #[must_use]
    pub const fn of_bank(bank: u8, field: Field, index: u8) -> Self {
        Self {
            owner: Owner::Bank(bank),
            field,
            index,
        }
    }

    /// The places of a field, in order.
    pub fn all(owner: Owner, field: Field) -> impl Iterator<Item = Self> + Clone {
        (0..field.spec().places.count()).map(move |index| Self {
            owner,
            field,
            index,
        })
    }

    /// Its path in documents: for ever.
    #[must_use]
    pub fn path(self) -> String {
        let (owner, id) = (self.owner.name(), self.field.spec().id);
        format!("entries/{owner}/{id}/{}", self.index)
    }

    /// From its path in documents.
    #[must_use]
    pub fn from_path(path: &str) -> Option<Self> {
        let mut keys = path.split('/');
        let (part, owner, id, index) = (keys.next()?, keys.next()?, keys.next()?, keys.next()?);
        if part != "entries" || keys.next().is_some() {
            return None;
        }
        let field = Field::from_id(id)?;
        Some(Self {
            owner: Owner::from_name(owner)?,
            field,
            index: index
                .parse()
                .ok()
                .filter(|i| *i < field.spec().places.count())?,
        })
    }
}
