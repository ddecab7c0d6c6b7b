"""What is read back of a machine besides the values keyed, and what a setting that reads otherwise makes of a
program.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from frywright.catalog.settings import altitude_told_m, off_place
from frywright.design.controller import Keyed, render
from frywright.design.held import COOLEST_SET_C, LONGEST_STAGE_S, Held, held_by
from frywright.design.readback import Mismatch
from frywright.model.errors import InputError
from frywright.model.findings import Note
from frywright.model.fryer import (
    CEILING_C,
    ClockStyle,
    Controller,
    Fryer,
    FryerKind,
    MachineSetting,
    SettingKind,
    TempUnit,
    WrongValue,
    plain_reading,
)
from frywright.model.kitchen import Kitchen, Site
from frywright.model.program import LidState, Program
from frywright.trial.naming import altitude_words

SCALES = {"°F": TempUnit.F, "°C": TempUnit.C}
CLOCKS = {True: "down", False: "up"}
VENTS = {True: "runs on", False: "stands still"}
SAME_HEIGHT_M = 1.0
"""Two heights that are one: less than any display shows (own rule)."""
ELSE = "something else"
"""What a person answers who reads none of the values offered."""
UNKNOWN_TEXTS = {
    SettingKind.SCALE: "the oil may be far from what the card asks.",
    SettingKind.LID: "the lid may not do what the card asks. Never open it before the gauge reads zero.",
    SettingKind.LOAD: "the machine may change time or heat for another load.",
    SettingKind.CLOCK: "the time may not be the card's.",
    SettingKind.ALTITUDE: "the machine may change its oil or its time.",
    SettingKind.ALARM: "an alarm may stay silent. Watch the clock and the oil.",
    SettingKind.OTHER: "the machine may do something else than the card asks.",
}
NOT_COUNTED = "{name} reads {found}: {does} The figures below do not count it."
"""A wrong setting that cannot be simulated."""
SAID = "{name} reads {found}: {does}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """Something of the machine, or of the crew's hands, that is read back besides the values keyed.

    ``own`` is the kitchen's own setting of that name; without choices it is typed as it reads.
    """

    key: str
    what: str
    stage: int
    choices: tuple[str, ...]
    card: str
    own: MachineSetting | None = None

    @property
    def name(self) -> str:
        """The kitchen's own name of it; empty for what every control has."""
        return self.own.name if self.own else ""


def machine_settings(fryer: Fryer, site: Site) -> tuple[Setting, ...]:
    """The standing settings of a fryer: the scale, which way the clock counts, whether it stops for the vent,
    and the kitchen's own.

    An own setting that says what a wrong scale or clock does stands in their place. An altitude on the sheet
    that is not the kitchen's own gives way to the kitchen's.
    """
    controller = fryer.controller
    found = []
    if not any(own.tells_scale for own in fryer.settings):
        scale = next(sign for sign, unit in SCALES.items() if unit is controller.shows)
        found.append(Setting(key="scale", what="scale", stage=0, choices=tuple(SCALES), card=scale))
    if not any(own.tells_clock for own in fryer.settings):
        way = CLOCKS[controller.clock.counts_down]
        found.append(Setting(key="clock", what="clock", stage=0, choices=("down", "up"), card=way))
        if fryer.kind is FryerKind.PRESSURE:
            stops = VENTS[controller.clock.runs_on]
            found.append(
                Setting(
                    key="vent",
                    what="clock during the vent",
                    stage=0,
                    choices=tuple(VENTS.values()),
                    card=stops,
                )
            )
    return (*found, *(_own(number, own, site) for number, own in enumerate(fryer.settings)))


def _own(number: int, own: MachineSetting, site: Site) -> Setting:
    choices = sorted((own.value, *(w.reads for w in own.wrong)), key=plain_reading) if own.wrong else []
    offered = (*choices, ELSE) if own.wrong else ()
    right = altitude_words(site.altitude_m, site.units) if off_place(own, site) else own.value
    return Setting(key=f"own{number}", what="setting", stage=0, choices=offered, card=right, own=own)


def settings_of(kitchen: Kitchen, program: Program) -> tuple[Setting, ...]:
    """What else is read back with a program: the fryer's settings, and the lid of each stage where a hand
    moves it.
    """
    fryer = kitchen.fryer(program.fryer)
    found = list(machine_settings(fryer, kitchen.site))
    if not program.under_pressure:
        found = [s for s in found if s.key != "vent"]
    if fryer.kind is FryerKind.PRESSURE and not fryer.controller.lid_control:
        found += [
            Setting(key=f"lid{v.stage}", what="lid", stage=v.stage, choices=("open", "pressure"), card=v.text)
            for v in render(program, fryer.controller).values
            if v.what == "lid"
        ]
    return tuple(found)


def told_settings(
    asked: Sequence[Setting], answers: Mapping[str, str], site: Site
) -> tuple[dict[str, str], tuple[Mismatch, ...]]:
    """Answers by their key or name, written as the sheet writes them, and those that differ; empty ones are
    left out. Raises InputError: an answer is none of its choices.
    """
    told, wrong = {}, []
    for setting in asked:
        text = (answers.get(setting.key) or answers.get(setting.name) or "").strip()
        if not text:
            continue
        text = _reading(setting, text, site)
        told[setting.key] = text
        if text != setting.card:
            wrong.append(
                Mismatch(
                    stage=setting.stage,
                    what=setting.what,
                    name=setting.name,
                    wanted=setting.card,
                    found=text,
                    slip="setting",
                )
            )
    return told, tuple(wrong)


