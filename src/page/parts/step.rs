//! One step of the job: number, verdict, readings, drawing, cautions. The
//! only renderer of steps; what a step has is data in the core.

use crate::drawings::clearance::clearance;
use crate::drawings::fit_band::fit_band;
use crate::drawings::section::{Section, section};
use crate::drawings::staircase::{Stair, staircase};
use crate::live::live;
use crate::parts::findings::{cautions, findings, help};
use crate::parts::reading::{Label, Reading};
use crate::parts::verdict::{big, one_number, verdict};
use crate::show::{bare, length, length_unit, seconds};
use crate::state::{DropAnswer, DropView, State, Target};
use crate::texts as t;
use coldseat_core::job::drop::DropVerdict;
use coldseat_core::job::field::{Places, UnitSystem};
use coldseat_core::job::report::{Answer, Next, Signal, StepReport};
use coldseat_core::job::step::{Calculation, Drawing, StepSpec};
use coldseat_core::job::{Field, Owner, Place};
use leptos::prelude::*;

/// The readings of a step, for an owner.
pub fn readings(spec: &'static StepSpec, owner: Owner) -> AnyView {
    let lists: Vec<Field> = spec
        .fields
        .iter()
        .copied()
        .filter(|f| matches!(f.spec().places, Places::List(_)))
        .collect();
    let mut groups: Vec<AnyView> = Vec::new();
    if !lists.is_empty() {
        groups.push(rows(lists.clone(), owner));
    }
    let mut singles: Vec<AnyView> = Vec::new();
    for field in spec.fields.iter().copied().filter(|f| !lists.contains(f)) {
        let places = field.spec().places;
        let items: Vec<AnyView> = (0..places.count())
            .map(|index| {
                let place = Place {
                    owner,
                    field,
                    index,
                };
                view! { <Reading target=Target::Job place=place label=Label::PlaceOnly /> }
                    .into_any()
            })
            .collect();
        if places == Places::One {
            singles.extend(items);
            continue;
        }
        let class = if places == Places::Clocks {
            "readings readings-four"
        } else {
            "readings readings-two"
        };
        groups.push(
            view! {
                <fieldset class="group">
                    <legend>{t::field(field)}</legend>
                    <div class=class>{items}</div>
                </fieldset>
            }
            .into_any(),
        );
    }
    if !singles.is_empty() {
        groups.push(view! { <div class="readings readings-two">{singles}</div> }.into_any());
    }
    groups.into_any()
}

/// Lists side by side, row by row: as many rows as are used, and one more.
fn rows(fields: Vec<Field>, owner: Owner) -> AnyView {
    let state = State::here();
    let most = fields
        .iter()
        .map(|f| f.spec().places.count())
        .min()
        .unwrap_or(1);
    let of = fields.clone();
    let used = Memo::new(move |before: Option<&u8>| {
        let used = state.open.with(|open| {
            open.as_ref().map_or(0, |open| {
                let there = |index: u8| {
                    of.iter().any(|field| {
                        let place = Place {
                            owner,
                            field: *field,
                            index,
                        };
                        open.job.entries.get(place).is_some()
                    })
                };
                (0..most)
                    .rev()
                    .find(|i| there(*i))
                    .map_or(0, |index| index + 1)
            })
        });
        // Rows never vanish under the hand.
        used.max(before.copied().unwrap_or(0))
    });
    let visible = move || (0..most.min(used.get() + 1)).collect::<Vec<u8>>();
    let only = (fields.len() == 1)
        .then(|| fields.first().copied())
        .flatten();
    let row = move |index: u8| -> AnyView {
        let readings: Vec<AnyView> = fields
            .iter()
            .map(|field| {
                let place = Place {
                    owner,
                    field: *field,
                    index,
                };
                let label = if only.is_some() {
                    Label::PlaceOnly
                } else {
                    Label::FieldOnly
                };
                view! { <Reading target=Target::Job place=place label=label /> }.into_any()
            })
            .collect();
        if only.is_some() {
            return readings.into_any();
        }
        view! {
            <fieldset class="group">
                <legend>{format!("{} {}", t::PULL, index + 1)}</legend>
                <div class="readings readings-three">{readings}</div>
            </fieldset>
        }
        .into_any()
    };
    let list = view! { <For each=visible key=|index| *index children=row /> }.into_any();
    match only {
        Some(field) => view! {
            <fieldset class="group">
                <legend>{t::field(field)}</legend>
                <div class="readings readings-four">{list}</div>
            </fieldset>
        }
        .into_any(),
        None => list,
    }
}

