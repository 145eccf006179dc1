//! Links, codes, what came by one.

use super::field;
use crate::words::made as w;
use coldseat_core::ask::document::LinkFault;

/// Why a link cannot be used, and what to do.
#[must_use]
pub fn link_fault(fault: &LinkFault) -> String {
    match fault {
        LinkFault::Empty => w::LINK_FAULT_EMPTY.get().to_owned(),
        LinkFault::TooLong => w::LINK_FAULT_TOO_LONG.get().to_owned(),
        LinkFault::Foreign => w::LINK_FAULT_FOREIGN.get().to_owned(),
        LinkFault::Damaged => w::LINK_FAULT_DAMAGED.get().to_owned(),
        LinkFault::Later(version) => w::LinkFaultLater { version: &version }.say(),
        LinkFault::OutOfRange(which) => w::LinkFaultOutOfRange {
            which: &field(*which),
        }
        .say(),
        LinkFault::Cylinders(count) => w::LinkFaultCylinders { count: &count }.say(),
    }
}
