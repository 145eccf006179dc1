//! The deck of a bank: locked until every flange is home, then the cut.

use crate::drawings::deck_cuts::deck_cuts;
use crate::drawings::deck_map::deck_map;
use crate::drawings::deck_seats::deck_seats;
use crate::live::live;
use crate::memo::Memo;
use crate::parts::after_cut::{after_cut_table, recuts};
use crate::parts::answer::{chance_row, pairs};
use crate::parts::aside::wanted;
use crate::parts::bar::whole_bar;
use crate::parts::findings::{cautions, findings, help};
use crate::parts::heights_plan::heights_plan;
use crate::parts::marks::Marks;
use crate::parts::origin::where_from;
use crate::parts::picture::holes_of;
use crate::parts::reason::Reason;
use crate::parts::step::{StepView, readings};
use crate::parts::table::{Line, cell, table};
use crate::parts::verdict::{big, shape, verdict, verdict_waits};
use crate::screens::steps::place_of;
use crate::screens::{Route, View};
use crate::show::{bare, length, length_unit};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    BankPlan, Field, Lacks, Lock, Next, Owner, Place, STEPS, Signal as Go, SleeveEnds, StepId,
    UnitSystem, after_cut, all_home, lock, origin, plan, shown as readings_shown, shown_engine,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// The screen.
#[component]
pub fn DeckScreen(
    /// Key of the job.
    id: String,
    /// Bank, from 0.
    bank: u8,
) -> impl IntoView {
    let state = State::here();
    // The deck of a job whose sleeves are left proud is not cut.
    if untrack(|| state.session.stand()).ends == SleeveEnds::Proud {
        return heights_screen(state, &id, bank);
    }
    let units = untrack(|| state.session.units(Target::Job));
    let spec = StepId::Deck.spec();
    // What is said by colour waits for the reading that is being typed.
    let reports = state.session.settled;
    let state_of_lock = Memo::new(move |_| {
        let reports = reports.get();
        state.session.open.with(|open| {
            open.as_ref()
                .map_or(Lock::NoSleeves, |o| lock(&o.job, &reports, bank))
        })
    });
    let planned = Memo::new(move |_| {
        state
            .session
            .open
            .with(|open| open.as_ref().map(|o| plan(&o.job, bank)))
    });
    let shown_engine = move |field| {
        state
            .session
            .open
            .with(|o| o.as_ref().and_then(|o| shown_engine(&o.job, field)))
    };
    let numbers = move || {
        let spots = state.session.open.with(|o| {
            o.as_ref().map_or(Vec::new(), |o| {
                readings_shown(&o.job, Owner::Bank(bank), Field::LowSpot)
            })
        });
        // Locked: no number to cut to is shown at all, what was surveyed is.
        if !state_of_lock.with(Lock::is_open) {
            return deck_map(&spots, &holes_of(state, Owner::Bank(bank)), None, units);
        }
        Some(match planned.get()? {
            Err(lack) => wanted(&Lacks::from(lack), units),
            Ok(plan) => {
                let clean_up_m = shown_engine(Field::CleanUp);
                let home = state.session.reports.with(|reports| {
                    state
                        .session
                        .open
                        .with(|o| o.as_ref().and_then(|o| all_home(&o.job, reports, bank)))
                });
                let said = state_of_lock.with(|lock| plan.under(lock));
                let said = match state
                    .session
                    .open
                    .with(|o| o.as_ref().map(|o| after_cut(&o.job, bank)))
                {
                    Some(Ok(after)) => after.over(said),
                    _ => said,
                };
                let map = deck_map(
                    &spots,
                    &holes_of(state, Owner::Bank(bank)),
                    Some(plan.plan.removal.as_m()),
                    units,
                );
                view! {
                    {cut(&plan, said, state.session.half_typed.get(), clean_up_m, home, units)}
                    {map}
                    {after_cut_table(state, bank, plan.plan.removal_least, units)}
                }
                .into_any()
            }
        })
    };
    let from = where_from(t::CUT.get().to_owned(), units, move || {
        // Locked: no number to cut to is shown at all.
        if !state_of_lock.with(Lock::is_open) {
            return Err(t::NONE_WHILE_LOCKED.get());
        }
        let found = state.session.open.with(|o| {
            o.as_ref()
                .and_then(|o| origin(&o.job, Owner::Bank(bank), StepId::Deck))
        });
        found.ok_or(t::NO_NUMBER_YET.get())
    });
    let stand = untrack(|| state.session.stand());
    let heading = heading_of(state, t::DECK.get(), bank);
    view! {
        {whole_bar(state, &id, heading)}
        <div class="step-body">
            <div class="step-answer">
                {live(move || lock_view(state, bank, state_of_lock.get()))}
                {live(move || seats(state, bank, units))} {live(numbers)}
            </div>
            <div class="step-entry">
                {readings(spec, Owner::Bank(bank), stand)} {recuts(state, bank)} <Marks spec=spec owner=Owner::Bank(bank) />
                <div class="row onward">{onward(state, &id, bank)}</div>
            </div>
            <div class="step-aside">{from} {help(spec)} {cautions(spec.cautions)}</div>
        </div>
    }
    .into_any()
}

