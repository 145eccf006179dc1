//! What a pull puts on ram, rod, ledge and flange.

use crate::job::model::reading::Standing;
use crate::quantity::Pressure;

/// What bears a load.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bearer {
    /// The ram, by its gauge.
    Ram,
    /// The pulling rod, in tension.
    Rod,
    /// The ledge, pressed.
    Ledge,
    /// The flange, in shear round its root.
    Flange,
}

impl Bearer {
    /// All.
    pub const ALL: [Self; 4] = [Self::Ram, Self::Rod, Self::Ledge, Self::Flange];
}

/// A load, and what it may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Load {
    /// Now.
    pub now: Pressure,
    /// At most.
    pub most: Pressure,
}

/// How one bearer stands; each is worked out by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadCheck {
    /// What bears it.
    pub bearer: Bearer,
    /// Its load.
    pub standing: Standing<Load>,
}
