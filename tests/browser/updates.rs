//! Updates that go wrong: two hundred of them, each a broken second version,
//! and after each the page is the first version and nothing else, with a host
//! and without. Then one that goes right. A version that waits is taken at the
//! person's word or at the next cold start, never while a step is open.
//!
//! Those of Chromium run with the check `browser`, the others with `engines`.

use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Engine, Fault, Host, Page, Role, Visitor, containing, dist_folder};
use fastrand::Rng;
use serde_json::{Value, json};
use tempfile::TempDir;
use xtask::precache::{KeptFile, integrity, kept_files, worker_text};

/// Broken updates in Chromium, one after another.
const FAULTS: usize = 200;

/// As many of them in the others; 200 by hand, see DEVELOPERS.md.
const FAULTS_ELSEWHERE: usize = 40;

/// What is shown, from three files of the page; and what is kept, with digests.
const SHOWN_AND_KEPT: &str = "
    const shown = [
        document.querySelector('meta[name=coldseat-version]')?.content,
        window.coldseatVersion,
        getComputedStyle(document.documentElement).getPropertyValue('--coldseat-version').trim(),
    ];
    const digest = async (response) => {
        const hash = await crypto.subtle.digest('SHA-384', await response.arrayBuffer());
        return `sha384-${btoa(String.fromCharCode(...new Uint8Array(hash)))}`;
    };
    const kept = [];
    for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        const files = (await cache.keys()).map(async (request) =>
            [request.url, await digest(await cache.match(request))]);
        kept.push((await Promise.all(files)).sort());
    }
    const registration = await navigator.serviceWorker.getRegistration();
    return { shown, kept, waits: Boolean(registration?.waiting) };
";

/// A finished page in a folder of its own, its name in three of its files.
struct Version {
    name: &'static str,
    /// What is in the page itself: the name, and which of this name it is.
    mark: String,
    folder: TempDir,
    files: Vec<KeptFile>,
}

impl Version {
    fn make(name: &'static str) -> Result<Self> {
        let folder = TempDir::new()?;
        xtask::page::copy_folder(&dist_folder()?, folder.path())?;
        let mut version = Self {
            name,
            mark: name.to_owned(),
            folder,
            files: Vec::new(),
        };
        let head = format!("<head><meta name=\"coldseat-version\" content=\"{name}\">");
        version.change("index.html", |text| text.replacen("<head>", &head, 1))?;
        version.change("boot.js", |text| {
            format!("globalThis.coldseatVersion = \"{name}\";\n{text}")
        })?;
        let style = fs::read_dir(version.path())?
            .flatten()
            .map(|entry| entry.file_name().to_string_lossy().into_owned())
            .filter(|file| file.ends_with(".css"))
            .min();
        version.change(&style.context("a style sheet")?, |text| {
            format!("{text}\n:root {{ --coldseat-version: {name}; }}\n")
        })?;
        version.files = kept_files(version.path())?;
        version.release()?;
        Ok(version)
    }

    /// Makes another version of it: what a browser has begun to fetch of the
    /// one before, it cannot end with files of this one.
    fn renew(&mut self, number: usize) -> Result<()> {
        let mark = format!("{} {number}", self.name);
        let old = format!("content=\"{}\"", self.mark);
        let new = format!("content=\"{mark}\"");
        self.change("index.html", |text| text.replacen(&old, &new, 1))?;
        self.mark = mark;
        let index = fs::read(self.path().join("index.html"))?;
        let page = self.files.iter_mut().find(|file| file.url == "./");
        page.context("the page")?.integrity = integrity(&index);
        self.release()
    }

    fn release(&self) -> Result<()> {
        let template = xtask::layout::checkout().join("src/page/shell/sw.js");
        let (text, _) = worker_text(&fs::read_to_string(template)?, &self.files)?;
        Ok(fs::write(self.path().join("sw.js"), text)?)
    }

    fn path(&self) -> &Path {
        self.folder.path()
    }

