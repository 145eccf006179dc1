//! A gauge that types: whatever comes as keys becomes a reading, stands in its
//! field, is offered, or is refused aloud; and the hand goes on in its own order.
//! What keys mean is the core's (`Burst`, `said`, `place_after`); here they are
//! put where they belong and shown.

mod keys;
mod wire;

use crate::browser;
use crate::caret;
use crate::feedback;
use crate::heard::{self, Tone};
use crate::parts::keys::{Counting, keyed};
use crate::parts::reading::input_id;
use crate::screens::{Route, View};
use crate::state::{State, Target};
use crate::texts as t;
use crate::texts::Spoken;
use crate::words;
use coldseat_core::ask::document::Speech;
use coldseat_core::ask::{
    Checked, Digits, Field, HandOrder, Measure, NoReading, Owner, Place, Said, StepId, UnitSystem,
    Why, empty_after, next_empty, place_after, place_before, said,
};
use leptos::prelude::*;

pub use keys::listen;
pub use wire::{WireStatus, Wired, has_ports};

/// Why a reading stands nowhere yet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Because {
    /// No field waited for it.
    NoField,
    /// The same came twice at once.
    Twice,
    /// It came without its end.
    CutOff,
    /// One before it still waits for a word.
    Behind,
}

/// A reading that came and stands nowhere yet.
#[derive(Clone, Debug, PartialEq)]
pub struct Caught {
    /// As it came.
    pub text: String,
    /// Why it waits.
    pub because: Because,
    /// Where it began, if a field had the hand.
    pub began: Option<(Target, Place)>,
}

/// What came and was no reading of its place.
#[derive(Clone, Debug, PartialEq)]
pub struct Refused {
    /// As it came.
    pub text: String,
    /// Why.
    pub why: NotTaken,
}

/// Why something that came is no reading.
#[derive(Clone, Debug, PartialEq)]
pub enum NotTaken {
    /// Not of this field, in these units.
    OfField(Why, Field, UnitSystem),
    /// The line of a wire.
    OfWire(NoReading),
    /// Nothing may be changed there.
    ReadOnly,
}

/// What the page knows of gauges.
#[derive(Clone, Copy)]
pub struct Gauge {
    /// Readings that wait for a word, the oldest first.
    pub caught: RwSignal<Vec<Caught>>,
    /// What was refused last, until something is taken or it is understood.
    pub refused: RwSignal<Option<Refused>>,
    /// The order of the hand, where one is chosen.
    pub hand: RwSignal<Option<HandOrder>>,
    /// The reading that was taken last.
    pub last: RwSignal<Option<(Place, String)>>,
    /// Whether the wall view is open.
    pub wall: RwSignal<bool>,
    /// Whether the page speaks.
    pub speech: RwSignal<Option<Speech>>,
    /// It was to speak and there is no voice.
    pub no_voice: RwSignal<bool>,
    /// That was read: it is said once.
    pub no_voice_read: RwSignal<bool>,
    /// The step that is open, and whose.
    pub step: RwSignal<Option<(Owner, StepId)>>,
    /// A gauge on a wire.
    pub wire: Wired,
    /// The place to which the hand goes and which is not on the screen yet.
    going: StoredValue<Option<Place>>,
}

impl Gauge {
    /// Nothing came yet.
    #[must_use]
    pub fn new() -> Self {
        Self {
            caught: RwSignal::new(waiting()),
            refused: RwSignal::new(None),
            hand: RwSignal::new(None),
            last: RwSignal::new(None),
            wall: RwSignal::new(false),
            speech: RwSignal::new(None),
            no_voice: RwSignal::new(false),
            no_voice_read: RwSignal::new(false),
            step: RwSignal::new(None),
            wire: Wired::new(),
            going: StoredValue::new(None),
        }
    }
}

/// Where readings that stand nowhere outlive a reload of the tab.
const CAUGHT: &str = "coldseat/caught";

/// What waited when the page was left.
fn waiting() -> Vec<Caught> {
    let kept = browser::session_text(CAUGHT).unwrap_or_default();
    let of = |text: &str| Caught {
        text: text.to_owned(),
        because: Because::NoField,
        began: None,
    };
    kept.lines().map(of).collect()
}

