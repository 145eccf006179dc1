//! Go or no-go before sleeves are ordered: does this sleeve go into this block?
//!
//! Wall, web, room below, ledge, stock for the last hone, and what a fire-ring
//! groove leaves of the flange: each against its own limit. Geometry
//! throughout; the limits are from memory, no source, and the shop's to change.

use super::ask::{Hindrance, View};
use super::ask_before::grade;
use super::report::{Answer, Signal};
use super::{Field, Job, Owner};
use crate::planning::web::{Web, WebInput, web};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length};

/// What is checked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OrderItem {
    /// Wall left: the thinnest measured, before that the one of the engine.
    Wall,
    /// Web between two counterbores; negative where they overlap.
    Web,
    /// Room between the sleeve's end and the lower step.
    Bottom,
    /// Width of the ledge under the flange.
    Ledge,
    /// Stock for the torque-plate hone, on diameter.
    FinishStock,
    /// Land between finished bore and groove.
    GrooveInside,
    /// Land between groove and flange edge.
    GrooveOutside,
    /// Flange under the groove, after the planned cut.
    GrooveFloor,
}

/// How one stands.
#[derive(Clone, Debug, PartialEq)]
pub enum Standing {
    /// Worked out: the value, the least wanted, what it means.
    Known(Length, Length, Signal),
    /// A number of the engine is missing.
    Missing(Field),
    /// The numbers do not go together.
    Refused(Fault),
    /// This block has none: bored through, or no fire ring.
    NotHere,
}

/// One line of the check.
#[derive(Clone, Debug, PartialEq)]
pub struct OrderCheck {
    /// What.
    pub item: OrderItem,
    /// How it stands.
    pub standing: Standing,
}

impl OrderCheck {
    /// What it lets the hand do: wait where something is missing.
    #[must_use]
    pub const fn signal(&self) -> Signal {
        match self.standing {
            Standing::Known(_, _, signal) => signal,
            Standing::Missing(_) => Signal::Wait,
            Standing::Refused(_) => Signal::Look,
            Standing::NotHere => Signal::None,
        }
    }
}

/// Stops below its least, else goes.
fn at_least(value_m: f64, least_m: f64) -> Standing {
    let signal = grade(value_m, least_m, least_m);
    Standing::Known(Length::from_m(value_m), Length::from_m(least_m), signal)
}

/// The value of a check whose numbers may be missing.
fn standing(worked: Result<Standing, Hindrance>) -> Standing {
    match worked {
        Ok(standing) => standing,
        Err(Hindrance::Engine(field) | Hindrance::Missing(field)) => Standing::Missing(field),
        Err(Hindrance::Fault(fault)) => Standing::Refused(fault),
    }
}

