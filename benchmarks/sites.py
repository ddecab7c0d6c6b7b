"""A thousand sites and one office: records over bad lines end equal, and how long a day's entries take.

``python -m benchmarks.sites`` [--sites 1000] [--entries 500] [--postgres]. Every site has a record of its
own. It is handed to the office in messages that are cut before they arrive, come twice, overlap or come out
of order; some clocks are wrong. At the end every chain at the office is compared with the site's own. The
merge is timed by itself, over a good line: what an office does with a message, without the network.
"""

from __future__ import annotations

import argparse
import datetime as dt
import os
import random
import tempfile
import time
from pathlib import Path

from frywright.ledger.backup import as_recorded
from frywright.ledger.export import as_row
from frywright.ledger.replica import take
from frywright.ledger.store import Store
from frywright.model.entry import Entry, Recorded, chain_hash
from frywright.model.errors import RecordError
from frywright.rooms.clock import now

MESSAGE = 500


def record(site: int, count: int) -> list[Recorded]:
    """Entries of a site with a chain of their own; every tenth site's clock is wrong by up to a year."""
    luck = random.Random(site)
    moment = dt.datetime(2026, 11, 25, 16, tzinfo=dt.UTC)
    moment += dt.timedelta(days=luck.uniform(-365, 365)) if site % 10 == 0 else dt.timedelta()
    found, link = [], "0" * 64
    for number in range(1, count + 1):
        moment += dt.timedelta(seconds=luck.uniform(1, 120))
        payload = {
            "fryer": f"f{luck.randint(1, 4)}",
            "product": "bone_in",
            "core_c": round(luck.gauss(82, 3), 1),
            "thermometer": "T1",
            "pieces_count": luck.randint(8, 48),
            "who": "crew",
        }
        entry = Entry(kind="probe_reading", happened_at=moment, author="crew", payload=payload)
        digest = chain_hash(link, number, entry, moment)
        found.append(
            Recorded(number=number, entry=entry, recorded_at=moment, previous_hash=link, hash=digest)
        )
        link = digest
    return found


def send(office: Store, key: str, items: list[Recorded], luck: random.Random | None) -> int:
    """Hand a record over as a site does, from where the office stands; messages that were needed."""
    sent = 0
    while True:
        after = office.at(key).last().number
        if after == len(items):
            return sent
        rows = [as_row(item) for item in items[after : after + MESSAGE]]
        chance = luck.random() if luck else 1.0
        sent += 1
        if chance < 0.15:
            continue  # cut before it arrives
        if luck and chance < 0.25 and after:
            rows = [as_row(item) for item in items[max(after - 50, 0) : after + MESSAGE // 2]]  # overlaps
        if luck and 0.25 <= chance < 0.3:
            try:
                take(office, key, [as_recorded(row, 1) for row in rows[5:]], now())  # out of order
            except RecordError:
                continue
        for _ in range(2 if chance < 0.4 else 1):
            take(office, key, [as_recorded(row, n) for n, row in enumerate(rows, 1)], now())


def main() -> None:
    """Run it and print the figures."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--sites", type=int, default=1000)
    asked.add_argument("--entries", type=int, default=500)
    asked.add_argument("--postgres", action="store_true")
    told = asked.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        if told.postgres:
            from examples.postgres import cluster, new_database

            os.environ["FRYWRIGHT_FILES"] = f"{folder}/files"
            with cluster() as server:
                run(Store.named(new_database(server, "office"), now), told.sites, told.entries, "PostgreSQL")
        else:
            run(Store.file(Path(folder) / "office.db", now), told.sites, told.entries, "SQLite")


def run(office: Store, sites: int, entries: int, name: str) -> None:
    """Merge every site's day once over a good line, timed, then another day over bad lines, compared."""
    records = {f"s{n:04}": record(n, 2 * entries) for n in range(sites)}
    start = time.perf_counter()
    for key, items in records.items():
        send(office, key, items[:entries], None)
    took = time.perf_counter() - start
    messages = 0
    for n, (key, items) in enumerate(records.items()):
        messages += send(office, key, items, random.Random(n))
    equal = 0
    for key, items in records.items():
        kept = [(e.number, e.hash) for e in office.at(key).entries()]
        equal += kept == [(e.number, e.hash) for e in items] and office.at(key).verify()[0] == len(items)
    pace, least = sites * entries / took, sites * -(-entries // MESSAGE)
    print(f"{name}: {sites} sites x {entries} entries merged in {took:.1f} s ({pace:,.0f} a second)")
    print(f"a second day over bad lines: {messages} messages, at least {least}")
    print(f"records equal to the site's own: {equal} of {sites}")
    office.close()
    if equal != sites:
        raise SystemExit(1)


if __name__ == "__main__":
    main()
