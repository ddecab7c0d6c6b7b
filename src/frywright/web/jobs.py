"""Long work in the background: progress, cancel, result. Kept in memory, the last few only."""

from __future__ import annotations

import contextvars
import itertools
import logging
import threading
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from frywright.model.errors import BrokenOffError, FrywrightError

LOG = logging.getLogger(__name__)
KEPT = 20


class Cancelled(Exception):
    """Raised inside the work when a person cancels it."""


@dataclass(slots=True)
class Job:
    """One piece of work and how far it is."""

    number: int
    title: str
    kind: str
    share_frac: float = 0.0
    result: Any = None
    error: FrywrightError | None = None
    done: bool = False
    cancelled: bool = False


class Jobs:
    """Runs one job at a time; a new one waits for its turn."""

    def __init__(self) -> None:
        self._numbers, self._turn = itertools.count(1), threading.Lock()
        self._jobs: dict[int, Job] = {}

    def start(self, title: str, kind: str, work: Callable[[Callable[[float], None]], Any]) -> Job:
        """Begin ``work(progress)`` in a thread, in the name of whoever asked for it."""
        job = Job(number=next(self._numbers), title=title, kind=kind)
        self._jobs[job.number] = job
        for old in list(self._jobs)[:-KEPT]:
            self._jobs[old].cancelled = True
            del self._jobs[old]
        threading.Thread(
            target=contextvars.copy_context().run, args=(self._run, job, work), daemon=True
        ).start()
        return job

    def _run(self, job: Job, work: Callable[[Callable[[float], None]], Any]) -> None:
        def progress(share: float) -> None:
            job.share_frac = share
            if job.cancelled:
                raise Cancelled

        try:
            with self._turn:
                progress(0.0)
                job.result = work(progress)
        except Cancelled:
            job.cancelled = True
        except FrywrightError as error:
            job.error = error
        except Exception as error:  # whatever it is, a page that waits must hear of it
            LOG.exception("Work %d (%s, %s) broke off", job.number, job.kind, job.title)
            job.error = BrokenOffError(error)
        finally:
            job.done = True

    def get(self, number: int) -> Job | None:
        """A job by number, or None when it is gone."""
        return self._jobs.get(number)
