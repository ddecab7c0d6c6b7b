"""Cards and read-backs: one page, large type, cautions, and every slip with its consequence."""

from __future__ import annotations

import pytest

from frywright.design.difference import changes
from frywright.design.readback import likely_slip
from frywright.model.errors import InputError
from frywright.model.fryer import Controller, TempUnit
from frywright.model.program import Stage
from frywright.rooms.cook.cards import card_data, card_pdf
from frywright.rooms.cook.compare import read_back, value_names
from frywright.trial.ask import edit_program
from frywright.voice.tongue import translator


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_card_has_everything_on_it(kitchen, language):
    """Values, slot, version, what it replaces, check figure, cautions at their step, the unproven banner."""
    tr = translator(language)
    data = card_data(kitchen, kitchen.program("bone-in alder"), 4, language, tr)
    assert data.rows[1][1:3] == ["310", "11:20"]
    assert data.rows[3] == ["4", "0", "0:00", ""]
    assert data.total == "12:00"
    assert data.slot == "4"
    assert data.replaces.endswith("2")
    assert len(data.figure) == 2
    assert data.cautions.lift == tr(
        "Drain over the vat, sleeves and gloves on: hot oil burns. Probe the coldest piece."
    )
    assert ("steam scalds" if language == "en" else "el vapor quema") in data.cautions.lid
    assert data.banner
    assert card_data(kitchen, kitchen.program("wedges cedar"), 1, language, tr).cautions.lid == ""


@pytest.mark.slow
@pytest.mark.parametrize("language", ["en", "es"])
def test_every_demo_card_is_one_page_and_reproducible(kitchen, language):
    """Each program of the demo fits on one page; the same card is the same file."""
    for program in kitchen.programs:
        first = card_pdf(card_data(kitchen, program, 1, language, translator(language)))
        assert first.startswith(b"%PDF")
        assert first.count(b"/Type/Page/") == 1
    assert card_pdf(card_data(kitchen, program, 1, language, translator(language))) == first


SLIPS = [
    ("335", "353", "two digits swapped"),
    ("335", "325", "one digit"),
    ("335", "168", "unit"),
    ("335", "-335", "sign"),
    ("335", "310", "another stage's value"),
    ("335", "35", "a digit left out"),
    ("335", "3355", "a digit too many"),
    ("12:30", "13:20", "two digits swapped"),
    ("11:00", "1100", "another value, perhaps an old version"),
    ("12:30", "12:39", "one digit"),
    ("335", "401", "another value, perhaps an old version"),
]


@pytest.mark.parametrize(("wanted", "found", "slip"), SLIPS)
def test_each_slip_is_named(wanted, found, slip):
    """Swapped digits, one digit, Celsius for Fahrenheit, sign, stage, missing and extra digit, old
    version.
    """
    assert likely_slip(wanted, found, ["335", "310"], Controller(shows=TempUnit.F)) == slip


def test_a_matching_machine_matches(kitchen):
    """Read exactly as the card: no mismatch, the same figure."""
    program = kitchen.program("bone-in birch")
    result = read_back(kitchen, program, 1, [v.text for v in value_names(kitchen, program, 1)])
    assert result.matches
    assert result.figure_read == result.figure_card


def test_a_wrong_digit_is_named_with_what_it_would_do(kitchen):
    """Total 9:00 for 12:00: three minutes less; the coldest piece is predicted short, and the figure
    differs.
    """
    program = kitchen.program("bone-in alder")
    values = [
        v.text
        for v in value_names(kitchen, program, 2 if kitchen.fryer("alder").controller.slot_count > 1 else 1)
    ]
    assert values[0] == "12:00"
    result = read_back(kitchen, program, 1, ["10:00", *values[1:3], "9:20", values[4], "1:00", *values[6:]])
    assert [m.what for m in result.mismatches] == ["total", "time"]
    assert result.figure_read != result.figure_card
    assert result.consequence.verdicts[0][1].margin_k < 3.0
    assert not result.matches


