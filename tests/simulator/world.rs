//! Two devices with tabs, stores and clocks; anything may stop between any two
//! steps. What is done is a list of deeds drawn from a seed: the same list does
//! the same again.

use crate::model::{Dot, Model, standing};
use crate::stores::{Bare, Durable, Quick};
use coldseat_core::document::edit::Stay;
use coldseat_core::document::merge::conflicts;
use coldseat_core::document::{ColdDropPaper, Document, Shop, write};
use coldseat_core::job::engine::{Engine, Layout};
use coldseat_core::job::ledger::Writer;
use coldseat_core::job::{Entries, Entry, Field, Job, Place, UnitSystem};
use coldseat_core::materials::MaterialId;
use coldseat_core::quantity::parse::Unit;
use coldseat_core::storage::keeper::Keeping;
use coldseat_core::storage::session::{Session, Told, Which};
use coldseat_core::storage::{Answer, Ask, Open, Shelf, StoreFault, slots};
use std::collections::VecDeque;

#[path = "happens.rs"]
mod happens;
#[path = "quiet.rs"]
mod quiet;

/// Tabs, by the device they are on.
const DEVICE_OF: [usize; 5] = [0, 0, 0, 1, 1];
const TABS: usize = DEVICE_OF.len();
/// Places that are typed into: four of the job, two of the settings, two of a cold
/// drop that is kept.
pub const SPOTS: usize = 8;
const JOB_SPOTS: [usize; 4] = [0, 1, 2, 3];
const SHOP_SPOTS: [usize; 2] = [4, 5];
const DROP_SPOTS: [usize; 2] = [6, 7];
const ID: &str = "a1";

/// A document under its name, with the places that are typed into.
type Kind = (Which, &'static str, &'static [usize]);
const KINDS: [Kind; 3] = [
    (Which::Job, "coldseat/job/a1", &JOB_SPOTS),
    (Which::Shop, "coldseat/shop", &SHOP_SPOTS),
    (Which::KeptDrop, "coldseat/drops/a1", &DROP_SPOTS),
];
/// Those that can be put into the bin and destroyed.
const MANY: [Kind; 2] = [KINDS[0], KINDS[2]];

/// One thing that happens; the numbers say which, as far as there are so many.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Happens {
    pub what: What,
    pub tab: u8,
    pub which: u8,
}

/// What may happen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum What {
    Type,
    TypeOn,
    Clear,
    Flush,
    Ask,
    Commit,
    Answer,
    Hear,
    Miss,
    Undo,
    Redo,
    Choose,
    Bin,
    Destroy,
    KeepAnew,
    Begin,
    WriteOut,
    Kill,
    Reload,
    FaultQuick,
    FaultDurable,
    Heal,
    Abort,
    Clock,
    File,
    Late,
    ComeBack,
    EmptyQuick,
    EmptyDurable,
    Quiet,
    AllQuiet,
}

/// How often each happens, of the sum.
pub const OFTEN: [(What, u32); 31] = [
    (What::Type, 110),
    (What::TypeOn, 70),
    (What::Clear, 35),
    (What::Flush, 150),
    (What::Ask, 170),
    (What::Commit, 170),
    (What::Answer, 170),
    (What::Hear, 110),
    (What::Miss, 12),
    (What::Undo, 28),
    (What::Redo, 12),
    (What::Choose, 10),
    (What::Bin, 6),
    (What::Destroy, 4),
    (What::KeepAnew, 6),
    (What::Begin, 6),
    (What::WriteOut, 25),
    (What::Kill, 4),
    (What::Reload, 10),
    (What::FaultQuick, 7),
    (What::FaultDurable, 7),
    (What::Heal, 14),
    (What::Abort, 5),
    (What::Clock, 6),
    (What::File, 8),
    (What::Late, 6),
    (What::ComeBack, 8),
    (What::EmptyQuick, 2),
    (What::EmptyDurable, 2),
    (What::Quiet, 6),
    (What::AllQuiet, 2),
];

/// The job, the settings and the kept cold drop on a screen.
type Screen = (Option<Job>, Shop, Option<ColdDropPaper>);

fn screen_of(session: &Session) -> Screen {
    (
        session.job().map(|open| open.job.clone()),
        session.shop().job.clone(),
        kept_drop(session).map(|open| open.job.clone()),
    )
}

