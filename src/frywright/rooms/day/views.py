"""What a day's answers look like as plain values, for pages, JSON and paper."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any

import numpy as np

from frywright.catalog import load as catalog
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.trade import Sell, time_of_day, time_of_day_s
from frywright.paper.day_chart import gantt_spec, shelf_spec
from frywright.plan.advice import Outlook, promise
from frywright.plan.binds import GOOD_FILL_FRAC, GOOD_WASTE_FRAC
from frywright.plan.check import Price, broken_rules, price
from frywright.plan.model import Drop, Plan
from frywright.plan.pull import Stock, pull, thaw_s
from frywright.plan.replay import Look, Replay, draw_days, replay, replay_par
from frywright.rooms.day.board import Board
from frywright.rooms.day.board_view import amount
from frywright.rooms.day.day import Bench, bench_for, forecaster_of, mix_factor
from frywright.rooms.day.limits import unplanned
from frywright.rooms.day.sales import history_of

Translate = Callable[[str], str]
THIN_CASE_M = 0.005
"""A case thinner than this is no block: loose pieces thaw as fast as the room allows (estimate)."""
HALF_HOUR_S = 1800.0
PLAY_SEED, WHAT_IF_DAYS = 23, 100


def sales_view(store: Store, kitchen: Kitchen) -> dict[str, Any]:
    """What the sales read in hold: days, outages, catering, and items the menu does not know."""
    history = history_of(store, kitchen)
    return {
        "days_count": len(history.dates),
        "from": history.dates[0].isoformat(),
        "to": history.dates[-1].isoformat(),
        "unmapped": [{"item": item, "sold_n": count} for item, count in history.unmapped],
        "voided_n": history.voided_n,
        "outages": [
            {"date": d.isoformat(), "from": time_of_day(a), "to": time_of_day(b)}
            for d, a, b in history.outages
        ],
        "catering": [
            {"date": d.isoformat(), "product": p, "cut": c, "pieces_n": n}
            for d, p, c, n in history.catering[-30:]
        ],
    }


def forecast_view(bench: Bench) -> dict[str, Any]:
    """Pieces by half hour and product with the 80 % band, and the day's total with its band."""
    trade, day = bench.trade, bench.day
    width = max(1, round(HALF_HOUR_S / trade.slot_s))
    low, high = bench.forecast.total_quantile((0.1, 0.9))
    products = []
    for i, item in enumerate(day.items):
        products.append(
            {
                "key": bench.products[i],
                "name": item.name,
                "total_n": round(float(bench.forecast.mean_n[i].sum()), 1),
                "low_n": float(low[i]),
                "high_n": float(high[i]),
                "mix_n": bench.mix_n[i],
                "halves": [
                    round(float(day.mean_n[i, t : t + width].sum()), 1)
                    for t in range(0, day.slots_count, width)
                ],
            }
        )
    return {
        "date": bench.date.isoformat(),
        "weekday": bench.date.strftime("%A"),
        "halves": [trade.clock_of(t) for t in range(0, day.slots_count, width)],
        "products": products,
        "level_cv_frac": day.level_cv_frac,
    }


def _drop_rows(bench: Bench, found: Outlook, names: Sequence[str], tr: Translate) -> list[dict[str, Any]]:
    """Loads of a plan in the order of their drops."""
    trade, drops = bench.trade, []
    for drop in sorted(found.plan.drops, key=lambda d: (d.slot, d.fryer)):
        fact = bench.loads[drop.item][drop.load]
        start = trade.start_s + drop.slot * trade.slot_s
        drops.append(
            {
                "drop": time_of_day(start),
                "lift": time_of_day(start + fact.lift_s),
                "drop_h": start / 3600,
                "lift_h": (start + fact.cook_s) / 3600,
                "fryer": fact.fryer,
                "fryer_name": names[drop.fryer],
                "product": fact.product,
                "product_name": tr(bench.day.items[drop.item].name),
                "pieces": fact.pieces_count,
                "amount": amount(bench, fact, tr),
                "program": fact.program,
                "version": fact.version,
                "evidence": str(fact.outcome),
            }
        )
    return drops


