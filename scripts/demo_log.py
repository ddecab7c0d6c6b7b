"""Writes the invented probe log of the demo kitchen.

Run ``python scripts/demo_log.py > src/frywright/catalog/demo/probe-log.csv``.

Three breast halves in a full load of the pressure vat, simulated with a geometry that differs a
little from the catalog's, read by an invented logger with noise, gaps and a few faults.
"""

from __future__ import annotations

import datetime as dt
import sys
from dataclasses import replace

import numpy as np

from frywright.physics.inputs import CLOSE, Lid, Span
from frywright.physics.plan import TRACER_SHARE, PieceKind, make_plan, piece_class, spans, vat
from frywright.physics.solve import Cook, run
from frywright.trial.kitchens import demo_kitchen

MASSES_KG = (0.203, 0.220, 0.240)
SCALE = (1.05, 1.04, 1.06)
SHAPE, OFFSET_K, LOSS_W_K = 0.5, 2.8, 6.0
START = dt.datetime(2026, 3, 2, 7, 40, 0)
PSI = 6894.757293168361


def main() -> None:
    """Print the log."""
    rng = np.random.default_rng(20260302)
    kitchen = demo_kitchen()
    plan = make_plan(kitchen, kitchen.program("bone-in alder"))
    breast = next(k.cut for k in plan.kinds if k.cut.key == "breast_half")
    fryer = replace(vat(plan), loss_w_k=LOSS_W_K, oil_start_c=plan.oil_start_c - OFFSET_K)
    tracers = []
    for n, (mass, scale) in enumerate(zip(MASSES_KG, SCALE, strict=True)):
        cut = replace(breast, half_thickness_m=breast.half_thickness_m * scale, shape_n=SHAPE)
        kind = PieceKind(cut=cut, heavy=True, piece_mass_kg=mass, class_mass_kg=TRACER_SHARE)
        tracers.append(replace(piece_class(plan, kind), start_temp_c=3.1 + 0.3 * n))
    load = [piece_class(plan, k) for k in plan.kinds if not k.heavy]
    low = [replace(s, set_c=s.set_c - OFFSET_K) for s in spans(plan)[:-1]]
    back = Span(duration_s=900.0, set_c=fryer.oil_start_c, lid=Lid.REST)
    idle = run(
        Cook(
            vat=fryer,
            pieces=[replace(load[0], mass_kg=1e-9)],
            spans=[Span(duration_s=1655.0, set_c=fryer.oil_start_c, lid=Lid.REST)],
        ),
        CLOSE,
    )
    cook = run(
        Cook(
            vat=replace(fryer, oil_start_c=float(idle.oil_temp_c[-1])),
            pieces=[*tracers, *load],
            spans=[*low, back],
        ),
        CLOSE,
    )
    first = float(idle.time_s[-1])
    time = np.arange(0.0, first + float(cook.time_s[-1]), 1.0)
    before = time < first
    oil = np.where(
        before,
        np.interp(time, idle.time_s, idle.oil_temp_c),
        np.interp(time - first, cook.time_s, cook.oil_temp_c),
    )
    gauge = np.where(
        before, 0.0, np.interp(time - first, cook.time_s, cook.pressure_pa) - plan.site.atmosphere_pa
    )
    columns = [oil]
    for n, tracer in enumerate(tracers):
        core = np.where(
            before,
            np.where(time > first - 150.0, tracer.start_temp_c, 24.0),
            np.interp(time - first, cook.time_s, cook.core_temp_c[:, n]),
        )
        columns.append(np.where(time > first + float(cook.time_s[-1]) - 560.0, 24.0, core))
    columns = [c + 0.04 * rng.normal(size=len(time)) for c in columns]
    write(time, columns, oil, gauge)


def write(time: np.ndarray, columns: list[np.ndarray], oil: np.ndarray, gauge: np.ndarray) -> None:
    """Print the rows, in the logger's units and with its faults."""
    sys.stdout.write("Invented demo log, no real kitchen\nLogger: four thermocouples and a gauge\n\n")
    sys.stdout.write(
        "Date;Time;Oil (°F);Breast 1 (°F);Breast 2 (°F);Breast 3 (°F);Gauge (psi);Display (°F)\n"
    )
    for i, t in enumerate(time):
        if 700 <= i < 704:
            continue
        cells = [f"{c[i] * 1.8 + 32:.1f}" for c in columns]
        cells += [f"{max(gauge[i], 0.0) / PSI:.2f}", f"{(oil[i] + OFFSET_K) * 1.8 + 32:.0f}"]
        if 1200 <= i < 1206:
            cells[2] = "----"
        moment = START + dt.timedelta(seconds=float(t))
        sys.stdout.write(f"{moment:%Y-%m-%d;%H:%M:%S};" + ";".join(cells) + "\n")


if __name__ == "__main__":
    main()
