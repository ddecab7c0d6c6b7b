"""Files that pages load. Their addresses carry a mark of their content, so a browser keeps them for good and
a changed one has another address.
"""

from __future__ import annotations

import hashlib
from pathlib import Path

from fastapi import Response
from fastapi.staticfiles import StaticFiles
from starlette.types import Scope

FOR_GOOD = "public, max-age=31536000, immutable"
A_MONTH = "public, max-age=2592000"
ASK_AGAIN = "no-cache"
MARK_LETTERS = 12


def mark_of(folder: Path) -> str:
    """A mark of the names and contents of a folder's files."""
    found = hashlib.sha256()
    for path in sorted(p for p in folder.rglob("*") if p.is_file()):
        found.update(path.name.encode() + b"\0" + path.read_bytes() + b"\0")
    return found.hexdigest()[:MARK_LETTERS]


class Marked(StaticFiles):
    """A folder whose files are kept for good under ``/<mark>/name`` and asked for again under ``/name``."""

    def __init__(self, folder: Path) -> None:
        super().__init__(directory=folder)
        self.mark = mark_of(folder)

    async def get_response(self, path: str, scope: Scope) -> Response:
        """The file, under its marked address or its plain one."""
        first, _, rest = path.partition("/")
        marked = first == self.mark
        answer = await super().get_response(rest if marked else path, scope)
        answer.headers["Cache-Control"] = FOR_GOOD if marked else ASK_AGAIN
        return answer


class Fonts(StaticFiles):
    """The typeface, which changes only with a release."""

    async def get_response(self, path: str, scope: Scope) -> Response:
        """A font, kept for a month."""
        answer = await super().get_response(path, scope)
        answer.headers["Cache-Control"] = A_MONTH
        return answer
