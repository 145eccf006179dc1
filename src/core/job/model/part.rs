//! What a cold drop is of, what makes it cold and what warms its housing: words
//! of documents with what is usual of each.
//!
//! Usual sizes are invented round common practice, no source: they stand until
//! somebody types, and are told as nobody's own. Coefficients of the media from
//! memory, wide on purpose (physics.md, soak).

use crate::job::model::field::Field;
use crate::job::model::field_kind::{Plausible, UnitSystem};
use crate::quantity::Temperature;
use crate::quantity::parse::parse;

macro_rules! words {
    ($(#[$doc:meta])* $name:ident $ids:ident { $($(#[$one:meta])* $variant:ident $id:literal,)* }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum $name { $($(#[$one])* $variant,)* }

        /// Their names in documents, for ever; new ones go to the end.
        pub const $ids: &[&str] = &[$($id,)*];

        impl $name {
            /// All, in the order of their names.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)*];

            /// Its name in documents.
            #[must_use]
            pub const fn id(self) -> &'static str {
                match self { $(Self::$variant => $id,)* }
            }

            /// From its name in documents.
            #[must_use]
            pub fn from_id(id: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|one| one.id() == id)
            }
        }
    };
}

words! {
    /// What goes in.
    Part PARTS {
        /// A dry sleeve with a flange on a ledge.
        FlangedSleeve "flanged_sleeve",
        /// A dry sleeve without: it stands on a step or is held by its fit.
        PlainSleeve "plain_sleeve",
        /// A bushing.
        Bushing "bushing",
        /// A valve-seat ring.
        SeatRing "seat_ring",
        /// The outer ring of a bearing.
        BearingRing "bearing_ring",
        /// A pin or a shaft: solid.
        Pin "pin",
    }
}

words! {
    /// What makes the part cold.
    Cold COLDS {
        /// Liquid nitrogen, boiling.
        Nitrogen "nitrogen",
        /// Dry ice in alcohol.
        DryIceAlcohol "dry_ice_alcohol",
        /// Packed in crushed dry ice.
        DryIcePacked "dry_ice_packed",
        /// A freezer, still.
        Freezer "freezer",
        /// Outdoors, or any cold air.
        Outdoors "outdoors",
        /// Nothing: it goes in as the shop is.
        AsItIs "none",
    }
}

words! {
    /// What warms the housing.
    Heat HEATS {
        /// Nothing: it is as the shop is.
        AsItIs "none",
        /// An oven, still.
        Oven "oven",
        /// A hot plate.
        HotPlate "hot_plate",
        /// Hot water.
        Water "water",
    }
}

/// Coefficients of a medium that does not boil: low, nominal, high, W/m2/K.
pub type Coefficients = [f64; 3];

impl Cold {
    /// Its temperature where it has one of its own.
    #[must_use]
    pub const fn temperature(self) -> Option<Temperature> {
        match self {
            // One atmosphere, reference fluid data.
            Self::Nitrogen => Some(Temperature::from_k(77.355)),
            // Sublimation of carbon dioxide at one atmosphere.
            Self::DryIceAlcohol | Self::DryIcePacked => Some(Temperature::from_k(194.7)),
            // A chest freezer, 0 F; from memory.
            Self::Freezer => Some(Temperature::from_k(255.37)),
            Self::Outdoors | Self::AsItIs => None,
        }
    }

    /// How heat gets out of the part; `None` where it boils or nothing is done.
    #[must_use]
    pub const fn coefficients(self) -> Option<Coefficients> {
        match self {
            Self::DryIceAlcohol => Some([150.0, 300.0, 500.0]),
            Self::DryIcePacked => Some([20.0, 35.0, 60.0]),
            Self::Freezer => Some([5.0, 8.0, 12.0]),
            Self::Outdoors => Some([5.0, 12.0, 30.0]),
            Self::Nitrogen | Self::AsItIs => None,
        }
    }

    /// Whether its temperature is read off a thermometer, not fixed by what it is.
    #[must_use]
    pub const fn is_read(self) -> bool {
        matches!(self, Self::Freezer | Self::Outdoors)
    }
}

impl Heat {
    /// How heat gets into the housing; `None` where that cannot be told: a plate
    /// warms by the touch of one face.
    #[must_use]
    pub const fn coefficients(self) -> Option<Coefficients> {
        match self {
            Self::Oven => Some([8.0, 14.0, 20.0]),
            Self::Water => Some([200.0, 500.0, 1000.0]),
            Self::HotPlate | Self::AsItIs => None,
        }
    }
}

/// Usual sizes of a part, in inches and in millimetres.
struct Usual {
    field: Field,
    inch: &'static str,
    metric: &'static str,
}

const fn usual(field: Field, inch: &'static str, metric: &'static str) -> Usual {
    Usual {
        field,
        inch,
        metric,
    }
}

