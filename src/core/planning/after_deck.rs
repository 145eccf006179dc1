//! After the deck cut: what is measured from the deck, a depth or a height, is
//! another by the cut.

use crate::quantity::report::Fault;
use crate::quantity::{Length, bounds, ties};

/// How a size is measured from the deck.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FromDeck {
    /// Below it: loses the cut.
    Depth(Length),
    /// Above it: gains the cut.
    Height(Length),
}

/// A size before the cut, and its range.
#[derive(Clone, Debug, PartialEq)]
pub struct DeckItem {
    /// What it is.
    pub name: String,
    /// Its size before the cut.
    pub before: FromDeck,
    /// Least size.
    pub low: Length,
    /// Greatest size.
    pub high: Length,
}

/// What becomes of a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AfterState {
    /// Within its range.
    Holds,
    /// Can be cut to its range.
    Recut,
    /// Cut too far already: no cutting brings it back.
    TooDeep,
}

impl AfterState {
    /// Its name in the evaluator.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Holds => "holds",
            Self::Recut => "recut",
            Self::TooDeep => "too_deep",
        }
    }
}

/// A size after the cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct After {
    /// Its size now.
    pub now: Length,
    /// What becomes of it.
    pub state: AfterState,
    /// How far it lies outside its range; 0 within it.
    pub by: Length,
}

/// Most sizes.
pub const MOST_ITEMS: usize = 1000;

/// What a deck cut makes of each size.
///
/// # Errors
/// Lengths outside their ranges, a range whose low end is above its high.
///
/// # Example
/// Worked by hand: 0.006 in off the deck takes a counterbore of 0.298 in below its
/// 0.295, which can be cut again; a dowel of 0.500 in stands 0.006 too proud.
/// ```
/// use coldseat_core::planning::after_deck::{AfterState, DeckItem, FromDeck, after_deck};
/// use coldseat_core::quantity::Length;
/// let inch = Length::from_inch;
/// let item = |before, low, high| DeckItem { name: String::new(), before, low: inch(low), high: inch(high) };
/// let after = after_deck(inch(0.006), &[
///     item(FromDeck::Depth(inch(0.298)), 0.295, 0.297),
///     item(FromDeck::Height(inch(0.500)), 0.490, 0.500),
/// ])?;
/// assert_eq!([after[0].state, after[1].state], [AfterState::Recut, AfterState::Recut]);
/// assert!((after[0].by.as_thou() - 3.0).abs() < 1e-6 && (after[1].by.as_thou() - 6.0).abs() < 1e-6);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn after_deck(cut: Length, items: &[DeckItem]) -> Result<Vec<After>, Fault> {
    let cut = bounds::REMOVAL.check("cut_m", cut.as_m())?;
    if items.len() > MOST_ITEMS {
        return Err(Fault::new(
            "items",
            format!("{} items: at most {MOST_ITEMS} are taken", items.len()),
        ));
    }
    items
        .iter()
        .enumerate()
        .map(|(i, item)| {
            let name = |field: &str| format!("items[{i}].{field}");
            let (now, deeper_is_more) = match item.before {
                FromDeck::Depth(d) => (
                    bounds::FROM_DECK.check(&name("depth_m"), d.as_m())? - cut,
                    true,
                ),
                FromDeck::Height(h) => (
                    bounds::FROM_DECK.check(&name("height_m"), h.as_m())? + cut,
                    false,
                ),
            };
            let low = bounds::FROM_DECK.check(&name("low_m"), item.low.as_m())?;
            let high = bounds::FROM_DECK.check(&name("high_m"), item.high.as_m())?;
            if low > high {
                return Err(Fault::new(
                    name("low_m"),
                    format!("{low} m is above the high end, {high} m: swap them"),
                ));
            }
            let below = !ties::at_least(now, low);
            let above = !ties::at_most(now, high);
            let state = match (below, above) {
                (false, false) => AfterState::Holds,
                // Metal is there to be cut: a depth too small, a height too great.
                (true, _) if deeper_is_more => AfterState::Recut,
                (_, true) if !deeper_is_more => AfterState::Recut,
                _ => AfterState::TooDeep,
            };
            let by = if below {
                low - now
            } else if above {
                now - high
            } else {
                0.0
            };
            Ok(After {
                now: Length::from_m(now),
                state,
                by: Length::from_m(by),
            })
        })
        .collect()
}
