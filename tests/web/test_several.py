"""A server of two processes: it answers with both, starts one anew that died, and ends as one."""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
import threading
import time
from contextlib import contextmanager
from pathlib import Path

import httpx
import psycopg
import pytest
from examples.postgres import new_database

from frywright.ledger.accounts import Accounts
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from frywright.rooms.records import people
from frywright.trial.kitchens import demo_text
from frywright.web import serve, several
from frywright.web.app import SESSION_COOKIE
from tests.demo import keep_demo_sales

pytestmark = pytest.mark.slow(5)
PROGRAM = "from frywright.cli.main import run; run()"
PASSWORD, DATABASE = "oak leaf river stone", "several"
if not Path("/proc/self/task").exists():
    pytest.skip("what runs is read from /proc", allow_module_level=True)


@pytest.fixture(params=["file", "postgres"])
def path(request, tmp_path, monkeypatch):
    """The name of a store with an owner, on both databases."""
    monkeypatch.setenv("FRYWRIGHT_FILES", str(tmp_path / "files"))
    monkeypatch.setenv("FRYWRIGHT_KEY", str(tmp_path / "key"))
    on_file = request.param == "file"
    found = str(tmp_path / "s.db") if on_file else new_database(request.getfixturevalue("postgres"), DATABASE)
    with opened(found) as store:
        remember_kitchen(store, demo_text(), "demo.toml")
        people.add_account(store, "Olive Zed", "owner", PASSWORD)
    return found


@contextmanager
def opened(path):
    """The store, as another program sees it beside the server."""
    store = Store.named(path, now)
    try:
        yield store
    finally:
        store.close()


def children(process):
    """Processes of the server that answer, the writer first."""
    kept = Path(f"/proc/{process}/task/{process}/children").read_text().split()
    return [int(one) for one in kept if b"spawn_main" in Path(f"/proc/{one}/cmdline").read_bytes()]


def alive(process):
    """Whether a process runs."""
    try:
        return Path(f"/proc/{process}/stat").read_text().rsplit(") ", 1)[1][0] != "Z"
    except FileNotFoundError:
        return False


def soon(true, seconds=60.0):
    """Whether something comes true before long."""
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        if true():
            return True
        time.sleep(0.1)
    return False


@contextmanager
def server(path, *more):
    """A server of two processes; its process and a client who is signed in."""
    words = ["serve", "--no-open", "--port", "0", "--store", path, "--processes", "2", *more]
    running = subprocess.Popen([sys.executable, "-c", PROGRAM, *words], stdout=subprocess.PIPE, text=True)
    try:
        address = re.search(r"http://\S+:\d+", running.stdout.readline())[0]
        with opened(path) as store:
            token = Accounts(store).begin("Olive Zed", now())
        client = httpx.Client(
            base_url=address, headers={"origin": address}, cookies={SESSION_COOKIE: token}, timeout=60
        )
        with client:
            assert client.get("/care").status_code == 200
            yield running, client
    finally:
        running.terminate()
        running.wait(60)
        running.stdout.close()


def turn(client, key):
    """Tell a filter turn; the status of the answer."""
    form = {"key": key, "vat": "alder", "what": "filter"}
    return client.post("/care/oil", data=form, headers={"connection": "close"}).status_code


def test_writes_of_many_connections_are_kept_once_and_both_processes_answer(path):
    """Every write is there, whichever process took it; each has done some of the work."""
    with server(path) as (running, client):
        done = []

        def send(n):
            for count in range(6):
                done.append(turn(client, f"k{n}-{count}"))
                done.append(turn(client, f"k{n}-{count}"))
                client.get("/care", headers={"connection": "close"})

        threads = [threading.Thread(target=send, args=(n,)) for n in range(6)]
        for one in threads:
            one.start()
        for one in threads:
            one.join()
        assert done == [303] * 72
        assert len(children(running.pid)) == 2
        with opened(path) as store:
            assert len(list(store.facts(OilDone))) == 36
            store.verify()
        text = client.get("/metrics").text
        count = re.search(r'route="/care",method="GET",status="200"} (\d+)', text)
        assert int(count[1]) == 37  # of both together


@pytest.mark.parametrize("which", [0, 1])
def test_a_process_that_is_killed_is_started_anew(path, which):
    """The one that writes, and the other; what was kept stays, and what comes is kept."""
    with server(path) as (running, client):
        assert turn(client, "before") == 303
        before = children(running.pid)
        os.kill(before[which], signal.SIGKILL)
        assert soon(lambda: len(children(running.pid)) == 2 and before[which] not in children(running.pid))

        def kept():
            try:
                return turn(client, "after") == 303
            except httpx.TransportError:
                return False  # the connection was the dead one's

        assert soon(kept) and client.get("/care").status_code == 200
        assert before[1 - which] in children(running.pid)
    with opened(path) as found:
        assert len(list(found.facts(OilDone))) == 2
        found.verify()


