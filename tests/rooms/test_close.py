"""The close of a day: order by what each vat needs, gates without a way past, one move of oil at a time,
never in the rush.
"""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.catalog import load as catalog
from frywright.ledger.facts.day import CloseStepSigned
from frywright.ledger.facts.oil import OilDone, OilRefused
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.rooms.care import close, machines, upkeep, vat, waits
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import closed_steps, heat_off
from frywright.voice.tongue import translator
from tests.rooms.taps import tap

DAY = dt.date(2026, 11, 25)


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def at(kitchen, hour, day=DAY):
    """A moment of the business day."""
    return moment_of(kitchen.trade, day, hour * 3600.0)


def sign(store, kitchen, fryer, step, hour=22.0, **more):
    """A step signed by two people."""
    values = {"fryer": fryer, "step": step, "who": "Ana Lund", "second": "Ben Roe", **more}
    return close.sign_close(store, kitchen, values, at(kitchen, hour))


def old_oil(store, kitchen, fryer):
    """A vat whose readings are past the limit."""
    for day in range(14, 26):
        told = {"vat": fryer, "what": "reading", "amount": str(13 + day - 14)}
        vat.tell_oil(store, kitchen, told, at=at(kitchen, 21.5, dt.date(2026, 11, day)))


def plans(store, kitchen):
    """Fryer and plan in the order of the night."""
    return [(t.fryer.key, t.plan) for t in close.tonight(store, kitchen, today=DAY)]


def test_changes_come_first_and_what_is_out_of_use_is_left(store, kitchen):
    """Old oil is changed first, a due boil-out before it; a stopped fryer has no steps."""
    old_oil(store, kitchen, "cedar")
    machines.stop_use(store, kitchen, "birch", "oil_leak", "")
    upkeep.tick(
        store,
        kitchen,
        {"fryer": "dogwood", "task": "boil_out", "who": "Ana", "role": "lead", "date": "2026-10-01"},
        DAY,
    )
    found = plans(store, kitchen)
    assert found[0] == ("dogwood", "boil_out")
    assert found[1] == ("cedar", "discard")
    assert found[-1] == ("birch", "stopped")
    assert close.tonight(store, kitchen, today=DAY)[-1].steps == ()


def test_a_close_is_found_behind_years_of_others(store, kitchen):
    """Of its own day alone, oldest first: neither one weeks ago nor one of the day after is in the way."""
    told = {"who": "Ana Lund", "second": "Ben Roe", "value": "0", "plan": ""}
    days = [DAY - dt.timedelta(days=n) for n in (40, 3, 1, 0, 0)] + [DAY + dt.timedelta(days=1)]
    for n, day in enumerate(days):
        fact = CloseStepSigned(date=day, fryer="alder", step=f"s{n}", **told)
        write(store, fact, happened_at=at(kitchen, 22.0 + n / 60, day))
    assert [item.fact.step for item in closed_steps(store, DAY)] == ["s3", "s4"]


def test_no_oil_before_two_people_signed_dry(store, kitchen):
    """Through a boil-out: hot oil is not moved, pH outside is rinsed again, one person is not two, and oil
    comes last; all of it is in the logs.
    """
    upkeep.tick(
        store,
        kitchen,
        {"fryer": "dogwood", "task": "boil_out", "who": "Ana", "role": "lead", "date": "2026-10-01"},
        DAY,
    )
    order = [s["key"] for s in close.tonight(store, kitchen, today=DAY)[0].steps]
    assert order == ["heat_off", "cool", "drain", "boil", "rinse", "dry", "fill", "wipe"]
    for early in ("drain", "boil", "dry", "fill"):
        with pytest.raises(InputError, match="no way past"):
            sign(store, kitchen, "dogwood", early)
    sign(store, kitchen, "dogwood", "heat_off", 18.0)
    for hot in ("180", "60 C", "warm", ""):
        with pytest.raises(InputError):
            sign(store, kitchen, "dogwood", "cool", value=hot)
    sign(store, kitchen, "dogwood", "cool", value="110")
    for same in ("Ana Lund", "ana  LUND", "Ana\u00a0Lund"):
        with pytest.raises(InputError, match="another person"):
            sign(store, kitchen, "dogwood", "drain", 22.2, second=same)
    sign(store, kitchen, "dogwood", "drain", 22.2)
    with pytest.raises(InputError, match="takes 20 min or more"):
        sign(store, kitchen, "dogwood", "boil", 22.5)
    sign(store, kitchen, "dogwood", "boil", 22.6)
    for ph in ("9.0", "5", "soapy"):
        with pytest.raises(InputError):
            sign(store, kitchen, "dogwood", "rinse", 22.7, value=ph)
    sign(store, kitchen, "dogwood", "rinse", 22.7, value="7,0")
    with pytest.raises(InputError, match="dry"):
        sign(store, kitchen, "dogwood", "fill", 22.8)
    with pytest.raises(InputError):
        sign(store, kitchen, "dogwood", "dry", 22.8, second="")
    sign(store, kitchen, "dogwood", "dry", 22.8)
    sign(store, kitchen, "dogwood", "fill", 22.9)
    with pytest.raises(InputError, match="not signed yet"):
        sign(store, kitchen, "dogwood", "fill", 22.9)
    assert [e.fact.what for e in store.facts(OilDone)] == ["discard", "fill"]
    assert upkeep.last_done(store)["dogwood", "boil_out"].date == dt.date(2026, 11, 25)
    assert dict(plans(store, kitchen))["dogwood"] == "boil_out"


