"""The one place that knows the time."""

from __future__ import annotations

import datetime as dt


def now() -> dt.datetime:
    """The present moment, aware UTC."""
    return dt.datetime.now(dt.UTC)
