//! Reading a request: typed, bounded, every fault with its path.

use core::cell::Cell;
use core::fmt;

use serde::Deserialize;
use serde::de::{Deserializer, MapAccess, SeqAccess, Visitor};
use serde_json::value::RawValue;

use crate::materials::{ConstantProperties, Material, MaterialId};
use crate::quantity::bounds;
use crate::quantity::report::Fault;

/// Most members of one object.
const MOST_MEMBERS: usize = 64;
/// Most values of one array.
pub const MOST_VALUES: usize = 100_000;

/// Members of an object, in order.
pub type Entries<'a> = Vec<(String, &'a RawValue)>;

struct Members<'a>(Entries<'a>);

impl<'de: 'a, 'a> Deserialize<'de> for Members<'a> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Collect;
        impl<'de> Visitor<'de> for Collect {
            type Value = Entries<'de>;
            fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
                write!(f, "an object of at most {MOST_MEMBERS} members")
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
                let mut found: Entries = Vec::new();
                while let Some(key) = map.next_key::<String>()? {
                    let raw = map.next_value::<&RawValue>()?;
                    if found.iter().any(|(k, _)| *k == key) {
                        return Err(serde::de::Error::custom(format!(
                            "\"{key}\" is given twice"
                        )));
                    }
                    if found.len() == MOST_MEMBERS {
                        return Err(serde::de::Error::custom(
                            "more members than any request has",
                        ));
                    }
                    found.push((key, raw));
                }
                Ok(found)
            }
        }
        deserializer.deserialize_map(Collect).map(Members)
    }
}

struct Elements<'a>(Vec<&'a RawValue>);

impl<'de: 'a, 'a> Deserialize<'de> for Elements<'a> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Collect;
        impl<'de> Visitor<'de> for Collect {
            type Value = Vec<&'de RawValue>;
            fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
                write!(f, "an array of at most {MOST_VALUES} values")
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Self::Value, A::Error> {
                let mut found = Vec::new();
                while let Some(raw) = seq.next_element::<&RawValue>()? {
                    if found.len() == MOST_VALUES {
                        return Err(serde::de::Error::custom(format!(
                            "more than {MOST_VALUES} values: send fewer at a time"
                        )));
                    }
                    found.push(raw);
                }
                Ok(found)
            }
        }
        deserializer.deserialize_seq(Collect).map(Elements)
    }
}

/// The members of the object that `text` is; a fault at `name` where it is
/// none. `path` is put before the name.
///
/// # Errors
/// A fault at the path.
pub fn entries<'a>(path: &str, text: &'a str, name: &str) -> Result<Entries<'a>, Fault> {
    match serde_json::from_str::<Members>(text) {
        Ok(members) => Ok(members.0),
        Err(e) => Err(Fault::new(
            join(path, name),
            format!("not an object of fields: {}", plain(&e)),
        )),
    }
}

/// A parser's message without its line and column, which mean nothing here.
fn plain(e: &serde_json::Error) -> String {
    let text = e.to_string();
    match text.find(" at line ") {
        Some(at) => text[..at].to_owned(),
        None => text,
    }
}

fn join(path: &str, name: &str) -> String {
    if path.is_empty() {
        name.to_owned()
    } else if name.is_empty() {
        path.to_owned()
    } else {
        format!("{path}.{name}")
    }
}

/// The fields of one object. Every reader marks its field; [`Fields::finish`]
/// refuses those that nobody read.
pub struct Fields<'a> {
    path: String,
    entries: Vec<(String, &'a RawValue, Cell<bool>)>,
}

impl<'a> Fields<'a> {
    /// Reads the object that `text` is, at `path`.`name`; the fields' own
    /// paths start at `path`.
    ///
    /// # Errors
    /// A fault where it is no object.
    pub fn read(path: &str, text: &'a str, name: &str) -> Result<Self, Fault> {
        let entries = entries(path, text, name)?;
        Ok(Self {
            path: path.to_owned(),
            entries: entries
                .into_iter()
                .map(|(k, v)| (k, v, Cell::new(false)))
                .collect(),
        })
    }

