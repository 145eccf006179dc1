//! Saved means saved, in the finished page: what was found to break the promise,
//! each by name, and many tabs, files and kills besides. The same is tried by
//! chance in `tests/simulator`, over the same code.

use std::time::Duration;

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};
use coldseat_core::document::edit::{History, Stay};
use coldseat_core::document::pen::Pen;
use coldseat_core::document::{Body, Restored, restore, write};
use coldseat_core::job::ledger::Writer;
use coldseat_core::job::{Entry, Field, Place};
use coldseat_core::quantity::parse::Unit;
use serde_json::json;

use crate::desk::{self, READING, at_reading, durable, file, keep_files, keeping, saved};

/// Another reading than the one that is typed into.
pub(crate) const OTHER: &str = "Counterbore depth: 6 o'clock";
const PLACE: Place = Place::of_cylinder(1, Field::CounterboreDepth, 0);

/// Opens the inch demo at a step with readings; returns its key.
pub(crate) async fn demo(page: &Page) -> Result<String> {
    let id = desk::demo(page).await?;
    page.go(&at_reading(&id)).await?;
    saved(page).await?;
    Ok(id)
}

pub(crate) async fn type_into(page: &Page, label: &str, text: &str) -> Result<()> {
    page.write(containing(label), text).await?;
    page.press(Key::Enter).await?;
    saved(page).await
}

/// Before anything of the page runs, from the next load on.
async fn beforehand(page: &Page, source: &str) -> Result<()> {
    let source = json!({ "source": source });
    page.devtools("Page.addScriptToEvaluateOnNewDocument", source)
        .await?;
    page.reload().await
}

/// Local storage, filled to the last letter.
const FILL: &str = "let text = 'x'.repeat(1 << 20);
    for (let i = 0; text.length > 0;) {
        try { localStorage.setItem(`filler${i}`, text); i += 1; }
        catch { text = text.slice(0, text.length >> 1); }
    }";

pub(crate) async fn give(page: &Page, text: &str) -> Result<()> {
    let script = "const files = new DataTransfer();
        files.items.add(new File([arguments[0]], 'jobs.txt', { type: 'text/plain' }));
        const input = document.getElementById('import-file');
        input.files = files.files;
        input.dispatchEvent(new Event('change', { bubbles: true }));";
    page.script(script, vec![json!(text)]).await?;
    Ok(())
}

/// The job in a file as another device would have changed it.
pub(crate) fn changed_elsewhere(text: &str, reading: &str, at: u64, device: u32) -> String {
    let Restored::Valid(mut document) = restore(text) else {
        panic!("the file does not read");
    };
    let Body::Job(job) = &mut document.body else {
        panic!("no job");
    };
    let mut history = History::of(&**job);
    job.entries.put(PLACE, Entry::new(reading, Unit::Inch, at));
    let mut pen = Pen::new(Writer::of(device, device));
    history.note(&mut **job, &mut pen, at, Stay::New);
    write(&document)
}

pub(crate) async fn quiet(page: &Page) -> Result<()> {
    let text = page.text().await?;
    ensure!(!text.contains("Two values in one place"), "a false dispute");
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn with_a_full_local_storage_a_new_job_is_listed_opened_and_in_save_all() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.script(FILL, vec![]).await?;
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 3")).await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/1/counterbore")).await?;
    page.write(containing(READING), "0.3044").await?;
    page.press(Key::Enter).await?;
    keeping(page, &["saved in one of two stores"]).await?;
    page.go("#/").await?;
    page.find(Role::Link, containing("Oxbow five")).await?;
    keep_files(page).await?;
    page.go("#/files").await?;
    page.tap(Role::Button, "Save all jobs to a file").await?;
    let (_, all) = file(page).await?;
    ensure!(all.lines().count() == 2, "{} lines", all.lines().count());
    // Another job, then this one by its address.
    page.go("#/").await?;
    page.tap(Role::Button, containing("Demo 2")).await?;
    page.find(Role::Link, containing("Cylinder 7")).await?;
    page.go(&format!("{job}/cylinder/1/counterbore")).await?;
    page.until("the reading", async || {
        Ok((page.value(containing(READING)).await? == "0.3044").then_some(()))
    })
    .await?;
    quiet(page).await
}

/// A gauge of the shop's settings.
pub(crate) const GAUGE: &str = "Counterbore depth (gauge)";

