//! The page in three families of browsers: kept on the device at the first
//! visit, there with the server dead, and what was typed still in both stores.
//!
//! Those of Chromium run with the check `browser`, the others with `engines`.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test says enough by failing"
)]

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Engine, Key, Page, Role, Setting, containing};
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

mod chromium {
    use super::*;

    #[tokio::test]
    async fn twenty_of_twenty_reloads_work_with_the_server_dead() -> Result<()> {
        twenty_of_twenty_with_the_server_dead(Engine::Chromium).await
    }
}

mod firefox {
    use super::*;

    #[tokio::test]
    async fn twenty_of_twenty_reloads_work_with_the_server_dead() -> Result<()> {
        twenty_of_twenty_with_the_server_dead(Engine::Firefox).await
    }
}

mod webkit {
    use super::*;

    #[tokio::test]
    async fn twenty_of_twenty_reloads_work_with_the_server_dead() -> Result<()> {
        twenty_of_twenty_with_the_server_dead(Engine::WebKit).await
    }
}
