"""The base of every fact: its kind, its payload, and the readers of older versions.

A fact's fields are the keys of its payload, in the units their names say. Only here is a payload a dict: an
extra or missing field fails when a fact is made or read.

* A field with the default ``None`` is newer than version 1; when None it stays out of the payload. So it is
  in a fact's parts, which may be dataclasses of the model.
* Any other field is always written, with ``None`` as null.

Stored entries are hashed as they were written, so a reader never rewrites them: :meth:`Fact.older` says how
an older payload is understood.
"""

from __future__ import annotations

import dataclasses
import datetime as dt
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, ClassVar, Generic, Self, TypeVar

from pydantic import ConfigDict, TypeAdapter, ValidationError

from frywright.model.entry import Recorded
from frywright.model.errors import InputError, RecordError


@dataclass(frozen=True, slots=True, kw_only=True)
class Fact:
    """Something that happened, as the ledger keeps it."""

    __pydantic_config__: ClassVar[ConfigDict] = ConfigDict(extra="forbid")
    KIND: ClassVar[str]
    """The kind of its entries."""
    VERSION: ClassVar[int] = 1
    """Rises when a field is added, taken off or changes its meaning."""
    LABELS: ClassVar[Mapping[str, str]] = {}
    """Column names for people where the field's own name without its unit does not say it."""
    WORDS: ClassVar[frozenset[str]] = frozenset()
    """Fields that hold a word of ours, which is translated where people see it."""
    FILES: ClassVar[tuple[str, ...]] = ()
    """Fields that name original files by their hash: a text, or a mapping to texts."""

    PEOPLE: ClassVar[tuple[str, ...]] = ("who", "second", "by")
    """Fields that name a person: kept by reference, read by name."""

    @property
    def originals(self) -> tuple[str, ...]:
        """Original files it names."""
        values = (getattr(self, name) for name in self.FILES)
        named = (v.values() if isinstance(v, Mapping) else (v,) for v in values)
        return tuple(str(name) for group in named for name in group if name)

    def payload(self) -> dict[str, Any]:
        """Plain values to store."""
        written: dict[str, Any] = _adapter(type(self)).dump_python(
            self, mode="json", by_alias=True, warnings="error"
        )
        return dict(_without_late(self, written))

    @classmethod
    def read(cls, payload: Mapping[str, Any]) -> Self:
        """The fact of a stored payload, of this version or an older one. Raises RecordError: a field is
        missing, unknown or of another type: the entry is not of this kind.
        """
        try:
            fact: Self = _adapter(cls).validate_python(cls.older(payload))
        except InputError as error:
            raise RecordError(
                "An entry of kind {kind} does not fit: {cause}", kind=cls.KIND, cause=error
            ) from error
        except (KeyError, TypeError, AttributeError) as error:
            raise RecordError(
                "An entry of kind {kind} does not fit: {cause}",
                kind=cls.KIND,
                cause=f"{type(error).__name__}: {error}",
            ) from error
        except ValidationError as error:
            first = error.errors()[0]
            place = ".".join(str(part) for part in first["loc"]) or "payload"
            raise RecordError(
                "An entry of kind {kind} does not fit: {place}: {cause}.",
                kind=cls.KIND,
                place=place,
                cause=first["msg"],
            ) from error
        return fact

    @classmethod
    def older(cls, payload: Mapping[str, Any]) -> Mapping[str, Any]:
        """A payload of an older version with today's fields; as it is where nothing changed."""
        return payload


F = TypeVar("F", bound=Fact)
_ADAPTERS: dict[type[Fact], TypeAdapter[Any]] = {}


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept(Generic[F]):
    """A fact with what the ledger knows of its entry."""

    number: int
    fact: F
    happened_at: dt.datetime
    recorded_at: dt.datetime
    author: str
    replaces: int | None
    versions: Mapping[str, str]


def kept(item: Recorded, cls: type[F]) -> Kept[F]:
    """An entry as a fact of a class. Raises RecordError: the entry is of another kind, or does not fit."""
    if item.entry.kind != cls.KIND:
        raise RecordError(
            "Entry {number} is of kind {kind}, not {wanted}.",
            number=item.number,
            kind=item.entry.kind,
            wanted=cls.KIND,
        )
    return Kept(
        number=item.number,
        fact=cls.read(item.entry.payload),
        happened_at=item.entry.happened_at,
        recorded_at=item.recorded_at,
        author=item.entry.author,
        replaces=item.entry.replaces,
        versions=item.entry.versions,
    )


def facts_of(items: Iterable[Recorded], cls: type[F]) -> Iterator[Kept[F]]:
    """Entries as facts of a class, in their order."""
    return (kept(item, cls) for item in items)


NAMES = ("name", "program", "file", "fryer", "vat")
"""Fields that say what an entry is about, the first that is there."""


def about(item: Recorded) -> tuple[str, str]:
    """What an entry is about and its version, whatever its kind: for a list of entries."""
    payload = item.entry.payload
    name = next((str(payload[key]) for key in NAMES if payload.get(key)), "")
    return name, str(payload.get("version", ""))


def _without_late(value: Any, written: Any) -> Any:
    """What was written of a value without the newer fields that say nothing, in its parts as well."""
    if dataclasses.is_dataclass(value):
        told = zip(dataclasses.fields(value), written.items(), strict=True)
        return {
            key: _without_late(getattr(value, f.name), part)
            for f, (key, part) in told
            if part is not None or f.default is not None
        }
    if isinstance(value, tuple) and value and dataclasses.is_dataclass(value[0]):
        return [_without_late(*pair) for pair in zip(value, written, strict=True)]
    return written


def _adapter(cls: type[Fact]) -> TypeAdapter[Any]:
    found = _ADAPTERS.get(cls)
    if found is None:
        found = _ADAPTERS[cls] = TypeAdapter(cls)
    return found
