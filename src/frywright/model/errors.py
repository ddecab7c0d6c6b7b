"""The one tree of exceptions. Messages say what, value, bound, where and what to do next."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, ClassVar, TypeVar

from frywright.model.tongues import Translate

if TYPE_CHECKING:
    from frywright.model.findings import Problem


Word = TypeVar("Word", bound=str)


@dataclass(frozen=True, slots=True)
class Phrase:
    """A template and its values, said in any language: a cause, a value or a bound within a message."""

    template: str
    values: Mapping[str, Any] = field(default_factory=dict)

    def say(self, translate: Translate, system: str = "") -> str:
        """The phrase in a language and in a kitchen's units; without a kitchen in both systems' units.

        Numbers whose name ends in a unit are shown in it, texts are translated, phrases and errors are said.
        """
        from frywright.model.units import suffix_of  # units raise errors of this module

        told: dict[str, Any] = {}
        for name, value in self.values.items():
            if isinstance(value, Phrase | Amount | FrywrightError):
                told[name] = value.say(translate, system)
            elif isinstance(value, float) and (suffix := suffix_of(name)):
                told[name] = Amount(value, suffix).say(translate, system)
            else:
                told[name] = translate(value) if isinstance(value, str) and value else value
        text = translate(self.template) if self.template else ""
        return text.format(**told) if self.values else text


@dataclass(frozen=True, slots=True)
class Amount:
    """A number and the unit it stands in, for values whose name does not say it."""

    value: float
    unit: str = ""

    def say(self, translate: Translate, system: str = "") -> str:
        """The number as people read it; in both systems' units where no system is known and they differ."""
        from frywright.model.units import show

        if not self.unit:
            return f"{self.value:g}"
        if system:
            return show(self.value, self.unit, system)
        metric, us = show(self.value, self.unit, "metric"), show(self.value, self.unit, "us")
        return metric if metric == us else f"{metric} ({us})"


class FrywrightError(Exception):
    """Root of all errors raised on purpose: a template and its values. As text it is English."""

    exit_code: ClassVar[int] = 2
    http_status: ClassVar[int] = 400

    def __init__(self, template: str, /, **values: Any) -> None:
        self.template, self.values = template, values
        super().__init__(self.say(str))

    def say(self, translate: Translate, system: str = "") -> str:
        """The message in a language and in a kitchen's units."""
        return Phrase(self.template, self.values).say(translate, system)


class InputError(FrywrightError):
    """A value handed to a function lies outside what is possible.

    ``allowed`` may be a template filled from ``values``, so that it can be said in any language. Numbers in
    ``values`` whose name ends in a unit, and ``value`` where ``unit`` says its own, are told in the units of
    whoever reads it. ``value`` may be a :class:`Phrase` where it has words in it.
    """

    exit_code = 2
    http_status = 422

    def __init__(
        self, field: str, value: Any, allowed: str, /, *, where: str = "", unit: str = "", **values: Any
    ) -> None:
        self.field, self.value, self.where, self.unit = field, value, where, unit
        super().__init__(allowed, **values)

    def at(self, where: str) -> InputError:
        """The same error with the place it was found at."""
        return InputError(self.field, self.value, self.template, where=where, **self.values, unit=self.unit)

    @property
    def allowed(self) -> Phrase:
        """What is allowed."""
        return Phrase(self.template, self.values)

    def say(self, translate: Translate, system: str = "") -> str:
        """The message in a language and in a kitchen's units; without a kitchen in both systems' units."""
        place = f" ({translate(self.where)})" if self.where else ""
        shape = translate("{field} is {value}{place}; it must be {allowed}.")
        value, allowed = (part.say(translate, system) for part in (self.shown, self.allowed))
        return shape.format(field=translate(spoken(self.field)), value=value, place=place, allowed=allowed)

    @property
    def shown(self) -> Phrase | Amount:
        """The value as people read it."""
        if isinstance(self.value, Phrase | Amount):
            return self.value
        if self.value in ("", repr("")):
            return Phrase("empty")
        return Amount(self.value, self.unit) if self.unit else Phrase("{value}", {"value": self.value})


def several(texts: Sequence[str]) -> Phrase:
    """Some texts as one value of a message, each said in the reader's language."""
    if len(texts) < 2:
        return Phrase("{text}", {"text": texts[0] if texts else ""})
    return Phrase("{text}; {rest}", {"text": texts[0], "rest": several(texts[1:])})


