//! The page in three families of browsers: kept on the device at the first
//! visit, there with the server dead, what was typed still in both stores; and no breach
//! of its content policy on any screen.
//!
//! Those of Chromium run with the check `browser`, the others with `engines`.

use std::cell::RefCell;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{
    Bench, Engine, Host, Key, Page, Role, Setting, Visitor, containing, dist_folder, places,
};
use serde_json::json;

/// Times that the page is loaded with the server dead.
const RELOADS: usize = 20;

/// A reading of the inch demo that is typed into.
const READING: &str = "Counterbore depth: 12 o'clock";

/// The job's slots in local storage and in IndexedDB, as one number of
/// letters each: 0 where one of the stores has lost it.
const KEPT: &str = "
    const answer = (request) => new Promise((yes, no) => {
        request.onsuccess = () => yes(request.result);
        request.onerror = () => no(request.error);
    });
    const id = location.hash.split('/')[2];
    const local = Object.entries(localStorage).filter(([key]) => key.includes(id));
    const base = await answer(indexedDB.open('coldseat'));
    const slots = base.transaction('slots').objectStore('slots');
    const keys = await answer(slots.getAllKeys());
    const values = await answer(slots.getAll());
    base.close();
    const durable = values.filter((_, at) => String(keys[at]).includes(id));
    const letters = (texts) => texts.reduce((sum, text) => sum + String(text).length, 0);
    return [letters(local.map(([, text]) => text)), letters(durable)];
";

async fn both_stores_hold_the_job(page: &Page) -> Result<()> {
    let kept = page.script_awaiting(KEPT).await?;
    for (at, store) in ["local storage", "IndexedDB"].into_iter().enumerate() {
        ensure!(
            kept[at].as_u64() > Some(100),
            "{store} has lost the job: {kept}"
        );
    }
    Ok(())
}

/// Types a reading and waits for the page's word that it lies on the medium.
async fn type_and_wait(page: &Page, text: &str) -> Result<()> {
    page.write(containing(READING), text).await?;
    page.press(Key::Enter).await?;
    page.until("saved", async || {
        let script = "return document.querySelector('.keeping').innerText";
        Ok((page.script(script, vec![]).await? == json!("saved")).then_some(()))
    })
    .await
}

async fn twenty_of_twenty_with_the_server_dead(engine: Engine) -> Result<()> {
    let mut bench = Bench::open_in(engine, Setting::default(), "").await?;
    bench.page().is_kept_offline().await?;
    bench.server.kill()?;
    bench.page().tap(Role::Button, containing("Demo 1")).await?;
    let page = bench.page();
    page.find(Role::Link, containing("Cylinder 3")).await?;
    let address = page.script("return location.hash", vec![]).await?;
    let id = address.as_str().and_then(|a| a.split('/').nth(2));
    let id = id.context("the job's key")?.to_owned();
    page.go(&format!("#/job/{id}/cylinder/1/counterbore"))
        .await?;
    for turn in 1..=RELOADS {
        let at = || format!("{engine:?}, reload {turn} of {RELOADS}");
        // Each reload finds what was typed after the one before.
        let typed = format!("0.4{turn:03}");
        type_and_wait(page, &typed).await.with_context(at)?;
        page.reload().await.with_context(at)?;
        page.is_kept_offline().await.with_context(at)?;
        let found = page.value(containing(READING)).await.with_context(at)?;
        ensure!(found == typed, "{}: {typed} became {found}", at());
        both_stores_hold_the_job(page).await.with_context(at)?;
    }
    let complaints = page.complaints().await?;
    ensure!(complaints.is_empty(), "{engine:?}: {complaints:?}");
    if engine == Engine::WebKit {
        return Ok(());
    }
    // And after the browser was closed, which drops all that is in memory.
    bench.close_browser();
    bench.open_browser().await?;
    let page = bench.page();
    page.go(&format!("#/job/{id}/cylinder/1/counterbore"))
        .await?;
    let found = page.value(containing(READING)).await?;
    ensure!(found == format!("0.4{RELOADS:03}"), "{found}");
    both_stores_hold_the_job(page).await
}

/// What a page can load that is not its own.
const FOREIGN: &str = "
    return performance.getEntriesByType('resource').map((entry) => entry.name)
        .filter((name) => !/^(data|blob):/.test(name)
            && new URL(name).origin !== location.origin);
