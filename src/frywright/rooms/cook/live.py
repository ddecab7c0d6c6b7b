"""A load that cooks while its probes report: where each channel sits, what is expected, the log it leaves.

Loads under way live in the memory of the server and go on from its journal when it was stopped. What is kept
of one is its log, by the same act as a file dropped in.
"""

from __future__ import annotations

import datetime as dt
import io
import threading
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import asdict, dataclass, field, replace
from typing import Any

import numpy as np

from frywright.calibrate.ahead import Ahead, Goal, Outlook, goal_of
from frywright.calibrate.core import FIRST_S
from frywright.calibrate.family import Course, course_of, family_of
from frywright.calibrate.thermometer import corrected
from frywright.catalog import load as catalog
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import LogKept
from frywright.ledger.store import Store
from frywright.model.errors import FrywrightError, InputError
from frywright.model.kitchen import Kitchen
from frywright.physics.plan import FryPlan, make_plan
from frywright.rooms.clock import now
from frywright.rooms.cook.intake import Intake, Sample
from frywright.rooms.cook.live_journal import Journal
from frywright.rooms.cook.logs import keep_log
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.thermometers import checks_in, correction_of
from frywright.trial.ask import needed_limit
from frywright.trial.evidence import reasons_for

MOST_LOADS, FORGET_S = 6, 4 * 3600.0
BEFORE_S, WARM_UP_S = 2700.0, 30.0
"""How much before the drop is kept of a log (half an hour shows three heat cycles), and how much before it
tells the start temperature."""
WAIT_S = FIRST_S + 2.0
TWICE_S = 15.0
"""The same load started again within so long was pressed twice. Own choice."""
LATEST_DROP_S, SOONEST_DROP_S = 3600.0, 60.0
FALL_K, FALL_S, FALL_K_S, BEND_K = 1.5, 20.0, 0.06, 0.5
"""A drop is found where the oil has fallen by so much within so long, faster than idle oil cools (0.03 K/s at
most between two cut-ins, own computation on the demo's fryers; a load draws 0.1 to 0.3 K/s). It went in where
the oil was last within BEND_K of its highest there."""


