//! What was found to break the promise, each by name; by chance the same is tried
//! in [`crate::world`], in a browser in `tests/browser/saved.rs`.

use crate::stores::{Durable, Quick};
use coldseat_core::document::edit::Stay;
use coldseat_core::document::merge::conflicts;
use coldseat_core::document::slot::{Slot, read_slot, write_slot};
use coldseat_core::document::{ColdDropPaper, Shop, write};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::ledger::Writer;
use coldseat_core::job::{Entry, Field, Place, UnitSystem};
use coldseat_core::quantity::parse::Unit;
use coldseat_core::storage::keeper::{Keeping, Store};
use coldseat_core::storage::session::{Session, Told, Which};
use coldseat_core::storage::{Shelf, StoreFault, slots};

const NAME: &str = "coldseat/job/a1";
const BORE: Place = Place::of_cylinder(2, Field::BoreD, 0);
const SEAT: Place = Place::of_cylinder(3, Field::SeatHeight, 1);
const GAUGE: Place = Place::of_engine(Field::GaugeDepth);

#[path = "named_drops.rs"]
mod drops;

#[path = "named_gone.rs"]
mod gone;

#[path = "named_refill.rs"]
mod refill;

/// A device; its tabs are the caller's.
#[derive(Default)]
struct Device {
    quick: Quick,
    durable: Durable,
    time: u64,
    starts: u32,
}

impl Device {
    fn now(&mut self) -> u64 {
        self.time += 40;
        1_700_000_000_000 + self.time
    }

    fn tab(&mut self) -> Session {
        self.starts += 1;
        let fresh = (
            Shop::fresh(UnitSystem::Inch),
            ColdDropPaper::fresh(UnitSystem::Inch),
        );
        let now = self.now();
        let mut tab = Session::start(&self.quick, Writer::of(1, self.starts), fresh, now);
        self.rest(&mut tab);
        tab.open_job(&self.quick, "a1", "");
        self.rest(&mut tab);
        tab
    }

    fn begun(&mut self) -> Session {
        let mut tab = self.tab();
        let now = self.now();
        tab.begin(&self.quick, "a1".to_owned(), Demo::InchFive.job(now), now);
        self.rest(&mut tab);
        tab
    }

    /// All that a tab asks of the durable store is answered.
    fn rest(&mut self, tab: &mut Session) -> Told {
        let mut all = Told::default();
        while let Some(ask) = tab.next(&self.quick) {
            let answer = self.durable.run(&ask, false);
            let now = self.now();
            let told = tab.answered(answer, &self.quick, now);
            all.job |= told.job;
        }
        all
    }

    fn type_in(&mut self, tab: &mut Session, place: Place, text: &str, stay: Stay) {
        let now = self.now();
        let entry = Entry::new(text, Unit::Inch, now);
        tab.edit_job(|job| drop(job.entries.put(place, entry)), stay, now);
        tab.flush(&self.quick, now);
    }

    fn hears(&mut self, tab: &mut Session) -> Told {
        let now = self.now();
        tab.heard(Some("coldseat/job/a1/a"), &self.quick, now)
    }
}

fn text(tab: &Session, place: Place) -> Option<String> {
    let open = tab.job().expect("an open job");
    open.job.entries.get(place).map(|entry| entry.text.clone())
}

fn disputes(tab: &Session) -> usize {
    conflicts(&tab.job().expect("an open job").job).len()
}

#[test]
fn a_job_begun_with_a_full_local_storage_is_listed_and_opens() {
    let mut device = Device::default();
    device.quick.fault.set(Some(StoreFault::Full));
    let mut tab = device.begun();
    device.type_in(&mut tab, BORE, "4.2", Stay::New);
    device.rest(&mut tab);
    let state = tab.keeper().state(NAME);
    assert_eq!(state, Keeping::Only(Store::Durable, StoreFault::Full));
    let now = device.now();
    tab.close_job(&device.quick, now);
    assert!(
        tab.keeper().heads().any(|head| head.name == NAME),
        "not listed"
    );
    assert!(tab.open_job(&device.quick, "a1", ""));
    device.rest(&mut tab);
    assert_eq!(text(&tab, BORE).as_deref(), Some("4.2"));
}