";

/// A breach of each kind; whether one had an effect, and whether this browser
/// knows trusted types.
const BREACHES: &str = "
    const script = document.createElement('script');
    try { script.textContent = 'window.breached = 1'; document.head.append(script); } catch {}
    fetch('https://elsewhere.example/').catch(() => {});
    try { document.createElement('div').innerHTML = '<script>1</scr' + 'ipt>'; } catch {}
    return [window.breached ?? 0, Boolean(window.trustedTypes)];
";

/// Walks every screen and every step of both demo jobs, first from the host and
/// then from the device. The policy is reported to the host from the first byte
/// on, before any script of a test could listen.
async fn no_breach_over_both_jobs(engine: Engine) -> Result<()> {
    let host = Host::start(&dist_folder()?)?;
    let visitor = Visitor::at(engine, host.address()).await?;
    let page = visitor.page();
    page.is_kept_offline().await?;
    for (demo, cylinder) in [("Demo 1", 3), ("Demo 2", 6)] {
        page.go("#/").await?;
        page.tap(Role::Button, containing(demo)).await?;
        page.find(Role::Link, containing("Cylinder 1")).await?;
        let all = places(page, cylinder).await?;
        ensure!(all.len() > 30, "{all:?}");
        for place in &all {
            page.go(place).await?;
        }
        let foreign = page.script(FOREIGN, vec![]).await?;
        ensure!(foreign == json!([]), "{engine:?}: {foreign}");
        let complaints = page.complaints().await?;
        ensure!(complaints.is_empty(), "{engine:?}: {complaints:?}");
        page.reload().await?;
    }
    let reports = host.reports();
    ensure!(reports.is_empty(), "{engine:?}: {reports:?}");

    // Nothing was asked for but the page's own files.
    let files = xtask::precache::kept_files(&dist_folder()?)?;
    let own = |path: &String| {
        path == "/sw.js"
            || files
                .iter()
                .any(|file| *path == format!("/{}", file.url.trim_start_matches("./")))
    };
    let asked = host.asked();
    ensure!(asked.len() >= files.len(), "{asked:?}");
    let strange: Vec<_> = asked.iter().filter(|path| !own(path)).collect();
    ensure!(strange.is_empty(), "{engine:?} asked for {strange:?}");

    // All that would have been told, were it there.
    let tried = page.script(BREACHES, vec![]).await?;
    ensure!(tried == json!([0, true]), "{engine:?}: {tried}");
    let wanted = [
        "\"https://elsewhere.example/\"",
        "\"violated-directive\":\"require-trusted-types-for\"",
    ];
    let told = RefCell::new(String::new());
    page.until("the breaches to be told", async || {
        let mut told = told.borrow_mut();
        told.push_str(&host.reports().concat());
        Ok(wanted.iter().all(|word| told.contains(word)).then_some(()))
    })
    .await
    .with_context(|| format!("{engine:?}: {}", told.borrow()))
}

mod chromium {
    use super::*;

    #[tokio::test]
    async fn twenty_of_twenty_reloads_work_with_the_server_dead() -> Result<()> {
        twenty_of_twenty_with_the_server_dead(Engine::Chromium).await
    }

    #[tokio::test]
    async fn nothing_breaks_the_policy_over_both_demo_jobs() -> Result<()> {
        no_breach_over_both_jobs(Engine::Chromium).await
    }
}

mod firefox {
    use super::*;

    #[tokio::test]
    async fn twenty_of_twenty_reloads_work_with_the_server_dead() -> Result<()> {
        twenty_of_twenty_with_the_server_dead(Engine::Firefox).await
    }

    #[tokio::test]
    async fn nothing_breaks_the_policy_over_both_demo_jobs() -> Result<()> {
        no_breach_over_both_jobs(Engine::Firefox).await
    }
}

mod webkit {
    use super::*;

    #[tokio::test]
    async fn twenty_of_twenty_reloads_work_with_the_server_dead() -> Result<()> {
        twenty_of_twenty_with_the_server_dead(Engine::WebKit).await
    }

    #[tokio::test]
    async fn nothing_breaks_the_policy_over_both_demo_jobs() -> Result<()> {
        no_breach_over_both_jobs(Engine::WebKit).await
    }
}
