"""Two processes on one store: what counts, counts once, whichever of them is asked."""

from __future__ import annotations

import asyncio
import contextlib
import io
import re
import threading
import time
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from examples.postgres import new_database
from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.fleet.kitchens import open_kitchen
from frywright.rooms.kitchen import remember_kitchen
from frywright.rooms.records import people
from frywright.trial.kitchens import demo_text
from frywright.web import passing
from frywright.web.kitchens import Kitchens
from frywright.web.passing import Other, Passing, counts_of, reads_only
from frywright.web.rates import Rates
from frywright.web.rights import RIGHTS
from tests.demo import kitchen_store

HOST, PAGE = "http://127.0.0.1", {"accept": "text/html"}
PASSWORD = "oak leaf river stone"
PASSED_ON = {
    "/code",
    "/cook/desk/follow/{number}",
    "/cook/desk/follow/{number}/view.json",
    "/cook/desk/job/{number}",
    "/cook/kitchen",
    "/cook/live",
    "/cook/live/part",
    "/cook/probes",
    "/cook/probes/{number}",
    "/cook/probes/{number}/report.pdf",
    "/cook/probing/sheet.pdf",
    "/first-owner",
    "/metrics",
    "/records",
    "/records/local-rules",
    "/records/own",
    "/records/own/data.jsonl",
    "/records/people",
    "/releases",
    "/setup",
    "/setup/day",
    "/setup/first",
    "/setup/own",
    "/setup/{what}/check",
    "/setup/{what}/{key}",
    "/sign-in",
    "/sign-in/company",
    "/sign-in/company/back",
}
"""Pages that only the one who writes answers: some live in its memory, none is asked for often."""


class Line:
    """A process as the others find it; a loop of its own in a thread."""

    def __init__(self, other) -> None:
        self._loop, self._other = asyncio.new_event_loop(), other
        self._thread = threading.Thread(target=self._loop.run_forever, daemon=True)
        self._thread.start()
        self._do(other.listen())

    def _do(self, work):
        asyncio.run_coroutine_threadsafe(work, self._loop).result(30)

    def close(self):
        """Go away."""

        async def end():
            await self._other.leave()
            rest = asyncio.all_tasks() - {asyncio.current_task()}
            for task in rest:
                task.cancel()
            await asyncio.gather(*rest, return_exceptions=True)
            await asyncio.sleep(0.05)

        self._do(end())
        self._loop.call_soon_threadsafe(self._loop.stop)
        self._thread.join()
        self._loop.close()


class Both:
    """A writer, and beside it one that reads and passes on."""

    def __init__(self, path: str, folder: Path) -> None:
        self.store = Store.named(path, now)
        self.writing = Kitchens(self.store)
        self.reading = Kitchens(Store.named(path, now))
        self.line = Line(Other(self.writing, folder, passing.WRITER))
        self.app = Passing(self.reading, folder)


@pytest.fixture
def folder():
    with TemporaryDirectory(prefix="fw-") as found:
        yield Path(found)


@pytest.fixture(params=["file", pytest.param("postgres", marks=pytest.mark.slow)])
def both(request, tmp_path, folder, monkeypatch):
    """The two of them on one store, on both databases."""
    monkeypatch.setenv("FRYWRIGHT_FILES", str(tmp_path / "files"))
    on_file = request.param == "file"
    path = str(tmp_path / "b.db") if on_file else new_database(request.getfixturevalue("postgres"), "both")
    found = Both(path, folder)
    remember_kitchen(found.store, demo_text(), "demo.toml")
    people.add_account(found.store, "Olive Zed", "owner", PASSWORD)
    yield found
    found.line.close()
    for one in (found.writing, found.reading):
        one.store.close()


def client_of(app, **more):
    return TestClient(app, base_url=HOST, headers={"origin": HOST, **more}, follow_redirects=False)


@pytest.fixture
def reader(both):
    with client_of(both.app) as client:
        yield client


@pytest.fixture
def writer(both):
    return client_of(both.writing)


def words(page):
    """A page's text."""
    return re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", page))


def sign_in(client, secret=PASSWORD, name="Olive Zed"):
    return client.post("/sign-in", data={"name": name, "secret": secret}, headers=PAGE)


