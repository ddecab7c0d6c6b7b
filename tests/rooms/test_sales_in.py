"""Sales as they come in: files that wait for their columns, items mapped once, posts of a till, a watched
folder; nothing is lost and nothing counts twice.
"""

from __future__ import annotations

import datetime as dt
import io
import os
from pathlib import Path

import pytest

from frywright.ledger.attachments import attachments_of
from frywright.ledger.facts.day import BoardTap, ItemMapped, PostedLine, SalesPosted, SalesRead
from frywright.model.business_day import business_time, moment_of
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.day import sales
from frywright.rooms.day.folder import Watched
from frywright.rooms.day.sales_page import lines_ahead, sales_page
from frywright.rooms.kitchen import remembered_kitchen

DAY = dt.date(2026, 11, 24)
ODD = "Was|Wann|Wieviel\n" + "".join(f"Strips 3|24.11.2026 1{n}:05|2\n" for n in range(2, 8))
MATRIX = "Item,11:00,12:00,13:00,14:00\nStrips 3,2,4,6,1\nMystery box,1,1,1,1\n"


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def take(store, kitchen, text, name="x.csv"):
    """A file as it comes in."""
    return sales.take_file(store, kitchen, io.BytesIO(text.encode()), name)


def test_a_file_without_a_day_waits_and_is_read_once_its_day_is_said(store, kitchen):
    """An item-by-hour table waits with the reason; picked it counts, and waits no longer."""
    kept, problem = take(store, kitchen, MATRIX)
    assert problem is not None
    assert [e.fact.name for e in sales.waiting_files(store)] == ["x.csv"]
    assert take(store, kitchen, MATRIX)[0].number == kept.number
    sales.pick_columns(store, kitchen, kept.fact.sha256, (), DAY)
    assert not sales.waiting_files(store)
    history = sales.history_of(store, kitchen)
    assert history.dates == (DAY,)
    assert dict(history.unmapped) == {"Strips 3": 13.0, "Mystery box": 4.0}


def test_an_order_of_dates_that_is_none_is_refused(store, kitchen):
    """Before the file is looked at."""
    with pytest.raises(InputError, match="one of: ymd, dmy, mdy, ydm"):
        sales.keep_sales(store, kitchen, io.BytesIO(b"Date;Item\n"), "till.csv", "mdd")


def test_columns_picked_by_eye_are_kept_and_can_be_picked_again(store, kitchen):
    """A second pick replaces the first; the file counts once."""
    kept, problem = take(store, kitchen, ODD)
    assert problem is None or sales.waiting_files(store)
    name = kept.fact.sha256
    _, looked = sales.preview_of(store, name)
    assert looked.header == ("Was", "Wann", "Wieviel")
    sales.pick_columns(store, kitchen, name, ("item", "date", ""), order="dmy")
    assert sum(n for _, n in sales.history_of(store, kitchen).unmapped) == 6
    sales.pick_columns(store, kitchen, name, ("item", "date", "quantity"), order="dmy")
    assert sum(n for _, n in sales.history_of(store, kitchen).unmapped) == 12
    assert len(store.current_facts(SalesRead)) == 1
    with pytest.raises(InputError):
        sales.preview_of(store, "0" * 64)


def test_a_file_left_out_stays_kept_but_waits_no_longer(store, kitchen):
    """Its bytes are there; it can be picked later."""
    kept, _ = take(store, kitchen, MATRIX)
    sales.leave_out(store, kept.fact.sha256)
    assert not sales.waiting_files(store)
    assert sales.preview_of(store, kept.fact.sha256)[1].header[0] == "Item"


