"""The invented fortnight of the demo: its scenario played through the acts of the rooms, at its own clock."""

from __future__ import annotations

import datetime as dt
import io
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import nullcontext
from dataclasses import dataclass, replace
from itertools import groupby
from typing import Any

from frywright.catalog import load as catalog
from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, moment_of, trade_of
from frywright.model.errors import InputError
from frywright.model.program import Stage
from frywright.model.trade import time_of_day_s
from frywright.model.units import parse_clock, to_inside
from frywright.rooms.care.close import STORE_KEY, sign_close
from frywright.rooms.care.training import keep_person, sign_skill
from frywright.rooms.care.upkeep import tasks_for, tick
from frywright.rooms.care.vat import tell_oil
from frywright.rooms.clock import acting, here, now, played
from frywright.rooms.cook.compare import read_back, value_names
from frywright.rooms.cook.life import keep_card, put_in_service, retire, tell_keyed
from frywright.rooms.cook.next_probing import keep_planned, next_probing
from frywright.rooms.cook.programs import record_proof, record_readback, save_program
from frywright.rooms.cook.slots import tell_slot
from frywright.rooms.day.board import Board, Tap
from frywright.rooms.day.day import Bench, bench_for
from frywright.rooms.day.practice import demo_sales
from frywright.rooms.day.sales import keep_sales
from frywright.rooms.kitchen import (
    has_kitchen,
    kitchen_number,
    kitchen_text,
    remember_kitchen,
    remembered_kitchen,
)
from frywright.rooms.readings import tell_probe
from frywright.rooms.records.corrective import case_of, earlier_loads, tell_step
from frywright.rooms.records.gaps import explain_gap
from frywright.rooms.standing import slot_of
from frywright.rooms.thermometers import record_check
from frywright.trial.kitchens import demo_text
from frywright.trial.machine import settings_of
from frywright.trial.proof import prove_program

FILE = "demo/kitchen.toml"
PROOF_SAMPLES, MOST_READINGS = 32, 60
"""Loads of an invented proof, fewer than the desk's so that the demo opens at once; readings at the lift."""
EARLIER_WEEKS, LATER_WEEKS = 2, 2
"""Weeks of invented sales before the fortnight, and in it."""
SPREAD_F = (-1, 0, 2)
TIMES = {"proved": "09:00", "probed": "13:30", "card": "15:30", "keyed": "15:40", "read": "15:50"}
TIMES |= {"service": "16:00", "retired": "16:10", "changed": "16:20"}


@dataclass(frozen=True, slots=True)
class Play:
    """One act at its moment. ``quick`` acts read nothing that another quick one beside them writes."""

    at: dt.datetime
    who: str
    act: Callable[[], object]
    quick: bool = False


def play_demo(store: Store) -> None:
    """Play the fortnight into a store without a kitchen; any other stays as it is."""
    if not has_kitchen(store):
        _Fortnight(store, catalog.table("demo/fortnight.toml")).play()


