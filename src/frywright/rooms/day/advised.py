"""What to do now, worked out once for everybody who looks at the same board."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass
from threading import Lock
from typing import Any

from frywright.plan.advice import Advice, Before, advise
from frywright.plan.live import State
from frywright.plan.model import Day
from frywright.rooms.day.day import Bench

KEPT_COUNT = 32
STANDS_S = 60.0
"""An advice stands for so long, whatever time and sales say (project's own aim)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """What a board showed last: when, with what from outside, and since when each fryer's advice stands."""

    bench: Bench
    at_n: float
    outside: tuple[Any, ...]
    advice: tuple[Advice, ...]
    since_n: dict[int, float]


_KEPT: OrderedDict[tuple[Any, ...], tuple[Bench, list[Advice]]] = OrderedDict()
_SHOWN: OrderedDict[tuple[int, int | None], Shown] = OrderedDict()
_TURN = Lock()


def advised(bench: Bench, state: State, day: Day, practice: int | None = None) -> list[Advice]:
    """What to do now in every idle fryer; the same where nothing that counts has changed. ``day`` is the
    bench's, with the people who are there.

    Time counts by the slot: within it nothing but what happens, and hold lives that end, changes advice. A
    drop or filter turn that was advised stands for a minute unless it can no longer be done, a load that was
    not advised goes in, or something comes from outside (a fryer down or back, a product out, people, pieces
    thrown away); and after that until another is cheaper beyond doubt.
    """
    board = id(bench), practice
    key = (*board, day.hands_count, *_counts(state))
    with _TURN:
        last = _SHOWN.get(board)
        if key not in _KEPT:
            _KEPT[key] = bench, advise(day, state, bench.par, bench.look, _before(last, state, day))
            if len(_KEPT) > KEPT_COUNT:
                _KEPT.popitem(last=False)
        found = _KEPT[key][1]
        _SHOWN[board] = _shown(bench, last, found, state, _outside(state, day))
        _SHOWN.move_to_end(board)
        if len(_SHOWN) > KEPT_COUNT:
            _SHOWN.popitem(last=False)
        return list(found)


def _shown(
    bench: Bench, last: Shown | None, advice: Sequence[Advice], state: State, outside: tuple[Any, ...]
) -> Shown:
    before = {a.fryer: a for a in last.advice} if last else {}
    since = {}
    for one in advice:
        was = before.get(one.fryer)
        same = last is not None and was is not None and _same(was, one) and last.at_n <= state.now_n
        since[one.fryer] = last.since_n[one.fryer] if last and same else state.now_n
    return Shown(bench=bench, at_n=state.now_n, outside=outside, advice=tuple(advice), since_n=since)


def _same(one: Advice, other: Advice) -> bool:
    return (one.kind, one.item, one.load) == (other.kind, other.item, other.load)


def _before(last: Shown | None, state: State, day: Day) -> Before | None:
    """What was advised within the last slot, and the fryers in which it stands."""
    if last is None or not 0.0 <= state.now_n - last.at_n <= 1.0:
        return None
    advice, firm = {a.fryer: a for a in last.advice}, frozenset[int]()
    new = [load for load in state.in_oil if load.drop_n > last.at_n]
    followed = all(load.fryer in advice and advice[load.fryer].item == load.item for load in new)
    if followed and last.outside == _outside(state, day):
        least = state.now_n - STANDS_S / day.slot_s
        firm = frozenset(f for f, at in last.since_n.items() if at > least and advice[f].kind != "wait")
    return Before(advice=advice, firm=firm)


def _outside(state: State, day: Day) -> tuple[Any, ...]:
    """What nobody advised and no guest took."""
    thrown = sum(x.units_n for x in state.thrown)
    return day.hands_count, frozenset(state.down), _back(state), frozenset(state.out), thrown


def _back(state: State) -> tuple[tuple[int, float], ...]:
    return tuple(sorted(state.back_n.items()))


def _counts(state: State) -> tuple[Any, ...]:
    """All of a state that advice looks at."""
    slot = max(int(state.now_n), 0)
    trays = tuple((t.item, t.left_n, t.lift_n) for t in state.trays if t.ends_n > state.now_n)
    sold = state.sold_n[:, :slot].tobytes()
    outside = frozenset(state.down), _back(state), frozenset(state.out)
    done = tuple(state.since), tuple(state.filters), tuple(state.lifts)
    return slot, tuple(state.in_oil), trays, sold, *done, *outside
