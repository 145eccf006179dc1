//! The record's two papers and the floor sheet: one page each, A4 and Letter, for 1
//! to 16 cylinders; what must stand on them, every figure as the core has it; and the
//! record's code, read by a decoder that shares no code with the encoder.

use std::path::Path;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, Size};
use coldseat_core::ask::{AsLeft, Finished, Mark, StepId, Told, as_left, finished};
use coldseat_core::document::slot::{Slot, write_slot};
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::assess::assess;
use coldseat_core::job::demo::Demo;
use coldseat_core::job::engine::Layout;
use coldseat_core::job::{Entry, Field, Job, Owner, Place, Unlock};
use coldseat_core::quantity::Length;
use coldseat_core::quantity::format::number;
use coldseat_core::quantity::parse::Unit;
use serde_json::json;

/// Width and height in centimetres.
const PAPERS: [(&str, f64, f64); 2] = [("a4", 21.0, 29.7), ("letter", 21.59, 27.94)];

/// What is read once the deck is cut, in inches and in millimetres.
const FINISHED: [(Field, [&str; 2]); 4] = [
    (Field::FinishD, ["4.2001", "125.602"]),
    (Field::GrooveDepth, ["0.0541", "1.280"]),
    (Field::RingGapNow, ["0.0180", "0.450"]),
    (Field::PistonProud, ["0.0100", "0.250"]),
];

/// What the record names of block, shop and gauges, and what is measured from the
/// deck: place in its field, inches, millimetres. The cut puts the first out of its
/// range, the last holds.
const OF_BLOCK: [(Field, u8, [&str; 2]); 18] = [
    (Field::ShopName, 0, ["Invented Engine Works"; 2]),
    (Field::Machinist, 0, ["A. Nother"; 2]),
    (Field::BlockSerial, 0, ["B 4471-22"; 2]),
    (Field::EngineHours, 0, ["8200"; 2]),
    (Field::GaugeChecked, 2, ["2026-05-12"; 2]),
    (Field::FromDeckBefore, 0, ["0.2980", "7.560"]),
    (Field::FromDeckLeast, 0, ["0.2950", "7.480"]),
    (Field::FromDeckMost, 0, ["0.2990", "7.600"]),
    (Field::FromDeckBefore, 3, ["0.4980", "12.650"]),
    (Field::FromDeckLeast, 3, ["0.4900", "12.450"]),
    (Field::FromDeckMost, 3, ["0.5000", "12.700"]),
    (Field::FromDeckBefore, 7, ["3.0000", "76.200"]),
    (Field::FromDeckLeast, 7, ["2.9900", "75.900"]),
    (Field::BlockCutSoFar, 0, ["0.0100", "0.250"]),
    (Field::BlockCutMost, 0, ["0.0200", "0.500"]),
    (Field::DeckFinishKind, 0, ["Ra"; 2]),
    (Field::DeckFinishMost, 0, ["1.5"; 2]),
    (Field::Shim, 0, ["0", "0"]),
];

/// A demo with so many cylinders, every reading of the demo's, and finished.
pub(crate) fn finished_job(demo: Demo, cylinders: u8) -> Job {
    let at = 1_700_000_000_000;
    let mut job = demo.job(at);
    let own = job.engine.cylinders;
    let by_unit = usize::from(demo == Demo::MetricEight);
    job.engine.cylinders = cylinders;
    if cylinders < 2 {
        job.engine.layout = Layout::InLine;
    }
    let entries: Vec<_> = job.entries.iter().map(|(p, e)| (*p, e.clone())).collect();
    for (place, entry) in entries {
        if let Owner::Cylinder(cylinder) = place.owner {
            let place = Place::of_cylinder(cylinder + own, place.field, place.index);
            if cylinder + own <= cylinders {
                job.entries.put(place, entry);
            }
        }
    }
    for cylinder in 1..=cylinders {
        for (field, texts) in FINISHED {
            let count = field.spec().places.count().min(4);
            for index in 0..count {
                let place = Place::of_cylinder(cylinder, field, index);
                put_entry(&mut job, place, texts[by_unit]);
            }
        }
    }
    for (field, index, texts) in OF_BLOCK {
        let place = Place {
            index,
            ..Place::of_engine(field)
        };
        put_entry(&mut job, place, texts[by_unit]);
    }
    for bank in 0..job.engine.banks() {
        let of = |field, index| Place::of_bank(bank, field, index);
        put_entry(
            &mut job,
            of(Field::DeckCut, 0),
            ["0.0050", "0.130"][by_unit],
        );
        put_entry(&mut job, of(Field::DeckFinish, 0), "1.2");
        let again = ["0.2960", "7.520"][by_unit];
        put_entry(&mut job, of(Field::FromDeckAfter, 0), again);
        let why = "new dowels come with the head";
        put_entry(&mut job, of(Field::RecutSaid, 3), why);
        let unlock = Unlock {
            reason: "shown to the customer".to_owned(),
            at,
        };
        job.unlocks.insert(bank, unlock);
        job.set_mark(Owner::Bank(bank), StepId::Deck, Some(Mark::Done), at);
    }
    job.note = "Two cap bolts replaced; oil gallery plugs are out.".to_owned();
    job
}

