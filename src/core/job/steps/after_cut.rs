//! After the deck cut: what becomes of everything that is measured from the deck,
//! of the metal that may come off the block at all, and how rough the deck is.
//!
//! Sizes and ranges are the engine's, entered once; the cut is each deck's own:
//! decided on, before that planned. A size that is outside its range is brought
//! back and measured again, ticked as done, or left with a reason; one that is only
//! ticked is no measurement. An item of which nothing is entered is not on this
//! engine; one that is entered in part asks for the rest.

use crate::job::model::field::Field;
use crate::job::model::field_read::DONE;
use crate::job::model::from_deck::FromDeck;
use crate::job::model::job::Job;
use crate::job::model::part::SleeveEnds;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Missing, Standing};
use crate::job::model::readings::Readings;
use crate::job::model::step::{Mark, StepId};
use crate::job::steps::finish::deck_cut;
use crate::job::steps::tools::TINY_M;
use crate::job::verdict::next::Next;
use crate::job::verdict::signal::Signal;
use crate::planning::after_deck::{After, AfterState, DeckItem, FromDeck as Before, after_deck};
use crate::quantity::bounds;
use crate::quantity::{Length, ties};

/// What was said of a size that the cut put outside its range.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RecutSaid {
    /// Nothing yet.
    Nothing,
    /// That it was brought back.
    Done,
    /// Why it was not.
    Why(String),
}

/// A size measured from the deck.
#[derive(Clone, Debug, PartialEq)]
pub struct DeckSize {
    /// Before the cut.
    pub before: Length,
    /// Its least.
    pub low: Length,
    /// Its most, where it has one.
    pub high: Option<Length>,
    /// The deepest cut that leaves it in its range; below zero it is outside
    /// before any cut.
    pub bears: Length,
    /// As the cut leaves it, worked out.
    pub worked: After,
    /// As it was measured again after the cut.
    pub measured: Option<After>,
    /// What was said of it.
    pub said: RecutSaid,
}

impl DeckSize {
    /// As it is known best: measured again, else worked out.
    #[must_use]
    pub fn stands(&self) -> After {
        self.measured.unwrap_or(self.worked) // not measured again: as worked out
    }

    /// Whether it is outside its range and nobody has said what became of it: a tick
    /// that a measurement gainsays is none.
    #[must_use]
    pub fn is_open(&self) -> bool {
        self.stands().state != AfterState::Holds
            && match self.said {
                RecutSaid::Nothing => true,
                RecutSaid::Done => self.measured.is_some(),
                RecutSaid::Why(_) => false,
            }
    }
}

/// What may come off the block.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutBudget {
    /// Earlier cuts together.
    pub so_far: Length,
    /// The most, all together.
    pub most: Length,
    /// With this one.
    pub total: Length,
    /// What is left after it; negative: more is cut than may be.
    pub left: Length,
}

impl CutBudget {
    /// By how much it is overdrawn, if it is.
    #[must_use]
    pub fn over(&self) -> Option<Length> {
        let over_m = -self.left.as_m();
        (over_m > TINY_M).then(|| Length::from_m(over_m))
    }
}

/// How rough the deck is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeckFinish {
    /// Index of the name of its roughness.
    pub kind: u8,
    /// The roughest that is allowed.
    pub most: Length,
    /// As measured.
    pub measured: Option<Length>,
}

impl DeckFinish {
    /// Whether it was measured and is rougher than allowed.
    #[must_use]
    pub fn is_rough(&self) -> bool {
        self.measured
            .is_some_and(|m| !ties::at_most(m.as_m(), self.most.as_m()))
    }
}

/// What bears the least cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BearsLeast {
    /// A size measured from the deck.
    Size(FromDeck),
    /// The block.
    Block,
}

/// A deck after its cut.
#[derive(Clone, Debug, PartialEq)]
pub struct AfterCut {
    /// Which.
    pub bank: u8,
    /// The cut.
    pub cut: Length,
    /// Whether it was decided on, or somebody said that the planned one was made.
    pub made: bool,
    /// Each size.
    pub sizes: Vec<(FromDeck, Standing<DeckSize>)>,
    /// What may come off the block.
    pub budget: Standing<CutBudget>,
    /// How rough it is.
    pub finish: Standing<DeckFinish>,
}

