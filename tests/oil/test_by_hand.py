"""What is asked of an outlook and of money at their edges, by sums of normal laws and by hand."""

from __future__ import annotations

from dataclasses import replace
from math import inf, log

import numpy as np
import pytest

from frywright.model.errors import InputError
from frywright.model.fryer import Oil
from frywright.oil.ageing import days_to, heat_factor, next_level, settles_at, share_for_ever
from frywright.oil.cost import Rates, bill
from frywright.oil.filling import fill, melt_j, most_oil_kg, swelling
from frywright.oil.filter_kernel import GAIN, GROWTH, LEVEL, OFFSET, STATES, TOP_UP, WEEKEND
from frywright.oil.outlook import (
    HORIZON_DAYS,
    Belief,
    Prior,
    Vats,
    _bank,
    _drawn,
    _start,
    _walk,
    crossing,
    learn,
)
from frywright.oil.worth import change_money, day_money, filter_effect, left_money, life_days

RATES = Rates(price_kg_money=2.0, change_h=0.5, hour_money=20.0, disposal_kg_money=0.1, rebate_kg_money=0.4)
FAT = Oil(
    key="x",
    title="x",
    density_20c_kg_m3=920.0,
    density_slope_kg_m3k=-0.64,
    cp_0c_j_kgk=2000.0,
    cp_slope_j_kgk2=2.0,
)


def belief(mean: dict, cover: dict, weight=(1.0,), bend=(0.0,)) -> Belief:
    """Members with these means and variances of states; nothing else is in doubt."""
    count = len(weight)
    means, covers = np.zeros((count, STATES)), np.zeros((count, STATES, STATES))
    means[:, TOP_UP] = 1.0
    for state, value in mean.items():
        means[:, state] = value
    for state, value in cover.items():
        covers[:, state, state] = value
    none = np.zeros(count)
    return Belief(
        mean=means,
        cover=covers,
        weight=np.array(weight),
        tomorrow=none,
        bend=np.array(bend),
        rest=none,
        fresh_pct=4.0,
        prior=Prior(level_drift_pct=1e-9, growth_drift_pct=1e-9),
    )


def test_what_is_believed_of_several_models_is_their_mixture():
    """Mean and variance of a mixture: the mean of the variances and the variance of the means."""
    both = belief(
        {LEVEL: [10.0, 14.0], GROWTH: [2.0, 1.0]},
        {LEVEL: [1.0, 4.0], GROWTH: [0.04, 0.09]},
        (0.75, 0.25),
        (0.0, 0.0),
    )
    mean, sd = both.level
    assert (mean, sd) == (11.0, pytest.approx(np.sqrt(0.75 * (1 + 1) + 0.25 * (4 + 9))))
    mean, sd = both.growth
    assert (mean, sd) == (1.75, pytest.approx(np.sqrt(0.75 * (0.04 + 0.0625) + 0.25 * (0.09 + 0.5625))))
    assert both.life_growth == pytest.approx(1.75)


def test_growth_bends_with_the_level_and_grows_by_a_weekends_share():
    """A bend of a half over 20 points: a quarter more at 14; two days of seven are a weekend's."""
    bent = belief({LEVEL: 14.0, GROWTH: 2.0, WEEKEND: 0.7}, {GROWTH: 0.04}, bend=(0.5,))
    assert bent.growth == (pytest.approx(2.0 * 1.25 * 1.2), pytest.approx(0.2 * 1.25))
    assert bent.life_growth == pytest.approx(2.0 * 1.25 * 1.2)  # from fresh to twenty above: its middle is 14
    assert belief({LEVEL: 4.0, GROWTH: 2.0}, {}, bend=(1.0,)).growth[0] == pytest.approx(2.0)
    assert belief({LEVEL: 4.0, GROWTH: 2.0}, {}, bend=(1.0,)).life_growth == pytest.approx(3.0)


