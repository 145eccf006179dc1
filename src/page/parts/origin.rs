//! The "where from" sheet of a number: words, symbols, inputs, source, how
//! sure, which input matters most. Worked out only while it is open.

use crate::live::live;
use crate::show;
use crate::texts as t;
use coldseat_core::job::UnitSystem;
use coldseat_core::job::origin::Origin;
use leptos::prelude::*;

/// The sheet, behind a button with words.
pub fn where_from(
    name: String,
    units: UnitSystem,
    ask: impl Fn() -> Option<Origin> + Send + Sync + 'static,
) -> AnyView {
    let open = RwSignal::new(false);
    let sheet = move || {
        open.get().then(|| match ask() {
            Some(origin) => body(&origin, units),
            None => view! { <p>{t::NO_NUMBER_YET}</p> }.into_any(),
        })
    };
    view! {
        <details
            class="help origin"
            on:toggle=move |_| open.update(|open| *open = !*open)
        >
            <summary>{format!("{}: {name}", t::WHERE_FROM)}</summary>
            {live(sheet)}
        </details>
    }
    .into_any()
}

fn body(origin: &Origin, units: UnitSystem) -> AnyView {
    let [words, symbols, source] = t::formula(origin.calculation);
    let rows: Vec<AnyView> = origin
        .inputs
        .iter()
        .map(|input| {
            let unit = input.field.unit(units);
            let effect = input.effect.map_or(t::NOT_ANY_MORE.to_owned(), |e| {
                t::moved(e, origin.measure, units)
            });
            view! {
                <tr>
                    <th scope="row">{t::field(input.field)}</th>
                    <td>{show::number(input.si, unit)}</td>
                    <td>{t::step_by(input, units)}</td>
                    <td>{effect}</td>
                </tr>
            }
            .into_any()
        })
        .collect();
    let materials: Vec<AnyView> = origin
        .materials
        .iter()
        .map(|id| view! { <li>{t::material(*id)}</li> }.into_any())
        .collect();
    let materials = (!materials.is_empty()).then(|| {
        view! {
            <h4>{t::MATERIALS}</h4>
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
        <div class="origin-table" role="region" aria-label=t::WENT_IN tabindex="0">
            <table>
                <caption>{t::WENT_IN}</caption>
                <thead>
                    <tr>
                        <th scope="col">{t::INPUT}</th>
                        <th scope="col">{t::VALUE}</th>
                        <th scope="col">{t::IF_OFF_BY}</th>
                        <th scope="col">{t::THEN_MOVES}</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
        {materials}
    }
    .into_any()
}
