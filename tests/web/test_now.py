"""The first page: what each role should do now, in the order of what can hurt, each line by its button to the
act, and gone when it is done.
"""

from __future__ import annotations

import ast
import datetime as dt
import re
from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace
from urllib.parse import unquote
from zoneinfo import ZoneInfo

import pytest
from fastapi.testclient import TestClient

import frywright
from frywright.ledger.facts.care import StopUse
from frywright.ledger.facts.cook import ProgramSaved
from frywright.ledger.facts.day import BoardTap
from frywright.model.business_day import business_time, usual_trade
from frywright.model.now import Harm, NowLine
from frywright.rooms.care import now as care_now
from frywright.rooms.care.machines import stop_use
from frywright.rooms.care.upkeep import tasks_for, tick
from frywright.rooms.care.vat import tell_oil
from frywright.rooms.clock import now
from frywright.rooms.cook import now as cook_now
from frywright.rooms.cook.programs import save_program
from frywright.rooms.hall import write
from frywright.rooms.kitchen import kitchen_text, remember_kitchen, remembered_kitchen
from frywright.rooms.readings import tell_probe
from frywright.rooms.records import people
from frywright.voice.tongue import translator
from frywright.web.app import make_app
from frywright.web.pages import now as page
from frywright.web.rights import RIGHTS
from tests.browsers import HOST, browser
from tests.demo import kitchen_store
from tests.web.test_life import NAME as FILLETS
from tests.web.test_life import OWN, PASSWORD, carry_on, probe, prove, read_back

LINE = re.compile(r'<li data-act="(\w+)"><p>(.*?)</p><a class="button[^"]*" href="([^"]+)">(.*?)</a></li>')


@pytest.fixture
def store(tmp_path):
    return kitchen_store(tmp_path / "n.db", OWN)


@pytest.fixture
def client(store):
    return browser(store, page=True)


@pytest.fixture
def demo(tmp_path):
    return kitchen_store(tmp_path / "d.db")


def lines(client):
    """Acts, texts, addresses and buttons of the page, in its order."""
    answer = client.get("/")
    assert answer.status_code == 200
    return [tuple(m) for m in LINE.findall(answer.text)]


def one(client, act, words=""):
    """The line of an act that says these words; its page opens."""
    found = [x for x in lines(client) if x[0] == act and words in x[1]]
    assert len(found) == 1, (act, found)
    answer = client.get(found[0][2])
    assert answer.status_code == 200
    return answer.text


def none(client, act, words=""):
    assert [x for x in lines(client) if x[0] == act and words in x[1]] == []


def drop(store, days_ago=0):
    """A load of tenders on the board, ten minutes ago or as long ago on another day."""
    moment = now() - dt.timedelta(days=days_ago, minutes=10)
    date, second = business_time(usual_trade(remembered_kitchen(store)), moment)
    fact = BoardTap(
        key=f"{moment}",
        date=date,
        what="drop",
        at_s=second,
        fryer="cedar",
        product="tenders",
        pieces_count=60,
        reason="",
        who="Kim",
        practice_count=None,
    )
    write(store, fact, moment)


def test_every_program_s_next_step_by_its_button(client, store):
    """Prove, probe, print, key, read back, decide: each line leads where it is done and is gone then."""
    assert 'action="/cook/desk/prove"' in one(client, "prove", FILLETS)
    prove(store)
    none(client, "prove")
    assert 'action="/cook/probing"' in one(client, "probe", FILLETS)
    probe(store)
    none(client, "probe")
    assert 'action="/cook/card"' in one(client, "card", FILLETS)
    client.post("/cook/card", data={"program": FILLETS, "slot": "1"})
    none(client, "card")
    assert 'action="/cook/keyed"' in one(client, "key", FILLETS)
    client.post("/cook/keyed", data={"program": FILLETS, "who": "Kim"})
    none(client, "key")
    assert 'action="/cook/readback"' in one(client, "read_back", FILLETS)
    read_back(client, store)
    none(client, "read_back")
    assert 'action="/cook/service"' in one(client, "serve", FILLETS)
    client.post("/cook/service", data={"program": FILLETS, "who": "Olive"})
    assert not [x for x in lines(client) if FILLETS in x[1]]


