"""The invented demo kitchen in a store."""

from __future__ import annotations

import datetime as dt
import io
from pathlib import Path

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.day.practice import demo_sales
from frywright.rooms.day.sales import keep_sales
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text


def remember_demo(store: Store) -> None:
    """Load it, without its fortnight."""
    remember_kitchen(store, demo_text(), "demo/kitchen.toml")


def kitchen_store(path: Path, text: str = "") -> Store:
    """A new store with the kitchen of a file's text, else with it."""
    store = Store.file(path, now)
    remember_kitchen(store, text or demo_text(), "kitchen.toml")
    return store


FRIDAY = dt.date(2026, 11, 27)
"""The day that tests plan, with eight weeks of invented sales before it, whenever they run."""


def keep_demo_sales(store: Store) -> None:
    """Read in the invented sales up to the day before the Friday."""
    kitchen = remembered_kitchen(store)
    text = demo_sales(kitchen, FRIDAY - dt.timedelta(days=1))
    keep_sales(store, kitchen, io.BytesIO(text), "invented-sales.csv", "mdy")


def demo_store(path: Path) -> str:
    """A new store with it; its name."""
    kitchen_store(path).close()
    return str(path)


def sold_store(path: Path) -> Store:
    """A new store with it and those sales."""
    store = kitchen_store(path)
    keep_demo_sales(store)
    return store
