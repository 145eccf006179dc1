//! Codes for a phone's camera, drawn as one path: qrcodegen's modules, a quiet
//! zone of four round them.

use crate::texts as t;
use leptos::prelude::*;
use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// Largest version: its modules are still read off a phone's screen.
const LARGEST: u8 = 13;
/// Modules left white on each side, as ISO/IEC 18004 wants it.
const QUIET: i32 = 4;

/// A code of a text at level M; `None` where the text is too long for it.
pub fn qr(text: &str) -> Option<AnyView> {
    let code = QrCode::encode_segments_advanced(
        &QrSegment::make_segments(text),
        QrCodeEcc::Medium,
        Version::MIN,
        Version::new(LARGEST),
        None,
        true,
    )
    .ok()?;
    let size = code.size();
    let mut path = String::new();
    for y in 0..size {
        // A run of dark modules is one rectangle.
        let mut x = 0;
        while x < size {
            let run = (x..size).take_while(|x| code.get_module(*x, y)).count() as i32;
            if run > 0 {
                path.push_str(&format!("M{} {}h{run}v1h-{run}z", x + QUIET, y + QUIET));
            }
            x += run.max(1);
        }
    }
    let side = size + 2 * QUIET;
    Some(
        view! {
            <svg class="qr" viewBox=format!("0 0 {side} {side}") role="img" aria-label=t::QR_LABEL>
                <rect class="qr-ground" width=side height=side></rect>
                <path class="qr-modules" d=path></path>
            </svg>
        }
        .into_any(),
    )
}
