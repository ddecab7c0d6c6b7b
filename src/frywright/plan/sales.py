"""Sales from a till's export in any common layout, turned into pieces by product, cut and slot.

Columns are found by their words and by what stands in them: date, time, item, quantity, order, kind of order.
One line an item, one line an interval and item, or one column an item are all read. What the menu does not
know is listed with its quantity, never dropped; days without sales and long silences in open hours are
missing, not zero; catering is set apart.
"""

from __future__ import annotations

import datetime as dt
import re
from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import BinaryIO

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import DataError
from frywright.model.findings import Note, Problem
from frywright.model.trade import MenuItem, Trade, plain, time_of_day_s
from frywright.plan.counts import count_of, decimal_mark
from frywright.tables import moments, table

Array = NDArray[np.float64]
TIME_WORDS = re.compile(r"time|hora|hour|interval|period|start|from|moment", re.I)
ITEM_WORDS = re.compile(r"item|product|menu|art[ií]culo|plu|descri|name|nombre|sku", re.I)
QUANTITY_WORDS = re.compile(r"qty|quant|count|sold|units?\b|cant|pieces|number of|^n$", re.I)
ORDER_WORDS = re.compile(r"order|check|ticket|receipt|trans|bill|pedido|recibo|cuenta", re.I)
KIND_WORDS = re.compile(r"type|channel|kind|mode|destination|tipo|canal", re.I)
VOID_WORDS = re.compile(r"void|status|state|refund|cancel|estado|anul", re.I)
VOIDED = re.compile(r"void|cancel|refund|return|anul|devol|^y(es)?$|^true$|^1$", re.I)
VOID_LINE = re.compile(
    r"void(ed)?|cancel(l?ed)?|refund(ed)?|return(ed)?|anulad[oa]|anulaci[oó]n|devuelt[oa]|devoluci[oó]n", re.I
)
"""What a till writes beside a line that is no sale, whatever it calls that column."""
CATERING = re.compile(r"cater|banquet|bulk|event|large order|evento", re.I)
TOTALS = re.compile(r"^(sub|grand )?total\b|^sum\b", re.I)
STEP_S = 900.0
"""Sales are counted by quarter hours; coarser exports are spread evenly over theirs."""
SILENCE_CHANCE = 1e-4
"""A silence is an outage when the usual sales would leave it this rarely."""
EXAMPLES = 50


@dataclass(frozen=True, slots=True, kw_only=True)
class SoldLine:
    """One line of an export on its business day: seconds since that day's midnight, item as written, how
    many.
    """

    date: dt.date
    second_s: float
    item: str
    quantity_n: float
    order: str = ""
    kind: str = ""


