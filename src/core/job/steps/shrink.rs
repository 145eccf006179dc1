//! How far a sleeve shrinks in the bath: by the table of its iron, by what the shop
//! has measured on sleeves of this engine, or by this sleeve's own diameter read
//! cold. The nearest to the sleeve counts.
//!
//! The curve keeps the table's shape; one factor s scales all of it. A sleeve that
//! reads D_w at T_w and D_c in the bath at T_b has D_w = D20 (1 + s e(T_w)) and
//! D_c = D20 (1 + s e(T_b)), so s = (D_w - D_c) / (D_c e(T_w) - D_w e(T_b)): the
//! clearance in the bath is the bore less D_c, whatever the table says. The
//! material's band gives way to that of the two readings
//! ([`crate::thermal::cold_reading`]).
//!
//! The fit stays by the table: it is settled warm, before the bath, and a tenth of a
//! micrometre for each kelvin off 20 C hangs on it.

use crate::job::model::field::Field;
use crate::job::model::job::Job;
use crate::job::model::place::Owner;
use crate::job::model::reading::Lack;
use crate::job::model::readings::Readings;
use crate::materials::Material;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Diameter, Length, Temperature};
use crate::thermal::chill::NITROGEN_K;
use crate::thermal::cold_reading::u_cold_reading;

/// Liquid nitrogen boiling at one atmosphere, 77.355 K (reference fluid data).
pub const BATH: Temperature = Temperature::from_k(NITROGEN_K);

/// So many times the material's band, with twice the reading's own uncertainty, is
/// still taken without a word.
const FAR: f64 = 2.0;
/// So many times the table's shrink no metal of the catalogue reaches under another
/// one's name (aluminium under that of iron is 2.2 times): not taken at all.
const MOST: f64 = 2.0;

/// What a sleeve's shrink is taken from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShrinkBy {
    /// The table of its iron.
    Table,
    /// The shop's own shrink, entered with the engine.
    Shop,
    /// Its own diameter, measured cold.
    Sleeve,
}

/// A sleeve's material with its shrink.
#[derive(Clone, Debug, PartialEq)]
pub struct Shrink {
    /// The material as it is worked with.
    pub material: Material,
    /// What its shrink is taken from.
    pub by: ShrinkBy,
    /// Whether that wants to be measured again.
    pub is_odd: bool,
}

/// A sleeve measured cold, against what its iron should do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ColdSize {
    /// Its diameter warm, mean of its readings.
    pub warm: Diameter,
    /// Its diameter in the bath's cold.
    pub cold: Diameter,
    /// Standard uncertainty of the cold reading.
    pub u_cold: Length,
    /// Its contraction over the table's.
    pub scale: f64,
    /// The least and the greatest of that which are taken without a word.
    pub usual: [f64; 2],
    /// Standard uncertainty of the shrink as a share of it.
    u_share: f64,
}

impl ColdSize {
    /// Whether there is a contraction to work with.
    #[must_use]
    pub fn is_possible(&self) -> bool {
        0.0 < self.scale && self.scale <= MOST
    }

    /// Whether it wants to be measured again.
    #[must_use]
    pub fn is_odd(&self) -> bool {
        let [least, most] = self.usual;
        !(least <= self.scale && self.scale <= most)
    }

    /// What is found of it.
    #[must_use]
    pub fn findings(&self) -> Vec<Finding> {
        let [least, most] = self.usual;
        let code = if self.scale <= 0.0 {
            Code::ColdNotSmaller
        } else if self.scale < least {
            Code::ColdShrinksLittle
        } else if self.scale > most {
            Code::ColdShrinksMuch
        } else {
            return Vec::new();
        };
        vec![Finding::look(
            code,
            format!(
                "the sleeve measured cold, {:.4} mm, is {:.4} mm under its warm diameter, {:.0} % \
                 of what its iron should shrink; {:.0} to {:.0} % are usual: wipe it and measure \
                 it again, or clear it to go by the table",
                self.cold.as_mm(),
                self.warm.as_mm() - self.cold.as_mm(),
                100.0 * self.scale,
                100.0 * least,
                100.0 * most
            ),
        )]
    }
}

