//! What must hold whatever the page shows: it starts clean under its content
//! policy, is kept on the device whole, never updates unasked, and can be
//! installed.

use std::fs;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Folder, Frames, Page, Role, Setting};
use serde_json::{Value, json};

const COPY: Setting = Setting {
    frames: Frames::Screen,
    size: coldseat_browser_tests::Size::Phone,
    theme: coldseat_browser_tests::Theme::Light,
    folder: Folder::Copy,
};

#[tokio::test]
async fn the_page_starts_without_a_complaint() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    bench.page().is_kept_offline().await?;
    assert_eq!(bench.page().complaints().await?, Vec::<String>::new());
    bench.page().picture("first-start").await?;
    // Again under the worker, which answers from the device now.
    bench.page().reload().await?;
    assert_eq!(bench.page().complaints().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_breach_of_the_policy_would_be_seen() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let script = "
        const tries = [
            (inline) => { inline.textContent = 'window.breached = true'; },
            (foreign) => { foreign.src = 'https://elsewhere.example/x.js'; },
        ].map((change) => {
            const script = document.createElement('script');
            try {
                change(script);
                document.head.append(script);
            } catch {
                return 'refused';
            }
            return 'taken';
        });
        const markup = document.createElement('div');
        try {
            markup.innerHTML = '<img src=x onerror=\"window.breached = true\">';
        } catch {
            tries.push('refused');
        }
        return [...tries, window.breached ?? false];
    ";
    let refused = json!(["refused", "refused", "refused", false]);
    assert_eq!(bench.page().script(script, vec![]).await?, refused);
    let complaints = bench.page().complaints().await?;
    assert!(
        complaints
            .iter()
            .any(|line| line.contains("content policy")),
        "{complaints:?}"
    );
    Ok(())
}

#[tokio::test]
async fn everything_in_the_page_is_kept_on_the_device() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    bench.page().is_kept_offline().await?;
    let kept = bench
        .page()
        .script_awaiting(
            "const [name] = await caches.keys();
             const requests = await (await caches.open(name)).keys();
             return requests.map((request) => request.url);",
        )
        .await?;
    let kept: Vec<&str> = kept
        .as_array()
        .unwrap()
        .iter()
        .filter_map(Value::as_str)
        .collect();
    let files = xtask::precache::kept_files(bench.folder())?;
    assert!(files.len() > 5, "{files:?}");
    for file in &files {
        let url = format!(
            "{}{}",
            bench.server.address(),
            file.url.trim_start_matches("./")
        );
        assert!(kept.contains(&url.as_str()), "{url} is not among {kept:?}");
    }
    assert_eq!(kept.len(), files.len());
    Ok(())
}

#[tokio::test]
async fn the_manifest_and_its_icons_make_it_installable() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    // The browser's own judgement of the manifest.
    let judged = bench
        .page()
        .devtools("Page.getAppManifest", json!({}))
        .await?;
    assert_eq!(judged["errors"], json!([]));
    let manifest: Value = serde_json::from_str(judged["data"].as_str().unwrap())?;
    assert_eq!(manifest["name"], "Coldseat");
    assert_eq!(manifest["start_url"], "./");
    assert_eq!(manifest["scope"], "./");
    assert_eq!(manifest["shortcuts"][0]["url"], "./#/drop");
    assert_eq!(manifest["shortcuts"][1]["url"], "./#/last");
    let installable = bench
        .page()
        .devtools("Page.getInstallabilityErrors", json!({}))
        .await?;
    assert_eq!(installable["installabilityErrors"], json!([]));

    let mut sizes = Vec::new();
    for icon in manifest["icons"].as_array().unwrap() {
        let source = icon["src"].as_str().unwrap();
        if icon["type"] == "image/png" {
            let size = png_size(&bench.folder().join(source))?;
            assert_eq!(icon["sizes"], format!("{}x{}", size.0, size.1), "{source}");
            sizes.push((size.0, icon["purpose"].as_str().unwrap().to_owned()));
        }
        let fetched = fetched(bench.page(), source).await?;
        assert_eq!(fetched["status"], 200, "{source}");
        assert_eq!(fetched["type"], icon["type"], "{source}");
    }
    for (size, purpose) in [(192, "any"), (512, "any"), (512, "maskable")] {
        assert!(
            sizes.contains(&(size, purpose.to_owned())),
            "{size} {purpose}"
        );
    }
    assert_eq!(
        png_size(&bench.folder().join("icons/apple-touch-180.png"))?,
        (180, 180)
    );
    Ok(())
}

