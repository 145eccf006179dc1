//! What the cut of a deck does to everything that is measured from it: a table
//! before and after the cut, and for each size that leaves its range the reading
//! taken again, the tick, or the reason why it is left.

use crate::live::live;
use crate::memo::Memo;
use crate::parts::reading::{Label, Reading};
use crate::parts::reason::Reason;
use crate::parts::record_file::DASH;
use crate::parts::table::{Line, cell, table};
use crate::show::{bare, length, length_unit, number};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    AfterCut, AfterState, DONE, DeckSize, Field, FromDeck, Job, Length, Place, RecutSaid, Standing,
    UnitSystem, after_cut, is_cut_decided,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// From where to where a size may be.
fn range(size: &DeckSize, units: UnitSystem) -> String {
    let low = bare(size.low.as_m(), units);
    match size.high {
        Some(high) => t::span(&low, &bare(high.as_m(), units)),
        None => t::from_value(&low),
    }
}

/// Where a size is brought back to: the end of its range that is nearest.
fn back_to(item: FromDeck, size: &DeckSize, units: UnitSystem) -> String {
    let end = match size.high {
        Some(high) if item.is_height() => high,
        _ => size.low,
    };
    bare(end.as_m(), units)
}

/// What becomes of a size, in words; short ones for paper.
fn state_words(item: FromDeck, size: &DeckSize, units: UnitSystem, short: bool) -> String {
    let stands = size.stands();
    let by = length(stands.by.as_m(), units);
    let to = back_to(item, size, units);
    let back = size.worked.state != AfterState::Holds && stands.state == AfterState::Holds;
    let state = if back {
        t::size_back(item).to_owned()
    } else if short {
        t::size_state_short(item, stands.state, &by, &to)
    } else {
        t::size_state(item, stands.state, &by, &to)
    };
    let measured = size
        .measured
        .map(|after| t::measured_again(&bare(after.now.as_m(), units)));
    let said = match (&size.said, stands.state) {
        (RecutSaid::Done, AfterState::Recut) if measured.is_none() => {
            Some(t::SAID_DONE.get().to_owned())
        }
        (RecutSaid::Why(why), AfterState::Recut | AfterState::TooDeep) => {
            Some(format!("{}: {why}", t::RECUT_WHY.to_lowercase()))
        }
        _ => None,
    };
    let more: Vec<String> = measured.into_iter().chain(said).collect();
    if more.is_empty() {
        state
    } else {
        format!("{state}; {}", more.join("; "))
    }
}

fn line(name: String, class: &'static str, cells: [String; 4]) -> Line {
    Line {
        class,
        head: name.into_any(),
        cells: cells.into_iter().map(cell).collect(),
    }
}

/// A line that has no numbers: what is missing, or what cannot be used.
fn unknown<T>(standing: &Standing<T>, units: UnitSystem) -> Option<String> {
    match standing {
        Standing::Known(_) | Standing::NotHere => None,
        Standing::Missing(missing) => Some(t::size_wants(missing)),
        Standing::Unusable(unusable) => Some(t::size_mend(unusable, units)),
        Standing::Refused(fault) => Some(t::fault(fault)),
    }
}

