//! Jobs go out in files and come back: with a preview, joined with what is here,
//! or refused with a reason. Deleting goes to a bin.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Key, Page, Role, Setting, containing};
use coldseat_core::document::edit::{History, Stay};
use coldseat_core::document::pen::Pen;
use coldseat_core::document::{Body, Restored, restore, write};
use coldseat_core::job::ledger::Writer;
use coldseat_core::job::{Entry, Field, Place};
use coldseat_core::quantity::parse::Unit;
use serde_json::json;

use crate::desk::{READING, demo, file, keep_files, saved};

const PLACE: Place = Place::of_cylinder(1, Field::CounterboreDepth, 0);

/// Gives the page a file whose content a script makes.
async fn give(page: &Page, content: &str) -> Result<()> {
    let script = format!(
        "const files = new DataTransfer();
         files.items.add(new File([{content}], 'jobs.txt', {{ type: 'text/plain' }}));
         const input = document.getElementById('import-file');
         input.files = files.files;
         input.dispatchEvent(new Event('change', {{ bubbles: true }}));"
    );
    page.script(&script, vec![]).await?;
    Ok(())
}

async fn give_text(page: &Page, text: &str) -> Result<()> {
    give(page, &json!(text).to_string()).await
}

/// The job in a file as another person would have changed it.
fn changed_elsewhere(text: &str, reading: &str, at: u64) -> String {
    let Restored::Valid(mut document) = restore(text) else {
        panic!("the file does not read");
    };
    let Body::Job(job) = &mut document.body else {
        panic!("no job");
    };
    let mut history = History::of(&**job);
    job.entries.put(PLACE, Entry::new(reading, Unit::Inch, at));
    let mut pen = Pen::new(Writer::of(7, 7));
    history.note(&mut **job, &mut pen, at, Stay::New);
    write(&document)
}

#[tokio::test]
async fn a_job_goes_out_and_comes_back_joined() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    saved(page).await?;
    page.go(&format!("#/job/{id}/record")).await?;
    keep_files(page).await?;
    page.tap(Role::Button, "Save to a file").await?;
    let (name, text) = file(page).await?;
    assert_eq!(name, "coldseat-Demo-1--Oxbow-five.txt");

    // The file as it went out: nothing would change.
    page.go("#/files").await?;
    give_text(page, &text).await?;
    page.says("is here already, nothing would change").await?;
    page.tap(Role::Button, "Leave all as it is").await?;

    // Changed elsewhere only: taken without a question.
    let theirs = changed_elsewhere(&text, "0.2081", 1_800_000_000_000);
    give_text(page, &theirs).await?;
    page.says("joined with the one here, 1 values change")
        .await?;
    page.picture("import-preview").await?;
    page.tap(Role::Button, "Take these changes").await?;
    page.says("One job was taken").await?;
    let reading = format!("#/job/{id}/cylinder/1/counterbore");
    page.go(&reading).await?;
    assert_eq!(page.value(containing(READING)).await?, "0.2081");

    // Changed here and elsewhere: both are kept and shown until one is chosen.
    page.write(containing(READING), "0.2082").await?;
    page.press(Key::Enter).await?;
    saved(page).await?;
    let other = changed_elsewhere(&text, "0.2083", 1_800_000_001_000);
    page.go("#/files").await?;
    give_text(page, &other).await?;
    page.says("1 places then have two values").await?;
    page.tap(Role::Button, "Take these changes").await?;
    page.says("One job was taken").await?;
    page.go(&reading).await?;
    page.says("Two values in one place").await?;
    page.long_picture("two-values").await?;
    page.tap(Role::Button, containing("Take: 0.2082")).await?;
    page.gone(Role::Heading, "Two values in one place").await?;
    assert_eq!(page.value(containing(READING)).await?, "0.2082");
    saved(page).await?;
    // The copies meet once more: it was chosen, it is not asked again.
    page.go("#/files").await?;
    give_text(page, &other).await?;
    page.says("is here already, nothing would change").await?;
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn all_jobs_go_to_another_device_in_one_file() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page).await?;
    saved(page).await?;
    page.go("#/").await?;
    page.tap(Role::Button, containing("Demo 2")).await?;
    page.find(Role::Link, containing("Cylinder 8")).await?;
    saved(page).await?;
    page.go("#/files").await?;
    page.says("No backup was made").await?;
    keep_files(page).await?;
    page.tap(Role::Button, "Save all jobs to a file").await?;
    let (name, text) = file(page).await?;
    ensure!(name.starts_with("coldseat-jobs-20"), "{name}");
    page.says("Last backup: 20").await?;

    let other = Bench::open_at(Setting::default(), "#/files").await?;
    let page = other.page();
    give_text(page, &text).await?;
    page.says("Oxbow five: is not here yet and would be added")
        .await?;
    page.tap(Role::Button, "Take these changes").await?;
    page.says("2 jobs were taken").await?;
    saved(page).await?;
    page.go("#/").await?;
    page.find(Role::Link, containing("Fenmoor V-eight")).await?;
    page.tap(Role::Link, containing("Oxbow five")).await?;
    page.find(Role::Link, containing("Cylinder 3 stop")).await?;
    // The table of readings.
    let job = page.job().await?;
    page.go(&format!("{job}/record")).await?;
    keep_files(page).await?;
    page.tap(Role::Button, containing("Readings as a table"))
        .await?;
    let (name, table) = file(page).await?;
    ensure!(name.ends_with(".csv"), "{name}");
    ensure!(table.contains("Number: length (in)"), "{table}");
    Ok(())
}

