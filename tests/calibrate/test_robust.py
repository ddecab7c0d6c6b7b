"""Whatever a log holds, it is analysed and told: walks, steps, noise, silence, few readings, coarse
clocks.
"""

from __future__ import annotations

import io
import json

import numpy as np
import pytest

from frywright.calibrate.readings import read_log
from frywright.model.errors import DataError
from frywright.model.plain import plain
from frywright.rooms.cook.probe_told import probe_told
from frywright.rooms.cook.probe_view import log_curves, probe_view
from frywright.rooms.cook.probes import tell


def series(rng: np.random.Generator, count: int) -> np.ndarray:
    """One odd channel."""
    t = np.arange(count)
    choices = (
        165 + np.cumsum(rng.normal(size=count)) * 0.3,
        np.full(count, 170.0),
        np.where((t // 40) % 2, 172.0, 168.0),
        20 + 150 * (1 - np.exp(-t / 300)),
        rng.uniform(0, 200, count),
        170 + 3 * np.sin(t / 60.0) + 0.5 * rng.normal(size=count),
        np.where(rng.random(count) < 0.02, 170.0, np.nan),
    )
    values = np.clip(choices[int(rng.integers(len(choices)))], -40, 380)
    return np.where(rng.random(count) < rng.choice([0.0, 0.01, 0.5]), np.nan, values)


@pytest.mark.parametrize("seed", range(80))
def test_odd_logs_are_told(kitchen, seed):
    """View and JSON of an odd log come out whole, without warnings, in numbers that JSON knows."""
    rng = np.random.default_rng(seed)
    count, step = int(rng.integers(1, 900)), int(rng.choice([1, 2, 5, 30]))
    core = 4 + 80 * np.clip((np.arange(count) - 0.3 * count) / (0.5 * count + 1), 0, 1)
    third = "Gauge (psi)" if seed % 2 else "Display °C"
    columns = [series(rng, count), core, series(rng, count)]
    lines = [f"s;Oil °C;Core °C;{third}"]
    for i in range(count):
        lines.append(f"{i * step};" + ";".join("----" if np.isnan(c[i]) else f"{c[i]:.2f}" for c in columns))
    try:
        log = read_log(io.BytesIO("\n".join(lines).encode()), "odd.csv")
    except DataError:
        return
    told = tell(kitchen, log)
    assert probe_view(told, "us").read.kept == len(log.time_s)
    assert json.loads(json.dumps(plain(probe_told(told)), allow_nan=False))["kept_count"] == len(log.time_s)
    assert len(log_curves(told, "metric").time_s) > 0