def plan_view(bench: Bench, found: Outlook, kitchen: Kitchen, tr: Translate = str) -> dict[str, Any]:
    """The plan: loads in order, filter turns, fryers' hours, shelf with its band, last drops, what it costs,
    what is not proven.
    """
    trade, day = bench.trade, bench.day
    names = [kitchen.fryer(key).name for key in bench.fryers]
    hours = [(trade.start_s + t * trade.slot_s) / 3600 for t in range(day.slots_count)]
    filters = [
        {
            "fryer": bench.fryers[f],
            "fryer_name": names[f],
            "at": trade.clock_of(t),
            "from_h": hours[t],
            "to_h": hours[t] + day.filter_slots_count * trade.slot_s / 3600,
        }
        for f, t in sorted(found.plan.filters, key=lambda x: x[1])
    ]
    return {
        "date": bench.date.isoformat(),
        "drops": _drop_rows(bench, found, names, tr),
        "filters": filters,
        "hours": hours,
        "fryers": [
            {
                "key": key,
                "name": names[f],
                "from": trade.clock_of(day.window(f)[0]),
                "to": trade.clock_of(day.window(f)[1]),
                "used": day.window(f)[0] < day.window(f)[1],
            }
            for f, key in enumerate(bench.fryers)
        ],
        "shelf": [
            {
                "name": tr(item.name),
                "low": found.shelf_n[0, i].tolist(),
                "mid": found.shelf_n[1, i].tolist(),
                "high": found.shelf_n[2, i].tolist(),
            }
            for i, item in enumerate(day.items)
        ],
        "last_drops": [
            {"name": tr(item.name), "at": trade.clock_of(t) if t >= 0 else ""}
            for item, t in zip(day.items, found.last_drop, strict=True)
        ],
        "fill_frac": found.fill_frac,
        "waste_frac": found.waste_frac,
        "good": found.fill_frac >= GOOD_FILL_FRAC and found.waste_frac <= GOOD_WASTE_FRAC,
        "money": round(found.rest_money, 2),
        "money_sd": round(found.sd_money, 2),
        "currency": trade.currency,
        "waste_n": [round(float(w), 1) for w in found.waste_n],
        "notes": list(dict.fromkeys(say(n.text, n.values, translate=tr) for n in bench.notes))
        + unplanned(bench, kitchen, found, tr),
        "broken": [str(p) for p in broken_rules(day, found.plan)],
    }


def gantt(view: dict[str, Any], tr: Translate = str) -> dict[str, Any]:
    """The plan as a picture."""
    return gantt_spec(
        view,
        {
            "clock": tr("hour of the day"),
            "filter": tr("filter turn"),
            "about": tr("Loads and filter turns by fryer over the day"),
        },
    )


def shelf_curves(view: dict[str, Any], tr: Translate = str) -> dict[str, Any]:
    """The shelf as a picture."""
    return shelf_spec(
        view,
        {
            "clock": tr("hour of the day"),
            "pieces": tr("pieces"),
            "about_shelf": tr("Pieces on the shelf by product over the day, middle and 80 % band"),
        },
    )


def hand_plan(bench: Bench, rows: Sequence[Mapping[str, Any]]) -> Plan:
    """A plan written by hand: rows with drop (HH:MM), fryer, product and pieces, or fryer and filter (HH:MM).

    Raises
    ------
    InputError
        Names the row that cannot be read.
    """
    drops, filters = [], []
    for number, row in enumerate(rows, start=1):
        where = f"row {number}"
        fryer, product = str(row.get("fryer", "")), str(row.get("product", ""))
        if fryer not in bench.fryers:
            raise InputError(
                "fryer",
                repr(fryer),
                "one of: {known}",
                where=where,
                values={"known": ", ".join(bench.fryers)},
            )
        f = bench.fryers.index(fryer)
        if row.get("filter"):
            filters.append((f, bench.trade.slot_of(time_of_day_s(str(row["filter"])))))
            continue
        if product not in bench.products:
            raise InputError(
                "product",
                repr(product),
                "one of: {known}",
                where=where,
                values={"known": ", ".join(bench.products)},
            )
        i, pieces = bench.products.index(product), row.get("pieces", 0)
        load = next(
            (n for n, x in enumerate(bench.loads[i]) if x.fryer == fryer and x.pieces_count == pieces), -1
        )
        if load < 0:
            known = ", ".join(str(x.pieces_count) for x in bench.loads[i] if x.fryer == fryer) or "none"
            raise InputError(
                "pieces", repr(pieces), "a load proven for it: {known}", where=where, values={"known": known}
            )
        drops.append(
            Drop(
                fryer=f, item=i, load=load, slot=bench.trade.slot_of(time_of_day_s(str(row.get("drop", ""))))
            )
        )
    return Plan(drops=tuple(drops), filters=tuple(filters))


def check_view(bench: Bench, plan: Plan) -> dict[str, Any]:
    """A plan checked and priced on drawn days beside the engine's own."""
    demand = draw_days(bench.day, WHAT_IF_DAYS, PLAY_SEED)
    own = replay(bench.day, demand[:20], bench.par, Look.for_plan(len(bench.fryers)))
    return {
        "broken": [str(p) for p in broken_rules(bench.day, plan)],
        "price": price_view(price(bench.day, plan, demand)),
        "engine": price_view(own.price),
    }


