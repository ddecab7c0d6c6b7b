"""A practice day played to its end by following the board's advice, with a fryer that fails on the way."""

from __future__ import annotations

from dataclasses import dataclass, field

from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day, time_of_day_s
from frywright.plan.live import What
from frywright.rooms.day.board import Board, Tap
from frywright.rooms.day.board_rows import Cooking, ShelfRow
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.compare import compare_down


@dataclass(frozen=True, slots=True, kw_only=True)
class Deed:
    """Something done on a practice day; empty where it is about no such thing."""

    at: str
    what: str
    text: str
    fryer: str = ""
    product: str = ""
    pieces_count: int = 0
    reason: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Round:
    """A practice day while it is played."""

    board: Board
    tr: Translate
    told: list[Deed] = field(default_factory=list)

    def tell(
        self,
        what: str,
        text: str,
        at_s: float,
        fryer: str = "",
        product: str = "",
        pieces_count: int = 0,
        reason: str = "",
    ) -> None:
        """Tell the board, and keep what was done."""
        about = {"fryer": fryer, "product": product, "reason": reason}
        self.told.append(Deed(at=time_of_day(at_s), what=what, text=text, pieces_count=pieces_count, **about))
        key = f"round-{self.board.bench.date}-{self.board.practice}-{len(self.told)}"
        self.board.tell(Tap(key=key, what=what, at_s=at_s, pieces_count=pieces_count, **about))

    def throw(self, shelf: ShelfRow, count: int, at_s: float, reason: str) -> None:
        """Throw away pieces of a product, if there are any."""
        if count:
            text = self.tr(
                "throw away {count} {product} at the close"
                if reason == "close"
                else "throw away {count} {product}"
            ).format(count=count, product=shelf.name)
            self.tell(What.DISCARD, text, at_s, product=shelf.product, pieces_count=count, reason=reason)


def play_day(board: Board, down: str = "", tr: Translate = str) -> list[Deed]:
    """Follow the advice slot by slot; ``down`` is ``fryer@HH:MM``. Returns what was done, in order.
    Raises InputError: a real day, or a failure that cannot be read.
    """
    if board.practice is None:
        raise InputError("practice", "a real day", "a practice day")
    fails, fails_s = "", float("inf")
    if down:
        fails, _, at = down.partition("@")
        board.kitchen.fryer(fails)
        fails_s = time_of_day_s(at, "down")
    trade, second = board.bench.trade, board.bench.trade.start_s
    played = _Round(board=board, tr=tr)
    while second < trade.closes_s:
        if second >= fails_s:
            shown = compare_down(board, second, fails, tr)
            played.tell(
                What.DOWN,
                say(
                    "{fryer} fails: more pieces that will be missing: about {count}; trim {trim}",
                    {"fryer": fails, "count": f"{shown.short_n:.0f}", "trim": shown.trim or tr("nothing")},
                    translate=tr,
                ),
                second,
                fryer=fails,
            )
            fails_s = float("inf")
        view = board_view(board, second, tr)
        for fryer in view.fryers:
            if isinstance(fryer, Cooking) and fryer.lift_s < second + trade.slot_s:
                text = tr("lift {product} from {fryer}").format(product=fryer.product, fryer=fryer.name)
                played.tell(What.LIFT, text, fryer.lift_s, fryer=fryer.key)
        for shelf in view.shelf:
            played.throw(shelf, shelf.expired, second, "expired")
        for advice in board_view(board, second, tr).advice:
            if advice.kind != "wait":
                played.tell(
                    advice.kind,
                    advice.headline,
                    second,
                    fryer=advice.fryer,
                    product=advice.product,
                    pieces_count=advice.pieces,
                )
        second += trade.slot_s
    second = trade.closes_s
    for shelf in board_view(board, second, tr).shelf:
        played.throw(shelf, shelf.count + shelf.expired, second, "close")
    return played.told
