"""Several kitchens in one store: which there are, and a new one, empty or as a copy with its differences."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from frywright.catalog.edit import for_another_place, with_place
from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.drafts import change_draft
from frywright.ledger.facts.cook import ProgramSaved
from frywright.ledger.facts.fleet import KitchenOpened
from frywright.ledger.store import SEALED_COPY, Store
from frywright.ledger.writer import HOME
from frywright.model.errors import InputError, one_of
from frywright.model.kitchen import Site
from frywright.model.roles import SITE
from frywright.rooms.cook.setup_text import key_for, line
from frywright.rooms.hall import in_turn, write
from frywright.rooms.kitchen import has_kitchen, kitchen_text, remember_kitchen, remembered_kitchen
from frywright.rooms.records.people import add_device
from frywright.verdicts.place import place_named

LONGEST_NAME, FILE = 60, "kitchen.toml"


@dataclass(frozen=True, slots=True, kw_only=True)
class Here:
    """One kitchen of a store: its key (empty for the first), its name, whether it is described yet, and
    whether its own site keeps the record and sends it here.
    """

    key: str
    name: str
    described: bool
    sent_here: bool = False

    @property
    def address(self) -> str:
        """Where its pages begin."""
        return f"/at/{self.key or '-'}/"


def kitchens_of(store: Store) -> tuple[Here, ...]:
    """Every kitchen of a store, the first one first."""
    opened = (item.fact for item in store.home.facts(KitchenOpened))
    return (_here(store, None), *(_here(store, fact) for fact in opened))


def kitchen_at(store: Store, key: str) -> Store:
    """The store as one of its kitchens sees it; nothing is written into one that its own site sends here.
    Raises InputError: it has no kitchen of that key.
    """
    opened = {item.fact.key: item.fact for item in store.home.facts(KitchenOpened)}
    if key and key not in opened:
        raise InputError("kitchen", repr(key), "one of: {known}", known=", ".join(opened) or "-")
    found = store.at(key)
    if key and opened[key].sent_here:
        found.sealed = SEALED_COPY
    return found


def _here(store: Store, opened: KitchenOpened | None) -> Here:
    """A kitchen under the name it gives itself; one that is sent here under the name it has in this store, so
    that a long list reads no kitchen's file.
    """
    key, name, sent = (opened.key, opened.name, opened.sent_here) if opened else (HOME, "", False)
    there = has_kitchen(store.at(key))
    own = remembered_kitchen(store.at(key)).site.name if there and not sent else name
    return Here(key=key, name=own, described=there, sent_here=sent)


@in_turn
def open_kitchen(store: Store, typed: Mapping[str, str]) -> str:
    """Open a further kitchen and give its key. ``name``; ``like``, the key of the one it is a copy of (``-``
    for the first, empty for none); a copy's ``altitude`` and ``jurisdiction``, empty for the same.

    A copy has the other's fryers, birds and newest programs. What was measured on the other's fryers is an
    estimate there, calibrations, proofs and readings stay behind, and the altitude moves what is predicted.
    Raises InputError: a name that is none or taken, an unknown kitchen or place, an altitude that cannot be
    read.
    """
    name, key = _name_and_key(store, typed.get("name", ""))
    like = typed.get("like", "")
    source = None
    if like:
        described = {here.key or "-": here for here in kitchens_of(store) if here.described}
        one_of(tuple(described), like, "kitchen")
        source = described[like]
    copy_of = source.key if source else None
    write(store.home, KitchenOpened(key=key, name=name, copy_of=copy_of, sent_here=False))
    there = store.at(key)
    if source is None:
        begun = {"typed": {"name": name}, "done": False, "skipped": False, "revision": 1}
        change_draft(there, "setup kitchen", lambda draft: {"screens": {"place": begun}})
    else:
        _copy(store.at(source.key), there, name, typed)
    return key


@in_turn
def await_kitchen(store: Store, name: str, by: str) -> tuple[str, str]:
    """A kitchen whose own site keeps the record and sends it here: its key, and the token that its site sends
    with, shown once. Raises InputError: a name that is none or taken.
    """
    name, key = _name_and_key(store, name)
    write(store.home, KitchenOpened(key=key, name=name, copy_of=None, sent_here=True))
    return key, add_device(store, key, SITE, by)


def _name_and_key(store: Store, name: str) -> tuple[str, str]:
    """A name for a further kitchen, and its key."""
    name, known = " ".join(name.split()), kitchens_of(store)
    if not 2 <= len(name) <= LONGEST_NAME:
        raise InputError("name", repr(name), "2 to {most} letters", most=LONGEST_NAME)
    given = [here.name for here in known] + [e.fact.name for e in store.home.facts(KitchenOpened)]
    if name.casefold() in {one.casefold() for one in given}:
        raise InputError("name", repr(name), "one that no kitchen here has yet")
    return name, key_for(name, "kitchen", {here.key for here in known})[:40]


def _copy(source: Store, there: Store, name: str, typed: Mapping[str, str]) -> None:
    """Another kitchen's file and programs, at their own place."""
    site = remembered_kitchen(source).site
    system, lines = site.units, {"name": line("name", name, site.units)}
    altitude = _altitude(site, typed.get("altitude", "").strip())
    if altitude is not None:
        lines["altitude"] = line("altitude_m", altitude, system)
    place = typed.get("jurisdiction", "")
    if place:
        place_named(place)
        lines["jurisdiction"] = line("jurisdiction", place, system)
    text = for_another_place(with_place(kitchen_text(source), lines))
    parse_kitchen(text, FILE)
    remember_kitchen(there, text, FILE)
    kitchen = remembered_kitchen(source)
    newest = {kitchen.program(p.name) for p in kitchen.programs}
    for item in source.facts(ProgramSaved):
        program = item.fact.program
        if program in newest and (program.name, program.version) not in kitchen.retired:
            write(there, ProgramSaved.of(program, short=None, origin="carried"))


def _altitude(site: Site, text: str) -> float | None:
    """An altitude as typed, in the units of the kitchen that is copied; None where it stays the same."""
    altitude = site.read(text, "length", "altitude") if text else None
    return None if altitude is None else replace(site, altitude_m=altitude).altitude_m
