"""Does the bound of a proof hold? Hundreds of proofs of programs that fail some loads, against the share that
far more loads show.

``python -m benchmarks.coverage`` [--repeats 300] [--samples 512] [--truth 100000]. Each repeat is a whole
proof with a seed that no other has. Its bound is right where it lies at or below the share that passes in
truth; at 95 % confidence at least 95 of 100 bounds are. The truth is drawn with other seeds.
"""

from __future__ import annotations

import argparse
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.catalog.kitchen import parse_kitchen
from frywright.design.proof import Proof, Spread, all_loads, clopper_pearson, prove
from frywright.physics.plan import FryPlan, make_plan
from frywright.trial.ask import edit_program, product_limit
from frywright.trial.kitchens import demo_text
from frywright.verdicts.limits import CookLimit

CASES = (("bone-in alder", 90.0), ("bone-in alder", 120.0), ("bone-in cedar", 160.0), ("tenders cedar", 30.0))
"""Programs of the demo kitchen and by how many seconds their longest stage is made shorter, so that few loads
or many fail."""
GUARD_K = 1.1  # as for pieces nobody calibrated, with a usual thermometer
PART = 20_000
"""Loads of the truth that are asked at once."""


@dataclass(frozen=True, slots=True)
class Case:
    """A program to be proved again and again."""

    name: str
    plan: FryPlan
    limit: CookLimit
    spread: Spread

    def proof(self, samples: int, seed: int) -> Proof:
        """One proof over the program's own loads."""
        return prove(self.plan, self.limit, GUARD_K, samples=samples, seed=seed, spread=self.spread)


def case(name: str, shorter_s: float) -> Case:
    """A program of the demo kitchen with its longest stage made shorter."""
    kitchen = parse_kitchen(demo_text())
    old = kitchen.program(name).timed()
    at = max(range(len(old.stages)), key=lambda i: old.stages[i].duration_s or 0.0)
    stages = [
        replace(stage, duration_s=(stage.duration_s or 0.0) - shorter_s) if i == at else stage
        for i, stage in enumerate(old.stages)
    ]
    plan = make_plan(kitchen, edit_program(old, stages))
    limit = product_limit(kitchen, plan.product)
    if limit is None:
        raise SystemExit(f"no limit for {name}")
    return Case(f"{name}, {shorter_s:.0f} s shorter", plan, limit, all_loads(plan))


def passing(found: Proof) -> NDArray[np.bool_]:
    """Which loads pass: the whole load, then each cut of it, (load, 1 + cut)."""
    each = found.margins_k >= 0.0
    return np.column_stack([each.all(axis=1), each])


def run(asked: Case, first_seed: int, repeats: int, samples: int, truth: int) -> str:
    """A row of the table."""
    parts = [passing(asked.proof(PART, 1_000_000 + first_seed + i)) for i in range(max(1, truth // PART))]
    known = np.concatenate(parts).mean(axis=0)
    holds = np.zeros((repeats, len(known)), dtype=bool)
    shares = np.zeros(repeats)
    for repeat in range(repeats):
        found = asked.proof(samples, first_seed + repeat)
        bounds = [found.bound_frac, *(cut.bound_frac for cut in found.cuts)]
        holds[repeat] = np.array(bounds) <= known
        shares[repeat] = found.meets_frac
    right, least = holds.sum(axis=0), holds.mean(axis=0)
    own = float(np.std(shares) / np.sqrt(known[0] * (1.0 - known[0]) / samples))
    told = f"{right[0]} of {repeats}, {100 * least[0]:.1f} %"
    cuts = f"{100 * least[1:].min():.1f} to {100 * least[1:].max():.1f} %"
    low = clopper_pearson(int(right[0]), repeats, 0.95)
    return (
        f"| {asked.name} | {100 * (1 - known[0]):.2f} % | {told} | {100 * low:.1f} % | {cuts} | {own:.2f} |"
    )


def main() -> None:
    """Run it and print the table."""
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--repeats", type=int, default=300)
    words.add_argument("--samples", type=int, default=512)
    words.add_argument("--truth", type=int, default=100_000)
    asked = words.parse_args()
    print(
        f"| {asked.repeats} proofs of {asked.samples} loads | loads that fail in truth"
        " | bound at 95 % at or below the truth | coverage at least (95 %)"
        " | of single cuts | spread of the share, random = 1 |"
    )
    print("|---|---|---|---|---|---|")
    for number, (name, shorter_s) in enumerate(CASES, 1):
        row = run(case(name, shorter_s), 10_000 * number, asked.repeats, asked.samples, asked.truth)
        print(row, flush=True)


if __name__ == "__main__":
    main()
