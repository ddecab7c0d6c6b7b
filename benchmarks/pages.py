"""Processor time of every page as the record grows. Stores of a thousand, ten thousand and two hundred
thousand entries: the demo's fortnights one after another, the newest one the same in each.

python -m benchmarks.pages [--entries 1000,10000,200000] [--only /care,/records] [--keep FOLDER]
"""

from __future__ import annotations

import argparse
import asyncio
import datetime as dt
import io
import json
import re
import sqlite3
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

from benchmarks.requests import ask
from frywright.ledger.accounts import Accounts
from frywright.ledger.attachments import attachments_of
from frywright.ledger.store import Store
from frywright.model.entry import Recorded, canonical, row_hash, stamp
from frywright.rooms.clock import now
from frywright.rooms.demo import play_demo
from frywright.rooms.records import people
from frywright.trial.warm import warm_up
from frywright.web.kitchens import Kitchens
from frywright.web.rights import RIGHTS

SPAN = dt.timedelta(days=14)
ONCE = ("kitchen", "program", "person", "slot", "in_service", "retired", "prove_again", "program_probed")
"""Kinds that stand once, before the first fortnight."""
DAY = re.compile(r"\b(20\d\d-\d\d-\d\d)\b")
SOLD_ON = re.compile(rb"^(\d\d/\d\d/20\d\d)", re.MULTILINE)
TIMES, SLOW_MS = 5, 3000.0
"""Later looks at a page; one whose first look takes longer gets one more only."""
COLUMNS = (
    "(site, number, kind, happened_at, recorded_at, author, payload, replaces, versions, previous_hash, hash)"
)


