"""Languages of the pages: gettext catalogues read from their text files."""

from __future__ import annotations

import gettext
import io
from collections.abc import Callable
from functools import cache
from importlib import resources

from frywright.model.errors import BrokenOffError, FrywrightError, InputError
from frywright.model.tongues import SOURCE


@cache
def translator(language: str) -> Callable[[str], str]:
    """Translation function of a language; English is the source text."""
    if language == SOURCE:
        return str
    from babel.messages.mofile import write_mo
    from babel.messages.pofile import read_po

    text = resources.files("frywright").joinpath(f"voice/locales/{language}/frywright.po").read_text("utf-8")
    packed = io.BytesIO()
    write_mo(packed, read_po(io.StringIO(text), locale=language))
    packed.seek(0)
    return gettext.GNUTranslations(packed).gettext


def explain(error: FrywrightError, language: str, system: str = "") -> str:
    """An error in a language and a kitchen's units; kinds without a template stay in English."""
    if isinstance(error, InputError | BrokenOffError):
        return error.say(translator(language), system)
    return str(error)
