"""When will this vat's oil reach its limit? From noisy readings by a meter that may be off, top-ups as told
and heat, with an interval that says how much of it is the meter's; and what to do about it.

Several models of growth are filtered side by side and weighed by how well they foretold the readings.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError, Phrase
from frywright.oil import filter_kernel
from frywright.oil.filter_kernel import GAIN, GROWTH, LEVEL, OFFSET, STATES, TOP_UP, WEEKEND, bent

Array = NDArray[np.float64]
LEAST_READINGS = 4
"""Below it the growth is mostly the prior, and that is said (project's own rule)."""
HORIZON_DAYS, PATHS = 90, 2000
WEEKEND_DAYS_N = 2.0 / 7.0
"""Share of days that are a Saturday or Sunday."""
EVIDENCE_KEEP = 0.995
"""What the weight of a model keeps a day: a habit may change, so old evidence fades over half a year (own
choice).
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Prior:
    """What is believed of a vat and its meter before any reading, in points of polar compounds. Estimates,
    no source, where none is named; growth differs threefold between oils.
    """

    fresh_sd_pct: float = 0.5
    aged_pct: float = 14.0  # oil of unknown age: anything from fresh, 4, to a usual limit, 24, equally likely
    aged_sd_pct: float = 5.8  # standard deviation of that: 20 / sqrt(12)
    growth_pct: float = 2.0
    growth_sd_pct: float = 1.0
    level_drift_pct: float = 0.25
    growth_drift_pct: float = 0.02
    top_up_sd_frac: float = 0.12  # error of what is told as top-up, the same every day
    offset_sd_pct: float = 1.5  # published comparisons of quick meters: 1 to 2 points, repeatability within
    gain_sd_frac: float = 0.07
    meter_drift_pct: float = 0.03  # a day
    outlier_frac: float = 0.05
    outlier_sd_pct: float = 8.0
    check_sd_pct: float = 0.6  # of a meter on oil of known level, the mean of four readings
    week_keep_frac: float = 0.87  # of a week's habit that lasts to the next day: a week is its memory
    bends: tuple[tuple[float, float], ...] = (
        (-1.0, 0.05),
        (-0.7, 0.11),
        (-0.35, 0.10),
        (0.0, 0.52),
        (0.5, 0.08),
        (1.2, 0.10),
        (3.0, 0.04),
    )
    """How growth changes from fresh oil to 20 points above, as a share, with its weight: published polar
    compounds grow close to linearly in time, so none is likeliest; at -1 it ends there, saturated.
    """
    rests: tuple[tuple[float, float], ...] = ((0.05, 0.8), (0.9, 0.2))
    """How far growth strays from the usual by the week (habits of filtering, loads), points a day."""
    weekends: tuple[tuple[float, float, float], ...] = ((0.1, 0.1, 0.7), (0.6, 0.4, 0.3))
    """What a Saturday or Sunday ages more than another day, as a share: mean, standard deviation, weight."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Vats:
    """Days of many vats: arrays (vat, day). ``heat_n`` is heat-hours over the usual day's; a reading that is
    not there is NaN. ``weekend`` has the day after the last too. ``checks`` (vat, day, 4) are the known level
    and the meter's of two oils, NaN where there was none.
    """

    heat_n: Array
    share_frac: Array
    discard: NDArray[np.bool_]
    reading: Array
    noise: Array
    fresh: Array
    weekend: Array = field(default_factory=lambda: np.zeros((0, 0)))
    by_meter: NDArray[np.bool_] = field(default_factory=lambda: np.zeros((0, 0), dtype=bool))
    checks: Array = field(default_factory=lambda: np.zeros((0, 0, 4)))

    def __post_init__(self) -> None:
        shape = self.heat_n.shape
        if len(shape) != 2 or any(
            a.shape != shape for a in (self.share_frac, self.discard, self.reading, self.noise)
        ):
            raise InputError("vats", shape, "arrays of vats by days, all of one shape")
        wide = (shape[0], shape[1] + 1)
        for name, empty, wanted in (
            ("weekend", np.zeros(wide), wide),
            ("by_meter", np.ones(shape, dtype=bool), shape),
            ("checks", np.full((*shape, 4), np.nan), (*shape, 4)),
        ):
            if not getattr(self, name).size:
                object.__setattr__(self, name, empty)
            if getattr(self, name).shape != wanted:
                raise InputError("vats", shape, "arrays of vats by days, all of one shape")
        self._bounds()

    def _bounds(self) -> None:
        if (
            self.fresh.shape != (self.heat_n.shape[0],)
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
    """One vat after its last day: each model's state with its spread, and its weight; and for every day the
    chance that the next peak passes the limit it was filtered for.
    """

    mean: Array  # (member, state)
    cover: Array  # (member, state, state)
    weight: Array  # (member,)
    tomorrow: Array  # (day,)
    bend: Array  # (member,)
    rest: Array  # (member,)
    fresh_pct: float
    prior: Prior

    def _mixed(self, values: Array, spread: Array) -> tuple[float, float]:
        mean = float(self.weight @ values)
        return mean, float(np.sqrt(self.weight @ (spread + (values - mean) ** 2)))

    @property
    def level(self) -> tuple[float, float]:
        """Level after the last day's top-up, and its standard deviation."""
        return self._mixed(self.mean[:, LEVEL], self.cover[:, LEVEL, LEVEL])

    @property
    def growth(self) -> tuple[float, float]:
        """Points a usual day adds at today's level, and the standard deviation."""
        lean = np.array([bent(*pair) for pair in self._bent_at(self.mean[:, LEVEL])])
        usual = 1.0 + WEEKEND_DAYS_N * self.mean[:, WEEKEND]
        return self._mixed(lean * usual * self.mean[:, GROWTH], lean**2 * self.cover[:, GROWTH, GROWTH])

    @property
    def life_growth(self) -> float:
        """Points a usual day adds over a whole life, from fresh oil to twenty points above."""
        lean = np.array(
            [bent(*pair) for pair in self._bent_at(np.full(len(self.bend), self.fresh_pct + 10.0))]
        )
        usual = 1.0 + WEEKEND_DAYS_N * self.mean[:, WEEKEND]
        return max(0.0, float(self.weight @ (lean * usual * self.mean[:, GROWTH])))

    @property
    def offset(self) -> tuple[float, float]:
        """Points the meter reads too high at today's level, and the standard deviation."""
        slope = np.zeros((len(self.weight), STATES))
        slope[:, OFFSET], slope[:, GAIN] = 1.0, self.mean[:, LEVEL]
        off = self.mean[:, OFFSET] + self.mean[:, GAIN] * self.mean[:, LEVEL]
        return self._mixed(off, np.einsum("mi,mij,mj->m", slope, self.cover, slope))

    def _bent_at(self, levels: Array) -> list[tuple[float, float, float]]:
        return [(float(c), self.fresh_pct, float(b)) for c, b in zip(levels, self.bend, strict=True)]

    def meter_known(self, error_pct: float = 0.0) -> Belief:
        """What would be believed if the meter were checked on fresh and worn oil with this error, and were
        found as it is thought to be.
        """
        cover = self.cover.copy()
        for known in (self.fresh_pct, self.fresh_pct + filter_kernel.SPAN_PCT):
            slope = np.zeros(STATES)
            slope[OFFSET], slope[GAIN] = 1.0, known
            row = cover @ slope
            spread = row @ slope + error_pct**2
            cover = cover - np.einsum("mi,mj->mij", row, row) / np.maximum(spread, 1e-12)[:, None, None]
        return replace(self, cover=cover)


@dataclass(frozen=True, slots=True, kw_only=True)
class Crossing:
    """Days from now until the peak passes the limit: its 90 % interval with the median between, chance that
    it does so tomorrow, and that it never does in the horizon.

    The interval is the 5 and 95 % quantiles; where the upper one lies beyond the horizon nothing can be
    missed above, and it starts at 10 %.
    """

    days_n: tuple[float, float, float]
    soonest_days_n: float  # the 5 % quantile
    tomorrow_frac: float
    never_frac: float


def learn(
    vats: Vats, prior: Prior | None = None, aged: NDArray[np.bool_] | None = None, limit: float = 24.0
) -> list[Belief]:
    """Filter all days of all vats at once. ``aged`` (vat,) marks oil whose age on the first day nobody knows:
    the first reading sets its level.
    """
    p, count = prior or Prior(), len(vats.fresh)
    old = np.zeros(count, dtype=bool) if aged is None else aged
    bend, rest, more, more_sd, lean = (np.array(x) for x in zip(*_bank(p), strict=True))
    members = len(bend)
    out = (
        np.zeros((count, members, STATES)),
        np.zeros((count, members, STATES, STATES)),
        np.zeros((count, members)),
        np.zeros(vats.heat_n.shape),
    )
    days = (vats.heat_n, vats.weekend, vats.share_frac, vats.discard, vats.reading, vats.noise, vats.by_meter)
    filter_kernel.run(
        tuple(np.ascontiguousarray(a, dtype=a.dtype if a.dtype == bool else float) for a in days),
        np.ascontiguousarray(vats.checks, dtype=float),
        vats.fresh.astype(float),
        (*_start(p, vats.fresh, old), p.fresh_sd_pct),
        (bend, rest, more, more_sd, np.log(lean)),
        (_walk(p), (p.outlier_frac, p.outlier_sd_pct), EVIDENCE_KEEP, p.check_sd_pct, float(limit)),
        out,
    )
    return [
        Belief(
            mean=out[0][v],
            cover=out[1][v],
            weight=np.exp(out[2][v]),
            tomorrow=out[3][v],
            bend=bend,
            rest=rest,
            fresh_pct=float(vats.fresh[v]),
            prior=p,
        )
        for v in range(count)
    ]


def _bank(p: Prior) -> list[tuple[float, ...]]:
    """Bend, restlessness, a weekend's more with its standard deviation, and weight of every member."""
    return [
        (bend, rest, more, sd, a * b * c)
        for bend, a in p.bends
        for rest, b in p.rests
        for more, sd, c in p.weekends
    ]


def _start(p: Prior, fresh: Array, old: NDArray[np.bool_]) -> tuple[Array, Array]:
    """Means and standard deviations of the states on the first day."""
    mean, sd = np.zeros((len(fresh), STATES)), np.zeros((len(fresh), STATES))
    mean[:, LEVEL], sd[:, LEVEL] = (
        np.where(old, p.aged_pct, fresh),
        np.where(old, p.aged_sd_pct, p.fresh_sd_pct),
    )
    mean[:, GROWTH], sd[:, GROWTH] = p.growth_pct, p.growth_sd_pct
    mean[:, TOP_UP], sd[:, TOP_UP] = 1.0, p.top_up_sd_frac
    sd[:, OFFSET], sd[:, GAIN] = p.offset_sd_pct, p.gain_sd_frac
    return mean, sd


def _walk(p: Prior) -> Array:
    """Standard deviation that a day adds to every state, and what a week's deviation keeps."""
    walk = np.zeros(STATES + 1)
    walk[LEVEL], walk[GROWTH], walk[OFFSET] = p.level_drift_pct, p.growth_drift_pct, p.meter_drift_pct
    walk[STATES] = p.week_keep_frac
    return walk


def crossing(
    belief: Belief,
    limit: float,
    share: float,
    *,
    heat: float = 1.0,
    weekend: Array | None = None,
    seed: int = 1,
) -> Crossing:
    """When one vat's peak passes its limit if it is topped up by ``share`` a day, by drawn futures.

    The crossing lies inside a day where the straight line between two peaks meets the limit.
    Raises InputError: a limit or share that cannot be.

    Parameters
    ----------
    weekend : 1 for the coming days that are a weekend's, from tomorrow; without it every day is 2/7 of one
    """
    if not 0 < limit <= 100 or not 0 <= share < 1 or not heat >= 0:
        raise InputError(
            "limit, share, heat", f"{limit:g}, {share:g}, {heat:g}", "a limit up to 100 %, a share below 1"
        )
    ahead = np.full(HORIZON_DAYS, WEEKEND_DAYS_N) if weekend is None else np.asarray(weekend, dtype=float)
    same = (belief.mean.tobytes(), belief.cover.tobytes(), belief.weight.tobytes(), ahead.tobytes())
    return _crossed(
        _Asked(belief, ahead, (limit, share, heat), seed, (*same, belief.fresh_pct, belief.prior))
    )


@dataclass(frozen=True, slots=True)
class _Asked:
    """What a crossing is asked of; the same where its numbers are."""

    belief: Belief = field(compare=False)
    ahead: Array = field(compare=False)
    numbers_n: tuple[float, float, float]
    seed_count: int
    same: tuple[object, ...]


@lru_cache(256)
def _crossed(asked: _Asked) -> Crossing:
    """The drawn futures of :func:`crossing`, which are the same for the same numbers."""
    belief, (limit, share, heat), p = asked.belief, asked.numbers_n, asked.belief.prior
    drawn, member = _drawn(belief, np.random.default_rng(asked.seed_count))
    when = np.zeros(len(drawn))
    filter_kernel.futures(
        drawn,
        belief.bend[member],
        belief.rest[member],
        asked.ahead,
        (limit, share, belief.fresh_pct, heat, p.level_drift_pct, p.growth_drift_pct, p.week_keep_frac),
        asked.seed_count,
        when,
    )
    never = float((~np.isfinite(when)).mean())
    shares = (0.05 if never < 0.05 else 0.10, 0.5, 0.95, 0.05)
    days = np.quantile(np.where(np.isfinite(when), when, HORIZON_DAYS + 1.0), shares)
    return Crossing(
        days_n=(float(days[0]), float(days[1]), float(days[2])),
        soonest_days_n=float(days[3]),
        tomorrow_frac=float((when <= 1.0).mean()),
        never_frac=never,
    )


def _drawn(belief: Belief, rng: np.random.Generator) -> tuple[Array, NDArray[np.int64]]:
    """States drawn from the models by their weights, and the model of each."""
    edges = np.cumsum(belief.weight) / belief.weight.sum()
    member = np.searchsorted(edges, (np.arange(PATHS) + rng.random()) / PATHS).clip(0, len(edges) - 1)
    normal, drawn = rng.standard_normal((PATHS, STATES)), belief.mean[member]
    for m in np.unique(member):
        value, vector = np.linalg.eigh(belief.cover[m])
        mine = member == m
        drawn[mine] += normal[mine] @ (vector * np.sqrt(np.maximum(value, 0.0))).T
    drawn[:, GROWTH] = np.maximum(drawn[:, GROWTH], 0.0)
    return drawn, member
