"""Care that is due: by loads, hours at heat, filter turns or days, whichever comes first; and as a
calendar.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass

from frywright.model.care import Task


@dataclass(frozen=True, slots=True, kw_only=True)
class Use:
    """What a fryer did since a task was last done, and what it does on a usual day."""

    loads_count: int
    heat_s: float
    turns_count: int
    days_count: int
    loads_a_day_n: float
    heat_a_day_s: float
    turns_a_day_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """Days until a task is due (negative: overdue), and the counter that decides."""

    task: Task
    days_n: float
    counter: str


def due(task: Task, use: Use) -> Due:
    """When a task is due: the earliest of its counters."""
    found = []
    for counter, every, done, rate in (
        ("loads", task.loads_count, use.loads_count, use.loads_a_day_n),
        ("hours at heat", task.heat_s, use.heat_s, use.heat_a_day_s),
        ("filter turns", task.turns_count, use.turns_count, use.turns_a_day_n),
        ("days", task.days_count, use.days_count, 1.0),
    ):
        if every:
            left = every - done
            found.append((left / rate if rate > 0 else (float("inf") if left > 0 else left), counter))
    days, counter = min(found)
    return Due(task=task, days_n=float(days), counter=counter)


def calendar(items: Sequence[tuple[str, Due]], today: dt.date, now: dt.datetime) -> str:
    """Tasks as an iCalendar file (RFC 5545): one all-day event each, overdue ones today; lines folded at 75
    octets.
    """
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Frywright//care//EN"]
    for where, item in items:
        if item.days_n == float("inf"):
            continue
        day = today + dt.timedelta(days=max(0, int(item.days_n)))
        lines += [
            "BEGIN:VEVENT",
            f"UID:{_plain(where)}-{item.task.key}-{day:%Y%m%d}@frywright",
            f"DTSTAMP:{now.astimezone(dt.UTC):%Y%m%dT%H%M%SZ}",
            f"DTSTART;VALUE=DATE:{day:%Y%m%d}",
            f"SUMMARY:{_text(where)}: {_text(item.task.title)}",
            f"DESCRIPTION:{_text(f'Due by {item.counter}; to be done by: {item.task.who}.')}",
            "END:VEVENT",
        ]
    return "\r\n".join(part for line in [*lines, "END:VCALENDAR"] for part in _folded(line)) + "\r\n"


def _plain(text: str) -> str:
    return "".join(c if c.isalnum() else "-" for c in text)


def _text(text: str) -> str:
    return text.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n")


def _folded(line: str) -> list[str]:
    data, out = line.encode(), []
    while len(data) > 74:
        cut = 74
        while data[cut] & 0xC0 == 0x80:
            cut -= 1
        out.append(data[:cut].decode())
        data = b" " + data[cut:]
    return [*out, data.decode()]