def test_a_fryer_that_holds_something_else_comes_before_all(client, store):
    """Until it is read back again and holds what the card says."""
    carry_on(client, store)
    read_back(client, store, time="5:30")
    act, words, address, _ = lines(client)[0]
    assert (act, unquote(address)) == ("read_back", f"/cook/readback?program={FILLETS}")
    assert "Do not cook by it" in words
    read_back(client, store)
    none(client, "read_back")


def longer(store, seconds):
    """A next version that cooks longer."""
    place = remembered_kitchen(store)
    program = place.program(FILLETS)
    stage = replace(program.stages[0], duration_s=seconds)
    save_program(store, place, replace(program, version=program.version + 1, stages=(stage,)))


def test_an_old_version_in_the_fryer_is_keyed_when_the_new_one_is_ready_at_once_when_it_is_short(
    client, store
):
    """While the new one waits for its proof the fryer goes on with a good old one; a short one stops."""
    carry_on(client, store)
    longer(store, 600.0)
    none(client, "life")
    one(client, "prove", FILLETS)
    heavier = kitchen_text(store).replace("unit_mass_g = 45", "unit_mass_g = 80")
    remember_kitchen(store, heavier, "own.toml", "larger fillets are bought")
    act, words, address, _ = lines(client)[0]
    assert (act, unquote(address)) == ("life", f"/cook/changes?program={FILLETS}#next")
    assert "still holds version 1 of fillets one, which is predicted short. Do not cook by it" in words


def test_an_old_version_in_the_fryer_gives_way_to_a_new_one_with_its_card(client, store):
    carry_on(client, store)
    longer(store, 420.0)
    prove(store)
    probe(store)
    client.post("/cook/card", data={"program": FILLETS, "slot": "1"})
    assert "I have keyed it in" in one(client, "life", "still holds version 1")
    client.post("/cook/keyed", data={"program": FILLETS, "who": "Kim"})
    none(client, "life")
    one(client, "read_back", FILLETS)


def test_a_fryer_out_of_use_until_a_qualified_person_releases_it(client, store):
    write(store, StopUse(fryer="gone", reason="relief", words="", who="Kim"))  # of a kitchen before this one
    stop_use(store, remembered_kitchen(store), "one", "high_limit", "Kim")
    assert lines(client)[0][0] == "reopen"
    assert 'action="/care/reopen"' in one(client, "reopen", "Vat one")
    form = {"fryer": "one", "who": "Tess Tech", "role": "technician", "finding": "new high limit fitted"}
    client.post("/care/reopen", data=form)
    none(client, "reopen")


def test_a_case_until_it_is_closed(client, store):
    place = remembered_kitchen(store)
    values = {"fryer": "one", "product": "fillets", "temp": "60 C", "thermometer": "T1", "pieces": "8"}
    _, case = tell_probe(store, place, {**values, "who": "Kim"})
    text = one(client, "case", f"Case {case.number} ")
    assert f'action="/records/case/{case.number}"' in text
    for step in ({"step": "disposition", "disposition": "discarded"}, {"step": "cause", "cause": "oil"}):
        client.post(f"/records/case/{case.number}", data={**step, "who": "Kim"})
    one(client, "case")
    client.post(f"/records/case/{case.number}", data={"step": "closed", "who": "Kim"})
    none(client, "case")


def test_a_thermometer_never_checked_or_due_and_loads_in_doubt(client, store):
    assert 'action="/cook/probes/check"' in one(client, "check", "was ever checked")
    client.post("/cook/probes/check", data={"thermometer": "T1", "ice": "0.2", "boil": "100"})
    none(client, "check")
    place = remembered_kitchen(store)
    values = {"fryer": "one", "product": "fillets", "temp": "76 C", "thermometer": "T1", "pieces": "8"}
    tell_probe(store, place, values)
    client.post("/cook/probes/check", data={"thermometer": "T1", "ice": "4", "boil": "104"})
    assert 'action="/records/case"' in one(client, "open_case", "T1")
    form = {"what": "thermometer", "words": "T1 reads four high", "who": "Kim"}
    client.post("/records/case", data=form)
    none(client, "open_case")
    one(client, "case", "thermometer failed")


