//! Where things are: the checkout, cargo's target folder, our tools.
//!
//! Tools that take minutes to build are kept in the person's cache folder, not
//! under `target/`: `cargo clean` or a second clone must not cost them again.
//! They are kept apart from `~/.cargo/bin`, so that a person's own Trunk of
//! another version is never replaced.

use std::env;
use std::path::{Path, PathBuf};

/// The checkout that this program was called in: cargo says so, else the folder
/// one stands in. Only where neither lies in a checkout it is the one that the
/// program was built from: a copy that was taken along with its `target/` runs
/// the program of the other one.
pub fn checkout() -> PathBuf {
    let called = env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
    let built = Path::new(env!("CARGO_MANIFEST_DIR"));
    called
        .into_iter()
        .chain(env::current_dir())
        .find_map(|folder| checkout_round(&folder))
        .or_else(|| checkout_round(built))
        .unwrap_or_else(|| built.to_path_buf())
}

/// The checkout that a folder lies in.
fn checkout_round(folder: &Path) -> Option<PathBuf> {
    let is_checkout = |folder: &&Path| folder.join("src/xtask/layout.rs").is_file();
    folder.ancestors().find(is_checkout).map(Path::to_path_buf)
}

/// Cargo's target folder: `CARGO_TARGET_DIR` or `target/` of the checkout.
pub fn target_folder() -> PathBuf {
    match env::var_os("CARGO_TARGET_DIR") {
        // A relative value is relative to where the person stands, as in cargo.
        Some(folder) => absolute(PathBuf::from(folder)),
        None => checkout().join("target"),
    }
}

/// The folder that the finished page is written to.
pub fn dist_folder() -> PathBuf {
    checkout().join("dist")
}

/// The folder of the page as one file.
pub fn single_folder() -> PathBuf {
    checkout().join("dist-single")
}

/// The folder that our own tools are kept in.
///
/// `COLDSEAT_TOOLS` names another one, for example on a machine whose home
/// folder is small.
pub fn tools_folder() -> PathBuf {
    if let Some(folder) = env::var_os("COLDSEAT_TOOLS") {
        return absolute(PathBuf::from(folder));
    }
    let cache = if cfg!(windows) {
        env::var_os("LOCALAPPDATA").map(PathBuf::from)
    } else if cfg!(target_os = "macos") {
        env::var_os("HOME").map(|home| Path::new(&home).join("Library/Caches"))
    } else {
        env::var_os("XDG_CACHE_HOME")
            .map(PathBuf::from)
            .or_else(|| env::var_os("HOME").map(|home| Path::new(&home).join(".cache")))
    };
    match cache {
        Some(folder) => folder.join("coldseat"),
        None => target_folder().join("tools"),
    }
}

/// A path as seen from the folder the person stands in.
pub fn absolute(path: PathBuf) -> PathBuf {
    std::path::absolute(&path).unwrap_or(path)
}

/// The first file called `name` in the folders of `PATH`.
pub fn on_path(name: &str) -> Option<PathBuf> {
    let path = env::var_os("PATH")?;
    let file = if cfg!(windows) {
        format!("{name}.exe")
    } else {
        name.to_owned()
    };
    env::split_paths(&path)
        .map(|folder| folder.join(&file))
        .find(|candidate| candidate.is_file())
}

#[cfg(test)]
#[allow(clippy::expect_used)] // a test stops at the first surprise
mod tests {
    use super::*;

    #[test]
    fn a_copy_is_a_checkout_of_its_own() {
        let copy = tempfile::tempdir().expect("a folder");
        let inside = copy.path().join("src/xtask/setup");
        std::fs::create_dir_all(&inside).expect("folders");
        assert_eq!(checkout_round(&inside), None);
        std::fs::write(copy.path().join("src/xtask/layout.rs"), "").expect("a file");
        assert_eq!(checkout_round(&inside).as_deref(), Some(copy.path()));
    }
}
