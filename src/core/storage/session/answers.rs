//! What comes of the answers of the durable store.

use super::{Session, Told, Which};
use crate::job::Millis;
use crate::storage::keeper::{Event, Found};
use crate::storage::sheet::Met;
use crate::storage::slots::{DROPS, JOBS, SHOP, id_in};
use crate::storage::{Answer, Shelf};

impl Session {
    /// What the durable store answered.
    pub fn answered(&mut self, answer: Answer, shelf: &dyn Shelf, at: Millis) -> Told {
        let mut told = Told::default();
        for event in self.keeper.answered(shelf, answer) {
            match event {
                Event::Other(name, content, found) => {
                    let had_more = self.other((&name, &content), shelf, at, &mut told);
                    if had_more && found == Found::Comparing && id_in(&name).is_some() {
                        told.brought_back.push(name);
                    }
                }
                Event::Fetched(name, content) => {
                    if let Some(content) = content {
                        self.opened(shelf, (&name, &content), &mut told);
                    }
                    told.fetched = Some(name);
                }
                // A job: what is typed from now on is written again.
                Event::Gone(name) if name.starts_with(JOBS) => {
                    told.job |= self.job.as_ref().is_some_and(|sheet| sheet.name == name);
                }
                Event::Gone(name) if name.starts_with(DROPS) => {
                    let open = self.kept_drop.as_ref();
                    told.cold_drop |= open.is_some_and(|sheet| sheet.name == name);
                }
                // Nobody takes these out: the browser has lost them.
                Event::Gone(name) if name == SHOP => self.shop.save(shelf, &mut self.keeper),
                Event::Gone(_) => self.cold_drop.save(shelf, &mut self.keeper),
                Event::Destroyed(names, is_gone) => {
                    told.not_destroyed |= !is_gone;
                    told.others = true;
                    let open = self.job.as_ref();
                    if is_gone && open.is_some_and(|sheet| names.contains(&sheet.name)) {
                        self.job = None;
                        told.job = true;
                    }
                    let open = self.kept_drop.as_ref();
                    if is_gone && open.is_some_and(|sheet| names.contains(&sheet.name)) {
                        self.kept_drop = None;
                        told.cold_drop = true;
                    }
                }
                Event::Listed => told.listed = true,
            }
        }
        self.tell(&mut told);
        told
    }

    /// Another copy of a document was found; says whether it had more than the
    /// one here.
    fn other(
        &mut self,
        (name, content): (&str, &str),
        shelf: &dyn Shelf,
        at: Millis,
        told: &mut Told,
    ) -> bool {
        let which = Which::ALL
            .into_iter()
            .find(|which| on!(self, *which, |sheet| sheet.name == name) == Some(true));
        let Some(which) = which else {
            told.others = true;
            return self.keeper.reconcile(shelf, name, content);
        };
        let before = self.flush(shelf, at);
        told.job |= before.job;
        told.shop |= before.shop;
        told.cold_drop |= before.cold_drop;
        let met = on!(self, which, |sheet| {
            sheet.found_other(shelf, &mut self.keeper, content)
        });
        matches!(met, Some(Met::Joined(_)))
    }
}
