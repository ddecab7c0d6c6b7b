"""Read-backs as programs and files send them: compared with the card and kept once."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

from frywright.ledger.facts.cook import ReadBackTaken
from frywright.ledger.facts.fact import Kept
from frywright.ledger.once import kept_once
from frywright.ledger.store import Store
from frywright.model.entry import canonical
from frywright.model.errors import FrywrightError, InputError
from frywright.model.kitchen import Kitchen
from frywright.rooms.clock import now
from frywright.rooms.cook.compare import read_back
from frywright.rooms.cook.programs import record_readback


def tell_readback(
    store: Store,
    kitchen: Kitchen,
    name: str,
    slot: int,
    values: Sequence[str],
    people: tuple[str, str],
    settings: Mapping[str, str] | None = None,
) -> tuple[Kept[ReadBackTaken], bool]:
    """Keep what a machine really holds and say whether it is what the card says.

    ``settings`` are answers by the keys of :func:`frywright.trial.machine.settings_of`: scale, clock, lid1,
    lid2 and so on. Raises InputError: an unknown program, more or fewer values than its card, or not two
    people.
    """
    program = kitchen.program(name)
    result = read_back(kitchen, program, slot, values, settings)
    return record_readback(store, program, slot, result, people, now().isoformat()), result.matches


@dataclass(frozen=True, slots=True, kw_only=True)
class LineRead:
    """What became of one line: its entry, whether it matches and is new, or what is wrong with it."""

    line: int
    number: int | None = None
    matches: bool | None = None
    new: bool = False
    problem: str = ""


def readbacks_from(store: Store, kitchen: Kitchen, lines: Iterable[str]) -> list[LineRead]:
    """Read-backs of a file, one JSON object a line: program, slot, values, read_by, checked_by, and settings
    if read. A line read in before is not kept twice.

    Good lines are kept whatever the others say.
    """
    rows = []
    for number, line in enumerate(lines, 1):
        if not line.strip():
            continue
        try:
            told = json.loads(line)
            if (
                not isinstance(told, dict)
                or not {"program", "slot", "values", "read_by", "checked_by"} <= told.keys()
                or not isinstance(told["slot"], int)
                or not isinstance(told["values"], list)
            ):
                raise InputError(
                    "line", number, "an object with program, slot, values, read_by and checked_by"
                )
            key = hashlib.sha256(canonical(told).encode()).hexdigest()
            kept, new = kept_once(store, ReadBackTaken, key, partial(_told, store, kitchen, told))
            rows.append(LineRead(line=number, number=kept.number, matches=kept.fact.matches, new=new))
        except (ValueError, TypeError, FrywrightError) as error:
            rows.append(LineRead(line=number, problem=str(error)[:200]))
    return rows


def _told(store: Store, kitchen: Kitchen, told: Mapping[str, Any]) -> Kept[ReadBackTaken]:
    values = [str(v) for v in told["values"]]
    people = (str(told["read_by"]), str(told["checked_by"]))
    settings = {str(k): str(v) for k, v in dict(told.get("settings", {})).items()}
    return tell_readback(store, kitchen, str(told["program"]), told["slot"], values, people, settings)[0]
