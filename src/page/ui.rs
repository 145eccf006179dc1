//! What this tab looks at and how: where it is, the reading under the hand, the pad,
//! and what of the settings is a matter of this device. Nothing of it is stored here.

use crate::clock;
use crate::memo::Memo;
use crate::parts::keys::{Counting, Typing};
use crate::screens::Route;
use crate::session::Target;
use coldseat_core::ask::Place;
use coldseat_core::ask::document::{LinkFault, Shared, Shop};
use leptos::prelude::*;

/// What is on the screen and under the hand.
#[derive(Clone, Copy)]
pub struct Ui {
    /// Where the page is.
    pub route: RwSignal<Route>,
    /// The reading under the hand.
    pub active: RwSignal<Option<(Target, Place)>>,
    /// Its text when the hand came to it.
    pub was: RwSignal<Option<String>>,
    /// Whether the own number pad is used: a setting.
    pub pad_on: Memo<bool>,
    /// Beep and vibrate when a time is up: a setting.
    pub feedback: Memo<bool>,
    /// How the pad takes digits.
    pub counting: RwSignal<Counting>,
    /// What pad and keyboard have typed so far into the reading under the hand.
    pub typing: RwSignal<Typing>,
    /// What stands behind the menu button is open.
    pub menu: RwSignal<bool>,
    /// The person went on with "next": the first reading takes the focus.
    pub going_on: RwSignal<bool>,
    /// What came with a link, until it is taken or left.
    pub shared: RwSignal<Option<Result<Shared, LinkFault>>>,
    /// Links looked at so far.
    pub links: RwSignal<u64>,
    /// The clock, for timers: it ticks while one runs.
    pub now: RwSignal<u64>,
    /// The browser could not keep the page on the device.
    pub not_offline: RwSignal<bool>,
    /// A new version waits.
    pub update_ready: RwSignal<bool>,
}

impl Ui {
    /// The first screen, nothing under the hand; follows the settings.
    #[must_use]
    pub fn new(shop: RwSignal<Shop>) -> Self {
        Self {
            route: RwSignal::new(Route::Jobs),
            active: RwSignal::new(None),
            was: RwSignal::new(None),
            pad_on: Memo::new(move |_| shop.with(|shop| shop.pad != Some(false))),
            feedback: Memo::new(move |_| shop.with(|shop| shop.feedback != Some(false))),
            counting: RwSignal::new(Counting::FromRight),
            typing: RwSignal::new(Typing::default()),
            menu: RwSignal::new(false),
            going_on: RwSignal::new(false),
            shared: RwSignal::new(None),
            links: RwSignal::new(0),
            now: RwSignal::new(clock::time()),
            not_offline: RwSignal::new(false),
            update_ready: RwSignal::new(false),
        }
    }
}
