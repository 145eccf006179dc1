//! The "where from" sheet of a number: words, symbols, inputs, source, how
//! sure, which input matters most. Worked out only while it is open.

use crate::live::live;
use crate::parts::fold::is_open;
use crate::show;
use crate::texts as t;
use coldseat_core::ask::{Input, Origin, UnitSystem};
use coldseat_markup::view;
use leptos::prelude::*;

/// The sheet, behind a button with words; where there is no number, why.
pub fn where_from(
    name: String,
    units: UnitSystem,
    ask: impl Fn() -> Result<Origin, &'static str> + Send + Sync + 'static,
) -> AnyView {
    let open = RwSignal::new(false);
    let sheet = move || {
        open.get().then(|| match ask() {
            Ok(origin) => body(&origin, units),
            Err(why) => view! { <p>{why}</p> }.into_any(),
        })
    };
    view! {
        <details
            class="help origin"
            prop:open=move || open.get()
            on:toggle=move |event| open.set(is_open(&event))
        >
            <summary>{format!("{}: {name}", t::WHERE_FROM)}</summary>
            {live(sheet)}
        </details>
    }
    .into_any()
}

/// The value of an input, and whether it is nobody's own.
fn value(input: &Input, units: UnitSystem) -> String {
    let value = show::number(input.si, input.field.unit(units));
    let value = t::mean_of(&value, input.places, input.decides);
    if input.usual {
        t::as_usual(&value)
    } else {
        value
    }
}

fn body(origin: &Origin, units: UnitSystem) -> AnyView {
    let [words, symbols, source] = t::formula(origin.calculation);
    // What does not move the number at all (a limit, an uncertainty) is named
    // behind, in one line.
    let still = |input: &Input| input.effect.is_some_and(|e| e.abs() < 1e-12);
    let rows: Vec<AnyView> = origin
        .inputs
        .iter()
        .filter(|input| !still(input))
        .map(|input| {
            let effect = input.effect.map(|e| t::moved(e, origin.measure, units));
            view! {
                <li>
                    <strong>{t::field(input.field)}</strong>
                    {format!(" {}", value(input, units))}
                    <br />
                    {t::moves(&t::step_by(input, units), effect.as_deref())}
                </li>
            }
            .into_any()
        })
        .collect();
    let others: Vec<String> = origin
        .inputs
        .iter()
        .filter(|input| still(input))
        .map(|input| format!("{} {}", t::field(input.field), value(input, units)))
        .collect();
    let others = (!others.is_empty())
        .then(|| view! { <p>{format!("{} {}.", t::ALSO_IN, others.join("; "))}</p> });
    let materials: Vec<AnyView> = origin
        .materials
        .iter()
        .map(|id| view! { <li>{t::material(*id)}</li> }.into_any())
        .collect();
    let materials = (!materials.is_empty()).then(|| {
        view! {
            <p class="origin-head">{t::MATERIALS}</p>
            {origin.shrink.and_then(t::shrink_by).map(|words| view! { <p>{words}</p> })}
            <ul>{materials}</ul>
        }
    });
    view! {
        <dl class="origin-words">
            <dt>{t::IN_WORDS}</dt>
            <dd>{words}</dd>
            <dt>{t::IN_SYMBOLS}</dt>
            <dd class="symbols">{symbols}</dd>
            <dt>{t::SOURCE}</dt>
            <dd>{source}</dd>
        </dl>
        <p class="origin-head">{t::WENT_IN}</p>
        <ol class="origin-inputs">{rows}</ol>
        {others}
        {materials}
    }
    .into_any()
}
