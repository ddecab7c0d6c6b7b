"""Breaks the program by hand, one small change at a time, and sees whether a test fails.

Functions are drawn over all levels; in each, one place is changed: a comparison turned, a number moved by
one, ``and`` for ``or``, a sign, a statement left out, ``None`` given back. First the quick tests run once on
the unbroken program, and each notes which of the drawn functions it reaches: a test that fails here, or does
not reach the function, can kill nothing. Then every change runs against the tests that reach it.

    python scripts/mutants.py [--functions 60] [--seed 1] [--seconds 300] [--only frywright/verdicts]
                              [--level low] [--reached map.jsonl] [--workers 1]

Where a function holds others, such as the pages of a router, a change inside one of them runs against the
tests that reach that one. The nearest tests run first, up to ``--budget`` seconds of them a change: what
survives may still be killed by one that did not run, so the rates err on the low side.
"""

from __future__ import annotations

import argparse
import ast
import json
import os
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from itertools import accumulate
from pathlib import Path

from breaking import ROOT, Function, Mutant, draw, functions

HOOK = ROOT / "scripts/broken"
WORKERS = 2
QUICK = ["-m", "not slow and not browser", "--ignore=tests/browser", "--ignore=tests/house"]
"""The tests that run: not those that read the source as text."""
NO_DIFFERENCE: dict[str, str] = {
    "frywright/verdicts/margin.py margin_k: True turned, `True` → `False`": (
        "Only whether two columns of one table that differ in length are an error; they are read together."
    ),
    "frywright/design/search.py Sizer.judge: True turned, `True` → `False`": (
        "Only whether lists that differ in length are an error; all three are made from the same programs."
    ),
    "frywright/physics/pack.py vat_columns: True turned, `True` → `False`": (
        "Only whether lists that differ in length are an error; both are made from the same names."
    ),
    "frywright/design/held.py _counting_down: True turned, `True` → `False`": (
        "Only whether lists that differ in length are an error; all three are made from the same stages."
    ),
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
    "frywright/cli/shop.py command.mark: gives None back, `return function` → `return None`": (
        "A command is called through the program's table of commands; nobody calls it by its name."
    ),
}
"""Changes that alter nothing anybody can see, each with the reason; kept by hand, counted neither way."""


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
        (folder / f"{number}.txt").write_text(text, "utf-8")
        module = Function(path=path, name="", first_line=0, last_line=0).module
        table[module] = {"source": str(ROOT / "src" / path), "text": str(folder / f"{number}.txt")}
    (folder / "table.json").write_text(json.dumps(table), "utf-8")
    where = os.pathsep.join((str(HOOK), str(ROOT / "src"), str(ROOT)))
    return {
        **os.environ,
        "PYTHONPATH": where,
        "PYTHONDONTWRITEBYTECODE": "1",
        "FRYWRIGHT_BROKEN": str(folder / "table.json"),
    }


def reach(marked: list[Function], only: list[str], kept: Path | None) -> list[Test]:
    """What every quick test reaches on the unbroken program.

    Tests in the kept file do not run again, unless their file is named: then the new lines stand for the old.
    """
    known = [json.loads(x) for x in kept.read_text("utf-8").splitlines()] if kept and kept.exists() else []
    if only or not known:
        again = _baseline(marked, only)
        files = {line["test"].split("::")[0] for line in again}
        known = [line for line in known if line["test"].split("::")[0] not in files] + again
    if kept:
        kept.write_text("".join(json.dumps(line) + "\n" for line in known), "utf-8")
    return [_test(line) for line in known]


