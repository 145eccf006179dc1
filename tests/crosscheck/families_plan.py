"""Soaking by scipy's BDF on a fine grid, and the solid pin by its Bessel series;
heights of proud sleeves by scipy's HiGHS, goal by goal."""

import itertools
import math

import numpy as np
from scipy import integrate, optimize, special

from families import Family, between
from families_heat import Ring, some_solid, Solid

# soak ----------------------------------------------------------------------------


def draw_soak(r):
    solid = r.random() < 0.4
    outer = between(r, 0.008, 0.15)
    inner = 0.0 if solid else outer - 2 * between(r, 0.002, 0.4 * outer / 2)
    low = 10 ** between(r, 0.7, 2.5)
    cold = float(r.choice([194.7, 255.0, 420.0]))
    x = {**some_solid(r), "inner_d_m": inner, "outer_d_m": outer, "length_m": between(r, 0.02, 0.3), "start_k": between(r, 285, 300),
         "bath_k": cold, "h_w_m2k": [low, low * between(r, 1, 2), low * between(r, 2, 4)], "near_k": between(r, 0.5, 10)}
    return x


def series_time(x, h):
    """A solid cylinder of constant properties: mean temperature by Bessel's series."""
    p, radius = x["properties"], x["outer_d_m"] / 2
    bi = h * radius / p["conductivity_w_mk"]
    zeros = special.jn_zeros(0, 40)
    f = lambda z: z * special.j1(z) - bi * special.j0(z)
    roots = [optimize.brentq(f, lo + 1e-12, hi) for lo, hi in zip([1e-9, *special.jn_zeros(1, 39)], zeros)]
    z = np.array(roots)
    weight = 4 * bi**2 / (z**2 * (z**2 + bi**2))
    diffusivity = p["conductivity_w_mk"] / p["density_kg_m3"] / p["specific_heat_j_kgk"]
    target = x["near_k"] / abs(x["start_k"] - x["bath_k"])
    left = lambda s: float((weight * np.exp(-(z**2) * math.exp(s))).sum()) - target
    return math.exp(optimize.brentq(left, -14, 14)) * radius**2 / diffusivity


def soak_time(x, h, cells=120):
    solid = Solid(x)
    if x["inner_d_m"] == 0 and "properties" in x:
        return series_time(x, h)
    ring = Ring(solid, max(x["inner_d_m"], 1e-6 * x["outer_d_m"]), x["outer_d_m"], cells)
    bath = x["bath_k"]

    def rates(_, t):
        q, k = ring.inner_heat(t)
        half = 0.5 * (ring.f[1] - ring.f[0])
        q[-1] += ring.f[-1] * (bath - t[-1]) / (1 / h + half / k[-1])
        if x["inner_d_m"] > 0:
            q[0] += ring.f[0] * (bath - t[0]) / (1 / h + half / k[0])
        return q / (solid.density * solid.cp(t) * ring.area)

    near = lambda _, t: abs(float(np.dot(ring.w, t)) - bath) - x["near_k"]
    near.terminal = True
    run = integrate.solve_ivp(rates, (0, 1e7), np.full(cells, x["start_k"]), method="BDF", rtol=1e-7, atol=1e-6, events=near)
    return float(run.t_events[0][0])


def solve_soak(x):
    low, nominal, high = x["h_w_m2k"]
    a, b, solid = x["inner_d_m"] / 2, x["outer_d_m"] / 2, Solid(x)
    area = math.pi * (b * b - a * a)
    mass = solid.density * area * x["length_m"]
    heat = mass * integrate.quad(lambda t: float(solid.cp(t)), x["bath_k"], x["start_k"], limit=300)[0]
    return {"soak_s": soak_time(x, nominal), "soak_low_s": soak_time(x, high), "soak_high_s": soak_time(x, low),
            "biot": nominal * area / (2 * math.pi * (a + b)) / float(solid.k(x["start_k"])), "heat_j": heat}


PINS = itertools.cycle(itertools.product([0.05, 0.5, 2.0, 10.0], [0.2, 0.1, 0.05, 0.02, 0.01]))


def draw_pin(r):
    """A solid pin at four Biot numbers (coefficient x radius / conductivity), the other two coefficients half and twice."""
    biot, left = next(PINS)
    outer, start, bath = between(r, 0.052, 0.09), between(r, 285, 300), float(r.choice([194.7, 255.0, 420.0]))
    p = {"density_kg_m3": between(r, 2500, 8900), "specific_heat_j_kgk": between(r, 300, 900), "conductivity_w_mk": between(r, 8, 25),
         "expansion_per_k": 1e-5}
    h = biot * p["conductivity_w_mk"] / (outer / 2)
    return {"properties": p, "inner_d_m": 0.0, "outer_d_m": outer, "length_m": 0.1, "start_k": start, "bath_k": bath,
            "h_w_m2k": [h / 2, h, h * min(2, 9999 / h)], "near_k": left * abs(start - bath)}


