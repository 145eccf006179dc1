//! The paper of the record that goes with the block: one page that a layman reads.
//! What was done, the deck with the numbers of every hole, what was not done.

use crate::parts::after_cut::after_cut_words;
use crate::parts::finished::{pressure_tests, told};
use crate::parts::record_file::{cell_words, deck_words, gasket_words, is_bare, list, no_sleeves};
use crate::parts::record_head::head;
use crate::parts::strip::bore;
use crate::parts::table::hole;
use crate::show::{bare, length_unit};
use crate::texts as t;
use coldseat_core::ask::{
    CylinderReport, Field, Job, Owner, Place, State as Condition, StepId, UnitSystem, as_left,
    finished, is_cut, left_proud, not_done,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// The paper; `code` is what a phone's camera reads.
pub fn customer_paper(
    id: &str,
    job: &Job,
    reports: &[CylinderReport],
    units: UnitSystem,
    code: Option<AnyView>,
) -> AnyView {
    let fitted = || reports.iter().filter(|r| !is_bare(job, r));
    let names = |wanted: &dyn Fn(&&CylinderReport) -> bool| -> Vec<String> {
        fitted()
            .filter(wanted)
            .map(|r| r.cylinder.to_string())
            .collect()
    };
    let home = names(&|r| r.state == Condition::Seated);
    let open = names(&|r| r.state != Condition::Seated);
    let loose = names(&|r| as_left(job, r).fit.is_none());
    let banks = 0..job.engine.banks();
    let plans: Vec<AnyView> = banks
        .clone()
        .map(|bank| deck_plan(id, job, reports, bank, units))
        .collect();
    let cut = banks.filter(|bank| is_cut(job, *bank));
    let proud = (0..job.engine.banks()).filter(|bank| left_proud(job, reports, *bank).is_some());
    let done: Vec<String> = cut
        .clone()
        .chain(proud)
        .map(|bank| deck_words(job, reports, bank, units))
        .chain(cut.flat_map(|bank| after_cut_words(job, bank, units)))
        .chain(core::iter::once(gasket_words(job, units)))
        .collect();
    // The price is no work on the block: the page for the file has it.
    let steps: Vec<String> = not_done(job, reports)
        .iter()
        .filter(|(step, _)| *step != StepId::Enquiry)
        .map(|(step, whose)| {
            let banks = usize::from(job.engine.banks());
            let decided = |owner: &Owner| match owner {
                Owner::Bank(bank) => is_decided(job, *bank) && !is_cut(job, *bank),
                _ => false,
            };
            if *step == StepId::Deck && whose.iter().all(decided) {
                return t::DECK_NOT_MARKED.get().to_owned();
            }
            t::step_not_done(*step, whose, job.cylinders().count(), banks)
        })
        .collect();
    let steps = if steps.is_empty() {
        view! { <p>{t::ALL_STEPS_DONE}</p> }.into_any()
    } else {
        view! { <p>{format!("{}: {}.", t::STEPS_NOT_DONE, steps.join("; "))}</p> }.into_any()
    };
    let disputed = job.disputes().len();
    let has_bores = reports.iter().any(|r| finished(job, r).is_some());
    let stand = job.listed_stand();
    let what = t::deck_plan_what(stand.kind, stand.ends, has_bores);
    view! {
        <section class="record-paper record-customer" aria-labelledby="record-customer">
            <header class="record-head">
                {head(job, "record-customer", t::FOR_THE_CUSTOMER.get())} {code}
            </header>
            <p class="record-sentence">{t::record_sentence(&home, &open)}</p>
            {(!loose.is_empty()).then(|| view! { <p>{t::fit_not_measured(&loose)}</p> })}
            {plans}
            <p class="record-words">{what}</p>
            {no_sleeves(job, reports)}
            {list(t::WHAT_WAS_DONE.get(), done)}
            {pressure_tests(job, units)}
            {steps}
            {(disputed > 0).then(|| view! { <p>{t::disputes_open(disputed)}</p> })}
            {(!job.note.is_empty())
                .then(|| view! { <p>{format!("{}: {}", t::NOTE, job.note)}</p> })}
            <p class="record-words">{format!("{} {}", t::RECORD_CAUTION, t::STANDING_WORDS)}</p>
            <div class="record-sign">
                <p>{t::SIGNED}</p>
                <p>{t::DATE}</p>
            </div>
        </section>
    }
    .into_any()
}

/// Whether a cut of a deck is typed.
fn is_decided(job: &Job, bank: u8) -> bool {
    let place = Place::of_bank(bank, Field::DeckCut, 0);
    job.entries.get(place).is_some()
}

/// A deck from above, front to the left: each hole with the numbers it was left with.
fn deck_plan(
    id: &str,
    job: &Job,
    reports: &[CylinderReport],
    bank: u8,
    units: UnitSystem,
) -> AnyView {
    let holes: Vec<AnyView> = reports
        .iter()
        .filter(|r| job.engine.bank_of(r.cylinder) == bank)
        .map(|report| one(id, job, report, units))
        .collect();
    let caption = {
        let is_left = is_cut(job, bank) || left_proud(job, reports, bank).is_some();
        let unit = length_unit(units).symbol();
        t::deck_plan_caption(bank, job.engine.banks(), unit, is_left)
    };
    view! {
        <figure class="deck-left">
            <figcaption>{caption}</figcaption>
            <ul>{holes}</ul>
        </figure>
    }
    .into_any()
}

/// One hole of it.
fn one(id: &str, job: &Job, report: &CylinderReport, units: UnitSystem) -> AnyView {
    let left = as_left(job, report);
    let mut lines: Vec<(&'static str, String)> = Vec::new();
    if !is_bare(job, report) {
        lines.push((t::LEFT_FIT.get(), cell_words(left.fit, units)));
        lines.push((
            t::LEFT_PROUD.get(),
            told(&left.height, |si| bare(si, units)),
        ));
        lines.push((t::left_gap(job.listed_kind()), cell_words(left.gap, units)));
        if let Some(chance) = left.p_seated {
            lines.push((t::LEFT_CHANCE.get(), t::percent(chance)));
        }
    }
    if let Some(done) = finished(job, report) {
        lines.push((t::LEFT_BORE.get(), told(&done.bore, |si| bare(si, units))));
    }
    let lines: Vec<AnyView> = lines
        .into_iter()
        .map(|(word, number)| {
            view! {
                <div>
                    <dt>{word}</dt>
                    <dd>{number}</dd>
                </div>
            }
            .into_any()
        })
        .collect();
    view! {
        <li>
            <span class="deck-left-hole">{hole(id, report.cylinder)} {bore(report.state)}</span>
            <span class="deck-left-state">{t::record_state(report)}</span>
            <dl>{lines}</dl>
        </li>
    }
    .into_any()
}
