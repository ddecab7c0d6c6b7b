"""A program as a question to probes: what the engine predicts of every class of piece, and how far it may be
off in a kitchen nobody has probed.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.belief import PieceClass, Prior
from frywright.design.proof import FACTORS, all_loads, cores_at_lift_c, load_fractions
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.inputs import CLOSE, Precision
from frywright.physics.plan import FryPlan, PieceKind, lid_of, make_plan
from frywright.trial.ask import hand_limit_c
from frywright.trial.predicted import as_keyed

Array = NDArray[np.float64]
PLACES = ("middle", "wall", "bottom")
SIZE_SD, SIZE_STEP = 0.06, 0.05
"""How far the effective half thickness of a cut nobody calibrated may be off, as a share (own estimate: times
of the trade scatter by a tenth, and time goes with the square), and the step its slope is taken over."""
STEPS = {
    "offset_k": (2.0, 1.5),
    "surface_frac": (0.2, 0.15),
    "heater_frac": (-0.1, 0.06),
    "start_temp_k": (2.0, 1.0),
}
"""What is not known of a kitchen: the step its slope is taken over, and how far it may be off (own estimates,
half of what a worst-case proof covers)."""
OIL, OIL_STEP_K = "oil_start_k", 4.0
PLACE_SD_K, LOAD_SD_K, CLASS_SD_K = 1.5, 1.0, 0.8
"""How far a place of the basket, a kind of load and a single class lie from what the engine says (own
estimates; the engine knows no places)."""
LOADS_SD_K, DROP_OIL_SD_K, DROP_START_SD_K = 1.0, 3.0, 1.0
"""How loads of one kind differ: by themselves, by the oil and the meat at the drop (own estimates)."""
PIECE_SIZE_SD = 0.02
"""How the heaviest pieces of loads differ in half thickness, as a share (own estimate)."""


class Road(StrEnum):
    """How a core is read: a plain thermometer at the lift, or a logger's curve."""

    HAND = "hand"
    LOGGER = "logger"


READ_SD_K = {Road.HAND: 1.0, Road.LOGGER: 0.3}
"""How far a reading lies from the coldest spot of its piece: a stem pushed in at the lift, or a probe placed
before the drop (own estimates)."""


@dataclass(frozen=True, kw_only=True)
class Felt:
    """Cores at the earliest lift and how they move, each for (load, cut)."""

    loads: tuple[str, ...]
    core_c: Array
    size_k: Array  # for one unit of the logarithm of the half thickness
    factors_k: dict[str, Array]  # for one unit of the factor


def load_rows(plan: FryPlan) -> dict[str, Array]:
    """Conditions of each kind of load: the smallest, half and full one that the fryer takes, and a full one
    dropped straight after another.
    """
    fractions = load_fractions(plan)
    usual = {"load_frac": 1.0, "heater_frac": 1.0, "oil_level_frac": 1.0, "surface_frac": 1.0}
    rows = {
        name: np.array([{**usual, "load_frac": share}.get(factor, 0.0) for factor in FACTORS])
        for name, share in zip(("smallest", "half", "full")[-len(fractions) :], fractions, strict=True)
    }
    after = rows["full"].copy()
    after[FACTORS.index(OIL)] = all_loads(plan).oil_start_k[0]
    return {**rows, "back to back": after}


def felt(plan: FryPlan, precision: Precision = CLOSE) -> Felt:
    """What the engine says of the heavy end of every cut in every kind of load, and how it moves."""
    plan = replace(plan, rest_s=0.0)  # judged at the lift: carry-over does not count
    rows = load_rows(plan)
    own = np.array([kind.cut.heavy_ratio_n for kind in plan.kinds if kind.heavy])
    asked, weights = list[Array](), list[Array]()
    moves = {**{name: step for name, (step, _) in STEPS.items()}, OIL: OIL_STEP_K}
    for row in rows.values():
        asked += [row, row]
        for name, step in moves.items():
            asked.append(row.copy())
            asked[-1][FACTORS.index(name)] += step
        weights += [own, own * (1.0 + SIZE_STEP) ** 3, *[own] * len(moves)]
    cores = cores_at_lift_c(plan, np.array(asked), np.array(weights), precision)
    cores = cores.reshape(len(rows), 2 + len(moves), len(own))
    base = cores[:, 0]
    return Felt(
        loads=tuple(rows),
        core_c=base,
        size_k=(cores[:, 1] - base) / np.log1p(SIZE_STEP),
        factors_k={name: (cores[:, 2 + i] - base) / step for i, (name, step) in enumerate(moves.items())},
    )


