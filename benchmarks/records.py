"""Records at size: page, pack, verify and memory over many entries; tablets writing at once; a proof sweep on
one and on two Dask workers.

python -m benchmarks.records [--entries 10000000] [--sites 1000]
"""

from __future__ import annotations

import argparse
import datetime as dt
import resource
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import threading
import time
import urllib.parse
import urllib.request
from pathlib import Path

from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.fact import Fact
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.entry import canonical, row_hash, stamp
from frywright.rooms.clock import now
from frywright.rooms.fleet import fleet
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.records import pack, pack_paper
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app

YEARS = 5
TABLETS, TAPS = 200, 10


def fill(path: Path, count: int, days: float = YEARS * 365.0) -> None:
    """Append many board taps and readings over a span of days in bulk, chained as the store chains them."""
    store = Store.file(path, now)
    remember_kitchen(store, demo_text(), "demo.toml")
    end = store.last()
    raw = sqlite3.connect(path)
    raw.execute("PRAGMA synchronous=OFF")
    last = dt.datetime(2026, 11, 25, tzinfo=dt.UTC)
    step, previous = days * 86400.0 / count, end.hash
    products = ("bone_in", "tenders", "wedges")

    def rows():
        nonlocal previous
        for n in range(end.number + 1, count + 1):
            at = last - dt.timedelta(seconds=(count - n) * step)
            fact: Fact
            if n % 20 == 0:
                fact = Reading(
                    name="bone_in alder",
                    load="bone_in alder",
                    thermometer="T1",
                    core_c=76.0 + n % 9,
                    limit_c=73.9,
                    units_count=32.0,
                    fryer="alder",
                    product="bone_in",
                    who="Ana",
                )
            else:
                fact = BoardTap(
                    key=str(n),
                    date=at.date(),
                    what="drop" if n % 3 else "sold",
                    at_s=43200.0,
                    fryer="alder",
                    product=products[n % 3],
                    pieces_count=32,
                    reason="",
                    who="",
                    practice_count=None,
                )
            kind, payload = fact.KIND, fact.payload()
            text, moment = canonical(payload), stamp(at)
            link = row_hash(previous, n, (kind, "Ana", None), (moment, moment), (text, "{}"))
            yield n, kind, moment, moment, "Ana", text, None, "{}", previous, link
            previous = link

    with raw:
        raw.executemany("INSERT INTO entry VALUES ('',?,?,?,?,?,?,?,?,?,?)", rows())
    raw.close()


def timed(what: str, do, repeat: int = 3) -> float:
    """Median seconds of a few runs, printed."""
    times = []
    for _ in range(repeat):
        start = time.perf_counter()
        do()
        times.append(time.perf_counter() - start)
    found = statistics.median(times)
    print(f"{what}: {1000 * found:.0f} ms", flush=True)
    return found


def at_size(count: int) -> None:
    """Page, pack, verify and memory."""
    from fastapi.testclient import TestClient

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "big.db"
        start = time.perf_counter()
        fill(path, count)
        print(
            f"{count:,} entries, {path.stat().st_size / 1e9:.1f} GB, filled in"
            f" {time.perf_counter() - start:.0f} s",
            flush=True,
        )
        store = Store.file(path, now)
        client = TestClient(
            make_app(store), base_url="http://127.0.0.1", headers={"origin": "http://127.0.0.1"}
        )
        timed("page of the newest entries", lambda: client.get("/records").raise_for_status(), 5)
        timed("page of one kind", lambda: client.get("/records?kind=probe_reading").raise_for_status(), 5)
        kitchen = remembered_kitchen(store)
        day = dt.date(2026, 11, 24)
        loads = pack.pack_of(store, kitchen, day - dt.timedelta(days=29), day).view
        print(
            f"pack of 30 days: {sum(r.count for r in loads.loads):,} loads, {loads.readings:,} readings",
            flush=True,
        )
        timed(
            "pack of 30 days as PDF",
            lambda: pack_paper.pack_pdf(
                kitchen, pack.pack_of(store, kitchen, day - dt.timedelta(days=29), day)
            ),
            1,
        )
        start = time.perf_counter()
        store.verify()
        took = time.perf_counter() - start
        print(
            f"verify: {took:.0f} s, {count / took:,.0f} entries/s; most memory"
            f" {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1e3:.0f} MB",
            flush=True,
        )


