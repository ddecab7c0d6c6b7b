"""Outside figures the engine is compared with: one row a figure, computed by one function. Used by tests and
docs.

Rows live in the TOML files beside this one. ``use`` says what a row may prove:
``untouched`` was never looked at while the model was built, ``developed`` was, ``tuned`` is a figure
something was fitted to (it is shown and not counted).
"""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from functools import cache
from importlib import import_module
from pathlib import Path

USES = ("untouched", "developed", "tuned")
KINDS = ("analytic", "textbook", "experiment", "practice")
HERE = Path(__file__).parent


def rows() -> list[dict]:
    """All rows in the order of their files."""
    files = ("closed_forms", "textbook", "meat", "fry", "practice")
    return [row for name in files for row in tomllib.loads((HERE / f"{name}.toml").read_text("utf-8"))["row"]]


@cache
def value(compute: str, args: tuple) -> float:
    """What the engine says for a row."""
    module, name = compute.split(".")
    function: Callable[..., float] = getattr(import_module(f"{__name__}.{module}"), name)
    return float(function(**dict(args)))


def value_of(row: dict) -> float:
    """The engine's figure of a row."""
    return value(row["compute"], tuple(sorted(row.get("args", {}).items())))


def inside(row: dict, found: float) -> bool:
    """Whether a figure lies in the row's band."""
    return bool(row["low"] <= found <= row["high"])
