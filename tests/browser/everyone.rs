//! Every screen for everyone: the accessibility rules of axe-core 4.14.1
//! (general-purpose, npm), targets of 44 px and more, no word of a
//! drawing cut off, in both themes; and no scrolling sideways from 320 to 1600 px.

use std::fs;

use anyhow::{Context, Result, bail, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, Size, Theme, containing, places};
use serde_json::json;

/// WCAG 2.2 A, AA, and AAA where it says more of contrast, and good practice.
const RULES: &str = "
    const found = await axe.run(document, { resultTypes: ['violations'], runOnly: [
        'wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag22aa',
        'best-practice'] });
    return { passed: found.passes.length, broken: found.violations.map((rule) =>
        `${rule.id}: ${rule.nodes.length} x, first ${rule.nodes[0].html.slice(0, 160)}`) };
";

/// What a hand is meant to hit and is under 44 px in either direction; links
/// in running text are read, not hit (WCAG 2.2, 2.5.8, inline).
const SMALL_TARGETS: &str = "
    return [...document.querySelectorAll(
        'a, button, input, select, textarea, summary, [role=button]')]
        .filter((e) => e.checkVisibility({ visibilityProperty: true }) && !e.closest('p'))
        .map((e) => [e, (e.closest('label') ?? e).getBoundingClientRect()])
        .filter(([e, r]) => r.width > 0 && (r.width < 43.5 || r.height < 43.5))
        .map(([e, r]) => `${Math.round(r.width)} x ${Math.round(r.height)}: ${e.outerHTML.slice(0, 120)}`);
";

/// Words of a drawing that its edge cuts off: a number without its last digit
/// is another number.
const CUT_WORDS: &str = "
    return [...document.querySelectorAll('svg text')].flatMap((words) => {
        const edge = words.ownerSVGElement.getBoundingClientRect();
        const box = words.getBoundingClientRect();
        const is_cut = box.left < edge.left - 1 || box.right > edge.right + 1
            || box.top < edge.top - 1 || box.bottom > edge.bottom + 1;
        return is_cut ? [`cut off in a drawing: ${words.textContent}`] : [];
    });
";

/// Buttons that share a name: which of them is meant cannot be said.
const SAME_NAMES: &str = "
    const names = [...document.querySelectorAll('button')]
        .filter((e) => e.checkVisibility({ visibilityProperty: true }))
        .map((e) => (e.getAttribute('aria-label') ?? e.innerText).trim());
    return [...new Set(names.filter((name, at) => names.indexOf(name) !== at))]
        .map((name) => `two buttons are called ${name}`);
";

/// Numbers that do not fit into their field.
const CUT_NUMBERS: &str = "
    return [...document.querySelectorAll('input[data-place]')]
        .filter((e) => e.value && e.scrollWidth > e.clientWidth + 1)
        .map((e) => `${e.id}: ${e.value}`);
";

/// Opens everything that can be opened, also what shows up in what was opened,
/// and lets it be worked out and drawn.
pub(crate) const UNFOLD: &str = "
    for (let round = 0; round < 3; round += 1) {
        for (const d of document.querySelectorAll('details')) d.open = true;
        for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
    }
";

/// How wide the page is; a phone widens its window with what does not fit.
const WIDE: &str = "return Math.max(document.documentElement.scrollWidth, window.innerWidth);";

/// What the page breaks as it stands, all of it unfolded; `place` names it.
pub(crate) async fn broken_rules(page: &Page, place: &str) -> Result<Vec<String>> {
    let rules = std::env::var("COLDSEAT_AXE").context("run by `cargo xtask test`")?;
    let rules = fs::read_to_string(&rules).with_context(|| rules.clone())?;
    // What is folded has to keep the rules too.
    page.script_awaiting(UNFOLD).await?;
    // Another place in the same page leaves them standing.
    if page.script("return !window.axe", vec![]).await? == json!(true) {
        page.script(&rules, vec![]).await?;
    }
    let found = page.script_awaiting(RULES).await?;
    ensure!(found["passed"].as_u64() > Some(5), "{place}: no rules ran");
    let small = page.script(SMALL_TARGETS, vec![]).await?;
    let cut = page.script(CUT_WORDS, vec![]).await?;
    let same = page.script(SAME_NAMES, vec![]).await?;
    let mut broken = Vec::new();
    for trouble in [&found["broken"], &small, &cut, &same] {
        let list = trouble.as_array().context("a list")?;
        broken.extend(list.iter().map(|t| format!("{place}: {t}")));
    }
    Ok(broken)
}

async fn every_screen_passes(theme: Theme, demo: &str, cylinder: u8) -> Result<()> {
    let setting = Setting {
        theme,
        ..Setting::default()
    };
    let bench = Bench::open(setting).await?;
    let page = bench.page();
    page.tap(Role::Button, containing(demo)).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;
    let mut broken = Vec::new();
    for place in places(page, cylinder).await? {
        page.go(&place).await?;
        broken.extend(broken_rules(page, &place).await?);
    }
    if !broken.is_empty() {
        broken.dedup();
        bail!("{} broken rules:\n{}", broken.len(), broken.join("\n"));
    }
    Ok(())
}

