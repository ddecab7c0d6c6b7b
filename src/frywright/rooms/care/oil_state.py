"""A vat's oil today: what is believed of it from its entries, the meter's checks and the board's loads, and
when it passes the limit.
"""

from __future__ import annotations

import datetime as dt
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from itertools import takewhile
from threading import Lock
from typing import Any
from weakref import WeakKeyDictionary

import numpy as np

from frywright.ledger.facts.day import UNDO, BoardTap
from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.oil import MeterChecked, OilDone, OilLimitSet
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import Phrase
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.oil.outlook import HORIZON_DAYS, Array, Belief, Crossing, Vats, crossing, learn
from frywright.rooms.care.oil_loads import fat_kg
from frywright.rooms.clock import now
from frywright.rooms.standing import oil_limit_here

FRESH_PCT = 4.0
"""Fresh oil: common practice, no source; the kitchen's own words win. Chicken fat from the food is taken as
fresh as that (estimate).
"""
READING_SD_PCT, STRIP_SD_PCT = 1.2, 2.5
"""Error of one reading of a meter, its offset apart, and of a strip: published comparisons say 1 to 2 points
with the offset in it, a strip more (estimate).
"""
RECENT_DAYS = 14
CHANGES = ("discard", "fill")
LEARNT_DAYS, LOOKED_BACK_DAYS = 365, 1100
"""A vat is learned from a year and the filling before it, and nothing is looked for further back than three
years, so that no page grows with the record (own choice; evidence a year old counts a sixth of today's).
"""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False, weakref_slot=True)
class VatState:
    """A vat today: belief of its oil, when it passes the limit, and the figures behind it."""

    fryer: Fryer
    belief: Belief
    crossing: Crossing
    limit_pct: float
    limit_title: Phrase
    share_frac: float
    weekend: Array
    readings_count: int
    age_days_count: int
    days_count: int
    top_up_kg: float
    last_reading_pct: float | None
    right_pct: float | None  # the last reading, put right by the meter's check
    events: tuple[OilDone, ...] = ()
    read_on: frozenset[dt.date] = field(init=False)
    changed_on: tuple[dt.date, ...] = field(init=False)
    acid_n: float | None = field(init=False)
    colour_n: float | None = field(init=False)

    def __post_init__(self) -> None:
        """What pages ask of the events is looked for once."""
        found = {
            "read_on": frozenset(e.date for e in self.events if e.reading_pct is not None),
            "changed_on": tuple(e.date for e in self.events if e.what in CHANGES),
            "acid_n": next((e.acid_n for e in reversed(self.events) if e.acid_n is not None), None),
            "colour_n": next((e.colour_n for e in reversed(self.events) if e.colour_n is not None), None),
        }
        for name, value in found.items():
            object.__setattr__(self, name, value)

    def outlook(
        self, *, belief: Belief | None = None, share: float | None = None, heat: float = 1.0
    ) -> Crossing:
        """When its peak passes the limit, by another belief, top-up or heat."""
        return crossing(
            belief or self.belief,
            self.limit_pct,
            self.share_frac if share is None else share,
            heat=heat,
            weekend=self.weekend,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class _Told:
    """What holds for all vats: fat that the board's loads gave, by day and fryer; the meter's checks; the
    limit.
    """

    fat_kg: Mapping[dt.date, Mapping[str, float]]
    checks: tuple[MeterChecked, ...]
    limit_pct: tuple[float, Phrase]


def vat_states(store: Store, kitchen: Kitchen, today: dt.date | None = None) -> dict[str, VatState]:
    """Every vat's oil today, by fryer; the logs are read once. Entries count on the day they are told for.
    What was found is kept while nothing came that it is found from.
    """
    day = today or business_time(usual_trade(kitchen), now())[0]
    newest = (next(store.facts(cls, newest_first=True), None) for cls in LEARNT_FROM)
    asked = kitchen, day, store.newest(EntriesDropped.KIND), *newest
    known = _STATES.get(store)
    if known is None or known[0] != asked:
        known = _STATES[store] = asked, _vat_states(store, kitchen, day)
    return dict(known[1])


LEARNT_FROM: tuple[type[Any], ...] = (OilDone, BoardTap, MeterChecked, OilLimitSet)
_STATES: WeakKeyDictionary[Store, tuple[object, dict[str, VatState]]] = WeakKeyDictionary()
"""The oil of each vat, and of which kitchen, day and newest entries that is."""


def _vat_states(store: Store, kitchen: Kitchen, day: dt.date) -> dict[str, VatState]:
    told = _told(store, tuple(f.key for f in kitchen.fryers), day)
    starts = [events[0].date for events in told.values() if events]
    shared = _Told(
        fat_kg=_fat(store, kitchen, min(starts, default=day)),
        checks=tuple(
            sorted((e.fact for e in store.facts(MeterChecked) if e.fact.date <= day), key=lambda c: c.date)
        ),
        limit_pct=oil_limit_here(store, kitchen),
    )
    return {f.key: _state(f, told[f.key], day, shared) for f in kitchen.fryers}


_EVENTS: WeakKeyDictionary[Store, tuple[object, dict[str, list[OilDone]]]] = WeakKeyDictionary()
"""What was done to the oil of each vat, and of which newest entry, vats and day that is."""


def _told(store: Store, vats: tuple[str, ...], day: dt.date) -> dict[str, list[OilDone]]:
    """What was done to the oil of each vat that it is learned from, in order of time."""
    last = next(iter(store.facts(OilDone, newest_first=True)), None)
    state = last, store.newest(EntriesDropped.KIND), vats, day
    known = _EVENTS.get(store)
    if known is None or known[0] != state:
        told: dict[str, list[OilDone]] = {vat: [] for vat in vats}
        for item in _recent(store, set(vats), day):
            if item.fact.date <= day:
                told.setdefault(item.fact.vat, []).append(item.fact)
        told = {vat: _from_a_change(events, day) for vat, events in told.items()}
        known = _EVENTS[store] = state, told
    return known[1]


def _recent(store: Store, vats: set[str], day: dt.date) -> list[Kept[OilDone]]:
    """What was done to the oil, in order of time, as far back as it is learned from."""
    found, open_vats = [], set(vats)
    for item in store.facts(OilDone, newest_first=True):
        fact = item.fact
        if not open_vats or fact.date < day - dt.timedelta(days=LOOKED_BACK_DAYS):
            break
        found.append(item)
        if fact.what in CHANGES and fact.date <= day - dt.timedelta(days=LEARNT_DAYS):
            open_vats.discard(fact.vat)
    return sorted(found, key=lambda e: (e.fact.date, e.happened_at, e.number))


def _from_a_change(events: list[OilDone], day: dt.date) -> list[OilDone]:
    """A vat's events from the last change on that is old enough to learn from; all where there is none."""
    early = day - dt.timedelta(days=LEARNT_DAYS)
    first = [n for n, e in enumerate(events) if e.what in CHANGES and e.date <= early]
    return events[first[-1] :] if first else events


def _filled_on(events: list[OilDone], day: dt.date) -> dt.date:
    """Day from which a vat's oil counts: its last change, else its first entry."""
    changes = [e.date for e in events if e.what in CHANGES]
    return (changes[-1] if changes else events[0].date) if events else day


@dataclass(slots=True)
class _Fat:
    """Chicken fat given to each fryer's oil by the loads dropped into it, by day of the board, of the taps up
    to one of them; what came after is added, and nothing is read twice. Beside it the loads of each.
    """

    kitchen: Kitchen
    since: dt.date
    dropped: int
    last: Kept[BoardTap] | None = None
    given_kg: dict[dt.date, dict[str, float]] = field(default_factory=dict)
    loads_count: Counter[tuple[dt.date, str]] = field(default_factory=Counter)

    def count(self, tap: BoardTap, sign: int) -> None:
        """Count a load, or count one no more that was taken back."""
        if tap.what != "drop" or tap.date < self.since:
            return
        day, key = self.given_kg.setdefault(tap.date, {}), (tap.date, tap.fryer)
        kg = fat_kg(self.kitchen, tap.fryer, tap.product, tap.pieces_count)
        self.loads_count[key] += sign
        day[tap.fryer] = day.get(tap.fryer, 0.0) + sign * kg
        if not self.loads_count[key]:
            del day[tap.fryer]

    def holds(self, store: Store, kitchen: Kitchen, since: dt.date, dropped: int) -> bool:
        """Whether it may be added to: the same kitchen and record, and it goes back as far."""
        same = self.kitchen is kitchen and self.since <= since and self.dropped == dropped
        return same and (self.last is None or store.fact(self.last.number, BoardTap) == self.last)


_FAT: WeakKeyDictionary[Store, _Fat] = WeakKeyDictionary()
_TURN = Lock()


def _fat(store: Store, kitchen: Kitchen, since: dt.date) -> dict[dt.date, dict[str, float]]:
    """Chicken fat given to each fryer's oil by the loads dropped into it, by day of the board."""
    dropped = store.newest(EntriesDropped.KIND)
    with _TURN:
        known = _FAT.get(store)
        if known is None or not known.holds(store, kitchen, since, dropped):
            known = _FAT[store] = _Fat(kitchen=kitchen, since=since, dropped=dropped)
        new = _taps_after(store, known)
        for item in new:
            if item.fact.what != UNDO:
                known.count(item.fact, 1)
            elif item.replaces is not None and (taken := store.fact(item.replaces, BoardTap)) is not None:
                known.count(taken.fact, -1)
        if new:
            known.last = new[-1]
        return {date: dict(day) for date, day in known.given_kg.items() if day}


def _taps_after(store: Store, known: _Fat) -> list[Kept[BoardTap]]:
    """Taps that were not counted yet, oldest first; a tablet that was off line tells late."""
    if known.last is not None:
        return list(store.facts(BoardTap, after=known.last.number))
    early = known.since - dt.timedelta(days=2)
    return list(takewhile(lambda e: e.fact.date >= early, store.facts(BoardTap, newest_first=True)))[::-1]


def _state(fryer: Fryer, events: list[OilDone], day: dt.date, shared: _Told) -> VatState:
    first = events[0].date if events else day
    count, changed = max(1, (day - first).days + 1), _filled_on(events, day)
    top_up = _days(events, fryer, first, count)
    vats = _whole(top_up, fryer, first, shared)
    aged = bool(events) and events[0].what not in CHANGES
    belief = learn(vats, aged=np.array([aged]), limit=shared.limit_pct[0])[0]
    share = float(min(vats.share_frac[0, -RECENT_DAYS:].mean(), 0.95))
    readings = [e.reading_pct for e in events if e.reading_pct is not None]
    last = next((e for e in reversed(_since_change(events)) if e.reading_pct is not None), None)
    ahead = np.array([_weekend(day + dt.timedelta(days=n + 1)) for n in range(HORIZON_DAYS)])
    return VatState(
        fryer=fryer,
        belief=belief,
        crossing=crossing(belief, shared.limit_pct[0], share, weekend=ahead),
        limit_pct=shared.limit_pct[0],
        limit_title=shared.limit_pct[1],
        share_frac=share,
        weekend=ahead,
        readings_count=len(readings),
        age_days_count=(day - changed).days,
        days_count=count,
        top_up_kg=float(top_up.share_frac[0, -RECENT_DAYS:].mean()) * fryer.oil_mass_kg,
        last_reading_pct=last.reading_pct if last else None,
        right_pct=put_right(last, shared.checks) if last else None,
        events=tuple(events),
    )


def put_right(read: OilDone, checks: Sequence[MeterChecked]) -> float | None:
    """A reading as the meter's check says it is: the last check up to its day, else the first one after it.
    What a strip read stays as it is.
    """
    before = [check for check in checks if check.date <= read.date]
    check = before[-1] if before else next(iter(checks), None)
    if read.reading_pct is None or check is None or read.how != "meter":
        return read.reading_pct
    apart = check.high_read_pct - check.low_read_pct
    if apart <= 0:  # no meter: it tells worn oil from fresh the wrong way round
        return read.reading_pct
    gain = (check.high_known_pct - check.low_known_pct) / apart
    return check.low_known_pct + gain * (read.reading_pct - check.low_read_pct)


def _weekend(day: dt.date) -> float:
    """1 on a Saturday or Sunday."""
    return float(day.weekday() >= 5)


def _since_change(events: list[OilDone]) -> list[OilDone]:
    """What was entered of the oil that is in the vat now."""
    changes = [n for n, e in enumerate(events) if e.what in CHANGES]
    return events[changes[-1] :] if changes else events


def _whole(told: Vats, fryer: Fryer, first: dt.date, shared: _Told) -> Vats:
    """Days of a vat with what the board and the meter's checks say: oil stayed cold and did not age on a day
    when only others dropped; fat from the food thins it as fresh oil does.
    """
    count = told.heat_n.shape[1]
    heat, share, checks = told.heat_n.copy(), told.share_frac.copy(), np.full((1, count, 4), np.nan)
    last_change = max(np.flatnonzero(told.discard[0]), default=0)
    for date, fryers in shared.fat_kg.items():
        n = (date - first).days
        if not 0 <= n < count:
            continue
        if fryer.key not in fryers and n >= last_change:
            heat[0, n] = 0.0
        share[0, n] = min(1.0, share[0, n] + fryers.get(fryer.key, 0.0) / fryer.oil_mass_kg)
    for check in shared.checks:
        n = max(0, (check.date - first).days)
        checks[0, n] = (check.low_known_pct, check.low_read_pct, check.high_known_pct, check.high_read_pct)
    return Vats(
        heat_n=heat,
        share_frac=share,
        discard=told.discard,
        reading=told.reading,
        noise=told.noise,
        fresh=told.fresh,
        weekend=np.array([[_weekend(first + dt.timedelta(days=n)) for n in range(count + 1)]]),
        by_meter=told.by_meter,
        checks=checks,
    )


def _days(events: list[OilDone], fryer: Fryer, first: dt.date, count: int) -> Vats:
    """Entries as days; a reading after the top-up is put back to the peak by that day's share."""
    shape = (1, count)
    share, discard, reading, noise, by_meter = (
        np.zeros(shape),
        np.zeros(shape, dtype=bool),
        np.full(shape, np.nan),
        np.full(shape, READING_SD_PCT),
        np.ones(shape, dtype=bool),
    )
    for event in events:
        n = (event.date - first).days
        if event.mass_kg is not None:
            share[0, n] = min(1.0, share[0, n] + event.mass_kg / fryer.oil_mass_kg)
        elif event.what in CHANGES:
            discard[0, n] = True
        elif event.reading_pct is not None and not discard[0, n]:  # else it was of the new oil, not the peak
            value = event.reading_pct
            reading[0, n] = (
                value
                if event.peak or share[0, n] >= 1
                else min(100.0, max(0.0, (value - share[0, n] * FRESH_PCT) / (1.0 - share[0, n])))
            )
            by_meter[0, n] = event.how != "strip"
            noise[0, n] = READING_SD_PCT if by_meter[0, n] else STRIP_SD_PCT
    return Vats(
        heat_n=np.ones(shape),
        share_frac=share,
        discard=discard,
        reading=reading,
        noise=noise,
        fresh=np.array([FRESH_PCT]),
        by_meter=by_meter,
    )
