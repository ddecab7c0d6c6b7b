"""What a result tells besides its numbers: notes, problems and verdicts."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from frywright.model.errors import Phrase
from frywright.model.tongues import Translate
from frywright.model.units import show, suffix_of

Values = Mapping[str, Any]


def say(template: str, values: Values, system: str = "metric", translate: Translate = str) -> str:
    """A template such as ``"{piece} reaches {core_c}"`` in words, in people's units.

    Numbers whose name ends in a unit are shown with that unit in ``system``; text values are
    translated too, so a template never needs to know the language; of a list each text alone.
    """
    shown: dict[str, str] = {}
    for name, value in values.items():
        suffix = suffix_of(name)
        if isinstance(value, str):
            shown[name] = translate(value)
        elif isinstance(value, tuple):
            shown[name] = ", ".join(translate(text) for text in value)
        elif suffix:
            shown[name] = show(value, suffix, system)
        else:
            shown[name] = f"{value:g}"
    return translate(template).format(**shown)


@dataclass(frozen=True, slots=True, kw_only=True)
class Note:
    """The result stands, but beware. ``kind`` is a stable key; ``text`` a template for people."""

    kind: str
    text: str
    values: Values = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Problem:
    """Something wrong in a user's file or entry, with its place and the remedy.

    ``what`` and ``remedy`` are templates, both filled from ``values``.
    """

    what: str
    remedy: str
    values: Mapping[str, Any] = field(default_factory=dict)
    file: str = ""
    line_number: int = 0
    column_number: int = 0
    line: str = ""

    def say(self, translate: Translate = str, system: str = "") -> str:
        """The problem in a language and in a kitchen's units; its line with a caret under the place."""
        place = (
            f"{self.file}:{self.line_number}: "
            if self.line_number
            else (f"{self.file}: " if self.file else "")
        )
        shown = f"\n    {self.line}\n    {' ' * self.column_number}^" if self.line else ""
        what, remedy = (Phrase(t, self.values).say(translate, system) for t in (self.what, self.remedy))
        return f"{place}{what}{shown}\n  {remedy}"

    def __str__(self) -> str:
        return self.say()


class Outcome(StrEnum):
    """Three words, never two: a missing rule or missing evidence is unknown, not meets."""

    MEETS = "meets"
    FAILS = "fails"
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """Judgement of one history by one rule in one edition.

    ``sentence`` is a template; ``lead`` comes before it and says why the outcome is unknown. ``margin_k`` is
    signed: below 0 the curve is short of the limit, whatever the outcome. ``evidence`` is the kind that
    stands behind it.
    """

    outcome: Outcome
    rule: str
    edition: str
    sentence: str
    lead: str = ""
    values: Values = field(default_factory=dict)
    margin_k: float | None = None
    margin_s: float | None = None
    missing: tuple[str, ...] = ()
    source: str = ""
    evidence: str = ""

    def say(self, system: str = "metric", translate: Translate = str) -> str:
        """The verdict in words, in people's units and language."""
        lead = translate(self.lead) if self.lead else ""
        return lead + say(self.sentence, self.values, system, translate)
