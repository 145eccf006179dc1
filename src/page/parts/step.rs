//! One step of the job: number, verdict, readings, drawing, cautions. The
//! only renderer of steps; what a step has is data in the core.

use crate::answers::home_within;
use crate::library::OpenJob;
use crate::live::live;
use crate::memo::Memo;
use crate::parts::again::came_out;
use crate::parts::answer::{Pair, chance_row, head, most_row, strokes_row};
use crate::parts::aside::beside;
use crate::parts::bore::bore_down;
use crate::parts::drop_answer::{drop_head, drop_picture, ready};
use crate::parts::engine_wants::{engine_fields, wanted_so_far};
use crate::parts::findings::{cautions, help};
use crate::parts::ledge::repair;
use crate::parts::marks::Marks;
use crate::parts::origin::where_from;
use crate::parts::picture::drawing;
use crate::parts::reading::{Label, Reading};
use crate::parts::timer::Timer;
use crate::parts::verdict::verdict;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    Calculation, Drawing, Field, Job, Measure, Next, Owner, Place, Places, Signal as Go, Stand,
    StepId, StepReport, StepSpec, UnitSystem, engine_wants, gauge_most, origin, planned, spots,
    strokes,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// The readings of a step, for an owner.
pub fn readings(spec: &'static StepSpec, owner: Owner, stand: Stand) -> AnyView {
    let lists: Vec<Field> = stand
        .fields_of(spec)
        .filter(|f| matches!(f.spec().places, Places::List(_)))
        .collect();
    let mut groups: Vec<AnyView> = Vec::new();
    if !lists.is_empty() {
        groups.push(rows(lists.clone(), owner));
    }
    let mut singles: Vec<AnyView> = Vec::new();
    let beside: Vec<Field> = stand.fields_of(spec).filter(|f| f.is_beside()).collect();
    for field in stand
        .fields_of(spec)
        .filter(|f| !lists.contains(f) && !f.is_beside())
    {
        let places = field.spec().places;
        // Asked for only where the cut makes it so: `after_cut`.
        if places == Places::FromDeck {
            continue;
        }
        if field == Field::HeldDown && !is_held_asked(owner) {
            continue;
        }
        if field.spec().measure == Measure::Choice {
            groups.push(one_of(field, owner));
            continue;
        }
        if places == Places::Rounds {
            groups.extend(rounds(field, owner));
            continue;
        }
        let items: Vec<AnyView> = (0..places.count())
            .map(|index| {
                let place = Place {
                    owner,
                    field,
                    index,
                };
                view! { <Reading target=Target::Job place=place label=Label::PlaceOnly /> }
                    .into_any()
            })
            .collect();
        if places == Places::One {
            singles.extend(items);
            continue;
        }
        // Round the clock stands round a bore seen from above, levels between
        // the two walls of a bore seen from the side.
        let class = match places {
            Places::Clocks => "readings readings-clock",
            Places::Levels => "readings readings-bore",
            _ => "readings readings-two",
        };
        groups.push(
            view! {
                <fieldset class="group">
                    <legend>{t::field(field)}</legend>
                    <div class=class>{items}</div>
                </fieldset>
            }
            .into_any(),
        );
    }
    if !singles.is_empty() {
        groups.push(view! { <div class="readings readings-two">{singles}</div> }.into_any());
    }
    if !beside.is_empty() {
        groups.push(besides(&beside, owner));
    }
    groups.into_any()
}

/// Whether it matters that sleeves were held down: the sheet states a torque, or it is
/// said already.
fn is_held_asked(owner: Owner) -> bool {
    let state = State::here();
    let said = Place {
        owner,
        field: Field::HeldDown,
        index: 0,
    };
    [Place::of_engine(Field::HeldTorque), said]
        .into_iter()
        .any(|place| untrack(|| !state.session.text(Target::Job, place).trim().is_empty()))
}

/// What few jobs need of a step, behind a line of its own; open where something of it
/// is typed.
fn besides(fields: &[Field], owner: Owner) -> AnyView {
    let state = State::here();
    let of = |field: &Field| Place::all(owner, *field).collect::<Vec<Place>>();
    let typed = |place: &Place| !untrack(|| state.session.text(Target::Job, *place)).is_empty();
    let open = fields.iter().flat_map(of).any(|place| typed(&place));
    let group = |field: &Field| {
        if field.spec().measure == Measure::Choice {
            return one_of(*field, owner);
        }
        let (class, label) = match field.spec().places {
            Places::Clocks => ("readings readings-clock", Label::PlaceOnly),
            _ => ("readings readings-two", Label::Full),
        };
        let items: Vec<AnyView> = of(field)
            .into_iter()
            .map(|place| {
                view! { <Reading target=Target::Job place=place label=label /> }.into_any()
            })
            .collect();
        if label == Label::Full {
            return view! { <div class=class>{items}</div> }.into_any();
        }
        view! {
            <fieldset class="group">
                <legend>{t::field(*field)}</legend>
                <div class=class>{items}</div>
            </fieldset>
        }
        .into_any()
    };
    let groups: Vec<AnyView> = fields.iter().map(group).collect();
    view! {
        <details class="help" open=open>
            <summary>
                {if fields.contains(&Field::HomeTimed) { t::DROP_MORE } else { t::LEDGE_MORE }}
            </summary>
            {groups}
        </details>
    }
    .into_any()
}

