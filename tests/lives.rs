//! Worlds that live by chance from a seed: what happens is drawn, lived, and where it
//! fails shrunk to the fewest steps that still fail, and told with its seed.

use fastrand::Rng;

/// What happens in one life: so many steps, each as often as its weight says, and `last`
/// at the end. `make` makes a step of what happens and of the same chance.
pub fn drawn<W: Copy, S>(
    seed: u64,
    steps: usize,
    often: &[(W, u32)],
    make: impl Fn(W, &mut Rng) -> S,
    last: S,
) -> Vec<S> {
    let mut rng = Rng::with_seed(seed);
    let sum: u32 = often.iter().map(|(_, often)| often).sum();
    let what = |rng: &mut Rng| {
        let mut at = rng.u32(..sum);
        let found = often.iter().find(|(_, often)| {
            let is_it = at < *often;
            at = at.wrapping_sub(*often);
            is_it
        });
        found.expect("one of them").0
    };
    let mut all: Vec<S> = (0..steps)
        .map(|_| {
            let what = what(&mut rng);
            make(what, &mut rng)
        })
        .collect();
    all.push(last);
    all
}

/// The fewest steps that still fail.
fn shrunk<S: Clone>(mut all: Vec<S>, run: impl Fn(&[S]) -> Result<(), String>) -> Vec<S> {
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

/// Lives until so many steps are done, `life` of them a world. `COLDSEAT_SEED` and
/// `COLDSEAT_STEPS` say otherwise.
///
/// # Panics
/// Where a world fails: with its seed, why, and the fewest steps, each as `tell` says it.
pub fn live<S: Clone>(
    [seed, steps]: [u64; 2],
    life: usize,
    drawn: impl Fn(u64) -> Vec<S>,
    run: impl Fn(&[S]) -> Result<(), String>,
    tell: impl Fn(&S) -> String,
) {
    let seed = number("COLDSEAT_SEED", seed);
    let lives = number("COLDSEAT_STEPS", steps).div_ceil(life as u64);
    for one in seed..seed + lives {
        let all = drawn(one);
        if let Err(why) = run(&all) {
            let all = shrunk(all, &run);
            let why = run(&all).err().unwrap_or(why);
            let steps: Vec<String> = all.iter().map(&tell).collect();
            panic!("seed {one}: {why}\nafter\n{}", steps.join("\n"));
        }
    }
    println!("{} steps from seed {seed}", lives * life as u64);
}
