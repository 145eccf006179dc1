//! What stands over each paper of the record: whose block, which, by whom, when.

use crate::browser;
use crate::texts as t;
use coldseat_core::ask::{Field, Job, Owner, Place};
use coldseat_markup::view;
use leptos::prelude::*;

/// What is typed of the block as a whole, as it is typed.
fn typed(job: &Job, field: Field) -> Option<String> {
    let place = Place {
        owner: Owner::Block,
        field,
        index: 0,
    };
    let text = job.entries.get(place)?.text.trim().to_owned();
    (!text.is_empty()).then(|| format!("{}: {text}", t::field(field)))
}

/// The head; `id` names its heading.
pub fn head(job: &Job, id: &'static str, paper: &'static str) -> AnyView {
    let said = [
        (!job.customer.is_empty()).then(|| format!("{}: {}", t::CUSTOMER, job.customer)),
        (!job.engine.name.trim().is_empty())
            .then(|| format!("{}: {}", t::FROM_ENGINE, job.engine.name)),
        typed(job, Field::BlockSerial),
        typed(job, Field::EngineHours),
        typed(job, Field::ShopName),
        typed(job, Field::Machinist),
        Some(format!("{} {}", t::PRINTED, browser::date(browser::now()))),
    ];
    let lines: Vec<AnyView> = said
        .into_iter()
        .flatten()
        .map(|words| view! { <li>{words}</li> }.into_any())
        .collect();
    view! {
        <div class="record-whose">
            <h2 id=id>{job.name.clone()} " " <span class="record-which">{paper}</span></h2>
            <ul class="record-lines">{lines}</ul>
        </div>
    }
    .into_any()
}
