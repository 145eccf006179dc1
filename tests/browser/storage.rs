//! What is typed is not lost: both stores, a browser that forgets or dies, a
//! full store, a blocked one.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};
use serde_json::json;

use crate::desk::{READING, at_reading, demo, durable, keeping, saved};

/// Times that the browser is killed; 100 by hand, see DEVELOPERS.md.
const KILLS: usize = 8;

/// Types and waits for the page's word that it lies on the medium.
async fn type_and_wait(page: &Page, text: &str) -> Result<()> {
    page.write(containing(READING), text).await?;
    page.press(Key::Enter).await?;
    saved(page).await
}

/// Keys and lengths (UTF-16) in local storage that begin so.
async fn local(page: &Page, prefix: &str) -> Result<Vec<(String, u64)>> {
    let script = "return Object.entries(localStorage)
        .filter(([key]) => key.startsWith(arguments[0]))
        .map(([key, value]) => [key, key.length + value.length]).sort()";
    let found = page.script(script, vec![json!(prefix)]).await?;
    Ok(serde_json::from_value(found)?)
}

#[tokio::test]
async fn saved_means_both_stores_have_it_in_2500_bytes() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    page.go(&at_reading(&id)).await?;
    for text in ["0.3001", "0.3002", "0.3003"] {
        type_and_wait(page, text).await?;
    }
    page.picture("saved").await?;
    let there = local(page, &format!("coldseat/job/{id}")).await?;
    // The older slot has gone: the second store holds a copy.
    ensure!(there.len() == 1, "{there:?}");
    ensure!(2 * there[0].1 <= 2500, "{} bytes", 2 * there[0].1);
    let same = durable(
        page,
        &format!(
            "const there = await answer(slots.get('coldseat/job/{id}'));
            const key = Object.keys(localStorage).find((k) => k.includes('{id}'));
            return there === localStorage[key];"
        ),
    )
    .await?;
    assert_eq!(same, json!(true), "both stores hold the same");
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn the_newer_copy_counts_whichever_store_has_it() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    page.go(&at_reading(&id)).await?;
    type_and_wait(page, "0.3001").await?;
    let script = "window.name = JSON.stringify(Object.entries(localStorage))";
    page.script(script, vec![]).await?;
    type_and_wait(page, "0.3077").await?;
    // The browser forgets: local storage as it was before the last change.
    let script = "localStorage.clear();
        for (const [key, value] of JSON.parse(window.name)) localStorage[key] = value;";
    page.script(script, vec![]).await?;
    page.reload().await?;
    page.says("The newer copy from the second store was used")
        .await?;
    page.tap(Role::Button, "Understood").await?;
    assert_eq!(page.value(containing(READING)).await?, "0.3077");
    // All of local storage is gone: the job is still listed, and opens.
    page.script("localStorage.clear()", vec![]).await?;
    page.go("#/").await?;
    page.reload().await?;
    // And is there again by itself, before anybody opens it.
    page.until("local storage to be filled again", async || {
        let there = local(page, &format!("coldseat/job/{id}")).await?;
        Ok((there.len() == 1).then_some(()))
    })
    .await?;
    page.tap(Role::Link, containing("Oxbow five")).await?;
    page.find(Role::Link, containing("Cylinder 3")).await?;
    page.go(&at_reading(&id)).await?;
    assert_eq!(page.value(containing(READING)).await?, "0.3077");
    type_and_wait(page, "0.3078").await?;
    // The other way: the second store is gone, local storage has all.
    page.go("#/").await?;
    durable(
        page,
        "await answer(heads.clear()); await answer(slots.clear());",
    )
    .await?;
    page.reload().await?;
    page.until("the second store to be filled again", async || {
        let count = durable(page, "return await answer(slots.count());").await?;
        Ok((count == json!(1)).then_some(()))
    })
    .await?;
    page.go(&at_reading(&id)).await?;
    assert_eq!(page.value(containing(READING)).await?, "0.3078");
    Ok(())
}