#[tokio::test]
async fn settings_outlive_a_kill_an_emptied_store_and_another_tab() -> Result<()> {
    let mut bench = Bench::open(Setting::default()).await?;
    bench.page().go("#/settings").await?;
    type_into(bench.page(), GAUGE, "0.0007").await?;
    bench.kill_browser()?;
    bench.open_browser().await?;
    let page = bench.page();
    page.go("#/settings").await?;
    shows(page, GAUGE, "0.0007").await?;
    // Local storage emptied: the second store has them, and nothing overwrites it.
    page.script("localStorage.clear()", vec![]).await?;
    page.reload().await?;
    page.go("#/settings").await?;
    shows(page, GAUGE, "0.0007").await?;
    // Two tabs, each another setting.
    page.open_tab().await?;
    page.go("#/settings").await?;
    shows(page, GAUGE, "0.0007").await?;
    type_into(page, "Bore diameter", "0.00009").await?;
    page.turn_to(0).await?;
    type_into(page, GAUGE, "0.0008").await?;
    shows(page, "Bore diameter", "0.00009").await?;
    page.turn_to(1).await?;
    shows(page, GAUGE, "0.0008").await?;
    page.reload().await?;
    shows(page, GAUGE, "0.0008").await?;
    shows(page, "Bore diameter", "0.00009").await?;
    // In "Save all", and back on a device that has none.
    keep_files(page).await?;
    page.go("#/files").await?;
    page.tap(Role::Button, "Save all jobs to a file").await?;
    let (_, all) = file(page).await?;
    let other = Bench::open(Setting::default()).await?;
    other.page().go("#/files").await?;
    give(other.page(), &all).await?;
    other.page().says("Settings").await?;
    other.page().tap(Role::Button, "Take these changes").await?;
    other.page().go("#/settings").await?;
    shows(other.page(), GAUGE, "0.0008").await?;
    quiet(other.page()).await
}

pub(crate) async fn shows(page: &Page, label: &str, text: &str) -> Result<()> {
    page.until(&format!("{text} at {label}"), async || {
        Ok((page.value(containing(label)).await? == text).then_some(()))
    })
    .await
}

#[tokio::test]
async fn the_screen_shows_what_is_stored_where_two_devices_typed_the_same() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    page.go(&format!("#/job/{id}/record")).await?;
    keep_files(page).await?;
    page.tap(Role::Button, "Save to a file").await?;
    let (_, out) = file(page).await?;
    page.go(&at_reading(&id)).await?;
    type_into(page, READING, "0.3100").await?;
    page.go("#/files").await?;
    give(
        page,
        &changed_elsewhere(&out, "0.3100", 1_800_000_000_000, 9),
    )
    .await?;
    page.tap(Role::Button, "Take these changes").await?;
    page.go(&at_reading(&id)).await?;
    shows(page, READING, "0.3100").await?;
    // By hand, with all of it marked: the driver's own clearing is no typing.
    let clears = "const input = document.querySelectorAll('[data-place]')[0];
        input.focus(); input.select(); document.execCommand('delete');";
    page.script(clears, vec![]).await?;
    tokio::time::sleep(Duration::from_millis(300)).await;
    saved(page).await?;
    ensure!(page.value(containing(READING)).await?.is_empty());
    page.reload().await?;
    page.menu().await?;
    page.find(Role::Button, "Undo").await?;
    ensure!(
        page.value(containing(READING)).await?.is_empty(),
        "it is back"
    );
    quiet(page).await
}

#[tokio::test]
async fn a_backup_counts_when_it_was_shared_or_written() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page).await?;
    // A share sheet that is closed.
    let closes = "navigator.canShare = () => true;
        navigator.share = () => Promise.reject(new DOMException('closed', 'AbortError'));";
    page.script(closes, vec![]).await?;
    page.go("#/files").await?;
    page.says("No backup").await?;
    page.tap(Role::Button, "Save all jobs to a file").await?;
    tokio::time::sleep(Duration::from_millis(500)).await;
    page.says("No backup").await?;
    page.script("navigator.share = () => Promise.resolve()", vec![])
        .await?;
    page.tap(Role::Button, "Save all jobs to a file").await?;
    page.says("Last backup").await?;
    quiet(page).await
}

#[tokio::test]
async fn an_import_into_a_job_another_tab_edits_lies_in_both_stores() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    keep_files(page).await?;
    page.go(&format!("#/job/{id}/record")).await?;
    page.tap(Role::Button, "Save to a file").await?;
    let (_, out) = file(page).await?;
    page.go("#/files").await?;
    give(
        page,
        &changed_elsewhere(&out, "0.3222", 1_800_000_000_000, 9),
    )
    .await?;
    page.says("joined with the one here").await?;
    page.open_tab().await?;
    page.go(&at_reading(&id)).await?;
    type_into(page, OTHER, "0.2111").await?;
    page.turn_to(0).await?;
    page.tap(Role::Button, "Take these changes").await?;
    saved(page).await?;
    both_stores_hold(page, &id).await?;
    page.go(&at_reading(&id)).await?;
    shows(page, READING, "0.3222").await?;
    shows(page, OTHER, "0.2111").await?;
    quiet(page).await
}

