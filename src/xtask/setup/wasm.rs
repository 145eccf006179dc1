//! A compiler for the page: `wasm32-unknown-unknown` and its standard library.
//!
//! Three ways, the first that works: the compiler in use has the target
//! already; rustup adds it; Debian's own compiler, which ships no such library,
//! builds one from Debian's copy of the sources. The third needs no server of
//! rustup's. It neither touches the person's toolchains nor writes under
//! `/usr`: the library lies in our tools folder, and small scripts there call
//! Debian's compiler with that folder as its root.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

use super::{debian, say};
use crate::layout::{self, on_path};
use crate::run::{self, Outcome, Trouble, answer, cargo};

/// The target that the page is compiled for.
pub const TARGET: &str = "wasm32-unknown-unknown";

/// How long rustup may try before the other way is taken.
const RUSTUP_LIMIT: Duration = Duration::from_secs(300);

/// The compiler that builds the page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum WasmToolchain {
    /// The one that builds everything else.
    Same,
    /// Debian's, with a standard library that we built.
    Debian {
        /// Our folder with the library and the calling scripts.
        root: PathBuf,
        /// The linker, from Debian's newest `lld`.
        linker: PathBuf,
    },
}

impl WasmToolchain {
    /// Cargo for the page.
    pub fn cargo(&self) -> Command {
        match self {
            Self::Same => cargo(),
            Self::Debian { root, .. } => Command::new(root.join("bin/cargo")),
        }
    }

    /// Clippy for the page, up to and with the word `clippy`.
    pub fn clippy(&self) -> Command {
        match self {
            Self::Same => {
                let mut command = cargo();
                command.arg("clippy");
                command
            }
            // Called by its path: cargo would look in ~/.cargo/bin first and
            // find the clippy of another compiler.
            Self::Debian { .. } => {
                let mut command = Command::new("/usr/bin/cargo-clippy");
                command.arg("clippy");
                command
            }
        }
    }

    /// The folders that must come first on the path.
    pub(super) fn path_folders(&self) -> Vec<PathBuf> {
        match self {
            Self::Same => Vec::new(),
            Self::Debian { root, .. } => vec![root.join("bin")],
        }
    }

    /// Makes a command, and all that it starts, use this compiler.
    pub(super) fn equip(&self, command: &mut Command) {
        if let Self::Debian { root, linker } = self {
            command
                .env_remove("RUSTUP_TOOLCHAIN")
                // Set by the calling cargo to the other compiler's libraries.
                .env_remove("LD_LIBRARY_PATH")
                .env("CARGO", root.join("bin/cargo"))
                .env("RUSTC", root.join("bin/rustc"))
                .env("RUSTDOC", root.join("bin/rustdoc"))
                .env("SYSROOT", root)
                .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", linker);
        }
    }
}

/// Finds or makes the compiler for the page.
///
/// `COLDSEAT_WASM=debian` skips the first two ways, `COLDSEAT_WASM=rustup` the
/// third: for those who want to choose, and for testing each way.
pub(super) fn toolchain() -> Outcome<WasmToolchain> {
    let choice = env::var("COLDSEAT_WASM").unwrap_or_default();
    if choice != "debian" {
        if same_compiler_has_it() {
            say(&format!("{TARGET}: there"));
            return Ok(WasmToolchain::Same);
        }
        if on_path("rustup").is_some() {
            say(&format!("{TARGET}: asking rustup for it, some seconds"));
            let mut add = Command::new("rustup");
            add.args(["target", "add", TARGET]);
            if run::succeeds_within(&mut add, RUSTUP_LIMIT) && same_compiler_has_it() {
                return Ok(WasmToolchain::Same);
            }
            say("rustup could not fetch it");
        }
    }
    if choice != "rustup" && debian::is_debian() {
        return debian_toolchain();
    }
    Err(Trouble::new(
        format!("no standard library for {TARGET} on this machine"),
        format!(
            "with rustup and a network: `rustup target add {TARGET}`; \
             otherwise install your system's package of it (often called rust-std-wasm32)"
        ),
    ))
}

