"""Slow and silent connections end, and hold no place that somebody else needs: tried over real sockets."""

from __future__ import annotations

import json
import os
import resource
import socket
import subprocess
import sys
import threading
import time
import urllib.request
from contextlib import closing, contextmanager, suppress

import pytest
import sqlalchemy as sa
import uvicorn

from frywright.web import sockets
from frywright.web.app import make_app
from frywright.web.sockets import Connection
from tests.demo import kitchen_store

ASK = b"GET / HTTP/1.1\r\nHost: x\r\n\r\n"
BIG_BYTES = 40_000_000
PATIENCE_S = 60.0
"""By then a wait of the program is over, however busy the machine; what has no end lasts longer."""


@pytest.fixture
def quick(monkeypatch):
    """Waits of tenths of a second in place of many."""
    for name, value in (("HEADER_S", 0.4), ("BODY_S", 0.4), ("READER_S", 0.5), ("LOOK_S", 0.05)):
        monkeypatch.setattr(sockets, name, value)


async def stub(scope, receive, send):
    """Counts a body, or sends more than any buffer takes."""
    assert scope["type"] == "http"
    count, more = 0, True
    while more and scope["method"] == "POST":
        message = await receive()
        if message["type"] == "http.disconnect":
            return
        count, more = count + len(message.get("body", b"")), message.get("more_body", False)
    body = b"x" * BIG_BYTES if scope["path"] == "/big" else json.dumps(count).encode()
    length = [(b"content-length", str(len(body)).encode())]
    await send({"type": "http.response.start", "status": 200, "headers": length})
    await send({"type": "http.response.body", "body": body})


@contextmanager
def serving(app):
    """A server with our connections; its port."""
    config = uvicorn.Config(
        app, port=0, http=Connection, ws="none", lifespan="off", log_level="error", timeout_keep_alive=2
    )
    server = uvicorn.Server(config)
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    while not server.started:
        time.sleep(0.01)
    try:
        yield server.servers[0].sockets[0].getsockname()[1]
    finally:
        server.should_exit = True
        thread.join(timeout=10)


def knock(port, text=b""):
    found = socket.create_connection(("127.0.0.1", port), timeout=5)
    found.sendall(text)
    return found


def answered(line):
    """Whether a whole answer of one digit came."""
    told = b""
    while not told.endswith(b"\r\n\r\n0"):
        part = line.recv(4096)
        assert part
        told += part
    return told.startswith(b"HTTP/1.1 200")


def ended_after_s(line):
    """Seconds until the other end closes; one that does not fails."""
    begun = time.monotonic()
    line.settimeout(PATIENCE_S)
    with closing(line):
        try:
            while line.recv(65536):
                pass
        except ConnectionResetError:
            pass
    return time.monotonic() - begun


@pytest.mark.parametrize("said", [b"", b"GE", b"GET / HTTP/1.1\r\nHost: x\r\n"])
def test_a_header_that_never_comes_ends_the_connection(quick, said):
    """Silent from the start or stopped halfway."""
    with serving(stub) as port:
        assert ended_after_s(knock(port, said)) > 0.2


@pytest.mark.slow(5)
def test_a_header_that_drips_ends_the_connection_on_its_second_question_too(quick):
    """A byte now and then buys no time; the wait begins with the question's first byte."""
    with serving(stub) as port, closing(knock(port, ASK)) as line:
        assert answered(line)
        time.sleep(0.8)  # longer than a header may take: nothing was asked yet
        with pytest.raises((BrokenPipeError, ConnectionResetError)):
            for letter in b"GET / HTTP/1.1\r\nX: " + b"a" * 200:
                line.sendall(bytes([letter]))
                time.sleep(0.05)


def test_a_connection_answers_again_and_again(quick):
    """Many questions on one connection, longer in all than one may wait."""
    with serving(stub) as port, closing(knock(port)) as line:
        for _ in range(8):
            line.sendall(ASK)
            assert answered(line)
            time.sleep(0.12)


