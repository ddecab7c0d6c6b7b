"""Commissioning arithmetic, energy of a day, and care that is due: figures of common practice and by hand."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace
from functools import partial

import pytest

from frywright.care.commissioning import Plate, SiteFacts, altitude_share, amps, go, power_share, survey
from frywright.care.counters import Use, calendar, due
from frywright.care.energy import energy_day
from frywright.model.care import Task
from frywright.model.errors import InputError
from frywright.model.findings import Outcome
from frywright.model.units import BTU, LB

ELECTRIC = Plate(fuel="electric", power_w=13_500.0, volts_n=208.0, phases_count=3)
READY = {
    "volts_n": 207.0,
    "phases_count": 3,
    "breaker_amps_n": 50.0,
    "hood_runs": True,
    "suppression_covers": True,
    "flame_distance_m": 0.5,
}


def words(plate, **site):
    """Outcome by point."""
    return {p.name: p.outcome for p in survey(plate, SiteFacts(**site))}


def test_currents_and_power():
    """13.5 kW at 208 V three-phase draws 37.5 A; 240 V heaters on 208 V give three quarters, a third
    longer.
    """
    assert amps(13_500, 208, 3) == pytest.approx(37.5, abs=0.05)
    assert power_share(240, 208) == pytest.approx(0.75, abs=0.005)
    assert 1 / power_share(240, 208) == pytest.approx(1.33, abs=0.01)
    assert altitude_share(5420 * 0.3048) == pytest.approx(1 - 0.04 * 3.42, abs=0.002)
    assert altitude_share(0) == 1.0


def test_figures_of_a_plate_are_above_0():
    """0 is no figure, 1 W or 1 V is one: currents, shares of power, and the survey of both fuels."""
    assert amps(1.0, 1.0, 1) == power_share(1.0, 1.0) == 1.0
    one = Plate(fuel="electric", power_w=1.0, volts_n=1.0, phases_count=1)
    assert words(one)["voltage"] is Outcome.UNKNOWN and words(Plate(fuel="gas", power_w=1.0))
    refused = (lambda: amps(0.0, 1.0, 1), lambda: amps(1.0, 0.0, 1), lambda: power_share(0.0, 1.0))
    bad = (replace(one, power_w=0.0), replace(one, volts_n=0.0), Plate(fuel="gas", power_w=0.0))
    for ask in (*refused, lambda: power_share(1.0, 0.0), *(partial(words, plate) for plate in bad)):
        with pytest.raises(InputError):
            ask()


def test_a_ready_site_is_a_go_and_each_fault_a_no_go():
    """One fault at a time turns the whole into a no-go; what nobody looked at is unknown, never a go."""
    assert go(survey(ELECTRIC, SiteFacts(**READY))) is Outcome.MEETS
    faults = {
        "voltage": {"volts_n": 240.0},
        "phase": {"phases_count": 1},
        "breaker": {"breaker_amps_n": 40.0},
        "hood": {"hood_runs": False},
        "suppression": {"suppression_covers": False},
        "clearance": {"flame_distance_m": 0.3},
    }
    for name, fault in faults.items():
        found = survey(ELECTRIC, SiteFacts(**{**READY, **fault}))
        assert {p.name: p.outcome for p in found}[name] is Outcome.FAILS
        assert go(found) is Outcome.FAILS
        left = survey(ELECTRIC, SiteFacts(**{**READY, **dict.fromkeys(fault)}))
        assert go(left) is Outcome.UNKNOWN


def test_gas_is_checked_by_type_pressure_and_altitude():
    """Another gas is a no-go, pressure within the plate's range meets, height needs a licensed fitter."""
    plate = Plate(fuel="gas", power_w=35e3, gas="natural")
    told = words(
        plate,
        gas="propane",
        gas_static_pa=1800.0,
        gas_flowing_pa=1500.0,
        gas_plate_pa=(1200.0, 2600.0),
        altitude_m=1650.0,
    )
    assert told["gas type"] is Outcome.FAILS
    assert told["gas pressure"] is Outcome.MEETS
    assert told["altitude"] is Outcome.UNKNOWN
    with pytest.raises(InputError):
        survey(Plate(fuel="coal", power_w=1.0), SiteFacts())


