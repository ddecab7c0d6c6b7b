"""Every language says every string shown to people."""

from __future__ import annotations

import re

import pytest

from tests.house.words import LANGUAGES, source_strings, translations


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_is_whole(language):
    """Every string shown to people has a translation with the same placeholders."""
    known = translations(language)
    missing = sorted(s for s in source_strings() if not known.get(s))
    assert missing == []
    for text, said in known.items():
        assert set(re.findall(r"{(\w+)}", text)) == set(re.findall(r"{(\w+)}", said)), text


@pytest.mark.parametrize("language", LANGUAGES)
def test_shown_strings_are_translated_as_well_when_built_at_run_time(kitchen, language):
    """Whatever the view translates for the demo's programs is in the language's file."""
    from frywright.rooms.cook.view import cook_view
    from frywright.trial.ask import CookRequest, ask

    known = translations(language)
    asked: set[str] = set()

    def note(text: str) -> str:
        asked.add(text)
        return text

    for program in kitchen.programs:
        for count in (None, 1.0):
            cook_view(ask(kitchen, CookRequest(program=program, units_count=count)), "us", note)
    missing = {
        s for s in asked if s not in known and not s.endswith("(heavy end)") and re.search(r"[a-z]{2}", s)
    }
    assert missing == set()
