//! Someone who types a job, by touch or by keyboard, and goes where the page
//! leads.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Key, Page, Role, containing};
use coldseat_core::job::field::{Measure, Places, Scope};
use coldseat_core::job::model::stand::Stand;
use coldseat_core::job::step::{StepId, StepSpec, Subject};
use coldseat_core::job::steps::survey::spots;
use coldseat_core::job::{Field, Job, Owner, Place};
use serde_json::json;

/// With what the numbers go in.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Hand {
    Touch,
    Keyboard,
}

pub struct Player<'a> {
    pub page: &'a Page,
    pub hand: Hand,
    /// Where the numbers come from.
    pub job: Job,
    /// Numbers that the demos leave open, for every cylinder.
    pub rest: &'static [(Field, &'static [&'static str])],
}

/// What a step asks of the demos' sleeves: flanged ones.
fn fields_of(spec: &'static StepSpec) -> Vec<Field> {
    // What stands folded beside the readings the hand passes over.
    let asked = Stand::USUAL.fields_of(spec);
    asked.filter(|field| !field.is_beside()).collect()
}

/// The places of a step in the order in which "next" comes to them: lists side
/// by side, then what has several places, then single numbers.
fn order(spec: &'static StepSpec, rows: u8) -> Vec<(Field, u8)> {
    let places = |f: &Field| f.spec().places;
    let is_list = |f: &&Field| matches!(places(f), Places::List(_));
    let fields = fields_of(spec);
    let lists: Vec<Field> = fields.iter().filter(is_list).copied().collect();
    let mut found: Vec<(Field, u8)> = (0..rows)
        .flat_map(|row| lists.iter().map(move |f| (*f, row)))
        .collect();
    let numbers = || {
        fields
            .iter()
            .filter(|f| f.spec().measure != Measure::Choice)
            // Asked for only where a cut puts a size out of its range.
            .filter(|f| places(f) != Places::FromDeck)
            .filter(|f| !is_list(f))
    };
    for field in numbers().filter(|f| places(f) != Places::One) {
        found.extend((0..places(field).count()).map(|index| (*field, index)));
    }
    found.extend(
        numbers()
            .filter(|f| places(f) == Places::One)
            .map(|f| (*f, 0)),
    );
    found
}

