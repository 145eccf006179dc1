//! The bodies of the fuzz targets over their corpora and over seeded changes of
//! them: what a machine without a fuzzer can try. `cargo xtask fuzz` tries more.

use std::fs;
use std::path::Path;

use fastrand::Rng;

#[path = "fuzz/bodies.rs"]
mod bodies;

/// Counts what is allocated; more than it may have is an allocation that fails.
#[global_allocator]
static MEMORY: cap::Cap<std::alloc::System> =
    cap::Cap::new(std::alloc::System, bodies::MEMORY_MOST);

/// Pieces that readers of text and of numbers trip over.
const PIECES: [&[u8]; 24] = [
    b"#/s/",
    b"%",
    b"%25%41",
    b"\"",
    b"\\u0000",
    b"\\ud800",
    b"{",
    b"[[[[[[[[",
    b"null",
    b"-0.0",
    b"1e308",
    b"1e-320",
    b"0.1",
    b"99999999999999999999",
    b"\n",
    b"\0",
    b"\xff\xff\xff\xff\xff\xff\xff\xff\xff\x01",
    b"\xe2\x88\x92",
    b"\xc2\xb5m",
    b"/0",
    b",",
    b"'",
    b"in",
    b"\x80",
];

/// The seeds of a target, in a settled order.
fn corpus(target: &str) -> Vec<Vec<u8>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz/corpus");
    let mut paths: Vec<_> = fs::read_dir(folder.join(target))
        .expect("a corpus")
        .map(|entry| entry.expect("an entry").path())
        .collect();
    paths.sort();
    let read = |path| fs::read(path).expect("a seed");
    paths.into_iter().map(read).collect()
}

/// A seed with one to four changes.
fn changed(rng: &mut Rng, seeds: &[Vec<u8>]) -> Vec<u8> {
    let mut bytes = seeds[rng.usize(..seeds.len())].clone();
    for _ in 0..rng.usize(1..=4) {
        let at = rng.usize(..=bytes.len());
        let end = (at + rng.usize(1..=16)).min(bytes.len());
        match rng.u8(0..7) {
            0 => bytes.truncate(at),
            1 => drop(bytes.drain(at..end)),
            2 => bytes.extend_from_within(at..end),
            3 if at < bytes.len() => bytes[at] ^= 1 << rng.u8(0..8),
            4 if at < bytes.len() => bytes[at] = rng.u8(..),
            5 => {
                let other = &seeds[rng.usize(..seeds.len())];
                let from = rng.usize(..=other.len());
                bytes.truncate(at);
                bytes.extend_from_slice(&other[from..]);
            }
            _ => {
                let piece = PIECES[rng.usize(..PIECES.len())];
                bytes.splice(at..at, piece.iter().copied());
            }
        }
    }
    bytes
}

/// Tries the seeds and `changes` changes of them; names the bytes that fail.
fn tried(target: &str, body: fn(&[u8]), changes: usize) {
    struct Named<'a>(&'a [u8]);
    impl Drop for Named<'_> {
        fn drop(&mut self) {
            if std::thread::panicking() {
                eprintln!("with these bytes: {}", self.0.escape_ascii());
            }
        }
    }
    let seeds = corpus(target);
    assert!(seeds.len() > 3, "{target} has {} seeds", seeds.len());
    let mut rng = Rng::with_seed(20_261_125);
    for bytes in &seeds {
        let _named = Named(bytes);
        body(bytes);
    }
    for _ in 0..changes {
        let bytes = changed(&mut rng, &seeds);
        let _named = Named(&bytes);
        body(&bytes);
    }
}

/// One test, so that what is allocated is one target's at a time.
#[test]
fn hostile_bytes_are_answered_within_the_memory() {
    tried("link", bodies::link, 20_000);
    tried("document", bodies::document, 2_000);
    tried("folder", bodies::folder, 4_000);
    tried("quantity", bodies::quantity, 40_000);
    tried("evaluator", bodies::evaluator, 10_000);
    let most = MEMORY.max_allocated();
    assert!(most > 0, "nothing was counted");
    println!("at most {most} bytes at a time");
}
