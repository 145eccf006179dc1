//! The deck judged together against draws of its own model, against the numbers
//! published for it, and where products would underflow. scipy's quadrature of
//! another order answers the same requests in `tests/crosscheck`.

use coldseat_core::metrology::seat_deck::{PointsTo, SeatDeck, SeatDeckInput, seat_deck};
use coldseat_core::quantity::Length;

fn thou(x: f64) -> Length {
    Length::from_thou(x)
}

#[track_caller]
fn judge(gap: &[f64], own: f64, common: f64) -> SeatDeck {
    let gap: Vec<Length> = gap.iter().copied().map(thou).collect();
    seat_deck(&SeatDeckInput {
        gap: &gap,
        u_own: thou(own),
        u_common: thou(common),
        gap_limit: thou(1.0),
        prior_home: 0.95,
        gap_scale: thou(3.0),
        prior_alike: 0.02,
    })
    .expect("a judgement")
}

/// Two standard normal values (Box and Muller).
fn normals(random: &mut fastrand::Rng) -> [f64; 2] {
    let radius = (-2.0 * (1.0 - random.f64()).ln()).sqrt();
    let (sin, cos) = (core::f64::consts::TAU * random.f64()).sin_cos();
    [radius * cos, radius * sin]
}

/// Draws causes from the model and weighs each by how likely the readings are
/// with it; no formula of the core is used.
fn drawn(input: &SeatDeckInput, draws: usize, seed: u64) -> (Vec<f64>, f64, f64, [f64; 2]) {
    let mut random = fastrand::Rng::with_seed(seed);
    let n = input.gap.len();
    let scale = input.gap_scale.as_thou();
    let limit = input.gap_limit.as_thou();
    let own = input.u_own.as_thou();
    let exponential = |r: &mut fastrand::Rng| -scale * (1.0 - r.f64()).ln();
    let (mut whole, mut each, mut all, mut alike) = (0.0, vec![0.0; n], 0.0, 0.0);
    let mut moments = [0.0; 2];
    let mut within = vec![false; n];
    for _ in 0..draws {
        let bias = normals(&mut random)[0] * input.u_common.as_thou();
        let shared = random.f64() < input.prior_alike;
        let cause = if shared {
            exponential(&mut random)
        } else {
            0.0
        };
        let mut square = 0.0;
        for (w, g) in within.iter_mut().zip(input.gap) {
            let chip = if random.f64() < input.prior_home {
                0.0
            } else {
                exponential(&mut random)
            };
            let off = (g.as_thou() - bias - cause - chip) / own;
            square += off * off;
            *w = cause + chip <= limit;
        }
        let weight = (-0.5 * square).exp();
        whole += weight;
        moments[0] += weight * bias;
        moments[1] += weight * bias * bias;
        alike += if shared { weight } else { 0.0 };
        all += if within.iter().all(|w| *w) {
            weight
        } else {
            0.0
        };
        for (e, w) in each.iter_mut().zip(&within) {
            *e += if *w { weight } else { 0.0 };
        }
    }
    let mean = moments[0] / whole;
    let sd = (moments[1] / whole - mean * mean).sqrt();
    let each = each.iter().map(|e| e / whole).collect();
    (each, all / whole, alike / whole, [mean, sd])
}

