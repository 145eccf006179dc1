//! A first visit: nothing goes over the line twice, and nothing on the screen
//! moves while the program is still on its way.

use std::collections::BTreeMap;

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Engine, Host, Page, Visitor, dist_folder};
use serde_json::json;

/// Phones and a tablet.
const WIDTHS: [u32; 4] = [360, 390, 412, 820];

/// What may move, as browsers count it (Layout Instability API: share of the
/// screen times share of its height or width).
const SHIFT_MOST: f64 = 0.02;

/// Counts from the first byte on.
const WATCH: &str = "
    window.coldseatShift = 0;
    new PerformanceObserver((list) => {
        for (const one of list.getEntries()) {
            if (!one.hadRecentInput) window.coldseatShift += one.value;
        }
    }).observe({ type: 'layout-shift', buffered: true });
";

/// A line so slow that each file comes in a frame of its own.
async fn is_slow(page: &Page) -> Result<()> {
    page.devtools("Network.enable", json!({})).await?;
    page.devtools(
        "Network.emulateNetworkConditions",
        json!({ "offline": false, "latency": 60, "downloadThroughput": 400_000,
                "uploadThroughput": 100_000 }),
    )
    .await?;
    Ok(())
}

/// Nothing of the page is kept any more: the next visit is the first.
async fn forgets(page: &Page, host: &Host) -> Result<()> {
    let all = json!({ "origin": host.address(), "storageTypes": "all" });
    page.devtools("Storage.clearDataForOrigin", all).await?;
    page.devtools("Network.clearBrowserCache", json!({}))
        .await?;
    Ok(())
}

#[tokio::test]
async fn nothing_goes_over_the_line_twice() -> Result<()> {
    let host = Host::start(&dist_folder()?)?;
    let visitor = Visitor::at(Engine::Chromium, host.address()).await?;
    visitor.page().is_kept_offline().await?;
    let mut asked = BTreeMap::<String, usize>::new();
    for path in host.asked() {
        *asked.entry(path).or_default() += 1;
    }
    let kept = xtask::precache::kept_files(&dist_folder()?)?;
    ensure!(asked.len() >= kept.len(), "{asked:?}");
    // The worker's own text is looked at again whenever the page is opened, and
    // the mark of the tab the browser fetches for itself, 1 kB.
    for own in ["/sw.js", "/icons/icon.svg"] {
        asked.remove(own);
    }
    let twice: Vec<_> = asked.iter().filter(|(_, times)| **times > 1).collect();
    ensure!(twice.is_empty(), "{twice:?}");
    Ok(())
}

/// What the front says that stands before the program does, its waiting aside; nothing
/// where it is not shown.
const FRONT: &str = "
    const front = document.getElementById('boot-front');
    if (!front || front.hidden) return [];
    return [...front.querySelectorAll('*')]
        .filter((e) => !e.childElementCount && e.role !== 'status' && e.textContent.trim())
        .map((e) => e.textContent.trim());
";

#[tokio::test]
async fn the_front_stands_before_the_program_and_its_doors_lead_on() -> Result<()> {
    let host = Host::start(&dist_folder()?)?;
    let visitor = Visitor::at(Engine::Chromium, host.address()).await?;
    let page = visitor.page();
    // What the program says there itself.
    page.says("Open a demo job").await?;
    let own = page.text().await?;
    forgets(page, &host).await?;
    is_slow(page).await?;
    page.script("location.reload()", vec![]).await?;
    let said = page
        .until("the front", async || {
            let said = page.script(FRONT, vec![]).await?;
            let said: Vec<String> = serde_json::from_value(said)?;
            Ok((!said.is_empty()).then_some(said))
        })
        .await?;
    ensure!(said.len() > 8, "{said:?}");
    let foreign = said.iter().find(|words| !own.contains(words.as_str()));
    ensure!(foreign.is_none(), "the program does not say {foreign:?}");
    page.picture("front-on-its-way").await?;
    let tap = "document.querySelector('#boot-front a.door[href=\"#/drop\"]').click()";
    page.script(tap, vec![]).await?;
    page.says("be home within").await?;
    let at = page.script("return location.hash", vec![]).await?;
    ensure!(at == json!("#/drop"), "{at}");
    page.is_quiet().await
}

#[tokio::test]
async fn nothing_moves_while_the_page_comes() -> Result<()> {
    let host = Host::start(&dist_folder()?)?;
    let visitor = Visitor::at(Engine::Chromium, host.address()).await?;
    let page = visitor.page();
    let watch = json!({ "source": WATCH });
    page.devtools("Page.addScriptToEvaluateOnNewDocument", watch)
        .await?;
    is_slow(page).await?;
    for width in WIDTHS {
        forgets(page, &host).await?;
        page.devtools(
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": width, "height": 844, "deviceScaleFactor": 1, "mobile": true }),
        )
        .await?;
        page.reload().await?;
        page.says("Open a demo job").await?;
        let shift = page.script("return window.coldseatShift", vec![]).await?;
        let shift = shift.as_f64().unwrap_or(f64::NAN);
        ensure!(shift < SHIFT_MOST, "{width}: {shift}");
    }
    Ok(())
}
