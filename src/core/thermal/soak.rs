//! Soaking: how long a part takes in something that does not boil, dry ice, a
//! freezer or an oven.
//!
//! One radial dimension, finite volumes with k(T) and cp(T), the medium at one
//! temperature with one coefficient on the outside and, in a ring, on the bore;
//! the ends are not wetted. Coefficients from memory, wide on purpose: dry ice
//! in alcohol 150 to 500 W/m2/K, dry ice packed round 20 to 60 (194.7 K), a
//! freezer 5 to 12 still and 15 to 30 with a fan (255 K), an oven 8 to 20 still
//! and 25 to 60 with a fan.

use core::f64::consts::PI;

use super::wall::Wall;
use crate::materials::Material;
use crate::numerics::roots;
use crate::numerics::stepper::{Coupling, Jacobian, State, Stepper, StiffSystem, next_size};
use crate::quantity::bounds;
use crate::quantity::report::Fault;
use crate::quantity::{Conductance, Diameter, Length, Seconds, Temperature, TemperatureDelta};

/// A part to be soaked; dimensions at 293.15 K.
#[derive(Clone, Debug, PartialEq)]
pub struct SoakInput {
    /// What it is made of.
    pub material: Material,
    /// Inside diameter; `None`: solid.
    pub inner: Option<Diameter>,
    /// Outside diameter.
    pub outer: Diameter,
    /// Length.
    pub length: Length,
    /// Temperature before.
    pub start: Temperature,
    /// Temperature of the medium.
    pub bath: Temperature,
    /// Coefficient of the medium: low, nominal, high.
    pub coefficient: [Conductance; 3],
    /// How near to the medium is near enough.
    pub near: TemperatureDelta,
}

/// A soak.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Soak {
    /// Until the mean temperature is near enough, at the nominal coefficient.
    pub time: Seconds,
    /// At the high coefficient.
    pub time_low: Seconds,
    /// At the low one.
    pub time_high: Seconds,
    /// Nominal coefficient x volume / wetted area / conductivity at the start:
    /// below 0.1 the part is at one temperature throughout.
    pub biot: f64,
    /// Heat given off down to the medium's temperature, J; negative taken up.
    pub heat_j: f64,
}

/// Cells through the wall.
const CELLS: usize = 24;
const CAPACITY: usize = CELLS + 1;
/// Tolerance of a step, as a share of the whole difference.
const TOLERANCE: f64 = 2e-4;
const MOST_STEPS: usize = 20_000;
/// Thinnest inside of a ring beside its outside: what is less is drilled
/// through but solid to the heat.
pub const SOLID: f64 = 1e-6;

struct Body {
    wall: Wall,
    bath_k: f64,
    coefficient: f64,
    bored: bool,
}

impl Body {
    /// Conductance from the medium into a cell through half of it.
    fn into(&self, half: f64, k: f64) -> f64 {
        1.0 / (1.0 / self.coefficient + half / k)
    }
}

impl StiffSystem<CAPACITY> for Body {
    fn coupled(&self) -> usize {
        self.wall.cells()
    }

    fn quadratures(&self) -> usize {
        0
    }

    fn rates(&self, y: &State<CAPACITY>, rates: &mut State<CAPACITY>) {
        let n = self.wall.cells();
        let mut k = [0.0; CAPACITY];
        let mut inertia = [0.0; CAPACITY];
        for (i, (t, own)) in y.iter().zip(&self.wall.inertia).enumerate() {
            let [_, cp, conductivity] = self.wall.table.all(*t);
            k[i] = conductivity;
            inertia[i] = own / cp;
        }
        self.wall.conduct(&y[..n], &k[..n], &mut rates[..n]);
        let outer = self.into(self.wall.half(n - 1), k[n - 1]);
        rates[n - 1] += self.wall.outer() * outer * (self.bath_k - y[n - 1]);
        if self.bored {
            let inner = self.into(self.wall.half(0), k[0]);
            rates[0] += self.wall.inner() * inner * (self.bath_k - y[0]);
        }
        for (r, i) in rates[..n].iter_mut().zip(&inertia) {
            *r *= i;
        }
    }

