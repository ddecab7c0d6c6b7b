"""Reads the Cook form: what a person typed, kept as typed, turned into a request."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace

from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program, Stage, StageEnd
from frywright.model.units import BARE, clock, write
from frywright.trial.ask import CookRequest, carry_over, check_asked, edit_program, program_of
from frywright.trial.predicted import Answerer

END_DIMENSION = {
    StageEnd.DURATION: "time",
    StageEnd.ELAPSED: "time",
    StageEnd.LEFT: "time",
    StageEnd.OIL_ABOVE: "temperature",
    StageEnd.CORE_ABOVE: "temperature",
    StageEnd.GAUGE_ABOVE: "pressure",
}
END_FIELD = {
    StageEnd.DURATION: "duration_s",
    StageEnd.ELAPSED: "until_elapsed_s",
    StageEnd.LEFT: "until_left_s",
    StageEnd.OIL_ABOVE: "until_oil_c",
    StageEnd.CORE_ABOVE: "until_core_c",
    StageEnd.GAUGE_ABOVE: "until_gauge_pa",
}
MOST_STAGES = 20
BOX = {
    "load": "load",
    "start_temp": "start",
    "oil temperature": "oil",
    "altitude": "altitude",
    "program": "program",
}
"""Box of the form that holds a value, by the name errors give the value."""
STAGE_BOX = {"set": "set", "set point": "set", "lid": "lid", "at_most": "most"}
STAGE_PLACE = re.compile(r"stage (\d+)$")
COUNT_WORDS = ("heads", "head", "pieces", "piece", "packs", "pack", "cabezas", "cabeza", "piezas", "pieza")


def whole_number(text: str, name: str, digits: int = 3) -> int | None:
    """A count as typed, None for an empty box. Raises InputError: anything but up to so many digits."""
    text = text.strip()
    if text and not (text.isascii() and text.isdigit() and len(text) <= digits):
        raise InputError(name, repr(text), "a whole number of up to {digits} digits", digits=digits)
    return int(text) if text else None


@dataclass(frozen=True, slots=True)
class StageText:
    """One stage as typed."""

    set: str
    lid: str
    end: str
    value: str
    most: str


GOOD_STAGE = StageText("170 C", "open", "duration", "5:00", "")
"""Values beside which one box of a stage is tried alone."""


class CookForm:
    """The form of room Cook over a kitchen; missing fields take the program's values."""

    def __init__(self, kitchen: Kitchen, values: Mapping[str, object]) -> None:
        self.kitchen = kitchen
        self._values = {str(k): str(v).strip() for k, v in values.items()}
        for name, known in (("product", kitchen.products), ("fryer", kitchen.fryers)):
            if self._values.get(name) not in [item.key for item in known]:
                self._values.pop(name, None)
        self.system = kitchen.site.units
        self.names = sorted({p.name for p in kitchen.programs})
        named = {name.partition("_")[0] for name in self._values if "_" in name}
        self._rows = [i for i in range(MOST_STAGES) if f"s{i}" in named]
        self.program_name = self._chosen_program()
        self.stages = self._typed_stages()

    def _chosen_program(self) -> str:
        """The program named; a product and fryer chosen anew lead to the program stored for them."""
        name = self._values.get("program") or (self.names[0] if self.names else "")
        product, fryer = self._values.get("product"), self._values.get("fryer")
        if product and fryer and not self._rows:
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
    def base(self) -> str:
        """Version and name of the program that the stages typed were begun on."""
        typed = self.text("based_on")
        return (
            typed
            if typed.partition(" ")[2] == self.program_name
            else f"{self.program.version} {self.program.name}"
        )

    @property
    def stored(self) -> bool:
        """Whether what is typed is a change of a program in the store, not a draft for another pair."""
        return self.program in self.kitchen.programs

    @property
    def max_stages(self) -> int:
        """How many stages the chosen fryer can hold."""
        return min(self.kitchen.fryer(self.program.fryer).controller.stage_count, MOST_STAGES)

    @property
    def can_press(self) -> bool:
        """Whether the chosen fryer closes under pressure."""
        return str(self.kitchen.fryer(self.program.fryer).kind) == "pressure"

    def _typed_stages(self) -> list[StageText]:
        get = self._values.get
        if self._rows:
            rows = [i for i in self._rows if not get(f"s{i}_out")] or self._rows[:1]
            return [
                StageText(
                    get(f"s{i}_set", ""),
                    get(f"s{i}_lid", "open"),
                    get(f"s{i}_end", "duration"),
                    get(f"s{i}_value", ""),
                    get(f"s{i}_most", ""),
                )
                for i in rows
            ]
        known = self.program_name in self.names
        return (
            [self._stored(stage) for stage in self.kitchen.program(self.program_name).stages] if known else []
        )

    def _stored(self, stage: Stage) -> StageText:
        kind = stage.end
        dimension = END_DIMENSION[kind]
        value = clock(stage.end_value) if dimension == "time" else self._people(stage.end_value, dimension)
        most = clock(stage.at_most_s) if stage.at_most_s else ""
        return StageText(self._people(stage.set_c, "temperature"), str(stage.lid), str(kind), value, most)

    def _people(self, value: float, dimension: str) -> str:
        return write(value, BARE[self.system][dimension])

    def _optional(self, field: str, dimension: str, name: str) -> float | None:
        text = self.text(field)
        return self.kitchen.site.read(text, dimension, name) if text else None

    def box_of(self, error: InputError) -> str:
        """Name of the box whose value an error speaks of; empty where it is none of the form's."""
        place = STAGE_PLACE.search(error.where)
        if place and error.field in STAGE_BOX:
            return f"s{int(place[1]) - 1}_{STAGE_BOX[error.field]}"
        if place:
            return f"s{int(place[1]) - 1}_value"
        if error.field == "lid":
            return "s0_lid"
        return BOX.get(error.field, "")

    def wrong(self, told: InputError) -> dict[str, InputError]:
        """Every box with a wrong value and its own error; ``told`` is the one that stopped the answer."""
        found = {self.box_of(told): told}
        for read in (*self._conditions().values(), *self._stage_reads()):
            try:
                read()
            except InputError as error:
                found.setdefault(self.box_of(error), error)
        found.pop("", None)
        return found

    def _conditions(self) -> dict[str, Callable[[], object]]:
        """How each box beside the stages is read and tried alone."""

        def tried(read: Callable[[], Mapping[str, float | None]]) -> Callable[[], object]:
            return lambda: check_asked(self.kitchen, CookRequest(program=self.program, **read()))

        reads = {
            "load": self._load,
            "start": lambda: {"start_temp_c": self._optional("start", "temperature", "start_temp")},
            "oil": lambda: {"oil_start_c": self._optional("oil", "temperature", "oil temperature")},
            "altitude": lambda: {"altitude_m": self._optional("altitude", "length", "altitude")},
        }
        return {box: tried(read) for box, read in reads.items()}

    def _stage_reads(self) -> list[Callable[[], object]]:
        """How each box of each stage is read and tried alone, beside good values in the others."""

        def at(number: int, typed: StageText) -> Callable[[], object]:
            def read() -> object:
                try:
                    return self._stage(typed)
                except InputError as error:
                    raise error.at(f"{self.program_name}, stage {number}") from error

            return read

        found = []
        for number, typed in enumerate(self.stages, start=1):
            alone = (
                replace(GOOD_STAGE, set=typed.set or ""),
                replace(GOOD_STAGE, end=typed.end, value=typed.value, most=GOOD_STAGE.value),
                replace(GOOD_STAGE, most=typed.most),
            )
            found += [at(number, one) for one in alone]
        return found

    def edited(self) -> Program:
        """The program with the stages typed. Raises InputError: names the stage and field that cannot be
        read.
        """
        stages: list[Stage] = []
        stored = self.program.stages
        for number, typed in enumerate(self.stages, start=1):
            try:
                kept = number <= len(stored) and typed == self._stored(stored[number - 1])
                stages.append(stored[number - 1] if kept else self._stage(typed))
            except InputError as error:
                raise error.at(f"{self.program_name}, stage {number}") from error
        program = self.program
        if tuple(stages) == program.stages:
            return program
        known = program.name in self.names and program in self.kitchen.programs
        return (
            edit_program(program, stages) if known else replace(program, stages=tuple(stages), total_s=None)
        )

    def _stage(self, typed: StageText) -> Stage:
        ends = {str(kind): kind for kind in StageEnd}
        if typed.end not in ends or typed.lid not in [str(lid) for lid in LidState]:
            raise InputError("stage", f"{typed.end}/{typed.lid}", "one of the choices offered")
        kind = ends[typed.end]
        if not typed.set:
            raise InputError("set point", "empty", "a temperature; take the stage out if it is not wanted")
        read, timed = self.kitchen.site.read, END_DIMENSION[kind] == "time"
        set_c = read(typed.set, "temperature", "set point")
        value = read(typed.value, END_DIMENSION[kind], "time" if timed else "value")
        most = read(typed.most, "time", "at_most") if typed.most else None
        return Stage(set_c=set_c, lid=LidState(typed.lid), at_most_s=most, **{END_FIELD[kind]: value})

    def answerer(self) -> Answerer:
        """Who answers for a program that is predicted short, as typed."""
        return Answerer(by=self.text("by"), reason=self.text("reason"))

    def request(self) -> CookRequest:
        """The request typed; InputError names what cannot be read."""
        return CookRequest(
            program=self.edited(),
            **self._load(),
            start_temp_c=self._optional("start", "temperature", "start_temp"),
            oil_start_c=self._optional("oil", "temperature", "oil temperature"),
            altitude_m=self._optional("altitude", "length", "altitude"),
        )

    def _load(self) -> dict[str, float | None]:
        """The load typed, as a count or a mass."""
        load = self.text("load")
        words = load.rsplit(None, 1)
        if len(words) == 2 and words[1].lower() in COUNT_WORDS:
            load = words[0]
        by_mass = any(c.isalpha() for c in load) and any(c.isdigit() for c in load)
        return {
            "units_count": self._count(load) if load and not by_mass else None,
            "load_kg": self.kitchen.site.read(load, "mass", "load") if by_mass else None,
        }

    def _count(self, load: str) -> float:
        try:
            return self.kitchen.site.number(load, "load")
        except InputError as error:
            if error.template != "a number":
                raise
            raise InputError("load", repr(load), "a count such as 4, or a mass with its unit") from error
