"""The invented scenario with a few of its rows: each act at its moment, by its person, with what it says."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.catalog import load as catalog
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms import demo
from frywright.rooms.clock import now, played
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records.corrective import cases

NOON = dt.datetime(2026, 11, 26, 19, 0, tzinfo=dt.UTC)
"""Noon of a Thursday where the demo stands, seven hours behind."""
LIVES = ("tenders cedar", "wings birch", "tenders dogwood", "bone-in cedar")


def scenario():
    """Two days of it, one row of most things, and four programs."""
    told = dict(catalog.table("demo/fortnight.toml"))
    lives = {row["program"]: row for row in told["life"]}
    changed = {key: value for key, value in lives["bone-in cedar"].items() if key != "proved"}
    told |= {name: told[name][:1] for name in ("reading", "oil", "low")}
    told |= {"days_count": 2, "drop": told["drop"][:2], "care": told["care"][:2]}
    told["close"] = {**told["close"], "but": [2]}
    told["life"] = [*(lives[name] for name in LIVES[:3]), changed]
    return told


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    found = Store.file(tmp_path_factory.mktemp("demo") / "d.db", now)
    with played(NOON):
        demo._Fortnight(found, scenario()).play()
    yield found
    found.close()


@pytest.fixture(scope="module")
def rows(store):
    """Kind, days ago and local time, author and payload of every entry."""
    found = []
    for item in store.entries(named=True):
        at = item.entry.happened_at - dt.timedelta(hours=7)
        ago = (dt.date(2026, 11, 26) - at.date()).days
        author = item.entry.author.removesuffix(" (invented)")
        found.append((item.entry.kind, ago, f"{at:%H:%M}", author, item.entry.payload))
    return found


def of(rows, kind, **named):
    """Rows of a kind whose payload says so."""
    return [r for r in rows if r[0] == kind and all(r[4].get(k) == v for k, v in named.items())]


def test_four_weeks_of_sales_are_read_in_two_halves(rows):
    """Two weeks before the first day, by the machine; the other two up to yesterday, by a lead at night."""
    read = [(*r[1:4], r[4]["from"], r[4]["to"]) for r in of(rows, "sales_file")]
    assert read == [
        (14, "05:00", "unnamed on this machine", "2026-10-29", "2026-11-11"),
        (1, "22:45", "Maple", "2026-11-12", "2026-11-25"),
    ]


def test_loads_are_dropped_and_lifted_by_turns(rows):
    """Two a day for three days, each out after its card's time; the crew takes turns; nothing lies ahead."""
    taps = [(r[1], r[2], r[3], r[4]["what"], r[4]["fryer"]) for r in of(rows, "day_event")]
    assert taps[:4] == [
        (2, "10:45", "Hazel", "drop", "alder"),
        (2, "10:57", "Hazel", "lift", "alder"),
        (2, "11:35", "Rowan", "drop", "birch"),
        (2, "11:47", "Rowan", "lift", "birch"),
    ]
    assert [t[2] for t in taps if t[3:] == ("drop", "alder")] == ["Hazel", "Rowan", "Hazel"]
    assert len(taps) == 12
    assert {r[4]["pieces_count"] for r in of(rows, "day_event", fryer="birch")} == {40}
    assert not of(rows, "day_event", what="discard")


def test_readings_are_taken_of_the_loads(rows):
    """184, 182 and 186 °F by turns with T1, a minute after the lift."""
    read = [r for r in of(rows, "probe_reading", fryer="alder") if r[1] <= 2]
    assert [(r[1], r[2], round(r[4]["core_c"] * 1.8 + 32)) for r in read] == [
        (2, "10:58", 186),
        (1, "10:58", 182),
        (0, "10:58", 184),
    ]
    assert {r[4]["thermometer"] for r in read} == {"T1"}


def test_a_load_below_its_limit_is_cooked_on_and_its_case_closed(store, rows):
    """Every step four minutes after the one before, by who found it."""
    (found,) = of(rows, "deviation")
    assert (found[1:4], found[4]["pieces_count"]) == ((9, "17:33", "Hazel"), 24)
    steps = [(r[2], r[4]["step"]) for r in of(rows, "deviation_step")]
    assert steps == [
        ("17:37", "recook"),
        ("17:41", "reprobe"),
        ("17:45", "disposition"),
        ("17:49", "cause"),
        ("17:57", "closed"),
    ]
    (case,) = cases(store)
    assert case.closed
    assert of(rows, "deviation_step", step="disposition")[0][4]["disposition"] == "served"


