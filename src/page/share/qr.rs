//! A QR code (ISO/IEC 18004) as a drawing: black on white in either theme, four
//! modules of quiet round it, level M, version 13 at most, so that a phone's own
//! camera reads it off a screen or a wall.

use coldseat_markup::view;
use leptos::prelude::*;
use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};
use std::fmt::Write;

/// Modules left white round the code.
const QUIET: i32 = 4;
/// The largest version that is drawn.
const LARGEST: u8 = 13;

/// The drawing; `None` where the text does not fit into the largest version.
#[must_use]
pub fn qr(text: &str, label: &str) -> Option<AnyView> {
    let segments = QrSegment::make_segments(text);
    let code = QrCode::encode_segments_advanced(
        &segments,
        QrCodeEcc::Medium,
        Version::MIN,
        Version::new(LARGEST),
        None,
        false,
    )
    .ok()?;
    let size = code.size();
    let mut path = String::new();
    for y in 0..size {
        let mut x = 0;
        while x < size {
            let from = x;
            while x < size && code.get_module(x, y) {
                x += 1;
            }
            if x > from {
                // A string takes whatever is written to it.
                let (left, top, run) = (from + QUIET, y + QUIET, x - from);
                let _ = write!(path, "M{left} {top}h{run}v1h-{run}z");
            }
            x += 1;
        }
    }
    let whole = size + 2 * QUIET;
    Some(
        view! {
            <svg
                class="qr"
                role="img"
                aria-label=label.to_owned()
                viewBox=format!("0 0 {whole} {whole}")
                shape-rendering="crispEdges"
            >
                <path class="qr-ground" d=format!("M0 0h{whole}v{whole}h-{whole}z")></path>
                <path class="qr-modules" d=path></path>
            </svg>
        }
        .into_any(),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_does_not_fit_is_not_drawn() {
        // 331 bytes fit version 13 at level M (ISO/IEC 18004, table 7).
        assert!(qr(&"a".repeat(331), "code").is_some());
        assert!(qr(&"a".repeat(332), "code").is_none());
    }
}
