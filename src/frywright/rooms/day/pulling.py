"""The pull and marinate sheet: what comes out of the freezer for a day of use."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil

from frywright.catalog import load as catalog
from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import Sell
from frywright.plan.pull import Stock, pull, thaw_s
from frywright.rooms.day.day import forecaster_of, mix_factor

THIN_CASE_M = 0.005
"""A case thinner than this is no block: loose pieces thaw as fast as the room allows (estimate)."""

COLD_C = 5.0
"""Thawing under refrigeration keeps food at 5 °C (41 °F) or less: FDA Food Code 2022, 3-501.13."""
MOST_UNITS = 1e6


@dataclass(frozen=True, slots=True, kw_only=True)
class CutBalance:
    """A cut: pieces asked for by name, and pieces that come with the heads."""

    cut: str
    needed_n: float
    given_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PullRow:
    """A product on the sheet, counted in heads or pieces (``unit``)."""

    product: str
    name: str
    unit: str
    mean_n: float
    needed_n: float
    on_hand_n: float
    expired_n: float
    cases: int
    case_count: int
    pull_n: float
    short_frac: float
    over_frac: float
    over_n: float
    worst_cut: str
    thaw_h: float
    thaw_least_h: float
    pull_on: str
    balance: tuple[CutBalance, ...]
    use_by: str
    warning: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PullView:
    """The sheet for a day of use."""

    use: str
    pull_on: str
    rows: tuple[PullRow, ...]
    caution: str


def _least_thaw_s(kitchen: Kitchen, sell: Sell) -> float:
    """Shortest thaw of a product's case in the cold room; 0 where it is not frozen or too thin to matter."""
    if sell.thaw_s <= 0 or sell.case_thickness_m < THIN_CASE_M:
        return 0.0
    first = kitchen.cut_set(kitchen.product(sell.product).cut_set).parts[0]
    water = catalog.compositions()[kitchen.cut(first.cut).composition].water_frac
    return thaw_s(sell.case_thickness_m, water)


def _check(kitchen: Kitchen, stock: Sequence[tuple[str, str, float, dt.date]]) -> None:
    known = [sell.product for sell in kitchen.sells]
    for product, _, units, _ in stock:
        one_of(known, product, "product")
        if not 0 <= units <= MOST_UNITS:
            raise InputError("stock", f"{units:g}", "0 to 1,000,000", where=product)


def pull_view(
    store: Store,
    kitchen: Kitchen,
    use: dt.date,
    stock: Sequence[tuple[str, str, float, dt.date]],
    tr: Translate = str,
) -> PullView:
    """The pull and marinate sheet for a day of use. Raises InputError: stock of a product that is not sold,
    or an amount that cannot be.

    Parameters
    ----------
    stock : product, what (thawed, marinated), units and the last day they may be used
    """
    _check(kitchen, stock)
    forecaster, history = forecaster_of(store, kitchen, use)
    forecast, rows = forecaster.forecast(use), []
    for n, sell in enumerate(kitchen.sells):
        per_unit = kitchen.pieces_per_unit(sell.product)
        factor, worst, balance = mix_factor(kitchen, history, sell.product)
        mean = float(forecast.mean_n[n].sum()) / per_unit
        spread = float(forecast.spread_n[n] / per_unit + forecast.level_cv_frac[n] ** 2 * mean)
        mine = _on_hand(sell, stock, use)
        found = pull(
            mean,
            spread,
            (sell.margin_money * per_unit, sell.cost_money * per_unit),
            mine,
            sell.case_count,
            factor,
        )
        pull_on = min(use - dt.timedelta(days=ceil(sell.thaw_s / 86400.0)), use)
        least_h = round(_least_thaw_s(kitchen, sell) / 3600, 1)
        product = kitchen.product(sell.product)
        unit = kitchen.cut_set(product.cut_set).unit
        row = PullRow(
            product=sell.product,
            name=tr(product.name),
            unit=tr("heads" if unit == "head" else "pieces"),
            mean_n=round(found.mean_n, 1),
            needed_n=round(found.needed_n, 1),
            on_hand_n=found.on_hand_n,
            expired_n=found.expired_n,
            cases=found.cases_count,
            case_count=sell.case_count,
            pull_n=found.units_n,
            short_frac=round(found.short_frac, 3),
            over_frac=round(found.over_frac, 3),
            over_n=round(found.expected_over_n, 1),
            worst_cut=worst,
            thaw_h=sell.thaw_s / 3600,
            thaw_least_h=least_h,
            balance=tuple(
                CutBalance(cut=kitchen.cut(c).title, needed_n=round(a, 1), given_n=round(b, 1))
                for c, a, b in balance
            ),
            pull_on=pull_on.isoformat(),
            use_by=max(use, pull_on + dt.timedelta(days=sell.keep_days_count)).isoformat(),
            warning=_warning(sell, least_h, tr),
        )
        rows.append(row)
    return PullView(
        use=use.isoformat(),
        pull_on=min((row.pull_on for row in rows), default=use.isoformat()),
        rows=tuple(rows),
        caution=say(
            "Thaw at {cold_c} or below, on the lowest shelf, covered and dated; never on the bench.",
            {"cold_c": COLD_C},
            kitchen.site.units,
            tr,
        ),
    )


def _on_hand(sell: Sell, stock: Sequence[tuple[str, str, float, dt.date]], use: dt.date) -> list[Stock]:
    """What is there of a product, with the days it may still be used."""
    return [
        Stock(units_n=units, in_date_days_count=(last - use).days, what=what)
        for key, what, units, last in stock
        if key == sell.product
    ]


def _warning(sell: Sell, least_h: float, tr: Translate) -> str:
    """What is wrong with the time planned for thawing; empty for nothing."""
    if not least_h > sell.thaw_s / 3600 > 0:
        return ""
    return say(
        "A block this thick needs at least {least_h} h to thaw in the cold room; {told_h} h are"
        " planned. Frozen centres boil over and undercook: pull earlier or open the cases.",
        {"least_h": str(least_h), "told_h": f"{sell.thaw_s / 3600:g}"},
        translate=tr,
    )