pub(crate) fn put_entry(job: &mut Job, place: Place, text: &str) {
    let unit = job.unit(place.field);
    job.entries
        .put(place, Entry::new(text, unit, 1_700_000_000_000));
}

/// A finished job of so many cylinders, as it lies in the store.
fn job(cylinders: u8) -> (String, String) {
    stored(
        &format!("cylinders{cylinders}"),
        finished_job(Demo::MetricEight, cylinders),
    )
}

pub(crate) fn stored(id: &str, job: Job) -> (String, String) {
    let at = 1_700_000_000_000;
    let slot = Slot {
        sequence: 1,
        row: Vec::new(),
        text: write(&Document::new(Body::Job(Box::new(job)), at)),
    };
    (id.to_owned(), write_slot(&slot))
}

pub(crate) async fn put(page: &Page, (id, slot): &(String, String)) -> Result<()> {
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
async fn each_paper_and_the_floor_sheet_take_one_page_for_1_to_16_cylinders() -> Result<()> {
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
        for (view, button, wanted) in [
            ("record", "Print", 2),
            ("record", "Print the customer's page", 1),
            ("record", "Print the page for the file", 1),
            ("floor", "Print", 1),
        ] {
            page.go(&format!("#/job/{id}/{view}")).await?;
            page.tap(Role::Button, button).await?;
            for (paper, width, height) in PAPERS {
                let which = button.trim_start_matches("Print").replace([' ', '\''], "");
                let name = format!("{view}{which}-{id}-{paper}");
                let file = page.print_on(&name, width, height).await?;
                ensure!(pages(&file)? == wanted, "{name}: {} pages", pages(&file)?);
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
        "Decking was unlocked by hand",
        "Invented Engine Works",
        "B 4471-22",
        "checked 2026-05-12",
        "Measured from deck A",
        "new dowels come with the head",
        "NOT shown to be home: cylinder",
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
    let codes = decoded(&picture)?;
    let text = codes.iter().find(|text| text.starts_with("COLDSEAT"));
    let text = text.with_context(|| format!("{codes:?}"))?;
    ensure!(
        text.starts_with("COLDSEAT RECORD 20") && text.contains("FENMOOR V-EIGHT"),
        "{text}"
    );
    ensure!(text.contains("STOP") && text.contains("SEATED"), "{text}");
    // The other opens this record.
    let address = codes.iter().find(|text| text.starts_with("http"));
    let address = address.with_context(|| format!("{codes:?}"))?;
    page.go("#/").await?;
    let here = page
        .script("return location.href.split('#')[0]", vec![])
        .await?;
    let (host, place) = address.split_once('#').context("no place")?;
    ensure!(here == json!(host), "{address} on {here}");
    page.go(&format!("#{place}")).await?;
    page.says("Two cap bolts replaced").await?;
    page.go(&format!("#/job/{}/floor", own.0)).await?;
    page.says("Cut the ledge to a depth of").await?;
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

/// The codes in a picture.
fn decoded(picture: &Path) -> Result<Vec<String>> {
    let file = std::io::BufReader::new(std::fs::File::open(picture)?);
    let mut reader = png::Decoder::new(file).read_info()?;
    let mut pixels = vec![0; reader.output_buffer_size().context("too large")?];
    let info = reader.next_frame(&mut pixels)?;
    let step = info.line_size / info.width as usize;
    let (width, height) = (info.width as usize, info.height as usize);
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(width, height, |x, y| {
        pixels[y * info.line_size + x * step + 1]
    });
    // The rings of the cylinders look like the corners of a code: those that read are.
    let grids = image.detect_grids();
    Ok(grids
        .iter()
        .filter_map(|grid| Some(grid.decode().ok()?.1))
        .collect())
}

/// What a table of the record shows, cell by cell below its head.
async fn cells(page: &Page, caption: &str) -> Result<Vec<Vec<String>>> {
    let script = "return [...document.querySelectorAll('article table')] \
        .filter(t => t.caption && t.caption.textContent.startsWith(arguments[0])) \
        .flatMap(t => [...t.tBodies[0].rows]) \
        .map(r => [...r.cells].map(c => c.textContent.trim()))";
    let found = page.script(script, vec![json!(caption)]).await?;
    Ok(serde_json::from_value(found)?)
}

/// A length as the record shows it; a dash where there is none.
fn shown(length: Option<Length>, unit: Unit) -> String {
    length.map_or_else(|| "\u{2013}".to_owned(), |l| number(l.as_m(), unit))
}

fn told(told: &Told, unit: Unit) -> String {
    match told {
        Told::Absent => "\u{2013}".to_owned(),
        Told::Read(list) => {
            let texts: Vec<String> = list.iter().map(|si| number(*si, unit)).collect();
            texts.join(", ")
        }
        Told::Unusable => "cannot be used".to_owned(),
    }
}

#[tokio::test]
async fn every_figure_of_the_record_is_the_core_s_in_both_demos_finished() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    for demo in Demo::ALL {
        let count = demo.job(0).engine.cylinders;
        let job = finished_job(demo, count);
        let unit = job.unit(Field::FinishD);
        let own = stored(&format!("finished{count}"), job.clone());
        put(page, &own).await?;
        page.reload().await?;
        page.go(&format!("#/job/{}/record", own.0)).await?;
        page.find(Role::Button, "Print").await?;
        let reports = assess(&job);
        let lefts: Vec<AsLeft> = reports.iter().map(|r| as_left(&job, r)).collect();
        let rows = cells(page, "As left").await?;
        ensure!(rows.len() == reports.len(), "{rows:?}");
        for (row, left) in rows.iter().zip(&lefts) {
            let of = |l| shown(l, unit);
            let wanted = [
                told(&left.sleeve, unit),
                told(&left.bore, unit),
                of(left.fit),
                told(&left.flange, unit),
                told(&left.depth, unit),
                told(&left.height, unit),
                of(left.gap),
                of(left.tilt),
            ];
            ensure!(row[2..10] == wanted, "{demo:?}: {row:?} {wanted:?}");
            ensure!(
                matches!(&left.pulls, Told::Read(all) if row[11] == all.len().to_string()),
                "{row:?}"
            );
            let known = left.p_seated.context("a chance")?;
            let chance = row[10].trim_end_matches([' ', '%']);
            let is_so = match chance.parse::<f64>() {
                Ok(chance) => (chance / 100.0 - known).abs() <= 0.0005 + 1e-9,
                Err(_) if chance.starts_with("over") => known > 0.999,
                Err(_) => known < 0.001,
            };
            ensure!(is_so, "{row:?} {known}");
        }
        let rows = cells(page, "Before the sleeve, and finished").await?;
        let done: Vec<Finished> = reports.iter().filter_map(|r| finished(&job, r)).collect();
        ensure!(rows.len() == done.len() && !rows.is_empty(), "{rows:?}");
        for (row, done) in rows.iter().zip(&done) {
            let wanted = [
                told(&done.wall, unit),
                told(&done.counterbore, unit),
                told(&done.groove, unit),
                told(&done.bore, unit),
                shown(done.round, unit),
                shown(done.taper, unit),
                told(&done.ring_gaps, unit),
                told(&done.piston, unit),
            ];
            ensure!(row[1..] == wanted, "{demo:?}: {row:?} {wanted:?}");
        }
        // By hand: 0.2980 - 0.0050 and 0.4980 + 0.0050 in; 7.560 - 0.130 and
        // 12.650 + 0.130 mm.
        let rows = cells(page, "Measured from").await?;
        let after = match demo {
            Demo::InchFive => ["0.2930", "0.5030"],
            Demo::MetricEight => ["7.430", "12.780"],
        };
        for bank in rows.chunks(rows.len() / usize::from(job.engine.banks())) {
            ensure!(
                [&bank[0][2], &bank[1][2]] == [after[0], after[1]],
                "{bank:?}"
            );
            ensure!(
                bank[0][4].starts_with("recut, in range"),
                "measured again: {bank:?}"
            );
            ensure!(bank[1][4].contains("new dowels"), "{bank:?}");
            ensure!(bank[2][4] == "in range", "{bank:?}");
        }
        // The plan of the deck has the same numbers.
        let script = "return [...document.querySelectorAll('article figure li')] \
            .map(li => [...li.querySelectorAll('dd')].map(d => d.textContent.trim()))";
        let plan: Vec<Vec<String>> = serde_json::from_value(page.script(script, vec![]).await?)?;
        let order = (0..job.engine.banks())
            .flat_map(|bank| (1..=count).map(move |c| (bank, c)))
            .filter(|(bank, c)| job.engine.bank_of(*c) == *bank);
        for ((_, cylinder), row) in order.zip(&plan) {
            let at = usize::from(cylinder) - 1;
            let (left, done) = (&lefts[at], &done[at]);
            let wanted = [
                shown(left.fit, unit),
                told(&left.height, unit),
                shown(left.gap, unit),
            ];
            ensure!(
                row[..3] == wanted,
                "{demo:?} {cylinder}: {row:?} {wanted:?}"
            );
            ensure!(row[4] == told(&done.bore, unit), "{row:?}");
        }
        ensure!(plan.len() == usize::from(count), "{plan:?}");
    }
    Ok(())
}
