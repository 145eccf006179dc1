//! English: the shop's folder, that many devices write into.

use coldseat_core::storage::folder::{Fault, Standing};

pub const FOLDER: &str = "The shop's folder";
pub const FOLDER_WHAT: &str = "This page can be on the shop's own server. Its devices then share jobs, engine sheets and settings through a folder beside it. Nothing leaves the shop. Nothing waits for the folder: what you type is kept here first.";
pub const FOLDER_ONE_FILE: &str =
    "This page is one file with no server beside it. Use files between devices.";
pub const DEVICE_NAME: &str = "Name of this device";
pub const DEVICE_NAME_WHAT: &str = "What people call it: Surfacer tablet, bench phone.";
pub const DEVICE_NAMELESS: &str =
    "Name this device first. The name shows the others who typed what.";
pub const JOIN: &str = "Join";
pub const RENAME: &str = "Change the name";
pub const LEAVE: &str = "Leave the folder";
pub const LEAVE_SURE: &str =
    "Leave? Jobs stay on this device and in the folder. From now on, changes go neither way.";
pub const LEAVE_YES: &str = "Leave";
pub const LEAVE_NO: &str = "Stay";
pub const OTHER_DEVICES: &str = "Other devices";
pub const NO_OTHER_DEVICES: &str = "No other device has joined yet.";
pub const STRIKE: &str = "Cross off as lost";
pub const STRIKE_WHAT: &str = "The jobs of a device that is crossed off stay readable. To keep a stolen one out, change the folder's password.";
pub const STRUCK: &str = "crossed off";
pub const NEWER_DEVICE: &str = "runs a later version of this page: reload the page";
pub const FOLDER_WAS_OLDER: &str = "The folder had less than this device had sent. It was emptied, or an older backup took its place. What was missing has been or will be sent again.";
pub const NEW_FROM_OTHERS: &str = "New from another device";
pub const TO_BE_SENT: &str = "Waiting to be sent";
pub const IN_OTHER_TAB: &str = "another tab is sending";

/// When and that a device wrote.
#[must_use]
pub fn wrote_last(at: &str) -> String {
    format!("wrote last {at}")
}

/// On which device a reading was entered.
#[must_use]
pub fn entered_on(device: &str) -> String {
    format!("Entered on {device}")
}

/// Why the folder does not do as it is asked, and what to do.
#[must_use]
pub const fn folder_fault(fault: Fault) -> &'static str {
    match fault {
        Fault::Away => "Nobody answers: check the network. The page tries again by itself.",
        Fault::Locked => "It asks for a name and a password: reload the page and enter them.",
        Fault::ReadOnly => "It takes nothing from here: allow writing in the folder.",
        Fault::Full => "It is full: make room on the server. What is typed stays here.",
        Fault::Broken => "The server fails or spoils what it gets. The page tries again by itself.",
        Fault::NoFolder => {
            "There is no such folder beside this page. The page's files for hosting say how to set one up."
        }
    }
}

/// The quiet line: how far what is typed has come.
#[must_use]
pub fn in_folder(standing: Option<&Standing>, time: impl Fn(u64) -> String) -> String {
    let Some(standing) = standing else {
        return IN_OTHER_TAB.to_owned();
    };
    match (standing.away, standing.refused, standing.reached) {
        (Some((_, since)), _, _) => format!("folder not reached since {}", time(since)),
        (None, Some(_), _) => "folder does not take it".to_owned(),
        (None, None, Some(at)) if standing.waiting == 0 => {
            format!("in the shop's folder {}", time(at))
        }
        _ => "here".to_owned(),
    }
}

/// What is said at length of how the folder stands.
#[must_use]
pub fn standing_lines(standing: &Standing) -> Vec<String> {
    let mut lines = Vec::new();
    if standing.waiting > 0 {
        lines.push(format!("To be sent: {}", standing.waiting));
    }
    if standing.half > 0 {
        lines.push(format!(
            "Not complete yet in the folder: {}. Waiting for the device that wrote it.",
            standing.half
        ));
    }
    if standing.is_newer {
        lines.push("A later version of this page writes there: reload the page.".to_owned());
    }
    let fault = standing.away.map(|(fault, _)| fault).or(standing.refused);
    lines.extend(fault.map(|fault| folder_fault(fault).to_owned()));
    lines
}
