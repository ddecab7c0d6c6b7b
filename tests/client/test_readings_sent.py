"""Readings on their way, without a broker or a line: what a message and a file may hold, what waits, what is
lost.
"""

from __future__ import annotations

import io
import sys
import threading
import urllib.error
from collections import Counter
from types import ModuleType, SimpleNamespace
from typing import ClassVar

import pytest

from frywright.client import forward as forwarding
from frywright.client import sources
from frywright.client.forward import Forward
from frywright.client.http import _told
from frywright.client.sources import Heard, open_source
from frywright.model.errors import AccessError, FrywrightError, InputError, RecordError
from frywright.rooms.cook.intake import MOST_LINE, MOST_TOGETHER, Sample, sample_in, samples_of


class Server:
    """Stands for the client of a server: keeps what it is given, or fails as it is told."""

    def __init__(self) -> None:
        self.got: list[tuple[str, list[dict]]] = []
        self.error: FrywrightError | None = None

    def write(self, path, body):
        if self.error is not None:
            raise self.error
        assert path == "live"
        self.got.append((body["source"], body["samples"]))
        return {}


@pytest.fixture
def server():
    return Server()


@pytest.fixture
def queue(server, monkeypatch):
    """A queue whose thread does not send by itself."""
    monkeypatch.setattr(Forward, "_run", lambda self: None)
    return Forward(server)


def some(count, channel="a", first=0.0):
    return [Sample(channel=channel, temp_c=100.0 + n, at_s=first + n) for n in range(count)]


def test_what_waits_is_sent_in_order_a_message_a_source(queue, server):
    """Sources are not mixed, no message is larger than a server takes, and nothing waits afterwards."""
    queue.take("one", some(2))
    queue.take("two", some(1))
    queue.take("one", some(MOST_TOGETHER + 3))
    assert queue.waiting_count == MOST_TOGETHER + 6
    assert queue._send()
    assert [(name, len(rows)) for name, rows in server.got] == [
        ("one", 2),
        ("two", 1),
        ("one", MOST_TOGETHER),
        ("one", 3),
    ]
    assert server.got[0][1][0] == {"channel": "a", "temp": 100.0, "unit": "C", "at": 0.0}
    assert (queue.waiting_count, queue.sent_count, queue.lost_count) == (0, MOST_TOGETHER + 6, 0)


@pytest.mark.parametrize("error", [RecordError("the line is cut"), AccessError("not this token")])
def test_what_a_server_never_got_is_kept(queue, server, error):
    """It says why, and goes when the server answers; closing tries no more while it does not."""
    queue.take("one", some(3))
    server.error = error
    assert not queue._send()
    assert (queue.waiting_count, queue.lost_count, queue.trouble) == (3, 0, str(error))
    queue.close()
    assert queue.waiting_count == 3
    server.error = None
    assert queue._send()
    assert (queue.waiting_count, queue.sent_count, queue.trouble) == (0, 3, "")


@pytest.mark.parametrize(("waits", "trouble", "sends"), [(1, "", 1), (1, "the line is cut", 0), (0, "", 0)])
def test_closing_sends_what_waits_once_where_the_line_is_well(queue, monkeypatch, waits, trouble, sends):
    """A server that did not answer is not waited for again."""
    tries = []
    monkeypatch.setattr(queue, "_send", lambda: tries.append(1))
    queue.take("one", some(waits))
    queue.trouble = trouble
    queue.close()
    assert len(tries) == sends and queue._stop.is_set()


def test_what_a_server_refuses_is_given_up_and_counted(queue, server):
    """One bad message does not hold up the rest for ever."""
    queue.take("one", some(3))
    server.error = InputError("temp", 900, "a temperature")
    assert queue._send()
    assert (queue.waiting_count, queue.lost_count, queue.sent_count) == (0, 3, 0)
    assert "temperature" in queue.trouble


