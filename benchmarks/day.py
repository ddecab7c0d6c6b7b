"""Decision value and speed of the day engine: python -m benchmarks.day [--days 200] [--seed 2026]
[--banks 1:1,8:8] [--tries 1500] [--worlds "short holds,late till"] [--world-bank 4:4]
[--workers 2] [--speed] [--picture picture.svg]

Without ``--banks``, ``--worlds`` or ``--speed`` everything is played and measured.

Invented banks of one to eight fryers (seeds below); the engine against tuned par and against the tuned rule
by part of the day, on paired days (common random numbers) on which neither was tuned; ten worlds in which the
forecast or the day is not what was believed; the time of one "drop now", a thousand days of the rule, and
known demand against a proven bound.
"""

from __future__ import annotations

import argparse
import sys
from concurrent.futures import ProcessPoolExecutor
from dataclasses import replace
from pathlib import Path
from time import perf_counter, process_time

import numpy as np
from tests.reference.best_day import best_plan, bound, without_filters

from frywright.paper.chart import svg
from frywright.plan import engine
from frywright.plan.advice import outlook
from frywright.plan.check import broken_rules
from frywright.plan.live import State
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import Look, Par, Rule, draw_days, given, replay, replay_par
from frywright.plan.tune import SEARCH_DAYS, searched_rule, tuned, tuned_rule

TUNE_SEED, TUNE_DAYS, TUNE_ROUNDS, PLAY_SEED, PIECES = 11, 200, 4, 2026, 4
INSTANCES = ((1, 1), (1, 101), (2, 2), (2, 102), (3, 3), (4, 4), (8, 8))
"""Fryers and seed of every bank."""
WORLDS = (
    "forecast 30 % high",
    "forecast 30 % low",
    "bursts of groups",
    "flat day",
    "low volume",
    "correlated demand",
    "tight capacity",
    "short holds",
    "event nobody entered",
    "late till",
)
LATE_SLOTS = 6
"""Half an hour after which a late till tells."""


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


def rules_of(day: Day, tries: int = 0) -> tuple[Par, Rule]:
    """Par and the rule by part of the day, tuned on days of their own; the rule searched on as the terminal's
    overnight tuning does, with ``tries``.
    """
    drawn = draw_days(day, TUNE_DAYS, TUNE_SEED)
    par = tuned(day, drawn)
    rule = tuned_rule(day, drawn, par, TUNE_ROUNDS)
    return par, searched_rule(day, draw_days(day, SEARCH_DAYS, TUNE_SEED), rule, tries) if tries else rule


Question = tuple[tuple[int, int], tuple[Par, Rule], int, int, int]


def part(question: Question) -> tuple[np.ndarray, np.ndarray, np.ndarray, float]:
    """Costs of par, rule and engine on every so many days, and CPU seconds a day of the engine."""
    size, (par, rule), days, first, play_seed = question
    day = bank(*size)
    demand = draw_days(day, days, play_seed)[first::PIECES]
    replay(day, demand[:1], rule, Look(paths_count=2, horizon_slots_count=20))
    start = process_time()
    played = replay(day, demand, rule, Look.for_bank(day))
    seconds = (process_time() - start) / len(demand)
    assert not any(broken_rules(day, plan) for plan in played.plans)
    base = (replay_par(day, demand, one).cost_money for one in (par, rule))
    return *base, played.cost_money, seconds


