"""What the documentation prints runs as printed, and every piece of Python in it ends in a check."""

from __future__ import annotations

import ast
import io
import re
import shlex
import shutil
import urllib.request
from pathlib import Path

import pytest
import typer
from fastapi.testclient import TestClient
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.rooms.records import people
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app
from tests.demo import kitchen_store

ROOT = Path(__file__).parents[2]
PAGES = [ROOT / "README.md", *sorted((ROOT / "docs").rglob("*.md"))]
DEMO_LOG = ROOT / "src/frywright/catalog/demo/probe-log.csv"


def blocks(language: str) -> list[tuple[str, str]]:
    """Fenced blocks of a language: where (page and line), and what they say."""
    found = []
    for page in PAGES:
        text = page.read_text("utf-8")
        for match in re.finditer(rf"^```{language}\n(.*?)^```", text, re.S | re.M):
            line = text[: match.start()].count("\n") + 1
            found.append((f"{page.relative_to(ROOT)}:{line}", match[1]))
    return found


def commands() -> list[tuple[str, str]]:
    """Every ``frywright`` command, in blocks and in running text: where and what."""
    found = [
        (where, line)
        for where, text in blocks("")
        for line in text.splitlines()
        if line.startswith("frywright ")
    ]
    for page in PAGES:
        text = re.sub(r"^```.*?^```", "", page.read_text("utf-8"), flags=re.S | re.M)
        found += [
            (str(page.relative_to(ROOT)), " ".join(m.split()))
            for m in re.findall(r"`(frywright [^`]+)`", text)
        ]
    return found


class Answered(io.BytesIO):
    """What urlopen gives back: a body that is also a context."""

    def __enter__(self):
        return self


@pytest.fixture
def address(tmp_path, monkeypatch):
    """Whatever address and token a snippet prints, a kitchen's server with a till answers."""
    store = kitchen_store(tmp_path / "a.db")
    people.add_account(store, "Olive", "owner", "oak leaf river stone")
    token = people.add_device(store, "Till", "crew", "Olive")
    client = TestClient(make_app(store), base_url="http://127.0.0.1")

    def answer(asked, timeout):
        path = "/" + asked.full_url.split("/", 3)[3]
        headers = {**dict(asked.header_items()), "Authorization": f"Bearer {token}"}
        got = client.request(asked.method, path, content=asked.data, headers=headers)
        assert got.status_code == 200, got.text
        return Answered(got.content)

    monkeypatch.setattr(urllib.request, "urlopen", answer)


@pytest.mark.parametrize(("where", "text"), blocks("python"), ids=[where for where, _ in blocks("python")])
def test_python_runs_and_ends_in_a_check(where, text, address):
    """Executed as printed; the last statement is an assert."""
    tree = ast.parse(text)
    assert isinstance(tree.body[-1], ast.Assert), f"{where} does not end in a check"
    exec(compile(tree, where, "exec"), {"__name__": "snippet"})


def test_the_pages_hold_python():
    """The search finds the blocks it is meant for."""
    pages = {where.split(":")[0] for where, _ in blocks("python")}
    assert pages >= {"docs/theory/engine.md", "docs/how-to/records.md"}


def test_the_kitchen_file_of_the_how_to_loads():
    """The three blocks of docs/how-to/kitchen-file.md together are a kitchen."""
    from frywright.catalog.kitchen import parse_kitchen

    text = "\n".join(text for where, text in blocks("toml") if "kitchen-file" in where)
    kitchen = parse_kitchen(text)
    assert kitchen.programs


def leaf(words: list[str]) -> tuple[object, list[str]]:
    """The command that words name, and the words after it."""
    here = typer.main.get_command(app)
    while hasattr(here, "commands"):
        assert words[0] in here.commands, words[0]
        here, words = here.commands[words[0]], words[1:]
    return here, words


def plain(line: str) -> list[list[str]]:
    """Commands of a line in words, without comment, file to write to and dots that stand for more."""
    parts = [shlex.split(part, comments=True) for part in line.split("&&")]
    return [
        [w for w in part[: part.index(">") if ">" in part else None] if w not in ("...", "…")]
        for part in parts
    ]


@pytest.mark.parametrize(("where", "line"), [c for c in commands() if "|" not in c[1]])
def test_commands_exist_with_their_options(where, line):
    """Every command of the pages is one of the program, and so is every option."""
    for words in plain(line):
        if words[1:] == ["--help"] or words[1].isupper():
            continue
        command, rest = leaf(words[1:])
        known = {name for p in command.params for name in (*p.opts, *p.secondary_opts)}
        for word in rest:
            if word.startswith("--"):
                assert word.split("=")[0] in known, f"{where}: {word}"


QUICK = (
    "kitchen demo",
    "kitchen check",
    "cook simulate",
    "cook card",
    "probe read",
    "probe sample",
    "probe check",
    "oil log",
    "oil outlook",
    "care due",
    "records verify",
    "records pack",
)


@pytest.fixture
def desk(tmp_path, monkeypatch):
    """An empty folder with a demo log, a store and the demo kitchen, as after ``make run``."""
    monkeypatch.chdir(tmp_path)
    Path("var").mkdir()
    kitchen_store(Path("var/demo.db")).close()
    shutil.copy(DEMO_LOG, "log.csv")
    Path("kitchen.toml").write_text(demo_text(), "utf-8")


def run_line(line: str) -> None:
    """Run a line of a page; what it redirects is written."""
    for part in line.split("&&"):
        words = shlex.split(part, comments=True)
        target = words[words.index(">") + 1] if ">" in words else ""
        got = CliRunner().invoke(app, words[1 : words.index(">")] if target else words[1:])
        assert got.exit_code == 0, f"{part}: {got.output}"
        assert got.output.strip(), part
        if target:
            Path(target).write_text(got.stdout, "utf-8")


def runnable(quick: bool) -> list[tuple[str, str]]:
    """Lines of blocks that need neither a keyboard nor a file of the reader's own."""
    lines = [(w, t) for w, t in commands() if ":" in w]
    own = (
        "export.csv",
        "study.csv",
        "today.csv",
        "serve",
        "readback",
        "...",
        "--play",
        "day plan",
        "cook live",
    )
    lines = [(w, t) for w, t in lines if not any(word in t for word in own)]
    return [(w, t) for w, t in lines if any(t.startswith(f"frywright {q}") for q in QUICK) is quick]


@pytest.mark.parametrize(("where", "line"), runnable(True))
def test_quick_commands_run_as_printed(where, line, desk):
    """Lines of blocks that take a second or two run to their end and say something."""
    run_line(line)


@pytest.mark.slow
@pytest.mark.parametrize(("where", "line"), runnable(False))
def test_slow_commands_run_as_printed(where, line, desk):
    """Lines that design, prove, calibrate and plan."""
    run_line(line)
