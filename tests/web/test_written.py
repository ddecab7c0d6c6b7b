"""Views written as JSON say what their plain values say."""

from __future__ import annotations

import json
from dataclasses import dataclass
from enum import StrEnum

import pytest

from frywright.model.plain import plain
from frywright.rooms.cook.view import cook_view
from frywright.trial.ask import CookRequest, ask
from frywright.trial.kitchens import demo_kitchen
from frywright.voice.tongue import translator
from frywright.web.written import view_json


class Word(StrEnum):
    GOOD = "good"


@dataclass(frozen=True, slots=True)
class Told:
    yield_: object
    more: object = None


def by_library(view: object) -> object:
    """What the standard library writes and reads of a view's plain values."""
    return json.loads(json.dumps({"ok": True, **plain(view)}, allow_nan=False))


@pytest.mark.parametrize(("system", "language"), [("us", "en"), ("metric", "es")])
def test_every_cook_of_the_demo_says_what_its_view_says(system, language):
    """All programs, in both languages and units."""
    kitchen = demo_kitchen()
    for program in kitchen.programs:
        view = cook_view(ask(kitchen, CookRequest(program=program)), system, translator(language))
        assert json.loads(view_json(view).body) == by_library(view)


def test_words_nests_and_numbers_of_any_size_are_kept():
    """Quotes, signs, emptiness, a word that is a class of its own, mappings; each number to its last bit."""
    numbers = [0.0, -0.0, 1e-5, 9.9e-6, 1e16, 9999999999999998.0, 5e-324, 1.7e308, 0.1, 100000.0]
    view = Told(
        yield_={'a "b"\n': ("°F · ñ", "", Word.GOOD), "none": {}, "0": [[], [True, None, 1, -2.5]]},
        more=(Told(yield_=numbers), Told(yield_=1)),
    )
    assert json.loads(view_json(view).body) == by_library(view)
    assert json.loads(view_json(view).body)["yield"]['a "b"\n'] == ["°F · ñ", "", "good"]


def test_a_number_that_is_none_is_no_json():
    """A page fails loudly on it, instead of drawing it as nothing."""
    for value in (float("nan"), [float("inf")] * 20):
        with pytest.raises(ValueError, match="not finite"):
            json.loads(view_json(Told(yield_=value)).body, parse_constant=not_finite)


def not_finite(word: str) -> float:
    raise ValueError(f"not finite: {word}")
