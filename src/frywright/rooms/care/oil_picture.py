"""A vat's oil as a picture: three weeks of readings, the limit, and when it is expected to be reached."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from itertools import takewhile

from frywright.model.business_day import business_time, usual_trade
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.oil.ageing import next_level
from frywright.paper.small_picture import SmallPicture
from frywright.rooms.care.oil_state import FRESH_PCT, VatState
from frywright.rooms.clock import now

BACK_DAYS, AHEAD_DAYS = 21, 14
"""What the picture shows: the last three weeks and the next two (own choice)."""


def oil_pictures(
    kitchen: Kitchen, states: Mapping[str, VatState], words: Mapping[str, str], tr: Translate
) -> dict[str, str]:
    """Today's picture of every vat, by its key; ``words`` say the outlook of each."""
    day = business_time(usual_trade(kitchen), now())[0]
    return {vat: oil_picture(state, day, words[vat], tr) for vat, state in states.items()}


def oil_picture(state: VatState, day: dt.date, text: str, tr: Translate) -> str:
    """The picture as SVG, empty where no reading of the last weeks is there to draw. Days count from today.

    The line ahead is the mean outlook at today's level and the usual top-up; the bar at the limit is the span
    in which it is likely to be reached.
    """
    since = day - dt.timedelta(days=BACK_DAYS)
    recent = takewhile(lambda e: e.date >= since, reversed(state.events))
    read = [(float((e.date - day).days), e.reading_pct, e.peak) for e in recent]
    readings = [(x, pct, peak) for x, pct, peak in reversed(read) if pct is not None]
    if not readings:
        return ""
    level, growth = state.belief.level[0], max(state.belief.growth[0], 0.0)
    ahead = [(0.0, level)]
    while ahead[-1][0] < AHEAD_DAYS and ahead[-1][1] < state.limit_pct:
        value = next_level(ahead[-1][1], growth, state.share_frac, FRESH_PCT)
        ahead.append((ahead[-1][0] + 1.0, value))
    low, _, high = state.crossing.days_n
    changes = [float((date - day).days) for date in state.changed_on]
    top = max(state.limit_pct, *(pct for _, pct, _ in readings)) * 1.2
    return SmallPicture(
        words=text,
        x_n=(-float(BACK_DAYS), float(AHEAD_DAYS)),
        y_n=(0.0, top),
        points=[(x, pct) for x, pct, peak in readings if peak is not False],
        hollow=[(x, pct) for x, pct, peak in readings if peak is False],
        line=ahead,
        limit_n=state.limit_pct,
        limit_words=tr("limit {level} %").format(level=f"{state.limit_pct:g}"),
        span=(low, high) if low <= AHEAD_DAYS else None,
        now_n=0.0,
        low=tr("{n} days ago").format(n=BACK_DAYS),
        middle=tr("today"),
        high=tr("in {n} days").format(n=AHEAD_DAYS),
        marks_n=[x for x in changes if x >= -BACK_DAYS],
    ).svg()