/// The sleeve of a cylinder as measured cold; `None` where it was not.
///
/// # Errors
/// A cold diameter, or what it is compared with, that is missing or cannot be used.
pub fn cold_size(r: &Readings) -> Result<Option<ColdSize>, Lack> {
    let Some(cold_m) = r.own(Field::ColdOd)? else {
        return Ok(None);
    };
    let table = Material::catalogue(r.head()?.sleeve_material);
    let warm_m = r.mean(Field::SleeveOd)?;
    let sleeve = Temperature::from_k(r.single(Field::SleeveTemperature)?);
    let u_gauge = r.length(Field::GaugeSleeve)?;
    let expected_m = cold_m * table.strain(sleeve) - warm_m * table.strain(BATH);
    if expected_m <= 0.0 {
        return Err(Lack::Refused(Fault::new(
            "sleeve_k",
            format!(
                "{:.1} K is outside the allowed range above the bath's {:.1} K: enter the \
                 temperature at which the sleeve was measured warm",
                sleeve.as_k(),
                BATH.as_k()
            ),
        )));
    }
    let u_cold = u_cold_reading(&table, Diameter::from_m(warm_m), BATH, u_gauge);
    // Two readings over the shrink between them; the warm one is in the fit as well.
    let u_m = u_cold.as_m().hypot(u_gauge.as_m());
    let shrink_m = warm_m - cold_m;
    let scale = shrink_m / expected_m;
    let far = table
        .expansion_band()
        .map(|band| (FAR * band).hypot(2.0 * u_m / expected_m));
    Ok(Some(ColdSize {
        warm: Diameter::from_m(warm_m),
        cold: Diameter::from_m(cold_m),
        u_cold,
        scale,
        usual: [1.0 - far[0], 1.0 + far[1]],
        u_share: u_m / shrink_m,
    }))
}

/// The material of a cylinder's sleeve, its contraction as measured where it is.
///
/// # Errors
/// A measured diameter or shrink, or what it is scaled with, missing, unusable or
/// beyond any metal.
pub fn shrink_of(r: &Readings) -> Result<Shrink, Lack> {
    let Some(size) = cold_size(r)? else {
        return shop_shrink(r.job);
    };
    if !size.is_possible() {
        return Err(Lack::Refused(Fault::new(
            "cold_d_m",
            format!(
                "{} is no diameter of a cold sleeve that is {} warm: it has to be below that, by \
                 at most {MOST} times the shrink of its material. Measure it again, or clear it \
                 to go by the table",
                size.cold.as_m(),
                size.warm.as_m()
            ),
        )));
    }
    let table = Material::catalogue(r.head()?.sleeve_material);
    Ok(Shrink {
        material: table.with_measured_expansion(size.scale, size.u_share),
        by: ShrinkBy::Sleeve,
        is_odd: size.is_odd(),
    })
}

/// The sleeves' material of an engine, its contraction as the shop has measured it
/// where it has: the table's, scaled so that a sleeve of nominal diameter shrinks by
/// as much from shop to bath.
///
/// # Errors
/// A measured shrink, or what it is scaled with, missing or unusable.
pub fn shop_shrink(job: &Job) -> Result<Shrink, Lack> {
    let r = Readings::new(job, Owner::Block);
    let table = Material::catalogue(r.head()?.sleeve_material);
    let Some(shrink_m) = r.engine_if(Field::ChillShrink)? else {
        return Ok(Shrink {
            material: table,
            by: ShrinkBy::Table,
            is_odd: false,
        });
    };
    let od_m = r.engine(Field::NominalOd)?;
    let room = Temperature::from_k(r.engine(Field::RoomTemperature)?);
    let by_table = od_m * (table.strain(room) - table.strain(BATH)) / (1.0 + table.strain(room));
    let factor = shrink_m / by_table;
    let material = if shrink_m > 0.0 {
        let u_gauge = r.length(Field::GaugeSleeve)?;
        let u_cold = u_cold_reading(&table, Diameter::from_m(od_m), BATH, u_gauge);
        let u_m = u_cold.as_m().hypot(u_gauge.as_m());
        table.with_measured_expansion(factor, u_m / shrink_m)
    } else {
        table.with_expansion_scale(factor)
    };
    Ok(Shrink {
        material,
        by: ShrinkBy::Shop,
        is_odd: false,
    })
}

