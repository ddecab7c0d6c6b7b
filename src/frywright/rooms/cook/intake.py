"""Readings that stream in from any source, on one clock: ordered, each once, a wrong device clock recognised.

Every source (MQTT, HTTP, a serial line, a growing file) ends here as :class:`Sample`. Nothing is invented: a
reading that cannot be used is counted with its reason.
"""

from __future__ import annotations

import datetime as dt
import json
import math
import threading
from bisect import bisect_left, insort
from collections import Counter
from dataclasses import dataclass, field
from itertools import pairwise

from frywright.calibrate.channels import HIGHEST_C, LOWEST_C
from frywright.calibrate.timeline import GAP_S
from frywright.model.errors import InputError
from frywright.model.units import UNITS, to_inside

MOST_NAME, MOST_CHANNELS, MOST_SOURCES, MOST_TOGETHER = 40, 32, 16, 500
MOST_KEPT, MOST_HZ = 8_000, 20.0
"""Bounds against a device gone wild or a stranger: letters of a name, channels and sources of a kitchen,
readings in one message, readings kept of a channel (two hours at one a second), readings a second
of one channel. Own choice."""
STEADY_S, SAME_S, LATE_S, JUMP_S = 5.0, 1.0, 2.0, 5.0
"""A clock is known after readings whose times and arrivals kept the same distance (within SAME_S) for
STEADY_S; later than LATE_S is late; a jump is more than JUMP_S. Own choice: a network delivers within a
second or two, and no fryer needs its time better."""
FURTHEST_S = 4e9
MOST_BYTES, MOST_LINE = 65_536, 200
FORMATS_TOLD = "an ISO time with its zone, or seconds since 1970 as a number"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sample:
    """One reading of one channel. ``at_s`` is the device's own time, None where it tells none; seconds since
    1970 UTC.
    """

    channel: str
    temp_c: float
    at_s: float | None = None


@dataclass(slots=True)
class Segment:
    """A stretch in which a device's clock ran on without being set. ``offset_s`` added gives our time."""

    offset_s: float
    steady: bool = False
    last_at_s: float = 0.0
    last_got_s: float = 0.0


@dataclass(slots=True)
class SourceClock:
    """What is known of the clock of one source.

    The least delay between a reading's time and its arrival is the clock's offset: late deliveries only ever
    add to it, so readings kept back while the line was down do not move it.
    """

    told: bool = False  # whether the device tells times at all
    segments: list[Segment] = field(default_factory=list)
    set_count: int = 0
    run: list[tuple[float, float]] = field(default_factory=list)  # late arrivals in a row: time, arrival
    steady_from: tuple[float, float] | None = None

    def place(self, at_s: float, got_s: float) -> tuple[int, bool]:
        """The segment of a reading, and whether older readings' times moved with it."""
        self.told = True
        if not self.segments:
            return self._start(at_s, got_s), False
        now = self.segments[-1]
        delay = got_s - at_s - now.offset_s
        if delay < -JUMP_S and now.steady:  # from the future: it was set forward
            self.set_count += 1
            return self._start(at_s, got_s), False
        moved = False
        if delay < 0.0:
            now.offset_s += delay
            moved = delay < -0.5 * SAME_S
        if delay > LATE_S:
            return self._late(at_s, got_s)
        self.run = []
        self._follow(now, at_s, got_s)
        return len(self.segments) - 1, moved

    def _start(self, at_s: float, got_s: float) -> int:
        self.segments.append(Segment(offset_s=got_s - at_s, last_at_s=at_s, last_got_s=got_s))
        self.run, self.steady_from = [], (at_s, got_s)
        return len(self.segments) - 1

    def _follow(self, now: Segment, at_s: float, got_s: float) -> None:
        """Whether time and arrival have kept their distance long enough."""
        if self.steady_from is None or _apart((at_s, got_s), self.steady_from) > SAME_S:
            self.steady_from = (at_s, got_s)
        elif got_s - self.steady_from[1] >= STEADY_S:
            now.steady = True
        now.last_at_s, now.last_got_s = max(now.last_at_s, at_s), got_s

    def _late(self, at_s: float, got_s: float) -> tuple[int, bool]:
        """A late reading; where late ones come at the pace of life, the clock was set back."""
        if self.run and _apart((at_s, got_s), self.run[-1]) > SAME_S:
            self.run = []
        self.run.append((at_s, got_s))
        if got_s - self.run[0][1] < STEADY_S:
            return len(self.segments) - 1, False
        self.set_count += 1
        first = self.run[0]
        number = self._start(*first)
        self.segments[number].steady = True
        return number, True

    @property
    def offset_s(self) -> float:
        """Ours minus the device's time now; 0 for one that tells none."""
        return self.segments[-1].offset_s if self.segments else 0.0


