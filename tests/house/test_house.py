"""Rules of the house: units in names, sizes, docs, sources, words, translations."""

from __future__ import annotations

import ast
import dataclasses
import importlib
import importlib.util
import inspect
import pkgutil
import re
import tomllib
import typing
from functools import cache
from pathlib import Path

import pytest
from typer.main import get_command

import frywright
from frywright.catalog import check, load
from frywright.cli.main import app
from frywright.cli.spoken import OWN, help_texts
from frywright.model.tongues import SOURCE, tongues
from frywright.model.units import COUNTS, LB, suffix_of
from frywright.trial.kitchens import demo_kitchen

ROOT = Path(frywright.__file__).parent
FILES = sorted(p for p in ROOT.rglob("*.py"))
LONGEST_MODULE, LONGEST_FUNCTION, MOST_PARAMETERS = 500, 60, 8
PURE_NUMBERS = {
    "sensitivity",
    "value",
    "change",
    "unmatched",
    "passes",
    "grading",
    "factor",
    "offset",
    "steps",
    "rejected",
}
PURE_NUMBERS |= {
    "sd",
    "low",
    "high",
    "before",
    "rms",
    "misfit",
    "scores",
    "least_scores",
}  # in the unit of what they describe
PURE_NUMBERS |= {
    "oil",
    "gauge",
    "core",
    "surface",
    "set",
    "values",
    "cores",
    "less_change",
    "more_change",
    "money",
}
# of a picture or a table, in people's units, whose sign stands beside them
PURE_NUMBERS |= {"mid", "halves", "hours", "money_sd", "causes", "filter_points"}
PURE_NUMBERS |= {"top_up_kg_day", "carried_off_kg_day", "fat_in_kg_day"}
PURE_NUMBERS |= {"top_up_cartons", "change_cartons", "safety_cartons"}
# of JSON whose names other programs know


def modules():
    for info in pkgutil.walk_packages([str(ROOT)], "frywright."):
        if "migrations" not in info.name:
            yield importlib.import_module(info.name)


@cache
def tree_of(path: Path) -> ast.Module:
    """A module's source as a tree, read once."""
    return ast.parse(path.read_text("utf-8"))


@cache
def nodes_of(path: Path) -> tuple[ast.AST, ...]:
    """Everything in it, in the order of a walk."""
    return tuple(ast.walk(tree_of(path)))


def functions():
    for path in FILES:
        for node in nodes_of(path):
            if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
                yield path.relative_to(ROOT), node


def test_every_number_of_a_dataclass_names_its_unit():
    """Float fields end in a unit of the closed list, or in a count."""
    wrong = []
    for module in modules():
        for name, cls in inspect.getmembers(module, dataclasses.is_dataclass):
            if cls.__module__ != module.__name__:
                continue
            hints = typing.get_type_hints(cls)
            for field in dataclasses.fields(cls):
                kinds = typing.get_args(hints[field.name]) or (hints[field.name],)
                named = suffix_of(field.name) or field.name.endswith(COUNTS) or field.name in PURE_NUMBERS
                if float in kinds and not named and not field.name.endswith(("_kg_m3k", "_j_kgk2", "_j_m2k")):
                    wrong.append(f"{module.__name__}.{name}.{field.name}")
    assert wrong == []


@pytest.mark.parametrize("path", FILES, ids=lambda p: str(p.relative_to(ROOT)))
def test_modules_stay_short(path):
    """No module passes 500 lines."""
    assert len(path.read_text("utf-8").splitlines()) <= LONGEST_MODULE


def test_functions_stay_short_and_narrow():
    """Bodies up to 60 lines without docstring, up to 8 parameters; commands may have more options."""
    wrong = []
    for path, node in functions():
        first = node.body[1] if ast.get_docstring(node) and len(node.body) > 1 else node.body[0]
        lines = node.end_lineno - first.lineno + 1
        count = (
            len(node.args.args)
            + len(node.args.kwonlyargs)
            - (node.args.args[:1] != [] and node.args.args[0].arg == "self")
        )
        command = any("command" in ast.unparse(d) for d in node.decorator_list)
        if lines > LONGEST_FUNCTION or (count > MOST_PARAMETERS and not command):
            wrong.append(f"{path}:{node.name} {lines} lines, {count} parameters")
    assert wrong == []


