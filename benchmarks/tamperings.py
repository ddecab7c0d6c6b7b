"""What somebody does to a store: each kind of tampering, as a change of a copy."""

from __future__ import annotations

import datetime as dt
import random
import shutil
import sqlite3
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from benchmarks.tampered import ALL, BESIDE, COLUMNS, START, Copy
from frywright.ledger.facts.dropping import EntriesDropped, digest_of, emptied, stretches_of
from frywright.ledger.facts.probing import Reading
from frywright.model.entry import DROPPED, GENESIS, canonical, row_hash, stamp, unstamp

Change = Callable[[Copy, random.Random], None]


def _altered(value: object, rng: random.Random) -> object:
    if value is None:
        return 1
    if isinstance(value, int):
        return value + rng.choice((-1, 1))
    text = str(value)
    if not text:
        return "x"
    place = rng.randrange(len(text))
    other = rng.choice([c for c in "0123456789abcdefxyz" if c != text[place]])
    return text[:place] + other + text[place + 1 :]


def field_changed(copy: Copy, rng: random.Random) -> None:
    """One letter of one field of one entry."""
    row = rng.choice(copy.rows())
    name = rng.choice(COLUMNS[1:])
    value = _altered(row[COLUMNS.index(name)], rng)
    copy.do((f"UPDATE entry SET {name} = ? WHERE site = '' AND number = ?", (value, row[0])))


def taken_out(copy: Copy, rng: random.Random) -> None:
    """An entry from within."""
    copy.do(("DELETE FROM entry WHERE site = '' AND number = ?", (rng.randrange(1, len(copy.rows())),)))


def swapped(copy: Copy, rng: random.Random) -> None:
    """What two entries say, changed over."""
    one, two = rng.sample([r for r in copy.rows() if r[1] == Reading.KIND], 2)
    for to, of in ((one, two), (two, one)):
        copy.do(("UPDATE entry SET payload = ? WHERE site = '' AND number = ?", (of[5], to[0])))


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
    copy.do(("DELETE FROM entry WHERE site = '' AND number > ?", (rng.randrange(1, copy.kept),)))


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
    copy.do((f"UPDATE entry SET {name} = ? WHERE site = '' AND number = ?", (moment, row[0])))


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


def _empty(copy: Copy, numbers: list[int]) -> None:
    """Empty entries as the program does it."""
    kinds = {row[0]: row[1] for row in copy.rows()}
    change = (
        "UPDATE entry SET kind = ?, author = '', payload = ?, versions = '{}' WHERE site = '' AND number = ?"
    )
    copy.do(*((change, (DROPPED, emptied(kinds[n]), n)) for n in numbers))


def emptied_unsaid(copy: Copy, rng: random.Random) -> None:
    """An entry emptied that nothing says was dropped."""
    _empty(copy, [rng.choice([r[0] for r in copy.rows() if r[1] == Reading.KIND])])


def emptied_young(copy: Copy, rng: random.Random) -> None:
    """Readings of this month dropped on record, with right hashes, and emptied."""
    rows = copy.rows()
    some = sorted(rng.sample([r for r in rows if r[1] == Reading.KIND], 3))
    lines = [canonical([r[0], r[1], r[2], r[3], r[6], r[9], r[8]]) for r in some]
    said = EntriesDropped(
        term="loads",
        before=(unstamp(rows[-1][3]) - dt.timedelta(days=rng.choice((0, 731)))).date(),
        stretches=stretches_of(r[0] for r in some),
        entries_count=len(some),
        digest=digest_of(lines),
        who="Olive",
        second="Cam",
        reason="their time is over",
    )
    more = [-1, EntriesDropped.KIND, rows[-1][2], rows[-1][3], "Olive", canonical(said.payload()), None, "{}"]
    copy.put([*rows, more])
    _empty(copy, [r[0] for r in some])


def emptied_altered(copy: Copy, rng: random.Random) -> None:
    """What is left of a dropped entry, changed."""
    row = rng.choice([r for r in copy.rows() if r[1] == DROPPED])
    name = rng.choice(("happened_at", "recorded_at", "author", "payload", "versions", "hash", "replaces"))
    value = _altered(row[COLUMNS.index(name)] or "x", rng)
    copy.do((f"UPDATE entry SET {name} = ? WHERE site = '' AND number = ?", (value, row[0])))


def emptied_filled(copy: Copy, rng: random.Random) -> None:
    """A good reading put into a dropped entry."""
    rows = copy.rows()
    row = rng.choice([r for r in rows if r[1] == DROPPED])
    good = next(r for r in rows if r[1] == Reading.KIND)
    change = "UPDATE entry SET kind = ?, author = ?, payload = ?, versions = ? WHERE site = '' AND number = ?"
    copy.do((change, (good[1], good[4], good[5], good[7], row[0])))


