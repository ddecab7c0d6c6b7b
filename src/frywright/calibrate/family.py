"""A family of cooks of one piece: what the engine predicts over everything that is not known of the piece.

Solved in one batch at the drop. For each of some hundred draws of size, shape, start temperature, coating
water and oil the engine gives the core curve; the logarithm of the time at which the core passes a share of
its way to boiling is nearly a parabola in the draws (time goes with the square of the size), so that many
thousand pieces follow from the few that were solved.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import combinations_with_replacement

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.trial import calm
from frywright.model.errors import InputError
from frywright.model.food import Cut
from frywright.physics.inputs import CLOSE, ROUTINE, Lid, PieceClass, Span, Until, quadratic
from frywright.physics.plan import BONE_SHARE, TRACER_SHARE, FryPlan, PieceKind, piece_class, question, vat
from frywright.physics.solve import Cook, Prescribed, RawHistory, run, run_many

Array = NDArray[np.float64]
CURVES = replace(ROUTINE, max_step_s=6.0)
"""Curves are read between the engine's steps: over one of 16 s a straight line is off by more than the
noise of a reading.
"""
SOLVED = 160
SEED = 20
LONGER_N, LONGEST_S = 1.0, 3600.0
"""How far past the program the cooks are solved: slow pieces reach the limit after it. Own choice."""
ABOVE_K = 5.0
"""Cores are followed to this far above the limit; what a core does after that changes no answer here."""
LEVELS = np.r_[0.004, 0.01, 0.02, np.linspace(0.035, 1.0, 60)]
LEAST_REACHED = 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class Spread:
    """What is not known of a piece in the oil: standard deviations of its draws. All estimates of this
    project; ``docs/theory/live.md`` says where each comes from.
    """

    size_ln: float = 0.08
    shape_n: float = 0.2
    start_k: float = 2.0
    film_ln: float = 0.3
    oil_k: float = 3.0


SCOUTING = Spread()
CALIBRATED = Spread(size_ln=0.035, shape_n=0.08)
UNWEIGHED_LN = 0.035
"""Added where nobody weighed the piece: a tenth of its mass is a thirtieth of its size. Estimate."""
NAMES = ("size_ln", "shape_n", "start_k", "film_ln", "oil_k")


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """The load's oil and pressure over the program without its vent, and longer; shared by its pieces."""

    plan: FryPlan
    oil_c: Array  # (reading, time and value)
    pressure_pa: Array
    spans: tuple[Span, ...]
    lift_s: float  # the earliest lift of the program as keyed; no vent counts
    vent_s: tuple[float, float] | None  # a vent inside the course, with readings that say little


@dataclass(frozen=True, slots=True, kw_only=True)
class Family:
    """Core curves of one piece as a function of the draws: ``ln t`` at :data:`LEVELS` is quadratic in them.

    A level is a share of the way from the start temperature to ``top_c``.
    """

    piece: PieceClass
    spread: Spread
    start_c: float
    top_c: float
    weights: Array  # (feature, level)
    error_ln: float  # what the parabola misses, root mean square of ln t over the upper half

    def times_s(self, draws: Array) -> Array:
        """Times (draw, level) at which cores pass the levels; rising along each row."""
        return np.maximum.accumulate(np.exp(_features(draws) @ self.weights), axis=1)

    def starts_c(self, draws: Array) -> Array:
        """Start temperature of each draw."""
        return self.start_c + self.spread.start_k * draws[:, NAMES.index("start_k")]

    def lead_s(self, place_frac: float | Array) -> Array:
        """How far ahead of the coldest spot a reading off it runs [s].

        The conduction equation at the centre: ``T(r) = T + r^2 / (2 (n+1) alpha) dT/dt`` to second order, by
        the symmetry there. Beside a bone its heat flows through the meat too: ``r b c_b / ((n+1) k)``.
        """
        piece = self.piece
        n1, at = piece.shape_n + 1.0, 0.5 * (self.start_c + self.top_c)
        k = float(np.polyval(quadratic(piece.conductivity_w_mk, "conductivity_w_mk")[::-1], at))
        heat = float(np.polyval(quadratic(piece.heat_capacity_j_kgk, "heat_capacity_j_kgk")[::-1], at))
        r = np.asarray(place_frac) * (piece.half_thickness_m - piece.bone_radius_m)
        bone = r * piece.bone_radius_m * piece.bone_heat_j_m3k / (n1 * k)
        return np.asarray(bone + r**2 * piece.density_kg_m3 * heat / (2.0 * n1 * k), dtype=float)


