//! How fast the page is there, for `cargo xtask bench`: first paint, and the
//! first screen drawn and its buttons live, with the processor slowed fourfold;
//! at a first visit (nothing kept, from the server of this machine) and with the
//! server dead. Prints `bench`, name and microseconds; asserts nothing about time.

use std::process::ExitCode;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Page, Setting, measured};
use serde_json::{Value, json};

/// Times that the page is opened, each way.
const ROUNDS: usize = 9;
/// As a phone of the middle class against this machine.
const SLOWER: u32 = 4;

/// Notes when the frame is painted that shows the first screen: the skeleton is
/// gone then, and what answers a tap stands.
const WATCH: &str = "
    const look = () => {
        const stands = document.readyState !== 'loading' && !document.getElementById('boot')
            && document.querySelector('main a, main button');
        if (!stands) return requestAnimationFrame(look);
        const channel = new MessageChannel();
        channel.port1.onmessage = () => { window.coldseatUsable = performance.now(); };
        channel.port2.postMessage(0);
    };
    requestAnimationFrame(look);
";

const TIMES: &str = "
    const paint = performance.getEntriesByName('first-contentful-paint')[0]?.startTime;
    const usable = window.coldseatUsable;
    return paint && usable ? [paint, usable] : null;
";

/// Opens the page anew and reads its times.
async fn times(page: &Page) -> Result<[f64; 2]> {
    page.reload().await?;
    let times = page
        .until("the page's times", async || {
            let times = page.script(TIMES, vec![]).await?;
            Ok(times.is_array().then_some(times))
        })
        .await?;
    let time = |which: usize| times[which].as_f64().context("a time");
    Ok([time(0)?, time(1)?])
}

async fn forget(page: &Page, address: &Value) -> Result<()> {
    let all = json!({ "origin": address, "storageTypes": "all" });
    page.devtools("Storage.clearDataForOrigin", all).await?;
    page.devtools("Network.clearBrowserCache", json!({}))
        .await?;
    Ok(())
}

fn tell(how: &str, rounds: &[[f64; 2]]) {
    for (which, what) in ["first paint", "usable"].into_iter().enumerate() {
        let mut list: Vec<f64> = rounds.iter().map(|round| round[which]).collect();
        list.sort_by(f64::total_cmp);
        let median = 1e3 * list[list.len() / 2];
        println!("bench\t{what}, {how}, {SLOWER}x slower\t{median:.0}");
    }
}

async fn measure() -> Result<()> {
    let mut bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let watch = json!({ "source": WATCH });
    page.devtools("Page.addScriptToEvaluateOnNewDocument", watch)
        .await?;
    let slow = json!({ "rate": SLOWER });
    page.devtools("Emulation.setCPUThrottlingRate", slow)
        .await?;
    let address = page.script("return location.origin", vec![]).await?;
    let mut cold = Vec::new();
    for _ in 0..ROUNDS {
        forget(page, &address).await?;
        cold.push(times(page).await?);
    }
    tell("first visit", &cold);
    page.is_kept_offline().await?;
    bench.server.kill()?;
    let page = bench.page();
    let mut offline = Vec::new();
    for _ in 0..ROUNDS {
        offline.push(times(page).await?);
        let from = page
            .script("return navigator.serviceWorker.controller !== null", vec![])
            .await?;
        ensure!(from == json!(true), "not from the worker");
    }
    tell("offline", &offline);
    Ok(())
}

fn main() -> ExitCode {
    measured(measure())
}
