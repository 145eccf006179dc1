//! Stress of a fitted sleeve: hoop stress down the inside, the flange's fillet,
//! the counterbore's corner, the ledge's mean pressure, and the force that
//! pushes the sleeve home.
//!
//! Both corners are sharp in the model, and at a sharp inner corner stress has
//! no value: it grows with every finer mesh. So it is given at a stated
//! distance from the corner, the largest tension round it, and once more on a
//! mesh of half the size: where the two differ, the mesh still speaks. It is
//! not the peak in a real fillet, which hangs on its radius, but what compares
//! one sleeve with another.

use core::f64::consts::{FRAC_PI_2, PI};

use super::element::shapes;
use super::mesh::{Body, FINE, FINER, Mesh};
use super::solve::{Solution, solve, solve_near};
use super::{BoreProfileInput, Joint, USUAL, height_change};
use crate::mechanics::rings::Elastic;
use crate::quantity::bounds;
use crate::quantity::code::Code;
use crate::quantity::report::{Fault, Finding};
use crate::quantity::{Force, Length, Pressure};

/// Directions round a corner that are looked at.
const DIRECTIONS: usize = 36;
/// Two meshes that differ by more than this are worth a look.
const MESHES_AGREE: f64 = 0.1;

/// A sleeve in a block whose stress is asked for.
#[derive(Clone, Debug, PartialEq)]
pub struct BoreStressInput {
    /// Sleeve, block and loads; hoop stress is read at its depths.
    pub profile: BoreProfileInput,
    /// Friction of sleeve on bore.
    pub friction: f64,
    /// Distance from a corner at which its stress is read: the fillet's radius
    /// is a fair choice.
    pub at: Length,
}

/// Stress of a fitted sleeve. Tension is positive.
#[derive(Clone, Debug, PartialEq)]
pub struct BoreStress {
    /// Hoop stress at the inside at each depth.
    pub hoop_inner: Vec<Pressure>,
    /// Largest tension round the corner of sleeve and flange, on the usual
    /// mesh and on one of half the size.
    pub fillet: [Pressure; 2],
    /// The same in the block, round the counterbore's corner.
    pub counterbore: [Pressure; 2],
    /// Force on the ledge over the whole ring of it.
    pub ledge_pressure: Pressure,
    /// Force that pushes the sleeve down against the friction of its fit,
    /// cold, without clamp and gas.
    pub seat_force: Force,
    /// As in the profile.
    pub height_change: Length,
    /// What wants a look.
    pub findings: Vec<Finding>,
}

