"""Slots of other lengths on the same guests, minute by minute: python -m benchmarks.slots
[--kitchens 8003,8012] [--days 8] [--paths 0] [--slots 300,240]

Drawn kitchens (``benchmarks/practice_kitchens.py``) are cooked for in real time: loads take their program's
time to the second, food goes old when its hold life ends, and every minute each idle fryer asks the rule (or,
with ``--paths``, the board's advice with so many imagined days), which thinks in slots of one length.
"""

from __future__ import annotations

import argparse
import io
import sys
import tempfile
from dataclasses import dataclass, field, replace
from pathlib import Path

import numpy as np

from benchmarks.practice_kitchens import DATE, kitchen_text, sales_text
from frywright.ledger.store import Store
from frywright.model import business_day
from frywright.model.kitchen import Kitchen
from frywright.plan import engine
from frywright.plan.advice import advise, bank_now, from_now, rules_now, world_of
from frywright.plan.live import InOil, Lifted, State, Tray
from frywright.plan.model import Drop
from frywright.rooms.clock import now
from frywright.rooms.day.day import Bench, bench_for
from frywright.rooms.day.sales import keep_sales
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen

TICK_S = 60.0
Act = tuple[int, int, int]
"""Fryer, product or -1 for a filter turn, load."""


def kitchen_of(seed: int, folder: str) -> tuple[Store, Kitchen]:
    """A drawn kitchen and its sales."""
    store = Store.file(Path(folder) / f"{seed}.db", now)
    remember_kitchen(store, kitchen_text(seed), f"{seed}.toml")
    kitchen = remembered_kitchen(store)
    keep_sales(store, kitchen, io.BytesIO(sales_text(kitchen, seed)), "sales.csv", "ymd")
    return store, kitchen


def bench_at(store: Store, kitchen: Kitchen, slot_s: float, tune: bool = True) -> Bench:
    """The kitchen's day in slots of a length."""
    assert kitchen.trade is not None
    return bench_for(store, replace(kitchen, trade=replace(kitchen.trade, slot_s=slot_s)), DATE, tune=tune)


@dataclass(slots=True)
class Played:
    """A day as it goes: what the planner knows, and what it has cost."""

    bench: Bench
    state: State
    free_s: list[float]
    money: float = 0.0
    sold_n: float = 0.0
    short_n: float = 0.0
    thrown_n: float = 0.0
    lifts_s: dict[int, float] = field(default_factory=dict)

    @classmethod
    def of(cls, bench: Bench) -> Played:
        """A day that has not begun."""
        day = bench.day
        none = np.full(day.mean_n.shape, np.nan)
        state = State(now_n=0.0, since=[0] * day.fryers_count, sold_n=none, bare=np.isfinite(none))
        return cls(bench=bench, state=state, free_s=[0.0] * day.fryers_count)

    def lift(self, now_s: float) -> None:
        """Take out what is done; throw away what is too old."""
        day, slot, state = self.bench.day, self.bench.day.slot_s, self.state
        for load in [x for x in state.in_oil if self.lifts_s[x.fryer] <= now_s + 1e-6]:
            state.in_oil.remove(load)
            at, tray = self.lifts_s[load.fryer] / slot, {"units_n": load.units_n, "left_n": load.units_n}
            state.lifts.append(Lifted(fryer=load.fryer, at_n=at, ready_n=self.free_s[load.fryer] / slot))
            ends, same = at + day.items[load.item].life_n, {"load": load.load, "fryer": load.fryer}
            state.trays.append(
                Tray(item=load.item, drop_n=load.drop_n, lift_n=at, ends_n=ends, **tray, **same)
            )
        for tray in state.trays:
            if tray.ends_n <= state.now_n + 1e-9:
                self.throw(tray.item, tray.left_n)
                tray.left_n = 0.0
        state.trays = [x for x in state.trays if x.left_n > 0]
        state.lifts = [x for x in state.lifts if x.ready_n > state.now_n]
        state.drops = [x for x in state.drops if x[1] > state.now_n - 2]
        state.filters = [x for x in state.filters if self.free_s[x[0]] > now_s]

    def throw(self, item: int, units: float) -> None:
        """Pay for pieces thrown away."""
        self.thrown_n += units
        self.money += units * self.bench.day.items[item].waste_money

    def begin(self, act: Act, now_s: float) -> None:
        """Drop a load or begin a filter turn."""
        (f, i, k), state, day = act, self.state, self.bench.day
        if i < 0:
            state.filters.append((f, state.now_n))
            state.since[f], self.free_s[f] = 0, now_s + self.bench.trade.filter_s
            self.money += day.filter_money
            return
        fact = self.bench.loads[i][k]
        self.lifts_s[f], self.free_s[f] = now_s + fact.cook_s, now_s + fact.cook_s + fact.recovery_s
        ends, drop = self.lifts_s[f] / day.slot_s, Drop(fryer=f, item=i, load=k, slot=int(state.now_n))
        units = float(fact.pieces_count)
        state.in_oil.append(InOil(fryer=f, item=i, load=k, units_n=units, drop_n=state.now_n, lift_n=ends))
        state.drops.append((drop, state.now_n))
        state.since[f] += 1
        self.money += day.items[i].loads[k].batch_money

    def serve(self, wanted: np.ndarray) -> None:
        """Guests of a minute take what stands there, oldest first."""
        state, t = self.state, min(int(self.state.now_n + 1e-9), self.bench.day.slots_count - 1)
        for i, asked in enumerate(wanted):
            left = float(asked)
            for tray in sorted((x for x in state.trays if x.item == i), key=lambda x: x.ends_n):
                taken = min(left, tray.left_n)
                tray.left_n, left = tray.left_n - taken, left - taken
            state.sold_n[i, t] = asked - left + np.nan_to_num(state.sold_n[i, t])
            state.bare[i, t] |= left > 0
            self.sold_n, self.short_n = self.sold_n + asked - left, self.short_n + left
            self.money += left * self.bench.day.items[i].short_money


