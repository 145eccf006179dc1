//! Cast iron in the cold: a published table against the band of the catalogue.

use coldseat_core::materials::{Material, MaterialId};
use coldseat_core::quantity::Temperature;
use coldseat_tests::Ledger;

/// A published piping table lies under the model of gray and pearlitic ductile
/// iron, the more the colder: 5.6 % from 0 to -20 F, 12.4 % to -200 F (physics.md,
/// Materials, says 8 to 14 %). The skewed band holds all of it, the old one of
/// 7 % did not.
#[test]
fn the_piping_table_of_cast_iron_lies_in_the_low_end_of_the_band() {
    let mut ledger = Ledger::read(include_str!("sources/piping.json"));
    ledger.answer("cast_iron.pipe.", |row| {
        let f = Temperature::from_f;
        let cold = f(row.after("cast_iron.pipe."));
        for id in [MaterialId::GrayIron, MaterialId::DuctileIronPearlitic] {
            let iron = Material::catalogue(id);
            let model = 1200.0 * (iron.strain(f(0.0)) - iron.strain(cold));
            let under = 1.0 - row.value() / model;
            let [less, _] = iron.expansion_band();
            assert!(under > 0.05 && under < less, "{}: {under}", row.id);
        }
    });
    ledger.close();
}
