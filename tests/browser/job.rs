//! A whole job in the browser, through roles and labels: the inch demo with
//! its sleeve that is not home, a job typed reading by reading with keyboard
//! and Enter, what is not a reading, the record, and all of it found again
//! with the server dead.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};
use coldseat_core::job::step::{STEPS, Subject};

/// Goes to a place of the job that is open.
async fn step(page: &Page, cylinder: u8, name: &str) -> Result<()> {
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/{cylinder}/{name}")).await
}

/// Goes to another view of the job that is open.
async fn view(page: &Page, name: &str) -> Result<()> {
    let job = page.job().await?;
    page.go(&format!("{job}/{name}")).await
}

#[tokio::test]
async fn the_demo_cylinder_that_stopped_is_not_home() -> Result<()> {
    let mut bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    // The strip: by word, not by colour.
    for (cylinder, word) in [
        (1, "seated"),
        (2, "seated"),
        (3, "stop"),
        (4, "seated"),
        (5, "seated"),
    ] {
        page.find(
            Role::Link,
            containing(&format!("Cylinder {cylinder} {word}")),
        )
        .await?;
    }
    page.picture("demo-strip").await?;
    step(page, 3, "pull").await?;
    page.says("Stopped moving but").await?;
    step(page, 3, "seat").await?;
    page.says("NOT SEATED").await?;
    page.long_picture("demo-not-seated").await?;
    step(page, 2, "seat").await?;
    page.says("Seated, within the limits you entered").await?;
    view(page, "deck/1").await?;
    page.says("Decking is locked").await?;
    // By hand only with a reason, and the reason is kept.
    page.is_kept_offline().await?;
    bench.server.kill()?;
    bench.page().reload().await?;
    bench.page().says("Decking is locked").await?;
    bench.page().go("#/").await?;
    bench
        .page()
        .find(Role::Link, containing("Oxbow five"))
        .await?;
    ensure!(
        bench.page().complaints().await?.is_empty(),
        "{:?}",
        bench.page().complaints().await?
    );
    Ok(())
}

/// Waits until the address ends so: with the pad up the heading gives way.
async fn stands_at(page: &Page, end: &str) -> Result<()> {
    page.until(end, async || {
        let address = page.script("return location.hash", vec![]).await?;
        Ok(address
            .as_str()
            .is_some_and(|a| a.ends_with(end))
            .then_some(()))
    })
    .await
}

#[tokio::test]
async fn next_leads_round_to_the_cylinder_that_still_wants_the_step() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    // Begun at the rear: cylinder 5 leads to 1, where nothing is measured yet.
    step(page, 5, "protrusion").await?;
    page.says("Cylinder 5 \u{b7} Piston protrusion").await?;
    page.tap(Role::Link, containing("Next cylinder")).await?;
    stands_at(page, "/cylinder/1/protrusion").await?;
    // All are home but 3: from 4 it is 3 that is left.
    step(page, 4, "seat").await?;
    page.says("Cylinder 4 \u{b7} Seat check").await?;
    page.tap(Role::Link, containing("Next cylinder")).await?;
    stands_at(page, "/cylinder/3/seat").await?;
    Ok(())
}