PIECE_KG = (0.005, 3.0)
"""Weight of a piece that can be probed: from half a nugget to a whole bird (own estimate)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Use:
    """Where a channel sits: in the oil (no cut) or in a piece of a cut, with its weight and thermometer."""

    channel: str
    cut: str = ""
    mass_kg: float | None = None
    thermometer: str = ""

    def __post_init__(self) -> None:
        low, high = PIECE_KG
        if self.mass_kg is not None and not low <= self.mass_kg <= high:
            raise InputError(
                "weight",
                self.mass_kg,
                "{low_kg} to {high_kg}",
                where=self.channel,
                unit="kg",
                low_kg=low,
                high_kg=high,
            )


@dataclass(frozen=True, slots=True, kw_only=True)
class LiveAsk:
    """What a person says at the drop. ``drop_s`` (seconds since 1970) is None where the oil is to tell it."""

    program: str
    uses: tuple[Use, ...]
    units_count: float | None = None
    drop_s: float | None = None


@dataclass(slots=True)
class Watched:
    """One probed piece: its filter once there is one, and how far it has read."""

    use: Use
    correction: Sequence[tuple[float, float]]
    ahead: Ahead | None = None
    upto_s: float = 0.0


@dataclass(slots=True)
class LiveLoad:
    """A load under way."""

    number: int
    ask: LiveAsk
    plan: FryPlan
    goal: Goal
    calibrated: frozenset[str]
    began_s: float
    pieces: list[Watched]
    oil: Use | None
    drop_s: float | None
    course: Course | None = None
    oil_upto_s: float = 0.0
    revision: int = 0
    problem: FrywrightError | None = None
    log_number: int = 0
    went_on: bool = False  # its server was stopped and started again
    lock: threading.Lock = field(default_factory=threading.Lock)

    @property
    def under_pressure(self) -> bool:
        """Whether its program locks the lid."""
        return self.plan.program.under_pressure

    @property
    def lift_s(self) -> float:
        """The earliest lift of its program, from the drop [s]; no second of a vent counts."""
        return self.plan.program.clock_s


class LiveRoom:
    """Readings and loads of one kitchen's server."""

    def __init__(self, store: Store, now_s: Callable[[], float] = lambda: now().timestamp()) -> None:
        self.store, self.intake, self.journal, self._now_s = store, Intake(), Journal(store), now_s
        self._loads: dict[int, LiveLoad] = {}
        self._next = 1
        self._lock, self._taking = threading.Lock(), threading.Lock()
        self._waiting = self._replayed()
        """Loads of before a stop, by number, until somebody looks: they need the kitchen."""

    def _replayed(self) -> dict[int, Mapping[str, Any]]:
        """Read the journal: readings at once, loads for later."""
        loads: dict[int, Mapping[str, Any]] = {}
        for row in self.journal.rows():
            with suppress(KeyError, TypeError, ValueError, InputError):
                if row["what"] == "readings":
                    samples = [Sample(channel=c, temp_c=t, at_s=a) for c, t, a in row["samples"]]
                    self.intake.add(row["source"], samples, float(row["got_s"]))
                elif row["what"] == "start":
                    loads[int(row["number"])] = {**row}
                elif row["what"] == "drop":
                    loads[row["number"]] = {**loads[row["number"]], "drop_s": float(row["drop_s"])}
                elif row["what"] == "stop":
                    loads.pop(row["number"], None)
                self._next = max(self._next, int(row.get("number", 0)) + 1)
        return loads

    def _go_on(self) -> None:
        """Follow the loads of before a stop again; one whose program is gone, or that is old, is let go."""
        with self._lock:
            waiting, self._waiting = self._waiting, {}
            if not waiting:
                return
            kitchen, now_s = remembered_kitchen(self.store), self._now_s()
            for number, row in waiting.items():
                if now_s - row["began_s"] >= FORGET_S:
                    continue
                with suppress(FrywrightError, KeyError, TypeError):
                    uses = tuple(Use(**use) for use in row["ask"]["uses"])
                    load = self._made(kitchen, LiveAsk(**{**row["ask"], "uses": uses}), row["began_s"])
                    load.number, load.went_on = number, True
                    load.drop_s = row.get("drop_s", load.drop_s)
                    self._loads[number] = load

    def take(self, source: str, samples: list[Sample], got_s: float) -> int:
        """Take readings that arrived together, and keep them for a stop; how many were new.
        Raises InputError: as :meth:`frywright.rooms.cook.intake.Intake.add`; nothing of the message is kept.
        """
        with self._taking:
            new = self.intake.add(source, samples, got_s)
            if new:
                rows = [(s.channel, s.temp_c, s.at_s) for s in samples]
                told = {"what": "readings", "source": source, "got_s": got_s, "samples": rows}
                self.journal.write(told, self._starts())
        return new

    def _starts(self) -> list[Mapping[str, Any]]:
        """The loads under way, as the journal begins with them."""
        with self._lock:
            return [_start_row(load) for load in self._loads.values()]

    def loads(self) -> list[LiveLoad]:
        """Loads under way and lately ended, newest first."""
        self._go_on()
        with self._lock:
            return sorted(self._loads.values(), key=lambda load: -load.number)

    def load(self, number: int) -> LiveLoad:
        """A load by its number. Raises InputError: there is none, or no longer."""
        self._go_on()
        with self._lock:
            found = self._loads.get(number)
        if found is None:
            raise InputError(
                "load", number, "one that is under way: its log is among the logs, if it was kept"
            )
        return found

    def start(self, kitchen: Kitchen, ask: LiveAsk, now_s: float) -> LiveLoad:
        """Begin to follow a load; one pressed twice is one. Raises InputError: no piece, two channels in the
        oil, a cut that is not in it, an impossible drop, no limit to wait for, or too many loads at once.
        """
        self._go_on()
        load = self._made(kitchen, ask, now_s)
        if ask.drop_s is not None:
            _check_drop(ask.drop_s, now_s)
        with self._lock:
            self._loads = {n: x for n, x in self._loads.items() if now_s - x.began_s < FORGET_S}
            for other in self._loads.values():
                if now_s - other.began_s < TWICE_S and _same(other.ask, ask):
                    return other
            if len(self._loads) >= MOST_LOADS:
                raise InputError(
                    "loads", len(self._loads), "at most {most} at once: end one first", most=MOST_LOADS
                )
            load.number, self._next = self._next, self._next + 1
            self._loads[load.number] = load
        self.journal.write(_start_row(load))
        return load

    def _made(self, kitchen: Kitchen, ask: LiveAsk, now_s: float) -> LiveLoad:
        """A load as it begins, without its number."""
        program = kitchen.program(ask.program)
        plan = make_plan(kitchen, program, units_count=ask.units_count)
        pieces, oils = [u for u in ask.uses if u.cut], [u for u in ask.uses if not u.cut]
        self._check(plan, ask, pieces, oils)
        limit = needed_limit(kitchen, plan.product)
        fat = max(100.0 * catalog.compositions()[k.cut.composition].fractions["fat"] for k in plan.kinds)
        when, checks = dt.datetime.fromtimestamp(now_s, dt.UTC), checks_in(self.store)
        return LiveLoad(
            number=0,
            ask=ask,
            plan=plan,
            goal=goal_of(limit, kitchen.site.thermometer_error_k, fat),
            calibrated=frozenset(
                k.cut.key for k in plan.kinds if not k.heavy and not reasons_for(kitchen, plan, k)
            ),
            began_s=now_s,
            pieces=[
                Watched(use=u, correction=correction_of(checks, u.thermometer, when) if u.thermometer else ())
                for u in pieces
            ],
            oil=oils[0] if oils else None,
            drop_s=ask.drop_s,
        )

    def _check(self, plan: FryPlan, ask: LiveAsk, pieces: list[Use], oils: list[Use]) -> None:
        if not pieces:
            raise InputError("channels", "none", "at least one probe in a piece")
        if len(oils) > 1:
            raise InputError("channels", ", ".join(u.channel for u in oils), "at most one in the oil")
        known = {k.cut.key for k in plan.kinds}
        for use in pieces:
            if use.cut not in known:
                cuts = ", ".join(sorted(known))
                raise InputError("cut", use.cut, "one of: {known}", where=use.channel, known=cuts)
        if ask.drop_s is None and not oils:
            raise InputError("drop", "missing", "a time, or a probe in the oil that tells it")

    def stop(self, number: int) -> None:
        """Forget a load; its readings stay until they are old."""
        self.load(number)
        with self._lock:
            self._loads.pop(number, None)
        self.journal.write({"what": "stop", "number": number})

    def drop(self, number: int, drop_s: float, now_s: float) -> None:
        """Say when a load went in that still waits for the oil to fall. Raises InputError: there is no such
        load, or no such moment.
        """
        load = self.load(number)
        _check_drop(drop_s, now_s)
        with load.lock:
            load.drop_s = load.drop_s or drop_s
        self.journal.write({"what": "drop", "number": number, "drop_s": load.drop_s})

    def tend(self, load: LiveLoad, now_s: float) -> None:
        """Let a load read what has come in."""
        with load.lock:
            if load.problem is not None:
                return
            if load.drop_s is None and load.oil is not None:
                load.drop_s = drop_in(
                    self.intake.readings(load.oil.channel, load.began_s - BEFORE_S), load.began_s
                )
            if load.drop_s is None or now_s < load.drop_s + WAIT_S:
                return
            if load.revision != self.intake.revision:
                load.revision = self.intake.revision
                for watched in load.pieces:
                    watched.ahead = None
            try:
                self._follow(load, load.drop_s)
            except FrywrightError as error:
                load.problem = error

    def _follow(self, load: LiveLoad, drop_s: float) -> None:
        """Give new readings to the filters, making those that are not there yet."""
        course = load.course = load.course or course_of(load.plan)
        oils: list[tuple[float, float]] = []
        if load.oil is not None:
            oils = self.intake.readings(load.oil.channel, drop_s)
        for watched in load.pieces:
            if watched.ahead is None:
                watched.ahead = self._filter(load, course, watched, drop_s)
                watched.upto_s = drop_s
            readings = [(t, c, True) for t, c in self.intake.readings(watched.use.channel, watched.upto_s)]
            for t, c, core in sorted(readings + [(t, c, False) for t, c in oils if t > watched.upto_s]):
                if core:
                    watched.ahead.read(t - drop_s, float(corrected(np.array([c]), watched.correction)[0]))
                else:
                    watched.ahead.read_oil(t - drop_s, c)
            if readings:
                watched.upto_s = readings[-1][0]

    def _filter(self, load: LiveLoad, course: Course, watched: Watched, drop_s: float) -> Ahead:
        told = self.intake.readings(watched.use.channel, drop_s - WARM_UP_S)
        before = [c for t, c in told if t < drop_s]
        first = [c for t, c in told if drop_s <= t <= drop_s + FIRST_S]
        start = load.plan.product.start_temp_c
        if before or first:
            start = float(np.median(before or first))
            if before and first and abs(start - float(np.median(first))) > 2.0:
                start = float(np.median(first))
            start = float(corrected(np.array([start]), watched.correction)[0])
        if not -3.0 <= start <= 40.0:
            start = load.plan.product.start_temp_c
        family = family_of(
            course,
            watched.use.cut,
            watched.use.mass_kg,
            start,
            load.goal.level_c,
            watched.use.cut in load.calibrated,
        )
        return Ahead(family, course, load.goal, 0.5 * load.plan.site.thermometer_error_k)

    def outlooks(self, load: LiveLoad, now_s: float) -> list[tuple[Use, Outlook | None]]:
        """What is expected of every probed piece."""
        with load.lock:
            return [
                (
                    w.use,
                    None
                    if w.ahead is None or load.drop_s is None
                    else w.ahead.outlook(max(now_s - load.drop_s, 0.0), load.lift_s),
                )
                for w in load.pieces
            ]

    def keep(self, load: LiveLoad, titles: dict[str, str]) -> Kept[LogKept]:
        """Keep a load's readings as a log, by the same act as a file; a load keeps its log once."""
        with load.lock:
            if load.log_number:
                found = self.store.fact(load.log_number, LogKept)
                assert found is not None
                return found
            text, name = self.log_of(load, titles)
            kept = keep_log(self.store, io.BytesIO(text), name)
            load.log_number = kept.number
            return kept

    def log_of(self, load: LiveLoad, titles: dict[str, str]) -> tuple[bytes, str]:
        """A load's readings as a logger's file: from three quarters of an hour before the drop to now."""
        since = (load.drop_s or load.began_s) - BEFORE_S
        uses = [*([load.oil] if load.oil else []), *(w.use for w in load.pieces)]
        rows: dict[float, dict[str, float]] = {}
        for use in uses:
            for t, c in self.intake.readings(use.channel, since):
                rows.setdefault(round(t, 1), {})[use.channel] = c
        if not rows:
            raise InputError("readings", "none", "at least one before a log can be kept")
        head = ["Time", *(column_of(use, titles) for use in uses)]
        lines = [",".join(head)]
        for t in sorted(rows):
            moment = dt.datetime.fromtimestamp(t, dt.UTC)
            cells = [f"{rows[t][u.channel]:.2f}" if u.channel in rows[t] else "" for u in uses]
            lines.append(
                ",".join([moment.strftime("%Y-%m-%d %H:%M:%S.") + f"{moment.microsecond // 100000}Z", *cells])
            )
        at = dt.datetime.fromtimestamp(load.drop_s or load.began_s, dt.UTC)
        return ("\n".join(lines) + "\n").encode(), f"live {load.ask.program} {at:%Y-%m-%d %H%M}.csv"


