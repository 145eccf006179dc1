//! What a step says: its one number, its verdict, its further numbers.

use crate::parts::findings::findings;
use crate::parts::order::order_list;
use crate::parts::verdict::{one_number, verdict};
use crate::show::{self, length};
use crate::texts as t;
use coldseat_core::job::Field;
use coldseat_core::job::all_low::AllLow;
use coldseat_core::job::field::{Measure, UnitSystem};
use coldseat_core::job::loads::Bearer;
use coldseat_core::job::report::{Answer, Detail, Figure, More, Next, StepReport};
use coldseat_core::quantity::Pressure;
use coldseat_markup::view;
use leptos::prelude::*;

/// A name and its value, in words.
pub type Pair = (String, String);

/// Number, verdict and what goes with them; `more` is a row that the report
/// does not have.
pub fn head(report: &StepReport, more: Option<Pair>, units: UnitSystem) -> AnyView {
    let number = report.number.as_ref().map(|n| one_number(n, units));
    let fault = report
        .fault
        .as_ref()
        .map(|fault| view! { <p class="fault">{t::fault(fault)}</p> });
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
        {findings(&report.findings, units)}
        {order(report, units)}
        {table(report, more, units)}
    }
    .into_any()
}

/// Go or no-go of an order.
fn order(report: &StepReport, units: UnitSystem) -> Option<AnyView> {
    match &report.answer {
        Answer::Order(checks, _) => Some(order_list(checks, units)),
        _ => None,
    }
}

/// The step's further numbers, as a small table.
fn table(report: &StepReport, extra: Option<Pair>, units: UnitSystem) -> Option<AnyView> {
    let of = |m: f64| length(m, units);
    let further = |list: &[More]| -> Vec<(&str, String)> {
        list.iter()
            .map(|m| {
                let value = match m.detail {
                    Detail::Strokes => show::whole_seconds(m.si),
                    _ => show::number(m.si, m.measure.unit(units)),
                };
                (t::detail(m.detail), value)
            })
            .collect()
    };
    let rows: Vec<(&str, String)> = match &report.answer {
        Answer::None if extra.is_none() => return None,
        Answer::None => Vec::new(),
        Answer::More(list) | Answer::Form(_, list) | Answer::Order(_, list) => further(list),
        Answer::Walls(walls) => {
            let thinnest = walls
                .iter()
                .min_by(|a, b| a.1.as_m().total_cmp(&b.1.as_m()))?;
            vec![(
                t::detail(Detail::Thinnest),
                t::place(Field::WallReading, thinnest.0),
            )]
        }
        Answer::Chill(chill) => vec![
            (
                t::detail(Detail::QuietLow),
                show::clock(chill.quiet_low.as_s()),
            ),
            (
                t::detail(Detail::QuietHigh),
                show::clock(chill.quiet_high.as_s()),
            ),
            (
                t::detail(Detail::BathLitres),
                t::span(
                    &show::tenths(chill.nitrogen_practical_l),
                    &show::tenths(chill.nitrogen_l),
                ),
            ),
        ],
        Answer::Oxygen(oxygen) => vec![
            (t::detail(Detail::Sudden), t::percent(oxygen.sudden)),
            (
                t::detail(Detail::LitresAtLimit),
                show::tenths(oxygen.litres_for_limit),
            ),
        ],
        Answer::SleeveForm(form) => vec![
            (t::MEAN_DIAMETER, of(form.mean.as_m())),
            (t::TAPER, of(form.taper.as_m())),
            (t::ROUND_ANYWHERE, of(form.out_of_round.as_m())),
        ],
        Answer::Counterbore(c) => vec![
            (t::DEPTH_WANTED, of(c.depth.as_m())),
            (t::CHANCE_LOW, t::percent(c.p_low)),
            // Below zero the planned cut alone keeps every flange proud enough.
            (t::PROUD_FOR_RISK, of(c.target_for_risk.as_m().max(0.0))),
        ],
        Answer::Fit(fit, form) => vec![
            (t::CHANCE_INSIDE, t::percent(fit.p_inside)),
            (t::LOOSEST, of(fit.interference_min.as_m())),
            (t::TIGHTEST, of(fit.interference_max.as_m())),
            (t::BORE_ROUND, of(form.out_of_round.as_m())),
            (t::BORE_TAPER, of(form.taper.as_m())),
        ],
        Answer::Heights(h) => {
            let mut rows = vec![(t::PREDICTED_HEIGHT, of(mean(&h.predicted)))];
            rows.extend(h.ceiling.map(|c| (t::CLIMB_CEILING, of(c.as_m()))));
            rows
        }
        Answer::Pulls(seat) | Answer::Seat(seat) => {
            let mut rows = vec![(t::PREDICTED_HEIGHT, of(mean(&seat.predicted)))];
            if seat.gap.len() > 1 {
                rows.push((t::TILT, of(seat.tilt.as_m())));
            }
            if let Some(last) = seat.settle.last() {
                rows.push((t::LAST_DROP, of(last.as_m())));
            }
            if let Some(back) = seat.returned.iter().flatten().last() {
                rows.push((t::LAST_RETURN, of(back.as_m())));
            }
            if matches!(report.answer, Answer::Pulls(_)) {
                rows.push((t::STILL, of(seat.still.as_m())));
            }
            // Below its ledge a reading is wrong, and so is any chance.
            if report.next != Next::BelowLedge {
                rows.push((t::CHANCE_SEATED, t::percent(seat.p_seated)));
            }
            rows.push((t::CHANCE_ASKED, t::percent(seat.confidence)));
            rows.push((t::GAUGES_SHOW, t::percent(seat.best)));
            rows.push((t::BETTER_DEPTH, t::percent(seat.best_with_half_depth)));
            rows
        }
    };
    let rows = rows
        .into_iter()
        .map(|(name, value)| (name.to_owned(), value));
    Some(pairs(rows.chain(extra).collect()))
}

