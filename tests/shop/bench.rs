//! The bench a case is played on.

use crate::words;
use coldseat_core::ask::{DropAnswer, drop_of_cylinder, drop_of_sheet};
use coldseat_core::job::assess::{Assessed, assess_cylinder, assess_job};
use coldseat_core::job::deck::{Lock, lock};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::drop::DropSheet;
use coldseat_core::job::ledger::Rival;
use coldseat_core::job::loads::gauge_most;
use coldseat_core::job::model::reading::Standing;
use coldseat_core::job::step::Mark;
use coldseat_core::job::steps::together::{DeckMemory, DeckSeats};
use coldseat_core::job::verdict::{Next, State, StepReport};
use coldseat_core::job::{Entries, Entry, Field, Job, Owner, Place, UnitSystem, Unlock};
use coldseat_core::materials::MaterialId;
use coldseat_core::metrology::seat_deck::PointsTo;
use coldseat_core::thermal::drop_odds::drop_odds;

/// A job, or the cold drop without one.
pub enum Bench {
    Job(Box<Job>),
    Drop(DropSheet),
}

type Played = Result<(), String>;

impl Bench {
    pub fn from(what: &str) -> Self {
        let whole = |demo: Demo| Self::Job(Box::new(demo.job(1)));
        let engine = |demo: Demo| {
            let (engine, entries) = demo.profile(1);
            Self::Job(Box::new(Job::new(engine, entries)))
        };
        match what {
            "demo 1" => whole(Demo::InchFive),
            "demo 2" => whole(Demo::MetricEight),
            "engine 1" => engine(Demo::InchFive),
            "engine 2" => engine(Demo::MetricEight),
            "cold drop" => Self::Drop(DropSheet {
                entries: Entries::default(),
                units: UnitSystem::Inch,
                sleeve_material: MaterialId::GrayIron,
                block_material: MaterialId::GrayIron,
            }),
            other => panic!("from what: {other}"),
        }
    }

    pub fn play(&mut self, verb: &str, rest: &str) -> Played {
        match (verb, &mut *self) {
            ("Says", Self::Job(job)) => says(job, rest),
            ("Says", Self::Drop(sheet)) => drop_says(sheet, rest),
            ("Type", _) => {
                let (what, text) = rest.rsplit_once(": ").unwrap();
                self.put(&words::spot(what), text)
            }
            ("Clear", _) => self.put(&words::spot(rest), ""),
            ("Leave out", Self::Job(job)) => {
                job.left_out.push(rest.parse().unwrap());
                Ok(())
            }
            ("Mark", Self::Job(job)) => {
                let (what, mark) = rest.rsplit_once(": ").unwrap();
                let (whose, step) = what.split_once(", ").unwrap();
                let mark = (mark == "done").then_some(Mark::Done);
                job.set_mark(words::owner(whose).unwrap(), words::step(step), mark, 5);
                Ok(())
            }
            ("Release", Self::Job(job)) => {
                let (deck, reason) = rest.split_once(": ").unwrap();
                let Some(Owner::Bank(bank)) = words::owner(deck) else {
                    panic!("which deck: {rest}");
                };
                let reason = reason.to_owned();
                job.unlocks.insert(bank, Unlock { reason, at: 5 });
                Ok(())
            }
            ("Other device", Self::Job(job)) => {
                let (what, text) = rest.rsplit_once(": ").unwrap();
                let place = words::spot(what)[0];
                let unit = serde_json::to_value(job.unit(place.field)).unwrap();
                let other = Rival {
                    value: serde_json::json!([text, unit, 4]),
                    at: 0,
                    by: None,
                };
                job.ledger.rivals.insert(place.path(), vec![other]);
                Ok(())
            }
            _ => panic!("what to do: {verb}: {rest}"),
        }
    }

    fn put(&mut self, places: &[Place], text: &str) -> Played {
        let (entries, units) = match self {
            Self::Job(job) => (&mut job.entries, job.engine.units),
            Self::Drop(sheet) => (&mut sheet.entries, sheet.units),
        };
        for place in places {
            entries.put(*place, Entry::new(text, place.field.unit(units), 5));
        }
        Ok(())
    }
}

fn expect(said: &str, wanted: &str) -> Played {
    if said == wanted {
        Ok(())
    } else {
        Err(format!("says {said}"))
    }
}

fn drop_says(sheet: &DropSheet, rest: &str) -> Played {
    let wanted = rest.strip_prefix("cold drop: ").unwrap();
    match drop_of_sheet(sheet) {
        DropAnswer::Ready(view) => {
            let odds = drop_odds(&view.case.drop, view.case.unknowns()).unwrap();
            expect(words::signal(view.by_time(&odds).0), wanted)
        }
        DropAnswer::Lacks(lacks) if !lacks.unusable.is_empty() => expect("mend", wanted),
        DropAnswer::Lacks(_) => expect("wait", wanted),
    }
}

