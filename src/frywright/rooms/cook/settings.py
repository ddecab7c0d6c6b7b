"""The settings sheet of a fryer: shown, changed with a reason as a change of the kitchen, and on paper."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from frywright.catalog.settings import altitude_told_m
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.model.fryer import ClockStyle, Fryer, MachineSetting, SettingKind, TempUnit, WrongValue
from frywright.model.kitchen import Kitchen, Site
from frywright.model.tongues import Translate
from frywright.model.units import write
from frywright.paper.paper import PAPER, pdf, section
from frywright.rooms.clock import now
from frywright.rooms.cook.sheet_text import with_settings
from frywright.rooms.hall import SHORTEST_REASON
from frywright.rooms.kitchen import (
    kitchen_number,
    kitchen_text,
    remember_kitchen,
    remembered_kitchen,
)
from frywright.trial.naming import altitude_words
from frywright.trial.wrong_settings import SheetRow, sheet_rows, weakest_program

WRONG_ROWS = 4
"""Wrong values that the page has boxes for; more of them stand in the kitchen file."""
EFFECTS = {
    "": "said in words only",
    "oil": "the oil is off by",
    "time": "each time runs, in % of what is keyed",
    "scale": "the display is on the other scale",
    "clock_left": "the clock counts down and runs on during the vent",
    "clock_waits": "the clock counts down and stands still during the vent",
    "clock_elapsed": "the clock counts up",
    "lid": "stages under pressure run open",
    "file": "as the kitchen file says",
}
"""What a wrong value can do, by the key of the form."""
CAUTION = (
    "Set them by the maker's manual, oil cold or the fryer off where it says so. Never change a setting that"
    " belongs to a licensed technician, a relief valve, a high-limit or an interlock."
)
FOOT = (
    "Read every setting back after a repair, a power cut or a change of the control. The maker's manual wins."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class SettingsSheet:
    """A fryer's sheet as people read it."""

    fryer: str
    name: str
    place: str
    version: int
    program: str
    rows: tuple[SheetRow, ...]


def sheet(store: Store, kitchen: Kitchen, fryer: Fryer, translate: Translate = str) -> SettingsSheet:
    """The sheet of a fryer; ``version`` is the number of the kitchen it belongs to."""
    program = weakest_program(kitchen, fryer)
    return SettingsSheet(
        fryer=fryer.key,
        name=fryer.name,
        place=f"{kitchen.site.name}, {altitude_words(kitchen.site.altitude_m, kitchen.site.units)}",
        version=kitchen_number(store),
        program=program.name if program else "",
        rows=tuple(sheet_rows(kitchen, fryer, translate)),
    )


class SettingRefused(InputError):
    """A setting that cannot be, and the box of the form it is about."""

    def __init__(self, error: InputError, box: str) -> None:
        self.box = box
        super().__init__(
            error.field, error.value, error.template, where=error.where, unit=error.unit, **error.values
        )


BOXES = {"lowers": "lowers", "lowers, each": "lowers", "each": "each", "kind": "kind", "value": "value"}
"""Box of an error of the whole setting by its field; its name else."""


def change_setting(store: Store, form: Mapping[str, str]) -> Kept[KitchenSet]:
    """Add a setting, change it or take it off the sheet, as a change of the kitchen with its reason.
    Raises SettingRefused: a value cannot be, or the reason is missing; it says which box.
    Raises InputError: an unknown fryer or setting, or the kitchen changed since the form was shown.
    """
    with store.writing():
        kitchen = remembered_kitchen(store)
        if form.get("seen", "") != str(kitchen_number(store)):
            raise InputError(
                "kitchen", "changed since this page was shown", "looked at again: nothing was kept"
            )
        fryer = kitchen.fryer(form.get("fryer", ""))
        settings = list(fryer.settings)
        number = _number(form.get("number", ""), len(settings))
        reason = form.get("reason", "").strip()
        if number is not None and len(reason) < SHORTEST_REASON:
            error = InputError("reason", repr(reason), "given: why does this setting change?")
            raise SettingRefused(error, "reason")
        if form.get("act") == "remove" and number is not None:
            del settings[number]
        else:
            old = settings[number] if number is not None else None
            made = read_setting(kitchen.site, fryer, form, old)
            at = len(settings) if number is None else number
            settings[at : at + 1] = [made]
        text = _written(kitchen_text(store), fryer, settings, kitchen.site)
        return remember_kitchen(store, text, "kitchen.toml", reason or f"{settings[-1].name}: {fryer.name}")


def _number(text: str, count: int) -> int | None:
    """Place of a setting on its sheet; None for a new one."""
    if not text:
        return None
    if text.isascii() and text.isdigit() and int(text[:4]) < count:
        return int(text[:4])
    raise InputError("setting", repr(text[:20]), "one of this fryer's settings")


def _written(text: str, fryer: Fryer, settings: list[MachineSetting], site: Site) -> str:
    """The kitchen file with the sheet; what is wrong with the whole is told at the name."""
    try:
        replace(fryer, settings=tuple(settings))
    except InputError as error:
        raise SettingRefused(error, "name") from error
    return with_settings(text, fryer.key, settings, site.units)


