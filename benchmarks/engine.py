"""Times and accuracy of the cook engine against SciPy's BDF and FiPy, in one run on one thread.

Best of several repeats on a shared machine. The reference is tests/reference/lines.py.
"""

from __future__ import annotations

import os
import platform
import subprocess
import sys
from dataclasses import replace
from tempfile import NamedTemporaryFile
from time import perf_counter, thread_time

import numpy as np
from tests.conftest import four_classes, open_cook, pressure_cook
from tests.physics.test_against_lines_water import TERMS
from tests.reference.lines import solve

from frywright.catalog.kitchen import parse_kitchen
from frywright.physics.engine import march
from frywright.physics.inputs import FINE, ROUTINE
from frywright.physics.pack import pack
from frywright.physics.plan import make_plan, question
from frywright.physics.solve import most_steps, run, run_many
from frywright.trial.kitchens import demo_text


def best_of(action, repeats: int = 40) -> float:
    """Shortest wall time [s]."""
    times = []
    for _ in range(repeats):
        start = perf_counter()
        action()
        times.append(perf_counter() - start)
    return min(times)


def packed(cooks):
    """Cooks of one structure, ready for the march."""
    return pack(cooks, ROUTINE, [most_steps(cook, ROUTINE) for cook in cooks])


def march_time(cooks, repeats: int = 40, *, full: bool = True) -> float:
    """Shortest processor time of the march itself, a cook [s]; packing the questions is timed apart."""
    ready, times = packed(cooks), []
    for _ in range(repeats):
        start = thread_time()
        march(ready, full=full)
        times.append((thread_time() - start) / len(cooks))
    return min(times)


def drawn(cook, count: int = 256, seed: int = 1):
    """Cooks unlike each other in pieces, load, oil, heater and length: lanes meet different events."""
    rng = np.random.default_rng(seed)
    found = []
    for _ in range(count):
        load = rng.uniform(0.4, 1.0)
        pieces = [
            replace(
                p,
                half_thickness_m=p.half_thickness_m * rng.uniform(0.85, 1.15),
                start_temp_c=rng.uniform(0.0, 8.0),
                mass_kg=p.mass_kg * load,
            )
            for p in cook.pieces
        ]
        vat = replace(
            cook.vat, oil_start_c=rng.uniform(160.0, 180.0), heater_w=rng.uniform(9e3, 15e3), band_k=0.0
        )
        spans = [replace(cook.spans[0], duration_s=rng.uniform(500.0, 900.0)), *cook.spans[1:]]
        found.append(replace(cook, pieces=pieces, vat=vat, spans=spans))
    return found


def fipy_time() -> float:
    """FiPy: pure conduction of one class, 100 cells, 900 steps of 1 s [s]."""
    from fipy import CellVariable, DiffusionTerm, Grid1D, TransientTerm

    mesh = Grid1D(nx=100, dx=0.0155 / 100)
    temp = CellVariable(mesh=mesh, value=4.0, hasOld=True)
    temp.constrain(100.0, mesh.facesRight)
    equation = TransientTerm(coeff=3.6e6) == DiffusionTerm(coeff=0.5)
    start = perf_counter()
    for _ in range(900):
        temp.updateOld()
        equation.solve(var=temp, dt=1.0)
    return perf_counter() - start


def accuracy(cook) -> tuple[float, float, float]:
    """Largest gap of centre [K], crust [um] and final mass [-] to the lines, openings left out."""
    got, known = run(cook), solve(cook, n_core=64, n_crust=16)
    ends = np.array(known["ends_s"])
    t = got.time_s
    keep = (t > 5) & (t < known["time_s"][-1]) & np.all(np.abs(t[:, None] - ends) > 1.0, axis=1)
    gaps = []
    for curve in ("core_temp_c", "crust_m"):
        wanted = np.stack(
            [
                np.interp(t[keep], known["time_s"], known[curve][:, i])
                for i in range(got.core_temp_c.shape[1])
            ],
            axis=1,
        )
        gaps.append(float(np.max(np.abs(getattr(got, curve)[keep] - wanted))))
    mass = float(np.max(np.abs(got.evaporated_kg_m2[-1] / known["evaporated_kg_m2"][-1] - 1)))
    return gaps[0], 1e6 * gaps[1], mass


def gaps(got, known) -> tuple[float, float, float]:
    """Largest gap of centre [K], crust [m] and final mass [-] of a cook to a finer solution; the start and
    the seconds in which a stage ends left out.
    """
    t, ends = got.time_s, known.time_s[np.flatnonzero(np.diff(known.span))]
    keep = (t > 5.0) & np.all(np.abs(t[:, None] - ends) > 1.0, axis=1)
    found = []
    for curve in ("core_temp_c", "crust_m"):
        columns = zip(getattr(got, curve).T, getattr(known, curve).T, strict=True)
        found.append(max(np.max(np.abs(np.interp(t, known.time_s, b) - a)[keep]) for a, b in columns))
    mass = np.max(np.abs(got.evaporated_kg_m2[-1] / known.evaporated_kg_m2[-1] - 1))
    return float(found[0]), float(found[1]), float(mass)


