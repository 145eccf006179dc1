//! Taking back and doing again, over everything of a job: readings, marks,
//! names, the engine, the joining of a copy.
//!
//! A step is what differs between two states, value by value. Taking back
//! touches only what still is as the step left it, so that a change made
//! meanwhile elsewhere stays. A reading that comes back is as it was typed; if
//! another copy may have been told that it was replaced, its time is that of its
//! coming back.

use super::flat::{Flat, flat};
use super::ledger::{Change, changes, note, settle};
use super::merge::{Spot, job_from, spot};
use super::write::job_value;
use crate::job::ledger::Ledger;
use crate::job::{Job, Millis};
use serde_json::Value;

/// Steps that are kept.
const STEPS_MOST: usize = 200;

type Step = Vec<Change>;

/// The open job's history, and its state at the last look.
#[derive(Clone, Debug, PartialEq)]
pub struct History {
    now: Flat,
    undo: Vec<Step>,
    redo: Vec<Step>,
}

/// Whether a change goes on at the place of the one before it, key by key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stay {
    /// The same visit to the same place.
    Same,
    /// A change of its own.
    New,
}

impl History {
    /// A history that begins here.
    #[must_use]
    pub fn of(job: &Job) -> Self {
        Self {
            now: flat(&job_value(job)),
            undo: Vec::new(),
            redo: Vec::new(),
        }
    }

    /// Notes what was changed since the last look, in the history and in the
    /// job's ledger. Says whether anything was.
    pub fn note(&mut self, job: &mut Job, at: Millis, stay: Stay) -> bool {
        let after = flat(&job_value(job));
        let mut step = changes(&self.now, &after);
        self.now = after;
        if step.is_empty() {
            return false;
        }
        self.redo.clear();
        // Key by key is one step, and only the value before the first key was
        // ever anyone's.
        if stay == Stay::Same
            && let ([change], Some([last])) = (
                step.as_mut_slice(),
                self.undo.last_mut().map(Vec::as_mut_slice),
            )
            && change.path == last.path
        {
            last.after = change.after.take();
            return true;
        }
        for change in &step {
            note(&mut job.ledger, change, at);
        }
        self.settle(job, &mut step, at);
        self.push(step);
        true
    }

    /// Brings what was set into order with what stands beside it.
    fn settle(&mut self, job: &mut Job, step: &mut Step, at: Millis) {
        let mut ledger = job.ledger.clone();
        let mut any = false;
        for change in step {
            if settle(&mut ledger, &change.path, &mut change.after, at) {
                set(&mut self.now, &change.path, change.after.clone());
                any = true;
            }
        }
        if any {
            *job = job_from(&self.now, &ledger);
        }
    }

    fn push(&mut self, step: Step) {
        if self.undo.len() >= STEPS_MOST {
            self.undo.remove(0);
        }
        self.undo.push(step);
    }

    /// Takes a state over that came from elsewhere: no step of this history.
    pub fn take_over(&mut self, job: &Job) {
        self.now = flat(&job_value(job));
    }

    /// Whether there is a step to take back.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        !self.undo.is_empty()
    }

    /// Whether there is a step to do again.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        !self.redo.is_empty()
    }

    /// Takes the last step back; says where it was.
    pub fn undo(&mut self, job: &mut Job, at: Millis) -> Option<Spot> {
        let step = self.undo.pop()?;
        let back: Step = step
            .iter()
            .map(|change| Change {
                path: change.path.clone(),
                before: change.after.clone(),
                after: change.before.clone(),
            })
            .collect();
        self.apply(job, &back, at);
        self.redo.push(step);
        self.spot_of(&back)
    }

    /// Does the last step that was taken back again; says where it was.
    pub fn redo(&mut self, job: &mut Job, at: Millis) -> Option<Spot> {
        let step = self.redo.pop()?;
        self.apply(job, &step, at);
        let spot = self.spot_of(&step);
        self.push(step);
        spot
    }

    fn spot_of(&self, step: &Step) -> Option<Spot> {
        step.first().map(|change| spot(&change.path))
    }

    fn apply(&mut self, job: &mut Job, step: &Step, at: Millis) {
        let mut values = flat(&job_value(job));
        let mut ledger: Ledger = job.ledger.clone();
        for change in step {
            if !alike(values.get(&change.path), change.before.as_ref()) {
                continue;
            }
            let before = values.get(&change.path).cloned();
            let mut after = change.after.clone();
            note(
                &mut ledger,
                &Change {
                    path: change.path.clone(),
                    before,
                    after: after.clone(),
                },
                at,
            );
            settle(&mut ledger, &change.path, &mut after, at);
            set(&mut values, &change.path, after);
        }
        *job = job_from(&values, &ledger);
        self.now = flat(&job_value(job));
    }

    /// As text, for the time until the page is loaded anew.
    #[must_use]
    pub fn text(&self) -> String {
        let side = |steps: &[Step]| -> Value {
            steps
                .iter()
                .map(|step| -> Value {
                    step.iter()
                        .map(|c| {
                            let value = |v: &Option<Value>| v.clone().unwrap_or(Value::Null);
                            Value::from(vec![
                                c.path.clone().into(),
                                value(&c.before),
                                value(&c.after),
                            ])
                        })
                        .collect()
                })
                .collect()
        };
        Value::from(vec![side(&self.undo), side(&self.redo)]).to_string()
    }

    /// The history of a job out of such a text; anything else is a history
    /// that begins here.
    #[must_use]
    pub fn from_text(job: &Job, text: &str) -> Self {
        let mut history = Self::of(job);
        if let Some((undo, redo)) = read(text) {
            history.undo = undo;
            history.redo = redo;
        }
        history
    }
}

