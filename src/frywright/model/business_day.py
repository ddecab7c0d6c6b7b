"""The business day of a kitchen: its hours, and the moments of its clock."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.trade import USUAL_SLOT_S, Trade, time_of_day_s

SHORT_HOLD_S, LONG_HOLD_S, SHORT_SLOT_S = 15 * 60.0, 4 * 3600.0, 240.0
"""Where food is held for less than the first and none for longer than the second, slots take four minutes:
in five, a hold life of nine counts as five and a cook of seven as ten (own choices, docs/theory/day.md).
"""


def trade_of(kitchen: Kitchen) -> Trade:
    """The kitchen's day, in slots that its hold lives allow; InputError when the kitchen file has none."""
    if kitchen.trade is None or not kitchen.sells:
        raise InputError(
            "day",
            "missing in the kitchen file",
            "described on the page Hours and money of the day, or by [day] and [[sell]] in the kitchen file",
            where=kitchen.site.name,
        )
    sold = {sell.product for sell in kitchen.sells}
    holds_s = [p.hold_life_s for p in kitchen.own_programs if p.product in sold]
    short = min(holds_s, default=SHORT_HOLD_S) < SHORT_HOLD_S and max(holds_s) <= LONG_HOLD_S
    if short and kitchen.trade.slot_s == USUAL_SLOT_S:
        return replace(kitchen.trade, slot_s=SHORT_SLOT_S)
    return kitchen.trade


def usual_trade(kitchen: Kitchen) -> Trade:
    """The kitchen's day, or the usual one where its file has none: care and oil need no menu."""
    return kitchen.trade or Trade()


def day_typed(text: str, name: str = "date") -> dt.date:
    """A day as it is typed. Raises InputError: it is none."""
    try:
        return dt.date.fromisoformat(text)
    except ValueError:
        raise InputError(name, repr(text), "a day such as 2026-11-27") from None


def moment_typed(kitchen: Kitchen, text: str, name: str) -> dt.datetime:
    """A day and time as it is typed, by the kitchen's own clock where it has no zone. Raises InputError: it
    is none.
    """
    try:
        found = dt.datetime.fromisoformat(text)
    except ValueError:
        raise InputError(name, repr(text), "a day and time such as 2026-11-25 18:40") from None
    return found if found.tzinfo else found.replace(tzinfo=ZoneInfo(usual_trade(kitchen).zone))


def business_time(trade: Trade, moment: dt.datetime) -> tuple[dt.date, float]:
    """Business day of a moment, and seconds since that day's midnight in the store's zone."""
    try:
        local = moment.astimezone(ZoneInfo(trade.zone))
    except (ZoneInfoNotFoundError, ValueError, OSError) as error:
        raise InputError(
            "zone", repr(trade.zone), "a time zone such as America/Denver", where="day"
        ) from error
    seconds = local.hour * 3600.0 + local.minute * 60.0 + local.second
    if seconds < time_of_day_s(trade.rolls_over):
        return local.date() - dt.timedelta(days=1), seconds + 86400.0
    return local.date(), seconds


def local_time(kitchen: Kitchen, moment: dt.datetime) -> str:
    """A moment by the kitchen's own clock and calendar, with its zone (ISO 8601):
    ``2026-11-08 18:00-07:00``.
    """
    return moment.astimezone(ZoneInfo(usual_trade(kitchen).zone)).isoformat(" ", "minutes")


def moment_of(trade: Trade, date: dt.date, second_s: float) -> dt.datetime:
    """The aware moment of a time of a business day."""
    midnight = dt.datetime.combine(date, dt.time(), tzinfo=ZoneInfo(trade.zone))
    return (midnight + dt.timedelta(seconds=second_s)).astimezone(dt.UTC)