def long_store(demo: Store, path: Path, count: int) -> Store:
    """A store of about so many entries, made of the demo's: in bulk, chained as the store chains them."""
    target = Store.file(path, now)
    rows = list(demo.entries())
    once = [item for item in rows if _stands_once(item)]
    rest = [item for item in rows if not _stands_once(item)]
    spans = max(1, (count - len(once)) // len(rest))
    raw = sqlite3.connect(path)
    raw.execute("PRAGMA synchronous=OFF")
    raw.execute("ATTACH DATABASE ? AS demo", (str(demo.engine.url.database),))
    number, link, base = 0, "0" * 64, {0: 0}

    def made() -> Iterator[tuple[object, ...]]:
        nonlocal number, link
        for n in range(spans, 0, -1):
            some = [*once, *rest] if n == spans else rest
            names = dict(base)
            for item in some:
                number += 1
                names[item.number] = number
                if _stands_once(item):
                    base[item.number] = number
                back = (n - 1) * SPAN
                entry, at = item.entry, (item.entry.happened_at - back, item.recorded_at - back)
                text = _moved(canonical(entry.payload), back, names)
                if entry.kind == "sales_file":
                    text = _sold(demo, target, text, back)
                replaces = names.get(entry.replaces or 0) or None
                who, moments = (entry.kind, entry.author, replaces), (stamp(at[0]), stamp(at[1]))
                versions = canonical(entry.versions)
                found = row_hash(link, number, who, moments, (text, versions))
                yield ("", number, entry.kind, *moments, entry.author, text, replaces, versions, link, found)
                link = found

    with raw:
        raw.executemany(f"INSERT INTO entry {COLUMNS} VALUES (?,?,?,?,?,?,?,?,?,?,?)", made())
        for table in ("person", "private"):
            raw.execute(f"INSERT INTO {table} SELECT * FROM demo.{table}")
    raw.close()
    target.verify()
    return target


def _stands_once(item: Recorded) -> bool:
    """Kitchen, programs, people, and the probing that decided a program: it is not probed anew for years."""
    return item.entry.kind in ONCE or item.entry.payload.get("program") is not None


def _moved(text: str, back: dt.timedelta, names: dict[int, int]) -> str:
    """A payload some days earlier, which names the entries of its own fortnight."""

    def walk(value: object, key: str = "") -> object:
        if isinstance(value, dict):
            return {name: walk(part, name) for name, part in value.items()}
        if isinstance(value, list):
            return [walk(part, key) for part in value]
        if type(value) is int and (key.endswith("_number") or key in ("entry", "readings")):
            return names.get(value, value)
        return value

    def earlier(found: re.Match[str]) -> str:
        return (dt.date.fromisoformat(found[1]) - back).isoformat()

    return DAY.sub(earlier, canonical(walk(json.loads(text))))


def _sold(demo: Store, target: Store, text: str, back: dt.timedelta) -> str:
    """The same sales some days earlier, as a file of their own."""
    told = json.loads(text)
    with attachments_of(demo).open(told["sha256"]) as stream:
        data = stream.read()

    def earlier(found: re.Match[bytes]) -> bytes:
        day = dt.datetime.strptime(found[1].decode(), "%m/%d/%Y") - back
        return day.strftime("%m/%d/%Y").encode()

    name, size = attachments_of(target).keep(io.BytesIO(SOLD_ON.sub(earlier, data)))
    return canonical({**told, "sha256": name, "size_bytes": size})


def addresses(store: Store, today: dt.date) -> list[str]:
    """One address for every page of the table of rights that shows something of this record."""
    newest = {kind: store.newest(kind) for kind in ("probe_reading", "deviation", "day_event")}
    filled = {
        "/records/entry/{number}": f"/records/entry/{newest['day_event']}",
        "/records/case/{number}": f"/records/case/{newest['deviation']}",
        "/records/reading/{number}": f"/records/reading/{newest['probe_reading']}",
        "/api/v1/entries/{number}": f"/api/v1/entries/{newest['day_event']}",
        "/api/v1/entries": f"/api/v1/entries?after={newest['day_event'] - 100}",
        "/care/card/{key}": "/care/card/boil_out",
        "/care/card/{key}.pdf": "/care/card/boil_out.pdf",
        "/care/card/{key}.json": "/care/card/boil_out.json",
        "/care/drill/{key}": "/care/drill/fire",
        "/day/{picture}.svg": "/day/loads.svg",
        "/setup/{what}/check": "/setup/fryer/check",
        "/setup/{what}/{key}": "/setup/fryer/alder",
    }
    for page in (
        "/cook/card",
        "/cook/card.pdf",
        "/cook/changes",
        "/cook/readback",
        "/cook/probing/sheet.pdf",
    ):
        filled[page] = f"{page}?program=bone-in+alder"
    for page in ("/records/pack", "/records/pack.json", "/records/pack.pdf", "/records/pack.zip"):
        filled[page] = f"{page}?first={today - SPAN}&last={today}"
    gets = (route.removeprefix("GET ") for route in RIGHTS if route.startswith("GET "))
    return [filled.get(page, page) for page in gets if "{" not in filled.get(page, page)]


async def _looked(app: Kitchens, path: str, cookie: str) -> tuple[int, float]:
    """Status of a look and its milliseconds of the processor."""
    begun_s = time.process_time()
    status, _ = await ask(app, path, cookie)
    return status, 1000 * (time.process_time() - begun_s)


async def costs(store: Store, only: tuple[str, ...]) -> dict[str, tuple[int, float, float]]:
    """Status of every page, milliseconds of a first look and of a later one, the least of several."""
    if not Accounts(store).any():
        people.add_account(store, "Olive", "owner", "oak leaf river stone")
    cookie = Accounts(store).begin("Olive", now())
    app, found = Kitchens(store), {}
    await ask(app, "/care/people", cookie)  # templates and kitchen are read in
    for path in addresses(store, now().date()):
        if only and path.split("?")[0] not in only:
            continue
        status, first = await _looked(app, path, cookie)
        later = min([(await _looked(app, path, cookie))[1] for _ in range(TIMES if first < SLOW_MS else 1)])
        found[path] = status, first, later
    return found


def main() -> None:
    """Each page as a row."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--entries", default="1000,10000,200000")
    parser.add_argument("--only", default="")
    parser.add_argument("--keep", type=Path, help="folder in which the stores are made once and stay")
    told = parser.parse_args()
    only = tuple(told.only.split(",")) if told.only else ()
    warm_up()
    with tempfile.TemporaryDirectory() as gone:
        folder = told.keep or Path(gone)
        demo = Store.file(folder / "demo.db", now)
        play_demo(demo)
        rows: dict[str, list[str]] = {}
        sizes = [int(size) for size in told.entries.split(",")]
        for count in sizes:
            path = folder / f"{count}.db"
            store = Store.file(path, now) if path.exists() else long_store(demo, path, count)
            for page, (status, first, later) in asyncio.run(costs(store, only)).items():
                name = f"`{page.split('?')[0]}`" + (f" ({status})" if status != 200 else "")
                rows.setdefault(re.sub(r"/\d+", "/…", name), []).append(f"{first:.0f}, {later:.1f}")
            store.close()
    heads = " | ".join(f"{count:,} entries" for count in sizes)
    print(f"| processor time of a first look, of a later one, ms | {heads} |\n|---{'|---' * len(sizes)}|")
    for name, cells in rows.items():
        print(f"| {name} | {' | '.join(cells)} |")


if __name__ == "__main__":
    main()
