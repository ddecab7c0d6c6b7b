"""Kept fast: times as multiples of a yardstick in the same run, compared with those of the same machine.

    python -m benchmarks.history           measure, compare with docs/reference/speed-history.csv
    python -m benchmarks.history --keep    the same, then write the rows down

A time by itself says more of the machine and of who else uses it than of the program. So every row is
processor time over that of a yardstick measured in turns with it: arithmetic on vectors for what the march
does, plain Python for what is around it. A row that is 15 % above the median of the last five of the same
machine is measured once more; if it stays there it fell, and the command ends with 1.
"""

from __future__ import annotations

import argparse
import csv
import datetime as dt
import os
import platform
import sys
from collections.abc import Callable, Sequence
from dataclasses import asdict, dataclass, fields
from pathlib import Path
from statistics import median
from time import process_time, thread_time

import llvmlite
import llvmlite.binding
import numpy as np
from tests.conftest import open_cook, pressure_cook

from benchmarks.engine import drawn, packed
from frywright.catalog.kitchen import parse_kitchen
from frywright.physics.engine import march
from frywright.physics.inputs import SCAN
from frywright.physics.pack import pack
from frywright.physics.plan import make_plan, question
from frywright.physics.solve import most_steps, run
from frywright.trial.kitchens import demo_text
from frywright.trial.proof import prove_program

FILE = Path(__file__).parent.parent / "docs/reference/speed-history.csv"
FALL, LAST, TURNS = 1.15, 5, 7


@dataclass(frozen=True, slots=True)
class Row:
    """What was measured on which machine, as a multiple of its yardstick."""

    date: str
    processor: str
    features: str
    python: str
    llvm: str
    name: str
    ratio: float

    @property
    def machine(self) -> tuple[str, ...]:
        """What must be alike for ratios to be compared."""
        return self.processor, self.features, self.python, self.llvm


def processor() -> str:
    """Name of the processor, as the system tells it."""
    info = Path("/proc/cpuinfo")
    lines = info.read_text("utf-8").splitlines() if info.exists() else []
    named = [line.partition(":")[2].strip() for line in lines if line.startswith("model name")]
    return f"{(named or [platform.processor() or platform.machine()])[0]}, {os.cpu_count()} cores"


def features() -> str:
    """The widest vectors LLVM knows here."""
    told = llvmlite.binding.get_host_cpu_features()
    return next((name for name in ("avx512f", "avx2", "avx", "sse2", "neon") if told.get(name)), "none")


def vector_yardstick() -> None:
    """Multiply, add, divide and take roots of vectors that the nearest cache holds."""
    x = np.linspace(1.0, 2.0, 1024)
    for _ in range(400):
        x = np.sqrt(x * x + 0.5) / (1.0 + 0.1 * x)


def python_yardstick() -> None:
    """Plain Python: a dictionary, floats and a loop."""
    found: dict[int, float] = {}
    for i in range(20_000):
        found[i % 97] = found.get(i % 97, 0.0) + 0.5 * i


def multiple(
    action: Callable[[], object], yardstick: Callable[[], None], clock: Callable[[], float]
) -> float:
    """Least time of an action over the least of its yardstick, measured in turns."""
    least = [float("inf")] * 2
    for _ in range(TURNS):
        for number, work in enumerate((yardstick, action)):
            start = clock()
            work()
            least[number] = min(least[number], clock() - start)
    return least[1] / least[0]


def actions() -> dict[str, tuple[Callable[[], object], Callable[[], None], Callable[[], float]]]:
    """What is measured, its yardstick and clock, by name."""
    opened, pressed = open_cook(900.0, band_k=6.0), pressure_cook(780.0, 60.0, band_k=6.0)
    kitchen = parse_kitchen(demo_text())
    program = kitchen.program("bone-in alder")
    alder = question(make_plan(kitchen, program))
    many = drawn(alder, 64)
    ready = {
        "one open cook, four classes": packed([opened]),
        "one pressure cook, four classes": packed([pressed]),
        "one pressure cook, eight classes": packed([alder]),
        "64 drawn open cooks, four classes": packed(drawn(opened, 64)),
        "64 drawn pressure cooks, four classes": packed(drawn(pressed, 64)),
        "64 drawn loads of a proof, eight classes": pack(many, SCAN, [most_steps(c, SCAN) for c in many]),
    }

    def marched(rows: object) -> tuple[Callable[[], object], Callable[[], None], Callable[[], float]]:
        return lambda: march(rows, full=False), vector_yardstick, thread_time  # type: ignore[arg-type]

    return {
        **{name: marched(rows) for name, rows in ready.items()},
        "a question packed and answered whole": (lambda: run(alder), python_yardstick, thread_time),
        "a proof over 512 loads": (
            lambda: prove_program(kitchen, program, samples=512),
            python_yardstick,
            process_time,
        ),
    }


def read(path: Path = FILE) -> list[Row]:
    """Rows kept so far."""
    if not path.exists():
        return []
    with path.open(encoding="utf-8", newline="") as file:
        return [Row(**{**line, "ratio": float(line["ratio"])}) for line in csv.DictReader(file)]  # type: ignore[arg-type]


def usual(history: Sequence[Row], row: Row) -> float | None:
    """Median of the last of the same name and machine; None where there is none."""
    alike = [r.ratio for r in history if r.name == row.name and r.machine == row.machine]
    return median(alike[-LAST:]) if alike else None


def fell(history: Sequence[Row], row: Row) -> bool:
    """Whether a row is slower than usual by more than the threshold."""
    before = usual(history, row)
    return before is not None and row.ratio > FALL * before


def write(rows: Sequence[Row], path: Path = FILE) -> None:
    """Write rows down after those kept so far."""
    begun = path.exists()
    with path.open("a", encoding="utf-8", newline="") as file:
        out = csv.DictWriter(file, [f.name for f in fields(Row)], lineterminator="\n")
        if not begun:
            out.writeheader()
        out.writerows({**asdict(row), "ratio": f"{row.ratio:.4g}"} for row in rows)


def measured(history: Sequence[Row]) -> list[Row]:
    """All rows of now; one that seems to have fallen is measured again."""
    facts = (
        dt.datetime.now(dt.UTC).date().isoformat(),
        processor(),
        features(),
        platform.python_version(),
        llvmlite.__version__,
    )
    found = []
    for name, action in actions().items():
        row = Row(*facts, name, multiple(*action))
        if fell(history, row):
            row = Row(*facts, name, min(row.ratio, multiple(*action)))
        found.append(row)
    return found


def main() -> int:
    """Print the rows and what they were; 1 where one fell."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--keep", action="store_true", help="write the rows down")
    keep = parser.parse_args().keep
    history = read()
    rows = measured(history)
    print("| multiples of a yardstick | now | before | |\n|---|---|---|---|")
    for row in rows:
        before = usual(history, row)
        told = "not measured on this machine" if before is None else f"{before:.3g}"
        print(f"| {row.name} | {row.ratio:.3g} | {told} | {'FELL' if fell(history, row) else ''} |")
    if keep:
        write(rows)
    return int(any(fell(history, row) for row in rows))


if __name__ == "__main__":
    sys.exit(main())
