"""Reads what a machine shows, names each difference to the card with the slip it most likely is."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from frywright.design.controller import BLANK, Keyed
from frywright.model.errors import InputError
from frywright.model.fryer import Controller, TempUnit
from frywright.model.units import clock, parse, parse_clock, to_people

UNUSED = {
    "",
    "0",
    "0:00",
    "00:00",
    "off",
    "apagado",
    "no",
    "-",
    "--",
    "---",
    "----",
    "--:--",
    "-:--",
    BLANK,
    "—",
}
"""How displays and people write a stage that holds nothing. Common practice, no source."""
_POINTED = re.compile(r"([0-9]{1,2})[.,\s]([0-5][0-9])")


@dataclass(frozen=True, slots=True, kw_only=True)
class Mismatch:
    """One value that differs: where, what it should be, what it is, the likely slip; ``name`` is the
    kitchen's own of a machine setting.
    """

    stage: int
    what: str
    wanted: str
    found: str
    slip: str
    name: str = ""


def is_unused(text: str) -> bool:
    """Whether a text says that a stage holds nothing."""
    return text.strip().lower() in UNUSED


def clock_of(text: str) -> float | None:
    """Seconds of a time as :func:`tidy` leaves it; None where nothing is held."""
    return parse_clock(text) if any(c.isdigit() for c in text) else None


def degrees_c(text: str, controller: Controller) -> float:
    """Set point as :func:`tidy` leaves it."""
    return parse(text, "temperature", "set", bare=str(controller.shows))


def tidy(value: Keyed, text: str, controller: Controller) -> str:
    """What was read, written as a card writes it: ``03:40`` is 3:40, ``335.0°F`` is 335, ``OFF`` is nothing
    held. Raises InputError: it cannot be read, or has two readings: look at the display again.
    """
    where, text = f"stage {value.stage}" if value.stage else "", text.strip()
    if value.what == "lid":
        return text
    if is_unused(text) and is_unused(value.text):
        return value.text
    if is_unused(text) and not any(c.isdigit() for c in text):
        return BLANK
    try:
        if value.what == "set":
            return _tidy_set(text, controller)
        return _tidy_time(text)
    except InputError as error:
        raise InputError(value.what, error.value, error.template, where=where, **error.values) from error


def _tidy_set(text: str, controller: Controller) -> str:
    own = str(controller.shows)
    other = "c" if own == "f" else "f"
    shown = f"{to_people(degrees_c(text, controller), own):.4g}"
    foreign = text.lower().rstrip().endswith(other)
    return f"{to_people(degrees_c(text, controller), other):.4g} °{other.upper()}" if foreign else shown


def _tidy_time(text: str) -> str:
    """A clock's reading; ``11.20`` is one, since a card and a machine know no minutes with decimals."""
    pointed = _POINTED.fullmatch(text)
    if pointed:
        return f"{int(pointed[1])}:{pointed[2]}"
    if ":" in text:
        return clock(parse_clock(text))
    if text == "0":
        return "0:00"
    if text.isascii() and text.isdigit():
        as_clock = f"{int(text[:-2] or 0)}:{text[-2:]:0>2}" if int(text[-2:]) < 60 else f"{text}:00"
        values = {"one": as_clock, "other": f"{text}:00" if len(text) < 3 else clock(float(text))}
        raise InputError("time", repr(text), "clear: type {one} or type {other}", **values)
    return clock(parse(text, "time"))


def _digits(text: str) -> str:
    return "".join(c for c in text if c.isdigit())


def likely_slip(wanted: str, found: str, others: Sequence[str], controller: Controller) -> str:
    """The simplest slip that turns ``wanted`` into ``found``.

    ``others`` are the card's values of the same kind, for values keyed into another stage.
    """
    a, b = _digits(wanted), _digits(found)
    if is_unused(found):
        return "nothing keyed"
    if found.startswith(("-", "−")) and _digits(found) == a:
        return "sign"
    if wanted.isdigit() and b:
        degrees = float(a)
        other = (degrees - 32) * 5 / 9 if controller.shows is TempUnit.F else degrees * 9 / 5 + 32
        if abs(float(b) - other) <= 1.0:
            return "unit"
    if found in others and found != wanted:
        return "another stage's value"
    return _slip_of_digits(a, b) or "another value, perhaps an old version"


def _slip_of_digits(a: str, b: str) -> str:
    """The slip of one key that turns the digits ``a`` into ``b``; empty where none does."""
    differing = [i for i in range(len(a)) if a[i] != b[i]] if len(a) == len(b) else []
    if len(differing) == 1:
        return "one digit"
    if a != b and any(a[:i] + a[i + 1] + a[i] + a[i + 2 :] == b for i in range(len(a) - 1)):
        return "two digits swapped"
    if _one_less(a, b):
        return "a digit left out"
    return "a digit too many" if _one_less(b, a) else ""


def _one_less(long: str, short: str) -> bool:
    """Whether a text less one of its letters is the other."""
    return any(long[:i] + long[i + 1 :] == short for i in range(len(long)))


def compare(card: Sequence[Keyed], read: Sequence[str], controller: Controller) -> tuple[Mismatch, ...]:
    """All differences between the card's values and what was read, as :func:`tidy` leaves it, in order."""
    found = []
    for value, got in zip(card, read, strict=True):
        if got != value.text:
            others = [v.text for v in card if v.what == value.what]
            slip = likely_slip(value.text, got, others, controller)
            found.append(
                Mismatch(stage=value.stage, what=value.what, wanted=value.text, found=got, slip=slip)
            )
    return tuple(found)