/// The chance over all flanges, as a row.
pub fn chance_row(all: AllLow) -> Pair {
    (t::chance_any_low(all.flanges), t::percent(all.chance))
}

/// The highest gauge pressure, and what would give first, as a row.
pub fn most_row((gauge, bearer): (Pressure, Bearer), units: UnitSystem) -> Pair {
    (
        t::gauge_most(bearer),
        show::number(gauge.as_pa(), Measure::Pressure.unit(units)),
    )
}

/// Strokes of the hone, as a row.
pub fn strokes_row(strokes: f64) -> Pair {
    (
        t::detail(Detail::Strokes).to_owned(),
        show::whole_seconds(strokes),
    )
}

/// Names and values, as a small table.
pub fn pairs(rows: Vec<Pair>) -> AnyView {
    let items: Vec<AnyView> = rows
        .into_iter()
        .map(|(name, value)| view! { <div><dt>{name}</dt><dd>{value}</dd></div> }.into_any())
        .collect();
    view! { <dl class="more">{items}</dl> }.into_any()
}

pub fn mean(list: &[coldseat_core::quantity::Length]) -> f64 {
    list.iter().map(|l| l.as_m()).sum::<f64>() / list.len().max(1) as f64
}

/// What a step says in one line, for the list of steps.
#[must_use]
pub fn summary(report: &StepReport, units: UnitSystem) -> String {
    match (&report.number, report.begun) {
        (Some(n), _) => format!(
            "{} {}",
            t::figure(n.figure, n.si),
            match (n.figure, t::figure_unit(n.figure, units)) {
                (Figure::Quiet, _) => show::clock(n.si),
                (_, Some(unit)) => format!("{} {unit}", show::tenths(n.si)),
                (_, None) => show::number(n.si.abs(), n.measure.unit(units)),
            }
        ),
        (None, true) if matches!(report.next, Next::DropReady) => t::DROP_NUMBERS.to_owned(),
        _ => String::new(),
    }
}
