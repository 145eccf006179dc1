//! A local storage that was emptied is filled again at the start, with documents
//! that nobody has open too.

use super::*;

/// Jobs with the keys `a1` to `a60`, each in both stores; local storage emptied.
fn emptied() -> Device {
    let mut device = Device::default();
    let mut tab = device.tab();
    for number in 1..=60 {
        let now = device.now();
        tab.begin(
            &device.quick,
            format!("a{number}"),
            Demo::InchFive.job(now),
            now,
        );
        device.rest(&mut tab);
    }
    device.quick.empty();
    device
}

/// A tab that has asked nothing yet.
fn begun(device: &mut Device) -> Session {
    device.starts += 1;
    let fresh = (
        Shop::fresh(UnitSystem::Inch),
        ColdDropPaper::fresh(UnitSystem::Inch),
    );
    let now = device.now();
    Session::start(&device.quick, Writer::of(1, device.starts), fresh, now)
}

/// Names of which both stores hold the same.
fn alike(device: &Device) -> usize {
    let is_alike = |(name, there): &(&String, &String)| {
        slots::newest_content(&device.quick, name).as_ref() == Some(there)
    };
    device.durable.slots.iter().filter(is_alike).count()
}

#[test]
fn an_emptied_local_storage_is_filled_again_at_the_start() {
    let mut device = emptied();
    assert_eq!(alike(&device), 0);
    let mut tab = begun(&mut device);
    device.rest(&mut tab);
    assert_eq!((alike(&device), device.durable.slots.len()), (60, 60));
    assert!(tab.keeper().is_quiet());
    // The second store is emptied now: nothing is lost.
    device.durable.slots.clear();
    let mut last = begun(&mut device);
    device.rest(&mut last);
    assert_eq!(device.durable.slots.len(), 60);
}

#[test]
fn what_is_typed_meanwhile_comes_first_and_stays() {
    let mut device = emptied();
    let mut tab = begun(&mut device);
    tab.open_job(&device.quick, "a60", "");
    let mut asks = 0;
    while tab.job().is_none() {
        let ask = tab.next(&device.quick).expect("it is fetched");
        let answer = device.durable.run(&ask, false);
        let now = device.now();
        tab.answered(answer, &device.quick, now);
        asks += 1;
    }
    assert_eq!(asks, 2, "heads, and the job before all others");
    device.type_in(&mut tab, BORE, "4.9", Stay::New);
    device.rest(&mut tab);
    assert_eq!(alike(&device), 60);
    assert_eq!(text(&tab, BORE).as_deref(), Some("4.9"));
    let mut last = begun(&mut device);
    last.open_job(&device.quick, "a60", "");
    assert_eq!(text(&last, BORE).as_deref(), Some("4.9"));
}

#[test]
fn where_there_is_no_room_the_rest_stays_where_it_is() {
    let mut device = emptied();
    device.quick.fault.set(Some(StoreFault::Full));
    let mut tab = begun(&mut device);
    device.rest(&mut tab);
    assert!(tab.keeper().is_quiet(), "it tries for ever");
    assert_eq!((alike(&device), device.durable.slots.len()), (0, 60));
    device.quick.fault.set(None);
    let now = device.now();
    tab.comes_back(&device.quick, now);
    device.rest(&mut tab);
    assert_eq!(alike(&device), 60);
}

/// Another tab takes a job out of both stores between the answer of the second
/// store and the write into the first.
#[test]
fn what_is_deleted_meanwhile_does_not_return() {
    let mut device = emptied();
    let mut tab = begun(&mut device);
    let mut other = begun(&mut device);
    let name = "coldseat/job/a1".to_owned();
    let ask = tab.next(&device.quick).expect("heads");
    let heads = device.durable.run(&ask, false);
    let now = device.now();
    tab.answered(heads, &device.quick, now);
    let ask = tab
        .next(&device.quick)
        .expect("a job that local storage lost");
    assert_eq!(ask, coldseat_core::storage::Ask::Get(name.clone()));
    let late = device.durable.run(&ask, false);
    other.destroy(vec![name.clone()]);
    device.rest(&mut other);
    let now = device.now();
    tab.answered(late, &device.quick, now);
    device.rest(&mut tab);
    assert_eq!(slots::newest_content(&device.quick, &name), None);
    assert!(!device.durable.slots.contains_key(&name));
    assert_eq!((alike(&device), device.durable.slots.len()), (59, 59));
}
