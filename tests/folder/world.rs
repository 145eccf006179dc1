//! Three devices, a folder, and what was done: a list of deeds drawn from a seed
//! does the same again.

use crate::device::Device;
use crate::server::{Mishap, Server};
use coldseat_core::document::edit::Stay;
use coldseat_core::document::paper::Paper;
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::engine::{Engine, Layout};
use coldseat_core::job::{Entries, Entry, Field, Job, Place, UnitSystem};
use coldseat_core::materials::MaterialId;
use coldseat_core::quantity::parse::Unit;
use coldseat_core::storage::folder::DAY;
use serde_json::Value;

const DEVICES: usize = 3;
const JOBS: [&str; 4] = ["a1", "b2", "c3", "d4"];
/// Paths that are typed at in a job: a reading and a name.
const PATHS: [&str; 2] = ["entries/1/bore_d/0", "customer"];

/// One thing that happens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Happens {
    pub what: What,
    pub device: u8,
    pub which: u8,
}

/// What may happen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum What {
    Type,
    Clear,
    Setting,
    Begin,
    Bin,
    Unbin,
    Destroy,
    Look,
    Ask,
    Hear,
    Mishap,
    Restart,
    Wipe,
    Strike,
    Clock,
    BackUp,
    Restore,
    Empty,
    Full,
    ReadOnly,
    Away,
    Heal,
    Quiet,
}

/// How often each happens, of the sum.
pub const OFTEN: [(What, u32); 23] = [
    (What::Type, 60),
    (What::Clear, 10),
    (What::Setting, 10),
    (What::Begin, 10),
    (What::Bin, 6),
    (What::Unbin, 3),
    (What::Destroy, 4),
    (What::Look, 70),
    (What::Ask, 240),
    (What::Hear, 330),
    (What::Mishap, 45),
    (What::Restart, 8),
    (What::Wipe, 2),
    (What::Strike, 2),
    (What::Clock, 4),
    (What::BackUp, 4),
    (What::Restore, 2),
    (What::Empty, 1),
    (What::Full, 3),
    (What::ReadOnly, 3),
    (What::Away, 5),
    (What::Heal, 25),
    (What::Quiet, 4),
];

/// A value that was typed, or cleared.
#[derive(Debug)]
struct Deed {
    spot: (usize, usize),
    text: Option<String>,
    replaces: Option<String>,
    device: usize,
    /// The device it was done on has it no more, and it may not have left it.
    is_free: bool,
    /// That device has it no more: what is left of it lies in the folder.
    is_away: bool,
}

pub struct World {
    devices: Vec<Device>,
    server: Server,
    deeds: Vec<Deed>,
    begun: [bool; JOBS.len()],
    unbinned: [bool; JOBS.len()],
    /// A job was put into the bin by a deed that must count.
    binned: Vec<(usize, usize, bool)>,
    /// How often anything was done to a job.
    changes: [usize; JOBS.len()],
    /// Jobs thrown away for good where all devices had the same of it: by which
    /// device, and how often it had been changed by then.
    gone: Vec<(usize, usize, usize)>,
    is_wiped: bool,
    time: u64,
    starts: u32,
    texts: u32,
}

fn job() -> Job {
    let engine = Engine {
        name: "one".to_owned(),
        cylinders: 1,
        layout: Layout::InLine,
        units: UnitSystem::Metric,
        sleeve_material: MaterialId::GrayIron,
        block_material: MaterialId::GrayIron,
    };
    Job::new(engine, Entries::default())
}

fn name_of(job: usize) -> String {
    format!("coldseat/job/{}", JOBS[job])
}

fn text_of(value: &Value) -> String {
    let first = value.as_array().and_then(|parts| parts.first());
    let text = first.unwrap_or(value).as_str();
    text.unwrap_or_default().to_owned()
}

