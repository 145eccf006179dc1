//! What is said of a ledge that is not flat toward the bore.

/// How a ledge lies, seen from its outer corner to the bore's edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LedgeFault {
    /// It falls toward the bore all round.
    Cupped,
    /// It falls toward the bore on a side.
    Sloped,
    /// It rises toward the bore.
    Rises,
}
