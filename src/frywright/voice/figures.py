"""Figures as a language writes them, in one place: pages, papers and pictures are made with a decimal point,
and here it becomes the kitchen's mark. What programs read (JSON, CSV, kitchen files) does not come here.
"""

from __future__ import annotations

import re
from typing import Any

from frywright.model.tongues import tongues

POINT = "."
FIGURE = re.compile(
    r"(?<![\w.,:/§#-])(?<!§ )(?<!CFR )"  # no part of a word, a clock, an address, a paragraph of a law
    r"(?!20\d\d\.(?:0[1-9]|1[0-2])\b)"  # no version of a catalog, such as 2026.11
    r"(-?\d+)\.(\d+)"
    r"(?!\w|[.,:/-]\w)"
)
PIECE = re.compile(
    r"<(script|style|textarea|code|pre)\b.*?</\1>|<option>.*?</option>|<[^>]*>|[^<]+", re.DOTALL | re.I
)
"""What stays as it is (programs, what was typed, what is sent as it reads), a tag, or text."""
HEARD = re.compile(r'(\s(?:aria-label|aria-description|title|placeholder|alt|aria-valuetext)=")([^"]*)"')
TYPED = re.compile(r'(\svalue=")(-?\d+)\.(\d{1,2}|\d{4,})"')
"""A figure in a box; three decimals stay, since with a comma they could be thousands."""


def mark_of(language: str, system: str) -> str:
    """The decimal mark of a language in a kitchen of these units."""
    return tongues()[language].decimal if system == "metric" and language in tongues() else POINT


def written(text: str, mark: str) -> str:
    """A text with its figures as people write them."""
    return FIGURE.sub(rf"\g<1>{mark}\g<2>", text) if mark != POINT else text


def written_page(page: str, mark: str) -> str:
    """A page or a picture: what is read, heard and stands in boxes for figures; no program and no address."""
    if mark == POINT:
        return page

    def piece(found: re.Match[str]) -> str:
        text = found[0]
        if text[0] != "<":
            return written(text, mark)
        if found[1] or text.startswith("<option>"):
            return text
        if 'inputmode="decimal"' in text:
            text = TYPED.sub(rf'\g<1>\g<2>{mark}\g<3>"', text)
        return (
            HEARD.sub(lambda heard: f'{heard[1]}{written(heard[2], mark)}"', text) if '="' in text else text
        )

    return PIECE.sub(piece, page)


def written_data(data: Any, mark: str) -> Any:
    """Every text of plain values; pictures within keep their places."""
    if isinstance(data, dict):
        return {key: written_data(value, mark) for key, value in data.items()}
    if isinstance(data, list):
        return [written_data(value, mark) for value in data]
    if not isinstance(data, str):
        return data
    return written_page(data, mark) if data.startswith("<svg") else written(data, mark)