/// All texts that stand at a path of a job, the one shown first.
fn standing(document: &Document, path: &str) -> Vec<String> {
    let Body::Job(job) = &document.body else {
        return Vec::new();
    };
    let mut shown = Some(&job.value()).cloned();
    for key in path.split('/') {
        shown = shown.and_then(|value| match value {
            Value::Array(list) => list.get(key.parse::<usize>().ok()?).cloned(),
            other => other.get(key).cloned(),
        });
    }
    let shown = shown.map(|value| text_of(&value));
    let beside = job.ledger.rivals.get(path).into_iter().flatten();
    let all = shown
        .into_iter()
        .chain(beside.map(|rival| text_of(&rival.value)));
    all.filter(|text| !text.is_empty()).collect()
}

impl World {
    pub fn new() -> Self {
        let time = 1_700_000_000_000;
        let devices = (0..DEVICES).map(|which| Device::new(which as u32, which as u32, time));
        Self {
            devices: devices.collect(),
            server: Server::default(),
            deeds: Vec::new(),
            begun: [false; JOBS.len()],
            unbinned: [false; JOBS.len()],
            binned: Vec::new(),
            changes: [0; JOBS.len()],
            gone: Vec::new(),
            is_wiped: false,
            time,
            starts: DEVICES as u32,
            texts: 0,
        }
    }

    fn now(&self, device: usize) -> u64 {
        self.time.saturating_add_signed(self.devices[device].clock)
    }

    pub fn step(&mut self, happens: Happens) -> Result<(), String> {
        self.time += 40;
        let device = usize::from(happens.device) % DEVICES;
        let which = usize::from(happens.which);
        let now = self.now(device);
        let of = which % JOBS.len();
        match happens.what {
            What::Type | What::Clear => {
                let spot = (of, (which / 16) % PATHS.len());
                self.types(device, spot, happens.what == What::Clear, now);
            }
            What::Setting => {
                self.texts += 1;
                let text = format!("0.00{}", 1 + self.texts % 9);
                let place = Place::of_engine(Field::GaugeBore);
                let entry = Entry::new(&text, Unit::Millimetre, now);
                let put = |shop: &mut coldseat_core::document::Shop| {
                    shop.entries.put(place, entry);
                };
                self.devices[device].session.edit_shop(put, Stay::New, now);
                self.devices[device].keeps(now);
            }
            What::Begin => {
                if !std::mem::replace(&mut self.begun[of], true) {
                    self.devices[device].begin(JOBS[of], job(), now);
                }
            }
            What::Bin => {
                let is_out = |d: &Document| d.binned.is_none();
                if self.devices[device]
                    .document(&name_of(of))
                    .is_some_and(|d| is_out(&d))
                {
                    self.devices[device].bin(JOBS[of], true, now);
                    self.binned.push((of, device, false));
                    self.changes[of] += 1;
                }
            }
            What::Unbin => {
                let is_in = |d: &Document| d.binned.is_some();
                if self.devices[device]
                    .document(&name_of(of))
                    .is_some_and(|d| is_in(&d))
                {
                    self.devices[device].bin(JOBS[of], false, now);
                    self.unbinned[of] = true;
                    self.changes[of] += 1;
                }
            }
            What::Destroy => {
                let name = name_of(of);
                let there = self.devices[device].document(&name);
                if there.is_some_and(|document| document.binned.is_some()) {
                    self.is_free_unless_sent(device, Some(of));
                    let texts = (0..DEVICES)
                        .filter_map(|which| Some(write(&self.devices[which].document(&name)?)));
                    let texts: Vec<String> = texts.collect();
                    if !self.is_wiped && texts.windows(2).all(|pair| pair[0] == pair[1]) {
                        self.gone.push((of, device, self.changes[of]));
                    }
                    self.devices[device].destroy(&name, now);
                }
            }
            What::Look => self.devices[device].folder.look(),
            What::Ask => {
                self.devices[device].asks(now);
            }
            What::Hear => {
                self.devices[device].hears(&mut self.server, Mishap::None, which, now)?;
            }
            What::Mishap => {
                let all = [
                    Mishap::CutBefore,
                    Mishap::CutAfter,
                    Mishap::Fails,
                    Mishap::Half,
                    Mishap::Stale,
                    Mishap::Delayed,
                ];
                let mishap = all[which % all.len()];
                self.devices[device].hears(&mut self.server, mishap, which / 8, now)?;
            }
            What::Restart => {
                self.starts += 1;
                let start = self.starts;
                self.devices[device].restart(start, now);
            }
            What::Wipe => {
                self.is_free_unless_sent(device, None);
                self.is_wiped = true;
                self.gone.retain(|(_, by, _)| *by != device);
                self.starts += 1;
                let clock = self.devices[device].clock;
                self.devices[device] = Device::new(device as u32, self.starts, now);
                self.devices[device].clock = clock;
            }
            What::Strike => {
                let folder = &mut self.devices[device].folder;
                let keys: Vec<String> = folder.peers().map(|(key, _)| key.clone()).collect();
                if !keys.is_empty() {
                    folder.strike(&keys[which % keys.len()]);
                }
            }
            What::Clock => {
                let day = DAY as i64;
                self.devices[device].clock = [0, day, -day, 3_600_000][which % 4];
            }
            What::BackUp => self.server.back_up(),
            What::Restore => {
                self.server.restore();
                self.folder_lost();
            }
            What::Empty => {
                self.server.empty();
                self.folder_lost();
            }
            What::Full => self.server.is_full = true,
            What::ReadOnly => self.server.is_read_only = true,
            What::Away => self.server.is_away = true,
            What::Heal => self.server.heal(),
            What::Quiet => self.quiet()?,
        }
        Ok(())
    }

