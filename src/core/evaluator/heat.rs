//! contraction, chill, cold_drop, soak, joint, oxygen.

use super::fields::Fields;
use super::output::Output;
use crate::quantity::report::Fault;
use crate::quantity::{
    Conductance, Diameter, Length, Pressure, Seconds, Temperature, TemperatureDelta, Volume,
};
use crate::thermal;

pub fn contraction(f: &Fields) -> Result<Output, Fault> {
    let material = f.material("", &["expansion_per_k"])?;
    let length = Length::from_m(f.number("length_m")?);
    let from = Temperature::from_k(f.number("from_k")?);
    let to = Temperature::from_k(f.number("to_k")?);
    f.finish()?;
    let c = thermal::contraction::contraction(&material, length, from, to)?;
    let mut out = Output::default();
    out.number("strain", c.strain)
        .number("change_m", c.change.as_m())
        .number("strain_low", c.strain_low)
        .number("strain_high", c.strain_high);
    Ok(out)
}

pub fn chill(f: &Fields) -> Result<Output, Fault> {
    let input = thermal::chill::ChillInput {
        material: f.material("", &["density_kg_m3", "specific_heat_j_kgk"])?,
        inner: Diameter::from_m(f.number("inner_d_m")?),
        outer: Diameter::from_m(f.number("outer_d_m")?),
        length: Length::from_m(f.number("length_m")?),
        start: Temperature::from_k(f.number("start_k")?),
    };
    f.finish()?;
    let c = thermal::chill::chill(&input)?;
    let mut out = Output::default();
    out.number("quiet_s", c.quiet.as_s())
        .number("quiet_low_s", c.quiet_low.as_s())
        .number("quiet_high_s", c.quiet_high.as_s())
        .number("mass_kg", c.mass_kg)
        .number("heat_j", c.heat_j)
        .number("nitrogen_kg", c.nitrogen_kg)
        .number("nitrogen_l", c.nitrogen_l)
        .number("nitrogen_practical_l", c.nitrogen_practical_l);
    Ok(out)
}

pub fn cold_drop(f: &Fields) -> Result<Output, Fault> {
    const NEEDED: [&str; 4] = [
        "density_kg_m3",
        "specific_heat_j_kgk",
        "conductivity_w_mk",
        "expansion_per_k",
    ];
    let sleeve = f.object("sleeve")?;
    let block = f.object("block")?;
    let room = f.number("room_k")?;
    let input = thermal::cold_drop::ColdDrop {
        sleeve_material: sleeve.material("", &NEEDED)?,
        sleeve_inner: Diameter::from_m(sleeve.number("inner_d_m")?),
        sleeve_outer: Diameter::from_m(sleeve.number("outer_d_m")?),
        sleeve_length: Length::from_m(sleeve.number("length_m")?),
        block_material: block.material("", &NEEDED)?,
        block_bore: Diameter::from_m(block.number("bore_d_m")?),
        block_outer: Diameter::from_m(block.number("outer_d_m")?),
        bath: Temperature::from_k(f.number("bath_k")?),
        room: Temperature::from_k(room),
        block: Temperature::from_k(f.number_or("block_k", room)?),
        carry: Seconds::from_s(f.number("carry_s")?),
        air: f.optional("air_w_m2k")?.map(Conductance::from_w_m2k),
        lean: f.number_or("offset", 0.0)?,
        frost: Length::from_m(f.number_or("frost_m", 0.0)?),
        insertion: Seconds::from_s(f.number_or("insert_s", 0.0)?),
    };
    sleeve.finish()?;
    block.finish()?;
    f.finish()?;
    let d = thermal::cold_drop::cold_drop(&input)?;
    let mut out = Output::default();
    out.number("clearance_bath_m", d.clearance_bath.as_m())
        .number("clearance_entry_m", d.clearance_entry.as_m())
        .nullable("grip_s", d.grip.map(|g| g.after.as_s()))
        .nullable("grip_sleeve_mean_k", d.grip.map(|g| g.sleeve_mean.as_k()))
        .nullable("grip_block_mean_k", d.grip.map(|g| g.block_mean.as_k()))
        .nullable("climb_m", d.grip.map(|g| g.climb.as_m()))
        .number("climb_ceiling_m", d.climb_ceiling.as_m())
        .nullable("grip_slow_s", d.grip_slow.map(Seconds::as_s))
        .nullable("equal_s", d.equal.map(Seconds::as_s))
        .nullable("touch_s", d.touch.map(Seconds::as_s))
        .number("bow_m", d.bow.as_m())
        .nullable("left_home_s", d.left_home.map(Seconds::as_s))
        .rows(
            "series",
            ["t_s", "clearance_m", "sleeve_mean_k", "block_bore_k"],
            d.series.iter().map(|p| {
                [
                    p.t.as_s(),
                    p.clearance.as_m(),
                    p.sleeve_mean.as_k(),
                    p.block_bore.as_k(),
                ]
            }),
        )
        .findings(&d.findings);
    Ok(out)
}

