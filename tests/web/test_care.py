"""Room Care without a browser: outlook in both languages, one tap to log, nonsense answered in words and
kept.
"""

from __future__ import annotations

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.facts.oil import MeterChecked, OilDone, OilRefused
from frywright.model.trade import Trade
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import oil_limit_here
from frywright.voice.figures import mark_of, written
from tests.browsers import browser
from tests.demo import kitchen_store
from tests.small import small_kitchen

KEPT = "kept in the records as refused"


def test_the_room_in_both_languages(client):
    """Every vat has its outlook and its cautions."""
    for language, words in (("en", "Hot oil burns"), ("es", "El aceite caliente quema")):
        page = client.get("/care", params={"lang": language})
        assert page.status_code == 200
        assert words in page.text
        assert page.text.count('class="oil"') == 4
    assert client.get("/care", params={"lang": "en"}).text.count("not read") == 4
    assert len(client.get("/care/oil.json").json()["vats"]) == 4


@pytest.mark.parametrize(
    ("units", "language", "says"),
    [
        ("us", "en", "estimates count: open 10:30 to 22:00, 1.09 a lb of oil, 0.15 a kWh"),
        ("metric", "es", "estimaciones: abierto de 10:30 a 22:00, 2.40 por kg de aceite, 0.15 por kWh"),
    ],
)
def test_hours_and_prices_that_nobody_entered_are_said_to_be_estimates(
    client, tmp_path, units, language, says
):
    """On the pages and in the terminal, wherever money or hours of them stand; not where a day is entered."""
    day = '[day]\nzone = "UTC"\n\n'
    text = small_kitchen("uk", units=units, language=language).replace(day, "")
    (tmp_path / "k.toml").write_text(text, "utf-8")
    store = kitchen_store(tmp_path / "k.db", text)
    assert (Trade().oil_kg_money, Trade().kwh_money) == (2.4, 0.15)
    pages = browser(store)
    for path in ("/care", "/care/energy"):
        assert written(says, mark_of(language, units)) in pages.get(path).text
        assert says[:15] not in client.get(path).text
    for words in (("oil", "outlook"), ("care", "power")):
        assert says in CliRunner().invoke(app, [*words, "--store", str(tmp_path / "k.toml")]).output
    store.close()


def test_the_meter_is_checked_on_its_page(client, store):
    """A check is kept once and shown; one that cannot be keeps what was typed."""
    form = {"key": "m1", "low_known": "4", "low_read": "8.5", "high_known": "24", "high_read": "27"}
    page = client.post("/care/meter", data=form)
    assert page.status_code == 200
    assert "+4.5 points off on fresh oil" in page.text
    assert "Adjust it by its manual" in page.text
    client.post("/care/meter", data=form)
    assert len(list(store.facts(MeterChecked))) == 1
    wrong = client.post("/care/meter", data={**form, "key": "m2", "high_known": "9"})
    assert wrong.status_code == 422 and wrong.text.count('role="alert"') == 1
    assert 'name="low_read" inputmode="decimal" autocomplete="off" required value="8.5"' in wrong.text
    assert len(list(store.facts(MeterChecked))) == 1


def test_one_tap_logs_and_a_second_of_the_same_key_does_not(client, store):
    """A form post is an entry; the browser's back button does not double it."""
    form = {"key": "a1", "vat": "alder", "what": "top_up", "amount": "5"}
    assert client.post("/care/oil", data=form).status_code == 200
    client.post("/care/oil", data=form)
    assert len(list(store.facts(OilDone))) == 1


@pytest.mark.parametrize(
    "form",
    [
        {"vat": "alder", "what": "reading", "amount": "<b>140</b>"},
        {"vat": "x", "what": "filter"},
        {"vat": "alder", "what": "top_up"},
    ],
)
def test_nonsense_is_answered_and_kept(client, store, form):
    """422, the sentence on the page, nothing of it as markup, the raw text in the records."""
    page = client.post("/care/oil", data=form)
    assert page.status_code == 422
    assert 'role="alert"' in page.text
    assert "<b>140" not in page.text
    assert len(list(store.facts(OilRefused))) == 1
    assert KEPT in page.text


@pytest.mark.parametrize(
    ("path", "form"),
    [
        ("/care/limit", {"place": "us", "house": "31", "who": "", "reason": ""}),
        ("/care/limit", {"place": "us", "house": "much"}),
        ("/care/reopen", {"fryer": "alder", "who": "Kim", "role": "licensed", "finding": "looks well"}),
    ],
)
def test_what_is_not_kept_is_not_said_to_be(client, store, path, form):
    """Only the oil log keeps what it refuses; the limit and a release say nothing of the records."""
    before = store.last().number
    page = client.post(path, data=form)
    assert page.status_code == 422
    assert 'role="alert"' in page.text
    assert KEPT not in page.text
    assert store.last().number == before


def test_the_limit_is_chosen(client, store):
    """A place and a house limit; a looser one without a name is refused."""
    assert client.post("/care/limit", data={"house": "23"}).status_code == 200
    assert oil_limit_here(store, remembered_kitchen(store))[0] == 23.0
    assert client.post("/care/limit", data={"house": "26"}).status_code == 422
    assert client.post("/care/limit", data={"house": "much"}).status_code == 422
    assert client.post("/care/limit", data={"house": "22,5 %"}).status_code == 200
    page = client.post("/care/limit", data={"house": "2.200"})
    assert (page.status_code, "type 2.2 or type 2200" in page.text) == (422, True)


def test_stop_use_has_no_way_past(client, store):
    """Stopped by one tap; a release without a finding is refused and the page stays red; with one it is
    released.
    """
    assert (
        "Stop-use" in client.post("/care/stop", data={"fryer": "alder", "reason": "oil_leak", "who": ""}).text
    )
    refused = client.post(
        "/care/reopen", data={"fryer": "alder", "who": "Kim", "role": "crew", "finding": "it is fine again"}
    )
    assert refused.status_code == 422
    assert "Nobody else puts it back in use" in refused.text
    assert (
        client.post(
            "/care/reopen",
            data={
                "fryer": "alder",
                "who": "R. Ode",
                "role": "technician",
                "finding": "weld renewed, leak test dry",
            },
        ).status_code
        == 200
    )
    assert "Nobody else puts it back in use" not in client.get("/care").text


def test_cards_print(client):
    """Each procedure is a PDF; a boil-out without its label's rate is refused in words."""
    assert client.get("/care/card/lid_seal.pdf").content.startswith(b"%PDF")
    assert client.get(
        "/care/card/boil_out.pdf", params={"water_gal": "8", "oz_gal": "1,5"}
    ).content.startswith(b"%PDF")
    for query in ({}, {"water_gal": "much", "oz_gal": "1"}, {"water_gal": "1.200", "oz_gal": "1"}):
        assert client.get("/care/card/boil_out.pdf", params=query).status_code == 422
