//! The page's words, one file a language, beside the program.
//!
//! Their names hold the digest that the program knows: words and program of two
//! versions never meet.

use std::fs;
use std::path::Path;

use coldseat_words::{LANGUAGES, all, digest, pack};

use crate::layout;
use crate::run::{Outcome, Trouble};

/// The folder in the page.
pub const FOLDER: &str = "words";

/// What stands for the digest in the address that index.html names.
const DIGEST: &str = "LANGUAGE.DIGEST.txt";

/// Packs every language into a finished page and names them in its index.
pub fn write(stage: &Path) -> Outcome<()> {
    let languages = all(&layout::checkout().join("src/page/languages"))
        .map_err(|wrong| Trouble::new(wrong.join("\n"), "mend the languages' files"))?;
    let digest = digest(&languages);
    let folder = stage.join(FOLDER);
    fs::create_dir_all(&folder).map_err(|error| Trouble::with_file(&folder, &error))?;
    for language in &languages {
        let path = folder.join(file(&language.name, &digest));
        fs::write(&path, pack(language, &digest))
            .map_err(|error| Trouble::with_file(&path, &error))?;
    }
    let path = stage.join("index.html");
    let index = fs::read_to_string(&path).map_err(|error| Trouble::with_file(&path, &error))?;
    if !index.contains(DIGEST) {
        return Err(Trouble::new(
            "index.html names no words",
            "keep `data-words` in Trunk.toml's pattern_script",
        ));
    }
    let named = index.replace(DIGEST, &file("LANGUAGE", &digest));
    fs::write(&path, named).map_err(|error| Trouble::with_file(&path, &error))
}

fn file(language: &str, digest: &str) -> String {
    format!("{language}.{digest}.txt")
}

/// The words of a finished page: each language with the text of its file, by the
/// address that its index names.
pub fn of_page(dist: &Path, address: &str) -> Outcome<Vec<(&'static str, String)>> {
    LANGUAGES
        .iter()
        .map(|language| {
            let path = dist.join(address.replace("LANGUAGE", language));
            fs::read_to_string(&path)
                .map(|text| (*language, text))
                .map_err(|error| Trouble::with_file(&path, &error))
        })
        .collect()
}