def price_view(told: Price) -> dict[str, Any]:
    """Money and shares of a price."""
    return {
        "total_money": round(told.total_money, 2),
        "batches_money": round(told.batches_money, 2),
        "short_money": round(told.short_money, 2),
        "waste_money": round(told.waste_money, 2),
        "fill_frac": round(told.fill_frac, 4),
        "waste_frac": round(told.waste_frac, 4),
        "sold_n": round(told.sold_n, 1),
        "short_n": round(told.short_n, 1),
        "waste_n": round(told.waste_n, 1),
    }


def replay_view(
    bench: Bench, days: int = 200, other: Bench | None = None, engine_days: int = 0
) -> dict[str, Any]:
    """Drawn days under the order-up-to rule (and some under the engine), with 95 % intervals; another bench
    on the same days beside it.
    """
    if not 2 <= days <= 20_000 or not 0 <= engine_days <= 2000:
        raise InputError("days", days, "2 to 20,000 (up to 2,000 with the engine)")
    demand = draw_days(bench.day, days, PLAY_SEED)
    out = {"days_count": days, "base": _told(replay_par(bench.day, demand, bench.par))}
    look = Look.for_plan(len(bench.fryers))
    if engine_days:
        out["engine"] = _told(replay(bench.day, demand[:engine_days], bench.par, look))
    if other is not None:
        there, here = replay_par(other.day, demand, other.par), replay_par(bench.day, demand, bench.par)
        change = there.cost_money - here.cost_money
        out["other"] = _told(there)
        out["change"] = {
            "money": round(float(change.mean()), 2),
            "half_width_money": round(float(1.96 * change.std(ddof=1) / np.sqrt(days)), 2),
        }
    return out


def _told(played: Replay) -> dict[str, Any]:
    count = len(played.cost_money)

    def spread(values: Any) -> float:
        return float(1.96 * np.std(values, ddof=1) / np.sqrt(count)) if count > 1 else 0.0

    sold, short, waste = (played.parts_money[:, n] for n in (3, 4, 5))
    fill, lost = sold / np.maximum(sold + short, 1), waste / np.maximum(sold + waste, 1)
    return {
        **price_view(played.price),
        "days_count": count,
        "half_width_money": round(spread(played.cost_money), 2),
        "fill_half_width_frac": round(spread(fill), 4),
        "waste_half_width_frac": round(spread(lost), 4),
        "worst_fill_frac": round(float(fill.min()), 4),
        "worst_waste_frac": round(float(lost.max()), 4),
    }


def what_if(
    store: Store, kitchen: Kitchen, bench: Bench, asked: Mapping[str, Any], days: int = 200
) -> dict[str, Any]:
    """The same days with something changed: hold lives (product: minutes), fryers off, another filter turn, a
    factor on the forecast.

    The order-up-to rule is tuned anew for the change.
    """
    hold = {str(k): 60.0 * float(v) for k, v in dict(asked.get("hold_min", {})).items()}
    down = tuple(asked.get("off", ()))
    for product in hold:
        kitchen.product(product)
    other = bench_for(store, kitchen, bench.date, factor=asked.get("factor"), hold_s=hold, down=down)
    if asked.get("filter_every_count"):
        other = replace(other, day=replace(other.day, filter_every_count=int(asked["filter_every_count"])))
    return replay_view(bench, days, other)


def promise_view(board: Board, now_s: float, product: str, at_s: float, pieces: int) -> dict[str, Any]:
    """Can an order be promised? Chance, largest order, start, fryers, and what the other guests lose."""
    bench = board.bench
    if product not in bench.products:
        raise InputError(
            "product", repr(product), "one of: {known}", values={"known": ", ".join(bench.products)}
        )
    state = board.state(now_s)
    state = replace(state, now_n=max(state.now_n, 0.0))
    found = promise(
        bench.day, state, bench.par, (bench.products.index(product), bench.trade.slot_of(at_s), pieces)
    )
    return {
        "feasible": found.feasible,
        "chance_frac": found.chance_frac,
        "largest_n": found.largest_n,
        "others_short_n": round(found.others_short_n, 1),
        "start": bench.trade.clock_of(found.first_drop) if found.first_drop >= 0 else "",
        "fryers": [bench.fryers[f] for f in found.fryers],
        "at": time_of_day(at_s),
        "pieces": pieces,
        "product": product,
    }


