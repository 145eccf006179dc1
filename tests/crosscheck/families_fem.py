"""The bore profile against scikit-fem: nine-node quadrilaterals on a fine graded
mesh, sleeve and block coupled by eliminating the joint's unknowns, contact by
opening what pulls and closing what overlaps."""

import numpy as np
import scipy.sparse as sparse
from scipy.sparse.linalg import spsolve
from skfem import Basis, BilinearForm, ElementQuad2, ElementVector, MeshQuad, asm
from skfem.helpers import grad

from families import Family, between

JOINTS = ["frictionless", "stuck"]


def draw(r):
    outer = between(r, 0.09, 0.14)
    wall = between(r, 0.0025, 0.006)
    thick = between(r, 0.0035, 0.008)
    width = between(r, 0.0018, 0.004)
    ring = outer * between(r, 1.35, 1.7)
    length = between(r, 0.11, 0.2)
    below = float(r.choice([0.0, 0.02]))
    jacket = None
    if r.random() < 0.4:
        jacket = {"wall_m": between(r, 0.006, 0.010), "deck_m": between(r, 0.011, 0.018), "bottom_m": between(r, 0.011, 0.018)}
    top = length + thick
    return {
        "sleeve": {"inner_d_m": outer - 2 * wall, "outer_d_m": outer, "length_m": length,
                   "flange_outer_d_m": outer + 2 * width, "flange_thickness_m": thick,
                   "youngs_pa": between(r, 1.1e11, 1.8e11), "poisson": between(r, 0.24, 0.3)},
        "block": {"outer_d_m": ring, "youngs_pa": between(r, 7e10, 1.5e11), "poisson": between(r, 0.24, 0.33),
                  "below_m": below, "jacket": jacket},
        "interference_m": between(r, 1.5e-5, 5e-5), "joint": str(r.choice(JOINTS)),
        "clamp_n": float(r.choice([0.0, 0.0, 2e4])),
        "z_m": [0.0, thick] + [thick + 0.0127 + (top - 2 * thick - 0.02) * f for f in (0, 0.25, 0.5, 0.8)],
    }


def graded(points, first, growth, largest):
    out = [points[0]]
    for a, b in zip(points, points[1:]):
        half, sizes, h = (b - a) / 2, [], first
        while sum(sizes) + h < half:
            sizes.append(h)
            h = min(h * growth, largest)
        sizes = np.array((sizes or [half]) + [])
        sizes *= half / sizes.sum()
        out += list(a + np.cumsum(np.concatenate([sizes, sizes[::-1]])))
        out[-1] = b
    return np.array(out)


@BilinearForm
def stiffness(u, v, w):
    r = w.x[0]
    lam, mu = w["lam"], w["mu"]
    du, dv = grad(u), grad(v)
    e = [du[0, 0], u[0] / r, du[1, 1], du[0, 1] + du[1, 0]]
    f = [dv[0, 0], v[0] / r, dv[1, 1], dv[0, 1] + dv[1, 0]]
    trace = e[0] + e[1] + e[2]
    s = [lam * trace + 2 * mu * e[i] for i in range(3)] + [mu * e[3]]
    return sum(a * b for a, b in zip(s, f)) * r * 2 * np.pi


class Body:
    def __init__(self, xs, ys, keep, youngs, poisson):
        mesh = MeshQuad.init_tensor(xs, ys)
        centre = mesh.p[:, mesh.t].mean(axis=1)
        mesh = mesh.restrict(np.nonzero(keep(*centre))[0])
        self.basis = Basis(mesh, ElementVector(ElementQuad2()), intorder=4)
        lam = youngs * poisson / (1 + poisson) / (1 - 2 * poisson)
        self.k = asm(stiffness, self.basis, lam=lam, mu=youngs / 2 / (1 + poisson)).tocsr()
        self.at = self.basis.doflocs
        self.axis = np.zeros(self.basis.N, int)
        for name, axis in (("u^1", 0), ("u^2", 1)):
            for dofs in (self.basis.nodal_dofs, self.basis.facet_dofs, self.basis.interior_dofs):
                self.axis[dofs[axis]] = axis

    def find(self, axis, where):
        i = np.nonzero((self.axis == axis) & where(self.at[0], self.at[1]))[0]
        return i[np.lexsort((self.at[1, i], self.at[0, i]))]


