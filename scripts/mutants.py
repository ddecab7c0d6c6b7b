"""Breaks the program by hand, one small change at a time, and sees whether a test fails.

Functions are drawn at random over all levels; in each, one place is changed: a comparison turned, a number
moved by one, ``and`` for ``or``, a sign, a statement left out, ``None`` given back. The tests nearest to the
changed module run against a copy of the source. ``make mutants`` writes ``docs/reference/quality.md``.

    python scripts/mutants.py [--functions 60] [--seed 1] [--seconds 240] [--only frywright/verdicts]
"""

from __future__ import annotations

import argparse
import ast
import os
import random
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parent.parent
LOW = (
    "model",
    "catalog",
    "voice",
    "physics",
    "verdicts",
    "tables",
    "oil",
    "calibrate",
    "care",
    "design",
    "plan",
)
"""Levels 1 and 2: what is known and what is computed. Everything else stands above."""
LEAST_LINES = 3
WORKERS = 2
FLIP = {
    ast.Lt: ast.GtE,
    ast.GtE: ast.Lt,
    ast.Gt: ast.LtE,
    ast.LtE: ast.Gt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.Is: ast.IsNot,
    ast.IsNot: ast.Is,
    ast.In: ast.NotIn,
    ast.NotIn: ast.In,
}
SWAP = {ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult}


@dataclass(frozen=True, kw_only=True)
class Function:
    """A function that may be broken: its file below ``src`` and its lines."""

    path: Path
    name: str
    first_line: int
    last_line: int

    @property
    def low(self) -> bool:
        """Whether it stands on levels 1 or 2."""
        return self.path.parts[1] in LOW


@dataclass(frozen=True, kw_only=True)
class Outcome:
    """One mutant: what was changed, and what became of it."""

    function: Function
    change: str
    line: int
    state: str


def functions(only: str) -> list[Function]:
    """Every function with a body worth breaking, kernels and migrations apart.

    A kernel is compiled for a minute whenever it changes; its checks are the independent solver of lines and
    the closed forms, which run in full with the slow tests.
    """
    found = []
    for path in sorted((ROOT / "src/frywright").rglob("*.py")):
        place = path.relative_to(ROOT / "src")
        text = path.read_text("utf-8")
        if (
            "migrations" in place.parts
            or "kernels" in place.parts
            or "@njit" in text
            or only not in place.as_posix()
        ):
            continue
        for node in ast.walk(ast.parse(text)):
            if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
                body = node.body[1:] if ast.get_docstring(node) else node.body
                if body and (node.end_lineno or 0) - body[0].lineno + 1 >= LEAST_LINES:
                    lines = (body[0].lineno, node.end_lineno or 0)
                    found.append(
                        Function(path=place, name=node.name, first_line=lines[0], last_line=lines[1])
                    )
    return found


class _Break(ast.NodeTransformer):
    """Changes the n-th place that can be changed between two lines; counts them when n is below 0."""

    def __init__(self, function: Function, number: int) -> None:
        self.function, self.number, self.count = function, number, 0
        self.change, self.line = "", 0

    def _here(self, node: ast.AST, change: str) -> bool:
        line = getattr(node, "lineno", 0)
        if not self.function.first_line <= line <= self.function.last_line:
            return False
        self.count += 1
        if self.count - 1 != self.number:
            return False
        self.change, self.line = change, line
        return True

    def visit_Compare(self, node: ast.Compare) -> ast.AST:
        self.generic_visit(node)
        kind = type(node.ops[0])
        if kind in FLIP and self._here(node, f"{kind.__name__} turned"):
            node.ops[0] = FLIP[kind]()
        return node

    def visit_BoolOp(self, node: ast.BoolOp) -> ast.AST:
        self.generic_visit(node)
        if self._here(node, "and, or exchanged"):
            node.op = ast.Or() if isinstance(node.op, ast.And) else ast.And()
        return node

    def visit_BinOp(self, node: ast.BinOp) -> ast.AST:
        self.generic_visit(node)
        text = isinstance(node.left, ast.Constant) and isinstance(node.left.value, str)
        if type(node.op) in SWAP and not text and self._here(node, f"{type(node.op).__name__} exchanged"):
            node.op = SWAP[type(node.op)]()
        return node

    def visit_UnaryOp(self, node: ast.UnaryOp) -> ast.AST:
        self.generic_visit(node)
        if isinstance(node.op, ast.Not | ast.USub) and self._here(node, "not or minus left out"):
            return node.operand
        return node

    def visit_Constant(self, node: ast.Constant) -> ast.AST:
        if isinstance(node.value, bool):
            if self._here(node, f"{node.value} turned"):
                return ast.copy_location(ast.Constant(not node.value), node)
        elif isinstance(node.value, int | float) and self._here(node, f"{node.value} moved by one"):
            return ast.copy_location(ast.Constant(node.value + 1), node)
        return node

    def visit_Return(self, node: ast.Return) -> ast.AST:
        self.generic_visit(node)
        if node.value is not None and self._here(node, "gives None back"):
            node.value = ast.copy_location(ast.Constant(None), node)
        return node

    def visit_Expr(self, node: ast.Expr) -> ast.AST:
        self.generic_visit(node)
        if isinstance(node.value, ast.Call) and self._here(node, "call left out"):
            return ast.copy_location(ast.Pass(), node)
        return node

    def visit_Raise(self, node: ast.Raise) -> ast.AST:
        return ast.copy_location(ast.Pass(), node) if self._here(node, "error not raised") else node


