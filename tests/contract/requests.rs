//! Good requests and the outputs that the contract names.

use serde_json::{Value, json};

/// A good request of every calculation, from contract.md's descriptions.
pub fn good(calc: &str) -> Value {
    let fit = json!({
        "sleeve": {"inner_d_m": 0.1016, "outer_d_m": 0.10795, "youngs_pa": 1.68e11, "poisson": 0.275},
        "block": {"outer_d_m": 0.1524, "youngs_pa": 1.1e11, "poisson": 0.26},
        "interference_m": 3e-5, "length_m": 0.15, "friction": 0.12
    });
    match calc {
        "contraction" => {
            json!({"material": "gray_iron", "length_m": 0.1, "from_k": 293.15, "to_k": 77.355})
        }
        "chill" => json!({
            "material": "gray_iron", "inner_d_m": 0.1, "outer_d_m": 0.108, "length_m": 0.2,
            "start_k": 293.15
        }),
        "cold_drop" => json!({
            "sleeve": {"material": "gray_iron", "inner_d_m": 0.0985, "outer_d_m": 0.1067, "length_m": 0.22},
            "block": {"material": "gray_iron", "bore_d_m": 0.10667, "outer_d_m": 0.15},
            "bath_k": 77.355, "room_k": 293.15, "carry_s": 10, "offset": 0.5, "frost_m": 2e-6, "insert_s": 2
        }),
        "joint" => json!({
            "k_sleeve_w_mk": 40, "k_block_w_mk": 45, "sigma_m": 1e-6, "pressure_pa": 2e6,
            "hardness_pa": 2.4e9, "gas_k_w_mk": 0.0257, "gas_jump_m": 2.6e-7
        }),
        "soak" => json!({
            "material": "carbon_steel", "inner_d_m": 0, "outer_d_m": 0.03, "length_m": 0.12, "start_k": 293.15,
            "bath_k": 194.7, "h_w_m2k": [150, 270, 500], "near_k": 3
        }),
        "heights_plan" => json!({
            "holes": [{"depth_m": [0.0078, 0.0078, 0.00781, 0.0078]}, {"depth_m": [0.00783, 0.00783, 0.00783, 0.00784]}],
            "sleeves": [{"thickness_m": [0.00795, 0.00795, 0.00796, 0.00795]}, {"thickness_m": [0.0079, 0.0079, 0.0079, 0.0079]}],
            "shims_m": [5e-5, 0.0001], "cut_step_m": 2.54e-5, "cut_most_m": 0.0001, "proud_m": [2.54e-5, 0.00015],
            "spread_hole_m": 5e-5, "spread_neighbour_m": 5e-5, "spread_all_m": 0.0001
        }),
        "after_deck" => json!({
            "cut_m": 0.00015,
            "items": [
                {"name": "counterbore", "depth_m": 0.0078, "height_m": null, "low_m": 0.00775, "high_m": 0.0079},
                {"name": "dowel", "depth_m": null, "height_m": 0.0125, "low_m": 0.012, "high_m": 0.0126}
            ]
        }),
        "oxygen" => json!({
            "room_m3": 100, "nitrogen_l": 10, "room_k": 293.15, "air_changes_per_h": 2, "release_s": 600
        }),
        "form" => {
            json!({"levels": [{"z_m": 0.01, "d_m": [0.108, 0.10801]}, {"z_m": 0.1, "d_m": [0.10799]}]})
        }
        "fit" => json!({
            "sleeve_d_m": [0.10798], "bore_d_m": [0.10795], "sleeve_k": 293.15, "bore_k": 293.15,
            "sleeve_material": "ductile_iron_ferritic", "bore_material": "gray_iron",
            "u_sleeve_m": 1e-6, "u_bore_m": 1e-6, "band_m": [2.54e-5, 3.81e-5]
        }),
        "seat" => json!({
            "thickness_m": [0.008, 0.008], "depth_m": [0.0078, 0.0078], "height_m": [0.0002, 0.0002],
            "pulls": [
                {"gauge_pa": 1.7e7, "loaded_m": 0.00018, "relaxed_m": 0.0002},
                {"gauge_pa": 1.7e7, "loaded_m": 0.00018, "relaxed_m": 0.0002},
                {"gauge_pa": 1.7e7, "loaded_m": null, "relaxed_m": 0.0002}
            ],
            "u_height_m": 5e-6, "u_thickness_m": 5e-6, "u_depth_m": 5e-6,
            "gap_limit_m": 2.54e-5, "tilt_limit_m": 2.54e-5
        }),
        "seat_deck" => json!({
            "gap_m": [2.5e-6, 7.6e-6, 1.067e-4, -5e-6, 5e-6], "u_own_m": 1.27e-5, "u_common_m": 1.27e-5,
            "gap_limit_m": 2.54e-5, "prior_home": 0.95, "gap_scale_m": 7.62e-5, "prior_alike": 0.02
        }),
        "scatter" => json!({"errors_m": [1e-6, -2e-6, 3e-6]}),
        "press_fit" => fit,
        "pull" => json!({
            "gauge_pa": 1.7e7, "ram_outer_d_m": 0.0762, "ram_inner_d_m": 0.03175,
            "rod": {"major_d_m": 0.0254, "pitch_m": 0.003175, "series": "inch", "length_m": 0.6, "youngs_pa": 2e11},
            "ledge_outer_d_m": 0.113, "ledge_inner_d_m": 0.1085, "flange_thickness_m": 0.005,
            "flange_root_d_m": 0.108
        }),
        "bore_profile" => json!({
            "sleeve": {
                "inner_d_m": 0.1016, "outer_d_m": 0.10795, "length_m": 0.15, "flange_outer_d_m": 0.113,
                "flange_thickness_m": 0.005, "youngs_pa": 1.68e11, "poisson": 0.275
            },
            "block": {"outer_d_m": 0.1524, "youngs_pa": 1.1e11, "poisson": 0.26, "below_m": 0.02, "jacket": null},
            "interference_m": 3e-5, "joint": "frictionless", "clamp_n": 0, "z_m": [0, 0.05, 0.155],
            "gas_pa": 1e6, "gas_depth_m": 0.08,
            "temperatures": {
                "sleeve_material": "ductile_iron_ferritic", "block_properties": {"expansion_per_k": 1.1e-5},
                "sleeve_inner_k": 420, "sleeve_outer_k": 400, "block_inner_k": 390, "block_outer_k": 360
            }
        }),
        "bore_stress" => {
            let mut stress = good("bore_profile");
            stress["friction"] = json!(0.12);
            stress["at_m"] = json!(0.0008);
            stress
        }
        "counterbore" => json!({
            "thickness_m": [0.008, 0.00801], "target_proud_m": 0.0002, "depth_now_m": [0.0077, 0.0077],
            "feed_sd_m": 1e-5, "gauge_sd_m": 1e-5, "removal_m": 0.0001, "clean_up_m": 5e-5, "risk": 0.02
        }),
        "deck" => json!({
            "low_m": [0, -5e-5], "holes": [{"deck_m": 0, "height_m": 0.0002, "thickness_m": 0.008}],
            "clean_up_m": 5e-5, "planned_m": null
        }),
        "engine_effect" => json!({
            "bore_d_m": 0.105, "stroke_m": 0.13, "compression_ratio": 17, "removal_m": 0.0002,
            "gasket_change_m": 0, "protrusion_m": 0.0003
        }),
        "groove" => {
            json!({"ring_height_m": 0.003, "stand_proud_m": 0.0002, "flange_left_m": 0.0078})
        }
        "cross_hatch" => {
            json!({"bore_d_m": 0.108, "stroke_m": 0.1, "rev_per_s": 2.5, "cycles_per_s": 1})
        }
        "ring_gap" => json!({"gap_m": 0.0004, "bore_change_m": 5e-5}),
        "wall" => json!({"measured_m": 0.008, "old_d_m": 0.1, "new_d_m": 0.108, "offset_m": 0}),
        "web" => json!({"pitch_m": 0.13, "d_m": 0.113, "offset_a_m": 0, "offset_b_m": 0}),
        "pairing" => {
            json!({"sleeve_d_m": [0.108, 0.1081], "bore_d_m": [0.1079, 0.10795], "target_m": 3e-5})
        }
        "bore_plan" => json!({
            "now_d_m": 0.104, "finished_d_m": 0.108, "hone_m": 3e-5, "last_cut_m": 0.0003, "passes": 3,
            "spindle_d_m": 0.075
        }),
        "block_ring" => json!({
            "bore_d_m": 0.108, "pitch_m": 0.14, "half_width_m": 0.09, "fitted": "all", "fit": fit,
            "flange": {"flange_thickness_m": 0.005, "flange_width_m": 0.0025, "wall_m": 0.003}
        }),
        "service" => json!({
            "fit": fit, "sleeve_material": "ductile_iron_ferritic", "block_material": "aluminium_a356",
            "sleeve_k": 420, "block_k": 380, "gas_pa": 1.4e7, "sleeve_strength_pa": 4.48e8,
            "block_strength_pa": 2.28e8
        }),
        "finish" => {
            json!({"fit": fit, "finished_d_m": 0.1019, "hone_m": 7e-5, "piston_d_m": 0.1018})
        }
        "estimate" => json!({
            "holes": 5, "per_job_s": 10800, "per_hole_s": 7200, "hour_price": 90, "spare_sleeves": 1,
            "sleeve_price": 140, "nitrogen_per_sleeve_l": 1, "bath_fill_l": 12, "loss_l_per_h": 0.5,
            "standing_s": 14400, "nitrogen_spare": 0.25, "litre_price": 2, "other_price": 80
        }),
        "bands" => json!({
            "calc": "press_fit", "inputs": fit,
            "uncertain": [{"field": "interference_m", "u": 2e-6}, {"field": "sleeve.inner_d_m", "u": 1e-6, "law": "uniform"}],
            "samples": 200, "seed": 3
        }),
        other => panic!("no good request for {other}"),
    }
}

