"""Tamperings drawn at random over entries, tails, times, files and accounts of a store: each is tried on a
copy, then verify and the anchors that were kept elsewhere look at it. Clean stores are looked at as well.

python -m benchmarks.tampering [--draws 1000] [--seed 1]

What the threat model (SECURITY.md) says is found must be found, no clean store may be accused, and what it
says nobody can find is drawn too and counted apart.
"""

from __future__ import annotations

import argparse
import datetime as dt
import io
import random
import shutil
import sqlite3
import tempfile
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

from argon2 import PasswordHasher

from frywright.ledger.anchors import Anchor, anchored, compare
from frywright.ledger.attachments import attachments_of
from frywright.ledger.backup import backup, restore
from frywright.ledger.checking import checked
from frywright.ledger.facts.care import ReportAttached
from frywright.ledger.facts.probing import CaseOpened, LogKept, Reading
from frywright.ledger.store import Store
from frywright.model.entry import GENESIS, row_hash, stamp
from frywright.model.errors import FrywrightError
from frywright.rooms.clock import now, played
from frywright.rooms.hall import write
from frywright.rooms.records import people

START = dt.datetime(2026, 11, 2, 15, tzinfo=dt.UTC)
ALL = "number, kind, happened_at, recorded_at, author, payload, replaces, versions, previous_hash, hash"
COLUMNS = ALL.split(", ")
PASSWORD = "oak leaf river stone"
Change = Callable[["Copy", random.Random], None]


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

    def rows(self) -> list[list]:  # type: ignore[type-arg]
        """All entries, by number."""
        connection = sqlite3.connect(self.path)
        found = connection.execute(f"SELECT {ALL} FROM entry ORDER BY number").fetchall()
        connection.close()
        return [list(row) for row in found]

    def put(self, rows: list[list]) -> None:  # type: ignore[type-arg]
        """Write the whole chain anew with right numbers, links and hashes."""
        previous, made = GENESIS, []
        renumbered = {row[0]: n for n, row in enumerate(rows, 1)}
        for n, row in enumerate(rows, 1):
            _, kind, happened, recorded, author, payload, replaces, versions = row[:8]
            replaces = renumbered.get(replaces)
            link = row_hash(previous, n, (kind, author, replaces), (happened, recorded), (payload, versions))
            made.append((n, kind, happened, recorded, author, payload, replaces, versions, previous, link))
            previous = link
        marks = ",".join("?" * len(COLUMNS))
        insert = f"INSERT INTO entry (site, {ALL}) VALUES ('', {marks})"
        self.do(("DELETE FROM entry",), *((insert, row) for row in made))


def reading(core_c: float) -> Reading:
    """A reading of the invented kitchen."""
    return Reading(
        name="x", thermometer="T1", core_c=core_c, limit_c=73.9, load="x", units_count=8.0, fryer="alder"
    )


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

    def some(count: int) -> None:
        for _ in range(count):
            with played(at()):
                core = rng.uniform(65, 85)
                item = write(store, reading(core))
                if core < 73.9:
                    case = CaseOpened(
                        what="probe",
                        reading_number=item.number,
                        fryer="alder",
                        product="",
                        pieces_count=8,
                        core_c=core,
                        limit_c=75.0,
                        who="",
                        words="",
                    )
                    write(store, case)

    def anchor() -> None:
        home.anchors.append(anchored(store, store.last(), at()))

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


def accused(path: Path, anchors: list[Anchor], moment: dt.datetime) -> str:
    """What verify and the anchors say against a store; empty where they say nothing."""
    try:
        store = Store.file(path, now)
        found = checked(store, moment)
        compare(store, anchors)
    except FrywrightError as error:
        return str(error)
    if found.set_back:
        return "clock ran backwards"
    if found.lost:
        return "originals lost"
    if found.strange:
        return f"strange: {', '.join(found.strange)}"
    return "" if found.guarded else "no triggers"


# ---------------------------------------------------------------- what somebody does


