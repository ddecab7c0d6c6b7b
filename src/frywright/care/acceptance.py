"""Acceptance of a fryer: what was timed and measured on its first day against what this fryer should do by
the engine.
"""

from __future__ import annotations

from dataclasses import dataclass

from frywright.care.energy import heat_up, heavy_load
from frywright.care.wear import LIMIT_N
from frywright.model.findings import Note, Outcome
from frywright.model.fryer import Fryer, Oil
from frywright.model.program import LidState
from frywright.physics.fry import FryHistory

SHORTEST_S, APART_S, VENT_APART_S = 20.0, 30.0, 10.0
"""Below the first a stopwatch cannot tell a ratio; nearer than the second it is the hand and the load that
differ; of a vent the third, because half a minute more may be a passage that clogs (project's own rules).
"""
FASTEST_N = 0.5
"""Twice as fast as worked out is a watch, a load or a figure of the kitchen file that is wrong (own rule)."""
AGAINST_TIME = {
    "fits": "{ratio} times the time worked out.",
    "near": "As near to the time worked out as a watch can tell.",
    "slow": (
        "{ratio} times the time worked out: find the cause before service; a licensed technician confirms."
    ),
    "fast": "{ratio} times the time worked out: no fryer is so fast. Time it again; compare plate and oil.",
}
MEAN_K = 2.0
"""Mean oil temperature this near the set point needs no offset (project's own rule, about a reference
thermometer and a stirred vat).
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Test:
    """One acceptance test: measured, worked out, and what follows."""

    __test__ = False
    name: str
    measured: str
    reckoned: str
    outcome: Outcome
    note: Note


def reckoned_s(
    fryer: Fryer, oil: Oil, history: FryHistory | None, marks_c: tuple[float, float], room_c: float
) -> dict[str, float]:
    """Times this fryer should take: heat-up between two marks; recovery, pressure build and vent of its full
    load where one is simulated.
    """
    found = {"heat_up": heat_up(fryer, oil, *marks_c, room_c).duration_s}
    if history is None:
        return found
    found["recovery"] = heavy_load(history).recovery_s
    if history.plan.program.under_pressure and history.full_pressure_s is not None:
        stages = zip(history.plan.program.stages, history.plan.program.durations_s(), strict=True)
        closed = 0.0
        for stage, length in stages:
            if stage.lid is LidState.PRESSURE:
                break
            closed += length
        found["pressure_build"] = history.full_pressure_s - closed
        if history.told_vent_s is not None:
            found["vent_down"] = history.told_vent_s
    return found


def timed(
    name: str,
    measured_s: float | None,
    expected_s: float | None,
    shown: tuple[str, str],
    apart_s: float = APART_S,
) -> Test:
    """A timed figure against what was worked out: 30 % slower fails; nothing to compare, or far too fast, is
    unknown; nearer than ``apart_s`` it fits.
    """
    if measured_s is None:
        note = Note(kind="missing", text="Not measured.")
        return Test(name=name, measured="", reckoned=shown[1], outcome=Outcome.UNKNOWN, note=note)
    if expected_s is None or max(measured_s, expected_s) < SHORTEST_S:
        note = Note(kind="no_reckoning", text="Kept for life; nothing to compare it with.")
        return Test(name=name, measured=shown[0], reckoned=shown[1], outcome=Outcome.UNKNOWN, note=note)
    ratio = measured_s / max(expected_s, SHORTEST_S)
    kind, outcome = "fits", Outcome.MEETS
    far = not FASTEST_N <= ratio <= LIMIT_N
    if far and abs(measured_s - expected_s) <= apart_s:
        kind = "near"
    elif far:
        slow = ratio > LIMIT_N
        kind, outcome = ("slow", Outcome.FAILS) if slow else ("fast", Outcome.UNKNOWN)
    note = Note(kind=kind, text=AGAINST_TIME[kind], values={"ratio": round(ratio, 2)})
    return Test(name=name, measured=shown[0], reckoned=shown[1], outcome=outcome, note=note)


def control(
    set_c: float, mean_c: float, swing_k: float, fryer: Fryer, shown: tuple[str, str, str]
) -> list[Test]:
    """Mean over cycles against the set point, and the swing against what the programs were designed with."""
    near = abs(mean_c - set_c) <= MEAN_K
    mean = Test(
        name="mean",
        measured=shown[0],
        reckoned=shown[1],
        outcome=Outcome.MEETS if near else Outcome.FAILS,
        note=Note(
            kind="mean",
            text=(
                "The mean of five cycles is at the set point."
                if near
                else "An offset is to be entered and checked again."
            ),
        ),
    )
    fits = swing_k <= fryer.swing_k * LIMIT_N + 0.5
    swing = Test(
        name="swing",
        measured=shown[2],
        reckoned="",
        outcome=Outcome.MEETS if fits else Outcome.FAILS,
        note=Note(
            kind="swing",
            text=(
                "The programs were designed with a swing of {swing_k}."
                if fits
                else "Wider than the {swing_k} the programs were designed with: design them anew."
            ),
            values={"swing_k": fryer.swing_k},
        ),
    )
    return [mean, swing]
