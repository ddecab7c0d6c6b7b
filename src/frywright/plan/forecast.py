"""How many pieces will be asked for, by product and slot, with its spread.

Weekday times slot: an exponentially weighted profile of each weekday, leant on the profile of all days where
a weekday is young, smoothed over neighbouring slots; times an exponentially weighted level. Counts are
negative binomial: variance is spread x mean inside a day, and whole days scatter about their level. On open
data this ties a regression with the same law at a hundredth of its time (docs/theory/day.md).
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.model.errors import InputError, Phrase

Array = NDArray[np.float64]
PROFILE_KEEP, LEVEL_GAIN, LEAN_DAYS = 0.90, 0.10, 8.0
"""A weekday's profile keeps this much a week; the level moves by this much a day; a young weekday's size
leans on all days. Chosen on the first half of the open data."""
LOOKS = ((2.0, 8.0), (1.0, 8.0), (0.0, 8.0), (2.0, 1.5), (1.0, 1.5), (0.0, 1.5))
"""Ways to see a profile: smoothed by so many slots, leaning on all days by so many weeks. Each series takes
the one that has met the shape of its days best; before it knows, the first.
"""
MISS_KEEP = 0.98
"""What a look's misses keep a day (own choice)."""
BAND, BAND_GAIN, WIDEST_N = 0.8, 0.12, 3.0
"""The variance is scaled until the middle band of this share holds as much: by this gain a day, up to this
many times or down to its inverse (adaptive conformal inference, Gibbs and Candès 2021; gain chosen on other
stretches of the open data than those reported, bounds own choice). A few wild days make a variance; they
should not make every day's band wide.
"""
LEAST_SPREAD, LEAST_CV = 1.0, 0.02
MOST_RATIO, MOST_SPREAD, PRIOR_SPREAD, PRIOR_CV = 5.0, 50.0, 1.5, 0.15
"""One strange day may move level and scatter by this ratio and this variance over mean at most; and what is
believed of a product nothing is known of. Own estimates.
"""
SILENT_CHANCE, AWAY_DAYS = 0.01, 3
"""A whole day without one piece, less likely than this while others sell, teaches nothing; after so many in a
row the product is away (withdrawn, or its season is over).
"""
STREAK_DAYS, STREAK_N, FAST_GAIN = 3, 20.0, 0.25
"""After so many days off to one side, each by half its usual scatter or more, the level of a product that
sells so many pieces a day follows by this much a day: a shift, not noise.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """One day ahead: means (series, slot), variance over mean inside a day, spread of whole days (series)."""

    mean_n: Array
    spread_n: Array
    level_cv_frac: Array

    def quantile(self, shares: Sequence[float]) -> Array:
        """Quantiles (share, series, slot) of single slots."""
        return np.stack([_quantile(self.mean_n, self._ratio(), share) for share in shares])

    def total_quantile(self, shares: Sequence[float]) -> Array:
        """Quantiles (share, series) of the day's total."""
        mean = self.mean_n.sum(axis=1)
        ratio = self.spread_n + self.level_cv_frac**2 * mean
        return np.stack([_quantile(mean, ratio, share) for share in shares])

    def _ratio(self) -> Array:
        return np.asarray(self.spread_n[:, None] + self.level_cv_frac[:, None] ** 2 * self.mean_n)

    def interval(self, counts: ArrayLike, share: float) -> Array:
        """Share of each count's probability that lies inside the central band; its mean is the band's
        coverage.

        A count has a mass, so a band's edge can cut through it; the part inside is counted. For a right law
        the mean is ``share``.
        """
        seen = np.asarray(counts, dtype=float)
        low, high = 0.5 - 0.5 * share, 0.5 + 0.5 * share
        below, upto = _cdf(self.mean_n, self._ratio(), seen - 1), _cdf(self.mean_n, self._ratio(), seen)
        width = np.maximum(upto - below, 1e-12)
        return np.asarray(np.clip((np.minimum(upto, high) - np.maximum(below, low)) / width, 0.0, 1.0))


def _law(mean: Array, ratio: Array) -> tuple[Array, Array]:
    ratio = np.maximum(ratio, 1.0 + 1e-9)
    return np.maximum(mean, 1e-9) / (ratio - 1.0), 1.0 / ratio


