"""Where readings come from, besides HTTP: an MQTT broker, a serial line, a file that grows. Each hands on
what it hears as samples, and counts what it could not use by its reason.
"""

from __future__ import annotations

import io
import os
import socket
import threading
import zlib
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any
from urllib.parse import parse_qs, unquote, urlsplit

import numpy as np

from frywright.calibrate.channels import Role
from frywright.calibrate.readings import read_log
from frywright.model.errors import FrywrightError, InputError
from frywright.rooms.cook.intake import (
    MOST_LINE,
    MOST_NAME,
    MOST_TOGETHER,
    Sample,
    named,
    sample_in,
    samples_of,
)

Take = Callable[[str, list[Sample]], None]
TOPIC = "frywright/live/#"
PASSWORD = "FRYWRIGHT_MQTT_PASSWORD"
KEEP_ALIVE_S, BACK_FIRST_S, BACK_LAST_S = 20, 1, 10
FILE_EVERY_S, LARGEST_FILE = 1.0, 8_000_000
AGAIN_S = 2.0
FORMS = "mqtt://host/topic, mqtts://host/topic, serial:/dev/name?baud=9600, file:path"


@dataclass(slots=True)
class Heard:
    """What a source has heard: readings, and messages left out by their reason. ``link`` says how the line
    stands.
    """

    samples_count: int = 0
    left_out: Counter[str] = field(default_factory=Counter)
    link: str = "connecting"

    def refuse(self, error: FrywrightError) -> None:
        """Count a message that cannot be used."""
        self.left_out[str(error)[:200]] += 1


def open_source(address: str, take: Take, stop: threading.Event) -> tuple[Heard, Callable[[], None]]:
    """What listens to an address, and its state; call what is returned to listen until stopped.
    Raises InputError: the address is none of the known forms, or the library for it is not installed.
    """
    heard, parts = Heard(), urlsplit(address)
    if parts.scheme in ("mqtt", "mqtts") and parts.hostname:
        return heard, lambda: listen_mqtt(address, take, stop, heard)
    if parts.scheme == "serial" and parts.path:
        baud = parse_qs(parts.query).get("baud", ["9600"])[0]
        if not baud.isdigit():
            raise InputError("baud", repr(baud), "a whole number, such as 9600")
        return heard, lambda: listen_serial(parts.path, int(baud), take, stop, heard)
    if parts.scheme == "file" and parts.path:
        return heard, lambda: follow_file(Path(unquote(parts.path)), take, stop, heard)
    raise InputError("--source", repr(address), "one of these: {forms}", forms=FORMS)


def _missing() -> InputError:
    """The libraries of the extra are not there."""
    return InputError("live", "not installed", "installed: pip install 'frywright[live]'")


def listen_mqtt(address: str, take: Take, stop: threading.Event, heard: Heard) -> None:
    """Listen to a broker; the session is kept, so what came while the line was down is delivered afterwards.

    A retained message is old news of nobody knows when, so it is left out.
    """
    try:
        import paho.mqtt.client as mqtt
    except ImportError:
        raise _missing() from None
    parts = urlsplit(address)
    topic = unquote(parts.path.lstrip("/")) + ("#" if "#" in address else "") or TOPIC

    def on_connect(client: Any, _data: Any, _flags: Any, reason: Any, _more: Any) -> None:
        heard.link = "connected" if not reason.is_failure else f"refused: {reason}"
        if not reason.is_failure:
            client.subscribe(topic, qos=1)

    def on_disconnect(_client: Any, _data: Any, _flags: Any, reason: Any, _more: Any) -> None:
        heard.link = f"lost: {reason}"

    def on_message(_client: Any, _data: Any, message: Any) -> None:
        if message.retain:
            heard.left_out["retained"] += 1
            return
        try:
            _hand_on(message.topic.rsplit("/", 1)[-1], samples_of(message.payload), take, heard)
        except FrywrightError as error:
            heard.refuse(error)

    client = mqtt.Client(
        mqtt.CallbackAPIVersion.VERSION2,
        client_id=f"frywright-{socket.gethostname()}-{zlib.crc32(address.encode()):08x}",
        clean_session=False,
    )
    client.on_connect, client.on_disconnect, client.on_message = on_connect, on_disconnect, on_message
    client.reconnect_delay_set(BACK_FIRST_S, BACK_LAST_S)
    if parts.username:
        client.username_pw_set(unquote(parts.username), os.environ.get(PASSWORD))
    if parts.scheme == "mqtts":
        client.tls_set()
    client.connect_async(
        parts.hostname or "", parts.port or (8883 if parts.scheme == "mqtts" else 1883), KEEP_ALIVE_S
    )
    client.loop_start()
    try:
        stop.wait()
    finally:
        client.disconnect()
        client.loop_stop()


