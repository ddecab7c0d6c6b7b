"""A probe below the limit: back in the oil, probed again, disposition, cause, earlier loads; nothing closes
before; complaints find their loads; the pack tells all of it.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import zipfile
from dataclasses import asdict, fields
from pathlib import Path

import pytest
from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.model.now import Harm
from frywright.physics.steam import boiling_temp_c
from frywright.rooms import hall
from frywright.rooms.care import upkeep
from frywright.rooms.care.upkeep import care_rows
from frywright.rooms.clock import now, played
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.readings import mend_reading, tell_probe
from frywright.rooms.records import corrective, pack, pack_paper
from frywright.rooms.records.now import CASES_SHOWN, now_lines
from frywright.rooms.records.open_cases import still_open
from frywright.rooms.records.privacy import remove_name
from frywright.rooms.thermometers import record_check
from frywright.voice.tongue import translator
from frywright.web.app import make_app
from tests.rooms.taps import tap

DAY = dt.date(2026, 11, 20)
FORM = {
    "fryer": "alder",
    "product": "bone_in",
    "temp": "158",
    "thermometer": "T1",
    "pieces": "32",
    "who": "Ana Lund",
}


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def at(kitchen, hour, day=DAY):
    """A moment of the business day."""
    return moment_of(kitchen.trade, day, hour * 3600.0)


def drop(store, kitchen, hour, fryer="alder", pieces=32, product="bone_in"):
    """A load as the board records it."""
    fact = tap(DAY, f"{fryer}{hour}", at_s=hour * 3600.0, fryer=fryer, product=product, pieces_count=pieces)
    return hall.write(store, fact, at(kitchen, hour)).number


def step(store, kitchen, case, name, **more):
    """A step of a case."""
    return corrective.tell_step(store, kitchen, case, {"step": name, "who": "Ana Lund", **more})


def test_the_limit_has_the_thermometers_error_on_top(store, kitchen):
    """166 °F on a thermometer good to 2 °F does not meet 165; 168 does and opens nothing."""
    _, case = tell_probe(store, kitchen, {**FORM, "temp": "166"}, at(kitchen, 12))
    assert case is not None
    reading, case = tell_probe(store, kitchen, {**FORM, "temp": "168"}, at(kitchen, 12))
    assert case is None
    assert reading.fact.checked is False


def test_a_case_closes_only_when_everything_is_decided(store, kitchen):
    """No re-probe before the oil, nothing served before a probe meets the limit, no close without
    disposition, cause and earlier loads.
    """
    tell_probe(store, kitchen, {**FORM, "temp": "175"}, at(kitchen, 11))
    drop(store, kitchen, 10.5)
    first, second = drop(store, kitchen, 11.5), drop(store, kitchen, 12.0)
    drop(store, kitchen, 11.7, fryer="cedar")
    _, opened = tell_probe(store, kitchen, FORM, at(kitchen, 12.25))
    case = opened.number
    assert [x.number for x in corrective.earlier_loads(store, kitchen, corrective.case_of(store, case))] == [
        first,
        second,
    ]
    with pytest.raises(InputError, match="back in the oil"):
        step(store, kitchen, case, "reprobe", temp="180", thermometer="T2")
    step(store, kitchen, case, "recook")
    step(store, kitchen, case, "reprobe", temp="160", thermometer="T2")
    with pytest.raises(InputError, match="nothing is served"):
        step(store, kitchen, case, "disposition", disposition="served")
    step(store, kitchen, case, "reprobe", temp="181", thermometer="T2")
    with pytest.raises(InputError, match="a disposition; a cause; every earlier load"):
        step(store, kitchen, case, "closed")
    step(store, kitchen, case, "disposition", disposition="held")
    step(store, kitchen, case, "cause", cause="oil", words="oil stood at 300")
    step(store, kitchen, case, "earlier", load=str(first), decision="discarded")
    step(store, kitchen, case, "earlier", load=str(second), decision="held")
    with pytest.raises(InputError, match=r"held is served or discarded; every earlier"):
        step(store, kitchen, case, "closed")
    step(store, kitchen, case, "disposition", disposition="served")
    with pytest.raises(InputError, match="why it is released"):
        step(store, kitchen, case, "earlier", load=str(second), decision="released")
    step(store, kitchen, case, "earlier", load=str(second), decision="released", words="probed at 180 F")
    step(store, kitchen, case, "closed")
    with pytest.raises(InputError, match="closed"):
        step(store, kitchen, case, "cause", cause="oil")
    view = corrective.case_view(store, kitchen, corrective.case_of(store, case), translator("es"))
    assert view.closed
    assert "límite" in view.found
    assert store.verify()[0] > 10


@pytest.mark.parametrize(
    "bad",
    [
        {"temp": "hot"},
        {"temp": "400"},
        {"thermometer": ""},
        {"fryer": "elm"},
        {"product": "pie"},
        {"pieces": "-3"},
        {"temp": ""},
    ],
)
def test_what_cannot_be_is_refused(store, kitchen, bad):
    """And writes nothing."""
    count = store.last().number
    with pytest.raises(InputError):
        tell_probe(store, kitchen, {**FORM, **bad})
    assert store.last().number == count


def test_cases_by_hand(store, kitchen):
    """A hold failure and a complaint have no probe to meet; unknown kinds and wordless ones are refused."""
    case = corrective.open_case(
        store,
        kitchen,
        {"what": "hold", "words": "cabinet at 120 F for an hour", "product": "bone_in", "pieces": "40"},
    ).number
    step(store, kitchen, case, "disposition", disposition="discarded")
    step(store, kitchen, case, "cause", cause="hold")
    step(store, kitchen, case, "closed")
    for bad in ({"what": "mood"}, {"words": ""}, {"fryer": "elm"}):
        with pytest.raises(InputError):
            corrective.open_case(store, kitchen, {"what": "complaint", "words": "pink at the bone", **bad})
    with pytest.raises(InputError, match="number of a case"):
        step(store, kitchen, 1, "recook")


def test_a_line_of_the_list_says_what_the_case_says(store, kitchen):
    """The newest first, as many as asked for; one that is closed is not open, nor wanted now."""
    for hour in (11, 12, 13):
        drop(store, kitchen, hour)
    numbers = [
        corrective.open_case(store, kitchen, {"what": "hold", "words": f"hold too long {n}"}).number
        for n in range(4)
    ]
    step(store, kitchen, numbers[1], "disposition", disposition="discarded")
    step(store, kitchen, numbers[1], "cause", cause="hold")
    step(store, kitchen, numbers[1], "closed")
    step(store, kitchen, numbers[2], "cause", cause="hold")
    lines = corrective.newest_lines(store, kitchen, 3, translator("es"))
    assert [line.number for line in lines] == numbers[:0:-1]
    for line in lines:
        case = corrective.case_of(store, line.number)
        view = corrective.case_view(store, kitchen, case, translator("es"))
        assert {f.name: getattr(view, f.name) for f in fields(line)} == asdict(line)
    assert [line.closed for line in lines] == [False, False, True]
    still = [numbers[3], numbers[2], numbers[0]]
    assert [item.number for item in still_open(store)] == still
    assert [line.about for line in now_lines(store, kitchen) if line.act == "case"] == [str(n) for n in still]


def test_open_cases_follow_what_another_program_does(store, kitchen):
    """Opened, closed and a name removed by another process: the next look sees it, one that nothing follows
    is kept.
    """
    other = Store.file(Path(store.engine.url.database), now)
    drop(store, kitchen, 11)
    case = corrective.open_case(store, kitchen, {"what": "hold", "words": "hold too long", "who": "Ana Lund"})
    (first,) = still_open(other)
    assert first.number == case.number and still_open(other)[0] is first
    more = corrective.open_case(store, kitchen, {"what": "complaint", "words": "pink at the bone"}).number
    assert [x.number for x in still_open(other)] == [more, case.number]
    assert "Ana Lund" in str(still_open(other)[1].fact)
    remove_name(store, "Ana Lund", "Olive", "asked for it")
    assert "Ana Lund" not in str(still_open(other)[1].fact)
    step(store, kitchen, case.number, "disposition", disposition="discarded")
    step(store, kitchen, case.number, "cause", cause="hold")
    step(store, kitchen, case.number, "closed")
    assert [x.number for x in still_open(other)] == [more]


def test_a_complaint_is_traced_to_its_loads(store, kitchen):
    """Only loads on the shelf then, within their hold life; the oldest most likely; evidence and gaps named;
    chances sum to one.
    """
    drop(store, kitchen, 10.0)
    first, second = drop(store, kitchen, 12.0), drop(store, kitchen, 12.5, fryer="birch", pieces=48)
    drop(store, kitchen, 13.2)
    tell_probe(store, kitchen, {**FORM, "temp": "178"}, at(kitchen, 12.25))
    found = corrective.trace(store, kitchen, "bone_in", at(kitchen, 13.1))
    assert [row.number for row in found.loads] == [first, second]
    assert sum(row.chance_frac for row in found.loads) == pytest.approx(1.0, abs=0.002)
    assert found.loads[0].chance_frac > 0.8
    assert found.loads[0].readings[0].core == "178 °F"
    assert "Loads without a reading" in " ".join(found.gaps)
    assert "No load on record" in corrective.trace(store, kitchen, "tenders", at(kitchen, 13.1)).gaps[0]


@pytest.mark.slow
def test_the_pack_of_a_month(store, kitchen):
    """Gaps come first, cases and contractors are in it, formulas are disarmed, a range that runs backwards is
    refused; under ten seconds for a busy month.
    """
    with store.writing():
        for n in range(9000):
            moment = at(kitchen, 10.0 + (n % 300) / 30.0, DAY - dt.timedelta(days=n // 300))
            fact = tap(DAY - dt.timedelta(days=n // 300), f"b{n}", at_s=0.0, who="=cmd")
            hall.write(store, fact, moment)
    _, opened = tell_probe(store, kitchen, FORM, at(kitchen, 12.25))
    upkeep.tick(
        store,
        kitchen,
        {
            "fryer": "alder",
            "task": "suppression",
            "who": "Cole",
            "role": "licensed",
            "note": "tag 5521",
            "date": "2026-11-19",
        },
    )
    first, last = DAY - dt.timedelta(days=30), DAY
    found = pack.pack_of(store, kitchen, first, last, care=care_rows(store, kitchen))
    data, view = pack_paper.pack_pdf(kitchen, found, "es", translator("es")), found.view
    assert data.startswith(b"%PDF")
    [loads] = view.loads
    assert (loads.product, loads.fryer) == (
        "Bone-in chicken, 8-piece",
        "Alder, three-head pressure vat",
    )
    assert (loads.count, loads.readings) == (9000, 0)  # the one reading came days late
    assert loads.run == 9000
    assert view.below == 1
    assert any("no probe reading. Days: 30 " in g for g in view.gaps)
    assert any("No entry of any kind. Days: 1 " in g for g in view.gaps)
    assert view.cases[0].number == opened.number
    assert any(r.last_date == "2026-11-19" for r in view.contractors)
    with zipfile.ZipFile(io.BytesIO(pack.csv_zip(store, kitchen, first, last))) as archive:
        rows = list(csv.DictReader(io.StringIO(archive.read("cooks.csv").decode())))
        assert len(rows) == 9000
        assert rows[0]["who"] == "'=cmd"
        assert "readings.csv" in archive.namelist()
    for low, high in ((last, first), (dt.date(2020, 1, 1), last)):
        with pytest.raises(InputError):
            pack.gather(store, kitchen, low, high)


def test_a_load_served_and_then_read_below_does_not_close(store, kitchen):
    """The newest re-probe counts: served at 180, read again at 120, it is undecided what becomes of it."""
    case = tell_probe(store, kitchen, FORM, at(kitchen, 12.0))[1].number
    step(store, kitchen, case, "recook")
    step(store, kitchen, case, "reprobe", temp="180", thermometer="T2")
    step(store, kitchen, case, "disposition", disposition="served")
    step(store, kitchen, case, "reprobe", temp="120", thermometer="T2")
    step(store, kitchen, case, "cause", cause="oil")
    with pytest.raises(InputError, match="newest re-probe"):
        step(store, kitchen, case, "closed")
    with pytest.raises(InputError, match="nothing is served"):
        step(store, kitchen, case, "disposition", disposition="served")
    step(store, kitchen, case, "disposition", disposition="discarded")
    step(store, kitchen, case, "closed")
    assert corrective.case_of(store, case).closed


def test_a_good_reading_that_comes_later_shortens_no_list(store, kitchen):
    """Typed in after the case was open, with a time before it: the earlier loads still have to be decided."""
    for hour in (11.0, 11.3, 11.6):
        drop(store, kitchen, hour)
    _, opened = tell_probe(store, kitchen, FORM, at(kitchen, 12.0))
    case = corrective.case_of(store, opened.number)
    before = corrective.earlier_loads(store, kitchen, case)
    assert len(before) == 3
    tell_probe(store, kitchen, {**FORM, "temp": "190"}, at(kitchen, 11.99))
    assert corrective.earlier_loads(store, kitchen, case) == before


def earlier_of(store, kitchen, hour):
    """Earlier loads of a case that a low reading opens now, by the time they were dropped."""
    opened = tell_probe(store, kitchen, FORM, at(kitchen, hour))[1]
    case = corrective.case_of(store, opened.number)
    return [load.at for load in corrective.earlier_loads(store, kitchen, case)]


def test_a_mistyped_good_reading_clears_no_load(store, kitchen):
    """190 was 109: the load that it seemed to clear has to be decided."""
    drop(store, kitchen, 10.5)
    good, _ = tell_probe(store, kitchen, {**FORM, "temp": "190"}, at(kitchen, 11))
    mend_reading(store, kitchen, good.number, {"temp": "109", "words": "turned round", "who": "Ana Lund"})
    assert earlier_of(store, kitchen, 12) == ["10:30"]


def test_a_good_reading_clears_loads_of_its_own_product_that_were_out_of_the_oil(store, kitchen):
    """One of potatoes says nothing of the bird; one while a load cooks is of the load before."""
    drop(store, kitchen, 10.0)
    drop(store, kitchen, 10.5, product="wedges")
    drop(store, kitchen, 11.0)
    tell_probe(store, kitchen, {**FORM, "product": "wedges", "temp": "190"}, at(kitchen, 11.05))
    assert earlier_of(store, kitchen, 11.1) == ["10:00", "11:00"]
    tell_probe(store, kitchen, {**FORM, "temp": "190"}, at(kitchen, 11.05))
    assert earlier_of(store, kitchen, 11.1) == ["11:00"]
    tell_probe(store, kitchen, {**FORM, "temp": "190"}, at(kitchen, 11.25))
    assert earlier_of(store, kitchen, 12) == []


def test_a_case_without_a_board_says_that_earlier_loads_are_unknown(store, kitchen):
    """On its page and in the pack; with a load on the board it says nothing of the kind."""
    first = tell_probe(store, kitchen, FORM, at(kitchen, 12))[1].number
    drop(store, kitchen, 12.5)
    second = tell_probe(store, kitchen, FORM, at(kitchen, 13))[1].number
    views = [corrective.case_view(store, kitchen, corrective.case_of(store, n)) for n in (first, second)]
    assert "in the 8 hours before" in views[0].unknown_before
    assert views[1].unknown_before == ""
    page = TestClient(make_app(store), base_url="http://127.0.0.1").get(f"/records/case/{first}?lang=en").text
    assert views[0].unknown_before in page


def misreading(store, kitchen, name, by_k, moment):
    """A check that shows a thermometer to read high (or low) at both points."""
    with played(moment):
        boils_c = boiling_temp_c(kitchen.site.atmosphere_pa)
        return record_check(store, kitchen, name, by_k, boils_c + by_k)[0]


def test_a_reading_short_only_by_its_thermometers_own_error_opens_a_case(store, kitchen):
    """75.5 °C meets 73.9 and 1.1 K on top; by a thermometer that reads 1 K high it is 74.5 and does not."""
    form = {**FORM, "temp": "75.5 C"}
    assert misreading(store, kitchen, "T1", 1.0, at(kitchen, 10)).outcome == "good"
    other, none = tell_probe(store, kitchen, {**form, "thermometer": "T9"}, at(kitchen, 12))
    assert none is None and other.fact.corrected_c is None
    reading, case = tell_probe(store, kitchen, form, at(kitchen, 12))
    assert reading.fact.corrected_c == pytest.approx(74.5, abs=0.01)
    assert case.fact.corrected_c == reading.fact.corrected_c
    view = corrective.case_view(store, kitchen, corrective.case_of(store, case.number))
    assert "168 °F, which is 166 °F" in view.found
    assert (view.at, view.thermometer) == ("2026-11-20 12:00-07:00", "T1")


def test_a_thermometer_that_reads_low_excuses_nothing(store, kitchen):
    """Read 74 by a thermometer 2 K low, the piece may be 76: as read it is below, and the case opens."""
    misreading(store, kitchen, "T1", -2.0, at(kitchen, 10))
    reading, case = tell_probe(store, kitchen, {**FORM, "temp": "74 C"}, at(kitchen, 12))
    assert case is not None
    assert reading.fact.judged_c == 74.0


def test_a_good_reading_by_a_thermometer_that_reads_high_shortens_no_list(store, kitchen):
    """Loads before it stay in question: corrected it was no good reading."""
    misreading(store, kitchen, "T1", 1.0, at(kitchen, 9))
    drop(store, kitchen, 10.5)
    tell_probe(store, kitchen, {**FORM, "temp": "75.5 C"}, at(kitchen, 11))
    opened = tell_probe(store, kitchen, FORM, at(kitchen, 12))[1]
    assert len(corrective.earlier_loads(store, kitchen, corrective.case_of(store, opened.number))) == 1


def test_a_re_probe_says_with_which_thermometer(store, kitchen):
    """No mark, no re-probe; its own error is taken off as for the first reading."""
    case = tell_probe(store, kitchen, FORM, at(kitchen, 12))[1].number
    misreading(store, kitchen, "T3", 1.0, now())
    step(store, kitchen, case, "recook")
    with pytest.raises(InputError, match="mark on the thermometer"):
        step(store, kitchen, case, "reprobe", temp="180")
    short = step(store, kitchen, case, "reprobe", temp="75.5 C", thermometer="T3").fact
    assert (short.thermometer, short.meets) == ("T3", False)
    assert step(store, kitchen, case, "reprobe", temp="77 C", thermometer="T3").fact.meets
    shown = corrective.case_view(store, kitchen, corrective.case_of(store, case)).steps
    assert "T3" in shown[-1].detail and "corrected" in shown[1].detail


def test_of_many_open_cases_the_newest_have_a_line_and_the_others_are_counted(store, kitchen):
    """Nothing vanishes: lines and what they stand for are all open cases, and the list goes through them."""
    numbers = [
        corrective.open_case(store, kitchen, {"what": "hold", "words": f"hold too long {n}"}).number
        for n in range(CASES_SHOWN + 3)
    ]
    step(store, kitchen, numbers[-1], "disposition", disposition="discarded")
    step(store, kitchen, numbers[-1], "cause", cause="hold")
    step(store, kitchen, numbers[-1], "closed")
    still = numbers[-2::-1]
    lines = [line for line in now_lines(store, kitchen) if line.harm is Harm.CASE]
    assert [line.about for line in lines if line.act == "case"] == [str(n) for n in still[:CASES_SHOWN]]
    assert [(line.act, line.values, line.count) for line in lines[CASES_SHOWN:]] == [
        ("cases", {"count": 2.0}, 2)
    ]
    assert sum(line.count for line in lines) == len(still)
    every, found = corrective.newest_lines, []
    while more := every(store, kitchen, 5, before=found[-1] if found else None, still=True):
        found += [line.number for line in more]
        assert not any(line.closed for line in more)
    assert found == still
    assert [c.number for c in every(store, kitchen, 3, before=numbers[2])] == numbers[1::-1]
