"""The rest of the day as it was and as it is now: with a fryer and without it, with a product and without."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from frywright.model.errors import one_of
from frywright.model.tongues import Translate
from frywright.plan.live import State
from frywright.rooms.day.board import Board


@dataclass(frozen=True, slots=True, kw_only=True)
class HalfHour:
    """Pieces asked for in vain in half an hour, before and now."""

    from_: str
    old_n: float
    new_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class NewPlan:
    """The rest of the day before and now: what is asked for in vain, money, and which product to trim."""

    what: str
    product: str
    halves: tuple[HalfHour, ...]
    old_money: float
    new_money: float
    short_n: float
    fill_old_frac: float
    fill_new_frac: float
    trim: str
    old_drops: int
    new_drops: int


def compare_down(board: Board, now_s: float, fryer: str, tr: Translate = str) -> NewPlan:
    """The rest of the day with a fryer and without it."""
    state = board.state(now_s)
    board.kitchen.fryer(fryer)
    f = board.bench.fryers.index(fryer)
    with_it = replace(state, down={k: v for k, v in state.down.items() if k != f})
    return _compare(board, with_it, replace(state, down={**state.down, f: state.now_n}), fryer, tr)


def compare_out(board: Board, now_s: float, product: str, tr: Translate = str) -> NewPlan:
    """The rest of the day with a product and without it: its raw pieces are not there."""
    state = board.state(now_s)
    one_of(board.bench.products, product, "product")
    i = board.bench.products.index(product)
    with_it, without = replace(state, out=state.out - {i}), replace(state, out=state.out | {i})
    name = tr(board.bench.day.items[i].name)
    return replace(_compare(board, with_it, without, product, tr), product=name, trim="")


def _compare(board: Board, old_state: State, new_state: State, what: str, tr: Translate) -> NewPlan:
    bench = board.bench
    old, new = board.rest_of_day(old_state), board.rest_of_day(new_state)
    halves = []
    for low, end in bench.trade.half_hours(max(int(old_state.now_n), 0)):
        a, b = (float(x.short_n[:, low:end].sum()) for x in (old, new))
        halves.append(HalfHour(from_=bench.trade.clock_of(low), old_n=round(a, 1), new_n=round(b, 1)))
    more = np.maximum(new.short_n.sum(axis=1) - old.short_n.sum(axis=1), 0.0)
    worst = int(np.argmax(more))
    return NewPlan(
        what=what,
        product="",
        halves=tuple(halves),
        old_money=round(old.rest_money, 2),
        new_money=round(new.rest_money, 2),
        short_n=round(float(more.sum()), 1),
        fill_old_frac=old.fill_frac,
        fill_new_frac=new.fill_frac,
        trim=tr(bench.day.items[worst].name) if more[worst] >= 1 else "",
        old_drops=len(old.plan.drops),
        new_drops=len(new.plan.drops),
    )
