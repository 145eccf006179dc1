//! What steps have beside their one number: the fit's hold, the bar's passes,
//! which sleeve goes in which hole.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Role, Setting, containing};
use coldseat_core::document::slot::{Slot, write_slot};
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::{Entry, Field, Job, Place};
use serde_json::json;

#[tokio::test]
async fn passes_and_hold_are_worked_out_when_they_are_opened() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/2/bore")).await?;
    page.unfold("Bar passes").await?;
    page.says("Micrometer over spindle and cutter").await?;
    page.says("takes 0.0100 on diameter, 0.0050 on radius")
        .await?;
    page.go(&format!("{job}/cylinder/2/fit")).await?;
    page.unfold("What the fit holds").await?;
    page.says("left of the fit, running").await?;
    page.says("lets go when sleeve and block are both at")
        .await?;
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

/// A reading of a sleeve.
const OD: &str = "top, across";

/// Three sleeves and bores to choose among, holes 4 and 5 counterbored.
fn to_pair() -> Job {
    let mut job = Demo::InchFive.job(1_700_000_000_000);
    let unit = job.unit(Field::BoreD);
    let mut put = |cylinder, field: Field, text: &str| {
        for index in 0..field.spec().places.count() {
            let place = Place::of_cylinder(cylinder, field, index);
            job.entries.put(place, Entry::new(text, unit, 2));
        }
    };
    for (cylinder, sleeve, bore) in [
        (1, "4.4416", "4.43895"),
        (2, "4.4410", "4.43955"),
        (3, "4.4413", "4.43925"),
    ] {
        put(cylinder, Field::CounterboreDepth, "");
        put(cylinder, Field::BoreD, "");
        put(cylinder, Field::SleeveOd, sleeve);
        put(cylinder, Field::BoredD, bore);
    }
    job
}

/// By hand, for a fit of 0.00125 in: as numbered 0.0002 to 0.0014 in are to be
/// honed, the widest sleeve in the widest bore leaves 0.0008 in each.
#[tokio::test]
async fn sleeves_are_numbered_for_the_least_honing_and_undo_has_the_old_numbers() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let at = 1_700_000_000_000;
    let slot = Slot {
        sequence: 1,
        row: Vec::new(),
        text: write(&Document::new(Body::Job(Box::new(to_pair())), at)),
    };
    let script = "localStorage['coldseat/job/pairs0000001/a'] = arguments[0]";
    page.script(script, vec![json!(write_slot(&slot))]).await?;
    page.reload().await?;
    page.go("#/job/pairs0000001/cylinder/1/bore").await?;
    page.unfold("Which sleeve in which hole").await?;
    page.says("As numbered now: 0.0002 in to 0.0014 in").await?;
    page.tap(Role::Button, "Number the sleeves this way")
        .await?;
    page.says("As numbered now they need the least honing")
        .await?;
    page.go("#/job/pairs0000001/cylinder/2/sleeve").await?;
    assert_eq!(page.value(containing(OD)).await?, "4.4416");
    page.menu().await?;
    page.tap(Role::Button, "Undo").await?;
    page.until("the old number is back", async || {
        Ok((page.value(containing(OD)).await? == "4.4410").then_some(()))
    })
    .await?;
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}
