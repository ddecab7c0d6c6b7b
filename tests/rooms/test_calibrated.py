"""A calibration speaks for the lid it was made under, and with 2 K taken off under another program."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from frywright.ledger.facts.cook import ProgramProved
from frywright.ledger.facts.probing import CalibrationKept
from frywright.model.calibration import OTHER_PROGRAM_K, Calibration
from frywright.model.findings import Outcome
from frywright.model.kitchen import ProveAgain
from frywright.physics.plan import make_plan
from frywright.rooms.hall import write
from frywright.rooms.kitchen import kitchen_number, open_store, remember_calibration, remembered_kitchen
from frywright.trial.ask import CookRequest, ask, edit_program
from frywright.trial.evidence import evidence_for, logged_as, range_notes
from frywright.trial.predicted import show_facts
from frywright.trial.proof import prove_program
from frywright.trial.prove_again import again_line, again_text, again_values, lowest_margin_k
from frywright.verdicts.evidence import EvidenceKind
from tests.demo import remember_demo


def calibrated(kitchen, lid: str, **changes):
    """The kitchen with every bone-in cut calibrated under one state of the lid, over a wide range."""
    logged = kitchen.program("bone-in alder" if lid == "pressure" else "bone-in cedar")
    made = []
    for kind in make_plan(kitchen, logged).kinds:
        if not kind.heavy:
            values = {
                "cut": kind.cut.key,
                "coating": "dredge",
                "lid": lid,
                "half_thickness_m": 1.3 * kind.cut.half_thickness_m,
                "shape_n": 0.5,
                "reference_mass_kg": kind.cut.reference_mass_kg,
                "pieces_count": 5,
                "mass_low_kg": 0.02,
                "mass_high_kg": 0.9,
                "oil_low_c": 120.0,
                "oil_high_c": 200.0,
                "start_low_c": -1.0,
                "start_high_c": 12.0,
                "error_k": 1.2,
                "program": logged_as(logged),
            }
            made.append(Calibration(**{**values, **changes}))
    return replace(kitchen, calibrations=tuple(made))


@pytest.mark.parametrize(("lid", "other"), [("open", "bone-in alder"), ("pressure", "bone-in cedar")])
def test_never_from_open_to_pressure_nor_back(kitchen, lid, other):
    """Under the other lid nothing is left of a calibration: geometry, evidence, verdict, proof and notes are
    as without.
    """
    had = calibrated(kitchen, lid)
    program = kitchen.program(other)
    bare, plan = make_plan(kitchen, program), make_plan(had, program)
    assert [k.cut for k in plan.kinds] == [k.cut for k in bare.kinds]
    for kind in plan.kinds:
        assert evidence_for(had, plan, kind).kind is EvidenceKind.SCOUTING
    answer = ask(had, CookRequest(program=program))
    assert {v.outcome for _, v in answer.verdicts} == {Outcome.UNKNOWN}
    assert [v.margin_k for _, v in answer.verdicts] == [
        v.margin_k for _, v in ask(kitchen, CookRequest(program=program)).verdicts
    ]
    assert prove_program(had, program, samples=8).outcome is Outcome.UNKNOWN
    assert range_notes(had, plan) == ()


@pytest.mark.parametrize("lid", ["open", "pressure"])
def test_two_kelvin_are_taken_off_under_another_program(kitchen, lid):
    """The logged program keeps the calibration's own error; a longer one, a renamed one and an old
    calibration get 2 K.
    """
    had = calibrated(kitchen, lid)
    logged = kitchen.program("bone-in alder" if lid == "pressure" else "bone-in cedar")
    long = edit_program(
        logged,
        [
            *logged.stages[:-1],
            replace(
                logged.stages[-1],
                duration_s=(logged.timed().stages[-1].duration_s or 0.0) + 30.0,
                until_elapsed_s=None,
                until_left_s=None,
            ),
        ],
    )
    renamed = replace(logged, name="another name")
    for program, expected in ((logged, 1.2), (long, OTHER_PROGRAM_K), (renamed, OTHER_PROGRAM_K)):
        plan = make_plan(had, program)
        evidence = evidence_for(had, plan, plan.kinds[0])
        assert evidence.kind is EvidenceKind.CALIBRATED
        assert evidence.error_k == pytest.approx(expected)
    old = calibrated(kitchen, lid, program="")
    plan = make_plan(old, logged)
    assert evidence_for(old, plan, plan.kinds[0]).error_k == OTHER_PROGRAM_K
    wide = calibrated(kitchen, lid, error_k=3.1)
    plan = make_plan(wide, long)
    assert evidence_for(wide, plan, plan.kinds[0]).error_k == pytest.approx(3.1)


def breast_only(kitchen):
    """The breast of the pressure program calibrated, the other cuts of the bird not."""
    return next(c for c in calibrated(kitchen, "pressure").calibrations if c.cut == "breast_half")


def test_a_kept_calibration_asks_for_new_proofs(kitchen, tmp_path):
    """Programs under pressure carry the mark with their margin before and after, open ones none; a proof made
    before it does not end the call, one made after it does.
    """
    store = open_store(str(tmp_path / "store.db"))
    remember_demo(store)
    program = remembered_kitchen(store).program("bone-in alder")
    before = kitchen_number(store)
    assert remembered_kitchen(store).marks == ()
    remember_calibration(store, CalibrationKept.of(breast_only(kitchen), rms_k=0.1, fitted=(), runs_count=1))
    now = remembered_kitchen(store)
    mark = now.mark(program)
    assert mark.margin_after_k < mark.margin_before_k - 1.0
    assert mark.margin_after_k == pytest.approx(lowest_margin_k(now, program))
    assert now.mark(now.program("bone-in cedar")) is None
    assert again_line(now, program).startswith(
        "Prove again: the kitchen has changed (a piece was calibrated from a probe log)."
    )

    def prove(number):
        told = {"holds": True, "outcome": "meets", "samples_count": 1, "lowest_k": 1.0}
        write(
            store,
            ProgramProved(name=program.name, version=program.version, kitchen_number=number, **told),
        )

    prove(before)
    assert remembered_kitchen(store).mark(program) is not None
    prove(kitchen_number(store))
    assert remembered_kitchen(store).mark(program) is None


def test_the_page_names_what_is_calibrated_and_what_to_probe_next(kitchen):
    """With the breast calibrated alone the program is not proven: the other cuts are named, least margin
    first; with every cut calibrated it is, and nothing is named.
    """
    program = kitchen.program("bone-in alder")
    partly = ask(replace(kitchen, calibrations=(breast_only(kitchen),)), CookRequest(program=program)).facts
    shown = show_facts(partly, "us")
    assert not shown.proven
    assert shown.evidence.startswith(
        "Calibrated: Breast half. Only estimated, least to spare first: Drumstick, Thigh, Wing."
    )
    whole = ask(calibrated(kitchen, "pressure"), CookRequest(program=program)).facts
    assert whole.to_probe == () and "Calibrated:" not in show_facts(whole, "us").evidence
    none = show_facts(ask(kitchen, CookRequest(program=program)).facts, "us")
    assert none.evidence == "Missing: probe log of the coldest piece, or a calibrated piece."


@pytest.mark.parametrize(
    ("before", "after", "values"),
    [
        (2.5, -1.5, {"before_k": 2.5, "after_k": 1.5}),
        (None, -1.5, {}),
        (2.5, None, {}),
        (None, None, {}),
    ],
)
def test_a_mark_speaks_of_margins_only_when_it_knows_both(before, after, values):
    """Without one of them it says that the kitchen has changed and why, and every word has its value."""
    mark = ProveAgain(name="p", version=1, reason="new oil", margin_before_k=before, margin_after_k=after)
    assert again_values(mark) == {"reason": "new oil", **values}
    assert set(re.findall(r"{(\w+)}", again_text(mark))) == {"reason", *values}
