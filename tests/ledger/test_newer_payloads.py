"""Kinds that came with the facts: each would be written again byte for byte, and no kind is left out."""

from __future__ import annotations

import pytest

from frywright.ledger.facts.care import ReportAttached
from frywright.ledger.facts.cook import SimulationKept
from frywright.ledger.facts.day import FilesDropped, ItemMapped, SalesPosted, SalesWaiting
from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.facts.oil import MeterChecked
from frywright.ledger.facts.people import AccountLinked, PlaceNamed, RuleAnswered, SignedIn, SignInsRefused
from frywright.ledger.facts.probing import HoldRead, LookedBack, ThermometerChecked
from frywright.model.entry import canonical
from tests.ledger.test_facts import FACTS
from tests.ledger.test_facts_cook import WRITTEN
from tests.ledger.test_old_payloads import OLD

SHA = "9f" * 32
NEWER = [
    (
        ReportAttached,
        {"of_number": 7, "name": "lab.pdf", "sha256": SHA, "size_bytes": 900, "who": "Ana Vale"},
    ),
    (
        SalesWaiting,
        {"name": "s.csv", "sha256": SHA, "size_bytes": 900, "reason": "no date", "left_out": False},
    ),
    (
        RuleAnswered,
        {
            "subject": "pressure_fryer",
            "jurisdiction": "spain",
            "years_count": 18,
            "hold_c": None,
            "said_by": "City labour office, Ona Ruiz",
            "said_on": "2026-11-20",
            "words": "letter 12 of 2026-11-20",
            "who": "Ana Vale",
        },
    ),
    (ItemMapped, {"item": "Honey sauce, cup", "pieces": ["tenders 3"], "who": "Ana Vale"}),
    (
        SalesPosted,
        {
            "till": "till 1",
            "lines": [
                {
                    "line": "17-1",
                    "at": "2026-11-02T18:04:00Z",
                    "item": "Bucket",
                    "quantity_n": 2.0,
                    "order": "17",
                    "kind": "sale",
                }
            ],
        },
    ),
    (
        FilesDropped,
        {
            "before": "2024-11-02",
            "names": ["a.csv"],
            "who": "Ana Vale",
            "second": "Kim Ode",
            "reason": "over",
        },
    ),
    (
        EntriesDropped,
        {
            "term": "loads",
            "before": "2024-11-02",
            "stretches": [[2, 6], [8, 8]],
            "entries_count": 6,
            "digest": SHA,
            "who": "Ana Vale",
            "second": "Kim Ode",
            "reason": "over",
        },
    ),
    (
        MeterChecked,
        {
            "date": "2026-11-02",
            "low_known_pct": 8.0,
            "low_read_pct": 9.0,
            "high_known_pct": 24.0,
            "high_read_pct": 23.5,
            "meter": "M1",
            "who": "Ana Vale",
            "key": "k1",
        },
    ),
    (SignedIn, {"how": "pin", "device": "line", "mark": ""}),
    (AccountLinked, {"name": "Kim Ode", "mark": SHA, "by": "Ana Vale", "reason": "works for us"}),
    (SignInsRefused, {"name": "Kim Ode", "device": "line", "tries_count": 5}),
    (PlaceNamed, {"address": "3 Mill Lane", "permit": "F-17", "operator": "Ford End", "who": "Ana Vale"}),
    (
        ThermometerChecked,
        {
            "name": "T1",
            "thermometer": "T1",
            "atmosphere_pa": 83000.0,
            "boiling_point_c": 94.6,
            "outcome": "passes",
            "ice_c": 0.1,
        },
    ),
    (
        HoldRead,
        {
            "kept_in": "cabinet",
            "product": "bone_in",
            "core_c": 61.0,
            "limit_c": 57.2,
            "thermometer": "T1",
            "checked": True,
            "corrected_c": None,
            "who": "Ana Vale",
        },
    ),
    (
        LookedBack,
        {
            "name": "T1",
            "thermometer": "T1",
            "doubts": [
                {
                    "entry": 9,
                    "read_c": 75.0,
                    "corrected_c": 72.8,
                    "limit_c": 73.9,
                    "in_doubt": True,
                    "load": "alder 11:04",
                    "units_count": 16.0,
                }
            ],
        },
    ),
]
"""One literal payload of each, as it stands in a store."""


@pytest.mark.parametrize(("cls", "payload"), NEWER, ids=lambda x: getattr(x, "KIND", ""))
def test_newer_entries_keep_their_bytes(cls, payload):
    """Same keys, same values, same explicit nulls."""
    assert canonical(cls.read(payload).payload()) == canonical(payload)


def test_every_kind_has_a_literal_payload():
    """A new fact brings its own; a simulation's, with its curves, is read in ``test_facts_cook``."""
    there = {cls.KIND for cls, _ in (*OLD, *WRITTEN, *NEWER)} | {SimulationKept.KIND}
    assert {cls.KIND for cls in FACTS} == there