/// Round the clock at each of three levels.
fn rounds(field: Field, owner: Owner) -> Vec<AnyView> {
    (0..3_u8)
        .map(|level| {
            let items: Vec<AnyView> = (4 * level..4 * level + 4)
                .map(|index| {
                    let place = Place {
                        owner,
                        field,
                        index,
                    };
                    view! { <Reading target=Target::Job place=place label=Label::Clock /> }
                        .into_any()
                })
                .collect();
            let (name, _) = t::round_place(4 * level);
            view! {
                <fieldset class="group">
                    <legend>{format!("{}, {name}", t::field(field))}</legend>
                    <div class="readings readings-clock">{items}</div>
                </fieldset>
            }
            .into_any()
        })
        .collect()
}

/// One word out of a few.
pub fn one_of(field: Field, owner: Owner) -> AnyView {
    let state = State::here();
    let place = Place {
        owner,
        field,
        index: 0,
    };
    let items: Vec<AnyView> = field
        .choices()
        .iter()
        .zip(0_u8..)
        .map(|(word, index)| {
            let chosen = move || {
                state
                    .session
                    .text(Target::Job, place)
                    .eq_ignore_ascii_case(word)
            };
            view! {
                <label class="one-of">
                    <input
                        type="radio"
                        name=field.spec().id
                        prop:checked=chosen
                        disabled=move || state.session.is_read_only(Target::Job)
                        on:change=move |_| state.type_text(Target::Job, place, word)
                    />
                    {t::choice(field, index)}
                </label>
            }
            .into_any()
        })
        .collect();
    view! {
        <fieldset class="group">
            <legend>{t::field(field)}</legend>
            <div class="row">{items}</div>
        </fieldset>
    }
    .into_any()
}

/// Lists side by side, row by row: as many rows as are used, and one more.
fn rows(fields: Vec<Field>, owner: Owner) -> AnyView {
    let state = State::here();
    let surveyed = match (owner, fields.as_slice()) {
        (Owner::Bank(bank), [Field::LowSpot]) => state
            .session
            .open
            .with_untracked(|o| o.as_ref().map(|o| spots(&o.job, bank))),
        _ => None,
    };
    let most = surveyed.unwrap_or_else(|| {
        let counts = fields.iter().map(|f| f.spec().places.count());
        counts.min().unwrap_or(1)
    });
    let of = fields.clone();
    let used = Memo::new(move |before: Option<&u8>| {
        let used = state.session.open.with(|open| {
            open.as_ref().map_or(0, |open| {
                let there = |index: u8| {
                    of.iter().any(|field| {
                        let place = Place {
                            owner,
                            field: *field,
                            index,
                        };
                        open.job.entries.get(place).is_some()
                    })
                };
                (0..most)
                    .rev()
                    .find(|i| there(*i))
                    .map_or(0, |index| index + 1)
            })
        });
        // Rows never vanish under the hand.
        used.max(before.copied().unwrap_or(0))
    });
    let visible = move || (0..most.min(used.get() + 1)).collect::<Vec<u8>>();
    let only = (fields.len() == 1)
        .then(|| fields.first().copied())
        .flatten();
    let row = move |index: u8| -> AnyView {
        let readings: Vec<AnyView> = fields
            .iter()
            .map(|field| {
                let place = Place {
                    owner,
                    field: *field,
                    index,
                };
                let label = if only.is_some() {
                    Label::PlaceOnly
                } else {
                    Label::FieldOnly
                };
                view! { <Reading target=Target::Job place=place label=label /> }.into_any()
            })
            .collect();
        if only.is_some() {
            return readings.into_any();
        }
        let name = format!("{} {}", t::PULL, index + 1);
        view! {
            <div class="pull-row" role="group" aria-label=name>
                <span class="pull-number" aria-hidden="true">{(index + 1).to_string()}</span>
                {readings}
            </div>
        }
        .into_any()
    };
    let list = view! { <For each=visible key=|index| *index children=row /> }.into_any();
    match only {
        Some(field) => view! {
            <fieldset class="group">
                <legend>{t::list_title(field)}</legend>
                <div class="readings readings-four">{list}</div>
            </fieldset>
        }
        .into_any(),
        None => view! { <div class="pulls">{list}</div> }.into_any(),
    }
}

/// How the sleeve went in, once that is said: it weighs more than what was
/// expected of the drop.
fn outcome(report: &StepReport, units: UnitSystem) -> Option<AnyView> {
    matches!(report.signal, Go::Go | Go::Look | Go::Stop)
        .then(|| verdict(report.signal, t::next(&report.next, units)))
}

