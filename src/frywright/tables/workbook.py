"""A process of its own that reads a workbook from its standard input and writes its fullest sheet as text:
whatever a workbook made to harm does to its reader, it does it here, within bounds.
"""

from __future__ import annotations

import datetime as dt
import io
import sys
from typing import Any

MEMORY_BYTES, READ_S, MOST_LETTERS = 1_500_000_000, 60, 200_000_000
"""Most memory, longest time and longest text of one reading (own choice)."""


def fullest_sheet(data: bytes) -> str:
    """The fullest sheet of a workbook, one line a row, tabs between the cells."""
    from python_calamine import CalamineWorkbook

    book = CalamineWorkbook.from_filelike(io.BytesIO(data))
    sheets = [book.get_sheet_by_index(n).to_python() for n in range(len(book.sheet_names))]
    best = max(
        sheets, key=lambda rows: sum(cell not in ("", None) for row in rows for cell in row), default=[]
    )
    return "\n".join("\t".join(_cell(cell) for cell in row) for row in best)


def _cell(value: Any) -> str:
    """A cell as text that the readers of tables know."""
    if isinstance(value, dt.datetime):
        return value.strftime("%Y-%m-%d %H:%M:%S") if value.time() != dt.time() else value.date().isoformat()
    if isinstance(value, dt.timedelta):
        return f"{int(value.total_seconds()) // 3600:02d}:{int(value.total_seconds()) // 60 % 60:02d}"
    if isinstance(value, float) and value.is_integer():
        return str(int(value))
    return " ".join(str(value).split()) if value is not None else ""


def _bounded() -> None:
    """Take no more memory and time than one reading may, where the system can hold a process to it."""
    try:
        import resource
    except ImportError:
        return
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY_BYTES, MEMORY_BYTES))
    resource.setrlimit(resource.RLIMIT_CPU, (READ_S, READ_S))


if __name__ == "__main__":
    _bounded()
    text = fullest_sheet(sys.stdin.buffer.read())
    if len(text) > MOST_LETTERS:
        sys.exit(1)
    sys.stdout.buffer.write(text.encode())
