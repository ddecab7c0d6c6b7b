"""Readings from a real Mosquitto, a pseudo-terminal, a file that grows, and on to a real server."""

from __future__ import annotations

import json
import os
import pty
import shutil
import socket
import subprocess
import threading
import time
import urllib.request
from collections.abc import Callable
from pathlib import Path

import pytest
import uvicorn
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.client.forward import MOST_WAITING, Forward
from frywright.client.http import Client
from frywright.client.sources import open_source
from frywright.ledger.accounts import Accounts
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.cook.intake import Intake, Sample, sample_in, samples_of
from frywright.rooms.records.people import add_account
from frywright.web.app import make_app
from tests.demo import kitchen_store

pytestmark = pytest.mark.slow
MOSQUITTO = shutil.which("mosquitto") or "/usr/sbin/mosquitto"
PATIENCE_S = 60.0


def until(found: Callable[[], bool], what: str) -> None:
    """Wait for something that other threads and programs do."""
    end = time.monotonic() + PATIENCE_S
    while not found():
        assert time.monotonic() < end, what
        time.sleep(0.05)


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


class Broker:
    """A Mosquitto of our own, which keeps sessions while it is down."""

    def __init__(self, folder: Path) -> None:
        assert Path(MOSQUITTO).exists(), "run scripts/install-mosquitto.sh first"
        self.port, self.file = free_port(), folder / "mosquitto.conf"
        folder.chmod(0o777)
        self.file.write_text(
            f"listener {self.port} 127.0.0.1\nallow_anonymous true\npersistence true\nuser root\n"
            f"persistence_location {folder}/\nautosave_interval 1\n"
        )
        self.process: subprocess.Popen[bytes] | None = None
        self.start()

    def start(self) -> None:
        self.process = subprocess.Popen([MOSQUITTO, "-c", str(self.file)], stderr=subprocess.DEVNULL)
        until(self._answers, "Mosquitto does not answer")

    def _answers(self) -> bool:
        with socket.socket() as line:
            return line.connect_ex(("127.0.0.1", self.port)) == 0

    def stop(self) -> None:
        assert self.process is not None
        self.process.terminate()
        self.process.wait(20)

    def publish(
        self, topic: str, payload: object, qos: int = 1, retain: bool = False, times: int = 1
    ) -> None:
        import paho.mqtt.publish as out

        text = payload if isinstance(payload, bytes) else json.dumps(payload).encode()
        message = {"topic": topic, "payload": text, "qos": qos, "retain": retain}
        out.multiple([message] * times, hostname="127.0.0.1", port=self.port)


RUBBISH = (
    b"",
    b"\xff\xfe",
    b"{",
    b"[1]",
    b'{"channel": "K1"}',
    b'{"channel": "K1", "temp": NaN}',
    b'{"channel": "K1", "temp": true}',
    b'{"samples": 7}',
    b"[" * 60_000,
    b"x" * 70_000,
)


@pytest.fixture
def broker(tmp_path):
    found = Broker(tmp_path)
    yield found
    found.stop()


class Listening:
    """A source that is listened to, into an intake."""

    def __init__(self, address: str) -> None:
        self.intake, self.stop = Intake(), threading.Event()
        self.heard, listen = open_source(address, self.take, self.stop)
        self.thread = threading.Thread(target=listen, daemon=True)
        self.thread.start()

    def take(self, source: str, samples: list[Sample]) -> None:
        self.intake.add(source, samples, now().timestamp())

    def __enter__(self) -> Listening:
        return self

    def __exit__(self, *_: object) -> None:
        self.stop.set()
        self.thread.join(20)
        assert not self.thread.is_alive()


def test_mosquitto_delivers_repeats_wrong_clocks_and_rubbish_and_only_readings_arrive(broker):
    at = now().timestamp() - 3 * 3600
    with Listening(f"mqtt://127.0.0.1:{broker.port}/kitchen/probes/#") as line:
        until(lambda: line.heard.link == "connected", "no connection")
        broker.publish("kitchen/probes/left", {"channel": "K0", "temp": 1.0}, retain=True)
        until(lambda: line.heard.samples_count == 1, "a live message with the retain mark is news")
        for second in range(8):
            told = {"samples": [{"channel": "K1", "temp": 50.0 + second, "unit": "F", "at": at + second}]}
            broker.publish("kitchen/probes/left", told, times=2)
        for rubbish in RUBBISH:
            broker.publish("kitchen/probes/left", rubbish)
        broker.publish("kitchen/other", {"channel": "K9", "temp": 1.0})
        broker.publish("kitchen/probes/right", {"channel": "K1", "temp": 60.0})
        until(lambda: "right/K1" in line.intake.channels(), "the last message")
        assert line.intake.channels() == ["left/K0", "left/K1", "right/K1"]
        told = line.intake.readings("left/K1")
        assert [round(c, 2) for _, c in told] == [round((50.0 + s - 32) / 1.8, 2) for s in range(8)]
        assert told[-1][0] - told[0][0] == pytest.approx(7.0, abs=0.1)
        clock = next(c for c in line.intake.clocks() if c.source == "left")
        assert clock.off_s == pytest.approx(-3 * 3600, abs=30) and clock.dropped["repeated"] == 8
        assert sum(line.heard.left_out.values()) == len(RUBBISH)


