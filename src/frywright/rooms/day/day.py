"""The day of a kitchen: sales in, forecast, loads with their evidence, and the plan."""

from __future__ import annotations

import datetime as dt
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from math import ceil

import numpy as np

from frywright.ledger.facts.day import DayNoted
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import trade_of
from frywright.model.errors import InputError, Phrase
from frywright.model.findings import Note
from frywright.model.kitchen import Kitchen
from frywright.model.trade import Trade
from frywright.plan.advice import Outlook, outlook
from frywright.plan.binds import JUDGE_SEED
from frywright.plan.forecast import Forecast, Forecaster, learned
from frywright.plan.model import Day, Item
from frywright.plan.pull import heads_for
from frywright.plan.replay import Look, Par, Rule, draw_days, replay, replay_par
from frywright.plan.sales import History
from frywright.plan.tune import SEARCH_DAYS, TRIES, searched_rule, tuned, tuned_rule
from frywright.rooms.day.kept_rule import keep_rule, kept_rule
from frywright.rooms.day.loads import LoadFact, item_of, shared_oil, unsold
from frywright.rooms.day.sales import history_of
from frywright.rooms.hall import write

MIX_DAYS, TUNE_DAYS, TUNE_ROUNDS, TUNE_SEED = 28, 60, 2, 17


@dataclass(frozen=True, slots=True, kw_only=True)
class Bench:
    """A day ready to plan: the engine's day beside the kitchen's names. ``loads`` go with the items'
    loads.
    """

    date: dt.date
    trade: Trade
    day: Day
    products: tuple[str, ...]
    fryers: tuple[str, ...]
    loads: tuple[tuple[LoadFact, ...], ...]
    mix_n: tuple[float, ...]
    forecast: Forecast
    par: Par | Rule
    notes: tuple[Note, ...]
    down: tuple[str, ...] = ()  # fryers that are off all day
    serving: frozenset[str] = frozenset()  # programs in service

    @property
    def look(self) -> Look:
        """How far the engine looks for this bank."""
        return Look.for_bank(self.day)


def events_of(store: Store) -> dict[dt.date, tuple[str, float]]:
    """Events and factors told for days: name and factor (1 when only named)."""
    return {e.fact.date: (e.fact.event, e.fact.factor_n) for e in store.current_facts(DayNoted)}


def note_day(store: Store, date: dt.date, event: str, factor: float) -> Kept[DayNoted]:
    """Say that a day is unlike others: a name (learned for the next time) and a factor on the forecast."""
    if not 0.05 <= factor <= 20:
        raise InputError("factor", factor, "0.05 to 20")
    if factor != 1.0 and not event.strip():
        raise InputError("event", "missing", "named where a factor is given, so that the next one is known")
    old = [e for e in store.current_facts(DayNoted) if e.fact.date == date]
    note = DayNoted(date=date, event=event.strip()[:80], factor_n=factor)
    return write(store, note, replaces=old[-1].number if old else None)


def forecaster_of(store: Store, kitchen: Kitchen, before: dt.date) -> tuple[Forecaster, History]:
    """What the sales before a day have taught, and those sales."""
    history = history_of(store, kitchen)
    events = {date: event for date, (event, _) in events_of(store).items()}
    products = [sell.product for sell in kitchen.sells]
    known = [n for n, date in enumerate(history.dates) if date < before]
    if not known:
        raise InputError(
            "sales", Phrase("none before {date}", {"date": before.isoformat()}), "one day or more"
        )
    counts = np.stack(
        [
            history.of(p) if (p, "") in history.series else np.zeros(history.pieces_n.shape[1:])
            for p in products
        ]
    )
    return learned([history.dates[n] for n in known], counts[:, known], events), history


def mix_factor(
    kitchen: Kitchen, history: History, product: str
) -> tuple[float, str, list[tuple[str, float, float]]]:
    """Pieces cooked for one asked for (bird balance over the last weeks), the cut that asks for most, and
    needed against given.
    """
    parts = {part.cut: part.count for part in kitchen.cut_set(kitchen.product(product).cut_set).parts}
    if (product, "") not in history.series or len(parts) < 2:
        return 1.0, "", []
    recent = slice(max(0, len(history.dates) - MIX_DAYS), None)
    whole = float(np.nansum(history.of(product)[recent]))
    named = {
        cut: float(np.nansum(history.of(product, cut)[recent]))
        for cut in parts
        if (product, cut) in history.series
    }
    if whole <= 0:
        return 1.0, "", []
    heads, worst = heads_for(named, parts, max(0.0, whole - sum(named.values())))
    days = max(1, len(history.dates[recent]))
    balance = [(cut, named.get(cut, 0.0) / days, heads * count / days) for cut, count in parts.items()]
    return max(1.0, heads * sum(parts.values()) / whole), worst, balance


