//! What a fault is about, for who reads it: the field's own name is SI and
//! English of the evaluator, not of the shop.

/// What to look at where something cannot be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About {
    /// Low spots and height of the deck.
    Deck,
    /// The clean-up cut.
    CleanUp,
    /// What the deck loses.
    Cut,
    /// Pressures and heights of the pulls.
    Pulls,
    /// Depth of the counterbore.
    Depth,
    /// Thickness of the flange and of shims.
    Thickness,
    /// Heights above the deck.
    Heights,
    /// The plan of heights that is worked to.
    Plan,
    /// The inside of the sleeve, or a wall.
    Wall,
    /// Temperatures.
    Temperatures,
    /// The temperature of what cools a part.
    Cold,
    /// The temperature of a warmed housing.
    Heat,
    /// Times.
    Times,
    /// Diameters and the fit between them.
    Diameters,
    /// Lengths along the bore, distances of bores.
    Lengths,
    /// Gauges and what is known of them.
    Gauges,
    /// Limits, shares and chances entered.
    Limits,
    /// Gas, clamp and ram.
    Loads,
    /// Hone and boring bar.
    Tools,
    /// Constants of materials, surfaces and air.
    Materials,
    /// Nitrogen and prices.
    Costs,
    /// Names that no answer of the page brings.
    Other,
}

/// What a field of this name is about, its path and index aside.
pub(super) fn about(field: &str) -> About {
    let last = field.rsplit('.').next().unwrap_or(field); // a split has a part
    let name = last.split('[').next().unwrap_or(last); // a split has a part
    match name {
        "low_m" | "below_m" | "deck_m" | "at_m" => About::Deck,
        "clean_up_m" => About::CleanUp,
        "cut_m" | "planned_m" | "cut_most_m" | "cut_step_m" | "removal_m" | "last_cut_m" => {
            About::Cut
        }
        "pulls" | "gauge_pa" | "loaded_m" | "relaxed_m" | "release_s" => About::Pulls,
        "depth_m" | "depth_now_m" | "bottom_m" => About::Depth,
        "thickness_m" | "flange_thickness_m" | "flange_left_m" | "flange_width_m" | "shim_m"
        | "shims_m" => About::Thickness,
        "height_m" | "heights_m" | "high_m" | "proud_m" | "stand_proud_m" | "target_m"
        | "target_proud_m" | "protrusion_m" | "ring_height_m" | "holes" | "gap_m"
        | "gasket_change_m" => About::Heights,
        "inner" | "inner_d_m" | "wall_m" | "offset" | "offset_m" | "offset_a_m" | "offset_b_m" => {
            About::Wall
        }
        "bath_k" | "block_k" | "bore_k" | "from_k" | "near_k" | "now_k" | "room_k" | "sleeve_k"
        | "start_k" | "to_k" | "within_k" | "sleeve_inner_k" | "sleeve_outer_k"
        | "block_inner_k" | "block_outer_k" => About::Temperatures,
        "cold_k" => About::Cold,
        "heat_k" => About::Heat,
        "carry_s" | "heat_out_s" | "elapsed_s" | "insert_s" | "standing_s" | "per_hole_s"
        | "per_job_s" => About::Times,
        "bore" | "block" | "sleeve" | "outer" | "block_outer" | "d_m" | "outer_d_m"
        | "bore_d_m" | "bored_d_m" | "cold_d_m" | "finished_d_m" | "major_d_m" | "new_d_m"
        | "now_d_m" | "old_d_m" | "piston_d_m" | "sleeve_d_m" | "flange_outer_d_m"
        | "flange_root_d_m" | "ledge_inner_d_m" | "ledge_outer_d_m" | "interference_m"
        | "bore_change_m" | "measured_m" | "joint" => About::Diameters,
        "length" | "length_m" | "pitch_m" | "z_m" | "half_width_m" | "levels" => About::Lengths,
        "u_bore_m" | "u_common_m" | "u_depth_m" | "u_height_m" | "u_own_m" | "u_sleeve_m"
        | "u_thickness_m" | "errors_m" | "sigma_m" | "gauge_sd_m" | "feed_sd_m" | "band_m" => {
            About::Gauges
        }
        "gap_limit_m" | "tilt_limit_m" | "confidence" | "risk" | "prior_home" | "prior_alike"
        | "frost_m" => About::Limits,
        "clamp_n" | "gas_pa" | "gas_depth_m" | "pressure_pa" | "ram_area_m2" | "ram_inner_d_m"
        | "ram_outer_d_m" | "compression_ratio" => About::Loads,
        "cycles_per_s" | "rev_per_s" | "included_rad" | "stroke_m" | "hone_m" | "passes"
        | "spindle_d_m" | "spread_all_m" | "spread_hole_m" | "spread_neighbour_m" => About::Tools,
        "air_w_m2k" | "h_w_m2k" | "block_strength_pa" | "sleeve_strength_pa" | "friction"
        | "gap_scale_m" | "gas_jump_m" | "gas_k_w_mk" | "hardness_pa" | "k_block_w_mk"
        | "k_sleeve_w_mk" | "poisson" | "youngs_pa" | "rz_bore_m" | "rz_sleeve_m" | "slope"
        | "smoothing" | "air_changes_per_h" | "room_m3" => About::Materials,
        "bath_fill_l"
        | "hour_price"
        | "litre_price"
        | "loss_l_per_h"
        | "nitrogen_l"
        | "nitrogen_per_sleeve_l"
        | "nitrogen_spare"
        | "other_price"
        | "sleeve_price"
        | "spare_sleeves"
        | "items" => About::Costs,
        "heights_plan" => About::Plan,
        _ => About::Other,
    }
}
