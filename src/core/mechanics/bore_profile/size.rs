//! How large a mesh may be. Where one would be larger, the dimension is named
//! that needs to change least for it to fit, and how far.

use super::mesh::{Fineness, Mesh};
use super::{BoreProfileInput, Flange, Jacket};
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length};

/// Most multiplications of a factorization: a fifth of a second or less.
const MOST_WORK: f64 = 6e8;
/// Steps of a dimension for its double, and how many are tried.
const STEPS: f64 = 4.0;
const MOST_STEPS: i32 = 48;

/// A dimension that the mesh hangs on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Dimension {
    Wall,
    Length,
    FlangeThickness,
    FlangeWidth,
    Block,
    Below,
    JacketWall,
    JacketDeck,
    JacketBottom,
}

impl Dimension {
    const ALL: [Self; 9] = [
        Self::Wall,
        Self::Length,
        Self::FlangeThickness,
        Self::FlangeWidth,
        Self::Block,
        Self::Below,
        Self::JacketWall,
        Self::JacketDeck,
        Self::JacketBottom,
    ];

    const fn field(self) -> &'static str {
        match self {
            Self::Wall => "sleeve.inner_d_m",
            Self::Length => "sleeve.length_m",
            Self::FlangeThickness => "sleeve.flange_thickness_m",
            Self::FlangeWidth => "sleeve.flange_outer_d_m",
            Self::Block => "block.outer_d_m",
            Self::Below => "block.below_m",
            Self::JacketWall => "block.jacket.wall_m",
            Self::JacketDeck => "block.jacket.deck_m",
            Self::JacketBottom => "block.jacket.bottom_m",
        }
    }

    /// The input with the metal of this dimension `times` as thick, and what
    /// the field says then; `None` where there is no such dimension.
    fn scaled(self, input: &BoreProfileInput, times: f64) -> Option<(BoreProfileInput, f64)> {
        let mut new = input.clone();
        new.depths.clear();
        // From one diameter to another that is `times` as far off.
        let off = |from: Diameter, to: Diameter| {
            Diameter::from_m(from.as_m() + times * (to.as_m() - from.as_m()))
        };
        let long = |length: Length| Length::from_m(times * length.as_m());
        let outer = input.sleeve_outer;
        let value = match self {
            Self::Wall => {
                new.sleeve_inner = off(outer, input.sleeve_inner);
                new.sleeve_inner.as_m()
            }
            Self::Length => {
                new.length = long(input.length);
                new.length.as_m()
            }
            Self::FlangeThickness | Self::FlangeWidth => {
                let Flange {
                    outer: edge,
                    thickness,
                } = input.flange?;
                let is_width = self == Self::FlangeWidth;
                let flange = Flange {
                    outer: if is_width { off(outer, edge) } else { edge },
                    thickness: if is_width { thickness } else { long(thickness) },
                };
                new.flange = Some(flange);
                if is_width {
                    flange.outer.as_m()
                } else {
                    flange.thickness.as_m()
                }
            }
            Self::Block => {
                new.block_outer = off(outer, input.block_outer);
                new.block_outer.as_m()
            }
            Self::Below => {
                new.below = long(input.below);
                new.below.as_m()
            }
            Self::JacketWall | Self::JacketDeck | Self::JacketBottom => {
                let Jacket { wall, deck, bottom } = input.jacket?;
                let (jacket, value) = match self {
                    Self::JacketWall => (
                        Jacket {
                            wall: long(wall),
                            deck,
                            bottom,
                        },
                        long(wall),
                    ),
                    Self::JacketDeck => (
                        Jacket {
                            wall,
                            deck: long(deck),
                            bottom,
                        },
                        long(deck),
                    ),
                    _ => (
                        Jacket {
                            wall,
                            deck,
                            bottom: long(bottom),
                        },
                        long(bottom),
                    ),
                };
                new.jacket = Some(jacket);
                value.as_m()
            }
        };
        Some((new, value))
    }
}

impl BoreProfileInput {
    /// That its meshes are not too large.
    pub(super) fn check_size(&self, meshes: &[Fineness]) -> Result<(), Fault> {
        let work = |input: &Self| {
            let each = meshes.iter().map(|fine| Mesh::new(input, fine).work());
            each.fold(0.0, f64::max)
        };
        if work(self) <= MOST_WORK {
            return Ok(());
        }
        let mut least = (f64::MAX, Dimension::Wall, 1.0);
        for steps in 1..=MOST_STEPS {
            for dimension in Dimension::ALL {
                for sign in [1, -1] {
                    let times = (f64::from(sign * steps) / STEPS).exp2();
                    let Some((input, to)) = dimension.scaled(self, times) else {
                        continue;
                    };
                    if input.check_dimensions().is_err() {
                        continue;
                    }
                    let work = work(&input);
                    if work <= MOST_WORK {
                        return Err(self.unmeshed(dimension, Some(to)));
                    }
                    if work < least.0 {
                        least = (work, dimension, to);
                    }
                }
            }
        }
        Err(self.unmeshed(least.1, None))
    }

    fn unmeshed(&self, dimension: Dimension, to: Option<f64>) -> Fault {
        let is = dimension.scaled(self, 1.0).map(|(_, value)| value);
        let value = is.map(|v| format!("{v} m")).into_iter().collect::<String>();
        let remedy = match (is, to) {
            (Some(is), Some(to)) if to > is => format!("at least {to:.4e} m beside the others"),
            (_, Some(to)) => format!("at most {to:.4e} m beside the others"),
            (_, None) => "two dimensions or more are too far apart, this one the most: check \
                          wall, length, flange and block"
                .to_owned(),
        };
        Fault::new(
            dimension.field(),
            format!("{value} asks for a mesh beyond what is solved: {remedy}"),
        )
    }
}