/// Stress of a fitted sleeve.
///
/// # Errors
/// As [`super::bore_profile`]; no flange; a friction outside its range; a
/// distance that leaves the metal round a corner.
///
/// # Example
/// Far from the ends the sleeve's inside is pressed as Lame's rings say:
/// 5919.91 psi for case C1 of the project's mechanics reference.
/// ```
/// use coldseat_core::mechanics::bore_profile::{
///     BoreProfileInput, BoreStressInput, Flange, Joint, bore_stress,
/// };
/// use coldseat_core::mechanics::rings::Elastic;
/// use coldseat_core::quantity::*;
/// let stress = bore_stress(&BoreStressInput {
///     profile: BoreProfileInput {
///         sleeve_inner: Diameter::from_inch(4.0),
///         sleeve_outer: Diameter::from_inch(4.25),
///         length: Length::from_inch(6.0),
///         flange: Some(Flange {
///             outer: Diameter::from_inch(4.45),
///             thickness: Length::from_inch(0.2),
///         }),
///         sleeve: Elastic { youngs: Pressure::from_psi(24.4e6), poisson: 0.275 },
///         block_outer: Diameter::from_inch(6.0),
///         block: Elastic { youngs: Pressure::from_psi(16e6), poisson: 0.26 },
///         below: Length::from_m(0.0),
///         jacket: None,
///         interference: DiametralInterference::from_inch(0.00125),
///         joint: Joint::Frictionless,
///         clamp: Force::from_n(0.0),
///         gas: Pressure::from_pa(0.0),
///         gas_depth: None,
///         heat: None,
///         depths: vec![Length::from_inch(3.2)],
///     },
///     friction: 0.12,
///     at: Length::from_inch(0.03),
/// })?;
/// assert!((stress.hoop_inner[0].as_psi() / -5919.91 - 1.0).abs() < 0.005);
/// # Ok::<(), coldseat_core::quantity::report::Fault>(())
/// ```
pub fn bore_stress(input: &BoreStressInput) -> Result<BoreStress, Fault> {
    let profile = &input.profile;
    profile.check(&[USUAL, FINE, FINER])?;
    let friction = bounds::FRICTION.check("friction", input.friction)?;
    input.check_distance()?;
    // The contact is found on the mesh of the profile, which is small.
    let plain = solve(profile, Mesh::new(profile, &USUAL))?;
    let usual = solve_near(profile, Mesh::new(profile, &FINE), Some(&plain))?;
    let half = solve_near(profile, Mesh::new(profile, &FINER), Some(&usual))?;
    let field = |solution| Field {
        solution,
        input: profile,
    };
    let top = usual.mesh.z[usual.mesh.rows()];
    let hoop_inner = profile
        .depths
        .iter()
        .map(|d| {
            let at = [usual.mesh.r[0], top - d.as_m()];
            Pressure::from_pa(field(&usual).stress(Body::Sleeve, at).hoop)
        })
        .collect();
    let round = |corner: Corner| {
        [&usual, &half].map(|s| Pressure::from_pa(field(s).round(corner, input.at.as_m())))
    };
    let (fillet, counterbore) = (round(Corner::Fillet), round(Corner::Counterbore));
    let ring =
        PI * (usual.mesh.r[usual.mesh.flange].powi(2) - usual.mesh.r[usual.mesh.joint].powi(2));
    let mut findings = vec![Finding::note(
        Code::SharpCorner,
        "both corners are sharp here: their stress is that at the distance asked for, not the \
         peak in a fillet; it compares one sleeve with another",
    )];
    if [fillet, counterbore]
        .iter()
        .any(|[a, b]| (a.as_pa() - b.as_pa()).abs() > MESHES_AGREE * b.as_pa().abs().max(1e5))
    {
        findings.push(Finding::look(
            Code::MeshSpeaks,
            "two meshes differ by more than a tenth at a corner: ask at a larger distance from it",
        ));
    }
    Ok(BoreStress {
        hoop_inner,
        fillet,
        counterbore,
        ledge_pressure: Pressure::from_pa(half.ledge_force / ring),
        seat_force: Force::from_n(friction * pressing(profile, &plain)?),
        height_change: Length::from_m(height_change(&half)),
        findings,
    })
}

/// Sum of all forces of the joint of a cold, sliding, unloaded sleeve, N.
fn pressing(input: &BoreProfileInput, plain: &Solution) -> Result<f64, Fault> {
    let fit = BoreProfileInput {
        joint: Joint::Frictionless,
        clamp: Force::from_n(0.0),
        gas: Pressure::from_pa(0.0),
        heat: None,
        ..input.clone()
    };
    let joint_force = |solution: &Solution| solution.joint_force.iter().sum();
    if fit == *input {
        return Ok(joint_force(plain));
    }
    Ok(joint_force(&solve(&fit, Mesh::new(&fit, &USUAL))?))
}

impl BoreStressInput {
    fn check_distance(&self) -> Result<(), Fault> {
        let input = &self.profile;
        let Some(flange) = input.flange else {
            return Err(Fault::new(
                "sleeve.flange_outer_d_m",
                "null: without a flange there is neither fillet nor ledge; give the flange",
            ));
        };
        let radius = |d: crate::quantity::Diameter| d.radius().as_m();
        let (a, b) = (radius(input.sleeve_inner), radius(input.sleeve_outer));
        let (f, c) = (radius(flange.outer), radius(input.block_outer));
        let t = flange.thickness.as_m();
        let mut room = (b - a).min(f - b).min(c - f).min(t);
        if let Some(jacket) = input.jacket {
            room = room.min((jacket.deck.as_m() - t).abs());
        }
        let (at, most) = (self.at.as_m(), 0.5 * room);
        if at > 0.0 && at <= most {
            return Ok(());
        }
        Err(Fault::new(
            "at_m",
            format!(
                "{at} m from a corner: 0 < .. <= {most} m, half of the thinnest metal round it"
            ),
        ))
    }
}

/// A sharp inner corner.
#[derive(Clone, Copy)]
enum Corner {
    /// Of sleeve and flange.
    Fillet,
    /// Of counterbore and ledge, in the block.
    Counterbore,
}

