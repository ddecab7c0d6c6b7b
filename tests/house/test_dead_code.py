"""No dead code: whatever nothing in the program, its benchmarks and examples uses leaves the source.

What only a test uses is no use: it belongs beside the tests (``tests/reference``) or goes.
"""

from __future__ import annotations

from pathlib import Path

from vulture import Vulture

ROOT = Path(__file__).parent.parent.parent
CALLED_BY_OTHERS = [
    "@routes.*",
    "@app.*",
    "@*.command*",
    "@command*",
    "@*.callback*",
    "@*.middleware*",
    "@*.exception_handler*",
]
KNOWN = {
    "KIND": "read through a fact's class",
    "VERSION": "read through a fact's class",
    "LABELS": "read through a fact's class",
    "__annotations__": "read by the maker of commands",
    "__getattr__": "Python asks a module by it for what is not there yet",
    "CACHE_DIR": "a setting of Numba",
    "data_layout": "a setting of LLVM",
    "block_cook": "a field of the job, read by the march",
    "block_count": "a field of the job, read by the march",
    "GAS_STEAM_J_KGK": "the march's own number, for checks by hand (docs/theory/engine.md)",
    "latent_heat_j_kg": "the march's own equation, for checks by hand (docs/theory/engine.md)",
    "format_usage": "the printer of help calls it",
    "short_help": "the printer of help reads it",
    "OWN": "read by the test of translations",
    "isolation_level": "a setting of sqlite3",
    "readable": "io.RawIOBase calls it",
    "readinto": "io.RawIOBase calls it",
    "path_regex": "Starlette's routes are matched by it",
    "path_format": "Starlette's routes are matched by it",
    "param_convertors": "Starlette's routes are matched by it",
    "max_stages": "read by cook/cook.html",
    "can_press": "read by cook/cook.html",
    "FISH": "a food named in catalog files",
    "PLANT": "a food named in catalog files",
    "COUNTS": "the closed list of units, read by the house tests",
    "time_at": "a row of a published table, which the checks against the standard read",
}


def test_nothing_is_left_that_nothing_uses():
    """Functions, classes, properties, imports and constants; fields of dataclasses travel whole to pages."""
    tool = Vulture(ignore_decorators=CALLED_BY_OTHERS, ignore_names=["revision", "down_revision"])
    tool.scavenge([str(ROOT / name) for name in ("src", "benchmarks", "scripts", "examples")])
    dead = [
        f"{item.filename.relative_to(ROOT)}:{item.first_lineno} {item.typ} {item.name}"
        for item in tool.get_unused_code(min_confidence=60)
        if "src" in item.filename.parts
        and "facts" not in item.filename.parts  # kinds of old entries are read too
        and item.name not in KNOWN
        and (
            item.typ != "variable" or (item.name.isupper() and item.name not in ("KIND", "VERSION", "LABELS"))
        )
    ]
    assert dead == []
