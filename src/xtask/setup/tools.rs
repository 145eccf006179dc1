//! Trunk, wasm-bindgen of the locked version, and the optimizer.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use super::{debian, say, turn};
use crate::layout::{self, on_path};
use crate::run::{self, Outcome, Trouble, answer, cargo};

/// The last Trunk that our oldest compiler can build.
const TRUNK: &str = "0.21.14";

/// Binaryen as packaged for npm: one version for every system, and new enough
/// for what today's compiler puts into a wasm file (Debian's own is not).
const BINARYEN: &str = "132";

/// The driver of Firefox, as tried with Firefox ESR 140.
const GECKODRIVER: &str = "0.37.1";
/// The judge of pages.
const LIGHTHOUSE: &str = "12.2.3";

/// What builds the fuzz targets.
const CARGO_FUZZ: &str = "0.13.2";

/// What holds every crate against advisories, licences and sources.
const CARGO_DENY: &str = "0.20.2";

/// The accessibility rules, as packaged for npm.
const AXE: &str = "4.14.1";
/// The decoder of QR codes.
const JSQR: &str = "1.4.0";

/// Trunk of our version, installed if need be.
pub(super) fn trunk() -> Outcome<PathBuf> {
    let wanted = Tool {
        package: "trunk",
        program: "trunk",
        version: TRUNK,
        usual: "4 to 8 minutes on two cores",
        // Its downloads are not wanted: every tool it calls is set up here.
        options: &["--locked", "--no-default-features"],
        // It waits for cargo nearly all of its time.
        opt_level: "0",
    };
    wanted.itself()
}

/// The folder with wasm-bindgen and its test runner, of the locked version.
///
/// The command and the library must be of one version to the last digit: they
/// share an unversioned format.
pub(super) fn wasm_bindgen_folder() -> Outcome<PathBuf> {
    let version = locked_version("wasm-bindgen")?;
    let wanted = Tool {
        package: "wasm-bindgen-cli",
        program: "wasm-bindgen",
        version: &version,
        usual: "2 to 3 minutes on two cores",
        // The package's own lock file is behind its release.
        options: &[],
        opt_level: "1",
    };
    wanted.found_or_installed()
}

/// The driver of Firefox.
pub(super) fn geckodriver() -> Outcome<PathBuf> {
    let wanted = Tool {
        package: "geckodriver",
        program: "geckodriver",
        version: GECKODRIVER,
        usual: "2 to 3 minutes on two cores",
        options: &["--locked"],
        // It passes messages on.
        opt_level: "0",
    };
    wanted.itself()
}

/// What holds every crate against advisories, licences and sources.
pub(super) fn cargo_deny() -> Outcome<PathBuf> {
    let wanted = Tool {
        package: "cargo-deny",
        program: "cargo-deny",
        version: CARGO_DENY,
        usual: "1 to 3 minutes on two cores",
        // Its own ways to fetch are not wanted: git does that.
        options: &["--locked", "--no-default-features"],
        // It reads a few hundred manifests.
        opt_level: "0",
    };
    wanted.itself()
}

/// What builds the fuzz targets, installed if need be; nothing where there is no
/// compiler for libFuzzer, which is C++.
pub fn cargo_fuzz() -> Outcome<Option<PathBuf>> {
    let _turn = turn()?;
    let has_compiler = || {
        std::env::var_os("CXX").is_some()
            || ["c++", "g++", "clang++"]
                .iter()
                .any(|name| on_path(name).is_some())
    };
    if !has_compiler() && debian::is_debian() {
        say("C++ compiler: installing Debian's g++, about a minute");
        debian::install(&["g++"]).ok();
    }
    if !has_compiler() {
        return Ok(None);
    }
    let wanted = Tool {
        package: "cargo-fuzz",
        program: "cargo-fuzz",
        version: CARGO_FUZZ,
        usual: "1 to 4 minutes on two cores",
        options: &["--locked"],
        opt_level: "0",
    };
    wanted
        .found_or_installed()
        .map(|folder| Some(folder.join(exe("cargo-fuzz"))))
}