#[tokio::test]
async fn a_job_that_does_not_fit_local_storage_moves_to_where_there_is_room() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    page.go(&at_reading(&id)).await?;
    type_and_wait(page, "0.3001").await?;
    // Filled to the last letter.
    let fill = "let text = 'x'.repeat(1 << 20);
        for (let i = 0; text.length > 0;) {
            try { localStorage.setItem(`filler${i}`, text); i += 1; }
            catch { text = text.slice(0, text.length >> 1); }
        }";
    page.script(fill, vec![]).await?;
    page.write(containing(READING), "0.3055").await?;
    page.press(Key::Enter).await?;
    keeping(page, &["saved in one of two stores"]).await?;
    page.says("The quick store of this browser is full").await?;
    // The older slot has left its room; the newer one may be some letters longer.
    let spare = "for (const [k, v] of Object.entries(localStorage))
        if (k.startsWith('filler') && v.length <= 1024) localStorage.removeItem(k)";
    page.script(spare, vec![]).await?;
    page.reload().await?;
    assert_eq!(page.value(containing(READING)).await?, "0.3055");
    page.go("#/").await?;
    page.find(Role::Link, containing("Oxbow five")).await?;
    ensure!(!page.text().await?.contains("is full"));
    // The job is back by itself at the start.
    page.until("the job in local storage", async || {
        let there = local(page, &format!("coldseat/job/{id}")).await?;
        Ok((there.len() == 1).then_some(()))
    })
    .await?;
    page.script("for (const k of Object.keys(localStorage)) if (k.startsWith('filler')) localStorage.removeItem(k)", vec![]).await?;
    page.go(&at_reading(&id)).await?;
    type_and_wait(page, "0.3056").await?;
    ensure!(local(page, &format!("coldseat/job/{id}")).await?.len() == 1);
    Ok(())
}

/// What a browser does that has no storage for this page.
const BLOCKED: &str = "
    Object.defineProperty(window, 'localStorage', { get() { throw new Error('blocked'); } });
    Object.defineProperty(window, 'indexedDB', { value: null });";

/// A quota that is reached in mid-write: the first writes pass, then none.
const FULL: &str = "
    const put = IDBObjectStore.prototype.put;
    let left = 16;
    IDBObjectStore.prototype.put = function (...rest) {
        left -= 1;
        if (left < 0) throw new DOMException('quota', 'QuotaExceededError');
        return put.apply(this, rest);
    };
    const set = Storage.prototype.setItem;
    Storage.prototype.setItem = function (...rest) {
        left -= 1;
        if (left < 0) throw new DOMException('quota', 'QuotaExceededError');
        return set.apply(this, rest);
    };";

async fn with_fault(bench: &Bench, source: &str) -> Result<()> {
    bench
        .page()
        .devtools(
            "Page.addScriptToEvaluateOnNewDocument",
            json!({ "source": source }),
        )
        .await?;
    bench.page().reload().await
}

#[tokio::test]
async fn without_any_store_work_goes_on_and_a_file_is_offered() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    with_fault(&bench, BLOCKED).await?;
    let page = bench.page();
    page.says("does not let the page store anything").await?;
    let id = demo(page).await?;
    page.go(&at_reading(&id)).await?;
    page.write(containing(READING), "0.3021").await?;
    page.press(Key::Enter).await?;
    keeping(page, &["on the screen only"]).await?;
    page.find(Role::Button, containing("Save to a file"))
        .await?;
    assert_eq!(page.value(containing(READING)).await?, "0.3021");
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn a_quota_reached_in_mid_write_is_told_and_what_was_saved_is_whole() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    with_fault(&bench, FULL).await?;
    let page = bench.page();
    let id = demo(page).await?;
    saved(page).await?;
    page.go(&at_reading(&id)).await?;
    let mut typed = Vec::new();
    let mut last_saved = None;
    for n in 0..20 {
        typed.push(format!("0.30{n:02}"));
        page.write(containing(READING), &typed[n]).await?;
        page.press(Key::Enter).await?;
        let word = page
            .until("an answer of the stores", async || {
                let script = "return document.querySelector('.keeping').innerText";
                let now = page.script(script, vec![]).await?;
                let now = now.as_str().unwrap_or_default().to_owned();
                Ok((!now.starts_with("saving")).then_some(now))
            })
            .await?;
        match word.as_str() {
            "saved" => last_saved = Some(n),
            "on the screen only" => break,
            _ => {}
        }
    }
    page.says("device's storage is full").await?;
    page.find(Role::Button, containing("Save to a file"))
        .await?;
    ensure!(typed.len() < 20, "the quota was never reached");
    // After the page is gone: what was called saved is there, whole, or newer.
    page.reload().await?;
    let value = page.value(containing(READING)).await?;
    let last_saved = last_saved.context("nothing was saved before the quota")?;
    ensure!(
        typed[last_saved..].contains(&value),
        "{value} for {}",
        typed[last_saved]
    );
    Ok(())
}

