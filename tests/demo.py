"""The invented demo kitchen in a store."""

from __future__ import annotations

from frywright.ledger.store import Store
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.kitchens import demo_text


def remember_demo(store: Store) -> None:
    """Load it, without its fortnight."""
    remember_kitchen(store, demo_text(), "demo/kitchen.toml")