def year_pack(loads_count: int = 100_000) -> None:
    """The pack of a year with so many loads: its page, its paper and its archive."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "year.db"
        fill(path, int(loads_count * 30 / 19) + 1, 364.0)  # 19 of 30 entries are drops
        store = Store.file(path, now)
        kitchen, last = remembered_kitchen(store), dt.date(2026, 11, 24)
        days = last - dt.timedelta(days=363), last
        made: list[pack.Pack] = []
        took = timed("view of the pack", lambda: made.append(pack.pack_of(store, kitchen, *days)), 1)
        took += timed("its paper", lambda: pack_paper.pack_pdf(kitchen, made[0]), 1)
        zipped = timed("its archive of tables", lambda: pack.csv_zip(store, kitchen, *days), 1)
        found = made[0].view
        loads = sum(r.count for r in found.loads)
        print(
            f"pack of a year: {loads:,} loads, {found.readings:,} readings,"
            f" {found.entry:,} entries walked:"
            f" {took:.1f} s on paper, {zipped:.1f} s as an archive",
            flush=True,
        )


def tablets() -> None:
    """Two hundred tablets that tell of oil at once: how long the slowest wait, and that nothing is lost."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "t.db"
        store = Store.file(path, now)
        remember_kitchen(store, demo_text(), "demo.toml")
        before = store.last().number
        command = [
            sys.executable,
            "-c",
            "from frywright.cli.main import run; run()",
            "serve",
            "--no-open",
            "--port",
            "0",
            "--store",
            str(path),
        ]
        server = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
        address = server.stdout.readline().split(" is at ")[1].split("/ ")[0]  # type: ignore[union-attr]
        times: list[float] = []

        def tablet(n: int) -> None:
            time.sleep(n * 5.0 / TABLETS)
            for k in range(TAPS):
                body = urllib.parse.urlencode({"key": f"{n}-{k}", "vat": "alder", "what": "filter"}).encode()
                asked = urllib.request.Request(
                    f"{address}/care/oil",
                    data=body,
                    headers={"origin": address, "accept": "application/json"},
                )
                start = time.perf_counter()
                opener.open(asked, timeout=60).close()
                times.append(time.perf_counter() - start)
                time.sleep(5.0)

        class Stay(urllib.request.HTTPRedirectHandler):
            def http_error_303(self, req, fp, code, msg, headers):
                return fp

        opener = urllib.request.build_opener(Stay)
        workers = [threading.Thread(target=tablet, args=(n,)) for n in range(TABLETS)]
        for worker in workers:
            worker.start()
        for worker in workers:
            worker.join()
        times.sort()
        kept = sum(1 for _ in store.entries(OilDone.KIND))
        print(
            f"{TABLETS} tablets, a tap each five seconds: median {1000 * times[len(times) // 2]:.0f} ms, p99"
            f" {1000 * times[int(0.99 * len(times))]:.0f} ms; {kept} of {TABLETS * TAPS} kept",
            flush=True,
        )
        assert store.verify()[0] == before + kept
        server.terminate()
        server.wait(timeout=20)


def sweeps(count: int) -> None:
    """Sites with one program each, proved on one Dask worker and on two."""
    from distributed import LocalCluster

    head, *programs = demo_text().split("[[program]]\n")
    tail = programs[-1][programs[-1].index("# The day") :]
    text = head + "[[program]]\n" + next(p for p in programs if 'name = "bone-in alder"' in p) + tail
    sites = [
        fleet.Site(name=f"site {n}", text=text.replace("altitude_ft = 5420", f"altitude_ft = {9 * n}"))
        for n in range(count)
    ]
    took = {}
    for workers in (1, 2):
        with LocalCluster(n_workers=workers, threads_per_worker=1, dashboard_address=None) as cluster:
            fleet.sweep(sites[: 2 * workers], samples=64, address=cluster.scheduler_address)
            start = time.perf_counter()
            rows = fleet.sweep(sites, samples=64, address=cluster.scheduler_address)
            took[workers] = time.perf_counter() - start
            print(
                f"proof of {count} sites, {len(rows)} programs, {workers} workers: {took[workers]:.0f} s",
                flush=True,
            )
    print(f"two workers are {took[1] / took[2]:.2f} times one", flush=True)


def main() -> None:
    """All of it."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--entries", type=int, default=200_000)
    parser.add_argument("--sites", type=int, default=20)
    asked = parser.parse_args()
    year_pack()
    at_size(asked.entries)
    tablets()
    sweeps(asked.sites)


if __name__ == "__main__":
    main()
