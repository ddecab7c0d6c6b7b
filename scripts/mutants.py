"""Breaks the program by hand, one small change at a time, and sees whether a test fails.

Functions are drawn over all levels; in each, one place is changed: a comparison turned, a number moved by
one, ``and`` for ``or``, a sign, a statement left out, ``None`` given back. First the quick tests run once on
the unbroken program, and each notes which functions it reaches: a test that fails here, or does not reach the
function, can kill nothing. Then every change runs against the tests that reach it.

    python scripts/mutants.py [--functions 60] [--seed 23] [--only frywright/verdicts] [--level low]
                              [--reached map.jsonl] [--workers 2]

Each change runs in a copy of a process that has imported the libraries and nothing of the program: the copy
imports the changed program, so what acts only while a module is loaded is seen too. What failed runs again on
the unbroken program, all tests before it too: a test that fails there has killed nothing and is left out.

Where a function holds others, such as the pages of a router, a change inside one of them runs against the
tests that reach that one. The nearest tests run first, up to ``--budget`` seconds of them a change: what
survives may still be killed by one that did not run, so the rates err on the low side. No limit of time
counts a slow machine as killed or survived: a change whose tests take too much of the processor, or wait
without end, has no answer.
"""

from __future__ import annotations

import argparse
import ast
import datetime as dt
import importlib
import json
import marshal
import multiprocessing
import os
import resource
import signal
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from contextlib import suppress
from dataclasses import dataclass
from functools import partial
from itertools import accumulate
from pathlib import Path

import pytest
from breaking import ROOT, Function, Mutant, draw, functions
from scipy.stats import binomtest

HOOK = ROOT / "scripts/broken"
WORKERS = 2
QUICK = ["-m", "not slow and not browser", "--ignore=tests/browser", "--ignore=tests/house"]
"""The tests that run: not those that read the source as text."""
PYTEST = ["-q", "--assert=plain", "--timeout=240"]
"""Of a test that waits without end the suite would wait for ten minutes."""
FORK = multiprocessing.get_context("fork")
NOT_LOADED, BROKE_DOWN = "the program does not load", "the process broke down"
CRASHES = {signal.SIGSEGV, signal.SIGABRT, signal.SIGBUS, signal.SIGFPE, signal.SIGILL}
NO_DIFFERENCE: dict[str, str] = {
    "frywright/design/search.py Sizer.judge: Add exchanged, `len(plans) + 1` → `len(plans) - 1`": (
        "Only which programs run in which of two threads; their answers are joined in order."
    ),
    "frywright/design/proof.py draw: Sub exchanged, `count - 1` → `count + 1`": (
        "More points are drawn than asked for; Sobol points keep their order, and the first ones are taken."
    ),
    "frywright/model/errors.py Phrase.say: and, or exchanged,"
    " `isinstance(value, str) and value` → `isinstance(value, str) or value`": (
        "An empty text or a number is handed to the translator as well, which gives both back as they are."
    ),
    "frywright/web/rates.py Pauses.pause: gives None back, `return False` → `return None`": (
        "The one who asks only asks whether it is true."
    ),
    "frywright/rooms/day/kept_rule.py _mark: 32 moved by one, `32` → `33`": (
        "Only whether a file kept for the next start has a letter more in its name."
    ),
    "frywright/rooms/cook/intake.py Intake.__init__: 0 moved by one, `0` → `1`": (
        "Only from where a count begins whose later values are compared with its earlier ones."
    ),
    "frywright/cli/shop.py command.mark: gives None back, `return function` → `return None`": (
        "A command is called through the program's table of commands; nobody calls it by its name."
    ),
}
"""Changes that nobody can see, each looked at and with its reason; counted neither way."""


@dataclass(frozen=True, kw_only=True)
class Outcome:
    """One mutant, and what became of it."""

    mutant: Mutant
    state: str
    by: str = ""


@dataclass(frozen=True, kw_only=True)
class Test:
    """One quick test of the unbroken program."""

    name: str
    passed: bool
    seconds: float
    reached: frozenset[str]
    set_up: frozenset[str]

    @property
    def file(self) -> str:
        """The file it stands in."""
        return self.name.split("::")[0]


