//! A device: a tab with its two stores, and its side of the folder.

use crate::server::{Mishap, Server};
use crate::stores::{Durable, Quick};
use coldseat_core::document::edit::Stay;
use coldseat_core::document::slot::read_slot;
use coldseat_core::document::{ColdDropPaper, Document, Restored, Shop, restore};
use coldseat_core::job::ledger::Writer;
use coldseat_core::job::{Job, Millis, UnitSystem};
use coldseat_core::storage::folder::{Call, Event, Folder, Own};
use coldseat_core::storage::session::{Session, Which};
use coldseat_core::storage::slots;

/// A device.
pub struct Device {
    pub quick: Quick,
    durable: Durable,
    pub session: Session,
    pub folder: Folder,
    /// What it remembers of its joining: key and number.
    pub own: Own,
    number: u64,
    pub flights: Vec<(u32, Call)>,
    pub clock: i64,
    /// Names of what was taken out for good here.
    pub destroyed: Vec<String>,
}

fn session(quick: &Quick, writer: Writer, at: Millis) -> Session {
    let units = UnitSystem::Metric;
    let fresh = (Shop::fresh(units), ColdDropPaper::fresh(units));
    Session::start(quick, writer, fresh, at)
}

impl Device {
    pub fn new(which: u32, start: u32, at: Millis) -> Self {
        let own = Own {
            key: format!("d{which}x{start}"),
            name: format!("Device {which}"),
            writer: which + 1,
        };
        let quick = Quick::default();
        let mut device = Self {
            session: session(&quick, Writer::of(which + 1, start), at),
            quick,
            durable: Durable::default(),
            folder: Folder::new(own.clone(), 0),
            own,
            number: 0,
            flights: Vec::new(),
            clock: 0,
            destroyed: Vec::new(),
        };
        device.wakes(at);
        device
    }

    /// The page is loaded anew; what was under way is gone.
    pub fn restart(&mut self, start: u32, at: Millis) {
        self.keeps(at);
        let which = self.own.writer;
        self.session = session(&self.quick, Writer::of(which, start), at);
        self.folder = Folder::new(self.own.clone(), self.number);
        self.flights.clear();
        self.wakes(at);
    }

    fn wakes(&mut self, at: Millis) {
        self.keeps(at);
        self.folder.scan(self.all_names());
        self.reads();
    }

    fn all_names(&self) -> Vec<String> {
        slots::names(&self.quick)
    }

    /// What was done is written, into both stores.
    pub fn keeps(&mut self, at: Millis) {
        self.session.flush(&self.quick, at);
        while let Some(ask) = self.session.next(&self.quick) {
            let answer = self.durable.run(&ask, false);
            self.session.answered(answer, &self.quick, at);
        }
        for name in self.session.touched() {
            self.folder.touch(&name);
        }
    }

    /// The folder is told of the documents that it wants to know.
    pub fn reads(&mut self) {
        while let Some(name) = self.folder.wants().cloned() {
            let content = self.content(&name);
            self.folder.local(&name, content.as_deref());
        }
    }

    pub fn content(&self, name: &str) -> Option<String> {
        self.session
            .keeper()
            .copies(&self.quick, name)
            .into_iter()
            .next()
    }

    /// A document as it is kept.
    pub fn document(&self, name: &str) -> Option<Document> {
        match restore(&read_slot(&self.content(name)?)?.text) {
            Restored::Valid(document) => Some(document),
            other => panic!("{name}: {other:?}"),
        }
    }

    /// A call goes out, where there is one.
    pub fn asks(&mut self, at: Millis) -> bool {
        self.reads();
        let next = self.folder.next(at);
        let goes = next.is_some();
        self.flights.extend(next);
        goes
    }

    /// The server answers one of the calls that are out.
    pub fn hears(
        &mut self,
        server: &mut Server,
        mishap: Mishap,
        which: usize,
        at: Millis,
    ) -> Result<bool, String> {
        if self.flights.is_empty() {
            return Ok(false);
        }
        let (ticket, call) = self.flights.remove(which % self.flights.len());
        let is_own = |path: &str| path.starts_with(&self.own.key);
        match &call {
            Call::Put(path, _) | Call::Delete(path) if !is_own(path) => {
                return Err(format!("{path} is not its own"));
            }
            Call::MakeFolder(path) if !path.is_empty() && !is_own(path) => {
                return Err(format!("{path} is not its own"));
            }
            _ => {}
        }
        let reply = server.answer(&call, mishap);
        for event in self.folder.answered(ticket, reply, None, at) {
            match event {
                Event::Came(name, slot) => {
                    self.session.take_copy(&name, &slot, &self.quick, at);
                    self.keeps(at);
                }
                Event::Wrote(number) => self.number = number,
                Event::Older => {}
            }
        }
        self.reads();
        Ok(true)
    }

    pub fn begin(&mut self, id: &str, job: Job, at: Millis) {
        self.session.begin(&self.quick, id.to_owned(), job, at);
        self.keeps(at);
    }

    /// Opens a job and changes it; says whether it is here.
    pub fn edit(&mut self, id: &str, at: Millis, change: impl FnOnce(&mut Job)) -> bool {
        if !self.opens(id) {
            return false;
        }
        self.session.edit_job(change, Stay::New, at);
        self.keeps(at);
        true
    }

    pub fn opens(&mut self, id: &str) -> bool {
        let is_open = self.session.job().is_some_and(|open| open.id == id);
        if !is_open {
            self.session.open_job(&self.quick, id, "");
        }
        self.session.job().is_some_and(|open| open.id == id)
    }

    pub fn bin(&mut self, id: &str, into: bool, at: Millis) {
        if self.opens(id) {
            self.session.bin(Which::Job, into, &self.quick, at);
            self.keeps(at);
        }
    }

    /// Takes a job out for good.
    pub fn destroy(&mut self, name: &str, at: Millis) {
        let Some(content) = self.content(name) else {
            return;
        };
        let buried = self.session.bury(&self.quick, name, &content);
        assert_eq!(buried, Ok(()));
        self.session.close_job(&self.quick, at);
        self.session.destroy(vec![name.to_owned()]);
        self.keeps(at);
        self.destroyed.push(name.to_owned());
    }

    /// One look at a server that works, to its end.
    pub fn looks(&mut self, server: &mut Server, at: Millis) -> Result<(), String> {
        self.folder.look();
        for _ in 0..20_000 {
            while self.asks(at) {}
            if !self.hears(server, Mishap::None, 0, at)? {
                return Ok(());
            }
        }
        Err("a look has no end".to_owned())
    }
}
