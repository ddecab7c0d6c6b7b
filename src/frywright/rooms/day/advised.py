"""What to do now, worked out once for everybody who looks at the same board."""

from __future__ import annotations

from collections import OrderedDict
from threading import Lock
from typing import Any

from frywright.plan.advice import Advice, advise
from frywright.plan.live import State
from frywright.plan.model import Day
from frywright.rooms.day.day import Bench

KEPT_COUNT = 32
_KEPT: OrderedDict[tuple[Any, ...], tuple[Bench, list[Advice]]] = OrderedDict()
_TURN = Lock()


def advised(bench: Bench, state: State, day: Day) -> list[Advice]:
    """What to do now in every idle fryer; the same where nothing that counts has changed. ``day`` is the
    bench's, with the people who are there.

    Time counts by the slot: within it nothing but what happens, and hold lives that end, changes advice.
    """
    key = (id(bench), day.hands_count, *_counts(state))
    with _TURN:
        if key not in _KEPT:
            _KEPT[key] = bench, advise(day, state, bench.par, bench.look)
            if len(_KEPT) > KEPT_COUNT:
                _KEPT.popitem(last=False)
        return list(_KEPT[key][1])


def _counts(state: State) -> tuple[Any, ...]:
    """All of a state that advice looks at."""
    slot = max(int(state.now_n), 0)
    trays = tuple((t.item, t.left_n, t.lift_n) for t in state.trays if t.ends_n > state.now_n)
    back = tuple(sorted(state.back_n.items()))
    sold = state.sold_n[:, :slot].tobytes()
    outside = frozenset(state.down), back, frozenset(state.out)
    done = tuple(state.since), tuple(state.filters), tuple(state.lifts)
    return slot, tuple(state.in_oil), trays, sold, *done, *outside
