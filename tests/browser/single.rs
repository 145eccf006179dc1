//! The page as one file, opened from the disk with no server at all: what only
//! holds there. `cargo xtask test --only single` plays the inch demo from the file.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Engine, Folder, Key, Page, Role, Setting, containing};

const ONE_FILE: fn() -> Setting = || Setting {
    folder: Folder::OneFile,
    ..Setting::default()
};

async fn begin(page: &Page) -> Result<()> {
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    Ok(())
}

#[tokio::test]
async fn it_starts_from_the_disk_says_what_it_is_and_asks_for_nothing() -> Result<()> {
    let bench = Bench::open(ONE_FILE()).await?;
    let page = bench.page();
    let place = page.script("return location.protocol", vec![]).await?;
    ensure!(place == "file:", "opened at {place}");
    page.says("Coldseat as one file").await?;
    // The way out is a file, and it is offered here.
    let ways = page.find_all(Role::Link, containing("files")).await?;
    ways.first().context("a way to the files")?.tap().await?;
    page.find(Role::Button, containing("Save all jobs")).await?;
    begin_at_front(page).await?;
    page.go("#/drop").await?;
    page.find(Role::Heading, containing("Cold drop")).await?;
    let asked = "return performance.getEntriesByType('resource').map((e) => e.name)
        .filter((name) => !name.startsWith('data:') && !name.startsWith('blob:'))";
    let asked = page.script(asked, vec![]).await?;
    ensure!(asked == serde_json::json!([]), "asked for {asked}");
    let complaints = page.complaints().await?;
    ensure!(complaints.is_empty(), "{complaints:?}");
    Ok(())
}

async fn begin_at_front(page: &Page) -> Result<()> {
    page.go("#/").await?;
    begin(page).await
}

#[tokio::test]
async fn what_is_typed_is_there_after_a_reload_and_a_new_start() -> Result<()> {
    let mut bench = Bench::open(ONE_FILE()).await?;
    let page = bench.page();
    page.tap(Role::Link, containing("New job")).await?;
    page.write(containing("Job name"), "From the stick").await?;
    page.tap(Role::Button, containing("Begin the job")).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;
    page.says("saved").await?;
    page.reload().await?;
    page.go("#/").await?;
    page.find(Role::Link, containing("From the stick")).await?;
    bench.close_browser();
    bench.open_browser().await?;
    let page = bench.page();
    page.go("#/").await?;
    page.find(Role::Link, containing("From the stick")).await?;
    Ok(())
}

#[tokio::test]
async fn an_engine_goes_out_as_a_line_to_paste_and_comes_in_by_it() -> Result<()> {
    let bench = Bench::open(ONE_FILE()).await?;
    let page = bench.page();
    begin(page).await?;
    page.menu().await?;
    page.tap(Role::Link, "Engine").await?;
    page.find(Role::Heading, containing("Engine")).await?;
    page.script(
        "[...document.querySelectorAll('summary')]
            .find((s) => s.textContent.includes('Share this engine')).click();",
        vec![],
    )
    .await?;
    page.says("no address that another phone could open")
        .await?;
    ensure!(
        page.find_all(Role::Image, containing("QR code of the link"))
            .await?
            .is_empty(),
        "a code that leads nowhere"
    );
    let line = page.value("Line to paste").await?;
    ensure!(line.starts_with("#/s/"), "{line}");
    page.go("#/new").await?;
    page.write(containing("A link that was sent"), &line)
        .await?;
    page.tap(Role::Button, "Look at it").await?;
    page.says("This came with a link").await?;
    page.says("Oxbow five").await?;
    let complaints = page.complaints().await?;
    ensure!(complaints.is_empty(), "{complaints:?}");
    Ok(())
}

/// Opened from the disk, a reading typed, loaded anew: it is still there.
async fn a_reading_stays(engine: Engine) -> Result<()> {
    let bench = Bench::open_in(engine, ONE_FILE(), "").await?;
    let page = bench.page();
    let place = page.script("return location.protocol", vec![]).await?;
    ensure!(place == "file:", "opened at {place}");
    begin(page).await?;
    let job = page.job().await?;
    let reading = || containing("Counterbore depth: 12 o'clock");
    page.go(&format!("{job}/cylinder/1/counterbore")).await?;
    page.write(reading(), "0.4123").await?;
    page.press(Key::Enter).await?;
    page.until("saved", async || {
        let script = "return document.querySelector('.keeping').innerText";
        Ok((page.script(script, vec![]).await? == "saved").then_some(()))
    })
    .await?;
    page.reload().await?;
    let found = page.value(reading()).await?;
    ensure!(found == "0.4123", "{engine:?}: it became {found}");
    let complaints = page.complaints().await?;
    ensure!(complaints.is_empty(), "{engine:?}: {complaints:?}");
    Ok(())
}

mod firefox {
    use super::*;

    #[tokio::test]
    async fn a_reading_typed_from_the_disk_stays() -> Result<()> {
        a_reading_stays(Engine::Firefox).await
    }
}

mod webkit {
    use super::*;

    #[tokio::test]
    async fn a_reading_typed_from_the_disk_stays() -> Result<()> {
        a_reading_stays(Engine::WebKit).await
    }
}
