//! The cases, timed on this machine. Run by `cargo xtask bench`.

mod cases;

use coldseat_core::mechanics::bore_profile::{bore_profile, mesh_lines};

/// Mesh and answer of the profile that is timed, for another program to solve:
/// `mesh<TAB>radii<TAB>heights<TAB>changes of the inside`, JSON lists.
fn same_mesh() -> String {
    let input = cases::usual_profile();
    let [radii, heights] = mesh_lines(&input).expect("in range");
    let changes: Vec<f64> = bore_profile(&input)
        .expect("in range")
        .inner_change
        .iter()
        .map(|c| c.as_m())
        .collect();
    format!("mesh\t{radii:?}\t{heights:?}\t{changes:?}")
}

fn main() {
    let start = std::time::Instant::now();
    let now = || start.elapsed().as_secs_f64() * 1e3;
    for line in cases::lines(now, 1000.0) {
        println!("{line}");
    }
    println!("{}", same_mesh());
}