@pytest.mark.slow(5)
def test_a_body_that_drips_ends_and_one_that_flows_is_taken(quick, monkeypatch):
    """Too slow for its length; steady for longer than the grace."""
    head = b"POST / HTTP/1.1\r\nHost: x\r\nContent-Length: %d\r\n\r\n"
    with serving(stub) as port:
        assert ended_after_s(knock(port, head % 10 + b"abc")) > 0.2
        with closing(knock(port, head % 20_000)) as line:
            for _ in range(20):
                line.sendall(b"x" * 1000)
                time.sleep(0.05)
            assert line.recv(4096).endswith(b"20000")
        monkeypatch.setattr(sockets, "SLOWEST_BODY_BYTES_PER_S", 1e9)
        assert ended_after_s(knock(port, head % 200_000 + b"x" * 190_000)) > 0.2  # 190 s at the usual pace


def test_a_reader_that_stops_reading_is_dropped(quick, monkeypatch):
    """Its answer does not wait in memory for ever."""
    lost, dropped = Connection.connection_lost, threading.Event()
    monkeypatch.setattr(Connection, "connection_lost", lambda one, why: (dropped.set(), lost(one, why))[1])
    with serving(stub) as port, closing(knock(port, b"GET /big HTTP/1.1\r\nHost: x\r\n\r\n")) as line:
        assert dropped.wait(60.0)  # however long this machine takes to see it
        line.settimeout(5)
        count = 0
        with suppress(ConnectionResetError):
            while part := line.recv(1 << 20):
                count += len(part)
        assert count < BIG_BYTES


def test_when_all_places_are_taken_a_silent_one_makes_room(monkeypatch):
    """Of the address that keeps most waiting, long before a silent one ends by itself."""
    monkeypatch.setattr(Connection, "most", 8)
    monkeypatch.setattr(sockets, "HEADER_S", 3600.0)
    with serving(stub) as port:
        silent = [knock(port) for _ in range(40)]
        time.sleep(0.2)
        with closing(knock(port, ASK)) as line:
            line.settimeout(PATIENCE_S)
            assert answered(line)
        for one in silent:
            one.close()


def test_bodies_that_drip_keep_no_connection_to_the_store(tmp_path):
    """Thirty strangers who send their sign-in a letter at a time; others read on."""
    store = kitchen_store(tmp_path / "s.db")
    here, opened = [], []
    sa.event.listen(store.engine, "connect", lambda *_: (here.append(1), opened.append(1)))
    sa.event.listen(store.engine, "close", lambda *_: here.pop())
    head = (
        b"POST /sign-in HTTP/1.1\r\nHost: 127.0.0.1\r\nOrigin: http://127.0.0.1\r\n"
        b"Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 90\r\n\r\nname=a"
    )
    with serving(make_app(store)) as port:
        slow = [knock(port, head) for _ in range(30)]
        patience = time.monotonic() + 60.0
        while (len(opened) < len(slow) or here) and time.monotonic() < patience:
            time.sleep(0.05)
        assert (len(opened) >= len(slow), here) == (True, [])  # each was looked at, and let go
        with urllib.request.urlopen(f"http://127.0.0.1:{port}/api/v1/chain", timeout=10) as answer:
            assert answer.status == 200
        for one in slow:
            one.close()


@pytest.mark.slow(5)
def test_three_hundred_silent_connections_do_not_stop_a_server_with_few_files(tmp_path):
    """The real program, allowed 256 open files; no silent one ends by itself."""
    lines = (
        "from frywright.web import sockets",
        "sockets.HEADER_S = 3600.0",
        "from frywright.cli.main import run",
    )
    program = "; ".join((*lines, "run()"))
    command = [sys.executable, "-c", program, "serve", "--no-open"]
    server = subprocess.Popen(
        [*command, "--port", "0", "--store", str(tmp_path / "f.db")],
        stdout=subprocess.PIPE,
        text=True,
        env=os.environ,
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_NOFILE, (256, 256)),
    )
    try:
        port = int(server.stdout.readline().split(" is at http://127.0.0.1:")[1].split("/")[0])
        silent = [knock(port) for _ in range(300)]
        for _ in range(5):
            url = f"http://127.0.0.1:{port}/sign-in"
            with urllib.request.urlopen(url, timeout=PATIENCE_S) as answer:
                assert answer.status == 200
        for one in silent:
            one.close()
    finally:
        server.terminate()
        server.wait(timeout=30)
        server.stdout.close()
