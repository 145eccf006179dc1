"""Families that closed forms, statistics and assignment of numpy and scipy
answer."""

import math
from dataclasses import dataclass
from typing import Callable

import numpy as np
from scipy import integrate, optimize, stats

INCH = 0.0254
# Stands for a number that is not compared; the family says why.
SKIP = object()


@dataclass
class Family:
    """One calculation: how to draw a case, how to answer it, how close."""

    calc: str
    against: str
    draw: Callable
    solve: Callable
    cases: int = 200
    share: float = 1e-9
    floor: float = 1e-13
    special: dict | None = None

    def tolerance(self, path):
        for name, value in (self.special or {}).items():
            if path.startswith(name):
                return value
        return self.share, self.floor


def between(r, lo, hi):
    return float(r.uniform(lo, hi))


# form --------------------------------------------------------------------------

def draw_form(r):
    def level(i):
        return {"z_m": 0.02 * i, "d_m": [between(r, 0.1079, 0.1081) for _ in range(r.integers(1, 9))]}

    return {"levels": [level(i) for i in range(r.integers(1, 7))]}


def solve_form(x):
    per = [(float(np.mean(l["d_m"])), float(np.ptp(l["d_m"]))) for l in x["levels"]]
    return {
        "mean_d_m": float(np.mean([m for m, _ in per])),
        "out_of_round_m": max(o for _, o in per),
        "taper_m": per[0][0] - per[-1][0],
        "per_level": [{"mean_d_m": m, "out_of_round_m": o} for m, o in per],
    }


# fit ---------------------------------------------------------------------------

def draw_fit(r):
    def material(which):
        return {"expansion_per_k": between(r, 9e-6, 2.4e-5)}

    lo = between(r, 1e-5, 3e-5)
    return {
        "sleeve_d_m": [0.108 + between(r, -1e-5, 6e-5) for _ in range(r.integers(1, 9))],
        "bore_d_m": [0.108 + between(r, -1e-5, 1e-5) for _ in range(r.integers(1, 9))],
        "sleeve_k": between(r, 285, 305),
        "bore_k": between(r, 285, 305),
        "sleeve_properties": material("sleeve"),
        "bore_properties": material("bore"),
        "u_sleeve_m": between(r, 2e-7, 4e-6),
        "u_bore_m": between(r, 2e-7, 4e-6),
        "band_m": [lo, lo + between(r, 5e-6, 4e-5)],
    }


def solve_fit(x):
    def at20(d, t, p):
        return np.array(d) / (1 + p["expansion_per_k"] * (t - 293.15))

    s = at20(x["sleeve_d_m"], x["sleeve_k"], x["sleeve_properties"])
    b = at20(x["bore_d_m"], x["bore_k"], x["bore_properties"])
    mean = s.mean() - b.mean()
    u = math.hypot(x["u_sleeve_m"], x["u_bore_m"])
    lo, hi = x["band_m"]
    p = stats.norm.cdf(hi, mean, u) - stats.norm.cdf(lo, mean, u)
    inside = lo <= mean <= hi
    verdict = "inside" if p >= 0.95 else "outside" if p <= 0.05 and not inside else "undecided"
    return {
        "interference_mean_m": mean,
        "interference_min_m": s.min() - b.max(),
        "interference_max_m": s.max() - b.min(),
        "u_interference_m": u,
        "p_inside": p,
        "verdict": verdict,
    }


# press_fit: Lame's constants from a linear system, not from the closed form -------

def draw_press(r):
    outer = between(r, 0.08, 0.15)
    return {
        "sleeve": {
            "inner_d_m": outer - 2 * between(r, 0.0015, 0.008),
            "outer_d_m": outer,
            "youngs_pa": between(r, 6e10, 2.1e11),
            "poisson": between(r, 0.2, 0.35),
        },
        "block": {
            "outer_d_m": outer * between(r, 1.15, 3),
            "youngs_pa": between(r, 6e10, 2.1e11),
            "poisson": between(r, 0.2, 0.35),
        },
        "interference_m": between(r, 1e-5, 8e-5),
        "rz_sleeve_m": between(r, 0, 6e-6),
        "rz_bore_m": between(r, 0, 6e-6),
        "smoothing": between(r, 0, 0.8),
        "length_m": between(r, 0.1, 0.3),
        "friction": between(r, 0.05, 0.3),
    }


