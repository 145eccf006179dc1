//! What happens, one thing at a time.

use super::*;

/// At a spot: what is replaced, and what is set in its place.
type Would = (usize, Vec<usize>, Option<(Dot, String)>);

impl World {
    /// One thing happens.
    pub fn step(&mut self, happens: Happens) -> Result<(), String> {
        let tab = usize::from(happens.tab) % TABS;
        let device = DEVICE_OF[tab];
        let which = usize::from(happens.which);
        self.time += 7 + u64::from(happens.which) * 3;
        match happens.what {
            What::Type => self.types(tab, which, Stay::New),
            What::TypeOn => self.types(tab, which, Stay::Same),
            What::Clear => self.sets(tab, which % SPOTS, "", Stay::New),
            What::Flush => self.flush(tab),
            What::Ask => self.asks(tab),
            What::Commit => self.commits(tab),
            What::Answer => self.answers(tab),
            What::Hear => self.hears(tab),
            What::Miss => drop(self.tabs[tab].inbox.pop_front()),
            What::Undo => self.steps_back(tab, false, which),
            What::Redo => self.steps_back(tab, true, which),
            What::Choose => self.chooses(tab, which),
            What::Bin => {
                self.flush(tab);
                let now = self.now(tab);
                let shelf = &self.devices[device].quick;
                let (kind, ..) = MANY[which / 2 % 2];
                let told = self.tabs[tab].session.bin(kind, which % 2 == 0, shelf, now);
                self.draw(tab, &told);
            }
            What::Destroy => self.destroys(tab, MANY[which % 2]),
            What::KeepAnew => self.keeps_anew(tab, MANY[which % 2]),
            What::Begin => {
                let kind = MANY[which % 2];
                let durable = &self.devices[device].durable.slots;
                if self.holds_none(tab, kind) && !durable.contains_key(kind.1) {
                    self.begins(tab, kind);
                }
            }
            What::WriteOut => self.devices[device].quick.write_out(),
            What::Kill => self.kill(device, which % 3 == 0),
            What::Reload => self.reload(tab),
            What::FaultQuick => {
                let fault = [StoreFault::Full, StoreFault::Blocked][which % 2];
                self.devices[device].quick.fault.set(Some(fault));
            }
            What::FaultDurable => {
                let fault = [StoreFault::Full, StoreFault::Blocked][which % 2];
                self.devices[device].durable.fault = Some(fault);
            }
            What::Heal => {
                self.devices[device].quick.fault.set(None);
                self.devices[device].durable.fault = None;
            }
            What::Abort => self.devices[device].aborts = true,
            What::Clock => {
                let hours = [-8760, -1, 1, 8760, 0, 0][which % 6];
                self.devices[device].clock = hours * 3_600_000;
            }
            What::File => self.file(tab, which % TABS),
            What::Late => self.tabs[tab].session.late(),
            What::ComeBack => {
                self.flush(tab);
                let now = self.now(tab);
                let shelf = &self.devices[device].quick;
                let told = self.tabs[tab].session.comes_back(shelf, now);
                self.draw(tab, &told);
            }
            What::EmptyQuick => self.empties(device, true),
            What::EmptyDurable => self.empties(device, false),
            What::Quiet => self.quiet(device)?,
            What::AllQuiet => self.all_quiet()?,
        }
        self.spread(tab);
        self.told(tab);
        Ok(())
    }

    fn types(&mut self, tab: usize, which: usize, stay: Stay) {
        let at = match stay {
            Stay::Same => self.tabs[tab].last_spot.unwrap_or(which % SPOTS),
            Stay::New => which % SPOTS,
        };
        // Now and then two type the same; most texts are typed once.
        let text = if which.is_multiple_of(5) {
            "131.50".to_owned()
        } else {
            self.texts += 1;
            format!("130.{:05}", self.texts)
        };
        let text = if stay == Stay::Same && which.is_multiple_of(7) {
            ""
        } else {
            &text
        };
        self.sets(tab, at, text, stay);
    }