# heights_plan ----------------------------------------------------------------------

UM = 1e-6


def draw_heights(r):
    large = r.random() < 0.15
    n = int(r.integers(6, 9) if large else r.integers(1, 6))
    spare = int(r.integers(0, 3 if large else 2))
    rows = lambda count, middle: [[UM * int(v) for v in middle + r.integers(-45, 46) + r.integers(-9, 10, 4)] for _ in range(count)]
    lo = int(r.integers(20, 45))
    return {"holes": [{"depth_m": d} for d in rows(n, 7800)], "sleeves": [{"thickness_m": t} for t in rows(n + spare, 7890)],
            "shims_m": [UM * 25 * int(k) for k in r.choice([1, 2, 3, 4], int(r.integers(0, 3)), replace=False)],
            "cut_step_m": UM * int(r.choice([0, 25])), "cut_most_m": 100 * UM, "proud_m": [UM * lo, UM * (lo + int(r.integers(70, 120)))],
            "spread_hole_m": UM * int(r.integers(18, 45)), "spread_neighbour_m": UM * int(r.integers(25, 60)),
            "spread_all_m": UM * int(r.integers(30, 100))}


def solve_heights(x):
    whole = lambda v: round(v / UM)
    depth = [[whole(d) for d in h["depth_m"]] for h in x["holes"]]
    thick = [[whole(t) for t in s["thickness_m"]] for s in x["sleeves"]]
    shims, step = [whole(s) for s in x["shims_m"]], whole(x["cut_step_m"])
    cuts = list(range(0, whole(x["cut_most_m"]) + 1, step)) if step else [0]
    lo, hi = map(whole, x["proud_m"])
    n = len(depth)
    options = []
    for h in range(n):
        for s in range(len(thick)):
            for turn in range(4):
                for shim in [None, *range(len(shims))]:
                    for cut in cuts:
                        heights = [thick[s][(j - turn) % 4] + (0 if shim is None else shims[shim]) - depth[h][j] - cut for j in range(4)]
                        if min(heights) >= lo and max(heights) <= hi and max(heights) - min(heights) <= whole(x["spread_hole_m"]):
                            options.append((h, s, sum(heights), [cut > 0, shim is not None, s != h, turn != 0]))
    if any(all(o[0] != h for o in options) for h in range(n)):
        return {"possible": False}
    # One variable an option, then the highest and the lowest mean.
    m = len(options)
    rows, low, high = [], [], []

    def row(coefficients, least, most):
        line = np.zeros(m + 2)
        for i, c in coefficients:
            line[i] += c
        rows.append(line)
        low.append(least)
        high.append(most)

    mean = lambda h: [(i, o[2]) for i, o in enumerate(options) if o[0] == h]
    for h in range(n):
        row([(i, 1) for i, o in enumerate(options) if o[0] == h], 1, 1)
        row([*mean(h), (m, -1)], -np.inf, 0)
        row([*mean(h), (m + 1, -1)], 0, np.inf)
    for s in range(len(thick)):
        row([(i, 1) for i, o in enumerate(options) if o[1] == s], 0, 1)
    for h in range(n - 1):
        near = 4 * whole(x["spread_neighbour_m"])
        row([*mean(h), *((i, -c) for i, c in mean(h + 1))], -near, near)
    row([(m, 1), (m + 1, -1)], -np.inf, 4 * whole(x["spread_all_m"]))
    goals = [np.array([o[3][k] for o in options] + [0, 0], float) for k in range(4)]
    goals.append(np.array([0.0] * m + [1, -1]))
    kind = np.array([1] * m + [0, 0])
    bounds = optimize.Bounds([0] * m + [-1e6] * 2, [1] * m + [1e6] * 2)
    found = []
    for goal in goals:
        done = optimize.milp(goal, integrality=kind, bounds=bounds, constraints=optimize.LinearConstraint(np.array(rows), low, high))
        if not done.success:
            return {"possible": False}
        found.append(round(done.fun))
        row([(i, c) for i, c in enumerate(goal) if c], -np.inf, found[-1] + 1e-6)
    names = ["cuts", "shims", "moved", "turned"]
    return {"possible": True, **dict(zip(names, found)), "spread_m": found[4] / 4 * UM}


FAMILIES = [
    Family("soak", "scipy BDF on 120 cells; a solid pin by its Bessel series", draw_soak, solve_soak, cases=60, share=0.005,
           special={"biot": (1e-4, 0), "heat_j": (1e-3, 0)}),
    Family("soak", "a solid pin at Biot 0.05, 0.5, 2 and 10 by its Bessel series", draw_pin, solve_soak, cases=60, share=0.005,
           special={"biot": (1e-4, 0), "heat_j": (1e-3, 0)}),
    Family("heights_plan", "scipy's HiGHS, goal by goal", draw_heights, solve_heights, cases=60, share=0, floor=1e-9),
]