/// The lines of the table: sizes, block, finish.
fn lines(after: &AfterCut, units: UnitSystem, short: bool) -> Vec<Line> {
    let dash = || DASH.to_owned();
    let mut lines: Vec<Line> = Vec::new();
    for (item, standing) in &after.sizes {
        let name = t::deck_size_short(*item).to_owned();
        if let Standing::Known(size) = standing {
            let class = match size.stands().state {
                AfterState::Holds => "",
                AfterState::Recut => "record-look",
                AfterState::TooDeep => "record-stop",
            };
            let cells = [
                bare(size.before.as_m(), units),
                bare(size.worked.now.as_m(), units),
                range(size, units),
                state_words(*item, size, units, short),
            ];
            lines.push(line(name, class, cells));
        } else if let Some(words) = unknown(standing, units) {
            lines.push(line(name, "record-look", [dash(), dash(), dash(), words]));
        }
    }
    let block = t::SIZE_BLOCK.get().to_owned();
    if let Standing::Known(budget) = &after.budget {
        let over = budget.over();
        let left = over.unwrap_or(budget.left);
        let cells = [
            bare(budget.so_far.as_m(), units),
            bare(budget.total.as_m(), units),
            t::up_to(&bare(budget.most.as_m(), units)),
            t::budget_state(&length(left.as_m(), units), over.is_some()),
        ];
        let class = if over.is_some() { "record-stop" } else { "" };
        lines.push(line(block, class, cells));
    } else if let Some(words) = unknown(&after.budget, units) {
        lines.push(line(block, "record-look", [dash(), dash(), dash(), words]));
    }
    let name = t::SIZE_FINISH.get().to_owned();
    if let Standing::Known(finish) = &after.finish {
        let unit = Field::DeckFinish.unit(units);
        let kind = t::choice(Field::DeckFinishKind, finish.kind);
        let measured = finish.measured.map(|m| number(m.as_m(), unit));
        let state = match measured {
            Some(_) => t::finish_state(kind, finish.is_rough()),
            None => format!("{} ({kind})", t::NOT_MEASURED_AGAIN),
        };
        let cells = [
            dash(),
            measured.unwrap_or_else(dash),
            t::up_to(&number(finish.most.as_m(), unit)),
            state,
        ];
        let class = if finish.is_rough() { "record-look" } else { "" };
        lines.push(line(name, class, cells));
    } else if let Some(words) = unknown(&after.finish, units) {
        lines.push(line(name, "record-look", [dash(), dash(), dash(), words]));
    }
    lines
}

/// The heads of the table.
fn heads(units: UnitSystem) -> Vec<String> {
    let unit = length_unit(units).symbol();
    vec![
        t::DECK_SIZE.get().to_owned(),
        format!("{} ({unit})", t::SIZE_BEFORE),
        format!("{} ({unit})", t::SIZE_AFTER),
        format!("{} ({unit})", t::SIZE_RANGE),
        t::SIZE_STATE.get().to_owned(),
    ]
}

/// What is not entered, said so that nobody takes it for good.
fn left_out(after: &AfterCut) -> Vec<String> {
    let absent: Vec<&str> = after
        .sizes
        .iter()
        .filter(|(_, standing)| *standing == Standing::NotHere)
        .map(|(item, _)| t::deck_size_short(*item))
        .collect();
    let names = match absent.len() {
        0 => None,
        all if all == FromDeck::ALL.len() => Some(t::FROM_DECK_NONE.get().to_owned()),
        _ => Some(t::not_on_this_engine(&absent.join(", "))),
    };
    let budget = (after.budget == Standing::NotHere).then(|| t::NO_BUDGET.get().to_owned());
    let finish = (after.finish == Standing::NotHere).then(|| t::NO_FINISH.get().to_owned());
    names.into_iter().chain(budget).chain(finish).collect()
}

/// The table of a deck, with the target before the cut over it.
fn shown(after: &AfterCut, least: Length, units: UnitSystem) -> AnyView {
    let bears = after.bears().map(|(most, by)| {
        let words = if most.as_m() > 0.0 {
            t::bears(&length(most.as_m(), units), by)
        } else {
            t::bears_none(by)
        };
        let words = if most.as_m() < least.as_m() {
            format!("{words} {}", t::bears_less(&length(least.as_m(), units)))
        } else {
            words
        };
        view! { <p class="deck-bears">{words}</p> }
    });
    let lines = lines(after, units, false);
    let whole = (!lines.is_empty()).then(|| table("cards deck-sizes", None, &heads(units), lines));
    let by = if after.made {
        t::AFTER_CUT_DECIDED
    } else {
        t::AFTER_CUT_PLANNED
    };
    let notes: Vec<AnyView> = left_out(after)
        .into_iter()
        .map(|words| view! { <p class="quiet">{words}</p> }.into_any())
        .collect();
    view! {
        <section class="after-cut">
            <h3>{t::AFTER_CUT}</h3>
            {whole.is_some().then(|| view! { <p class="quiet">{by}</p> })}
            {bears}
            {whole}
            {notes}
        </section>
    }
    .into_any()
}