fn same_compiler_has_it() -> bool {
    let rustc = env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    answer(Command::new(rustc).args(["--print", "sysroot"]))
        .is_some_and(|root| has_library(Path::new(root.trim())))
}

/// Whether a compiler's root holds the page's standard library.
fn has_library(root: &Path) -> bool {
    let folder = root.join("lib/rustlib").join(TARGET).join("lib");
    fs::read_dir(folder).is_ok_and(|entries| {
        entries
            .flatten()
            .any(|entry| entry.file_name().to_string_lossy().starts_with("libstd-"))
    })
}

fn debian_toolchain() -> Outcome<WasmToolchain> {
    let packages = ["rustc-web", "cargo-web", "rust-web-src", "rust-web-clippy"];
    let there = [
        "/usr/bin/rustc",
        "/usr/bin/cargo",
        "/usr/lib/rustlib/src/rust/library/std/Cargo.toml",
        "/usr/bin/cargo-clippy",
    ];
    if there.iter().any(|file| !Path::new(file).exists()) {
        say(&format!(
            "Debian's compiler: installing {}, one to two minutes",
            packages.join(" ")
        ));
        debian::install(&packages)?;
    }
    let linker = debian_linker()?;
    let version = debian_version()?;
    let root = layout::tools_folder().join(format!("wasm-toolchain-{version}"));
    let toolchain = WasmToolchain::Debian {
        root: root.clone(),
        linker,
    };
    if has_library(&root) && root.join("bin/cargo").exists() {
        say(&format!("{TARGET} for Debian's rustc {version}: there"));
        return Ok(toolchain);
    }
    say(&format!(
        "{TARGET} for Debian's rustc {version}: building its standard library once, about a minute"
    ));
    build_library(&root)?;
    write_callers(&root)?;
    Ok(toolchain)
}

fn debian_version() -> Outcome<String> {
    let text = answer(
        Command::new("/usr/bin/rustc")
            .env_remove("LD_LIBRARY_PATH")
            .arg("--version"),
    )
    .unwrap_or_default();
    let version = text.split_whitespace().nth(1).unwrap_or_default();
    let new_enough = |version: &str| -> Option<bool> {
        let mut parts = version.split('.').map(str::parse::<u32>);
        let (major, minor) = (parts.next()?.ok()?, parts.next()?.ok()?);
        Some((major, minor) >= (1, 90))
    };
    match new_enough(version) {
        Some(true) => Ok(version.to_owned()),
        _ => Err(Trouble::new(
            format!("Debian's rustc is `{version}`; 1.90 or newer is needed"),
            format!(
                "turn on Debian's security updates and run `apt-get install rustc-web`, \
                 or use rustup: `rustup target add {TARGET}`"
            ),
        )),
    }
}

/// The newest `wasm-ld` there is: an old one does not know today's features.
fn debian_linker() -> Outcome<PathBuf> {
    let versions = || (19..=30).rev();
    let found = || versions().find_map(|n| on_path(&format!("wasm-ld-{n}")));
    if let Some(linker) = found() {
        return Ok(linker);
    }
    let offered = || {
        versions()
            .map(|n| format!("lld-{n}"))
            .find(|name| debian::offers(name))
    };
    let package = match offered() {
        Some(package) => package,
        None => {
            debian::refresh()?;
            offered().ok_or_else(|| {
                Trouble::new(
                    "Debian offers no lld new enough to link the page",
                    "install lld 19 or newer so that `wasm-ld-19` is on your PATH",
                )
            })?
        }
    };
    say(&format!("linker: installing {package}, some seconds"));
    debian::install(&[&package])?;
    found().ok_or_else(|| {
        Trouble::new(
            format!("{package} was installed but brought no wasm-ld"),
            "install lld 19 or newer so that `wasm-ld-19` is on your PATH",
        )
    })
}

