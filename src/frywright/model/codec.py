"""Reads dataclasses from TOML tables with people's units, and writes them back.

A field ``oil_mass_kg`` is filled by any key of the same dimension: ``oil_mass_lb = 44``. A time
may also be ``duration = "12:30"``. Problems carry file, line, caret and remedy.
"""

from __future__ import annotations

import dataclasses
import difflib
import enum
import re
import tomllib
import types
import typing
from collections.abc import Collection, Mapping
from functools import cache
from typing import Any, TypeVar

from frywright.model.errors import DataError, InputError, Phrase, spoken
from frywright.model.findings import Problem
from frywright.model.units import UNITS, parse, suffix_of, to_inside, to_people

T = TypeVar("T")
_HEADER = re.compile(r"^\s*+(\[\[?)([^\]]++)\]\]?")
_INDEX = re.compile(r"\[\d+\]")
_KEY = re.compile(r"^(\s*)(\"[^\"]*\"|[A-Za-z0-9_-]+)\s*=")

LONGEST_TEXT, LONGEST_LINE = 300_000, 2_000
"""Letters of a kitchen file and of one of its lines: forty times the demo (project's own rules)."""


class Source:
    """Text of a TOML file and where each key stands in it."""

    def __init__(self, text: str, file: str) -> None:
        self.text, self.file = text, file
        self.lines = text.splitlines()
        self._places: dict[tuple[str, str], tuple[int, int]] = {}
        self._index()

    def _index(self) -> None:
        counts: dict[str, int] = {}
        table = ""
        for number, line in enumerate(self.lines):
            header = _HEADER.match(line)
            if header:
                table = self._full_name(header[2].strip(), counts, header[1] == "[[")
                self._places.setdefault((table, ""), (number, line.index("[")))
                continue
            key = _KEY.match(line)
            if key:
                self._places.setdefault((table, key[2].strip('"')), (number, len(key[1])))

    @staticmethod
    def _full_name(name: str, counts: dict[str, int], array: bool) -> str:
        parts, path = name.split("."), ""
        for depth, part in enumerate(parts):
            path = f"{path}.{part}" if path else part
            if array and depth == len(parts) - 1:
                counts[path] = counts.get(path, -1) + 1
            if path in counts:
                path = f"{path}[{counts[path]}]"
        return path

    def line_of(self, table: str, key: str) -> int:
        """Index of the line of a key of a table; -1 where it has none."""
        return self._places.get((table, key), (-1, 0))[0]

    def problem(self, table: str, key: str, what: str, remedy: str, /, **values: Any) -> Problem:
        """A problem at a key of a table, at the header of a table inside it, or at the table's own."""
        inner = f"{table}.{key}" if table else key
        places = ((table, key), (inner, ""), (f"{inner}[0]", ""), (table, ""))
        number, column = next((self._places[at] for at in places if at in self._places), (-1, 0))
        line = self.lines[number] if number >= 0 else ""
        return Problem(
            what=what,
            remedy=remedy,
            values=values,
            file=self.file,
            line_number=number + 1,
            column_number=column,
            line=line,
        )

    def load(self) -> dict[str, Any]:
        """Parse the text. Raises DataError: the text is not TOML; the problem names the line."""
        self._bounded()
        try:
            return tomllib.loads(self.text)
        except RecursionError as error:
            raise DataError([self._unread(0, 0, "nested too deep")]) from error
        except ValueError as error:
            found = re.search(r"line (\d+), column (\d+)", str(error))
            number = int(found[1]) if found else 0
            column = int(found[2]) - 1 if found else 0
            cause = str(error).split(" (at")[0]
            raise DataError([self._unread(number, column, cause)]) from error

    def _bounded(self) -> None:
        """Refuse what no kitchen is: reading it would take minutes."""
        if len(self.text) > LONGEST_TEXT:
            raise DataError([self._unread(0, 0, "longer than a kitchen file")])
        for number, line in enumerate(self.lines, start=1):
            if len(line) > LONGEST_LINE:
                raise DataError([self._unread(number, 0, "a line longer than a page")])

    def _unread(self, number: int, column: int, cause: str) -> Problem:
        """A problem with the text itself."""
        return Problem(
            what="not valid TOML: {cause}",
            remedy="Mend this line; text values need quotes, numbers don't.",
            file=self.file,
            line_number=number,
            column_number=column,
            line=self.lines[number - 1][:LONGEST_LINE] if 0 < number <= len(self.lines) else "",
            values={"cause": cause},
        )


