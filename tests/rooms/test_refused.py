"""What the rooms refuse: the error stands at its field, and nothing is kept. The last value that is taken
stands beside the first that is not.
"""

from __future__ import annotations

import datetime as dt
import io
from dataclasses import replace

import pytest

from frywright.ledger.accounts import Accounts
from frywright.model.business_day import moment_of
from frywright.model.errors import AccessError, InputError
from frywright.rooms.care import vat
from frywright.rooms.care.nameplate import _number, _yes_no
from frywright.rooms.clock import now
from frywright.rooms.cook import life
from frywright.rooms.cook.intake import MOST_CHANNELS, MOST_SOURCES, Intake, Sample
from frywright.rooms.cook.live import LiveAsk, LiveRoom, Use
from frywright.rooms.cook.slots import tell_slot
from frywright.rooms.day import day
from frywright.rooms.day.board import tap_of
from frywright.rooms.day.sales import history_of
from frywright.rooms.fleet import release
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.readings import mend_reading, tell_probe
from frywright.rooms.records import company, corrective, gaps, people, reports
from tests.rooms.taps import tap

DAY = dt.date(2026, 11, 20)
SECRET = "oak leaf river stone"
FORM = {
    "fryer": "alder",
    "product": "bone_in",
    "temp": "150",
    "thermometer": "T1",
    "pieces": "32",
    "who": "Ana Lund",
}


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


@pytest.fixture
def refuses(store):
    """The act is refused at a field (or without one, by who may not), and nothing is kept."""

    def check(field, act, *args, error=InputError, **named):
        before = len(list(store.entries()))
        with pytest.raises(error) as caught:
            act(*args, **named)
        assert getattr(caught.value, "field", "") == field
        assert len(list(store.entries())) == before
        return str(caught.value)

    return check


@pytest.fixture
def ana(store):
    """The owner."""
    return people.add_account(store, "Ana Vale", "owner", SECRET)


# ---------------------------------------------------------------- people


def test_the_first_account_owns_the_kitchen(store, refuses):
    refuses("role", people.add_account, store, "Ana Vale", "crew", SECRET)
    refuses("role", people.add_account, store, "Ana Vale", "king", SECRET)
    assert people.first_owner(store, " Ana  Vale ", SECRET).name == "Ana Vale"
    refuses("", people.first_owner, store, "Bo Vale", SECRET, error=AccessError)


@pytest.mark.parametrize("name", ["A", "A" * 81, "Ana\u200bVale", "Ana V\u0430le", "Ana\nVale\u202e"])
def test_a_name_is_one_that_people_can_tell_apart(store, refuses, name):
    """Too short, too long, with letters nobody sees, with letters of two alphabets in a word."""
    refuses("name", people.add_account, store, name, "owner", SECRET)


def test_two_letters_are_a_name_and_eighty_are(store):
    assert people.add_account(store, "Bo", "owner", SECRET).name == "Bo"
    assert people.add_account(store, "B" * 80, "crew", SECRET).role == "crew"


@pytest.mark.usefixtures("ana")
def test_a_name_is_taken_whatever_its_capitals(store, refuses):
    refuses("name", people.add_account, store, "ANA vale", "crew", SECRET)
    people.add_device(store, "Tablet one", "crew", "Ana Vale")
    refuses("name", people.add_device, store, "tablet ONE", "lead", "Ana Vale")
    refuses("role", people.add_device, store, "Tablet two", "owner", "Ana Vale")
    for role in ("crew", "lead", "auditor"):
        assert people.add_device(store, f"Tablet {role}", role, "Ana Vale")


SECRETS = [
    ("password", "x" * 9, ""),
    ("password", "x" * 1001, ""),
    ("pin", SECRET, "123"),
    ("pin", SECRET, "1234567890123"),
    ("pin", SECRET, "12a4"),
    ("pin", SECRET, "١٢٣٤"),
]


@pytest.mark.parametrize(("field", "password", "pin"), SECRETS)
def test_a_secret_is_long_enough_and_a_pin_is_digits(store, refuses, field, password, pin):
    refuses(field, people.add_account, store, "Ana Vale", "owner", password, pin)


@pytest.mark.parametrize(
    ("password", "pin"), [("x" * 10, "1234"), ("x" * 10, "123456789012"), ("x" * 10, "")]
)
def test_secrets_at_their_ends_are_taken(store, password, pin):
    kept = people.add_account(store, "Ana Vale", "owner", password, pin)
    assert people.fits(kept.password_hash, password)
    assert people.fits(kept.pin_hash, pin) is bool(pin)


