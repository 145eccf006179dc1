//! What is deleted, or written, in one tab while others have it open, write it or are
//! about to open it.

use super::*;
use coldseat_core::storage::{Answer, Ask};

/// Two tabs with the job open, and a third that has it in no hand.
fn three() -> (Device, Session, Session, Session) {
    let mut device = Device::default();
    let a = device.begun();
    let b = device.tab();
    let mut c = device.tab();
    let now = device.now();
    c.close_job(&device.quick, now);
    (device, a, b, c)
}

#[test]
fn what_another_tab_keeps_anew_is_called_deleted_no_more() {
    let (mut device, mut a, mut b, mut c) = three();
    c.destroy(vec![NAME.to_owned()]);
    device.rest(&mut c);
    for tab in [&mut a, &mut b] {
        device.hears(tab);
        device.rest(tab);
        assert_eq!(tab.keeper().state(NAME), Keeping::Gone);
    }
    let now = device.now();
    a.keep_anew(Which::Job, &device.quick, now);
    device.rest(&mut a);
    device.hears(&mut b);
    device.rest(&mut b);
    assert_eq!(b.keeper().state(NAME), Keeping::Both);
    // Nor where it is not on the screen.
    c.destroy(vec![NAME.to_owned()]);
    device.rest(&mut c);
    device.hears(&mut a);
    device.rest(&mut a);
    assert_eq!(a.keeper().state(NAME), Keeping::Gone);
    let now = device.now();
    a.close_job(&device.quick, now);
    assert_eq!(a.keeping(), Keeping::Idle);
}

#[test]
fn a_screen_that_has_more_than_the_stores_says_so_and_writes_it() {
    let (mut device, mut a, mut b, _) = three();
    device.type_in(&mut b, SEAT, "0.004", Stay::New);
    device.hears(&mut a);
    device.type_in(&mut a, BORE, "4.3", Stay::New);
    device.rest(&mut a);
    // An older copy of it comes to stand in both stores, as after a deletion in
    // which another tab was writing.
    let open = b.job().expect("a job").clone();
    let slot = Slot {
        sequence: 99,
        row: Vec::new(),
        text: write(&open.document(NAME)),
    };
    let older = write_slot(&slot);
    slots::leave(&device.quick, NAME);
    let key = format!("{NAME}/a");
    device.quick.set(&key, &older).expect("room");
    device.durable.slots.insert(NAME.to_owned(), older);
    device.hears(&mut a);
    device.rest(&mut a);
    assert_eq!(a.keeper().state(NAME), Keeping::Both);
    let quick = slots::newest_content(&device.quick, NAME);
    assert_eq!(quick.as_ref(), device.durable.slots.get(NAME));
    let last = device.tab();
    assert_eq!(text(&last, BORE).as_deref(), Some("4.3"));
    assert_eq!(text(&last, SEAT).as_deref(), Some("0.004"));
}

#[test]
fn what_is_typed_while_another_tab_deletes_stays_in_the_store_it_was_said_to_be_in() {
    let (mut device, mut a, _, mut c) = three();
    c.destroy(vec![NAME.to_owned()]);
    let ask = c.next(&device.quick).expect("a removal");
    assert!(matches!(ask, Ask::Remove(_)));
    let answer = device.durable.run(&ask, false);
    assert_eq!(answer, Answer::Removed(Ok(())));
    // Before the answer comes: typed into, with a second store that refuses.
    device.durable.fault = Some(StoreFault::Full);
    device.type_in(&mut a, BORE, "4.3", Stay::New);
    device.rest(&mut a);
    let state = a.keeper().state(NAME);
    assert_eq!(state, Keeping::Only(Store::Quick, StoreFault::Full));
    let now = device.now();
    c.answered(answer, &device.quick, now);
    drop(a);
    device.durable.fault = None;
    assert_eq!(text(&device.tab(), BORE).as_deref(), Some("4.3"));
}

#[test]
fn what_is_opened_out_of_the_second_store_has_what_was_written_meanwhile() {
    let (mut device, mut a, _, mut c) = three();
    device.quick.empty();
    assert!(c.open_job(&device.quick, "a1", ""), "it may come");
    let ask = c.next(&device.quick).expect("a job");
    assert_eq!(ask, Ask::Get(NAME.to_owned()));
    let answer = device.durable.run(&ask, false);
    device.type_in(&mut a, BORE, "4.3", Stay::New);
    device.rest(&mut a);
    device.hears(&mut c);
    let now = device.now();
    c.answered(answer, &device.quick, now);
    assert_eq!(text(&c, BORE).as_deref(), Some("4.3"));
}

#[test]
fn a_removal_that_is_refused_drops_nothing_that_waited() {
    let (mut device, mut a, ..) = three();
    let now = device.now();
    a.bin(Which::Job, true, &device.quick, now);
    a.destroy(vec![NAME.to_owned()]);
    device.durable.fault = Some(StoreFault::Full);
    device.rest(&mut a);
    let state = a.keeper().state(NAME);
    assert_eq!(state, Keeping::Only(Store::Quick, StoreFault::Full));
    device.durable.fault = None;
    let now = device.now();
    a.comes_back(&device.quick, now);
    device.rest(&mut a);
    assert_eq!(a.keeper().state(NAME), Keeping::Both);
    let quick = slots::newest_content(&device.quick, NAME);
    assert_eq!(quick.as_ref(), device.durable.slots.get(NAME));
}
