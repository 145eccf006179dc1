//! The person's own colours (forced colours) take every ground and tint away: what is
//! current, pressed, open, under the hand, and what a verdict is, has to be told by
//! frame and shape.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, Size, containing};
use serde_json::json;

/// The frame of each thing a selector finds, with its name: what tells it apart where
/// colours do not.
const FRAMES: &str = "
    const [selector] = arguments;
    return [...document.querySelectorAll(selector)]
        .filter((e) => e.checkVisibility({ visibilityProperty: true }))
        .map((e) => {
            const of = getComputedStyle(e);
            return `${of.outlineStyle} ${of.outlineWidth} ${of.borderTopStyle} ${of.borderTopWidth}`;
        });
";

/// Whether what is drawn of a bore has the colour of text: drawings are left alone by
/// the browser, dark green on black among them.
const STROKES: &str = "
    const text = getComputedStyle(document.body).color;
    return [...document.querySelectorAll('.strip .bore *')].every((e) => {
        const of = getComputedStyle(e);
        return [of.fill, of.stroke].every((one) => one === 'none' || one === text);
    });
";

async fn forced(demo: &str) -> Result<Bench> {
    let setting = Setting {
        size: Size::Other(360, 740),
        ..Setting::default()
    };
    let bench = Bench::open(setting).await?;
    let page = bench.page();
    let media = json!({ "features": [
        { "name": "forced-colors", "value": "active" },
        { "name": "prefers-color-scheme", "value": "dark" },
    ] });
    page.devtools("Emulation.setEmulatedMedia", media).await?;
    page.tap(Role::Button, containing(demo)).await?;
    page.find(Role::Link, containing("Cylinder 3")).await?;
    Ok(bench)
}

async fn frames(page: &Page, selector: &str) -> Result<Vec<String>> {
    let found = page.script(FRAMES, vec![json!(selector)]).await?;
    let found = found.as_array().context("a list")?;
    let frames: Vec<String> = found
        .iter()
        .filter_map(|one| one.as_str().map(str::to_owned))
        .collect();
    ensure!(!frames.is_empty(), "nothing is {selector}");
    Ok(frames)
}

/// What `is` says has a frame that nothing has which `is_not` says.
async fn told_apart(page: &Page, is: &str, is_not: &str) -> Result<()> {
    let (these, those) = (frames(page, is).await?, frames(page, is_not).await?);
    for frame in &these {
        ensure!(
            !those.contains(frame),
            "{is} looks like {is_not}: {frame}, of {those:?}"
        );
    }
    Ok(())
}

#[tokio::test]
async fn without_colours_frames_tell_what_is_current_pressed_and_under_the_hand() -> Result<()> {
    let bench = forced("Demo 2").await?;
    let page = bench.page();
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/6/counterbore")).await?;
    told_apart(page, ".ring[aria-current]", ".ring:not([aria-current])").await?;
    ensure!(
        page.script(STROKES, vec![]).await? == json!(true),
        "a bore of the strip is drawn in a colour of its own"
    );
    page.picture("forced colours, a reading").await?;
    let menu = "[aria-expanded='true']";
    told_apart(page, "[aria-expanded='false']", ".ring[aria-current]").await?;
    page.tap(Role::Button, containing("Menu")).await?;
    told_apart(page, menu, "button:not([aria-expanded])").await?;
    let tab = ".job-nav a[aria-current]";
    told_apart(page, tab, ".job-nav a:not([aria-current])").await?;
    page.picture("forced colours, the menu").await?;

    // Under the hand is not what is current.
    let focus = "document.querySelector('.ring:not([aria-current])').focus({ focusVisible: true })";
    page.script(focus, vec![]).await?;
    told_apart(page, ".ring:focus-visible", ".ring:not(:focus-visible)").await?;
    page.go(&format!("{job}/engine")).await?;
    page.script(
        "for (const d of document.querySelectorAll('details')) d.open = true",
        vec![],
    )
    .await?;
    // One hole is left out, so that there are both.
    let first = "document.querySelector(\"[aria-pressed='true']\").click()";
    page.script(first, vec![]).await?;
    let (on, off) = ("[aria-pressed='true']", "[aria-pressed='false']");
    told_apart(page, on, off).await?;
    page.picture("forced colours, pressed").await?;
    Ok(())
}

#[tokio::test]
async fn without_colours_a_stop_does_not_look_like_a_go() -> Result<()> {
    let bench = forced("Demo 2").await?;
    let page = bench.page();
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/6/counterbore")).await?;
    let go = frames(page, ".verdict-go").await?;
    page.go(&format!("{job}/cylinder/6/pull")).await?;
    let stop = frames(page, ".verdict-stop").await?;
    ensure!(go[0] != stop[0], "both are {go:?}");
    // Without its ground a verdict has an edge all round.
    ensure!(go[0].contains("solid 2px"), "{go:?}");
    page.picture("forced colours, a stop").await?;
    Ok(())
}