Sold = tuple[SoldLine, int, MenuItem]
"""A line, the quarter hours it is spread over, and its item of the menu."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sales:
    """What an export says. ``refused`` are lines with the reason why they are not used."""

    name: str
    lines: tuple[SoldLine, ...]
    refused: tuple[tuple[int, str, str], ...]
    lines_count: int
    step_s: float = STEP_S
    notes: tuple[Note, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class History:
    """Pieces (series, day, quarter hour from ``start_s``) with NaN where nothing is known. ``series`` are
    (product, cut); cut "" is the product as a whole.
    """

    series: tuple[tuple[str, str], ...]
    dates: tuple[dt.date, ...]
    start_s: float
    pieces_n: Array
    unmapped: tuple[tuple[str, float], ...]
    catering: tuple[tuple[dt.date, str, str, float], ...]
    outages: tuple[tuple[dt.date, float, float], ...]
    voided_n: float = 0.0

    def of(self, product: str, cut: str = "") -> Array:
        """Pieces (day, slot) of one series."""
        return np.asarray(self.pieces_n[self.series.index((product, cut))])

    def by_slot(self, mean: Array, trade: Trade) -> Array:
        """Means (series, quarter hour) as means (series, slot of the trade's day)."""
        edges = self.start_s + STEP_S * np.arange(mean.shape[1] + 1)
        sums = np.concatenate([np.zeros((len(mean), 1)), np.cumsum(mean, axis=1)], axis=1)
        slots = trade.start_s + trade.slot_s * np.arange(trade.slots_count + 1)
        slots[0], slots[-1] = min(slots[0], edges[0]), max(slots[-1], edges[-1])
        return np.diff(np.stack([np.interp(slots, edges, row) for row in sums]), axis=1)


@dataclass(slots=True)
class _Columns:
    date: int = -1
    time: int = -1
    item: int = -1
    quantity: int = -1
    order: int = -1
    kind: int = -1
    void: int = -1
    wide: tuple[tuple[int, str], ...] = ()
    decimal: str = ""


def read_sales(
    stream: BinaryIO, name: str, trade: Trade, menu: Sequence[MenuItem] = (), order: str = ""
) -> Sales:
    """Lines of a till's export. Raises DataError: the file is no table with a time, an item and a quantity,
    or its quantities can be read in two ways.

    Parameters
    ----------
    order : order of day, month and year (``mdy``, ``dmy``, ``ymd``) where the file leaves it open
    """
    head = stream.read(table.HEAD_BYTES)
    stream.seek(0)
    shape = table.shape_of(head, name, words=True)
    count = table.Lines()
    rows = list(table.rows_of(stream, shape, count))
    columns = _columns(shape, rows, menu, name)
    notes: list[Note] = []
    order = order or _order(rows, columns, name, notes)
    columns.decimal = _decimal(rows, columns, name)
    lines: list[SoldLine] = []
    refused: list[tuple[int, str, str]] = []
    for row in rows:
        reason = _take(row, columns, order, trade, lines)
        if reason:
            refused.append((row.line_number, reason, row.text[:120]))
    if not lines:
        raise DataError(
            [
                Problem(
                    what="no line has a time, an item and a quantity",
                    remedy="Export sales by item with date, time and quantity as CSV.",
                    file=name,
                )
            ]
        )
    return Sales(
        name=name,
        lines=tuple(lines),
        refused=tuple(refused),
        lines_count=len(rows),
        step_s=_step(lines),
        notes=tuple(notes),
    )


def _decimal(rows: Sequence[table.Row], columns: _Columns, name: str) -> str:
    """The decimal mark of the quantities."""
    places = [i for i, _ in columns.wide] if columns.item < 0 else [columns.quantity]
    lines = [(row, row.cells[i].strip()) for row in rows for i in places if 0 <= i < len(row.cells)]
    mark = decimal_mark(cell for _, cell in lines)
    if mark is None:
        row = next(row for row, cell in lines if decimal_mark([cell]) != "")
        raise DataError(
            [
                Problem(
                    what="quantities such as 1,234 can be thousands or parts of a piece",
                    remedy="Export quantities as whole numbers without a mark.",
                    file=name,
                    line_number=row.line_number,
                    line=row.text[:120],
                )
            ]
        )
    return mark


def _step(lines: Sequence[SoldLine]) -> float:
    """Seconds a line stands for: the coarsest of an hour and half an hour that every time is a multiple
    of.
    """
    return next(
        (step for step in (3600.0, 1800.0) if all(line.second_s % step == 0 for line in lines)), STEP_S
    )


def _columns(shape: table.Shape, rows: Sequence[table.Row], menu: Sequence[MenuItem], name: str) -> _Columns:
    header = [cell.strip() for cell in shape.header] or [""] * shape.width_count
    body = _cells(rows, len(header))
    stamps, words, numbers = _sorts(body)
    found = _Columns()
    found.date, found.time = _date_and_time(body, stamps)
    found.void = _first(header, VOID_WORDS, (*words, *numbers), ())
    found.kind = _first(header, KIND_WORDS, words, (found.void,))
    texts = [i for i in words if i not in (found.void, found.kind)]
    found.item = _item(header, body, texts, menu)
    numbered = [i for i in words if any(c.isdigit() for c in "".join(body[i]))]
    found.order = _first(header, ORDER_WORDS, (*numbers, *numbered), (found.void, found.kind, found.item))
    found.quantity = _first(header, QUANTITY_WORDS, numbers, (found.order,))
    if found.item < 0 and numbers and header[numbers[0]]:
        items = [i for i in numbers if header[i] and not TOTALS.match(header[i])]
        found.wide = tuple((i, header[i]) for i in items if i not in (found.order, found.void))
    if found.date < 0:
        raise _not_found("no column of dates was found", shape, rows, name)
    if found.item < 0 and not found.wide:
        raise _not_found("no column of items was found", shape, rows, name)
    return found


def _not_found(what: str, shape: table.Shape, rows: Sequence[table.Row], name: str) -> DataError:
    return DataError(
        [
            Problem(
                what=what,
                remedy="Export with a date, a time, the item and how many were sold.",
                file=name,
                line_number=shape.first_line_number,
                line=rows[0].text[:120] if rows else "",
            )
        ]
    )


def _cells(rows: Sequence[table.Row], width: int) -> list[list[str]]:
    """What stands in each column, by the first whole lines that are no totals."""
    sample = [row.cells for row in rows[:400] if len(row.cells) >= width - 1 and not _is_total(row.cells)]
    return [[cells[i].strip() if i < len(cells) else "" for cells in sample] for i in range(width)]


def _sorts(body: Sequence[Sequence[str]]) -> tuple[list[int], list[int], list[int]]:
    """Columns of moments, of words, and of numbers; what stands empty counts to the last."""
    stamps, words, numbers = [], [], []
    for i, cells in enumerate(body):
        if sum(_moment(c) is not None for c in cells) > 0.8 * len(cells):
            stamps.append(i)
        elif cells and sum(table.is_number(c) for c in cells) < 0.2 * len(cells):
            words.append(i)
        else:
            numbers.append(i)
    return stamps, words, numbers


def _date_and_time(body: Sequence[Sequence[str]], stamps: Sequence[int]) -> tuple[int, int]:
    """The first columns of dates and of times; one that says both is both where no time came before it."""
    date = time = -1
    for i in stamps:
        first = next(m for m in map(_moment, body[i]) if m is not None)
        if first.date and first.second_s is not None and time < 0:
            date = time = i
        elif first.date and date < 0:
            date = i
        elif first.second_s is not None and time < 0:
            time = i
    return date, time


def _first(
    header: Sequence[str], words: re.Pattern[str], columns: Iterable[int], taken: Iterable[int]
) -> int:
    """The first of some columns whose head has one of the words and that is nothing else yet; -1 for none."""
    return next((i for i in columns if i not in taken and words.search(header[i])), -1)


def _item(
    header: Sequence[str], body: Sequence[Sequence[str]], texts: Sequence[int], menu: Sequence[MenuItem]
) -> int:
    """The column of items: most cells on the menu, then by its head, then by how many they are."""
    known = {name for item in menu for name in item.names}

    def rank(i: int) -> tuple[int, bool, int]:
        on_menu = sum(plain(cell) in known for cell in body[i])
        return on_menu, ITEM_WORDS.search(header[i]) is not None, len(set(body[i]))

    return max(texts, key=rank, default=-1)


def _is_total(cells: Sequence[str]) -> bool:
    return any(TOTALS.match(cell.strip()) for cell in cells[:3])


def _moment(cell: str) -> moments.Moment | None:
    """A time cell; of an interval such as 11:15-11:30 its start."""
    whole = moments.read_moment(cell)
    if whole is not None or "-" not in cell.strip("-"):
        return whole
    return moments.read_moment(re.split("[-–]", cell.strip())[0].rstrip()) if cell.count(":") >= 2 else None


def _order(rows: Sequence[table.Row], columns: _Columns, name: str, notes: list[Note]) -> str:
    dates = []
    for row in rows:
        moment = _moment(row.cells[columns.date]) if columns.date < len(row.cells) else None
        if moment is not None and moment.date:
            dates.append(moment.date)
    cell = rows[0].cells[columns.date] if rows and columns.date < len(rows[0].cells) else ""
    mark = next((c for c in "/.-" if c in cell), "/")
    found = moments.date_order(list(dict.fromkeys(dates)), mark)
    if not found.order:
        raise DataError(
            [
                Problem(
                    what="the dates fit no order of day, month and year",
                    remedy="Export dates as 2026-11-25.",
                    file=name,
                )
            ]
        )
    if len(found.choices) > 1:
        notes.append(
            Note(
                kind="question",
                text="The dates can be read as {choices}; {order} was taken.",
                values={"choices": ", ".join(found.choices), "order": found.order},
            )
        )
    return found.order


def _when(day: str, time: str, order: str, trade: Trade) -> tuple[dt.date, float] | str:
    """Business day of a row and seconds since its midnight, or why there is none."""
    stamp = _moment(day)
    clock = stamp if time == day else _moment(time)
    number = moments.day_number(stamp.date, order) if stamp is not None and stamp.date else None
    if number is None or clock is None or clock.second_s is None:
        return "no date" if number is None else "no time"
    second, date = clock.second_s, dt.date.fromordinal(number)
    if second < time_of_day_s(trade.rolls_over):
        return date - dt.timedelta(days=1), second + 86400.0
    return date, second


def _take(row: table.Row, columns: _Columns, order: str, trade: Trade, lines: list[SoldLine]) -> str:
    """Add the sales of one row; returns why it cannot be used, or nothing."""
    cells = [cell.strip() for cell in row.cells]

    def at(i: int) -> str:
        return cells[i] if 0 <= i < len(cells) else ""

    if _is_total(cells):
        return "a total"
    when = _when(at(columns.date), at(columns.time), order, trade)
    if isinstance(when, str):
        return when
    taken_back = (count_of(at(columns.quantity), columns.decimal) or 0.0) < 0
    marked = any(VOID_LINE.fullmatch(cell) for i, cell in enumerate(cells) if i != columns.item)
    if (columns.void >= 0 and VOIDED.search(at(columns.void))) or (marked and not taken_back):
        return "void"
    pairs = (
        [(at(columns.item), at(columns.quantity) if columns.quantity >= 0 else "1")]
        if columns.item >= 0
        else [(title, at(i)) for i, title in columns.wide]
    )
    for item, text in pairs:
        quantity = count_of(text, columns.decimal)
        if not item:
            return "no item"
        if quantity is None:
            return "no quantity"
        if quantity:
            lines.append(
                SoldLine(
                    date=when[0],
                    second_s=when[1],
                    item=item,
                    quantity_n=quantity,
                    order=at(columns.order),
                    kind=at(columns.kind),
                )
            )
    return ""


def _unmapped(lines: Iterable[SoldLine]) -> tuple[tuple[str, float], ...]:
    """Items that are not on the menu and how many of each were sold, most first."""
    found: dict[str, float] = defaultdict(float)
    for line in lines:
        found[line.item] += line.quantity_n
    return tuple(sorted(found.items(), key=lambda x: -x[1]))


def _catering(sold: Iterable[Sold]) -> tuple[tuple[dt.date, str, str, float], ...]:
    """Pieces of catering by day, product and cut."""
    found: dict[tuple[dt.date, str, str], float] = defaultdict(float)
    for line, _, item in sold:
        for part in item.parts:
            found[line.date, part.product, part.cut] += part.count * line.quantity_n
    return tuple((*key, count) for key, count in sorted(found.items()))


def _add(day: Array, sold: Sold, start: float, place: Mapping[tuple[str, str], int]) -> None:
    """Add what was sold to its day, series by quarter hour."""
    (line, spread, item), width = sold, day.shape[1]
    first = min(max(int((line.second_s - start) // STEP_S), 0), width - 1)
    last = min(first + spread, width)
    for part in item.parts:
        for cut in {"", part.cut}:
            day[place[part.product, cut], first:last] += part.count * line.quantity_n / (last - first)


def pieces(sales: Iterable[Sales], trade: Trade, menu: Sequence[MenuItem]) -> History:
    """Pieces by series, business day and quarter hour.

    What was sold outside the day's hours counts to its first or last quarter hour. A refund takes its pieces
    back in its own quarter hour, never below zero.
    """
    named = _named(sales, menu)
    known = [(line, spread, item) for line, spread, item in named if item is not None]
    big = _catering_orders(known, trade)
    dates = sorted({line.date for line, _, _ in named})
    index = {date: n for n, date in enumerate(dates)}
    series = sorted({(part.product, cut) for item in menu for part in item.parts for cut in ("", part.cut)})
    place = {key: n for n, key in enumerate(series)}
    start = STEP_S * (trade.start_s // STEP_S)
    grid = np.zeros((len(series), len(dates), int(np.ceil((trade.closes_s - start) / STEP_S))))
    catered: list[Sold] = []
    for sold in known:
        if CATERING.search(sold[0].kind) or (sold[0].date, sold[0].order) in big:
            catered.append(sold)
        else:
            _add(grid[:, index[sold[0].date]], sold, start, place)
    grid = np.maximum(grid, 0.0)
    outages = _outages(grid[[n for n, (_, cut) in enumerate(series) if not cut]].sum(axis=0), start, trade)
    for n, low, high in outages:
        grid[:, n, low:high] = np.nan
    return History(
        series=tuple(series),
        dates=tuple(dates),
        start_s=start,
        pieces_n=grid,
        unmapped=_unmapped(line for line, _, item in named if item is None),
        catering=_catering(catered),
        outages=tuple((dates[n], start + low * STEP_S, start + high * STEP_S) for n, low, high in outages),
        voided_n=sum(max(0.0, -line.quantity_n) for line, _, _ in known),
    )


def _named(sales: Iterable[Sales], menu: Sequence[MenuItem]) -> list[tuple[SoldLine, int, MenuItem | None]]:
    """Every line, the quarter hours it is spread over, and its item where the menu has it."""
    by_name = {name: item for item in menu for name in item.names}
    lines = [(line, max(1, round(one.step_s / STEP_S))) for one in sales for line in one.lines]
    return [(line, spread, by_name.get(plain(line.item))) for line, spread in lines]


def _catering_orders(known: Sequence[Sold], trade: Trade) -> set[tuple[dt.date, str]]:
    sizes: Counter[tuple[dt.date, str]] = Counter()
    for line, _, item in known:
        if line.order:
            sizes[line.date, line.order] += int(sum(part.count for part in item.parts) * line.quantity_n)
    return {key for key, size in sizes.items() if size >= trade.catering_count}


def _outages(whole: Array, start: float, trade: Trade) -> list[tuple[int, int, int]]:
    """Silences (day, first, end) in open hours that the usual sales of that time would leave less than once
    in SILENCE_CHANCE.
    """
    usual = np.median(whole, axis=0) if len(whole) > 4 else whole.mean(axis=0)
    busy = usual > 0
    spread = (
        float(np.median(whole[:, busy].var(axis=0) / whole[:, busy].mean(axis=0)))
        if busy.any() and len(whole) > 4
        else 3.0
    )
    first, found = max(0, int((trade.opens_s - start) // STEP_S)), []
    for n in range(len(whole)):
        level, low = min(1.0, whole[n].sum() / max(usual.sum(), 1e-9)), first
        while low < whole.shape[1]:
            high = low
            while high < whole.shape[1] and whole[n, high] == 0:
                high += 1
            expected = level * usual[low:high].sum()
            if high > low and expected / max(spread, 1.0) > -np.log(SILENCE_CHANCE):
                found.append((n, low, high))
            low = high + 1
    return found