def test_one_move_of_oil_at_a_time_and_none_in_the_rush(store, kitchen):
    """The second vat waits for the first; at half past six nothing is moved; the reading and top-up are told
    to the oil log.
    """
    for fryer in ("alder", "birch"):
        sign(store, kitchen, fryer, "heat_off", 18.0)
    with pytest.raises(InputError, match="one move of oil at a time"):
        sign(store, kitchen, "birch", "filter")
    with pytest.raises(InputError, match="rush"):
        sign(store, kitchen, "alder", "filter", hour=18.5)
    with pytest.raises(InputError, match="another person"):
        sign(store, kitchen, "alder", "filter", second="")
    sign(store, kitchen, "alder", "filter")
    with pytest.raises(InputError, match=r"after 22:05: it takes 5 min or more"):
        sign(store, kitchen, "birch", "filter", hour=22.0 + 12 / 3600)
    sign(store, kitchen, "birch", "filter", hour=22.1)
    with pytest.raises(InputError, match="look at the meter"):
        sign(store, kitchen, "alder", "reading", value="140")
    assert len(list(store.facts(OilRefused))) == 1
    sign(store, kitchen, "alder", "reading", value="14.5")
    sign(store, kitchen, "alder", "top_up", value="5 lb")
    sign(store, kitchen, "birch", "top_up", value="0")
    told = [(e.fact.vat, e.fact.what) for e in store.facts(OilDone)]
    assert told == [("alder", "filter"), ("birch", "filter"), ("alder", "reading"), ("alder", "top_up")]


@pytest.mark.parametrize(
    "values",
    [
        {"fryer": "elm"},
        {"step": "dance"},
        {"who": ""},
        {"fryer": "store", "step": "dance"},
        {"step": "lid", "fryer": "cedar"},
    ],
)
def test_nonsense_writes_nothing(store, kitchen, values):
    """An unknown fryer or step, nobody's name, a lid on an open fryer."""
    count = len(list(store.entries()))
    with pytest.raises(InputError):
        close.sign_close(
            store, kitchen, {"fryer": "alder", "step": "heat_off", "who": "Ana", **values}, at(kitchen, 22)
        )
    assert len(list(store.entries())) == count


def test_the_page_shows_what_is_shut_and_why(store, kitchen):
    """In both languages; a night after midnight belongs to its business day; the next day starts fresh."""
    sign(store, kitchen, "store", "waste")
    view = close.close_day_view(store, kitchen, at=at(kitchen, 25.5))
    assert view.date == "2026-11-25"
    assert next(s.done for s in view.store)
    shut = [s for f in view.fryers for s in f.steps if s.shut]
    assert shut
    assert all(s.shut.startswith("after") for s in shut)
    spanish = close.close_day_view(store, kitchen, "es", translator("es"), at=at(kitchen, 22))
    assert "Última carga fuera" in spanish.fryers[0].steps[0].title
    tomorrow = close.close_day_view(store, kitchen, at=at(kitchen, 22, DAY + dt.timedelta(days=1)))
    assert not any(s.done for s in tomorrow.store)


def test_what_is_done_takes_no_more_time(store, kitchen):
    """A signed step leaves the count of open steps, and its minutes leave the time that is left."""
    before = close.close_day_view(store, kitchen, at=at(kitchen, 22))
    sign(store, kitchen, "store", "waste")
    after = close.close_day_view(store, kitchen, at=at(kitchen, 22))
    waste = next(s for s in after.store if s.key == "waste")
    assert waste.minutes > 0
    assert before.minutes_left - after.minutes_left == waste.minutes
    assert before.open_count - after.open_count == 1


