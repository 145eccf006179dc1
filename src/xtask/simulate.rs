//! The simulator of the stores (`tests/simulator`), for as long as one likes: a
//! process a core, each from seeds of its own.

use std::thread;

use crate::layout;
use crate::run::{self, Outcome, Trouble, cargo};

/// Steps of a long run.
pub const STEPS: u64 = 1_000_000_000;
/// The seed it begins with.
pub const SEED: u64 = 1_000_000;

/// Runs it, with optimisation; ends with the first failure, shrunk.
pub fn simulate(steps: u64, seed: u64) -> Outcome<()> {
    let mut build = cargo();
    run::run(
        build
            .current_dir(layout::checkout())
            .args(["test", "--release", "-p", "coldseat-tests"])
            .args(["--test", "simulator", "--no-run"]),
        "the compiler's message is above",
    )?;
    let cores = thread::available_parallelism().map_or(1, |cores| cores.get() as u64);
    let share = steps.div_ceil(cores);
    println!("[simulate] {steps} steps on {cores} cores, from seed {seed}");
    let runs: Vec<_> = (0..cores)
        .map(|core| {
            thread::spawn(move || {
                // A life is some hundred steps: their seeds do not meet.
                let from = seed + core * share;
                run::run(
                    cargo()
                        .current_dir(layout::checkout())
                        .env("COLDSEAT_STEPS", share.to_string())
                        .env("COLDSEAT_SEED", from.to_string())
                        .args(["test", "--release", "--quiet", "-p", "coldseat-tests"])
                        .args(["--test", "simulator", "--", "--nocapture"]),
                    "the fewest steps that fail are above; run its seed alone with COLDSEAT_SEED",
                )
            })
        })
        .collect();
    for one in runs {
        one.join()
            .map_err(|_| Trouble::new("a run ended in a panic", "report it"))??;
    }
    Ok(())
}