#[test]
fn agrees_with_two_million_draws_of_the_model() {
    type Case = (&'static [f64], f64, f64, f64, f64, f64, f64);
    let cases: &[Case] = &[
        (&[0.6, 1.2, 2.1, 0.3], 0.6, 0.5, 1.0, 0.9, 3.0, 0.1),
        (&[0.9], 0.5, 0.5, 1.0, 0.95, 3.0, 0.02),
        (&[1.4, 1.9, 1.6], 0.7, 0.6, 0.8, 0.8, 2.0, 0.4),
        (&[-0.9, 0.2], 0.5, 1.0, 1.5, 0.6, 4.0, 0.3),
    ];
    for (gap, own, common, limit, home, scale, alike) in cases {
        let gap: Vec<Length> = gap.iter().copied().map(thou).collect();
        let input = SeatDeckInput {
            gap: &gap,
            u_own: thou(*own),
            u_common: thou(*common),
            gap_limit: thou(*limit),
            prior_home: *home,
            gap_scale: thou(*scale),
            prior_alike: *alike,
        };
        let got = seat_deck(&input).expect("a judgement");
        let (each, all, alike, [mean, sd]) = drawn(&input, 2_000_000, 77);
        for (p, want) in got.seated.iter().zip(&each) {
            assert!((p - want).abs() < 0.003, "{p} {want} {input:?}");
        }
        assert!((got.all - all).abs() < 0.003, "{} {all}", got.all);
        assert!((got.alike - alike).abs() < 0.003, "{} {alike}", got.alike);
        assert!((got.bias.as_thou() - mean).abs() < 0.003, "{mean}");
        assert!((got.bias_sd.as_thou() - sd).abs() < 0.003, "{sd}");
    }
}

/// The project's physics text, seat_deck: 0.5 and 0.5 thou, default priors.
#[test]
fn the_published_decks() {
    let one_out = judge(&[0.1, 0.3, 4.2, -0.2, 0.2], 0.5, 0.5);
    assert!(one_out.seated[2] < 0.01, "{:?}", one_out.seated);
    for i in [0, 1, 3, 4] {
        // Printed to three digits: 0.998 and more.
        assert!(one_out.seated[i] >= 0.9975, "{:?}", one_out.seated);
    }
    assert_eq!(one_out.points_to, PointsTo::StandsOut(vec![2]));

    let fillet = judge(&[1.5, 1.6, 1.4, 1.5, 1.3], 0.5, 0.5);
    for p in &fillet.seated {
        assert!((p - 0.87).abs() < 0.02, "{:?}", fillet.seated);
    }
    assert!((fillet.alike - 0.16).abs() < 0.005, "{}", fillet.alike);
    assert_eq!(fillet.points_to, PointsTo::AllAlike);

    let riding = judge(&[3.0, 3.1, 2.9, 3.2, 3.0], 0.5, 0.5);
    for p in &riding.seated {
        assert!((p - 0.0003).abs() < 0.0001, "{:?}", riding.seated);
    }
    assert!((riding.alike - 0.9999).abs() < 1e-4, "{}", riding.alike);
    assert_eq!(riding.points_to, PointsTo::AllAlike);
}

#[test]
fn one_sleeve_says_how_little_it_proves() {
    let one = judge(&[0.2], 0.5, 0.5);
    assert!(one.findings.iter().any(|f| f.code.id() == "one_reading"));
}

/// 32 likelihoods of a deck that is far off multiply to far less than the
/// smallest double; what must hold is known without a formula.
#[test]
fn thirty_two_holes_do_not_underflow() {
    let high = judge(&[60.0; 32], 0.05, 0.1);
    assert!(high.all < 1e-6 && high.alike > 0.999, "{high:?}");
    let home = judge(&[0.0; 32], 0.05, 0.1);
    assert!(home.all > 0.9999 && home.alike < 1e-3, "{home:?}");
    let low = judge(&[-30.0; 32], 0.3, 0.3);
    assert!(low.all > 0.9999, "{low:?}");
    // A gauge 30 thou off: its mean lies between nothing and the readings.
    assert!((-30.0..-29.0).contains(&low.bias.as_thou()), "{low:?}");
}

/// Order of the sleeves does not matter, and a common shift of the prior's
/// width moves the bias and not the odd one out.
#[test]
fn the_same_deck_in_another_order() {
    let a = judge(&[0.1, 2.4, -0.3, 0.8], 0.5, 0.5);
    let b = judge(&[0.8, -0.3, 2.4, 0.1], 0.5, 0.5);
    for (p, q) in a.seated.iter().zip(b.seated.iter().rev()) {
        assert!((p - q).abs() < 2e-7);
    }
    assert!((a.all - b.all).abs() < 2e-7);
}
