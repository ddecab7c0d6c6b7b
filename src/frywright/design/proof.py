"""Worst-case proof of a program: corner runs and random samples over what a store meets.

The conditions vary together; each sample is one simulated load, drawn without regard to the others, and in
it one piece of every cut with a weight of its own. So shares of pieces that meet the limit have an exact
Clopper-Pearson bound (``python -m benchmarks.coverage``); evenly spread points would have none.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, fields, replace
from itertools import product

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog
from frywright.design.loads import Loads, highest_pressure, late_spans, lifts, tracer_curves, tracer_margins
from frywright.design.ranks import sensitivity
from frywright.model.errors import InputError
from frywright.model.food import Cut
from frywright.model.program import LidState, Program
from frywright.physics.inputs import CLOSE, SCAN, PieceClass, Precision
from frywright.physics.lift import lift_of
from frywright.physics.plan import FryPlan, piece_class, spans, vat
from frywright.physics.solve import Cook, RawHistory, run_many
from frywright.verdicts.limits import CookLimit

Array = NDArray[np.float64]
NEAR_K, LOWEST_COUNT = 1.0, 16
"""Loads this near to the limit, and so many of the lowest corners and samples, are solved again at ``CLOSE``:
three times what ``SCAN`` may be off (``Precision.error_k``), so that no load whose side of the limit it could
mistake is left.
"""
FULL_PRESSURE_SHARE = 0.9
WEAK_HEATER_FRAC, LOW_OIL_FRAC = 0.85, 0.95
"""Heater and oil level of the load that sags the oil for the next one (estimates, as the ends of Spread)."""
KEPT_LOADS, MOST_KEPT = 4096, 64
"""Proofs of so many loads are kept, so many of them: in a sweep many sites ask the same numbers. A mark costs
a twentieth of the march (measured)."""
MOST_SAMPLES = 1_000_000
"""A hundred times what a bound of 99.97 % takes; more would only fill the memory (own choice)."""
FACTORS_STREAM, WEIGHTS_STREAM = 1, 2
"""Random numbers of one seed that have nothing to do with each other."""
HEAVY_QUANTILE_Z = 1.6448536269514722  # 95 % point of the normal distribution


@dataclass(frozen=True, slots=True, kw_only=True)
class Spread:
    """Ranges of the conditions, low to high. Weight is the quantile of its cut's distribution."""

    weight_quantile_frac: tuple[float, float] = (0.02, 0.98)
    start_temp_k: tuple[float, float] = (-2.0, 4.0)
    load_frac: tuple[float, float] = (0.25, 1.0)  # all_loads starts at the fryer's smallest load
    heater_frac: tuple[float, float] = (0.85, 1.0)
    oil_level_frac: tuple[float, float] = (0.93, 1.0)
    offset_k: tuple[float, float] = (-3.0, 3.0)
    oil_start_k: tuple[float, float] = (-10.0, 3.0)
    late_lid_s: tuple[float, float] = (0.0, 45.0)
    surface_frac: tuple[float, float] = (0.7, 1.3)
    altitude_m: tuple[float, float] = (0.0, 0.0)