#[tokio::test]
async fn a_missing_asset_is_never_answered_with_a_page() -> Result<()> {
    let mut bench = Bench::open(COPY).await?;
    bench.page().is_kept_offline().await?;
    let missing = fetched(bench.page(), "not-there.js").await?;
    assert_eq!(missing["status"], 404);
    assert_ne!(missing["type"], "text/html; charset=utf-8");
    // A host that answers everything with some page, status 200.
    fs::write(bench.folder().join("anything.html"), "<p>a page</p>")?;
    let page = fetched(bench.page(), "anything.html").await?;
    assert_eq!(page["status"], 404);
    bench.server.kill()?;
    let dead = fetched(bench.page(), "not-there.js").await;
    assert!(dead.is_err(), "{dead:?}");
    Ok(())
}

#[tokio::test]
async fn without_a_network_a_wrong_address_leads_home() -> Result<()> {
    let mut bench = Bench::open(Setting::default()).await?;
    bench.page().is_kept_offline().await?;
    bench.server.kill()?;
    bench.page().go("some/old/bookmark").await?;
    let place = bench
        .page()
        .script("return location.pathname", vec![])
        .await?;
    assert_eq!(place, json!("/"));
    Ok(())
}

#[tokio::test]
async fn a_new_version_is_offered_and_not_taken() -> Result<()> {
    let bench = Bench::open(COPY).await?;
    let page = bench.page();
    page.is_kept_offline().await?;
    mark(&bench, "second")?;
    bench.release_change()?;

    page.reload().await?;
    wait_for_waiting(page).await?;
    page.reload().await?;
    page.reload().await?;
    assert_eq!(
        marked(page).await?,
        Value::Null,
        "taken without being asked"
    );

    page.says("A new version of this page is ready.").await?;
    page.tap(Role::Button, "Take the new version").await?;
    page.until("the second version", async || {
        Ok((marked(page).await? == json!("second")).then_some(()))
    })
    .await?;
    let caches = page
        .script_awaiting("return (await caches.keys()).length")
        .await?;
    assert_eq!(caches, json!(1), "the old version is still kept");
    Ok(())
}

#[tokio::test]
async fn a_half_fetched_version_is_not_installed() -> Result<()> {
    let mut bench = Bench::open(COPY).await?;
    bench.page().is_kept_offline().await?;
    mark(&bench, "second")?;
    bench.release_change()?;
    // After the list was written: as if the host still had an old file.
    mark(&bench, "third")?;

    let outcome = bench
        .page()
        .script_awaiting(
            "const registration = await navigator.serviceWorker.getRegistration();
             const found = new Promise((done) => registration.addEventListener('updatefound', done));
             await registration.update().catch(() => {});
             await found;
             const worker = registration.installing;
             while (worker && worker.state === 'installing')
                 await new Promise((done) => setTimeout(done, 50));
             return [worker?.state ?? 'redundant', registration.waiting === null,
                 (await caches.keys()).length];",
        )
        .await?;
    assert_eq!(outcome, json!(["redundant", true, 1]));
    bench.server.kill()?;
    bench.page().reload().await?;
    assert_eq!(marked(bench.page()).await?, Value::Null);
    Ok(())
}

#[tokio::test]
async fn the_page_works_from_a_folder_of_a_host() -> Result<()> {
    let mut bench = Bench::open(COPY).await?;
    let inner = bench.folder().join("in/a/folder");
    // From where it was built: the copy would take itself in.
    xtask::page::copy_folder(&coldseat_browser_tests::dist_folder()?, &inner)?;

    let page = bench.page();
    page.go("in/a/folder/").await?;
    let scope = "return new URL((await navigator.serviceWorker.ready).scope).pathname";
    page.until("its own worker", async || {
        Ok((page.script_awaiting(scope).await? == json!("/in/a/folder/")).then_some(()))
    })
    .await?;
    page.is_kept_offline().await?;
    assert_eq!(page.complaints().await?, Vec::<String>::new());
    // Both copies keep their own files.
    let caches = page
        .script_awaiting("return (await caches.keys()).length")
        .await?;
    assert_eq!(caches, json!(2));
    bench.server.kill()?;
    bench.page().reload().await?;
    bench.page().go("in/a/folder/").await?;
    Ok(())
}

