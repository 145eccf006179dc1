//! A shop with finished jobs: found by any of their words, learnt from, and what
//! is learnt offered for the next job.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, containing};
use coldseat_core::document::slot::{Slot, write_slot};
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::{Entry, Field, Place};
use serde_json::json;

/// Finished jobs: the cylinder that is not home gets no sleeve.
async fn finished(page: &Page, count: u64) -> Result<()> {
    for number in 0..count {
        let at = 1_700_000_000_000 + number * 86_400_000;
        let mut job = Demo::InchFive.job(at);
        job.left_out = vec![Demo::InchFive.not_home()];
        job.name = format!("Block {number}");
        // Of the four that are home two were down in 3 s and two in 5.
        let home = job.cylinders().collect::<Vec<u8>>().into_iter();
        for (cylinder, text) in home.zip(["3", "5", "3", "5"]) {
            let place = Place::of_cylinder(cylinder, Field::HomeTimed, 0);
            let unit = job.unit(Field::HomeTimed);
            job.entries.put(place, Entry::new(text, unit, at));
        }
        job.customer = if number == 2 {
            "Quarry Hill"
        } else {
            "Mill Lane"
        }
        .to_owned();
        let slot = write_slot(&Slot {
            sequence: 1,
            row: Vec::new(),
            text: write(&Document::new(Body::Job(Box::new(job)), at)),
        });
        let script = "localStorage[`coldseat/job/finished${arguments[0]}/a`] = arguments[1]";
        page.script(script, vec![json!(number), json!(slot)])
            .await?;
    }
    page.reload().await
}

#[tokio::test]
async fn finished_jobs_offer_a_target_and_never_force_it() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    page.go("#/learnt").await?;
    page.says("Nothing yet: a job counts").await?;
    finished(page, 3).await?;
    page.go("#/").await?;
    page.go("#/learnt").await?;
    page.says("From 3 jobs").await?;
    // Four sleeves home in each of three jobs, each settled 0.0026 in.
    page.says("12 values, mean 0.0026 in").await?;
    page.says("Predicted clearance of sleeves that dropped freely")
        .await?;
    // By hand: mean 4, sd root(12 / 11) = 1.0445, factor for twelve 3.162 (published
    // table of two-sided normal tolerance factors, 95 % and 95 %, from memory): 7.303 s.
    page.says("12 sleeves timed from entering to home: 4.0 s on average, 5.0 s the longest. You need 7.4 s")
        .await?;
    page.long_picture("learnt").await?;
    page.tap(Role::Button, "Use for new jobs: time you need")
        .await?;
    page.tap(Role::Button, "Use for new jobs").await?;
    page.says("New engines begin with these numbers").await?;
    page.go("#/settings").await?;
    let spread = page.value(containing("feed")).await?;
    ensure!(spread.starts_with("0.0"), "{spread}");
    let needed = page.value(containing("entering to home")).await?;
    ensure!(needed == "7.4", "{needed}");
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn a_job_is_found_by_any_of_its_words() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    finished(page, 6).await?;
    page.find(Role::Link, containing("Block 5")).await?;
    for words in ["quarry", "oxbow quarry", "2023-11-16", "seated quarry"] {
        page.write(containing("Search"), words).await?;
        page.gone(Role::Link, containing("Block 5"))
            .await
            .context(words)?;
        page.find(Role::Link, containing("Block 2")).await?;
    }
    page.write(containing("Search"), "no such words").await?;
    page.says("No job has all of these words").await?;
    Ok(())
}
