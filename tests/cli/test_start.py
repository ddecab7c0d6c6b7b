"""Starting for the first time: a new store has no kitchen, and nothing brings the demo unasked."""

from __future__ import annotations

import re
import subprocess
import sys
import urllib.request
from http.cookiejar import CookieJar

import pytest

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.kitchen import has_kitchen
from tests.terminal import frywright

pytestmark = pytest.mark.slow


def test_the_first_owner_of_a_new_store_brings_no_demo(tmp_path):
    """The set-up is still to come."""
    path = tmp_path / "o.db"
    made = frywright("people", "owner", "Kim", "--password", "oak leaf river stone", "--store", str(path))
    assert made.returncode == 0, made.stderr
    assert "Kim owns this kitchen" in made.stdout
    assert not has_kitchen(Store.file(path, now))


def test_serving_an_empty_store_opens_the_set_up(tmp_path):
    """By the address that is printed; the page asks for the kitchen."""
    path = tmp_path / "e.db"
    program = "from frywright.cli.main import run; run()"
    words = ["serve", "--no-open", "--port", "0", "--store", str(path)]
    server = subprocess.Popen([sys.executable, "-c", program, *words], stdout=subprocess.PIPE, text=True)
    try:
        server.stdout.readline()
        address = re.search(r"http://\S+code=\S+", server.stdout.readline())[0]
        browser = urllib.request.build_opener(urllib.request.HTTPCookieProcessor(CookieJar()))
        browser.addheaders = [("accept", "text/html")]
        with browser.open(address, timeout=60) as answer:
            page = answer.read().decode()
        assert "Set up your kitchen" in page
        assert not has_kitchen(Store.file(path, now))
    finally:
        server.terminate()
        server.wait(20)
        server.stdout.close()