def test_gas_and_power_go_off_after_every_heat(store, kitchen):
    """The store's last step waits for the heat of every fryer that is in use and names them; the page too."""
    machines.stop_use(store, kitchen, "birch", "oil_leak", "")
    sign(store, kitchen, "alder", "heat_off")
    with pytest.raises(InputError, match=r"Cedar.*Dogwood") as shut:
        sign(store, kitchen, "store", "off")
    assert "Alder" not in str(shut.value)
    assert "Birch" not in str(shut.value)
    row = next(s for s in close.close_day_view(store, kitchen, at=at(kitchen, 22)).store if s.key == "off")
    assert "Cedar" in row.shut
    sign(store, kitchen, "cedar", "heat_off")
    sign(store, kitchen, "dogwood", "heat_off")
    sign(store, kitchen, "store", "off")


def test_a_load_after_it_takes_the_heats_signature_back(store, kitchen):
    """Signed off at 22:00, a load at 22:10: the oil is hot again, so no oil is moved and the store is not off
    before the heat is signed off anew.
    """
    for fryer in ("alder", "birch", "cedar", "dogwood"):
        sign(store, kitchen, fryer, "heat_off")
    assert heat_off(store, DAY) == {"alder", "birch", "cedar", "dogwood"}
    write(store, tap(DAY, "late", at_s=22.2 * 3600), at(kitchen, 22.2))
    write(store, tap(DAY, "out", at_s=22.4 * 3600, what="lift"), at(kitchen, 22.4))
    assert "alder" not in heat_off(store, DAY)
    for fryer, step in (("alder", "filter"), ("store", "off")):
        with pytest.raises(InputError, match="heat"):
            sign(store, kitchen, fryer, step, 22.6)
    sign(store, kitchen, "alder", "heat_off", 22.6)
    sign(store, kitchen, "store", "off", 22.7)
    assert "alder" in heat_off(store, DAY)


def test_heat_off_waits_for_the_load_in_the_oil(store, kitchen):
    """The board holds a load in Alder: its heat is not off; once lifted it is; yesterday's is past."""
    write(store, tap(DAY - dt.timedelta(days=1), key="old", what="drop", fryer="cedar", product="wedges"))
    write(store, tap(DAY, key="in", what="drop", fryer="alder", product="bone_in"))
    with pytest.raises(InputError, match="tap it on the board"):
        sign(store, kitchen, "alder", "heat_off")
    write(store, tap(DAY, key="out", what="lift", fryer="alder"))
    sign(store, kitchen, "alder", "heat_off")
    sign(store, kitchen, "cedar", "heat_off")


def test_oil_cools_no_faster_than_its_vat(store, kitchen):
    """Ten minutes after the last load no oil is at 110 °F, whenever the heat was signed off; hours later it
    may be. What is expected is checked against Newton's law of cooling, worked out here by small steps.
    """
    old_oil(store, kitchen, "cedar")
    sign(store, kitchen, "cedar", "heat_off", 15.0)
    write(store, tap(DAY, key="in", what="drop", fryer="cedar", product="wedges"), at(kitchen, 21.7))
    write(store, tap(DAY, key="out", what="lift", fryer="cedar"), at(kitchen, 21.8))
    sign(store, kitchen, "cedar", "heat_off", 21.9)
    with pytest.raises(InputError, match="or hotter 12 min after it was last at heat"):
        sign(store, kitchen, "cedar", "cool", 22.0, value="110")
    fryer = kitchen.fryer("cedar")
    oil = catalog.oils()[fryer.oil]
    room = kitchen.site.room_temp_c
    temp = min(s.set_c for p in kitchen.programs if p.fryer == "cedar" for s in p.stages)
    cp = oil.cp_0c_j_kgk + oil.cp_slope_j_kgk2 * 0.5 * (temp + room)
    for _ in range(3600):
        temp -= 3.0 * fryer.loss_w_k * (temp - room) / (fryer.oil_mass_kg * cp + fryer.metal_heat_j_k)
    assert waits.coolest_c(kitchen, fryer, 3600.0) == pytest.approx(temp, abs=0.05)
    sign(store, kitchen, "cedar", "cool", 26.5, value="110")


def test_the_page_says_when_a_step_opens(store, kitchen):
    """A filter turn just after the heat went off, and the next fryer's just after it: not before a time."""
    for fryer in ("alder", "birch"):
        sign(store, kitchen, fryer, "heat_off", 22.0)
    view = close.close_day_view(store, kitchen, at=at(kitchen, 22.01))
    shut = {(f.key, s.key): s.shut for f in view.fryers for s in f.steps}
    assert shut["alder", "filter"] == "not before 22:05"
    sign(store, kitchen, "alder", "filter", 22.2)
    view = close.close_day_view(store, kitchen, at=at(kitchen, 22.21))
    shut = {(f.key, s.key): s.shut for f in view.fryers for s in f.steps}
    assert shut["birch", "filter"] == "not before 22:17"