/// A bath that was too short comes before anything that is said of the drop.
fn short(state: State, owner: Owner) -> Option<AnyView> {
    let chill = state.session.step_report(owner, StepId::Chill)?;
    let wait = chill.begun && chill.signal == Go::Wait && matches!(chill.next, Next::Advice(..));
    wait.then(|| verdict(Go::Wait, t::says(StepId::Chill, Go::Wait).to_owned()))
}

/// A row for the step that is open alone: what takes longer than all its
/// numbers, or needs more of the job than its report has.
fn further(state: State, owner: Owner, report: &StepReport) -> Option<Pair> {
    let of = |ask: &dyn Fn(&Job) -> Option<Pair>| {
        state
            .session
            .open
            .with(|open| open.as_ref().and_then(|open| ask(&open.job)))
    };
    match (report.id, report.next) {
        (StepId::Counterbore | StepId::StepDepth, _) => {
            of(&|job| planned(job).ok().flatten().map(chance_row))
        }
        (StepId::Pull, _) => of(&|job| match owner {
            Owner::Cylinder(cylinder) => {
                Some(most_row(&gauge_most(job, cylinder), job.engine.units))
            }
            _ => None,
        }),
        (_, Next::HoneMore(stock)) => {
            of(&|job| strokes(job, stock).ok().flatten().map(strokes_row))
        }
        _ => None,
    }
}

/// A step, open.
#[component]
pub fn StepView(
    /// The step.
    spec: &'static StepSpec,
    /// Whose it is.
    owner: Owner,
    /// Buttons that go on, below the readings.
    onward: AnyView,
) -> impl IntoView {
    let state = State::here();
    state.step_opens(owner, spec.id);
    let report = Memo::new(move |_| state.session.step_report(owner, spec.id));
    let units = state.session.units(Target::Job);
    let stand = untrack(|| state.session.stand());
    let dropped = match owner {
        Owner::Cylinder(cylinder) if spec.calculation == Calculation::ColdDrop => Some(cylinder),
        _ => None,
    };
    let drop = Memo::new(move |_| dropped.map(|cylinder| state.session.drop_of(cylinder)));
    let home = home_within(move || drop.get().as_ref().and_then(ready));
    let answer = move || {
        // Before what is worked out from them (live.rs): the bath is asked below.
        state.session.reports.with(|_| ());
        if let Some(drop) = drop.get() {
            let went = report.with(|r| r.as_ref().and_then(|r| outcome(r, units)));
            // It has gone in: what was expected says no more.
            return Some(
                went.or_else(|| short(state, owner))
                    .unwrap_or_else(|| drop_head(&drop, &home.get(), units)),
            );
        }
        report.with(|report| {
            report.as_ref().map(|r| {
                head(
                    r,
                    further(state, owner, r),
                    state.session.half_typed.get(),
                    units,
                )
            })
        })
    };
    let picture = move || {
        state.session.reports.with(|_| ());
        match drop.get() {
            Some(drop) => drop_picture(&drop, units),
            None => report.with(|report| {
                report
                    .as_ref()
                    .and_then(|r| drawing(state, spec, owner, r, units))
            }),
        }
    };
    let from = (spec.calculation != Calculation::None).then(|| {
        where_from(t::step_title(spec.id).to_lowercase(), units, move || {
            let found = state
                .session
                .open
                .with(|o| o.as_ref().and_then(|o| origin(&o.job, owner, spec.id)));
            found.ok_or(t::NO_NUMBER_YET.get())
        })
    });
    let fitted = match owner {
        Owner::Cylinder(cylinder) => match spec.drawing {
            Drawing::Profile => Some(bore_down(cylinder, units, true)),
            // At the hone it is asked for: keys are not to wait for it.
            Drawing::FitBand => Some(bore_down(cylinder, units, false)),
            _ => None,
        },
        _ => None,
    };
    // What the step waits for of the engine, here where it is wanted.
    let wants = wanted_so_far(move || {
        let now = report.with(|report| {
            let report = report.as_ref()?;
            let of = |open: &OpenJob| engine_wants(&open.job, owner, report);
            state.session.open.with(|open| open.as_ref().map(of))
        });
        now.into_iter().flatten().collect()
    });
    let of_engine = move || {
        engine_fields(&wants.get()).map(|fields| {
            view! {
                <fieldset class="group of-engine">
                    <legend>{t::OF_ENGINE}</legend>
                    {fields}
                </fieldset>
            }
            .into_any()
        })
    };
    let timer = spec
        .timed
        .map(|field| view! { <Timer spec=spec owner=owner field=field /> });
    view! {
        <div class="step-body">
            <div class="step-answer">
                {live(answer)} {live(move || repair(state, spec.id, owner, units))} <div class="step-picture">{fitted} {live(picture)}</div>
            </div>
            <div class="step-entry">
                {timer} {readings(spec, owner, stand)} {live(of_engine)} <Marks spec=spec owner=owner />
                {came_out(state, spec, owner)}
                <div class="row onward">{onward}</div>
            </div>
            <div class="step-aside">{beside(state, spec.id, owner, units)} {from} {help(spec)} {cautions(spec.cautions)}</div>
        </div>
    }
    .into_any()
}
