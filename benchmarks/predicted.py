"""Does the tool ever predict over where the fine reference is short? Random programs, counted.

    python -m benchmarks.predicted 20000        programs as they come
    python -m benchmarks.predicted 2000 aimed   each made so long that it stops close to its limit

Every program is solved at SCAN, ROUTINE and CLOSE, and at FINE where CLOSE lies within NEAR_K of the limit;
farther off CLOSE, which is within 0.1 K of FINE in every near one, is the reference. Predicted over: the
coldest piece of the load at the earliest lift keeps its limit with the error of the setting
(``Precision.error_k``) taken off and nothing for a thermometer.
"""

from __future__ import annotations

import sys
from time import perf_counter

import numpy as np
from tests.random_programs import aimed, asked, chance_of, margins, plan_of

from frywright.physics.inputs import CLOSE, FINE, ROUTINE, SCAN

BATCH, NEAR_K, AIM_K = 500, 0.6, 0.5
SETTINGS = {"SCAN": SCAN, "ROUTINE": ROUTINE, "CLOSE": CLOSE}


def main(count: int, near: bool, seed: int = 1) -> None:
    """Print the counts."""
    chance = chance_of(np.random.default_rng(seed))
    begun, fine_n = perf_counter(), 0
    wrong, over = dict.fromkeys(SETTINGS, 0), dict.fromkeys(SETTINGS, 0)
    gaps: dict[str, list[float]] = {name: [] for name in SETTINGS}
    for start in range(0, count, BATCH):
        cases = [asked(chance) for _ in range(min(BATCH, count - start))]
        plans = [plan_of(*case) for case in (aimed(cases, AIM_K) if near else cases)]
        told = {name: margins(plans, setting) for name, setting in SETTINGS.items()}
        known = told["CLOSE"].copy()
        close = np.flatnonzero(np.abs(known) < NEAR_K)
        known[close] = margins([plans[i] for i in close], FINE)
        fine_n += len(close)
        for name, setting in SETTINGS.items():
            said = told[name] - setting.error_k >= 0.0
            over[name] += int(said.sum())
            wrong[name] += int((said & (known < 0.0)).sum())
            gaps[name] += list(told[name][close] - known[close])
    print(
        f"{count} programs{' aimed at their limit' if near else ''}, {fine_n} of them near it and solved at"
        f" FINE, {perf_counter() - begun:.0f} s"
    )
    for name in wrong:
        g = np.array(gaps[name]) if gaps[name] else np.zeros(1)
        print(
            f"{name}: predicted over {over[name]}, of these short by the reference {wrong[name]}; above FINE"
            f" by at most {g.max():.3f} K, below by {-g.min():.3f} K, p99"
            f" {np.quantile(np.abs(g), 0.99):.3f} K"
        )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 2000, "aimed" in sys.argv[2:])
