//! How fast the page answers the hand, for `cargo xtask bench`: key press to
//! painted result, and a dragged slider's frames, as they are and with the
//! processor slowed fourfold. Prints `bench`, name and microseconds; asserts
//! nothing about time.
//!
//! The browser paints as fast as it can instead of sixty times a second:
//! otherwise waiting for the screen would be measured, up to 17 ms of it.

use std::process::ExitCode;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{
    Bench, Frames, PAD_PRESSES, Page, Role, Setting, containing, measured,
};
use serde_json::json;

/// Key presses of one run.
const PRESSES: usize = 500;
/// Frames of a slider dragged.
const DRAGS: usize = 300;
/// Parts of a run.
const PARTS: usize = 10;

/// A gauge's readings in a burst each, a key a millisecond: from the key that ends one
/// to the frame that shows it, and to the voice's first word.
const BURSTS: &str = "
    const painted = () => new Promise((done) => requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = done;
        channel.port2.postMessage(0);
    }));
    const rest = (ms) => new Promise((done) => setTimeout(done, ms));
    const press = (key) => document.activeElement.dispatchEvent(new KeyboardEvent(
        'keydown', { key, bubbles: true, cancelable: true }));
    let spoken = 0;
    window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
    Object.defineProperty(window, 'speechSynthesis', { configurable: true, value: {
        getVoices: () => [{ lang: 'en-US', localService: true, name: 'near' }],
        cancel() {},
        speak() { spoken = performance.now(); },
    } });
    const times = [];
    for (let i = 0; i < count; i += 1) {
        const field = document.activeElement;
        if (field.dataset.place === undefined) throw new Error('no field waits');
        const text = `0.01${String(10 + i % 80)}`;
        for (const key of text) {
            press(key);
            await rest(1);
        }
        spoken = Infinity;
        const begun = performance.now();
        press('Enter');
        await painted();
        const shown = performance.now() - begun;
        if (field.value !== text) throw new Error(`${field.value} for ${text}`);
        await rest(400);
        times.push(shown, spoken - begun);
        field.focus();
    }
    return times;
";

/// Bursts of one run.
const READINGS: usize = 100;

/// A slider dragged to and fro, a step a frame.
const DRAG: &str = "
    const slider = document.querySelector('input[type=range]');
    if (!slider) throw new Error('no slider');
    const [low, high] = [Number(slider.min), Number(slider.max)];
    const frame = () => new Promise(requestAnimationFrame);
    const times = [];
    let before = await frame();
    for (let i = 0; i < count; i += 1) {
        const share = 0.5 - 0.5 * Math.cos((i / count) * 6 * Math.PI);
        slider.value = String(low + share * (high - low));
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        const now = await frame();
        times.push(now - before);
        before = now;
    }
    return times;
";

/// Milliseconds, smallest first.
async fn times(page: &Page, script: &str, count: usize) -> Result<Vec<f64>> {
    let mut times: Vec<f64> = Vec::new();
    // A driver waits half a minute for a script: a run is cut into parts.
    for _ in 0..PARTS {
        let part = format!("const count = {}; {script}", count / PARTS);
        let answer = page.script_awaiting(&part).await?;
        let list = answer.as_array().context("no list of times")?;
        times.extend(list.iter().filter_map(serde_json::Value::as_f64));
    }
    ensure!(times.len() == count, "{} of {count} times", times.len());
    times.sort_by(f64::total_cmp);
    Ok(times)
}

/// The time below which this share of the times lies.
fn quantile(times: &[f64], share: f64) -> f64 {
    let at = ((times.len() as f64 * share).ceil() as usize).clamp(1, times.len());
    times[at - 1]
}

async fn slow(page: &Page, factor: u32) -> Result<()> {
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": factor }))
        .await?;
    Ok(())
}

fn tell(name: &str, factor: u32, ms: f64) {
    println!("bench\t{name}, {factor}x slower\t{:.0}", 1e3 * ms);
}

/// A gauge types into one field again and again.
async fn bursts(page: &Page, job: &str) -> Result<()> {
    page.go("#/settings").await?;
    page.choose(
        "After a reading, go on to",
        "every place here, then the next cylinder",
    )
    .await?;
    page.choose("Speech", "after every reading").await?;
    // The last hole, filled: the hand is led no further.
    page.go(&format!("{job}/cylinder/5/seat")).await?;
    let field = page.find(Role::TextBox, containing("12 o'clock")).await?;
    for factor in [1, 4] {
        slow(page, factor).await?;
        let (mut shown, mut heard) = (Vec::new(), Vec::new());
        for _ in 0..PARTS {
            field.tap().await?;
            let part = format!("const count = {}; {BURSTS}", READINGS / PARTS);
            let answer = page.script_awaiting(&part).await?;
            let times = answer.as_array().context("no list of times")?;
            for pair in times.chunks(2) {
                let [paint, voice] = pair else { continue };
                shown.extend(paint.as_f64());
                heard.extend(voice.as_f64());
            }
        }
        ensure!(
            heard.len() == READINGS,
            "{} of {READINGS} heard",
            heard.len()
        );
        for (name, times) in [("paint", &mut shown), ("voice", &mut heard)] {
            times.sort_by(f64::total_cmp);
            let name = format!("end of a gauge's reading to {name}");
            tell(&format!("{name}, median"), factor, quantile(times, 0.5));
            tell(&format!("{name}, p95"), factor, quantile(times, 0.95));
        }
        slow(page, 1).await?;
    }
    Ok(())
}

async fn measure() -> Result<()> {
    let setting = Setting {
        frames: Frames::Unbounded,
        ..Setting::default()
    };
    let bench = Bench::open(setting).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    let job = page.job().await?;
    for (step, label) in [
        ("sleeve", "top, across"),
        ("drop", "Carry time"),
        ("seat", "12 o'clock"),
    ] {
        page.go(&format!("{job}/cylinder/2/{step}")).await?;
        page.tap(Role::TextBox, containing(label)).await?;
        for factor in [1, 4] {
            slow(page, factor).await?;
            let press = format!("{PAD_PRESSES} return times;");
            let times = times(page, &press, PRESSES).await?;
            tell(
                &format!("key to paint, {step}, median"),
                factor,
                quantile(&times, 0.5),
            );
            tell(
                &format!("key to paint, {step}, p95"),
                factor,
                quantile(&times, 0.95),
            );
        }
        slow(page, 1).await?;
    }
    bursts(page, &job).await?;
    page.go("#/drop").await?;
    page.find(Role::Heading, containing("Cold drop")).await?;
    for factor in [1, 4] {
        slow(page, factor).await?;
        let times = times(page, DRAG, DRAGS).await?;
        let mean = times.iter().sum::<f64>() / times.len() as f64;
        tell("slider frame, mean", factor, mean);
        tell("slider frame, p95", factor, quantile(&times, 0.95));
    }
    Ok(())
}

fn main() -> ExitCode {
    measured(measure())
}
