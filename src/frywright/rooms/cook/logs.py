"""Logger files: opened from disk, kept byte for byte, read again with a person's answers."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from typing import BinaryIO

from frywright.calibrate.channels import Role
from frywright.calibrate.readings import Log, read_log
from frywright.ledger.attachments import attachments_of
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import LogKept
from frywright.ledger.store import Store
from frywright.model.errors import DataError
from frywright.model.findings import Problem
from frywright.rooms.files import keep_file
from frywright.rooms.hall import write

__all__ = ["ROLES", "Log", "core_channels", "has_gauge", "keep_log", "open_log", "read_kept"]
ROLES = tuple(str(role) for role in Role)
"""What a channel of a log may be."""


def open_log(
    path: Path, answers: Mapping[str, str] | None = None, progress: Callable[[float], None] | None = None
) -> Log:
    """Read a logger's file from disk. Raises DataError: the file does not exist or is no log."""
    try:
        with path.open("rb") as stream:
            return read_log(stream, path.name, answers, progress, path.stat().st_size)
    except OSError as error:
        raise DataError(
            [
                Problem(
                    what="{path} cannot be opened: {cause}",
                    remedy="Give the path of a logger's file.",
                    file=str(path),
                    values={"path": path, "cause": error.strerror},
                )
            ]
        ) from error


def keep_log(store: Store, stream: BinaryIO, name: str) -> Kept[LogKept]:
    """Keep a logger's file byte for byte and record that it was read."""
    sha, size = keep_file(store, stream, "file")
    return write(store, LogKept(name=name[:200], sha256=sha, size_bytes=size))


def read_kept(
    store: Store,
    kept: LogKept,
    answers: Mapping[str, str] | None = None,
    progress: Callable[[float], None] | None = None,
) -> Log:
    """Read a file that is kept here; ``progress`` hears the share read, 0 to 1. Raises DataError: the file is
    no log.
    """
    with attachments_of(store).open(kept.sha256) as stream:
        return read_log(stream, kept.name, answers, progress, kept.size_bytes)


def core_channels(log: Log) -> tuple[str, ...]:
    """Names of the channels that stood in a piece."""
    return tuple(channel.name for channel in log.of(Role.CORE))


def has_gauge(log: Log) -> bool:
    """Whether a channel holds the pressure."""
    return bool(log.of(Role.GAUGE))