def drawn_gaps(cook, count: int = 512):
    """Gaps of drawn cooks, half of them with a wet coat and drip, to the same cooks at FINE."""
    wet = replace(cook, pieces=[replace(p, **TERMS) for p in cook.pieces])
    found = []
    for first in range(0, count, 32):
        some = drawn(wet if first % 64 else cook, 32, first)
        found += [gaps(*pair) for pair in zip(run_many(some), run_many(some, FINE), strict=True)]
    return np.array(found)


def fresh(*words: str) -> float:
    """Shortest wall time of a command in a fresh process [s]."""
    program = "from frywright.cli.main import run; run()"
    call = [sys.executable, "-c", program, *words]
    return best_of(lambda: subprocess.run(call, capture_output=True, check=True), 3)


def row(name: str, *cells: str) -> None:
    """Print a row of the table."""
    print(f"| {name} | " + " | ".join(cells) + " |")


def pair(values, shape: str) -> list[str]:
    """Two values in one format."""
    return [shape.format(v) for v in values]


def speed(opened, pressed) -> tuple[float, float]:
    """Rows on time; returns the times of one cook [s]."""
    one = march_time([opened]), march_time([pressed])
    row("one cook, warm, one thread, ms", *pair([1e3 * v for v in one], "{:.3f}"))
    switched = march_time([open_cook(900.0)]), march_time([pressure_cook(780.0, 60.0)])
    row("the same with on/off heating, every switch hit, ms", *pair([1e3 * v for v in switched], "{:.3f}"))
    kitchen = parse_kitchen(demo_text())
    demo = [question(make_plan(kitchen, kitchen.program(f"bone-in {name}"))) for name in ("cedar", "alder")]
    row(
        "the demo's Cedar and Alder, eight classes, ms",
        *pair([1e3 * march_time([c]) for c in demo], "{:.3f}"),
    )
    whole = best_of(lambda: run(opened)), best_of(lambda: run(pressed))
    row(
        "one cook with packing the question and unpacking the answer, ms",
        *pair([1e3 * v for v in whole], "{:.3f}"),
    )
    alike = march_time([opened] * 64, 5), march_time([pressed] * 64, 5)
    row("cooks a second a core, 64 copies of one cook", *pair([1 / v for v in alike], "{:.0f}"))
    rows = drawn(opened), drawn(pressed)
    row("256 cooks drawn at random", *pair([1 / march_time(c, 3) for c in rows], "{:.0f}"))
    row(
        "the same, cores and pressure only", *pair([1 / march_time(c, 3, full=False) for c in rows], "{:.0f}")
    )
    return one


def quality(opened, pressed) -> None:
    """Rows on accuracy at exactly that setting."""
    gaps = accuracy(opened), accuracy(pressed)
    row("centre against the lines, K", *pair([g[0] for g in gaps], "{:.3f}"))
    row("crust, µm", *pair([g[1] for g in gaps], "{:.1f}"))
    row("mass", *pair([g[2] for g in gaps], "{:.1e}"))
    for name, share in (("worst", 100.0), ("99 %", 99.0)):
        found = [np.percentile(drawn_gaps(c), share, axis=0) for c in (opened, pressed)]
        told = [f"{g[0]:.3f} K, {1e6 * g[1]:.1f} µm, {g[2]:.1e}" for g in found]
        row(f"512 drawn against `FINE`: centre, crust, mass, {name}", *told)
    reports = run(opened).report, run(pressed).report
    row("steps (tried again)", *[f"{r.steps} ({r.rejected})" for r in reports])
    row("energy gap", *pair([r.energy_gap_frac for r in reports], "{:.0e}"))


def others(opened, pressed, one: tuple[float, float]) -> None:
    """Rows on the named references, in the same run."""
    scipy = [best_of(lambda c=c: solve(c, n_core=64, n_crust=16), 1) for c in (opened, pressed)]
    row(
        "SciPy BDF, 64 + 16 cells a class",
        *[f"{t:.1f} s, ×{t / o:,.0f}" for t, o in zip(scipy, one, strict=True)],
    )
    fipy = fipy_time() * len(four_classes())
    row("FiPy 4, conduction of four classes alone", *[f"{fipy:.1f} s, ×{fipy / o:,.0f}" for o in one])


def commands() -> None:
    """Rows on fresh processes with cached kernels."""
    print("\n| in a fresh process, kernels cached | s |\n|---|---|")
    row("`frywright --help`", f"{fresh('--help'):.2f}")
    with NamedTemporaryFile("w", suffix=".toml") as kitchen:
        kitchen.write(demo_text())
        kitchen.flush()
        taken = fresh("cook", "simulate", kitchen.name, "--program", "bone-in alder")
    row("first result of `frywright cook simulate`", f"{taken:.2f}")


def main() -> None:
    """Print the tables."""
    opened, pressed = open_cook(900.0, band_k=6.0), pressure_cook(780.0, 60.0, band_k=6.0)
    print(f"{platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}, best of 40.\n")
    print("| four classes, 15 min | open | pressure, vent, rest |\n|---|---|---|")
    one = speed(opened, pressed)
    quality(opened, pressed)
    others(opened, pressed, one)
    commands()


if __name__ == "__main__":
    main()
