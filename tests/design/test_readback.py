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
from frywright.rooms.cook.compare import read_back, value_names
from frywright.trial.ask import edit_program
from frywright.trial.effect import CANNOT_RUN, ORDERS, STOP, effect_view
from frywright.trial.kitchens import demo_kitchen
from frywright.trial.machine import settings_of
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
    assert view.orders[-1] == STOP
    assert len(view.orders) == len(result.mismatches) + 1
    assert all("again" in order for order in view.orders[:-1])
    assert [row.name for row in view.rows] == [
        "coldest piece",
        "crust",
        "colour change",
        "oil",
        "drop to earliest lift",
    ]
    if effect.held is None:
        assert CANNOT_RUN in view.warnings
        assert all(row.held == "cannot run" for row in view.rows)
        return
    core, crust, colour, oil, time = (row.held for row in view.rows)
    assert ("over" in core or "short" in core) if effect.held.margin_k is not None else "no rule" in core
    assert (
        "°F" in core and crust.endswith(" in") and colour.isdigit() and oil.count("°F") == 2 and ":" in time
    )
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


def setting_slips(setting):
    """Every single slip of a setting that is typed as it reads: digits dropped, changed and swapped, nothing
    like it, the same in words.
    """
    if setting.choices:
        return []
    text, found = setting.card, {"high", "0 ft", "OFF"}
    for i, c in enumerate(text):
        if c.isdigit():
            found |= {text[:i] + text[i + 1 :], text[:i] + ("9" if c != "9" else "1") + text[i + 1 :]}
            if text[i + 1].isdigit():
                found.add(text[:i] + text[i + 1] + c + text[i + 2 :])
    return sorted(found - {text})


@pytest.mark.parametrize("name", PROGRAMS)
def test_settings_lids_swapped_stages_and_old_versions_too(kitchen, name):
    """The display's scale, the clock's way, every lid, any two values swapped, an old version: each told
    whole.
    """
    program = kitchen.program(name)
    right = [v.text for v in value_names(kitchen, program, 1)]
    for setting in settings_of(kitchen, program):
        for choice in (*setting.choices, *setting_slips(setting)):
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
    assert effect_view(told, "us").orders[0] == "Key the total time again: 12:00."


def test_a_hundred_degrees_less_move_crust_colour_and_oil(kitchen):
    """210 for 310: thinner crust, paler, oil tens of degrees cooler, whatever the core does."""
    told = effect(kitchen, "bone-in alder", (2, "set"), "210")
    assert told.held.crust_m < 0.85 * told.card.crust_m
    assert told.held.colour_n < told.card.colour_n - 1.0
    assert told.held.oil_low_c < told.card.oil_low_c - 10.0
    assert effect_view(told, "us").orders[0] == "Key the set point of stage 2 again: 310."


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
    assert any("Do not heat it" in text for text in effect_view(celsius, "us").warnings)


def test_an_open_lid_for_a_closed_one_is_short_or_later(kitchen):
    """Frying open what the card fries under pressure leaves the coldest piece lower."""
    told = effect(kitchen, "bone-in alder", (9, "none"), "", lid2="open")
    assert told.held.margin_k < told.card.margin_k - 5.0
    assert effect_view(told, "us").orders[0] == "Set the lid of stage 2 again: pressure."


def test_an_altitude_setting_too_low_heats_the_oil_and_too_high_cools_it(kitchen):
    """A control that takes 3 degF off for each 1,000 ft: left at 0 for 5,420 ft the oil is 16.3 degF hotter,
    set to 9,000 ft 10.7 degF cooler; core, crust and colour follow.
    """
    low = effect(kitchen, "bone-in alder", (9, "none"), "", own0="0 ft")
    high = effect(kitchen, "bone-in alder", (9, "none"), "", own0="9,000 ft")
    assert low.held.margin_k > low.card.margin_k + 0.2 > high.held.margin_k + 0.4
    assert low.held.crust_m > low.card.crust_m > high.held.crust_m
    assert low.held.colour_n > low.card.colour_n > high.held.colour_n
    for told, moved_f in ((low, 16.26), (high, -10.74)):
        assert (told.held.oil_high_c - told.card.oil_high_c) * 1.8 == pytest.approx(moved_f, abs=0.6)
    assert "hotter" in {
        n.kind for n in effect(kitchen, "bone-in alder", (9, "none"), "", own0="-2,000 ft").warnings
    }
    assert effect_view(high, "us").orders == ("Set Height above the sea again: 5,420 ft.", STOP)
    assert (
        effect_view(high, "us", translator("es")).orders[0]
        == "Ponga otra vez Height above the sea: 5,420 ft."
    )


