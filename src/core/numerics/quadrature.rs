//! Adaptive quadrature of several integrands at once.
//!
//! Gauss and Kronrod's pair of 7 and 15 nodes (Kronrod 1965; the nodes as
//! printed for QUADPACK, Piessens et al. 1983), the panel that is worst halved
//! first. The nodes are checked by the degree they are exact to.

use super::roots::NoRoot;

/// Kronrod's nodes on 0 to 1; every second one is Gauss's.
const NODES: [f64; 8] = [
    0.991_455_371_120_812_6,
    0.949_107_912_342_758_5,
    0.864_864_423_359_769_1,
    0.741_531_185_599_394_4,
    0.586_087_235_467_691_1,
    0.405_845_151_377_397_2,
    0.207_784_955_007_898_47,
    0.0,
];
const KRONROD: [f64; 8] = [
    0.022_935_322_010_529_224,
    0.063_092_092_629_978_55,
    0.104_790_010_322_250_18,
    0.140_653_259_715_525_92,
    0.169_004_726_639_267_9,
    0.190_350_578_064_785_4,
    0.204_432_940_075_298_9,
    0.209_482_141_084_727_82,
];
const GAUSS: [f64; 4] = [
    0.129_484_966_168_869_7,
    0.279_705_391_489_276_64,
    0.381_830_050_505_118_9,
    0.417_959_183_673_469_4,
];
/// Most panels before the integral counts as one that does not settle.
const MOST_PANELS: usize = 4_000;

struct Panel {
    from: f64,
    to: f64,
    sum: Vec<f64>,
    error: f64,
}

/// Places at which a panel is looked at.
#[must_use]
pub fn places(from: f64, to: f64) -> [f64; 15] {
    let (middle, half) = (0.5 * (from + to), 0.5 * (to - from));
    core::array::from_fn(|i| {
        if i < 8 {
            middle - half * NODES[i]
        } else {
            middle + half * NODES[14 - i]
        }
    })
}

impl Panel {
    fn of(f: &mut dyn FnMut(f64, &mut [f64]), from: f64, to: f64, count: usize) -> Self {
        let half = 0.5 * (to - from);
        let mut value = vec![0.0; count];
        let mut sum = vec![0.0; count];
        let mut coarse = vec![0.0; count];
        for (i, x) in places(from, to).into_iter().enumerate() {
            let node = if i < 8 { i } else { 14 - i };
            f(x, &mut value);
            for ((s, c), v) in sum.iter_mut().zip(&mut coarse).zip(&value) {
                *s += half * KRONROD[node] * v;
                if node % 2 == 1 {
                    *c += half * GAUSS[node / 2] * v;
                }
            }
        }
        let apart = |(s, c): (&f64, &f64)| (s - c).abs();
        let error = sum.iter().zip(&coarse).map(apart).fold(0.0, f64::max);
        Self {
            from,
            to,
            sum,
            error,
        }
    }
}

/// Integrals of `count` functions over the places from the first to the last
/// of `marks` (rising; a panel between each two to begin with). `f` puts their
/// values at a place into the slice. The panels are halved until what the pair
/// of rules differs by, summed, is at most `share` of the first integral, which
/// must be of one sign and the greatest. The difference is the error of the
/// coarser rule; that of the answer is far smaller.
///
/// # Errors
/// [`NoRoot`] where a value is no number or the panels run out.
///
/// # Example
/// The normal density and its second moment:
/// ```
/// use coldseat_core::numerics::quadrature::integrals;
/// let mut f = |x: f64, v: &mut [f64]| {
///     v[0] = (-0.5 * x * x).exp();
///     v[1] = x * x * v[0];
/// };
/// let got = integrals(&mut f, &[-9.0, 0.0, 9.0], 2, 1e-9)?;
/// let want = (2.0 * core::f64::consts::PI).sqrt();
/// assert!((got[0] - want).abs() < 1e-12 && (got[1] - want).abs() < 1e-12);
/// # Ok::<(), coldseat_core::numerics::roots::NoRoot>(())
/// ```
pub fn integrals(
    f: &mut dyn FnMut(f64, &mut [f64]),
    marks: &[f64],
    count: usize,
    share: f64,
) -> Result<Vec<f64>, NoRoot> {
    let mut panels: Vec<Panel> = marks
        .windows(2)
        .map(|w| Panel::of(f, w[0], w[1], count))
        .collect();
    loop {
        let sum = |part: &dyn Fn(&Panel) -> f64| panels.iter().map(part).sum::<f64>();
        let (whole, error) = (
            sum(&|p| p.sum.first().copied().unwrap_or(0.0)),
            sum(&|p| p.error),
        );
        if !error.is_finite() {
            return Err(NoRoot::NotANumber { x: whole });
        }
        if error <= share * whole.abs() {
            break;
        }
        if panels.len() >= MOST_PANELS {
            return Err(NoRoot::StepsRanOut);
        }
        // All that are worse than their part, so that few rounds are needed.
        let part = share * whole.abs() / panels.len() as f64;
        let mut halved = Vec::with_capacity(2 * panels.len());
        for panel in panels {
            if panel.error <= part {
                halved.push(panel);
                continue;
            }
            let middle = 0.5 * (panel.from + panel.to);
            halved.push(Panel::of(f, panel.from, middle, count));
            halved.push(Panel::of(f, middle, panel.to, count));
        }
        panels = halved;
    }
    let mut total = vec![0.0; count];
    for panel in &panels {
        for (t, s) in total.iter_mut().zip(&panel.sum) {
            *t += s;
        }
    }
    Ok(total)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    // Published: 7 Gauss nodes are exact to degree 13, the 15 of the pair to 22.
    #[test]
    fn the_pair_is_exact_to_its_degree() {
        for degree in 0..=22 {
            let mut f = |x: f64, v: &mut [f64]| v[0] = x.powi(degree);
            let panel = Panel::of(&mut f, 0.0, 1.0, 1);
            let want = 1.0 / f64::from(degree + 1);
            assert!((panel.sum[0] - want).abs() < 1e-15, "{degree}");
            assert_eq!(panel.error < 1e-15, degree <= 13, "{degree}");
        }
    }

    #[test]
    fn a_narrow_peak_between_marks_that_see_it_is_found() {
        let mut f = |x: f64, v: &mut [f64]| v[0] = (-0.5 * (x / 1e-4) * (x / 1e-4)).exp();
        let got = integrals(&mut f, &[-1.0, -1e-3, 1e-3, 1.0], 1, 1e-9).unwrap();
        assert!((got[0] / (1e-4 * (2.0 * core::f64::consts::PI).sqrt()) - 1.0).abs() < 1e-11);
    }

    #[test]
    fn what_is_no_number_is_told() {
        let mut f = |_: f64, v: &mut [f64]| v[0] = f64::NAN;
        assert!(integrals(&mut f, &[0.0, 1.0], 1, 1e-9).is_err());
    }
}
