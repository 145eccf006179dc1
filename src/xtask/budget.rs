//! What the page may weigh: sizes and requests of a first load against the
//! committed budget. Growth of more than 2 % fails the check; whoever means it
//! changes `budget.txt` in the same commit and says why.

use std::fs;
use std::path::Path;

use miniz_oxide::deflate::compress_to_vec;

use crate::run::{Outcome, Trouble};
use crate::words::FOLDER;

/// The committed budget.
const BUDGET: &str = include_str!("budget.txt");
/// Growth that is let through.
const SLACK: f64 = 1.02;
/// Bytes of a gzip header and trailer round deflated data (RFC 1952).
const GZIP_BYTES: usize = 18;

/// What is fetched at the first visit before the page stands: not the worker
/// and its icons, which come afterwards.
fn is_first_load(name: &str) -> bool {
    name == "index.html"
        || [".css", ".wasm", ".js", ".webmanifest"]
            .iter()
            .any(|end| name.ends_with(end) && name != "sw.js")
}

/// Name and value of what is weighed.
pub fn weigh(dist: &Path) -> Outcome<Vec<(&'static str, u64)>> {
    let (mut wasm, mut wasm_gzip, mut gzip, mut requests) = (0, 0, 0, 0);
    let entries = fs::read_dir(dist).map_err(|error| Trouble::with_file(dist, &error))?;
    for entry in entries.flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        if !is_first_load(&name) {
            continue;
        }
        let path = entry.path();
        let bytes = fs::read(&path).map_err(|error| Trouble::with_file(&path, &error))?;
        let packed = compress_to_vec(&bytes, 9).len() + GZIP_BYTES;
        gzip += packed as u64;
        requests += 1;
        if name.ends_with(".wasm") {
            wasm += bytes.len() as u64;
            wasm_gzip += packed as u64;
        }
    }
    // One language, of which the longest counts; a bare page has none.
    let mut longest = 0;
    for entry in fs::read_dir(dist.join(FOLDER))
        .into_iter()
        .flatten()
        .flatten()
    {
        let path = entry.path();
        let bytes = fs::read(&path).map_err(|error| Trouble::with_file(&path, &error))?;
        longest = longest.max(compress_to_vec(&bytes, 9).len() + GZIP_BYTES);
    }
    gzip += longest as u64;
    requests += u64::from(longest > 0);
    Ok(vec![
        ("wasm bytes", wasm),
        ("wasm gzip bytes", wasm_gzip),
        ("first load gzip bytes", gzip),
        ("first load requests", requests),
    ])
}

/// The budget of a name.
fn most(budget: &str, name: &str) -> Option<u64> {
    let line = budget
        .lines()
        .find_map(|line| line.strip_prefix(name)?.strip_prefix(':'))?;
    line.trim().parse().ok()
}

/// What is over the budget.
fn over(budget: &str, weights: &[(&str, u64)]) -> Vec<String> {
    weights
        .iter()
        .filter_map(|(name, weight)| match most(budget, name) {
            Some(most) if *weight as f64 <= most as f64 * SLACK => None,
            Some(most) => Some(format!("{name}: {weight}, the budget says {most}")),
            None => Some(format!("{name}: {weight}, the budget names none")),
        })
        .collect()
}

/// Holds a finished page against the budget; says what it weighs.
pub fn hold(dist: &Path) -> Outcome<()> {
    let weights = weigh(dist)?;
    for (name, weight) in &weights {
        println!("[budget] {name}: {weight}");
    }
    let over = over(BUDGET, &weights);
    if over.is_empty() {
        return Ok(());
    }
    Err(Trouble::new(
        format!("the page outgrew its budget: {}", over.join("; ")),
        "make it smaller, or change src/xtask/budget.txt in the same commit and say why",
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn growth_beyond_the_slack_is_named() {
        let budget = "wasm bytes: 1000\nfirst load requests: 7\n";
        let fine = [("wasm bytes", 1020), ("first load requests", 7)];
        assert!(over(budget, &fine).is_empty());
        let grown = [("wasm bytes", 1021), ("first load requests", 8)];
        assert_eq!(over(budget, &grown).len(), 2);
        assert_eq!(over("", &fine).len(), 2);
    }

    #[test]
    fn every_weight_has_its_budget() {
        for name in [
            "wasm bytes",
            "wasm gzip bytes",
            "first load gzip bytes",
            "first load requests",
        ] {
            assert!(most(BUDGET, name).is_some(), "{name}");
        }
    }
}
