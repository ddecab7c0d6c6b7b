"""Workbooks as text: cells as tills write them, bounds that hold before anything is unpacked."""

from __future__ import annotations

import io
import zipfile

import pytest

from frywright.model.errors import DataError
from frywright.tables.sheet import is_workbook, text_of

SPACE = "http://schemas.openxmlformats.org"
BOOK = (
    f'<workbook xmlns="{SPACE}/spreadsheetml/2006/main"'
    f' xmlns:r="{SPACE}/officeDocument/2006/relationships">'
    '<sheets><sheet name="A" sheetId="1" r:id="rId1"/></sheets></workbook>'
)
LINKS = (
    f'<Relationships xmlns="{SPACE}/package/2006/relationships">'
    f'<Relationship Id="rId1" Type="{SPACE}/officeDocument/2006/relationships/worksheet"'
    ' Target="worksheets/sheet1.xml"/>'
    f'<Relationship Id="rId2" Type="{SPACE}/officeDocument/2006/relationships/styles"'
    ' Target="styles.xml"/></Relationships>'
)
ROOT = (
    f'<Relationships xmlns="{SPACE}/package/2006/relationships"><Relationship Id="rId1"'
    f' Type="{SPACE}/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/>'
    "</Relationships>"
)
TYPES = f'<Types xmlns="{SPACE}/package/2006/content-types"/>'
STYLES = (
    f'<styleSheet xmlns="{SPACE}/spreadsheetml/2006/main"><cellXfs count="2">'
    '<xf numFmtId="0"/><xf numFmtId="22"/></cellXfs></styleSheet>'
)


def workbook(cells, **extra):
    """A workbook (ECMA-376) of one sheet with these cells in XML."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as book:
        book.writestr("xl/workbook.xml", BOOK)
        book.writestr("xl/_rels/workbook.xml.rels", LINKS)
        book.writestr("xl/styles.xml", STYLES)
        head = f'<worksheet xmlns="{SPACE}/spreadsheetml/2006/main"><sheetData>'
        book.writestr("xl/worksheets/sheet1.xml", f"{head}{cells}</sheetData></worksheet>")
        book.writestr("[Content_Types].xml", TYPES)
        book.writestr("_rels/.rels", ROOT)
        for name, data in extra.items():
            book.writestr(name, data)
    return out.getvalue()


def text(place, words):
    """A cell with words in it."""
    return f'<c r="{place}" t="inlineStr"><is><t>{words}</t></is></c>'


ROWS = (
    f'<row r="1">{text("A1", "When")}{text("B1", "Item")}{text("C1", "Qty")}</row>'
    f'<row r="2"><c r="A2" s="1"><v>46351.5</v></c>{text("B2", "Tenders 3")}<c r="C2"><v>2</v></c></row>'
)


def test_cells_come_as_text():
    """A date with its time (serial 46351.5 of the 1900 system is noon of 2026-11-25), numbers, words."""
    assert is_workbook(workbook(ROWS))
    assert text_of(workbook(ROWS), "t.xlsx").decode().split("\n") == [
        "When\tItem\tQty",
        "2026-11-25 12:00:00\tTenders 3\t2",
    ]


@pytest.mark.parametrize("kind", ["a cell far away", "a bomb", "cut off", "no zip"])
def test_what_is_out_of_bounds_is_refused_in_words(kind):
    """Nothing of it is unpacked further."""
    data = {
        "a cell far away": lambda: workbook(f'<row r="1048576">{text("XFD1048576", "far")}</row>' + ROWS),
        "a bomb": lambda: workbook(ROWS, **{"xl/media/zeros.bin": b"0" * (65 << 20)}),
        "cut off": lambda: workbook(ROWS)[:400],
        "no zip": lambda: b"PK\x03\x04 and no more",
    }[kind]()
    with pytest.raises(DataError) as refused:
        text_of(data, "t.xlsx")
    assert "workbook" in refused.value.problems[0].what


def test_a_zip_of_something_else_is_no_workbook():
    """A zip without a workbook inside."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as other:
        other.writestr("a.txt", "a")
    with pytest.raises(DataError) as refused:
        text_of(out.getvalue(), "t.xlsx")
    assert refused.value.problems[0].what == "the file is no workbook"