class _Mark(ast.NodeTransformer):
    """Puts a call that notes the function as reached at the head of its body."""

    def __init__(self, functions: list[Function]) -> None:
        self.by_line = {f.first_line: f for f in functions}

    def _visit(self, node: ast.FunctionDef | ast.AsyncFunctionDef) -> ast.AST:
        head = 1 if ast.get_docstring(node) else 0
        function = self.by_line.get(node.body[head].lineno) if len(node.body) > head else None
        self.generic_visit(node)
        if function is not None:
            call = f"__import__('reached').reached({function.place!r})"
            node.body[head:head] = ast.parse(call).body
        return node

    visit_FunctionDef = visit_AsyncFunctionDef = _visit


def _environment(folder: Path, texts: dict[Path, str]) -> dict[str, str]:
    """The environment of a run in which these files of ``src`` have another text."""
    table = {}
    for number, (path, text) in enumerate(texts.items()):
        source, code = ROOT / "src" / path, folder / f"{number}.code"
        code.write_bytes(marshal.dumps(compile(text, source, "exec", dont_inherit=True)))
        module = Function(path=path, name="", first_line=0, last_line=0).module
        table[module] = {"source": str(source), "code": str(code)}
    (folder / "table.json").write_text(json.dumps(table), "utf-8")
    where = os.pathsep.join((str(HOOK), str(ROOT / "src"), str(ROOT)))
    return {"PYTHONPATH": where, "FRYWRIGHT_BROKEN": str(folder / "table.json")}


def _folder() -> tempfile.TemporaryDirectory:
    """A folder for one run, where the tests keep their stores."""
    return tempfile.TemporaryDirectory(
        dir=os.environ.get("PYTEST_DEBUG_TEMPROOT") or None, ignore_cleanup_errors=True
    )


def reach(marked: list[Function], only: list[str], kept: Path | None) -> list[Test]:
    """What every quick test reaches on the unbroken program.

    Tests in the kept file do not run again, unless their file is named: then the new lines stand for the old.
    """
    known = [json.loads(x) for x in kept.read_text("utf-8").splitlines()] if kept and kept.exists() else []
    if only or not known:
        again = _baseline(marked, only)
        files = {line["test"].split("::")[0] for line in again}
        known = [x for x in known if not x["test"] or x["test"].split("::")[0] not in files] + again
    if kept:
        kept.write_text("".join(json.dumps(line) + "\n" for line in known), "utf-8")
    return [_test(line) for line in known]


def _baseline(marked: list[Function], only: list[str]) -> list[dict]:
    texts = {}
    for path in {f.path for f in marked}:
        mark = _Mark([f for f in marked if f.path == path])
        tree = mark.visit(ast.parse((ROOT / "src" / path).read_text("utf-8")))
        texts[path] = ast.unparse(ast.fix_missing_locations(tree))
    with _folder() as name:
        where = {**os.environ, **_environment(Path(name), texts), "FRYWRIGHT_REACHED": f"{name}/reached"}
        command = [
            sys.executable,
            "-m",
            "pytest",
            *PYTEST,
            "-p",
            "reached",
            "-n",
            str(WORKERS),
            *QUICK,
            *only,
        ]
        done = subprocess.run(command, cwd=ROOT, env=where, capture_output=True, text=True, check=False)
        print(done.stdout[-1500:], done.stderr[-500:], file=sys.stderr, flush=True)
        if done.returncode not in (pytest.ExitCode.OK, pytest.ExitCode.TESTS_FAILED):
            raise SystemExit("the tests did not run to their end")
        return [json.loads(x) for x in Path(f"{name}/reached").read_text("utf-8").splitlines()]


def _test(line: dict) -> Test:
    when = [place.split(" ", 1) for place in line["reached"]]
    return Test(
        name=line["test"],
        passed=line["passed"],
        seconds=line["seconds"],
        reached=frozenset(place for _, place in when),
        set_up=frozenset(place for phase, place in when if phase == "setup"),
    )


def chosen(function: Function, tests: list[Test], budget: float) -> tuple[list[str], int]:
    """The tests that reach the function and pass unbroken, as many as take ``budget`` seconds, the nearest
    first: those that reach the fewest functions besides it; and how many there are.

    Where a fixture reached it, other tests may share that fixture: then the whole file. What is reached while
    modules load acts on every test of its file of the program.
    """
    shared = {t.file for t in tests if function.place in t.set_up}
    places = {function.place}
    if any(function.place in t.reached for t in tests if not t.name):
        places |= {p for t in tests for p in t.reached if p.startswith(f"{function.path.as_posix()} ")}
    good = [t for t in tests if t.passed and (places & t.reached or t.file in shared)]
    good.sort(key=lambda t: (len(t.reached), t.seconds))
    so_far = accumulate(t.seconds for t in good)
    taken = [t for n, (t, total) in enumerate(zip(good, so_far, strict=True)) if not n or total <= budget]
    files = {t.file: n for n, t in reversed(list(enumerate(taken)))}
    return [t.name for t in sorted(taken, key=lambda t: files[t.file])], len(good)


