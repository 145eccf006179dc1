//! What a calculation can find, each by its name: scripts read the name, the page
//! words each of them.

macro_rules! codes {
    ($($name:ident $id:literal,)*) => {
        /// What was found; its name for scripts is [`Code::id`].
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[allow(missing_docs)] // the finding's own message says what it is
        pub enum Code { $($name,)* }

        impl Code {
            /// All.
            pub const ALL: &[Self] = &[$(Self::$name,)*];

            /// Its name for scripts: for ever.
            #[must_use]
            pub const fn id(self) -> &'static str {
                match self { $(Self::$name => $id,)* }
            }
        }
    };
}

codes! {
    AllAlike "all_alike",
    BelowLedge "below_ledge",
    BoreTooBig "bore_too_big",
    Butts "butts",
    Cocked "cocked",
    ColdNotSmaller "cold_not_smaller",
    ColdShrinksLittle "cold_shrinks_little",
    ColdShrinksMuch "cold_shrinks_much",
    DeckNotSurveyed "deck_not_surveyed",
    DeepCut "deep_cut",
    DoesNotEnter "does_not_enter",
    FlangeMayStayLow "flange_may_stay_low",
    FlatsNeeded "flats_needed",
    GaugesEatTheBand "gauges_eat_the_band",
    HeightMoved "height_moved",
    JointSpread "joint_spread",
    LedgeNotFlat "ledge_not_flat",
    LittleFlangeLeft "little_flange_left",
    LittleMargin "little_margin",
    LoadNotChecked "load_not_checked",
    Loose "loose",
    LooseInService "loose_in_service",
    MeshSpeaks "mesh_speaks",
    NeighboursMove "neighbours_move",
    NeverGrips "never_grips",
    NoFlange "no_flange",
    NoFloor "no_floor",
    NoPistonClearance "no_piston_clearance",
    NoPlan "no_plan",
    NoStock "no_stock",
    NoWall "no_wall",
    OddReturn "odd_return",
    OneReading "one_reading",
    OutsideSizes "outside_sizes",
    OutsideTheRule "outside_the_rule",
    OxygenLow "oxygen_low",
    PistonTight "piston_tight",
    ReturnsNotCompared "returns_not_compared",
    SamplesRefused "samples_refused",
    SharpCorner "sharp_corner",
    SlopeFromRoughness "slope_from_roughness",
    StandsOut "stands_out",
    SweptOval "swept_oval",
    TemperaturesApart "temperatures_apart",
    TighterBelowTheDeck "tighter_below_the_deck",
    TooDeep "too_deep",
    TooLittle "too_little",
    UnequalPulls "unequal_pulls",
    WorseAtTheFloor "worse_at_the_floor",
}
