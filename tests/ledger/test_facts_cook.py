"""Entries of cooking, probing and many sites as written before facts: read, and written the same."""

from __future__ import annotations

import pytest

from frywright.ledger.facts.cook import (
    KitchenSet,
    ProgramProved,
    ProgramSaved,
    ProofsAsked,
    ReadBackTaken,
    ShortCardPrinted,
    SimulationKept,
    SlotChosen,
)
from frywright.ledger.facts.day import GapExplained, OrderPromised
from frywright.ledger.facts.fact import about
from frywright.ledger.facts.fleet import (
    AnchorKept,
    ForkSeen,
    KitchenOpened,
    ProgramReleased,
    ReleaseAnswered,
    ReleaseArrived,
    WaveTold,
)
from frywright.ledger.facts.life import CardPrinted, ProgramKeyed, ProgramRetired, ServiceBegun
from frywright.ledger.facts.people import NameRemoved, SignedOut
from frywright.ledger.facts.probing import (
    CalibrationKept,
    HoldStudied,
    LogKept,
    ProgramProbed,
    Reading,
    SampleProved,
)
from frywright.ledger.store import Store
from frywright.model.entry import canonical
from frywright.model.errors import RecordError
from frywright.rooms import hall
from frywright.rooms.clock import now
from frywright.rooms.cook.told import cook_told
from frywright.trial.ask import CookRequest, ask

