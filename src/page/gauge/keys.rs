//! Keys as they come, before any field has them. A hand's go where they always
//! went; a gauge's are gathered and put, whole, where they began.

use super::{Because, Caught};
use crate::browser;
use crate::caret;
use crate::parts::reading::input_id;
use crate::state::{State, Target};
use coldseat_core::ask::{Burst, CUT_MS, Digits, Heard, Place, STUTTER_MS, Said, said};
use leptos::prelude::*;
use std::cell::RefCell;
use std::rc::Rc;
use std::time::Duration;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::KeyboardEvent;

/// What has the focus.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Focus {
    /// A reading.
    Reading(Target, Place),
    /// A line of text that is no reading: its keys are its own.
    Text,
    /// Something that knows keys of its own: a choice, a slider, a box.
    Control,
    /// Nothing that letters mean anything to.
    Nothing,
}

/// The keys of a burst, and where it began.
#[derive(Default)]
struct Keys {
    burst: Burst,
    began: Option<(Target, Place)>,
    /// Letters of it that no field has.
    held: String,
    /// What stood in its field before letters of it were let in.
    stood: Option<String>,
    /// Whether something was typed in its field before it began: the rest of a hand's
    /// reading, not a reading of its own.
    after_hand: bool,
    /// All letters that came to a field since it has the hand, whatever rests between
    /// them.
    run: Option<((Target, Place), String)>,
    /// Whether it is looked at for being cut off.
    watched: bool,
    /// Looks since the last letter.
    looks: u32,
}

fn focus(state: State) -> Focus {
    let Some(element) = document().active_element() else {
        return Focus::Nothing;
    };
    if element.has_attribute("data-place") {
        return match state.ui.active.get_untracked() {
            Some((target, place)) if input_id(place) == element.id() => {
                Focus::Reading(target, place)
            }
            _ => Focus::Text,
        };
    }
    match element.tag_name().to_ascii_lowercase().as_str() {
        "textarea" => Focus::Text,
        "select" => Focus::Control,
        "input" => match element.get_attribute("type").as_deref() {
            Some("radio" | "checkbox" | "range" | "button" | "file") => Focus::Control,
            _ => Focus::Text,
        },
        _ => Focus::Nothing,
    }
}

/// Where the hand is: at the reading that has the focus, or on its way to one.
pub(super) fn hand_at(state: State) -> Option<(Target, Place)> {
    match focus(state) {
        Focus::Reading(target, place) => Some((target, place)),
        Focus::Text | Focus::Control | Focus::Nothing => {
            let going = state.gauge.going.get_value();
            going.map(|place| (Target::Job, place))
        }
    }
}

/// Hears every key of the page from now on, before any field does.
pub fn listen(state: State) {
    let keys = Rc::new(RefCell::new(Keys::default()));
    let hears = {
        let keys = Rc::clone(&keys);
        move |event: KeyboardEvent| hear(state, &keys, &event)
    };
    on_capture("keydown", hears);
    // Elsewhere in mid-burst, or asleep: what waits is settled first.
    let settles = {
        let keys = Rc::clone(&keys);
        move |_: KeyboardEvent| {
            if document().hidden() {
                settle(state, &keys);
            }
        }
    };
    on_capture("visibilitychange", settles);
}

/// A handler for as long as the page lives, asked before all others.
fn on_capture(event: &str, hears: impl FnMut(KeyboardEvent) + 'static) {
    let hears = Closure::<dyn FnMut(KeyboardEvent)>::new(hears);
    let added = document().add_event_listener_with_callback_and_bool(
        event,
        hears.as_ref().unchecked_ref(),
        true,
    );
    if added.is_ok() {
        hears.forget();
    }
}