#[tokio::test]
async fn a_program_that_cannot_start_says_so_and_gives_the_data_out() -> Result<()> {
    let bench = Bench::open(COPY).await?;
    let page = bench.page();
    page.is_kept_offline().await?;
    page.script("localStorage.setItem('coldseat test', '4.2600')", vec![])
        .await?;
    page.script_awaiting(
        "for (const name of await caches.keys()) await caches.delete(name);
         await (await navigator.serviceWorker.getRegistration()).unregister();",
    )
    .await?;
    for entry in fs::read_dir(bench.folder())? {
        let path = entry?.path();
        if path.extension().is_some_and(|kind| kind == "wasm") {
            fs::write(path, b"not a program")?;
        }
    }
    let reloaded = page.reload().await.map_err(|error| error.to_string());
    assert!(
        reloaded
            .as_ref()
            .is_err_and(|text| text.contains("could not start")),
        "{reloaded:?}"
    );
    page.script(
        "window.rescued = null;
         const make = URL.createObjectURL;
         URL.createObjectURL = (blob) => { window.rescued = blob; return make(blob); };",
        vec![],
    )
    .await?;
    page.tap(Role::Button, "Save my data to a file").await?;
    let rescued = page
        .script_awaiting(
            "while (!window.rescued) await new Promise((done) => setTimeout(done, 10));
             return await window.rescued.text()",
        )
        .await?;
    let rescued: Value = serde_json::from_str(rescued.as_str().unwrap())?;
    assert_eq!(rescued["kept"]["coldseat test"], "4.2600");
    page.find(Role::Button, "Try again").await?;
    page.picture("could-not-start").await?;
    Ok(())
}

#[tokio::test]
async fn a_program_that_stops_says_so() -> Result<()> {
    let bench = Bench::open(COPY).await?;
    let page = bench.page();
    // From files of the page's own host: of a foreign script's error a browser
    // tells the page nothing.
    let run = async |name: &str, code: &str| {
        // A module's own error is a rejection; one in a timer is the window's.
        let code = format!("setTimeout(() => {{ {code} }});");
        fs::write(bench.folder().join(name), code)?;
        let script = "import(new URL(arguments[0], document.baseURI).href);";
        page.script(script, vec![json!(name)]).await
    };
    run("other.js", "throw new Error('not the program')").await?;
    page.until("the other error", async || {
        let complaints = page.complaints().await?;
        let told = complaints
            .iter()
            .any(|line| line.contains("not the program"));
        Ok(told.then_some(()))
    })
    .await?;
    let stopped = page.find_all(Role::Heading, "Coldseat stopped").await?;
    assert!(stopped.is_empty(), "an error of another kind stops nothing");

    run(
        "trap.js",
        "throw new WebAssembly.RuntimeError('unreachable')",
    )
    .await?;
    page.find(Role::Heading, "Coldseat stopped").await?;
    page.find(Role::Button, "Save my data to a file").await?;
    page.picture("stopped").await?;
    page.tap(Role::Button, "Try again").await?;
    page.gone(Role::Heading, "Coldseat stopped").await?;
    page.stands().await
}

/// Status and content type of an address fetched by the page.
async fn fetched(page: &Page, address: &str) -> Result<Value> {
    page.script_awaiting(&format!(
        "const response = await fetch({address:?}, {{ cache: 'no-store' }});
         return {{ status: response.status, type: response.headers.get('content-type') }};"
    ))
    .await
}

/// Puts a mark into the served page.
fn mark(bench: &Bench, mark: &str) -> Result<()> {
    let path = bench.folder().join("index.html");
    let text = fs::read_to_string(&path)?;
    let marked = text.replacen(
        "<head>",
        &format!("<head><meta name=\"coldseat-version\" content=\"{mark}\">"),
        1,
    );
    ensure!(marked != text, "the page has no <head>");
    Ok(fs::write(path, marked)?)
}

/// The mark in the page that is shown.
async fn marked(page: &Page) -> Result<Value> {
    let script = "return document.querySelector('meta[name=coldseat-version]')?.content ?? null";
    page.script(script, vec![]).await
}

async fn wait_for_waiting(page: &Page) -> Result<()> {
    let script = "return (await navigator.serviceWorker.getRegistration())?.waiting != null";
    page.until("the new version to wait", async || {
        Ok((page.script_awaiting(script).await? == json!(true)).then_some(()))
    })
    .await
}

/// Width and height in a PNG file's header.
fn png_size(path: &std::path::Path) -> Result<(u32, u32)> {
    let bytes = fs::read(path).with_context(|| format!("{}", path.display()))?;
    ensure!(
        bytes.starts_with(b"\x89PNG\r\n\x1a\n"),
        "{} is no PNG",
        path.display()
    );
    let number = |at: usize| u32::from_be_bytes(bytes[at..at + 4].try_into().unwrap());
    Ok((number(16), number(20)))
}