def dropping_altered(copy: Copy, rng: random.Random) -> None:
    """The entry that says what was dropped: a letter of it, or the whole of it."""
    row = next(r for r in copy.rows() if r[1] == EntriesDropped.KIND)
    if rng.random() < 0.3:
        copy.do(("DELETE FROM entry WHERE site = '' AND number = ?", (row[0],)))
    else:
        change = "UPDATE entry SET payload = ? WHERE site = '' AND number = ?"
        copy.do((change, (_altered(row[5], rng), row[0])))


def anchor_altered(copy: Copy, rng: random.Random) -> None:
    """An anchor that was kept elsewhere, changed there."""
    n = rng.randrange(len(copy.anchors))
    one = copy.anchors[n]
    other: dict[str, object] = rng.choice(
        [
            {"number": one.number - 1},
            {"hash": f"{rng.getrandbits(256):064x}"},
            {"at": one.at + dt.timedelta(days=rng.choice((-3, 3)))},
            {"name": "Somewhere else"},
            {"kitchen": BESIDE if one.kitchen == "" else ""},
        ]
    )
    copy.anchors[n] = replace(one, **other)  # type: ignore[arg-type]


def office_anchor_altered(copy: Copy, rng: random.Random) -> None:
    """An anchor in an office's record changed, every hash right; the office's own anchor is elsewhere."""
    rows = copy.rows()
    kept = [r for r in rows if r[1] == "anchor_kept" and r[0] <= copy.kept]
    row = rng.choice(kept)
    row[5] = _altered(row[5], rng)
    copy.put(rows)


def beside_rewritten(copy: Copy, rng: random.Random) -> None:
    """The other kitchen's record written anew with another figure, every hash right."""
    rows = copy.rows(BESIDE)
    row = rng.choice(rows[:-1])
    row[5] = row[5].replace('"core_c":', '"core_c":1')
    copy.put(rows, BESIDE)


def beside_cut(copy: Copy, rng: random.Random) -> None:
    """The other kitchen's record cut off, or gone."""
    last = rng.choice((0, rng.randrange(1, len(copy.rows(BESIDE)))))
    copy.do(("DELETE FROM entry WHERE site = ? AND number > ?", (BESIDE, last)))


def kitchens_swapped(copy: Copy, rng: random.Random) -> None:
    """One kitchen's record under the other's key, or under a new one."""
    new = ("UPDATE entry SET site = 'x' WHERE site = ?", (BESIDE,))
    over = [
        ("UPDATE entry SET site = ? WHERE site = ''", (BESIDE,)),
        ("UPDATE entry SET site = '' WHERE site = 'x'",),
    ]
    copy.do(new, *(over if rng.random() < 0.5 else ()))


def before_emptied(copy: Copy, rng: random.Random) -> None:
    """What came before a dropped entry, written anew up to it; every hash from there on stays as it was."""
    rows = copy.rows()
    first = next(n for n, r in enumerate(rows) if r[1] == DROPPED)
    rows[rng.randrange(first)][5] = '{"fryer":"birch","reason":"x","who":"Cam","words":"x"}'
    previous, changes = GENESIS, []
    for n, row in enumerate(rows[: first + 1]):
        link = row_hash(previous, n + 1, (row[1], row[4], row[6]), (row[2], row[3]), (row[5], row[7]))
        link = row[9] if n == first else link
        values = "payload = ?, previous_hash = ?, hash = ?"
        change = f"UPDATE entry SET {values} WHERE site = '' AND number = ?"
        changes.append((change, (row[5], previous, link, n + 1)))
        previous = link
    copy.do(*changes)


def set_back_slowly(copy: Copy, rng: random.Random) -> None:
    """Readings with right hashes, each less than a minute before the one in front of it."""
    rows = copy.rows()
    good, moment = next(r for r in rows if r[1] == Reading.KIND), unstamp(rows[-1][3])
    for _ in range(rng.randint(3, 60)):
        moment -= dt.timedelta(seconds=rng.uniform(30, 59))
        rows.append([-1, good[1], stamp(moment), stamp(moment), good[4], good[5], None, good[7], "", ""])
    copy.put(rows)


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
    emptied_unsaid,
    emptied_young,
    emptied_altered,
    emptied_filled,
    dropping_altered,
    anchor_altered,
    office_anchor_altered,
    beside_rewritten,
    beside_cut,
    kitchens_swapped,
    before_emptied,
    set_back_slowly,
)
"""What the threat model says is found."""


def newest_cut(copy: Copy, rng: random.Random) -> None:
    """The end cut off after the newest anchor kept elsewhere."""
    copy.do(
        ("DELETE FROM entry WHERE site = '' AND number > ?", (rng.randrange(copy.kept, len(copy.rows())),))
    )


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
