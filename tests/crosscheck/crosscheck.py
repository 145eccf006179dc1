"""Seeded random requests, answered twice: by `evaluate` and by general-purpose
libraries from PyPI (numpy, scipy, CoolProp, ht, scikit-fem). Prints one line a
family and ends with `N passed, M failed`.

Usage: crosscheck.py PATH_TO_EVALUATE [--seed N] [--cases N] [--only FAMILY]

The models are those of the project's physics text; their solution here shares
no code with the core: an adaptive stiff solver instead of the core's stepper, a
linear solver for the rings, quadrature for the statistics, a library's
assignment for the pairing, a library's finite elements for the bore profile.
"""

import argparse
import json
import subprocess
import sys

import numpy as np

import families
import families_alloys
import families_deck
import families_fem
import families_heat
import families_lean
import families_plan


def evaluate(program, requests):
    """The answers of `evaluate`, in order."""
    lines = "".join(json.dumps(r) + "\n" for r in requests)
    done = subprocess.run([program], input=lines, capture_output=True, text=True, check=True)
    return [json.loads(line) for line in done.stdout.splitlines()]


def differences(got, want, tolerance, path=""):
    """Where two outputs differ by more than the family allows."""
    if want is families.SKIP:
        return
    if isinstance(want, dict):
        for key, value in want.items():
            yield from differences(got.get(key), value, tolerance, f"{path}.{key}" if path else key)
    elif isinstance(want, (list, tuple, np.ndarray)):
        if not isinstance(got, list) or len(got) != len(want):
            yield f"{path}: a list of {len(want)} wanted, got {got!r:.80}"
            return
        for i, value in enumerate(want):
            yield from differences(got[i], value, tolerance, f"{path}[{i}]")
    elif want is None or isinstance(want, (bool, str)):
        if got != want:
            yield f"{path}: {got!r} instead of {want!r}"
    else:
        share, floor = tolerance(path)
        if got is None or not abs(got - want) <= share * abs(want) + floor:
            yield f"{path}: {got!r} instead of {float(want)!r} (allowed {share:g} of it + {floor:g})"


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("--seed", type=int, default=20250)
    parser.add_argument("--cases", type=int, default=0, help="cases a family; 0: its own number")
    parser.add_argument("--only", default="")
    options = parser.parse_args()
    passed = failed = 0
    everything = families.FAMILIES + families_deck.FAMILIES + families_heat.FAMILIES + families_lean.FAMILIES + families_alloys.FAMILIES
    everything += families_plan.FAMILIES + families_fem.FAMILIES
    for family in everything:
        if options.only and family.calc != options.only:
            continue
        random = np.random.default_rng(options.seed)
        inputs = [family.draw(random) for _ in range(options.cases or family.cases)]
        requests = [{"id": i, "calc": family.calc, "inputs": x} for i, x in enumerate(inputs)]
        bad = []
        for reply, x in zip(evaluate(options.program, requests), inputs, strict=True):
            if "error" in reply:
                problems = [f"refused: {reply['error']}"]
            else:
                problems = list(differences(reply["outputs"], family.solve(x), family.tolerance))
            if problems:
                bad.append((x, problems))
        passed += len(inputs) - len(bad)
        failed += len(bad)
        print(f"{family.calc:15} {len(inputs) - len(bad):4} of {len(inputs):4} agree   {family.against}")
        for x, problems in bad[:3]:
            print("   ", json.dumps(x)[:400])
            for problem in problems[:4]:
                print("       ", problem)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main())
