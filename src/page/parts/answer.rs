//! What a step says: its one number, its verdict, its further numbers.

use crate::parts::findings::findings;
use crate::parts::order::order_list;
use crate::parts::verdict::{one_number, verdict, verdict_waits};
use crate::parts::work_to::{is_first, work_to_big, work_to_line, work_to_short};
use crate::show::{self, length};
use crate::texts as t;
use coldseat_core::ask::{
    AllLow, Answer, Bearer, Detail, Field, Figure, Length, Measure, More, Next, Pressure,
    Signal as Go, Standing, StepReport, UnitSystem, mean_length,
};
use coldseat_markup::view;
use leptos::prelude::*;

/// A name and its value, in words.
pub type Pair = (String, String);

/// Number, verdict and what goes with them; `more` is a row that the report
/// does not have; `half`: a reading is being typed.
pub fn head(report: &StepReport, more: Option<Pair>, half: bool, units: UnitSystem) -> AnyView {
    let (number, line) = if is_first(report) {
        (work_to_big(report, units), None)
    } else {
        let number = report.number.as_ref().map(|n| one_number(n, units));
        (number, work_to_line(report, units))
    };
    if half {
        // Numbers follow every key; what is said of them waits for the reading.
        return view! {
            <div class="glance">{number} {line}</div>
            {verdict_waits()}
            {table(report, more, units)}
        }
        .into_any();
    }
    let fault = report
        .fault
        .as_ref()
        .map(|fault| view! { <p class="fault">{t::fault(fault)}</p> });
    let unusable: Vec<AnyView> = report
        .unusable
        .iter()
        .map(|one| view! { <p class="fault">{t::mend(one, units)}</p> }.into_any())
        .collect();
    let told = report.number.is_some() && !is_first(report);
    let lacks = (!report.lacks.is_empty() && told).then(|| {
        let names: Vec<&str> = report.lacks.iter().map(|m| t::field(m.field)).collect();
        view! { <p class="quiet">{t::not_counted(&names.join("; "))}</p> }
    });
    let questioned = (!report.questioned.is_empty()).then(|| {
        let names: Vec<String> = report
            .questioned
            .iter()
            .map(|p| t::place_title(*p))
            .collect();
        view! { <p class="fault">{t::questioned(&names.join("; "))}</p> }
    });
    view! {
        <div class="glance">{number} {line}</div>
        {verdict(report.signal, t::next(&report.next, units))}
        {fault}
        {unusable}
        {questioned}
        {lacks}
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
            // Said above as the number to work to.
            .filter(|m| !matches!(m.detail, Detail::BoreWanted | Detail::GrooveWanted))
            .map(|m| {
                let value = match m.detail {
                    Detail::Strokes => show::whole_seconds(m.si),
                    _ => show::number(m.si, m.measure.unit(units)),
                };
                (t::detail(m.detail), value)
            })
            .collect()
    };
    let predicted = |list: &[Length]| -> Vec<(&str, String)> {
        let mean = mean_length(list);
        mean.map(|m| (t::PREDICTED_HEIGHT.get(), of(m.as_m())))
            .into_iter()
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
            (t::MEAN_DIAMETER.get(), of(form.mean.as_m())),
            (t::TAPER.get(), of(form.taper.as_m())),
            (t::ROUND_ANYWHERE.get(), of(form.out_of_round.as_m())),
        ],
        Answer::Counterbore(c) => vec![
            (t::CHANCE_LOW.get(), t::percent(c.p_low)),
            // Below zero the planned cut alone keeps every flange proud enough.
            (
                t::PROUD_FOR_RISK.get(),
                of(c.target_for_risk.as_m().max(0.0)),
            ),
        ],
        Answer::Fit(fit, form) => vec![
            (t::CHANCE_INSIDE.get(), t::percent(fit.p_inside)),
            (t::LOOSEST.get(), of(fit.interference_min.as_m())),
            (t::TIGHTEST.get(), of(fit.interference_max.as_m())),
            (t::BORE_ROUND.get(), of(form.out_of_round.as_m())),
            (t::BORE_TAPER.get(), of(form.taper.as_m())),
        ],
        Answer::Heights(h) => {
            let mut rows = predicted(&h.predicted);
            rows.push((t::CLIMB_CEILING.get(), of(h.ceiling.as_m())));
            rows
        }
        Answer::Pulls(seat) | Answer::Seat(seat) => {
            let mut rows = predicted(&seat.predicted);
            if seat.gap.len() > 1 {
                rows.push((t::TILT.get(), of(seat.tilt.as_m())));
            }
            if let Some(last) = seat.settle.last() {
                rows.push((t::LAST_DROP.get(), of(last.as_m())));
            }
            if let Some(back) = seat.returned.iter().flatten().last() {
                rows.push((t::LAST_RETURN.get(), of(back.as_m())));
            }
            if matches!(report.answer, Answer::Pulls(_)) {
                rows.push((t::STILL.get(), of(seat.still.as_m())));
            }
            // Below its ledge a reading is wrong, and so is any chance; of a sleeve
            // that is stopped for its tilt or its gap a chance says nothing.
            if report.next != Next::BelowLedge && report.signal != Go::Stop {
                rows.push((t::CHANCE_SEATED.get(), t::percent(seat.p_seated)));
                rows.push((t::CHANCE_ASKED.get(), t::percent(seat.confidence)));
            }
            // What the gauges could show matters until it is shown.
            if report.signal != Go::Go && report.signal != Go::Stop {
                rows.push((t::GAUGES_SHOW.get(), t::percent(seat.best)));
                if seat.best_with_half_depth > seat.best {
                    rows.push((t::BETTER_DEPTH.get(), t::percent(seat.best_with_half_depth)));
                }
            }
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

/// The highest gauge pressure and what would give first, as a row; where one of
/// the four is not checked, which number it wants.
pub fn most_row(most: &Standing<(Pressure, Bearer)>, units: UnitSystem) -> Pair {
    match most {
        Standing::Known((gauge, bearer)) => (
            t::gauge_most(*bearer),
            show::number(gauge.as_pa(), Measure::Pressure.unit(units)),
        ),
        Standing::Missing(missing) => (
            t::GAUGE_MOST_OPEN.get().to_owned(),
            t::order_missing(missing.field),
        ),
        Standing::Unusable(unusable) => (
            t::GAUGE_MOST_OPEN.get().to_owned(),
            t::mend(unusable, units),
        ),
        Standing::Refused(fault) => (t::GAUGE_MOST_OPEN.get().to_owned(), t::fault(fault)),
        Standing::NotHere => (t::GAUGE_MOST_OPEN.get().to_owned(), String::new()),
    }
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

/// What a step says in one line, for the list of steps.
#[must_use]
pub fn summary(report: &StepReport, units: UnitSystem) -> String {
    if is_first(report) {
        return work_to_short(report, units).unwrap_or_default();
    }
    match (&report.number, report.begun) {
        (Some(n), _) => format!(
            "{} {}",
            t::figure(n.figure, n.sense(units)),
            match (n.figure, t::figure_unit(n.figure, units)) {
                (Figure::Quiet, _) => show::clock(n.si),
                (_, Some(unit)) => format!("{} {unit}", show::tenths(n.si)),
                (_, None) => show::number(n.size(), n.measure.unit(units)),
            }
        ),
        (None, true) if matches!(report.next, Next::DropReady) => t::DROP_NUMBERS.get().to_owned(),
        _ => String::new(),
    }
}