    fn types(&mut self, device: usize, spot: (usize, usize), is_clear: bool, now: u64) {
        let name = name_of(spot.0);
        let Some(before) = self.devices[device].document(&name) else {
            return;
        };
        let shown = standing(&before, PATHS[spot.1]).into_iter().next();
        if is_clear && shown.is_none() {
            return;
        }
        self.texts += 1;
        let text = if is_clear {
            String::new()
        } else if spot.1 == 0 {
            format!("1{:05}.5", self.texts)
        } else {
            format!("c{}", self.texts)
        };
        let put = |job: &mut Job| {
            if spot.1 == 0 {
                let place = Place::of_cylinder(1, Field::BoreD, 0);
                job.entries
                    .put(place, Entry::new(&text, Unit::Millimetre, now));
            } else {
                job.customer.clone_from(&text);
            }
        };
        if !self.devices[device].edit(JOBS[spot.0], now, put) {
            return;
        }
        self.changes[spot.0] += 1;
        self.deeds.push(Deed {
            spot,
            text: (!is_clear).then_some(text),
            replaces: shown,
            device,
            is_free: false,
            is_away: false,
        });
    }

    /// What was done on a device that has it no more is only where it was sent to.
    fn is_free_unless_sent(&mut self, device: usize, job: Option<usize>) {
        let one = &self.devices[device];
        let waits: Vec<bool> = (0..JOBS.len())
            .map(|of| one.folder.is_waiting(&name_of(of)))
            .collect();
        for deed in &mut self.deeds {
            if deed.device == device && job.is_none_or(|of| of == deed.spot.0) {
                deed.is_free |= waits[deed.spot.0];
                deed.is_away = true;
            }
        }
        for (of, by, is_free) in &mut self.binned {
            if *by == device && job.is_none_or(|only| only == *of) {
                *is_free |= waits[*of];
            }
        }
    }

    /// The folder has less than it had.
    fn folder_lost(&mut self) {
        for deed in self.deeds.iter_mut().filter(|deed| deed.is_away) {
            deed.is_free = true;
        }
        for (_, _, is_free) in &mut self.binned {
            *is_free = true;
        }
    }

