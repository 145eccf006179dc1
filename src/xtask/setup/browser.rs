//! The browser that the page is tested in, and its driver.

use std::env;
use std::path::{Path, PathBuf};
use std::process::Command;

use super::{debian, say};
use crate::layout::on_path;
use crate::run::{Outcome, Trouble, answer};

/// Chromium and the program that steers it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Browser {
    /// The browser's program.
    pub browser: PathBuf,
    /// Its WebDriver program.
    pub driver: PathBuf,
}

impl Browser {
    /// The browser's arguments for tests: no window, no first-run pages, no
    /// traffic of its own.
    pub fn arguments() -> Vec<&'static str> {
        let mut arguments = vec![
            "--headless=new",
            "--disable-gpu",
            "--no-first-run",
            "--no-default-browser-check",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            // The small /dev/shm of a container must not crash a tab.
            "--disable-dev-shm-usage",
        ];
        // Chromium's own sandbox does not work as root.
        if debian::is_root() {
            arguments.push("--no-sandbox");
        }
        arguments
    }
}

const BROWSERS: [&str; 4] = [
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
];

/// Finds or installs browser and driver.
///
/// `COLDSEAT_BROWSER` and `CHROMEDRIVER` name others.
pub(super) fn browser() -> Outcome<Browser> {
    let found = match find() {
        Some(found) => found,
        None if debian::is_debian() => {
            say("browser: installing Debian's chromium and chromium-driver, one to two minutes");
            debian::install(&["chromium", "chromium-driver"])?;
            find().ok_or_else(missing)?
        }
        None => return Err(missing()),
    };
    let browser = major(&found.browser)?;
    let driver = major(&found.driver)?;
    if browser != driver {
        return Err(Trouble::new(
            format!("the browser is version {browser}, its driver is version {driver}"),
            "install both of one version, or name them: COLDSEAT_BROWSER and CHROMEDRIVER",
        ));
    }
    say(&format!("browser: Chromium {browser} with its driver"));
    Ok(found)
}

/// Browser and driver as named by the environment or found on the path.
pub(super) fn find() -> Option<Browser> {
    let named = |variable: &str| env::var_os(variable).map(PathBuf::from);
    let mac = || {
        let path = Path::new("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome");
        path.exists().then(|| path.to_path_buf())
    };
    Some(Browser {
        browser: named("COLDSEAT_BROWSER")
            .or_else(|| BROWSERS.iter().find_map(|name| on_path(name)))
            .or_else(mac)?,
        driver: named("CHROMEDRIVER").or_else(|| on_path("chromedriver"))?,
    })
}

fn missing() -> Trouble {
    Trouble::new(
        "no Chromium or Chrome with its driver on this machine",
        "install both and put them on your PATH, or name them: COLDSEAT_BROWSER and CHROMEDRIVER",
    )
}

/// The first number in what a program says to `--version`.
fn major(program: &Path) -> Outcome<String> {
    answer(Command::new(program).arg("--version"))
        .and_then(|text| {
            text.split_whitespace()
                .find(|word| word.starts_with(|first: char| first.is_ascii_digit()))
                .and_then(|word| word.split('.').next().map(str::to_owned))
        })
        .ok_or_else(|| {
            Trouble::new(
                format!("{} does not say its version", program.display()),
                "reinstall it, or name another: COLDSEAT_BROWSER and CHROMEDRIVER",
            )
        })
}
