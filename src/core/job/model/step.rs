//! The steps of the job as data: in shop order, what is measured, what is
//! worked out, which drawing shows it, which caution goes with it. A new step
//! is one entry in `shop_order` and its texts; page and report have one renderer.

use crate::job::model::field::Field;
use crate::job::model::place::Millis;

/// A step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum StepId {
    /// Take the job or refuse it.
    Enquiry,
    /// Take the block in.
    Intake,
    /// Strip, wash, let it come to the temperature of the shop.
    Rest,
    /// Crack and pressure test.
    Pressure,
    /// Deck height at both ends.
    Datum,
    /// Measure the old bores.
    OldBore,
    /// Wall by ultrasonic gauge.
    Wall,
    /// Choose the sleeve.
    Choose,
    /// Receive the sleeve: outside diameter and flange.
    Sleeve,
    /// Main caps on and torqued.
    Caps,
    /// Centre the bar.
    Centre,
    /// Bore.
    Bore,
    /// Counterbore diameter.
    CounterboreD,
    /// Cut the counterbore to depth.
    Counterbore,
    /// Cut the step of a plain sleeve to depth.
    StepDepth,
    /// Chamfer the ledge.
    Chamfer,
    /// Hone the bore and measure the fit.
    Fit,
    /// Clean, ledge blued.
    Clean,
    /// Dry run, and the oxygen of the room.
    DryRun,
    /// Chill.
    Chill,
    /// Drop.
    Drop,
    /// Hold down while warming.
    Hold,
    /// Measure the height, warm.
    WarmHeight,
    /// Pull the sleeve home.
    Pull,
    /// Check that it is home.
    Seat,
    /// Cut the deck.
    Deck,
    /// Heights of sleeves that are left proud.
    Heights,
    /// Piston protrusion.
    Protrusion,
    /// Fire-ring groove.
    Groove,
    /// Finish the bore, torque-plate hone.
    Finish,
    /// Ring gaps.
    RingGap,
    /// Wash and test again.
    WashAgain,
    /// Report.
    Report,
}

/// A phase of the shop: steps that follow each other and belong together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phase {
    /// From the first call to a block that may be measured.
    TakeIn,
    /// Old bores, walls, the sleeve.
    Measure,
    /// The bar.
    Bore,
    /// Counterbore, chamfer, hone.
    Counterbore,
    /// Clean, chill, drop, hold down.
    Drop,
    /// Height, pull, seat.
    Seat,
    /// Deck, pistons, groove.
    Deck,
    /// Finish, rings, wash, report.
    Finish,
}

impl Phase {
    /// All, in shop order.
    pub const ALL: [Self; 8] = [
        Self::TakeIn,
        Self::Measure,
        Self::Bore,
        Self::Counterbore,
        Self::Drop,
        Self::Seat,
        Self::Deck,
        Self::Finish,
    ];
}

impl StepId {
    /// The phase it belongs to.
    #[must_use]
    pub const fn phase(self) -> Phase {
        match self {
            Self::Enquiry | Self::Intake | Self::Rest | Self::Pressure | Self::Datum => {
                Phase::TakeIn
            }
            Self::OldBore | Self::Wall | Self::Choose | Self::Sleeve => Phase::Measure,
            Self::Caps | Self::Centre | Self::Bore => Phase::Bore,
            Self::CounterboreD
            | Self::Counterbore
            | Self::StepDepth
            | Self::Chamfer
            | Self::Fit => Phase::Counterbore,
            Self::Clean | Self::DryRun | Self::Chill | Self::Drop | Self::Hold => Phase::Drop,
            Self::WarmHeight | Self::Pull | Self::Seat => Phase::Seat,
            Self::Deck | Self::Heights | Self::Protrusion | Self::Groove => Phase::Deck,
            Self::Finish | Self::RingGap | Self::WashAgain | Self::Report => Phase::Finish,
        }
    }
}

/// What a step is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Subject {
    /// The block as a whole.
    Block,
    /// Each cylinder for itself.
    Cylinder,
    /// A deck: all cylinders of a bank together.
    Bank,
}