class _Fortnight:
    """The scenario on its way into a store. Raises InputError: its kitchen is not an invented one: nobody's
    records are made up.
    """

    def __init__(self, store: Store, told: Mapping[str, Any]) -> None:
        self.store, self.told, self.until = store, told, now()
        text = demo_text() + told["kitchen"]["more"]
        made = parse_kitchen(text, FILE)
        if not made.site.invented:
            raise InputError("kitchen", made.site.name, "an invented one")
        self.trade = trade_of(made)
        self.today = business_time(self.trade, self.until)[0]
        with played(self.at(told["first_day"], "05:00")):
            remember_kitchen(store, text, FILE)
            self.kitchen = remembered_kitchen(store)
            self._read_sales(told["first_day"] + 1, EARLIER_WEEKS)

    def at(self, days_ago: int, time: str) -> dt.datetime:
        """A time of a day."""
        date = self.today - dt.timedelta(days=days_ago)
        return moment_of(self.trade, date, time_of_day_s(time))

    def who(self, role: str) -> str:
        """An invented person of a role."""
        found = self.told["people"]["contractor" if role == "licensed" else role]
        return str(found if isinstance(found, str) else found[0])

    def play(self) -> None:
        """Every act that lies in the past, in order and at its moment; quick ones together at once."""
        with self.store.reading():
            plays = sorted((p for p in self._plays() if p.at <= self.until), key=lambda p: p.at)
            for quick, group in groupby(plays, key=lambda p: p.quick):
                if quick:
                    with self.store.writing():
                        for play in group:
                            _run(play)
                    continue
                for play in group:
                    _run(play)
                    self.kitchen = remembered_kitchen(self.store)

    def _plays(self) -> Iterator[Play]:
        yield Play(self.at(1, "22:45"), self.who("lead"), lambda: self._read_sales(1, LATER_WEEKS))
        yield from self._people()
        yield from self._loads()
        yield from self._readings()
        yield from self._thermometers()
        yield from self._oil()
        yield from self._care()
        yield from self._close()
        yield from self._change()
        for life in self.told["life"]:
            yield from self._life(life)

    # ------------------------------------------------------------ floor

    def _read_sales(self, days_ago: int, weeks: int) -> None:
        last = self.today - dt.timedelta(days=days_ago)
        data = demo_sales(self.kitchen, last, weeks, seed=weeks)
        keep_sales(self.store, self.kitchen, io.BytesIO(data), f"till to {last}.csv")

    def _loads(self) -> Iterator[Play]:
        bench = bench_for(self.store, self.kitchen, self.today, tune=False)
        for day in range(self.told["days_count"], -1, -1):
            for n, row in enumerate(self.told["drop"]):
                yield from self._load(bench, day, n, row)

    def _load(self, bench: Bench, day: int, n: int, row: Mapping[str, Any]) -> Iterator[Play]:
        """A load dropped, and lifted when the card's time is over."""
        date = self.today - dt.timedelta(days=day)
        who = self.told["people"]["crew"][(day + n) % 2]
        tap = Tap(
            key=f"demo {date} {n}",
            what="drop",
            at_s=time_of_day_s(row["at"]),
            fryer=row["fryer"],
            product=row["product"],
            pieces_count=row["pieces"],
            who=who,
        )
        board = Board(store=self.store, kitchen=self.kitchen, bench=replace(bench, date=date))
        dropped = self.at(day, row["at"])
        yield Play(dropped, who, lambda: board.tell(tap), quick=True)
        sizes = [
            x for loads in bench.loads for x in loads if (x.fryer, x.product) == (tap.fryer, tap.product)
        ]
        lift_s = min(sizes, key=lambda x: abs(x.pieces_count - tap.pieces_count)).lift_s
        out = replace(tap, key=f"{tap.key} out", what="lift", at_s=tap.at_s + lift_s)
        yield Play(dropped + dt.timedelta(seconds=lift_s), who, lambda: board.tell(out), quick=True)

    def _readings(self) -> Iterator[Play]:
        low = {(r["days_ago"], r["fryer"]) for r in self.told["low"]}
        crew = self.told["people"]["crew"]
        for day in range(self.told["days_count"], -1, -1):
            for n, row in enumerate(self.told["reading"]):
                temps = row["temps_f"]
                if (day, row["fryer"]) not in low:
                    yield self._reading(day, row, temps[day % len(temps)], crew[(day + n) % 2])
        for row in self.told["low"]:
            yield from self._low(row, crew[0])

    def _reading(self, day: int, row: Mapping[str, Any], temp_f: float, who: str) -> Play:
        values = {**_some(row, "fryer", "product", "pieces"), "thermometer": "T1", "who": who}
        values["temp"] = f"{temp_f} F"
        moment = self.at(day, row["at"])
        return Play(moment, who, lambda: tell_probe(self.store, self.kitchen, values), quick=True)

    def _low(self, row: Mapping[str, Any], who: str) -> Iterator[Play]:
        opened: list[int] = []
        values = {**_some(row, "fryer", "product", "pieces"), "thermometer": "T1", "who": who}
        values["temp"] = f"{row['temp_f']} F"

        def found() -> None:
            case = tell_probe(self.store, self.kitchen, values)[1]
            opened.append(case.number if case else 0)

        start = self.at(row["days_ago"], row["at"])
        yield Play(start, who, found)
        steps: list[dict[str, Any]] = [{"step": "recook"}]
        if row["closed"]:
            steps += [
                {"step": "reprobe", "temp": f"{row['temp_after_f']} F", "thermometer": "T1"},
                {"step": "disposition", "disposition": "served"},
                {"step": "cause", "cause": row["cause"], "words": row["words"]},
                {"step": "earlier", "decision": "released", "words": "probed again, above the limit"},
                {"step": "closed"},
            ]
        for n, step in enumerate(steps, 1):
            told = {**step, "who": who}
            yield Play(start + dt.timedelta(minutes=4 * n), who, _step(self, opened, told))

    def _thermometers(self) -> Iterator[Play]:
        who = self.who("lead")
        for row in self.told["thermometer"]:
            ice, boil = (to_inside(row[name], "f") for name in ("ice_f", "boil_f"))
            for day in row["days_ago"]:
                act = _checked(self, row["name"], ice, boil)
                yield Play(self.at(day, "09:45"), who, act)

    # ------------------------------------------------------------ care

    def _oil(self) -> Iterator[Play]:
        crew = self.told["people"]["crew"][1]
        for row in self.told["oil"]:

            def tell(what: str, amount: str, day: int, at: str, vat: str = row["vat"]) -> Play:
                values = {"vat": vat, "what": what, "amount": amount, "who": crew}
                moment = self.at(day, at)
                return Play(moment, crew, lambda: tell_oil(self.store, self.kitchen, values), quick=True)

            for day, level in row["readings"]:
                yield tell("reading", f"{level}", day, "21:40")
            for day in row.get("changed", ()):
                yield tell("discard", "", day, "21:55")
            for day in range(self.told["days_count"], 0, -1):
                yield tell("filter", "", day, "21:50")
                yield tell("top_up", f"{row['top_up_lb']} lb", day, "22:00")

    def _care(self) -> Iterator[Play]:
        for row in self.told["care"]:
            who, moment = self.who(row["who"]), self.at(row["days_ago"], "08:30")
            for fryer in (f for f in self.kitchen.fryers if f.key not in row.get("but", ())):
                known = [t.key for t in tasks_for(self.kitchen, fryer)]
                for task in (t for t in row["tasks"] if t in known):
                    values = {"fryer": fryer.key, "task": task, "who": who, "role": row["who"]}
                    values |= {"note": row.get("note", ""), **row.get("figures", {})}
                    yield Play(moment, who, _ticked(self, values), quick=True)

    def _close(self) -> Iterator[Play]:
        row, who = self.told["close"], self.who("lead")
        for day in range(self.told["days_count"], 0, -1):
            moment = self.at(day, row["at"])
            if day in row["but"]:
                date = (self.today - dt.timedelta(days=day)).isoformat()
                values = {"date": date, "lack": "close", "words": row["why"], "who": who}
                yield Play(self.at(day - 1, "09:30"), who, _explained(self, values))
                continue
            for step in row["steps"]:
                values = {"fryer": STORE_KEY, "step": step, "who": who}
                yield Play(moment, who, _signed(self, values), quick=True)

    def _people(self) -> Iterator[Play]:
        for name in _every(self.told["people"]):
            yield Play(self.at(self.told["first_day"], "08:00"), self.who("owner"), _listed(self, name))
        for row in self.told["skill"]:
            for skill in row["skills"]:
                values = {"person": row["who"], "skill": skill, "observed_by": self.who("lead")}
                yield Play(self.at(row["days_ago"], "15:00"), self.who("lead"), _shown(self, values))

    # ------------------------------------------------------------ programs

    def _change(self) -> Iterator[Play]:
        row = self.told["change"]

        def change() -> None:
            text = kitchen_text(self.store)
            head, mark, rest = text.partition(f'key = "{row["fryer"]}"')
            changed = head + mark + rest.replace(row["from"], row["to"], 1)
            remember_kitchen(self.store, changed, FILE, row["reason"])

        yield Play(self.at(row["days_ago"], row["at"]), self.who("owner"), change)

    def _life(self, row: Mapping[str, Any]) -> Iterator[Play]:
        acts: dict[str, tuple[str, Callable[[], object]]] = {
            "proved": ("lead", lambda: self._prove(row["program"])),
            "probed": ("lead", lambda: self._probe(row)),
            "card": ("lead", lambda: self._print(row["program"])),
            "keyed": ("lead", lambda: tell_keyed(self.store, self.kitchen, row["program"], self.who("lead"))),
            "read": ("lead", lambda: self._read(row["program"], row.get("slip", ()))),
            "service": (
                "owner",
                lambda: put_in_service(self.store, self.kitchen, row["program"], self.who("owner")),
            ),
            "retired": (
                "owner",
                lambda: retire(self.store, self.kitchen, row["program"], self.who("owner"), row["reason"]),
            ),
            "changed": ("owner", lambda: self._change_program(row)),
        }
        for name, (role, act) in acts.items():
            if name in row:
                yield Play(self.at(row[name], TIMES[name]), self.who(role), act)

    def _prove(self, name: str) -> None:
        kitchen = self.kitchen
        told = prove_program(kitchen, kitchen.program(name), samples=PROOF_SAMPLES)
        record_proof(self.store, told, kitchen_number(self.store))

    def _probe(self, row: Mapping[str, Any]) -> None:
        """Readings at the lift as the plan asks for them, four minutes apart, until they decide."""
        for n in range(MOST_READINGS):
            kitchen = remembered_kitchen(self.store)
            found = next_probing(self.store, kitchen, row["program"])
            if found.state != "open":
                return
            piece = found.rows[0].piece
            values = {"cut": piece.cut, "place": piece.place, "load_kind": piece.load, "load_number": ""}
            values |= {"thermometer": "T1", "who": self.who("lead")}
            values["temp"] = f"{row['core_f'] + SPREAD_F[n % len(SPREAD_F)]} F"
            values["last"] = str(found.readings[-1].kept.number if found.readings else 0)
            with played(now() + dt.timedelta(minutes=4)) if n else nullcontext():
                keep_planned(self.store, kitchen, row["program"], values)

    def _print(self, name: str) -> None:
        program = self.kitchen.program(name)
        slot = slot_of(self.store, self.kitchen, program)
        tell_slot(self.store, self.kitchen, program, slot)
        keep_card(self.store, program, slot)

    def _read(self, name: str, slip: Sequence[str]) -> None:
        kitchen, program = self.kitchen, self.kitchen.program(name)
        slot = slot_of(self.store, kitchen, program)
        values = [v.text for v in value_names(kitchen, program, slot)]
        if slip:
            values[values.index(slip[1])] = slip[2]
        settings = {s.key: s.card for s in settings_of(kitchen, program)}
        result = read_back(kitchen, program, slot, values, settings)
        people = (self.told["people"]["crew"][0], self.who("lead"))
        record_readback(self.store, program, slot, result, people, now().isoformat())

    def _change_program(self, row: Mapping[str, Any]) -> None:
        program = self.kitchen.program(row["program"])
        stage = Stage(set_c=to_inside(row["set_f"], "f"), duration_s=parse_clock(row["duration"]))
        longer = replace(program, version=program.version + 1, stages=(stage,))
        save_program(self.store, self.kitchen, longer, origin="designed")


