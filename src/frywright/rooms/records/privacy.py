"""What the record holds of one person, for that person; and a name taken out of it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from frywright.ledger.accounts import Accounts
from frywright.ledger.facts.fact import Kept, kept
from frywright.ledger.facts.people import NameRemoved, PersonListed, about_person
from frywright.ledger.names import people_kept, remove
from frywright.ledger.private import Private
from frywright.ledger.store import Store
from frywright.model.entry import Recorded, stamp
from frywright.model.errors import InputError
from frywright.model.roles import folded, same_person
from frywright.model.tongues import Translate
from frywright.rooms.hall import given_words, in_turn, write

INSTEAD = "person removed on {date} ({mark})"
BEYOND = (
    "The name stays in notes and photos, in drafts, and in entries of before names were kept apart. It stays"
    " in backups and exports, on paper, and in PostgreSQL's own log. After an older backup is restored,"
    " remove it again."
)
"""What a removal does not reach."""
NOT_HERE = (
    "Not in this file: drafts, and your name within notes and photos. Nor is what backups, exports, paper, an"
    " office and PostgreSQL's own log hold, and what was dropped at the end of its time."
)
MARK_LETTERS = 6
"""Letters of the reference that tell two removed people apart."""


def own_data(store: Store, name: str) -> Iterator[dict[str, Any]]:
    """Everything on record about a person: the account, a birthday still kept, and every entry that the
    person wrote or that has the name in it.
    """
    account = Accounts(store).account(name)
    if account is not None:
        yield {"account": account.name, "role": account.role, "active": account.active}
    for item in store.entries(named=True):
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
    return {"born": Private(store).value(fact.born_ref or "")} if same_person(fact.name, name) else {}


@in_turn
def remove_name(store: Store, name: str, by: str, reason: str, tr: Translate = str) -> Kept[NameRemoved]:
    """Take a person's name out of the record: entries hold a reference that leads nowhere from now on, and
    the chain stays as it is. The account goes with it. What was written before names were kept apart, and
    names within notes, stay as they were hashed. Raises InputError: nobody of that name is on record, the
    person still works here or may sign in, or no reason.

    Parameters
    ----------
    tr : language of what stands in the name's place from then on
    """
    accounts = Accounts(store)
    reason = given_words(reason)
    with store.looking() as connection:
        known = [one for one in people_kept(connection) if not one.removed_on]
    mine = [one for one in known if folded(one.name) == folded(name)]
    if not mine:
        raise InputError("name", repr(name), "one that entries refer to")
    open_ones = [a for a in accounts.accounts() if folded(a.name) == folded(name)]
    if any(a.active for a in open_ones):
        raise InputError("name", repr(name), "one that may not sign in: switch the account off first")
    if _works_here(store, name):
        raise InputError("name", repr(name), "one who has left: say so on the page of people first")
    refs = tuple(one.ref for one in mine)
    done = write(store.home, NameRemoved(refs=refs, by=by, reason=reason.strip()[:200]))
    on = done.happened_at.date().isoformat()
    with store.writing() as writer:
        for one in mine:
            remove(writer.connection, one.ref, tr(INSTEAD).format(date=on, mark=one.ref[:MARK_LETTERS]), on)
    for account in open_ones:
        accounts.drop(account.name)
    return done


def _works_here(store: Store, name: str) -> bool:
    """Whether a kitchen of this store still lists somebody."""
    return any(
        not item.fact.left and folded(item.fact.name) == folded(name)
        for site in store.sites()
        for item in store.at(site).current_facts(PersonListed)
    )
