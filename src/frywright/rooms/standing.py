"""What more than one room asks of the ledger: fryers out of use, what they hold, the oil limit in force."""

from __future__ import annotations

import datetime as dt
from collections.abc import Hashable, Mapping
from dataclasses import dataclass, replace
from itertools import takewhile

from frywright.catalog import load as catalog
from frywright.design.controller import render
from frywright.design.slots import slots_of
from frywright.ledger.facts.care import Reopened, StopUse
from frywright.ledger.facts.cook import ReadBackTaken, SlotChosen
from frywright.ledger.facts.day import BoardTap, CloseStepSigned, standing
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.life import CardPrinted
from frywright.ledger.facts.oil import OilLimitSet
from frywright.ledger.facts.people import RuleAnswered
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, local_time, usual_trade
from frywright.model.errors import Phrase
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import BARE, UNITS, clock, to_inside
from frywright.rooms.kitchen import judged_on
from frywright.trial.machine import settings_of
from frywright.trial.naming import away_words
from frywright.trial.prove_again import again_line
from frywright.verdicts.place import Place, place_of


def stopped(store: Store) -> dict[str, Kept[StopUse]]:
    """Fryers in stop-use and the entry that stopped each; nothing but a qualified person's release takes one
    off.
    """
    released = {e.fact.fryer: e.number for e in store.facts(Reopened)}
    return {e.fact.fryer: e for e in store.facts(StopUse) if e.number > released.get(e.fact.fryer, 0)}


def everyone_out(store: Store) -> tuple[str, str, str] | None:
    """Fryer, why and what to do where a stop-use stands at which nobody stays in the kitchen."""
    rows = {row["key"]: row for row in catalog.table("care/stop_use.toml")["hazard"]}
    for key, entry in stopped(store).items():
        row = rows.get(entry.fact.reason, {})
        if row.get("everyone_out"):
            return key, str(row["why"]), str(row["act"])
    return None


def taps_since(store: Store, day: dt.date) -> list[Kept[BoardTap]]:
    """What the board was told of a day and those after it, without what was taken back; newest first."""
    early = day - dt.timedelta(days=2)  # a tablet that was off line tells late
    found = takewhile(lambda e: e.fact.date >= early, store.facts(BoardTap, newest_first=True))
    return [e for e in standing(found) if e.fact.date >= day]


def heat_off(store: Store, day: dt.date) -> set[str]:
    """Fryers whose heat is signed off for the night of a day."""
    return {e.fact.fryer for e in closed_steps(store, day) if e.fact.step == "heat_off"}