/// What the cut of a deck does; nothing where it has no cut that can be used. With less
/// than `least` the deck does not clean up.
pub fn after_cut_table(
    state: State,
    bank: u8,
    least: Length,
    units: UnitSystem,
) -> Option<AnyView> {
    let after = state.session.open.with(|open| {
        open.as_ref()
            .and_then(|open| after_cut(&open.job, bank).ok())
    })?;
    Some(shown(&after, least, units))
}

/// The sizes of which something is to be read or said.
fn asked(state: State, bank: u8) -> Vec<u8> {
    let reports = state.session.reports.get();
    state.session.open.with(|open| {
        let Some(open) = open.as_ref() else {
            return Vec::new();
        };
        let typed = |index: u8| {
            [Field::FromDeckAfter, Field::RecutSaid]
                .into_iter()
                .any(|field| {
                    open.job
                        .entries
                        .get(Place::of_bank(bank, field, index))
                        .is_some()
                })
        };
        let is_cut = is_cut_decided(&open.job, &reports, bank);
        let outside: Vec<bool> = match after_cut(&open.job, bank) {
            Ok(after) => after
                .sizes
                .iter()
                .map(|(_, standing)| {
                    let out = |size: &DeckSize| size.worked.state != AfterState::Holds;
                    is_cut && standing.known().is_some_and(out)
                })
                .collect(),
            Err(_) => Vec::new(),
        };
        (0..FromDeck::ALL.len() as u8)
            .filter(|index| typed(*index) || outside.get(usize::from(*index)) == Some(&true))
            .collect()
    })
}

/// For each size that the cut decided on puts outside its range: the reading taken
/// again, the tick, the reason.
pub fn recuts(state: State, bank: u8) -> AnyView {
    let which = Memo::new(move |_| asked(state, bank));
    let row = move |index: u8| recut(state, bank, index);
    let each = move || which.get();
    view! { <For each=each key=|index| *index children=row /> }.into_any()
}

fn recut(state: State, bank: u8, index: u8) -> AnyView {
    let Some(item) = FromDeck::ALL.get(usize::from(index)) else {
        return ().into_any();
    };
    let place = |field| Place::of_bank(bank, field, index);
    let (again, said) = (place(Field::FromDeckAfter), place(Field::RecutSaid));
    let text = move || state.session.text(Target::Job, said);
    let is_done = move || text().trim().eq_ignore_ascii_case(DONE);
    let before = untrack(text);
    let why = Reason::new(if untrack(is_done) {
        String::new()
    } else {
        before
    });
    let stem = format!("recut-b{bank}-{index}");
    let name = t::capital(t::deck_size_short(*item));
    let done_words = t::recut_done(*item);
    let done_name = format!("{done_words}: {name}");
    let leave_name = format!("{}: {name}", t::RECUT_LEAVE);
    let leave = move |_| {
        if let Some(words) = why.given_for(Field::RecutSaid) {
            state.type_text(Target::Job, said, &words);
            state.session.reading_done();
        }
    };
    let kept = move || {
        let words = text();
        let why = !words.trim().is_empty() && !is_done();
        why.then(|| {
            let words = format!("{}: {words}", t::RECUT_WHY);
            view! { <p>{words}</p> }.into_any()
        })
    };
    let take_back = {
        let name = format!("{}: {name}", t::RECUT_AGAIN);
        move || {
            (!text().trim().is_empty()).then(|| {
                view! {
                    <button
                        type="button"
                        aria-label=name.clone()
                        on:click=move |_| {
                            state.type_text(Target::Job, said, "");
                            state.session.reading_done();
                        }
                    >
                        {t::RECUT_AGAIN}
                    </button>
                }
                .into_any()
            })
        }
    };
    view! {
        <fieldset class="group recut">
            <legend>{name}</legend>
            <div class="readings readings-two">
                <Reading target=Target::Job place=again label=Label::FieldOnly />
            </div>
            <div class="row">
                <button
                    type="button"
                    aria-label=done_name
                    aria-pressed=move || is_done().to_string()
                    disabled=move || state.session.is_read_only(Target::Job)
                    on:click=move |_| {
                        let words = if untrack(is_done) { "" } else { DONE };
                        state.type_text(Target::Job, said, words);
                        state.session.reading_done();
                    }
                >
                    {done_words}
                </button>
                {live(take_back)}
            </div>
            {live(kept)}
            <details class="help">
                <summary>{format!("{}: {}", t::RECUT_WHY, t::deck_size_short(*item))}</summary>
                {why.line(state, stem, t::RECUT_WHY.get(), t::RECUT_WHY_NEEDED.get())}
                <button type="button" aria-label=leave_name on:click=leave>
                    {t::RECUT_LEAVE}
                </button>
            </details>
        </fieldset>
    }
    .into_any()
}