impl Gauge {
    /// Whether the page speaks from now on.
    pub fn set_speech(self, speech: Option<Speech>) {
        self.speech.set(speech);
        if speech.is_some() {
            heard::wake_voices();
        }
    }
}

impl State {
    /// How the pad takes digits at a place, and a keyboard with it; as typed where no
    /// pad is used.
    #[must_use]
    pub fn counts(self, target: Target, place: Place) -> Counting {
        let is_length = place.field.spec().measure == Measure::Length;
        match self.ui.counting.get() {
            _ if !is_length || !self.ui.pad_on.get() => Counting::AsTyped,
            Counting::Last if untrack(|| self.session.reading_before(target, place)).is_none() => {
                Counting::FromRight
            }
            counting => counting,
        }
    }

    /// What a key of a keyboard makes of a reading.
    pub fn keyed(self, target: Target, place: Place, typed: String) -> String {
        let counting = untrack(|| self.counts(target, place));
        let (unit, stood) = untrack(|| {
            let unit = place.field.unit(self.session.units(target));
            (unit, self.session.text(target, place))
        });
        let text = self.ui.typing.try_update(|typing| {
            if counting == Counting::AsTyped {
                typing.digits = None;
                typing.begun = true;
                typed.clone()
            } else {
                words::marked_where_counted(&typed, keyed(&typed, &stood, typing, unit))
            }
        });
        text.unwrap_or(typed)
    }

    /// Opens the wall view: a place waits and the screen stays on.
    pub fn open_wall(self) {
        self.ui.menu.set(false);
        self.gauge.last.set(None);
        self.gauge.wall.set(true);
        feedback::stay_awake();
        // What is looked at stays in sight: where nothing of it is empty nobody is led on.
        let here = self.gauge.step.get_untracked().map(|(owner, _)| owner);
        if let Some((_, place)) = untrack(|| self.waiting_place())
            && here == Some(place.owner)
        {
            self.hand_to(place);
        }
    }

    /// After a tap elsewhere on the screen the hand is where it was.
    pub fn hand_stays(self) {
        if self.gauge.hand.get_untracked().is_some()
            && let Some((_, place)) = self.ui.active.get_untracked()
        {
            caret::focus_and_select(&input_id(place));
        }
    }

    /// A burst has come whole: it is put where it began, or offered. Says whether it
    /// stands.
    fn burst_ended(self, began: Option<(Target, Place)>, text: String, is_twice: bool) -> bool {
        let behind = self
            .gauge
            .caught
            .with_untracked(|caught| !caught.is_empty());
        let because = match began {
            _ if behind => Because::Behind,
            None => Because::NoField,
            Some(_) if is_twice => Because::Twice,
            Some(at) => return self.put(at, &text),
        };
        self.catch(Caught {
            text,
            because,
            began,
        });
        false
    }

    /// Keeps a reading that has no place until the person says where it belongs.
    fn catch(self, caught: Caught) {
        heard::tone(self, Tone::Asked);
        self.speaks(vec![Spoken::NoField], Tone::Refused, None);
        self.gauge.caught.update(|all| all.push(caught));
        self.keep_caught();
    }

    fn keep_caught(self) {
        let texts = self.gauge.caught.with_untracked(|all| {
            let texts: Vec<&str> = all.iter().map(|caught| caught.text.as_str()).collect();
            texts.join("\n")
        });
        browser::set_session_text(CAUGHT, &texts);
    }

