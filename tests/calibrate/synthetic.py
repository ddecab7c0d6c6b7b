"""Invented logs with a known truth: the engine at a fine grid, a sensor with faults, a writer with habits.

Every log follows from its seed. The truth (drops, lifts, offset, geometry) is kept beside the bytes.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass, replace
from functools import cache
from importlib import resources

import numpy as np

from frywright.catalog.kitchen import parse_kitchen
from frywright.physics.inputs import FINE, Lid, PieceClass, Span, Vat
from frywright.physics.plan import FryPlan, make_plan, piece_class, vat
from frywright.physics.solve import Cook, run

NEAR_TRUTH = replace(
    FINE, n_core=90, n_crust=24, max_step_s=1.0, max_boiling_step_k=0.1, passes=8, steady_m=1e-8
)
"""Within 0.0025 K of ``FINE`` at any time of four loads, in a seventh of its time; finer in every limit than
what fits, so that a fit's own discretisation counts as an error of its own."""
CUT = "breast_half"


@cache
def plan_of(pressure: bool) -> FryPlan:
    """The demo kitchen's full load of bone-in chicken, under pressure or open."""
    text = resources.files("frywright.catalog").joinpath("demo/kitchen.toml").read_text("utf-8")
    kitchen = parse_kitchen(text)
    return make_plan(kitchen, kitchen.program("bone-in alder" if pressure else "bone-in cedar"))


@dataclass(frozen=True, kw_only=True)
class Truth:
    """What really happened, times in seconds from the log's start."""

    drops_s: tuple[float, ...]
    lifts_s: tuple[float, ...]
    vents_s: tuple[float, ...]
    offset_k: float
    half_thickness_m: tuple[float, ...]
    mass_kg: tuple[float, ...]
    shape_n: float
    pressure: bool
    vat: Vat
    pieces: tuple[PieceClass, ...]
    set_c: float


@dataclass(frozen=True, kw_only=True)
class Made:
    """A log before it is written: seconds, named curves in degC (or Pa), and the truth."""

    time_s: np.ndarray
    curves: dict[str, np.ndarray]
    truth: Truth
    noise_k: float


def piece(name: str, mass_kg: float, half_m: float, shape: float, start_c: float) -> PieceClass:
    """A coated breast half of the catalog with a geometry of its own."""
    plan = plan_of(False)
    kind = next(k for k in plan.kinds if k.cut.key == CUT)
    base = piece_class(plan, kind)
    return replace(
        base, name=name, mass_kg=mass_kg, half_thickness_m=half_m, shape_n=shape, start_temp_c=start_c
    )


def make(seed: int, loads: int | None = None, hard: bool = False) -> Made:
    """Draw a fryer, a program and one to three loads; simulate them in a row with idle time between.

    Usual logs: three-quarter to full loads dropped when the fryer is ready, one reading a second, noise
    of 0.02 to 0.05 K. Hard ones: from 40 % of a load, dropped at any moment, two seconds, up to 0.12 K.
    """
    rng = np.random.default_rng(seed)
    pressure = bool(rng.random() < 0.5)
    mass = rng.uniform(20.0, 32.0)
    offset = rng.uniform(-8.0, 8.0)
    set_c = rng.uniform(158.0, 178.0)
    fryer = replace(
        vat(plan_of(True)),
        oil_mass_kg=mass,
        oil_start_c=set_c - offset,
        heater_w=mass * rng.uniform(380.0, 520.0),
        swing_k=rng.uniform(3.0, 7.0),
        loss_w_k=rng.uniform(5.0, 8.0),
    )
    share = rng.uniform(0.4 if hard else 0.7, 1.0)
    half, shape = rng.uniform(0.0125, 0.0175), rng.uniform(0.3, 1.2)
    halves = (half, half * 1.048)
    pieces = (
        piece("usual", share * mass * 0.16, halves[0], shape, rng.uniform(2.0, 6.0)),
        piece("heavy", 1e-6, halves[1], shape, rng.uniform(2.0, 6.0)),
    )
    count = loads or int(rng.integers(1, 4))
    state = _Chain(fryer, set_c - offset)
    state.idle(float(rng.uniform(1300.0, 1700.0)), float(rng.uniform(10.0, 120.0)), hard)
    drops, lifts, vents = [], [], []
    for _ in range(count):
        drops.append(state.now_s)
        spans = _program(rng, set_c - offset, half, pressure)
        lift, vent = state.load(
            pieces, spans, float(rng.uniform(400.0, 800.0)), float(rng.uniform(10.0, 120.0)), hard
        )
        lifts.append(lift)
        vents += vent
    truth = Truth(
        drops_s=tuple(drops),
        lifts_s=tuple(lifts),
        vents_s=tuple(vents),
        offset_k=offset,
        half_thickness_m=halves,
        mass_kg=(pieces[0].mass_kg, pieces[1].mass_kg),
        shape_n=shape,
        pressure=pressure,
        vat=fryer,
        pieces=pieces,
        set_c=set_c,
    )
    return _sense(rng, state, truth, hard)


