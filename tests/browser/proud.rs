//! A deck of four holes whose sleeves are left proud: limits, plan, one line ticked,
//! measured again; phone, light and dark.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Key, Role, Setting, Size, Theme, containing};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::{Entry, Field, Job, Owner, Place};

use crate::everyone::broken_rules;
use crate::record::{put, put_entry, stored};

/// Types one text everywhere a field has a place, of an owner.
fn everywhere(job: &mut Job, owner: Owner, field: Field, text: &str) {
    let unit = job.unit(field);
    for place in Place::all(owner, field) {
        job.entries.put(place, Entry::new(text, unit, 2));
    }
}

/// The first demo with four of its five holes, nothing in them yet: flanges 0.2190 in,
/// counterbores 0.2150, 0.2150, 0.2170 and 0.2150 deep, so that they stand 4, 4, 2 and 4
/// thou proud where 3 to 5 may be and neighbours 1.5 apart: the third is low.
fn four_holes() -> Job {
    let mut job = Demo::InchFive.job(1);
    job.left_out = vec![5];
    let late = [
        Field::WarmHeight,
        Field::SeatHeight,
        Field::PullGauge,
        Field::PullLoaded,
        Field::PullReleased,
    ];
    for cylinder in 1..=5 {
        for field in late {
            everywhere(&mut job, Owner::Cylinder(cylinder), field, "");
        }
    }
    for (cylinder, depth) in [(1, "0.2150"), (2, "0.2150"), (3, "0.2170"), (4, "0.2150")] {
        let owner = Owner::Cylinder(cylinder);
        everywhere(&mut job, owner, Field::FlangeThickness, "0.2190");
        everywhere(&mut job, owner, Field::CounterboreDepth, depth);
    }
    for (field, text) in [
        (Field::SleeveEnds, "proud"),
        (Field::ProudLow, "0.0030"),
        (Field::ProudHigh, "0.0050"),
        (Field::SpreadHole, "0.0020"),
        (Field::SpreadNeighbour, "0.0015"),
        (Field::SpreadAll, "0.0020"),
        (Field::ShimSizes, ""),
    ] {
        put_entry(&mut job, Place::of_engine(field), text);
    }
    job
}

#[tokio::test]
async fn a_deck_left_proud_is_planned_ticked_and_measured_again() -> Result<()> {
    for (size, theme, name) in [
        (Size::Other(360, 740), Theme::Light, "phone"),
        (Size::Other(360, 740), Theme::Dark, "phone-dark"),
        (Size::Tablet, Theme::Light, "tablet"),
    ] {
        let bench = Bench::open(Setting {
            size,
            theme,
            ..Setting::default()
        })
        .await?;
        let page = bench.page();
        put(page, &stored("proud", four_holes())).await?;
        page.reload().await?;
        page.go("#/job/proud/engine").await?;
        page.says("Left proud: the deck is not cut").await?;
        page.long_picture(&format!("proud-engine-{name}")).await?;
        page.go("#/job/proud/deck/1").await?;
        page.says("its deck is not cut").await?;
        // What is missing is named, and asked for here.
        page.says("Ledge: cut at most").await?;
        page.write(containing("Ledge: cut at most"), "0").await?;
        // Nothing at hand brings the third hole up: what stands in the way is named.
        page.says("In the way: how proud each height may stand, by at least 0.0010 in")
            .await?;
        page.unfold("Shims at hand").await?;
        page.write(containing("Size: shim 1"), "0.0015").await?;
        page.write(containing("How many left: shim 1"), "2").await?;
        page.press(Key::Escape).await?;
        page.says("Cylinder 3: lay a 0.0015 in shim on its ledge")
            .await?;
        page.long_picture(&format!("proud-plan-{name}")).await?;
        let mut broken = broken_rules(page, "plan").await?;
        page.tap(Role::Button, "Work to this plan").await?;
        page.says("Off the plan").await?;
        page.says("saved").await?;
        // From the top: the list that was tapped has become another.
        page.reload().await?;
        page.tap(
            Role::Button,
            containing("Done: Cylinder 3: lay a 0.0015 in shim"),
        )
        .await?;
        page.says("saved").await?;
        page.reload().await?;
        page.says("Off the plan").await?;
        page.long_picture(&format!("proud-ticked-{name}")).await?;
        // Measured again: the shim under hole 3 is entered, 0.2190 + 0.0015 - 0.2170.
        page.go("#/job/proud/cylinder/3/seat").await?;
        page.says("0.0035").await?;
        for clock in ["12", "3", "6", "9"] {
            let label = format!("after the last pull: {clock} o'clock");
            page.write(containing(&label), "0.0036").await?;
            page.press(Key::Enter).await?;
        }
        page.go("#/job/proud/deck/1").await?;
        page.says("+0.0001").await?;
        page.long_picture(&format!("proud-measured-{name}")).await?;
        broken.extend(broken_rules(page, "measured again").await?);
        // The ledge at two radii, its ink.
        page.go("#/job/proud/cylinder/3/counterbore").await?;
        // Open, for a shim of its own stands there.
        for clock in ["12", "3", "6", "9"] {
            let label = format!("Depth near the bore's edge: {clock} o'clock");
            page.write(containing(&label), "0.2185").await?;
            page.press(Key::Enter).await?;
        }
        page.says("CUPPED").await?;
        page.says("True it by the least cut: to 0.2185 in all over, 0.0015 in where it is highest")
            .await?;
        page.long_picture(&format!("proud-ledge-{name}")).await?;
        broken.extend(broken_rules(page, "ledge").await?);
        ensure!(broken.is_empty(), "{}", broken.join("\n"));
        page.is_quiet().await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_job_without_limits_asks_for_them_and_refuses_what_cannot_be() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.go("").await?;
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.says("saved").await?;
    let job = page.job().await?;
    page.go(&format!("{job}/engine")).await?;
    page.choose("How the sleeves are left", "left proud, within limits")
        .await?;
    page.says("published engine manuals").await?;
    page.write(containing("Held down while read"), "90").await?;
    page.press(Key::Enter).await?;
    page.says("enter the limits first").await?;
    page.write(containing("Stands proud, min"), "0.0060")
        .await?;
    page.write(containing("Stands proud, max"), "0.0010")
        .await?;
    page.press(Key::Enter).await?;
    page.says("Must be below the upper limit").await?;
    page.go(&format!("{job}/deck/1")).await?;
    let text = page.text().await?;
    ensure!(!text.contains("Decking is locked"), "{text}");
    page.says("Fix it").await?;
    page.is_quiet().await?;
    Ok(())
}