/// The deck of a job whose sleeves are left proud: their heights, and no cut.
fn heights_screen(state: State, id: &str, bank: u8) -> AnyView {
    let onward = onward(state, id, bank);
    view! {
        {whole_bar(state, id, heading_of(state, t::HEIGHTS.get(), bank))}
        <p class="quiet">{t::NOT_DECKED}</p>
        <StepView spec=StepId::Heights.spec() owner=Owner::Bank(bank) onward=onward />
        {heights_plan(state, bank)}
    }
    .into_any()
}

/// A heading, with the deck's name where there are two.
fn heading_of(state: State, words: &str, bank: u8) -> String {
    state.session.open.with_untracked(|open| {
        if open.as_ref().is_some_and(|o| o.job.engine.banks() > 1) {
            format!("{words} {}", t::bank(bank))
        } else {
            words.to_owned()
        }
    })
}

/// The sleeves of the deck judged together, and what the numbers point to.
fn seats(state: State, bank: u8, units: UnitSystem) -> Option<AnyView> {
    let of_engine = |field| {
        state
            .session
            .open
            .with(|o| o.as_ref().and_then(|o| shown_engine(&o.job, field)))
    };
    let (limit_m, sure) = (of_engine(Field::GapLimit)?, of_engine(Field::Confidence)?);
    state.session.decks.with(|decks| {
        let deck = decks.iter().find(|deck| deck.bank == bank)?;
        Some(
            view! {
                <div class="deck-seats">
                    <p>{t::deck_points_to(deck)}</p>
                    {deck_seats(deck, limit_m, sure, units)}
                </div>
            }
            .into_any(),
        )
    })
}

/// What each hole that is not home still wants.
fn why(state: State, waiting: &[u8]) -> Vec<AnyView> {
    let units = untrack(|| state.session.units(Target::Job));
    waiting
        .iter()
        .filter_map(|cylinder| {
            let seat = state
                .session
                .step_report(Owner::Cylinder(*cylinder), StepId::Seat)?;
            let words = format!("{} {cylinder}: {}", t::CYLINDER, t::next(&seat.next, units));
            Some(view! { <p>{words}</p> }.into_any())
        })
        .collect()
}

/// A cut that was entered before the deck may be cut.
fn decided(state: State, bank: u8) -> Option<AnyView> {
    let place = Place::of_bank(bank, Field::DeckCut, 0);
    let entered = !state.session.text(Target::Job, place).trim().is_empty();
    entered.then(|| view! { <p>{t::CUT_KEPT}</p> }.into_any())
}

/// On to the other deck, else to the step after the deck.
fn onward(state: State, id: &str, bank: u8) -> AnyView {
    let banks = state
        .session
        .open
        .with_untracked(|o| o.as_ref().map_or(1, |o| o.job.engine.banks()));
    let after = STEPS.iter().find(|s| s.number > StepId::Deck.spec().number);
    let (view, words) = match after {
        Some(next) if bank + 1 >= banks => {
            let title = t::step_title(next.id).to_owned();
            (place_of(state, None, next).0, title)
        }
        _ => {
            let title = format!("{} {}", t::DECK, t::bank(bank + 1));
            (View::Deck(bank + 1), title)
        }
    };
    let address = Route::Job {
        id: id.to_owned(),
        view,
    }
    .address();
    view! {
        <a class="button" data-onward="" href=address>
            {format!("{}: {words}", t::NEXT_STEP)}
        </a>
    }
    .into_any()
}