@pytest.mark.usefixtures("ana")
def test_a_change_of_an_account_has_a_reason_and_leaves_an_owner(store, refuses):
    change = people.change_account
    refuses("name", change, store, "Bo Vale", "Ana Vale", "moved on", role="crew")
    refuses("reason", change, store, "Ana Vale", "Ana Vale", " ab  ", pin="1234")
    refuses("role", change, store, "Ana Vale", "Ana Vale", "moved on", role="king")
    refuses("password", change, store, "Ana Vale", "Ana Vale", "moved on", password="short")
    assert "last owner" in refuses("name", change, store, "Ana Vale", "Ana Vale", "moved on", role="crew")
    refuses("name", change, store, "Ana Vale", "Ana Vale", "moved on", active=False)
    people.add_account(store, "Bo Vale", "owner", SECRET)
    assert change(store, "Ana Vale", "Bo Vale", "left", role="crew").role == "crew"


@pytest.mark.usefixtures("ana")
def test_somebodys_own_secret_is_changed_by_who_knows_it(store, refuses):
    refuses("password", people.change_own, store, "Ana Vale", "not the one in use", password="y" * 10)
    refuses("password", people.change_own, store, "Ana Vale", SECRET)
    refuses("password", people.change_own, store, "Bo Vale", SECRET, pin="1234")
    assert people.fits(people.change_own(store, "Ana Vale", SECRET, pin="1234").pin_hash, "1234")


@pytest.mark.usefixtures("ana")
def test_a_device_is_revoked_with_a_reason(store, refuses):
    people.add_device(store, "Tablet one", "crew", "Ana Vale")
    refuses("device", people.revoke_device, store, "Tablet two", "Ana Vale", "broken screen")
    refuses("reason", people.revoke_device, store, "Tablet one", "Ana Vale", "abc")
    people.revoke_device(store, "Tablet one", "Ana Vale", "lost")
    assert not Accounts(store).devices()[0].active


def test_the_second_of_two_waits_after_wrong_tries(store, ana, refuses):
    """As many as are free; then the field says for how long. A right one ends the count."""
    tries = people.Tries()
    assert people.confirm(store, "ana VALE", SECRET, "here", tries) == ana.name
    free = 0
    while tries.wait_s("Ana Vale", "here", now()) == 0.0:
        assert people.confirm(store, "Ana Vale", "wrong", "here", tries) == ""
        free += 1
    assert free == tries.count("ANA vale", "here") > 1
    assert "too many wrong tries" in refuses(
        "second", people.confirm, store, "Ana Vale", SECRET, "here", tries
    )
    assert people.confirm(store, "Ana Vale", SECRET, "elsewhere", tries) == ana.name
    people.change_account(
        store, people.add_account(store, "Bo Vale", "lead", SECRET).name, "Ana Vale", "left", active=False
    )
    assert people.confirm(store, "Bo Vale", SECRET, "here", tries) == ""
    assert people.confirm(store, "Nobody", SECRET, "here", tries) == ""


@pytest.mark.usefixtures("ana")
def test_a_link_to_the_company_is_of_one_account(store, refuses):
    link = company.link_account
    refuses("name", link, store, "Bo Vale", "m1", "Ana Vale", "asked for")
    refuses("reason", link, store, "Ana Vale", "m1", "Ana Vale", "abc")
    link(store, "Ana Vale", "m1", "Ana Vale", "asked")
    people.add_account(store, "Bo Vale", "crew", SECRET)
    refuses("subject", link, store, "Bo Vale", "m1", "Ana Vale", "asked for")
    link(store, "Ana Vale", "m1", "Ana Vale", "again")
    assert company.sign_in_as(store, "m1")
    refuses("", company.sign_in_as, store, "m2", error=AccessError)
    link(store, "Ana Vale", "", "Ana Vale", "ended")
    refuses("", company.sign_in_as, store, "m1", error=AccessError)


@pytest.mark.usefixtures("ana")
def test_a_session_opened_by_a_pin_is_good_on_its_device_only(store):
    """Elsewhere the same token is nobody's."""
    token = people.add_device(store, "Tablet one", "crew", "Ana Vale")
    device = people.who_is(store, "", token)
    assert device is not None and (device.name, device.person) == ("Tablet one", False)
    assert people.who_is(store, "", "no such token") is None
    session = people.sign_in(store, "Ana Vale", SECRET, "desk", people.Tries())
    assert people.who_is(store, session).name == "Ana Vale"
    assert people.who_is(store, "no such session") is None


# ---------------------------------------------------------------- records


def test_a_gap_is_explained_where_there_is_one(store, kitchen, refuses):
    """By somebody with a name, in words."""
    at = moment_of(kitchen.trade, DAY, 43200.0)
    write(store, tap(DAY, "one"), at)
    told = {"date": DAY.isoformat(), "lack": "readings", "words": "closed for repair", "who": "Ana Lund"}
    wrong = [("lack", "x"), ("date", "yesterday"), ("date", "2020-01-01"), ("who", "A"), ("words", "x")]
    for field, text in wrong:
        refuses(field, gaps.explain_gap, store, kitchen, {**told, field: text})
    assert gaps.explain_gap(store, kitchen, told).fact.words == "closed for repair"


