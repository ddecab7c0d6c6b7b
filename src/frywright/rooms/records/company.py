"""Accounts of people who sign in at their company: which of its people is which account here."""

from __future__ import annotations

import hashlib

from frywright.ledger.accounts import Accounts
from frywright.ledger.facts.people import AccountLinked
from frywright.ledger.store import Store
from frywright.model.errors import AccessError, InputError
from frywright.rooms.hall import given_words, in_turn, write
from frywright.rooms.records.people import begun


def mark_of(issuer: str, subject: str) -> str:
    """What the chain holds of somebody elsewhere: who vouches, and their name for the person that is never
    given to another.
    """
    return hashlib.sha256(f"{issuer}\n{subject}".encode()).hexdigest()


@in_turn
def link_account(store: Store, name: str, mark: str, by: str, reason: str) -> None:
    """From now on whoever signs in elsewhere as ``mark`` is this account; an empty mark ends it.
    Raises InputError: an unknown account, no reason, or somebody who is another account here.
    """
    if Accounts(store).account(name) is None:
        raise InputError("name", repr(name), "an account that exists")
    reason = given_words(reason)
    if mark and _links(store).get(mark, name) != name:
        raise InputError("subject", "taken", "one that is linked to no other account")
    fact = AccountLinked(name=name, mark=mark, by=by, reason=reason.strip()[:200])
    write(store.home, fact)


def _links(store: Store) -> dict[str, str]:
    """Account by mark; the newest word on an account counts."""
    newest = {item.fact.name: item.fact.mark for item in store.home.facts(AccountLinked)}
    return {mark: name for name, mark in newest.items() if mark}


def sign_in_as(store: Store, mark: str, old: str = "") -> str:
    """A session's token for whoever the company vouches for. Raises AccessError: nobody here is linked to
    them, or the account is switched off.
    """
    account = Accounts(store).account(_links(store).get(mark, ""))
    if account is None or not account.active:
        raise AccessError("Your company knows you, but no account here is linked to you. Ask the owner.")
    return begun(store, account.name, "company", None, old)
