"""Is the fryer as strong as on its first day? Two logs of a heat-up, compared."""

from __future__ import annotations

from pathlib import Path

from frywright.calibrate.channels import Role
from frywright.calibrate.recovery import HeatUp, compare_heat_up, heat_up_in
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.rooms.cook.logs import open_log


def heat_up_check(
    kitchen: Kitchen, fryer: str, logs: tuple[Path, Path], marks_c: tuple[float, float]
) -> tuple[float, str]:
    """Ratio of today's heat-up to the first day's, and a hint. Raises InputError: a log has no oil channel or
    does not pass both marks, or the two are not comparable.
    """
    mass = kitchen.fryer(fryer).oil_mass_kg
    today, first = (_found(path, marks_c, mass) for path in logs)
    ratio, note = compare_heat_up(today, first)
    return ratio, note.text


def _found(path: Path, marks_c: tuple[float, float], mass: float) -> HeatUp:
    log = open_log(path)
    oils = log.of(Role.OIL)
    found = heat_up_in(log.time_s, oils[0].values, *marks_c, mass) if oils else None
    if found is None:
        raise InputError("log", path.name, "a heat-up through both marks")
    return found