def _quantile(mean: Array, ratio: Array, share: float) -> Array:
    from scipy.stats import nbinom

    return np.asarray(nbinom.ppf(share, *_law(mean, ratio)))


def _cdf(mean: Array, ratio: Array, count: Array) -> Array:
    from scipy.stats import nbinom

    return np.asarray(nbinom.cdf(count, *_law(mean, ratio)))


@dataclass(slots=True, kw_only=True)
class Forecaster:
    """What has been learned so far; days are told in order, each at most once.

    A product teaches nothing before its first sale, nor on days on which it is away; a day on which nothing
    at all was sold is a closed day.
    """

    series_count: int
    slots_count: int
    last: dt.date | None = None
    sums: Array = field(default_factory=lambda: np.zeros(0))  # (weekday 0-6 and all days, series, slot)
    weights: Array = field(default_factory=lambda: np.zeros(0))
    level: Array = field(default_factory=lambda: np.zeros(0))
    noise: Array = field(default_factory=lambda: np.zeros(0))  # (2: spread, day variance; series)
    days_n: Array = field(default_factory=lambda: np.zeros(0))  # days that taught each series
    silent_n: Array = field(default_factory=lambda: np.zeros(0))  # days without a piece, up to the last
    misses: Array = field(default_factory=lambda: np.zeros(0))  # (look, series)
    width_n: Array = field(default_factory=lambda: np.zeros(0))  # on the variance, by series
    streak_n: Array = field(default_factory=lambda: np.zeros(0))  # days above (+) or below (-) in a row
    factors: dict[str, tuple[float, int]] = field(default_factory=dict)
    days_count: int = 0

    def __post_init__(self) -> None:
        if self.series_count < 1 or self.slots_count < 1:
            raise InputError(
                "series and slots",
                Phrase("{low} by {high}", {"low": self.series_count, "high": self.slots_count}),
                "1 or more",
            )
        shape = (8, self.series_count, self.slots_count)
        self.sums, self.weights = np.zeros(shape), np.zeros(shape)
        self.level = np.ones(self.series_count)
        self.noise = np.array(
            [np.full(self.series_count, PRIOR_SPREAD), np.full(self.series_count, PRIOR_CV**2)]
        )
        self.days_n, self.silent_n, self.streak_n = (np.zeros(self.series_count) for _ in range(3))
        self.width_n = np.ones(self.series_count)
        self.misses = np.zeros((len(LOOKS), self.series_count))

    @property
    def fresh(self) -> NDArray[np.bool_]:
        """Series never sold so far."""
        return np.asarray(self.days_n == 0)

    @property
    def away(self) -> NDArray[np.bool_]:
        """Series that sold before and are away now: nothing is forecast of them until they sell again."""
        return np.asarray((self.days_n > 0) & (self.silent_n >= AWAY_DAYS))

    def _shape(self, weekday: int) -> Array:
        """A weekday's profile by each series' best look."""
        best = self.misses.argmin(axis=0)
        return np.asarray(self._shapes(weekday)[best, np.arange(self.series_count)])

    def _shapes(self, weekday: int) -> Array:
        """A weekday's profile by every look (look, series, slot)."""
        whole = _divide(self.sums[7], self.weights[7])
        own, weight = _divide(self.sums[weekday], self.weights[weekday]), self.weights[weekday]
        size = _total(own * (weight > 0)) / np.maximum(_total(whole * (weight > 0)), 1e-9)
        age = weight.max(axis=1)
        size = np.where(age > 0, (age * size + LEAN_DAYS * 0.3) / (age + LEAN_DAYS * 0.3), 1.0)
        lent = whole * size[:, None]
        return np.stack(
            [_smooth((weight * own + lean * lent) / (weight + lean), wide) for wide, lean in LOOKS]
        )

    def _told(self, mean: Array) -> Forecast:
        """The law of a day with these means."""
        spread, day = np.maximum(self.noise[0], LEAST_SPREAD), np.maximum(self.noise[1], LEAST_CV**2)
        return Forecast(
            mean_n=mean,
            spread_n=np.maximum(self.width_n * spread, LEAST_SPREAD),
            level_cv_frac=np.sqrt(np.maximum(self.width_n * day, LEAST_CV**2)),
        )

    def _learn_width(self, seen: Array, told: Forecast, there: NDArray[np.bool_]) -> None:
        """Widen or narrow the variance by how much of the day the middle band held."""
        sure = there.any(axis=1) & (self.days_n >= 14)
        held = np.where(there, told.interval(np.where(there, seen, 0.0), BAND), 0.0).sum(axis=1)
        share = held / np.maximum(there.sum(axis=1), 1)
        step = np.where(sure, np.exp(BAND_GAIN * (BAND - share)), 1.0)
        self.width_n = np.clip(self.width_n * step, 1.0 / WIDEST_N, WIDEST_N)

    def _learn_look(self, seen: Array, weekday: int, there: NDArray[np.bool_]) -> None:
        """How far each look's shape of the day was off, at the day's own size."""
        filled, shapes = np.where(there, seen, 0.0), np.where(there, self._shapes(weekday), 0.0)
        size = filled.sum(axis=1) / np.maximum(shapes.sum(axis=2), 1e-9)
        gaps = (filled - shapes * size[:, :, None]) ** 2 / np.maximum(filled.sum(axis=1), 1.0)[:, None]
        self.misses = MISS_KEEP * self.misses + gaps.sum(axis=2)

    def learn(self, date: dt.date, counts: ArrayLike, event: str = "") -> None:
        """Take in one day (series, slot); NaN is missing. A day with an event teaches the event's factor
        only. Raises InputError: days out of order or another shape.
        """
        seen = np.asarray(counts, dtype=float)
        if seen.shape != (self.series_count, self.slots_count):
            raise InputError(
                "day",
                seen.shape,
                "{series} series by {slots} slots",
                series=self.series_count,
                slots=self.slots_count,
            )
        if self.last is not None and date <= self.last:
            raise InputError("date", date.isoformat(), "after {date}", date=self.last.isoformat())
        self.last = date
        there = np.isfinite(seen)
        if not there.any() or not np.nansum(seen) > 0:  # nothing known of the day, or a closed day
            return
        expected = self.level[:, None] * self._shape(date.weekday()) if self.days_count else None
        if event:
            if expected is not None and float((expected * there).sum()) > 0:
                ratio = float(np.nansum(seen) / (expected * there).sum())
                mean, count = self.factors.get(event, (1.0, 0))
                self.factors[event] = ((mean * count + ratio) / (count + 1), count + 1)
            return
        there = there & self._speaks(seen, expected, there)[:, None]
        if expected is not None:
            self._learn_width(seen, self._told(expected), there)
            self._learn_spread(seen, expected, there)
            self._learn_look(seen, date.weekday(), there)
        filled = np.where(there, seen, 0.0)
        for n in (date.weekday(), 7):
            keep = np.where(there, PROFILE_KEEP if n < 7 else PROFILE_KEEP ** (1 / 7), 1.0)
            self.sums[n] = keep * self.sums[n] + filled / np.maximum(self.level, 1e-3)[:, None]
            self.weights[n] = keep * self.weights[n] + there
        self.days_n = self.days_n + there.any(axis=1)
        self.days_count += 1

    def _speaks(self, seen: Array, expected: Array | None, there: NDArray[np.bool_]) -> NDArray[np.bool_]:
        """Which series a day teaches: those that sold, and those whose day without a piece is likely."""
        sold = np.where(there, seen, 0.0).sum(axis=1) > 0
        usual = np.where(there, expected, 0.0).sum(axis=1) if expected is not None else np.zeros(len(sold))
        none = _cdf(usual, self.noise[0] + self.noise[1] * usual, np.zeros(len(sold)))
        quiet = ~sold & there.any(axis=1) & (none < SILENT_CHANCE)
        back = sold & self.away
        self.noise[0] = np.where(back, np.maximum(self.noise[0], PRIOR_SPREAD), self.noise[0])
        self.noise[1] = np.where(back, np.maximum(self.noise[1], PRIOR_CV**2), self.noise[1])
        self.silent_n = np.where(sold, 0.0, self.silent_n + quiet)
        return np.asarray((sold | ~quiet) & ~(self.fresh & ~sold) & ~(self.away & ~sold))

    def _learn_spread(self, seen: Array, expected: Array, there: NDArray[np.bool_]) -> None:
        filled, hoped = np.where(there, seen, 0.0), np.where(there, expected, 0.0)
        total, wanted = filled.sum(axis=1), hoped.sum(axis=1)
        sure = there.any(axis=1) & (wanted > 0) & (self.days_n > 0)
        ratio = np.where(sure, np.clip(total / np.maximum(wanted, 1e-9), 0.0, MOST_RATIO), 1.0)
        inside = hoped * ratio[:, None]
        free = max(1.0 - 1.0 / max(there.sum(axis=1).max(), 2), 0.5)
        chi = ((filled - inside) ** 2).sum(axis=1) / np.maximum(inside.sum(axis=1), 1e-9) / free
        chi = np.clip(chi, LEAST_SPREAD, MOST_SPREAD)
        warm = np.where(sure & (self.days_n >= 14), 1.0 / np.clip(self.days_n - 13.0, 1.0, 50.0), 0.0)
        self.noise[0] += np.where(total > 0, warm, 0.0) * (chi - self.noise[0])
        day = (ratio - 1.0) ** 2 - self.noise[0] / np.maximum(wanted, 1.0)
        self.noise[1] += warm * (day - self.noise[1])
        usual = np.sqrt(np.maximum(self.noise[1], LEAST_CV**2) + self.noise[0] / np.maximum(wanted, 1.0))
        far = sure & (wanted >= STREAK_N) & (np.abs(ratio - 1.0) > 0.5 * usual)
        side = np.where(far, np.sign(ratio - 1.0), 0.0)
        self.streak_n = np.where(
            sure, np.where(side * self.streak_n > 0, self.streak_n + side, side), self.streak_n
        )
        gain = np.where(np.abs(self.streak_n) > STREAK_DAYS, FAST_GAIN, LEVEL_GAIN)
        step = np.maximum(gain, 1.0 / np.clip(self.days_n + 1.0, 1.0, 50.0))
        self.level = np.where(sure, self.level * (1.0 + step * (ratio - 1.0)), self.level)

    def forecast(self, date: dt.date, factor: float = 1.0, event: str = "") -> Forecast:
        """The day at ``date``. ``factor`` multiplies it; an event seen before brings its own factor.
        Raises InputError: nothing learned yet, or a factor that is not above 0.
        """
        if self.days_count < 1:
            raise InputError("history", "no day of sales", "one day or more; a week or more is better")
        if not 0 < factor <= 20:
            raise InputError("factor", factor, "above 0 up to 20")
        own = self.factors.get(event, (1.0, 0))[0] if event else 1.0
        mean = factor * own * self.level[:, None] * self._shape(date.weekday())
        return self._told(np.where(self.away[:, None], 0.0, mean))


