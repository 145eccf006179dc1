//! The finished page: Trunk's output, optimised, checked, with its worker.
//!
//! Trunk names files by their content *before* wasm-bindgen and wasm-opt have
//! run, and takes its digests too early for us; so everything that depends on
//! the last byte is done here, after Trunk, in a folder of its own. Only a
//! page that is complete replaces the one in `dist/`.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use walkdir::WalkDir;

use crate::layout;
use crate::notices;
use crate::precache;
use crate::run::{self, Outcome, Trouble};
use crate::setup::Toolbox;
use crate::styles;
use crate::words;

/// What today's compiler may use in a wasm file without being asked; the
/// section that names them is stripped, so the optimizer has to be told.
const FEATURES: [&str; 8] = [
    "--enable-bulk-memory",
    "--enable-bulk-memory-opt",
    "--enable-call-indirect-overlong",
    "--enable-multivalue",
    "--enable-mutable-globals",
    "--enable-nontrapping-float-to-int",
    "--enable-reference-types",
    "--enable-sign-ext",
];

/// Builds the release page into `into`.
pub fn build(tools: &Toolbox, into: &Path) -> Outcome<()> {
    let root = layout::checkout();
    let stage = layout::target_folder().join("page-stage");
    println!("[build] the page, release; the first time takes 2 to 4 minutes on two cores");
    fetch_crates()?;
    let mut trunk = Command::new(&tools.trunk);
    tools.equip(&mut trunk);
    run::run(
        trunk
            .current_dir(&root)
            .env("CARGO_TARGET_DIR", layout::target_folder())
            // Read by Trunk as an option of its own, and only as true or false.
            .env_remove("NO_COLOR")
            .args(["build", "--release", "--offline", "--dist"])
            .arg(&stage),
        "the compiler's message is above",
    )?;
    optimise(tools, &stage)?;
    styles::join(&stage)?;
    words::write(&stage)?;
    check_policy(&stage)?;
    notices::write(&stage)?;
    let template_path = root.join("src/page/shell").join(precache::WORKER);
    let template = fs::read_to_string(&template_path)
        .map_err(|error| Trouble::with_file(&template_path, &error))?;
    let version = precache::write_worker(&stage, &template)?;
    replace_folder(&stage, into).map_err(|error| Trouble::with_file(into, &error))?;
    report(into, &version);
    Ok(())
}

/// Fetches every crate that the lock file names, so that the rest can work
/// without a network. In CI a lock file that is out of date is an error.
pub fn fetch_crates() -> Outcome<()> {
    let mut fetch = run::cargo();
    fetch
        .current_dir(layout::checkout())
        .args(["fetch", "--quiet"]);
    if std::env::var_os("CI").is_some() {
        fetch.arg("--locked");
    }
    run::run(
        &mut fetch,
        "check that the crate registry can be reached; if Cargo.lock is out of date, commit the new one",
    )
}

/// Shrinks every wasm file of the page.
pub(crate) fn optimise(tools: &Toolbox, stage: &Path) -> Outcome<()> {
    let Some(wasm_opt) = &tools.wasm_opt else {
        println!("[build] without wasm-opt: the page is larger than it need be");
        return Ok(());
    };
    for path in files(stage).filter(|path| path.extension().is_some_and(|kind| kind == "wasm")) {
        let smaller = path.with_extension("smaller");
        run::run(
            Command::new(wasm_opt)
                .arg("-Oz")
                .args(FEATURES)
                .arg(&path)
                .arg("-o")
                .arg(&smaller),
            "the optimizer's message is above",
        )?;
        fs::rename(&smaller, &path).map_err(|error| Trouble::with_file(&path, &error))?;
    }
    Ok(())
}

/// The page's content policy, as written in its own head.
///
/// One place holds it: the server sends what this finds as a header.
pub fn content_policy(index: &str) -> Option<&str> {
    let (_, rest) = index.split_once("http-equiv=\"Content-Security-Policy\"")?;
    let (_, rest) = rest.split_once("content=\"")?;
    rest.split_once('"').map(|(policy, _)| policy)
}

/// Refuses a page that its own content policy would break.
fn check_policy(stage: &Path) -> Outcome<()> {
    let path = stage.join("index.html");
    let index = fs::read_to_string(&path).map_err(|error| Trouble::with_file(&path, &error))?;
    match broken_policy(&index) {
        None => Ok(()),
        Some(what) => Err(Trouble::new(
            what,
            "put scripts and styles into files of their own (index.html, src/page/shell)",
        )),
    }
}