def solve_press(x):
    s, k = x["sleeve"], x["block"]
    a, b, c = s["inner_d_m"] / 2, s["outer_d_m"] / 2, k["outer_d_m"] / 2
    eff = x["interference_m"] - x["smoothing"] * (x["rz_sleeve_m"] + x["rz_bore_m"])
    # u = A r + B / r in each ring; plane stress.
    def radial(e, nu, r):
        return [e / (1 - nu), -e / (1 + nu) / r**2]

    def hoop(e, nu, r, ab):
        return e / (1 - nu) * ab[0] + e / (1 + nu) / r**2 * ab[1]

    es, ns, eb, nb = s["youngs_pa"], s["poisson"], k["youngs_pa"], k["poisson"]
    m = np.array([
        radial(es, ns, a) + [0, 0],
        [0, 0] + radial(eb, nb, c),
        radial(es, ns, b) + [-v for v in radial(eb, nb, b)],
        [-b, -1 / b, b, 1 / b],
    ])
    # Rows scaled alike, so that the system is well conditioned.
    scale = np.array([1 / es, 1 / eb, 1 / es, 1 / b])
    v = np.linalg.solve(m * scale[:, None], np.array([0, 0, 0, eff / 2]) * scale)
    p = -np.dot(radial(es, ns, b), v[:2])
    return {
        "effective_interference_m": eff,
        "pressure_pa": p,
        "sleeve_hoop_inner_pa": hoop(es, ns, a, v[:2]),
        "sleeve_hoop_outer_pa": hoop(es, ns, b, v[:2]),
        "block_hoop_inner_pa": hoop(eb, nb, b, v[2:]),
        "block_hoop_outer_pa": hoop(eb, nb, c, v[2:]),
        "sleeve_inner_d_change_m": 2 * (v[0] * a + v[1] / a),
        "block_outer_d_change_m": 2 * (v[2] * c + v[3] / c),
        "slip_force_n": x["friction"] * p * math.pi * 2 * b * x["length_m"],
    }


# counterbore -------------------------------------------------------------------

def draw_counterbore(r):
    n = int(r.integers(1, 9))
    return {
        "thickness_m": [between(r, 0.0078, 0.008) for _ in range(n)],
        "target_proud_m": between(r, 0, 4e-4),
        "depth_now_m": [between(r, 0.0070, 0.0078) for _ in range(n)],
        "deck_m": between(r, -5e-5, 0),
        "feed_sd_m": between(r, 1e-6, 4e-5),
        "gauge_sd_m": between(r, 0, 2e-5),
        "removal_m": between(r, 0, 2e-4),
        "clean_up_m": between(r, 0, 1e-4),
        "risk": between(r, 1e-4, 0.5),
    }


def solve_counterbore(x):
    sd = math.hypot(x["feed_sd_m"], x["gauge_sd_m"])
    need = x["clean_up_m"] - x["removal_m"] - x["deck_m"]
    depth = min(x["thickness_m"]) - x["target_proud_m"]
    return {
        "depth_m": depth,
        "to_go_m": depth - max(x["depth_now_m"]),
        "p_low": stats.norm.cdf(need, x["target_proud_m"], sd),
        "target_for_risk_m": need - stats.norm.ppf(x["risk"]) * sd,
    }


# seat: the rules of the physics text, written again --------------------------------

