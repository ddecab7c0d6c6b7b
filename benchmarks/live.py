"""Coverage and speed of the live probe: python -m benchmarks.live [loads] [first seed]

Loads with a hidden truth: half of them drawn as the filter expects, half outside of that (other meat, another
load, another heater, sizes to 2.5 times the spread, tips to 0.3 of the way out, a drop given ten seconds
wrong). Each is read second by second; at four moments it is asked whether the interval holds the moment at
which the true core meets the limit.
"""

from __future__ import annotations

import sys
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, replace
from functools import cache
from importlib import resources
from time import thread_time

import numpy as np

from frywright.calibrate.ahead import HEAVY_N, LAG_LN, LAG_S, LATE_SD_S, PLACE_SD, Ahead, Goal, goal_of
from frywright.calibrate.family import CALIBRATED, SCOUTING, UNWEIGHED_LN, Spread, course_of, family_of
from frywright.calibrate.placement import NODES, profiles
from frywright.calibrate.trial import FITTING
from frywright.catalog.kitchen import parse_kitchen
from frywright.model.kitchen import Kitchen
from frywright.physics.inputs import PieceClass
from frywright.physics.plan import BONE_SHARE, TRACER_SHARE, FryPlan, PieceKind, make_plan, piece_class, vat
from frywright.physics.solve import Cook, Prescribed, run
from frywright.trial.ask import needed_limit
from frywright.verdicts.lethality import first_above_s

CASES = (
    ("bone-in alder", "breast_half"),
    ("bone-in birch", "thigh"),
    ("bone-in cedar", "breast_half"),
    ("bone-in cedar", "drum"),
    ("tenders cedar", "tender"),
)
MOMENTS = (0.5, 0.7, 0.85, 0.95)
STEP_S = 1.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Truth:
    """What is hidden: the piece, its load, how the probe sits and reads."""

    piece: PieceClass
    plan: FryPlan
    oil_k: float
    place_frac: float
    lag_s: float
    late_s: float
    offset_k: float
    drift_k: float
    noise_k: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Result:
    """One load: at each moment whether the interval held, its width [s], and how far the middle was off."""

    outside: bool
    held: tuple[bool, ...]
    width_s: tuple[float, ...]
    off_s: tuple[float, ...]
    update_ms: float
    slowest_ms: float
    slow_count: int
    updates_count: int
    draws_count: float


@cache
def kitchen() -> Kitchen:
    """The demo's kitchen."""
    text = resources.files("frywright.catalog").joinpath("demo/kitchen.toml").read_text("utf-8")
    return parse_kitchen(text)


def draw(rng: np.random.Generator, plan: FryPlan, kind: PieceKind, spread: Spread, outside: bool) -> Truth:
    """A truth, as expected or outside of it."""
    base = piece_class(plan, kind)
    z = rng.uniform(-2.5, 2.5, 5) if outside else rng.standard_normal(5)
    size = float(np.exp(spread.size_ln * z[0] * (1.0 if outside else 1.0 + HEAVY_N * z[0] ** 2)))
    half = base.half_thickness_m * size
    meat = rng.uniform(0.93, 1.07), rng.uniform(0.96, 1.04)
    piece = replace(
        base,
        half_thickness_m=half,
        shape_n=float(np.clip(base.shape_n + spread.shape_n * z[1], 0.0, 2.0)),
        start_temp_c=base.start_temp_c + spread.start_k * float(z[2]),
        film_kg_m2=base.film_kg_m2 * float(np.exp(spread.film_ln * z[3])),
        bone_radius_m=min(base.bone_radius_m * size, BONE_SHARE * half),
    )
    told = {
        "oil_k": spread.oil_k * float(z[4]),
        "place_frac": abs(rng.normal(0.0, PLACE_SD)),
        "lag_s": LAG_S * float(np.exp(LAG_LN * rng.standard_normal())),
        "late_s": rng.normal(0.0, LATE_SD_S),
        "offset_k": rng.normal(0.0, 0.5 * plan.site.thermometer_error_k),
        "drift_k": 0.0,
        "noise_k": 0.1,
    }
    if not outside:
        return Truth(piece=piece, plan=plan, **told)
    conduct = tuple(meat[0] * c for c in np.atleast_1d(piece.conductivity_w_mk))
    store = tuple(meat[1] * c for c in np.atleast_1d(piece.heat_capacity_j_kgk))
    told |= {
        "place_frac": rng.uniform(0.0, 0.3),
        "lag_s": rng.uniform(1.0, 8.0),
        "late_s": rng.uniform(-10.0, 10.0),
        "drift_k": rng.uniform(-0.5, 0.5),
        "noise_k": rng.uniform(0.03, 0.3),
    }
    share = rng.uniform(0.4, 1.1)
    fryer = replace(plan.fryer, heater_w=plan.fryer.heater_w * rng.uniform(0.8, 1.2))
    kinds = tuple(replace(k, class_mass_kg=share * k.class_mass_kg) for k in plan.kinds)
    return Truth(
        piece=replace(piece, conductivity_w_mk=conduct, heat_capacity_j_kgk=store),
        plan=replace(plan, fryer=fryer, kinds=kinds),
        **told,
    )


