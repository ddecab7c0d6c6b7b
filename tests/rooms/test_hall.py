"""Who acts and when is one value: it goes back whatever happens, and two at once keep theirs apart."""

from __future__ import annotations

import datetime as dt
from concurrent.futures import ThreadPoolExecutor
from contextvars import copy_context
from threading import Barrier

import pytest

from frywright.ledger.facts.care import StopUse
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms import hall
from frywright.rooms.clock import Hall, acting, enter, here, now, played

FACT = StopUse(fryer="left", reason="relief_open", words="it blew", who="Ana")
NOON = dt.datetime(2026, 6, 10, 12, tzinfo=dt.UTC)


def test_an_act_is_kept_under_its_author_at_its_moment(tmp_path):
    """Inside the block; after it, also after an error, as before."""
    store = Store.file(tmp_path / "h.db", now)
    with acting(Hall(author="Ana Vale", moment=NOON)):
        inside = hall.write(store, FACT)
    assert (inside.author, inside.happened_at) == ("Ana Vale", NOON)
    with pytest.raises(ZeroDivisionError), acting(Hall(author="Kim")):
        _ = 1 / 0
    assert here() == Hall()
    assert hall.write(store, FACT).author == hall.AUTHOR


def test_a_moment_played_keeps_who_acts():
    """Only the clock changes."""
    with acting(Hall(author="Ana", second="Kim")), played(NOON):
        assert here() == Hall(author="Ana", second="Kim", moment=NOON)


def test_a_second_person_counts_as_the_door_said():
    """Nobody asks at the machine itself; where people sign in, the one who confirmed and no other."""
    hall.confirmed("Kim")
    with acting(Hall(author="Ana", second="Kim Vale")):
        hall.confirmed("  kim   vale ")
        with pytest.raises(InputError, match="PIN"):
            hall.confirmed("Lee")
    with acting(Hall(author="Ana", second="")), pytest.raises(InputError, match="PIN"):
        hall.confirmed("Kim Vale")


def test_two_requests_at_once_keep_theirs_apart():
    """Each sets its own value in its own context, meets the other, and finds its own again."""
    both = Barrier(2, timeout=30)

    def request(name: str) -> str:
        enter(Hall(author=name))
        both.wait()
        return here().author

    with ThreadPoolExecutor(2) as pool:
        found = [pool.submit(copy_context().run, request, name) for name in ("Ana", "Kim")]
        assert [f.result() for f in found] == ["Ana", "Kim"]
    assert here() == Hall()


def test_a_name_and_a_reason_are_kept_without_the_blanks_around_them():
    """A name from two letters on and cut after 80; a reason from four on; a box not there is empty."""
    assert hall.by_name(f"  {'A' * 90} ") == "A" * 80 and hall.by_name(" Al ") == "Al"
    assert hall.given_words(" late ") == "late"
    for short, read in (("A ", hall.by_name), ("x y ", hall.given_words), ("", hall.given_words)):
        with pytest.raises(InputError, match="Alder"):
            read(short, where="Alder")
    form = {"who": " Ana ", "note": None}
    assert [hall.typed(form, name) for name in ("who", "note", "second")] == ["Ana", "", ""]