/// Builds the standard library from an empty crate and files it under `root`.
fn build_library(root: &Path) -> Outcome<()> {
    let nest = root.join("building");
    let source = nest.join("lib.rs");
    let manifest = nest.join("Cargo.toml");
    let written = fs::create_dir_all(&nest)
        .and_then(|()| fs::write(&source, "#![no_std]\n"))
        .and_then(|()| {
            fs::write(
                &manifest,
                "[package]\nname = \"nothing\"\nedition = \"2024\"\n\n\
                 [lib]\npath = \"lib.rs\"\n\n[workspace]\n",
            )
        });
    written.map_err(|error| Trouble::with_file(&nest, &error))?;
    run::run(
        Command::new("/usr/bin/cargo")
            .current_dir(&nest)
            .args(["build", "--release", "--quiet", "--target", TARGET])
            .arg("-Zbuild-std=std,panic_abort,test")
            .env_remove("RUSTUP_TOOLCHAIN")
            .env_remove("LD_LIBRARY_PATH")
            .env_remove("CARGO_ENCODED_RUSTFLAGS")
            .env("CARGO", "/usr/bin/cargo")
            .env("RUSTC", "/usr/bin/rustc")
            .env("RUSTC_BOOTSTRAP", "1")
            .env("CARGO_TARGET_DIR", nest.join("target"))
            // The page is linked as one piece (fat LTO), library included.
            .env("RUSTFLAGS", "-Cembed-bitcode=yes"),
        "check that the crate registry can be reached; the library's few crates come from there",
    )?;
    let built = nest.join("target").join(TARGET).join("release/deps");
    let library = root.join("lib/rustlib").join(TARGET).join("lib");
    file_libraries(&built, &library).map_err(|error| Trouble::with_file(&library, &error))?;
    // Only room is lost if it stays.
    let _ = fs::remove_dir_all(nest);
    Ok(())
}

fn file_libraries(built: &Path, library: &Path) -> std::io::Result<()> {
    fs::create_dir_all(library)?;
    for entry in fs::read_dir(built)? {
        let entry = entry?;
        let name = entry.file_name();
        let text = name.to_string_lossy();
        if text.ends_with(".rlib") && !text.starts_with("libnothing") {
            fs::copy(entry.path(), library.join(&name))?;
        }
    }
    Ok(())
}

/// Scripts that call Debian's programs with our library in reach.
#[cfg(unix)]
fn write_callers(root: &Path) -> Outcome<()> {
    use std::os::unix::fs::{PermissionsExt, symlink};

    let write = || -> std::io::Result<()> {
        // The host's own library, for build scripts and macros.
        for entry in fs::read_dir("/usr/lib/rustlib")? {
            let entry = entry?;
            let link = root.join("lib/rustlib").join(entry.file_name());
            if !link.exists() {
                symlink(entry.path(), link)?;
            }
        }
        let folder = root.join("bin");
        fs::create_dir_all(&folder)?;
        let place = root.display();
        let callers = [
            (
                "rustc",
                format!("exec /usr/bin/rustc --sysroot '{place}' \"$@\""),
            ),
            (
                "rustdoc",
                format!("exec /usr/bin/rustdoc --sysroot '{place}' \"$@\""),
            ),
            ("cargo", "exec /usr/bin/cargo \"$@\"".to_owned()),
        ];
        for (name, line) in callers {
            let file = folder.join(name);
            fs::write(&file, format!("#!/bin/sh\n{line}\n"))?;
            fs::set_permissions(&file, fs::Permissions::from_mode(0o755))?;
        }
        Ok(())
    };
    write().map_err(|error| Trouble::with_file(root, &error))
}

/// Debian's way is asked for on Debian only.
#[cfg(not(unix))]
fn write_callers(root: &Path) -> Outcome<()> {
    Err(Trouble::new(
        format!("{} cannot be used on this system", root.display()),
        format!("use rustup: `rustup target add {TARGET}`"),
    ))
}
