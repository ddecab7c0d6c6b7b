"""The live board: what happened today as entries, what to drop now, timers, shelf, and a new plan when the
day changes.

Every tap is one entry with an id given where it was tapped, so that a tablet which lost the server can send
it again and it is kept once. A practice day has invented guests and its own kind of entries; it is never
evidence.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict, dataclass
from typing import Any

import numpy as np

from frywright.ledger.facts.day import BoardTap, PracticeTap
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.trade import time_of_day
from frywright.plan.advice import (
    Advice,
    Outlook,
    bank_now,
    expected_path,
    last_drops,
    level_of,
    outlook,
)
from frywright.plan.explain import Waste, explain, total
from frywright.plan.live import Happening, State, What, state_of
from frywright.rooms.day.advised import advised
from frywright.rooms.day.day import Bench
from frywright.rooms.day.lifting import lifts_of, same_drop
from frywright.rooms.day.loads import LoadFact
from frywright.rooms.day.practice import guests
from frywright.rooms.hall import write
from frywright.rooms.standing import stopped

LATE_S, STAGGER_S, LONGEST_WAIT_S = 60.0, 60.0, 240.0
"""Entries recorded this much after they happened are late; lifts stand this far apart (common practice, no
source).
"""
REASONS = ("expired", "close", "dropped on the floor", "burnt", "wrong product", "undercooked", "other")


@dataclass(frozen=True, slots=True, kw_only=True)
class Tap:
    """One thing told at the board. ``key`` makes it unique; ``at_s`` is the time of the business day."""

    key: str
    what: str
    at_s: float
    fryer: str = ""
    product: str = ""
    pieces_count: int = 0
    reason: str = ""
    who: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Board:
    """A day's board over its bench; ``practice`` is the seed of a practice day or None."""

    store: Store
    kitchen: Kitchen
    bench: Bench
    practice: int | None = None

    @property
    def told_as(self) -> type[BoardTap]:
        """The fact its taps become."""
        return BoardTap if self.practice is None else PracticeTap

    # ------------------------------------------------------------ entries

    def taps(self) -> list[Kept[BoardTap]]:
        """Today's entries, oldest first."""
        found = []
        for item in self.store.facts(self.told_as, newest_first=True):
            if item.fact.date == self.bench.date and item.fact.practice_count == self.practice:
                found.append(item)
            elif item.fact.date < self.bench.date - dt.timedelta(days=2):
                break
        return found[::-1]

    def tell(self, tap: Tap) -> tuple[Kept[BoardTap], bool]:
        """Keep a tap once; the entry, and whether it is new.

        Raises
        ------
        InputError
            A fryer, product, load or time that the day does not have.
        LiftAskedError
            A lift that came early or late, and nothing is said of it.
        """
        self._check(tap)
        with self.store.writing():
            known = next((item for item in self.taps() if item.fact.key == tap.key), None)
            if known is None and tap.what == What.DROP:
                twin = same_drop(self, tap)
                known = next((i for i in self.taps() if twin and i.number == twin.entry_number), None)
            if known is not None:
                return known, False
            taps = lifts_of(self, tap) if tap.what == What.LIFT else [tap]
            kept = [self._keep(one) for one in taps]
            return kept[0], True

    def _keep(self, tap: Tap) -> Kept[BoardTap]:
        fact = self.told_as(**asdict(tap), date=self.bench.date, practice_count=self.practice)
        return write(self.store, fact, moment_of(self.bench.trade, self.bench.date, tap.at_s))

    def _check(self, tap: Tap) -> None:
        if not tap.key or len(tap.key) > 80:
            raise InputError("key", repr(tap.key), "a text of up to 80 letters that no other tap has")
        if tap.what not in list(What):
            raise InputError("what", repr(tap.what), "one of: {known}", values={"known": ", ".join(What)})
        if not 0 <= tap.at_s <= 2 * 86400.0:
            raise InputError("at", tap.at_s, "a time of the business day")
        if not 0 <= tap.pieces_count <= 10_000:
            raise InputError("pieces", tap.pieces_count, "0 to 10,000")
        if tap.what == What.DROP:
            self._check_amount(tap)
        _ = self._fact(tap.what, tap.at_s, tap.fryer, tap.product, (tap.pieces_count, tap.reason, 0))

    def _check_amount(self, tap: Tap) -> None:
        """A drop of no piece, or of more than the fryer's largest load, is none."""
        bench = self.bench
        i = bench.products.index(tap.product) if tap.product in bench.products else -1
        sizes = [x.pieces_count for x in bench.loads[i] if x.fryer == tap.fryer] if i >= 0 else []
        if sizes and not 1 <= tap.pieces_count <= max(sizes):
            raise InputError(
                "pieces",
                tap.pieces_count,
                "1 to {most}, the largest load of this fryer",
                where=self.kitchen.fryer(tap.fryer).name,
                values={"most": max(sizes)},
            )

    def _fact(
        self, what: str, at_s: float, fryer: str, product: str, rest: tuple[int, str, int]
    ) -> Happening:
        bench, (pieces, reason, number) = self.bench, rest
        f = bench.fryers.index(fryer) if fryer in bench.fryers else -1
        i = bench.products.index(product) if product in bench.products else -1
        if what in (What.DROP, What.LIFT, What.FILTER, What.DOWN, What.UP) and f < 0:
            raise InputError(
                "fryer", repr(fryer), "one of: {known}", values={"known": ", ".join(bench.fryers)}
            )
        if what in (What.DROP, What.SOLD, What.COUNT, What.DISCARD, What.OUT, What.IN) and i < 0:
            raise InputError(
                "product", repr(product), "one of: {known}", values={"known": ", ".join(bench.products)}
            )
        load = -1
        if what == What.DROP:
            sizes = [
                (abs(x.pieces_count - pieces), n) for n, x in enumerate(bench.loads[i]) if x.fryer == fryer
            ]
            if not sizes:
                raise InputError(
                    "product", repr(product), "one with a program for {fryer}", values={"fryer": fryer}
                )
            load = min(sizes)[1]
        units = float(pieces) if what != What.UP else bench.trade.warm_up_s / bench.trade.slot_s
        at = (at_s - bench.trade.start_s) / bench.trade.slot_s
        return Happening(
            what=What(what),
            at_n=at,
            fryer=f,
            item=i,
            load=load,
            units_n=units,
            reason=reason,
            entry_number=number,
        )

    # ------------------------------------------------------------ state

    def state(self, now_s: float) -> State:
        """The day at a time of the business day."""
        now = (now_s - self.bench.trade.start_s) / self.bench.trade.slot_s
        facts = [
            self._fact(
                tap.what, tap.at_s, tap.fryer, tap.product, (tap.pieces_count, tap.reason, item.number)
            )
            for item in self.taps()
            for tap in (item.fact,)
        ]
        return self._held(self._played(facts, now))

    def _held(self, state: State) -> State:
        """Fryers in stop-use are down whatever the board was told; only a qualified person's release takes
        them back.
        """
        for key in stopped(self.store) if self.practice is None else ():
            if key in self.bench.fryers:
                state.down[self.bench.fryers.index(key)] = state.now_n
        return state

    def _played(self, facts: list[Happening], now: float) -> State:
        if self.practice is not None:
            return state_of(self.bench.day, facts, now, guests(self.bench.day, self.practice))
        if any(fact.what is What.SOLD for fact in facts):
            return state_of(self.bench.day, facts, now)
        return state_of(self.bench.day, facts, now, expected_path(self.bench.day), told=False)

    def advice(self, state: State) -> list[Advice]:
        """What to do now in every idle fryer."""
        return advised(self.bench, state)

    def rest_of_day(self, state: State, paths: int = 100) -> Outlook:
        """The plan from now on."""
        return outlook(self.bench.day, state, self.bench.par, paths=paths)

    def waste(self, state: State, planned: Outlook | None = None) -> tuple[list[Waste], dict[str, float]]:
        """What was thrown away, by tray and by cause."""
        found = explain(self.bench.day, state, planned.plan.drops if planned else (), self.bench.mix_n)
        return found, total(found)


