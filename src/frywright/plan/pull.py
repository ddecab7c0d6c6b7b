"""What to pull from the freezer and marinate: heads that cover every cut, stock in date taken off, whole
cases, both risks told.

``heads = max over cuts (pieces needed / pieces a head)``; the quantity balances a piece too few against one
too many on the forecast's own distribution. Thawing has a physical minimum (Plank's equation, as in Singh and
Heldman, Introduction to Food Engineering, freezing times: from memory).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from frywright.model.errors import InputError
from frywright.plan.demand import Demand

ICE_J_KG = 333.6e3
"""Heat of fusion of ice (CRC Handbook; from memory)."""
FREEZING_C, RACK_H_W_M2K, UNFROZEN_W_MK, RAW_KG_M3 = -1.0, 25.0, 0.48, 1050.0
"""Initial freezing point of poultry meat about -1 °C, moving air in a cold room with
condensing moisture at most about 25 W/(m² K), unfrozen
lean meat about 0.48 W/(m K), 1050 kg/m³: estimates from handbook ranges, from memory."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock:
    """Units on hand and for how many days from the day of use they are in date (negative: out of date by
    then).
    """

    units_n: float
    in_date_days_count: int
    what: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pull:
    """One product's line: what is needed on the day of use, what to pull now."""

    needed_n: float
    mean_n: float
    on_hand_n: float
    expired_n: float
    cases_count: int
    units_n: float
    short_frac: float
    over_frac: float
    expected_over_n: float
    worst_cut: str = ""
    balance: tuple[tuple[str, float, float], ...] = ()
    """Cut, pieces needed, pieces that come with the heads needed."""


def heads_for(
    pieces: Mapping[str, float], per_head: Mapping[str, int], any_cut: float = 0.0
) -> tuple[float, str]:
    """Heads that cover every cut, and the cut that asks for most. Raises InputError: a cut that no head has.

    Parameters
    ----------
    pieces : pieces needed of each cut asked for by name
    per_head : pieces a head gives
    any_cut : pieces that may be of any cut; they fill what the worst cut leaves over
    """
    unknown = [cut for cut, count in pieces.items() if count > 0 and not per_head.get(cut)]
    if unknown:
        raise InputError("cut", unknown[0], "one of: {known}", known=", ".join(per_head))
    if any(count < 0 for count in pieces.values()) or any_cut < 0:
        raise InputError("pieces", "negative", "0 or more")
    ratios = {cut: count / per_head[cut] for cut, count in pieces.items() if count > 0}
    worst = max(ratios, key=lambda cut: ratios[cut], default="")
    by_cut = ratios.get(worst, 0.0)
    whole = (sum(pieces.values()) + any_cut) / sum(per_head.values())
    return (by_cut, worst) if by_cut >= whole else (whole, "")


def pull(
    mean: float,
    spread: float,
    money: tuple[float, float],
    stock: Sequence[Stock],
    case: int,
    factor: float = 1.0,
) -> Pull:
    """Units to pull for a day of use.

    Parameters
    ----------
    mean, spread : units asked for, and their variance over mean (day spread included)
    money : lost with a unit too few, with one too many
    case : units a case
    factor : units cooked for one asked for (bird balance), 1 or more
    """
    if case < 1 or not factor >= 1.0 or min(money) <= 0:
        raise InputError("case, factor and money", f"{case}, {factor:g}, {money}", "1 or more, and above 0")
    demand = Demand(mean_n=mean, spread_n=max(spread, 1.0))
    wanted = demand.quantile(money[0] / (money[0] + money[1])) * factor
    good = sum(s.units_n for s in stock if s.in_date_days_count >= 0)
    cases = int(np.ceil(max(0.0, wanted - good) / case - 1e-9))
    there = good + cases * case
    law = demand.frozen() if mean > 0 else None
    p = demand.probabilities() if mean > 0 else np.ones(1)
    left = float(np.maximum(there - factor * np.arange(len(p)), 0.0) @ p)
    short = float(1.0 - law.cdf(there / factor)) if law is not None else 0.0
    return Pull(
        needed_n=wanted,
        mean_n=mean * factor,
        on_hand_n=good,
        expired_n=sum(s.units_n for s in stock if s.in_date_days_count < 0),
        cases_count=cases,
        units_n=float(cases * case),
        short_frac=short,
        over_frac=float(law.cdf((there - case) / factor)) if law is not None and there >= case else 0.0,
        expected_over_n=left,
    )


def thaw_s(
    thickness_m: float,
    water_frac: float,
    frozen_c: float = -18.0,
    room_c: float = 5.0,
    h_w_m2k: float = RACK_H_W_M2K,
) -> float:
    """Shortest time in which a slab of frozen meat can thaw in a cold room [s] (Plank: t = rho L / dT (P a /
    h + R a^2 / k)).

    The heat of warming the ice is added to that of melting it; a stack in a carton takes longer, never less.
    Raises InputError: out of range, or a room that does not thaw.

    Parameters
    ----------
    thickness_m : of the block, 0.005 to 0.4 m
    water_frac : of the meat, 0.3 to 0.9
    """
    if not 0.005 <= thickness_m <= 0.4 or not 0.3 <= water_frac <= 0.9:
        raise InputError(
            "thickness and water", f"{thickness_m:g} m, {water_frac:g}", "0.005 to 0.4 m and 0.3 to 0.9"
        )
    if not room_c > FREEZING_C or not h_w_m2k > 0:
        raise InputError("room", room_c, "above {freezing_c}", freezing_c=FREEZING_C, unit="c")
    warming = 2000.0 * max(FREEZING_C - frozen_c, 0.0)  # frozen meat about 2 kJ/(kg K): estimate
    heat = RAW_KG_M3 * (water_frac * ICE_J_KG + warming)
    return plank_s(thickness_m, heat, room_c - FREEZING_C, h_w_m2k, UNFROZEN_W_MK)


def plank_s(
    thickness_m: float, heat_j_m3: float, difference_k: float, h_w_m2k: float, conductivity_w_mk: float
) -> float:
    """Plank's time for a slab cooled or warmed from both sides [s]: P = 1/2, R = 1/8."""
    return float(
        heat_j_m3 / difference_k * (0.5 * thickness_m / h_w_m2k + 0.125 * thickness_m**2 / conductivity_w_mk)
    )
