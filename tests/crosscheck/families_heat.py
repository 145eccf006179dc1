"""Families of heat: scipy's interpolation, quadrature and stiff solver,
CoolProp's nitrogen and air, ht's free convection."""

import math

import CoolProp.CoolProp as cp
import ht
import numpy as np
from scipy import integrate, interpolate

from families import Family, between

# The project's thermal reference, section A4, typed again.
CAST = ([70, 77.36, 100, 125, 150, 200, 250, 293.15, 350, 400, 450, 500],
        [117.0, 141.4, 211.8, 275.0, 323.2, 389.4, 433.2, 461.6, 492.5, 516.8, 540.0, 563.2])
ALUMINIUM = ([77, 100, 150, 200, 250, 293, 350, 400, 500], [340, 481, 684, 797, 859, 897, 930, 949, 997])
NODES = [77, 100, 150, 200, 250, 293, 400, 500]
MATERIALS = {
    "gray_iron": (7200, 0.00178, CAST, [34, 38, 43, 46, 47.5, 48, 46.5, 45]),
    "ductile_iron_ferritic": (7100, 0.00181, CAST, [22, 25, 30, 33, 35, 36, 36.5, 36.5]),
    "ductile_iron_pearlitic": (7200, 0.00178, CAST, [19, 22, 27, 30, 32, 33, 33.5, 33.5]),
    "compacted_iron": (7100, 0.00180, CAST, [27, 30, 35, 38, 40, 41, 40.5, 40]),
    "aluminium_a356": (2680, None, ALUMINIUM, [82, 96, 118, 133, 144, 151, 158, 160]),
}
# Solids that are not drawn by chance (families_alloys.py): as above, or e(T) itself.
OTHERS = {}


class Solid:
    """A material of the reference, or one of constants."""

    def __init__(self, part):
        if "properties" in part:
            p = part["properties"]
            self.density = p["density_kg_m3"]
            self.cp = lambda t: np.full_like(np.asarray(t, float), p["specific_heat_j_kgk"])
            self.k = lambda t: np.full_like(np.asarray(t, float), p["conductivity_w_mk"])
            self.e = lambda t: p["expansion_per_k"] * (np.asarray(t, float) - 293.15)
            return
        self.density, c77, (tc, c), k = {**MATERIALS, **OTHERS}[part["material"]]
        curve = interpolate.PchipInterpolator(tc, c)
        slope = float(curve.derivative()(tc[0]))
        self.cp = lambda t: np.where(np.asarray(t) < tc[0], c[0] + slope * (np.asarray(t) - tc[0]), curve(np.maximum(t, tc[0])))
        k_curve = interpolate.PchipInterpolator(NODES, k)
        self.k = lambda t: k_curve(np.clip(t, NODES[0], NODES[-1]))
        if callable(c77):
            self.e = c77
        elif c77 is None:
            def nist(t):
                return -412.77 - 0.30389 * t + 8.7696e-3 * t**2 - 9.9821e-6 * t**3

            def e(t):
                t = np.asarray(t, float)
                above = 22.64e-6 * (t - 293.15) + 0.975e-8 * (t - 293.15) ** 2
                return 0.9416 * np.where(t < 293.15, (nist(t) - nist(293.15)) * 1e-5, above)

            self.e = e
        else:
            s = np.polynomial.Polynomial([0, 0.5994561, 0.0335291, -0.0044691, 0.0018723, -0.0007483, 0.000167])
            self.e = lambda t: c77 * s((np.asarray(t, float) - 293.15) / 100)


def some_solid(r):
    if r.random() < 0.25:
        return {"properties": {"density_kg_m3": between(r, 2500, 8000), "specific_heat_j_kgk": between(r, 300, 900),
                               "conductivity_w_mk": between(r, 15, 150), "expansion_per_k": between(r, 9e-6, 1.3e-5)}}
    return {"material": str(r.choice(list(MATERIALS)))}


# contraction -------------------------------------------------------------------

def draw_contraction(r):
    return {"material": str(r.choice(list(MATERIALS))), "length_m": between(r, 0.01, 0.5), "from_k": between(r, 75, 495),
            "to_k": between(r, 75, 495)}


def solve_contraction(x):
    e = Solid(x).e
    strain = (1 + e(x["to_k"])) / (1 + e(x["from_k"])) - 1
    return {"strain": float(strain), "change_m": float(strain * x["length_m"])}