@pytest.mark.parametrize(
    ("path", "how"),
    [
        ("file", signal.SIGTERM),
        ("file", signal.SIGINT),
        ("file", signal.SIGKILL),
        ("postgres", signal.SIGKILL),
    ],
    indirect=["path"],
)
def test_no_process_outlives_the_server(path, how):
    """Stopped, interrupted, or killed without a word; the store is one whole file afterwards."""
    with server(path) as (running, client):
        mine = children(running.pid)
        assert turn(client, "k") == 303 and len(mine) == 2
        client.close()
        os.kill(running.pid, how)
        running.wait(60)
        assert soon(lambda: not any(alive(one) for one in mine))
        assert soon(lambda: not Path(f"{path}-wal").exists(), 5)
    with opened(path) as store:
        store.verify()


def test_what_eight_tablets_tell_at_once_is_kept_once(path):
    """A fryer goes out of use: each tablet has a tap of its own, some through each process; one is kept."""
    with opened(path) as store:
        keep_demo_sales(store)
    with server(path) as (_, client):
        told = []

        def press(n):
            down = {"what": "down", "fryer": "alder", "reason": "cleaning", "key": f"d{n}"}
            told.append(client.post("/day/tap", json=down, headers={"connection": "close"}).status_code)

        threads = [threading.Thread(target=press, args=(n,)) for n in range(8)]
        for one in threads:
            one.start()
        for one in threads:
            one.join()
        assert told == [200] * 8
    with opened(path) as store:
        assert [item.fact.what for item in store.facts(BoardTap)] == ["down"]
        store.verify()


@pytest.mark.parametrize("path", ["postgres"], indirect=True)
def test_a_database_that_goes_is_told_by_both_and_comes_back(path, postgres):
    """Cut off and closed: each process says that nothing was kept, and goes on when it is back."""
    with (
        server(path) as (running, client),
        psycopg.connect(postgres.format(name="postgres"), autocommit=True) as other,
    ):
        assert turn(client, "before") == 303
        mine = children(running.pid)
        other.execute(f"ALTER DATABASE {DATABASE} ALLOW_CONNECTIONS false")
        other.execute(
            "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = %s", (DATABASE,)
        )
        for n in range(12):
            form = {"key": f"gone{n}", "vat": "alder", "what": "filter"}
            told = client.post("/care/oil", data=form, headers={"connection": "close"})
            assert told.status_code == 503 and "NOT kept" in told.text
            look = client.get("/care", headers={"connection": "close"})
            assert look.status_code == 503, look.text[:200]
            assert client.get("/health/live").status_code == 200
        assert client.get("/health/ready").status_code == 503
        other.execute(f"ALTER DATABASE {DATABASE} ALLOW_CONNECTIONS true")
        for n in range(12):
            assert turn(client, f"back{n}") == 303
            assert client.get("/care", headers={"connection": "close"}).status_code == 200
        assert children(running.pid) == mine
    with opened(path) as store:
        assert [item.fact.key for item in store.facts(OilDone)] == [
            "before",
            *(f"back{n}" for n in range(12)),
        ]
        store.verify()


def test_a_number_that_cannot_be_is_refused(tmp_path, monkeypatch):
    """Before anything is opened; where there are no sockets in files, there is one process."""
    store = Store.file(tmp_path / "r.db", now)
    for count in (0, -1, several.MOST_PROCESSES + 1):
        with pytest.raises(InputError, match="--processes"):
            serve.serve_pages(store, 0, False, processes=count)
    monkeypatch.setattr(serve, "possible", lambda: False)
    with pytest.raises(InputError, match="1 to 1"):
        serve.serve_pages(store, 0, False, processes=2)


def test_what_a_server_has_loaded_is_set_aside_ever_more_seldom(monkeypatch, instead_of_sleep):
    """Sixty seconds of a server's life: what it holds leaves the search for garbage at 4, 8, 16 and 32
    seconds, each time after a search; connections are let go every two seconds.
    """
    slept, done = [], []
    instead_of_sleep(slept.append)
    monkeypatch.setattr(serve.gc, "collect", lambda: done.append("searched"))
    monkeypatch.setattr(serve.gc, "freeze", lambda: done.append(sum(slept)))
    rested = []
    serve._resting(lambda: rested.append(sum(slept)), lambda: sum(slept) < 60.0)
    assert done == ["searched", 4.0, "searched", 8.0, "searched", 16.0, "searched", 32.0]
    assert rested == [2.0 * n for n in range(1, 31)]
