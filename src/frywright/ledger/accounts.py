"""Accounts, devices and sessions. Passwords and PINs are kept as Argon2id, tokens as SHA-256; none of it is
in exports or backups.

They may change and are therefore no entries; :mod:`frywright.rooms.records.people` records what is done with
them.
"""

from __future__ import annotations

import datetime as dt
import hashlib
import secrets
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa

from frywright.ledger.store import Store
from frywright.ledger.tables import ACCOUNT, DEVICE, SESSION
from frywright.model.entry import canonical, stamp, unstamp

IDLE_S, LONGEST_S = 12 * 3600.0, 7 * 86400.0
PIN_IDLE_S = 15 * 60.0
"""A session by password ends after half a day unused or a week; one by PIN on a shared device after a quarter
of an hour (project's own rules).
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Account:
    """One person's account."""

    name: str
    role: str
    password_hash: str
    pin_hash: str
    active: bool

    @property
    def seal(self) -> str:
        """Hash of everything that is kept of it, for the chain."""
        return digest(canonical([self.name, self.role, self.password_hash, self.pin_hash, self.active]))


@dataclass(frozen=True, slots=True, kw_only=True)
class Device:
    """A tablet or program of the kitchen, known by its token."""

    name: str
    role: str
    token_hash: str
    active: bool

    @property
    def seal(self) -> str:
        """Hash of what is kept of its token, for the chain: it opens nothing."""
        return digest(self.token_hash)


@dataclass(frozen=True, slots=True, kw_only=True)
class Session:
    """Who is signed in, and on which device if it is a shared one."""

    name: str
    role: str
    device_hash: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Begun:
    """A session as it is kept: whose, the hash of what is kept of its token, since when."""

    name: str
    mark: str
    at: dt.datetime


def digest(token: str) -> str:
    """What is kept of a token."""
    return hashlib.sha256(token.encode()).hexdigest()


_SIGNED_IN = (
    sa.select(SESSION, ACCOUNT.c.role, ACCOUNT.c.active)
    .outerjoin(ACCOUNT, ACCOUNT.c.name == SESSION.c.name)
    .where(SESSION.c.token_hash == sa.bindparam("token"))
)
"""Asked at every request, so it is built once."""


def _begun(row: Any) -> Begun:
    return Begun(name=row.name, mark=digest(row.token_hash), at=unstamp(row.begun_at))


class Accounts:
    """The three tables of a store."""

    def __init__(self, store: Store) -> None:
        self._store = store

    def _one(self, query: Any, values: Mapping[str, Any] | None = None) -> Any:
        with self._store.looking() as connection:
            return connection.execute(query, values).first()

    def _do(self, *statements: Any) -> None:
        with self._store.writing() as writer:
            for statement in statements:
                writer.connection.execute(statement)

    def any(self) -> bool:
        """Whether there is an account at all."""
        return self._one(sa.select(ACCOUNT.c.name).limit(1)) is not None

    def owners(self) -> list[str]:
        """Names of active owners."""
        with self._store.looking() as connection:
            query = sa.select(ACCOUNT.c.name).where(ACCOUNT.c.role == "owner", ACCOUNT.c.active.is_(True))
            return [row.name for row in connection.execute(query)]

    def account(self, name: str) -> Account | None:
        """An account by its name, or None."""
        row = self._one(sa.select(ACCOUNT).where(ACCOUNT.c.name == name))
        return Account(**row._mapping) if row else None

    def accounts(self) -> list[Account]:
        """Everybody, by name."""
        with self._store.looking() as connection:
            return [
                Account(**row._mapping)
                for row in connection.execute(sa.select(ACCOUNT).order_by(ACCOUNT.c.name))
            ]

    def keep(self, account: Account) -> None:
        """Add or change an account; its sessions end."""
        values = {
            "role": account.role,
            "password_hash": account.password_hash,
            "pin_hash": account.pin_hash,
            "active": account.active,
        }
        known = self.account(account.name) is not None
        change = (
            ACCOUNT.update().where(ACCOUNT.c.name == account.name).values(**values)
            if known
            else ACCOUNT.insert().values(name=account.name, **values)
        )
        self._do(change, SESSION.delete().where(SESSION.c.name == account.name))

    def drop(self, name: str) -> None:
        """Take an account away with its sessions."""
        self._do(
            ACCOUNT.delete().where(ACCOUNT.c.name == name), SESSION.delete().where(SESSION.c.name == name)
        )

    def add_device(self, name: str, role: str) -> str:
        """A new device; its token, which is told only now."""
        token = secrets.token_urlsafe(32)
        self._do(DEVICE.insert().values(token_hash=digest(token), name=name, role=role, active=True))
        return token

    def device(self, token: str) -> Device | None:
        """The active device of a token, or None."""
        row = self._one(
            sa.select(DEVICE).where(DEVICE.c.token_hash == digest(token), DEVICE.c.active.is_(True))
        )
        return Device(**row._mapping) if row else None

    def devices(self) -> list[Device]:
        """Every device."""
        with self._store.looking() as connection:
            return [
                Device(**row._mapping)
                for row in connection.execute(sa.select(DEVICE).order_by(DEVICE.c.name))
            ]

    def revoke_device(self, name: str) -> None:
        """Let a device in no more; sessions on it end."""
        hashes = [d.token_hash for d in self.devices() if d.name == name]
        self._do(
            DEVICE.update().where(DEVICE.c.name == name).values(active=False),
            SESSION.delete().where(SESSION.c.device_hash.in_(hashes)),
        )

    def begin(self, name: str, now: dt.datetime, device_hash: str = "", old: str = "") -> str:
        """A new session; its token. The one it takes the place of ends, so that no token outlives a
        sign-in.
        """
        token, moment = secrets.token_urlsafe(32), stamp(now)
        self._do(
            SESSION.delete().where(SESSION.c.begun_at < stamp(now - dt.timedelta(seconds=LONGEST_S))),
            SESSION.delete().where(SESSION.c.token_hash == digest(old)),
            SESSION.insert().values(
                token_hash=digest(token), name=name, device_hash=device_hash, begun_at=moment, seen_at=moment
            ),
        )
        return token

    def session(self, token: str, now: dt.datetime) -> Session | None:
        """Who a token stands for, if it still holds; using it keeps it alive, at most once a minute."""
        row = self._one(_SIGNED_IN, {"token": digest(token)})
        if row is None:
            return None
        idle = (now - unstamp(row.seen_at)).total_seconds()
        if (
            idle > (PIN_IDLE_S if row.device_hash else IDLE_S)
            or (now - unstamp(row.begun_at)).total_seconds() > LONGEST_S
        ):
            self.end(token)
            return None
        if not row.active:
            return None
        if idle > 60.0:
            self._do(SESSION.update().where(SESSION.c.token_hash == digest(token)).values(seen_at=stamp(now)))
        return Session(name=row.name, role=row.role, device_hash=row.device_hash)

    def begun(self, token: str) -> Begun | None:
        """The session that a token opened and nobody ended, whether it still holds or not."""
        row = self._one(sa.select(SESSION).where(SESSION.c.token_hash == digest(token)))
        return _begun(row) if row else None

    def sessions(self) -> list[Begun]:
        """Every session that may still be open."""
        with self._store.looking() as connection:
            return [_begun(row) for row in connection.execute(sa.select(SESSION))]

    def sessions_count(self) -> int:
        """Sessions that nobody ended."""
        row = self._one(sa.select(sa.func.count()).select_from(SESSION))
        return int(row[0])

    def end(self, token: str) -> None:
        """Sign out."""
        self._do(SESSION.delete().where(SESSION.c.token_hash == digest(token)))