/// Stress at a point.
struct Stress {
    radial: f64,
    axial: f64,
    hoop: f64,
    shear: f64,
}

impl Stress {
    /// The largest principal one.
    fn tension(&self) -> f64 {
        let mean = 0.5 * (self.radial + self.axial);
        let half = 0.5 * (self.radial - self.axial);
        (mean + half.hypot(self.shear)).max(self.hoop)
    }
}

struct Field<'a> {
    solution: &'a Solution,
    input: &'a BoreProfileInput,
}

impl Field<'_> {
    /// Largest tension at a distance round a corner.
    fn round(&self, corner: Corner, distance: f64) -> f64 {
        let mesh = &self.solution.mesh;
        let z = mesh.z[mesh.ledge];
        // The metal fills three quarters; the angle starts at its edge.
        let (body, r, from) = match corner {
            Corner::Fillet => (Body::Sleeve, mesh.r[mesh.joint], 0.0),
            Corner::Counterbore => (Body::Block, mesh.r[mesh.flange], -PI),
        };
        (0..DIRECTIONS)
            .map(|i| {
                let angle = from + 3.0 * FRAC_PI_2 * (i as f64 + 0.5) / DIRECTIONS as f64;
                let (sin, cos) = angle.sin_cos();
                self.stress(body, [r + distance * cos, z + distance * sin])
                    .tension()
            })
            .fold(f64::MIN, f64::max)
    }

    /// Stress of a body at a radius and height within it: from the two by two
    /// points of its cell at which quadratic elements are most exact.
    fn stress(&self, body: Body, [r, z]: [f64; 2]) -> Stress {
        let mesh = &self.solution.mesh;
        let line = |lines: &[f64], x: f64| {
            let last = lines.len() - 2;
            lines
                .partition_point(|l| *l <= x)
                .saturating_sub(1)
                .min(last)
        };
        let (column, row) = (line(&mesh.r, r), line(&mesh.z, z));
        let local = |low: f64, high: f64, x: f64| 2.0 * (x - low) / (high - low) - 1.0;
        let [from, to] = mesh.span(column, row);
        let at = [
            local(mesh.r[from], mesh.r[to], r),
            local(mesh.z[row], mesh.z[row + 1], z),
        ];
        let point = 1.0 / 3.0_f64.sqrt();
        let mut sum = Stress {
            radial: 0.0,
            axial: 0.0,
            hoop: 0.0,
            shear: 0.0,
        };
        for (sx, sy) in [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)] {
            let share = 0.25 * (1.0 + sx * at[0] / point) * (1.0 + sy * at[1] / point);
            let here = self.in_cell(body, column, row, [sx * point, sy * point]);
            sum.radial += share * here.radial;
            sum.axial += share * here.axial;
            sum.hoop += share * here.hoop;
            sum.shear += share * here.shear;
        }
        sum
    }

    fn in_cell(&self, body: Body, column: usize, row: usize, [x, y]: [f64; 2]) -> Stress {
        let mesh = &self.solution.mesh;
        let ([from, to], movements) = self.solution.cell(body, column, row);
        let width = mesh.r[to] - mesh.r[from];
        let height = mesh.z[row + 1] - mesh.z[row];
        let r = mesh.r[from] + 0.5 * width * (1.0 + x);
        let mut strain = [0.0; 4];
        for (shape, [u, w]) in shapes(x, y).into_iter().zip(movements) {
            let (over_r, over_z) = (2.0 / width * shape[1], 2.0 / height * shape[2]);
            strain[0] += over_r * u;
            strain[1] += over_z * w;
            strain[2] += shape[0] / r * u;
            strain[3] += over_z * u + over_r * w;
        }
        let Elastic { youngs, poisson } = match body {
            Body::Sleeve => self.input.sleeve,
            Body::Block => self.input.block,
        };
        let free = self
            .input
            .heat
            .as_ref()
            .map_or(0.0, |heat| heat.strain(self.input, body, r));
        let shear = youngs.as_pa() / (2.0 * (1.0 + poisson));
        let bulk = 2.0 * shear * poisson / (1.0 - 2.0 * poisson);
        let all = bulk * (strain[0] + strain[1] + strain[2] - 3.0 * free);
        let along = |e: f64| all + 2.0 * shear * (e - free);
        Stress {
            radial: along(strain[0]),
            axial: along(strain[1]),
            hoop: along(strain[2]),
            shear: shear * strain[3],
        }
    }
}
