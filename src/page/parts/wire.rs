//! A gauge on a wire: connect it, see what arrives, teach which part of a line is the
//! reading.

use crate::gauge::{WireStatus, has_ports};
use crate::live::live;
use crate::parts::choice::Choice;
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{Frame, LinePart, SPEEDS, Wire, WireUnit, parts};
use coldseat_markup::view;
use leptos::prelude::*;

/// The settings; nothing where the browser has no ports.
pub fn wire_settings(state: State) -> Option<AnyView> {
    if !has_ports() {
        return None;
    }
    let wired = state.gauge.wire;
    // Here lines are looked at and go nowhere.
    wired.teaching.set(true);
    on_cleanup(move || wired.teaching.set(false));
    let status = move || t::wire_status(wired.status.get());
    let button = move || {
        let is_on = matches!(wired.status.get(), WireStatus::On);
        let words = if is_on { t::DISCONNECT } else { t::CONNECT };
        let act = move |_| {
            if is_on {
                state.disconnect_wire();
            } else {
                state.connect_wire();
            }
        };
        view! {
            <button type="button" on:click=act>
                {words}
            </button>
        }
        .into_any()
    };
    Some(
        view! {
            <section aria-labelledby="wire-heading">
                <h2 id="wire-heading">{t::WIRE}</h2>
                <div class="form">
                    <p class="quiet">{t::WIRE_WHAT}</p>
                    {port(state)}
                    <div class="row">
                        {live(button)} <p role="status">{live(status)}</p>
                    </div>
                    {live(move || came(state))}
                    {live(move || taught(state))}
                </div>
            </section>
        }
        .into_any(),
    )
}

fn wire(state: State) -> Wire {
    state.shop.with(|shop| shop.wire.unwrap_or_default())
}

fn set(state: State, change: impl FnOnce(&mut Wire)) {
    state.edit_shop(|shop| change(shop.wire.get_or_insert_default()));
}

/// How the port is set.
fn port(state: State) -> AnyView {
    let speeds = SPEEDS.map(|speed| (speed.to_string(), t::wire_speed(speed)));
    let frames = Frame::ALL.map(|frame| (frame.id().to_owned(), t::wire_frame(frame).to_owned()));
    let set_speed = Callback::new(move |text: String| {
        if let Some(speed) = SPEEDS.into_iter().find(|speed| speed.to_string() == text) {
            set(state, |wire| wire.speed = speed);
        }
    });
    let set_frame = Callback::new(move |id: String| {
        if let Some(frame) = Frame::from_id(&id) {
            set(state, |wire| wire.frame = frame);
        }
    });
    view! {
        <Choice
            id="wire-speed"
            label=t::WIRE_SPEED
            options=speeds.to_vec()
            value=Signal::derive(move || wire(state).speed.to_string())
            change=set_speed
        />
        <Choice
            id="wire-frame"
            label=t::WIRE_FRAME
            options=frames.to_vec()
            value=Signal::derive(move || wire(state).frame.id().to_owned())
            change=set_frame
        />
    }
    .into_any()
}

/// What came last, its newest line in parts to be taught by.
fn came(state: State) -> Option<AnyView> {
    let lines = state.gauge.wire.lines.get();
    let newest = lines.last()?;
    let wire = wire(state);
    let (mut numbers, mut words) = (0_u8, 0_u8);
    let buttons: Vec<AnyView> = parts(newest)
        .into_iter()
        .map(|part| match part {
            LinePart::Number(text) => {
                let nth = numbers;
                numbers = numbers.saturating_add(1);
                let name = t::wire_is_reading(&text);
                let is_it = wire.number == Some(nth);
                let act = move |_| set(state, |wire| wire.number = Some(nth));
                part_button(text, name, is_it, act)
            }
            LinePart::Word(text) => {
                let nth = words;
                words = words.saturating_add(1);
                let name = t::wire_is_unit(&text);
                let is_it = wire.unit == WireUnit::Word(nth);
                let act = move |_| set(state, |wire| wire.unit = WireUnit::Word(nth));
                part_button(text, name, is_it, act)
            }
        })
        .collect();
    let before: Vec<AnyView> = lines
        .iter()
        .rev()
        .skip(1)
        .map(|line| view! { <li>{line.clone()}</li> }.into_any())
        .collect();
    let reads = match wire.reading(newest) {
        Ok(text) => t::wire_reads(&text),
        Err(why) => t::no_reading(why).to_owned(),
    };
    Some(
        view! {
            <p>{t::WIRE_CAME}</p>
            <div class="row wire-parts">{buttons}</div>
            <p>
                <strong>{reads}</strong>
            </p>
            <ul class="quiet wire-lines">{before}</ul>
        }
        .into_any(),
    )
}

fn part_button(
    text: String,
    name: String,
    is_it: bool,
    act: impl Fn(web_sys::MouseEvent) + 'static,
) -> AnyView {
    view! {
        <button type="button" aria-label=name aria-pressed=is_it.to_string() on:click=act>
            {text}
        </button>
    }
    .into_any()
}

/// What is taught so far, and how it is taken back.
fn taught(state: State) -> AnyView {
    let wire = wire(state);
    let id = |unit: WireUnit| match unit {
        WireUnit::OfField => "field".to_owned(),
        WireUnit::Inch => "in".to_owned(),
        WireUnit::Millimetre => "mm".to_owned(),
        WireUnit::Word(nth) => format!("word{nth}"),
    };
    let mut units = vec![WireUnit::OfField, WireUnit::Inch, WireUnit::Millimetre];
    // A word is taught on a line that has it.
    units.extend(Some(wire.unit).filter(|unit| matches!(unit, WireUnit::Word(_))));
    let options = units.iter().map(|unit| (id(*unit), t::wire_unit(*unit)));
    let options: Vec<(String, String)> = options.collect();
    let set_unit = Callback::new(move |words: String| {
        let unit = units.iter().find(|unit| id(**unit) == words).copied();
        if let Some(unit) = unit {
            set(state, |wire| wire.unit = unit);
        }
    });
    let forget = wire.number.is_some().then(|| {
        view! {
            <button type="button" on:click=move |_| set(state, |wire| wire.number = None)>
                {t::WIRE_FORGET}
            </button>
        }
    });
    view! {
        <p>{t::wire_number(wire.number)}</p>
        {forget}
        <Choice
            id="wire-unit"
            label=t::WIRE_UNIT
            options=options
            value=Signal::derive(move || id(wire.unit))
            change=set_unit
        />
    }
    .into_any()
}
