"""Changes single values in the text of a kitchen file; every other line stays as it is."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from frywright.model.codec import Source
from frywright.model.errors import InputError
from frywright.model.fryer import ESTIMATES, FryerKind
from frywright.model.units import UNITS

ONLY_PRESSURE = ("vent", "head_volume", "relief_gauge")
"""Estimates that an open fryer has not."""


def with_measured(text: str, fryer: str, name: str, line: str) -> str:
    """A kitchen file in which a fryer has a measured value: ``line`` in place of the value of that name, in
    whatever unit it stood, and the name no longer among its estimates. Raises InputError: the file has no
    such fryer.
    """
    tables = Source(text, "kitchen.toml").load().get("fryer", [])
    number = next((n for n, table in enumerate(tables) if table.get("key") == fryer), None)
    if number is None:
        raise InputError("fryer", repr(fryer), "one of: {known}", known=_keys(tables))
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


def with_day(text: str, lines: Mapping[str, str]) -> str:
    """A kitchen file whose day has other values: each name of the day's table and its new line."""
    if "day" not in Source(text, "kitchen.toml").load():
        text = text.rstrip("\n") + "\n\n[day]\n"
    for name, line in reversed(list(lines.items())):
        text = _put(text, "day", name, line, after="")
    return text


def with_sell(text: str, product: str, lines: Mapping[str, str]) -> str:
    """A kitchen file in which a product is sold: each name of its table of sale and its new line."""
    tables = Source(text, "kitchen.toml").load().get("sell", [])
    number = next((n for n, table in enumerate(tables) if table.get("product") == product), len(tables))
    if number == len(tables):
        text = text.rstrip("\n") + f'\n\n[[sell]]\nproduct = "{product}"\n'
    for name, line in reversed(list(lines.items())):
        text = _put(text, f"sell[{number}]", name, line, after="product")
    return text


def without_sell(text: str, product: str) -> str:
    """A kitchen file in which a product is not sold."""
    tables = Source(text, "kitchen.toml").load().get("sell", [])
    numbers = {n for n, table in enumerate(tables) if table.get("product") == product}
    return _without(text, "[[sell]]", numbers)


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


def _without(text: str, head: str, numbers: Collection[int] | None = None) -> str:
    """A file without the tables of a head (or those of some numbers), each up to the next head."""
    kept, inside, count = [], False, -1
    for line in text.splitlines():
        if line.lstrip().startswith("["):
            found = line.split("#")[0].replace(" ", "").strip() == head
            count += found
            inside = found and (numbers is None or count in numbers)
        if not inside:
            kept.append(line)
    return "\n".join(kept) + "\n"


def _put(text: str, path: str, name: str, line: str, after: str) -> str:
    """One line of a table anew, in whatever unit the value stood; else behind another."""
    source, lines = Source(text, "kitchen.toml"), text.splitlines()
    spelled = (name, *(f"{name}_{unit}" for unit in UNITS))
    old = next((at for key in spelled if (at := source.line_of(path, key)) >= 0), -1)
    if old >= 0:
        lines[old : _end(lines, old) + 1] = [line]
    else:
        lines.insert(source.line_of(path, after) + 1, line)
    return "\n".join(lines) + "\n"


def _end(lines: list[str], first: int) -> int:
    """Index of the last line of a value, which may be a list on several lines."""
    value = lines[first].partition("=")[2].lstrip()
    return next(at for at in range(first, len(lines)) if "]" in lines[at]) if value[:1] == "[" else first


def _with_estimates(text: str, path: str, names: list[str]) -> str:
    """A fryer's list of estimates anew, which may stand on several lines."""
    quoted = ", ".join(f'"{name}"' for name in names)
    return _put(text, path, "estimates", f"estimates = [{quoted}]", after="key")


def _keys(tables: list[dict[str, object]]) -> str:
    return ", ".join(str(table.get("key", "")) for table in tables)
