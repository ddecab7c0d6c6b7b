"""Changes single values in the text of a kitchen file; every other line stays as it is."""

from __future__ import annotations

from collections.abc import Mapping

from frywright.model.codec import Source
from frywright.model.errors import InputError
from frywright.model.fryer import ESTIMATES, FryerKind
from frywright.model.units import UNITS

ONLY_PRESSURE = ("vent", "head_volume", "relief_gauge")
"""Estimates that an open fryer has not."""


def with_measured(text: str, fryer: str, name: str, line: str) -> str:
    """A kitchen file in which a fryer has a measured value: ``line`` in place of the value of that name, in
    whatever unit it stood, and the name no longer among its estimates.

    Raises
    ------
    InputError
        The file has no such fryer.
    """
    tables = Source(text, "kitchen.toml").load().get("fryer", [])
    number = next((n for n, table in enumerate(tables) if table.get("key") == fryer), None)
    if number is None:
        raise InputError("fryer", repr(fryer), "one of: {known}", values={"known": _keys(tables)})
    path = f"fryer[{number}]"
    left = [word for word in tables[number].get("estimates", ()) if word != name]
    if "estimates" in tables[number]:
        text = _with_estimates(text, path, left)
    return _put(text, path, name, line, after="key")


def with_place(text: str, lines: Mapping[str, str]) -> str:
    """A kitchen file whose place has other values: each name of the kitchen's table and its new line."""
    for name, line in lines.items():
        text = _put(text, "kitchen", name, line, after="name")
    return text


def for_another_place(text: str) -> str:
    """A kitchen file for other machines of the same make at another place: what was measured on each fryer is
    an estimate. What was fitted to cooks here is left out, and so is whom to call and where to meet.
    """
    for head in ("[[calibration]]", "[emergency]"):
        text = _without(text, head)
    for number, table in enumerate(Source(text, "kitchen.toml").load().get("fryer", [])):
        closed = table.get("kind", "") == FryerKind.PRESSURE
        names = [name for name in ESTIMATES if closed or name not in ONLY_PRESSURE]
        text = _with_estimates(text, f"fryer[{number}]", names)
    return text


def _without(text: str, head: str) -> str:
    """A file without the tables of a head, each up to the next head."""
    kept, inside = [], False
    for line in text.splitlines():
        if line.lstrip().startswith("["):
            inside = line.split("#")[0].replace(" ", "").strip() == head
        if not inside:
            kept.append(line)
    return "\n".join(kept) + "\n"


def _put(text: str, path: str, name: str, line: str, after: str) -> str:
    """One line of a table anew, in whatever unit the value stood; else behind another."""
    source, lines = Source(text, "kitchen.toml"), text.splitlines()
    spelled = (name, *(f"{name}_{unit}" for unit in UNITS))
    old = next((at for key in spelled if (at := source.line_of(path, key)) >= 0), -1)
    if old >= 0:
        lines[old] = line
    else:
        lines.insert(source.line_of(path, after) + 1, line)
    return "\n".join(lines) + "\n"


def _with_estimates(text: str, path: str, names: list[str]) -> str:
    """A fryer's list of estimates anew, which may stand on several lines."""
    source, lines = Source(text, "kitchen.toml"), text.splitlines()
    quoted = ", ".join(f'"{name}"' for name in names)
    told = f"estimates = [{quoted}]"
    marks = source.line_of(path, "estimates")
    if marks < 0:
        lines.insert(source.line_of(path, "key") + 1, told)
    else:
        until = next(at for at in range(marks, len(lines)) if "]" in lines[at])
        lines[marks : until + 1] = [told, *[""] * (until - marks)]
    return "\n".join(lines) + "\n"


def _keys(tables: list[dict[str, object]]) -> str:
    return ", ".join(str(table.get("key", "")) for table in tables)