def _least_thaw_s(kitchen: Kitchen, sell: Sell) -> float:
    """Shortest thaw of a product's case in the cold room; 0 where it is not frozen or too thin to matter."""
    if sell.thaw_s <= 0 or sell.case_thickness_m < THIN_CASE_M:
        return 0.0
    first = kitchen.cut_set(kitchen.product(sell.product).cut_set).parts[0]
    water = catalog.compositions()[kitchen.cut(first.cut).composition].water_frac
    return thaw_s(sell.case_thickness_m, water)


def _called(kitchen: Kitchen, sell: Sell, tr: Translate) -> dict[str, str]:
    """A product as the sheet names it, and what it is counted in."""
    product = kitchen.product(sell.product)
    unit = kitchen.cut_set(product.cut_set).unit
    named = tr("heads" if unit == "head" else "pieces")
    return {"product": sell.product, "name": tr(product.name), "unit": named}


def pull_view(
    store: Store,
    kitchen: Kitchen,
    use: dt.date,
    stock: Sequence[tuple[str, str, float, dt.date]],
    tr: Translate = str,
) -> dict[str, Any]:
    """The pull and marinate sheet for a day of use.

    Parameters
    ----------
    stock : product, what (thawed, marinated), units and the last day they may be used
    """
    forecaster, history = forecaster_of(store, kitchen, use)
    forecast, rows = forecaster.forecast(use), []
    for n, sell in enumerate(kitchen.sells):
        per_unit = kitchen.pieces_per_unit(sell.product)
        factor, worst, balance = mix_factor(kitchen, history, sell.product)
        mean = float(forecast.mean_n[n].sum()) / per_unit
        spread = float(forecast.spread_n[n] / per_unit + forecast.level_cv_frac[n] ** 2 * mean)
        mine = [
            Stock(units_n=units, in_date_days_count=(last - use).days, what=what)
            for key, what, units, last in stock
            if key == sell.product
        ]
        found = pull(
            mean,
            spread,
            (sell.margin_money * per_unit, sell.cost_money * per_unit),
            mine,
            sell.case_count,
            factor,
        )
        least = _least_thaw_s(kitchen, sell)
        row = {
            **_called(kitchen, sell, tr),
            "mean_n": round(found.mean_n, 1),
            "needed_n": round(found.needed_n, 1),
            "on_hand_n": found.on_hand_n,
            "expired_n": found.expired_n,
            "cases": found.cases_count,
            "case_count": sell.case_count,
            "pull_n": found.units_n,
            "short_frac": round(found.short_frac, 3),
            "over_frac": round(found.over_frac, 3),
            "over_n": round(found.expected_over_n, 1),
            "worst_cut": worst,
            "thaw_h": sell.thaw_s / 3600,
            "thaw_least_h": round(least / 3600, 1),
            "balance": [
                {"cut": kitchen.cut(c).title, "needed_n": round(a, 1), "given_n": round(b, 1)}
                for c, a, b in balance
            ],
            "use_by": (use + dt.timedelta(days=max(0, sell.keep_days_count - 2))).isoformat(),
            "warning": "",
        }
        if least > sell.thaw_s > 0:
            row["warning"] = say(
                "A block this thick needs at least {least_h} h to thaw in the cold room; {told_h} h are"
                " planned. Frozen centres boil over and undercook: pull earlier or open the cases.",
                {"least_h": str(row["thaw_least_h"]), "told_h": f"{sell.thaw_s / 3600:g}"},
                translate=tr,
            )
        rows.append(row)
    return {
        "use": use.isoformat(),
        "pull_on": (use - dt.timedelta(days=2)).isoformat(),
        "rows": rows,
        "caution": tr(
            "Thaw at 5 °C (41 °F) or below, on the lowest shelf, covered and dated; never on the bench."
        ),
    }


def close_view(board: Board, now_s: float, tr: Translate = str) -> dict[str, Any]:
    """At close: what was thrown away and why, by product; the causes add up."""
    state = board.state(now_s)
    wastes, whole = board.waste(state)
    by_product = []
    for i, item in enumerate(board.bench.day.items):
        parts = {cause: round(sum(w.parts_n[cause] for w in wastes if w.item == i), 1) for cause in whole}
        by_product.append(
            {
                "name": tr(item.name),
                "thrown_n": round(sum(w.units_n for w in wastes if w.item == i), 1),
                "causes": parts,
            }
        )
    return {
        "date": board.bench.date.isoformat(),
        "causes": [{"cause": tr(c), "pieces_n": round(n, 1)} for c, n in whole.items()],
        "products": by_product,
        "thrown_n": round(sum(t.units_n for t in state.thrown), 1),
        "sold_n": [round(float(np.nansum(state.sold_n[i])), 1) for i in range(len(board.bench.products))],
        "filters_count": len(state.filters),
        "drops_count": len(state.drops),
    }
