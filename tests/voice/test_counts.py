"""A count that may be one is said in the form of the language, whoever fills the text."""

from __future__ import annotations

from shutil import copytree

import pytest

from frywright.model import tongues
from frywright.model.errors import InputError, Phrase
from frywright.model.findings import say
from frywright.voice.tongue import counted_by, explain, singulars, translator


@pytest.mark.parametrize(
    ("language", "one", "several"), [("en", "1 piece", "2 pieces"), ("es", "1 pieza", "2 piezas")]
)
def test_both_forms_from_every_filler(language, one, several):
    """A text filled on a page, of a note, of a phrase in an error: as a number, as text, and as 1.0."""
    tr, text = translator(language), "{pieces} pieces"
    assert [tr(text).format(pieces=n) for n in (1, "1", 2, "2")] == [one, one, several, several]
    assert [say(text, {"pieces": float(n)}, translate=tr) for n in (1, 2)] == [one, several]
    assert [Phrase(text, {"pieces": n}).say(tr) for n in (1, 2)] == [one, several]


def test_an_error_says_one_letter():
    """Also where the phrase is the value that was refused."""
    error = InputError("password", Phrase("{count} letters", {"count": 1}), "at least 10 letters")
    assert explain(error, "en") == "password is 1 letter; it must be at least 10 letters."
    assert "1 letra;" in explain(error, "es")


def test_none_tenths_and_words_take_the_form_of_several():
    """Nothing, one and a half, a thousand with its mark, and no figure at all."""
    tr = translator("en")
    assert [tr("{n} days").format(n=n) for n in (0, "1.5", "1,001", "–", -1)] == [
        "0 days",
        "1.5 days",
        "1,001 days",
        "– days",
        "-1 days",
    ]


def test_the_count_is_the_figure_before_the_place_where_the_forms_part():
    """Of several figures in a text, that one decides; a text without forms stays as it is."""
    assert counted_by("{n} of {every} load gone", "{n} of {every} loads gone") == "every"
    assert counted_by("{n} piece", "{n} pieces") == "n"
    said = translator("en")("{n} of {every} loads since the filter turn")
    assert said.format(n=1, every=2) == "1 of 2 loads since the filter turn"
    assert said.format(n=1, every=1) == "1 of 1 load since the filter turn"
    assert all(counted_by(one, many) in many for many, one in singulars().items())


def test_a_language_has_as_many_forms_as_it_takes(tmp_path, monkeypatch):
    """Polish counts one, two to four, and five: the rule stands in the head of its file (GNU gettext manual,
    "Plural forms").
    """
    place = tmp_path / "locales"
    copytree(tongues.home(), place)
    (place / "pl").mkdir()
    (place / "pl/language.toml").write_text('name = "Polski"\ndecimal = ","\n', "utf-8")
    (place / "pl/frywright.po").write_text(
        'msgid ""\nmsgstr ""\n"Content-Type: text/plain; charset=UTF-8\\n"\n'
        '"Plural-Forms: nplurals=3; plural=(n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20)'
        ' ? 1 : 2);\\n"\n\n'
        'msgid "{n} day"\nmsgid_plural "{n} days"\nmsgstr[0] "{n} dzień"\nmsgstr[1] "{n} dni"\n'
        'msgstr[2] "{n} dni."\n',
        "utf-8",
    )
    monkeypatch.setattr(tongues, "home", lambda: place)
    translator.cache_clear()
    said = translator("pl")("{n} days")
    translator.cache_clear()
    assert [said.format(n=n) for n in (1, 3, 5)] == ["1 dzień", "3 dni", "5 dni."]
