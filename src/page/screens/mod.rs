//! Which screens there are: their addresses (the part behind the `#`: an enum and two
//! functions instead of a router) and what is drawn at each. One file a screen.

pub mod deck;
pub mod drop;
pub mod engine;
pub mod engines;
pub mod files;
pub mod floor;
pub mod job;
pub mod jobs;
pub mod learnt;
pub mod new;
pub mod record;
pub mod settings;
pub mod shared;
pub mod steps;
pub mod whole;

use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::StepId;
use coldseat_core::storage::is_id;
use coldseat_core::storage::slots::DROPS;
use coldseat_core::storage::slots::JOBS;
use coldseat_markup::view;
use deck::DeckScreen;
use drop::DropScreen;
use engine::EngineScreen;
use engines::EnginesScreen;
use files::FilesScreen;
use floor::FloorScreen;
use job::JobScreen;
use jobs::JobsScreen;
use learnt::LearntScreen;
use leptos::prelude::*;
use new::NewScreen;
use record::RecordScreen;
use settings::SettingsScreen;
use shared::SharedScreen;
use whole::WholeScreen;

/// The address of the cold drop: whichever was used last.
pub const DROP_LAST: &str = "#/drop";
/// The address of the cold drop in use, which has no name, whatever was used last.
pub const DROP_IN_USE: &str = "#/drop/-";

/// Where the page is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// The list of jobs.
    Jobs,
    /// Cold drop without a job: the one in use, or one that is kept, by its key.
    Drop(Option<String>),
    /// A new job.
    New,
    /// Engine sheets.
    Engines,
    /// Backup, files and the bin.
    Files,
    /// What finished jobs teach.
    Learnt,
    /// Settings.
    Settings,
    /// What came with a link.
    Shared,
    /// Inside a job.
    Job {
        /// Its key in the store.
        id: String,
        /// What of it.
        view: View,
    },
}

/// What of a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// A cylinder and a step of it; `None`: the one to work on.
    Cylinder(Option<u8>, Option<StepId>),
    /// A step of the whole job; `None`: the one to work on.
    Whole(Option<StepId>),
    /// A deck, bank from 0.
    Deck(u8),
    /// The printable record.
    Record,
    /// Targets in large type, to be taped to the block.
    Floor,
    /// Engine, limits, gauges.
    Engine,
}

impl Route {
    /// The name of the document that is shown there, where it has a key.
    #[must_use]
    pub fn document(&self) -> Option<String> {
        match self {
            Self::Job { id, .. } => Some(format!("{JOBS}{id}")),
            Self::Drop(Some(id)) => Some(format!("{DROPS}{id}")),
            _ => None,
        }
    }

    /// Whether it shows lists of what lies on the device, other than that of cold drops.
    #[must_use]
    pub const fn shows_list(&self) -> bool {
        matches!(
            self,
            Self::Jobs | Self::Files | Self::New | Self::Engines | Self::Learnt
        )
    }

    /// Reads an address; anything unknown is the list of jobs.
    #[must_use]
    pub fn parse(hash: &str) -> Self {
        let path = hash.trim_start_matches('#').trim_matches('/');
        let mut parts = path.split('/');
        match (
            parts.next(),
            parts.next(),
            parts.next(),
            parts.next(),
            parts.next(),
        ) {
            (Some("drop"), Some(id), None, ..) if is_id(id) => Self::Drop(Some(id.to_owned())),
            (Some("drop"), ..) => Self::Drop(None),
            (Some("new"), None, ..) => Self::New,
            (Some("engines"), None, ..) => Self::Engines,
            (Some("files"), None, ..) => Self::Files,
            (Some("learnt"), None, ..) => Self::Learnt,
            (Some("settings"), None, ..) => Self::Settings,
            (Some("s" | "shared"), ..) => Self::Shared,
            (Some("job"), Some(id), what, which, step) if is_id(id) => Self::Job {
                id: id.to_owned(),
                view: match (what, which.and_then(|w| w.parse::<u8>().ok())) {
                    (Some("cylinder"), number) => {
                        View::Cylinder(number, step.and_then(StepId::from_name))
                    }
                    (Some("block"), _) => View::Whole(which.and_then(StepId::from_name)),
                    (Some("deck"), bank) => View::Deck(bank.unwrap_or(1).clamp(1, 2) - 1),
                    (Some("record"), _) => View::Record,
                    (Some("floor"), _) => View::Floor,
                    (Some("engine"), _) => View::Engine,
                    _ => View::Cylinder(None, None),
                },
            },
            _ => Self::Jobs,
        }
    }

