"""Languages of the pages: gettext catalogues read from their text files."""

from __future__ import annotations

import gettext
import io
import tomllib
from collections.abc import Callable
from functools import cache

from frywright.model import tongues
from frywright.model.errors import FrywrightError
from frywright.model.tongues import Translate
from frywright.model.units import is_count


class Counted(str):
    """A text with a form for each count; which one is said follows from the values it is filled with."""

    of: str
    form: Callable[[int], str]

    def format(self, *args: object, **values: object) -> str:
        """The form that belongs to the count, filled."""
        text = str(values.get(self.of, ""))
        return self.form(int(text) if is_count(text) else 2).format(*args, **values)


@cache
def singulars() -> dict[str, str]:
    """Texts of the sources with a count that may be one, and how each reads then."""
    about = tongues.home().joinpath(f"{tongues.SOURCE}/language.toml").read_text("utf-8")
    return dict(tomllib.loads(about)["one"])


def counted_by(one: str, many: str) -> str:
    """Name of the value that counts: the last one before the place where both forms part."""
    parted = next((i for i, (a, b) in enumerate(zip(one, many, strict=False)) if a != b), len(one))
    return one[:parted].rpartition("{")[2].partition("}")[0]


@cache
def translator(language: str) -> Translate:
    """Translation function of a language; English is the source text. No text stays none, since a catalogue
    keeps its own head under it.
    """
    said, one = _catalogue(language), singulars()

    def translate(text: str) -> str:
        if text not in one:
            return said.gettext(text) if text else text
        found = Counted(said.ngettext(one[text], text, 2))
        found.of = counted_by(one[text], text)
        found.form = lambda count: said.ngettext(one[text], text, count)
        return found

    return translate


def _catalogue(language: str) -> gettext.NullTranslations:
    if language == tongues.SOURCE:
        return gettext.NullTranslations()
    from babel.messages.mofile import write_mo
    from babel.messages.pofile import read_po

    text = tongues.home().joinpath(f"{language}/frywright.po").read_text("utf-8")
    packed = io.BytesIO()
    write_mo(packed, read_po(io.StringIO(text), locale=language))
    packed.seek(0)
    return gettext.GNUTranslations(packed)


def explain(error: FrywrightError, language: str, system: str = "") -> str:
    """An error in a language and a kitchen's units."""
    return error.say(translator(language), system)
