"""Figures whose unit was the same for everybody are in the kitchen's own: exact by NIST SP 811."""

from __future__ import annotations

import pytest

from frywright.calibrate.kettle import Kettle
from frywright.model.findings import Note
from frywright.rooms.cook.probe_view import kettle_lines
from frywright.trial.naming import crust_words


@pytest.mark.parametrize(("system", "said"), [("metric", "9.0 ± 1.8 W/°C"), ("us", "5.0 ± 1.0 W/°F")])
def test_an_idle_loss_by_the_degree_of_the_kitchen(system, said):
    """9 W for a kelvin are 5 W for a degree Fahrenheit."""
    note = Note(kind="ratio", text="Both hold for {oil_kg} of oil.", values={"oil_kg": 18.0})
    kettle = Kettle(heater_w=11_000.0, heater_error_w=500.0, loss_w_k=9.0, loss_error_w_k=1.8, note=note)
    line, rest = kettle_lines(kettle, system)
    assert line.endswith(said) and line.startswith("Heat into the oil: 11.0 ± 0.5 kW")
    assert ("lb" in rest) == (system == "us")


def test_a_crust_in_millimetres_or_inches():
    """1.27 mm are 0.05 in."""
    assert [crust_words(1.27e-3, system) for system in ("metric", "us")] == ["1.3 mm", "0.05 in"]
