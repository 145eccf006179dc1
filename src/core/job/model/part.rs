//! How the sleeves of a job stand and end, and what they are asked for.
//!
//! What a cold drop is of, what makes it cold and what warms its housing: words
//! of documents, with temperature and coefficients of each medium. Coefficients
//! from memory, wide on purpose (physics.md, soak).

use crate::quantity::Temperature;
use crate::thermal::chill::NITROGEN_K;

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
    /// How the sleeves of a job stand in their block.
    SleeveKind SLEEVE_KINDS {
        /// By a flange on the ledge of a counterbore.
        Flanged "flanged",
        /// Plain, its foot on a step of the bore.
        OnStep "on_step",
        /// Plain, held by its fit alone.
        ByFit "by_fit",
    }
}

words! {
    /// How the sleeves of a job end at the deck.
    SleeveEnds SLEEVE_ENDS {
        /// Flush: the deck is cut, and the sleeves with it.
        Decked "decked",
        /// Proud of it, within limits; the deck is not cut.
        Proud "proud",
    }
}

words! {
    /// Whether the sleeves of a deck were held down while their heights were read.
    HeldDown HELD_DOWN {
        /// At the torque that the engine's sheet states.
        Held "held",
        /// Read free.
        Free "free",
    }
}

words! {
    /// What a flange's face left on the inked ledge.
    Inked INKED {
        /// A full ring.
        Full "full",
        /// A broken one.
        Broken "broken",
        /// Nobody tried.
        NotDone "not_done",
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
            Self::Nitrogen => Some(Temperature::from_k(NITROGEN_K)),
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
}
