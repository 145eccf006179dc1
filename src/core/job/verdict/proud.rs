//! What is said of sleeves that are left proud.

use crate::job::model::part::HeldDown;
use crate::job::model::reading::{Lacks, Standing};
use crate::quantity::Length;

/// A limit of the heights of sleeves that are left proud.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ProudLimit {
    /// How low any height may be.
    Low,
    /// How high any height may be.
    High,
    /// How far the heights of one sleeve may be apart.
    Hole,
    /// How far the means of two neighbours may be apart.
    Neighbour,
    /// How far all means of a deck may be apart.
    All,
}

/// A limit that is not kept.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Breach {
    /// Which.
    pub limit: ProudLimit,
    /// By this sleeve; of two neighbours by the first of them, of all by the highest.
    pub cylinder: u8,
    /// Of two neighbours the other one, of all the lowest.
    pub other: Option<u8>,
    /// By so much, m, above 0.
    pub by: Length,
}

/// Heights of a sleeve that is left proud, as measured.
#[derive(Clone, Debug, PartialEq)]
pub struct ProudHole {
    /// Which.
    pub cylinder: u8,
    /// Heights at its four clocks.
    pub heights: Vec<Length>,
    /// The lowest of them.
    pub lowest: Length,
    /// The highest.
    pub highest: Length,
    /// Their mean.
    pub mean: Length,
    /// Limits of its own that it breaks, in order.
    pub breaches: Vec<Breach>,
    /// Limits of its own against which it could not be held.
    pub lacks: Lacks,
}

/// What sleeves do to each other.
#[derive(Clone, Debug, PartialEq)]
pub struct ProudBetween {
    /// Highest less lowest of the means that are measured.
    pub spread: Length,
    /// Limits that are broken between them, in order.
    pub breaches: Vec<Breach>,
    /// Limits against which they could not be held.
    pub lacks: Lacks,
}

/// A deck whose sleeves are left proud.
#[derive(Clone, Debug, PartialEq)]
pub struct ProudDeck {
    /// Which, from 0.
    pub bank: u8,
    /// Its sleeves, each by itself, front to rear.
    pub holes: Vec<(u8, Standing<ProudHole>)>,
    /// Those that are measured, against each other.
    pub between: Standing<ProudBetween>,
    /// Whether they were held down while read; not here where no torque is stated.
    pub held: Standing<HeldDown>,
}

impl ProudDeck {
    /// The sleeves that are measured.
    pub fn measured(&self) -> impl Iterator<Item = &ProudHole> {
        self.holes.iter().filter_map(|(_, hole)| hole.known())
    }

    /// Everything that is broken: of each sleeve, then between them.
    pub fn breaches(&self) -> impl Iterator<Item = &Breach> {
        let between = self.between.known();
        self.measured()
            .flat_map(|hole| &hole.breaches)
            .chain(between.into_iter().flat_map(|between| &between.breaches))
    }

    /// Everything that is missing or cannot be used: of each sleeve, between them, of
    /// how they were read.
    #[must_use]
    pub fn lacks(&self) -> Lacks {
        let mut all = Lacks::default();
        for (_, hole) in &self.holes {
            all.take(hole.lack().map_or(Ok(()), Err));
            if let Some(hole) = hole.known() {
                all.extend(&hole.lacks);
            }
        }
        all.take(self.between.lack().map_or(Ok(()), Err));
        if let Some(between) = self.between.known() {
            all.extend(&between.lacks);
        }
        all.take(self.held.lack().map_or(Ok(()), Err));
        all
    }

    /// Whether every sleeve was held against every limit, read as the sheet asks.
    #[must_use]
    pub fn is_all_held(&self) -> bool {
        self.lacks().is_empty() && self.held != Standing::Known(HeldDown::Free)
    }
}
