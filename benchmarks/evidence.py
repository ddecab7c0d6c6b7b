"""Timings and accuracy of the evidence side: python -m benchmarks.evidence [--large]

A day of 8 channels at one second read and analysed; a 100 MB file; one calibration; how often drops
and lifts are found within 5 s on usual and on hard synthetic logs.
"""

from __future__ import annotations

import io
import resource
import sys
from concurrent.futures import ProcessPoolExecutor
from dataclasses import replace
from time import perf_counter, process_time

import numpy as np
from tests.calibrate.synthetic import make, write

from frywright.calibrate.analyse import analyse
from frywright.calibrate.fit import fit
from frywright.calibrate.readings import read_log
from frywright.rooms.cook.probes import GEOMETRY, ProbeAsk, calibrate, tell, trials_of
from frywright.trial.kitchens import demo_kitchen, demo_log


def long_log(hours: float, channels: int = 8) -> bytes:
    """A log of many hours: synthetic loads one after another, one line a second."""
    made = make(0, loads=round(2.2 * hours))
    count = round(hours * 3600)
    names = ("oil", "core 1", "core 2", "display")
    curves = [np.resize(made.curves[n], count) for n in names]
    curves += [curves[0] + 0.3, *([curves[1]] * (channels - 5))]
    head = "Date;Time;Oil (°C);Breast A (°C);Breast B (°C);Display (°C);" + ";".join(
        f"CH{i} (°C)" for i in range(5, channels + 1)
    )
    lines = [head]
    for i in range(count):
        cells = ["----" if np.isnan(c[i]) else f"{c[i]:.2f}".replace(".", ",") for c in curves]
        day, second = divmod(i, 86400)
        lines.append(
            f"2026-03-{2 + day:02d};{second // 3600:02d}:{second // 60 % 60:02d}:{second % 60:02d};"
            + ";".join(cells)
        )
    return ("\n".join(lines) + "\n").encode()


def timed(text: bytes, name: str) -> None:
    """Read and analyse; print seconds and memory."""
    start = perf_counter()
    log = read_log(io.BytesIO(text), name)
    read_s = perf_counter() - start
    found = analyse(log)
    whole_s = perf_counter() - start
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    sys.stdout.write(
        f"{name}: {len(text) / 1e6:.0f} MB, {len(log.time_s)} rows, read {read_s:.2f} s, with analysis"
        f" {whole_s:.2f} s, {len(found.loads)} loads, peak {peak:.0f} MB\n"
    )


def calibrations() -> None:
    """The demo's log with three probed pieces, and one of its curves: processor time, the least of five."""
    kitchen, channels = demo_kitchen(), ("Breast 1 (°F)", "Breast 2 (°F)", "Breast 3 (°F)")
    asked = ProbeAsk(
        program="bone-in alder",
        cuts=dict.fromkeys(channels, "breast_half"),
        masses_kg=dict(zip(channels, (0.203, 0.22, 0.24), strict=True)),
        thermometers={},
    )
    answer = tell(kitchen, read_log(io.BytesIO(demo_log()), "demo"), asked)
    trial = trials_of(kitchen, answer, asked, "breast_half")[0]
    one = replace(trial, probes=trial.probes[:1])
    for name, action in (
        ("one log with three probed pieces", lambda: calibrate(kitchen, answer, asked, "breast_half")),
        ("one core curve, size and shape", lambda: fit([one], GEOMETRY, sensor_sd_k=0.25)),
    ):
        taken = []
        for _ in range(5):
            start = process_time()
            action()
            taken.append(process_time() - start)
        sys.stdout.write(f"{name}: {min(taken):.2f} s of the processor\n")


def events_of(question: tuple[int, bool]) -> list[float]:
    """Errors of every drop and lift of one synthetic log [s]; 999 for one not found."""
    seed, hard = question
    made = make(seed, hard=hard)
    found = analyse(read_log(io.BytesIO(write(made, seed)), "log"))
    errors = []
    for name, truth in (("drop_s", made.truth.drops_s), ("lift_s", made.truth.lifts_s)):
        got = [getattr(x.load, name) for x in found.loads if getattr(x.load, name) is not None]
        errors += [min((g - t for g in got), key=abs, default=999.0) for t in truth]
    return errors


def main() -> None:
    """Print every figure."""
    analyse(read_log(io.BytesIO(write(make(0, loads=1), 0)), "warm up"))
    day = long_log(24.0)
    timed(day, "24 h x 1 s x 8 channels")
    if "--large" in sys.argv:
        head, body = day.split(b"\n", 1)
        days = [body.replace(b"2026-03-02", f"2026-03-{2 + d:02d}".encode()) for d in range(17)]
        timed(head + b"\n" + b"".join(days), "17 such days")
    calibrations()
    with ProcessPoolExecutor(2) as pool:
        for hard in (False, True):
            errors = np.concatenate(list(pool.map(events_of, [(s, hard) for s in range(100)])))
            sys.stdout.write(
                f"{'hard' if hard else 'usual'} logs: {np.mean(np.abs(errors) <= 5.0):.2%} of {len(errors)}"
                " drops and lifts within 5 s\n"
            )


if __name__ == "__main__":
    main()