def test_an_item_is_mapped_once(store, kitchen):
    """Its guess names a product of the kitchen; mapped it counts, a dash means nothing is fried."""
    kept, _ = take(store, kitchen, MATRIX)
    sales.pick_columns(store, kitchen, kept.fact.sha256, (), DAY)
    asked = {i.item: i for i in sales.items_asked(store, kitchen)}
    assert list(asked) == ["Strips 3", "Mystery box"]
    assert sales.guess_of(kitchen, "Tenders 5 pc") == "tenders 5"
    assert asked["Mystery box"].guess == ""
    assert sales.map_items(store, kitchen, {"Strips 3": "tenders 3", "Mystery box": "-", "X": ""}) == 2
    history = sales.history_of(store, kitchen)
    assert not history.unmapped
    assert float(history.of("tenders")[0].sum()) == 39.0


@pytest.mark.parametrize(
    "text", ["tenders", "unicorn 2", "tenders/horn 2", "tenders 0", "tenders 2, unicorn 1"]
)
def test_a_mapping_that_cannot_be_is_refused_whole(store, kitchen, text):
    """Nothing of it is kept, not even its good part."""
    with pytest.raises(InputError):
        sales.map_items(store, kitchen, {"Good": "tenders 1", "Bad": text})
    assert not list(store.facts(ItemMapped))


def line(number, at, item="Strips 3", quantity=1.0):
    """One posted line."""
    return PostedLine(line=number, at=at, item=item, quantity_n=quantity, order="", kind="")


def test_a_tills_line_counts_once_and_todays_board_is_told(store, kitchen):
    """Sent again in another post it is known; the board hears of what the menu knows, with its pieces."""
    sales.map_items(store, kitchen, {"Strips 3": "tenders 3"})
    today, at = business_time(kitchen.trade, now())[0], now()
    _, new = sales.post_sales(store, kitchen, "front", [line("1", at), line("1", at), line("2", at)])
    assert new == 2
    assert sales.post_sales(store, kitchen, "front", [line("2", at), line("3", at)])[1] == 1
    assert sales.post_sales(store, kitchen, "front", [line("3", at)]) == (None, 0)
    assert sales.post_sales(store, kitchen, "side", [line("3", at, "Unknown")])[1] == 1
    taps = [e.fact for e in store.facts(BoardTap)]
    assert [(t.what, t.product, t.pieces_count, t.date) for t in taps] == [("sold", "tenders", 3, today)] * 3
    assert len({t.key for t in taps}) == 3
    assert float(sales.history_of(store, kitchen).of("tenders").sum()) == 9.0
    with pytest.raises(InputError):
        sales.post_sales(store, kitchen, "front", [])


def test_a_days_whole_export_wins_over_its_posts(store, kitchen):
    """Posts of a day count until an export written after that day holds it."""
    sales.map_items(store, kitchen, {"Strips 3": "tenders 1"})
    sales.post_sales(
        store, kitchen, "front", [line("1", moment_of(kitchen.trade, DAY, 45_000.0), quantity=5)]
    )
    assert float(sales.history_of(store, kitchen).of("tenders").sum()) == 5.0
    sales.keep_sales(store, kitchen, io.BytesIO(MATRIX.encode()), "sales 2026-11-24.csv")
    assert float(sales.history_of(store, kitchen).of("tenders").sum()) == 13.0
    assert len(list(store.facts(SalesPosted))) == 1


def test_an_export_of_a_day_that_goes_on_hides_no_posts(store, kitchen):
    """Read in while its day runs, it does not stand for what the till posts of that day."""
    sales.map_items(store, kitchen, {"Strips 3": "tenders 1"})
    at = now()
    today = business_time(kitchen.trade, at)[0]
    sales.keep_sales(store, kitchen, io.BytesIO(MATRIX.encode()), f"sales {today}.csv")
    sales.post_sales(store, kitchen, "front", [line("1", at, quantity=7)])
    assert float(sales.history_of(store, kitchen).of("tenders").sum()) == 7.0


def dated(store, kitchen, *days):
    """An export of one bucket at noon of each day, so many days from today."""
    today = business_time(kitchen.trade, now())[0]
    rows = "".join(f"{today + dt.timedelta(days=n)},12:00,Bucket,1\n" for n in days)
    return take(store, kitchen, "Date,Time,Item,Qty\n" + rows)[0], today


