"""Programs as values to key in, for any controller described by what it can hold.

What is keyed depends on capabilities only: how many stages, which steps, whether its clock runs
up (each stage ends at a time since the drop) or down (a total time, and the time left at which
each further stage begins), whether it moves the lid, and what marks an unused stage.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import accumulate

from frywright.design.check_figure import check_figure
from frywright.model.errors import InputError
from frywright.model.fryer import Controller, TempUnit, UnusedStage
from frywright.model.program import TIMED, LidState, Program, Stage
from frywright.model.units import clock, to_inside, to_people

BLANK = "–"


@dataclass(frozen=True, slots=True, kw_only=True)
class Keyed:
    """One value to key in. ``what`` is total, set or time; lid moves may be the crew's to do."""

    stage: int
    what: str
    text: str
    by_crew: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Rendered:
    """All values of a program for one controller, in the order they are keyed, and their figure."""

    values: tuple[Keyed, ...]
    slot: int
    version: int

    @property
    def figure(self) -> str:
        """Check figure over slot, version and every value (two digits)."""
        return check_figure([str(self.slot), str(self.version), *(v.text for v in self.values)])


def rounded(program: Program, controller: Controller) -> Program:
    """The program on the controller's steps; stage ends are rounded, so that times never add up wrong.
    Raises InputError: too many stages, a stage that waits for a condition, or a value outside what it takes.
    """
    plain = program.timed()
    if len(plain.stages) > controller.stage_count:
        raise InputError(
            "stage",
            len(plain.stages),
            "at most {most}: this controller holds no more",
            where=program.name,
            most=controller.stage_count,
        )
    if any(stage.end not in TIMED for stage in plain.stages):
        raise InputError(
            "stage end", "a condition", "a time; give the stage its own proven time", where=program.name
        )
    told = [(s.set_c, s.lid, t) for s, t in zip(plain.stages, plain.durations_s(), strict=True)]
    return replace(plain, stages=tuple(on_steps(told, controller, program.name)))


def on_steps(told: Sequence[tuple[float, LidState, float]], controller: Controller, name: str) -> list[Stage]:
    """Stages told as set point, lid and length, on the controller's steps. Raises InputError: a value outside
    what the controller takes.
    """
    step = controller.time_step_s
    ends = [round(end / step) * step for end in accumulate(length for _, _, length in told)]
    stages = []
    for (wanted_c, lid, _), start, end in zip(told, [0.0, *ends], ends, strict=False):
        set_c = _round_temp(wanted_c, controller)
        if not controller.lowest_c - 1e-6 <= set_c <= controller.highest_c + 1e-6:
            raise InputError(
                "set point",
                set_c,
                "{low_c} to {high_c} on this controller",
                where=name,
                unit="c",
                low_c=controller.lowest_c,
                high_c=controller.highest_c,
            )
        if end > controller.longest_s:
            raise InputError(
                "time",
                clock(end),
                "at most {most} on this controller",
                where=name,
                most=clock(controller.longest_s),
            )
        stages.append(Stage(set_c=set_c, lid=lid, duration_s=end - start))
    return stages


def _round_temp(set_c: float, controller: Controller) -> float:
    """The nearest step; for a set point within what the controller takes, the nearest within that."""
    unit = str(controller.shows)
    step = controller.temp_step_k * (9 / 5 if controller.shows is TempUnit.F else 1.0)
    number = round(to_people(set_c, unit) / step)
    if set_c >= controller.lowest_c and to_inside(number * step, unit) < controller.lowest_c - 1e-6:
        number += 1
    if set_c <= controller.highest_c and to_inside(number * step, unit) > controller.highest_c + 1e-6:
        number -= 1
    return to_inside(number * step, unit)


def render(program: Program, controller: Controller, slot: int = 1) -> Rendered:
    """Values to key in. The program is rounded first; prove the rounded one. Raises InputError: as
    :func:`rounded`; or the slot does not exist.
    """
    if not 1 <= slot <= controller.slot_count:
        raise InputError("slot", slot, "1 to {most}", most=controller.slot_count)
    fitted = rounded(program, controller)
    ends = list(accumulate(fitted.durations_s()))
    values = []
    if controller.clock.counts_down:
        values.append(Keyed(stage=0, what="total", text=clock(ends[-1])))
    for number, stage in enumerate(fitted.stages, start=1):
        values.append(Keyed(stage=number, what="set", text=_temp_text(stage.set_c, controller)))
        if not controller.clock.counts_down:
            values.append(Keyed(stage=number, what="time", text=clock(ends[number - 1])))
        elif number > 1:
            values.append(Keyed(stage=number, what="time", text=clock(ends[-1] - ends[number - 2])))
        values.append(
            Keyed(stage=number, what="lid", text=str(stage.lid), by_crew=not controller.lid_control)
        )
    values += _unused(values, len(fitted.stages), controller)
    return Rendered(values=tuple(values), slot=slot, version=program.version)


def _temp_text(set_c: float, controller: Controller) -> str:
    return f"{to_people(set_c, str(controller.shows)):.4g}"


def _unused(values: Sequence[Keyed], used: int, controller: Controller) -> list[Keyed]:
    last = {v.what: v.text for v in values if v.stage == used}
    if controller.clock.counts_down:
        last["time"] = "0:00"
    mark = {
        UnusedStage.ZERO: {"set": "0", "time": "0:00"},
        UnusedStage.BLANK: {"set": BLANK, "time": BLANK},
        UnusedStage.REPEAT: last,
    }[controller.unused]
    return [
        Keyed(stage=number, what=what, text=mark[what])
        for number in range(used + 1, controller.stage_count + 1)
        for what in ("set", "time")
    ]
