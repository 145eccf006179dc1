//! A gauge on a wire, with a port that stands in for the browser's: the lines it sends
//! are made up here, byte by byte. No gauge was at hand.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};
use serde_json::json;

use crate::gauge::{BY_CYLINDER, choose_order, job, keep, line, standing, the_line_says};

/// A browser's serial ports: one port, which the person chooses at once.
const PORT: &str = "
    let controller = null;
    const port = { readable: null };
    const stream = () => new ReadableStream({ start(c) { controller = c; } });
    port.open = async (options) => {
        window.opened = options;
        port.readable = stream();
    };
    port.close = async () => { window.shut = (window.shut ?? 0) + 1; };
    window.feed = (text) => controller.enqueue(new TextEncoder().encode(text));
    window.garble = () => {
        const old = controller;
        port.readable = stream();
        old.error(new Error('parity'));
    };
    window.pull = () => {
        port.readable = null;
        controller.error(new Error('gone'));
    };
    Object.defineProperty(navigator, 'serial', {
        value: { requestPort: async () => port }, configurable: true,
    });
";

const NO_PORTS: &str =
    "Object.defineProperty(navigator, 'serial', { value: undefined, configurable: true });";

async fn before_all(page: &Page, source: &str) -> Result<()> {
    let source = json!({ "source": source });
    page.devtools("Page.addScriptToEvaluateOnNewDocument", source)
        .await?;
    Ok(())
}

async fn sends(page: &Page, text: &str) -> Result<()> {
    page.script("window.feed(arguments[0])", vec![json!(text)])
        .await?;
    Ok(())
}

async fn first_stands(page: &Page, wanted: [&str; 4]) -> Result<()> {
    page.until(&format!("{wanted:?}"), async || {
        let there = standing(page).await?;
        let there: Vec<&str> = there.iter().take(4).map(String::as_str).collect();
        Ok((there == wanted).then_some(()))
    })
    .await
}

#[tokio::test]
async fn a_line_is_seen_taught_and_put_where_a_typed_reading_goes() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    before_all(page, PORT).await?;
    let job = keep(page, job(2)).await?;
    choose_order(page, BY_CYLINDER).await?;
    page.choose("Port speed", "4800 bits per second").await?;
    page.choose("Bits per character", "7 data, even parity, 2 stop")
        .await?;
    page.tap(Role::Button, "Connect a gauge").await?;
    page.says("Connected").await?;
    let opened = page.script("return window.opened", vec![]).await?;
    let wanted = json!({ "baudRate": 4800, "dataBits": 7, "stopBits": 2, "parity": "even" });
    ensure!(opened == wanted, "{opened}");
    // In two pieces, as it comes.
    sends(page, "01A+0000").await?;
    sends(page, "0.053 mm\r\n").await?;
    page.says("More than a number and its unit").await?;
    page.tap(Role::Button, "The reading is +0.053").await?;
    page.says("Reads +0.053 mm").await?;
    sends(page, "01E+00000.053 mm\r\n").await?;
    page.says("looks different from the one you set up").await?;
    page.choose("Unit, if the line names none", "inches")
        .await?;
    sends(page, "01A+00000.053 mm\r\n").await?;
    page.says("names a different unit").await?;
    page.choose("Unit, if the line names none", "as in the job")
        .await?;
    page.says("Reads +0.053 mm").await?;
    page.says("The reading: number 2 of each line.").await?;
    page.long_picture("wire-settings").await?;
    // Taught it stays, and goes where the hand is.
    page.go(&format!("{job}/cylinder/1/seat")).await?;
    page.press(Key::PageDown).await?;
    sends(page, "01A+00000.053 mm\r\n02A-00000.002 in\r").await?;
    first_stands(page, ["+0.053 mm", "-0.002 in", "", ""]).await?;
    // Garbled in mid-line: what stands of it is offered, and the port is read on.
    sends(page, "03A+0.0").await?;
    page.script("window.garble()", vec![]).await?;
    the_line_says(page, "cut off").await?;
    page.tap(Role::Button, "Discard it").await?;
    sends(page, "ERR\r\n").await?;
    the_line_says(page, "looks different").await?;
    page.tap(Role::Button, "Discard it").await?;
    sends(page, "03A+00000.004 in\r\n").await?;
    first_stands(page, ["+0.053 mm", "-0.002 in", "+0.004 in", ""]).await?;
    // Without a step it is offered, and put nowhere by itself.
    page.go("#/").await?;
    sends(page, "04A+00000.005 in\r\n").await?;
    the_line_says(page, "+0.005 in").await?;
    page.tap(Role::Button, "Discard it").await?;
    // Unplugged, then plugged in again and let go.
    page.go("#/settings").await?;
    page.script("window.pull()", vec![]).await?;
    page.says("The gauge is gone").await?;
    page.tap(Role::Button, "Connect a gauge").await?;
    page.says("Connected").await?;
    page.tap(Role::Button, "Disconnect the gauge").await?;
    page.says("Not connected.").await?;
    let closed = page.script("return window.shut", vec![]).await?;
    ensure!(closed == json!(2), "closed {closed} times");
    // What was taught is among the settings.
    page.reload().await?;
    page.says("The reading: number 2 of each line.").await?;
    page.tap(Role::Button, "Forget which number").await?;
    page.says("The reading: a line that is one number").await?;
    ensure!(line(page).await?.is_empty(), "{}", line(page).await?);
    page.is_quiet().await
}

#[tokio::test]
async fn a_browser_without_ports_speaks_of_none() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    before_all(page, NO_PORTS).await?;
    page.reload().await?;
    page.go("#/settings").await?;
    page.find(Role::ComboBox, containing("After a reading"))
        .await?;
    page.gone(Role::Button, "Connect a gauge").await?;
    page.is_quiet().await
}
