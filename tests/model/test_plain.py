"""Views as plain values."""

from __future__ import annotations

import json
from dataclasses import dataclass
from enum import StrEnum

from frywright.model.plain import plain


class Word(StrEnum):
    GOOD = "good"


@dataclass(frozen=True, slots=True, kw_only=True)
class Inner:
    yield_: str
    word: Word = Word.GOOD


@dataclass(frozen=True, slots=True, kw_only=True)
class Outer:
    name: str
    rows: tuple[Inner, ...]
    by_name: dict[str, Inner]
    nothing: None = None


def test_a_view_is_written_field_by_field_in_its_order():
    """Nested views, sequences and mappings; a word of Python loses its underscore, a class stays a class."""
    view = Outer(name="a", rows=(Inner(yield_="71 %"),), by_name={"b_": Inner(yield_="2")})
    told = plain(view)
    assert list(told) == ["name", "rows", "by_name", "nothing"]
    assert told["rows"] == [{"yield": "71 %", "word": "good"}]
    assert told["by_name"] == {"b_": {"yield": "2", "word": "good"}}
    assert json.loads(json.dumps(view, default=plain)) == told
    assert plain(Inner) is Inner
    assert plain([1, None, "x"]) == [1, None, "x"]
