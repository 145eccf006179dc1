//! The cases, timed in a browser. Run by `cargo xtask bench`.

#![cfg(target_arch = "wasm32")]

mod cases;

use wasm_bindgen_test::{console_log, wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn bench() {
    let clock = web_sys::window()
        .and_then(|w| w.performance())
        .expect("a clock");
    let lines = cases::lines(|| clock.now(), 500.0);
    // A line a case, and those of the stress.
    assert!(lines.len() > cases::CASES.len(), "{lines:?}");
    for line in lines {
        console_log!("{line}");
    }
}