class _Nearest:
    """Runs these tests in their order, and keeps the first that fails."""

    def __init__(self, names: list[str]) -> None:
        self.places, self.failed = {name: n for n, name in enumerate(names)}, ""

    @pytest.hookimpl(trylast=True)
    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        items[:] = [item for item in items if item.nodeid in self.places]
        items.sort(key=lambda item: self.places[item.nodeid])

    def pytest_runtest_logreport(self, report: pytest.TestReport | pytest.CollectReport) -> None:
        if report.failed and not self.failed:
            self.failed = report.nodeid

    pytest_collectreport = pytest_runtest_logreport


def _in_copy(texts: dict[Path, str], names: list[str], folder: Path, processor_s: int) -> None:
    """What the copy of the process does: it writes the first test that fails into ``failed``."""
    os.setsid()
    signal.signal(signal.SIGXCPU, signal.default_int_handler)
    resource.setrlimit(resource.RLIMIT_CPU, (processor_s, processor_s + 60))
    for stream in (1, 2):
        os.dup2(os.open(folder / "said", os.O_WRONLY | os.O_CREAT | os.O_APPEND), stream)
    os.environ.update(_environment(folder, texts))
    os.chdir(ROOT)
    del sys.argv[1:]
    sys.path[:0] = os.environ["PYTHONPATH"].split(os.pathsep)
    sys.modules.pop("sitecustomize", None)
    importlib.import_module("sitecustomize")
    nearest = _Nearest(names)
    files = dict.fromkeys(name.split("::")[0] for name in names)
    code = pytest.main([*PYTEST, "-x", "--tb=no", f"--basetemp={folder}/t", *files], plugins=[nearest])
    if code in (pytest.ExitCode.USAGE_ERROR, pytest.ExitCode.INTERNAL_ERROR):
        nearest.failed = NOT_LOADED
    if nearest.failed or code in (pytest.ExitCode.OK, pytest.ExitCode.NO_TESTS_COLLECTED):
        (folder / "failed").write_text(nearest.failed, "utf-8")
    sys.stdout.flush()
    os._exit(0)


def first_failed(texts: dict[Path, str], names: list[str], asked: argparse.Namespace) -> str | None:
    """The first of these tests to fail where files of ``src`` have another text; empty where all pass, None
    where they do not end. Nothing that they started outlives them.
    """
    with _folder() as name:
        process = FORK.Process(target=_in_copy, args=(texts, names, Path(name), asked.processor))
        process.start()
        process.join(asked.seconds)
        ended = not process.is_alive()
        for sign in (signal.SIGINT, signal.SIGKILL):
            with suppress(ProcessLookupError):
                os.killpg(process.pid, sign)
            process.join(30)
        kept = Path(name) / "failed"
        if ended and kept.exists():
            return kept.read_text("utf-8")
        return BROKE_DOWN if ended and -process.exitcode in CRASHES else None


def run(broken: Mutant, tests: list[Test], asked: argparse.Namespace) -> Outcome:
    """One change against the tests that reach it. A test that fails unbroken as well is left out."""
    names, count = chosen(broken.inner, tests, asked.budget)
    told = f"{count} tests reach it" + (f", {len(names)} ran" if len(names) < count else "")
    while names:
        failed = first_failed({broken.function.path: broken.text}, names, asked)
        if failed is None:
            return Outcome(mutant=broken, state="no answer", by=told)
        if not failed:
            return Outcome(mutant=broken, state="survived", by=told)
        last = max((n for n, name in enumerate(names) if _is(name, failed)), default=len(names) - 1)
        unbroken = first_failed({}, names[: last + 1], asked)
        if unbroken is None:
            return Outcome(mutant=broken, state="no answer", by=told)
        if not unbroken:
            return Outcome(mutant=broken, state="killed", by=failed)
        if unbroken in (NOT_LOADED, BROKE_DOWN):
            raise SystemExit(f"unbroken, {unbroken}: {names}")
        names = [name for name in names if not _is(name, unbroken)]
    return Outcome(mutant=broken, state="survived", by="no quick test reaches it and passes unbroken")


def _is(name: str, failed: str) -> bool:
    """Whether this test, or the file it stands in, is what failed."""
    return name == failed or name.startswith(f"{failed}::")


