"""What changed from one version of a program to the next, value by value."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import zip_longest

from frywright.model.program import Program, Stage
from frywright.model.units import clock, show


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One value that changed; ``stage`` 0 is the program itself. Empty text: not there."""

    stage: int
    what: str
    before: str
    after: str


def _stage_values(stage: Stage | None, system: str) -> dict[str, str]:
    if stage is None:
        return {}
    end = (
        clock(stage.end_value)
        if str(stage.end) in ("duration", "elapsed", "left")
        else f"{stage.end_value:g}"
    )
    return {"set point": show(stage.set_c, "c", system), "lid": str(stage.lid), str(stage.end): end}


def changes(old: Program, new: Program, system: str = "metric") -> tuple[Change, ...]:
    """Changed values only, stage by stage, in people's units."""
    found = []
    for what, a, b in (
        ("fryer", old.fryer, new.fryer),
        ("product", old.product, new.product),
        ("drain", clock(old.drain_s), clock(new.drain_s)),
        ("hold life", clock(old.hold_life_s), clock(new.hold_life_s)),
    ):
        if a != b:
            found.append(Change(stage=0, what=what, before=a, after=b))
    pairs = zip_longest(old.timed().stages, new.timed().stages)
    for number, (before, after) in enumerate(pairs, start=1):
        was, is_now = _stage_values(before, system), _stage_values(after, system)
        for what in dict.fromkeys([*was, *is_now]):
            if was.get(what) != is_now.get(what):
                found.append(
                    Change(stage=number, what=what, before=was.get(what, ""), after=is_now.get(what, ""))
                )
    return tuple(found)