def learned(
    dates: Sequence[dt.date], counts: ArrayLike, events: Mapping[dt.date, str] | None = None
) -> Forecaster:
    """A forecaster that has seen a history (series, day, slot)."""
    seen = np.asarray(counts, dtype=float)
    known = Forecaster(series_count=seen.shape[0], slots_count=seen.shape[2])
    for n, date in enumerate(dates):
        known.learn(date, seen[:, n], (events or {}).get(date, ""))
    return known


def _divide(top: Array, bottom: Array) -> Array:
    return np.asarray(np.where(bottom > 0, top / np.maximum(bottom, 1e-12), 0.0))


def _total(values: Array) -> Array:
    return np.asarray(values.sum(axis=1))


def _smooth(shape: Array, slots: float) -> Array:
    """Gaussian kernel of this width over neighbouring slots; a day's total stays."""
    if not slots:
        return shape
    reach = np.arange(-3, 4)
    kernel = np.exp(-0.5 * (reach / slots) ** 2)
    kernel /= kernel.sum()
    padded = np.pad(shape, ((0, 0), (3, 3)), mode="edge")
    smooth = sum(k * padded[:, n : n + shape.shape[1]] for n, k in enumerate(kernel))
    return np.asarray(
        smooth * (shape.sum(axis=1) / np.maximum(np.asarray(smooth).sum(axis=1), 1e-12))[:, None]
    )