def test_a_meters_error_at_todays_level_and_what_a_check_leaves_of_it():
    """Offset and gain by the linear rule of normal laws; an exact check on two oils leaves nothing."""
    seen = belief({LEVEL: 10.0, OFFSET: 0.5, GAIN: 0.02}, {OFFSET: 0.36, GAIN: 0.0016, LEVEL: 1.0})
    assert seen.offset == (pytest.approx(0.7), pytest.approx(np.sqrt(0.36 + 0.0016 * 100.0)))
    assert seen.meter_known().offset == (pytest.approx(0.7), pytest.approx(0.0, abs=1e-6))
    error = 0.5
    information = np.diag([1 / 0.36, 1 / 0.0016])
    for known in (4.0, 24.0):
        information += np.outer([1.0, known], [1.0, known]) / error**2
    left = np.linalg.inv(information)
    at = np.array([1.0, 10.0])
    assert seen.meter_known(error).offset[1] == pytest.approx(np.sqrt(at @ left @ at))
    assert seen.meter_known().level == seen.level


@pytest.mark.parametrize(("share", "days"), [(0.0, 7.0), (0.1, None), (0.5, inf)])
def test_a_sure_vat_passes_its_limit_on_the_day_that_the_sum_says(share, days):
    """Level 10, two points a day, limit 24: the seventh day's peak meets it. With a tenth topped up a day the
    days are those of the recursion, between two of them along the straight line of their peaks; with half of
    it never.
    """
    sure = belief({LEVEL: 10.0, GROWTH: 2.0}, {})
    found = crossing(sure, 24.0, share)
    if days is None:
        level, peaks = 10.0, []
        for _ in range(90):
            peaks.append(level + 2.0)
            level = next_level(level, 2.0, share, 4.0)
        above = int(np.argmax(np.array(peaks) >= 24.0)) if max(peaks) >= 24.0 else None
        days = inf if above is None else above + (24.0 - peaks[above - 1]) / (peaks[above] - peaks[above - 1])
    if days == inf:
        assert (found.never_frac, found.days_n) == (1.0, (HORIZON_DAYS + 1.0,) * 3)
    else:
        assert found.days_n == pytest.approx((days,) * 3, abs=1e-5)
        assert found.soonest_days_n == pytest.approx(days, abs=1e-5) and found.never_frac == 0.0
    assert found.tomorrow_frac == 0.0
    near = crossing(replace(sure, mean=sure.mean + np.eye(STATES)[LEVEL] * 12.5), 24.0, share)
    assert near.tomorrow_frac == 1.0
    assert crossing(sure, 24.0, 0.0, heat=2.0).days_n[1] == pytest.approx(3.5, abs=1e-5)


def test_what_an_outlook_cannot_be_asked():
    sure = belief({LEVEL: 10.0, GROWTH: 2.0}, {})
    for limit, share, heat in (
        (0.0, 0.1, 1.0),
        (100.1, 0.1, 1.0),
        (24.0, -0.1, 1.0),
        (24.0, 1.0, 1.0),
        (24.0, 0.1, -1.0),
    ):
        with pytest.raises(InputError, match="a limit up to 100"):
            crossing(sure, limit, share, heat=heat)
    assert crossing(sure, 100.0, 0.0, heat=0.0).never_frac == 1.0


def test_futures_are_drawn_from_each_model_by_its_weight():
    """Three quarters from the one, a quarter from the other; means, variances and a covariance as told; no
    growth below nothing.
    """
    both = belief(
        {LEVEL: [10.0, 30.0], GROWTH: [2.0, 1.0]}, {LEVEL: 1.0, GROWTH: 0.25}, (0.75, 0.25), (0.0, 0.0)
    )
    both.cover[:, LEVEL, GROWTH] = both.cover[:, GROWTH, LEVEL] = 0.3
    drawn, member = _drawn(both, np.random.default_rng(2))
    assert np.bincount(member).tolist() == [1500, 500]
    for m, level in ((0, 10.0), (1, 30.0)):
        mine = drawn[member == m]
        assert mine[:, LEVEL].mean() == pytest.approx(level, abs=0.15)
        assert mine[:, LEVEL].std() == pytest.approx(1.0, abs=0.1)
        assert np.cov(mine[:, [LEVEL, GROWTH]].T)[0, 1] == pytest.approx(0.3, abs=0.05)
    assert drawn[:, GROWTH].min() == 0.0