def test_the_plan_of_the_house_is_drawn_from_its_contracts():
    """The picture of the docs says what import-linter holds, and every package says what it is for."""
    folder = ROOT.parent.parent / "scripts"
    spec = importlib.util.spec_from_file_location("architecture", folder / "architecture.py")
    drawing = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(drawing)
    assert drawing.PICTURE.read_text("utf-8") == drawing.drawn()
    assert all(drawing.sentence(f"frywright.{n}") for row in drawing.layers("frywright") for n in row)


def test_the_formatter_is_never_switched_off():
    """Sizes are honest only where the formatter lays out every line."""
    homes = [ROOT, *(ROOT.parent.parent / name for name in ("tests", "benchmarks", "scripts", "examples"))]
    off = re.compile(r"#\s*fmt:\s*(skip|off)")
    assert [str(p) for home in homes for p in home.rglob("*.py") if off.search(p.read_text("utf-8"))] == []


def test_public_functions_and_modules_have_docs():
    """Every module, public class and public function says what it is for."""
    wrong = []
    for path in FILES:
        tree = tree_of(path)
        if path.name != "__init__.py" and not ast.get_docstring(tree):
            wrong.append(str(path.relative_to(ROOT)))
        for node in tree.body:
            if isinstance(node, ast.FunctionDef | ast.ClassDef) and not node.name.startswith("_"):
                parts = [node] + (node.body if isinstance(node, ast.ClassDef) else [])
                for part in parts:
                    public = isinstance(part, ast.FunctionDef | ast.ClassDef) and not part.name.startswith(
                        "_"
                    )
                    if public and not ast.get_docstring(part):
                        wrong.append(f"{path.relative_to(ROOT)}:{part.name}")
    assert wrong == []


def test_catalog_has_no_problems():
    """Every fact names a known source, every source is used, magnitudes are plausible."""
    assert check.problems() == []


def test_catalog_checks_can_fail(monkeypatch):
    """A slip of unit and an unknown source are found."""
    table = {**load.table("oils/canola.toml"), "density_20c_kg_m3": 0.92, "cp_source": "nobody"}
    real = load.table
    monkeypatch.setattr(load, "table", lambda path: table if path == "oils/canola.toml" else real(path))
    found = " ".join(check.problems())
    assert "density_20c_kg_m3" in found
    assert "nobody" in found


PRACTICE = Path(__file__).parents[1] / "reference" / "practice" / "check_values.toml"
REPO = ROOT.parents[1]
SHOWN = [
    path
    for folder in ("src", "docs", "benchmarks", "examples", "scripts")
    for path in sorted((REPO / folder).rglob("*"))
    if path.suffix in (".py", ".md", ".toml", ".html", ".js", ".typ", ".po", ".csv")
] + [REPO / "README.md"]
"""Every text a person may read or copy from; the tests are not among them."""


def test_common_practice_values_are_marked():
    """Trade figures say that they have no source."""
    practice = tomllib.loads(PRACTICE.read_text("utf-8"))
    assert practice["source"] == "common_practice"
    assert "no source" in load.sources()["common_practice"]["cite"]


def test_demo_docs_and_catalog_have_figures_of_their_own():
    """No vat or bird of word of mouth outside the tests, in pounds or in kilograms."""
    practice = tomllib.loads(PRACTICE.read_text("utf-8"))
    pounds = [v for k, v in practice.items() if k.endswith("_lb")]
    assert len(pounds) == 4
    numbers = {re.escape(f"{v:g}") for v in pounds} | {
        re.escape(f"{v * LB:.{d}f}") for v in pounds for d in (1, 2, 3)
    }
    number = "(?:" + "|".join(sorted(numbers)) + ")"
    amount = re.compile(
        rf"(?<![\d.,]){number}[ -]?(?:lb|pounds?|libras?|kg)\b|mass\w*_(?:lb|kg) ?= ?{number}(?![\d.])",
        re.IGNORECASE,
    )
    assert amount.search("oil_mass_lb = 64") and amount.search("a 2.75 lb bird") and amount.search("29.0 kg")
    assert [
        f"{p.relative_to(REPO)}: {m[0]}" for p in SHOWN for m in amount.finditer(p.read_text("utf-8"))
    ] == []
    for heads, oil_lb in ((4, practice["four_head_oil_lb"]), (6, practice["six_head_oil_lb"])):
        for fryer in demo_kitchen().fryers:
            assert fryer.capacity_heads != heads and abs(fryer.oil_mass_kg - oil_lb * LB) > LB, fryer.key


