"""The oil outlook on simulated vats with hidden truth, in worlds that are not as it thinks:
python -m benchmarks.oil [vats of a world]

Coverage of the 90 % interval, life and days over the limit against throwing away every seven days, and the
time of ten years of vats.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass, fields
from time import perf_counter

import numpy as np
from numpy.typing import NDArray

from frywright.oil.ageing import heat_factor
from frywright.oil.outlook import Belief, Crossing, Prior, Vats, crossing, learn

Array = NDArray[np.float64]
LIMIT, FRESH, SHARE, NOISE, ALPHA = 24.0, 4.0, 0.05, 1.2, 0.05
DAYS, FUTURE = 60, 91
READ_CHANCE, ASKED_ON = 0.8, (6, 60)
"""Four days of five are read; the interval is asked for on one of these days, whatever the truth."""
CHECKED_ON = (2, 32)
"""Days on which the meter is checked on two oils of known level, as the program asks."""
VAT_MONEY, CHANGE_MONEY, OVER_MONEY = 70.0, 13.5, 40.0
"""Invented: oil of a vat, labour of a change, and what a day over the limit is taken to cost in guests and
fines.
"""
SEED = 2611


@dataclass(frozen=True, slots=True, kw_only=True)
class World:
    """How vats really behave, where it differs from straight growth, true words and a right meter."""

    name: str
    bend: float = 0.0  # growth 20 points above fresh oil over growth in fresh oil, less 1
    hotter_k: float = 0.0
    top_up_n: float = 1.0  # what goes in over what is told
    offset_pct: float = 0.0
    gain_frac: float = 0.0
    outlier_frac: float = 0.0  # of readings, 8 points low
    weeks_n: tuple[float, ...] = (1.0,)  # growth by the week, drawn from these
    weekend_n: float = 1.0
    oldest_pct: float = FRESH  # the first day's level is drawn up to it, and its age is not told
    as_prior: bool = False  # everything drawn from the prior


WORLDS = (
    World(name="as the model", as_prior=True),
    World(name="straight, meter right"),
    World(name="feeds on itself, mildly", bend=1.0),
    World(name="saturating at 30 %", bend=-20.0 / 26.0),
    World(name="8 K hotter than the gauge says", hotter_k=8.0),
    World(name="top-up 30 % more than entered", top_up_n=1.3),
    World(name="top-up 30 % less than entered", top_up_n=0.7),
    World(name="meter 2 points high", offset_pct=2.0),
    World(name="meter 2 points low", offset_pct=-2.0),
    World(name="meter 10 % low", gain_frac=-0.10),
    World(name="8 % of readings 8 points low", outlier_frac=0.08),
    World(name="filter habit by the week", weeks_n=(0.6, 1.0, 1.4)),
    World(name="weekends twice as hard", weekend_n=2.0),
    World(name="age unknown", oldest_pct=16.0),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Truth:
    """What vats of a world are, and every chance that befalls them day by day: arrays (vat,) and
    (vat, day).
    """

    growth: Array
    bend: Array
    top_up_n: Array
    offset_pct: Array
    gain_frac: Array
    weekend_frac: Array
    first_pct: Array
    fresh_pct: Array
    rate_n: Array  # growth of a day over the usual, without the weekend
    rate_pct: Array  # and what it strays in points
    shake_pct: Array
    weekend: Array
    reading_error_pct: Array
    unread: NDArray[np.bool_]
    check_error_pct: Array  # (vat, day, 2)


def truth_of(world: World, n: int, rng: np.random.Generator, p: Prior) -> Truth:
    """Draw vats."""
    days = DAYS + FUTURE
    shape = (n, days)
    bend, top, offset, gain, extra, rest = (
        np.full(n, x)
        for x in (world.bend, world.top_up_n, world.offset_pct, world.gain_frac, world.weekend_n - 1.0, 0.0)
    )
    if world.as_prior:
        for values, pairs in ((bend, p.bends), (rest, p.rests)):
            chances = np.array([w for _, w in pairs])
            values[:] = rng.choice([v for v, _ in pairs], n, p=chances / chances.sum())
        top = np.maximum(1.0 + p.top_up_sd_frac * rng.standard_normal(n), 0.0)
        offset, gain = (sd * rng.standard_normal(n) for sd in (p.offset_sd_pct, p.gain_sd_frac))
        table = np.array(p.weekends)[rng.choice(len(p.weekends), n, p=[w for *_, w in p.weekends])]
        extra = np.maximum(table[:, 0] + table[:, 1] * rng.standard_normal(n), -0.8)
    stray, kept = np.zeros(shape), p.week_keep_frac
    stray[:, 0] = rest * rng.standard_normal(n)
    for d in range(1, days):
        stray[:, d] = kept * stray[:, d - 1] + rest * np.sqrt(1.0 - kept**2) * rng.standard_normal(n)
    if world.as_prior:
        stray += np.cumsum(p.growth_drift_pct * rng.standard_normal(shape), axis=1)
    growth = np.maximum(p.growth_pct + p.growth_sd_pct * rng.standard_normal(n), 0.3)
    low = rng.random(shape) < (p.outlier_frac if world.as_prior else world.outlier_frac)
    far = p.outlier_sd_pct * rng.standard_normal(shape) if world.as_prior else np.full(shape, -8.0)
    fresh = FRESH + p.fresh_sd_pct * rng.standard_normal(shape)
    aged = world.oldest_pct > FRESH
    return Truth(
        growth=growth * heat_factor(175.0 + world.hotter_k, 175.0),
        bend=bend,
        top_up_n=top,
        offset_pct=offset,
        gain_frac=gain,
        weekend_frac=extra,
        first_pct=rng.uniform(FRESH, world.oldest_pct, n) if aged else fresh[:, 0],
        fresh_pct=fresh,
        rate_n=np.repeat(rng.choice(world.weeks_n, (n, days // 7 + 1)), 7, axis=1)[:, :days],
        rate_pct=stray,
        shake_pct=p.level_drift_pct * rng.standard_normal(shape),
        weekend=np.isin((np.arange(days)[None] + rng.integers(0, 7, n)[:, None]) % 7, (5, 6)).astype(float),
        reading_error_pct=NOISE * rng.standard_normal(shape) + low * far,
        unread=rng.random(shape) >= READ_CHANCE,
        check_error_pct=p.check_sd_pct * rng.standard_normal((n, days, 2)),
    )


def peaks_of(t: Truth, discard: NDArray[np.bool_]) -> Array:
    """True peaks of every day, with changes of the oil after some."""
    level, peaks = t.first_pct.copy(), np.zeros(t.rate_n.shape)
    part = np.minimum(SHARE * t.top_up_n, 1.0)
    for d in range(peaks.shape[1]):
        rate = t.growth * t.rate_n[:, d] * (1.0 + t.weekend[:, d] * t.weekend_frac) + t.rate_pct[:, d]
        lean = np.maximum(1.0 + t.bend * (level - FRESH) / 20.0, 0.05)
        peaks[:, d] = level + np.maximum(rate, 0.0) * lean + t.shake_pct[:, d]
        level = peaks[:, d] * (1.0 - part) + FRESH * part
        if d < discard.shape[1]:
            level = np.where(discard[:, d], t.fresh_pct[:, d], level)
    return peaks


def told_of(t: Truth, peaks: Array, discard: NDArray[np.bool_]) -> Vats:
    """What is told of the vats: readings, top-ups as they are written down, changes."""
    peaks, shape = peaks[:, :DAYS], discard.shape
    seen = t.offset_pct[:, None] + (1.0 + t.gain_frac[:, None]) * peaks + t.reading_error_pct[:, :DAYS]
    checks = np.full((*shape, 4), np.nan)
    for day in CHECKED_ON:
        for n, known in enumerate((FRESH, LIMIT)):
            checks[:, day, 2 * n] = known
            checks[:, day, 2 * n + 1] = (
                t.offset_pct + (1.0 + t.gain_frac) * known + t.check_error_pct[:, day, n]
            )
    return Vats(
        heat_n=np.ones(shape),
        share_frac=np.full(shape, SHARE),
        discard=discard,
        reading=np.where(t.unread[:, :DAYS], np.nan, np.clip(seen, 0.0, 100.0)),
        noise=np.full(shape, NOISE),
        fresh=np.full(shape[0], FRESH),
        weekend=t.weekend[:, : DAYS + 1],
        checks=checks,
    )


def lived(t: Truth, aged: NDArray[np.bool_], p: Prior) -> NDArray[np.bool_]:
    """Days after which each vat's oil was changed by the rule: the chance that tomorrow's peak passes the
    limit is above ALPHA.
    """
    discard = np.zeros((len(t.growth), DAYS), dtype=bool)
    open_ = np.arange(len(discard))
    since = np.zeros(len(discard), dtype=int)
    while len(open_):
        part = Truth(**{f.name: getattr(t, f.name)[open_] for f in fields(Truth)})
        vats = told_of(part, peaks_of(part, discard[open_]), discard[open_])
        still = []
        for v, belief in zip(open_, learn(vats, p, aged[open_], LIMIT), strict=True):
            fires = np.flatnonzero(belief.tomorrow[since[v] :] > ALPHA)
            if len(fires):
                discard[v, since[v] + fires[0]] = True
                since[v] += fires[0] + 1
                still.append(v)
        open_ = np.array([v for v in still if since[v] < DAYS], dtype=int)
    return discard


def first_days(vats: Vats, v: int, count: int, aged: NDArray[np.bool_], p: Prior) -> Belief:
    """What is believed of one vat after its first days."""
    one = slice(v, v + 1)
    known = Vats(
        **{
            f.name: getattr(vats, f.name)[one, : count + (f.name == "weekend")]
            for f in fields(Vats)
            if f.name != "fresh"
        },
        fresh=vats.fresh[one],
    )
    return learn(known, p, aged[one], LIMIT)[0]


def until(peaks: Array, known: int) -> float:
    """Days from the last known one until the peak passes the limit; beyond the horizon 91."""
    over = np.flatnonzero(peaks[known : known + 90] > LIMIT)
    if not len(over):
        return 91.0
    before, after = peaks[known + over[0] - 1 : known + over[0] + 1]
    return float(over[0] + np.clip((LIMIT - before) / max(after - before, 1e-9), 0.0, 1.0))


@dataclass(frozen=True, slots=True, kw_only=True)
class Score:
    """A world in figures: vats asked, interval that held the truth and missed it on either side (shares),
    median error and width, days a filling and days possible, share of days over the limit.
    """

    asked_count: int
    inside_frac: float
    earlier_frac: float
    later_frac: float
    error_days: float
    width_days: float
    life_days: float
    over_frac: float
    settled_count: int
    settled_wrong_frac: float


def score(world: World, count: int, seed: int, prior: Prior | None = None) -> Score:
    """One world by its vats: each lives by the rule, and its interval is asked for on one day, if its oil is
    not to be changed that night.
    """
    p = prior or Prior()
    rng = np.random.default_rng(seed)
    t, aged = truth_of(world, count, rng, p), np.full(count, world.oldest_pct > FRESH)
    discard = lived(t, aged, p)
    peaks = peaks_of(t, discard)
    vats, asked_on = told_of(t, peaks, discard), rng.integers(*ASKED_ON, count)
    left = discard & (np.arange(DAYS)[None] < asked_on[:, None])
    ahead_peaks = peaks_of(t, left)
    found: list[tuple[Crossing, float]] = []
    settled: list[tuple[Crossing, float]] = []
    for v in range(count):
        known = int(asked_on[v])
        if not discard[v, known - 1]:
            ahead = t.weekend[v, known : known + 90]
            belief = first_days(vats, v, known, aged, p)
            told = crossing(belief, LIMIT, SHARE, weekend=ahead, seed=v)
            (found if told.never_frac <= 0.5 else settled).append((told, until(ahead_peaks[v], known)))
    low, half, high = (np.array([c.days_n[k] for c, _ in found]) for k in range(3))
    true = np.array([x for _, x in found])
    return Score(
        asked_count=len(found),
        inside_frac=float(((low <= true) & (true <= high)).mean()),
        earlier_frac=float((true < low).mean()),
        later_frac=float((true > high).mean()),
        error_days=float(np.median(half - true)),
        width_days=float(np.median(high - low)),
        life_days=float(discard.size / max(discard.sum(), 1)),
        over_frac=float((peaks[:, :DAYS] > LIMIT).mean()),
        settled_count=len(settled),
        settled_wrong_frac=float(np.mean([x <= 90.0 for _, x in settled])) if settled else 0.0,
    )


def by_calendar(days: int, count: int, seed: int) -> tuple[float, float]:
    """Days over the limit of all, and money a vat-day, of throwing away by the calendar, in the plain
    world.
    """
    t = truth_of(WORLDS[1], count, np.random.default_rng(seed), Prior())
    over = float((peaks_of(t, np.zeros((count, days), dtype=bool))[:, :days] > LIMIT).sum())
    total = count * days
    return over / total, (count * (VAT_MONEY + CHANGE_MONEY) + over * OVER_MONEY) / total


def main(count: int = 400) -> None:
    """Print the table."""
    tell = sys.stdout.write
    tell(f"{count} vats a world, limit {LIMIT:g}, reading error {NOISE:g}\n")
    for n, world in enumerate(WORLDS):
        s = score(world, count, SEED + n)
        money = (VAT_MONEY + CHANGE_MONEY + s.over_frac * s.life_days * OVER_MONEY) / s.life_days
        tell(
            f"{world.name}: interval holds {100 * s.inside_frac:.0f} % of {s.asked_count}"
            f" (earlier {100 * s.earlier_frac:.0f}, later {100 * s.later_frac:.0f}), median error"
            f" {s.error_days:+.1f}, width {s.width_days:.1f} days; {s.life_days:.1f} days a filling,"
            f" {100 * s.over_frac:.2f} % of days over the limit, {money:.2f} a vat-day\n"
        )
    for days in (5, 7, 10):
        share, money = by_calendar(days, count, SEED)
        tell(f"every {days} days: {100 * share:.1f} % of days over the limit, {money:.2f} a vat-day\n")
    shape, rng = (10, 3650), np.random.default_rng(1)
    vats = Vats(
        heat_n=np.ones(shape),
        share_frac=np.full(shape, SHARE),
        discard=rng.random(shape) < 0.08,
        fresh=np.full(10, FRESH),
        reading=np.where(rng.random(shape) < 0.3, np.clip(rng.normal(15, 4, shape), 0, 60), np.nan),
        noise=np.full(shape, 1.5),
    )
    start = perf_counter()
    learn(vats)
    tell(f"ten years of 10 vats: {perf_counter() - start:.2f} s\n")


if __name__ == "__main__":
    main(*(int(a) for a in sys.argv[1:2]))
