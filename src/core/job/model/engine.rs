//! The engine profile: what all its cylinders share. Its numbers (geometry,
//! limits, gauges) are entries like any other; the rest is here.

use crate::job::model::entries::{Entries, Entry};
use crate::job::model::field::{FIELDS, Field};
use crate::job::model::field_kind::{Plausible, Scope, UnitSystem};
pub use crate::job::model::place::CYLINDERS_MOST;
use crate::job::model::place::{Millis, Owner, Place};
use crate::materials::MaterialId;
use crate::quantity::parse::parse;

/// How the cylinders stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layout {
    /// One row.
    InLine,
    /// Two banks, the first half of the numbers on bank A.
    VHalves,
    /// Two banks, odd numbers on bank A.
    VOddEven,
}

impl Layout {
    /// All.
    pub const ALL: [Self; 3] = [Self::InLine, Self::VHalves, Self::VOddEven];

    /// Its name in documents.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::InLine => "in_line",
            Self::VHalves => "v_halves",
            Self::VOddEven => "v_odd_even",
        }
    }

    /// From its name in documents.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|l| l.id() == id)
    }
}

/// What all cylinders share, numbers aside.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Engine {
    /// Its name.
    pub name: String,
    /// 1 to 16.
    pub cylinders: u8,
    /// How they stand.
    pub layout: Layout,
    /// Units of everything typed and shown.
    pub units: UnitSystem,
    /// What the sleeves are made of.
    pub sleeve_material: MaterialId,
    /// What the block is made of.
    pub block_material: MaterialId,
}

impl Engine {
    /// Decks: one, or two of a V.
    #[must_use]
    pub const fn banks(&self) -> u8 {
        match self.layout {
            Layout::InLine => 1,
            Layout::VHalves | Layout::VOddEven => 2,
        }
    }

    /// The bank of a cylinder, from 0.
    #[must_use]
    pub const fn bank_of(&self, cylinder: u8) -> u8 {
        match self.layout {
            Layout::InLine => 0,
            Layout::VHalves => (cylinder > self.cylinders.div_ceil(2)) as u8,
            Layout::VOddEven => (cylinder + 1) % 2,
        }
    }
}

/// The preset of a field as text; empty: none.
#[must_use]
pub fn preset_text(field: Field, units: UnitSystem) -> &'static str {
    let preset = field.spec().preset;
    match units {
        UnitSystem::Inch => preset.inch,
        UnitSystem::Metric => preset.metric,
    }
}

/// Numbers for which no usual value stands: shops, sleeves and gaskets differ too
/// much, and the sheet of the engine or of the sleeve has them. A shop that does
/// one kind of block keeps its own in the settings.
const BY_SHEET: [Field; 12] = [
    Field::FitLow,
    Field::FitHigh,
    Field::TargetProud,
    Field::PlannedCut,
    Field::CleanUp,
    Field::ProudLow,
    Field::ProudHigh,
    Field::SpreadHole,
    Field::SpreadNeighbour,
    Field::SpreadAll,
    Field::LedgeCutMost,
    Field::LedgeCutStep,
];

/// Up to where such a number is taken without a question, SI; `None` for all
/// others.
#[must_use]
pub fn by_sheet_most(field: Field) -> Option<f64> {
    match field.spec().plausible {
        Plausible::Offset { far } if BY_SHEET.contains(&field) => Some(far),
        _ => None,
    }
}

/// The engine's limit on how far readings of a field may be out of round; an old
/// bore is held to none.
#[must_use]
pub const fn form_limit(field: Field) -> Option<Field> {
    match field {
        Field::SleeveOd => Some(Field::RoundStop),
        Field::BoreD | Field::FinishD => Some(Field::BoreForm),
        _ => None,
    }
}

/// The preset of a field in SI.
#[must_use]
pub fn preset_si(field: Field, units: UnitSystem) -> Option<f64> {
    let typed = parse(preset_text(field, units), field.unit(units));
    typed.ok().map(|typed| typed.si)
}

/// Numbers of the gauges and the shop that stand as usual until somebody types
/// them, and are no part of a new engine.
const OF_SHOP: [Field; 8] = [
    Field::CommonHeight,
    Field::CommonThickness,
    Field::CommonDepth,
    Field::PriorHome,
    Field::HomeNeeded,
    Field::GaugeLength,
    Field::GaugeStep,
    Field::LedgeFall,
];

/// The presets of a scope as entries, so that they are seen and can be
/// changed.
#[must_use]
pub fn presets(scope: Scope, units: UnitSystem, at: Millis) -> Entries {
    let mut entries = Entries::default();
    for spec in FIELDS.iter().filter(|f| f.scope == scope) {
        let text = preset_text(spec.field, units);
        if !text.is_empty() && !OF_SHOP.contains(&spec.field) {
            entries.put(
                Place::of_engine(spec.field),
                Entry::new(text, spec.field.unit(units), at),
            );
        }
    }
    entries
}

/// The engine's own entries out of a job's: what a profile is.
#[must_use]
pub fn profile_of(entries: &Entries) -> Entries {
    let mut profile = Entries::default();
    for (place, entry) in entries.iter() {
        if place.owner == Owner::Block && place.field.spec().scope == Scope::Engine {
            profile.put(*place, entry.clone());
        }
    }
    profile
}

#[cfg(test)]
mod tests {
    use super::*;

    fn engine(cylinders: u8, layout: Layout) -> Engine {
        Engine {
            name: String::new(),
            cylinders,
            layout,
            units: UnitSystem::Inch,
            sleeve_material: MaterialId::GrayIron,
            block_material: MaterialId::GrayIron,
        }
    }

    #[test]
    fn banks_by_layout() {
        let banks = |e: &Engine| (1..=e.cylinders).map(|c| e.bank_of(c)).collect::<Vec<_>>();
        assert_eq!(banks(&engine(3, Layout::InLine)), [0, 0, 0]);
        assert_eq!(banks(&engine(6, Layout::VHalves)), [0, 0, 0, 1, 1, 1]);
        assert_eq!(banks(&engine(6, Layout::VOddEven)), [0, 1, 0, 1, 0, 1]);
    }
}