/// A step of a cylinder, open.
#[component]
pub fn CylinderStep(
    /// The step.
    spec: &'static StepSpec,
    /// The cylinder.
    cylinder: u8,
    /// Buttons that go on, below the readings.
    onward: AnyView,
) -> impl IntoView {
    let state = State::here();
    let report = Memo::new(move |_| {
        state.reports.with(|reports| {
            reports
                .iter()
                .find(|r| r.cylinder == cylinder)
                .and_then(|r| r.step(spec.id))
                .cloned()
        })
    });
    let units = state.units(Target::Job);
    let is_drop = spec.calculation == Calculation::ColdDrop;
    let drop = Memo::new(move |_| is_drop.then(|| state.drop_of(cylinder)));
    let answer = move || {
        if let Some(drop) = drop.get() {
            return Some(drop_head(&drop, units));
        }
        report.with(|report| report.as_ref().map(|r| head(r, units)))
    };
    let picture = move || match drop.get() {
        Some(drop) => drop_picture(&drop, units),
        None => report.with(|report| {
            report
                .as_ref()
                .and_then(|r| drawing(state, spec, cylinder, r, units))
        }),
    };
    view! {
        <div class="step-body">
            <div class="step-answer">
                {live(answer)} <div class="step-picture">{live(picture)}</div>
            </div>
            <div class="step-entry">
                {readings(spec, Owner::Cylinder(cylinder))} <div class="row onward">{onward}</div>
            </div>
            <div class="step-aside">{help(spec)} {cautions(spec.cautions)}</div>
        </div>
    }
    .into_any()
}

fn head(report: &StepReport, units: UnitSystem) -> AnyView {
    let number = report.number.as_ref().map(|n| one_number(n, units));
    let fault = report
        .fault
        .as_ref()
        .map(|fault| view! { <p class="fault">{fault.message.clone()}</p> });
    let questioned = (!report.questioned.is_empty()).then(|| {
        let names: Vec<String> = report
            .questioned
            .iter()
            .map(|p| t::place_title(*p))
            .collect();
        view! { <p class="fault">{t::questioned(&names.join("; "))}</p> }
    });
    view! {
        <div class="glance">{number}</div>
        {verdict(report.signal, t::next(&report.next, units))}
        {fault}
        {questioned}
        {findings(&report.findings)}
        {table(report, units)}
    }
    .into_any()
}