    /// Puts what a gauge said into a place and goes on; says whether all of it stands.
    fn put(self, at: (Target, Place), text: &str) -> bool {
        let (target, place) = at;
        let units = untrack(|| self.session.units(target));
        if untrack(|| self.session.is_read_only(target)) {
            return self.refuse(text.to_owned(), NotTaken::ReadOnly);
        }
        let digits = match untrack(|| self.counts(target, place)) {
            Counting::AsTyped => Digits::AsTheyStand,
            Counting::FromRight | Counting::Last => Digits::FromRight,
        };
        let all = said(text, place.field, units, digits, browser::now());
        let mut at = Some(place);
        let mut taken = None;
        for said in all {
            let entry = match (said, at) {
                (Said::Refused(text, why), _) => {
                    return self.refuse(text, NotTaken::OfField(why, place.field, units));
                }
                (Said::Reading(entry), None) => {
                    self.catch(Caught {
                        text: entry.text,
                        because: Because::NoField,
                        began: None,
                    });
                    continue;
                }
                (Said::Reading(entry), Some(_)) => entry,
            };
            let Some(place) = at else { continue };
            let typed = entry.text.clone();
            self.session.type_entry(target, place, entry);
            self.session.leaves_place();
            self.session.reading_done();
            self.gauge.refused.set(None);
            let tone = match untrack(|| self.session.checked(target, place)) {
                Checked::Good(_) | Checked::NotHere | Checked::Empty => Tone::Taken,
                Checked::Questioned(..) => Tone::Asked,
                Checked::Refused(_) => Tone::Refused,
            };
            heard::tone(self, tone);
            at = self.goes_on(target, place);
            self.gauge.last.set(Some((place, typed.clone())));
            taken = Some((typed, place.field.unit(units), tone));
        }
        if let Some((text, unit, tone)) = taken {
            self.speaks(vec![Spoken::Read(text, unit)], tone, at);
        }
        true
    }

    /// What came is no reading of its place: it is shown and stands nowhere.
    fn refuse(self, text: String, why: NotTaken) -> bool {
        heard::tone(self, Tone::Refused);
        self.speaks(vec![Spoken::Refused], Tone::Refused, None);
        self.gauge.refused.set(Some(Refused { text, why }));
        false
    }

    /// Speaks at a reading, where that is wanted: what was read, what it means, what
    /// is wanted next.
    fn speaks(self, mut said: Vec<Spoken>, tone: Tone, next: Option<Place>) {
        if self.gauge.speech.get_untracked() != Some(Speech::Always) {
            return;
        }
        if tone == Tone::Asked {
            said.push(Spoken::AskedAbout);
        } else if tone == Tone::Taken {
            said.extend(self.means());
        }
        said.extend(next.map(Spoken::Wanted));
        self.say(&said);
    }

    /// What the step that is open says now, once all of it is measured.
    fn means(self) -> Option<Spoken> {
        let (owner, step) = self.gauge.step.get_untracked()?;
        let report = untrack(|| self.session.step_report(owner, step))?;
        let units = untrack(|| self.session.units(Target::Job));
        report
            .complete
            .then(|| Spoken::Verdict(Box::new(report), units))
    }

    fn say(self, said: &[Spoken]) {
        let words: Vec<String> = said.iter().map(t::spoken).collect();
        heard::say(self, &words.join(". "));
    }

    /// Says what the step means and what is wanted, on demand.
    pub fn say_it(self) {
        let wanted = untrack(|| self.waiting_place());
        let wanted = wanted.map(|at| Spoken::Wanted(at.1));
        let said: Vec<Spoken> = self.means().into_iter().chain(wanted).collect();
        self.say(&said);
    }

    /// The place after or before one in the order of the hand.
    fn neighbour(self, place: Place, is_back: bool) -> Option<Place> {
        let order = self.gauge.hand.get_untracked()?;
        let (_, step) = self.gauge.step.get_untracked()?;
        let of = if is_back { place_before } else { place_after };
        self.session
            .open
            .with_untracked(|open| of(&open.as_ref()?.job, step.spec(), place, order))
    }

    /// After a reading the hand goes on; says where to, if a place waits.
    pub fn goes_on(self, target: Target, place: Place) -> Option<Place> {
        let hand = self.gauge.hand.get_untracked();
        let step = self.gauge.step.get_untracked();
        let ordered = hand.zip(step).filter(|_| target == Target::Job);
        let next = ordered.and_then(|(order, (_, step))| {
            self.session
                .open
                .with_untracked(|open| empty_after(&open.as_ref()?.job, step.spec(), place, order))
        });
        match (next, ordered) {
            (Some(next), _) => {
                self.hand_to(next);
                Some(next)
            }
            // Nothing is empty any more: what comes now is offered.
            (None, Some(_)) => {
                caret::blur();
                self.close_pad();
                None
            }
            (None, None) => {
                self.on_from(&input_id(place));
                let active = self.ui.active.get_untracked();
                active.filter(|at| *at != (target, place)).map(|at| at.1)
            }
        }
    }