const fn of_engine(field: Field, index: u8) -> Place {
    Place {
        index,
        ..Place::of_engine(field)
    }
}

const fn wanted(owner: Owner, field: Field) -> Missing {
    Missing {
        owner,
        field,
        places: 1,
    }
}

/// A size and its range as the engine's sheet has them.
struct Sheet {
    before: f64,
    low: f64,
    high: Option<f64>,
}

impl Sheet {
    /// `None` where nothing of it is entered.
    fn of(job: &Job, item: FromDeck, index: u8) -> Result<Option<Self>, Lack> {
        let read = |field| job.reading(of_engine(field, index)).number();
        let before = read(Field::FromDeckBefore)?;
        let low = read(Field::FromDeckLeast)?;
        let high = read(Field::FromDeckMost)?;
        if (before, low, high) == (None, None, None) {
            return Ok(None);
        }
        let lacks = |field| Lack::Missing(wanted(Owner::Block, field));
        let before = before.ok_or_else(|| lacks(Field::FromDeckBefore))?;
        let low = low.ok_or_else(|| lacks(Field::FromDeckLeast))?;
        if high.is_none() && item.has_most() {
            return Err(lacks(Field::FromDeckMost));
        }
        Ok(Some(Self { before, low, high }))
    }

    /// What a cut of a size of so much makes of it.
    fn after(&self, item: FromDeck, size: f64, cut: Length) -> Result<After, Lack> {
        let size = Length::from_m(size);
        let one = DeckItem {
            name: String::new(),
            before: if item.is_height() {
                Before::Height(size)
            } else {
                Before::Depth(size)
            },
            low: Length::from_m(self.low),
            high: Length::from_m(self.high.unwrap_or(bounds::FROM_DECK.hi)), // no most
        };
        let after = after_deck(cut, &[one])?;
        let lacks = || Lack::Missing(wanted(Owner::Block, Field::FromDeckBefore));
        after.first().copied().ok_or_else(lacks)
    }
}

fn size(r: &Readings, item: FromDeck, index: u8, cut: Length) -> Result<Option<DeckSize>, Lack> {
    let Some(sheet) = Sheet::of(r.job, item, index)? else {
        return Ok(None);
    };
    let here = |field| Place {
        owner: r.owner,
        field,
        index,
    };
    let measured = match r.job.reading(here(Field::FromDeckAfter)).number()? {
        Some(now) => Some(sheet.after(item, now, Length::from_m(0.0))?),
        None => None,
    };
    let place = here(Field::RecutSaid);
    let said = match (r.job.reading(place).number()?, r.job.entries.get(place)) {
        (Some(_), Some(entry)) if entry.text.trim().eq_ignore_ascii_case(DONE) => RecutSaid::Done,
        (Some(_), Some(entry)) => RecutSaid::Why(entry.text.trim().to_owned()),
        _ => RecutSaid::Nothing,
    };
    let bears_m = match sheet.high {
        Some(high) if item.is_height() => high - sheet.before,
        _ => sheet.before - sheet.low,
    };
    Ok(Some(DeckSize {
        before: Length::from_m(sheet.before),
        low: Length::from_m(sheet.low),
        high: sheet.high.map(Length::from_m),
        bears: Length::from_m(bears_m),
        worked: sheet.after(item, sheet.before, cut)?,
        measured,
        said,
    }))
}

/// What is there, or that there is no such thing here.
fn standing<T>(worked: Result<Option<T>, Lack>) -> Standing<T> {
    match worked {
        Ok(Some(known)) => Standing::Known(known),
        Ok(None) => Standing::NotHere,
        Err(lack) => Standing::of(Err(lack)),
    }
}

