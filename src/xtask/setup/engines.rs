//! The two other families of browsers that the page is tested in: Firefox, and
//! WebKit, which every browser of an iPhone is made of.
//!
//! A machine that can have none of one builds and serves the page all the same,
//! so its absence is said here and ends nothing; the check that wants it fails.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};

use super::{Browser, debian, say, tools};
use crate::layout::on_path;
use crate::run::{Outcome, Trouble};

/// The check that fails without them.
const CHECK: &str = "engines";

/// Browsers with their drivers, as far as this machine has them.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Engines {
    /// Firefox and geckodriver.
    pub firefox: Option<Browser>,
    /// WebKitGTK's small browser and its driver; they draw on Xvfb.
    pub webkit: Option<Browser>,
}

impl Engines {
    /// What the tests are told, by the names that a person may set as well.
    pub fn env(&self) -> Vec<(&'static str, PathBuf)> {
        let named = |found: &Option<Browser>, browser, driver| {
            found.clone().map_or_else(Vec::new, |found| {
                vec![(browser, found.browser), (driver, found.driver)]
            })
        };
        let mut all = named(&self.firefox, FIREFOX, GECKODRIVER);
        all.extend(named(&self.webkit, MINI_BROWSER, WEBKIT_DRIVER));
        all
    }
}

const FIREFOX: &str = "COLDSEAT_FIREFOX";
const GECKODRIVER: &str = "GECKODRIVER";
const MINI_BROWSER: &str = "COLDSEAT_MINIBROWSER";
const WEBKIT_DRIVER: &str = "COLDSEAT_WEBKITDRIVER";

/// Finds or installs both.
pub(super) fn engines() -> Engines {
    Engines {
        firefox: or_said("Firefox", firefox()),
        webkit: or_said("WebKitGTK", webkit()),
    }
}

fn or_said(name: &str, found: Outcome<Browser>) -> Option<Browser> {
    match found {
        Ok(found) => {
            say(&format!("{name}: there, with its driver"));
            Some(found)
        }
        Err(trouble) => {
            say(&format!(
                "{name}: MISSING, so the check `{CHECK}` will fail. {trouble}"
            ));
            None
        }
    }
}

fn firefox() -> Outcome<Browser> {
    let find = || named(FIREFOX).or_else(|| first_on_path(&["firefox-esr", "firefox"]));
    let browser = found_or_debian(
        find,
        "Firefox: installing Debian's firefox-esr, about a minute",
        &["firefox-esr"],
        "install Firefox and put it on your PATH, or name it: COLDSEAT_FIREFOX",
    )?;
    let driver = match named(GECKODRIVER) {
        Some(driver) => driver,
        None => tools::geckodriver()?,
    };
    Ok(Browser { browser, driver })
}

fn webkit() -> Outcome<Browser> {
    let find = || {
        on_path("Xvfb")?;
        Some(Browser {
            browser: named(MINI_BROWSER).or_else(mini_browser)?,
            driver: named(WEBKIT_DRIVER).or_else(|| on_path("WebKitWebDriver"))?,
        })
    };
    found_or_debian(
        find,
        "WebKitGTK: installing Debian's webkit2gtk-driver and xvfb, about a minute",
        &["webkit2gtk-driver", "xvfb"],
        "install WebKitGTK with its driver and Xvfb; COLDSEAT_MINIBROWSER and \
         COLDSEAT_WEBKITDRIVER name programs in unusual places",
    )
}

fn found_or_debian<T>(
    find: impl Fn() -> Option<T>,
    step: &str,
    packages: &[&str],
    by_hand: &str,
) -> Outcome<T> {
    if let Some(found) = find() {
        return Ok(found);
    }
    if debian::is_debian() {
        say(step);
        debian::install(packages)?;
    }
    find().ok_or_else(|| Trouble::new("it is not on this machine", by_hand))
}

fn named(variable: &str) -> Option<PathBuf> {
    env::var_os(variable).map(PathBuf::from)
}

fn first_on_path(names: &[&str]) -> Option<PathBuf> {
    names.iter().find_map(|name| on_path(name))
}

/// WebKitGTK's browser, which lies beside its library and not on the path.
fn mini_browser() -> Option<PathBuf> {
    let inside = |folder: &Path| {
        ["webkit2gtk-4.1", "webkitgtk-6.0", "webkit2gtk-4.0"]
            .iter()
            .map(|version| folder.join(version).join("MiniBrowser"))
            .find(|program| program.is_file())
    };
    let places = [Path::new("/usr/lib"), Path::new("/usr/libexec")];
    let below = |place: &&Path| {
        let entries = fs::read_dir(place).into_iter().flatten().flatten();
        entries.map(|entry| entry.path()).find_map(|f| inside(&f))
    };
    places
        .iter()
        .find_map(|place| inside(place).or_else(|| below(place)))
}

#[cfg(test)]
mod tests {
    use super::{Engines, or_said};
    use crate::run::Trouble;
    use crate::setup::Browser;

    #[test]
    fn what_is_missing_is_not_named_to_the_tests() {
        let webkit = Browser {
            browser: "b".into(),
            driver: "d".into(),
        };
        let engines = Engines {
            firefox: or_said("Firefox", Err(Trouble::new("gone", "look for it"))),
            webkit: or_said("WebKitGTK", Ok(webkit)),
        };
        let names: Vec<_> = engines.env().into_iter().map(|(name, _)| name).collect();
        assert_eq!(names, ["COLDSEAT_MINIBROWSER", "COLDSEAT_WEBKITDRIVER"]);
    }
}
