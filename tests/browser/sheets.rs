//! Engine sheets: made, checked before ordering, kept over a reload, copied,
//! the start of a job; and a sleeve that came out and goes in again.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, containing};

async fn unfold(page: &Page, title: &str) -> Result<()> {
    let script = "for (const d of document.querySelectorAll('details'))
        if (d.textContent.startsWith(arguments[0])) d.open = true;";
    page.script(script, vec![title.into()]).await?;
    Ok(())
}

#[tokio::test]
async fn an_engine_sheet_says_go_or_no_go_and_begins_a_job() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Link, "Engine sheets").await?;
    page.says("No engine sheet on this device").await?;
    page.write("Engine name", "Ferry four").await?;
    page.choose("Cylinders", "4").await?;
    page.tap(Role::Button, "Make the sheet").await?;
    page.find(Role::Heading, "Ferry four").await?;
    page.says("Not all is checked yet").await?;
    unfold(page, "Pistons").await?;
    for (label, text) in [
        ("Sleeve OD, nominal", "4.5000"),
        ("Sleeve ID, as delivered", "4.2500"),
        ("Length (a flange not counted)", "8.5000"),
        ("Flange thickness, nominal", "0.2500"),
        ("Flange OD, nominal", "4.7000"),
        ("Block wall left around", "0.3000"),
        ("Bore pitch", "5.3000"),
        ("Finished bore", "4.2620"),
        ("Fit, min", "0.0010"),
        ("Fit, max", "0.0015"),
    ] {
        page.write(containing(label), text).await?;
    }
    // A lower step and a fire ring are there or not: somebody has to say so.
    page.says("Not all is checked yet").await?;
    for none in ["Deck to the next lower bore step", "Fire ring height"] {
        let label = format!("This block has none: {none}");
        let button = page.find(Role::Button, containing(&label)).await?;
        button.bring_up().await?;
        button.tap().await?;
    }
    page.says("This sleeve goes into this block").await?;
    // A ledge of 0.045 in, where 0.060 are wanted, is no go.
    page.write(containing("Flange OD, nominal"), "4.5900")
        .await?;
    page.says("Do not order").await?;
    page.write(containing("Flange OD, nominal"), "4.7000")
        .await?;
    page.says("This sleeve goes into this block").await?;
    page.says("saved").await?;
    page.picture("engine-sheet").await?;
    page.reload().await?;
    page.find(Role::Heading, "Ferry four").await?;
    ensure!(page.value(containing("Bore pitch")).await? == "5.3000");
    page.tap(Role::Button, "Make a copy of this sheet").await?;
    page.write("Engine name", "Ferry four, bored over").await?;
    page.says("saved").await?;
    page.go("#/engines").await?;
    page.find(Role::Link, containing("Ferry four, bored over"))
        .await?;
    // The list of jobs has no sheets in it.
    page.go("#/").await?;
    page.gone(Role::Link, containing("Ferry four")).await?;
    page.go("#/new").await?;
    page.choose("Engine", "Ferry four (engine sheet)").await?;
    page.write("Job name or number", "J 12").await?;
    page.tap(Role::Button, "Begin the job").await?;
    // Nothing is measured: its first numbers and its holes are open.
    page.find(Role::Button, "Sleeve in cylinder 1").await?;
    page.unfold("Geometry").await?;
    ensure!(page.value(containing("Bore pitch")).await? == "5.3000");
    Ok(())
}

#[tokio::test]
async fn a_sleeve_that_came_out_is_written_down_and_goes_in_again() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/3/seat")).await?;
    page.says("NOT SEATED").await?;
    unfold(page, "The sleeve came out again").await?;
    page.tap(Role::Button, "Save this try, start the next")
        .await?;
    page.says("Type what was found first").await?;
    page.write(containing("What was found"), "a chip at 3")
        .await?;
    page.tap(Role::Button, "Save this try, start the next")
        .await?;
    page.find(Role::Heading, containing("Cylinder 3 \u{b7} Clean"))
        .await?;
    page.go(&format!("{job}/cylinder/3/pull")).await?;
    ensure!(page.value(containing("Gauge pressure")).await?.is_empty());
    // The record has the first try; undo has its readings.
    page.go(&format!("{job}/record")).await?;
    page.says("found: a chip at 3").await?;
    page.menu().await?;
    page.tap(Role::Button, "Undo").await?;
    page.go(&format!("{job}/cylinder/3/seat")).await?;
    page.says("NOT SEATED").await?;
    Ok(())
}
