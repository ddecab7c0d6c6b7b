"""Rules of the house: units in names, sizes, docs, sources."""

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
from pathlib import Path

import pytest

from frywright.catalog import check, load
from frywright.model.units import COUNTS, LB, suffix_of
from frywright.trial.kitchens import demo_kitchen
from tests.house.source import FILES, ROOT, functions, tree_of

LONGEST_MODULE, LONGEST_FUNCTION, MOST_PARAMETERS = 500, 60, 8
REPO = ROOT.parents[1]
BESIDE = ("benchmarks", "scripts", "examples")
"""What is written beside the program and its tests."""

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
    "crust",
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


def test_modules_beside_the_program_stay_short():
    """Tests, benchmarks, scripts and examples: as short as those of the program."""
    paths = [p for name in ("tests", *BESIDE) for p in (REPO / name).rglob("*.py")]
    counts = {str(p.relative_to(REPO)): len(p.read_text("utf-8").splitlines()) for p in paths}
    assert len(counts) > 250
    assert {path: count for path, count in counts.items() if count > LONGEST_MODULE} == {}


def test_functions_stay_short_and_narrow():
    """Bodies up to 60 lines without docstring, up to 8 parameters; commands may have more options."""
    beside = [p for name in BESIDE for p in (REPO / name).rglob("*.py")]
    wrong = []
    for path, node in functions([*FILES, *beside], REPO):
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


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"key": "batter"}, "key 'batter' is not the file's name"),
        ({"pickup_source": None}, "pickup_frac names no source"),
    ],
)
def test_a_coating_is_copied_whole(monkeypatch, change, says):
    """One that keeps the key of another takes its place in every kitchen; each number has its source."""
    table = {**load.table("coatings/dredge.toml"), **change}
    table = {key: value for key, value in table.items() if value is not None}
    real = load.table
    monkeypatch.setattr(load, "table", lambda path: table if path == "coatings/dredge.toml" else real(path))
    assert check.problems() == [f"coatings/dredge.toml: {says}"]


PRACTICE = Path(__file__).parents[1] / "reference" / "practice" / "check_values.toml"

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


def test_every_template_is_there_and_shown():
    """Pages name templates that exist, and every template is named by a page or by another template."""
    folder = ROOT / "web" / "templates"
    there = {str(path.relative_to(folder)) for path in folder.rglob("*.html")}
    texts = [*(ROOT / "web").rglob("*.py"), *folder.rglob("*.html")]
    named = {name for path in texts for name in re.findall(r'"([a-z_/]+\.html)"', path.read_text("utf-8"))}
    assert named <= there
    screens = {name for name in there if name.startswith("cook/setup_")}  # named by the screen's key
    assert there - named - screens == set()
