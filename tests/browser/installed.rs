//! What a shop of programs or a home screen shows of the page before it is
//! installed: pictures of it, taken here. To take them again: `cargo xtask test
//! --only browser`, then copy `screen-narrow.png` and `screen-wide.png` from
//! `target/pictures` to `narrow.png` and `wide.png` in `src/page/shell/screens`.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Role, Setting, Size, containing};
use serde_json::Value;

/// A picture of the invented inch job, at the sleeve that is not home.
async fn taken(size: Size, name: &str) -> Result<(u32, u32)> {
    let bench = Bench::open(Setting {
        size,
        ..Setting::default()
    })
    .await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/3/pull")).await?;
    page.says("Cylinder 3").await?;
    png_size(&page.picture(name).await?)
}

fn png_size(path: &std::path::Path) -> Result<(u32, u32)> {
    let bytes = std::fs::read(path).with_context(|| format!("{}", path.display()))?;
    let part = |at: usize| -> Result<u32> {
        let four: [u8; 4] = bytes.get(at..at + 4).context("a PNG")?.try_into()?;
        Ok(u32::from_be_bytes(four))
    };
    Ok((part(16)?, part(20)?))
}

#[tokio::test]
async fn the_manifest_shows_the_page_narrow_and_wide() -> Result<()> {
    let sizes = [
        ("narrow", taken(Size::Phone, "screen-narrow").await?),
        ("wide", taken(Size::Laptop, "screen-wide").await?),
    ];
    let dist = coldseat_browser_tests::dist_folder()?;
    let manifest = std::fs::read_to_string(dist.join("manifest.webmanifest"))?;
    let manifest: Value = serde_json::from_str(&manifest)?;
    for (form, (width, height)) in sizes {
        let shown = manifest["screenshots"].as_array().context("pictures")?;
        let shown = shown.iter().find(|one| one["form_factor"] == form);
        let shown = shown.with_context(|| format!("none is {form}"))?;
        ensure!(shown["sizes"] == format!("{width}x{height}"), "{shown}");
        ensure!(shown["type"] == "image/png", "{shown}");
        ensure!(shown["label"].as_str().is_some_and(|l| l.len() > 10));
        let path = dist.join(shown["src"].as_str().context("a file")?);
        ensure!(png_size(&path)? == (width, height), "{}", path.display());
    }
    Ok(())
}