def draw_seat(r):
    n = int(r.integers(1, 9))
    t, d = 0.0080, 0.0078
    high = float(r.choice([0, 1e-5, 3e-5, 1.2e-4]))
    pulls = []
    height = t - d + 2e-4
    for _ in range(int(r.integers(0, 7))):
        height += (t - d + high - height) * between(r, 0.3, 1.0)
        loaded = None if r.random() < 0.3 else height - between(r, 1e-5, 4e-5)
        if r.random() < 0.04:
            loaded = height + between(r, 0, 6e-5)
        gauge = float(r.choice([0, 1.5e7, 1.7e7, 1.72e7], p=[0.1, 0.3, 0.3, 0.3]))
        pulls.append({"gauge_pa": gauge, "loaded_m": loaded, "relaxed_m": height})
    return {
        "thickness_m": [t + between(r, -5e-6, 5e-6) for _ in range(n)],
        "depth_m": [d + between(r, -5e-6, 5e-6) for _ in range(n)],
        "height_m": [t - d + high + between(r, -8e-6, 8e-6) for _ in range(n)],
        "shim_m": float(r.choice([0, 0, 5e-5])),
        "pulls": pulls,
        "u_height_m": between(r, 1e-6, 8e-6),
        "u_thickness_m": between(r, 1e-6, 5e-6),
        "u_depth_m": between(r, 1e-6, 1.5e-5),
        "gap_limit_m": between(r, 1e-5, 5e-5),
        "tilt_limit_m": between(r, 5e-6, 3e-5),
        "confidence": between(r, 0.6, 0.95),
    }


def solve_seat(x):
    t, d, h = (np.array(x[k]) for k in ("thickness_m", "depth_m", "height_m"))
    predicted = t + x["shim_m"] - d
    gap = h - predicted
    u = math.sqrt(x["u_height_m"] ** 2 + x["u_thickness_m"] ** 2 + x["u_depth_m"] ** 2)
    p = stats.norm.cdf((x["gap_limit_m"] - gap.mean()) / u)
    pulls, eps = x["pulls"], 1e-9
    relaxed = [q["relaxed_m"] for q in pulls]
    settle = [a - b for a, b in zip(relaxed, relaxed[1:])]
    back = [None if q["loaded_m"] is None else q["relaxed_m"] - q["loaded_m"] for q in pulls]
    uh = x["u_height_m"]
    # Without pressure it is no pull.
    real = [q for q in pulls if q["gauge_pa"] > 0]
    down = np.diff([q["relaxed_m"] for q in real])
    stopped = len(real) >= 3 and all(abs(s) <= 2 * math.sqrt(2) * uh + eps for s in down[-2:])
    if stopped and all(q["loaded_m"] is not None for q in real[-2:]):
        last = [q["relaxed_m"] - q["loaded_m"] for q in real[-2:]]
        stopped = abs(last[1] - last[0]) <= 4 * uh + eps
    if stopped:
        top = max(q["gauge_pa"] for q in real)
        stopped = all(q["gauge_pa"] >= 0.95 * top for q in real[-2:])
    in_the_way = any(b is not None and b < -4 * uh - eps for b in back)
    if pulls and abs(h.mean() - relaxed[-1]) > 2 * math.sqrt(2) * uh + eps:
        in_the_way = True
    tilt = np.ptp(gap)
    if min(gap.min(), gap.mean()) < -2 * u - eps:
        verdict = "undecided"
    elif not stopped:
        verdict = "pull_again"
    elif p <= 0.05 or tilt > x["tilt_limit_m"] + eps:
        verdict = "not_seated"
    elif gap.mean() <= x["gap_limit_m"] + eps and p >= x["confidence"] and not in_the_way:
        verdict = "seated"
    else:
        verdict = "undecided"
    return {
        "predicted_m": predicted, "gap_m": gap, "gap_mean_m": gap.mean(), "u_gap_m": u, "tilt_m": tilt,
        "settle_m": settle, "return_m": back, "stopped": bool(stopped), "p_seated": p, "verdict": verdict,
    }


# pairing: scipy's assignment on lexicographic costs --------------------------------