/// The step's further numbers, as a small table.
fn table(report: &StepReport, units: UnitSystem) -> Option<AnyView> {
    let show = |m: f64| length(m, units);
    let rows: Vec<(&str, String)> = match &report.answer {
        Answer::None => return None,
        Answer::SleeveForm(form) => vec![
            (t::MEAN_DIAMETER, show(form.mean.as_m())),
            (t::TAPER, show(form.taper.as_m())),
            (t::ROUND_ANYWHERE, show(form.out_of_round.as_m())),
        ],
        Answer::Counterbore(c) => vec![
            (t::DEPTH_WANTED, show(c.depth.as_m())),
            (t::CHANCE_LOW, t::percent(c.p_low)),
            (t::PROUD_FOR_RISK, show(c.target_for_risk.as_m())),
        ],
        Answer::Fit(fit, form) => vec![
            (t::CHANCE_INSIDE, t::percent(fit.p_inside)),
            (t::LOOSEST, show(fit.interference_min.as_m())),
            (t::TIGHTEST, show(fit.interference_max.as_m())),
            (t::BORE_ROUND, show(form.out_of_round.as_m())),
            (t::BORE_TAPER, show(form.taper.as_m())),
        ],
        Answer::Heights(h) => {
            let mut rows = vec![(t::PREDICTED_HEIGHT, show(mean(&h.predicted)))];
            rows.extend(h.ceiling.map(|c| (t::CLIMB_CEILING, show(c.as_m()))));
            rows
        }
        Answer::Pulls(seat) | Answer::Seat(seat) => {
            let mut rows = vec![(t::PREDICTED_HEIGHT, show(mean(&seat.predicted)))];
            if seat.gap.len() > 1 {
                rows.push((t::TILT, show(seat.tilt.as_m())));
            }
            if let Some(last) = seat.settle.last() {
                rows.push((t::LAST_DROP, show(last.as_m())));
            }
            if let Some(back) = seat.returned.iter().flatten().last() {
                rows.push((t::LAST_RETURN, show(back.as_m())));
            }
            rows.push((t::CHANCE_SEATED, t::percent(seat.p_seated)));
            rows
        }
    };
    let items: Vec<AnyView> = rows
        .into_iter()
        .map(|(name, value)| view! { <div><dt>{name}</dt><dd>{value}</dd></div> }.into_any())
        .collect();
    Some(view! { <dl class="more">{items}</dl> }.into_any())
}

fn mean(list: &[coldseat_core::quantity::Length]) -> f64 {
    list.iter().map(|l| l.as_m()).sum::<f64>() / list.len().max(1) as f64
}

/// The drawing of a step, where its numbers are there.
fn drawing(
    state: State,
    spec: &StepSpec,
    cylinder: u8,
    report: &StepReport,
    units: UnitSystem,
) -> Option<AnyView> {
    let of_engine = |field| {
        state
            .open
            .with(|o| o.as_ref().and_then(|o| o.job.engine_si(field)))
    };
    let values = |field| {
        state.open.with(|o| {
            o.as_ref().map_or(Vec::new(), |o| {
                o.job.entries.values(Owner::Cylinder(cylinder), field)
            })
        })
    };
    let average = |field| {
        let list: Vec<(u8, f64)> = values(field);
        (!list.is_empty()).then(|| list.iter().map(|(_, v)| v).sum::<f64>() / list.len() as f64)
    };
    match (spec.drawing, &report.answer) {
        (Drawing::FitBand, Answer::Fit(fit, _)) => Some(fit_band(
            fit,
            of_engine(Field::FitLow)?,
            of_engine(Field::FitHigh)?,
            units,
        )),
        (Drawing::FlangeSection, answer) => {
            let (predicted_m, measured_m) = match answer {
                Answer::Heights(h) => (mean(&h.predicted), Some(mean(&h.height))),
                Answer::Seat(seat) => {
                    let predicted = mean(&seat.predicted);
                    (predicted, Some(predicted + seat.gap_mean.as_m()))
                }
                _ => (
                    average(Field::FlangeThickness)? + of_engine(Field::Shim)?
                        - average(Field::CounterboreDepth)?,
                    None,
                ),
            };
            Some(section(
                &Section {
                    thickness_m: average(Field::FlangeThickness)?,
                    predicted_m,
                    measured_m,
                },
                units,
            ))
        }
        (Drawing::Staircase, Answer::Pulls(seat)) => {
            let loaded = values(Field::PullLoaded);
            let stairs: Vec<Stair> = values(Field::PullReleased)
                .into_iter()
                .map(|(index, released_m)| Stair {
                    loaded_m: loaded.iter().find(|(i, _)| *i == index).map(|(_, v)| *v),
                    released_m,
                })
                .collect();
            Some(staircase(
                &stairs,
                mean(&seat.predicted),
                of_engine(Field::GapLimit)?,
                units,
            ))
        }
        _ => None,
    }
}