def read_setting(
    site: Site, fryer: Fryer, form: Mapping[str, str], old: MachineSetting | None
) -> MachineSetting:
    """A setting as typed; wrong values without a reading are left out. Raises SettingRefused: a value cannot
    be; it says which box.
    """
    wrong = []
    for number in range(WRONG_ROWS):
        typed = {
            name: form.get(f"w{number}_{name}", "").strip() for name in ("reads", "does", "effect", "amount")
        }
        if not any(typed[name] for name in ("reads", "does", "amount")):
            continue
        try:
            wrong.append(_wrong_value(site, fryer, typed, old))
        except InputError as error:
            box = {"reads": "reads", "does": "does", "what it does": "effect"}.get(error.field, "amount")
            raise SettingRefused(error, f"w{number}_{box}") from error
    wrong += old.wrong[WRONG_ROWS:] if old else ()
    degrees, height = ("f_diff", "ft") if site.units == "us" else ("k", "m")
    lowers, each = form.get("lowers", "").strip(), form.get("each", "").strip()
    try:
        made = MachineSetting(
            name=form.get("name", "").strip(),
            kind=SettingKind(one_of(tuple(str(k) for k in SettingKind), form.get("kind"), "kind")),
            value=form.get("value", "").strip(),
            lowers_k=site.read(lowers, "temperature_difference", "lowers", degrees) if lowers else None,
            each_m=site.read(each, "length", "each", height) if each else None,
            wrong=tuple(wrong),
        )
        if made.each_m is not None and altitude_told_m(made, made.value, site) is None:
            raise InputError("value", repr(made.value), "a height such as 1600 m or 5250 ft")
    except InputError as error:
        raise SettingRefused(error, BOXES.get(error.field, "name")) from error
    return made


def _wrong_value(
    site: Site, fryer: Fryer, typed: Mapping[str, str], old: MachineSetting | None
) -> WrongValue:
    effect, amount = one_of(tuple(EFFECTS), typed["effect"], "what it does"), typed["amount"]
    found = WrongValue(reads=typed["reads"], does=typed["does"])
    if effect == "file":
        known = next((w for w in old.wrong if w.reads == typed["reads"]), None) if old else None
        if known is None:
            raise InputError(
                "what it does", EFFECTS["file"], "one of the others: the file does not know this value"
            )
        return replace(known, does=typed["does"])
    if effect == "oil":
        degrees = "f_diff" if site.units == "us" else "k"
        return replace(found, set_change_k=site.read(amount, "temperature_difference", "amount", degrees))
    if effect == "time":
        return replace(found, time_frac=site.number(amount.removesuffix("%").strip(), "amount") / 100.0)
    if amount:
        raise InputError("amount", repr(amount), "left empty, or chosen what it changes: oil or time")
    if effect == "scale":
        return replace(found, shows=TempUnit.C if fryer.controller.shows is TempUnit.F else TempUnit.F)
    if effect.startswith("clock_"):
        return replace(found, clock=ClockStyle(effect.removeprefix("clock_")))
    return replace(found, lid_open=True) if effect == "lid" else found


def typed_setting(setting: MachineSetting, site: Site) -> dict[str, str]:
    """A setting as its form shows it."""
    degrees, height = ("f_diff", "ft") if site.units == "us" else ("k", "m")
    shown = {
        "name": setting.name,
        "kind": str(setting.kind),
        "value": setting.value,
        "lowers": "",
        "each": "",
    }
    if setting.lowers_k is not None and setting.each_m is not None:
        shown |= {"lowers": write(setting.lowers_k, degrees), "each": write(setting.each_m, height)}
    for number, wrong in enumerate(setting.wrong[:WRONG_ROWS]):
        effect, amount = _effect_of(wrong, degrees)
        told = {"reads": wrong.reads, "does": wrong.does, "effect": effect, "amount": amount}
        shown |= {f"w{number}_{name}": text for name, text in told.items()}
    return shown


def _effect_of(wrong: WrongValue, degrees: str) -> tuple[str, str]:
    """Key of the form for what a wrong value does, and its amount; two things stay with the file."""
    found = [
        ("oil", write(wrong.set_change_k, degrees)) if wrong.set_change_k else None,
        ("time", f"{100.0 * wrong.time_frac:.4g}") if wrong.time_frac != 1.0 else None,
        ("scale", "") if wrong.shows else None,
        (f"clock_{wrong.clock}", "") if wrong.clock else None,
        ("lid", "") if wrong.lid_open else None,
    ]
    told = [pair for pair in found if pair]
    if len(told) > 1:
        return "file", ""
    return told[0] if told else ("", "")


def sheet_pdf(
    store: Store, kitchen: Kitchen, fryer: Fryer, language: str = "en", tr: Translate = str
) -> bytes:
    """The sheet on paper, for the side of the machine."""
    shown = sheet(store, kitchen, fryer, tr)
    off = tr("The sheet is not for this place: mend it.")
    rows = [[row.name, f"{row.value}{' ⚠ ' + off if row.off_place else ''}"] for row in shown.rows]
    wrong = [[row.name, w.reads, w.text] for row in shown.rows for w in row.wrong]
    sections = [
        section(tr("Set it so"), [tr("setting"), tr("must read")], [3, 3], rows),
        section(
            tr("What a wrong one does"), [tr("setting"), tr("if it reads"), tr("then")], [2, 2, 5], wrong
        ),
    ]
    return pdf(
        "handover.typ",
        "handover",
        {
            "title": f"{tr('Machine settings')}: {shown.name}",
            "place": shown.place,
            "when": f"{now():%Y-%m-%d} · {tr('kitchen of entry')} {shown.version}",
            "language": language,
            "paper": PAPER[kitchen.site.units],
            "sections": sections,
            "signs": [tr("set by"), tr("read back by")],
            "caution": tr(CAUTION),
            "foot": tr(FOOT),
        },
    )
