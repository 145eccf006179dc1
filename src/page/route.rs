//! Addresses: the part behind the `#`. An enum and two functions instead of a
//! router.

use coldseat_core::ask::StepId;
use coldseat_core::storage::is_id;
use coldseat_core::storage::slots::DROPS;
use coldseat_core::storage::slots::JOBS;

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
