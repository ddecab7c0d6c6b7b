"""Photos kept beside the store: only what decodes as a picture, of bounded size."""

from __future__ import annotations

import io
from typing import BinaryIO

from frywright.ledger.store import Store
from frywright.model.errors import InputError, Phrase
from frywright.paper.paper import is_picture
from frywright.rooms.files import keep_file

LARGEST_PHOTO_BYTES = 12_000_000


def keep_photo(store: Store, photo: BinaryIO) -> str:
    """Keep a photo byte for byte; the name of its content. Raises InputError: it is no picture that can be
    printed, or too large.
    """
    data = photo.read(LARGEST_PHOTO_BYTES + 1)
    if len(data) > LARGEST_PHOTO_BYTES or not is_picture(data):
        raise InputError(
            "photo",
            Phrase("{count} bytes", {"count": len(data)}),
            "a JPEG, PNG, GIF or WebP picture of up to 12 MB and 40 million pixels",
        )
    return keep_file(store, io.BytesIO(data), "photo")[0]
