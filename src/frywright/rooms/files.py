"""Original files that people hand in, kept byte for byte: within a bound for each kitchen, and for each
person and day, so that nobody fills the disk that the record needs.
"""

from __future__ import annotations

import hashlib
import os
from dataclasses import dataclass
from typing import BinaryIO

from frywright.ledger.attachments import BLOCK_BYTES, attachments_of
from frywright.ledger.quota import Held, hand_in, held
from frywright.ledger.store import Store
from frywright.model.errors import Amount, InputError, Phrase
from frywright.rooms.clock import here, now

MOST_FILES_A_DAY, MOST_BYTES_A_DAY = 100, 400_000_000
"""What one person may hand in within a day, by UTC: a photo at each step of three closes, or two long logs
(project's own rule).
"""
KITCHEN_GB, KITCHEN_SETTING = 20.0, "FRYWRIGHT_KITCHEN_FILES_GB"
"""What the files of one kitchen may take, and the environment variable that says otherwise (project's own
rule).
"""
GB = 1e9


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """What the files of a kitchen take, of what they may."""

    held_bytes: int
    most_bytes: int

    @property
    def words(self) -> dict[str, str]:
        """What people read of it, and of what one person may hand in."""
        left = max(0, self.most_bytes - self.held_bytes)
        return {
            "held": f"{self.held_bytes / GB:.2f}",
            "most": f"{self.most_bytes / GB:g}",
            "left": f"{left / GB:.2f}",
            "files": str(MOST_FILES_A_DAY),
            "mb": str(MOST_BYTES_A_DAY // 1_000_000),
        }


def room_of(store: Store) -> Room:
    """How much room the files of a kitchen take and have."""
    return Room(held_bytes=held(store).kitchen_bytes, most_bytes=round(_most_gb() * GB))


def _most_gb() -> float:
    try:
        return float(os.environ.get(KITCHEN_SETTING, "") or KITCHEN_GB)
    except ValueError:
        return KITCHEN_GB


def keep_file(store: Store, stream: BinaryIO, field: str, *, by_person: bool = True) -> tuple[str, int]:
    """Keep a file; the name of its content and its size. One that is here already takes no room.
    Raises InputError: the kitchen's room is used up, or what one person may hand in within a day.

    Parameters
    ----------
    field : what the file is called where it cannot be kept
    by_person : whether a person hands it in, and not a whole site
    """
    files, (name, size) = attachments_of(store), _measured(stream)
    if not (files.folder / name).is_file():
        who, day = here().author if by_person else "", now().date().isoformat()
        with store.writing():
            _within(held(store, who, day), size, field, by_person)
            hand_in(store, who, day, size)
    return files.keep(stream)


def _measured(stream: BinaryIO) -> tuple[str, int]:
    digest, size = hashlib.sha256(), 0
    start = stream.tell()
    while block := stream.read(BLOCK_BYTES):
        digest.update(block)
        size += len(block)
    stream.seek(start)
    return digest.hexdigest(), size


def _within(before: Held, size: int, field: str, by_person: bool) -> None:
    most_gb = _most_gb()
    if before.kitchen_bytes + size > most_gb * GB:
        used = {"held": Amount(before.kitchen_bytes / GB), "most": Amount(most_gb)}
        raise InputError(
            field,
            Phrase("{held} of {most} GB are used", used),
            "kept once whoever runs this server gives this kitchen more room",
        )
    if by_person and before.day_count + 1 > MOST_FILES_A_DAY:
        raise InputError(
            field,
            Phrase("{count} files today", {"count": before.day_count}),
            "{most} a day by one person: go on tomorrow, or let somebody else hand it in",
            most=MOST_FILES_A_DAY,
        )
    if by_person and before.day_bytes + size > MOST_BYTES_A_DAY:
        raise InputError(
            field,
            Phrase("{count} MB today", {"count": before.day_bytes // 1_000_000}),
            "{most} MB a day by one person: go on tomorrow, or let somebody else hand it in",
            most=MOST_BYTES_A_DAY // 1_000_000,
        )