/// Both stores hold the same slot of a job.
async fn both_stores_hold(page: &Page, id: &str) -> Result<()> {
    page.until("both stores to hold the same", async || {
        let script = format!(
            "const there = await answer(slots.get('coldseat/job/{id}'));
             const here = Object.keys(localStorage).filter((k) => k.includes('job/{id}'))
                .map((k) => localStorage[k]);
             return here.includes(there);"
        );
        Ok((durable(page, &script).await? == json!(true)).then_some(()))
    })
    .await
}

#[tokio::test]
async fn a_damaged_slot_of_the_second_store_is_written_over_and_kept_aside() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    let spoil = format!("await answer(slots.put('2scribble', 'coldseat/job/{id}'));");
    durable(page, &spoil).await?;
    page.reload().await?;
    type_into(page, READING, "0.3333").await?;
    both_stores_hold(page, &id).await?;
    page.script("localStorage.removeItem('none')", vec![])
        .await?;
    page.go("#/").await?;
    page.says("could not be read").await?;
    Ok(())
}

#[tokio::test]
async fn a_clock_that_moves_makes_no_time_in_the_bath_and_both_are_offered() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let moves = "const now = Date.now; window.moved = 0;
        Date.now = () => now() + window.moved;";
    beforehand(page, moves).await?;
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/2/chill")).await?;
    for (moved, wanted) in [(3_600_000, 0..60), (-3_600_000, 1..60)] {
        page.script("window.moved = 0", vec![]).await?;
        page.tap(Role::Button, containing("Start the timer"))
            .await?;
        page.says("to go").await?;
        tokio::time::sleep(Duration::from_millis(2200)).await;
        page.script("window.moved = arguments[0]", vec![json!(moved)])
            .await?;
        page.says("The clock of this device moved by").await?;
        ensure!(!page.text().await?.contains("time is up"), "{moved}");
        let both = page
            .find_all(Role::Button, containing("Stop, keep the time"))
            .await?;
        ensure!(both.len() == 2, "{} times are offered", both.len());
        // The time of the steady clock: the smaller after an hour forward, the
        // larger after an hour back.
        let which = usize::from(moved < 0);
        both[which].tap().await?;
        let kept: i32 = page.value(containing("Time in the bath")).await?.parse()?;
        ensure!(wanted.contains(&kept), "kept {kept} s after {moved}");
    }
    Ok(())
}

#[tokio::test]
async fn a_job_deleted_in_another_tab_is_said_to_be_and_can_be_kept() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    page.open_tab().await?;
    page.go(&format!("#/job/{id}/record")).await?;
    page.tap(Role::Button, containing("into the bin")).await?;
    page.go("#/files").await?;
    page.tap(Role::Button, "Empty the bin").await?;
    page.tap(Role::Button, "Yes, delete them").await?;
    page.until("both stores to be empty", async || {
        let count = durable(page, "return await answer(slots.count());").await?;
        Ok((count == json!(0)).then_some(()))
    })
    .await?;
    page.turn_to(0).await?;
    page.says("deleted in another tab").await?;
    page.tap(Role::Button, "Keep it after all").await?;
    saved(page).await?;
    both_stores_hold(page, &id).await?;
    Ok(())
}

#[tokio::test]
async fn a_second_store_that_does_not_answer_is_said_to_and_not_waited_for() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    // Opened and never answered, as where another page holds it.
    let silent = "IDBFactory.prototype.open = () => new EventTarget();";
    beforehand(page, silent).await?;
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 3")).await?;
    keeping(page, &["stored, not yet sure"]).await?;
    page.says("does not answer").await?;
    Ok(())
}

#[tokio::test]
async fn a_page_that_cannot_be_kept_says_so_and_stores_all_the_same() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let refuses = "ServiceWorkerContainer.prototype.register =
        () => Promise.reject(new TypeError('no worker'));
        Object.defineProperty(ServiceWorkerContainer.prototype, 'controller', { value: null });";
    beforehand(page, refuses).await?;
    page.says("could not keep this page on the device").await?;
    demo(page).await?;
    type_into(page, READING, "0.3456").await?;
    quiet(page).await
}

#[tokio::test]
async fn the_licences_are_there_without_a_network() -> Result<()> {
    let mut bench = Bench::open(Setting::default()).await?;
    bench.page().is_kept_offline().await?;
    bench.page().reload().await?;
    bench.server.kill()?;
    let page = bench.page();
    page.go("#/settings").await?;
    page.tap(Role::Button, "Show the licenses").await?;
    page.says("leptos v").await?;
    page.says("Permission is hereby granted").await?;
    quiet(page).await
}
