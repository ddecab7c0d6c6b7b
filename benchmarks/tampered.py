"""Stores that somebody tampers with: a clean one of some days with two kitchens, entries that were dropped at
the end of their time and anchors that an office keeps; a copy to have a go at; what is said against it.
"""

from __future__ import annotations

import datetime as dt
import io
import random
import shutil
import sqlite3
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

from frywright.ledger.anchors import Anchor, anchored, compare_each, read_anchors
from frywright.ledger.attachments import attachments_of
from frywright.ledger.checking import Checked, checked
from frywright.ledger.facts.care import ReportAttached, StopUse
from frywright.ledger.facts.probing import CaseOpened, LogKept, Reading
from frywright.ledger.store import Store
from frywright.model.entry import DROPPED, GENESIS, row_hash
from frywright.model.errors import FrywrightError
from frywright.rooms.clock import now, played
from frywright.rooms.fleet.office import anchors_of, keep_anchor
from frywright.rooms.hall import write
from frywright.rooms.records import people
from frywright.rooms.records.dropping import drop_entries

START = dt.datetime(2026, 11, 2, 15, tzinfo=dt.UTC)
ALL = "number, kind, happened_at, recorded_at, author, payload, replaces, versions, previous_hash, hash"
COLUMNS = ALL.split(", ")
PASSWORD = "oak leaf river stone"
BESIDE = "beside"
"""Key of the kitchen beside the first one."""


@dataclass
class Home:
    """A clean store, an older copy of it, and the anchors that were kept elsewhere."""

    path: Path
    older: Path
    anchors: list[Anchor] = field(default_factory=list)
    end: dt.datetime = START


@dataclass
class Copy:
    """A copy that somebody tampers with."""

    home: Home
    path: Path
    anchors: list[Anchor] = field(default_factory=list)
    """What was kept elsewhere, as it comes back."""

    @property
    def kept(self) -> int:
        """Newest entry that an anchor elsewhere names."""
        return self.home.anchors[-1].number

    def do(self, *statements: tuple) -> None:  # type: ignore[type-arg]
        """Statements by somebody who may do everything with the file and puts the triggers back."""
        connection = sqlite3.connect(self.path)
        triggers = [r[0] for r in connection.execute("SELECT sql FROM sqlite_master WHERE type = 'trigger'")]
        with connection:
            for what in ("update", "delete"):
                connection.execute(f"DROP TRIGGER entry_no_{what}")
            for statement in statements:
                connection.execute(*statement)
            for trigger in triggers:
                connection.execute(trigger)
        connection.close()

    def rows(self, site: str = "") -> list[list]:  # type: ignore[type-arg]
        """All entries of a kitchen, by number."""
        connection = sqlite3.connect(self.path)
        query = f"SELECT {ALL} FROM entry WHERE site = ? ORDER BY number"
        found = connection.execute(query, (site,)).fetchall()
        connection.close()
        return [list(row) for row in found]

    def put(self, rows: list[list], site: str = "") -> None:  # type: ignore[type-arg]
        """Write the whole chain anew with right numbers, links and hashes."""
        previous, made = GENESIS, []
        renumbered = {row[0]: n for n, row in enumerate(rows, 1)}
        for n, row in enumerate(rows, 1):
            _, kind, happened, recorded, author, payload, replaces, versions = row[:8]
            replaces = renumbered.get(replaces)
            link = row_hash(previous, n, (kind, author, replaces), (happened, recorded), (payload, versions))
            link = row[9] if kind == DROPPED else link
            made.append((n, kind, happened, recorded, author, payload, replaces, versions, previous, link))
            previous = link
        marks = ",".join("?" * len(COLUMNS))
        insert = f"INSERT INTO entry (site, {ALL}) VALUES ('{site}', {marks})"
        self.do(("DELETE FROM entry WHERE site = ?", (site,)), *((insert, row) for row in made))


def reading(core_c: float) -> Reading:
    """A reading of the invented kitchen."""
    return Reading(
        name="x", thermometer="T1", core_c=core_c, limit_c=73.9, load="x", units_count=8.0, fryer="alder"
    )


