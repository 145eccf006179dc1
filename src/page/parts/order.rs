//! Go or no-go of an order: each check with its sign, its value and the least
//! wanted.

use crate::parts::verdict::shape;
use crate::show::length;
use crate::texts as t;
use coldseat_core::job::UnitSystem;
use coldseat_core::job::order::{OrderCheck, Standing};
use coldseat_core::job::report::Signal;
use leptos::prelude::*;

/// The checks, one a line.
pub fn order_list(checks: &[OrderCheck], units: UnitSystem) -> AnyView {
    let items: Vec<AnyView> = checks.iter().map(|check| line(check, units)).collect();
    view! { <ul class="order">{items}</ul> }.into_any()
}

fn line(check: &OrderCheck, units: UnitSystem) -> AnyView {
    let of = |m: f64| length(m, units);
    let signal = check.signal();
    let (value, least) = match &check.standing {
        Standing::Known(value, least, _) => (of(value.as_m()), t::least(&of(least.as_m()))),
        Standing::Missing(field) => (String::new(), t::order_missing(*field)),
        Standing::Refused(fault) => (String::new(), t::fault(fault)),
        Standing::NotHere => (String::new(), t::order_not_here(check.item).to_owned()),
    };
    let word = match check.standing {
        Standing::NotHere => t::NONE_HERE,
        _ => t::signal(signal),
    };
    let class = match signal {
        Signal::None | Signal::Wait => "mark",
        Signal::Go => "mark mark-go",
        Signal::Look => "mark mark-look",
        Signal::Stop => "mark mark-stop",
    };
    view! {
        <li>
            <span class=class>
                {shape(signal)} <span class="mark-word">{word}</span>
            </span>
            <span class="order-item">{t::order_item(check.item)}</span>
            <strong class="order-value">{value}</strong>
            <span class="order-least">{least}</span>
        </li>
    }
    .into_any()
}
