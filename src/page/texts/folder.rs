//! The shop's folder, that many devices write into.

use crate::words::made as w;
use coldseat_core::storage::folder::{Fault, Standing};

/// When and that a device wrote.
#[must_use]
pub fn wrote_last(at: &str) -> String {
    w::WroteLast { at: &at }.say()
}

/// On which device a reading was entered.
#[must_use]
pub fn entered_on(device: &str) -> String {
    w::EnteredOn { device: &device }.say()
}

/// Why the folder does not do as it is asked, and what to do.
#[must_use]
pub fn folder_fault(fault: Fault) -> &'static str {
    match fault {
        Fault::Away => w::FOLDER_FAULT_AWAY.get(),
        Fault::Locked => w::FOLDER_FAULT_LOCKED.get(),
        Fault::ReadOnly => w::FOLDER_FAULT_READ_ONLY.get(),
        Fault::Full => w::FOLDER_FAULT_FULL.get(),
        Fault::Broken => w::FOLDER_FAULT_BROKEN.get(),
        Fault::NoFolder => w::FOLDER_FAULT_NO_FOLDER.get(),
    }
}

/// The quiet line: how far what is typed has come.
#[must_use]
pub fn in_folder(standing: Option<&Standing>, time: impl Fn(u64) -> String) -> String {
    let Some(standing) = standing else {
        return w::IN_OTHER_TAB.get().to_owned();
    };
    match (standing.away, standing.refused, standing.reached) {
        (Some((_, since)), _, _) => w::InFolderSome {
            since: &time(since),
        }
        .say(),
        (None, Some(_), _) => w::IN_FOLDER_NONE_FOLDER_DOES_NOT.get().to_owned(),
        (None, None, Some(at)) if standing.waiting == 0 => {
            w::InFolderNoneInTheShop { at: &time(at) }.say()
        }
        _ => w::IN_FOLDER_OTHER.get().to_owned(),
    }
}

/// What is said at length of how the folder stands.
#[must_use]
pub fn standing_lines(standing: &Standing) -> Vec<String> {
    let mut lines = Vec::new();
    if standing.waiting > 0 {
        lines.push(
            w::StandingLinesToBeSent {
                waiting: &standing.waiting,
            }
            .say(),
        );
    }
    if standing.half > 0 {
        lines.push(
            w::StandingLinesNotCompleteYet {
                half: &standing.half,
            }
            .say(),
        );
    }
    if standing.is_newer {
        lines.push(w::STANDING_LINES_A_LATER_VERSION.get().to_owned());
    }
    let fault = standing.away.map(|(fault, _)| fault).or(standing.refused);
    lines.extend(fault.map(|fault| folder_fault(fault).to_owned()));
    lines
}
