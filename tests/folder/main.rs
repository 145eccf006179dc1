//! Several devices and the shop's folder, by chance from a seed: the code is the
//! page's own (`coldseat_core::storage::folder`), the server is one that cuts lines,
//! fails, writes half, lists what was, is full, read only, emptied, or replaced by an
//! older backup. When all is quiet every device holds the same, nothing typed is
//! lost, nothing replaced returns, what is in the bin stays there.
//!
//! `COLDSEAT_STEPS` and `COLDSEAT_SEED` say how many steps and from which seed; a
//! failure is shrunk to the fewest steps that fail and printed.

mod device;
mod server;
// Its failings are the simulator's.
#[allow(dead_code)]
#[path = "../simulator/stores.rs"]
mod stores;
mod world;

use coldseat_tests::share_of;
use world::{Happens, OFTEN, What, World};

/// Steps of one world.
const LIFE: usize = 300;
/// Steps in all; the million is for the hand.
const STEPS: u64 = 60_000;

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
                device: rng.u8(..),
                which: rng.u8(..),
            }
        })
        .collect();
    all.push(Happens {
        what: What::Quiet,
        device: 0,
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
fn all_devices_hold_the_same_and_nothing_is_lost_or_comes_back() {
    let seed = number("COLDSEAT_SEED", 20);
    let lives = number("COLDSEAT_STEPS", share_of(STEPS)).div_ceil(LIFE as u64);
    for life in seed..seed + lives {
        let all = drawn(life);
        if let Err(why) = run(&all) {
            let all = shrunk(all);
            let why = run(&all).err().unwrap_or(why);
            let steps: Vec<String> = all
                .iter()
                .map(|h| format!("{:?} device {} {}", h.what, h.device % 3, h.which))
                .collect();
            panic!("seed {life}: {why}\nafter\n{}", steps.join("\n"));
        }
    }
    println!("{} steps from seed {seed}", lives * LIFE as u64);
}
