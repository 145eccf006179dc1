//! The offline worker: the list of the page's files, their digests, a version.
//!
//! Written last, from the files as they will be served. The version is a
//! digest of the list *and* of the worker's own text: were it of the list
//! alone, a corrected worker would install into the cache that the running one
//! serves from, and a failed install would delete that.
//!
//! The worker's own text carries a checksum as well, of the function that is all
//! of it: no browser checks it, and a host that cuts it off or spoils a letter
//! would otherwise put half a worker in the place of a whole one. A CRC, since
//! it must be worked out before the text is taken, and digests come too late.

use std::fs;
use std::path::Path;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256, Sha384};
use walkdir::WalkDir;

use crate::run::{Outcome, Trouble};

/// The worker's file name at the root of the page.
pub const WORKER: &str = "sw.js";

const VERSION_SLOT: &str = "\"@VERSION@\"";
const FILES_SLOT: &str = "\"@FILES@\"";
const SUM_SLOT: &str = "\"@SUM@\"";

/// Where the function begins that is summed; it ends with the text.
const FUNCTION: &str = "\nfunction keep(";

/// One file that the page needs offline.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct KeptFile {
    /// Its address relative to the page, with `./` for the page itself.
    pub url: String,
    /// Its digest in the notation of subresource integrity.
    pub integrity: String,
}

/// Every file of a finished page but the worker, in a settled order.
pub fn kept_files(folder: &Path) -> Outcome<Vec<KeptFile>> {
    let mut files = Vec::new();
    for entry in WalkDir::new(folder).sort_by_file_name() {
        let entry = entry.map_err(|error| {
            Trouble::new(
                format!("the finished page cannot be listed: {error}"),
                "check the folder's permissions and build again",
            )
        })?;
        if !entry.file_type().is_file() {
            continue;
        }
        let path = entry.path();
        let inside = path.strip_prefix(folder).unwrap_or(path);
        let parts: Vec<_> = inside
            .components()
            .map(|part| part.as_os_str().to_string_lossy())
            .collect();
        let name = parts.join("/");
        if name == WORKER {
            continue;
        }
        let bytes = fs::read(path).map_err(|error| Trouble::with_file(path, &error))?;
        files.push(KeptFile {
            // Hosts answer `index.html` with a redirect to the folder, or the
            // other way about; the folder is what people open.
            url: if name == "index.html" {
                "./".to_owned()
            } else {
                name
            },
            integrity: integrity(&bytes),
        });
    }
    Ok(files)
}

/// The worker's text for these files, and the version in it.
pub fn worker_text(template: &str, files: &[KeptFile]) -> Outcome<(String, String)> {
    for slot in [VERSION_SLOT, FILES_SLOT, SUM_SLOT, FUNCTION] {
        if template.matches(slot).count() != 1 {
            return Err(Trouble::new(
                format!("the worker's template must hold {slot:?} exactly once"),
                "restore src/page/shell/sw.js from the repository",
            ));
        }
    }
    let pairs: Vec<_> = files
        .iter()
        .map(|file| [file.url.as_str(), file.integrity.as_str()])
        .collect();
    let list = serde_json::json!(pairs).to_string();
    let mut digest = Sha256::new();
    digest.update(&list);
    digest.update(template);
    let version: String = digest
        .finalize()
        .iter()
        .take(8)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let text = template
        .replace(FILES_SLOT, &list)
        .replace(VERSION_SLOT, &format!("\"{version}\""));
    // As the browser gives a function's text: from its word to its last brace.
    let function = text.rsplit_once(FUNCTION).map(|(_, rest)| rest);
    let function = format!("{}{}", FUNCTION.trim_start(), function.unwrap_or_default());
    if !function.is_ascii() {
        return Err(Trouble::new(
            "the worker's text, with the names of the page's files, is not all ASCII",
            "its sum is of bytes, the browser's of letters: rename the file, or the words",
        ));
    }
    let sum = crc32fast::hash(function.trim_end().as_bytes());
    Ok((text.replace(SUM_SLOT, &sum.to_string()), version))
}

/// A digest in the notation of subresource integrity.
pub fn integrity(bytes: &[u8]) -> String {
    format!("sha384-{}", STANDARD.encode(Sha384::digest(bytes)))
}

/// Writes the worker of a finished page and returns its version.
pub fn write_worker(folder: &Path, template: &str) -> Outcome<String> {
    let (text, version) = worker_text(template, &kept_files(folder)?)?;
    let path = folder.join(WORKER);
    fs::write(&path, text).map_err(|error| Trouble::with_file(&path, &error))?;
    Ok(version)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "a test says enough by failing")]

    use super::*;

    fn file(url: &str) -> KeptFile {
        KeptFile {
            url: url.to_owned(),
            integrity: "sha384-x".to_owned(),
        }
    }

    const TEMPLATE: &str =
        "keep(\"@SUM@\");\n\nfunction keep(d) { return [\"@VERSION@\", \"@FILES@\"]; }\n";

    #[test]
    fn the_list_and_the_sum_of_the_function_are_filled_in() {
        let (text, version) = worker_text(TEMPLATE, &[file("./"), file("a.css")]).unwrap();
        let function = format!(
            "function keep(d) {{ return [\"{version}\", \
             [[\"./\",\"sha384-x\"],[\"a.css\",\"sha384-x\"]]]; }}"
        );
        let sum = crc32fast::hash(function.as_bytes());
        assert_eq!(text, format!("keep({sum});\n\n{function}\n"));
    }

    #[test]
    fn digests_are_written_as_browsers_read_them() {
        // SHA-384 of "abc": FIPS 180-4 examples (NIST), cb00753f45a35e8b...
        let expected = "sha384-ywB1P0WjXou1oD1pmsZQBycsMqsO3tFjGotgWkP/W+2AhgcroefMI1i67KE0yCWn";
        assert_eq!(integrity(b"abc"), expected);
    }

    #[test]
    fn a_changed_file_and_a_changed_worker_are_new_versions() {
        let version = |template: &str, files: &[KeptFile]| worker_text(template, files).unwrap().1;
        let first = version(TEMPLATE, &[file("a")]);
        assert_eq!(first, version(TEMPLATE, &[file("a")]));
        assert_ne!(first, version(TEMPLATE, &[file("b")]));
        assert_ne!(first, version(&format!("{TEMPLATE} "), &[file("a")]));
    }

    #[test]
    fn a_template_without_its_slots_is_refused() {
        for part in [VERSION_SLOT, FILES_SLOT, SUM_SLOT, FUNCTION] {
            assert!(
                worker_text(&TEMPLATE.replace(part, ""), &[]).is_err(),
                "{part}"
            );
        }
    }
}
