"""Sales in as they come: a till's files, columns picked by eye, items mapped once, posts of the till."""

from __future__ import annotations

import datetime as dt
import difflib
import io
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import takewhile
from typing import BinaryIO
from weakref import WeakKeyDictionary

from frywright.ledger.attachments import attachments_of
from frywright.ledger.facts.day import BoardTap, ItemMapped, PostedLine, SalesPosted, SalesRead, SalesWaiting
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, trade_of
from frywright.model.errors import DataError, InputError, one_of
from frywright.model.kitchen import Kitchen
from frywright.model.trade import MenuItem, Part, Trade, plain
from frywright.plan.sales import STEP_S, History, Sales, SoldLine, pieces, read_sales
from frywright.plan.till import Picks, Preview, preview, readable
from frywright.rooms.clock import now
from frywright.rooms.files import keep_file
from frywright.rooms.hall import in_turn, write
from frywright.tables.moments import ORDERS

MOST_BYTES, MOST_LINES = 32 * 1024 * 1024, 500
"""Largest export, and most lines of one post (own choice)."""
MONTH_FIRST = "us_"
"""Where a date is written month, day, year: places whose key begins so (common practice, no source)."""
LIKELY = 0.6
"""Likeness of two names from which one is guessed from the other (own choice)."""
LEARNT_DAYS = 730
"""Sales of so many days before the newest are learned from: a day two years old counts 2e-5 of today's in
the profile of its weekday (0.9 to the power of 104 weeks), and a yearly event was there twice (own choice).
"""
REPEAT_DAYS = 4
"""How far back a post's line is looked for, so that a line sent twice counts once (own choice)."""


def menu_of(store: Store, kitchen: Kitchen) -> tuple[MenuItem, ...]:
    """The kitchen's menu and the items mapped since; a later mapping wins."""
    mapped = {
        plain(e.fact.item): MenuItem(item=e.fact.item, pieces=e.fact.pieces) for e in store.facts(ItemMapped)
    }
    return (*kitchen.menu, *mapped.values())


# ---------------------------------------------------------------- files


def keep_sales(
    store: Store, kitchen: Kitchen, stream: BinaryIO, name: str, order: str = "", picks: Picks | None = None
) -> tuple[Kept[SalesRead], Sales]:
    """Keep a till's export byte for byte and record what it holds; the same file read the same way is one.
    Dates that can be read in two orders are read as the place writes them. Raises DataError: a file that
    cannot be read as it is.
    """
    if order:
        one_of(ORDERS, order, "order")
    data = stream.read(MOST_BYTES + 1)
    if len(data) > MOST_BYTES:
        raise InputError("file", name[:80], "at most {most} MB", most=MOST_BYTES >> 20)
    trade, menu, picks = trade_of(kitchen), menu_of(store, kitchen), picks or Picks()
    sales = _parsed(data, name, order, picks, trade, menu)
    usual = "mdy" if kitchen.site.jurisdiction.startswith(MONTH_FIRST) else "dmy"
    if any(note.kind == "question" and usual in note.values["choices"] for note in sales.notes):
        order = usual
        sales = _parsed(data, name, order, picks, trade, menu)
    sha, size = keep_file(store, io.BytesIO(data), "file")
    dates = [line.date for line in sales.lines]
    fact = SalesRead(
        name=name[:200],
        sha256=sha,
        size_bytes=size,
        order=order,
        first=min(dates),
        last=max(dates),
        lines_count=sales.lines_count,
        refused_count=len(sales.refused),
        columns=picks.columns or None,
        day=picks.day,
    )
    return _kept_file(store, trade, fact), sales


@in_turn
def _kept_file(store: Store, trade: Trade, fact: SalesRead) -> Kept[SalesRead]:
    known = [e for e in store.current_facts(SalesRead) if e.fact.sha256 == fact.sha256]
    if known and replace(known[-1].fact, name=fact.name) == fact:
        read = day_read(trade, known[-1])
        if fact.last <= read or business_time(trade, now())[0] == read:  # days that have been by now
            return known[-1]
    return write(store, fact, replaces=known[-1].number if known else None)


