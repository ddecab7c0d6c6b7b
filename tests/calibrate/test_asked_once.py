"""What a calibration asks of the engine is asked once, side by side, and says what each says alone."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from frywright.calibrate.placement import profiles
from frywright.calibrate.problem import Problem
from frywright.calibrate.trial import FITTING, calm, engine_question, headspace_of, tracer
from frywright.physics.solve import run
from tests.calibrate.test_fit import GEOMETRY, SENSOR_SD_K, trial_of


def test_sizes_side_by_side_are_each_alone():
    """Three sizes of one piece, one with a bone: temperatures inside are to the bit those of each alone."""
    trial, truth = trial_of(1)
    base = replace(tracer(trial.plan, trial.probes[0], 4.0), shape_n=truth.shape_n, bone_radius_m=0.0)
    pieces = [replace(base, half_thickness_m=half) for half in (0.011, 0.015, 0.02)]
    pieces[1] = replace(pieces[1], bone_radius_m=0.003)
    raws = [run(engine_question(trial.plan, trial, [p], headspace_of(trial)), FITTING) for p in pieces]
    time = np.arange(0.0, trial.lift_s, 7.0)
    together = profiles(pieces, raws, time)
    for piece, raw, found in zip(pieces, raws, together, strict=True):
        assert np.array_equal(found, profiles([piece], [raw], time)[0])
    assert np.ptp(together[:, -1, 0]) > 20.0


def test_a_steep_reading_stands_as_it_was_read():
    """A fall of 20 K in a second amid noise: its readings stand, each time once, the level part smoothed."""
    time = np.arange(400.0)
    read = 170.0 + 0.05 * np.random.default_rng(2).normal(size=400) - 20.0 * (time > 200.0)
    time[204] = time[203]  # two readings of one moment: the later stands
    table = calm(time, read)
    assert np.all(np.diff(table[:, 0]) > 0.0)
    near = np.abs(table[:, 0] - 200.0) < 10.0
    assert near.sum() == 18
    assert np.array_equal(table[near, 1], read[np.searchsorted(time, table[near, 0], side="right") - 1])
    assert np.std(table[table[:, 0] < 150.0, 1]) < 0.5 * np.std(read[time < 150.0])


def test_runs_are_asked_once():
    """Of two loads with a probe each, what moves one probe's offset runs that load alone; the Jacobian is
    solved with its point, and columns that change no run are read off it.
    """
    problem = Problem([trial_of(1)[0], trial_of(3)[0]], GEOMETRY, SENSOR_SD_K)
    problem.residuals(problem.start)
    asked = problem.runs_count
    assert asked == 2 + 2 * len(GEOMETRY) * 2 + 2 * 2  # the point, both sides of each number, each load
    whole = problem.jacobian(problem.start)
    assert problem.runs_count == asked
    alone = Problem([problem.trials[1]], GEOMETRY, SENSOR_SD_K)
    rows = len(problem.parts[0].read), len(problem.parts[1].read)
    assert not whole[: rows[0], 3].any()
    assert np.array_equal(whole[rows[0] : sum(rows), 3], alone.jacobian(alone.start)[: rows[1], 2])
