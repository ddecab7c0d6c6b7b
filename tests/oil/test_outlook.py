"""The oil outlook: exact where it can be, doubtful where it must, right as often as it says in worlds
that are not as it thinks.
"""

from __future__ import annotations

from dataclasses import fields, replace

import numpy as np
import pytest
from benchmarks.oil import WORLDS, score

from frywright.oil.outlook import Prior, Vats, _bank, crossing, learn

SURE = Prior(
    bends=((0.0, 1.0),),
    rests=((1e-6, 1.0),),
    weekends=((0.0, 1e-6, 1.0),),
    top_up_sd_frac=1e-6,
    offset_sd_pct=1e-6,
    gain_sd_frac=1e-6,
    meter_drift_pct=0.0,
    outlier_frac=0.0,
)
"""A prior in which only level and growth are unknown."""


def days(reading, share=0.05, **others):
    """One vat, read on these days."""
    shape = (1, len(reading))
    return Vats(
        heat_n=np.ones(shape),
        share_frac=np.full(shape, share),
        discard=np.zeros(shape, dtype=bool),
        reading=np.array([reading], dtype=float),
        noise=np.full(shape, 1.2),
        fresh=np.full(1, 4.0),
        **others,
    )


def test_with_only_level_and_growth_unknown_it_is_the_linear_filter():
    """Against a linear Kalman filter in matrices, written here."""
    reading, p = [6.5, np.nan, 11.0, 12.1, np.nan, 16.2], SURE
    x, cover = np.array([4.0, p.growth_pct]), np.diag([p.fresh_sd_pct**2, p.growth_sd_pct**2])
    step, drop = np.array([[1.0, 1.0], [0.0, 1.0]]), np.diag([0.95, 1.0])
    for y in reading:
        x = step @ x
        cover = step @ cover @ step.T + np.diag([p.level_drift_pct**2, p.growth_drift_pct**2])
        if np.isfinite(y):
            gain = cover[:, 0] / (cover[0, 0] + 1.2**2)
            x, cover = x + gain * (y - x[0]), cover - np.outer(gain, cover[0])
        x, cover = drop @ x + np.array([0.2, 0.0]), drop @ cover @ drop
    found = learn(days(reading), p)[0]
    assert found.level == pytest.approx((x[0], np.sqrt(cover[0, 0])), rel=1e-6)
    assert found.growth[0] == pytest.approx(x[1], rel=1e-6)


def test_a_meter_that_is_off_is_doubted_until_it_is_checked():
    """Readings 2 points high from the first day: unchecked the level stays uncertain; a check puts it right
    and narrows it.
    """
    truth = 4.0 + 1.5 * np.arange(1, 9)
    unchecked = learn(days(truth + 2.0, share=0.0))[0]
    checks = np.full((1, 8, 4), np.nan)
    checks[0, 3] = (4.0, 6.0, 24.0, 26.0)
    checked = learn(days(truth + 2.0, share=0.0, checks=checks))[0]
    assert unchecked.level[1] > 1.0
    assert checked.level[0] == pytest.approx(truth[-1], abs=0.6)
    assert checked.level[1] < 0.8 * unchecked.level[1]
    assert checked.offset[0] == pytest.approx(2.0, abs=0.5)


def test_a_strip_says_nothing_of_the_meter():
    """The same readings by strip leave the meter's offset where it was."""
    by_meter = np.zeros((1, 5), dtype=bool)
    found = learn(days([9.0, 10.0, 11.0, 12.0, 13.0], by_meter=by_meter))[0]
    assert found.mean[:, 5] == pytest.approx(0.0)


def test_one_far_reading_does_not_carry_the_outlook_away():
    """A reading 8 points low after a steady week moves the level by less than a point."""
    steady = [6.0, 8.0, 10.0, 12.0, 14.0, 16.0]
    with_it = learn(days([*steady, 10.0], share=0.0))[0]
    without = learn(days([*steady, np.nan], share=0.0))[0]
    assert abs(with_it.level[0] - without.level[0]) < 1.0


