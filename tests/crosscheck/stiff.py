"""One cold drop by scipy's stiff solvers, on as many cells as the core takes,
tuned to 0.1 % of the grip time: `scipy<TAB>method<TAB>ms` a method.

The same equations as families_heat.py, written for speed: arrays, tabulated
properties, the banded Jacobian left to the solver."""

import time

import numpy as np
from scipy import integrate

from families_heat import Ring, Solid, face, k_air

CASE = {
    "sleeve": {"material": "gray_iron", "inner_d_m": 0.0985, "outer_d_m": 0.1067, "length_m": 0.22},
    "block": {"material": "gray_iron", "bore_d_m": 0.10667, "outer_d_m": 0.12667},
    "room_k": 293.15, "bath_k": 77.355, "carry_s": 10.0,
}


class Problem:
    def __init__(self, sleeve_cells, block_cells):
        s, b = CASE["sleeve"], CASE["block"]
        iron = Solid(s)
        self.sleeve = Ring(iron, s["inner_d_m"], s["outer_d_m"], sleeve_cells)
        self.block = Ring(iron, b["bore_d_m"], b["outer_d_m"], block_cells)
        self.n = sleeve_cells
        self.t = np.arange(70.0, 501.0)
        self.e, self.cp, self.k = iron.e(self.t), iron.density * iron.cp(self.t), iron.k(self.t)
        faces = np.linspace(70, 300, 200)
        self.face_t = faces
        self.face_q = np.array([face(t, CASE["room_k"], s["length_m"]) * (CASE["room_k"] - t) for t in faces])

    def air(self, t):
        return np.interp(t, self.face_t, self.face_q)

    def conduct(self, ring, t, k):
        mean = 2 * k[1:] * k[:-1] / (k[1:] + k[:-1])
        q = ring.f[1:-1] * mean * np.diff(t) / np.diff(ring.m)
        out = np.zeros_like(t)
        out[:-1] += q
        out[1:] -= q
        return out

    def carry(self, _, t):
        q = self.conduct(self.sleeve, t, np.interp(t, self.t, self.k))
        q[0] += self.sleeve.f[0] * self.air(t[0])
        q[-1] += self.sleeve.f[-1] * self.air(t[-1])
        return q / (np.interp(t, self.t, self.cp) * self.sleeve.area)

    def gap(self, _, y):
        e = np.interp(y, self.t, self.e)
        es, eb = self.sleeve.w @ e[:self.n], self.block.w @ e[self.n:]
        return CASE["block"]["bore_d_m"] * (1 + eb) - CASE["sleeve"]["outer_d_m"] * (1 + es)

    def bore(self, _, y):
        n, k = self.n, np.interp(y, self.t, self.k)
        qs = self.conduct(self.sleeve, y[:n], k[:n])
        qb = self.conduct(self.block, y[n:], k[n:])
        qs[0] += self.sleeve.f[0] * self.air(y[0])
        g = max(0.5 * self.gap(0, y), 1e-7)
        rs = (self.sleeve.f[-1] - self.sleeve.m[-1]) / k[n - 1]
        rb = (self.block.m[0] - self.block.f[0]) / k[n]
        h = k_air(0.5 * (y[n - 1] + y[n])) / (g + 0.18e-6)
        flux = self.sleeve.f[-1] * (y[n] - y[n - 1]) / (1 / h + rs + rb)
        qs[-1] += flux
        qb[0] -= flux
        cp = np.interp(y, self.t, self.cp)
        return np.concatenate([qs / (cp[:n] * self.sleeve.area), qb / (cp[n:] * self.block.area)])

    def solve(self, method, rtol):
        atol = 100 * rtol
        start = np.full(self.n, CASE["bath_k"])
        t = integrate.solve_ivp(self.carry, (0, CASE["carry_s"]), start, method=method, rtol=rtol, atol=atol).y[:, -1]
        y = np.concatenate([t, np.full(len(self.block.w), CASE["room_k"])])
        touch = lambda t, y: self.gap(t, y)
        touch.terminal = True
        run = integrate.solve_ivp(self.bore, (0, 600), y, method=method, rtol=rtol, atol=atol, events=touch, dense_output=True)
        grip = run.t_events[0][0]
        run.sol(np.linspace(0, grip, 60))
        return grip


def main():
    problem = Problem(4, 10)
    exact = Problem(4, 10).solve("Radau", 1e-8)
    for method in ("LSODA", "BDF", "Radau"):
        for rtol in (1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5):
            if abs(problem.solve(method, rtol) / exact - 1) <= 1e-3:
                break
        times = []
        for _ in range(25):
            begun = time.perf_counter()
            problem.solve(method, rtol)
            times.append(time.perf_counter() - begun)
        print(f"scipy\t{method}\t{sorted(times)[len(times) // 2] * 1e3:.3f}")


if __name__ == "__main__":
    main()