def _start_row(load: LiveLoad) -> Mapping[str, Any]:
    """A load as the journal keeps it."""
    row = {"what": "start", "number": load.number, "began_s": load.began_s, "ask": asdict(load.ask)}
    return row if load.drop_s is None else {**row, "drop_s": load.drop_s}


def _same(one: LiveAsk, other: LiveAsk) -> bool:
    """Whether two starts ask for the same, their moments aside."""
    waits = (one.drop_s is None) == (other.drop_s is None)
    return waits and replace(one, drop_s=None) == replace(other, drop_s=None)


def _check_drop(drop_s: float, now_s: float) -> None:
    if not -SOONEST_DROP_S <= now_s - drop_s <= LATEST_DROP_S:
        raise InputError("drop", "impossible", "within the last hour")


def column_of(use: Use, titles: dict[str, str]) -> str:
    """The name of a channel's column; commas and quotes would break the table."""
    place = titles.get(use.cut, "") if use.cut else "Oil"
    plain = use.channel.replace(",", " ").replace('"', " ").replace(";", " ")
    return f"{place} {plain} (°C)"


def drop_in(oil: list[tuple[float, float]], since_s: float) -> float | None:
    """The moment a load went in, from the fall of the oil; None before it shows."""
    for i, (t, c) in enumerate(oil):
        if t < since_s:
            continue
        before = [(s, b) for s, b in oil[max(0, i - 400) : i] if s >= t - FALL_S]
        if not before:
            continue
        top_s, top = max(before, key=lambda pair: (pair[1], pair[0]))
        if top - c >= FALL_K and top - c >= FALL_K_S * (t - top_s):
            return max(s for s, b in before if b >= top - BEND_K)
    return None
