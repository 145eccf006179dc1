//! What the bytes of a link of version 1 stand for: frozen. New names go to the
//! end; none is ever moved or taken out.

/// Fields of an engine, by their bit.
pub(super) const ENGINE: &[&str] = &[
    "nominal_od",
    "sleeve_id",
    "sleeve_length",
    "nominal_flange",
    "block_wall",
    "shim",
    "fit_low",
    "fit_high",
    "round_look",
    "round_stop",
    "bore_form",
    "entry_least",
    "target_proud",
    "planned_cut",
    "clean_up",
    "risk",
    "gap_limit",
    "tilt_limit",
    "confidence",
    "gauge_sleeve",
    "gauge_bore",
    "gauge_height",
    "gauge_thickness",
    "gauge_depth",
    "feed_sd",
    "room_temperature",
    "pitch",
    "flange_od",
    "final_bore",
    "step_below",
    "spindle",
    "gasket",
    "head_least",
    "ring_height",
    "ring_proud",
    "ring_gap_low",
    "ring_gap_high",
    "apart_most",
    "test_loss",
    "datum_tilt",
    "wall_calm",
    "wall_look",
    "web_calm",
    "web_look",
    "bottom_least",
    "finish_least",
    "clear_low",
    "clear_high",
    "offset_look",
    "hone_leave",
    "fillet_spare",
    "groove_near",
    "ram_bore",
    "ram_hole",
    "ram_rated",
    "rod_d",
    "rod_pitch",
    "rod_yield",
    "ledge_most",
    "flange_most",
    "stroke",
    "compression",
    "piston_d",
    "piston_least",
    "hone_stroke",
    "hone_turns",
    "hone_cycles",
    "jacket_from",
    "jacket_to",
    "half_width",
    "head_clamp",
];

/// Fields of the cold drop, by their bit.
pub(super) const DROP: &[&str] = &[
    "drop_od",
    "drop_wall",
    "drop_length",
    "drop_fit",
    "drop_block_wall",
    "drop_carry",
    "drop_room",
];

/// Readings of a cylinder that its floor sheet needs, by their bit: the
/// places of a field one after the other.
pub(super) const FLOOR: &[&str] = &["sleeve_od", "flange_thickness"];

/// Materials, by their number.
pub(super) const MATERIALS: &[&str] = &[
    "gray_iron",
    "ductile_iron_ferritic",
    "ductile_iron_pearlitic",
    "compacted_iron",
    "carbon_steel",
    "stainless_304",
    "aluminium_a356",
    "aluminium_6061",
];

/// Layouts, by their number.
pub(super) const LAYOUTS: &[&str] = &["in_line", "v_halves", "v_odd_even"];

/// Units, by their number.
pub(super) const UNITS: &[&str] = &["inch", "mm"];