def world(name: str, size: tuple[int, int], days: int, play_seed: int) -> tuple[Day, np.ndarray, int]:
    """A bank's day as it is believed, days as they are, and by how many slots the till is late."""
    day, rng = bank(*size), np.random.default_rng(play_seed)
    truth, late = day, 0
    if name == "low volume":
        day = truth = replace(day, mean_n=0.35 * day.mean_n)
    elif name == "tight capacity":
        day = truth = replace(day, mean_n=1.6 * day.mean_n)
    elif name == "short holds":
        holds = (2, 3, 4)
        items = (replace(x, hold_slots_count=holds[n % 3]) for n, x in enumerate(day.items))
        day = truth = replace(day, items=tuple(items))
    elif name == "forecast 30 % high":
        truth = replace(day, mean_n=day.mean_n / 1.3)
    elif name == "forecast 30 % low":
        truth = replace(day, mean_n=day.mean_n / 0.7)
    elif name == "bursts of groups":
        truth = replace(day, items=tuple(replace(x, spread_n=6.0) for x in day.items))
    elif name == "flat day":
        truth = replace(day, mean_n=np.repeat(day.mean_n.mean(axis=1)[:, None], day.slots_count, axis=1))
    elif name == "late till":
        late = LATE_SLOTS
    if name == "event nobody entered":
        swell = np.ones(day.slots_count)
        swell[int(0.35 * len(swell)) : int(0.5 * len(swell))] = 3.0
        truth = replace(day, mean_n=day.mean_n * swell)
    if name == "correlated demand":  # every hour all products run at a level of their own
        hours = rng.gamma(1 / 0.4**2, 0.4**2, size=(days, day.slots_count // 12 + 1)).repeat(12, axis=1)
        levels = hours[:, : day.slots_count]
        drawn = [
            draw_days(replace(day, mean_n=day.mean_n * x), 1, play_seed + n)[0] for n, x in enumerate(levels)
        ]
        return day, np.array(drawn), late
    return day, draw_days(truth, days, play_seed), late


def in_world(
    question: tuple[str, tuple[int, int], int, int, int],
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Costs of par, rule and engine on every so many days of a world."""
    name, size, days, first, play_seed = question
    day, demand, late = world(name, size, days, play_seed)
    par, rule = rules_of(day)
    none = Look(paths_count=0, horizon_slots_count=0, late_slots_count=late)
    looks = (
        (par, none),
        (rule, none),
        (rule, replace(Look.for_bank(day), late_slots_count=late)),
    )
    costs = [replay(day, demand[first::PIECES], one, look).cost_money for one, look in looks]
    return costs[0], costs[1], costs[2]


def against(played: np.ndarray, base: np.ndarray) -> str:
    """Mean change with its 95 % interval, in per cent of the base."""
    change = 100.0 * (played - base) / base.mean()
    return f"{change.mean():+.1f} ± {1.96 * change.std(ddof=1) / np.sqrt(len(change)):.1f} %"


def all_banks(
    banks: tuple[tuple[int, int], ...], days: int, play_seed: int, workers: int, tries: int
) -> list[tuple[int, float, float]]:
    """The banks, printed; fryers, gain over par and seconds a day of each."""
    rows = []
    for fryers, seed in banks:
        rules = rules_of(bank(fryers, seed), tries)
        with ProcessPoolExecutor(workers) as pool:
            asked = [((fryers, seed), rules, days, n, play_seed) for n in range(PIECES)]
            parts = list(pool.map(part, asked))
        par, rule, played = (np.concatenate([p[k] for p in parts]) for k in (0, 1, 2))
        rows.append((fryers, float(100.0 * (played - par).mean() / par.mean()), parts[0][3]))
        sys.stdout.write(
            f"{fryers} fryers, {len(bank(fryers, seed).items)} products (seed {seed}), {len(par)} days:"
            f" engine against tuned par {against(played, par)}, against the tuned rule"
            f" {against(played, rule)}; rule against par {against(rule, par)}; {parts[0][3]:.2f} s CPU"
            " a day\n"
        )
        sys.stdout.flush()
    return rows


def all_worlds(
    names: tuple[str, ...], size: tuple[int, int], days: int, play_seed: int, workers: int
) -> None:
    """The worlds, printed: whether the engine ever costs more than the rule (one-sided, 5 %)."""
    for name in names:
        with ProcessPoolExecutor(workers) as pool:
            parts = list(pool.map(in_world, [(name, size, days, n, play_seed) for n in range(PIECES)]))
        par, rule, played = (np.concatenate([p[k] for p in parts]) for k in (0, 1, 2))
        change = played - rule
        worse = change.mean() - 1.645 * change.std(ddof=1) / np.sqrt(len(change)) > 0
        sys.stdout.write(
            f"{name}, {size[0]} fryers, {len(par)} days: engine against the tuned rule"
            f" {against(played, rule)} ({'WORSE' if worse else 'not worse'}), against tuned par"
            f" {against(played, par)}\n"
        )
        sys.stdout.flush()


def advice_ms(fryers: int, products: int) -> tuple[float, float]:
    """Median and largest milliseconds (CPU) to decide a whole slot of an idle bank at the dinner peak."""
    day = bank(fryers, 5, products)
    rule = tuned(day, draw_days(day, 50, TUNE_SEED))
    rules, look, times = given(day, rule), Look.for_bank(day), []
    for n in range(21):
        world, scratch = engine.fresh(rules), engine.fresh(rules)
        belief = np.full((2, products + 1), 100.0)
        t, start = 80 + n % 7, process_time()
        dreams = engine.imagine(
            t, min(138, t + look.horizon_slots_count), look.paths_count, belief, day.mean_n, rules, n
        )
        for place, f in enumerate(rules[16]):
            i, k, _, _ = engine.rollout(
                (place, t, look.horizon_slots_count, look.z_n), dreams, world, belief, rules, scratch
            )
            if i > engine.NOTHING:
                engine.start(f, t, i, k, world, rules, np.zeros(6))
        times.append(1000.0 * (process_time() - start))
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


def speed() -> None:
    """Days of par, decisions and plans timed, known demand against a proven bound; printed."""
    for fryers, seed in INSTANCES:
        day = bank(fryers, seed)
        many, rule = draw_days(day, 1000, 5), Par()
        start = process_time()
        replay_par(day, many, rule)
        sys.stdout.write(f"{fryers} fryers: 1000 days of par {process_time() - start:.2f} s\n")
    for fryers, products in ((4, 6), (8, 12)):
        usual, most = advice_ms(fryers, products)
        morning, again = plan_s(fryers)
        sys.stdout.write(
            f"{fryers} fryers x {products} products: drop now {usual:.0f} ms, at most {most:.0f} ms; morning"
            f" plan with bands {morning:.1f} s, re-plan after a failure {again:.2f} s\n"
        )
    for case in ((1, 1, 36, 20.0), (1, 1, 72, 60.0), (2, 2, 72, 60.0)):
        sys.stdout.write(deterministic(case) + "\n")


def size_of(text: str) -> tuple[int, int]:
    """Fryers and seed of a bank named ``fryers:seed``."""
    fryers, seed = text.split(":")
    return int(fryers), int(seed)


def asked() -> argparse.Namespace:
    """What the command line asks for."""
    words = argparse.ArgumentParser(prog="python -m benchmarks.day", description=__doc__)
    words.add_argument("--days", type=int, default=200, help="paired days of each bank and world")
    words.add_argument("--seed", type=int, default=PLAY_SEED, help="of the days played")
    words.add_argument("--banks", default="", help="fryers:seed, with commas; all")
    words.add_argument("--worlds", default="", help="names with commas; all")
    words.add_argument("--world-bank", default="2:2", help="fryers:seed of the worlds' bank")
    words.add_argument("--tries", type=int, default=0, help="of the overnight search for the rule; none")
    words.add_argument("--workers", type=int, default=2)
    words.add_argument("--speed", action="store_true", help="times and known demand")
    words.add_argument("--picture", default="", help="where the picture of the banks goes")
    return words.parse_args()


def main() -> None:
    """Print the tables."""
    told = asked()
    every = not (told.banks or told.worlds or told.speed)
    if told.banks or every:
        named = () if told.banks in ("", "all") else told.banks.split(",")
        banks = tuple(size_of(x) for x in named) or INSTANCES
        rows = all_banks(banks, told.days, told.seed, told.workers, told.tries)
        if told.picture:
            picture(rows, told.picture)
    if told.worlds or every:
        names = WORLDS if told.worlds in ("", "all") else tuple(told.worlds.split(","))
        all_worlds(names, size_of(told.world_bank), told.days, told.seed, told.workers)
    if told.speed or every:
        speed()


if __name__ == "__main__":
    main()
