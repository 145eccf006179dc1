//! What a gauge's readings sound like, what is spoken, and the wall view.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, Size, Theme, containing};
use serde_json::{Value, json};

use crate::gauge::{BY_CYLINDER, choose_order, job, keep, line, standing, the_line_says};

/// Records what is asked of the audio graph, before the page asks.
const RECORDS: &str = "
    window.tones = [];
    window.AudioContext = class {
        currentTime = 0;
        destination = {};
        resume() { return Promise.resolve(); }
        createOscillator() {
            const tone = {};
            return {
                frequency: { set value(hz) { tone.hz = hz; } },
                connect() {},
                start(at) { tone.from = at; },
                stop(at) { tone.to = at; window.tones.push(tone); },
            };
        }
    };
";

/// The pitches heard since the last look.
async fn tones(page: &Page) -> Result<Vec<f64>> {
    let heard = page
        .script(
            "return window.tones.splice(0).map((tone) => tone.hz)",
            vec![],
        )
        .await?;
    Ok(heard
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(Value::as_f64)
        .collect())
}

#[tokio::test]
async fn taken_asked_about_and_refused_sound_different() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let job = keep(page, job(2)).await?;
    choose_order(page, BY_CYLINDER).await?;
    let records = json!({ "source": RECORDS });
    page.devtools("Page.addScriptToEvaluateOnNewDocument", records)
        .await?;
    page.reload().await?;
    page.go(&format!("{job}/cylinder/1/sleeve")).await?;
    page.press(Key::PageDown).await?;
    page.gauge("4.4412\n", 1).await?;
    ensure!(tones(page).await? == [1400.0], "taken");
    // A radius among diameters is asked about; the hand goes on and can come back.
    page.gauge("2.2207\n", 1).await?;
    ensure!(tones(page).await? == [900.0, 1400.0], "asked about");
    page.says("4.4414").await?;
    // A bar code.
    page.gauge("123456789012345678901234567890\n", 1).await?;
    ensure!(tones(page).await? == [330.0, 330.0], "refused");
    the_line_says(page, "123456789012345678901234567890").await?;
    let there = standing(page).await?;
    ensure!(
        there.iter().filter(|text| !text.is_empty()).count() == 2,
        "{there:?}"
    );
    // The same place still waits; the one before comes back by the foot-switch.
    page.gauge("4.4411\n", 1).await?;
    the_line_says(page, "").await?;
    for _ in 0..2 {
        page.press(Key::PageUp).await?;
    }
    page.gauge("4.4414\n", 1).await?;
    page.until("three diameters", async || {
        let there = standing(page).await?;
        Ok((there[..3] == ["4.4412", "4.4414", "4.4411"]).then_some(()))
    })
    .await?;
    // The page is silent where the person wants no beep.
    page.go("#/settings").await?;
    page.choose(containing("Beep"), "off").await?;
    page.go(&format!("{job}/cylinder/2/sleeve")).await?;
    page.press(Key::PageDown).await?;
    tones(page).await?;
    page.gauge("4.4412\n", 1).await?;
    page.is_drawn().await?;
    ensure!(tones(page).await?.is_empty(), "a beep that nobody wants");
    page.is_quiet().await
}

/// Records what is spoken; two voices, the one of the network first.
const SPEAKS: &str = "
    window.said = [];
    window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
    Object.defineProperty(window, 'speechSynthesis', { value: {
        getVoices: () => window.voiceless ? [] : [
            { lang: 'en-GB', localService: false, name: 'far' },
            { lang: 'de-DE', localService: true, name: 'other' },
            { lang: 'en-US', localService: true, name: 'near' },
        ],
        cancel() {},
        speak(what) { window.said.push([what.text, what.voice.name]); },
    } });
";

/// What was said since the last look, and with which voice.
async fn said(page: &Page) -> Result<Value> {
    page.script("return window.said.splice(0)", vec![]).await
}