def _apart(a: tuple[float, float], b: tuple[float, float]) -> float:
    return abs((a[0] - b[0]) - (a[1] - b[1]))


@dataclass(slots=True)
class Channel:
    """Readings of one channel of one source, by corrected time."""

    source: str
    name: str
    raw: list[tuple[float, int, float, float]] = field(default_factory=list)  # at, segment, arrival, degC
    seen: set[tuple[float, float]] = field(default_factory=set)
    left_count: float = MOST_HZ
    filled_s: float = 0.0

    @property
    def key(self) -> str:
        """How the channel is named beyond its source."""
        return f"{self.source}/{self.name}" if self.source else self.name


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockState:
    """What a page says of a source: its clock, when it last spoke, what was left out and why."""

    source: str
    told: bool
    off_s: float  # the device's clock minus ours
    set_count: int
    last_got_s: float
    dropped: dict[str, int]


class Intake:
    """Readings of all sources of one kitchen, in memory, bounded. Safe to use from several threads."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._channels: dict[tuple[str, str], Channel] = {}
        self._clocks: dict[str, SourceClock] = {}
        self._last_got_s: dict[str, float] = {}
        self._dropped: dict[str, Counter[str]] = {}
        self.revision = 0
        """Rises when times already given out have moved: whoever used them starts again."""

    def add(self, source: str, samples: list[Sample], got_s: float) -> int:
        """Take readings that arrived together; how many were new. Raises InputError: a name that is no name,
        too many readings at once, channels or sources; nothing of the message is kept.
        """
        named(source, "source", may_be_empty=True)
        if len(samples) > MOST_TOGETHER:
            raise InputError("samples", len(samples), "at most {most} in one message", most=MOST_TOGETHER)
        for sample in samples:
            named(sample.channel, "channel")
            if sample.at_s is not None and not abs(sample.at_s) < FURTHEST_S:
                raise InputError("at", sample.at_s, FORMATS_TOLD)
        with self._lock:
            self._room_for(source, samples)
            clock = self._clocks.setdefault(source, SourceClock())
            self._last_got_s[source] = got_s
            return sum(self._take(source, clock, sample, got_s) for sample in samples)

    def _room_for(self, source: str, samples: list[Sample]) -> None:
        new = {(source, s.channel) for s in samples} - set(self._channels)
        if len(self._channels) + len(new) > MOST_CHANNELS:
            raise InputError("channel", "too many", "at most {most}", most=MOST_CHANNELS)
        if source not in self._clocks and len(self._clocks) >= MOST_SOURCES:
            raise InputError("source", "too many", "at most {most}", most=MOST_SOURCES)

    def _take(self, source: str, clock: SourceClock, sample: Sample, got_s: float) -> bool:
        dropped = self._dropped.setdefault(source, Counter())
        if not (math.isfinite(sample.temp_c) and LOWEST_C <= sample.temp_c <= HIGHEST_C):
            dropped["impossible"] += 1
            return False
        channel = self._channels.setdefault((source, sample.channel), Channel(source, sample.channel))
        channel.left_count = min(
            2 * MOST_HZ, channel.left_count + MOST_HZ * max(got_s - channel.filled_s, 0.0)
        )
        channel.filled_s = got_s
        at, segment = got_s, -1
        if sample.at_s is not None:
            at = sample.at_s
            if (at, sample.temp_c) in channel.seen:
                dropped["repeated"] += 1
                return False
            segment, moved = clock.place(at, got_s)
            self.revision += moved
            channel.seen.add((at, sample.temp_c))
        elif channel.left_count < 1.0:
            dropped["too_many"] += 1
            return False
        else:
            channel.left_count -= 1.0
        insort(channel.raw, (at, segment, got_s, sample.temp_c))
        if len(channel.raw) > MOST_KEPT:
            old = channel.raw.pop(0)
            channel.seen.discard((old[0], old[3]))
        return True

    def readings(self, key: str, since_s: float = -math.inf) -> list[tuple[float, float]]:
        """Times (ours) and degC of a channel after a moment, in order."""
        with self._lock:
            channel = next((c for c in self._channels.values() if c.key == key), None)
            if channel is None:
                return []
            clock = self._clocks[channel.source]
            offsets = [s.offset_s for s in clock.segments]
            timed = sorted((at + offsets[n] if n >= 0 else at, t) for at, n, _, t in channel.raw)
        return timed[bisect_left(timed, (since_s, math.inf)) :]

    def channels(self) -> list[str]:
        """Every channel heard of, in order of name."""
        with self._lock:
            return sorted(c.key for c in self._channels.values())

    def clocks(self) -> list[ClockState]:
        """Every source with its clock."""
        with self._lock:
            return [
                ClockState(
                    source=source,
                    told=clock.told,
                    off_s=-clock.offset_s,
                    set_count=clock.set_count,
                    last_got_s=self._last_got_s[source],
                    dropped=dict(self._dropped.get(source, {})),
                )
                for source, clock in sorted(self._clocks.items())
            ]


def named(name: str, what: str, may_be_empty: bool = False) -> str:
    """A name fit to show and to keep. Raises InputError: it is empty, too long, or holds what nobody can
    read.
    """
    if len(name) > MOST_NAME or not name.isprintable() or not (name.strip() or may_be_empty):
        raise InputError(
            what, repr(name[: MOST_NAME + 10]), "1 to {most} letters that can be read", most=MOST_NAME
        )
    return name


def temp_of(value: float, unit: str) -> float:
    """A reading in inside units. Raises InputError: the unit is none of a temperature."""
    key = unit.strip().lower().removeprefix("°")
    if key not in ("c", "f"):
        raise InputError("unit", repr(unit[:10]), "C or F")
    assert UNITS[key].dimension == "temperature"
    return to_inside(value, key)


def moment_of(text: str | float | None) -> float | None:
    """The device's time as seconds since 1970; None where it told none. Raises InputError: it is no time with
    its zone.
    """
    if text is None or text == "":
        return None
    if isinstance(text, int | float) and not isinstance(text, bool):
        return float(text) / (1000.0 if abs(text) > 1e11 else 1.0)
    try:
        moment = dt.datetime.fromisoformat(str(text))
    except ValueError:
        moment = None
    if moment is None or moment.tzinfo is None:
        raise InputError("at", repr(str(text)[:40]), FORMATS_TOLD)
    return moment.timestamp()


def samples_of(text: bytes | str) -> list[Sample]:
    """Readings of one message in JSON: an object with ``samples``, or one sample: ``channel``, ``temp``,
    ``unit`` (C where left out) and ``at`` (left out where the device tells no time). Raises InputError: it is
    no such message; nothing of it is taken.
    """
    if len(text) > MOST_BYTES:
        raise InputError("message", len(text), "at most {most} bytes", most=MOST_BYTES)
    try:
        told = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError("message", "unreadable", "one in JSON") from error
    rows = told.get("samples") if isinstance(told, dict) and "samples" in told else [told]
    if not isinstance(rows, list) or len(rows) > MOST_TOGETHER:
        raise InputError("samples", "impossible", "at most {most} in one message", most=MOST_TOGETHER)
    return [_sample(row) for row in rows]


def _sample(row: object) -> Sample:
    if not isinstance(row, dict) or not set(row) <= {"channel", "temp", "unit", "at"}:
        raise InputError("sample", "impossible", "channel, temp, unit and at, and nothing else")
    channel, temp, unit, at = row.get("channel"), row.get("temp"), row.get("unit", "C"), row.get("at")
    if not isinstance(channel, str) or not isinstance(unit, str):
        raise InputError("channel", "missing", "a name")
    if isinstance(temp, bool) or not isinstance(temp, int | float) or not math.isfinite(temp):
        raise InputError("temp", repr(temp)[:20], "a number")
    if at is not None and (isinstance(at, bool) or not isinstance(at, str | int | float)):
        raise InputError("at", repr(at)[:20], FORMATS_TOLD)
    return Sample(channel=named(channel, "channel"), temp_c=temp_of(float(temp), unit), at_s=moment_of(at))


def sample_in(line: str) -> Sample:
    """A reading in a line of text: channel, number, unit, and the time where the device tells one; or JSON.
    Raises InputError: it is no such line.
    """
    if line.lstrip().startswith("{"):
        found = samples_of(line)
        return found[0] if len(found) == 1 else _sample(None)
    words = line.split()
    if not 3 <= len(words) <= 4 or len(line) > MOST_LINE:
        raise InputError("line", repr(line[:40]), "channel, number, unit, and a time or none: K1 61.4 C")
    try:
        temp = float(words[1])
    except ValueError:
        raise InputError("temp", repr(words[1][:20]), "a number") from None
    if not math.isfinite(temp):
        raise InputError("temp", repr(words[1][:20]), "a number")
    at = words[3] if len(words) == 4 else None
    return Sample(channel=named(words[0], "channel"), temp_c=temp_of(temp, words[2]), at_s=_time(at))


def _time(text: str | None) -> float | None:
    """A time in a line: seconds as a number, or ISO."""
    try:
        return moment_of(float(text)) if text else None
    except ValueError:
        return moment_of(text)


def gaps_of(times_s: list[float]) -> list[tuple[float, float]]:
    """Stretches without readings that are too long to be bridged."""
    return [(a, b) for a, b in pairwise(times_s) if b - a > GAP_S]
