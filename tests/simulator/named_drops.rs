//! Cold drops that are kept under a name: documents like jobs.

use super::*;
use coldseat_core::document::Body;

const DROP: &str = "coldseat/drops/d1";
const CARRY: Place = Place::of_engine(Field::DropCarry);

impl Device {
    /// Types a carry into the cold drop at hand.
    fn carries(&mut self, tab: &mut Session, text: &str) {
        let now = self.now();
        let entry = Entry::new(text, Unit::Second, now);
        let put = |paper: &mut ColdDropPaper| drop(paper.sheet.entries.put(CARRY, entry));
        tab.edit_drop(put, Stay::New, now);
        tab.flush(&self.quick, now);
        self.rest(tab);
    }

    /// Keeps the numbers at hand under a name.
    fn keeps(&mut self, tab: &mut Session, id: &str, name: &str) {
        let sheet = tab.drop_at_hand().1.job.sheet.clone();
        let paper = ColdDropPaper::of(name.to_owned(), sheet);
        let now = self.now();
        tab.begin_drop(&self.quick, id.to_owned(), paper, now);
        self.rest(tab);
    }

    fn closes(&mut self, tab: &mut Session) {
        let now = self.now();
        tab.close_drop(&self.quick, now);
        self.rest(tab);
    }
}

/// Name, and carry, of the cold drop at hand.
fn at_hand(tab: &Session) -> (&str, Option<&str>) {
    let paper = &tab.drop_at_hand().1.job;
    let carry = paper.sheet.entries.get(CARRY);
    (&paper.name, carry.map(|entry| entry.text.as_str()))
}

#[test]
fn a_cold_drop_under_a_name_is_apart_from_the_one_in_use() {
    let mut device = Device::default();
    let mut tab = device.tab();
    assert_eq!(tab.drop_used(), None);
    device.carries(&mut tab, "7");
    let used = tab.drop_used().expect("it was used");
    device.keeps(&mut tab, "d1", "six");
    device.carries(&mut tab, "9");
    assert_eq!(at_hand(&tab), ("six", Some("9")));
    assert!(tab.drop_at_hand().1.changed > used);
    device.closes(&mut tab);
    assert_eq!(at_hand(&tab), ("", Some("7")));
    // Named anew, taken back.
    assert!(tab.open_drop(&device.quick, "d1"));
    let now = device.now();
    tab.edit_drop(|paper| "eight".clone_into(&mut paper.name), Stay::New, now);
    tab.flush(&device.quick, now);
    assert_eq!(at_hand(&tab).0, "eight");
    let now = device.now();
    tab.step(Which::KeptDrop, false, &device.quick, now);
    assert_eq!(at_hand(&tab), ("six", Some("9")));
    device.rest(&mut tab);
    assert_eq!(tab.keeper().state(DROP), Keeping::Both);
    let quick = slots::newest_content(&device.quick, DROP);
    assert_eq!(quick.as_ref(), device.durable.slots.get(DROP));
    let mut last = device.tab();
    assert_eq!(at_hand(&last), ("", Some("7")));
    assert!(last.open_drop(&device.quick, "d1"));
    assert_eq!(at_hand(&last), ("six", Some("9")));
}

#[test]
fn a_kept_cold_drop_is_binned_brought_back_and_destroyed_as_a_job_is() {
    let mut device = Device::default();
    let mut a = device.tab();
    device.keeps(&mut a, "d1", "six");
    let mut b = device.tab();
    assert!(b.open_drop(&device.quick, "d1"));
    let hears = |device: &mut Device, tab: &mut Session| {
        let now = device.now();
        tab.heard(Some(&format!("{DROP}/a")), &device.quick, now);
        device.rest(tab);
    };
    for into in [true, false] {
        let now = device.now();
        a.bin(Which::KeptDrop, into, &device.quick, now);
        device.rest(&mut a);
        hears(&mut device, &mut b);
        assert_eq!(b.drop_at_hand().1.binned.is_some(), into);
    }
    a.destroy(vec![DROP.to_owned()]);
    device.rest(&mut a);
    assert_eq!(a.drop_at_hand().0, Which::Drop);
    hears(&mut device, &mut b);
    assert_eq!(b.keeper().state(DROP), Keeping::Gone);
    let now = device.now();
    b.keep_anew(Which::KeptDrop, &device.quick, now);
    device.rest(&mut b);
    assert_eq!(b.keeper().state(DROP), Keeping::Both);
    assert!(device.tab().open_drop(&device.quick, "d1"));
}

#[test]
fn a_kept_cold_drop_lies_where_there_is_room_and_opens_from_there() {
    let mut device = Device::default();
    device.quick.fault.set(Some(StoreFault::Full));
    let mut tab = device.tab();
    device.keeps(&mut tab, "d1", "six");
    device.carries(&mut tab, "9");
    let state = tab.keeper().state(DROP);
    assert_eq!(state, Keeping::Only(Store::Durable, StoreFault::Full));
    let mut other = device.tab();
    assert!(other.open_drop(&device.quick, "d1"), "it may come");
    assert_eq!(other.drop_at_hand().0, Which::Drop, "it is not there yet");
    device.rest(&mut other);
    assert_eq!(at_hand(&other), ("six", Some("9")));
}

#[test]
fn cold_drops_of_a_file_go_each_where_it_belongs() {
    let (mut here, mut there) = (Device::default(), Device::default());
    // No two tabs anywhere are one writer.
    there.starts = 10;
    let mut a = here.tab();
    here.carries(&mut a, "7");
    let in_use = a.cold_drop().document(slots::DROP);
    here.keeps(&mut a, "d1", "six");
    here.carries(&mut a, "9");
    let kept = a.drop_at_hand().1.document(DROP);
    assert!(matches!(&kept.body, Body::Drop(_)) && kept.id.as_deref() == Some("d1"));
    let mut b = there.tab();
    for document in [&in_use, &kept, &kept] {
        let now = there.now();
        b.take("d1", document, &there.quick, now);
        there.rest(&mut b);
    }
    assert_eq!(at_hand(&b), ("", Some("7")));
    assert!(b.open_drop(&there.quick, "d1"));
    assert_eq!(at_hand(&b), ("six", Some("9")));
    // And back, changed on both sides in different places.
    there.carries(&mut b, "11");
    let theirs = b.drop_at_hand().1.document(DROP);
    let now = here.now();
    a.edit_drop(|paper| "eight".clone_into(&mut paper.name), Stay::New, now);
    a.take("d1", &theirs, &here.quick, now + 1);
    here.rest(&mut a);
    assert_eq!(at_hand(&a), ("eight", Some("11")));
    assert!(conflicts(&a.drop_at_hand().1.job).is_empty());
}

#[test]
fn a_file_never_goes_over_what_a_later_version_wrote() {
    let mut device = Device::default();
    let mut tab = device.tab();
    device.keeps(&mut tab, "d1", "six");
    let document = tab.drop_at_hand().1.document(DROP);
    device.closes(&mut tab);
    let later = write_slot(&Slot {
        sequence: 99,
        row: Vec::new(),
        text: write(&document).replacen("\"version\":", "\"version\":9", 1),
    });
    let key = format!("{DROP}/a");
    device.quick.set(&key, &later).expect("room");
    device.durable.slots.insert(DROP.to_owned(), later.clone());
    let now = device.now();
    tab.take("d1", &document, &device.quick, now);
    device.rest(&mut tab);
    let quick = slots::newest_content(&device.quick, DROP);
    assert_eq!(quick.as_ref(), Some(&later));
    assert_eq!(device.durable.slots.get(DROP), Some(&later));
}