fn set(values: &mut Flat, path: &str, value: Option<Value>) {
    match value {
        Some(value) => values.insert(path.to_owned(), value),
        None => values.remove(path),
    };
}

/// Whether two values are the same but for when they were set.
fn alike(a: Option<&Value>, b: Option<&Value>) -> bool {
    match (a, b) {
        (Some(Value::Array(a)), Some(Value::Array(b))) if a.len() > 2 && a.len() == b.len() => {
            (0..a.len()).all(|i| i == 2 || a.get(i) == b.get(i))
        }
        (Some(Value::Object(a)), Some(Value::Object(b))) => {
            let plain = |o: &serde_json::Map<String, Value>| {
                let mut o = o.clone();
                o.remove("at");
                o
            };
            plain(a) == plain(b)
        }
        (a, b) => a == b,
    }
}

/// A change as it is written: path, before, after.
type Written = (String, Option<Value>, Option<Value>);

fn read(text: &str) -> Option<(Vec<Step>, Vec<Step>)> {
    let whole: Vec<Vec<Vec<Written>>> = serde_json::from_str(text).ok()?;
    let [undo, redo] = <[_; 2]>::try_from(whole).ok()?;
    let side = |steps: Vec<Vec<Written>>| -> Vec<Step> {
        let change = |(path, before, after)| Change {
            path,
            before,
            after,
        };
        steps
            .into_iter()
            .map(|step| step.into_iter().map(change).collect())
            .collect()
    };
    Some((side(undo), side(redo)))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::step::{Mark, StepId};
    use crate::job::{Entry, Field, Owner, Place};
    use crate::quantity::parse::Unit;

    const BORE: Place = Place::of_cylinder(2, Field::BoreD, 0);

    fn typed(job: &mut Job, history: &mut History, text: &str, at: Millis, stay: Stay) {
        job.entries.put(BORE, Entry::new(text, Unit::Inch, at));
        assert!(history.note(job, at, stay));
    }

    #[test]
    fn everything_is_taken_back_and_done_again() {
        let begun = Demo::InchFive.job(1_700_000_000_000);
        let mut job = begun.clone();
        let mut history = History::of(&job);
        assert!(!history.note(&mut job, 1, Stay::New));
        // Three keys of one visit are one step.
        for (text, stay) in [("4", Stay::New), ("4.", Stay::Same), ("4.2", Stay::Same)] {
            typed(&mut job, &mut history, text, 10, stay);
        }
        job.set_mark(Owner::Cylinder(2), StepId::Wall, Some(Mark::Done), 20);
        history.note(&mut job, 20, Stay::New);
        job.customer = "someone else".to_owned();
        job.left_out = vec![4];
        history.note(&mut job, 30, Stay::New);
        let last = job.clone();

        let mut spots = Vec::new();
        while history.can_undo() {
            spots.push(history.undo(&mut job, 40).unwrap());
        }
        assert_eq!(
            spots,
            [
                Spot::Other(vec!["customer".to_owned()]),
                Spot::Step(Owner::Cylinder(2), StepId::Wall),
                Spot::Reading(BORE),
            ]
        );
        let plain = |job: &Job| {
            let mut job = job.clone();
            job.ledger = Ledger::default();
            // What came back was set when it came back.
            let mut entry = job.entries.get(BORE).unwrap().clone();
            entry.at = 0;
            job.entries.put(BORE, entry);
            for (_, record) in job.steps.iter_mut() {
                record.at = 0;
            }
            job
        };
        assert_eq!(plain(&job), plain(&begun));
        while history.can_redo() {
            history.redo(&mut job, 50);
        }
        assert_eq!(plain(&job), plain(&last));
    }

    #[test]
    fn a_change_made_elsewhere_meanwhile_stays() {
        let mut job = Demo::InchFive.job(0);
        let mut history = History::of(&job);
        typed(&mut job, &mut history, "4.2", 10, Stay::New);
        // The other tab types into the same place.
        job.entries.put(BORE, Entry::new("4.3", Unit::Inch, 20));
        history.take_over(&job);
        history.undo(&mut job, 30);
        assert_eq!(job.entries.get(BORE).unwrap().text, "4.3");
    }

    #[test]
    fn a_history_outlives_a_reload_and_nonsense_is_none() {
        let mut job = Demo::InchFive.job(0);
        let before = job.entries.get(BORE).unwrap().text.clone();
        let mut history = History::of(&job);
        typed(&mut job, &mut history, "4.2", 10, Stay::New);
        let mut again = History::from_text(&job, &history.text());
        assert_eq!(again, history);
        again.undo(&mut job, 20);
        assert_eq!(job.entries.get(BORE).unwrap().text, before);
        for text in ["", "[]", "[[],[],[]]", "[[[1]],[]]", "{}"] {
            assert!(!History::from_text(&job, text).can_undo(), "{text}");
        }
    }
}
