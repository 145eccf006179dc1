//! What is to be shown anew after something was done or answered.

/// One of the documents of a tab.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// The open job.
    Job,
    /// The shop's settings.
    Shop,
    /// The cold drop in use, which has no name.
    Drop,
    /// The cold drop that is open and kept under a name.
    KeptDrop,
}

impl Which {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Job, Self::Shop, Self::Drop, Self::KeptDrop];
}

/// What is to be shown anew.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// The open job shows something else, or another is open, or none.
    pub job: bool,
    /// The settings show something else.
    pub shop: bool,
    /// The cold drop at hand shows something else, or another is.
    pub cold_drop: bool,
    /// The list of what lies where.
    pub listed: bool,
    /// Documents that are not open have changed.
    pub others: bool,
    /// A document that was to be fetched was looked for, under this name.
    pub fetched: Option<String>,
    /// Names of jobs and kept cold drops of which another copy had more than the quick store, at the start.
    pub brought_back: Vec<String>,
    /// These were not taken out for good: the durable store refused.
    pub not_destroyed: bool,
}

impl Told {
    pub(super) const fn of(&mut self, which: Which) {
        match which {
            Which::Job => self.job = true,
            Which::Shop => self.shop = true,
            Which::Drop | Which::KeptDrop => self.cold_drop = true,
        }
    }
}
