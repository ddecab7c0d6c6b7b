"""Cuts calibrated from the weighed readings of a program's probing: better predicted, not proven."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from frywright.calibrate.thermometer import ThermometerCheck, corrected
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CalibrationKept, FittedValue, Reading
from frywright.ledger.store import Store
from frywright.model.calibration import LEAST_PIECES, Calibration
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.plan import lid_of
from frywright.rooms.clock import now
from frywright.rooms.cook.next_probing import Probing, next_probing, without_lift
from frywright.rooms.hall import in_turn
from frywright.rooms.kitchen import remember_calibration
from frywright.rooms.thermometers import checks_in, correction_of
from frywright.trial.at_lift import LiftFit, LiftPoint, fit_at_lift
from frywright.trial.evidence import logged_as

LOGGED = "not calibrated from a logger's curve yet: that says more than readings at the lift"
TWO_SD = 1.959963984540054
"""95 % point of the normal distribution, both sides."""
MOST_ERROR_K = 10.0


def weighed(found: Probing) -> dict[str, int]:
    """Weighed pieces of each cut among the readings that count, where there are enough to calibrate it."""
    read = Counter(u.kept.fact.cut or "" for u in found.readings if not u.left_out and u.kept.fact.mass_kg)
    return {cut: count for cut, count in read.items() if count >= LEAST_PIECES}


@in_turn
def calibrate_at_lift(store: Store, kitchen: Kitchen, name: str, cut: str) -> Kept[CalibrationKept]:
    """Calibrate a cut from the weighed readings of a program: predictions use it from now on. It proves
    nothing: the readings do that themselves. Raises InputError: fewer than three weighed pieces, or a
    logger's curve has calibrated the cut already.
    """
    found = next_probing(store, kitchen, name)
    program, plain = found.program, without_lift(kitchen)
    used = [u.kept for u in found.readings if not u.left_out and u.kept.fact.mass_kg]
    checks = checks_in(store)
    points = [_point(checks, kept) for kept in used if kept.fact.cut == cut]
    if len(points) < LEAST_PIECES:
        raise InputError("weight", len(points), "of {least} pieces or more", least=LEAST_PIECES)
    if plain.calibration(cut, kitchen.product(program.product).coating, lid_of(program)) is not None:
        raise InputError("cut", repr(cut), LOGGED)
    made = fit_at_lift(plain, program, cut, points)
    return remember_calibration(store, _fact(plain, program, cut, points, made))


def _point(checks: Sequence[ThermometerCheck], kept: Kept[Reading]) -> LiftPoint:
    """A reading as the engine is asked about it, its thermometer's correction added."""
    fact = kept.fact
    points = correction_of(checks, fact.thermometer, kept.happened_at)
    rest = None if fact.rest_core_c is None else float(corrected(fact.rest_core_c, points))
    return LiftPoint(
        mass_kg=fact.mass_kg or 0.0,
        load=fact.load_kind or "full",
        core_c=float(corrected(fact.core_c, points)),
        rest_core_c=rest,
        rest_s=fact.rest_s or 0.0,
    )


def _fact(
    kitchen: Kitchen, program: Program, cut: str, points: list[LiftPoint], made: LiftFit
) -> CalibrationKept:
    """What is kept: geometry, range of what was read, what a prediction by it may be off."""
    own, product = kitchen.cut(cut), kitchen.product(program.product)
    masses, sets = [p.mass_kg for p in points], [stage.set_c for stage in program.stages]
    off = (kitchen.site.thermometer_error_k, 2.0 * made.spread_k, 2.0 * made.core_sd_k)
    calibration = Calibration(
        cut=cut,
        coating=product.coating,
        lid=lid_of(program),
        half_thickness_m=made.half_thickness_m,
        shape_n=made.shape_n,
        program=logged_as(program),
        reference_mass_kg=own.reference_mass_kg,
        pieces_count=len(points),
        mass_low_kg=min(masses),
        mass_high_kg=max(masses),
        oil_low_c=min(sets),
        oil_high_c=max(sets),
        start_low_c=product.start_temp_c,
        start_high_c=product.start_temp_c,
        error_k=min(sum(k**2 for k in off) ** 0.5, MOST_ERROR_K),
        made_on=now().date().isoformat(),
        road="lift",
    )
    half = _fitted(
        "half_thickness_m",
        made.half_thickness_m,
        made.half_thickness_m * made.size_sd_frac,
        own.half_thickness_m,
    )
    shape = _fitted("shape_n", made.shape_n, made.shape_sd_n, own.shape_n)
    fitted = (half, shape) if made.rise_k is not None else (half,)
    return CalibrationKept.of(calibration, rms_k=made.spread_k, fitted=fitted, runs_count=len(points))


def _fitted(name: str, value: float, sd: float, before: float) -> FittedValue:
    low, high = value - TWO_SD * sd, value + TWO_SD * sd
    return FittedValue(name=name, value=value, sd=sd, low=low, high=high, before=before)