def read(cls: type[T], table: Mapping[str, Any], source: Source, path: str, **given: Any) -> T:
    """Build ``cls`` from a TOML table; ``given`` fills fields that are not scalars.
    Raises DataError: unknown, missing, doubled, mistyped or impossible values.
    """
    problems: list[Problem] = []
    values = dict(given)
    hints = _hints(cls)  # type: ignore[arg-type]
    fields = {f.name: f for f in dataclasses.fields(cls) if f.name not in given}  # type: ignore[arg-type]
    origin: dict[str, str] = {}
    parts = {name.removesuffix("s") for name in given}
    for key, raw in table.items():
        if key in parts and _is_table(raw):
            continue
        try:
            name, value = _fit(key, raw, fields, hints, parts)
        except InputError as error:
            problems.append(refused(source, path, key, error))
            continue
        if name in origin:
            problems.append(
                source.problem(
                    path,
                    key,
                    "{one} and {other} give the same value",
                    "Keep one of them.",
                    one=key,
                    other=origin[name],
                )
            )
            continue
        values[name], origin[name] = value, key
    for name, spec in fields.items():
        bare = spec.default is dataclasses.MISSING and spec.default_factory is dataclasses.MISSING
        if bare and name not in values and not problems:
            problems.append(
                source.problem(
                    path, "", "{file} lacks {name}", "Add {name} = …", file=path or "file", name=name
                )
            )
    if problems:
        raise DataError(problems)
    try:
        return cls(**values)
    except InputError as error:
        raise DataError([at_field(error, source, path, origin)]) from error


def _is_table(raw: Any) -> bool:
    """Whether a value is a table or a list of tables, which somebody else reads."""
    return isinstance(raw, dict) or (isinstance(raw, list) and any(isinstance(part, dict) for part in raw))


@cache
def _hints(cls: type) -> dict[str, Any]:
    """The annotations of a class of the model, evaluated once."""
    return typing.get_type_hints(cls)


def parts_of(
    table: Mapping[str, Any], name: str, source: Source, path: str
) -> list[tuple[str, Mapping[str, Any]]]:
    """The tables of a list inside a table, each with its path. Raises DataError: there is something else
    under that name.
    """
    items = table.get(name, [])
    at = f"{path}.{name}" if path else name
    if not isinstance(items, list) or not all(isinstance(item, dict) for item in items):
        what, remedy = "[{name}] is a single table", "Write [[{name}]] with two brackets."
        raise DataError([source.problem(path, name, what, remedy, name=_INDEX.sub("", at))])
    return [(f"{at}[{number}]", item) for number, item in enumerate(items)]


def part_of(table: Mapping[str, Any], name: str, source: Source, path: str) -> Mapping[str, Any]:
    """The table inside a table; empty where there is none. Raises DataError: there is something else under
    that name.
    """
    item = table.get(name, {})
    if not isinstance(item, dict):
        what, remedy = "[[{name}]] is a list", "Write [{name}] with one bracket."
        raise DataError([source.problem(path, name, what, remedy, name=_INDEX.sub("", f"{path}.{name}"))])
    return item


def at_field(error: InputError, source: Source, path: str, origin: Mapping[str, str]) -> Problem:
    """Place of an impossible value: the key that gave the field, else the table."""
    key = next((k for name, k in origin.items() if name.startswith(error.field)), "")
    return refused(source, path, key, error)


def refused(source: Source, path: str, key: str, error: InputError) -> Problem:
    """A refused value at its key, named as the file names it."""
    place = f" ({error.where})" if error.where else ""
    told = {"field": error.field, "value": error.shown, "place": place, "allowed": error.allowed}
    return source.problem(path, key, "{field} is {value}{place}", "It must be {allowed}.", **told)


