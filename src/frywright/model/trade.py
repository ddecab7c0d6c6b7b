"""What a kitchen sells and how its day runs: hours, hands, menu, money. Read from the kitchen file."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from frywright.model.errors import InputError, Phrase
from frywright.model.units import within

CLOCK = re.compile(r"^([01]?\d|2[0-3]):([0-5]\d)$")
HALF_HOUR_S = 1800.0
MOST_HANDS = 9
"""Most people on the line who can be typed (own choice)."""
MOST_MONEY = 1e9
"""Most money in one figure, in currencies of small units too (own rule)."""
PIECES = re.compile(r"^(?P<product>[\w-]+)(?:/(?P<cut>[\w-]+))?\s+(?P<count>\d+(?:\.\d+)?)$")


@lru_cache(maxsize=64)
def time_of_day_s(text: str, name: str = "time") -> float:
    """Seconds since midnight of ``HH:MM``; InputError otherwise."""
    found = CLOCK.match(text.strip())
    if not found:
        raise InputError(name, repr(text), "a time of day such as 10:30 or 17:05")
    return int(found[1]) * 3600.0 + int(found[2]) * 60.0


def time_of_day(seconds: float) -> str:
    """Seconds since midnight as ``HH:MM``; past midnight it starts again."""
    whole = int(seconds // 60) % 1440
    return f"{whole // 60:02d}:{whole % 60:02d}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Pieces of a product in a menu item; an empty cut means any cut."""

    product: str
    cut: str
    count: float


@dataclass(frozen=True, slots=True, kw_only=True)
class MenuItem:
    """One item as the till calls it, and the pieces it takes; none for what is not fried.

    ``pieces`` are texts such as ``"bone_in/thigh 1"`` or ``"tenders 3"``; ``also`` are other names of the
    same item.
    """

    item: str
    also: tuple[str, ...] = ()
    pieces: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if not self.item.strip():
            raise InputError("item", "empty", "the name on the till")
        _ = self.parts

    @property
    def parts(self) -> tuple[Part, ...]:
        """Pieces by product and cut; InputError for a text that is none."""
        found = []
        for text in self.pieces:
            match = PIECES.match(str(text).strip())
            if not match or not 0 < float(match["count"]) <= 1000:
                raise InputError(
                    "pieces", repr(text), "product/cut and a count, such as bone_in/thigh 2", where=self.item
                )
            found.append(Part(product=match["product"], cut=match["cut"] or "", count=float(match["count"])))
        return tuple(found)

    @property
    def names(self) -> tuple[str, ...]:
        """All names, plain: lower case, single spaces."""
        return tuple(plain(name) for name in (self.item, *self.also))


def plain(name: str) -> str:
    """An item's name without case and doubled spaces."""
    return " ".join(name.lower().split())


@dataclass(frozen=True, slots=True, kw_only=True)
class Sell:
    """Money, loads and stock of one product. ``margin_money`` is lost with a piece too few, ``cost_money``
    with one too many.

    ``load_shares_frac`` are the loads a crew uses, as shares of a full vat. A case holds ``case_count`` units
    (heads or packs) and thaws in ``thaw_s``; it may be used for ``keep_days_count`` days from the pull.
    """

    product: str
    margin_money: float
    cost_money: float
    load_shares_frac: tuple[float, ...] = (0.25, 0.5, 1.0)
    case_count: int = 1
    thaw_s: float = 48 * 3600.0
    keep_days_count: int = 4
    case_thickness_m: float = 0.0

    def __post_init__(self) -> None:
        if not self.margin_money > 0 or not self.cost_money > 0:
            raise InputError(
                "margin and cost",
                Phrase("{low} and {high}", {"low": f"{self.margin_money:g}", "high": f"{self.cost_money:g}"}),
                "above 0 for one piece",
                where=self.product,
            )
        shares = self.load_shares_frac
        if not shares or list(shares) != sorted(set(shares)) or not shares[0] > 0 or shares[-1] > 1:
            raise InputError("load_shares", list(shares), "rising, above 0 up to 1", where=self.product)
        within(
            self,
            self.product,
            margin_money=(0.0, MOST_MONEY),
            cost_money=(0.0, MOST_MONEY),
            case_count=(1, 100_000),
            keep_days_count=(1, 365),
            thaw_s=(0.0, 7 * 86400.0),
            case_thickness_m=(0.0, 1.0),
        )


def money(amount: float, currency: str, spread: float = 0.0) -> str:
    """An amount as people write it: a currency's sign stands before the figure, its letters after.

    An estimate whose spread is 10 or more is written to two figures of it.
    """
    step = 10.0 ** (math.floor(math.log10(spread)) - 1) if spread >= 10.0 else 0.0
    figure = f"{step * round(abs(amount) / step):.0f}" if step else f"{abs(amount):.2f}"
    written = f"{figure} {currency}" if currency.isalpha() else f"{currency}{figure}"
    return f"−{written}" if amount < 0 and float(figure) else written


