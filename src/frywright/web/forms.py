"""Reads the Cook form: what a person typed, kept as typed, turned into a request."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program, Stage, StageEnd
from frywright.model.units import clock, parse, to_people
from frywright.workbench.cook import CookRequest, carry_over, edit_program, program_of

DEFAULT_UNIT = {
    "us": {"temperature": "f", "mass": "lb", "pressure": "psi", "length": "ft", "time": "min"},
    "metric": {"temperature": "c", "mass": "kg", "pressure": "kpa", "length": "m", "time": "min"},
}
END_DIMENSION = {
    StageEnd.DURATION: "time", StageEnd.ELAPSED: "time", StageEnd.LEFT: "time",
    StageEnd.OIL_ABOVE: "temperature", StageEnd.CORE_ABOVE: "temperature", StageEnd.GAUGE_ABOVE: "pressure",
}  # fmt: skip
END_FIELD = {
    StageEnd.DURATION: "duration_s", StageEnd.ELAPSED: "until_elapsed_s", StageEnd.LEFT: "until_left_s",
    StageEnd.OIL_ABOVE: "until_oil_c", StageEnd.CORE_ABOVE: "until_core_c", StageEnd.GAUGE_ABOVE: "until_gauge_pa",
}  # fmt: skip
MOST_STAGES = 20


@dataclass(frozen=True, slots=True)
class StageText:
    """One stage as typed."""

    set: str
    lid: str
    end: str
    value: str
    most: str


class CookForm:
    """The form of room Cook over a kitchen; missing fields take the program's values."""

    def __init__(self, kitchen: Kitchen, values: Mapping[str, object]) -> None:
        self.kitchen = kitchen
        self._values = {str(k): str(v).strip() for k, v in values.items()}
        for name, known in (("product", kitchen.products), ("fryer", kitchen.fryers)):
            if self._values.get(name) not in [item.key for item in known]:
                self._values.pop(name, None)
        self.system = str(kitchen.site.units)
        self.names = sorted({p.name for p in kitchen.programs})
        self.program_name = self._chosen_program()
        self.stages = self._typed_stages()

    def _chosen_program(self) -> str:
        """The program named; a product and fryer chosen anew lead to the program stored for them."""
        name = self._values.get("program") or (self.names[0] if self.names else "")
        product, fryer = self._values.get("product"), self._values.get("fryer")
        if product and fryer and not self._values.get("s0_set"):
            return program_of(self.kitchen, product, fryer) or name
        return name

    def text(self, name: str, default: str = "") -> str:
        """What was typed into a field."""
        return self._values.get(name, default)

    @property
    def program(self) -> Program:
        """The program chosen; with another product or fryer it is a draft for that pair."""
        stored = self.kitchen.program(self.program_name)
        product, fryer = self.text("product") or stored.product, self.text("fryer") or stored.fryer
        if (product, fryer) == (stored.product, stored.fryer):
            return stored
        return carry_over(self.kitchen, stored, self.kitchen.product(product), self.kitchen.fryer(fryer))

    @property
    def max_stages(self) -> int:
        """How many stages the chosen fryer can hold."""
        return min(self.kitchen.fryer(self.program.fryer).controller.stage_count, MOST_STAGES)

    @property
    def can_press(self) -> bool:
        """Whether the chosen fryer closes under pressure."""
        return str(self.kitchen.fryer(self.program.fryer).kind) == "pressure"

    def _typed_stages(self) -> list[StageText]:
        found = []
        for i in range(MOST_STAGES):
            if self._values.get(f"s{i}_set"):
                get = self._values.get
                found.append(StageText(
                    get(f"s{i}_set", ""), get(f"s{i}_lid", "open"), get(f"s{i}_end", "duration"),
                    get(f"s{i}_value", ""), get(f"s{i}_most", ""),
                ))  # fmt: skip
        known = self.program_name in self.names
        stages = self.kitchen.program(self.program_name).stages if known else ()
        return found or [self._stored(stage) for stage in stages]

    def _stored(self, stage: Stage) -> StageText:
        kind = stage.end
        dimension = END_DIMENSION[kind]
        value = clock(stage.end_value) if dimension == "time" else self._people(stage.end_value, dimension)
        most = clock(stage.at_most_s) if stage.at_most_s else ""
        return StageText(self._people(stage.set_c, "temperature"), str(stage.lid), str(kind), value, most)

    def _people(self, value: float, dimension: str) -> str:
        return f"{to_people(value, DEFAULT_UNIT[self.system][dimension]):g}"

    def _number(self, text: str, dimension: str, name: str) -> float:
        """Inside value; a bare number takes the kitchen's unit, a bare time minutes."""
        bare = text.replace(",", ".").lstrip("+-").replace(".", "", 1)
        if bare.isdigit():
            text = f"{text} {DEFAULT_UNIT[self.system][dimension]}"
        return parse(text, dimension, name)

    def _optional(self, field: str, dimension: str) -> float | None:
        text = self.text(field)
        return self._number(text, dimension, field) if text else None

    def edited(self) -> Program:
        """The program with the stages typed.

        Raises
        ------
        InputError
            Names the stage and field that cannot be read.
        """
        stages = []
        for number, typed in enumerate(self.stages, start=1):
            try:
                stages.append(self._stage(typed))
            except InputError as error:
                place = f"{self.program_name}, stage {number}"
                raise InputError(error.field, error.value, error.template, where=place, values=error.values) from error
        program = self.program
        if tuple(stages) == program.stages:
            return program
        stored = program.name in self.names and program in self.kitchen.programs
        return edit_program(program, stages) if stored else replace(program, stages=tuple(stages), total_s=None)

    def _stage(self, typed: StageText) -> Stage:
        ends = {str(kind): kind for kind in StageEnd}
        if typed.end not in ends or typed.lid not in [str(lid) for lid in LidState]:
            raise InputError("stage", f"{typed.end}/{typed.lid}", "one of the choices offered")
        kind = ends[typed.end]
        value = self._number(typed.value, END_DIMENSION[kind], "time" if END_DIMENSION[kind] == "time" else "value")
        most = self._number(typed.most, "time", "at most") if typed.most else None
        set_c = self._number(typed.set, "temperature", "set point")
        return Stage(set_c=set_c, lid=LidState(typed.lid), at_most_s=most, **{END_FIELD[kind]: value})

    def request(self) -> CookRequest:
        """The request typed; InputError names what cannot be read."""
        load = self.text("load")
        by_mass = any(c.isalpha() for c in load) and any(c.isdigit() for c in load)
        count = None
        if load and not by_mass:
            try:
                count = float(load.replace(",", "."))
            except ValueError as error:
                raise InputError("load", repr(load), "a count such as 4, or a mass such as 9 lb") from error
        return CookRequest(
            program=self.edited(), units_count=count,
            load_kg=parse(load, "mass", "load") if by_mass else None,
            start_temp_c=self._optional("start", "temperature"),
            oil_start_c=self._optional("oil", "temperature"),
            altitude_m=self._optional("altitude", "length"),
        )  # fmt: skip
