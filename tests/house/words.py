"""Every string shown to people, and what a language's file says for it."""

from __future__ import annotations

import ast
import re

from typer.main import get_command

from frywright.catalog import load
from frywright.cli.main import app
from frywright.cli.spoken import OWN, help_texts
from frywright.model.tongues import SOURCE, tongues
from tests.house.source import FILES, ROOT, nodes_of, tree_of


def told_sentences(tree: ast.Module) -> set[str]:
    """Whole sentences in a module that are neither docstrings nor parts of an error."""
    skipped: set[int] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            skipped.add(id(node.value))
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") in ("Problem", "InputError"):
            skipped |= {id(inner) for inner in ast.walk(node)}
    return {
        node.value
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant)
        and isinstance(node.value, str)
        and id(node) not in skipped
        and re.fullmatch(r"[A-Z{][^\n]* [^\n]*[.?]", node.value)
    }


def translations(language):
    """What a language's file says for each text."""
    from babel.messages.pofile import read_po

    with (ROOT / f"voice/locales/{language}/frywright.po").open("rb") as file:
        found = [m for m in read_po(file, locale=language) if m.id]
    plain = {m.id: m.string for m in found if not m.pluralizable}
    forms = [(m.id, m.string) for m in found if m.pluralizable]
    return plain | {
        said: form for ids, forms in forms for said, form in zip(ids, (forms[0], forms[-1]), strict=True)
    }


SAID = ("title", "why", "act", "text", "hazard", "question", "lines", "parts", "tools", "gear", "contains")


def texts_of(table):
    """What a table of the catalog says to people: texts, and of a choice its answer and its reason."""
    for key, value in table.items():
        if key == "choices":
            yield from (text for choice in value for text in choice[:2])
        elif isinstance(value, list):
            yield from (x for x in value if key in SAID and isinstance(x, str))
            for inner in value:
                yield from texts_of(inner) if isinstance(inner, dict) else ()
        elif key in SAID:
            yield value


def said_by(node) -> set[str]:
    """Texts the terminal says: one, or one of two."""
    parts = [node.body, node.orelse] if isinstance(node, ast.IfExp) else [node]
    return {n.value for n in parts if isinstance(n, ast.Constant)}


def setup_words() -> set[str]:
    """Titles that the set-up offers, and the words of its answers."""
    from frywright.rooms.cook import setup_read, setup_view

    offered = [text for rows in setup_view.offered(str).values() for _, text in rows]
    tables = (
        setup_view.ORIGIN,
        setup_view.ESTIMATE_WORDS,
        setup_view.MEASURE,
        setup_view.WHAT,
        setup_read.NAMES,
    )
    return {
        *offered,
        *(text for table in (*tables, setup_view.CLOCKS, setup_view.UNITS) for text in table.values()),
    }


def source_strings() -> set[str]:
    """Everything shown to people that must have a translation."""
    found: set[str] = set()
    for page in ROOT.rglob("*.html"):
        found |= {
            m[1] or m[2]
            for m in re.finditer(r'\b_\(\s*(?:"([^"]+)"|\'([^\']+)\')\s*\)', page.read_text("utf-8"))
        }
    for path in FILES:
        for node in nodes_of(path):
            if isinstance(node, ast.keyword) and node.arg in ("text", "sentence", "lead", "why"):
                found |= {
                    n.value
                    for n in ast.walk(node.value)
                    if isinstance(n, ast.Constant) and isinstance(n.value, str)
                }
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") in ("translate", "tr"):
                found |= {a.value for a in node.args if isinstance(a, ast.Constant)}
            if isinstance(node, ast.Call) and ast.unparse(node.func) in ("shop.say", "shop.tr"):
                found |= said_by(node.args[0])
    for path in (ROOT / "calibrate").glob("*.py"):
        if path.name != "table.py":  # its refusals are data errors, which stay in English
            found |= told_sentences(tree_of(path))
    found |= {cut.title for cut in load.cuts().values()} | setup_words()
    for folder in ("care", "procedures"):
        for path in load.files(folder):
            found |= set(texts_of(load.table(path)))
    found |= {rule["text"] for rule in load.table("standards/age_rules.toml")["rule"]}
    found |= {*help_texts(get_command(app)), *OWN}
    limits = load.table("standards/oil_limits.toml")["limit"]
    found |= {row[key] for row in limits for key in ("title", "status")}
    return {s for s in found if re.search(r"[a-z]{2}", s)}


LANGUAGES = [key for key in tongues() if key != SOURCE]
