//! Who writes, and at which moment: no two values ever carry the same.
//!
//! The moments of a writer only grow. A clock that is set back begins another
//! writer of the same tab, so that what was typed is never dated into the future
//! for long, and never twice at one moment.

use crate::job::Millis;
use crate::job::ledger::{Ledger, Writer};
use litemap::LiteMap;

/// A clock so little behind is not taken for one that was set back.
const SLACK: Millis = 1000;

/// The writer of this tab.
#[derive(Clone, Debug, PartialEq)]
pub struct Pen {
    writer: Writer,
    last: Millis,
    /// The last moment set down in each document, of this writer.
    wrote: LiteMap<String, Millis>,
}

impl Pen {
    /// A pen that has written nothing; its writer must be no other's.
    #[must_use]
    pub const fn new(writer: Writer) -> Self {
        Self {
            writer,
            last: 0,
            wrote: LiteMap::new_vec(),
        }
    }

    /// The writer as it is now.
    #[must_use]
    pub const fn writer(&self) -> Writer {
        self.writer
    }

    fn again(&mut self) -> bool {
        match self.writer.again() {
            None => false,
            Some(writer) => {
                self.writer = writer;
                self.wrote.clear();
                true
            }
        }
    }

    /// A moment that was not used, at `wanted` where that can be and above
    /// `floor` in any case.
    pub fn moment(&mut self, wanted: Millis, floor: Option<Millis>) -> (Writer, Millis) {
        let wanted = floor.map_or(wanted, |floor| wanted.max(floor.saturating_add(1)));
        let is_behind = wanted <= self.last;
        let at = if is_behind && (self.last - wanted < SLACK || !self.again()) {
            self.last.saturating_add(1)
        } else {
            wanted
        };
        self.last = at;
        (self.writer, at)
    }

    /// A document is about to be written by this pen: where it lacks what the
    /// pen wrote into it before, because a store forgot it, the pen begins anew.
    /// Otherwise copies that still have that would take it for replaced.
    pub fn opens(&mut self, name: &str, ledger: &Ledger) {
        let wrote = self.wrote.get(name).copied();
        if wrote.is_some_and(|at| !ledger.has_seen(self.writer, at)) {
            self.again();
        }
    }

    /// Notes what of this pen stands in a document.
    pub fn wrote(&mut self, name: &str, ledger: &Ledger) {
        if let Some(span) = ledger.seen.get(&self.writer) {
            self.wrote.insert(name.to_owned(), span.last);
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::ledger::Span;

    #[test]
    fn no_moment_is_used_twice_whatever_the_clock_does() {
        let mut rng = fastrand::Rng::with_seed(13);
        let mut pen = Pen::new(Writer::of(1, 2));
        let mut used = std::collections::BTreeSet::new();
        let mut now: Millis = 1_000_000;
        for _ in 0..20_000 {
            now = match rng.u8(..40) {
                0 => now.saturating_sub(rng.u64(0..900_000)),
                1 => now + rng.u64(0..900_000),
                2..=20 => now,
                _ => now + rng.u64(0..30),
            };
            let floor = (rng.u8(..50) == 0).then(|| now + rng.u64(0..500_000));
            let dot = pen.moment(now, floor);
            assert!(floor.is_none_or(|floor| dot.1 > floor));
            assert!(used.insert(dot), "{dot:?} twice");
        }
    }

    #[test]
    fn a_document_that_forgot_what_was_written_gets_another_writer() {
        let mut pen = Pen::new(Writer::of(1, 2));
        let mut ledger = Ledger::default();
        let (writer, at) = pen.moment(10, None);
        ledger.see(
            writer,
            Span {
                first: at,
                last: at,
            },
        );
        pen.wrote("a", &ledger);
        pen.opens("a", &ledger);
        pen.opens("b", &Ledger::default());
        assert_eq!(pen.writer(), writer);
        pen.opens("a", &Ledger::default());
        assert_ne!(pen.writer(), writer);
    }
}
