//! The offline worker: the list of the page's files, their digests, a version.
//!
//! Written last, from the files as they will be served. The version is a
//! digest of the list *and* of the worker's own text: were it of the list
//! alone, a corrected worker would install into the cache that the running one
//! serves from, and a failed install would delete that.

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
            integrity: format!("sha384-{}", STANDARD.encode(Sha384::digest(&bytes))),
        });
    }
    Ok(files)
}

/// The worker's text for these files, and the version in it.
pub fn worker_text(template: &str, files: &[KeptFile]) -> Outcome<(String, String)> {
    for slot in [VERSION_SLOT, FILES_SLOT] {
        if template.matches(slot).count() != 1 {
            return Err(Trouble::new(
                format!("the worker's template must hold {slot} exactly once"),
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
    Ok((text, version))
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

    const TEMPLATE: &str = "const V = \"@VERSION@\"; const F = \"@FILES@\";";

    #[test]
    fn the_list_is_filled_in() {
        let (text, version) = worker_text(TEMPLATE, &[file("./"), file("a.css")]).unwrap();
        assert_eq!(
            text,
            format!(
                "const V = \"{version}\"; \
                 const F = [[\"./\",\"sha384-x\"],[\"a.css\",\"sha384-x\"]];"
            )
        );
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
        assert!(worker_text("const V = 1;", &[]).is_err());
    }
}
