//! Both demo jobs played from the first step to the printed record, every
//! number typed by hand: the inch one by touch on the page's own pad, the
//! metric one by keyboard and Enter. Steps are walked by the page's own "next".
//!
//! The numbers are those of the demo jobs, invented; where the demos stop (one
//! sleeve is not home) the rest is typed here. Nothing is worked out by the
//! test: it looks whether what was typed stands, and which way the page leads.

mod player;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting, Size, containing};
use coldseat_core::ask::{Stand, steps_with};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::step::{StepId, StepSpec, Subject};
use coldseat_core::job::{Field, Owner};
use player::{Hand, Player};
use serde_json::json;

/// What the demos leave open: piston, groove, finish, ring gaps, last test.
const INCH_REST: &[(Field, &[&str])] = &[
    (Field::PistonProud, &["0.0100", "0.0120"]),
    (
        Field::GrooveDepth,
        &["0.0540", "0.0541", "0.0540", "0.0539"],
    ),
    (Field::FinishD, &["4.2000"; 6]),
    (Field::RingGapNow, &["0.0200", "0.0190"]),
    (Field::RetestStart, &["40"]),
    (Field::RetestEnd, &["40"]),
];
const METRIC_REST: &[(Field, &[&str])] = &[
    (Field::PistonProud, &["0.250", "0.300"]),
    (Field::GrooveDepth, &["1.350", "1.352", "1.350", "1.348"]),
    (Field::FinishD, &["125.600"; 6]),
    (Field::RingGapNow, &["0.500", "0.480"]),
    (Field::RetestStart, &["2.8"]),
    (Field::RetestEnd, &["2.8"]),
];

async fn play(
    demo: Demo,
    option: &str,
    hand: Hand,
    high: u8,
    rest: &'static [(Field, &'static [&'static str])],
) -> Result<()> {
    let size = if hand == Hand::Touch {
        Size::Phone
    } else {
        Size::Laptop
    };
    let bench = Bench::open(Setting {
        size,
        ..Setting::default()
    })
    .await?;
    let page = bench.page();
    if hand == Hand::Touch {
        let on = json!({ "enabled": true, "maxTouchPoints": 1 });
        page.devtools("Emulation.setTouchEmulationEnabled", on)
            .await?;
        page.reload().await?;
    }
    page.tap(Role::Link, containing("New job")).await?;
    page.write(containing("Job name"), "Played").await?;
    page.choose(containing("Engine"), option).await?;
    page.tap(Role::Button, containing("Begin the job")).await?;
    page.find(Role::Link, containing("Cylinder 1")).await?;
    let mut player = Player {
        page,
        hand,
        job: demo.job(0),
        rest,
    };
    page.tap(Role::Link, "Price the job").await?;
    // Steps that the page leads past: the engine's own numbers settle them.
    let mut passed = Vec::new();
    let mut steps = steps_with(Stand::USUAL).peekable();
    while let Some(spec) = steps.next() {
        let at = player.address().await?;
        let is_here = at.get(1).is_none_or(|name| name == spec.name) || at[0] == "deck";
        if spec.subject != Subject::Cylinder && !is_here {
            passed.push(spec.id);
            continue;
        }
        if spec.id == StepId::Deck {
            home_and_decked(&mut player, spec, high).await?;
        } else {
            player.step(spec).await.with_context(|| spec.name)?;
        }
        if steps.peek().is_some() {
            let from = || format!("on from {}", spec.name);
            player.on("Next step").await.with_context(from)?;
        }
    }
    ensure!(passed == [StepId::Choose], "led past {passed:?}");
    finished(page, player.job.engine.cylinders).await
}

/// The deck stays locked for the sleeve that is not home; pulled again it is.
async fn home_and_decked(player: &mut Player<'_>, spec: &'static StepSpec, high: u8) -> Result<()> {
    let page = player.page;
    let bank = player.job.engine.bank_of(high);
    let job = player.page.job().await?;
    page.go(&format!("{job}/deck/{}", bank + 1)).await?;
    page.says("Decking is locked").await?;
    page.says(&format!("cylinder {high}")).await?;
    page.tap(Role::Link, containing(&format!("Cylinder {high} stop")))
        .await?;
    player.bring_home(high);
    for step in [StepId::Pull, StepId::Seat] {
        page.go(&format!("{job}/cylinder/{high}/{}", step.spec().name))
            .await?;
        player.fill(step.spec(), Owner::Cylinder(high)).await?;
    }
    page.says("Seated, within the limits you entered").await?;
    page.go(&format!("{job}/deck/1")).await?;
    for bank in 0..player.job.engine.banks() {
        if bank > 0 {
            player.on("Next step").await?;
        }
        page.says("Decking is unlocked").await?;
        player.fill(spec, Owner::Bank(bank)).await?;
    }
    Ok(())
}

/// All home, nothing open, and the record on two printed pages.
async fn finished(page: &Page, cylinders: u8) -> Result<()> {
    for cylinder in 1..=cylinders {
        page.find(
            Role::Link,
            containing(&format!("Cylinder {cylinder} seated")),
        )
        .await?;
    }
    page.menu().await?;
    page.tap(Role::Link, "Record").await?;
    page.find(Role::Button, "Print").await?;
    let text = page.text().await?;
    ensure!(!text.contains("not seated"), "{text}");
    let pdf = std::fs::read(page.print(&format!("played-{cylinders}")).await?)?;
    let pdf = String::from_utf8_lossy(&pdf);
    let pages = pdf.matches("/Type /Page").count() - pdf.matches("/Type /Pages").count();
    ensure!(pages == 2, "{pages} printed pages");
    let complaints = page.complaints().await?;
    ensure!(complaints.is_empty(), "{complaints:?}");
    Ok(())
}

#[tokio::test]
async fn the_inch_job_from_first_step_to_record_by_touch() -> Result<()> {
    play(
        Demo::InchFive,
        "Oxbow five, in-line (demo)",
        Hand::Touch,
        3,
        INCH_REST,
    )
    .await
}

#[tokio::test]
async fn the_metric_job_from_first_step_to_record_by_keyboard() -> Result<()> {
    play(
        Demo::MetricEight,
        "Fenmoor V-eight (demo)",
        Hand::Keyboard,
        6,
        METRIC_REST,
    )
    .await
}