def readings(truth: Truth, goal: Goal, rng: np.random.Generator):  # type: ignore[no-untyped-def]
    """Moments since the given drop, readings, oil, and the moment the true core meets the goal."""
    course = course_of(truth.plan)
    oil = [(t, c + truth.oil_k) for t, c in course.oil_c]
    told = Prescribed(oil_temp_c=oil, pressure_pa=course.pressure_pa)
    raw = run(Cook(vat=vat(truth.plan), pieces=[truth.piece], spans=course.spans, prescribed=told), FITTING)
    time = np.arange(0.0, raw.time_s[-1], STEP_S)
    core = np.interp(time, raw.time_s, raw.core_temp_c[:, 0])
    met = min(
        (s + hold for c, hold in goal.rows if (s := first_above_s(time, core, c + goal.guard_k)) is not None),
        default=None,
    )
    inside = profiles([truth.piece], [raw], time)[0]
    first = truth.piece.bone_radius_m / truth.piece.half_thickness_m
    node = (first + truth.place_frac * (1.0 - first)) * (NODES - 1)
    at = np.stack(
        [np.interp(n, np.arange(NODES), row) for n, row in zip([node] * len(time), inside, strict=True)]
    )
    coldest = inside[:, int(np.ceil(first * (NODES - 1)))]
    tip = core + np.maximum(at - coldest, 0.0)
    seen = tip.copy()
    for i in range(1, len(time)):
        seen[i] = seen[i - 1] + (tip[i] - seen[i - 1]) * (1.0 - np.exp(-STEP_S / truth.lag_s))
    drift = truth.offset_k + truth.drift_k * time / time[-1]
    noise = rng.normal(0.0, truth.noise_k, len(time))
    oils = np.interp(time, *np.array(oil).T) + rng.normal(0.0, 0.3, len(time))
    late = truth.late_s
    return time + late, np.round(seen + drift + noise, 1), oils, None if met is None else met + late


def one(seed: int, timed: bool = True) -> Result | None:
    """One load; None where its core meets nothing in time. Without times the outlook is asked only where it
    is judged.
    """
    rng = np.random.default_rng(seed)
    name, cut = CASES[seed % len(CASES)]
    outside, calibrated, weighed = (
        bool(rng.random() < 0.5),
        bool(rng.random() < 0.5),
        bool(rng.random() < 0.5),
    )
    place = kitchen()
    plan = make_plan(place, place.program(name))
    usual = next(k for k in plan.kinds if k.cut.key == cut and not k.heavy)
    kind = replace(usual, class_mass_kg=TRACER_SHARE * plan.load_kg)
    spread = CALIBRATED if calibrated else SCOUTING
    if not weighed:
        spread = replace(spread, size_ln=float(np.hypot(spread.size_ln, UNWEIGHED_LN)))
    guard = place.site.thermometer_error_k
    goal = goal_of(needed_limit(place, plan.product), guard, 12.0)
    truth = draw(rng, plan, kind, spread, outside)
    time, read, oil, met = readings(truth, goal, rng)
    if met is None:
        return None
    course = course_of(plan)
    mass = kind.piece_mass_kg if weighed else None
    family = family_of(course, cut, mass, plan.product.start_temp_c, goal.level_c, calibrated)
    ahead = Ahead(family, course, goal, 0.5 * guard)
    held, width, off, spent, count = [], [], [], [], 0
    for moment in MOMENTS:
        for t, y, o in zip(time[count:], read[count:], oil[count:], strict=True):
            if t > moment * met:
                break
            began = thread_time() if timed else 0.0
            ahead.read(float(t), float(y))
            ahead.read_oil(float(t), float(o))
            if timed:
                ahead.outlook(float(t), course.lift_s)
                spent.append(thread_time() - began)
            count += 1
        told = ahead.outlook(moment * met, course.lift_s)
        held.append(told.low_s <= met <= told.high_s)
        width.append(told.high_s - told.low_s)
        off.append(told.limit_s - met)
    return Result(
        outside=outside,
        held=tuple(held),
        width_s=tuple(width),
        off_s=tuple(off),
        update_ms=1e3 * float(np.median(spent)) if timed else float("nan"),
        slowest_ms=1e3 * max(spent) if timed else float("nan"),
        slow_count=sum(s > 0.020 for s in spent),
        updates_count=count,
        draws_count=ahead.draws_count,
    )


def measure(first: int, loads: int) -> list[Result]:
    """Results of many loads, with times."""
    with ProcessPoolExecutor(2) as pool:
        return [r for r in pool.map(one, range(first, first + loads), chunksize=4) if r is not None]


def main() -> None:
    """Print every figure."""
    loads = int(sys.argv[1]) if len(sys.argv) > 1 else 400
    first = int(sys.argv[2]) if len(sys.argv) > 2 else 1000
    found = measure(first, loads)
    sys.stdout.write(
        f"{len(found)} loads from seed {first}; covered, median width, rms off, at share of the time\n"
    )
    for name, some in (
        ("as expected", [r for r in found if not r.outside]),
        ("outside", [r for r in found if r.outside]),
        ("all", found),
    ):
        held = np.array([r.held for r in some])
        cells = [
            f"{m:.0%}: {held[:, i].mean():.1%}, {np.median([r.width_s[i] for r in some]):.0f} s,"
            f" {np.sqrt(np.mean([r.off_s[i] ** 2 for r in some])):.1f} s"
            for i, m in enumerate(MOMENTS)
        ]
        sys.stdout.write(f"{name} ({len(some)}): {'; '.join(cells)}; together {held.mean():.1%}\n")
    slow, updates = sum(r.slow_count for r in found), sum(r.updates_count for r in found)
    counts = [r.draws_count for r in found]
    sys.stdout.write(
        f"CPU time of an update with view: median {np.median([r.update_ms for r in found]):.2f} ms, slowest"
        f" {max(r.slowest_ms for r in found):.1f} ms, over 20 ms {slow} of {updates};"
        f" draws that count at the end: median {np.median(counts):.0f}, least {min(counts):.1f}\n"
    )


if __name__ == "__main__":
    main()
