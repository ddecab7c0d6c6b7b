"""What tests look at in a PDF."""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator
from dataclasses import dataclass

OBJECT = re.compile(rb"(\d+) 0 obj\n(.*?)\nendobj", re.S)
STRING = rb"\((.*?)\)(?=[-\d.]*[(\]]|\s*Tj)"
"""A string of a text operator; brackets that balance stand in it as they are."""
ESCAPES = {b"n": b"\n", b"r": b"\r", b"t": b"\t", b"b": b"\b", b"f": b"\f"}


def pages(data: bytes) -> int:
    """Number of pages of a PDF as Typst writes it."""
    return len(re.findall(rb"/Type\s*/Page(?![A-Za-z])", data))


def words(data: bytes) -> str:
    """All text of a PDF."""
    return " ".join(page_words(data))


TEXT = re.compile(
    rb"(?:q 1 0 0 -1 ([\d.]+) ([\d.]+) cm[^\n]*\n)?BT[^\n]*?/(f\d+) ([\d.]+) Tf[^\n]*?"
    rb"(\[.*?\]TJ|\(.*?\)\s*Tj)\s*ET",
    re.S,
)
"""A run of text: where it stands if it is upright, its font, its size, its strings."""
TOUCH_PT = 0.3
"""Runs nearer than this are one word: digits are of another face than the letters beside them."""


@dataclass(frozen=True)
class Font:
    """What each glyph of a font says, and how wide it is [thousandths of the size]."""

    says: dict[bytes, str]
    width: dict[bytes, float]


def page_words(data: bytes) -> list[str]:
    """The text of each page of a PDF as Typst writes it, glyph by glyph through each font's own table, lines
    joined by spaces; runs that touch are joined without.
    """
    objects = {int(m[1]): m[2] for m in OBJECT.finditer(data)}
    found = []
    for body in objects.values():
        if not re.search(rb"/Type/Page(?![A-Za-z])", body):
            continue
        fonts, text, end = _fonts(objects, body), "", (0.0, 0.0)
        for x, y, font, size, shown in TEXT.findall(_stream(objects[_number(body, b"Contents")])):
            said, width = _run(fonts[font], float(size), shown)
            here = (float(x), float(y)) if x else (0.0, 0.0)
            touches = here[1] == end[1] > 0.0 and abs(here[0] - end[0]) < TOUCH_PT
            text += said if touches else f" {said}"
            end = (here[0] + width, here[1])
        found.append(re.sub(r"\s+", " ", text.strip()))
    return found


def _run(font: Font, size: float, shown: bytes) -> tuple[str, float]:
    """Text of a run and its width [pt]; numbers between the strings are thousandths of the size less."""
    codes = b"".join(_plain(part) for part in re.findall(STRING, shown, re.S))
    glyphs = [codes[i : i + 2] for i in range(0, len(codes), 2)]
    less = sum(float(n) for n in re.findall(rb"\)(-?[\d.]+)(?=\()", shown))
    width = sum(font.width.get(glyph, 0.0) for glyph in glyphs) - less
    return "".join(font.says.get(glyph, "?") for glyph in glyphs), width * size / 1000.0


RUN = re.compile(rb"q 1 0 0 -1 ([\d.]+) ([\d.]+) cm(?:(?!\nQ).)*?/f\d+ ([\d.]+) Tf", re.S)


def sizes(data: bytes) -> list[list[tuple[float, float]]]:
    """Of each page: the height of the baseline over its foot [pt] and the size [pt] of every run of text."""
    objects = {int(m[1]): m[2] for m in OBJECT.finditer(data)}
    found = []
    for body in objects.values():
        if re.search(rb"/Type/Page(?![A-Za-z])", body):
            stream = _stream(objects[_number(body, b"Contents")])
            found.append([(float(m[2]), float(m[3])) for m in RUN.finditer(stream)])
    return found


def faces_of_digits(data: bytes) -> set[str]:
    """The faces, without the letters of their weight, that any digit of a PDF is set in, pictures too."""
    objects = {int(m[1]): m[2] for m in OBJECT.finditer(data)}
    found = set()
    for body in objects.values():
        name = re.search(rb"/BaseFont/[A-Z]{6}\+([A-Za-z]+)", body)
        if name and b"/ToUnicode" in body:
            cmap = _stream(objects[_number(body, b"ToUnicode")]).split(b"endcodespacerange")[1]
            if re.search(rb"> <003[0-9]>", cmap):
                found.add(name[1].decode())
    return found


DRAWN = re.compile(rb"q ([\d.]+) 0 0 ([\d.]+) ([\d.]+) [\d.]+ cm/x\d+ Do")


def pictures(data: bytes) -> list[tuple[float, float, float]]:
    """Width, height and left edge [pt] of every picture made of pixels."""
    objects = {int(m[1]): m[2] for m in OBJECT.finditer(data)}
    pages = [body for body in objects.values() if re.search(rb"/Type/Page(?![A-Za-z])", body)]
    streams = [_stream(objects[_number(body, b"Contents")]) for body in pages]
    return [(float(m[1]), float(m[2]), float(m[3])) for found in streams for m in DRAWN.finditer(found)]


def _number(body: bytes, key: bytes) -> int:
    found = re.search(rb"/" + key + rb" (\d+) 0 R", body)
    assert found, (key, body[:200])
    return int(found[1])


def _stream(body: bytes) -> bytes:
    head, rest = body.split(b"stream\n", 1)
    packed = rest.rsplit(b"\nendstream", 1)[0]
    return zlib.decompress(packed) if b"FlateDecode" in head else packed


def _fonts(objects: dict[int, bytes], page: bytes) -> dict[bytes, Font]:
    table = re.search(rb"/Font<<(.*?)>>", objects[_number(page, b"Resources")], re.S)
    assert table
    found = {}
    for name, number in re.findall(rb"/(f\d+) (\d+) 0 R", table[1]):
        font = objects[int(number)]
        cmap = _stream(objects[_number(font, b"ToUnicode")])
        pairs = re.findall(rb"<([0-9A-F]{4})> <([0-9A-F]+)>\n", cmap.split(b"endcodespacerange")[1])
        inner = re.search(rb"/DescendantFonts\[(\d+) 0 R\]", font)
        assert inner
        widths = re.search(rb"/W\[([^\]]*)\]", objects[int(inner[1])])
        assert widths
        found[name] = Font(
            says={bytes.fromhex(a.decode()): bytes.fromhex(b.decode()).decode("utf-16-be") for a, b in pairs},
            width={
                glyph.to_bytes(2, "big"): float(wide)
                for first, last, wide in _threes(widths[1].split())
                for glyph in range(int(first), int(last) + 1)
            },
        )
    return found


def _threes(numbers: list[bytes]) -> Iterator[tuple[bytes, bytes, bytes]]:
    """Three by three: first glyph, last glyph, width."""
    return zip(numbers[::3], numbers[1::3], numbers[2::3], strict=True)


def _plain(text: bytes) -> bytes:
    def one(m: re.Match[bytes]) -> bytes:
        return bytes([int(m[1], 8)]) if m[1] else ESCAPES.get(m[2], m[2])

    return re.sub(rb"\\(?:([0-7]{1,3})|(.))", one, text, flags=re.S)