def take_file(
    store: Store, kitchen: Kitchen, stream: BinaryIO, name: str
) -> tuple[Kept[SalesRead] | Kept[SalesWaiting], DataError | None]:
    """Read a file, or keep it waiting for somebody to say what its columns are, with the reason; nothing is
    lost. Raises DataError: it is no table at all, so nobody could say anything of its columns.
    """
    data = stream.read(MOST_BYTES + 1)
    try:
        return keep_sales(store, kitchen, io.BytesIO(data), name)[0], None
    except DataError as error:
        preview(data, name)
        sha, size = keep_file(store, io.BytesIO(data), "file")
        reason = error.problems[0].what if error.problems else str(error)
        waiting = SalesWaiting(
            name=name[:200], sha256=sha, size_bytes=size, reason=reason[:200], left_out=False
        )
        return _kept_waiting(store, waiting), error


@in_turn
def _kept_waiting(store: Store, fact: SalesWaiting) -> Kept[SalesWaiting]:
    known = [e for e in store.current_facts(SalesWaiting) if e.fact.sha256 == fact.sha256]
    if known and known[-1].fact.left_out == fact.left_out:
        return known[-1]
    return write(store, fact, replaces=known[-1].number if known else None)


def waiting_files(store: Store) -> list[Kept[SalesWaiting]]:
    """Files that wait for their columns."""
    read = {e.fact.sha256 for e in store.current_facts(SalesRead)}
    return [e for e in store.current_facts(SalesWaiting) if e.fact.sha256 not in read and not e.fact.left_out]


def file_named(store: Store, sha: str) -> SalesRead | SalesWaiting:
    """A file that was read or waits, by its hash. Raises InputError: no such file was given."""
    files: list[SalesRead | SalesWaiting] = [e.fact for e in store.current_facts(SalesRead)]
    files += [e.fact for e in store.current_facts(SalesWaiting)]
    for file in files:
        if file.sha256 == sha:
            return file
    raise InputError("file", repr(sha[:12]), "one that was read in or waits")


def preview_of(store: Store, sha: str) -> tuple[SalesRead | SalesWaiting, Preview]:
    """The first rows of a kept file."""
    file = file_named(store, sha)
    with attachments_of(store).open(sha) as stream:
        return file, preview(stream.read(), file.name)


def pick_columns(
    store: Store,
    kitchen: Kitchen,
    sha: str,
    columns: Sequence[str],
    day: dt.date | None = None,
    order: str = "",
) -> Kept[SalesRead]:
    """Read a kept file by the columns a person picked: the role of each, and the day if the file does not say
    it.
    """
    file, picks = file_named(store, sha), Picks(columns=tuple(columns) if any(columns) else (), day=day)
    with attachments_of(store).open(sha) as stream:
        return keep_sales(store, kitchen, stream, file.name, order, picks)[0]


def leave_out(store: Store, sha: str) -> Kept[SalesWaiting]:
    """Put a waiting file aside; its bytes stay kept."""
    file = file_named(store, sha)
    if isinstance(file, SalesRead):
        raise InputError("file", file.name, "one that waits")
    return _kept_waiting(store, replace(file, left_out=True))


# ---------------------------------------------------------------- posts


@in_turn
def post_sales(
    store: Store, kitchen: Kitchen, till: str, lines: Sequence[PostedLine]
) -> tuple[Kept[SalesPosted] | None, int]:
    """Keep what a till posted, each of its lines once, and tell today's board; how many lines were new.
    Raises InputError: no lines, or too many.
    """
    trade_of(kitchen)
    if not 1 <= len(lines) <= MOST_LINES:
        raise InputError("lines", len(lines), "1 to {most} in one post", most=MOST_LINES)
    seen = _posted_lines(store, till, min(line.at for line in lines) - dt.timedelta(days=REPEAT_DAYS))
    fresh: dict[str, PostedLine] = {}
    for n, line in enumerate(lines):
        if not line.line or (line.line not in seen and line.line not in fresh):
            fresh[line.line or f"#{n}"] = line
    if not fresh:
        return None, 0
    kept = write(store, SalesPosted(till=till, lines=tuple(fresh.values())))
    _tell_board(store, kitchen, kept)
    return kept, len(fresh)


def _posted_lines(store: Store, till: str, since: dt.datetime) -> set[str]:
    found: set[str] = set()
    for item in store.facts(SalesPosted, newest_first=True):
        if item.recorded_at < since:
            break
        if item.fact.till == till:
            found |= {line.line for line in item.fact.lines if line.line}
    return found


