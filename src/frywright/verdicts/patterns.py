"""Patterns in a log that deserve a look: repeated readings, last digits, entries signed in a block, times
that cannot be. Statistics, not accusations.
"""

from __future__ import annotations

import datetime as dt
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from math import comb, exp, lgamma, log

from frywright.model.findings import Note

LEAST_COUNT, LEAST_SHARE = 20, 0.30
"""Readings from which a pattern is told, and share of the same reading that is uncommon (project's own
rules).
"""
ALPHA = 0.001
"""Chance below which honest readings would show such a pattern (project's own rule)."""
BLOCK_COUNT, BLOCK_S, SPREAD_S = 5, 120.0, 3600.0
"""So many entries recorded within the first span that claim to have happened over more than the second are a
block (project's own rule).
"""
LATE_S = 1800.0
"""An entry recorded this long after it happened is late (common practice, no source)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """One entry as this module sees it; a reading in the unit people read, 0 where it is none."""

    number: int
    happened_at: dt.datetime
    recorded_at: dt.datetime
    who: str = ""
    reading_n: float | None = None


def patterns(entries: Sequence[Told]) -> list[Note]:
    """Everything that stands out, with its figures; empty where nothing does."""
    found = [*_repeats(entries), *_digits(entries), *_blocks(entries), *_times(entries)]
    return found


def binomial_tail(count: int, least: int, share: float) -> float:
    """Chance of ``least`` or more of ``count`` when each happens with ``share``."""
    if least <= 0:
        return 1.0
    if share <= 0:
        return 0.0
    if share >= 1:
        return 1.0
    if count <= 60:
        return sum(comb(count, k) * share**k * (1 - share) ** (count - k) for k in range(least, count + 1))

    def one(k: int) -> float:
        return exp(
            lgamma(count + 1)
            - lgamma(k + 1)
            - lgamma(count - k + 1)
            + k * log(share)
            + (count - k) * log(1 - share)
        )

    return min(1.0, sum(one(k) for k in range(least, count + 1)))


def _repeats(entries: Sequence[Told]) -> list[Note]:
    """One value far more often than its neighbours. Readings of a probe spread over several degrees."""
    values = [round(e.reading_n, 1) for e in entries if e.reading_n is not None]
    if len(values) < LEAST_COUNT:
        return []
    value, times = Counter(values).most_common(1)[0]
    if times / len(values) < LEAST_SHARE:
        return []
    text = (
        "{times} of {count} readings are {value}. Readings of different pieces usually spread over several"
        " degrees."
    )
    return [
        Note(
            kind="repeats",
            text=text,
            values={"times": float(times), "count": float(len(values)), "value": value},
        )
    ]


def _digits(entries: Sequence[Told]) -> list[Note]:
    """Last whole digits: among honest readings that spread over ten and more none comes in much more than a
    tenth.
    """
    values = [e.reading_n for e in entries if e.reading_n is not None]
    if len(values) < LEAST_COUNT or max(values) - min(values) < 10:
        return []
    digit, times = Counter(round(v) % 10 for v in values).most_common(1)[0]
    chance = min(1.0, 10 * binomial_tail(len(values), times, 0.1))
    if chance > ALPHA:
        return []
    text = "{times} of {count} readings end in {digit}; by chance that many come about once in {once}."
    return [
        Note(
            kind="digits",
            text=text,
            values={
                "times": float(times),
                "count": float(len(values)),
                "digit": float(digit),
                "once": round(1 / max(chance, 1e-12)),
            },
        )
    ]


def _blocks(entries: Sequence[Told]) -> list[Note]:
    """Entries of one person recorded together that claim times hours apart."""
    found = []
    by_person: dict[str, list[Told]] = {}
    for entry in sorted(entries, key=lambda e: e.recorded_at):
        by_person.setdefault(entry.who, []).append(entry)
    for who, own in by_person.items():
        start = 0
        while start < len(own):
            end = start
            while (
                end + 1 < len(own)
                and (own[end + 1].recorded_at - own[start].recorded_at).total_seconds() <= BLOCK_S
            ):
                end += 1
            block = own[start : end + 1]
            claimed = [e.happened_at for e in block]
            if len(block) >= BLOCK_COUNT and (max(claimed) - min(claimed)).total_seconds() > SPREAD_S:
                text = (
                    "{count} entries of {who} were recorded within {within_s} of each other and cover"
                    " {hours} hours, from number {first} on."
                )
                found.append(
                    Note(
                        kind="block",
                        text=text,
                        values={
                            "count": float(len(block)),
                            "who": who or "nobody named",
                            "within_s": (block[-1].recorded_at - block[0].recorded_at).total_seconds(),
                            "hours": round((max(claimed) - min(claimed)).total_seconds() / 3600, 1),
                            "first": float(block[0].number),
                        },
                    )
                )
            start = end + 1
    return found


def _times(entries: Sequence[Told]) -> list[Note]:
    """Recorded before it happened, or long after."""
    early = [e for e in entries if (e.happened_at - e.recorded_at).total_seconds() > 60.0]
    late = [e for e in entries if (e.recorded_at - e.happened_at).total_seconds() > LATE_S]
    found = []
    if early:
        found.append(
            Note(
                kind="early",
                text=(
                    "Entries recorded before the time they give: {count}, first number {first}."
                    " A clock or a mistyped time."
                ),
                values={"count": float(len(early)), "first": float(early[0].number)},
            )
        )
    if late:
        found.append(
            Note(
                kind="late",
                text=("Entries recorded more than half an hour after the time they give: {count} of {all}."),
                values={"count": float(len(late)), "all": float(len(entries))},
            )
        )
    return found
