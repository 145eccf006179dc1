//! Cold drop without a job: a handful of numbers, the answer under the finger.

use crate::answers::home_within;
use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::choice::{Choice, MaterialChoice};
use crate::parts::drop_answer::{drop_head, drop_picture, part_picture, ready};
use crate::parts::drops::kept_drops;
use crate::parts::findings::cautions;
use crate::parts::origin::where_from;
use crate::parts::reading::{Label, Reading};
use crate::parts::share::share;
use crate::parts::ways::{beside, side_by_side};
use crate::show::fixed;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::document::Shared;
use coldseat_core::ask::format::decimals;
use coldseat_core::ask::{
    Caution, Cold, DropAnswer, DropSheet, Field, Heat, Lack, Lacks, MaterialId, Part, Place,
    UnitSystem, drop_field_of as field_of, origin_of_drop,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// A slider's reach: from, to, step, in the unit of the sheet.
struct Reach(f64, f64, f64);

/// Sliders reach over what sleeves have; other parts differ too much in size.
fn reach(part: &Result<Part, Lack>, field: Field, units: UnitSystem) -> Option<Reach> {
    let sleeve = matches!(part, Ok(part) if part.is_sleeve());
    if !sleeve && !matches!(field, Field::DropCarry | Field::DropHome) {
        return None;
    }
    let (inch, metric) = match field {
        Field::DropOd => (Reach(3.0, 6.5, 0.01), Reach(75.0, 165.0, 0.25)),
        Field::DropWall => (Reach(0.06, 0.3, 0.005), Reach(1.5, 8.0, 0.1)),
        Field::DropFit => (Reach(0.0, 0.004, 0.0001), Reach(0.0, 0.1, 0.002)),
        Field::DropBlockWall => (Reach(0.1, 1.0, 0.01), Reach(2.5, 25.0, 0.25)),
        Field::DropCarry => (Reach(0.0, 40.0, 1.0), Reach(0.0, 40.0, 1.0)),
        Field::DropHome => (Reach(1.0, 20.0, 0.5), Reach(1.0, 20.0, 0.5)),
        _ => return None,
    };
    Some(match units {
        UnitSystem::Inch => inch,
        UnitSystem::Metric => metric,
    })
}

/// The screen.
#[component]
pub fn DropScreen() -> impl IntoView {
    let state = State::here();
    let answer = Memo::new(move |_| state.session.drop_answer());
    let home = home_within(move || ready(&answer.get()));
    let units = Memo::new(move |_| state.session.drop_sheet.with(|d| d.units));
    let sleeve = Signal::derive(move || {
        state
            .session
            .drop_sheet
            .with(|d| d.sleeve_material.id().to_owned())
    });
    let block = Signal::derive(move || {
        state
            .session
            .drop_sheet
            .with(|d| d.block_material.id().to_owned())
    });
    let shown_units = Signal::derive(move || units.get().id().to_owned());
    let title = move || {
        let name = state.session.drop_open.with(|open| open.job.name.clone());
        if name.trim().is_empty() {
            t::COLD_DROP.get().to_owned()
        } else {
            name
        }
    };
    // What was typed stays as it was; its field shows it in the new unit.
    let set_units = Callback::new(move |id: String| {
        if let Some(units) = UnitSystem::from_id(&id) {
            state.close_pad();
            state.session.edit_drop(|drop| drop.units = units);
        }
    });
    let set_sleeve = Callback::new(move |id: String| {
        if let Some(material) = MaterialId::from_id(&id) {
            state
                .session
                .edit_drop(|drop| drop.sleeve_material = material);
        }
    });
    let set_block = Callback::new(move |id: String| {
        if let Some(material) = MaterialId::from_id(&id) {
            state
                .session
                .edit_drop(|drop| drop.block_material = material);
        }
    });
    // A fault of the core is shown at its field as well as in the answer.
    let fault = move || match answer.get() {
        DropAnswer::Lacks(Lacks {
            refused: Some(fault),
            ..
        }) => Some(
            view! {
                <p class="fault">
                    {format!("{}: {}", t::field(field_of(&fault)), t::fault(&fault))}
                </p>
            }
            .into_any(),
        ),
        _ => None,
    };
    // Readings carry the unit and what is usual of the part, so they are made anew
    // when one of them changes.
    let choices = Memo::new(move |_| {
        state
            .session
            .drop_sheet
            .with(|d| (d.units, d.part(), d.cold(), d.heat()))
    });
    let fields = move |of: fn(&DropSheet) -> Vec<Field>| {
        move || {
            let (units, ..) = choices.get();
            group(state, units, &state.session.drop_sheet.with_untracked(of))
        }
    };
    let part_fields = fields(DropSheet::part_fields);
    let cold_fields = fields(DropSheet::cold_fields);
    let housing_fields = fields(DropSheet::housing_fields);
    let prices = fields(|_| vec![Field::DropLitrePrice, Field::DropIcePrice]);
    let warnings = move || {
        let (_, _, cold, heat) = choices.get();
        cautions(&cautions_of(cold, heat))
    };
    let unit_options = [UnitSystem::Inch, UnitSystem::Metric]
        .map(|u| (u.id().to_owned(), t::units(u).to_owned()))
        .to_vec();
    view! {
        <div class="drop">
            <h1 id="screen-heading" tabindex="-1">
                {live(title)}
            </h1>
            <div class="drop-what">
                {word(state, Field::DropPart, t::PART.get(), Part::ALL, Part::id, t::part)}
                {word(state, Field::DropCold, t::COLD_BY.get(), Cold::ALL, Cold::id, t::cold)}
                {word(state, Field::DropHeat, t::HEAT_BY.get(), Heat::ALL, Heat::id, t::heat)}
            </div>
            <div class="step-body">
                <div class="step-answer">
                    {live(move || drop_head(&answer.get(), &home.get(), units.get()))} {live(fault)}
                    <div class="step-picture">
                        {live(move || part_picture(&answer.get(), units.get()))}
                        {live(move || drop_picture(&answer.get(), units.get()))}
                    </div>
                    {live(move || beside(&answer.get(), units.get()))} {side_by_side(state, answer)}
                    {live(move || where_from(t::GRIP_TIME.get().to_owned(), units.get(), move || {
                        state.session.drop_sheet.with(origin_of_drop).ok_or(t::NO_NUMBER_YET.get())
                    }))}
                </div>
                <div class="step-entry">
                    <fieldset class="group">
                        <legend>{t::PART}</legend>
                        <MaterialChoice
                            id="drop-sleeve-material"
                            label=t::PART_MATERIAL.get()
                            value=sleeve
                            change=set_sleeve
                        />
                        {live(part_fields)}
                    </fieldset>
                    <fieldset class="group">
                        <legend>{t::HOUSING}</legend>
                        <MaterialChoice
                            id="drop-block-material"
                            label=t::HOUSING_MATERIAL.get()
                            value=block
                            change=set_block
                        />
                        {live(housing_fields)}
                    </fieldset>
                    <fieldset class="group">
                        <legend>{t::THE_WAY}</legend>
                        {live(cold_fields)}
                    </fieldset>
                    <fieldset class="group">
                        <legend>{t::PRICES}</legend>
                        {live(prices)}
                    </fieldset>
                    <Choice
                        id="drop-units"
                        label=t::UNITS.get()
                        options=unit_options
                        value=shown_units
                        change=set_units
                    />
                    </div>
                <div class="step-aside">
                    {kept_drops(state)} {share(t::SHARE_DROP.get(), "link-drop", move || {
                        Some(Shared::Drop(state.session.drop_sheet.get()))
                    })} {live(warnings)}
                </div>
            </div>
        </div>
    }
    .into_any()
}

/// A choice that is an entry of the sheet.
fn word<T: Copy + 'static>(
    state: State,
    field: Field,
    label: &'static str,
    all: &'static [T],
    id: fn(T) -> &'static str,
    words: fn(T) -> &'static str,
) -> AnyView {
    let place = Place::of_engine(field);
    let options = all
        .iter()
        .map(|one| (id(*one).to_owned(), words(*one).to_owned()))
        .collect();
    let first = all.first().map_or("", |one| id(*one));
    // A text that is none of its words is not the first of them: none is chosen.
    let value = Signal::derive(move || {
        let text = state.session.text(Target::Drop, place);
        if text.is_empty() {
            first.to_owned()
        } else {
            text
        }
    });
    let locked = Signal::derive(move || state.session.is_read_only(Target::Drop));
    let change = Callback::new(move |word: String| {
        state.close_pad();
        state.type_text(Target::Drop, place, &word);
        state.session.leaves_place();
    });
    let name = field.spec().id;
    view! {
        <Choice id=name label=label options=options value=value change=change locked=locked />
    }
    .into_any()
}

