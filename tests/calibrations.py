"""A calibration as tests need one."""

from __future__ import annotations

from frywright.model.calibration import Calibration


def calibration(**changes) -> Calibration:
    """What three probed breast halves say, with what a test says otherwise."""
    values = {
        "cut": "breast_half",
        "coating": "dredge",
        "lid": "open",
        "half_thickness_m": 0.016,
        "shape_n": 0.5,
        "reference_mass_kg": 0.244,
        "pieces_count": 3,
        "mass_low_kg": 0.22,
        "mass_high_kg": 0.26,
        "oil_low_c": 150.0,
        "oil_high_c": 165.0,
        "start_low_c": 3.0,
        "start_high_c": 4.0,
        "error_k": 2.0,
    }
    return Calibration(**{**values, **changes})
