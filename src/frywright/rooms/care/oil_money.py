"""Oil in money: what a change of habit buys a vat, discard or keep or move, the bill and its causes."""

from __future__ import annotations

import datetime as dt
from collections import Counter, defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field
from itertools import takewhile
from weakref import WeakKeyDictionary

from frywright.ledger.facts.oil import OilDone
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import Trade
from frywright.model.units import LB, show
from frywright.oil.ageing import heat_factor
from frywright.oil.cost import Rates, bill
from frywright.oil.outlook import HORIZON_DAYS
from frywright.oil.worth import (
    BEST_POWDER_PCT,
    FilterEffect,
    change_money,
    day_money,
    filter_effect,
    left_money,
)
from frywright.rooms.care.oil_loads import oil_of_load, raw_kg
from frywright.rooms.care.oil_moves import rotation_notes
from frywright.rooms.care.oil_state import FRESH_PCT, VatState
from frywright.rooms.clock import now
from frywright.rooms.standing import oil_limit_here, taps_since

SPAN_DAYS, RISE_C = 28, 5.0
MORE_KG = {"us": 5 * LB, "metric": 2.0}
"""A top-up more that is asked about, round in the units of the kitchen (own choice)."""
EARLY_PCT = 4.0
"""Oil thrown away this far below its limit, as read last, is early (project's own rule: twice a meter's
error).
"""
HIGH_N, LOW_N = 1.3, 0.7
"""Top-up over what the loads should take up, above and below which a cause is looked for (project's own rule;
uptake itself is an estimate).
"""
SOON_DAYS = 2.0


def rates_of(trade: Trade) -> Rates:
    """Prices and pay of a kitchen's day."""
    return Rates(
        price_kg_money=trade.oil_kg_money,
        change_h=trade.oil_change_s / 3600.0,
        hour_money=trade.hour_money,
        media_money=trade.media_money,
        disposal_kg_money=trade.disposal_kg_money,
        rebate_kg_money=trade.rebate_kg_money,
    )


# ---------------------------------------------------------------- what a change buys


@dataclass(frozen=True, slots=True, kw_only=True)
class HabitRow:
    """A habit: days to the limit, money a day, and what it saves against today's."""

    what: str
    days_n: float
    days: str
    money: float
    saves_money: float


@dataclass(frozen=True, slots=True, kw_only=True)
class MoveInto:
    """A vat that this oil may be moved into instead of fresh, and what that saves."""

    into: str
    name: str
    saves_money: float
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangesView:
    """What habits would change for a vat, and discard, keep or move in money; None where it is not known."""

    vat: str
    changes: tuple[HabitRow, ...]
    currency: str
    change_money: float
    left_money: float | None
    filter_told: bool
    filter_points: float | None
    moves: tuple[MoveInto, ...]


def changes_view(
    kitchen: Kitchen, states: Mapping[str, VatState], vat: str, tr: Translate = str
) -> ChangesView:
    """Days to the limit and money a day for habits that could change; and discard, keep or move in money.

    What one more filter turn does is learned from this vat's own log; until it stands out there, only the
    most that powder can do is told.
    """
    state, trade, system = states[kitchen.fryer(vat).key], usual_trade(kitchen), kitchen.site.units
    level, growth = max(0.0, state.belief.level[0]), state.belief.life_growth
    rates, mass, share = rates_of(trade), state.fryer.oil_mass_kg, state.share_frac
    effect = filter_learned(state)
    extra = MORE_KG[system]
    cooler = heat_factor(175.0 - RISE_C, 175.0)
    turns = (
        say(
            "one more filter turn a day, as learned from {count} gains of this vat",
            {"count": float(effect.gains_count)},
            translate=tr,
        )
        if effect.told
        else tr("one more powder treatment a day, at its best; this log does not show yet what a turn does")
    )
    gained = effect.turn_n if effect.told else BEST_POWDER_PCT
    rows = [
        (tr("as now"), share, growth, 0.0),
        (
            say("{mass_kg} more top-up a day", {"mass_kg": extra}, system, tr),
            share + extra / mass,
            growth,
            0.0,
        ),
        (
            say("oil {cooler_k} cooler all day; cooks need a new proof", {"cooler_k": RISE_C}, system, tr),
            share,
            growth * cooler,
            0.0,
        ),
        (turns, share, max(0.0, growth - gained), trade.filter_money),
    ]
    usual = day_money(mass, growth, share, FRESH_PCT, state.limit_pct, rates)
    told = []
    for what, part, gain, cost in rows:
        part = min(max(part, 0.0), 0.95)
        days = _days(state, part, gain / growth if growth > 0 else 1.0)
        money = day_money(mass, gain, part, FRESH_PCT, state.limit_pct, rates) + cost
        row = HabitRow(
            what=what,
            days_n=round(days, 1),
            days=_in_words(days, tr),
            money=round(money, 2),
            saves_money=round(usual - money, 2),
        )
        told.append(row)
    left = left_money(mass, level, growth, share, FRESH_PCT, state.limit_pct, rates)
    return ChangesView(
        vat=vat,
        changes=tuple(told),
        currency=trade.currency,
        change_money=round(change_money(mass, rates), 2),
        left_money=round(left, 2) if state.readings_count else None,
        filter_told=effect.told,
        filter_points=round(effect.turn_n, 2) if effect.told else None,
        moves=_moves(kitchen, states, state, tr),
    )