/// Types values into the reading that has the focus, Enter after each.
async fn type_readings(page: &Page, values: &[&str]) -> Result<()> {
    for value in values {
        page.focused().await?.write(value).await?;
        page.press(Key::Enter).await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_job_typed_with_keyboard_and_enter_is_found_again_with_the_server_dead() -> Result<()> {
    let mut bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Link, containing("New job")).await?;
    page.write(containing("Job name"), "Block 7").await?;
    page.choose(containing("Engine"), "Oxbow five, in-line (demo)")
        .await?;
    page.tap(Role::Button, containing("Begin the job")).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;

    // Flange thickness and counterbore depth at four clocks.
    step(page, 1, "counterbore").await?;
    let first = page
        .find(Role::TextBox, containing("Counterbore depth: 12 o'clock"))
        .await?;
    first.tap().await?;
    type_readings(page, &["0.3000", "0.3001", "0.2999", "0,3000"]).await?;
    let last = page
        .find(Role::TextBox, containing("Counterbore depth: 9 o'clock"))
        .await?;
    assert_eq!(
        last.value().await?,
        "0,3000",
        "what was typed is what is shown"
    );

    // What is no reading: said at the field, kept, the rest goes on.
    let field = page
        .find(Role::TextBox, containing("Counterbore depth: 3 o'clock"))
        .await?;
    field.write("abc").await?;
    page.press(Key::Enter).await?;
    let field = page
        .find(Role::TextBox, containing("Counterbore depth: 3 o'clock"))
        .await?;
    assert_eq!(field.value().await?, "abc");
    assert_eq!(
        field.attribute("aria-invalid").await?.as_deref(),
        Some("true")
    );
    ensure!(
        !field.description().await?.is_empty(),
        "the field says what is wrong"
    );
    field.write("3.001").await?;
    page.press(Key::Enter).await?;
    let field = page
        .find(Role::TextBox, containing("Counterbore depth: 3 o'clock"))
        .await?;
    ensure!(
        !field.description().await?.is_empty(),
        "ten times off is questioned or refused"
    );
    field.write("0.3001").await?;
    page.press(Key::Enter).await?;

    page.is_kept_offline().await?;
    bench.server.kill()?;
    bench.page().reload().await?;
    let page = bench.page();
    let last = page
        .find(Role::TextBox, containing("Counterbore depth: 9 o'clock"))
        .await?;
    assert_eq!(last.value().await?, "0,3000");
    // And after the browser was closed.
    bench.close_browser();
    bench.open_browser().await?;
    bench.page().go("").await?;
    bench.page().find(Role::Link, containing("Block 7")).await?;
    Ok(())
}

/// A reading goes to the cylinder whose number is on the screen.
#[tokio::test]
async fn the_heading_names_the_cylinder_that_is_open_at_every_step() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 2")).await?;
    page.find(Role::Link, containing("Cylinder 8")).await?;
    let job = page.job().await?;
    let steps = STEPS.iter().filter(|s| s.subject == Subject::Cylinder);
    for step in steps {
        for cylinder in [3, 6, 7, 2] {
            page.go(&format!("{job}/cylinder/{cylinder}/{}", step.name))
                .await?;
            let heading = "return document.getElementById('step-heading').innerText";
            page.until("the heading follows", async || {
                let text = page.script(heading, vec![]).await?;
                let text = text.as_str().context("a heading")?.replace('\n', " ");
                Ok(text.contains(&format!("{cylinder} \u{b7}")).then_some(()))
            })
            .await
            .with_context(|| format!("{} of cylinder {cylinder}", step.name))?;
        }
    }
    Ok(())
}

#[tokio::test]
async fn a_cold_drop_in_two_taps() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Link, "Cold drop").await?;
    page.says("95 % band").await?;
    page.says("clearance at the bore").await?;
    let before = page.text().await?;
    page.write(containing("Carry time"), "60").await?;
    page.press(Key::Enter).await?;
    page.until("the numbers follow", async || {
        let now = page.text().await?;
        Ok((now != before).then_some(()))
    })
    .await?;
    // An outside below the inside is told at the field, the page goes on.
    page.write(containing("Part wall"), "3.0").await?;
    page.press(Key::Enter).await?;
    let wall = page.find(Role::TextBox, containing("Part wall")).await?;
    ensure!(
        !wall.description().await?.is_empty(),
        "the wall says what is wrong with it"
    );
    page.write(containing("Part wall"), "0.125").await?;
    page.press(Key::Enter).await?;
    page.says("95 % band").await?;
    page.is_quiet().await?;
    Ok(())
}

#[tokio::test]
async fn the_record_prints_a_page_for_the_customer_and_one_for_the_file() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 2")).await?;
    page.find(Role::Link, containing("Cylinder 8")).await?;
    view(page, "record").await?;
    page.find(Role::Button, "Print").await?;
    let file = page.print("record").await?;
    let bytes = std::fs::read(file)?;
    let text = String::from_utf8_lossy(&bytes);
    let pages = text.matches("/Type /Page").count() - text.matches("/Type /Pages").count();
    assert_eq!(pages, 2, "two printed pages");
    Ok(())
}
