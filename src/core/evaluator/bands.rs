//! bands: any calculation over inputs that are only known so well.

use serde_json::{Map, Value, json};

use super::fields::Fields;
use super::output::Output;
use crate::numerics::sampling::{Law, Uncertain, latin_hypercube, spread};
use crate::quantity::bounds::{Bound, End};
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};

const SAMPLES: Bound = Bound {
    lo: 2.0,
    hi: 10_000.0,
    lo_end: End::In,
    hi_end: End::In,
    unit: "",
};
const SEED: Bound = Bound {
    lo: 0.0,
    hi: 1e15,
    lo_end: End::In,
    hi_end: End::In,
    unit: "",
};
/// Most uncertain inputs.
const MOST_UNCERTAIN: usize = 32;
/// Share of refused samples from which a look is wanted.
const MANY_REFUSED: f64 = 0.05;

pub fn bands(f: &Fields) -> Result<Output, Fault> {
    let name = f.text("calc")?;
    let calculation = super::CALCULATIONS
        .iter()
        .find(|(n, _)| *n == name && *n != "bands")
        .map(|(_, c)| *c)
        .ok_or_else(|| Fault::new("calc", "unknown: name a calculation other than bands"))?;
    let mut inputs: Value = serde_json::from_str(f.raw("inputs")?)
        .ok()
        .filter(Value::is_object)
        .ok_or_else(|| Fault::new("inputs", "not an object of inputs for that calculation"))?;
    let samples = whole("samples", f.number_or("samples", 300.0)?, &SAMPLES)? as usize;
    let seed = whole("seed", f.number_or("seed", 1.0)?, &SEED)? as u64;
    let mut places = Vec::new();
    let mut known = Vec::new();
    for (i, u) in f.objects("uncertain")?.iter().enumerate() {
        if i == MOST_UNCERTAIN {
            return Err(Fault::new(
                "uncertain",
                format!("at most {MOST_UNCERTAIN} are sampled"),
            ));
        }
        let path = u.text("field")?;
        let at = |what: &str| Fault::new(format!("uncertain[{i}].{what}"), "");
        let value = pointer(&path)
            .and_then(|p| inputs.pointer(&p).and_then(Value::as_f64))
            .ok_or_else(|| Fault {
                message: "no number of this name among the inputs: give its path, for example \
                          sleeve.outer_d_m or holes[2].height_m"
                    .to_owned(),
                ..at("field")
            })?;
        let width = u.number("u")?;
        if width < 0.0 {
            return Err(Fault {
                message: format!("{width} is negative: give a standard uncertainty, 0 or above"),
                ..at("u")
            });
        }
        let law = if u.has("law") {
            u.word("law", &[("normal", Law::Normal), ("uniform", Law::Uniform)])?
        } else {
            Law::Normal
        };
        u.finish()?;
        places.push(pointer(&path).unwrap_or_default());
        known.push(Uncertain {
            value,
            u: width,
            law,
        });
    }
    f.finish()?;
    let evaluate = |inputs: &Value| -> Result<Output, Fault> {
        calculation(&Fields::read("", &inputs.to_string(), "inputs")?)
    };
    let nominal = evaluate(&inputs)?;
    let names: Vec<String> = nominal.number_names().map(str::to_owned).collect();
    let mut rows = Vec::with_capacity(samples);
    let mut columns: Vec<Vec<f64>> = vec![Vec::with_capacity(samples); names.len()];
    for row in latin_hypercube(&known, samples, seed) {
        for (place, value) in places.iter().zip(&row) {
            if let Some(slot) = inputs.pointer_mut(place) {
                *slot = json!(value);
            }
        }
        let Ok(output) = evaluate(&inputs) else {
            continue;
        };
        let values: Option<Vec<f64>> = names.iter().map(|n| output.get(n)).collect();
        if let Some(values) = values.filter(|v| v.iter().all(|x| x.is_finite())) {
            for (column, value) in columns.iter_mut().zip(values) {
                column.push(value);
            }
            rows.push(row);
        }
    }
    let mut bands = Map::new();
    for (name, column) in names.iter().zip(&columns) {
        if let Some(s) = spread(&rows, column) {
            let most = s
                .matters
                .iter()
                .enumerate()
                .max_by(|a, b| a.1.total_cmp(b.1));
            bands.insert(
                name.clone(),
                json!({
                    "nominal": nominal.get(name),
                    "p5": s.low,
                    "p50": s.median,
                    "p95": s.high,
                    "shares": s.matters,
                    "matters_most": most.filter(|m| *m.1 > 0.0).map(|m| m.0),
                }),
            );
        }
    }
    let mut out = Output::default();
    out.put("bands", Value::Object(bands))
        .put("samples_used", json!(rows.len()));
    let refused = samples - rows.len();
    if refused as f64 > MANY_REFUSED * samples as f64 {
        out.findings(&[Finding::look(
            Code::SamplesRefused,
            format!(
                "{refused} of {samples} samples gave no answer: the band covers only the rest. \
                 Give smaller uncertainties, or values farther from a limit"
            ),
        )]);
    }
    Ok(out)
}

fn whole(field: &str, value: f64, bound: &Bound) -> Result<f64, Fault> {
    bound.check(field, value)?;
    if value.fract() == 0.0 {
        return Ok(value);
    }
    Err(Fault::new(field, format!("{value} is no whole number")))
}

/// `holes[2].height_m` as a JSON pointer (RFC 6901).
fn pointer(path: &str) -> Option<String> {
    let mut out = String::new();
    for part in path.split('.') {
        let (name, mut rest) = match part.find('[') {
            Some(at) => part.split_at(at),
            None => (part, ""),
        };
        if name.is_empty() || name.contains(['/', '~', ']']) {
            return None;
        }
        out.push('/');
        out.push_str(name);
        while let Some(inner) = rest.strip_prefix('[') {
            let (index, after) = inner.split_once(']')?;
            index.parse::<usize>().ok()?;
            out.push('/');
            out.push_str(index);
            rest = after;
        }
        if !rest.is_empty() {
            return None;
        }
    }
    Some(out)
}
