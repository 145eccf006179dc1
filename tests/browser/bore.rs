//! The bore down its length: shown at the finish and, when asked for, at the
//! hone; three dimensions to try, given up again; a refused one named.

use anyhow::Result;
use coldseat_browser_tests::{Bench, Page, Role, Setting, containing};

/// Goes to a place of the job that is open.
async fn place(page: &Page, name: &str) -> Result<()> {
    let job = page.job().await?;
    page.go(&format!("{job}/{name}")).await
}

#[tokio::test]
async fn a_tried_fit_closes_the_bore_more_and_is_given_up_again() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;
    place(page, "cylinder/1/finish").await?;
    // Rings of one metal, 2.095, 2.22 and 2.54 in, by hand: 0.697 of the fit.
    page.find(Role::Image, containing("rings 0.0009 in"))
        .await?;
    page.slide("Fit", 0.0030).await?;
    page.find(Role::Image, containing("rings 0.0021 in"))
        .await?;
    page.says("Only a try: the job keeps its own numbers")
        .await?;
    page.tap(Role::Button, "Back to the job's numbers").await?;
    page.find(Role::Image, containing("rings 0.0009 in"))
        .await?;
    page.gone(Role::Button, "Back to the job's numbers").await?;
    Ok(())
}

#[tokio::test]
async fn the_hone_shows_it_when_asked_and_a_refused_dimension_is_named() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;
    place(page, "engine").await?;
    page.unfold("Geometry").await?;
    page.write(containing("Water jacket begins"), "0.6").await?;
    page.write(containing("Water jacket ends"), "9.0").await?;
    place(page, "cylinder/1/fit").await?;
    page.gone(Role::Slider, "Flange thickness").await?;
    page.script(
        "for (const d of document.querySelectorAll('details'))
            if (d.textContent.startsWith('The bore down')) d.open = true;",
        vec![],
    )
    .await?;
    page.says("No picture of the bore down its length. Water jacket ends below the deck")
        .await?;
    Ok(())
}
