"""Does the interval of a break-even hold the truth, and what are its cooks worth?

``python -m benchmarks.break_even`` [--repeats 300] [--truth 400000] [--case 0] [--share 0.01]. Each repeat is
a whole estimate with a seed that no other has: at which change of the main stage's time a share of the loads
fails.
The truth are proofs of many loads by brute force at two changes 3 s apart, with other seeds, and a straight
line between them in the logarithm of the odds. At 95 % confidence 95 of 100 intervals hold it. What the
cooks are worth: so many loads, solved as they come, would leave the share as uncertain (its mean error
squared).
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from dataclasses import replace
from time import process_time

import numpy as np

from benchmarks.coverage import CASES, GUARD_K, PART, Case, case
from frywright.design.break_even import SHARES, BreakEven, Loads, of_value
from frywright.design.proof import clopper_pearson
from frywright.design.shape import changed, main_stage
from frywright.design.window import reach

NEAR_S = 1.5
"""The truth is asked for so long before and after the median of the estimates."""


def estimates(asked: Case, seed: int, shares: Sequence[float]) -> list[BreakEven]:
    """Break-even times of a program."""
    loads = Loads(asked.plan, asked.limit, GUARD_K, asked.spread, seed)
    ends = reach(asked.plan.fryer.controller, loads.plan.program, loads.stage)
    return of_value(loads, "time", ends["time"], shares)


def truth(asked: Case, by: float, count: int, seed: int) -> float:
    """Share of loads that fail after a change, each of them solved."""
    program = asked.plan.program.timed()
    program = changed(program, main_stage(program), "time", by)
    moved = replace(asked, plan=replace(asked.plan, program=program, oil_start_c=program.stages[0].set_c))
    parts = [moved.proof(PART, seed + i).failed_count for i in range(max(1, count // PART))]
    return sum(parts) / (PART * len(parts))


def row(asked: Case, share: float, found: list[BreakEven], truths: int, seed: int) -> str:
    """A row of the table: estimates of one share against the truth."""
    known = [one for one in found if one.change is not None]
    changes = np.array([[one.change, one.low, one.high] for one in known], dtype=float)
    middle = float(np.median(changes[:, 0]))
    ends = middle + np.array([-NEAR_S, NEAR_S])
    fails = np.array([truth(asked, by, truths, seed) for by in ends])
    odds = np.log(fails / (1.0 - fails))

    def odds_at(by: np.ndarray) -> np.ndarray:
        return odds[0] + (by - ends[0]) * (odds[1] - odds[0]) / (ends[1] - ends[0])

    asked_odds = np.log(share / (1.0 - share))
    holds = int(np.sum((odds_at(changes[:, 1]) >= asked_odds) & (asked_odds >= odds_at(changes[:, 2]))))
    off = 1.0 / (1.0 + np.exp(-odds_at(changes[:, 0]))) - share
    worth, bias = share * (1.0 - share) / np.mean(off**2), np.mean(off) / share
    least = clopper_pearson(holds, len(known), 0.95)
    width = float(np.median(changes[:, 2] - changes[:, 1]))
    return (
        f"| {asked.name} | {100 * share:g} % | {middle:+.1f} s, {width:.1f} s"
        f" | {holds} of {len(known)}, {100 * holds / len(known):.1f} % | {100 * least:.1f} %"
        f" | {100 * bias:+.1f} % | {worth:,.0f} | {known[0].solved_count} | {len(found) - len(known)} |"
    )


def main() -> None:
    """Run it and print the table."""
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--repeats", type=int, default=300)
    words.add_argument("--truth", type=int, default=400_000)
    words.add_argument("--case", type=int, help="number of a program; without it, all")
    words.add_argument("--share", type=float, help="share of loads that fail; without it, 1 and 0.1 %%")
    given = words.parse_args()
    shares = (given.share,) if given.share else SHARES
    print(
        "| program | loads that fail | at, width of the interval | intervals that hold the truth"
        " | coverage at least (95 %) | share off, mean | worth so many loads as they come"
        " | cooks | not found |"
    )
    print("|---|---|---|---|---|---|---|---|---|")
    for number, (name, shorter_s) in enumerate(CASES[1:]):
        if given.case not in (None, number):
            continue
        asked, start = case(name, shorter_s), process_time()
        seeds = range(10_000 * (number + 1), 10_000 * (number + 1) + given.repeats)
        found = [estimates(asked, seed, shares) for seed in seeds]
        each = (process_time() - start) / given.repeats
        for share, rows in zip(shares, zip(*found, strict=True), strict=True):
            print(row(asked, share, list(rows), given.truth, 5_000_000 + 1000 * number), flush=True)
        print(f"{each:.2f} s of the processor each", file=sys.stderr)


if __name__ == "__main__":
    main()
