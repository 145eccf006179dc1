//! The job cases of `tests/jobs` on the page: where a case ends with what a step
//! of a cylinder says, the page says the same at that step.

use std::path::Path;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Setting};
use coldseat_core::document::slot::{Slot, write_slot};
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::step::StepId;
use coldseat_core::job::{Job, Owner};
use serde_json::json;

use crate::shop_bench::Bench as Shop;
use crate::shop_cases::{Case, cases};
use crate::words;

/// The job as the case leaves it, and what is said of it at last.
fn at_last(case: &Case) -> Option<(Box<Job>, Vec<&str>)> {
    let mut shop: Option<Shop> = None;
    let mut said = Vec::new();
    for line in &case.lines {
        let (verb, rest) = line.split_once(": ")?;
        match (verb, shop.as_mut()) {
            ("From", _) => shop = Some(Shop::from(rest)),
            ("Says", _) => said.push(rest),
            (_, Some(shop)) => {
                said.clear();
                shop.play(verb, rest).ok()?;
            }
            (_, None) => return None,
        }
    }
    match shop? {
        Shop::Job(job) => Some((job, said)),
        Shop::Drop(_) => None,
    }
}

/// Cylinder, step and signal; `None` where something else is said.
fn of_step(said: &str) -> Option<(u8, StepId, &str)> {
    let (what, wanted) = said.split_once(": ")?;
    let (whose, step) = what.split_once(", ")?;
    let Some(Owner::Cylinder(cylinder)) = words::owner(whose) else {
        return None;
    };
    let signal = wanted.split_once(", ").map_or(wanted, |(signal, _)| signal);
    Some((cylinder, words::step(step), signal))
}

#[tokio::test]
async fn the_page_says_what_the_cases_end_with() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../jobs");
    let mut looked = 0;
    for (number, case) in cases(&folder).iter().enumerate() {
        let Some((job, said)) = at_last(case) else {
            continue;
        };
        let said: Vec<_> = said.into_iter().filter_map(of_step).collect();
        if said.is_empty() {
            continue;
        }
        let slot = write_slot(&Slot {
            sequence: 1,
            row: Vec::new(),
            text: write(&Document::new(Body::Job(job), 1_700_000_000_000)),
        });
        let id = format!("case{number}");
        let keep = "localStorage[`coldseat/job/${arguments[0]}/a`] = arguments[1]";
        page.script(keep, vec![json!(id), json!(slot)]).await?;
        page.reload().await?;
        for (cylinder, step, signal) in said {
            let step = step.spec().name;
            page.go(&format!("#/job/{id}/cylinder/{cylinder}/{step}"))
                .await?;
            let shown = "return document.querySelector('.step-answer .verdict-word')?.textContent";
            page.until(&format!("{signal}: {}, {step}", case.name), async || {
                Ok((page.script(shown, vec![]).await? == signal).then_some(()))
            })
            .await
            .context(case.name.clone())?;
            looked += 1;
        }
    }
    ensure!(looked >= 8, "{looked}");
    Ok(())
}