AMOUNTS = (
    "kwh_money",
    "oil_kg_money",
    "handling_money",
    "filter_money",
    "hour_money",
    "media_money",
    "disposal_kg_money",
    "rebate_kg_money",
)


USUAL_SLOT_S = 300.0
"""A slot of the day: five minutes, own choice."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Trade:
    """How the day of a kitchen runs. Times of day are the store's own clock."""

    opens: str = "10:30"
    closes: str = "22:00"
    first_drop: str = "09:40"
    rolls_over: str = "04:00"
    zone: str = "UTC"
    currency: str = ""
    slot_s: float = USUAL_SLOT_S
    hands_count: int = 3
    filter_every_count: int = 8
    filter_s: float = 600.0
    filter_money: float = 3.0
    warm_up_s: float = 1800.0
    rush: tuple[str, ...] = ()
    cap_w: float = float("inf")
    kwh_money: float = 0.15
    oil_kg_money: float = 2.4
    oil_change_s: float = 2700.0
    hour_money: float = 0.0
    media_money: float = 0.0
    disposal_kg_money: float = 0.0
    rebate_kg_money: float = 0.0
    handling_money: float = 0.5
    catering_count: int = 40

    def __post_init__(self) -> None:
        for name in ("opens", "closes", "first_drop", "rolls_over"):
            time_of_day_s(getattr(self, name), name)
        if not 60.0 <= self.slot_s <= 1800.0 or 86400.0 % self.slot_s:
            raise InputError(
                "slot", f"{self.slot_s:.0f} s", "1 to 30 minutes and a part of a day", where="day"
            )
        if not self.start_s < self.opens_s + 1 or not self.opens_s < self.closes_s:
            raise InputError(
                "first_drop, opens, closes",
                f"{self.first_drop}, {self.opens}, {self.closes}",
                "in this order",
                where="day",
            )
        within(
            self,
            "day",
            hands_count=(1, 100),
            filter_every_count=(1, 10_000),
            catering_count=(1, 1_000_000),
            filter_s=(0.0, 4 * 3600.0),
            warm_up_s=(0.0, 12 * 3600.0),
            oil_change_s=(0.0, 12 * 3600.0),
            **dict.fromkeys(AMOUNTS, (0.0, MOST_MONEY)),
        )
        if not self.cap_w > 0:
            raise InputError("cap", self.cap_w, "above 0", where="day", unit="w")
        _ = self.rush_s

    @property
    def opens_s(self) -> float:
        """Opening, seconds since midnight."""
        return time_of_day_s(self.opens)

    @property
    def closes_s(self) -> float:
        """Close, seconds since midnight; past midnight it is more than a day."""
        closes = time_of_day_s(self.closes)
        return closes if closes > self.opens_s else closes + 86400.0

    @property
    def start_s(self) -> float:
        """First drop, seconds since midnight."""
        return time_of_day_s(self.first_drop)

    @property
    def slots_count(self) -> int:
        """Slots from the first drop to the close."""
        return int((self.closes_s - self.start_s) // self.slot_s)

    @property
    def rush_s(self) -> tuple[tuple[float, float], ...]:
        """Spans without hot-oil moves, seconds since the business day's midnight; one before the roll-over is
        of the night before.
        """
        found = []
        for text in self.rush:
            parts = str(text).split("-")
            times = [self._of_business_day_s(part) for part in parts]
            if len(times) != 2 or not times[0] < times[1]:
                raise InputError("rush", repr(text), "a span such as 17:00-20:00", where="day")
            found.append((times[0], times[1]))
        return tuple(found)

    def _of_business_day_s(self, text: str) -> float:
        second_s = time_of_day_s(text, "rush")
        return second_s + 86400.0 * (second_s < time_of_day_s(self.rolls_over))

    def half_hours(self, first: int = 0) -> list[tuple[int, int]]:
        """Slots from ``first`` on by the clock's half hours: the first of each, and the first after it."""
        parts = [int((self.start_s + t * self.slot_s) // HALF_HOUR_S) for t in range(self.slots_count)]
        begins = [t for t in range(first, len(parts)) if t == first or parts[t] != parts[t - 1]]
        return list(pairwise([*begins, len(parts)]))

    def slot_of(self, second_s: float) -> int:
        """Slot of a time of the business day; before the first drop it is negative."""
        return int((second_s - self.start_s) // self.slot_s)

    def clock_of(self, slot: int) -> str:
        """Time of day at the start of a slot."""
        return time_of_day(self.start_s + slot * self.slot_s)
