//! A gauge that types, by real key events: a whole block without a touch, and bursts
//! with faults, each of which stands in its field, is offered, or is refused aloud.
//!
//! Those of Chromium run with the check `browser`, the others with `engines`.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{
    Bench, Engine, Key, Page, REST, Role, SELECT_ALL, Setting, containing,
};
use coldseat_core::document::slot::{Slot, write_slot};
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::{Entries, Job};
use serde_json::json;

/// The order in which a whole block goes in.
pub(crate) const BY_CYLINDER: &str = "every place here, then the next cylinder";

/// A job of so many holes of which nothing is measured.
pub(crate) fn job(cylinders: u8) -> Box<Job> {
    let (mut engine, entries) = Demo::InchFive.profile(1_700_000_000_000);
    engine.cylinders = cylinders;
    let mut job = Job::new(engine, Entries::default());
    for (place, entry) in entries.iter() {
        job.entries.put(*place, entry.clone());
    }
    Box::new(job)
}

/// Keeps a job in the store of the page that is open, as if begun there; its address.
pub(crate) async fn keep(page: &Page, job: Box<Job>) -> Result<&'static str> {
    let slot = write_slot(&Slot {
        sequence: 1,
        row: Vec::new(),
        text: write(&Document::new(Body::Job(job), 1_700_000_000_000)),
    });
    let keep = "localStorage['coldseat/job/gauge/a'] = arguments[0]";
    page.script(keep, vec![json!(slot)]).await?;
    page.reload().await?;
    Ok("#/job/gauge")
}

pub(crate) async fn choose_order(page: &Page, order: &str) -> Result<()> {
    page.go("#/settings").await?;
    page.choose("After a reading, go on to", order).await
}

/// What stands in the fields of the screen.
pub(crate) async fn standing(page: &Page) -> Result<Vec<String>> {
    let script = "return [...document.querySelectorAll('[data-place]')].map((i) => i.value)";
    let all = page.script(script, vec![]).await?;
    let all = all.as_array().context("the fields")?;
    Ok(all
        .iter()
        .map(|v| v.as_str().unwrap_or_default().to_owned())
        .collect())
}

/// What a gauge sent and stands nowhere, as the page says it.
const LINE: &str = "return document.querySelector('[aria-label=Gauge]')?.innerText ?? ''";

pub(crate) async fn line(page: &Page) -> Result<String> {
    let said = page.script(LINE, vec![]).await?;
    Ok(said.as_str().unwrap_or_default().to_owned())
}

pub(crate) async fn the_line_says(page: &Page, words: &str) -> Result<()> {
    let told = page
        .until(&format!("the line of the gauge: {words}"), async || {
            Ok(line(page).await?.contains(words).then_some(()))
        })
        .await;
    match told {
        Ok(()) => Ok(()),
        Err(error) => Err(error.context(line(page).await?)),
    }
}

/// Readings of heights round twelve holes as gauges send them, and what then stands:
/// the text as typed, in millimetres where it came so. The values are invented.
fn forty_eight() -> Vec<(String, String, u64)> {
    let mut all = Vec::new();
    for n in 0..48_u32 {
        let tenths = 10 + n;
        let inch = format!("0.00{tenths:02}");
        let mm = format!("0.{:03}", 25 + n);
        let (sent, stands) = match n % 8 {
            0 => (format!("{inch}\n"), inch),
            1 => (format!("-{inch}\t"), format!("-{inch}")),
            2 => (format!("   +{inch}\n"), format!("+{inch}")),
            3 => (format!("{mm} mm\n"), format!("{mm} mm")),
            4 => {
                let comma = inch.replace('.', ",");
                (format!("{comma}\t"), comma)
            }
            5 => (format!("{SELECT_ALL}{inch}\n"), inch),
            6 => (format!("-{mm}mm\t"), format!("-{mm}mm")),
            _ => (format!(".00{tenths:02}\n"), format!(".00{tenths:02}")),
        };
        // Bursts of 1 ms most of all.
        all.push((sent, stands, if n % 6 == 5 { 12 } else { 1 }));
    }
    all
}

