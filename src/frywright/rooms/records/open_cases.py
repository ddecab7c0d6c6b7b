"""The cases that are open, kept until one is opened or moves on."""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from weakref import WeakKeyDictionary

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CaseOpened, CaseStep
from frywright.ledger.store import Store

_OPEN: WeakKeyDictionary[Store, tuple[tuple[object, ...], list[Kept[CaseOpened]]]] = WeakKeyDictionary()
"""The open cases of each store, and the newest entries up to which that is."""


def still_open(store: Store) -> list[Kept[CaseOpened]]:
    """What opened the cases that are open, newest first; looked for again when a case moved on."""
    newest = tuple(next(store.facts(cls, newest_first=True), None) for cls in (CaseOpened, CaseStep))
    known = _OPEN.get(store)
    if known is None or any(a is not b for a, b in zip(known[0], newest, strict=True)):
        closed = closed_cases(store)
        found = [e for e in store.facts(CaseOpened, newest_first=True) if e.number not in closed]
        known = _OPEN[store] = newest, found
    return list(known[1])


def closed_cases(store: Store) -> Mapping[Hashable, Kept[CaseStep]]:
    """What closed each case, by the number of the case."""
    return store.newest_by(CaseStep, _closing)


def _closing(step: CaseStep) -> int | None:
    return step.case_number if step.step == "closed" else None
