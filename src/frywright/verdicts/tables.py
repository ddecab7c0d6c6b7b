"""Time-temperature tables: the printed cells, interpolated in log time, never extrapolated."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load
from frywright.model.errors import InputError
from frywright.model.units import to_inside

SPECIES = ("chicken", "turkey")
FAT_LIMIT_PCT = 12


@dataclass(frozen=True, slots=True)
class TimeTable:
    """Rows of (temperature [degC], time [s]), rising in temperature. Time 0 means instantaneous."""

    key: str
    temp_c: tuple[float, ...]
    time_s: tuple[float, ...]
    instant_s: float

    def time_at(self, temp_c: float) -> float | None:
        """Time [s] that meets the table at a steady temperature; None below its first row.

        Printed cells return their own time. Between rows the logarithm of time is linear in
        temperature; towards an instantaneous row it runs to ``instant_s``. Above the last
        row the last row's time is returned: no more credit than the table prints.
        """
        rows = len(self.temp_c)
        if temp_c < self.temp_c[0] - 1e-9:
            return None
        for printed, time in zip(self.temp_c, self.time_s, strict=True):
            if abs(temp_c - printed) < 1e-9:
                return time
        for i in range(rows - 1):
            if temp_c < self.temp_c[i + 1]:
                low, high = self.time_s[i], self.time_s[i + 1] or min(self.instant_s, self.time_s[i])
                if low == 0.0:
                    return 0.0
                share = (temp_c - self.temp_c[i]) / (self.temp_c[i + 1] - self.temp_c[i])
                return math.exp((1 - share) * math.log(low) + share * math.log(high))
        return self.time_s[-1]

    def rate(self, temp_c: NDArray[np.float64]) -> NDArray[np.float64]:
        """Share of the demanded lethality gained per second [1/s]; 0 below the first row.

        Capped at 1 / ``instant_s``: an instantaneous row earns no more than that.
        """
        times = np.maximum(np.array(self.time_s), self.instant_s)
        logs = np.interp(temp_c, self.temp_c, np.log(times))
        return np.where(temp_c >= self.temp_c[0], np.exp(-logs), 0.0)

    def share(self, time_s: NDArray[np.float64], temp_c: NDArray[np.float64]) -> float:
        """Share of the demanded lethality that a curve collects (1 meets it).

        Between samples temperature is linear; within pieces of half a second the rate is
        exponential, so the log-mean is exact there.
        """
        grid = np.union1d(time_s, np.arange(time_s[0], time_s[-1], 0.5))
        rate = self.rate(np.interp(grid, time_s, temp_c))
        return float(np.sum(log_mean(rate[:-1], rate[1:]) * np.diff(grid)))


def log_mean(a: NDArray[np.float64], b: NDArray[np.float64]) -> NDArray[np.float64]:
    """Logarithmic mean; the mean of an exponential between its end values."""
    both = (a > 0) & (b > 0)
    with np.errstate(divide="ignore", invalid="ignore"):
        mean = (b - a) / np.log(b / a)
    close = (np.abs(a - b) <= 1e-8 + 1e-6 * np.abs(b)) | (a == b)
    mean = np.where(close, 0.5 * (a + b), mean)
    return np.where(both, mean, 0.0)


@cache
def fsis_poultry(species: str = "chicken", fat_pct: float = FAT_LIMIT_PCT) -> TimeTable:
    """USDA FSIS 7-log table for a species and fat content (fsis_2021, tables 3 and 4).

    Fat between printed columns uses the next higher, which asks for more time; above 12 % or unknown the 12 %
    column holds, as the guideline says. Raises InputError: the species is neither chicken nor turkey.
    """
    if species not in SPECIES:
        raise InputError("species", species, "chicken or turkey")
    column = str(min(max(math.ceil(fat_pct), 1), FAT_LIMIT_PCT))
    wanted = [
        r
        for r in load.rows("standards/fsis_poultry_7log.csv")
        if r["species"] == species and r["fat_pct"] == column
    ]
    rows = sorted((to_inside(float(r["temperature_f"]), "f"), float(r["time_s"])) for r in wanted)
    temps, times = zip(*rows, strict=True)
    return TimeTable("fsis_poultry", temps, times, load.table("standards/fsis_poultry.toml")["instant_s"])


@cache
def uk_equivalents() -> TimeTable:
    """UK 70 degC / 2 min and its printed equivalents (uk_fsa_equivalents)."""
    rows = load.table("standards/uk_core.toml")["edition"][0]["rows"]
    return TimeTable("uk_core", tuple(r[0] for r in rows), tuple(r[1] for r in rows), rows[-1][1])