def mutant(function: Function, draw: random.Random) -> tuple[str, str, int] | None:
    """The module's text with one change, what was changed and where; None where nothing can be."""
    text = (ROOT / "src" / function.path).read_text("utf-8")
    counter = _Break(function, -1)
    counter.visit(ast.parse(text))
    if not counter.count:
        return None
    breaker = _Break(function, draw.randrange(counter.count))
    tree = ast.fix_missing_locations(breaker.visit(ast.parse(text)))
    return ast.unparse(tree), breaker.change, breaker.line


def near_tests(function: Function) -> list[str]:
    """Test files that name the module, its own folder first; then those of its folder."""
    module = ".".join(function.path.with_suffix("").parts)
    package, stem = function.path.parts[1], function.path.stem
    named, others = [], []
    for path in sorted((ROOT / "tests").rglob("test_*.py")):
        place = path.relative_to(ROOT).as_posix()
        if "/browser/" in place or place.startswith("tests/house/"):
            continue
        text = path.read_text("utf-8")
        if module in text or f"import {stem}" in text or stem in path.stem:
            named.append(place)
        elif place.startswith(f"tests/{package}/"):
            others.append(place)
    named.sort(key=lambda p: (stem not in p, not p.startswith(f"tests/{package}/")))
    return named + others


def _run(function: Function, text: str, seconds: float) -> str:
    tests = near_tests(function)
    if not tests:
        return "survived"
    with tempfile.TemporaryDirectory() as folder:
        shutil.copytree(
            ROOT / "src", Path(folder) / "src", ignore=shutil.ignore_patterns("__pycache__", "*.egg-info")
        )
        (Path(folder) / "src" / function.path).write_text(text, "utf-8")
        where = {"PYTHONPATH": os.pathsep.join((f"{folder}/src", str(ROOT))), "PYTHONDONTWRITEBYTECODE": "1"}
        command = [sys.executable, "-m", "pytest", "-q", "-x", "-m", "not slow and not browser", *tests]
        try:
            done = subprocess.run(
                command,
                cwd=ROOT,
                env={**os.environ, **where},
                capture_output=True,
                timeout=seconds,
                check=False,
            )
        except subprocess.TimeoutExpired:
            return "no answer"
    return "survived" if done.returncode == 0 else "killed"


def outcomes(count: int, seed: int, seconds: float, only: str) -> Iterator[Outcome]:
    """Draw functions, half of them on levels 1 and 2, and break one place in each."""
    draw = random.Random(seed)
    known = functions(only)
    chosen = []
    for low in (True, False):
        these = [f for f in known if f.low is low]
        chosen += draw.sample(these, min(len(these), count // 2))
    jobs = [(f, made) for f in chosen if (made := mutant(f, draw)) is not None]
    with ThreadPoolExecutor(WORKERS) as pool:
        states = pool.map(lambda job: _run(job[0], job[1][0], seconds), jobs)
        for (function, (_, change, line)), state in zip(jobs, states, strict=True):
            yield Outcome(function=function, change=change, line=line, state=state)


def report(found: list[Outcome], seed: int, seconds: float) -> str:
    """The page of the last run."""
    lines = [
        "# How well the tests guard the code",
        "",
        f"Last run of `make mutants`: {len(found)} functions drawn with seed {seed}, half on levels 1 and 2,",
        "one small change in each; the quick tests nearest to the changed module ran. Kernels are left out:",
        "they are checked against an independent solver. *No answer*: the tests did not end within",
        f"{seconds:.0f} s; that is counted neither way. A survivor may be a change that makes no difference.",
        "",
    ]
    for name, low in (("levels 1 and 2", True), ("above", False)):
        these = [o.state for o in found if o.function.low is low and o.state != "no answer"]
        killed = these.count("killed")
        share = f"{100 * killed / len(these):.0f} %" if these else "none drawn"
        lines.append(f"* **{name}**: {killed} of {len(these)} killed ({share})")
    lines += ["", "| place | function | change | outcome |", "|---|---|---|---|"]
    for o in found:
        lines.append(
            f"| {o.function.path.as_posix()}:{o.line} | {o.function.name} | {o.change} | {o.state} |"
        )
    return "\n".join(lines) + "\n"


def main() -> None:
    """Run and print as it goes; the page goes to standard output at the end."""
    options = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    options.add_argument("--functions", type=int, default=60)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--seconds", type=float, default=240.0)
    options.add_argument("--only", default="", help="a part of the path")
    asked = options.parse_args()
    found = []
    for outcome in outcomes(asked.functions, asked.seed, asked.seconds, asked.only):
        found.append(outcome)
        place = f"{outcome.function.path.as_posix()}:{outcome.line}"
        print(
            f"{outcome.state:10} {place} {outcome.function.name}: {outcome.change}",
            file=sys.stderr,
            flush=True,
        )
    print(report(found, asked.seed, asked.seconds), end="")


if __name__ == "__main__":
    main()
