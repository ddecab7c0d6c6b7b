"""Every fact keeps its payload: written, read, older versions; a missing or unknown field is refused."""

from __future__ import annotations

import dataclasses
import datetime as dt
import importlib
import pkgutil

import pytest

from frywright.ledger import facts
from frywright.ledger.checking import WITH_FILES
from frywright.ledger.facts.fact import Fact, kept
from frywright.ledger.facts.probing import CaseStep, Reading
from frywright.ledger.store import Store
from frywright.model.entry import Entry
from frywright.model.errors import RecordError
from frywright.rooms import hall
from frywright.rooms.clock import now
from frywright.rooms.records.pack import gaps, gather

MOMENT = dt.datetime(2026, 11, 2, 12, tzinfo=dt.UTC)
OLD_READING = {
    "name": "alder 11:04",
    "thermometer": "P1",
    "core_c": 74.0,
    "limit_c": 73.9,
    "load": "alder 11:04",
    "units_count": 0.0,
}


@pytest.fixture
def store(tmp_path):
    return Store.file(tmp_path / "f.db", now)


def test_a_fact_comes_back_as_it_was_written(store):
    """Written, stored, read: the same fact, and the payload has its fields and no others."""
    step = CaseStep(case_number=3, step="reprobe", who="Ana", words="", core_c=80.0, limit_c=75.0, meets=True)
    hall.write(store, step, MOMENT)
    (item,) = store.entries()
    assert set(item.entry.payload) == {"case_number", "step", "who", "words", "core_c", "limit_c", "meets"}
    (found,) = store.facts(CaseStep)
    assert found.fact == step
    assert (found.number, found.happened_at) == (1, MOMENT)
    assert store.fact(1, CaseStep) == found
    assert store.fact(1, Reading) is None


def test_a_reading_of_version_one_is_read(store):
    """Entries written before fryer, product and check were known are read; what they did not say is None."""
    with store.writing() as writer:
        writer.add(Entry(kind="probe_reading", happened_at=MOMENT, author="x", payload=OLD_READING))
    (found,) = store.facts(Reading)
    assert (found.fact.core_c, found.fact.fryer, found.fact.checked) == (74.0, None, None)
    assert found.fact.payload() == OLD_READING


def test_an_old_reading_counts_as_unchecked(store, kitchen):
    """A reading that does not say whether its thermometer was checked is a gap of the pack, not silence."""
    with store.writing() as writer:
        writer.add(Entry(kind="probe_reading", happened_at=MOMENT, author="x", payload=OLD_READING))
    day = MOMENT.date()
    assert any("without a valid check" in gap for gap in gaps(kitchen, gather(store, kitchen, day, day)))


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"colour": "brown"}, "colour"),
        ({"core_c": None}, "core_c"),
        ({"core_c": "hot"}, "core_c"),
        ({"thermometer": 7}, "thermometer"),
    ],
)
def test_a_payload_that_does_not_fit_is_refused(change, words):
    """An unknown field, a missing value, another type: the error names kind and field."""
    with pytest.raises(RecordError, match=rf"probe_reading.*{words}"):
        Reading.read({**OLD_READING, **change})


def test_a_missing_field_is_refused():
    """Every field of version 1 must be there, when read and when made."""
    short = {k: v for k, v in OLD_READING.items() if k != "limit_c"}
    with pytest.raises(RecordError, match="limit_c"):
        Reading.read(short)
    with pytest.raises(TypeError):
        Reading(**short)


def test_an_entry_of_another_kind_is_refused(store):
    """A reading is not a case."""
    hall.write(store, Reading(**OLD_READING), MOMENT)
    with pytest.raises(RecordError, match="Entry 1 is of kind probe_reading, not deviation_step"):
        kept(store.entry(1), CaseStep)


def test_a_fact_of_wrong_types_is_not_written(store):
    """What a reader would refuse is not stored either."""
    with pytest.raises(Exception, match=r"core_c|float"):
        hall.write(store, dataclasses.replace(Reading(**OLD_READING), core_c="hot"))
    assert list(store.entries()) == []


FACTS = [
    cls
    for info in pkgutil.iter_modules(facts.__path__, f"{facts.__name__}.")
    for cls in vars(importlib.import_module(info.name)).values()
    if isinstance(cls, type) and issubclass(cls, Fact) and cls is not Fact and cls.__module__ == info.name
]


def test_every_fact_that_names_files_is_looked_after():
    """Check and copy go by this list; a fact left out of it would lose its files unseen."""
    assert {fact for fact in FACTS if fact.FILES} == set(WITH_FILES)


def test_every_kind_has_one_fact():
    """Kinds are plain words, each with one frozen class that says what it is."""
    kinds = [f.KIND for f in FACTS]
    assert len(kinds) == len(set(kinds)) >= 5
    assert all(kind.replace("_", "").isalpha() for kind in kinds)
    assert all(f.__doc__ and f.__dataclass_params__.frozen for f in FACTS)