#[tokio::test]
async fn the_page_speaks_when_it_is_to_and_with_a_voice_of_the_device() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let source = json!({ "source": SPEAKS });
    page.devtools("Page.addScriptToEvaluateOnNewDocument", source)
        .await?;
    let job = keep(page, job(4)).await?;
    let fields = format!("{job}/cylinder/3/seat");
    choose_order(page, BY_CYLINDER).await?;
    // Off until it is switched on.
    page.go(&fields).await?;
    page.press(Key::PageDown).await?;
    page.gauge("0.0021\n", 1).await?;
    page.is_drawn().await?;
    ensure!(said(page).await? == json!([]), "speaks unasked");
    page.go("#/settings").await?;
    page.choose("Speech", "after every reading").await?;
    page.go(&fields).await?;
    page.press(Key::PageDown).await?;
    page.gauge("0.0020\n", 1).await?;
    let wanted = "oh oh two oh. three, height at the seat check, six o'clock";
    let heard = said(page).await?;
    ensure!(heard[0][1] == "near", "{heard}");
    ensure!(
        heard[0][0].as_str().is_some_and(
            |text| text.starts_with("oh oh two oh. three, ") && text.ends_with("six o'clock")
        ),
        "{heard} for {wanted}"
    );
    page.gauge("A1\n", 1).await?;
    ensure!(said(page).await? == json!([["refused", "near"]]));
    page.tap(Role::Button, "Discard it").await?;
    // On demand.
    page.tap(Role::Button, "Say it").await?;
    let heard = said(page).await?;
    ensure!(
        heard[0][0]
            .as_str()
            .is_some_and(|text| text.ends_with("six o'clock")),
        "{heard}"
    );
    // Without a voice it is silent and says so once.
    page.script("window.voiceless = true", vec![]).await?;
    page.gauge("0.0019\n", 1).await?;
    the_line_says(page, "no voice").await?;
    page.tap(Role::Button, "Understood").await?;
    page.gauge("0.0018\n", 1).await?;
    page.is_drawn().await?;
    ensure!(line(page).await?.is_empty(), "says it twice");
    page.is_quiet().await
}

/// Whether a word of the wall view is wider than the screen, and how high its digits are
/// beside the screen's height.
const ON_THE_WALL: &str = "
    const wall = document.querySelector('.wall');
    const number = wall.querySelector('.wall-number').getBoundingClientRect();
    return [wall.scrollWidth <= innerWidth, wall.scrollHeight <= innerHeight + 1,
        parseFloat(getComputedStyle(wall.querySelector('.wall-number')).fontSize) / innerHeight];
";

#[tokio::test]
async fn the_wall_view_shows_step_hole_reading_and_verdict_alone() -> Result<()> {
    for (size, theme, name) in [
        (Size::Other(1180, 820), Theme::Dark, "wall-tablet"),
        (Size::Other(820, 1180), Theme::Light, "wall-upright"),
        (Size::Other(360, 740), Theme::Light, "wall-phone"),
    ] {
        let bench = Bench::open(Setting {
            size,
            theme,
            ..Setting::default()
        })
        .await?;
        let page = bench.page();
        let job = keep(page, job(12)).await?;
        choose_order(page, BY_CYLINDER).await?;
        page.go(&format!("{job}/cylinder/11/sleeve")).await?;
        page.menu().await?;
        page.tap(Role::Button, "Wall view").await?;
        let wall = page.find(Role::Region, "Wall view").await?;
        page.gauge("4.4412\n", 1).await?;
        page.until("the reading on the wall", async || {
            let shown = wall.text().await?;
            let all = ["11", "4.4412", "top, along"];
            Ok(all.iter().all(|word| shown.contains(word)).then_some(()))
        })
        .await?;
        for text in ["4.4413", "4.4410", "4.4412", "4.4411", "4.4410"] {
            page.gauge(&format!("{text}\n"), 1).await?;
        }
        // A bar code is told here as well.
        page.gauge("4006381333931\n", 1).await?;
        page.until("the refusal on the wall", async || {
            let shown = wall.text().await?;
            ensure!(shown.contains("4006381333931"), "the wall says {shown}");
            Ok(Some(()))
        })
        .await?;
        page.picture(&format!("{name}-refused")).await?;
        let drop = "document.querySelector('.wall .gauge-line button').click()";
        page.script(drop, vec![]).await?;
        page.picture(name).await?;
        let fits = page.script(ON_THE_WALL, vec![]).await?;
        ensure!(fits[0] == true && fits[1] == true, "{name}: {fits}");
        let high = fits[2].as_f64().context("a size")?;
        // A phone is read from the hand: there the width is what bounds it.
        let least = if name == "wall-phone" { 0.09 } else { 0.1 };
        ensure!(high > least, "{name}: {high} of the screen's height");
        page.tap(Role::Button, "Close the wall view").await?;
        page.gone(Role::Region, "Wall view").await?;
        page.is_quiet().await?;
    }
    Ok(())
}
