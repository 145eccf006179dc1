//! A language that nobody speaks: English with every vowel written twice and with an
//! accent, some two fifths longer. What it breaks in the layout, a longer language will.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

/// Puts it into the place of English in a copy of the page. The worker goes: it would
/// refuse files that are not as they were built.
pub fn put_into(page: &Path) -> Result<()> {
    let mut found = 0;
    for entry in fs::read_dir(page.join("words"))? {
        let path = entry?.path();
        let name = path.file_name().context("a name")?.to_string_lossy();
        if name.starts_with("en-US.") {
            let text = fs::read_to_string(&path)?;
            let (digest, words) = text.split_once('\n').context("a first line")?;
            fs::write(&path, format!("{digest}\n{}", longer(words)))?;
            found += 1;
        }
    }
    anyhow::ensure!(found == 1, "{found} files of English words");
    fs::remove_file(page.join("sw.js")).context("the worker")
}

fn longer(words: &str) -> String {
    let mut out = String::with_capacity(words.len() * 3 / 2);
    for letter in words.chars() {
        let accented = match letter {
            'a' => "\u{e1}\u{e1}",
            'e' => "\u{eb}\u{eb}",
            'i' => "\u{ef}\u{ef}",
            'o' => "\u{f4}\u{f4}",
            'u' => "\u{fc}\u{fc}",
            'A' => "\u{c5}\u{e1}",
            'E' => "\u{cb}\u{eb}",
            'I' => "\u{cf}\u{ef}",
            'O' => "\u{d4}\u{f4}",
            'U' => "\u{dc}\u{fc}",
            other => {
                out.push(other);
                continue;
            }
        };
        out.push_str(accented);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::longer;

    #[test]
    fn it_is_a_third_to_a_half_longer() {
        let text = "Measure the diameter after the last pass. The bar leaves a thou or so.";
        let share = longer(text).chars().count() as f64 / text.chars().count() as f64;
        assert!((1.3..1.5).contains(&share), "{share}");
    }
}
