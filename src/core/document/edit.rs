//! Taking back and doing again, over everything of a document: readings, marks,
//! names, the engine, the joining of a copy.
//!
//! A step is what differs between two states, value by value. Taking back
//! touches only what still is as the step left it, so that a change made
//! meanwhile elsewhere stays. A reading that comes back is as it was typed; it is
//! set anew, so that copies which have been told that it was replaced take it.

use super::flat::{Flat, flat};
use super::ledger::{Change, Hand, alike, changes, set_down};
use super::merge::{Spot, choose, spot};
use super::paper::{Paper, of_flat};
use super::pen::Pen;
use crate::job::Millis;
use serde_json::Value;

/// Steps that are kept.
const STEPS_MOST: usize = 200;

type Step = Vec<Change>;

/// The history of an open document, and its state at the last look.
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

/// What was found when a document was looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Noted {
    /// Nothing was changed.
    Nothing,
    /// What was changed is noted.
    Changed,
    /// It is noted, and the document shows something else than was set.
    Shows,
}

impl History {
    /// A history that begins here.
    #[must_use]
    pub fn of<P: Paper>(paper: &P) -> Self {
        Self {
            now: flat(&paper.value()),
            undo: Vec::new(),
            redo: Vec::new(),
        }
    }

    /// Notes what was changed since the last look, in the history and in the
    /// document's ledger.
    pub fn note<P: Paper>(
        &mut self,
        paper: &mut P,
        pen: &mut Pen,
        at: Millis,
        stay: Stay,
    ) -> Noted {
        let after = flat(&paper.value());
        let mut step = changes(&self.now, &after);
        self.now = after;
        if step.is_empty() {
            return Noted::Nothing;
        }
        self.redo.clear();
        let goes_on = stay == Stay::Same
            && matches!(
                (step.as_slice(), self.undo.last().map(Vec::as_slice)),
                ([change], Some([last])) if change.path == last.path
            );
        let hand = if goes_on { Hand::Stays } else { Hand::Comes };
        let mut noted = Noted::Changed;
        let beside = paper.ledger().rivals.clone();
        for change in &mut step {
            if set_down(paper.ledger_mut(), change, pen, at, hand) {
                set(&mut self.now, &change.path, change.after.clone());
                noted = Noted::Shows;
            }
        }
        if noted == Noted::Shows {
            *paper = of_flat(&self.now, paper.ledger().clone());
        }
        if paper.ledger().rivals != beside {
            noted = Noted::Shows;
        }
        // Key by key is one step back, to the value before the first key.
        match (
            self.undo.last_mut().map(Vec::as_mut_slice),
            step.as_mut_slice(),
        ) {
            (Some([last]), [change]) if goes_on => last.after = change.after.take(),
            _ => self.push(step),
        }
        noted
    }

    /// Chooses one of the values of a place that has more than one, as a step of
    /// this history ([`choose`]).
    pub fn choose<P: Paper>(
        &mut self,
        paper: &mut P,
        pen: &mut Pen,
        at: Millis,
        (path, which): (&str, usize),
    ) {
        choose(paper, path, which, pen, at);
        let after = flat(&paper.value());
        let step = changes(&self.now, &after);
        self.now = after;
        if !step.is_empty() {
            self.redo.clear();
            self.push(step);
        }
    }

    fn push(&mut self, step: Step) {
        if self.undo.len() >= STEPS_MOST {
            self.undo.remove(0);
        }
        self.undo.push(step);
    }

