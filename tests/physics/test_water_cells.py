"""The water that the cells hold is the water the book counts as held, however far a step moves the front."""

from dataclasses import replace

import numpy as np
import pytest

from frywright.physics.engine import FINAL_PIECE
from frywright.physics.inputs import ROUTINE
from frywright.physics.pack import PIECE_ROW
from frywright.physics.solve import history, march_cooks
from tests.conftest import open_cook

COARSE = replace(ROUTINE, n_core=60, early_step_s=12.0, first_step_s=1.0)
"""Cells at the front so thin that long steps pass several of them."""


def held(done):
    """Water in the meat cells of every class, from their shares, and as the book counts it [kg/m2]."""
    _, phi, size = done.cells[0].swapaxes(0, 1)
    size[:, -1] += done.piece[0, :, FINAL_PIECE.index("front_volume")] - size.sum(axis=1)
    for i, bone in enumerate(done.packed.bone):
        size[i, :bone] = 0.0
    water = done.packed.piece[:, PIECE_ROW.index("water")]
    return water * (phi * size).sum(axis=1), done.piece[0, :, FINAL_PIECE.index("held")]


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
    done = march_cooks([replace(cook, pieces=pieces)], precision)
    in_cells, counted = held(done)
    start = np.array([p.water_kg_m3 * p.half_thickness_m for p in pieces])
    assert np.all(np.abs(in_cells - counted) <= 1e-12 * start)


@pytest.mark.parametrize("precision", [ROUTINE, COARSE], ids=["routine", "long steps"])
@pytest.mark.parametrize("seconds", [40.0, 150.0, 700.0])
@pytest.mark.parametrize("thin", [1.0, 0.3])
def test_the_front_encloses_what_the_book_counts(precision, seconds, thin):
    """The volume inside it, of spheres, whose v = s^3 / (3 a^2) is no straight line in s."""
    cook = open_cook(seconds)
    pieces = [
        replace(p, shape_n=2.0, drip_frac=0.35, half_thickness_m=thin * p.half_thickness_m)
        for p in cook.pieces
    ]
    done = march_cooks([replace(cook, pieces=pieces)], precision)
    half = np.array([p.half_thickness_m for p in pieces])
    volume = (half - history(done, 0).crust_m[-1]) ** 3 / (3.0 * half**2)
    assert volume == pytest.approx(done.piece[0, :, FINAL_PIECE.index("front_volume")], rel=1e-8)