fn says(job: &Job, rest: &str) -> Played {
    let (what, wanted) = rest.split_once(": ").unwrap();
    let all = assess_job(job, &mut DeckMemory::default());
    if let Some(hole) = what.strip_prefix("highest pull of ") {
        return highest(job, hole.parse().unwrap(), wanted);
    }
    if let Some(hole) = what.strip_prefix("clearance in the bath of ") {
        return in_the_bath(job, hole.parse().unwrap(), wanted);
    }
    if let Some(deck) = what.strip_suffix(" together") {
        let Owner::Bank(bank) = words::owner(deck).unwrap() else {
            panic!("no deck: {rest}");
        };
        let judged = all.decks.iter().find(|deck| deck.bank == bank).unwrap();
        return together(judged, wanted);
    }
    if let Some((whose, step)) = what.split_once(", ") {
        let owner = words::owner(whose).unwrap();
        let report = report(&all, owner, step);
        return step_says(job, report, wanted);
    }
    match words::owner(what).unwrap() {
        Owner::Cylinder(cylinder) => {
            let report = &all.cylinders[usize::from(cylinder) - 1];
            let state = match report.state {
                State::LeftOut => "left out",
                State::NotBegun => "to do",
                State::InWork(..) => "in work",
                State::Marked => "marked",
                State::Seated => "seated",
                State::Look => "look",
                State::Stop => "stop",
            };
            expect(state, wanted)
        }
        Owner::Bank(bank) => {
            let lock = match lock(job, &all.cylinders, bank) {
                Lock::Open => "open",
                Lock::OpenBeside(_) => "open beside",
                Lock::Locked(_) | Lock::Together(_) | Lock::Disputed(_) => "locked",
                Lock::ByHand(..) => "by hand",
                Lock::NoSleeves => "no sleeves",
            };
            expect(lock, wanted)
        }
        Owner::Block => panic!("what of the block: {rest}"),
    }
}

/// What the sleeves of a deck point to; of those that stand out by number, all others
/// home at 0.99 or more.
fn together(deck: &DeckSeats, wanted: &str) -> Played {
    let out = deck.stand_out();
    let others_home = deck
        .sleeves()
        .all(|(cylinder, _, chance)| out.contains(&cylinder) || chance >= 0.99);
    let said = match deck.judged.points_to {
        PointsTo::Home => "home".to_owned(),
        PointsTo::AllAlike => "all alike".to_owned(),
        PointsTo::Undecided => "undecided".to_owned(),
        PointsTo::StandsOut(_) if !others_home => "others unsure".to_owned(),
        PointsTo::StandsOut(_) => format!("{out:?} stands out"),
    };
    expect(&said, wanted)
}

fn highest(job: &Job, cylinder: u8, wanted: &str) -> Played {
    let most = gauge_most(job, cylinder);
    match (most, wanted) {
        (Standing::Known((most, _)), wanted) => {
            let unit = job.unit(Field::PullGauge);
            let said = unit.from_si(most.as_pa());
            let near = |wanted: f64| (said / wanted - 1.0).abs() < 0.01;
            match wanted.parse::<f64>() {
                Ok(number) if near(number) => Ok(()),
                _ => Err(format!("says {said}")),
            }
        }
        (_, wanted) => expect("not known", wanted),
    }
}

fn in_the_bath(job: &Job, cylinder: u8, wanted: &str) -> Played {
    let report = assess_cylinder(job, cylinder);
    let DropAnswer::Ready(view) = drop_of_cylinder(job, &report) else {
        return expect("not known", wanted);
    };
    let said = job
        .unit(Field::BoreD)
        .from_si(view.band.nominal.clearance_bath.as_m());
    match wanted.parse::<f64>() {
        Ok(number) if (said - number).abs() < 5e-6 => Ok(()),
        _ => Err(format!("says {said}")),
    }
}

fn report<'a>(all: &'a Assessed, owner: Owner, step: &str) -> &'a StepReport {
    let id = words::step(step);
    let found = match owner {
        Owner::Cylinder(cylinder) => all.cylinders[usize::from(cylinder) - 1].step(id),
        _ => {
            let own = all.whole.iter().find(|(of, _)| *of == owner).unwrap();
            own.1.iter().find(|s| s.id == id)
        }
    };
    found.unwrap()
}

fn step_says(job: &Job, report: &StepReport, wanted: &str) -> Played {
    let (signal, more) = match wanted.split_once(", ") {
        Some((signal, more)) => (signal, Some(more)),
        None => (wanted, None),
    };
    let said = words::signal(report.signal);
    let told = || format!("says {said}, {:?}, {:?}", report.next, report.number);
    if said != signal {
        return Err(told());
    }
    let fits = match more {
        None => true,
        Some(more) => {
            let (verb, what) = more.split_once(' ').unwrap();
            match (verb, report.next) {
                ("mend", Next::Mend(spot)) => words::is_spot(spot, what),
                ("answer", Next::Answer(place)) => words::spot(what).contains(&place),
                ("measure", Next::Measure(missing)) | ("reread", Next::ReadAgain(missing)) => {
                    words::spot(what)
                        .iter()
                        .any(|p| p.owner == missing.owner && p.field == missing.field)
                }
                ("number", _) => report.number.is_some_and(|number| {
                    let unit = number.measure.unit(job.engine.units);
                    (unit.from_si(number.si) - what.parse::<f64>().unwrap()).abs() < 5e-6
                }),
                _ => false,
            }
        }
    };
    if fits { Ok(()) } else { Err(told()) }
}
