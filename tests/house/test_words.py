"""Every word of an error has its translation, and none is put together where no catalogue can hold it."""

from __future__ import annotations

import ast
import re
from functools import cache
from pathlib import Path

import pytest
from babel.messages.pofile import read_po

from frywright.model import errors
from frywright.model.errors import FrywrightError, spoken
from frywright.physics import ranges
from frywright.voice.tongue import singulars
from tests.house.source import FILES, ROOT, nodes_of
from tests.house.words import LANGUAGES, source_strings, translations

TEMPLATES: dict[str, tuple[int | str, ...]] = {
    "InputError": (2,),
    "Phrase": (0,),
    "Problem": ("what", "remedy"),
    "problem": (2, 3),
    "by_name": (1,),
    "given_words": (2, "wanted"),
    "another": (2,),
    **{
        name: (0,)
        for name, kind in vars(errors).items()
        if isinstance(kind, type)
        and issubclass(kind, FrywrightError)
        and name not in ("InputError", "DataError")
    },
}
"""Where each call takes a template."""
HAND_ON: dict[str, dict[str, tuple[int | str, ...]]] = {
    "plan/check.py": {"tell": (0, 1)},
    "tables/table.py": {"_refuse": (1, 2)},
    "plan/sales.py": {"_not_found": (0,)},
    "kitchens.py": {"refuse": (0, 1)},
    "vat.py": {"_plain": (3,)},
    "web/app.py": {"_turned_away": (3,)},
}
"""Functions of a module that hand a template on to an error or a problem."""
NAMES_A_FIELD: dict[str, tuple[int | str, ...]] = {
    "InputError": (0,),
    "one_of": (2, "name"),
    "given_words": (1,),
}
"""Where each call takes the name of a field."""
FIELDS = {
    "fryer",
    "product",
    "cut",
    "cut set",
    "coating",
    "duration",
    "until elapsed",
    "until left",
    "at most",
}
"""Names of fields that are made from a key where the error is raised."""
UNITS_AND_SIGNS = {"kg", "mm", "psi", "ft", "mm2", "m2", "oz", "gal", "min"}
WORD = re.compile(r"[A-Za-z]{2}")


def arguments(call: ast.Call, places: tuple[int | str, ...]):
    """The arguments of a call at some places."""
    for place in places:
        if isinstance(place, int) and len(call.args) > place:
            yield call.args[place]
        yield from (k.value for k in call.keywords if k.arg == place)


def constants(path: Path) -> dict[str, str]:
    """Texts that stand under a name in a module or in one of its classes."""
    return {
        target.id: node.value.value
        for node in nodes_of(path)
        if isinstance(node, ast.Assign | ast.AnnAssign)
        and isinstance(node.value, ast.Constant)
        and isinstance(node.value.value, str)
        for target in (node.targets if isinstance(node, ast.Assign) else [node.target])
        if isinstance(target, ast.Name)
    }


def texts(node: ast.expr, named: dict[str, str]):
    """Texts an argument may be, and None where it is put together."""
    if isinstance(node, ast.Constant):
        yield from [node.value] if isinstance(node.value, str) else []
    elif isinstance(node, ast.IfExp):
        yield from texts(node.body, named)
        yield from texts(node.orelse, named)
    elif isinstance(node, ast.Name):
        yield from [named[node.id]] if node.id in named else []
    elif isinstance(node, ast.JoinedStr | ast.BinOp | ast.Call):
        yield None


def fillings(call: ast.Call):
    """Words that fill a place of a template: constants, and what stands where a value is missing."""
    filled = [k.value for k in call.keywords if k.arg not in ("where", "unit", "file")]
    tables = [node for node in [*call.args, *filled] if isinstance(node, ast.Dict)]
    for node in [*filled, *(value for table in tables for value in table.values)]:
        parts = node.values if isinstance(node, ast.BoolOp) else [node]
        yield from (p.value for p in parts if isinstance(p, ast.Constant) and isinstance(p.value, str))


def worded(node: ast.expr) -> bool:
    """Whether a text put together has words of its own in it."""
    return any(
        isinstance(part, ast.Constant) and set(re.findall(r"[A-Za-z]\w+", str(part.value))) - UNITS_AND_SIGNS
        for part in (node.values if isinstance(node, ast.JoinedStr) else [])
    )


