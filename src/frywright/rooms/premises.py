"""What an inspector finds a kitchen by: its address, its permit, who runs it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.people import PlaceNamed
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.hall import write

STATED = ("address", "permit", "operator")
LONGEST_TEXT = 200


def place_named(store: Store) -> PlaceNamed:
    """What an inspector finds the kitchen by; empty where nobody said."""
    newest = next(iter(store.facts(PlaceNamed, newest_first=True)), None)
    return newest.fact if newest else PlaceNamed(address="", permit="", operator="", who="")


def stated(name: str, text: str) -> str:
    """Address, permit or operator as it is kept. Raises InputError: longer than 200 letters."""
    plain = " ".join(text.split())
    if len(plain) > LONGEST_TEXT:
        raise InputError(name, repr(plain[:20]), "200 letters at most")
    return plain


def name_place(store: Store, values: Mapping[str, Any]) -> Kept[PlaceNamed]:
    """Keep address, permit and who runs the kitchen, as they are typed; each may be empty.
    Raises InputError: a text longer than 200 letters.
    """
    texts = {name: stated(name, str(values.get(name, "") or "")) for name in STATED}
    return write(store, PlaceNamed(**texts, who=str(values.get("who", "") or "")[:80]))
