"""A kitchen as small as one can be: one open fryer, one product, metric or not, wherever it stands."""

from __future__ import annotations

KITCHEN = """[kitchen]
name = "{name}"
altitude_m = {altitude_m}
jurisdiction = "{place}"
units = "{units}"
language = "{language}"
thermometer_error_k = {error_k}

[day]
zone = "UTC"

[[fryer]]
key = "left"
name = "Left"
kind = "open"
capacity_kg = 4
oil_mass_kg = 20
heater_kw = 12

[[product]]
key = "wings"
name = "Wings"
cut_set = "wings"
coating = "bare"
start_temp_c = 4
"""


def small_kitchen(place: str, **told: object) -> str:
    """Its file; what is not told is a metric bench in English at 610 m with a thermometer within 1 K."""
    usual = {"name": "Bridge bench", "altitude_m": 610, "units": "metric", "language": "en", "error_k": 1}
    return KITCHEN.format(**{**usual, **told, "place": place})
