//! What is recorded of a leaning sleeve, with its slopes.

use super::super::drop_model::Block;
use super::super::drop_model::TIME;
use super::super::drop_run::{Flow, Moment};
use super::{LEAN_CAPACITY, LeanModel};
use crate::numerics::stepper::{State, StiffSystem};

impl Flow<LEAN_CAPACITY> for LeanModel {
    fn moment(&self, y: &State<LEAN_CAPACITY>, rates: &State<LEAN_CAPACITY>) -> Moment {
        let (each, n) = (self.each(), self.sleeve.cells());
        let cells = self.read(y);
        let open = Self::open_at(cells.clearance);
        let (mut sleeve, mut block, mut bore) = ([0.0; 2], [0.0; 2], 0.0);
        let (mut shrink, mut widen, mut harmonic) = (0.0, 0.0, 0.0);
        for (j, (cosine, part)) in self.cosine.iter().zip(&self.part).enumerate() {
            let at = j * each;
            let mut own = 0.0;
            for (i, w) in self.sleeve.weights().iter().enumerate() {
                let (t, rate) = (y[at + i], rates[at + i]);
                sleeve[0] += w * t * part;
                sleeve[1] += w * rate * part;
                own += w * self.sleeve.table.expansion_per_k(t) * rate;
            }
            shrink += own * part;
            harmonic += own * cosine;
            match &self.block {
                Block::Ring(wall) => {
                    for (i, w) in wall.weights().iter().enumerate() {
                        let (t, rate) = (y[at + n + i], rates[at + n + i]);
                        block[0] += w * t * part;
                        block[1] += w * rate * part;
                        widen += w * wall.table.expansion_per_k(t) * rate * part;
                    }
                }
                Block::Held { bore_k, .. } => block[0] = *bore_k,
            }
            bore += self.crossing(j, y, &cells.conductivity, open).bore_k * part;
        }
        Moment {
            s: 0.0,
            t: [y[self.coupled() + TIME], rates[self.coupled() + TIME]],
            clearance: [
                cells.clearance,
                self.bore_d_m * widen - 2.0 * self.sleeve.outer() * shrink,
            ],
            sleeve,
            block,
            bore,
            bow: [self.bend_m * cells.harmonic, self.bend_m * harmonic],
        }
    }
}
