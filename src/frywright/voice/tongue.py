"""Languages of the pages: gettext catalogues read from their text files."""

from __future__ import annotations

import gettext
import io
from functools import cache

from frywright.model import tongues
from frywright.model.errors import FrywrightError
from frywright.model.tongues import Translate


@cache
def translator(language: str) -> Translate:
    """Translation function of a language; English is the source text. No text stays none, since a catalogue
    keeps its own head under it.
    """
    if language == tongues.SOURCE:
        return str
    from babel.messages.mofile import write_mo
    from babel.messages.pofile import read_po

    text = tongues.home().joinpath(f"{language}/frywright.po").read_text("utf-8")
    packed = io.BytesIO()
    write_mo(packed, read_po(io.StringIO(text)))
    packed.seek(0)
    said = gettext.GNUTranslations(packed).gettext
    return lambda text: said(text) if text else text


def explain(error: FrywrightError, language: str, system: str = "") -> str:
    """An error in a language and a kitchen's units."""
    return error.say(translator(language), system)
