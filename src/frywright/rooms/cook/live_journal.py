"""What a load under way needs to go on when its server was stopped: readings and acts, as they came in.

The file is no record. It is bounded, holds the last hours only, and what is kept of a load is its log. An act
(a load begun, dropped, stopped) is on the disk before it is answered, so that a power cut loses no load; of
readings it loses what the system had not written yet, seconds as a rule, and the load goes on with the gap.
"""

from __future__ import annotations

import json
import os
import threading
from collections.abc import Iterator, Mapping
from contextlib import suppress
from pathlib import Path
from typing import Any

from frywright.ledger.store import Store
from frywright.model.errors import RecordError

MOST_BYTES = 8_000_000
"""Of the newer of two files; then it becomes the older. A day of four channels at one reading a second is
about 10 MB, so both hold the four hours that a load is followed (own choice).
"""


class Journal:
    """Rows in the order they came in, a line each, in two files of which the older is let go."""

    def __init__(self, store: Store) -> None:
        self._lock = threading.Lock()
        self.lost = ""
        """Why nothing is kept, in the words of the system; empty while all is well."""
        self._path: Path | None = None
        try:
            self._path = store.files / f"live-{store.site or 'home'}.jsonl"
        except RecordError as error:
            self.lost = str(error)

    @property
    def _older(self) -> Path | None:
        return self._path.with_suffix(".older.jsonl") if self._path else None

    def rows(self) -> Iterator[Mapping[str, Any]]:
        """Every row that can be read; one cut short by a power cut is left out."""
        for path in (self._older, self._path):
            if path is None:
                continue
            with suppress(FileNotFoundError), path.open(encoding="utf-8", errors="replace") as lines:
                for line in lines:
                    with suppress(ValueError):
                        row = json.loads(line)
                        if isinstance(row, dict):
                            yield row

    def write(self, row: Mapping[str, Any], again: list[Mapping[str, Any]] | None = None) -> None:
        """Add a row. ``again`` are rows that a new file begins with, so that they outlive the older one."""
        if self._path is None or self._older is None:
            return
        with self._lock:
            try:
                self._path.parent.mkdir(parents=True, exist_ok=True)
                if self._path.exists() and self._path.stat().st_size > MOST_BYTES:
                    os.replace(self._path, self._older)
                    self._append([*(again or []), row])
                else:
                    self._append([row])
                self.lost = ""
            except OSError as error:
                self.lost = error.strerror or str(error)

    def _append(self, rows: list[Mapping[str, Any]]) -> None:
        assert self._path is not None
        text = "".join(json.dumps(row, ensure_ascii=False) + "\n" for row in rows).encode()
        file = os.open(self._path, os.O_RDWR | os.O_CREAT | os.O_APPEND, 0o600)
        try:
            end = os.lseek(file, 0, os.SEEK_END)
            cut = end > 0 and os.pread(file, 1, end - 1) != b"\n"
            os.write(file, (b"\n" if cut else b"") + text)
            if any(row.get("what") != "readings" for row in rows):
                os.fsync(file)
        finally:
            os.close(file)
