"""The one place that knows the time."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

_PLAYED: ContextVar[dt.datetime | None] = ContextVar("played", default=None)


def now() -> dt.datetime:
    """The present moment, aware UTC."""
    return _PLAYED.get() or dt.datetime.now(dt.UTC)


@contextmanager
def played(moment: dt.datetime) -> Iterator[None]:
    """The moment at which an invented scenario plays; nothing else may set a clock."""
    mark = _PLAYED.set(moment)
    try:
        yield
    finally:
        _PLAYED.reset(mark)