fn lock_view(state: State, bank: u8, lock: Lock) -> AnyView {
    let names = |waiting: &[u8]| {
        waiting
            .iter()
            .map(|c| format!("{} {c}", t::CYLINDER.to_lowercase()))
            .collect::<Vec<_>>()
            .join(", ")
    };
    match lock {
        Lock::NoSleeves => view! { <p>{t::NO_SLEEVES}</p> }.into_any(),
        Lock::Disputed(disputed) => {
            let units = untrack(|| state.session.units(Target::Job));
            verdict(Go::Stop, t::mend(&disputed, units))
        }
        // Green is the cut's to earn, below.
        Lock::Open => view! {
            <div class="verdict verdict-none" role="status">
                {shape(Go::None)} <strong class="verdict-word">{t::OPEN}</strong>
                <p>{t::OPEN_WHY}</p>
            </div>
        }
        .into_any(),
        Lock::OpenBeside(holes) => verdict(Go::Look, t::open_beside(&names(&holes))),
        locked @ (Lock::Locked(_) | Lock::Together(_)) => {
            let (waiting, why_locked) = match locked {
                Lock::Locked(waiting) => {
                    let names = names(&waiting);
                    let words = format!("{} {names}. {}", t::NOT_SEATED_YET, t::LOCK_WHY);
                    (waiting, words)
                }
                Lock::Together(p) => (Vec::new(), t::together(p)),
                _ => (Vec::new(), String::new()),
            };
            let reason = Reason::new(String::new());
            let release = move |_| {
                if let Some(text) = reason.given() {
                    state.session.release_deck(bank, &text);
                }
            };
            let id = "release-reason".to_owned();
            view! {
                <div class="verdict verdict-stop" role="status">
                    {shape(Go::Stop)} <strong class="verdict-word">{t::LOCKED}</strong>
                    <p>{why_locked}</p>
                    {why(state, &waiting)}
                    {decided(state, bank)}
                </div>
                <details class="help">
                    <summary>{t::RELEASE}</summary>
                    {reason.line(state, id, t::RELEASE_REASON.get(), t::RELEASE_NEEDS_REASON.get())}
                    <button type="button" on:click=release>
                        {t::RELEASE}
                    </button>
                </details>
            }
            .into_any()
        }
        Lock::ByHand(waiting, unlock) => view! {
            <div class="verdict verdict-look" role="status">
                {shape(Go::Look)} <strong class="verdict-word">{t::OPEN_BY_HAND}</strong>
                <p>
                    {format!(
                        "{} {}. {}: {}",
                        t::NOT_SEATED_YET,
                        names(&waiting),
                        t::REASON,
                        unlock.reason,
                    )}
                </p>
            </div>
            <button
                type="button"
                on:click=move |_| {
                    state.session
                        .edit(|job| {
                            job.unlocks.remove(&bank);
                        });
                }
            >
                {t::LOCK_AGAIN}
            </button>
        }
        .into_any(),
    }
}

fn cut(
    bank: &BankPlan,
    (signal, next): (Go, Next),
    half: bool,
    clean_up_m: Option<f64>,
    home: Option<f64>,
    units: UnitSystem,
) -> AnyView {
    let plan = &bank.plan;
    let words = t::next(&next, units);
    let covers = t::plan_covers(bank.surveyed, bank.cylinders.len(), bank.without.len());
    let surveyed = (!bank.covers_all()).then(|| view! { <p class="fault">{covers}</p> });
    let lines: Vec<Line> = bank
        .cylinders
        .iter()
        .zip(plan.flange_cut.iter().zip(&bank.cut_most))
        .enumerate()
        .map(|(at, (cylinder, (cut, most)))| {
            let lost = t::span(&bare(cut.as_m(), units), &length(most.as_m(), units));
            let left = bank.left_least.as_ref().and_then(|left| left.get(at));
            let left = left.map(|left| cell(length(left.as_m(), units)));
            Line {
                class: "",
                head: cylinder.into_any(),
                cells: core::iter::once(cell(lost)).chain(left).collect(),
            }
        })
        .collect();
    // A plain sleeve has no flange of which something could be left.
    let left = bank.left_least.is_some().then_some(t::FLANGE_LEFT);
    let heads: Vec<String> = [t::CYLINDER, t::FLANGE_LOSES]
        .into_iter()
        .chain(left)
        .map(String::from)
        .collect();
    let without = (!bank.without.is_empty()).then(|| {
        let names: Vec<String> = bank.without.iter().map(t::missing_of).collect();
        view! {
            <p class="fault">{format!("{} {}", t::WITHOUT_HEIGHT, names.join("; "))}</p>
        }
    });
    view! {
        {big(
            t::CUT.get(),
            bare(plan.removal.as_m(), units),
            length_unit(units).symbol(),
            format!("{} {}", t::CUT_LEAST, length(plan.removal_least.as_m(), units)),
        )}
        {if half { verdict_waits() } else { verdict(signal, words) }}
        {surveyed}
        {findings(&plan.findings, units)}
        {without}
        {pairs(
            bank
                .any_low
                .map(chance_row)
                .into_iter()
                .chain(home.map(|chance| (t::ALL_HOME.get().to_owned(), t::percent(chance))))
                .collect(),
        )}
        {clean_up_m.map(|clean_up_m| deck_cuts(bank, clean_up_m, units))}
        {table("cuts", None, &heads, lines)}
    }
    .into_any()
}
