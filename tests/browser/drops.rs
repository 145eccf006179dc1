//! Cold drops under a name: kept, opened, renamed, copied, binned, destroyed; in
//! both stores, in "Save all" and on another device.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};
use serde_json::json;

use crate::desk::{durable, file, keep_files, saved};
use crate::saved::{give, shows};

const CARRY: &str = "Carry time, cold to bore";

async fn carries(page: &Page, seconds: &str) -> Result<()> {
    page.write(containing(CARRY), seconds).await?;
    page.press(Key::Enter).await?;
    // The pad is in the way of what stands below.
    page.press(Key::Escape).await?;
    saved(page).await
}

/// Unfolds what is kept.
async fn unfold(page: &Page) -> Result<()> {
    page.unfold("Kept cold drops").await
}

/// Opens another cold drop.
async fn opens(page: &Page, name: &str) -> Result<()> {
    unfold(page).await?;
    page.tap(Role::Link, containing(name)).await
}

/// Keeps the numbers at hand.
async fn keeps(page: &Page, name: &str) -> Result<()> {
    unfold(page).await?;
    page.write("Name", name).await?;
    page.tap(Role::Button, "Keep these numbers").await?;
    page.find(Role::Heading, name).await?;
    saved(page).await
}

/// Names in the list, in its order.
async fn listed(page: &Page) -> Result<Vec<String>> {
    let script = "return [...document.querySelectorAll('.jobs .job-name')].map((e) => e.innerText)";
    let names = page.script(script, vec![]).await?;
    Ok(serde_json::from_value(names)?)
}

async fn lists(page: &Page, names: &[&str]) -> Result<()> {
    let result = page
        .until(&format!("{names:?} listed"), async || {
            Ok((listed(page).await? == names).then_some(()))
        })
        .await;
    match result {
        Ok(()) => Ok(()),
        Err(error) => Err(error.context(format!("{:?}", listed(page).await?))),
    }
}

