"""What whoever runs the server sees of it: counts for Prometheus, and one line a request. Nothing in either
names a person, a secret or what was typed: addresses are told by their template.
"""

from __future__ import annotations

import json
import logging
import os
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path
from threading import Lock, active_count
from typing import Any, TypedDict

from fastapi import Request

LOG = logging.getLogger("frywright.requests")
BOUNDS_S = (0.01, 0.03, 0.1, 0.3, 1.0, 3.0, 10.0)
"""Upper ends of the classes of how long an answer took."""
STARTED_AT = time.time()


class Counts(TypedDict):
    """Counts of one process, as another one reads them: rows of names and a number."""

    answers: list[list[Any]]
    within: list[list[Any]]
    seconds: list[list[Any]]
    process: dict[str, float]


class Watch:
    """Counts since the program started."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._answers: Counter[tuple[str, str, int]] = Counter()
        self._within: Counter[tuple[str, float]] = Counter()
        self._seconds: Counter[str] = Counter()
        self.others: Callable[[], list[Counts]] = list
        """Counts of the other processes of this server."""

    def answered(self, request: Request, status: int, took_s: float) -> None:
        """Count an answer and log it."""
        route = getattr(request.scope.get("route"), "path", "") or "none"
        kind = "read" if request.method in ("GET", "HEAD") else "write"
        with self._lock:
            self._answers[route, request.method, status] += 1
            self._seconds[kind] += took_s  # type: ignore[assignment]
            for bound in (*(b for b in BOUNDS_S if took_s <= b), float("inf")):
                self._within[kind, bound] += 1
        told = {"method": request.method, "route": route, "status": status, "ms": round(1000 * took_s, 1)}
        LOG.info("answered", extra={"told": told | {"role": _role(request)}})

    def told(self) -> Counts:
        """The counts of this process, as another one reads them."""
        with self._lock:
            return {
                "answers": [[*key, count] for key, count in self._answers.items()],
                "within": [[*key, count] for key, count in self._within.items()],
                "seconds": [[kind, count] for kind, count in self._seconds.items()],
                "process": _process(),
            }

    def lines(self, here: dict[str, float]) -> Iterator[str]:
        """Everything in the text format that Prometheus reads, of all processes together; ``here`` are gauges
        of the store.
        """
        every = [self.told(), *self.others()]
        answers, within, seconds = (
            _summed(rows)
            for rows in (
                [row for one in every for row in one["answers"]],
                [row for one in every for row in one["within"]],
                [row for one in every for row in one["seconds"]],
            )
        )
        yield from _head("frywright_answers_total", "counter", "Answers by route, method and status.")
        for (route, method, status), count in sorted(answers.items()):
            labels = f'route="{_label(route)}",method="{_label(method)}",status="{status}"'
            yield f"frywright_answers_total{{{labels}}} {count:.0f}"
        yield from _head("frywright_answer_seconds", "histogram", "How long answers took.")
        for (kind,) in sorted(seconds):
            for bound in (*BOUNDS_S, float("inf")):
                end = "+Inf" if bound == float("inf") else f"{bound:g}"
                count = within.get((kind, bound), 0.0)
                yield f'frywright_answer_seconds_bucket{{kind="{kind}",le="{end}"}} {count:.0f}'
            yield f'frywright_answer_seconds_sum{{kind="{kind}"}} {seconds[kind,]:.6f}'
            yield f'frywright_answer_seconds_count{{kind="{kind}"}} {within[kind, float("inf")]:.0f}'
        for name, value in {**here, **_all([one["process"] for one in every])}.items():
            yield from _head(name, "counter" if name.endswith("_total") else "gauge", MEANING[name])
            yield f"{name} {value:.15g}"


MEANING = {
    "frywright_entries": "Entries in the record.",
    "frywright_newest_entry_seconds": "When the newest entry was recorded.",
    "frywright_sessions": "Sessions of people that were not ended.",
    "process_cpu_seconds_total": "Processor time used.",
    "process_resident_memory_bytes": "Memory in use.",
    "process_open_fds": "Open files and connections.",
    "process_threads": "Threads.",
    "process_start_time_seconds": "When the program was started.",
}


def _summed(rows: list[list[Any]]) -> dict[tuple[Any, ...], float]:
    found: Counter[tuple[Any, ...]] = Counter()
    for *key, count in rows:
        found[tuple(key)] += count
    return dict(found)


def _all(every: list[dict[str, float]]) -> dict[str, float]:
    """Figures of all processes: together, but for when the first was started."""
    return {
        name: (min if name == "process_start_time_seconds" else sum)(one.get(name, 0.0) for one in every)
        for name in every[0]
    }


def _role(request: Request) -> str:
    who = getattr(request.state, "who", None)
    return who.role if who is not None and who.name else ""


def _head(name: str, kind: str, meaning: str) -> Iterator[str]:
    yield f"# HELP {name} {meaning}"
    yield f"# TYPE {name} {kind}"


def _label(text: str) -> str:
    return text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")


def _process() -> dict[str, float]:
    """Figures of this process; memory and files where the system tells them."""
    found = {
        "process_cpu_seconds_total": time.process_time(),
        "process_threads": float(active_count()),
        "process_start_time_seconds": STARTED_AT,
    }
    with suppress(OSError, ValueError, AttributeError):
        pages = int(Path("/proc/self/statm").read_text().split()[1])
        found["process_resident_memory_bytes"] = float(pages * os.sysconf("SC_PAGE_SIZE"))
        found["process_open_fds"] = float(len(list(Path("/proc/self/fd").iterdir())))
    return found


class _Lines(logging.Formatter):
    """One JSON object a line, or plain words."""

    def __init__(self, style: str) -> None:
        super().__init__()
        self._json = style == "json"

    def format(self, record: logging.LogRecord) -> str:
        """The line. A fault's place is told, not its words: these may hold what somebody typed."""
        at = time.strftime("%Y-%m-%dT%H:%M:%S", time.gmtime(record.created)) + f".{int(record.msecs):03}Z"
        told: dict[str, Any] = {"at": at, "level": record.levelname.lower(), "from": record.name}
        told |= {"event": record.getMessage(), **getattr(record, "told", {})}
        if record.exc_info and record.exc_info[0] is not None:
            told |= {"fault": record.exc_info[0].__name__, "where": list(_where(record))}
        if self._json:
            return json.dumps(told, ensure_ascii=True)
        return " ".join(str(value).replace("\n", " ") for value in told.values() if value != "")


def _where(record: logging.LogRecord) -> Iterator[str]:
    place = record.exc_info[2] if record.exc_info else None
    while place is not None:
        code = place.tb_frame.f_code
        yield f"{Path(code.co_filename).name}:{place.tb_lineno} {code.co_name}"
        place = place.tb_next


def start_log(style: str) -> None:
    """Log to the standard error from now on: ``json``, ``plain``, or warnings alone (``none``)."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(_Lines(style))
    for name in ("frywright", "uvicorn"):
        logger = logging.getLogger(name)
        logger.handlers.clear()
        logger.addHandler(handler)
        logger.propagate = False
        logger.setLevel(logging.WARNING if style == "none" or name == "uvicorn" else logging.INFO)
