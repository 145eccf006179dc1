//! What is computed on the host and in a browser alike: one request of every
//! calculation, and every number of both demo jobs.

use crate::requests::good;
use coldseat_core::evaluator::{answer, names};
use coldseat_core::job::Owner;
use coldseat_core::job::assess::assess_job;
use coldseat_core::job::demo::Demo;
use coldseat_core::job::steps::together::DeckMemory;
use coldseat_core::job::verdict::StepReport;
use serde_json::{Value, json};

fn step(owner: Owner, report: &StepReport) -> Value {
    json!([
        owner.name(),
        report.id.spec().name,
        format!("{:?} {:?}", report.signal, report.next),
        report.number.map(|n| n.si),
        report.number.and_then(|n| n.u_si),
    ])
}

/// Everything, by name.
pub fn everything() -> Value {
    let calculations: Vec<Value> = names()
        .map(|name| {
            let line = json!({"id": name, "calc": name, "inputs": good(name)}).to_string();
            let reply = answer(&line).unwrap_or_default();
            serde_json::from_str(&reply).unwrap_or(Value::Null)
        })
        .collect();
    let demos: Vec<Value> = Demo::ALL
        .into_iter()
        .map(|demo| {
            let all = assess_job(&demo.job(1), &mut DeckMemory::default());
            let cylinders = all.cylinders.iter().flat_map(|report| {
                let owner = Owner::Cylinder(report.cylinder);
                report.steps.iter().map(move |s| step(owner, s))
            });
            let whole = all
                .whole
                .iter()
                .flat_map(|(owner, steps)| steps.iter().map(move |s| step(*owner, s)));
            let decks = all.decks.iter().map(|deck| {
                let judged = &deck.judged;
                json!([judged.seated, judged.all, judged.alike, judged.bias.as_m()])
            });
            cylinders.chain(whole).chain(decks).collect()
        })
        .collect();
    json!({"calculations": calculations, "demos": demos})
}
