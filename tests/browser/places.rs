//! Every screen of the page, as addresses.

use anyhow::Result;
use coldseat_core::job::step::{STEPS, StepId, Subject};

use crate::page::Page;

/// Every screen, and every step of the job that is open, of one cylinder.
pub async fn places(page: &Page, cylinder: u8) -> Result<Vec<String>> {
    let job = page.job().await?;
    let steps = STEPS.iter().map(|step| match step.subject {
        Subject::Cylinder => format!("{job}/cylinder/{cylinder}/{}", step.name),
        Subject::Bank if step.id == StepId::Deck => format!("{job}/deck/1"),
        Subject::Bank | Subject::Block => format!("{job}/block/{}", step.name),
    });
    let others = ["record", "floor", "engine"].map(|name| format!("{job}/{name}"));
    let front = [
        "#/",
        "#/drop",
        "#/new",
        "#/engines",
        "#/files",
        "#/learnt",
        "#/settings",
    ]
    .map(str::to_owned);
    Ok(front.into_iter().chain(steps).chain(others).collect())
}
