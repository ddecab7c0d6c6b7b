"""The board as it is shown: frozen rows that a page, the terminal, paper and a program read alike."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.rooms.day.orders import OrderRow


@dataclass(frozen=True, slots=True, kw_only=True)
class Advised:
    """What to do now at a fryer, when to start, and why."""

    kind: str
    fryer: str
    fryer_name: str
    start_s: float
    start: str
    reason: str
    gain_money: float
    product: str = ""
    pieces: int = 0
    caution: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class DropNow(Advised):
    """A load to drop."""

    program: str
    name: str
    amount: str
    headline: str
    in_service: bool
    """Whether its program is: a load of any other is told of as refused, not advised."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TurnOrWait(Advised):
    """A filter turn to begin, or nothing yet."""

    headline: str


Act = DropNow | TurnOrWait


@dataclass(frozen=True, slots=True, kw_only=True)
class FryerLine:
    """A fryer in floor order, whatever it does."""

    key: str
    number: int
    name: str
    state: str  # idle, cooking, down, off or filter
    since_filter: int
    filter_every: int
    pressure: bool
    text: str
    held: bool
    down: bool
    down_text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Empty(FryerLine):
    """A fryer with nothing in it."""

    act: Act | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Cooking(FryerLine):
    """A fryer with a load in it; its clock goes on whatever is said of the fryer."""

    product: str
    pieces: int
    drop: str
    drop_s: float
    lift_s: float
    lift: str
    vent_s: float | None
    vent_text: str
    act: Act | None


FryerRow = Empty | Cooking


@dataclass(frozen=True, slots=True, kw_only=True)
class TrayRow:
    """A tray on the shelf."""

    left: int
    lift: str
    ends: str
    ends_s: float
    expired: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Into:
    """A fryer for a product, with its smallest and largest load and how long it takes."""

    fryer: str
    number: int
    name: str
    free: bool
    off: str
    """Why the plan has it off now, where nothing else speaks against a load; empty for one at heat."""
    least: int
    most: int
    takes: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ShelfRow:
    """A product: what stands on the shelf, what comes, what is past its hold life."""

    product: str
    name: str
    out: bool
    count: int
    coming: int
    hold_s: float
    ends_s: float | None
    trays: tuple[TrayRow, ...]
    expired: int
    to_order: bool
    into: tuple[Into, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class LastDrop:
    """The last time at which a product is worth a drop; empty for none."""

    name: str
    at: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadWords:
    """A load of a fryer in the words of the crew."""

    fryer: str
    pieces: int
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadTime:
    """A load's clock: what a tablet that lost the server goes on with."""

    fryer: str
    product: str
    name: str
    pieces: int
    lift_s: float
    vent_s: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason:
    """A reason to throw away: as it is kept, and in the reader's language."""

    value: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BoardView:
    """Everything the board shows at a time."""

    date: str
    now_s: float
    clock: str
    practice: int | None
    open: bool
    people: int
    advice: tuple[Act, ...]
    fryers: tuple[FryerRow, ...]
    shelf: tuple[ShelfRow, ...]
    orders: tuple[OrderRow, ...]
    last_drops: tuple[LastDrop, ...]
    level_n: float
    notes: tuple[str, ...]
    estimated: bool
    loads: tuple[tuple[LoadWords, ...], ...]
    times: tuple[LoadTime, ...]
    reasons: tuple[Reason, ...]
    alarm: str
    """Why everyone leaves the kitchen, and what to do; empty as long as nobody has to."""
