"""Polar compounds over days: growth, top-up, when the limit is reached, and when it never is.

Each day the oil gains ``growth`` points while it is hot, is read at its peak, and a share is replaced by
fresh oil. Published polar compounds grow close to linearly in time (palm and canola kinetics, JAOCS 2016:
abstract), so growth does not depend on the level by default.
"""

from __future__ import annotations

from math import exp, inf, log

from frywright.model.errors import InputError

EA_J_MOL, GAS_J_MOLK = 33e3, 8.314462618
"""Apparent activation energy from three published discard times (22.1, 17.7, 13.0 h at 190, 205, 220 degC);
weak, so growth is learned by vat.
"""


def next_level(level: float, growth: float, share: float, fresh: float) -> float:
    """Level after a day: Q' = (Q + g)(1 - f) + f Q_fresh, in per cent."""
    _checked(growth, share)
    return (level + growth) * (1.0 - share) + share * fresh


def settles_at(growth: float, share: float, fresh: float) -> float:
    """Level after top-up that a constant share leads to; infinite without top-up."""
    _checked(growth, share)
    return fresh + growth * (1.0 - share) / share if share > 0 else inf


def days_to(limit: float, level: float, growth: float, share: float, fresh: float) -> float:
    """Days of operation until the level after top-up reaches a limit; infinite where it settles below.

    n = ln[(limit - Q*) / (Q0 - Q*)] / ln(1 - f); without top-up (limit - Q0) / g.
    """
    _checked(growth, share)
    if level >= limit:
        return 0.0
    if growth <= 0:
        return inf
    if share == 0:
        return (limit - level) / growth
    rest = settles_at(growth, share, fresh)
    if rest <= limit:
        return inf
    return log((limit - rest) / (level - rest)) / log(1.0 - share)


def share_for_ever(limit: float, growth: float, fresh: float, *, at_peak: bool = False) -> float:
    """Top-up share from which the oil never needs discarding for polar compounds: g / (limit - fresh + g), at
    the peak g / (limit - fresh).
    """
    if not limit > fresh or growth < 0:
        raise InputError("limit", limit, "above the fresh oil's level, with a growth of 0 or more")
    return growth / (limit - fresh) if at_peak else growth / (limit - fresh + growth)


def heat_factor(oil_c: float, usual_c: float) -> float:
    """How much faster oil ages at one temperature than at another (Arrhenius)."""
    for value in (oil_c, usual_c):
        if not 100.0 <= value <= 230.0:
            raise InputError("oil", value, "{low_c} to {high_c}", unit="c", low_c=100.0, high_c=230.0)
    return exp(EA_J_MOL / GAS_J_MOLK * (1.0 / (usual_c + 273.15) - 1.0 / (oil_c + 273.15)))


def _checked(growth: float, share: float) -> None:
    if not 0.0 <= share < 1.0 or not growth >= 0:
        raise InputError("growth and share", f"{growth:g}, {share:g}", "growth 0 or more, share 0 to below 1")
