"""The shape of a staged program: its lids, stages that a controller holds, stages merged or made longer."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from frywright.design.controller import on_steps
from frywright.model.fryer import Controller, Fryer, FryerKind
from frywright.model.program import LidState, Program, Stage
from frywright.model.units import to_inside, to_people

Array = NDArray[np.float64]
COOLEST_C = 140.0
EDGE_STAGE_S = (20.0, 150.0)


def lids_of(fryer: Fryer, stages: int) -> list[LidState]:
    """Lid of each stage: open to set the crust, pressure in the middle, open to finish."""
    if fryer.kind is FryerKind.OPEN:
        return [LidState.OPEN] * stages
    if stages <= 2:
        return [LidState.PRESSURE] * stages
    return [LidState.OPEN, *[LidState.PRESSURE] * (stages - 2), LidState.OPEN]


def build(base: Program, fryer: Fryer, x: Array, main_s: float, hottest_c: float) -> Program:
    """Program of a point ``x`` in [0, 1]^(2n+1): n set points, n shares, extra margin; the main part takes
    ``main_s``.
    """
    n, controller = len(x) // 2, fryer.controller
    lids = lids_of(fryer, n)
    low, high = max(COOLEST_C, controller.lowest_c), hottest(hottest_c, controller)
    sets = low + x[:n] * max(high - low, 0.0)
    inner = [i for i, lid in enumerate(lids) if lid is LidState.PRESSURE] or list(range(n))
    if len(inner) == n and n > 1:
        shares = x[n : 2 * n] + 0.15
    else:
        shares = np.where([i in inner for i in range(n)], x[n : 2 * n] + 0.15, 0.0)
    main_s, whole = max(main_s, controller.time_step_s), shares.sum()
    edges = EDGE_STAGE_S[0] + x[n:] * (EDGE_STAGE_S[1] - EDGE_STAGE_S[0])
    lengths = [main_s * shares[i] / whole if i in inner else edges[i] for i in range(n)]
    told = zip(sets.tolist(), lids, map(float, lengths), strict=True)
    stages = on_steps(list(told), controller, base.name)
    return replace(base, stages=_merged(stages), total_s=None)


def hottest(hottest_c: float, controller: Controller) -> float:
    """Hottest set point the controller can hold that is not above the one allowed."""
    unit = str(controller.shows)
    step = controller.temp_step_k * (9 / 5 if unit == "f" else 1.0)
    most = min(hottest_c, controller.highest_c)
    return to_inside(float(np.floor(to_people(most, unit) / step + 1e-6)) * step, unit)


def cooled(program: Program, hottest_c: float, controller: Controller) -> Program:
    """The program with no set point above the one allowed."""
    most = hottest(hottest_c, controller)
    return merged(
        replace(program, stages=tuple(replace(s, set_c=min(s.set_c, most)) for s in program.stages))
    )


def merged(program: Program) -> Program:
    """The program without stages of no time, and with neighbours of one set point and lid as one stage."""
    return replace(program, stages=_merged(program.stages))


def _merged(stages: Sequence[Stage]) -> tuple[Stage, ...]:
    kept: list[Stage] = []
    for stage in stages:
        length = stage.duration_s or 0.0
        if kept and (kept[-1].lid, kept[-1].set_c) == (stage.lid, stage.set_c):
            kept[-1] = replace(stage, duration_s=(kept[-1].duration_s or 0.0) + length)
        elif length > 0.0:
            kept.append(stage)
    return tuple(kept)


def main_stage(program: Program) -> int:
    """Place of the main stage: the longest, under pressure where there is one."""
    closed = [i for i, s in enumerate(program.stages) if s.lid is LidState.PRESSURE]
    return max(closed or range(len(program.stages)), key=lambda i: program.stages[i].duration_s or 0.0)


def longer(program: Program, by_s: float) -> Program:
    """The program with its main stage longer by ``by_s``."""
    return changed(program, main_stage(program), "time", by_s)


def changed(program: Program, number: int, what: str, by: float) -> Program:
    """The program with the time [s] or the set point [K] of one stage changed; stages count from 0."""
    old = program.stages[number]
    new = (
        replace(old, duration_s=(old.duration_s or 0.0) + by)
        if what == "time"
        else replace(old, set_c=old.set_c + by)
    )
    return replace(program, stages=(*program.stages[:number], new, *program.stages[number + 1 :]))
