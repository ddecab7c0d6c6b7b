"""A program a kitchen cooks by already, typed stage by stage."""

from __future__ import annotations

from frywright.model.errors import InputError
from frywright.model.fryer import CEILING_C, FryerKind
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program, Stage
from frywright.rooms.cook.setup_read import Asked
from frywright.trial.naming import named

MOST_ROWS = 10
LIDS = tuple(str(lid) for lid in LidState)


def rows_of(kitchen: Kitchen, fryer: str) -> int:
    """How many stages are asked for: what the control holds."""
    return min(kitchen.fryer(fryer).controller.stage_count, MOST_ROWS)


def own_program(kitchen: Kitchen, asked: Asked) -> Program | None:
    """The program typed, under a name of its own; None where a box is wrong, which ``asked`` then says.
    Raises InputError: no such fryer or product, or a program that the fryer cannot hold.
    """
    fryer = kitchen.fryer(asked.text("fryer"))
    product = kitchen.product(asked.text("product"))
    stages, open_only = [], fryer.kind is FryerKind.OPEN
    for row in range(1, rows_of(kitchen, fryer.key) + 1):
        boxes = f"set{row}", f"time{row}"
        if row > 1 and not any(asked.text(box) for box in boxes):
            continue
        set_c = _named(asked, boxes[0], "temperature", (60.0, CEILING_C, "c"))
        time_s = _named(asked, boxes[1], "time", (1.0, 7200.0, "s"))
        lid = LidState.OPEN if open_only else LidState(asked.choice(f"lid{row}", LIDS) or LidState.OPEN)
        if set_c is not None and time_s is not None:
            stages.append(Stage(set_c=set_c, lid=lid, duration_s=time_s))
    if asked.wrong:
        return None
    program = Program(name="draft", product=product.key, fryer=fryer.key, stages=tuple(stages))
    kitchen.check(program)
    return named(kitchen, program)


def _named(asked: Asked, box: str, dimension: str, bounds: tuple[float, float, str]) -> float | None:
    """A number of a row, called by what it is and not by its row."""
    found = asked.amount(box, dimension, bounds)
    error = asked.wrong.get(box)
    if error is not None:
        asked.wrong[box] = _renamed(error, "set point" if dimension == "temperature" else "time")
    return found


def _renamed(error: InputError, field: str) -> InputError:
    return InputError(field, error.value, error.template, where=error.where, **error.values, unit=error.unit)
