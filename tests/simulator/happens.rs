//! What happens, one thing at a time, and what must hold when it is quiet.

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
                let told = self.tabs[tab]
                    .session
                    .bin(Which::Job, which % 2 == 0, shelf, now);
                self.draw(tab, &told);
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

    fn asks(&mut self, tab: usize) {
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let it = &mut self.tabs[tab];
        if it.asked.is_none() && it.answer.is_none() {
            it.asked = it.session.next(shelf);
        }
    }

    fn commits(&mut self, tab: usize) {
        let device = &mut self.devices[DEVICE_OF[tab]];
        if let Some(ask) = self.tabs[tab].asked.take() {
            let aborts = core::mem::take(&mut device.aborts);
            self.tabs[tab].answer = Some(device.durable.run(&ask, aborts));
        }
    }

    fn answers(&mut self, tab: usize) {
        if let Some(answer) = self.tabs[tab].answer.take() {
            let now = self.now(tab);
            // What waits is noted first, as the session does.
            self.flush(tab);
            let shelf = &self.devices[DEVICE_OF[tab]].quick;
            let told = self.tabs[tab].session.answered(answer, shelf, now);
            self.draw(tab, &told);
        }
    }

    fn hears(&mut self, tab: usize) {
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
        let which = [Which::Job, Which::Job, Which::Shop][which % 3];
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
        let Some(open) = self.tabs[tab].session.job() else {
            return;
        };
        let all = conflicts(&open.job);
        let Some(conflict) = all.get(which % all.len().max(1)) else {
            return;
        };
        let path = conflict.path.clone();
        let value = which % conflict.values.len();
        let does = |session: &mut Session, now: u64| {
            session.choose(Which::Job, (&path, value), &Bare, now);
        };
        let would = self.would(tab, does, false);
        let now = self.now(tab);
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let told = self.tabs[tab]
            .session
            .choose(Which::Job, (&path, value), shelf, now);
        self.draw(tab, &told);
        self.did(tab, would);
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

    /// A file goes from one tab to another, of the job and the settings.
    fn file(&mut self, from: usize, to: usize) {
        if from == to {
            return;
        }
        self.flush(from);
        self.flush(to);
        let session = &self.tabs[from].session;
        let shop = session.shop().document("coldseat/shop");
        let documents: Vec<_> = session.document().into_iter().chain([shop]).collect();
        let now = self.now(to);
        for document in documents {
            let shelf = &self.devices[DEVICE_OF[to]].quick;
            let told = self.tabs[to].session.take(ID, &document, shelf, now);
            self.draw(to, &told);
        }
        self.spread(to);
    }

    /// What the person of a tab is told.
    fn told(&mut self, tab: usize) {
        let it = &self.tabs[tab];
        if !it.seen.is_empty() {
            return;
        }
        let names = [
            ("coldseat/job/a1", &JOB_SPOTS[..]),
            ("coldseat/shop", &SHOP_SPOTS[..]),
        ];
        for (name, spots) in names {
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

    /// Everything that can happen by itself happens, with stores that work.
    fn settle(&mut self, device: usize) -> Result<(), String> {
        self.devices[device].quick.fault.set(None);
        self.devices[device].durable.fault = None;
        self.devices[device].aborts = false;
        let tabs = || (0..TABS).filter(move |tab| DEVICE_OF[*tab] == device);
        for round in 0..60 {
            for tab in tabs() {
                self.flush(tab);
                self.spread(tab);
                if round < 2 {
                    let now = self.now(tab);
                    let shelf = &self.devices[device].quick;
                    let told = self.tabs[tab].session.comes_back(shelf, now);
                    self.draw(tab, &told);
                }
                if self.tabs[tab].session.job().is_none() {
                    let shelf = &self.devices[device].quick;
                    self.tabs[tab].session.open_job(shelf, ID, "");
                    self.tabs[tab].screen = screen_of(&self.tabs[tab].session);
                }
                for _ in 0..30 {
                    self.asks(tab);
                    self.commits(tab);
                    self.answers(tab);
                    self.spread(tab);
                    if self.tabs[tab].session.keeper().is_quiet() {
                        break;
                    }
                }
                while !self.tabs[tab].inbox.is_empty() {
                    self.hears(tab);
                    self.spread(tab);
                }
                self.told(tab);
            }
            let is_quiet = tabs().all(|tab| {
                self.tabs[tab].session.keeper().is_quiet() && self.tabs[tab].inbox.is_empty()
            });
            if is_quiet && round > 2 {
                return Ok(());
            }
        }
        Err("it never comes to rest".to_owned())
    }

    /// A device comes to rest; then all that was promised holds.
    fn quiet(&mut self, device: usize) -> Result<(), String> {
        self.settle(device)?;
        self.devices[device].is_fragile = false;
        self.same(device)?;
        let tab = (0..TABS).find(|tab| DEVICE_OF[*tab] == device).unwrap_or(0);
        if self.tabs[tab].session.job().is_none() {
            return Ok(());
        }
        self.holds(tab, |deed| deed.device == device)
    }

    /// Both devices come to rest and take each other's file.
    fn all_quiet(&mut self) -> Result<(), String> {
        self.quiet(0)?;
        self.quiet(1)?;
        self.file(0, 3);
        self.quiet(1)?;
        self.file(3, 0);
        self.quiet(0)?;
        self.holds(0, |_| true)?;
        self.holds(3, |_| true)?;
        let text = |tab: usize| {
            let session: &Session = &self.tabs[tab].session;
            let job = session.document().map(|d| write(&d));
            (job, write(&session.shop().document("coldseat/shop")))
        };
        if text(0) != text(3) {
            return Err(format!("two devices differ:\n{:?}\n{:?}", text(0), text(3)));
        }
        Ok(())
    }

    /// All tabs of a device show the same, and both stores hold it.
    fn same(&self, device: usize) -> Result<(), String> {
        let shelf = &self.devices[device].quick;
        let mut seen: Option<(Option<String>, String)> = None;
        for tab in (0..TABS).filter(|tab| DEVICE_OF[*tab] == device) {
            let session = &self.tabs[tab].session;
            let (screen, held) = (texts(&self.tabs[tab].screen), texts(&screen_of(session)));
            if screen != held {
                return Err(format!("tab {tab} shows {screen:?} and has {held:?}"));
            }
            let job = session.document().map(|d| write(&d));
            let shop = write(&session.shop().document("coldseat/shop"));
            let mut now = (job, shop);
            for (name, text) in [
                ("coldseat/job/a1", now.0.as_ref()),
                ("coldseat/shop", Some(&now.1)),
            ] {
                let state = session.keeper().state(name);
                if !matches!(state, Keeping::Both | Keeping::Idle) {
                    return Err(format!("tab {tab}: {name} is {state:?} where all is well"));
                }
                let of = |content: Option<String>| {
                    content
                        .and_then(|content| coldseat_core::document::slot::read_slot(&content))
                        .map(|slot| slot.text)
                };
                let quick = of(coldseat_core::storage::slots::newest_content(shelf, name));
                let durable = of(self.devices[device].durable.slots.get(name).cloned());
                let is_kept = state == Keeping::Both;
                for (store, there) in [("quick", quick), ("durable", durable)] {
                    let is_alike = there.as_ref() == text;
                    if !is_alike && (is_kept || there.is_some()) {
                        return Err(format!(
                            "tab {tab} shows\n{text:?}\nand the {store} store holds\n{there:?}"
                        ));
                    }
                }
            }
            if !self.devices[device]
                .durable
                .slots
                .contains_key("coldseat/shop")
            {
                // Nobody has set anything: nothing lies anywhere.
                now.1.clear();
            }
            match &seen {
                Some(other) if *other != now => {
                    return Err(format!("tab {tab} shows\n{now:?}\nanother\n{other:?}"));
                }
                _ => seen = Some(now),
            }
        }
        Ok(())
    }

    fn holds(
        &mut self,
        tab: usize,
        is_mine: impl Fn(&crate::model::Deed) -> bool + Copy,
    ) -> Result<(), String> {
        for (spot, path) in PATHS.into_iter().enumerate() {
            let standing = at_spot(&self.tabs[tab].session, spot);
            self.model
                .check(spot, &standing, is_mine)
                .map_err(|why| format!("tab {tab}, {path}: {why}; stands {standing:?}"))?;
        }
        Ok(())
    }
}