    /// Its address.
    #[must_use]
    pub fn address(&self) -> String {
        match self {
            Self::Jobs => "#/".to_owned(),
            Self::Drop(None) => "#/drop".to_owned(),
            Self::Drop(Some(id)) => format!("#/drop/{id}"),
            Self::New => "#/new".to_owned(),
            Self::Engines => "#/engines".to_owned(),
            Self::Files => "#/files".to_owned(),
            Self::Learnt => "#/learnt".to_owned(),
            Self::Settings => "#/settings".to_owned(),
            Self::Shared => "#/shared".to_owned(),
            Self::Job { id, view } => match view {
                View::Cylinder(None, _) => format!("#/job/{id}"),
                View::Cylinder(Some(c), None) => format!("#/job/{id}/cylinder/{c}"),
                View::Cylinder(Some(c), Some(step)) => {
                    format!("#/job/{id}/cylinder/{c}/{}", step.spec().name)
                }
                View::Whole(None) => format!("#/job/{id}/block"),
                View::Whole(Some(step)) => format!("#/job/{id}/block/{}", step.spec().name),
                View::Deck(bank) => format!("#/job/{id}/deck/{}", bank + 1),
                View::Record => format!("#/job/{id}/record"),
                View::Floor => format!("#/job/{id}/floor"),
                View::Engine => format!("#/job/{id}/engine"),
            },
        }
    }
}

/// Which screen; a change of cylinder or step stays on one.
#[derive(Clone, PartialEq, Eq)]
pub enum Screen {
    Jobs,
    Drop(Option<String>),
    New,
    Engines,
    Files,
    Learnt,
    Settings,
    Shared(u64),
    NoDrop,
    NoJob,
    Cylinder(String),
    Whole(String),
    Deck(String, u8),
    Record(String),
    Floor(String),
    Engine(String),
}

impl Screen {
    /// Whether it is printed for somebody, maybe in another language.
    #[must_use]
    pub const fn is_for_a_reader(&self) -> bool {
        matches!(self, Self::Record(_) | Self::Floor(_))
    }

    /// Whether it has a job's bar.
    #[must_use]
    pub const fn is_of_job(&self) -> bool {
        matches!(
            self,
            Self::Cylinder(_)
                | Self::Whole(_)
                | Self::Deck(..)
                | Self::Record(_)
                | Self::Floor(_)
                | Self::Engine(_)
        )
    }
}

/// The screen that the address names, as far as what it shows is there; whoever asks
/// follows it.
#[must_use]
pub fn screen_at(state: State) -> Screen {
    match state.ui.route.get() {
        Route::Jobs => Screen::Jobs,
        Route::Drop(id) => {
            let there = state
                .session
                .drop_open
                .with(|o| o.id == id.as_deref().unwrap_or_default());
            if there {
                Screen::Drop(id)
            } else {
                Screen::NoDrop
            }
        }
        Route::New => Screen::New,
        Route::Engines => Screen::Engines,
        Route::Files => Screen::Files,
        Route::Learnt => Screen::Learnt,
        Route::Settings => Screen::Settings,
        // Another link is another screen, with the same address.
        Route::Shared => Screen::Shared(state.ui.links.get()),
        Route::Job { id, view } => {
            // Only whether there is a job of this key, not what is in it.
            let (there, sheet) = state.session.open.with(|o| {
                o.as_ref()
                    .filter(|o| o.id == id)
                    .map_or((false, false), |o| (true, o.job.sheet))
            });
            match view {
                _ if !there => Screen::NoJob,
                // An engine sheet has no other screen.
                _ if sheet => Screen::Engine(id),
                View::Cylinder(..) => Screen::Cylinder(id),
                View::Whole(_) => Screen::Whole(id),
                View::Deck(bank) => Screen::Deck(id, bank),
                View::Record => Screen::Record(id),
                View::Floor => Screen::Floor(id),
                View::Engine => Screen::Engine(id),
            }
        }
    }
}