fn hear(state: State, keys: &Rc<RefCell<Keys>>, event: &KeyboardEvent) {
    let with_others = event.ctrl_key() || event.meta_key() || event.alt_key();
    if with_others || event.is_composing() || event.repeat() {
        hand_back(state, keys);
        keys.borrow_mut().run = None;
        return;
    }
    let name = event.key();
    let at_ms = event.time_stamp();
    let mut letters = name.chars();
    let letter = match (letters.next(), letters.next()) {
        (Some(letter), None) => Some(letter),
        _ => None,
    };
    let is_hand = state.gauge.hand.get_untracked().is_some();
    keys.borrow_mut().burst.set_patient(is_hand);
    let goes_on = keys.borrow().burst.goes_on(at_ms);
    if !goes_on && let Some(is_back) = turns(state, &name) {
        hand_back(state, keys);
        event.prevent_default();
        event.stop_propagation();
        state.skip(is_back);
        return;
    }
    match (letter, name.as_str()) {
        (Some(letter), _) => a_letter(state, keys, event, letter, at_ms),
        (None, "Enter" | "Tab") if !event.shift_key() => an_end(state, keys, event, at_ms),
        // Shift itself comes before a sign or a capital.
        (None, "Shift" | "CapsLock" | "NumLock" | "Unidentified" | "Dead") => {}
        _ => {
            hand_back(state, keys);
            keys.borrow_mut().run = None;
        }
    }
}

/// Whether a key is the foot-switch's, and which way it goes.
fn turns(state: State, key: &str) -> Option<bool> {
    state.gauge.hand.get_untracked()?;
    state.gauge.step.get_untracked()?;
    state.session.shop.with_untracked(|shop| {
        if key == "PageDown" || shop.skip_key.as_deref() == Some(key) {
            Some(false)
        } else if key == "PageUp" || shop.back_key.as_deref() == Some(key) {
            Some(true)
        } else {
            None
        }
    })
}

fn a_letter(
    state: State,
    keys: &Rc<RefCell<Keys>>,
    event: &KeyboardEvent,
    letter: char,
    at_ms: f64,
) {
    let focus = focus(state);
    if focus == Focus::Text {
        hand_back(state, keys);
        return;
    }
    let begins = {
        let keys = keys.borrow();
        !keys.burst.goes_on(at_ms)
    };
    if begins {
        settle(state, keys);
    }
    let mut now = keys.borrow_mut();
    let begun = state.ui.typing.with_untracked(|typing| typing.begun);
    if let Focus::Reading(target, place) = focus {
        match &mut now.run {
            // Letters that are held are not in the field yet.
            Some((at, letters)) if (begun || !begins) && *at == (target, place) => {
                letters.push(letter);
            }
            other => *other = Some(((target, place), letter.to_string())),
        }
    }
    if let Heard::Begins(_) = now.burst.letter(letter, at_ms) {
        now.began = match focus {
            Focus::Reading(target, place) => Some((target, place)),
            // On its way to the next cylinder.
            _ => state
                .gauge
                .going
                .get_value()
                .map(|place| (Target::Job, place)),
        };
        now.held.clear();
        now.stood = None;
        now.after_hand = begun;
    }
    let is_at_home =
        matches!(focus, Focus::Reading(target, place) if now.began == Some((target, place)));
    // Where an order of the hand is chosen a gauge is in use: its letters reach the
    // field together, a hand's a moment late.
    let holds = match focus {
        Focus::Reading(..) if is_at_home => {
            state.gauge.hand.get_untracked().is_some() || !now.held.is_empty()
        }
        Focus::Reading(..) => true,
        Focus::Control => !begins,
        Focus::Text | Focus::Nothing => !(begins && letter == ' '),
    };
    if holds {
        event.prevent_default();
        now.held.push(letter);
        now.looks = 0;
        if !now.watched {
            now.watched = true;
            drop(now);
            watch(state, keys);
        }
    }
}

/// Looks again and again until a burst should have ended. Looks are counted, not
/// milliseconds: a page that was busy has not heard all that came meanwhile.
fn watch(state: State, keys: &Rc<RefCell<Keys>>) {
    let keys = Rc::clone(keys);
    let look = move || {
        let (rests_ms, is_fast) = {
            let mut now = keys.borrow_mut();
            now.looks += 1;
            let rests_ms = f64::from(now.looks) * LOOK_MS as f64;
            now.watched = rests_ms < CUT_MS && now.burst.waits();
            (rests_ms, now.burst.is_fast())
        };
        if rests_ms >= CUT_MS {
            settle(state, &keys);
            return;
        }
        if rests_ms >= STUTTER_MS && !is_fast {
            // A hand's keys are not to wait; what follows at once belongs to them still.
            let_in(state, &keys);
        }
        if keys.borrow().watched {
            watch(state, &keys);
        }
    };
    set_timeout(look, Duration::from_millis(LOOK_MS));
}

