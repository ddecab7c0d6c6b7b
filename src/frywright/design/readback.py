"""Names each difference between card and machine, with the slip it most likely is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from frywright.design.controller import Keyed
from frywright.model.fryer import Controller, TempUnit


@dataclass(frozen=True, slots=True, kw_only=True)
class Mismatch:
    """One value that differs: where, what it should be, what it is, the likely slip."""

    stage: int
    what: str
    wanted: str
    found: str
    slip: str


def _digits(text: str) -> str:
    return "".join(c for c in text if c.isdigit())


def likely_slip(wanted: str, found: str, others: Sequence[str], controller: Controller) -> str:
    """The simplest slip that turns ``wanted`` into ``found``.

    ``others`` are the card's values of the same kind, for values keyed into another stage.
    """
    a, b = _digits(wanted), _digits(found)
    if found.startswith(("-", "−")) and _digits(found) == a:
        return "sign"
    if wanted.isdigit() and b:
        degrees = float(a)
        other = (degrees - 32) * 5 / 9 if controller.shows is TempUnit.F else degrees * 9 / 5 + 32
        if abs(float(b) - other) <= 1.0:
            return "unit"
    if found in others and found != wanted:
        return "another stage's value"
    if len(a) == len(b):
        differing = [i for i in range(len(a)) if a[i] != b[i]]
        if len(differing) == 1:
            return "one digit"
        if len(differing) == 2 and differing[1] - differing[0] == 1 and a[differing[0]] == b[differing[1]] and a[differing[1]] == b[differing[0]]:  # fmt: skip
            return "two digits swapped"
    if len(a) == len(b) + 1 and any(a[:i] + a[i + 1 :] == b for i in range(len(a))):
        return "a digit left out"
    if len(b) == len(a) + 1 and any(b[:i] + b[i + 1 :] == a for i in range(len(b))):
        return "a digit too many"
    return "another value, perhaps an old version"


def compare(card: Sequence[Keyed], read: Sequence[str], controller: Controller) -> tuple[Mismatch, ...]:
    """All differences between the card's values and what was read, in order."""
    found = []
    for value, text in zip(card, read, strict=True):
        got = text.strip()
        if got.replace(",", ".") != value.text:
            others = [v.text for v in card if v.what == value.what]
            slip = likely_slip(value.text, got, others, controller)
            found.append(Mismatch(stage=value.stage, what=value.what, wanted=value.text, found=got, slip=slip))
    return tuple(found)
