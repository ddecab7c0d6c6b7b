"""When will this vat's oil reach its limit? From noisy readings, known top-ups and heat, with an interval;
and what to do about it.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.model.errors import InputError, Phrase
from frywright.oil import filter_kernel

Array = NDArray[np.float64]
LEAST_READINGS = 4
"""Below it the growth is mostly the prior, and that is said (project's own rule)."""
HORIZON_DAYS, PATHS = 90, 2000


@dataclass(frozen=True, slots=True, kw_only=True)
class Prior:
    """What is believed of a vat before any reading, in points of polar compounds. Estimates; growth differs
    threefold between oils.
    """

    fresh_sd_pct: float = 0.5
    aged_pct: float = 14.0  # oil of unknown age: anything from fresh, 4, to a usual limit, 24, equally likely
    aged_sd_pct: float = 5.8  # standard deviation of that: 20 / sqrt(12)
    growth_pct: float = 2.0
    growth_sd_pct: float = 1.0
    level_drift_pct: float = 0.25
    growth_drift_pct: float = 0.05


@dataclass(frozen=True, slots=True, kw_only=True)
class Vats:
    """Days of many vats: arrays (vat, day). ``heat_n`` is heat-hours over the usual day's; a reading that is
    not there is NaN.
    """

    heat_n: Array
    share_frac: Array
    discard: NDArray[np.bool_]
    reading: Array
    noise: Array
    fresh: Array

    def __post_init__(self) -> None:
        shape = self.heat_n.shape
        if len(shape) != 2 or any(
            a.shape != shape for a in (self.share_frac, self.discard, self.reading, self.noise)
        ):
            raise InputError("vats", shape, "arrays of vats by days, all of one shape")
        if (
            self.fresh.shape != (shape[0],)
            or not np.isfinite(self.heat_n).all()
            or self.heat_n.min(initial=0.0) < 0
        ):
            raise InputError("vats", "heat or fresh level", "heat 0 or more, a fresh level for each vat")
        if self.share_frac.min(initial=0.0) < 0 or self.share_frac.max(initial=0.0) > 1:
            raise InputError("top-up", "outside 0 to 1", "a share of the vat")
        seen = self.reading[np.isfinite(self.reading)]
        if seen.size and not (seen.min() >= 0 and seen.max() <= 100):
            raise InputError(
                "reading",
                Phrase("{low} to {high} %", {"low": f"{seen.min():g}", "high": f"{seen.max():g}"}),
                "0 to 100 % polar compounds",
            )


@dataclass(frozen=True, slots=True, kw_only=True)
class Belief:
    """Level after the last day's top-up and growth a usual day, with their spread, by vat."""

    mean: Array  # (vat, 2)
    cover: Array  # (vat, 2, 2)


@dataclass(frozen=True, slots=True, kw_only=True)
class Crossing:
    """Days from now until the peak passes the limit: quantiles (5, 50, 95 %), chance that it does so
    tomorrow, and that it never does in the horizon.
    """

    days_n: tuple[float, float, float]
    tomorrow_frac: float
    never_frac: float


def learn(vats: Vats, prior: Prior | None = None, aged: NDArray[np.bool_] | None = None) -> Belief:
    """Filter all days of all vats at once. ``aged`` (vat,) marks oil whose age on the first day nobody knows:
    the first reading sets its level.
    """
    p = prior or Prior()
    old = np.zeros(len(vats.fresh), dtype=bool) if aged is None else aged
    means, covers = np.zeros((len(vats.fresh), 2)), np.zeros((len(vats.fresh), 2, 2))
    days = tuple(np.ascontiguousarray(a, dtype=float) for a in (vats.heat_n, vats.share_frac))
    seen = tuple(np.ascontiguousarray(a, dtype=float) for a in (vats.reading, vats.noise))
    filter_kernel.run(
        (*days, np.ascontiguousarray(vats.discard), *seen),
        vats.fresh.astype(float),
        (np.where(old, p.aged_pct, vats.fresh), np.where(old, p.aged_sd_pct, p.fresh_sd_pct)),
        np.array((p.fresh_sd_pct, p.growth_pct, p.growth_sd_pct)),
        np.array((p.level_drift_pct, p.growth_drift_pct)),
        (means, covers),
    )
    return Belief(mean=means, cover=covers)


def crossing(
    mean: ArrayLike,
    cover: ArrayLike,
    limit: float,
    share: float,
    fresh: float,
    *,
    heat: float = 1.0,
    prior: Prior | None = None,
    seed: int = 1,
) -> Crossing:
    """When one vat's peak passes its limit if it is topped up by ``share`` a day, by drawn futures.

    The crossing lies inside a day where the straight line between two peaks meets the limit.

    Raises
    ------
    InputError
        A limit or share that cannot be.
    """
    if not 0 < limit <= 100 or not 0 <= share < 1 or not heat >= 0:
        raise InputError(
            "limit, share, heat", f"{limit:g}, {share:g}, {heat:g}", "a limit up to 100 %, a share below 1"
        )
    middle, spread = np.asarray(mean, dtype=float), np.asarray(cover, dtype=float)
    numbers = float(limit), float(share), float(fresh), float(heat)
    return _drawn(tuple(middle.tolist()), tuple(map(tuple, spread.tolist())), numbers, prior or Prior(), seed)


@lru_cache(256)
def _drawn(
    mean: tuple[float, ...],
    cover: tuple[tuple[float, ...], ...],
    numbers: tuple[float, float, float, float],
    p: Prior,
    seed: int,
) -> Crossing:
    """The drawn futures of :func:`crossing`, which are the same for the same numbers."""
    limit, share, fresh, heat = numbers
    rng = np.random.default_rng(seed)
    drawn = rng.multivariate_normal(np.array(mean), np.array(cover), PATHS, method="eigh")
    level, growth = drawn[:, 0], np.maximum(drawn[:, 1], 0.0)
    last, when = level.copy(), np.full(PATHS, np.inf)
    for day in range(1, HORIZON_DAYS + 1):
        peak = level + heat * growth + p.level_drift_pct * np.sqrt(heat) * rng.standard_normal(PATHS)
        over = (peak > limit) & ~np.isfinite(when)
        part = np.clip((limit - last[over]) / np.maximum(peak[over] - last[over], 1e-9), 0.0, 1.0)
        when[over] = day - 1 + part
        last, level = peak, peak * (1.0 - share) + fresh * share
        growth = np.maximum(growth + p.growth_drift_pct * rng.standard_normal(PATHS), 0.0)
    five, half, most = np.quantile(np.where(np.isfinite(when), when, HORIZON_DAYS + 1.0), (0.05, 0.5, 0.95))
    return Crossing(
        days_n=(float(five), float(half), float(most)),
        tomorrow_frac=float((when <= 1.0).mean()),
        never_frac=float((~np.isfinite(when)).mean()),
    )
