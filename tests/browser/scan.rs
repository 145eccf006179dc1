//! A code read with the camera. Detector and camera are the browser's and are
//! stood in for here; the way from what they give to the preview is the page's.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, containing};
use coldseat_core::document::link::{Shared, encode};
use coldseat_core::job::demo::Demo;
use serde_json::json;

/// A detector that sees what `code` says at its third look, and a camera that is
/// a picture; `window.stopped` counts the tracks that were ended.
const STAND_IN: &str = "
    const [code, refuse] = arguments;
    window.stopped = 0;
    let looks = 0;
    window.BarcodeDetector = class {
        constructor(wishes) {
            if (wishes.formats.join() !== 'qr_code') throw new Error('formats');
        }
        async detect(video) {
            if (!video.srcObject) throw new Error('no picture');
            looks += 1;
            return looks < 3 || code === null ? [] : [{ rawValue: code }];
        }
    };
    navigator.mediaDevices.getUserMedia = async (wishes) => {
        if (wishes.audio || wishes.video.facingMode !== 'environment') throw new Error('wishes');
        if (refuse) throw new DOMException('', 'NotAllowedError');
        const stream = document.createElement('canvas').captureStream();
        for (const track of stream.getTracks()) {
            const stop = track.stop.bind(track);
            track.stop = () => { window.stopped += 1; stop(); };
        }
        return stream;
    };
";

async fn at_the_code(bench: &Bench, code: Option<&str>, refuse: bool) -> Result<()> {
    let page = bench.page();
    let parameters = vec![json!(code), json!(refuse)];
    page.script(STAND_IN, parameters).await?;
    page.go("#/new").await?;
    page.tap(Role::Button, "Read a code with the camera").await
}

async fn is_off(page: &Page) -> Result<()> {
    page.until("the camera to go off", async || {
        let stopped = page.script("return window.stopped", vec![]).await?;
        Ok((stopped == 1).then_some(()))
    })
    .await
}

#[tokio::test]
async fn a_code_is_read_previewed_and_the_camera_is_off() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let (engine, entries) = Demo::InchFive.profile(0);
    let payload = encode(&Shared::Profile(engine, entries)).unwrap();
    let link = format!("https://elsewhere.example/#/s/{payload}");
    at_the_code(&bench, Some(&link), false).await?;
    let page = bench.page();
    page.says("This came with a link").await?;
    page.says("Oxbow five").await?;
    is_off(page).await?;
    let jobs = "return Object.keys(localStorage).filter((k) => k.includes('job')).length";
    ensure!(
        page.script(jobs, vec![]).await? == 0,
        "something was stored"
    );
    let complaints = page.complaints().await?;
    ensure!(complaints.is_empty(), "{complaints:?}");
    Ok(())
}

#[tokio::test]
async fn a_hostile_code_is_refused_like_any_link() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    at_the_code(&bench, Some("javascript:alert(1)"), false).await?;
    bench.page().says("not a link from this program").await?;
    is_off(bench.page()).await
}

#[tokio::test]
async fn leaving_or_turning_off_ends_the_camera_and_a_refusal_is_told() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    at_the_code(&bench, None, false).await?;
    page.says("Hold the code in the picture").await?;
    page.tap(Role::Button, "Camera off").await?;
    is_off(page).await?;
    at_the_code(&bench, None, false).await?;
    page.says("Hold the code in the picture").await?;
    page.go("#/").await?;
    is_off(page).await?;
    at_the_code(&bench, None, true).await?;
    page.says("the browser may not use it").await?;
    page.find(Role::Button, containing("Read a code")).await?;
    Ok(())
}

#[tokio::test]
async fn without_a_detector_the_phone_s_own_camera_is_named() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.script("delete window.BarcodeDetector", vec![]).await?;
    page.go("#/new").await?;
    page.says("the phone's own camera").await?;
    let buttons = page
        .find_all(Role::Button, containing("Read a code"))
        .await?;
    ensure!(buttons.is_empty(), "a button that can do nothing");
    // Only the camera may be asked for, and only by the page itself.
    let allowed = "return fetch('./').then((r) => r.headers.get('permissions-policy'))";
    let allowed = page.script_awaiting(allowed).await?;
    let allowed = allowed.as_str().unwrap_or_default();
    ensure!(allowed.contains("camera=(self)") && allowed.contains("microphone=()"));
    Ok(())
}
