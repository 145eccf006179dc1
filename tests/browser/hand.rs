//! What the hand does beside typing numbers: timers that run on, a column out
//! of a spreadsheet, undo, a slip that is asked about, words instead of signs.

use std::time::Duration;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};
use serde_json::json;

/// Opens the first demo at a step of a cylinder; returns the job's address.
async fn demo(page: &Page, cylinder: u8, step: &str) -> Result<String> {
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/{cylinder}/{step}"))
        .await?;
    Ok(job)
}

#[tokio::test]
async fn a_timer_runs_on_through_a_reload_and_its_time_is_kept() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let job = demo(page, 2, "chill").await?;
    page.says("expected").await?;
    page.tap(Role::Button, containing("Start the timer"))
        .await?;
    page.says("to go").await?;
    tokio::time::sleep(Duration::from_millis(1200)).await;
    page.reload().await?;
    // It shows on every screen of the job, and leads back to its step.
    page.go(&format!("{job}/record")).await?;
    page.tap(Role::Link, containing("Cylinder 2, Chill"))
        .await?;
    page.find(Role::Button, containing("Stop, keep the time"))
        .await?;
    tokio::time::sleep(Duration::from_millis(1200)).await;
    page.tap(Role::Button, containing("Stop, keep the time"))
        .await?;
    let kept: f64 = page.value(containing("Time in the bath")).await?.parse()?;
    ensure!((2.0..30.0).contains(&kept), "kept {kept} s");
    // Too short a chill is no go.
    page.says("back into the bath").await?;
    Ok(())
}

#[tokio::test]
async fn a_timer_tells_how_long_the_carry_may_take() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, 2, "drop").await?;
    page.says("below target").await?;
    page.tap(Role::Button, containing("Start the timer"))
        .await?;
    page.says("left").await?;
    page.tap(Role::Button, containing("Throw this time away"))
        .await?;
    page.find(Role::Button, containing("Start the timer"))
        .await?;
    // At the bore the time to home runs on, and is kept by one tap.
    page.tap(Role::Button, containing("Start the timer"))
        .await?;
    page.tap(Role::Button, containing("Stop, keep the time"))
        .await?;
    tokio::time::sleep(Duration::from_millis(1200)).await;
    page.tap(Role::Button, containing("It is home")).await?;
    page.unfold("More of this drop").await?;
    let took: f64 = page
        .value(containing("Time from entering to home"))
        .await?
        .parse()?;
    ensure!((1.0..60.0).contains(&took), "kept {took} s");
    // Stuck: the cylinder stops, whatever else was read.
    let stuck = page.find(Role::Radio, "stuck").await?;
    stuck.bring_up().await?;
    stuck.tap().await?;
    page.find(Role::Link, containing("Cylinder 2 stop")).await?;
    Ok(())
}

/// A column is pasted into the reading that has the focus.
const PASTE: &str = "
    const data = new DataTransfer();
    data.setData('text', arguments[0]);
    document.activeElement.dispatchEvent(new ClipboardEvent('paste',
        { clipboardData: data, bubbles: true, cancelable: true }));
";

#[tokio::test]
async fn a_column_out_of_a_spreadsheet_fills_the_places_in_order() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, 2, "groove").await?;
    page.tap(Role::TextBox, containing("Groove depth: 12 o'clock"))
        .await?;
    let column = "0.0540\r\n0,0541\n.0540\n 0.0539 \n";
    page.script(PASTE, vec![json!(column)]).await?;
    for (clock, text) in [
        ("12", "0.0540"),
        ("3", "0,0541"),
        ("6", ".0540"),
        ("9", "0.0539"),
    ] {
        let label = format!("Groove depth: {clock} o'clock");
        let value = page.value(containing(&label)).await?;
        ensure!(value == text, "{clock} o'clock holds {value:?}");
    }
    // At depth by the cut planned: the deck cut itself is not entered.
    page.says("Good by the planned cut").await?;
    Ok(())
}

