"""Every kind of entry has words of its own where people read the record."""

from __future__ import annotations

from frywright.ledger.facts.fact import Fact
from frywright.rooms.records.kinds import KINDS, kind_choices, kind_word
from frywright.rooms.records.sheets import SHEETS
from frywright.voice.tongue import translator
from tests.ledger.test_newer_payloads import NEWER


def kinds(cls: type[Fact] = Fact) -> set[str]:
    """Kinds of every fact, also of those made from another."""
    own = {cls.KIND} if hasattr(cls, "KIND") else set()
    return own.union(*(kinds(sub) for sub in cls.__subclasses__()))


def test_no_kind_is_left_out_and_none_is_invented():
    """As many as there are facts, each in words of both languages, no two the same."""
    assert len(NEWER) > 5 and kinds() == set(KINDS)
    spanish = translator("es")
    assert not any("_" in word for word in KINDS.values())
    assert [word for word in KINDS.values() if spanish(word) == word] == []
    assert len(set(KINDS.values())) == len({spanish(word) for word in KINDS.values()}) == len(KINDS)


def test_every_table_of_the_pack_has_its_title():
    """Of those on paper; their names are no kinds of entries, and are said in Spanish too."""
    assert [s.name for s in SHEETS if s.paper and translator("es")(s.name) == s.name] == []


def test_a_kind_of_a_newer_version_is_shown_in_plain_letters():
    """And the choices stand in the order of their words."""
    assert (kind_word("sales_file"), kind_word("of_tomorrow")) == ("sales read in", "of tomorrow")
    assert kind_word("sales_file", translator("es")) == "archivo de ventas"
    words = [word for _, word in kind_choices(translator("es"))]
    assert words == sorted(words)
