//! The benchmark table: natively, in the browser, and scipy's stiff solvers on
//! the same cold drop in the same run.
//!
//! Ratios are what counts; the milliseconds are this machine's.

use std::collections::BTreeMap;
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Instant;

use crate::check;
use crate::layout;
use crate::run::{self, Outcome, Trouble, cargo};
use crate::setup::{Purpose, python, set_up};
use crate::wasm_test::wasm_test;

/// A target: the case, the kind of run, its most in microseconds.
const TARGETS: [(&str, &str, f64); 8] = [
    ("cold_drop with its series", "native", 100.0),
    ("cold_drop with its series", "browser", 300.0),
    ("bands of 300 cold drops", "browser", 100_000.0),
    ("16-cylinder job, whole", "native", 1000.0),
    ("bore_profile, jacketed", "native", 10_000.0),
    ("bore_profile, jacketed", "browser", 30_000.0),
    ("bore_stress, median of 60 job sizes", "native", 20_000.0),
    ("bore_stress, worst of 60 job sizes", "native", 200_000.0),
];

/// Requests of the streaming run.
const REQUESTS: usize = 1_000_000;

/// Runs and prints the table.
pub fn bench() -> Outcome<()> {
    let tools = set_up(Purpose::Tests)?;
    let interpreter = python()?;
    crate::page::fetch_crates()?;
    println!("\n== natively, optimized: builds, then about ten seconds");
    let output = run::run_and_keep(
        check::here(cargo()).args(["bench", "-p", "coldseat-tests", "--bench", "native"]),
        "see the message above",
    )?;
    let native = medians(&output);
    println!("\n== scikit-fem on the same mesh of the bore profile");
    let fem = same_mesh(&interpreter, &output)?;
    println!("\n== in the browser, optimized: builds, then about ten seconds");
    let mut command = wasm_test(&tools, "bench_wasm")?;
    command.args(["--release", "--", "--nocapture"]);
    let browser = medians(&run::run_and_keep(&mut command, "see the message above")?);
    println!("\n== the page under the hand: builds, then five minutes or more");
    let dist = layout::dist_folder();
    crate::page::build(&tools, &dist)?;
    crate::bare::compare(&tools, &dist)?;
    let own_program = std::env::current_exe().map_err(|error| {
        Trouble::new(
            format!("this program's own path: {error}"),
            "run it again through cargo",
        )
    })?;
    let pace = medians(&run::run_and_keep(
        check::here(cargo())
            .args(["bench", "-p", "coldseat-browser-tests"])
            .args(["--bench", "start", "--bench", "pace"])
            .args(["--bench", "season", "--bench", "shop"])
            .envs(check::browser_env(&tools, &own_program)?),
        "see the message above",
    )?);
    println!("\n== scipy's stiff solvers on the same cold drop, to 0.1 % of its grip time");
    let script = layout::checkout().join("tests/crosscheck/stiff.py");
    let scipy = run::run_and_keep(Command::new(interpreter).arg(script), "see above")?;
    println!("\n== {REQUESTS} mixed requests through the evaluator");
    let stream = stream(&MIXED, REQUESTS)?;
    let profiles = stream_of_profiles()?;
    table(&native, &browser, &scipy, &stream)?;
    bore(&native, fem, &profiles);
    hand(&pace)
}

/// The medians of `bench<TAB>name<TAB>microseconds` lines.
fn medians(output: &str) -> BTreeMap<String, f64> {
    output
        .lines()
        .filter_map(|line| line.split_once("bench\t"))
        .filter_map(|(_, rest)| rest.split_once('\t'))
        .filter_map(|(name, us)| Some((name.to_owned(), us.trim().parse().ok()?)))
        .collect()
}

/// Wall time and largest memory of the streaming run.
struct Stream {
    seconds: f64,
    megabytes: Option<f64>,
}

