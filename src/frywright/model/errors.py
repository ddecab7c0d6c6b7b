"""The one tree of exceptions. Messages say what, value, bound, where and what to do next."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any, ClassVar

if TYPE_CHECKING:
    from frywright.model.findings import Problem


class FrywrightError(Exception):
    """Root of all errors raised on purpose; never raised itself."""

    exit_code: ClassVar[int] = 2
    http_status: ClassVar[int] = 400


class InputError(FrywrightError):
    """A value handed to a function lies outside what is possible.

    ``allowed`` may be a template filled from ``values``, so that it can be said in any language.
    """

    exit_code = 2
    http_status = 422

    def __init__(
        self, field: str, value: Any, allowed: str, *, where: str = "", values: dict[str, Any] | None = None
    ) -> None:
        self.field, self.value, self.where = field, value, where
        self.template, self.values = allowed, values or {}
        self.allowed = allowed.format(**self.values) if values else allowed
        super().__init__(self.say(str))

    def say(self, translate: Callable[[str], str]) -> str:
        """The message in a language."""
        allowed = translate(self.template)
        if self.values:
            allowed = allowed.format(**self.values)
        value = translate(self.value) if isinstance(self.value, str) and self.value else self.value
        place = f" ({self.where})" if self.where else ""
        shape = translate("{field} is {value}{place}; it must be {allowed}.")
        return shape.format(field=translate(self.field), value=value, place=place, allowed=allowed)


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


class RecordError(FrywrightError):
    """The store refuses: wrong file, newer schema, broken chain, or a clash of two writers."""

    exit_code = 5
    http_status = 409


class AccessError(FrywrightError):
    """Nobody is signed in, or the role may not do it."""

    exit_code = 6
    http_status = 403
