"""Paper by Typst: fonts from the package only, fixed time stamp, so that the same card is the same file."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from frywright.reports.fonts import folder

TEMPLATES = Path(__file__).parent / "templates"
PAPER = {"us": "us-letter", "metric": "a4"}
"""Sheet by the kitchen's units."""


def pdf(template: str, name: str, data: Any) -> bytes:
    """Compile a template with its data to PDF."""
    import typst

    return bytes(typst.compile(
        TEMPLATES / template, font_paths=[folder()], ignore_system_fonts=True, format="pdf",
        sys_inputs={name: json.dumps(data, ensure_ascii=False)}, timestamp=0,
    ))  # fmt: skip