impl View<'_> {
    /// The web between two counterbores of the middle of their clearance.
    pub(super) fn order_web(&self) -> Result<Web, Hindrance> {
        let room_m = 0.5 * (self.engine(Field::ClearLow)? + self.engine(Field::ClearHigh)?);
        let zero = Length::from_m(0.0);
        Ok(web(&WebInput {
            pitch: self.length(Field::Pitch)?,
            d: Diameter::from_m(self.engine(Field::FlangeOd)? + room_m),
            offset_a: zero,
            offset_b: zero,
        })?)
    }

    fn order_wall(&self) -> Result<Standing, Hindrance> {
        let measured = self.job.cylinders().filter_map(|cylinder| {
            let view = View {
                job: self.job,
                owner: Owner::Cylinder(cylinder),
            };
            match view.walls().ok()?.answer {
                Answer::Walls(walls) => walls.iter().map(|(_, w)| w.as_m()).reduce(f64::min),
                _ => None,
            }
        });
        let wall_m = match measured.reduce(f64::min) {
            Some(wall_m) => wall_m,
            None => self.engine(Field::BlockWall)?,
        };
        let (calm_m, least_m) = (self.engine(Field::WallCalm)?, self.engine(Field::WallLook)?);
        Ok(Standing::Known(
            Length::from_m(wall_m),
            Length::from_m(calm_m),
            grade(wall_m, calm_m, least_m),
        ))
    }

    fn order_between(&self) -> Result<Standing, Hindrance> {
        let web = self.order_web()?;
        let (calm_m, least_m) = (self.engine(Field::WebCalm)?, self.engine(Field::WebLook)?);
        let signal = if web.flat.as_m() > 0.0 {
            // Overlapping flanges get flats: said by the finding.
            Signal::Look
        } else {
            grade(web.left.as_m(), calm_m, least_m)
        };
        Ok(Standing::Known(web.left, Length::from_m(calm_m), signal))
    }

    fn order_bottom(&self) -> Result<Standing, Hindrance> {
        let Some(step_m) = self.job.engine_si(Field::StepBelow) else {
            return Ok(Standing::NotHere);
        };
        let depth_m = self.engine(Field::NominalFlange)? - self.engine(Field::TargetProud)?;
        let room_m = step_m - depth_m - self.engine(Field::SleeveLength)?;
        Ok(at_least(room_m, self.engine(Field::BottomLeast)?))
    }

    fn order_ledge(&self) -> Result<Standing, Hindrance> {
        let land_m = 0.5 * (self.engine(Field::FlangeOd)? - self.engine(Field::NominalOd)?);
        Ok(at_least(land_m, self.engine(Field::LedgeLeast)?))
    }

    fn order_stock(&self) -> Result<Standing, Hindrance> {
        // The fit closes the inside by nearly its own amount.
        let close_m = 0.5 * (self.engine(Field::FitLow)? + self.engine(Field::FitHigh)?);
        let inside_m = self.engine(Field::SleeveId)? - close_m;
        let stock_m = self.engine(Field::FinalBore)? - inside_m;
        Ok(at_least(stock_m, self.engine(Field::FinishLeast)?))
    }

    /// A land of the groove, `None` of it without a fire ring.
    fn order_groove(&self, item: OrderItem) -> Result<Standing, Hindrance> {
        if self.job.engine_si(Field::RingHeight).is_none() {
            return Ok(Standing::NotHere);
        }
        let land_m = match item {
            OrderItem::GrooveInside => {
                0.5 * (self.engine(Field::GrooveInner)? - self.engine(Field::FinalBore)?)
            }
            OrderItem::GrooveOutside => {
                0.5 * (self.engine(Field::FlangeOd)? - self.engine(Field::GrooveOuter)?)
            }
            _ => {
                let depth_m = self.engine(Field::RingHeight)? - self.engine(Field::RingProud)?;
                let lost_m = self.engine(Field::TargetProud)? + self.engine(Field::PlannedCut)?;
                self.engine(Field::NominalFlange)? - lost_m - depth_m
            }
        };
        Ok(at_least(land_m, self.engine(Field::GrooveLand)?))
    }

    pub(super) fn order_checks(&self) -> Vec<OrderCheck> {
        [
            (OrderItem::Wall, self.order_wall()),
            (OrderItem::Web, self.order_between()),
            (OrderItem::Bottom, self.order_bottom()),
            (OrderItem::Ledge, self.order_ledge()),
            (OrderItem::FinishStock, self.order_stock()),
            (
                OrderItem::GrooveInside,
                self.order_groove(OrderItem::GrooveInside),
            ),
            (
                OrderItem::GrooveOutside,
                self.order_groove(OrderItem::GrooveOutside),
            ),
            (
                OrderItem::GrooveFloor,
                self.order_groove(OrderItem::GrooveFloor),
            ),
        ]
        .into_iter()
        .map(|(item, worked)| OrderCheck {
            item,
            standing: standing(worked),
        })
        .collect()
    }
}

/// The checks of a job's engine, in the order a person goes through them.
#[must_use]
pub fn order_checks(job: &Job) -> Vec<OrderCheck> {
    View {
        job,
        owner: Owner::Block,
    }
    .order_checks()
}

/// Whether the sleeves may be ordered: the worst of all, and wait before go
/// while a number is missing.
#[must_use]
pub fn order_signal(checks: &[OrderCheck]) -> Signal {
    checks
        .iter()
        .map(OrderCheck::signal)
        .max()
        .unwrap_or(Signal::None)
}