def course_of(plan: FryPlan) -> Course:
    """The load of a plan, solved once: the program without a last vent, its last stage kept up for longer."""
    whole = question(plan)
    spans = list(whole.spans[:-1])  # the rest in air is no part of it
    if spans[-1].lid is Lid.VENT:
        spans.pop()
    lift = plan.program.clock_s
    more = min(LONGER_N * lift, LONGEST_S)
    last = spans.pop()  # kept up by the clock, whatever else would end it
    spans.append(
        replace(last, duration_s=last.duration_s + more, until=Until.TIME, value=0.0, ends_at_s=None)
    )
    cook = Cook(vat=vat(plan), pieces=[piece_class(plan, k) for k in plan.kinds if not k.heavy], spans=spans)
    raw = run(cook, CLOSE)
    keep = np.r_[True, np.diff(raw.time_s) > 1e-6]
    time = raw.time_s[keep]
    vents = [number for number, span in enumerate(spans) if span.lid is Lid.VENT]
    inside = np.flatnonzero(np.isin(raw.span, vents))
    return Course(
        plan=plan,
        oil_c=calm(time, raw.oil_temp_c[keep]),
        pressure_pa=np.column_stack([time, raw.pressure_pa[keep]]),
        spans=tuple(_as_solved(raw, spans)),
        lift_s=lift,
        vent_s=(float(raw.time_s[inside[0] - 1]), float(raw.time_s[inside[-1]])) if len(inside) else None,
    )


def _as_solved(raw: RawHistory, spans: list[Span]) -> list[Span]:
    """The spans with the times they took."""
    out, began = [], 0.0
    for number, span in enumerate(spans):
        inside = np.flatnonzero(raw.span == number)
        if not len(inside):
            continue
        ended = float(raw.time_s[inside[-1]])
        if ended - began > 1e-3:
            out.append(Span(duration_s=ended - began, set_c=span.set_c, lid=span.lid))
        began = ended
    return out


def family_of(
    course: Course, cut_key: str, mass_kg: float | None, start_c: float, limit_c: float, calibrated: bool
) -> Family:
    """Solve the family of one piece. Raises InputError: the cut is not in this product, or its core does not
    reach the limit in this program, kept up for longer.

    Parameters
    ----------
    course : the load it cooks in
    cut_key : its cut
    mass_kg : its weight, or None where nobody weighed it
    start_c : its temperature at the drop
    limit_c : the core that is asked of it
    """
    plan = course.plan
    kind = _kind(plan, cut_key, mass_kg)
    base = replace(piece_class(plan, kind), start_temp_c=start_c)
    spread = CALIBRATED if calibrated else SCOUTING
    if mass_kg is None:
        spread = replace(spread, size_ln=float(np.hypot(spread.size_ln, UNWEIGHED_LN)))
    draws = normal_draws(SOLVED, len(NAMES), SEED)
    cooks = [_cook(course, base, kind.cut, spread, row) for row in draws]
    top = limit_c + ABOVE_K
    starts = start_c + spread.start_k * draws[:, 2]
    times = np.full((SOLVED, len(LEVELS)), np.nan)
    for i, raw in enumerate(run_many(cooks, CURVES)):
        core = np.maximum.accumulate(raw.core_temp_c[:, 0])
        asked = starts[i] + LEVELS * (top - starts[i])
        rising = np.r_[True, np.diff(core) > 0]
        times[i] = np.interp(asked, core[rising], raw.time_s[rising], right=np.nan)
    if np.mean(np.isfinite(times[:, _level(limit_c, start_c, top)])) < LEAST_REACHED:
        raise InputError(
            "program", plan.program.name, "one that brings this piece to its limit, kept up for longer or not"
        )
    return _fitted(
        Family(piece=base, spread=spread, start_c=start_c, top_c=top, weights=np.empty(0), error_ln=0.0),
        draws,
        times,
    )


