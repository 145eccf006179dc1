//! A season's jobs, for `cargo xtask bench`: how long the list takes to open,
//! and a job out of it, with 10, 100, 1,000 and 2,000 jobs of eight cylinders in
//! local storage, and what they take there. Prints `bench`, name and
//! microseconds; asserts nothing about time.

use std::process::ExitCode;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Frames, Page, Role, Setting, containing, job_slot, measured};
use serde_json::json;

/// So many jobs.
const SEASONS: [usize; 4] = [10, 100, 1000, 2000];
/// Times that a thing is opened.
const ROUNDS: usize = 15;
/// Jobs handed to the browser at a time.
const BATCH: usize = 100;

/// From the tap to the frame that shows it.
const OPEN: &str = "
    const painted = () => new Promise((done) => requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = done;
        channel.port2.postMessage(0);
    }));
    const times = { list: [], job: [] };
    const until = async (found) => { while (!found()) await painted(); };
    for (let i = 0; i < rounds; i += 1) {
        location.hash = '#/settings';
        await until(() => document.getElementById('shop-units'));
        await new Promise((done) => setTimeout(done, 50));
        let begun = performance.now();
        location.hash = '#/';
        await until(() => document.querySelector('a.job'));
        await painted();
        times.list.push(performance.now() - begun);
        const jobs = document.querySelectorAll('a.job');
        const job = jobs[(i * 7) % jobs.length];
        await new Promise((done) => setTimeout(done, 50));
        begun = performance.now();
        job.click();
        await until(() => document.querySelector('.work-step h2'));
        await painted();
        times.job.push(performance.now() - begun);
    }
    return times;
";

async fn fill(page: &Page, from: usize, to: usize) -> Result<()> {
    let all: Vec<(String, String)> = (from..to).map(job_slot).collect();
    for batch in all.chunks(BATCH) {
        let script = "for (const [key, value] of arguments[0]) localStorage[key] = value";
        page.script(script, vec![json!(batch)]).await?;
    }
    Ok(())
}

fn tell(name: &str, ms: f64) {
    println!("bench\t{name}\t{:.0}", 1e3 * ms);
}

async fn measure() -> Result<()> {
    let setting = Setting {
        frames: Frames::Unbounded,
        ..Setting::default()
    };
    let bench = Bench::open(setting).await?;
    let page = bench.page();
    let mut before = 0;
    for count in SEASONS {
        fill(page, before, count).await?;
        before = count;
        page.go("#/").await?;
        page.reload().await?;
        page.find(Role::Link, containing(&format!("Block {}", count - 1)))
            .await?;
        // The second store takes them over first.
        let filled = format!(
            "return await new Promise((yes) => {{
                const open = indexedDB.open('coldseat', 1);
                open.onsuccess = () => {{
                    const count = open.result.transaction('heads').objectStore('heads').count();
                    count.onsuccess = () => {{ open.result.close(); yes(count.result >= {count}); }};
                }};
            }});"
        );
        page.until("the second store to have all", async || {
            Ok((page.script_awaiting(&filled).await? == json!(true)).then_some(()))
        })
        .await?;
        let script = format!("const rounds = {ROUNDS}; {OPEN}");
        let times = page.script_awaiting(&script).await?;
        for (key, what) in [("list", "list"), ("job", "one job")] {
            let list = times[key].as_array().context("no times")?;
            let mut list: Vec<f64> = list.iter().filter_map(serde_json::Value::as_f64).collect();
            ensure!(list.len() == ROUNDS, "{} of {ROUNDS} times", list.len());
            list.sort_by(f64::total_cmp);
            tell(
                &format!("{what} of {count} jobs opens, median"),
                list[ROUNDS / 2],
            );
            tell(
                &format!("{what} of {count} jobs opens, slowest"),
                list[ROUNDS - 1],
            );
        }
        let script = "return Object.entries(localStorage)
            .filter(([key]) => key.startsWith('coldseat/job/'))
            .reduce((sum, [key, value]) => sum + 2 * (key.length + value.length), 0)";
        let bytes = page.script(script, vec![]).await?.as_f64().unwrap_or(0.0);
        println!(
            "{count} jobs take {:.0} bytes each in local storage",
            bytes / count as f64
        );
    }
    Ok(())
}

fn main() -> ExitCode {
    measured(measure())
}