def _program(rng: np.random.Generator, set_c: float, half: float, pressure: bool) -> list[Span]:
    """A program whose length suits the piece."""
    long = 820.0 * (half / 0.015) ** 2 * rng.uniform(0.95, 1.2)
    if not pressure:
        return [Span(duration_s=1.15 * long, set_c=set_c)]
    low = set_c - rng.uniform(0.0, 12.0)
    return [
        Span(duration_s=float(rng.uniform(20.0, 60.0)), set_c=set_c),
        Span(duration_s=0.85 * long, set_c=low, lid=Lid.PRESSURE),
        Span(duration_s=300.0, set_c=low, lid=Lid.VENT, until=4, value=1000.0),
        Span(duration_s=float(rng.uniform(20.0, 60.0)), set_c=set_c),
    ]


class _Chain:
    """Loads in a row: the oil goes on from where the last run left it."""

    def __init__(self, fryer: Vat, set_c: float) -> None:
        self.vat, self.set_c, self.now_s = fryer, set_c, 0.0
        self.parts: list[dict[str, np.ndarray]] = []

    def idle(self, least_s: float, after_s: float, at_random: bool) -> None:
        """Idle time that ends some seconds after a cut-out, when a fryer says it is ready."""
        tracer = [piece("tracer", 1e-9, 0.01, 0.0, 20.0)]
        if not at_random:
            least_s = self._ready(tracer, [], least_s) + after_s
        self._run(tracer, [Span(duration_s=least_s, set_c=self.set_c, lid=Lid.REST)], np.nan)

    def _ready(self, pieces, spans, least_s):  # type: ignore[no-untyped-def]
        """Idle time after which the heater first cuts out, later than ``least_s``."""
        rest = Span(duration_s=least_s + 900.0, set_c=self.set_c, lid=Lid.REST)
        history = run(Cook(vat=self.vat, pieces=pieces, spans=[*spans, rest]), NEAR_TRUTH)
        resting = (
            history.time_s - history.time_s[np.flatnonzero(history.span < len(spans))[-1] if spans else 0]
        )
        heats = np.diff(history.heater_j) > 0.0
        outs = np.flatnonzero(heats[:-1] & ~heats[1:]) + 1
        return float(next((resting[k] for k in outs if resting[k] > least_s), least_s))

    def load(self, pieces, spans, least_s, after_s, at_random):  # type: ignore[no-untyped-def]
        before = self.now_s
        if not at_random:
            least_s = self._ready(list(pieces), spans, least_s) + after_s
        history = self._run(
            list(pieces), [*spans, Span(duration_s=least_s, set_c=self.set_c, lid=Lid.REST)], 1.0
        )
        at = [history.time_s[np.flatnonzero(history.span == k)[-1]] for k in range(len(spans))]
        vents = [before + float(at[k - 1]) for k, span in enumerate(spans) if span.lid is Lid.VENT]
        return before + float(at[-1]), vents

    def _run(self, pieces, spans, core_gain):  # type: ignore[no-untyped-def]
        history = run(Cook(vat=self.vat, pieces=pieces, spans=spans), NEAR_TRUTH)
        cores = history.core_temp_c * core_gain
        self.parts.append(
            {
                "time": self.now_s + history.time_s,
                "oil": history.oil_temp_c,
                "gauge": history.pressure_pa - self.vat.atmosphere_pa,
                "core 1": cores[:, 0],
                "core 2": cores[:, -1],
            }
        )
        self.now_s += float(history.time_s[-1])
        self.vat = replace(self.vat, oil_start_c=float(history.oil_temp_c[-1]))
        return history


def _sense(rng: np.random.Generator, state: _Chain, truth: Truth, hard: bool) -> Made:
    """Sample with noise, resolution, drift and open-circuit stretches."""
    step = 2.0 if hard else 1.0
    noise = rng.uniform(0.05, 0.12) if hard else rng.uniform(0.02, 0.05)
    digit = float(rng.choice([0.01, 0.05, 0.1]))
    time = np.arange(0.0, state.now_s, step)
    curves = {}
    for name in ("oil", "core 1", "core 2", "gauge"):
        exact = _sample(state, name, time)
        scale = 300.0 if name == "gauge" else 1.0
        drift = (
            0.0
            if name in ("gauge", "oil")
            else rng.normal(0.0, 0.15) + rng.normal(0.0, 0.15) * time / time[-1]
        )
        read = (
            np.round((exact + drift + noise * scale * rng.normal(size=len(time))) / (digit * scale))
            * digit
            * scale
        )
        curves[name] = (
            _in_and_out(time, read, truth, int(name[-1]) - 1, rng, noise) if name.startswith("core") else read
        )
        for _ in range(int(rng.integers(0, 4))):
            start = int(rng.integers(0, len(time) - 20))
            curves[name][start : start + int(rng.integers(1, 9))] = np.nan
    curves["display"] = np.round(_sample(state, "oil", time) + truth.offset_k)
    if not truth.pressure:
        del curves["gauge"]
    return Made(time_s=time, curves=curves, truth=truth, noise_k=noise)