def _level(limit_c: float, start_c: float, top_c: float) -> int:
    return int(np.searchsorted(LEVELS, (limit_c - start_c) / (top_c - start_c)))


def _kind(plan: FryPlan, cut_key: str, mass_kg: float | None) -> PieceKind:
    usual = next((k for k in plan.kinds if k.cut.key == cut_key and not k.heavy), None)
    if usual is None:
        known = ", ".join(sorted({k.cut.key for k in plan.kinds}))
        raise InputError("cut", cut_key, "one of: {known}", known=known)
    return PieceKind(
        cut=usual.cut,
        heavy=True,
        piece_mass_kg=mass_kg or usual.piece_mass_kg,
        class_mass_kg=TRACER_SHARE * max(plan.load_kg, 0.1),
    )


def _cook(course: Course, base: PieceClass, cut: Cut, spread: Spread, row: Array) -> Cook:
    """One draw as a question to the engine."""
    half = base.half_thickness_m * float(np.exp(spread.size_ln * row[0]))
    piece = replace(
        base,
        half_thickness_m=half,
        shape_n=float(np.clip(base.shape_n + spread.shape_n * row[1], 0.0, 2.0)),
        start_temp_c=base.start_temp_c + spread.start_k * float(row[2]),
        film_kg_m2=base.film_kg_m2 * float(np.exp(spread.film_ln * row[3])),
        bone_radius_m=min(base.bone_radius_m * half / base.half_thickness_m, BONE_SHARE * half),
    )
    oil = course.oil_c + np.array([0.0, spread.oil_k * float(row[4])])
    told = Prescribed(oil_temp_c=oil, pressure_pa=course.pressure_pa)
    return Cook(vat=vat(course.plan), pieces=[piece], spans=course.spans, prescribed=told)


def _fitted(family: Family, draws: Array, times: Array) -> Family:
    """Least squares for every level over the draws that reached it."""
    features = _features(draws)
    weights, missed = np.zeros((features.shape[1], len(LEVELS))), []
    last = 0
    for j in range(len(LEVELS)):
        reached = np.isfinite(times[:, j]) & (times[:, j] > 0)
        if reached.sum() < 3 * features.shape[1]:
            break
        read = np.log(times[reached, j])
        weights[:, j] = np.linalg.lstsq(features[reached], read, rcond=None)[0]
        missed.append(float(np.sqrt(np.mean((features[reached] @ weights[:, j] - read) ** 2))))
        last = j
    weights[:, last + 1 :] = weights[:, [last]]
    weights[0, last + 1 :] += np.log(50.0)  # as good as never
    return replace(
        family, weights=weights, error_ln=float(np.sqrt(np.mean(np.square(missed[len(missed) // 2 :]))))
    )


def _features(draws: Array) -> Array:
    """1, every draw, every product of two: (draw, feature)."""
    columns = [np.ones(len(draws)), *draws.T]
    pairs = combinations_with_replacement(range(draws.shape[1]), 2)
    return np.stack([*columns, *(draws[:, i] * draws[:, j] for i, j in pairs)], axis=1)


def normal_draws(count: int, dimensions: int, seed: int) -> Array:
    """Evenly spread standard normal draws (scrambled Sobol points); the same for the same seed."""
    from scipy.stats import norm, qmc

    power = int(np.ceil(np.log2(count)))
    points = qmc.Sobol(dimensions, seed=seed).random_base2(power)[:count]
    return np.asarray(norm.ppf(np.clip(points, 1e-6, 1.0 - 1e-6)), dtype=float)
