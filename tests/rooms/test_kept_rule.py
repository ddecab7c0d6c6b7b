"""A rule tuned once is kept on disk, found again by another process, and never taken for another day's."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.plan.model import Day
from frywright.plan.replay import PARTS, Rule
from frywright.rooms.day import day as rooms_day
from frywright.rooms.day import kept_rule as kept
from tests.plan.test_replay import kitchen_day


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """A cache of its own."""
    monkeypatch.setattr(kept, "cache_folder", lambda: tmp_path / "kernels")
    return tmp_path / "rules"


def rule_of(day: Day, value: float) -> Rule:
    return Rule(table_n=tuple(((value,) * len(day.items),) * PARTS for _ in range(5)), quiet_frac=0.5)


def test_the_same_day_is_tuned_once_and_another_anew(folder):
    """Built afresh the day finds its rule; one piece more asked for, a person more, another hold, and it does
    not; a broken file is tuned anew; a folder that cannot be is none.
    """
    calls = []

    def tune(day: Day, value: float) -> Rule:
        def now() -> Rule:
            calls.append(value)
            return rule_of(day, value)

        return kept.kept_rule(day, now)

    day = kitchen_day(2, 2, 60, 2, 3)
    assert tune(day, 1.0) == rule_of(day, 1.0)
    assert tune(kitchen_day(2, 2, 60, 2, 3), 2.0) == rule_of(day, 1.0)
    mean = day.mean_n.copy()
    mean[1, 59] += 1e-9
    longer = replace(day.items[0], hold_slots_count=day.items[0].hold_slots_count + 1)
    for n, other in enumerate(
        (replace(day, mean_n=mean), replace(day, hands_count=3), replace(day, items=(longer, day.items[1])))
    ):
        assert tune(other, 3.0 + n) == rule_of(day, 3.0 + n)
    assert calls == [1.0, 3.0, 4.0, 5.0]
    for broken in ("", "[1, 2]", "[[[[1.0]]], 0.5]", "null", '[[["x"]], 1]'):
        for path in folder.glob("*.json"):
            path.write_text(broken)
        assert tune(day, 7.0) == rule_of(day, 7.0)
    for path in folder.glob("*.json"):
        path.unlink()
    folder.rmdir()
    folder.write_text("in the way")
    assert tune(day, 8.0) == rule_of(day, 8.0)


def test_a_rule_searched_for_is_kept_only_where_it_costs_less(folder, monkeypatch):
    """On days neither knew: a better one is the day's from then on, a worse one is not."""
    day = kitchen_day(2, 2, 60, 2, 3)
    good, bad = (
        Rule(table_n=tuple(((float(x),) * 2,) * PARTS for x in (cover, 0.0, 0.5, cover, 0.0)))
        for cover in (3, 36)
    )
    kept.keep_rule(day, bad)
    for found, stays, better in ((good, good, True), (bad, good, False)):
        monkeypatch.setattr(rooms_day, "searched_rule", lambda *_, found=found: found)
        told = rooms_day.search_rule(day, 1)
        assert told.better is better
        assert kept.kept_rule(day, lambda: bad) == stays


def test_old_rules_go(folder, monkeypatch):
    """No more are kept than so many."""
    monkeypatch.setattr(kept, "KEPT_COUNT", 3)
    day = kitchen_day(1, 1, 60, 2, 1)
    for n in range(6):
        other = replace(day, mean_n=day.mean_n + n)
        kept.kept_rule(other, lambda: rule_of(day, 1.0))
    assert len(list(folder.iterdir())) == 3
