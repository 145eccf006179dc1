//! Everything of Coldseat that can be computed without a browser: the physics,
//! the measuring, the planning, the job and its documents. No clock, no files,
//! no randomness of its own, no panic.
//!
//! # Layers
//! Each may use those to its left and on its own step, never those to its
//! right; a test holds them to it.
//!
//! ```text
//! quantity <- numerics <- materials <- thermal   <- planning <- job <- document <- storage <- ask
//!                                      mechanics                     evaluator
//!                                      metrology
//! ```
//! [`ask`] is the door of the page: what it shows it takes from there.
//!
//! # Find a formula by its trade name
//! | trade | where |
//! |---|---|
//! | chill shrink | [`thermal::contraction`] |
//! | chill, nitrogen | [`thermal::chill`] |
//! | cold drop, grip, climb | [`thermal::cold_drop`], its band [`thermal::drop_band`] |
//! | be home within | [`thermal::drop_odds`] |
//! | dry ice, freezer, oven | [`thermal::soak`] |
//! | heat path of a fine hone | [`thermal::joint`] |
//! | oxygen in the room | [`thermal::oxygen`] |
//! | press fit, close-in, slip force | [`mechanics::rings`] |
//! | block round a bore, neighbours, flange end | [`mechanics::block_ring`] |
//! | fit in service, gas pressure | [`mechanics::service`] |
//! | bore shape before the hone | [`mechanics::bore_profile`] |
//! | ram, rod, ledge, flange | [`mechanics::pull`] |
//! | out-of-round, taper | [`metrology::form`] |
//! | fit at 20 C and its gauges | [`metrology::fit`] |
//! | seat, gap, pulls | [`metrology::seat`] |
//! | all sleeves of a deck judged together | [`metrology::seat_deck`], of a job [`job::steps::together`] |
//! | a step's verdict | [`job::steps`], by its name |
//! | the shop's own scatter | [`metrology::scatter`] |
//! | passes and cutter setting | [`planning::bore`] |
//! | counterbore depth, stand-proud | [`planning::counterbore`] |
//! | chance that any flange stays low | [`planning::counterbore::any_low`], of a job [`job::all_low`] |
//! | deck cut | [`planning::deck`], what it makes of other sizes [`planning::after_deck`] |
//! | heights of sleeves that stay proud | [`planning::heights`] |
//! | fire-ring groove | [`planning::groove`] |
//! | wall, web, flats | [`planning::web`] |
//! | pairing sleeves with bores | [`planning::pairing`] |
//! | compression ratio, protrusion | [`planning::engine`] |
//! | finish stock, cross-hatch, ring gap | [`planning::finish`] |
//! | time, nitrogen, price | [`planning::estimate`] |
//!
//! # Conventions
//! - SI inside, typed at every public boundary ([`quantity`]); a bare `f64` has
//!   its unit in its name.
//! - A diameter is across, a radius half of it. Interference and clearance are
//!   on diameter: positive interference presses, positive clearance is free.
//! - Heights are positive proud of the deck, depths positive down; settling is
//!   positive down; a change of diameter is negative where it closes.
//! - Stress is positive in tension. Angles are in radians; a cross-hatch angle
//!   is the included one, across the bore.
//! - Lengths are at 293.15 K (20 C, ISO 1) unless a name says otherwise.
//! - An answer is numbers plus findings; an input that cannot be used is a
//!   fault that names its field, its value and its range.

pub mod ask;
pub mod document;
#[cfg(feature = "evaluator")]
pub mod evaluator;
pub mod job;
pub mod materials;
pub mod mechanics;
pub mod metrology;
pub mod numerics;
pub mod planning;
pub mod quantity;
pub mod storage;
pub mod thermal;
