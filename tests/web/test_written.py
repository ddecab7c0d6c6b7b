"""Views written as JSON: the bytes of the standard library."""

from __future__ import annotations

import json
import random
from dataclasses import dataclass
from enum import StrEnum

import pytest

from frywright.model.plain import plain
from frywright.rooms.cook.view import cook_view
from frywright.trial.ask import CookRequest, ask
from frywright.trial.kitchens import demo_kitchen
from frywright.voice.tongue import translator
from frywright.web.written import view_json, written


class Word(StrEnum):
    GOOD = "good"


@dataclass(frozen=True, slots=True)
class Told:
    yield_: object
    more: object = None


def by_library(value: object) -> str:
    """What the standard library writes of a view's plain values."""
    return json.dumps(plain(value), ensure_ascii=False, allow_nan=False, separators=(",", ":"))


@pytest.mark.parametrize("system", ["us", "metric"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_every_cook_of_the_demo_is_written_as_the_library_writes_it(system, language):
    """All programs, in both languages and units."""
    kitchen = demo_kitchen()
    for program in kitchen.programs:
        view = cook_view(ask(kitchen, CookRequest(program=program)), system, translator(language))
        assert view_json(view).body == b'{"ok":true,' + by_library(view).encode()[1:]


def test_numbers_of_any_size_are_written_as_the_library_writes_them():
    """Drawn from all powers of ten, long lists and short ones, tuples and mixtures."""
    dice = random.Random(4)
    for _ in range(3000):
        numbers = [
            dice.choice([1, -1]) * dice.random() * 10.0 ** dice.randint(-9, 18)
            for _ in range(dice.randint(0, 12))
        ]
        assert written(numbers) == by_library(numbers)
        assert written([round(n, 2) for n in numbers]) == by_library([round(n, 2) for n in numbers])
    edges = [0.0, -0.0, 1e-4, 9.9e-5, 1e-5, 9.9e-6, 1e16, 9999999999999998.0, 5e-324, 1.7e308, 0.1, 100000.0]
    assert written(edges) == by_library(edges)
    assert written((*edges, 1, True, None)) == by_library((*edges, 1, True, None))


@pytest.mark.parametrize("number", [float("nan"), float("inf"), float("-inf")])
def test_a_number_that_is_none_is_refused(number):
    """Alone and in a curve."""
    for value in (number, [number] * 20, Told(yield_=number)):
        with pytest.raises(ValueError):
            written(value)


def test_words_and_nests_are_written_as_the_library_writes_them():
    """Quotes, signs, emptiness, a word that is a class of its own, mappings."""
    view = Told(
        yield_={'a"b\\\n\x00é': [], "b": {}, "c": (), "d": Word.GOOD},
        more=[Told(yield_="→ °F \u2028"), [[1, 2.5], []], True, None, 12345678901234567890],
    )
    assert written(view) == by_library(view)