/// The signal of a drop.
#[must_use]
pub const fn drop_signal(verdict: DropVerdict) -> Signal {
    match verdict {
        DropVerdict::Free => Signal::Go,
        DropVerdict::Tight => Signal::Look,
        DropVerdict::MayNotEnter | DropVerdict::DoesNotEnter => Signal::Stop,
    }
}

/// Numbers and verdict of a drop.
pub fn drop_head(answer: &DropAnswer, units: UnitSystem) -> AnyView {
    match answer {
        DropAnswer::Missing(fields) => verdict(Signal::Wait, t::drop_missing(fields)),
        DropAnswer::Refused(fault) => verdict(Signal::Look, fault.message.clone()),
        DropAnswer::Ready(view) => view! {
            <div class="glance">{drop_numbers(view, units)}</div>
            {verdict(drop_signal(view.verdict), t::drop_words(view.verdict).to_owned())}
            {findings(&view.band.nominal.findings)}
        }
        .into_any(),
    }
}

/// The curve of a drop.
pub fn drop_picture(answer: &DropAnswer, units: UnitSystem) -> Option<AnyView> {
    match answer {
        DropAnswer::Ready(view) if view.band.nominal.clearance_entry.as_m() > 0.0 => {
            Some(clearance(&view.band, units))
        }
        _ => None,
    }
}

fn drop_numbers(view: &DropView, units: UnitSystem) -> AnyView {
    let band = &view.band;
    let unit = length_unit(units).symbol();
    let span = |a: f64, b: f64| t::span(&bare(a.min(b), units), &bare(a.max(b), units));
    let entry = big(
        t::ENTRY_CLEARANCE,
        bare(band.nominal.clearance_entry.as_m(), units),
        unit,
        span(
            band.early.clearance_entry.as_m(),
            band.late.clearance_entry.as_m(),
        ),
    );
    let bath = big(
        t::BATH_CLEARANCE,
        bare(band.nominal.clearance_bath.as_m(), units),
        unit,
        span(
            band.early.clearance_bath.as_m(),
            band.late.clearance_bath.as_m(),
        ),
    );
    let after = |a: &coldseat_core::thermal::cold_drop::ColdDropAnswer| {
        a.grip.as_ref().map(|g| seconds(g.after.as_s()))
    };
    let grip = match after(&band.nominal) {
        Some(nominal) => big(
            t::GRIPS_IN,
            nominal,
            "s",
            t::between(
                &after(&band.early).unwrap_or_else(|| t::OVER_AN_HOUR.to_owned()),
                &after(&band.late).unwrap_or_else(|| t::OVER_AN_HOUR.to_owned()),
            ),
        ),
        None => big(
            t::GRIPS_IN,
            "\u{2013}".to_owned(),
            "",
            t::NEVER_GRIPS.to_owned(),
        ),
    };
    let ceiling = bare(band.nominal.climb_ceiling.as_m(), units);
    let climb = big(
        t::CLIMB,
        band.nominal
            .grip
            .as_ref()
            .map_or("\u{2013}".to_owned(), |g| bare(g.climb.as_m(), units)),
        unit,
        format!("{}, {} {ceiling}", t::EXPECTED, t::AT_MOST),
    );
    view! {
        <div class="bigs">
            {grip} {entry} {bath} {climb}
        </div>
    }
    .into_any()
}

/// What a step says in one line, for the list of steps.
#[must_use]
pub fn summary(report: &StepReport, units: UnitSystem) -> String {
    match (&report.number, report.begun) {
        (Some(n), _) => format!(
            "{} {}",
            t::figure(n.figure, n.si),
            length(n.si.abs(), units)
        ),
        (None, true) if matches!(report.next, Next::DropReady) => t::DROP_NUMBERS.to_owned(),
        _ => String::new(),
    }
}
