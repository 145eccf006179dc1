//! An engine by link and by code: read off a picture of the screen by jsQR
//! 1.4.0 (general-purpose, npm), an independent decoder; opened, previewed,
//! taken as a copy; and links that were damaged on their way.

use std::fs;

use anyhow::{Context, Result, ensure};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use coldseat_browser_tests::{Bench, Page, Role, Setting, Size, Theme, containing};
use coldseat_core::document::file::read_file;

/// What jsQR reads off a picture.
async fn decoded(page: &Page, picture: &[u8]) -> Result<String> {
    let decoder = std::env::var("COLDSEAT_JSQR").context("run by `cargo xtask test`")?;
    let decoder = fs::read_to_string(&decoder).with_context(|| decoder.clone())?;
    page.script(&decoder, vec![]).await?;
    let script = format!(
        "const picture = new Image();
         picture.src = 'data:image/png;base64,{}';
         await picture.decode();
         const canvas = document.createElement('canvas');
         canvas.width = picture.width;
         canvas.height = picture.height;
         const context = canvas.getContext('2d');
         context.drawImage(picture, 0, 0);
         const pixels = context.getImageData(0, 0, canvas.width, canvas.height);
         return jsQR(pixels.data, canvas.width, canvas.height)?.data ?? null;",
        STANDARD.encode(picture)
    );
    let answer = page.script_awaiting(&script).await?;
    Ok(answer
        .as_str()
        .context("no code on the picture")?
        .to_owned())
}

/// Opens a demo's engine screen with its code; returns the link shown.
async fn engine_link(page: &Page, demo: &str) -> Result<String> {
    page.tap(Role::Button, containing(demo)).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;
    page.menu().await?;
    page.tap(Role::Link, "Engine").await?;
    page.unfold("Share this engine").await?;
    let code = page.find(Role::Image, containing("QR code")).await?;
    code.bring_up().await?;
    page.value("Link").await
}

#[tokio::test]
async fn a_code_on_the_screen_is_read_by_another_program() -> Result<()> {
    for (demo, theme) in [("Demo 1", Theme::Light), ("Demo 2", Theme::Dark)] {
        let size = Size::Other(360, 740);
        let bench = Bench::open(Setting {
            size,
            theme,
            ..Setting::default()
        })
        .await?;
        let page = bench.page();
        let link = engine_link(page, demo).await?;
        let payload = link.rsplit('/').next().unwrap_or_default();
        ensure!(payload.len() <= 600, "{} characters", payload.len());
        let picture = fs::read(page.picture(&format!("code-{demo}")).await?)?;
        let read = decoded(page, &picture).await?;
        ensure!(read == link, "read {read:?}, shown {link:?}");
    }
    Ok(())
}

#[tokio::test]
async fn a_link_is_previewed_and_taken_as_a_copy() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let link = engine_link(page, "Demo 1").await?;
    let fragment = link.split('#').nth(1).context("a fragment")?;
    page.go(&format!("#{fragment}")).await?;
    page.says("This came with a link").await?;
    page.says("Oxbow five").await?;
    page.says("4.4400 in").await?;
    // Gone from the address; nothing stored yet.
    let address = page.script("return location.hash", vec![]).await?;
    ensure!(address == "#/shared", "the address is {address}");
    let jobs = "return Object.keys(localStorage).filter((k) => k.includes('job')).length";
    let before = page.script(jobs, vec![]).await?;
    page.tap(Role::Button, containing("Begin a job with this engine"))
        .await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    page.says("saved").await?;
    let after = page.script(jobs, vec![]).await?;
    ensure!(
        after.as_u64() > before.as_u64(),
        "{before} jobs, then {after}"
    );
    // Back does not bring the link again.
    page.go("#/shared").await?;
    page.says("nothing more in this link").await?;
    page.is_quiet().await?;
    Ok(())
}

#[tokio::test]
async fn links_spoilt_on_their_way_are_told_and_nothing_is_stored() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let link = engine_link(page, "Demo 1").await?;
    let payload = link.rsplit('/').next().unwrap_or_default().to_owned();
    page.says("saved").await?;
    let stored = "return JSON.stringify(localStorage)";
    let before = page.script(stored, vec![]).await?;
    let cut = &payload[..payload.len() / 2];
    let long = "A".repeat(65_536);
    for (payload, said) in [
        (cut, "cut off or changed"),
        (long.as_str(), "longer than any"),
        (
            "%3Cimg%20src=x%20onerror=alert(1)%3E",
            "not a link from this program",
        ),
        ("", "nothing in this link"),
    ] {
        page.go(&format!("#/s/{payload}")).await?;
        page.says(said).await?;
        page.says("Nothing was stored").await?;
    }
    // Doubled or percent-encoded it is mended.
    for text in [format!("{payload}{link}"), payload.replace('A', "%41")] {
        page.go(&format!("#/s/{text}")).await?;
        page.says("This came with a link").await?;
    }
    // Pasted with words round it.
    page.go("#/new").await?;
    page.write(
        containing("A link that was sent"),
        &format!("Here: {link}."),
    )
    .await?;
    page.tap(Role::Button, "Look at it").await?;
    page.says("This came with a link").await?;
    let after = page.script(stored, vec![]).await?;
    ensure!(after == before, "something was stored");
    page.tap(Role::Link, "Not now").await?;
    page.says("Jobs on this device").await?;
    let complaints = page.complaints().await?;
    ensure!(complaints.is_empty(), "{complaints:?}");
    Ok(())
}

/// A share sheet as a phone has one: what is handed to it is kept for a look.
const SHARE_SHEET: &str = "
    window.handed = [];
    navigator.canShare = (data) => Boolean(data.files || data.url);
    navigator.share = async (data) => {
        const files = await Promise.all((data.files ?? [])
            .map(async (file) => [file.name, await file.text()]));
        window.handed.push({ url: data.url ?? null, files });
    };
";

#[tokio::test]
async fn a_share_sheet_gets_links_and_files() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.script(SHARE_SHEET, vec![]).await?;
    let link = engine_link(page, "Demo 1").await?;
    page.tap(Role::Button, "Send it on").await?;
    page.tap(Role::Button, "Save to a file").await?;
    let handed = page
        .script_awaiting(
            "while (window.handed.length < 2) await new Promise((done) => setTimeout(done, 10));
             return window.handed",
        )
        .await?;
    ensure!(handed[0]["url"] == link.as_str(), "handed {}", handed[0]);
    let [name, text] = [0, 1].map(|part| handed[1]["files"][0][part].as_str().unwrap_or(""));
    ensure!(name.ends_with(".txt"), "named {name:?}");
    // A file that was handed on is one that is read back.
    let jobs = read_file(text).map_err(|fault| anyhow::anyhow!("{fault:?}"))?;
    ensure!(jobs.len() == 1, "{} jobs in it", jobs.len());
    Ok(())
}