/// Draws a screen.
#[must_use]
pub fn draw(state: State, screen: Screen) -> AnyView {
    match screen {
        Screen::Jobs => view! { <JobsScreen /> }.into_any(),
        Screen::Drop(_) => view! { <DropScreen /> }.into_any(),
        Screen::New => view! { <NewScreen /> }.into_any(),
        Screen::Engines => view! { <EnginesScreen /> }.into_any(),
        Screen::Files => view! { <FilesScreen /> }.into_any(),
        Screen::Learnt => view! { <LearntScreen /> }.into_any(),
        Screen::Settings => view! { <SettingsScreen /> }.into_any(),
        Screen::Shared(_) => view! { <SharedScreen /> }.into_any(),
        Screen::Cylinder(id) => view! { <JobScreen id=id /> }.into_any(),
        Screen::Whole(id) => view! { <WholeScreen id=id /> }.into_any(),
        Screen::Deck(id, bank) => view! { <DeckScreen id=id bank=bank /> }.into_any(),
        Screen::Record(id) => view! { <RecordScreen id=id /> }.into_any(),
        Screen::Floor(id) => view! { <FloorScreen id=id /> }.into_any(),
        Screen::Engine(id) => view! { <EngineScreen id=id /> }.into_any(),
        // What only the second store has is on its way.
        Screen::NoJob | Screen::NoDrop if state.session.looking.get() => view! {
            <h1 id="screen-heading" tabindex="-1">
                {t::OPENING}
            </h1>
        }
        .into_any(),
        Screen::NoDrop => view! {
            <h1 id="screen-heading" tabindex="-1">
                {t::NO_KEPT_DROP}
            </h1>
            <p>
                <a class="button" href=DROP_IN_USE>
                    {t::COLD_DROP}
                </a>
            </p>
        }
        .into_any(),
        Screen::NoJob => view! {
            <h1 id="screen-heading" tabindex="-1">
                {t::NO_JOB}
            </h1>
            <p>
                <a class="button" href="#/">
                    {t::BACK_TO_JOBS}
                </a>
            </p>
        }
        .into_any(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_come_back() {
        let job = |view| Route::Job {
            id: "a1b2".into(),
            view,
        };
        for route in [
            Route::Jobs,
            Route::Drop(None),
            Route::Drop(Some("a1b2".into())),
            Route::New,
            Route::Engines,
            Route::Files,
            Route::Learnt,
            Route::Settings,
            Route::Shared,
            job(View::Cylinder(None, None)),
            job(View::Cylinder(Some(3), None)),
            job(View::Cylinder(Some(16), Some(StepId::Pull))),
            job(View::Whole(None)),
            job(View::Whole(Some(StepId::Datum))),
            job(View::Deck(1)),
            job(View::Record),
            job(View::Floor),
            job(View::Engine),
        ] {
            assert_eq!(Route::parse(&route.address()), route);
        }
        assert_eq!(Route::parse(DROP_IN_USE), Route::Drop(None));
        assert_eq!(Route::parse("#/job/../x"), Route::Jobs);
        assert_eq!(Route::parse("#/elsewhere"), Route::Jobs);
        assert_eq!(Route::parse(""), Route::Jobs);
    }
}
