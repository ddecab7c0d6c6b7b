"""The life of a program, state by state: what each step rests on, and what undoes it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.trial.life import Mark, State, Step, Traces, life_of

FULL = Traces(
    saved=Mark(number=1),
    origin="designed",
    proof=Mark(number=2),
    proof_holds=True,
    samples_count=2048,
    measured="read",
    probed=Mark(number=3),
    card=Mark(number=4),
    card_slot=2,
    keyed=Mark(number=5, who="Kim"),
    read=Mark(number=6, who="Ana"),
    read_version=1,
    matches=True,
    service=Mark(number=7, who="Olive"),
)
"""A version that went the whole way, in the numbers of its entries."""


def state(traces: Traces, step: Step) -> State:
    return next(s.state for s in life_of(traces).steps if s.step is step)


def test_the_whole_way_is_in_service_and_wants_nothing():
    life = life_of(FULL)
    assert [s.step for s in life.steps] == list(Step)
    assert {s.state for s in life.steps} == {State.DONE}
    assert (life.next, life.serving, life.end, life.wrong) == (None, True, "", False)


@pytest.mark.parametrize(
    ("without", "step", "act"),
    [
        ({"proof": None}, Step.PROVEN, "prove"),
        ({"probed": None, "measured": ""}, Step.PROBED, "probe"),
        ({"card": None}, Step.CARD, "card"),
        ({"keyed": None, "read": None, "read_version": 0}, Step.KEYED, "key"),
        ({"read": None, "read_version": 0}, Step.READ_BACK, "read_back"),
        ({"service": None}, Step.SERVICE, "serve"),
    ],
)
def test_the_first_step_that_is_missing_is_next(without, step, act):
    """And nothing is in service over it."""
    life = life_of(replace(FULL, **without))
    assert (life.next.step, life.next.act, life.next.state) == (step, act, State.OPEN)
    assert not life.serving


@pytest.mark.parametrize(
    ("since", "step", "act"),
    [
        ({"again": True, "measured": "", "undone_number": 8}, Step.PROVEN, "prove"),
        ({"proof_holds": False, "short": True, "undone_number": 8}, Step.PROVEN, "lengthen"),
        ({"measured": "", "undone_number": 8}, Step.PROBED, "probe"),
        ({"read": Mark(number=8), "matches": False, "undone_number": 8}, Step.READ_BACK, "read_back"),
        ({"read": Mark(number=8), "read_version": 3, "undone_number": 8}, Step.READ_BACK, "read_back"),
        ({"undone_number": 8}, Step.SERVICE, "serve"),
    ],
)
def test_what_undoes_a_step(since, step, act):
    """A changed kitchen, a failed proof, a read-back that differs or finds an old version, whatever was set
    right meanwhile: service waits for it.
    """
    life = life_of(replace(FULL, **since))
    assert (life.next.step, life.next.act, life.next.state) == (step, act, State.UNDONE)
    assert not life.serving
    assert state(replace(FULL, **since), Step.SERVICE) is State.UNDONE


def test_a_program_predicted_short_is_lengthened_before_anything_else():
    life = life_of(Traces(saved=Mark(number=1), short=True))
    assert (life.next.step, life.next.act) == (Step.PROVEN, "lengthen")


def test_probed_is_what_proves_it_now():
    """A calibration from logs stands for readings; readings that prove nothing any more are undone: a page
    never says *probed* beside *not proven yet*.
    """
    assert state(replace(FULL, probed=None, measured="calibrated"), Step.PROBED) is State.DONE
    assert state(replace(FULL, measured=""), Step.PROBED) is State.UNDONE
    assert state(replace(FULL, probed=None, measured=""), Step.PROBED) is State.OPEN


def test_a_food_without_rule_and_target_has_nothing_to_prove():
    life = life_of(replace(FULL, ruled=False, proof=None, probed=None, measured=""))
    assert state(replace(FULL, ruled=False, proof=None), Step.PROVEN) is State.PASSED
    assert life.serving


def test_stages_set_by_hand_are_no_step_missed():
    assert state(replace(FULL, origin=""), Step.DESIGNED) is State.PASSED
    assert life_of(replace(FULL, origin="")).serving


def test_keyed_again_asks_for_a_new_read_back():
    """The old one says nothing of the new keys, good or bad."""
    again = replace(FULL, keyed=Mark(number=9), undone_number=6)
    assert state(again, Step.READ_BACK) is State.OPEN
    assert not life_of(again).wrong
    assert state(replace(again, matches=False), Step.READ_BACK) is State.OPEN


def test_a_read_back_says_that_it_was_keyed():
    assert state(replace(FULL, keyed=None), Step.KEYED) is State.DONE
    assert state(replace(FULL, keyed=None, read_version=4), Step.KEYED) is State.OPEN


def test_a_fryer_that_holds_something_else_is_wrong():
    assert life_of(replace(FULL, matches=False, undone_number=6)).wrong
    assert life_of(replace(FULL, read_version=4)).wrong
    assert not life_of(replace(FULL, read=None, read_version=0)).wrong


def test_it_ends_retired_or_changed():
    """Put in service later, a retired one is back; a later version ends it for good."""
    gone = replace(FULL, retired=Mark(number=8, who="Olive"), reason="off the menu", undone_number=8)
    life = life_of(gone)
    assert (life.end, life.reason, life.next, life.serving) == ("retired", "off the menu", None, False)
    back = life_of(replace(gone, service=Mark(number=9)))
    assert (back.end, back.serving) == ("", True)
    assert life_of(replace(gone, newer=Mark(number=9))).end == "changed"
