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
    /// Cast aluminum A356-T6.
    AluminiumA356,
    /// Wrought aluminum 6061-T6.
    Aluminium6061,
    /// Leaded tin bronze UNS C93200 (SAE 660).
    BronzeC93200,
    /// Aluminum bronze UNS C95400.
    BronzeC95400,
    /// Phosphor bronze UNS C51000.
    BronzeC51000,
    /// Free-cutting brass UNS C36000.
    BrassC36000,
    /// Bearing steel 52100 (100Cr6), hardened.
    BearingSteel52100,
    /// Tool steel H13, hardened.
    ToolSteelH13,
    /// Cobalt-base seat alloy UNS R30006.
    CobaltR30006,
    /// High-nickel seat alloy UNS N07718.
    NickelN07718,
    /// Sintered copper steel MPIF FC-0208 of 6.7 g/cm3.
    SinteredFc0208,
    /// Cast aluminum 319.
    Aluminum319,
    /// Die-cast aluminum A380.
    AluminumA380,
    /// Cast magnesium AZ91.
    MagnesiumAz91,
}

impl MaterialId {
    /// All of them, in the catalogue's order.
    pub const ALL: [Self; 20] = [
        Self::GrayIron,
        Self::DuctileIronFerritic,
        Self::DuctileIronPearlitic,
        Self::CompactedIron,
        Self::CarbonSteel,
        Self::Stainless304,
        Self::AluminiumA356,
        Self::Aluminium6061,
        Self::BronzeC93200,
        Self::BronzeC95400,
        Self::BronzeC51000,
        Self::BrassC36000,
        Self::BearingSteel52100,
        Self::ToolSteelH13,
        Self::CobaltR30006,
        Self::NickelN07718,
        Self::SinteredFc0208,
        Self::Aluminum319,
        Self::AluminumA380,
        Self::MagnesiumAz91,
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
            Self::BronzeC93200 => &entries::LEADED_TIN_BRONZE,
            Self::BronzeC95400 => &entries::ALUMINUM_BRONZE,
            Self::BronzeC51000 => &entries::PHOSPHOR_BRONZE,
            Self::BrassC36000 => &entries::FREE_CUTTING_BRASS,
            Self::BearingSteel52100 => &entries::BEARING_STEEL,
            Self::ToolSteelH13 => &entries::TOOL_STEEL,
            Self::CobaltR30006 => &entries::COBALT_SEAT,
            Self::NickelN07718 => &entries::NICKEL_SEAT,
            Self::SinteredFc0208 => &entries::SINTERED_STEEL,
            Self::Aluminum319 => &entries::ALUMINUM_319,
            Self::AluminumA380 => &entries::ALUMINUM_A380,
            Self::MagnesiumAz91 => &entries::MAGNESIUM_AZ91,
        }
    }

    /// The family it is listed under.
    #[must_use]
    pub const fn family(self) -> Family {
        self.entry().family
    }
}

/// Families of materials, as a list groups them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Family {
    /// Cast and sintered irons.
    Iron,
    /// Steels.
    Steel,
    /// Bronzes and brass.
    Bronze,
    /// Aluminum and magnesium.
    Light,
    /// Alloys of valve seats.
    Seat,
}

impl Family {
    /// All of them, in the order of a list.
    pub const ALL: [Self; 5] = [
        Self::Iron,
        Self::Steel,
        Self::Bronze,
        Self::Light,
        Self::Seat,
    ];

    /// Its materials, in the catalogue's order.
    pub fn materials(self) -> impl Iterator<Item = MaterialId> {
        MaterialId::ALL
            .into_iter()
            .filter(move |m| m.family() == self)
    }
}

/// All that is known of one material.
#[derive(Debug)]
pub struct Entry {
    /// Stable id.
    pub id: &'static str,
    /// Name in the trade's words.
    pub name: &'static str,
    /// What it is listed under.
    pub family: Family,
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
