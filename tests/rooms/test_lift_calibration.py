"""Readings at the lift as a calibration counts them, and what is too little for one."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.calibrate.thermometer import ThermometerCheck
from frywright.ledger.facts.probing import Reading
from frywright.model.errors import InputError
from frywright.rooms.cook.lift_calibration import _point, calibrate_at_lift
from frywright.rooms.hall import write
from frywright.trial.at_lift import LiftPoint


def test_fewer_than_three_weighed_pieces_calibrate_nothing(store, kitchen):
    with pytest.raises(InputError, match="weight is 0; it must be of 3 pieces or more"):
        calibrate_at_lift(store, kitchen, "bone-in alder", "breast")


@pytest.mark.parametrize("rested", [False, True])
def test_a_reading_counts_with_what_its_thermometer_misreads(store, rested):
    """0.5 degC in ice water, in boiling water its 99.974 (ITS-90): by a straight line 80 is 79.90."""
    more = {"rest_core_c": 70.0, "rest_s": 120.0} if rested else {}
    reading = Reading(
        name="x",
        thermometer="T1",
        core_c=80.0,
        limit_c=73.9,
        load="x",
        units_count=1.0,
        mass_kg=0.2,
        load_kind="one piece",
        **more,
    )
    kept = write(store, reading)
    at = kept.happened_at - dt.timedelta(hours=1)
    checks = [ThermometerCheck(thermometer="T1", at=at, ice_c=0.5, boil_c=99.974)]
    plain = _point([], kept)
    assert (plain.core_c, plain.mass_kg, plain.load) == (80.0, 0.2, "one piece")
    assert (plain.rest_core_c, plain.rest_s) == ((70.0, 120.0) if rested else (None, 0.0))
    found = _point(checks, kept)
    assert isinstance(found, LiftPoint) and found.core_c == pytest.approx(
        80 - 0.5 * 19.974 / 99.474, abs=2e-3
    )
    if rested:
        assert found.rest_core_c == pytest.approx(70 - 0.5 * 29.974 / 99.474, abs=2e-3)
