//! What a person did and was told: which value stands, which was replaced by
//! whom, what was said to be saved. Known by nothing but what was done and seen.

use coldseat_core::document::paper::Paper;
use coldseat_core::job::ledger::{Ledger, Writer};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// One setting of a value: who and when; `None` for what stood there at the start.
pub type Dot = (Option<Writer>, u64, String);

/// What stands at a place: the one shown first, then those beside it.
pub fn standing<P: Paper>(paper: &P, path: &str) -> Vec<(Dot, String)> {
    let ledger: &Ledger = paper.ledger();
    let Some(shown) = value_at(&paper.value(), path) else {
        return Vec::new();
    };
    let time = |value: &Value, at: u64| {
        if at > 0 {
            at
        } else {
            value.get(2).and_then(Value::as_u64).unwrap_or(0)
        }
    };
    let at = ledger.stamps.get(path).copied().unwrap_or(0);
    let by = ledger.by.get(path).copied();
    let mut all = vec![((by, time(&shown, at), text_of(&shown)), text_of(&shown))];
    for rival in ledger.rivals.get(path).into_iter().flatten() {
        let text = text_of(&rival.value);
        all.push(((rival.by, time(&rival.value, rival.at), text.clone()), text));
    }
    all
}

fn text_of(value: &Value) -> String {
    match value {
        Value::Array(parts) => parts
            .first()
            .and_then(Value::as_str)
            .unwrap_or_default()
            .to_owned(),
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

fn value_at(body: &Value, path: &str) -> Option<Value> {
    let mut value = body;
    for key in path.split('/') {
        value = match value {
            Value::Array(list) => list.get(key.parse::<usize>().ok()?)?,
            other => other.get(key)?,
        };
    }
    let blank = value.is_null() || value.as_str() == Some("");
    (!blank).then(|| value.clone())
}

/// A thing that a person did at a place.
#[derive(Clone, Debug)]
pub struct Deed {
    pub spot: usize,
    /// The text set; `None` where it was cleared.
    pub text: Option<String>,
    /// What was seen there and is replaced by it.
    pub replaces: Vec<usize>,
    pub device: usize,
    pub tab: usize,
    /// Lies on a medium, for all that was said.
    pub is_durable: bool,
    /// Lies at least in the quick store, for all that was said.
    pub is_quick: bool,
    /// The tab it was done in died before it was said to be kept.
    pub is_free: bool,
}

/// All that was done.
#[derive(Default)]
pub struct Model {
    pub deeds: Vec<Deed>,
    dots: BTreeMap<(usize, Dot), usize>,
}

impl Model {
    /// The deed that set a value; what stood there at the start is one too.
    pub fn deed_of(&mut self, spot: usize, dot: &Dot, text: &str) -> usize {
        if let Some(deed) = self.dots.get(&(spot, dot.clone())) {
            return *deed;
        }
        self.note(
            spot,
            Some(dot),
            Some(text.to_owned()),
            Vec::new(),
            (usize::MAX, usize::MAX),
        )
    }

    pub fn is_known(&self, spot: usize, dot: &Dot) -> bool {
        self.dots.contains_key(&(spot, dot.clone()))
    }

    pub fn note(
        &mut self,
        spot: usize,
        dot: Option<&Dot>,
        text: Option<String>,
        replaces: Vec<usize>,
        (device, tab): (usize, usize),
    ) -> usize {
        let deed = self.deeds.len();
        self.deeds.push(Deed {
            spot,
            text,
            replaces,
            device,
            tab,
            is_durable: false,
            is_quick: false,
            is_free: false,
        });
        if let Some(dot) = dot {
            self.dots.insert((spot, dot.clone()), deed);
        }
        deed
    }

    /// A tab was told that all of these spots is kept.
    pub fn told(&mut self, tab: usize, spots: &[usize], is_durable: bool) {
        for deed in &mut self.deeds {
            if deed.tab == tab && spots.contains(&deed.spot) {
                deed.is_quick = true;
                deed.is_durable |= is_durable;
            }
        }
    }

    /// A tab is gone: what it had not been told to be kept may be there or not.
    pub fn dies(&mut self, tab: usize, is_kill: bool) {
        for deed in &mut self.deeds {
            let is_kept = deed.is_durable || (deed.is_quick && !is_kill);
            if deed.tab == tab && !is_kept {
                deed.is_free = true;
            }
            if is_kill && deed.tab == tab && !deed.is_durable {
                deed.is_quick = false;
            }
        }
    }

    /// A document was taken out of both stores of a device: what was typed into it
    /// there, and what stood in it at its beginning, may be there or not.
    pub fn destroyed(&mut self, device: usize, spots: &[usize]) {
        for deed in &mut self.deeds {
            let is_its_own = deed.device == device || deed.device == usize::MAX;
            if is_its_own && spots.contains(&deed.spot) {
                deed.is_free = true;
            }
        }
    }

    fn ancestors(&self, deed: usize) -> BTreeSet<usize> {
        let mut found = BTreeSet::new();
        let mut look = vec![deed];
        while let Some(deed) = look.pop() {
            for before in &self.deeds[deed].replaces {
                if found.insert(*before) {
                    look.push(*before);
                }
            }
        }
        found
    }

    /// Holds what stands at a spot against what was done; `is_mine` says which
    /// deeds the copy must know of.
    pub fn check(
        &mut self,
        spot: usize,
        standing: &[(Dot, String)],
        is_mine: impl Fn(&Deed) -> bool,
    ) -> Result<(), String> {
        let stands: Vec<usize> = standing
            .iter()
            .map(|(dot, text)| {
                if dot.0.is_some() && !self.is_known(spot, dot) {
                    return Err(format!("{text} was never typed: {dot:?}"));
                }
                Ok(self.deed_of(spot, dot, text))
            })
            .collect::<Result<_, _>>()?;
        for (at, deed) in self.deeds.iter().enumerate() {
            if deed.spot != spot || !is_mine(deed) {
                continue;
            }
            let replaced = self.deeds.iter().any(|later| later.replaces.contains(&at));
            if deed.text.is_some() && !deed.is_free && !replaced && !stands.contains(&at) {
                return Err(format!("lost: {:?} of deed {at}: {deed:?}", deed.text));
            }
            if deed.is_free {
                continue;
            }
            for before in &deed.replaces {
                if stands.contains(before) {
                    return Err(format!(
                        "returned: {:?}, replaced by deed {at}: {deed:?}",
                        self.deeds[*before].text
                    ));
                }
            }
        }
        for one in &stands {
            let before = self.ancestors(*one);
            if let Some(other) = stands.iter().find(|other| before.contains(other)) {
                return Err(format!(
                    "false dispute: {:?} beside {:?}",
                    self.deeds[*other].text, self.deeds[*one].text
                ));
            }
        }
        Ok(())
    }
}