def test_steps_of_a_case(store, kitchen, refuses):
    """Nothing served unproven, nothing probed again before it was in the oil, a closed case stays closed."""
    _, case = tell_probe(store, kitchen, FORM)

    def step(**values):
        return corrective.tell_step(store, kitchen, case.number, {"who": "Ana Lund", **values})

    def refused(field, **values):
        return refuses(field, step, **values)

    assert case is not None
    refused("step", step="prayer")
    refused("step", step="reprobe", temp="180", thermometer="T1")
    refused("disposition", step="disposition", disposition="served")
    refused("disposition", step="disposition", disposition="eaten")
    refused("cause", step="cause", cause="fate")
    refused("load", step="earlier", load="99", decision="held")
    step(step="disposition", disposition="discarded")


def test_a_complaint_is_of_a_day_that_can_be(store, kitchen, refuses):
    for year in (1999, 2101):
        refuses(
            "bought", corrective.trace, store, kitchen, "bone_in", dt.datetime(year, 1, 1, 12, tzinfo=dt.UTC)
        )
    refuses("product", corrective.trace, store, kitchen, "fish", now())


def test_a_reading_typed_wrong_is_mended_with_its_story(store, kitchen, refuses):
    reading, _ = tell_probe(store, kitchen, {**FORM, "temp": "180"})
    told = {"temp": "181", "words": "typed one too few", "who": "Ana Lund"}
    refuses("reading", mend_reading, store, kitchen, 1, told)
    refuses("temp", mend_reading, store, kitchen, reading.number, {**told, "temp": "180"})
    refuses("who", mend_reading, store, kitchen, reading.number, {**told, "who": "A"})
    refuses("words", mend_reading, store, kitchen, reading.number, {**told, "words": "no"})


def test_a_report_belongs_to_care_that_was_done(store, refuses):
    """An entry of the kitchen itself takes none, whatever the file."""
    refuses("entry", reports.attach_report, store, 1, "r.pdf", io.BytesIO(b"%PDF-1.7"), "Ana Lund")


# ---------------------------------------------------------------- cook


def test_a_program_is_keyed_from_its_card_and_served_when_it_is_ready(store, kitchen, refuses):
    name = "bone-in alder"
    refuses("who", life.tell_keyed, store, kitchen, name, " A ")
    refuses("card", life.tell_keyed, store, kitchen, name, "Ana")
    said = refuses("program", life.put_in_service, store, kitchen, name, "Ana")
    assert "put in service after: " in said
    refuses("reason", life.retire, store, kitchen, name, "Ana", "bad")
    life.retire(store, kitchen, name, "Ana", "another took its place")
    refuses("program", life.retire, store, kitchen, name, "Ana", "another took its place")


def test_a_slot_is_one_the_controller_has(store, kitchen, refuses):
    """Told twice it is kept once."""
    program = kitchen.program("bone-in alder")
    most = kitchen.fryer("alder").controller.slot_count
    for slot in (0, most + 1):
        refuses("slot", tell_slot, store, kitchen, program, slot)
    kept = tell_slot(store, kitchen, program, most)
    assert kept is not None and kept.fact.slot == most
    assert tell_slot(store, kitchen, program, most) is None


LIVE = LiveAsk(program="tenders cedar", uses=(Use(channel="box/K1", cut="tender"),), drop_s=None)
USES = [
    ("channels", ()),
    ("channels", (Use(channel="box/T1"), Use(channel="box/T2"), *LIVE.uses)),
    ("cut", (Use(channel="box/K1", cut="wing"), Use(channel="box/T1"))),
    ("drop", LIVE.uses),
]


@pytest.mark.parametrize(("field", "uses"), USES)
def test_a_load_that_is_followed_has_a_piece_and_a_drop(store, kitchen, refuses, field, uses):
    """No piece, two in the oil, a cut of another product, nothing that tells the drop."""
    room = LiveRoom(store)
    refuses(field, room.start, kitchen, replace(LIVE, uses=uses), 1_800_000_000.0)
    refuses("load", room.load, 1)
    assert room.loads() == []


@pytest.mark.parametrize("mass_kg", [0.0049, 3.01])
def test_a_probed_piece_has_a_weight_that_can_be(mass_kg):
    with pytest.raises(InputError) as caught:
        Use(channel="K1", cut="tender", mass_kg=mass_kg)
    assert (caught.value.field, caught.value.where) == ("weight", "K1")
    assert Use(channel="K1", cut="tender", mass_kg=0.005).mass_kg == 0.005
    assert Use(channel="K1", cut="tender", mass_kg=3.0).mass_kg == 3.0


