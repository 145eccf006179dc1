//! What is measured from the deck, and so is another once the deck is cut. The
//! list is common practice, no source: which of them an engine has, its sheet says.

/// Something measured from the deck.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FromDeck {
    /// Depth of the counterbores for the seals of the water holes.
    WaterBore,
    /// Depth of the counterbores of other seals: oil, cam.
    SealBore,
    /// Depth of the chamfers of the bolt holes.
    BoltChamfer,
    /// How far the dowels stand out of the deck.
    Dowel,
    /// Depth of the recesses under the valves.
    ValveRecess,
    /// Depth of a ring groove that was in the deck before the cut.
    RingGroove,
    /// How far the pistons stand proud of the deck; below it negative.
    Piston,
    /// Depth of the head bolts' holes, to the last full thread: the bolts bottom in
    /// one that is too shallow.
    BoltHole,
}

impl FromDeck {
    /// All: the places of a field, in order. In documents for ever.
    pub const ALL: [Self; 8] = [
        Self::WaterBore,
        Self::SealBore,
        Self::BoltChamfer,
        Self::Dowel,
        Self::ValveRecess,
        Self::RingGroove,
        Self::Piston,
        Self::BoltHole,
    ];

    /// Whether it is a height above the deck, which gains what is cut; a depth
    /// below it loses as much.
    #[must_use]
    pub const fn is_height(self) -> bool {
        matches!(self, Self::Dowel | Self::Piston)
    }

    /// Whether its size has a most: a bolt hole may be as deep as it likes.
    #[must_use]
    pub const fn has_most(self) -> bool {
        !matches!(self, Self::BoltHole)
    }
}