    fn change(&self, file: &str, change: impl Fn(&str) -> String) -> Result<()> {
        let path = self.path().join(file);
        let text = fs::read_to_string(&path)?;
        let changed = change(&text);
        ensure!(changed != text, "{file} is as it was");
        Ok(fs::write(path, changed)?)
    }

    /// What a browser keeps of it when it keeps it whole.
    fn kept(&self, host: &Host) -> Value {
        let address = host.address();
        let mut files: Vec<_> = self
            .files
            .iter()
            .map(|file| (format!("{address}{}", name(file)), &file.integrity))
            .collect();
        files.sort();
        json!(files)
    }

    /// Bytes in all.
    fn size(&self) -> Result<usize> {
        self.files.iter().map(|f| self.size_of(name(f))).sum()
    }

    fn size_of(&self, name: &str) -> Result<usize> {
        let name = if name.is_empty() { "index.html" } else { name };
        Ok(usize::try_from(
            fs::metadata(self.path().join(name))?.len(),
        )?)
    }
}

/// A file's address within the page; empty for the page itself.
fn name(file: &KeptFile) -> &str {
    file.url.trim_start_matches("./")
}

/// A broken update: whose files, whose worker, what else.
#[derive(Debug)]
struct Attempt {
    files: PathBuf,
    worker: PathBuf,
    fault: Fault,
    /// Whether the page is loaded while it is still being fetched.
    hasty: bool,
    /// Whether the host is dead when the page is loaded.
    offline: bool,
}

fn attempt(number: usize, first: &Version, second: &Version, rng: &mut Rng) -> Result<Attempt> {
    let name = name(&second.files[rng.usize(..second.files.len())]);
    let address = |name: &str| format!("/{name}");
    let within = |version: &Version, name: &str, rng: &mut Rng| -> Result<usize> {
        // Of nothing at all no browser can tell that it was to be a worker.
        Ok(rng.usize(1..version.size_of(name)?))
    };
    let worker = "sw.js";
    let at = within(second, name, rng)?;
    let at_worker = within(second, worker, rng)?;
    let bit = rng.u8(..8);
    let fault = match number % 14 {
        0 => Fault::Cut(address(name), at),
        1 => Fault::Short(address(name), at),
        2 => Fault::Flipped(address(name), at, bit),
        3 => Fault::Status(address(name), 404),
        4 => Fault::Status(address(name), 500),
        5 => Fault::Page(address(name)),
        6 => Fault::Cut(address(worker), at_worker),
        7 => Fault::Short(address(worker), at_worker),
        8 | 9 => Fault::Flipped(address(worker), at_worker, bit),
        10 => Fault::Status(address(worker), *rng.choice(&[404, 500, 503]).unwrap()),
        11 => Fault::Page(address(worker)),
        12 => Fault::Dies(rng.usize(..second.size()?)),
        _ => Fault::None,
    };
    // Half an upload, or half a roll-back; and the first version itself, spoilt.
    let (files, from) = match number % 14 {
        13 if rng.bool() => (first, second),
        13 => (second, first),
        9 => (first, first),
        _ => (second, second),
    };
    Ok(Attempt {
        files: files.path().to_path_buf(),
        worker: from.path().to_path_buf(),
        fault,
        hasty: rng.bool(),
        offline: rng.bool(),
    })
}

/// Asks for an update, and waits until it has come to an end.
const UPDATE: &str = "
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => {});
    while (registration.installing) await new Promise((done) => setTimeout(done, 10));
    return registration.waiting !== null;
";

/// Waits until no update is under way.
const SETTLE: &str = "
    const registration = await navigator.serviceWorker.getRegistration();
    while (registration.installing) await new Promise((done) => setTimeout(done, 10));
";

async fn is_wholly(page: &Page, version: &Version, host: &Host) -> Result<()> {
    let found = page.script_awaiting(SHOWN_AND_KEPT).await?;
    let (name, mark) = (version.name, &version.mark);
    ensure!(
        found["shown"] == json!([mark, name, name]),
        "shown: {}",
        found["shown"]
    );
    ensure!(
        found["kept"] == json!([version.kept(host)]),
        "kept of {name}: {}",
        found["kept"]
    );
    ensure!(
        found["waits"] == json!(false),
        "something waits to be taken"
    );
    Ok(())
}

