"""Who acts and when: one value for each request, and the one place that knows the time."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, replace

AHEAD = dt.timedelta(minutes=10)
"""How far a device's clock may run ahead of this machine's (project's own rule)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Hall:
    """What an act stands on beside its store.

    ``author`` is whoever is signed in while something is done for them. ``second`` confirmed with a PIN or
    password of their own while somebody else acts: empty for nobody, None where no accounts are asked, at the
    machine itself or from a device's program. ``moment`` is the one at which an invented scenario plays; None
    for the present.
    """

    author: str = ""
    second: str | None = None
    moment: dt.datetime | None = None


_HERE: ContextVar[Hall | None] = ContextVar("hall", default=None)


def here() -> Hall:
    """Who acts now, and when."""
    return _HERE.get() or Hall()


def enter(hall: Hall) -> None:
    """Who acts from here to the end of the request."""
    _HERE.set(hall)


@contextmanager
def acting(hall: Hall) -> Iterator[None]:
    """Who acts inside the block."""
    mark = _HERE.set(hall)
    try:
        yield
    finally:
        _HERE.reset(mark)


def now() -> dt.datetime:
    """The present moment, aware UTC."""
    return here().moment or dt.datetime.now(dt.UTC)


def played(moment: dt.datetime) -> AbstractContextManager[None]:
    """The moment at which an invented scenario plays; nothing else may set a clock."""
    return acting(replace(here(), moment=moment))
