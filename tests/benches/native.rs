//! The cases, timed on this machine. Run by `cargo xtask bench`.

mod cases;

fn main() {
    let start = std::time::Instant::now();
    let now = || start.elapsed().as_secs_f64() * 1e3;
    for line in cases::lines(now, 1000.0) {
        println!("{line}");
    }
}
