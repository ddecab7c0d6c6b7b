"""A store that an older version wrote is served by this one, page by page and entry by entry."""

from __future__ import annotations

import shutil

import pytest

from frywright.ledger.accounts import Accounts
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.records import people
from frywright.web.kitchens import Kitchens
from tests.browsers import browser
from tests.ledger.test_old_stores import HEADS, STORES
from tests.web.addresses import ADDRESSES

LONG = ("practice", "replay")
"""Pages of drawn days, which read no more of the record than the day's own page."""


@pytest.mark.slow
@pytest.mark.parametrize("commit", sorted(HEADS))
def test_every_page_of_an_old_store_is_served(commit, tmp_path):
    """Pages, papers and each entry, for its owner where it has one; what it cannot show it says in words."""
    shutil.copy(STORES / f"{commit}.db", tmp_path / "old.db")
    store = Store.file(tmp_path / "old.db", now)
    entries, head = HEADS[commit]
    pages = browser(Kitchens(store), page=True, raise_server_exceptions=False, follow_redirects=False)
    owner = next((one.name for one in Accounts(store).accounts() if one.role == "owner"), "")
    if owner:
        pages.cookies.set("session", people.begun(store, owner, "password"))
    asked = [address for address in ADDRESSES if not any(word in address for word in LONG)]
    asked += [f"/records/entry/{number}" for number in range(1, entries + 1)]
    codes = {address: pages.get(address).status_code for address in asked}
    assert {address: code for address, code in codes.items() if code >= 500} == {}
    assert {code for address, code in codes.items() if "/records/entry/" in address} == {200, 422}
    assert codes["/records/entry/99999"] == 422 and list(codes.values()).count(200) > entries + 35
    assert store.verify() == (entries, head) or (owner and store.entry(entries).hash == head)
    store.close()
