//! Everything that a fresh machine lacks, fetched once and said out loud.
//!
//! Each part looks first and acts only when something is missing, so that a
//! second run costs a second. Nothing of the person's own is replaced: tools
//! of the wrong version stay where they are, ours go to a folder of our own
//! (see [`crate::layout::tools_folder`]).

mod browser;
mod debian;
mod engines;
mod python;
mod shop;
mod tools;
mod wasm;

use std::env;
use std::fs::{self, File, TryLockError};
use std::path::PathBuf;
use std::process::Command;
use std::time::Instant;

use crate::layout;
use crate::run::{Outcome, Trouble};

pub use browser::Browser;
pub use engines::Engines;
pub use python::python;
pub use shop::apache;
pub use tools::{cargo_fuzz, lighthouse};
pub use wasm::{TARGET as WASM_TARGET, WasmToolchain};

/// What the tools are wanted for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// To build the page.
    Page,
    /// To build the page and test it in a browser.
    Tests,
}

/// The tools that were found or installed.
#[derive(Debug, Clone)]
pub struct Toolbox {
    /// The compiler for the page.
    pub wasm: WasmToolchain,
    /// Trunk of our version.
    pub trunk: PathBuf,
    /// The folder of wasm-bindgen and its test runner, of the locked version.
    pub wasm_bindgen_folder: PathBuf,
    /// The optimizer, if this machine can have one.
    pub wasm_opt: Option<PathBuf>,
    /// Browser and driver, when they were asked for.
    pub browser: Option<Browser>,
    /// The other families of browsers, when tests were asked for.
    pub engines: Engines,
    /// The accessibility rules, when tests were asked for.
    pub axe: Option<PathBuf>,
    /// The decoder of QR codes, when tests were asked for.
    pub jsqr: Option<PathBuf>,
    /// The judge of crates, when tests were asked for.
    pub deny: Option<PathBuf>,
}

impl Toolbox {
    /// Adds our tools and the page's compiler to a command's environment.
    pub fn equip(&self, command: &mut Command) {
        self.wasm.equip(command);
        let mut folders = self.wasm.path_folders();
        folders.push(self.wasm_bindgen_folder.clone());
        if let Some(path) = env::var_os("PATH") {
            folders.extend(env::split_paths(&path));
        }
        // Fails only for a folder with a separator in its name; then the
        // person's PATH stays as it is and the tools in it are used.
        if let Ok(path) = env::join_paths(folders) {
            command.env("PATH", path);
        }
    }
}

/// Sets up what `purpose` needs and says each step.
pub fn set_up(purpose: Purpose) -> Outcome<Toolbox> {
    let begun = Instant::now();
    say("set-up: what is there is kept, what is missing is fetched once");
    say(&format!(
        "our own tools live in {}",
        layout::tools_folder().display()
    ));
    let _turn = turn()?;
    let wasm = wasm::toolchain()?;
    let trunk = tools::trunk()?;
    let wasm_bindgen_folder = tools::wasm_bindgen_folder()?;
    let wasm_opt = tools::wasm_opt()?;
    let (browser, engines, axe, jsqr, deny) = match purpose {
        Purpose::Page => (None, Engines::default(), None, None, None),
        Purpose::Tests => (
            Some(browser::browser()?),
            {
                shop::servers();
                engines::engines()
            },
            Some(tools::axe()?),
            Some(tools::jsqr()?),
            Some(tools::cargo_deny()?),
        ),
    };
    say(&format!(
        "ready after {:.0} s",
        begun.elapsed().as_secs_f64()
    ));
    Ok(Toolbox {
        wasm,
        trunk,
        wasm_bindgen_folder,
        wasm_opt,
        browser,
        engines,
        axe,
        jsqr,
        deny,
    })
}

/// Waits until no other set-up is at work on the same folder, of whichever
/// checkout: two that build one tool at once spoil each other's files. The turn
/// ends with the value, or with the process.
fn turn() -> Outcome<File> {
    let path = layout::tools_folder().join("set-up.lock");
    let trouble = |error: std::io::Error| Trouble::with_file(&path, &error);
    fs::create_dir_all(layout::tools_folder()).map_err(trouble)?;
    let file = File::create(&path).map_err(trouble)?;
    match file.try_lock() {
        Ok(()) => return Ok(file),
        Err(TryLockError::WouldBlock) => say("another set-up is at work: waiting for it"),
        // A folder that knows no locks: as before there were any.
        Err(TryLockError::Error(_)) => return Ok(file),
    }
    file.lock().map_err(trouble)?;
    Ok(file)
}

/// One line of what set-up is doing.
fn say(line: &str) {
    println!("[set-up] {line}");
}
