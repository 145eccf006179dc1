//! A property: a number with its unit, band, flag and source, so that every
//! result can say where it comes from.

/// How a value is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flag {
    /// Read in a public document or an installed library.
    Read,
    /// Recalled from memory, not seen.
    Memory,
    /// Computed from values flagged elsewhere.
    Computed,
    /// Engineering estimate by analogy.
    Estimate,
}

impl Flag {
    /// Its word, for the "where from" sheet.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::Memory => "from memory",
            Self::Computed => "computed",
            Self::Estimate => "estimate",
        }
    }
}

/// A number that knows its origin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Property {
    /// The value in `unit`.
    pub value: f64,
    /// Half-width of the 95 % band upward, in `unit`.
    pub band: f64,
    /// Half-width of it downward; as a rule the same.
    pub band_low: f64,
    /// Its unit.
    pub unit: &'static str,
    /// How it is known.
    pub flag: Flag,
    /// Where it comes from, with conditions.
    pub source: &'static str,
}

/// A property that depends on temperature, as a table of nodes (K, value).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TableProperty {
    /// Nodes, rising in temperature.
    pub nodes: &'static [(f64, f64)],
    /// Factor on every value.
    pub factor: f64,
    /// Half-width of the 95 % band as a fraction of the value.
    pub band_fraction: f64,
    /// Unit of the values.
    pub unit: &'static str,
    /// How it is known.
    pub flag: Flag,
    /// Where it comes from.
    pub source: &'static str,
}