# ---------------------------------------------------------------- the bench


def _tried(item: Item, hold_s: float | None, trade: Trade) -> Item:
    """An item with a hold life to try, where there is one."""
    life = (hold_s or 0.0) / trade.slot_s
    return item if hold_s is None else replace(item, hold_slots_count=max(1, int(life)), life_n=life)


def bench_for(
    store: Store,
    kitchen: Kitchen,
    date: dt.date,
    *,
    factor: float | None = None,
    hold_s: Mapping[str, float] | None = None,
    down: tuple[str, ...] = (),
    tune: bool = True,
    serving: Collection[str] = (),
) -> Bench:
    """A day ready to plan, from everything known before it. Raises InputError: no sales yet, no day in the
    kitchen file, or a product without a load that reaches the limit.

    Parameters
    ----------
    factor : on the forecast, in place of the one told for the day
    hold_s : hold lives to try instead of the programs' (product: seconds)
    down : fryers that are off all day
    serving : programs in service; a product that has some is planned with those only
    tune : tune the rule and the fryers' hours; a forecast alone needs neither
    """
    trade, notes = trade_of(kitchen), []  # type: ignore[var-annotated]
    forecaster, history = forecaster_of(store, kitchen, date)
    event, told = events_of(store).get(date, ("", 1.0))
    forecast = forecaster.forecast(date, told if factor is None else factor, event)
    running = [f.key for f in kitchen.fryers if f.key not in down]
    for key in down:
        kitchen.fryer(key)
    places = {f.key: n for n, f in enumerate(kitchen.fryers)}
    built = [item_of(kitchen, sell, trade, places, notes, serving) for sell in kitchen.sells]
    mix = tuple(mix_factor(kitchen, history, sell.product)[0] for sell in kitchen.sells)
    items = [
        _tried(replace(item, spread_n=float(spread)), (hold_s or {}).get(sell.product), trade)
        for (item, _), spread, sell in zip(built, forecast.spread_n, kitchen.sells, strict=True)
    ]
    weights = forecast.mean_n.sum(axis=1)
    cv = float((forecast.level_cv_frac * weights).sum() / max(weights.sum(), 1e-9))
    mean = history.by_slot(forecast.mean_n, trade) * np.array(mix)[:, None]
    day = Day(
        items=tuple(items),
        fryers_count=len(kitchen.fryers),
        slots_count=trade.slots_count,
        slot_s=trade.slot_s,
        hands_count=trade.hands_count,
        filter_every_count=trade.filter_every_count,
        filter_slots_count=max(1, ceil(trade.filter_s / trade.slot_s)),
        filter_money=trade.filter_money,
        rush=tuple((max(0, trade.slot_of(a)), max(0, trade.slot_of(b))) for a, b in trade.rush_s),
        power_w=tuple(f.heater_w if f.fuel == "electric" else 0.0 for f in kitchen.fryers),
        cap_w=trade.cap_w,
        up=tuple(
            (0, trade.slots_count) if f.key in running else (trade.slots_count, trade.slots_count)
            for f in kitchen.fryers
        ),
        level_cv_frac=min(1.0, cv),
        mean_n=mean,
    )
    notes += unsold(kitchen, forecaster) + shared_oil(kitchen)
    bench = Bench(
        date=date,
        trade=trade,
        day=day,
        products=tuple(s.product for s in kitchen.sells),
        fryers=tuple(f.key for f in kitchen.fryers),
        loads=tuple(facts for _, facts in built),
        mix_n=mix,
        forecast=forecast,
        par=Par(),
        notes=tuple(notes),
        down=down,
        serving=frozenset(serving),
    )
    return _tuned_bench(bench, kitchen) if tune else bench


def _tuned_bench(bench: Bench, kitchen: Kitchen) -> Bench:
    """Tune the rule on drawn days, then see when each fryer pays for its heat."""
    rule = kept_rule(bench.day, lambda: _own_rule(bench.day))
    hours = _windows(bench.day, _idle_money(bench, kitchen), rule)
    return replace(bench, par=rule, day=replace(bench.day, up=hours))


