//! What is timed: the same functions natively and in the browser.

use coldseat_core::evaluator::answer;
use coldseat_core::job::assess::assess;
use coldseat_core::job::demo::Demo;
use coldseat_core::job::{Job, Owner, Place};
use coldseat_core::materials::{Material, MaterialId};
use coldseat_core::mechanics::bore_profile::{
    BoreProfileInput, Flange, Jacket, Joint, bore_profile, bore_stress,
};
use coldseat_core::mechanics::rings::Elastic;
use coldseat_core::metrology::seat_deck::{
    GAP_SCALE, PRIOR_ALIKE, PRIOR_HOME, SeatDeckInput, seat_deck,
};
use coldseat_core::numerics::sampling::{Law, Uncertain, latin_hypercube, spread};
use coldseat_core::quantity::{
    Diameter, DiametralInterference, Force, Length, Pressure, Seconds, Temperature,
};
use coldseat_core::thermal::cold_drop::{ColdDrop, cold_drop};
use coldseat_core::thermal::drop_odds::{FROST_MOST, Unknowns, drop_odds};
use coldseat_tests::shapes;

/// One case: its name and what it does once.
pub type Case = (&'static str, fn());

/// Every case.
pub const CASES: [Case; 9] = [
    ("cold_drop with its series", one_drop),
    ("cold_drop, leaning", leaning_drop),
    ("bands of 300 cold drops", bands),
    ("home within, 300 draws", odds),
    ("seat_deck of 32 holes", deck_of_32),
    ("16-cylinder job, whole", sixteen),
    ("bore_profile, jacketed", profile),
    ("evaluator: one seat request", seat_request),
    ("evaluator: one cold_drop request", drop_request),
];

/// The sleeve that crosscheck/stiff.py solves too.
pub fn usual_drop() -> ColdDrop {
    ColdDrop {
        sleeve_material: Material::catalogue(MaterialId::GrayIron),
        sleeve_inner: Diameter::from_m(0.0985),
        sleeve_outer: Diameter::from_m(0.1067),
        sleeve_length: Length::from_m(0.22),
        block_material: Material::catalogue(MaterialId::GrayIron),
        block_bore: Diameter::from_m(0.10667),
        block_outer: Diameter::from_m(0.12667),
        bath: Temperature::from_k(77.355),
        room: Temperature::from_k(293.15),
        block: Temperature::from_k(293.15),
        carry: Seconds::from_s(10.0),
        air: None,
        lean: 0.0,
        frost: Length::default(),
        insertion: Seconds::default(),
    }
}

fn one_drop() {
    std::hint::black_box(cold_drop(std::hint::black_box(&usual_drop())).expect("in range"));
}

fn leaning_drop() {
    let drop = ColdDrop {
        lean: 1.0,
        ..usual_drop()
    };
    std::hint::black_box(cold_drop(std::hint::black_box(&drop)).expect("in range"));
}

fn odds() {
    let unknowns = Unknowns {
        u_fit: Length::from_um(2.5),
        carry_timed: false,
        frost_most: FROST_MOST,
        insertion: Seconds::from_s(5.0),
    };
    std::hint::black_box(drop_odds(&usual_drop(), unknowns).expect("in range"));
}

fn deck_of_32() {
    let thou = Length::from_thou;
    let gap: Vec<Length> = (0..32)
        .map(|i| thou(0.2 * f64::from(i % 7) - 0.5))
        .collect();
    let deck = SeatDeckInput {
        gap: &gap,
        u_own: thou(0.5),
        u_common: thou(0.5),
        gap_limit: thou(1.0),
        prior_home: PRIOR_HOME,
        gap_scale: GAP_SCALE,
        prior_alike: PRIOR_ALIKE,
    };
    std::hint::black_box(seat_deck(std::hint::black_box(&deck)).expect("in range"));
}

fn bands() {
    let known = |value, u| Uncertain {
        value,
        u,
        law: Law::Normal,
    };
    let inputs = [known(0.10667, 1e-6), known(1.0, 0.034), known(10.0, 1.0)];
    let rows = latin_hypercube(&inputs, 300, 1);
    let grips: Vec<f64> = rows
        .iter()
        .map(|row| {
            let mut drop = usual_drop();
            drop.block_bore = Diameter::from_m(row[0]);
            drop.sleeve_material = drop.sleeve_material.with_expansion_scale(row[1]);
            drop.carry = Seconds::from_s(row[2].max(0.0));
            let answer = cold_drop(&drop).expect("in range");
            answer.grip.map_or(0.0, |g| g.after.as_s())
        })
        .collect();
    std::hint::black_box(spread(&rows, &grips));
}

/// The V-eight's demo job with a second set of eight cylinders.
pub fn sixteen_cylinders() -> Job {
    let mut job = Demo::ALL[1].job(0);
    let copies: Vec<_> = job
        .entries
        .iter()
        .filter_map(|(place, entry)| match place.owner {
            Owner::Cylinder(c) if c <= 8 => Some((
                Place {
                    owner: Owner::Cylinder(c + 8),
                    ..*place
                },
                entry.clone(),
            )),
            _ => None,
        })
        .collect();
    for (place, entry) in copies {
        job.entries.put(place, entry);
    }
    job.engine.cylinders = 16;
    job
}

fn sixteen() {
    // The job is made once: only its assessment is timed.
    static JOB: std::sync::OnceLock<Job> = std::sync::OnceLock::new();
    std::hint::black_box(assess(JOB.get_or_init(sixteen_cylinders)));
}

fn profile() {
    let input = usual_profile();
    std::hint::black_box(bore_profile(std::hint::black_box(&input)).expect("in range"));
}

/// The jacketed block that crosscheck/same_mesh.py solves too.
pub fn usual_profile() -> BoreProfileInput {
    let iron = |gpa: f64, poisson| Elastic {
        youngs: Pressure::from_pa(gpa * 1e9),
        poisson,
    };
    BoreProfileInput {
        sleeve_inner: Diameter::from_m(0.1016),
        sleeve_outer: Diameter::from_m(0.10795),
        length: Length::from_m(0.152),
        flange: Some(Flange {
            outer: Diameter::from_m(0.113),
            thickness: Length::from_m(0.00508),
        }),
        sleeve: iron(168.0, 0.275),
        block_outer: Diameter::from_m(0.151),
        block: iron(110.0, 0.26),
        below: Length::from_m(0.01),
        jacket: Some(Jacket {
            wall: Length::from_m(0.0064),
            deck: Length::from_m(0.0152),
            bottom: Length::from_m(0.0152),
        }),
        interference: DiametralInterference::from_m(3.2e-5),
        joint: Joint::Frictionless,
        clamp: Force::from_n(0.0),
        gas: Pressure::from_pa(0.0),
        gas_depth: None,
        heat: None,
        depths: (0..40)
            .map(|i| Length::from_m(0.0039 * f64::from(i)))
            .collect(),
    }
}

/// A seat request as a line.
pub const SEAT: &str = r#"{"id":1,"calc":"seat","inputs":{"thickness_m":[0.008,0.008,0.008,0.008],"depth_m":[0.0078,0.0078,0.0078,0.0078],"height_m":[0.0002,0.0002,0.0002,0.0002],"pulls":[{"gauge_pa":1.7e7,"loaded_m":0.00018,"relaxed_m":0.0002},{"gauge_pa":1.7e7,"loaded_m":0.00018,"relaxed_m":0.0002},{"gauge_pa":1.7e7,"loaded_m":0.00018,"relaxed_m":0.0002}],"u_height_m":5e-6,"u_thickness_m":5e-6,"u_depth_m":5e-6,"gap_limit_m":2.54e-5,"tilt_limit_m":2.54e-5}}"#;

/// A cold drop request as a line.
pub const DROP: &str = r#"{"id":2,"calc":"cold_drop","inputs":{"sleeve":{"material":"gray_iron","inner_d_m":0.0985,"outer_d_m":0.1067,"length_m":0.22},"block":{"material":"gray_iron","bore_d_m":0.10667,"outer_d_m":0.12667},"bath_k":77.355,"room_k":293.15,"carry_s":10}}"#;

fn seat_request() {
    std::hint::black_box(answer(SEAT));
}

fn drop_request() {
    std::hint::black_box(answer(DROP));
}

/// Sleeves of a job's size that bore_stress is timed on.
const STRESSED: u64 = 60;

/// Times bore_stress on sleeves drawn by chance, each the quickest of three: the
/// median and the worst of them, as lines like those of [`lines`].
fn stress_lines(now: impl Fn() -> f64) -> Vec<String> {
    let mut times: Vec<f64> = (0..STRESSED)
        .map(|seed| {
            let input = shapes::of_a_job(&mut fastrand::Rng::with_seed(seed));
            let once = |_| {
                let begun = now();
                std::hint::black_box(bore_stress(std::hint::black_box(&input)).expect("in range"));
                now() - begun
            };
            (0..3).map(once).fold(f64::MAX, f64::min)
        })
        .collect();
    times.sort_by(f64::total_cmp);
    let line = |name: &str, ms: f64| format!("bench\tbore_stress, {name}\t{:.2}", ms * 1e3);
    vec![
        line("median of 60 job sizes", times[times.len() / 2]),
        line("worst of 60 job sizes", times[times.len() - 1]),
    ]
}

/// Times every case with `now` (milliseconds): median of enough readings to
/// fill about `fill_ms`, at least five, as lines of
/// `bench<TAB>name<TAB>median us`.
pub fn lines(now: impl Fn() -> f64, fill_ms: f64) -> Vec<String> {
    let mut all: Vec<String> = CASES
        .iter()
        .map(|(name, run)| {
            let reading = |calls: usize| {
                let begun = now();
                for _ in 0..calls {
                    run();
                }
                now() - begun
            };
            reading(1);
            // A browser's clock is coarse: as many calls as make a reading of
            // two milliseconds or more.
            let mut calls = 1;
            while reading(calls) < 2.0 && calls < 1 << 16 {
                calls *= 2;
            }
            let readings = (fill_ms / reading(calls).max(1.0)).clamp(5.0, 500.0) as usize;
            let mut times: Vec<f64> = (0..readings)
                .map(|_| reading(calls) / calls as f64)
                .collect();
            times.sort_by(f64::total_cmp);
            format!("bench\t{name}\t{:.2}", times[times.len() / 2] * 1e3)
        })
        .collect();
    all.extend(stress_lines(now));
    all
}
