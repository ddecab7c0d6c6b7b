"""Prints the figures of the code that docs/reference/architecture.md shows: python scripts/figures.py"""

from __future__ import annotations

import ast
import re
from collections.abc import Sequence
from pathlib import Path

ROOT = Path(__file__).parent.parent
PARTS = {"program": ("src",), "tests": ("tests",), "beside": ("benchmarks", "scripts", "examples")}
WORDS = {
    "`dict[str, Any]`": r"\bdict\[str, Any\]",
    "`Any`": r"\bAny\b",
    "`cast(`": r"\bcast\(",
    "`type: ignore`": r"#\s*type:\s*ignore",
    "formatter off": r"#\s*fmt:\s*(?:skip|off)",
}
"""What is counted by its spelling."""


def spread(counts: Sequence[int]) -> str:
    """Median, the value nine of ten stay below or at, and the largest."""
    rising = sorted(counts)
    return f"{rising[len(rising) // 2]} / {rising[len(rising) * 9 // 10]} / {rising[-1]}"


def bodies(text: str) -> list[int]:
    """Lines of every function's body, without its docstring."""
    found = []
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            first = node.body[1] if ast.get_docstring(node) and len(node.body) > 1 else node.body[0]
            found.append((node.end_lineno or 0) - first.lineno + 1)
    return found


def figures(texts: Sequence[str]) -> dict[str, str]:
    """One column of the table."""
    files, functions = [len(t.splitlines()) for t in texts], [n for t in texts for n in bodies(t)]
    return {
        "files": f"{len(files):,}",
        "lines": f"{sum(files):,}",
        "lines of a file: median / nine of ten / longest": spread(files),
        "functions": f"{len(functions):,}",
        "lines of a function: median / nine of ten / longest": spread(functions),
        **{name: str(sum(len(re.findall(p, t)) for t in texts)) for name, p in WORDS.items()},
    }


def main() -> None:
    """Print the table."""
    columns = [
        figures([p.read_text("utf-8") for home in homes for p in sorted((ROOT / home).rglob("*.py"))])
        for homes in PARTS.values()
    ]
    print(f"| | {' | '.join(PARTS)} |\n|---|" + "--:|" * len(columns))
    for name in columns[0]:
        print(f"| {name} | {' | '.join(column[name] for column in columns)} |")


if __name__ == "__main__":
    main()
