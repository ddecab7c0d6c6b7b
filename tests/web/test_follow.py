"""A search whose goals are dragged: its page, the proposal for other goals, and what it leads to."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from frywright.design.search import Goals
from frywright.model.errors import InputError
from frywright.rooms.cook.follow import SLIDERS, goals_at, sliders
from frywright.rooms.kitchen import kitchen_text, remember_kitchen
from tests.web.test_desk_work import client, done, store  # noqa: F401

ASKED = {"product": "wings", "fryer": "left", "stages": "1", "margin": "2 K", "loss": "50"}


@pytest.fixture(scope="module")
def followed(client):  # noqa: F811
    """Address of a search that is done."""
    page, job = done(client, "/cook/desk/follow", ASKED)
    assert "Proposal, not proved" in page
    return job.replace("/job/", "/follow/")


def live(client, followed, **goals):  # noqa: F811
    return client.get(f"{followed}/view.json", params=goals).json()


def test_sliders_stand_where_the_search_had_its_goals(client, followed):  # noqa: F811
    page = client.get(followed).text
    for name, value in {"margin_k": "2", "most_loss_frac": "50", "longest_s": "25"}.items():
        assert re.search(rf'id="{name}" [^>]*value="{value}"', page), name
    assert live(client, followed) == live(client, followed, margin_k="2")


def test_the_program_follows_a_goal(client, followed):  # noqa: F811
    """More margin takes longer; the figures, the stages and the curves are of one program."""
    one, more = live(client, followed), live(client, followed, margin_k="9")
    assert one["ok"] and one["meets"] and more["meets"]
    assert more["cook"]["clock"]["total"] != one["cook"]["clock"]["total"]
    assert float(more["margin"].split()[0]) >= 8.95
    lift = next(m["time_s"] for m in more["cook"]["marks"] if m["text"] == "lift")
    minutes, seconds = more["time"].split(":")
    assert abs(60 * int(minutes) + int(seconds) - lift) <= 1.0
    assert more["stages"][0].startswith(f"{more['cook']['strip'][0]['set']:.1f} °C")
    assert more["cook"]["facts"]["proven"] is False


def test_oil_cooler_than_the_search_tried_is_followed_too(client, followed):  # noqa: F811
    told = live(client, followed, hottest_c="150", longest_s="40")
    assert float(told["stages"][0].split()[0]) <= 150.0
    assert not any(row["missed"] for row in told["reached"] if row["name"] == "Hottest set point")


def test_a_goal_out_of_reach_is_marked_and_cannot_be_proved(client, followed):  # noqa: F811
    told = live(client, followed, longest_s="3")
    assert not told["meets"]
    assert [row["name"] for row in told["reached"] if row["missed"]] == ["Drop to lift"]
    page = client.get(f"{followed}?longest_s=3").text
    assert re.search(r'id="prove"[^>]* hidden', page) and "found no program that meets every goal" in page
    refused = client.post(f"{followed}/prove", data={"longest_s": "3"})
    assert refused.status_code == 422 and "What binds is time" in refused.text


def test_what_is_proved_is_what_was_proposed(client, followed):  # noqa: F811
    """The proof may only make it longer."""
    told = live(client, followed, margin_k="6")
    page, job = done(client, f"{followed}/prove", {"margin_k": "6"})
    assert f'action="{job}/save"' in page and "Piece by piece" in page
    stage = told["stages"][0].rpartition(" · ")
    found = re.search(rf"{re.escape(stage[0])} · (\d+):(\d\d)", page)
    minutes, seconds = stage[2].split(":")
    assert int(found[1]) * 60 + int(found[2]) >= int(minutes) * 60 + int(seconds)


@pytest.mark.slow
def test_a_search_anew_has_the_goals_dragged_to(client, followed):  # noqa: F811
    page, job = done(client, f"{followed}/search", {"hottest_c": "165"})
    assert f'action="{job}/save"' in page
    assert float(re.search(r"(\d{3}\.\d) °C · open", page)[1]) <= 165.0


@pytest.mark.parametrize(
    "wrong", [{"margin_k": "x"}, {"margin_k": "nan"}, {"crust_low_m": "9", "crust_high_m": "8"}]
)
def test_what_is_no_goal_is_refused_in_words(client, followed, wrong):  # noqa: F811
    refused = client.get(f"{followed}/view.json", params=wrong, headers={"accept": "application/json"})
    assert refused.status_code == 422 and refused.json()["message"]


def test_another_kitchen_ends_it(client, store, followed):  # noqa: F811
    """A proposal for a fryer that was changed since would be wrong."""
    text = kitchen_text(store)
    remember_kitchen(store, text.replace("heater_kw = ", "heater_kw = 1"), "bench.toml", "new element")
    assert client.get(f"{followed}/view.json").status_code == 422
    assert "start it again" in client.get(followed).text
    assert client.get("/cook/desk/follow/999").status_code == 422


@pytest.mark.parametrize("system", ["us", "metric"])
def test_sliders_say_what_they_stand_at(system):
    """Read back, a slider is its goal to within half a step; the defaults of the desk are places of both."""
    from frywright.model.units import to_people

    goals = replace(Goals(), margin_k=4.03, crust_low_m=1.13e-3, core_high_c=95.3)
    back = goals_at({s.name: s.value for s in sliders(goals, system)}, system)
    for slider in sliders(goals, system):
        unit = SLIDERS[slider.name][1 + (system == "us")][0]
        told, meant = (
            to_people(getattr(g, slider.name), unit) if unit else getattr(g, slider.name)
            for g in (back, goals)
        )
        assert abs(told - meant) <= float(slider.step) / 2 + 1e-6, slider.name
        assert float(slider.low) <= float(slider.value) <= float(slider.high)
    with pytest.raises(InputError):
        goals_at({"margin_k": "-1"}, system)