    fn jacobian(&self, y: &State<CAPACITY>, j: &mut Jacobian<CAPACITY>) {
        let n = self.wall.cells();
        let mut k = [0.0; CAPACITY];
        for (k, t) in k[..n].iter_mut().zip(y) {
            *k = self.wall.table.all(*t)[2];
        }
        j.diagonal[..n].fill(0.0);
        j.below[..n].fill(0.0);
        j.above[..n].fill(0.0);
        for i in 0..n - 1 {
            let c = self.wall.conduction(&k[..n], i);
            j.above[i] += c;
            j.below[i + 1] += c;
            j.diagonal[i] -= c;
            j.diagonal[i + 1] -= c;
        }
        let outer = self.into(self.wall.half(n - 1), k[n - 1]);
        j.diagonal[n - 1] -= self.wall.outer() * outer;
        if self.bored {
            j.diagonal[0] -= self.wall.inner() * self.into(self.wall.half(0), k[0]);
        }
        for (i, own) in self.wall.inertia.iter().enumerate() {
            let inertia = own / self.wall.table.all(y[i])[1];
            j.below[i] *= inertia;
            j.diagonal[i] *= inertia;
            j.above[i] *= inertia;
        }
        j.coupling = Coupling::Chain;
    }
}

/// The soak of a part.
///
/// # Errors
/// Dimensions, temperatures, coefficients or `near` outside their ranges, an
/// inside that is not inside, coefficients out of order; a heat flow that cannot
/// be solved is a fault at `h_w_m2k`.
///
/// # Example
/// A thin ring is one temperature throughout: Newton's law, ln(100/2) times
/// density x cp x volume / (h x area), here 7000 x 450 x 0.0025 / 20 x 3.912 =
/// 1540 s for a wall of 5 mm wetted on both sides.
/// ```
/// use coldseat_core::materials::{ConstantProperties, Material};
/// use coldseat_core::quantity::*;
/// use coldseat_core::thermal::soak::{SoakInput, soak};
/// let h = Conductance::from_w_m2k(20.0);
/// let s = soak(&SoakInput {
///     material: Material::constant(ConstantProperties {
///         density_kg_m3: Some(7000.0),
///         specific_heat_j_kgk: Some(450.0),
///         conductivity_w_mk: Some(45.0),
///         ..ConstantProperties::default()
///     }),
///     inner: Some(Diameter::from_mm(990.0)),
///     outer: Diameter::from_mm(1000.0),
///     length: Length::from_mm(200.0),
///     start: Temperature::from_k(300.0),
///     bath: Temperature::from_k(200.0),
///     coefficient: [h; 3],
///     near: TemperatureDelta::from_k(2.0),
/// })?;
/// assert!((s.time.as_s() / 1540.4 - 1.0).abs() < 2e-3);
/// assert!((s.biot - 20.0 * 0.0025 / 45.0).abs() < 1e-9);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn soak(input: &SoakInput) -> Result<Soak, Fault> {
    let [low, nominal, high] = input.check()?;
    let (a, b) = (
        input.inner.map_or(0.0, |d| d.radius().as_m()),
        input.outer.radius().as_m(),
    );
    let area = PI * (b * b - a * a);
    let wetted = 2.0 * PI * (b + a);
    let material = &input.material;
    let mass = material.density_kg_m3() * area * input.length.as_m();
    let time = |h: f64| until_near(input, h).map(Seconds::from_s);
    Ok(Soak {
        time: time(nominal)?,
        time_low: time(high)?,
        time_high: time(low)?,
        biot: nominal * area / wetted / material.conductivity_w_mk(input.start),
        heat_j: mass * material.heat_j_kg(input.start, input.bath),
    })
}