def test_the_oldest_go_where_there_is_no_room(queue, monkeypatch):
    """The newest are kept; how many went is known."""
    monkeypatch.setattr(forwarding, "MOST_WAITING", 4)
    queue.take("one", some(6))
    assert (queue.waiting_count, queue.lost_count) == (4, 2)
    assert [s.at_s for _, s in queue._waiting] == [2.0, 3.0, 4.0, 5.0]


def test_a_reading_without_a_time_has_that_of_now(queue):
    """One with a time keeps it."""
    queue.take("one", [Sample(channel="a", temp_c=1.0), Sample(channel="a", temp_c=1.0, at_s=5.0)])
    times = [s.at_s for _, s in queue._waiting]
    assert times[0] > 1.7e9
    assert times[1] == 5.0


def test_closing_sends_what_waits(server):
    """Its thread ends."""
    queue = Forward(server)
    queue.take("one", some(2))
    queue.close()
    assert not queue._thread.is_alive()
    assert sum(len(rows) for _, rows in server.got) == 2


@pytest.mark.parametrize(
    ("code", "kind"), [(401, AccessError), (403, AccessError), (409, RecordError), (422, FrywrightError)]
)
def test_a_servers_refusal_is_an_error_of_ours_in_its_words(code, kind):
    """Its message, its detail where it has none; without either the number."""

    def told(body):
        return _told(urllib.error.HTTPError("http://x", code, "", {}, io.BytesIO(body)))

    error = told(b'{"message": "not so"}')
    assert type(error) is kind
    assert str(error) == "not so"
    assert str(told(b'{"detail": "nor so"}')) == "nor so"
    assert str(told(b"<html>")) == f"HTTP {code}"


# ---------------------------------------------------------------- sources


@pytest.mark.parametrize("address", ["", "mqtt:///topic", "serial:", "file:", "ftp://host/x", "host"])
def test_an_address_that_is_none_names_the_known_forms(address):
    with pytest.raises(InputError, match="mqtts://host/topic") as refused:
        open_source(address, print, threading.Event())
    assert refused.value.field == "--source"


def test_a_speed_that_is_no_number_is_refused():
    with pytest.raises(InputError, match="9600"):
        open_source("serial:/dev/x?baud=fast", print, threading.Event())
    heard, _ = open_source("serial:/dev/x?baud=4800", print, threading.Event())
    assert (heard.link, heard.samples_count) == ("connecting", 0)


class Wire:
    """A serial line that gives its bytes in pieces, then stops the listener."""

    def __init__(self, parts, stop):
        self.parts, self.stop = list(parts), stop

    def read_until(self, _end, _most):
        if not self.parts:
            self.stop.set()
            return b""
        return self.parts.pop(0)


def test_lines_of_a_serial_line_are_whole():
    """One that comes in two parts is one; an empty one is none; one without an end is cut at the most."""
    stop = threading.Event()
    parts = [b"a 10", b"0\r\n", b"\r\n", b"b 2\n", b"x" * MOST_LINE]
    assert list(sources._lines(Wire(parts, stop), stop)) == ["a 100", "b 2", "x" * MOST_LINE]


LOG = "time,oil [C],core [C]\n2026-11-20 10:00:00,170,4\n2026-11-20 10:00:01,171,5\n"


def test_a_file_that_grows_hands_on_only_what_is_new(tmp_path):
    """Whole lines, each once, under the file's name; one half written waits for its end."""
    path, taken, told, heard = tmp_path / "vat.csv", [], {}, Heard()

    def look(text):
        path.write_text(text, "utf-8")
        taken.clear()
        sources._hand_on_rows(path, told, lambda name, rows: taken.append((name, rows)), heard)
        return [(name, [(s.channel, s.temp_c) for s in rows]) for name, rows in taken]

    ((name, rows),) = look(LOG)
    assert name == "vat"
    assert [t for _, t in rows] == [170.0, 4.0, 171.0, 5.0]
    assert look(LOG + "2026-11-20 10:00:02,172") == []
    ((_, rows),) = look(LOG + "2026-11-20 10:00:02,172,6\n")
    assert [t for _, t in rows] == [172.0, 6.0]
    assert heard.samples_count == 6


