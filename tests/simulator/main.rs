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

use coldseat_tests::share_of;
use world::{Happens, OFTEN, World};

/// Steps of one world.
const LIFE: usize = 400;
/// Steps in all.
const STEPS: usize = 1_000_000;

fn drawn(seed: u64) -> Vec<Happens> {
    let mut rng = fastrand::Rng::with_seed(seed);
    let sum: u32 = OFTEN.iter().map(|(_, often)| often).sum();
    let mut all: Vec<Happens> = (0..LIFE)
        .map(|_| {
            let mut at = rng.u32(..sum);
            let (what, _) = OFTEN
                .iter()
                .find(|(_, often)| {
                    let is_it = at < *often;
                    at = at.wrapping_sub(*often);
                    is_it
                })
                .expect("one of them");
            Happens {
                what: *what,
                tab: rng.u8(..),
                which: rng.u8(..),
            }
        })
        .collect();
    all.push(Happens {
        what: world::What::AllQuiet,
        tab: 0,
        which: 0,
    });
    all
}

fn run(all: &[Happens]) -> Result<(), String> {
    let mut world = World::new();
    for happens in all {
        world.step(*happens)?;
    }
    Ok(())
}

/// The fewest steps that still fail.
fn shrunk(mut all: Vec<Happens>) -> Vec<Happens> {
    let mut size = all.len() / 2;
    while size > 0 {
        let mut at = 0;
        while at < all.len() {
            let mut fewer = all.clone();
            fewer.drain(at..(at + size).min(all.len()));
            if run(&fewer).is_err() {
                all = fewer;
            } else {
                at += size;
            }
        }
        size /= 2;
    }
    all
}

fn number(name: &str, usual: u64) -> u64 {
    std::env::var(name).map_or(usual, |text| text.parse().expect("a number"))
}

#[test]
fn whatever_happens_what_was_saved_is_there() {
    // Freed once, so large a piece tells the C library to keep what is freed: it
    // gave every compressor's tables back and fetched them anew, a fifth of the time.
    drop(std::hint::black_box(vec![1_u8; 16 << 20]));
    let seed = number("COLDSEAT_SEED", 13);
    let lives = number("COLDSEAT_STEPS", share_of(STEPS as u64)).div_ceil(LIFE as u64);
    for life in seed..seed + lives {
        let all = drawn(life);
        if let Err(why) = run(&all) {
            let all = shrunk(all);
            let why = run(&all).err().unwrap_or(why);
            let steps: Vec<String> = all
                .iter()
                .map(|h| format!("{:?} tab {} {}", h.what, h.tab % 5, h.which))
                .collect();
            panic!("seed {life}: {why}\nafter\n{}", steps.join("\n"));
        }
    }
    println!("{} steps from seed {seed}", lives * LIFE as u64);
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
