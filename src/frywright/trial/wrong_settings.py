"""What each wrong setting of a machine does to the food: simulated on the program with the least to spare,
said in words where no simulation knows it.
"""

from __future__ import annotations

from dataclasses import dataclass

from frywright.catalog.settings import altitude_told_m, off_place
from frywright.design.controller import render, rounded
from frywright.design.readback import Mismatch
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.trial.effect import effect_of, effect_view, worst_answer
from frywright.trial.machine import ELSE, UNKNOWN_TEXTS, Setting, as_set, machine_settings
from frywright.trial.predicted import program_facts

FIGURES = "{program}: coldest piece {held} (set right {card}), lift at {lift}."
NO_PROGRAM = "No program of this fryer can run with it."
KNOWN_WORDS = {
    "scale": "Set points are read on another scale: the oil may be far from what the card asks.",
    "clock": "No program of this fryer can run with it.",
    "clock during the vent": "The time under heat changes by the time of the vent.",
}
"""What every control's wrong setting does, where the fryer has no program to simulate it on."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WrongReading:
    """One wrong value of a setting and what it does, in words."""

    reads: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetRow:
    """One setting of a sheet in words; ``number`` counts the kitchen's own, None for the others."""

    number: int | None
    name: str
    value: str
    kind: str
    off_place: bool
    wrong: tuple[WrongReading, ...]


def sheet_rows(kitchen: Kitchen, fryer: Fryer, translate: Translate = str) -> list[SheetRow]:
    """A fryer's settings, each with what its wrong values do."""
    program = weakest_program(kitchen, fryer)
    rows = []
    for setting in machine_settings(fryer, kitchen.site):
        wrong = [
            WrongReading(
                reads=read if setting.own else translate(read),
                text=_does(kitchen, fryer, program, setting, read, translate),
            )
            for read in _wrong_readings(setting, kitchen)
        ]
        rows.append(
            SheetRow(
                number=fryer.settings.index(setting.own) if setting.own else None,
                name=setting.name or translate(setting.what),
                value=setting.card if setting.own else translate(setting.card),
                kind=str(setting.own.kind) if setting.own else setting.what,
                off_place=setting.own is not None and off_place(setting.own, kitchen.site),
                wrong=tuple(wrong),
            )
        )
    return rows


def weakest_program(kitchen: Kitchen, fryer: Fryer) -> Program | None:
    """The program of a fryer with the least to spare, as long as its control holds it; None without one."""
    found = []
    for name in sorted({p.name for p in kitchen.own_programs if p.fryer == fryer.key}):
        program = kitchen.program(name)
        try:
            render(program, fryer.controller)
            margin_k = program_facts(kitchen, program).margin_k
        except InputError:
            continue
        found.append((float("inf") if margin_k is None else margin_k, name, program))
    return min(found)[2] if found else None


def _wrong_readings(setting: Setting, kitchen: Kitchen) -> list[str]:
    """The wrong values worth a line: those offered, and of an altitude that was never set the sea."""
    if setting.choices:
        return [c for c in setting.choices if c not in (setting.card, ELSE)]
    sea = "0 ft" if kitchen.site.units == "us" else "0 m"
    right_m = altitude_told_m(setting.own, setting.card, kitchen.site) if setting.own else None
    if right_m is not None and abs(right_m) > 1.0:
        return [sea]
    return []


def _does(
    kitchen: Kitchen, fryer: Fryer, program: Program | None, setting: Setting, read: str, translate: Translate
) -> str:
    """What a wrong value does, in words: the kitchen's, simulated figures, warnings of the oil."""
    system = kitchen.site.units
    own = next((w for w in setting.own.wrong if w.reads == read), None) if setting.own else None
    said = [own.does] if own and own.does else []
    known = setting.own is None or (own.known if own else setting.own.lowers_k is not None)
    if not known:
        text = translate(UNKNOWN_TEXTS[setting.own.kind]) if setting.own else ""
        return " ".join(said) or text[:1].upper() + text[1:]
    if program is None:
        return " ".join(said) or translate(KNOWN_WORDS.get(setting.what, "Not simulated: no program yet."))
    machine = as_set(kitchen, program, {setting.key: read})
    held = machine.holds(render(program, fryer.controller).values, program)
    answer = worst_answer(machine.in_kitchen(kitchen, fryer), held.programs)
    mismatch = Mismatch(stage=0, what=setting.what, wanted=setting.card, found=read, slip="setting")
    effect = effect_of(kitchen, rounded(program, fryer.controller), held, answer, [mismatch])
    view = effect_view(effect, system, translate)
    if effect.held is None:
        return " ".join([*said, translate(NO_PROGRAM)])
    rows = {"card": view.rows[0].card, "held": view.rows[0].held, "lift": view.rows[-1].held}
    figures = say(FIGURES, {"program": program.name, **rows}, system, translate)
    return " ".join([*said, *view.warnings, figures])
