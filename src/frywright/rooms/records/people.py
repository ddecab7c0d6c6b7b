"""Accounts of people and devices: who may do what, signing in, and a record of every change."""

from __future__ import annotations

import os
import unicodedata
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, replace
from functools import cache
from math import ceil
from threading import get_native_id
from typing import Literal

from argon2 import PasswordHasher
from argon2.exceptions import Argon2Error

from frywright.ledger.accounts import Account, Accounts, Device, Session, digest
from frywright.ledger.facts.people import AccountChanged, SignedIn, SignedOut, SignInsRefused
from frywright.ledger.store import Store
from frywright.model.errors import AccessError, InputError, Phrase, one_of
from frywright.model.roles import ALL_RIGHTS, RIGHTS, SITE, folded, plain_name
from frywright.rooms.clock import acting, here, now
from frywright.rooms.hall import given_words, in_turn, write
from frywright.rooms.records.tries import FREE_TRIES, Tries, looks

LEAST_PASSWORD, MOST_PASSWORD, LEAST_PIN = 10, 200, 4
ALIKE = {"LATIN", "CYRILLIC", "GREEK"}
"""Alphabets with letters that look alike."""
UNSEEN = {*"\u034f\u115f\u1160\u17b4\u17b5\u2800\u3164\uffa0", *map(chr, range(0xFE00, 0xFE10))}
"""Letters that leave no ink and are none of Unicode's class of those: fillers, selectors of a variant
(Unicode's list of what may be ignored, from memory).
"""
LOW_PRIORITY = 10
"""How far hashing stands back behind everything else (project's own rule; ``nice`` of its thread)."""


def _stand_back() -> None:
    """This thread, and those it starts, run when nobody else wants to."""
    with suppress(AttributeError, OSError):
        here = get_native_id()
        os.setpriority(os.PRIO_PROCESS, here, min(19, os.getpriority(os.PRIO_PROCESS, here) + LOW_PRIORITY))


_HASHING = ThreadPoolExecutor(1, "hashing", _stand_back)
"""One secret at a time, 64 MiB each, whoever asks."""
_HASHER = PasswordHasher(parallelism=1)  # Argon2id, RFC 9106 low memory, on one core so that another is free


@cache
def _nobody() -> str:
    """Hash of a password that nobody has, made when it is first needed: starting waits for none."""
    return _HASHER.hash("a password that nobody has")


@dataclass(frozen=True, slots=True, kw_only=True)
class Who:
    """Who acts: a name, a role, and the shared device it happens on, if any."""

    name: str
    role: str
    device_hash: str = ""
    by_pin: bool = False
    person: bool = False
    """Somebody signed in, not a device by itself."""

    def may(self, right: str) -> bool:
        """Whether the role has a right. What only the owner may is never opened by a PIN."""
        return right in ALL_RIGHTS[self.role] and not (self.by_pin and right == "owner")


NOBODY_HERE = Who(name="", role="owner")
"""This machine before it has accounts: everything is open on loopback only."""


def hashed(secret: str) -> str:
    """Argon2id of a password or PIN."""
    return _HASHING.submit(_HASHER.hash, secret).result()


def fits(kept: str, secret: str) -> bool:
    """Whether a secret is the one kept; takes as long for an empty one."""
    try:
        right = _HASHING.submit(lambda: _HASHER.verify(kept or _nobody(), secret[:MOST_PASSWORD])).result()
    except Argon2Error:
        return False
    return bool(right) and bool(kept)


def _check_name(name: str) -> None:
    """A name that people can tell from another: no unseen letters, one alphabet a word."""
    if not 2 <= len(name) <= 80:
        raise InputError("name", repr(name), "2 to 80 letters")
    if any(unicodedata.category(c)[0] == "C" or c in UNSEEN for c in name):
        raise InputError("name", ascii(name), "without letters that cannot be seen")
    for word in name.split():
        if len(ALIKE & {unicodedata.name(c, "?").split()[0] for c in word}) > 1:
            raise InputError("name", repr(name), "written in one alphabet: letters of two look alike")


def add_account(store: Store, name: str, role: str, password: str, pin: str = "", by: str = "") -> Account:
    """Add an account; the first must be an owner's. Raises InputError: a name taken or too short, an unknown
    role, a short password or PIN, or a first account that is no owner.
    """
    _check_new(store, plain_name(name), role)
    _check_secrets(password, pin)
    secrets = _hashes(password, pin)  # it takes its time: no other writer waits for it
    return _added(store, plain_name(name), role, secrets, by)


@in_turn
def _added(store: Store, name: str, role: str, secrets: tuple[str, str], by: str) -> Account:
    _check_new(store, name, role)
    account = Account(name=name, role=role, password_hash=secrets[0], pin_hash=secrets[1], active=True)
    Accounts(store).keep(account)
    added = AccountChanged(name=name, what="added", role=role, by=by or name, reason="", seal=account.seal)
    write(store.home, added)
    return account