# joint and oxygen --------------------------------------------------------------

def draw_joint(r):
    x = {"k_sleeve_w_mk": between(r, 20, 60), "k_block_w_mk": between(r, 20, 160), "sigma_m": between(r, 3e-7, 6e-6),
         "pressure_pa": between(r, 2e5, 9e6), "hardness_pa": between(r, 1e9, 4e9),
         "gas_k_w_mk": cp.PropsSI("L", "T", between(r, 280, 420), "P", 101325, "Air"), "gas_jump_m": between(r, 1e-7, 5e-7)}
    if r.random() < 0.5:
        x["slope"] = between(r, 0.05, 0.3)
    return x


def solve_joint(x):
    m = x.get("slope", 0.125 * (x["sigma_m"] * 1e6) ** 0.402)
    k = 2 / (1 / x["k_sleeve_w_mk"] + 1 / x["k_block_w_mk"])
    ratio = x["pressure_pa"] / x["hardness_pa"]
    contact = 1.25 * k * m / x["sigma_m"] * ratio**0.95
    y = 1.53 * x["sigma_m"] * ratio**-0.097
    gap = x["gas_k_w_mk"] / (y + x["gas_jump_m"])
    return {"h_contact_w_m2k": contact, "h_gap_w_m2k": gap, "h_joint_w_m2k": contact + gap, "separation_m": y}


def draw_oxygen(r):
    return {"room_m3": between(r, 30, 500), "nitrogen_l": between(r, 0, 40), "room_k": between(r, 275, 310),
            "air_changes_per_h": float(r.choice([0, between(r, 0.2, 8)])), "release_s": between(r, 30, 7200)}


def solve_oxygen(x):
    gas = cp.PropsSI("D", "T", 77.355, "Q", 0, "Nitrogen") / cp.PropsSI("D", "T", x["room_k"], "P", 101325, "Nitrogen")
    v = x["nitrogen_l"] * 1e-3 * gas
    rate, vent = v / x["release_s"], x["room_m3"] * x["air_changes_per_h"] / 3600
    mixed = 0.2095 * math.exp(-v / x["room_m3"])
    least = mixed
    if rate < vent:
        f = lambda t, c: [-(rate / x["room_m3"]) * 0.2095 - vent / x["room_m3"] * (c[0] - 0.2095)]
        least = integrate.solve_ivp(f, (0, x["release_s"]), [0.2095], rtol=1e-10, atol=1e-12).y[0, -1]
    return {"fraction_sudden": max(0, 0.2095 * (1 - v / x["room_m3"])), "fraction_mixed": mixed, "fraction_least": least,
            "litres_for_195": x["room_m3"] * (1 - 0.195 / 0.2095) / gas * 1e3}


# chill -------------------------------------------------------------------------

def draw_chill(r):
    outer = between(r, 0.08, 0.15)
    return {**some_solid(r), "inner_d_m": outer - 2 * between(r, 0.002, 0.008), "outer_d_m": outer,
            "length_m": between(r, 0.1, 0.3), "start_k": between(r, 120, 310)}


def quench(dt, film=1.0, least=30.0):
    boil = lambda d: 160e3 * (d / 10) ** 3
    h = lambda d: film * 130 * (200 / d) ** 0.25 * d
    if dt <= 10:
        return max(boil(dt), 250 * dt)
    if dt >= least:
        return h(dt)
    line = interpolate.interp1d(np.log([10, least]), np.log([boil(10), h(least)]))
    return math.exp(line(math.log(dt)))


def solve_chill(x):
    solid = Solid(x)
    a, b, length = x["inner_d_m"], x["outer_d_m"], x["length_m"]
    mass = solid.density * math.pi / 4 * (b * b - a * a) * length
    face = math.pi * (a + b) * length
    nodes = [2, 10, 20, 30, 45, 72.645]
    end = x["start_k"] - 77.355

    def time(film, least):
        f = lambda d: float(solid.cp(77.355 + d)) / quench(d, film, least)
        inside = [n for n in nodes if 2 < n < end]
        return mass / face * integrate.quad(f, 2, end, points=inside, limit=400, epsrel=1e-7)[0]

    heat = mass * integrate.quad(lambda t: float(solid.cp(t)), 77.355, x["start_k"], limit=400)[0]
    kg = heat / 199.18e3
    return {"quiet_s": time(1, 30), "quiet_low_s": time(1.3, 45), "quiet_high_s": time(0.7, 20), "mass_kg": mass,
            "heat_j": heat, "nitrogen_kg": kg, "nitrogen_l": kg / 806.1 * 1e3,
            "nitrogen_practical_l": heat / (199.18e3 + 113.45e3) / 806.1 * 1e3}