def test_times_that_run_backwards_are_told(kitchen):
    """A machine whose times run backwards is told at its worst, as not known, and short of values is
    refused.
    """
    program = kitchen.program("bone-in birch")
    values = [v.text for v in value_names(kitchen, program, 1)]
    result = read_back(kitchen, program, 1, [values[0], "14:00", *values[2:]])
    assert "not_known" in {note.kind for note in result.effect.warnings}
    assert not result.matches
    with pytest.raises(InputError, match="values"):
        read_back(kitchen, program, 1, values[:-1])


def test_what_was_typed_around_a_value_is_no_mismatch_and_one_value_too_many_is_refused(kitchen):
    """Blanks around every value read; then the card's values with one more, which the machine cannot hold."""
    program = kitchen.program("bone-in birch")
    values = [v.text for v in value_names(kitchen, program, 1)]
    assert read_back(kitchen, program, 1, [f"  {v} " for v in values]).matches
    with pytest.raises(InputError, match=f"values .*{len(values)}: read every value"):
        read_back(kitchen, program, 1, [*values, values[-1]])


def test_versions_are_compared_value_by_value(kitchen):
    """Only what changed is listed, in people's units."""
    old = kitchen.program("bone-in alder")
    new = edit_program(
        old,
        [
            old.stages[0],
            Stage(set_c=old.stages[1].set_c, lid=old.stages[1].lid, duration_s=590.0),
            *old.stages[2:],
        ],
    )
    told = changes(old, new, "us")
    assert [(c.stage, c.what, c.before, c.after) for c in told] == [(2, "duration", "10:20", "9:50")]
    assert changes(old, old) == ()
    shorter = changes(old, edit_program(old, old.stages[:2]))
    assert {c.stage for c in shorter} == {3}
    assert all(c.after == "" for c in shorter)


def test_an_old_version_and_another_slot_are_known(kitchen):
    """A value of version 1 of the same program, or of another program on that fryer, is named as such."""
    from dataclasses import replace

    old = kitchen.program("bone-in cedar")
    new = edit_program(old, [Stage(set_c=old.stages[0].set_c, duration_s=960.0)])
    both = replace(kitchen, programs=(*kitchen.programs, new))
    values = [v.text for v in value_names(both, new, 1)]
    was = [v.text for v in value_names(both, old, 1)]
    assert read_back(both, new, 1, was).mismatches[0].slip == "old version"
    other = [v.text for v in value_names(both, kitchen.program("wedges cedar"), 1)]
    slips = {m.slip for m in read_back(both, new, 1, other).mismatches}
    assert slips == {"another slot"}
    assert values != was


def test_no_two_cards_of_a_fryer_share_a_slot_silently(kitchen):
    """Each program gets the next free slot of its fryer, one told stays; where the controller has one slot
    only, the card says who else is in it.
    """
    from dataclasses import replace

    from frywright.design.slots import sharing, slots_of

    cedar = kitchen.fryer("cedar")
    roomy = replace(cedar, controller=replace(cedar.controller, slot_count=8))
    there = replace(kitchen, fryers=tuple(roomy if f.key == "cedar" else f for f in kitchen.fryers))
    free = slots_of(there, "cedar")
    assert sorted(free.values()) == [1, 2, 3]
    told = slots_of(there, "cedar", {"wedges cedar": 1})
    assert told["wedges cedar"] == 1
    assert len(set(told.values())) == 3
    assert slots_of(there, "cedar", {"wedges cedar": 99}) == free
    program = there.program("wedges cedar")
    assert sharing(there, program, free["wedges cedar"]) == ()
    assert "bone-in cedar" in sharing(there, program, 1, {"bone-in cedar": 1})
    one = kitchen.program("wedges cedar")
    assert set(sharing(kitchen, one, 1)) == {"bone-in cedar", "tenders cedar"}
    data = card_data(kitchen, one, 1, "es", translator("es"), shared=sharing(kitchen, one, 1))
    assert data.shared == "El mismo puesto también tiene: bone-in cedar, tenders cedar"
    assert (
        card_pdf(card_data(kitchen, one, 1, "en", str, shared=sharing(kitchen, one, 1))).count(b"/Type/Page/")
        == 1
    )