def _days(state: VatState, share: float, heat: float) -> float:
    return state.outlook(share=share, heat=heat).days_n[1]


def _in_words(days: float, tr: Translate) -> str:
    """Days to the limit; what lies beyond those simulated is no figure."""
    if days > HORIZON_DAYS:
        return tr("more than {n} days").format(n=HORIZON_DAYS)
    return tr("{n} days").format(n=f"{days:.1f}".removesuffix(".0"))


_LEARNED: WeakKeyDictionary[VatState, FilterEffect] = WeakKeyDictionary()


def filter_learned(state: VatState) -> FilterEffect:
    """Growth a day between readings of this vat against the filter turns of those days; learned once."""
    if state not in _LEARNED:
        _LEARNED[state] = _learned(state)
    return _LEARNED[state]


def _learned(state: VatState) -> FilterEffect:
    since: dict[dt.date, list[OilDone]] = defaultdict(list)
    for event in state.events:
        since[event.date].append(event)
    gains, counts, last, turns, level = [], [], None, 0.0, 0.0
    for day, told in sorted(since.items()):
        turns += sum(e.what == "filter" for e in told)
        readings = [e.reading_pct for e in told if e.reading_pct is not None]
        if readings and last is not None:
            days = (day - last).days
            if 0 < days <= 3:
                gains.append((readings[-1] - level) / days)
                counts.append(turns / days)
        if readings:
            level, last, turns = readings[-1], day, 0.0
        added = sum(e.mass_kg for e in told if e.mass_kg is not None) / state.fryer.oil_mass_kg
        level += (FRESH_PCT - level) * min(added, 1.0)
        if any(e.what in ("discard", "fill") for e in told):
            level, last, turns = FRESH_PCT, day, 0.0
    return filter_effect(gains, counts)


def _moves(
    kitchen: Kitchen, states: Mapping[str, VatState], state: VatState, tr: Translate
) -> tuple[MoveInto, ...]:
    """Vats whose oil goes within days and into which this oil may be moved instead of fresh; what that
    saves.
    """
    rates = rates_of(usual_trade(kitchen))
    found: list[MoveInto] = []
    if not state.readings_count:
        return ()
    for other in kitchen.fryers:
        if other.key == state.fryer.key:
            continue
        target = states[other.key]
        if (
            not target.readings_count
            or target.crossing.days_n[1] > SOON_DAYS
            or rotation_notes(kitchen, state, target)
        ):
            continue
        growth = target.belief.life_growth
        saved = left_money(
            other.oil_mass_kg,
            state.belief.level[0],
            growth,
            target.share_frac,
            FRESH_PCT,
            state.limit_pct,
            rates,
        )
        text = say(
            "Moved into {fryer} in place of fresh oil it is worth {money} more there; two people, cool"
            " enough, never fresh below old.",
            {"fryer": other.name, "money": round(saved, 2)},
            translate=tr,
        )
        found.append(MoveInto(into=other.key, name=other.name, saves_money=round(saved, 2), text=text))
    return tuple(found)


# ---------------------------------------------------------------- the bill and its causes