PROGRAM = {
    "name": "bone-in alder",
    "product": "bone_in",
    "fryer": "alder",
    "version": 5,
    "total_s": None,
    "drain_s": 30.0,
    "hold_life_s": 3600.0,
    "load_heads": None,
    "altitude_m": None,
    "unit_mass_kg": 1.4,
    "stages": [
        {"set_c": 165.5, "lid": "pressure", "duration_s": 720.0},
        {"set_c": 150.0, "lid": "open", "until_core_c": 85.0, "at_most_s": 120.0},
    ],
}
SHORT = {"margin_k": -2.5, "by": "Kim Vale", "reason": "only to see the oil fall"}
CALIBRATION = {
    "cut": "thigh",
    "coating": "medium",
    "lid": "pressure",
    "half_thickness_m": 0.018,
    "shape_n": 1.0,
    "reference_mass_kg": 0.12,
    "pieces_count": 4,
    "mass_low_kg": 0.11,
    "mass_high_kg": 0.13,
    "oil_low_c": 150.0,
    "oil_high_c": 165.0,
    "start_low_c": 2.0,
    "start_high_c": 4.0,
    "error_k": 1.5,
    "area_factor_n": None,
    "drip_frac": 0.02,
    "program": "bone-in alder 0123456789ab",
    "made_on": "2026-11-25",
    "log": "0" * 64,
    "name": "thigh",
    "rms_k": 0.8,
    "fitted": [
        {"name": "shape_n", "value": 1.0, "sd": 0.1, "low": 0.8, "high": 1.2, "before": 1.1},
    ],
    "runs_count": 9,
}
WRITTEN = [
    (KitchenSet, {"file": "own.toml", "text": "[kitchen]\n", "reason": ""}),
    (KitchenSet, {"file": "own.toml", "text": "[kitchen]\n"}),
    (
        ProofsAsked,
        {
            "kitchen_number": 9,
            "programs": [
                {
                    "name": "wings",
                    "version": 2,
                    "reason": "moved up the hill",
                    "margin_before_k": 1.5,
                    "margin_after_k": None,
                }
            ],
        },
    ),
    (ProgramSaved, PROGRAM),
    (ProgramSaved, {**PROGRAM, "short": SHORT}),
    (ProgramSaved, {**PROGRAM, "origin": "designed"}),
    (CardPrinted, {"name": "wings", "version": 2, "fryer": "birch", "slot": 7}),
    (ProgramKeyed, {"name": "wings", "version": 2, "fryer": "birch", "slot": 7, "who": "Kim"}),
    (
        ServiceBegun,
        {
            "name": "wings",
            "version": 2,
            "fryer": "birch",
            "who": "Ana Vale",
            "proof_number": 12,
            "readback_number": 31,
            "evidence": "Readings of its coldest pieces meet the limit.",
        },
    ),
    (
        ProgramRetired,
        {"name": "wings", "version": 2, "fryer": "birch", "who": "Ana Vale", "reason": "off the menu"},
    ),
    (
        OrderPromised,
        {
            "date": "2026-11-27",
            "product": "tenders",
            "pieces_count": 24,
            "ready_s": 46800.0,
            "ticket": "17",
            "state": "promised",
            "chance_frac": 0.12,
        },
    ),
    (
        GapExplained,
        {"date": "2026-11-25", "lack": "readings", "words": "the probe was broken", "who": "Kim"},
    ),
    (
        ProgramProved,
        {
            "name": "wings",
            "version": 2,
            "kitchen_number": 9,
            "holds": False,
            "outcome": "unknown",
            "samples_count": 1024,
            "lowest_k": -0.4,
        },
    ),
    (ShortCardPrinted, {"name": "wings", "version": 2, "fryer": "birch", "short": SHORT}),
    (SlotChosen, {"name": "wings", "fryer": "birch", "slot": 7}),
    (
        ReadBackTaken,
        {
            "name": "wings",
            "version": 2,
            "fryer": "birch",
            "slot": 7,
            "read_by": "Kim",
            "checked_by": "Ana",
            "started_at": "2026-11-25T12:00:00+00:00",
            "matches": False,
            "figure_card": "K4T",
            "figure_read": "K5T",
            "mismatches": [
                {"stage": 2, "what": "time", "card": "12:30", "machine": "12:03", "slip": "two digits"}
            ],
        },
    ),
    (
        ReadBackTaken,
        {
            "name": "wings",
            "version": 2,
            "fryer": "birch",
            "slot": 7,
            "read_by": "Kim",
            "checked_by": "Ana",
            "started_at": "2026-11-25T12:00:00+00:00",
            "matches": False,
            "figure_card": "K4T",
            "figure_read": "K5T",
            "mismatches": [
                {"stage": 2, "what": "time", "card": "12:30", "machine": "12:03", "slip": "two digits"},
                {
                    "stage": 0,
                    "what": "setting",
                    "card": "900 ft",
                    "machine": "0 ft",
                    "slip": "setting",
                    "name": "Height",
                },
            ],
            "settings": [
                {"key": "vent", "name": "", "value": "runs on"},
                {"key": "own0", "name": "Height", "value": "0 ft"},
            ],
        },
    ),
    (
        ProgramReleased,
        {
            "program": "bone-in alder",
            "version": 5,
            "payload": PROGRAM,
            "waves": [["one"], ["two", "three"]],
            "most_below_frac": 0.02,
            "who": "Ana Vale",
        },
    ),
    (
        KitchenOpened,
        {"key": "east_gate", "name": "East Gate", "copy_of": "", "sent_here": False},
    ),
    (
        ForkSeen,
        {"key": "east_gate", "entry_number": 7, "hash_here": "a" * 64, "hash_sent": "b" * 64},
    ),
    (
        AnchorKept,
        {"key": "east_gate", "entry_number": 7, "text": "frywright-anchor-2 - East%20Gate 7 …"},
    ),
    (NameRemoved, {"refs": ["a" * 64], "by": "Ana Vale", "reason": "asked for it"}),
    (SignedOut, {"how": "anew", "mark": "a" * 64}),
    (
        ReleaseArrived,
        {
            "office_number": 41,
            "release_number": 40,
            "what": "started",
            "payload": PROGRAM,
            "who": "Ana Vale",
            "reason": "",
        },
    ),
    (
        ReleaseAnswered,
        {"arrived_number": 12, "what": "refused", "version": None, "reason": "no such fryer here"},
    ),
    (
        WaveTold,
        {"release_number": 12, "what": "started", "sites": ["one"], "who": "Ana Vale", "reason": ""},
    ),
    (
        WaveTold,
        {"release_number": 12, "what": "halted", "sites": [], "who": "Ana Vale", "reason": "oil smoked"},
    ),
    (
        Reading,
        {
            "name": "Bone-in, Alder",
            "thermometer": "K1",
            "core_c": 82.0,
            "limit_c": 73.9,
            "load": "bone_in alder",
            "units_count": 0.0,
            "fryer": "alder",
            "product": "bone_in",
            "who": "Kim",
            "checked": True,
            "program": "bone-in alder",
            "version": 3,
            "stages": "0123456789ab",
            "cut": "drum",
            "place": "wall",
            "load_kind": "half",
            "load_number": 2,
            "mass_kg": 0.11,
            "rest_core_c": 85.5,
            "rest_s": 180.0,
        },
    ),
    (
        ProgramProbed,
        {
            "name": "bone-in alder",
            "version": 3,
            "stages": "0123456789ab",
            "fryer": "alder",
            "product": "bone_in",
            "outcome": "meets",
            "chance_frac": 0.984,
            "coverage_frac": 0.95,
            "risk_frac": 0.05,
            "limit_c": 73.9,
            "low_k": 2.5,
            "readings": [4, 5, 9],
        },
    ),
    (CalibrationKept, {**CALIBRATION, "road": "lift"}),
    (LogKept, {"name": "log.csv", "sha256": "0" * 64, "size_bytes": 4711}),
    (CalibrationKept, CALIBRATION),
    (HoldStudied, {"name": "wings", "table": "repeat,minute,core_c\n", "result": "20 min"}),
    (
        SampleProved,
        {
            "name": "noon",
            "readings": "80 81 82",
            "outcome": "meets",
            "bound_c": 78.2,
            "limit_c": 74.0,
            "count": 3,
            "checked": True,
        },
    ),
]


