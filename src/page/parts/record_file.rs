//! The paper of the record that stays in the shop: every number of every hole, the
//! limits and gauges behind them, what is in dispute, marked or noted.

use crate::parts::after_cut::after_cut_paper;
use crate::parts::finished::{finished_table, pressure_tests, told};
use crate::parts::record_head::head;
use crate::parts::strip::bore;
use crate::parts::table::{Line, cell, hole, table};
use crate::show::{bare, clock, in_full, length, length_unit};
use crate::texts as t;
use coldseat_core::ask::{
    CylinderReport, Field, GAUGES_CHECKED, Job, Length, Lock, Mark, Owner, Place, SleeveEnds,
    Standing, State as Condition, Told, UnitSystem, as_left, deck_heights, gap_uncertainty, gasket,
    is_cut, is_cut_decided, left_proud, lock, measured_cold, only_marked, plan, shim_laid, shown,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// Holes up to which drawings have room beside both tables.
const DRAWN_WITH_BOTH: usize = 3;

/// Limits of sleeves that are left proud.
const PROUD_LIMITS: [Field; 5] = [
    Field::ProudLow,
    Field::ProudHigh,
    Field::SpreadHole,
    Field::SpreadNeighbour,
    Field::SpreadAll,
];

/// The paper.
pub fn file_paper(
    id: &str,
    job: &Job,
    reports: &[CylinderReport],
    units: UnitSystem,
    drawings: Option<AnyView>,
    opens: Option<AnyView>,
) -> AnyView {
    let lines: Vec<Line> = reports
        .iter()
        .filter(|r| !is_bare(job, r))
        .map(|r| line(id, job, r, units))
        .collect();
    let caption = format!(
        "{}, {} ({})",
        t::AS_LEFT,
        t::MEAN,
        length_unit(units).symbol()
    );
    let stand = job.listed_stand();
    let heads = t::as_left_columns(stand.kind, stand.ends).map(str::to_owned);
    let banks = 0..job.engine.banks();
    let decks: Vec<AnyView> = banks
        .clone()
        .map(|bank| deck_words(job, reports, bank, units))
        .map(|words| view! { <p>{words}</p> }.into_any())
        .collect();
    let after: Vec<AnyView> = banks
        .filter(|bank| is_cut_decided(job, reports, *bank))
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
        list(t::NOT_DONE.get(), open)
    };
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
    let disputes = (!disputes.is_empty()).then(|| list(t::IN_DISPUTE.get(), disputes));
    let limit = |field: Field| engine_words(job, field, units);
    let limits = t::record_limits(
        &limit(Field::FitLow),
        &limit(Field::FitHigh),
        &limit(Field::GapLimit),
        &limit(Field::TiltLimit),
        length_unit(units).symbol(),
    );
    let proud = (stand.ends == SleeveEnds::Proud).then(|| {
        let all = PROUD_LIMITS.map(limit);
        view! { <p>{t::proud_limits(&all, length_unit(units).symbol())}</p> }
    });
    let finished = finished_table(id, job, reports, units);
    // A second table takes the drawings' place on the paper.
    let many = reports.len() > DRAWN_WITH_BOTH;
    let drawn = match (finished.is_some(), many, after.is_empty()) {
        (true, true, _) => "screen-only crowded",
        (true, false, false) => "screen-only",
        _ => "",
    };
    view! {
        <section class="record-paper record-file" aria-labelledby="record-file">
            <header class="record-head">
                {head(job, "record-file", t::FOR_THE_FILE.get())} {opens}
            </header>
            {table("cards", Some(caption), &heads, lines)}
            {finished}
            {no_sleeves(job, reports)}
            {pressure_tests(job, units)}
            <p>{limits}</p>
            {proud}
            {shims(job, units)}
            <p>{gauges(job, reports, units)}</p>
            {decks}
            {after}
            <p>{gasket_words(job, units)}</p>
            <div class=drawn>{drawings}</div>
            {disputes}
            {open}
            {marked}
            {remarks(job)}
            <p class="record-words">{t::RECORD_CAUTION}</p>
        </section>
    }
    .into_any()
}

/// Left out, and nothing read in it: what was read of a sleeve there stands in the
/// table whatever the hole is called.
pub fn is_bare(job: &Job, report: &CylinderReport) -> bool {
    let owner = Owner::Cylinder(report.cylinder);
    report.state == Condition::LeftOut && !job.entries.any_of(owner)
}

/// The cylinders that got no sleeve.
pub fn no_sleeves(job: &Job, reports: &[CylinderReport]) -> Option<AnyView> {
    let left_out = reports.iter().filter(|r| is_bare(job, r));
    let names: Vec<String> = left_out.map(|r| r.cylinder.to_string()).collect();
    (!names.is_empty()).then(|| view! { <p>{t::no_sleeve_in(&names.join(", "))}</p> }.into_any())
}

/// A limit of the engine as it is used; what is typed and cannot be used is told
/// as it is typed.
/// The shims that lie, hole by hole; nothing where there is none.
fn shims(job: &Job, units: UnitSystem) -> Option<AnyView> {
    let laid: Vec<(u8, String)> = job
        .cylinders()
        .filter_map(|cylinder| {
            let size = match shim_laid(job, cylinder) {
                Standing::Known(size) if size.as_m() > 0.0 => length(size.as_m(), units),
                Standing::Known(_) | Standing::NotHere => return None,
                Standing::Missing(missing) => t::missing_of(&missing),
                Standing::Unusable(unusable) => t::mend(&unusable, units),
                Standing::Refused(fault) => t::fault(&fault),
            };
            Some((cylinder, size))
        })
        .collect();
    (!laid.is_empty()).then(|| view! { <p>{t::shims_laid(&laid)}</p> }.into_any())
}