def draw_pairing(r):
    n, m = int(r.integers(1, 8)), int(r.integers(1, 8))
    tenth = 2.54e-6
    return {
        "sleeve_d_m": [0.108 + tenth * int(i) for i in r.integers(8, 30, n)],
        "bore_d_m": [0.108 + tenth * int(i) for i in r.integers(-8, 8, m)],
        "target_m": tenth * int(r.integers(8, 14)),
    }


def solve_pairing(x):
    s, b = np.array(x["sleeve_d_m"]), np.array(x["bore_d_m"])
    stock = s[:, None] - x["target_m"] - b[None, :]
    big = 1e3

    def least(ceiling):
        cost = np.where(stock < -1e-12, 1.0, 0.0) + np.where(stock > ceiling + 1e-12, big, 0.0)
        return cost[optimize.linear_sum_assignment(cost)].sum()

    fewest = least(np.inf)
    worst = next(v for v in np.sort(stock.ravel()) if least(v) <= fewest)
    cost = np.where(stock < -1e-12, 1.0, 0.0) + np.where(stock > worst + 1e-12, big, 0.0) + stock
    rows, cols = optimize.linear_sum_assignment(cost)
    return {"worst_stock_m": stock[rows, cols].max(), "total_stock_m": stock[rows, cols].sum()}


# scatter: the exact factor by quadrature and root finding --------------------------

FACTORS = {}


def factor(n):
    if n not in FACTORS:
        f = n - 1

        def r_of(z):
            x = z / math.sqrt(n)
            return optimize.brentq(lambda r: stats.norm.cdf(x + r) - stats.norm.cdf(x - r) - 0.95, 0, x + 9)

        def held(k):
            g = lambda z: 2 * stats.norm.pdf(z) * stats.chi2.sf(f * (r_of(z) / k) ** 2, f)
            return integrate.quad(g, 0, 8, epsabs=1e-9)[0] - 0.95

        FACTORS[n] = optimize.brentq(held, 1.5, 200, xtol=1e-9)
    return FACTORS[n]


def draw_scatter(r):
    return {"errors_m": [float(v) for v in r.normal(2e-6, 1e-5, int(r.choice([2, 3, 6, 11, 40, 201, 1000, 20000])))]}


def solve_scatter(x):
    e = np.array(x["errors_m"])
    half = factor(len(e)) * e.std(ddof=1)
    return {"n": len(e), "mean_m": e.mean(), "sd_m": e.std(ddof=1), "low_m": e.mean() - half, "high_m": e.mean() + half}


# closed forms ------------------------------------------------------------------

def draw_pull(r):
    inch = bool(r.integers(0, 2))
    outer = between(r, 0.1, 0.15)
    return {
        "gauge_pa": between(r, 0, 4e7), "ram_outer_d_m": between(r, 0.05, 0.1), "ram_inner_d_m": between(r, 0.01, 0.04),
        "rod": {"major_d_m": between(r, 0.016, 0.032), "pitch_m": between(r, 0.0015, 0.0035),
                "series": "inch" if inch else "metric", "length_m": between(r, 0.2, 1), "youngs_pa": 2.05e11},
        "ledge_outer_d_m": outer, "ledge_inner_d_m": outer - between(r, 0.002, 0.01),
        "flange_thickness_m": between(r, 0.003, 0.01), "flange_root_d_m": between(r, 0.09, 0.14),
    }


def solve_pull(x):
    rod, q = x["rod"], math.pi / 4
    force = x["gauge_pa"] * q * (x["ram_outer_d_m"] ** 2 - x["ram_inner_d_m"] ** 2)
    d, p = rod["major_d_m"], rod["pitch_m"]
    area = 0.7854 * (d - 0.9743 * p) ** 2 if rod["series"] == "inch" else q * (d - 0.9382 * p) ** 2
    ledge = q * (x["ledge_outer_d_m"] ** 2 - x["ledge_inner_d_m"] ** 2)
    return {
        "force_n": force, "rod_area_m2": area, "rod_stress_pa": force / area,
        "rod_stretch_m": force * rod["length_m"] / area / rod["youngs_pa"], "ledge_area_m2": ledge,
        "ledge_pressure_pa": force / ledge,
        "flange_shear_pa": force / (math.pi * x["flange_root_d_m"] * x["flange_thickness_m"]),
    }


