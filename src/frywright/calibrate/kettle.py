"""Heater and idle loss of a fryer from its heat cycles. Only their ratio to the vat's heat capacity shows in
a log.
"""

from __future__ import annotations

from dataclasses import dataclass

from frywright.calibrate.heat import HeatState
from frywright.model.findings import Note
from frywright.model.fryer import Fryer, Oil

RISE_SHARE, LOSS_SHARE = 0.02, 0.03
"""Errors told. Largest seen in 60 synthetic logs: 1.5 % of the rise, 0.6 % of the loss; the loss also carries
the room's.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Kettle:
    """Heat into the oil and loss of the idle vat, for the oil mass of the kitchen file."""

    heater_w: float
    heater_error_w: float
    loss_w_k: float
    loss_error_w_k: float
    note: Note


def kettle_of(heat: HeatState, mean_c: float, fryer: Fryer, oil: Oil, room_temp_c: float) -> Kettle:
    """Heater [W] and idle loss [W/K] of a fryer whose idle oil cycles about ``mean_c``."""
    per_kelvin = fryer.oil_mass_kg * (oil.cp_0c_j_kgk + oil.cp_slope_j_kgk2 * mean_c) + fryer.metal_heat_j_k
    heater, loss = heat.heater_k_s * per_kelvin, heat.loss_k_s * per_kelvin / (mean_c - room_temp_c)
    note = Note(
        kind="ratio",
        text="Heater and oil mass cannot be told apart from a log: both figures hold for {oil_kg} of oil.",
        values={"oil_kg": fryer.oil_mass_kg},
    )
    return Kettle(
        heater_w=heater,
        heater_error_w=RISE_SHARE * heater,
        loss_w_k=loss,
        loss_error_w_k=LOSS_SHARE * loss,
        note=note,
    )