@dataclass(frozen=True, slots=True, kw_only=True)
class BillView:
    """The oil bill by day and raw product, gaps in the log, and likely causes; masses in the kitchen's units
    and in kilograms a day.
    """

    days_count: int
    log_gaps: tuple[str, ...]
    uptake_money: float
    discard_money: float
    labour_money: float
    media_money: float
    disposal_money: float
    rebate_money: float
    day_money: float
    per_raw_kg_money: float
    per_raw_lb_money: float
    top_up_kg_day: float
    per_hundred_n: float
    currency: str
    carried_off_kg_day: float
    fat_in_kg_day: float
    carried_off: str
    fat_in: str
    causes: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SiteRow:
    """A store whose oil cannot be set beside the others', and why; empty where it can."""

    site: str
    place: str
    unknown: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SiteBill(SiteRow):
    """A store's oil on what survives its size."""

    per_hundred_n: float
    per_raw_kg_money: float
    day_money: float
    currency: str
    log_gaps: tuple[str, ...]
    causes: tuple[str, ...]


@dataclass(slots=True)
class Board:
    """What the board dropped, all in kg: raw product by fryer, oil carried off, chicken fat that came; days
    by fryer.
    """

    raw_kg: dict[str, float] = field(default_factory=lambda: defaultdict(float))
    uptake_kg: float = 0.0
    rendered_kg: float = 0.0
    days: set[tuple[str, dt.date]] = field(default_factory=set)


def _board(store: Store, kitchen: Kitchen, since: dt.date) -> Board:
    """Product dropped since a day, and the oil it carried off and the fat it gave by the engine."""
    found = Board()
    loads: Counter[tuple[str, str, int]] = Counter()
    for item in taps_since(store, since):
        tap = item.fact
        if tap.what == "drop":
            loads[tap.fryer, tap.product, tap.pieces_count] += 1
            found.days.add((tap.fryer, tap.date))
    for (fryer, key, pieces), count in loads.items():
        mass = count * raw_kg(kitchen, key, pieces)
        uptake, rendered = oil_of_load(kitchen, fryer, key)
        found.raw_kg[fryer] += mass
        found.uptake_kg += mass * uptake
        found.rendered_kg += mass * rendered
    return found


def _events_since(store: Store, since: dt.date) -> list[OilDone]:
    """What was done to the oil from a day on, oldest first; nothing is told before its day begins."""
    begins = dt.datetime.combine(since, dt.time(), dt.UTC) - dt.timedelta(days=1)
    near = takewhile(lambda e: e.recorded_at >= begins, store.facts(OilDone, newest_first=True))
    return [e.fact for e in near if e.fact.date >= since][::-1]


def cost_view(
    store: Store,
    kitchen: Kitchen,
    raw_kg_day: float = 0.0,
    today: dt.date | None = None,
    tr: Translate = str,
    rates: Rates | None = None,
) -> BillView:
    """The oil bill of the last four weeks by day and raw kilogram, with likely causes; gaps in the log come
    before anything else. Raises InputError: no raw product, neither told nor on the board.

    Parameters
    ----------
    raw_kg_day : raw product a day; 0 takes what the board dropped
    rates : in place of the kitchen file's
    """
    day = today or business_time(usual_trade(kitchen), now())[0]
    since = day - dt.timedelta(days=SPAN_DAYS - 1)
    events = _events_since(store, since)
    if not events:
        raise InputError(
            "oil log",
            "empty",
            "kept for four weeks first: top-ups, readings, changes",
            where=kitchen.site.name,
        )
    span = max(1, (day - min(e.date for e in events)).days + 1)
    board = _board(store, kitchen, since)
    daily = raw_kg_day or sum(board.raw_kg.values()) / span
    if not daily > 0:
        raise InputError(
            "raw product",
            "missing",
            "given as raw product a day, or dropped on the board",
            where=kitchen.site.name,
        )
    top_up = sum(e.mass_kg for e in events if e.mass_kg is not None) / span
    thrown = [kitchen.fryer(e.vat).oil_mass_kg for e in events if e.what == "discard"]
    price = rates or rates_of(usual_trade(kitchen))
    told = bill(daily, tuple(thrown), top_up, float(span), price)
    return BillView(
        days_count=span,
        log_gaps=_gaps(kitchen, events, board.days),
        uptake_money=round(told.uptake_money, 2),
        discard_money=round(told.discard_money, 2),
        labour_money=round(told.labour_money, 2),
        media_money=round(told.media_money, 2),
        disposal_money=round(told.disposal_money, 2),
        rebate_money=round(told.rebate_money, 2),
        day_money=round(told.day_money, 2),
        per_raw_kg_money=round(told.per_kg_money, 4),
        per_raw_lb_money=round(told.per_kg_money * LB, 4),
        top_up_kg_day=round(top_up, 3),
        per_hundred_n=round(100.0 * (top_up + sum(thrown) / span) / daily, 2),
        currency=usual_trade(kitchen).currency,
        carried_off_kg_day=round(board.uptake_kg / span, 3),
        fat_in_kg_day=round(board.rendered_kg / span, 3),
        carried_off=show(board.uptake_kg / span, "kg", kitchen.site.units) if board.uptake_kg else "",
        fat_in=show(board.rendered_kg / span, "kg", kitchen.site.units),
        causes=_causes(store, kitchen, events, top_up, (board.uptake_kg - board.rendered_kg) / span, tr),
    )