@pytest.mark.parametrize(("cls", "payload"), WRITTEN, ids=lambda v: getattr(v, "KIND", ""))
def test_an_entry_is_written_as_it_was(cls, payload):
    """To the byte: the hash of an entry covers its canonical text."""
    assert canonical(cls.read(payload).payload()) == canonical(payload)


@pytest.mark.parametrize(
    ("cls", "payload", "place"),
    [
        (ProgramSaved, {**PROGRAM, "stages": [{**PROGRAM["stages"][0], "colour": 1}]}, "stages.0"),
        (ProgramSaved, {**PROGRAM, "stages": [{**PROGRAM["stages"][0], "set_c": 500.0}]}, "set is 500"),
        (ProgramSaved, {**PROGRAM, "short": {**SHORT, "margin_k": None}}, "short.margin_k"),
        (ProgramSaved, {**PROGRAM, "origin": "guessed"}, "origin"),
        (GapExplained, {"date": "2026-11-25", "lack": "salt", "words": "none left", "who": "Kim"}, "lack"),
        (CalibrationKept, {**CALIBRATION, "lid": "ajar"}, "lid"),
        (WaveTold, {"release_number": 1, "what": "begun", "sites": [], "who": "", "reason": ""}, "what"),
    ],
)
def test_a_part_that_does_not_fit_is_refused(cls, payload, place):
    """An unknown or impossible value inside a part is as wrong as one of the fact itself."""
    with pytest.raises(RecordError, match=place):
        cls.read(payload)


def test_programs_and_calibrations_of_version_one_are_read():
    """They knew no altitude, bird size, drip or program that was logged; all else stays."""
    late = ("altitude_m", "unit_mass_kg")
    old = {k: v for k, v in PROGRAM.items() if k not in late}
    assert ProgramSaved.read(old).payload() == {**PROGRAM, **dict.fromkeys(late)}
    release = {"program": "a", "version": 5, "payload": old, "waves": [], "most_below_frac": 0.1, "who": "x"}
    assert ProgramReleased.read(release).text.unit_mass_kg is None
    fitted = CalibrationKept.read({k: v for k, v in CALIBRATION.items() if k not in ("drip_frac", "program")})
    assert fitted.payload() == {**CALIBRATION, "drip_frac": None, "program": ""}
    assert fitted.calibration.cut == "thigh"


def test_programs_come_back_as_they_were_saved(kitchen):
    """Every program of the demo, with its stages; what a program is stored as is what tells it again."""
    for program in kitchen.programs:
        assert ProgramSaved.read(ProgramSaved.of(program).payload()).program == program


def test_a_simulation_keeps_every_byte(kitchen):
    """Its curves and words as other programs read them, with the stages that were asked."""
    program = kitchen.program("bone-in cedar")
    told = cook_told(ask(kitchen, CookRequest(program=program))).payload()
    assert told["stages"] == ProgramSaved.of(program).payload()["stages"]
    assert canonical(SimulationKept.read(told).payload()) == canonical(told)


@pytest.mark.parametrize(
    ("fact", "said"),
    [
        (KitchenSet(file="own.toml", text=""), ("own.toml", "")),
        (SlotChosen(name="wings", fryer="birch", slot=7), ("wings", "")),
        (ProgramSaved.read(PROGRAM), ("bone-in alder", "5")),
        (WaveTold(release_number=1, what="halted", sites=(), who="", reason="smoke"), ("", "")),
    ],
)
def test_a_list_of_entries_says_what_each_is_about(tmp_path, fact, said):
    """Its name where it has one, and its version."""
    store = Store.file(tmp_path / "a.db", now)
    hall.write(store, fact)
    assert about(store.entry(1)) == said
    store.close()
