//! The table of steps, in shop order. See [`super::step`] for what its columns
//! mean.

use crate::job::model::field::Field::*;
use crate::job::model::hangs_on::{CHOICE, DECKED, FINISHING, LEFT_PROUD, PULLING, SEATED, WARM};
use crate::job::model::step::{Calculation, Caution, Drawing, StepId, StepSpec, Subject};

/// A step without anything: the entries below say what theirs have.
const PLAIN: StepSpec = StepSpec {
    id: StepId::Enquiry,
    name: "",
    number: 0,
    subject: Subject::Cylinder,
    fields: &[],
    needed: &[],
    calculation: Calculation::None,
    uses: &[],
    timed: None,
    drawing: Drawing::None,
    cautions: &[],
};

const CUTTING: &[Caution] = &[Caution::Cutting];
const LIFTING: &[Caution] = &[Caution::Lifting];
const TESTING: &[Caution] = &[Caution::PressureTest];
const NITROGEN: &[Caution] = &[Caution::Nitrogen];
const CHILLING: &[Caution] = &[Caution::Nitrogen, Caution::ColdReading];
const COLD: &[Caution] = &[Caution::Nitrogen, Caution::ColdIron];

/// The steps, in shop order.
pub const STEPS: &[StepSpec] = &[
    StepSpec {
        id: StepId::Enquiry,
        name: "enquiry",
        number: 1,
        subject: Subject::Block,
        fields: &[
            HoursJob,
            HoursHole,
            HourPrice,
            SleevePrice,
            LitrePrice,
            BathFill,
            StandingLoss,
            StandingHours,
            OtherPrice,
        ],
        needed: &[HoursJob, HoursHole, HourPrice],
        calculation: Calculation::Estimate,
        uses: &[SleeveId, NominalOd, SleeveLength, RoomTemperature],
        ..PLAIN
    },
    StepSpec {
        id: StepId::Intake,
        name: "intake",
        number: 2,
        subject: Subject::Block,
        cautions: LIFTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Rest,
        name: "rest",
        number: 3,
        subject: Subject::Block,
        fields: &[BlockOut, RestTime, BlockNow, SleevesNow],
        needed: &[BlockNow, SleevesNow],
        calculation: Calculation::Apart,
        uses: &[ApartMost, RoomTemperature],
        timed: Some(RestTime),
        cautions: LIFTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Pressure,
        name: "pressure",
        number: 4,
        subject: Subject::Block,
        fields: &[TestStart, TestEnd, TestTime],
        needed: &[TestStart, TestEnd],
        calculation: Calculation::PressureDrop,
        uses: &[TestLoss],
        timed: Some(TestTime),
        cautions: TESTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Datum,
        name: "datum",
        number: 5,
        subject: Subject::Bank,
        fields: &[DeckHeight, LowSpot],
        needed: &[DeckHeight],
        calculation: Calculation::DatumTilt,
        uses: &[DatumTilt],
        drawing: Drawing::DeckMap,
        ..PLAIN
    },
    StepSpec {
        id: StepId::OldBore,
        name: "old-bore",
        number: 6,
        fields: &[OldBore],
        needed: &[OldBore],
        calculation: Calculation::Wear,
        uses: &[SleeveLength],
        drawing: Drawing::Round,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Wall,
        name: "wall",
        number: 7,
        fields: &[WallReading],
        needed: &[WallReading],
        calculation: Calculation::WallLeft,
        uses: &[
            NominalOd, OldBore, Indicator, WallCalm, WallLook, FitLow, FitHigh, SleeveOd,
        ],
        drawing: Drawing::WallClock,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Choose,
        name: "choose",
        number: 8,
        subject: Subject::Block,
        fields: &[
            NominalOd,
            SleeveId,
            SleeveLength,
            NominalFlange,
            FlangeOd,
            Pitch,
            FinalBore,
            StepBelow,
            GrooveInner,
            GrooveOuter,
        ],
        needed: &[NominalOd, SleeveId, NominalFlange, FlangeOd, Pitch],
        calculation: Calculation::Choose,
        uses: CHOICE,
        drawing: Drawing::Plan,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Sleeve,
        name: "sleeve",
        number: 9,
        fields: &[SleeveOd, FlangeThickness, FlangeOdHere, Fillet, PlainLength],
        needed: &[SleeveOd, FlangeThickness, PlainLength],
        calculation: Calculation::SleeveForm,
        uses: &[SleeveKind, RoundLook, RoundStop, SleeveLength],
        drawing: Drawing::Round,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Caps,
        name: "caps",
        number: 10,
        subject: Subject::Block,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Centre,
        name: "centre",
        number: 11,
        fields: &[Indicator],
        needed: &[Indicator],
        calculation: Calculation::Offset,
        uses: &[OffsetLook],
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Bore,
        name: "bore",
        number: 12,
        fields: &[BoredD],
        needed: &[BoredD],
        calculation: Calculation::HoneStock,
        uses: &[
            NominalOd, SleeveOd, FitLow, FitHigh, HoneLeave, Spindle, HoneRate,
        ],
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::CounterboreD,
        name: "counterbore-diameter",
        number: 13,
        fields: &[CounterboreD],
        needed: &[CounterboreD],
        calculation: Calculation::CounterboreClearance,
        uses: &[SleeveKind, FlangeOdHere, FlangeOd, ClearLow, ClearHigh],
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Counterbore,
        name: "counterbore",
        number: 14,
        fields: &[CounterboreDepth, DeckHere, ShimHere, LedgeInner, InkCheck],
        needed: &[CounterboreDepth],
        calculation: Calculation::Counterbore,
        uses: &[
            LedgeFall,
            SleeveKind,
            SleeveEnds,
            ProudLow,
            ProudHigh,
            FlangeThickness,
            TargetProud,
            FeedSd,
            GaugeDepth,
            DeckSd,
            PlannedCut,
            CleanUp,
            Risk,
        ],
        drawing: Drawing::FlangeSection,
        cautions: CUTTING,
        ..PLAIN
    },
    // In the place of the counterbore; the two never stand together.
    StepSpec {
        id: StepId::StepDepth,
        name: "step-depth",
        number: 14,
        fields: &[StepDepth, DeckHere, ShimHere],
        needed: &[StepDepth],
        calculation: Calculation::StepDepth,
        uses: &[
            SleeveKind,
            SleeveEnds,
            ProudLow,
            ProudHigh,
            PlainLength,
            TargetProud,
            FeedSd,
            GaugeStep,
            DeckSd,
            PlannedCut,
            CleanUp,
            Risk,
        ],
        drawing: Drawing::FlangeSection,
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Chamfer,
        name: "chamfer",
        number: 15,
        fields: &[ChamferHere],
        needed: &[ChamferHere],
        calculation: Calculation::Chamfer,
        uses: &[SleeveKind, Fillet, FilletSpare],
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Fit,
        name: "fit",
        number: 16,
        fields: &[BoreD, SleeveTemperature, BlockTemperature, HoneStrokes],
        needed: &[BoreD, SleeveTemperature, BlockTemperature],
        calculation: Calculation::Fit,
        uses: &[
            SleeveOd,
            FitLow,
            FitHigh,
            BoreForm,
            GaugeSleeve,
            GaugeBore,
            SleeveLength,
        ],
        drawing: Drawing::FitBand,
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Clean,
        name: "clean",
        number: 17,
        ..PLAIN
    },
    StepSpec {
        id: StepId::DryRun,
        name: "dry-run",
        number: 18,
        subject: Subject::Block,
        fields: &[RoomVolume, RoomLitres, AirChanges, Release],
        needed: &[RoomVolume, RoomLitres],
        calculation: Calculation::Oxygen,
        uses: &[RoomTemperature],
        drawing: Drawing::Oxygen,
        cautions: NITROGEN,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Chill,
        name: "chill",
        number: 19,
        fields: &[ChillTime, ColdOd],
        needed: &[ChillTime],
        calculation: Calculation::Chill,
        uses: &[SleeveId, NominalOd, SleeveLength, RoomTemperature],
        timed: Some(ChillTime),
        drawing: Drawing::ChillClock,
        cautions: CHILLING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Drop,
        name: "drop",
        number: 20,
        fields: &[Carry, DropOutcome],
        needed: &[Carry],
        calculation: Calculation::ColdDrop,
        uses: &[
            SleeveOd,
            BoreD,
            SleeveTemperature,
            BlockTemperature,
            SleeveId,
            SleeveLength,
            BlockWall,
            RoomTemperature,
            EntryLeast,
            HomeNeeded,
            GaugeSleeve,
            GaugeBore,
            NominalOd,
            ChillShrink,
            ColdOd,
        ],
        timed: Some(Carry),
        drawing: Drawing::ClearanceTime,
        cautions: COLD,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Hold,
        name: "hold-down",
        number: 21,
        fields: &[HoldTime, SleeveWarm],
        needed: &[SleeveWarm],
        calculation: Calculation::Warmed,
        uses: &[RoomTemperature, ApartMost],
        timed: Some(HoldTime),
        cautions: &[Caution::ColdIron],
        ..PLAIN
    },
    StepSpec {
        id: StepId::WarmHeight,
        name: "height",
        number: 22,
        fields: &[WarmHeight],
        needed: &[WarmHeight],
        calculation: Calculation::Height,
        uses: WARM,
        drawing: Drawing::FlangeSection,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Pull,
        name: "pull",
        number: 23,
        fields: &[PullGauge, PullLoaded, PullReleased],
        needed: &[PullGauge, PullReleased],
        calculation: Calculation::Pulls,
        uses: PULLING,
        drawing: Drawing::Staircase,
        cautions: &[Caution::Ram],
        ..PLAIN
    },
    StepSpec {
        id: StepId::Seat,
        name: "seat",
        number: 24,
        fields: &[SeatHeight],
        needed: &[SeatHeight],
        calculation: Calculation::Seat,
        uses: SEATED,
        drawing: Drawing::FlangeSection,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Deck,
        name: "deck",
        number: 25,
        subject: Subject::Bank,
        fields: &[LowSpot, DeckCut, DeckFinish, FromDeckAfter, RecutSaid],
        needed: &[LowSpot],
        calculation: Calculation::Deck,
        uses: DECKED,
        drawing: Drawing::DeckCuts,
        cautions: CUTTING,
        ..PLAIN
    },
    // In the place of the deck; the two never stand together.
    StepSpec {
        id: StepId::Heights,
        name: "heights",
        number: 25,
        subject: Subject::Bank,
        fields: &[HeldDown],
        calculation: Calculation::Heights,
        uses: LEFT_PROUD,
        drawing: Drawing::Heights,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Protrusion,
        name: "protrusion",
        number: 26,
        fields: &[PistonProud],
        needed: &[PistonProud],
        calculation: Calculation::Protrusion,
        uses: &[
            Gasket,
            HeadLeast,
            Compression,
            Stroke,
            FinalBore,
            DeckCut,
            GasketGrades,
            PlannedCut,
            SleeveEnds,
        ],
        ..PLAIN
    },
    StepSpec {
        id: StepId::Groove,
        name: "groove",
        number: 27,
        fields: &[GrooveDepth],
        needed: &[GrooveDepth],
        calculation: Calculation::Groove,
        uses: &[
            RingHeight,
            RingProud,
            GrooveNear,
            FlangeThickness,
            DeckCut,
            PlannedCut,
            SleeveEnds,
        ],
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Finish,
        name: "finish",
        number: 28,
        fields: &[FinishD],
        needed: &[FinishD],
        calculation: Calculation::Finish,
        uses: FINISHING,
        drawing: Drawing::Profile,
        cautions: CUTTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::RingGap,
        name: "ring-gap",
        number: 29,
        fields: &[RingGapNow],
        needed: &[RingGapNow],
        calculation: Calculation::RingGap,
        uses: &[RingGapLow, RingGapHigh],
        ..PLAIN
    },
    StepSpec {
        id: StepId::WashAgain,
        name: "wash-again",
        number: 30,
        subject: Subject::Block,
        fields: &[RetestStart, RetestEnd],
        needed: &[RetestStart, RetestEnd],
        calculation: Calculation::PressureDrop,
        uses: &[TestLoss],
        cautions: TESTING,
        ..PLAIN
    },
    StepSpec {
        id: StepId::Report,
        name: "report",
        number: 31,
        subject: Subject::Block,
        ..PLAIN
    },
];