    fn sets(&mut self, tab: usize, spot: usize, text: &str, stay: Stay) {
        let now = self.now(tab);
        let is_same_visit = self.tabs[tab].last_spot == Some(spot);
        let stay = if is_same_visit { stay } else { Stay::New };
        if stay == Stay::New && !self.tabs[tab].seen.is_empty() {
            // The session notes what waits; here it is looked at as well.
            self.flush(tab);
        }
        let before = at_spot(&self.tabs[tab].session, spot);
        let entry = |place: Place| Entry::new(text, place.field.unit(UnitSystem::Metric), now);
        let session = &mut self.tabs[tab].session;
        let may = match (which_of(spot), place(spot)) {
            (Which::Job, Some(place)) => {
                session.edit_job(|job| drop(job.entries.put(place, entry(place))), stay, now)
            }
            (Which::Job, None) => session.edit_job(|job| job.customer = text.to_owned(), stay, now),
            (Which::KeptDrop, _) if kept_drop(session).is_none() => false,
            (Which::KeptDrop, Some(place)) => session.edit_drop(
                |paper| drop(paper.sheet.entries.put(place, entry(place))),
                stay,
                now,
            ),
            (Which::KeptDrop, None) => {
                session.edit_drop(|paper| paper.name = text.to_owned(), stay, now)
            }
            (_, Some(place)) => session.edit_shop(
                |shop| drop(shop.entries.put(place, entry(place))),
                stay,
                now,
            ),
            (_, None) => false,
        };
        if !may {
            return;
        }
        let told = Told {
            job: which_of(spot) == Which::Job,
            shop: which_of(spot) == Which::Shop,
            cold_drop: which_of(spot) == Which::KeptDrop,
            ..Told::default()
        };
        self.draw(tab, &told);
        let tab = &mut self.tabs[tab];
        // Who has changed nothing at a place yet, comes to it.
        let shown = before.first().map_or("", |(_, shown)| shown.as_str());
        let stays = is_same_visit || shown != text;
        tab.last_spot = stays.then_some(spot);
        match tab.seen.iter_mut().find(|(at, ..)| *at == spot) {
            Some((_, _, was)) if stay == Stay::New => *was = Stay::New,
            Some(_) => {}
            None => tab.seen.push((spot, before, stay)),
        }
        tab.cleared.retain(|at| *at != spot);
        if text.is_empty() {
            tab.cleared.push(spot);
        }
    }

    pub(super) fn flush(&mut self, tab: usize) {
        let now = self.now(tab);
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let told = self.tabs[tab].session.flush(shelf, now);
        self.draw(tab, &told);
        self.note(tab);
    }

    pub(super) fn asks(&mut self, tab: usize) {
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let it = &mut self.tabs[tab];
        if it.asked.is_none() && it.answer.is_none() {
            it.asked = it.session.next(shelf);
        }
    }

    pub(super) fn commits(&mut self, tab: usize) {
        let device = &mut self.devices[DEVICE_OF[tab]];
        if let Some(ask) = self.tabs[tab].asked.take() {
            let aborts = core::mem::take(&mut device.aborts);
            let answer = device.durable.run(&ask, aborts);
            if let Ask::Remove(names) = ask {
                self.tabs[tab].removing = names;
            }
            if let Answer::Removed(Ok(())) = answer {
                self.is_gone(tab);
            }
            self.tabs[tab].answer = Some(answer);
        }
    }

    /// What a tab was to take out for good is out.
    fn is_gone(&mut self, tab: usize) {
        let names = &self.tabs[tab].removing;
        let gone = KINDS
            .iter()
            .filter(|kind| names.iter().any(|n| n == kind.1));
        for (_, _, spots) in gone {
            self.model.destroyed(DEVICE_OF[tab], spots);
        }
    }

