//! Links out and in: an engine, a cold drop or a floor sheet as an address.

use crate::browser;
use crate::state::State;
use coldseat_core::ask::Job;
use coldseat_core::ask::document::{LinkFault, MARK, Shared, decode, encode};
use leptos::prelude::*;

/// The address that carries something; from a file only its end.
///
/// # Errors
/// Where it would be too long.
pub fn address_of(shared: &Shared) -> Result<String, LinkFault> {
    // From a file there is no address that leads anywhere but here; what stands
    // behind it can be pasted all the same.
    let page = if browser::has_address() {
        browser::page_address()
    } else {
        String::new()
    };
    Ok(format!("{page}{MARK}{}", encode(shared)?))
}

impl State {
    /// Looks at what came with an address or was pasted; nothing is stored.
    pub fn look_at_link(self, text: &str) {
        self.ui.shared.set(Some(decode(text, browser::now())));
        self.ui.links.update(|count| *count += 1);
    }

    /// Takes what a link brought, as a copy of its own; an engine as a job or
    /// as a sheet.
    pub fn take_shared(self, sheet: bool) {
        let Some(Ok(shared)) = self.ui.shared.get_untracked() else {
            return;
        };
        self.ui.shared.set(None);
        match shared {
            Shared::Profile(engine, entries) if sheet => {
                self.begin(Job::engine_sheet(engine, &entries), None);
            }
            Shared::Profile(engine, entries) => {
                let mut job = Job::new(engine, entries);
                job.name = job.engine.name.clone();
                self.begin(job, None);
            }
            Shared::Floor(job) => self.begin(*job, None),
            Shared::Drop(sheet) => {
                self.session.edit_drop(|drop| *drop = sheet);
                browser::go("#/drop");
            }
        }
    }
}
