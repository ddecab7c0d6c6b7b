"""Width and height of a picture by its header, before anything is decoded: a small file may unfold to
gigabytes.
"""

from __future__ import annotations

from collections.abc import Iterator

MOST_PIXELS = 40_000_000
"""Largest picture taken: more than a phone's camera gives by default, 160 MB decoded (project's own rule)."""
START_OF_FRAME = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
"""JPEG markers that carry a size (ITU-T T.81, table B.1)."""
BARE = frozenset({0x01, *range(0xD0, 0xD9)})
"""JPEG markers without a length."""


def pixels(content: bytes) -> int | None:
    """Pixels of a PNG (ISO/IEC 15948), GIF89a, JPEG (ITU-T T.81) or WebP (RFC 9649); None where no size can
    be read. Where a file names several sizes the largest counts.
    """
    sizes = [w * h for w, h in _sizes(content)]
    return max(sizes) if sizes and min(sizes) > 0 else None


def _sizes(content: bytes) -> Iterator[tuple[int, int]]:
    if content.startswith(b"\x89PNG\r\n\x1a\n"):
        if content[12:16] == b"IHDR" and len(content) >= 24:
            yield int.from_bytes(content[16:20], "big"), int.from_bytes(content[20:24], "big")
    elif content.startswith((b"GIF87a", b"GIF89a")):
        if len(content) >= 10:
            yield int.from_bytes(content[6:8], "little"), int.from_bytes(content[8:10], "little")
    elif content.startswith(b"\xff\xd8"):
        yield from _jpeg(content)
    elif content.startswith(b"RIFF") and content[8:12] == b"WEBP":
        yield from _webp(content)


def _jpeg(content: bytes) -> Iterator[tuple[int, int]]:
    at = 2
    while (at := content.find(b"\xff", at)) >= 0 and at + 4 <= len(content):
        marker = content[at + 1]
        if marker in (0x00, 0xFF) or marker in BARE:  # data, filling, or a marker that stands alone
            at += 1 if marker == 0xFF else 2
            continue
        length = int.from_bytes(content[at + 2 : at + 4], "big")
        if marker in START_OF_FRAME and at + 9 <= len(content):
            yield (
                int.from_bytes(content[at + 7 : at + 9], "big"),
                int.from_bytes(content[at + 5 : at + 7], "big"),
            )
        at += 2 + max(length, 2)


def _webp(content: bytes) -> Iterator[tuple[int, int]]:
    at = 12
    while at + 8 <= len(content):
        kind, length = content[at : at + 4], int.from_bytes(content[at + 4 : at + 8], "little")
        body = content[at + 8 : at + 18]
        if kind == b"VP8X" and len(body) >= 10:
            yield 1 + int.from_bytes(body[4:7], "little"), 1 + int.from_bytes(body[7:10], "little")
        elif kind == b"VP8L" and len(body) >= 5:
            bits = int.from_bytes(body[1:5], "little")
            yield 1 + (bits & 0x3FFF), 1 + (bits >> 14 & 0x3FFF)
        elif kind == b"VP8 " and len(body) >= 10:
            yield (
                int.from_bytes(body[6:8], "little") & 0x3FFF,
                int.from_bytes(body[8:10], "little") & 0x3FFF,
            )
        at += 8 + length + (length & 1)