fn kept_drop(session: &Session) -> Option<&Open<ColdDropPaper>> {
    let (which, open) = session.drop_at_hand();
    (which == Which::KeptDrop).then_some(open)
}

/// A document of a tab, where it is open.
fn document(session: &Session, (which, name, _): Kind) -> Option<Document> {
    match which {
        Which::Job => session.document(),
        Which::Shop => Some(session.shop().document(name)),
        Which::Drop | Which::KeptDrop => kept_drop(session).map(|open| open.document(name)),
    }
}

/// The texts on a screen, spot by spot; who wrote them is not shown.
fn texts((job, shop, kept): &Screen) -> Vec<Vec<String>> {
    let all = PATHS.into_iter().enumerate().map(|(spot, path)| {
        let standing = match which_of(spot) {
            Which::Job => job.as_ref().map_or(Vec::new(), |job| standing(job, path)),
            Which::Shop => standing(shop, path),
            Which::Drop | Which::KeptDrop => kept
                .as_ref()
                .map_or(Vec::new(), |kept| standing(kept, path)),
        };
        standing.into_iter().map(|(_, text)| text).collect()
    });
    all.collect()
}

/// A spot, what stood there, and whether the hand stayed.
type Seen = (usize, Vec<(Dot, String)>, Stay);

struct Tab {
    session: Session,
    /// What its screen shows: changed by the hand and where the session tells.
    screen: Screen,
    /// What is under way to the durable store, and what comes back from it.
    asked: Option<Ask>,
    answer: Option<Answer>,
    /// What was to be taken out of the durable store last.
    removing: Vec<String>,
    inbox: VecDeque<String>,
    /// What was seen at a spot when it was changed, until that is noted.
    seen: Vec<Seen>,
    cleared: Vec<usize>,
    last_spot: Option<usize>,
    /// Where the last change of each document was noted.
    noted: Vec<usize>,
}

struct Device {
    quick: Quick,
    durable: Durable,
    clock: i64,
    /// One of its stores was emptied and is not filled again yet.
    is_fragile: bool,
    aborts: bool,
}

pub struct World {
    devices: [Device; 2],
    tabs: Vec<Tab>,
    model: Model,
    time: u64,
    starts: u32,
    texts: u32,
}

fn begun() -> Job {
    let engine = Engine {
        name: "one".to_owned(),
        cylinders: 1,
        layout: Layout::InLine,
        units: UnitSystem::Metric,
        sleeve_material: MaterialId::GrayIron,
        block_material: MaterialId::GrayIron,
    };
    let mut entries = Entries::default();
    entries.put(
        Place::of_cylinder(1, Field::BoreD, 0),
        Entry::new("130.00", Unit::Millimetre, 1),
    );
    Job::new(engine, entries)
}

fn place(spot: usize) -> Option<Place> {
    match spot {
        0 => Some(Place::of_cylinder(1, Field::BoreD, 0)),
        1 => Some(Place::of_cylinder(1, Field::BoreD, 1)),
        2 => Some(Place::of_engine(Field::Pitch)),
        4 => Some(Place::of_engine(Field::GaugeDepth)),
        5 => Some(Place::of_engine(Field::GaugeBore)),
        6 => Some(Place::of_engine(Field::DropCarry)),
        _ => None,
    }
}

const PATHS: [&str; SPOTS] = [
    "entries/1/bore_d/0",
    "entries/1/bore_d/1",
    "entries/engine/pitch/0",
    "customer",
    "entries/engine/gauge_depth/0",
    "entries/engine/gauge_bore/0",
    "entries/engine/drop_carry/0",
    "name",
];

const fn which_of(spot: usize) -> Which {
    match spot {
        0..4 => Which::Job,
        4 | 5 => Which::Shop,
        _ => Which::KeptDrop,
    }
}

fn at_spot(session: &Session, spot: usize) -> Vec<(Dot, String)> {
    match which_of(spot) {
        Which::Job => session
            .job()
            .map_or(Vec::new(), |open| standing(&open.job, PATHS[spot])),
        Which::Shop => standing(&session.shop().job, PATHS[spot]),
        Which::Drop | Which::KeptDrop => {
            kept_drop(session).map_or(Vec::new(), |open| standing(&open.job, PATHS[spot]))
        }
    }
}