def test_the_same_height_in_other_words_is_no_slip(kitchen):
    """Bare, in metres, with capitals and blanks; a foot off is a slip."""
    program = kitchen.program("bone-in alder")
    right = [v.text for v in value_names(kitchen, program, 1)]
    for typed, same in (
        ("5420", True),
        ("1652 m", True),
        (" 5,420  FT ", True),
        ("5419 ft", True),
        ("5410 ft", False),
    ):
        assert read_back(kitchen, program, 1, right, {"own0": typed}).matches is same, typed
    by_name = read_back(kitchen, program, 1, right, {"Height above the sea": "900 ft", "End bell": "ON"})
    assert [(m.name, m.found) for m in by_name.mismatches] == [("Height above the sea", "900 ft")]
    assert {(s.key, s.name, s.value) for s in by_name.settings} == {
        ("own0", "Height above the sea", "900 ft"),
        ("own2", "End bell", "on"),
    }


def test_a_kitchen_that_moved_asks_for_its_own_height(kitchen):
    """Sheet of 5,420 ft, kitchen at 7,200 ft: what the old sheet says no longer matches. 300 ft is near."""
    program = kitchen.program("bone-in alder")
    right = [v.text for v in value_names(kitchen, program, 1)]
    for height_m, orders in ((2194.6, ("Set Height above the sea again: 7,200 ft.", STOP)), (1743.0, ())):
        there = replace(kitchen, site=replace(kitchen.site, altitude_m=height_m))
        result = read_back(there, program, 1, right, {"own0": "5,420 ft"})
        assert result.matches is (orders == ())
        if orders:
            assert effect_view(result.effect, "us").orders == orders
            assert result.effect.held.oil_high_c > result.effect.card.oil_high_c + 2.0
            assert read_back(there, program, 1, right, {"own0": "7,200 ft"}).matches


def test_what_no_simulation_knows_is_said_not_to_be_counted(kitchen):
    """Birch's kitchen does not know what its height does: figures stay the card's, and a warning says so."""
    told = effect(kitchen, "bone-in birch", (9, "none"), "", own0="0 ft")
    assert told.held == told.card
    (said,) = effect_view(told, "us").warnings
    assert said == (
        "Place height reads 0 ft: the machine may change its oil or its time."
        " The figures below do not count it."
    )
    bell = effect(kitchen, "bone-in alder", (9, "none"), "", own2="off")
    assert "an alarm may stay silent" in effect_view(bell, "us").warnings[0]


def test_a_clock_that_stops_for_the_vent_lifts_later_and_one_that_runs_on_earlier(kitchen):
    """Demo: the clock runs on. One that stands still adds the load's vent, never more than the 20 s
    timed: later, hotter. The other way round it is short of its time.
    """
    program = kitchen.program("bone-in alder")
    later = effect(kitchen, "bone-in alder", (9, "none"), "", vent="stands still")
    added_s = later.held.lift_s - later.card.lift_s
    assert 10.0 < added_s <= 20.0
    assert later.held.margin_k > later.card.margin_k
    assert effect_view(later, "us").orders[0] == "Set the clock again: during the vent it runs on."
    alder = kitchen.fryer("alder")
    waits = replace(alder, controller=replace(alder.controller, clock=ClockStyle.WAITS))
    there = replace(kitchen, fryers=tuple(waits if f.key == "alder" else f for f in kitchen.fryers))
    sooner = effect(there, "bone-in alder", (9, "none"), "", vent="runs on")
    assert sooner.card.lift_s - sooner.held.lift_s == pytest.approx(added_s)
    assert sooner.held.margin_k < sooner.card.margin_k
    assert "vent" not in {s.key for s in settings_of(kitchen, kitchen.program("bone-in cedar"))}
    assert "vent" in {s.key for s in settings_of(kitchen, program)}


def test_a_load_setting_cuts_every_time(kitchen):
    """Set to one head the control runs every time at 85 %: 12:00 becomes 10:12, and the margin falls."""
    told = effect(kitchen, "bone-in alder", (9, "none"), "", own1="one head")
    assert told.held.lift_s == pytest.approx(0.85 * 720.0, abs=1.0)
    assert told.held.margin_k < told.card.margin_k - 2.0
    unknown = effect(kitchen, "bone-in alder", (9, "none"), "", own1="something else")
    assert unknown.held == unknown.card and unknown.warnings[0].kind == "setting"


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
    assert "°C" in view.rows[0].held and "F" not in view.rows[0].held
    assert view.orders == ("Teclee otra vez la consigna de la etapa 1: 163.", translator("es")(STOP))
    with pytest.raises(InputError, match="one of"):
        read_back(there, program, 1, right, {"scale": "K"})


def test_every_order_and_warning_has_its_spanish():
    """No order stays in English for a crew that reads Spanish."""
    for text in (*ORDERS.values(), STOP, CANNOT_RUN):
        assert translator("es")(text) != text
