"""What should be done now: one sentence and one act, and what it is about."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import IntEnum


class Harm(IntEnum):
    """What can hurt first comes first (project's own order)."""

    STOPPED = 0  # a fryer that must not be used
    WRONG = 1  # a fryer that holds what nobody should cook by
    CASE = 2  # food below its limit, not decided yet
    AGAIN = 3  # a prediction that has moved
    READING = 4  # a probe or thermometer reading that is due
    OIL = 5
    CARE = 6
    GAP = 7  # what yesterday's records lack
    NEXT = 8  # the next step of a program
    RECORD = 9  # what was never recorded


@dataclass(frozen=True, slots=True, kw_only=True)
class NowLine:
    """One thing to do.

    Parameters
    ----------
    act : what does it, by a name that the pages know
    about : what it is done to: a program, a fryer, the number of a case
    text : a template filled from ``values``; numbers there are in inside units, named with them
    then : a second sentence, filled from the same values
    due_at : when it becomes due; None is now
    count : so many things it stands for
    """

    harm: Harm
    act: str
    text: str
    then: str = ""
    about: str = ""
    values: Mapping[str, float | str | tuple[str, ...]] = field(default_factory=dict)
    due_at: dt.datetime | None = None
    count: int = 1
