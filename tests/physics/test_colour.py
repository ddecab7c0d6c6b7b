"""The patch of colour: known colours of sRGB, ends as far apart as the colour may move."""

from __future__ import annotations

import numpy as np
import pytest

from frywright.catalog import load as catalog
from frywright.physics.colour import crust_hex, lab_hex

PRIMARIES = {
    (53.24, 80.09, 67.20): "#ff0000",
    (87.73, -86.18, 83.18): "#00ff00",
    (32.30, 79.19, -107.86): "#0000ff",
    (100.0, 0.0, 0.0): "#ffffff",
    (0.0, 0.0, 0.0): "#000000",
}
"""L*a*b* of the corners of sRGB under D65 (from memory, of common tables)."""


@pytest.mark.parametrize(("lab", "shown"), PRIMARIES.items())
def test_corners_of_srgb(lab, shown):
    """Each corner comes out within one step of 255."""
    got = lab_hex(np.array(lab))
    for i in (1, 3, 5):
        assert abs(int(got[i : i + 2], 16) - int(shown[i : i + 2], 16)) <= 1, got


def test_the_ends_lie_as_far_apart_as_the_colour_may_move():
    """dE of CIE 1976 between raw and end is the end colour's, to a step of rounding."""
    t = catalog.table("kinetics/browning.toml")
    apart = float(np.linalg.norm(np.array(t["raw_lab"]) - np.array(t["end_lab"])))
    assert apart == pytest.approx(t["end_n"], abs=0.5)


def test_it_darkens_and_stays_within_its_ends():
    """More browning is never lighter; beyond the end colour nothing changes."""
    green = [int(crust_hex(n)[3:5], 16) for n in range(0, 53, 4)]
    assert green == sorted(green, reverse=True)
    assert crust_hex(52.0) == crust_hex(80.0)
    assert crust_hex(-1.0) == crust_hex(0.0)
    assert crust_hex(0.0) != crust_hex(10.0)
