"""Decision value of the day engine: python -m benchmarks.day [days]

Invented banks of one, two and four fryers; the tuned par rule against rollouts on paired days (common random numbers), and
a thousand days of par replayed.
"""

from __future__ import annotations

import sys
from concurrent.futures import ProcessPoolExecutor
from time import perf_counter

import numpy as np

from frywright.plan.check import broken_rules
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import draw_days, replay_par, replay_rollout, tuned

TUNE_SEED, PLAY_SEED, PATHS = 11, 99, 64


def bank(fryers: int, seed: int) -> Day:
    """A day of 138 slots with lunch and dinner; products fill a little under half of the bank's time at full loads."""
    rng = np.random.default_rng(seed)
    hours = np.arange(138) / 138
    shape = np.exp(-(((hours - 0.17) / 0.08) ** 2)) + 1.7 * np.exp(-(((hours - 0.64) / 0.11) ** 2)) + 0.18
    items, mean = [], []
    for i in range(max(2, round(1.5 * fryers))):
        cook, full, hold = int(rng.integers(2, 5)), int(rng.integers(12, 33)), int(rng.integers(9, 19))
        sizes = sorted({max(2, full // 4), full // 2, full})
        items.append(Item(
            name=f"product {i + 1}", loads=tuple(LoadSize(units_count=u, cook_slots_count=cook) for u in sizes), hold_slots_count=hold,
            recovery_slots_count=1, fryers=tuple(range(fryers)), short_money=1.6, waste_money=0.7, batch_money=1.5,
        ))  # fmt: skip
        whole = fryers / max(2, round(1.5 * fryers)) * 138 / (cook + 1.3) * full * 0.45 * rng.uniform(0.7, 1.2)
        mean.append(shape / shape.sum() * whole)
    return Day(
        items=tuple(items), fryers_count=fryers, slots_count=138, hands_count=max(2, fryers), mean_n=np.array(mean)
    )


def half(question: tuple[int, int, int]) -> tuple[np.ndarray, np.ndarray, float]:
    """Costs of par and rollout on every second day, and seconds a rolled-out day."""
    fryers, days, part = question
    day = bank(fryers, fryers)
    rule = tuned(day, draw_days(day, 200, TUNE_SEED))
    demand = draw_days(day, days, PLAY_SEED)[part::2]
    replay_rollout(day, demand[:1, :, :], rule, paths=2)
    start = perf_counter()
    rolled = replay_rollout(day, demand, rule, paths=PATHS)
    seconds = (perf_counter() - start) / len(demand)
    assert not any(broken_rules(day, plan) for plan in rolled.plans)
    return replay_par(day, demand, rule).cost_money, rolled.cost_money, seconds


def main() -> None:
    """Print the table."""
    days = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    for fryers in (1, 2, 4):
        with ProcessPoolExecutor(2) as pool:
            parts = list(pool.map(half, [(fryers, days, part) for part in (0, 1)]))
        par, rolled = (np.concatenate([p[k] for p in parts]) for k in (0, 1))
        gain = 100.0 * (rolled - par) / par.mean()
        day = bank(fryers, fryers)
        many = draw_days(day, 1000, 5)
        rule = tuned(day, many[:50])
        start = perf_counter()
        replay_par(day, many, rule)
        thousand_s = perf_counter() - start
        told = f"{gain.mean():+.1f} % ± {1.96 * gain.std() / np.sqrt(len(gain)):.1f}"
        sys.stdout.write(
            f"{fryers} fryers, {len(day.items)} products: rollout against tuned par {told} on {len(gain)} days, {parts[0][2]:.1f} s a day; 1000 days of par {thousand_s:.2f} s\n"
        )


if __name__ == "__main__":
    main()