pub fn soak(f: &Fields) -> Result<Output, Fault> {
    const NEEDED: [&str; 3] = ["density_kg_m3", "specific_heat_j_kgk", "conductivity_w_mk"];
    let material = f.material("", &NEEDED)?;
    let inner = f.number("inner_d_m")?;
    let coefficients = f.numbers("h_w_m2k")?;
    let [low, nominal, high] = coefficients[..] else {
        return Err(Fault::new(
            "h_w_m2k",
            format!(
                "{} coefficients where 3 are wanted: low, nominal, high",
                coefficients.len()
            ),
        ));
    };
    let input = thermal::soak::SoakInput {
        material,
        // A bore of 0 is none: the part is solid.
        inner: (inner != 0.0).then_some(Diameter::from_m(inner)),
        outer: Diameter::from_m(f.number("outer_d_m")?),
        length: Length::from_m(f.number("length_m")?),
        start: Temperature::from_k(f.number("start_k")?),
        bath: Temperature::from_k(f.number("bath_k")?),
        coefficient: [low, nominal, high].map(Conductance::from_w_m2k),
        near: TemperatureDelta::from_k(f.number_or("near_k", 2.0)?),
    };
    f.finish()?;
    let s = thermal::soak::soak(&input)?;
    let mut out = Output::default();
    out.number("soak_s", s.time.as_s())
        .number("soak_low_s", s.time_low.as_s())
        .number("soak_high_s", s.time_high.as_s())
        .number("biot", s.biot)
        .number("heat_j", s.heat_j);
    Ok(out)
}

pub fn joint(f: &Fields) -> Result<Output, Fault> {
    let input = thermal::joint::JointInput {
        k_sleeve_w_mk: f.number("k_sleeve_w_mk")?,
        k_block_w_mk: f.number("k_block_w_mk")?,
        sigma: Length::from_m(f.number("sigma_m")?),
        slope: f.optional("slope")?,
        pressure: Pressure::from_pa(f.number("pressure_pa")?),
        hardness: Pressure::from_pa(f.number("hardness_pa")?),
        gas_k_w_mk: f.number("gas_k_w_mk")?,
        gas_jump: Length::from_m(f.number("gas_jump_m")?),
    };
    f.finish()?;
    let j = thermal::joint::joint(&input)?;
    let mut out = Output::default();
    out.number("h_contact_w_m2k", j.contact.as_w_m2k())
        .number("h_gap_w_m2k", j.gap.as_w_m2k())
        .number("h_joint_w_m2k", j.joint.as_w_m2k())
        .number("separation_m", j.separation.as_m())
        .findings(&j.findings);
    Ok(out)
}

pub fn oxygen(f: &Fields) -> Result<Output, Fault> {
    let input = thermal::oxygen::OxygenInput {
        room: Volume::from_m3(f.number("room_m3")?),
        nitrogen_l: f.number("nitrogen_l")?,
        temperature: Temperature::from_k(f.number("room_k")?),
        air_changes_per_h: f.number("air_changes_per_h")?,
        release: Seconds::from_s(f.number("release_s")?),
    };
    f.finish()?;
    let o = thermal::oxygen::oxygen(&input)?;
    let mut out = Output::default();
    out.number("fraction_sudden", o.sudden)
        .number("fraction_mixed", o.mixed)
        .number("fraction_least", o.least)
        .number("litres_for_195", o.litres_for_limit)
        .findings(&o.findings);
    Ok(out)
}