def read_once(store: Store, core_c: float) -> None:
    """A reading, and the case it opens where it is too low."""
    item = write(store, reading(core_c))
    if core_c < 73.9:
        case = CaseOpened(
            what="probe",
            reading_number=item.number,
            fryer="alder",
            product="",
            pieces_count=8,
            core_c=core_c,
            limit_c=75.0,
            who="",
            words="",
        )
        write(store, case)


def make(folder: Path, rng: random.Random) -> Home:
    """A store of some days: readings, cases, logs and a report, accounts, devices, sign-ins; two anchors."""
    folder.mkdir()
    home = Home(path=folder / "s.db", older=folder / "older.db")
    moment = START

    def at() -> dt.datetime:
        nonlocal moment
        moment += dt.timedelta(seconds=rng.randint(20, 3000))
        return moment

    store = Store.file(home.path, now)
    kept = attachments_of(store)

    drop_old(store, rng, at)

    def some(count: int) -> None:
        for _ in range(count):
            with played(at()):
                read_once(store, rng.uniform(65, 85))

    def anchor() -> None:
        there = store.at(BESIDE)
        with played(at()):
            write(there, reading(80.0))
            keep_anchor(store, BESIDE, anchored(there, there.last(), now()).text)
        for one in (there, store):
            home.anchors.append(anchored(one, one.last(), at()))

    with played(at()):
        people.first_owner(store, "Olive", PASSWORD, "246810")
        people.add_account(store, "Cam", "crew", PASSWORD, "1357", "Olive")
        token = people.add_device(store, "Wall", "lead", "Olive")
        people.add_device(store, "Till", "crew", "Olive")
        people.revoke_device(store, "Till", "Olive", "lost in a taxi")
    some(rng.randint(10, 25))
    for n in range(3):
        with played(at()):
            sha256, size = kept.keep(io.BytesIO(rng.randbytes(rng.randint(10, 4000))))
            write(store, LogKept(name=f"log {n}", sha256=sha256, size_bytes=size))
    shutil.copy(home.path, home.older)
    some(rng.randint(5, 15))
    anchor()
    with played(at()):
        sha256, size = kept.keep(io.BytesIO(rng.randbytes(500)))
        report = ReportAttached(of_number=1, name="r.pdf", sha256=sha256, size_bytes=size, who="Olive")
        write(store, report)
        tries = people.Tries()
        people.sign_in(store, "Olive", PASSWORD, "here", tries)
        people.sign_in(store, "Cam", "1357", "here", tries, device_token=token)
    some(rng.randint(5, 15))
    anchor()
    some(rng.randint(4, 8))  # newer than every anchor
    home.end = at()
    return home


def drop_old(store: Store, rng: random.Random, at: Callable[[], dt.datetime]) -> None:
    """Loads of three years ago in both kitchens, and what the first one dropped of them on record."""
    for n in range(rng.randint(1, 3)):
        with played(START - dt.timedelta(days=1200 - n)):
            write(store, StopUse(fryer="alder", reason="lid", words=f"the lid falls, {n}", who="Cam"))
    for n in range(rng.randint(5, 15)):
        with played(START - dt.timedelta(days=1100 - n)):
            write(store, reading(rng.uniform(74, 85)))
            write(store.at(BESIDE), reading(rng.uniform(74, 85)))
    with played(at()):
        told = {
            "term": "loads",
            "years": "2",
            "who": "Olive",
            "second": "Cam",
            "reason": "their time is over",
        }
        drop_entries(store, told)


def accused(path: Path, anchors: list[Anchor], moment: dt.datetime) -> str:
    """What verify of each kitchen and the anchors say against a store; empty where they say nothing."""
    try:
        store = Store.file(path, now)
        said = [_seen(checked(store.at(site), moment)) for site in store.sites()]
        compare_each(store, anchors)
        kept = [one for item in anchors_of(store) for one in read_anchors(item.fact.text)]
        compare_each(store, kept)
    except FrywrightError as error:
        return str(error)
    return next(filter(None, said), "")


def _seen(found: Checked) -> str:
    """What verify saw on its way along a chain that is whole."""
    if found.set_back:
        return "clock ran backwards"
    if found.lost:
        return "originals lost"
    if found.strange:
        return f"strange: {', '.join(found.strange)}"
    return "" if found.guarded else "no triggers"
