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

use coldseat_tests::{lives, share_of};
use world::{Happens, OFTEN, What, World};

/// Steps of one world.
const LIFE: usize = 300;
/// Steps in all; the million is for the hand.
const STEPS: u64 = 60_000;

fn drawn(seed: u64) -> Vec<Happens> {
    let make = |what, rng: &mut fastrand::Rng| Happens {
        what,
        device: rng.u8(..),
        which: rng.u8(..),
    };
    let last = Happens {
        what: What::Quiet,
        device: 0,
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
fn all_devices_hold_the_same_and_nothing_is_lost_or_comes_back() {
    let tell = |h: &Happens| format!("{:?} device {} {}", h.what, h.device % 3, h.which);
    lives::live([20, share_of(STEPS)], LIFE, drawn, run, tell);
}