def tuned_day(bench: Bench, kitchen: Kitchen, changed: Day) -> tuple[Day, Rule]:
    """A changed day of a bench with the rule and the fryers' hours that a kitchen so changed would have. A
    fryer more costs as much heat as the one that takes the same.
    """
    count, idle = changed.slots_count, _idle_money(bench, kitchen)
    takes = [{n for n, i in enumerate(changed.items) if f in i.fryers} for f in range(changed.fryers_count)]
    for f in range(len(idle), changed.fryers_count):
        idle.append(idle[takes.index(takes[f])])
    off = {f for f, key in enumerate(bench.fryers) if key in bench.down}
    up = tuple((count if f in off else 0, count) for f in range(changed.fryers_count))
    day = replace(changed, up=up)
    rule = _own_rule(day)
    return replace(day, up=_windows(day, idle, rule)), rule


def _own_rule(day: Day) -> Rule:
    """The rule of a day, tuned on days drawn for that."""
    days = draw_days(day, TUNE_DAYS, TUNE_SEED)
    return tuned_rule(day, days, tuned(day, days, 1), TUNE_ROUNDS)


@dataclass(frozen=True, slots=True, kw_only=True)
class Searched:
    """What a drawn day costs by the rule kept so far and by the one that was searched for, on days of which
    neither knew; the cheaper one is kept.
    """

    before_money: float
    after_money: float
    days_count: int

    @property
    def better(self) -> bool:
        """Whether the search found a rule that costs less."""
        return self.after_money < self.before_money


def search_rule(day: Day, tries: int = TRIES) -> Searched:
    """Search on, for minutes, from the rule of a bench's day before its fryers' hours, and keep it for that
    day's plan if it costs less on other days.
    """
    before = kept_rule(day, lambda: _own_rule(day))
    after = searched_rule(day, draw_days(day, SEARCH_DAYS, TUNE_SEED), before, tries)
    judged = draw_days(day, SEARCH_DAYS, JUDGE_SEED)
    costs = [float(replay_par(day, judged, rule).cost_money.mean()) for rule in (before, after)]
    found = Searched(before_money=costs[0], after_money=costs[1], days_count=SEARCH_DAYS)
    if found.better:
        keep_rule(day, after)
    return found


def _idle_money(bench: Bench, kitchen: Kitchen) -> list[float]:
    """What a slot at heat costs each fryer that cooks nothing."""
    trade = bench.trade
    hours = trade.slot_s / 3600.0
    held = [
        max((p.stages[0].set_c for p in kitchen.programs if p.fryer == f.key), default=0.0)
        for f in kitchen.fryers
    ]
    return [
        f.loss_w_k * max(0.0, c - kitchen.site.room_temp_c) / 1000.0 * trade.kwh_money * hours
        for f, c in zip(kitchen.fryers, held, strict=True)
    ]


def _windows(day: Day, idle: Sequence[float], par: Par | Rule) -> tuple[tuple[int, int], ...]:
    """First slot at heat and last slot of every fryer: off where the drawn days cost no more without it than
    its heat does, or never use it; else from the earliest drop of a drawn day to the latest lift.
    """
    days, up = draw_days(day, TUNE_DAYS, TUNE_SEED), list(day.up)

    def cost(windows: list[tuple[int, int]]) -> float:
        heat = sum(c * max(0, b - a) for c, (a, b) in zip(idle, windows, strict=True))
        return float(replay_par(replace(day, up=tuple(windows)), days, par).cost_money.mean()) + heat

    best = cost(up)
    for f in sorted(range(len(up)), key=lambda f: -idle[f]):
        tried = [(day.slots_count, day.slots_count) if n == f else w for n, w in enumerate(up)]
        if up[f][0] < up[f][1] and (found := cost(tried)) < best:
            best, up = found, tried
    used = [d for plan in replay(replace(day, up=tuple(up)), days, par).plans for d in plan.drops]
    for f, (low, high) in enumerate(up):
        mine = [(d.slot, day.items[d.item].loads[d.load]) for d in used if d.fryer == f]
        if mine:
            last = max(t + load.cook_slots_count + load.recovery_slots_count for t, load in mine)
            up[f] = (max(low, min(t for t, _ in mine)), min(high, last + 1))
        else:
            up[f] = (day.slots_count, day.slots_count)
    return tuple(up)


def morning(bench: Bench) -> Outlook:
    """The plan of the whole day along the expected path, with bands."""
    return outlook(bench.day, None, bench.par)