impl World {
    pub fn new() -> Self {
        let device = || Device {
            quick: Quick::default(),
            durable: Durable::default(),
            clock: 0,
            is_fragile: false,
            aborts: false,
        };
        let mut world = Self {
            devices: [device(), device()],
            tabs: Vec::new(),
            model: Model::default(),
            time: 1_700_000_000_000,
            starts: 0,
            texts: 0,
        };
        for tab in 0..TABS {
            let started = world.start(tab);
            world.tabs.push(started);
        }
        for kind in MANY {
            world.begins(0, kind);
        }
        world
    }

    fn now(&self, tab: usize) -> u64 {
        let clock = self.devices[DEVICE_OF[tab]].clock;
        self.time.saturating_add_signed(clock)
    }

    /// The page is loaded.
    fn start(&mut self, tab: usize) -> Tab {
        self.starts += 1;
        let device = DEVICE_OF[tab];
        let writer = Writer::of(device as u32 + 1, self.starts);
        let fresh = (
            Shop::fresh(UnitSystem::Metric),
            ColdDropPaper::fresh(UnitSystem::Metric),
        );
        let now = self.now(tab);
        let shelf = &self.devices[device].quick;
        let mut session = Session::start(shelf, writer, fresh, now);
        session.open_job(shelf, ID, "");
        session.open_drop(shelf, ID);
        Tab {
            screen: screen_of(&session),
            session,
            asked: None,
            answer: None,
            removing: Vec::new(),
            inbox: VecDeque::new(),
            seen: Vec::new(),
            cleared: Vec::new(),
            last_spot: None,
            noted: Vec::new(),
        }
    }

    /// Other tabs of the device hear of what one wrote into the quick store.
    fn spread(&mut self, from: usize) {
        let device = DEVICE_OF[from];
        for key in self.devices[device].quick.changed() {
            for tab in (0..TABS).filter(|tab| *tab != from && DEVICE_OF[*tab] == device) {
                self.tabs[tab].inbox.push_back(key.clone());
            }
        }
    }

    /// The screen of a tab is drawn anew where the session says so.
    fn draw(&mut self, tab: usize, told: &Told) {
        let (job, shop, kept) = screen_of(&self.tabs[tab].session);
        let screen = &mut self.tabs[tab].screen;
        if told.job {
            screen.0 = job;
        }
        if told.shop {
            screen.1 = shop;
        }
        if told.cold_drop {
            screen.2 = kept;
        }
    }

    /// Notes in the model what a tab changed since it was looked at last.
    fn note(&mut self, tab: usize) {
        for (spot, seen, stay) in core::mem::take(&mut self.tabs[tab].seen) {
            let now = at_spot(&self.tabs[tab].session, spot);
            let new = now.iter().find(|(dot, _)| {
                dot.0
                    .is_some_and(|w| w.device() == DEVICE_OF[tab] as u32 + 1)
                    && !self.model.is_known(spot, dot)
            });
            let new = new.cloned();
            let is_cleared = self.tabs[tab].cleared.contains(&spot) && !seen.is_empty();
            if new.is_none() && !is_cleared {
                continue;
            }
            // Who set nothing here yet that was noted (typed and cleared at once) comes.
            let noted = &mut self.tabs[tab].noted;
            let goes_on = stay == Stay::Same && noted.contains(&spot);
            noted.retain(|other| which_of(*other) != which_of(spot));
            noted.push(spot);
            let replaces = self.replaced(spot, &seen, !goes_on);
            let (dot, text) = new.map_or((None, None), |(dot, text)| (Some(dot), Some(text)));
            let who = (DEVICE_OF[tab], tab);
            self.model.note(spot, dot.as_ref(), text, replaces, who);
        }
        self.tabs[tab].cleared.clear();
    }

    /// The deeds that a change at a spot replaces: the one shown; whoever comes
    /// to the place also changes what others typed there, the same.
    fn replaced(&mut self, spot: usize, seen: &[(Dot, String)], comes: bool) -> Vec<usize> {
        let Some((_, shown)) = seen.first() else {
            return Vec::new();
        };
        let mut replaced = Vec::new();
        for (at, (dot, text)) in seen.iter().enumerate() {
            if at == 0 || (comes && text == shown) {
                replaced.push(self.model.deed_of(spot, dot, text));
            }
        }
        replaced
    }
}