def _altered(value: object, rng: random.Random) -> object:
    if value is None:
        return 1
    if isinstance(value, int):
        return value + rng.choice((-1, 1))
    text = str(value)
    place = rng.randrange(len(text))
    other = rng.choice([c for c in "0123456789abcdefxyz" if c != text[place]])
    return text[:place] + other + text[place + 1 :]


def field_changed(copy: Copy, rng: random.Random) -> None:
    """One letter of one field of one entry."""
    row = rng.choice(copy.rows())
    name = rng.choice(COLUMNS[1:])
    value = _altered(row[COLUMNS.index(name)], rng)
    copy.do((f"UPDATE entry SET {name} = ? WHERE number = ?", (value, row[0])))


def taken_out(copy: Copy, rng: random.Random) -> None:
    """An entry from within."""
    copy.do(("DELETE FROM entry WHERE number = ?", (rng.randrange(1, len(copy.rows())),)))


def swapped(copy: Copy, rng: random.Random) -> None:
    """What two entries say, changed over."""
    one, two = rng.sample([r for r in copy.rows() if r[1] == Reading.KIND], 2)
    for to, of in ((one, two), (two, one)):
        copy.do(("UPDATE entry SET payload = ? WHERE number = ?", (of[5], to[0])))


def forged_end(copy: Copy, rng: random.Random) -> None:
    """An entry more, whose hash does not fit."""
    row = copy.rows()[-1]
    values = (row[0] + 1, *row[1:6], None, row[7], row[9], f"{rng.getrandbits(256):064x}")
    marks = ",".join("?" * len(COLUMNS))
    copy.do((f"INSERT INTO entry (site, {ALL}) VALUES ('', {marks})", values))


def rewritten(copy: Copy, rng: random.Random) -> None:
    """A reading that failed made a good one, and every hash after it right."""
    rows = copy.rows()
    row = rng.choice([r for r in rows if r[1] == Reading.KIND and r[0] <= copy.kept])
    row[5] = row[5].replace('"core_c":', '"core_c":1')
    copy.put(rows)


def rewritten_without(copy: Copy, rng: random.Random) -> None:
    """An entry left out of a chain that is written anew."""
    rows = copy.rows()
    del rows[rng.randrange(copy.kept)]
    copy.put(rows)


def rewritten_with(copy: Copy, rng: random.Random) -> None:
    """A reading more, somewhere in the past, in a chain that is written anew."""
    rows = copy.rows()
    place = rng.randrange(1, copy.kept)
    more = next(list(r) for r in rows if r[1] == Reading.KIND)
    more[0], more[2], more[3], more[6] = -1, rows[place - 1][3], rows[place - 1][3], None
    rows.insert(place, more)
    copy.put(rows)


def tail_cut(copy: Copy, rng: random.Random) -> None:
    """Everything after an entry before the newest anchor."""
    copy.do(("DELETE FROM entry WHERE number > ?", (rng.randrange(1, copy.kept),)))


def tail_regrown(copy: Copy, rng: random.Random) -> None:
    """The end cut off and another one grown to the same length."""
    rows = copy.rows()
    last, good = rng.randrange(1, copy.kept), next(r for r in rows if r[1] == Reading.KIND)
    for row in rows[last:]:
        row[1], row[5], row[6] = good[1], good[5], None
    copy.put(rows)


def older_copy(copy: Copy, rng: random.Random) -> None:
    """An older file in place of the newer."""
    shutil.copy(copy.home.older, copy.path)


def set_back(copy: Copy, rng: random.Random) -> None:
    """An entry more with a right hash, recorded days ago."""
    rows = copy.rows()
    more = list(next(r for r in rows if r[1] == Reading.KIND))
    moment = stamp(START + dt.timedelta(seconds=rng.randint(60, 3600)))
    more[0], more[2], more[3], more[6] = -1, moment, moment, None
    copy.put([*rows, more])


def time_moved(copy: Copy, rng: random.Random) -> None:
    """When an entry happened or was recorded."""
    row, name = rng.choice(copy.rows()), rng.choice(("happened_at", "recorded_at"))
    moment = stamp(START + dt.timedelta(seconds=rng.randint(0, 400_000)))
    copy.do((f"UPDATE entry SET {name} = ? WHERE number = ?", (moment, row[0])))


