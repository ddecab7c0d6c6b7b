"""Decision value and speed of the day engine: python -m benchmarks.day [days] [picture.svg]

Invented banks of one to eight fryers (seeds below); the engine against the tuned order-up-to rule on paired
days (common random numbers), the time of one "drop now", a thousand days of par, and the deterministic cases
against a proven bound.
"""

from __future__ import annotations

import sys
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from time import perf_counter

import numpy as np
from tests.reference.best_day import best_plan, bound, without_filters

from frywright.paper.chart import svg
from frywright.plan import engine
from frywright.plan.advice import outlook
from frywright.plan.check import broken_rules
from frywright.plan.live import State
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import Look, draw_days, given, replay, replay_par
from frywright.plan.tune import tuned

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
            LoadSize(
                units_count=u,
                cook_slots_count=cook,
                recovery_slots_count=1,
                batch_money=1.5,
                fryers=tuple(range(fryers)),
            )
            for u in sizes
        )
        items.append(
            Item(
                name=f"product {i + 1}", loads=loads, hold_slots_count=hold, short_money=1.6, waste_money=0.7
            )
        )
        whole = fryers / count * slots / (cook + 1.3) * full * 0.45 * rng.uniform(0.7, 1.2)
        mean.append(shape / shape.sum() * whole)
    return Day(
        items=tuple(items),
        fryers_count=fryers,
        slots_count=slots,
        hands_count=max(2, fryers),
        mean_n=np.array(mean),
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
        world, scratch = engine.fresh(rules), engine.fresh(rules)
        belief = np.full((2, products + 1), 100.0)
        t, start = 80 + n % 7, perf_counter()
        dreams = engine.imagine(
            t, min(138, t + look.horizon_slots_count), look.paths_count, belief, day.mean_n, rules, n
        )
        for place, f in enumerate(rules[16]):
            i, k, _, _ = engine.rollout(
                (place, t, look.horizon_slots_count, look.z_n), dreams, world, belief, rules, scratch
            )
            if i > engine.NOTHING:
                engine.start(f, t, i, k, world, rules, np.zeros(6))
        times.append(1000.0 * (perf_counter() - start))
    return float(np.median(times[1:])), max(times[1:])


def deterministic(case: tuple[int, int, int, float]) -> str:
    """One day whose demand is known (fryers, seed, slots, seconds for the solver): the search against the
    best HiGHS finds and what it proves.
    """
    fryers, seed, slots, seconds = case
    day = without_filters(bank(fryers, seed, slots=slots))
    demand = draw_days(day, 1, 3)[0]
    best_plan(day, demand, passes=1000)
    start = perf_counter()
    cost = best_plan(day, demand)[1]
    took, proven = perf_counter() - start, bound(day, demand, seconds)
    known = min(cost, proven.found_money)
    return (
        f"known demand, {fryers} fryers, {slots} slots: {cost:.1f} in {took:.1f} s,"
        f" {100 * (cost / known - 1):.1f} % over the best known; HiGHS {proven.found_money:.1f} after"
        f" {seconds:.0f} s, proven bound {proven.least_money:.1f}"
    )


def plan_s(fryers: int) -> tuple[float, float]:
    """Seconds of a morning plan with bands, and of a re-plan at dinner with a fryer down."""
    day = bank(fryers, fryers)
    rule = tuned(day, draw_days(day, 15, TUNE_SEED), 0)
    down = State(now_n=90.0, since=[0] * fryers, sold_n=np.full(day.mean_n.shape, np.nan), down={0: 90.0})
    outlook(day, down, rule, Look(paths_count=2, horizon_slots_count=20), 2)
    start = perf_counter()
    outlook(day, None, rule)
    middle = perf_counter()
    outlook(day, down, rule, paths=100)
    return middle - start, perf_counter() - middle


def picture(rows: list[tuple[int, float, float]], path: str) -> None:
    """Gain and seconds a day against the size of the bank, as SVG."""
    values = [
        {"fryers": f, "value": v, "what": what}
        for f, gain, s in rows
        for what, v in (("gain over the tuned rule, %", -gain), ("seconds a simulated day", s))
    ]
    spec = {
        "$schema": "https://vega.github.io/schema/vega-lite/v5.json",
        "background": "white",
        "data": {"values": values},
        "facet": {"column": {"field": "what", "title": None}},
        "spec": {
            "width": 300,
            "height": 200,
            "mark": {"type": "line", "point": True},
            "encoding": {
                "x": {"field": "fryers", "type": "ordinal", "title": "fryers"},
                "y": {"field": "value", "type": "quantitative", "title": None, "aggregate": "mean"},
            },
        },
        "resolve": {"scale": {"y": "independent"}},
    }
    Path(path).write_text(svg(spec), "utf-8")


def main() -> None:
    """Print the tables."""
    days = int(sys.argv[1]) if len(sys.argv) > 1 else 6
    rows = []
    for fryers, seed in INSTANCES:
        with ProcessPoolExecutor(2) as pool:
            parts = list(pool.map(part, [(fryers, seed, days, odd) for odd in (0, 1)]))
        par, played = (np.concatenate([p[k] for p in parts]) for k in (0, 1))
        gain = 100.0 * (played - par) / par.mean()
        day = bank(fryers, seed)
        many = draw_days(day, 1000, 5)
        rule = tuned(day, many[:50], 0)
        start = perf_counter()
        replay_par(day, many, rule)
        told = f"{gain.mean():+.1f} % ± {1.96 * gain.std() / np.sqrt(len(gain)):.1f}"
        rows.append((fryers, float(gain.mean()), parts[0][2]))
        sys.stdout.write(
            f"{fryers} fryers, {len(day.items)} products (seed {seed}): engine against tuned par {told} on"
            f" {len(gain)} days, {parts[0][2]:.1f} s a day; 1000 days of par {perf_counter() - start:.2f} s\n"
        )
        sys.stdout.flush()
    if len(sys.argv) > 2:
        picture(rows, sys.argv[2])
    for fryers, products in ((4, 6), (8, 12)):
        usual, most = advice_ms(fryers, products)
        morning, again = plan_s(fryers)
        sys.stdout.write(
            f"{fryers} fryers x {products} products: drop now {usual:.0f} ms, at most {most:.0f} ms; morning"
            f" plan with bands {morning:.1f} s, re-plan after a failure {again:.2f} s\n"
        )
    for case in ((1, 1, 36, 20.0), (1, 1, 72, 60.0), (2, 2, 72, 60.0)):
        sys.stdout.write(deterministic(case) + "\n")


if __name__ == "__main__":
    main()
