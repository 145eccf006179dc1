//! Time, nitrogen and price of a job, from the shop's own rates.

use crate::quantity::Seconds;
use crate::quantity::bounds::{self, Bound, End};
use crate::quantity::report::Fault;

/// Rates of a shop and the size of a job. Money is in the shop's own currency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EstimateInput {
    /// Holes to be sleeved.
    pub holes: usize,
    /// Time once for the job: set-up, cleaning, deck, report.
    pub per_job: Seconds,
    /// Time for each hole.
    pub per_hole: Seconds,
    /// Price of an hour.
    pub hour_price: f64,
    /// Sleeves bought beyond one a hole.
    pub spare_sleeves: usize,
    /// Price of a sleeve.
    pub sleeve_price: f64,
    /// Nitrogen boiled off by one sleeve, litres ([`crate::thermal::chill`]).
    pub nitrogen_per_sleeve_l: f64,
    /// Nitrogen that fills the bath, litres.
    pub bath_fill_l: f64,
    /// Standing loss of dewar and bath, litres an hour.
    pub loss_l_per_h: f64,
    /// How long the nitrogen stands.
    pub standing: Seconds,
    /// Spare on all nitrogen, as a share.
    pub nitrogen_spare: f64,
    /// Price of a litre.
    pub litre_price: f64,
    /// Everything else.
    pub other_price: f64,
}

/// What a job takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate {
    /// Working time.
    pub work: Seconds,
    /// Nitrogen to buy, litres.
    pub nitrogen_l: f64,
    /// Sleeves to buy.
    pub sleeves: usize,
    /// Price of all of it.
    pub price: f64,
}

const HOLES: Bound = range(1.0, 64.0, "holes");
const SPARES: Bound = range(0.0, 64.0, "sleeves");
const WORK: Bound = range(0.0, 1e7, "s");
const PRICE: Bound = range(0.0, 1e9, "");
const SPARE: Bound = range(0.0, 10.0, "");

const fn range(lo: f64, hi: f64, unit: &'static str) -> Bound {
    Bound {
        lo,
        hi,
        lo_end: End::In,
        hi_end: End::In,
        unit,
    }
}

/// The estimate of a job.
///
/// # Errors
/// Values outside their ranges.
///
/// # Example
/// Worked by hand: 5 holes, 3 h once and 2 h a hole; a litre a sleeve, 12 l to
/// fill, 0.5 l/h over 4 h, a quarter to spare.
/// ```
/// use coldseat_core::planning::estimate::{EstimateInput, estimate};
/// use coldseat_core::quantity::Seconds;
/// let e = estimate(&EstimateInput {
///     holes: 5,
///     per_job: Seconds::from_s(3.0 * 3600.0),
///     per_hole: Seconds::from_s(2.0 * 3600.0),
///     hour_price: 100.0,
///     spare_sleeves: 1,
///     sleeve_price: 150.0,
///     nitrogen_per_sleeve_l: 1.0,
///     bath_fill_l: 12.0,
///     loss_l_per_h: 0.5,
///     standing: Seconds::from_s(4.0 * 3600.0),
///     nitrogen_spare: 0.25,
///     litre_price: 2.0,
///     other_price: 80.0,
/// })?;
/// assert_eq!(e.sleeves, 6);
/// assert!((e.nitrogen_l - 1.25 * (5.0 + 12.0 + 2.0)).abs() < 1e-9);
/// assert!((e.price - (1300.0 + 900.0 + 47.5 + 80.0)).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn estimate(input: &EstimateInput) -> Result<Estimate, Fault> {
    HOLES.check("holes", input.holes as f64)?;
    SPARES.check("spare_sleeves", input.spare_sleeves as f64)?;
    let once = WORK.check("per_job_s", input.per_job.as_s())?;
    let each = WORK.check("per_hole_s", input.per_hole.as_s())?;
    let hour = PRICE.check("hour_price", input.hour_price)?;
    let sleeve_price = PRICE.check("sleeve_price", input.sleeve_price)?;
    let per_sleeve = bounds::LITRES.check("nitrogen_per_sleeve_l", input.nitrogen_per_sleeve_l)?;
    let fill = bounds::LITRES.check("bath_fill_l", input.bath_fill_l)?;
    let loss = bounds::LITRES.check("loss_l_per_h", input.loss_l_per_h)?;
    let standing = WORK.check("standing_s", input.standing.as_s())?;
    let spare = SPARE.check("nitrogen_spare", input.nitrogen_spare)?;
    let litre_price = PRICE.check("litre_price", input.litre_price)?;
    let other = PRICE.check("other_price", input.other_price)?;
    let holes = input.holes as f64;
    let work = once + each * holes;
    let nitrogen = (1.0 + spare) * (holes * per_sleeve + fill + loss * standing / 3600.0);
    let sleeves = input.holes + input.spare_sleeves;
    let price =
        work / 3600.0 * hour + sleeves as f64 * sleeve_price + nitrogen * litre_price + other;
    Ok(Estimate {
        work: Seconds::from_s(work),
        nitrogen_l: nitrogen,
        sleeves,
        price,
    })
}