def _fit(
    key: str, raw: Any, fields: Mapping[str, Any], hints: Mapping[str, Any], parts: Collection[str]
) -> tuple[str, Any]:
    if key in fields:
        return key, _convert(key, raw, hints[key])
    for name in fields:
        inside = suffix_of(name)
        if inside and name == f"{key}_{inside}":
            if isinstance(raw, str):
                return name, parse(raw, UNITS[inside].dimension, key)
            raise _no_unit(key, raw, inside)
    suffix = suffix_of(key)
    if suffix:
        base = key[: -len(suffix) - 1]
        for name in fields:
            inside = suffix_of(name)
            if inside and name[: -len(inside) - 1] == base:
                several = typing.get_origin(hints[name]) is tuple
                if UNITS[inside].dimension == UNITS[suffix].dimension and several:
                    return name, tuple(to_inside(_number(key, v), suffix) for v in _list(key, raw))
                if UNITS[inside].dimension == UNITS[suffix].dimension:
                    return name, to_inside(_number(key, raw), suffix)
                if UNITS[inside].dimension == "temperature_difference" and suffix == "f":
                    return name, _number(key, raw) * 5 / 9
                if UNITS[inside].dimension == "temperature_difference" and suffix == "c":
                    return name, _number(key, raw)
                raise InputError(
                    key,
                    Phrase("in {suffix}", {"suffix": suffix}),
                    "a {dimension} such as {name}",
                    dimension=spoken(UNITS[inside].dimension),
                    name=name,
                )
    near = difflib.get_close_matches(key, [*fields, *parts], n=1)
    if near:
        raise InputError("key", repr(key), "a known key; did you mean {known}?", known=near[0])
    raise InputError("key", repr(key), "one of: {known}", known=", ".join(sorted(fields)))


def _no_unit(key: str, raw: Any, inside: str) -> InputError:
    """A bare number under a key without a unit: how to write it."""
    sign = UNITS[inside].sign
    told = raw if isinstance(raw, int | float) and not isinstance(raw, bool) else 10
    values = {"one": f"{key}_{inside} = {told}", "other": f'{key} = "{told} {sign}"'}
    return InputError(
        key,
        Phrase("{raw} without a unit", {"raw": raw}),
        "written with one, such as {one} or {other}",
        **values,
    )


def _number(key: str, raw: Any) -> float:
    if isinstance(raw, bool) or not isinstance(raw, int | float):
        raise InputError(key, repr(raw), "a number without quotes")
    if raw != raw or raw in (float("inf"), float("-inf")):
        raise InputError(key, raw, "a finite number")
    return float(raw)


def _list(key: str, raw: Any) -> list[Any]:
    if not isinstance(raw, list):
        raise InputError(key, repr(raw), "a list in square brackets")
    return raw


def _convert(key: str, raw: Any, hint: Any) -> Any:
    if typing.get_origin(hint) in (types.UnionType, typing.Union):
        hint = next(a for a in typing.get_args(hint) if a is not type(None))
    if typing.get_origin(hint) is tuple:
        return tuple(_convert(key, value, typing.get_args(hint)[0]) for value in _list(key, raw))
    if isinstance(hint, type) and issubclass(hint, enum.StrEnum):
        words = [str(member) for member in hint]
        if raw not in words:
            raise InputError(key, repr(raw), "one of: {known}", known=", ".join(words))
        return hint(raw)
    if hint is float:
        return _number(key, raw)
    if hint is int:
        if isinstance(raw, bool) or not isinstance(raw, int):
            raise InputError(key, repr(raw), "a whole number")
        return raw
    if hint is bool and not isinstance(raw, bool):
        raise InputError(key, repr(raw), "true or false")
    if hint is str and not isinstance(raw, str):
        raise InputError(key, repr(raw), "text in quotes")
    return raw


PREFERRED = {
    "us": {
        "temperature": "f",
        "mass": "lb",
        "pressure": "psi",
        "length": "ft",
        "temperature_difference": "f_diff",
    },
    "metric": {},
}


def write(item: Any, units: str) -> dict[str, Any]:
    """Flat key-value pairs of a dataclass in the kitchen's preferred units; None is left out."""
    out: dict[str, Any] = {}
    for spec in dataclasses.fields(item):
        value = getattr(item, spec.name)
        suffix = suffix_of(spec.name)
        wanted = PREFERRED[units].get(UNITS[suffix].dimension) if suffix else None
        if value is None or dataclasses.is_dataclass(value) or isinstance(value, tuple):
            continue
        if wanted and suffix and wanted != "f_diff" and isinstance(value, float):
            out[spec.name[: -len(suffix)] + wanted] = round(to_people(value, wanted), 6)
        else:
            out[spec.name] = str(value) if isinstance(value, enum.StrEnum) else value
    return out