async fn twelve_holes_with_no_touch_and_no_loss(engine: Engine) -> Result<()> {
    let bench = Bench::open_in(engine, Setting::default(), "").await?;
    let page = bench.page();
    let job = keep(page, job(12)).await?;
    choose_order(page, BY_CYLINDER).await?;
    page.go(&format!("{job}/cylinder/1/seat")).await?;
    // The foot-switch brings the hand to the first empty place.
    page.press(Key::PageDown).await?;
    let all = forty_eight();
    for (sent, stands, gap_ms) in &all {
        page.gauge(sent, *gap_ms)
            .await
            .with_context(|| format!("{engine:?}: {sent:?}"))?;
        let said = line(page).await?;
        ensure!(said.is_empty(), "{engine:?}, {stands}: {said}");
    }
    for cylinder in 1..=12_u8 {
        page.go(&format!("{job}/cylinder/{cylinder}/seat")).await?;
        let from = 4 * usize::from(cylinder - 1);
        let wanted: Vec<&String> = all.iter().skip(from).take(4).map(|one| &one.1).collect();
        page.until(&format!("{wanted:?} in hole {cylinder}"), async || {
            let there = standing(page).await?;
            Ok((there.iter().take(4).collect::<Vec<_>>() == wanted).then_some(()))
        })
        .await
        .with_context(|| format!("{engine:?}"))?;
    }
    // One reading at a time comes back.
    page.menu().await?;
    page.tap(Role::Button, "Undo").await?;
    page.until("the last reading to be gone", async || {
        let there = standing(page).await?;
        let kept = there.iter().take(4).filter(|text| !text.is_empty()).count();
        Ok((kept == 3).then_some(()))
    })
    .await?;
    page.is_quiet().await
}

/// What becomes of a burst.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Fault {
    None,
    Cut,
    Doubled,
    Moved,
    Garbled,
}

/// Another field takes the focus in mid-burst, at the third key.
const MOVES: &str = "
    let keys = 0;
    const hear = () => {
        keys += 1;
        if (keys !== 3) return;
        document.removeEventListener('keydown', hear);
        document.querySelectorAll('[data-place]')[arguments[0]].focus();
    };
    document.addEventListener('keydown', hear);
";

/// The field that has the focus, by its place on the screen; none where none has.
const HAS: &str = "
    return [...document.querySelectorAll('[data-place]')].indexOf(document.activeElement)";

async fn focused(page: &Page) -> Result<Option<usize>> {
    let at = page.script(HAS, vec![]).await?;
    Ok(at.as_u64().map(|at| at as usize))
}

