"""The forecast and the morning plan as they are shown: page, terminal, picture."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from frywright.model.findings import Note, Outcome, say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.paper.chart import Spec
from frywright.paper.day_chart import Band, Bar, gantt_spec, shelf_spec
from frywright.plan.advice import Outlook
from frywright.plan.binds import GOOD_FILL_FRAC, GOOD_WASTE_FRAC
from frywright.plan.check import broken_rules
from frywright.rooms.day.board_rows import LastDrop
from frywright.rooms.day.board_view import amount
from frywright.rooms.day.day import Bench
from frywright.rooms.day.limits import unplanned


@dataclass(frozen=True, slots=True, kw_only=True)
class ForecastRow:
    """Pieces of a product: the day with its 80 % band, and by half hour."""

    key: str
    name: str
    total_n: float
    low_n: float
    high_n: float
    mix_n: float
    halves: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ForecastView:
    """A day's forecast; ``halves`` are the times at which the clock's half hours begin, the first with the
    day.
    """

    date: str
    weekday: str
    halves: tuple[str, ...]
    products: tuple[ForecastRow, ...]
    level_cv_frac: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedDrop:
    """A load of the plan: when it goes in and out, where, what, and what is known of its program."""

    drop: str
    lift: str
    drop_h: float
    lift_h: float
    fryer: str
    fryer_name: str
    product: str
    product_name: str
    pieces: int
    amount: str
    program: str
    version: int
    evidence: str

    @property
    def evidence_said(self) -> str:
        """The same for people, who would ask what is unknown."""
        return "not proven yet" if self.evidence == Outcome.UNKNOWN else self.evidence


@dataclass(frozen=True, slots=True, kw_only=True)
class PlannedTurn:
    """A filter turn of the plan."""

    fryer: str
    fryer_name: str
    at: str
    from_h: float
    to_h: float


@dataclass(frozen=True, slots=True, kw_only=True)
class FryerHours:
    """When a fryer is at heat, if it is used at all."""

    key: str
    name: str
    from_: str
    to: str
    used: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanView:
    """The plan: loads in order, filter turns, fryers' hours, shelf with its band, last drops, what it costs,
    what is not proven and which rules it breaks.
    """

    date: str
    drops: tuple[PlannedDrop, ...]
    filters: tuple[PlannedTurn, ...]
    hours: tuple[float, ...]
    fryers: tuple[FryerHours, ...]
    shelf: tuple[Band, ...]
    last_drops: tuple[LastDrop, ...]
    fill_frac: float
    waste_frac: float
    good: bool
    money: float
    money_sd: float
    currency: str
    waste_n: tuple[float, ...]
    notes: tuple[str, ...]
    broken: tuple[str, ...]


def forecast_view(bench: Bench) -> ForecastView:
    """Pieces by half hour and product with the 80 % band, and the day's total with its band."""
    trade, day = bench.trade, bench.day
    halves = trade.half_hours()
    low, high = bench.forecast.total_quantile((0.1, 0.9))
    products = [
        ForecastRow(
            key=bench.products[i],
            name=item.name,
            total_n=round(float(bench.forecast.mean_n[i].sum()), 1),
            low_n=float(low[i]),
            high_n=float(high[i]),
            mix_n=bench.mix_n[i],
            halves=tuple(round(float(day.mean_n[i, a:b].sum()), 1) for a, b in halves),
        )
        for i, item in enumerate(day.items)
    ]
    return ForecastView(
        date=bench.date.isoformat(),
        weekday=bench.date.strftime("%A"),
        halves=tuple(trade.clock_of(t) for t, _ in halves),
        products=tuple(products),
        level_cv_frac=day.level_cv_frac,
    )


def _together(notes: Sequence[Note]) -> list[Note]:
    """Notes that say the same of several products as one that names them all."""
    found: dict[tuple[str, int], list[Note]] = {}
    for n, note in enumerate(notes):
        key = (note.text, -1 if set(note.values) == {"product"} else n)
        found.setdefault(key, []).append(note)
    return [
        replace(same[0], values={"product": tuple(str(note.values["product"]) for note in same)})
        if len(same) > 1
        else same[0]
        for same in found.values()
    ]


def in_order(view: PlanView) -> list[PlannedDrop | PlannedTurn]:
    """Loads and filter turns as they come."""
    rows: list[PlannedDrop | PlannedTurn] = [*view.drops, *view.filters]
    return sorted(rows, key=lambda x: x.drop_h if isinstance(x, PlannedDrop) else x.from_h)


