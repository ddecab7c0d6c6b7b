"""A backup, an export and an office hold what is left."""

from __future__ import annotations

import datetime as dt
import io
import json

import pytest
import sqlalchemy as sa

from frywright.ledger.anchors import anchored, compare, read_anchors
from frywright.ledger.backup import backup, check, import_lines, restore
from frywright.ledger.export import json_lines
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.facts.fleet import AnchorKept
from frywright.ledger.replica import Followed, follow_all, take
from frywright.ledger.store import Store
from frywright.ledger.tables import ENTRY
from frywright.model.entry import DROPPED
from frywright.model.errors import RecordError
from frywright.rooms.clock import now, played
from frywright.rooms.fleet.office import newest_anchor
from frywright.rooms.hall import write
from frywright.rooms.records.dropping import drop_entries
from tests.ledger.dropped.drops import LONG_AGO, TOLD, tap


def test_a_backup_an_export_and_a_copy_hold_what_is_left(store, tmp_path):
    """Each verifies alone; one with a dropped entry more is refused."""
    drop_entries(store, TOLD)
    told = backup(store, tmp_path / "b.zip")
    assert check(tmp_path / "b.zip") == told
    back = Store.file(tmp_path / "back" / "b.db", now)
    restore(tmp_path / "b.zip", back)
    assert back.verify() == store.verify()
    lines = io.StringIO()
    json_lines(store.entries(), lines)
    out = Store.file(tmp_path / "out" / "o.db", now)
    assert import_lines(io.BytesIO(lines.getvalue().encode()), out) == 13
    assert out.verify() == store.verify()
    rows = [json.loads(line) for line in lines.getvalue().splitlines()]
    rows[6] |= {"kind": DROPPED, "author": "", "versions": {}, "payload": {"kind": rows[6]["kind"]}}
    text = "\n".join(json.dumps(row) for row in rows)
    with pytest.raises(RecordError, match="Entry 7 is empty"):
        import_lines(io.BytesIO(text.encode()), Store.file(tmp_path / "bad" / "o.db", now))
    back.close()
    out.close()


def rows_of(store, key=""):
    """Every row of a kitchen, whole."""
    query = sa.select(ENTRY).where(ENTRY.c.site == key).order_by(ENTRY.c.number)
    with store.looking() as connection:
        return [tuple(row)[1:] for row in connection.execute(query)]


def test_an_office_follows_what_two_people_dropped_at_the_site(filed, store, tmp_path):
    """Sent whole before: emptied when the entry arrives that says so. Sent afterwards: it comes empty. Both
    are then the site's own record row for row, and what the office remembered of them is gone.
    """
    early, late = store, Store.file(tmp_path / "late" / "o.db", now)
    take(early, "lane", list(filed.entries()), now())
    before = rows_of(early)
    assert len(list(early.at("lane").facts(BoardTap))) == 7
    drop_entries(filed, TOLD)
    items = list(filed.entries())
    take(early, "lane", items, now())
    take(early, "lane", items, now())
    take(late, "lane", items[:5], now())
    with pytest.raises(RecordError, match="is empty, and no later entry"):
        late.at("lane").verify()
    take(late, "lane", items[5:], now())
    for office in (early, late):
        assert office.at("lane").verify() == filed.verify()
        assert rows_of(office, "lane") == rows_of(filed)
        assert len(list(office.at("lane").facts(BoardTap))) == 2
        assert follow_all(office, "lane", now()) == Followed(count=0, left=())
    assert rows_of(early) == before  # its own of the same numbers stay
    late.close()


@pytest.mark.parametrize(
    ("change", "why"),
    [
        ({"second": "Ana Vale"}, "names no two people"),
        ({"who": ""}, "names no two people"),
        ({"digest": "0" * 64}, "not what it says"),
        ({"entries_count": 2}, "not what it says"),
    ],
)
def test_an_office_follows_nothing_that_does_not_fit(filed, tmp_path, change, why):
    """The entry is taken, for it is the site's word; what was sent before stays whole; the office hears."""
    office = Store.file(tmp_path / "office" / "o.db", now)
    take(office, "lane", list(filed.entries()), now())
    drop_entries(filed, TOLD)
    (told,) = filed.facts(EntriesDropped)
    told = EntriesDropped.read({**told.fact.payload(), **change})
    number = write(office.at("lane"), told).number  # as a forger at the site would send it
    found = follow_all(office, "lane", now())
    assert found.count == 0 and [n for n, _ in found.left] == [number] and why in str(found.left[0][1])
    assert len(list(office.at("lane").facts(BoardTap))) == 7
    office.close()


def test_a_site_whose_clock_ran_ahead_empties_nothing_at_the_office(filed, tmp_path):
    """Two years by the office's own clock; the site's is three years ahead."""
    office = Store.file(tmp_path / "office" / "o.db", now)
    take(office, "lane", list(filed.entries()), now())
    drop_entries(filed, TOLD)
    early = now() - dt.timedelta(days=3 * 365)
    take(office, "lane", list(filed.entries()), early)
    assert len(list(office.at("lane").facts(BoardTap))) == 7
    assert "its time is not over" in str(follow_all(office, "lane", early).left[0][1])
    assert follow_all(office, "lane", now()).count == 6
    assert office.at("lane").verify() == filed.verify()
    office.close()


def test_an_office_drops_its_own_old_anchors_and_keeps_the_newest_of_each_site(tmp_path):
    """An anchor says all that an older one of the same site said."""
    office, site = (Store.file(tmp_path / name / "o.db", now) for name in ("office", "site"))
    with played(now() - LONG_AGO):
        for n in range(3):
            tap(site, n)
            take(office, "lane", list(site.entries()), now())
            anchor = anchored(site, site.last(), now()).text
            for key in ("lane", "mill"):
                write(office, AnchorKept(key=key, entry_number=n + 1, text=anchor))
    found = drop_entries(office, {**TOLD, "term": "anchors", "years": "3"})
    assert found.numbers == (1, 2, 3, 4)
    assert [(a.fact.key, a.fact.entry_number) for a in office.facts(AnchorKept)] == [("lane", 3), ("mill", 3)]
    assert office.verify()[0] == 7
    (kept,) = read_anchors(newest_anchor(office, "lane").fact.text)
    compare(office.at("lane"), [kept])
    office.close()
    site.close()


def test_a_backup_of_before_put_back_is_noticed(filed, tmp_path):
    """It ends before the anchor that was kept after the drop."""
    backup(filed, tmp_path / "b.zip")
    drop_entries(filed, TOLD)
    anchor = anchored(filed, filed.last(), now())
    back = Store.file(tmp_path / "back" / "b.db", now)
    restore(tmp_path / "b.zip", back)
    with pytest.raises(RecordError, match="an older copy stands in place"):
        compare(back, [anchor])
    back.close()