def test_so_many_channels_and_sources_and_no_more():
    """Those that are known go on."""
    one, full = [Sample(channel="K", temp_c=20.0)], Intake()
    for n in range(MOST_SOURCES):
        full.add(f"box {n}", one, 100.0)
    with pytest.raises(InputError) as caught:
        full.add("one more", one, 100.0)
    assert caught.value.field == "source"
    many = Intake()
    many.add("box", [Sample(channel=f"K{n}", temp_c=20.0) for n in range(MOST_CHANNELS)], 100.0)
    with pytest.raises(InputError) as caught:
        many.add("box", [Sample(channel="one more", temp_c=20.0)], 100.0)
    assert caught.value.field == "channel"
    assert many.add("box", [Sample(channel="K0", temp_c=21.0)], 101.0) == 1


# ---------------------------------------------------------------- care


def test_a_house_limit_of_the_oil(store, kitchen, refuses):
    """5 to 30 %; looser than before only with a name and a reason."""
    for pct in (4.9, 30.1):
        refuses("house limit", vat.set_limit, store, kitchen, pct, "Ana", "fresh oil")
    assert vat.set_limit(store, kitchen, 5.0, "", "").fact.house_pct == 5.0
    for who, reason in (("", "fresh"), ("Ana", " "), ("", "")):
        refuses("house limit", vat.set_limit, store, kitchen, 5.1, who, reason)
    assert vat.set_limit(store, kitchen, 24.0, "Ana", "too strict").fact.who == "Ana"


def test_a_typed_figure_of_a_site(kitchen):
    """Nothing typed is nothing known; a figure below nothing is refused at its box."""
    assert _number({"volts": " 208 "}, "volts", kitchen.site)[1] == 208.0
    assert _number({"volts": " "}, "volts", kitchen.site)[1] is None
    for text in ("-1", "10000001"):
        with pytest.raises(InputError) as caught:
            _number({"volts": text}, "volts", kitchen.site)
        assert caught.value.field == "volts"
    assert [_yes_no({"hood": word}, "hood") for word in ("yes", "no", "")] == ["yes", "no", ""]
    with pytest.raises(InputError) as caught:
        _yes_no({"hood": "maybe"}, "hood")
    assert caught.value.field == "hood"


# ---------------------------------------------------------------- day


TAPS = [
    ("at_s", {"at_s": "noon"}),
    ("at_s", {"at_s": "nan"}),
    ("pieces", {"at_s": "1", "pieces": "3.5"}),
    ("pieces", {"at_s": "1", "pieces": "many"}),
]


@pytest.mark.parametrize(("field", "values"), TAPS)
def test_a_tap_that_cannot_be_read(field, values):
    with pytest.raises(InputError) as caught:
        tap_of({"key": "a", **values})
    assert caught.value.field == field


def test_a_tap_as_it_is_read():
    """Words are cut at 120 letters; what is not told is empty, its time before the day."""
    read = tap_of({"key": "a", "what": "drop", "pieces": "12", "at_s": "60.5", "who": "x" * 200})
    assert (read.key, read.what, read.pieces_count, read.at_s, len(read.who)) == ("a", "drop", 12, 60.5, 120)
    assert (tap_of({"key": "b"}).at_s, tap_of({"key": "b"}).pieces_count) == (-1.0, 0)


def test_a_factor_on_a_day_and_sales_that_are_not_there(store, kitchen, refuses):
    """A twentieth to twenty times; told again it replaces what was told."""
    date = dt.date(2026, 12, 24)
    for factor in (0.049, 20.1):
        refuses("factor", day.note_day, store, date, "eve", factor)
    day.note_day(store, date, " eve ", 0.05)
    day.note_day(store, date, "eve", 20)
    day.note_day(store, date + dt.timedelta(days=1), "rest", 1.0)
    assert day.events_of(store) == {date: ("eve", 20), date + dt.timedelta(days=1): ("rest", 1.0)}
    refuses("sales", history_of, store, kitchen)


# ---------------------------------------------------------------- fleet


def test_a_release_goes_to_sites_once_by_somebody(store, kitchen, refuses):
    opened, name = release.open_release, "bone-in alder"
    refuses("sites", opened, store, kitchen, name, [], "Ana Lund")
    refuses("sites", opened, store, kitchen, name, ["east", "east"], "Ana Lund")
    refuses("who", opened, store, kitchen, name, ["east"], " A ")
    for share in (-0.01, 0.201):
        refuses("stop rule", opened, store, kitchen, name, ["east"], "Ana Lund", share)
    assert opened(store, kitchen, name, ["east"], "Al", 0.2).fact.most_below_frac == 0.2
    refuses("program", opened, store, kitchen, name, ["west"], "Ana Lund")
    refuses("release", release.release_of, store, 1)
