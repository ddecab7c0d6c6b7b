"""Hand readings: kept with the limit of their food, and a case opened at once where one is below it."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from typing import Any

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CaseOpened, HoldRead, Reading, lower_of
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.units import is_count
from frywright.rooms.clock import now
from frywright.rooms.hall import another, by_name, given_words, in_turn, typed, write
from frywright.rooms.kitchen import judged_at
from frywright.rooms.standing import place_here
from frywright.rooms.thermometers import check_valid, corrected_c
from frywright.trial.ask import hand_limit_c
from frywright.verdicts.place import place_of


def level_of(kitchen: Kitchen, product: str, at: dt.datetime) -> float | None:
    """Level of a hand reading of a product here on the day of a moment with the thermometer's error on top
    [degC]; None where neither a rule nor the house speaks of it. A product nobody named is judged as poultry.
    """
    day = business_time(usual_trade(kitchen), at)[0]
    limit_c = place_of(kitchen).hand_level_c(day=day)
    if product:
        limit_c = hand_limit_c(kitchen, kitchen.product(product), day)
    return None if limit_c is None else limit_c + kitchen.site.thermometer_error_k


def read_core(kitchen: Kitchen, text: str, name: str) -> float:
    """The core of a piece as typed, in the kitchen's units [degC]. Raises InputError: it is no temperature,
    or none that a core in the kitchen can have.
    """
    return core_of(kitchen.site.read(text, "temperature", name), name)


def core_of(found: float, name: str) -> float:
    """A temperature [degC] that the core of a piece in the kitchen can have. Raises InputError: none that it
    can have.
    """
    if not -5.0 <= found <= 130.0:
        raise InputError(
            name, found, "{low_c} to {high_c} for the core of a piece", unit="c", low_c=-5.0, high_c=130.0
        )
    return found


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbedFor:
    """The program and the piece that a reading is of, where a plan asked for it."""

    program: str
    version: int
    stages: str
    cut: str
    place: str
    load_kind: str
    load_number: int
    mass_kg: float | None
    rest_core_c: float | None
    rest_s: float | None


def tell_probe(
    store: Store,
    kitchen: Kitchen,
    values: Mapping[str, Any],
    at: dt.datetime | None = None,
    bound: ProbedFor | None = None,
) -> tuple[Kept[Reading], Kept[CaseOpened] | None]:
    """Keep a reading of a load's coldest piece; below the limit a case opens in the same breath. It is judged
    as read and with its thermometer's own error taken off: either below opens the case. Raises InputError: an
    unknown fryer or product, an impossible reading, or no thermometer's name.

    Parameters
    ----------
    values : fryer, product, temp, thermometer, pieces, who
    bound : the program and the piece it is of
    """
    moment = at or now()
    kitchen = judged_at(store, kitchen, moment)
    fryer, product = (
        kitchen.fryer(str(values.get("fryer", ""))),
        kitchen.product(str(values.get("product", ""))),
    )
    core = read_core(kitchen, str(values.get("temp", "")), "temp")
    thermometer, who = thermometer_typed(values), typed(values, "who")
    pieces = pieces_count(values.get("pieces", ""))
    level = level_of(kitchen, product.key, moment)
    fact = Reading(
        name=f"{product.name}, {fryer.name}",
        thermometer=thermometer,
        core_c=core,
        limit_c=None if level is None else level - kitchen.site.thermometer_error_k,
        load=f"{product.key} {fryer.key}",
        units_count=pieces,
        fryer=fryer.key,
        product=product.key,
        who=who[:80],
        checked=check_valid(store, thermometer, moment),
        corrected_c=corrected_c(store, thermometer, core, moment),
        **(asdict(bound) if bound else {}),
    )
    with store.writing():
        reading = write(store, fact, moment)
        return reading, _case_of(store, reading, level)


def _case_of(store: Store, reading: Kept[Reading], level: float | None) -> Kept[CaseOpened] | None:
    """The case of a reading that does not meet its level."""
    fact = reading.fact
    if level is None or fact.judged_c >= level:
        return None
    short = CaseOpened(
        what="probe",
        reading_number=reading.number,
        fryer=fact.fryer or "",
        product=fact.product or "",
        pieces_count=int(fact.units_count),
        core_c=fact.core_c,
        limit_c=level,
        who=fact.who or "",
        words="",
        corrected_c=fact.corrected_c,
    )
    return write(store, short, reading.happened_at)


@in_turn
def mend_reading(
    store: Store, kitchen: Kitchen, number: int, values: Mapping[str, Any]
) -> tuple[Kept[Reading], Kept[CaseOpened] | None]:
    """Put the right figure in the place of a mistyped one, which stays on record. A case the mistyped one
    opened stays open; the right figure opens one where it is below. Raises InputError: no such reading, one
    that was replaced already, the same figure, no name or reason, or nobody else.

    Parameters
    ----------
    values : temp (what the thermometer showed), words (how it came), who; second, somebody else who saw the
        thermometer, where a reading below its limit would become one that meets it
    """
    old = store.fact(number, Reading)
    if old is None or store.replaced_by(number) is not None:
        raise InputError("reading", number, "the number of a reading that nothing has replaced")
    kitchen = judged_at(store, kitchen, old.happened_at)
    core = read_core(kitchen, str(values.get("temp", "")), "temp")
    who, words, second = (typed(values, n) for n in ("who", "words", "second"))
    if core == old.fact.core_c:
        raise InputError("temp", core, "another figure than the one on record", unit="c")
    who = by_name(who, "the name of the person who read the thermometer")
    given_words(words, "words", "how the figure came to be wrong, in words")
    made = replace(
        old.fact,
        core_c=core,
        corrected_c=corrected_c(store, old.fact.thermometer, core, old.happened_at),
        who=who,
        words=words[:200],
        second=second[:80] or None,
    )
    level = level_of(kitchen, old.fact.product or "", old.happened_at)
    if level is not None and old.fact.judged_c < level <= made.judged_c:
        another(who, second, "somebody else who saw the thermometer too")
    kept = write(store, made, old.happened_at, replaces=number)
    known = any(e.fact.reading_number == number for e in store.facts(CaseOpened, after=number))
    return kept, None if known else _case_of(store, kept, level)


def tell_hold(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], at: dt.datetime | None = None
) -> tuple[Kept[HoldRead], Kept[CaseOpened] | None]:
    """Keep a reading of food in hot holding; below the place's limit, with the thermometer's error on top, a
    case opens. Raises InputError: an unknown product, an impossible reading, no place or no thermometer's
    name.

    Parameters
    ----------
    values : kept_in (cabinet or shelf), product, temp, thermometer, who
    """
    moment = at or now()
    kitchen = judged_at(store, kitchen, moment)
    day = business_time(usual_trade(kitchen), moment)[0]
    product = kitchen.product(str(values.get("product", "")))
    core = read_core(kitchen, str(values.get("temp", "")), "temp")
    kept_in, who = (typed(values, n) for n in ("kept_in", "who"))
    if len(kept_in) < 2:
        raise InputError("kept_in", repr(kept_in), "the cabinet or shelf it is kept in")
    thermometer, limit = thermometer_typed(values), place_here(store, kitchen, day).hot_hold_c()
    fact = HoldRead(
        kept_in=kept_in[:60],
        product=product.key,
        core_c=core,
        limit_c=limit,
        thermometer=thermometer,
        checked=check_valid(store, thermometer, moment),
        corrected_c=corrected_c(store, thermometer, core, moment),
        who=who[:80],
    )
    level = None if limit is None else limit + kitchen.site.thermometer_error_k
    with store.writing():
        reading = write(store, fact, moment)
        if level is None or lower_of(core, fact.corrected_c) >= level:
            return reading, None
        short = CaseOpened(
            what="hold",
            reading_number=reading.number,
            fryer="",
            product=product.key,
            pieces_count=0,
            core_c=core,
            limit_c=level,
            who=who[:80],
            words=kept_in[:60],
            corrected_c=fact.corrected_c,
        )
        return reading, write(store, short, moment)


def thermometer_typed(values: Mapping[str, Any]) -> str:
    """The mark on the thermometer, as typed. Raises InputError: none was typed."""
    found = typed(values, "thermometer")
    if not found:
        raise InputError(
            "thermometer",
            "empty",
            "the mark on the thermometer: a reading without it cannot be looked back at",
        )
    return found[:60]


def pieces_count(text: Any) -> float:
    """Pieces as typed; an empty box is none."""
    word = str(text or "0").strip()
    if not is_count(word) or int(word) > 10_000:
        raise InputError("pieces", repr(word), "a whole number up to 10,000")
    return float(word)
