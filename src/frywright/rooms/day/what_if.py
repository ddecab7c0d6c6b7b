"""A day tried: a plan by hand, drawn days under the rule, and the same days with something changed."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, field, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.model.kitchen import Kitchen
from frywright.model.trade import time_of_day_s
from frywright.plan.check import Price, broken_rules, price
from frywright.plan.model import MOST_SLOTS, Drop, Plan
from frywright.plan.replay import Counts, Look, Replay, draw_days, replay, replay_par
from frywright.rooms.day.day import Bench, bench_for

PLAY_SEED, WHAT_IF_DAYS = 23, 100


@dataclass(frozen=True, slots=True, kw_only=True)
class PriceView:
    """Money and shares of a price."""

    total_money: float
    batches_money: float
    short_money: float
    waste_money: float
    fill_frac: float
    waste_frac: float
    sold_n: float
    short_n: float
    waste_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DaysView(PriceView):
    """A rule over drawn days: its price with 95 % intervals, and its worst days."""

    days_count: int
    half_width_money: float
    fill_half_width_frac: float
    waste_half_width_frac: float
    worst_fill_frac: float
    worst_waste_frac: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckView:
    """A plan by hand: rules it breaks, its price, and the engine's own."""

    broken: tuple[str, ...]
    price: PriceView
    engine: PriceView


@dataclass(frozen=True, slots=True, kw_only=True)
class ReplayView:
    """Drawn days under the order-up-to rule."""

    days_count: int
    base: DaysView


@dataclass(frozen=True, slots=True, kw_only=True)
class EngineReplayView(ReplayView):
    """Some of the days under the engine beside them."""

    engine: DaysView


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangeCost:
    """What a change costs a day, with its 95 % interval."""

    money: float
    half_width_money: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangeView(ReplayView):
    """The same days with something changed."""

    other: DaysView
    change: ChangeCost


@dataclass(frozen=True, slots=True, kw_only=True)
class Changed:
    """What is tried on the same days: hold lives in minutes by product, fryers off, another filter turn, a
    factor on the forecast.
    """

    hold_min: Mapping[str, float] = field(default_factory=dict)
    off: tuple[str, ...] = ()
    filter_every_count: int = 0
    factor: float | None = None


def hand_plan(bench: Bench, rows: Sequence[Mapping[str, Any]]) -> Plan:
    """A plan written by hand: rows with drop (HH:MM), fryer, product and pieces, or fryer and filter (HH:MM).
    Raises InputError: names the row that cannot be read.
    """
    drops, filters = [], []
    for number, row in enumerate(rows, start=1):
        where = f"row {number}"
        fryer, product = str(row.get("fryer", "")), str(row.get("product", ""))
        one_of(bench.fryers, fryer, "fryer", where)
        f = bench.fryers.index(fryer)
        if row.get("filter"):
            filters.append((f, bench.trade.slot_of(time_of_day_s(str(row["filter"])))))
            continue
        one_of(bench.products, product, "product", where)
        i, pieces = bench.products.index(product), row.get("pieces", 0)
        load = next(
            (n for n, x in enumerate(bench.loads[i]) if x.fryer == fryer and x.pieces_count == pieces), -1
        )
        if load < 0:
            known = ", ".join(str(x.pieces_count) for x in bench.loads[i] if x.fryer == fryer) or "none"
            raise InputError(
                "pieces", repr(pieces), "a load proven for it: {known}", where=where, known=known
            )
        drops.append(
            Drop(
                fryer=f, item=i, load=load, slot=bench.trade.slot_of(time_of_day_s(str(row.get("drop", ""))))
            )
        )
    return Plan(drops=tuple(drops), filters=tuple(filters))


def check_view(bench: Bench, plan: Plan) -> CheckView:
    """A plan checked and priced on drawn days beside the engine's own."""
    demand = draw_days(bench.day, WHAT_IF_DAYS, PLAY_SEED)
    own = replay(bench.day, demand[:20], bench.par, Look.for_plan(bench.day))
    return CheckView(
        broken=tuple(str(p) for p in broken_rules(bench.day, plan)),
        price=_price(price(bench.day, plan, demand)),
        engine=_price(own.price),
    )


