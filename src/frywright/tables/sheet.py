"""A workbook (XLSX) as text: its fullest sheet, one line a row, tabs between the cells.

A workbook is a zip that anybody may have made, so its size, rows and columns are measured before it is
opened: a cell named far away would make the reader hold all the empty ones before it. What that does not
see, such as one long text that thousands of cells share, ends a process of its own.
"""

from __future__ import annotations

import io
import re
import subprocess
import sys
import zipfile
from threading import Lock

from frywright.model.errors import DataError
from frywright.model.findings import Problem
from frywright.tables import workbook

MOST_BYTES, MOST_CELLS, MOST_FILES = 64 * 1024 * 1024, 3_000_000, 2_000
"""Bounds of a workbook unpacked (own choice): a year of a till's lines is a tenth of it."""
PLACE = re.compile(rb"""\br\s*=\s*["']([A-Za-z]{0,4})(\d{1,8})["']""")
CELL = re.compile(rb"<(?:\w+:)?c[\s/>]")
_ONE = Lock()
"""Workbooks are read one at a time: each may take all the memory that one may."""


def is_workbook(data: bytes) -> bool:
    """Whether bytes are a zip, as every XLSX is."""
    return data.startswith(b"PK\x03\x04")


def text_of(data: bytes, name: str) -> bytes:
    """The fullest sheet of a workbook as UTF-8 text. Raises DataError: no workbook, one with a password, or
    one beyond the bounds.
    """
    _measured(data, name)
    try:
        words = [sys.executable, "-P", "-m", workbook.__name__]
        with _ONE:
            done = subprocess.run(
                words, input=data, capture_output=True, timeout=2 * workbook.READ_S, check=False
            )
    except (subprocess.TimeoutExpired, OSError) as error:
        raise _refused(name, "the workbook cannot be read") from error
    if done.returncode:
        raise _refused(name, "the workbook cannot be read")
    return done.stdout


def _measured(data: bytes, name: str) -> None:
    try:
        book = zipfile.ZipFile(io.BytesIO(data))
        parts = book.infolist()
        if not any(part.filename == "xl/workbook.xml" for part in parts):
            raise _refused(name, "the file is no workbook")
        if len(parts) > MOST_FILES or sum(part.file_size for part in parts) > MOST_BYTES:
            raise _refused(name, "the workbook is too large")
        for part in parts:
            if part.filename.startswith("xl/worksheets/") and part.filename.endswith(".xml"):
                with book.open(part) as stream:
                    _sheet_measured(stream.read(MOST_BYTES + 1), name)
    except (zipfile.BadZipFile, NotImplementedError, RuntimeError, EOFError, OSError) as error:
        raise _refused(name, "the workbook cannot be read") from error


def _sheet_measured(text: bytes, name: str) -> None:
    rows, columns = 1, 1
    for letters, number in PLACE.findall(text):
        rows, place = max(rows, int(number)), 0
        for letter in letters.upper():
            place = 26 * place + letter - 64
        columns = max(columns, place)
    if rows * columns > MOST_CELLS or len(CELL.findall(text)) > MOST_CELLS or len(text) > MOST_BYTES:
        raise _refused(name, "the workbook is too large")


def _refused(name: str, what: str) -> DataError:
    return DataError(
        [Problem(what=what, remedy="Save one sheet as CSV, or as XLSX without a password.", file=name)]
    )
