//! Findings, cautions and help: text that goes with numbers.

use crate::texts as t;
use coldseat_core::ask::{Caution, Finding, StepSpec, UnitSystem};
use coldseat_markup::view;
use leptos::prelude::*;

/// What a calculation found beside its number.
pub fn findings(list: &[Finding], units: UnitSystem) -> Option<AnyView> {
    (!list.is_empty()).then(|| {
        let items: Vec<AnyView> = list
            .iter()
            .map(|finding| {
                view! {
                    <li>
                        <strong>{t::level(finding.level)}</strong>
                        {format!(" {}", t::finding(finding, units))}
                    </li>
                }
                .into_any()
            })
            .collect();
        view! { <ul class="findings">{items}</ul> }.into_any()
    })
}

/// Cautions with the standing words.
pub fn cautions(list: &[Caution]) -> Option<AnyView> {
    (!list.is_empty()).then(|| {
        let items: Vec<AnyView> = list
            .iter()
            .map(|caution| {
                view! {
                    <li>
                        <strong>{t::caution_title(*caution)}</strong>
                        {format!(": {}", t::caution(*caution))}
                    </li>
                }
                .into_any()
            })
            .collect();
        view! {
            <aside class="cautions" aria-label=t::CAUTIONS.get()>
                <h2>{t::CAUTIONS}</h2>
                <ul>{items}</ul>
                <p>{t::STANDING_WORDS}</p>
            </aside>
        }
        .into_any()
    })
}

/// How to measure a step.
pub fn help(spec: &StepSpec) -> AnyView {
    view! {
        <details class="help">
            <summary>{t::HELP}</summary>
            <p>{t::help(spec.id)}</p>
        </details>
    }
    .into_any()
}