    pub(super) fn answers(&mut self, tab: usize) {
        if let Some(answer) = self.tabs[tab].answer.take() {
            let now = self.now(tab);
            // What waits is noted first, as the session does.
            self.flush(tab);
            let shelf = &self.devices[DEVICE_OF[tab]].quick;
            let is_removal = matches!(answer, Answer::Removed(_));
            let told = self.tabs[tab].session.answered(answer, shelf, now);
            self.draw(tab, &told);
            // Said to be gone also where there is no durable store to ask.
            if is_removal && !told.not_destroyed {
                self.is_gone(tab);
            }
        }
    }

    pub(super) fn hears(&mut self, tab: usize) {
        if let Some(key) = self.tabs[tab].inbox.pop_front() {
            self.flush(tab);
            let now = self.now(tab);
            let shelf = &self.devices[DEVICE_OF[tab]].quick;
            let told = self.tabs[tab].session.heard(Some(&key), shelf, now);
            self.draw(tab, &told);
        }
    }

    /// What a step would do if no other tab had written: told by a copy of the
    /// session on a bare shelf.
    fn would(&mut self, tab: usize, does: impl Fn(&mut Session, u64), comes: bool) -> Vec<Would> {
        let now = self.now(tab);
        let mut copy = self.tabs[tab].session.clone();
        does(&mut copy, now);
        let mut would = Vec::new();
        for spot in 0..SPOTS {
            let before = at_spot(&self.tabs[tab].session, spot);
            let after = at_spot(&copy, spot);
            if before.first() == after.first() {
                continue;
            }
            let replaces = if comes {
                self.replaced(spot, &before, true)
            } else {
                let all = before.iter();
                all.map(|(dot, text)| self.model.deed_of(spot, dot, text))
                    .collect()
            };
            let is_new = |(dot, _): &&(Dot, String)| !self.model.is_known(spot, dot);
            let new = after.first().filter(is_new).cloned();
            would.push((spot, replaces, new));
        }
        would
    }

    fn did(&mut self, tab: usize, would: Vec<Would>) {
        let who = (DEVICE_OF[tab], tab);
        for (spot, replaces, new) in would {
            let (dot, text) = new.map_or((None, None), |(dot, text)| (Some(dot), Some(text)));
            self.model.note(spot, dot.as_ref(), text, replaces, who);
        }
    }

    fn steps_back(&mut self, tab: usize, is_redo: bool, which: usize) {
        self.flush(tab);
        self.tabs[tab].last_spot = None;
        let which = [Which::Job, Which::Job, Which::Shop, Which::KeptDrop][which % 4];
        let does = |session: &mut Session, now: u64| {
            session.step(which, is_redo, &Bare, now);
        };
        let would = self.would(tab, does, true);
        let now = self.now(tab);
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let (_, told) = self.tabs[tab].session.step(which, is_redo, shelf, now);
        self.draw(tab, &told);
        self.did(tab, would);
    }

    fn chooses(&mut self, tab: usize, which: usize) {
        self.flush(tab);
        let session = &self.tabs[tab].session;
        let kind = MANY[which / 7 % 2].0;
        let all = match kind {
            Which::Job => session.job().map(|open| conflicts(&open.job)),
            _ => kept_drop(session).map(|open| conflicts(&open.job)),
        };
        let all = all.unwrap_or_default();
        let Some(conflict) = all.get(which % all.len().max(1)) else {
            return;
        };
        // Whoever chooses has left the place that was typed into.
        self.tabs[tab].last_spot = None;
        let path = conflict.path.clone();
        let value = which % conflict.values.len();
        let does = |session: &mut Session, now: u64| {
            session.choose(kind, (&path, value), &Bare, now);
        };
        let would = self.would(tab, does, false);
        let now = self.now(tab);
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let told = self.tabs[tab]
            .session
            .choose(kind, (&path, value), shelf, now);
        self.draw(tab, &told);
        self.did(tab, would);
    }

