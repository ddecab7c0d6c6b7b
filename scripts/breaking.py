"""Functions of the program, drawn, and one small change in each: see mutants.py beside it."""

from __future__ import annotations

import ast
import hashlib
import random
from collections.abc import Iterator
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

    @property
    def place(self) -> str:
        """Its name in the report, which does not move with the lines above it."""
        return f"{self.path.as_posix()} {self.name}"

    @property
    def module(self) -> str:
        """The dotted name it is imported by."""
        return ".".join(self.path.with_suffix("").parts).removesuffix(".__init__")


@dataclass(frozen=True, kw_only=True)
class Mutant:
    """One function with one change."""

    function: Function
    text: str
    change: str
    line: int
    inner: Function
    """The innermost function around the line: what a test must reach to see the change."""

    @property
    def key(self) -> str:
        """How NO_DIFFERENCE names it."""
        return f"{self.function.place}: {self.change}"


def functions(only: str) -> list[Function]:
    """Every function with a body worth breaking, kernels and migrations apart.

    A kernel is compiled for a minute whenever it changes; its checks are the independent solver of lines and
    the closed forms, which run in full with the slow tests.
    """
    found = []
    for path in sorted((ROOT / "src/frywright").rglob("*.py")):
        place = path.relative_to(ROOT / "src")
        text = path.read_text("utf-8")
        apart = {"migrations", "kernels"} & set(place.parts) or "@njit" in text
        if not apart and only in place.as_posix():
            found += list(_functions(ast.parse(text), place, ""))
    return found


def _functions(tree: ast.AST, path: Path, within: str) -> Iterator[Function]:
    for node in ast.iter_child_nodes(tree):
        name = f"{within}{node.name}" if hasattr(node, "name") and isinstance(node, ast.stmt) else ""
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            body = node.body[1:] if ast.get_docstring(node) else node.body
            last = node.end_lineno or 0
            if body and last - body[0].lineno + 1 >= LEAST_LINES:
                yield Function(path=path, name=name, first_line=body[0].lineno, last_line=last)
        yield from _functions(node, path, f"{name}." if name else within)


def _short(text: str) -> str:
    """One line of it, not longer than a table holds."""
    text = " ".join(text.split()).replace("|", "/")
    return text if len(text) <= 60 else f"{text[:57]}..."


class _Break(ast.NodeTransformer):
    """Changes the n-th place that can be changed between two lines; counts them when n is below 0."""

    def __init__(self, function: Function, number: int) -> None:
        self.function, self.number, self.count = function, number, 0
        self.change, self.line, self._shown = "", 0, False

    def visit(self, node: ast.AST) -> ast.AST:
        before = ast.unparse(node) if self.number >= 0 and not self.change else ""
        found = super().visit(node)
        if self.change and not self._shown:
            self._shown = True
            after = "" if isinstance(found, ast.Pass) else ast.unparse(found)
            self.change += f", `{_short(before)}`" + (f" → `{_short(after)}`" if after else "")
        return found

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

    def visit_keyword(self, node: ast.keyword) -> ast.AST:
        """``strict`` of a ``zip`` guards lists made of the same things: no change of it can be seen."""
        return node if node.arg == "strict" else self.generic_visit(node)

    def visit_Constant(self, node: ast.Constant) -> ast.AST:
        if isinstance(node.value, bool):
            if self._here(node, f"{node.value} turned"):
                return ast.copy_location(ast.Constant(not node.value), node)
        elif isinstance(node.value, int | float) and self._here(node, f"{node.value} moved by one"):
            return ast.copy_location(ast.Constant(node.value + 1), node)
        return node

    def visit_Return(self, node: ast.Return) -> ast.AST:
        self.generic_visit(node)
        nothing = node.value is None or (isinstance(node.value, ast.Constant) and node.value.value is None)
        if not nothing and self._here(node, "gives None back"):
            node.value = ast.copy_location(ast.Constant(None), node)
        return node

    def visit_Expr(self, node: ast.Expr) -> ast.AST:
        self.generic_visit(node)
        if isinstance(node.value, ast.Call) and self._here(node, "call left out"):
            return ast.copy_location(ast.Pass(), node)
        return node

    def visit_Raise(self, node: ast.Raise) -> ast.AST:
        return ast.copy_location(ast.Pass(), node) if self._here(node, "error not raised") else node


def draw(count: int, seed: int, only: str, level: str = "") -> list[Mutant]:
    """Half the functions from levels 1 and 2, half from above, one change in each.

    The draw goes by a hash of seed and name, so that a function written elsewhere does not redraw the rest.
    """
    known = sorted(functions(only), key=lambda f: hashlib.sha256(f"{seed} {f.place}".encode()).hexdigest())
    found = []
    for low in {"": (True, False), "low": (True,), "above": (False,)}[level]:
        made = (mutant(f, random.Random(f"{seed} {f.place}"), known) for f in known if f.low is low)
        possible = (m for m in made if m is not None)
        found += [m for m, _ in zip(possible, range(count // 2), strict=False)]
    return found


def mutant(function: Function, dice: random.Random, known: list[Function]) -> Mutant | None:
    """The module's text with one change; None where nothing can be changed."""
    text = (ROOT / "src" / function.path).read_text("utf-8")
    counter = _Break(function, -1)
    counter.visit(ast.parse(text))
    if not counter.count:
        return None
    breaker = _Break(function, dice.randrange(counter.count))
    tree = ast.fix_missing_locations(breaker.visit(ast.parse(text)))
    around = [f for f in known if f.path == function.path and f.first_line <= breaker.line <= f.last_line]
    return Mutant(
        function=function,
        text=ast.unparse(tree),
        change=breaker.change,
        line=breaker.line,
        inner=max(around, key=lambda f: f.first_line),
    )