def closed_steps(store: Store, day: dt.date) -> list[Kept[CloseStepSigned]]:
    """Signed steps of a day's close, oldest first. A load dropped after the heat was signed off takes that
    signature back.
    """
    early = day - dt.timedelta(days=2)
    near = takewhile(lambda e: e.fact.date >= early, store.facts(CloseStepSigned, newest_first=True))
    signed = [e for e in near if e.fact.date == day][::-1]
    if not any(e.fact.step == "heat_off" for e in signed):
        return signed
    drops = {e.fact.fryer: e.happened_at for e in taps_since(store, day)[::-1] if e.fact.what == "drop"}
    return [
        e
        for e in signed
        if e.fact.step != "heat_off" or drops.get(e.fact.fryer, e.happened_at) <= e.happened_at
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class CareRow:
    """A task of a fryer in people's words: who does it, when it is due, when it was last done."""

    fryer: str
    name: str
    task: str
    title: str
    who: str
    who_words: str
    takes_min: int
    asks: str
    parts: str
    state: str  # overdue, today, soon, later or unknown
    state_words: str
    days: int | None
    date: str
    counter: str
    last_date: str
    last_who: str
    last_note: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """What a fryer is known to hold of a program: by its newest read-back, else unknown."""

    name: str
    place: str
    again: str
    fryer: str
    version: str
    state: str  # unknown, differs, old version, settings not read or current
    clock: str
    read_at: str
    read_version: str


def _name(fact: ReadBackTaken | SlotChosen | CardPrinted) -> str:
    return fact.name


def newest_readbacks(store: Store) -> Mapping[Hashable, Kept[ReadBackTaken]]:
    """The newest read-back of each program."""
    return store.newest_by(ReadBackTaken, _name)


def held_status(store: Store, kitchen: Kitchen, translate: Translate = str) -> list[Held]:
    """What each fryer is known to hold of each program."""
    newest = newest_readbacks(store)
    rows = []
    for name in sorted({p.name for p in kitchen.programs}):
        program = kitchen.program(name)
        item = newest.get(name)
        if item is None:
            state = "unknown"
        elif not item.fact.matches:
            state = "differs"
        elif item.fact.version != program.version:
            state = "old version"
        else:
            state = "current" if settings_read(kitchen, program, item.fact) else "settings not read"
        row = Held(
            name=name,
            place=", ".join(away_words(kitchen, program, translate)),
            again=again_line(kitchen, program, translate),
            fryer=kitchen.fryer(program.fryer).name,
            version=str(program.version),
            state=state,
            clock=clock(program.clock_s),
            read_at=local_time(kitchen, item.recorded_at) if item else "",
            read_version=str(item.fact.version) if item else "",
        )
        rows.append(row)
    return rows


def told_slots(store: Store) -> dict[str, int]:
    """Slots chosen or printed on a card, newest last, by program."""
    told = [(e.number, e.fact.name, e.fact.slot) for e in store.newest_by(SlotChosen, _name).values()]
    told += [(e.number, e.fact.name, e.fact.slot) for e in store.newest_by(CardPrinted, _name).values()]
    return {name: slot for _, name, slot in sorted(told)}


def slot_of(store: Store, kitchen: Kitchen, program: Program) -> int:
    """Slot of a program here."""
    return slots_of(kitchen, program.fryer, told_slots(store))[program.name]


def figure_of(store: Store, kitchen: Kitchen, program: Program) -> tuple[int, str]:
    """Slot of a program here, and the check figure its card has in that slot."""
    slot = slot_of(store, kitchen, program)
    return slot, render(program, kitchen.fryer(program.fryer).controller, slot).figure


def settings_read(kitchen: Kitchen, program: Program, taken: ReadBackTaken) -> bool:
    """Whether a read-back holds every machine setting of the fryer's sheet as it is today."""
    read = {(s.name, s.value) for s in taken.settings or () if s.name}
    wanted = {(s.name, s.card) for s in settings_of(kitchen, program) if s.own}
    return wanted <= read


def oil_limit_here(store: Store, kitchen: Kitchen, day: dt.date | None = None) -> tuple[float, Phrase]:
    """The oil limit that holds here, now or at the end of a day: the place's, tightened by what the house had
    set by then; without a figure of the place the house's. A place chosen for the oil alone, as older stores
    have it, holds too where it is stricter.
    """
    trade = usual_trade(kitchen)
    place = place_of(kitchen if day is None else judged_on(store, kitchen, day))
    for item in store.facts(OilLimitSet, newest_first=True):
        if day is None or business_time(trade, item.recorded_at)[0] <= day:
            return place.oil_limit(item.fact.house_pct, item.fact.place)
    return place.oil_limit()


def answers_of(store: Store, kitchen: Kitchen, day: dt.date | None = None) -> dict[str, Kept[RuleAnswered]]:
    """What the authority of the kitchen's place said, by what it is about, now or at the end of a day."""
    trade, found = usual_trade(kitchen), dict[str, Kept[RuleAnswered]]()
    for item in store.facts(RuleAnswered):
        here = item.fact.jurisdiction == kitchen.site.jurisdiction
        if here and (day is None or business_time(trade, item.recorded_at)[0] <= day):
            found[item.fact.subject] = item
    return {key: e for key, e in found.items() if (e.fact.years_count, e.fact.hold_c) != (None, None)}


def place_here(store: Store, kitchen: Kitchen, day: dt.date | None = None) -> Place:
    """Where a kitchen, as it was then, stands; what its authority had said, now or at the end of a day."""
    said = {key: item.fact for key, item in answers_of(store, kitchen, day).items()}
    ages = {key: fact.years_count for key, fact in said.items() if fact.years_count is not None}
    holds = next((fact.hold_c for fact in said.values() if fact.hold_c is not None), None)
    return replace(place_of(kitchen), said_years=ages, said_hold_c=holds)


def assumed_day(kitchen: Kitchen, tr: Translate = str) -> str:
    """What counts as hours and prices where the kitchen has entered none; empty where it has."""
    if kitchen.trade is not None:
        return ""
    usual, unit = usual_trade(kitchen), BARE[kitchen.site.units]["mass"]
    return tr(
        "No hours and prices are entered. Until they are, these estimates count: open {opens} to {closes},"
        " {oil} a {unit} of oil, {power} a kWh."
    ).format(
        opens=usual.opens,
        closes=usual.closes,
        oil=f"{usual.oil_kg_money * to_inside(1.0, unit):.2f}",
        unit=UNITS[unit].sign,
        power=f"{usual.kwh_money:.2f}",
    )


def fryer_name(kitchen: Kitchen, key: str | None) -> str:
    """Name of a fryer; of one that is no longer in the kitchen its key."""
    return next((f.name for f in kitchen.fryers if f.key == key), key or "")


def product_name(kitchen: Kitchen, key: str | None) -> str:
    """Name of a product; of one that is no longer in the kitchen its key."""
    return next((p.name for p in kitchen.products if p.key == key), key or "")
