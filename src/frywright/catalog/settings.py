"""Reads a fryer's machine settings from its table, and sets them against the kitchen's place."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from frywright.model.codec import Source, parts_of, read
from frywright.model.errors import DataError, InputError
from frywright.model.findings import Problem
from frywright.model.fryer import MachineSetting, SettingKind, WrongValue
from frywright.model.kitchen import Kitchen, Site

NEAR_PLACE_M = 150.0
"""How far an altitude setting may be from the kitchen's altitude: half a step of 1,000 ft (own estimate)."""


def read_settings(table: Mapping[str, Any], source: Source, path: str) -> tuple[MachineSetting, ...]:
    """The settings of a fryer's table, each with the wrong values the kitchen knows. Raises DataError: one is
    not sound; every problem has its place in the file.
    """
    found, problems = [], []
    for place, part in parts_of(table, "setting", source, path):
        try:
            wrong = tuple(
                read(WrongValue, one, source, at) for at, one in parts_of(part, "wrong", source, place)
            )
            found.append(read(MachineSetting, part, source, place, wrong=wrong))
        except DataError as error:
            problems.extend(error.problems)
    if problems:
        raise DataError(problems)
    return tuple(found)


def altitude_told_m(setting: MachineSetting, text: str, site: Site) -> float | None:
    """Altitude that a reading of an altitude setting says [m]; None where it is no height."""
    if setting.kind is not SettingKind.ALTITUDE:
        return None
    try:
        return site.read(text, "length", "altitude")
    except InputError:
        return None


def off_place(setting: MachineSetting, site: Site) -> bool:
    """Whether a sheet holds an altitude that is not the kitchen's own, as after a move."""
    told_m = altitude_told_m(setting, setting.value, site)
    near_m = max(NEAR_PLACE_M, (setting.each_m or 0.0) / 2)
    return told_m is not None and abs(told_m - site.altitude_m) > near_m


def no_heights(kitchen: Kitchen, source: Source) -> list[Problem]:
    """Altitude settings that are no height where the kitchen says what a height does."""
    problems = []
    for number, fryer in enumerate(kitchen.fryers):
        for at, setting in enumerate(fryer.settings):
            if setting.each_m is None or altitude_told_m(setting, setting.value, kitchen.site) is not None:
                continue
            path, remedy = (
                f"fryer[{number}].setting[{at}]",
                "Write it with its unit, such as 1600 m or 5250 ft.",
            )
            problems.append(source.problem(path, "value", "{name} is no height", remedy, name=setting.name))
    return problems
