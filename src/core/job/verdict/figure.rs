//! The one number of a step, and the further ones.

use crate::job::model::field_kind::{Measure, UnitSystem};
use crate::quantity::format::shows_zero;

/// What the one number of a step is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// The deck cut.
    DeckCut,
    /// Price of the job.
    Price,
    /// Block and sleeves apart, in the job's degrees.
    Apart,
    /// Share of the pressure lost, per cent.
    PressureLost,
    /// Deck heights apart.
    DatumLean,
    /// Old bore out of round or tapered.
    Wear,
    /// Thinnest wall after boring.
    WallLeft,
    /// Web between the counterbores.
    WebLeft,
    /// Bar off the old centre.
    Offset,
    /// Left for the hone, on diameter.
    HoneStock,
    /// Room round the flange, on diameter.
    FlangeRoom,
    /// Chamfer over fillet.
    FilletRoom,
    /// Least share of oxygen in the room, per cent.
    OxygenLeft,
    /// Time to quiet, s.
    Quiet,
    /// Sleeve and shop apart, in the job's degrees.
    WarmApart,
    /// Room between piston and head.
    HeadRoom,
    /// Largest protrusion of the piston.
    PistonProud,
    /// Groove deeper than wanted.
    GrooveOff,
    /// Stock left for the torque-plate hone, on diameter.
    FinishStock,
    /// Least ring gap.
    LeastGap,
    /// Out-of-round under the flange.
    OutOfRound,
    /// Depth still to cut.
    StillToCut,
    /// Interference.
    Fit,
    /// Height above the predicted height.
    AbovePredicted,
    /// Height above the one aimed at, of a sleeve that its fit alone holds.
    AboveTarget,
    /// Gap under the flange after the last pull.
    GapAfterPull,
    /// Gap under the flange.
    Gap,
    /// Heights of sleeves left proud apart, all of a deck.
    ProudSpread,
}

/// The one number of a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OneNumber {
    /// What it is.
    pub figure: Figure,
    /// Its value, SI.
    pub si: f64,
    /// What it measures.
    pub measure: Measure,
    /// Its standard uncertainty, SI, where it has one.
    pub u_si: Option<f64>,
}

impl OneNumber {
    /// Its size without the sign, in the sense of the word before it ("too deep
    /// by").
    #[must_use]
    pub const fn size(&self) -> f64 {
        self.si.abs()
    }

    /// The number with the sign that the word before it goes by: none where it is a
    /// length that is shown as zero, which is neither loose nor past.
    #[must_use]
    pub fn sense(&self, units: UnitSystem) -> f64 {
        match self.measure {
            Measure::Length if shows_zero(self.size(), self.measure.unit(units)) => 0.0,
            _ => self.si,
        }
    }

    /// From where to where the size reaches: two standard uncertainties each way.
    #[must_use]
    pub fn band(&self) -> Option<[f64; 2]> {
        let u = self.u_si?;
        Some([self.size() - 2.0 * u, self.size() + 2.0 * u])
    }
}

/// What a further number of a step is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Detail {
    /// Hours of work.
    Hours,
    /// Sleeves to buy.
    Sleeves,
    /// Nitrogen that the sleeves boil off, litres.
    SleevesNitrogen,
    /// Nitrogen that fills the bath, litres.
    BathFill,
    /// Nitrogen that is lost by standing, litres.
    StoodAway,
    /// Nitrogen to buy, litres.
    Nitrogen,
    /// Clock point and level of the thinnest wall, as an index.
    Thinnest,
    /// Wall of the sleeve.
    SleeveWall,
    /// Depth of the flats where flanges overlap.
    FlatDepth,
    /// Micrometer over spindle and cutter for the bore wanted.
    CutterSetting,
    /// Bore wanted off the bar (diameter).
    BoreWanted,
    /// Strokes of the hone for the stock that is left.
    Strokes,
    /// Off toward 12 o'clock.
    OffsetUp,
    /// Off toward 3 o'clock.
    OffsetRight,
    /// Oxygen if all boiled at once.
    Sudden,
    /// Litres that bring a sudden release to the limit.
    LitresAtLimit,
    /// Quiet at the earliest.
    QuietLow,
    /// Quiet at the latest.
    QuietHigh,
    /// Nitrogen boiled off by one sleeve, litres.
    BathLitres,
    /// Largest reading.
    Largest,
    /// Smallest reading.
    Smallest,
    /// Out of round, worst level.
    Round,
    /// Taper.
    Taper,
    /// Groove depth wanted.
    GrooveWanted,
    /// Flange left under the groove.
    FloorLeft,
    /// Gasket that the room is reckoned with, compressed.
    GasketTaken,
    /// Compression ratio after the deck cut.
    Compression,
    /// How much the fit closes the inside.
    CloseIn,
    /// Diameter to bore the fitted sleeve to.
    BoreTo,
    /// Share of the contact pressure left once bored, per cent.
    GripLeft,
    /// Finished bore less piston.
    PistonRoom,
    /// Included angle of the cross-hatch, degrees.
    HatchIncluded,
    /// Each scratch to the horizontal, degrees.
    HatchHorizontal,
}

/// A further number of a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct More {
    /// What it is.
    pub detail: Detail,
    /// Its value, SI; litres and hours as they are.
    pub si: f64,
    /// What it measures.
    pub measure: Measure,
}
