//! Beside a cold drop without a job: how long in the cold and in the heat, what
//! it takes of nitrogen or dry ice, which fit or temperature would do, how far a
//! bushing closes in; and the same part by other means, side by side.

use crate::job::model::entries::Entry;
use crate::job::model::field::Field;
use crate::job::model::part::{Cold, Heat};
use crate::job::model::place::Place;
use crate::job::model::reading::Lack;
use crate::job::steps::drop_case::DropCase;
use crate::job::steps::drop_sheet::DropSheet;
use crate::materials::Material;
use crate::mechanics::rings::{Elastic, PressFit, press_fit};
use crate::quantity::report::Fault;
use crate::quantity::{
    Conductance, Diameter, DiametralInterference, Length, Pressure, Seconds, TemperatureDelta,
};
use crate::thermal::chill::{ChillInput, chill};
use crate::thermal::drop_inverse::{Reach, cold_for, fit_most, heat_for};
use crate::thermal::soak::{SOLID, Soak, SoakInput, soak};

/// A time: as expected, at the quick and at the slow end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// As expected.
    pub usual: Seconds,
    /// At the quick end.
    pub quick: Seconds,
    /// At the slow end: wait that long.
    pub slow: Seconds,
}

/// How far the bore of a ring closes when it is in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClosesIn {
    /// By how much, on diameter.
    pub by: Length,
    /// Its bore before.
    pub before: Diameter,
    /// Its bore once it is in and warm.
    pub after: Diameter,
}

/// What a cold takes of its medium.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Takes {
    /// Litres of nitrogen that the part boils off; filling the bath comes on top.
    Nitrogen(f64),
    /// Kilograms of dry ice that the part takes; what warms by itself comes on top.
    DryIce(f64),
}

/// What stands beside a drop.
#[derive(Clone, Debug, PartialEq)]
pub struct DropWays {
    /// Time in the cold until the part is within 2 K of it; `None`: it goes in as
    /// it is.
    pub in_cold: Option<Result<Span, Fault>>,
    /// Time in the heat for the ring that is entered; `None`: not warmed, or on a
    /// plate, whose touch nobody knows.
    pub in_heat: Option<Result<Span, Fault>>,
    /// What the cold takes of its medium; `None`: of none that is bought.
    pub takes: Option<Result<Takes, Fault>>,
    /// The greatest fit that still drops in.
    pub fit_most: Result<DiametralInterference, Fault>,
    /// How cold the part must be.
    pub cold_for: Result<Reach, Fault>,
    /// How hot the housing must be.
    pub heat_for: Result<Reach, Fault>,
    /// How far the part closes in; `None`: it has no bore, or no press fit.
    pub closes: Option<Result<ClosesIn, Fault>>,
}

/// Near enough to a medium that does not boil.
const NEAR: TemperatureDelta = TemperatureDelta::from_k(2.0);
/// Heat of sublimation of carbon dioxide at one atmosphere, J/kg: from memory.
const SUBLIMATION_J_KG: f64 = 571e3;

/// What stands beside a drop, for the clearance `least` at its bore.
#[must_use]
pub fn drop_ways(case: &DropCase, least: Length) -> DropWays {
    let drop = &case.drop;
    let (in_cold, takes) = cold_side(case);
    DropWays {
        in_cold,
        in_heat: in_heat(case),
        takes,
        fit_most: fit_most(drop, case.u_fit, least),
        cold_for: cold_for(drop, case.u_fit, least),
        heat_for: heat_for(drop, case.u_fit, least),
        closes: closes(case),
    }
}

type Asked<T> = Option<Result<T, Fault>>;

fn cold_side(case: &DropCase) -> (Asked<Span>, Asked<Takes>) {
    let drop = &case.drop;
    if case.cold == Cold::Nitrogen {
        // A chill asks for a bore.
        let pinhole = Diameter::from_m(SOLID * drop.sleeve_outer.as_m());
        let chilled = chill(&ChillInput {
            material: drop.sleeve_material.clone(),
            inner: if case.part.is_solid() {
                pinhole
            } else {
                drop.sleeve_inner
            },
            outer: drop.sleeve_outer,
            length: drop.sleeve_length,
            start: drop.room,
        });
        let span = chilled.clone().map(|c| Span {
            usual: c.quiet,
            quick: c.quiet_low,
            slow: c.quiet_high,
        });
        let litres = chilled.map(|c| Takes::Nitrogen(c.nitrogen_practical_l));
        return (Some(span), Some(litres));
    }
    let Some(coefficients) = case.cold.coefficients() else {
        return (None, None);
    };
    let inner = (!case.part.is_solid()).then_some(drop.sleeve_inner);
    let soaked = soak(&SoakInput {
        material: drop.sleeve_material.clone(),
        inner,
        outer: drop.sleeve_outer,
        length: drop.sleeve_length,
        start: drop.room,
        bath: drop.bath,
        coefficient: coefficients.map(Conductance::from_w_m2k),
        near: NEAR,
    });
    let ice = matches!(case.cold, Cold::DryIceAlcohol | Cold::DryIcePacked);
    let takes = ice.then(|| {
        soaked
            .clone()
            .map(|s| Takes::DryIce(s.heat_j / SUBLIMATION_J_KG))
    });
    (Some(soaked.map(span_of)), takes)
}

