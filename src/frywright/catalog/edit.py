"""Changes one value of a fryer in the text of a kitchen file; every other line stays as it is."""

from __future__ import annotations

from frywright.model.codec import Source
from frywright.model.errors import InputError
from frywright.model.units import UNITS


def with_measured(text: str, fryer: str, name: str, line: str) -> str:
    """A kitchen file in which a fryer has a measured value: ``line`` in place of the value of that name, in
    whatever unit it stood, and the name no longer among its estimates.

    Raises
    ------
    InputError
        The file has no such fryer.
    """
    source = Source(text, "kitchen.toml")
    tables = source.load().get("fryer", [])
    number = next((n for n, table in enumerate(tables) if table.get("key") == fryer), None)
    if number is None:
        raise InputError("fryer", repr(fryer), "one of: {known}", values={"known": _keys(tables)})
    path, lines = f"fryer[{number}]", text.splitlines()
    spelled = (name, *(f"{name}_{unit}" for unit in UNITS))
    old = next((at for key in spelled if (at := source.line_of(path, key)) >= 0), -1)
    marks = source.line_of(path, "estimates")
    if marks >= 0:
        left = [word for word in tables[number]["estimates"] if word != name]
        until = next(at for at in range(marks, len(lines)) if "]" in lines[at])
        told = ", ".join(f'"{word}"' for word in left)
        lines[marks : until + 1] = [f"estimates = [{told}]", *[""] * (until - marks)]
    if old >= 0:
        lines[old] = line
    else:
        lines.insert(source.line_of(path, "key") + 1, line)
    return "\n".join(lines) + "\n"


def _keys(tables: list[dict[str, object]]) -> str:
    return ", ".join(str(table.get("key", "")) for table in tables)