#[tokio::test]
async fn cold_drops_are_kept_opened_renamed_copied_and_taken_out_of_the_bin() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.go("#/drop").await?;
    unfold(page).await?;
    page.says("None yet. Keep these numbers").await?;
    unfold(page).await?;
    carries(page, "7").await?;
    keeps(page, "Kiln Road six").await?;
    carries(page, "9").await?;
    // The list has the others, and the way back to the numbers without a name.
    unfold(page).await?;
    lists(page, &["Numbers without a name"]).await?;
    page.tap(Role::Link, containing("Numbers without a name"))
        .await?;
    page.find(Role::Heading, "Cold drop").await?;
    shows(page, CARRY, "7").await?;
    keeps(page, "Oxbow eight").await?;
    // Renamed as it is typed, and taken back with the numbers of others untouched.
    unfold(page).await?;
    page.write("Name", "Oxbow nine").await?;
    saved(page).await?;
    page.find(Role::Heading, "Oxbow nine").await?;
    page.tap(Role::Button, "Copy").await?;
    page.find(Role::Heading, "Oxbow nine (copy)").await?;
    unfold(page).await?;
    lists(
        page,
        &["Numbers without a name", "Oxbow nine", "Kiln Road six"],
    )
    .await?;
    // The screen opens on what was used last, after a reload too.
    page.go("#/").await?;
    page.reload().await?;
    page.tap(Role::Link, "Cold drop").await?;
    page.find(Role::Heading, "Oxbow nine (copy)").await?;
    opens(page, "Kiln Road six").await?;
    shows(page, CARRY, "9").await?;
    carries(page, "10").await?;
    page.go("#/").await?;
    page.go("#/drop").await?;
    page.find(Role::Heading, "Kiln Road six").await?;
    unfold(page).await?;
    page.long_picture("kept-cold-drops").await?;
    // Into the bin, and out of it.
    page.tap(Role::Button, "Put into the bin").await?;
    page.find(Role::Heading, "Cold drop").await?;
    unfold(page).await?;
    lists(page, &["Oxbow nine (copy)", "Oxbow nine"]).await?;
    page.go("#/files").await?;
    page.says("Kiln Road six").await?;
    page.tap(Role::Button, "Take out of the bin: Kiln Road six")
        .await?;
    page.gone(Role::Heading, "Bin").await?;
    page.go("#/drop/-").await?;
    opens(page, "Kiln Road six").await?;
    shows(page, CARRY, "10").await?;
    // Seen in the bin, it says so where it stands.
    let address = page.script("return location.hash", vec![]).await?;
    unfold(page).await?;
    page.tap(Role::Button, "Put into the bin").await?;
    page.go(address.as_str().unwrap_or_default()).await?;
    page.says("This cold drop is in the bin").await?;
    page.tap(Role::Button, "Take out of the bin").await?;
    saved(page).await?;
    page.go("#/drop/-").await?;
    unfold(page).await?;
    lists(page, &["Kiln Road six", "Oxbow nine (copy)", "Oxbow nine"]).await?;
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn kept_cold_drops_lie_in_both_stores_and_in_save_all_and_can_be_deleted() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.go("#/drop").await?;
    carries(page, "7").await?;
    keeps(page, "Kiln Road six").await?;
    carries(page, "9").await?;
    keep_files(page).await?;
    page.go("#/files").await?;
    page.tap(Role::Button, "Save all jobs to a file").await?;
    let (_, all) = file(page).await?;
    // On a device that has none: previewed, taken, each where it belongs.
    let other = Bench::open(Setting::default()).await?;
    let there = other.page();
    there.go("#/files").await?;
    give(there, &all).await?;
    there.says("Kiln Road six: is not here yet").await?;
    there.tap(Role::Button, "Take these changes").await?;
    there.go("#/drop/-").await?;
    shows(there, CARRY, "7").await?;
    opens(there, "Kiln Road six").await?;
    shows(there, CARRY, "9").await?;
    // Changed there, and here: asked about where it stands.
    carries(there, "11").await?;
    there.go("#/files").await?;
    keep_files(there).await?;
    there.tap(Role::Button, "Save all jobs to a file").await?;
    let (_, back) = file(there).await?;
    page.go("#/drop").await?;
    carries(page, "12").await?;
    page.go("#/files").await?;
    give(page, &back).await?;
    page.tap(Role::Button, "Take these changes").await?;
    page.go("#/drop").await?;
    page.says("Two values in one place").await?;
    page.says("fix what is named below").await?;
    page.tap(Role::Button, containing("Take: 11 s")).await?;
    shows(page, CARRY, "11").await?;
    page.gone(Role::Heading, "Two values in one place").await?;
    // Local storage gone: listed and opened out of the second store.
    saved(page).await?;
    page.script("localStorage.clear()", vec![]).await?;
    page.reload().await?;
    page.find(Role::Heading, "Kiln Road six").await?;
    shows(page, CARRY, "11").await?;
    page.until("local storage to be filled again", async || {
        let keys = page
            .script("return Object.keys(localStorage).length", vec![])
            .await?;
        Ok((keys.as_u64() > Some(1)).then_some(()))
    })
    .await?;
    // Another tab sees it deleted for good, and may keep it.
    page.open_tab().await?;
    page.go("#/drop").await?;
    page.find(Role::Heading, "Kiln Road six").await?;
    page.turn_to(0).await?;
    unfold(page).await?;
    page.tap(Role::Button, "Put into the bin").await?;
    page.go("#/files").await?;
    page.tap(Role::Button, "Empty the bin").await?;
    page.tap(Role::Button, "Yes, delete them").await?;
    page.gone(Role::Heading, "Bin").await?;
    let keys = durable(page, "return await answer(slots.getAllKeys());").await?;
    let is_kept = |keys: &serde_json::Value| keys.to_string().contains("coldseat/drops/");
    ensure!(!is_kept(&keys), "{keys}");
    let keys = page
        .script("return Object.keys(localStorage)", vec![])
        .await?;
    ensure!(!is_kept(&keys), "{keys}");
    page.turn_to(1).await?;
    page.says("This cold drop was deleted in another tab")
        .await?;
    page.tap(Role::Button, "Keep it after all").await?;
    saved(page).await?;
    let keys = durable(page, "return await answer(slots.getAllKeys());").await?;
    ensure!(is_kept(&keys), "{keys}");
    let none = json!([]);
    ensure!(json!(page.complaints().await?) == none);
    Ok(())
}
