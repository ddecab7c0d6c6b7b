"""Paper by Typst: fonts from the package only, fixed time stamp, so that the same card is the same file."""

from __future__ import annotations

import json
import tempfile
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from threading import Lock
from typing import Any

from frywright.model.plain import plain
from frywright.paper.fonts import digits_folder, folder
from frywright.paper.pixels import MOST_PIXELS, pixels
from frywright.voice.figures import mark_of, written_data

TEMPLATES = Path(__file__).parent / "templates"
FIT = "fit.typ"
"""What templates share."""
PAPER = {"us": "us-letter", "metric": "a4"}
"""Sheet by the kitchen's units."""
SIGNS = {b"\xff\xd8\xff": "jpg", b"\x89PNG\r\n\x1a\n": "png", b"GIF8": "gif", b"RIFF": "webp"}
"""First bytes of the pictures that can be printed."""
ONE_PICTURE = Lock()
"""Pictures are tried one at a time: each may take its decoded size in memory."""


def pdf(template: str, name: str, data: Any, pictures: Mapping[str, bytes] | None = None) -> bytes:
    """Compile a template with its data to PDF; ``pictures`` are files it may show, by the name it knows them
    by.
    """
    import typst

    if not pictures:
        return _compiled(typst, TEMPLATES / template, name, data)
    with tempfile.TemporaryDirectory() as place:
        root = Path(place)
        for source in (template, FIT):
            (root / source).write_text((TEMPLATES / source).read_text("utf-8"), "utf-8")
        for file, content in pictures.items():
            (root / file).write_bytes(content)
        return _compiled(typst, root / template, name, data)


def _compiled(typst: Any, path: Path, name: str, data: Any) -> bytes:
    return bytes(
        typst.compile(
            path,
            font_paths=[folder(), digits_folder()],
            ignore_system_fonts=True,
            format="pdf",
            sys_inputs={name: json.dumps(_written(plain(data)), ensure_ascii=False)},
            timestamp=0,
        )
    )


def _written(data: Any) -> Any:
    """What stands on paper, its figures with the mark of its language in the kitchen whose sheet it is."""
    if isinstance(data, list):
        return [_written(one) for one in data]
    system = next(units for units, sheet in PAPER.items() if sheet == data["paper"])
    return written_data(data, mark_of(data["language"], system))


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A titled table as the templates take it; ``columns`` are widths against each other."""

    title: str
    header: list[str]
    columns: list[int]
    rows: list[list[str]]
    empty: str = "–"
    note: str = ""
    """What stands between the title and the table, such as what was left out."""


def section(
    title: str, header: list[str], columns: list[int], rows: list[list[str]], empty: str = "–"
) -> Section:
    """A titled table."""
    return Section(title=title, header=header, columns=columns, rows=rows, empty=empty)


def picture_type(content: bytes) -> str:
    """File ending of a picture by its first bytes; empty for anything else."""
    return next((kind for sign, kind in SIGNS.items() if content.startswith(sign)), "")


def is_picture(content: bytes) -> bool:
    """Whether a picture can really be printed: its first bytes say so, it is of a size to be decoded, and it
    decodes.
    """
    kind, size = picture_type(content), pixels(content)
    if not kind or size is None or size > MOST_PIXELS:
        return False
    import typst

    with tempfile.TemporaryDirectory() as place:
        root = Path(place)
        (root / f"p.{kind}").write_bytes(content)
        (root / "p.typ").write_text(f'#image("p.{kind}", width: 20mm)', "utf-8")
        try:
            with ONE_PICTURE:
                typst.compile(root / "p.typ", format="pdf")
        except (typst.TypstError, RuntimeError):
            return False
    return True
