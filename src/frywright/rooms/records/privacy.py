"""What the record holds of one person, for that person."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from frywright.ledger.accounts import Accounts
from frywright.ledger.facts.fact import kept
from frywright.ledger.facts.people import PersonListed, about_person
from frywright.ledger.private import Private
from frywright.ledger.store import Store
from frywright.model.entry import Recorded, stamp


def own_data(store: Store, name: str) -> Iterator[dict[str, Any]]:
    """Everything on record about a person: the account, a birthday still kept, and every entry that the
    person wrote or that has the name in it.
    """
    account = Accounts(store).account(name)
    if account is not None:
        yield {"account": account.name, "role": account.role, "active": account.active}
    for item in store.entries():
        if about_person(item, name):
            entry = item.entry
            told = {"entry": item.number, "kind": entry.kind, "author": entry.author}
            moments = {"happened_at": stamp(entry.happened_at), "recorded_at": stamp(item.recorded_at)}
            yield told | moments | {"content": dict(entry.payload)} | _birthday(store, item, name)


def _birthday(store: Store, item: Recorded, name: str) -> dict[str, str]:
    """The birthday that an entry refers to, for the person it lists."""
    if item.entry.kind != PersonListed.KIND:
        return {}
    fact = kept(item, PersonListed).fact
    mine = " ".join(fact.name.split()).casefold() == " ".join(name.split()).casefold()
    return {"born": Private(store).value(fact.born_ref or "")} if mine else {}