/// The contract's outputs, each of which must be there.
pub const OUTPUTS: &[(&str, &str)] = &[
    ("contraction", "strain change_m strain_low strain_high"),
    ("form", "mean_d_m out_of_round_m taper_m per_level"),
    (
        "fit",
        "interference_mean_m interference_min_m interference_max_m u_interference_m p_inside verdict",
    ),
    (
        "press_fit",
        "effective_interference_m pressure_pa sleeve_hoop_inner_pa sleeve_hoop_outer_pa block_hoop_inner_pa block_hoop_outer_pa sleeve_inner_d_change_m block_outer_d_change_m slip_force_n",
    ),
    (
        "joint",
        "h_contact_w_m2k h_gap_w_m2k h_joint_w_m2k separation_m",
    ),
    (
        "chill",
        "quiet_s quiet_low_s quiet_high_s mass_kg heat_j nitrogen_kg nitrogen_l nitrogen_practical_l",
    ),
    (
        "cold_drop",
        "clearance_bath_m clearance_entry_m grip_s grip_sleeve_mean_k grip_block_mean_k climb_m climb_ceiling_m grip_slow_s equal_s series touch_s bow_m left_home_s",
    ),
    ("counterbore", "depth_m to_go_m p_low target_for_risk_m"),
    (
        "seat",
        "predicted_m gap_m gap_mean_m u_gap_m tilt_m settle_m return_m stopped p_seated verdict",
    ),
    ("soak", "soak_s soak_low_s soak_high_s biot heat_j"),
    (
        "heights_plan",
        "possible plan height_m cuts shims moved turned spread_m",
    ),
    ("after_deck", "items"),
    ("seat_deck", "p_seated p_all p_alike bias_m bias_sd_m"),
    (
        "pull",
        "force_n rod_area_m2 rod_stress_pa rod_stretch_m ledge_area_m2 ledge_pressure_pa flange_shear_pa",
    ),
    (
        "oxygen",
        "fraction_sudden fraction_mixed fraction_least litres_for_195",
    ),
    (
        "deck",
        "removal_least_m removal_m flange_cut_m flange_left_m",
    ),
    (
        "engine_effect",
        "compression_ratio_after protrusion_after_m swept_m3 clearance_m3_after",
    ),
    ("groove", "depth_m floor_m"),
    ("cross_hatch", "cycles_per_s included_rad to_horizontal_rad"),
    ("ring_gap", "gap_after_m"),
    ("wall", "left_m"),
    ("web", "left_m flat_m"),
    (
        "pairing",
        "bore_for_sleeve stock_m worst_stock_m total_stock_m",
    ),
    ("scatter", "n mean_m sd_m low_m high_m"),
    (
        "bore_profile",
        "inner_d_change_m pressure_pa ledge_force_n height_change_m",
    ),
];
