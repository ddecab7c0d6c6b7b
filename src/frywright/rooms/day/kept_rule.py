"""The rule tuned for a day, kept on disk by all it was tuned from: the same day is tuned once, over a
restart.
"""

from __future__ import annotations

import hashlib
import json
import os
from collections.abc import Callable
from contextlib import suppress
from dataclasses import fields
from functools import cache
from pathlib import Path

import numpy as np

from frywright.physics.folder import cache_folder
from frywright.plan import engine, replay, tune
from frywright.plan.model import Day
from frywright.plan.replay import PARTS, Rule

KEPT_COUNT = 60
"""Rules kept; the oldest go (own choice)."""


def kept_rule(day: Day, tuned: Callable[[], Rule]) -> Rule:
    """The rule kept for a day, else the one that is tuned now. A file that is none, or a folder that cannot
    be written, only costs time.
    """
    known = _read(_path(day), len(day.items))
    if known is not None:
        return known
    rule = tuned()
    with suppress(OSError):
        keep_rule(day, rule)
    return rule


def keep_rule(day: Day, rule: Rule) -> None:
    """Keep a rule for a day, in place of the one that was; OSError where the folder cannot be written."""
    path = _path(day)
    path.parent.mkdir(parents=True, exist_ok=True)
    new = path.with_suffix(f".{os.getpid()}")
    new.write_text(json.dumps([rule.table_n, rule.quiet_frac]), "utf-8")
    new.replace(path)
    for old in sorted(path.parent.glob("*.json"), key=lambda p: p.stat().st_mtime)[:-KEPT_COUNT]:
        old.unlink(missing_ok=True)


def _path(day: Day) -> Path:
    return cache_folder().parent / "rules" / f"{_mark(day)}.json"


def _mark(day: Day) -> str:
    """What a rule is tuned from: the day, and the code that tunes."""
    words = {x.name: getattr(day, x.name) for x in fields(day) if x.name != "mean_n"}
    whole = _code() + repr(words).encode() + np.ascontiguousarray(day.mean_n).tobytes()
    return hashlib.sha256(whole).hexdigest()[:32]


@cache
def _code() -> bytes:
    return b"".join(Path(str(x.__file__)).read_bytes() for x in (engine, replay, tune))


def _read(path: Path, count: int) -> Rule | None:
    try:
        table, quiet = json.loads(path.read_text("utf-8"))
        found = np.array(table, dtype=float)
        if found.shape != (5, PARTS, count) or not np.isfinite(found).all() or not 0.0 < float(quiet) <= 9.0:
            return None
    except (OSError, ValueError, TypeError):
        return None
    rows = tuple(tuple(tuple(float(x) for x in row) for row in block) for block in found)
    return Rule(table_n=rows, quiet_frac=float(quiet))
