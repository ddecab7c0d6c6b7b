"""What tests look at in a PDF."""

from __future__ import annotations

import re
import zlib

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


def page_words(data: bytes) -> list[str]:
    """The text of each page of a PDF as Typst writes it, glyph by glyph through each font's own table, lines
    joined by spaces.
    """
    objects = {int(m[1]): m[2] for m in OBJECT.finditer(data)}
    found = []
    for body in objects.values():
        if not re.search(rb"/Type/Page(?![A-Za-z])", body):
            continue
        fonts, lines = _fonts(objects, body), []
        stream = _stream(objects[_number(body, b"Contents")])
        for font, shown in re.findall(rb"/(f\d+) [\d.]+ Tf.*?(\[.*?\]TJ|\(.*?\)\s*Tj)\s*ET", stream, re.S):
            codes = b"".join(_plain(part) for part in re.findall(STRING, shown, re.S))
            glyphs = [codes[i : i + 2] for i in range(0, len(codes), 2)]
            lines.append("".join(fonts[font].get(glyph, "?") for glyph in glyphs))
        found.append(re.sub(r"\s+", " ", " ".join(lines)))
    return found


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


def _number(body: bytes, key: bytes) -> int:
    found = re.search(rb"/" + key + rb" (\d+) 0 R", body)
    assert found, (key, body[:200])
    return int(found[1])


def _stream(body: bytes) -> bytes:
    head, rest = body.split(b"stream\n", 1)
    packed = rest.rsplit(b"\nendstream", 1)[0]
    return zlib.decompress(packed) if b"FlateDecode" in head else packed


def _fonts(objects: dict[int, bytes], page: bytes) -> dict[bytes, dict[bytes, str]]:
    table = re.search(rb"/Font<<(.*?)>>", objects[_number(page, b"Resources")], re.S)
    assert table
    found = {}
    for name, number in re.findall(rb"/(f\d+) (\d+) 0 R", table[1]):
        cmap = _stream(objects[_number(objects[int(number)], b"ToUnicode")])
        pairs = re.findall(rb"<([0-9A-F]{4})> <([0-9A-F]+)>\n", cmap.split(b"endcodespacerange")[1])
        found[name] = {
            bytes.fromhex(a.decode()): bytes.fromhex(b.decode()).decode("utf-16-be") for a, b in pairs
        }
    return found


def _plain(text: bytes) -> bytes:
    def one(m: re.Match[bytes]) -> bytes:
        return bytes([int(m[1], 8)]) if m[1] else ESCAPES.get(m[2], m[2])

    return re.sub(rb"\\(?:([0-7]{1,3})|(.))", one, text, flags=re.S)