def test_a_bank_and_its_start_are_what_the_prior_says():
    """Every bend with every restlessness and every weekend, weights multiplied; oil of unknown age."""
    prior = Prior(
        bends=((0.0, 0.7), (1.0, 0.3)), rests=((0.1, 1.0),), weekends=((0.1, 0.2, 0.4), (0.6, 0.5, 0.6))
    )
    assert _bank(prior) == [
        (0.0, 0.1, 0.1, 0.2, pytest.approx(0.28)),
        (0.0, 0.1, 0.6, 0.5, pytest.approx(0.42)),
        (1.0, 0.1, 0.1, 0.2, pytest.approx(0.12)),
        (1.0, 0.1, 0.6, 0.5, pytest.approx(0.18)),
    ]
    mean, sd = _start(prior, np.array([4.0, 5.0]), np.array([False, True]))
    assert mean[:, LEVEL].tolist() == [4.0, prior.aged_pct] and sd[:, LEVEL].tolist() == [
        0.5,
        prior.aged_sd_pct,
    ]
    assert mean[0, [GROWTH, TOP_UP]].tolist() == [2.0, 1.0]
    assert sd[1, [GROWTH, TOP_UP, OFFSET, GAIN]].tolist() == [1.0, 0.12, 1.5, 0.07]
    walk = _walk(prior)
    assert (walk[LEVEL], walk[GROWTH], walk[OFFSET], walk[STATES]) == (0.25, 0.02, 0.03, 0.87)


def vats(**changes) -> Vats:
    usual = {
        "heat_n": np.ones((1, 3)),
        "share_frac": np.zeros((1, 3)),
        "discard": np.zeros((1, 3), dtype=bool),
        "reading": np.full((1, 3), np.nan),
        "noise": np.ones((1, 3)),
        "fresh": np.array([4.0]),
    }
    return Vats(**{**usual, **changes})


@pytest.mark.parametrize(
    "changes",
    [
        {"heat_n": np.ones(3)},
        {"share_frac": np.zeros((1, 2))},
        {"noise": np.ones((2, 3))},
        {"weekend": np.zeros((1, 3))},
        {"checks": np.zeros((1, 3, 3))},
        {"by_meter": np.ones((1, 2), dtype=bool)},
        {"fresh": np.array([4.0, 4.0])},
        {"heat_n": np.array([[1.0, np.nan, 1.0]])},
        {"heat_n": np.array([[1.0, -0.1, 1.0]])},
        {"share_frac": np.array([[0.0, -0.1, 0.0]])},
        {"share_frac": np.array([[0.0, 1.1, 0.0]])},
        {"reading": np.array([[np.nan, -0.1, 5.0]])},
        {"reading": np.array([[np.nan, 100.1, 5.0]])},
    ],
)
def test_days_that_cannot_be_are_refused(changes):
    with pytest.raises(InputError):
        vats(**changes)


def test_days_at_their_ends_are_taken_and_a_vat_without_readings_grows_as_the_prior_says():
    edge = vats(heat_n=np.zeros((1, 3)), share_frac=np.ones((1, 3)), reading=np.array([[0.0, 100.0, np.nan]]))
    assert edge.weekend.shape == (1, 4) and edge.by_meter.all() and np.isnan(edge.checks).all()
    flat = Prior(bends=((0.0, 1.0),), rests=((0.0, 1.0),), weekends=((0.0, 0.0, 1.0),), level_drift_pct=0.0)
    (found,) = learn(vats(), flat)
    assert found.level[0] == pytest.approx(4.0 + 3 * 2.0) and found.growth[0] == pytest.approx(2.0)
    variance = 0.5**2 + 9 * 1.0 + 0.02**2 * (1 + 4)  # growth drifts after each day's growth
    assert found.level[1] == pytest.approx(np.sqrt(variance), rel=1e-6)
    assert found.fresh_pct == 4.0 and found.prior is flat