fn until_near(input: &SoakInput, coefficient: f64) -> Result<f64, Fault> {
    let (start_k, bath_k) = (input.start.as_k(), input.bath.as_k());
    let near_k = input.near.as_k();
    let whole = (start_k - bath_k).abs();
    if whole <= near_k {
        return Ok(0.0);
    }
    let inner = match input.inner {
        Some(inner) => inner,
        None => Diameter::from_m(SOLID * input.outer.as_m()),
    };
    let body = Body {
        wall: Wall::new(&input.material, inner, input.outer, CELLS, 1.0),
        bath_k,
        coefficient,
        bored: input.inner.is_some(),
    };
    let stuck = || {
        Fault::new(
            "h_w_m2k",
            "the heat flow could not be solved with these inputs: check dimensions, coefficients \
             and conductivity for values far from a real part",
        )
    };
    let n = body.coupled();
    // What is left of the difference, and its slope.
    let left = |y: &State<CAPACITY>, rates: &State<CAPACITY>| {
        let sum = |v: &[f64], shift: f64| -> f64 {
            let weights = body.wall.weights().iter();
            weights.zip(v).map(|(w, t)| w * (t - shift)).sum()
        };
        let off = sum(&y[..n], bath_k);
        (off.abs() - near_k, off.signum() * sum(&rates[..n], 0.0))
    };
    let mut y = [start_k; CAPACITY];
    let mut rates = [0.0; CAPACITY];
    body.rates(&y, &mut rates);
    let mut stepper = Stepper::default();
    let (mut t, mut h) = (0.0, 1e-3);
    let mut now = left(&y, &rates);
    for _ in 0..MOST_STEPS {
        stepper.prepare(&body, &y);
        let step = stepper.step(&body, &y, &rates, h);
        // Close to the medium the difference that is left counts.
        let tolerance = TOLERANCE * (now.0 + near_k).max(1e-3 * whole);
        if step.error > tolerance {
            h = next_size(h, step.error, tolerance).min(0.5 * h);
            if h < 1e-9 {
                return Err(stuck());
            }
            continue;
        }
        let mut end_rates = [0.0; CAPACITY];
        body.rates(&step.y, &mut end_rates);
        let then = left(&step.y, &end_rates);
        if then.0 <= 0.0 {
            let root = roots::bracketed(
                |x| {
                    let w = super::drop_run::hermite(0.0, h, x);
                    w.mix([now.0, now.1], [then.0, then.1])[0]
                },
                0.0,
                h,
                1e-9 * h,
            )
            .map_err(|_| stuck())?;
            return Ok(t + root.x);
        }
        t += h;
        y = step.y;
        rates = end_rates;
        now = then;
        h = next_size(h, step.error, tolerance);
    }
    Err(stuck())
}

impl SoakInput {
    fn check(&self) -> Result<[f64; 3], Fault> {
        if let Some(inner) = self.inner {
            bounds::DIAMETER.check("inner_d_m", inner.as_m())?;
        }
        bounds::DIAMETER.check("outer_d_m", self.outer.as_m())?;
        bounds::LENGTH.check("length_m", self.length.as_m())?;
        bounds::TEMPERATURE.check("start_k", self.start.as_k())?;
        bounds::TEMPERATURE.check("bath_k", self.bath.as_k())?;
        let [low, nominal, high] = self.coefficient.map(Conductance::as_w_m2k);
        for (i, h) in [low, nominal, high].into_iter().enumerate() {
            bounds::SOAK.check(&format!("h_w_m2k[{i}]"), h)?;
        }
        if !(low <= nominal && nominal <= high) {
            return Err(Fault::new(
                "h_w_m2k",
                format!("{low}, {nominal}, {high} W/m2/K do not rise: give low, nominal and high"),
            ));
        }
        bounds::WITHIN.check("near_k", self.near.as_k())?;
        if let Some(inner) = self.inner {
            inner.check_inside("inner_d_m", self.outer)?;
        }
        Ok([low, nominal, high])
    }
}