async fn always_whole(engine: Engine, faults: usize) -> Result<()> {
    let faults = match std::env::var("COLDSEAT_FAULTS") {
        Ok(number) => number.parse()?,
        Err(_) => faults,
    };
    let (first, mut second) = (Version::make("first")?, Version::make("second")?);
    let mut host = Host::start(first.path())?;
    let visitor = Visitor::at(engine, host.address()).await?;
    let page = visitor.page();
    page.is_kept_offline().await?;
    is_wholly(page, &first, &host).await?;

    let mut rng = Rng::with_seed(6);
    for number in 0..faults {
        second.renew(number)?;
        let mut attempt = attempt(number, &first, &second, &mut rng)?;
        if engine == Engine::WebKit {
            // A new worker whose page is loaded anew while it begins may stay
            // "installing" in WebKitGTK 2.50, for longer than a test can wait:
            // the page is whole, but hears of no further update meanwhile.
            attempt.hasty = false;
        }
        let after = || format!("{engine:?}, after fault {number}: {attempt:?}");
        host.serve(&attempt.files, &attempt.worker, attempt.fault.clone());
        if attempt.hasty {
            let script = "navigator.serviceWorker.getRegistration()
                .then((registration) => registration.update()).catch(() => {});";
            page.script(script, vec![]).await.with_context(after)?;
            tokio::time::sleep(Duration::from_millis(rng.u64(..60))).await;
        } else {
            page.script_awaiting(UPDATE).await.with_context(after)?;
        }
        if attempt.offline {
            host.kill();
        }
        page.reload().await.with_context(after)?;
        page.script_awaiting(SETTLE).await.with_context(after)?;
        is_wholly(page, &first, &host).await.with_context(after)?;
        host.serve(first.path(), first.path(), Fault::None);
        host.restart()?;
    }

    second.renew(faults)?;
    host.serve(second.path(), second.path(), Fault::None);
    let waits = page.script_awaiting(UPDATE).await?;
    ensure!(waits == json!(true), "the good version is not there");
    page.tap(Role::Button, "Take the new version").await?;
    becomes(page, &second, &host).await?;
    host.kill();
    page.reload().await?;
    is_wholly(page, &second, &host).await
}

/// Waits until the page is of a version, in every part.
async fn becomes(page: &Page, version: &Version, host: &Host) -> Result<()> {
    page.until("another version", async || {
        is_wholly(page, version, host).await.map(Some)
    })
    .await
}

/// Fails unless the page, its program and its style are of these versions.
async fn shows(page: &Page, names: [&str; 3]) -> Result<()> {
    let found = page.script_awaiting(SHOWN_AND_KEPT).await?;
    ensure!(
        found["shown"] == json!(names),
        "{} for {names:?}",
        found["shown"]
    );
    Ok(())
}

async fn a_cold_start_takes_what_waits(engine: Engine) -> Result<()> {
    let (first, second) = (Version::make("first")?, Version::make("second")?);
    let host = Host::start(first.path())?;
    let mut visitor = Visitor::at(engine, host.address()).await?;
    let page = visitor.page();
    page.is_kept_offline().await?;
    host.serve(second.path(), second.path(), Fault::None);
    ensure!(
        page.script_awaiting(UPDATE).await? == json!(true),
        "nothing waits"
    );
    for _ in 0..3 {
        page.reload().await?;
        shows(page, ["first"; 3]).await?;
    }
    visitor.come_again().await?;
    is_wholly(visitor.page(), &second, &host).await
}

