"""A tap that another tablet has told already is kept once; a tap made by mistake is taken back within ten
seconds. Nothing is erased: the mistake and its taking back both stay on record.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from frywright.ledger.facts.day import UNDO, BoardTap
from frywright.ledger.facts.fact import Kept
from frywright.model.errors import InputError
from frywright.plan.live import What
from frywright.rooms.clock import now
from frywright.rooms.day.lifting import Answer, thrown_key

if TYPE_CHECKING:
    from frywright.rooms.day.board import Board, Tap

SAME_S = 60.0
"""Two tablets that tell the same within this time tell of one act (own choice)."""
UNDO_S, ON_THE_WAY_S = 10.0, 5.0
"""How long a tap can be taken back, and how long its taking back may be on its way (own choice)."""
RIVALS = {
    What.LIFT: (What.DROP, What.LIFT),
    What.FILTER: (What.FILTER,),
    What.DOWN: (What.DOWN, What.UP),
    What.UP: (What.DOWN, What.UP),
    What.OUT: (What.OUT, What.IN),
    What.IN: (What.OUT, What.IN),
    What.DISCARD: (What.DISCARD,),
}
"""What a tap stands against: it is a second one where the last of these said the same."""


def twin_of(board: Board, tap: Tap) -> Kept[BoardTap] | None:
    """What another tablet told of the same act, or None."""
    if tap.what == What.DROP:
        return _same_drop(board, tap)
    if tap.what == UNDO:
        told = board.entries()
        mine = {e.number for e in told if e.fact.key == tap.undoes}
        return next((e for e in told if e.replaces in mine), None)
    if tap.what not in RIVALS or (tap.what == What.DISCARD and tap.reason != "expired"):
        return None
    rivals = RIVALS[What(tap.what)]
    about = _about(tap)
    last = next(
        (e for e in reversed(board.taps()) if e.fact.what in rivals and _about(e.fact, tap.what) == about),
        None,
    )
    if last is None or last.fact.what != tap.what:
        return None
    answered = tap.what == What.LIFT and tap.reason in list(Answer)  # the question stood on both tablets
    return last if answered or abs(tap.at_s - last.fact.at_s) <= SAME_S else None


def _about(told: Tap | BoardTap, what: str = "") -> tuple[object, ...]:
    """What must be alike in two taps of one act."""
    what = what or told.what
    if what == What.DISCARD:
        return told.product, told.pieces_count, told.reason
    return (told.product,) if what in (What.OUT, What.IN) else (told.fryer,)


def _same_drop(board: Board, tap: Tap) -> Kept[BoardTap] | None:
    """The load that another tablet has just dropped by the same advice: same fryer, product and pieces."""
    bench = board.bench
    for load in board.state(tap.at_s).in_oil:
        fact = bench.loads[load.item][load.load]
        drop_s = bench.trade.start_s + load.drop_n * bench.trade.slot_s
        if (
            (fact.fryer, fact.product) == (tap.fryer, tap.product)
            and abs(tap.at_s - drop_s) <= SAME_S
            and round(load.units_n) == tap.pieces_count
        ):
            return next(e for e in board.taps() if e.number == load.entry_number)
    return None


def thrown_after(board: Board, tap: Tap, lift: Kept[BoardTap]) -> Tap | None:
    """The load of a ``lift`` thrown away, where this tablet says that it was and the one that was first did
    not: food that somebody threw away stands on no shelf. None where nothing is to be said.
    """
    if tap.what != What.LIFT or tap.reason != Answer.THROWN or lift.fact.reason == Answer.THROWN:
        return None
    key, told = thrown_key(tap.key), board.taps()
    drops = (e.fact for e in told if e.fact.what == What.DROP and e.fact.fryer == tap.fryer)
    drop = next((one for one in reversed(list(drops)) if one.at_s <= lift.fact.at_s), None)
    if drop is None or any(e.fact.key == key for e in told):
        return None
    there = round(board.state(tap.at_s).shelf(board.bench.products.index(drop.product)))
    reason = "undercooked" if lift.fact.reason == Answer.PROBED else "burnt"
    thrown = replace(tap, key=key, what="discard", product=drop.product, reason=reason)
    return replace(thrown, pieces_count=min(drop.pieces_count, there)) if there else None


def take_back(board: Board, tap: Tap) -> Kept[BoardTap]:
    """Keep that a tap was a mistake; it counts no more and stays on record. Called while writing.
    Raises InputError: no such tap, one of longer ago, or something was done in the same fryer since.
    """
    told = board.entries()
    mine = next((e for e in told if e.fact.key == tap.undoes and e.fact.what != UNDO), None)
    if mine is None:
        raise InputError("undo", repr(tap.undoes), "a tap that this board has kept")
    since_s = min(abs(tap.at_s - mine.fact.at_s), (now() - mine.recorded_at).total_seconds())
    if since_s > UNDO_S + ON_THE_WAY_S:
        raise InputError("undo", "too late", "pressed within ten seconds; count or throw away what is wrong")
    thrown = next((e for e in told if e.fact.key == thrown_key(tap.undoes)), None)
    own = {mine.number, *([thrown.number] if thrown else [])}
    if any(
        e.number > mine.number and e.number not in own and e.fact.fryer == mine.fact.fryer != ""
        for e in board.taps()
    ):
        raise InputError("undo", "too late", "pressed before the next act in this fryer")
    if thrown is not None:
        _keep_undone(board, replace(tap, key=thrown_key(tap.key)), thrown)
    return _keep_undone(board, tap, mine)


def _keep_undone(board: Board, tap: Tap, mine: Kept[BoardTap]) -> Kept[BoardTap]:
    fact = mine.fact
    undone = replace(
        tap, fryer=fact.fryer, product=fact.product, pieces_count=fact.pieces_count, reason=fact.what
    )
    return board.keep(undone, replaces=mine.number)
