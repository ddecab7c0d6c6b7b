"""Errors are templates: one message, said in any language and in the units of whoever reads it."""

from __future__ import annotations

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.model.errors import (
    AccessError,
    Amount,
    BrokenOffError,
    DataError,
    InputError,
    Phrase,
    RecordError,
    SolveError,
)
from frywright.trial.kitchens import demo_text
from frywright.voice.tongue import explain, translator


def test_every_class_of_error_speaks_both_languages():
    """English as text, Spanish by the catalogue; values keep their place."""
    replaced = RecordError("Entry {number} does not exist; nothing was written.", number=7)
    assert str(replaced) == explain(replaced, "en") == "Entry 7 does not exist; nothing was written."
    assert explain(replaced, "es") == "La anotación 7 no existe; no se escribió nada."
    refused = AccessError("{name} as {role} may not do this.", name="Ana", role="crew")
    assert explain(refused, "es") == "Ana, como equipo, no puede hacer esto."
    unfinished = SolveError("the march did not reach the end of the program", {"steps": 3})
    assert unfinished.report == {"steps": 3}
    assert explain(unfinished, "es") == "el cálculo no llegó al final del programa"
    assert "ZeroDivisionError" in explain(BrokenOffError(ZeroDivisionError()), "es")


def test_a_cause_within_a_message_speaks_the_same_language_and_units():
    """A phrase, an amount or an error as a value is said like the message around it."""
    cause = InputError("oil", 300.0, "{low_c} to {high_c}", unit="c", low_c=100.0, high_c=230.0)
    around = RecordError("{path} is not a backup of ours: {cause}", path="a.zip", cause=cause)
    assert explain(around, "en", "us") == (
        "a.zip is not a backup of ours: oil is 572 °F; it must be 212 °F to 446 °F."
    )
    assert explain(around, "es", "metric") == (
        "a.zip no es una copia nuestra: aceite: 300.0 °C; debe ser de 100.0 °C a 230.0 °C."
    )
    letters = InputError("password", Phrase("{count} letters", {"count": 3}), "given")
    assert explain(letters, "es").startswith("contraseña: 3 letras; debe ser")
    assert Amount(0.5).say(str) == "0.5"
    assert Amount(100.0, "c").say(str) == "100.0 °C (212 °F)"


def test_a_name_of_a_field_is_said_in_words():
    """An identifier is no word; an option and a key of a file stay as they are typed."""
    error = InputError("oil_mass", 1.0, "{low_kg} to {high_kg}", low_kg=2.0, high_kg=200.0)
    assert str(error).startswith("oil mass is 1.0;")
    assert str(InputError("--store", "x", "a file that exists")).startswith("--store is x;")


@pytest.mark.parametrize("language", ["en", "es"])
def test_problems_of_a_kitchen_file_keep_line_and_caret(language):
    """What and remedy are said in the language; the line is the file's own, a caret stands under the key."""
    text = demo_text().replace("altitude_ft = 5420", 'altitude_ft = "high"')
    assert text != demo_text()
    with pytest.raises(DataError) as found:
        parse_kitchen(text, "mine.toml")
    said = explain(found.value, language, "us").splitlines()
    number = next(n for n, line in enumerate(text.splitlines(), 1) if line.startswith("altitude_ft"))
    assert said[0].startswith(f"mine.toml:{number}: altitude_ft ")
    assert said[1] == '    altitude_ft = "high"' and said[2] == "    ^"
    must = {"en": "  It must be a number without quotes.", "es": "  Debe ser un número sin comillas."}
    assert said[3] == must[language]


def test_a_value_that_is_empty_stays_empty_in_every_language():
    """The empty text stands for the head of a catalog of translations, which nobody is to read."""
    for language in ("en", "es"):
        told = Phrase("{what} is {value}", {"what": "", "value": 3}).say(translator(language))
        assert "\n" not in told and "Content-Type" not in told
        assert told.strip().endswith("3")
