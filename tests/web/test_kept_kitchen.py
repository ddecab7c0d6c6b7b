"""A kitchen file that an earlier version took and this one refuses is shown, with its place, to be mended."""

import datetime as dt
from pathlib import Path

import pytest
from fastapi.testclient import TestClient
from typer.testing import CliRunner

from frywright.cli.main import app as terminal
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.store import Store
from frywright.model.errors import InputError, KeptKitchenError
from frywright.rooms.clock import now
from frywright.rooms.hall import write
from frywright.rooms.kitchen import judged_at, remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text

PAGE = {"accept": "text/html"}
SLIP = "[fryer.controler]\n\n[fryer.controller]"


@pytest.fixture
def slipped(store: Store) -> Store:
    """A store of one's own kitchen whose file, by this version's rules, has a slip."""
    text = demo_text().replace("invented = true", "invented = false")
    write(store, KitchenSet(file="mine.toml", text=text.replace("[fryer.controller]", SLIP, 1), reason=""))
    return store


def test_every_page_leads_to_the_file_and_a_mended_one_is_kept(slipped: Store, client: TestClient) -> None:
    for page in ("/", "/cook", "/day", "/care", "/records"):
        answer = client.get(page, headers=PAGE, follow_redirects=False)
        assert (answer.status_code, answer.headers.get("location")) == (303, "/cook/kitchen"), page
    shown = client.get("/cook/kitchen", headers=PAGE)
    assert shown.status_code == 200
    for said in ("did you mean controller?", "mine.toml:", "An earlier version took", "[fryer.controler]"):
        assert said in shown.text
    assert "Una versión anterior" in client.get("/cook/kitchen?lang=es", headers=PAGE).text
    client.get("/cook/kitchen?lang=en", headers=PAGE)
    mended = {"text": remembered_text(slipped).replace("[fryer.controler]\n\n", "")}
    assert "where the kitchen before cannot be read" in client.post("/cook/kitchen", data=mended).text
    client.post("/cook/kitchen", data={**mended, "reason": "a slip in a name"})
    kitchen = remembered_kitchen(slipped)
    assert {mark.name for mark in kitchen.marks} == {p.name for p in kitchen.programs}
    assert client.get("/", headers=PAGE, follow_redirects=False).status_code == 200


def remembered_text(store: Store) -> str:
    return store.current_facts(KitchenSet)[-1].fact.text


def test_a_program_is_answered_in_words(slipped: Store, client: TestClient) -> None:
    answer = client.get("/cook/view.json", headers={"accept": "application/json"})
    assert answer.status_code == 422
    assert "did you mean controller?" in answer.json()["message"]


@pytest.mark.usefixtures("slipped")
def test_the_terminal_says_how_to_mend_it(tmp_path: Path) -> None:
    told = CliRunner().invoke(terminal, ["care", "due", "--store", str(tmp_path / "demo.db")])
    assert told.exit_code == 3
    assert "frywright serve --kitchen kitchen.toml --reason" in told.output + told.stderr


def test_entries_of_that_time_are_judged_by_the_file_before_it(store: Store) -> None:
    good = demo_text().replace("invented = true", "invented = false")
    remember_kitchen(store, good.replace("thermometer_error_f = 2", "thermometer_error_f = 3"), "mine.toml")
    first = remembered_kitchen(store)
    write(store, KitchenSet(file="mine.toml", text=good.replace("[fryer.controller]", SLIP, 1), reason="x"))
    slip = now() + dt.timedelta(microseconds=1)
    with pytest.raises(KeptKitchenError):
        remembered_kitchen(store)
    with pytest.raises(InputError, match="reason"):
        remember_kitchen(store, good, "mine.toml")
    remember_kitchen(store, good, "mine.toml", "a slip in a name")
    newest = remembered_kitchen(store)
    assert judged_at(store, newest, slip).site.thermometer_error_k == first.site.thermometer_error_k
    assert newest.site.thermometer_error_k != first.site.thermometer_error_k