def prior_of(
    kitchen: Kitchen, program: Program, road: Road = Road.HAND, precision: Precision = CLOSE
) -> Prior | None:
    """What is believed of a program before its pieces are read, margins with the thermometer's and the
    engine's error taken off; None where neither a rule nor the house speaks of its food.
    """
    level_c = hand_limit_c(kitchen, kitchen.product(program.product))
    if level_c is None:
        return None
    plan = make_plan(kitchen, as_keyed(kitchen, program))
    told = felt(plan, precision)
    heavy = [kind for kind in plan.kinds if kind.heavy]
    at = [(i, j, p) for i in range(len(told.loads)) for j in range(len(heavy)) for p in range(len(PLACES))]
    load, cut, place = np.array(at).T
    covariance = CLASS_SD_K**2 * np.eye(len(at))
    covariance += PLACE_SD_K**2 * (place[:, None] == place) + LOAD_SD_K**2 * (load[:, None] == load)
    for name, (_, sd) in STEPS.items():
        moved = sd * told.factors_k[name][load, cut]
        covariance += np.outer(moved, moved)
    for number, kind in enumerate(heavy):
        moved = np.where(cut == number, _size_sd(kitchen, plan, kind, told.size_k[:, number]), 0.0)
        moved = moved * told.size_k[load, cut]
        covariance += np.outer(moved, moved)
    sigma, tau = _spreads(told, road)
    off = level_c + kitchen.site.thermometer_error_k + CLOSE.error_k
    return Prior(
        classes=tuple(
            PieceClass(cut=heavy[j].cut.key, place=PLACES[p], load=told.loads[i]) for i, j, p in at
        ),
        mean_k=told.core_c[load, cut] - off,
        covariance_k2=covariance,
        sigma_k=sigma,
        tau_k=tau,
    )


def _size_sd(kitchen: Kitchen, plan: FryPlan, kind: PieceKind, slopes: Array) -> float:
    """How far a cut's half thickness may be off, as a share: what its calibration leaves open, if it has one.

    ``error_k`` of a calibration is twice the spread of what it predicts.
    """
    calibration = kitchen.calibration(kind.cut.key, plan.coating.key, lid_of(plan.program))
    if calibration is None:
        return SIZE_SD
    steepest = float(np.max(np.abs(slopes)))
    return min(SIZE_SD, 0.5 * calibration.error_k / steepest) if steepest > 0.0 else SIZE_SD


def _spreads(told: Felt, road: Road) -> tuple[float, float]:
    """Expected spread of pieces within a load, and of loads [K]."""
    usual = {name: float(np.median(np.abs(slope))) for name, slope in told.factors_k.items()}
    size_k = float(np.median(np.abs(told.size_k))) * PIECE_SIZE_SD
    drop_k = usual[OIL] * DROP_OIL_SD_K, usual["start_temp_k"] * DROP_START_SD_K
    return float(np.hypot(READ_SD_K[road], size_k)), float(np.linalg.norm([LOADS_SD_K, *drop_k]))


@lru_cache(maxsize=64)
def known_prior(kitchen: Kitchen, program: Program, road: Road = Road.HAND) -> Prior | None:
    """As :func:`prior_of`, kept for a kitchen and a program that stay the same; give a kitchen without marks,
    so that only what moves a prediction asks the engine again.
    """
    return prior_of(kitchen, program, road)
