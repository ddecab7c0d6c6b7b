"""What a store can show of itself: its chain walked from the first entry, whether its clock ran backwards,
whether the original files that entries name are there and as they were, and whether accounts, devices and
sessions are those that entries tell of.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass, replace

import sqlalchemy as sa

from frywright.ledger.accounts import LONGEST_S, Accounts
from frywright.ledger.attachments import attachments_of
from frywright.ledger.facts.care import CardSigned, CardWritten, PlateTyped, ReportAttached
from frywright.ledger.facts.day import FilesDropped, SalesRead, SalesWaiting
from frywright.ledger.facts.fact import Fact, Kept
from frywright.ledger.facts.fleet import KitchenOpened
from frywright.ledger.facts.people import AccountChanged, NameRemoved, SignedIn, SignedOut
from frywright.ledger.facts.probing import LogKept
from frywright.ledger.names import people_kept
from frywright.ledger.store import Store
from frywright.ledger.tables import ENTRY
from frywright.model.entry import DROPPED, unstamp
from frywright.model.errors import RecordError

SET_BACK_S = 60.0
"""A clock that is set by its network may step back by less (project's own rule)."""
WITH_FILES: tuple[type[Fact], ...] = (
    LogKept,
    SalesRead,
    SalesWaiting,
    PlateTyped,
    CardSigned,
    CardWritten,
    ReportAttached,
)
"""Facts that name original files."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SetBack:
    """A clock that ran backwards: the first entry recorded before one in front of it, both times, and the
    last entry before the clock had caught up.
    """

    number: int
    last_number: int
    recorded_at: dt.datetime
    before_at: dt.datetime

    @property
    def numbers(self) -> range:
        """Entries whose time cannot be relied on."""
        return range(self.number, self.last_number + 1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Checked:
    """A chain that was found whole: how far, its head, when, and what else was seen on the way."""

    entries_count: int
    head: str
    at: dt.datetime
    set_back: tuple[SetBack, ...]
    lost: dict[str, int]
    """Originals that are missing or changed, and the entry that names each."""
    strange: tuple[str, ...] = ()
    """Accounts, devices and sessions that are not as the chain tells of them, by name."""
    dropped_count: int = 0
    """Entries that were emptied on record at the end of their time."""
    guarded: bool = True
    """Whether the database itself still refuses to change or delete an entry."""


def checked(store: Store, now: dt.datetime, *, read_files: bool = True) -> Checked:
    """Walk a store from its first entry. Raises RecordError: the chain is broken; the message names the first
    entry that does not fit.

    Parameters
    ----------
    read_files : whether originals are read against their hash; else only that they are there
    """
    count, head = store.verify()
    lost = lost_originals(store, read=read_files)
    return Checked(
        entries_count=count,
        head=head,
        at=now,
        set_back=set_backs(store),
        lost=lost,
        strange=strangers(store, now),
        dropped_count=sum(1 for _ in store.entries(DROPPED)),
        guarded=guarded(store),
    )


def set_backs(store: Store) -> tuple[SetBack, ...]:
    """Where recorded time runs backwards by more than a clock's own correction, at once or little by little:
    each entry is compared with the latest time before it.
    """
    latest = sa.func.max(ENTRY.c.recorded_at).over(order_by=ENTRY.c.number, rows=(None, -1)).label("before")
    mine = sa.select(ENTRY.c.number, ENTRY.c.recorded_at, latest).where(ENTRY.c.site == store.site).subquery()
    query = sa.select(mine).where(mine.c.recorded_at < mine.c.before).order_by(mine.c.number)
    found: list[SetBack] = []
    with store.looking() as connection:
        for row in connection.execute(query).all():
            at, before = unstamp(row.recorded_at), unstamp(row.before)
            if (before - at).total_seconds() <= SET_BACK_S:
                continue
            if found and found[-1].last_number == row.number - 1:
                found[-1] = replace(found[-1], last_number=row.number)
            else:
                found.append(
                    SetBack(number=row.number, last_number=row.number, recorded_at=at, before_at=before)
                )
    return tuple(found)


def copies(store: Store) -> frozenset[str]:
    """Keys of kitchens that keep their own record elsewhere and send it here."""
    return frozenset(e.fact.key for e in store.home.facts(KitchenOpened) if e.fact.sent_here)


def originals(store: Store, until: int | None = None) -> dict[str, int]:
    """Original files that entries name, and the first entry that names each; without those whose time was
    over, which were dropped on record after that.
    """
    found: dict[str, int] = {}
    gone = dropped_files(store)
    for cls in WITH_FILES:
        for item in store.facts(cls):
            if until is None or item.number <= until:
                for name in item.fact.originals:
                    if item.number > gone.get(name, 0):
                        found[name] = min(item.number, found.get(name, item.number))
    return found


def dropped_files(store: Store) -> dict[str, int]:
    """Original files that were dropped at the end of their time, and the newest entry that says so."""
    return {name: item.number for item in store.facts(FilesDropped) for name in item.fact.names}


def lost_originals(store: Store, *, read: bool) -> dict[str, int]:
    """Originals that entries name and that are missing or changed, with the entry that names each."""
    named = originals(store)
    if not named:
        return {}
    files, lost = attachments_of(store), {}
    for name, number in named.items():
        try:
            if read:
                files.open(name).close()
            elif not (files.folder / name).is_file():
                lost[name] = number
        except RecordError:
            lost[name] = number
    return lost


def strangers(store: Store, now: dt.datetime) -> tuple[str, ...]:
    """Names of accounts, devices, sessions and people that are not as the chain tells of them. One that is
    missing is none: accounts are in no backup.
    """
    home = store.home  # accounts belong to all kitchens of a store
    told = list(home.facts(AccountChanged))
    found = {*_accounts(home, told), *_devices(home, told), *_sessions(home, now), *_people(home)}
    return tuple(sorted(found))


def _people(store: Store) -> list[str]:
    """Names that are not those entries refer to, or that nobody removed on record."""
    removed = {ref for item in store.facts(NameRemoved) for ref in item.fact.refs}
    with store.looking() as connection:
        people = people_kept(connection)
    return [one.name for one in people if not one.sound or (one.removed_on and one.ref not in removed)]


def _accounts(store: Store, told: list[Kept[AccountChanged]]) -> list[str]:
    newest = {e.fact.name: e.fact for e in told if not e.fact.what.startswith("device")}
    found = []
    for account in Accounts(store).accounts():
        fact = newest.get(account.name)
        fits = (
            fact is not None
            and fact.role == account.role
            and fact.active in (None, account.active)
            and fact.seal in (None, account.seal)
        )
        if not fits:
            found.append(account.name)
    return found


def _devices(store: Store, told: list[Kept[AccountChanged]]) -> list[str]:
    known: dict[str, list[AccountChanged]] = {}
    for e in told:
        if e.fact.what == "device added":
            known.setdefault(e.fact.name, []).append(e.fact)
        elif e.fact.what == "device revoked":
            known[e.fact.name] = []
    return [
        device.name
        for device in Accounts(store).devices()
        if device.active
        and not any(
            fact.role == device.role and fact.seal in (None, device.seal)
            for fact in known.get(device.name, ())
        )
    ]


def _sessions(store: Store, now: dt.datetime) -> list[str]:
    """Sessions that nobody signed in for, or that were signed out. Those begun before sign-ins were kept end
    by themselves.
    """
    since = now - dt.timedelta(seconds=LONGEST_S)
    first = next(iter(store.facts(SignedIn)), None)
    if first is None:
        return []
    day = dt.timedelta(days=1)
    marks = {(e.fact.mark, e.author) for e in store.facts_between(since - day, now + day, SignedIn)}
    over = {e.fact.mark for e in store.facts_between(since - day, now + day, SignedOut)}
    return [
        session.name
        for session in Accounts(store).sessions()
        if session.at >= max(since, first.happened_at)
        and (session.mark in over or (session.mark, session.name) not in marks)
    ]


def guarded(store: Store) -> bool:
    """Whether the database itself still refuses to change or delete an entry."""
    query = (
        "SELECT count(*) FROM sqlite_master WHERE type = 'trigger' AND tbl_name = 'entry'"
        " AND sql LIKE '%RAISE(ABORT%'"
        if store.sqlite
        else "SELECT count(*) FROM pg_trigger JOIN pg_class ON pg_class.oid = tgrelid"
        " WHERE relname = 'entry' AND NOT tgisinternal AND tgenabled IN ('O', 'A')"
    )
    with store.looking() as connection:
        return int(connection.execute(sa.text(query)).scalar() or 0) >= 2