fn budget(r: &Readings, cut: Length) -> Result<Option<CutBudget>, Lack> {
    let lacks = |field| Lack::Missing(wanted(Owner::Block, field));
    let so_far = r.engine_if(Field::BlockCutSoFar)?;
    let most = r.engine_if(Field::BlockCutMost)?;
    if (so_far, most) == (None, None) {
        return Ok(None);
    }
    let so_far = so_far.ok_or_else(|| lacks(Field::BlockCutSoFar))?;
    let most = most.ok_or_else(|| lacks(Field::BlockCutMost))?;
    Ok(Some(CutBudget {
        so_far: Length::from_m(so_far),
        most: Length::from_m(most),
        total: Length::from_m(so_far + cut.as_m()),
        left: Length::from_m(most - so_far - cut.as_m()),
    }))
}

fn finish(r: &Readings) -> Result<Option<DeckFinish>, Lack> {
    let lacks = |field| Lack::Missing(wanted(Owner::Block, field));
    let kind = r.engine_if(Field::DeckFinishKind)?;
    let most = r.engine_if(Field::DeckFinishMost)?;
    let measured = r.own(Field::DeckFinish)?;
    if (kind, most, measured) == (None, None, None) {
        return Ok(None);
    }
    let most = most.ok_or_else(|| lacks(Field::DeckFinishMost))?;
    let kind = kind.ok_or_else(|| lacks(Field::DeckFinishKind))?;
    Ok(Some(DeckFinish {
        kind: kind as u8,
        most: Length::from_m(most),
        measured: measured.map(Length::from_m),
    }))
}

/// What the cut of a deck does, or is going to do.
///
/// # Errors
/// No cut, decided or planned, that can be used.
pub fn after_cut(job: &Job, bank: u8) -> Result<AfterCut, Lack> {
    let r = &Readings::new(job, Owner::Bank(bank));
    let (cut_m, made) = deck_cut(r)?;
    let cut = Length::from_m(cut_m);
    let sizes = FromDeck::ALL
        .into_iter()
        .zip(0..)
        .map(|(item, index)| (item, standing(size(r, item, index, cut))))
        .collect();
    Ok(AfterCut {
        bank,
        cut,
        made,
        sizes,
        budget: standing(budget(r, cut)),
        finish: standing(finish(r)),
    })
}

/// What a standing that is not known makes of a verdict.
fn unknown<T>(standing: &Standing<T>, wants: impl Fn(&Missing) -> Next) -> Option<(Signal, Next)> {
    match standing {
        Standing::Known(_) | Standing::NotHere => None,
        Standing::Missing(missing) => Some((Signal::Wait, wants(missing))),
        Standing::Unusable(unusable) => Some((Signal::Look, Next::Mend(unusable.spot))),
        Standing::Refused(_) => Some((Signal::Look, Next::Refused)),
    }
}

impl AfterCut {
    /// The sizes that are known.
    pub fn known(&self) -> impl Iterator<Item = (FromDeck, &DeckSize)> {
        self.sizes
            .iter()
            .filter_map(|(item, standing)| Some((*item, standing.known()?)))
    }

    /// The deepest cut that every size and the block bear, and which bears no more:
    /// the target before the cut. `None` where nothing is entered.
    #[must_use]
    pub fn bears(&self) -> Option<(Length, BearsLeast)> {
        let sizes = self
            .known()
            .map(|(item, size)| (size.bears, BearsLeast::Size(item)));
        let block = self.budget.known().map(|budget| {
            let left_m = budget.most.as_m() - budget.so_far.as_m();
            (Length::from_m(left_m), BearsLeast::Block)
        });
        sizes
            .chain(block)
            .min_by(|(a, _), (b, _)| a.as_m().total_cmp(&b.as_m()))
    }

    /// Whether every size is in its range, or somebody has said what became of it.
    #[must_use]
    pub fn is_settled(&self) -> bool {
        self.sizes.iter().all(|(_, standing)| match standing {
            Standing::Known(size) => !size.is_open(),
            Standing::NotHere => true,
            Standing::Missing(_) | Standing::Unusable(_) | Standing::Refused(_) => false,
        })
    }