def test_oil_is_read_filtered_and_topped_up_in_the_evening(rows):
    """Filtered at 21:50, topped up at 22:00, a day without a close is explained the morning after."""
    told = [(r[1], r[2], r[4]["what"]) for r in of(rows, "oil_event") if r[4]["what"] != "reading"]
    assert told == [
        (2, "21:50", "filter"),
        (2, "22:00", "top_up"),
        (1, "21:50", "filter"),
        (1, "22:00", "top_up"),
    ]
    assert {r[2] for r in of(rows, "oil_event", what="reading")} == {"21:40"}
    assert {r[4]["vat"] for r in of(rows, "oil_event")} == {"alder"}
    assert {r[3] for r in of(rows, "oil_event")} == {"Rowan"}
    assert [(r[1], r[2], r[3]) for r in of(rows, "close_step")][:1] == [(1, "22:30", "Maple")]
    ((_, ago, at, who, payload),) = of(rows, "gap_explained")
    assert (ago, at, who) == (1, "09:30", "Maple")
    assert "2026-11-24" in str(payload.values())


def test_people_thermometers_and_care_are_on_record(rows):
    """The owner lists five people; a lead checks thermometers at 09:45; care is done on what has the part."""
    people = of(rows, "person")
    assert [r[4]["name"].split()[0] for r in people] == ["Linden", "Maple", "Aspen", "Hazel", "Rowan"]
    assert {r[1:4] for r in people} == {(14, "08:00", "Linden")}
    checks = of(rows, "thermometer_check")
    assert {(r[2], r[3]) for r in checks} == {("09:45", "Maple")}
    boils = of(rows, "care_done", task="boil_out")
    assert [r[4]["fryer"] for r in boils] == ["alder", "birch", "cedar", "dogwood"]
    assert [r[4]["fryer"] for r in of(rows, "care_done", task="lid_feel")] == ["alder", "birch"]
    assert len(of(rows, "skill")) == 5


def test_a_program_lives_from_its_proof_to_its_service(store, rows):
    """Proved, probed until it is decided, its card printed, keyed, read back, then put in service by the
    owner; a slip is read back as one; a retired one says why; a change is a new version.
    """
    kinds = ("program_proof", "program_probed", "card_printed", "program_keyed", "readback", "in_service")
    lived = [(r[0], r[1], r[2], r[3]) for kind in kinds for r in of(rows, kind, name="tenders cedar")]
    assert lived == [
        ("program_proof", 13, "09:00", "Maple"),
        ("program_probed", 10, "13:34", "Maple"),
        ("card_printed", 10, "15:30", "Maple"),
        ("program_keyed", 10, "15:40", "Maple"),
        ("readback", 10, "15:50", "Maple"),
        ("in_service", 9, "16:00", "Linden"),
    ]
    read = {r[4]["name"]: r[4]["matches"] for r in of(rows, "readback")}
    assert read == {"tenders cedar": True, "wings birch": False, "bone-in cedar": True}
    (retired,) = of(rows, "retired")
    assert (retired[4]["name"], retired[1:4]) == ("tenders dogwood", (5, "16:10", "Linden"))
    assert "tenders stay on Cedar" in retired[4]["reason"]
    kitchen = remembered_kitchen(store)
    longer = kitchen.program("bone-in cedar")
    assert (longer.version, longer.stages[0].duration_s, round(longer.stages[0].set_c * 1.8 + 32)) == (
        2,
        940,
        330,
    )


def test_a_change_of_the_kitchen_has_its_reason(store, rows):
    """One element of Dogwood is off; the kitchen before and after stand on record."""
    first, second = of(rows, "kitchen")
    assert second[1:4] == (3, "14:30", "Linden")
    assert "one element is" in second[4]["reason"]
    row = scenario()["change"]
    before, after = first[4]["text"], second[4]["text"]
    at = before.index(f'key = "{row["fryer"]}"')
    assert after == before[:at] + before[at:].replace(row["from"], row["to"], 1) != before


def test_nobodys_records_are_made_up(tmp_path):
    """A kitchen that is not invented is refused, one that has a kitchen stays as it is."""
    real = scenario()
    store = Store.file(tmp_path / "r.db", now)
    with pytest.MonkeyPatch.context() as patch:
        text = demo.demo_text().replace("invented = true", "invented = false")
        patch.setattr(demo, "demo_text", lambda: text)
        with pytest.raises(InputError, match="an invented one"):
            demo._Fortnight(store, real)
    assert list(store.entries()) == []
    store.close()
