//! A job of plain sleeves: on a step of the bore, and held by their fit. The kind is
//! chosen once, with the engine; steps, numbers to work to and drawings follow it.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};

/// The first demo job, its sleeves of another kind; its address.
async fn plain(page: &Page, kind: &str) -> Result<String> {
    page.go("").await?;
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.says("saved").await?;
    let job = page.job().await?;
    page.go(&format!("{job}/engine")).await?;
    page.choose("What the sleeves sit on", kind).await?;
    page.says("saved").await?;
    Ok(job)
}

/// Types one text into all four places round the clock of the group that is first.
async fn round_the_clock(page: &Page, group: &str, text: &str) -> Result<()> {
    for clock in ["12", "3", "6", "9"] {
        let label = format!("{group}: {clock} o'clock");
        page.write(containing(&label), text).await?;
        page.press(Key::Enter).await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_sleeve_on_a_step_is_asked_for_its_length_and_cut_to_its_depth() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let job = plain(page, "plain, on a bore step").await?;
    // What a flange would be asked for is gone, the step's own are there.
    page.gone(Role::TextBox, containing("Flange OD")).await?;
    page.unfold("Geometry").await?;
    page.write(containing("Bore below the step"), "4.1000")
        .await?;
    page.press(Key::Enter).await?;
    page.go(&format!("{job}/cylinder/1/step-depth")).await?;
    page.says("waits for: Sleeve length, end to end").await?;
    page.go(&format!("{job}/cylinder/1/sleeve")).await?;
    page.gone(Role::TextBox, containing("Fillet")).await?;
    round_the_clock(page, "Sleeve length, end to end", "8.8440").await?;
    page.go(&format!("{job}/cylinder/1/step-depth")).await?;
    // The target before the cut: 8.8440 less 0.0100 proud.
    page.says("cut the bore step to a depth of").await?;
    page.says("8.8340").await?;
    round_the_clock(page, "Bore step depth", "8.8340").await?;
    page.says("go").await?;
    page.long_picture("plain-step-depth").await?;
    page.go(&format!("{job}/cylinder/1/seat")).await?;
    page.says("once home, it stands proud by").await?;
    page.says("0.0100").await?;
    page.says("step").await?;
    page.long_picture("plain-on-step-seat").await?;
    // A step of another kind of sleeve leads to the step to work on.
    page.go(&format!("{job}/cylinder/1/counterbore")).await?;
    let heading = page.text().await?;
    ensure!(!heading.contains("Counterbore depth"), "{heading}");
    page.is_quiet().await?;
    Ok(())
}

#[tokio::test]
async fn a_sleeve_held_by_its_fit_too_low_is_a_stop() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let job = plain(page, "plain, held by its fit alone").await?;
    page.go(&format!("{job}/cylinder/1/seat")).await?;
    page.says("limits 0.0090 to 0.0110").await?;
    round_the_clock(page, "Height above the deck, after the last pull", "0.0080").await?;
    page.says("TOO LOW by 0.0020").await?;
    page.says("stop").await?;
    page.long_picture("plain-by-fit-low").await?;
    page.go(&format!("{job}/deck/1")).await?;
    page.says("Decking is locked").await?;
    page.is_quiet().await?;
    Ok(())
}