    fn destroys(&mut self, tab: usize, (which, name, _): Kind) {
        let session = &mut self.tabs[tab].session;
        let is_binned = match which {
            Which::Job => session.job().is_some_and(|open| open.binned.is_some()),
            _ => kept_drop(session).is_some_and(|open| open.binned.is_some()),
        };
        if is_binned {
            session.destroy(vec![name.to_owned()]);
        }
    }

    fn keeps_anew(&mut self, tab: usize, (which, name, _): Kind) {
        if self.tabs[tab].session.keeper().state(name) == Keeping::Gone {
            self.flush(tab);
            let now = self.now(tab);
            let shelf = &self.devices[DEVICE_OF[tab]].quick;
            let told = self.tabs[tab].session.keep_anew(which, shelf, now);
            self.draw(tab, &told);
        }
    }

    /// Whether a tab has no such document, nor the quick store.
    fn holds_none(&self, tab: usize, kind: Kind) -> bool {
        let session = &self.tabs[tab].session;
        let shelf: &dyn Shelf = &self.devices[DEVICE_OF[tab]].quick;
        document(session, kind).is_none() && session.keeper().copies(shelf, kind.1).is_empty()
    }

    pub(super) fn begins(&mut self, tab: usize, (which, ..): Kind) {
        let now = self.now(tab);
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let session = &mut self.tabs[tab].session;
        let id = ID.to_owned();
        match which {
            Which::Job => session.begin(shelf, id, begun(), now),
            _ => {
                let sheet = ColdDropPaper::fresh(UnitSystem::Metric).sheet;
                let paper = ColdDropPaper::of("six".to_owned(), sheet);
                session.begin_drop(shelf, id, paper, now);
            }
        }
        self.tabs[tab].screen = screen_of(&self.tabs[tab].session);
        self.spread(tab);
    }

    fn kill(&mut self, device: usize, is_torn: bool) {
        if self.devices[device].is_fragile {
            return;
        }
        self.devices[device].quick.kill(is_torn);
        for tab in (0..TABS).filter(|tab| DEVICE_OF[*tab] == device) {
            self.model.dies(tab, true);
            self.tabs[tab] = self.start(tab);
        }
        self.devices[device].quick.changed();
    }

    fn reload(&mut self, tab: usize) {
        if self.devices[DEVICE_OF[tab]].is_fragile {
            return;
        }
        // A page that is left is written first; one that is lost is not.
        self.model.dies(tab, false);
        self.tabs[tab] = self.start(tab);
    }

    fn empties(&mut self, device: usize, is_quick: bool) {
        // Both at once are gone for good, and nobody can say otherwise.
        if self.devices[device].is_fragile || self.quiet(device).is_err() {
            return;
        }
        self.devices[device].is_fragile = true;
        if is_quick {
            self.devices[device].quick.empty();
        } else {
            self.devices[device].durable.slots.clear();
            self.devices[device].quick.write_out();
        }
    }

    /// A file goes from one tab to another, of all that is kept.
    pub(super) fn file(&mut self, from: usize, to: usize) {
        if from == to {
            return;
        }
        self.flush(from);
        self.flush(to);
        let session = &self.tabs[from].session;
        let documents = KINDS.iter().filter_map(|kind| document(session, *kind));
        let documents: Vec<Document> = documents.collect();
        let now = self.now(to);
        for document in documents {
            let shelf = &self.devices[DEVICE_OF[to]].quick;
            let told = self.tabs[to].session.take(ID, &document, shelf, now);
            self.draw(to, &told);
        }
        self.spread(to);
    }

    /// What the person of a tab is told.
    pub(super) fn told(&mut self, tab: usize) {
        let it = &self.tabs[tab];
        if !it.seen.is_empty() {
            return;
        }
        for (_, name, spots) in KINDS {
            match it.session.keeper().state(name) {
                Keeping::Both => self.model.told(tab, spots, true),
                Keeping::Only(store, _) => {
                    use coldseat_core::storage::keeper::Store;
                    self.model.told(tab, spots, store == Store::Durable);
                }
                _ => {}
            }
        }
    }
}