impl Player<'_> {
    fn text(&self, owner: Owner, field: Field, index: u8) -> Option<String> {
        let owner = match field.spec().scope {
            Scope::Engine => Owner::Block,
            _ => owner,
        };
        let place = Place {
            owner,
            field,
            index,
        };
        let rest = || {
            let (_, texts) = self.rest.iter().find(|(f, _)| *f == field)?;
            Some((*texts.get(usize::from(index))?).to_owned())
        };
        self.job
            .entries
            .get(place)
            .map(|e| e.text.clone())
            .or_else(rest)
    }

    /// Types into the reading that has the focus and goes on.
    async fn enter(&self, text: &str) -> Result<()> {
        if self.hand == Hand::Keyboard {
            self.page.focused().await?.write(text).await?;
            return self.page.press(Key::Enter).await;
        }
        let keys = self.page.keys_of("Number pad").await?;
        let touch = async |fits: &dyn Fn(&str) -> bool| {
            let key = keys.iter().find(|(name, ..)| fits(name));
            let (_, x, y) = key.with_context(|| format!("no key for {text:?} in {keys:?}"))?;
            self.page.touch(*x, *y).await
        };
        // Lengths count from the right: no point is typed.
        let counts = keys
            .iter()
            .any(|(name, ..)| name.starts_with("From the right"));
        let typed: String = if counts {
            let bare: String = text.chars().filter(char::is_ascii_digit).collect();
            let bare = bare.trim_start_matches('0');
            if bare.is_empty() { "0" } else { bare }.to_owned()
        } else {
            text.trim_start_matches('-').to_owned()
        };
        for c in typed.chars() {
            let wanted = if c == '.' {
                "Decimal point".to_owned()
            } else {
                c.to_string()
            };
            touch(&|name| name == wanted).await?;
        }
        if text.starts_with('-') {
            touch(&|name| name.contains("low") || name == "Plus or minus").await?;
        }
        self.pass().await
    }

    /// Goes on without typing.
    async fn pass(&self) -> Result<()> {
        if self.hand == Hand::Keyboard {
            return self.page.press(Key::Enter).await;
        }
        let keys = self.page.keys_of("Number pad").await?;
        let next = keys.iter().find(|(name, ..)| name == "Next");
        let (_, x, y) = next.context("no key to go on")?;
        // The finger's click comes a moment after the finger.
        self.page
            .script("window.before = document.activeElement", vec![])
            .await?;
        self.page.touch(*x, *y).await?;
        self.page
            .until("the focus to go on", async || {
                let moved = "return document.activeElement !== window.before";
                Ok((self.page.script(moved, vec![]).await? == json!(true)).then_some(()))
            })
            .await
    }

    /// Types what a step wants of an owner, then looks whether it stands.
    pub async fn fill(&self, spec: &'static StepSpec, owner: Owner) -> Result<()> {
        let fields = fields_of(spec);
        let lists = fields
            .iter()
            .filter(|f| matches!(f.spec().places, Places::List(_)));
        let rows = lists
            .flat_map(|f| {
                (0..f.spec().places.count())
                    .rev()
                    .find(|i| self.text(owner, *f, *i).is_some())
            })
            .max()
            .map_or(0, |last| last + 1);
        let wanted: Vec<(Field, u8, Option<String>)> = order(spec, rows)
            .into_iter()
            .map(|(field, index)| (field, index, self.text(owner, field, index)))
            .collect();
        for field in fields
            .iter()
            .filter(|f| f.spec().measure == Measure::Choice)
        {
            // What the demo says nothing of is not asked.
            let Some(word) = self.text(owner, *field, 0) else {
                continue;
            };
            let radio = self.page.find(Role::Radio, word.as_str()).await?;
            radio.bring_up().await?;
            radio.tap().await?;
        }
        let nth = match owner {
            Owner::Bank(bank) if spec.id != StepId::Deck => usize::from(bank),
            _ => 0,
        };
        if !wanted.is_empty() {
            self.page.script(FOCUS_FIRST, vec![json!(nth)]).await?;
        }
        let is_list = |f: Field| matches!(f.spec().places, Places::List(_));
        // A deck that is surveyed whole asks for no further row.
        let waits = match owner {
            Owner::Bank(bank) => rows < spots(&self.job, bank),
            _ => true,
        };
        let mut in_list = false;
        for (field, index, text) in &wanted {
            // Past the row that waits for more.
            if in_list && waits && !is_list(*field) {
                for _ in fields.iter().filter(|f| is_list(**f)) {
                    self.pass().await?;
                }
            }
            in_list = is_list(*field);
            // A row appears when the one before is filled; a place may stay blank.
            // The engine's own numbers stand there already.
            let stands = field.spec().scope == Scope::Engine;
            match text {
                Some(text) if !stands => self.enter(text).await,
                _ => self.pass().await,
            }
            .with_context(|| format!("{} {field:?} {index}", spec.name))?;
        }
        let texts: Vec<String> = wanted
            .iter()
            .map(|(_, _, t)| t.clone().unwrap_or_default())
            .collect();
        self.page
            .until(
                &format!("{} of {owner:?} to stand: {texts:?}", spec.name),
                async || {
                    let found = self.page.script(VALUES, vec![json!(nth)]).await?;
                    let mut found: Vec<String> = found
                        .as_array()
                        .into_iter()
                        .flatten()
                        .filter_map(|v| v.as_str().map(str::to_owned))
                        .collect();
                    // The row that waits for more.
                    let lists = fields
                        .iter()
                        .filter(|f| matches!(f.spec().places, Places::List(_)))
                        .count();
                    let from = usize::from(rows) * lists;
                    let spare = found.len().saturating_sub(texts.len());
                    if spare > 0 {
                        found.drain(from..from + spare);
                    }
                    ensure!(found == texts, "they hold {found:?}");
                    Ok(Some(()))
                },
            )
            .await?;
        if spec.fields.is_empty() {
            self.page.tap(Role::Button, "Done").await?;
        }
        Ok(())
    }

    /// Goes on by one of the page's own links, until the page stands there.
    pub async fn on(&self, words: &str) -> Result<()> {
        let before = self.address().await?;
        // Out of the pad's way, as after the last row of a list.
        let keys = self.page.keys_of("Number pad").await?;
        if let Some((_, x, y)) = keys.iter().find(|(name, ..)| name == "Close") {
            self.page.touch(*x, *y).await?;
            self.page
                .until("the pad to close", async || {
                    Ok(self
                        .page
                        .keys_of("Number pad")
                        .await?
                        .is_empty()
                        .then_some(()))
                })
                .await?;
        }
        let link = self.page.find(Role::Link, containing(words)).await?;
        link.bring_up().await?;
        match self.hand {
            Hand::Touch => link.tap().await?,
            Hand::Keyboard => link.press(Key::Enter).await?,
        }
        self.page
            .until(&format!("{words} to lead on"), async || {
                Ok((self.address().await? != before).then_some(()))
            })
            .await?;
        self.page.is_drawn().await
    }

    /// The parts of the address behind the job.
    pub async fn address(&self) -> Result<Vec<String>> {
        let address = self.page.script("return location.hash", vec![]).await?;
        let parts = address.as_str().unwrap_or_default().split('/').skip(3);
        Ok(parts.map(str::to_owned).collect())
    }

    /// The cylinder whose step is open.
    async fn cylinder_at(&self, spec: &StepSpec) -> Result<u8> {
        self.page
            .until(&format!("a cylinder's {}", spec.name), async || {
                let at = self.address().await?;
                match at.as_slice() {
                    [kind, number, step] if kind == "cylinder" && step == spec.name => {
                        Ok(Some(number.parse()?))
                    }
                    _ => Ok(None),
                }
            })
            .await
    }

    /// A step for all whom it concerns; the page stands at its first.
    pub async fn step(&self, spec: &'static StepSpec) -> Result<()> {
        match spec.subject {
            Subject::Block => self.fill(spec, Owner::Block).await,
            Subject::Bank => {
                for bank in 0..self.job.engine.banks() {
                    self.fill(spec, Owner::Bank(bank)).await?;
                }
                Ok(())
            }
            Subject::Cylinder => {
                // The page leads round from wherever the person stands.
                let count = self.job.engine.cylinders;
                let mut left: Vec<u8> = (1..=count).collect();
                while !left.is_empty() {
                    let cylinder = self.cylinder_at(spec).await?;
                    ensure!(left.contains(&cylinder), "led to cylinder {cylinder} again");
                    left.retain(|c| *c != cylinder);
                    self.fill(spec, Owner::Cylinder(cylinder)).await?;
                    if !left.is_empty() {
                        self.on("Next cylinder").await?;
                    }
                }
                Ok(())
            }
        }
    }

    /// Pulled again: from here on it reads as its neighbour, which is home.
    pub fn bring_home(&mut self, high: u8) {
        for field in [
            Field::PullGauge,
            Field::PullLoaded,
            Field::PullReleased,
            Field::SeatHeight,
        ] {
            for index in 0..field.spec().places.count() {
                let of = |cylinder| Place::of_cylinder(cylinder, field, index);
                // Its neighbour's are as good as its own: both were cut within a
                // few tenths of the depth wanted.
                if let Some(entry) = self.job.entries.get(of(high - 1)).cloned() {
                    let later = if field == Field::SeatHeight {
                        index
                    } else {
                        index + 4
                    };
                    let place = Place::of_cylinder(high, field, later);
                    self.job.entries.put(place, entry);
                }
            }
        }
    }
}

/// Puts the focus on the first reading of a step, of the nth owner.
const FOCUS_FIRST: &str = "
    const bodies = document.querySelectorAll('.step-entry');
    bodies[arguments[0]].querySelector('[data-place]').focus();
";

/// What the readings of a step hold, in order.
const VALUES: &str = "
    const body = document.querySelectorAll('.step-entry')[arguments[0]];
    // The engine's own numbers stand below the step's.
    return [...body.querySelectorAll('input[data-place]')]
        .filter((i) => !i.closest('.of-engine, details:not([open])'))
        .map((i) => i.value);
";
