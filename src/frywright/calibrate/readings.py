"""A logger's file in any common layout, read into channels on one clock.

Nothing is invented: a reading that cannot be read is missing, a line that cannot be used is listed
with its reason, and what could mean two things is asked (:class:`Question`) and guessed meanwhile.
"""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import BinaryIO

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate import timeline
from frywright.calibrate.channels import Channel, Role, guess_role, guess_unit, inside_values, unit_in
from frywright.calibrate.columns import Clock, clock_of, is_index, number_of, numbers_of, title_of
from frywright.model.errors import DataError, InputError
from frywright.model.findings import Note, Problem
from frywright.model.units import UNITS
from frywright.tables import moments, table

Array = NDArray[np.float64]
BLOCK_ROWS = 20_000
EXAMPLES = 20


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """Something the file leaves open. The answer is given under ``key``; ``guess`` is used till then."""

    key: str
    text: str
    choices: tuple[str, ...]
    guess: str
    values: Mapping[str, float | str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Dropped:
    """Lines left out for one reason: how many, and the first of them."""

    reason: str
    count: int
    examples: tuple[tuple[int, str], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Log:
    """What a file says. ``time_s`` rises from 0; channels have one value (or NaN) for each time."""

    name: str
    start_at: dt.datetime | None
    time_s: Array
    step_s: float
    channels: tuple[Channel, ...]
    shape: table.Shape
    questions: tuple[Question, ...]
    notes: tuple[Note, ...]
    dropped: tuple[Dropped, ...]
    gaps: tuple[tuple[float, float], ...]
    lines_count: int
    blank_count: int
    ignored: tuple[str, ...] = ()

    def of(self, role: Role) -> list[Channel]:
        """Channels of a part."""
        return [channel for channel in self.channels if channel.role is role]


class _Dropping:
    """Collects lines left out, by reason."""

    def __init__(self) -> None:
        self.found: dict[str, list[tuple[int, str]]] = {}
        self.counts: dict[str, int] = {}

    def add(self, reason: str, line_number: int, text: str) -> None:
        self.counts[reason] = self.counts.get(reason, 0) + 1
        examples = self.found.setdefault(reason, [])
        if len(examples) < EXAMPLES:
            examples.append((line_number, text[:120]))

    def told(self) -> tuple[Dropped, ...]:
        return tuple(
            Dropped(reason=r, count=n, examples=tuple(self.found[r])) for r, n in self.counts.items()
        )


def read_log(
    stream: BinaryIO,
    name: str,
    answers: Mapping[str, str] | None = None,
    progress: Callable[[float], None] | None = None,
    size_bytes: int = 0,
) -> Log:
    """Read a logger's file. Raises DataError: the file is empty, no text, or holds no times and readings.
    Raises InputError: an answer is impossible.

    Parameters
    ----------
    stream : opened for bytes, at its start, seekable
    name : file name for messages
    answers : answers to earlier questions: ``date_order``, ``unit``, ``unit:CH3``, ``role:CH3``, ``interval``
    progress : called with the share read, 0 to 1; may raise to cancel
    size_bytes : size of the file, for the progress
    """
    told = dict(answers or {})
    head = stream.read(table.HEAD_BYTES)
    stream.seek(0)
    cut = max(head.rfind(b"\n"), head.rfind(b"\r")) + 1 if len(head) == table.HEAD_BYTES else 0
    shape = table.shape_of(head[:cut] if cut > 0 else head, name)
    sample = _sample(head, shape)
    clock = clock_of(sample, shape, told)
    columns = [
        i for i in range(shape.width_count) if i not in clock.columns and not is_index(i, sample, shape)
    ]
    reader = _Reader(shape, clock, columns, told)
    reader.read(stream, progress, size_bytes)
    if not reader.rows_count:
        raise DataError(
            [
                Problem(
                    what="no line has a time and a reading",
                    remedy="Choose the file the logger wrote, or export it again.",
                    file=name,
                )
            ]
        )
    return reader.log(name)


def _sample(head: bytes, shape: table.Shape) -> list[list[str]]:
    text = head.decode(shape.encoding, errors="replace").replace("\r\n", "\n").replace("\r", "\n")
    lines = text.split("\n")[shape.first_line_number - 1 :][: 2 * table.SAMPLE_ROWS]
    rows = [table.split(line, shape.separator) for line in lines if line.strip()]
    return [row for row in rows if len(row) == shape.width_count] or rows


class _Reader:
    """Gathers blocks of rows into arrays and makes the log of them."""

    def __init__(self, shape: table.Shape, clock: Clock, columns: list[int], told: dict[str, str]) -> None:
        self.shape, self.clock, self.columns, self.told = shape, clock, columns, told
        self.lines, self.dropping = table.Lines(), _Dropping()
        self.seconds: list[Array] = []
        self.days: list[NDArray[np.int64]] = []
        self.values: list[Array] = []
        self.places: list[NDArray[np.int64]] = []
        self.dates: dict[moments.DateText, int] = {}
        self.separator = ""
        self.zoned = False
        self.opened = np.zeros(len(columns), dtype=np.int64)
        self.unread = np.zeros(len(columns), dtype=np.int64)
        self.rows_count = 0
        self.short_count = 0

    def read(self, stream: BinaryIO, progress: Callable[[float], None] | None, size_bytes: int) -> None:
        """All rows of the stream."""
        passed, block = [0], []
        for row in table.rows_of(stream, self.shape, self.lines, passed):
            block.append(row)
            if len(block) >= BLOCK_ROWS:
                self._take(block)
                block = []
                if progress and size_bytes:
                    progress(min(1.0, passed[0] / size_bytes))
        self._take(block)
        if progress:
            progress(1.0)

    def _take(self, block: list[table.Row]) -> None:
        seconds, days, rows = [], [], []
        width, long = self.shape.width_count, set(self.lines.long_lines)
        for row in block:
            if row.line_number in long:
                self.dropping.add("the line is longer than any logger writes", row.line_number, row.text)
                continue
            if len(row.cells) > width:
                self.dropping.add("more columns than the table has", row.line_number, row.text)
                continue
            moment = self._moment(row)
            if moment is None:
                self.dropping.add("no time can be read", row.line_number, row.text)
                continue
            if len(row.cells) < width:
                row.cells += [""] * (width - len(row.cells))
                self.short_count += 1
            seconds.append(moment[0])
            days.append(moment[1])
            rows.append(row)
        if rows:
            self._store(seconds, days, rows)

    def _moment(self, row: table.Row) -> tuple[float, int] | None:
        """Seconds, and the number of the date's text (-1 without a date)."""
        clock = self.clock
        if clock.kind == "none":
            self.rows_count += 1
            return clock.unit_s * (self.rows_count - 1), -1
        if any(i >= len(row.cells) for i in clock.columns):
            return None
        if clock.kind == "number":
            number = number_of(row.cells[clock.columns[0]])
            return None if number is None else (clock.unit_s * number, -1)
        cells = [row.cells[i].strip() for i in clock.columns]
        moment = moments.read_moment(" ".join(cells))
        if moment is None or moment.second_s is None:
            return None
        seconds = moment.second_s / 60.0 if clock.short else moment.second_s
        if moment.offset_s is not None:
            self.zoned, seconds = True, seconds - moment.offset_s
        if moment.date is None:
            return seconds, -1
        if not self.dates:
            self.separator = re.sub(r"[\w ]", "", cells[0])[:1] or " "
        return seconds, self.dates.setdefault(moment.date, len(self.dates))

    def _store(self, seconds: list[float], days: list[int], rows: list[table.Row]) -> None:
        columns = list(zip(*(row.cells for row in rows), strict=True))
        block = np.full((len(rows), len(self.columns)), np.nan)
        for j, i in enumerate(self.columns):
            block[:, j], bad, opened = numbers_of(columns[i])
            self.opened[j] += opened
            self.unread[j] += len(bad)
        if self.clock.kind != "none":
            self.rows_count += len(rows)
        self.seconds.append(np.array(seconds))
        self.days.append(np.array(days, dtype=np.int64))
        self.values.append(block)
        self.places.append(np.array([row.line_number for row in rows], dtype=np.int64))

    def log(self, name: str) -> Log:
        """The log of everything read."""
        raw, place = np.concatenate(self.values), np.concatenate(self.places)
        notes: list[Note] = []
        questions: list[Question] = []
        time = self._times(notes, questions, name)
        usable = np.isfinite(time)
        for line in place[~usable]:
            self.dropping.add("the date is impossible in this file's order", int(line), "")
        time, raw, place = time[usable], raw[usable], place[usable]
        if not len(time):
            raise DataError(
                [
                    Problem(
                        what="no line has a possible date",
                        remedy="Say in which order day, month and year stand.",
                        file=name,
                    )
                ]
            )
        channels, ignored = self._channels(raw, notes, questions)
        line = timeline.mend(time, raw, dated=self._dated(time))
        for lost, reason in (
            (line.same, "a repeat of another line"),
            (line.clash, "the same time as another line, other readings"),
        ):
            for row in lost:
                self.dropping.add(reason, int(place[row]), "")
        notes += timeline.told(line, place)
        if self.short_count:
            notes.append(
                Note(
                    kind="short_lines",
                    text="Lines shorter than the table: {count}; what they lack is missing.",
                    values={"count": self.short_count},
                )
            )
        return Log(
            name=name,
            start_at=self._start(line.time_s),
            time_s=line.time_s - line.time_s[0],
            step_s=line.step_s,
            channels=tuple(replace(c, values=c.values[line.keep]) for c in channels),
            shape=self.shape,
            questions=tuple(questions),
            notes=tuple(notes),
            dropped=self.dropping.told(),
            gaps=tuple((a - line.time_s[0], b - line.time_s[0]) for a, b in line.gaps),
            lines_count=self.lines.read_count,
            blank_count=self.lines.blank_count,
            ignored=tuple(ignored),
        )

    def _dated(self, time: Array) -> bool:
        return bool(self.dates) or self.clock.kind == "none" or float(time.max()) > 2 * timeline.DAY_S

    def _start(self, time: Array) -> dt.datetime | None:
        if self.dates:
            base = dt.datetime.fromordinal(1) + dt.timedelta(seconds=float(time[0]) - timeline.DAY_S)
        elif self.clock.unit_s == timeline.DAY_S:  # spreadsheets count days from 1899-12-30
            base = dt.datetime(1899, 12, 30) + dt.timedelta(seconds=round(float(time[0]), 3))
        elif self.clock.kind == "number" and time[0] > 1e9:
            return dt.datetime.fromtimestamp(float(time[0]), dt.UTC)
        else:
            return None
        return base.replace(tzinfo=dt.UTC) if self.zoned else base

    def _times(self, notes: list[Note], questions: list[Question], name: str) -> Array:
        seconds, number = np.concatenate(self.seconds), np.concatenate(self.days)
        if self.clock.kind == "none":
            if "interval" not in self.told:
                questions.append(
                    Question(
                        key="interval",
                        text="The file has no times. How many seconds lie between two lines?",
                        choices=("1", "2", "5", "10"),
                        guess="1",
                    )
                )
            return seconds
        if not self.dates:
            return seconds
        dates = list(self.dates)
        found = moments.date_order(dates, self.separator)
        order = self.told.get("date_order", "")
        if order and order not in moments.ORDERS:
            raise InputError("date_order", order, "one of ymd, dmy, mdy, ydm")
        if not order and len(found.choices) > 1:
            said = "/".join(dates[0])
            questions.append(
                Question(
                    key="date_order",
                    text="Is {date} month first (mdy) or day first (dmy)?",
                    choices=found.choices,
                    guess=found.order,
                    values={"date": said},
                )
            )
        order = order or found.order
        if not order:
            order = max(
                moments.ORDERS, key=lambda o: sum(moments.day_number(d, o) is not None for d in dates)
            )
            notes.append(
                Note(
                    kind="date_mixed",
                    text=(
                        "The dates of this file fit no single order of day, month and year; lines that do not"
                        " fit are left out."
                    ),
                )
            )
        days = np.array(
            [float(d) if (d := moments.day_number(date, order)) is not None else np.nan for date in dates]
        )
        return np.where(number >= 0, days[np.maximum(number, 0)] * timeline.DAY_S, np.nan) + seconds

    def _channels(
        self, raw: Array, notes: list[Note], questions: list[Question]
    ) -> tuple[list[Channel], list[str]]:
        found: list[Channel] = []
        ignored = []
        preamble = " ".join(self.shape.preamble[: -1 if self.shape.header else None])
        names: set[str] = set()
        for j, i in enumerate(self.columns):
            title = title_of(self.shape, i) or f"column {i + 1}"
            name = next(n for n in (title, *(f"{title} ({k})" for k in range(2, 99))) if n not in names)
            names.add(name)
            if not np.isfinite(raw[:, j]).any():
                ignored.append(name)
                continue
            channel = self._channel(name, title, preamble, raw[:, j], questions)
            if self.unread[j] or channel.impossible_count:
                notes.append(
                    Note(
                        kind="bad_cells",
                        text=(
                            "{channel}: cells that are no numbers: {unread}; impossible readings:"
                            " {impossible}. Both are left out."
                        ),
                        values={
                            "channel": name,
                            "unread": int(self.unread[j]),
                            "impossible": channel.impossible_count,
                        },
                    )
                )
            if self.opened[j]:
                notes.append(
                    Note(
                        kind="open",
                        text="{channel}: readings marked as not there (open circuit or blank): {count}.",
                        values={"channel": name, "count": int(self.opened[j])},
                    )
                )
            found.append(
                Channel(
                    name=name,
                    role=channel.role,
                    unit=channel.unit,
                    reason=channel.reason,
                    values=channel.values,
                    open_count=int(self.opened[j]),
                    impossible_count=channel.impossible_count,
                )
            )
        return found, ignored

    def _channel(
        self, name: str, title: str, preamble: str, raw: Array, questions: list[Question]
    ) -> Channel:
        unit = self.told.get(f"unit:{name}") or self.told.get("unit", "")
        if unit and (unit not in UNITS or UNITS[unit].dimension not in ("temperature", "pressure")):
            raise InputError("unit", unit, "c, f, psi, kpa or bar")
        role_hint, _ = guess_role(title, "", np.empty(0))
        reason = "as answered" if unit else "named in the file"
        unit = unit or unit_in(title, *(() if role_hint is Role.GAUGE else (preamble,)))
        if not unit:
            unit, reason = ("psi", "") if role_hint is Role.GAUGE else guess_unit(raw)
            if not unit or role_hint is Role.GAUGE:
                choices = ("psi", "kpa", "bar") if role_hint is Role.GAUGE else ("f", "c")
                unit = unit or _likelier(raw)
                questions.append(
                    Question(
                        key=f"unit:{name}",
                        text="In which unit is {channel}?",
                        choices=choices,
                        guess=unit,
                        values={"channel": name},
                    )
                )
        values, impossible = inside_values(raw, unit)
        role, why = guess_role(title, unit, values)
        asked = self.told.get(f"role:{name}", "")
        if asked:
            if asked not in list(Role):
                raise InputError("role", asked, "one of oil, core, gauge, display, other")
            role, why = Role(asked), "as answered"
        return Channel(
            name=name, role=role, unit=unit, reason=why or reason, values=values, impossible_count=impossible
        )


def _likelier(raw: Array) -> str:
    """A guess where both units are possible: a piece starts between freezing and room temperature."""
    first = raw[np.isfinite(raw)][:30]
    return "f" if len(first) and float(np.median(first)) > 28.0 else "c"
