//! The catalogue: which materials there are and what an entry holds. The
//! numbers stand in [`super::entries`].
//!
//! Range of the temperature-dependent properties: 70 to 500 K.

use super::entries;
use super::expansion::Shape;
use super::property::{Property, TableProperty};

/// A material of the catalogue.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MaterialId {
    /// Flake-graphite cast iron.
    GrayIron,
    /// Ductile iron, ferritic (65-45-12).
    DuctileIronFerritic,
    /// Ductile iron, pearlitic (80-55-06).
    DuctileIronPearlitic,
    /// Compacted-graphite iron.
    CompactedIron,
    /// Plain carbon steel, 0.2 to 0.75 % C.
    CarbonSteel,
    /// Austenitic stainless steel 304.
    Stainless304,
    /// Cast aluminium A356-T6.
    AluminiumA356,
    /// Wrought aluminium 6061-T6.
    Aluminium6061,
}

impl MaterialId {
    /// All of them, in the catalogue's order.
    pub const ALL: [Self; 8] = [
        Self::GrayIron,
        Self::DuctileIronFerritic,
        Self::DuctileIronPearlitic,
        Self::CompactedIron,
        Self::CarbonSteel,
        Self::Stainless304,
        Self::AluminiumA356,
        Self::Aluminium6061,
    ];

    /// Its stable id, as in documents and the evaluator.
    #[must_use]
    pub const fn id(self) -> &'static str {
        self.entry().id
    }

    /// Its name in the trade's words.
    #[must_use]
    pub const fn name(self) -> &'static str {
        self.entry().name
    }

    /// The material with this id.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|m| m.id() == id)
    }

    /// Its place in the catalogue.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Its entry.
    #[must_use]
    pub const fn entry(self) -> &'static Entry {
        match self {
            Self::GrayIron => &entries::GRAY_IRON,
            Self::DuctileIronFerritic => &entries::DUCTILE_FERRITIC,
            Self::DuctileIronPearlitic => &entries::DUCTILE_PEARLITIC,
            Self::CompactedIron => &entries::COMPACTED,
            Self::CarbonSteel => &entries::CARBON_STEEL,
            Self::Stainless304 => &entries::STAINLESS_304,
            Self::AluminiumA356 => &entries::ALUMINIUM_A356,
            Self::Aluminium6061 => &entries::ALUMINIUM_6061,
        }
    }
}

/// All that is known of one material.
#[derive(Debug)]
pub struct Entry {
    /// Stable id.
    pub id: &'static str,
    /// Name in the trade's words.
    pub name: &'static str,
    /// Contraction from 293.15 K to 77.355 K, as a fraction, positive.
    pub chill_contraction: Property,
    /// How expansion runs with temperature.
    pub shape: Shape,
    /// Specific heat capacity.
    pub specific_heat: TableProperty,
    /// What the specific heat does below its first node.
    pub specific_heat_below: Below,
    /// Thermal conductivity.
    pub conductivity: TableProperty,
    /// Density at 293.15 K.
    pub density: Property,
    /// Young's modulus at room temperature.
    pub youngs: Property,
    /// Poisson's ratio.
    pub poisson: Property,
    /// Least tensile strength.
    pub tensile: Property,
}

/// What a specific heat does below the first node of its table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Below {
    /// Goes on straight, with the slope at the first node.
    GoesOnStraight,
    /// Follows log10 cp = sum of c_i (log10 T)^i.
    NistLogPolynomial(&'static [f64; 8]),
}
