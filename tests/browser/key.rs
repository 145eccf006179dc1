//! Keys that have no character, and keys as a gauge sends them.

use std::time::Duration;

use anyhow::{Context, Result};
use fantoccini::actions::{InputSource, KeyAction, KeyActions};

use crate::page::Page;

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
    /// Page up.
    PageUp,
    /// Page down.
    PageDown,
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
            Self::PageUp => "\u{E00E}",
            Self::PageDown => "\u{E00F}",
        }
    }
}

/// Control and A, in what [`Page::gauge`] sends.
pub const SELECT_ALL: char = '\u{1}';

impl Page {
    /// Keys wherever the focus is, as a gauge sends them: pressed and let go of one
    /// by one, so many ms apart. `\n` is Enter, `\t` Tab, [`SELECT_ALL`] is that.
    pub async fn gauge(&self, keys: &str, gap_ms: u64) -> Result<()> {
        let mut actions = KeyActions::new("gauge".to_owned());
        for letter in keys.chars() {
            let (hold, value) = match letter {
                '\n' => (None, '\u{E007}'),
                '\t' => (None, '\u{E004}'),
                SELECT_ALL => (Some('\u{E009}'), 'a'),
                letter => (None, letter),
            };
            if let Some(value) = hold {
                actions = actions.then(KeyAction::Down { value });
            }
            actions = actions
                .then(KeyAction::Down { value })
                .then(KeyAction::Up { value });
            if let Some(value) = hold {
                actions = actions.then(KeyAction::Up { value });
            }
            if gap_ms > 1 {
                let duration = Duration::from_millis(gap_ms);
                actions = actions.then(KeyAction::Pause { duration });
            }
        }
        self.client
            .perform_actions(actions)
            .await
            .context("sending keys")
    }
}