@cache
def error_texts() -> tuple[tuple[str, str | None], ...]:
    """Every text of an error and its place, read once."""
    return tuple(_error_texts())


def _error_texts():
    """Every text of an error and its place; None where it is put together."""
    for path in FILES:
        named = constants(path)
        here = next((calls for end, calls in HAND_ON.items() if str(path).endswith(end)), {})
        for call in (n for n in nodes_of(path) if isinstance(n, ast.Call)):
            name = getattr(call.func, "id", "") or getattr(call.func, "attr", "")
            place = f"{path.relative_to(ROOT)}:{call.lineno}"
            for node in arguments(call, (TEMPLATES | here).get(name, ())):
                yield from ((place, text) for text in texts(node, named))
            yield from ((place, text) for text in fillings(call) if name in TEMPLATES)
            if name == "__init__":
                parts = [node for node in call.args if not isinstance(node, ast.Call)]
                yield from ((place, text) for node in parts for text in texts(node, named))
            if name not in NAMES_A_FIELD:
                continue
            for node in arguments(call, NAMES_A_FIELD[name]):
                if isinstance(node, ast.Call):
                    continue
                yield from (
                    (place, t and spoken(t)) for t in texts(node, named) if not (t or "").startswith("-")
                )
            for node in arguments(call, (1,) if name == "InputError" else ()):
                found = [] if isinstance(node, ast.Call | ast.BinOp | ast.JoinedStr) else texts(node, named)
                yield from ((place, text) for text in found)
                if worded(node):
                    yield place, None
    yield from (("model/kitchen.py", name) for name in FIELDS)
    for rows in (value for value in vars(ranges).values() if isinstance(value, dict)):
        yield from (("physics/ranges.py", row[2]) for row in rows.values() if isinstance(row, tuple))


def test_what_fills_an_error_goes_in_by_its_own_name():
    """``values=`` would be one more value, and the template would miss those within."""
    calls = [(path, node) for path in FILES for node in nodes_of(path) if isinstance(node, ast.Call)]
    made = [(path, c) for path, c in calls if getattr(c.func, "id", "").endswith("Error")]
    assert len(made) > 500
    assert [(str(p), c.lineno) for p, c in made if "values" in {k.arg for k in c.keywords}] == []


def test_no_error_is_put_together_of_pieces():
    """A text built where it is raised could be said in one language only."""
    assert sorted({place for place, text in error_texts() if text is None}) == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_error_is_translated(language):
    """Templates, names of fields and words for a value."""
    known = translations(language)
    found = {text for _, text in error_texts() if text and WORD.search(re.sub(r"{\w+}", "", text))}
    assert len(found) > 500
    assert sorted(text for text in found if not known.get(text)) == []


MACHINES = ("web/pages/api.py", "web/pages/live.py", "web/watch.py", "cli/")
"""What programs read of the API and its metrics, and the terminal's help, which ``tests/cli`` asks for."""
SENTENCE = re.compile(r"[A-Z{]\S* \S+ .*[a-z}]\.")


def sentences():
    """Every whole sentence that stands in the code of a room or below as a text of its own."""
    for path in (p for p in FILES if not any(part in str(p) for part in MACHINES)):
        pieces = {id(v) for n in nodes_of(path) if isinstance(n, ast.JoinedStr) for v in n.values}
        pieces |= {id(n.value) for n in nodes_of(path) if isinstance(n, ast.Expr)}
        yield from (
            node.value
            for node in nodes_of(path)
            if isinstance(node, ast.Constant) and isinstance(node.value, str)
            if id(node) not in pieces and SENTENCE.fullmatch(node.value)
        )


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_of_a_note_is_translated(language):
    """Also where a text is chosen first and said later, so that no call shows it."""
    known, found = translations(language), set(sentences())
    assert len(found) > 500
    assert sorted(text for text in found if not known.get(text)) == []


DIALECT = re.compile(
    r"\b(reckon\w*|told|speaks? (of|against)|held|tells? (of|no|a step|the board|the lift))\b", re.IGNORECASE
)
NOT_DIALECT = re.compile(
    r"told apart|hand-held|oil held at|the shelf held|having been told|were told but never|^held$"
    r"|what is held is served|discarded or held|^held, discarded|decision=held"
)
"""Told of people, and held of heat, stock and food put on hold, are plain words."""
LONGEST_WORDS = 26


