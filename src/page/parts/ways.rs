//! Beside a cold drop: how long in the cold and in the heat, what would do, and
//! the same part by other means.

use crate::answers::{Home, home_within};
use crate::live::live;
use crate::memo::Memo;
use crate::parts::drop_answer::ready;
use crate::parts::fold::is_open;
use crate::show::{bare, clock, fixed, length, number, seconds};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{
    DropAnswer, DropWays, Fault, Heat, Measure, Reach, Seconds, Signal, Span, Takes, UnitSystem,
    Way, drop_by_other_means, drop_of_sheet, drop_price, drop_ways,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// A line: its name, and what it says.
fn line(name: &'static str, says: String) -> AnyView {
    view! {
        <div>
            <dt>{name}</dt>
            <dd>{says}</dd>
        </div>
    }
    .into_any()
}

fn said<T>(answer: &Result<T, Fault>, words: impl Fn(&T) -> String) -> String {
    match answer {
        Ok(value) => words(value),
        Err(fault) => t::fault(fault),
    }
}

fn span(span: &Span) -> String {
    let on_clock = |s: Seconds| clock(s.as_s());
    t::time_span(
        &on_clock(span.usual),
        &on_clock(span.quick),
        &on_clock(span.slow),
    )
}

/// As many decimals as tell something.
fn amount(value: f64) -> String {
    fixed(
        value,
        if value < 0.095 {
            3
        } else if value < 1.0 {
            2
        } else {
            1
        },
    )
}

fn takes(takes: &Takes) -> String {
    match takes {
        Takes::Nitrogen(litres) => t::litres(&amount(*litres)),
        Takes::DryIce(kg) => t::dry_ice(&amount(*kg)),
    }
}

fn reach(reach: &Reach, units: UnitSystem) -> String {
    match reach {
        Reach::From(at) => number(at.as_k(), Measure::Temperature.unit(units)),
        Reach::AsItIs => t::ENOUGH_AS_IT_IS.get().to_owned(),
        Reach::Never(left) => t::never_enough(&length(left.as_m(), units)),
    }
}

/// What stands beside an answer.
pub fn beside(answer: &DropAnswer, units: UnitSystem) -> Option<AnyView> {
    let view = ready(answer)?;
    let DropWays {
        in_cold,
        in_heat,
        takes: medium,
        fit_most,
        cold_for,
        heat_for,
        closes,
    } = drop_ways(&view.case, view.least);
    let plate = view.case.heat == Heat::HotPlate;
    let lines = [
        in_cold.map(|time| line(t::IN_COLD.get(), said(&time, span))),
        in_heat.map(|time| line(t::IN_HEAT.get(), said(&time, span))),
        plate.then(|| line(t::IN_HEAT.get(), t::PLATE_TOUCH.get().to_owned())),
        medium.map(|medium| line(t::TAKES.get(), said(&medium, takes))),
        Some(line(
            t::FIT_MOST.get(),
            said(&fit_most, |fit| {
                if fit.as_m() > 0.0 {
                    t::up_to(&length(fit.as_m(), units))
                } else {
                    t::only_loose(&length(-fit.as_m(), units))
                }
            }),
        )),
        Some(line(
            t::COLD_ENOUGH.get(),
            said(&cold_for, |r| reach(r, units)),
        )),
        Some(line(
            t::HOT_ENOUGH.get(),
            said(&heat_for, |r| reach(r, units)),
        )),
        closes.map(|closes| {
            line(
                t::CLOSES_IN.get(),
                said(&closes, |c| {
                    t::closes(
                        &length(c.by.as_m(), units),
                        &bare(c.before.as_m(), units),
                        &bare(c.after.as_m(), units),
                    )
                }),
            )
        }),
    ];
    let lines: Vec<AnyView> = lines.into_iter().flatten().collect();
    Some(
        view! {
            <section class="beside">
                <h2>{t::BESIDE}</h2>
                <dl>{lines}</dl>
                <p class="quiet">{t::BESIDE_WHAT}</p>
            </section>
        }
        .into_any(),
    )
}

/// The same part by other means; worked out while it is open. Where something of the
/// sheet cannot be used, or two devices differ, nothing is worked out of it here either.
pub fn side_by_side(state: State, answer: Memo<DropAnswer>) -> AnyView {
    let open = RwSignal::new(false);
    let table = move || {
        open.get().then(|| {
            let is_spoilt = answer.with(|answer| match answer {
                DropAnswer::Lacks(lacks) => !lacks.unusable.is_empty(),
                DropAnswer::Ready(_) => false,
            });
            match state.session.drop_sheet.with(drop_by_other_means) {
                Ok(rows) if !is_spoilt => table(rows),
                _ => view! { <p class="fault">{t::DROP_MEND}</p> }.into_any(),
            }
        })
    };
    view! {
        <details
            class="help ways"
            prop:open=move || open.get()
            on:toggle=move |event| open.set(is_open(&event))
        >
            <summary>{t::SIDE_BY_SIDE}</summary>
            {live(table)}
        </details>
    }
    .into_any()
}

fn table(rows: Vec<Way>) -> AnyView {
    let rows: Vec<AnyView> = rows.into_iter().map(row).collect();
    view! {
        <table class="ways-table">
            <thead>
                <tr>
                    <th scope="col">{t::WAY}</th>
                    <th scope="col">{t::CLEARANCE_AT_BORE}</th>
                    <th scope="col">{t::HOME_BY}</th>
                    <th scope="col">{t::IN_COLD}</th>
                    <th scope="col">{t::COSTS}</th>
                </tr>
            </thead>
            <tbody>{rows}</tbody>
        </table>
    }
    .into_any()
}

/// What a way costs; a dash where no price is set.
fn costs(way: &Way, takes: Option<Result<Takes, Fault>>) -> String {
    let Some(Ok(takes)) = takes else {
        return "\u{2013}".to_owned();
    };
    match drop_price(&way.sheet, takes) {
        Ok(Some(price)) => fixed(price, 2),
        Ok(None) => "\u{2013}".to_owned(),
        Err(_) => t::MEND_FIRST.get().to_owned(),
    }
}

fn row(way: Way) -> AnyView {
    let units = way.sheet.units;
    let name = t::way(way.cold, way.heat);
    let answer = drop_of_sheet(&way.sheet);
    let Some(view) = ready(&answer) else {
        let DropAnswer::Lacks(lacks) = &answer else {
            return view! { <tr></tr> }.into_any();
        };
        let fields: Vec<_> = lacks.missing.iter().map(|m| m.field).collect();
        let why = match (&lacks.refused, fields.is_empty()) {
            (Some(fault), _) => t::fault(fault),
            (None, false) => t::drop_missing(&fields),
            (None, true) => t::MEND_FIRST.get().to_owned(),
        };
        return view! {
            <tr>
                <th scope="row">{name}</th>
                <td colspan="4">{why}</td>
            </tr>
        }
        .into_any();
    };
    let entry = bare(view.band.nominal.clearance_entry.as_m(), units);
    let stands = drop_ways(&view.case, view.least);
    let time = match stands.in_cold {
        Some(Ok(span)) => clock(span.slow.as_s()),
        Some(Err(fault)) => t::fault(&fault),
        None => "\u{2013}".to_owned(),
    };
    let costs = costs(&way, stands.takes);
    let drop = view.clone();
    let home = home_within(move || Some(drop.clone()));
    let told = move || match home.get() {
        Home::Ready(odds) => {
            let (signal, _) = view.by_time(&odds);
            let word = if view.case.example {
                String::new()
            } else {
                format!(", {}", t::signal(signal))
            };
            format!("{} s{word}", seconds(odds.home_within.as_s()))
        }
        Home::Refused(fault) => t::fault(&fault),
        Home::None if view.signal == Signal::Stop => t::signal(Signal::Stop).to_owned(),
        Home::None => "\u{2013}".to_owned(),
        Home::Drawing => "\u{2026}".to_owned(),
    };
    view! {
        <tr>
            <th scope="row">{name}</th>
            <td data-name=t::CLEARANCE_AT_BORE.get()>{entry}</td>
            <td data-name=t::HOME_BY.get()>{live(told)}</td>
            <td data-name=t::IN_COLD.get()>{time}</td>
            <td data-name=t::COSTS.get()>{costs}</td>
        </tr>
    }
    .into_any()
}