def test_no_promise_of_safety():
    """No text promises that food is safe, and no text shows how to defeat a protection."""
    promise = re.compile(r"safe to (eat|serve|open)|is safe\b|bypass", re.IGNORECASE)
    for path in [
        *FILES,
        *ROOT.rglob("*.html"),
        *ROOT.rglob("*.js"),
        *ROOT.rglob("*.po"),
        *ROOT.rglob("*.toml"),
    ]:
        assert not promise.search(path.read_text("utf-8")), path


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
        return {m.id: m.string for m in read_po(file, locale=language) if m.id}


SAID = ("title", "why", "act", "text", "hazard", "question", "lines", "parts", "tools", "gear")


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


@pytest.mark.parametrize("name", ["requirements.lock", "requirements-dev.lock"])
def test_every_locked_package_is_pinned_and_hashed(name):
    """One exact version and at least one SHA-256 each; no address of a registry, no path, no package without
    a hash.
    """
    text = (ROOT.parent.parent / name).read_text("utf-8")
    blocks = re.split(r"\n(?=[A-Za-z0-9])", re.sub(r"^#.*\n", "", text, flags=re.M).strip())
    for block in blocks:
        head = block.split(" \\")[0].split(" ;")[0]
        assert re.fullmatch(r"[A-Za-z0-9._\[\],-]+==[A-Za-z0-9.+!-]+", head), head
        assert "--hash=sha256:" in block, head
    assert not re.search(r"https?://|file:|/home|/opt|@ ", text)


READS_PAYLOADS: set[str] = set()
"""What still takes an entry's payload apart: may only shrink. An entry shown or sent whole is not meant."""


def test_a_payload_is_taken_apart_only_in_the_facts_of_the_ledger():
    """A fact is what everything above the ledger reads and writes; templates too."""
    apart = re.compile(r"\bpayload(\)?\[|\.)")
    found = {
        str(path.relative_to(ROOT))
        for path in (*FILES, *ROOT.rglob("*.html"))
        if "ledger/facts" not in path.as_posix() and apart.search(path.read_text("utf-8"))
    }
    assert found == READS_PAYLOADS


LOOSE = re.compile(r"dict\[str, Any\]")
TYPED = (
    "rooms/cook/",
    "rooms/day/",
    "rooms/fleet/",
    "rooms/care/oil_money.py",
    "rooms/care/oil_moves.py",
    "rooms/care/training.py",
    "rooms/care/upkeep.py",
    "rooms/records/case_rows.py",
    "rooms/records/corrective.py",
    "rooms/records/pack.py",
    "rooms/records/pack_paper.py",
    "rooms/readings.py",
    "rooms/standing.py",
    "rooms/thermometers.py",
    "paper/",
    "trial/",
    "calibrate/",
    "design/",
    "verdicts/",
)


def test_no_room_hands_out_a_dict_of_anything():
    """What is asked and shown crosses a module's border as a frozen dataclass whose fields have names, types
    and units; here no function takes or gives a dict of anything.
    """
    found = [
        f"{path}:{node.name}"
        for path, node in functions()
        if str(path).startswith(TYPED)
        for part in (*(a.annotation for a in (*node.args.args, *node.args.kwonlyargs)), node.returns)
        if part is not None and LOOSE.search(ast.unparse(part))
    ]
    assert found == []


LOOSE_AT_THE_BORDER = {
    "catalog/load.py:table": "a TOML table of the catalog: its keys are the file's",
    "model/codec.py:load": "a TOML file as it was written",
    "model/codec.py:write": "what becomes a TOML file",
    "ledger/facts/fact.py:payload": "a payload, below the facts",
    "ledger/facts/people.py:as_shown": "a payload of any kind, for who may read all of it",
    "ledger/once.py:once": "a JSON body at the wire, kept to answer its repeat",
    "client/http.py:entries": "JSON at the wire",
    "client/http.py:write": "JSON at the wire",
    "client/http.py:send": "JSON at the wire",
    "web/saving.py:save_choices": "names that a template reads, joined to those of its page",
    "web/pages/kitchens.py:rows": "names that a template reads",
    "rooms/records/privacy.py:own_data": "lines of JSON for the person they are about",
}
"""What may cross a module's border without names and types, and why."""


