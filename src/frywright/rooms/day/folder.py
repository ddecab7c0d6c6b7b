"""A folder into which a till writes its exports: each file is read once it has stopped growing."""

from __future__ import annotations

import time
from collections.abc import Iterator
from pathlib import Path

from frywright.ledger.store import Store
from frywright.model.errors import FrywrightError, InputError
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.rooms.day.sales import take_file

KINDS = (".csv", ".txt", ".tsv", ".xlsx")
Mark = tuple[int, float]


class Watched:
    """A watched folder and what was seen of its files. Nothing in it is moved, changed or deleted."""

    def __init__(self, store: Store, kitchen: Kitchen, folder: Path, translate: Translate = str) -> None:
        if not folder.is_dir():
            raise InputError("folder", str(folder), "a folder that exists")
        self.store, self.kitchen, self.folder, self.translate = store, kitchen, folder, translate
        self._seen: dict[str, Mark] = {}
        self._done: dict[str, Mark] = {}

    def look(self, settled: bool = False) -> Iterator[tuple[str, str]]:
        """Read files that are new or changed: their names, and why one has to wait, empty where it was read.
        A file is taken when two looks found it alike; ``settled`` takes it at the first.
        """
        for path in sorted(self.folder.iterdir()):
            if path.suffix.lower() not in KINDS or path.name.startswith((".", "~")) or not path.is_file():
                continue
            told = path.stat()
            mark = (told.st_size, told.st_mtime)
            alike, self._seen[path.name] = self._seen.get(path.name) == mark, mark
            if self._done.get(path.name) == mark or not (alike or settled) or not told.st_size:
                continue
            self._done[path.name] = mark
            yield path.name, self._take(path)

    def _take(self, path: Path) -> str:
        try:
            with path.open("rb") as stream:
                _, problem = take_file(self.store, self.kitchen, stream, path.name)
        except FrywrightError as error:
            return error.say(self.translate).removeprefix(f"{path.name}: ")
        except OSError as error:
            return str(error.strerror or error)
        return self.translate(problem.problems[0].what) if problem and problem.problems else ""

    @staticmethod
    def rest(seconds: float) -> None:
        """Wait for the next look."""
        time.sleep(max(seconds, 1.0))
