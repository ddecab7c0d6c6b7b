"""At which time, or set point, of its main stage a share of a program's loads fails, from some 400 cooks.

The margin of a heavy piece is close to a quadratic of the conditions, of the logarithm of its weight and of
the change of the stage. A few loads at eight changes are fitted, then more near the limit. The fit says of
many drawn loads how likely each fails, and so at which change the share is the one asked for. There loads
are drawn again, most often those it is least sure of, and solved; each counts by how seldom it was drawn. So
the share found has the error of chance alone, none of the fit (importance sampling with a control variate:
Owen, Monte Carlo theory, methods and examples, 2013, chapters 8 and 9). ``python -m benchmarks.break_even``
counts how often the truth lies in the interval. It is an estimate; the certificate is a proof
(:func:`frywright.design.proof.prove`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.design.fewer import quadratic, varied
from frywright.design.proof import Spread, draw, solved, weights_of
from frywright.design.shape import changed, main_stage
from frywright.design.window import reach
from frywright.model.errors import Amount, InputError
from frywright.physics.inputs import CLOSE, SCAN, Precision
from frywright.physics.plan import FryPlan
from frywright.verdicts.limits import CookLimit

Array = NDArray[np.float64]
Numbers = NDArray[np.int64]
SHARES = (0.01, 0.001)
"""Shares of loads that fail, asked for on a page (own choice)."""
DRAWN, LEVELS, FIRST, NEAR, ROUNDS, COUNTED = 50_000, 8, 192, 32, 6, 128
"""Loads drawn; changes of the first fit and loads solved for it; loads solved near the limit for a better
one, until a quarter of them fails and a quarter passes, so many times at most; loads counted (own trials).
"""
LEAST_SHARE = 0.001
"""50 of the loads drawn (own choice)."""
NEAR_K = 1.0
"""A load so near to the limit weighs half as much in the fit as one at it (own choice)."""
HALVINGS = 8
"""From the last bracket, a second or two wide, a straight line in the logarithm of the odds goes on."""
SEVERAL = 10
"""So many of the loads counted must fail, and so many pass: else the interval means nothing (own choice)."""
PLAIN_SHARE, WIDER_N = 0.1, 2.0
"""A tenth of the loads counted is drawn as they come, the others as if the fit were off twice as much: so no
load counts much more than another where the fit is wrong (own choice).
"""
Z = 1.959963984540054  # 97.5 % point of the normal distribution
STREAM = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class BreakEven:
    """Change of a value (``time`` [s], ``set point`` [K]) from ``low`` to ``high`` at which a share of the
    loads fails, at 95 % confidence, and the likeliest; None where it is not found, ``low`` and ``high`` then
    are what was tried. Stages count from 1.
    """

    stage: int
    what: str
    share_frac: float
    low: float
    high: float
    change: float | None = None
    solved_count: int = 0


def break_even(
    plan: FryPlan,
    limit: CookLimit,
    guard_k: float,
    spread: Spread,
    shares: Sequence[float] = SHARES,
    seed: int = 1,
) -> tuple[BreakEven, ...]:
    """Time and set point of the main stage at which so many of its loads fail, over one spread; none where
    that stage ends by a condition. Raises InputError: a share is too small for the loads drawn, or more than
    half.
    """
    for share in shares:
        if not LEAST_SHARE <= share <= 0.5:
            raise InputError(
                "share of loads that fail",
                Amount(share, "frac"),
                "{low} to {high}",
                low=Amount(LEAST_SHARE, "frac"),
                high=Amount(0.5, "frac"),
            )
    program = plan.program.timed()
    if program.stages[main_stage(program)].duration_s is None:
        return ()
    loads = Loads(plan, limit, guard_k, spread, seed)
    ends = reach(plan.fryer.controller, loads.plan.program, loads.stage)
    return tuple(row for what in ends for row in of_value(loads, what, ends[what], shares))


def of_value(loads: Loads, what: str, ends: tuple[float, float], shares: Sequence[float]) -> list[BreakEven]:
    """One value of the main stage: a row for each share."""
    nothing = BreakEven(stage=loads.stage + 1, what=what, share_frac=0.0, low=ends[0], high=ends[1])
    rows = [replace(nothing, share_frac=share) for share in shares]
    if not ends[0] < ends[1]:
        return rows
    fit, levels = Fit(loads, ends), np.linspace(*ends, LEVELS)
    part = loads.rng.integers(0, DRAWN, (LEVELS, FIRST // LEVELS))
    found = [loads.margins(p, what, by, SCAN) for p, by in zip(part, levels, strict=True)]
    fit.learn(part.ravel(), np.repeat(levels, part.shape[1]), np.vstack(found))
    return [_row(fit, row) for row in rows]


def _row(fit: Fit, row: BreakEven) -> BreakEven:
    """A row with its change and interval, where the fit knows one and the loads counted bear it out."""
    loads, what, share = fit.loads, row.what, row.share_frac
    for _ in range(ROUNDS):
        at = fit.change(share)
        if at is None:
            return row
        part, _ = fit.drawn(at, NEAR)
        margins = loads.margins(part, what, at, CLOSE)
        fit.learn(part, np.full(NEAR, at), margins)
        if NEAR <= 4 * np.sum(margins.min(axis=1) < 0.0) <= 3 * NEAR:
            break
    at = fit.change(share)
    if at is None:
        return row
    part, counts = fit.drawn(at, COUNTED)
    fails, chance = (loads.margins(part, what, at, CLOSE) < 0.0).any(axis=1), fit.failing(at)
    if not SEVERAL <= fails.sum() <= COUNTED - SEVERAL:
        return row
    off = counts * (fails - chance[part])
    seen = chance.mean() + off.mean()
    if not 0.0 < seen < 1.0:
        return row
    error = np.sqrt(off.var(ddof=1) / COUNTED + seen * (1.0 - seen) / DRAWN)
    shift = _odds(chance.mean()) - _odds(seen)
    half = Z * error / (seen * (1.0 - seen))
    middle, low, high = (fit.change(_share(_odds(share) + shift + by)) for by in (0.0, half, -half))
    if middle is None or low is None or high is None:
        return row
    return replace(row, change=middle, low=low, high=high, solved_count=len(fit.part) + COUNTED)


def _odds(share: float) -> float:
    return float(np.log(share / (1.0 - share)))


def _share(odds: float) -> float:
    return float(1.0 / (1.0 + np.exp(-odds)))


class Loads:
    """Drawn loads of a plan, and one value of its main stage that changes."""

    def __init__(self, plan: FryPlan, limit: CookLimit, guard_k: float, spread: Spread, seed: int) -> None:
        self.plan = replace(plan, program=plan.program.timed())
        self.limit, self.guard_k = limit, guard_k
        self.stage = main_stage(self.plan.program)
        self.rows = draw(spread, DRAWN, seed)
        self.weights = weights_of(plan, self.rows, seed)
        columns = [np.column_stack([varied(self.rows), w]) for w in np.log(self.weights).T]
        self.terms = [quadratic(x) for x in columns]
        self.linear = [1 + int(np.sum(np.ptp(x, axis=0) > 0.0)) for x in columns]
        self.rng = np.random.default_rng((seed, STREAM))

    def margins(self, part: Numbers, what: str, by: float, precision: Precision) -> Array:
        """Margins of some loads after a change, (load, cut) [K]."""
        program = changed(self.plan.program, self.stage, what, by)
        plan = replace(self.plan, program=program, oil_start_c=program.stages[0].set_c)
        return solved(plan, self.limit, self.guard_k, self.rows[part], self.weights[part], precision, None)[0]


class Fit:
    """Margins of all drawn loads as a quadratic, learned from those solved."""

    def __init__(self, loads: Loads, ends: tuple[float, float]) -> None:
        self.loads, self.ends = loads, ends
        self.part, self.at, self.found = np.zeros(0, dtype=np.int64), np.zeros(0), np.zeros((0, 0))

    def learn(self, part: Numbers, by: Array, margins: Array) -> None:
        """Fit anew with more loads."""
        self.found = np.vstack([self.found, margins]) if len(self.part) else margins
        self.part, self.at = np.concatenate([self.part, part]), np.concatenate([self.at, self._unit(by)])
        self.parts, self.off = [], []
        for cut, terms in enumerate(self.loads.terms):
            mine, margin, u, k = (
                terms[self.part],
                self.found[:, cut],
                self.at[:, None],
                self.loads.linear[cut],
            )
            weight = 1.0 / (1.0 + (margin / NEAR_K) ** 2)
            whole = np.hstack([mine, u * mine[:, :k], u**2])
            q, r = np.linalg.qr(whole * weight[:, None])
            beta = np.linalg.lstsq(r, q.T @ (margin * weight), rcond=None)[0]
            left = (margin - whole @ beta) * weight / (1.0 - np.sum(q**2, axis=1))
            self.off.append(np.sqrt(np.sum(left**2) / np.sum(weight**2)))
            n = terms.shape[1]
            self.parts.append((terms @ beta[:n], terms[:, :k] @ beta[n:-1], beta[-1]))

    def _unit(self, by: Array) -> Array:
        low, high = self.ends
        return np.asarray((2.0 * by - low - high) / (high - low))

    def failing(self, by: float, wider_n: float = 1.0) -> Array:
        """Chance that each drawn load fails after a change."""
        from scipy.special import ndtr

        u = float(self._unit(np.array(by)))
        passes = np.ones(len(self.loads.rows))
        for (a, b, c), off in zip(self.parts, self.off, strict=True):
            passes *= ndtr((a + u * b + u**2 * c) / (wider_n * off))
        return 1.0 - passes

    def change(self, share: float) -> float | None:
        """Change at which the mean chance is this one; None where it is not between the ends."""
        low, high = self.ends
        more, less = (float(self.failing(end).mean()) for end in self.ends)
        if not more > share > less:
            return None
        for _ in range(HALVINGS):
            middle = 0.5 * (low + high)
            found = float(self.failing(middle).mean())
            if found > share:
                low, more = middle, found
            else:
                high, less = middle, found
        above, asked, below = (_odds(np.clip(value, 1e-12, 1.0 - 1e-12)) for value in (more, share, less))
        return low + (high - low) * (above - asked) / (above - below)

    def drawn(self, by: float, count: int) -> tuple[Numbers, Array]:
        """Loads drawn by how little is known of their side, and how much each counts."""
        chance = self.failing(by, WIDER_N)
        unsure = np.sqrt(chance * (1.0 - chance)) + 1e-300
        q = (1.0 - PLAIN_SHARE) * unsure / unsure.sum() + PLAIN_SHARE / len(unsure)
        part = self.loads.rng.choice(len(q), size=count, p=q / q.sum())
        return part, 1.0 / (len(q) * q[part])