# cold_drop: method of lines on a fine uniform grid, scipy's BDF ---------------------

def draw_drop(r):
    outer = between(r, 0.09, 0.14)
    bore = outer - between(r, 1.5e-5, 6e-5)
    room = between(r, 283, 303)
    x = {"sleeve": {**some_solid(r), "inner_d_m": outer - 2 * between(r, 0.0023, 0.0064), "outer_d_m": outer,
                    "length_m": between(r, 0.12, 0.28)},
         "block": {**some_solid(r), "bore_d_m": bore, "outer_d_m": bore + 2 * between(r, 0.006, 0.03)},
         "bath_k": 77.355, "room_k": room, "block_k": room + between(r, -5, 15), "carry_s": between(r, 0, 30)}
    if r.random() < 0.4:
        x["air_w_m2k"] = between(r, 5, 40)
    return x


def k_air(t):
    return 2.64638e-3 * t**1.5 / (t + 245.4 * 10 ** (-12 / t))


def face(ts, tr, length):
    """Heat-transfer coefficient of a face: ht's Churchill-Chu, frost, radiation."""
    f = 0.5 * (ts + tr)
    rho = 101325 * 0.0289647 / (8.314463 * f)
    mu = 1.458e-6 * f**1.5 / (f + 110.4)
    k = k_air(f)
    pr = mu * 1005 / k
    gr = 9.80665 * abs(ts - tr) / f * length**3 * rho**2 / mu**2
    nu = ht.Nu_vertical_plate_Churchill(Pr=pr, Gr=max(gr, 1e-9))
    return 1.06 * nu * k / length + 0.8 * 5.670374419e-8 * (ts**2 + tr**2) * (ts + tr)


class Ring:
    def __init__(self, solid, inner, outer, cells):
        self.s = solid
        self.f = np.linspace(inner / 2, outer / 2, cells + 1)
        self.m = 0.5 * (self.f[1:] + self.f[:-1])
        self.area = 0.5 * (self.f[1:] ** 2 - self.f[:-1] ** 2)
        self.w = self.area / self.area.sum()

    def inner_heat(self, t):
        k = self.s.k(t)
        mean = 2 * k[1:] * k[:-1] / (k[1:] + k[:-1])
        q = self.f[1:-1] * mean * np.diff(t) / np.diff(self.m)
        return np.concatenate([[0], q]) * -1 + np.concatenate([q, [0]]), k

    def strain(self, t):
        return float(np.dot(self.w, self.s.e(t)))