def _gaps(kitchen: Kitchen, events: list[OilDone], days: set[tuple[str, dt.date]]) -> tuple[str, ...]:
    """Vats without entries, and vats that dropped loads on days without any entry."""
    logged = {(e.vat, e.date) for e in events}
    found = []
    for fryer in kitchen.fryers:
        used = {d for f, d in days if f == fryer.key}
        silent = sorted(d for d in used if (fryer.key, d) not in logged)
        if not any(v == fryer.key for v, _ in logged):
            found.append(fryer.name)
        elif silent:
            found.append(f"{fryer.name}: {len(silent)} ({silent[0]})")
    return tuple(found)


def _causes(
    store: Store, kitchen: Kitchen, events: list[OilDone], top_up: float, reckoned: float, tr: Translate
) -> tuple[str, ...]:
    """Likely causes, most certain first; none where nothing stands out."""
    found, limit = [], oil_limit_here(store, kitchen)[0]
    last: dict[str, float] = {}
    for event in events:
        if event.reading_pct is not None:
            last[event.vat] = event.reading_pct
        elif event.what == "discard" and event.vat in last:
            level = last.pop(event.vat)
            if level < limit - EARLY_PCT:
                found.append(
                    say(
                        "{fryer} was thrown away at about {level} %, the limit is {limit} %: early.",
                        {"fryer": kitchen.fryer(event.vat).name, "level": level, "limit": limit},
                        translate=tr,
                    )
                )
    if reckoned > 0:
        ratio = top_up / reckoned
        values = {"ratio": round(ratio, 2)}
        if ratio > HIGH_N:
            found.append(
                say(
                    "Top-up is {ratio} times what the loads should take up: short draining, oil too cool or"
                    " loads too large, crumbs, leaks, over-filling.",
                    values,
                    translate=tr,
                )
            )
        elif ratio < LOW_N:
            found.append(
                say(
                    "Top-up is {ratio} times what the loads should take up: not all of it is entered, or the"
                    " level falls. Look at the line.",
                    values,
                    translate=tr,
                )
            )
    return tuple(found)


def site_rows(
    shops: list[tuple[str, Store, Kitchen]], today: dt.date | None = None, tr: Translate = str
) -> list[SiteRow | SiteBill]:
    """Several stores side by side on what survives their size: oil by hundred of raw product, money by raw
    kilogram, gaps first, then likely causes.
    """
    bills, others = [], []
    for name, store, kitchen in shops:
        place = kitchen.site.name
        try:
            view = cost_view(store, kitchen, today=today, tr=tr)
        except InputError as error:
            others.append(SiteRow(site=name, place=place, unknown=error.say(tr, kitchen.site.units)))
            continue
        bill = SiteBill(
            site=name,
            place=place,
            unknown="",
            per_hundred_n=view.per_hundred_n,
            per_raw_kg_money=view.per_raw_kg_money,
            day_money=view.day_money,
            currency=view.currency,
            log_gaps=view.log_gaps,
            causes=view.causes,
        )
        bills.append(bill)
    return [*sorted(bills, key=lambda row: -row.per_hundred_n), *others]