    /// Takes a state over that came from elsewhere: no step of this history.
    pub fn take_over<P: Paper>(&mut self, paper: &P) {
        self.now = flat(&paper.value());
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
    pub fn undo<P: Paper>(&mut self, paper: &mut P, pen: &mut Pen, at: Millis) -> Option<Spot> {
        let step = self.undo.pop()?;
        let back: Step = step
            .iter()
            .map(|change| Change {
                path: change.path.clone(),
                before: change.after.clone(),
                after: change.before.clone(),
            })
            .collect();
        self.apply(paper, &back, pen, at);
        self.redo.push(step);
        spot_of(&back)
    }

    /// Does the last step that was taken back again; says where it was.
    pub fn redo<P: Paper>(&mut self, paper: &mut P, pen: &mut Pen, at: Millis) -> Option<Spot> {
        let step = self.redo.pop()?;
        self.apply(paper, &step, pen, at);
        let spot = spot_of(&step);
        self.push(step);
        spot
    }

    fn apply<P: Paper>(&mut self, paper: &mut P, step: &Step, pen: &mut Pen, at: Millis) {
        let mut values = flat(&paper.value());
        let mut ledger = paper.ledger().clone();
        for change in step {
            let there = values.get(&change.path);
            if !alike(there, change.before.as_ref()) || alike(there, change.after.as_ref()) {
                continue;
            }
            let mut change = Change {
                before: there.cloned(),
                ..change.clone()
            };
            set_down(&mut ledger, &mut change, pen, at, Hand::Comes);
            set(&mut values, &change.path, change.after);
        }
        *paper = of_flat(&values, ledger);
        self.now = flat(&paper.value());
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

    /// The history of a document out of such a text; anything else is a history
    /// that begins here.
    #[must_use]
    pub fn from_text<P: Paper>(paper: &P, text: &str) -> Self {
        let mut history = Self::of(paper);
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

fn spot_of(step: &Step) -> Option<Spot> {
    step.first().map(|change| spot(&change.path))
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
    use crate::job::ledger::{Ledger, Writer};
    use crate::job::step::{Mark, StepId};
    use crate::job::{Entry, Field, Job, Owner, Place};
    use crate::quantity::parse::Unit;

    const BORE: Place = Place::of_cylinder(2, Field::BoreD, 0);

    fn pen() -> Pen {
        Pen::new(Writer::of(1, 1))
    }

    fn typed(
        job: &mut Job,
        history: &mut History,
        pen: &mut Pen,
        (text, at): (&str, Millis),
        stay: Stay,
    ) {
        job.entries.put(BORE, Entry::new(text, Unit::Inch, at));
        assert_eq!(history.note(job, pen, at, stay), Noted::Changed);
    }

    #[test]
    fn everything_is_taken_back_and_done_again() {
        let begun = Demo::InchFive.job(1_700_000_000_000);
        let mut job = begun.clone();
        let mut history = History::of(&job);
        let mut pen = pen();
        assert_eq!(
            history.note(&mut job, &mut pen, 1, Stay::New),
            Noted::Nothing
        );
        // Three keys of one visit are one step.
        for (text, stay) in [("4", Stay::New), ("4.", Stay::Same), ("4.2", Stay::Same)] {
            typed(&mut job, &mut history, &mut pen, (text, 10), stay);
        }
        job.set_mark(Owner::Cylinder(2), StepId::Wall, Some(Mark::Done), 20);
        history.note(&mut job, &mut pen, 20, Stay::New);
        job.customer = "someone else".to_owned();
        job.left_out = vec![4];
        history.note(&mut job, &mut pen, 30, Stay::New);
        let last = job.clone();

        let mut spots = Vec::new();
        while history.can_undo() {
            spots.push(history.undo(&mut job, &mut pen, 40).unwrap());
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
            history.redo(&mut job, &mut pen, 50);
        }
        assert_eq!(plain(&job), plain(&last));
    }

    #[test]
    fn a_change_made_elsewhere_meanwhile_stays() {
        let mut job = Demo::InchFive.job(0);
        let mut history = History::of(&job);
        let mut pen = pen();
        typed(&mut job, &mut history, &mut pen, ("4.2", 10), Stay::New);
        // The other tab types into the same place.
        job.entries.put(BORE, Entry::new("4.3", Unit::Inch, 20));
        history.take_over(&job);
        history.undo(&mut job, &mut pen, 30);
        assert_eq!(job.entries.get(BORE).unwrap().text, "4.3");
    }

    #[test]
    fn a_history_outlives_a_reload_and_nonsense_is_none() {
        let mut job = Demo::InchFive.job(0);
        let before = job.entries.get(BORE).unwrap().text.clone();
        let mut history = History::of(&job);
        let mut pen = pen();
        typed(&mut job, &mut history, &mut pen, ("4.2", 10), Stay::New);
        let mut again = History::from_text(&job, &history.text());
        assert_eq!(again, history);
        again.undo(&mut job, &mut pen, 20);
        assert_eq!(job.entries.get(BORE).unwrap().text, before);
        for text in ["", "[]", "[[],[],[]]", "[[[1]],[]]", "{}"] {
            assert!(!History::from_text(&job, text).can_undo(), "{text}");
        }
    }
}
