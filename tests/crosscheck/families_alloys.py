"""Alloys and baths: copper's curve by quadrature of NIST's certified fit, the other
curves typed again; contraction of the alloys, and cold drops out of three baths
into housings at room temperature and warmed, four pairs of materials."""

import itertools

import numpy as np
from scipy import interpolate

import families_heat as heat
from families import Family, between

# NIST StRD, Hahn1: certified parameters of the coefficient of copper, 1e-6/K.
HAHN = [1.0776351733, -1.2269296921e-1, 4.0863750610e-3, -1.4262662514e-6]
BELOW = [1.0, -5.7609940901e-3, 2.4053735503e-4, -1.2314450199e-7]
GRID = np.linspace(60, 510, 4501)
ALPHA = np.polynomial.Polynomial(HAHN)(GRID) / np.polynomial.Polynomial(BELOW)(GRID) * 1e-6
RUN = interpolate.CubicSpline(GRID, ALPHA).antiderivative()
FE = ([70, 77.36, 100, 125, 150, 200, 250, 293.15, 350, 400, 450, 500],
      [117.8, 142.5, 213.2, 275.7, 322.5, 384.3, 422.8, 447.0, 472.8, 493.0, 512.6, 532.8])
CU = ([70, 77.355, 100, 125, 150, 200, 250, 293.15, 350, 400, 450, 500],
      [169.9, 194.0, 252.5, 295.2, 323.3, 356.0, 373.8, 383.7, 392.7, 398.6, 403.4, 407.5])

MG = ([70, 77.355, 100, 125, 150, 200, 250, 293.15, 350, 400, 450, 500],
      [422.4, 485.9, 643.6, 761.9, 841.2, 936.0, 989.5, 1020.2, 1049.6, 1069.7, 1086.6, 1101.5])


def times(table, factor):
    return table[0], [factor * c for c in table[1]]


def copper(c77):
    scale = c77 / (RUN(293.15) - RUN(77.355))
    return lambda t: scale * (RUN(t) - RUN(293.15))


def above_and_below(nist, slope, bend, factor):
    def e(t):
        t = np.asarray(t, float)
        over = t - 293.15
        return factor * np.where(over < 0, (nist(t) - nist(293.15)) * 1e-5, slope * over + bend * over**2)

    return e


def nickel(factor):
    return above_and_below(lambda t: -236.8 - 0.2120 * t + 5.497e-3 * t**2 - 6.882e-6 * t**3, 12.37e-6, 0.6e-8, factor)


def aluminum(factor):
    return above_and_below(lambda t: -412.77 - 0.30389 * t + 8.7696e-3 * t**2 - 9.9821e-6 * t**3, 22.64e-6, 0.975e-8, factor)


heat.OTHERS.update({
    "carbon_steel": (7850, 0.001885, times(FE, 1.01), [45, 48, 52, 54, 54, 53.3, 49.8, 46.4]),
    "bronze_c93200": (8910, copper(0.00314), times(CU, 0.94), [28, 31, 38, 45, 52, 58.2, 72, 84]),
    "bronze_c95400": (7450, copper(0.002763), times(CU, 1.13), [24, 28, 36, 44, 52, 58.7, 74, 87]),
    "bronze_c51000": (8860, copper(0.00306), times(CU, 0.98), [30, 34.5, 44, 53, 62, 69.2, 86, 100]),
    "brass_c36000": (8500, copper(0.00356), times(CU, 0.985), [40, 48, 66, 85, 102, 116, 137, 152]),
    "bearing_steel_52100": (7810, 0.00182, times(FE, 1.01), [24, 28, 33.5, 37, 39, 40, 39.5, 38.5]),
    "tool_steel_h13": (7800, 0.00174, times(FE, 1.01), [13.5, 15.5, 19, 21.5, 23.5, 24.5, 25.5, 26]),
    "cobalt_r30006": (8440, nickel(0.92), times(FE, 0.93), [7.8, 9, 10.9, 12.4, 13.7, 14.8, 16.2, 17.4]),
    "nickel_n07718": (8200, nickel(1.0), times(FE, 0.973), [6.4, 7.1, 8.1, 8.9, 9.7, 10.5, 13, 14.8]),
    "sintered_fc0208": (6700, 0.00185, FE, [17, 20, 24, 26.5, 28, 29, 29, 28.5]),
    "aluminum_319": (2790, aluminum(0.93), times(heat.ALUMINIUM, 0.975), [46, 57, 75, 90, 101, 109, 125, 136]),
    "magnesium_az91": (1810, aluminum(1.145), MG, [28, 35, 47, 57, 66, 72, 82, 88]),
    "aluminum_a380": (2720, aluminum(0.92), times(heat.ALUMINIUM, 0.975), [42, 52, 69, 83, 93, 100, 115, 125]),
})