    /// What it says by itself, the worst of it; nothing where all is well.
    fn says(&self) -> Option<(Signal, Next)> {
        let overdrawn = self.budget.known().and_then(CutBudget::over);
        let block = overdrawn.map(|over| (Signal::Stop, Next::BlockCutMost(over)));
        let sizes = self.known().filter_map(|(item, size)| {
            let After { state, by, .. } = size.stands();
            match state {
                AfterState::Holds => None,
                AfterState::TooDeep => Some((Signal::Stop, Next::DeckSizePast(item, by))),
                AfterState::Recut if !self.made => {
                    Some((Signal::Look, Next::DeckSizeWill(item, by)))
                }
                AfterState::Recut if size.is_open() => {
                    Some((Signal::Look, Next::DeckSizeRecut(item, by)))
                }
                AfterState::Recut => None,
            }
        });
        let rough = self.finish.known().filter(|f| f.is_rough());
        let rough = rough.map(|_| (Signal::Look, Next::DeckRough));
        let ask = |missing: &Missing| Next::Measure(*missing);
        let open = self.sizes.iter().filter_map(|(item, standing)| {
            unknown(standing, |m| Next::DeckSizeWants(*item, m.field))
        });
        let all = block
            .into_iter()
            .chain(sizes)
            .chain(rough)
            .chain(open)
            .chain(unknown(&self.budget, ask))
            .chain(unknown(&self.finish, ask));
        // The first of the worst.
        all.reduce(|worst, next| if next.0 > worst.0 { next } else { worst })
    }

    /// A verdict of the plan, or what this says where that is worse.
    #[must_use]
    pub fn over(&self, plan: (Signal, Next)) -> (Signal, Next) {
        match self.says() {
            Some(own) if own.0 > plan.0 => own,
            _ => plan,
        }
    }

    /// What is not there: the rest of what the engine's sheet began, and once the cut
    /// is decided on what is to be measured after it.
    #[must_use]
    pub fn lacks(&self) -> Vec<Missing> {
        let mut lacks: Vec<Missing> = Vec::new();
        let mut note = |missing: Missing| match lacks.iter_mut().find(|m| m.field == missing.field)
        {
            Some(same) => same.places += missing.places,
            None => lacks.push(missing),
        };
        let owner = Owner::Bank(self.bank);
        for (_, standing) in &self.sizes {
            match standing {
                Standing::Missing(missing) => note(*missing),
                Standing::Known(size) if self.made => {
                    let outside = size.worked.state != AfterState::Holds;
                    if outside && size.measured.is_none() {
                        note(wanted(owner, Field::FromDeckAfter));
                    }
                }
                _ => {}
            }
        }
        if let Standing::Missing(missing) = &self.budget {
            note(*missing);
        }
        match &self.finish {
            Standing::Missing(missing) => note(*missing),
            Standing::Known(finish) if self.made && finish.measured.is_none() => {
                note(wanted(owner, Field::DeckFinish));
            }
            _ => {}
        }
        lacks
    }
}

/// Whether a deck that is cut has a size outside its range of which nobody has said
/// what became, or one that cannot be judged. Sleeves left proud are not decked.
#[must_use]
pub fn any_open(job: &Job) -> bool {
    if job.sleeve_ends() == Ok(SleeveEnds::Proud) {
        return false;
    }
    (0..job.engine.banks()).any(|bank| match after_cut(job, bank) {
        _ if job.cylinders_of(bank).next().is_none() => false,
        Ok(after) => after.made && !after.is_settled(),
        Err(Lack::Unusable(_) | Lack::Refused(_)) => true,
        // Said to be cut, and nobody knows by how much.
        Err(Lack::Missing(_)) => {
            let done = job.mark(Owner::Bank(bank), StepId::Deck) == Some(&Mark::Done);
            done && is_any_entered(job)
        }
    })
}

/// Whether the sheet names anything that is measured from the deck.
fn is_any_entered(job: &Job) -> bool {
    const OF_SHEET: [Field; 3] = [
        Field::FromDeckBefore,
        Field::FromDeckLeast,
        Field::FromDeckMost,
    ];
    OF_SHEET
        .into_iter()
        .flat_map(|field| Place::all(Owner::Block, field))
        .any(|place| job.entries.get(place).is_some())
}
