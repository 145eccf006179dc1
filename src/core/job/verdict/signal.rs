//! What the hand may do, and how a cylinder stands.

/// What the hand may do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Signal {
    /// Nothing to say yet.
    None,
    /// Marked by hand, not measured: neither good nor bad.
    Marked,
    /// Go on: everything the step needs was measured, and is good.
    Go,
    /// More to do here first.
    Wait,
    /// Look before going on.
    Look,
    /// Stop.
    Stop,
}

/// The state of a cylinder, as the strip shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Gets no sleeve in this job.
    LeftOut,
    /// Nothing typed.
    NotBegun,
    /// In work: steps done, of so many.
    InWork(u8, u8),
    /// Its seat is marked done by hand, not measured.
    Marked,
    /// Home.
    Seated,
    /// Wants a look.
    Look,
    /// Stop.
    Stop,
}