def test_an_effect_of_filter_turns_is_the_line_of_least_squares():
    """Against NumPy's fit with its covariance; too few, or always as many turns, tell nothing."""
    rng = np.random.default_rng(4)
    turns = np.array([0.0, 1, 2, 3, 0, 1, 2, 3, 1, 2])
    gains = 3.0 - 0.7 * turns + 0.2 * rng.standard_normal(10)
    line, cover = np.polyfit(turns, gains, 1, cov=True)
    found = filter_effect(gains, turns)
    assert (found.turn_n, found.gains_count, found.told) == (pytest.approx(-line[0]), 10, True)
    assert found.sd == pytest.approx(np.sqrt(cover[0, 0]))
    assert not filter_effect(6.0 - gains, turns).told
    for few in (filter_effect(gains[:7], turns[:7]), filter_effect(gains, np.ones(10))):
        assert (few.turn_n, few.sd, few.told) == (0.0, inf, False)
    assert filter_effect(gains[:8], turns[:8]).sd < inf
    for g, t in (([1.0], [1.0, 2.0]), ([[1.0]], [[1.0]])):
        with pytest.raises(InputError, match="one turn count"):
            filter_effect(g, t)


def test_money_of_a_life_of_oil():
    """Ten days at two points from 4 to 24: a change of 20 kg costs 2.00 + 0.10 - 0.40 a kilogram and half an
    hour; a share that never lets it pass the limit has no change, and throws nothing away once it is past.
    """
    whole = change_money(20.0, RATES)
    assert whole == pytest.approx(20.0 * 1.7 + 10.0)
    assert life_days(4.0, 2.0, 0.0, 4.0, 24.0) == 10.0
    assert day_money(20.0, 2.0, 0.0, 4.0, 24.0, RATES) == pytest.approx(whole / 10.0)
    assert day_money(20.0, 2.0, 0.2, 4.0, 24.0, RATES) == pytest.approx(20.0 * 0.2 * 2.0)
    assert left_money(20.0, 14.0, 2.0, 0.2, 4.0, 24.0, RATES) == pytest.approx(whole)
    assert left_money(20.0, 22.5, 2.0, 0.2, 4.0, 24.0, RATES) == 0.0
    assert left_money(20.0, 2.0, 2.0, 0.0, 4.0, 24.0, RATES) == pytest.approx(whole)
    assert left_money(20.0, 19.0, 2.0, 0.0, 4.0, 24.0, RATES) == pytest.approx(whole * 2.5 / 10.0)


def test_days_to_a_limit_follow_the_recursion():
    """Level after top-up: step by step to where it passes; where it settles; none where nothing grows."""
    level = 8.0
    for day in range(1, 6):
        level = next_level(level, 2.0, 0.08, 4.0)
        assert days_to(level, 8.0, 2.0, 0.08, 4.0) == pytest.approx(day)
    rest = settles_at(2.0, 0.08, 4.0)
    assert (
        next_level(rest, 2.0, 0.08, 4.0) == pytest.approx(rest) and days_to(rest, 8.0, 2.0, 0.08, 4.0) == inf
    )
    assert (days_to(8.0, 8.0, 2.0, 0.1, 4.0), days_to(20.0, 8.0, 0.0, 0.1, 4.0)) == (0.0, inf)
    assert days_to(20.0, 8.0, 2.0, 0.0, 4.0) == 6.0 and settles_at(2.0, 0.0, 4.0) == inf
    share = share_for_ever(24.0, 2.0, 4.0)
    assert settles_at(2.0, share, 4.0) == pytest.approx(24.0)
    peak = share_for_ever(24.0, 2.0, 4.0, at_peak=True)
    assert settles_at(2.0, peak, 4.0) + 2.0 == pytest.approx(24.0)
    for growth, part in ((-0.1, 0.1), (1.0, -0.1), (1.0, 1.0)):
        with pytest.raises(InputError, match="share 0 to below 1"):
            next_level(8.0, growth, part, 4.0)


