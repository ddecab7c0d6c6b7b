"""Decision value and speed of the day engine: python -m benchmarks.day [days]

Invented banks of one to eight fryers (seeds below); the engine against the tuned order-up-to rule on paired days (common random
numbers), the time of one "drop now", a thousand days of par, and the deterministic cases against a proven bound.
"""

from __future__ import annotations

import sys
from concurrent.futures import ProcessPoolExecutor
from time import perf_counter

import numpy as np

from frywright.plan import engine
from frywright.plan.check import broken_rules
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import Look, draw_days, given, replay, replay_par, tuned

TUNE_SEED, PLAY_SEED = 11, 99
INSTANCES = ((1, 1), (1, 101), (2, 2), (2, 102), (4, 4), (8, 8))
"""Fryers and seed of every bank."""


def bank(fryers: int, seed: int, products: int | None = None, slots: int = 138) -> Day:
    """A day with lunch and dinner; products fill a little under half of the bank's time at full loads."""
    rng = np.random.default_rng(seed)
    hours, count = np.arange(slots) / slots, products or max(2, round(1.5 * fryers))
    shape = np.exp(-(((hours - 0.17) / 0.08) ** 2)) + 1.7 * np.exp(-(((hours - 0.64) / 0.11) ** 2)) + 0.18
    items, mean = [], []
    for i in range(count):
        cook, full, hold = int(rng.integers(2, 5)), int(rng.integers(12, 33)), int(rng.integers(9, 19))
        sizes = sorted({max(2, full // 4), full // 2, full})
        loads = tuple(
            LoadSize(units_count=u, cook_slots_count=cook, recovery_slots_count=1, batch_money=1.5, fryers=tuple(range(fryers)))
            for u in sizes
        )  # fmt: skip
        items.append(
            Item(name=f"product {i + 1}", loads=loads, hold_slots_count=hold, short_money=1.6, waste_money=0.7)
        )
        whole = fryers / count * slots / (cook + 1.3) * full * 0.45 * rng.uniform(0.7, 1.2)
        mean.append(shape / shape.sum() * whole)
    return Day(
        items=tuple(items), fryers_count=fryers, slots_count=slots, hands_count=max(2, fryers), mean_n=np.array(mean)
    )


def part(question: tuple[int, int, int, int]) -> tuple[np.ndarray, np.ndarray, float]:
    """Costs of par and engine on every second day, and seconds a day of the engine."""
    fryers, seed, days, odd = question
    day = bank(fryers, seed)
    rule, demand = tuned(day, draw_days(day, 200, TUNE_SEED)), draw_days(day, days, PLAY_SEED)[odd::2]
    replay(day, demand[:1], rule, Look(paths_count=2, horizon_slots_count=20))
    start = perf_counter()
    played = replay(day, demand, rule, Look.for_bank(fryers))
    seconds = (perf_counter() - start) / len(demand)
    assert not any(broken_rules(day, plan) for plan in played.plans)
    return replay_par(day, demand, rule).cost_money, played.cost_money, seconds


def advice_ms(fryers: int, products: int) -> tuple[float, float]:
    """Median and largest milliseconds to decide a whole slot of an idle bank at the dinner peak."""
    day = bank(fryers, 5, products)
    rule = tuned(day, draw_days(day, 50, TUNE_SEED))
    rules, look, times = given(day, rule), Look.for_bank(fryers), []
    for n in range(21):
        world, belief, scratch = engine.fresh(rules), np.array([100.0, 100.0]), engine.fresh(rules)
        t, start = 80 + n % 7, perf_counter()
        dreams = engine.imagine(
            t, min(138, t + look.horizon_slots_count), look.paths_count, belief, day.mean_n, rules, n
        )
        for f in range(fryers):
            i, k, _, _ = engine.rollout((f, t, look.horizon_slots_count, 1.0), (dreams, engine.weighed(day.mean_n, day.spreads_n)), world, belief, rules, scratch)  # fmt: skip
            if i > engine.NOTHING:
                engine.start(f, t, i, k, world, rules, np.zeros(6))
        times.append(1000.0 * (perf_counter() - start))
    return float(np.median(times[1:])), max(times[1:])


def main() -> None:
    """Print the tables."""
    days = int(sys.argv[1]) if len(sys.argv) > 1 else 20
    for fryers, seed in INSTANCES:
        with ProcessPoolExecutor(2) as pool:
            parts = list(pool.map(part, [(fryers, seed, days, odd) for odd in (0, 1)]))
        par, played = (np.concatenate([p[k] for p in parts]) for k in (0, 1))
        gain = 100.0 * (played - par) / par.mean()
        day = bank(fryers, seed)
        many = draw_days(day, 1000, 5)
        rule = tuned(day, many[:50])
        start = perf_counter()
        replay_par(day, many, rule)
        told = f"{gain.mean():+.1f} % ± {1.96 * gain.std() / np.sqrt(len(gain)):.1f}"
        sys.stdout.write(
            f"{fryers} fryers, {len(day.items)} products (seed {seed}): engine against tuned par {told} on {len(gain)} days, "
            f"{parts[0][2]:.1f} s a day; 1000 days of par {perf_counter() - start:.2f} s\n"
        )
        sys.stdout.flush()
    for fryers, products in ((4, 6), (8, 12)):
        usual, most = advice_ms(fryers, products)
        sys.stdout.write(f"drop now, {fryers} fryers x {products} products: {usual:.0f} ms, at most {most:.0f} ms\n")


if __name__ == "__main__":
    main()
