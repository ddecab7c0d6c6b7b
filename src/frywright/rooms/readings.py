"""Hand readings: kept with the limit of their food, and a case opened at once where one is below it."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from typing import Any

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CaseOpened, Reading
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.units import is_count
from frywright.rooms.clock import now
from frywright.rooms.hall import write
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
    """The core of a piece as typed, in the kitchen's units [degC].

    Raises
    ------
    InputError
        It is no temperature, or none that a core in the kitchen can have.
    """
    found = kitchen.site.read(text, "temperature", name)
    if not -5.0 <= found <= 130.0:
        raise InputError(
            name,
            found,
            "{low_c} to {high_c} for the core of a piece",
            unit="c",
            values={"low_c": -5.0, "high_c": 130.0},
        )
    return found


def tell_probe(
    store: Store,
    kitchen: Kitchen,
    values: Mapping[str, Any],
    at: dt.datetime | None = None,
    bound: Mapping[str, Any] | None = None,
) -> tuple[Kept[Reading], Kept[CaseOpened] | None]:
    """Keep a reading of a load's coldest piece; below the limit a case opens in the same breath. It is judged
    as read and with its thermometer's own error taken off: either below opens the case.

    Parameters
    ----------
    values : fryer, product, temp, thermometer, pieces, who
    bound : further fields of the reading: the program and the piece it is of

    Raises
    ------
    InputError
        An unknown fryer or product, an impossible reading, or no thermometer's name.
    """
    fryer, product = (
        kitchen.fryer(str(values.get("fryer", ""))),
        kitchen.product(str(values.get("product", ""))),
    )
    core = read_core(kitchen, str(values.get("temp", "")), "temp")
    thermometer, who = thermometer_typed(values), str(values.get("who", "") or "").strip()
    pieces = pieces_count(values.get("pieces", ""))
    moment, level = at or now(), level_of(kitchen, product.key, at or now())
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
        **(bound or {}),
    )
    with store.writing():
        reading = write(store, fact, moment)
        if level is None or fact.judged_c >= level:
            return reading, None
        short = CaseOpened(
            what="probe",
            reading_number=reading.number,
            fryer=fryer.key,
            product=product.key,
            pieces_count=int(pieces),
            core_c=core,
            limit_c=level,
            who=who[:80],
            words="",
            corrected_c=fact.corrected_c,
        )
        return reading, write(store, short, moment)


def thermometer_typed(values: Mapping[str, Any]) -> str:
    """The mark on the thermometer, as typed.

    Raises
    ------
    InputError
        None was typed.
    """
    found = str(values.get("thermometer", "") or "").strip()
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
