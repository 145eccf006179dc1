"""A leaning sleeve in two dimensions: radius and angle, cell by cell, by scipy's
BDF on a grid four times as fine round the ring as the core's sectors, local
coefficients in every cell, the carry by the one-dimensional reference."""

import math

import numpy as np
from scipy import integrate

from families import Family, between
from families_heat import Ring, Solid, face, k_air, some_solid


def draw_lean(r):
    outer = between(r, 0.09, 0.14)
    bore = outer - between(r, 2e-5, 4.5e-5)
    room = between(r, 285, 300)
    x = {"sleeve": {"material": "gray_iron", "inner_d_m": outer - 2 * between(r, 0.0023, 0.0055), "outer_d_m": outer,
                    "length_m": between(r, 0.12, 0.26)},
         "block": {**some_solid(r), "bore_d_m": bore, "outer_d_m": bore + 2 * between(r, 0.008, 0.025)},
         "bath_k": 77.355, "room_k": room, "block_k": room + between(r, 0, 12), "carry_s": between(r, 4, 14),
         "offset": float(r.choice([1.0, 1.0, between(r, 0.2, 1.0)])), "insert_s": between(r, 0, 4)}
    if r.random() < 0.4:
        x["frost_m"] = between(r, 0, 1.5e-5)
    if r.random() < 0.3:
        x["sleeve"]["material"] = "ductile_iron_pearlitic"
    return x


class Disc:
    """A ring in cells of radius and angle over half a circle."""

    def __init__(self, solid, inner, outer, radial, angles):
        self.ring = Ring(solid, inner, outer, radial)
        self.s, self.radial, self.angles = solid, radial, angles
        self.wide = math.pi / angles
        self.log = np.log(self.ring.f[1:] / self.ring.f[:-1])

    def heat(self, t):
        """Heat into each cell by conduction, W per metre and radian; t is (radial, angle, any)."""
        k = self.s.k(t)
        q = np.zeros_like(t)
        r = self.ring
        through = r.f[1:-1, None, None] * 2 * k[1:] * k[:-1] / (k[1:] + k[:-1]) * np.diff(t, axis=0) / np.diff(r.m)[:, None, None]
        q[:-1] += through
        q[1:] -= through
        round_ = 0.5 * (k[:, 1:] + k[:, :-1]) * self.log[:, None, None] / self.wide**2 * np.diff(t, axis=1)
        q[:, :-1] += round_
        q[:, 1:] -= round_
        return q, k

    def store(self, t):
        return self.s.density * self.s.cp(t) * self.ring.area[:, None, None]

    def mean(self, t):
        return np.einsum("i,ijk->k", self.ring.w, t) / self.angles


def solve_lean(x, radial=6, block_radial=14, angles=32):
    sp, bp = x["sleeve"], x["block"]
    sleeve = Disc(Solid(sp), sp["inner_d_m"], sp["outer_d_m"], radial, angles)
    block = Disc(Solid(bp), bp["bore_d_m"], bp["outer_d_m"], block_radial, angles)
    room, length, frost, lean = x["room_k"], sp["length_m"], x.get("frost_m", 0.0), x["offset"]
    warm = x.get("block_k", room)
    thin = Ring(Solid(sp), sp["inner_d_m"], sp["outer_d_m"], radial)

    def carry(_, t):
        q, _k = thin.inner_heat(t)
        q[0] += thin.f[0] * face(t[0], room, length) * (room - t[0])
        q[-1] += thin.f[-1] * face(t[-1], room, length) * (room - t[-1])
        return q / (thin.s.density * thin.s.cp(t) * thin.area)

    t = integrate.solve_ivp(carry, (0, x["carry_s"]), np.full(radial, x["bath_k"]), method="LSODA", rtol=1e-7, atol=1e-5).y[:, -1]
    angle = (np.arange(angles) + 0.5) * sleeve.wide
    share = 1 - lean * np.cos(angle)
    n = radial * angles
    air = np.linspace(70, 520, 451)
    inside = np.array([face(a, room, length) if abs(a - room) > 1e-9 else face(a + 1e-6, room, length) for a in air])

    def parts(y):
        y = y.reshape(y.shape[0], -1)
        return y[:n].reshape(radial, angles, -1), y[n:].reshape(block_radial, angles, -1)

    def clearance(ts, tb):
        return bp["bore_d_m"] * (1 + block.mean(block.s.e(tb))) - sp["outer_d_m"] * (1 + sleeve.mean(sleeve.s.e(ts)))

    def bow(ts):
        strain = np.einsum("i,ijk->jk", sleeve.ring.w, sleeve.s.e(ts))
        first = 2 / angles * (np.cos(angle)[:, None] * strain).sum(axis=0)
        return 2 * first / (0.5 * (sp["inner_d_m"] + sp["outer_d_m"])) * length**2 / 8

    def rates(_, y):
        ts, tb = parts(y)
        qs, ks = sleeve.heat(ts)
        qb, kb = block.heat(tb)
        qs[0] += sleeve.ring.f[0] * np.interp(ts[0], air, inside) * (room - ts[0])
        gap = np.maximum(0.5 * clearance(ts, tb)[None, :] * share[:, None] - frost, 0)
        rs = (sleeve.ring.f[-1] - sleeve.ring.m[-1]) / ks[-1]
        rb = (block.ring.m[0] - block.ring.f[0]) / kb[0] * sleeve.ring.f[-1] / block.ring.f[0]
        tm = 0.5 * (ts[-1] + tb[0])
        for _i in range(3):
            h = np.minimum(k_air(tm) / (gap + 0.18e-6), 15e3)
            flux = (tb[0] - ts[-1]) / (1 / h + rs + rb)
            tm = 0.5 * (ts[-1] + flux * rs + tb[0] - flux * rb)
        qs[-1] += sleeve.ring.f[-1] * flux
        qb[0] -= sleeve.ring.f[-1] * flux
        out = np.concatenate([(qs / sleeve.store(ts)).reshape(n, -1), (qb / block.store(tb)).reshape(block_radial * angles, -1)])
        return out if y.ndim > 1 else out[:, 0]

    def grip(_, y):
        return float(clearance(*parts(y))[0])

    def touch(_, y):
        ts, tb = parts(y)
        return float((clearance(ts, tb) - 2 * frost - bow(ts))[0])

    grip.terminal = True
    y0 = np.concatenate([np.repeat(t, angles), np.full(block_radial * angles, warm)])
    run = integrate.solve_ivp(rates, (0, 3600), y0, method="BDF", rtol=1e-5, atol=1e-3, vectorized=True, events=[grip, touch],
                              max_step=2.0)
    y = run.y_events[0][0]
    ts, tb = parts(y)
    after = float(run.t_events[0][0])
    first = float(run.t_events[1][0]) if len(run.t_events[1]) else after
    until = run.y[:, run.t <= first]
    bows = bow(parts(until)[0])
    es, eb = sleeve.s.e, block.s.e
    climb = length * ((float(es(room)) - float(sleeve.mean(es(ts))[0])) - (float(eb(room)) - float(eb(warm))))
    return {"grip_s": after, "touch_s": first, "left_home_s": first - x.get("insert_s", 0), "bow_m": float(bows.max()),
            "grip_sleeve_mean_k": float(sleeve.mean(ts)[0]), "climb_m": climb}


FAMILIES = [
    Family("cold_drop", "two dimensions, leaning: scipy BDF on 640 cells", draw_lean, solve_lean, cases=8, share=0.05,
           special={"left_home": (0.05, 0.2), "grip_sleeve": (0.01, 0), "climb_m": (0.03, 3e-7), "bow": (0.07, 5e-7)}),
]