def test_energy_of_a_day_by_hand():
    """13 h on, 80 lb at 40 lb/h, idle 1.0 kW, 258 Btu/lb, 0.80, preheat 2.4 kWh: 20.96 kWh."""
    day = energy_day(13 * 3600.0, 80 * LB, 40 * LB / 3600, 1000.0, 258 * BTU / LB, 0.80, 2.4 * 3.6e6)
    assert day.total_j / 3.6e6 == pytest.approx(20.96, abs=0.01)
    with pytest.raises(InputError):
        energy_day(3600.0, 80 * LB, 40 * LB / 3600, 1000.0, 258 * BTU / LB, 0.80, 0.0)


USE = Use(
    loads_count=380,
    heat_s=100 * 3600.0,
    turns_count=20,
    days_count=10,
    loads_a_day_n=40.0,
    heat_a_day_s=12 * 3600.0,
    turns_a_day_n=2.0,
)


def test_the_earliest_counter_wins():
    """Loads before days, days before loads, and a counter that never moves never decides."""
    gasket = Task(key="seal", title="Turn the lid seal", who="crew", loads_count=400, days_count=30)
    assert (due(gasket, USE).counter, due(gasket, USE).days_n) == ("loads", 0.5)
    pump = Task(key="pump", title="Pump seals", who="technician", turns_count=90, days_count=20)
    assert (due(pump, USE).counter, due(pump, USE).days_n) == ("days", 10.0)
    with pytest.raises(InputError):
        Task(key="x", title="x", who="crew")
    with pytest.raises(InputError):
        Task(key="x", title="x", who="anyone", days_count=3)


def test_the_calendar_is_an_icalendar_file():
    """Lines of at most 75 octets, escaped text, one event a task, overdue today."""
    late = due(
        Task(
            key="seal",
            title=(
                "Turn the lid seal, both sides; wipe it, and look for nicks along the whole of its length —"
                " twice"
            ),
            who="crew",
            days_count=5,
        ),
        USE,
    )
    text = calendar(
        [("Alder, vat 1", late)], dt.date(2026, 11, 25), dt.datetime(2026, 11, 25, 12, tzinfo=dt.UTC)
    )
    assert text.startswith("BEGIN:VCALENDAR\r\n")
    assert text.endswith("END:VCALENDAR\r\n")
    assert "DTSTART;VALUE=DATE:20261125" in text
    assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))
    whole = text.replace("\r\n ", "")
    assert "SUMMARY:Alder\\, vat 1: Turn the lid seal\\, both sides\\; wipe it" in whole


def test_wear_against_the_first_day():
    """A third over the first day is out whatever the trend; a steady rise tells when it would be; nothing is
    told without a first day.
    """
    from frywright.care.wear import wear

    out = wear("pressure_build", 40.0, [0, 7, 14], [50.0, 53.0, 54.0])
    assert out.outcome is Outcome.FAILS
    assert out.ratio_n == pytest.approx(53 / 40)
    assert "lid seal" in out.note.text
    rising = wear("heat_up", 900.0, [0, 10, 20, 30, 40], [900.0, 920.0, 940.0, 960.0, 980.0])
    assert rising.outcome is Outcome.MEETS
    assert rising.reaches_days_n == pytest.approx((1170 - 980) / 2.0)
    assert wear("recovery", 60.0, [0, 10, 20, 30], [60.0, 60.0, 60.0, 60.0]).reaches_days_n == float("inf")
    assert wear("recovery", None, [0], [60.0]).outcome is Outcome.UNKNOWN
    assert wear("recovery", 1.0, [0, 10], [3.0, 22.0]).outcome is Outcome.MEETS, "back as good as at once"
    assert wear("recovery", 1.0, [0, 10], [27.0, 27.0]).outcome is Outcome.FAILS
    assert wear("vent_down", 10.0, [0, 10], [14.0, 14.0]).outcome is Outcome.FAILS, "a vent's seconds count"
    for bad in (("mood", 1.0, [0], [1.0]), ("recovery", 0.0, [0], [1.0]), ("recovery", 1.0, [], [])):
        with pytest.raises(InputError):
            wear(*bad)