#[tokio::test]
async fn an_edit_in_one_tab_appears_in_the_other_and_none_is_lost() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    saved(page).await?;
    page.go(&at_reading(&id)).await?;
    page.open_tab().await?;
    page.go(&at_reading(&id)).await?;
    let other = "Counterbore depth: 6 o'clock";
    page.write(containing(other), "0.2066").await?;
    page.press(Key::Enter).await?;
    saved(page).await?;
    // It appears in the first tab, by itself.
    page.turn_to(0).await?;
    page.until("the other tab's reading", async || {
        Ok((page.value(containing(other)).await? == "0.2066").then_some(()))
    })
    .await?;
    type_and_wait(page, "0.2044").await?;
    page.turn_to(1).await?;
    page.until("the first tab's reading", async || {
        Ok((page.value(containing(READING)).await? == "0.2044").then_some(()))
    })
    .await?;
    // A tab that does not hear of the other for a while loses nothing either.
    let deaf = "for (const what of ['storage', 'visibilitychange'])
        window.addEventListener(what, (e) => e.stopImmediatePropagation(), true);";
    page.devtools(
        "Page.addScriptToEvaluateOnNewDocument",
        json!({ "source": deaf }),
    )
    .await?;
    page.reload().await?;
    page.turn_to(0).await?;
    type_and_wait(page, "0.2055").await?;
    page.turn_to(1).await?;
    assert_eq!(page.value(containing(READING)).await?, "0.2044", "deaf");
    page.write(containing(other), "0.2077").await?;
    page.press(Key::Enter).await?;
    saved(page).await?;
    page.reload().await?;
    assert_eq!(page.value(containing(READING)).await?, "0.2055");
    assert_eq!(page.value(containing(other)).await?, "0.2077");
    ensure!(!page.text().await?.contains("Two values in one place"));
    Ok(())
}

#[tokio::test]
async fn undo_and_redo_reach_over_the_job_and_over_a_reload() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    page.go(&at_reading(&id)).await?;
    let before = page.value(containing(READING)).await?;
    type_and_wait(page, "0.2011").await?;
    page.go(&format!("#/job/{id}/cylinder/4/counterbore"))
        .await?;
    page.tap(Role::Button, "Put no sleeve in this cylinder")
        .await?;
    saved(page).await?;
    page.reload().await?;
    // The mark of another step first, then the reading, on another screen.
    page.find(Role::Button, containing("gets a sleeve after all"))
        .await?;
    page.menu().await?;
    page.tap(Role::Button, "Undo").await?;
    page.find(Role::Button, "Put no sleeve in this cylinder")
        .await?;
    page.menu().await?;
    page.tap(Role::Button, "Undo").await?;
    saved(page).await?;
    page.go(&at_reading(&id)).await?;
    assert_eq!(page.value(containing(READING)).await?, before);
    page.reload().await?;
    page.menu().await?;
    page.tap(Role::Button, "Redo").await?;
    page.until("the reading to come back", async || {
        Ok((page.value(containing(READING)).await? == "0.2011").then_some(()))
    })
    .await?;
    page.picture("undo-redo").await?;
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn a_clock_that_jumps_back_loses_nothing() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    page.go(&at_reading(&id)).await?;
    type_and_wait(page, "0.2031").await?;
    // A year back, from the next start on.
    let back = "const now = Date.now; Date.now = () => now() - 3.2e10;";
    page.devtools(
        "Page.addScriptToEvaluateOnNewDocument",
        json!({ "source": back }),
    )
    .await?;
    page.reload().await?;
    assert_eq!(page.value(containing(READING)).await?, "0.2031");
    type_and_wait(page, "0.2032").await?;
    type_and_wait(page, "0.2031").await?;
    page.reload().await?;
    assert_eq!(page.value(containing(READING)).await?, "0.2031");
    page.menu().await?;
    page.tap(Role::Button, "Undo").await?;
    page.until("the reading before", async || {
        Ok((page.value(containing(READING)).await? == "0.2032").then_some(()))
    })
    .await?;
    saved(page).await?;
    page.reload().await?;
    assert_eq!(page.value(containing(READING)).await?, "0.2032");
    ensure!(!page.text().await?.contains("Two values in one place"));
    Ok(())
}

#[tokio::test]
async fn a_browser_killed_right_after_saved_loses_nothing() -> Result<()> {
    let times = std::env::var("COLDSEAT_KILLS").map_or(Ok(KILLS), |n| n.parse())?;
    let mut bench = Bench::open(Setting::default()).await?;
    let id = demo(bench.page()).await?;
    for round in 0..times {
        bench.page().go(&at_reading(&id)).await?;
        let text = format!("0.3{round:03}");
        type_and_wait(bench.page(), &text).await?;
        bench.kill_browser()?;
        bench.open_browser().await?;
        bench.page().go(&at_reading(&id)).await?;
        let found = bench
            .page()
            .until("what was saved", async || {
                let value = bench.page().value(containing(READING)).await?;
                Ok((value == text).then_some(value))
            })
            .await;
        ensure!(found.is_ok(), "round {round}: {text} is lost");
    }
    bench.page().go("#/").await?;
    bench
        .page()
        .find(Role::Link, containing("Oxbow five"))
        .await?;
    ensure!(
        !bench.page().text().await?.contains("could not be read"),
        "something is torn"
    );
    Ok(())
}