def _run(play: Play) -> None:
    """One act at its moment and by its person."""
    with acting(replace(here(), author=play.who, moment=play.at)):
        play.act()


def _some(row: Mapping[str, Any], *names: str) -> dict[str, Any]:
    return {name: row[name] for name in names}


def _every(people: Mapping[str, Any]) -> list[str]:
    """Names of everybody who works there."""
    inside = [v for k, v in people.items() if k != "contractor"]
    return [name for found in inside for name in (found if isinstance(found, list) else [found])]


def _step(play: _Fortnight, opened: list[int], values: Mapping[str, Any]) -> Callable[[], object]:
    """A step of the case just opened; what is decided of earlier loads, of each."""

    def tell() -> None:
        kitchen, number = play.kitchen, opened[0]
        loads: Sequence[Mapping[str, Any]] = [{}]
        if values["step"] == "earlier":
            found = earlier_loads(play.store, kitchen, case_of(play.store, number))
            loads = [{"load": str(load.number)} for load in found]
        for load in loads:
            tell_step(play.store, kitchen, number, {**values, **load})

    return tell


def _checked(play: _Fortnight, name: str, ice_c: float, boil_c: float) -> Callable[[], object]:
    return lambda: record_check(play.store, play.kitchen, name, ice_c, boil_c)


def _ticked(play: _Fortnight, values: Mapping[str, Any]) -> Callable[[], object]:
    return lambda: tick(play.store, play.kitchen, values)


def _signed(play: _Fortnight, values: Mapping[str, Any]) -> Callable[[], object]:
    return lambda: sign_close(play.store, play.kitchen, values)


def _explained(play: _Fortnight, values: Mapping[str, Any]) -> Callable[[], object]:
    return lambda: explain_gap(play.store, play.kitchen, values)


def _listed(play: _Fortnight, name: str) -> Callable[[], object]:
    return lambda: keep_person(play.store, play.kitchen, {"name": name})


def _shown(play: _Fortnight, values: Mapping[str, Any]) -> Callable[[], object]:
    return lambda: sign_skill(play.store, play.kitchen, values)
