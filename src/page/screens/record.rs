//! The record: two printed papers, black on white, one for the customer and one for
//! the file, each on a page of its own.

use crate::browser;
use crate::drawings::deck_map::deck_map;
use crate::live::{live, words};
use crate::parts::bar::whole_bar;
use crate::parts::choice::language_choice;
use crate::parts::notice::export_button;
use crate::parts::picture::block_plan;
use crate::parts::record_customer::customer_paper;
use crate::parts::record_file::{cell_words, file_paper};
use crate::parts::share::share;
use crate::parts::words::record_words;
use crate::screens::{Route, View};
use crate::share::file::save_table;
use crate::share::qr::qr;
use crate::state::{State, Target};
use crate::texts as t;
use crate::tongue::Tongue;
use coldseat_core::ask::document::Shared;
use coldseat_core::ask::{
    CylinderReport, Field, Job, Owner, UnitSystem, as_left, holes_of, plan, shown,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// Both papers.
const BOTH: &str = "record";
/// The customer's alone.
const ONLY_CUSTOMER: &str = "record only-customer";
/// The file's alone.
const ONLY_FILE: &str = "record only-file";

/// The screen.
#[component]
pub fn RecordScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    let units = untrack(|| state.session.units(Target::Job));
    let key = id.clone();
    let sheet = move || {
        let reports = state.session.reports.get();
        let mut drawings = drawings(state, units);
        state.session.open.with(|open| {
            open.as_ref().map(|o| {
                let code = essentials(&o.job, &reports, units);
                let opens = opens(&key);
                view! {
                    {customer_paper(&key, &o.job, &reports, units, code)}
                    {file_paper(&key, &o.job, &reports, units, drawings.take(), opens)}
                }
                .into_any()
            })
        })
    };
    // Which papers are printed.
    let papers = RwSignal::new(BOTH);
    let button = move |label: &'static str, class: &'static str, which: &'static str| {
        let print = move |_| {
            papers.set(which);
            browser::after_paint(browser::print);
        };
        view! {
            <button type="button" class=class on:click=print>
                {label}
            </button>
        }
        .into_any()
    };
    let floor = Route::Job {
        id: id.clone(),
        view: View::Floor,
    }
    .address();
    view! {
        {whole_bar(state, &id, t::RECORD.get().to_owned())}
        <div class="row screen-only">
            {button(t::PRINT.get(), "button-first", BOTH)}
            {button(t::PRINT_CUSTOMER.get(), "", ONLY_CUSTOMER)}
            {button(t::PRINT_FILE.get(), "", ONLY_FILE)}
            {export_button(state)}
            <a class="button" href=floor>
                {t::FLOOR_SHEET}
            </a>
            <button type="button" on:click=move |_| save_table(state)>
                {t::SAVE_CSV}
            </button>
        </div>
        <div class="screen-only">
            {share(t::SHARE_FLOOR.get(), "link-floor", move || {
                state.session
                    .open
                    .with(|o| o.as_ref().map(|o| Shared::Floor(Box::new(o.job.clone()))))
            })}
        </div>
        <div class="screen-only">
            {language_choice(state, "record-language", t::RECORD_LANGUAGE, Tongue::speak_here)}
        </div>
        {record_words(state)}
        <article class=words(move || papers.get())>{live(sheet)}</article>
        <div class="row screen-only">
            <button
                type="button"
                on:click=move |_| {
                    state.session.bin(Target::Job, true);
                    browser::go("#/");
                }
            >
                {t::INTO_BIN}
            </button>
        </div>
    }
    .into_any()
}

/// Cylinders at most for which the page has room for drawings.
const DRAWN_MOST: u8 = 8;

/// The drawings that matter afterwards: where the decks were low, what is left
/// between the bores.
fn drawings(state: State, units: UnitSystem) -> Option<AnyView> {
    let (cylinders, banks) = state.session.open.with(|open| {
        let engine = &open.as_ref()?.job.engine;
        Some((engine.cylinders, engine.banks()))
    })?;
    if cylinders > DRAWN_MOST {
        return None;
    }
    let maps = (0..banks).filter_map(|bank| {
        let (spots, holes, cut) = state.session.open.with(|open| {
            let job = &open.as_ref()?.job;
            let spots = shown(job, Owner::Bank(bank), Field::LowSpot);
            let holes = holes_of(job, bank);
            let cut = plan(job, bank).ok().map(|p| p.plan.removal.as_m());
            Some((spots, holes, cut))
        })?;
        deck_map(&spots, &holes, cut, units)
    });
    let all: Vec<AnyView> = maps.chain(block_plan(state, units)).collect();
    (!all.is_empty()).then(|| view! { <div class="record-drawings">{all}</div> }.into_any())
}

/// The address of this record as a code: it opens on every device that has the job. A
/// page that came as a file has no address that another device could open.
fn opens(id: &str) -> Option<AnyView> {
    let page = browser::page_address();
    if !page.starts_with("http") {
        return None;
    }
    let id = id.to_owned();
    let view = View::Record;
    let address = format!("{page}{}", Route::Job { id, view }.address());
    let code = qr(&address, t::QR_OPENS_LABEL.get())?;
    Some(
        view! {
            <figure class="record-code record-opens">
                {code} <figcaption>{t::QR_OPENS}</figcaption>
            </figure>
        }
        .into_any(),
    )
}

/// A capital as a code that knows no accents packs it.
const fn without_accent(letter: char) -> char {
    match letter {
        '\u{c1}' => 'A',
        '\u{c9}' => 'E',
        '\u{cd}' => 'I',
        '\u{d3}' => 'O',
        '\u{da}' | '\u{dc}' => 'U',
        '\u{d1}' => 'N',
        other => other,
    }
}

/// The essentials as a code for a phone's camera: in letters and digits that it
/// packs best, as much as fits.
fn essentials(job: &Job, reports: &[CylinderReport], units: UnitSystem) -> Option<AnyView> {
    let plain = |text: &str, most: usize| -> String {
        text.to_uppercase()
            .chars()
            .map(without_accent)
            .filter(|c| c.is_ascii_alphanumeric() || " .-/:".contains(*c))
            .take(most)
            .collect()
    };
    let date = browser::date(browser::now());
    let day = date.get(..10).unwrap_or_default();
    let lines: Vec<String> = reports
        .iter()
        .map(|report| {
            let left = as_left(job, report);
            // The code has no comma.
            let number = |cell| cell_words(cell, units).replace(',', ".");
            let (fit, gap) = (number(left.fit), number(left.gap));
            let state = plain(t::state(report.state), 12);
            plain(&format!("{} {fit} {gap} {state}", report.cylinder), 40)
        })
        .collect();
    let head = format!("{} {day} {}", t::QR_HEAD, plain(&job.name, 30));
    let whose = format!(
        "{} / {}",
        plain(&job.customer, 30),
        plain(&job.engine.name, 30)
    );
    [
        format!("{head} / {whose} / {}", lines.join("/")),
        format!("{head} / {}", lines.join("/")),
        format!("{head} / {whose}"),
    ]
    .iter()
    .find_map(|text| qr(text, t::QR_LABEL.get()))
    .map(|code| {
        view! {
            <figure class="record-code">
                {code} <figcaption>{t::QR_CAPTION}</figcaption>
            </figure>
        }
        .into_any()
    })
}
