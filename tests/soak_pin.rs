//! A solid pin in a medium against the first term of its series: infinite
//! cylinder, mean temperature 4 Bi^2 / (z^2 (z^2 + Bi^2)) exp(-z^2 Fo), z J1(z) =
//! Bi J0(z) (Carslaw and Jaeger 7.6). With the published roots to four digits; the
//! whole series, by scipy, is in `crosscheck/families_plan.py`.

use coldseat_core::materials::{ConstantProperties, Material};
use coldseat_core::quantity::{Conductance, Diameter, Length, Temperature, TemperatureDelta};
use coldseat_core::thermal::soak::{SoakInput, soak};

/// Biot number (coefficient x radius / conductivity) and first root: Incropera and
/// DeWitt, table 5.1, infinite cylinder, from memory; 0.1, 1 and 10 recomputed in
/// the project's thermal.md F.
const ROOTS: [(f64, f64); 6] = [
    (0.05, 0.3142),
    (0.1, 0.4417),
    (0.5, 0.9408),
    (1.0, 1.2558),
    (2.0, 1.5995),
    (10.0, 2.1795),
];

#[test]
fn a_pin_follows_the_series() {
    let (density, heat, conductivity) = (7800.0, 460.0, 40.0);
    let (radius, start, bath) = (0.05, 293.15, 194.65);
    let whole = start - bath;
    for (biot, root) in ROOTS {
        // Near enough that what other terms leave is under 0.1 %.
        for share in [0.2, 0.1, 0.05, 0.02, 0.01] {
            let weight = 4.0 * biot * biot / (root * root * (root * root + biot * biot));
            let fourier = (weight / share).ln() / (root * root);
            if fourier < 0.25 {
                continue;
            }
            let want = fourier * radius * radius * density * heat / conductivity;
            let h = Conductance::from_w_m2k(biot * conductivity / radius);
            let s = soak(&SoakInput {
                material: Material::constant(ConstantProperties {
                    density_kg_m3: Some(density),
                    specific_heat_j_kgk: Some(heat),
                    conductivity_w_mk: Some(conductivity),
                    ..ConstantProperties::default()
                }),
                inner: None,
                outer: Diameter::from_m(2.0 * radius),
                length: Length::from_m(0.1),
                start: Temperature::from_k(start),
                bath: Temperature::from_k(bath),
                coefficient: [h; 3],
                near: TemperatureDelta::from_k(share * whole),
            });
            let s = s.expect("in range").time.as_s();
            assert!(
                (s / want - 1.0).abs() < 5e-3,
                "Bi {biot}, {share} left: {s} s, {want} s by the series"
            );
        }
    }
}
