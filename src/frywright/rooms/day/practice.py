"""Invented sales: the demo's history, and practice days whose guests are drawn from the forecast. Never
evidence.
"""

from __future__ import annotations

import datetime as dt
import io
import itertools

import numpy as np
from numpy.typing import NDArray

from frywright.ledger.facts.day import PracticeTap
from frywright.ledger.store import Store
from frywright.model.kitchen import Kitchen
from frywright.model.trade import time_of_day
from frywright.plan.model import Day
from frywright.plan.replay import draw_days

SHARE = {
    "Two-piece plate, dark": 52.0,
    "Two-piece plate, white": 40.0,
    "Three-piece plate": 46.0,
    "Family box, eight pieces": 17.0,
    "Bucket of sixteen": 3.0,
    "Tender plate, four": 64.0,
    "Tender wrap": 60.0,
    "Wedges, side": 60.0,
    "Lemonade": 120.0,
    "Slaw, side": 80.0,
}
WEEKDAY = (0.86, 0.88, 0.93, 1.0, 1.32, 1.22, 1.05)
UNKNOWN_ITEM = "Honey sauce, cup"


def demo_sales(kitchen: Kitchen, last: dt.date, weeks: int = 8, seed: int = 4) -> bytes:
    """A till's export of the invented demo: quarter hours, items, counts; one outage and one item the menu
    does not know.
    """
    rng, trade = np.random.default_rng(seed), kitchen.trade
    assert trade is not None
    low, high = trade.opens_s, trade.closes_s
    times = np.arange(low, high, 900.0)
    shape = _shape((times - low) / (high - low))
    out = io.StringIO()
    out.write("Business export (invented);;;\nDate;Interval;Menu item;Qty sold\n")
    for back in range(7 * weeks, 0, -1):
        date = last - dt.timedelta(days=back - 1)
        level = WEEKDAY[date.weekday()] * rng.gamma(1 / 0.09**2, 0.09**2)
        for n, start in enumerate(times):
            if back == 17 and 8 <= n < 18:
                continue  # the till was down
            for item, usual in {**SHARE, UNKNOWN_ITEM: 9.0}.items():
                mean = level * usual * shape[n]
                count = rng.poisson(rng.gamma(max(mean / 0.6, 1e-9), 0.6))
                if count:
                    out.write(
                        f"{date:%m/%d/%Y};{time_of_day(start)}-{time_of_day(start + 900)};{item};{count}\n"
                    )
    return out.getvalue().encode()


def _shape(share: NDArray[np.float64]) -> NDArray[np.float64]:
    """Lunch and a larger dinner, shares of a day that sum to 1."""
    raw = np.exp(-(((share - 0.16) / 0.07) ** 2)) + 1.9 * np.exp(-(((share - 0.67) / 0.10) ** 2)) + 0.22
    return np.asarray(raw / raw.sum())


def next_practice(store: Store, date: dt.date) -> int:
    """Number of a practice day that nobody began: other guests, and no taps of before."""
    begun = {item.fact.practice_count for item in store.facts(PracticeTap) if item.fact.date == date}
    return next(n for n in itertools.count(1) if n not in begun)


def guests(day: Day, seed: int) -> NDArray[np.int64]:
    """What a practice day's guests ask for (item, slot), drawn from the forecast."""
    return np.asarray(draw_days(day, 1, seed)[0])
