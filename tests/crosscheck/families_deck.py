"""The deck judged together: the same model by brute quadrature over the shared
error, the shared cause and every chip (scipy's Gauss nodes and exponnorm), where
the core has one line of shifts and closed forms for the chips."""

import math

import numpy as np
from scipy import special, stats

from families import Family, between


def draw_seat_deck(r):
    n = int(r.choice([1, 2, 4, 6, 12, 32], p=[0.1, 0.2, 0.25, 0.25, 0.15, 0.05]))
    thou = 2.54e-5
    own, common = between(r, 0.15, 1.2) * thou, between(r, 0.1, 1.2) * thou
    scale, home = between(r, 0.8, 6) * thou, between(r, 0.6, 0.99)
    alike = float(r.choice([0, 0.02, between(r, 0, 0.5)]))
    shift = r.normal(0, common) + (r.exponential(scale) if r.random() < 0.4 else 0)
    chips = np.where(r.random(n) < home, 0, r.exponential(scale, n))
    return {"gap_m": [float(g) for g in np.clip(shift + chips + r.normal(0, own, n), -0.009, 0.009)], "u_own_m": own,
            "u_common_m": common, "gap_limit_m": float(r.choice([0, between(r, 0.2, 2.5)])) * thou, "prior_home": home,
            "gap_scale_m": scale, "prior_alike": alike}


def legendre(lo, hi, order, panels=1):
    x, w = special.roots_legendre(order)
    edges = np.linspace(lo, hi, panels + 1)
    half = 0.5 * np.diff(edges)[:, None]
    return (0.5 * (edges[1:] + edges[:-1])[:, None] + half * x).ravel(), (half * w).ravel()


def solve_seat_deck(x):
    s, c, tau, limit = x["u_own_m"], x["u_common_m"], x["gap_scale_m"], x["gap_limit_m"]
    home, gaps = x["prior_home"], np.array(x["gap_m"])

    def chip(shift, room):
        """ln of the density of each gap with a chip of 0 to `room`, by quadrature over the chip."""
        h, w = legendre(0, 1, 10, 12)
        at = np.multiply.outer(room, h)
        z = (gaps[:, None, None] - shift[None, :, None] - at[None, :, :]) / s
        density = np.exp(-0.5 * z**2 - at[None] / tau) / (tau * s * math.sqrt(2 * math.pi))
        with np.errstate(divide="ignore"):
            return np.log((density * w).sum(axis=2) * room[None, :])

    far = max(float(gaps.max()), 0) + 12 * s + 9 * c + limit + 1e-6

    def seen(shift, room):
        """Per gap: ln density with any chip, and with chips within `room` only."""
        r = gaps[:, None] - shift[None, :]
        at_home = np.log(home) + stats.norm.logpdf(r, scale=s)
        any_chip = np.log1p(-home) + stats.exponnorm.logpdf(r, tau / s, scale=s)
        within = np.logaddexp(at_home, np.log1p(-home) + chip(shift, np.maximum(room, 0)))
        return np.logaddexp(at_home, any_chip), np.where(room[None, :] >= 0, within, -np.inf)

    def gather(b, ln_prior, a):
        """Sums over the shared error at one shared cause: scale, weights, means."""
        shift = b + a
        whole, within = seen(shift, np.full_like(shift, limit - a))
        ln = ln_prior + whole.sum(axis=0)
        return b, ln, ln - whole + within, ln_prior + within.sum(axis=0)

    lo, hi = min(-8 * c, float(gaps.min()) - 9 * s), max(8 * c, float(gaps.max()) + 9 * s)
    b, w = legendre(lo, hi, 12, int(np.ceil((hi - lo) / min(s, c) / 1.2)))
    ln_b = np.log(w) + stats.norm.logpdf(b, scale=c)
    parts = [gather(b, ln_b + np.log1p(-x["prior_alike"]), 0.0) + (False,)]
    if x["prior_alike"] > 0:
        step = min(s, tau)
        ends = [0.0, limit] if limit > 0 else [0.0]
        last = far - limit
        for left, right in zip(ends, ends[1:] + [last]):
            a, wa = legendre(left, right, 8, int(np.ceil((right - left) / step / 2)))
            for one, weight in zip(a, wa):
                ln_a = np.log(x["prior_alike"]) + np.log(weight) - one / tau - np.log(tau)
                parts.append(gather(b, ln_b + ln_a, one) + (True,))
    top = max(p[1].max() for p in parts)
    add = lambda f: sum(f(p) for p in parts)
    total = add(lambda p: np.exp(p[1] - top).sum())
    each = add(lambda p: np.exp(p[2] - top).sum(axis=1)) / total
    mean = add(lambda p: (p[0] * np.exp(p[1] - top)).sum()) / total
    var = add(lambda p: ((p[0] - mean) ** 2 * np.exp(p[1] - top)).sum()) / total
    return {"p_seated": each, "p_all": add(lambda p: np.exp(p[3] - top).sum()) / total,
            "p_alike": add(lambda p: np.exp(p[1] - top).sum() if p[4] else 0.0) / total, "bias_m": mean,
            "bias_sd_m": var**0.5}


FAMILIES = [
    Family("seat_deck", "brute quadrature over error, cause and chip", draw_seat_deck, solve_seat_deck, cases=24, share=0,
           floor=2e-6, special={"bias": (0, 1e-9)}),
]
