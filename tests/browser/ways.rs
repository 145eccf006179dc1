//! The cold drop of any part: what it asks, what stands beside its answer, the same
//! part by other means, and units that change and lose nothing.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Key, Role, Setting, containing};

#[tokio::test]
async fn a_valve_seat_in_a_warmed_head_is_asked_what_it_needs_and_told_what_it_takes() -> Result<()>
{
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.go("#/drop").await?;
    page.choose("Part", "Valve seat").await?;
    page.choose("Cooled in", "Dry ice + alcohol").await?;
    page.choose("Housing heat", "Oven").await?;
    page.choose("Housing material", "cast aluminum A356")
        .await?;
    // Nothing is worked out of a heat that nobody read.
    page.says("Still needed for clearance and grip time: Housing warmed to")
        .await?;
    page.write(containing("Housing warmed to"), "302").await?;
    page.press(Key::Enter).await?;
    page.says("Nobody entered how hot this housing may get")
        .await?;
    page.says("Hot parts").await?;
    page.says("Dry ice").await?;
    for words in [
        "In the cold",
        "In the heat",
        "kg of dry ice",
        "Its bore closes in",
    ] {
        page.says(words).await?;
    }
    page.write(containing("Heat limit"), "250").await?;
    page.press(Key::Enter).await?;
    page.says("Hotter than its sheet allows").await?;
    page.says("stop").await?;
    page.unfold("Side by side").await?;
    for way in ["Liquid nitrogen", "Freezer", "Oven alone", "and oven"] {
        page.says(way).await?;
    }
    page.long_picture("ways-side-by-side").await?;
    // A pin has no wall to ask for.
    page.choose("Part", "Pin or shaft").await?;
    page.gone(Role::TextBox, containing("Part wall")).await?;
    page.is_quiet().await?;
    Ok(())
}

#[tokio::test]
async fn units_that_change_convert_what_was_typed_and_back_digit_for_digit() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.go("#/drop").await?;
    let typed = [("Part OD", "5.1250"), ("Fit", "0.00135"), ("Shop", "70")];
    for (label, text) in typed {
        page.write(containing(label), text).await?;
        page.press(Key::Enter).await?;
    }
    page.choose("Units", "mm").await?;
    let shown = [("Part OD", "130.175"), ("Fit", "0.034"), ("Shop", "21.1")];
    for (label, text) in shown {
        let now = page.value(containing(label)).await?;
        ensure!(now == text, "{label}: {now}");
    }
    page.says("saved").await?;
    page.reload().await?;
    ensure!(page.value(containing("Part OD")).await? == "130.175");
    page.choose("Units", "inch").await?;
    for (label, text) in typed {
        let now = page.value(containing(label)).await?;
        ensure!(now == text, "{label}: {now}");
    }
    Ok(())
}