const fn span_of(soaked: Soak) -> Span {
    Span {
        usual: soaked.time,
        quick: soaked.time_low,
        slow: soaked.time_high,
    }
}

fn in_heat(case: &DropCase) -> Asked<Span> {
    let (drop, warmed) = (&case.drop, case.warmed?);
    let coefficients = case.heat.coefficients()?;
    let soaked = soak(&SoakInput {
        material: drop.block_material.clone(),
        inner: Some(drop.block_bore),
        outer: drop.block_outer,
        length: drop.sleeve_length,
        start: drop.room,
        bath: warmed.to,
        coefficient: coefficients.map(Conductance::from_w_m2k),
        near: NEAR,
    });
    Some(soaked.map(span_of))
}

/// Free rings, the faces as they are: what is smoothed off a press fit is left in,
/// so that it closes rather less than this.
fn closes(case: &DropCase) -> Asked<ClosesIn> {
    let drop = &case.drop;
    let fit_m = drop.sleeve_outer.as_m() - drop.block_bore.as_m();
    if case.part.is_solid() || fit_m <= 0.0 {
        return None;
    }
    let elastic = |material: &Material| Elastic {
        youngs: Pressure::from_pa(material.youngs_pa()),
        poisson: material.poisson(),
    };
    let pressed = press_fit(&PressFit {
        sleeve_inner: drop.sleeve_inner,
        joint: drop.sleeve_outer,
        block_outer: drop.block_outer,
        sleeve: elastic(&drop.sleeve_material),
        block: elastic(&drop.block_material),
        interference: DiametralInterference::from_m(fit_m),
        rz_sleeve: Length::default(),
        rz_bore: Length::default(),
        smoothing: 0.0,
        length: drop.sleeve_length,
        friction: 0.0,
    });
    Some(pressed.map(|p| ClosesIn {
        by: Length::from_m(-p.sleeve_inner_change.as_m()),
        before: drop.sleeve_inner,
        after: Diameter::from_m(drop.sleeve_inner.as_m() + p.sleeve_inner_change.as_m()),
    }))
}

/// One of the ways side by side.
#[derive(Clone, Debug, PartialEq)]
pub struct Way {
    /// What makes the part cold.
    pub cold: Cold,
    /// What warms its housing.
    pub heat: Heat,
    /// The sheet that asks for it.
    pub sheet: DropSheet,
}

/// The same part by other means: nitrogen, dry ice, freezer, the housing warmed
/// alone, both. A heat that is not chosen is an oven.
///
/// # Errors
/// A choice of the sheet that cannot be read.
pub fn ways(sheet: &DropSheet) -> Result<Vec<Way>, Lack> {
    let (cold, heat) = (sheet.cold()?, sheet.heat()?);
    let heated = if heat == Heat::AsItIs {
        Heat::Oven
    } else {
        heat
    };
    let chilled = if cold == Cold::AsItIs {
        Cold::DryIceAlcohol
    } else {
        cold
    };
    let rows = [
        (Cold::Nitrogen, Heat::AsItIs),
        (Cold::DryIceAlcohol, Heat::AsItIs),
        (Cold::Freezer, Heat::AsItIs),
        (Cold::AsItIs, heated),
        (chilled, heated),
    ];
    let at = sheet.entries.iter().map(|(_, entry)| entry.at).max();
    Ok(rows
        .into_iter()
        .map(|(now_cold, now_heat)| {
            let mut other = sheet.clone();
            let mut choose = |field: Field, word: &str| {
                let entry = Entry::new(word, field.unit(sheet.units), at.into_iter().sum());
                other.entries.put(Place::of_engine(field), entry);
            };
            choose(Field::DropCold, now_cold.id());
            choose(Field::DropHeat, now_heat.id());
            // What was read of one cold is not the other's.
            if now_cold != cold {
                choose(Field::DropColdAt, "");
            }
            Way {
                cold: now_cold,
                heat: now_heat,
                sheet: other,
            }
        })
        .collect())
}

/// Price of a litre or a kilogram of what a cold takes; `None`: not entered.
///
/// # Errors
/// A price that cannot be used.
pub fn price(sheet: &DropSheet, takes: Takes) -> Result<Option<f64>, Lack> {
    let (field, amount) = match takes {
        Takes::Nitrogen(litres) => (Field::DropLitrePrice, litres),
        Takes::DryIce(kg) => (Field::DropIcePrice, kg),
    };
    let price = sheet.entries.reading(Place::of_engine(field)).number()?;
    Ok(price.map(|price| price * amount))
}