/// The optimizer, or nothing on a machine that can have none.
///
/// Without it the page works the same and is about a sixth larger.
pub(super) fn wasm_opt() -> Outcome<Option<PathBuf>> {
    if let Some(found) = on_path("wasm-opt").filter(|path| is_our_binaryen(path)) {
        say("wasm-opt: on the path");
        return Ok(Some(found));
    }
    let home = layout::tools_folder().join(format!("binaryen-{BINARYEN}"));
    let ours = home.join("node_modules/.bin").join(if cfg!(windows) {
        "wasm-opt.cmd"
    } else {
        "wasm-opt"
    });
    if is_our_binaryen(&ours) {
        say("wasm-opt: there");
        return Ok(Some(ours));
    }
    if !npm_package(&home, "binaryen", &format!("{BINARYEN}.0.0"))? {
        say("wasm-opt: no npm here, so the page is built without it (works the same, is larger)");
        return Ok(None);
    }
    if is_our_binaryen(&ours) {
        Ok(Some(ours))
    } else {
        Err(Trouble::new(
            "wasm-opt was fetched but does not run",
            "check that Node 18 or newer is installed",
        ))
    }
}

/// The accessibility rules that the browser tests hold every screen against.
pub(super) fn axe() -> Outcome<PathBuf> {
    script("axe-core", AXE, "axe.min.js")
}

/// The decoder that reads our codes off a picture of the screen.
pub(super) fn jsqr() -> Outcome<PathBuf> {
    script("jsqr", JSQR, "dist/jsQR.js")
}

/// The judge of pages: speed, accessibility, good practice.
pub fn lighthouse() -> Outcome<PathBuf> {
    let _turn = turn()?;
    script("lighthouse", LIGHTHOUSE, "cli/index.js")
}

/// A file of a package of npm that the browser tests put into the page.
fn script(package: &str, version: &str, file: &str) -> Outcome<PathBuf> {
    let home = layout::tools_folder().join(format!("{package}-{version}"));
    let path = home.join("node_modules").join(package).join(file);
    if path.is_file() {
        say(&format!("{package}: there"));
        return Ok(path);
    }
    if npm_package(&home, package, version)? && path.is_file() {
        return Ok(path);
    }
    Err(Trouble::new(
        format!("{package} {version}, which the browser tests need, cannot be had"),
        "install npm (Debian: nodejs and npm) and run this again",
    ))
}

/// Fetches a package of npm into a folder of its own; whether there is an npm.
fn npm_package(home: &Path, package: &str, version: &str) -> Outcome<bool> {
    let npm = match on_path("npm") {
        None if debian::is_debian() => {
            say("npm: installing Debian's nodejs and npm, about a minute");
            debian::install(&["nodejs", "npm"]).ok();
            on_path("npm")
        }
        found => found,
    };
    let Some(npm) = npm else {
        return Ok(false);
    };
    say(&format!(
        "{package}: fetching version {version} with npm, some seconds"
    ));
    fs::create_dir_all(home).map_err(|error| Trouble::with_file(home, &error))?;
    run::run(
        Command::new(npm)
            .current_dir(home)
            .args([
                "install",
                "--no-save",
                "--no-audit",
                "--no-fund",
                "--prefix",
            ])
            .arg(home)
            .arg(format!("{package}@{version}")),
        "check that the npm registry can be reached",
    )?;
    Ok(true)
}

fn is_our_binaryen(path: &Path) -> bool {
    answer(Command::new(path).arg("--version"))
        .is_some_and(|text| text.starts_with(&format!("wasm-opt version {BINARYEN} ")))
}

/// A program that cargo installs.
struct Tool<'a> {
    package: &'a str,
    program: &'a str,
    version: &'a str,
    usual: &'a str,
    options: &'a [&'a str],
    opt_level: &'a str,
}