LOOSE_INSIDE = {
    "names that a template reads": (
        "web/saving.py web/pages/day.py web/pages/now.py web/pages/desk.py web/pages/probes.py"
        " web/pages/live.py web/pages/setup.py web/pages/kitchens.py web/pages/probing.py"
        " web/pages/releases.py web/pages/records.py"
    ),
    "JSON at the wire or in a file": (
        "web/app.py web/watch.py web/company.py web/pages/sync.py web/pages/api.py ledger/once.py"
        " ledger/backup.py ledger/writer.py client/http.py client/replicate.py client/forward.py cli/day.py"
        " cli/records.py rooms/records/privacy.py"
    ),
    "a TOML table, its keys the file's": ("catalog/kitchen.py catalog/load.py model/codec.py rooms/demo.py"),
    "a payload, below the facts": "ledger/facts/fact.py ledger/facts/people.py",
    "fields of a fact, passed on to it by name": (
        "rooms/care/nameplate.py rooms/care/commissioning.py rooms/care/vat.py"
    ),
    "values of a message, by the names in its template": "model/errors.py",
    "options of a compiler, passed on to it by name": "physics/kernels.py",
    "a picture's specification, as its renderer reads it": "paper/chart.py",
}
"""Where a dict of anything still stands inside a module, and why it is none of ours to name."""


def test_a_dict_of_anything_has_a_reason():
    """No other module holds one, and every module of the list still does."""
    there = {f"{path.relative_to(ROOT)}" for path in FILES if LOOSE.search(path.read_text("utf-8"))}
    listed = [path for paths in LOOSE_INSIDE.values() for path in paths.split()]
    assert len(listed) == len(set(listed))
    assert there == set(listed)


def public(tree: ast.Module):
    """Functions of a module and methods of its classes that others may name."""
    for node in tree.body:
        for one in node.body if isinstance(node, ast.ClassDef) else [node]:
            if isinstance(one, ast.FunctionDef | ast.AsyncFunctionDef) and not one.name.startswith("_"):
                yield one


def test_nothing_loose_crosses_a_border():
    """A public function that another module names takes and gives no dict of anything, but for a short list
    with a reason each; the list holds nothing that is no longer so.
    """
    texts = {path.relative_to(ROOT): path.read_text("utf-8") for path in FILES}
    found = set()
    for path, text in texts.items():
        for node in public(ast.parse(text)):
            parts = (*(a.annotation for a in (*node.args.args, *node.args.kwonlyargs)), node.returns)
            loose = any(part is not None and LOOSE.search(ast.unparse(part)) for part in parts)
            named = re.compile(rf"\b{node.name}\b")
            if loose and any(named.search(other) for where, other in texts.items() if where != path):
                found.add(f"{path}:{node.name}")
    assert found == set(LOOSE_AT_THE_BORDER)


def test_a_helper_type_is_named_once():
    """A type that stands for a function or a pair has one name in one module; the others import it, and
    write it out nowhere.
    """
    written = re.compile(r"(?:Callable|Mapping|Sequence|dict|list|tuple)\[.+\]")
    homes: dict[str, list[str]] = {}
    for path in FILES:
        for node in ast.parse(path.read_text("utf-8")).body:
            text = ast.unparse(node.value) if isinstance(node, ast.Assign) else ""
            if written.fullmatch(text):
                homes.setdefault(text, []).append(f"{path.relative_to(ROOT)}")
    assert {text: where for text, where in homes.items() if len(where) > 1} == {}
    said = re.compile(r"\b(?:tr|translate): Callable\[\[str\], str\]")
    assert [str(path) for path in FILES if said.search(path.read_text("utf-8"))] == []


def test_every_template_is_there_and_shown():
    """Pages name templates that exist, and every template is named by a page or by another template."""
    folder = ROOT / "web" / "templates"
    there = {str(path.relative_to(folder)) for path in folder.rglob("*.html")}
    texts = [*(ROOT / "web").rglob("*.py"), *folder.rglob("*.html")]
    named = {name for path in texts for name in re.findall(r'"([a-z_/]+\.html)"', path.read_text("utf-8"))}
    assert named <= there
    screens = {name for name in there if name.startswith("cook/setup_")}  # named by the screen's key
    assert there - named - screens == set()