def spoken(name: str) -> str:
    """The words of a field's name: ``oil_mass`` is oil mass; an option such as ``--store`` stays."""
    return name if name.startswith("-") else name.replace("_", " ")


def check_text(name: str, text: str, most: int, where: str) -> None:
    """Refuse a text that is empty, longer than so many letters, or more than a line."""
    if not text.strip() or len(text) > most or not text.isprintable():
        raise InputError(name, repr(text[:20]), "1 to {most} letters on one line", where=where, most=most)


def one_of(known: Iterable[Word], text: Any, name: str, where: str = "") -> Word:
    """The word of a closed list that was chosen. Raises InputError: another word; it lists those known."""
    words = tuple(known)
    found = next((word for word in words if word == str(text or "")), None)
    if found is None:
        among = ", ".join(words) or "none"
        raise InputError(name, repr(text or ""), "one of: {known}", where=where, known=among)
    return found


class DataError(FrywrightError):
    """A file cannot be read as meant. Carries one or more problems with their places."""

    exit_code = 3
    http_status = 422

    def __init__(self, problems: list[Problem]) -> None:
        self.problems = problems
        super().__init__("")

    def say(self, translate: Translate, system: str = "") -> str:
        """Every problem in a language and in a kitchen's units, one below the other."""
        return "\n".join(problem.say(translate, system) for problem in self.problems)


class KeptKitchenError(DataError):
    """The kitchen file in the store was taken by an earlier version and is refused by this one; it can be
    mended and kept anew.
    """

    TEXT: ClassVar[str] = (
        "An earlier version took this kitchen file as it stands; this one does not. Nothing is lost. Mend it"
        " on the page My fryers and birds, or serve a mended file: frywright serve --kitchen kitchen.toml"
        ' --reason "why".'
    )

    def say(self, translate: Translate, system: str = "") -> str:
        """Every problem, then how to mend the file."""
        return f"{super().say(translate, system)}\n{translate(self.TEXT)}"


class SolveError(FrywrightError):
    """The engine could not finish; carries the report of the march."""

    exit_code = 4
    http_status = 500

    def __init__(self, template: str, report: Any, /, **values: Any) -> None:
        self.report = report
        super().__init__(template, **values)


class BrokenOffError(FrywrightError):
    """Long work died of something nobody foresaw; the cause is in the program's own log."""

    exit_code = 70
    http_status = 500
    TEXT: ClassVar[str] = (
        "This work broke off on a fault of Frywright ({cause}), not on what you typed. No program was saved."
        " Start it again. If it breaks off again, report the fault with the text in the window where"
        " Frywright runs."
    )

    def __init__(self, cause: Exception) -> None:
        super().__init__(self.TEXT, cause=type(cause).__name__)


class NoKitchenError(FrywrightError):
    """The store holds no kitchen yet."""

    exit_code = 2
    http_status = 409
    TEXT: ClassVar[str] = (
        "There is no kitchen here yet. Describe it on the page Set-up, or serve a kitchen file:"
        " frywright serve --kitchen kitchen.toml. Or name the store or file that has one: --store."
    )

    def __init__(self) -> None:
        super().__init__(self.TEXT)


class RecordError(FrywrightError):
    """The store refuses: wrong file, newer schema, broken chain, or a clash of two writers."""

    exit_code = 5
    http_status = 409


class AccessError(FrywrightError):
    """Nobody is signed in, or the role may not do it."""

    exit_code = 6
    http_status = 403


class UnknownError(AccessError):
    """A program that does not say who it is, or with a token that nobody gave out."""

    http_status = 401


class NotKeptError(FrywrightError):
    """The store or the disk under it cannot be used now. Whatever was to be written was not."""

    exit_code = 74
    http_status = 503
    WRITING: ClassVar[str] = (
        "NOT kept: the record cannot be used now ({cause}). What you sent is not on record. Write it on"
        " paper, then send it again."
    )
    READING: ClassVar[str] = "The record cannot be read now ({cause}). Try again in a moment."

    def __init__(self, cause: object, *, writing: bool = True) -> None:
        self.cause = str(cause).splitlines()[0][:200]
        super().__init__(self.WRITING if writing else self.READING, cause=self.cause)


class BusyError(FrywrightError):
    """More at once than the machine takes; the same again in a moment."""

    exit_code = 75
    http_status = 503