def test_a_file_too_large_or_gone_is_said(tmp_path, monkeypatch):
    """Counted by its reason; the line is lost and comes back with the file."""
    monkeypatch.setattr(sources, "FILE_EVERY_S", 0.0)
    path, heard, stop, turns = tmp_path / "vat.csv", Heard(), threading.Event(), []

    class Turns:
        """Three looks: no file, the file, the file grown too large."""

        def is_set(self):
            if len(turns) == 1:
                path.write_text(LOG, "utf-8")
            if len(turns) == 2:
                monkeypatch.setattr(sources, "LARGEST_FILE", 10)
            return len(turns) == 3

        def wait(self, _seconds):
            turns.append(heard.link)

    sources.follow_file(path, lambda name, rows: None, Turns(), heard)
    assert turns[0].startswith("lost: ")
    assert turns[1] == "connected"
    assert heard.samples_count == 4
    ((why, count),) = heard.left_out.items()
    assert ("begin a new one" in why, count) == (True, 1)
    assert not stop.is_set()


@pytest.mark.parametrize(
    ("text", "temp_c", "at_s"),
    [
        ("K1 61.4 C", 61.4, None),
        ("K1 142.52 °F", 61.4, None),
        ("K1 61.4 c 1764000000", 61.4, 1764000000.0),
        ("K1 61.4 C 1764000000000", 61.4, 1764000000.0),
        ("K1 61.4 C 2026-11-20T10:00:00-07:00", 61.4, 1795194000.0),
        ('{"channel": "K1", "temp": 61.4, "at": "2026-11-20T17:00:00+00:00"}', 61.4, 1795194000.0),
    ],
)
def test_a_line_of_a_logger_is_read(text, temp_c, at_s):
    """Channel, number, unit and a time or none: seconds, milliseconds or ISO with its zone; or JSON."""
    found = sample_in(text)
    assert (found.channel, found.temp_c, found.at_s) == ("K1", pytest.approx(temp_c), at_s)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "K1 61.4",
        "K1 hot C",
        "K1 nan C",
        "K1 61.4 K",
        "K1 61.4 C soon",
        "K1 61.4 C 2026-11-20T10:00:00",
        "{}",
    ],
)
def test_a_line_that_says_no_reading_is_refused(text):
    """Nothing is guessed: no unit, no number, a time without its zone."""
    with pytest.raises(InputError):
        sample_in(text)


def test_messages_that_are_none_are_refused():
    """Neither JSON nor a reading; no unit that is none; too many together."""
    many = b'{"samples": [' + b",".join([b'{"channel": "a", "temp": 1}'] * (MOST_TOGETHER + 1)) + b"]}"
    for bad in (
        b"",
        b"{",
        b'{"channel": "a"}',
        b'{"temp": 1}',
        b'{"channel": "a", "temp": true}',
        b'{"channel": "a", "temp": 1, "at": true}',
        b'{"channel": "a", "temp": 1, "more": 2}',
        b'{"channel": "a", "temp": 1, "unit": 2}',
        b'{"channel": " ", "temp": 1}',
        b"\xff\xfe",
        many,
    ):
        with pytest.raises(InputError):
            samples_of(bad)
    (one,) = samples_of(b'{"channel": "core", "temp": 212, "unit": "F"}')
    assert (one.channel, one.temp_c) == ("core", pytest.approx(100.0))
    heard = Heard()
    heard.refuse(InputError("temp", "x", "a number"))
    heard.refuse(InputError("temp", "x", "a number"))
    assert heard.left_out == Counter({"temp is x; it must be a number.": 2})


