//! The evaluator: one JSON request a line, one JSON answer a line. It reads
//! fields, calls the calculation of the same name, writes its numbers; no
//! formula lives here.
//!
//! SI everywhere; a field's name says its unit. Every answer holds finite
//! numbers only.

mod bands;
mod bore;
mod fields;
mod forces;
mod heat;
mod heights;
mod measuring;
mod output;
mod planning;
mod shop;

use fields::Fields;
use output::Output;
use serde_json::value::RawValue;

use crate::quantity::report::Fault;

/// Longest line taken, bytes.
pub const LONGEST_LINE: usize = 8_000_000;

type Calculation = fn(&Fields) -> Result<Output, Fault>;

/// Every calculation by its name.
const CALCULATIONS: &[(&str, Calculation)] = &[
    ("contraction", heat::contraction),
    ("chill", heat::chill),
    ("cold_drop", heat::cold_drop),
    ("soak", heat::soak),
    ("joint", heat::joint),
    ("oxygen", heat::oxygen),
    ("form", measuring::form),
    ("fit", measuring::fit),
    ("seat", measuring::seat),
    ("seat_deck", measuring::seat_deck),
    ("scatter", measuring::scatter),
    ("press_fit", forces::press_fit),
    ("pull", forces::pull),
    ("bore_profile", bore::bore_profile),
    ("bore_stress", bore::bore_stress),
    ("counterbore", planning::counterbore),
    ("deck", planning::deck),
    ("after_deck", heights::after_deck),
    ("heights_plan", heights::heights_plan),
    ("engine_effect", planning::engine_effect),
    ("groove", planning::groove),
    ("cross_hatch", planning::cross_hatch),
    ("ring_gap", planning::ring_gap),
    ("wall", planning::wall),
    ("web", planning::web),
    ("pairing", planning::pairing),
    ("bore_plan", shop::bore_plan),
    ("block_ring", shop::block_ring),
    ("service", shop::service),
    ("finish", shop::finish),
    ("estimate", shop::estimate),
    ("bands", bands::bands),
];

/// The names of all calculations.
pub fn names() -> impl Iterator<Item = &'static str> {
    CALCULATIONS.iter().map(|(name, _)| *name)
}

/// The answer to one line, without a line break. `None` for an empty line.
///
/// # Example
/// ```
/// let line = r#"{"id": 7, "calc": "ring_gap", "inputs": {"gap_m": 0.0004, "bore_change_m": 0}}"#;
/// let answer = coldseat_core::evaluator::answer(line).unwrap();
/// assert!(answer.contains(r#""id":7"#) && answer.contains(r#""gap_after_m":0.0004"#));
/// ```
#[must_use]
pub fn answer(line: &str) -> Option<String> {
    if line.trim().is_empty() {
        return None;
    }
    if line.len() > LONGEST_LINE {
        return Some(refuse_line(&format!(
            "longer than {LONGEST_LINE} bytes: split the request"
        )));
    }
    let request = match fields::entries("", line, "line") {
        Ok(entries) => entries,
        Err(fault) => return Some(refuse_line(&fault.message)),
    };
    let part = |name: &str| {
        request
            .iter()
            .find(|(key, _)| key == name)
            .map(|(_, raw)| *raw)
    };
    let id = part("id").map_or("null", RawValue::get);
    let calc_name = part("calc").and_then(|raw| serde_json::from_str::<String>(raw.get()).ok());
    let result = match request
        .iter()
        .find(|(key, _)| !matches!(key.as_str(), "id" | "calc" | "inputs"))
    {
        Some((key, _)) => Err(Fault::new(
            key.as_str(),
            "unknown key: a request has id, calc and inputs",
        )),
        None => evaluate(calc_name.as_deref(), part("inputs")),
    };
    let calc = serde_json::to_string(&calc_name).unwrap_or_else(|_| "null".to_owned());
    Some(match result {
        Ok(output) => format!(r#"{{"id":{id},"calc":{calc},{}}}"#, output.members()),
        Err(fault) => format!(
            r#"{{"id":{id},"calc":{calc},"error":{}}}"#,
            output::error(&fault)
        ),
    })
}

/// The answer to a line that is not a request at all.
#[must_use]
pub fn refuse_line(why: &str) -> String {
    let fault = Fault::new("line", why);
    format!(
        r#"{{"id":null,"calc":null,"error":{}}}"#,
        output::error(&fault)
    )
}

fn evaluate(name: Option<&str>, inputs: Option<&RawValue>) -> Result<Output, Fault> {
    let known = || names().collect::<Vec<_>>().join(", ");
    let Some(name) = name else {
        return Err(Fault::new(
            "calc",
            format!("missing or no text: name one of {}", known()),
        ));
    };
    let Some((_, calculation)) = CALCULATIONS.iter().find(|(n, _)| *n == name) else {
        return Err(Fault::new(
            "calc",
            format!("unknown: name one of {}", known()),
        ));
    };
    let Some(inputs) = inputs else {
        return Err(Fault::new("inputs", "missing: give an object of inputs"));
    };
    let fields = Fields::read("", inputs.get(), "inputs")?;
    let output = calculation(&fields)?;
    if output.is_finite() {
        Ok(output)
    } else {
        Err(Fault::new(
            "inputs",
            "these inputs together lead to a number too large to give: bring them nearer to a \
             real part",
        ))
    }
}