def _check_new(store: Store, name: str, role: str) -> None:
    """A name and a role that a new account may have."""
    accounts = Accounts(store)
    _check_name(name)
    if _taken(accounts, name):
        raise InputError("name", repr(name), "one that is not taken")
    one_of(RIGHTS, role, "role")
    if not accounts.any() and role != "owner":
        raise InputError("role", repr(role), "owner: the first account owns the kitchen")


def _taken(accounts: Accounts, name: str) -> bool:
    """Whether an account or a device that is let in looks as if it had a name: entries bear either."""
    people = [account.name for account in accounts.accounts()]
    devices = [device.name for device in accounts.devices() if device.active]
    return looks(name) in {looks(one) for one in (*people, *devices)}


def _hashes(password: str, pin: str) -> tuple[str, str]:
    """What is kept of a password and a PIN; nothing of what is not given."""
    return hashed(password) if password else "", hashed(pin) if pin else ""


def first_owner(store: Store, name: str, password: str, pin: str = "") -> Account:
    """The account that owns a kitchen which has none. Raises AccessError: somebody has one already.
    Raises InputError: as :func:`add_account`.
    """
    not_owned(store)
    _check_new(store, plain_name(name), "owner")
    _check_secrets(password, pin)
    secrets = _hashes(password, pin)
    with store.writing():
        not_owned(store)  # somebody may have been quicker
        return _added(store, plain_name(name), "owner", secrets, "")


def not_owned(store: Store) -> None:
    """AccessError where the kitchen has an owner already."""
    if Accounts(store).any():
        raise AccessError("This kitchen has an owner already; sign in.")


def _check_secrets(password: str, pin: str) -> None:
    if len(password) < LEAST_PASSWORD:
        raise InputError(
            "password",
            Phrase("{count} letters", {"count": len(password)}),
            "at least 10 letters: a few words do",
        )
    if len(password) > MOST_PASSWORD:
        raise InputError(
            "password",
            Phrase("{count} letters", {"count": len(password)}),
            "{most} letters at most",
            most=MOST_PASSWORD,
        )
    if pin and (not (pin.isascii() and pin.isdigit()) or not LEAST_PIN <= len(pin) <= 12):
        raise InputError("pin", "unsuited", "4 to 12 digits, or none")


def change_account(
    store: Store,
    name: str,
    by: str,
    reason: str,
    *,
    role: str = "",
    password: str = "",
    pin: str = "",
    active: bool | None = None,
) -> Account:
    """Change a role, a secret or whether somebody may sign in; every change is on record with who and why,
    and ends their sessions. Raises InputError: an unknown account, no reason, or the last owner taken away.
    """
    _known(store, name)
    reason = given_words(reason)
    if role:
        one_of(RIGHTS, role, "role")
    if password or pin:
        _check_secrets(password or "x" * LEAST_PASSWORD, pin)
    secrets = _hashes(password, pin)  # it takes its time: no other writer waits for it
    return _changed(store, name, (by, reason), role, secrets, active)


def _known(store: Store, name: str) -> Account:
    """The account of a name."""
    found = Accounts(store).account(name)
    if found is None:
        raise InputError("name", repr(name), "an account that exists")
    return found


@in_turn
def _changed(
    store: Store, name: str, why: tuple[str, str], role: str, secrets: tuple[str, str], active: bool | None
) -> Account:
    accounts, old, (by, reason) = Accounts(store), _known(store, name), why
    new = replace(
        old,
        role=role or old.role,
        active=old.active if active is None else active,
        password_hash=secrets[0] or old.password_hash,
        pin_hash=secrets[1] or old.pin_hash,
    )
    if accounts.owners() == [name] and not (new.active and new.role == "owner"):
        raise InputError("name", repr(name), "not the last owner: make another one first")
    accounts.keep(new)
    changed = [
        w
        for w, done in (
            ("role", role),
            ("password", secrets[0]),
            ("pin", secrets[1]),
            ("active", active is not None),
        )
        if done
    ]
    write(
        store.home,
        AccountChanged(
            name=name,
            what=", ".join(changed),
            role=new.role,
            active=new.active,
            by=by,
            reason=reason.strip()[:200],
            seal=new.seal,
        ),
    )
    return new


def sign_in(
    store: Store, name: str, secret: str, place: str, tries: Tries, *, device_token: str = "", old: str = ""
) -> str:
    """A session's token for a name and its password; on a known shared device the PIN will do, and only
    there. Raises InputError: wrong name or secret (which of both is not said), or too many wrong tries from
    this place.
    """
    accounts, moment = Accounts(store), now()
    device = accounts.device(device_token) if device_token else None
    at = device.token_hash if device else place
    counted = tries.counted(name, at, device is not None)
    wait = max(tries.wait_s(*one, moment) for one in counted)
    if wait > 0:
        raise InputError("sign-in", "too many wrong tries", "tried again in {seconds} s", seconds=ceil(wait))
    account = accounts.account(name.strip()) or accounts.account(plain_name(name))
    by_password = fits(account.password_hash if account else "", secret)
    by_pin = (
        not by_password
        and device is not None
        and secret.isdigit()
        and fits(account.pin_hash if account else "", secret)
    )
    if account is None or not account.active or not (by_password or by_pin):
        for one in counted:
            tries.wrong(*one, moment)
        count = max(tries.count(*one) for one in counted)
        _refused(store, account, device.name if device else "", count, tries)
        raise InputError(
            "sign-in", "not known", "a name and its password, or its PIN on a device of this kitchen"
        )
    tries.right(name, at)
    return begun(store, account.name, "pin" if by_pin else "password", device if by_pin else None, old)