    fn at(&self, name: &str) -> String {
        join(&self.path, name)
    }

    fn find(&self, name: &str) -> Option<&'a RawValue> {
        let (_, raw, seen) = self.entries.iter().find(|(key, _, _)| key == name)?;
        seen.set(true);
        Some(raw)
    }

    fn need(&self, name: &str) -> Result<&'a RawValue, Fault> {
        self.find(name)
            .ok_or_else(|| Fault::new(self.at(name), "missing: this field is needed"))
    }

    /// The text of a value.
    ///
    /// # Errors
    /// Missing.
    pub fn raw(&self, name: &str) -> Result<&'a str, Fault> {
        self.need(name).map(RawValue::get)
    }

    /// Whether a field is given.
    pub fn has(&self, name: &str) -> bool {
        self.entries.iter().any(|(key, _, _)| key == name)
    }

    /// A number.
    ///
    /// # Errors
    /// Missing, or no number.
    pub fn number(&self, name: &str) -> Result<f64, Fault> {
        number(self.need(name)?, || self.at(name))
    }

    /// A number, or `default` where it is not given.
    ///
    /// # Errors
    /// Given, but no number.
    pub fn number_or(&self, name: &str, default: f64) -> Result<f64, Fault> {
        Ok(self.optional(name)?.unwrap_or(default))
    }

    /// A number that may be left out.
    ///
    /// # Errors
    /// Given, but no number.
    pub fn optional(&self, name: &str) -> Result<Option<f64>, Fault> {
        self.find(name)
            .map(|raw| number(raw, || self.at(name)))
            .transpose()
    }

    /// A number or null.
    ///
    /// # Errors
    /// Missing, or neither.
    pub fn nullable(&self, name: &str) -> Result<Option<f64>, Fault> {
        let raw = self.need(name)?;
        if raw.get() == "null" {
            return Ok(None);
        }
        number(raw, || self.at(name)).map(Some)
    }

    /// Numbers.
    ///
    /// # Errors
    /// Missing, no array, too many, or an element that is no number.
    pub fn numbers(&self, name: &str) -> Result<Vec<f64>, Fault> {
        self.elements(name)?
            .iter()
            .enumerate()
            .map(|(i, raw)| number(raw, || format!("{}[{i}]", self.at(name))))
            .collect()
    }

    fn elements(&self, name: &str) -> Result<Vec<&'a RawValue>, Fault> {
        let raw = self.need(name)?;
        match serde_json::from_str::<Elements>(raw.get()) {
            Ok(elements) => Ok(elements.0),
            Err(e) => Err(Fault::new(
                self.at(name),
                format!("not a list: {}", plain(&e)),
            )),
        }
    }

    /// A text.
    ///
    /// # Errors
    /// Missing, or no text.
    pub fn text(&self, name: &str) -> Result<String, Fault> {
        let raw = self.need(name)?;
        serde_json::from_str(raw.get())
            .map_err(|_| Fault::new(self.at(name), format!("{} is no text", short(raw))))
    }

    /// One of several words.
    ///
    /// # Errors
    /// Missing, no text, or another word.
    pub fn word<T: Copy>(&self, name: &str, words: &[(&str, T)]) -> Result<T, Fault> {
        let text = self.text(name)?;
        words
            .iter()
            .find(|(word, _)| *word == text)
            .map(|(_, value)| *value)
            .ok_or_else(|| {
                let known: Vec<&str> = words.iter().map(|(word, _)| *word).collect();
                let shown: String = text.chars().take(40).collect();
                Fault::new(
                    self.at(name),
                    format!(
                        "\"{shown}\" is not known here: give one of {}",
                        known.join(", ")
                    ),
                )
            })
    }

    /// An object within this one.
    ///
    /// # Errors
    /// Missing, or no object.
    pub fn object(&self, name: &str) -> Result<Self, Fault> {
        let raw = self.need(name)?;
        let path = self.at(name);
        Fields::read(&path, raw.get(), "")
    }

    /// An object or null.
    ///
    /// # Errors
    /// Missing, or neither.
    pub fn object_or_null(&self, name: &str) -> Result<Option<Self>, Fault> {
        if self.need(name)?.get() == "null" {
            return Ok(None);
        }
        self.object(name).map(Some)
    }

    /// A list of objects.
    ///
    /// # Errors
    /// Missing, no array, too many, or an element that is no object.
    pub fn objects(&self, name: &str) -> Result<Vec<Self>, Fault> {
        self.elements(name)?
            .iter()
            .enumerate()
            .map(|(i, raw)| Fields::read(&format!("{}[{i}]", self.at(name)), raw.get(), ""))
            .collect()
    }

    /// A material: a catalogue id in `{prefix}material`, or constants in
    /// `{prefix}properties`, of which `needed` must be there.
    ///
    /// # Errors
    /// Both, neither, an unknown id, constants missing or out of range.
    pub fn material(&self, prefix: &str, needed: &[&str]) -> Result<Material, Fault> {
        let by_id = format!("{prefix}material");
        let by_constants = format!("{prefix}properties");
        match (self.has(&by_id), self.has(&by_constants)) {
            (true, true) => Err(Fault::new(
                self.at(&by_constants),
                format!("given beside {by_id}: give one of the two"),
            )),
            (false, false) => Err(Fault::new(
                self.at(&by_id),
                format!("missing: give a catalogue id, or constants in {by_constants}"),
            )),
            (true, false) => {
                let ids = MaterialId::ALL.map(|m| (m.id(), m));
                self.word(&by_id, &ids).map(Material::catalogue)
            }
            (false, true) => self.object(&by_constants)?.constants(needed),
        }
    }

    fn constants(&self, needed: &[&str]) -> Result<Material, Fault> {
        let read = |name: &str, bound: &bounds::Bound| -> Result<Option<f64>, Fault> {
            if needed.contains(&name) {
                self.need(name)?;
            }
            match self.optional(name)? {
                Some(value) => bound.check(&self.at(name), value).map(Some),
                None => Ok(None),
            }
        };
        let constants = ConstantProperties {
            density_kg_m3: read("density_kg_m3", &bounds::DENSITY)?,
            specific_heat_j_kgk: read("specific_heat_j_kgk", &bounds::SPECIFIC_HEAT)?,
            conductivity_w_mk: read("conductivity_w_mk", &bounds::CONDUCTIVITY)?,
            expansion_per_k: read("expansion_per_k", &bounds::EXPANSION)?,
            youngs_pa: read("youngs_pa", &bounds::YOUNGS)?,
            poisson: read("poisson", &bounds::POISSON)?,
        };
        self.finish()?;
        Ok(Material::constant(constants))
    }

    /// Refuses fields that nobody read.
    ///
    /// # Errors
    /// A fault at the first of them.
    pub fn finish(&self) -> Result<(), Fault> {
        match self.entries.iter().find(|(_, _, seen)| !seen.get()) {
            None => Ok(()),
            Some((name, _, _)) => {
                let shown: String = name.chars().take(60).collect();
                Err(Fault::new(
                    self.at(&shown),
                    "unknown field: check its spelling, or leave it out",
                ))
            }
        }
    }
}

fn number(raw: &RawValue, at: impl Fn() -> String) -> Result<f64, Fault> {
    let text = raw.get();
    let starts = text
        .bytes()
        .next()
        .is_some_and(|b| b == b'-' || b.is_ascii_digit());
    match text.parse::<f64>() {
        Ok(value) if starts && value.is_finite() => Ok(value),
        Ok(_) if starts => Err(Fault::new(
            at(),
            format!("{} is larger than any number taken here", short(raw)),
        )),
        _ => Err(Fault::new(
            at(),
            format!("{} is not a number: give one in SI units", short(raw)),
        )),
    }
}

/// The beginning of a value, for messages.
fn short(raw: &RawValue) -> String {
    let mut text: String = raw.get().chars().take(40).collect();
    if text.len() < raw.get().len() {
        text.push_str("...");
    }
    text
}