def solve_drop(x, sleeve_cells=30, block_cells=60, held=False):
    sp, bp = x["sleeve"], x["block"]
    sleeve = Ring(Solid(sp), sp["inner_d_m"], sp["outer_d_m"], sleeve_cells)
    block = Ring(Solid(bp), bp["bore_d_m"], bp["outer_d_m"], block_cells)
    room, n = x["room_k"], sleeve_cells

    def into_face(t, radius, length):
        h = x["air_w_m2k"] if "air_w_m2k" in x else face(t, room, length)
        return radius * h * (room - t)

    def clearance(ts, eb):
        return bp["bore_d_m"] * (1 + eb) - sp["outer_d_m"] * (1 + sleeve.strain(ts))

    def carry(_, t):
        q, _k = sleeve.inner_heat(t)
        q[0] += into_face(t[0], sleeve.f[0], sp["length_m"])
        q[-1] += into_face(t[-1], sleeve.f[-1], sp["length_m"])
        return q / (sleeve.s.density * sleeve.s.cp(t) * sleeve.area)

    def in_bore(t, joint):
        ts, tb = t[:n], t[n:]
        q, k = sleeve.inner_heat(ts)
        q[0] += into_face(ts[0], sleeve.f[0], sp["length_m"])
        if held:
            hot, rb, eb = x["block_k"], 0.0, float(block.s.e(x["block_k"]))
        else:
            qb, kb = block.inner_heat(tb)
            hot, eb = tb[0], block.strain(tb)
            rb = (block.m[0] - block.f[0]) / kb[0] * sleeve.f[-1] / block.f[0]
        rs = (sleeve.f[-1] - sleeve.m[-1]) / k[-1]
        if joint:
            flux = (hot - ts[-1]) / (1 / 15e3 + rs + rb)
        else:
            gap = max(0.5 * clearance(ts, eb), 1e-7)
            tm = 0.5 * (ts[-1] + hot)
            for _ in range(4):
                h = k_air(tm) / (gap + 0.18e-6)
                flux = (hot - ts[-1]) / (1 / h + rs + rb)
                tm = 0.5 * (ts[-1] + flux * rs + hot - flux * rb)
        q[-1] += sleeve.f[-1] * flux
        rate = q / (sleeve.s.density * sleeve.s.cp(ts) * sleeve.area)
        if held:
            return rate
        qb[0] -= sleeve.f[-1] * flux
        return np.concatenate([rate, qb / (block.s.density * block.s.cp(tb) * block.area)])

    t = np.full(n, x["bath_k"])
    start = bp["bore_d_m"] * (1 + float(block.s.e(x["block_k"])))
    bath = start - sp["outer_d_m"] * (1 + sleeve.strain(t))
    if x["carry_s"] > 0:
        t = integrate.solve_ivp(carry, (0, x["carry_s"]), t, method="LSODA", rtol=1e-7, atol=1e-5).y[:, -1]
    entry = start - sp["outer_d_m"] * (1 + sleeve.strain(t))
    y = t if held else np.concatenate([t, np.full(block_cells, x["block_k"])])

    def touch(_, y):
        eb = float(block.s.e(x["block_k"])) if held else block.strain(y[n:])
        return clearance(y[:n], eb)

    touch.terminal = True
    def level(_, y):
        mean_b = x["block_k"] if held else np.dot(block.w, y[n:])
        return abs(np.dot(sleeve.w, y[:n]) - mean_b) - 1

    def run(y, joint, events):
        f = lambda _, y: in_bore(y, joint)
        return integrate.solve_ivp(f, (0, 3600), y, method="BDF", rtol=1e-6, atol=1e-4, events=events)

    free = run(y, False, [touch, level])
    grips = len(free.t_events[0]) > 0
    grip = float(free.t_events[0][0]) if grips else None
    if held:
        return grip
    length = sp["length_m"]
    # What the sleeve grows, and what a warmed block shrinks back.
    e_room = float(sleeve.s.e(room)) - (float(block.s.e(room)) - float(block.s.e(x["block_k"])))
    always = {"clearance_bath_m": bath, "clearance_entry_m": entry,
              "climb_ceiling_m": length * (e_room - float(sleeve.s.e(x["bath_k"]))),
              "grip_slow_s": solve_drop(x, sleeve_cells, block_cells, held=True)}
    if not grips:
        return {**always, "grip_s": None, "climb_m": None}
    y = free.y_events[0][0]
    mean_s, mean_b = float(np.dot(sleeve.w, y[:n])), float(np.dot(block.w, y[n:]))
    if len(free.t_events[1]):
        equal = float(free.t_events[1][0])
    else:
        level.terminal = True
        equal = grip + float(run(y, True, [level]).t_events[0][0])
    return {**always, "grip_s": grip, "grip_sleeve_mean_k": mean_s, "grip_block_mean_k": mean_b,
            "climb_m": length * (e_room - sleeve.strain(y[:n])), "equal_s": equal, "touch_s": grip, "left_home_s": grip, "bow_m": 0.0}


FAMILIES = [
    Family("contraction", "numpy polynomials", draw_contraction, solve_contraction, share=1e-9),
    Family("joint", "closed form, CoolProp's air", draw_joint, solve_joint),
    Family("oxygen", "CoolProp's nitrogen, scipy.integrate", draw_oxygen, solve_oxygen, share=1.5e-3),
    Family("chill", "scipy quadrature and pchip", draw_chill, solve_chill, share=1e-3),
    Family("cold_drop", "scipy BDF on 90 cells, ht's convection", draw_drop, solve_drop, cases=40, share=0.01,
           special={"climb_m": (0.01, 3e-7), "grip_sleeve": (0.002, 0), "grip_block": (0.002, 0)}),
]
