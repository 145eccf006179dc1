"""The benchmark's bore profile by scikit-fem on the core's own mesh, same
elements (eight nodes): reads `mesh<TAB>radii<TAB>heights<TAB>changes` from its
input, prints `skfem<TAB>ms<TAB>largest difference of the inside, um`.

Timed: assembly by scikit-fem, solution by scipy's sparse solver, contact by
the cross-check's loop; the best of three."""

import json
import sys
import time

import numpy as np
from skfem import ElementQuadS2

import families_fem

# As in tests/benches/cases.rs.
CASE = {
    "sleeve": {"inner_d_m": 0.1016, "outer_d_m": 0.10795, "length_m": 0.152, "flange_outer_d_m": 0.113,
               "flange_thickness_m": 0.00508, "youngs_pa": 168e9, "poisson": 0.275},
    "block": {"outer_d_m": 0.151, "youngs_pa": 110e9, "poisson": 0.26, "below_m": 0.01,
              "jacket": {"wall_m": 0.0064, "deck_m": 0.0152, "bottom_m": 0.0152}},
    "interference_m": 3.2e-5, "joint": "frictionless", "clamp_n": 0.0,
    "z_m": [0.0039 * i for i in range(40)],
}


def main():
    line = next(line for line in sys.stdin if line.startswith("mesh\t"))
    radii, heights, changes = (np.array(json.loads(part)) for part in line.split("\t")[1:])
    took = []
    for _ in range(3):
        begun = time.perf_counter()
        e = families_fem.equilibrium(CASE, lines=(radii, heights), element=ElementQuadS2())
        took.append(time.perf_counter() - begun)
    inside = np.interp(e.depths, e.sleeve.at[1, e.inside], 2 * e.u[e.inside])
    print(f"skfem\t{1e3 * min(took):.1f}\t{1e6 * np.abs(inside - changes).max():.4f}")


main()