def by_rule(bench: Bench, state: State) -> list[Act]:
    """What the rule does in each idle fryer."""
    today = from_now(bank_now(bench.day, state), state)
    rules, (t, world, belief) = rules_now(today, state, bench.par), world_of(today, state)
    engine.believe(belief, world, rules)
    found = []
    for f in map(int, rules[16]):
        if world[2][0, f] <= t and today.window(f)[0] <= t < today.window(f)[1]:
            i, k = engine.rule_action(f, t, engine.needs(t, world, rules), world, rules)
            if i > engine.NOTHING and engine.start(f, t, i, k, world, rules, np.zeros(6)):
                found.append((f, int(i), int(k)))
    return found


def played(bench: Bench, asked: np.ndarray, paths: int) -> Played:
    """One day of guests (product, minute)."""
    one, look = Played.of(bench), replace(bench.look, paths_count=paths)
    for minute in range(asked.shape[1]):
        now_s = minute * TICK_S
        one.state.now_n = now_s / bench.day.slot_s
        one.lift(now_s)
        if min(one.free_s) <= now_s + 1e-6 and one.state.now_n < bench.day.slots_count:
            acts = by_rule(bench, one.state)
            if paths:
                told = (a for a in advise(bench.day, one.state, bench.par, look) if a.kind != "wait")
                acts = [(a.fryer, a.item if a.kind == "drop" else -1, a.load) for a in told]
            for act in acts:
                if one.free_s[act[0]] <= now_s + 1e-6:
                    one.begin(act, now_s)
        one.serve(asked[:, minute])
    for stay in (*one.state.trays, *one.state.in_oil):
        one.throw(stay.item, getattr(stay, "left_n", stay.units_n))
    return one


def main() -> None:
    """Print a line for each kitchen and length of slot."""
    words = argparse.ArgumentParser(prog="python -m benchmarks.slots", description=__doc__)
    words.add_argument("--kitchens", default="8001,8003,8006,8012,8021,8029,8043,8056")
    words.add_argument("--days", type=int, default=8)
    words.add_argument(
        "--paths", type=int, default=0, help="imagined days of the board's advice; 0: the rule"
    )
    words.add_argument("--slots", default="300,240", help="lengths in seconds, the first is compared with")
    told = words.parse_args()
    business_day.SHORT_HOLD_S = 0.0  # each length as it is asked for
    for seed in map(int, told.kitchens.split(",")):
        with tempfile.TemporaryDirectory() as folder:
            store, kitchen = kitchen_of(seed, folder)
            fine, costs = bench_at(store, kitchen, TICK_S, tune=False).day, {}
            rng, wide = np.random.default_rng(seed), np.maximum(fine.spreads_n - 1.0, 1e-6)[:, None]
            levels = rng.gamma(1.0 / fine.level_cv_frac**2, fine.level_cv_frac**2, size=told.days)
            days = [rng.poisson(rng.gamma(np.maximum(x * fine.mean_n / wide, 1e-9), wide)) for x in levels]
            for slot_s in map(float, told.slots.split(",")):
                bench = bench_at(store, kitchen, slot_s)
                ones = [played(bench, asked, told.paths) for asked in days]
                costs[slot_s] = np.array([one.money for one in ones])
                base = next(iter(costs.values()))
                change = 100.0 * (costs[slot_s] - base) / base.mean()
                sold, short, thrown = (
                    sum(getattr(one, name) for one in ones) for name in ("sold_n", "short_n", "thrown_n")
                )
                half = 1.96 * change.std(ddof=1) / np.sqrt(told.days)
                sys.stdout.write(
                    f"kitchen {seed}, {fine.fryers_count} fryers, slots of {slot_s:.0f} s:"
                    f" {costs[slot_s].mean():.1f} a day, {change.mean():+.1f} ± {half:.1f} %;"
                    f" served {100 * sold / (sold + short):.0f} %,"
                    f" thrown away {100 * thrown / (sold + thrown):.0f} %\n"
                )
                sys.stdout.flush()


if __name__ == "__main__":
    main()
