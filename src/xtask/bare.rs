//! What the page weighs beside a bare Leptos page, for `cargo xtask bench`: raw,
//! by gzip and by brotli.

use std::fs;
use std::path::Path;
use std::process::Command;

use crate::budget;
use crate::layout;
use crate::page;
use crate::run::{self, Outcome, Trouble};
use crate::setup::{Toolbox, WASM_TARGET};

/// Name of the bare page's crate and program.
const BARE: &str = "coldseat-bare";
/// brotli's strongest quality and largest plain window, as hosts use them for
/// files that stay.
const QUALITY: i32 = 11;
const WINDOW: i32 = 22;

/// Builds the bare page as the page is built, and prints both.
pub fn compare(tools: &Toolbox, dist: &Path) -> Outcome<()> {
    let folder = layout::target_folder().join("bare-stage");
    build(tools, &folder)?;
    for (whose, folder) in [("the page", dist), ("bare Leptos", folder.as_path())] {
        for (name, weight) in budget::weigh(folder)? {
            println!("{whose}, {name}: {weight}");
        }
        println!("{whose}, wasm brotli bytes: {}", brotli(folder)?);
    }
    Ok(())
}

fn build(tools: &Toolbox, into: &Path) -> Outcome<()> {
    let target = layout::target_folder();
    let mut build = tools.wasm.cargo();
    tools.equip(&mut build);
    run::run(
        build
            .current_dir(layout::checkout())
            .env("CARGO_TARGET_DIR", &target)
            .args(["build", "--release", "--offline", "--target", WASM_TARGET])
            .args(["-p", BARE]),
        "the compiler's message is above",
    )?;
    let program = target
        .join(WASM_TARGET)
        .join("release")
        .join(format!("{BARE}.wasm"));
    let mut bind = Command::new(tools.wasm_bindgen_folder.join("wasm-bindgen"));
    run::run(
        bind.args(["--target", "web", "--no-typescript", "--out-dir"])
            .arg(into)
            .arg(program),
        "the message above is wasm-bindgen's",
    )?;
    page::optimise(tools, into)
}

/// Bytes of the wasm in a folder, packed by brotli.
fn brotli(folder: &Path) -> Outcome<u64> {
    let entries = fs::read_dir(folder).map_err(|error| Trouble::with_file(folder, &error))?;
    let mut packed = Vec::new();
    for path in entries.flatten().map(|entry| entry.path()) {
        if path.extension().is_some_and(|kind| kind == "wasm") {
            let bytes = fs::read(&path).map_err(|error| Trouble::with_file(&path, &error))?;
            let options = brotli::enc::BrotliEncoderParams {
                quality: QUALITY,
                lgwin: WINDOW,
                ..Default::default()
            };
            brotli::BrotliCompress(&mut bytes.as_slice(), &mut packed, &options)
                .map_err(|error| Trouble::with_file(&path, &error))?;
        }
    }
    Ok(packed.len() as u64)
}