    /// Everything works, and every device looks until nothing moves.
    fn quiet(&mut self) -> Result<(), String> {
        self.server.heal();
        let mut before = None;
        for round in 0..12 {
            for device in 0..DEVICES {
                let now = self.now(device);
                self.devices[device].flights.clear();
                if round == 0 {
                    self.starts += 1;
                    let start = self.starts;
                    self.devices[device].restart(start, now);
                }
                self.devices[device].looks(&mut self.server, now)?;
            }
            let after = Some(self.server.tree.clone());
            if round > 1 && before == after {
                return self.holds();
            }
            before = after;
        }
        Err("it never comes to rest".to_owned())
    }

    fn holds(&self) -> Result<(), String> {
        for (which, device) in self.devices.iter().enumerate() {
            let standing = device.folder.standing();
            let is_well = standing.away.is_none() && standing.refused.is_none();
            if !is_well || standing.waiting > 0 || standing.half > 0 {
                return Err(format!(
                    "device {which} stands as {standing:?} where all is well"
                ));
            }
        }
        for (of, id) in JOBS.into_iter().enumerate() {
            let name = name_of(of);
            let there: Vec<(usize, Document)> = (0..DEVICES)
                .filter_map(|which| Some((which, self.devices[which].document(&name)?)))
                .collect();
            for which in 0..DEVICES {
                let is_there = there.iter().any(|(other, _)| *other == which);
                let may_lack = self.devices[which].destroyed.contains(&name);
                if !is_there && !there.is_empty() && !may_lack {
                    return Err(format!("device {which} lacks {id}"));
                }
            }
            for pair in there.windows(2) {
                let (one, other) = (write(&pair[0].1), write(&pair[1].1));
                if one != other {
                    return Err(format!("{id} differs:\n{one}\n{other}"));
                }
            }
            for (which, document) in &there {
                self.stands(of, *which, document)?;
            }
        }
        for (of, by, changes) in &self.gone {
            let is_back = self.devices[*by].document(&name_of(*of)).is_some();
            if is_back && *changes == self.changes[*of] {
                return Err(format!("{} is back on device {by}", JOBS[*of]));
            }
        }
        let shops: Vec<Option<String>> = (0..DEVICES)
            .map(|which| Some(write(&self.devices[which].document("coldseat/shop")?)))
            .collect();
        if shops.windows(2).any(|pair| pair[0] != pair[1]) {
            return Err(format!("settings differ: {shops:#?}"));
        }
        Ok(())
    }

    fn stands(&self, of: usize, which: usize, document: &Document) -> Result<(), String> {
        let id = JOBS[of];
        let counts = self.binned.iter().any(|(job, _, free)| *job == of && !free);
        if counts && !self.unbinned[of] && document.binned.is_none() {
            return Err(format!("{id} came out of the bin on device {which}"));
        }
        for (at, path) in PATHS.into_iter().enumerate() {
            let texts = standing(document, path);
            let deeds = || self.deeds.iter().filter(|deed| deed.spot == (of, at));
            for deed in deeds().filter(|deed| !deed.is_free) {
                if let Some(before) = &deed.replaces
                    && texts.contains(before)
                {
                    return Err(format!("{path} of {id}: {before} returned, {deed:?}"));
                }
                let Some(text) = &deed.text else { continue };
                let replaced = deeds().any(|later| later.replaces.as_ref() == Some(text));
                if !replaced && !texts.contains(text) {
                    return Err(format!("{path} of {id}: {text} lost, {texts:?} stand"));
                }
            }
            let typed = |text: &String| deeds().any(|deed| deed.text.as_ref() == Some(text));
            if let Some(text) = texts.iter().find(|text| !typed(text)) {
                return Err(format!("{path} of {id}: {text} was never typed"));
            }
        }
        Ok(())
    }
}
