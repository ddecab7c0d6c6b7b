"""Polar compounds over days: growth, top-up, when the limit is reached, and when it never is.

Each day the oil gains ``growth`` points while it is hot, is read at its peak, and a share is replaced by
fresh oil. Published polar compounds grow close to linearly in time (palm and canola kinetics, JAOCS 2016:
abstract), so growth does not depend on the level by default.
"""

from __future__ import annotations

from math import exp, floor, inf, log

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


def peak_settles_at(growth: float, share: float, fresh: float) -> float:
    """Level before top-up in the long run."""
    return settles_at(growth, share, fresh) + growth


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


def whole_days(limit: float, growth: float, share: float, fresh: float) -> float:
    """Whole days from fresh oil on which the peak stays within the limit; infinite where it always does."""
    _checked(growth, share)
    if share == 0:
        return floor((limit - fresh) / growth + 1e-9) if growth > 0 else inf
    inside = 1.0 - share * (limit - fresh) / growth if growth > 0 else 0.0
    return inf if inside <= 0 else floor(log(inside) / log(1.0 - share) + 1e-9)


def share_for_ever(limit: float, growth: float, fresh: float, *, at_peak: bool = False) -> float:
    """Top-up share from which the oil never needs discarding for polar compounds: g / (limit - fresh + g), at
    the peak g / (limit - fresh).
    """
    if not limit > fresh or growth < 0:
        raise InputError("limit", limit, "above the fresh oil's level, with a growth of 0 or more")
    return growth / (limit - fresh) if at_peak else growth / (limit - fresh + growth)


def saturating_level(
    time_d: float, level: float, rate: float, most: float, share: float, fresh: float
) -> float:
    """Level after a time when growth slows towards ``most``: c_inf = (k c_m + r f0) / (k + r)."""
    if rate < 0 or share < 0 or rate + share <= 0:
        raise InputError("rate and share", f"{rate:g}, {share:g}", "0 or more, not both 0")
    rest = (rate * most + share * fresh) / (rate + share)
    return rest + (level - rest) * exp(-(rate + share) * time_d)


def heat_factor(oil_c: float, usual_c: float) -> float:
    """How much faster oil ages at one temperature than at another (Arrhenius)."""
    for value in (oil_c, usual_c):
        if not 100.0 <= value <= 230.0:
            raise InputError("oil", f"{value:.0f} °C", "100 to 230 °C")
    return exp(EA_J_MOL / GAS_J_MOLK * (1.0 / (usual_c + 273.15) - 1.0 / (oil_c + 273.15)))


def filter_spacing(turn_money: float, point_money: float, growth: float, crumb: float) -> float:
    """Loads between filter turns that cost least: s* = sqrt(2 c_F / (v g0 gamma)).

    Parameters
    ----------
    turn_money, point_money : a filter turn; a point of polar compounds in this vat
    growth, crumb : points a load just after a turn, and the share by which crumbs raise it with every load
    """
    if min(turn_money, point_money, growth, crumb) <= 0:
        raise InputError("filter", "not positive", "money, growth and crumb effect above 0")
    return float((2.0 * turn_money / (point_money * growth * crumb)) ** 0.5)


def _checked(growth: float, share: float) -> None:
    if not 0.0 <= share < 1.0 or not growth >= 0:
        raise InputError("growth and share", f"{growth:g}, {share:g}", "growth 0 or more, share 0 to below 1")