# ---------------------------------------------------------------- what people see


def stagger(advice: Sequence[Advice], state: State, bench: Bench, now_s: float) -> list[float]:
    """Seconds of the day at which to start each advised action, so that drops and lifts do not need the same
    hands.
    """
    slot = bench.trade.slot_s
    lifts = [bench.trade.start_s + load.lift_n * slot for load in state.in_oil]
    found, clock = [], now_s
    for item in advice:
        if item.kind == "wait":
            found.append(now_s)
            continue
        cook = bench.loads[item.item][item.load].cook_s if item.kind == "drop" else 0.0
        start = clock
        while start < now_s + LONGEST_WAIT_S and any(
            abs(start + cook - x) < STAGGER_S or abs(start - x) < STAGGER_S for x in lifts
        ):
            start += 15.0
        found.append(start)
        clock = start + STAGGER_S
        if cook:
            lifts.append(start + cook)
    return found


def amount(bench: Bench, fact: LoadFact, tr: Callable[[str], str]) -> str:
    """A load in the words of the crew: heads or pieces."""
    per_unit = fact.pieces_count / fact.units_n
    if per_unit > 1 and fact.units_n == 1:
        return say("1 head ({pieces} pieces)", {"pieces": float(fact.pieces_count)}, translate=tr)
    if per_unit > 1:
        return say(
            "{heads} heads ({pieces} pieces)",
            {"heads": fact.units_n, "pieces": float(fact.pieces_count)},
            translate=tr,
        )
    return say("{pieces} pieces", {"pieces": float(fact.pieces_count)}, translate=tr)


