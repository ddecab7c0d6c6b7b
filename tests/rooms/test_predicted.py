"""Predicted over is never said of a load that the fine reference finds short; verdicts rest on the close
setting.
"""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from frywright.design import proof as proofs
from frywright.physics.fry import simulate
from frywright.physics.inputs import CLOSE, FINE, ROUTINE
from frywright.physics.plan import make_plan
from frywright.rooms.cook.told import cook_told
from frywright.trial.ask import CookRequest, ask
from frywright.trial.proof import proof_view, prove_program
from frywright.verdicts.place import place_named
from tests.random_programs import Chance, aimed, asked, chance_of, margins, plan_of

NEAR_K = 0.6
"""Nearer to the limit FINE decides; farther off CLOSE does, which lies within 0.1 K of FINE in every near
case below.
"""


def predicted_over(kitchen, request) -> tuple[bool, float]:
    """Whether the tool predicts every piece over its limit, and by how much before the engine's error is
    taken off.
    """
    answer = ask(kitchen, request)
    lowest = min(verdict.margin_k for _, verdict in answer.verdicts)
    return lowest >= 0.0, lowest + CLOSE.error_k


@st.composite
def cases(draw):
    return asked(
        Chance(
            lambda low, high: draw(st.floats(low, high)), lambda options: draw(st.sampled_from(list(options)))
        )
    )


@pytest.mark.slow
@settings(max_examples=300, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
@given(cases())
def test_no_random_program_is_predicted_over_and_short(case):
    """Any clock, vent, load, altitude: predicted over means over by the fine reference at the earliest lift.

    300 of them here, for the time they take; ``python -m benchmarks.predicted 20000`` solves 20,000
    (docs/reference/benchmarks.md has its last count).
    """
    kitchen, request = case
    over, margin = predicted_over(kitchen, request)
    if over and margin < NEAR_K:
        assert margins([plan_of(kitchen, request)], FINE)[0] >= 0.0


@pytest.mark.slow
def test_programs_that_stop_at_their_limit_are_not_predicted_over_and_short():
    """40 random programs cut to stop within half a kelvin of their limit: nothing over is short, and both
    words occur.

    The error of each setting against FINE stays within what is taken off for it.
    """
    chance = chance_of(np.random.default_rng(7))
    near = aimed([asked(chance) for _ in range(40)], 0.5)
    plans = [plan_of(*case) for case in near]
    known = margins(plans, FINE)
    said = np.array([predicted_over(*case)[0] for case in near])
    assert not np.any(said & (known < 0.0))
    assert 5 < said.sum() < 35
    reached = np.abs(known) < 2.0
    assert reached.sum() > 30
    for setting in (ROUTINE, CLOSE):
        above = margins(plans, setting)[reached] - known[reached]
        assert above.max() < setting.error_k


def test_a_programs_verdict_is_solved_close(kitchen):
    """What the page, the card and the JSON say is the close setting, its error taken off beside the
    thermometer's.
    """
    for program in kitchen.programs[:3]:
        answer = ask(kitchen, CookRequest(program=program))
        close = simulate(make_plan(kitchen, program), CLOSE)
        assert answer.history.coldest.core_at_lift_c == close.coldest.core_at_lift_c
        assert cook_told(answer).setting == "close"
        guard = answer.verdicts[0][1].values["guard_k"]
        assert guard == pytest.approx(kitchen.site.thermometer_error_k + CLOSE.error_k)


def test_worst_cases_of_a_proof_are_solved_close(kitchen):
    """The lowest corner and the lowest sample come out of the close setting, and of FINE within its error.

    Loads solved together share their inner passes, which is worth up to 0.01 K.
    """
    program = kitchen.program("bone-in alder")
    plan, limit = make_plan(kitchen, program), place_named(kitchen.site.jurisdiction).cook_limit()
    answer = prove_program(kitchen, program, samples=64)
    told, proof = proof_view(answer), answer.proof
    assert told.solved_close_count == proof.close_count >= proofs.LOWEST_COUNT
    conditions, margin = min(proof.corners, key=lambda corner: corner[1])
    rows = np.vstack([proofs.corner_points(proof.spread), proof.conditions])
    weights = proofs.weights_of(plan, rows, program.version)
    number = [corner[1] for corner in proof.corners].index(margin)
    assert dict(zip(proofs.FACTORS, rows[number], strict=True)) == conditions
    guard = kitchen.site.thermometer_error_k
    for setting, allowed in ((CLOSE, 0.01), (FINE, CLOSE.error_k)):
        run, _ = proofs.solved(plan, limit, guard, rows[[number]], weights[[number]], setting, None)
        assert float(run.min()) == pytest.approx(margin, abs=allowed)
    lowest = int(np.argmin(proof.margins_k.min(axis=1))) + len(proof.corners)
    run, _ = proofs.solved(plan, limit, guard, rows[[lowest]], weights[[lowest]], CLOSE, None)
    assert float(run.min()) == pytest.approx(float(proof.margins_k.min()), abs=0.01)


def test_a_load_near_the_limit_is_solved_again_wherever_it_stands(kitchen, monkeypatch):
    """The lowest corner, the lowest sample and those near the limit; with no room for the lowest, those near
    it.
    """
    margins_k = np.array([[0.4, 3.0], [-0.4, 2.0], [9.0, 9.5], [-7.0, 2.0], [8.0, 8.0], [6.0, 8.0]])
    monkeypatch.setattr(proofs, "LOWEST_COUNT", 1)
    assert proofs.uncertain(margins_k, 4).tolist() == [0, 1, 3, 5]
    monkeypatch.setattr(proofs, "LOWEST_COUNT", 0)
    assert proofs.uncertain(margins_k, 4).tolist() == [0, 1]
