//! What a step has beside its one number: what the fit holds, the passes of the
//! bar, which sleeve goes in which hole. Behind lines of their own.

use crate::answers::{Home, home_within};
use crate::browser;
use crate::live::live;
use crate::memo::Memo;
use crate::parts::answer::pairs as rows;
use crate::parts::drop_answer::ready;
use crate::parts::findings::findings;
use crate::parts::fold::fold;
use crate::parts::table::{Line, cell, table};
use crate::show::{bare, length, number, seconds, tenths};
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::ask::{
    Force, Grip, Job, Lacks, Measure, Owner, Pairs, Pressure, Service, StepId, TEMPERATURE,
    Temperature, UnitSystem, WARMER, grip, needs, number_sleeves, pairs, passes,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// The parts of a step.
pub fn beside(state: State, step: StepId, owner: Owner, units: UnitSystem) -> Option<AnyView> {
    let Owner::Cylinder(cylinder) = owner else {
        return None;
    };
    let holds = move || {
        fold(t::GRIP.get(), move || {
            asked(state, |job| grip_view(state, job, cylinder, units))
        })
    };
    let bar = move || {
        fold(t::PASSES.get(), move || {
            asked(state, |job| passes_view(job, cylinder, units))
        })
    };
    let which = move || {
        fold(t::PAIRS.get(), move || {
            asked(state, |job| pairs_view(state, job, units))
        })
    };
    match step {
        StepId::Drop => Some(fold(t::WARMER_BLOCK.get(), move || {
            warmer_block(state, cylinder, units)
        })),
        StepId::Sleeve => Some(which()),
        StepId::Bore => Some(view! { {bar()} {which()} }.into_any()),
        StepId::Fit => Some(holds()),
        _ => None,
    }
}

/// How soon the sleeve must be home in a block that is warmer, drawn while it is open.
fn warmer_block(state: State, cylinder: u8, units: UnitSystem) -> AnyView {
    let rows: Vec<AnyView> = WARMER
        .map(|by| {
            let drop = Memo::new(move |_| {
                ready(&state.session.drop_of(cylinder)).map(|view| view.warmer(by))
            });
            let home = home_within(move || drop.get().map(Box::new));
            let says = move || {
                let unit = Measure::Temperature.unit(units);
                let at = drop.with(|view| {
                    let view = view.as_ref()?;
                    Some(number(view.case.drop.block.as_k(), unit))
                });
                let within = match home.get() {
                    Home::Ready(odds) => format!("{} s", seconds(odds.home_within.as_s())),
                    Home::Refused(fault) => t::fault(&fault),
                    Home::None => "\u{2013}".to_owned(),
                    Home::Drawing => "\u{2026}".to_owned(),
                };
                at.map(|at| t::warmer(&at, &within))
            };
            view! { <p>{live(says)}</p> }.into_any()
        })
        .into();
    view! {
        {rows}
        <p class="quiet">{t::WARMER_WHAT}</p>
    }
    .into_any()
}

/// Asks the open job.
fn asked(state: State, view: impl FnOnce(&Job) -> AnyView) -> AnyView {
    state.session.open.with(|open| {
        open.as_ref()
            .map_or_else(|| ().into_any(), |open| view(&open.job))
    })
}

/// What a part waits for, or what of it is to be mended.
pub fn wanted(lacks: &Lacks, units: UnitSystem) -> AnyView {
    let names: Vec<&str> = lacks.missing.iter().map(|m| t::field(m.field)).collect();
    let missing = (!names.is_empty()).then(|| {
        view! { <p>{t::wanted(&names.join("; "))}</p> }
    });
    let mend: Vec<AnyView> = lacks
        .unusable
        .iter()
        .map(|one| view! { <p class="fault">{t::mend(one, units)}</p> }.into_any())
        .collect();
    let refused = lacks
        .refused
        .as_ref()
        .map(|fault| view! { <p class="fault">{t::fault(fault)}</p> });
    view! { {missing} {mend} {refused} }.into_any()
}

fn grip_view(state: State, job: &Job, cylinder: u8, units: UnitSystem) -> AnyView {
    let needs = state.session.reports.with(|reports| {
        let report = reports.iter().find(|r| r.cylinder == cylinder);
        report.map(|report| needs(job, report))
    });
    match needs {
        None => ().into_any(),
        Some(Err(lacks)) => wanted(&lacks, units),
        Some(Ok(needs)) => match grip(job, &needs) {
            Ok(grip) => holds(&grip, units),
            Err(lack) => wanted(&Lacks::from(lack), units),
        },
    }
}

fn holds(grip: &Grip, units: UnitSystem) -> AnyView {
    let pressure = |p: Pressure| number(p.as_pa(), Measure::Pressure.unit(units));
    let forces = |[least, most]: [Force; 2]| {
        let of = |f: Force| number(f.as_n(), Measure::Force.unit(units));
        t::span(&of(least), &of(most))
    };
    let row = |name: &str, value: String| (name.to_owned(), value);
    let mut cold = vec![
        row(t::FIT_LEFT.get(), length(grip.effective.as_m(), units)),
        row(t::CONTACT_PRESSURE.get(), pressure(grip.pressure)),
        row(t::SLIPS_PUSHED.get(), forces(grip.push)),
        row(t::SLIPS_PULLED.get(), forces(grip.pull)),
    ];
    if let Some(path) = grip.heat {
        let [now, rough] = path.map(|h| tenths(h.as_w_m2k() / 1000.0));
        cold.push(row(t::HEAT_PATH.get(), t::heat_path(&now, &rough)));
    }
    let smooth = (!grip.smoothed).then(|| view! { <p>{t::NOT_SMOOTHED}</p> });
    let running = match &grip.running {
        Some(service) => running(service, units),
        None => view! { <p>{t::RUNNING_WANTED}</p> }.into_any(),
    };
    view! {
        {rows(cold)}
        {smooth}
        {running}
        {findings(&grip.findings, units)}
        <p class="quiet">{t::GRIP_SOURCE}</p>
    }
    .into_any()
}

fn running(service: &Service, units: UnitSystem) -> AnyView {
    let margin = |margin: Option<f64>| {
        margin.map_or_else(
            || t::NO_TENSION.get().to_owned(),
            |times| t::times(&tenths(times)),
        )
    };
    let warm = |t: Temperature| number(t.as_k(), Measure::Temperature.unit(units));
    let hottest = Temperature::from_k(TEMPERATURE.hi);
    let row = |name: &str, value: String| (name.to_owned(), value);
    rows(vec![
        row(
            t::FIT_RUNNING.get(),
            length(service.interference.as_m(), units),
        ),
        row(
            t::PRESSURE_RUNNING.get(),
            number(service.pressure.as_pa(), Measure::Pressure.unit(units)),
        ),
        row(t::SLEEVE_MARGIN.get(), margin(service.sleeve_margin)),
        row(t::BLOCK_MARGIN.get(), margin(service.block_margin)),
        row(
            t::LETS_GO.get(),
            service
                .lets_go
                .map_or_else(|| t::not_below(&warm(hottest)), warm),
        ),
    ])
}

fn passes_view(job: &Job, cylinder: u8, units: UnitSystem) -> AnyView {
    let plan = match passes(job, cylinder) {
        Ok(plan) => plan,
        Err(lacks) => return wanted(&lacks, units),
    };
    let of = |m: f64| bare(m, units);
    let list = plan
        .passes
        .iter()
        .zip(1_u8..)
        .map(|(pass, count)| {
            let name = t::pass(
                count,
                &of(pass.d.as_m()),
                &of(pass.cut_on_diameter.as_m()),
                &of(pass.cut_on_radius.as_m()),
            );
            (name, length(pass.cutter.as_m(), units))
        })
        .collect();
    view! {
        <p>{t::MICROMETER}</p>
        {rows(list)}
        <p class="quiet">{t::PASSES_WHAT}</p>
    }
    .into_any()
}

fn pairs_view(state: State, job: &Job, units: UnitSystem) -> AnyView {
    let found = match pairs(job) {
        Ok(Some(found)) => found,
        Ok(None) => return view! { <p>{t::NOTHING_TO_PAIR}</p> }.into_any(),
        Err(lack) => return wanted(&Lacks::from(lack), units),
    };
    let lines = found
        .sleeves
        .iter()
        .map(|(sleeve, hole)| Line {
            class: "",
            head: sleeve.into_any(),
            cells: match hole {
                Some((hole, stock)) => {
                    vec![cell(hole.to_string()), cell(length(stock.as_m(), units))]
                }
                None => vec![cell(t::SPARE.get().to_owned()), cell(String::new())],
            },
        })
        .collect();
    let of = |l: coldseat_core::ask::Length| length(l.as_m(), units);
    let mut words = t::paired(&of(found.worst), &of(found.total));
    if let Some([most, least, all]) = found.now {
        words.push(' ');
        words.push_str(&t::as_numbered(&of(most), &of(least), &of(all)));
    }
    let heads = t::PAIR_COLUMNS.map(String::from);
    view! {
        {table("cuts", None, &heads, lines)}
        <p>{words}</p>
        {findings(&found.findings, units)}
        {renumber(state, &found)}
    }
    .into_any()
}

/// The button that numbers the sleeves as paired.
fn renumber(state: State, found: &Pairs) -> AnyView {
    if found.is_as_numbered() {
        return view! { <p>{t::KEEP_NUMBERS}</p> }.into_any();
    }
    let found = found.clone();
    let number = move |_| {
        state
            .session
            .edit(|job| number_sleeves(job, &found, browser::now()));
    };
    view! {
        <button type="button" disabled=move || state.session.is_read_only(Target::Job) on:click=number>
            {t::NUMBER_SLEEVES}
        </button>
        <p class="quiet">{t::NUMBER_WHAT}</p>
    }
    .into_any()
}