/// The sizes of a deck of which nobody has said what became.
fn still_open(after: &AfterCut) -> Option<AnyView> {
    let names: Vec<&str> = after
        .known()
        .filter(|(_, size)| size.is_open())
        .map(|(item, _)| t::deck_size_short(item))
        .collect();
    (!names.is_empty())
        .then(|| view! { <p>{format!("{}: {}.", t::RECUTS_OPEN, names.join(", "))}</p> }.into_any())
}

/// Whether anything of it is entered.
fn is_entered(after: &AfterCut) -> bool {
    after.sizes.iter().any(|(_, s)| *s != Standing::NotHere)
        || after.budget != Standing::NotHere
        || after.finish != Standing::NotHere
}

/// The same of a deck that is cut, for the record, where anything of it is entered.
pub fn after_cut_paper(job: &Job, bank: u8, units: UnitSystem) -> Option<AnyView> {
    let after = after_cut(job, bank).ok().filter(is_entered)?;
    let caption = t::after_cut_of(bank, job.engine.banks());
    let lines = lines(&after, units, true);
    let notes = left_out(&after).join(" ");
    Some(
        view! {
            {table("cards deck-sizes", Some(caption), &heads(units), lines)}
            {still_open(&after)}
            {(!notes.is_empty()).then(|| view! { <p>{notes}</p> })}
        }
        .into_any(),
    )
}

/// What became of the sizes that the cut of a deck put outside their range, and how
/// rough the deck is, in lines that a layman reads.
pub fn after_cut_words(job: &Job, bank: u8, units: UnitSystem) -> Vec<String> {
    let Ok(after) = after_cut(job, bank) else {
        return Vec::new();
    };
    let banks = job.engine.banks();
    let sizes = after
        .known()
        .filter(|(_, size)| size.worked.state != AfterState::Holds || size.measured.is_some())
        .map(|(item, size)| {
            let name = t::of_deck(bank, banks, t::deck_size_short(item));
            format!("{name}: {}", state_words(item, size, units, true))
        });
    let finish = after.finish.known().and_then(|finish| {
        let unit = Field::DeckFinish.unit(units);
        let measured = number(finish.measured?.as_m(), unit);
        let kind = t::choice(Field::DeckFinishKind, finish.kind);
        let most = number(finish.most.as_m(), unit);
        let line = t::deck_finish_line(&measured, kind, &most, finish.is_rough());
        Some(t::of_deck(bank, banks, &line))
    });
    sizes.chain(finish).collect()
}