fn engine_words(job: &Job, field: Field, units: UnitSystem) -> String {
    match job.engine_si(field) {
        Ok(Some(si)) => in_full(si, units),
        Ok(None) => DASH.to_owned(),
        Err(_) => {
            let typed = job.entries.get(Place::of_engine(field));
            t::cannot_be_used(typed.map_or(DASH, |entry| &entry.text))
        }
    }
}

/// What is known of each gauge, when it was last checked, and so of the gaps.
fn gauges(job: &Job, reports: &[CylinderReport], units: UnitSystem) -> String {
    let known: Vec<String> = GAUGES_CHECKED
        .into_iter()
        .zip(0_u8..)
        .filter(|(gauge, _)| job.listed_stand().has_field(*gauge))
        .map(|(gauge, index)| {
            let place = Place {
                index,
                ..Place::of_engine(Field::GaugeChecked)
            };
            let checked = job.entries.get(place).map(|entry| entry.text.as_str());
            t::record_gauge(gauge, &engine_words(job, gauge, units), checked)
        })
        .collect();
    let gap = gap_uncertainty(reports).map(|u| bare(u.as_m(), units));
    t::record_gauges(
        &known.join("; "),
        gap.as_deref(),
        length_unit(units).symbol(),
    )
}

fn line(id: &str, job: &Job, report: &CylinderReport, units: UnitSystem) -> Line {
    let left = as_left(job, report);
    let of = |length: Option<Length>| cell_words(length, units);
    let read = |of: &Told| told(of, |si| bare(si, units));
    let pulls = match &left.pulls {
        Told::Read(all) => all.len().to_string(),
        Told::Absent => "0".to_owned(),
        unusable => told(unusable, |si| bare(si, units)),
    };
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
        read(&left.sleeve),
        read(&left.bore),
        of(left.fit),
        read(&left.flange),
        read(&left.depth),
        read(&left.height),
        of(left.gap),
        of(left.tilt),
        left.p_seated.map_or_else(|| DASH.to_owned(), t::percent),
        pulls,
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
        let mut times: Vec<String> = [
            Field::ChillTime,
            Field::Carry,
            Field::HomeTimed,
            Field::HoldTime,
        ]
        .into_iter()
        .filter_map(|field| {
            let (_, s) = *shown(job, Owner::Cylinder(cylinder), field).first()?;
            Some(format!("{} {}", t::time_kept(field), clock(s)))
        })
        .collect();
        if let Some((cold, taken)) = measured_cold(job, cylinder) {
            times.push(t::cold_use(&length(cold.as_m(), job.engine.units), taken));
        }
        if !times.is_empty() {
            lines.push(format!("{} {cylinder}: {}", t::CYLINDER, times.join(", ")));
        }
    }
    (!lines.is_empty()).then(|| list(t::REMARKS.get(), lines))
}

/// Lines under a word.
pub fn list(head: &'static str, lines: Vec<String>) -> AnyView {
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
pub fn gasket_words(job: &Job, units: UnitSystem) -> String {
    match gasket(job) {
        Ok(None) => t::GASKET_UNKNOWN.get().to_owned(),
        Ok(Some(found)) => t::gasket(&found, units),
        Err(lack) => t::lack(&lack, units),
    }
}

/// What stands in a cell without a value.
pub const DASH: &str = "\u{2013}";

/// A length, or a dash where there is none.
pub fn cell_words(length: Option<Length>, units: UnitSystem) -> String {
    length.map_or_else(|| DASH.to_owned(), |l| bare(l.as_m(), units))
}

/// The cut of a deck and what it left, or why it may not be cut, in one line.
pub fn deck_words(job: &Job, reports: &[CylinderReport], bank: u8, units: UnitSystem) -> String {
    let name = if job.engine.banks() > 1 {
        format!("{} {}", t::DECK, t::bank(bank))
    } else {
        t::DECK.get().to_owned()
    };
    if let Some(next) = left_proud(job, reports, bank) {
        return format!(
            "{name}: {} {}",
            t::LEFT_PROUD_NOT_DECKED,
            t::next(&next, units)
        );
    }
    let words = match lock(job, reports, bank) {
        Lock::NoSleeves => t::NO_SLEEVES.get().to_owned(),
        Lock::Disputed(disputed) => t::mend(&disputed, units),
        Lock::Locked(_) if is_cut(job, bank) => {
            let cut = Place::of_bank(bank, Field::DeckCut, 0);
            let typed = job.entries.get(cut).map_or(DASH, |entry| &entry.text);
            t::deck_cut_locked(typed)
        }
        Lock::Locked(_) => t::LOCKED.get().to_owned(),
        Lock::Together(p) => t::together(p),
        open @ (Lock::Open | Lock::OpenBeside(_) | Lock::ByHand(..)) => {
            let cut = match plan(job, bank) {
                Ok(plan) => {
                    let cut = length(plan.plan.removal.as_m(), units);
                    match &plan.left_least {
                        _ if !is_cut(job, bank) => t::deck_not_cut(&cut, plan.cut_decided),
                        _ if !plan.cut_decided => t::deck_cut_unread(&cut),
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
    let heights: Vec<String> = deck_heights(job, bank)
        .into_iter()
        .map(|height| length(height.as_m(), units))
        .collect();
    let after = if heights.is_empty() {
        String::new()
    } else {
        format!("; {}: {}", t::NEW_DECK_HEIGHT, heights.join(", "))
    };
    format!("{name}: {words}{after}")
}