#[tokio::test]
async fn every_screen_keeps_the_rules_in_the_light() -> Result<()> {
    every_screen_passes(Theme::Light, "Demo 1", 3).await
}

#[tokio::test]
async fn every_screen_keeps_the_rules_in_the_dark() -> Result<()> {
    every_screen_passes(Theme::Dark, "Demo 2", 6).await
}

/// Every screen of a V-eight at these widths, all of it unfolded: none scrolls
/// sideways, none cuts a number. `set` sets the page up first.
async fn fits(widths: &[u32], set: impl AsyncFn(&Page) -> Result<()>) -> Result<()> {
    for &width in widths {
        let setting = Setting {
            size: Size::Other(width, 640),
            ..Setting::default()
        };
        let bench = Bench::open(setting).await?;
        let page = bench.page();
        set(page).await?;
        page.tap(Role::Button, containing("Demo 2")).await?;
        page.find(Role::Link, containing("Cylinder 8")).await?;
        screens_fit(page, width).await?;
    }
    Ok(())
}

/// Every screen of the V-eight that is open, all of it unfolded.
pub(crate) async fn screens_fit(page: &Page, width: u32) -> Result<()> {
    for place in places(page, 6).await? {
        page.go(&place).await?;
        page.script_awaiting(UNFOLD).await?;
        let wide = page.script(WIDE, vec![]).await?;
        let fits = wide.as_u64().is_some_and(|px| px <= u64::from(width));
        ensure!(fits, "{place} at {width} px is {wide} wide");
        let cut = page.script(CUT_NUMBERS, vec![]).await?;
        ensure!(cut == json!([]), "{place} at {width} px cuts {cut}");
    }
    Ok(())
}

/// Sets the browser's default size of text to twice what it is.
pub(crate) async fn twice_the_text(page: &Page) -> Result<()> {
    page.devtools("Page.enable", json!({})).await?;
    let sizes = json!({ "fontSizes": { "standard": 32, "fixed": 26 } });
    page.devtools("Page.setFontSizes", sizes).await?;
    Ok(())
}

/// The person's own text at twice its size: it is the browser's default size.
#[tokio::test]
async fn text_at_twice_its_size_fits_and_cuts_no_number() -> Result<()> {
    fits(&[320, 390, 820, 1600], twice_the_text).await
}

#[tokio::test]
async fn nothing_scrolls_sideways_from_320_to_1600() -> Result<()> {
    fits(&[320, 360, 820, 1280, 1600], async |_| Ok(())).await
}

/// What a phone shows above the first number, of its height.
const FRAME_MOST: f64 = 0.2;

#[tokio::test]
async fn the_frame_takes_a_fifth_of_a_phone_at_most() -> Result<()> {
    for demo in ["Demo 1", "Demo 2"] {
        let setting = Setting {
            size: Size::Other(390, 844),
            ..Setting::default()
        };
        let bench = Bench::open(setting).await?;
        let page = bench.page();
        page.tap(Role::Button, containing(demo)).await?;
        page.find(Role::Link, containing("Cylinder 5")).await?;
        let job = page.job().await?;
        page.go(&format!("{job}/cylinder/3/pull")).await?;
        let frame = "return document.querySelector('.bar').getBoundingClientRect().bottom";
        let bottom = page.script(frame, vec![]).await?;
        let bottom = bottom.as_f64().context("a number")?;
        ensure!(bottom <= FRAME_MOST * 844.0, "{demo}: {bottom} px");
    }
    Ok(())
}

/// Between the words of two neighbours of the strip, in pixels.
const APART: f64 = 5.0;

/// The least way between the words of neighbours.
const GAPS: &str = "
    const boxes = [...document.querySelectorAll('.strip .ring-word')].map((word) => {
        const range = document.createRange();
        range.selectNodeContents(word);
        return range.getBoundingClientRect();
    });
    return Math.min(...boxes.slice(1).map((box, at) => {
        const before = boxes[at];
        return Math.abs(before.top - box.top) < 2 ? box.left - before.right : 1000;
    }));
";

#[tokio::test]
async fn words_of_the_strip_stand_apart_on_a_small_phone() -> Result<()> {
    for demo in ["Demo 1", "Demo 2"] {
        let setting = Setting {
            size: Size::Other(360, 740),
            ..Setting::default()
        };
        let bench = Bench::open(setting).await?;
        let page = bench.page();
        page.tap(Role::Button, containing(demo)).await?;
        page.find(Role::Link, containing("Cylinder 5")).await?;
        let gap = page.script(GAPS, vec![]).await?;
        let gap = gap.as_f64().context("a number")?;
        ensure!((APART..1000.0).contains(&gap), "{demo}: {gap} px");
    }
    Ok(())
}