def test_days_that_have_not_been_are_said_and_never_learned_from(store, kitchen, monkeypatch):
    """Two lines of five are ahead: they are counted with their days, and left out then and later. The same
    file taken again once these days are over counts whole.
    """
    kept, today = dated(store, kitchen, -2, -1, 0, 1, 3)
    days = [today + dt.timedelta(days=n) for n in (-2, -1, 0, 1, 3)]
    ahead = lines_ahead(store, kitchen, kept)
    assert (ahead.lines_count, ahead.first, ahead.last) == (2, days[3], days[4])
    assert sales_page(store, kitchen).ahead == (ahead,)
    assert sales.history_of(store, kitchen).dates == tuple(days[:3])
    assert dated(store, kitchen, -2, -1, 0, 1, 3)[0].number == kept.number
    later = now() + dt.timedelta(days=9)
    monkeypatch.setattr(sales, "now", lambda: later)
    monkeypatch.setattr(store, "_now", lambda: later)
    assert sales.history_of(store, kitchen).dates == tuple(days[:3])
    with attachments_of(store).open(kept.fact.sha256) as stream:
        again = sales.keep_sales(store, kitchen, stream, "x.csv")[0]
    assert again.number > kept.number and lines_ahead(store, kitchen, again) is None
    assert sales.history_of(store, kitchen).dates == tuple(days)


def test_a_file_of_days_to_come_alone_teaches_nothing(store, kitchen):
    """As if none had been read; a till's post of tomorrow neither."""
    _, today = dated(store, kitchen, 1, 2)
    at = moment_of(kitchen.trade, today + dt.timedelta(days=1), 43200.0)
    sales.post_sales(store, kitchen, "till", [line("1", at)])
    with pytest.raises(InputError, match="missing"):
        sales.history_of(store, kitchen)


@pytest.mark.parametrize(
    ("error", "words"),
    [(PermissionError(13, "Permission denied"), "Permission denied"), (OSError("gone"), "gone")],
)
def test_a_watched_file_that_cannot_be_opened_says_why(store, kitchen, tmp_path, monkeypatch, error, words):
    """The system's own words, without its number, or whatever the error says."""
    own = Path.open
    (tmp_path / "till.csv").write_text(MATRIX)

    def no(path, *how, **more):
        if path.name == "till.csv":
            raise error
        return own(path, *how, **more)

    watched = Watched(store, kitchen, tmp_path)
    monkeypatch.setattr(Path, "open", no)
    assert list(watched.look(settled=True)) == [("till.csv", words)]


def test_a_watched_folder_reads_what_has_stopped_growing(store, kitchen, tmp_path):
    """A file is read at the second look that finds it alike, once; one that cannot be read waits; others are
    left alone.
    """
    folder = tmp_path / "till"
    folder.mkdir()
    watched = Watched(store, kitchen, folder)
    good = folder / "sales 2026-11-24.csv"
    good.write_text(MATRIX[:40])
    assert list(watched.look()) == []
    good.write_text(MATRIX)
    assert list(watched.look()) == []
    assert list(watched.look()) == [(good.name, "")]
    assert list(watched.look()) == []
    (folder / "odd.csv").write_text("A|B\nx|y\n")
    (folder / "none.csv").write_text("nothing to see")
    (folder / "photo.jpg").write_text("x")
    assert list(watched.look()) == []
    found = dict(watched.look())
    assert sorted(found) == ["none.csv", "odd.csv"]
    assert "no table" in found["none.csv"]
    assert found["odd.csv"]
    assert [e.fact.name for e in sales.waiting_files(store)] == ["odd.csv"]
    os.utime(good)
    watched = Watched(store, kitchen, folder)
    assert len(list(watched.look(settled=True))) == 3
    assert len(store.current_facts(SalesRead)) == 1
    with pytest.raises(InputError):
        Watched(store, kitchen, folder / "nowhere")