class Broker:
    """Stands where the library of MQTT does: it keeps what it was told and hands on what it is given."""

    made: ClassVar[list[Broker]] = []

    def __init__(self, version, client_id, clean_session) -> None:
        self.calls, self.kept = [("session", clean_session)], client_id
        Broker.made.append(self)

    def __getattr__(self, name):
        return lambda *args, **named: self.calls.append((name, *args))

    def named(self, name):
        return [call[1:] for call in self.calls if call[0] == name]


@pytest.fixture
def broker(monkeypatch):
    Broker.made.clear()
    mqtt = ModuleType("paho.mqtt.client")
    mqtt.Client, mqtt.CallbackAPIVersion = Broker, SimpleNamespace(VERSION2=2)
    package = ModuleType("paho.mqtt")
    package.client = mqtt
    for name, module in (("paho", ModuleType("paho")), ("paho.mqtt", package), ("paho.mqtt.client", mqtt)):
        monkeypatch.setitem(sys.modules, name, module)
    monkeypatch.setenv("FRYWRIGHT_MQTT_PASSWORD", "secret")


def listened(address):
    """One who listened, was told to stop at once, and what reached the taker afterwards."""
    got, stop = [], threading.Event()
    stop.set()
    heard, listen = open_source(address, lambda source, samples: got.append((source, samples)), stop)
    listen()
    return heard, Broker.made[-1], got


@pytest.mark.usefixtures("broker")
@pytest.mark.parametrize(
    ("address", "host", "port", "tls"),
    [
        ("mqtt://box.example/kitchen/line", "box.example", 1883, False),
        ("mqtts://box.example:9000/kitchen/line", "box.example", 9000, True),
        ("mqtts://box.example/kitchen/line", "box.example", 8883, True),
    ],
)
def test_a_broker_is_asked_at_its_port_and_over_tls_where_it_is_named(address, host, port, tls):
    """The session is kept; listening ends with a good-bye."""
    _, client, _ = listened(address)
    assert client.calls[0] == ("session", False)
    assert client.named("connect_async") == [(host, port, 20)]
    assert bool(client.named("tls_set")) is tls
    assert client.named("username_pw_set") == []
    assert [call[0] for call in client.calls[-3:]] == ["loop_start", "disconnect", "loop_stop"]


@pytest.mark.usefixtures("broker")
def test_a_broker_is_subscribed_to_and_heard():
    """A topic of its own or the usual one; old news and rubbish are left out by their reason."""
    heard, client, got = listened("mqtt://kim%40x@box.example/kitchen/#")
    assert client.named("username_pw_set") == [("kim@x", "secret")]
    fine, bad = SimpleNamespace(is_failure=False), "not allowed"
    client.on_connect(client, None, None, fine, None)
    assert (heard.link, client.named("subscribe")) == ("connected", [("kitchen/#",)])
    usual = listened("mqtt://box.example")[1]
    usual.on_connect(usual, None, None, fine, None)
    assert usual.named("subscribe") == [("frywright/live/#",)]
    client.on_disconnect(client, None, None, bad, None)
    assert heard.link == "lost: not allowed"

    def message(payload, retain=False):
        return SimpleNamespace(topic="kitchen/box", payload=payload, retain=retain)

    good = b'{"channel": "K1", "temp": 60, "unit": "C"}'
    client.on_message(client, None, message(good))
    client.on_message(client, None, message(good, retain=True))
    client.on_message(client, None, message(b"rubbish"))
    assert [(source, samples[0].channel, samples[0].temp_c) for source, samples in got] == [
        ("box", "K1", 60.0)
    ]
    assert (heard.samples_count, heard.left_out["retained"], sum(heard.left_out.values())) == (1, 1, 2)


@pytest.mark.usefixtures("broker")
def test_a_broker_that_refuses_is_not_subscribed_to():
    heard, client, _ = listened("mqtt://box.example/x")

    class Refused:
        is_failure = True

        def __str__(self) -> str:
            return "bad password"

    client.on_connect(client, None, None, Refused(), None)
    assert (heard.link, client.named("subscribe")) == ("refused: bad password", [])
