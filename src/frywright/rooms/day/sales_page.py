"""The page of sales: files read and waiting, what of them is not learned from, and items of the menu."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from frywright.ledger.facts.day import ItemMapped, SalesRead, SalesWaiting
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import trade_of
from frywright.model.kitchen import Kitchen
from frywright.model.trade import plain
from frywright.rooms.day.sales import (
    ItemAsked,
    choices_of,
    day_read,
    items_asked,
    menu_of,
    read_kept,
    waiting_files,
)

SHOWN = 20
"""Files that the page of sales shows, newest first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ahead:
    """Lines of a file that are dated later than the day on which it was read in."""

    name: str
    lines_count: int
    first: dt.date
    last: dt.date


def lines_ahead(store: Store, kitchen: Kitchen, item: Kept[SalesRead]) -> Ahead | None:
    """What of a file is not learned from, as its days had not been; None where there is nothing."""
    trade = trade_of(kitchen)
    read = day_read(trade, item)
    if item.fact.last <= read:
        return None
    lines = read_kept(store, item.fact, trade, menu_of(store, kitchen)).lines
    dates = [line.date for line in lines if line.date > read]
    return Ahead(name=item.fact.name, lines_count=len(dates), first=min(dates), last=max(dates))


@dataclass(frozen=True, slots=True, kw_only=True)
class SalesPage:
    """Files read and waiting, lines that are ahead of their file, items to map, what has been mapped, and
    what an item may be made of.
    """

    read: tuple[SalesRead, ...]
    ahead: tuple[Ahead, ...]
    waiting: tuple[SalesWaiting, ...]
    asked: tuple[ItemAsked, ...]
    mapped: tuple[ItemMapped, ...]
    choices: tuple[str, ...]


def sales_page(store: Store, kitchen: Kitchen) -> SalesPage:
    """What the page of sales shows."""
    newest = {plain(e.fact.item): e.fact for e in store.facts(ItemMapped)}
    files = store.current_facts(SalesRead)[: -SHOWN - 1 : -1]
    ahead = [lines_ahead(store, kitchen, item) for item in files]
    return SalesPage(
        read=tuple(item.fact for item in files),
        ahead=tuple(one for one in ahead if one),
        waiting=tuple(e.fact for e in waiting_files(store)),
        asked=tuple(items_asked(store, kitchen)[:60]),
        mapped=tuple(newest.values()),
        choices=tuple(choices_of(kitchen)),
    )
