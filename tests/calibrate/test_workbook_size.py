"""A workbook is measured before it is unpacked, by its sheets and by nothing else in it; one that was made to
harm its reader ends a process of its own.
"""

from __future__ import annotations

import io
import resource
import subprocess
import sys
import zipfile
from concurrent.futures import ThreadPoolExecutor

import pytest

from frywright.model.errors import DataError
from frywright.tables.sheet import _measured, text_of
from frywright.tables.workbook import MEMORY_BYTES

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


MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
PACKAGE = "http://schemas.openxmlformats.org/package/2006"
TYPES = (
    f'<Types xmlns="{PACKAGE}/content-types">'
    f'<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
    '<Override PartName="/xl/workbook.xml" ContentType='
    '"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/></Types>'
)


def linked(links: str) -> str:
    return f'<Relationships xmlns="{PACKAGE}/relationships">{links}</Relationships>'


def opened(sheet: str, rows: str, shared: str = "") -> bytes:
    """A whole workbook (ECMA-376, part 1): its sheet under a name, and texts that cells share."""
    named = {"worksheet": sheet, "sharedStrings": "sharedStrings.xml"}
    links = "".join(
        f'<Relationship Id="{kind}" Type="{OFFICE}/{kind}" Target="{to}"/>' for kind, to in named.items()
    )
    top = f'<Relationship Id="a" Type="{OFFICE}/officeDocument" Target="xl/workbook.xml"/>'
    parts = {
        "[Content_Types].xml": TYPES,
        "_rels/.rels": linked(top),
        "xl/_rels/workbook.xml.rels": linked(links),
        "xl/workbook.xml": f'<workbook xmlns="{MAIN}" xmlns:r="{OFFICE}"><sheets><sheet name="a" sheetId="1"'
        ' r:id="worksheet"/></sheets></workbook>',
        f"xl/{sheet}": f'<worksheet xmlns="{MAIN}"><sheetData>{rows}</sheetData></worksheet>',
        "xl/sharedStrings.xml": f'<sst xmlns="{MAIN}"><si><t>{shared}</t></si></sst>',
    }
    return workbook(**{name: text.encode() for name, text in parts.items()})


SHARES = '<c t="s"><v>0</v></c>'


def test_a_workbook_is_read():
    """Numbers, and texts that cells share; the same under any name of its sheet."""
    rows = f"<row>{SHARES}<c><v>2</v></c></row><row>{SHARES}</row>"
    for sheet in ("worksheets/sheet1.xml", "s.xml"):
        assert text_of(opened(sheet, rows, "wing"), "till.xlsx") == b"wing\t2\nwing\t"


def test_workbooks_are_read_one_at_a_time(monkeypatch):
    """Of four that come at once none is begun before the one before it has ended."""
    run, here, most = subprocess.run, [], []

    def read(*words, **more):
        here.append(1)
        most.append(len(here))
        done = run(*words, **more)
        here.pop()
        return done

    monkeypatch.setattr(subprocess, "run", read)
    data = opened("s.xml", f"<row>{SHARES}</row>", "wing")
    with ThreadPoolExecutor(4) as pool:
        assert set(pool.map(text_of, [data] * 4, ["till.xlsx"] * 4)) == {b"wing"}
    assert most == [1] * 4


@pytest.mark.parametrize(
    ("rows", "shared"),
    [
        ('<row><c r="A1"><v>1</v></c></row><row><c r="XFD1048576"><v>1</v></c></row>', ""),
        (f"<row>{SHARES * 2000}</row>", "a" * 1_000_000),
    ],
    ids=["a far cell in a sheet where none is looked for", "a long text that all cells share"],
)
def test_a_workbook_made_to_harm_is_refused_and_nobody_else_is_hurt(rows, shared):
    """Its reader asks for half a terabyte, or for two gigabytes of text: it ends, this process goes on."""
    with pytest.raises(DataError, match="cannot be read"):
        text_of(opened("s.xml", rows, shared), "till.xlsx")
    assert 1000 * resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss < 1.1 * MEMORY_BYTES


def test_the_process_that_reads_a_workbook_takes_no_more_than_its_bounds():
    """1.5 GB and a minute of the processor, set in that process alone."""
    limits = "print(*resource.getrlimit(resource.RLIMIT_AS), *resource.getrlimit(resource.RLIMIT_CPU))"
    program = f"import resource; from frywright.tables.workbook import _bounded; _bounded(); {limits}"
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["1500000000", "1500000000", "60", "60"]
