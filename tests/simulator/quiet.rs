//! A device comes to rest; then what must hold is held against what was done.

use super::*;

impl World {
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
                self.opens(tab, round);
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

    /// What is kept and not open is opened, one thing at a time.
    fn opens(&mut self, tab: usize, round: usize) {
        let shelf = &self.devices[DEVICE_OF[tab]].quick;
        let session = &mut self.tabs[tab].session;
        if round.is_multiple_of(2) && session.job().is_none() {
            session.open_job(shelf, ID, "");
            self.tabs[tab].screen.0 = screen_of(session).0;
        } else if !round.is_multiple_of(2) && kept_drop(session).is_none() {
            session.open_drop(shelf, ID);
            self.tabs[tab].screen.2 = screen_of(session).2;
        }
    }

    /// A device comes to rest; then all that was promised holds.
    pub(super) fn quiet(&mut self, device: usize) -> Result<(), String> {
        self.settle(device)?;
        self.devices[device].is_fragile = false;
        self.same(device)?;
        let tab = (0..TABS).find(|tab| DEVICE_OF[*tab] == device).unwrap_or(0);
        self.holds(tab, |deed| deed.device == device)
    }

    /// Both devices come to rest and take each other's file.
    pub(super) fn all_quiet(&mut self) -> Result<(), String> {
        self.quiet(0)?;
        self.quiet(1)?;
        self.file(0, 3);
        self.quiet(1)?;
        self.file(3, 0);
        self.quiet(0)?;
        // What was deleted here and came back was joined with what a screen still
        // showed of it.
        self.file(0, 3);
        self.quiet(1)?;
        self.holds(0, |_| true)?;
        self.holds(3, |_| true)?;
        let text = |tab: usize| {
            let session: &Session = &self.tabs[tab].session;
            KINDS.map(|kind| document(session, kind).map(|d| write(&d)))
        };
        if text(0) != text(3) {
            return Err(format!("two devices differ:\n{:?}\n{:?}", text(0), text(3)));
        }
        Ok(())
    }

    /// All tabs of a device show the same, and both stores hold it.
    fn same(&self, device: usize) -> Result<(), String> {
        let shelf = &self.devices[device].quick;
        let stored = &self.devices[device].durable.slots;
        let of = |content: Option<String>| {
            content
                .and_then(|content| coldseat_core::document::slot::read_slot(&content))
                .map(|slot| slot.text)
        };
        let mut seen: [Option<String>; 3] = [None, None, None];
        for tab in (0..TABS).filter(|tab| DEVICE_OF[*tab] == device) {
            let session = &self.tabs[tab].session;
            let (screen, held) = (texts(&self.tabs[tab].screen), texts(&screen_of(session)));
            if screen != held {
                return Err(format!("tab {tab} shows {screen:?} and has {held:?}"));
            }
            for (kind, before) in KINDS.into_iter().zip(&mut seen) {
                let name = kind.1;
                let quick = of(slots::newest_content(shelf, name));
                let durable = of(stored.get(name).cloned());
                let state = session.keeper().state(name);
                let text = document(session, kind).map(|d| write(&d));
                if state == Keeping::Gone && quick.is_none() && durable.is_none() {
                    // Deleted, and said to be.
                    continue;
                }
                if !matches!(state, Keeping::Both | Keeping::Idle) {
                    return Err(format!("tab {tab}: {name} is {state:?} where all is well"));
                }
                let is_kept = state == Keeping::Both;
                for (store, there) in [("quick", quick), ("durable", durable.clone())] {
                    let is_alike = there == text;
                    if !is_alike && (is_kept || there.is_some()) {
                        return Err(format!(
                            "tab {tab} shows\n{text:?}\nand the {store} store holds\n{there:?}"
                        ));
                    }
                }
                // Nobody has set anything: nothing lies anywhere.
                if durable.is_none() {
                    continue;
                }
                if before
                    .as_ref()
                    .is_some_and(|before| Some(before) != text.as_ref())
                {
                    return Err(format!("tab {tab} shows\n{text:?}\nanother\n{before:?}"));
                }
                *before = text;
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
