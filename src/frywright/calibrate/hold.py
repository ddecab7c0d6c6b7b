"""How long may it be held? Hold life from readings against minutes; the safety limit wins over every
score.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from frywright.model.errors import InputError
from frywright.model.findings import Note


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldReading:
    """One repeat at one time: core temperature and scores by name."""

    repeat: str
    after_s: float
    core_c: float
    scores: Mapping[str, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldAim:
    """Limits of a hold study: safe core temperature, least scores, share of repeats that must pass."""

    hot_c: float
    least_scores: Mapping[str, float]
    share_frac: float = 0.9

    def __post_init__(self) -> None:
        if not 0.5 <= self.share_frac <= 1.0:
            raise InputError("share", self.share_frac, "0.5 to 1 of the repeats")


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldLife:
    """Hold life and what ends it. ``rows`` are (time, repeats, share passing, all hot)."""

    life_s: float
    ended_by: str
    rows: tuple[tuple[float, int, float, bool], ...]
    note: Note


def hold_life(readings: Sequence[HoldReading], aim: HoldAim) -> HoldLife:
    """Last time at which, as at every time before, all repeats are hot and enough of them pass every score.
    Raises InputError: no readings, or a reading lacks a score that the aim asks for.
    """
    if not readings:
        raise InputError("readings", "none", "at least one")
    for reading in readings:
        missing = [name for name in aim.least_scores if name not in reading.scores]
        if missing:
            raise InputError(
                "score",
                missing[0],
                "given in every reading",
                where=f"{reading.repeat} {reading.after_s:.0f} s",
            )
    rows, life, ended = [], 0.0, ""
    for time in sorted({r.after_s for r in readings}):
        now = [r for r in readings if r.after_s == time]
        hot = all(r.core_c >= aim.hot_c for r in now)
        passing = [all(r.scores[name] >= least for name, least in aim.least_scores.items()) for r in now]
        share = sum(passing) / len(now)
        rows.append((time, len(now), share, hot))
        if ended:
            continue
        if not hot:
            ended = "safety"
        elif share < aim.share_frac - 1e-12:
            ended = "quality"
        else:
            life = time
    repeats = len({r.repeat for r in readings})
    values = {"life_s": life, "hot_c": aim.hot_c, "share_frac": aim.share_frac, "repeats": float(repeats)}
    texts = {
        "safety": (
            "Hold life {life_s}: after that a piece falls below {hot_c}, whatever the scores say."
            " Repeats: {repeats}."
        ),
        "quality": (
            "Hold life {life_s}: after that fewer than {share_frac} of the repeats pass every"
            " score. Repeats: {repeats}."
        ),
        "": "Hold life at least {life_s}, the longest time studied. Repeats: {repeats}.",
    }
    return HoldLife(
        life_s=life,
        ended_by=ended,
        rows=tuple(rows),
        note=Note(kind=ended or "longest", text=texts[ended], values=values),
    )
