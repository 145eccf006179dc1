//! The bore of a fitted sleeve down its length: picture, numbers, three
//! dimensions to try, the order in which sleeves go in. Worked out only while it
//! is open, and again only when something it hangs on changes.

use crate::drawings::profile::{bore_profile, pressure_down, told};
use crate::live::{live, words};
use crate::memo::Memo;
use crate::parts::findings::findings;
use crate::parts::fold;
use crate::show::{bare, fixed, length, length_unit, number};
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::format::decimals;
use coldseat_core::ask::{
    BoreStress, Dial, FRICTION, Fault, Length, Measure, Pressure, Profile, ProfileNeeds, Trial,
    UnitSystem, flange_stress, needs, order_of_sleeves, profile, profile_field_of as field_of,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// The part, open from the beginning or behind a line.
pub fn bore_down(cylinder: u8, units: UnitSystem, is_open: bool) -> AnyView {
    let state = State::here();
    let open = RwSignal::new(is_open);
    let asked = Memo::new(move |_| {
        state.session.reports.with(|reports| {
            let report = reports.iter().find(|r| r.cylinder == cylinder)?;
            state
                .session
                .open
                .with(|o| o.as_ref().and_then(|o| needs(&o.job, report).ok()))
        })
    });
    let trial = RwSignal::new(None::<Trial>);
    let own = Memo::new(move |_| {
        let is_open = open.get();
        asked.with(|needs| needs.as_ref().filter(|_| is_open).map(profile))
    });
    // What is tried is drawn over the job's own, in one scale.
    let shown = move || {
        own.with(|own| {
            let own = own.as_ref()?;
            let Some(trial) = trial.get() else {
                return Some(result(own, None, units));
            };
            let tried = asked.with(|needs| needs.as_ref().map(|n| profile(&n.with(trial))))?;
            Some(result(&tried, own.as_ref().ok(), units))
        })
    };
    let dials = move || {
        let own = asked.with(|needs| needs.as_ref().map(|needs| needs.trial()));
        own.filter(|_| open.get())
            .map(|own| dials(own, trial, units))
    };
    let order = move || {
        let (order, neighbours) = state
            .session
            .open
            .with(|o| o.as_ref().map(|o| order_of_sleeves(&o.job, cylinder)))?;
        (open.get() && order.len() > 1)
            .then(|| view! { <p>{t::order_of_sleeves(&order, neighbours)}</p> }.into_any())
    };
    // A plain sleeve has no flange that could be stressed.
    let flange = Memo::new(move |_| {
        asked.with(|needs| needs.as_ref().is_none_or(|needs| needs.has_flange()))
    });
    let stressed = move || flange.get().then(|| stress(asked, open, units));
    let body = view! { {live(shown)} {live(dials)} {live(order)} {live(stressed)} };
    if is_open {
        return view! { <section class="bore-down">{body}</section> }.into_any();
    }
    view! {
        <details class="help bore-down" prop:open=move || open.get() on:toggle=move |event| open.set(fold::is_open(&event))>
            <summary>{t::BORE_DOWN}</summary>
            {body}
        </details>
    }
    .into_any()
}

fn result(worked: &Result<Profile, Fault>, beside: Option<&Profile>, units: UnitSystem) -> AnyView {
    match worked {
        Ok(profile) => view! {
            {bore_profile(profile, beside, units)}
            {table(profile, units)}
            {pressure_down(profile, beside, units)}
            {facts(profile, units)}
        }
        .into_any(),
        Err(fault) => view! {
            <p class="fault">{t::no_profile(t::field(field_of(fault)), fault)}</p>
        }
        .into_any(),
    }
}

fn table(profile: &Profile, units: UnitSystem) -> AnyView {
    let cell = |value: Option<Length>| value.map(|v| bare(v.as_m(), units)).unwrap_or_default();
    let rows: Vec<AnyView> = told(profile)
        .map(|level| {
            view! {
                <tr>
                    <th scope="row">{bare(level.z.as_m(), units)}</th>
                    <td>{bare(-level.change.as_m(), units)}</td>
                    <td>{cell(level.stock)}</td>
                    <td>{cell(level.stock_bored)}</td>
                </tr>
            }
            .into_any()
        })
        .collect();
    let heads: Vec<AnyView> = t::BORE_COLUMNS
        .iter()
        .map(|head| view! { <th scope="col">{*head}</th> }.into_any())
        .collect();
    view! {
        <details class="help">
            <summary>{t::BORE_NUMBERS}</summary>
            <table class="bore-numbers">
                <thead>
                    <tr>{heads}</tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
            <p class="quiet">{t::on_diameter(length_unit(units).symbol())}</p>
        </details>
    }
    .into_any()
}

fn facts(profile: &Profile, units: UnitSystem) -> AnyView {
    let force = |n: f64| number(n, Measure::Force.unit(units));
    let [least, most] = profile.push_home.map(|f| force(f.as_n()));
    let [low, high] = FRICTION.map(|mu| fixed(mu, 2));
    let mut lines = vec![t::push_home(&least, &most, &low, &high)];
    if let Some(down) = profile.head_sinks {
        lines.push(t::head_sinks(&length(down.as_m(), units)));
    }
    if let Some(down) = profile.pull_sinks {
        lines.push(t::pull_sinks(&length(down.as_m(), units)));
    }
    if let Some([along, across]) = profile.middle().and_then(|level| level.oval) {
        lines.push(t::closes_oval(
            &length(-along.as_m(), units),
            &length(-across.as_m(), units),
        ));
    }
    let lines: Vec<AnyView> = lines
        .into_iter()
        .map(|line| view! { <li>{line}</li> }.into_any())
        .collect();
    view! { <ul class="bore-facts">{lines}</ul> }.into_any()
}

/// Stress at the flange, behind a line of its own: it takes three meshes.
fn stress(asked: Memo<Option<ProfileNeeds>>, open: RwSignal<bool>, units: UnitSystem) -> AnyView {
    let unfolded = RwSignal::new(false);
    let shown = move || {
        if !(open.get() && unfolded.get()) {
            return None;
        }
        asked.with(|needs| {
            Some(match flange_stress(needs.as_ref()?) {
                Ok(stress) => stress_lines(&stress, units),
                Err(fault) => view! { <p class="fault">{t::no_stress(&fault)}</p> }.into_any(),
            })
        })
    };
    view! {
        <details class="help" prop:open=move || unfolded.get() on:toggle=move |event| unfolded.set(fold::is_open(&event))>
            <summary>{t::FLANGE_STRESS}</summary>
            {live(shown)}
        </details>
    }
    .into_any()
}

fn stress_lines(stress: &BoreStress, units: UnitSystem) -> AnyView {
    let of = |p: Pressure| number(p.as_pa(), Measure::Pressure.unit(units));
    let corner = |[usual, half]: [Pressure; 2]| t::two_meshes(&of(half), &of(usual));
    let rows = [
        (t::STRESS_FILLET, corner(stress.fillet)),
        (t::STRESS_COUNTERBORE, corner(stress.counterbore)),
        (t::STRESS_LEDGE, of(stress.ledge_pressure)),
    ];
    let items: Vec<AnyView> = rows
        .into_iter()
        .map(|(name, value)| view! { <div><dt>{name}</dt><dd>{value}</dd></div> }.into_any())
        .collect();
    view! {
        <dl class="more more-wrap">{items}</dl>
        {findings(&stress.findings, units)}
    }
    .into_any()
}

fn dials(own: Trial, trial: RwSignal<Option<Trial>>, units: UnitSystem) -> AnyView {
    let is_there = |which: &Dial| *which != Dial::Flange || own.flange.as_m() > 0.0;
    let rows: Vec<AnyView> = Dial::ALL
        .into_iter()
        .filter(is_there)
        .map(|which| dial(which, own, trial, units))
        .collect();
    let back = move || {
        trial.get().map(|_| {
            view! {
                <p class="quiet">{t::ONLY_TRIED}</p>
                <button type="button" on:click=move |_| trial.set(None)>
                    {t::BACK_TO_JOB}
                </button>
            }
            .into_any()
        })
    };
    view! {
        <fieldset class="group">
            <legend>{t::TRY_OTHERS}</legend>
            {rows}
            {live(back)}
        </fieldset>
    }
    .into_any()
}

fn dial(which: Dial, own: Trial, trial: RwSignal<Option<Trial>>, units: UnitSystem) -> AnyView {
    let unit = length_unit(units);
    // One digit more than is shown, so that a step is a step.
    let text = move |value: Length| fixed(unit.from_si(value.as_m()), decimals(unit) + 1);
    let id = match which {
        Dial::Fit => "try-fit",
        Dial::Wall => "try-wall",
        Dial::Flange => "try-flange",
    };
    let [from, to, step] = which.reach(own).map(text);
    let value = move || trial.get().unwrap_or(own).value(which);
    let spoken = move || length(value().as_m(), units);
    view! {
        <div class="dial">
            <label for=id>{t::dial(which)}</label>
            <span aria-hidden="true">{live(spoken)}</span>
            <input
                id=id
                type="range"
                aria-valuetext=words(spoken)
                min=from
                max=to
                step=step
                prop:value=words(move || text(value()))
                on:input=move |event| {
                    if let Ok(typed) = event_target_value(&event).parse::<f64>() {
                        let moved = Length::from_m(unit.to_si(typed));
                        let was = trial.get_untracked().unwrap_or(own);
                        trial.set(Some(was.moved(which, moved)));
                    }
                }
            />
        </div>
    }
    .into_any()
}
