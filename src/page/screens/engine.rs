//! Engine and limits of a job: words, geometry, limits, gauges.

use crate::browser;
use crate::live::live;
use crate::memo::Memo;
use crate::parts::bar::{sheet_bar, whole_bar};
use crate::parts::choice::{Choice, Line, MaterialChoice, counts, layouts};
use crate::parts::from_deck::from_deck;
use crate::parts::holes::holes;
use crate::parts::notice::export_button;
use crate::parts::order::order_list;
use crate::parts::picture::block_plan;
use crate::parts::reading::{Label, Reading};
use crate::parts::share::share;
use crate::parts::shims::shims;
use crate::parts::stand::stands;
use crate::parts::verdict::verdict;
use crate::parts::words::gauges_checked;
use crate::screens::{Route, View};
use crate::state::{State, Target};
use crate::texts as t;
use crate::words::Word;
use coldseat_core::ask::document::Shared;
use coldseat_core::ask::{
    Field, GAUGES_CHECKED, Job, Layout, MaterialId, PULL_HANGS_ON, Place, SleeveEnds, StepId,
    order_checks, order_signal, profile_of,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// What every step hangs on.
const FIRST: &[Field] = &[
    Field::NominalOd,
    Field::SleeveId,
    Field::SleeveLength,
    Field::FlangeOd,
    Field::NominalFlange,
    Field::FinalBore,
    Field::FitLow,
    Field::FitHigh,
    Field::TargetProud,
];

/// The rest of sleeve and block.
const GEOMETRY: &[Field] = &[
    Field::Shim,
    Field::BlockWall,
    Field::JacketFrom,
    Field::JacketTo,
    Field::Pitch,
    Field::HalfWidth,
    Field::HeadClamp,
    Field::StepBelow,
    Field::StepBore,
    Field::RoomTemperature,
];

/// Pistons, head and rings: the engine maker's sheet.
const ENGINE: &[Field] = &[
    Field::Stroke,
    Field::Compression,
    Field::PistonD,
    Field::PistonLeast,
    Field::Gasket,
    Field::HeadLeast,
    Field::GasketGrades,
    Field::RingHeight,
    Field::RingProud,
    Field::GrooveInner,
    Field::GrooveOuter,
    Field::RingGapLow,
    Field::RingGapHigh,
];

/// The fit in the running engine, and the faces it joins.
const SERVICE: &[Field] = &[
    Field::RzSleeve,
    Field::RzBore,
    Field::Smoothing,
    Field::RunSleeve,
    Field::RunBlock,
    Field::GasPressure,
    Field::ChillShrink,
];

/// Bar, hone, ram and rod.
const TOOLS: &[Field] = &[
    Field::Spindle,
    Field::Passes,
    Field::LastCut,
    Field::HoneStroke,
    Field::HoneTurns,
    Field::HoneCycles,
    Field::HoneRate,
];

/// Limits and targets, by what they are about.
const LIMITS: [(Word, &[Field]); 4] = [
    (
        t::LIMITS_FIT,
        &[
            Field::RoundLook,
            Field::RoundStop,
            Field::BoreForm,
            Field::EntryLeast,
            Field::HomeNeeded,
            Field::HoneLeave,
            Field::ApartMost,
        ],
    ),
    (
        t::LIMITS_SEAT,
        &[
            Field::PlannedCut,
            Field::CleanUp,
            Field::Risk,
            Field::GapLimit,
            Field::TiltLimit,
            Field::Confidence,
            Field::CommonHeight,
            Field::CommonThickness,
            Field::CommonDepth,
            Field::PriorHome,
        ],
    ),
    (
        t::LIMITS_ORDER,
        &[
            Field::WallCalm,
            Field::WallLook,
            Field::WebCalm,
            Field::WebLook,
            Field::BottomLeast,
            Field::LedgeLeast,
            Field::FinishLeast,
            Field::GrooveLand,
        ],
    ),
    (
        t::LIMITS_BENCH,
        &[
            Field::TestLoss,
            Field::DatumTilt,
            Field::OffsetLook,
            Field::ClearLow,
            Field::ClearHigh,
            Field::FilletSpare,
            Field::GrooveNear,
            Field::LedgeFall,
        ],
    ),
];

/// Gauges, hand feed and surfacer: what each is known to.
#[must_use]
pub fn gauges() -> Vec<Field> {
    [&GAUGES_CHECKED[..], &[Field::FeedSd, Field::DeckSd]].concat()
}

/// Readings of an engine, as a group.
pub fn fields(target: Target, title: &'static str, list: &[Field]) -> AnyView {
    let items: Vec<AnyView> = list
        .iter()
        .map(|field| {
            let place = Place::of_engine(*field);
            view! { <Reading target=target place=place label=Label::Full /> }.into_any()
        })
        .collect();
    view! {
        <fieldset class="group">
            <legend>{title}</legend>
            <div class="readings readings-two">{items}</div>
        </fieldset>
    }
    .into_any()
}

/// What can be done with the whole engine: of a sheet begin a job, copy it, bin
/// it; of a job keep its engine as a sheet.
fn acts(state: State, sheet: bool) -> AnyView {
    let engine = move || {
        state.session.open.with_untracked(|o| {
            o.as_ref()
                .map(|o| (o.job.engine.clone(), o.job.entries.clone()))
        })
    };
    let keep = move |_| {
        if let Some((engine, entries)) = engine() {
            state.begin(Job::engine_sheet(engine, &entries), None);
        }
    };
    if !sheet {
        return view! {
            <button type="button" on:click=keep>
                {t::KEEP_AS_SHEET}
            </button>
        }
        .into_any();
    }
    let begin = move |_| {
        if let Some((engine, entries)) = engine() {
            let mut job = Job::new(engine, profile_of(&entries));
            job.name.clone_from(&job.engine.name);
            state.begin(job, None);
        }
    };
    let bin = move |_| {
        state.session.bin(Target::Job, true);
        browser::go("#/engines");
    };
    view! {
        <button type="button" class="button-first" on:click=begin>
            {t::TAKE_PROFILE}
        </button>
        <button type="button" on:click=keep>
            {t::COPY_SHEET}
        </button>
        <button type="button" on:click=bin>
            {t::SHEET_INTO_BIN}
        </button>
    }
    .into_any()
}

/// Readings of an engine that its sleeves have, folded: how many are there stands in
/// its head.
fn folded(state: State, title: &'static str, list: &[Field], open: bool) -> AnyView {
    let list = list.to_vec();
    let stand = Memo::new(move |_| state.session.stand());
    let shown = move || {
        let stand = stand.get();
        let there: Vec<Field> = list
            .iter()
            .copied()
            .filter(|f| stand.has_field(*f))
            .collect();
        fold_of(state, title, &there, open)
    };
    live(shown).into_any()
}

fn fold_of(state: State, title: &'static str, list: &[Field], open: bool) -> AnyView {
    let places: Vec<Place> = list
        .iter()
        .flat_map(|field| {
            (0..field.spec().places.count()).map(|index| Place {
                index,
                ..Place::of_engine(*field)
            })
        })
        .collect();
    let items: Vec<AnyView> = places
        .iter()
        .copied()
        .map(|place| {
            view! { <Reading target=Target::Job place=place label=Label::Full /> }.into_any()
        })
        .collect();
    let entered = move || {
        let there = state.session.open.with(|o| {
            o.as_ref().map_or(0, |o| {
                let there = |place: &&Place| o.job.entries.get(**place).is_some();
                places.iter().filter(there).count()
            })
        });
        t::entered(there, places.len())
    };
    view! {
        <details class="help group-fold" open=open>
            <summary>{title} <span class="fold-count">{live(entered)}</span></summary>
            <div class="readings readings-two">{items}</div>
        </details>
    }
    .into_any()
}

/// From the engine on.
fn onward(id: &str) -> AnyView {
    let to = |view: View| {
        let id = id.to_owned();
        Route::Job { id, view }.address()
    };
    view! {
        <div class="row onward">
            <a class="button button-first" data-onward="" href=to(View::Cylinder(None, None))>
                {t::TO_THE_BENCH}
            </a>
            <a class="button" href=to(View::Whole(Some(StepId::Enquiry)))>
                {t::TO_THE_PRICE}
            </a>
        </div>
    }
    .into_any()
}

/// Go or no-go before sleeves are ordered, with the block from above.
fn order(state: State) -> AnyView {
    let units = untrack(|| state.session.units(Target::Job));
    let checks = Memo::new(move |_| {
        state
            .session
            .open
            .with(|o| o.as_ref().map_or(Vec::new(), |o| order_checks(&o.job)))
    });
    let shown = move || {
        checks.with(|checks| {
            let signal = order_signal(checks);
            view! {
                {verdict(signal, t::says(StepId::Choose, signal).to_owned())}
                {order_list(checks, units)}
            }
            .into_any()
        })
    };
    view! {
        <section class="order-check" aria-labelledby="order-heading">
            <h3 id="order-heading">{t::ORDER_CHECK}</h3>
            {live(shown)}
            {live(move || block_plan(state, units))}
        </section>
    }
    .into_any()
}

/// The screen.
#[component]
pub fn EngineScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    let locked = Signal::derive(move || state.session.is_read_only(Target::Job));
    let read = move |look: fn(&Job) -> String| {
        Signal::derive(move || {
            state
                .session
                .open
                .with(|o| o.as_ref().map(|o| look(&o.job)).unwrap_or_default())
        })
    };
    let write = move |change: fn(&mut Job, String)| {
        Callback::new(move |text: String| state.session.edit(|job| change(job, text)))
    };
    let sheet = state
        .session
        .open
        .with_untracked(|o| o.as_ref().is_some_and(|o| o.job.sheet));
    let head = if sheet {
        sheet_bar(state, t::ENGINE_AND_LIMITS.get().to_owned())
    } else {
        whole_bar(state, &id, t::ENGINE_AND_LIMITS.get().to_owned())
    };
    let whose = (!sheet).then(|| {
        view! {
            <Line
                id="job-name"
                locked=locked
                label=t::JOB_NAME.get()
                value=read(|j| j.name.clone())
                change=write(|j, text| j.name = text)
            />
            <Line
                id="job-customer"
                locked=locked
                label=t::CUSTOMER.get()
                value=read(|j| j.customer.clone())
                change=write(|j, text| j.customer = text)
            />
        }
    });
    // With readings in it an engine keeps its cylinders.
    let shape = sheet.then(|| {
        view! {
            <Choice
                id="job-cylinders"
                locked=locked
                label=t::CYLINDERS.get()
                options=counts()
                value=read(|j| j.engine.cylinders.to_string())
                change=write(|j, n| j.engine.cylinders = n.parse().unwrap_or(j.engine.cylinders))
            />
            <Choice
                id="job-layout"
                locked=locked
                label=t::LAYOUT.get()
                options=layouts()
                value=read(|j| j.engine.layout.id().to_owned())
                change=write(|j, id| {
                    j.engine.layout = Layout::from_id(&id).unwrap_or(j.engine.layout);
                })
            />
        }
    });
    let form = view! {
        <div class="form">
            {whose}
            <Line
                id="job-engine"
                locked=locked
                label=t::ENGINE_NAME.get()
                value=read(|j| j.engine.name.clone())
                change=write(|j, text| {
                    if j.sheet {
                        j.name.clone_from(&text);
                    }
                    j.engine.name = text;
                })
            />
            {shape}
            <Line
                id="job-note"
                locked=locked
                label=t::NOTE.get()
                value=read(|j| j.note.clone())
                change=write(|j, text| j.note = text)
            />
        </div>
    };
    let materials = view! {
        <div class="form">
            <MaterialChoice
                id="job-sleeve-material"
                locked=locked
                label=t::SLEEVE_MATERIAL.get()
                value=read(|j| j.engine.sleeve_material.id().to_owned())
                change=write(|j, id| {
                    j.engine.sleeve_material = MaterialId::from_id(&id)
                        .unwrap_or(j.engine.sleeve_material);
                })
            />
            <MaterialChoice
                id="job-block-material"
                locked=locked
                label=t::BLOCK_MATERIAL.get()
                value=read(|j| j.engine.block_material.id().to_owned())
                change=write(|j, id| {
                    j.engine.block_material = MaterialId::from_id(&id)
                        .unwrap_or(j.engine.block_material);
                })
            />
        </div>
    };
    let ends = Memo::new(move |_| state.session.stand().ends);
    let from_the_deck = move || match ends.get() {
        SleeveEnds::Decked => from_deck(state),
        SleeveEnds::Proud => view! { <p class="quiet">{t::FROM_DECK_STAYS}</p> }.into_any(),
    };
    // What stands on nothing has no shim.
    let has_seat = Memo::new(move |_| state.session.stand().has_field(Field::ShimSizes));
    let at_hand = move || has_seat.get().then(|| shims(state, Target::Job));
    let first = (!sheet).then(|| view! { {holes(state)} {onward(&id)} });
    view! {
        {head}
        <p class="quiet">{t::FIRST_NUMBERS_WHAT}</p>
        {stands(state, locked)}
        {folded(state, t::FIRST_NUMBERS.get(), FIRST, true)}
        {materials}
        {first}
        {form}
        <p class="quiet">{t::ENGINE_FIRST}</p>
        {folded(state, t::GEOMETRY.get(), GEOMETRY, sheet)}
        {folded(state, t::PISTONS_AND_HEAD.get(), ENGINE, false)}
        {live(from_the_deck)}
        {live(at_hand)}
        {order(state)}
        {folded(state, t::TOOLS.get(), &[TOOLS, &PULL_HANGS_ON].concat(), false)}
        {folded(state, t::SERVICE.get(), SERVICE, false)}
        <p class="quiet">{t::LIMITS_WHAT}</p>
        {LIMITS.map(|(title, list)| folded(state, title.get(), list, false)).into_iter().collect_view()}
        {folded(state, t::GAUGES.get(), &gauges(), false)}
        {gauges_checked(state, Target::Job)}
        {share(t::SHARE_ENGINE.get(), "link-engine", move || {
            state.session
                .open
                .with(|o| o.as_ref().map(|o| {
                    Shared::Profile(o.job.engine.clone(), profile_of(&o.job.entries))
                }))
        })}
        <div class="row">{export_button(state)} {acts(state, sheet)}</div>
    }
    .into_any()
}