FACTORS = tuple(f.name for f in fields(Spread))
CORNER_FACTORS = (
    "weight_quantile_frac",
    "start_temp_k",
    "load_frac",
    "heater_frac",
    "oil_start_k",
    "late_lid_s",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class CutShare:
    """Proof of one cut: share of samples that meets the limit and its lower bound at the stated confidence.

    The worst margin is the lowest of samples and corners.
    """

    cut: str
    meets_frac: float
    bound_frac: float
    worst_margin_k: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Proof:
    """What a proof found over ``spread``. ``conditions`` rows are samples, columns FACTORS."""

    spread: Spread
    samples_count: int
    confidence_frac: float
    cuts: tuple[CutShare, ...]
    conditions: Array
    margins_k: Array  # sample, cut
    full_pressure: NDArray[np.bool_]
    corners: tuple[tuple[dict[str, float], float], ...]  # conditions and lowest margin [K]
    sensitivity: tuple[tuple[str, float], ...]  # factor, rank correlation with the lowest margin
    breaks_first: str
    smallest_full_pressure_frac: float | None
    close_count: int = 0  # samples and corners near the limit or lowest of all, solved again at CLOSE
    fitted_count: int = 0  # samples whose margin is a fit's (frywright.design.fewer); a certificate has none

    @property
    def meets_frac(self) -> float:
        """Share of simulated loads in which every piece meets the limit."""
        return float(np.mean(np.all(self.margins_k >= 0.0, axis=1)))

    @property
    def failed_count(self) -> int:
        """Simulated loads in which a piece misses the limit."""
        return int(np.sum(np.any(self.margins_k < 0.0, axis=1)))

    @property
    def bound_frac(self) -> float:
        """Lower bound of the share of loads in which every piece meets the limit."""
        return clopper_pearson(
            self.samples_count - self.failed_count, self.samples_count, self.confidence_frac
        )

    @property
    def lowest_k(self) -> float:
        """Lowest margin of all samples and corners [K]."""
        return min(cut.worst_margin_k for cut in self.cuts)

    @property
    def holds(self) -> bool:
        """Whether no sample and no corner misses the limit."""
        return self.lowest_k >= 0.0


def clopper_pearson(good: int, count: int, confidence: float) -> float:
    """Lower bound of a share of which ``good`` of ``count`` were seen (Clopper and Pearson 1934)."""
    from scipy.special import betaincinv

    return float(betaincinv(good, count - good + 1, 1.0 - confidence)) if good else 0.0


def load_fractions(plan: FryPlan) -> tuple[float, ...]:
    """Smallest, half and full load as shares of the plan's load: what the fryer may take of this food.

    The smallest is the fryer's own smallest load, or one head (or piece) where none is told.
    """
    unit = 1.0 / plan.units_count
    smallest = min(1.0, max(unit, plan.fryer.min_load_kg / plan.load_kg))
    return tuple(sorted({smallest, max(0.5, smallest), 1.0}))


def all_loads(plan: FryPlan) -> Spread:
    """The usual spread, from the smallest load on, and down to the oil that a full load leaves to the next
    one.
    """
    usual = Spread()
    at = {
        "load_frac": 1.0,
        "heater_frac": WEAK_HEATER_FRAC,
        "oil_level_frac": LOW_OIL_FRAC,
        "surface_frac": 1.0,
    }
    row = np.array([at.get(name, 0.0) for name in FACTORS])
    cook = question(plan, row, np.ones(len(_tracers(plan))))
    low, high = usual.oil_start_k
    left = oil_left_k(plan, cook, run_many([cook])[0])
    return replace(usual, load_frac=(load_fractions(plan)[0], 1.0), oil_start_k=(min(low, left), high))


def oil_left_k(plan: FryPlan, cook: Cook, raw: RawHistory) -> float:
    """How far the oil is below the first set point when the next load is dropped straight after this one [K].

    Between lift and drop the heater has the drain time of the program to bring it back.
    """
    at_lift = float(np.interp(lift_of(plan, cook, raw).lift_s, raw.time_s, raw.oil_temp_c))
    vat_ = cook.vat
    cp = vat_.oil_cp_j_kgk[0] + vat_.oil_cp_j_kgk[1] * at_lift
    back = vat_.heater_w * plan.program.drain_s / (vat_.oil_mass_kg * cp + vat_.metal_heat_j_k)
    return min(0.0, at_lift + back - cook.spans[0].set_c)


def draw(spread: Spread, count: int, seed: int) -> Array:
    """Random points in the ranges, each drawn without regard to the others, (count, factors); same seed, same
    points.
    """
    if not 1 <= count <= MOST_SAMPLES:
        raise InputError("samples", count, "1 to {most}", most=MOST_SAMPLES)
    low, high = (np.array([getattr(spread, name)[i] for name in FACTORS]) for i in (0, 1))
    points = np.random.default_rng((seed, FACTORS_STREAM)).random((count, len(FACTORS)))
    return np.asarray(low + points * (high - low))


def corner_points(spread: Spread) -> Array:
    """All combinations of the ends of six strong factors, the others in the middle."""
    middle = {name: 0.5 * sum(getattr(spread, name)) for name in FACTORS}
    rows = [
        [dict(zip(CORNER_FACTORS, ends, strict=True)).get(name, middle[name]) for name in FACTORS]
        for ends in product(*(getattr(spread, name) for name in CORNER_FACTORS))
    ]
    return np.array(rows)


def question(plan: FryPlan, row: Array, weights: Array, base: Sequence[PieceClass] | None = None) -> Cook:
    """The engine's question under one row of conditions.

    ``weights`` are multiples of the mean piece, one a cut; ``base`` the plan's own piece classes,
    given by callers that ask often.
    """
    at = dict(zip(FACTORS, row, strict=True))
    fryer = replace(
        plan.fryer,
        heater_w=plan.fryer.heater_w * at["heater_frac"],
        oil_mass_kg=plan.fryer.oil_mass_kg * at["oil_level_frac"],
        offset_k=plan.fryer.offset_k + at["offset_k"],
    )
    site = plan.site
    if at["altitude_m"]:
        site = replace(site, altitude_m=site.altitude_m + at["altitude_m"])
    varied = replace(
        plan,
        fryer=fryer,
        site=site,
        oil_start_c=plan.oil_start_c + at["oil_start_k"],
        program=close_late(plan.program, at["late_lid_s"]),
    )
    return Cook(
        vat=vat(varied), pieces=_pieces(plan, at, weights, base or base_pieces(plan)), spans=spans(varied)
    )


def base_pieces(plan: FryPlan) -> list[PieceClass]:
    """Piece classes of the plan itself: usual ones, then one tracer a cut at its heavy end."""
    return [piece_class(plan, kind) for kind in plan.kinds]


def _pieces(
    plan: FryPlan, at: dict[str, float], weights: Array, base: Sequence[PieceClass]
) -> list[PieceClass]:
    tracers, found = iter(weights), []
    for kind, piece in zip(plan.kinds, base, strict=True):
        thick = piece.half_thickness_m
        if kind.heavy:
            thick *= (next(tracers) / kind.cut.heavy_ratio_n) ** (1.0 / 3.0)
        found.append(
            replace(
                piece,
                mass_kg=piece.mass_kg * at["load_frac"],
                half_thickness_m=float(thick),
                start_temp_c=max(piece.start_temp_c + at["start_temp_k"], -1.0),
                gain_h_j_kgk=piece.gain_h_j_kgk * at["surface_frac"],
                cap_h_w_m2k=piece.cap_h_w_m2k * at["surface_frac"],
            )
        )
    return found


def close_late(program: Program, late_s: float) -> Program:
    """The program with the lid closed late: the clock runs, the first pressure stage starts open."""
    lids = [stage.lid for stage in program.stages]
    if late_s <= 0 or LidState.PRESSURE not in lids:
        return program
    first = lids.index(LidState.PRESSURE)
    stage = program.stages[first]
    if stage.duration_s is None or stage.duration_s <= late_s:
        return program
    waited = replace(stage, lid=LidState.OPEN, duration_s=late_s)
    closed = replace(stage, duration_s=stage.duration_s - late_s)
    return replace(program, stages=(*program.stages[:first], waited, closed, *program.stages[first + 1 :]))


def prove(
    plan: FryPlan,
    limit: CookLimit,
    guard_k: float,
    *,
    spread: Spread | None = None,
    samples: int = 1024,
    seed: int = 1,
    confidence: float = 0.95,
    progress: Callable[[float], None] | None = None,
) -> Proof:
    """Prove a plan over a spread of conditions. Raises InputError: no samples, or an impossible confidence.

    Parameters
    ----------
    plan : the full load of the program
    limit : the cook limit of the place
    guard_k : thermometer error taken off every core [K]; the engine's own error comes on top
    spread : ranges; the default is :func:`all_loads` (estimates)
    samples : number of simulated loads
    seed : same seed, same answer
    confidence : of the lower bounds, between 0.5 and 1
    progress : called with the share done; may raise to cancel
    """
    if not 0.5 < confidence < 1.0:
        raise InputError("confidence", confidence, "between 0.5 and 1")
    spread = spread or all_loads(plan)
    points, corners = draw(spread, samples, seed), corner_points(spread)
    rows = np.vstack([corners, points])
    weights = weights_of(plan, rows, seed)
    margins, full = solved(plan, limit, guard_k, rows, weights, SCAN, progress)
    again = uncertain(margins, len(corners))
    margins[again], full[again] = solved(plan, limit, guard_k, rows[again], weights[again], CLOSE, None)
    return told(plan, spread, confidence, (corners, points), margins, full, len(again))


def told(
    plan: FryPlan,
    spread: Spread,
    confidence: float,
    conditions: tuple[Array, Array],
    margins: Array,
    full: NDArray[np.bool_],
    close_count: int,
) -> Proof:
    """What the margins of corners and samples say."""
    corners, points = conditions
    samples, edge, m = len(points), len(corners), margins[len(corners) :]
    ranked = sensitivity(FACTORS, points, m.min(axis=1))
    reached = points[full[edge:], FACTORS.index("load_frac")]
    missed = points[~full[edge:], FACTORS.index("load_frac")]
    return Proof(
        spread=spread,
        samples_count=samples,
        confidence_frac=confidence,
        conditions=points,
        margins_k=m,
        cuts=tuple(
            _share(kind.cut.title, m[:, i], float(margins[:, i].min()), confidence)
            for i, kind in enumerate(_tracers(plan))
        ),
        full_pressure=full[edge:],
        sensitivity=ranked,
        breaks_first=ranked[0][0] if ranked else "",
        corners=tuple(
            (dict(zip(FACTORS, map(float, row), strict=True)), float(low))
            for row, low in zip(corners, margins[:edge].min(axis=1), strict=True)
        ),
        smallest_full_pressure_frac=(
            float(max(missed.max(), reached.min())) if len(missed) and len(reached) else None
        ),
        close_count=close_count,
    )


def _tracers(plan: FryPlan) -> list:  # type: ignore[type-arg]
    return [kind for kind in plan.kinds if kind.heavy]


def weights_of(plan: FryPlan, rows: Array, seed: int) -> Array:
    """Piece weights as multiples of the mean, (samples, cuts): lognormal with the cut's heavy ratio.

    The row's quantile is the first cut's; each further cut draws its own quantile in the range.
    """
    from scipy.special import ndtri

    tracers = _tracers(plan)
    column = rows[:, FACTORS.index("weight_quantile_frac")]
    rng = np.random.default_rng((seed, WEIGHTS_STREAM))
    low, high = column.min(), max(column.max(), column.min() + 1e-9)
    own = [column] + [rng.uniform(low, high, len(rows)) for _ in tracers[1:]]
    spread = [np.log(kind.cut.heavy_ratio_n) / HEAVY_QUANTILE_Z for kind in tracers]
    drawn = [np.exp(s * ndtri(q)) for s, q in zip(spread, own, strict=True)]
    for i, kind in enumerate(tracers):
        if kind.cut.sample_kg:  # weighed pieces win over the ratio
            mean = kind.piece_mass_kg / kind.cut.heavy_ratio_n
            drawn[i] = np.quantile(np.array(kind.cut.sample_kg), own[i]) / mean
    return np.stack(drawn, axis=1)


def weight_at(cut: Cut, quantile_frac: float) -> float:
    """Weight of a cut at a quantile of its distribution, as a multiple of the mean (without weighed
    pieces).
    """
    from scipy.special import ndtri

    return float(np.exp(np.log(cut.heavy_ratio_n) / HEAVY_QUANTILE_Z * ndtri(quantile_frac)))


def uncertain(margins: Array, corners_count: int) -> NDArray[np.int64]:
    """Rows near the limit, and the lowest of the corners, which come first, and of the samples."""
    lowest = margins.min(axis=1)
    near = np.flatnonzero(np.abs(lowest) < NEAR_K)
    corners = np.argsort(lowest[:corners_count])[:LOWEST_COUNT]
    samples = corners_count + np.argsort(lowest[corners_count:])[:LOWEST_COUNT]
    return np.unique(np.concatenate([near, corners, samples]))


def loads_of(plan: FryPlan, rows: Array, weights: Array) -> Loads:
    """Loads of a plan under rows of conditions, with weights of its heavy pieces, (load, cut)."""
    at = dict(zip(FACTORS, rows.T, strict=True))
    return Loads(
        plan=plan,
        base=base_pieces(plan),
        at=at,
        weights=weights,
        oil_start_c=np.full(len(rows), plan.oil_start_c),
        spans=late_spans(plan, at["late_lid_s"], close_late),
    )


def cores_at_lift_c(plan: FryPlan, rows: Array, weights: Array, precision: Precision) -> Array:
    """Cores of the heavy pieces at the earliest lift of each load [degC], (load, cut)."""
    loads, cores = loads_of(plan, rows, weights), np.empty(weights.shape)
    clock, runs_on = np.array(plan.program.clock_s), np.array(plan.runs_on)
    for part, done in loads.march(precision):
        earliest_s = lifts(loads, part, done, clock, runs_on).earliest_s
        cores[part] = tracer_curves(done, earliest_s, weights.shape[1]).at(earliest_s)[1]
    return cores


@dataclass(frozen=True, slots=True, kw_only=True)
class _Judge:
    """How loads are judged: all that makes margins and pressures of their curves."""

    limit: CookLimit
    guard_k: float
    fat_pct: tuple[float, ...]
    full_pa: float  # gauge pressure that counts as full
    clock_s: float
    runs_on: bool
    vent_credit_s: float

    def of(
        self, loads: Loads, precision: Precision, progress: Callable[[float], None] | None
    ) -> tuple[Array, NDArray[np.bool_]]:
        """Margin of every tracer of each load [K], and whether it came to full pressure."""
        count = len(loads.oil_start_c)
        margins, full = np.empty((count, len(self.fat_pct))), np.empty(count, dtype=bool)
        clock, runs_on = np.array(self.clock_s), np.array(self.runs_on)
        for part, done in loads.march(precision):
            lift = lifts(loads, part, done, clock, runs_on)
            margins[part] = tracer_margins(done, lift.earliest_s, self.limit, self.guard_k, self.fat_pct)
            full[part] = highest_pressure(done) >= self.full_pa
            if progress:
                progress(part.stop / count)
        return margins, full


_kept: dict[tuple[bytes, _Judge], tuple[Array, NDArray[np.bool_]]] = {}


def solved(
    plan: FryPlan,
    limit: CookLimit,
    guard_k: float,
    rows: Array,
    weights: Array,
    precision: Precision,
    progress: Callable[[float], None] | None,
) -> tuple[Array, NDArray[np.bool_]]:
    """Margins of loads of a plan, (load, cut) [K], and which came to full pressure."""
    plan = replace(plan, rest_s=0.0)  # judged at the lift: carry-over does not count
    judge = _Judge(
        limit=limit,
        guard_k=guard_k + CLOSE.error_k,  # loads that SCAN could mistake are solved again at CLOSE
        fat_pct=tuple(
            100.0 * catalog.compositions()[k.cut.composition].fractions["fat"] for k in _tracers(plan)
        ),
        full_pa=FULL_PRESSURE_SHARE * plan.fryer.working_gauge_pa if plan.program.under_pressure else -np.inf,
        clock_s=plan.program.clock_s,
        runs_on=plan.runs_on,
        vent_credit_s=plan.vent_credit_s,
    )
    loads = loads_of(plan, rows, weights)
    if len(rows) > KEPT_LOADS:
        return judge.of(loads, precision, progress)
    asked = loads.mark(precision), judge
    found = _kept.get(asked)
    if found is None:
        found = judge.of(loads, precision, progress)
        if len(_kept) >= MOST_KEPT:
            _kept.clear()
        _kept[asked] = found
    return found[0].copy(), found[1].copy()


def _share(cut: str, margins: Array, worst_k: float, confidence: float) -> CutShare:
    good = int(np.sum(margins >= 0.0))
    bound = clopper_pearson(good, len(margins), confidence)
    return CutShare(cut=cut, meets_frac=good / len(margins), bound_frac=bound, worst_margin_k=worst_k)