def test_oil_near_its_limit_and_oil_over_it(client, store):
    """Read every day when near; over, change it tonight; changed, both are gone."""
    place = remembered_kitchen(store)
    for days, level in ((6, "10"), (5, "13"), (4, "16"), (3, "18.5"), (1, "21.5")):
        moment = now() - dt.timedelta(days=days)
        tell_oil(store, place, {"vat": "one", "what": "reading", "amount": level, "who": "Kim"}, at=moment)
    found = [x for x in lines(client) if x[0] in ("oil", "oil_reading")]
    assert len(found) == 1
    if found[0][0] == "oil_reading":
        assert 'action="/care/oil"' in one(client, "oil_reading", "Vat one")
    client.post("/care/oil", data={"key": "k1", "vat": "one", "what": "reading", "amount": "26"})
    none(client, "oil_reading")
    one(client, "oil", "Change it tonight")
    client.post("/care/oil", data={"key": "k2", "vat": "one", "what": "discard"})
    client.post("/care/oil", data={"key": "k3", "vat": "one", "what": "reading", "amount": "4"})
    assert not [x for x in lines(client) if x[0] in ("oil", "oil_reading")]


def test_care_overdue_due_today_and_never_recorded(client, store):
    """Each task by itself once it has a day; what nobody recorded in one line a fryer, that counts down."""
    place = remembered_kitchen(store)
    count = len(tasks_for(place, place.fryer("one")))
    one(client, "care", f"done: {count}.")
    task = next(t for t in tasks_for(place, place.fryer("one")) if t.days_count and t.who == "crew")
    date = (now() - dt.timedelta(days=task.days_count + 30)).date()
    tick(store, place, {"fryer": "one", "task": task.key, "who": "Kim", "role": "crew", "date": str(date)})
    assert 'action="/care/fryers/done"' in one(client, "care", "Overdue")
    one(client, "care", f"done: {count - 1}.")
    client.post("/care/fryers/done", data={"fryer": "one", "task": task.key, "who": "Kim", "role": "crew"})
    none(client, "care", "Overdue")


def test_a_load_nobody_probed_today_and_a_gap_of_yesterday(demo):
    """The gap is not filled in: somebody says why, by name, and it stays to be read."""
    client = browser(demo, page=True)
    drop(demo, days_ago=1)
    drop(demo)
    text = one(client, "reading", "Cedar")
    assert 'action="/records/probing"' in text
    form = {"fryer": "cedar", "product": "tenders", "temp": "190 F", "thermometer": "T1", "pieces": "9"}
    client.post("/records/probing", data=form)
    none(client, "reading")
    assert 'action="/records/gaps"' in one(client, "gap", "no piece was probed")
    date = (page.yesterday(remembered_kitchen(demo))).isoformat()
    told = {"date": date, "lack": "readings", "words": "", "who": "Kim"}
    answer = client.post("/records/gaps", data=told)
    assert (answer.status_code, "why it was not done" in answer.text) == (422, True)
    assert 'value="Kim"' in answer.text
    client.post("/records/gaps", data={**told, "words": "the probe was dropped"})
    none(client, "gap", "no piece was probed")
    assert "the probe was dropped" in client.get("/records/gaps").text
    answer = client.post("/records/gaps", data={**told, "date": "2020-01-01", "words": "made up later"})
    assert answer.status_code == 422


