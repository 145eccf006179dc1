//! Done, skipped and why, not for this job; and a note to the step.

use crate::browser;
use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::reason::Reason;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Mark, Owner, StepId, StepSpec};
use coldseat_markup::view;
use leptos::prelude::*;

/// The marks of a step.
#[component]
pub fn Marks(
    /// The step.
    spec: &'static StepSpec,
    /// Whose it is.
    owner: Owner,
) -> impl IntoView {
    let state = State::here();
    let mark = Memo::new(move |_| {
        state
            .session
            .open
            .with(|o| o.as_ref().and_then(|o| o.job.mark(owner, spec.id).cloned()))
    });
    let note = move || {
        state.session.open.with(|o| {
            o.as_ref()
                .and_then(|o| o.job.steps.get(&(owner, spec.id)))
                .map(|r| r.note.clone())
                .unwrap_or_default()
        })
    };
    let set = move |mark: Option<Mark>| {
        state
            .session
            .edit(|job| job.set_mark(owner, spec.id, mark, browser::now()));
    };
    let why = Reason::new(match mark.get_untracked() {
        Some(Mark::Skipped(why)) => why,
        _ => String::new(),
    });
    let is = move |wanted: fn(&Mark) -> bool| mark.with(|m| m.as_ref().is_some_and(wanted));
    let stem = match owner {
        Owner::Block => format!("mark-{}", spec.name),
        Owner::Bank(bank) => format!("mark-{}-b{bank}", spec.name),
        Owner::Cylinder(cylinder) => format!("mark-{}-c{cylinder}", spec.name),
    };
    let (why_id, note_id) = (format!("{stem}-why"), format!("{stem}-note"));
    let skip = move |_| {
        if let Some(text) = why.given() {
            set(Some(Mark::Skipped(text)));
        }
    };
    // Of two decks on one screen each says whose it is.
    let banks = state
        .session
        .open
        .with_untracked(|o| o.as_ref().map_or(1, |o| o.job.engine.banks()));
    let name = move |label: &str| match owner {
        Owner::Bank(bank) if banks > 1 => format!("{label}, {} {}", t::BANK, t::bank(bank)),
        _ => label.to_owned(),
    };
    let button = move |label: &'static str, wanted: fn(&Mark) -> bool, to: Mark| {
        view! {
            <button
                type="button"
                aria-label=name(label)
                aria-pressed=words(move || is(wanted).to_string())
                on:click=move |_| {
                    // A second tap takes the mark away.
                    set(if untrack(|| is(wanted)) { None } else { Some(to.clone()) });
                }
            >
                {label}
            </button>
        }
        .into_any()
    };
    let is_deck = spec.id == StepId::Deck;
    let label = if is_deck {
        t::DECK_IS_CUT
    } else {
        t::MARK_DONE
    };
    let done = button(label.get(), |m| *m == Mark::Done, Mark::Done);
    let not = button(
        t::MARK_NOT.get(),
        |m| *m == Mark::NotForThisJob,
        Mark::NotForThisJob,
    );
    // Where nothing is measured the mark is all there is to do, and a deck whose cut is
    // decided on is cut only when somebody says so.
    let (in_sight, folded) = if spec.fields.is_empty() || is_deck {
        (Some(done), None)
    } else {
        (None, Some(done))
    };
    let take_away = move || {
        mark.with(Option::is_some).then(|| {
            view! {
                <button type="button" aria-label=name(t::MARK_NONE.get()) on:click=move |_| set(None)>
                    {t::MARK_NONE}
                </button>
            }
            .into_any()
        })
    };
    let said = move || {
        mark.with(|m| match m {
            None => None,
            Some(Mark::Done) => Some(t::MARKED_DONE.get().to_owned()),
            Some(Mark::NotForThisJob) => Some(t::MARK_NOT.to_lowercase()),
            Some(Mark::Skipped(why)) => Some(format!("{}: {why}", t::MARK_SKIP.to_lowercase())),
        })
        .map(|words| view! { <span class="mark-said">{words}</span> }.into_any())
    };
    let locked = move || state.session.is_read_only(Target::Job);
    view! {
        <div class="row">{in_sight}</div>
        <details class="help marks">
            <summary>{t::FOR_THIS_STEP} {live(said)}</summary>
            <div class="row" role="group" aria-label=t::MARK.get()>
                {folded} {not} {live(take_away)}
            </div>
            {why.line(state, why_id, t::SKIP_WHY.get(), t::SKIP_NEEDS_WHY.get())}
            <button type="button" aria-label=name(t::MARK_SKIP.get()) on:click=skip>
                {t::MARK_SKIP}
            </button>
            <div class="choice">
                <label for=note_id.clone()>{t::STEP_NOTE}</label>
                <input
                    id=note_id
                    type="text"
                    maxlength="2000"
                    autocomplete="off"
                    readonly=locked
                    prop:value=words(note)
                    on:input=move |event| {
                        let text = event_target_value(&event);
                        state.session
                            .edit(|job| {
                                job.keep_of_step(
                                    owner,
                                    spec.id,
                                    |record| {
                                        record.note = text;
                                        record.at = browser::now();
                                    },
                                );
                            });
                    }
                />
            </div>
        </details>
    }
    .into_any()
}
