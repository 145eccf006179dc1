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
    state
        .session
        .shop
        .with(|shop| shop.wire.clone().unwrap_or_default())
}

fn set(state: State, change: impl FnOnce(&mut Wire)) {
    state
        .session
        .edit_shop(|shop| change(shop.wire.get_or_insert_default()));
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
            label=t::WIRE_SPEED.get()
            options=speeds.to_vec()
            value=Signal::derive(move || wire(state).speed.to_string())
            change=set_speed
        />
        <Choice
            id="wire-frame"
            label=t::WIRE_FRAME.get()
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
    let taught = wire.taught.as_ref().map(|taught| taught.number);
    let mut numbers = 0_u8;
    let buttons: Vec<AnyView> = parts(newest)
        .into_iter()
        .map(|part| match part {
            LinePart::Number(text) => {
                let nth = numbers;
                numbers = numbers.saturating_add(1);
                let line = newest.clone();
                view! {
                    <button
                        type="button"
                        aria-label=t::wire_is_reading(&text)
                        aria-pressed=(taught == Some(nth)).to_string()
                        on:click=move |_| set(state, |wire| wire.teach(&line, nth))
                    >
                        {text}
                    </button>
                }
                .into_any()
            }
            LinePart::Word(text) => view! { <span>{text}</span> }.into_any(),
            LinePart::Other(sign) => view! { <span>{sign.to_string()}</span> }.into_any(),
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

/// What is taught so far, and how it is taken back.
fn taught(state: State) -> AnyView {
    let wire = wire(state);
    let options = WireUnit::ALL.map(|unit| (unit.id().to_owned(), t::wire_unit(unit).to_owned()));
    let set_unit = Callback::new(move |id: String| {
        if let Some(unit) = WireUnit::from_id(&id) {
            set(state, |wire| wire.unit = unit);
        }
    });
    let forget = wire.taught.is_some().then(|| {
        view! {
            <button type="button" on:click=move |_| set(state, |wire| wire.taught = None)>
                {t::WIRE_FORGET}
            </button>
        }
    });
    let number = wire.taught.as_ref().map(|taught| taught.number);
    view! {
        <p>{t::wire_number(number)}</p>
        {forget}
        <Choice
            id="wire-unit"
            label=t::WIRE_UNIT.get()
            options=options.to_vec()
            value=Signal::derive(move || wire.unit.id().to_owned())
            change=set_unit
        />
    }
    .into_any()
}