/// Requests of many kinds, a refused one among them.
const MIXED: [&str; 5] = [
    r#"{"id":1,"calc":"ring_gap","inputs":{"gap_m":0.0004,"bore_change_m":5e-5}}"#,
    r#"{"id":2,"calc":"wall","inputs":{"measured_m":0.008,"old_d_m":0.1,"new_d_m":0.108,"offset_m":0}}"#,
    r#"{"id":3,"calc":"contraction","inputs":{"material":"gray_iron","length_m":0.1,"from_k":293.15,"to_k":77.355}}"#,
    r#"{"id":4,"calc":"scatter","inputs":{"errors_m":[1e-6,"x"]}}"#,
    r#"{"id":5,"calc":"oxygen","inputs":{"room_m3":100,"nitrogen_l":10,"room_k":293.15,"air_changes_per_h":2,"release_s":600}}"#,
];

/// The bore profile of the cases, as a request.
const PROFILE: &str = r#"{"id":1,"calc":"bore_profile","inputs":{"sleeve":{"inner_d_m":0.1016,"outer_d_m":0.10795,"length_m":0.152,"flange_outer_d_m":0.113,"flange_thickness_m":0.00508,"youngs_pa":1.68e11,"poisson":0.275},"block":{"outer_d_m":0.151,"youngs_pa":1.1e11,"poisson":0.26,"below_m":0.01,"jacket":{"wall_m":0.0064,"deck_m":0.0152,"bottom_m":0.0152}},"interference_m":3.2e-5,"joint":"frictionless","clamp_n":0,"z_m":[0,0.05,0.1]}}"#;

/// Enough of them to fill a pipe, so that most are answered when the memory is
/// read.
fn stream_of_profiles() -> Outcome<Stream> {
    stream(&[PROFILE], 400)
}

/// Milliseconds of scikit-fem on the mesh that the native run printed, and the
/// largest difference of the inside, micrometres.
fn same_mesh(interpreter: &Path, native: &str) -> Outcome<[f64; 2]> {
    let script = layout::checkout().join("tests/crosscheck/same_mesh.py");
    let broken = |error: std::io::Error| Trouble::with_file(&script, &error);
    let mut child = Command::new(interpreter)
        .env("PYTHONDONTWRITEBYTECODE", "1")
        .arg(&script)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(broken)?;
    if let Some(mut input) = child.stdin.take() {
        input.write_all(native.as_bytes()).map_err(broken)?;
    }
    let output = child.wait_with_output().map_err(broken)?;
    let text = String::from_utf8_lossy(&output.stdout);
    let numbers: Vec<f64> = text
        .lines()
        .filter_map(|line| line.strip_prefix("skfem\t"))
        .flat_map(|rest| rest.split('\t'))
        .filter_map(|number| number.trim().parse().ok())
        .collect();
    match numbers[..] {
        [ms, um] => Ok([ms, um]),
        _ => Err(Trouble::new(
            "scikit-fem gave no timing",
            "see its output above",
        )),
    }
}

fn bore(native: &BTreeMap<String, f64>, [ms, um]: [f64; 2], profiles: &Stream) {
    let own = native
        .get("bore_profile, jacketed")
        .map_or(f64::NAN, |us| us / 1e3);
    println!(
        "\nbore profile: scikit-fem on the same mesh {ms:.1} ms, {:.0} times the core; the inside \
         differs by at most {um:.3} um; memory of a program that does nothing else {}",
        ms / own,
        profiles.memory(),
    );
}

impl Stream {
    fn memory(&self) -> String {
        self.megabytes
            .map_or_else(|| "unknown".to_owned(), |mb| format!("{mb:.1} MB"))
    }
}

fn stream(lines: &[&str], count: usize) -> Outcome<Stream> {
    let program = check::evaluator()?;
    let broken = |error: std::io::Error| Trouble::with_file(&program, &error);
    let begun = Instant::now();
    let mut child = Command::new(&program)
        .stdin(Stdio::piped())
        .stdout(Stdio::null())
        .spawn()
        .map_err(broken)?;
    let mut megabytes = None;
    if let Some(mut input) = child.stdin.take() {
        for i in 0..count {
            writeln!(input, "{}", lines[i % lines.len()]).map_err(broken)?;
        }
        input.flush().map_err(broken)?;
        megabytes = largest_memory(child.id());
    }
    child.wait().map_err(broken)?;
    Ok(Stream {
        seconds: begun.elapsed().as_secs_f64(),
        megabytes,
    })
}