def test_heat_ages_by_arrhenius_between_100_and_230_degrees():
    assert log(heat_factor(180.0, 160.0)) == pytest.approx(33e3 / 8.314462618 * (1 / 433.15 - 1 / 453.15))
    assert heat_factor(170.0, 170.0) == 1.0 and heat_factor(230.0, 100.0) > 1.0
    for pair in ((99.9, 170.0), (170.0, 230.1)):
        with pytest.raises(InputError, match="100"):
            heat_factor(*pair)


def test_a_vat_filled_by_weight_stands_as_high_as_its_volumes_say():
    """30 kg at 920 and, at 170 degC, 824 kg/m3 over 0.1 m2; a load of 10.5 kg is 10 L; a tenth of foam."""
    found = fill(
        FAT, 30.0, cold_c=20.0, hot_c=170.0, carton_kg=10.0, area_m2=0.1, load_kg=10.5, foam_frac=0.1
    )
    assert (found.cold_m3, found.hot_m3) == (pytest.approx(30 / 920), pytest.approx(30 / 824))
    assert found.swells_frac == pytest.approx(920 / 824 - 1.0) == swelling(FAT, 20.0, 170.0)
    assert (found.cartons_count, fill(FAT, 30.1, carton_kg=10.0).cartons_count) == (3, 4)
    heights = found.cold_height_m, found.hot_height_m, found.loaded_height_m
    assert heights == pytest.approx((0.3 / 0.92, 0.3 / 0.824, 0.3 / 0.824 * 1.1 + 0.1))
    assert fill(FAT, 30.0).cold_height_m == 0.0
    most = most_oil_kg(FAT, 0.1, 0.5, 10.5, hot_c=170.0, foam_frac=0.1)
    assert most == pytest.approx(0.04 / 1.1 * 824.0)
    assert melt_j(10.0, 20.0, 50.0) == pytest.approx(10.0 * (120e3 + 2000.0 * 30.0))
    for wrong in (
        {"mass_kg": 1.9},
        {"mass_kg": 501.0},
        {"carton_kg": 0.0},
        {"foam_frac": 0.51},
        {"load_kg": -1.0},
        {"area_m2": -1.0},
        {"cold_c": -11.0},
        {"cold_c": 175.0},
        {"hot_c": 231.0},
    ):
        with pytest.raises(InputError):
            fill(FAT, **{"mass_kg": 30.0, **wrong})
    for area, line, load in ((0.0, 0.5, 1.0), (0.1, 0.0, 1.0), (0.1, 0.5, -1.0), (0.1, 0.5, 52.5)):
        with pytest.raises(InputError):
            most_oil_kg(FAT, area, line, load)


def test_a_bill_takes_each_rate_once():
    found = bill(100.0, (20.0, 10.0), 3.0, 6.0, replace(RATES, media_money=1.5))
    parts = (6.0, 10.0, 2 * 0.5 * 20.0 / 6.0, 1.5, 0.5, 2.0)
    assert (found.uptake_money, found.discard_money, found.labour_money, found.media_money) == pytest.approx(
        parts[:4]
    )
    assert (found.disposal_money, found.rebate_money) == pytest.approx(parts[4:])
    assert found.day_money == pytest.approx(sum(parts[:5]) - 2.0)
    assert found.per_kg_money == pytest.approx(found.day_money / 100.0)
    for told in (
        (0.0, (20.0,), 1.0, 6.0),
        (1.0, (20.0,), 1.0, 0.0),
        (1.0, (-1.0,), 1.0, 6.0),
        (1.0, (1.0,), -1.0, 6.0),
    ):
        with pytest.raises(InputError, match="oil bill"):
            bill(*told, RATES)
    with pytest.raises(InputError):
        bill(1.0, (1.0,), 1.0, 6.0, replace(RATES, hour_money=-1.0))
