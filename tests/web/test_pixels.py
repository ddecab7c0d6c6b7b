"""A small picture that unfolds to gigabytes is refused by its header, before anything is decoded."""

from __future__ import annotations

import io
import struct
import time
import zlib

import pytest

from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.paper.paper import is_picture
from frywright.paper.pixels import MOST_PIXELS, pixels
from frywright.rooms.clock import now
from frywright.rooms.photos import keep_photo


def png(width, height):
    """A black picture of any size, one bit a pixel, packed small."""

    def chunk(kind, body):
        return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))

    rows = zlib.compressobj(9)
    line = b"\0" + bytes((width + 7) // 8)
    packed = b"".join(rows.compress(line) for _ in range(height)) + rows.flush()
    head = struct.pack(">IIBBBBB", width, height, 1, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", packed) + chunk(b"IEND", b"")


def jpeg(width, height, before=b""):
    frame = b"\xff\xc0" + struct.pack(">HBHHB", 11, 8, height, width, 1) + b"\x01\x11\x00"
    return b"\xff\xd8" + before + frame + b"\xff\xd9"


def webp(kind, body):
    chunk = kind + struct.pack("<I", len(body)) + body
    return b"RIFF" + struct.pack("<I", 4 + len(chunk)) + b"WEBP" + chunk


CANVAS = b"\0\0\0\0" + (19_999).to_bytes(3, "little") + (49_999).to_bytes(3, "little")
LOSSLESS = b"\x2f" + (16_382 | 16_382 << 14).to_bytes(4, "little")
LOSSY = b"\0\0\0\x9d\x01\x2a" + struct.pack("<HH", 16_000, 16_000)


@pytest.mark.parametrize(
    ("content", "count"),
    [
        (png(300, 20), 6_000),
        (jpeg(640, 480), 307_200),
        (jpeg(60_000, 50_000, b"\xff\xe1\x00\x06ab\xff\xc0"), 3_000_000_000),
        (jpeg(60_000, 50_000) + jpeg(10, 10)[2:], 3_000_000_000),
        (b"GIF89a" + struct.pack("<HH", 30_000, 2) + bytes(20), 60_000),
        (webp(b"VP8X", CANVAS), 1_000_000_000),
        (webp(b"VP8L", LOSSLESS), 16_383**2),
        (webp(b"VP8 ", LOSSY), 256_000_000),
        (b"\xff\xd8\xff\xe0" + bytes(50), None),
        (b"\xff\xd8" + b"\xff" * 200_000, None),
        (b"RIFFxxxxWEBP", None),
        (b"%PDF", None),
        (jpeg(0, 480), None),
    ],
)
def test_the_size_stands_in_the_header(content, count):
    """Of each kind that is taken, and None where there is none; the largest of several."""
    assert pixels(content) == count


def test_a_picture_that_unfolds_to_gigabytes_is_refused_at_once(tmp_path):
    """A few kilobytes, a thousand million pixels: no second, no memory; one just below the limit is taken."""
    bomb = png(100_000, 10_000)
    assert len(bomb) < 300_000
    store = Store.file(tmp_path / "p.db", now)
    begun = time.thread_time()
    with pytest.raises(InputError, match="40 million pixels"):
        keep_photo(store, io.BytesIO(bomb))
    assert time.thread_time() - begun < 0.5
    assert not (tmp_path / "p.db.files").exists()
    assert pixels(png(8_000, 5_000)) == MOST_PIXELS


def test_an_ordinary_picture_is_printed_as_before():
    """It still has to decode: a header alone is no picture."""
    assert is_picture(png(64, 48))
    assert not is_picture(jpeg(64, 48))
    assert not is_picture(png(64, 48)[:40])