def test_a_retained_message_is_old_news(broker):
    """One that was waiting before anybody listened is of nobody knows when."""
    broker.publish("frywright/live/left", {"channel": "K1", "temp": 20.0}, retain=True)
    with Listening(f"mqtt://127.0.0.1:{broker.port}") as line:
        until(lambda: line.heard.left_out["retained"] == 1, "the retained message")
        broker.publish("frywright/live/left", {"channel": "K2", "temp": 21.0})
        until(lambda: line.intake.channels() == ["left/K2"], "the fresh message")


def test_a_broker_that_goes_and_comes_back_loses_no_reading_at_qos_1(broker):
    """The listener connects again by itself; what was sent while it was away comes afterwards, each once."""
    at = now().timestamp()
    address = f"mqtt://127.0.0.1:{broker.port}"

    def send(second: int) -> None:
        broker.publish("frywright/live/left", {"channel": "K1", "temp": 20.0 + second, "at": at + second})

    with Listening(address) as line:
        until(lambda: line.heard.link == "connected", "no connection")
        for second in range(3):
            send(second)
        until(lambda: line.heard.samples_count >= 3, "the first readings")
        broker.stop()
        until(lambda: line.heard.link.startswith("lost"), "nobody saw the broker go")
        broker.start()
        for second in range(3, 6):
            send(second)
        until(lambda: line.heard.link == "connected", "not connected again")
        until(lambda: len(line.intake.readings("left/K1")) == 6, "readings sent meanwhile")
    for second in range(6, 9):  # nobody listens: the broker keeps them for this listener
        send(second)
    with Listening(address) as line:
        until(lambda: len(line.intake.readings("left/K1")) == 3, "readings kept for it")
        assert [c for _, c in line.intake.readings("left/K1")] == [26.0, 27.0, 28.0]


def test_a_serial_line_is_read_by_lines_and_opened_again():
    leader, follower = pty.openpty()
    name = os.ttyname(follower)
    with Listening(f"serial:{name}?baud=115200") as line:
        until(lambda: line.heard.link == "connected", "not opened")
        os.write(leader, b"K1 61.4 C\r\nK2 140.9 F 1800000000.5\nrubbish\nK1 nan C\n")
        os.write(leader, b'{"channel": "K3", "temp": 20}\n' + b"y" * 500 + b"\nK1 62")
        os.write(leader, b".0 C\n")
        until(lambda: len(line.intake.readings(f"{Path(name).name}/K1")) == 2, "the reading in two halves")
        assert [c for _, c in line.intake.readings(f"{Path(name).name}/K1")] == [61.4, 62.0]
        assert len(line.intake.channels()) == 3
        assert sum(line.heard.left_out.values()) >= 3
        os.close(leader)
        until(lambda: line.heard.link.startswith("lost"), "nobody saw the line go")
    os.close(follower)


def test_a_file_that_grows_is_followed_by_the_reader_of_logs(tmp_path):
    """Decimal commas and degF as any logger writes them; the half line at the end waits for its rest."""
    path = tmp_path / "today.csv"
    head = "Date;Time;Oil (°F);Breast 1 (°F)\n"

    def row(second: int) -> str:
        return f"2026-11-26;12:00:{second:02d};{335 - 0.1 * second:.1f};{40 + second:.1f}\n".replace(".", ",")

    path.write_text(head + "".join(row(s) for s in range(20)))
    with Listening(f"file:{path}") as line:
        until(lambda: len(line.intake.channels()) == 2, "the rows that were there")
        assert len(line.intake.readings("today/Breast 1 (°F)")) == 20
        with path.open("a") as stream:
            stream.write(row(20) + row(21)[:-9])
        until(lambda: len(line.intake.readings("today/Breast 1 (°F)")) == 21, "the new row")
        with path.open("a") as stream:
            stream.write(row(21)[-9:] + row(22))
        until(lambda: len(line.intake.readings("today/Breast 1 (°F)")) == 23, "the half row and one more")
        told = line.intake.readings("today/Breast 1 (°F)")
        assert [round(1.8 * c + 32, 1) for _, c in told] == [40.0 + s for s in range(23)]
        assert told[-1][0] - told[0][0] == pytest.approx(22.0, abs=0.01)
        path.unlink()
        until(lambda: line.heard.link.startswith("lost"), "nobody saw the file go")


