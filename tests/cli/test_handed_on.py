"""What is typed on a terminal reaches its act as it was meant, and what the act says is printed. Acts that
search, play days or serve are put aside: what they were asked is looked at.
"""

from __future__ import annotations

import json
from dataclasses import fields
from time import monotonic
from types import SimpleNamespace

import pytest
from typer.testing import CliRunner

from frywright.cli.fleet import _ratio
from frywright.cli.main import app
from frywright.client import sources
from frywright.client.sources import Heard
from frywright.model.errors import InputError, RecordError
from frywright.rooms import demo
from frywright.rooms import kitchen as kitchens
from frywright.rooms.cook import desk
from frywright.rooms.cook.intake import Sample
from frywright.rooms.day import day, what_if
from frywright.rooms.fleet import office
from frywright.trial import warm
from frywright.web import serve


@pytest.fixture
def run(place):
    """Runs a command on the store: what it printed, a line each."""

    def ran(*typed, code=0):
        got = CliRunner().invoke(app, [*typed, "--store", place])
        assert got.exit_code == code, got.output
        return json.loads(got.stdout) if "--json" in typed else got.output.splitlines()

    return ran


def days(money, served):
    named = {"days_count": 40, "fill_frac": served, "fill_half_width_frac": 0.01, "waste_frac": 0.05}
    more = {"waste_half_width_frac": 0.002, "total_money": money, "half_width_money": 1.5}
    unsaid = dict.fromkeys((f.name for f in fields(what_if.DaysView)), 0.0)
    return what_if.DaysView(**{**unsaid, **named, **more})


def test_days_are_played_as_asked_and_both_rows_are_printed(run, monkeypatch):
    """Drawn days alone, or the same with a change: an hour's hold, a fryer off, a factor; a word that is no
    pair is refused.
    """
    asked = []
    monkeypatch.setattr(day, "bench_for", lambda *told, **more: "bench")

    def replay(bench, count, engine_days=0):
        asked.append((count, engine_days))
        return what_if.ReplayView(days_count=40, base=days(80.0, 0.97))

    def changed(store, kitchen, bench, change, count):
        asked.append(change)
        cost = what_if.ChangeCost(money=asked[0], half_width_money=2.0)
        return what_if.ChangeView(days_count=40, base=days(80.0, 0.97), other=days(92.5, 0.9), change=cost)

    monkeypatch.setattr(what_if, "replay_view", replay)
    monkeypatch.setattr(what_if, "what_if", changed)
    plain = run("day", "replay", "--days", "40")
    assert plain == [
        "order-up-to rule: 97.0 % served (± 1.0), 5.0 % thrown away (± 0.2), 80.00 a day (± 1.50) (days: 40)"
    ]
    assert asked == [(40, 0)]
    for money, words in (
        (12.5, "The change costs 12.50 a day (± 2.00, 95 %)."),
        (-3.0, "The change saves 3.00 a day"),
    ):
        asked[:] = [money]
        lines = run("day", "replay", "--hold", "bone_in=1h", "--off", "cedar", "--factor", "1.2")
        assert [line.partition(":")[0] for line in lines[:2]] == ["order-up-to rule", "with the change"]
        assert "90.0 % served" in lines[1] and "92.50 a day" in lines[1] and lines[2].startswith(words)
        assert (asked[1].hold_min, asked[1].off, asked[1].factor) == ({"bone_in": 60.0}, ("cedar",), 1.2)
        assert asked[1].filter_every_count == 0
    assert "product=time" in " ".join(run("day", "replay", "--hold", "bone_in", code=2))


def test_a_program_is_carried_over_as_asked_and_told(place, monkeypatch):
    """Weights and heights in the kitchen's units; stages, what does not match and the proof are printed."""
    asked = []

    def transfer(place, program, target, effort):
        asked.append((program.name, target, effort))
        return "found", "proof"

    told = desk.TransferView(
        program={"name": "bone-in cedar", "version": 2},
        margin_k=1.0,
        source=None,
        target=None,
        unmatched=(),
        stages=("1  165 °C", "2  160 °C"),
        proof=SimpleNamespace(sentence="It meets."),
    )
    monkeypatch.setattr(desk, "transfer_program", transfer)
    monkeypatch.setattr(desk, "transfer_view", lambda *_: told)
    typed = f"cook transfer {place} --fryer cedar --bird 1.3kg --heads 2 --stages 2 --seed 7".split()
    lines = CliRunner().invoke(app, [*typed, "--program", "bone-in alder"]).stdout.splitlines()
    assert lines == [
        "bone-in cedar, version 2",
        "1  165 °C",
        "2  160 °C",
        "  core, crust, loss and colour match",
        "It meets.",
    ]
    ((name, target, effort),) = asked
    assert (name, target.fryer, target.product, target.load_heads) == ("bone-in alder", "cedar", None, 2.0)
    assert (target.unit_mass_kg, effort.stages, effort.seed) == (pytest.approx(1.3), 2, 7)


