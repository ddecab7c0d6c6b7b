"""Draws the plan of the house from the import contracts: python scripts/architecture.py

Writes ``docs/reference/architecture.svg``. The picture is made of the layers that import-linter holds, with
the first sentence of each package, so that it cannot say anything else than the code. A house test compares.
"""

from __future__ import annotations

import ast
import tomllib
from html import escape
from pathlib import Path

ROOT = Path(__file__).parent.parent
PICTURE = ROOT / "docs/reference/architecture.svg"
WIDE, ROW, GAP, LEFT = 960, 58, 10, 20


def layers(container: str) -> list[list[str]]:
    """Layers of a container, highest first; those beside each other do not import each other."""
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["importlinter"][
        "contracts"
    ]
    found = next(c for c in contracts if c["type"] == "layers" and c["containers"] == [container])
    return [[name.strip() for name in row.split("|")] for row in found["layers"]]


def sentence(package: str) -> str:
    """What a package says it is for."""
    place = ROOT / "src" / package.replace(".", "/")
    path = place / "__init__.py" if place.is_dir() else place.with_suffix(".py")
    text = ast.get_docstring(ast.parse(path.read_text("utf-8"))) or ""
    return " ".join(text.split("\n\n")[0].split())


def drawn() -> str:
    """The picture: surfaces on top, words and facts at the bottom, rooms opened up."""
    rows = []
    for row in layers("frywright"):
        rows.append([(name, sentence(f"frywright.{name}"), False) for name in row])
        if row == ["rooms"]:
            for inner in layers("frywright.rooms"):
                rows.append([(name, sentence(f"frywright.rooms.{name}"), True) for name in inner])
    high = len(rows) * (ROW + GAP) + GAP
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {high}" font-family="sans-serif"'
        ' role="img">',
        "<title>Packages of Frywright; imports point down</title>",
        f'<rect width="{WIDE}" height="{high}" fill="#fffdf7"/>',
    ]
    for n, row in enumerate(rows):
        inset = 30 if row[0][2] else 0
        each = (WIDE - 2 * LEFT - 2 * inset - GAP * (len(row) - 1)) / len(row)
        for k, (name, said, inner) in enumerate(row):
            x, y = LEFT + inset + k * (each + GAP), GAP + n * (ROW + GAP)
            fill = "#f3e3cf" if inner else "#e4edf2"
            parts.append(
                f'<rect x="{x:.0f}" y="{y}" width="{each:.0f}" height="{ROW}" rx="6" fill="{fill}"/>'
            )
            parts.append(
                f'<text x="{x + 10:.0f}" y="{y + 19}" font-size="14" font-weight="bold">{name}</text>'
            )
            for m, line in enumerate(_wrapped(said, int(each / 6.0))[:2]):
                parts.append(
                    f'<text x="{x + 10:.0f}" y="{y + 35 + 14 * m}" font-size="11">{escape(line)}</text>'
                )
    return "\n".join([*parts, "</svg>"]) + "\n"


def _wrapped(text: str, width: int) -> list[str]:
    lines = [""]
    for word in text.split():
        if lines[-1] and len(lines[-1]) + len(word) + 1 > width:
            lines.append("")
        lines[-1] = f"{lines[-1]} {word}".strip()
    if len(lines) > 2:
        lines[1] = lines[1].rstrip(",;:") + " …"
    return lines


if __name__ == "__main__":
    PICTURE.write_text(drawn(), "utf-8")