def _tell_board(store: Store, kitchen: Kitchen, kept: Kept[SalesPosted]) -> None:
    """What was posted for today leaves the shelf of the board."""
    trade, today = trade_of(kitchen), business_time(trade_of(kitchen), now())[0]
    names = {name: item for item in menu_of(store, kitchen) for name in item.names}
    for n, line in enumerate(kept.fact.lines):
        date, second = business_time(trade, line.at)
        item = names.get(plain(line.item))
        if date != today or item is None or line.quantity_n <= 0:
            continue
        sold: dict[str, float] = {}
        for part in item.parts:
            sold[part.product] = sold.get(part.product, 0.0) + part.count * line.quantity_n
        for product, count in sold.items():
            if round(count) > 0:
                write(
                    store,
                    BoardTap(
                        key=f"till-{kept.number}-{n}-{product}",
                        date=date,
                        what="sold",
                        at_s=second,
                        fryer="",
                        product=product,
                        pieces_count=round(count),
                        reason="",
                        who=kept.fact.till,
                        practice_count=None,
                    ),
                    line.at,
                )


def _posted(store: Store, kitchen: Kitchen, since: dt.date) -> list[Sales]:
    """Every post from a day on as sales; a till's line counts once."""
    begins = dt.datetime.combine(since, dt.time(), dt.UTC)
    posts = list(takewhile(lambda e: e.recorded_at >= begins, store.facts(SalesPosted, newest_first=True)))
    trade = trade_of(kitchen)
    lines = [
        SoldLine(
            date=(told := business_time(trade, line.at))[0],
            second_s=told[1],
            item=line.item,
            quantity_n=line.quantity_n,
            order=line.order,
            kind=line.kind,
        )
        for item in reversed(posts)
        for line in item.fact.lines
        if business_time(trade, line.at)[0] <= day_read(trade, item)
    ]
    if not lines:
        return []
    return [Sales(name="till", lines=tuple(lines), refused=(), lines_count=len(lines), step_s=STEP_S)]


# ---------------------------------------------------------------- what they hold


def all_sales(store: Store, kitchen: Kitchen) -> list[Sales]:
    """What is learned from: every kept export not too old, read again, and what tills posted. A day that two
    exports hold is taken from the newer one; posts count for days that no export written after that day's end
    holds. Lines of a day that had not been when they were read in are left out.
    """
    trade, menu = trade_of(kitchen), menu_of(store, kitchen)
    taken: set[dt.date] = set()
    whole: set[dt.date] = set()
    found = []
    for item in reversed(_learnt_files(store)):
        sales, read = read_kept(store, item.fact, trade, menu), day_read(trade, item)
        lines = tuple(line for line in sales.lines if line.date <= read and line.date not in taken)
        days = {line.date for line in sales.lines if line.date <= read}
        taken |= days
        whole |= {day for day in days if read > day}
        found.append(replace(sales, lines=lines))
    posted = _posted(store, kitchen, _learnt_since(store))
    if posted:
        lines = tuple(line for line in posted[0].lines if line.date not in whole)
        held = {line.date for line in lines}
        found = [replace(s, lines=tuple(x for x in s.lines if x.date not in held)) for s in found]
        found.append(replace(posted[0], lines=lines))
    return [sales for sales in found[::-1] if sales.lines]


def day_read(trade: Trade, item: Kept[SalesRead] | Kept[SalesPosted]) -> dt.date:
    """The business day on which sales were read in."""
    return business_time(trade, item.recorded_at)[0]


def _learnt_since(store: Store) -> dt.date:
    """The first day that is learned from, by the newest one of which there are sales."""
    newest = max((item.fact.last for item in store.current_facts(SalesRead)), default=dt.date.min)
    post = next(iter(store.facts(SalesPosted, newest_first=True)), None)
    newest = min(max(newest, post.recorded_at.date() if post else newest), now().date())
    return newest - dt.timedelta(days=min(LEARNT_DAYS, newest.toordinal() - 1))


def _learnt_files(store: Store) -> list[Kept[SalesRead]]:
    """Exports that are learned from, oldest first."""
    since = _learnt_since(store)
    return [item for item in store.current_facts(SalesRead) if item.fact.last >= since]


@lru_cache(maxsize=16)
def _parsed(
    data: bytes, name: str, order: str, picks: Picks, trade: Trade, menu: tuple[MenuItem, ...]
) -> Sales:
    return read_sales(io.BytesIO(readable(data, name, picks)), name, trade, menu, order)


def read_kept(store: Store, file: SalesRead, trade: Trade, menu: tuple[MenuItem, ...]) -> Sales:
    """A kept export, read again."""
    with attachments_of(store).open(file.sha256) as stream:
        picks = Picks(columns=file.columns or (), day=file.day)
        return _parsed(stream.read(), file.name, file.order, picks, trade, menu)