def draw_contraction(r):
    return {"material": str(r.choice(list(heat.OTHERS))), "length_m": between(r, 0.01, 0.5), "from_k": between(r, 75, 495),
            "to_k": between(r, 75, 495)}


PAIRS = [("gray_iron", "gray_iron"), ("bronze_c93200", "carbon_steel"), ("cobalt_r30006", "aluminum_319"),
         ("carbon_steel", "aluminium_a356")]
CASES = itertools.cycle(itertools.product([77.355, 194.7, 255.0], ["room", 353.0, 423.0], PAIRS))


def draw_bath(r):
    """A bushing or seat: a fit small enough to go in even out of a freezer."""
    bath, warm, (sleeve, block) = next(CASES)
    outer, room = between(r, 0.03, 0.11), between(r, 290, 298)
    bore = outer - outer * between(r, 5e-5, 2e-4)
    return {"sleeve": {"material": sleeve, "inner_d_m": outer - 2 * between(r, 0.0025, 0.005), "outer_d_m": outer,
                       "length_m": between(r, 0.008, 0.08)},
            "block": {"material": block, "bore_d_m": bore, "outer_d_m": bore + 2 * between(r, 0.008, 0.02)},
            "bath_k": bath, "room_k": room, "block_k": room if warm == "room" else warm, "carry_s": between(r, 0, 6)}


SIZES = itertools.cycle([0.006, 0.01, 0.016, 0.025, 0.04, 0.06])


def draw_solid(r):
    """A pin or shaft: no bore, from a dowel to the thickness of a wrist."""
    outer, room = next(SIZES) * between(r, 0.9, 1.1), between(r, 290, 298)
    sleeve, block = PAIRS[int(r.integers(0, 4))]
    bore = outer - outer * between(r, 2e-4, 8e-4)
    return {"sleeve": {"material": sleeve, "inner_d_m": 0.0, "outer_d_m": outer, "length_m": between(r, 0.02, 0.1)},
            "block": {"material": block, "bore_d_m": bore, "outer_d_m": bore + 2 * between(r, 0.008, 0.03)},
            "bath_k": float(r.choice([77.355, 194.7])), "room_k": room, "block_k": room, "carry_s": between(r, 0, 5)}


FAMILIES = [
    # The core's copper is a polynomial of the seventh degree, within 1.2e-4 of the whole.
    Family("contraction", "alloys: quadrature of NIST's certified copper", draw_contraction, heat.solve_contraction,
           special={"strain": (1e-6, 8e-7), "change_m": (1e-6, 4e-7)}),
    Family("cold_drop", "three baths, warm housings, four pairs: scipy BDF", draw_bath, heat.solve_drop, cases=36, share=0.01,
           special={"climb_m": (0.01, 3e-7), "clearance": (0.002, 1e-7), "grip_sleeve": (0.002, 0), "grip_block": (0.002, 0)}),
    Family("cold_drop", "solid pins and shafts: scipy BDF", draw_solid, heat.solve_drop, cases=24, share=0.01,
           special={"climb_m": (0.01, 3e-7), "clearance": (0.002, 1e-7), "grip_sleeve": (0.002, 0), "grip_block": (0.002, 0)}),
]