@pytest.mark.parametrize(("shape", "sign"), [("saturates", -1.0), ("feeds on itself", 1.0)])
def test_growth_that_bends_is_found_by_its_evidence(shape, sign):
    """Two fillings whose growth halves or doubles on the way: models that bend that way gain weight, those
    that bend the other way lose nearly all.
    """
    reading, level = [], 4.0
    discard = np.zeros((1, 40), dtype=bool)
    for day in range(40):
        level += (2.5 if sign < 0 else 1.2) * (1.0 + sign * 0.8 * (level - 4.0) / 20.0)
        reading.append(level)
        if level > 22.0 or day == 19:
            level, discard[0, day] = 4.0, True
    vats = replace(days(reading, share=0.0), discard=discard)
    found, before = learn(vats)[0], dict.fromkeys((-1.0, 1.0), 0.0)
    for bend, weight in Prior().bends:
        before[float(np.sign(bend))] = before.get(float(np.sign(bend)), 0.0) + weight
    right, wrong = (float(found.weight[np.sign(found.bend) == s].sum()) for s in (sign, -sign))
    assert right > before[sign]
    assert wrong < 0.1 * before[-sign]


def test_weekends_are_learned():
    """Twice the growth on two days of seven, ten weeks long: most of it is known."""
    weekend = np.array([[float(d % 7 in (5, 6)) for d in range(71)]])
    level, reading, discard = 4.0, [], np.zeros((1, 70), dtype=bool)
    for day in range(70):
        level += 1.5 * (1.0 + weekend[0, day])
        reading.append(level)
        if level > 20.0:
            level, discard[0, day] = 4.0, True
    found = learn(replace(days(reading, share=0.0), discard=discard, weekend=weekend))[0]
    assert float(found.weight @ found.mean[:, 3]) == pytest.approx(1.0, abs=0.3)


def test_the_meters_part_of_the_doubt_goes_with_a_check():
    """The interval with the meter known is narrower, and what a check leaves lies between."""
    belief = learn(days(4.0 + 1.6 * np.arange(1, 9), share=0.0))[0]
    width = [
        float(np.ptp(crossing(b, 24.0, 0.03).days_n))
        for b in (belief, belief.meter_known(0.6), belief.meter_known())
    ]
    assert width[0] > width[1] > width[2]


def test_vats_filtered_together_do_not_touch_each_other():
    """Each comes out as if filtered alone."""
    shape, rng = (12, 200), np.random.default_rng(1)
    vats = Vats(
        heat_n=np.ones(shape),
        share_frac=np.full(shape, 0.05),
        discard=rng.random(shape) < 0.08,
        reading=np.where(rng.random(shape) < 0.3, np.clip(rng.normal(15, 4, shape), 0, 60), np.nan),
        noise=np.full(shape, 1.5),
        fresh=np.linspace(2.0, 6.0, 12),
    )
    together = learn(vats)
    for k in (0, 6, 11):
        one = Vats(**{f.name: getattr(vats, f.name)[k : k + 1] for f in fields(Vats)})
        np.testing.assert_array_equal(learn(one)[0].mean, together[k].mean)
        assert np.isfinite(together[k].mean).all()


@pytest.mark.slow(8)
def test_the_interval_holds_what_it_says_where_the_model_holds():
    """700 vats drawn from the prior, meter, bends, habits and all, each asked on one day of its first two
    months: the 90 % interval holds the truth in 88 to 92 %, give or take two standard errors (2.4).
    """
    found = score(WORLDS[0], 700, 77)
    assert found.asked_count > 400
    assert 0.88 - 0.024 <= found.inside_frac <= 0.92 + 0.024
    assert found.over_frac < 0.01


@pytest.mark.slow
@pytest.mark.parametrize("world", WORLDS[2:], ids=lambda w: w.name)
def test_worlds_that_are_not_as_the_model_thinks(world):
    """The interval holds the truth in 85 % or more, give or take two standard errors (5 points of 200 vats);
    at most one day in a hundred lies over the limit.
    """
    found = score(world, 200, 78)
    assert found.inside_frac >= 0.85 - 0.05
    assert found.over_frac <= 0.01


def test_the_weights_of_a_prior_are_the_chances_of_its_parts():
    """Bend, restlessness and weekend are independent: every chance is there, and all of them are one."""
    prior = Prior()
    bank = _bank(prior)
    assert len(bank) == len(prior.bends) * len(prior.rests) * len(prior.weekends)
    assert sum(weight for *_, weight in bank) == pytest.approx(1.0)
    for bend, chance in prior.bends:
        assert sum(w for member, *_, w in bank if member == bend) == pytest.approx(chance)
    for rest, chance in prior.rests:
        assert sum(w for _, member, *_, w in bank if member == rest) == pytest.approx(chance)