def _refused(store: Store, account: Account | None, device: str, count: int, tries: Tries) -> None:
    """Put wrong tries at an account on record, once an hour."""
    named = account.name if account else ""
    if count >= FREE_TRIES and tries.to_tell(named, now()):
        write(store.home, SignInsRefused(name=named, device=device, tries_count=count))


@in_turn
def begun(
    store: Store,
    name: str,
    how: Literal["password", "pin", "company"],
    device: Device | None = None,
    old: str = "",
) -> str:
    """A new session's token; that somebody signed in is on record under their name."""
    _ended(store, old, "anew")
    token = Accounts(store).begin(name, now(), device.token_hash if device else "", old)
    _as(store, name, SignedIn(how=how, device=device.name if device else "", mark=digest(digest(token))))
    return token


@in_turn
def sign_out(store: Store, token: str) -> None:
    """End a session; that its person signed out is on record."""
    _ended(store, token, "out")
    Accounts(store).end(token)


def _ended(store: Store, token: str, how: Literal["out", "anew"]) -> None:
    """Put on record whose session ends here; one that is over already is on record or ended by itself."""
    session = Accounts(store).begun(token) if token else None
    if session is not None:
        _as(store, session.name, SignedOut(how=how, mark=session.mark))


def _as(store: Store, name: str, fact: SignedIn | SignedOut) -> None:
    """Keep what a person does under their own name, whoever is signed in meanwhile."""
    with acting(replace(here(), author=name)):
        write(store.home, fact)


def confirm(store: Store, name: str, secret: str, place: str, tries: Tries) -> str:
    """Name of a person who shows a PIN or password while somebody else is signed in; empty where it is wrong.
    Raises InputError: too many wrong tries for that name at that place.
    """
    moment = now()
    wait = tries.wait_s(name, place, moment)
    if wait > 0:
        raise InputError("second", "too many wrong tries", "tried again in {seconds} s", seconds=ceil(wait))
    account = next((a for a in Accounts(store).accounts() if folded(a.name) == folded(name)), None)
    kept = (account.pin_hash if secret.isdigit() else account.password_hash) if account else ""
    if not fits(kept, secret) or account is None or not account.active:
        tries.wrong(name, place, moment)
        _refused(store, account, "", tries.count(name, place), tries)
        return ""
    tries.right(name, place)
    return account.name


def change_own(store: Store, name: str, old: str, password: str = "", pin: str = "") -> Account:
    """Somebody's own password or PIN, by who knows the password in use; on record, and every session ends.
    Raises InputError: a wrong password, or a new one that is too short.
    """
    account = Accounts(store).account(name)
    if account is None or not fits(account.password_hash, old):
        raise InputError("password", "not yours", "the one in use")
    if not password and not pin:
        raise InputError("password", "empty", "a new password, a new PIN, or both")
    return change_account(store, name, name, "changed by its owner", password=password, pin=pin)


@in_turn
def add_device(store: Store, name: str, role: str, by: str) -> str:
    """A shared tablet or a program that uses the interface; its token, told once. Raises InputError: no name,
    or rights no device may have.
    """
    name = plain_name(name)
    _check_name(name)
    if _taken(Accounts(store), name):
        raise InputError("name", repr(name), "one that is not taken")
    if role not in ("crew", "lead", "auditor", SITE):
        raise InputError("role", repr(role), "crew, lead or auditor: a device owns nothing")
    token = Accounts(store).add_device(name, role)
    added = AccountChanged(
        name=name, what="device added", role=role, by=by, reason="", seal=digest(digest(token))
    )
    write(store.home, added)
    return token


@in_turn
def revoke_device(store: Store, name: str, by: str, reason: str) -> None:
    """Let a device in no more. Raises InputError: an unknown device, or no reason."""
    if name not in [d.name for d in Accounts(store).devices()]:
        raise InputError("device", repr(name), "one that exists")
    reason = given_words(reason)
    Accounts(store).revoke_device(name)
    revoked = AccountChanged(name=name, what="device revoked", role="", by=by, reason=reason.strip()[:200])
    write(store.home, revoked)


def who_is(store: Store, session_token: str, device_token: str = "") -> Who | None:
    """Who a request comes from: a session, else a device by its token, else nobody; before there is an
    account, this machine.
    """
    accounts = Accounts(store)
    if session_token:
        found: Session | None = accounts.session(session_token, now())
        pin = bool(found and found.device_hash)
        if found is not None and (not pin or found.device_hash == digest(device_token)):
            return Who(
                name=found.name, role=found.role, device_hash=found.device_hash, by_pin=pin, person=True
            )
    if device_token:
        device = accounts.device(device_token)
        if device is not None:
            return Who(name=device.name, role=device.role, device_hash=device.token_hash)
    return None if accounts.any() else NOBODY_HERE
