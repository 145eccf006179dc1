//! The answer of a step's calculation, for drawing and table.

use crate::job::verdict::figure::More;
use crate::job::verdict::order::OrderCheck;
use crate::metrology::fit::Fit;
use crate::metrology::form::Form;
use crate::metrology::seat::Seat;
use crate::planning::counterbore::Counterbore;
use crate::quantity::Length;
use crate::thermal::chill::Chill;
use crate::thermal::oxygen::Oxygen;

/// The answer of a step's calculation, for the drawing and the table.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// None.
    None,
    /// Further numbers.
    More(Vec<More>),
    /// Go or no-go of an order, with further numbers.
    Order(Vec<OrderCheck>, Vec<More>),
    /// A form with further numbers.
    Form(Form, Vec<More>),
    /// Walls left, by place of their reading.
    Walls(Vec<(u8, Length)>),
    /// The chill.
    Chill(Chill),
    /// Oxygen in the room.
    Oxygen(Oxygen),
    /// Roundness of the sleeve.
    SleeveForm(Form),
    /// Depth.
    Counterbore(Counterbore),
    /// Fit, and the form of the bore.
    Fit(Fit, Form),
    /// Heights against predicted ones.
    Heights(Heights),
    /// Pulls, the seat seen from them alone.
    Pulls(Seat),
    /// The seat.
    Seat(Seat),
}

/// Heights against predicted ones, clock by clock.
#[derive(Clone, Debug, PartialEq)]
pub struct Heights {
    /// Thickness + shim - depth.
    pub predicted: Vec<Length>,
    /// As measured.
    pub height: Vec<Length>,
    /// Mean of height - predicted.
    pub above: Length,
    /// The most that climbing explains.
    pub ceiling: Length,
}
