"""Facts of the day: what the board was told, sales read in, days unlike others, the close signed off."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Annotated, ClassVar, Literal

from pydantic import Field

from frywright.ledger.facts.fact import Fact, Kept

UNDO = "undo"
"""What a tap says that takes back the one it replaces."""
Lack = Literal["readings", "checks", "close"]
OrderState = Literal["promised", "handed over", "withdrawn"]


@dataclass(frozen=True, slots=True, kw_only=True)
class BoardTap(Fact):
    """One thing told at the board: a drop, a lift, a sale, pieces thrown away, a fryer down."""

    KIND: ClassVar[str] = "day_event"
    WORDS: ClassVar[frozenset[str]] = frozenset({"what", "reason"})
    key: str
    date: dt.date
    what: str
    at_s: float
    fryer: str
    product: str
    pieces_count: int
    reason: str
    who: str
    practice_count: int | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PracticeTap(BoardTap):
    """A tap of a practice day, whose guests are invented: never evidence."""

    KIND: ClassVar[str] = "practice_event"


def standing(items: Iterable[Kept[BoardTap]]) -> list[Kept[BoardTap]]:
    """Taps that were not taken back, in their order, without those that took back."""
    told = list(items)
    undone = {item.replaces for item in told if item.fact.what == UNDO}
    return [item for item in told if item.fact.what != UNDO and item.number not in undone]


@dataclass(frozen=True, slots=True, kw_only=True)
class SalesRead(Fact):
    """A till's export that was read in; its bytes are kept beside the store."""

    KIND: ClassVar[str] = "sales_file"
    FILES: ClassVar[tuple[str, ...]] = ("sha256",)
    name: str
    sha256: str
    size_bytes: int
    order: str
    first: Annotated[dt.date, Field(alias="from")]
    last: Annotated[dt.date, Field(alias="to")]
    lines_count: int
    refused_count: int
    columns: tuple[str, ...] | None = None
    day: dt.date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SalesWaiting(Fact):
    """A till's file that could not be read by itself: it waits until somebody says what its columns are, or
    leaves it out.
    """

    KIND: ClassVar[str] = "sales_waiting"
    FILES: ClassVar[tuple[str, ...]] = ("sha256",)
    LABELS: ClassVar[Mapping[str, str]] = {"reason": "why"}
    name: str
    sha256: str
    size_bytes: int
    reason: str
    left_out: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class ItemMapped(Fact):
    """What an item of the till takes from the fryers: pieces as in the kitchen file's menu, none for what is
    not fried.
    """

    KIND: ClassVar[str] = "item_mapped"
    item: str
    pieces: tuple[str, ...]
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PostedLine:
    """One line of a sale as the till posted it; ``line`` is the till's own number of it."""

    line: str
    at: dt.datetime
    item: str
    quantity_n: float
    order: str
    kind: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SalesPosted(Fact):
    """Sales as a till posted them."""

    KIND: ClassVar[str] = "sales_posted"
    till: str
    lines: tuple[PostedLine, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class DayNoted(Fact):
    """A day said to be unlike others."""

    KIND: ClassVar[str] = "day_note"
    date: dt.date
    event: str
    factor_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderPromised(Fact):
    """Pieces promised to a customer for a time of the business day; ``ticket`` is what the order is called,
    no name of a person. ``chance_frac`` is that of all of it being there, where it was found too low and the
    order was promised all the same; version 1 did not keep it.
    """

    KIND: ClassVar[str] = "order_promised"
    VERSION: ClassVar[int] = 2
    LABELS: ClassVar[Mapping[str, str]] = {"chance_frac": "promised all the same at a chance of"}
    WORDS: ClassVar[frozenset[str]] = frozenset({"state"})
    date: dt.date
    product: str
    pieces_count: int
    ready_s: float
    ticket: str
    state: OrderState
    chance_frac: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CloseStepSigned(Fact):
    """A step of the close, signed; ``plan`` is what the night held for its fryer, empty for the store's."""

    KIND: ClassVar[str] = "close_step"
    date: dt.date
    fryer: str
    step: str
    who: str
    second: str
    value: str
    plan: str


@dataclass(frozen=True, slots=True, kw_only=True)
class GapExplained(Fact):
    """Why the records of a day lack readings, thermometer checks or the close."""

    KIND: ClassVar[str] = "gap_explained"
    WORDS: ClassVar[frozenset[str]] = frozenset({"lack"})
    LABELS: ClassVar[Mapping[str, str]] = {"lack": "what is missing", "words": "why"}
    date: dt.date
    lack: Lack
    words: str
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FilesDropped(Fact):
    """Original files whose time was over were dropped; older entries go on naming them by their hash."""

    KIND: ClassVar[str] = "files_dropped"
    before: dt.date
    names: tuple[str, ...]
    who: str
    second: str
    reason: str
