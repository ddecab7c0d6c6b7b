"""A workbook is measured before it is unpacked, by its sheets and by nothing else in it."""

from __future__ import annotations

import io
import zipfile

import pytest

from frywright.model.errors import DataError
from frywright.tables.sheet import _measured

FAR = b'<c r="XFD1048576"/>'
"""The last cell a sheet can have (ECMA-376, part 1: 16,384 columns by 1,048,576 rows)."""


def workbook(**parts: bytes) -> bytes:
    found = io.BytesIO()
    with zipfile.ZipFile(found, "w") as book:
        for name, content in {"xl/workbook.xml": b"<workbook/>", **parts}.items():
            book.writestr(name, content)
    return found.getvalue()


def test_a_sheet_that_would_fill_the_memory_is_refused():
    """Far more cells than any log has; the same reference elsewhere in the workbook is no cell."""
    with pytest.raises(DataError, match="too large"):
        _measured(workbook(**{"xl/worksheets/sheet1.xml": FAR}), "log.xlsx")
    for harmless in ("xl/calcChain.xml", "xl/worksheets/notes.txt", "docProps/custom.xml"):
        _measured(workbook(**{harmless: FAR, "xl/worksheets/sheet1.xml": b'<c r="B2"/>'}), "log.xlsx")


@pytest.mark.parametrize("data", [b"PK\x03\x04 and no more", b""])
def test_what_cannot_be_unpacked_is_refused(data):
    with pytest.raises(DataError, match="cannot be read"):
        _measured(data, "log.xlsx")


def test_an_archive_of_something_else_is_refused():
    found = io.BytesIO()
    with zipfile.ZipFile(found, "w") as book:
        book.writestr("letter.txt", b"Dear all")
    with pytest.raises(DataError, match="no workbook"):
        _measured(found.getvalue(), "log.xlsx")