/// A 1.5 in bushing in a forged beam.
const BUSHING: &[Usual] = &[
    usual(Field::DropOd, "1.5000", "38.000"),
    usual(Field::DropWall, "0.1250", "3.000"),
    usual(Field::DropLength, "2.0000", "50.000"),
    usual(Field::DropFit, "0.0020", "0.050"),
    usual(Field::DropBlockWall, "0.7500", "20.000"),
    usual(Field::DropLeast, "0.0010", "0.025"),
];
/// A seat ring of a medium head.
const SEAT_RING: &[Usual] = &[
    usual(Field::DropOd, "1.7500", "45.000"),
    usual(Field::DropWall, "0.1500", "4.000"),
    usual(Field::DropLength, "0.3000", "8.000"),
    usual(Field::DropFit, "0.0040", "0.100"),
    usual(Field::DropBlockWall, "0.4000", "10.000"),
    usual(Field::DropLeast, "0.0010", "0.025"),
    usual(Field::DropCarry, "4", "4"),
    usual(Field::DropHome, "2", "2"),
];
/// The outer ring of a bearing of medium series.
const BEARING_RING: &[Usual] = &[
    usual(Field::DropOd, "3.1496", "80.000"),
    usual(Field::DropWall, "0.3000", "7.500"),
    usual(Field::DropLength, "0.7087", "18.000"),
    usual(Field::DropFit, "0.0010", "0.025"),
    usual(Field::DropBlockWall, "0.6000", "15.000"),
    usual(Field::DropLeast, "0.0010", "0.025"),
];
/// A dowel.
const PIN: &[Usual] = &[
    usual(Field::DropOd, "0.2500", "6.000"),
    usual(Field::DropLength, "1.0000", "25.000"),
    usual(Field::DropFit, "0.0003", "0.008"),
    usual(Field::DropBlockWall, "0.5000", "12.000"),
    usual(Field::DropLeast, "0.0001", "0.002"),
    usual(Field::DropCarry, "3", "3"),
    usual(Field::DropHome, "2", "2"),
];

impl Part {
    /// Whether it is a sleeve of a cylinder.
    #[must_use]
    pub const fn is_sleeve(self) -> bool {
        matches!(self, Self::FlangedSleeve | Self::PlainSleeve)
    }

    /// Whether it has no bore.
    #[must_use]
    pub const fn is_solid(self) -> bool {
        matches!(self, Self::Pin)
    }

    /// What usually stands in a field of its cold drop, as text; `None`: as for a
    /// sleeve.
    #[must_use]
    pub fn usual_text(self, field: Field, units: UnitSystem) -> Option<&'static str> {
        let table = match self {
            Self::FlangedSleeve | Self::PlainSleeve => return None,
            Self::Bushing => BUSHING,
            Self::SeatRing => SEAT_RING,
            Self::BearingRing => BEARING_RING,
            Self::Pin => PIN,
        };
        let found = table.iter().find(|one| one.field == field)?;
        Some(match units {
            UnitSystem::Inch => found.inch,
            UnitSystem::Metric => found.metric,
        })
    }

    /// What is plausible of a field of its cold drop: for a sleeve what the
    /// field's own entry says, for all else a tenth to ten times what is usual.
    #[must_use]
    pub fn plausible(self, field: Field) -> Plausible {
        let own = field.spec().plausible;
        let Plausible::Size { far, .. } = own else {
            return own;
        };
        let Some(text) = self.usual_text(field, UnitSystem::Inch) else {
            return own;
        };
        match parse(text, field.unit(UnitSystem::Inch)) {
            Ok(usual) => Plausible::Size {
                lo: 0.1 * usual.si,
                hi: 10.0 * usual.si,
                far,
            },
            Err(_) => own,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_come_back_and_every_usual_size_reads_within_its_range() {
        for part in Part::ALL {
            assert_eq!(Part::from_id(part.id()), Some(*part));
            for field in [
                Field::DropOd,
                Field::DropWall,
                Field::DropLength,
                Field::DropFit,
                Field::DropBlockWall,
                Field::DropLeast,
                Field::DropCarry,
                Field::DropHome,
            ] {
                for units in [UnitSystem::Inch, UnitSystem::Metric] {
                    let Some(text) = part.usual_text(field, units) else {
                        continue;
                    };
                    let read = parse(text, field.unit(units)).map(|t| t.si);
                    let in_range = |si: f64| field.spec().bound.contains(si);
                    assert!(
                        read.is_ok_and(in_range),
                        "{} {}",
                        part.id(),
                        field.spec().id
                    );
                }
            }
        }
        assert_eq!(Cold::from_id("nitrogen"), Some(Cold::Nitrogen));
        assert_eq!(Heat::from_id("oven"), Some(Heat::Oven));
        assert_eq!(Part::from_id("rod"), None);
    }
}
