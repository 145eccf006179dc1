//! Tabs, devices, stores that fail, kills and clocks, by chance from a seed: the
//! code of keeping, joining and taking back is the page's own
//! (`coldseat_core::storage`). What was said to be saved is there at the next
//! start; nothing typed is lost, nothing cleared returns, nothing is disputed
//! that was replaced knowingly; what is shown is what is stored; when it is
//! quiet, all copies are equal.
//!
//! `COLDSEAT_STEPS` and `COLDSEAT_SEED` say how many steps and from which seed;
//! a failure is shrunk to the fewest steps that fail and printed.

mod model;
mod named;
mod stores;
mod world;

use coldseat_tests::{lives, share_of};
use world::{Happens, OFTEN, World};

/// Steps of one world.
const LIFE: usize = 400;
/// Steps in all.
const STEPS: usize = 1_000_000;

fn drawn(seed: u64) -> Vec<Happens> {
    let make = |what, rng: &mut fastrand::Rng| Happens {
        what,
        tab: rng.u8(..),
        which: rng.u8(..),
    };
    let last = Happens {
        what: world::What::AllQuiet,
        tab: 0,
        which: 0,
    };
    lives::drawn(seed, LIFE, &OFTEN, make, last)
}

fn run(all: &[Happens]) -> Result<(), String> {
    let mut world = World::new();
    for happens in all {
        world.step(*happens)?;
    }
    Ok(())
}

#[test]
fn whatever_happens_what_was_saved_is_there() {
    // Freed once, so large a piece tells the C library to keep what is freed: it
    // gave every compressor's tables back and fetched them anew, a fifth of the time.
    drop(std::hint::black_box(vec![1_u8; 16 << 20]));
    let steps = share_of(STEPS as u64);
    let tell = |h: &Happens| format!("{:?} tab {} {}", h.what, h.tab % 5, h.which);
    lives::live([13, steps], LIFE, drawn, run, tell);
}

/// Seed 1,002,265, shrunk. A file brings a cold drop into a tab while IndexedDB
/// refuses; another tab clears its name, in both stores; the first tab then opens
/// it out of IndexedDB. Its write that waited went over the newer copy.
#[test]
fn a_write_that_waited_does_not_go_over_the_copy_that_was_opened_since() {
    use world::What;
    let all = [
        (What::Begin, 4, 102),
        (What::WriteOut, 3, 163),
        (What::Kill, 3, 233),
        (What::EmptyDurable, 0, 122),
        (What::Ask, 4, 56),
        (What::Commit, 4, 0),
        (What::FaultDurable, 4, 46),
        (What::Answer, 4, 89),
        (What::File, 2, 249),
        (What::Reload, 3, 94),
        (What::Ask, 4, 46),
        (What::Clear, 3, 31),
        (What::Commit, 4, 40),
        (What::AllQuiet, 0, 0),
    ];
    let all = all.map(|(what, tab, which)| Happens { what, tab, which });
    assert_eq!(run(&all), Ok(()));
}