#[test]
fn settings_outlive_an_emptied_store_and_another_tab() {
    let mut device = Device::default();
    let set = |device: &mut Device, tab: &mut Session, place: Place, text: &str| {
        let now = device.now();
        let entry = Entry::new(text, Unit::Inch, now);
        tab.edit_shop(|shop| drop(shop.entries.put(place, entry)), Stay::New, now);
        tab.flush(&device.quick, now);
        device.rest(tab);
    };
    let mut a = device.tab();
    set(&mut device, &mut a, GAUGE, "0.0004");
    device.quick.empty();
    let mut b = device.tab();
    let other = Place::of_engine(Field::GaugeBore);
    set(&mut device, &mut b, other, "0.00009");
    set(&mut device, &mut a, GAUGE, "0.0005");
    let last = device.tab();
    let of = |place| last.shop().job.entries.get(place).map(|e| e.text.clone());
    assert_eq!(of(GAUGE).as_deref(), Some("0.0005"));
    assert_eq!(of(other).as_deref(), Some("0.00009"));
}

#[test]
fn undo_in_one_tab_takes_nothing_of_the_other() {
    let mut device = Device::default();
    let mut a = device.begun();
    let mut b = device.tab();
    device.type_in(&mut a, BORE, "4.3", Stay::New);
    device.type_in(&mut b, SEAT, "0.004", Stay::New);
    let now = device.now();
    b.step(Which::Job, false, &device.quick, now);
    device.rest(&mut b);
    device.rest(&mut a);
    for tab in [&mut a, &mut b] {
        device.hears(tab);
        assert_eq!(text(tab, BORE).as_deref(), Some("4.3"));
        assert_eq!(disputes(tab), 0);
    }
}

#[test]
fn what_was_cleared_during_a_visit_stays_cleared() {
    let mut device = Device::default();
    let mut a = device.begun();
    let mut b = device.tab();
    device.type_in(&mut a, BORE, "4.3", Stay::New);
    device.rest(&mut a);
    device.hears(&mut b);
    device.type_in(&mut b, SEAT, "0.004", Stay::New);
    device.type_in(&mut a, BORE, "", Stay::Same);
    device.rest(&mut a);
    device.rest(&mut b);
    device.hears(&mut b);
    device.hears(&mut a);
    assert_eq!((text(&a, BORE), text(&b, BORE)), (None, None));
    device.type_in(&mut a, BORE, "4.31", Stay::New);
    device.hears(&mut b);
    assert_eq!(text(&b, BORE).as_deref(), Some("4.31"));
    assert_eq!(disputes(&b), 0);
}

#[test]
fn the_same_typed_on_two_devices_is_cleared_once() {
    let (mut here, mut there) = (Device::default(), Device::default());
    let mut a = here.begun();
    let file = a.document().expect("a job");
    let mut b = there.tab();
    let now = there.now();
    b.take("a1", &file, &there.quick, now);
    there.rest(&mut b);
    let mut b = there.tab();
    here.type_in(&mut a, BORE, "0.3100", Stay::New);
    there.type_in(&mut b, BORE, "0.3100", Stay::New);
    let file = b.document().expect("a job");
    let now = here.now();
    a.take("a1", &file, &here.quick, now);
    here.type_in(&mut a, BORE, "", Stay::New);
    here.rest(&mut a);
    assert_eq!(text(&a, BORE), None);
    assert_eq!(text(&here.tab(), BORE), None, "a reload brings it back");
}

#[test]
fn an_import_into_a_job_of_another_tab_lies_in_both_stores() {
    let mut device = Device::default();
    let mut a = device.begun();
    let mut theirs = a.document().expect("a job");
    if let coldseat_core::document::Body::Job(job) = &mut theirs.body {
        job.customer = "from the file".to_owned();
    }
    let mut b = device.tab();
    let now = device.now();
    a.close_job(&device.quick, now);
    device.type_in(&mut b, BORE, "4.4", Stay::New);
    device.rest(&mut b);
    let now = device.now();
    a.take("a1", &theirs, &device.quick, now);
    device.rest(&mut a);
    assert_eq!(a.keeper().state(NAME), Keeping::Both);
    let quick = slots::newest_content(&device.quick, NAME);
    assert_eq!(quick.as_ref(), device.durable.slots.get(NAME));
    let last = device.tab();
    assert_eq!(text(&last, BORE).as_deref(), Some("4.4"));
    assert_eq!(last.job().expect("a job").job.customer, "from the file");
}

