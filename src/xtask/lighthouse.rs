//! The finished page held against Lighthouse 12.2.3 (general-purpose, npm), as it
//! stands by itself: a phone of the middle class and a slow network, simulated.
//!
//! The page is served compressed, as a host of the web does. Speed is judged on a
//! machine at rest: with other work on it the number falls.

use std::fs;
use std::process::Command;
use std::thread;

use serde_json::Value;

use crate::check::here;
use crate::layout::{self, on_path};
use crate::page;
use crate::run::{self, Outcome, Trouble};
use crate::server::{FolderServer, Port, Reach};
use crate::setup::{self, Browser, Purpose, set_up};

/// What is asked for, of a hundred.
const WANTED: [(&str, f64); 3] = [
    ("performance", 98.0),
    ("accessibility", 100.0),
    ("best-practices", 100.0),
];

/// Builds, serves and judges; fails where accessibility or good practice fall
/// short, and says where speed does, which is the machine's as well.
pub fn lighthouse() -> Outcome<()> {
    let tools = set_up(Purpose::Tests)?;
    let judge = setup::lighthouse()?;
    let browser = tools
        .browser
        .as_ref()
        .ok_or_else(|| Trouble::new("no browser is set up", "run `cargo xtask setup` first"))?;
    let node = on_path("node")
        .ok_or_else(|| Trouble::new("no node", "install Node 18 or newer and run this again"))?;
    let dist = layout::dist_folder();
    page::build(&tools, &dist)?;
    let server = FolderServer::open(&dist, Port::Exactly(0), Reach::Here)?.packing();
    let address = server.address();
    // It ends with this program.
    thread::spawn(move || server.answer());
    let report = layout::target_folder().join("lighthouse.json");
    println!("[lighthouse] judging {address}, about half a minute");
    let only: Vec<&str> = WANTED.iter().map(|(name, _)| *name).collect();
    run::run(
        here(Command::new(node))
            .arg(judge)
            .arg(address)
            .args(["--output=json", "--quiet"])
            .arg(format!("--output-path={}", report.display()))
            .arg(format!("--only-categories={}", only.join(",")))
            .arg(format!("--chrome-flags={}", Browser::arguments().join(" ")))
            .env("CHROME_PATH", &browser.browser),
        "see its message above",
    )?;
    let text = fs::read_to_string(&report).map_err(|error| Trouble::with_file(&report, &error))?;
    let read: Value = serde_json::from_str(&text)
        .map_err(|error| Trouble::new(format!("its report: {error}"), "run it again"))?;
    let short = judged(&read);
    for line in metrics(&read) {
        println!("[lighthouse] {line}");
    }
    println!("[lighthouse] the whole report: {}", report.display());
    if short.iter().any(|name| *name != "performance") {
        return Err(Trouble::new(
            format!("Lighthouse is not content with {}", short.join(", ")),
            "see the audits in its report",
        ));
    }
    Ok(())
}

/// Prints the marks; which fall short.
fn judged(report: &Value) -> Vec<&'static str> {
    let mut short = Vec::new();
    for (name, wanted) in WANTED {
        // No mark is the worst one.
        let score = report["categories"][name]["score"].as_f64().unwrap_or(0.0);
        let mark = (100.0 * score).round();
        let met = mark >= wanted;
        println!(
            "[lighthouse] {name}: {mark} of {wanted} wanted: {}",
            if met { "met" } else { "MISSED" }
        );
        if !met {
            short.push(name);
        }
    }
    short
}

/// What the mark of speed is made of, and every audit that failed.
fn metrics(report: &Value) -> Vec<String> {
    let Some(audits) = report["audits"].as_object() else {
        return Vec::new();
    };
    audits
        .values()
        .filter(|audit| audit["score"].as_f64().is_some_and(|score| score < 1.0))
        .map(|audit| {
            let text = |key: &str| audit[key].as_str().unwrap_or_default().to_owned();
            format!("  {} {}", text("title"), text("displayValue"))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::judged;

    #[test]
    fn a_mark_that_is_missing_or_low_falls_short() {
        let report = serde_json::json!({ "categories": {
            "performance": { "score": 0.98 },
            "accessibility": { "score": 0.99 },
        } });
        assert_eq!(judged(&report), ["accessibility", "best-practices"]);
    }
}
