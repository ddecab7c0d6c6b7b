"""Work of the desk from its form to its page on a small metric bench: a design and its rows, a carry-over, a
proof that is kept, and one that is cancelled.
"""

from __future__ import annotations

import re
import time
from functools import partial

import pytest

from frywright.design.search import Effort
from frywright.ledger.facts.cook import ProgramProved
from frywright.trial.proof import prove_program
from frywright.web.pages import desk
from tests.browsers import browser
from tests.cli.test_cook_prints import PROGRAM
from tests.demo import kitchen_store
from tests.small import small_kitchen


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    found = kitchen_store(
        tmp_path_factory.mktemp("desk") / "d.db", small_kitchen("uk") + PROGRAM.format(time="9:00")
    )
    yield found
    found.close()


@pytest.fixture(scope="module")
def client(store):
    """Small searches and proofs, so that a flow is tried in seconds."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(desk, "Effort", partial(Effort, stages=1))
        patch.setattr(desk, "prove_program", lambda *a, **k: prove_program(*a, **{**k, "samples": 64}))
        yield browser(store, page=True)


def done(client, address, form):
    """The page of a piece of work when it is done, and its address."""
    begun = client.post(address, data=form, follow_redirects=False)
    assert begun.status_code == 303, begun.text
    page = client.get(begun.headers["location"])
    while 'http-equiv="refresh"' in page.text:
        time.sleep(0.05)
        page = client.get(begun.headers["location"])
    return page.text, begun.headers["location"]


@pytest.mark.slow
def test_a_design_and_a_row_of_its_trade_off(client):
    """The program it proposes, its window and clock; each row is proved before it is shown."""
    page, job = done(client, "/cook/desk/design", {"product": "wings", "fryer": "left", "stages": "1"})
    assert re.search(r"\d{3}\.\d °C · open · \d:\d\d", page)
    assert "Clock " in page and f'action="{job}/save"' in page
    row, other = done(client, f"{job}/row/0", {})
    assert re.search(r"\d{3}\.\d °C · open · \d:\d\d", row) and f'action="{other}/save"' in row
    assert client.post(f"{job}/row/999", data={}).status_code == 422
    assert client.post("/cook/desk/job/999/row/0", data={}).status_code == 422


@pytest.mark.slow
def test_a_program_is_carried_to_another_height(client):
    form = {"program": "wings left", "fryer": "left", "altitude": "1500", "stages": "1"}
    page, job = done(client, "/cook/desk/transfer", form)
    assert 'value="wings left, 1500 m"' in page and f'action="{job}/save"' in page
    assert "None of " in page


def test_a_proof_is_told_and_kept(client, store):
    page, _ = done(client, "/cook/desk/prove", {"program": "wings left"})
    assert "None of 64 loads failed" in page
    fails = page[page.index("Where loads begin to fail") : page.index("Piece by piece")]
    assert re.search(r"time 9:00</td><td>1.0 %</td><td>\d:\d\d \(\d:\d\d to \d:\d\d\)</td>", fails)
    assert "<td>0.1 %</td>" in fails and "It is no proof" in fails
    (kept,) = [item.fact for item in store.facts(ProgramProved)]
    assert (kept.name, kept.version, kept.holds, kept.samples_count) == ("wings left", 1, True, 64)


def test_work_that_is_cancelled_comes_back_to_its_page(client):
    """Also when it is done, or was never begun."""
    for number in (1, 999):
        asked = client.post(f"/cook/desk/job/{number}/cancel", data={}, follow_redirects=False)
        assert (asked.status_code, asked.headers["location"]) == (303, f"/cook/desk/job/{number}")
