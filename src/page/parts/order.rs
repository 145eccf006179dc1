//! Go or no-go of an order: each check with its sign, its value and the least
//! wanted.

use crate::parts::verdict::shape;
use crate::show::{length, number};
use crate::texts as t;
use coldseat_core::ask::{OrderCheck, Signal, Standing, UnitSystem};
use coldseat_markup::view;
use leptos::prelude::*;

/// The checks, one a line.
pub fn order_list(checks: &[OrderCheck], units: UnitSystem) -> AnyView {
    let items: Vec<AnyView> = checks.iter().map(|check| line(check, units)).collect();
    let from: Vec<AnyView> = checks.iter().filter_map(|c| origin(c, units)).collect();
    let from = (!from.is_empty()).then(|| {
        view! {
            <details class="help origin">
                <summary>{t::ORDER_FROM}</summary>
                <dl class="origin-words">{from}</dl>
                <p>{t::ORDER_SOURCE}</p>
            </details>
        }
    });
    view! {
        <ul class="order">{items}</ul>
        {from}
    }
    .into_any()
}

/// How a check is worked out, and from what.
fn origin(check: &OrderCheck, units: UnitSystem) -> Option<AnyView> {
    matches!(check.standing, Standing::Known(_)).then(|| {
        let inputs: Vec<String> = check
            .inputs
            .iter()
            .map(|(field, si, usual)| {
                let value = number(*si, field.unit(units));
                let value = if *usual { t::as_usual(&value) } else { value };
                format!("{} {value}", t::field(*field))
            })
            .collect();
        view! {
            <dt>{t::order_item(check.item, check.kind)}</dt>
            <dd>
                <span class="symbols">{t::order_formula(check.item, check.kind)}</span>
                <br />
                {inputs.join("; ")}
            </dd>
        }
        .into_any()
    })
}

fn line(check: &OrderCheck, units: UnitSystem) -> AnyView {
    let of = |m: f64| length(m, units);
    let signal = check.signal();
    let (value, least) = match &check.standing {
        Standing::Known(one) => (of(one.value.as_m()), t::least(&of(one.least.as_m()))),
        Standing::Missing(missing) => (String::new(), t::order_missing(missing.field)),
        Standing::Unusable(unusable) => (String::new(), t::mend(unusable, units)),
        Standing::Refused(fault) => (String::new(), t::fault(fault)),
        Standing::NotHere => (
            String::new(),
            t::order_not_here(check.item, check.kind).to_owned(),
        ),
    };
    let word = match check.standing {
        Standing::NotHere => t::NONE_HERE.get(),
        _ => t::signal(signal),
    };
    let class = match signal {
        Signal::None | Signal::Marked | Signal::Wait => "mark",
        Signal::Go => "mark mark-go",
        Signal::Look => "mark mark-look",
        Signal::Stop => "mark mark-stop",
    };
    view! {
        <li>
            <span class=class>
                {shape(signal)} <span class="mark-word">{word}</span>
            </span>
            <span class="order-item">{t::order_item(check.item, check.kind)}</span>
            <strong class="order-value">{value}</strong>
            <span class="order-least">{least}</span>
        </li>
    }
    .into_any()
}
