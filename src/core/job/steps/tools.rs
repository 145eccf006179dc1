//! What the steps say their numbers with.

use crate::job::model::field_kind::{Measure, UnitSystem};
use crate::job::verdict::figure::{Detail, Figure, More, OneNumber};
use crate::job::verdict::signal::Signal;

/// A comparison with a limit typed in decimals allows this, m.
pub const TINY_M: f64 = 1e-9;

/// What was asked holds, or asks for a look, or stops.
#[must_use]
pub fn grade(value: f64, calm: f64, stop: f64) -> Signal {
    if value < stop - TINY_M {
        Signal::Stop
    } else if value < calm - TINY_M {
        Signal::Look
    } else {
        Signal::Go
    }
}

/// A further length.
#[must_use]
pub const fn more(detail: Detail, si: f64) -> More {
    More {
        detail,
        si,
        measure: Measure::Length,
    }
}

/// A further plain number.
#[must_use]
pub const fn plain(detail: Detail, si: f64) -> More {
    More {
        detail,
        si,
        measure: Measure::Plain,
    }
}

/// A number that is no length.
#[must_use]
pub const fn figure(figure: Figure, si: f64, measure: Measure) -> OneNumber {
    OneNumber {
        figure,
        si,
        measure,
        u_si: None,
    }
}

/// A length, with its standard uncertainty where it has one.
#[must_use]
pub const fn length_figure(figure: Figure, si: f64, u_si: Option<f64>) -> OneNumber {
    OneNumber {
        figure,
        si,
        measure: Measure::Length,
        u_si,
    }
}

/// A difference of temperatures in a job's degrees.
#[must_use]
pub fn degrees(units: UnitSystem, difference_k: f64) -> f64 {
    match units {
        UnitSystem::Inch => 1.8 * difference_k,
        UnitSystem::Metric => difference_k,
    }
}
