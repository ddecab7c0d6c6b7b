"""Thermometers by name: checks, due dates, corrections, and the look-back after a failed one."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from zoneinfo import ZoneInfo

from frywright.calibrate.thermometer import (
    CheckOutcome,
    Doubt,
    ProbeReading,
    ThermometerCheck,
    corrected,
    look_back,
)
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import Doubted, LookedBack, Reading, ThermometerChecked
from frywright.ledger.store import Store
from frywright.model.kitchen import Kitchen
from frywright.rooms.clock import now
from frywright.rooms.hall import write


def checks_in(
    store: Store, which: Callable[[Kept[ThermometerChecked]], bool] = lambda item: True
) -> list[ThermometerCheck]:
    """All checks that nothing has replaced, oldest first; ``which`` of them."""
    return [_check(item) for item in store.current_facts(ThermometerChecked) if which(item)]


def _check(item: Kept[ThermometerChecked]) -> ThermometerCheck:
    fact = item.fact
    return ThermometerCheck(
        thermometer=fact.thermometer,
        at=item.happened_at,
        ice_c=fact.ice_c,
        boil_c=fact.boil_c,
        atmosphere_pa=fact.atmosphere_pa,
    )


def record_check(
    store: Store, kitchen: Kitchen, thermometer: str, ice_c: float | None, boil_c: float | None
) -> tuple[ThermometerCheck, list[Doubt]]:
    """Keep a check made now; a failed one opens a look-back at once and returns what is in doubt.
    Raises InputError: no reading, no name, or a reading that neither ice nor boiling water gives.
    """
    check = ThermometerCheck(
        thermometer=thermometer.strip(),
        at=now(),
        ice_c=ice_c,
        boil_c=boil_c,
        atmosphere_pa=kitchen.site.atmosphere_pa,
    )
    before = checks_in(store)
    fact = ThermometerChecked(
        name=check.thermometer,
        thermometer=check.thermometer,
        atmosphere_pa=check.atmosphere_pa,
        boiling_point_c=check.boiling_point_c,
        outcome=str(check.outcome),
        ice_c=ice_c,
        boil_c=boil_c,
    )
    write(store, fact)
    if check.outcome is CheckOutcome.GOOD:
        return check, []
    doubts = look_back(readings_in(store), before, check)
    looked = tuple(
        Doubted(
            entry=d.reading.number,
            read_c=d.reading.core_c,
            corrected_c=d.corrected_c,
            limit_c=d.reading.limit_c,
            in_doubt=d.in_doubt,
            load=d.reading.load,
            units_count=d.reading.units_count,
        )
        for d in doubts
    )
    write(store, LookedBack(name=check.thermometer, thermometer=check.thermometer, doubts=looked))
    return check, doubts


def readings_in(store: Store) -> list[ProbeReading]:
    """All hand readings with a limit that nothing has replaced, oldest first."""
    return [
        ProbeReading(
            number=item.number,
            at=item.happened_at,
            thermometer=item.fact.thermometer,
            core_c=item.fact.core_c,
            limit_c=item.fact.limit_c,
            load=item.fact.load,
            units_count=item.fact.units_count,
        )
        for item in store.current_facts(Reading)
        if item.fact.limit_c is not None
    ]


def _utc(moment: dt.datetime) -> dt.datetime:
    """A log's local time as an instant; without a zone it is taken as this machine's."""
    return moment if moment.tzinfo else moment.astimezone(ZoneInfo("UTC"))


def last_check(
    checks: Iterable[ThermometerCheck], thermometer: str, at: dt.datetime
) -> ThermometerCheck | None:
    """The newest check of a thermometer before a moment, or within a day after it."""
    moment = _utc(at) + dt.timedelta(days=1)
    found = [c for c in checks if c.thermometer == thermometer.strip() and c.at <= moment]
    return found[-1] if found else None


def check_valid(store: Store, thermometer: str, at: dt.datetime) -> bool:
    """Whether a thermometer had a good check that was not overdue at a moment."""
    check = last_check(checks_in(store), thermometer, at)
    return check is not None and check.outcome is CheckOutcome.GOOD and _utc(at) <= check.due_at


def correction_of(
    checks: Iterable[ThermometerCheck], thermometer: str, at: dt.datetime
) -> tuple[tuple[float, float], ...]:
    """Correction points of a thermometer from its newest check; none without a check."""
    check = last_check(checks, thermometer, at)
    return check.correction if check is not None else ()


def corrected_c(store: Store, thermometer: str, core_c: float, at: dt.datetime) -> float | None:
    """A reading with the error of its thermometer taken off [degC]; None where it was never checked."""
    points = correction_of(checks_in(store), thermometer, at)
    return round(float(corrected(core_c, points)), 3) if points else None


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermometerDue:
    """A thermometer with its newest check, its errors and when the next is due."""

    thermometer: str
    at: dt.datetime
    outcome: str
    errors_k: tuple[float, ...]
    due_at: dt.datetime
    overdue: bool


def _name(checked: ThermometerChecked) -> str:
    return checked.thermometer


def due_list(store: Store) -> list[ThermometerDue]:
    """Every thermometer by its name."""
    newest = {e.fact.thermometer: _check(e) for e in store.newest_by(ThermometerChecked, _name).values()}
    return [
        ThermometerDue(
            thermometer=name,
            at=c.at,
            outcome=str(c.outcome),
            errors_k=tuple(c.errors_k),
            due_at=c.due_at,
            overdue=c.due_at < now(),
        )
        for name, c in sorted(newest.items())
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenDoubt:
    """A load in doubt, by the thermometer that was looked back at."""

    thermometer: str
    looked_at: dt.datetime
    reading: Doubted


def open_doubts(store: Store) -> list[OpenDoubt]:
    """Loads in doubt from every look-back, newest first."""
    return [
        OpenDoubt(thermometer=item.fact.thermometer, looked_at=item.recorded_at, reading=doubt)
        for item in reversed(store.current_facts(LookedBack))
        for doubt in item.fact.doubts
        if doubt.in_doubt
    ]