def _originals(copy: Copy) -> list[Path]:
    return sorted(Path(f"{copy.path}.files").iterdir())


def file_changed(copy: Copy, rng: random.Random) -> None:
    """A byte of an original."""
    path = rng.choice(_originals(copy))
    content = bytearray(path.read_bytes())
    content[rng.randrange(len(content))] ^= 1 << rng.randrange(8)
    path.write_bytes(bytes(content))


def file_gone(copy: Copy, rng: random.Random) -> None:
    """An original deleted."""
    rng.choice(_originals(copy)).unlink()


def files_swapped(copy: Copy, rng: random.Random) -> None:
    """Two originals changed over."""
    one, two = rng.sample(_originals(copy), 2)
    contents = one.read_bytes(), two.read_bytes()
    two.write_bytes(contents[0])
    one.write_bytes(contents[1])


def folder_gone(copy: Copy, rng: random.Random) -> None:
    """All originals deleted."""
    shutil.rmtree(f"{copy.path}.files")


def account_changed(copy: Copy, rng: random.Random) -> None:
    """A role raised, a secret swapped, somebody added, a device or a session of one's own."""
    mark = f"{rng.getrandbits(256):064x}"
    begun = stamp(copy.home.end)
    copy.do(
        rng.choice(
            [
                ("UPDATE account SET role = 'owner' WHERE name = 'Cam'",),
                ("UPDATE account SET password_hash = ? WHERE name = 'Olive'", (mark,)),
                ("UPDATE account SET pin_hash = ? WHERE name = 'Cam'", (mark,)),
                ("INSERT INTO account VALUES (?, 'owner', 'x', 'x', 1)", (f"Mallory {mark[:4]}",)),
                ("UPDATE device SET active = 1 WHERE name = 'Till'",),
                ("UPDATE device SET token_hash = ? WHERE name = 'Wall'", (mark,)),
                ("UPDATE device SET role = 'owner' WHERE name = 'Wall'",),
                ("INSERT INTO device VALUES (?, 'Box', 'lead', 1)", (mark,)),
                ("INSERT INTO session VALUES (?, 'Olive', '', ?, ?)", (mark, begun, begun)),
                ("UPDATE session SET name = 'Olive' WHERE name = 'Cam'",),
            ]
        )
    )


def name_changed(copy: Copy, rng: random.Random) -> None:
    """Another's name in place of one, or a name taken away that nobody removed."""
    copy.do(
        rng.choice(
            [
                ("UPDATE person SET name = 'Mallory' WHERE name = 'Cam'",),
                ("UPDATE person SET name = 'x', salt = '', removed_on = '2026-01-01' WHERE name = 'Cam'",),
            ]
        )
    )


def triggers_gone(copy: Copy, rng: random.Random) -> None:
    """What refuses changes taken out of the database."""
    connection = sqlite3.connect(copy.path)
    connection.execute(f"DROP TRIGGER entry_no_{rng.choice(('update', 'delete'))}")
    connection.commit()
    connection.close()


FOUND: tuple[Change, ...] = (
    field_changed,
    taken_out,
    swapped,
    forged_end,
    rewritten,
    rewritten_without,
    rewritten_with,
    tail_cut,
    tail_regrown,
    older_copy,
    set_back,
    time_moved,
    file_changed,
    file_gone,
    files_swapped,
    folder_gone,
    account_changed,
    name_changed,
    triggers_gone,
)
"""What the threat model says is found."""


def newest_cut(copy: Copy, rng: random.Random) -> None:
    """The end cut off after the newest anchor kept elsewhere."""
    copy.do(("DELETE FROM entry WHERE number > ?", (rng.randrange(copy.kept, len(copy.rows())),)))


def newest_rewritten(copy: Copy, rng: random.Random) -> None:
    """A reading after the newest anchor made another one, with right hashes."""
    rows = copy.rows()
    row = rng.choice([r for r in rows if r[1] == Reading.KIND and r[0] > copy.kept])
    row[5] = row[5].replace('"thermometer":"T1"', '"thermometer":"T2"')
    copy.put(rows)


