"""Every measured curve and number of a load: what was read, how well, and how the engine predicts it."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.heat import noise_of
from frywright.calibrate.trial import THIN_S, Headspace, Probed, Trial, thin
from frywright.physics.fry import pieces_of
from frywright.physics.plan import FryPlan, piece_class
from frywright.physics.solve import RawHistory
from frywright.physics.yields import Yields

Array = NDArray[np.float64]
Predict = Callable[[RawHistory, FryPlan, float], Array]
LEAST_NOISE_K, GAUGE_NOISE_PA = 0.05, 1000.0
MISFIT_K, MISFIT_S = 0.02, 120.0
"""What engine, oil curve and start temperature leave unexplained at best: size, and how long it stays.
Estimate from synthetic logs; a fit that is worse takes its own residuals instead."""


@dataclass(slots=True)
class Part:
    """One measured curve or number: how to predict it, what was read, how well."""

    name: str
    trial: int
    time_s: Array
    read: Array
    sd: float
    misfit: float
    predict: Predict
    probe: int = -1  # number among all probes, -1 for none
    white: Array = field(init=False)

    def __post_init__(self) -> None:
        self.white = whitener(self.time_s, self.sd, self.misfit)


def parts_of(i: int, trial: Trial, head: Headspace | None, cuts: Collection[str], first: int) -> list[Part]:
    """Everything measured on load ``i``.

    Parameters
    ----------
    head : its headspace; None where the lid itself is asked about and the gauge curve is one of the parts
    cuts : cuts that were probed, or none
    first : number of its first probe among all probes
    """
    parts = [_core_part(i, n, probed, head, first + n) for n, probed in enumerate(trial.probes)]
    if head is None and trial.gauge is not None:
        time, read = thin(*trial.gauge)
        keep = (time >= 0) & (time <= trial.lift_s)
        time, read = time[keep], read[keep]
        parts.append(Part("gauge", i, time, read, GAUGE_NOISE_PA, GAUGE_NOISE_PA, _gauge_reader(time)))
    if trial.loss is not None:
        parts.append(
            Part("loss", i, np.zeros(1), np.array([trial.loss[0]]), trial.loss[1], 0.0, _loss_reader(cuts))
        )
    if trial.weight is not None:
        read, sd = np.array([trial.weight[0]]), trial.weight[1]
        parts.append(Part("weight", i, np.zeros(1), read, sd, 0.0, _scale_reader(cuts)))
    return parts


def _core_part(i: int, n: int, probed: Probed, head: Headspace | None, number: int) -> Part:
    time, read = thin(probed.curve.time_s, probed.curve.core_c)
    keep = _settled(time, head)
    time, read = time[keep], read[keep]
    means = max(1.0, len(probed.curve.time_s) / len(time))
    sd = max(LEAST_NOISE_K, noise_of(probed.curve.core_c)) / np.sqrt(means)
    return Part(probed.curve.channel, i, time, read, sd, MISFIT_K, _core_reader(n, time), number)


def _settled(time: Array, head: Headspace | None) -> NDArray[np.bool_]:
    """Times away from the vent: while pressure falls, a hot core boils off degrees in seconds."""
    falls = head.let_go() if head is not None else None
    if falls is None:
        return np.ones(len(time), dtype=bool)
    return (time < falls[0] - 2 * THIN_S) | (time > falls[1] + 4 * THIN_S)


def whitener(time: Array, noise: float, misfit: float) -> Array:
    """Matrix that makes residuals independent: white noise, and a misfit that stays for MISFIT_S."""
    together = misfit**2 * np.exp(-np.abs(time[:, None] - time[None, :]) / MISFIT_S)
    return np.linalg.inv(np.linalg.cholesky(together + noise**2 * np.eye(len(time))))


def _core_reader(n: int, time: Array) -> Predict:
    return lambda raw, _plan, late: np.interp(time - late, raw.time_s, raw.core_temp_c[:, n])


def _gauge_reader(time: Array) -> Predict:
    return lambda raw, plan, late: np.interp(
        time - late, raw.time_s, raw.pressure_pa - plan.site.atmosphere_pa
    )


def _loss_reader(cuts: Collection[str]) -> Predict:
    return lambda raw, plan, _late: np.array([usual_loss(raw, plan, cuts)])


def _scale_reader(cuts: Collection[str]) -> Predict:
    return lambda raw, plan, _late: np.array([usual_weight_lost(raw, plan, cuts)])


def usual_loss(raw: RawHistory, plan: FryPlan, cuts: Collection[str] = ()) -> float:
    """Moisture lost of breaded weight, mean by mass over the usual load, or over some cuts of it."""
    return _mean_of(raw, plan, cuts, lambda yields: yields.moisture_loss_frac)


def usual_weight_lost(raw: RawHistory, plan: FryPlan, cuts: Collection[str] = ()) -> float:
    """Weight lost of breaded weight as a scale sees it: water and fat gone, less the oil taken up."""
    return _mean_of(raw, plan, cuts, lambda yields: 1.0 - yields.yield_frac)


def _mean_of(
    raw: RawHistory, plan: FryPlan, cuts: Collection[str], share: Callable[[Yields], float]
) -> float:
    usual = tuple(k for k in plan.kinds if not k.heavy)
    first = raw.core_temp_c.shape[1] - len(usual)
    lift = float(raw.time_s[np.flatnonzero(raw.span < raw.span.max())[-1]])
    asked = [piece_class(plan, kind) for kind in usual]
    pieces = pieces_of(replace(plan, kinds=usual), asked, raw, first, (lift, lift))
    mass = np.array([k.class_mass_kg if not cuts or k.cut.key in cuts else 0.0 for k in usual])
    return float(mass / mass.sum() @ np.array([share(p.yields) for p in pieces]))
