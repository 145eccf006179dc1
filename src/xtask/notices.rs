//! The licence texts of every crate that is in the page, as one text file beside
//! it: generated at each build out of the crates themselves.
//!
//! Where a crate may be had under the MIT licence, that text is taken, else all
//! it brings. Few bring none: then its licence as its manifest names it stands
//! there, with that licence's text and who wrote the crate. Which licences may be
//! in it at all is told by [`crate::deny`].

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use serde_json::Value;

use crate::layout;
use crate::run::{self, Outcome, Trouble, cargo};
use crate::setup::WASM_TARGET;

/// Its name in the page's folder.
pub const NAME: &str = "notices.txt";

/// Beginnings of the names of files that hold a licence or a notice.
const FILES: [&str; 5] = ["LICENSE", "LICENCE", "COPYING", "NOTICE", "UNLICENSE"];

/// A crate of the page.
#[derive(Debug)]
struct Piece {
    name: String,
    licence: String,
    texts: Vec<String>,
}

/// Writes the notices into a finished page.
pub fn write(stage: &Path) -> Outcome<()> {
    let pieces = pieces()?;
    println!("[build] notices of {} crates", pieces.len());
    let path = stage.join(NAME);
    fs::write(&path, text(&pieces)).map_err(|error| Trouble::with_file(&path, &error))
}

fn pieces() -> Outcome<Vec<Piece>> {
    let remedy = "fetch the crates with `cargo fetch` and build again";
    let output = |arguments: &[&str]| -> Outcome<String> {
        let mut command = cargo();
        let made = command
            .current_dir(layout::checkout())
            .args(arguments)
            .output()
            .map_err(|error| Trouble::new(format!("cargo: {error}"), remedy))?;
        if !made.status.success() {
            return Err(Trouble::new(
                format!("{} failed", run::spoken(&command)),
                remedy,
            ));
        }
        Ok(String::from_utf8_lossy(&made.stdout).into_owned())
    };
    let tree = output(&[
        "tree",
        "--offline",
        "-p",
        "coldseat-page",
        "--target",
        WASM_TARGET,
        "-e",
        "normal,no-proc-macro",
        "--prefix",
        "none",
        "--format",
        "{p}",
    ])?;
    let known = output(&[
        "metadata",
        "--offline",
        "--format-version",
        "1",
        "--filter-platform",
        WASM_TARGET,
    ])?;
    let known: Value = serde_json::from_str(&known)
        .map_err(|error| Trouble::new(format!("cargo metadata: {error}"), remedy))?;
    let mut in_page: Vec<&str> = tree
        .lines()
        .map(|line| line.split(" (").next().unwrap_or(line).trim())
        .filter(|name| !name.is_empty() && !name.starts_with("coldseat-"))
        .collect();
    in_page.sort_unstable();
    in_page.dedup();
    let packages = known["packages"].as_array().cloned().unwrap_or_default();
    let mut found = Vec::new();
    for name in in_page {
        let package = packages.iter().find(|package| {
            let field = |key: &str| package[key].as_str().unwrap_or_default();
            name == format!("{} v{}", field("name"), field("version"))
        });
        let package = package
            .ok_or_else(|| Trouble::new(format!("cargo metadata does not know {name}"), remedy))?;
        found.push(piece(name, package));
    }
    if found.is_empty() {
        return Err(Trouble::new("the page has no crates at all", remedy));
    }
    Ok(found)
}

fn licence_of(package: &Value) -> &str {
    package["license"].as_str().unwrap_or("see its text")
}

fn piece(name: &str, package: &Value) -> Piece {
    let licence = licence_of(package);
    let folder = package["manifest_path"].as_str().map(Path::new);
    let folder = folder.and_then(Path::parent);
    let mut files: Vec<_> = folder
        .and_then(|folder| fs::read_dir(folder).ok())
        .into_iter()
        .flatten()
        .flatten()
        .map(|entry| entry.path())
        .filter(|path| {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            FILES
                .iter()
                .any(|start| name.to_uppercase().starts_with(start))
        })
        .collect();
    files.sort();
    let is_mit = |path: &std::path::PathBuf| path.to_string_lossy().to_uppercase().ends_with("MIT");
    if licence.contains("MIT") && !licence.contains(" AND ") && files.iter().any(is_mit) {
        files.retain(is_mit);
    }
    let mut texts: Vec<String> = files
        .iter()
        .filter_map(|path| fs::read_to_string(path).ok())
        .map(|text| text.trim().replace("\r\n", "\n"))
        .filter(|text| !text.is_empty())
        .collect();
    if texts.is_empty() {
        texts.push(own_words(package, licence));
    }
    Piece {
        name: name.to_owned(),
        licence: licence.to_owned(),
        texts,
    }
}

/// For a crate that brings no text of its own.
fn own_words(package: &Value, licence: &str) -> String {
    let authors = package["authors"].as_array().into_iter().flatten();
    let authors: Vec<&str> = authors.filter_map(Value::as_str).collect();
    let who = match (authors.as_slice(), package["repository"].as_str()) {
        ([], Some(place)) => format!("its authors, {place}"),
        ([], None) => "its authors".to_owned(),
        (authors, _) => authors.join(", "),
    };
    let terms = include_str!("../../LICENSE");
    let terms = terms
        .split_once("Permission is hereby granted")
        .map_or(terms, |(head, _)| &terms[head.len()..]);
    if licence.contains("MIT") {
        format!("MIT License\n\nCopyright (c) {who}\n\n{}", terms.trim())
    } else {
        format!("{licence}, by {who}")
    }
}

/// The file: every text once, under the names of all crates that bring it.
fn text(pieces: &[Piece]) -> String {
    let mut by_text: BTreeMap<&str, Vec<&Piece>> = BTreeMap::new();
    for piece in pieces {
        for text in &piece.texts {
            by_text.entry(text).or_default().push(piece);
        }
    }
    let mut groups: Vec<(Vec<&Piece>, &str)> =
        by_text.into_iter().map(|(text, of)| (of, text)).collect();
    groups.sort_by(|(a, _), (b, _)| a.iter().map(|p| &p.name).cmp(b.iter().map(|p| &p.name)));
    let mut whole = String::from(
        "Coldseat is made of these works of others, each under its own terms.\n\
         Coldseat itself is under the MIT License.\n",
    );
    for (of, text) in groups {
        whole.push_str("\n----------------------------------------\n");
        for piece in of {
            whole.push_str(&format!("{} ({})\n", piece.name, piece.licence));
        }
        whole.push('\n');
        whole.push_str(text);
        whole.push('\n');
    }
    whole
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;

    #[test]
    fn every_crate_of_the_page_is_named_with_a_text() {
        let pieces = pieces().unwrap();
        let whole = text(&pieces);
        for name in [
            "leptos v",
            "serde_json v",
            "miniz_oxide v",
            "wasm-bindgen v",
        ] {
            assert!(whole.contains(name), "{name}");
        }
        for piece in &pieces {
            assert!(piece.texts.iter().all(|t| t.len() > 100), "{}", piece.name);
            assert!(whole.contains(&piece.name), "{}", piece.name);
        }
        assert!(!whole.contains("coldseat-core"));
    }
}
