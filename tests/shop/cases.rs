//! The cases of a folder.

use std::fs;
use std::path::Path;

/// A case: its name and its lines.
pub struct Case {
    pub name: String,
    pub lines: Vec<String>,
}

/// All cases of a folder, in order.
pub fn cases(folder: &Path) -> Vec<Case> {
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "md") && !path.ends_with("README.md"))
        .collect();
    files.sort();
    let mut cases = Vec::new();
    for file in files {
        let text = fs::read_to_string(&file).unwrap();
        for block in text.split("\n## ").skip(1) {
            let mut lines = block.lines().map(str::trim).filter(|l| !l.is_empty());
            let name = format!(
                "{}: {}",
                file.file_stem().unwrap().display(),
                lines.next().unwrap()
            );
            let lines: Vec<String> = lines.map(str::to_owned).collect();
            cases.push(Case { name, lines });
        }
    }
    cases
}