/// What a step works out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Calculation {
    /// Nothing: it is done or it is not.
    None,
    /// Time, nitrogen and price of the job.
    Estimate,
    /// How far block and sleeves are apart in temperature.
    Apart,
    /// What the pressure lost.
    PressureDrop,
    /// How much the deck leans, end to end.
    DatumTilt,
    /// How far the old bore is from round and straight.
    Wear,
    /// The thinnest wall after boring.
    WallLeft,
    /// Whether the sleeve fits this block.
    Choose,
    /// How far the bar is off the old centre.
    Offset,
    /// What the bar left for the hone.
    HoneStock,
    /// Room round the flange.
    CounterboreClearance,
    /// Room between ledge chamfer and fillet.
    Chamfer,
    /// Oxygen in this room.
    Oxygen,
    /// Time to quiet.
    Chill,
    /// How far the sleeve is from the shop's temperature.
    Warmed,
    /// Room between piston and head.
    Protrusion,
    /// Depth of the groove against the ring.
    Groove,
    /// Stock for the torque-plate hone, then the form.
    Finish,
    /// Ring gaps against the sheet.
    RingGap,
    /// Roundness of the sleeve.
    SleeveForm,
    /// Depth still to cut.
    Counterbore,
    /// Depth of a plain sleeve's step still to cut.
    StepDepth,
    /// Interference against its band.
    Fit,
    /// The cold drop.
    ColdDrop,
    /// Height against the predicted one.
    Height,
    /// Settling, pull by pull.
    Pulls,
    /// Whether the flange is on its ledge.
    Seat,
    /// The deck cut.
    Deck,
    /// Heights of sleeves that are left proud, against their limits.
    Heights,
}

/// Which drawing shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drawing {
    /// None.
    None,
    /// Out-of-round, level by level, and the bore down its length.
    Round,
    /// The wall round the clock.
    WallClock,
    /// The block from above: webs, walls, neighbours.
    Plan,
    /// Countdown to quiet.
    ChillClock,
    /// Loads on rod, ledge and flange.
    LoadBars,
    /// Oxygen in the room.
    Oxygen,
    /// The bore down its length, with the fit's own profile.
    Profile,
    /// Low spots of the deck.
    DeckMap,
    /// The fit inside its band.
    FitBand,
    /// Clearance against time.
    ClearanceTime,
    /// The flange on its ledge.
    FlangeSection,
    /// The pull staircase.
    Staircase,
    /// What each flange loses.
    DeckCuts,
    /// Heights of sleeves that are left proud.
    Heights,
}

/// Which caution goes with it (job.md, section 6).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Caution {
    /// Lifting and the hot wash.
    Lifting,
    /// Pressure test.
    PressureTest,
    /// Cutting.
    Cutting,
    /// Liquid nitrogen.
    Nitrogen,
    /// Iron that is cold.
    ColdIron,
    /// Measuring it so.
    ColdReading,
    /// Ram and rod.
    Ram,
    /// Dry ice, and alcohol round it.
    DryIce,
    /// Parts and housings out of an oven, off a plate.
    Hot,
}

/// A step, as data.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StepSpec {
    /// Which.
    pub id: StepId,
    /// Its name in documents and addresses.
    pub name: &'static str,
    /// Its number in shop order, of 31.
    pub number: u8,
    /// What it is about.
    pub subject: Subject,
    /// What is measured, in order.
    pub fields: &'static [Field],
    /// Of these, the ones without which the step has no answer.
    pub needed: &'static [Field],
    /// What is worked out.
    pub calculation: Calculation,
    /// Numbers of the engine and of earlier steps that its answer uses.
    pub uses: &'static [Field],
    /// What is timed here, kept in this field.
    pub timed: Option<Field>,
    /// The drawing.
    pub drawing: Drawing,
    /// The cautions.
    pub cautions: &'static [Caution],
}

/// A mark set by hand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Mark {
    /// Done.
    Done,
    /// Skipped, and why.
    Skipped(String),
    /// This job does not have it; set for the whole job.
    NotForThisJob,
}

/// What is kept of a step beside its readings.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StepRecord {
    /// A mark set by hand.
    pub mark: Option<Mark>,
    /// Free words.
    pub note: String,
    /// When a timer was started that still runs.
    pub started: Option<Millis>,
    /// When it was last changed.
    pub at: Millis,
    /// What a later version wrote and this one does not know.
    pub unknown: serde_json::Map<String, serde_json::Value>,
}

impl StepRecord {
    /// Whether there is nothing worth keeping.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.mark.is_none()
            && self.note.is_empty()
            && self.started.is_none()
            && self.unknown.is_empty()
    }
}

impl Mark {
    /// Its name in documents: for ever.
    #[must_use]
    pub const fn id(&self) -> &'static str {
        match self {
            Self::Done => "done",
            Self::Skipped(_) => "skipped",
            Self::NotForThisJob => "not_for_this_job",
        }
    }
}