def draw_deck(r):
    n = int(r.integers(1, 9))
    return {
        "low_m": [0.0] + [between(r, -1e-4, 0) for _ in range(n)],
        "holes": [{"deck_m": between(r, -1e-4, 0), "height_m": between(r, -5e-5, 3e-4), "thickness_m": 0.008} for _ in range(n)],
        "clean_up_m": between(r, 0, 1e-4), "planned_m": None if r.random() < 0.5 else between(r, 0, 4e-4),
    }


def solve_deck(x):
    least = x["clean_up_m"] + max(max(-v for v in x["low_m"]), max(-(h["deck_m"] + h["height_m"]) for h in x["holes"]))
    removal = least if x["planned_m"] is None else x["planned_m"]
    cut = [h["deck_m"] + h["height_m"] + removal for h in x["holes"]]
    left = [h["thickness_m"] - max(c, 0) for h, c in zip(x["holes"], cut)]
    return {"removal_least_m": least, "removal_m": removal, "flange_cut_m": cut, "flange_left_m": left}


def draw_engine(r):
    return {"bore_d_m": between(r, 0.08, 0.15), "stroke_m": between(r, 0.08, 0.17), "compression_ratio": between(r, 12, 20),
            "removal_m": between(r, 0, 5e-4), "gasket_change_m": between(r, -2e-4, 4e-4), "protrusion_m": between(r, -1e-4, 6e-4)}


def solve_engine(x):
    area = math.pi * x["bore_d_m"] ** 2 / 4
    swept = area * x["stroke_m"]
    left = swept / (x["compression_ratio"] - 1) + area * (x["gasket_change_m"] - x["removal_m"])
    return {"compression_ratio_after": 1 + swept / left, "protrusion_after_m": x["protrusion_m"] + x["removal_m"],
            "swept_m3": swept, "clearance_m3_after": left}


def draw_hatch(r):
    x = {"bore_d_m": between(r, 0.08, 0.15), "stroke_m": between(r, 0.03, 0.2), "rev_per_s": between(r, 0.5, 6)}
    x.update({"cycles_per_s": between(r, 0.2, 3)} if r.random() < 0.5 else {"included_rad": between(r, 0.1, 2.5)})
    return x


def solve_hatch(x):
    turn = math.pi * x["bore_d_m"] * x["rev_per_s"]
    included = x.get("included_rad") or 2 * math.atan2(2 * x["stroke_m"] * x["cycles_per_s"], turn)
    cycles = x.get("cycles_per_s") or turn * math.tan(included / 2) / 2 / x["stroke_m"]
    return {"cycles_per_s": cycles, "included_rad": included, "to_horizontal_rad": included / 2}


FAMILIES = [
    Family("form", "numpy", draw_form, solve_form, floor=1e-16),
    Family("fit", "scipy.stats.norm", draw_fit, solve_fit, special={"p_inside": (1e-6, 1e-9)}),
    Family("press_fit", "numpy.linalg on Lame's constants", draw_press, solve_press, share=1e-7),
    Family("counterbore", "scipy.stats.norm", draw_counterbore, solve_counterbore),
    Family("seat", "rules written again, scipy.stats.norm", draw_seat, solve_seat, cases=400),
    Family("pairing", "scipy.optimize.linear_sum_assignment", draw_pairing, solve_pairing, floor=1e-12),
    Family("scatter", "scipy quadrature and chi2", draw_scatter, solve_scatter, share=2e-6, cases=60),
    Family("pull", "closed form", draw_pull, solve_pull),
    Family("deck", "closed form", draw_deck, solve_deck),
    Family("engine_effect", "closed form", draw_engine, solve_engine),
    Family("cross_hatch", "closed form", draw_hatch, solve_hatch),
]