async fn bursts_with_faults(engine: Engine, bursts: u32) -> Result<()> {
    let bench = Bench::open_in(engine, Setting::default(), "").await?;
    let page = bench.page();
    let job = keep(page, job(1)).await?;
    choose_order(page, BY_CYLINDER).await?;
    // Twelve places on one screen.
    page.go(&format!("{job}/cylinder/1/wall")).await?;
    page.press(Key::PageDown).await?;
    let mut lot = fastrand::Rng::with_seed(18);
    let (mut stood, mut offered, mut refused) = (0, 0, 0);
    for burst in 0..bursts {
        let text = format!("0.3{:04}", burst % 10_000);
        let fault = match lot.u8(..10) {
            0 => Fault::Cut,
            1 => Fault::Doubled,
            2 => Fault::Moved,
            3 => Fault::Garbled,
            _ => Fault::None,
        };
        let at = || format!("{engine:?}, burst {burst}, {fault:?}, {text}");
        let before = standing(page).await?;
        let has = focused(page).await?;
        let end = if lot.bool() { '\n' } else { '\t' };
        let gap_ms = lot.u64(1..8);
        let keys = match fault {
            Fault::None | Fault::Moved => format!("{text}{end}"),
            Fault::Cut => text.clone(),
            Fault::Doubled => format!("{text}{end}{text}{end}"),
            Fault::Garbled => format!("PART-{text}{end}"),
        };
        if fault == Fault::Moved {
            let other = lot.usize(..12);
            page.script(MOVES, vec![json!(other)]).await?;
        }
        page.gauge(&keys, gap_ms).await.with_context(at)?;
        if fault == Fault::Cut {
            the_line_says(page, &text).await.with_context(at)?;
        }
        let after = standing(page).await?;
        let said = line(page).await?;
        let mut wanted = before.clone();
        // Without a field it is offered; with one it stands where it began.
        let stands = has.filter(|_| matches!(fault, Fault::None | Fault::Moved | Fault::Doubled));
        if let Some(at) = stands {
            wanted[at] = text.clone();
            stood += 1;
        }
        ensure!(
            after == wanted,
            "{}: {after:?} after {before:?}, {said}",
            at()
        );
        let is_told = said.contains(&text);
        match (fault, stands) {
            (Fault::None | Fault::Moved, Some(_)) => ensure!(said.is_empty(), "{}: {said}", at()),
            (Fault::Garbled, Some(_)) => ensure!(false, "{}", at()),
            _ => ensure!(is_told, "{}: {said:?}", at()),
        }
        if said.contains("Refused") {
            refused += 1;
        } else if is_told {
            offered += 1;
        }
        // The person answers whatever is asked.
        while !line(page).await?.is_empty() {
            let drop = page.find(Role::Button, "Discard it").await?;
            drop.tap().await.with_context(at)?;
        }
        if focused(page).await?.is_none() {
            let first = "document.querySelector('[data-place]').focus()";
            // Now and then none has it.
            if lot.u8(..8) > 0 {
                page.script(first, vec![]).await?;
            }
        }
    }
    println!("{engine:?}: {bursts} bursts, {stood} stand, {offered} offered, {refused} refused");
    ensure!(stood > 0 && offered > 0 && refused > 0);
    page.is_quiet().await
}

/// Bursts of a run: a tenth in the check, all by hand (`COLDSEAT_GAUGE=1000`).
fn many() -> u32 {
    let asked = std::env::var("COLDSEAT_GAUGE").ok();
    asked.and_then(|n| n.parse().ok()).unwrap_or(100)
}

mod chromium {
    use super::*;

    #[tokio::test]
    async fn a_gauge_fills_twelve_holes_with_no_touch_and_no_loss() -> Result<()> {
        twelve_holes_with_no_touch_and_no_loss(Engine::Chromium).await
    }

    #[tokio::test]
    async fn a_burst_with_a_fault_stands_is_offered_or_is_refused() -> Result<()> {
        bursts_with_faults(Engine::Chromium, many()).await
    }
}

mod firefox {
    use super::*;

    #[tokio::test]
    async fn a_gauge_fills_twelve_holes_with_no_touch_and_no_loss() -> Result<()> {
        twelve_holes_with_no_touch_and_no_loss(Engine::Firefox).await
    }

    #[tokio::test]
    async fn a_burst_with_a_fault_stands_is_offered_or_is_refused() -> Result<()> {
        bursts_with_faults(Engine::Firefox, many()).await
    }
}

mod webkit {
    use super::*;

    #[tokio::test]
    async fn a_gauge_fills_twelve_holes_with_no_touch_and_no_loss() -> Result<()> {
        twelve_holes_with_no_touch_and_no_loss(Engine::WebKit).await
    }

    #[tokio::test]
    async fn a_burst_with_a_fault_stands_is_offered_or_is_refused() -> Result<()> {
        bursts_with_faults(Engine::WebKit, many()).await
    }
}

