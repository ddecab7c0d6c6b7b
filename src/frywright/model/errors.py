"""The one tree of exceptions. Messages say what, value, bound, where and what to do next."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any, ClassVar, TypeVar

if TYPE_CHECKING:
    from frywright.model.findings import Problem


Word = TypeVar("Word", bound=str)


class FrywrightError(Exception):
    """Root of all errors raised on purpose; never raised itself."""

    exit_code: ClassVar[int] = 2
    http_status: ClassVar[int] = 400


class InputError(FrywrightError):
    """A value handed to a function lies outside what is possible.

    ``allowed`` may be a template filled from ``values``, so that it can be said in any language. Numbers in
    ``values`` whose name ends in a unit, and ``value`` where ``unit`` says its own, are told in the units of
    whoever reads it.
    """

    exit_code = 2
    http_status = 422

    def __init__(
        self,
        field: str,
        value: Any,
        allowed: str,
        *,
        where: str = "",
        values: dict[str, Any] | None = None,
        unit: str = "",
    ) -> None:
        self.field, self.value, self.where, self.unit = field, value, where, unit
        self.template, self.values = allowed, values or {}
        self.allowed = self.told_allowed(str)
        super().__init__(self.say(str))

    def at(self, where: str) -> InputError:
        """The same error with the place it was found at."""
        return InputError(
            self.field, self.value, self.template, where=where, values=self.values, unit=self.unit
        )

    def say(self, translate: Callable[[str], str], system: str = "") -> str:
        """The message in a language and in a kitchen's units; without a kitchen in both systems' units."""
        place = f" ({self.where})" if self.where else ""
        shape = translate("{field} is {value}{place}; it must be {allowed}.")
        value, allowed = self.told_value(translate, system), self.told_allowed(translate, system)
        return shape.format(field=translate(self.field), value=value, place=place, allowed=allowed)

    def told_value(self, translate: Callable[[str], str], system: str = "") -> str:
        """The value as people read it."""
        if self.unit:
            return _shown(self.value, self.unit, system)
        return translate(self.value) if isinstance(self.value, str) and self.value else str(self.value)

    def told_allowed(self, translate: Callable[[str], str], system: str = "") -> str:
        """What is allowed, as people read it."""
        from frywright.model.units import suffix_of  # units raise errors of this module

        if not self.values:
            return translate(self.template)
        told = {
            name: (
                _shown(value, suffix, system)
                if isinstance(value, float) and (suffix := suffix_of(name))
                else value
            )
            for name, value in self.values.items()
        }
        return translate(self.template).format(**told)


def one_of(known: tuple[Word, ...], text: Any, name: str) -> Word:
    """The word of a closed list that was chosen.

    Raises
    ------
    InputError
        Another word; the message lists those known.
    """
    found = next((word for word in known if word == str(text or "")), None)
    if found is None:
        raise InputError(name, repr(text or ""), "one of: {known}", values={"known": ", ".join(known)})
    return found


def _shown(value: float, suffix: str, system: str) -> str:
    """A value in a system's units; in both where no system is known and they differ."""
    from frywright.model.units import show

    if system:
        return show(value, suffix, system)
    metric, us = show(value, suffix, "metric"), show(value, suffix, "us")
    return metric if metric == us else f"{metric} ({us})"


class DataError(FrywrightError):
    """A file cannot be read as meant. Carries one or more problems with their places."""

    exit_code = 3
    http_status = 422

    def __init__(self, problems: list[Problem]) -> None:
        self.problems = problems
        super().__init__("\n".join(str(p) for p in problems))


class SolveError(FrywrightError):
    """The engine could not finish; carries the report of the march."""

    exit_code = 4
    http_status = 500

    def __init__(self, message: str, report: Any) -> None:
        self.report = report
        super().__init__(message)


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
        self.cause = type(cause).__name__
        super().__init__(self.say(str))

    def say(self, translate: Callable[[str], str], system: str = "") -> str:
        """The message in a language."""
        return translate(self.TEXT).format(cause=self.cause)


class RecordError(FrywrightError):
    """The store refuses: wrong file, newer schema, broken chain, or a clash of two writers."""

    exit_code = 5
    http_status = 409


class AccessError(FrywrightError):
    """Nobody is signed in, or the role may not do it."""

    exit_code = 6
    http_status = 403
