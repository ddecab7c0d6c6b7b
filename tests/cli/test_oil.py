"""``frywright oil`` as people run it."""

from __future__ import annotations

import json

import pytest

from tests.demo import demo_store
from tests.terminal import frywright


@pytest.mark.slow
def test_oil_by_command(tmp_path):
    """Log, outlook, filling, bill, cartons and limit; nonsense is refused with exit code 2."""
    store = ("--store", demo_store(tmp_path / "o.db"))
    assert "kept" in frywright("oil", "log", "alder", "reading", "12.5", *store).stdout
    told = json.loads(frywright("oil", "log", "alder", "top_up", "5 lb", "--json", *store).stdout)
    assert told["ok"] and told["number"] > 1
    refused = frywright("oil", "log", "alder", "reading", "140", *store)
    assert refused.returncode == 2
    assert "0 to 60" in refused.stderr
    vats = json.loads(frywright("oil", "outlook", *store, "--json").stdout)["vats"]
    assert vats[0]["last_reading_pct"] == 12.5
    assert "cartons" in frywright("oil", "fill", "alder", *store).stdout
    assert "Log gap" in frywright("oil", "cost", "330", *store).stdout
    assert "Order" in frywright("oil", "order", "7", *store).stdout
    assert "23 %" in frywright("oil", "limit", "--house", "23", *store).stdout