def _drops(bench: Bench, found: Outlook, names: Sequence[str], tr: Translate) -> tuple[PlannedDrop, ...]:
    """Loads of a plan in the order of their drops."""
    trade, drops = bench.trade, []
    for drop in sorted(found.plan.drops, key=lambda d: (d.slot, d.fryer)):
        fact = bench.loads[drop.item][drop.load]
        start = trade.start_s + drop.slot * trade.slot_s
        row = PlannedDrop(
            drop=time_of_day(start),
            lift=time_of_day(start + fact.lift_s),
            drop_h=start / 3600,
            lift_h=(start + fact.cook_s) / 3600,
            fryer=fact.fryer,
            fryer_name=names[drop.fryer],
            product=fact.product,
            product_name=tr(bench.day.items[drop.item].name),
            pieces=fact.pieces_count,
            amount=amount(bench, fact, tr),
            program=fact.program,
            version=fact.version,
            evidence=str(fact.outcome),
        )
        drops.append(row)
    return tuple(drops)


def plan_view(bench: Bench, found: Outlook, kitchen: Kitchen, tr: Translate = str) -> PlanView:
    """The plan as it is shown."""
    trade, day = bench.trade, bench.day
    names = [kitchen.fryer(key).name for key in bench.fryers]
    hours = tuple((trade.start_s + t * trade.slot_s) / 3600 for t in range(day.slots_count))
    notes = dict.fromkeys(say(n.text, n.values, translate=tr) for n in _together(bench.notes))
    cooked = {drop.item for drop in found.plan.drops}
    return PlanView(
        date=bench.date.isoformat(),
        drops=_drops(bench, found, names, tr),
        filters=tuple(
            PlannedTurn(
                fryer=bench.fryers[f],
                fryer_name=names[f],
                at=trade.clock_of(t),
                from_h=hours[t],
                to_h=hours[t] + day.filter_slots_count * trade.slot_s / 3600,
            )
            for f, t in sorted(found.plan.filters, key=lambda x: x[1])
        ),
        hours=hours,
        fryers=tuple(
            FryerHours(
                key=key,
                name=names[f],
                from_=trade.clock_of(day.window(f)[0]),
                to=trade.clock_of(day.window(f)[1]),
                used=day.window(f)[0] < day.window(f)[1],
            )
            for f, key in enumerate(bench.fryers)
        ),
        shelf=tuple(
            Band(name=tr(item.name), low=low.tolist(), mid=mid.tolist(), high=high.tolist())
            for item, low, mid, high in zip(day.items, *found.shelf_n, strict=True)
        ),
        last_drops=tuple(
            LastDrop(name=tr(item.name), at=trade.clock_of(t) if t >= 0 and i in cooked else "")
            for i, (item, t) in enumerate(zip(day.items, found.last_drop, strict=True))
        ),
        fill_frac=found.fill_frac,
        waste_frac=found.waste_frac,
        good=found.fill_frac >= GOOD_FILL_FRAC and found.waste_frac <= GOOD_WASTE_FRAC,
        money=round(found.rest_money, 2),
        money_sd=round(found.sd_money, 2),
        currency=trade.currency,
        waste_n=tuple(round(float(w), 1) for w in found.waste_n),
        notes=(*notes, *unplanned(bench, kitchen, found, tr)),
        broken=tuple(str(p) for p in broken_rules(day, found.plan)),
    )


def gantt(view: PlanView, tr: Translate = str) -> Spec:
    """The plan as a picture: a row for each product of a fryer, over all of which a filter turn goes."""
    words = {
        "clock": tr("hour of the day"),
        "filter": tr("filter turn"),
        "about": tr("Loads and filter turns by fryer over the day"),
    }
    pairs = dict.fromkeys((d.fryer_name, d.product_name) for d in view.drops)
    rows = {f.name: [product for fryer, product in pairs if fryer == f.name] for f in view.fryers}
    loads = [
        Bar(
            row=_row(d.fryer_name, d.product_name),
            from_h=d.drop_h,
            to_h=d.lift_h,
            name=d.product_name,
            text=str(d.pieces),
        )
        for d in view.drops
    ]
    turns = [
        Bar(row=_row(f.fryer_name, product), from_h=f.from_h, to_h=f.to_h, name=words["filter"], text="")
        for f in view.filters
        for product in rows[f.fryer_name] or [""]
    ]
    names = [_row(fryer, product) for fryer, made in rows.items() for product in made or [""]]
    return gantt_spec(loads, turns, names, words)


def _row(fryer: str, product: str) -> str:
    return f"{fryer} · {product}" if product else fryer


def shelf_curves(view: PlanView, tr: Translate = str) -> Spec:
    """The shelf as a picture."""
    words = {
        "clock": tr("hour of the day"),
        "pieces": tr("pieces"),
        "about_shelf": tr("Pieces on the shelf by product over the day, middle and 80 % band"),
    }
    return shelf_spec(view.hours, view.shelf, words)
