"""The rule of a kitchen, tuned on drawn days: first par, one cover and spread for all, then each product's
own; then call and fill apart, by part of the day.

Each step changes one number and is kept where days get cheaper by it; a change that does not help on the
first days is not tried on the others. Where no single number helps any more, a search with time to spare
moves a few at once on thousands of days: fewer teach a rule their own luck.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.plan import engine
from frywright.plan.model import Day
from frywright.plan.replay import PARTS, Par, Rule, given

Array = NDArray[np.float64]
COVERS, ZS = (1, 2, 3, 4, 5, 6, 8, 10, 12, 16), (-0.5, 0.0, 0.5, 1.0, 1.5)
LADDERS = (
    (0, 1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24),
    (-2.0, -1.5, -1.0, -0.5, 0.0, 0.5, 1.0, 1.5, 2.0, 3.0),
    (0.05, 0.15, 0.3, 0.5, 0.7, 1.0, 1.5),
    (0, 1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 30, 36),
    (-2.0, -1.5, -1.0, -0.5, 0.0, 0.5, 1.0, 1.5, 2.0, 3.0),
)
"""Steps of cover, spreads, call, cover and spreads of the fill."""
QUIETS = (0.5, 0.75, 2.0)
TABLE, BANK = 12, 6
"""Places of the rule and of the bank among what the engine is given."""
FIRST_DAYS = 40
"""Days on which a change must help before it meets the rest."""
SEARCH_DAYS, TRIES = 3000, 1500
"""Days and tries of a search with time to spare (own choices: 40 s with one fryer, minutes with four)."""
AT_ONCE, REACH = 3, 2
"""Most numbers that a search moves at once, and the rungs each moves at most (own choices)."""


def tuned(day: Day, demand: ArrayLike, rounds: int = 2) -> Par:
    """The par rule that costs least on given days: one cover and spread for all, then each product's own in
    ``rounds`` rounds.

    Tune on other days than those it is judged on.
    """

    days, count, fixed = _whole(demand), len(day.items), given(day, Par())
    known: dict[Par, float] = {}

    def cost(rule: Par) -> float:
        if rule not in known:
            known[rule] = float(_costs(days, (*fixed[:TABLE], rule.table(count), *fixed[TABLE + 1 :])).mean())
        return known[rule]

    rules = [Par(cover_slots=(cover,) * count, z_n=(z,) * count) for cover in COVERS for z in ZS]
    best = min(rules, key=cost)
    least = cost(best)
    for _ in range(rounds):
        before = least
        for n in range(count):
            for rule in _near(best, n):
                found = cost(rule)
                if found < least - 1e-9:
                    best, least = rule, found
        if least >= before - 1e-9:
            break
    return best


def _whole(demand: ArrayLike) -> NDArray[np.int64]:
    return np.ascontiguousarray(demand, dtype=np.int64)


def _costs(days: NDArray[np.int64], rules: tuple[Any, ...]) -> Array:
    """Cost of each day under a rule."""
    parts = np.zeros((len(days), 6))
    engine.play_rule(days, rules, parts)
    return np.asarray(parts[:, :3].sum(axis=1))


def _near(rule: Par, item: int) -> list[Par]:
    """Rules with a little more or less cover and spread for one product."""
    found, (cover, z) = [], rule.of(item)
    for c in COVERS[max(0, COVERS.index(cover) - 2) : COVERS.index(cover) + 3]:
        for s in ZS[max(0, ZS.index(z) - 1) : ZS.index(z) + 2]:
            covers, zs = list(rule.cover_slots), list(rule.z_n)
            covers[item], zs[item] = c, s
            found.append(Par(cover_slots=tuple(covers), z_n=tuple(zs)))
    return found


@dataclass(slots=True)
class _Search:
    """A table under change, and the cost of every day under the best so far."""

    days: NDArray[np.int64]
    rules: tuple[Any, ...]
    every: int
    best: Array
    first: int = FIRST_DAYS

    def cost(self, low: int, high: int) -> Array:
        """Cost of each of some days under the table as it is."""
        return _costs(self.days[low:high], self.rules)

    def better(self) -> bool:
        """Whether the table as it is costs less than the best so far; if so it is the best."""
        first = min(self.first, len(self.days))
        some = self.cost(0, first)
        if some.mean() >= self.best[:first].mean():
            return False
        found = np.concatenate([some, self.cost(first, len(self.days))]) if first < len(self.days) else some
        if found.mean() >= self.best.mean() - 1e-9:
            return False
        self.best = found
        return True


def tuned_rule(day: Day, demand: ArrayLike, start: Par | Rule, rounds: int = 2) -> Rule:
    """The rule by part of the day that costs least on given days, from par or another rule on.

    Tune on other days than those it is judged on.
    """
    days = _whole(demand)
    search = _Search(days=days, rules=given(day, start), every=day.filter_every_count, best=np.zeros(0))
    search.best = search.cost(0, len(days))
    quiet, whole = start.quiet_frac, slice(None)
    parts = [slice(q, q + 1) for q in range(PARTS)]
    for turn in range(rounds):
        before = search.best.mean()
        for i in range(len(day.items)):
            for row in (3, 0, 4, 2, 1):
                for part in (whole,) if row in (0, 3) else ((whole, *parts) if turn == 0 else parts):
                    _climb(search, (row, part, i))
        quiet = _quiet(search, quiet)
        if search.best.mean() >= before - 1e-3 * abs(before):
            break
    return _rule(search.rules[TABLE], quiet)


def _rule(table: Array, quiet: float) -> Rule:
    rows = (tuple(tuple(float(x) for x in row) for row in block) for block in table)
    return Rule(table_n=tuple(rows), quiet_frac=quiet)


def searched_rule(day: Day, demand: ArrayLike, start: Rule, tries: int, seed: int = 1) -> Rule:
    """A rule that costs less on given days than the one it starts from: tries of one to three numbers moved
    at once, each for a part of the day or all of it, on every day.
    """
    days, rng = _whole(demand), np.random.default_rng(seed)
    search = _Search(
        days=days, rules=given(day, start), every=day.filter_every_count, best=np.zeros(0), first=len(days)
    )
    search.best, table = search.cost(0, len(days)), search.rules[TABLE]
    for _ in range(tries):
        kept = table.copy()
        for _ in range(int(rng.integers(1, AT_ONCE + 1))):
            _move(table, rng)
        if not search.better():
            table[:] = kept
    return _rule(table, start.quiet_frac)


def _move(table: Array, rng: np.random.Generator) -> None:
    """One number of a table, for a part of the day or all of it, up or down its ladder."""
    row, i, q = (int(rng.integers(n)) for n in (len(LADDERS), table.shape[2], PARTS + 1))
    part, ladder = slice(None) if q == PARTS else slice(q, q + 1), LADDERS[row]
    at = int(np.argmin(np.abs(np.array(ladder) - table[row, part, i][0])))
    at += int(rng.integers(1, REACH + 1)) * (1 if rng.random() < 0.5 else -1)
    table[row, part, i] = ladder[min(max(at, 0), len(ladder) - 1)]


def _climb(search: _Search, place: tuple[int, slice, int]) -> None:
    """Walk one number up its ladder, or down, while days get cheaper."""
    table, (row, part, i) = search.rules[TABLE], place
    ladder = LADDERS[row]
    for step in (1, -1):
        while True:
            kept = table[row, part, i].copy()
            at = int(np.argmin(np.abs(np.array(ladder) - kept[0]))) + step
            if not 0 <= at < len(ladder):
                break
            table[row, part, i] = ladder[at]
            if not search.better():
                table[row, part, i] = kept
                break


def _quiet(search: _Search, quiet: float) -> float:
    """The share of a filter turn's loads from which a quiet moment is used for it."""
    bank = search.rules[BANK]
    for tried in QUIETS:
        kept = int(bank[4])
        bank[4] = min(search.every, max(1, round(tried * search.every)))
        if bank[4] != kept and search.better():
            quiet = tried
        else:
            bank[4] = kept
    return quiet
