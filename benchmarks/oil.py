"""The oil outlook on simulated vats with hidden truth: python -m benchmarks.oil

Coverage of the 90 % interval, cost and days over the limit against throwing away every seven days, and the
time of ten years of a thousand vats.
"""

from __future__ import annotations

import sys
from time import perf_counter

import numpy as np

from frywright.oil.outlook import Prior, Vats, crossing, learn

LIMIT, FRESH, SHARE, NOISE, ALPHA, HORIZON = 24.0, 4.0, 0.05, 1.2, 0.05, 60
VAT_MONEY, CHANGE_MONEY, OVER_MONEY = 70.0, 13.5, 40.0
"""Invented: oil of a vat, labour of a change, and what a day over the limit is taken to cost in guests and
fines.
"""


def life(rng: np.random.Generator, prior: Prior, calendar: int | None) -> tuple[int, int]:
    """Days until the oil is thrown away, and days over the limit, by the outlook or by the calendar."""
    growth, level, over = max(prior.growth_pct + prior.growth_sd_pct * rng.standard_normal(), 0.3), FRESH, 0
    readings: list[float] = []
    for day in range(1, HORIZON + 1):
        peak = level + growth + prior.level_drift_pct * rng.standard_normal()
        over += peak > LIMIT
        readings.append(float(np.clip(peak + NOISE * rng.standard_normal(), 0, 100)))
        level = peak * (1 - SHARE) + FRESH * SHARE
        if calendar is not None:
            if day >= calendar:
                return day, over
            continue
        shape = (1, day)
        vat = Vats(
            heat_n=np.ones(shape),
            share_frac=np.full(shape, SHARE),
            discard=np.zeros(shape, dtype=bool),
            reading=np.array([readings]),
            noise=np.full(shape, NOISE),
            fresh=np.array([FRESH]),
        )
        belief = learn(vat, prior)
        if (
            crossing(
                belief.mean[0], belief.cover[0], LIMIT, SHARE, FRESH, prior=prior, seed=day
            ).tomorrow_frac
            > ALPHA
        ):
            return day, over
    return HORIZON, over


def main() -> None:
    """Print the table."""
    prior = Prior()
    for title, calendar in (
        ("outlook", None),
        ("every 7 days", 7),
        ("every 5 days", 5),
        ("every 10 days", 10),
    ):
        rng = np.random.default_rng(8)
        days, over = np.array([life(rng, prior, calendar) for _ in range(500)]).sum(axis=0)
        money = (500 * (VAT_MONEY + CHANGE_MONEY) + over * OVER_MONEY) / days
        sys.stdout.write(
            f"{title}: {days / 500:.1f} days a filling, {100 * over / days:.1f} % of days over the limit,"
            f" {money:.2f} a vat-day\n"
        )
    shape, rng = (1000, 3650), np.random.default_rng(1)
    vats = Vats(
        heat_n=np.ones(shape),
        share_frac=np.full(shape, SHARE),
        discard=rng.random(shape) < 0.08,
        fresh=np.full(1000, FRESH),
        reading=np.where(rng.random(shape) < 0.3, np.clip(rng.normal(15, 4, shape), 0, 60), np.nan),
        noise=np.full(shape, 1.5),
    )
    start = perf_counter()
    learn(vats)
    sys.stdout.write(f"ten years of 1000 vats: {perf_counter() - start:.2f} s\n")


if __name__ == "__main__":
    main()