def test_all_is_well_until_something_is_due(client, store):
    """Everything done: one sentence with the first thing to come, and nothing that calls."""
    carry_on(client, store)
    client.post("/cook/service", data={"program": FILLETS, "who": "Olive"})
    client.post("/cook/probes/check", data={"thermometer": "T1", "ice": "0", "boil": "100"})
    client.post("/care/oil", data={"key": "k", "vat": "one", "what": "reading", "amount": "5"})
    place = remembered_kitchen(store)
    for task in tasks_for(place, place.fryer("one")):
        done = {"fryer": "one", "task": task.key, "who": "Tess", "role": "licensed", "note": "tag 12345"}
        done |= {"thermometer": "Ref 2", "set_temp": "170 C", "before_temp": "169 C"}
        tick(store, place, done)
    assert lines(client) == []
    first = min((x for x in page.gather(store, place) if x.due_at), key=lambda x: x.due_at)
    zone = ZoneInfo(usual_trade(place).zone)
    told = re.search(r"All is well until ([-0-9]+)[,.].*Then: (.*?)</p>", client.get("/").text)
    assert told[1] == first.due_at.astimezone(zone).date().isoformat()
    assert first.due_at > now()
    assert told[2].startswith(("Vat one: ", "T1 "))


def test_each_role_sees_what_it_may_do_and_everybody_what_can_hurt(demo):
    """The crew reads the fryer back and does care; it is not asked to design; it sees a stopped fryer all the
    same, with whose it is. An auditor reads everything and is given no act.
    """
    app = make_app(demo)
    people.add_account(demo, "Olive", "owner", PASSWORD)
    for role in ("crew", "lead", "technician", "auditor"):
        people.add_account(demo, f"the {role}", role, PASSWORD)
    stop_use(demo, remembered_kitchen(demo), "alder", "relief", "Kim")
    seen = {}
    for role in ("crew", "lead", "technician", "owner", "auditor"):
        name = "Olive" if role == "owner" else f"the {role}"
        client = browser(app, page=True)
        client.cookies.set("session", people.sign_in(demo, name, PASSWORD, "t", people.Tries()))
        seen[role] = lines(client)
        assert seen[role][0][0] == "reopen"
    acts = {role: {x[0] for x in found} for role, found in seen.items()}
    assert acts["crew"] < acts["lead"] <= acts["technician"] <= acts["owner"] <= acts["auditor"]
    assert "prove" not in acts["crew"]
    assert "prove" in acts["lead"]
    first = {role: found[0] for role, found in seen.items()}
    assert "For the technician." in first["crew"][1]
    assert first["crew"][3] == "Look at it"
    assert "For the" not in first["technician"][1]
    assert {x[3] for x in seen["auditor"]} == {"Look at it"}
    assert TestClient(app, base_url=HOST, headers={"accept": "text/html"}).get("/").url.path == "/sign-in"


def test_a_kitchen_without_programs_is_led_to_the_first(tmp_path):
    """Not an error: on the first page, in Cook, on the desk, in both languages."""
    store = kitchen_store(tmp_path / "e.db", OWN.partition("[[program]]")[0])
    client = browser(store, page=True)
    assert 'action="/cook/desk/design"' in one(client, "first_program")
    for path in ("/", "/cook", "/cook/desk", "/cook/probes", "/care", "/records"):
        for language in ("en", "es"):
            answer = client.get(path, params={"lang": language})
            assert answer.status_code == 200, path
    assert "No program yet" in client.get("/cook/desk", params={"lang": "en"}).text


def test_every_act_has_a_route_and_every_line_words_in_spanish():
    """Whatever a room may say is translated, and every act is one that somebody has the right to do."""
    tr = translator("es")
    for act in page.ACTS.values():
        assert f"POST {act.route}" in RIGHTS
        assert tr(act.button) != act.button
    root = Path(frywright.__file__).parent
    used = set()
    for name in (
        "trial/life.py",
        "rooms/cook/now.py",
        "rooms/care/now.py",
        "rooms/records/now.py",
        "rooms/fleet/arrivals.py",
    ):
        tree = ast.parse((root / name).read_text("utf-8"))
        docs = {
            ast.get_docstring(n, clean=False)
            for n in ast.walk(tree)
            if isinstance(n, ast.Module | ast.ClassDef | ast.FunctionDef)
        }
        notes = {
            n.value.value
            for n in ast.walk(tree)
            if isinstance(n, ast.Expr) and isinstance(n.value, ast.Constant)
        }
        texts = {n.value for n in ast.walk(tree) if isinstance(n, ast.Constant) and isinstance(n.value, str)}
        used |= texts
        for text in texts - docs - notes:
            if text.endswith(".") and re.search("[a-z]", re.sub(r"{\w+}", "", text)):
                assert tr(text) != text, text
    assert set(page.ACTS) <= used | {"gap"}