def _baseline(marked: list[Function], only: list[str]) -> list[dict]:
    texts = {}
    for path in {f.path for f in marked}:
        mark = _Mark([f for f in marked if f.path == path])
        tree = mark.visit(ast.parse((ROOT / "src" / path).read_text("utf-8")))
        texts[path] = ast.unparse(ast.fix_missing_locations(tree))
    with tempfile.TemporaryDirectory() as name:
        where = {**_environment(Path(name), texts), "FRYWRIGHT_REACHED": f"{name}/reached"}
        command = [sys.executable, "-m", "pytest", "-q", "-p", "reached", "-n", str(WORKERS), *QUICK, *only]
        done = subprocess.run(command, cwd=ROOT, env=where, capture_output=True, text=True, check=False)
        print(done.stdout[-1500:], done.stderr[-500:], file=sys.stderr, flush=True)
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

    Where a fixture reached it, other tests may share that fixture: then the whole file.
    """
    shared = {t.file for t in tests if function.place in t.set_up}
    good = [t for t in tests if t.passed and (function.place in t.reached or t.file in shared)]
    good.sort(key=lambda t: (len(t.reached), t.seconds))
    so_far = accumulate(t.seconds for t in good)
    taken = [t for n, (t, total) in enumerate(zip(good, so_far, strict=True)) if not n or total <= budget]
    files = {t.file: n for n, t in reversed(list(enumerate(taken)))}
    return [t.name for t in sorted(taken, key=lambda t: files[t.file])], len(good)


def _run(broken: Mutant, tests: list[Test], asked: argparse.Namespace) -> Outcome:
    names, count = chosen(broken.inner, tests, asked.budget)
    if not count:
        return Outcome(mutant=broken, state="survived", by="no quick test reaches it")
    told = f"{count} tests reach it" + (f", {len(names)} ran" if len(names) < count else "")
    with tempfile.TemporaryDirectory() as folder:
        where = _environment(Path(folder), {broken.function.path: broken.text})
        (Path(folder) / "tests").write_text("\n".join(names), "utf-8")
        command = [sys.executable, "-m", "pytest", "-q", "-x", "--tb=no", f"@{folder}/tests"]
        try:
            done = subprocess.run(
                command,
                cwd=ROOT,
                env=where,
                capture_output=True,
                text=True,
                timeout=asked.seconds,
                check=False,
            )
        except subprocess.TimeoutExpired:
            return Outcome(mutant=broken, state="no answer", by=told)
    if done.returncode == 0:
        return Outcome(mutant=broken, state="survived", by=told)
    failed = [x for x in done.stdout.splitlines() if x.startswith(("FAILED ", "ERROR "))]
    if not failed:
        raise SystemExit(f"{broken.key}: pytest did not run\n{done.stdout}\n{done.stderr}")
    return Outcome(mutant=broken, state="killed", by=failed[0].split(" - ")[0].split(" ", 1)[1])


def outcomes(drawn: list[Mutant], tests: list[Test], asked: argparse.Namespace) -> Iterator[Outcome]:
    """Run every change against the tests that reach it."""
    with ThreadPoolExecutor(asked.workers) as pool:
        yield from pool.map(lambda m: _run(m, tests, asked), drawn)


def rates(found: list[Outcome]) -> list[str]:
    """The share killed on levels 1 and 2, and above; changes that make no difference stand apart."""
    lines = []
    for name, low in (("levels 1 and 2", True), ("above", False)):
        these = [o for o in found if o.mutant.function.low is low]
        told = [o.state for o in these if o.state != "no answer" and o.mutant.key not in NO_DIFFERENCE]
        killed, apart = told.count("killed"), len(these) - len(told)
        share = f"{100 * killed / len(told):.0f} %" if told else "none drawn"
        lines.append(f"* **{name}**: {killed} of {len(told)} killed ({share}); counted neither way: {apart}")
    return lines


def table(found: list[Outcome]) -> list[str]:
    """One row a change."""
    lines = ["| function | change | outcome | first test to fail |", "|---|---|---|---|"]
    for o in found:
        state = "no difference" if o.mutant.key in NO_DIFFERENCE and o.state == "survived" else o.state
        lines.append(f"| {o.mutant.function.place} | {o.mutant.change} | {state} | {o.by} |")
    return lines


def report(found: list[Outcome], control: list[Outcome], tests: list[Test], asked: argparse.Namespace) -> str:
    """The page of the last run."""
    failing = sum(not t.passed for t in tests)
    lines = [
        "# How well the tests guard the code",
        "",
        f"Last run of `make mutants`: {len(found)} functions drawn with seed {asked.seed}, half on levels 1",
        "and 2, one small change in each. The quick tests ran once on the unbroken program; every change",
        f"then ran against those that reach it: {len(tests)} tests, {failing} failed unbroken, kill nothing.",
        "Kernels are left out: an independent solver checks them. *No answer*: the tests did not end",
        f"within {asked.seconds:.0f} s; that is counted neither way, and so is a change that makes no",
        "difference (last section).",
        "",
        *rates(found),
        "",
        *table(found),
        "",
        "## The same for functions nobody wrote a test for",
        "",
        "Tests were written for what survived above, so those rates flatter. The honest estimate is these",
        f"{len(control)}, drawn with seed {asked.control_seed} and left as they fell. Whoever writes tests",
        "for them draws the next ones with another seed.",
        "",
        *rates(control),
        "",
        *table(control),
        "",
        "## Changes that make no difference",
        "",
        *[f"* {place}. {reason}" for place, reason in NO_DIFFERENCE.items()],
    ]
    return "\n".join(lines) + "\n"


def _options() -> argparse.Namespace:
    options = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    options.add_argument("--functions", type=int, default=60)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--control", type=int, default=20, help="functions left as they fall")
    options.add_argument("--control-seed", type=int, default=2)
    options.add_argument("--seconds", type=float, default=300.0, help="how long one change may take")
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
    places = {m.function.place for m in drawn}
    control = draw(asked.control, asked.control_seed, asked.only, asked.level)
    control = [m for m in control if m.function.place not in places]
    if asked.list:
        print("\n".join(f"{m.key}  (line {m.line})" for m in drawn + control))
        return
    tests = reach(functions(""), asked.tests, asked.reached)
    found = []
    for outcome in outcomes(drawn + control, tests, asked):
        found.append(outcome)
        m = outcome.mutant
        print(f"{outcome.state:10} {m.key} (line {m.line}) {outcome.by}", file=sys.stderr, flush=True)
    print(report(found[: len(drawn)], found[len(drawn) :], tests, asked), end="")


if __name__ == "__main__":
    main()