def board_view(board: Board, now_s: float, tr: Callable[[str], str] = str) -> dict[str, Any]:
    """Everything the board shows at a time, as plain values."""
    bench, state = board.bench, board.state(now_s)
    open_now = 0 <= state.now_n < bench.day.slots_count
    advice = board.advice(state) if open_now else []
    starts = stagger(advice, state, bench, now_s)
    names = {f.key: f.name for f in board.kitchen.fryers}
    return {
        "date": bench.date.isoformat(),
        "now_s": now_s,
        "clock": time_of_day(now_s),
        "practice": board.practice,
        "open": open_now,
        "advice": [_advice(board, a, s, names, tr) for a, s in zip(advice, starts, strict=True)],
        "fryers": [_fryer(board, state, f, names[key], tr) for f, key in enumerate(bench.fryers)],
        "shelf": [_shelf(board, state, i, tr) for i in range(len(bench.products))],
        "last_drops": _last(bench, level_of(bench.day, state)),
        "level_n": round(level_of(bench.day, state), 2),
        "notes": _notes(board, state, tr),
        "estimated": board.practice is None and not np.isfinite(state.sold_n).any(),
        "loads": [
            [{"fryer": x.fryer, "pieces": x.pieces_count, "text": amount(bench, x, tr)} for x in loads]
            for loads in bench.loads
        ],
        "times": [
            {"fryer": x.fryer, "product": x.product, "pieces": x.pieces_count, "lift_s": x.lift_s}
            for loads in bench.loads
            for x in loads
        ],
        "reasons": [{"value": r, "text": tr(r)} for r in REASONS],
    }


def _advice(
    board: Board, advice: Advice, start_s: float, names: Mapping[str, str], tr: Callable[[str], str]
) -> dict[str, Any]:
    bench = board.bench
    key = bench.fryers[advice.fryer]
    out: dict[str, Any] = {
        "kind": advice.kind,
        "fryer": key,
        "fryer_name": names[key],
        "start_s": start_s,
        "start": time_of_day(start_s),
        "reason": say(advice.reason.text, advice.reason.values, translate=tr),
        "gain_money": round(advice.gain_money, 2),
        "product": "",
        "pieces": 0,
        "caution": "",
    }
    if advice.kind == "drop":
        fact = bench.loads[advice.item][advice.load]
        name = tr(bench.day.items[advice.item].name)
        out |= {"product": fact.product, "pieces": fact.pieces_count, "program": fact.program}
        out["headline"] = say(
            "Drop {product}: {amount} into {fryer}",
            {"product": name, "amount": amount(bench, fact, tr), "fryer": names[key]},
            translate=tr,
        )
        out["caution"] = tr(
            "Shake off ice and water, lower slowly, gloves and sleeves on: wet product makes hot oil boil"
            " over."
        )
    elif advice.kind == "filter":
        out["headline"] = say("Filter turn: {fryer}", {"fryer": names[key]}, translate=tr)
        out["caution"] = tr(
            "Hot oil burns: face shield, long gloves and apron on, heat off before draining, dry pan, one oil"
            " move at a time."
        )
    else:
        out["headline"] = say("Wait: {fryer}", {"fryer": names[key]}, translate=tr)
    return out


