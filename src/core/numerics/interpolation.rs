//! Monotone interpolation of tables.
//!
//! Cubic Hermite pieces with the slopes of Fritsch and Butland (SIAM J. Sci.
//! Stat. Comput. 5 (1984) 300), the same rule as scipy's `PchipInterpolator`:
//! between two nodes the curve never leaves their values.

/// A table `(x, y)` with `x` strictly rising, prepared for interpolation.
#[derive(Clone, Debug)]
pub struct Monotone {
    x: Vec<f64>,
    y: Vec<f64>,
    slope: Vec<f64>,
}

impl Monotone {
    /// Prepares the nodes; they must rise strictly in `x`. Fewer than two
    /// nodes give a constant (or zero) function.
    #[must_use]
    pub fn new(nodes: &[(f64, f64)]) -> Self {
        let x: Vec<f64> = nodes.iter().map(|n| n.0).collect();
        let y: Vec<f64> = nodes.iter().map(|n| n.1).collect();
        let slope = slopes(&x, &y);
        Self { x, y, slope }
    }

    /// The value at `x`; outside the nodes the end value is held.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        let (Some(&first), Some(&last)) = (self.x.first(), self.x.last()) else {
            return 0.0;
        };
        if x <= first {
            return self.y[0];
        }
        if x >= last {
            return self.y[self.y.len() - 1];
        }
        let i = self.x.partition_point(|&node| node <= x) - 1;
        let h = self.x[i + 1] - self.x[i];
        let t = (x - self.x[i]) / h;
        let (t2, t3) = (t * t, t * t * t);
        self.y[i] * (2.0 * t3 - 3.0 * t2 + 1.0)
            + h * self.slope[i] * (t3 - 2.0 * t2 + t)
            + self.y[i + 1] * (3.0 * t2 - 2.0 * t3)
            + h * self.slope[i + 1] * (t3 - t2)
    }

    /// The slope at the first node, for continuing below it.
    #[must_use]
    pub fn first_slope(&self) -> f64 {
        self.slope.first().copied().unwrap_or(0.0)
    }

    /// The first node.
    #[must_use]
    pub fn first(&self) -> (f64, f64) {
        match (self.x.first(), self.y.first()) {
            (Some(&x), Some(&y)) => (x, y),
            _ => (0.0, 0.0),
        }
    }
}

fn slopes(x: &[f64], y: &[f64]) -> Vec<f64> {
    let n = x.len();
    if n < 2 {
        return vec![0.0; n];
    }
    let h: Vec<f64> = x.windows(2).map(|w| w[1] - w[0]).collect();
    let d: Vec<f64> = y
        .windows(2)
        .zip(&h)
        .map(|(w, h)| (w[1] - w[0]) / h)
        .collect();
    if n == 2 {
        return vec![d[0]; 2];
    }
    let mut slope = vec![0.0; n];
    for i in 1..n - 1 {
        if d[i - 1] * d[i] > 0.0 {
            let (w1, w2) = (2.0 * h[i] + h[i - 1], h[i] + 2.0 * h[i - 1]);
            slope[i] = (w1 + w2) / (w1 / d[i - 1] + w2 / d[i]);
        }
    }
    slope[0] = end_slope(h[0], h[1], d[0], d[1]);
    slope[n - 1] = end_slope(h[n - 2], h[n - 3], d[n - 2], d[n - 3]);
    slope
}

/// Three-point end slope, kept from overshooting.
fn end_slope(h0: f64, h1: f64, d0: f64, d1: f64) -> f64 {
    let s = ((2.0 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    if s * d0 <= 0.0 {
        0.0
    } else if d0 * d1 < 0.0 && s.abs() > 3.0 * d0.abs() {
        3.0 * d0
    } else {
        s
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // scipy 1.17 PchipInterpolator([0, 1, 3, 4], [0, 1, 1.5, 4])(2) = 1.2 by
    // hand from the rule: slopes at 1 and 3 are weighted harmonic means.
    #[test]
    fn follows_the_published_rule() {
        let f = Monotone::new(&[(0.0, 0.0), (1.0, 1.0), (3.0, 1.5), (4.0, 4.0)]);
        // h = 1, 2, 1; d = 1, 0.25, 2.5.
        let s1 = 9.0 / (5.0 / 1.0 + 4.0 / 0.25);
        let s2 = 9.0 / (4.0 / 0.25 + 5.0 / 2.5);
        let want = 0.5 * (1.0 + 1.5) + 2.0 * (s1 - s2) / 8.0;
        assert!((f.at(2.0) - want).abs() < 1e-15);
    }

    #[test]
    fn goes_through_its_nodes_and_never_beyond_them() {
        let nodes = [
            (77.0, 34.0),
            (100.0, 38.0),
            (150.0, 43.0),
            (293.0, 48.0),
            (400.0, 46.5),
        ];
        let f = Monotone::new(&nodes);
        for (x, y) in nodes {
            assert!((f.at(x) - y).abs() < 1e-12);
        }
        for pair in nodes.windows(2) {
            let (lo, hi) = (pair[0].1.min(pair[1].1), pair[0].1.max(pair[1].1));
            for i in 0..=20 {
                let x = pair[0].0 + (pair[1].0 - pair[0].0) * f64::from(i) / 20.0;
                assert!((lo - 1e-12..=hi + 1e-12).contains(&f.at(x)));
            }
        }
        assert_eq!(f.at(0.0), 34.0);
        assert_eq!(f.at(1e9), 46.5);
    }
}
