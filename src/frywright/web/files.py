"""Files that pages load. Their addresses carry a mark of their content, so a browser keeps them for good and
a changed one has another address.
"""

from __future__ import annotations

import gzip
import hashlib
from pathlib import Path

from fastapi import Response
from fastapi.responses import FileResponse
from fastapi.staticfiles import StaticFiles
from starlette.datastructures import Headers
from starlette.types import Scope

FOR_GOOD = "public, max-age=31536000, immutable"
ASK_AGAIN = "no-cache"
MARK_LETTERS = 12
WORDS = (".css", ".js")
"""Files that pack well; a typeface is packed already."""


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
        self._packed: dict[str, bytes] = {}

    async def get_response(self, path: str, scope: Scope) -> Response:
        """The file, under its marked address or its plain one."""
        first, _, rest = path.partition("/")
        marked = first == self.mark
        name = rest if marked else path
        answer = await super().get_response(name, scope)
        answer.headers["Cache-Control"] = FOR_GOOD if marked else ASK_AGAIN
        asked = Headers(scope=scope)
        packs = name.endswith(WORDS) and "gzip" in asked.get("accept-encoding", "") and "range" not in asked
        if isinstance(answer, FileResponse) and packs and scope["method"] == "GET":
            return self._packed_answer(answer)
        return answer

    def _packed_answer(self, answer: FileResponse) -> Response:
        """A file packed as hard as it goes, once for everybody."""
        place = str(answer.path)
        if place not in self._packed:
            self._packed[place] = gzip.compress(Path(place).read_bytes(), 9, mtime=0)
        kept = ("cache-control", "content-type", "etag", "last-modified")
        told = {name: answer.headers[name] for name in kept}
        told |= {"Content-Encoding": "gzip", "Vary": "Accept-Encoding"}
        return Response(self._packed[place], headers=told)
