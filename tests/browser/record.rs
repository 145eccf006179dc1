//! The record and the floor sheet on paper: one page each, A4 and Letter, for 1
//! to 16 cylinders; what must stand on it; and its code, read by a decoder that
//! shares no code with the encoder.

use std::path::Path;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, Size};
use coldseat_core::document::slot::{Slot, write_slot};
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::engine::Layout;
use coldseat_core::job::{Entry, Field, Owner, Place};
use serde_json::json;

/// Width and height in centimetres.
const PAPERS: [(&str, f64, f64); 2] = [("a4", 21.0, 29.7), ("letter", 21.59, 27.94)];

/// What is read once the deck is cut, in millimetres.
const FINISHED: [(Field, &str); 4] = [
    (Field::FinishD, "125.602"),
    (Field::GrooveDepth, "1.280"),
    (Field::RingGapNow, "0.450"),
    (Field::PistonProud, "0.250"),
];

/// A job of so many cylinders, with every reading of the demo's, and finished.
fn job(cylinders: u8) -> (String, String) {
    let at = 1_700_000_000_000;
    let mut job = Demo::MetricEight.job(at);
    job.engine.cylinders = cylinders;
    if cylinders < 2 {
        job.engine.layout = Layout::InLine;
    }
    let entries: Vec<_> = job.entries.iter().map(|(p, e)| (*p, e.clone())).collect();
    for (place, entry) in entries {
        if let Owner::Cylinder(cylinder) = place.owner {
            let place = Place::of_cylinder(cylinder + 8, place.field, place.index);
            if cylinder + 8 <= cylinders {
                job.entries.put(place, entry);
            }
        }
    }
    for cylinder in 1..=cylinders {
        for (field, text) in FINISHED {
            let count = field.spec().places.count().min(4);
            for index in 0..count {
                let entry = Entry::new(text, job.unit(field), at);
                job.entries
                    .put(Place::of_cylinder(cylinder, field, index), entry);
            }
        }
    }
    job.note = "Two cap bolts replaced; oil gallery plugs are out.".to_owned();
    let slot = Slot {
        sequence: 1,
        row: Vec::new(),
        text: write(&Document::new(Body::Job(Box::new(job)), at)),
    };
    (format!("cylinders{cylinders}"), write_slot(&slot))
}

async fn put(page: &Page, (id, slot): &(String, String)) -> Result<()> {
    let script = "localStorage[`coldseat/job/${arguments[0]}/a`] = arguments[1]";
    page.script(script, vec![json!(id), json!(slot)]).await?;
    Ok(())
}

/// Pages of a PDF file.
fn pages(file: &Path) -> Result<usize> {
    let bytes = std::fs::read(file)?;
    let text = String::from_utf8_lossy(&bytes);
    Ok(text.matches("/Type /Page").count() - text.matches("/Type /Pages").count())
}

#[tokio::test]
async fn record_and_floor_sheet_take_one_page_for_1_to_16_cylinders() -> Result<()> {
    let setting = Setting {
        size: Size::Laptop,
        ..Setting::default()
    };
    let bench = Bench::open(setting).await?;
    let page = bench.page();
    let jobs: Vec<_> = (1..=16).map(job).collect();
    for job in &jobs {
        put(page, job).await?;
    }
    page.reload().await?;
    for (id, _) in &jobs {
        for view in ["record", "floor"] {
            page.go(&format!("#/job/{id}/{view}")).await?;
            page.find(Role::Button, "Print").await?;
            for (paper, width, height) in PAPERS {
                let name = format!("{view}-{id}-{paper}");
                let file = page.print_on(&name, width, height).await?;
                assert_eq!(pages(&file)?, 1, "{name}");
            }
        }
    }
    Ok(())
}

#[tokio::test]
async fn what_must_stand_on_the_record_stands_on_it() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let own = job(8);
    put(page, &own).await?;
    page.reload().await?;
    page.go(&format!("#/job/{}/record", own.0)).await?;
    page.find(Role::Button, "Print").await?;
    for words in [
        "As left",
        "Head gasket to buy",
        "Before the sleeve, and finished",
        "125.602",
        "Pressure test before boring",
        "Steps not done",
        "Marks, notes and times",
        "Decking is locked",
        "within the limits named above",
        "Two cap bolts replaced",
        "Signed",
        "Date",
    ] {
        page.says(words).await?;
    }
    // A phone has two dots or more to a pixel of the page.
    let phone = json!({
        "width": 360, "height": 780, "deviceScaleFactor": 2, "mobile": true,
    });
    page.devtools("Emulation.setDeviceMetricsOverride", phone)
        .await?;
    let picture = page.long_picture("record").await?;
    let text = decoded(&picture)?;
    ensure!(
        text.starts_with("COLDSEAT RECORD 20") && text.contains("FENMOOR V-EIGHT"),
        "{text}"
    );
    ensure!(text.contains("STOP") && text.contains("SEATED"), "{text}");
    page.go(&format!("#/job/{}/floor", own.0)).await?;
    page.says("Cut the counterbore to").await?;
    page.long_picture("floor").await?;
    // As it looks on paper: the print style at the width of A4 less its margins.
    page.devtools("Emulation.setEmulatedMedia", json!({ "media": "print" }))
        .await?;
    let paper = json!({
        "width": 703, "height": 1032, "deviceScaleFactor": 2, "mobile": false,
    });
    page.devtools("Emulation.setDeviceMetricsOverride", paper)
        .await?;
    page.long_picture("floor-on-paper").await?;
    page.go(&format!("#/job/{}/record", own.0)).await?;
    page.long_picture("record-on-paper").await?;
    ensure!(page.complaints().await?.is_empty());
    Ok(())
}

/// The code in a picture.
fn decoded(picture: &Path) -> Result<String> {
    let file = std::io::BufReader::new(std::fs::File::open(picture)?);
    let mut reader = png::Decoder::new(file).read_info()?;
    let mut pixels = vec![0; reader.output_buffer_size().context("too large")?];
    let info = reader.next_frame(&mut pixels)?;
    let step = info.line_size / info.width as usize;
    let (width, height) = (info.width as usize, info.height as usize);
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(width, height, |x, y| {
        pixels[y * info.line_size + x * step + 1]
    });
    // The rings of the cylinders look like the corners of a code: the first that
    // reads is it.
    let grids = image.detect_grids();
    let read = grids.iter().find_map(|grid| grid.decode().ok());
    Ok(read.context("no code in the picture")?.1)
}
