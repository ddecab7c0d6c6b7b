"""Times and accuracy of the cook engine against SciPy's BDF and FiPy, in one run on one thread.

Best of several repeats on a shared machine. The reference is tests/reference/lines.py.
"""

from __future__ import annotations

import os
import platform
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from time import perf_counter

import numpy as np

from frywright.physics.inputs import ROUTINE
from frywright.physics.kernels.march import march
from frywright.physics.solve import prepare, run
from tests.conftest import four_classes, open_cook, pressure_cook
from tests.reference.lines import solve


def best_of(action, repeats: int = 40) -> float:
    """Shortest wall time [s]."""
    times = []
    for _ in range(repeats):
        start = perf_counter()
        action()
        times.append(perf_counter() - start)
    return min(times)


def march_time(cook, copies: int = 1, repeats: int = 40) -> float:
    """Shortest time of the march itself, a cook [s]; packing the question is timed apart."""
    times = []
    for _ in range(repeats):
        group = prepare([cook] * copies, ROUTINE)
        start = perf_counter()
        march(*group)
        times.append((perf_counter() - start) / copies)
    return min(times)


def two_threads(cook, groups: int = 200, copies: int = 4) -> float:
    """Cooks a second with two threads on prepared groups."""
    work = [prepare([cook] * copies, ROUTINE) for _ in range(groups)]
    start = perf_counter()
    with ThreadPoolExecutor(2) as pool:
        list(pool.map(lambda group: march(*group), work))
    return groups * copies / (perf_counter() - start)


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
            [np.interp(t[keep], known["time_s"], known[curve][:, i]) for i in range(got.core_temp_c.shape[1])], axis=1
        )
        gaps.append(float(np.max(np.abs(getattr(got, curve)[keep] - wanted))))
    mass = float(np.max(np.abs(got.evaporated_kg_m2[-1] / known["evaporated_kg_m2"][-1] - 1)))
    return gaps[0], 1e6 * gaps[1], mass


def fresh(*words: str) -> float:
    """Shortest wall time of a command in a fresh process [s]."""
    program = "from frywright.cli.main import run; run()"
    call = [sys.executable, "-c", program, *words]
    return best_of(lambda: subprocess.run(call, capture_output=True, check=True), 3)


def main() -> None:
    """Print the table."""
    opened, pressed = open_cook(900.0, band_k=6.0), pressure_cook(780.0, 60.0, band_k=6.0)
    print(
        f"{platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}; four classes, 15 min; best of 40\n"
    )
    print("| what | open | pressure + vent |\n|---|---|---|")
    one = march_time(opened), march_time(pressed)
    four = march_time(opened, 4), march_time(pressed, 4)
    print(f"| one cook, warm, one thread | {1e3 * one[0]:.3f} ms | {1e3 * one[1]:.3f} ms |")
    print(
        f"| packing the question and unpacking the answer | {1e3 * (best_of(lambda: run(opened)) - one[0]):.3f} ms | {1e3 * (best_of(lambda: run(pressed)) - one[1]):.3f} ms |"
    )
    print(f"| a cook in groups of 16 lanes | {1e3 * four[0]:.3f} ms | {1e3 * four[1]:.3f} ms |")
    print(f"| cooks a second a core | {1 / four[0]:.0f} | {1 / four[1]:.0f} |")
    print(f"| cooks a second, two threads | {two_threads(opened):.0f} | {two_threads(pressed):.0f} |")
    gaps = accuracy(opened), accuracy(pressed)
    print(f"| centre against the lines | {gaps[0][0]:.3f} K | {gaps[1][0]:.3f} K |")
    print(f"| crust | {gaps[0][1]:.1f} µm | {gaps[1][1]:.1f} µm |")
    print(f"| mass | {gaps[0][2]:.1e} | {gaps[1][2]:.1e} |")
    reports = run(opened).report, run(pressed).report
    print(
        f"| steps (tried again) | {reports[0].steps} ({reports[0].rejected}) | {reports[1].steps} ({reports[1].rejected}) |"
    )
    print(f"| energy gap | {reports[0].energy_gap_frac:.0e} | {reports[1].energy_gap_frac:.0e} |")
    scipy = [best_of(lambda c=c: solve(c, n_core=64, n_crust=16), 1) for c in (opened, pressed)]
    print(
        f"| SciPy BDF, 64 + 16 cells a class | {scipy[0]:.1f} s, ×{scipy[0] / one[0]:.0f} | {scipy[1]:.1f} s, ×{scipy[1] / one[1]:.0f} |"
    )
    fipy = fipy_time() * len(four_classes())
    print(
        f"| FiPy 4, conduction part alone, four classes | {fipy:.1f} s, ×{fipy / one[0]:.0f} | ×{fipy / one[1]:.0f} |"
    )
    print("\n| in a fresh process, kernels cached | |\n|---|---|")
    print(f"| `frywright --help` | {fresh('--help'):.2f} s |")
    from tempfile import NamedTemporaryFile

    from frywright.workbench.kitchens import demo_text

    with NamedTemporaryFile("w", suffix=".toml") as kitchen:
        kitchen.write(demo_text())
        kitchen.flush()
        print(
            f"| first result of `frywright cook simulate` | {fresh('cook', 'simulate', kitchen.name, '--program', 'bone-in alder'):.2f} s |"
        )


if __name__ == "__main__":
    main()
