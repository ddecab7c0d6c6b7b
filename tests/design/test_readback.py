"""Read-back: what displays show is read as cards write it, and every single slip has a consequence and an
order.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from frywright.design.controller import Keyed, render
from frywright.design.readback import UNUSED, tidy
from frywright.model.errors import InputError
from frywright.model.fryer import ClockStyle, Controller, TempUnit
from frywright.model.units import clock, parse_clock
from frywright.rooms.cook.cards import read_back, settings_of, value_names
from frywright.trial.ask import edit_program
from frywright.trial.effect import CANNOT_RUN, ORDERS, STOP, effect_view
from frywright.trial.kitchens import demo_kitchen
from frywright.voice.tongue import translator

F, C = Controller(shows=TempUnit.F), Controller(shows=TempUnit.C)
PROGRAMS = sorted({p.name for p in demo_kitchen().programs})


@pytest.mark.parametrize(
    ("what", "card", "typed", "controller"),
    [
        ("time", "3:40", "03:40", F),
        ("time", "3:40", " 3:40 ", F),
        ("time", "11:20", "11.20", F),
        ("time", "11:20", "11,20", F),
        ("time", "11:20", "11 20", F),
        ("time", "0:40", "40 s", F),
        ("time", "10:20", "10 min 20 s", F),
        ("set", "335", "335.0", F),
        ("set", "335", "335°F", F),
        ("set", "335", "335 F", F),
        ("set", "335", "335 °", F),
        ("set", "170.5", "170,5", C),
        ("set", "170", "170 ºC", C),
        *(("set", "0", text, F) for text in sorted(UNUSED)),
        *(("time", "0:00", text, F) for text in sorted(UNUSED)),
        ("set", "–", "OFF", F),
        ("time", "–", "--", F),
        ("time", "–", "", F),
    ],
)
def test_what_a_display_shows_is_no_false_alarm(what, card, typed, controller):
    """Leading zeros, units, decimals, OFF, dashes and blanks are read as the card writes them."""
    assert tidy(Keyed(stage=2, what=what, text=card), typed, controller) == card


@pytest.mark.parametrize(
    ("typed", "one", "other"),
    [("1200", "12:00", "20:00"), ("40", "0:40", "40:00"), ("5", "0:05", "5:00"), ("175", "175:00", "2:55")],
)
def test_a_time_without_a_colon_asks(typed, one, other):
    """Nobody guesses: the refusal says both readings."""
    with pytest.raises(InputError, match=f"type {one} or type {other}"):
        tidy(Keyed(stage=0, what="total", text="12:00"), typed, F)


@given(st.integers(0, 5999), st.sampled_from([F, C]), st.integers(100, 450))
def test_any_value_of_a_card_reads_as_itself(seconds, controller, degrees):
    """Whatever a card prints is read back as it stands."""
    assert tidy(
        Keyed(stage=1, what="time", text=clock(seconds) if seconds else "0:00"), clock(seconds), controller
    ) == clock(seconds)
    assert tidy(Keyed(stage=1, what="set", text=str(degrees)), str(degrees), controller) == str(degrees)


# ---------------------------------------------------------------- every slip


def slips_of(value, names, controller):
    """Every single slip of one value: digits dropped, doubled, changed, swapped; a step off; another stage's;
    the other scale; nothing.
    """
    text, found = value.text, set()
    for i, c in enumerate(text):
        if c.isdigit():
            found.add(text[:i] + text[i + 1 :])
            found |= {text[:i] + d + text[i + 1 :] for d in "0123456789"}
            found |= {text[:i] + d + text[i:] for d in "0123456789"}
            found |= {
                text[:i] + text[i + 1] + c + text[i + 2 :]
                for _ in [0]
                if i + 1 < len(text) and text[i + 1].isdigit()
            }
    found |= {v.text for v in names if v.what == value.what or {v.what, value.what} <= {"time", "total"}}
    if value.what == "set":
        step = controller.temp_step_k * (1.8 if controller.shows is TempUnit.F else 1.0)
        number = float(text)
        other = (number - 32) / 1.8 if controller.shows is TempUnit.F else number * 1.8 + 32
        found |= {f"{number + step:.4g}", f"{number - step:.4g}", f"{other:.0f}", f"-{text}"}
    else:
        seconds = parse_clock(text)
        found |= {clock(seconds + controller.time_step_s), clock(max(seconds - controller.time_step_s, 0.0))}
    return sorted(found | {"", "OFF"})


def readable(value, slip, controller):
    """Whether a person could have read it off a display: what asks or is no clock is refused before it is
    compared.
    """
    try:
        return tidy(value, slip, controller) != value.text
    except InputError:
        return False


def told_whole(result, system="us"):
    """The consequence in five figures, each told, and the orders; or *cannot run*."""
    effect, view = result.effect, effect_view(result.effect, system)
    assert not result.matches
    assert view["orders"][-1] == STOP
    assert len(view["orders"]) == len(result.mismatches) + 1
    assert all("again" in order for order in view["orders"][:-1])
    assert [row["name"] for row in view["rows"]] == [
        "coldest piece",
        "crust",
        "colour change",
        "oil",
        "drop to earliest lift",
    ]
    if effect.held is None:
        assert CANNOT_RUN in view["warnings"]
        assert all(row["held"] == "cannot run" for row in view["rows"])
        return
    core, crust, colour, oil, time = (row["held"] for row in view["rows"])
    assert ("over" in core or "short" in core) if effect.held.margin_k is not None else "no rule" in core
    assert "°F" in core and "mm" in crust and colour.isdigit() and oil.count("°F") == 2 and ":" in time
    if effect.held.margin_k is not None:
        assert (effect.held.margin_k < 0) == ("short" in core)


@pytest.mark.slow
@pytest.mark.parametrize("name", PROGRAMS)
def test_every_single_slip_of_every_demo_program_has_its_consequence_and_its_order(kitchen, name):
    """Exhaustive over the values keyed; what cannot be a reading is refused and counted too."""
    program = kitchen.program(name)
    controller = kitchen.fryer(program.fryer).controller
    names = value_names(kitchen, program, 1)
    right = [v.text for v in names]
    tried = refused = 0
    for i, value in enumerate(names):
        for slip in slips_of(value, names, controller):
            if not readable(value, slip, controller):
                refused += slip != value.text
                continue
            result = read_back(kitchen, program, 1, [*right[:i], slip, *right[i + 1 :]])
            assert (result.mismatches[0].stage, result.mismatches[0].what) == (value.stage, value.what), slip
            told_whole(result)
            tried += 1
    assert tried > 40 * sum(v.what == "set" and v.text != "0" for v in names), (tried, refused)


@pytest.mark.parametrize("name", PROGRAMS)
def test_settings_lids_swapped_stages_and_old_versions_too(kitchen, name):
    """The display's scale, the clock's way, every lid, any two values swapped, an old version: each told
    whole.
    """
    program = kitchen.program(name)
    right = [v.text for v in value_names(kitchen, program, 1)]
    for setting in settings_of(kitchen, program):
        for choice in setting.choices:
            result = read_back(kitchen, program, 1, right, {setting.key: choice})
            assert result.matches == (choice == setting.card)
            if not result.matches:
                told_whole(result)
    names = value_names(kitchen, program, 1)
    for i, a in enumerate(names):
        for j, b in enumerate(names[:i]):
            if a.what == b.what and a.text != b.text:
                swapped = list(right)
                swapped[i], swapped[j] = right[j], right[i]
                told_whole(read_back(kitchen, program, 1, swapped))
    stages = [replace(s, set_c=s.set_c + 5 / 1.8 * 2) for s in program.timed().stages]
    newer = edit_program(program, stages)
    both = replace(kitchen, programs=(*kitchen.programs, newer))
    result = read_back(both, newer, 1, right)
    told_whole(result)
    assert {m.slip for m in result.mismatches} == {"old version"}


def effect(kitchen, name, place, text, **settings):
    program = kitchen.program(name)
    names = value_names(kitchen, program, 1)
    read = [text if (v.stage, v.what) == place else v.text for v in names]
    return read_back(kitchen, program, 1, read, settings).effect


def test_two_minutes_less_on_the_total_are_short(kitchen):
    """Total 10:00 for 12:00: the first stage never comes, the food is short, and nothing is said to be
    sure.
    """
    told = effect(kitchen, "bone-in alder", (0, "total"), "10:00")
    assert told.held.lift_s == pytest.approx(600.0)
    assert told.held.margin_k < 0 < told.card.margin_k
    assert "not_known" in {n.kind for n in told.warnings}
    assert effect_view(told, "us")["orders"][0] == "Key the total time again: 12:00."


def test_a_hundred_degrees_less_move_crust_colour_and_oil(kitchen):
    """210 for 310: thinner crust, paler, oil tens of degrees cooler, whatever the core does."""
    told = effect(kitchen, "bone-in alder", (2, "set"), "210")
    assert told.held.crust_m < 0.85 * told.card.crust_m
    assert told.held.colour_n < told.card.colour_n - 1.0
    assert told.held.oil_low_c < told.card.oil_low_c - 10.0
    assert effect_view(told, "us")["orders"][0] == "Key the set point of stage 2 again: 310."


def test_oil_far_too_hot_is_warned_of(kitchen):
    """392 comes near the smoke point, 3355 and a display in Celsius pass the fryer's limit; 358 for 310 is
    hotter than ever asked.
    """
    kinds = {
        text: {n.kind for n in effect(kitchen, "bone-in alder", (2, "set"), text).warnings}
        for text in ("392", "3355", "358", "325")
    }
    assert kinds["392"] == {"near_smoke"}
    assert kinds["3355"] == {"past_limit", "near_smoke"}
    assert kinds["358"] == {"hotter"}
    assert kinds["325"] == set()
    celsius = effect(kitchen, "bone-in alder", (9, "none"), "", scale="°C")
    assert "past_limit" in {n.kind for n in celsius.warnings}
    assert any("Do not heat it" in text for text in effect_view(celsius, "us")["warnings"])


def test_an_open_lid_for_a_closed_one_is_short_or_later(kitchen):
    """Frying open what the card fries under pressure leaves the coldest piece lower."""
    told = effect(kitchen, "bone-in alder", (9, "none"), "", lid2="open")
    assert told.held.margin_k < told.card.margin_k - 5.0
    assert effect_view(told, "us")["orders"][0] == "Set the lid of stage 2 again: pressure."


def test_another_kitchen(kitchen):
    """A Celsius fryer in Spanish, its clock counting up, unused stages blank, no lid to press: read, compared
    and told in its own units.
    """
    fryer = replace(
        kitchen.fryer("cedar"),
        key="roble",
        controller=Controller(stage_count=3, shows=TempUnit.C, clock=ClockStyle.ELAPSED, temp_step_k=0.5),
    )
    program = replace(kitchen.program("bone-in cedar"), name="pollo", fryer="roble")
    there = replace(kitchen, fryers=(*kitchen.fryers, fryer), programs=(program,))
    right = [v.text for v in render(program, fryer.controller).values if not v.by_crew]
    assert right[:2] == ["163", "15:30"]
    assert read_back(
        there, program, 1, ["163,0 °C", "15.30", "OFF", "--", "", "-"], {"scale": "°C", "clock": "up"}
    ).matches
    result = read_back(there, program, 1, ["136", "15:30", *right[2:]])
    view = effect_view(result.effect, "metric", translator("es"))
    assert "°C" in view["rows"][0]["held"] and "K" in view["rows"][0]["held"]
    assert view["orders"] == ["Teclee otra vez la consigna de la etapa 1: 163.", translator("es")(STOP)]
    with pytest.raises(InputError, match="one of"):
        read_back(there, program, 1, right, {"scale": "K"})


def test_every_order_and_warning_has_its_spanish():
    """No order stays in English for a crew that reads Spanish."""
    for text in (*ORDERS.values(), STOP, CANNOT_RUN):
        assert translator("es")(text) != text