impl Tool<'_> {
    /// The program in the wanted version.
    fn itself(&self) -> Outcome<PathBuf> {
        let folder = self.found_or_installed()?;
        Ok(folder.join(exe(self.program)))
    }

    /// The folder that holds the program in the wanted version.
    fn found_or_installed(&self) -> Outcome<PathBuf> {
        let Self {
            package,
            program,
            version,
            usual,
            options,
            opt_level,
        } = *self;
        if let Some(found) = on_path(program).filter(|path| self.is_wanted(path)) {
            say(&format!("{package} {version}: on the path"));
            return Ok(found.parent().map(Path::to_path_buf).unwrap_or_default());
        }
        let home = layout::tools_folder().join(format!("{package}-{version}"));
        let folder = home.join("bin");
        if self.is_wanted(&folder.join(exe(program))) {
            say(&format!("{package} {version}: there"));
            return Ok(folder);
        }
        say(&format!("{package} {version}: building it once, {usual}"));
        let scratch = layout::tools_folder().join(format!("{package}-{version}-building"));
        run::run(
            cargo()
                .current_dir(parent_of(&home)?)
                .args([
                    "install",
                    package,
                    "--version",
                    version,
                    "--quiet",
                    "--force",
                ])
                .args(options)
                .arg("--root")
                .arg(&home)
                .arg("--target-dir")
                .arg(&scratch)
                // A light build: ready in half the time, hardly slower to use.
                .env("CARGO_PROFILE_RELEASE_LTO", "off")
                .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
                .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", opt_level)
                .env("CARGO_PROFILE_RELEASE_DEBUG", "false"),
            &format!(
                "check that the crate registry can be reached and a C compiler is installed, \
                 or run `cargo install {package} --version {version}` yourself"
            ),
        )?;
        // The scratch folder is hundreds of megabytes; losing it is no loss.
        let _ = fs::remove_dir_all(scratch);
        Ok(folder)
    }

    fn is_wanted(&self, path: &Path) -> bool {
        answer(Command::new(path).arg("--version"))
            .is_some_and(|text| text.split_whitespace().nth(1) == Some(self.version))
    }
}

/// Creates the folder that holds `home` and returns it: a neutral place to
/// stand in, where no project's `.cargo/config.toml` reaches the build.
fn parent_of(home: &Path) -> Outcome<PathBuf> {
    let folder = home.parent().map(Path::to_path_buf).unwrap_or_default();
    fs::create_dir_all(&folder).map_err(|error| Trouble::with_file(&folder, &error))?;
    Ok(folder)
}

fn exe(program: &str) -> String {
    format!("{program}{}", std::env::consts::EXE_SUFFIX)
}

/// The version of a package in our `Cargo.lock`.
fn locked_version(package: &str) -> Outcome<String> {
    let path = layout::checkout().join("Cargo.lock");
    let text = fs::read_to_string(&path).map_err(|error| Trouble::with_file(&path, &error))?;
    version_in_lock(&text, package).ok_or_else(|| {
        Trouble::new(
            format!("Cargo.lock names no version of {package}"),
            "restore Cargo.lock from the repository",
        )
    })
}

/// The `version` line that follows the `name` line of a package.
fn version_in_lock(lock: &str, package: &str) -> Option<String> {
    let name = format!("name = \"{package}\"");
    let mut lines = lock.lines().skip_while(|line| *line != name);
    lines.next()?;
    lines
        .next()?
        .strip_prefix("version = \"")?
        .strip_suffix('"')
        .map(str::to_owned)
}

#[cfg(test)]
mod tests {
    use super::version_in_lock;

    const LOCK: &str = "[[package]]\nname = \"wasm-bindgen-shared\"\nversion = \"9.9.9\"\n\n\
                        [[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\n";

    #[test]
    fn the_lock_is_read_for_the_whole_name() {
        assert_eq!(
            version_in_lock(LOCK, "wasm-bindgen").as_deref(),
            Some("0.2.130")
        );
    }

    #[test]
    fn a_package_that_is_not_locked_has_no_version() {
        assert_eq!(version_in_lock(LOCK, "wasm"), None);
    }
}
