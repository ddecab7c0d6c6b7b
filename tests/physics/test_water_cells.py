"""The water that the cells hold is the water the book counts as held, however far a step moves the front."""

from dataclasses import replace

import numpy as np
import pytest

from frywright.physics.inputs import ROUTINE
from frywright.physics.kernels import layout as at
from frywright.physics.kernels.march import march
from frywright.physics.solve import prepare
from tests.conftest import open_cook

COARSE = replace(ROUTINE, n_core=60, early_step_s=12.0, first_step_s=1.0)
"""Cells at the front so thin that long steps pass several of them."""


def held(given, live):
    """Water in the meat cells of every lane, from their shares, and as the book counts it [kg/m2]."""
    lane, cells, n_lane = given.lane, live.cells, given.lane.shape[1]
    edges = cells.v_old.reshape(-1, n_lane)[: given.n_core + 1].copy()
    edges[-1] = live.scalar[1, at.FRONT_VOLUME]
    water = cells.phi_old.reshape(-1, n_lane)[: given.n_core] * np.diff(edges, axis=0)
    for i, bone in enumerate(lane[at.BONE_CELLS].astype(int)):
        water[:bone, i] = 0.0
    return lane[at.WATER] * water.sum(axis=0), live.scalar[1, at.HELD]


@pytest.mark.parametrize("precision", [ROUTINE, COARSE], ids=["routine", "long steps"])
@pytest.mark.parametrize("bone", [0.0, 0.3])
@pytest.mark.parametrize("seconds", [40.0, 200.0, 700.0])
@pytest.mark.parametrize("thin", [1.0, 0.3, 0.12])
def test_cells_hold_what_the_book_counts(precision, bone, seconds, thin):
    cook = open_cook(seconds)
    pieces = [
        replace(
            p,
            drip_frac=0.35,
            half_thickness_m=thin * p.half_thickness_m,
            bone_radius_m=bone * thin * p.half_thickness_m,
        )
        for p in cook.pieces
    ]
    given, live, trace = prepare([replace(cook, pieces=pieces)], precision)
    march(given, live, trace)
    in_cells, counted = held(given, live)
    start = given.lane[at.WATER] * given.lane[at.RADIUS]
    assert np.all(np.abs(in_cells - counted) <= 1e-12 * start)
