"""A look from fewer cooks against the proof of the same loads: python -m benchmarks.fewer [--cases 300]

Random kitchens and programs (tests/random_programs.py), lengthened by up to 500 s so that all, some or none
of their loads fail. The proof solves every load; what the look counts by its fit must lie on the same side.
"""

from __future__ import annotations

import argparse
import sys
from time import process_time

import numpy as np
from tests.random_programs import asked, chance_of, lengthened, plan_of

from frywright.design.fewer import look
from frywright.design.proof import Proof, all_loads, prove
from frywright.model.errors import FrywrightError
from frywright.physics.plan import FryPlan
from frywright.verdicts.place import place_named

LIMIT, GUARD_K = place_named("us_food_code_2022").cook_limit(), 1.1
LONGER_S = 500.0


def cases(count: int, seed: int) -> list[FryPlan]:
    """Plans of random kitchens that the model takes and whose cooks come to an end."""
    rng, found = np.random.default_rng(seed), []
    while len(found) < count:
        kitchen, request = asked(chance_of(rng))
        try:
            found.append(plan_of(kitchen, lengthened(request, float(rng.uniform(0.0, LONGER_S)))))
        except FrywrightError:
            continue
    return found


def timed(action) -> tuple[Proof, float]:
    """What an action says, and its processor time [s]."""
    start = process_time()
    return action(), process_time() - start


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--cases", type=int, default=300)
    parser.add_argument("--samples", type=int, default=2048)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    taken, rows = np.zeros(2), []
    for seed, plan in enumerate(cases(given.cases, given.seed)):
        spread = all_loads(plan)
        few, few_s = timed(lambda p=plan, s=spread, n=seed: look(p, LIMIT, GUARD_K, s, given.samples, n))
        whole, whole_s = timed(
            lambda p=plan, s=spread, n=seed: prove(p, LIMIT, GUARD_K, spread=s, samples=given.samples, seed=n)
        )
        taken += (few_s, whole_s)
        off = few.margins_k != whole.margins_k  # what was solved is the same to the bit
        rows.append(
            (
                few.failed_count == whole.failed_count,
                0 < whole.failed_count < given.samples,
                few.fitted_count,
                abs(few.lowest_k - whole.lowest_k),
                np.max(np.abs(few.margins_k - whole.margins_k)),
                np.min(whole.margins_k[off], initial=np.inf),
            )
        )
    alike, mixed, fitted, lowest, error, least = np.array(rows, dtype=float).T
    told = (
        ("programs of random kitchens; in which some loads fail", f"{len(rows)}; {mixed.sum():.0f}"),
        ("as many loads fail as in the proof", f"{alike.sum():.0f} of {len(rows)}"),
        ("worst margin as in the proof; largest difference", f"{np.sum(lowest == 0)}; {lowest.max():.2f} K"),
        ("loads counted by the fit", f"{100 * fitted.sum() / len(rows) / given.samples:.0f} %"),
        (
            "largest error of such a margin; lowest of these margins",
            f"{error.max():.1f} K; {least.min():.2f} K",
        ),
        ("processor time of all looks, of all proofs", f"{taken[0]:.0f} s, {taken[1]:.0f} s"),
    )
    sys.stdout.write("".join(f"| {name} | {value} |\n" for name, value in told))


if __name__ == "__main__":
    main()