def test_every_write_and_all_that_lives_in_memory_is_the_writers():
    """A new page is passed on until somebody says that it shows only the record."""
    routes = [route.split(" ", 1) for route in RIGHTS]
    filled = {path: re.sub(r"{\w+}", "1", path) for _, path in routes}
    assert not [path for method, path in routes if method != "GET" and reads_only(method, filled[path])]
    gets = {path for method, path in routes if method == "GET" and not path.startswith("/api/")}
    assert {path for path in gets if not reads_only("GET", filled[path])} == PASSED_ON
    for path in ("/day/board.json", "/at/mill/day/board.json", "/at/mill/", "/at/-/care", "/static/x/y.css"):
        assert reads_only("GET", path) and reads_only("HEAD", path) and not reads_only("POST", path)
    for path in ("/at/mill/cook/live", "/cook/live", "/api/v1/sync", "/api/v1/live/readings", "/nowhere"):
        assert not reads_only("GET", path)
    assert not reads_only("GET", "/at/mill/sign-in") and not reads_only("GET", "/at/MILL/care")


def test_wrong_passwords_are_counted_together(reader, writer):
    """Five free tries are five, whoever is asked, and then the right one waits too."""
    for client in (reader, writer, reader, writer, reader):
        assert sign_in(client, "wrong wrong wrong").status_code == 422
    for client in (reader, writer):
        told = sign_in(client)
        assert told.status_code == 422 and "too many wrong tries" in told.text


def test_a_session_of_one_holds_at_the_other_and_ends_at_both(reader, writer):
    """The cookie comes through, with the headers of a safe answer, each once."""
    answer = sign_in(reader)
    assert answer.status_code == 303 and "httponly" in answer.headers["set-cookie"].lower()
    for name in ("content-security-policy", "x-content-type-options"):
        assert len(answer.headers.get_list(name)) == 1
    writer.cookies.update(reader.cookies)
    assert reader.get("/care").status_code == writer.get("/care").status_code == 200
    assert reader.post("/sign-out").status_code == 303
    writer.cookies.set("session", "none")
    assert reader.get("/care").status_code == writer.get("/care").status_code == 403


@pytest.mark.slow
def test_a_flood_meets_one_limit(both, reader, writer):
    """Of sign-ins by an address, and of writes by whoever is signed in."""
    both.writing.home.state.knocks = Rates(4, 1e-3)
    told = [sign_in(client, "").status_code for client in (reader, writer, reader, writer, reader, writer)]
    assert told.count(429) == 2
    both.writing.home.state.knocks = Rates()
    assert sign_in(reader).status_code == 303
    writer.cookies.update(reader.cookies)
    both.writing.home.state.rates = Rates(3, 1e-3)
    tap = {"what": "people", "pieces": 2}
    taps = [
        client.post("/day/tap", json=tap | {"key": f"k{n}"}).status_code
        for n, client in enumerate((reader, writer, reader, writer))
    ]
    assert taps.count(429) == 1 and taps[-1] == 429


@pytest.mark.slow
def test_work_begun_at_one_is_seen_at_the_other(reader, writer):
    """How far it is, its end, and that it was cancelled."""
    assert sign_in(reader).status_code == 303
    writer.cookies.update(reader.cookies)
    began = reader.post("/cook/desk/prove", data={"program": "bone-in alder"})
    assert began.status_code == 303
    where = began.headers["location"]
    assert "bone-in alder" in reader.get(where).text and "bone-in alder" in writer.get(where).text
    assert writer.post(f"{where}/cancel").status_code == 303
    for client in (reader, writer):
        assert client.get(where).status_code == 200
    assert reader.get("/cook/desk/job/999").status_code == 404