/// The largest resident memory of a process so far, where the system tells.
fn largest_memory(process: u32) -> Option<f64> {
    let status = Path::new("/proc").join(process.to_string()).join("status");
    let text = std::fs::read_to_string(status).ok()?;
    let line = text.lines().find_map(|l| l.strip_prefix("VmHWM:"))?;
    let kilobytes: f64 = line.split_whitespace().next()?.parse().ok()?;
    Some(kilobytes / 1024.0)
}

fn table(
    native: &BTreeMap<String, f64>,
    browser: &BTreeMap<String, f64>,
    scipy: &str,
    stream: &Stream,
) -> Outcome<()> {
    if native.is_empty() || browser.is_empty() {
        return Err(Trouble::new(
            "a benchmark gave no timing",
            "see its output above",
        ));
    }
    println!("\n{:34} {:>12} {:>12}", "median, ms", "native", "browser");
    for (name, us) in native {
        let other = browser
            .get(name)
            .map_or_else(|| "-".to_owned(), |us| format!("{:.3}", us / 1e3));
        println!("{name:34} {:>12.3} {other:>12}", us / 1e3);
    }
    let drop = native
        .get("cold_drop with its series")
        .copied()
        .unwrap_or(f64::NAN)
        / 1e3;
    for line in scipy.lines().filter_map(|l| l.strip_prefix("scipy\t")) {
        if let Some((method, ms)) = line.split_once('\t') {
            let ms: f64 = ms.trim().parse().unwrap_or(f64::NAN);
            println!(
                "scipy {method:28} {ms:>12.3}   {:.0} times the core's cold drop",
                ms / drop
            );
        }
    }
    println!(
        "evaluator, {REQUESTS} requests        {:>9.1} s, at most {} of memory",
        stream.seconds,
        stream.memory(),
    );
    println!("\ntargets:");
    for (name, kind, most) in TARGETS {
        let found = if kind == "native" { native } else { browser };
        let us = found.get(name).copied().unwrap_or(f64::NAN);
        let verdict = if us <= most { "met" } else { "MISSED" };
        println!(
            "  {name}, {kind}: {:.3} ms of {:.3} ms: {verdict}",
            us / 1e3,
            most / 1e3
        );
    }
    Ok(())
}

/// What is asked of the page: most milliseconds from key to paint in 95 of 100
/// presses, as it is and slowed; most for a frame of a slider, slowed.
const HAND: [(&str, f64); 16] = [
    ("first paint, first visit, 4x slower", 500.0),
    ("usable, first visit, 4x slower", 1000.0),
    ("usable, offline, 4x slower", 600.0),
    ("key to paint, sleeve, p95, 1x slower", 16.0),
    ("key to paint, sleeve, p95, 4x slower", 50.0),
    ("key to paint, drop, p95, 1x slower", 16.0),
    ("key to paint, drop, p95, 4x slower", 50.0),
    ("key to paint, seat, p95, 1x slower", 16.0),
    ("key to paint, seat, p95, 4x slower", 50.0),
    ("slider frame, mean, 4x slower", 20.0),
    ("list of 2000 jobs opens, median", 150.0),
    ("one job of 2000 jobs opens, median", 50.0),
    ("shop's folder of 2000 jobs joined", 60_000.0),
    ("key to paint while a folder is joined, p95", 16.0),
    ("reading to another device, worst", 5000.0),
    ("reading to another device, slow line, worst", 30_000.0),
];

fn hand(pace: &BTreeMap<String, f64>) -> Outcome<()> {
    if pace.is_empty() {
        return Err(Trouble::new(
            "the page gave no timing",
            "see its output above",
        ));
    }
    println!("\n{:42} {:>8}", "under the hand, ms", "browser");
    for (name, us) in pace {
        println!("{name:42} {:>8.1}", us / 1e3);
    }
    println!("\ntargets:");
    for (name, most_ms) in HAND {
        let ms = pace.get(name).copied().unwrap_or(f64::NAN) / 1e3;
        let verdict = if ms <= most_ms { "met" } else { "MISSED" };
        println!("  {name}: {ms:.1} of {most_ms:.0} ms: {verdict}");
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::medians;

    #[test]
    fn medians_are_read_from_a_browsers_log_too() {
        let found = medians("x\n    bench\ta b\t12.50\nbench\tc\t3\nbench\tbroken\n");
        assert_eq!(found.get("a b"), Some(&12.5));
        assert_eq!(found.len(), 2);
    }
}
