"""The hours, hands and money of a kitchen's day as they are typed; they go into the kitchen file."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from zoneinfo import available_timezones

from frywright.catalog.edit import with_day, with_sell, without_sell
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import usual_trade
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.trade import MOST_HANDS, Trade, time_of_day, time_of_day_s
from frywright.rooms.cook.setup_read import Asked, called
from frywright.rooms.cook.setup_text import line
from frywright.rooms.kitchen import kitchen_text, remember_kitchen, remembered_kitchen

TIMES = ("first_drop", "opens", "closes")
MOST_LOADS, LONGEST_CURRENCY, MOST_MONEY = 200, 8, 1e4
"""What can be typed at most: loads between filter turns, letters, money a piece (own choice)."""
FILE = "kitchen.toml"


def day_typed(kitchen: Kitchen) -> dict[str, str]:
    """What stands in the boxes of a kitchen; a kitchen without a day gets usual hours and no money."""
    trade = usual_trade(kitchen)
    found = {name: str(getattr(trade, name)) for name in TIMES}
    found |= {
        "zone": trade.zone if kitchen.trade else "",
        "currency": trade.currency,
        "hands": str(trade.hands_count),
        "filter_every": str(trade.filter_every_count),
        "rush": ", ".join(trade.rush),
    }
    for sell in kitchen.sells:
        for what, amount in (("margin", sell.margin_money), ("cost", sell.cost_money)):
            found[f"{what}_{sell.product}"] = f"{amount:.10g}".replace(".", kitchen.site.decimal_mark)
    return found


def keep_day(
    store: Store, typed: Mapping[str, str], reason: str = ""
) -> tuple[Kept[KitchenSet] | None, Mapping[str, InputError]]:
    """Put the day into the kitchen file; None and what is wrong, box by box, where something is.
    Raises InputError, DataError: the kitchen's file would not read it: nothing is kept.
    """
    with store.writing():
        kitchen = remembered_kitchen(store)
        asked = Asked(kitchen.site, typed)
        lines, money = _day(asked), _money(asked, kitchen)
        if asked.wrong:
            return None, asked.wrong
        text = with_day(kitchen_text(store), lines)
        for product, earned in money.items():
            if earned:
                text = with_sell(text, product, earned)
            elif any(sell.product == product for sell in kitchen.sells):
                text = without_sell(text, product)
        return remember_kitchen(store, text, FILE, reason), {}


def _day(asked: Asked) -> dict[str, str]:
    """Lines of the day's table."""
    times = {name: asked.read(name, _time(name)) for name in TIMES}
    values = {
        "zone": asked.read("zone", _zone),
        **times,
        "currency": asked.read("currency", _currency, needed=False) or "",
        "hands_count": asked.count("hands", 1, MOST_HANDS),
        "filter_every_count": asked.count("filter_every", 1, MOST_LOADS),
        "rush": asked.read("rush", _rush, needed=False) or (),
    }
    if not asked.wrong:
        asked.read("first_drop", lambda _: Trade(**times))
    return {name: line(name, value, asked.site.units) for name, value in values.items() if value is not None}


def _time(name: str) -> Callable[[str], str]:
    return lambda text: time_of_day(time_of_day_s(text, called(name)))


def _zone(text: str) -> str:
    if text not in available_timezones():
        raise InputError(called("zone"), repr(text[:40]), "a time zone such as America/Denver")
    return text


def _currency(text: str) -> str:
    if len(text) > LONGEST_CURRENCY or not text.isprintable():
        raise InputError(called("currency"), repr(text[:20]), "a sign or a few letters, such as $ or EUR")
    return text


def _rush(text: str) -> tuple[str, ...]:
    """Spans as the kitchen file writes them."""
    spans = tuple(part.strip().replace("–", "-").replace(" ", "") for part in text.split(",") if part.strip())
    return tuple("-".join(time_of_day(t) for t in span) for span in Trade(rush=spans).rush_s)


def _money(asked: Asked, kitchen: Kitchen) -> dict[str, dict[str, str]]:
    """Lines of each product's table of sale; none where both boxes are empty."""
    found: dict[str, dict[str, str]] = {}
    for product in kitchen.products:
        boxes = {f"{what}_money": f"{what}_{product.key}" for what in ("margin", "cost")}
        found[product.key] = {}
        if any(asked.text(box) for box in boxes.values()):
            amounts = {name: asked.read(box, _amount(asked, product.name)) for name, box in boxes.items()}
            found[product.key] = {n: line(n, v, asked.site.units) for n, v in amounts.items() if v}
    if kitchen.products and not any(found.values()) and not asked.wrong:
        box = f"margin_{kitchen.products[0].key}"
        asked.refuse(box, InputError("money", "empty", "given for at least one product"))
    return found


def _amount(asked: Asked, name: str) -> Callable[[str], float]:
    def reads(text: str) -> float:
        if not text:
            raise InputError("money", "empty", "given with the other of the two", where=name)
        value = asked.site.number(text, "money")
        if not 0.001 <= value <= MOST_MONEY:
            raise InputError("money", repr(text[:20]), "above 0, for one piece", where=name)
        return value

    return reads
