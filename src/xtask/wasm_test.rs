//! Tests of `coldseat-tests` in a headless browser.

use std::process::Command;

use crate::check::here;
use crate::layout;
use crate::run::{Outcome, Trouble, cargo};
use crate::setup::{Browser, Toolbox, WASM_TARGET};

/// What the host computes, in a file, for the browser to be held against.
pub(crate) fn native_answers() -> Outcome<std::path::PathBuf> {
    let told = here(cargo())
        .args(["run", "--quiet", "-p", "coldseat-tests"])
        .args(["--bin", "native_answers"])
        .output()
        .map_err(|error| Trouble::new(error.to_string(), "mend tests/native_answers.rs"))?;
    let file = layout::target_folder().join("native_answers.json");
    std::fs::write(&file, told.stdout).map_err(|error| Trouble::with_file(&file, &error))?;
    Ok(file)
}

/// A test of `coldseat-tests`, to be run in a headless browser.
pub(crate) fn wasm_test(tools: &Toolbox, name: &str) -> Outcome<Command> {
    let browser = tools
        .browser
        .as_ref()
        .ok_or_else(|| Trouble::new("no browser is set up", "run `cargo xtask setup` first"))?;
    let options = layout::target_folder().join("webdriver.json");
    let wishes = serde_json::json!({
        "goog:chromeOptions": {
            "binary": browser.browser,
            "args": Browser::arguments(),
        }
    });
    std::fs::write(&options, wishes.to_string())
        .map_err(|error| Trouble::with_file(&options, &error))?;
    let runner = tools.wasm_bindgen_folder.join("wasm-bindgen-test-runner");
    let mut test = here(tools.wasm.cargo());
    tools.equip(&mut test);
    test.args(["test", "-p", "coldseat-tests", "--test", name])
        .args(["--target", WASM_TARGET])
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", runner)
        .env("WASM_BINDGEN_TEST_ONLY_WEB", "1")
        .env("WASM_BINDGEN_TEST_TIMEOUT", "120")
        .env("WASM_BINDGEN_TEST_WEBDRIVER_JSON", options)
        .env("CHROMEDRIVER", &browser.driver);
    Ok(test)
}
