//! Writing an answer.

use serde_json::{Map, Value, json};

use crate::quantity::report::{Fault, Finding};

/// Outputs and findings of one calculation.
#[derive(Default)]
pub struct Output {
    values: Map<String, Value>,
    findings: Vec<Finding>,
    overflow: bool,
}

impl Output {
    /// A number.
    pub fn number(&mut self, name: &str, value: f64) -> &mut Self {
        let value = self.value(value);
        self.put(name, value)
    }

    /// A number or null.
    pub fn nullable(&mut self, name: &str, value: Option<f64>) -> &mut Self {
        let value = value.map_or(Value::Null, |v| self.value(v));
        self.put(name, value)
    }

    /// Numbers.
    pub fn numbers(&mut self, name: &str, values: impl IntoIterator<Item = f64>) -> &mut Self {
        let values = values.into_iter().map(|v| self.value(v)).collect();
        self.put(name, Value::Array(values))
    }

    /// Numbers or nulls.
    pub fn nullables(
        &mut self,
        name: &str,
        values: impl IntoIterator<Item = Option<f64>>,
    ) -> &mut Self {
        let values = values
            .into_iter()
            .map(|v| v.map_or(Value::Null, |v| self.value(v)))
            .collect();
        self.put(name, Value::Array(values))
    }

    /// Objects of numbers.
    pub fn rows<const N: usize>(
        &mut self,
        name: &str,
        names: [&str; N],
        rows: impl IntoIterator<Item = [f64; N]>,
    ) -> &mut Self {
        let rows = rows
            .into_iter()
            .map(|row| {
                let pairs = names
                    .iter()
                    .zip(row)
                    .map(|(n, v)| ((*n).to_owned(), self.value(v)));
                Value::Object(pairs.collect())
            })
            .collect();
        self.put(name, Value::Array(rows))
    }

    /// Anything else.
    pub fn put(&mut self, name: &str, value: Value) -> &mut Self {
        self.values.insert(name.to_owned(), value);
        self
    }

    /// Findings.
    pub fn findings(&mut self, findings: &[Finding]) -> &mut Self {
        self.findings.extend_from_slice(findings);
        self
    }

    fn value(&mut self, value: f64) -> Value {
        self.overflow |= !value.is_finite();
        json!(value)
    }

    /// Whether every number so far is one.
    pub fn is_finite(&self) -> bool {
        !self.overflow
    }

    /// A number by its name.
    pub fn get(&self, name: &str) -> Option<f64> {
        self.values.get(name).and_then(Value::as_f64)
    }

    /// The names of all single numbers.
    pub fn number_names(&self) -> impl Iterator<Item = &str> {
        self.values
            .iter()
            .filter(|(_, v)| v.is_number())
            .map(|(name, _)| name.as_str())
    }

    /// The members of an answer behind id and calc.
    pub fn members(self) -> String {
        let findings: Vec<Value> = self
            .findings
            .iter()
            .map(|f| json!({"level": f.level.word(), "code": f.code.id(), "message": f.message}))
            .collect();
        format!(
            r#""outputs":{},"findings":{}"#,
            Value::Object(self.values),
            Value::Array(findings)
        )
    }
}

/// An error object.
pub fn error(fault: &Fault) -> Value {
    json!({"field": fault.field, "message": fault.message})
}