def test_readings_are_printed_while_it_listens_and_it_stops_in_time(run, monkeypatch):
    """Two readings, then the line's state; what broke the listening ends the command."""
    stops = []

    def opened(address, take, stop):
        def listen():
            stops.append((address, stop.is_set()))
            take(
                "box",
                [Sample(channel="K1", temp_c=70.0, at_s=1.0), Sample(channel="K2", temp_c=75.0, at_s=1.0)],
            )
            if address == "serial:/dev/none":
                raise InputError("live", "not installed", "installed")
            began = monotonic()
            stops.append(stop.wait(60.0) and monotonic() - began > 1.4)

        return Heard(link="connected"), listen

    monkeypatch.setattr(sources, "open_source", opened)
    lines = run("cook", "live", "--source", "file:/x", "--seconds", "1.5")
    assert [line for line in lines if "K" in line] == ["box/K1  158 °F", "box/K2  167 °F"]
    assert "Line: connected." in lines
    assert "live is not installed" in " ".join(
        run("cook", "live", "--source", "serial:/dev/none", "--seconds", "0.5", code=2)
    )
    assert stops == [("file:/x", False), True, ("serial:/dev/none", False)], (
        "stopped by its time and not before it"
    )


def test_what_a_site_dropped_is_emptied_here_and_what_was_left_is_named(run, monkeypatch):
    """A line a site; with one that was left the command ends as one that did not do all."""
    found = {}
    monkeypatch.setattr(office, "followed", lambda store, key="": found)
    assert run("fleet", "follow") == [
        "No site's record is kept here yet: frywright fleet sync at the site sends it."
    ]
    found["east"] = SimpleNamespace(count=0, left=())
    assert run("fleet", "follow") == ["east: 0 entries emptied."]
    found["west"] = SimpleNamespace(count=3, left=((12, RecordError("No.")),))
    lines = run("fleet", "follow", code=5)
    assert lines == [
        "east: 0 entries emptied.",
        "west: 3 entries emptied.",
        "  Entry 12 was not followed; nothing of it was emptied: No.",
        "A server that runs shows them until it is started anew.",
    ]
    rows = {"east": {"emptied": 0, "left": {}}, "west": {"emptied": 3, "left": {"12": "No."}}}
    got = CliRunner().invoke(app, ["fleet", "follow", "--json", "--store", "s.db"])
    assert (got.exit_code, json.loads(got.stdout)["sites"]) == (5, rows)


def test_files_of_a_watched_folder_are_named_as_they_are_read(run, tmp_path):
    """One that is read, and one that waits with why."""
    folder = tmp_path / "till"
    folder.mkdir()
    (folder / "friday.csv").write_text("Date,Time,Item,Qty\n11/20/2026,12:00,Chicken,2\n")
    (folder / "notes.csv").write_text("nothing to see")
    lines = run("day", "watch", str(folder), "--once")
    assert lines[0] == "friday.csv was read in."
    assert lines[1].startswith("notes.csv waits: no table was found in the file")


def test_a_ratio_is_a_figure_or_a_temperature_in_the_kitchens_units():
    shop = SimpleNamespace(usual_units="us")
    assert _ratio(shop, "kettle_c", 100.0) == "212 °F"
    assert _ratio(shop, "share", 1.23456) == "1.23"


def test_pages_are_served_of_the_store_named_and_engines_made_ready(monkeypatch, tmp_path):
    """The demo is played only where it is asked for; every option reaches the server."""
    asked = []
    monkeypatch.setattr(kitchens, "open_store", lambda *told: asked.append(told) or "store")
    monkeypatch.setattr(demo, "play_demo", lambda store: asked.append(("demo", store)))
    monkeypatch.setattr(serve, "serve_pages", lambda *told: print("served", asked.append(told)))
    monkeypatch.setattr(warm, "warm_up", lambda: 2.04)
    typed = [
        "serve",
        "--store",
        "a.db",
        "--kitchen",
        "k.toml",
        "--reason",
        "moved",
        "--port",
        "8399",
        "--no-open",
    ]
    assert CliRunner().invoke(app, typed).exit_code == 0
    assert asked == [("a.db", "k.toml", "moved"), ("store", 8399, False, "127.0.0.1", "none", 1)]
    asked.clear()
    more = ["serve", "--demo", "--host", "0.0.0.0", "--log", "json", "--processes", "2"]
    assert CliRunner().invoke(app, more).exit_code == 0
    assert asked == [
        ("var/frywright.db", "", ""),
        ("demo", "store"),
        ("store", 8377, True, "0.0.0.0", "json", 2),
    ]
    assert CliRunner().invoke(app, ["prepare"]).output.splitlines()[-1] == "Engines ready after 2.0 s."
