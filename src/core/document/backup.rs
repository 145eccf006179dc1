//! When to say, calmly, that a backup is due: by the age of what is not in it
//! and by how much that is.

use crate::job::Millis;

const DAY: Millis = 24 * 3600 * 1000;
/// After so long something that is in no backup is worth a line.
const AGE: Millis = 7 * DAY;
/// So many changed jobs are worth it at any age.
const MANY: usize = 5;

/// What there is to say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reminder {
    /// Whole days since the last backup; `None` where there was none.
    pub days: Option<u64>,
    /// Jobs changed since.
    pub jobs: usize,
}

/// Whether a backup is due: something changed since the last one and is older
/// than a week, or five jobs did. A clock that went back reminds of nothing.
///
/// # Example
/// ```
/// use coldseat_core::document::backup::{Reminder, remind};
/// let day = 86_400_000;
/// assert_eq!(remind(None, &[100 * day], 103 * day), None);
/// let due = Reminder { days: None, jobs: 1 };
/// assert_eq!(remind(None, &[100 * day], 108 * day), Some(due));
/// // All of it is in the backup.
/// assert_eq!(remind(Some(105 * day), &[100 * day], 300 * day), None);
/// ```
#[must_use]
pub fn remind(last: Option<Millis>, changed: &[Millis], now: Millis) -> Option<Reminder> {
    let missing: Vec<Millis> = changed
        .iter()
        .copied()
        .filter(|at| last.is_none_or(|last| *at > last))
        .collect();
    let oldest = missing.iter().min()?;
    let due = now.saturating_sub(*oldest) >= AGE || missing.len() >= MANY;
    due.then(|| Reminder {
        days: last.map(|last| now.saturating_sub(last) / DAY),
        jobs: missing.len(),
    })
}
