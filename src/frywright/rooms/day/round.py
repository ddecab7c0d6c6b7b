"""A practice day played to its end by following the board's advice, with a fryer that fails on the way."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from frywright.model.errors import InputError
from frywright.model.trade import time_of_day, time_of_day_s
from frywright.plan.live import What
from frywright.rooms.day.board import Board, Tap
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.compare import compare_down


def play_day(board: Board, down: str = "") -> list[dict[str, Any]]:
    """Follow the advice slot by slot; ``down`` is ``fryer@HH:MM``. Returns what was done, in order.

    Raises
    ------
    InputError
        A real day, or a failure that cannot be read.
    """
    if board.practice is None:
        raise InputError("practice", "a real day", "a practice day")
    fails, fails_s = "", float("inf")
    if down:
        fails, _, at = down.partition("@")
        board.kitchen.fryer(fails)
        fails_s = time_of_day_s(at, "down")
    trade, told, second, number = board.bench.trade, [], board.bench.trade.start_s, 0

    def tell(what: str, text: str, at_s: float | None = None, **values: Any) -> None:
        nonlocal number
        number += 1
        at = second if at_s is None else at_s
        board.tell(
            Tap(key=f"round-{board.bench.date}-{board.practice}-{number}", what=what, at_s=at, **values)
        )
        told.append({"at": time_of_day(at), "what": what, "text": text, **values})

    def throw(shelf: Mapping[str, Any], count: int, when: str, reason: str) -> None:
        if count:
            text = f"throw away {count} {shelf['name']}{when}"
            tell(What.DISCARD, text, product=shelf["product"], pieces_count=count, reason=reason)

    while second < trade.closes_s:
        if second >= fails_s:
            shown = compare_down(board, second, fails)
            tell(
                What.DOWN,
                f"{fails} fails: about {shown['short_n']:.0f} more pieces will be missing; trim"
                f" {shown['trim'] or 'nothing'}",
                fryer=fails,
            )
            fails_s = float("inf")
        view = board_view(board, second)
        for fryer in view["fryers"]:
            if fryer["state"] == "cooking" and fryer["lift_s"] < second + trade.slot_s:
                text = f"lift {fryer['product']} from {fryer['name']}"
                tell(What.LIFT, text, fryer["lift_s"], fryer=fryer["key"])
        for shelf in view["shelf"]:
            throw(shelf, shelf["expired"], "", "expired")
        for advice in board_view(board, second)["advice"]:
            if advice["kind"] != "wait":
                tell(
                    advice["kind"],
                    advice["headline"],
                    fryer=advice["fryer"],
                    product=advice["product"],
                    pieces_count=advice["pieces"],
                )
        second += trade.slot_s
    second = trade.closes_s
    for shelf in board_view(board, second)["shelf"]:
        throw(shelf, shelf["count"] + shelf["expired"], " at the close", "close")
    return told