#[test]
fn a_damaged_slot_of_the_durable_store_is_kept_aside_and_written_over() {
    let mut device = Device::default();
    drop(device.begun());
    let scribble = "2scribble".to_owned();
    device.durable.slots.insert(NAME.to_owned(), scribble);
    let mut tab = device.tab();
    device.type_in(&mut tab, BORE, "4.5", Stay::New);
    device.rest(&mut tab);
    assert_eq!(tab.keeper().state(NAME), Keeping::Both);
    let quick = slots::newest_content(&device.quick, NAME);
    assert_eq!(quick.as_ref(), device.durable.slots.get(NAME));
    let kept = slots::kept(&device.quick);
    assert!(kept.iter().any(|(_, content)| content == "2scribble"));
}

#[test]
fn what_another_tab_deleted_is_said_to_be_gone_and_can_be_kept() {
    let mut device = Device::default();
    let mut a = device.begun();
    let mut b = device.tab();
    a.destroy(vec![NAME.to_owned()]);
    device.rest(&mut a);
    device.hears(&mut b);
    device.rest(&mut b);
    assert_eq!(b.keeper().state(NAME), Keeping::Gone);
    let now = device.now();
    b.keep_anew(Which::Job, &device.quick, now);
    device.rest(&mut b);
    assert_eq!(b.keeper().state(NAME), Keeping::Both);
    assert!(device.tab().job().is_some());
}

#[test]
fn a_store_that_does_not_answer_is_said_to_and_settles_when_it_does() {
    let mut device = Device::default();
    let mut tab = device.begun();
    device.type_in(&mut tab, BORE, "4.6", Stay::New);
    let ask = tab.next(&device.quick).expect("a write");
    tab.late();
    let state = tab.keeper().state(NAME);
    assert_eq!(state, Keeping::Only(Store::Quick, StoreFault::Silent));
    let answer = device.durable.run(&ask, false);
    let now = device.now();
    tab.answered(answer, &device.quick, now);
    assert_eq!(tab.keeper().state(NAME), Keeping::Both);
}

#[test]
fn what_a_later_version_wrote_is_shown_and_never_written_over() {
    let mut device = Device::default();
    let mut tab = device.begun();
    let shop = write(&tab.shop().document(slots::SHOP));
    let later = |text: &str| text.replacen("\"version\":", "\"version\":9", 1);
    let of = |text: String, sequence| {
        write_slot(&Slot {
            sequence,
            row: Vec::new(),
            text,
        })
    };
    // Another tab has the later version already.
    let job = write(&tab.document().expect("a job"));
    let (job, shop) = (of(later(&job), 99), of(later(&shop), 9));
    device.quick.set(&format!("{NAME}/a"), &job).expect("room");
    let key = format!("{}/a", slots::SHOP);
    device.quick.set(&key, &shop).expect("room");
    device.durable.slots.insert(NAME.to_owned(), job.clone());
    device
        .durable
        .slots
        .insert(slots::SHOP.to_owned(), shop.clone());
    device.type_in(&mut tab, BORE, "4.7", Stay::New);
    device.rest(&mut tab);
    let state = tab.keeper().state(NAME);
    assert_eq!(state, Keeping::Held(StoreFault::Newer));
    let mut fresh = device.tab();
    assert!(fresh.job().is_some_and(|open| open.read_only));
    assert!(fresh.shop().read_only);
    let now = device.now();
    assert!(!fresh.edit_shop(|shop| shop.pad = Some(false), Stay::New, now));
    device.rest(&mut fresh);
    for (name, content) in [(NAME, &job), (slots::SHOP, &shop)] {
        assert_eq!(device.durable.slots.get(name), Some(content), "{name}");
        let quick = slots::newest_content(&device.quick, name);
        assert_eq!(quick.as_ref(), Some(content), "{name}");
        assert!(read_slot(content).is_some());
    }
}