#[tokio::test]
async fn no_version_is_taken_while_a_step_is_open() -> Result<()> {
    let (first, second) = (Version::make("first")?, Version::make("second")?);
    let host = Host::start(first.path())?;
    let visitor = Visitor::at(Engine::Chromium, host.address()).await?;
    let page = visitor.page();
    page.is_kept_offline().await?;
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 3")).await?;
    let job = page.job().await?;
    let reading = || containing("Counterbore depth: 12 o'clock");
    page.go(&format!("{job}/cylinder/1/counterbore")).await?;
    page.write(reading(), "0.4123").await?;

    host.serve(second.path(), second.path(), Fault::None);
    ensure!(
        page.script_awaiting(UPDATE).await? == json!(true),
        "nothing waits"
    );
    for place in ["cylinder/1/counterbore", "deck/1", "engine"] {
        page.go(&format!("{job}/{place}")).await?;
        page.says("It waits until you are out of the job.").await?;
        let offered = page.find_all(Role::Button, "Take the new version").await?;
        ensure!(offered.is_empty(), "offered at {place}");
    }
    page.go(&format!("{job}/cylinder/1/counterbore")).await?;
    page.reload().await?;
    shows(page, ["first"; 3]).await?;
    ensure!(page.value(reading()).await? == "0.4123");

    page.go("#/").await?;
    page.tap(Role::Button, "Take the new version").await?;
    becomes(page, &second, &host).await?;
    page.go(&format!("{job}/cylinder/1/counterbore")).await?;
    ensure!(page.value(reading()).await? == "0.4123");
    Ok(())
}

/// Takes one file out of what the browser keeps.
async fn lose(page: &Page, address: String) -> Result<()> {
    let script = format!(
        "const [name] = await caches.keys();
         return (await caches.open(name)).delete({});",
        json!(address)
    );
    let lost = page.script_awaiting(&script).await?;
    ensure!(lost == json!(true), "{address} was not kept");
    Ok(())
}

#[tokio::test]
async fn what_the_device_lost_is_never_mixed_with_another_version() -> Result<()> {
    let (first, second) = (Version::make("first")?, Version::make("second")?);
    let host = Host::start(first.path())?;
    let visitor = Visitor::at(Engine::Chromium, host.address()).await?;
    let page = visitor.page();
    page.is_kept_offline().await?;
    // The host still has this version: all is kept again.
    lose(page, host.address()).await?;
    page.reload().await?;
    becomes(page, &first, &host).await?;
    // It has another: a lost file of this one is missing rather than foreign.
    let style = first.files.iter().find(|file| file.url.ends_with(".css"));
    let style = name(style.context("a style sheet")?);
    lose(page, format!("{}{style}", host.address())).await?;
    host.serve(second.path(), first.path(), Fault::None);
    page.reload().await?;
    shows(page, ["first", "first", ""]).await?;
    // And where the page itself is lost, all of it comes from the host.
    lose(page, host.address()).await?;
    page.reload().await?;
    shows(page, ["second"; 3]).await?;
    Ok(())
}

mod chromium {
    use super::*;

    #[tokio::test]
    async fn two_hundred_broken_updates_break_nothing() -> Result<()> {
        always_whole(Engine::Chromium, FAULTS).await
    }

    #[tokio::test]
    async fn a_version_that_waits_is_taken_at_the_next_cold_start() -> Result<()> {
        a_cold_start_takes_what_waits(Engine::Chromium).await
    }
}

mod firefox {
    use super::*;

    #[tokio::test]
    async fn broken_updates_break_nothing() -> Result<()> {
        always_whole(Engine::Firefox, FAULTS_ELSEWHERE).await
    }

    #[tokio::test]
    async fn a_version_that_waits_is_taken_at_the_next_cold_start() -> Result<()> {
        a_cold_start_takes_what_waits(Engine::Firefox).await
    }
}

mod webkit {
    use super::*;

    #[tokio::test]
    async fn broken_updates_break_nothing() -> Result<()> {
        always_whole(Engine::WebKit, FAULTS_ELSEWHERE).await
    }

    #[tokio::test]
    async fn a_version_that_waits_is_taken_at_the_next_cold_start() -> Result<()> {
        a_cold_start_takes_what_waits(Engine::WebKit).await
    }
}