#[tokio::test]
async fn without_a_field_a_reading_is_offered_and_put_nowhere_by_itself() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    // As the page comes: no order is chosen.
    let job = keep(page, job(2)).await?;
    page.go(&format!("{job}/cylinder/2/seat")).await?;
    page.is_drawn().await?;
    page.gauge("0.0021\n0.0022\n", 2).await?;
    the_line_says(page, "0.0021").await?;
    let there = standing(page).await?;
    ensure!(there.iter().all(String::is_empty), "{there:?}");
    page.picture("gauge-offered").await?;
    page.tap(Role::Button, containing("Put it in cylinder 2"))
        .await?;
    the_line_says(page, "0.0022").await?;
    page.tap(Role::Button, containing("3 o'clock")).await?;
    page.until("both to stand in order", async || {
        let there = standing(page).await?;
        Ok((there[..3] == ["0.0021", "0.0022", ""]).then_some(()))
    })
    .await?;
    // In a field, a reading takes the place of what stood there.
    let field = page.find(Role::TextBox, containing("12 o'clock")).await?;
    field.bring_above_the_pad().await?;
    field.tap().await?;
    page.gauge("0.0031\n", 1).await?;
    page.until("the new reading alone", async || {
        Ok((standing(page).await?[0] == "0.0031").then_some(()))
    })
    .await?;
    // A name is no reading: what is typed there stays there.
    page.is_quiet().await
}

/// Keys that come unevenly, by a slow gauge or a quick hand: the whole reading stands in
/// its field, over what stood there, wherever the rest falls.
#[tokio::test]
async fn a_rest_within_a_reading_loses_none_of_it() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let job = keep(page, job(2)).await?;
    for order in [None, Some(BY_CYLINDER)] {
        if let Some(order) = order {
            choose_order(page, order).await?;
        }
        page.go(&format!("{job}/cylinder/1/seat")).await?;
        let text = "0.0142";
        for (nth, at) in (1..text.len()).chain(1..text.len()).enumerate() {
            let other = format!("0.01{nth:02}");
            let (before, after) = text.split_at(at);
            let rested = format!("{before}{REST}{after}\n");
            // Over a reading, then over what the rest left.
            for (keys, wanted) in [(format!("{other}\n"), other.as_str()), (rested, text)] {
                let field = page.find(Role::TextBox, containing("12 o'clock")).await?;
                field.bring_above_the_pad().await?;
                field.tap().await?;
                page.gauge(&keys, 3).await?;
                let whole = page
                    .until(&format!("{wanted} whole, {order:?}, {at}"), async || {
                        Ok((standing(page).await?[0] == wanted).then_some(()))
                    })
                    .await;
                if let Err(error) = whole {
                    let stands = standing(page).await?;
                    return Err(error.context(format!("{stands:?}, {}", line(page).await?)));
                }
            }
        }
        let others = standing(page).await?.split_off(1);
        ensure!(others.iter().all(String::is_empty), "{order:?}: {others:?}");
        ensure!(line(page).await?.is_empty(), "{}", line(page).await?);
    }
    page.is_quiet().await
}

#[tokio::test]
async fn digits_mean_the_same_on_glass_and_on_keys() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let job = keep(page, job(2)).await?;
    page.go(&format!("{job}/cylinder/1/seat")).await?;
    for digits in ["0142", "142"] {
        let field = page.find(Role::TextBox, containing("12 o'clock")).await?;
        field.write(digits).await?;
        let found = field.value().await?;
        ensure!(found == "0.0142", "{digits} by keyboard: {found}");
        for _ in 0..digits.len() {
            field.press(Key::Backspace).await?;
        }
        ensure!(
            field.value().await?.is_empty(),
            "not taken back digit by digit"
        );
        // By the pad, which is open.
        for digit in digits.chars() {
            page.tap(Role::Button, digit.to_string().as_str()).await?;
        }
        let found = field.value().await?;
        ensure!(found == "0.0142", "{digits} by the pad: {found}");
    }
    let field = page.find(Role::TextBox, containing("12 o'clock")).await?;
    for text in ["4 17/64", "43 thou", "0,0043", ".0043", "1.2 mm"] {
        field.write(text).await?;
        let found = field.value().await?;
        ensure!(found == text, "{text} became {found}");
    }
    page.is_quiet().await
}