/// What in a page breaks its content policy, if anything does.
fn broken_policy(index: &str) -> Option<String> {
    if content_policy(index).is_none() {
        return Some("index.html has no content policy".to_owned());
    }
    for tag in index.split('<').skip(1) {
        let Some((head, body)) = tag.split_once('>') else {
            continue;
        };
        let inline_script = head.starts_with("script") && !body.trim().is_empty();
        let inline_style = head.starts_with("style") || head.contains(" style=");
        let handler = head.contains(" onload=") || head.contains(" onclick=");
        if inline_script || inline_style || handler {
            return Some(format!("index.html holds inline code: <{head}>"));
        }
    }
    None
}

/// Puts the finished page in place of the one before.
fn replace_folder(from: &Path, to: &Path) -> std::io::Result<()> {
    fs::create_dir_all(to)?;
    // Emptied, not removed: a server may stand in it.
    for entry in fs::read_dir(to)? {
        let path = entry?.path();
        if path.is_dir() {
            fs::remove_dir_all(path)?;
        } else {
            fs::remove_file(path)?;
        }
    }
    copy_folder(from, to)
}

/// Copies a folder with all that is in it.
pub fn copy_folder(from: &Path, to: &Path) -> std::io::Result<()> {
    fs::create_dir_all(to)?;
    for path in files(from) {
        let target = to.join(path.strip_prefix(from).unwrap_or(&path));
        if let Some(folder) = target.parent() {
            fs::create_dir_all(folder)?;
        }
        fs::copy(&path, target)?;
    }
    Ok(())
}

fn files(folder: &Path) -> impl Iterator<Item = PathBuf> {
    WalkDir::new(folder)
        .sort_by_file_name()
        .into_iter()
        .flatten()
        .filter(|entry| entry.file_type().is_file())
        .map(walkdir::DirEntry::into_path)
}

fn report(dist: &Path, version: &str) {
    let mut total = 0;
    for path in files(dist) {
        let size = path.metadata().map(|data| data.len()).unwrap_or_default();
        total += size;
        let kind = path.extension().unwrap_or_default();
        if kind == "wasm" || kind == "js" {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            println!("[build] {:>7.1} kB  {name}", size as f64 / 1000.0);
        }
    }
    println!(
        "[build] {:>7.1} kB  in all, before the host compresses it",
        total as f64 / 1000.0
    );
    println!("[build] version {version} is ready in {}", dist.display());
}

#[cfg(test)]
mod tests {
    use super::{broken_policy, content_policy};

    const HEAD: &str =
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'\">";

    #[test]
    fn the_policy_is_read_from_the_page() {
        assert_eq!(content_policy(HEAD), Some("default-src 'none'"));
        assert_eq!(content_policy("<meta charset=\"utf-8\">"), None);
    }

    #[test]
    fn a_page_of_files_passes() {
        let page = format!("{HEAD}<script type=\"module\" src=\"./boot.js\"></script><p>x</p>");
        assert_eq!(broken_policy(&page), None);
    }

    #[test]
    fn inline_code_is_named() {
        for bad in [
            "<script>go()</script>",
            "<style>p{}</style>",
            "<p style=\"color:red\">x</p>",
        ] {
            let found = broken_policy(&format!("{HEAD}{bad}")).unwrap_or_default();
            assert!(found.contains("inline code"), "{bad}: {found}");
        }
    }

    #[test]
    fn the_headers_for_hosts_hold_the_page_s_own_policy() {
        let root = crate::layout::checkout();
        let index = std::fs::read_to_string(root.join("index.html")).unwrap_or_default();
        let policy = content_policy(&index).unwrap_or("no policy in index.html");
        for name in [
            "_headers",
            "nginx.conf",
            "htaccess",
            "Caddyfile",
            "shop-apache.conf",
            "shop-nginx.conf",
        ] {
            let path = root.join("src/page/shell/hosting").join(name);
            let text = std::fs::read_to_string(path).unwrap_or_default();
            let whole = format!("{policy}; frame-ancestors 'none'");
            let permitted = crate::server::PERMITTED;
            for held in [whole.as_str(), permitted] {
                assert!(text.contains(held), "{name} does not hold {held}");
            }
        }
    }
}