def test_programs_that_are_not_in_service_are_named_with_their_next_step(demo):
    """In order, each by the act of the step that it misses; none where all serve."""
    request = SimpleNamespace(state=SimpleNamespace(who=None))
    assert page.not_serving(demo, request, (), str) == []
    steps = {line.about: line for line in cook_now.now_lines(demo, remembered_kitchen(demo))}
    names = ["bone-in birch", "tenders cedar"]
    found = page.not_serving(demo, request, {*names[::-1], "gone"}, str)
    assert [due.text for due in found] == [
        f"{name} is not in service: the board does not advise it." for name in (names[0], "gone", names[1])
    ]
    assert [due.act for due in found] == [steps[names[0]].act, "life", steps[names[1]].act]
    assert [unquote(found[1].address), len({due.who for due in found}) > 0] == [
        "/cook/changes?program=gone#next",
        True,
    ]


def test_oil_that_was_read_too_seldom_is_one_line_that_begins_at_the_first_vat(demo):
    """All vats of the demo without its fortnight, by name; the button leads to the first of them."""
    kitchen = remembered_kitchen(demo)
    (line,) = [x for x in care_now.now_lines(demo, kitchen) if x.act == "oil_reading"]
    assert line.about == kitchen.fryers[0].key
    assert line.values == {"fryers": tuple(f.name for f in kitchen.fryers)}


def test_oil_may_be_near_its_limit_from_the_first_day_of_the_interval(demo, monkeypatch):
    """In 1.8 days at the earliest, tomorrow in whole days: a reading is asked for. In more than two days
    nothing is yet, and nothing is asked of a vat that was read today.
    """
    day, fryer = dt.date(2026, 11, 27), remembered_kitchen(demo).fryers[1]
    monkeypatch.setattr(care_now, "read_over", lambda state: False)
    monkeypatch.setattr(care_now, "advised", lambda state, day: "")

    def lines(first, last, *read_on):
        crossing = SimpleNamespace(days_n=(first, last))
        state = SimpleNamespace(
            fryer=fryer, limit_pct=24.0, readings_count=9, crossing=crossing, read_on=read_on
        )
        return care_now._oil(demo, {fryer.key: state}, day)

    (line,) = lines(1.8, 9.0)
    assert (line.about, line.act, line.values["date"]) == (fryer.key, "oil_reading", "2026-11-28")
    assert lines(2.1, 20.0) == lines(1.8, 9.0, day) == []
    assert len(lines(2.0, 20.0)) == 1


def test_a_program_saved_for_what_is_no_longer_here_is_not_of_the_kitchen(demo):
    """Its fryer is gone, or its food: both must be here."""
    kitchen = remembered_kitchen(demo)
    program = kitchen.program("tenders cedar")
    for name, fryer, product in (("x", "cedar", "eel"), ("y", "elm", "tenders"), ("z", "cedar", "tenders")):
        write(demo, ProgramSaved.of(replace(program, name=name, fryer=fryer, product=product, version=1)))
    assert [p.name for p in remembered_kitchen(demo).programs if len(p.name) == 1] == ["z"]


def test_what_can_hurt_first_comes_first():
    """By harm, then by the time it has been due."""
    moment = now()
    told = [
        NowLine(harm=Harm.NEXT, act="card", text="a"),
        NowLine(harm=Harm.CARE, act="care", text="b", due_at=moment),
        NowLine(harm=Harm.CARE, act="care", text="c", due_at=moment - dt.timedelta(days=1)),
        NowLine(harm=Harm.STOPPED, act="reopen", text="d"),
    ]
    assert [x.text for x in sorted(told, key=page._order)] == ["d", "c", "b", "a"]
    assert [len(g) for g in page._grouped(told)] == [1, 2, 1]
