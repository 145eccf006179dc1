//! Go or no-go before sleeves are ordered: does this sleeve go into this block?
//!
//! Wall, web, room below, ledge, stock for the last hone, and what a fire-ring
//! groove leaves of the flange: each against its own limit. Geometry
//! throughout; the limits are from memory, no source, and the shop's to change.

use super::ask::{Hindrance, View};
use super::ask_before::grade;
use super::engine::preset_si;
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

impl OrderItem {
    /// What it is worked out from, its limits last.
    #[must_use]
    pub const fn uses(self) -> &'static [Field] {
        use Field::*;
        match self {
            Self::Wall => &[BlockWall, WallCalm, WallLook],
            Self::Web => &[Pitch, FlangeOd, ClearLow, ClearHigh, WebCalm, WebLook],
            Self::Bottom => &[
                StepBelow,
                NominalFlange,
                TargetProud,
                SleeveLength,
                BottomLeast,
            ],
            Self::Ledge => &[FlangeOd, NominalOd, LedgeLeast],
            Self::FinishStock => &[FinalBore, SleeveId, FitLow, FitHigh, FinishLeast],
            Self::GrooveInside => &[GrooveInner, FinalBore, GrooveLand],
            Self::GrooveOutside => &[FlangeOd, GrooveOuter, GrooveLand],
            Self::GrooveFloor => &[
                NominalFlange,
                TargetProud,
                PlannedCut,
                RingHeight,
                RingProud,
                GrooveLand,
            ],
        }
    }
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
    /// What it is worked out from, where it is known: value in SI, and whether
    /// it stands as a new engine has it.
    pub inputs: Vec<(Field, f64, bool)>,
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

    fn input(&self, field: Field) -> Option<(Field, f64, bool)> {
        let si = self.job.engine_si(field)?;
        let usual = preset_si(field, self.job.engine.units) == Some(si);
        Some((field, si, usual))
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
            inputs: item.uses().iter().filter_map(|f| self.input(*f)).collect(),
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

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;
    use crate::job::demo::Demo;
    use crate::job::field::{FIELDS, Scope};
    use crate::job::{Entry, Place};

    /// Every number of the engine, moved: a check that answers to it names it
    /// among its inputs, and one that is named is answered to.
    #[test]
    fn a_check_names_all_it_is_worked_out_from_and_nothing_else() {
        let demo = Demo::InchFive.job(1);
        let mut sheet = Job::engine_sheet(demo.engine.clone(), &demo.entries);
        let mut put = |field: Field, text: &str| {
            let entry = Entry::new(text, sheet.unit(field), 1);
            sheet.entries.put(Place::of_engine(field), entry);
        };
        for (field, text) in [
            (Field::GrooveInner, "4.4000"),
            (Field::GrooveOuter, "4.5000"),
            (Field::StepBelow, "10.5000"),
        ] {
            put(field, text);
        }
        let before = order_checks(&sheet);
        assert!(
            before
                .iter()
                .all(|c| matches!(c.standing, Standing::Known(..))),
            "{before:?}"
        );
        let mut seen = 0;
        for spec in FIELDS.iter().filter(|f| f.scope == Scope::Engine) {
            let Some(si) = sheet.engine_si(spec.field) else {
                continue;
            };
            let mut moved = sheet.clone();
            // Enough to turn a signal too.
            for factor in [0.2, 0.97, 1.03, 5.0] {
                let unit = moved.unit(spec.field);
                let text = format!("{:.9}", unit.from_si(si * factor));
                moved
                    .entries
                    .put(Place::of_engine(spec.field), Entry::new(text, unit, 2));
                for (check, after) in before.iter().zip(order_checks(&moved)) {
                    let named = check.item.uses().contains(&spec.field);
                    let answers = check.standing != after.standing;
                    assert!(named || !answers, "{:?} hides {}", check.item, spec.id);
                    seen += usize::from(named && answers);
                }
            }
        }
        let named: usize = before.iter().map(|c| c.item.uses().len()).sum();
        assert!(seen >= named, "{seen} answers to {named} names");
    }
}