#[tokio::test]
async fn what_is_no_file_of_jobs_is_refused_and_the_page_goes_on() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    saved(page).await?;
    page.go(&format!("#/job/{id}/record")).await?;
    keep_files(page).await?;
    page.tap(Role::Button, "Save to a file").await?;
    let (_, text) = file(page).await?;
    page.go("#/files").await?;
    let half: String = text.chars().take(text.len() / 2).collect();
    let newer = text.replace("\"version\":1", "\"version\":9");
    for (content, words) in [
        ("''".to_owned(), "nothing in it"),
        (json!(half).to_string(), "torn or damaged"),
        (json!(newer).to_string(), "written by a later version"),
        ("'name;price\\n1;2'".to_owned(), "torn or damaged"),
        ("'{\"kind\":\"song\"}'".to_owned(), "not a job"),
        (
            "new Uint8Array(5000).fill(255)".to_owned(),
            "torn or damaged",
        ),
        ("'['.repeat(1 << 20)".to_owned(), "torn or damaged"),
        ("new Uint8Array(100 << 20)".to_owned(), "longer than 32 MB"),
    ] {
        give(page, &content).await?;
        page.says(words)
            .await
            .with_context(|| content.chars().take(60).collect::<String>())?;
        let leave = page.find_all(Role::Button, "Leave all as it is").await?;
        if let Some(leave) = leave.first() {
            leave.tap().await?;
            page.gone(Role::Button, "Leave all as it is").await?;
        }
    }
    // Edited by hand: usable, and it says that the checksum does not fit.
    let edited = text.replace("Demo 1: Oxbow five", "Edited by hand");
    give_text(page, &edited).await?;
    page.says("something in it had to be repaired").await?;
    page.tap(Role::Button, "Leave all as it is").await?;
    page.go("#/").await?;
    page.find(Role::Link, containing("Oxbow five")).await?;
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

#[tokio::test]
async fn deleting_goes_to_a_bin_that_is_emptied_by_hand() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    saved(page).await?;
    let record = format!("#/job/{id}/record");
    page.go(&record).await?;
    page.tap(Role::Button, "Put this job into the bin").await?;
    page.says("No jobs yet").await?;
    page.go("#/files").await?;
    page.tap(Role::Button, containing("Take out of the bin"))
        .await?;
    page.gone(Role::Button, containing("Take out of the bin"))
        .await?;
    page.go("#/").await?;
    page.find(Role::Link, containing("Oxbow five")).await?;
    page.go(&record).await?;
    page.tap(Role::Button, "Put this job into the bin").await?;
    page.says("No jobs yet").await?;
    saved(page).await?;
    page.reload().await?;
    page.says("No jobs yet").await?;
    page.go("#/files").await?;
    page.picture("bin").await?;
    page.tap(Role::Button, "Empty the bin").await?;
    page.says("gone for good").await?;
    page.tap(Role::Button, "No, keep them").await?;
    page.tap(Role::Button, "Empty the bin").await?;
    page.tap(Role::Button, "Yes, delete them").await?;
    page.gone(Role::Heading, "Bin").await?;
    page.reload().await?;
    page.gone(Role::Heading, "Bin").await?;
    page.go(&record).await?;
    page.says("not on this device").await?;
    Ok(())
}
