"""The program's modules, read once."""

from __future__ import annotations

import ast
from collections.abc import Iterable
from functools import cache
from pathlib import Path

import frywright

ROOT = Path(frywright.__file__).parent
FILES = sorted(p for p in ROOT.rglob("*.py"))


@cache
def tree_of(path: Path) -> ast.Module:
    """A module's source as a tree, read once."""
    return ast.parse(path.read_text("utf-8"))


@cache
def nodes_of(path: Path) -> tuple[ast.AST, ...]:
    """Everything in it, in the order of a walk."""
    return tuple(ast.walk(tree_of(path)))


def functions(paths: Iterable[Path] = FILES, home: Path = ROOT):
    """Every function of every module, with its path from there."""
    for path in paths:
        for node in nodes_of(path):
            if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
                yield path.relative_to(home), node
