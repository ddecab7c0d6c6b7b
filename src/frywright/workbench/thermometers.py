"""Thermometers by name: checks, due dates, corrections, and the look-back after a failed one."""

from __future__ import annotations

import datetime as dt
from typing import Any
from zoneinfo import ZoneInfo

from frywright.calibrate.thermometer import CheckOutcome, Doubt, ProbeReading, ThermometerCheck, look_back
from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.verdicts.limits import hand_level_c
from frywright.workbench.book import record
from frywright.workbench.clock import now

CHECK, READING, LOOKED = "thermometer_check", "probe_reading", "look_back"


def checks_in(store: Store) -> list[ThermometerCheck]:
    """All checks that nothing has replaced, oldest first."""
    return [_check(item) for item in store.current(CHECK)]


def _check(item: Recorded) -> ThermometerCheck:
    p = item.entry.payload
    return ThermometerCheck(
        thermometer=p["thermometer"],
        at=item.entry.happened_at,
        ice_c=p.get("ice_c"),
        boil_c=p.get("boil_c"),
        atmosphere_pa=p["atmosphere_pa"],
    )


def record_check(
    store: Store, kitchen: Kitchen, thermometer: str, ice_c: float | None, boil_c: float | None
) -> tuple[ThermometerCheck, list[Doubt]]:
    """Keep a check made now; a failed one opens a look-back at once and returns what is in doubt.

    Raises
    ------
    InputError
        No reading, no name, or a reading that neither ice nor boiling water gives.
    """
    check = ThermometerCheck(
        thermometer=thermometer.strip(),
        at=now(),
        ice_c=ice_c,
        boil_c=boil_c,
        atmosphere_pa=kitchen.site.atmosphere_pa,
    )
    before = checks_in(store)
    payload: dict[str, Any] = {
        "name": check.thermometer,
        "thermometer": check.thermometer,
        "atmosphere_pa": check.atmosphere_pa,
        "boiling_point_c": check.boiling_point_c,
        "outcome": str(check.outcome),
    }
    payload |= {k: v for k, v in (("ice_c", ice_c), ("boil_c", boil_c)) if v is not None}
    record(store, CHECK, payload)
    if check.outcome is CheckOutcome.GOOD:
        return check, []
    doubts = look_back(readings_in(store), before, check)
    told = {
        "name": check.thermometer,
        "thermometer": check.thermometer,
        "doubts": [
            {
                "entry": d.reading.number,
                "read_c": d.reading.core_c,
                "corrected_c": d.corrected_c,
                "limit_c": d.reading.limit_c,
                "in_doubt": d.in_doubt,
                "load": d.reading.load,
                "units_count": d.reading.units_count,
            }
            for d in doubts
        ],
    }
    record(store, LOOKED, told)
    return check, doubts


def record_reading(
    store: Store, kitchen: Kitchen, thermometer: str, core_c: float, load: str = "", units_count: float = 0.0
) -> Recorded:
    """Keep a hand reading with the limit it stood for.

    Raises
    ------
    InputError
        The reading is impossible.
    """
    if not -5.0 <= core_c <= 130.0:
        raise InputError(
            "reading",
            core_c,
            "{low_c} to {high_c} for the core of a piece",
            unit="c",
            values={"low_c": -5.0, "high_c": 130.0},
        )
    level = hand_level_c(kitchen.site.jurisdiction)
    payload = {
        "name": load,
        "thermometer": thermometer.strip(),
        "core_c": core_c,
        "limit_c": level,
        "load": load,
        "units_count": units_count,
    }
    return record(store, READING, payload)


def readings_in(store: Store) -> list[ProbeReading]:
    """All hand readings that nothing has replaced, oldest first."""
    out = []
    for item in store.current(READING):
        p = item.entry.payload
        out.append(
            ProbeReading(
                number=item.number,
                at=item.entry.happened_at,
                thermometer=p["thermometer"],
                core_c=p["core_c"],
                limit_c=p["limit_c"],
                load=p.get("load", ""),
                units_count=p.get("units_count", 0.0),
            )
        )
    return out


def _utc(moment: dt.datetime) -> dt.datetime:
    """A log's local time as an instant; without a zone it is taken as this machine's."""
    return moment if moment.tzinfo else moment.astimezone(ZoneInfo("UTC"))


def last_check(store: Store, thermometer: str, at: dt.datetime) -> ThermometerCheck | None:
    """The newest check of a thermometer before a moment, or within a day after it."""
    moment = _utc(at) + dt.timedelta(days=1)
    found = [c for c in checks_in(store) if c.thermometer == thermometer.strip() and c.at <= moment]
    return found[-1] if found else None


def check_valid(store: Store, thermometer: str, at: dt.datetime) -> bool:
    """Whether a thermometer had a good check that was not overdue at a moment."""
    check = last_check(store, thermometer, at)
    return check is not None and check.outcome is CheckOutcome.GOOD and _utc(at) <= check.due_at


def correction_of(store: Store, thermometer: str, at: dt.datetime) -> tuple[tuple[float, float], ...]:
    """Correction points of a thermometer from its newest check; none without a check."""
    check = last_check(store, thermometer, at)
    return check.correction if check is not None else ()


def due_list(store: Store) -> list[dict[str, Any]]:
    """Every thermometer with its newest check, its errors and when the next is due."""
    newest = {check.thermometer: check for check in checks_in(store)}
    return [
        {
            "thermometer": name,
            "at": c.at,
            "outcome": str(c.outcome),
            "errors_k": c.errors_k,
            "due_at": c.due_at,
            "overdue": c.due_at < now(),
        }
        for name, c in sorted(newest.items())
    ]


def open_doubts(store: Store) -> list[dict[str, Any]]:
    """Loads in doubt from every look-back, newest first."""
    out = []
    for item in reversed(store.current(LOOKED)):
        for doubt in item.entry.payload["doubts"]:
            if doubt["in_doubt"]:
                out.append(
                    {"thermometer": item.entry.payload["thermometer"], "looked_at": item.recorded_at, **doubt}
                )
    return out
