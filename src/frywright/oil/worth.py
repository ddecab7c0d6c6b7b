"""What a vat's oil is worth and what a change of habit buys, in money a day; and what filter turns do in a
kitchen's own log.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import inf

import numpy as np
from numpy.typing import ArrayLike

from frywright.model.errors import InputError, Phrase
from frywright.oil.ageing import days_to, next_level
from frywright.oil.cost import Rates

BEST_POWDER_PCT = 0.2
"""Polar points a treatment with 1 % powder takes out at most: about 200 mg/g by the best published
adsorption; it slows, it does not reset.
"""
LEAST_GAINS_COUNT, TOLD_APART_N = 8, 2.0
"""Gains between readings, and standard errors, from which an effect of filter turns is told (project's own
rule).
"""


def life_days(level: float, growth: float, share: float, fresh: float, limit: float) -> float:
    """Days until the peak of a day passes the limit, from a level after top-up; infinite where it settles
    below.

    The peak is the level after a day's growth, so the level after top-up may come up to a day's growth below
    the limit.
    """
    if level + growth > limit:
        return 0.0
    last = next_level(limit - growth, growth, share, fresh)
    days = days_to(min(last, limit - growth), level, growth, share, fresh) if growth > 0 else inf
    return days + 1.0 if days < inf else inf


def change_money(mass_kg: float, rates: Rates) -> float:
    """Money of one change of a vat: oil, labour, disposal, less what the used oil pays."""
    oil = mass_kg * (rates.price_kg_money + rates.disposal_kg_money - rates.rebate_kg_money)
    return oil + rates.change_h * rates.hour_money


def day_money(mass_kg: float, growth: float, share: float, fresh: float, limit: float, rates: Rates) -> float:
    """Money a day in the long run: top-up, and changes spread over the oil's whole life."""
    life = life_days(fresh, growth, share, fresh, limit)
    changes = change_money(mass_kg, rates) / max(life, 1.0) if life < inf else 0.0
    return mass_kg * share * rates.price_kg_money + changes


def left_money(
    mass_kg: float, level: float, growth: float, share: float, fresh: float, limit: float, rates: Rates
) -> float:
    """What is thrown away with oil that could still be used: its share of life left, of the money of a
    change.
    """
    life, left = (life_days(at, growth, share, fresh, limit) for at in (fresh, level))
    if life == inf:
        return change_money(mass_kg, rates) if left > 0 else 0.0
    return change_money(mass_kg, rates) * min(1.0, left / max(life, 1e-9))


@dataclass(frozen=True, slots=True, kw_only=True)
class FilterEffect:
    """Points a day that one more filter turn takes off the growth in this log, with its standard error;
    ``told`` where it stands out.
    """

    turn_n: float
    sd: float
    gains_count: int
    told: bool


def filter_effect(gains: ArrayLike, turns: ArrayLike) -> FilterEffect:
    """Least squares of growth a day on filter turns of that day. Raises InputError: gains and turns that do
    not belong together.
    """
    y, x = np.asarray(gains, dtype=float), np.asarray(turns, dtype=float)
    if y.shape != x.shape or y.ndim != 1:
        raise InputError(
            "gains and turns",
            Phrase("{low} and {high}", {"low": y.shape, "high": x.shape}),
            "one turn count for each gain",
        )
    if len(y) < LEAST_GAINS_COUNT or np.ptp(x) == 0:
        return FilterEffect(turn_n=0.0, sd=inf, gains_count=len(y), told=False)
    spread = float(((x - x.mean()) ** 2).sum())
    slope = float(((x - x.mean()) * (y - y.mean())).sum() / spread)
    rest = y - y.mean() - slope * (x - x.mean())
    sd = float(np.sqrt((rest**2).sum() / (len(y) - 2) / spread))
    return FilterEffect(turn_n=-slope, sd=sd, gains_count=len(y), told=-slope > TOLD_APART_N * sd)