#[tokio::test]
async fn a_slip_is_asked_about_once_the_hand_goes_on() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, 2, "sleeve").await?;
    let label = containing("Sleeve OD (diameter): middle, across");
    let field = page.find(Role::TextBox, label.clone()).await?;
    // A radius among diameters; half typed it is not asked about.
    field.write("2.2207").await?;
    ensure!(field.description().await?.is_empty(), "asked while typing");
    page.press(Key::Enter).await?;
    page.until("the slip to be asked about", async || {
        let said = field.description().await?;
        Ok(said.contains("4.4414").then_some(()))
    })
    .await?;
    page.tap(Role::Button, containing("4.4414")).await?;
    let value = page.value(label).await?;
    ensure!(value == "4.4414", "it holds {value}");
    Ok(())
}

#[tokio::test]
async fn low_is_a_word_and_the_pad_takes_back() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, 2, "protrusion").await?;
    page.tap(Role::TextBox, containing("Piston above the deck: front"))
        .await?;
    for key in ["1", "2", "proud / low"] {
        page.tap(Role::Button, key).await?;
    }
    let label = containing("Piston above the deck: front");
    let value = page.value(label.clone()).await?;
    ensure!(value == "-0.0012", "it holds {value}");
    page.says("low").await?;
    let keys = page.keys_of("Number pad").await?;
    let undo = keys.iter().find(|(name, ..)| name == "Take back");
    let (_, x, y) = undo.context("no undo on the pad")?;
    page.touch(*x, *y).await?;
    page.until("the place to be empty again", async || {
        Ok(page.value(label.clone()).await?.is_empty().then_some(()))
    })
    .await?;
    Ok(())
}

#[tokio::test]
async fn the_shortcut_leads_to_the_job_changed_last() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.go("#/last").await?;
    page.says("Jobs on this device").await?;
    let job = demo(page, 2, "seat").await?;
    page.says("saved").await?;
    page.go("#/").await?;
    page.go("#/last").await?;
    let address = page.script("return location.hash", vec![]).await?;
    ensure!(address == json!(job), "{address} is not {job}");
    page.find(Role::Link, containing("Cylinder 3 stop")).await?;
    Ok(())
}

/// Notes every verdict that is shown from now on, and the word of cylinder 1.
const LISTEN: &str = "
    window.shown = [];
    new MutationObserver(() => {
        for (const one of document.querySelectorAll('.verdict-word')) {
            window.shown.push(one.textContent);
        }
        window.shown.push(document.querySelector('.strip a').textContent);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });";

#[tokio::test]
async fn a_reading_on_its_way_cries_nothing_and_the_whole_one_does() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, 1, "seat").await?;
    let label = containing("after the last pull: 12 o'clock");
    let height = page.find(Role::TextBox, label).await?;
    let home = height.value().await?;
    height.bring_up().await?;
    page.script(LISTEN, Vec::new()).await?;
    // On its way through 0 and 0.0 it is far below its ledge.
    height.write(&home).await?;
    page.find(Role::Link, containing("Cylinder 1 seated"))
        .await?;
    tokio::time::sleep(Duration::from_millis(1500)).await;
    let shown = page.script("return window.shown", Vec::new()).await?;
    let shown: Vec<String> = serde_json::from_value(shown)?;
    ensure!(!shown.is_empty(), "nothing was noted");
    let cried = shown.iter().find(|words| words.contains("stop"));
    ensure!(cried.is_none(), "half typed, and cried {cried:?}");
    // A flange that leans by five thousandths is heard, once the hand rests.
    height.write("0.0150").await?;
    page.find(Role::Link, containing("Cylinder 1 stop")).await?;
    let shown = page.script("return window.shown", Vec::new()).await?;
    let shown: Vec<String> = serde_json::from_value(shown)?;
    ensure!(shown.iter().any(|words| words == "stop"), "{shown:?}");
    Ok(())
}