def _reading(setting: Setting, text: str, site: Site) -> str:
    """An answer as the sheet writes it: its own words, whatever capitals, blanks or unit it was typed in."""
    known = {plain_reading(choice): choice for choice in (*setting.choices, setting.card)}
    if plain_reading(text) in known:
        return known[plain_reading(text)]
    if setting.own is None:
        values = {"known": ", ".join(setting.choices)}
        raise InputError(setting.key, repr(text[:20]), "one of: {known}", **values)
    read_m, right_m = (altitude_told_m(setting.own, t, site) for t in (text, setting.card))
    if read_m is not None and right_m is not None and abs(read_m - right_m) < SAME_HEIGHT_M:
        return setting.card
    return text[:40]


@dataclass(frozen=True, slots=True, kw_only=True)
class Machine:
    """A control as its settings read: what it makes of the values it holds, and what no simulation knows.

    ``counts`` is False where its clock counts the other way: the values keyed then make no program.
    """

    controller: Controller
    runs_on: bool
    counts: bool = True
    lid_open: bool = False
    set_change_k: float = 0.0
    time_frac: float = 1.0
    notes: tuple[Note, ...] = ()

    def in_kitchen(self, kitchen: Kitchen, fryer: Fryer) -> Kitchen:
        """The kitchen with this machine's clock, stopping for the vent or not; without a sheet."""
        if self.runs_on == fryer.controller.clock.runs_on:
            return kitchen
        style = ClockStyle.LEFT if self.runs_on else ClockStyle.WAITS
        there = replace(fryer, controller=replace(fryer.controller, clock=style), settings=())
        return replace(kitchen, fryers=tuple(there if f.key == fryer.key else f for f in kitchen.fryers))

    def holds(self, values: Sequence[Keyed], like: Program) -> Held:
        """What it would run with values as a card orders them."""
        if not self.counts:
            return Held(programs=(), sets_c=(), in_order=False)
        if self.lid_open:
            values = [replace(v, text=str(LidState.OPEN)) if v.what == "lid" else v for v in values]
        held = held_by(values, self.controller, like)
        return Held(
            programs=tuple(self._moved(program) for program in held.programs),
            sets_c=tuple(set_c + self.set_change_k for set_c in held.sets_c),
            in_order=held.in_order,
        )

    def _moved(self, program: Program) -> Program:
        stages = tuple(
            replace(
                stage,
                set_c=min(max(stage.set_c + self.set_change_k, COOLEST_SET_C), CEILING_C),
                duration_s=min((stage.duration_s or 0.0) * self.time_frac, LONGEST_STAGE_S),
            )
            for stage in program.stages
        )
        return replace(program, stages=stages)


def as_set(kitchen: Kitchen, program: Program, told: Mapping[str, str]) -> Machine:
    """The control of a program's fryer with settings as they read; what is not told is right."""
    fryer = kitchen.fryer(program.fryer)
    right = fryer.controller
    found = Machine(controller=right, runs_on=right.clock.runs_on)
    for setting in machine_settings(fryer, kitchen.site):
        text = told.get(setting.key, setting.card)
        if text == setting.card:
            continue
        if setting.key == "scale":
            found = replace(found, controller=replace(right, shows=SCALES[text]))
        elif setting.key == "clock":
            found = replace(found, counts=False)
        elif setting.key == "vent":
            found = replace(found, runs_on=text == VENTS[True])
        else:
            found = _with_own(found, setting, text, kitchen.site, right)
    return found


def _with_own(machine: Machine, setting: Setting, text: str, site: Site, right: Controller) -> Machine:
    own = setting.own
    if own is None:
        return machine
    wrong = _wrong(own, text, setting.card, site)
    if wrong.shows is not None:
        machine = replace(machine, controller=replace(right, shows=wrong.shows))
    if wrong.clock is not None:
        counts = wrong.clock.counts_down is right.clock.counts_down
        machine = replace(machine, counts=machine.counts and counts, runs_on=wrong.clock.runs_on)
    return replace(
        machine,
        lid_open=machine.lid_open or wrong.lid_open,
        set_change_k=machine.set_change_k + wrong.set_change_k,
        time_frac=machine.time_frac * wrong.time_frac,
        notes=(*machine.notes, *_words(own, wrong)),
    )


def _wrong(own: MachineSetting, text: str, right: str, site: Site) -> WrongValue:
    """What a reading does, as the kitchen says it; of a height by how far it is from the right one."""
    listed = next((w for w in own.wrong if w.reads == text), None)
    if listed is not None:
        return listed
    read_m, right_m = (altitude_told_m(own, t, site) for t in (text, right))
    if own.lowers_k is None or own.each_m is None or read_m is None or right_m is None:
        return WrongValue(reads=text)
    change_k = -(read_m - right_m) / own.each_m * own.lowers_k
    return WrongValue(reads=text, set_change_k=min(max(change_k, -60.0), 60.0))


def _words(own: MachineSetting, wrong: WrongValue) -> Iterator[Note]:
    """What a wrong setting does where no simulation says it, or the kitchen says it in its own words."""
    if wrong.does or not wrong.known:
        text = SAID if wrong.known else NOT_COUNTED
        values = {"name": own.name, "found": wrong.reads, "does": wrong.does or UNKNOWN_TEXTS[own.kind]}
        yield Note(kind="setting", text=text, values=values)
