//! The record: one printed page, black on white, taped to the block.

use crate::browser;
use crate::drawings::deck_map::deck_map;
use crate::live::live;
use crate::parts::after_cut::after_cut_paper;
use crate::parts::bar::whole_bar;
use crate::parts::finished::{finished_table, pressure_tests};
use crate::parts::notice::export_button;
use crate::parts::picture::block_plan;
use crate::parts::share::share;
use crate::parts::strip::bore;
use crate::parts::table::{Line, cell, hole, table};
use crate::route::{Route, View};
use crate::share::file::save_table;
use crate::share::qr::qr;
use crate::show::{bare, clock, length, length_unit};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::document::Shared;
use coldseat_core::ask::{
    CylinderReport, Field, Job, Length, Lock, Mark, Owner, Place, State as Condition, UnitSystem,
    as_left, deck_heights, gap_uncertainty, gasket, holes_of, lock, measured_cold, not_done,
    only_marked, plan, shown,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn RecordScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    let units = untrack(|| state.units(Target::Job));
    let key = id.clone();
    let sheet = move || {
        let reports = state.reports.get();
        let mut drawings = drawings(state, units);
        state.open.with(|open| {
            open.as_ref()
                .map(|o| record(&key, &o.job, &reports, units, drawings.take()))
        })
    };
    let floor = Route::Job {
        id: id.clone(),
        view: View::Floor,
    }
    .address();
    view! {
        {whole_bar(state, &id, t::RECORD.to_owned())}
        <div class="row screen-only">
            <button type="button" class="button-first" on:click=|_| browser::print()>
                {t::PRINT}
            </button>
            {export_button(state)}
            <a class="button" href=floor>
                {t::FLOOR_SHEET}
            </a>
            <button type="button" on:click=move |_| save_table(state)>
                {t::SAVE_CSV}
            </button>
        </div>
        <div class="screen-only">
            {share(t::SHARE_FLOOR, "link-floor", move || {
                state
                    .open
                    .with(|o| o.as_ref().map(|o| Shared::Floor(Box::new(o.job.clone()))))
            })}
        </div>
        <article class="record">{live(sheet)}</article>
        <div class="row screen-only">
            <button
                type="button"
                on:click=move |_| {
                    state.bin(Target::Job, true);
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

/// The same beside both tables.
const DRAWN_WITH_BOTH: u8 = 3;

/// The drawings that matter afterwards: where the decks were low, what is left
/// between the bores.
fn drawings(state: State, units: UnitSystem) -> Option<AnyView> {
    let (cylinders, banks) = state.open.with(|open| {
        let engine = &open.as_ref()?.job.engine;
        Some((engine.cylinders, engine.banks()))
    })?;
    if cylinders > DRAWN_MOST {
        return None;
    }
    let maps = (0..banks).filter_map(|bank| {
        let (spots, holes, cut) = state.open.with(|open| {
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

fn record(
    id: &str,
    job: &Job,
    reports: &[CylinderReport],
    units: UnitSystem,
    drawings: Option<AnyView>,
) -> AnyView {
    let lines: Vec<Line> = reports
        .iter()
        .filter(|r| !is_bare(job, r))
        .map(|r| line(id, job, r, units))
        .collect();
    let heads = [
        t::CYLINDER,
        t::STATE,
        t::SLEEVE_OD,
        t::BORE,
        t::FIT,
        t::FLANGE,
        t::DEPTH,
        t::HEIGHT,
        t::GAP,
        t::TILT,
        t::HOME_CHANCE,
        t::PULLS,
    ]
    .map(str::to_owned);
    let caption = format!(
        "{}, {} ({})",
        t::AS_LEFT,
        t::MEAN,
        length_unit(units).symbol()
    );
    let decks: Vec<AnyView> = (0..job.engine.banks())
        .map(|bank| deck_line(job, reports, bank, units))
        .collect();
    let after: Vec<AnyView> = (0..job.engine.banks())
        .filter_map(|bank| after_cut_paper(job, bank, units))
        .collect();
    let open: Vec<String> = reports
        .iter()
        .filter(|r| r.state != Condition::Seated && !is_bare(job, r))
        .map(|r| {
            let why = r
                .step(r.current)
                .map(|s| t::next(&s.next, units))
                .unwrap_or_default();
            format!("{} {}: {why}", t::CYLINDER, r.cylinder)
        })
        .collect();
    let open = if open.is_empty() {
        view! { <p>{t::NOTHING_OPEN}</p> }.into_any()
    } else {
        list(t::NOT_DONE, open)
    };
    let steps: Vec<String> = not_done(job, reports)
        .iter()
        .map(|(step, whose)| {
            let banks = usize::from(job.engine.banks());
            t::step_not_done(*step, whose, job.cylinders().count(), banks)
        })
        .collect();
    let steps = (!steps.is_empty()).then(|| {
        view! { <p>{format!("{}: {}.", t::STEPS_NOT_DONE, steps.join("; "))}</p> }
    });
    let marked: Vec<String> = only_marked(job, reports)
        .iter()
        .map(|(step, whose)| {
            let banks = usize::from(job.engine.banks());
            t::step_not_done(*step, whose, job.cylinders().count(), banks)
        })
        .collect();
    let marked = (!marked.is_empty()).then(|| {
        view! { <p>{format!("{}: {}.", t::STEPS_ONLY_MARKED, marked.join("; "))}</p> }
    });
    let disputes: Vec<String> = job
        .disputes()
        .iter()
        .map(|spot| t::disputed(*spot))
        .collect();
    let disputes = (!disputes.is_empty()).then(|| list(t::IN_DISPUTE, disputes));
    let limit = |field: Field| engine_words(job, field, units);
    let limits = t::record_limits(
        &limit(Field::FitLow),
        &limit(Field::FitHigh),
        &limit(Field::GapLimit),
        &limit(Field::TiltLimit),
        length_unit(units).symbol(),
    );
    let finished = finished_table(id, job, reports, units);
    // A second table takes the drawings' place on the paper.
    let crowded = finished.is_some() && reports.len() > usize::from(DRAWN_WITH_BOTH);
    let drawn = if crowded { "screen-only crowded" } else { "" };
    view! {
        <header class="record-head">
            <h2>{job.name.clone()}</h2>
            <p>
                {format!("{}: {}", t::CUSTOMER, job.customer)}<br />
                {format!("{}: {}", t::FROM_ENGINE, job.engine.name)}<br />
                {format!("{} {}", t::PRINTED, browser::date(browser::now()))}
            </p>
            {essentials(job, reports, units)}
        </header>
        {table("cards", Some(caption), &heads, lines)}
        {finished}
        {no_sleeves(job, reports)}
        {pressure_tests(job, units)}
        <p>{limits}</p>
        <p>{gauges(job, reports, units)}</p>
        {decks}
        {after}
        {gasket_line(job, units)}
        <div class=drawn>{drawings}</div>
        {disputes}
        {open}
        {steps}
        {marked}
        {remarks(job)}
        {(!job.note.is_empty()).then(|| view! { <p>{format!("{}: {}", t::NOTE, job.note)}</p> })}
        <p class="record-words">{format!("{} {}", t::RECORD_CAUTION, t::STANDING_WORDS)}</p>
        <div class="record-sign">
            <p>{t::SIGNED}</p>
            <p>{t::DATE}</p>
        </div>
    }
    .into_any()
}

/// Left out, and nothing read in it: what was read of a sleeve there stands in the
/// table whatever the hole is called.
fn is_bare(job: &Job, report: &CylinderReport) -> bool {
    let owner = Owner::Cylinder(report.cylinder);
    report.state == Condition::LeftOut && !job.entries.any_of(owner)
}

/// The cylinders that got no sleeve.
fn no_sleeves(job: &Job, reports: &[CylinderReport]) -> Option<AnyView> {
    let left_out = reports.iter().filter(|r| is_bare(job, r));
    let names: Vec<String> = left_out.map(|r| r.cylinder.to_string()).collect();
    (!names.is_empty()).then(|| view! { <p>{t::no_sleeve_in(&names.join(", "))}</p> }.into_any())
}

/// A limit of the engine as it is used; what is typed and cannot be used is told
/// as it is typed.
fn engine_words(job: &Job, field: Field, units: UnitSystem) -> String {
    match job.engine_si(field) {
        Ok(Some(si)) => bare(si, units),
        Ok(None) => DASH.to_owned(),
        Err(_) => {
            let typed = job.entries.get(Place::of_engine(field));
            t::cannot_be_used(typed.map_or(DASH, |entry| &entry.text))
        }
    }
}

/// How sure the gaps are, by the gauges.
fn gauges(job: &Job, reports: &[CylinderReport], units: UnitSystem) -> String {
    let of = |field: Field| engine_words(job, field, units);
    let gap = gap_uncertainty(reports).map(|u| bare(u.as_m(), units));
    t::record_gauges(
        &of(Field::GaugeHeight),
        &of(Field::GaugeThickness),
        &of(Field::GaugeDepth),
        gap.as_deref(),
        length_unit(units).symbol(),
    )
}

fn line(id: &str, job: &Job, report: &CylinderReport, units: UnitSystem) -> Line {
    let left = as_left(job, report);
    let of = |length: Option<Length>| cell_words(length, units);
    let class = match report.state {
        Condition::Stop => "record-stop",
        Condition::Look => "record-look",
        _ => "",
    };
    let condition = view! {
        <span class="record-state">
            {bore(report.state)} <span>{t::record_state(report)}</span>
        </span>
    }
    .into_any();
    let numbers = [
        of(left.sleeve),
        of(left.bore),
        of(left.fit),
        of(left.flange),
        of(left.depth),
        of(left.height),
        of(left.gap),
        of(left.tilt),
        left.p_seated.map_or_else(|| DASH.to_owned(), t::percent),
        left.pulls.to_string(),
    ];
    Line {
        class,
        head: hole(id, report.cylinder),
        cells: core::iter::once(condition)
            .chain(numbers.into_iter().map(cell))
            .collect(),
    }
}

/// Marks and notes of the steps, and the times kept.
fn remarks(job: &Job) -> Option<AnyView> {
    let whose = |owner: &Owner| match owner {
        Owner::Block => String::new(),
        Owner::Bank(bank) => format!("{} {}, ", t::DECK, t::bank(*bank)),
        Owner::Cylinder(cylinder) => format!("{} {cylinder}, ", t::CYLINDER),
    };
    let mut lines: Vec<String> = Vec::new();
    for ((owner, step), record) in &job.steps {
        let mark = match &record.mark {
            Some(Mark::Skipped(why)) => format!("{}: {why}", t::MARK_SKIP.to_lowercase()),
            Some(Mark::NotForThisJob) => t::MARK_NOT.to_lowercase(),
            Some(Mark::Done) | None => String::new(),
        };
        let said: Vec<&str> = [mark.as_str(), record.note.as_str()]
            .into_iter()
            .filter(|words| !words.is_empty())
            .collect();
        if !said.is_empty() {
            lines.push(format!(
                "{}{}: {}",
                whose(owner),
                t::step_title(*step),
                said.join("; ")
            ));
        }
    }
    for cylinder in job.cylinders() {
        let mut times: Vec<String> = [Field::ChillTime, Field::Carry, Field::HoldTime]
            .into_iter()
            .filter_map(|field| {
                let (_, s) = *shown(job, Owner::Cylinder(cylinder), field).first()?;
                Some(format!("{} {}", t::field(field).to_lowercase(), clock(s)))
            })
            .collect();
        if let Some((cold, taken)) = measured_cold(job, cylinder) {
            times.push(t::cold_use(&length(cold.as_m(), job.engine.units), taken));
        }
        if !times.is_empty() {
            lines.push(format!("{} {cylinder}: {}", t::CYLINDER, times.join(", ")));
        }
    }
    (!lines.is_empty()).then(|| list(t::REMARKS, lines))
}

/// Lines under a word.
fn list(head: &'static str, lines: Vec<String>) -> AnyView {
    let items: Vec<AnyView> = lines
        .into_iter()
        .map(|words| view! { <li>{words}</li> }.into_any())
        .collect();
    view! {
        <p>{head}</p>
        <ul>{items}</ul>
    }
    .into_any()
}

/// The gasket to buy, once the pistons are measured.
fn gasket_line(job: &Job, units: UnitSystem) -> AnyView {
    let words = match gasket(job) {
        Ok(None) => t::GASKET_UNKNOWN.to_owned(),
        Ok(Some(found)) => t::gasket(&found, units),
        Err(lack) => t::lack(&lack, units),
    };
    view! { <p>{words}</p> }.into_any()
}

/// The essentials as a code for a phone's camera: in letters and digits that it
/// packs best, as much as fits.
fn essentials(job: &Job, reports: &[CylinderReport], units: UnitSystem) -> Option<AnyView> {
    let plain = |text: &str, most: usize| -> String {
        text.to_uppercase()
            .chars()
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
            let (fit, gap) = (cell_words(left.fit, units), cell_words(left.gap, units));
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
    .find_map(|text| qr(text, t::QR_LABEL))
    .map(|code| {
        view! {
            <figure class="record-code">
                {code} <figcaption>{t::QR_CAPTION}</figcaption>
            </figure>
        }
        .into_any()
    })
}

/// What stands in a cell without a value.
const DASH: &str = "\u{2013}";

/// A length, or a dash where there is none.
fn cell_words(length: Option<Length>, units: UnitSystem) -> String {
    length.map_or_else(|| DASH.to_owned(), |l| bare(l.as_m(), units))
}

fn deck_line(job: &Job, reports: &[CylinderReport], bank: u8, units: UnitSystem) -> AnyView {
    let name = if job.engine.banks() > 1 {
        format!("{} {}", t::DECK, t::bank(bank))
    } else {
        t::DECK.to_owned()
    };
    let words = match lock(job, reports, bank) {
        Lock::NoSleeves => t::NO_SLEEVES.to_owned(),
        Lock::Disputed(disputed) => t::mend(&disputed, units),
        Lock::Locked(_) => t::LOCKED.to_owned(),
        Lock::Together(p) => t::together(p),
        open @ (Lock::Open | Lock::OpenBeside(_) | Lock::ByHand(..)) => {
            let cut = match plan(job, bank) {
                Ok(plan) => {
                    let cut = length(plan.plan.removal.as_m(), units);
                    match &plan.left_least {
                        Some(left) => {
                            let left: Vec<String> = plan
                                .cylinders
                                .iter()
                                .zip(left)
                                .map(|(c, left)| format!("{c}: {}", bare(left.as_m(), units)))
                                .collect();
                            t::deck_cut(&cut, &left.join(", "))
                        }
                        None => t::deck_cut_plain(&cut),
                    }
                }
                Err(lack) => t::lack(&lack, units),
            };
            match open {
                Lock::ByHand(_, unlock) => {
                    format!("{cut}. {}: {}", t::OPEN_BY_HAND, unlock.reason)
                }
                Lock::OpenBeside(holes) => {
                    let holes: Vec<String> = holes.iter().map(u8::to_string).collect();
                    format!("{cut}. {}", t::open_beside(&holes.join(", ")))
                }
                _ => cut,
            }
        }
    };
    let heights: Vec<String> = deck_heights(job, reports, bank)
        .into_iter()
        .map(|height| length(height.as_m(), units))
        .collect();
    let after = if heights.is_empty() {
        String::new()
    } else {
        format!("; {}: {}", t::NEW_DECK_HEIGHT, heights.join(", "))
    };
    view! { <p>{format!("{name}: {words}{after}")}</p> }.into_any()
}
