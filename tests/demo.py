"""The invented demo kitchen in a store."""

from __future__ import annotations

from pathlib import Path

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.kitchens import demo_text


def remember_demo(store: Store) -> None:
    """Load it, without its fortnight."""
    remember_kitchen(store, demo_text(), "demo/kitchen.toml")


def demo_store(path: Path) -> str:
    """A new store with it; its name."""
    store = Store.file(path, now)
    remember_demo(store)
    store.close()
    return str(path)
