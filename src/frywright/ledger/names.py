"""Names of people beside the chain. An entry holds a reference: the hash of the name and of a salt kept with
it, so that no name can be put in another's place unseen, nor guessed once it is removed. Whoever reads facts
reads names; what is hashed, copied and sent is the entry as it is.
"""

from __future__ import annotations

import hashlib
import json
import re
import secrets
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from typing import Any, NamedTuple

import sqlalchemy as sa

from frywright.ledger.tables import PERSON
from frywright.model.entry import Entry, canonical
from frywright.model.errors import RecordError

MARK = "person:"
REF = re.compile(rf'"{MARK}([0-9a-f]{{64}})"')
AT_ONCE = 500
"""References asked for together."""
LONGEST = 200
"""Letters of a name; a longer text is none and stays in its entry."""
_NAME: sa.BindParameter[str] = sa.bindparam("name")
_REF_OF = sa.select(PERSON.c.ref).where(PERSON.c.name == _NAME, PERSON.c.removed_on == "")
_OF_REFS = sa.select(PERSON).where(PERSON.c.ref.in_(sa.bindparam("refs", expanding=True)))
"""Asked at every write and every look at what is new, so they are built once."""


class Line(NamedTuple):
    """A row of entries with its names, in the order of the table's columns."""

    site: str
    number: int
    kind: str
    happened_at: str
    recorded_at: str
    author: str
    payload: str
    replaces: int | None
    versions: str
    previous_hash: str
    hash: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """A name as it is kept: its reference and salt; ``removed_on`` says when it was taken away, and then
    ``name`` is what stands in its place.
    """

    ref: str
    salt: str
    name: str
    removed_on: str

    @property
    def sound(self) -> bool:
        """Whether it is the name that its reference was made of; nobody can tell of one that was removed."""
        return bool(self.removed_on) or ref_of(self.salt, self.name) == self.ref


def ref_of(salt: str, name: str) -> str:
    """Reference of a name."""
    return hashlib.sha256(f"{salt}\n{name}".encode()).hexdigest()


def referred(connection: sa.Connection, name: str) -> str:
    """What an entry holds in place of a name: the reference it has had since it was first used."""
    ref = connection.execute(_REF_OF, {"name": name}).scalar()
    if ref is None:
        salt = secrets.token_hex(16)
        ref = ref_of(salt, name)
        connection.execute(PERSON.insert().values(ref=ref, salt=salt, name=name, removed_on=""))
    return f"{MARK}{ref}"


def named_rows(connection: sa.Connection, rows: Sequence[Any]) -> list[Any]:
    """Rows of entries with names in place of references."""
    refs = {ref for row in rows for ref in REF.findall(row.payload)}
    refs |= {row.author.removeprefix(MARK) for row in rows if row.author.startswith(MARK)}
    if not refs:
        return list(rows)
    names = _names(connection, refs)
    quoted = {ref: canonical(name) for ref, name in names.items()}
    return [_named(row, names, quoted) for row in rows]


def _named(row: Any, names: Mapping[str, str], quoted: Mapping[str, str]) -> Any:
    payload = REF.sub(lambda found: quoted[found[1]], row.payload) if MARK in row.payload else row.payload
    author = names[row.author.removeprefix(MARK)] if row.author.startswith(MARK) else row.author
    return Line(*row)._replace(payload=payload, author=author)


def _names(connection: sa.Connection, refs: Iterable[str]) -> dict[str, str]:
    """Names by reference; a short mark for one whose name is not here, or is not the one it was made of."""
    wanted = sorted(refs)
    found = {ref: f"#{ref[:8]}" for ref in wanted}
    for start in range(0, len(wanted), AT_ONCE):
        some = connection.execute(_OF_REFS, {"refs": wanted[start : start + AT_ONCE]})
        people = (Person(**row._mapping) for row in some)
        found |= {one.ref: one.name for one in people if one.sound}
    return found


def people_kept(connection: sa.Connection) -> list[Person]:
    """Every name that is kept, and what stands in place of those that were removed."""
    rows = connection.execute(sa.select(PERSON).order_by(PERSON.c.ref))
    return [Person(**row._mapping) for row in rows]


def remove(connection: sa.Connection, ref: str, instead: str, on: str) -> None:
    """Take a name away; the salt goes with it, so that it cannot be guessed."""
    change = PERSON.update().where(PERSON.c.ref == ref)
    connection.execute(change.values(name=instead, salt="", removed_on=on))


def read_person(line: bytes) -> Person:
    """A name of a backup. Raises RecordError: it is none of ours, or not the name that its reference was made
    of.
    """
    try:
        row = json.loads(line)
        one = Person(**{name: str(row[name])[:LONGEST] for name in ("ref", "salt", "name", "removed_on")})
    except (ValueError, TypeError, KeyError, RecursionError) as error:
        raise RecordError("A name of the backup cannot be read: {cause}", cause=error) from error
    if not re.fullmatch("[0-9a-f]{64}", one.ref) or not one.sound or len(one.salt) > 32:
        raise RecordError("Name {ref}… of the backup was changed.", ref=one.ref[:12])
    return replace(one, removed_on=one.removed_on[:10])


def keep_people(connection: sa.Connection, people: Sequence[Person]) -> None:
    """Put names of a backup into an empty store."""
    if people:
        connection.execute(PERSON.insert(), [asdict(one) for one in people])


def without_names(connection: sa.Connection, entry: Entry, fields: Iterable[str], nobody: str) -> Entry:
    """An entry as it is kept: its author, and the fields that name people, by reference. ``nobody`` is the
    author that is no person.
    """
    told = dict(entry.payload)
    for field in fields:
        name = told.get(field)
        if isinstance(name, str) and 0 < len(name) <= LONGEST:
            told[field] = referred(connection, name)
    author = entry.author if entry.author == nobody else referred(connection, entry.author)
    return replace(entry, author=author, payload=told)