def test_sentences_are_short_and_free_of_house_dialect():
    """No sentence shown to people is longer than the style allows, or uses a word it forbids
    (docs/style-of-words.md).
    """
    shown = [re.sub(r"{\w+}", "it", text) for text in translations("es")]
    assert len(shown) > 2000
    found = [text for text in shown if DIALECT.search(text) and not NOT_DIALECT.search(text)]
    assert found == []
    sentences = [part for text in shown for part in re.split(r"(?<=[.?!:;])\s+", text)]
    assert [part for part in sentences if len(part.split()) > LONGEST_WORDS] == []


VENT = re.compile(r"\bvent(s|ed|ing)?\b", re.IGNORECASE)
OTHER_VENTS = re.compile(
    r"purga|descarga|ventilaci|salida en silencio|(?<!válvula de )\balivio", re.IGNORECASE
)


def test_the_vent_has_one_word_in_spanish():
    """*Escape* on the card and everywhere; *alivio* is the relief valve's, which nobody touches."""
    known = {text: said for text, said in translations("es").items() if VENT.search(text)}
    assert len(known) > 50
    assert [said for text, said in known.items() if OTHER_VENTS.search(said)] == []


COUNT = re.compile(r"{(\w+)} (?:[a-z-]+ )?([a-z]{2,}s|people)\b")
VERBS = set(
    re.findall(
        r"\w+",
        "breaks changes collects counts does draws drains ends fails falls fits has holds is its judges lacks"
        " less loses moves needs overlaps passes pays peaks pushes reaches reads rises runs says shares"
        " sends simmers starts stays takes tells this waits was",
    )
)
NEVER_ONE = {
    *(("most", noun) for noun in ("letters", "bytes", "digits", "slots", "weights", "points")),
    *((name, "days") for name in ("days", "whole")),  # the horizon, or days with tenths
    *((name, "points") for name in ("low", "growth", "apart", "far")),  # tenths of a per cent
    *((name, "times") for name in ("times", "ratio", "longer")),  # ratios
    *((name, "loads") for name in ("samples", "bound_frac")),  # a proof's thousands, a share of them
    *((name, "readings") for name in ("read", "each", "needed")),  # a proof takes dozens
    *((name, "slots") for name in ("slots", "longest")),  # shape of an array
    *((name, name) for name in ("items", "series")),
    *((name, "lines") for name in ("count", "lines")),  # a log of one line is refused
    ("count", "readings"),  # a sample or a pattern takes several
    ("count", "entries"),  # a block of five
    ("count", "rows"),  # more than a paper prints
    ("count", "actions"),  # more than may be
    ("count", "turns"),  # two at once
    ("hours", "hours"),
    ("digits", "digits"),
    ("files", "files"),
    ("least", "pieces"),
    ("pieces", "pieces"),  # of several heads
    ("years", "years"),
    ("pull_on", "cases"),
    ("channel", "gaps"),
    ("swing_k", "programs"),
}
"""A figure and what is counted, where it is a fixed figure over one, or shown with tenths."""


def miscounted(texts):
    """Texts with a count before what is counted, and no form for one."""
    known = {*singulars(), *singulars().values()}
    return sorted(
        text
        for text in texts
        if text not in known
        for name, noun in COUNT.findall(text)
        if noun not in VERBS and (name, noun) not in NEVER_ONE
    )


def test_a_count_that_may_be_one_has_a_form_for_it():
    """Its singular stands in ``locales/en``; else the count stands behind its word."""
    every = {*translations("es"), *source_strings(), *(text for _, text in error_texts() if text)}
    assert miscounted(every) == []
    assert miscounted(["{n} hot loads", "{n} people", "Loads: {n}"]) == ["{n} hot loads", "{n} people"]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_count_has_its_forms_in_every_language(language):
    """The same texts as in the sources, and one reads otherwise than several."""
    with (ROOT / f"voice/locales/{language}/frywright.po").open("rb") as file:
        forms = {m.id[1]: m.id[0] for m in read_po(file, locale=language) if m.id and m.pluralizable}
    assert forms == singulars()