def _fryer(board: Board, state: State, f: int, name: str, tr: Callable[[str], str]) -> dict[str, Any]:
    bench, slot = board.bench, board.bench.trade.slot_s
    key = bench.fryers[f]
    row: dict[str, Any] = {
        "key": key,
        "name": name,
        "state": "idle",
        "since_filter": state.since[f],
        "filter_every": bench.day.filter_every_count,
        "pressure": str(board.kitchen.fryer(key).kind) == "pressure",
        "text": tr("At heat, ready"),
    }
    load = next((x for x in state.in_oil if x.fryer == f), None)
    low, high = bank_now(bench.day, state).window(f)
    held = board.practice is None and key in stopped(board.store)
    row["held"] = held
    if f in state.down:
        row |= {
            "state": "down",
            "text": tr("Stop-use: only a named qualified person releases it.") if held else tr("Out of use"),
        }
    elif load is not None:
        fact = bench.loads[load.item][load.load]
        drop = bench.trade.start_s + load.drop_n * slot
        lift = drop + fact.lift_s
        vent = drop + fact.vent_start_s if fact.vent_start_s is not None else None
        row |= {
            "state": "cooking",
            "product": tr(bench.day.items[load.item].name),
            "pieces": round(load.units_n),
            "drop": time_of_day(drop),
            "lift_s": lift,
            "lift": time_of_day(lift),
            "vent_s": vent,
            "text": amount(bench, fact, tr)
            if round(load.units_n) == fact.pieces_count
            else say("{pieces} pieces", {"pieces": load.units_n}, translate=tr),
            "vent_text": tr(
                "Pressure is being let go. Stand back, wait for zero on the gauge and a silent vent, then"
                " open away from you. No clock runs here."
            ),
        }
    elif not low <= state.now_n < high:
        row |= {
            "state": "off",
            "text": say(
                "Planned at heat {from} to {to}",
                {"from": bench.trade.clock_of(low), "to": bench.trade.clock_of(high)},
                translate=tr,
            ),
        }
    else:
        running = [
            at for g, at in state.filters if g == f and at + bench.day.filter_slots_count > state.now_n
        ]
        if running:
            row |= {"state": "filter", "text": tr("Filter turn running: hot oil, keep clear")}
    return row


def _shelf(board: Board, state: State, i: int, tr: Callable[[str], str]) -> dict[str, Any]:
    bench, slot = board.bench, board.bench.trade.slot_s
    trays = []
    for tray in sorted((t for t in state.trays if t.item == i), key=lambda t: t.ends_n):
        lift, ends = bench.trade.start_s + tray.lift_n * slot, bench.trade.start_s + tray.ends_n * slot
        trays.append(
            {
                "left": round(tray.left_n),
                "lift": time_of_day(lift),
                "ends": time_of_day(ends),
                "ends_s": ends,
                "expired": tray.ends_n <= state.now_n,
            }
        )
    return {
        "product": bench.products[i],
        "name": tr(bench.day.items[i].name),
        "out": i in state.out,
        "count": round(state.shelf(i)),
        "trays": trays,
        "expired": round(sum(t.left_n for t in state.expired if t.item == i)),
    }


def _last(bench: Bench, level: float) -> list[dict[str, str]]:
    slots = last_drops(bench.day, level)
    return [
        {"name": item.name, "at": bench.trade.clock_of(t) if t >= 0 else ""}
        for item, t in zip(bench.day.items, slots, strict=True)
    ]


def _notes(board: Board, state: State, tr: Callable[[str], str]) -> list[str]:
    names = dict(enumerate(board.bench.fryers))
    found = []
    for note in state.notes[-6:]:
        values = dict(note.values)
        if "fryer" in values:
            values["fryer"] = board.kitchen.fryer(names[int(values["fryer"])]).name
        found.append(say(note.text, values, translate=tr))
    for tray in state.expired:
        found.append(
            say(
                "{count} {product} are past their hold life: throw them away and say so.",
                {"count": tray.left_n, "product": board.bench.day.items[tray.item].name},
                translate=tr,
            )
        )
    return found


def tap_of(values: Mapping[str, Any]) -> Tap:
    """A tap from a form or JSON; InputError names what cannot be read."""

    def number(name: str, default: str = "0") -> float:
        text = str(values.get(name, default) or default)
        try:
            found = float(text)
        except ValueError as error:
            raise InputError(name, repr(text), "a number") from error
        if not np.isfinite(found):
            raise InputError(name, repr(text), "a number")
        return found

    words = {
        name: str(values.get(name, "") or "")[:120]
        for name in ("key", "what", "fryer", "product", "reason", "who")
    }
    return Tap(at_s=number("at_s", "-1"), pieces_count=int(number("pieces")), **words)
