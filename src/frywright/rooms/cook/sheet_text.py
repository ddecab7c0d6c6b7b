"""Writes machine settings into a kitchen file: only their own lines change."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from dataclasses import replace

from frywright.catalog.kitchen import parse_kitchen
from frywright.model.codec import Source
from frywright.model.errors import DataError, InputError
from frywright.model.fryer import MachineSetting, WrongValue
from frywright.model.kitchen import UnitSystem
from frywright.model.units import to_people

HEADER = re.compile(r"^\s*+\[\[?([^\]]++)\]\]?")
BY_HAND = "written as tables that this page knows; change it in the kitchen file"


def with_settings(text: str, fryer: str, settings: Sequence[MachineSetting], units: UnitSystem) -> str:
    """A kitchen file with the settings of one fryer; lines of others, and comments outside them, stay.
    Raises InputError: the file is written in a way that this cannot change without touching something else.
    """
    before = parse_kitchen(text)
    old = before.fryer(fryer).settings
    head, blocks, tail = _parts(text, fryer)
    if len(blocks) != len(old):
        raise InputError("kitchen file", fryer, BY_HAND)
    known = dict(zip(old, blocks, strict=True))
    block = [line for s in settings for line in ("", *known.get(s, _lines(s, units)))]
    made = "\n".join([*head, *block, *tail]) + "\n"
    wanted = [(s.name, s.value, [w.reads for w in s.wrong]) for s in settings]
    try:
        after = parse_kitchen(made)
    except DataError as error:
        raise InputError("kitchen file", fryer, BY_HAND) from error
    got = [(s.name, s.value, [w.reads for w in s.wrong]) for s in after.fryer(fryer).settings]
    bare = [
        replace(k, fryers=tuple(replace(f, settings=()) if f.key == fryer else f for f in k.fryers))
        for k in (before, after)
    ]
    if got != wanted or bare[0] != bare[1]:
        raise InputError("kitchen file", fryer, BY_HAND)
    return made


def _parts(text: str, fryer: str) -> tuple[list[str], list[list[str]], list[str]]:
    """Lines of a file up to the end of a fryer without its settings, the lines of each setting, and the rest.

    Blank lines and comments behind the last setting belong to the rest.
    """
    source, lines = Source(text, "kitchen.toml"), text.splitlines()
    keys = [table.get("key") for table in source.load()["fryer"]]
    start = source.line_of(f"fryer[{keys.index(fryer)}]", "")
    if start < 0:
        raise InputError("kitchen file", fryer, BY_HAND)
    names = [_table_name(line) for line in lines]
    end = next(
        (n for n in range(start + 1, len(lines)) if names[n] and not names[n].startswith("fryer.")),
        len(lines),
    )
    while end > start + 1 and not lines[end - 1].split("#")[0].strip():
        end -= 1
    head, blocks, inside = lines[: start + 1], list[list[str]](), False
    for number in range(start + 1, end):
        if names[number]:
            inside = names[number] in ("fryer.setting", "fryer.setting.wrong")
            if names[number] == "fryer.setting":
                blocks.append([])
        (blocks[-1] if inside and blocks else head).append(lines[number])
    trimmed = [_trimmed(part) for part in (head, *blocks)]
    return trimmed[0], trimmed[1:], lines[end:]


def _table_name(line: str) -> str:
    """Name of the table a line begins; empty for any other line."""
    header = HEADER.match(line)
    return header[1].replace(" ", "") if header else ""


def _trimmed(lines: list[str]) -> list[str]:
    """Lines without the blank ones at their end."""
    last = max((n for n, line in enumerate(lines) if line.strip()), default=-1)
    return lines[: last + 1]


def _lines(setting: MachineSetting, units: UnitSystem) -> list[str]:
    us = units is UnitSystem.US
    lines = ["[[fryer.setting]]", f"name = {_quoted(setting.name)}", f'kind = "{setting.kind}"']
    lines.append(f"value = {_quoted(setting.value)}")
    if setting.lowers_k is not None and setting.each_m is not None:
        degrees, height = ("f_diff", "ft") if us else ("k", "m")
        lines.append(f"lowers_{degrees[0]} = {to_people(setting.lowers_k, degrees):.6g}")
        lines.append(f"each_{height} = {to_people(setting.each_m, height):.6g}")
    for wrong in setting.wrong:
        lines += ["", "[[fryer.setting.wrong]]", f"reads = {_quoted(wrong.reads)}", *_does_lines(wrong, us)]
    return lines


def _does_lines(wrong: WrongValue, us: bool) -> list[str]:
    degrees = "f_diff" if us else "k"
    change = f"set_change_{degrees[0]} = {to_people(wrong.set_change_k, degrees):.6g}"
    told = [
        (bool(wrong.does), f"does = {_quoted(wrong.does)}"),
        (wrong.set_change_k != 0.0, change),
        (wrong.time_frac != 1.0, f"time_pct = {100.0 * wrong.time_frac:.6g}"),
        (wrong.shows is not None, f'shows = "{wrong.shows}"'),
        (wrong.clock is not None, f'clock = "{wrong.clock}"'),
        (wrong.lid_open, "lid_open = true"),
    ]
    return [line for given, line in told if given]


def _quoted(text: str) -> str:
    return json.dumps(text, ensure_ascii=False)