@pytest.mark.slow
def test_readings_and_a_load_followed_live_are_one(both, reader, writer):
    """Readings that came to one are followed by a load begun at the other."""
    assert sign_in(reader).status_code == 303
    writer.cookies.update(reader.cookies)
    token = people.add_device(both.store, "Box", "crew", "Olive Zed")
    readings = {"source": "box", "samples": [{"channel": "K1", "temp": 20.0, "unit": "C", "at": time.time()}]}
    told = reader.post("/api/v1/live", json=readings, headers={"authorization": f"Bearer {token}"})
    assert told.json() == {"new": 1}
    asked = {"program": "tenders cedar", "drop": "now", "channel_0": "Box box/K1", "where_0": "tender"}
    begun = writer.post("/cook/live/start", data=asked)
    assert begun.status_code == 303, begun.text[:300]
    number = begun.headers["location"].split("load=")[1]
    pages = [client.get(f"/cook/live?load={number}").text for client in (reader, writer)]
    assert all("Tender Box box/K1" in words(page) for page in pages)
    assert reader.post(f"/cook/live/{number}/stop").status_code == 303
    assert "Tender Box box/K1" not in words(writer.get(f"/cook/live/part?load={number}").text)


def test_what_is_written_through_one_is_read_by_both(both, reader, writer):
    """A tap that comes twice, once to each, is kept once; the chain holds."""
    assert sign_in(reader).status_code == 303
    writer.cookies.update(reader.cookies)
    before = reader.get("/api/v1/chain").json()["number"]
    told = [c.post("/day/tap", json={"key": "t1", "what": "people", "pieces": 3}) for c in (reader, writer)]
    if told[0].status_code == 422:  # a kitchen without sales has no board: another write
        told = [
            c.post("/care/oil", data={"key": "o1", "vat": "alder", "what": "filter"})
            for c in (reader, writer)
        ]
        assert [one.status_code for one in told] == [303, 303]
    after = [c.get("/api/v1/chain").json()["number"] for c in (reader, writer)]
    assert after[0] == after[1] != before
    both.store.verify()


def test_a_large_body_comes_through_whole(both, reader):
    """In pieces; one that is too large is refused, and the next request is answered."""
    assert sign_in(reader).status_code == 303
    rows = "".join(f"2026-11-26 12:{n // 60 % 60:02}:{n % 60:02},{20 + n % 7}\n" for n in range(60_000))
    log = ("Time,K1\n" + rows).encode()
    assert len(log) > 4 * passing.PIECE_BYTES
    sent = reader.post("/cook/probes/upload", files={"file": ("long.csv", io.BytesIO(log), "text/csv")})
    kept = [path.stat().st_size for path in both.store.files.rglob("*") if path.is_file()]
    assert sent.status_code == 303 and len(log) in kept
    much = reader.post("/care/oil", content=b"x" * 2_000_000, headers={"content-type": "text/plain"})
    assert much.status_code == 413
    assert reader.get("/records").status_code == 200
    own = reader.get("/records/own/data.jsonl")
    assert own.status_code == 200 and b"Olive Zed" in own.content


def test_a_kitchen_of_its_own_address_stays_there(both, reader):
    """Its writes are passed on, and lead back to it."""
    assert open_kitchen(both.store, {"name": "Mill", "like": "-"}) == "mill"
    assert sign_in(reader).status_code == 303
    filter_turn = {"key": "m1", "vat": "alder", "what": "filter"}
    assert reader.post("/at/mill/care/oil", data=filter_turn).headers["location"].startswith("/at/mill/")
    assert reader.get("/at/mill/care").status_code == 200
    assert both.store.at("mill").last().number > 1


def asked(app, body, *, path="/care/oil", accept=b"application/json"):
    """Ask an application directly, with messages as they come; what it answers."""
    told = []

    async def run():
        messages = iter(body)

        async def receive():
            message = next(messages, None)
            if message is None:
                await asyncio.sleep(3600)
            return message

        async def send(message):
            told.append(message)

        headers = [(b"host", b"127.0.0.1"), (b"origin", HOST.encode()), (b"accept", accept)]
        headers += [(b"content-length", b"100"), (b"content-type", b"application/x-www-form-urlencoded")]
        scope = {
            "type": "http",
            "method": "POST",
            "path": path,
            "raw_path": path.encode(),
            "query_string": b"",
            "headers": headers,
            "scheme": "http",
            "http_version": "1.1",
            "client": ("127.0.0.1", 1),
            "server": ("127.0.0.1", 80),
            "state": {},
        }
        await asyncio.wait_for(app(scope, receive, send), 30)

    asyncio.run(run())
    return told