def history_of(store: Store, kitchen: Kitchen) -> History:
    """Pieces sold so far; InputError when no sales were read in yet."""
    trade, menu = trade_of(kitchen), menu_of(store, kitchen)
    files = tuple((item.number, item.fact.sha256) for item in _learnt_files(store))
    state = files, store.newest(SalesPosted.KIND), trade, menu
    known = _HISTORIES.get(store)
    if known is None or known[0] != state:
        sales = all_sales(store, kitchen)
        if not sales:
            raise InputError(
                "sales", "missing", "read in first: on the page of the day, or with frywright day sales FILE"
            )
        known = _HISTORIES[store] = state, pieces(sales, trade, menu)
    return known[1]


_HISTORIES: WeakKeyDictionary[Store, tuple[object, History]] = WeakKeyDictionary()
"""What was sold, of each kitchen, and from which files and posts that was read."""


# ---------------------------------------------------------------- items


@dataclass(frozen=True, slots=True, kw_only=True)
class ItemAsked:
    """An item of the till that the menu does not know, how many were sold, and what it may take."""

    item: str
    sold_n: float
    guess: str


def items_asked(store: Store, kitchen: Kitchen) -> list[ItemAsked]:
    """Items to map, most sold first, each with a guess."""
    try:
        unmapped = history_of(store, kitchen).unmapped
    except InputError:
        return []
    return [ItemAsked(item=item, sold_n=n, guess=guess_of(kitchen, item)) for item, n in unmapped]


def guess_of(kitchen: Kitchen, item: str) -> str:
    """Pieces an item may take by its name: the product or cut it names, and the number in it; empty where
    nothing is like it.
    """
    count = next((int(n) for n in re.findall(r"\d+", item) if 1 <= int(n) <= 200), 1)
    words, best = plain(re.sub(r"[\d.,]+", " ", item)), (0.0, "")
    for sell in kitchen.sells:
        product = kitchen.product(sell.product)
        names = {plain(product.name): sell.product, plain(sell.product.replace("_", " ")): sell.product}
        parts = kitchen.cut_set(product.cut_set).parts
        for part in parts if len(parts) > 1 else ():
            names.setdefault(plain(part.cut.replace("_", " ")), f"{sell.product}/{part.cut}")
        for name, target in names.items():
            best = max(best, (_like(words, name), target))
    return f"{best[1]} {count}" if best[0] >= LIKELY else ""


def _like(words: str, name: str) -> float:
    """Likeness of two names: whole, or word by word without a plural's s."""
    ours, theirs = ({w.rstrip("s") for w in re.findall(r"\w{3,}", text)} for text in (words, name))
    shared = len(ours & theirs) / max(len(theirs), 1)
    return max(shared, difflib.SequenceMatcher(None, words, name).ratio())


def map_items(store: Store, kitchen: Kitchen, told: Mapping[str, str], who: str = "") -> int:
    """Keep what items take, by their names: pieces such as ``tenders 3, bone_in/thigh 1``, or ``-`` for what
    is not fried; an empty text leaves an item as it is. How many were kept. Raises InputError: a text that
    names no pieces of this kitchen; nothing of it all is kept.
    """
    facts = []
    for item, text in told.items():
        if not text.strip():
            continue
        texts = () if text.strip() == "-" else tuple(t.strip() for t in text.split(",") if t.strip())
        for part in MenuItem(item=item, pieces=texts).parts:
            _known_part(kitchen, item, part)
        facts.append(ItemMapped(item=item[:200], pieces=texts, who=who.strip()[:80]))
    with store.writing():
        for fact in facts:
            write(store, fact)
    return len(facts)


def _known_part(kitchen: Kitchen, item: str, part: Part) -> None:
    products = tuple(sell.product for sell in kitchen.sells)
    if part.product not in products:
        raise InputError("pieces", part.product, "one of {known}", where=item, known=", ".join(products))
    cuts = tuple(p.cut for p in kitchen.cut_set(kitchen.product(part.product).cut_set).parts)
    if part.cut and part.cut not in cuts:
        raise InputError("pieces", part.cut, "one of {known}", where=item, known=", ".join(cuts))


def choices_of(kitchen: Kitchen) -> list[str]:
    """What an item may be made of, as it is typed."""
    found = []
    for sell in kitchen.sells:
        parts = kitchen.cut_set(kitchen.product(sell.product).cut_set).parts
        found += [sell.product, *(f"{sell.product}/{p.cut}" for p in parts if len(parts) > 1)]
    return found