def solve(x):
    s, k = x["sleeve"], x["block"]
    a, b, f, c = (d / 2 for d in (s["inner_d_m"], s["outer_d_m"], s["flange_outer_d_m"], k["outer_d_m"]))
    foot, ledge = k["below_m"], k["below_m"] + s["length_m"]
    top = ledge + s["flange_thickness_m"]
    jacket = k["jacket"]
    heights, radii = {0.0, foot, ledge, top}, {a, b, f, c}
    if jacket:
        heights |= {jacket["bottom_m"], top - jacket["deck_m"]}
        radii.add(b + jacket["wall_m"])
    wall, tiny = b - a, 1e-9
    xs = np.concatenate([np.linspace(a, b, 5)[:-1], graded(sorted(r for r in radii if r >= b), wall / 4, 1.5, 0.006)])
    ys = graded(sorted(heights), wall / 8, 1.4, 0.004)
    in_jacket = lambda r, z: jacket is not None and (r > b + jacket["wall_m"]) & (z > jacket["bottom_m"]) & (z < top - jacket["deck_m"])
    sleeve = Body(xs, ys, lambda r, z: (z > foot) & (r < np.where(z > ledge, f, b)), s["youngs_pa"], s["poisson"])
    block = Body(xs, ys, lambda r, z: (r > np.where(z > ledge, f, b)) & ~np.asarray(in_jacket(r, z)), k["youngs_pa"], k["poisson"])
    near = lambda p, q: np.abs(p - q) < tiny
    joint = lambda r, z: near(r, b) & (z < ledge + tiny) & (z > foot - tiny)
    seat = lambda r, z: near(z, ledge) & (r > b - tiny) & (r < f + tiny)
    js, jb = [(body.find(0, joint), body.find(1, joint)) for body in (sleeve, block)]
    ls, lb = sleeve.find(1, seat), block.find(1, seat)
    stuck = x["joint"] == "stuck"
    if stuck:
        ls, lb = ls[1:], lb[1:]
    n = sleeve.basis.N
    stiff = sparse.block_diag([sleeve.k, block.k]).tocsr()
    load = np.zeros(stiff.shape[0])
    if x["clamp_n"]:
        crown = sleeve.find(1, lambda r, z: near(z, top))
        r = sleeve.at[0, crown]
        for i in range(0, len(r) - 2, 2):
            h, mid = r[i + 2] - r[i], r[i + 1]
            load[crown[i:i + 3]] -= x["clamp_n"] * 2 / (f * f - a * a) * np.array([r[i] * h / 6, 2 * mid * h / 3, r[i + 2] * h / 6])
    held = n + (block.find(1, lambda r, z: near(z, 0)) if x["clamp_n"] else block.find(1, lambda r, z: near(z, 0) & near(r, c)))
    touch, rest = np.ones(len(js[0]), bool), np.ones(len(ls), bool)
    for _ in range(40):
        floats = not x["clamp_n"] and not (stuck and touch.any())
        shift, slave = np.zeros(len(load)), {}
        for i, j in zip(js[0][touch], jb[0][touch]):
            slave[n + j] = i
            shift[n + j] = x["interference_m"] / 2
        if stuck:
            slave.update(zip(js[1][touch], n + jb[1][touch]))
        if not floats:
            slave.update(zip(ls[rest], n + lb[rest]))
        gone = set(held) | ({sleeve.find(1, lambda r, z: near(z, foot) & near(r, a))[0]} if floats else set())
        free = [i for i in range(len(load)) if i not in slave and i not in gone]
        number = -np.ones(len(load), int)
        number[free] = np.arange(len(free))
        rows, cols = [], []
        for i in range(len(load)):
            master = slave.get(i, i)
            if number[master] >= 0:
                rows.append(i)
                cols.append(number[master])
        t = sparse.csr_matrix((np.ones(len(rows)), (rows, cols)), (len(load), len(free)))
        u = t @ spsolve((t.T @ stiff @ t).tocsc(), t.T @ (load - stiff @ shift)) + shift
        force = stiff @ u - load
        scale = max(np.abs(force[js[0]]).max(), x["clamp_n"], 1e-9)
        press = -force[js[0]]
        gap = u[n + jb[0]] - u[js[0]] - x["interference_m"] / 2
        new_touch = np.where(touch, press >= -1e-9 * scale, gap < -1e-12)
        lift = u[ls] - u[n + lb]
        new_rest = rest if floats else np.where(rest, force[ls] >= -1e-9 * scale, lift < -1e-13)
        if (new_touch == touch).all() and (new_rest == rest).all():
            break
        touch, rest = new_touch, new_rest
    inside = sleeve.find(0, lambda r, z: near(r, a))
    z = sleeve.at[1, inside]
    order = np.argsort(z)
    change = np.interp(top - np.array(x["z_m"]), z[order], 2 * u[inside][order])
    return {"inner_d_change_m": change}


FAMILIES = [
    Family("bore_profile", "scikit-fem, nine-node elements", draw, solve, cases=8, share=0.01, floor=0.0,
           special={"inner_d_change_m[0]": (0.02, 2e-7), "inner_d_change_m[1]": (0.02, 0.0)}),
]