def _in_and_out(time, read, truth, n, rng, noise):  # type: ignore[no-untyped-def]
    """A probe in room air until two minutes before a drop, then in the cold piece."""
    out = np.where(np.isnan(read), 22.0, read)
    for drop in truth.drops_s:
        waiting = (time >= drop - 120.0) & (time < drop)
        drift = float(
            read[min(int(np.searchsorted(time, drop)), len(read) - 1)] - truth.pieces[n].start_temp_c
        )
        out[waiting] = truth.pieces[n].start_temp_c + drift + noise * rng.normal(size=int(waiting.sum()))
    return out


def _sample(state: _Chain, name: str, time: np.ndarray) -> np.ndarray:
    out = np.full(len(time), np.nan)
    for part in state.parts:
        inside = (time >= part["time"][0]) & (time < part["time"][-1])
        out[inside] = np.interp(time[inside], part["time"], part[name])
    return out


def write(made: Made, seed: int) -> bytes:
    """The log as some logger would write it: separator, decimal mark, units, dates, header, faults."""
    rng = np.random.default_rng([seed, 7])
    sep = str(rng.choice([";", "\t", ","]))
    comma = sep != "," and bool(rng.random() < 0.5)
    unit = str(rng.choice(["c", "f"]))
    style = int(rng.integers(0, 5))
    start = dt.datetime(2026, int(rng.integers(1, 13)), int(rng.integers(13, 28)), 7, 30, 0)
    names = {
        "oil": "Oil",
        "core 1": "Breast A",
        "core 2": "Breast B",
        "gauge": "Gauge (psi)",
        "display": "Display",
    }
    mark = str(rng.choice(["----", "", "OPEN", "NaN"]))
    columns, titles = [], []
    for key, values in made.curves.items():
        fahrenheit = values * 9 / 5 + 32 if unit == "f" else values
        shown = values / 6894.757293168361 if key == "gauge" else fahrenheit
        cells = [
            mark if v != v else f"{v:.2f}" for v in shown.tolist()
        ]  # only what is missing differs from itself
        columns.append([cell.replace(".", ",") for cell in cells] if comma else cells)
        titles.append(names[key] if key == "gauge" else f"{names[key]} (°{unit.upper()})")
    stamps = [_stamp(start + dt.timedelta(seconds=float(t)), float(t), style, sep) for t in made.time_s]
    rows = [sep.join([stamp, *cells]) for stamp, *cells in zip(stamps, *columns, strict=True)]
    rows = _faults(rng, rows)
    head = ["Date" + sep + "Time" if style == 3 else ("Elapsed (s)" if style == 4 else "Time")]
    lines = [f"Logger {seed}", "Notes: test kitchen", ""] if rng.random() < 0.5 else []
    text = "\n".join([*lines, sep.join([*head, *titles]), *rows]) + "\n"
    return text.encode(str(rng.choice(["utf-8", "utf-8-sig", "utf-16", "cp1252"])))


def _stamp(moment: dt.datetime, elapsed: float, style: int, sep: str) -> str:
    if style == 0:
        return moment.strftime("%Y-%m-%d %H:%M:%S")
    if style == 1:
        return moment.strftime("%d.%m.%Y %H:%M:%S")
    if style == 2:
        return moment.strftime("%m/%d/%Y %I:%M:%S %p")
    if style == 3:
        return moment.strftime(f"%d/%m/%y{sep}%H:%M:%S")
    return f"{elapsed:.0f}"


def _faults(rng: np.random.Generator, rows: list[str]) -> list[str]:
    """Swap, repeat and lose a few lines, as real files do."""
    rows = list(rows)
    for _ in range(int(rng.integers(0, 3))):
        i = int(rng.integers(10, len(rows) - 10))
        rows[i], rows[i + 1] = rows[i + 1], rows[i]
    for _ in range(int(rng.integers(0, 3))):
        i = int(rng.integers(10, len(rows) - 10))
        rows.insert(i, rows[i])
    for _ in range(int(rng.integers(0, 3))):
        del rows[int(rng.integers(10, len(rows) - 10))]
    return rows