    /// The foot-switch: on to the next place, or back.
    fn skip(self, is_back: bool) {
        match (self.ui.active.get_untracked(), is_back) {
            (Some((Target::Job, place)), _) => {
                if let Some(next) = self.neighbour(place, is_back) {
                    self.hand_to(next);
                } else if !is_back {
                    self.on_from(&input_id(place));
                }
            }
            // Nothing waits: the first place of the step that is empty does.
            (None, _) => {
                if let Some((_, place)) = self.waiting_place() {
                    self.hand_to(place);
                }
            }
            _ => {}
        }
    }

    /// The hand goes to a place of the job, on whichever cylinder's screen it is.
    fn hand_to(self, place: Place) {
        self.gauge.going.set_value(Some(place));
        let here = self.gauge.step.get_untracked();
        let (Some((owner, step)), Route::Job { id, .. }) = (here, self.ui.route.get_untracked())
        else {
            return;
        };
        match place.owner {
            Owner::Cylinder(cylinder) if place.owner != owner => {
                caret::blur();
                self.session.leaves_place();
                let view = View::Cylinder(Some(cylinder), Some(step));
                browser::go(&Route::Job { id, view }.address());
            }
            // A new row of a list is drawn with the next frame.
            _ if !self.hand_arrives() => request_animation_frame(move || {
                self.hand_arrives();
            }),
            _ => {}
        }
    }

    /// The place to which the hand goes is on the screen, perhaps: it takes the focus.
    pub fn hand_arrives(self) -> bool {
        let Some(place) = self.gauge.going.get_value() else {
            return false;
        };
        let there = caret::focus_and_select(&input_id(place));
        if there {
            self.gauge.going.set_value(None);
        }
        there
    }

    /// Whether the hand is on its way to a screen; where it is not that one, it is on
    /// its way no more.
    pub fn hand_goes_to(self, route: &Route) -> bool {
        let goes = match (self.gauge.going.get_value(), route) {
            (
                Some(place),
                Route::Job {
                    view: View::Cylinder(Some(cylinder), _),
                    ..
                },
            ) => place.owner == Owner::Cylinder(*cylinder),
            _ => false,
        };
        if !goes {
            self.gauge.going.set_value(None);
        }
        goes
    }

    /// A step is opened, for as long as it is on the screen.
    pub fn step_opens(self, owner: Owner, step: StepId) {
        let now = self.gauge.step.get_untracked();
        // Of two decks side by side the first one counts.
        let beside =
            matches!((now, owner), (Some((Owner::Bank(_), open)), Owner::Bank(_)) if open == step);
        if !beside {
            self.gauge.step.set(Some((owner, step)));
            on_cleanup(move || {
                if self.gauge.step.try_get_untracked() == Some(Some((owner, step))) {
                    self.gauge.step.set(None);
                }
            });
        }
    }

    /// Where a reading without a place is offered to: the field under the hand, else
    /// the next empty one of the step.
    #[must_use]
    pub fn waiting_place(self) -> Option<(Target, Place)> {
        if let Some(at) = self.ui.active.get() {
            return Some(at);
        }
        let (owner, step) = self.gauge.step.get()?;
        let order = self.gauge.hand.get().unwrap_or(HandOrder::ByCylinder);
        let empty = self
            .session
            .open
            .with(|open| next_empty(&open.as_ref()?.job, step.spec(), owner, order));
        empty.map(|place| (Target::Job, place))
    }

    /// The person says where the oldest reading that waits belongs.
    pub fn put_caught(self, at: (Target, Place)) {
        if let Some(caught) = self.take_caught() {
            self.put(at, &caught.text);
        }
    }

    /// The person lets it go.
    pub fn take_caught(self) -> Option<Caught> {
        let taken = self
            .gauge
            .caught
            .try_update(|all| (!all.is_empty()).then(|| all.remove(0)))
            .flatten();
        self.keep_caught();
        taken
    }
}
