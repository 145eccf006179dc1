//! English: links, codes, what came by one.

use super::field;
use coldseat_core::ask::document::LinkFault;

pub const SHARE_ENGINE: &str = "Share this engine: link and code";
pub const SHARE_DROP: &str = "Share this cold drop: link and code";
pub const SHARE_FLOOR: &str = "Share the floor sheet: link and code";
pub const NOTHING_TO_SHARE: &str = "Nothing to share yet.";
pub const LINK_QR: &str = "QR code of the link below";
pub const QR_TOO_LONG: &str = "Too long for a code that a phone reads well. Use the link.";
pub const NO_LINK_FROM_FILE: &str = "This page was opened as a file. It has no address that another phone could open: no link, no code. Send the line below as text. Whoever has Coldseat pastes it under New job, A link that was sent. Or save the job to a file and pass that on.";
pub const LINK_TO_PASTE: &str = "Line to paste";
pub const ONE_FILE: &str = "This is Coldseat as one file. This browser keeps what you type for the file where it is now. Moved, renamed or opened on another device, it may begin empty. Save all jobs to a file when the work is done.";
pub const LINK: &str = "Link";
pub const LINK_WHAT: &str = "All of it is in the link itself. Nothing is sent anywhere. Whoever opens the link sees it first, then takes it as a copy of their own.";
pub const COPY_LINK: &str = "Copy the link";
pub const COPIED: &str = "Copied.";
pub const COPY_BY_HAND: &str =
    "The browser does not let the page copy it. Select the line and copy it.";
pub const SHARE_SHEET: &str = "Send it on";
pub const BY_LINK: &str = "By link";
pub const LINK_PREVIEW: &str = "This came with a link. Nothing of it is stored yet. Nothing of yours will be changed. Check the numbers against the maker's sheets before you cut to them.";
pub const LINK_TAKEN: &str = "There is nothing more in this link. It was taken or closed.";
pub const LINK_ASK_AGAIN: &str =
    "Nothing was stored. Ask for the link or the code again, or for the file.";
pub const TAKE_PROFILE: &str = "Begin a job with this engine";
pub const TAKE_DROP: &str = "Open this cold drop";
pub const TAKE_FLOOR: &str = "Add it as a job of its own";
pub const NOT_NOW: &str = "Not now";
pub const ENGINE: &str = "Engine, limits, gauges";
pub const PASTE_LINK: &str = "A link that was sent to you";
pub const SCAN: &str = "Read a code with the camera";
pub const SCAN_OUTSIDE: &str =
    "A code on a wall or a screen: point the phone's own camera at it. Open the link it shows.";
pub const SCAN_ASKING: &str = "The browser asks whether the camera may be used.";
pub const SCAN_LOOKING: &str = "Hold the code in the picture. Nothing is recorded or sent.";
pub const SCAN_VIDEO: &str = "What the camera sees";
pub const SCAN_STOP: &str = "Camera off";
pub const SCAN_REFUSED: &str = "There is no camera, or the browser may not use it. Allow it in the browser's settings for this page. Or use the phone's own camera and open the link it shows.";
pub const SCAN_NO_CODE: &str = "No code was read in two minutes. The camera is off.";
pub const LOOK_AT_LINK: &str = "Look at it";

/// Why a link cannot be used, and what to do.
#[must_use]
pub fn link_fault(fault: &LinkFault) -> String {
    match fault {
        LinkFault::Empty => "There is nothing in this link.".to_owned(),
        LinkFault::TooLong => "This link is longer than any this program makes.".to_owned(),
        LinkFault::Foreign => {
            "This is not a link from this program. It has characters that no link of this program has."
                .to_owned()
        }
        LinkFault::Damaged => {
            "This link was cut off or changed on its way. Its checksum does not match.".to_owned()
        }
        LinkFault::Later(version) => format!(
            "This link was made by a later version ({version}). Open this page with a network once and take the new version. Then open the link again."
        ),
        LinkFault::OutOfRange(which) => format!(
            "This link has a number that cannot be right: {}.",
            field(*which)
        ),
        LinkFault::Cylinders(count) => {
            format!("This link has {count} cylinders. This program takes 1 to 16.")
        }
    }
}