def _warm() -> None:
    """Import the libraries of program and tests, so that no copy of this process has to."""
    names = "import sys, tests.conftest, frywright.web.app, frywright.cli.main; print(*sys.modules)"
    where = {**os.environ, "PYTHONPATH": f"{ROOT / 'src'}{os.pathsep}{ROOT}"}
    command = [sys.executable, "-c", names]
    loaded = subprocess.run(command, cwd=ROOT, env=where, capture_output=True, text=True, check=True).stdout
    for name in loaded.split():
        if name.split(".")[0] not in ("frywright", "tests", "examples", "benchmarks"):
            with suppress(ImportError):
                importlib.import_module(name)


def outcomes(drawn: list[Mutant], tests: list[Test], asked: argparse.Namespace) -> Iterator[Outcome]:
    """Run every change against the tests that reach it."""
    _warm()
    with ProcessPoolExecutor(asked.workers, FORK) as pool:
        yield from pool.map(partial(run, tests=tests, asked=asked), drawn)


def rates(found: list[Outcome]) -> list[str]:
    """The share killed on levels 1 and 2, and above, with its interval of 95 % (Wilson); changes that make no
    difference, or whose tests did not end, stand apart.
    """
    lines = []
    for name, low in (("levels 1 and 2", True), ("above", False)):
        these = [o for o in found if o.mutant.function.low is low]
        states = [o.state for o in these if o.state != "no answer" and o.mutant.key not in NO_DIFFERENCE]
        if not states:
            lines.append(f"* **{name}**: none counted")
            continue
        killed = states.count("killed")
        sure = binomtest(killed, len(states)).proportion_ci(method="wilson")
        share, apart = 100 * killed / len(states), len(these) - len(states)
        lines.append(
            f"* **{name}**: {killed} of {len(states)} killed, {share:.0f} %"
            f" (95 %: {100 * sure.low:.0f} to {100 * sure.high:.0f} %); counted neither way: {apart}"
        )
    return lines


def table(found: list[Outcome]) -> list[str]:
    """One row a change."""
    lines = ["| function | change | outcome | first test to fail |", "|---|---|---|---|"]
    for o in found:
        none = NO_DIFFERENCE.get(o.mutant.key)
        state, by = ("no difference", none) if none else (o.state, o.by)
        lines.append(f"| {o.mutant.function.place} | {o.mutant.change} | {state} | {by} |")
    return lines


def report(found: list[Outcome], tests: list[Test], asked: argparse.Namespace) -> str:
    """What the page says of this draw."""
    named, failing = [t for t in tests if t.name], [t for t in tests if t.name and not t.passed]
    lines = [
        f"{len(found)} functions drawn with seed {asked.seed}; {len(named)} quick tests, {len(failing)} of"
        " them failed unbroken and kill nothing.",
        "",
        *rates(found),
        "",
        *table(found),
    ]
    return "\n".join(lines) + "\n"


def _options() -> argparse.Namespace:
    options = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    options.add_argument("--functions", type=int, default=60)
    today = int(f"{dt.date.today():%Y%m%d}")
    options.add_argument("--seed", type=int, default=today, help="else the date: a new draw every day")
    options.add_argument("--processor", type=int, default=240, help="seconds of it that one change may take")
    options.add_argument("--seconds", type=float, default=1800.0, help="how long one change may wait")
    options.add_argument("--budget", type=float, default=40.0, help="seconds of tests for one change")
    options.add_argument("--workers", type=int, default=WORKERS, help="changes that run side by side")
    options.add_argument("--only", default="", help="a part of the path")
    options.add_argument("--level", choices=("low", "above"), default="", help="half of the levels")
    options.add_argument("--tests", nargs="*", default=[], help="only these test files")
    options.add_argument("--reached", type=Path, help="file that keeps what the tests reach, for a next run")
    options.add_argument("--list", action="store_true", help="only show what is drawn")
    return options.parse_args()


def main() -> None:
    """Run and print as it goes; the page goes to standard output at the end."""
    asked = _options()
    drawn = draw(asked.functions, asked.seed, asked.only, asked.level)
    if asked.list:
        print("\n".join(f"{m.key}  (line {m.line})" for m in drawn))
        return
    tests = reach(functions(""), asked.tests, asked.reached)
    found = []
    for outcome in outcomes(drawn, tests, asked):
        found.append(outcome)
        m = outcome.mutant
        print(f"{outcome.state:10} {m.key} (line {m.line}) {outcome.by}", file=sys.stderr, flush=True)
    print(report(found, tests, asked), end="")


if __name__ == "__main__":
    main()
