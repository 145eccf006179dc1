//! One reading: label, input, and what the core says of it. The only renderer
//! of readings; every screen uses it.

use crate::browser;
use crate::caret;
use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::folder::entered;
use crate::show;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{Checked, Measure, NONE_HERE, Owner, Place, by_sheet_most};
use coldseat_markup::view;
use leptos::prelude::*;

/// How the label of a reading reads.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Label {
    /// The field's name, with its place behind it.
    Full,
    /// The place; the field's name is in the legend, and spoken.
    PlaceOnly,
    /// The field's name; the place is in the legend, and spoken.
    FieldOnly,
    /// The clock point; field and level are in the legend, and spoken.
    Clock,
}

/// The id of a reading's input.
#[must_use]
pub fn input_id(place: Place) -> String {
    let owner = match place.owner {
        Owner::Block => "e".to_owned(),
        Owner::Bank(bank) => format!("b{bank}"),
        Owner::Cylinder(cylinder) => format!("c{cylinder}"),
    };
    format!("{owner}-{}-{}", place.field.spec().id, place.index)
}

/// A reading.
#[component]
pub fn Reading(
    /// Whose numbers it belongs to.
    target: Target,
    /// Where it lives.
    place: Place,
    /// How its label reads.
    label: Label,
) -> impl IntoView {
    let state = State::here();
    let id = input_id(place);
    let note_id = format!("{id}-note");
    let text = Memo::new(move |_| state.session.text(target, place));
    // While the hand is here the number is half typed: what looks wrong with it
    // is said when the hand goes on.
    let here = RwSignal::new(false);
    let checked = Memo::new(move |_| match state.session.checked(target, place) {
        Checked::Questioned(si, _) if here.get() => Checked::Good(si),
        Checked::Refused(_) if here.get() => Checked::Empty,
        checked => checked,
    });
    let units = state.session.units(target);
    let unit = place.field.unit(units);
    let which = t::place(place.field, place.index);
    let (shown, spoken) = match label {
        Label::Full if which.is_empty() => (t::field(place.field).to_owned(), String::new()),
        Label::Full => (format!("{}: {which}", t::field(place.field)), String::new()),
        Label::Clock => {
            let (level, clock) = t::round_place(place.index);
            (clock, format!("{}, {level}: ", t::field(place.field)))
        }
        Label::PlaceOnly if which.is_empty() => (t::field(place.field).to_owned(), String::new()),
        Label::PlaceOnly => (which, format!("{}: ", t::field(place.field))),
        Label::FieldOnly => (t::field(place.field).to_owned(), format!("{which}: ")),
    };
    let class = move || match checked.get() {
        Checked::Refused(_) => "reading reading-refused",
        Checked::Questioned(..) => "reading reading-questioned",
        Checked::Empty | Checked::NotHere | Checked::Good(_) => "reading",
    };
    let invalid = move || matches!(checked.get(), Checked::Refused(_)).to_string();
    // A signed height says in words which way it stands.
    let echo = move || match checked.get() {
        Checked::Good(si) | Checked::Questioned(si, _) if place.field.stands_proud() => {
            if si < 0.0 {
                t::LOW.get()
            } else {
                t::PROUD.get()
            }
        }
        _ => "",
    };
    let id_focus = id.clone();
    let on_key = move |event: web_sys::KeyboardEvent| match event.key().as_str() {
        "Enter" => {
            event.prevent_default();
            state.goes_on(target, place);
        }
        "Escape" => state.close_pad(),
        _ => {}
    };
    // The own pad is enough; the system keyboard would cover it. A hardware keyboard
    // and a gauge that is one type in any case.
    let mode = move || {
        if state.ui.pad_on.get() {
            "none"
        } else {
            "decimal"
        }
    };
    let none_here = place.field.may_be_none();
    let is_temperature = place.field.spec().measure == Measure::Temperature;
    let note = move || match checked.get() {
        Checked::NotHere => Some(view! { <p>{t::NONE_OF_IT}</p> }.into_any()),
        Checked::Empty if none_here => Some(
            view! {
                <button
                    type="button"
                    aria-label=format!("{}: {}", t::HAS_NONE, t::field(place.field))
                    disabled=move || state.session.is_read_only(target)
                    on:click=move |_| state.type_text(target, place, NONE_HERE)
                >
                    {t::HAS_NONE}
                </button>
            }
            .into_any(),
        ),
        Checked::Empty if is_temperature => {
            let last = state.session.temperature_before(target, place);
            last.map(|(text, at)| {
                let words = t::as_read_at(&text, unit.symbol(), &browser::date(at));
                view! {
                    <button
                        type="button"
                        aria-label=format!("{words}: {}", t::place_title(place))
                        disabled=move || state.session.is_read_only(target)
                        on:click=move |_| state.type_text(target, place, &text)
                    >
                        {words}
                    </button>
                }
                .into_any()
            })
        }
        // No usual value stands here: what the sheet may say.
        Checked::Empty => by_sheet_most(place.field).map(|most| {
            view! { <p class="quiet">{t::by_sheet(&show::number(most, unit))}</p> }.into_any()
        }),
        Checked::Good(_) if target == Target::Job => entered(state, place),
        Checked::Good(_) => None,
        Checked::Refused(refusal) => {
            Some(view! { <p>{t::refusal(&refusal.why, place.field, units)}</p> }.into_any())
        }
        Checked::Questioned(_, question) => {
            let suggestion = t::suggestion(&question).map(|si| {
                let value = show::bare_number(si, unit);
                let words = format!("{} {}", t::USE_VALUE, show::number(si, unit));
                view! {
                    <button
                        type="button"
                        on:click=move |_| state.type_text(target, place, &value)
                    >
                        {words}
                    </button>
                }
            });
            Some(
                view! {
                    <p>{t::question(&question, place.field, units)}</p>
                    <div class="row">
                        {suggestion}
                        <button
                            type="button"
                            on:click=move |_| {
                                state.session.keep(target, place);
                                state.hand_stays();
                            }
                        >
                            {t::IT_IS_RIGHT}
                        </button>
                    </div>
                }
                .into_any(),
            )
        }
    };
    let on_input = move |event: web_sys::Event| {
        let typed = event_target_value(&event);
        let text = if caret::is_keyed(&event) {
            state.keyed(target, place, typed)
        } else {
            // Emptied, it is as if the hand had just come.
            state.ui.typing.update(|typing| {
                typing.digits = None;
                typing.begun = !typed.is_empty();
            });
            typed
        };
        state.type_text(target, place, &text);
    };
    let id_paste = id.clone();
    // A column out of a spreadsheet fills this place and those after it.
    let on_paste = move |event: web_sys::ClipboardEvent| {
        let text = event
            .clipboard_data()
            .and_then(|data| data.get_data("text").ok())
            .unwrap_or_default();
        let cells: Vec<&str> = text
            .split(['\n', '\r', '\t'])
            .map(str::trim)
            .filter(|cell| !cell.is_empty())
            .collect();
        if cells.len() > 1 && !untrack(|| state.session.is_read_only(target)) {
            event.prevent_default();
            browser::fill_from(&id_paste, &cells);
        }
    };
    // Where nothing is typed the usual value stands, and is seen as what it is.
    let placeholder = match state.session.usual_text(target, place).as_str() {
        "" => String::new(),
        usual => t::usual(usual),
    };
    let for_id = id.clone();
    let described = note_id.clone();
    view! {
        <div class=words(class)>
            <label for=for_id>
                <span class="spoken">{spoken}</span>
                {shown}
                <span class="reading-unit">{format!(" {}", unit.symbol())}</span>
            </label>
            <div class="reading-line">
                <input
                    id=id
                    type="text"
                    inputmode=words(mode)
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    enterkeyhint="next"
                    maxlength="60"
                    data-place=""
                    readonly=move || state.session.is_read_only(target)
                    prop:value=words(move || text.get())
                    aria-invalid=words(invalid)
                    aria-describedby=described
                    on:input=on_input
                    placeholder=placeholder
                    on:blur=move |_| {
                        here.set(false);
                        state.session.reading_done();
                    }
                    on:focus=move |_| {
                        here.set(true);
                        state.activate(target, place);
                        browser::show_above_pad(&id_focus);
                    }
                    on:keydown=on_key
                    on:paste=on_paste
                />
                <span class="reading-echo">{live(echo)}</span>
            </div>
            <div id=note_id class="reading-note" aria-live="polite">
                {live(note)}
            </div>
        </div>
    }
    .into_any()
}