@pytest.mark.parametrize(
    ("address", "said"),
    [
        ("http://127.0.0.1", "one of these: mqtt://"),
        ("mqtt://", "one of these: mqtt://"),
        ("serial:", "one of these: mqtt://"),
        ("serial:/dev/x?baud=fast", "whole number"),
        ("", "one of these: mqtt://"),
    ],
)
def test_an_address_that_is_none_is_refused(address, said):
    with pytest.raises(InputError, match=said):
        open_source(address, lambda *_: None, threading.Event())


def test_a_line_of_a_message_is_read_once_and_for_all():
    assert sample_in("K1 212 F") == Sample(channel="K1", temp_c=pytest.approx(100.0))
    assert (
        sample_in("K1 61.4 C 2026-11-26T12:00:00Z").at_s
        == samples_of('{"channel": "K1", "temp": 61.4, "at": "2026-11-26T12:00:00Z"}')[0].at_s
    )
    for wrong in ("K1 61.4", "K1 61,4 C", "K1 61.4 K", "K1 61.4 C noon", "a b c d e", "{", '{"samples": []}'):
        with pytest.raises(InputError):
            sample_in(wrong)


class Served:
    """A kitchen's server on a port of its own."""

    def __init__(self, store: Store) -> None:
        self.store, self.port = store, free_port()
        self.start()

    def start(self) -> None:
        self.server = uvicorn.Server(
            uvicorn.Config(make_app(self.store), port=self.port, log_level="critical")
        )
        self.thread = threading.Thread(target=self.server.run, daemon=True)
        self.thread.start()
        until(lambda: self.server.started, "the server does not start")

    def stop(self) -> None:
        self.server.should_exit = True
        self.thread.join(20)


def test_the_command_hands_readings_on_to_the_server_by_a_device_token(broker, tmp_path):
    """MQTT to page, through accounts; a revoked or wrong token is said, and nothing is lost meanwhile."""
    store = kitchen_store(tmp_path / "s.db")
    add_account(store, "Olive Owner", "owner", "a password of words")
    token = Accounts(store).add_device("box", "crew")
    served = Served(store)
    try:
        address = f"http://127.0.0.1:{served.port}"
        source = f"mqtt://127.0.0.1:{broker.port}"

        def speak() -> None:
            for second in range(6):
                broker.publish("frywright/live/left", {"channel": "K1", "temp": 20.0 + second})
                time.sleep(0.5)

        speaker = threading.Timer(2.0, speak)
        speaker.start()
        told = ["cook", "live", "--source", source, "--to", address, "--token", token, "--seconds", "9"]
        ran = CliRunner().invoke(app, [*told, "--store", str(tmp_path / "s.db")])
        speaker.join()
        assert ran.exit_code == 0, ran.output
        assert "Line: connected." in ran.stderr
        asked = urllib.request.Request(
            f"{address}/cook/live/part", headers={"Authorization": f"Bearer {token}"}
        )
        assert "box left/K1" in urllib.request.urlopen(asked, timeout=20).read().decode()
        wrong = Forward(Client(address=address, token="made up", timeout_s=5.0))
        wrong.take("left", [Sample(channel="K2", temp_c=20.0)])
        until(lambda: bool(wrong.trouble), "a wrong token was taken")
        assert wrong.waiting_count == 1 and wrong.lost_count == 0
        wrong.close()
    finally:
        served.stop()


def test_readings_wait_in_order_while_the_server_is_down_and_the_oldest_go_when_there_are_too_many(tmp_path):
    store = kitchen_store(tmp_path / "s.db")
    add_account(store, "Olive Owner", "owner", "a password of words")
    token = Accounts(store).add_device("box", "crew")
    served = Served(store)
    served.stop()
    forward = Forward(Client(address=f"http://127.0.0.1:{served.port}", token=token, timeout_s=2.0))
    at = now().timestamp()
    forward.take("left", [Sample(channel="K1", temp_c=20.0, at_s=at + i) for i in range(MOST_WAITING + 700)])
    assert forward.lost_count == 700 and forward.waiting_count == MOST_WAITING
    until(lambda: "cannot be reached" in forward.trouble, "nobody said that the server is away")
    try:
        served.start()
        until(
            lambda: forward.sent_count >= 1000 and not forward.trouble, "not sent when the server came back"
        )
    finally:
        forward.close()
        served.stop()