def _price(told: Price) -> PriceView:
    return PriceView(
        total_money=round(told.total_money, 2),
        batches_money=round(told.batches_money, 2),
        short_money=round(told.short_money, 2),
        waste_money=round(told.waste_money, 2),
        fill_frac=round(told.fill_frac, 4),
        waste_frac=round(told.waste_frac, 4),
        sold_n=round(told.sold_n, 1),
        short_n=round(told.short_n, 1),
        waste_n=round(told.waste_n, 1),
    )


def _played(bench: Bench, days: int) -> tuple[Counts, Replay]:
    """Drawn days, and what the order-up-to rule makes of them."""
    if not 2 <= days <= 20_000:
        raise InputError("days", days, "2 to 20,000")
    demand = draw_days(bench.day, days, PLAY_SEED)
    return demand, replay_par(bench.day, demand, bench.par)


def replay_view(bench: Bench, days: int = 200, engine_days: int = 0) -> ReplayView:
    """Drawn days under the order-up-to rule, and some under the engine, with 95 % intervals."""
    if not 0 <= engine_days <= 2000:
        raise InputError("engine", engine_days, "0 to 2,000 days")
    demand, played = _played(bench, days)
    if not engine_days:
        return ReplayView(days_count=days, base=_days(played))
    engine = replay(bench.day, demand[:engine_days], bench.par, Look.for_plan(bench.day))
    return EngineReplayView(days_count=days, base=_days(played), engine=_days(engine))


def _days(played: Replay) -> DaysView:
    count = len(played.cost_money)

    def spread(values: NDArray[np.float64]) -> float:
        return float(1.96 * np.std(values, ddof=1) / np.sqrt(count)) if count > 1 else 0.0

    sold, short, waste = (played.parts_money[:, n] for n in (3, 4, 5))
    fill, lost = sold / np.maximum(sold + short, 1), waste / np.maximum(sold + waste, 1)
    return DaysView(
        **asdict(_price(played.price)),
        days_count=count,
        half_width_money=round(spread(played.cost_money), 2),
        fill_half_width_frac=round(spread(fill), 4),
        waste_half_width_frac=round(spread(lost), 4),
        worst_fill_frac=round(float(fill.min()), 4),
        worst_waste_frac=round(float(lost.max()), 4),
    )


def what_if(store: Store, kitchen: Kitchen, bench: Bench, asked: Changed, days: int = 200) -> ChangeView:
    """The same days with something changed; the order-up-to rule is tuned anew for the change.
    Raises InputError: a hold life, a count or a factor that cannot be.
    """
    most = MOST_SLOTS * bench.trade.slot_s / 60.0
    for product, minutes in asked.hold_min.items():
        name = kitchen.product(product).name
        if not 0 < minutes <= most:
            raise InputError(
                "hold life",
                f"{minutes:g} min",
                "above 0, up to {most} min",
                where=name,
                most=f"{most:g}",
            )
    hold_s = {product: 60.0 * minutes for product, minutes in asked.hold_min.items()}
    other = bench_for(
        store,
        kitchen,
        bench.date,
        factor=asked.factor,
        hold_s=hold_s,
        down=(*bench.down, *asked.off),
        serving=bench.serving,
    )
    other = replace(other, day=replace(other.day, orders=bench.day.orders))
    if asked.filter_every_count:
        other = replace(other, day=replace(other.day, filter_every_count=asked.filter_every_count))
    demand, here = _played(bench, days)
    there = replay_par(other.day, demand, other.par)
    change = there.cost_money - here.cost_money
    cost = ChangeCost(
        money=round(float(change.mean()), 2),
        half_width_money=round(float(1.96 * change.std(ddof=1) / np.sqrt(days)), 2),
    )
    return ChangeView(days_count=days, base=_days(here), other=_days(there), change=cost)