/// The cautions of a cold and a heat; of a word that cannot be read all of them.
fn cautions_of(cold: Result<Cold, Lack>, heat: Result<Heat, Lack>) -> Vec<Caution> {
    let mut list = match cold {
        Ok(Cold::Nitrogen) => vec![Caution::Nitrogen, Caution::ColdIron],
        Ok(Cold::DryIceAlcohol | Cold::DryIcePacked) => vec![Caution::DryIce, Caution::ColdIron],
        Ok(Cold::Freezer | Cold::Outdoors | Cold::AsItIs) => Vec::new(),
        Err(_) => vec![Caution::Nitrogen, Caution::DryIce, Caution::ColdIron],
    };
    if !matches!(heat, Ok(Heat::AsItIs)) {
        list.push(Caution::Hot);
    }
    list
}

fn group(state: State, units: UnitSystem, fields: &[Field]) -> AnyView {
    let part = state.session.drop_sheet.with_untracked(DropSheet::part);
    fields
        .iter()
        .map(|field| {
            let place = Place::of_engine(*field);
            view! {
                <div class="with-slider">
                    <Reading target=Target::Drop place=place label=Label::Full />
                    {reach(&part, *field, units).map(|reach| slider(state, place, units, reach))}
                </div>
            }
            .into_any()
        })
        .collect::<Vec<AnyView>>()
        .into_any()
}

fn slider(state: State, place: Place, units: UnitSystem, reach: Reach) -> AnyView {
    let Reach(from, to, step) = reach;
    let unit = place.field.unit(units);
    let value = Memo::new(move |_| {
        // Where nothing usable stands the slider has no place but its end.
        let si = state.session.drop_sheet.with(|sheet| sheet.si(place.field));
        fixed(
            si.map_or(from, |si| unit.from_si(si).clamp(from, to)),
            decimals(unit),
        )
    });
    let spoken = move || format!("{} {}", value.get(), unit.symbol());
    view! {
        <input
            type="range"
            aria-label=format!("{}, {}", t::field(place.field), t::SLIDER)
            aria-valuetext=words(spoken)
            min=from.to_string()
            max=to.to_string()
            step=step.to_string()
            prop:value=words(move || value.get())
            on:input=move |event| {
                let typed = event_target_value(&event).parse::<f64>().unwrap_or(from);
                state.type_text(Target::Drop, place, &fixed(typed, decimals(unit)));
            }
        />
    }
    .into_any()
}
