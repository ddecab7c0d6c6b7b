"""What a calibration makes of a cut."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.model.calibration import Calibration
from frywright.physics.plan import calibrated_cut


def test_a_fitted_thickness_grows_with_the_cube_root_of_the_weight(kitchen):
    """Alike in shape, eight times the weight is twice the thickness; a piece of the weight it was fitted at
    has the fitted one; without a calibration the cut is itself.
    """
    cut = kitchen.cut("breast_half")
    made = Calibration(
        cut="breast_half",
        coating="dredge",
        lid="open",
        half_thickness_m=0.016,
        shape_n=0.5,
        reference_mass_kg=cut.reference_mass_kg,
        pieces_count=3,
        mass_low_kg=0.1,
        mass_high_kg=0.3,
        oil_low_c=150.0,
        oil_high_c=165.0,
        start_low_c=3.0,
        start_high_c=4.0,
        error_k=2.0,
    )
    assert calibrated_cut(cut, made).half_thickness_m == pytest.approx(0.016)
    light = replace(made, reference_mass_kg=cut.reference_mass_kg / 8.0)
    assert calibrated_cut(cut, light).half_thickness_m == pytest.approx(0.032)
    assert calibrated_cut(cut, None) is cut
