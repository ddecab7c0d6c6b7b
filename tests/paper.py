"""What tests look at in a PDF."""

from __future__ import annotations

import re


def pages(data: bytes) -> int:
    """Number of pages of a PDF as Typst writes it."""
    return len(re.findall(rb"/Type\s*/Page(?![A-Za-z])", data))
