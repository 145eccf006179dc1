//! Keys that have no character.

/// A key that has no character.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Key {
    /// Enter.
    Enter,
    /// Tab.
    Tab,
    /// Escape.
    Escape,
    /// Backspace.
    Backspace,
    /// Arrow left.
    Left,
    /// Arrow right.
    Right,
}

impl Key {
    /// The key in WebDriver's notation.
    pub(crate) fn code(self) -> &'static str {
        match self {
            Self::Enter => "\u{E007}",
            Self::Tab => "\u{E004}",
            Self::Escape => "\u{E00C}",
            Self::Backspace => "\u{E003}",
            Self::Left => "\u{E012}",
            Self::Right => "\u{E014}",
        }
    }
}