/// How high the flange of a sleeve may climb at most while it warms in a bore
/// that grips it at bath temperature.
///
/// # Errors
/// What it lacks.
pub fn climb_ceiling(r: &Readings) -> Result<Length, Lack> {
    let length_m = r.engine(Field::SleeveLength)?;
    let room = Temperature::from_k(r.engine(Field::RoomTemperature)?);
    let material = shrink_of(r)?.material;
    Ok(Length::from_m(
        length_m * (material.strain(room) - material.strain(BATH)),
    ))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::{Demo, put};
    use crate::job::model::place::Place;

    /// Cylinder 1 of the inch demo, its sleeve all over 4.4400 in at a temperature
    /// in F, measured cold.
    fn job(warm_f: &str, cold: &str) -> Job {
        let mut job = Demo::InchFive.job(0);
        let of = |field, index| Place::of_cylinder(1, field, index);
        for index in 0..6 {
            put(&mut job, of(Field::SleeveOd, index), "4.4400", 1);
        }
        put(&mut job, of(Field::SleeveTemperature, 0), warm_f, 1);
        put(&mut job, of(Field::ColdOd, 0), cold, 1);
        job
    }

    fn size(job: &Job) -> ColdSize {
        cold_size(&Readings::of_cylinder(job, 1)).unwrap().unwrap()
    }

    /// At 68 F by hand: (4.4400 - 4.4325) / (4.4400 x 0.00178) = 0.9490; the table
    /// holds its 0.178 % to 1e-6 at the bath.
    #[test]
    fn the_curve_ends_at_the_diameter_measured_cold() {
        assert!((size(&job("68", "4.4325")).scale - 0.9490).abs() < 6e-4);
        // Measured in a warm or a cold shop: one diameter at 20 C explains both
        // readings.
        for warm_f in ["50", "68", "95"] {
            let job = job(warm_f, "4.4325");
            let r = Readings::of_cylinder(&job, 1);
            let warm = Temperature::from_k(r.single(Field::SleeveTemperature).unwrap());
            let shrink = shrink_of(&r).unwrap();
            let d20 = 4.4400 / (1.0 + shrink.material.strain(warm));
            let cold = d20 * (1.0 + shrink.material.strain(BATH));
            assert!((cold - 4.4325).abs() < 1e-9, "{warm_f} {cold}");
            assert_eq!((shrink.by, shrink.is_odd), (ShrinkBy::Sleeve, false));
        }
    }

    /// The band is that of two readings over the shrink between them, 1.96 times,
    /// alike on both sides: the gauge's 0.00005 in twice, and of the cold one what
    /// [`u_cold_reading`] reckons, which by hand is 6 to 9 um here: a mean growth
    /// and frost of 3 + 3 to 4 um, a spread of 4. Of 190.5 um, 6 to 9 %.
    #[test]
    fn the_micrometer_takes_the_place_of_the_band() {
        let job = job("68", "4.4325");
        let shrink = shrink_of(&Readings::of_cylinder(&job, 1)).unwrap();
        let [less, more] = shrink.material.expansion_band();
        assert!((less - more).abs() < 1e-12);
        let u_m = size(&job).u_cold.as_m().hypot(0.000_05 * 0.0254);
        assert!((less - 1.959_964 * u_m / (0.0075 * 0.0254)).abs() < 1e-6);
        assert!((0.06..0.095).contains(&less), "{less}");
        let table = Material::catalogue(job.engine.sleeve_material);
        assert!(less < table.expansion_band()[0]);
    }

    #[test]
    fn what_iron_does_not_do_is_named() {
        let code = |cold: &str| size(&job("68", cold)).findings().first().map(|f| f.code);
        assert_eq!(code("4.4325"), None);
        assert_eq!(code("4.4401"), Some(Code::ColdNotSmaller));
        assert_eq!(code("4.4400"), Some(Code::ColdNotSmaller));
        assert_eq!(code("4.4350"), Some(Code::ColdShrinksLittle));
        assert_eq!(code("4.4305"), Some(Code::ColdShrinksMuch));
        for beyond in ["4.4400", "4.4410", "4.4200", "4.0000"] {
            let job = job("68", beyond);
            let refused = shrink_of(&Readings::of_cylinder(&job, 1));
            assert!(
                matches!(&refused, Err(Lack::Refused(f)) if f.field == "cold_d_m"),
                "{refused:?}"
            );
        }
    }

    /// A sleeve "measured" at the bath's own temperature compares with nothing.
    #[test]
    fn warm_has_to_be_warmer_than_the_bath() {
        let job = job("-325", "4.4325");
        let found = cold_size(&Readings::of_cylinder(&job, 1));
        assert!(matches!(found, Err(Lack::Refused(f)) if f.field == "sleeve_k"));
    }
}
