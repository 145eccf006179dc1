"""The bore profile against scikit-fem: nine-node quadrilaterals on a fine graded
mesh, sleeve and block coupled by eliminating the joint's unknowns, contact by
opening what pulls and closing what overlaps; gas on a mesh that ends where the
gas ends, free growth by a linear form, pressure by a projection on the joint's
line."""

from types import SimpleNamespace

import numpy as np
import scipy.sparse as sparse
from scipy.sparse.linalg import spsolve
from skfem import Basis, BilinearForm, ElementLineP2, ElementQuad2, ElementVector, LinearForm, MeshLine, MeshQuad, asm
from skfem.helpers import grad

from families import SKIP, Family, between

def draw(r, joint):
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
    running = {}
    if r.random() < 0.5:
        running["gas_pa"] = between(r, 1e6, 1.5e7)
        running["gas_depth_m"] = between(r, thick, top)
    if r.random() < 0.6:
        bore = between(r, 340, 400)
        running["temperatures"] = {
            "sleeve_properties": {"expansion_per_k": between(r, 1e-5, 1.2e-5)},
            "block_properties": {"expansion_per_k": between(r, 1e-5, 1.2e-5)},
            "sleeve_inner_k": bore + between(r, 10, 40), "sleeve_outer_k": bore + between(r, 0, 10),
            "block_inner_k": bore, "block_outer_k": bore - between(r, 0, 30)}
    return {
        **running,
        "sleeve": {"inner_d_m": outer - 2 * wall, "outer_d_m": outer, "length_m": length,
                   "flange_outer_d_m": outer + 2 * width, "flange_thickness_m": thick,
                   "youngs_pa": between(r, 1.1e11, 1.8e11), "poisson": between(r, 0.24, 0.3)},
        "block": {"outer_d_m": ring, "youngs_pa": between(r, 7e10, 1.5e11), "poisson": between(r, 0.24, 0.33),
                  "below_m": below, "jacket": jacket},
        "interference_m": between(r, 1.5e-5, 5e-5), "joint": joint,
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


@BilinearForm
def mass(u, v, _):
    return u * v


@LinearForm
def even(v, w):
    return v * w["pressure"]


def line(z):
    """Quadratic line elements through nodes at z, ends and middles by turns."""
    basis = Basis(MeshLine(np.asarray(z)[::2]), ElementLineP2(), intorder=5)
    return basis, np.argsort(basis.doflocs[0])


def straight_over_log(inner, outer, t_inner, t_outer, per_k):
    """Free strain by radius, the heat flowing steadily."""
    share = lambda r: np.clip(np.log(r / inner) / np.log(outer / inner), 0, 1)
    return lambda r: per_k * (t_inner + share(r) * (t_outer - t_inner) - 293.15)


class Body:
    def __init__(self, xs, ys, element, keep, youngs, poisson, strain):
        mesh = MeshQuad.init_tensor(xs, ys)
        centre = mesh.p[:, mesh.t].mean(axis=1)
        mesh = mesh.restrict(np.nonzero(keep(*centre))[0])
        self.basis = Basis(mesh, ElementVector(element), intorder=4)
        lam = youngs * poisson / (1 + poisson) / (1 - 2 * poisson)
        self.k = asm(stiffness, self.basis, lam=lam, mu=youngs / 2 / (1 + poisson)).tocsr()
        self.growth = np.zeros(self.basis.N)
        if strain:
            bulk = youngs / (1 - 2 * poisson)

            @LinearForm
            def growth(v, w):
                r, dv = w.x[0], grad(v)
                return bulk * strain(r) * (dv[0, 0] + v[0] / r + dv[1, 1]) * r * 2 * np.pi

            self.growth = asm(growth, self.basis)
        self.at = self.basis.doflocs
        self.axis = np.zeros(self.basis.N, int)
        for name, axis in (("u^1", 0), ("u^2", 1)):
            for dofs in (self.basis.nodal_dofs, self.basis.facet_dofs, self.basis.interior_dofs):
                self.axis[dofs[axis::2]] = axis

    def find(self, axis, where):
        i = np.nonzero((self.axis == axis) & where(self.at[0], self.at[1]))[0]
        return i[np.lexsort((self.at[1, i], self.at[0, i]))]


def equilibrium(x, fine=1, lines=None, element=ElementQuad2()):
    """Everything at rest. `fine` draws the mesh together at the ledge's corners;
    `lines` are those of a mesh of another program."""
    s, k = x["sleeve"], x["block"]
    a, b, f, c = (d / 2 for d in (s["inner_d_m"], s["outer_d_m"], s["flange_outer_d_m"], k["outer_d_m"]))
    foot, ledge = k["below_m"], k["below_m"] + s["length_m"]
    top = ledge + s["flange_thickness_m"]
    jacket = k["jacket"]
    gas, gas_to = x.get("gas_pa", 0), top - x.get("gas_depth_m", top - foot)
    warm = x.get("temperatures")
    strains = [None, None] if not warm else [
        straight_over_log(inner, outer, warm[f"{part}_inner_k"], warm[f"{part}_outer_k"],
                          warm[f"{part}_properties"]["expansion_per_k"])
        for part, inner, outer in (("sleeve", a, b), ("block", b, c))]
    heights, radii = {0.0, foot, ledge, top}, {a, b, f, c}
    if gas and foot < gas_to < top:
        heights.add(gas_to)
    if jacket:
        heights |= {jacket["bottom_m"], top - jacket["deck_m"]}
        radii.add(b + jacket["wall_m"])
    wall, tiny = b - a, 1e-9
    xs = np.concatenate([graded([a, b], wall / 4 / fine, 1.5, wall / 4)[:-1],
                         graded(sorted(r for r in radii if r >= b), wall / 4 / fine, 1.5, 0.006)])
    ys = graded(sorted(heights), wall / 8 / fine, 1.4, 0.004)
    if lines:
        xs, ys = lines
    in_jacket = lambda r, z: jacket is not None and (r > b + jacket["wall_m"]) & (z > jacket["bottom_m"]) & (z < top - jacket["deck_m"])
    sleeve = Body(xs, ys, element, lambda r, z: (z > foot) & (r < np.where(z > ledge, f, b)), s["youngs_pa"], s["poisson"], strains[0])
    block = Body(xs, ys, element, lambda r, z: (r > np.where(z > ledge, f, b)) & ~np.asarray(in_jacket(r, z)), k["youngs_pa"], k["poisson"], strains[1])
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
    grown = np.concatenate([sleeve.growth, block.growth])
    load = np.zeros(stiff.shape[0])
    inside = sleeve.find(0, lambda r, z: near(r, a))
    inside = inside[np.argsort(sleeve.at[1, inside])]
    if gas:
        basis, order = line(sleeve.at[1, inside])
        reached = basis.global_coordinates()[0] > gas_to
        load[inside] = 2 * np.pi * a * asm(even, basis, pressure=gas * reached)[order]
    crown = sleeve.find(1, lambda r, z: near(z, top))
    crown = crown[np.argsort(sleeve.at[0, crown])]
    r = sleeve.at[0, crown]
    share = np.zeros(len(r))
    for i in range(0, len(r) - 2, 2):
        h = r[i + 2] - r[i]
        share[i:i + 3] += 2 / (f * f - a * a) * np.array([r[i] * h / 6, 2 * r[i + 1] * h / 3, r[i + 2] * h / 6])
    load[crown] -= x["clamp_n"] * share
    held = n + (block.find(1, lambda r, z: near(z, 0)) if x["clamp_n"] else block.find(1, lambda r, z: near(z, 0) & near(r, c)))
    touch, rest = np.ones(len(js[0]), bool), np.ones(len(ls), bool)
    closed_again = np.zeros(len(touch), int)
    for round in range(100):
        # A stuck node that has let go twice slides from then on.
        holds = touch & (closed_again < 2) if stuck else np.zeros(len(touch), bool)
        floats = not x["clamp_n"] and not holds.any()
        shift, slave = np.zeros(len(load)), {}
        for i, j in zip(js[0][touch], jb[0][touch]):
            slave[n + j] = i
            shift[n + j] = x["interference_m"] / 2
        slave.update(zip(js[1][holds], n + jb[1][holds]))
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
        u = t @ spsolve((t.T @ stiff @ t).tocsc(), t.T @ (load + grown - stiff @ shift)) + shift
        force = stiff @ u - load - grown
        scale = max(np.abs(force[js[0]]).max(), x["clamp_n"], np.abs(load).max(), np.abs(grown).max(), 1e-9)
        press = -force[js[0]]
        gap = u[n + jb[0]] - u[js[0]] - x["interference_m"] / 2
        new_touch = np.where(touch, press >= -1e-9 * scale, gap < -1e-12)
        lift = u[ls] - u[n + lb]
        new_rest = rest if floats else np.where(rest, force[ls] >= -1e-9 * scale, lift < -1e-13)
        if (new_touch == touch).all() and (new_rest == rest).all():
            break
        wrong = np.concatenate([new_touch != touch, new_rest != rest])
        if round > 15:
            # One at a time: ends where all at once would run in a circle.
            wrong[:np.nonzero(wrong)[0][-1]] = False
        now = np.concatenate([touch, rest]) ^ wrong
        closed_again += ~touch & now[:len(touch)]
        touch, rest = now[:len(touch)], now[len(touch):]
    else:
        raise RuntimeError(f"no steady contact: {x}")
    depths = top - np.array(x["z_m"])
    # Free along its axis the sleeve is set down until its flange touches.
    down = (u[ls] - u[n + lb]).min() if floats else 0
    edge = block.find(1, lambda r, z: near(r, f) & near(z, top))
    ledge_force = 0 if floats else force[ls][rest].sum()
    height_change = share @ u[crown] - down - u[n + edge[0]]
    pressing = np.where(touch, press, 0)
    return SimpleNamespace(**locals())


def profile(x):
    # A stuck joint and the ledge share the force of their corner as its cells allow.
    e = equilibrium(x, 4 if x["joint"] == "stuck" else 1)
    inside = e.inside
    # At the ledge's corner pressure is singular and not compared, nor nearer than
    # two walls to the step of load where the gas ends.
    along = np.argsort(e.sleeve.at[1, e.js[0]])
    z = e.sleeve.at[1, e.js[0]][along]
    basis, order = line(z)
    on_line = np.zeros(len(z))
    on_line[order] = e.pressing[along] / (2 * np.pi * e.b)
    p = np.maximum(basis.interpolator(spsolve(asm(mass, basis).tocsc(), on_line))(e.depths[None, 2:]), 0)
    p = [SKIP if e.gas and abs(z - e.gas_to) < 2 * e.wall else value for z, value in zip(e.depths[2:], p)]
    return {
        "inner_d_change_m": np.interp(e.depths, e.sleeve.at[1, inside], 2 * e.u[inside]),
        "pressure_pa": [0, SKIP, *p],
        "ledge_force_n": e.ledge_force,
        "height_change_m": e.height_change,
    }


def draw_stress(r):
    x = draw(r, "frictionless")
    wall = (x["sleeve"]["outer_d_m"] - x["sleeve"]["inner_d_m"]) / 2
    width = (x["sleeve"]["flange_outer_d_m"] - x["sleeve"]["outer_d_m"]) / 2
    return {**x, "friction": between(r, 0.1, 0.16), "at_m": between(r, 0.2, 0.35) * min(wall, width)}


def stress(x):
    e = equilibrium(x, 4)

    def tension(body, u, youngs, poisson, strain, points):
        """Hoop stress and largest principal stress, projected on quadratic elements."""
        scalar = Basis(body.basis.mesh, ElementQuad2(), intorder=4)
        r = scalar.global_coordinates()[0]
        field = body.basis.interpolate(u)
        du = grad(field)
        free = strain(r) if strain else 0 * r
        strains = [du[0, 0] - free, np.asarray(field)[0] / r - free, du[1, 1] - free, du[0, 1] + du[1, 0]]
        lam, mu = youngs * poisson / (1 + poisson) / (1 - 2 * poisson), youngs / 2 / (1 + poisson)
        bulk = lam * (strains[0] + strains[1] + strains[2])
        stresses = [bulk + 2 * mu * q for q in strains[:3]] + [mu * strains[3]]
        at = scalar.probes(points)
        sr, sh, sz, st = [at @ scalar.project(q) for q in stresses]
        return sh, np.maximum((sr + sz) / 2 + np.hypot((sr - sz) / 2, st), sh)

    s, k = x["sleeve"], x["block"]
    angles = np.pi * 1.5 * (np.arange(72) + 0.5) / 72
    circle = lambda r, start: np.array([r + x["at_m"] * np.cos(start + angles), e.ledge + x["at_m"] * np.sin(start + angles)])
    n = e.n
    sleeve = lambda points: tension(e.sleeve, e.u[:n], s["youngs_pa"], s["poisson"], e.strains[0], points)
    block = lambda points: tension(e.block, e.u[n:], k["youngs_pa"], k["poisson"], e.strains[1], points)
    cold = {key: x[key] for key in ("sleeve", "block", "interference_m", "joint", "z_m")}
    return {
        "sleeve_hoop_inner_pa": [SKIP, SKIP, *sleeve(np.array([np.full(4, e.a), e.depths[2:]]))[0]],
        "fillet_finer_pa": sleeve(circle(e.b, 0))[1].max(),
        "counterbore_finer_pa": block(circle(e.f, -np.pi))[1].max(),
        "ledge_pressure_pa": e.ledge_force / np.pi / (e.f ** 2 - e.b ** 2),
        "seat_force_n": x["friction"] * equilibrium({**cold, "clamp_n": 0}).pressing.sum(),
        "height_change_m": e.height_change,
    }


# Stress near a sharp corner: 12 % and 7 %. Of 24 other cases one fillet missed, by 22 %.
# Shares and, beside them, what is small on a real sleeve: 0.1 um of the bore, 0.05
# MPa (1 % of a usual contact pressure), 0.1 um of height. Ledge and deck 2 %, by
# physics.md. Where the joint sticks, ledge and joint share the force of the singular
# corner, and how they do changes with the mesh: 2 % of the ledge's force against a
# corner four times as fine (5 and 6 % in two of 14 cases against one that is not).
# Of 240 cases of other seeds 7 missed, all by a pressure of 0.06 to 0.3 MPa where
# the joint is just about to open and pressure falls to nothing within some mm.
NEAR_LEDGE = {"inner_d_change_m[0]": (0.02, 2e-7), "inner_d_change_m[1]": (0.02, 2e-7),
              "inner_d_change_m": (0.01, 1e-7), "pressure_pa": (0.01, 5e4), "height_change_m": (0.02, 1e-7)}
FAMILIES = [
    Family("bore_profile", "scikit-fem, nine-node elements, sliding joint", lambda r: draw(r, "frictionless"), profile,
           cases=14, share=0.01, floor=1e-3, special=NEAR_LEDGE),
    Family("bore_profile", "the same, stuck joint", lambda r: draw(r, "stuck"), profile,
           cases=14, share=0.01, floor=1e-3, special={**NEAR_LEDGE, "ledge_force_n": (0.02, 20)}),
    Family("bore_stress", "the same, stress projected on quadratic elements", draw_stress, stress,
           cases=8, share=0.01, floor=1e-3, special={
               "sleeve_hoop_inner_pa": (0.01, 3e5), "fillet": (0.12, 1e6), "counterbore": (0.07, 5e5), "height_change_m": (0.02, 1e-7)}),
]