def _hand_on(source: str, samples: list[Sample], take: Take, heard: Heard) -> None:
    take(named(source, "source"), samples)
    heard.samples_count += len(samples)


def listen_serial(device: str, baud: int, take: Take, stop: threading.Event, heard: Heard) -> None:
    """Listen to a serial line: a reading a line. A line that breaks off is opened again."""
    try:
        import serial
    except ImportError:
        raise _missing() from None
    source = Path(device).name
    while not stop.is_set():
        try:
            with serial.Serial(device, baud, timeout=0.5) as line:
                heard.link = "connected"
                for text in _lines(line, stop):
                    try:
                        _hand_on(source, [sample_in(text)], take, heard)
                    except FrywrightError as error:
                        heard.refuse(error)
        except (OSError, serial.SerialException) as error:
            heard.link = f"lost: {error}"
            stop.wait(AGAIN_S)


def _lines(line: Any, stop: threading.Event) -> Iterator[str]:
    """Whole lines; the first may begin in its middle and is left out where it does not end in time."""
    held = b""
    while not stop.is_set():
        held += line.read_until(b"\n", MOST_LINE)
        if held.endswith(b"\n") or len(held) >= MOST_LINE:
            text, held = held.decode("utf-8", errors="replace").strip(), b""
            if text:
                yield text


def follow_file(path: Path, take: Take, stop: threading.Event, heard: Heard) -> None:
    """Follow a logger's file while it grows, read by the same reader as one dropped in."""
    told: dict[str, float] = {}
    size = -1
    while not stop.is_set():
        try:
            now = path.stat().st_size
            if now > LARGEST_FILE:
                raise InputError("file", now, "at most {most} bytes: begin a new one", most=LARGEST_FILE)
            if now != size:
                size = now
                _hand_on_rows(path, told, take, heard)
            heard.link = "connected"
        except OSError as error:
            heard.link, size = f"lost: {error.strerror}", -1
        except FrywrightError as error:
            heard.refuse(error)
        stop.wait(FILE_EVERY_S)


def _hand_on_rows(path: Path, told: dict[str, float], take: Take, heard: Heard) -> None:
    """Rows of a file that are new since the last look; the last line may still be written, so whole ones."""
    whole = path.read_bytes()
    whole = whole[: whole.rfind(b"\n") + 1]
    log = read_log(io.BytesIO(whole), path.name)
    began = log.start_at.timestamp() if log.start_at is not None else 0.0
    found = []
    for channel in log.channels:
        if channel.role is Role.GAUGE:
            continue
        last = told.get(channel.name, float("-inf"))
        new = np.isfinite(channel.values) & (began + log.time_s > last)
        rows = list(zip((began + log.time_s[new]).tolist(), channel.values[new].tolist(), strict=True))
        found += [Sample(channel=channel.name[:MOST_NAME], temp_c=c, at_s=t) for t, c in rows]
        if rows:
            told[channel.name] = rows[-1][0]
    found.sort(key=lambda sample: sample.at_s or 0.0)
    for first in range(0, len(found), MOST_TOGETHER):
        _hand_on(path.stem[:MOST_NAME], found[first : first + MOST_TOGETHER], take, heard)