def test_whoever_leaves_in_the_middle_has_written_nothing(both):
    """Half a form is none, and the connection between the two is not used again."""
    before = both.store.last()
    asked(
        both.app,
        [{"type": "http.request", "body": b"vat=alder&", "more_body": True}, {"type": "http.disconnect"}],
    )
    assert both.store.last() == before and both.app._free == []


def test_without_a_writer_it_is_said_that_nothing_was_kept(folder, tmp_path, monkeypatch):
    """To a page and to a program, and what can be read is still read."""
    monkeypatch.setattr(passing, "WAIT_S", 0.2)
    store = kitchen_store(tmp_path / "n.db")
    app = Passing(Kitchens(store), folder)
    with client_of(app) as client:
        answer = client.post("/care/oil", data={"vat": "alder", "what": "filter"}, headers=PAGE)
        assert answer.status_code == 503 and "NOT kept" in answer.text
        assert answer.headers["retry-after"] == "1" and "content-security-policy" in answer.headers
        assert "cannot be read now" in client.get("/records").json()["message"]
        assert client.get("/care").status_code == 200


def test_a_writer_that_comes_back_is_waited_for(both, folder):
    """A request that comes while it is started anew is answered by it."""
    both.line.close()
    (folder / "0").unlink(missing_ok=True)
    came = []
    later = threading.Timer(0.5, lambda: came.append(Line(Other(both.writing, folder, passing.WRITER))))
    later.start()
    with client_of(both.app) as client:
        assert sign_in(client).status_code == 303
    both.line = came[0]


def test_an_answer_that_was_lost_is_told_as_lost(folder, tmp_path):
    """The writer died over it: nobody says that nothing was kept."""

    class Dies:
        async def listen(self):
            self.server = await asyncio.start_unix_server(self.heard, str(folder / "0"))

        async def heard(self, reader, writer):
            await reader.readexactly(passing.HEAD.size)
            writer.close()

        async def leave(self):
            self.server.close()

    line = Line(Dies())
    store = kitchen_store(tmp_path / "d.db")
    with client_of(Passing(Kitchens(store), folder)) as client:
        answer = client.post("/care/oil", data={"vat": "alder", "what": "filter"})
        assert answer.status_code == 503 and "The answer was lost" in answer.json()["message"]
        assert "NOT kept" not in answer.text
    line.close()


def test_counts_are_those_of_all_processes(both, reader, folder):
    """Answers, times and figures of the process, together; a process that is away has none."""
    assert sign_in(reader).status_code == 303
    for _ in range(3):
        assert reader.get("/care").status_code == 200
    there = Line(Other(both.reading, folder, 1))
    both.writing.home.state.watch.others = lambda: counts_of(folder, [1, 2])
    text = reader.get("/metrics").text
    assert 'frywright_answers_total{route="/care",method="GET",status="200"} 3' in text
    assert 'frywright_answers_total{route="/sign-in",method="POST",status="303"} 1' in text
    reads = float(re.search(r'answer_seconds_count{kind="read"} (\d+)', text)[1])
    assert reads == 3
    threads = float(re.search(r"^process_threads (\d+)", text, re.M)[1])
    assert threads >= 2 * 2
    there.close()


@pytest.mark.slow
def test_many_at_once_each_get_their_own_answer(both):
    """No answer goes to another's question, over connections that are used again."""
    with client_of(both.app) as client, contextlib.ExitStack():
        assert sign_in(client).status_code == 303
        found: dict[int, int] = {}

        def ask(n):
            for turn in range(5):
                number = 1000 * n + turn
                told = client.get(f"/cook/desk/job/{number}")
                wrong = client.post("/care/oil", data={"key": str(number), "vat": f"v{number}", "what": "x"})
                found[number] = told.status_code == 404 and wrong.status_code == 422

        threads = [threading.Thread(target=ask, args=(n,)) for n in range(1, 9)]
        begun = time.monotonic()
        for one in threads:
            one.start()
        for one in threads:
            one.join()
        assert len(found) == 40 and all(found.values()) and time.monotonic() - begun < 60
        assert 1 <= len(both.app._free) <= 8