def account_deleted(copy: Copy, rng: random.Random) -> None:
    """Somebody locked out."""
    copy.do((f"DELETE FROM {rng.choice(('account', 'device', 'session'))}",))


UNSEEN: tuple[Change, ...] = (newest_cut, newest_rewritten, account_deleted)
"""What the threat model says is not found."""


# ---------------------------------------------------------------- the draw


@dataclass
class Drawn:
    """What came of the draws, by kind."""

    tried: Counter[str] = field(default_factory=Counter)
    missed: list[str] = field(default_factory=list)
    unseen_tried: int = 0
    unseen_found: int = 0
    clean_count: int = 0
    accused: list[str] = field(default_factory=list)


def tampered(home: Home, change: Change, rng: random.Random, folder: Path) -> str:
    """What is said against a copy after somebody had a go at it."""
    copy = Copy(home, folder / "c.db")
    shutil.copy(home.path, copy.path)
    shutil.copytree(f"{home.path}.files", f"{copy.path}.files")
    change(copy, rng)
    found = accused(copy.path, home.anchors, home.end)
    for path in folder.iterdir():
        shutil.rmtree(path) if path.is_dir() else path.unlink()
    return found


def clean(home: Home, folder: Path, drawn: Drawn) -> None:
    """A clean store as it is, used on, and brought back from its backup."""
    new = folder / "restored.db"
    backup(Store.file(home.path, now), folder / "b.zip")
    restore(folder / "b.zip", Store.file(new, now))
    with played(home.end + dt.timedelta(minutes=1)):
        write(Store.file(new, now), reading(80.0))
    for path in (home.path, new):
        drawn.clean_count += 1
        if said := accused(path, home.anchors, home.end + dt.timedelta(minutes=2)):
            drawn.accused.append(said)
    shutil.rmtree(f"{new}.files")
    for path in (new, folder / "b.zip"):
        path.unlink()


def draw(count: int, seed: int = 1) -> Drawn:
    """So many tamperings, each kind in turn, on a new store every fifty."""
    rng, drawn, home = random.Random(seed), Drawn(), None
    hasher = people._HASHER
    people._HASHER = PasswordHasher(
        time_cost=1, memory_cost=8, parallelism=1
    )  # how hard they are is not tried
    people._nobody.cache_clear()
    try:
        with tempfile.TemporaryDirectory() as place:
            work = Path(place) / "work"
            work.mkdir()
            for n in range(count):
                if home is None or n % 50 == 0:
                    home = make(Path(place) / f"home{n}", rng)
                    clean(home, work, drawn)
                change = FOUND[n % len(FOUND)]
                drawn.tried[change.__name__] += 1
                if not tampered(home, change, rng, work):
                    drawn.missed.append(f"{n}: {change.__name__}")
                if n % 10 == 0:
                    drawn.unseen_tried += 1
                    other = UNSEEN[n // 10 % len(UNSEEN)]
                    drawn.unseen_found += bool(tampered(home, other, rng, work))
    finally:
        people._HASHER = hasher
        people._nobody.cache_clear()
    return drawn


def main() -> None:
    """Draw, and say what came of it."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--draws", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    drawn = draw(asked.draws, asked.seed)
    for kind, count in sorted(drawn.tried.items()):
        missed = sum(text.endswith(f": {kind}") for text in drawn.missed)
        print(f"{kind}: {count - missed} of {count} found")
    print(
        f"{asked.draws - len(drawn.missed)} of {asked.draws} tamperings found that must be;"
        f" {len(drawn.accused)} of {drawn.clean_count} clean stores accused; of {drawn.unseen_tried} that"
        f" nobody can see by the threat model {drawn.unseen_found} were seen"
    )
    if drawn.missed or drawn.accused:
        raise SystemExit(f"missed: {drawn.missed}; accused: {drawn.accused}")


if __name__ == "__main__":
    main()