/// Between two looks, ms.
const LOOK_MS: u64 = 20;

/// A hand's few letters go into the field in which they were typed; says whether it
/// still has the focus.
fn let_in(state: State, keys: &Rc<RefCell<Keys>>) -> bool {
    let (began, held) = {
        let now = keys.borrow();
        (now.began, now.held.clone())
    };
    let is_home = match focus(state) {
        Focus::Reading(target, place) => began == Some((target, place)),
        _ => false,
    };
    if is_home && !held.is_empty() {
        if let Some((target, place)) = began {
            let stood = untrack(|| state.session.text(target, place));
            let mut now = keys.borrow_mut();
            now.held.clear();
            now.stood.get_or_insert(stood);
        }
        caret::insert(&held);
    }
    is_home
}

/// What waits without its end: a hand's few letters go into their field, a gauge's
/// half reading is offered.
fn settle(state: State, keys: &Rc<RefCell<Keys>>) {
    let is_fast = keys.borrow().burst.is_fast();
    if !is_fast {
        let_in(state, keys);
    }
    let (text, held, began, stood) = {
        let mut now = keys.borrow_mut();
        let held = std::mem::take(&mut now.held);
        let stood = now.stood.take();
        (now.burst.cut(), held, now.began.take(), stood)
    };
    // A few letters where nothing has the focus mean nothing.
    let is_lost = !held.is_empty() && (is_fast || began.is_some());
    if let Some(text) = text.filter(|_| is_lost) {
        if let (Some((target, place)), Some(stood)) = (began, stood) {
            state.type_text(target, place, &stood);
        }
        state.catch(Caught {
            text,
            because: Because::CutOff,
            began,
        });
    }
}

/// Another key comes: what a hand typed before it stands before it does.
fn hand_back(state: State, keys: &Rc<RefCell<Keys>>) {
    if keys.borrow().burst.waits() {
        settle(state, keys);
    }
}

fn an_end(state: State, keys: &Rc<RefCell<Keys>>, event: &KeyboardEvent, at_ms: f64) {
    let focus = focus(state);
    let count = keys.borrow().burst.count();
    let goes_on = keys.borrow().burst.goes_on(at_ms);
    let enough = match focus {
        Focus::Text => false,
        Focus::Reading(..) => count >= 2,
        Focus::Control | Focus::Nothing => count >= 1,
    };
    if let Focus::Reading(target, place) = focus {
        let began = keys.borrow().began;
        if began == Some((target, place)) && keys.borrow().after_hand {
            // The rest of a reading: the field has all of it.
            let_in(state, keys);
            let run = {
                let mut now = keys.borrow_mut();
                now.burst.cut();
                now.began = None;
                now.stood = None;
                now.run.take()
            };
            if let Some((at, typed)) = run
                && at == (target, place)
            {
                state.typed_over(target, place, &typed);
            }
            return;
        }
    }
    keys.borrow_mut().run = None;
    if !goes_on || !enough {
        hand_back(state, keys);
        return;
    }
    event.prevent_default();
    event.stop_propagation();
    let (heard, began, stood) = {
        let mut now = keys.borrow_mut();
        now.held.clear();
        (now.burst.end(at_ms), now.began.take(), now.stood.take())
    };
    let stands = match heard {
        Heard::Ends(text) => state.burst_ended(began, text, false),
        Heard::Twice(text) => {
            let is_hand = state.gauge.hand.get_untracked().is_some();
            state.burst_ended(began, text, is_hand)
        }
        Heard::Alone(_) | Heard::Begins(_) | Heard::GoesOn => true,
    };
    if let (false, Some((target, place)), Some(stood)) = (stands, began, stood) {
        state.type_text(target, place, &stood);
    }
}

impl State {
    /// What was typed behind what stood in a field, with which it is no reading, stands
    /// alone if it is one by itself.
    fn typed_over(self, target: Target, place: Place, typed: &str) {
        let units = untrack(|| self.session.units(target));
        let is_one = |text: &str| {
            let digits = Digits::AsTheyStand;
            let all = said(text, place.field, units, digits, browser::now());
            matches!(all.as_slice(), [Said::Reading(_)])
        };
        if !is_one(&untrack(|| self.session.text(target, place))) && is_one(typed) {
            self.type_text(target, place, typed);
        }
    }
}
